// Where a piece would go: the slot of all open jobs that wastes least of it.
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

struct Asked {
  std::optional<Piece> piece; // one of the tin
  pieces::PieceFacts facts;
  std::vector<Wire> wires;
  std::string words;
  std::string assumed;
};

Asked asked(const Args& args, const View& view, const Setup& setup) {
  if (args.has("piece")) {
    const Piece piece = piece_of(args, view);
    if (!piece.length) {
      throw Problem(Fault::state, "Nobody has measured that piece.", "piece",
                    "Measure it and say its length.");
    }
    // "Nipped 2 mm off piece 14": where it would go at its length on record is no answer to that.
    if (args.has("length") && args.get<Length>("length") != *piece.length) {
      throw Problem(Fault::value,
                    fmt::format("{} is on record; {} was said beside it.", named(piece, view, setup),
                                say(args.get<Length>("length"), setup)),
                    "length",
                    "Say the piece alone, or its new length and wire; 'correct' puts a length right.");
    }
    return {piece, facts_of(piece, view), {wire_of(view, piece.wire)}, named(piece, view, setup), ""};
  }
  if (!args.has("length")) {
    throw Problem(Fault::value, "Which piece, or what length?", "length",
                  "Say for example: where would 51.3 mm of medium go.");
  }
  Asked out;
  out.facts.length = args.get<Length>("length");
  const std::string ends = args.has("ends") ? args.text("ends") : "raw";
  out.facts.raw_ends = ends == "raw" ? 2 : ends == "one_raw" ? 1 : 0;
  if (!args.has("ends")) out.assumed = " Both ends are taken to be raw.";
  out.wires = args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all();
  out.words = "a " + say(out.facts.length, setup) + " piece" +
              (args.has("wire") ? " of " + out.wires.front().name : "");
  return out;
}

struct Found {
  pieces::Placing placing;
  Wire wire;
};

std::vector<Found> look(const Asked& a, const Args& args, const View& view, const Setup& setup) {
  std::vector<Found> out;
  for (const Wire& wire : a.wires) {
    auto open = open_slots(wire.id, view, setup);
    if (args.has("job"))
      std::erase_if(open, [&](const pieces::OpenSlot& s) { return s.job != args.id("job"); });
    for (auto& p : pieces::places(a.facts, open, setup.fit, args.yes("long")))
      out.push_back({p, wire});
  }
  // Each wire's places come ordered; over several wires the least waste leads again.
  std::stable_sort(out.begin(), out.end(), [](const Found& x, const Found& y) {
    const auto key = [](const Found& f) {
      return std::tuple(f.placing.verdict.outcome, f.placing.verdict.trim, f.placing.verdict.off_target);
    };
    return key(x) < key(y);
  });
  return out;
}

// Nobody said what wire the piece is of: the best slot for each.
Answer by_wire(Answer out, const Asked& a, const std::vector<Found>& found, const Setup& set) {
  std::vector<std::string> said;
  out.table = Table{{"wire", "job", "slot", "comes off", "to do"}, {}};
  for (const Wire& wire : a.wires) {
    const auto best =
        std::find_if(found.begin(), found.end(), [&](const Found& f) { return f.wire.id == wire.id; });
    if (best == found.end()) continue;
    const pieces::Placing& p = best->placing;
    said.push_back(fmt::format("{}: slot {} of job {}", wire.name, p.slot.slot, p.slot.job));
    out.table->rows.push_back({wire.name, std::to_string(p.slot.job), std::to_string(p.slot.slot),
                               comes_off(p.verdict, set), how_to(p.verdict, set)});
  }
  out.text = fmt::format("Where {} goes depends on its wire. {}.", a.words, fmt::join(said, "; "));
  out.reason = "The slot that wastes least, for each wire." + a.assumed;
  return out;
}

Value data_of(const Asked& a, const std::vector<Found>& found, const Elsewhere& in_plan) {
  std::vector<Value> all;
  for (const Found& f : found) {
    if (all.size() == 10) break;
    all.push_back(record({{"job", ref(Thing::job, f.placing.slot.job)},
                          {"slot", std::int64_t{f.placing.slot.slot}},
                          {"wire", ref(Thing::wire, f.wire.id)},
                          {"finish", f.placing.verdict.finish},
                          {"trim", f.placing.verdict.trim},
                          {"ends_to_dress", std::int64_t{f.placing.verdict.ends_to_dress}},
                          {"tang_to_nip", f.placing.verdict.tang_to_nip},
                          {"borderline", f.placing.verdict.outcome == pieces::Outcome::borderline}}));
  }
  std::vector<std::pair<std::string, Value>> data{
      {"fits", !found.empty()}, {"length", a.facts.length}, {"places", list(std::move(all))}};
  for (auto& field : fields_of(in_plan))
    data.push_back(std::move(field));
  return record(std::move(data));
}

// To use it where it wastes least; and where the cut plan has it, if that is elsewhere.
void offer_use(Answer& out, std::int64_t piece, const Found& best, const Elsewhere& in_plan,
               const View& view) {
  const auto offer = [&](std::int64_t job, int slot, std::string_view why) {
    out.choices.push_back(
        {fmt::format("use it in slot {} of job {}{}", slot, job, why),
         {"use",
          {{"piece", ref(Thing::piece, piece)}, {"job", ref(Thing::job, job)}, {"slot", std::int64_t{slot}}}},
         {seen({Thing::piece, piece}, view)}});
  };
  offer(best.placing.slot.job, best.placing.slot.slot, "");
  if (in_plan.wanted.empty() || in_plan.here) return;
  offer(in_plan.wanted.front().job, in_plan.wanted.front().slot, ", as the cut plan has it");
}

void add_table(Answer& out, const std::vector<Found>& found, const Setup& set) {
  if (found.size() < 2) return;
  out.table = Table{{"job", "slot", "wire", "comes off", "to do"}, {}};
  for (const Found& f : found) {
    if (out.table->rows.size() == 5) break;
    out.table->rows.push_back({std::to_string(f.placing.slot.job), std::to_string(f.placing.slot.slot),
                               f.wire.name, comes_off(f.placing.verdict, set),
                               how_to(f.placing.verdict, set)});
  }
}

void say_best(Answer& out, const Asked& a, const Found& best, const Elsewhere& in_plan, const Moment& moment,
              const View& view, const Setup& set) {
  const pieces::Placing& p = best.placing;
  const Job job = *view.jobs().find(p.slot.job);
  out.text =
      fmt::format("Put {} into slot {} of {}: {}.", a.words, p.slot.slot, named(job), how_to(p.verdict, set));
  out.reason = fmt::format("That slot takes {} of {}{}; {} comes off.{}", range_of(p.slot.need, set),
                           best.wire.name, job.due ? ", due " + moment.zone.human(*job.due) : "",
                           comes_off(p.verdict, set), a.assumed);
  if (const std::string plan = elsewhere_words(in_plan, set); !plan.empty()) out.reason += " " + plan;
  out.cautions = hazards_of(p.verdict, set);
  out.about.args = {{"job", ref(Thing::job, job.id)},
                    {"slot", std::int64_t{p.slot.slot}},
                    {"wire", ref(Thing::wire, best.wire.id)}};
  if (!a.piece) return;
  out.about.args.emplace_back("piece", ref(Thing::piece, a.piece->id));
  offer_use(out, a.piece->id, best, in_plan, view);
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const Asked a = asked(args, view, set);
  const auto found = look(a, args, view, set);
  Answer out;
  Elsewhere in_plan;
  if (a.piece && !found.empty()) {
    const pieces::OpenSlot& best = found.front().placing.slot;
    in_plan = InPlan(a.wires.front(), view, set).of(*a.piece, best.job, best.slot);
  }
  out.data = data_of(a, found, in_plan);
  if (found.empty()) {
    out.text = fmt::format("No open slot{} takes {}.",
                           args.has("job") ? " of " + named(job_of(args, view)) : "", a.words);
    out.reason = "Every open slot needs more, or would waste more than the trim limit, or has a tang too "
                 "short for it." +
                 a.assumed;
    return out;
  }
  if (a.wires.size() > 1) return by_wire(std::move(out), a, found, set);
  say_best(out, a, found.front(), in_plan, moment, view, set);
  add_table(out, found, set);
  return out;
}

} // namespace

extern const Question place;
const Question place{
    {"place",
     "Where a piece would go: the slot of all open jobs that wastes least of it.",
     {takes::optional(takes::piece),
      {"length", Kind::length, false, false, "of a piece that is not in the tin", takes::piece_length},
      takes::optional(takes::wire),
      {"job", Kind::job, false, false, "for this job alone"},
      {"ends", Kind::one_of, false, false, "how its ends are", {}, {"raw", "one_raw", "dressed"}},
      {"long", Kind::yes, false, false, "also where it would lose more than the trim limit"}},
     {"(is|are) {piece} [of] any (good|use) (for|on|in) {job}",
      "(can|could|may) [i|we] use {piece} (for|on|in) {job}",
      "where (on|in|of) {job} (would|does|could|should) {piece} (go|fit|belong)",
      "where (would|does|could|should) [a|the|this] {length} [piece|offcut|fret] [of {wire}] (go|fit|belong)",
      "where (would|does|could|should) [a|the|this] {length} [of] {wire} [piece|offcut|fret] (go|fit|belong)",
      "where (would|does|could|should) {piece} (go|fit|belong)",
      "where to put [a|the|this] {length} [piece|offcut|fret] [of {wire}]",
      "(which|what) slot (takes|for) [a|the|this] {length} [piece|offcut|fret] [of {wire}]",
      "(which|what) slot (takes|for) {piece}",
      "where (can|could|should|do) (i|we) (use|put) {piece}",
      "where (can|could|should|do) (i|we) (use|put) [a|the|this] {length} [piece|offcut|fret] [of {wire}]",
      "where (can|could|should|do) (i|we) (use|put) [a|the|this] {length} [of] {wire} [piece|offcut|fret]",
      "what is {piece} [good|wanted|needed|planned|meant] for",
      "(is|are) {piece} (wanted|needed) [elsewhere|anywhere|for anything]",
      "what (does|would|will) [it] (cost|taking|to take) {piece} [cost]",
      "what (does|would|will) it cost (to take|to use|if (i|we) (took|take|use|used)) {piece}",
      "(can|could|may) (i|we) (take|have) {piece}",
      "(who|which job) (wants|needs) {piece}",
      "does (anybody|anyone|somebody|any job) (need|want) {piece}",
      ("(i|we) (got|have|have got) [a|an] {length} [piece|offcut|fret] [of {wire}] [here] where "
       "(does|would|should) "
       "it go"),
      ("(got|have) [a|an] {length} [piece|offcut|fret] [of {wire}] [here] where (does|would|should) it "
       "go")},
     {"where would a 51.3 mm piece go", "where would 51.3 mm of medium go", "which slot takes piece 1",
      "is piece 1 any good for job 1"},
     Role::look,
     {{"fits", Kind::yes, "whether an open slot takes it"},
      {"length", Kind::length, "of the piece"},
      gives::records("places", "up to ten, the one that wastes least first",
                     {gives::job,
                      gives::slot,
                      gives::wire,
                      {"finish", Kind::length, "of the fret"},
                      {"trim", Kind::length, "what comes off"},
                      {"ends_to_dress", Kind::count, "0 to 2"},
                      gives::tang_to_nip,
                      {"borderline", Kind::yes, "whether it must be tried"}}),
      gives::wanted_for,
      gives::price}},
    &ask};

} // namespace nutward::shop::question_rows
