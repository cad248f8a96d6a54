#include "press/equipment.hpp"

#include "units/print.hpp"

#include <cmath>
#include <fmt/core.h>

namespace nutward::press {

namespace {

using namespace units::literals;

constexpr Force least_rating{100}, largest_rating{1e6};
constexpr Length longest_narrow = 30_mm;
constexpr double most_line_load = 100, steepest_rung = 1.5, most_rung = 400;
constexpr std::size_t most_rungs = 20;

// Finite and in [low, high].
bool within(double v, double low, double high) {
  return v >= low && v <= high;
}

std::string shown(Force v, units::ForceUnit unit) {
  if (!within(v.n, -1e9, 1e9)) return "such a load";
  constexpr double hundredth = 0.01;
  return units::print_exact(v, unit).value_or(units::print(v, unit, hundredth));
}
std::string shown(Length v) {
  return units::print_exact_mm(v) + " mm";
}

void check_length(const char* field, const std::string& what, Length v, Length least, Length most) {
  if (v >= least && v <= most) return;
  throw BadEquipment(field, fmt::format("{} of {} cannot be right.", what, shown(v)),
                     fmt::format("From {} to {} would do.", shown(least), shown(most)));
}

void check_number(const char* field, const char* what, double v, double low, double high) {
  if (within(v, low, high)) return;
  throw BadEquipment(field, fmt::format("{} of {:g} is out of range.", what, v),
                     fmt::format("From {:g} to {:g} would do.", low, high));
}

void check_rating(const char* field, const std::string& what, const std::optional<Force>& v,
                  units::ForceUnit unit) {
  if (!v || within(v->n, least_rating.n, largest_rating.n)) return;
  throw BadEquipment(field, fmt::format("{} for {} cannot be right.", what, shown(*v, unit)),
                     fmt::format("Look at its plate; from {} to {} would do.", shown(least_rating, unit),
                                 shown(largest_rating, unit)));
}

void check_under_plate(const char* field, const char* what, const std::optional<Force>& v, const Equipment& e,
                       units::ForceUnit unit) {
  if (!v) return;
  if (!within(v->n, least_rating.n, largest_rating.n)) {
    throw BadEquipment(field, fmt::format("{} of {} cannot be right.", what, shown(*v, unit)),
                       "A load up to what the press's plate says would do.");
  }
  if (!e.press_rating || *v <= *e.press_rating) return;
  throw BadEquipment(field,
                     fmt::format("{} of {} is above the press's plate, {}.", what, shown(*v, unit),
                                 shown(*e.press_rating, unit)),
                     fmt::format("At most {} would do.", shown(*e.press_rating, unit)));
}

void check_ladder(const std::vector<double>& rungs) {
  if (rungs.size() > most_rungs) {
    throw BadEquipment("narrow_ladder", fmt::format("A ladder of {} rungs is too long.", rungs.size()),
                       fmt::format("At most {} would do.", most_rungs));
  }
  double before = 0;
  for (double rung : rungs) {
    if (!(rung > before) || !(rung <= most_rung)) {
      throw BadEquipment("narrow_ladder",
                         fmt::format("A rung of {:g} N/mm after {:g} N/mm is none.", rung, before),
                         fmt::format("Rungs that rise, up to {:g} N/mm, would do.", most_rung));
    }
    // A ladder worked out from loads in pounds comes back to half as much again only to a few digits.
    constexpr double digits = 1e-6;
    if (before > 0 && rung > before * steepest_rung * (1 + digits)) {
      throw BadEquipment("narrow_ladder",
                         fmt::format("From {:g} to {:g} N/mm is too far in one step.", before, rung),
                         fmt::format("At most {:g} N/mm would do there.", before * steepest_rung));
    }
    before = rung;
  }
}

void take(Limit& limit, const std::optional<Force>& load, LimitedBy by) {
  if (load && *load < limit.load) limit = {*load, by};
}

} // namespace

void check(const Bar& bar, units::ForceUnit unit) {
  check_length("bar", fmt::format("The length of bar '{}'", bar.name), bar.length, 3_mm,
               bar.narrow ? longest_narrow : 400_mm);
  check_length("bar", fmt::format("The width of bar '{}'", bar.name), bar.width, 20_mm, 300_mm);
  if (bar.sole_radius) {
    check_length("bar", fmt::format("The sole radius of bar '{}'", bar.name), *bar.sole_radius, 50_mm,
                 10'000_mm);
  }
  check_rating("bar", fmt::format("A rating of bar '{}'", bar.name), bar.rating, unit);
}

void check(const Equipment& e, units::ForceUnit unit) {
  check_rating("press_rating", "A press rated", e.press_rating, unit);
  check_rating("gauge_rating", "A gauge rated", e.gauge_rating, unit);
  check_under_plate("pass_limit", "A most load in a pass", e.pass_limit, e, unit);
  check_under_plate("rework_limit", "A most load on one fret", e.rework_limit, e, unit);
  const double coarsest = e.press_rating.value_or(largest_rating).n / 10;
  if (!(e.division.n > 0) || !(e.division.n <= coarsest)) {
    throw BadEquipment("division",
                       fmt::format("A gauge division of {} cannot be right.", shown(e.division, unit)),
                       "Over nothing, and at most a tenth of what the press is rated for, would do.");
  }
  if (e.most_frets < 1 || e.most_frets > 24) {
    throw BadEquipment("most_frets",
                       fmt::format("A group of at most {} frets cannot be right.", e.most_frets),
                       "From 1 to 24 would do; 6 is usual.");
  }
  check_number("line_load", "A load for each mm of fret", e.line_load, 1, most_line_load);
  check_number("soft_wood", "A share for soft wood", e.soft_wood, 0.1, 1);
  check_length("end_clear", "A distance from the end of a bar to a crown", e.end_clear, 0.5_mm, 20_mm);
  if (e.reach) check_length("reach", "A reach along the neck", *e.reach, 50_mm, 2000_mm);
  check_number("step_most", "A step up the ladder", e.step_most, 0.05, 0.25);
  check_number("step_least", "A least step up the ladder", e.step_least, 0.05, e.step_most);
  check_ladder(e.narrow_ladder);
  for (const Bar& bar : e.bars)
    check(bar, unit);
}

std::optional<Limit> rating(const Equipment& e, const Bar& bar) {
  if (!e.press_rating) return std::nullopt;
  Limit limit{*e.press_rating, LimitedBy::press};
  take(limit, e.gauge_rating, LimitedBy::gauge);
  take(limit, bar.rating, LimitedBy::bar);
  return limit;
}

std::optional<Limit> most_in_a_pass(const Equipment& e, const Bar& bar) {
  auto limit = rating(e, bar);
  if (limit) take(*limit, e.pass_limit.value_or(usual_pass_limit), LimitedBy::pass_limit);
  return limit;
}

std::optional<Limit> most_on_one_fret(const Equipment& e, const Bar& bar) {
  auto limit = rating(e, bar);
  if (limit) take(*limit, e.rework_limit, LimitedBy::rework_limit);
  return limit;
}

Force on_gauge(Force load, const Equipment& e) {
  // 2,000 lb in newtons is 200 divisions of 10 lb but for the last digit of a double.
  constexpr double last_digits = 1e-9;
  const double divisions = std::floor(load.n / e.division.n + last_digits);
  if (divisions < 1) return load;
  return {std::min(divisions * e.division.n, load.n)};
}

} // namespace nutward::press
