// The cut plan through the executor. Figures by hand from DESIGN 4.2 and 4.5: each slot of job 1 is cut
// to 52.5 mm, takes 50.9 to 52, and the shortest raw length that is of use is 51.9 mm; a nip loses 0.5 mm.
#include "bench.hpp"
#include "support/catch.hpp"

#include <set>

using namespace nutward;
using namespace nutward::test;

namespace {

Length mm(const Value& record, std::string_view name) {
  return as<Length>(at(record, name));
}

const Value& cut(const Answer& a, std::size_t n) {
  return item(at(a.data, "cuts"), n);
}

// Of every piece and stick: what is in frets, nips, scrap and what is left is all that there was.
void check_nothing_is_lost(const Answer& a) {
  const Value& cuts = at(a.data, "cuts");
  for (std::size_t i = 0; i < size(cuts); ++i) {
    const Value& one = item(cuts, i);
    Length sum = mm(one, "kerf") + mm(one, "scrap") + mm(one, "left");
    const Value& frets = at(one, "frets");
    for (std::size_t k = 0; k < size(frets); ++k)
      sum += mm(item(frets, k), "length");
    INFO("cut " << i);
    CHECK(sum == mm(one, "length"));
  }
}

} // namespace

TEST_CASE("four frets of a stick: marks behind each nip, and the end goes into the tin") {
  Shop shop;
  const Answer a = shop.asks("cuts", R"({"job": 1})");
  CHECK(a.kind == "cuts");
  CHECK(a.text ==
        "4 open frets of job 1 (test board of Vida): 4 from 1 new stick, 212.00 mm of new wire. Then goes "
        "into the tin: 388.00 mm.");
  CHECK(a.reason ==
        "Planned as if job 1 were alone; 'cut list for job 1' is its part of the plan for the whole "
        "queue. Proved best: no other plan serves more, takes less new wire, or wastes less.");
  CHECK(in_words(a) == "stick 1, 600.00 mm|1|1|52.50 mm|52.50 mm||\n"
                       "|1|2|52.50 mm|105.50 mm||\n"
                       "|1|3|52.50 mm|158.50 mm||\n"
                       "|1|4|52.50 mm|211.50 mm|388.00 mm to the tin|\n");
  CHECK(a.cautions == std::vector{Hazard::nipping, Hazard::sanding});
  CHECK(field<Length>(a, "new_wire") == 212_mm);
  CHECK(field<std::string>(a, "proved") == "best");
  CHECK(mm(cut(a, 0), "kerf") == 2_mm);
  CHECK(mm(cut(a, 0), "left") == 388_mm);
  check_nothing_is_lost(a);
}

TEST_CASE("pieces come before new wire, and the last fret of a long one takes the rest") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw", "place": "drawer 2"})");
  shop.does("add", R"({"wire": 1, "length_mm": 160, "kind": "stick_end", "ends": "raw"})");
  const Answer a = shop.asks("cuts", R"({"wire": "medium"})");
  CHECK(a.text == "4 open frets of medium: 4 from 2 pieces.");
  // 160 − 2·(52.5 + 0.5) = 54: of two raw ends 1 mm is dressed off, and 1.5 is nipped off.
  CHECK(in_words(a).find("|54.00 mm|no cut|nip 1.50 mm off and dress both ends, to 51.50 mm|") !=
        std::string::npos);
  CHECK(in_words(a).find("piece 1, 52.40 mm, drawer 2|") != std::string::npos);
  CHECK(in_words(a).find("|no cut|dress both ends, to 51.40 mm|") != std::string::npos);
  CHECK(field<Length>(a, "new_wire") == 0_mm);
  CHECK(field<Length>(a, "scrap") == 1.5_mm);
  check_nothing_is_lost(a);
}

TEST_CASE("with the tin alone what goes without is said, slot by slot and why") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw"})");
  const Answer a = shop.asks("cuts", R"({"job": 1, "tin_only": true})");
  CHECK(a.text ==
        "4 open frets of job 1 (test board of Vida): 1 from 1 piece; 3 get none. With the tin alone. Without "
        "a fret: slots 2-4 of job 1 (nothing in the tin is left for it).");
  CHECK(size(at(a.data, "goes_without")) == 3);
  CHECK(as<std::string>(at(item(at(a.data, "goes_without"), 0), "why")) == "no_stock");
  CHECK(shop.asks("cuts", R"({"job": 2})").text.find("(there is no new wire)") != std::string::npos);
}

TEST_CASE("a piece that is held serves its slot, and one held for something else is named and left alone") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 51.8], "ends": "raw"})");
  shop.does("add", R"({"wire": 1, "length_mm": 51.5, "ends": "dressed"})");
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 3})");
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 1, "nut_width_mm": 52, "far_width_mm": 52})");
  shop.does("measured", R"({"job": 3, "slot": 1, "length_mm": 51.5})");
  shop.does("hold", R"({"piece": 3, "job": 3})");
  const Answer all = shop.asks("cuts", R"({"wire": 1})");
  CHECK(all.text.starts_with(
      "4 open frets of medium: 1 from 1 piece (1 of them held); 3 from 1 new stick, 159.00 mm "
      "of new wire."));
  CHECK(all.reason.find("Held for something else and left alone: piece 3.") != std::string::npos);
  // 51.8 with both ends dressed is 50.8: a tenth short of the least, which is the caliper's error.
  CHECK(all.reason.find("try first: piece 2 for slot 1 of job 1.") != std::string::npos);
  CHECK(as<bool>(at(cut(all, 0), "held")));
  CHECK(as<std::int64_t>(at(item(at(cut(all, 0), "frets"), 0), "slot")) == 3);
  check_nothing_is_lost(all);
  // Held for the job as a whole it serves that job, planned alone and with the others.
  shop.does("let-go", R"({"piece": 3})");
  shop.does("hold", R"({"piece": 3, "job": 1})");
  CHECK(shop.asks("cuts", R"({"job": 1})")
            .text.find(": 2 from 2 pieces (1 of them held); 2 from 1 new stick") != std::string::npos);
  CHECK(shop.asks("cuts", R"({"wire": 1})")
            .text.find(": 2 from 2 pieces (2 of them held); 2 from 1 new stick") != std::string::npos);
}

TEST_CASE("a held piece that cannot do is named, and its slot planned anew") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw"})");
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 3})");
  shop.does("correct", R"({"piece": 1, "to_mm": 40, "why": "broke"})");
  const Answer a = shop.asks("cuts", R"({"job": 1})");
  CHECK(a.reason.find("Piece 1 does not fit slot 3 of job 1, for which it is held: planned anew.") !=
        std::string::npos);
  CHECK(field<std::int64_t>(a, "from_new") == 4);
  CHECK(as<std::string>(at(item(at(a.data, "not_used"), 0), "why")) == "held_no_more");
}

TEST_CASE("a stick that goes through the bender is flat at both ends: the first mark is behind that") {
  Shop shop;
  shop.does("cancel-job", R"({"job": 1})", true);
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52,
                           "radius_mm": 300})");
  const Answer a = shop.asks("cuts", R"({"wire": 1})");
  CHECK(mm(cut(a, 0), "begin") == 12_mm);
  CHECK(in_words(a).starts_with("stick 1, 600.00 mm|||flat end|12.00 mm|scrap|\n|3|1|"));
  const Value& first = item(at(cut(a, 0), "frets"), 0);
  CHECK(mm(first, "mark_mm") == 12_mm + mm(first, "length"));
  CHECK(field<Length>(a, "scrap") == 12_mm);
  CHECK(a.reason.find("The bender leaves 12.00 mm flat at each end of a stick.") != std::string::npos);
  check_nothing_is_lost(a);
  shop.does("set", R"({"setting": "flat_end", "to": "0 mm"})");
  CHECK(mm(cut(shop.asks("cuts", R"({"wire": 1})"), 0), "begin") == 0_mm);
}

TEST_CASE("sticks that were said are cut from instead, to a last nip that is cut short by the stick's end") {
  Shop shop;
  const Answer a = shop.asks("cuts", R"({"job": 1, "sticks_mm": [105.7, 52.5]})");
  CHECK(field<std::int64_t>(a, "sticks") == 2);
  CHECK(field<std::int64_t>(a, "short") == 1);
  check_nothing_is_lost(a);
  std::set<std::int64_t> kerfs{mm(cut(a, 0), "kerf").nm, mm(cut(a, 1), "kerf").nm};
  CHECK(kerfs == std::set<std::int64_t>{0, 700'000});
  CHECK(shop.unanswered("cuts", R"({"sticks_mm": [600]})").where == "wire");
  CHECK(shop.unanswered("cuts", R"({"job": 1, "sticks_mm": [600], "tin_only": true})").where == "sticks_mm");
  CHECK(shop.unanswered("cuts", R"({"job": 1, "wire": 2})").where == "wire");
  CHECK(shop.asks("cuts", R"({"job": 1, "sticks_mm": [20]})").text.find("nothing on hand is long enough") !=
        std::string::npos);
}

TEST_CASE("the newest delivery is taken to be whole, and what is less than a stick is loose") {
  Shop shop;
  shop.does("receive", R"({"wire": 1, "count": 1, "form": "coil", "each_mm": 5000})");
  const Answer coil = shop.asks("cuts", R"({"wire": 1})");
  CHECK(coil.text == "4 open frets of medium: 4 from 1 coil, 212.00 mm of new wire.");
  CHECK(as<Ref>(at(cut(coil, 0), "lot")) == Ref{Thing::lot, 2});
  CHECK(in_words(coil).find("|4.788 m stay on the coil|") != std::string::npos);
  shop.does("correct", R"({"wire": 1, "to_mm": 5300, "why": "counted"})");
  CHECK(field<Length>(shop.asks("cuts", R"({"wire": 1})"), "loose") == 300_mm);
}

TEST_CASE("all wires are planned each by itself, and a shop without open slots has nothing to cut") {
  Shop shop;
  const Answer a = shop.asks("cuts");
  REQUIRE(size(at(a.data, "wires")) == 2);
  CHECK(a.text.starts_with(
      "28 open frets of 2 wires: 4 from 1 new stick, 212.00 mm of new wire; 24 get none."));
  REQUIRE(a.table->rows.size() == 2);
  CHECK(a.table->rows[0] ==
        std::vector<std::string>{"medium", "4", "0", "4", "1", "212.00 mm", "0", "proved best"});
  shop.does("cancel-job", R"({"job": 1})", true);
  CHECK(shop.asks("cuts", R"({"wire": 1})").text == "No slot of medium is open: nothing to cut.");
  shop.does("cancel-job", R"({"job": 2})", true);
  CHECK(shop.asks("cuts").text == "No job has an open slot: nothing to cut.");
}

TEST_CASE("who is due first gets the wire that is short") {
  Shop shop;
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52,
                           "due": "2026-04-01"})");
  const Answer a = shop.asks("cuts", R"({"wire": 1, "sticks_mm": [230]})");
  CHECK(a.text.find(
            "Without a fret: slots 1-4 of job 1 (what would do goes to slots due earlier, or as soon).") !=
        std::string::npos);
}
