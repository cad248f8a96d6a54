#include "shop/level_settings.hpp"

#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace nutward::shop {

namespace {

struct LengthRow {
  std::string_view name;
  Length least, most; // both included
  Length& (*of)(LevelSettings&);
};
constexpr std::array lengths{
    LengthRow{"level_hand", Length{5'000}, level::most_epsilon,
              [](LevelSettings& s) -> Length& { return s.hand; }},
    LengthRow{"level_quick", Length{5'000}, level::most_epsilon,
              [](LevelSettings& s) -> Length& { return s.quick_hand; }},
    LengthRow{"level_called", Length{20'000}, Length{300'000},
              [](LevelSettings& s) -> Length& { return s.plan.called_level; }},
    LengthRow{"usual_bow", Length{50'000}, Length{1'000'000},
              [](LevelSettings& s) -> Length& { return s.limits.rarity.usual_bow; }},
};

// How rare something is: a number from `rarest_least` to `rarest`.
constexpr double rarest_least = 0.1, rarest = 20;
struct RarityRow {
  std::string_view name;
  double level::Rarity::*member;
};
constexpr std::array rarities{
    RarityRow{"rarity_high", &level::Rarity::high},
    RarityRow{"rarity_end_low", &level::Rarity::end_low},
    RarityRow{"rarity_low", &level::Rarity::low},
    RarityRow{"rarity_bow", &level::Rarity::bow},
    RarityRow{"rarity_barely", &level::Rarity::barely},
    RarityRow{"rarity_much_bow", &level::Rarity::much_bow},
};

constexpr std::string_view rocker = "level_rocker";
constexpr int rocker_least = 3, rocker_most = 12;

[[noreturn]] void refuse(std::string_view name, std::string_view text, std::string would_do) {
  throw Problem(Fault::value, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name),
                std::string(name), std::move(would_do));
}

std::optional<double> number_in(std::string_view text) {
  double v = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), v);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(v)) return std::nullopt;
  return v;
}

std::string kept_length(const LengthRow& row, std::string_view text) {
  try {
    const Length v = units::read_length(text, units::LengthUnit::mm);
    if (v >= row.least && v <= row.most) return units::print_exact_mm(v) + " mm";
  } catch (const units::BadQuantity& bad) {
    refuse(row.name, text, bad.would_do);
  }
  refuse(row.name, text,
         fmt::format("Give a length from {} to {} mm.", units::print_exact_mm(row.least),
                     units::print_exact_mm(row.most)));
}

std::string kept_rarity(std::string_view name, std::string_view text) {
  const auto v = number_in(text);
  if (!v || *v < rarest_least || *v > rarest)
    refuse(name, text,
           fmt::format("Give a number from {} (usual) to {} (hardly ever).", rarest_least, rarest));
  return fmt::format("{:.4g}", *v);
}

std::string kept_count(std::string_view name, std::string_view text) {
  const auto v = number_in(text);
  if (!v || *v != std::floor(*v) || *v < rocker_least || *v > rocker_most)
    refuse(name, text, fmt::format("Give a whole number from {} to {}.", rocker_least, rocker_most));
  return fmt::format("{}", static_cast<int>(*v));
}

} // namespace

std::optional<std::string> check_level_setting(std::string_view name, std::string_view text) {
  for (const LengthRow& row : lengths) {
    if (row.name == name) return kept_length(row, text);
  }
  for (const RarityRow& row : rarities) {
    if (row.name == name) return kept_rarity(name, text);
  }
  if (name == rocker) return kept_count(name, text);
  return std::nullopt;
}

LevelSettings level_settings(const View& view) {
  // The defaults are those of the table of settings, which a test holds against the bench's own.
  const auto kept = [&](std::string_view name) {
    if (auto v = view.house().setting(name)) return *v;
    const auto rows = setting_rows();
    return std::string(std::find_if(rows.begin(), rows.end(), [&](const SettingRow& r) {
                         return r.name == name;
                       })->otherwise);
  };
  LevelSettings out;
  for (const LengthRow& row : lengths)
    row.of(out) = units::read_length(kept(row.name), units::LengthUnit::mm);
  for (const RarityRow& row : rarities)
    out.limits.rarity.*row.member = number_in(kept(row.name)).value_or(1);
  out.plan.rocker = static_cast<int>(number_in(kept(rocker)).value_or(5));
  return out;
}

void check_level_settings(const View& view, std::string where) {
  const LevelSettings s = level_settings(view);
  if (static_cast<double>(s.plan.called_level.nm) >= called_of_hand * static_cast<double>(s.hand.nm)) return;
  throw Problem(
      Fault::value,
      fmt::format("With a hand that feels {} mm nothing could be called level to {} mm: a low fret "
                  "shows with about half its amount.",
                  units::print_exact_mm(s.hand), units::print_exact_mm(s.plan.called_level)),
      std::move(where),
      fmt::format("What may be called level is at least {} times what a hand feels.", called_of_hand));
}

} // namespace nutward::shop
