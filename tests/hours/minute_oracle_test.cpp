// Open-time arithmetic against a slow oracle that walks minute by minute and shares nothing with it but
// Zone::local.
//
// The oracle keeps the latest date and time that the local clock has shown so far. The shop is open in a
// minute if that lies in a span: a clock put back changes nothing until it has caught up, a gap is jumped
// over.
#include "hours/calendar.hpp"
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

#include <algorithm>
#include <random>

using namespace nutward::hours;
using nutward::units::Day;
using nutward::units::Instant;
namespace ch = std::chrono;

namespace {

constexpr int window_days = 36;

struct Minute {
  bool open;
  std::int64_t shown_day; // of the latest local time so far
  LocalTime local;
};

class Oracle {
public:
  Oracle(const Calendar& c, const Zone& zone, Instant from) : from_(from) {
    std::int64_t latest = INT64_MIN;
    for (int i = -3 * 1440; i < window_days * 1440; ++i) {
      const auto l = zone.local(instant(i));
      latest = std::max(latest, l.day.days * std::int64_t{86'400} + l.s);
      if (i < 0) continue;
      const Day day{static_cast<std::int32_t>(latest / 86'400)};
      const auto s = latest % 86'400;
      const auto in = [&](const std::vector<Span>& list) {
        return std::any_of(list.begin(), list.end(), [&](Span v) { return v.open_s <= s && s < v.close_s; });
      };
      const bool weekly =
          c.closures.count(day) == 0 && in(c.weekly.at(static_cast<std::size_t>(day.weekday())));
      const auto extra = c.extra.find(day);
      minutes_.push_back({weekly || (extra != c.extra.end() && in(extra->second)), day.days, l});
    }
  }

  Instant instant(int i) const { return from_ + ch::minutes{i}; }
  int size() const { return static_cast<int>(minutes_.size()); }
  const Minute& operator[](int i) const { return minutes_.at(static_cast<std::size_t>(i)); }

  // An answer beyond the window is any index outside it.
  int next_open(int i) const {
    while (i < size() && !(*this)[i].open)
      ++i;
    return i;
  }
  int add_open(int i, int work) const {
    for (; work > 0 && i < size(); ++i)
      work -= (*this)[i].open ? 1 : 0;
    return work > 0 ? size() + 1 : i;
  }
  int subtract_open(int i, int work) const {
    for (; work > 0 && i > 0; --i)
      work -= (*this)[i - 1].open ? 1 : 0;
    return work > 0 ? -1 : i;
  }
  int open_between(int a, int b) const {
    int sum = 0;
    for (int i = a; i < b; ++i)
      sum += (*this)[i].open ? 1 : 0;
    return sum;
  }
  int end_of_day(std::int64_t day) const { // -1: closed
    int end = -1;
    for (int i = 0; i < size(); ++i)
      if ((*this)[i].open && (*this)[i].shown_day == day) end = i + 1;
    return end;
  }
  // The same local time n open days back, then the first open minute from there on that day, or its end.
  int subtract_days(int i, int n) const {
    auto day = (*this)[i].local.day.days;
    const auto s = (*this)[i].local.s;
    while (n > 0 && day > (*this)[0].local.day.days)
      n -= end_of_day(--day) >= 0 ? 1 : 0;
    if (n > 0) return -1;
    int j = 0;
    while ((*this)[j].local < LocalTime{Day{day}, s})
      ++j;
    for (; j < size(); ++j)
      if ((*this)[j].open && (*this)[j].shown_day == day) return j;
    return end_of_day(day);
  }

private:
  Instant from_;
  std::vector<Minute> minutes_;
};

Calendar random_calendar(std::mt19937_64& random, Day around) {
  const auto pick = [&](int least, int most) {
    return std::uniform_int_distribution<int>(least, most)(random);
  };
  const auto list = [&](int most) {
    std::vector<Span> out;
    for (int n = pick(0, most); n > 0; --n) {
      // Half of the spans at the ends of the day and around the hours at which clocks change.
      const int open = pick(0, 1) == 0 ? pick(0, 4 * 4) * 15 : pick(0, 1'438);
      out.push_back({open * 60, pick(0, 3) == 0 ? 86'400 : pick(open + 1, 1'440) * 60});
    }
    return out;
  };
  Calendar c;
  for (auto& day : c.weekly)
    day = list(3);
  for (int n = pick(0, 6); n > 0; --n)
    c.closures.insert(around + pick(-18, 18));
  for (int n = pick(0, 4); n > 0; --n)
    c.extra[around + pick(-18, 18)] = list(2);
  return c;
}

// The middle of the window: at a change of clock, where there is one, every other time.
Instant middle(std::mt19937_64& random, const Zone& zone) {
  std::uniform_int_distribution<std::int64_t> any(94'694'400 / 60, 4'102'444'800 / 60);
  const auto& changes = zone.transitions();
  const auto& change = changes[random() % changes.size()].from;
  return random() % 2 == 0 || change.s < 94'694'400 ? Instant{any(random) * 60} : change;
}

void agree(std::optional<Instant> got, int expected, const Oracle& o) {
  if (expected >= 0 && expected <= o.size())
    CHECK(got == std::optional(o.instant(expected)));
  else // beyond the window, and so must be the answer
    CHECK((!got || *got < o.instant(0) || *got > o.instant(o.size() - 1)));
}

void compare(const Calendar& c, const Zone& zone, const Oracle& o, std::mt19937_64& random) {
  const auto minute = [&](int around, int spread) {
    return around + std::uniform_int_distribution<int>(-spread, spread)(random);
  };
  const int i = minute(window_days * 720, 4 * 1440);
  const int work = std::uniform_int_distribution<int>(1, 3'000)(random);
  const auto t = o.instant(i);
  INFO(zone.rfc3339(t) << ", " << work << " min");
  CHECK(is_open(c, zone, t) == o[i].open);
  agree(next_open(c, zone, t), o.next_open(i) == o.size() ? o.size() + 1 : o.next_open(i), o);
  agree(add_open(c, zone, t, ch::minutes{work}), o.add_open(i, work), o);
  agree(subtract_open(c, zone, t, ch::minutes{work}), o.subtract_open(i, work), o);
  const int j = minute(i, 3'000);
  CHECK(open_between(c, zone, t, o.instant(j)) == ch::minutes{o.open_between(i, j)});
  const auto day = o[i].local.day;
  const auto end = o.end_of_day(day.days);
  CHECK(end_of_open_day(c, zone, t) == (end < 0 ? std::nullopt : std::optional(o.instant(end))));
  int next = -1;
  for (int n = 1; n <= 13 && next < 0; ++n)
    next = o.end_of_day((day + n).days);
  if (next >= 0) CHECK(end_of_next_open_day(c, zone, t) == std::optional(o.instant(next)));
  agree(subtract_open_days(c, zone, t, 1 + i % 3), o.subtract_days(i, 1 + i % 3), o);
}

} // namespace

TEST_CASE("open-time arithmetic agrees with walking minute by minute over random calendars and zones") {
  std::mt19937_64 random(4711);
  for (const char* name :
       {"America/New_York", "Europe/London", "Europe/Berlin", "Australia/Lord_Howe", "Pacific/Auckland",
        "America/Sao_Paulo", "Asia/Kathmandu", "America/St_Johns", "America/Nuuk", "Pacific/Apia"}) {
    const auto zone = load_zone(name);
    for (int n = 0; n < 12; ++n) {
      const auto at = middle(random, *zone);
      const auto c = random_calendar(random, zone->local(at).day);
      const Oracle o(c, *zone, at - ch::hours{24 * window_days / 2});
      INFO(name << " case " << n);
      for (int k = 0; k < 15; ++k)
        compare(c, *zone, o, random);
    }
  }
}
