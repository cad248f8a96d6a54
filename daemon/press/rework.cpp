#include "press/rework.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::press {

namespace {

constexpr double same_rung = 1.02;

// Where a crown's edges lie against the bar's ends, its middle at `middle`.
enum class Lies { under, clear, on_an_end };

struct Edges {
  Length low, high;
};
Edges edges(const Crown& c, Length crown_width) {
  const Length half{(crown_width.nm + 1) / 2};
  return {c.nutmost - half, c.bodymost + half};
}

struct Bench {
  const Work& work;
  const Equipment& equipment;
  const Bar& bar;

  Length half() const { return {(bar.length.nm + 1) / 2}; }
  Lies lies(const Crown& c, Length middle) const {
    const auto [low, high] = edges(c, work.crown_width);
    if (low >= middle - half() && high <= middle + half()) return Lies::under;
    const Length off = half() + equipment.end_clear;
    return high <= middle - off || low >= middle + off ? Lies::clear : Lies::on_an_end;
  }
  bool over_nut(Length middle) const {
    return work.nut_in_place && middle - half() - equipment.end_clear < Length{};
  }
  bool stands(Length middle, const Crown& over) const {
    if (over_nut(middle) || lies(over, middle) != Lies::under) return false;
    return std::none_of(work.crowns.begin(), work.crowns.end(),
                        [&](const Crown& c) { return c.seated && lies(c, middle) == Lies::on_an_end; });
  }
};

// The place nearest to the fret where the bar can stand. Each crown, and the nut, forbids a stretch of
// places; the nearest that is allowed is the fret itself or the end of such a stretch.
std::optional<Length> nearest_place(const Bench& bench, const Crown& over) {
  const Length off = bench.half() + bench.equipment.end_clear;
  std::vector<Length> places{over.at, off};
  for (const Crown& c : bench.work.crowns) {
    if (!c.seated) continue;
    const auto [low, high] = edges(c, bench.work.crown_width);
    for (Length place : {low - off, high + off, high - bench.half(), low + bench.half()})
      places.push_back(place);
  }
  const Length most{bench.bar.length.nm / 4};
  std::optional<Length> nearest;
  for (Length place : places) {
    const Length away = units::abs(place - over.at);
    if (away > most || (nearest && away >= units::abs(*nearest - over.at))) continue;
    if (bench.stands(place, over)) nearest = place;
  }
  return nearest;
}

// Why the bar cannot stand with its middle over the fret: by the first crown that it cannot.
Reason no_place(const Bench& bench, const Crown& over) {
  const Length span = bench.work.crown_width + over.bodymost - over.nutmost;
  if (span > bench.bar.length) return TooLong{span, bench.bar.length};
  const Length clearance = bench.equipment.end_clear;
  if (bench.over_nut(over.at)) return OnNut{over.at - bench.half(), span, 2 * (over.at - clearance)};
  for (const Crown& c : bench.work.crowns) {
    if (!c.seated || c.slot == over.slot || bench.lies(c, over.at) != Lies::on_an_end) continue;
    const auto [low, high] = edges(c, bench.work.crown_width);
    const Length away = c.slot < over.slot ? over.at - high : low - over.at;
    return EndOnCrown{c.slot, away - bench.half(), span, 2 * (away - clearance)};
  }
  return TooLong{span, bench.bar.length};
}

std::optional<Reason> under_hindrance(const Bench& bench, Group g, const Crown& over, Length place) {
  int frets = 0;
  for (std::size_t i = g.first; i <= g.last; ++i) {
    const Crown& c = bench.work.crowns[i];
    if (!c.seated) continue;
    ++frets;
    if (!c.to_press) return OtherFret{c.slot};
    if (auto why = sole_hindrance(c, bench.bar)) return why;
  }
  if (frets > bench.equipment.most_frets) return OverCap{frets, bench.equipment.most_frets};
  const Crown &low = bench.work.crowns[g.first], &high = bench.work.crowns[g.last];
  if (bench.bar.narrow && frets > 1) return OtherFret{low.slot == over.slot ? high.slot : low.slot};
  if (!bench.bar.narrow && (low.slot == over.slot || high.slot == over.slot)) return Tips{over.slot};
  if (auto why = bed_hindrance(bench.work, g)) return why;
  if (bench.equipment.reach && place > *bench.equipment.reach)
    return BeyondReach{place, *bench.equipment.reach};
  return std::nullopt;
}

Group under(const Bench& bench, std::size_t over, Length place) {
  Group g{over, over};
  const auto& crowns = bench.work.crowns;
  for (std::size_t i = 0; i < crowns.size(); ++i) {
    if (!crowns[i].seated || bench.lies(crowns[i], place) != Lies::under) continue;
    g.first = std::min(g.first, i);
    g.last = std::max(g.last, i);
  }
  return g;
}

// Sets the load, or says why there is none.
std::optional<Reason> load_long(const Bench& bench, Group g, std::optional<Force> last, OneFret& out) {
  const Limit most = *most_on_one_fret(bench.equipment, bench.bar);
  if (last) {
    const auto step = next_step(*last, most, bench.equipment);
    if (!step) return AtLimit{*last, most};
    out.least = step->least;
    out.load = step->most;
    out.limited = step->limited;
    out.again = true;
    return std::nullopt;
  }
  const Force usual = line_load_of(bench.work, bench.equipment, g);
  Limit limit = *most_in_a_pass(bench.equipment, bench.bar);
  if (most.load < limit.load) limit = most;
  if (usual <= limit.load) limit = {usual, LimitedBy::line_load};
  out.least = out.load = on_gauge(limit.load, bench.equipment);
  out.limited = limit.by;
  return std::nullopt;
}

std::optional<Reason> load_narrow(const Bench& bench, const Crown& over, std::optional<Force> last,
                                  OneFret& out) {
  const Equipment& e = bench.equipment;
  const double length = over.length.mm() * (bench.work.soft_wood ? e.soft_wood : 1);
  const std::optional<double> before = last ? std::optional(last->n / length) : std::nullopt;
  const auto rung = next_rung(before, e);
  if (!rung) return LadderDone{*before, e.narrow_ladder.back()};
  const Limit most = *most_on_one_fret(e, bench.bar);
  if (last && *last >= most.load) return AtLimit{*last, most};
  const Force load{*rung * length};
  out.least = out.load = on_gauge(std::min(load, most.load), e);
  out.limited = load <= most.load ? LimitedBy::step : most.by;
  out.again = last.has_value();
  return std::nullopt;
}

} // namespace

std::optional<Step> next_step(Force last, const Limit& most, const Equipment& e) {
  const Force full = last * (1 + e.step_most);
  Step step;
  step.limited = full <= most.load ? LimitedBy::step : most.by;
  step.most = on_gauge(std::min(full, most.load), e);
  step.least = std::min(on_gauge(last * (1 + e.step_least), e), step.most);
  if (step.most <= last) return std::nullopt;
  if (step.least <= last) step.least = step.most;
  return step;
}

std::optional<double> next_rung(std::optional<double> last, const Equipment& e) {
  for (double rung : e.narrow_ladder) {
    if (!last || rung > *last * same_rung) return rung;
  }
  return std::nullopt;
}

OneFretAnswer one_fret(const Work& work, const Equipment& e, const Bar& bar, int slot,
                       std::optional<Force> last) {
  if (last && !(last->n > 0 && std::isfinite(last->n)))
    throw BadWork("A last load that is not over nothing pressed nothing.",
                  "Leave it out, or say a load over 0.");
  const std::size_t index = group_of(work, slot, slot).first;
  const Crown& over = work.crowns[index];
  OneFretAnswer answer;
  answer.refused = whole_refusals(work, e, bar);
  if (!answer.refused.empty()) return answer;
  const Bench bench{work, e, bar};
  const auto refuse = [&](const Reason& why) {
    answer.refused.push_back(why);
    return answer;
  };
  if (const auto why = sole_hindrance(over, bar)) return refuse(*why);
  const auto place = nearest_place(bench, over);
  if (!place) return refuse(no_place(bench, over));
  const Group g = under(bench, index, *place);
  if (const auto why = under_hindrance(bench, g, over, *place)) return refuse(*why);

  OneFret out;
  out.slot = slot;
  out.under = slots_of(work, g);
  out.bar_at = *place;
  out.bar_between = between(work.crowns, *place);
  out.load_at = over.at;
  const auto why = bar.narrow ? load_narrow(bench, over, last, out) : load_long(bench, g, last, out);
  if (why) return refuse(*why);
  out.first = on_gauge(out.load * 0.5, e);
  out.n_per_mm = out.load.n / over.length.mm();
  answer.fret = out;
  return answer;
}

} // namespace nutward::press
