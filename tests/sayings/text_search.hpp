// The baseline of the understanding: the same sentences put to a general full-text search, SQLite's FTS5 in
// memory, over the very phrases that the daemon knows. It gives the phrase that shares most with the
// sentence, by bm25; not what a sentence's numbers and names are, whether anything was negated, or that two
// rows are as near.
#pragma once

#include <memory>
#include <string>

namespace nutward::sayings {

class TextSearch {
public:
  TextSearch();
  ~TextSearch();
  TextSearch(const TextSearch&) = delete;
  TextSearch& operator=(const TextSearch&) = delete;
  // Microseconds of one search: words to a query, and its first row.
  double finding_us(const std::string& sentence);

private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

} // namespace nutward::sayings
