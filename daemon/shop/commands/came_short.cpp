// Frets that are no use in their slot: come out short, lost, or made anew.
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

namespace {

// Where the wire of a short fret comes from: the fret that was reported, a stick, or (none on hand) from
// outside.
void into_tin(Tx& tx, const Piece& p, std::int64_t id, const std::optional<Fret>& before, const Job& job,
              int slot, const Setup& set) {
  auto move = [&](MovementKind kind, Place from, Place to, Length length, std::int64_t pieces) {
    if (length > Length{} || pieces > 0)
      tx.move({kind, p.wire, p.lot, id, job.id, slot, from, to, length, pieces, ""});
  };
  if (before && before->length) {
    const Length back = std::min(*before->length, *p.length);
    move(MovementKind::made_a_piece, Place::board, Place::tin, back, 1);
    if (*before->length > back) {
      tx.move({MovementKind::scrapped,
               p.wire,
               p.lot,
               {},
               job.id,
               slot,
               Place::board,
               Place::scrap,
               *before->length - back,
               0,
               ""});
    }
    move(MovementKind::corrected, Place::outside, Place::tin, *p.length - back, 0);
  } else if (tx.wires().on_hand(p.wire) >= *p.length + set.fit.nip_loss) {
    move(MovementKind::made_a_piece, Place::stock, Place::tin, *p.length, 1);
    tx.move({MovementKind::cut,
             p.wire,
             p.lot,
             {},
             job.id,
             slot,
             Place::stock,
             Place::kerf,
             set.fit.nip_loss,
             0,
             ""});
  } else {
    move(MovementKind::counted, Place::outside, Place::tin, *p.length, 1);
  }
}

} // namespace

Piece short_into_tin(Tx& tx, Piece piece, const std::optional<Fret>& before, const Job& job, int slot,
                     const Setup& set) {
  piece.id = tx.put(piece);
  into_tin(tx, piece, piece.id, before, job, slot, set);
  put_fret(tx, job, slot, FretState::came_short, {}, {});
  return *tx.tin().find(piece.id);
}

void refuse_seated(const std::optional<Fret>& fret, const Job& job, int slot) {
  if (!fret || fret->state == FretState::made || fret->state == FretState::came_short) return;
  throw Problem(Fault::state,
                fmt::format("Fret {} of {} is seated: pulling it chips the slot.", slot, named(job)), "slot",
                "Leave it, or pull it and report a pulled fret.");
}

namespace {

// What is left of the tang of a fret that was made for a slot. On a bound board it is taken to have been
// nipped for it: the slots nutward of it, where the fret goes next, want a shorter one anyway.
std::optional<Length> tang_left(const Args& args, const board::Need& need, Length length) {
  if (!args.has("tang")) return need.tang ? std::optional{std::min(*need.tang, length)} : std::nullopt;
  const auto tang = args.get<Length>("tang");
  if (tang <= length) return tang;
  throw Problem(Fault::value, "A tang is no longer than its fret.", "tang_mm", "Measure it again.");
}

// What a fret measures, by the words that were said; none where nobody said or knows it.
std::optional<Length> length_said(const Args& args, const std::optional<Fret>& before,
                                  const board::Need& need) {
  if (args.has("length") && args.has("short_by"))
    throw Problem(Fault::value, "Its length and what it lacks cannot both be said.", "short_by_mm",
                  "Say the length.");
  if (args.has("length")) return along(args, args.get<Length>("length"));
  if (args.has("short_by")) {
    const auto lacks = args.get<Length>("short_by");
    // "Came out at 51.2, too short": no fret lacks more than half, and that is what it measures.
    if (lacks.nm * 2 > need.least.nm && lacks < need.least) return lacks;
    const Length length = need.least - lacks;
    if (length > Length{}) return length;
    throw Problem(Fault::value, "It cannot lack more than the slot takes.", "short_by_mm",
                  "Measure it again.");
  }
  return before ? before->length : std::nullopt;
}

Piece short_fret(const Args& args, const Moment& moment, const Job& job, Length length,
                 const board::Need& need) {
  Piece p;
  p.wire = job.wire;
  p.kind = pieces::Kind::short_fret;
  p.length = length;
  p.left = p.right = args.text("ends") == "raw"       ? End::raw
                     : args.text("ends") == "dressed" ? End::dressed
                                                      : End::unknown;
  p.place = args.text("place");
  p.added = moment.happened;
  p.tang = tang_left(args, need, length);
  return p;
}

// A few millimetres are hardly a fret: what it lacks may have been meant.
std::string hardly_a_fret(const Args& args, const Moment&, const View& view) {
  if (!args.has("length") || args.has("short_by")) return "";
  const Setup set = setup(view);
  const Job job = job_of(args, view);
  const int slot = slot_of(args, job);
  const auto length = args.get<Length>("length");
  const Length least = need_of(job, slot, set).least;
  if (length >= Length{least.nm / 2}) return "";
  return fmt::format(
      "Fret {} of {} would be {} long, and its slot takes {} at least. If that is what it lacks, "
      "say: fret {} of job {} is {} too short.",
      slot, named(job), say(length, set), say(least, set), slot, job.id, say(length, set));
}

Effect came_short(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const int slot = slot_of(args, job);
  const auto before = fret_in(job, slot, tx);
  const board::Need need = need_of(job, slot, set);
  const auto length = length_said(args, before, need);
  if (!length)
    throw Problem(Fault::value, "How long is it?", "length_mm",
                  fmt::format("Say for example: fret {} of job {} came out short at 50.1 mm.", slot, job.id));
  if (args.yes("if_short") && *length >= need.least - set.fit.borderline && args.has("length"))
    return keep_measure(args, job, slot, tx, set);
  refuse_seated(before, job, slot);
  const Piece kept = short_into_tin(tx, short_fret(args, moment, job, *length, need), before, job, slot, set);
  const auto next = next_place(kept, job, slot, tx, set);
  Effect out;
  out.answer.text =
      fmt::format("Fret {} of {} came out short: {} is in the tin now, and the slot is open again.", slot,
                  named(job), named(kept, tx, set));
  if (kept.tang && !args.has("tang"))
    out.answer.text +=
        fmt::format(" Its tang is taken to be nipped to {}; say its length if not.", say(*kept.tang, set));
  out.answer.text += " " + words_of(next, tx, set);
  if (args.has("short_by") && args.get<Length>("short_by").nm * 2 <= need.least.nm)
    out.answer.reason = fmt::format("Its length is the {} that the slot takes at least, less {}.",
                                    say(need.least, set), say(args.get<Length>("short_by"), set));
  if (next) {
    out.answer.cautions = hazards_of(next->placing.verdict, set);
    out.answer.choices.push_back(
        {fmt::format("use it in slot {} of job {}", next->placing.slot.slot, next->placing.slot.job),
         {"use",
          {{"piece", ref(Thing::piece, kept.id)},
           {"job", ref(Thing::job, next->placing.slot.job)},
           {"slot", std::int64_t{next->placing.slot.slot}}}},
         {}});
  }
  out.answer.data = record({{"piece", ref(Thing::piece, kept.id)},
                            {"job", ref(Thing::job, job.id)},
                            {"slot", std::int64_t{slot}},
                            {"length", *length},
                            {"next_job", next ? ref(Thing::job, next->placing.slot.job) : Value{}},
                            {"next_slot", next ? Value{std::int64_t{next->placing.slot.slot}} : Value{}}});
  out.answer.about.args = {
      {"piece", ref(Thing::piece, kept.id)}, {"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

// The wire of a whole fret is scrap, wherever it lies; its slot is open again.
Length lose(Tx& tx, const Job& job, const Fret& fret, const std::string& why) {
  const Length length = fret.length.value_or(Length{});
  tx.move(
      {MovementKind::lost, job.wire, {}, {}, job.id, fret.slot, Place::board, Place::scrap, length, 0, why});
  put_fret(tx, job, fret.slot, FretState::came_short, {}, {});
  return length;
}

// What to make the fret of now: the best piece of the tin, or new wire.
void say_what_now(Answer& out, const Job& job, int slot, const View& view, const Setup& set) {
  const pieces::Wanted wanted = wanted_for(job, slot, view, set);
  const auto found =
      pieces::best(TinSource(view, job.wire, job.id, slot), wanted, set.fit, {false, false}, 1);
  if (found.empty()) {
    out.text += fmt::format(" Nothing in the tin fits it: cut {} of new {}.", say(wanted.need.cut, set),
                            wire_of(view, job.wire).name);
    out.cautions = {Hazard::nipping};
    return;
  }
  const std::int64_t id = found.front().piece.id;
  out.text += fmt::format(" Take {} for it: {}.", named(view.tin().find(id).value(), view, set),
                          how_to(found.front().verdict, set));
  out.cautions = hazards_of(found.front().verdict, set);
  out.choices.push_back(
      {fmt::format("use it in slot {} of job {}", slot, job.id),
       {"use",
        {{"piece", ref(Thing::piece, id)}, {"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}}},
       {}});
}

Fret live_fret(const Job& job, int slot, const View& view) {
  const auto fret = fret_in(job, slot, view);
  if (!fret || fret->state == FretState::came_short) {
    throw Problem(Fault::state, fmt::format("Slot {} of {} has no fret that is known.", slot, named(job)),
                  "slot", fmt::format("Ask what fits slot {} of job {}.", slot, job.id));
  }
  refuse_seated(fret, job, slot);
  return *fret;
}

Effect lost(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const int slot = slot_of(args, job);
  const Length length = lose(tx, job, live_fret(job, slot, tx), args.text("why"));
  Effect out;
  out.answer.text = fmt::format("Fret {} of {} is no more: {} of {} are scrap, and the slot is open again.",
                                slot, named(job), say(length, set), wire_of(tx, job.wire).name);
  say_what_now(out.answer, job, slot, tx, set);
  out.answer.data =
      record({{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}, {"length", length}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

[[noreturn]] void ask_old(const Args& args, const Job& job, const Fret& fret, const Setup& set) {
  Problem problem(Fault::ambiguous,
                  fmt::format("What became of the old fret {} of {}{}?", fret.slot, named(job),
                              fret.length ? ", " + say(*fret.length, set) + " by the record" : ""),
                  "old", "Say: the old one went in the tin, or: the old one is scrap.");
  for (const auto& [word, label] :
       {std::pair{"tin", "it went in the tin"}, std::pair{"scrap", "it is scrap"}}) {
    Call call = args.call();
    call.args.emplace_back("old", std::string(word));
    problem.choices.push_back({label, std::move(call), {}});
  }
  throw Problem(std::move(problem));
}

// Where the old fret goes; the piece that it is now, if any. One that is too short by the record needs no
// word.
std::optional<Piece> put_away(const Args& args, const Moment& moment, const Job& job, const Fret& fret,
                              Tx& tx, const Setup& set) {
  refuse_seated(fret, job, fret.slot);
  const board::Need need = need_of(job, fret.slot, set);
  const auto length = args.has("old_length") ? args.opt<Length>("old_length") : fret.length;
  const bool too_short = length && *length < need.least - set.fit.borderline;
  if (!args.has("old") && !too_short && !args.has("old_length")) ask_old(args, job, fret, set);
  if (args.text("old") == "scrap") {
    lose(tx, job, fret, "made anew");
    return std::nullopt;
  }
  if (!length)
    throw Problem(Fault::value, "How long is the old one?", "old_length_mm",
                  "Measure it and say its length.");
  return short_into_tin(tx, short_fret(args, moment, job, *length, need), fret, job, fret.slot, set);
}

Effect remade(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const int slot = slot_of(args, job);
  const auto before = fret_in(job, slot, tx);
  const bool there = before && before->state != FretState::came_short;
  if (!there && (args.has("old") || args.has("old_length")))
    throw Problem(Fault::state, fmt::format("Slot {} of {} has no old fret.", slot, named(job)), "old",
                  "Leave the old one out.");
  const auto old = there ? put_away(args, moment, job, *before, tx, set) : std::nullopt;
  const CutSlots cut = cut_from_stock(tx, job, {slot}, set);
  if (cut.slots.empty()) {
    throw Problem(Fault::state, fmt::format("A piece is held for slot {} of {}.", slot, named(job)), "slot",
                  "Use that piece, or let it go first.");
  }
  const board::Need need = need_of(job, slot, set);
  Effect out;
  out.answer.text =
      fmt::format("Made fret {} of {} {}: {} of {} with its cut.", slot, named(job),
                  before ? "anew" : "of new wire", say(cut.wire, set), wire_of(tx, job.wire).name);
  if (args.has("length")) {
    const auto length = args.get<Length>("length");
    record_length(tx, job, slot, length);
    out.answer.text += fmt::format(" It measures {}: {}.", say(length, set), verdict(length, need, set));
  }
  if (old) {
    out.answer.text += fmt::format(" The old one is in the tin as {}. {}", named(*old, tx, set),
                                   words_of(next_place(*old, job, slot, tx, set), tx, set));
  }
  out.answer.cautions = {Hazard::nipping};
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"slot", std::int64_t{slot}},
                            {"wire", cut.wire},
                            {"piece", old ? ref(Thing::piece, old->id) : Value{}}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

} // namespace

extern const Command lost_row;
const Command lost_row{
    {"lost",
     "A fret is lost or spoilt: its wire is scrap and its slot is open again.",
     {takes::job, takes::slot, {"why", Kind::words, false, false, "what happened to it"}, takes::at},
     {"(lost|spoilt|spoiled|ruined|damaged|broke|kinked) (fret|slot) {slot} [of {job}] [because {why}]",
      ("fret {slot} [of {job}] (is|was|got|has been) (lost|spoilt|spoiled|ruined|damaged|broken|kinked|gone) "
       "[because "
       "{why}]"),
      ("[the] fret (in|for|of) slot {slot} [of {job}] (is|was|got) "
       "(lost|spoilt|spoiled|ruined|damaged|broken|kinked|gone)"),
      "[i|we] (lost|dropped) (fret|slot) {slot} [of {job}] [and] [i|we] can not find it",
      "fret {slot} [of {job}] fell [down|off|on the floor] [and] is (gone|lost|ruined)",
      "fret {slot} [of {job}] (flew off|flew away|has vanished|vanished|disappeared) [somewhere]",
      ("[i|we] (bent|broke|ruined|spoilt|kinked) fret {slot} [of {job}] [and] it is "
       "(ruined|spoilt|spoiled|scrap|no "
       "good|no use)"),
      "(i|we) can not find fret {slot} [of {job}]"},
     {"lost fret 5 of job 1", "fret 5 of job 1 is spoilt"},
     Role::bench,
     {gives::job, gives::slot, {"length", Kind::length, "that is scrap"}}},
    &lost};

extern const Command remade_row;
const Command remade_row{
    {"remade",
     "A fret was made anew of new wire; the old one, if there was one, goes in the tin or is scrap.",
     {takes::job,
      takes::slot,
      {"length", Kind::length, false, false, "what the new one measures", takes::piece_length},
      {"old", Kind::one_of, false, false, "where the old one went", {}, {"tin", "scrap"}},
      {"old_length", Kind::length, false, false, "what the old one measures; as on record",
       takes::piece_length},
      {"ends", Kind::one_of, false, false, "how the ends of the old one are", {}, {"raw", "dressed"}},
      {"tang", Kind::length, false, false, "how long its tang is; as its slot wants", takes::piece_length},
      {"place", Kind::words, false, false, "where it is kept"},
      takes::at},
     {"remade (fret|slot) {slot} [of {job}] [at {length}]",
      "(made|make) (fret|slot) {slot} [of {job}] (again|anew|over) [at {length}]",
      "[i|we] [have] (made|cut) [a] new fret {slot} (for|of) {job} [at {length}]",
      ("remade (fret|slot) {slot} [of {job}] [and] [the] old one (went|is|goes) (in|into) [the] tin "
       "{old=tin} "
       "[at "
       "{old_length}]"),
      ("remade (fret|slot) {slot} [of {job}] [and] [the] old one (went|is|goes) [(in|into)] [the] "
       "(scrap|bin) "
       "{old=scrap}"),
      "(fret|slot) {slot} [of {job}] (is|was|has been) remade [at {length}]",
      ("[i|we] (made|cut) [a] new fret for slot {slot} [of {job}] [from (new wire|a [new] stick)] [at "
       "{length}]")},
     {"remade slot 5 of job 1", "remade fret 5 of job 1, the old one is scrap"},
     Role::bench,
     {gives::job,
      gives::slot,
      {"wire", Kind::length, "new wire, with its cut"},
      {"piece", Kind::piece, "what the old one is now, where it went in the tin", Often::or_null}}},
    &remade,
    &hardly_its_length};

extern const Command came_short_row;
const Command came_short_row{
    {"came-short",
     "A fret came out too short: it goes into the tin and its slot is open again.",
     {takes::job,
      takes::slot,
      {"length", Kind::length, false, false, "what it measures", takes::piece_length},
      {"short_by",
       Kind::length,
       false,
       false,
       "or how much it lacks of the least that its slot takes",
       {0.01, 100}},
      {"if_short", Kind::yes, false, false, "only if it is too short; else its length is kept"},
      takes::measured,
      takes::bend_radius,
      {"ends", Kind::one_of, false, false, "how its ends are", {}, {"raw", "dressed"}},
      {"tang", Kind::length, false, false, "how long its tang is; as its slot wants", takes::piece_length},
      {"place", Kind::words, false, false, "where it is kept"},
      takes::at},
     {("(fret|slot) {slot} [of {job}] (came out|is|came) [too] short [(at|with|by measure) {length}] "
       "[[with] ends {ends}]"),
      "(fret|slot) {slot} [of {job}] (came out|is|came) [too] short , [it] [is] [measures] {length}",
      "(fret|slot) {slot} [of {job}] (came out|is|came) {short_by} [too] short",
      "(fret|slot) {slot} [of {job}] (came out|is|came) [too] short by {short_by}",
      "(fret|slot) {slot} [of {job}] (ended up|turned out) [at] {length} {if_short=yes}",
      "(fret|slot) {slot} [of {job}] came out [at] {length} {if_short=yes} [[with] ends {ends}]",
      "[too] short (fret|slot) {slot} [of {job}] [at {length}]",
      ("(i|we) [have] cut [the] (fret|slot|fret for slot) {slot} [of {job}] too short [[at|it is|it "
       "measures] {length}]"),
      ("cut [the] (fret|slot|fret for slot) {slot} [of {job}] too short [[at|it is|it measures] "
       "{length}]")},
     {"fret 7 of job 1 came out short at 47.2 mm", "slot 7 of job 1 is too short at 47.2 mm",
      "fret 7 of job 1 is 2 mm too short", "fret 7 of job 1 came out at 47.2 mm"},
     Role::bench,
     {gives::piece,
      gives::job,
      gives::slot,
      {"length", Kind::length, "of the piece that it is now"},
      {"next_job", Kind::job, "where else it goes", Often::or_null},
      {"next_slot", Kind::slot, "and in which slot", Often::or_null}},
     {gives::job,
      gives::slot,
      {"length", Kind::length, "as measured"},
      {"short", Kind::yes, "whether it is shorter than its slot takes"}}},
    &came_short,
    &hardly_a_fret};

} // namespace nutward::shop::command_rows
