// Frets of a job that are made of a piece of the tin.
#include "shop/commands/frets.hpp"

#include "shop/commands/press_report.hpp"
#include "shop/touch.hpp"

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
  if (state == FretState::made || state == FretState::came_short) {
    forget_pressings(tx, job, slot);
    touch(tx, job, {{slot}});
  }
  if (state != FretState::came_short) release(tx, job.id, slot);
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
  if (p.job && (*p.job != job.id || (p.slot && !held_for(p, slot)))) refuse_held(p, view, set);
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
  p.right = End::raw;     // where it was cut
  if (!p.slot) unhold(p); // of one held for slots, put_fret takes them off one by one
  tx.put(p);
  const Length nip = *p.length - need.cut - *v.leaves;
  from_tin(MovementKind::used_in_a_slot, Place::board, v.finish, 0);
  from_tin(MovementKind::scrapped, Place::scrap, need.cut - v.finish, 0);
  from_tin(MovementKind::cut, Place::kerf, nip > set.fit.nip_loss ? set.fit.nip_loss : nip, 0);
}

} // namespace

Used use_piece(const Piece& p, const Job& job, int slot, Tx& tx, const Setup& set) {
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
  Used out{v, wanted.need, named(p, tx, set), "", ""};
  const Elsewhere planned = InPlan(wire_of(tx, p.wire), tx, set).of(p, job.id, slot, std::nullopt);
  if (!planned.wanted.empty() && !planned.here)
    out.plan =
        fmt::format(" The cut plan had it for {}, which is planned anew.", wanted_for_words(planned.wanted));
  take(tx, p, job, slot, v, wanted.need, set);
  put_fret(tx, job, slot, FretState::made, v.finish, p.id);
  if (v.leaves) out.rest = fmt::format(" The rest, {}, stays in the tin.", say(*v.leaves, set));
  // Dust and a nip's width are no rest.
  const Length rest = *p.length - wanted.need.cut - set.fit.nip_loss;
  if (!v.leaves && rest > set.fit.borderline)
    out.rest = " " + sentence(scrap_rule(rest, least_useful(p.wire, tx, set), set)) + ".";
  return out;
}

namespace {

Effect use(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Piece p = piece_of(args, tx);
  const Job job = job_of(args, tx);
  const int slot = slot_of(args, job);
  const Used used = use_piece(p, job, slot, tx, set);
  const pieces::Verdict& v = used.verdict;
  Effect out;
  out.answer.text =
      fmt::format("Used {} in slot {} of {}: {}.{}", used.words, slot, named(job), how_to(v, set), used.rest);
  out.answer.reason = fmt::format("The slot takes {}; {} comes off.{}", range_of(used.need, set),
                                  comes_off(v, set), used.plan);
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

} // namespace

extern const Command use_row;
const Command use_row{
    {"use",
     "Makes the fret for a slot of a piece of the tin.",
     {takes::piece, takes::job, takes::slot, takes::at},
     {"(use|used|take|took|i used|i took|i take) {piece} (in|for) slot {slot} [of {job}]",
      "(use|used|take|took) {piece} (in|for|on) {job} slot {slot}",
      "put {piece} (in|into) slot {slot} [of {job}]", "{piece} (goes|went) (in|into) slot {slot} [of {job}]",
      "(made|make) (slot|fret) {slot} of {job} (from|out of) {piece}"},
     {"use piece 1 in slot 3 of job 1", "put the 52.4 of medium into slot 3 of job 1"},
     Role::bench,
     {gives::piece,
      gives::job,
      gives::slot,
      {"finish", Kind::length, "of the fret"},
      {"trim", Kind::length, "what comes off"},
      {"leaves", Kind::length, "what stays in the tin", Often::or_null}}},
    &use};

} // namespace nutward::shop::command_rows
