#include "cli/vocabulary.hpp"

#include "cli/answer.hpp"
#include "cli/http.hpp"
#include "units/print.hpp"

#include <algorithm>
#include <optional>

namespace nutward::cli {
namespace {

std::optional<Table> table_of(const Where& where, const char* question) {
  try {
    const auto got = get(where, std::string("/v1/ask/") + question);
    const auto answer = got.status == 200 ? read_answer(got.body) : std::nullopt;
    return answer ? answer->table : std::nullopt;
  } catch (const NoAnswer&) {
    return std::nullopt;
  }
}

// Appends the cells of a column; nothing if there is no such column.
void take(const std::optional<Table>& table, const char* column, std::vector<std::string>& into) {
  if (!table) return;
  const auto found = std::find(table->columns.begin(), table->columns.end(), column);
  if (found == table->columns.end()) return;
  const auto at = static_cast<std::size_t>(found - table->columns.begin());
  for (const auto& row : table->rows)
    if (const auto& cell = row[at]; !cell.empty() && cell != "-" && units::escape_for_print(cell) == cell)
      into.push_back(cell);
}

// "octave mandolin" is called the mandolin as well.
void add_later_words(std::vector<std::string>& names) {
  std::vector<std::string> more;
  for (const auto& name : names)
    for (auto at = name.find(' '); at != std::string::npos; at = name.find(' ', at + 1))
      if (const auto word = name.substr(at + 1, name.find(' ', at + 1) - at - 1); word.size() > 2)
        more.push_back(word);
  names.insert(names.end(), more.begin(), more.end());
}

} // namespace

Vocabulary fetch_vocabulary(const Where& where) {
  Vocabulary out;
  const auto help = table_of(where, "help");
  take(help, "name", out.rows);
  std::vector<std::string> examples;
  take(help, "for example", examples);
  for (const auto& example : examples)
    add_example(example, out);
  take(table_of(where, "stock"), "wire", out.wires);
  const auto jobs = table_of(where, "jobs");
  take(jobs, "job", out.jobs);
  take(jobs, "instrument", out.names);
  take(jobs, "for", out.names);
  const auto persons = table_of(where, "persons");
  take(persons, "name", out.names);
  take(persons, "bench", out.names);
  add_later_words(out.names);
  return out;
}

} // namespace nutward::cli
