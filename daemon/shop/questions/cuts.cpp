// The cut plan: which piece, stick or coil each open slot is cut from, and where on the rule.
#include "shop/cut_words.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

struct Wanted {
  std::vector<Wire> wires;
  std::optional<Job> job;
  CutFrom from;
};

Wanted wanted(const Args& args, const View& view) {
  Wanted out;
  out.from = {args.yes("tin_only"), args.many<Length>("sticks")};
  if (args.has("job")) out.job = job_of(args, view);
  if (args.has("wire"))
    out.wires = {wire_of(view, args.id("wire"))};
  else if (out.job)
    out.wires = {wire_of(view, out.job->wire)};
  else
    out.wires = view.wires().all();
  if (out.job && out.job->wire != out.wires.front().id) {
    throw Problem(Fault::value,
                  fmt::format("{} is of {}, not of {}.", named(*out.job), wire_of(view, out.job->wire).name,
                              out.wires.front().name),
                  "wire", "Leave the wire out: a job has one.");
  }
  if (out.from.tin_only && !out.from.sticks.empty())
    throw Problem(Fault::value, "Only the tin, and sticks, cannot both be.", "sticks_mm", "Leave one out.");
  if (!out.from.sticks.empty() && out.wires.size() != 1)
    throw Problem(Fault::value, "Which wire are these sticks of?", "wire",
                  "Say for example: cut plan for medium from 600 and 430 mm.");
  return out;
}

// What is not the whole of what is waiting is planned here and now.
Answer of_a_part(const Wanted& want, const View& view, const Setup& set) {
  const ToCut what = to_cut(want.wires.front(), want.job, want.from, view, set);
  const cutting::Plan plan = cutting::plan(what.problem, {steps_of_an_answer, {}});
  Answer out = answer_of({what, plan, want.job, want.from.tin_only}, view, set);
  if (want.job)
    out.reason =
        fmt::format("Planned as if job {} were alone; 'cut list for job {}' is its part of the plan for "
                    "the whole queue. ",
                    want.job->id, want.job->id) +
        out.reason;
  return out;
}

bool is_a_part(const Wanted& want) {
  return want.job || want.from.tin_only || !want.from.sticks.empty();
}

Answer of_one(const Wanted& want, const Moment& moment, const View& view, const Setup& set) {
  if (is_a_part(want)) return of_a_part(want, view, set);
  const WirePlan wire = plan_of(want.wires.front(), view, set);
  Answer out =
      answer_of({wire.what, wire.plan, want.job, false, wire.planned_at, wire.brought_up_to_date}, view, set);
  out.reason += age_of(wire, moment);
  return out;
}

std::vector<WirePlan> plans_of_all(const Wanted& want, const View& view, const Setup& set) {
  std::size_t slots = 0;
  std::vector<ToCut> all;
  for (const Wire& wire : want.wires) {
    ToCut what = is_a_part(want) ? to_cut(wire, {}, want.from, view, set) : whole_wire(wire, view, set);
    slots += what.problem.slots.size();
    if (!what.problem.slots.empty()) all.push_back(std::move(what));
  }
  std::vector<WirePlan> out;
  for (ToCut& what : all) {
    const std::int64_t steps = steps_of_an_answer * static_cast<std::int64_t>(what.problem.slots.size()) /
                               std::max<std::int64_t>(1, static_cast<std::int64_t>(slots));
    if (!is_a_part(want)) {
      out.push_back(plan_of(std::move(what), view, set, steps));
    } else {
      cutting::Plan plan = cutting::plan(what.problem, {steps, {}});
      out.push_back({std::move(what), std::move(plan)});
    }
  }
  return out;
}

Answer of_all(const Wanted& want, const View& view, const Setup& set) {
  Answer out;
  out.table =
      Table{{"wire", "frets", "from pieces", "from new wire", "sticks", "new wire", "short", "so"}, {}};
  std::vector<Value> data;
  CutSums sum;
  std::int64_t hasty = 0;
  const std::vector<WirePlan> all = plans_of_all(want, view, set);
  for (const WirePlan& wire : all) {
    const CutSums one = sums_of(wire.what, wire.plan);
    sum += one;
    out.table->rows.push_back({wire.what.wire.name, std::to_string(one.frets),
                               std::to_string(one.from_pieces), std::to_string(one.from_new),
                               std::to_string(one.sticks), say(one.new_wire, set),
                               std::to_string(one.short_of + one.waiting), proof_of(wire.plan, set)});
    data.push_back(data_of(wire));
    if (better_to_come(wire)) ++hasty;
  }
  if (all.empty()) {
    out.table.reset();
    out.text = "No job has an open slot: nothing to cut.";
  } else {
    out.text = lead_of(sum, want.from.tin_only, plural(static_cast<std::int64_t>(all.size()), "wire"), set);
    out.reason =
        fmt::format("Each wire is planned by itself: 'cut plan for {0}' shows what is cut from what, "
                    "'cut list of {0}' each mark on the rule, to print.",
                    all.front().what.wire.name);
    if (hasty > 0 && !is_a_part(want))
      out.reason += fmt::format(" A better plan of {} is being worked on.", plural(hasty, "wire"));
    out.cautions = {Hazard::nipping};
  }
  out.data = record({{"wires", list(std::move(data))}});
  return out;
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const Wanted want = wanted(args, view);
  if (args.has("wire") || args.has("job")) return of_one(want, moment, view, set);
  return of_all(want, view, set);
}

} // namespace

extern const Question cuts;
const Question cuts{
    {"cuts",
     "What to cut from which piece, stick or coil: for a job, a wire, or all, with the least new wire.",
     {takes::optional(takes::wire),
      takes::optional(takes::job),
      {"tin_only", Kind::yes, false, false, "no new wire: what the tin alone would serve"},
      {"sticks",
       Kind::length,
       false,
       true,
       "to cut from, each by its length, instead of what is on hand",
       {1, 20'000}}},
     {"[show] [the|a] (cut plan|cutting plan) [(for|of) {wire}] [from [sticks of] {sticks}]",
      "[show] [the|a] (cut plan|cutting plan) (for|of) {job} [from [sticks of] {sticks}]",
      "what (do|should|must) (i|we) cut",
      "how (do|should|can) (i|we) cut [the frets (of|for)] ({job}|{wire}) [from [sticks of] {sticks}]",
      "what if (i|we) [only] use [only] the tin {tin_only=yes} [for {job}]",
      "what if (i|we) [only] use [only] the tin {tin_only=yes} for {wire}",
      ("(which|what) (short frets|pieces|offcuts) (can|could|should|may|do) (i|we) use (for|on) {job} "
       "{tin_only=yes}"),
      "(cut plan|cutting plan) (for|of) ({job}|{wire}) from the tin [only|alone] {tin_only=yes}",
      ("[show|print] [me] [the|a] (cut plan|cutting plan|cut list|cutting list) (for|of) (everything|all [of "
       "it|[the] "
       "jobs|wires]|every (job|wire)|the [whole] queue)"),
      "how (do|should|can) (i|we) cut (everything|all [the] jobs|the [whole] queue)",
      ("what (do|should|must) (i|we) [need to] cut (next|now|for everything|for all [the] jobs|for the "
       "[whole] queue|all "
       "[the] jobs|altogether)"),
      "(which|what) (short frets|pieces|offcuts) would (do|work|fit) (for|on|in) {job} {tin_only=yes}"},
     {"cut plan for medium", "how do I cut job 8", "what if I only use the tin for job 8"},
     Role::look,
     {gives::records("wires", "those with open slots", cuts_in_sum())},
     cuts_in_full()},
    &ask};

} // namespace nutward::shop::question_rows
