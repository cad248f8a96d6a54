// Does a wire suit a job's slots, and what is it bent to?
#include "wire/suits.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

bool says_ebony(const std::string& wood) {
  std::string text = wood;
  for (char& c : text)
    c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return text.find("ebony") != std::string::npos;
}

wire::Sawn sawn_of(const Args& args, const Job& job) {
  wire::Sawn out;
  out.width = args.has("slot_width") ? args.opt<Length>("slot_width") : job.slot_width;
  out.depth = args.has("slot_depth") ? args.opt<Length>("slot_depth") : job.slot_depth;
  out.flat_bottomed = args.has("bottom") ? args.text("bottom") == "flat" : job.slot_flat_bottom;
  out.ebony = says_ebony(job.wood);
  return out;
}

// As far as a tang reaches in each slot: to the edges, or on a bound board before the bindings. The plan line
// of a fanned slot cuts a cylinder in an ellipse, which at its top is as flat as a circle of R·(1 + lean²).
std::vector<wire::SawnSlot> slots_of(const Job& job, const Setup& set) {
  const Length bound = job.board.binding ? *job.board.binding + set.fit.binding_clearance : Length{};
  std::vector<wire::SawnSlot> out;
  for (const board::Slot& s : board::slots(job.board)) {
    if (std::find(job.slots.begin(), job.slots.end(), s.n) == job.slots.end()) continue;
    const double askew = board::askew(job.board, s.n);
    wire::SawnSlot& slot = out.emplace_back();
    slot.n = s.n;
    slot.board_width = units::from_mm((s.width - 2 * bound).mm() * askew);
    if (s.radius) slot.radius = units::from_mm(s.radius->mm() * askew * askew);
  }
  return out;
}

std::string grip_words(wire::Grip grip) {
  switch (grip) {
  case wire::Grip::loose:
    return "loose: glue them, or take a wider barb";
  case wire::Grip::rather_loose:
    return "rather loose";
  case wire::Grip::suits:
    return "right";
  case wire::Grip::snug:
    return "snug, more than suits";
  case wire::Grip::tight:
    break;
  }
  return "too tight: widen the slots, or take a narrower barb";
}

// What speaks against it, and what is not known.
struct Findings {
  std::vector<std::string> against, unknown;
};

void look_at_depth(Findings& out, const wire::Suits& s, const Setup& set) {
  std::vector<int> shallow;
  std::optional<Length> least;
  for (const wire::SlotSuits& slot : s.slots) {
    if (!slot.deep_enough) shallow.push_back(slot.n);
    if (slot.below_tang) least = std::min(least.value_or(*slot.below_tang), *slot.below_tang);
  }
  if (shallow.empty()) return;
  out.against.push_back(
      fmt::format("slots {} are too shallow, with as little as {} below the tang where {} is "
                  "wanted: deepen them",
                  ranges(shallow), say(*least, set), say(wire::SuitSettings{}.below_tang, set)));
}

Findings look(const wire::Suits& s, const wire::Profile& p, const wire::Sawn& sawn, const Setup& set) {
  Findings out;
  if (s.grip && *s.grip != wire::Grip::suits)
    out.against.push_back(fmt::format("the barbs are {} wider than the slot, {}", say(*s.interference, set),
                                      grip_words(*s.grip)));
  if (s.tang_room && *s.tang_room < Length{})
    out.against.push_back(
        fmt::format("the tang is {} thicker than the slot is wide", say(-*s.tang_room, set)));
  look_at_depth(out, s, set);
  if (s.bows_back) {
    out.against.push_back(fmt::format("all {} tangs together wedge {} into the board, which bows a neck back",
                                      s.slots.size(), say(*s.wedge_sum, set)));
  }
  if (!sawn.width) out.unknown.emplace_back("the slots' width");
  if (!sawn.depth) out.unknown.emplace_back("their depth");
  if (!p.barb_width) out.unknown.emplace_back("the wire's barb width");
  if (!p.tang_thickness) out.unknown.emplace_back("its tang's thickness");
  if (!p.tang_depth) out.unknown.emplace_back("its tang's depth");
  return out;
}

std::string radii(Length from, Length to, const Setup& set) {
  return fmt::format("{} to {}", say(from, set), say(to, set));
}

// "Bend it to a radius of 240.00 mm to 270.00 mm."
std::string bend_words(const wire::Suits& s, const Setup& set) {
  if (s.bend_from) return fmt::format("Bend it to a radius of {}.", radii(*s.bend_from, *s.bend_to, set));
  const auto bent = [](const wire::SlotSuits& slot) { return slot.bend_from.has_value(); };
  const auto first = std::find_if(s.slots.begin(), s.slots.end(), bent);
  if (first == s.slots.end()) return "The board is flat: leave it straight.";
  const auto last = std::find_if(s.slots.rbegin(), s.slots.rend(), bent);
  return fmt::format("No one bend suits every slot: from {} at slot {} to {} at slot {}.",
                     radii(*first->bend_from, *first->bend_to, set), first->n,
                     radii(*last->bend_from, *last->bend_to, set), last->n);
}

Table table_of(const wire::Suits& s, const Job& job, const Setup& set) {
  const char* where = job.board.binding ? "depth at the tang's ends" : "depth at the edge";
  Table out{{"slot", "board width", where, "below the tang", "bend to"}, {}};
  const auto or_dash = [&](const std::optional<Length>& v) { return v ? say(*v, set) : "-"; };
  for (const wire::SlotSuits& slot : s.slots) {
    out.rows.push_back({std::to_string(slot.n), say(board::width_at(job.board, slot.n), set),
                        or_dash(slot.edge_depth),
                        or_dash(slot.below_tang) + (slot.deep_enough ? "" : ", too shallow"),
                        slot.bend_from ? radii(*slot.bend_from, *slot.bend_to, set) : "straight"});
  }
  return out;
}

Value data_of_suits(const wire::Suits& s, const Wire& w, const Job& job, const wire::Sawn& sawn) {
  std::vector<Value> slots;
  for (const wire::SlotSuits& slot : s.slots) {
    slots.push_back(record({{"slot", std::int64_t{slot.n}},
                            {"edge_depth_mm", opt(slot.edge_depth)},
                            {"below_tang_mm", opt(slot.below_tang)},
                            {"deep_enough", slot.deep_enough},
                            {"bend_from_mm", opt(slot.bend_from)},
                            {"bend_to_mm", opt(slot.bend_to)}}));
  }
  static constexpr std::array grips{"loose", "rather_loose", "suits", "snug", "tight"};
  return record({{"job", ref(Thing::job, job.id)},
                 {"wire", ref(Thing::wire, w.id)},
                 {"good", s.good()},
                 {"sure", s.sure()},
                 {"ebony", sawn.ebony},
                 {"slot_width_mm", opt(sawn.width)},
                 {"slot_depth_mm", opt(sawn.depth)},
                 {"interference_mm", opt(s.interference)},
                 {"grip", s.grip ? Value{std::string(grips.at(static_cast<std::size_t>(*s.grip)))} : Value{}},
                 {"tang_room_mm", opt(s.tang_room)},
                 {"wedge_sum_mm", opt(s.wedge_sum)},
                 {"bows_back", s.bows_back},
                 {"bend_from_mm", opt(s.bend_from)},
                 {"bend_to_mm", opt(s.bend_to)},
                 {"slots", list(std::move(slots))}});
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view, false);
  const Wire w = wire_of(view, args.has("wire") ? args.id("wire") : job.wire);
  const wire::Sawn sawn = sawn_of(args, job);
  wire::Suits s;
  try {
    s = wire::suits(w.profile, sawn, slots_of(job, set));
  } catch (const wire::BadProfile& bad) {
    throw Problem(Fault::value, bad.what(), bad.field + "_mm", bad.would_do);
  }
  const Findings f = look(s, w.profile, sawn, set);
  Answer out;
  out.text = !f.against.empty()
                 ? fmt::format("{} does not suit {}: {}.", w.name, named(job), fmt::join(f.against, "; "))
             : s.sure() ? fmt::format("{} suits {}: the barbs are {} wider than the slots.", w.name,
                                      named(job), say(*s.interference, set))
                        : fmt::format("Nothing known speaks against {} for {}.", w.name, named(job));
  out.text = sentence(out.text) + " " + bend_words(s, set);
  if (!f.unknown.empty()) out.text += fmt::format(" Not known: {}.", fmt::join(f.unknown, ", "));
  out.reason = fmt::format(
      "Barbs 0.15 to 0.30 mm wider than the slot suit{}; a slot is 0.30 mm deeper than the tang; wire is "
      "bent 10 to 20 % tighter than the board, and 12 mm at each end of a stick stay flat. "
      "Common practice, from memory.",
      sawn.ebony ? ", 0.05 less in ebony" : "");
  out.table = table_of(s, job, set);
  out.data = data_of_suits(s, w, job, sawn);
  out.about.args = {{"job", ref(Thing::job, job.id)}, {"wire", ref(Thing::wire, w.id)}};
  return out;
}

} // namespace

extern const Question suits;
const Question suits{
    {"suits",
     "Whether a wire suits the slots of a job: grip, depth at every slot, and what to bend it to.",
     {takes::job,
      takes::optional(takes::wire),
      {"slot_width", Kind::length, false, false, "of the slots; as kept with the job", {0.1, 5}},
      {"slot_depth",
       Kind::length,
       false,
       false,
       "in the middle of the board; as kept with the job",
       {0.1, 20}},
      {"bottom", Kind::one_of, false, false, "flat, or curved like the board", {}, {"flat", "curved"}}},
     {"(does|will|would) {wire} suit [the slots of] {job} [with slots [of] {slot_width}]",
      "(does|will|would) [the] wire suit [the slots of] {job} [with slots [of] {slot_width}]",
      "is {wire} right for {job} [with slots [of] {slot_width}]",
      "what (do|should|must) (i|we) bend (it|the wire|{wire}) to for {job}",
      "(what|which) radius (do|should|must) (i|we) bend (it|the wire|{wire}) to for {job}",
      "(what|which) (bend|bending) radius [of {wire}] for {job}"},
     {"does medium suit job 1", "what do I bend it to for job 1",
      "is medium right for job 1 with slots of 0.6 mm"},
     Role::look,
     {gives::job,
      gives::wire,
      {"good", Kind::yes, "whether nothing known speaks against it"},
      {"sure", Kind::yes, "whether all that matters is known"},
      {"ebony", Kind::yes, "whether the board is of ebony"},
      {"slot_width", Kind::length, "as sawn", Often::or_null},
      {"slot_depth", Kind::length, "in the middle", Often::or_null},
      {"interference", Kind::length, "how much wider the barbs are than the slot", Often::or_null},
      {"grip",
       Kind::one_of,
       "how the barbs hold",
       Often::or_null,
       {},
       {"loose", "rather_loose", "suits", "snug", "tight"}},
      {"tang_room", Kind::length, "how much thinner the tang is than the slot", Often::or_null},
      {"wedge_sum", Kind::length, "of all tangs together", Often::or_null},
      {"bows_back", Kind::yes, "whether that bows the neck back"},
      {"bend_from", Kind::length, "the one radius for all slots: from", Often::or_null},
      {"bend_to", Kind::length, "and to", Often::or_null},
      gives::records(
          "slots", "every slot of the job",
          {gives::slot,
           {"edge_depth", Kind::length, "of the slot at the edge", Often::or_null},
           {"below_tang", Kind::length, "room left below the tang there", Often::or_null},
           {"deep_enough", Kind::yes, "as far as is known"},
           {"bend_from", Kind::length, "radius for this slot: from; null for straight", Often::or_null},
           {"bend_to", Kind::length, "and to", Often::or_null}})}},
    &ask};

} // namespace nutward::shop::question_rows
