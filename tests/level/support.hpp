// What the tests of levelling share: boards, readings in few words, and a straightedge that is laid on
// heights by itself, without any of daemon/level's inequalities.
#pragma once

#include "level/diagnose.hpp"

#include "support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <set>
#include <string>

#include <fmt/format.h>

namespace bench {

using namespace nutward::level;
namespace board = nutward::board;

inline board::Board a_board(int slots, board::Surface surface = board::Flat{}) {
  board::Board out;
  out.scale = Length{645'160'000};
  out.slots = slots;
  out.nut_width = Length{43'000'000};
  out.far_width = Length{52'000'000};
  out.surface = surface;
  return out;
}

inline Reading rocks(int from, int to, Line line = Line::middle) {
  Reading out;
  out.line = line;
  out.span = {from, to};
  out.felt = Felt::rocks;
  return out;
}
inline Reading steady(int from, int to, Line line = Line::middle) {
  Reading out = rocks(from, to, line);
  out.felt = Felt::steady;
  return out;
}

inline std::string text(const Off& off) {
  return fmt::format("{} {}", off.slot ? std::to_string(*off.slot) : "bow",
                     off.way == Way::high ? "high" : "low");
}
inline std::string text(const std::vector<Off>& offs) {
  std::string out;
  for (const Off& off : offs)
    out += (out.empty() ? "" : ", ") + text(off);
  return out;
}
inline std::vector<Off> offs(const Explanation& e) {
  std::vector<Off> out;
  for (const Amount& a : e.parts)
    out.push_back(a.off);
  return out;
}
// "7 high | 8 low", in the order of their ranks.
inline std::string text(const LineFinding& finding) {
  std::string out;
  for (const Explanation& e : finding.explanations)
    out += (out.empty() ? "" : " | ") + text(offs(e)) + (e.barely ? " (barely)" : "");
  return out;
}

// Heights of the crowns of a line in mm, as they stand in the world.
struct World {
  std::vector<double> amount; // of each fret
  double bow = 0;
};
inline std::vector<double> heights(const Lines& lines, Line line, const World& world) {
  const auto& at = lines.on(line);
  const double middle = (at.front().x + at.back().x) / 2, half = (at.back().x - at.front().x) / 2;
  std::vector<double> out;
  for (std::size_t i = 0; i < at.size(); ++i) {
    const double u = (at[i].x - middle) / half;
    out.push_back(at[i].z + world.amount[i] + world.bow * (1 - u * u));
  }
  return out;
}

// Where a rigid edge comes to lie: a line through `on` (an end) that turns down until a crown stops it.
inline double edge_above(const std::vector<Crown>& at, const std::vector<double>& h, std::size_t on,
                         std::size_t i, std::size_t j, std::size_t f) {
  const double away = on == i ? 1 : -1;
  double slope = -1e300;
  for (std::size_t k = i; k <= j; ++k) {
    if (k != on) slope = std::max(slope, (h[k] - h[on]) / std::abs(at[k].x - at[on].x));
  }
  return h[on] + slope * away * (at[f].x - at[on].x) - h[f];
}

// Whether the reading would be what a hand of this ε reports of such a world. `miss` in mm is forgiven.
inline bool holds(const Reading& r, const Lines& lines, const World& world, double miss = 0) {
  const auto& at = lines.on(r.line);
  const std::vector<double> h = heights(lines, r.line, world);
  const double eps = r.epsilon.mm() + miss, over = r.epsilon.mm() + 0.001 - miss;
  for (const int s : r.looks_sunk)
    if (-world.amount[*lines.find(s)] < over) return false;
  for (const int s : r.looks_high)
    if (world.amount[*lines.find(s)] < over) return false;
  if (r.felt == Felt::not_laid) return true;
  const std::size_t i = *lines.find(r.span.from), j = *lines.find(r.span.to);
  const auto ends = [&](std::size_t k) {
    return h[i] + (h[j] - h[i]) * (at[k].x - at[i].x) / (at[j].x - at[i].x);
  };
  double proudest = -1e300;
  for (std::size_t k = i + 1; k < j; ++k)
    proudest = std::max(proudest, h[k] - ends(k));
  if (r.felt == Felt::steady && proudest > eps) return false;
  if (r.felt == Felt::rocks && proudest < over) return false;
  if (r.pivot) {
    const std::size_t p = *lines.find(*r.pivot);
    if (h[p] - ends(p) < over) return false;
    for (std::size_t l = i; l < p; ++l)
      for (std::size_t q = p + 1; q <= j; ++q)
        if (h[l] + (h[q] - h[l]) * (at[p].x - at[l].x) / (at[q].x - at[l].x) - h[p] > eps) return false;
  }
  const auto gap = [&](int slot) {
    const std::size_t f = *lines.find(slot);
    if (!r.held) return ends(f) - h[f];
    return edge_above(at, h, *r.held == Held::nutward ? i : j, i, j, f);
  };
  // A fret that itself stops the edge shows no gap: edge_above() is 0 there.
  for (const int s : r.gaps)
    if (gap(s) < over) return false;
  for (const int s : r.snug)
    if (gap(s) > eps) return false;
  return true;
}

inline bool all_hold(const std::vector<Reading>& readings, const Lines& lines, Line line, const World& world,
                     double miss = 0) {
  return std::all_of(readings.begin(), readings.end(),
                     [&](const Reading& r) { return r.line != line || holds(r, lines, world, miss); });
}

} // namespace bench
