#include "agenda/deadline.hpp"
#include "hours/load_zone.hpp"

#include "support/catch.hpp"

#include <random>

using namespace nutward::agenda;
using nutward::hours::Calendar;
using nutward::hours::load_zone;
using nutward::hours::Zone;
using nutward::units::Day;
using nutward::units::Instant;
namespace ch = std::chrono;

namespace {

constexpr std::int32_t h = 3'600;

// Monday to Friday 09:00 to 13:00 and 14:00 to 18:00.
Calendar workshop() {
  Calendar c;
  for (std::size_t i = 0; i < 5; ++i)
    c.weekly.at(i) = {{9 * h, 13 * h}, {14 * h, 18 * h}};
  return c;
}

const Zone& berlin() {
  static const auto zone = load_zone("Europe/Berlin");
  return *zone;
}

Day on(int y, unsigned m, unsigned d) {
  return Day::from(ch::year{y} / ch::month{m} / ch::day{d});
}

Instant at(int y, unsigned m, unsigned d, std::int32_t hour, std::int32_t minute = 0) {
  return berlin().instant(on(y, m, d), hour * h + minute * 60);
}

std::optional<Instant> latest(Instant due, const StagePlan& plan) {
  return latest_press(due, stages_of(plan), workshop(), berlin());
}

} // namespace

// Due Friday 27 November 2026, 18:00. Polish 40, crown 45, level 25, recheck 15 are 125 min: recheck from
// 15:55 on Friday, so pressing is over by 15:55 on Thursday and begins an hour before.
TEST_CASE("the latest press leaves the wait of a day and the work after it") {
  CHECK(latest(at(2026, 11, 27, 18), {}) == at(2026, 11, 26, 14, 55));
  CHECK(latest(at(2026, 11, 27, 18), {.levelled = false}) == at(2026, 11, 26, 16, 45));
}

// The same, with 20 min of corners: recheck from 15:35 on Friday. Filing (60) fits into the wait.
TEST_CASE("filing the ends is done while the frets wait") {
  CHECK(latest(at(2026, 11, 27, 18), {.ends = EndStyle::filed}) == at(2026, 11, 26, 14, 35));
}

// Due Monday 12:00: 125 min before is 9:55 on Monday, a day before that is Sunday, so pressing is over by
// Friday 18:00.
TEST_CASE("a wait over the weekend puts the press on Friday") {
  CHECK(latest(at(2026, 11, 30, 12), {}) == at(2026, 11, 27, 17));
  // Filing is an hour's work between them that must be done in open time, but on Monday before 9:35 is only
  // half.
  CHECK(latest(at(2026, 11, 30, 12), {.ends = EndStyle::filed}) == at(2026, 11, 27, 16, 35));
}

// Due Tuesday 11:35: recheck from 9:30, so pressing is over by 9:30 on Monday: half an hour is not enough
// there.
TEST_CASE("pressing does not pause overnight, but it may over lunch") {
  CHECK(latest(at(2026, 12, 1, 11, 35), {}) == at(2026, 11, 27, 17));
  CHECK(latest(at(2026, 12, 1, 16, 35), {}) ==
        at(2026, 11, 30, 12, 30)); // recheck from 14:30: 30 min each side
}

// A stage of 100 frets, 273 min, cannot but span the break.
TEST_CASE("a closed time of four hours is a break and a minute more is a night") {
  Calendar c;
  for (auto& day : c.weekly)
    day = {{8 * h, 12 * h}, {16 * h, 20 * h}};
  const auto stages = stages_of({.frets = 100, .levelled = false});
  // Recheck (69 min) from 18:51 on Friday, so pressing is over by 18:51 on Thursday: 171 min after the break,
  // 102 before.
  CHECK(latest_press(at(2026, 11, 27, 20), stages, c, berlin()) == at(2026, 11, 26, 10, 18));
  for (auto& day : c.weekly)
    day[0].close_s -= 60;
  CHECK(latest_press(at(2026, 11, 27, 20), stages, c, berlin()) == std::nullopt);
}

// Glue of 30 h: pressing is over 30 h before the check, which is before the recheck at 15:55 on Friday.
TEST_CASE("glue that cures longer than the wait moves the press") {
  CHECK(latest(at(2026, 11, 27, 18), {.cure_h = 30}) ==
        at(2026, 11, 25, 17)); // over by 9:55 on Thursday, minus 6 h
  CHECK(latest(at(2026, 11, 27, 18), {.cure_h = 12}) == at(2026, 11, 26, 14, 55));
}

// CHECKS.md: Berlin 2026-10-25 01:00 UTC, back an hour. A shop that works at weekends.
TEST_CASE("the wait is elapsed hours across a change of clock") {
  auto c = workshop();
  c.weekly[5] = c.weekly[6] = c.weekly[0];
  const auto stages = stages_of({});
  CHECK(latest_press(at(2026, 10, 25, 18), stages, c, berlin()) ==
        at(2026, 10, 24, 15, 55)); // 25 h by the wall
  CHECK(latest_press(at(2026, 3, 29, 18), stages, c, berlin()) ==
        at(2026, 3, 28, 12, 55)); // 23 h, over lunch
}

TEST_CASE("no press stage, no open hours or a press longer than any day give no time") {
  CHECK(latest(at(2026, 11, 27, 18), {.pressed = false}) == std::nullopt);
  CHECK(latest_press(at(2026, 11, 27, 18), stages_of({}), Calendar{}, berlin()) == std::nullopt);
  CHECK(latest(at(2026, 11, 27, 18), {.frets = 200}) == std::nullopt); // 546 min, and a day has 480
}

TEST_CASE("the press is called for one open day before, at the same time of day") {
  CHECK(press_due_reminder(at(2026, 11, 26, 14, 55), workshop(), berlin()) == at(2026, 11, 25, 14, 55));
  CHECK(press_due_reminder(at(2026, 11, 30, 9, 30), workshop(), berlin()) == at(2026, 11, 27, 9, 30));
  CHECK(press_due_reminder(at(2026, 11, 30, 9), Calendar{}, berlin()) == at(2026, 11, 29, 9));
}

TEST_CASE("due on a day means its last closing, or the closing before where the shop is closed") {
  CHECK(due_instant(on(2026, 11, 27), workshop(), berlin()) == at(2026, 11, 27, 18));
  CHECK(due_instant(on(2026, 11, 29), workshop(), berlin()) == at(2026, 11, 27, 18));
  CHECK(due_instant(on(2026, 11, 29), Calendar{}, berlin()) == std::nullopt);
}

namespace {

// Works forward from a press that begins in minute i of a table of open minutes; the minute all is done, or
// -1 if the press would stand still for over four hours. Shares nothing with the walk backward.
int done_after(const std::vector<bool>& open, int i, const std::vector<Stage>& stages) {
  const auto size = static_cast<int>(open.size());
  bool pressed = false;
  int press_end = 0;
  for (const auto& s : stages) {
    if (!pressed && s.kind != StageKind::press) continue;
    if (pressed) i = std::max(i, press_end + static_cast<int>(s.lag.count() / 60));
    int closed = 0;
    for (auto left = s.work.count() / 60; left > 0; ++i) {
      if (i >= size) return size;
      if (open[static_cast<std::size_t>(i)]) {
        --left;
        closed = 0;
      } else if (++closed > 240 && s.kind == StageKind::press) {
        return -1;
      }
    }
    if (s.kind == StageKind::press) {
      pressed = true;
      press_end = i;
    }
  }
  return i;
}

} // namespace

TEST_CASE("the latest press agrees with trying every minute forward, over random calendars across a change "
          "of clock") {
  std::mt19937_64 random(2408);
  const auto pick = [&](int least, int most) {
    return std::uniform_int_distribution<int>(least, most)(random);
  };
  int found = 0;
  for (int n = 0; n < 150; ++n) {
    Calendar c;
    for (auto& day : c.weekly)
      for (int k = pick(0, 3); k > 0; --k) {
        const int open = pick(0, 90) * 15;
        day.push_back({open * 60, pick(open / 15 + 1, 96) * 900});
      }
    const auto stages = stages_of({.ends = pick(0, 1) == 0 ? EndStyle::rounded : EndStyle::filed,
                                   .frets = pick(1, 40),
                                   .levelled = pick(0, 1) == 0,
                                   .cure_h = pick(0, 1) * pick(1, 60)},
                                  pick(16, 30));
    constexpr int days = 24;
    const auto start = n % 2 == 0 ? at(2026, 3, 17, 0) : at(2026, 10, 13, 0);
    std::vector<bool> open;
    for (int i = 0; i < days * 1440; ++i)
      open.push_back(is_open(c, berlin(), start + ch::minutes{i}));
    const int due = days * 1440 - pick(0, 8 * 1440);
    int best = -1;
    for (int i = due; i >= 0 && best < 0; --i) {
      const int end =
          open.at(static_cast<std::size_t>(std::min(i, days * 1440 - 1))) ? done_after(open, i, stages) : -1;
      best = end >= 0 && end <= due ? i : -1;
    }
    const auto got = latest_press(start + ch::minutes{due}, stages, c, berlin());
    INFO("case " << n);
    if (best >= 0) {
      CHECK(got == std::optional(start + ch::minutes{best}));
      ++found;
    } else {
      CHECK((!got || *got < start));
    }
  }
  CHECK(found > 100);
}
