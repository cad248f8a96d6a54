#include "store/sqlite.hpp"

#include "store/home.hpp"
#include "store/migrate.hpp"
#include "store/verify.hpp"
#include "store/view.hpp"

#include <fmt/core.h>

#include <mutex>
#include <thread>
#include <utility>

namespace nutward::store {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t readers_kept = 4;

struct Reader {
  explicit Reader(const std::string& file) : connection(file, Connection::Use::reading), view(connection) {}
  Connection connection;
  View view;
};

class Shop final : public Sqlite {
public:
  explicit Shop(const Options& options);
  ~Shop() override;
  void read(const std::function<void(const shop::View&)>& body) override;
  std::int64_t write(const std::function<void(shop::Tx&)>& body) override;
  void on_change(std::function<void(std::int64_t)> listener) override;
  std::vector<Finding> verify() override;

private:
  std::unique_ptr<Reader> take();
  void give_back(std::unique_ptr<Reader> reader);
  void snapshot(const std::function<void(Reader&)>& body);
  std::pair<std::int64_t, bool> commit(const std::function<void(shop::Tx&)>& body);

  HomeLock lock_;
  fs::path file_;
  std::unique_ptr<Connection> writer_;
  std::unique_ptr<Tx> tx_;
  std::mutex writing_;
  std::mutex pool_;
  std::vector<std::unique_ptr<Reader>> idle_;
  std::mutex listening_;
  std::function<void(std::int64_t)> listener_;
};

Shop::Shop(const Options& options) : lock_(options.home), file_(options.home / "shop.db") {
  const std::span<const Migration> steps = migrations();
  version_of(file_, steps.back().version);
  make_file(file_);
  writer_ = std::make_unique<Connection>(file_.string(), Connection::Use::writing);
  writer_->query("PRAGMA journal_mode = WAL").run();
  writer_->query("PRAGMA journal_size_limit = 4194304").run();
  migrate(*writer_, file_, steps);
  if (options.most_pages > 0)
    writer_->exec(fmt::format("PRAGMA max_page_count = {}", options.most_pages).c_str());
  tx_ = std::make_unique<Tx>(*writer_);
}

Shop::~Shop() {
  // The writer goes last, since the last connection to go checkpoints.
  idle_.clear();
  tx_.reset();
  writer_.reset();
}

std::unique_ptr<Reader> Shop::take() {
  {
    const std::lock_guard guard(pool_);
    if (!idle_.empty()) {
      std::unique_ptr<Reader> reader = std::move(idle_.back());
      idle_.pop_back();
      return reader;
    }
  }
  return std::make_unique<Reader>(file_.string());
}

void Shop::give_back(std::unique_ptr<Reader> reader) {
  const std::lock_guard guard(pool_);
  if (idle_.size() < readers_kept) idle_.push_back(std::move(reader));
}

void Shop::snapshot(const std::function<void(Reader&)>& body) {
  std::unique_ptr<Reader> reader = take();
  try {
    reader->connection.begin();
    reader->view.at_snapshot(); // a deferred transaction has its snapshot from its first read on
    body(*reader);
  } catch (...) {
    reader->connection.rollback();
    give_back(std::move(reader));
    throw;
  }
  reader->connection.rollback();
  give_back(std::move(reader));
}

void Shop::read(const std::function<void(const shop::View&)>& body) {
  snapshot([&](Reader& reader) { body(reader.view); });
}

std::pair<std::int64_t, bool> Shop::commit(const std::function<void(shop::Tx&)>& body) {
  const std::lock_guard guard(writing_);
  writer_->begin();
  try {
    tx_->fresh();
    const std::int64_t before = writer_->changes();
    body(*tx_);
    const bool changed = writer_->changes() != before;
    if (changed) writer_->query("UPDATE shop SET revision = revision + 1").run();
    const std::int64_t revision = revision_of(*writer_);
    writer_->commit();
    return {revision, changed};
  } catch (...) {
    writer_->rollback();
    throw;
  }
}

std::int64_t Shop::write(const std::function<void(shop::Tx&)>& body) {
  const auto [revision, changed] = commit(body);
  if (!changed) return revision;
  std::function<void(std::int64_t)> listener;
  {
    const std::lock_guard guard(listening_);
    listener = listener_;
  }
  if (listener) listener(revision);
  return revision;
}

void Shop::on_change(std::function<void(std::int64_t)> listener) {
  const std::lock_guard guard(listening_);
  listener_ = std::move(listener);
}

std::vector<Finding> Shop::verify() {
  // A snapshot each: a report in between changes nothing about either half.
  std::vector<Finding> contents;
  std::thread beside([&] {
    try {
      snapshot([&](Reader& reader) { contents = verify_contents(reader.connection); });
    } catch (const shop::Problem& problem) {
      contents.push_back({"database", problem.text});
    }
  });
  std::vector<Finding> out;
  try {
    snapshot([&](Reader& reader) { out = verify_file(reader.connection); });
  } catch (const shop::Problem& problem) {
    out.push_back({"database", problem.text});
  }
  beside.join();
  out.insert(out.end(), contents.begin(), contents.end());
  return out;
}

} // namespace

std::unique_ptr<Sqlite> open_sqlite(const Options& options) {
  return std::make_unique<Shop>(options);
}

} // namespace nutward::store
