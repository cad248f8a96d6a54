// Which of a list is meant that was shown last: "the second one", "use the third one", "number 13".
#include "talk/understand.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace nutward::talk {

using What = Understood::What;

namespace {

struct Wanted {
  std::string row;      // "use", "hold"; "" where the sentence only points
  std::int64_t n = 0;   // which
  bool ordinal = false; // by its place in the list; else by the number that it has there
};

std::optional<Wanted> wanted_in(const Reader& in, std::size_t most) {
  Wanted out;
  std::size_t i = 0;
  while (in.any(i, {"please", "ok", "okay"}))
    ++i;
  if (in.any(i, {"use", "take", "hold"})) out.row = in.is(i++, "hold") ? "hold" : "use";
  while (in.any(i, {"the", "number", "#"}))
    ++i;
  const bool last = in.is(i, "last");
  const auto n = last ? std::optional{static_cast<std::int64_t>(most)} : whole(in.at(i));
  if (!n || *n < 1) return std::nullopt;
  out.n = *n;
  out.ordinal = last || in.at(i)->ordinal.has_value();
  // "The 12", "and the 4th" are frets.
  if (!out.ordinal && !(i > 0 && in.any(i - 1, {"number", "#"}))) return std::nullopt;
  ++i;
  const bool one = in.is(i, "one") || (in.is(i, "of") && in.any(i + 1, {"them", "these", "those"}));
  if (out.ordinal && !one && out.row.empty()) return std::nullopt;
  if (in.is(i, "one")) ++i;
  if (in.is(i, "of")) i += 2;
  while (in.any(i, {"please", "then", "instead"}))
    ++i;
  return i == in.size() ? std::optional{out} : std::nullopt;
}

// The number that a row of the table has in its first column, where that is one.
std::optional<std::int64_t> number_of(const std::vector<std::string>& row) {
  std::int64_t out = 0;
  const std::string& cell = row.front();
  const auto read = std::from_chars(cell.data(), cell.data() + cell.size(), out);
  return read.ec == std::errc{} && read.ptr == cell.data() + cell.size() ? std::optional{out} : std::nullopt;
}

std::optional<std::int64_t> listed(const shop::Table& table, const Wanted& wanted) {
  if (wanted.ordinal) {
    const auto at = static_cast<std::size_t>(wanted.n);
    return at > table.rows.size() ? std::nullopt : number_of(table.rows[at - 1]);
  }
  const bool there = std::any_of(table.rows.begin(), table.rows.end(),
                                 [&](const auto& row) { return number_of(row) == wanted.n; });
  return there ? std::optional{wanted.n} : std::nullopt;
}

// What was offered to be done with one piece of the list, with the other one instead.
std::vector<shop::Call> with_piece(const shop::Answer& answer, std::string_view row, std::int64_t piece) {
  std::vector<shop::Call> out;
  for (const shop::Choice& c : answer.choices) {
    if (c.call.find("piece") == nullptr || (!row.empty() && c.call.row != row)) continue;
    out.push_back(c.call);
    for (auto& [name, value] : out.back().args)
      if (name == "piece") value = shop::Ref{shop::Thing::piece, piece};
  }
  return out;
}

} // namespace

std::optional<Understood> of_a_table(const Reader& in, const Surroundings& at) {
  const auto& answer = at.state.answer;
  if (!answer || !answer->table || answer->table->rows.empty()) return std::nullopt;
  const shop::Table& table = *answer->table;
  const bool pieces = table.columns.front() == "piece", jobs = table.columns.front() == "job";
  if (!pieces && !jobs) return std::nullopt;
  const auto wanted = wanted_in(in, table.rows.size());
  const auto id = wanted ? listed(table, *wanted) : std::nullopt;
  if (!id) return std::nullopt;
  const auto& choices = at.state.choices;
  if (!choices.empty()) {
    // What is offered has numbers of its own: of the two nothing is done at once.
    auto calls =
        pieces && wanted->ordinal ? with_piece(*answer, wanted->row, *id) : std::vector<shop::Call>{};
    if (calls.empty()) return std::nullopt;
    const auto place = static_cast<std::size_t>(wanted->n);
    if (wanted->row.empty() && place <= choices.size()) calls.push_back(choices[place - 1].call);
    return offer(fmt::format("That is piece {} of the list. Pick one by its number.", *id), calls, at);
  }
  if (!wanted->row.empty()) return std::nullopt;
  Understood out;
  out.what = What::ask;
  const shop::Thing thing = pieces ? shop::Thing::piece : shop::Thing::job;
  out.calls = {{pieces ? "place" : "job", {{pieces ? "piece" : "job", shop::Ref{thing, *id}}}}};
  return out;
}

} // namespace nutward::talk
