// Equipment: what a shop presses with, and how far it goes. Every default is common practice, from memory,
// without a published source. What the plate, the gauge and a bar are rated for has no default: nobody but
// the shop knows it, and without the plate no load is given.
#pragma once

#include "units/force.hpp"
#include "units/length.hpp"
#include "units/read.hpp"

#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace nutward::press {

using units::Force;
using units::Length;

struct Bar {
  std::string name;
  Length length;                       // along the neck, 3 to 400 mm
  Length width;                        // across it, 20 to 300 mm; longer than any fret under it
  std::optional<Length> sole_radius{}; // hollow, 50 mm to 10 m; nullopt: flat
  std::optional<Force> rating{};       // nullopt: not known, and then it limits nothing
  bool narrow = false;                 // made to bear on one fret; at most 30 mm long

  friend bool operator==(const Bar&, const Bar&) = default;
};

struct Equipment {
  bool in_service = true;
  std::optional<Force> press_rating{}; // what the plate says; nullopt: no load is given
  std::optional<Force> gauge_rating{}; // the end of its scale
  Force division{10 * units::newtons_per_lbf};
  std::optional<Force>
      pass_limit{};              // most in a pass; nullopt: usual_pass_limit, or the plate if that is less
  int most_frets = 6;            // in a group, 1 to 24
  double line_load = 35.5;       // N for each mm of fret, over 0 to 100: about 400 lb on 50 mm
  double soft_wood = 0.7;        // of that on soft wood, 0.1 to 1
  Length end_clear{1'000'000};   // an end of the bar stays this far from crowns outside, 0.5 to 20 mm
  std::optional<Length> reach{}; // the furthest from the nut that the middle of a bar gets; nullopt: anywhere
  double step_least = 0.15;      // how much more than last time a fret is pressed again with:
  double step_most = 0.25;       // 0.05 ≤ least ≤ most ≤ 0.25
  std::optional<Force> rework_limit{}; // most on one fret under a long bar; nullopt: the least rating
  std::vector<double> narrow_ladder{}; // N for each mm of fret, rising, over 0 to 400, at most 20 rungs, none
                                       // more than half as much again as the one before; empty: the shop has
                                       // set none, and the narrow bar is not advised
  std::vector<Bar> bars{};

  friend bool operator==(const Equipment&, const Equipment&) = default;
};

inline constexpr Force usual_pass_limit{2'000 * units::newtons_per_lbf};

// what(): a whole sentence. `field`: the member's name above, or `bar`; would_do: what would be accepted.
struct BadEquipment : std::runtime_error {
  BadEquipment(std::string which, const std::string& what, std::string remedy)
      : std::runtime_error(what), field(std::move(which)), would_do(std::move(remedy)) {}
  std::string field;
  std::string would_do;
};

// Throws BadEquipment for the first member out of the ranges above, and for a limit above the plate. Ratings
// are from 100 N to 1 MN; the division is over 0 and at most a tenth of the plate. Loads are shown in `unit`.
void check(const Equipment& equipment, units::ForceUnit unit);
// The same of one bar. A bar may be rated above the plate: the least counts.
void check(const Bar& bar, units::ForceUnit unit);

// What kept a load from being more.
enum class LimitedBy {
  line_load = 0,
  pass_limit = 1,
  press = 2,
  gauge = 3,
  bar = 4,
  asked = 5,
  rework_limit = 6,
  step = 7
};

struct Limit {
  Force load;
  LimitedBy by = LimitedBy::press;
  friend bool operator==(const Limit&, const Limit&) = default;
};

// The least of plate, gauge and bar, of those that are known; nullopt where the plate is not.
std::optional<Limit> rating(const Equipment& equipment, const Bar& bar);
// The same, and at most the pass limit: nothing is pressed beyond it in a group.
std::optional<Limit> most_in_a_pass(const Equipment& equipment, const Bar& bar);
// The same as rating(), and at most the rework limit.
std::optional<Limit> most_on_one_fret(const Equipment& equipment, const Bar& bar);

// What is asked for is set on a gauge: the most whole divisions that are not above `load`. Where that would
// be none, `load` itself.
Force on_gauge(Force load, const Equipment& equipment);

} // namespace nutward::press
