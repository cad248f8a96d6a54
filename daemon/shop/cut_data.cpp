// The cut plan in figures, and what these are.
#include "shop/cut_words.hpp"
#include "shop/rows.hpp"

#include <array>

namespace nutward::shop {

using cutting::From;
using cutting::Why;

namespace {

// By cutting::Level, cutting::Why and cutting::StockKind.
constexpr std::array<std::string_view, 6> levels{"nothing", "service", "sticks", "new_wire", "scrap", "best"};
constexpr std::array<std::string_view, 8> whys{"bad_slot", "bad_source", "kerf_too_long",  "too_long_slot",
                                               "no_stock", "wire_short", "held_elsewhere", "held_no_more"};
constexpr std::array<std::string_view, 3> kinds{"stick", "blank", "coil"};

} // namespace

std::string_view word_of(Why why) {
  return whys.at(static_cast<std::size_t>(why));
}

namespace {

std::string word(Why why) {
  return std::string(word_of(why));
}

std::vector<std::pair<std::string, Value>> sums(const ToCut& what, const cutting::Plan& plan,
                                                std::optional<Instant> planned, bool brought_up_to_date) {
  const CutSums s = sums_of(what, plan);
  return {{"wire", ref(Thing::wire, what.wire.id)},
          {"name", what.wire.name},
          {"frets", s.frets},
          {"from_pieces", s.from_pieces},
          {"from_new", s.from_new},
          {"short", s.short_of},
          {"waiting", s.waiting},
          {"pieces_used", s.pieces},
          {"sticks", s.sticks},
          {"new_wire", s.new_wire},
          {"scrap", plan.cost.scrap},
          {"proved", std::string(levels.at(static_cast<std::size_t>(plan.proved)))},
          {"sticks_from_best", plan.proved >= cutting::Level::service
                                   ? Value{std::int64_t{plan.cost.sticks - plan.bound.sticks}}
                                   : Value{}},
          {"new_wire_from_best_mm",
           plan.proved >= cutting::Level::sticks ? Value{plan.cost.taken - plan.bound.taken} : Value{}},
          {"planned_at", opt(planned)},
          {"brought_up_to_date", brought_up_to_date}};
}

Value of_use(const cutting::Problem& p, const cutting::Use& use) {
  const bool of_piece = use.source.from == From::piece;
  const Sawn s = sawn(p, use);
  std::vector<Value> frets;
  for (const CutMark& m : s.marks) {
    const cutting::Slot& slot = p.slots[m.slot];
    frets.push_back(record({{"job", ref(Thing::job, slot.job)},
                            {"slot", std::int64_t{slot.slot}},
                            {"length", m.length},
                            {"mark_mm", opt(m.at)}}));
  }
  const cutting::Stock* stock = of_piece ? nullptr : &p.stock[use.source.index];
  return record({{"of", std::string(of_piece ? "piece" : kinds.at(static_cast<std::size_t>(stock->kind)))},
                 {"piece", of_piece ? ref(Thing::piece, p.pieces[use.source.index].facts.id) : Value{}},
                 {"lot", stock != nullptr && stock->id != 0 ? ref(Thing::lot, stock->id) : Value{}},
                 {"held", use.held},
                 {"length", s.whole},
                 {"begin", s.begin},
                 {"frets", list(std::move(frets))},
                 {"kerf", s.kerf},
                 {"scrap", s.scrap},
                 {"left", s.left}});
}

Value short_of(const ToCut& what, const cutting::Plan& plan) {
  std::vector<Value> out;
  const auto why = why_short(plan);
  for (std::size_t i = 0; i < why.size(); ++i) {
    const cutting::Slot& slot = what.problem.slots[plan.unserved[i]];
    out.push_back(record(
        {{"job", ref(Thing::job, slot.job)}, {"slot", std::int64_t{slot.slot}}, {"why", word(why[i])}}));
  }
  return list(std::move(out));
}

Value not_used(const cutting::Problem& p, const cutting::Plan& plan) {
  std::vector<Value> out;
  for (const cutting::Fault& f : plan.faults) {
    const bool held = f.why == Why::held_no_more;
    const bool source = f.why == Why::bad_source || f.why == Why::kerf_too_long;
    if (!held && !source && f.why != Why::held_elsewhere) continue;
    const bool piece = held || f.from != From::stock;
    const std::size_t at = held ? p.held[f.index].source.index : f.index;
    out.push_back(record({{"why", word(f.why)},
                          {"piece", piece ? ref(Thing::piece, p.pieces[at].facts.id) : Value{}},
                          {"length", piece ? p.pieces[at].facts.length : p.stock[at].length}}));
  }
  return list(std::move(out));
}

Value to_try(const cutting::Problem& p, const cutting::Plan& plan) {
  std::vector<Value> out;
  for (const cutting::Borderline& b : plan.borderline)
    out.push_back(record({{"job", ref(Thing::job, p.slots[b.slot].job)},
                          {"slot", std::int64_t{p.slots[b.slot].slot}},
                          {"piece", ref(Thing::piece, p.pieces[b.piece].facts.id)}}));
  return list(std::move(out));
}

} // namespace

Value data_of(const WirePlan& wire) {
  return record(sums(wire.what, wire.plan, wire.planned_at, wire.brought_up_to_date));
}

Value full_data_of(const CutAnswer& cut) {
  const cutting::Problem& p = cut.what.problem;
  auto fields = sums(cut.what, cut.plan, cut.planned_at, cut.brought_up_to_date);
  std::vector<Value> cuts;
  for (const cutting::Use& use : cut.plan.uses)
    cuts.push_back(of_use(p, use));
  fields.emplace_back("job", cut.job ? ref(Thing::job, cut.job->id) : Value{});
  fields.emplace_back("tin_only", cut.tin_only);
  fields.emplace_back("cuts", list(std::move(cuts)));
  fields.emplace_back("goes_without", short_of(cut.what, cut.plan));
  fields.emplace_back("not_used", not_used(p, cut.plan));
  fields.emplace_back("to_try", to_try(p, cut.plan));
  fields.emplace_back("unmeasured", cut.what.unmeasured);
  fields.emplace_back("loose", cut.what.loose);
  return record(std::move(fields));
}

std::vector<Give> cuts_in_sum() {
  return {gives::wire,
          gives::wire_name,
          {"frets", Kind::count, "open slots in the plan"},
          {"from_pieces", Kind::count, "of them, from the tin"},
          {"from_new", Kind::count, "of them, from new wire"},
          {"short", Kind::count, "of them, without a fret"},
          {"waiting", Kind::count, "more, of the jobs due last: not in the plan"},
          {"pieces_used", Kind::count, "of the tin"},
          {"sticks", Kind::count, "opened"},
          {"new_wire", Kind::length, "taken and not kept"},
          {"scrap", Kind::length, "too short to keep, flat, or nipped off pieces; without what nips lose"},
          gives::one_of("proved", "as good as any plan's up to here; 'best' in everything",
                        {levels.begin(), levels.end()}),
          {"sticks_from_best", Kind::count, "at most; null where service is not proved", Often::or_null},
          {"new_wire_from_best", Kind::length, "at most; null where sticks are not proved", Often::or_null},
          {"planned", Kind::at, "when the plan was worked out that this is or follows; null: just now",
           Often::or_null},
          {"brought_up_to_date", Kind::yes, "whether the shop has changed since, and it was gone on from"}};
}

std::vector<Give> cuts_in_full() {
  std::vector<Give> out = cuts_in_sum();
  const std::vector<Give> fret{
      gives::job,
      gives::slot,
      {"length", Kind::length, "of wire for it, before it is finished"},
      {"mark", Kind::length, "on the rule, from the end where cutting begins; null: no cut", Often::or_null}};
  const std::vector<Give> cut{gives::one_of("of", "what it is cut from", {"piece", "stick", "blank", "coil"}),
                              gives::or_null(gives::piece),
                              {"lot", Kind::count, "of new wire, where it is known", Often::or_null},
                              {"held", Kind::yes, "whether the piece is held for it"},
                              {"length", Kind::length, "as it is"},
                              {"begin", Kind::length, "flat, and cut off first"},
                              gives::records("frets", "in the order of cutting", fret),
                              {"kerf", Kind::length, "lost in nips"},
                              {"scrap", Kind::length, "in no fret, and not kept"},
                              {"left", Kind::length, "to keep; 0 for nothing"}};
  out.push_back(gives::or_null(gives::job));
  out.push_back({"tin_only", Kind::yes, "whether new wire was left out"});
  out.push_back(gives::records("cuts", "each piece, stick or coil once", cut));
  out.push_back(gives::records(
      "goes_without", "slots without a fret",
      {gives::job, gives::slot,
       gives::one_of("why", "what is in the way", {"bad_slot", "too_long_slot", "no_stock", "wire_short"})}));
  out.push_back(
      gives::records("not_used", "what could not be planned with",
                     {gives::one_of("why", "what is in the way",
                                    {"bad_source", "kerf_too_long", "held_elsewhere", "held_no_more"}),
                      gives::or_null(gives::piece),
                      {"length", Kind::length, "of it"}}));
  out.push_back(gives::records("to_try", "pieces within the caliper's error of saving a fret",
                               {gives::job, gives::slot, gives::piece}));
  out.push_back({"unmeasured", Kind::count, "pieces of the wire that nobody has measured: left out"});
  out.push_back({"loose", Kind::length, "on hand, but less than a whole stick: left out"});
  return out;
}

} // namespace nutward::shop
