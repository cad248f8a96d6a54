// Every kind of board through the shop: taken in, shown, and what its slots ask of a piece. Figures by hand
// from DESIGN 4.2, on flat boards where they can be done by hand; the curved ones are tested in tests/board.
#include "bench.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// 600 mm, 12 frets, 52 mm wide everywhere, flat, of medium; `more` is added behind it.
std::string a_board(const std::string& more) {
  return R"({"wire": 1, "scale_mm": 600, "frets": 12, "nut_width_mm": 52, "far_width_mm": 52, )" + more + "}";
}

using Cells = std::vector<std::string>;

} // namespace

TEST_CASE(
    "a fanned board shows where each slot lies on both sides, and its slots are longer than it is wide") {
  Shop shop;
  const Answer a =
      shop.does("new-job", a_board(R"("treble_scale_mm": 560, "square_slot": 0, "string_inset_mm": 4)"));
  // Slot 12 runs from 300 to 280 mm over the 44 mm between the strings, so that over 52 mm it is
  // 52·√(1 + (20/44)²) = 57.1199 long; slot 1 leans 40·(1 − 2^(−1/12))/44 = 0.0510 and is 52.0676 long.
  CHECK(a.reason.find("the shortest fret is cut to 52.57 mm, the longest to 57.62 mm") != std::string::npos);
  const Answer slots = shop.asks("slots", R"({"job": 3, "slots": "12"})");
  CHECK(slots.table->columns == Cells{"slot", "from the nut", "bass side", "treble side", "width", "least",
                                      "best", "most", "cut", "now"});
  CHECK(slots.table->rows.at(0) == Cells{"12", "290.00 mm", "300.00 mm", "280.00 mm", "52.00 mm", "56.02 mm",
                                         "56.62 mm", "57.12 mm", "57.62 mm", "open"});
  CHECK(slots.reason == "Scale 600.00 mm on the bass and 560.00 mm on the treble side, the nut square, equal "
                        "temperament of 12, flat, rounded ends.");
  CHECK(as<Length>(at(item(at(slots.data, "slots"), 0), "bass_position")) == 300_mm);
  CHECK(as<Length>(at(item(at(slots.data, "slots"), 0), "treble_position")) == 280_mm);
}

TEST_CASE("on a bound board a piece's tang is nipped back, and the table says to what") {
  Shop shop;
  shop.does("new-job", a_board(R"("binding_mm": 1.6)"));
  const Answer slots = shop.asks("slots", R"({"job": 3, "slots": "5"})");
  CHECK(slots.table->columns ==
        Cells{"slot", "from the nut", "width", "least", "best", "most", "cut", "tang", "now"});
  CHECK(slots.table->rows.at(0)[7] == "48.00 mm"); // 52 − 2·(1.6 + 0.4)
  CHECK(slots.reason == "Scale 600.00 mm, equal temperament of 12, flat, bound in 1.60 mm, the crown's ends "
                        "rounded. The tang stays 0.40 mm clear of each binding.");
  shop.does("add", R"({"wire": 1, "length_mm": [51.5], "ends": "dressed"})");
  const Answer fit = shop.asks("fit", R"({"job": 3, "slot": 5})");
  CHECK(fit.text.find("its crown goes in as it is; nip 1.75 mm of its tang off at each end") !=
        std::string::npos);
  CHECK(fit.cautions == std::vector{Hazard::nipping});
  CHECK(shop.asks("place", R"({"piece": 1})").data != Value{});
  const Answer used = shop.does("use", R"({"piece": 1, "job": 3, "slot": 5})");
  CHECK(used.text.find("nip 1.75 mm of its tang off at each end") != std::string::npos);
}

TEST_CASE("a tang nipped for a narrower board is too short for a bound slot, and is not offered") {
  Shop shop;
  shop.does("new-job", a_board(R"("binding_mm": 1.6)"));
  // The crown of 51.5 may reach 3 mm beyond its tang at each end: a tang of 45.4 is too short, one of 45.6 is
  // not.
  shop.does("add", R"({"wire": 1, "length_mm": [51.5], "ends": "dressed", "tang_mm": 45.4})");
  CHECK(shop.asks("fit", R"({"job": 3, "slot": 5})")
            .text.find("Nothing in the tin fits slot 5 of job 3: cut 52.50 mm of new medium, its tang nipped "
                       "back to 48.00 mm.") != std::string::npos);
  CHECK(std::string(shop.refused("use", R"({"piece": 1, "job": 3, "slot": 5})").what()).find("tang") !=
        std::string::npos);
  shop.does("add", R"({"wire": 1, "length_mm": [51.5], "ends": "dressed", "tang_mm": 45.6})");
  CHECK(shop.asks("fit", R"({"job": 3, "slot": 5})").text.find("piece 2") != std::string::npos);
}

TEST_CASE("a fret that came out short of a bound slot keeps the tang that was nipped for it") {
  Shop shop;
  shop.does("new-job", a_board(R"("binding_mm": 1.6)"));
  const Answer a = shop.does("came-short", R"({"job": 3, "slot": 5, "length_mm": 50.1, "ends": "dressed"})");
  CHECK(a.text.find("Its tang is taken to be nipped to 48.00 mm; say its length if not.") !=
        std::string::npos);
  CHECK(shop.seen([](const View& v) { return v.tin().find(1)->tang; }) == 48_mm);
  shop.does("came-short", R"({"job": 3, "slot": 5, "length_mm": 50.1, "tang_mm": 50.1})");
  CHECK(shop.seen([](const View& v) { return v.tin().find(2)->tang; }) == 50.1_mm);
  CHECK(shop.refused("came-short", R"({"job": 3, "slot": 5, "length_mm": 50.1, "tang_mm": 50.2})").where ==
        "tang_mm");
  shop.does("came-short", R"({"job": 1, "slot": 2, "length_mm": 50.1})"); // not bound
  CHECK(shop.seen([](const View& v) { return v.tin().find(3)->tang; }) == std::nullopt);
}

TEST_CASE("a bound job has a stage for nipping the tangs") {
  Shop shop;
  shop.does("new-job", a_board(R"("binding_mm": 1.6)"));
  for (const char* stage : {"pull", "true", "slots", "bend", "cut", "dress"})
    shop.does("finished", std::string(R"({"job": 3, "stage": ")") + stage + "\"}");
  CHECK(shop.asks("job", R"({"job": 3})").text.find("Next: nip") != std::string::npos);
}

TEST_CASE("filed ends may go with a binding") {
  Shop shop;
  shop.does("new-job", a_board(R"("binding_mm": 1.5, "ends": "filed")"));
  const auto rows = shop.asks("slots", R"({"job": 3, "slots": "1"})").table->rows;
  // cut = 52 + 2·2; the tang 52 − 2·(1.5 + 0.4), which the crown may reach over before it is filed.
  CHECK(rows.at(0) ==
        Cells{"1", "33.68 mm", "52.00 mm", "52.50 mm", "56.00 mm", "-", "56.00 mm", "48.20 mm", "open"});
}

TEST_CASE("a zero fret is slot 0, at the nut's place") {
  Shop shop;
  const Answer a = shop.does("new-job", a_board(R"("zero_fret": true)"));
  CHECK(a.text.find("13 frets") != std::string::npos);
  CHECK(shop.asks("slots", R"({"job": 3, "slots": "0"})").table->rows.at(0)[1] == "0.00 mm");
  shop.does("add", R"({"wire": 1, "length_mm": [51.5], "ends": "dressed"})");
  shop.does("use", R"({"piece": 1, "job": 3, "slot": 0})");
  CHECK(shop.asks("job", R"({"job": 3})").text.find("Slots without a fret: 1-12.") != std::string::npos);
}

TEST_CASE("an octave of other steps, or measured positions, move the slots") {
  Shop shop;
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 24, "divisions": 24, "nut_width_mm": 52,
                           "far_width_mm": 52})");
  CHECK(shop.asks("slots", R"({"job": 3, "slots": "24"})").table->rows.at(0)[1] == "300.00 mm");
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 3, "positions_mm": [66.7, 120, 150.2],
                           "nut_width_mm": 52, "far_width_mm": 58.008, "far_slot": 3})");
  const Answer a = shop.asks("slots", R"({"job": 4})");
  CHECK(a.table->rows.at(1)[1] == "120.00 mm");
  CHECK(a.table->rows.at(1)[2] == "56.80 mm"); // 52 + 6.008·120/150.2
  CHECK(a.reason.find("positions as measured") != std::string::npos);
}

TEST_CASE("a measured width overrides the line, and one off the line is told") {
  Shop shop;
  // At 150 mm from the nut the line has 53; measured are 53.4 there. Least squares through (0, 52), (300, 54)
  // and (150, 53.4): all three lie on 53.1333 ± …, the outer ones 0.1333 above their values, the middle
  // 0.2667 below.
  const Answer a = shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 12, "positions_mm":
      [20, 40, 60, 80, 150, 170, 190, 210, 230, 250, 270, 300], "nut_width_mm": 52, "far_width_mm": 54,
      "widths_mm": [53.4], "width_slots": [5]})");
  CHECK(a.text.find("Not on one straight line with the other widths: 53.40 mm at slot 5, where the line has "
                    "53.13 mm.") != std::string::npos);
  const Answer slots = shop.asks("slots", R"({"job": 3})");
  CHECK(slots.table->rows.at(4)[2] == "53.40 mm");
  CHECK(slots.table->rows.at(11)[2] == "54.00 mm"); // measured there too
  CHECK(slots.table->rows.at(5)[2] == "53.27 mm");  // 52.1333 + 170/150
  CHECK(slots.text.find("Not on one straight line") != std::string::npos);
  CHECK(size(at(slots.data, "widths_off")) == 1);
}

TEST_CASE("what does not go together on a board is refused where it is wrong") {
  Shop shop;
  auto where = [&](const std::string& more) {
    const Problem p = shop.refused("new-job", a_board(more));
    CHECK(p.fault == Fault::value);
    CHECK_FALSE(p.would_do.empty());
    return p.where;
  };
  const auto jobs = shop.rows_of("job");
  CHECK(where(R"("bound": true)") == "binding_mm");
  CHECK(where(R"("bound": false, "binding_mm": 1.6)") == "binding_mm");
  CHECK(where(R"("binding_mm": 0.1)") == "binding_mm");
  CHECK(where(R"("binding_mm": 2.7)") == "binding_mm"); // the crown would reach 3.1 mm beyond its tang
  CHECK(where(R"("treble_scale_mm": 560)") == "square_slot");
  CHECK(where(R"("treble_scale_mm": 560, "square_slot": 13)") == "square_slot");
  CHECK(where(R"("treble_scale_mm": 620, "square_slot": 5)") == "treble_scale_mm");
  CHECK(where(R"("fanned": true)") == "treble_scale_mm");
  CHECK(where(R"("fanned": false, "treble_scale_mm": 560, "square_slot": 0)") == "treble_scale_mm");
  CHECK(where(R"("flat": true, "radius_mm": 300)") == "radius_mm");
  CHECK(where(R"("flat": true, "nut_radius_mm": 300, "far_radius_mm": 400)") == "nut_radius_mm");
  CHECK(where(R"("square_slot": 5)") == "square_slot");
  CHECK(where(R"("string_inset_mm": 5)") == "string_inset_mm");
  CHECK(where(R"("treble_scale_mm": 560, "square_slot": 5, "string_inset_mm": 26)") == "string_inset_mm");
  CHECK(where(R"("divisions": 4)") == "divisions");
  CHECK(where(R"("positions_mm": [10, 20])") == "positions_mm");
  CHECK(where(R"("widths_mm": [52, 53], "width_slots": [3])") == "width_slots");
  CHECK(where(R"("widths_mm": [52], "width_slots": [12])") == "widths_mm"); // the far width is there
  CHECK(where(R"("far_slot": 5, "far_distance_mm": 200)") == "far_distance_mm");
  CHECK(where(R"("far_distance_mm": 601)") == "far_distance_mm");
  CHECK(where(R"("slots": "0-3")") == "slots");
  CHECK(
      where(
          R"("positions_mm": [30, 60, 90, 120, 150, 180, 210, 240, 250, 260, 270, 280], "divisions": 12)") ==
      "divisions");
  CHECK(shop.rows_of("job") == jobs);
}

TEST_CASE("a width measured later overrides the line, and says what becomes of the fret that is made") {
  Shop shop;
  shop.does("new-job", a_board(R"("radius_mm": 300)"));
  shop.does("add", R"({"wire": 1, "length_mm": [51.5], "ends": "dressed"})");
  shop.does("use", R"({"piece": 1, "job": 3, "slot": 5})");
  const Answer a = shop.does("board-width", R"({"job": 3, "slot": 5, "width_mm": 53})");
  // The line of (0, 52), (12, 52) and (5, 53), slot 5 lying at 600·(1 − 2^(−5/12)) = 150.508 mm, has 52.33
  // there.
  CHECK(a.text.find("Job 3 is 53.00 mm wide at slot 5 now, it was 52.00 mm. Not on one straight line") == 0);
  CHECK(a.text.find("53.00 mm at slot 5, where the line has 52.33 mm") != std::string::npos);
  CHECK(a.reason.find("Its fret, 51.50 mm long, is too short by") != std::string::npos);
  CHECK(shop.asks("slots", R"({"job": 3, "slots": "5"})").table->rows.at(0)[2] == "53.00 mm");
  shop.does("board-width", R"({"job": 3, "slot": 5, "width_mm": 52})"); // again: the newest counts
  const auto board = shop.seen([](const View& v) { return v.jobs().find(3)->board; });
  CHECK(board.more_widths == std::vector{board::MeasuredWidth{5, 52_mm}});
}

TEST_CASE("the widths that a job came in with may be measured again, at the nut and at the far slot") {
  Shop shop;
  shop.does("new-job", a_board(R"("far_slot": 12)"));
  shop.does("board-width", R"({"job": 3, "slot": 0, "width_mm": 51})");
  shop.does("board-width", R"({"job": 3, "slot": 12, "width_mm": 53})");
  const auto board = shop.seen([](const View& v) { return v.jobs().find(3)->board; });
  CHECK(board.nut_width == 51_mm);
  CHECK(board.far_width == 53_mm);
  CHECK(board.more_widths.empty());
}

TEST_CASE("a width that cannot be is refused and changes nothing") {
  Shop shop;
  shop.does("new-job", a_board(R"("radius_mm": 27)"));
  const std::string before = shop.dump();
  CHECK(shop.refused("board-width", R"({"job": 3, "slot": 13, "width_mm": 52})").where == "slot");
  CHECK(shop.refused("board-width", R"({"job": 3, "slot": 5, "width_mm": 4})").where == "width_mm");
  CHECK(shop.refused("board-width", R"({"job": 3, "slot": 5, "width_mm": 55})").where ==
        "width_mm"); // over 2R
  CHECK(shop.refused("board-width", R"({"job": 3, "slot": 0, "width_mm": 53})").where ==
        "width_mm"); // narrows
  CHECK(shop.refused("board-width", R"({"job": 9, "slot": 5, "width_mm": 52})").where == "job");
  CHECK(shop.dump() == before);
}

TEST_CASE("what is measured across the bent ends is longer along the wire, for pieces and frets alike") {
  Shop shop;
  // 2·100·asin(50/200) = 50.5360510...
  const Answer a =
      shop.does("add", R"({"wire": 1, "length_mm": [50], "measured": "across", "bend_radius_mm": 100})");
  CHECK(a.text ==
        "Put 1 short fret of medium into the tin: 50.54 mm (50.00 mm across its ends, bent to 100.00 mm).");
  CHECK(shop.seen([](const View& v) { return v.tin().find(1)->length; }) == units::Length{50'536'051});
  const Answer fret = shop.does(
      "measured", R"({"job": 1, "slot": 2, "length_mm": 50, "measured": "across", "bend_radius_mm": 100})");
  CHECK(field<Length>(fret, "length") == units::Length{50'536'051});
  const Answer came = shop.does(
      "came-short", R"({"job": 1, "slot": 3, "length_mm": 50, "measured": "across", "bend_radius_mm": 100})");
  CHECK(field<Length>(came, "length") == units::Length{50'536'051});
  for (const char* row : {"add", "measured", "came-short"}) {
    const std::string json = std::string(R"({"length_mm": 50, "measured": "across", )") +
                             (row == std::string("add") ? R"("wire": 1)" : R"("job": 1, "slot": 4)");
    CHECK(shop.refused(row, json + "}").where == "bend_radius_mm");
    CHECK(shop.refused(row, json + R"(, "bend_radius_mm": 24.9})").where == "bend_radius_mm");
  }
}
