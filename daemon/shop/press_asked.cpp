#include "shop/press_asked.hpp"

#include <iterator>

namespace nutward::shop {

namespace {

// What an answer's data always has, with nothing in it.
struct Data {
  std::vector<Value> passes, refused_slots, inside, shares;
  Value next, refused = list({}), notes = list({});
  bool all_done = false, foreseen = false;
  std::vector<std::pair<std::string, Value>> more{};
};

Value data_of(const Job& job, Data d) {
  std::vector<std::pair<std::string, Value>> out{{"job", ref(Thing::job, job.id)},
                                                 {"passes", list(std::move(d.passes))},
                                                 {"next", d.next},
                                                 {"all_done", d.all_done},
                                                 {"foreseen", d.foreseen},
                                                 {"refused", d.refused},
                                                 {"refused_slots", list(std::move(d.refused_slots))},
                                                 {"inside", list(std::move(d.inside))},
                                                 {"notes", d.notes},
                                                 {"shares", list(std::move(d.shares))}};
  for (auto& field : d.more)
    out.push_back(std::move(field));
  return record(std::move(out));
}

void join_to(std::string& text, const std::string& more) {
  if (!more.empty()) text += (text.empty() ? "" : " ") + more;
}

// What must be said or done before anything is pressed; of the four of the neck, one sentence that says them.
void tell_refused(Answer& out, const Job& job, const std::vector<press::Reason>& refused, const Setup& set) {
  out.text = fmt::format("Do not press {} yet. {}", named(job), words_of(refused, set));
  if (still_to_say(job).empty()) return;
  out.reason = fmt::format("Look first, then say what holds: job {} is {}.", job.id, still_to_say(job));
}

// Frets that share a load: a pass, or one fret that is pressed again.
struct Loaded {
  int lo = 0, hi = 0;
  Force load;
};

// What the load does to each fret when it is off its place; nullopt: the bar tips.
std::optional<press::Shares> tell_off(Answer& out, Data& data, const PressAsked& a, const PressPlan& plan,
                                      const Loaded& p) {
  auto shares = press::shares(plan.work, plan.equipment, p.lo, p.hi, p.load, *a.off);
  if (!shares) {
    out.text += " Off its place by that much the bar tips: do not press.";
    data.more.emplace_back("tips", true);
    return std::nullopt;
  }
  std::vector<int> too_much;
  out.table = Table{{"fret", "takes", "times its share", "at its heavier end", "so"}, {}};
  for (const press::FretLoad& f : shares->frets) {
    const std::string zone(word_of(f.zone));
    if (f.zone > press::Zone::amber) too_much.push_back(f.slot);
    out.table->rows.push_back({std::to_string(f.slot), share_of(f.share, a.set),
                               fmt::format("{:.2f}", f.times), fmt::format("{:.2f}", f.at_end), zone});
    data.shares.push_back(record({{"slot", std::int64_t{f.slot}},
                                  {"share", f.share},
                                  {"times", f.times},
                                  {"at_end", f.at_end},
                                  {"zone", zone}}));
  }
  out.text += words_of(*shares, too_much, p.load, a.set);
  data.more.emplace_back("tips", false);
  data.more.emplace_back("cut", shares->cut);
  return shares;
}

void tell_favour(Answer& out, Data& data, const PressAsked& a, const PressPlan& plan, const Loaded& p) {
  const press::Favour f = press::favour(plan.work, plan.equipment, p.lo, p.hi, p.load);
  out.text +=
      fmt::format(" To favour the {0}, move the load at most {1} toward the {0} of the middle, with {2} "
                  "there.",
                  a.favour, say(f.most, a.set), say(f.load, a.set));
  data.more.emplace_back("favour", record({{"side", a.favour}, {"most", f.most}, {"load", f.load}}));
}

void tell_pass(Answer& out, Data& data, const PressAsked& a, const PressPlan& plan, const press::Pass& p) {
  const press::Bar& bar = plan.bars.at(p.bar);
  join_to(out.text, sentence(words_of(p, bar, a.set)));
  join_to(out.reason, why_of(p, a.set));
  data.passes.push_back(data_of(p, bar, a.set));
  const Loaded loaded{p.lo, p.hi, p.load};
  std::optional<press::Shares> shares;
  if (a.off) shares = tell_off(out, data, a, plan, loaded);
  if (!a.favour.empty()) tell_favour(out, data, a, plan, loaded);
  if (!a.off) out.picture = picture_of(a.job, plan, p, out.text, a.set);
  if (shares)
    out.picture = picture_of(a.job, plan, p, *a.off, *shares, out.text, a.set); // none for what tips
}

// A narrow bar is for one fret, and only where it is asked for or there is no other.
std::vector<std::size_t> bars_to_try(const PressPlan& plan) {
  std::vector<std::size_t> wide, all;
  for (std::size_t b = 0; b < plan.bars.size(); ++b) {
    all.push_back(b);
    if (!plan.bars[b].narrow) wide.push_back(b);
  }
  return wide.empty() ? all : wide;
}

// What became of the load that was asked for; in a plan that is judged by its lightest group, here by this
// one.
std::vector<press::Reason> notes_of(const press::Pass& p, const PressAsked& a, const PressPlan& plan) {
  return press::one_group(plan.work, plan.equipment, plan.bars[p.bar], p.lo, p.hi, {false, a.wish.load})
      .notes;
}

// Why none of the bars would do, each by its name where there are several.
void tell_none(Answer& out, const PressAsked& a, const PressPlan& plan, const std::string& what,
               const std::vector<std::size_t>& bars, const std::vector<std::vector<press::Reason>>& refused) {
  if (!still_to_say(a.job).empty()) return tell_refused(out, a.job, refused.front(), a.set);
  out.text = what;
  if (const std::string all = said_of_all(refused, a.set); !all.empty()) return join_to(out.text, all);
  for (std::size_t i = 0; i < bars.size(); ++i) {
    const std::string with = bars.size() == 1 ? "" : fmt::format("With bar {}: ", plan.bars.at(bars[i]).name);
    join_to(out.text, with + words_of(refused[i], a.set));
  }
}

// One group, lo to hi.
Answer group_answer(const PressAsked& a, const PressPlan& plan) {
  Answer out;
  Data data;
  const int lo = a.slots.front(), hi = a.slots.back();
  if (hi - lo + 1 != static_cast<int>(a.slots.size())) {
    throw Problem(Fault::value,
                  fmt::format("Frets {} are no group: a bar lies over all between.", ranges(a.slots)),
                  "slots", fmt::format("Ask for {} to {}, or for each by itself.", lo, hi));
  }
  std::vector<std::size_t> tried;
  std::vector<std::vector<press::Reason>> refused;
  for (std::size_t b : bars_to_try(plan)) {
    press::OneGroup g;
    try {
      g = press::one_group(plan.work, plan.equipment, plan.bars[b], lo, hi, {false, a.wish.load});
    } catch (const press::BadWork& bad) {
      throw Problem(Fault::value, bad.what(), "slots", bad.would_do);
    }
    if (g.pass) {
      g.pass->bar = b;
      out.about.args = {{"slots", list_of(g.pass->slots)}}; // "pressed it"
      tell_pass(out, data, a, plan, *g.pass);
      join_to(out.text, words_of(g.notes, a.set));
      data.notes = data_of(g.notes, a.set);
      refused.clear();
      break;
    }
    tried.push_back(b);
    refused.push_back(std::move(g.refused));
  }
  if (!refused.empty()) {
    tell_none(out, a, plan, fmt::format("Frets {} are not one pass.", ranges(a.slots)), tried, refused);
    data.refused = data_of(refused.front(), a.set);
  }
  data.foreseen = plan.foreseen;
  out.data = data_of(a.job, std::move(data));
  return out;
}

std::string words_of(const press::OneFret& f, const press::Bar& bar, const Setup& set) {
  const std::string step =
      f.again && f.least < f.load ? say(f.least, set) + " to " + say(f.load, set) : say(f.load, set);
  return fmt::format(
      "Fret {} under bar {}, its middle {} from the nut, {}, with frets {} under it. The load over "
      "the fret: come up to {}, look, then {}{}.",
      f.slot, bar.name, say(f.bar_at, set), between(f.bar_between), ranges(f.under), say(f.first, set), step,
      f.again ? ", one step up from last time" : "");
}

// A fret that is pressed again takes all of the load until it is down; along the neck that stays over it.
void tell_side(Answer& out, Data& data, const PressAsked& a, const PressPlan& plan, const FretUnderBar& one) {
  const press::OneFret& f = one.fret;
  const Loaded alone{f.slot, f.slot, f.load};
  std::optional<press::Shares> shares;
  if (a.off) shares = tell_off(out, data, a, plan, alone);
  if (!a.favour.empty()) tell_favour(out, data, a, plan, alone);
  if (!a.off) out.picture = picture_of(a.job, plan, one, out.text, a.set);
  if (shares) out.picture = picture_of(a.job, plan, one, *a.off, *shares, out.text, a.set);
}

void refuse_along(const PressAsked& a) {
  if (!a.off || a.off->along == Length{}) return;
  throw Problem(Fault::value, "One fret is pressed with the load over it: along the neck it is not moved.",
                "toward", "Ask for bass or treble.");
}

// A fret that came up again after pressing needs glue before load, if there is a gap under its crown.
std::string sprang_first(const PressAsked& a, int slot) {
  for (const Fret& f : a.view.jobs().frets(a.job.id))
    if (f.slot == slot && f.state == FretState::sprang)
      return fmt::format(
          "Fret {0} sprang back by the record: with a gap under its crown glue and clamp it, more "
          "load would not keep it down; without one it is levelled. If it is pressed all the same: ",
          slot);
  return "";
}

Answer fret_answer(const PressAsked& a, const PressPlan& plan) {
  refuse_along(a);
  const int slot = a.slots.front();
  const auto tried = bars_to_try(plan);
  std::vector<std::vector<press::Reason>> refused;
  press::OneFretAnswer got;
  std::size_t with = tried.front();
  for (std::size_t b : tried) {
    const auto before = last_load(a.job, slot, plan.bars[b].narrow, a.view);
    try {
      got = press::one_fret(plan.work, plan.equipment, plan.bars[b], slot, before);
    } catch (const press::BadWork& bad) {
      throw Problem(Fault::value, bad.what(), "slots", bad.would_do);
    }
    with = b;
    if (got.fret) break;
    refused.push_back(got.refused);
  }
  const press::Bar& bar = plan.bars.at(with);
  const auto last = last_load(a.job, slot, bar.narrow, a.view);
  Answer out;
  Data data;
  std::vector<press::Reason> notes;
  if (got.fret) {
    press::OneFret& f = *got.fret;
    if (a.wish.load && *a.wish.load < f.load) { // less may always be asked for; more is not advised
      f.load = f.least = press::on_gauge(*a.wish.load, plan.equipment);
      f.first = f.first < f.load ? f.first : f.load;
    } else if (a.wish.load && *a.wish.load > f.load) {
      notes.emplace_back(press::OverShopLimit{*a.wish.load, {f.load, f.limited}});
    }
    out.text = sprang_first(a, slot) + words_of(f, bar, a.set);
    out.about.args = {{"slots", list_of({slot})}, {"slot", std::int64_t{slot}}};
    out.reason =
        fmt::format("First see that there is a gap under its crown and that nothing keeps it up: without "
                    "a gap do not press, it is the board or the crown. {}Read again between steps, never "
                    "two at once.",
                    last ? fmt::format("So far it had {}. ", loads_of(a.job, slot, a.view, a.set)) : "");
    if (!f.again && f.under.size() > 1) {
      out.reason +=
          fmt::format(" {} is what the {} frets under the bar get together, {} on each once all "
                      "are down; until this one is "
                      "down it takes most of it: stop when its gap is gone.",
                      say(f.load, a.set), f.under.size(),
                      units::print({f.load.n / static_cast<double>(f.under.size())}, a.set.load_unit,
                                   a.set.load_unit == units::ForceUnit::kn ? 0.01 : 1));
    }
    data.more.emplace_back("one", record({{"slot", std::int64_t{slot}},
                                          {"under", list_of(f.under)},
                                          {"bar", bar.name},
                                          {"bar_place", f.bar_at},
                                          {"load_place", f.load_at},
                                          {"first", f.first},
                                          {"least", f.least},
                                          {"load", f.load},
                                          {"n_per_mm", f.n_per_mm},
                                          {"again", f.again}}));
    join_to(out.text, words_of(notes, a.set));
    tell_side(out, data, a, plan, {f, bar});
  } else {
    tell_none(out, a, plan, fmt::format("Fret {} is not pressed by itself.", slot), tried, refused);
    got.refused = refused.front();
  }
  data.refused = data_of(got.refused, a.set);
  data.notes = data_of(notes, a.set);
  data.foreseen = plan.foreseen;
  out.data = data_of(a.job, std::move(data));
  return out;
}

void tell_slots(Answer& out, Data& data, const PressAsked& a, const PressPlan& plan) {
  std::vector<std::pair<std::string_view, std::vector<int>>> alike; // with the reason of the first of them
  std::vector<std::string> texts;
  for (const press::Refusal& r : plan.plan.slots) {
    const std::string text = words_of(r.why, a.set);
    if (alike.empty() || alike.back().first != code_of(r.why)) {
      alike.push_back({code_of(r.why), {}});
      texts.push_back(text);
    }
    alike.back().second.push_back(r.lo);
    data.refused_slots.push_back(
        record({{"slot", std::int64_t{r.lo}}, {"code", std::string(code_of(r.why))}, {"text", text}}));
  }
  for (std::size_t i = 0; i < alike.size(); ++i) {
    auto& slots = alike[i].second;
    std::sort(slots.begin(), slots.end());
    join_to(out.reason, fmt::format("In no pass {} {}: {}", slots.size() == 1 ? "is fret" : "are frets",
                                    ranges(slots), texts[i]));
  }
  for (const press::PassedOver& p : plan.plan.inside) {
    data.inside.push_back(record({{"lo", std::int64_t{p.lo}}, {"hi", std::int64_t{p.hi}}}));
  }
}

std::string stands(const PressAsked& a, const PressPlan& plan) {
  const press::Standing& s = plan.standing;
  std::string out;
  if (s.last)
    join_to(out, fmt::format("Last was frets {}, {}.", ranges(plan.plan.passes[*s.last].slots),
                             s.passes[*s.last] == press::Done::low ? "with less than its load"
                                                                   : word_of(s.passes[*s.last])));
  std::vector<std::string> skipped;
  for (std::size_t i : s.skipped)
    skipped.push_back(ranges(plan.plan.passes[i].slots));
  if (!skipped.empty()) join_to(out, fmt::format("Left out: {}.", fmt::join(skipped, "; ")));
  join_to(out, beyond_words(a.job, a.view, a.set));
  if (plan.foreseen) join_to(out, "No fret of it is reported seated yet: this holds once all are.");
  return out;
}

Answer passes_answer(const PressAsked& a, const PressPlan& plan) {
  Answer out;
  Data data;
  data.foreseen = plan.foreseen;
  data.refused = data_of(plan.plan.refused, a.set);
  const press::Standing& s = plan.standing;
  const auto& passes = plan.plan.passes;
  const auto notes = s.next && !a.all && plan.plan.refused.empty() && a.wish.load
                         ? notes_of(passes[*s.next], a, plan)
                         : plan.plan.notes;
  data.notes = data_of(notes, a.set);
  data.all_done = !passes.empty() && s.all_done;
  if (!plan.plan.refused.empty()) {
    tell_refused(out, a.job, plan.plan.refused, a.set);
  } else if (passes.empty()) {
    out.text = fmt::format("No group of {} goes under a bar of the shop.", named(a.job));
  } else if (a.all) {
    out.text = fmt::format("{}: {}, from the bodyward end.", named(a.job),
                           plural(std::ssize(passes), "pass", "passes"));
    out.table = table_of(plan, a.set);
    for (const press::Pass& p : passes)
      data.passes.push_back(data_of(p, plan.bars.at(p.bar), a.set));
    join_to(out.text, stands(a, plan));
  } else if (s.next) {
    out.text = fmt::format("Pass {} of {} on {}:", *s.next + 1, passes.size(), named(a.job));
    std::string whole = out.text;
    out.text.clear();
    tell_pass(out, data, a, plan, passes[*s.next]);
    out.about.args = {{"slots", list_of(passes[*s.next].slots)}};
    out.text = whole + " " + out.text;
    join_to(out.text, stands(a, plan));
  } else {
    out.text =
        fmt::format("All {} of {} are done.", plural(std::ssize(passes), "pass", "passes"), named(a.job));
    join_to(out.text, stands(a, plan));
    out.table = table_of(plan, a.set);
  }
  if (s.next && !passes.empty()) data.next = static_cast<std::int64_t>(*s.next) + 1;
  join_to(out.text, words_of(notes, a.set));
  tell_slots(out, data, a, plan);
  out.text = sentence(out.text);
  out.data = data_of(a.job, std::move(data));
  return out;
}

} // namespace

Answer answer_of(const PressAsked& a) {
  const PressPlan plan = press_plan(a.job, a.view, a.set, a.wish);
  for (int slot : a.slots) {
    if (std::find(a.job.slots.begin(), a.job.slots.end(), slot) != a.job.slots.end()) continue;
    throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(a.job), slot), "slots",
                  fmt::format("It has slots {}.", ranges(a.job.slots)));
  }
  if (a.slots.size() == 1) return fret_answer(a, plan);
  if (a.slots.size() > 1) return group_answer(a, plan);
  return passes_answer(a, plan);
}

std::vector<Give> press_gives() {
  return {
      gives::job,
      gives::records("passes", "the next one, the one asked about, or all, bodyward first", gives::pass()),
      {"next", Kind::count, "which pass of the job is next, from 1; null: none", Often::or_null},
      {"all_done", Kind::yes, "whether every pass is"},
      {"foreseen", Kind::yes, "whether no fret is reported seated yet, so that all are taken to be"},
      gives::reasons("refused", "why nothing is pressed, or not so"),
      gives::records("refused_slots", "frets in no pass",
                     {gives::slot,
                      {"code", Kind::words, "why, as in refused"},
                      {"text", Kind::words, "a whole sentence with its numbers"}}),
      gives::records("inside", "groups inside the one before, which were left out",
                     {{"lo", Kind::slot, "from"}, {"hi", Kind::slot, "to"}}),
      gives::reasons("notes", "what became of the load that was asked for"),
      {"one",
       Kind::words,
       "of one fret by itself",
       Often::at_times,
       {gives::slot,
        {"under", Kind::slot, "all frets under the bar", Often::many},
        {"bar", Kind::name, "which"},
        {"bar_place", Kind::length, "of its middle, from the nut"},
        {"load_place", Kind::length, "of the load"},
        {"first", Kind::load, "come up to this, look"},
        {"least", Kind::load, "the smallest step up"},
        {"load", Kind::load, "and the largest"},
        {"n_per_mm", Kind::number, "N for each mm of the fret"},
        {"again", Kind::yes, "whether it is a step up from the last load"}}},
      {"tips", Kind::yes, "whether the bar tips with the load there", Often::at_times},
      gives::records("shares", "what each fret takes with the load off its place, where that was asked",
                     {gives::slot,
                      {"share", Kind::load, "of the load"},
                      {"times", Kind::number, "its fair share"},
                      {"at_end", Kind::number, "at its heavier end, times the fair load"},
                      gives::one_of("zone", "so", {"green", "amber", "too much", "lifts off"})}),
      {"cut", Kind::load, "what may be pressed with then", Often::at_times},
      {"favour",
       Kind::words,
       "of a side",
       Often::at_times,
       {gives::one_of("side", "which", {"bass", "treble"}),
        {"most", Kind::length, "how far off the middle at most"},
        {"load", Kind::load, "and with what load"}}}};
}

} // namespace nutward::shop
