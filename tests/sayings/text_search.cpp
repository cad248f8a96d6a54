#include "sayings/text_search.hpp"

#include "shop/lists.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cctype>
#include <chrono>
#include <optional>

namespace nutward::sayings {

namespace {

// "what fits slot 3" as an FTS5 query: any of its words.
std::string any_word_of(const std::string& sentence) {
  std::string out, word;
  for (char c : sentence + " ") {
    const auto byte = static_cast<unsigned char>(c);
    if (std::isalnum(byte) != 0 || byte >= 0x80)
      word += c;
    else if (!word.empty())
      out += (out.empty() ? "\"" : " OR \"") + word + "\"", word.clear();
  }
  return out;
}

} // namespace

struct TextSearch::Impl {
  SQLite::Database db{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
  std::optional<SQLite::Statement> nearest;

  Impl() {
    db.exec("CREATE VIRTUAL TABLE phrase USING fts5(row UNINDEXED, said)");
    SQLite::Statement insert(db, "INSERT INTO phrase VALUES (?, ?)");
    const auto add = [&](const shop::Row& row) {
      for (std::string_view phrase : row.phrases) {
        insert.bind(1, std::string(row.name));
        insert.bind(2, std::string(phrase));
        insert.exec();
        insert.reset();
      }
    };
    for (const auto* question : shop::questions())
      add(*question);
    for (const auto* command : shop::commands())
      add(*command);
    nearest.emplace(db, "SELECT row FROM phrase WHERE phrase MATCH ? ORDER BY rank LIMIT 1");
  }
};

TextSearch::TextSearch() : impl_(std::make_unique<Impl>()) {}
TextSearch::~TextSearch() = default;

double TextSearch::finding_us(const std::string& sentence) {
  const auto from = std::chrono::steady_clock::now();
  if (const std::string query = any_word_of(sentence); !query.empty()) {
    impl_->nearest->bind(1, query);
    (void)impl_->nearest->executeStep();
    impl_->nearest->reset();
  }
  return std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - from).count();
}

} // namespace nutward::sayings
