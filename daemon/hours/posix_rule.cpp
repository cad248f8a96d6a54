#include "hours/posix_rule.hpp"

#include <algorithm>
#include <cctype>
#include <fmt/core.h>

namespace nutward::hours {

using units::Day;
using units::Instant;

namespace {

// One date of the year: Mm.w.d (w 5 is the last), Jn (1..365, 29 February never counted), n (0..365).
struct YearDay {
  char kind = 'M';
  int month = 0, week = 0, weekday = 0, n = 0;
  std::int32_t time_s = 7'200;
};

class Reader {
public:
  explicit Reader(std::string_view text) : text_(text) {}

  bool done() const { return at_ == text_.size(); }
  bool next_is(char c) const { return !done() && text_[at_] == c; }
  bool take(char c) {
    if (!next_is(c)) return false;
    ++at_;
    return true;
  }
  void need(char c) {
    if (!take(c)) fail();
  }
  [[noreturn]] void fail() const {
    throw BadHours(fmt::format("'{}' is not a POSIX time zone rule (from character {}).", text_, at_ + 1),
                   "Reinstall the system's time zone database (package tzdata).");
  }

  std::string name() {
    const bool quoted = take('<');
    const auto from = at_;
    while (!done() &&
           (quoted ? text_[at_] != '>' : std::isalpha(static_cast<unsigned char>(text_[at_])) != 0))
      ++at_;
    if (at_ - from < 3 || at_ - from > 16) fail();
    const std::string found(text_.substr(from, at_ - from));
    if (quoted) need('>');
    return found;
  }

  int number(int least, int most) {
    const auto from = at_;
    int v = 0;
    while (!done() && text_[at_] >= '0' && text_[at_] <= '9' && at_ - from < 3)
      v = v * 10 + (text_[at_++] - '0');
    if (at_ == from || v < least || v > most) fail();
    return v;
  }

  std::int32_t time() { // [+-]h[:m[:s]]
    const int sign = take('-') ? -1 : 1;
    if (sign == 1) take('+');
    std::int32_t s = number(0, 167) * 3'600;
    if (take(':')) s += number(0, 59) * 60;
    if (take(':')) s += number(0, 59);
    return sign * s;
  }

  YearDay year_day() {
    YearDay d;
    if (take('M')) {
      d.month = number(1, 12);
      need('.');
      d.week = number(1, 5);
      need('.');
      d.weekday = number(0, 6);
    } else if (take('J')) {
      d.kind = 'J';
      d.n = number(1, 365);
    } else {
      d.kind = 'n';
      d.n = number(0, 365);
    }
    if (take('/')) d.time_s = time();
    return d;
  }

private:
  std::string_view text_;
  std::size_t at_ = 0;
};

Day date_in(int year, const YearDay& d) {
  namespace ch = std::chrono;
  const ch::year y{year};
  if (d.kind == 'M') {
    const ch::month m{static_cast<unsigned>(d.month)};
    const ch::weekday w{static_cast<unsigned>(d.weekday)};
    const ch::sys_days day = d.week == 5 ? ch::sys_days{y / m / w[ch::last]}
                                         : ch::sys_days{y / m / w[static_cast<unsigned>(d.week)]};
    return Day::from(ch::year_month_day{day});
  }
  const Day january_1 = Day::from(y / ch::January / 1);
  if (d.kind == 'J') return january_1 + (d.n - 1 + (y.is_leap() && d.n > 59 ? 1 : 0));
  return january_1 + d.n;
}

} // namespace

std::vector<Transition> changes_by_rule(std::string_view rule, int first, int last) {
  Reader in(rule);
  const auto winter = in.name();
  const std::int32_t winter_s = -in.time(); // POSIX counts west of Greenwich as positive
  if (in.done()) return {};
  const auto summer = in.name();
  const std::int32_t summer_s = in.next_is(',') ? winter_s + 3'600 : -in.time();
  in.need(',');
  const auto start = in.year_day();
  in.need(',');
  const auto end = in.year_day();
  if (!in.done()) in.fail();

  std::vector<Transition> out;
  for (int year = first; year <= last; ++year) {
    const auto when = [&](const YearDay& d, std::int32_t offset_before) {
      return Instant{date_in(year, d).days * std::int64_t{86'400} + d.time_s - offset_before};
    };
    out.push_back({when(start, winter_s), summer_s, summer});
    out.push_back({when(end, summer_s), winter_s, winter});
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const Transition& a, const Transition& b) { return a.from < b.from; });
  return out;
}

} // namespace nutward::hours
