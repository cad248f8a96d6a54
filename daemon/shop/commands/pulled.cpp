// Frets pulled out of a board: old ones of the instrument, or the job's own that must come out again.
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

namespace {

[[noreturn]] void ask_wire(const Args& args, const Job& job, const View& view) {
  Problem problem(Fault::ambiguous, "Of which wire are the pulled frets?", "wire",
                  fmt::format("Say it, such as: of {}.", wire_of(view, job.wire).name));
  auto offer = [&](const Wire& w, const char* more) {
    if (problem.choices.size() == 9) return;
    Call call = args.call();
    call.args.emplace_back("wire", Ref{Thing::wire, w.id});
    problem.choices.push_back({w.name + more, std::move(call), {}});
  };
  offer(wire_of(view, job.wire), ", as the job takes");
  for (const Wire& w : view.wires().all()) {
    if (w.id != job.wire) offer(w, "");
  }
  throw Problem(std::move(problem));
}

Piece blank(const Args& args, std::int64_t wire, const Moment& moment) {
  Piece p;
  p.wire = wire;
  p.kind = pieces::Kind::pulled_fret;
  p.left = p.right = End::dressed; // they have been on a board
  p.place = args.text("place");
  p.added = moment.happened;
  return p;
}

// Old frets: the shop did not know of them, they come from outside.
std::int64_t old_ones(Tx& tx, Piece p, const Job& job, std::int64_t count, std::optional<Length> length) {
  p.count = count;
  p.length = length;
  if (!length) p.measured = Measured::not_at_all;
  const std::int64_t id = tx.put(p);
  tx.move({MovementKind::counted,
           p.wire,
           {},
           id,
           job.id,
           {},
           Place::outside,
           Place::tin,
           length.value_or(Length{}),
           count,
           "pulled"});
  return id;
}

// A fret that the job has: it leaves the board, and its slot is open again.
std::int64_t own(Tx& tx, Piece p, const Job& job, int slot, const Setup& set) {
  const auto f = fret_in(job, slot, tx);
  if (!f || f->state == FretState::came_short || !f->length) {
    throw Problem(Fault::state, fmt::format("Slot {} of {} has no fret that is known.", slot, named(job)),
                  "slots", "For the instrument's old frets say how many: pulled 20 frets of the job.");
  }
  p.length = f->length;
  if (const auto tang = need_of(job, slot, set).tang) p.tang = std::min(*tang, *f->length);
  const std::int64_t id = tx.put(p);
  tx.move({MovementKind::made_a_piece,
           p.wire,
           {},
           id,
           job.id,
           slot,
           Place::board,
           Place::tin,
           *f->length,
           1,
           "pulled"});
  put_fret(tx, job, slot, FretState::came_short, {}, {});
  return id;
}

Effect pulled(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const auto slots = args.slots("slots");
  const auto lengths = args.many<Length>("length");
  const auto count = args.opt<std::int64_t>("count");
  if ((slots.empty() ? 0 : 1) + (lengths.empty() ? 0 : 1) + (count ? 1 : 0) != 1) {
    throw Problem(
        Fault::value, "How many frets were pulled?", "count",
        fmt::format("Say one of these: pulled 20 frets of job {0}; pulled fret 5 of job {0}.", job.id));
  }
  if (!slots.empty() && args.has("wire") && args.id("wire") != job.wire) {
    throw Problem(Fault::value,
                  fmt::format("The frets of {} are of {}.", named(job), wire_of(tx, job.wire).name), "wire",
                  "Leave the wire out.");
  }
  if (slots.empty() && !args.has("wire")) ask_wire(args, job, tx);
  const Piece p = blank(args, slots.empty() ? args.id("wire") : job.wire, moment);
  std::vector<Value> ids;
  std::int64_t many = count.value_or(0);
  if (count) ids.emplace_back(ref(Thing::piece, old_ones(tx, p, job, *count, {})));
  for (Length length : lengths)
    ids.emplace_back(ref(Thing::piece, old_ones(tx, p, job, 1, length))), ++many;
  for (int slot : slots)
    ids.emplace_back(ref(Thing::piece, own(tx, p, job, slot, set))), ++many;
  Effect out;
  out.answer.text = fmt::format(
      "Put {} of {}, from {}, into the tin{}{}{}.", plural(many, "pulled fret"), wire_of(tx, p.wire).name,
      named(job), count ? ", not measured yet" : "", p.place.empty() ? "" : "; " + p.place,
      slots.empty() ? ""
                    : fmt::format("; {} open again", slots.size() == 1 ? "its slot is" : "their slots are"));
  out.answer.reason = "A pulled fret is worn and its tang spent: it is offered only when asked for.";
  out.answer.cautions = {Hazard::iron};
  out.answer.data = record({{"pieces", list(std::move(ids))},
                            {"wire", ref(Thing::wire, p.wire)},
                            {"job", ref(Thing::job, job.id)},
                            {"slots", list_of(slots)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Command pulled_row;
const Command pulled_row{
    {"pulled",
     "Puts frets pulled out of a job's board into the tin: old ones by number or length, its own by slot.",
     {takes::job,
      {"count", Kind::count, false, false, "how many old frets, not measured", {1, 200}},
      {"length", Kind::length, false, true, "or how long each is", takes::piece_length},
      {"slots", Kind::slot, false, true, "or which of the job's new frets"},
      takes::optional(takes::wire),
      {"place", Kind::words, false, false, "where in the shop"},
      takes::at},
     {"pulled {count} [old] frets [of {wire}] (of|from|out of) {job} [(in|into) the tin]",
      "pulled (slot|fret|slots|frets) {slots} (of|from|out of) {job} [(in|into) the tin]",
      "pulled frets of {length} [of {wire}] (from|out of) {job} [(in|into) the tin]",
      "{count} pulled frets [of {wire}] (of|from) {job} (in|into) the tin"},
     {"pulled 20 frets of brass out of job 1 into the tin", "pulled fret 5 of job 5"},
     Role::bench,
     {{"pieces", Kind::piece, "ids", Often::many},
      gives::wire,
      gives::job,
      {"slots", Kind::slot, "open again", Often::many}}},
    &pulled};

} // namespace nutward::shop::command_rows
