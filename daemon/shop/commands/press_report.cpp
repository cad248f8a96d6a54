#include "shop/commands/press_report.hpp"

#include "shop/press_words.hpp"

#include <iterator>

namespace nutward::shop::command_rows {

namespace {

std::vector<int> next_slots(const Job& job, const View& view, const Setup& set) {
  const PressPlan plan = press_plan(job, view, set);
  if (plan.standing.next) return plan.plan.passes[*plan.standing.next].slots;
  if (plan.plan.passes.empty())
    throw Problem(Fault::state,
                  fmt::format("No pass of {} is known: {}", named(job), words_of(plan.plan.refused, set)),
                  "next", "Say which frets were pressed.");
  throw Problem(Fault::state, fmt::format("All passes of {} are done.", named(job)), "next",
                "Say which frets were pressed again.");
}

std::vector<int> slots_of(const Args& args, const Job& job, const View& view, const Setup& set) {
  if (args.yes("next") && args.has("slots"))
    throw Problem(Fault::value, "The next pass, or these frets?", "slots", "Say one of them.");
  if (args.yes("next")) return next_slots(job, view, set);
  if (!args.has("slots")) return job.slots;
  auto slots = args.slots("slots");
  for (int slot : slots) {
    if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end()) {
      throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slots",
                    fmt::format("It has slots {}.", ranges(job.slots)));
    }
  }
  return slots;
}

// The next pass is meant as it is now, whenever the choice is made.
Call with_slots(Call call, const std::vector<int>& slots) {
  const auto next =
      std::find_if(call.args.begin(), call.args.end(), [](const auto& arg) { return arg.first == "next"; });
  if (next != call.args.end()) *next = {"slots", list_of(slots)};
  return call;
}

// Below the rating of one bar and above that of another: which was it?
[[noreturn]] void ask_bar(const Args& args, const std::vector<int>& slots, Force load,
                          const std::vector<BarRating>& bars, const Setup& set) {
  std::string limits;
  for (const BarRating& b : bars) {
    limits += fmt::format("{}under bar {} at most {}", limits.empty() ? "" : ", ", b.bar->is.name,
                          as_said(b.most->load, set));
  }
  Problem problem(Fault::ambiguous,
                  fmt::format("{} is above what one of the bars is rated for: {}. Under which was it?",
                              as_said(load, set), limits),
                  "bar", "Say the bar, such as: under bar " + bars.front().bar->is.name + ".");
  for (const BarRating& b : bars) {
    if (problem.choices.size() == 9) break;
    Call call = with_slots(args.call(), slots);
    call.args.emplace_back("bar", b.bar->is.name);
    problem.choices.push_back({"under bar " + b.bar->is.name, std::move(call), {}});
  }
  throw Problem(std::move(problem));
}

// What the load may have been at most, by whichever bar it was.
std::optional<press::Limit> most_for(const Args& args, const PassReport& report, const Job& job,
                                     const View& view, const Setup& set) {
  const auto bars = ratings_of(job, report.slots, report.bar, view, set);
  const auto by_load = [](const BarRating& a, const BarRating& b) { return a.most->load < b.most->load; };
  if (!bars.front().most) return std::nullopt; // the plate is not known, whatever the bar
  const auto least = std::min_element(bars.begin(), bars.end(), by_load);
  const auto most = std::max_element(bars.begin(), bars.end(), by_load);
  const bool some = report.load && report.load->n > least->most->load.n;
  if (some && report.load->n <= most->most->load.n) ask_bar(args, report.slots, *report.load, bars, set);
  return some ? most->most : least->most;
}

// A yes takes its time, and by then another pass may be the next one.
[[noreturn]] void say_which(const PassReport& r, const Job& job, const Setup& set) {
  throw Problem(
      Fault::value,
      fmt::format("{} is above {}, {}, and which frets had it must be sure. The next pass is {} now.",
                  as_said(*r.load, set), words_of(r.most->by), as_said(r.most->load, set), ranges(r.slots)),
      "next",
      fmt::format("Say the frets, as in: pressed {} of job {} at {}.", ranges(r.slots), job.id,
                  as_said(*r.load, set)));
}

// The most that one step may come to, times the load before: under a narrow bar from rung to rung.
double steepest(bool narrow, const press::Equipment& e) {
  double out = 1 + e.step_most;
  if (!narrow) return out;
  for (std::size_t i = 1; i < e.narrow_ladder.size(); ++i)
    out = std::max(out, e.narrow_ladder[i] / e.narrow_ladder[i - 1]);
  return out;
}

// A gauge is read to 2 %.
std::optional<Force> step_from(const PassReport& r, const Job& job, const View& view, const Setup& set) {
  if (r.slots.size() != 1 || !r.load) return std::nullopt;
  const bool narrow = r.bar && r.bar->is.narrow;
  const auto last = last_load(job, r.slots.front(), narrow, view);
  constexpr double reading = 1.02;
  const bool steep = last && r.load->n > last->n * steepest(narrow, equipment(view, set)) * reading;
  return steep ? last : std::nullopt;
}

} // namespace

PassReport pass_report(const Args& args, const Job& job, const View& view, const Setup& set) {
  PassReport out;
  out.slots = slots_of(args, job, view, set);
  if (args.has("bar")) out.bar = bar_of(args.text("bar"), "bar", view);
  out.load = args.opt<Force>("load");
  out.most = most_for(args, out, job, view, set);
  // A report of more frets than go into a group is of passes.
  if (out.load && !out.beyond()) {
    const auto usual = shop_limit(out.slots.size(), out.bar, view, set);
    if (usual && out.load->n > usual->load.n) out.above = usual;
  }
  if (args.yes("next") && out.beyond()) say_which(out, job, set);
  out.step_from = step_from(out, job, view, set);
  return out;
}

std::string beyond_rating(const PassReport& r, const Job& job, const Setup& set) {
  if (!r.beyond()) return "";
  return fmt::format(
      "{} is above {}, {}. If that is what really happened, a yes keeps it and flags it on {}; look "
      "at press and board before going on.",
      as_said(*r.load, set), words_of(r.most->by), as_said(r.most->load, set), named(job));
}

std::string above_limit(const PassReport& r, const Setup& set) {
  if (!r.above) return "";
  return fmt::format("{} is above {}, {}, though within the rating: it is kept as it was said.",
                     as_said(*r.load, set), words_of(r.above->by), as_said(r.above->load, set));
}

std::string steep_step(const PassReport& r, const Setup& set) {
  if (!r.step_from) return "";
  return fmt::format(" From {} that is more than one step at once: look at the board under it, and read it "
                     "before any more load.",
                     as_said(*r.step_from, set));
}

Event beyond_event(const PassReport& r, const Job& job, const Moment& moment, const Setup& set) {
  return {"press.beyond",
          fmt::format("Frets {} of {} were pressed at {}, above {}, {}: look at press and board.",
                      ranges(r.slots), named(job), as_said(*r.load, set), words_of(r.most->by),
                      as_said(r.most->load, set)),
          record({{"job", ref(Thing::job, job.id)},
                  {"slots", list_of(r.slots)},
                  {"load", *r.load},
                  {"rated", r.most->load},
                  {"limited_by", std::string(code_of(r.most->by))},
                  {"bar", r.bar ? Value{r.bar->is.name} : Value{}},
                  {"pressed", moment.happened},
                  {"person", ref(Thing::actor, moment.who.actor)}})};
}

void keep(Tx& tx, const Job& job, const PassReport& r, Instant when) {
  Pressing p;
  p.job = job.id;
  p.slots = r.slots;
  p.load = r.load;
  if (r.bar) p.bar = r.bar->id;
  p.pressed = when;
  if (r.beyond()) p.most = r.most->load;
  tx.put(p);
}

std::vector<int> without(const std::vector<int>& from, const std::vector<int>& gone) {
  std::vector<int> out;
  std::set_difference(from.begin(), from.end(), gone.begin(), gone.end(), std::back_inserter(out));
  return out;
}

std::vector<int> with(const std::vector<int>& a, const std::vector<int>& b) {
  std::vector<int> out;
  std::set_union(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(out));
  return out;
}

void mark(Tx& tx, const Job& job, const std::vector<int>& slots, FretState state) {
  const auto frets = tx.jobs().frets(job.id);
  for (int slot : slots) {
    Fret f;
    for (const Fret& old : frets) {
      if (old.slot == slot) f = old;
    }
    f.job = job.id;
    f.slot = slot;
    f.state = state;
    tx.put(f);
  }
}

void forget_pressings(Tx& tx, const Job& job, int slot) {
  for (Pressing p : tx.jobs().pressings(job.id)) {
    const bool of_it = std::find(p.slots.begin(), p.slots.end(), slot) != p.slots.end();
    if (!of_it || std::find(p.gone.begin(), p.gone.end(), slot) != p.gone.end()) continue;
    p.gone.push_back(slot);
    std::sort(p.gone.begin(), p.gone.end());
    tx.put(p);
  }
  for (Recheck r : tx.jobs().rechecks(job.id)) {
    const auto rest = without(r.slots, {slot});
    if (r.state != RecheckState::waiting || rest == r.slots) continue;
    if (rest.empty())
      r.state = RecheckState::superseded;
    else
      r.slots = rest;
    tx.put(r);
  }
}

} // namespace nutward::shop::command_rows
