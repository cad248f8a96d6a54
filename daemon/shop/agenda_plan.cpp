#include "shop/agenda_plan.hpp"

#include "shop/kept_agenda.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace nutward::shop {

namespace {

constexpr std::int64_t subject = 1;

// About a second for 100 jobs of 10 stages; what is proved before ends before.
std::int64_t steps_for(const agenda::Problem& problem) {
  std::int64_t tasks = 0;
  for (const agenda::Job& j : problem.jobs)
    tasks += std::ssize(j.tasks);
  return std::min<std::int64_t>(300'000 + 700 * tasks, 5'000'000);
}

bool aged(const KeptAgenda& agenda, Instant now, std::chrono::seconds patience = let_pass) {
  const auto first = first_start(agenda);
  return first && *first + patience < now;
}

agenda::Plan planned(const agenda::Problem& problem, const agenda::Budget& budget) {
  try {
    return agenda::plan(problem, budget);
  } catch (const agenda::BadAgenda& bad) {
    throw Problem(Fault::state, bad.what(), "/", bad.would_do);
  }
}

PlanInput input_at(const View& view, const hours::Calendar& calendar, const hours::Zone& zone, Instant now) {
  PlanInput out;
  auto what = std::make_shared<AgendaInput>(agenda_input(view, calendar, zone, now));
  if (what->problem.jobs.empty()) return out;
  const std::string digest = agenda_digest(*what);
  out.digest = digest;
  const auto stored = view.plans().find(agenda_planning, subject);
  const auto before = stored ? agenda_from_text(stored->body) : std::nullopt;
  if (before && before->digest == digest) {
    // Of the same shop: the stored one stands until it has aged, and then another may take its place.
    out.digest = aged(*before, now) ? fmt::format("{:016x}", now.s / let_pass.count()) + digest.substr(16)
                                    : stored->digest;
  }
  out.work_out = [what, digest](const std::optional<StoredPlan>& last, bool haste,
                                const std::stop_token& stop) {
    AgendaInput input = *what;
    const auto kept_before = last ? agenda_from_text(last->body) : std::nullopt;
    if (kept_before) remember(input, *kept_before);
    const std::int64_t steps = haste ? agenda_steps_of_an_answer : steps_for(input.problem);
    return to_text(kept(input, digest, planned(input.problem, {steps, stop})));
  };
  return out;
}

} // namespace

AgendaPlan agenda_of(const View& view, const hours::Calendar& calendar, const hours::Zone& zone, Instant now,
                     std::chrono::seconds patience) {
  AgendaPlan out{agenda_input(view, calendar, zone, now), {}};
  if (out.what.problem.jobs.empty()) return out;
  const auto stored = view.plans().find(agenda_planning, subject);
  const auto before = stored ? agenda_from_text(stored->body) : std::nullopt;
  if (before) {
    out.planned_at = stored->made;
    if (before->digest == agenda_digest(out.what) && before->from <= now && !aged(*before, now, patience)) {
      if (auto plan = plan_of(*before, out.what)) {
        out.plan = std::move(*plan);
        out.what.problem.from = std::min(now, first_start(*before).value_or(now));
        out.settled = stored->settled;
        return out;
      }
    }
    out.brought_up_to_date = true;
    remember(out.what, *before);
  }
  out.plan = planned(out.what.problem, {agenda_steps_of_an_answer, {}});
  out.settled = false;
  return out;
}

std::optional<Instant> agenda_ages(const View& view, const hours::Calendar& calendar, const hours::Zone& zone,
                                   Instant now) {
  const auto stored = view.plans().find(agenda_planning, subject);
  const auto before = stored ? agenda_from_text(stored->body) : std::nullopt;
  if (!before) return std::nullopt;
  // A new day has another horizon; nobody is there before the shop opens.
  std::optional<Instant> next = hours::next_open(calendar, zone, zone.instant(zone.local(now).day + 1, 0));
  const auto earlier = [&](Instant t) {
    const auto open = hours::next_open(calendar, zone, std::max(t, now + std::chrono::minutes{1}));
    if (open && (!next || *open < *next)) next = open;
  };
  if (const auto first = first_start(*before)) earlier(*first + let_pass + std::chrono::seconds{1});
  // What should be over by then is expected to take longer (agenda_input).
  for (const KeptJob& j : before->jobs)
    for (const KeptTask& t : j.tasks)
      if (t.fixed && t.name.booking == 0 && t.start < t.end && t.end > now) earlier(t.end + let_pass);
  return next;
}

PlanKind agenda_plans(const Clock& clock, Rooms& rooms) {
  PlanKind out;
  out.name = agenda_planning;
  out.follows = true;
  out.subjects = [](const View&) { return std::vector{subject}; };
  out.input = [&clock, &rooms](std::int64_t, const View& view) {
    const auto room = rooms.of(view);
    return input_at(view, room.calendar, *room.zone, clock.now());
  };
  out.ages = [&clock, &rooms](const View& view) {
    const auto room = rooms.of(view);
    return agenda_ages(view, room.calendar, *room.zone, clock.now());
  };
  return out;
}

} // namespace nutward::shop
