#include "units/read.hpp"
#include "units/read_unit.hpp"

#include <fmt/format.h>

namespace nutward::units {
namespace {

constexpr std::int64_t most_nm = 1'000'000'000'000'000;
constexpr std::int64_t most_mg = 1'000'000'000'000'000;
constexpr std::int64_t most_newtons = 1'000'000'000;
constexpr Scale pound_scale{45'359'237, 100};

// A number times a scale: whole + num/den, without its sign. Nothing is lost: a whole part is under 10^15, a
// scale's numerator under 10^15 and its denominator at most 10^13, a number's denominator at most 10^18, so
// every product stays under 10^34, and 128 bits hold 10^38.
struct Product {
  Wide whole, num, den;
};

Product scaled(const Number& n, Scale s) {
  const Wide all = Wide{n.whole} * s.num;
  Product p{all / s.den, (all % s.den) * n.den + Wide{n.num} * s.num, Wide{n.den} * s.den};
  p.whole += p.num / p.den;
  p.num %= p.den;
  return p;
}

// To the nearest whole unit, a half away from zero.
Wide rounded(const Product& p) {
  return p.whole + (2 * p.num >= p.den ? 1 : 0);
}

void bound(const Product& p, std::int64_t most, Kind kind, std::string_view limit) {
  if (p.whole > most || (p.whole == most && p.num != 0))
    refuse(fmt::format("This is {} beyond {}, which is more than can be taken.", name_of(kind), limit), 0,
           fmt::format("Give {} such as {}.", name_of(kind), example_of(kind)));
}

struct Quantity {
  Number number;
  Unit unit;
};

// `whole`: letters glued to the number are left over (and refused by the caller) instead of making it no
// quantity.
std::optional<Quantity> scan_quantity(std::string_view text, Kind kind, Scale bare, bool whole) {
  const auto number = scan_number(text, 0);
  if (!number) return std::nullopt;
  const Unit unit = scan_unit(text, *number, kind, bare);
  if (unit.found == Unit::Found::strange && !whole) return std::nullopt;
  return Quantity{*number, unit};
}

// Whether a mark or a word for inches may stand there; `1 ft 310 g` is a foot, and then something else.
bool may_be_inches(std::string_view text, std::size_t at) {
  const bool hyphen = at < text.size() && text[at] == '-';
  const auto word = lower_ascii(word_at(text, hyphen ? at + 1 : skip_spaces(text, at)));
  return word.empty() || word == "in" || word == "inch" || word == "inches";
}

// The inches behind feet, `1' 3 1/2"` or `1 ft 3 in`, from byte `at`.
std::optional<Quantity> inches_behind_feet(std::string_view text, std::size_t at, Scale bare) {
  const std::size_t next = skip_spaces(text, at);
  const bool sign = next < text.size() && (text[next] == '-' || text[next] == '+');
  const auto number = sign && next != at ? std::nullopt : scan_number(text, sign ? next + 1 : next);
  if (number && (next == at || may_be_inches(text, number->end))) {
    const Unit unit = scan_unit(text, *number, Kind::length, bare);
    const bool inches = unit.found == Unit::Found::unit && unit.scale == inch_scale;
    if (inches && !number->negative) return Quantity{*number, unit};
  }
  if (next == at && number && !sign)
    refuse(fmt::format("{} may be feet and inches, or one number with its thousands marked.", quoted(text)),
           at, "Write the inches with their mark, as in 1' 3\", and a thousand without one.");
  return std::nullopt;
}

Scale scale_of(LengthUnit unit) {
  switch (unit) {
  case LengthUnit::mm:
    return {1'000'000};
  case LengthUnit::cm:
    return {10'000'000};
  case LengthUnit::m:
    return {1'000'000'000};
  case LengthUnit::in:
    return inch_scale;
  case LengthUnit::ft:
    break;
  }
  return foot_scale;
}

Scale scale_of(ForceUnit unit) {
  switch (unit) {
  case ForceUnit::n:
    return {1};
  case ForceUnit::kn:
    return {1000};
  case ForceUnit::lbf:
    return {44'482'216'152'605, 10'000'000'000'000};
  case ForceUnit::kgf:
    break;
  }
  return {980'665, 100'000};
}

Scale scale_of(MassUnit unit) {
  switch (unit) {
  case MassUnit::mg:
    return {1};
  case MassUnit::g:
    return {1000};
  case MassUnit::kg:
    return {1'000'000};
  case MassUnit::oz:
    return {45'359'237, 1600};
  case MassUnit::lb:
    break;
  }
  return pound_scale;
}

std::optional<Scanned<Length>> length_at(std::string_view text, LengthUnit bare, bool whole) {
  const Scale scale = scale_of(bare);
  const auto q = scan_quantity(text, Kind::length, scale, whole);
  if (!q) return std::nullopt;
  const Product p = scaled(q->number, q->unit.scale);
  bound(p, most_nm, Kind::length, "a thousand kilometres");
  Wide nm = rounded(p);
  std::size_t end = q->unit.end;
  const bool said = q->unit.found == Unit::Found::unit;
  if (said && q->unit.scale == foot_scale && q->number.num == 0) {
    if (const auto inches = inches_behind_feet(text, end, scale)) {
      const Product more = scaled(inches->number, inch_scale);
      bound(more, most_nm - static_cast<std::int64_t>(nm), Kind::length, "a thousand kilometres");
      nm += rounded(more);
      end = inches->unit.end;
    }
  }
  const auto value = static_cast<std::int64_t>(nm);
  return Scanned<Length>{{q->number.negative ? -value : value}, end, said};
}

std::optional<Scanned<Force>> force_at(std::string_view text, ForceUnit bare, bool whole) {
  const auto q = scan_quantity(text, Kind::force, scale_of(bare), whole);
  if (!q) return std::nullopt;
  const Product p = scaled(q->number, q->unit.scale);
  bound(p, most_newtons, Kind::force, "a million kilonewtons");
  const auto n = static_cast<double>(static_cast<long double>(p.whole) +
                                     static_cast<long double>(p.num) / static_cast<long double>(p.den));
  const bool minus = q->number.negative && n != 0; // -0 is 0
  return Scanned<Force>{{minus ? -n : n}, q->unit.end, q->unit.found == Unit::Found::unit};
}

// The ounces behind pounds, `2 lb 3 oz`, from byte `at`.
std::optional<Quantity> ounces_behind_pounds(std::string_view text, std::size_t at) {
  const auto number = scan_number(text, at);
  if (!number || number->negative) return std::nullopt;
  const auto word = lower_ascii(word_at(text, skip_spaces(text, number->end)));
  if (word != "oz" && word != "ounce" && word != "ounces") return std::nullopt;
  return Quantity{*number, scan_unit(text, *number, Kind::mass, pound_scale)};
}

std::optional<Scanned<Mass>> mass_at(std::string_view text, MassUnit bare, bool whole) {
  const auto q = scan_quantity(text, Kind::mass, scale_of(bare), whole);
  if (!q) return std::nullopt;
  const Product p = scaled(q->number, q->unit.scale);
  constexpr std::string_view limit = "a million tonnes";
  bound(p, most_mg, Kind::mass, limit);
  auto mg = static_cast<std::int64_t>(rounded(p));
  std::size_t end = q->unit.end;
  const bool said = q->unit.found == Unit::Found::unit;
  if (said && q->unit.scale == pound_scale && q->number.num == 0) {
    if (const auto ounces = ounces_behind_pounds(text, end)) {
      const Product more = scaled(ounces->number, ounces->unit.scale);
      bound(more, most_mg - mg, Kind::mass, limit);
      // Rounded once: whole pounds have a denominator of 100, ounces one under 10^22.
      const Product pounds = scaled(Number{.whole = q->number.whole}, pound_scale);
      const Product sum{pounds.whole + more.whole, pounds.num * more.den + more.num * pounds.den,
                        pounds.den * more.den};
      mg =
          static_cast<std::int64_t>(sum.whole + sum.num / sum.den + rounded({0, sum.num % sum.den, sum.den}));
      end = ounces->unit.end;
    }
  }
  return Scanned<Mass>{{q->number.negative ? -mg : mg}, end, said};
}

[[noreturn]] void refuse_no_number(std::string_view text, Kind kind) {
  const std::size_t at = skip_spaces(text, 0);
  const auto remedy = fmt::format("Give {} such as {}.", name_of(kind), example_of(kind));
  if (at == text.size())
    refuse(fmt::format("There is nothing where {} is wanted.", name_of(kind)), at, remedy);
  refuse(fmt::format("{} is not a number.", quoted(text.substr(at))), at, remedy);
}

template <class T>
T whole_of(const std::optional<Scanned<T>>& scanned, std::string_view text, Kind kind) {
  if (!scanned) refuse_no_number(text, kind);
  const std::size_t rest = skip_spaces(text, scanned->bytes);
  if (rest == text.size()) return scanned->value;
  const auto remedy = fmt::format("Give {} such as {}, and nothing else.", name_of(kind), example_of(kind));
  const auto word = word_at(text, rest);
  if (!scanned->unit_said && !word.empty() && !is_digit(static_cast<unsigned char>(word[0])))
    refuse(fmt::format("{} is not a unit of {}.", quoted(word), name_of(kind).substr(2)), rest, remedy);
  refuse(fmt::format("{} is left over behind {}.", quoted(text.substr(rest)), name_of(kind)), rest, remedy);
}

} // namespace

std::optional<Scanned<Length>> scan_length(std::string_view text, LengthUnit bare) {
  return length_at(text, bare, false);
}
std::optional<Scanned<Force>> scan_force(std::string_view text, ForceUnit bare) {
  return force_at(text, bare, false);
}
std::optional<Scanned<Mass>> scan_mass(std::string_view text, MassUnit bare) {
  return mass_at(text, bare, false);
}

Length read_length(std::string_view text, LengthUnit bare) {
  return whole_of(length_at(text, bare, true), text, Kind::length);
}

Force read_force(std::string_view text, ForceUnit bare) {
  return whole_of(force_at(text, bare, true), text, Kind::force);
}

Mass read_mass(std::string_view text, MassUnit bare) {
  return whole_of(mass_at(text, bare, true), text, Kind::mass);
}

Money read_money(std::string_view text) {
  constexpr std::int64_t most_minor = 1'000'000'000'000'000;
  const std::string remedy = "Give an amount such as 12.50, without the sign of a currency.";
  const auto n = scan_number(text, 0);
  if (!n) refuse(fmt::format("{} is not an amount of money.", quoted(text)), 0, remedy);
  if (const std::size_t rest = skip_spaces(text, n->end); rest != text.size())
    refuse(fmt::format("{} is left over behind the amount.", quoted(text.substr(rest))), rest, remedy);
  if (n->fraction)
    refuse(fmt::format("{} is not an amount of money: fractions are not taken.", quoted(text)), 0, remedy);
  const Product p = scaled(*n, {100});
  if (p.num != 0) refuse(fmt::format("{} is finer than a hundredth.", quoted(text)), 0, remedy);
  if (p.whole > most_minor)
    refuse(fmt::format("{} is more than can be reckoned with.", quoted(text)), 0, remedy);
  const auto minor = static_cast<std::int64_t>(p.whole);
  return {n->negative ? -minor : minor};
}

} // namespace nutward::units
