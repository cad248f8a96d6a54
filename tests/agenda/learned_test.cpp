// What is learnt from reports: medians, against a count of those below and above.
#include "agenda/learned.hpp"
#include "support/catch.hpp"

#include <algorithm>
#include <random>

using namespace nutward::agenda;
using std::chrono::minutes;
using std::chrono::seconds;

TEST_CASE("two reports teach nothing, three do, and one bad day among them does not count") {
  const std::vector<Report> two{{minutes{30}, 22}, {minutes{32}, 22}};
  CHECK(learnt_minutes(StageKind::seat, two) == std::nullopt);
  CHECK(learnt_minutes(StageKind::seat, {}) == std::nullopt);
  const std::vector<Report> three{{minutes{30}, 22}, {minutes{32}, 22}, {minutes{400}, 22}};
  CHECK(learnt_minutes(StageKind::seat, three) == 32);
}

TEST_CASE("a stage done fret by fret is told for 22 of them, one of the board as it was") {
  const std::vector<Report> reports{{minutes{20}, 11}, {minutes{50}, 20}, {minutes{44}, 22}};
  CHECK(learnt_minutes(StageKind::seat, reports) == 44);       // 40, 55, 44
  CHECK(learnt_minutes(StageKind::true_board, reports) == 44); // 20, 50, 44
  CHECK(for_22(StageKind::seat, {minutes{20}, 11}) == minutes{40});
  CHECK(for_22(StageKind::true_board, {minutes{20}, 11}) == minutes{20});
}

TEST_CASE("of two in the middle the mean counts, half minutes upward, and nothing takes less than a minute") {
  const std::vector<Report> four{{minutes{10}, 22}, {minutes{20}, 22}, {minutes{23}, 22}, {minutes{90}, 22}};
  CHECK(learnt_minutes(StageKind::seat, four) == 22); // 21.5
  const std::vector<Report> quick{{seconds{5}, 22}, {seconds{6}, 22}, {seconds{7}, 22}};
  CHECK(learnt_minutes(StageKind::seat, quick) == 1);
}

TEST_CASE("a report of no time or of no frets is none") {
  const Report none[]{{seconds{0}, 22}, {seconds{-5}, 22}, {minutes{5}, 0}, {minutes{5}, 201}};
  for (const Report& r : none)
    CHECK_THROWS_AS(for_22(StageKind::seat, r), BadAgenda);
}

TEST_CASE("no more reports lie below the median than above, whatever their order") {
  std::mt19937_64 engine{20261125};
  for (int round = 0; round < 300; ++round) {
    std::vector<Report> reports(3 + engine() % 7);
    for (Report& r : reports)
      r = {minutes{1 + static_cast<std::int64_t>(engine() % 240)}, 22};
    const auto learnt = learnt_minutes(StageKind::press, reports);
    REQUIRE(learnt);
    const auto below = std::count_if(reports.begin(), reports.end(), [&](const Report& r) {
      return r.work < minutes{*learnt} - seconds{30};
    });
    const auto above = std::count_if(reports.begin(), reports.end(), [&](const Report& r) {
      return r.work > minutes{*learnt} + seconds{30};
    });
    CHECK(2 * below <= std::ssize(reports));
    CHECK(2 * above <= std::ssize(reports));
    std::shuffle(reports.begin(), reports.end(), engine);
    CHECK(learnt_minutes(StageKind::press, reports) == learnt);
  }
}

TEST_CASE("stages take the minutes that they are given, few frets never under five") {
  Minutes minutes_for_22 = table_minutes();
  CHECK(minutes_for_22[static_cast<std::size_t>(StageKind::press)] == 60);
  minutes_for_22[static_cast<std::size_t>(StageKind::press)] = 44;
  minutes_for_22[static_cast<std::size_t>(StageKind::true_board)] = 90;
  const auto work = [&](int frets, StageKind kind) {
    for (const Stage& s : stages_of({.frets = frets}, 24, minutes_for_22))
      if (s.kind == kind) return s.work;
    return seconds{-1};
  };
  CHECK(work(22, StageKind::press) == minutes{44});
  CHECK(work(11, StageKind::press) == minutes{22});
  CHECK(work(1, StageKind::press) == minutes{5});
  CHECK(work(11, StageKind::true_board) == minutes{90});
  CHECK(work(22, StageKind::wait) == minutes{0});
}
