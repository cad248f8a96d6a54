// The cut plan: which piece, stick or coil each open slot is cut from, and where on the rule.
#include "shop/cut_words.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

// Steps of one answer, which is given on the network's thread: that and what is done without counting steps
// (bounded by most_slots and most_pieces) came to 20 to 40 ms for 100 jobs where it was measured.
constexpr std::int64_t steps_of_an_answer = 12'000;

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

Answer of_one(const Wanted& want, const View& view, const Setup& set) {
  const ToCut what = to_cut(want.wires.front(), want.job, want.from, view, set);
  const cutting::Plan plan = cutting::plan(what.problem, {steps_of_an_answer, {}});
  return answer_of({what, plan, want.job, want.from.tin_only}, view, set);
}

Answer of_all(const Wanted& want, const View& view, const Setup& set) {
  Answer out;
  std::size_t slots = 0;
  std::vector<ToCut> all;
  for (const Wire& wire : want.wires) {
    ToCut what = to_cut(wire, {}, want.from, view, set);
    slots += what.problem.slots.size();
    if (!what.problem.slots.empty()) all.push_back(std::move(what));
  }
  out.table =
      Table{{"wire", "frets", "from pieces", "from new wire", "sticks", "new wire", "short", "so"}, {}};
  std::vector<Value> data;
  CutSums sum;
  for (const ToCut& what : all) {
    const std::int64_t steps = steps_of_an_answer * static_cast<std::int64_t>(what.problem.slots.size()) /
                               static_cast<std::int64_t>(slots);
    const cutting::Plan plan = cutting::plan(what.problem, {steps, {}});
    const CutSums one = sums_of(what, plan);
    sum += one;
    out.table->rows.push_back({what.wire.name, std::to_string(one.frets), std::to_string(one.from_pieces),
                               std::to_string(one.from_new), std::to_string(one.sticks),
                               say(one.new_wire, set), std::to_string(one.short_of + one.waiting),
                               proof_of(plan, set)});
    data.push_back(data_of(what, plan));
  }
  if (all.empty()) {
    out.table.reset();
    out.text = "No job has an open slot: nothing to cut.";
  } else {
    out.text = lead_of(sum, want.from.tin_only, plural(static_cast<std::int64_t>(all.size()), "wire"), set);
    out.reason = "Each wire is planned by itself; ask for one, as in 'cut plan for " + all.front().wire.name +
                 "', to see what is cut from what.";
    out.cautions = {Hazard::nipping};
  }
  out.data = record({{"wires", list(std::move(data))}});
  return out;
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Wanted want = wanted(args, view);
  if (args.has("wire") || args.has("job")) return of_one(want, view, set);
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
      "[show] [the|a] (cut list|cutting list) [(for|of) {wire}] [from [sticks of] {sticks}]",
      "[show] [the|a] (cut plan|cutting plan) (for|of) {job} [from [sticks of] {sticks}]",
      "what (do|should|must) (i|we) cut [(for|from) {wire}]", "what (do|should|must) (i|we) cut for {job}",
      "how (do|should|can) (i|we) cut [the frets (of|for)] {job}",
      "what if (i|we) [only] use [only] the tin {tin_only=yes} [for {job}]",
      "what if (i|we) [only] use [only] the tin {tin_only=yes} for {wire}",
      "(cut plan|cutting plan) (for|of) ({job}|{wire}) from the tin [only|alone] {tin_only=yes}"},
     {"cut plan for medium", "what do I cut for job 8", "what if I only use the tin for job 8"},
     Role::look,
     {gives::records("wires", "those with open slots", cuts_in_sum())},
     cuts_in_full()},
    &ask};

} // namespace nutward::shop::question_rows
