// What lies in the tin to no use: pieces too short for any board, untouched for long, more of a length than
// anybody needs, and handfuls that nobody has measured.
#include "shop/rows.hpp"

#include <set>

namespace nutward::shop::question_rows {

namespace {

using namespace units::literals;

constexpr std::size_t most_read = 5000; // pieces of a wire that are looked at
constexpr std::size_t most_named = 200; // of a kind; as many as one call may name
constexpr Length hand = 0.5_mm;         // within which pieces are meant by a length

struct Idle {
  IdlePiece idle;
  std::optional<pieces::Placing> place; // where it would go now
};

struct Alike {
  std::vector<Piece> pieces; // shortest first
  std::int64_t queue = 0;    // open slots that one of them fits
  std::size_t surplus = 0;
};

struct Care {
  Wire wire;
  std::vector<Piece> too_short, unmeasured;
  std::vector<Idle> idle;
  std::vector<Alike> alike;
  bool guessed = false; // no job says how short a fret may be
  bool all = true;      // false: there are more pieces than were looked at
};

// By how many of its ends are raw, the shortest piece that makes a fret of any job on record.
std::array<Length, 3> least_lengths(const Wire& wire, const View& view, const Setup& set, bool& guessed) {
  std::array<Length, 3> out{set.least_useful, set.least_useful, set.least_useful};
  const auto arcs = view.jobs().shortest_arcs(wire.id);
  guessed = arcs.empty();
  bool first = true;
  for (const ShortestArc& arc : arcs) {
    const Length least = board::need(arc.arc, arc.ends, set.fit).least;
    const Length loss = arc.ends == board::EndStyle::rounded ? set.fit.dressing_loss : Length{};
    for (std::size_t raw = 0; raw < out.size(); ++raw) {
      const Length here = least + static_cast<std::int64_t>(raw) * loss;
      out.at(raw) = first ? here : std::min(out.at(raw), here);
    }
    first = false;
  }
  return out;
}

std::vector<Piece> free_pieces(const Wire& wire, const View& view, bool& all) {
  std::vector<Piece> out;
  std::optional<std::int64_t> after;
  for (std::size_t read = 0; read < most_read;) {
    const auto page = view.tin().list(wire.id, after, 500);
    for (const Piece& p : page) {
      if (p.length && !p.job) out.push_back(p);
    }
    read += page.size();
    if (page.size() < 500) return out;
    after = page.back().id;
  }
  all = false;
  return out;
}

// From the shortest on, those within a hand's tolerance of the first of them.
std::vector<Alike> alike_among(const std::vector<Piece>& pieces, const std::vector<pieces::OpenSlot>& open,
                               const View& view, const Setup& set) {
  std::vector<Alike> out;
  const auto enough = static_cast<std::size_t>(set.tin_enough);
  for (std::size_t i = 0; i < pieces.size();) {
    std::size_t end = i;
    while (end < pieces.size() && *pieces[end].length - *pieces[i].length <= hand)
      ++end;
    if (end - i > enough) {
      Alike a{{pieces.begin() + static_cast<std::ptrdiff_t>(i),
               pieces.begin() + static_cast<std::ptrdiff_t>(end)},
              0,
              0};
      std::set<std::pair<std::int64_t, int>> slots;
      for (const Piece* p : {&a.pieces.front(), &a.pieces.back()}) {
        for (const pieces::Placing& x : pieces::places(facts_of(*p, view), open, set.fit))
          slots.insert({x.slot.job, x.slot.slot});
      }
      a.queue = static_cast<std::int64_t>(slots.size());
      const std::size_t wanted = std::max(enough, slots.size());
      a.surplus = a.pieces.size() > wanted ? a.pieces.size() - wanted : 0;
      if (a.surplus > 0) out.push_back(std::move(a));
    }
    i = end;
  }
  return out;
}

Care care_of(const Wire& wire, Instant before, const View& view, const Setup& set) {
  Care out;
  out.wire = wire;
  const auto least = least_lengths(wire, view, set, out.guessed);
  const auto too_short = [&](const Piece& p) {
    return *p.length < least.at(static_cast<std::size_t>(raw_ends(p))) - set.fit.borderline;
  };
  auto pieces = free_pieces(wire, view, out.all);
  std::copy_if(pieces.begin(), pieces.end(), std::back_inserter(out.too_short), too_short);
  std::erase_if(pieces, too_short);
  const auto open = open_slots(wire.id, view, set);
  out.alike = alike_among(pieces, open, view, set);
  for (IdlePiece& i : view.tin().idle(wire.id, before, most_named)) {
    if (too_short(i.piece)) continue;
    const auto places = pieces::places(facts_of(i.piece, view), open, set.fit);
    out.idle.push_back({std::move(i), places.empty() ? std::nullopt : std::optional{places.front()}});
  }
  out.unmeasured = view.tin().unmeasured(wire.id, most_named);
  return out;
}

std::string lengths_of(const std::vector<Piece>& pieces, const Setup& set) {
  const auto [low, high] = std::minmax_element(
      pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) { return a.length < b.length; });
  return low->length == high->length
             ? say(*low->length, set)
             : fmt::format("{} to {}", say(*low->length, set), say(*high->length, set));
}

struct Told {
  Answer& answer;
  std::vector<Piece> short_ones{}, useless{}; // that may be thrown out
};

void row(Told& told, const Care& c, std::string what, std::int64_t many, std::string lengths,
         std::string advice) {
  told.answer.table->rows.push_back(
      {c.wire.name, std::move(what), std::to_string(many), std::move(lengths), std::move(advice)});
}

void tell(Told& told, const Care& c, int days, const Setup& set) {
  const auto count = [](const auto& v) { return static_cast<std::int64_t>(v.size()); };
  if (!c.too_short.empty()) {
    row(told, c, c.guessed ? "shorter than the shop keeps" : "too short for any board on record",
        count(c.too_short), lengths_of(c.too_short, set), "scrap them");
    told.short_ones.insert(told.short_ones.end(), c.too_short.begin(), c.too_short.end());
  }
  std::vector<Piece> useless, useful;
  for (const Idle& i : c.idle)
    (i.place ? useful : useless).push_back(i.idle.piece);
  if (!useless.empty()) {
    row(told, c, fmt::format("untouched for {} days, no open slot takes them", days), count(useless),
        lengths_of(useless, set), "keep or scrap them");
    told.useless.insert(told.useless.end(), useless.begin(), useless.end());
  }
  if (!useful.empty())
    row(told, c, fmt::format("untouched for {} days, the queue could use them", days), count(useful),
        lengths_of(useful, set), "ask where they go");
  for (const Alike& a : c.alike) {
    row(told, c, fmt::format("of one length; the queue could use {}", a.queue), count(a.pieces),
        lengths_of(a.pieces, set), fmt::format("{} more than enough", a.surplus));
  }
  std::int64_t unmeasured = 0;
  for (const Piece& p : c.unmeasured)
    unmeasured += p.count;
  if (unmeasured > 0) row(told, c, "not measured", unmeasured, "", "measure them");
}

void offer(Told& told, const std::vector<Piece>& pieces, std::string_view one, std::string_view why,
           const Setup& set) {
  if (pieces.empty()) return;
  std::vector<Piece> some(pieces.begin(),
                          pieces.begin() + static_cast<std::ptrdiff_t>(std::min(pieces.size(), most_named)));
  std::vector<Value> ids;
  ids.reserve(some.size());
  for (const Piece& p : some)
    ids.emplace_back(ref(Thing::piece, p.id));
  told.answer.choices.push_back(
      {fmt::format("scrap {} {} ({})", some.size() == 1 ? "the one" : fmt::format("the {}", some.size()),
                   some.size() == 1 ? one : why, lengths_of(some, set)),
       {"scrap-several", {{"pieces", list(std::move(ids))}, {"why", "the tin was sorted"}}},
       {}});
}

Value data_of(const std::vector<Care>& all, int days) {
  std::vector<Value> too_short, idle, alike, unmeasured;
  for (const Care& c : all) {
    const Value wire = ref(Thing::wire, c.wire.id);
    for (const Piece& p : c.too_short)
      too_short.push_back(
          record({{"piece", ref(Thing::piece, p.id)}, {"wire", wire}, {"length", *p.length}}));
    for (const Idle& i : c.idle)
      idle.push_back(record({{"piece", ref(Thing::piece, i.idle.piece.id)},
                             {"wire", wire},
                             {"length", *i.idle.piece.length},
                             {"since", i.idle.since},
                             {"job", i.place ? ref(Thing::job, i.place->slot.job) : Value{}},
                             {"slot", i.place ? Value{std::int64_t{i.place->slot.slot}} : Value{}}}));
    for (const Alike& a : c.alike)
      alike.push_back(record({{"wire", wire},
                              {"shortest", *a.pieces.front().length},
                              {"longest", *a.pieces.back().length},
                              {"count", static_cast<std::int64_t>(a.pieces.size())},
                              {"queue", a.queue},
                              {"surplus", static_cast<std::int64_t>(a.surplus)}}));
    for (const Piece& p : c.unmeasured)
      unmeasured.push_back(record({{"piece", ref(Thing::piece, p.id)}, {"wire", wire}, {"count", p.count}}));
  }
  return record({{"idle_days", std::int64_t{days}},
                 {"too_short", list(std::move(too_short))},
                 {"idle", list(std::move(idle))},
                 {"alike", list(std::move(alike))},
                 {"unmeasured", list(std::move(unmeasured))}});
}

std::string lead_of(const std::vector<Care>& all, int days) {
  std::size_t too_short = 0, idle = 0, surplus = 0;
  std::int64_t unmeasured = 0;
  for (const Care& c : all) {
    too_short += c.too_short.size(), idle += c.idle.size();
    for (const Alike& a : c.alike)
      surplus += a.surplus;
    for (const Piece& p : c.unmeasured)
      unmeasured += p.count;
  }
  std::vector<std::string> said;
  const auto add = [&](std::size_t n, const std::string& words) {
    if (n == 0) return;
    // The first names what is counted.
    said.push_back(fmt::format(
        "{} {}", said.empty() ? plural(static_cast<std::int64_t>(n), "piece") : std::to_string(n), words));
  };
  add(too_short, "too short for any board");
  add(idle, fmt::format("untouched for {} days", days));
  add(surplus, "more of a length than anybody needs");
  add(static_cast<std::size_t>(unmeasured), "not measured");
  if (said.empty())
    return fmt::format("The tin is in order: nothing is too short, untouched for {} days or not measured.",
                       days);
  return fmt::format("In the tin: {}.", fmt::join(said, ", "));
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const int days = static_cast<int>(args.or_else<std::int64_t>("days", set.tin_idle_days));
  const auto wires = args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all();
  std::vector<Care> all;
  all.reserve(wires.size());
  for (const Wire& wire : wires)
    all.push_back(care_of(wire, moment.now - std::chrono::hours{24} * days, view, set));
  Answer out;
  out.table = Table{{"wire", "what", "pieces", "lengths", "advice"}, {}};
  Told told{out};
  for (const Care& c : all)
    tell(told, c, days, set);
  if (out.table->rows.empty()) out.table.reset();
  offer(told, told.short_ones, "that is too short", "that are too short", set);
  offer(told, told.useless, "that no open slot takes", "that no open slot takes", set);
  out.text = wires.empty() ? "No wire has been defined yet." : lead_of(all, days);
  out.reason = fmt::format(
      "A piece is untouched since it was put in, or last held, let go, measured or corrected. Alike is "
      "within {}; {} of a length are enough, or as many as open slots take them.",
      say(hand, set), set.tin_enough);
  if (std::any_of(all.begin(), all.end(), [](const Care& c) { return !c.unmeasured.empty(); }))
    out.reason += " Say what a handful measures: measured the handful: 52.4, 51 and 50.2 mm.";
  for (const Care& c : all) {
    if (!c.all)
      out.reason += fmt::format(" Of {} only the {} shortest pieces were looked at.", c.wire.name, most_read);
  }
  out.data = data_of(all, days);
  if (args.has("wire")) out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  return out;
}

} // namespace

extern const Question tin_care;
const Question tin_care{
    {"tin-care",
     "What lies in the tin to no use: too short, untouched for long, too many of a length, not measured.",
     {takes::optional(takes::wire),
      {"days", Kind::count, false, false, "untouched for so many; as the shop's setting says", {1, 3650}}},
     {"(what|which) pieces [of {wire}] (lie|have lain|are lying) (idle|unused|about)",
      "what [in the tin] is [of] no use [of {wire}]",
      "what [pieces] [of {wire}] (can|could|should) (i|we) throw (out|away)",
      "(tidy|sort|sort out|clean out|clear out|go through) the tin [of {wire}]",
      ("(what|which) pieces [of {wire}] (has nobody|nobody has|did nobody) (used|touched|use|touch) (for|in) "
       "{days} days"),
      "what has been in the tin [for] too long [of {wire}]",
      "(clean up|clean|clear up|tidy up|empty|sort through) the tin [of {wire}]",
      "(what|which pieces) (can|could|should|may) (i|we) (throw|clear|take) out of the tin",
      "(what|which pieces) (is|are) too short [for (anything|any board|any job|everything)]",
      ("(what|which pieces) (has nobody|nobody has|did nobody) (used|touched|use|touch) [in|for] [a long "
       "time|months|ages|weeks]"),
      "is there anything [in the tin] to throw (out|away)",
      ("(is|are) there [any] (pieces|anything) [in the tin] [that] (i|we) (should|can|could) throw "
       "(out|away)")},
     {"tin care", "which pieces of medium has nobody touched for 90 days", "what could we throw out"},
     Role::look,
     {{"idle_days", Kind::count, "untouched for so many days is idle"},
      gives::records("too_short", "for any board on record",
                     {gives::piece, gives::wire, {"length", Kind::length, "of it"}}),
      gives::records("idle", "that nobody has touched for so long",
                     {gives::piece,
                      gives::wire,
                      {"length", Kind::length, "of it"},
                      {"since", Kind::at, "when it was put in or last touched"},
                      {"job", Kind::job, "where it would go now", Often::or_null},
                      gives::or_null(gives::slot)}),
      gives::records("alike", "pieces of one length, more than enough",
                     {gives::wire,
                      {"shortest", Kind::length, "of them"},
                      {"longest", Kind::length, "of them"},
                      {"count", Kind::count, "pieces"},
                      {"queue", Kind::count, "open slots that one of them fits"},
                      {"surplus", Kind::count, "more than enough"}}),
      gives::records("unmeasured", "handfuls",
                     {gives::piece, gives::wire, {"count", Kind::count, "pieces"}})}},
    &ask};

} // namespace nutward::shop::question_rows
