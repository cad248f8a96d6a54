// The shop's settings: one table of names, defaults and what they mean. Kept as text; read here into their
// types.
#pragma once

#include "agenda/recheck.hpp"
#include "board/need.hpp"
#include "shop/meant.hpp"
#include "shop/store.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

struct SettingRow {
  std::string_view name;
  std::string_view otherwise; // the default, as it would be written
  std::string_view what;      // one line, with its unit
};

std::span<const SettingRow> setting_rows();
std::vector<std::string_view> setting_names();

// Throws Problem{value} where a setting of that name may not hold this text. Returns it as it is to be kept.
// `bare_load`: the unit of a load that was said without one.
std::string check_setting(std::string_view name, std::string_view text, units::ForceUnit bare_load);

// What the load gauge shows at least. It has its own unit: a dial in pounds stays one when the shop begins to
// speak of kilonewtons.
struct GaugeDivision {
  double step = 10; // > 0, in `unit`
  units::ForceUnit unit = units::ForceUnit::lbf;
};
// Throws units::BadQuantity.
GaugeDivision division_in(std::string_view text, units::ForceUnit bare);

struct Setup {
  board::FitSettings fit;
  agenda::RecheckHours recheck;
  int tin_idle_days = 180; // a piece that nobody touched for so long is not likely to be used
  int tin_enough = 6;      // so many pieces of a length are enough, unless the queue takes more
  units::LengthUnit unit = units::LengthUnit::mm;
  bool sixty_fourths = false; // of inches: as fractions to 1/64, with what they leave out
  units::ForceUnit load_unit = units::ForceUnit::lbf;
  GaugeDivision division;
  std::string currency;
  bool press_down = false; // the press is out of service; only from setup_at()
  std::string press_out;   // and why, where that was said
  Length flat_end;         // of a stick that went through the bender, at each end
  Length bin_step;         // the range of lengths of one bin of the tin
  std::string ends_place;  // where a rest goes while no piece of its wire has a place
  Length least_useful;     // a shorter rest is scrap, where no job on record says how short a fret may be
};

Setup setup(const View& view);
// With what holds at that time, for whatever tells a load.
Setup setup_at(const View& view, Instant now);

// As the shop writes it: by its units.
std::string say(Length v, const Setup& setup);
std::string say(units::Force v, const Setup& setup); // to the gauge's division
// A load that somebody reported, as exactly as they said it; to the gauge's division where no unit ends.
std::string as_said(units::Force v, const Setup& setup);

} // namespace nutward::shop
