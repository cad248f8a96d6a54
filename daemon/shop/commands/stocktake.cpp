// Stocktaking: how much there is, whatever the ledger thought; and corrections, with a reason.
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

using units::LengthUnit;

// Brings what is on hand to `now`. Says so in words.
std::string bring(Tx& tx, MovementKind kind, std::int64_t wire, Length now, std::string why) {
  const Length before = tx.wires().on_hand(wire), off = now - before;
  if (off == Length{})
    return fmt::format("{} is on hand, as the ledger had it", units::print(now, LengthUnit::m));
  const bool more = off.nm > 0;
  tx.move({kind,
           wire,
           {},
           {},
           {},
           {},
           more ? Place::outside : Place::stock,
           more ? Place::stock : Place::outside,
           units::abs(off),
           0,
           std::move(why)});
  return fmt::format("{} is on hand now, {} {} than the ledger had", units::print(now, LengthUnit::m),
                     units::print(units::abs(off), LengthUnit::m), more ? "more" : "less");
}

Effect count(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Wire w = wire_of(tx, args.id("wire"));
  const auto sticks = args.opt<std::int64_t>("sticks");
  if (sticks.has_value() == args.has("length")) {
    throw Problem(Fault::value,
                  sticks ? "Sticks and a length in all cannot both be counted." : "How much was counted?",
                  sticks ? "length_mm" : "sticks",
                  fmt::format("Say for example: counted 7 sticks of {0}, or: counted 4.2 m of {0}.", w.name));
  }
  Length now;
  std::string how;
  if (sticks) {
    const auto each = args.has("each") ? args.opt<Length>("each") : w.stick;
    if (!each) {
      throw Problem(Fault::value, fmt::format("How long is one stick of {}?", w.name), "each_mm",
                    fmt::format("Say for example: counted 7 sticks of {} 610 mm each.", w.name));
    }
    now = *each * *sticks;
    how = fmt::format("{} of {}", plural(*sticks, "stick"), say(*each, set));
  } else {
    now = args.get<Length>("length");
    how = units::print(now, LengthUnit::m);
  }
  const Length before = tx.wires().on_hand(w.id);
  Effect out;
  out.answer.text = fmt::format("Counted {} of {}: {}.", how, w.name,
                                bring(tx, MovementKind::counted, w.id, now, args.text("note")));
  out.answer.data = record(
      {{"wire", ref(Thing::wire, w.id)}, {"before", before}, {"on_hand", now}, {"difference", now - before}});
  out.answer.about.args = {{"wire", ref(Thing::wire, w.id)}};
  return out;
}

Length target(const Args& args, Length before) {
  if (args.has("to") == args.has("by")) {
    throw Problem(Fault::value,
                  args.has("to") ? "It cannot be corrected to a length and by one at once."
                                 : "To what is it to be corrected?",
                  "to_mm", "Say either the new length, or by how much: to 5.2 m, or by -0.3 m.");
  }
  return args.has("to") ? args.get<Length>("to") : before + args.get<Length>("by");
}

Effect correct_piece(const Args& args, Tx& tx, const Setup& set) {
  const Piece p = piece_of(args, tx);
  if (!p.length) {
    throw Problem(Fault::state, fmt::format("{} has no length to correct.", named(p, tx, set)), "piece",
                  "Add the pieces by their lengths, from that handful.");
  }
  const Length now = target(args, *p.length), off = now - *p.length;
  if (now.mm() < takes::piece_length.least || now.mm() > takes::piece_length.most) {
    throw Problem(Fault::value, fmt::format("A piece is not {} long.", say(now, set)), "to_mm",
                  "Give a length from 1 to 2000 mm, or scrap the piece.");
  }
  const std::string was = named(p, tx, set);
  if (off != Length{}) {
    tx.move({MovementKind::corrected,
             p.wire,
             p.lot,
             p.id,
             {},
             {},
             off.nm > 0 ? Place::outside : Place::tin,
             off.nm > 0 ? Place::tin : Place::outside,
             units::abs(off),
             0,
             args.text("why")});
  }
  Effect out;
  out.answer.text = fmt::format("Corrected {} to {}: {}.", was, say(now, set), args.text("why"));
  out.answer.data = record(
      {{"piece", ref(Thing::piece, p.id)}, {"before", *p.length}, {"length", now}, {"difference", off}});
  out.answer.about.args = {{"piece", ref(Thing::piece, p.id)}};
  return out;
}

Effect correct(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  if (args.text("why").find_first_not_of(' ') == std::string::npos) {
    throw Problem(Fault::value, "A correction needs its reason.", "why",
                  "Say why, such as: because two sticks were bent.");
  }
  if (args.has("wire") == args.has("piece")) {
    throw Problem(Fault::value, "What is to be corrected, a wire or a piece?", "wire",
                  "Say one of them, such as: correct medium to 5.2 m because two sticks were bent.");
  }
  if (args.has("piece")) return correct_piece(args, tx, set);
  const Wire w = wire_of(tx, args.id("wire"));
  const Length before = tx.wires().on_hand(w.id), now = target(args, before);
  Effect out;
  out.answer.text =
      fmt::format("Corrected {}: {}: {}.", w.name,
                  bring(tx, MovementKind::corrected, w.id, now, args.text("why")), args.text("why"));
  if (now < Length{}) {
    out.answer.text += fmt::format(" That is less than nothing: enter the delivery that is missing, or count "
                                   "{}.",
                                   w.name);
  }
  out.answer.data = record({{"wire", ref(Thing::wire, w.id)},
                            {"before", before},
                            {"on_hand", now},
                            {"difference", now - before},
                            {"less_than_nothing", now < Length{}}});
  out.answer.about.args = {{"wire", ref(Thing::wire, w.id)}};
  return out;
}

} // namespace

extern const Command count_row;
const Command count_row{
    {"count",
     "Takes stock of a wire: how many sticks there are, or how much in all.",
     {takes::wire,
      {"sticks", Kind::count, false, false, "how many", {0, 10000}},
      {"each", Kind::length, false, false, "length of one; the wire's usual stick", {50, 5000}},
      {"length", Kind::length, false, false, "in all", {0, 1e7}},
      takes::note,
      takes::at},
     {"(counted|count) {sticks} (stick|sticks) of {wire} [[at|of] {each} [each]]",
      "(counted|count) {length} of {wire}",
      "(there is|there are) [only] {length} of {wire} [left] [on the shelf]",
      "(there is|there are) [only] {sticks} (stick|sticks) of {wire} [left] [on the shelf]",
      "we have [only] {length} of {wire} [left]", "we have [only] {sticks} (stick|sticks) of {wire} [left]",
      "[only] {length} of {wire} (is|are) left", "[only] {sticks} (stick|sticks) of {wire} (is|are) left",
      "stocktake [of] {wire} {sticks} (stick|sticks)"},
     {"counted 7 sticks of medium", "counted 4.2 m of medium", "count 7 sticks of medium 610 mm each"},
     Role::bench,
     {gives::wire,
      {"before", Kind::length, "on hand, by the ledger"},
      {"on_hand", Kind::length, "now"},
      {"difference", Kind::length, "now less before"}}},
    &count};

extern const Command correct_row;
const Command correct_row{
    {"correct",
     "Corrects what is on hand of a wire, or how long a piece is, for a reason; also below nothing.",
     {takes::optional(takes::wire),
      takes::optional(takes::piece),
      {"to", Kind::length, false, false, "what it is to be", {-1e7, 1e7}},
      {"by", Kind::length, false, false, "or how much more it is to be", {-1e7, 1e7}},
      {"why", Kind::words, true, false, "the reason"},
      takes::at},
     {"correct {wire} to {to} because {why}", "correct {wire} by {by} because {why}",
      "correct {piece} to {to} because {why}", "correct {piece} by {by} because {why}"},
     {"correct medium to 5.2 m because two sticks were bent",
      "correct medium by -0.3 m because a stick was bent",
      "correct piece 1 to 51.2 mm because it was measured again"},
     Role::bench,
     {gives::wire,
      {"before", Kind::length, "on hand"},
      {"on_hand", Kind::length, "now"},
      {"difference", Kind::length, "now less before"},
      {"less_than_nothing", Kind::yes, "whether a delivery is missing"}},
     {gives::piece,
      {"before", Kind::length, "of the piece"},
      {"length", Kind::length, "of it now"},
      {"difference", Kind::length, "now less before"}}},
    &correct};

} // namespace nutward::shop::command_rows
