// Spring-back: how often frets stand high again a day after pressing, counted from rechecks.
#include "bench.hpp"
#include "shop/spring_back.hpp"
#include "support/catch.hpp"

#include <fmt/format.h>

#include <cmath>

using namespace nutward;
using namespace nutward::test;

namespace {

// The share of all cases in which at most (at least) `k` of `n` come, each with chance p: added up one by
// one.
double at_most(std::int64_t k, std::int64_t n, double p) {
  double sum = 0;
  for (std::int64_t i = 0; i <= k; ++i) {
    const auto di = static_cast<double>(i), dn = static_cast<double>(n);
    sum += std::exp(std::lgamma(dn + 1) - std::lgamma(di + 1) - std::lgamma(dn - di + 1) + di * std::log(p) +
                    (dn - di) * std::log1p(-p));
  }
  return sum;
}

// Job 3 is on a board 50 mm wide throughout, its wire 3 has a known crown.
struct Boards : Shop {
  Boards() {
    does("define-wire", R"({"name": "tenth", "crown_width_mm": 2.54, "stick_mm": 600})");
    does("receive", R"({"wire": "tenth", "count": 30})");
    does("set", R"({"setting": "press_plate", "to": "3000 lb"})");
    does("define-bar", R"({"name": "long", "length_mm": 111.76, "width_mm": 90})");
  }
  std::int64_t board() {
    const Answer a = does("new-job", R"({"wire": "tenth", "scale_mm": 645.16, "frets": 14, "nut_width_mm": 50,
                                         "far_width_mm": 50, "instrument": "test board"})");
    const auto id = as<Ref>(at(a.data, "job")).id;
    does("finished", fmt::format(R"({{"job": {}, "stage": "cut"}})", id));
    return id;
  }
  std::vector<shop::SprangCount> counts(std::optional<std::int64_t> wire = {}) {
    return seen([&](const View& v) { return v.jobs().sprang(wire); });
  }
  std::vector<shop::Looked> looked(std::int64_t job) {
    return seen([&](const View& v) { return v.jobs().looked(job); });
  }
};

} // namespace

// 95 % limits of Clopper and Pearson: Newcombe, Two-sided confidence intervals for the single proportion,
// Statistics in Medicine 17 (1998) 857-872, table I (from memory); 682 of 925 is the example of R's
// binom.test, Mendel's peas after Conover (1971) (from memory).
TEST_CASE("the interval of a share is Clopper's and Pearson's") {
  struct Case {
    std::int64_t sprang, looked;
    double least, most, good;
  };
  for (const Case& c : {Case{81, 263, 0.2527, 0.3676, 5e-5}, Case{15, 148, 0.0578, 0.1617, 5e-5},
                        Case{0, 20, 0, 0.1684, 5e-5}, Case{1, 29, 0.0009, 0.1776, 5e-5},
                        Case{682, 925, 0.7076683, 0.7654066, 5e-8}}) {
    const shop::Interval i = shop::interval_of({c.looked, c.sprang});
    INFO(c.sprang << " of " << c.looked);
    CHECK(i.least == Approx(c.least).epsilon(0).margin(c.good));
    CHECK(i.most == Approx(c.most).epsilon(0).margin(c.good));
  }
  CHECK(shop::words_of(shop::interval_of({41, 3})) == "1.5 % to 19.9 %");
}

TEST_CASE("at the ends of the interval what was seen is just 2.5 % likely, by adding up the binomial") {
  for (std::int64_t n : {1, 2, 7, 41, 400}) {
    for (std::int64_t k : {std::int64_t{0}, n / 3, n / 2, n}) {
      const shop::Interval i = shop::interval_of({n, k});
      INFO(k << " of " << n);
      CHECK((i.least == 0) == (k == 0));
      CHECK((i.most == 1) == (k == n));
      if (k < n) CHECK(at_most(k, n, i.most) == Approx(0.025).epsilon(1e-6));
      if (k > 0) CHECK(1 - at_most(k - 1, n, i.least) == Approx(0.025).epsilon(1e-6));
    }
  }
  const shop::Interval none = shop::interval_of({});
  CHECK(none.least == 0);
  CHECK(none.most == 1);
}

TEST_CASE("each fret of a recheck is kept with what it was last pressed with, by group and millimetre") {
  Boards shop;
  const auto job = shop.board();
  const auto press = [&](const char* rest) {
    shop.does("pressed", fmt::format(R"({{"job": {}, {}}})", job, rest));
  };
  press(R"("at": "2026-03-23T08:00:00Z")"); // no load was said
  press(R"("slots": "9-14", "load": "2000 lb", "at": "2026-03-23T08:10:00Z")");
  press(R"("slots": "8-13", "load": "1800 lb", "at": "2026-03-23T08:20:00Z")");
  press(R"("slots": [10], "load": "2500 lb", "at": "2026-03-23T08:30:00Z")");
  shop.does("rechecked", fmt::format(R"({{"job": {}, "sprang": "3,9"}})", job));
  const auto looked = shop.looked(job);
  REQUIRE(looked.size() == 14);
  const auto of = [&](std::size_t slot) { return looked.at(slot - 1); };
  CHECK_FALSE(of(3).load);
  CHECK(of(3).sprang);
  CHECK(of(14).together == 6);
  CHECK(*of(14).n_per_mm == Approx(2000 * 4.4482216152605 / 6 / 50)); // 1 lbf in N: exact, NIST SP 811
  CHECK(*of(9).n_per_mm == Approx(1800 * 4.4482216152605 / 6 / 50));
  CHECK(of(9).sprang);
  CHECK(of(10).together == 1);
  CHECK(*of(10).n_per_mm == Approx(2500 * 4.4482216152605 / 50));
  CHECK_FALSE(of(10).sprang);
  CHECK(shop.asks("spring-back", R"({"wire": "tenth", "by": "load"})").table->rows ==
        std::vector<std::vector<std::string>>{{"load not said", "1 of 7"},
                                              {"1800 lb with a group", "1 of 5"},
                                              {"2000 lb with a group", "none of 1"},
                                              {"2500 lb alone", "none of 1"}});
  CHECK(shop.asks("spring-back", R"({"by": "mm"})").table->rows ==
        std::vector<std::vector<std::string>>{
            {"load not known", "1 of 7"}, {"25 to 30 N/mm", "1 of 6"}, {"220 to 225 N/mm", "none of 1"}});
  CHECK(
      shop.asks("spring-back", R"({"stay": true})").text ==
      "Tenth: From 220 N/mm on (2470 lb on a fret 50.00 mm long) none of 1 sprang back, below that 1 of 6.");
  shop.does("undo");
  CHECK(shop.looked(job).empty());
  CHECK(shop.counts().empty());
}

TEST_CASE("a report of all frets at once counts by the passes that it was of") {
  Boards shop;
  const auto job = shop.board();
  shop.does("pressed", fmt::format(R"({{"job": {}, "load": "2000 lb", "at": "2026-03-23T08:10:00Z"}})", job));
  shop.does("rechecked", fmt::format(R"({{"job": {}}})", job));
  // The last passes are 2-5 and 1-4, by common practice, no source.
  CHECK(shop.looked(job).at(4).together == 4);
  CHECK(shop.looked(job).at(0).together == 4);
  CHECK(shop.looked(job).at(13).together == 6);
}

TEST_CASE("looks before the time are kept and not counted, and other wires count apart") {
  Boards shop;
  const auto job = shop.board();
  shop.does("pressed", fmt::format(R"({{"job": {}, "load": "2000 lb"}})", job));
  shop.does("rechecked", fmt::format(R"({{"job": {}, "sprang": "3"}})", job), true); // with a yes, at once
  CHECK(shop.counts().empty());
  CHECK(shop.looked(job).at(2).early);
  CHECK(shop.asks("spring-back", fmt::format(R"({{"job": {}}})", job)).text.find("fret 3 sprang back.") !=
        std::string::npos);
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("pressed", R"({"job": 1, "at": "2026-03-23T08:00:00Z"})");
  shop.does("rechecked", R"({"job": 1, "sprang": "2"})");
  CHECK(shop.counts(1).size() == 1);
  CHECK(shop.counts(3).empty());
  CHECK(shop.counts().at(0).looked == 4);
  CHECK(shop.counts().at(0).sprang == 1);
  const Answer a = shop.asks("spring-back", R"({"wire": 1, "interval": true})");
  CHECK(a.text ==
        "Of medium, 1 of 4 frets sprang back at the recheck. By so many the true share may be 0.6 % to "
        "80.6 % (95 % interval of Clopper and Pearson).");
  CHECK(shop.unanswered("spring-back", R"({"wire": 1, "job": 1})").where == "wire");
}

TEST_CASE("a fret that a straightedge finds high at the recheck sprang back, and is a reading") {
  Boards shop;
  const auto job = shop.board();
  shop.does("pressed", fmt::format(R"({{"job": {}, "at": "2026-03-23T08:00:00Z"}})", job));
  const Answer a = shop.does(
      "rechecked", fmt::format(R"({{"job": {}, "slots": "1-9", "high": "3,7", "line": "bass"}})", job));
  CHECK(field<std::int64_t>(a, "readings") == 2);
  const auto readings = shop.seen([&](const View& v) { return v.jobs().readings(job); });
  REQUIRE(readings.size() == 2);
  CHECK(readings[1].is.span == level::Span{6, 8});
  CHECK(readings[1].is.pivot == 7);
  CHECK(readings[1].is.line == level::Line::bass);
  CHECK(readings[1].is.felt == level::Felt::rocks);
  CHECK(shop.looked(job).size() == 9);
  CHECK(shop.looked(job)[6].sprang);
  const Problem p = shop.refused("rechecked", fmt::format(R"({{"job": {}, "from": 10, "to": 13}})", job));
  CHECK(p.text == "That an edge rocks from 10 to 13 does not say which fret stands high.");
  CHECK(shop.refused("rechecked", fmt::format(R"({{"job": {}, "from": 10}})", job)).where == "to");
  // At the end of the board there is no fret on the other side to lay the edge on.
  CHECK(shop.refused("rechecked", fmt::format(R"({{"job": {}, "slots": "14", "high": "14"}})", job)).fault ==
        Fault::value);
  CHECK(shop.looked(job).size() == 9);
}
