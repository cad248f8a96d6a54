#include "units/read.hpp"
#include "units/read_number.hpp"

#include <fmt/format.h>

namespace nutward::units {
namespace {

constexpr std::string_view instant_remedy =
    "Give a time with its zone, such as 2026-12-12T08:30:00Z or 2026-12-12T09:30:00+01:00.";
constexpr std::string_view day_remedy = "Give a date as year-month-day, such as 2026-12-12.";

// Reads a text of fixed places: digits and marks, one after the other.
class Places {
public:
  Places(std::string_view text, std::string_view what, std::string_view remedy)
      : text_(text), what_(what), remedy_(remedy) {}

  int digits(int count) {
    int value = 0;
    for (int i = 0; i < count; ++i, ++at_) {
      const char c = peek();
      if (!is_digit(static_cast<unsigned char>(c))) fail();
      value = value * 10 + (c - '0');
    }
    return value;
  }
  // Takes one of `marks` and returns it.
  char mark(std::string_view marks) {
    const char c = peek();
    if (at_ >= text_.size() || marks.find(c) == std::string_view::npos) fail();
    ++at_;
    return c;
  }
  char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
  std::size_t at() const { return at_; }
  void end() const {
    if (at_ != text_.size()) fail();
  }
  [[noreturn]] void fail() const { fail(fmt::format("{} is not {}.", quoted(text_), what_)); }
  [[noreturn]] void fail(const std::string& why) const { refuse(why, at_, std::string{remedy_}); }

private:
  std::string_view text_, what_, remedy_;
  std::size_t at_ = 0;
};

Day take_day(Places& p) {
  const int year = p.digits(4);
  p.mark("-");
  const int month = p.digits(2);
  p.mark("-");
  const int day = p.digits(2);
  const std::chrono::year_month_day date{std::chrono::year{year},
                                         std::chrono::month{static_cast<unsigned>(month)},
                                         std::chrono::day{static_cast<unsigned>(day)}};
  if (!date.ok()) p.fail(fmt::format("There is no day {:04}-{:02}-{:02}.", year, month, day));
  return Day::from(date);
}

// Seconds that local time is ahead of UTC.
std::int64_t take_offset(Places& p) {
  const char sign = p.mark("Zz+-");
  if (sign == 'Z' || sign == 'z') return 0;
  const int hours = p.digits(2);
  p.mark(":");
  const int minutes = p.digits(2);
  if (hours > 23 || minutes > 59)
    p.fail(fmt::format("There is no offset of {:02}:{:02} from UTC.", hours, minutes));
  const std::int64_t s = hours * 3600 + minutes * 60;
  return sign == '-' ? -s : s;
}

std::int64_t take_time_of_day(Places& p) {
  const int hour = p.digits(2);
  p.mark(":");
  const int minute = p.digits(2);
  p.mark(":");
  const int second = p.digits(2);
  if (hour == 23 && minute == 59 && second == 60) p.fail("Leap seconds are not counted here.");
  if (hour > 23 || minute > 59 || second > 59)
    p.fail(fmt::format("There is no time {:02}:{:02}:{:02}.", hour, minute, second));
  if (p.peek() == '.') p.fail("Fractions of a second are not kept.");
  return hour * 3600 + minute * 60 + second;
}

} // namespace

Instant read_instant(std::string_view text) {
  Places p(text, "a time in the form of RFC 3339", instant_remedy);
  const std::int64_t day = take_day(p).days;
  p.mark("Tt");
  const std::int64_t time = take_time_of_day(p);
  const std::int64_t offset = take_offset(p);
  p.end();
  const Instant at{day * 86'400 + time - offset};
  constexpr Instant first{-62'167'219'200},
      last{253'402'300'799}; // 0000-01-01T00:00:00Z to 9999-12-31T23:59:59Z
  if (at < first || at > last)
    p.fail(fmt::format("{} lies outside the years 0 to 9999 in UTC.", quoted(text)));
  return at;
}

Day read_day(std::string_view text) {
  Places p(text, "a date", day_remedy);
  const Day day = take_day(p);
  p.end();
  return day;
}

} // namespace nutward::units
