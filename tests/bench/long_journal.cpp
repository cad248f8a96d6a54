#include "bench/long_journal.hpp"

#include "hours/load_zone.hpp"
#include "shop/apply.hpp"
#include "shop/codec.hpp"
#include "store/sqlite.hpp"

#include <fmt/core.h>

#include <chrono>
#include <string>

namespace nutward::bench {

namespace {

constexpr int slots = 24;

// Orders straight into the store's transactions, hundreds to a commit: the executor's own work, without a
// sync for each.
class Years {
public:
  explicit Years(store::Sqlite& store) : store_(store) {
    store_.write([&](shop::Tx& tx) {
      who_.actor = tx.put(shop::Actor{0, "Mara", static_cast<int>(shop::Role::lead), "", {}});
      tx.backroom().take_changes();
    });
    who_.role = shop::Role::lead, who_.name = "Mara", who_.via = "unix";
    write([&] {
      does("open-hours", R"({"days": "mon-fri", "hours": "9:00-18:00"})");
      does("define-wire", R"({"name": "medium", "stick_mm": 600})");
    });
  }

  template <class Body>
  void write(Body&& body) {
    store_.write([&](shop::Tx& tx) {
      tx_ = &tx;
      const auto held = rooms_.of(tx);
      zone_ = held.zone, calendar_ = held.calendar;
      body();
      newest_ = tx.journal().newest();
    });
  }
  // A flat board, 52 mm wide everywhere, so that each slot takes the same piece.
  void a_job() {
    const std::int64_t job = ++job_;
    does("new-job",
         fmt::format(R"({{"wire": 1, "scale_mm": 640, "frets": {}, "nut_width_mm": 52, "far_width_mm": 52,
      "owner": "owner {}", "instrument": "six-string"}})",
                     slots, job));
    does("finished", fmt::format(R"({{"job": {}, "stage": "pull"}})", job));
    for (int slot = 1; slot <= slots; ++slot)
      fill(job, slot);
    for (const char* stage : {"dress", "seat"})
      does("finished", fmt::format(R"({{"job": {}, "stage": "{}"}})", job, stage));
    does("pressed", fmt::format(R"({{"job": {}}})", job));
    does("finished", fmt::format(R"({{"job": {}, "stage": "done"}})", job));
  }
  std::int64_t newest() const { return newest_; }
  std::int64_t jobs() const { return job_; }

private:
  void fill(std::int64_t job, int slot) {
    const std::int64_t piece = ++piece_;
    does("add", R"({"wire": 1, "length_mm": 51.5, "ends": "dressed", "place": "drawer 2"})");
    does("hold", fmt::format(R"({{"piece": {}, "job": {}, "slot": {}}})", piece, job, slot));
    does("let-go", fmt::format(R"({{"piece": {}}})", piece));
    const std::string use = fmt::format(R"({{"piece": {}, "job": {}, "slot": {}}})", piece, job, slot);
    does("use", use);
    if (slot % 12 != 0) return;
    does("undo", "{}");
    does("use", use);
  }
  void does(const std::string& row, const std::string& json) {
    shop::Order order;
    order.calls = {shop::read_call(row, json)};
    order.who = who_;
    order.said = row + " as it was said at the bench";
    order.confirmed = true;
    now_.s += 90;
    apply_order(order, {now_, now_, *zone_, calendar_, who_}, *tx_);
  }

  store::Sqlite& store_;
  shop::Rooms rooms_{hours::load_zone};
  shop::Caller who_;
  shop::Tx* tx_ = nullptr;
  std::shared_ptr<const hours::Zone> zone_;
  hours::Calendar calendar_;
  units::Instant now_{1'500'000'000};
  std::int64_t job_ = 0, piece_ = 0, newest_ = 0;
};

} // namespace

LongJournal make_long_journal(const std::filesystem::path& home, std::int64_t lines) {
  const auto began = std::chrono::steady_clock::now();
  const auto store = store::open_sqlite({home});
  Years years(*store);
  while (years.newest() < lines)
    years.write([&] {
      for (int i = 0; i < 10; ++i)
        years.a_job();
    });
  LongJournal out;
  out.lines = years.newest();
  out.jobs = years.jobs();
  out.seconds =
      std::chrono::duration_cast<std::chrono::seconds>(std::chrono::steady_clock::now() - began).count();
  return out;
}

} // namespace nutward::bench
