#include "shop/setup.hpp"

#include "shop/level_settings.hpp"
#include "shop/machines.hpp"
#include "shop/press_settings.hpp"
#include "shop/supply_settings.hpp"

#include "hours/load_zone.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

namespace nutward::shop {

namespace {

constexpr std::array rows{
    SettingRow{"zone", "UTC", "the shop's time zone, an IANA name such as Europe/Berlin"},
    SettingRow{
        "unit", "mm",
        "what a bare length means, and how lengths are shown: mm, in, or in/64 (fractions of an inch)"},
    SettingRow{"load_unit", "lb", "what a bare load means: lb, n, kn or kgf"},
    SettingRow{"gauge_division", "10 lb", "the load gauge's division, such as 10 lb or 0.1 kN"},
    SettingRow{"currency", "EUR", "three capital letters (ISO 4217)"},
    SettingRow{"keep_not_understood", "yes",
               "whether sentences that nobody understood are kept for who leads the shop: yes or no"},
    SettingRow{"setback", "0.25 mm", "how far a rounded end stands back from the edge"},
    SettingRow{"gap", "0.3 mm", "how much further back it may stand"},
    SettingRow{"dressing_loss", "0.5 mm", "what dressing takes off one end"},
    SettingRow{"filed_extra", "0.5 mm", "how much longer than the slot a fret to be filed must at least be"},
    SettingRow{"overhang", "2 mm", "how far a fret to be filed stands out at each end"},
    SettingRow{"nip_loss", "0.5 mm", "what one cut loses"},
    SettingRow{"borderline", "0.1 mm", "how good a caliper is"},
    SettingRow{"trim_limit", "8 mm", "the most a piece may lose in becoming one fret"},
    SettingRow{"tin_idle_days", "180",
               "days after which a piece of the tin that nobody touched is spoken of"},
    SettingRow{"tin_enough", "6", "how many pieces of a length are enough, unless the queue takes more"},
    SettingRow{"crown_tolerance", "0.03 mm", "how far crown heights may differ"},
    SettingRow{"binding_clearance", "0.4 mm", "how far a tang stays away from a binding"},
    SettingRow{"crown_overhang", "3 mm", "how far a crown may reach beyond its tang at one end"},
    SettingRow{"least_useful", "30 mm",
               "the shortest rest worth keeping of a wire that no job has needed yet"},
    SettingRow{"flat_end", "12 mm",
               "what the bender leaves flat at each end of a stick, which makes no fret"},
    SettingRow{"bin_step", "5 mm", "the range of lengths that one bin of the tin takes"},
    SettingRow{"ends_place", "the tin", "where a rest goes while no piece of its wire has a place"},
    SettingRow{"press_plate", "none", "the load that the press's plate says; without it none is given"},
    SettingRow{"press_gauge", "none", "the end of the load gauge's scale; none: not known"},
    SettingRow{"press_limit", "none",
               "the most load in a pass; none: 2000 lb, or what the plate says if that is less"},
    SettingRow{"press_frets", "6", "the most frets under the bar in a pass"},
    SettingRow{"press_line_load", "35.5 N/mm",
               "the load for each millimetre of fret; 400 lb on 50 mm may be said too"},
    SettingRow{"press_soft_wood", "70 %", "how much of it on a board of soft wood"},
    SettingRow{"press_end_clear", "1 mm", "how far an end of the bar stays away from a crown beside it"},
    SettingRow{"press_reach", "none",
               "the furthest from the nut that the middle of a bar gets; none: anywhere"},
    SettingRow{"rework_step_least", "15 %", "how much more a fret is pressed again with, at least"},
    SettingRow{"rework_step_most", "25 %", "and at most"},
    SettingRow{"rework_limit", "none",
               "the most on one fret under a long bar; none: what press, gauge and bar are rated for"},
    SettingRow{"narrow_ladder", "none",
               "the loads for one fret 50 mm long under a narrow bar, such as 1000 1500 2000 lb; none: a "
               "narrow bar is not advised"},
    SettingRow{"level_hand", "0.02 mm", "the least rock of a straightedge that a hand feels"},
    SettingRow{"level_quick", "0.03 mm", "the same of a quick look"},
    SettingRow{"level_called", "0.05 mm",
               "a line may be called level where no single fret could be further off unnoticed"},
    SettingRow{"level_rocker", "5",
               "the most frets under a fret rocker; beyond it a longer edge is taken up"},
    SettingRow{"usual_bow", "0.5 mm", "a bow of a line beyond which rarity_much_bow counts"},
    SettingRow{"rarity_high", "1", "how rare a high fret is; of explanations the least rare comes first"},
    SettingRow{"rarity_low", "2", "how rare a low one is"},
    SettingRow{"rarity_end_low", "1.5", "how rare a first or last fret is that is low"},
    SettingRow{"rarity_bow", "1", "how rare a bow of the neck is"},
    SettingRow{"rarity_much_bow", "3", "added to a bow beyond usual_bow"},
    SettingRow{"rarity_barely", "3", "added to what the readings all but rule out"},
    SettingRow{"recheck_from_h", "16", "hours after pressing from which a recheck may be done"},
    SettingRow{"recheck_due_h", "24", "hours after pressing at which it is due"},
    SettingRow{"supply_service", "98 %", "how surely wire must last until an order is there"},
    SettingRow{"supply_further", "3", "refrets of new work that an order covers besides"},
    SettingRow{"supply_review", "2", "days that may pass from when an order is due until somebody places it"},
    SettingRow{"supply_lead", "14",
               "days from order to arrival, where no supplier is known to take less or more"},
    SettingRow{"supply_guess", "0.25", "refrets a week that a wire without a history is expected to take"},
    SettingRow{"supply_again", "3", "days after which an order that is due is spoken of again"},
    SettingRow{
        "supply_holding", "none",
        "what wire on hand costs a year, as a share of its price, such as 20 %; none: not reckoned with"},
    SettingRow{"supply_order_cost", "none",
               "what an order costs, whatever is in it, such as 12.50; none: not reckoned with"},
};

// Where a FitSettings member is named like the setting.
struct FitRow {
  std::string_view name;
  Length board::FitSettings::*member;
};
constexpr std::array fit_rows{
    FitRow{"setback", &board::FitSettings::setback},
    FitRow{"gap", &board::FitSettings::gap},
    FitRow{"dressing_loss", &board::FitSettings::dressing_loss},
    FitRow{"filed_extra", &board::FitSettings::filed_extra},
    FitRow{"overhang", &board::FitSettings::overhang},
    FitRow{"nip_loss", &board::FitSettings::nip_loss},
    FitRow{"borderline", &board::FitSettings::borderline},
    FitRow{"trim_limit", &board::FitSettings::trim_limit},
    FitRow{"crown_tolerance", &board::FitSettings::crown_tolerance},
    FitRow{"binding_clearance", &board::FitSettings::binding_clearance},
    FitRow{"crown_overhang", &board::FitSettings::crown_overhang},
};

[[noreturn]] void refuse(std::string_view name, std::string what, std::string would_do) {
  throw Problem(Fault::value, std::move(what), std::string(name), std::move(would_do));
}

// Units are said in more ways than they are kept: "kN", "Inches", "pounds".
std::string unit_as_kept(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 19> ways{
      {{"inch", "in"},
       {"64ths", "in/64"},
       {"sixty-fourths", "in/64"},
       {"sixty fourths", "in/64"},
       {"fractions", "in/64"},
       {"inch fractions", "in/64"},
       {"fractions of an inch", "in/64"},
       {"inches", "in"},
       {"millimetre", "mm"},
       {"millimetres", "mm"},
       {"millimeter", "mm"},
       {"millimeters", "mm"},
       {"pound", "lb"},
       {"pounds", "lb"},
       {"lbs", "lb"},
       {"newton", "n"},
       {"newtons", "n"},
       {"kilonewton", "kn"},
       {"kilonewtons", "kn"}}};
  for (const auto& [said, kept] : ways) {
    if (text == said) return std::string(kept);
  }
  return text;
}

std::string one_of(std::string_view name, std::string text, std::initializer_list<std::string_view> options) {
  if (std::find(options.begin(), options.end(), text) != options.end()) return text;
  std::string all;
  for (std::string_view o : options)
    all += (all.empty() ? "" : ", ") + std::string(o);
  refuse(name, fmt::format("'{}' is no {}.", text.substr(0, 40), name), "It is one of: " + all + ".");
}

std::string yes_or_no(std::string_view name, const std::string& text) {
  if (text == "on" || text == "true") return "yes";
  if (text == "off" || text == "false") return "no";
  return one_of(name, text, {"yes", "no"});
}

int whole_between(std::string_view name, const std::string& text, int least, int most) {
  char* end = nullptr;
  const long v = std::strtol(text.c_str(), &end, 10);
  if (text.empty() || *end != '\0' || v < least || v > most) {
    refuse(name, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name),
           fmt::format("Give a whole number from {} to {}.", least, most));
  }
  return static_cast<int>(v);
}

std::string length_between(std::string_view name, std::string_view text, int least_mm, int most_mm) {
  try {
    const Length v = units::read_length(text, units::LengthUnit::mm);
    if (v.mm() >= least_mm && v.mm() <= most_mm) return units::print_exact_mm(v) + " mm";
  } catch (const units::BadQuantity& bad) {
    refuse(name, bad.what(), bad.would_do);
  }
  refuse(name, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name),
         fmt::format("Give a length from {} to {} mm.", least_mm, most_mm));
}

std::string place_name(std::string_view name, std::string text) {
  const auto bad = [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; };
  if (!text.empty() && text.size() <= 60 && std::none_of(text.begin(), text.end(), bad)) return text;
  refuse(name, "A place is named in 1 to 60 bytes, without control characters.",
         "Give a shorter name, such as drawer 2.");
}

} // namespace

// "10 lb", "0.1 kN": a division keeps its unit, whatever the load unit becomes later.
GaugeDivision division_in(std::string_view text, units::ForceUnit bare) {
  const units::Force v = units::read_force(text, bare);
  const auto word = std::find_if(text.begin(), text.end(), [](char c) { return std::isalpha(c) != 0; });
  const units::Force one = units::read_force("1 " + std::string(word, text.end()), bare);
  GaugeDivision out{0, bare};
  for (auto unit :
       {units::ForceUnit::n, units::ForceUnit::kn, units::ForceUnit::lbf, units::ForceUnit::kgf}) {
    if (units::newtons_in(unit) == one.n) out.unit = unit;
  }
  out.step = v.n / units::newtons_in(out.unit);
  return out;
}

namespace {

std::string check_division(std::string_view name, std::string_view text, units::ForceUnit bare) {
  try {
    const GaugeDivision d = division_in(text, bare);
    const double newtons = d.step * units::newtons_in(d.unit);
    if (newtons >= 0.1 && newtons <= 10000) return fmt::format("{:.6g} {}", d.step, units::name_of(d.unit));
  } catch (const units::BadQuantity& bad) {
    refuse(name, bad.what(), bad.would_do);
  }
  refuse(name, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name),
         "Give a load from 0.1 N to 10 kN, such as 10 lb or 0.1 kN.");
}

std::string check_fit(const FitRow& row, std::string_view text) {
  board::FitSettings fit;
  try {
    fit.*row.member = units::read_length(text, units::LengthUnit::mm);
    board::check(fit);
  } catch (const units::BadQuantity& bad) {
    refuse(row.name, bad.what(), bad.would_do);
  } catch (const board::BadSettings& bad) {
    refuse(row.name, bad.what(), bad.would_do);
  }
  return units::print_exact_mm(fit.*row.member) + " mm";
}

} // namespace

std::span<const SettingRow> setting_rows() {
  return rows;
}

std::vector<std::string_view> setting_names() {
  std::vector<std::string_view> out;
  for (const SettingRow& r : rows)
    out.push_back(r.name);
  return out;
}

std::string check_setting(std::string_view name, std::string_view text, units::ForceUnit bare_load) {
  for (const FitRow& row : fit_rows) {
    if (row.name == name) return check_fit(row, text);
  }
  const std::string s{text};
  if (auto kept = check_press_setting(name, text, bare_load)) return *kept;
  if (auto kept = check_level_setting(name, text)) return *kept;
  if (auto kept = check_supply_setting(name, text)) return *kept;
  if (name == "least_useful") return length_between(name, text, 5, 500);
  if (name == "flat_end") return length_between(name, text, 0, 100);
  if (name == "bin_step") return length_between(name, text, 1, 200);
  if (name == "ends_place") return place_name(name, s);
  if (name == "unit") return one_of(name, unit_as_kept(s), {"mm", "in", "in/64"});
  if (name == "keep_not_understood") return yes_or_no(name, unit_as_kept(s));
  if (name == "load_unit") return one_of(name, unit_as_kept(s), {"lb", "n", "kn", "kgf"});
  if (name == "gauge_division") return check_division(name, text, bare_load);
  if (name == "tin_idle_days") return std::to_string(whole_between(name, s, 1, 3650));
  if (name == "tin_enough") return std::to_string(whole_between(name, s, 1, 500));
  if (name == "recheck_from_h") return std::to_string(whole_between(name, s, 1, 168));
  if (name == "recheck_due_h") return std::to_string(whole_between(name, s, 1, 336));
  if (name == "currency") {
    const bool good =
        s.size() == 3 && std::all_of(s.begin(), s.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    if (!good)
      refuse(name, fmt::format("'{}' is no currency.", s.substr(0, 40)),
             "Give its three letters, such as EUR.");
    return s;
  }
  if (name == "zone") {
    try {
      return hours::load_zone(s)->name();
    } catch (const hours::BadHours& bad) {
      refuse(name, bad.what(), bad.would_do);
    }
  }
  refuse("setting", fmt::format("There is no setting '{}'.", name), "Ask for 'help set' to see them.");
}

Setup setup(const View& view) {
  const House& house = view.house();
  auto kept = [&](std::string_view name) {
    if (auto v = house.setting(name)) return *v;
    return std::string(std::find_if(rows.begin(), rows.end(), [&](const SettingRow& r) {
                         return r.name == name;
                       })->otherwise);
  };
  Setup out;
  for (const FitRow& row : fit_rows)
    out.fit.*row.member = units::read_length(kept(row.name), units::LengthUnit::mm);
  out.recheck.from_h = std::stoi(kept("recheck_from_h"));
  out.recheck.due_h = std::max(std::stoi(kept("recheck_due_h")), out.recheck.from_h);
  out.tin_idle_days = std::stoi(kept("tin_idle_days"));
  out.tin_enough = std::stoi(kept("tin_enough"));
  out.unit = length_unit(view);
  out.sixty_fourths = kept("unit") == "in/64";
  out.load_unit = force_unit(view);
  out.division = division_in(kept("gauge_division"), out.load_unit);
  out.currency = kept("currency");
  out.least_useful = units::read_length(kept("least_useful"), units::LengthUnit::mm);
  out.flat_end = units::read_length(kept("flat_end"), units::LengthUnit::mm);
  out.bin_step = units::read_length(kept("bin_step"), units::LengthUnit::mm);
  out.ends_place = kept("ends_place");
  return out;
}

Setup setup_at(const View& view, Instant now) {
  Setup out = setup(view);
  const auto press = machine_for(agenda::StageKind::press, view);
  const Down d = press ? down(*press, now, view) : Down{true, {}, {}};
  out.press_down = d.all;
  if (d.all && !d.because.empty()) out.press_out = d.because.front().note;
  return out;
}

std::string say(Length v, const Setup& s) {
  return s.sixty_fourths ? units::print_fraction(v) : units::print(v, s.unit);
}
std::string say(units::Force v, const Setup& s) {
  if (s.division.unit == s.load_unit) return units::print(v, s.load_unit, s.division.step);
  // A gauge that counts in another unit: to the decimal place that is no coarser than its division.
  const double step = s.division.step * units::newtons_in(s.division.unit) / units::newtons_in(s.load_unit);
  return units::print(v, s.load_unit, std::pow(10, std::floor(std::log10(step))));
}
std::string as_said(units::Force v, const Setup& s) {
  return units::print_exact(v, s.load_unit).value_or(say(v, s));
}

} // namespace nutward::shop
