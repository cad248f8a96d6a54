#include "shop/cut_words.hpp"

#include "shop/rows.hpp"

#include <map>
#include <set>

namespace nutward::shop {

namespace {

using cutting::From;
using cutting::Level;
using cutting::StockKind;
using cutting::Why;

constexpr std::size_t most_rows = 400;
constexpr std::size_t most_named = 4; // of a kind, in a sentence

template <class T>
std::int64_t number(const T& list) {
  return static_cast<std::int64_t>(list.size());
}

// "a, b, c, d and 3 more".
std::string some_of(const std::vector<std::string>& all) {
  if (all.size() <= most_named) return fmt::format("{}", fmt::join(all, ", "));
  return fmt::format("{} and {} more",
                     fmt::join(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(most_named), ", "),
                     all.size() - most_named);
}

// As on the shelf: in metres from one on, where the shop measures in millimetres.
std::string say_long(Length v, const Setup& set) {
  return set.unit == units::LengthUnit::mm && v >= 1000 * units::millimetre
             ? units::print(v, units::LengthUnit::m)
             : say(v, set);
}

std::string source_of(const cutting::Use& use, const cutting::Problem& p, std::int64_t stick,
                      const View& view, const Setup& set) {
  if (use.source.from == From::stock) {
    const cutting::Stock& stock = p.stock[use.source.index];
    if (stock.kind == StockKind::coil) return fmt::format("coil of {}", say_long(stock.length, set));
    if (stock.kind == StockKind::blank) return fmt::format("rest of a stick, {}", say(stock.length, set));
    return fmt::format("stick {}, {}", stick, say(stock.length, set));
  }
  const pieces::PieceFacts& facts = p.pieces[use.source.index].facts;
  const auto piece = view.tin().find(facts.id);
  return fmt::format("piece {}, {}{}{}", facts.id, say(facts.length, set),
                     piece && !piece->place.empty() ? ", " + piece->place : "", use.held ? ", held" : "");
}

} // namespace

std::optional<pieces::Verdict> finish_of(const cutting::Use& use, const cutting::Problem& p) {
  if (use.source.from == From::stock || use.remainder > Length{}) return std::nullopt;
  const cutting::Fret& last = use.frets.back();
  const cutting::Slot& slot = p.slots[last.slot];
  pieces::PieceFacts facts = p.pieces[use.source.index].facts;
  if (use.frets.size() > 1) facts.raw_ends = facts.raw_ends == 2 ? 2 : 1;
  facts.length = last.length;
  return pieces::judge(facts, {slot.need, slot.crown_height, p.least_useful, slot.lot}, p.settings);
}

namespace {

std::string then_of(const cutting::Use& use, const Sawn& s, const cutting::Problem& p, const Setup& set) {
  if (const auto finish = finish_of(use, p)) return how_to(*finish, set);
  const bool coil = use.source.from == From::stock && p.stock[use.source.index].kind == StockKind::coil;
  if (s.left > Length{}) return say_long(s.left, set) + (coil ? " stay on the coil" : " to the tin");
  return s.scrap > s.begin ? say(s.scrap - s.begin, set) + " are scrap" : "nothing is left";
}

void add_use(const cutting::Use& use, const std::string& source, const cutting::Problem& p, const Setup& set,
             Table& table) {
  const Sawn s = sawn(p, use);
  std::string take = source;
  if (s.begin > Length{}) {
    table.rows.push_back({take, "", "", "flat end", say(s.begin, set), "scrap"});
    take.clear();
  }
  for (const CutMark& m : s.marks) {
    const cutting::Slot& slot = p.slots[m.slot];
    table.rows.push_back({take, std::to_string(slot.job), std::to_string(slot.slot), say(m.length, set),
                          m.at ? say(*m.at, set) : "no cut", ""});
    take.clear();
  }
  table.rows.back().back() = then_of(use, s, p, set);
}

Table table_of(const CutAnswer& cut, const View& view, const Setup& set) {
  Table out{{"take", "job", "slot", "length", "mark", "then"}, {}};
  std::int64_t stick = 0;
  for (const cutting::Use& use : cut.plan.uses) {
    if (out.rows.size() >= most_rows) break;
    const bool piece = use.source.from == From::piece;
    if (!piece && cut.what.problem.stock[use.source.index].kind == StockKind::stick) ++stick;
    add_use(use, source_of(use, cut.what.problem, stick, view, set), cut.what.problem, set, out);
  }
  return out;
}

} // namespace

std::string why_words(Why why, bool tin_only, bool settled) {
  if (why == Why::bad_slot) return "its width cannot be";
  if (tin_only) return "nothing in the tin is left for it";
  if (why == Why::too_long_slot) return "nothing on hand is long enough";
  if (why == Why::no_stock) return "there is no new wire";
  if (!settled) return "nothing on hand is left for it";
  return "what would do goes to slots due earlier, or as soon";
}

namespace {

// "Without a fret: slots 3-5 of job 8 (nothing on hand is long enough)."
std::string short_words(const CutAnswer& cut) {
  std::map<std::pair<std::int64_t, std::string>, std::vector<int>> groups;
  const auto why = why_short(cut.plan);
  for (std::size_t i = 0; i < why.size(); ++i) {
    const cutting::Slot& slot = cut.what.problem.slots[cut.plan.unserved[i]];
    groups[{slot.job, why_words(why[i], cut.tin_only, cut.plan.proved > Level::none)}].push_back(slot.slot);
  }
  std::vector<std::string> all;
  for (auto& [key, slots] : groups) {
    std::sort(slots.begin(), slots.end());
    all.push_back(fmt::format("{} {} of job {} ({})", slots.size() == 1 ? "slot" : "slots", ranges(slots),
                              key.first, key.second));
  }
  return all.empty() ? "" : " Without a fret: " + some_of(all) + ".";
}

std::string kept_words(const CutAnswer& cut, const Setup& set) {
  std::vector<std::string> all;
  for (const cutting::Use& use : cut.plan.uses) {
    const bool stock = use.source.from == From::stock;
    const cutting::Problem& p = cut.what.problem;
    if (use.remainder == Length{} || (stock && p.stock[use.source.index].kind == StockKind::coil)) continue;
    const bool flat = stock && p.stock[use.source.index].flat_ends > 0;
    all.push_back(say(use.remainder, set) +
                  (flat ? fmt::format(" ({} of it flat)", say(p.flat_end, set)) : ""));
  }
  return all.empty() ? "" : " Then goes into the tin: " + some_of(all) + ".";
}

std::string not_used_words(const CutAnswer& cut, const Setup& set) {
  const cutting::Problem& p = cut.what.problem;
  std::vector<std::string> held, others;
  for (const cutting::Fault& f : cut.plan.faults) {
    if (f.why == Why::held_elsewhere) held.push_back(std::to_string(p.pieces[f.index].facts.id));
    if (f.why == Why::held_no_more) {
      const cutting::Cutting& c = p.held[f.index];
      const cutting::Slot& slot = p.slots[c.slots.front()];
      others.push_back(
          fmt::format("piece {} does not fit slot {} of job {}, for which it is held: planned anew",
                      p.pieces[c.source.index].facts.id, slot.slot, slot.job));
    }
    if (f.why == Why::bad_source || f.why == Why::kerf_too_long) {
      const bool stock = f.from == From::stock;
      others.push_back(fmt::format("{} {}: not used",
                                   stock ? fmt::format("a stick of {}", say(p.stock[f.index].length, set))
                                         : fmt::format("piece {}", p.pieces[f.index].facts.id),
                                   f.why == Why::bad_source ? "has no length to plan with"
                                                            : "is shorter than what cutting it loses"));
    }
  }
  std::string out;
  if (!others.empty()) out += " " + sentence(some_of(others)) + ".";
  if (!held.empty())
    out += fmt::format(" Held for something else and left alone: {} {}.",
                       held.size() == 1 ? "piece" : "pieces", some_of(held));
  return out;
}

std::string try_words(const CutAnswer& cut) {
  const cutting::Problem& p = cut.what.problem;
  std::vector<std::string> all;
  std::set<std::size_t> named; // one piece does for one slot
  for (const cutting::Borderline& b : cut.plan.borderline)
    if (named.insert(b.piece).second)
      all.push_back(fmt::format("piece {} for slot {} of job {}", p.pieces[b.piece].facts.id,
                                p.slots[b.slot].slot, p.slots[b.slot].job));
  return all.empty() ? "" : " Within the caliper's error of doing, so try first: " + some_of(all) + ".";
}

// What the plan does not know or leaves out.
std::string left_out_words(const CutAnswer& cut, const Setup& set) {
  const ToCut& what = cut.what;
  std::string out;
  if (what.waiting > 0)
    out += fmt::format(" {} of the jobs due last are not in it: ask for one job.",
                       plural(static_cast<std::int64_t>(what.waiting), "open fret"));
  if (what.more_pieces)
    out += fmt::format(
        " Of so full a tin only {} were looked at, some of each length: other pieces may do better.",
        plural(number(what.problem.pieces), "piece"));
  if (!what.unmeasured_held.empty()) {
    std::vector<std::string> all;
    for (const Piece& p : what.unmeasured_held)
      all.push_back(
          fmt::format("piece {} for slot {} of job {}", p.id, p.slot.value_or(0), p.job.value_or(0)));
    out += fmt::format(" Held but not measured, and taken to serve: {}.", some_of(all));
  }
  if (what.unmeasured > 0)
    out += fmt::format(" {} of it in the tin that nobody has measured: left out.",
                       plural(what.unmeasured, "piece"));
  if (what.set_aside > Length{})
    out += fmt::format(" {} of new wire set aside for {} {}: left alone.", say_long(what.set_aside, set),
                       what.set_aside_for.size() == 1 ? "job" : "jobs", fmt::join(what.set_aside_for, ", "));
  if (what.loose > Length{})
    out +=
        fmt::format(" On hand are {} besides, less than a whole stick: left out until they are in the tin.",
                    say(what.loose, set));
  if (what.as_coil) out += " Nobody said in what lengths it is: taken to be one coil.";
  const auto& stock = what.problem.stock;
  if (std::any_of(stock.begin(), stock.end(), [](const cutting::Stock& s) { return s.flat_ends > 0; }))
    out += fmt::format(" The bender leaves {} flat at each end of a stick.", say(what.problem.flat_end, set));
  return out;
}

std::string proof_sentence(const CutAnswer& cut, const Setup& set) {
  const cutting::Plan& plan = cut.plan;
  if (plan.uses.empty()) return "No plan serves any of them.";
  std::string out = sentence(proof_of(plan, set));
  if (plan.proved == Level::cuts) out += ": no other plan serves more, takes less new wire, or wastes less";
  if (plan.stopped && plan.proved < Level::taken) out += ", as far as the time for planning goes";
  return out + ".";
}

// Nothing within the minute, nor of a time to come: then a clock was put back.
std::string ago(Instant then, const Moment& moment) {
  const std::int64_t minutes = (moment.now.s - then.s) / 60;
  if (minutes < 1) return "";
  if (minutes < 60) return fmt::format(" Planned {} ago.", plural(minutes, "minute"));
  if (minutes < 48 * 60) return fmt::format(" Planned {} ago.", plural(minutes / 60, "hour"));
  return fmt::format(" Planned {} ago.", plural(minutes / (24 * 60), "day"));
}

// "14:02" of today, else with its day.
std::string time_of(Instant then, const Moment& moment) {
  const hours::LocalTime at = moment.zone.local(then), now = moment.zone.local(moment.now);
  return at.day == now.day ? hours::human_time(at.s) : moment.zone.human(then);
}

std::vector<Hazard> hazards(const CutAnswer& cut, const Setup& set) {
  bool nip = false, sand = false;
  for (const cutting::Use& use : cut.plan.uses) {
    const auto finish = finish_of(use, cut.what.problem);
    nip = nip || use.cuts > 0;
    for (const cutting::Fret& f : use.frets) {
      const board::Need& need = cut.what.problem.slots[f.slot].need;
      const bool dressed = need.style == board::EndStyle::rounded;
      const bool last = &f == &use.frets.back();
      sand = sand || (last && finish ? finish->ends_to_dress > 0 : dressed);
      nip = nip || need.tang.has_value();
    }
    if (!finish) continue;
    for (const Hazard h : hazards_of(*finish, set))
      nip = nip || h == Hazard::nipping;
  }
  std::vector<Hazard> out;
  if (nip) out.push_back(Hazard::nipping);
  if (sand) out.push_back(Hazard::sanding);
  return out;
}

} // namespace

CutSums& CutSums::operator+=(const CutSums& more) {
  frets += more.frets, from_pieces += more.from_pieces, from_new += more.from_new;
  short_of += more.short_of, waiting += more.waiting, pieces += more.pieces, held += more.held;
  sticks += more.sticks, coils += more.coils, rests += more.rests, new_wire += more.new_wire;
  return *this;
}

CutSums sums_of(const ToCut& what, const cutting::Plan& plan) {
  CutSums out;
  out.frets = number(what.problem.slots);
  out.short_of = number(plan.unserved);
  out.waiting = static_cast<std::int64_t>(what.waiting);
  for (const cutting::Use& use : plan.uses) {
    const bool piece = use.source.from == From::piece;
    (piece ? out.from_pieces : out.from_new) += number(use.frets);
    if (piece) ++out.pieces, out.held += use.held ? 1 : 0;
    if (piece) continue;
    const StockKind kind = what.problem.stock[use.source.index].kind;
    ++(kind == StockKind::coil ? out.coils : kind == StockKind::blank ? out.rests : out.sticks);
  }
  out.new_wire = plan.cost.taken;
  return out;
}

std::vector<Why> why_short(const cutting::Plan& plan) {
  bool no_stock = false;
  std::map<std::size_t, Why> known;
  for (const cutting::Fault& f : plan.faults) {
    no_stock = no_stock || f.why == Why::no_stock;
    if (f.why == Why::bad_slot || f.why == Why::too_long_slot) known[f.index] = f.why;
  }
  std::vector<Why> out;
  for (const std::size_t slot : plan.unserved) {
    const auto at = known.find(slot);
    const Why why = at == known.end() ? Why::wire_short : at->second;
    out.push_back(no_stock && why != Why::bad_slot ? Why::no_stock : why);
  }
  return out;
}

std::string lead_of(const CutSums& s, bool tin_only, std::string_view whose, const Setup& set) {
  if (s.frets == 0) return fmt::format("No slot of {} is open: nothing to cut.", whose);
  std::vector<std::string> parts;
  if (s.from_pieces > 0) {
    parts.push_back(fmt::format("{} from {}{}", s.from_pieces, plural(s.pieces, "piece"),
                                s.held > 0 ? fmt::format(" ({} of them held)", s.held) : ""));
  }
  if (s.from_new > 0) {
    std::vector<std::string> of;
    if (s.sticks > 0) of.push_back(plural(s.sticks, "new stick"));
    if (s.rests > 0) of.push_back(plural(s.rests, "rest of an opened stick", "rests of opened sticks"));
    if (s.coils > 0) of.push_back(plural(s.coils, "coil"));
    parts.push_back(fmt::format("{} from {}, {} of new wire", s.from_new, fmt::join(of, " and "),
                                say_long(s.new_wire, set)));
  }
  if (s.short_of > 0)
    parts.push_back(fmt::format("{} {}", s.short_of, s.short_of == 1 ? "gets none" : "get none"));
  const std::string only = tin_only ? " With the tin alone." : "";
  return fmt::format("{} of {}: {}.{}", plural(s.frets, "open fret"), whose, fmt::join(parts, "; "), only);
}

std::string proof_of(const cutting::Plan& plan, const Setup& set) {
  switch (plan.proved) {
  case Level::none:
    return "not settled whether another plan serves more of what is due first";
  case Level::service:
    return fmt::format("at most {} from best", plural(plan.cost.sticks - plan.bound.sticks, "stick"));
  case Level::sticks:
    return fmt::format("at most {} of new wire from best", say(plan.cost.taken - plan.bound.taken, set));
  case Level::taken:
    return "proved best in new wire";
  case Level::scrap:
    return "proved best in new wire and scrap";
  case Level::cuts:
    break;
  }
  return "proved best";
}

bool better_to_come(const WirePlan& wire) {
  return !wire.settled && wire.plan.proved < Level::cuts;
}

std::string age_of(const WirePlan& wire, const Moment& moment) {
  if (wire.what.problem.slots.empty()) return "";
  const bool more = better_to_come(wire);
  if (!wire.brought_up_to_date)
    return (wire.planned_at ? ago(*wire.planned_at, moment) : "") +
           (more ? " A better one is being worked on." : "");
  return fmt::format(" It is the plan of {}, brought up to date{}.", time_of(*wire.planned_at, moment),
                     more ? "; a better one is being worked on" : "");
}

Answer answer_of(const CutAnswer& cut, const View& view, const Setup& set) {
  Answer out;
  out.text =
      lead_of(sums_of(cut.what, cut.plan), cut.tin_only, cut.job ? named(*cut.job) : cut.what.wire.name, set);
  if (!cut.what.problem.slots.empty()) {
    out.text += short_words(cut) + kept_words(cut, set);
    out.reason =
        proof_sentence(cut, set) + not_used_words(cut, set) + try_words(cut) + left_out_words(cut, set);
  }
  if (!cut.plan.uses.empty()) {
    out.table = table_of(cut, view, set);
    if (out.table->rows.size() >= most_rows) out.reason += " The table is cut short: ask for one job.";
  }
  out.cautions = hazards(cut, set);
  out.data = full_data_of(cut);
  out.about.args = {{"wire", ref(Thing::wire, cut.what.wire.id)}};
  if (cut.job) out.about.args.emplace_back("job", ref(Thing::job, cut.job->id));
  return out;
}

} // namespace nutward::shop
