#include "shop/press_settings.hpp"

#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace nutward::shop {

namespace {

constexpr std::string_view none = "none";

[[noreturn]] void refuse(std::string_view name, std::string what, std::string would_do) {
  throw Problem(Fault::value, std::move(what), std::string(name), std::move(would_do));
}

std::string lower(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return out;
}

std::string trimmed(std::string_view text) {
  const auto from = text.find_first_not_of(' ');
  if (from == std::string_view::npos) return "";
  return std::string(text.substr(from, text.find_last_not_of(' ') - from + 1));
}

template <class Read>
auto reading(std::string_view name, Read read) {
  try {
    return read();
  } catch (const units::BadQuantity& bad) {
    refuse(name, bad.what(), bad.would_do);
  }
}

// With the unit that it was said in.
std::string kept_load(std::string_view name, std::string_view text, units::ForceUnit bare) {
  if (const auto number = number_of_kilograms(text); number && bare != units::ForceUnit::kgf) {
    const units::Force v = units::read_force(text, bare);
    refuse(name,
           fmt::format("'{}': the shop's loads are in {}, and this may be meant as either.", text,
                       units::name_of(bare)),
           fmt::format("Say {0} {1}, or {0} kgf, which is {2}.", *number, units::name_of(bare),
                       units::print(v, bare, 1)));
  }
  const GaugeDivision v = reading(name, [&] { return division_in(text, bare); });
  if (!(v.step > 0)) refuse(name, fmt::format("'{}' is no load.", text), "Give it as 3000 lb or 13 kN.");
  return fmt::format("{:.10g} {}", v.step, units::name_of(v.unit));
}

std::optional<double> number_in(std::string_view text) {
  double v = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), v);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(v)) return std::nullopt;
  return v;
}

// "15", "15 %" and "0.15" are the same.
double share_in(std::string_view name, std::string_view text) {
  std::string_view digits = text;
  while (digits.ends_with('%') || digits.ends_with(' '))
    digits.remove_suffix(1);
  const auto v = number_in(digits);
  if (!v || *v <= 0 || *v > 100)
    refuse(name, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name), "Give it as 20 %.");
  return *v > 1 || text.ends_with('%') ? *v / 100 : *v;
}

std::string kept_share(double share) {
  return fmt::format("{:.4g} %", share * 100);
}

// "35.5", "35.5 N/mm", "400 lb on 50 mm": N for each mm.
double line_load_in(std::string_view name, std::string_view text, units::ForceUnit bare) {
  const std::string what = "Give it as 35.5 N/mm, or as 400 lb on 50 mm.";
  if (const auto on = text.find(" on "); on != std::string_view::npos) {
    const units::Force load = reading(name, [&] { return units::read_force(text.substr(0, on), bare); });
    const Length length =
        reading(name, [&] { return units::read_length(text.substr(on + 4), units::LengthUnit::mm); });
    if (length <= Length{}) refuse(name, "That is no length of fret.", what);
    return load.n / length.mm();
  }
  std::string digits = lower(text);
  if (const auto unit = digits.find("n/mm"); unit != std::string::npos) digits.erase(unit);
  const auto v = number_in(trimmed(digits));
  if (!v) refuse(name, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name), what);
  return *v;
}

// Loads one after the other, all in the unit that stands behind the last.
std::vector<units::Force> ladder_in(std::string_view name, std::string_view text, units::ForceUnit bare) {
  std::string words = lower(text);
  for (std::string_view joint : {",", " and ", " to ", " then "}) {
    for (auto at = words.find(joint); at != std::string::npos; at = words.find(joint))
      words.replace(at, joint.size(), " ");
  }
  const auto unit_at = std::find_if(words.begin(), words.end(), [](char c) { return std::isalpha(c) != 0; });
  const std::string unit = trimmed(std::string(unit_at, words.end()));
  std::vector<units::Force> out;
  std::string number;
  for (char c : std::string(words.begin(), unit_at) + " ") {
    if (c != ' ') {
      number += c;
      continue;
    }
    if (number.empty()) continue;
    out.push_back(
        reading(name, [&] { return units::read_force(kept_load(name, number + " " + unit, bare), bare); }));
    number.clear();
  }
  if (out.empty())
    refuse(name, fmt::format("'{}' is no ladder of loads.", text.substr(0, 40)),
           "Give its loads for a fret 50 mm long, such as 1000 1500 2000 lb.");
  return out;
}

std::string kept_ladder(std::string_view name, std::string_view text, units::ForceUnit bare) {
  std::string out;
  for (const units::Force v : ladder_in(name, text, bare)) {
    const std::string said = units::print_exact(v, bare).value_or(fmt::format("{:.10g} N", v.n));
    out += (out.empty() ? "" : ", ") + said;
  }
  return out;
}

std::string kept_length(std::string_view name, std::string_view text) {
  const Length v = reading(name, [&] { return units::read_length(text, units::LengthUnit::mm); });
  return units::print_exact_mm(v) + " mm";
}

std::string kept_count(std::string_view name, std::string_view text) {
  const auto v = number_in(text);
  if (!v || *v != std::floor(*v) || *v < 1 || *v > 24)
    refuse(name, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name),
           "Give a whole number from 1 to 24.");
  return fmt::format("{}", static_cast<int>(*v));
}

// Settings that may be none.
constexpr std::array<std::string_view, 5> loads{"press_plate", "press_gauge", "press_limit", "rework_limit",
                                                "narrow_ladder"};

class Kept {
public:
  explicit Kept(const View& view) : view_(view) {}
  std::string text(std::string_view name) const {
    if (auto v = view_.house().setting(name)) return *v;
    for (const SettingRow& row : setting_rows()) {
      if (row.name == name) return std::string(row.otherwise);
    }
    throw std::logic_error("no setting is called " + std::string(name));
  }
  std::optional<units::Force> load(std::string_view name) const {
    const std::string s = text(name);
    if (s == none) return std::nullopt;
    return units::read_force(s, units::ForceUnit::n);
  }

private:
  const View& view_;
};

// Each rung as N for each mm; kept as loads on 50 mm.
std::vector<double> rungs_of(const std::string& kept) {
  std::vector<double> out;
  if (kept == none) return out;
  for (std::size_t from = 0; from < kept.size();) {
    const std::size_t comma = std::min(kept.find(", ", from), kept.size());
    const units::Force v = units::read_force(kept.substr(from, comma - from), units::ForceUnit::n);
    out.push_back(v.n / ladder_fret.mm());
    from = comma + 2;
  }
  return out;
}

void check_ladder_under_plate(const press::Equipment& e, units::ForceUnit unit, const std::string& where) {
  if (!e.press_rating || e.narrow_ladder.empty()) return;
  const units::Force top{e.narrow_ladder.back() * ladder_fret.mm()};
  constexpr double last_digits = 1e-9;
  if (top.n <= e.press_rating->n * (1 + last_digits)) return;
  throw Problem(Fault::value,
                fmt::format("The ladder's {} on a fret 50 mm long is above the press's plate, {}.",
                            units::print(top, unit, 1), units::print(*e.press_rating, unit, 1)),
                where, fmt::format("Rungs up to {} would do.", units::print(*e.press_rating, unit, 1)));
}

} // namespace

std::optional<std::string> number_of_kilograms(std::string_view text) {
  const std::string s = lower(trimmed(text));
  const auto unit = std::find_if(s.begin(), s.end(), [](char c) { return std::isalpha(c) != 0; });
  const std::string word(unit, s.end());
  static constexpr std::array<std::string_view, 6> words{"kg",    "kgs",      "kilo",
                                                         "kilos", "kilogram", "kilograms"};
  if (std::find(words.begin(), words.end(), word) == words.end()) return std::nullopt;
  return trimmed(std::string(s.begin(), unit));
}

std::optional<std::string> check_press_setting(std::string_view name, std::string_view raw,
                                               units::ForceUnit bare) {
  const std::string text = trimmed(raw);
  const bool may_be_none =
      name == "press_reach" || std::find(loads.begin(), loads.end(), name) != loads.end();
  if (may_be_none && lower(text) == none) return std::string(none);
  if (name == "narrow_ladder") return kept_ladder(name, text, bare);
  if (std::find(loads.begin(), loads.end(), name) != loads.end()) return kept_load(name, text, bare);
  if (name == "press_frets") return kept_count(name, text);
  if (name == "press_line_load") return fmt::format("{:.6g} N/mm", line_load_in(name, text, bare));
  if (name == "press_soft_wood" || name == "rework_step_least" || name == "rework_step_most")
    return kept_share(share_in(name, text));
  if (name == "press_end_clear" || name == "press_reach") return kept_length(name, text);
  return std::nullopt;
}

press::Equipment equipment(const View& view, const Setup& set) {
  const Kept kept(view);
  press::Equipment e;
  e.in_service = !set.press_down;
  e.press_rating = kept.load("press_plate");
  e.gauge_rating = kept.load("press_gauge");
  e.division = {set.division.step * units::newtons_in(set.division.unit)};
  e.pass_limit = kept.load("press_limit");
  e.most_frets = static_cast<int>(number_in(kept.text("press_frets")).value_or(6));
  e.line_load = line_load_in("press_line_load", kept.text("press_line_load"), units::ForceUnit::n);
  e.soft_wood = share_in("press_soft_wood", kept.text("press_soft_wood"));
  e.end_clear = units::read_length(kept.text("press_end_clear"), units::LengthUnit::mm);
  if (const std::string reach = kept.text("press_reach"); reach != none)
    e.reach = units::read_length(reach, units::LengthUnit::mm);
  e.step_least = share_in("rework_step_least", kept.text("rework_step_least"));
  e.step_most = share_in("rework_step_most", kept.text("rework_step_most"));
  e.rework_limit = kept.load("rework_limit");
  e.narrow_ladder = rungs_of(kept.text("narrow_ladder"));
  for (const Bar& bar : view.house().bars())
    e.bars.push_back(bar.is);
  return e;
}

void check_equipment(const View& view, std::string where) {
  const Setup set = setup(view);
  const press::Equipment e = equipment(view, set);
  try {
    press::check(e, set.load_unit);
  } catch (const press::BadEquipment& bad) {
    throw Problem(Fault::value, bad.what(), std::move(where), bad.would_do);
  }
  check_ladder_under_plate(e, set.load_unit, where);
}

std::optional<Bar> bar_called(std::string_view name, const View& view) {
  for (const Bar& bar : view.house().bars()) {
    if (lower(bar.is.name) == lower(name)) return bar;
  }
  return std::nullopt;
}

std::string still_to_say(const Job& job) {
  std::string out;
  const auto unsaid = [&](bool said, std::string_view what) {
    if (!said) out += (out.empty() ? "" : ", ") + std::string(what);
  };
  unsaid(job.bed.cradled, "cradled");
  unsaid(job.bed.head_clear, "head clear");
  unsaid(job.bed.nothing_bridges, "nothing bridging");
  unsaid(job.bed.glue_set, "glue set");
  return out;
}

Bar bar_of(std::string_view name, std::string_view where, const View& view) {
  if (auto bar = bar_called(name, view)) return *bar;
  std::string all;
  for (const Bar& bar : view.house().bars())
    all += (all.empty() ? "" : ", ") + bar.is.name;
  refuse(where, fmt::format("There is no bar '{}'.", name.substr(0, 60)),
         all.empty() ? "None is defined yet: define bar long, length 112 mm, width 90 mm."
                     : "There are: " + all + ".");
}

} // namespace nutward::shop
