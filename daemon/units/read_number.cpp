#include "units/read_number.hpp"

#include "units/print.hpp"
#include "units/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::units {
namespace {

constexpr std::size_t most_whole_digits = 15;
constexpr std::size_t most_decimals = 18;
constexpr std::size_t most_fraction_digits = 9;

struct Vulgar {
  char32_t code;
  int num, den;
};
constexpr std::array vulgars{
    Vulgar{U'¼', 1, 4},  Vulgar{U'½', 1, 2}, Vulgar{U'¾', 3, 4}, Vulgar{U'⅐', 1, 7}, Vulgar{U'⅑', 1, 9},
    Vulgar{U'⅒', 1, 10}, Vulgar{U'⅓', 1, 3}, Vulgar{U'⅔', 2, 3}, Vulgar{U'⅕', 1, 5}, Vulgar{U'⅖', 2, 5},
    Vulgar{U'⅗', 3, 5},  Vulgar{U'⅘', 4, 5}, Vulgar{U'⅙', 1, 6}, Vulgar{U'⅚', 5, 6}, Vulgar{U'⅛', 1, 8},
    Vulgar{U'⅜', 3, 8},  Vulgar{U'⅝', 5, 8}, Vulgar{U'⅞', 7, 8},
};

const Vulgar* vulgar_of(char32_t code) {
  const auto* found =
      std::find_if(vulgars.begin(), vulgars.end(), [&](const Vulgar& v) { return v.code == code; });
  return found == vulgars.end() ? nullptr : found;
}

std::string_view digits_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  while (end < text.size() && is_digit(static_cast<unsigned char>(text[end])))
    ++end;
  return at < text.size() ? text.substr(at, end - at) : std::string_view{};
}

bool digit_at(std::string_view text, std::size_t at) {
  return !digits_at(text, at).empty();
}

// The value of at most 18 digits.
std::int64_t value_of(std::string_view digits) {
  std::int64_t value = 0;
  for (const char c : digits)
    value = value * 10 + (c - '0');
  return value;
}

std::string_view without_leading_zeros(std::string_view digits) {
  digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
  return digits;
}

void set_whole(Number& n, std::string_view digits, std::size_t at) {
  const auto significant = without_leading_zeros(digits);
  if (significant.size() > most_whole_digits)
    refuse(fmt::format("The number {} is larger than anything at a bench.", quoted(digits)), at,
           "Give a number of fewer digits, with its unit, such as 52.4 mm.");
  n.whole = value_of(significant);
}

void set_decimals(Number& n, std::string_view digits, std::size_t at) {
  n.decimals = true;
  const auto last = digits.find_last_not_of('0');
  const auto significant = last == std::string_view::npos ? std::string_view{} : digits.substr(0, last + 1);
  if (significant.size() > most_decimals)
    refuse(
        fmt::format("The number has {} digits behind its point, more than can be kept.", significant.size()),
        at, "Give at most 18 digits behind the point.");
  n.num = value_of(significant);
  for (std::size_t i = 0; i < significant.size(); ++i)
    n.den *= 10;
}

// The length of a fraction's stroke at `at` (`/` or the fraction slash), 0 if there is none with a digit
// behind it.
std::size_t stroke_at(std::string_view text, std::size_t at) {
  const auto c = utf8_at(text, at);
  return (c.code == U'/' || c.code == U'\u2044') && c.ok && digit_at(text, at + c.bytes) ? c.bytes : 0;
}

struct Fraction {
  std::int64_t num, den;
  std::size_t end;
};

// `3/4` or `¾` at exactly `at`.
std::optional<Fraction> fraction_at(std::string_view text, std::size_t at) {
  const auto c = utf8_at(text, at);
  if (const Vulgar* v = c.ok ? vulgar_of(c.code) : nullptr) return Fraction{v->num, v->den, at + c.bytes};
  const auto over = digits_at(text, at);
  const std::size_t stroke = over.empty() ? 0 : stroke_at(text, at + over.size());
  if (stroke == 0) return std::nullopt;
  const std::size_t below = at + over.size() + stroke;
  const auto under = digits_at(text, below);
  const std::size_t end = below + under.size();
  if (std::max(over.size(), under.size()) > most_fraction_digits)
    refuse(fmt::format("The fraction {} has too many digits.", quoted(text.substr(at, end - at))), at,
           "Give a fraction such as 1/16, or a decimal such as 0.0625.");
  if (value_of(under) == 0)
    refuse(fmt::format("The fraction {} divides by nothing.", quoted(text.substr(at, end - at))), below,
           "Give a fraction such as 1/16.");
  if (stroke_at(text, end) != 0)
    refuse(fmt::format("{} is neither a fraction nor a date that can be taken.", quoted(text.substr(at))),
           end, "Give a fraction such as 1/16, or a date such as 2026-12-12.");
  if (end < text.size() && text[end] == '.' && digit_at(text, end + 1))
    refuse(fmt::format("{} mixes a fraction with a decimal point.", quoted(text.substr(at))), end,
           "Give a fraction such as 1/16, or a decimal such as 0.0625.");
  return Fraction{value_of(over), value_of(under), end};
}

// The fraction of a mixed number, where the whole part ends at `at`: `1¾`, `1 3/4`, `1-3/4`.
std::optional<Fraction> mixed_part_at(std::string_view text, std::size_t at) {
  if (at < text.size() && text[at] == '-') return fraction_at(text, at + 1);
  if (digit_at(text, at)) return std::nullopt;
  return fraction_at(text, skip_spaces(text, at));
}

// Marks between digits that mean a thousand in one country and something else in the next are asked about.
void ask_about_grouping(std::string_view text, std::size_t begin, const Number& n) {
  const auto mark = utf8_at(text, n.end);
  const std::size_t next = n.end + mark.bytes;
  const auto group = digits_at(text, next);
  if (group.empty()) return;
  const auto head = text.substr(begin, n.end - begin);
  const auto all = text.substr(begin, next + group.size() - begin);
  if (mark.code == U',') {
    const auto thousands =
        group.size() == 3 ? fmt::format(", {}{} with its thousands marked,", head, group) : std::string{};
    refuse(fmt::format("{} may be {}.{} with a decimal comma{} or two numbers.", quoted(all), head, group,
                       thousands),
           n.end,
           "Use a point for decimals and no mark for thousands, and a blank after a comma between numbers.");
  }
  const bool space = mark.code == U'\u00a0' || mark.code == U'\u2009' || mark.code == U'\u202f';
  if (space && group.size() == 3 && !n.fraction)
    refuse(fmt::format("{} may be one number with its thousands marked, or two numbers.", quoted(all)), n.end,
           "Write a thousand without a mark, such as 1250.");
}

void refuse_computer_forms(std::string_view text, std::size_t begin, std::size_t end) {
  const auto at = [&](std::size_t i) { return i < text.size() ? text[i] : '\0'; };
  const char c = at(end);
  const bool sign = at(end + 1) == '+' || at(end + 1) == '-';
  if ((c == 'e' || c == 'E') && digit_at(text, end + (sign ? 2 : 1)))
    refuse(fmt::format("{} is written with a power of ten, which is not taken.", quoted(text.substr(begin))),
           end, "Write the number out, such as 1250 or 0.05.");
  const bool hexadecimal =
      at(begin) == '0' && end == begin + 1 && (c == 'x' || c == 'X') &&
      std::string_view("0123456789abcdefABCDEF").find(at(end + 1)) != std::string_view::npos;
  if (hexadecimal)
    refuse(fmt::format("{} is written in hexadecimal, which is not taken.", quoted(text.substr(begin))),
           begin, "Write the number in decimal, such as 31.");
  if (c == '.' && digit_at(text, end + 1) &&
      text.substr(begin, end - begin).find('.') != std::string_view::npos)
    refuse(fmt::format("{} has two decimal points.", quoted(text.substr(begin))), end,
           "Give a number with one decimal point, such as 52.4.");
}

// Digits with or without decimals, and what may make them a mixed number. `at` stands on a digit or a point.
void scan_digits(Number& n, std::string_view text, std::size_t at) {
  const auto whole = digits_at(text, at);
  set_whole(n, whole, at);
  n.end = at + whole.size();
  if (n.end < text.size() && text[n.end] == '.' && digit_at(text, n.end + 1)) {
    const auto decimals = digits_at(text, n.end + 1);
    set_decimals(n, decimals, n.end + 1);
    n.end += 1 + decimals.size();
  }
  refuse_computer_forms(text, at, n.end);
  if (n.decimals) return;
  const auto part = mixed_part_at(text, n.end);
  if (!part) return;
  if (part->num >= part->den)
    refuse(fmt::format("The fraction in {} is not under one.", quoted(text.substr(at, part->end - at))),
           n.end, "Give a mixed number such as 2 1/16.");
  n.fraction = true;
  n.num = part->num;
  n.den = part->den;
  n.end = part->end;
}

} // namespace

void refuse(const std::string& what, std::size_t at, std::string would_do) {
  throw BadQuantity(what, at, std::move(would_do));
}

std::string quoted(std::string_view text) {
  constexpr std::size_t most = 40;
  std::size_t end = 0;
  while (end < text.size() && end + utf8_at(text, end).bytes <= most)
    end += utf8_at(text, end).bytes;
  return "“" + escape_for_print(text.substr(0, end)) + (end < text.size() ? "…”" : "”");
}

std::size_t skip_spaces(std::string_view text, std::size_t at) {
  for (;;) {
    const auto c = utf8_at(text, at);
    const bool space = c.ok && (c.code == U' ' || c.code == U'\t' || c.code == U'\u00a0' ||
                                c.code == U'\u2009' || c.code == U'\u202f');
    if (!space) return std::min(at, text.size());
    at += c.bytes;
  }
}

bool is_word(char32_t c) {
  if (c < 0x80) return is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_';
  const bool latin_sign = (c <= U'\u00bf' && c != U'\u00b5') || c == U'×' || c == U'÷';
  const bool punctuation = c >= U'\u2000' && c <= U'\u206f';
  return !latin_sign && !punctuation;
}

std::string_view word_at(std::string_view text, std::size_t at) {
  std::size_t end = at;
  for (auto c = utf8_at(text, end); c.bytes != 0 && c.ok && is_word(c.code); c = utf8_at(text, end))
    end += c.bytes;
  return at < text.size() ? text.substr(at, end - at) : std::string_view{};
}

std::string lower_ascii(std::string_view text) {
  std::string out{text};
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

std::optional<Number> scan_number(std::string_view text, std::size_t at) {
  Number n;
  at = skip_spaces(text, at);
  const auto sign = utf8_at(text, at);
  if (sign.ok && (sign.code == U'-' || sign.code == U'+' || sign.code == U'\u2212')) {
    n.negative = sign.code != U'+';
    at += sign.bytes;
  }
  const bool point = at < text.size() && text[at] == '.' && digit_at(text, at + 1);
  if (const auto fraction = point ? std::nullopt : fraction_at(text, at)) {
    n.fraction = true;
    n.whole = fraction->num / fraction->den;
    n.num = fraction->num % fraction->den;
    n.den = fraction->den;
    n.end = fraction->end;
  } else if (point || digit_at(text, at)) {
    scan_digits(n, text, at);
  } else {
    return std::nullopt;
  }
  ask_about_grouping(text, at, n);
  return n;
}

} // namespace nutward::units
