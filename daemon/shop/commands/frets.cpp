// Frets of a job: made of a piece, measured, come out short.
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

std::optional<Fret> fret_in(const Job& job, int slot, const View& view) {
  for (const Fret& f : view.jobs().frets(job.id)) {
    if (f.slot == slot) return f;
  }
  return std::nullopt;
}

void put_fret(Tx& tx, const Job& job, int slot, FretState state, std::optional<Length> length,
              std::optional<std::int64_t> piece) {
  Fret f = fret_in(job, slot, tx).value_or(Fret{});
  f.job = job.id;
  f.slot = slot;
  f.state = state;
  f.length = length;
  f.piece = piece;
  tx.put(f);
}

std::string verdict(Length length, const board::Need& need, const Setup& set) {
  const Length near = set.fit.borderline;
  if (units::abs(length - need.least) <= near)
    return fmt::format("borderline, within {} of the least: try it", say(near, set));
  if (length < need.least) return fmt::format("too short by {}", say(need.least - length, set));
  if (need.most && length > *need.most)
    return fmt::format("longer than the slot by {}: dress it", say(length - *need.most, set));
  return "right for it";
}

void refuse_taken(const Job& job, int slot, const View& view) {
  const auto f = fret_in(job, slot, view);
  if (!f || f->state == FretState::came_short) return;
  throw Problem(Fault::state, fmt::format("Slot {} of {} has its fret already.", slot, named(job)), "slot",
                fmt::format("If it will not do, say: fret {} of job {} came out short.", slot, job.id));
}

void refuse_other(const Piece& p, const Job& job, int slot, const View& view, const Setup& set) {
  if (p.wire != job.wire) {
    throw Problem(Fault::state,
                  fmt::format("{} takes {}, and {} is of {}.", named(job), wire_of(view, job.wire).name,
                              named(p, view, set), wire_of(view, p.wire).name),
                  "piece", "Choose a piece of that wire.");
  }
  if (p.job && (*p.job != job.id || (p.slot && *p.slot != slot))) refuse_held(p, view, set);
  if (!p.length)
    throw Problem(Fault::state, "Nobody has measured that piece.", "piece",
                  "Measure one and add it by its length.");
}

void refuse_crown(const Piece& p, const Job& job, const View& view, const Setup& set) {
  const auto wanted = crown_of(job, view);
  const auto lot = p.lot ? view.wires().lot(*p.lot) : std::nullopt;
  if (!wanted || !lot || !lot->crown_height ||
      units::abs(*wanted - *lot->crown_height) <= set.fit.crown_tolerance)
    return;
  throw Problem(Fault::state,
                fmt::format("The crown of {} is {} high, and lot {}, which {} takes, has {}: they differ by "
                            "more than {}.",
                            named(p, view, set), say(*lot->crown_height, set), *job.lot, named(job),
                            say(*wanted, set), say(set.fit.crown_tolerance, set)),
                "piece", "Choose a piece of that lot, or name another lot for the job.");
}

namespace {

// The piece leaves the tin as a fret, what is trimmed as scrap; a long one leaves its rest there.
void take(Tx& tx, Piece p, const Job& job, int slot, const pieces::Verdict& v, const board::Need& need,
          const Setup& set) {
  auto from_tin = [&](MovementKind kind, Place to, Length length, std::int64_t pieces) {
    if (length > Length{} || pieces > 0)
      tx.move({kind, p.wire, p.lot, p.id, job.id, slot, Place::tin, to, length, pieces, ""});
  };
  if (!v.leaves) {
    from_tin(MovementKind::used_in_a_slot, Place::board, v.finish, 1);
    from_tin(MovementKind::scrapped, Place::scrap, v.trim, 0);
    return;
  }
  p.kind = pieces::Kind::stick_end;
  p.right = End::raw; // where it was cut
  p.job.reset();
  p.slot.reset();
  tx.put(p);
  const Length nip = *p.length - need.cut - *v.leaves;
  from_tin(MovementKind::used_in_a_slot, Place::board, v.finish, 0);
  from_tin(MovementKind::scrapped, Place::scrap, need.cut - v.finish, 0);
  from_tin(MovementKind::cut, Place::kerf, nip > set.fit.nip_loss ? set.fit.nip_loss : nip, 0);
}

Effect use(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Piece p = piece_of(args, tx);
  const Job job = job_of(args, tx);
  const int slot = slot_of(args, job);
  refuse_taken(job, slot, tx);
  refuse_other(p, job, slot, tx, set);
  refuse_crown(p, job, tx, set);
  const pieces::Wanted wanted = wanted_for(job, slot, tx, set);
  const auto v = pieces::judge(facts_of(p, tx), wanted, set.fit);
  if (v.outcome == pieces::Outcome::too_short) {
    throw Problem(Fault::state,
                  fmt::format("{} is too short for slot {} of {} by {}: it takes {}.", named(p, tx, set),
                              slot, named(job), say(v.short_by, set), range_of(wanted.need, set)),
                  "piece", fmt::format("Ask what fits slot {} of job {}.", slot, job.id));
  }
  if (v.outcome == pieces::Outcome::tang_short) {
    throw Problem(Fault::state,
                  fmt::format("The tang of {} was nipped too far for slot {} of {}, by {}.",
                              named(p, tx, set), slot, named(job), say(v.tang_short_by, set)),
                  "piece", fmt::format("Ask what fits slot {} of job {}.", slot, job.id));
  }
  const std::string words = named(p, tx, set);
  const Wire wire = wire_of(tx, p.wire);
  const Elsewhere planned = InPlan(wire, tx, set).of(p, job.id, slot, std::nullopt);
  take(tx, p, job, slot, v, wanted.need, set);
  put_fret(tx, job, slot, FretState::made, v.finish, p.id);
  Effect out;
  out.answer.text = fmt::format("Used {} in slot {} of {}: {}.", words, slot, named(job), how_to(v, set));
  if (v.leaves) out.answer.text += fmt::format(" The rest, {}, stays in the tin.", say(*v.leaves, set));
  // Dust and a nip's width are no rest.
  const Length rest = *p.length - wanted.need.cut - set.fit.nip_loss;
  if (!v.leaves && rest > set.fit.borderline)
    out.answer.text += " " + sentence(scrap_rule(rest, least_useful(p.wire, tx, set), set)) + ".";
  out.answer.reason =
      fmt::format("The slot takes {}; {} comes off.", range_of(wanted.need, set), comes_off(v, set));
  if (!planned.wanted.empty() && !planned.here)
    out.answer.reason +=
        fmt::format(" The cut plan had it for {}, which is planned anew.", wanted_for_words(planned.wanted));
  out.answer.cautions = hazards_of(v, set);
  out.answer.data = record({{"piece", ref(Thing::piece, p.id)},
                            {"job", ref(Thing::job, job.id)},
                            {"slot", std::int64_t{slot}},
                            {"finish", v.finish},
                            {"trim", v.trim},
                            {"leaves_mm", opt(v.leaves)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

// The ledger follows what a fret measures: what is missing was ground off, and more than was known of, or a
// fret that nobody had reported as made, is counted in.
void correct(Tx& tx, const Job& job, int slot, Length known, Length measured) {
  if (known > measured) {
    tx.move({MovementKind::scrapped,
             job.wire,
             {},
             {},
             job.id,
             slot,
             Place::board,
             Place::scrap,
             known - measured,
             0,
             "measured"});
  } else if (known < measured) {
    tx.move({MovementKind::corrected,
             job.wire,
             {},
             {},
             job.id,
             slot,
             Place::outside,
             Place::board,
             measured - known,
             0,
             "measured"});
  }
}

Effect measured(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const int slot = slot_of(args, job);
  const auto said = args.get<Length>("length");
  const Length length = along(args, said);
  const board::Need need = need_of(job, slot, set);
  const auto before = fret_in(job, slot, tx);
  const bool known = before && before->state != FretState::came_short;
  record_length(tx, job, slot, length);
  Effect out;
  out.answer.text = fmt::format("Fret {} of {} measures {}{}: {}.{}", slot, named(job), say(length, set),
                                across(args, said, set), verdict(length, need, set),
                                known ? ""
                                      : " No fret was on record there: it is counted in as made, and no wire "
                                        "of the stock was taken for it.");
  out.answer.reason = fmt::format("The slot takes {}.", range_of(need, set));
  if (!known)
    out.answer.reason +=
        " If it was cut from the stock: undo this, and report the cutting before the length.";
  if (length < need.least - set.fit.borderline) {
    out.answer.reason +=
        fmt::format(" If it is no use there: fret {} of job {} came out short.", slot, job.id);
  }
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"slot", std::int64_t{slot}},
                            {"length", length},
                            {"short", length < need.least}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

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

void record_length(Tx& tx, const Job& job, int slot, Length length) {
  const auto before = fret_in(job, slot, tx);
  correct(tx, job, slot, before ? before->length.value_or(Length{}) : Length{}, length);
  const bool stands = before && before->state != FretState::came_short; // else a new one was made
  put_fret(tx, job, slot, stands ? before->state : FretState::made, length,
           stands ? before->piece : std::nullopt);
}

Piece short_into_tin(Tx& tx, Piece piece, const std::optional<Fret>& before, const Job& job, int slot,
                     const Setup& set) {
  const std::int64_t id = tx.put(piece);
  into_tin(tx, piece, id, before, job, slot, set);
  put_fret(tx, job, slot, FretState::came_short, {}, {});
  return *tx.tin().find(id);
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

Effect came_short(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const int slot = slot_of(args, job);
  const auto before = fret_in(job, slot, tx);
  const auto length = args.has("length") ? std::optional{along(args, args.get<Length>("length"))}
                      : before           ? before->length
                                         : std::nullopt;
  if (!length)
    throw Problem(Fault::value, "How long is it?", "length_mm",
                  fmt::format("Say for example: fret {} of job {} came out short at 50.1 mm.", slot, job.id));
  refuse_seated(before, job, slot);
  Piece p;
  p.wire = job.wire;
  p.kind = pieces::Kind::short_fret;
  p.length = length;
  p.left = p.right = args.text("ends") == "raw"       ? End::raw
                     : args.text("ends") == "dressed" ? End::dressed
                                                      : End::unknown;
  p.place = args.text("place");
  p.added = moment.happened;
  p.tang = tang_left(args, need_of(job, slot, set), *length);
  const Piece kept = short_into_tin(tx, p, before, job, slot, set);
  const std::string nipped =
      kept.tang && !args.has("tang")
          ? fmt::format(" Its tang is taken to be nipped to {}; say its length if not.", say(*kept.tang, set))
          : "";
  const auto places = pieces::places(facts_of(kept, tx), open_slots(job.wire, tx, set), set.fit);
  Effect out;
  out.answer.text =
      fmt::format("Fret {} of {} came out short: {} is in the tin now, and the slot is open again.", slot,
                  named(job), named(kept, tx, set)) +
      nipped;
  if (!places.empty()) {
    const auto& best = places.front();
    out.answer.reason = fmt::format("It would go into slot {} of job {}: {}.", best.slot.slot, best.slot.job,
                                    how_to(best.verdict, set));
  }
  out.answer.data = record({{"piece", ref(Thing::piece, kept.id)},
                            {"job", ref(Thing::job, job.id)},
                            {"slot", std::int64_t{slot}},
                            {"length", *length}});
  out.answer.about.args = {
      {"piece", ref(Thing::piece, kept.id)}, {"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}};
  return out;
}

} // namespace

extern const Command use_row;
const Command use_row{
    {"use",
     "Makes the fret for a slot of a piece of the tin.",
     {takes::piece, takes::job, takes::slot, takes::at},
     {"(use|used|take|took|i used|i took|i take) {piece} (in|for) slot {slot} [of {job}]",
      "(use|used|take|took) {piece} (in|for|on) {job} slot {slot}",
      "put {piece} (in|into) slot {slot} [of {job}]", "{piece} (goes|went) (in|into) slot {slot} [of {job}]"},
     {"use piece 1 in slot 3 of job 1", "put the 52.4 of medium into slot 3 of job 1"},
     Role::bench,
     {gives::piece,
      gives::job,
      gives::slot,
      {"finish", Kind::length, "of the fret"},
      {"trim", Kind::length, "what comes off"},
      {"leaves", Kind::length, "what stays in the tin", Often::or_null}}},
    &use};

extern const Command measured_row;
const Command measured_row{
    {"measured",
     "Keeps what a fret of a job measures, and says whether it will do.",
     {takes::job,
      takes::slot,
      {"length", Kind::length, true, false, "along the fret", takes::piece_length},
      takes::measured,
      takes::bend_radius,
      takes::at},
     {"fret {slot} of {job} (is|measures|measured|came out at) {length}",
      "[the] fret (in|for) slot {slot} of {job} (is|measures) {length}",
      "measured {length} (in|for|at) slot {slot} of {job}",
      "fret {slot} of {job} (is|measures|measured) {length} across {measured=across} [its] [ends] "
      "[(bent to|bend radius|radius) {bend_radius}]"},
     {"fret 3 of job 1 measures 52 mm across its ends, bent to 300 mm", "fret 3 of job 1 measures 52.4 mm",
      "measured 52.4 mm for slot 3 of job 1"},
     Role::bench,
     {gives::job,
      gives::slot,
      {"length", Kind::length, "as measured"},
      {"short", Kind::yes, "whether it is shorter than its slot takes"}}},
    &measured};

extern const Command came_short_row;
const Command came_short_row{
    {"came-short",
     "A fret came out too short: it goes into the tin and its slot is open again.",
     {takes::job,
      takes::slot,
      {"length", Kind::length, false, false, "what it measures", takes::piece_length},
      takes::measured,
      takes::bend_radius,
      {"ends", Kind::one_of, false, false, "how its ends are", {}, {"raw", "dressed"}},
      {"tang", Kind::length, false, false, "how long its tang is; as its slot wants", takes::piece_length},
      {"place", Kind::words, false, false, "where it is kept"},
      takes::at},
     {"fret {slot} of {job} (came out|is|came) [too] short [(at|with|by measure) {length}]",
      "(fret|slot) {slot} of {job} (came out|is|came) [too] short , [it] [is] [measures] {length}",
      "[too] short (fret|slot) {slot} of {job} [at {length}]",
      "slot {slot} of {job} (came out|came|is) [too] short [at {length}]"},
     {"fret 7 of job 1 came out short at 47.2 mm", "slot 7 of job 1 is too short at 47.2 mm"},
     Role::bench,
     {gives::piece, gives::job, gives::slot, {"length", Kind::length, "of the piece that it is now"}}},
    &came_short};

} // namespace nutward::shop::command_rows
