#include "shop/cut_planning.hpp"

#include "shop/going_on.hpp"
#include "shop/wire_plan.hpp"

#include <algorithm>
#include <memory>
#include <set>

namespace nutward::shop {

namespace {

// About a second for 100 jobs where it was measured, and under ten for 1,000; most plans are proved best long
// before.
std::int64_t steps_for(const cutting::Problem& problem) {
  return std::max<std::int64_t>(1'000'000, 250 * static_cast<std::int64_t>(problem.slots.size()));
}

// Wires of open jobs. Whether any slot of theirs is open shows when they are gathered.
std::vector<std::int64_t> subjects(const View& view) {
  std::set<std::int64_t> out;
  for (const Job& job : view.jobs().open())
    out.insert(job.wire);
  return {out.begin(), out.end()};
}

PlanInput input(std::int64_t wire, const View& view) {
  const auto what = view.wires().find(wire);
  auto problem = std::make_shared<cutting::Problem>();
  if (what) *problem = whole_wire(*what, view, setup(view)).problem;
  PlanInput out;
  if (problem->slots.empty()) return out;
  out.digest = digest_of(*problem);
  out.work_out = [problem](const std::optional<StoredPlan>& last, bool haste, const std::stop_token& stop) {
    cutting::Problem now = *problem;
    const auto before = last ? cuts_from_text(last->body) : std::nullopt;
    if (before) now.previous = previous_of(*before, now);
    const std::int64_t steps = haste ? steps_of_an_answer : steps_for(now);
    return to_text(kept(now, cutting::plan(now, {steps, stop})));
  };
  return out;
}

} // namespace

PlanKind cut_plans() {
  return {cut_planning, &subjects, &input};
}

} // namespace nutward::shop
