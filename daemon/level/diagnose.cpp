#include "level/diagnose.hpp"

#include "level/contradiction.hpp"
#include "level/explain.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace nutward::level {

namespace {

Off off_of(const Unknown& u, const std::vector<Crown>& crowns) {
  const Way way = u.low ? Way::low : Way::high;
  if (u.column == crowns.size()) return {std::nullopt, way};
  return {crowns[u.column].slot, way};
}

double rarity_of(const Off& off, const std::vector<Crown>& crowns, const Rarity& rarity) {
  if (!off.slot) return rarity.bow;
  if (off.way == Way::high) return rarity.high;
  return *off.slot == crowns.front().slot || *off.slot == crowns.back().slot ? rarity.end_low : rarity.low;
}

Explanation explanation(Feasible& feasible, Set set, const std::vector<Crown>& crowns, const Rarity& rarity) {
  // The bow's column is the last.
  if (set.back().column == crowns.size()) std::rotate(set.begin(), set.end() - 1, set.end());
  Explanation out;
  feasible.possible(set);
  out.example = feasible.amounts();
  for (std::size_t i = 0; i < set.size(); ++i) {
    const Off off = off_of(set[i], crowns);
    // Both exist, since the set is possible.
    const double least = feasible.extreme(set, i, false).value_or(0);
    const double most = feasible.extreme(set, i, true).value_or(most_amount);
    out.parts.push_back({off, least, most});
    out.rarity += rarity_of(off, crowns, rarity);
    out.barely = out.barely || most - least < rarity.sliver.mm();
  }
  if (out.barely) out.rarity += rarity.barely;
  if (!out.parts.front().off.slot && out.parts.front().least > rarity.usual_bow.mm())
    out.rarity += rarity.much_bow;
  return out;
}

bool by_bow(const Explanation& e) {
  return !e.parts.front().off.slot;
}

// A bow is looked at before frets, but not one that nobody would believe.
bool by_likely_bow(const Explanation& e, const Rarity& rarity) {
  return by_bow(e) && !e.barely && e.parts.front().least <= rarity.usual_bow.mm();
}

bool has(const Explanation& e, const Off& off) {
  return std::any_of(e.parts.begin(), e.parts.end(), [&](const Amount& a) { return a.off == off; });
}

std::vector<Off> offs_of(const std::vector<Explanation>& all) {
  std::vector<Off> out;
  for (const Explanation& e : all) {
    for (const Amount& a : e.parts)
      out.push_back(a.off);
  }
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

// Deviations that never stand together are alternatives; a list is closed under that. It is one of which
// every explanation has exactly one, or nothing is said.
std::vector<std::vector<Off>> alternatives(const std::vector<Explanation>& all, std::vector<Off> open) {
  const auto together = [&](const Off& a, const Off& b) {
    return std::any_of(all.begin(), all.end(), [&](const Explanation& e) { return has(e, a) && has(e, b); });
  };
  std::vector<std::vector<Off>> out;
  while (!open.empty()) {
    std::vector<Off> list{open.front()};
    open.erase(open.begin());
    for (std::size_t i = 0; i < list.size(); ++i) {
      const auto apart =
          std::stable_partition(open.begin(), open.end(), [&](const Off& o) { return together(list[i], o); });
      list.insert(list.end(), apart, open.end());
      open.erase(apart, open.end());
    }
    std::sort(list.begin(), list.end());
    for (const Explanation& e : all) {
      if (std::count_if(list.begin(), list.end(), [&](const Off& o) { return has(e, o); }) != 1) return {};
    }
    out.push_back(std::move(list));
  }
  return out;
}

void agree(LineFinding& finding) {
  std::vector<Off> open;
  for (const Off& off : offs_of(finding.explanations)) {
    const bool always = std::all_of(finding.explanations.begin(), finding.explanations.end(),
                                    [&](const Explanation& e) { return has(e, off); });
    (always ? finding.agreed : open).push_back(off);
  }
  finding.one_of = alternatives(finding.explanations, std::move(open));
}

void explain(LineFinding& finding, const Lines& lines, std::span<const Reading> readings,
             const Limits& limits) {
  const Claims claims = claims_of(lines, finding.line, readings);
  Feasible feasible(claims);
  const std::vector<Set> sets = smallest_sets(feasible, limits.most_off);
  if (sets.empty()) {
    finding.finding = Finding::many;
    for (const std::size_t i : smallest_contradiction(lines, finding.line, readings)) {
      finding.finding = Finding::contradiction;
      finding.cannot_all_be.push_back(finding.counted[i]);
    }
    return;
  }
  if (sets.front().empty()) {
    finding.finding = Finding::level;
    return;
  }
  for (const Set& set : sets)
    finding.explanations.push_back(explanation(feasible, set, lines.on(finding.line), limits.rarity));
  std::stable_sort(finding.explanations.begin(), finding.explanations.end(),
                   [&](const Explanation& a, const Explanation& b) {
                     const bool bow_a = by_likely_bow(a, limits.rarity),
                                bow_b = by_likely_bow(b, limits.rarity);
                     return bow_a != bow_b ? bow_a : a.rarity < b.rarity;
                   });
  const Explanation& first = finding.explanations.front();
  finding.finding = first.parts.size() == 1 && by_bow(first) ? Finding::bow : Finding::frets;
  agree(finding);
}

void check_all(std::span<const Reading> readings, const Lines& lines, const Limits& limits) {
  if (limits.most_off < 1 || limits.most_off > 4)
    throw BadReading("most_off", fmt::format("{} deviations are not looked for.", limits.most_off), "1 to 4");
  for (std::size_t i = 0; i < readings.size(); ++i) {
    try {
      check(readings[i], lines);
    } catch (const BadReading& bad) {
      if (readings.size() == 1) throw;
      throw BadReading(bad.field, fmt::format("Reading {}: {}", i + 1, bad.what()), bad.would_do);
    }
  }
}

} // namespace

Diagnosis diagnose(std::span<const Reading> readings, const Lines& lines, const Limits& limits,
                   std::span<const Touched> touched) {
  check_all(readings, lines, limits);
  Diagnosis out;
  for (const Line line : all_lines) {
    LineFinding finding;
    finding.line = line;
    std::vector<Reading> counted;
    for (std::size_t i = 0; i < readings.size(); ++i) {
      if (readings[i].line != line || !counts(readings[i], touched)) continue;
      finding.counted.push_back(i);
      counted.push_back(readings[i]);
    }
    if (!counted.empty()) explain(finding, lines, counted, limits);
    out.lines.push_back(std::move(finding));
  }
  for (std::size_t i = 0; i < readings.size(); ++i) {
    if (!counts(readings[i], touched)) out.stale.push_back(i);
  }
  return out;
}

} // namespace nutward::level
