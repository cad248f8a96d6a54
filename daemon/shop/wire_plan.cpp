#include "shop/wire_plan.hpp"

#include "shop/cut_planning.hpp"
#include "shop/kept_cuts.hpp"

#include <algorithm>

namespace nutward::shop {

WirePlan plan_of(ToCut what, const View& view, std::int64_t steps) {
  WirePlan out{std::move(what), {}};
  cutting::Problem& problem = out.what.problem;
  if (problem.slots.empty()) return out;
  const auto stored = view.plans().find(cut_planning, problem.wire);
  const auto before = stored ? cuts_from_text(stored->body) : std::nullopt;
  if (before) {
    out.planned_at = stored->made;
    if (stored->digest == digest_of(problem)) {
      if (auto plan = plan_of(*before, problem)) {
        out.plan = std::move(*plan);
        out.settled = stored->settled;
        return out;
      }
    }
    problem.previous = previous_of(*before, problem);
    out.brought_up_to_date = true;
  }
  out.plan = cutting::plan(problem, {steps, {}});
  out.settled = false;
  return out;
}

WirePlan plan_of(const Wire& wire, const View& view, const Setup& setup) {
  return plan_of(to_cut(wire, {}, {}, view, setup), view, steps_of_an_answer);
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
           return p.in_tin && p.slot == slot && p.id != piece.id;
         });
}

bool held_otherwise(const Piece& piece, const KeptUse& use) {
  if (!piece.job) return false;
  return std::none_of(use.frets.begin(), use.frets.end(), [&](const KeptFret& f) {
    return f.job == *piece.job && (!piece.slot || f.slot == *piece.slot);
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
