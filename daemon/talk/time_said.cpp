#include "talk/time_said.hpp"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>
#include <string_view>

namespace nutward::talk {
namespace {

using units::Day;

struct Amount {
  double n = 0;
  std::size_t end = 0;
};

// "90", "2.5", "1 1/2" (in words one token, in digits four), "3/4".
std::optional<Amount> amount(std::size_t i, const Reader& in) {
  std::string text;
  std::size_t end = i;
  for (; end < i + 4 && in.at(end) != nullptr; ++end) {
    const Token& t = *in.at(end);
    if (!t.is("/") && (!t.is_number() || t.ordinal)) break;
    if (end > i && !t.glued) text += ' ';
    text += t.is("/") ? t.word : t.number;
  }
  const char *at = text.data(), *const stop = at + text.size();
  const auto next = [&](auto& v) {
    const auto [behind, error] = std::from_chars(at, stop, v);
    at = behind;
    return error == std::errc{};
  };
  double sum = 0;
  int top = 0, bottom = 0;
  const bool fraction = text.find('/') != std::string::npos;
  if (!fraction || text.find(' ') != std::string::npos) {
    if (!next(sum) || (fraction && *at++ != ' ')) return std::nullopt;
  }
  if (fraction) {
    if (!next(top) || at == stop || *at++ != '/' || !next(bottom) || bottom == 0) return std::nullopt;
    sum += static_cast<double>(top) / bottom;
  }
  return at == stop ? std::optional{Amount{sum, end}} : std::nullopt;
}

int seconds_of_unit(std::size_t i, const Reader& in) {
  if (in.any(i, {"s", "sec", "secs", "second", "seconds"})) return 1;
  if (in.any(i, {"min", "mins", "minute", "minutes"})) return 60;
  if (in.any(i, {"h", "hr", "hrs", "hour", "hours"})) return 3600;
  return 0;
}

struct Span {
  std::int64_t s = 0;
  std::size_t end = 0;
  int unit = 0; // in seconds
};

// "an hour", "90 minutes", "1 1/2 hours", "an hour and a half".
std::optional<Span> term(std::size_t i, const Reader& in) {
  const auto n = in.any(i, {"a", "an"}) ? std::optional{Amount{1, i + 1}} : amount(i, in);
  const int unit = n ? seconds_of_unit(n->end, in) : 0;
  if (!n || n->n > 100'000 || unit == 0) return std::nullopt;
  Span out{std::llround(n->n * unit), n->end + 1, unit};
  if (in.is(out.end, "and") && in.is(out.end + 1, "a") && in.any(out.end + 2, {"half", "quarter"})) {
    out.s += unit / (in.is(out.end + 2, "half") ? 2 : 4);
    out.end += 3;
  }
  return out;
}

// One term, or hours with minutes; "half an hour".
std::optional<Span> span(std::size_t i, const Reader& in) {
  const std::size_t part = in.is(i, "a") ? i + 1 : i;
  const std::size_t of = in.is(part + 1, "of") ? part + 2 : part + 1;
  if (in.any(part, {"half", "quarter"}) && in.is(of, "an") && in.is(of + 1, "hour"))
    return Span{in.is(part, "half") ? 1800 : 900, of + 2};
  auto out = term(i, in);
  if (!out || out->unit != 3600) return out;
  if (const auto minutes = term(in.is(out->end, "and") ? out->end + 1 : out->end, in);
      minutes && minutes->unit == 60)
    out = Span{out->s + minutes->s, minutes->end};
  return out;
}

Day months_on(Day day, int months) {
  const auto ymd = day.ymd();
  const auto there = std::chrono::year_month{ymd.year(), ymd.month()} + std::chrono::months{months};
  const std::chrono::year_month_day last{there / std::chrono::last};
  return Day::from(there / std::min(ymd.day(), last.day()));
}

// Two numbers, one of which is the month.
std::optional<FoundDay> either_way(std::int64_t a, std::int64_t b, std::int64_t year, std::size_t end,
                                   const Reader& in) {
  if (a != b && a <= 12 && b <= 12) {
    if (!in.trouble.set())
      in.trouble = {fmt::format("{} and {}: which of them is the month?", a, b),
                    fmt::format("Write {0}-{1:02}-{2:02} or {0}-{2:02}-{1:02}.", year, a, b)};
    return std::nullopt;
  }
  return a <= 12 ? calendar_day(year, a, b, end, in) : calendar_day(year, b, a, end, in);
}

} // namespace

std::optional<SaidInstant> elapsed_at(std::size_t i, const Reader& in) {
  const bool ahead = in.is(i, "in");
  const auto said = span(ahead ? i + 1 : i, in);
  if (!said) return std::nullopt;
  const std::chrono::seconds s{said->s};
  if (ahead) return SaidInstant{in.now + s, said->end};
  if (in.any(said->end, {"ago", "back"})) return SaidInstant{in.now - s, said->end + 1};
  if (in.is(said->end, "from") && in.is(said->end + 1, "now")) return SaidInstant{in.now + s, said->end + 2};
  return std::nullopt;
}

std::optional<FoundDay> counted_day(std::size_t i, const Reader& in) {
  const bool ahead = in.is(i, "in");
  std::size_t at = ahead ? i + 1 : i;
  std::optional<std::int64_t> n;
  if (in.is(at, "a") && in.is(at + 1, "couple") && in.is(at + 2, "of"))
    n = 2, at += 2;
  else
    n = in.any(at, {"a", "an"}) ? 1 : whole(in.at(at));
  if (!n || *n > 5000) return std::nullopt;
  const int days = in.any(at + 1, {"day", "days"})               ? 1
                   : in.any(at + 1, {"week", "weeks"})           ? 7
                   : in.any(at + 1, {"fortnight", "fortnights"}) ? 14
                                                                 : 0;
  const int months = in.any(at + 1, {"month", "months"}) ? 1 : in.any(at + 1, {"year", "years"}) ? 12 : 0;
  const std::size_t end = at + 2;
  if ((days == 0 && months == 0) || (months > 0 && *n > 200)) return std::nullopt;
  const int many = static_cast<int>(*n);
  const auto there = [&](int sign, std::size_t stop) {
    const Day today = in.local().day;
    return FoundDay{days > 0 ? today + sign * many * days : months_on(today, sign * many * months), stop};
  };
  if (!ahead && in.any(end, {"ago", "back"})) return there(-1, end + 1);
  if (ahead) return there(1, end);
  if (in.is(end, "from") && in.any(end + 1, {"now", "today"})) return there(1, end + 2);
  return std::nullopt;
}

std::optional<FoundDay> date_in_digits(std::size_t i, const Reader& in) {
  const auto glued = [&](std::size_t from, std::size_t to, std::string_view mark) {
    for (std::size_t k = from; k < to; ++k) {
      if (in.at(k) == nullptr || (k > from && !in.at(k)->glued)) return false;
      if ((k - from) % 2 == 1 && !in.is(k, mark)) return false;
    }
    return true;
  };
  const auto in_year = [](std::int64_t y) { return y >= 1000 && y <= 9999; };
  const auto n = whole(in.at(i));
  if (n && in_year(*n) && ((in.is(i + 1, "-") && in.is(i + 3, "-")) || glued(i, i + 5, "/"))) {
    const auto m = whole(in.at(i + 2)), d = whole(in.at(i + 4));
    if (!m || !d || *m > 12 || *d > 31) return std::nullopt;
    return calendar_day(*n, *m, *d, i + 5, in);
  }
  if (n && glued(i, i + 5, "/")) {
    const auto b = whole(in.at(i + 2)), y = whole(in.at(i + 4));
    if (!b || !y || *n < 1 || *b < 1 || !in_year(*y)) return std::nullopt;
    return either_way(*n, *b, *y, i + 5, in);
  }
  // "25.12.2026": to the sentence "25.12" is a number. Without a dot in it `dot` is beyond.
  if (in.at(i) == nullptr || !glued(i, i + 3, ".")) return std::nullopt;
  const std::string& text = in.at(i)->number;
  const auto dot = text.find('.');
  const auto y = whole(in.at(i + 2));
  if (dot > 2 || text.size() > 5 || !y || !in_year(*y)) return std::nullopt;
  int a = 0, b = 0;
  std::from_chars(text.data(), text.data() + dot, a);
  std::from_chars(text.data() + dot + 1, text.data() + text.size(), b);
  return a < 1 || b < 1 ? std::nullopt : either_way(a, b, *y, i + 3, in);
}

std::optional<FoundDay> calendar_day(std::int64_t year, std::int64_t month, std::int64_t day, std::size_t end,
                                     const Reader& in) {
  const std::chrono::year_month_day ymd{std::chrono::year{static_cast<int>(year)},
                                        std::chrono::month{static_cast<unsigned>(month)},
                                        std::chrono::day{static_cast<unsigned>(day)}};
  if (ymd.ok()) return FoundDay{Day::from(ymd), end};
  if (!in.trouble.set())
    in.trouble = {"There is no such day in the calendar.", "Give a date such as 2026-12-12."};
  return std::nullopt;
}

} // namespace nutward::talk
