#include "units/print.hpp"
#include "units/read_number.hpp"

#include <fmt/format.h>

#include <cmath>

namespace nutward::units {
namespace {

// How a unit is printed: one of it is num/den nanometres or milligrams; digits behind the point, at least and
// at most.
struct Style {
  std::string_view name;
  std::int64_t num, den;
  int least, most;
};

Style style_of(LengthUnit unit) {
  switch (unit) {
  case LengthUnit::mm:
    return {"mm", 1'000'000, 1, 2, 2};
  case LengthUnit::cm:
    return {"cm", 10'000'000, 1, 1, 3};
  case LengthUnit::m:
    return {"m", 1'000'000'000, 1, 2, 5};
  case LengthUnit::in:
    return {"in", 25'400'000, 1, 3, 3};
  case LengthUnit::ft:
    break;
  }
  return {"ft", 304'800'000, 1, 2, 4};
}

Style style_of(MassUnit unit) {
  switch (unit) {
  case MassUnit::mg:
    return {"mg", 1, 1, 0, 0};
  case MassUnit::g:
    return {"g", 1'000, 1, 0, 3};
  case MassUnit::kg:
    return {"kg", 1'000'000, 1, 3, 6};
  case MassUnit::oz:
    return {"oz", 45'359'237, 1600, 2, 2};
  case MassUnit::lb:
    break;
  }
  return {"lb", 45'359'237, 100, 3, 3};
}

// `value` in the unit, to `style.most` digits (a half away from zero), zeros beyond `least` dropped. Never
// "-0".
std::string decimal(std::int64_t value, const Style& style, int least) {
  std::int64_t power = 1;
  for (int i = 0; i < style.most; ++i)
    power *= 10;
  const Wide size = value < 0 ? -Wide{value} : Wide{value};
  const auto steps =
      static_cast<std::uint64_t>((2 * size * style.den * power + style.num) / (2 * Wide{style.num}));
  const auto unit = static_cast<std::uint64_t>(power);
  std::string out = fmt::format("{}{}", value < 0 && steps != 0 ? "-" : "", steps / unit);
  if (style.most == 0) return out;
  out += fmt::format(".{:0{}}", steps % unit, style.most);
  for (int digits = style.most; digits > least && out.back() == '0'; --digits)
    out.pop_back();
  if (out.back() == '.') out.pop_back();
  return out;
}

// The digits behind the point that a gauge's division needs: 0 for 10, 1 for 0.5, 2 for 0.25.
int digits_of(double division) {
  int digits = 0;
  for (double scaled = division; digits < 6 && std::fabs(scaled - std::round(scaled)) > 1e-6 * scaled;
       scaled *= 10)
    ++digits;
  return digits;
}

} // namespace

std::string print(Length v, LengthUnit unit) {
  const Style style = style_of(unit);
  return fmt::format("{} {}", decimal(v.nm, style, style.least), style.name);
}

std::string print_plain(Length v, LengthUnit unit) {
  return decimal(v.nm, style_of(unit), 0);
}

std::string print_exact_mm(Length v) {
  return decimal(v.nm, {"mm", 1'000'000, 1, 0, 6}, 0);
}

std::string print_fraction(Length v) {
  constexpr std::int64_t step = 396'875; // 1/64 in
  const Wide size = v.nm < 0 ? -Wide{v.nm} : Wide{v.nm};
  const auto steps = static_cast<std::int64_t>((2 * size + step) / (2 * step));
  const auto over = static_cast<std::int64_t>(size - Wide{steps} * step);
  std::int64_t num = steps % 64, den = 64;
  for (; num != 0 && num % 2 == 0; den /= 2)
    num /= 2;
  const bool minus = v.nm < 0;
  std::string out = minus && steps != 0 ? "-" : "";
  if (steps / 64 != 0 || num == 0) out += fmt::format("{}{}", steps / 64, num == 0 ? "" : " ");
  if (num != 0) out += fmt::format("{}/{}", num, den);
  out += " in";
  if (over == 0) return out;
  // Where 0.01 mm would show nothing, the nanometres do: "+0.00 mm" would look exact.
  const Length rest{over < 0 ? -over : over};
  const bool seen = rest.nm >= 5'000;
  return fmt::format("{} ({}{} mm)", out, (over < 0) != minus ? "−" : "+",
                     seen ? decimal(rest.nm, style_of(LengthUnit::mm), 2) : print_exact_mm(rest));
}

double newtons_in(ForceUnit unit) {
  if (unit == ForceUnit::kn) return 1000;
  if (unit == ForceUnit::lbf) return newtons_per_lbf;
  return unit == ForceUnit::kgf ? 9.80665 : 1;
}

std::string_view name_of(ForceUnit unit) {
  if (unit == ForceUnit::kn) return "kN";
  if (unit == ForceUnit::lbf) return "lb";
  return unit == ForceUnit::kgf ? "kgf" : "N";
}

std::string print(Force v, ForceUnit unit, double division) {
  const double step = std::isfinite(division) && division > 0 ? division : 1;
  const double shown = std::round(v.n / newtons_in(unit) / step) * step;
  return fmt::format("{:.{}f} {}", shown == 0 ? 0.0 : shown, digits_of(step), name_of(unit));
}

namespace {
// Where three digits behind the point hold all of it.
std::optional<std::string> exactly(Force v, ForceUnit unit) {
  const double value = v.n / newtons_in(unit);
  const double rounded = std::round(value * 1000) / 1000;
  if (std::fabs(rounded - value) > 1e-9 * std::fabs(value)) return std::nullopt;
  return fmt::format("{} {}", fmt::format("{:.{}f}", rounded, digits_of(rounded)), name_of(unit));
}
} // namespace

std::optional<std::string> print_exact(Force v, ForceUnit unit) {
  auto out = exactly(v, unit);
  if (out) return out;
  for (ForceUnit other : {ForceUnit::kn, ForceUnit::n, ForceUnit::lbf, ForceUnit::kgf}) {
    const auto said = exactly(v, other);
    if (said && (!out || said->size() < out->size())) out = said;
  }
  return out;
}

std::string print(Mass v, MassUnit unit) {
  const Style style = style_of(unit);
  return fmt::format("{} {}", decimal(v.mg, style, style.least), style.name);
}

std::string print(Money v, std::string_view currency) {
  return fmt::format("{} {}", decimal(v.minor, {"", 100, 1, 2, 2}, 2), currency);
}

// Beyond the years 0 to 9999, which RFC 3339 cannot write, the seconds themselves: "@253402300800".
std::string print_utc(Instant v) {
  if (v.s < -62'167'219'200 || v.s > 253'402'300'799) return fmt::format("@{}", v.s);
  std::int64_t days = v.s / 86'400, rest = v.s % 86'400;
  if (rest < 0) --days, rest += 86'400;
  return fmt::format("{}T{:02}:{:02}:{:02}Z", print(Day{static_cast<std::int32_t>(days)}), rest / 3600,
                     rest / 60 % 60, rest % 60);
}

// Beyond the years 0 to 9999, the count of days: "@2932897d".
std::string print(Day v) {
  if (v.days < -719'528 || v.days > 2'932'896) return fmt::format("@{}d", v.days);
  const auto date = v.ymd();
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                     static_cast<unsigned>(date.day()));
}

} // namespace nutward::units
