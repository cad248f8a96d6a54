// Handfuls: put in unmeasured, measured later; several pieces scrapped or used in one go.
#include "shop/commands/frets.hpp"
#include "shop/commands/tin.hpp"
#include "shop/several.hpp"

namespace nutward::shop::command_rows {

namespace {

constexpr std::size_t without_a_word = 5; // so many pieces are scrapped without a yes

Effect handful(const Args& args, const Moment& moment, Tx& tx) {
  const Wire wire = wire_of(tx, args.id("wire"));
  Piece p;
  p.wire = wire.id;
  p.kind = kind_of(args);
  p.measured = Measured::not_at_all;
  p.count = args.get<std::int64_t>("count");
  p.place = args.text("place");
  p.added = moment.happened;
  const std::int64_t id = put_in(tx, p);
  Effect out;
  out.answer.text = fmt::format("Put a handful of {} of {} into the tin{}, not measured yet.",
                                plural(p.count, "piece"), wire.name, p.place.empty() ? "" : ", " + p.place);
  out.answer.reason =
      "Nothing is made of them until they are measured: measured the handful: 52.4, 51 and 50.2 mm.";
  out.answer.data =
      record({{"piece", ref(Thing::piece, id)}, {"wire", ref(Thing::wire, wire.id)}, {"count", p.count}});
  out.answer.about.args = {{"piece", ref(Thing::piece, id)}, {"wire", ref(Thing::wire, wire.id)}};
  return out;
}

// The one handful that waits, or the one that was named.
Piece handful_meant(const Args& args, const View& view, const Setup& set) {
  if (args.has("from")) {
    Piece p = piece_of(args, view, "from");
    if (!p.length) return p;
    throw Problem(Fault::state, fmt::format("{} has been measured.", named(p, view, set)), "from",
                  "Correct its length, such as: correct piece 1 to 51.2 mm because it was measured again.");
  }
  std::vector<Piece> found;
  for (const Wire& wire :
       args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all()) {
    for (Piece& p : view.tin().unmeasured(wire.id, 10))
      found.push_back(std::move(p));
  }
  if (found.size() == 1) return found.front();
  if (found.empty())
    throw Problem(Fault::state, "No handful waits to be measured.", "from",
                  "Add the pieces by their lengths: add 52.4 and 51 mm of medium.");
  Problem problem(Fault::ambiguous, "Which handful was measured?", "from", "Pick one by its number.");
  for (const Piece& p : found) {
    if (problem.choices.size() == 9) break;
    Call call = args.call();
    call.args.emplace_back("from", ref(Thing::piece, p.id));
    problem.choices.push_back({named(p, view, set), std::move(call), {}});
  }
  throw Problem(std::move(problem));
}

Effect measured_handful(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Piece whole = handful_meant(args, tx, set);
  if (whole.job) refuse_held(whole, tx, set);
  if (args.has("wire") && args.id("wire") != whole.wire)
    throw Problem(Fault::value,
                  fmt::format("{} are of {}.", named(whole, tx, set), wire_of(tx, whole.wire).name), "wire",
                  "Leave the wire out.");
  const auto lengths = args.many<Length>("lengths");
  const auto many = static_cast<std::int64_t>(lengths.size());
  take_out_unmeasured(tx, whole, std::min(many, whole.count));
  Piece one = whole;
  one.id = 0;
  one.count = 1;
  one.measured = args.text("measured") == "across" ? Measured::across : Measured::straight;
  one.bend_radius = args.opt<Length>("bend_radius");
  set_ends(one, args.text("ends"));
  std::vector<Value> ids;
  std::vector<std::string> said;
  for (const Length measured : lengths) {
    one.length = along(args, measured);
    ids.emplace_back(ref(Thing::piece, put_in(tx, one)));
    said.push_back(say(*one.length, set));
  }
  Effect out;
  out.answer.text = fmt::format("Measured {} of {}: {}.", plural(many, "piece"), named(whole, tx, set),
                                fmt::join(said, ", "));
  if (many < whole.count)
    out.answer.text += fmt::format(" {} of them are left to measure.", whole.count - many);
  if (many > whole.count)
    out.answer.text += fmt::format(" That is {} more than the handful was said to be.", many - whole.count);
  out.answer.data = record({{"pieces", list(std::move(ids))},
                            {"wire", ref(Thing::wire, whole.wire)},
                            {"left", std::max<std::int64_t>(whole.count - many, 0)}});
  out.answer.about.args = {{"wire", ref(Thing::wire, whole.wire)}};
  return out;
}

Length sum_of(const std::vector<Piece>& pieces) {
  Length out;
  for (const Piece& p : pieces)
    out += p.length.value_or(Length{});
  return out;
}

// "3 pieces of medium, 44.00 mm, 44.10 mm and 44.40 mm".
std::string words_of(const std::vector<Piece>& pieces, const View& view, const Setup& set) {
  std::vector<std::string> lengths;
  std::int64_t many = 0;
  for (const Piece& p : pieces) {
    many += p.count;
    lengths.push_back(p.length ? say(*p.length, set) : fmt::format("{} not measured", p.count));
  }
  const bool one_wire = std::all_of(pieces.begin(), pieces.end(),
                                    [&](const Piece& p) { return p.wire == pieces.front().wire; });
  return plural(many, "piece") + (one_wire ? " of " + wire_of(view, pieces.front().wire).name : "") + ": " +
         fmt::format("{}", fmt::join(lengths, ", "));
}

Effect scrap_several(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const auto pieces = several_meant(args, std::nullopt, std::nullopt, tx);
  const std::string words = words_of(pieces, tx, set);
  std::vector<Value> ids;
  for (const Piece& p : pieces) {
    scrap_whole(tx, p, args.text("why"), set);
    ids.emplace_back(ref(Thing::piece, p.id));
  }
  Effect out;
  out.answer.text = fmt::format("Scrapped {}.", words);
  out.answer.data = record({{"pieces", list(std::move(ids))}, {"length", sum_of(pieces)}});
  return out;
}

std::string wants_yes(const Args& args, const Moment&, const View& view) {
  const auto pieces = several_meant(args, std::nullopt, std::nullopt, view);
  if (pieces.size() <= without_a_word) return "";
  return fmt::format("That throws away {}. Nobody finds them in the bin again.",
                     words_of(pieces, view, setup(view)));
}

// Each piece that is held for one of the slots goes there.
void held_to_their_slots(std::vector<Piece>& pieces, const std::vector<int>& slots) {
  for (std::size_t i = 0; i < slots.size(); ++i) {
    for (std::size_t k = 0; k < slots.size() && !held_for(pieces[i], slots[i]); ++k) {
      if (held_for(pieces[k], slots[i]) && !held_for(pieces[k], slots[k])) std::swap(pieces[i], pieces[k]);
    }
  }
}

Effect use_several(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const std::vector<int> slots = args.slots("slots");
  for (const int slot : slots) {
    if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end())
      throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slots",
                    fmt::format("It has slots {}.", ranges(job.slots)));
  }
  if (args.opt<std::int64_t>("count").value_or(static_cast<std::int64_t>(slots.size())) !=
      static_cast<std::int64_t>(slots.size())) {
    throw Problem(Fault::value,
                  fmt::format("{} and {} do not go together.",
                              plural(args.get<std::int64_t>("count"), "piece"),
                              plural(static_cast<std::int64_t>(slots.size()), "slot")),
                  "slots", "Say one slot for each piece.");
  }
  Call call = args.call(); // one piece for each slot, whether that was said or not
  if (!args.has("count") && !args.has("pieces"))
    call.args.emplace_back("count", static_cast<std::int64_t>(slots.size()));
  auto pieces = several_meant(Args{args.row(), call}, job.wire, HeldFor{job.id, slots}, tx);
  if (pieces.size() != slots.size())
    throw Problem(Fault::value,
                  fmt::format("{} and {} do not go together.",
                              plural(static_cast<std::int64_t>(pieces.size()), "piece"),
                              plural(static_cast<std::int64_t>(slots.size()), "slot")),
                  "pieces", "Name one piece for each slot.");
  held_to_their_slots(pieces, slots);
  Effect out;
  std::vector<std::string> said;
  std::vector<Value> frets;
  for (std::size_t i = 0; i < slots.size(); ++i) {
    const Used used = use_piece(pieces[i], job, slots[i], tx, set);
    said.push_back(fmt::format("{} in slot {}: {}", used.words, slots[i], how_to(used.verdict, set)));
    frets.push_back(record({{"piece", ref(Thing::piece, pieces[i].id)},
                            {"slot", std::int64_t{slots[i]}},
                            {"finish", used.verdict.finish}}));
    for (const Hazard h : hazards_of(used.verdict, set)) {
      if (std::find(out.answer.cautions.begin(), out.answer.cautions.end(), h) == out.answer.cautions.end())
        out.answer.cautions.push_back(h);
    }
  }
  out.answer.text =
      fmt::format("Used {} for {}: {}.", plural(static_cast<std::int64_t>(pieces.size()), "piece"),
                  named(job), fmt::join(said, "; "));
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"frets", list(std::move(frets))}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command handful_row;
const Command handful_row{
    {"handful",
     "Puts a handful of pieces into the tin that nobody has measured.",
     {takes::wire,
      {"count", Kind::count, true, false, "how many pieces, as near as one can see", {1, 500}},
      {"kind",
       Kind::one_of,
       false,
       false,
       "short_fret where not said",
       {},
       {"short_fret", "stick_end", "pulled_fret"}},
      {"place", Kind::words, false, false, "where in the shop"},
      takes::at},
     {("(chucked|chuck|threw|throw|put|dropped|drop|tossed|add|added) (a|another) handful [of {count}] "
       "[pieces] of {wire} "
       "[(in|into)] [[the] tin] [in {place}]"),
      "[a] handful [of {count}] [pieces] of {wire} (in|into) [the] tin",
      "[a] handful [of {count}] [pieces] of {wire} (went|goes|is) (in|into) [the] tin",
      ("[i|we] (chucked|threw|put|dropped|tossed) (a|another) handful [of] [shorts|short "
       "frets|offcuts|ends|bits|pieces] [in]"),
      "{count} [pieces] of {wire} by the handful",
      ("(chucked|chuck|threw|throw|put|dropped|drop|tossed|add|added) (a|another) handful [of] [shorts|short "
       "frets|offcuts|ends|bits|pieces] (in|into) [the] tin"),
      ("[i|we] (chucked|threw|put|dropped|tossed) (a|another) handful [of {count}] of {wire} [shorts|short "
       "frets|offcuts|ends|bits|pieces] (in|into) [the] tin [in {place}]"),
      ("(chucked|threw|put|dropped|tossed) [about] {count} {wire} (shorts|short "
       "frets|offcuts|ends|bits|pieces) (in|into) "
       "[the] tin")},
     {"chucked a handful of 12 of medium in", "a handful of 8 pieces of medium into the tin"},
     Role::bench,
     {gives::piece, gives::wire, {"count", Kind::count, "pieces"}}},
    &handful};

extern const Command measured_handful_row;
const Command measured_handful_row{
    {"measured-handful",
     "A handful was measured: its pieces lie in the tin by their lengths now.",
     {{"lengths", Kind::length, true, true, "of each piece", takes::piece_length},
      takes::optional(takes::wire),
      {"from", Kind::piece, false, false, "which handful; the one that waits"},
      {"ends", Kind::one_of, false, false, "as they were", {}, {"raw", "one_raw", "dressed"}},
      takes::measured,
      takes::bend_radius,
      takes::at},
     {"measured [(the|a|my|that)] handful [of {wire}] [ends {ends}] {lengths}",
      "[the] handful [of {wire}] (is|was|has|measures|measured) {lengths}",
      "measured {lengths} (from|out of|of) (the|a) handful [of {wire}]"},
     {"measured the handful: 52.4, 51 and 50.2 mm", "measured the handful of medium: 52.4 51 50.2"},
     Role::bench,
     {{"pieces", Kind::piece, "ids", Often::many}, gives::wire, {"left", Kind::count, "still not measured"}}},
    &measured_handful};

extern const Command scrap_several_row;
const Command scrap_several_row{
    {"scrap-several",
     "Takes several pieces out of the tin for the bin: so many of a length, or all of them.",
     takes::several({{"why", Kind::words, false, false, "the reason"}, takes::at}),
     {("(scrap|bin|throw away|throw out|scrapped|binned) [the] {count} {length} (s|ones|pieces|offcuts) [of "
       "{wire}] [because {why}]"),
      ("(scrap|bin|throw away|throw out|scrapped|binned) {count} of the {length} [s|ones|pieces|offcuts] [of "
       "{wire}] [because {why}]"),
      "(scrap|bin|throw away|throw out|scrapped|binned) the {length} (s|ones) [of {wire}] [because {why}]",
      "(scrap|bin|throw away|throw out|scrapped|binned) all [of] [the] {length} {wire}",
      ("(take|took) [out] {count} [of the] {length} {wire} [out] [of [the] tin] [and] "
       "(bin|scrap|binned|scrapped) [them]"),
      ("(scrap|bin|throw away|throw out|scrapped|binned) all [of] [the] {length} [s|ones|pieces|offcuts] [of "
       "{wire}] [because {why}]")},
     {"scrap two of the 44.4 mm pieces of medium", "scrap the two 44.4s",
      "scrap all the 44 mm ones of medium"},
     Role::bench,
     {{"pieces", Kind::piece, "ids", Often::many}, {"length", Kind::length, "of those that were measured"}}},
    &scrap_several,
    &wants_yes};

extern const Command use_several_row;
const Command use_several_row{
    {"use-several",
     "Makes the frets for several slots of as many pieces of one length.",
     takes::several(
         {takes::job, {"slots", Kind::slot, true, true, "which slots, one for each piece"}, takes::at}),
     {("(took|take|used|use) {count} of the {length} [s|ones|pieces] [of {wire}] [(for|in) (slot|slots) "
       "{slots}] [(of|for|on) {job}]"),
      ("(took|take|used|use) [the] {count} {length} (s|ones|pieces) [of {wire}] [(for|in) (slot|slots) "
       "{slots}] [(of|for|on) {job}]"),
      "[i|we] took {count} of the {length} [s|ones|pieces] [of {wire}] (out|out of [the] tin)",
      "[i|we] took {count} {length} [s|ones|pieces] [of {wire}] (out|out of [the] tin)",
      ("{count} of the {length} [s|ones|pieces] [of {wire}] (went|go|goes) (in|into) slots {slots} [of "
       "{job}]")},
     {"took two of the 49.3 mm pieces for slots 3 and 4 of job 1",
      "used two of the 49.3 in slots 3-4 of job 1"},
     Role::bench,
     {gives::job, gives::records("frets", "by slot",
                                 {gives::piece, gives::slot, {"finish", Kind::length, "of the fret"}})}},
    &use_several};

} // namespace nutward::shop::command_rows
