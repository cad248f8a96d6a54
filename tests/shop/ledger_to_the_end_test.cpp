// The ledger's commands: stocktaking, weighing, correcting, cutting several frets from one piece, pulling
// frets, lots; and the balance that adds them all up. Figures by hand; job 1's slots take 52.5 mm each
// (bench.hpp).
#include "bench.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

Length on_hand(Shop& shop, std::int64_t wire = 1) {
  return shop.seen([&](const View& v) { return v.wires().on_hand(wire); });
}

std::int64_t nm(const Value& books, std::string_view field) {
  return as<std::int64_t>(at(books, field));
}

// The books of medium.
Value books(Shop& shop, const std::string& when = "") {
  return item(
      at(shop.asks("balance", R"({"wire": 1)" + (when.empty() ? "" : ", " + when) + "}").data, "wires"), 0);
}

} // namespace

TEST_CASE("a stocktake by sticks or by length brings what is on hand to what was counted") {
  Shop shop; // 10 sticks of 600 mm
  const Answer a = shop.does("count", R"({"wire": 1, "sticks": 7})");
  CHECK(a.text ==
        "Counted 7 sticks of 600.00 mm of medium: 4.20 m is on hand now, 1.80 m less than the ledger had.");
  CHECK(on_hand(shop) == 4200_mm);
  CHECK(shop.does("count", R"({"wire": 1, "length_mm": 4200})").text ==
        "Counted 4.20 m of medium: 4.20 m is on hand, as the ledger had it.");
  shop.does("count", R"({"wire": 1, "sticks": 3, "each_mm": 500})");
  CHECK(on_hand(shop) == 1500_mm);
  shop.does("count", R"({"wire": 1, "sticks": 0})");
  CHECK(on_hand(shop) == 0_mm);
}

TEST_CASE("a stocktake without a number, with two, or of a wire whose stick is unknown is refused") {
  Shop shop;
  CHECK(shop.refused("count", R"({"wire": 1})").where == "sticks");
  CHECK(shop.refused("count", R"({"wire": 1, "sticks": 3, "length_mm": 700})").where == "length_mm");
  CHECK(shop.refused("count", R"({"wire": 1, "sticks": -1})").where == "sticks");
  CHECK(shop.refused("count", R"({"wire": 1, "length_mm": -5})").where == "length_mm");
  shop.does("define-wire", R"({"name": "odd"})");
  CHECK(shop.refused("count", R"({"wire": "odd", "sticks": 3})").where == "each_mm");
}

TEST_CASE("only a correction goes below nothing, says so, and wants its reason") {
  Shop shop;
  const Answer a =
      shop.does("correct", R"({"wire": 1, "by_mm": -6500, "why": "two deliveries were mixed up"})");
  CHECK(a.text ==
        "Corrected medium: -0.50 m is on hand now, 6.50 m less than the ledger had: two deliveries were "
        "mixed up. That is less than nothing: enter the delivery that is missing, or count medium.");
  CHECK(field<bool>(a, "less_than_nothing"));
  CHECK(on_hand(shop) == -(500_mm));
  CHECK(shop.refused("correct", R"({"wire": 1, "to_mm": 5, "why": "  "})").where == "why");
  CHECK(shop.refused("correct", R"({"wire": 1, "to_mm": 5})").where == "why");
  CHECK(shop.refused("correct", R"({"to_mm": 5, "why": "x"})").where == "wire");
  CHECK(shop.refused("correct", R"({"wire": 1, "why": "x"})").where == "to_mm");
  CHECK(shop.refused("correct", R"({"wire": 1, "to_mm": 5, "by_mm": 1, "why": "x"})").where == "to_mm");
  CHECK(shop.refused("correct", R"({"wire": 1, "to_mm": 1e9, "why": "x"})").where == "to_mm");
}

TEST_CASE("a piece that was measured wrong is corrected, but not to what no piece measures") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  shop.does("correct", R"({"piece": 1, "to_mm": 51.2, "why": "measured again"})");
  CHECK(shop.seen([](const View& v) { return v.tin().find(1)->length; }) == 51.2_mm);
  CHECK(shop.refused("correct", R"({"piece": 1, "by_mm": -51, "why": "x"})").where == "to_mm");
  shop.does("add", R"({"wire": 1, "count": 4})");
  CHECK(shop.refused("correct", R"({"piece": 2, "to_mm": 50, "why": "x"})").fault == Fault::state);
}

TEST_CASE("a coil is weighed less its spool, by what a known length weighs") {
  Shop shop;
  shop.does("receive", R"({"wire": 2, "form": "coil", "each_mm": 20000})");
  CHECK(shop.refused("weigh", R"({"wire": 2, "mass_g": 620})").where == "tare_g");
  CHECK(shop.refused("weigh", R"({"wire": 2, "mass_g": 620, "tare_g": 120})").where ==
        "wire"); // a metre is unknown
  // 24 g/m; ± √((0.5/600)² + (0.1/14.4)²) = 0.699 %.
  CHECK(shop.does("calibrate", R"({"wire": 2, "length_mm": 600, "mass_g": 14.4, "division_g": 0.1})").text ==
        "A metre of narrow weighs 24 g ± 0.7 %, from 600.00 mm that weigh 14.4 g.");
  const Answer a = shop.does("weigh", R"({"wire": 2, "mass_g": 600, "tare_g": 120, "division_g": 0.1})");
  CHECK(a.text ==
        "480 g of narrow (less 120 g of spool) is 20.00 m ± 0.14 m. That is on hand now; the ledger had "
        "20.00 m, the same.");
  const Answer b =
      shop.does("weigh", R"({"wire": 2, "mass_g": 480, "tare_g": 0, "division_g": 0.1, "besides_mm": 1000})");
  CHECK(on_hand(shop, 2) == 21000_mm);
  CHECK(field<Length>(b, "difference") == 1000_mm);
  CHECK_FALSE(field<bool>(b, "within_error"));
  CHECK(b.text.find("the ledger had 20.00 m, 1.00 m less") != std::string::npos);
}

TEST_CASE("sticks are weighed without a tare, by profile and material where nothing was calibrated") {
  Shop shop;
  shop.does("define-wire", R"({"name": "wide", "material": "nickel silver", "crown_width_mm": 2.7,
      "crown_height_mm": 1.0, "tang_depth_mm": 1.6, "tang_thickness_mm": 0.5, "stick_mm": 600})");
  // 2.784330742525942 mm² · 8.73 = 24.3072 g/m: 243.072074 g are 10 m.
  const Answer a = shop.does("weigh", R"({"wire": "wide", "mass_g": 243.072})");
  CHECK(units::abs(field<Length>(a, "weighed") - 9999.997_mm) < 0.001_mm);
  CHECK(a.reason.find("by its profile and 8.73 g/cm³ (C75200: CDA, from memory") != std::string::npos);
  CHECK(a.reason.find("24.31 g ± 5 %") != std::string::npos);
}

TEST_CASE("a spool heavier than the coil, and a mass in the wrong unit, are refused") {
  Shop shop;
  shop.does("calibrate", R"({"wire": 1, "length_mm": 600, "mass_g": 14.4, "division_g": 0.1})");
  CHECK(shop.refused("weigh", R"({"wire": 1, "mass_g": 100, "tare_g": 100})").where == "tare_g");
  CHECK(shop.refused("weigh", R"({"wire": 1, "mass_g": 0})").where == "mass_g");
  CHECK(shop.refused("weigh", R"({"wire": 1, "mass_g": "52 mm"})").where == "mass_g");
  CHECK(shop.refused("calibrate", R"({"wire": 1, "length_mm": 600, "mass_g": 14400})").where == "mass_g");
  CHECK(shop.refused("calibrate", R"({"wire": 1, "length_mm": 40, "mass_g": 1})").where == "mass_g");
}

TEST_CASE("one stick end gives several frets in one go, and its rest is kept where a fret could need it") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 210, "kind": "stick_end"})");
  // 3 × 52.5 and 3 nips of 0.5: 51 left, and the shortest raw length is 50.9 + 1 = 51.9.
  const Answer a = shop.does("cut-from", R"({"piece": 1, "job": 1, "slots": "1,2,3"})");
  CHECK(
      a.text ==
      "Cut slots 1-3 of job 1 (test board of Vida) from the 210.00 mm stick end of medium (piece 1): 52.50 "
      "mm "
      "for 1, 52.50 mm for 2, 52.50 mm for 3. The 51.00 mm left are scrap: no job on record needs less than "
      "51.90 mm.");
  auto p = shop.places();
  CHECK(p["board"] == 154'500'000);            // 3 × 51.5
  CHECK(p["scrap"] == 3'000'000 + 51'000'000); // dressing, and the rest
  CHECK(p["kerf"] == 1'500'000);
  CHECK(p["tin"] == 0);
  CHECK_FALSE(shop.seen([](const View& v) { return v.tin().find(1)->in_tin; }));
  shop.does("undo");
  shop.does("correct", R"({"piece": 1, "to_mm": 211, "why": "measured again"})");
  const Answer b = shop.does("cut-from", R"({"piece": 1, "job": 1, "slots": "1,2,3"})");
  CHECK(field<bool>(b, "kept"));
  CHECK(shop.seen([](const View& v) { return v.tin().find(1)->length; }) == 52_mm);
  CHECK(shop.seen([](const View& v) { return v.jobs().frets(1).size(); }) == 3);
}

TEST_CASE("only the last fret of a piece may be shorter than its cut") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 105.1, "kind": "stick_end"})"); // 52.5 + 0.5 + 52.1
  const Answer a = shop.does("cut-from", R"({"piece": 1, "job": 1, "slots": "1,2"})");
  const Value& second = item(at(a.data, "frets"), 1);
  CHECK(as<Length>(at(second, "cut")) == 52.1_mm);
  CHECK(as<Length>(at(second, "finish")) == 51.1_mm); // both ends dressed: 52.1 − 2 · 0.5
  CHECK(a.text.find("Nothing is left.") != std::string::npos);
  CHECK(shop.places()["tin"] == 0);
  shop.does("add", R"({"wire": 1, "length_mm": 104.9, "kind": "stick_end"})"); // the last would be borderline
  const Problem p = shop.refused("cut-from", R"({"piece": 2, "job": 1, "slots": "3,4"})");
  CHECK(p.fault == Fault::state);
  CHECK(p.text.find("too short for slots 3-4 of job 1 (test board of Vida) by 0.60 mm") != std::string::npos);
}

TEST_CASE("cutting from a piece refuses slots that are taken or missing, and pieces of other wire or held "
          "elsewhere") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [210, 120], "kind": "stick_end"})");
  shop.does("add", R"({"wire": 2, "length_mm": 210})");
  CHECK(shop.refused("cut-from", R"({"piece": 1, "job": 1, "slots": "3,9"})").where == "slots");
  CHECK(shop.refused("cut-from", R"({"piece": 3, "job": 1, "slots": "3"})").fault == Fault::state);
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 4})");
  CHECK(shop.refused("cut-from", R"({"piece": 1, "job": 1, "slots": "3,4"})").fault == Fault::state);
  shop.does("use", R"({"piece": 2, "job": 1, "slot": 1})");
  CHECK(shop.refused("cut-from", R"({"piece": 2, "job": 1, "slots": "1"})").where == "slot");
  CHECK(shop.refused("cut-from", R"({"piece": 1, "job": 1, "slots": "1-4"})").fault == Fault::state);
}

TEST_CASE("the least useful length comes from every job on record, done and cancelled ones too") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [100, 100], "kind": "stick_end"})");
  // 100 − 52.5 − 0.5 = 47 is under 51.9.
  CHECK(shop.does("use", R"({"piece": 1, "job": 1, "slot": 1})").text.find("The 47.00 mm left are scrap") !=
        std::string::npos);
  // A board 40 mm wide: 40 − 1.1 + 1 = 39.9.
  shop.does("new-job", R"({"wire": 1, "scale_mm": 400, "frets": 2, "nut_width_mm": 40, "far_width_mm": 40,
                           "far_slot": 2})");
  shop.does("cancel-job", R"({"job": 3})", true);
  CHECK(field<Length>(shop.does("use", R"({"piece": 2, "job": 1, "slot": 2})"), "leaves_mm") == 47_mm);
}

TEST_CASE("old frets go into the tin by number, the job's own by slot, which is open again then") {
  Shop shop;
  const Problem p = shop.refused("pulled", R"({"job": 1, "count": 20})");
  CHECK(p.fault == Fault::ambiguous);
  CHECK(p.choices.at(0).label == "medium, as the job takes");
  CHECK(p.choices.size() == 2);
  shop.does("pulled", R"({"job": 1, "count": 20, "wire": 1})");
  const Piece old = shop.seen([](const View& v) { return *v.tin().find(1); });
  CHECK(old.count == 20);
  CHECK(old.kind == pieces::Kind::pulled_fret);
  CHECK_FALSE(old.length);
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("finished", R"({"job": 1, "stage": "dress"})");
  const Answer a = shop.does("pulled", R"({"job": 1, "slots": "2"})");
  CHECK(
      a.text ==
      "Put 1 pulled fret of medium, from job 1 (test board of Vida), into the tin; its slot is open again.");
  CHECK(shop.seen([](const View& v) { return v.tin().find(2)->length; }) == 51.5_mm);
  CHECK(shop.places()["tin"] == 51'500'000);
  CHECK(shop.refused("pulled", R"({"job": 1, "slots": "2"})").where == "slots");
  CHECK(shop.refused("pulled", R"({"job": 1})").where == "count");
  CHECK(shop.refused("pulled", R"({"job": 1, "slots": "1", "count": 2})").where == "count");
  CHECK(shop.refused("pulled", R"({"job": 1, "slots": "1", "wire": 2})").where == "wire");
}

TEST_CASE("a job that is fretted from a lot is offered no piece with another crown") {
  Shop shop;
  shop.does("receive", R"({"wire": 1, "count": 2, "crown_height_mm": 1.20})"); // lot 2
  shop.does("receive", R"({"wire": 1, "count": 2, "crown_height_mm": 1.24})"); // lot 3
  shop.does("add", R"({"wire": 1, "length_mm": 52.5, "lot": 3})");             // the best by length
  shop.does("add", R"({"wire": 1, "length_mm": 53.0, "lot": 2})");
  CHECK(as<Ref>(at(item(at(shop.asks("fit", R"({"job": 1, "slot": 1})").data, "pieces"), 0), "piece")).id ==
        1);
  const Answer named = shop.does("from-lot", R"({"job": 1, "lot": 2})");
  CHECK(named.text == "Job 1 (test board of Vida) is fretted from lot 2 of medium.");
  const Answer a = shop.asks("fit", R"({"job": 1, "slot": 1})");
  CHECK(size(at(a.data, "pieces")) == 1);
  CHECK(as<Ref>(at(item(at(a.data, "pieces"), 0), "piece")).id == 2);
  CHECK(shop.refused("use", R"({"piece": 1, "job": 1, "slot": 1})").where == "piece");
  shop.does("use", R"({"piece": 2, "job": 1, "slot": 1})");
}

TEST_CASE("a lot that is not there, or of another wire, is refused where it is named") {
  Shop shop;
  CHECK(shop.refused("from-lot", R"({"job": 1, "lot": 9})").where == "lot");
  CHECK(shop.refused("from-lot", R"({"job": 2, "lot": 1})").text == "Lot 1 is of medium, not of narrow.");
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 50, "lot": 9})").where == "lot");
  CHECK(shop.refused("from-lot", R"({"job": 1, "lot": "1.5"})").where == "lot");
}

TEST_CASE("the lots of a wire are listed with their crowns") {
  Shop shop;
  shop.does("receive", R"({"wire": 1, "count": 2, "crown_height_mm": 1.2, "supplier": "the mill"})");
  const Answer a = shop.asks("lots", R"({"wire": 1})");
  CHECK(a.text ==
        "2 lots of medium on record. The newest came Wed 25 Mar 2026: 2 sticks of 600.00 mm from the "
        "mill, at a price that nobody said.");
  CHECK(a.table->rows.at(0) == std::vector<std::string>{"2", "medium", "Wed 25 Mar 2026",
                                                        "2 sticks of 600.00 mm", "1.20 mm", "the mill",
                                                        "not said", "-"});
  CHECK(shop.asks("lots", R"({"wire": 2})").text == "No delivery of narrow is on record.");
}

TEST_CASE("a month's books add up to the nanometre, with undone, counted and corrected wire in them") {
  Shop shop; // 6 m received on 25 March
  shop.does("add", R"({"wire": 1, "length_mm": [52.396875, 120, 53]})");
  shop.does("use", R"({"piece": 2, "job": 1, "slot": 1})"); // finish 51.5, dressing 1, kerf 0.5, 67 stay
  shop.does("undo");
  shop.does("use", R"({"piece": 2, "job": 1, "slot": 1})");
  shop.does("scrap", R"({"piece": 3})");
  shop.does("count", R"({"wire": 1, "length_mm": 5900})");
  shop.does("receive", R"({"wire": 1, "count": 1})");
  shop.does("undo");
  const Value b = books(shop);
  CHECK(nm(b, "before_nm") == 0);
  CHECK(nm(b, "received_nm") == 6'000'000'000);
  CHECK(nm(b, "counted_in_nm") == 225'396'875 - 100'000'000);
  CHECK(nm(b, "used_nm") == 51'500'000);
  CHECK(nm(b, "scrapped_nm") == 54'000'000);
  CHECK(nm(b, "kerf_nm") == 500'000);
  CHECK(nm(b, "in_the_tin_nm") == 52'396'875 + 67'000'000);
  CHECK(nm(b, "on_hand_nm") == 5'900'000'000);
  CHECK(as<bool>(at(b, "adds_up")));
}

TEST_CASE("wire of one month is at the start of the next one, in the shop's zone") {
  Shop shop;
  // 31 March 23:30 in Berlin is 21:30 UTC; 1 April 00:30 there is 31 March 22:30 UTC.
  shop.clock.to("2026-04-15T10:00:00Z");
  shop.does("receive", R"({"wire": 1, "count": 1, "at": "2026-03-31T21:30:00Z"})");
  shop.does("receive", R"({"wire": 1, "count": 2, "at": "2026-03-31T22:30:00Z"})");
  CHECK(nm(books(shop, R"("month": "last_month")"), "received_nm") == 6'600'000'000);
  CHECK(nm(books(shop, R"("month": "march", "year": 2026)"), "on_hand_nm") == 6'600'000'000);
  const Value april = books(shop, R"("month": "this_month")");
  CHECK(nm(april, "before_nm") == 6'600'000'000);
  CHECK(nm(april, "received_nm") == 1'200'000'000);
  CHECK(nm(april, "on_hand_nm") == 7'800'000'000);
  CHECK(nm(books(shop, R"("month": "all_time")"), "received_nm") == 7'800'000'000);
  CHECK(nm(books(shop, R"("from_on": "2026-04-01", "until_on": "2026-04-01")"), "received_nm") ==
        1'200'000'000);
  // May has not begun: the last May is that of 2025.
  CHECK(nm(books(shop, R"("month": "may")"), "on_hand_nm") == 0);
  const std::string text = shop.asks("balance", R"({"wire": 1, "month": "may"})").text;
  CHECK(text.find("Medium in May 2025:") == 0);
}

TEST_CASE("a balance of two periods at once, or of days the wrong way round, is refused") {
  Shop shop;
  CHECK(shop.unanswered("balance", R"({"month": "may", "from_on": "2026-01-01"})").where == "from_on");
  CHECK(shop.unanswered("balance", R"({"year": 2026})").where == "year");
  CHECK(shop.unanswered("balance", R"({"from_on": "2026-02-01", "until_on": "2026-01-01"})").where ==
        "until_on");
  CHECK(shop.unanswered("balance", R"({"month": "smarch"})").where == "month");
  CHECK(shop.unanswered("balance", R"({"month": "may", "year": 20260})").where == "year");
}
