#include "agenda/recheck.hpp"
#include "agenda/windows.hpp"
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

#include <random>

using namespace nutward::agenda;
using nutward::hours::Calendar;
using nutward::hours::load_zone;
using nutward::units::Day;
namespace ch = std::chrono;

namespace {

constexpr std::int32_t h = 3'600;
constexpr std::int64_t longest = 60;

std::int64_t below(std::mt19937& random, std::int64_t n) {
  return static_cast<std::int64_t>(random()) % n;
}

// Some stretches within 0..60 s, in rising order where `apart`; else some may be empty or the wrong way
// round.
std::vector<Window> some(std::mt19937& random, bool apart) {
  std::vector<Window> out;
  std::int64_t at = 0;
  for (std::int64_t n = below(random, 6); n > 0; --n) {
    const std::int64_t from = apart ? at + below(random, 8) : below(random, longest);
    const std::int64_t to = apart ? from + 1 + below(random, 9) : from - 2 + below(random, 20);
    if (apart && to > longest) break;
    out.push_back({Instant{from}, Instant{to}});
    at = to;
  }
  return out;
}

bool in(const std::vector<Window>& windows, std::int64_t second) {
  return std::any_of(windows.begin(), windows.end(),
                     [&](const Window& w) { return w.from.s <= second && second < w.to.s; });
}

bool in_order(const std::vector<Window>& windows) {
  for (std::size_t i = 0; i < windows.size(); ++i)
    if (windows[i].to <= windows[i].from || (i > 0 && windows[i].from < windows[i - 1].to)) return false;
  return true;
}

Calendar workshop() {
  Calendar c;
  for (std::size_t i = 0; i < 5; ++i)
    c.weekly.at(i) = {{9 * h, 13 * h}, {14 * h, 18 * h}};
  return c;
}

Day on(int y, unsigned m, unsigned d) {
  return Day::from(ch::year{y} / ch::month{m} / ch::day{d});
}

} // namespace

TEST_CASE("windows less others, and common to two, are right in every second") {
  std::mt19937 random(3);
  for (int n = 0; n < 500; ++n) {
    const auto open = some(random, true), other = some(random, true), closed = some(random, false);
    const auto left = without(open, closed), common = both(open, other);
    CAPTURE(n);
    REQUIRE(in_order(left));
    REQUIRE(in_order(common));
    bool good = true;
    std::int64_t seconds_left = 0;
    for (std::int64_t s = 0; s <= longest; ++s) {
      good = good && in(left, s) == (in(open, s) && !in(closed, s));
      good = good && in(common, s) == (in(open, s) && in(other, s));
      seconds_left += in(left, s) ? 1 : 0;
    }
    CHECK(good);
    CHECK(length(left).count() == seconds_left);
  }
}

// Pressed on Friday 27 November 2026 at 15:00, due on Saturday at 15:00, overdue from Monday 18:00 on.
TEST_CASE("day limits say what the recheck's clock says") {
  const auto zone = load_zone("Europe/Berlin");
  Calendar calendar = workshop();
  calendar.closures.insert(on(2026, 12, 24));
  const Instant from = zone->instant(on(2026, 3, 1), 0), to = zone->instant(on(2027, 3, 1), 0);
  const auto limits = day_limits(calendar, *zone, from, to);
  REQUIRE(limits.size() == 367);
  for (int day = 0; day < 365; ++day) { // both changes of clock and a closure among them
    const Instant pressed = zone->instant(on(2026, 3, 1) + day, 15 * h);
    const auto clock = recheck_clock(pressed, {16, 24}, calendar, *zone);
    const auto row = std::upper_bound(limits.begin(), limits.end(), clock.due,
                                      [](Instant t, const DayLimit& l) { return t < l.from; });
    CAPTURE(day);
    CHECK(std::prev(row)->limit == clock.overdue);
  }
  CHECK(std::is_sorted(limits.begin(), limits.end(),
                       [](const DayLimit& a, const DayLimit& b) { return a.limit < b.limit; }));
}

TEST_CASE("day limits of a shop that never opens end with the day after") {
  const auto zone = load_zone("Europe/Berlin");
  const Instant noon = zone->instant(on(2026, 11, 27), 12 * h);
  const auto limits = day_limits({}, *zone, noon, noon);
  REQUIRE(limits.size() == 2);
  CHECK(limits[1].from == zone->instant(on(2026, 11, 27), 0));
  CHECK(limits[1].limit == zone->instant(on(2026, 11, 29), 0));
}

TEST_CASE("the windows of a calendar are its openings, also on the day of 23 hours") {
  const auto zone = load_zone("America/New_York");
  Calendar calendar;
  calendar.extra[on(2026, 3, 8)] = {{0, 24 * h}};
  const auto open =
      windows(calendar, *zone, zone->instant(on(2026, 3, 7), 0), zone->instant(on(2026, 3, 10), 0));
  REQUIRE(open.size() == 1);
  CHECK(length(open) == ch::hours{23}); // tz database: 2026-03-08 07:00 UTC
}
