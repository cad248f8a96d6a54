// An answer of the daemon, taken apart. No JSON type is visible. Its text is as it came: only render.hpp
// makes it fit to be printed.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace nutward::cli {

struct Table {
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows; // each as long as columns
};

struct Answer {
  std::string kind, text, reason;
  std::optional<Table> table;
  std::vector<std::string> cautions;
  std::vector<std::string> choices; // their labels
  std::optional<std::string> csv;   // the answer's list as CSV, where its data has one
  bool fits = true;                 // false where data says "fits": false
  bool not_allowed = false;         // true where data says so: refused for the role

  // of a problem (RFC 9457)
  std::string title, detail, remedy;
  std::vector<std::pair<std::string, std::string>> errors; // where ("/slot", may be empty), what
};

// nullopt: this is not JSON, no object, or nested deeper than 32. Members that are missing or of another type
// are left empty.
std::optional<Answer> read_answer(const std::string& json);

// {"text","conversation"}; nullopt: one of them is not UTF-8.
std::optional<std::string> say_body(const std::string& text, const std::string& conversation);

} // namespace nutward::cli
