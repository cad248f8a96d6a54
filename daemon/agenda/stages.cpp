#include "agenda/stages.hpp"

#include <algorithm>
#include <fmt/core.h>

namespace nutward::agenda {

namespace {

using enum StageKind;

constexpr std::array<StageRow, 19> table{{
    {pull, "pull", "pull the old frets", Machine::bench, 45, true},
    {true_board, "true", "true the board", Machine::sander, 75, false},
    {slots, "slots", "clean and check the slots", Machine::bench, 20, true},
    {bend, "bend", "bend the wire", Machine::bench, 10, true},
    {cut, "cut", "cut the frets", Machine::bench, 20, true},
    {dress, "dress", "dress the ends", Machine::sander, 45, true},
    {nip, "nip", "nip the tangs", Machine::bench, 30, true},
    {seat, "seat", "seat the frets", Machine::bench, 30, true},
    {press, "press", "press the frets", Machine::press, 60, true},
    {cure, "cure", "let the glue cure", Machine::bench, 0, false},
    {file, "file", "file and bevel the ends", Machine::bench, 60, true},
    {check, "check", "check every fret", Machine::bench, 0, false},
    {wait, "wait", "wait for springback", Machine::bench, 0, false},
    {recheck, "recheck", "check again for springback", Machine::bench, 15, true},
    {level, "level", "level the crowns", Machine::bench, 25, true},
    {crown, "crown", "crown the frets", Machine::bench, 45, true},
    {polish, "polish", "polish the frets", Machine::bench, 40, true},
    {round_corners, "corners", "round the corners", Machine::bench, 20, true},
    {done, "done", "finished", Machine::bench, 0, false},
}};

constexpr std::array rounded_order{pull, true_board, slots, bend,    cut,   dress, nip,    seat, press,
                                   cure, check,      wait,  recheck, level, crown, polish, done};
constexpr std::array filed_order{pull, true_board, slots, bend,    cut,   nip,   seat,   press,         cure,
                                 file, check,      wait,  recheck, level, crown, polish, round_corners, done};

bool belongs(StageKind kind, const StagePlan& plan) {
  switch (kind) {
  case pull:
    return plan.old_frets;
  case nip:
    return plan.bound;
  case press:
  case wait:
  case recheck:
    return plan.pressed;
  case cure:
    return plan.cure_h > 0;
  case level:
  case crown:
  case polish:
    return plan.levelled;
  default:
    return true;
  }
}

std::chrono::seconds work_of(StageKind kind, int frets, const Minutes& minutes) {
  const std::int32_t for_22 = minutes.at(static_cast<std::size_t>(kind));
  if (!row(kind).per_fret) return std::chrono::minutes{for_22};
  return std::chrono::minutes{for_22 == 0 ? 0 : std::max(5, (for_22 * frets + 21) / 22)};
}

void check_range(std::string_view what, std::int32_t value, std::int32_t least, std::int32_t most) {
  if (value < least || value > most)
    throw BadAgenda(fmt::format("{} {} is out of range.", value, what),
                    fmt::format("Say {} to {}.", least, most));
}

} // namespace

std::span<const StageRow> stage_table() {
  return table;
}

const Minutes& table_minutes() {
  static const Minutes all = [] {
    Minutes out{};
    for (const StageRow& r : table)
      out.at(static_cast<std::size_t>(r.kind)) = r.minutes;
    return out;
  }();
  return all;
}

const StageRow& row(StageKind kind) {
  return table.at(static_cast<std::size_t>(kind));
}

std::optional<StageKind> stage_named(std::string_view word) {
  const auto found =
      std::find_if(table.begin(), table.end(), [&](const StageRow& r) { return r.word == word; });
  return found == table.end() ? std::nullopt : std::optional(found->kind);
}

std::vector<Stage> stages_of(const StagePlan& plan, std::int32_t wait_h, const Minutes& minutes) {
  check_range("frets", plan.frets, 1, 200);
  check_range("hours of cure", plan.cure_h, 0, 168);
  check_range("hours of wait", wait_h, 1, 336);
  const std::span<const StageKind> order = plan.ends == EndStyle::rounded
                                               ? std::span<const StageKind>(rounded_order)
                                               : std::span<const StageKind>(filed_order);
  std::vector<Stage> out;
  for (const auto kind : order) {
    if (!belongs(kind, plan)) continue;
    const std::chrono::hours lag{kind == wait ? wait_h : kind == cure ? plan.cure_h : 0};
    out.push_back({kind, work_of(kind, plan.frets, minutes), lag});
  }
  return out;
}

} // namespace nutward::agenda
