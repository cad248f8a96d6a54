// The press and the boards of these tests.
#pragma once

#include "press/off_centre.hpp"
#include "press/passes.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <string>
#include <vector>

namespace nutward::press::tests {

using namespace units::literals;

inline Force lbf(double v) {
  return {v * units::newtons_per_lbf};
}
inline Length inches(double v) {
  return units::from_mm(v * 25.4);
}

// A 3,000 lb press.
inline Equipment shop() {
  Equipment e;
  e.press_rating = lbf(3000);
  return e;
}

inline Bar bar_of(Length length) {
  return {"long", length, 90_mm, {}, {}, false};
}
inline Bar narrow_bar() {
  return {"narrow", 8_mm, 90_mm, {}, {}, true};
}

// 1,000, 1,500 and 2,000 lb on 50 mm.
inline Equipment with_ladder() {
  Equipment e = shop();
  for (double load : {1000.0, 1500.0, 2000.0})
    e.narrow_ladder.push_back(lbf(load).n / 50);
  return e;
}

inline Bed good_bed() {
  Bed bed;
  bed.cradled = bed.head_clear = bed.nothing_bridges = bed.glue_set = true;
  return bed;
}

// 25.4 in, flat, 50 mm wide all along, so that each fret is 50 mm long.
inline board::Board even_board(int slots = 22) {
  board::Board b;
  b.scale = inches(25.4);
  b.slots = slots;
  b.nut_width = b.far_width = 50_mm;
  return b;
}

// Crowns 0.10 in wide; to be pressed up to slot 14, where the body begins.
inline Work even_work() {
  Work work = work_on(even_board(), inches(0.10));
  work.bed = good_bed();
  work.bed.body_from = work.crowns[13].at;
  return work;
}

inline std::string groups(const Plan& plan) {
  std::string out;
  for (const Pass& p : plan.passes)
    out += (out.empty() ? "" : ", ") + std::to_string(p.lo) + "-" + std::to_string(p.hi);
  return out;
}

template <class R>
const R* why(const Reason& reason) {
  return std::get_if<R>(&reason);
}
template <class R>
const R* why(const std::optional<Refusal>& refusal) {
  return refusal ? why<R>(refusal->why) : nullptr;
}
template <class R>
const R* only(const std::vector<Reason>& reasons) {
  return reasons.size() == 1 ? why<R>(reasons.front()) : nullptr;
}

} // namespace nutward::press::tests
