// The nutward shift: which frets of a job to lay elsewhere so that the fewest have to be made; and the
// verdict on one.
#include "shop/laid.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

constexpr std::size_t most_pieces = 4000; // of lengths for these slots; a tin that full offers enough

struct Found {
  Job job;
  std::vector<SaidLength> said;
  Laid lies;
  std::vector<pieces::PieceFacts> tin;
  bool whole_tin = true;
  pieces::Shift shift;
  std::vector<pieces::HandMove> moves;
};

// Slots that would be made if every fret that reaches stayed where it lies.
int made_without(const Laid& lies, const Setup& set) {
  const auto in_place = [&](const pieces::LaidFret& fret) {
    return pieces::verdict_on(fret, lies.slots, set.fit).say;
  };
  int out = static_cast<int>(lies.slots.size() - lies.frets.size());
  for (const pieces::LaidFret& fret : lies.frets) {
    const pieces::Say say = in_place(fret);
    if (say == pieces::Say::move || say == pieces::Say::remake) ++out;
  }
  return out;
}

const pieces::Filling& filling(const Found& f, int slot) {
  return *std::find_if(f.shift.fillings.begin(), f.shift.fillings.end(),
                       [&](const pieces::Filling& x) { return x.slot == slot; });
}

std::string with_work(const Found& f, int slot, const Setup& set) {
  const pieces::Verdict& v = filling(f, slot).verdict;
  return v.untouched && v.outcome == pieces::Outcome::fits ? "" : ": " + how_to(v, set);
}

std::string words_of(const pieces::HandMove& m, const Found& f, const View& view, const Setup& set) {
  const auto length = [&] { return say(f.lies.frets[m.index].facts.length, set); };
  switch (m.hand) {
  case pieces::Hand::to_tin:
    return fmt::format("lift fret {}, {} long, and put it in the tin", m.slot, length());
  case pieces::Hand::pull:
    return fmt::format(
        "fret {}, {} long, is seated and too short: pull it, which chips the slot, and report it pulled",
        m.slot, length());
  case pieces::Hand::aside:
    return fmt::format("lift fret {} and lay it aside", m.slot);
  case pieces::Hand::move:
    return fmt::format("move fret {} to slot {}{}", m.slot, m.to, with_work(f, m.to, set));
  case pieces::Hand::back:
    return fmt::format("lay the fret that was {} in slot {}{}", m.slot, m.to, with_work(f, m.to, set));
  case pieces::Hand::centre:
    return fmt::format("centre fret {}: it reaches both edges", m.slot);
  case pieces::Hand::finish:
    return fmt::format("fret {} stays{}", m.slot, with_work(f, m.slot, set));
  case pieces::Hand::take: {
    const Piece p = *view.tin().find(f.tin[m.index].id);
    return fmt::format("take {} for slot {}{}", named(p, view, set), m.to, with_work(f, m.to, set));
  }
  case pieces::Hand::make: {
    const board::Need need = need_of(f.job, m.to, set);
    return fmt::format("make fret {}, cut to {}", m.to, say(need.cut, set));
  }
  }
  return "";
}

std::string_view hand_word(pieces::Hand hand) {
  switch (hand) {
  case pieces::Hand::to_tin:
    return "to_tin";
  case pieces::Hand::pull:
    return "pull";
  case pieces::Hand::aside:
    return "aside";
  case pieces::Hand::move:
    return "move";
  case pieces::Hand::back:
    return "back";
  case pieces::Hand::centre:
    return "centre";
  case pieces::Hand::finish:
    return "finish";
  case pieces::Hand::take:
    return "take";
  case pieces::Hand::make:
    return "make";
  }
  return "";
}

Value data_of_moves(const Found& f) {
  std::vector<Value> out;
  for (const pieces::HandMove& m : f.moves) {
    const bool of_fret = m.slot >= 0;
    const bool finished = m.hand == pieces::Hand::move || m.hand == pieces::Hand::back ||
                          m.hand == pieces::Hand::finish || m.hand == pieces::Hand::take;
    const int at = m.to >= 0 ? m.to : m.slot;
    out.push_back(
        record({{"hand", std::string(hand_word(m.hand))},
                {"slot", of_fret ? Value{std::int64_t{m.slot}} : Value{}},
                {"to_slot", m.to >= 0 ? Value{std::int64_t{m.to}} : Value{}},
                {"piece", m.hand == pieces::Hand::take ? ref(Thing::piece, f.tin[m.index].id) : Value{}},
                {"length_mm", of_fret ? Value{f.lies.frets[m.index].facts.length} : Value{}},
                {"finish_mm", finished ? Value{filling(f, at).verdict.finish} : Value{}}}));
  }
  return list(std::move(out));
}

// What `shifted` needs to know: the lengths that were said, the frets that changed their slot, and those that
// went to the tin.
Choice done_choice(const Found& f, const View& view) {
  std::vector<Value> from, to, tin;
  for (const pieces::Filling& x : f.shift.fillings) {
    if (x.from != pieces::From::other_slot) continue;
    from.emplace_back(std::int64_t{f.lies.frets[x.index].slot});
    to.emplace_back(std::int64_t{x.slot});
  }
  for (const std::size_t i : f.shift.to_tin)
    tin.emplace_back(std::int64_t{f.lies.frets[i].slot});
  Call call{"shifted", {{"job", ref(Thing::job, f.job.id)}}};
  std::vector<Value> slots, lengths;
  for (const SaidLength& said : f.said) {
    slots.emplace_back(std::int64_t{said.first});
    lengths.emplace_back(said.second);
  }
  if (!slots.empty()) {
    call.args.emplace_back("slots", list(std::move(slots)));
    call.args.emplace_back("lengths", list(std::move(lengths)));
  }
  if (!from.empty()) {
    call.args.emplace_back("from", list(std::move(from)));
    call.args.emplace_back("to", list(std::move(to)));
  }
  if (!tin.empty()) call.args.emplace_back("short_ones", list(std::move(tin)));
  return {"the frets are laid so", std::move(call), {seen({Thing::job, f.job.id}, view)}};
}

Found look(const Args& args, const View& view, const Setup& set) {
  Found out;
  out.job = job_of(args, view);
  out.said = said_lengths(args, out.job);
  out.lies = laid(out.job, out.said, args.yes("open"), view, set);
  if (out.lies.frets.empty()) {
    throw Problem(
        Fault::state, fmt::format("Nobody has measured a fret of {} yet.", named(out.job)), "lengths_mm",
        fmt::format("Say for example: shift job {}, slots 3 and 4, lengths 47.1 and 47.9 mm.", out.job.id));
  }
  if (args.yes("tin")) {
    TinPart part = tin_for(out.lies.slots, out.job, view, set, most_pieces);
    out.tin = std::move(part.pieces);
    out.whole_tin = part.all;
  }
  out.shift = pieces::shift(out.lies.slots, out.lies.frets, out.tin, set.fit);
  out.shift.proved = out.shift.proved && out.whole_tin;
  out.moves = pieces::hand_moves(out.shift, out.lies.frets);
  return out;
}

std::vector<Hazard> hazards(const Found& f, const Setup& set) {
  std::vector<Hazard> out;
  for (const pieces::Filling& x : f.shift.fillings) {
    if (x.from == pieces::From::own && f.lies.frets[x.index].seated) continue;
    const auto some = x.from == pieces::From::anew ? std::vector{Hazard::nipping, Hazard::sanding}
                                                   : hazards_of(x.verdict, set);
    for (const Hazard h : some) {
      if (std::find(out.begin(), out.end(), h) == out.end()) out.push_back(h);
    }
  }
  return out;
}

std::string lead_of(const Found& f, int without) {
  const int made = f.shift.cost.made;
  const std::string frets = plural(static_cast<std::int64_t>(f.lies.frets.size()), "measured fret");
  if (f.moves.empty()) return fmt::format("The {} of {} lie where they fit.", frets, named(f.job));
  if (made == without && f.shift.cost.moved == 0)
    return fmt::format("No shift helps {}: {} to make.", named(f.job), plural(made, "fret"));
  return made == without
             ? fmt::format("Lay the frets of {} anew, {} to make.", named(f.job), plural(made, "fret"))
             : fmt::format("Lay the frets of {} anew: {} to make instead of {}.", named(f.job),
                           made == 0 ? "none" : plural(made, "fret"), without);
}

std::string reason_of(const Found& f, const Args& args) {
  std::string out =
      f.shift.proved ? "Proved best: no other way leaves fewer frets to make; then fewer ends to "
                       "dress, fewer moves, less wire and trim."
                     : fmt::format("The best way with the {} pieces that were looked at; the tin holds more.",
                                   f.tin.size());
  if (!args.yes("tin")) out += " Without the tin; say 'with the tin' to take pieces from it.";
  if (!f.lies.unmeasured.empty())
    out += fmt::format(" Nobody has measured {}: left as they are.", ranges(f.lies.unmeasured));
  if (!f.lies.served.empty()) out += fmt::format(" Held pieces serve {}.", ranges(f.lies.served));
  return out;
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Found f = look(args, view, set);
  const int without = made_without(f.lies, set);
  Answer out;
  out.text = lead_of(f, without);
  if (!f.moves.empty() && f.moves.size() <= 6) {
    std::vector<std::string> all;
    for (const pieces::HandMove& m : f.moves)
      all.push_back(words_of(m, f, view, set));
    out.text += " " + sentence(fmt::format("{}", fmt::join(all, "; "))) + ".";
  } else if (!f.moves.empty()) {
    out.table = Table{{"step", "do"}, {}};
    for (const pieces::HandMove& m : f.moves)
      out.table->rows.push_back({std::to_string(out.table->rows.size() + 1), words_of(m, f, view, set)});
  }
  out.reason = reason_of(f, args);
  out.cautions = hazards(f, set);
  const pieces::ShiftCost& cost = f.shift.cost;
  out.data = record({{"job", ref(Thing::job, f.job.id)},
                     {"proved", f.shift.proved},
                     {"to_make", std::int64_t{cost.made}},
                     {"to_make_without", std::int64_t{without}},
                     {"ends_to_dress", std::int64_t{cost.ends_to_dress}},
                     {"moved", std::int64_t{cost.moved}},
                     {"wire", cost.wire},
                     {"trim", cost.trim},
                     {"unmeasured", list_of(f.lies.unmeasured)},
                     {"moves", data_of_moves(f)}});
  out.about.args = {{"job", ref(Thing::job, f.job.id)}};
  const bool pulls = std::any_of(f.moves.begin(), f.moves.end(),
                                 [](const pieces::HandMove& m) { return m.hand == pieces::Hand::pull; });
  if (pulls)
    out.cautions.push_back(Hazard::iron);
  else if (cost.moved > 0 || !f.shift.to_tin.empty())
    out.choices.push_back(done_choice(f, view));
  return out;
}

// One fret by itself.
Answer judge_one(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view);
  const int slot = slot_of(args, job);
  const board::Need need = need_of(job, slot, set);
  if (args.has("length") == args.has("short_by")) {
    const bool both = args.has("length");
    throw Problem(Fault::value,
                  both ? "A fret is measured, or short by so much, not both." : "What does it measure?",
                  "length", "Say its length, such as 50.1 mm, or by how much it is short.");
  }
  const Length length =
      args.has("length") ? args.get<Length>("length") : need.target - args.get<Length>("short_by");
  Laid lies = laid(job, {{slot, length}}, true, view, set);
  const auto mine =
      std::find_if(lies.frets.begin(), lies.frets.end(), [&](const auto& f) { return f.slot == slot; });
  if (args.has("ends"))
    mine->facts.raw_ends = args.text("ends") == "raw" ? 2 : args.text("ends") == "one_raw" ? 1 : 0;
  mine->one_sided = args.yes("one_side");
  const pieces::OneVerdict v = pieces::verdict_on(*mine, lies.slots, set.fit);
  const std::string that = fmt::format("{} for slot {} of {}", say(length, set), slot, named(job));
  Answer out;
  std::string_view word;
  switch (v.say) {
  case pieces::Say::drop_in:
    word = "drop_in";
    out.text = fmt::format("{} will do: {}.", that, mine->seated ? "leave it" : "it goes in as it is");
    break;
  case pieces::Say::centre:
    word = "centre";
    out.text = fmt::format("{} reaches both edges: centre it.", that);
    break;
  case pieces::Say::finish:
    word = "finish";
    out.text = fmt::format("{} will do: {}.", that, how_to(v.verdict, set));
    break;
  case pieces::Say::try_it:
    word = "try_it";
    out.text = fmt::format("{} is {}.", that, how_to(v.verdict, set));
    break;
  case pieces::Say::move:
    word = "move";
    out.text = fmt::format("{} is too short: move it to slot {}, {}.", that, v.slot, how_to(v.verdict, set));
    break;
  case pieces::Say::remake:
    word = "remake";
    out.text = fmt::format("{} is no use there{}: make that fret anew, cut to {}.", that,
                           mine->seated ? ", and pulling it chips the slot" : ", nor in another slot of it",
                           say(need.cut, set));
    break;
  }
  out.reason = fmt::format("The slot takes {}.", range_of(need, set));
  if (v.say == pieces::Say::move)
    out.reason += fmt::format(" Ask 'shift job {}' for what that does to the others.", job.id);
  out.cautions = v.say == pieces::Say::remake ? std::vector{Hazard::nipping} : hazards_of(v.verdict, set);
  out.data = record({{"job", ref(Thing::job, job.id)},
                     {"slot", std::int64_t{slot}},
                     {"length", length},
                     {"say", std::string(word)},
                     {"to_slot", std::int64_t{v.slot}},
                     {"finish_mm", v.say == pieces::Say::remake ? Value{} : Value{v.verdict.finish}}});
  out.about.args = {{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

} // namespace

extern const Question shift;
const Question shift{
    {"shift",
     "How to lay a job's frets anew so that the fewest have to be made.",
     {takes::job,
      {"slots", Kind::slot, false, true, "whose frets were measured; all of the job where not said"},
      {"lengths", Kind::length, false, true, "of these frets, in the same order; else as on record",
       takes::piece_length},
      {"tin", Kind::yes, false, false, "pieces of the tin may be taken too"},
      {"open", Kind::yes, false, false, "slots that have had no fret yet may be filled too"}},
     {("(shift|rearrange|lay out) [the] [frets of] {job} [anew] [(with|using|and) the tin {tin=yes}] [and "
       "the "
       "open slots {open=yes}]"),
      ("shift {job} [with] slots {slots} (at|measuring|being) {lengths} [(with|using|and) the tin {tin=yes}] "
       "[and the open slots {open=yes}]"),
      "how [do|can|should] [i|we] (shift|rearrange|lay) [the frets of] {job} [anew]",
      "(which|what) frets of {job} (can|should|do) [i|we] (move|shift)",
      "(which|what) frets (can|should|do) [i|we] (move|shift) (on|in|of) {job}"},
     {"shift job 1", "shift job 1 with the tin", "which frets of job 1 should I move"},
     Role::look,
     {gives::job,
      {"proved", Kind::yes, "whether no other way is better"},
      {"to_make", Kind::count, "frets to make anew"},
      {"to_make_without", Kind::count, "and if nothing were moved"},
      {"ends_to_dress", Kind::count, "in all"},
      {"moved", Kind::count, "frets and pieces that change their place"},
      {"wire", Kind::length, "new wire"},
      {"trim", Kind::length, "what comes off"},
      {"unmeasured", Kind::slot, "frets whose length nobody knows", Often::many},
      gives::records(
          "moves", "of the hand, in order",
          {gives::one_of("hand", "what to do",
                         {"to_tin", "aside", "move", "back", "centre", "finish", "take", "make", "pull"}),
           gives::or_null(gives::slot),
           {"to_slot", Kind::slot, "where it goes", Often::or_null},
           {"piece", Kind::piece, "of the tin, to take", Often::or_null},
           {"length", Kind::length, "of the fret as it is", Often::or_null},
           {"finish", Kind::length, "to which it is finished", Often::or_null}})}},
    &ask};

extern const Question all_right;
const Question all_right{
    {"all-right",
     "Whether one fret will do where it lies, or where else, or not at all.",
     {takes::job,
      takes::slot,
      {"length", Kind::length, false, false, "what it measures", takes::piece_length},
      {"short_by", Kind::length, false, false, "instead: how much the best length has more", {0, 50}},
      {"ends",
       Kind::one_of,
       false,
       false,
       "how its ends are; as on record",
       {},
       {"raw", "one_raw", "dressed"}},
      {"one_side", Kind::yes, false, false, "its gap shows at one edge only"}},
     {("is [a|the|my] {length} [fret] (all right|alright|ok|okay|enough|good enough|long enough|any "
       "good|right) for "
       "slot {slot} of {job}"),
      "(will|does|can) [a|the|my] {length} [fret] do (for|in) slot {slot} of {job}",
      "(mine|it) (is|measures) {length} [is] [that|it] (all right|alright|ok|okay|enough|right) for slot "
      "{slot} of {job}",
      "{length} for slot {slot} of {job} (all right|alright|ok|okay|enough|right)",
      ("[it is|mine is|fret is] {short_by} [too] (shy|short) [(in|at|for|on) slot {slot} [of {job}]] [is "
       "that|is it] "
       "(does it matter|does that matter|all right|ok|okay|enough|matter)"),
      ("{one_side=yes} [it is|mine is|fret is] {short_by} [too] (shy|short) (on|at) (treble|bass|one) "
       "[side|edge|end] [(in|at|for|on) slot {slot} [of {job}]] [is that|is it] (does it matter|does that "
       "matter|all "
       "right|ok|okay|enough|matter)")},
     {"is 50.1 mm all right for slot 9 of job 1", "will 50.1 mm do for slot 9 of job 1"},
     Role::look,
     {gives::job,
      gives::slot,
      {"length", Kind::length, "of the fret"},
      gives::one_of("say", "the verdict", {"drop_in", "centre", "finish", "try_it", "move", "remake"}),
      {"to_slot", Kind::slot, "where it goes"},
      {"finish", Kind::length, "to which it is finished; null where it is made anew", Often::or_null}}},
    &judge_one};

} // namespace nutward::shop::question_rows
