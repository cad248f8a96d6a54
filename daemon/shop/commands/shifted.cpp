// A shift that was carried out: frets lie in other slots now, short ones in the tin.
#include "shop/commands/frets.hpp"
#include "shop/laid.hpp"

#include <set>

namespace nutward::shop::command_rows {

namespace {

struct Move {
  int from = 0, to = 0;
  Fret fret;
  pieces::Verdict verdict; // in `to`
};

[[noreturn]] void refuse(std::string what, std::string where, std::string would_do) {
  throw Problem(Fault::value, std::move(what), std::move(where), std::move(would_do));
}

int slot_at(const Job& job, std::int64_t slot, const char* where) {
  if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end())
    refuse(fmt::format("{} gets no fret in slot {}.", named(job), slot), where,
           fmt::format("Its slots are {}.", ranges(job.slots)));
  return static_cast<int>(slot);
}

// A fret that may be lifted: made, measured, not seated.
Fret loose(const Job& job, int slot, const char* where, const View& view) {
  const auto fret = fret_in(job, slot, view);
  if (!fret || fret->state == FretState::came_short)
    refuse(fmt::format("Slot {} of {} has no fret to lift.", slot, named(job)), where, "Leave it out.");
  refuse_seated(fret, job, slot);
  if (!fret->length) {
    refuse(fmt::format("Nobody has measured fret {} of {}.", slot, named(job)), where,
           fmt::format("Say for example: fret {} of job {} measures 47.1 mm.", slot, job.id));
  }
  return *fret;
}

std::vector<Move> moves_of(const Args& args, const Job& job, const Laid& lies, const View& view,
                           const Setup& set) {
  const auto from = args.many<std::int64_t>("from"), to = args.many<std::int64_t>("to");
  if (from.size() != to.size()) {
    refuse(fmt::format("{} lifted and {} filled do not go together.",
                       plural(static_cast<std::int64_t>(from.size()), "fret"),
                       plural(static_cast<std::int64_t>(to.size()), "slot")),
           "to", "Say one slot to go to for each fret, in the same order.");
  }
  std::vector<Move> out;
  std::set<int> left, filled;
  for (std::size_t i = 0; i < from.size(); ++i) {
    Move m{slot_at(job, from[i], "from"), slot_at(job, to[i], "to"), {}, {}};
    if (!left.insert(m.from).second || !filled.insert(m.to).second || m.from == m.to)
      refuse("A fret moves once, and a slot takes one.", "from", "Say each fret and each slot once.");
    m.fret = loose(job, m.from, "from", view);
    const auto lying =
        std::find_if(lies.frets.begin(), lies.frets.end(), [&](const auto& f) { return f.slot == m.from; });
    const pieces::Wanted wanted = wanted_for(job, m.to, view, set);
    m.verdict = pieces::judge(lying->facts, wanted, set.fit);
    if (m.verdict.outcome == pieces::Outcome::too_short || m.verdict.outcome == pieces::Outcome::tang_short) {
      refuse(fmt::format("Fret {} measures {}, and slot {} of {} takes {}.", m.from, say(*m.fret.length, set),
                         m.to, named(job), range_of(wanted.need, set)),
             "to", fmt::format("Ask 'shift job {}'.", job.id));
    }
    if (m.verdict.trim > set.fit.trim_limit) {
      refuse(fmt::format("Fret {} would lose {} in slot {}, more than the trim limit of {}.", m.from,
                         say(m.verdict.trim, set), m.to, say(set.fit.trim_limit, set)),
             "to",
             fmt::format("Put it in the tin and use it from there: fret {} of job {} came out short.", m.from,
                         job.id));
    }
    out.push_back(std::move(m));
  }
  return out;
}

// No fret may be laid on another.
void refuse_on_top(const std::vector<Move>& moves, const std::vector<int>& short_ones, const Job& job,
                   const View& view) {
  std::set<int> free(short_ones.begin(), short_ones.end());
  for (const Move& m : moves) {
    if (!free.insert(m.from).second)
      refuse(fmt::format("Fret {} cannot both move and go in the tin.", m.from), "short_ones",
             "Say one of them.");
  }
  for (const Move& m : moves) {
    const auto there = fret_in(job, m.to, view);
    if (free.contains(m.to) || !there || there->state == FretState::came_short) continue;
    refuse(fmt::format("Slot {} of {} still has its fret.", m.to, named(job)), "to",
           "Say where that one went too: to another slot, or into the tin.");
  }
}

// The fret leaves its slot's row; its wire stays on the board until it is laid elsewhere or ground off.
void lay(Tx& tx, const Job& job, const std::vector<Move>& moves) {
  for (const Move& m : moves)
    put_fret(tx, job, m.from, FretState::came_short, {}, {});
  for (const Move& m : moves) {
    if (m.verdict.trim > Length{}) {
      tx.move({MovementKind::scrapped,
               job.wire,
               {},
               {},
               job.id,
               m.to,
               Place::board,
               Place::scrap,
               m.verdict.trim,
               0,
               "shifted"});
    }
    put_fret(tx, job, m.to, FretState::made, m.verdict.finish, m.fret.piece);
  }
}

std::vector<Piece> into_the_tin(Tx& tx, const Job& job, const std::vector<int>& slots, const Laid& lies,
                                const Moment& moment, const Setup& set) {
  std::vector<Piece> out;
  for (const int slot : slots) {
    const auto lying =
        std::find_if(lies.frets.begin(), lies.frets.end(), [&](const auto& f) { return f.slot == slot; });
    Piece p;
    p.wire = job.wire;
    p.kind = pieces::Kind::short_fret;
    p.length = lying->facts.length;
    p.left = p.right = lying->facts.raw_ends > 0 ? End::raw : End::dressed;
    p.tang = lying->facts.tang;
    p.added = moment.happened;
    out.push_back(short_into_tin(tx, p, fret_in(job, slot, tx), job, slot, set));
  }
  return out;
}

std::string words_of(const std::vector<Move>& moves, const std::vector<Piece>& shorts, const Setup& set) {
  std::vector<std::string> out;
  for (const Move& m : moves)
    out.push_back(fmt::format("fret {} in slot {} now", m.from, m.to));
  for (const Piece& p : shorts)
    out.push_back(fmt::format("the {} one in the tin as piece {}", say(*p.length, set), p.id));
  return fmt::format("{}", fmt::join(out, ", "));
}

Effect shifted(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  for (const SaidLength& said : said_lengths(args, job))
    record_length(tx, job, said.first, said.second);
  const Laid lies = laid(job, {}, false, tx, set);
  const auto moves = moves_of(args, job, lies, tx, set);
  std::vector<int> short_ones;
  for (const int slot : args.slots("short_ones")) {
    loose(job, slot_at(job, slot, "short_ones"), "short_ones", tx);
    short_ones.push_back(slot);
  }
  if (moves.empty() && short_ones.empty())
    refuse("Which frets moved?", "from",
           fmt::format("Say for example: shifted job {}, from 9, to 8.", job.id));
  refuse_on_top(moves, short_ones, job, tx);
  const auto shorts = into_the_tin(tx, job, short_ones, lies, moment, set);
  lay(tx, job, moves);
  std::vector<int> open;
  for (const SlotNeed& s : open_slots(job, tx, set))
    open.push_back(s.slot);
  Effect out;
  out.answer.text = fmt::format("Laid the frets of {} anew: {}.", named(job), words_of(moves, shorts, set));
  if (!open.empty()) out.answer.text += fmt::format(" Open: {}.", ranges(open));
  for (const Piece& p : shorts) {
    const auto places = pieces::places(facts_of(p, tx), open_slots(job.wire, tx, set), set.fit);
    if (places.empty()) continue;
    out.answer.reason += fmt::format("{}Piece {} would go into slot {} of job {}: {}.",
                                     out.answer.reason.empty() ? "" : " ", p.id, places.front().slot.slot,
                                     places.front().slot.job, how_to(places.front().verdict, set));
  }
  std::vector<Value> pieces;
  for (const Piece& p : shorts)
    pieces.push_back(ref(Thing::piece, p.id));
  out.answer.data = record(
      {{"job", ref(Thing::job, job.id)}, {"pieces", list(std::move(pieces))}, {"open", list_of(open)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command shifted_row;
const Command shifted_row{
    {"shifted",
     "Keeps where the frets of a job lie after a shift, and which of them went in the tin.",
     {takes::job,
      {"from", Kind::slot, false, true, "the slots whose frets were moved"},
      {"to", Kind::slot, false, true, "where each of them lies now, in the same order"},
      {"short_ones", Kind::slot, false, true, "the slots whose frets went in the tin"},
      {"slots", Kind::slot, false, true, "whose frets were measured"},
      {"lengths", Kind::length, false, true, "of these frets, in the same order", takes::piece_length},
      takes::at},
     {"[i] moved (fret|frets) {from} of {job} to (slot|slots) {to}",
      "[i] moved (fret|frets) {from} to (slot|slots) {to} (on|of) {job}",
      "[i] (shifted|moved) (fret|frets) {from} of {job} to (slot|slots) {to} and put {short_ones} in the "
      "tin",
      "[i] (shifted|moved) (fret|frets) {from} of {job} to (slot|slots) {to} (fret|frets) {short_ones} "
      "(went|goes|go|is|are) (in|into) [the] tin"},
     {"moved fret 9 of job 1 to slot 8"},
     Role::bench,
     {gives::job,
      {"pieces", Kind::piece, "put into the tin", Often::many},
      {"open", Kind::slot, "slots that lack a fret now", Often::many}}},
    &shifted};

} // namespace nutward::shop::command_rows
