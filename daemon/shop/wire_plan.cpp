#include "shop/wire_plan.hpp"

#include "shop/cut_planning.hpp"
#include "shop/going_on.hpp"

#include <algorithm>

namespace nutward::shop {

ToCut whole_wire(const Wire& wire, const View& view, const Setup& setup) {
  return to_cut(wire, {}, {.most = in_the_background}, view, setup);
}

WirePlan plan_of(ToCut whole, const View& view, const Setup& setup, std::int64_t steps) {
  WirePlan out{std::move(whole), {}};
  if (out.what.problem.slots.empty()) return out;
  const auto stored = view.plans().find(cut_planning, out.what.wire.id);
  const auto before = stored ? cuts_from_text(stored->body) : std::nullopt;
  if (before) {
    out.planned_at = stored->made;
    if (stored->digest == digest_of(out.what.problem)) {
      if (auto plan = plan_of(*before, out.what.problem)) {
        out.plan = std::move(*plan);
        out.settled = stored->settled;
        return out;
      }
    }
    out.brought_up_to_date = true;
  }
  if (out.what.problem.slots.size() > most_slots || out.what.problem.pieces.size() > most_pieces)
    out.what = to_cut(out.what.wire, {}, {}, view, setup);
  cutting::Problem& problem = out.what.problem;
  if (before) problem.previous = previous_of(*before, problem);
  out.plan = cutting::plan(problem, {steps, {}});
  out.settled = false;
  return out;
}

WirePlan plan_of(const Wire& wire, const View& view, const Setup& setup) {
  return plan_of(whole_wire(wire, view, setup), view, setup, steps_of_an_answer);
}

namespace {

// Whether the slot still waits for a fret, and for none but of this piece.
bool waits(std::int64_t job_id, int slot, const Piece& piece, const View& view, const Setup& setup) {
  const auto job = view.jobs().find(job_id);
  if (!job || job->state != JobState::open || job->wire != piece.wire) return false;
  const auto open = open_slots(*job, view, setup);
  const bool is_open =
      std::any_of(open.begin(), open.end(), [&](const SlotNeed& s) { return s.slot == slot; });
  const auto held = view.tin().held_for(job_id);
  return is_open && std::none_of(held.begin(), held.end(), [&](const Piece& p) {
           return p.in_tin && held_for(p, slot) && p.id != piece.id;
         });
}

bool held_otherwise(const Piece& piece, const KeptUse& use) {
  if (!piece.job) return false;
  return std::none_of(use.frets.begin(), use.frets.end(), [&](const KeptFret& f) {
    return f.job == *piece.job && (!piece.slot || held_for(piece, f.slot));
  });
}

} // namespace

std::vector<PlannedFret> planned_for(const Piece& piece, const View& view, const Setup& setup) {
  std::vector<PlannedFret> out;
  if (!piece.in_tin || !piece.length) return out;
  const auto stored = view.plans().find(cut_planning, piece.wire);
  const auto cuts = stored ? cuts_from_text(stored->body) : std::nullopt;
  if (!cuts) return out;
  for (const KeptUse& use : cuts->uses) {
    if (use.from != cutting::From::piece || use.id != piece.id) continue;
    if (use.whole != *piece.length || held_otherwise(piece, use)) continue;
    for (const KeptFret& f : use.frets)
      if (waits(f.job, f.slot, piece, view, setup)) out.push_back({f.job, f.slot, f.length, stored->made});
  }
  return out;
}

} // namespace nutward::shop
