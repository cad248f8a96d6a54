#include "shop/supply_settings.hpp"

#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace nutward::shop {

namespace {

[[noreturn]] void refuse(std::string_view name, std::string_view text, std::string would_do) {
  throw Problem(Fault::value, fmt::format("'{}' will not do for {}.", text.substr(0, 40), name),
                std::string(name), std::move(would_do));
}

std::string_view trimmed(std::string_view text) {
  while (text.ends_with(' '))
    text.remove_suffix(1);
  while (text.starts_with(' '))
    text.remove_prefix(1);
  return text;
}

std::optional<double> number_in(std::string_view text) {
  double v = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), v);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(v)) return std::nullopt;
  return v;
}

double between(std::string_view name, std::string_view text, double least, double most, const char* what) {
  const auto v = number_in(trimmed(text));
  if (!v || *v < least || *v > most)
    refuse(name, text, fmt::format("Give {} from {:g} to {:g}.", what, least, most));
  return *v;
}

// "98", "98 %" and "0.98" are the same; in percent, both ends included.
double percent_between(std::string_view name, std::string_view text, double least, double most) {
  std::string_view digits = trimmed(text);
  const bool percent = digits.ends_with('%');
  if (percent) digits = trimmed(digits.substr(0, digits.size() - 1));
  auto v = number_in(digits);
  if (v && !percent && *v < 1) v = *v * 100;
  if (!v || *v < least || *v > most)
    refuse(name, text, fmt::format("Give it in percent, from {:g} % to {:g} %.", least, most));
  return *v;
}

std::string kept_money(std::string_view name, std::string_view text) {
  try {
    const units::Money v = units::read_money(trimmed(text));
    if (v.minor > 0 && v.minor <= 100'000'000) return fmt::format("{}.{:02}", v.minor / 100, v.minor % 100);
  } catch (const units::BadQuantity& bad) {
    refuse(name, text, bad.would_do);
  }
  refuse(name, text, "Give an amount of money over 0, such as 12.50, or none.");
}

struct WholeRow {
  std::string_view name;
  int least, most;
};
constexpr std::array wholes{
    WholeRow{"supply_review", 0, 60},
    WholeRow{"supply_lead", 0, 364},
    WholeRow{"supply_again", 1, 60},
};

} // namespace

std::optional<std::string> check_supply_setting(std::string_view name, std::string_view text) {
  for (const WholeRow& row : wholes) {
    if (row.name != name) continue;
    const double v = between(name, text, row.least, row.most, "a whole number of days");
    if (v != std::floor(v)) refuse(name, text, "Give a whole number of days.");
    return fmt::format("{}", static_cast<int>(v));
  }
  if (name == "supply_service") return fmt::format("{:.5g} %", percent_between(name, text, 60, 99.99));
  if (name == "supply_further") return fmt::format("{:.4g}", between(name, text, 0, 500, "refrets"));
  if (name == "supply_guess") return fmt::format("{:.4g}", between(name, text, 0, 100, "refrets a week"));
  if (name == "supply_holding")
    return trimmed(text) == "none" ? "none" : fmt::format("{:.4g} %", percent_between(name, text, 0.1, 200));
  if (name == "supply_order_cost") return trimmed(text) == "none" ? "none" : kept_money(name, text);
  return std::nullopt;
}

SupplySettings supply_settings(const View& view) {
  const auto kept = [&](std::string_view name) {
    if (auto v = view.house().setting(name)) return *v;
    const auto rows = setting_rows();
    const auto at =
        std::find_if(rows.begin(), rows.end(), [&](const SettingRow& r) { return r.name == name; });
    return std::string(at->otherwise);
  };
  const auto share = [](const std::string& text) { return std::stod(text) / 100; };
  SupplySettings out;
  out.service = share(kept("supply_service"));
  out.further = std::stod(kept("supply_further"));
  out.review_days = std::stoi(kept("supply_review"));
  out.lead_days = std::stoi(kept("supply_lead"));
  out.guess = std::stod(kept("supply_guess"));
  out.again_days = std::stoi(kept("supply_again"));
  if (const auto v = kept("supply_holding"); v != "none") out.holding = share(v);
  if (const auto v = kept("supply_order_cost"); v != "none") out.order = units::read_money(v);
  return out;
}

} // namespace nutward::shop
