// Which piece of the tin makes the fret for a slot, or for a length.
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

// What a fret is wanted for, in numbers and in words.
struct Goal {
  pieces::Wanted wanted;
  std::int64_t wire = 0;
  std::optional<std::int64_t> job;
  std::optional<int> slot;
  std::string words; // "slot 3 of job 1 (…)"
  std::string taken; // that the slot has its fret already; empty where it has none
};

[[noreturn]] void ask_job(const Args& args, const View& view) {
  Problem problem(Fault::ambiguous, "Which job is that slot of?", "job",
                  "Say the job's number or words that only it has.");
  for (const Job& job : view.jobs().open()) {
    if (problem.choices.size() == 9) break;
    Call call = args.call();
    call.args.emplace_back("job", Ref{Thing::job, job.id});
    problem.choices.push_back({named(job), std::move(call), {}});
  }
  throw Problem(std::move(problem));
}

Goal for_slot(const Args& args, const View& view, const Setup& setup) {
  if (!args.has("job")) ask_job(args, view);
  const Job job = job_of(args, view);
  Goal goal;
  goal.slot = slot_of(args, job);
  goal.job = job.id;
  goal.wire = job.wire;
  goal.wanted = wanted_for(job, *goal.slot, view, setup);
  goal.words = fmt::format("slot {} of {}", *goal.slot, named(job));
  for (const Fret& f : view.jobs().frets(job.id)) {
    if (f.slot != *goal.slot || f.state == FretState::came_short) continue;
    goal.taken = sentence(fmt::format("{} has its fret already{}.", goal.words,
                                      f.length ? ", " + say(*f.length, setup) + " long" : ""));
  }
  return goal;
}

// A fret of a finished length, whoever it is for: a slot whose target it is.
Goal for_length(const Args& args, const View& view, const Setup& setup) {
  Goal goal;
  const Length length = args.get<Length>("length");
  if (!args.has("wire")) {
    Problem problem(Fault::ambiguous, "Of which wire?", "wire", "Say the wire's name.");
    for (const Wire& wire : view.wires().all()) {
      Call call = args.call();
      call.args.emplace_back("wire", Ref{Thing::wire, wire.id});
      problem.choices.push_back({wire.name, std::move(call), {}});
    }
    throw Problem(std::move(problem));
  }
  goal.wire = args.id("wire");
  goal.wanted.need = board::need(length + 2 * setup.fit.setback, board::EndStyle::rounded, setup.fit);
  goal.wanted.another = least_useful(goal.wire, view, setup).length;
  goal.words = fmt::format("a fret of {} of {}", say(length, setup), wire_of(view, goal.wire).name);
  return goal;
}

std::string tang_words(const board::Need& need, const Setup& setup) {
  return need.tang ? fmt::format(", its tang nipped back to {}", say(*need.tang, setup)) : "";
}

void say_none(Answer& out, const Goal& goal, const Setup& setup, const View& view) {
  out.text = fmt::format("Nothing in the tin fits {}: cut {} of new {}{}.", goal.words,
                         say(goal.wanted.need.cut, setup), wire_of(view, goal.wire).name,
                         tang_words(goal.wanted.need, setup));
  out.cautions.push_back(Hazard::nipping);
}

// A piece of the tin that would do, and what the cut plan has it for.
struct Offer {
  pieces::Candidate candidate;
  Piece piece;
  Elsewhere elsewhere;
};

// The price of the first is reckoned as well as an answer may, of the others by exchanges alone.
std::vector<Offer> offers(const Goal& goal, const std::vector<pieces::Candidate>& found, const Setup& setup,
                          const View& view) {
  const Wire wire = wire_of(view, goal.wire);
  InPlan in_plan(wire, view, setup);
  std::vector<Offer> out;
  for (const pieces::Candidate& c : found) {
    Piece piece = *view.tin().find(c.piece.id);
    Elsewhere elsewhere = in_plan.of(piece, goal.job, goal.slot, out.empty() ? steps_of_an_answer : 0);
    out.push_back({c, std::move(piece), std::move(elsewhere)});
  }
  return out;
}

std::string in_the_plan(const Elsewhere& at, const Setup& setup) {
  if (at.wanted.empty()) return "";
  if (at.here) return "has it here";
  return "wants it for " + wanted_for_words(at.wanted) +
         (at.price ? "; costs " + price_words(*at.price, setup) : "");
}

void add_table(Answer& out, const std::vector<Offer>& offers, const Setup& setup) {
  if (offers.size() < 2) return;
  const bool planned =
      std::any_of(offers.begin(), offers.end(), [](const Offer& o) { return !o.elsewhere.wanted.empty(); });
  out.table = Table{{"piece", "length", "where", "comes off", "to do"}, {}};
  if (planned) out.table->columns.emplace_back("the cut plan");
  for (const Offer& o : offers) {
    const pieces::Verdict& v = o.candidate.verdict;
    auto& row =
        out.table->rows.emplace_back(std::vector{std::to_string(o.piece.id), say(*o.piece.length, setup),
                                                 o.piece.place, comes_off(v, setup), how_to(v, setup)});
    if (planned) row.push_back(in_the_plan(o.elsewhere, setup));
  }
}

// What the plan has the best one for, and which other one would cost nothing where that costs something.
std::string plan_words(const std::vector<Offer>& offers, const Setup& setup) {
  const Elsewhere& best = offers.front().elsewhere;
  std::string out = elsewhere_words(best, setup);
  if (out.empty() || !best.price || best.price->nothing()) return out;
  const auto free = std::find_if(offers.begin(), offers.end(), [](const Offer& o) {
    return o.elsewhere.wanted.empty() || o.elsewhere.here ||
           (o.elsewhere.price && o.elsewhere.price->nothing());
  });
  if (free != offers.end()) out += fmt::format(" Piece {} would cost nothing.", free->piece.id);
  return out;
}

void say_best(Answer& out, const Goal& goal, const std::vector<Offer>& offers, const Setup& setup,
              const View& view) {
  const auto& [best, piece, elsewhere] = offers.front();
  out.text =
      fmt::format("For {} take {}: {}.", goal.words, named(piece, view, setup), how_to(best.verdict, setup));
  if (const std::string plan = plan_words(offers, setup); !plan.empty()) out.reason += " " + plan;
  out.cautions = hazards_of(best.verdict, setup);
  out.about.args.emplace_back("piece", ref(Thing::piece, piece.id));
  add_table(out, offers, setup);
  if (!goal.slot || !goal.taken.empty()) return;
  for (const char* row : {"use", "hold"}) {
    Call call{row,
              {{"piece", ref(Thing::piece, piece.id)},
               {"job", ref(Thing::job, *goal.job)},
               {"slot", std::int64_t{*goal.slot}}}};
    out.choices.push_back({fmt::format("{} it {} slot {} of job {}", row,
                                       std::string_view(row) == "use" ? "in" : "for", *goal.slot, *goal.job),
                           std::move(call),
                           {seen({Thing::piece, piece.id}, view)}});
  }
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  if (!args.has("slot") && !args.has("length")) {
    throw Problem(Fault::value, "A fit is for a slot of a job, or for a length of a wire.", "slot",
                  "Say for example: what fits slot 3 of job 1, or: what fits 52.4 mm of medium.");
  }
  const Goal goal = args.has("slot") ? for_slot(args, view, set) : for_length(args, view, set);
  const auto found = pieces::best(TinSource(view, goal.wire, goal.job, goal.slot), goal.wanted, set.fit,
                                  {args.yes("pulled"), args.yes("long")}, 5);
  Answer out;
  out.reason =
      fmt::format("It takes {}{}.", range_of(goal.wanted.need, set), tang_words(goal.wanted.need, set));
  if (goal.wanted.crown_height) {
    out.reason += fmt::format(" Its crown must be within {} of {}, as lot {} has it.",
                              say(set.fit.crown_tolerance, set), say(*goal.wanted.crown_height, set),
                              goal.wanted.lot.value_or(0));
  }
  if (goal.job) out.about.args = {{"job", ref(Thing::job, *goal.job)}, {"slot", std::int64_t{*goal.slot}}};
  out.about.args.emplace_back("wire", ref(Thing::wire, goal.wire));
  const std::vector<Offer> all_offers = offers(goal, found, set, view);
  if (all_offers.empty())
    say_none(out, goal, set, view);
  else
    say_best(out, goal, all_offers, set, view);
  if (!goal.taken.empty()) {
    out.text = fmt::format("{} {}", goal.taken, out.text);
    out.reason +=
        fmt::format(" If it will not do, say: fret {} of job {} came out short.", *goal.slot, *goal.job);
  }
  std::vector<Value> all;
  all.reserve(all_offers.size());
  for (const Offer& o : all_offers)
    all.push_back(data_of(o.candidate, o.elsewhere, view));
  const board::Need& need = goal.wanted.need;
  out.data = record({{"fits", !found.empty()},
                     {"job", goal.job ? Value{*goal.job} : Value{}},
                     {"slot", goal.slot ? Value{std::int64_t{*goal.slot}} : Value{}},
                     {"wire", ref(Thing::wire, goal.wire)},
                     {"need", record({{"least", need.least},
                                      {"target", need.target},
                                      {"most_mm", opt(need.most)},
                                      {"cut", need.cut},
                                      {"tang_mm", opt(need.tang)}})},
                     {"pieces", list(std::move(all))}});
  return out;
}

} // namespace

extern const Question fit;
const Question fit{
    {"fit",
     "Which piece of the tin makes the fret for a slot, or for a length.",
     {takes::optional(takes::slot),
      takes::optional(takes::job),
      {"length", Kind::length, false, false, "of the finished fret", takes::piece_length},
      takes::optional(takes::wire),
      {"pulled", Kind::yes, false, false, "also offer pulled frets"},
      {"long", Kind::yes, false, false, "also offer pieces that would lose more than the trim limit"}},
     {("(which|what) [piece|offcut|short fret|stick end|one] (fits|suits|goes in|do i use in|for) slot "
       "{slot} "
       "[(of|in|on) {job}]"),
      "(which|what) [piece|offcut] (fits|suits|for) {job} slot {slot}",
      "[is there] [a piece|an offcut|anything|something] (for|that fits|fits) slot {slot} [(of|in|on) {job}]",
      "find [me] [a piece|an offcut|something] for slot {slot} [(of|in|on) {job}]",
      "(which|what) [piece|offcut] (fits|suits|makes) {length} [of {wire}]",
      "is there [a piece|an offcut|anything] for {length} [of {wire}]",
      "[have we|do we have|is there|got|find] [me] something (about|around|near|like) {length} [of {wire}]",
      ("(which|what) [piece|offcut|short fret|short frets|one|ones] (can|could|should|may|do) (i|we) "
       "(use|take) "
       "(for|in|on) slot {slot} [(of|in|on) {job}]"),
      ("(which|what) [piece|offcut|short fret|short frets|pieces|offcuts] [in the tin] would (do|work|fit) "
       "[for|in] "
       "slot {slot} [(of|in|on) {job}]"),
      ("[is there|have we|do we have] [anything|something|a piece|an offcut|a short fret|a short one|one] "
       "[in "
       "the "
       "tin] (for|that fits|that would do for) [the] (slot|fret) {slot} [(of|in|on) {job}]")},
     {"what fits slot 3 of job 1", "is there an offcut for slot 9 of job 1", "what fits 52.4 mm of medium"},
     Role::look,
     {{"fits", Kind::yes, "whether the tin has a piece for it"},
      gives::or_null(gives::job),
      gives::or_null(gives::slot),
      gives::wire,
      gives::record("need", "the lengths that it takes",
                    {{"least", Kind::length, "the shortest that does"},
                     {"target", Kind::length, "the best"},
                     {"most", Kind::length, "the longest; null where nothing bounds it", Often::or_null},
                     {"cut", Kind::length, "what new wire is cut to"},
                     {"tang", Kind::length, "its longest tang, on a bound board", Often::or_null}}),
      gives::candidates}},
    &ask};

} // namespace nutward::shop::question_rows
