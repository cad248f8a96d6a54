// Where in the queue a piece goes that came out of a slot.
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

namespace {

// The slots that the shop's cut plan, brought up to date with the piece, makes of it; in the order of
// cutting.
std::vector<std::pair<std::int64_t, int>> slots_in_plan(const Piece& piece, const View& view,
                                                        const Setup& set) {
  const WirePlan planned = plan_of(wire_of(view, piece.wire), view, set);
  const cutting::Problem& problem = planned.what.problem;
  std::vector<std::pair<std::int64_t, int>> out;
  for (const cutting::Use& use : planned.plan.uses) {
    if (use.source.from != cutting::From::piece) continue;
    if (problem.pieces[use.source.index].facts.id != piece.id) continue;
    for (const cutting::Fret& f : use.frets)
      out.emplace_back(problem.slots[f.slot].job, problem.slots[f.slot].slot);
  }
  return out;
}

} // namespace

std::optional<NextPlace> next_place(const Piece& piece, const Job& job, int slot, const View& view,
                                    const Setup& set) {
  std::vector<pieces::Placing> free;
  for (const pieces::Placing& p :
       pieces::places(facts_of(piece, view), open_slots(piece.wire, view, set), set.fit)) {
    if (p.slot.job == job.id && p.slot.slot == slot) continue; // where it came from
    const auto held = view.tin().held_for(p.slot.job);
    if (std::none_of(held.begin(), held.end(), [&](const Piece& h) { return held_for(h, p.slot.slot); }))
      free.push_back(p);
  }
  if (free.empty()) return std::nullopt;
  for (const auto& [planned_job, planned_slot] : slots_in_plan(piece, view, set)) {
    const auto at =
        std::find_if(free.begin(), free.end(), [&, j = planned_job, s = planned_slot](const auto& p) {
          return p.slot.job == j && p.slot.slot == s;
        });
    if (at != free.end()) return NextPlace{*at, true};
  }
  return NextPlace{free.front(), false};
}

std::string words_of(const std::optional<NextPlace>& next, const View& view, const Setup& set) {
  if (!next) return "No other open slot in the queue takes it.";
  const pieces::Placing& at = next->placing;
  return fmt::format("{} slot {} of {}: {}.", next->planned ? "The cut plan now has it for" : "It goes into",
                     at.slot.slot, named(view.jobs().find(at.slot.job).value()), how_to(at.verdict, set));
}

} // namespace nutward::shop::command_rows
