#include "cli/render.hpp"

#include "units/print.hpp"

#include <algorithm>

namespace nutward::cli {
namespace {

constexpr const char* bold = "\x1b[1m";
constexpr const char* yellow = "\x1b[33m";
constexpr const char* plain = "\x1b[0m";

std::string one_line(std::string_view text) {
  std::string flat(text);
  std::replace(flat.begin(), flat.end(), '\n', ' ');
  return units::escape_for_print(flat);
}

// Columns a terminal gives to escaped text: one a character. Wide characters are rare enough to stand out of
// line.
std::size_t width_of(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; }));
}

bool looks_like_number(const std::string& cell) {
  const auto digit = cell.find_first_not_of("-+");
  return digit != std::string::npos && digit <= 1 && cell[digit] >= '0' && cell[digit] <= '9';
}

struct Column {
  std::size_t width = 0;
  bool right = false;
};

Column measure(const std::vector<std::vector<std::string>>& rows, std::size_t at) {
  Column out;
  bool any = false, all = true;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto& cell = rows[i][at];
    out.width = std::max(out.width, width_of(cell));
    if (i == 0 || cell.empty()) continue; // the heading says nothing about the kind
    any = true;
    all = all && looks_like_number(cell);
  }
  out.right = any && all;
  return out;
}

void append_table(std::string& out, const Table& table) {
  std::vector<std::vector<std::string>> rows{table.columns};
  rows.insert(rows.end(), table.rows.begin(), table.rows.end());
  for (auto& row : rows)
    for (auto& cell : row)
      cell = one_line(cell);
  std::vector<Column> columns;
  for (std::size_t i = 0; i < table.columns.size(); ++i)
    columns.push_back(measure(rows, i));
  for (const auto& row : rows) {
    std::string line;
    for (std::size_t i = 0; i < row.size(); ++i) {
      const std::string gap(columns[i].width - width_of(row[i]), ' ');
      line += i == 0 ? "" : "  ";
      line += columns[i].right ? gap + row[i] : row[i] + gap;
    }
    line.erase(line.find_last_not_of(' ') + 1);
    out += line + '\n';
  }
}

std::string in_color(const Manner& manner, const char* color, const std::string& text) {
  return manner.color ? color + text + plain : text;
}

void append_lead(std::string& out, const std::string& text, const Manner& manner) {
  if (!text.empty()) out += in_color(manner, bold, printable(text)) + '\n';
}

void append_choices(std::string& out, const std::vector<std::string>& choices, const Manner& manner) {
  for (std::size_t i = 0; i < choices.size(); ++i)
    out += std::to_string(i + 1) + ". " + one_line(choices[i]) + '\n';
  if (!choices.empty() && !manner.quiet && !manner.pick_hint.empty()) out += manner.pick_hint + '\n';
}

void append_cautions(std::string& out, const std::vector<std::string>& cautions, const Manner& manner) {
  for (const auto& caution : cautions)
    out += in_color(manner, yellow, "Caution: " + one_line(caution)) + '\n';
}

} // namespace

std::string printable(std::string_view text) {
  std::string out;
  while (!text.empty()) {
    const auto end = std::min(text.find('\n'), text.size());
    if (!out.empty()) out += '\n';
    out += units::escape_for_print(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return out;
}

std::string render(const Answer& answer, const Manner& manner) {
  std::string out;
  append_lead(out, answer.text, manner);
  if (!manner.quiet && !answer.reason.empty()) out += one_line(answer.reason) + '\n';
  if (answer.table) append_table(out, *answer.table);
  append_cautions(out, answer.cautions, manner);
  append_choices(out, answer.choices, manner);
  return out;
}

std::string render_problem(const Answer& problem, const Manner& manner) {
  std::string out = "nutward: ";
  const auto& lead = !problem.text.empty()     ? problem.text
                     : !problem.detail.empty() ? problem.detail
                                               : problem.title;
  append_lead(out, lead.empty() ? "The daemon refused without saying why." : lead, manner);
  for (const auto& [pointer, detail] : problem.errors) {
    if (detail == lead && pointer.size() <= 1) continue; // said already
    const auto where = one_line(pointer.substr(!pointer.empty() && pointer[0] == '/' ? 1 : 0));
    out += "  " + where + (where.empty() ? "" : ": ") + one_line(detail) + '\n';
  }
  if (!problem.remedy.empty()) out += one_line(problem.remedy) + '\n';
  append_cautions(out, problem.cautions, manner);
  append_choices(out, problem.choices, manner);
  return out;
}

} // namespace nutward::cli
