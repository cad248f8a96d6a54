// The tin: pieces in, held, let go, scrapped.
#include "shop/commands/tin.hpp"

namespace nutward::shop::command_rows {

pieces::Kind kind_of(const Args& args) {
  const std::string kind = args.text("kind");
  return kind == "stick_end"     ? pieces::Kind::stick_end
         : kind == "pulled_fret" ? pieces::Kind::pulled_fret
                                 : pieces::Kind::short_fret;
}

void scrap_whole(Tx& tx, const Piece& p, const std::string& why, const Setup& set) {
  if (p.job) refuse_held(p, tx, set);
  tx.move({MovementKind::scrapped,
           p.wire,
           p.lot,
           p.id,
           {},
           {},
           Place::tin,
           Place::scrap,
           p.length.value_or(Length{}),
           p.count,
           why});
}

namespace {

// What all pieces of one report share.
Piece common(const Args& args, const Moment& moment) {
  Piece p;
  p.wire = args.id("wire");
  p.kind = kind_of(args);
  set_ends(p, args.text("ends"));
  p.tang = args.opt<Length>("tang");
  p.bend_radius = args.opt<Length>("bend_radius");
  p.measured = args.text("measured") == "across" ? Measured::across : Measured::straight;
  p.place = args.text("place");
  p.lot = args.opt<std::int64_t>("lot");
  p.added = moment.happened;
  return p;
}

std::string_view ends_words(const Args& args) {
  if (!args.has("ends")) return "not said, taken as raw";
  const std::string ends = args.text("ends");
  return ends == "one_raw" ? "one dressed, one raw" : ends == "raw" ? "both raw" : "both dressed";
}

} // namespace

void set_ends(Piece& p, std::string_view ends) {
  if (ends == "dressed") p.left = p.right = End::dressed;
  if (ends == "one_raw") p.left = End::dressed, p.right = End::raw;
  if (ends == "raw") p.left = p.right = End::raw;
}

std::int64_t put_in(Tx& tx, const Piece& p) {
  const std::int64_t id = tx.put(p);
  tx.move({MovementKind::counted,
           p.wire,
           p.lot,
           id,
           {},
           {},
           Place::outside,
           Place::tin,
           p.length.value_or(Length{}),
           p.count,
           ""});
  return id;
}

void take_out_unmeasured(Tx& tx, const Piece& handful, std::int64_t many) {
  tx.move({MovementKind::counted,
           handful.wire,
           handful.lot,
           handful.id,
           {},
           {},
           Place::tin,
           Place::outside,
           {},
           many,
           "measured"});
}

namespace {

// Pieces of a handful are measured at last: as many leave it as are added by length.
void take_from_handful(const Args& args, std::int64_t many, Tx& tx, const Setup& set) {
  const Piece handful = piece_of(args, tx, "from");
  if (handful.length || handful.count < many || handful.wire != args.id("wire")) {
    throw Problem(Fault::state,
                  fmt::format("{} is not a handful of that wire with {} left.", named(handful, tx, set),
                              plural(many, "piece")),
                  "from", "Say which handful they come from; 'stock' with the wire's name shows them.");
  }
  take_out_unmeasured(tx, handful, many);
}

Effect add(const Args& args, const Moment& moment, Tx& tx) {
  const Setup set = setup(tx);
  const Wire wire = wire_of(tx, args.id("wire"));
  const auto lengths = args.many<Length>("length");
  const auto count = args.opt<std::int64_t>("count");
  if (lengths.empty() && !count) {
    throw Problem(Fault::value, "Neither a length nor a number of pieces was said.", "length_mm",
                  "Say for example: add 52.4 and 51 mm of medium, or: add 6 pieces of medium.");
  }
  if (!lengths.empty() && count && *count != static_cast<std::int64_t>(lengths.size()) &&
      lengths.size() != 1) {
    throw Problem(Fault::value,
                  fmt::format("{} were said, and a count of {}.",
                              plural(static_cast<std::int64_t>(lengths.size()), "length"), *count),
                  "count", "Leave the count out.");
  }
  Effect out;
  std::vector<Value> ids;
  std::vector<std::string> said;
  Piece p = common(args, moment);
  if (p.lot) lot_of(*p.lot, p.wire, tx);
  if (lengths.empty()) {
    p.count = *count;
    p.measured = Measured::not_at_all;
    ids.emplace_back(ref(Thing::piece, put_in(tx, p)));
    out.answer.text = fmt::format("Put {} of {} into the tin, not measured yet{}.", plural(p.count, "piece"),
                                  wire.name, p.place.empty() ? "" : ", " + p.place);
  } else {
    const std::int64_t times = lengths.size() == 1 ? count.value_or(1) : 1;
    if (args.has("from")) take_from_handful(args, static_cast<std::int64_t>(lengths.size()) * times, tx, set);
    for (Length measured : lengths) {
      p.length = along(args, measured);
      for (std::int64_t n = 0; n < times; ++n)
        ids.emplace_back(ref(Thing::piece, put_in(tx, p)));
      said.push_back((times > 1 ? fmt::format("{} × ", times) : "") + say(*p.length, set) +
                     across(args, measured, set));
    }
    static constexpr std::array kinds{"short fret", "stick end", "pulled fret"};
    out.answer.text =
        fmt::format("Put {} of {} into the tin: {}{}.",
                    plural(static_cast<std::int64_t>(ids.size()), kinds.at(static_cast<std::size_t>(p.kind))),
                    wire.name, fmt::join(said, ", "), p.place.empty() ? "" : "; " + p.place);
  }
  out.answer.reason = fmt::format("Ends: {}.", ends_words(args));
  if (ids.size() == 1)
    out.answer.about.args = {{"piece", ids.front()}, {"wire", ref(Thing::wire, wire.id)}};
  else
    out.answer.about.args = {{"wire", ref(Thing::wire, wire.id)}};
  out.answer.data = record({{"pieces", list(std::move(ids))}, {"wire", ref(Thing::wire, wire.id)}});
  return out;
}

Effect hold(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Piece p = piece_of(args, tx);
  const Job job = job_of(args, tx);
  if (p.job && *p.job != job.id) refuse_held(p, tx, set);
  if (p.wire != job.wire) {
    throw Problem(Fault::state,
                  fmt::format("{} is of another wire than {}, which takes {}.", named(p, tx, set), named(job),
                              wire_of(tx, job.wire).name),
                  "piece", "Choose a piece of that wire.");
  }
  p.job = job.id;
  p.more_slots.clear();
  p.slot = args.has("slot") ? std::optional{slot_of(args, job)} : std::nullopt;
  tx.put(p);
  Effect out;
  out.answer.text = fmt::format("Holding {} for {}{}.", named(p, tx, set),
                                p.slot ? fmt::format("slot {} of ", *p.slot) : "", named(job));
  out.answer.data = record({{"piece", ref(Thing::piece, p.id)},
                            {"job", ref(Thing::job, job.id)},
                            {"slot", p.slot ? Value{std::int64_t{*p.slot}} : Value{}}});
  out.answer.about.args = {{"piece", ref(Thing::piece, p.id)}, {"job", ref(Thing::job, job.id)}};
  if (p.slot) out.answer.about.args.emplace_back("slot", std::int64_t{*p.slot});
  return out;
}

Effect let_go(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Piece p = piece_of(args, tx);
  if (!p.job)
    throw Problem(Fault::state, fmt::format("Nobody holds {}.", named(p, tx, set)), "piece",
                  "Nothing needs doing.");
  const std::int64_t job = *p.job;
  unhold(p);
  tx.put(p);
  Effect out;
  out.answer.text = fmt::format("Let go of {}; it was held for job {}.", named(p, tx, set), job);
  out.answer.data = record({{"piece", ref(Thing::piece, p.id)}, {"job", ref(Thing::job, job)}});
  out.answer.about.args = {{"piece", ref(Thing::piece, p.id)}};
  return out;
}

Effect scrap(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Piece p = piece_of(args, tx);
  scrap_whole(tx, p, args.text("why"), set);
  Effect out;
  out.answer.text = fmt::format("Scrapped {}.", named(p, tx, set));
  out.answer.data = record({{"piece", ref(Thing::piece, p.id)}, {"length_mm", opt(p.length)}});
  return out;
}

} // namespace

namespace {

// What is too short for any fret, or longer than the wire comes: a count or another unit was meant.
std::string hardly_a_piece(const Args& args, const Moment&, const View& view) {
  constexpr Length least{10'000'000}; // 10 mm
  const Setup set = setup(view);
  const Wire wire = wire_of(view, args.id("wire"));
  for (const Length length : args.many<Length>("length")) {
    const bool longer = wire.stick && length > *wire.stick;
    if (length >= least && !longer) continue;
    const std::string what =
        longer ? fmt::format("longer than a stick of {}, {}", wire.name, say(*wire.stick, set))
               : "too short for any fret";
    return fmt::format("A piece of {} is {}. Is that its length?", say(length, set), what);
  }
  return "";
}

} // namespace

extern const Command add_row;
const Command add_row{
    {"add",
     "Puts pieces into the tin: one, several, or a handful that nobody has measured.",
     {takes::wire,
      {"length", Kind::length, false, true, "of each piece", takes::piece_length},
      {"count", Kind::count, false, false, "how many; for a handful without lengths", {1, 500}},
      {"kind",
       Kind::one_of,
       false,
       false,
       "short_fret where not said",
       {},
       {"short_fret", "stick_end", "pulled_fret"}},
      {"ends", Kind::one_of, false, false, "raw where not said", {}, {"raw", "one_raw", "dressed"}},
      takes::measured,
      takes::bend_radius,
      {"tang", Kind::length, false, false, "where it was nipped", takes::piece_length},
      {"place", Kind::words, false, false, "where in the shop"},
      {"lot", Kind::count, false, false, "the number of the delivery that they are of", {1, 1e9}},
      {"from", Kind::piece, false, false, "the handful that they were in until they were measured"},
      takes::at},
     {"add {length} of {wire} [to the tin] [in {place}]", "add {length} of {wire} [from|of] lot {lot}",
      "add {length} of {wire} from {from}", "(put|throw|drop) {length} of {wire} (in|into) [the] tin",
      "add [a|an] {length} {kind} of {wire} [in {place}]",
      "(add|put) [a|an] {length} [long] (piece|bit|offcut) of {wire} [(in|into|to) [the] tin]",
      "[i] (have|got) [got] [a|an] {length} [long] (piece|bit|offcut) of {wire} (for|into) [the] tin",
      "add {count} [pieces|offcuts] of {wire} [to the tin] [in {place}]",
      "add {count} [pieces|offcuts|short frets] of {wire} [of|at|each] {length} [each]",
      "add {length} of {wire} {ends} [ends] [in {place}]",
      "add {length} of {wire} [with] [both] ends {ends} [in {place}]",
      "(chucked|threw|dropped|tossed|dropped) {length} of {wire} (in|into) [[the] tin]",
      ("add {length} of {wire} [measured] across {measured=across} [its|their] [ends] [(bent to|bend "
       "radius|radius) {bend_radius}] "
       "[in {place}]"),
      "{length} of {wire} (to|into) [the] tin", "tin {length} of {wire}",
      "(put|add) {count} [shorts|short frets|pieces|offcuts] of {length} {wire} (in|into|to) [the] tin"},
     {"add 52.4, 51.0 and 50.2 mm of medium", "put 52.4 mm of medium into the tin", "add 6 pieces of medium",
      "add 52.4 and 51 mm of medium from lot 2", "add 52 mm of medium across the ends, bent to 300 mm"},
     Role::bench,
     {{"pieces", Kind::piece, "ids", Often::many}, gives::wire}},
    &add,
    &hardly_a_piece};

extern const Command hold_row;
const Command hold_row{
    {"hold",
     "Keeps a piece of the tin for a job, or for one slot of it.",
     {takes::piece, takes::job, takes::optional(takes::slot), takes::at},
     {"(hold|keep|reserve) {piece} for slot {slot} of {job}",
      "(hold|keep|reserve) {piece} for {job} [slot {slot}]", "(hold|keep|reserve) {piece} for slot {slot}"},
     {"hold piece 1 for job 1", "keep the 52.4 of medium for slot 3 of job 1"},
     Role::bench,
     {gives::piece, gives::job, gives::or_null(gives::slot)}},
    &hold};

extern const Command let_go_row;
const Command let_go_row{{"let-go",
                          "Gives a held piece free again.",
                          {takes::piece, takes::at},
                          {"let go [of] {piece}", "let {piece} go", "(free|release|unhold) {piece}",
                           "do not hold {piece} any more", "(nobody|no one) (needs|wants) {piece} [any more]",
                           "{piece} is (not|no longer) (needed|wanted|held) [any more]"},
                          {"let go piece 1", "let go of the 52.4 of medium"},
                          Role::bench,
                          {gives::piece, {"job", Kind::job, "that it was held for"}}},
                         &let_go};

extern const Command scrap_row;
const Command scrap_row{
    {"scrap",
     "Takes a piece out of the tin for the bin.",
     {takes::piece, {"why", Kind::words, false, false, "the reason"}, takes::at},
     {"scrap {piece} [because {why}]", "(bin|throw away|throw out) {piece}", "throw {piece} (away|out)",
      "{piece} (goes|went) (in|into) the bin", "(i|we) (threw|threw out) {piece} [away|out]",
      "threw {piece} (away|out)", "{piece} is (scrap|no good|no use)"},
     {"scrap piece 1", "throw away the 52.4 of medium"},
     Role::bench,
     {gives::piece, {"length", Kind::length, "null where nobody has measured it", Often::or_null}}},
    &scrap};

} // namespace nutward::shop::command_rows
