// The tin through the executor: pieces in, held, let go, scrapped. All figures by hand from DESIGN 4.2
// and 4.4.
#include "bench.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

TEST_CASE("three lengths become three pieces, with their kind, ends and place") {
  Shop shop;
  const Answer a = shop.does(
      "add",
      R"({"wire": "medium", "length_mm": [52.4, 51.0, 50.2], "ends": "dressed", "place": "drawer 2"})");
  CHECK(a.kind == "done");
  CHECK(a.text == "Put 3 short frets of medium into the tin: 52.40 mm, 51.00 mm, 50.20 mm; drawer 2.");
  REQUIRE(size(at(a.data, "pieces")) == 3);
  CHECK(as<Ref>(item(at(a.data, "pieces"), 2)) == Ref{Thing::piece, 3});
  const Piece p = shop.seen([](const View& v) { return *v.tin().find(2); });
  CHECK(p.length == 51_mm);
  CHECK(p.kind == pieces::Kind::short_fret);
  CHECK(p.left == End::dressed);
  CHECK(p.right == End::dressed);
  CHECK(p.place == "drawer 2");
  CHECK(p.added == instant("2026-03-25T10:00:00Z"));
  CHECK(shop.places()["tin"] == 153'600'000);
}

TEST_CASE("one raw end, a nipped tang and a time of its own are kept") {
  Shop shop;
  shop.does(
      "add",
      R"({"wire": 1, "length_mm": 90, "kind": "stick_end", "ends": "one_raw", "tang_mm": 80, "at": "2026-03-20T08:00:00Z"})");
  const Piece p = shop.seen([](const View& v) { return *v.tin().find(1); });
  CHECK(p.left == End::dressed);
  CHECK(p.right == End::raw);
  CHECK(p.tang == 80_mm);
  CHECK(p.kind == pieces::Kind::stick_end);
  CHECK(p.added == instant("2026-03-20T08:00:00Z"));
}

TEST_CASE("a chord over bent ends is kept as the length along the wire") {
  Shop shop;
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 60, "measured": "across"})").where ==
        "bend_radius_mm");
  // The ends of a half circle of radius 30 mm are 60 mm apart: π·30 = 94.247 779 607 7 mm along it.
  shop.does("add", R"({"wire": 1, "length_mm": 60, "measured": "across", "bend_radius_mm": 30})");
  CHECK(shop.seen([](const View& v) { return *v.tin().find(1)->length; }) == Length{94'247'780});
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 60.1, "measured": "across", "bend_radius_mm": 30})")
            .where == "bend_radius_mm");
}

TEST_CASE("a handful nobody has measured is one entry without a length, and is measured later") {
  Shop shop;
  const Answer a = shop.does("add", R"({"wire": 1, "count": 7, "place": "sill"})");
  CHECK(a.text == "Put 7 pieces of medium into the tin, not measured yet, sill.");
  CHECK(shop.seen([](const View& v) { return v.tin().sum(1).unmeasured; }) == 7);
  CHECK(shop.places()["tin"] == 0);
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 51], "from": 1})");
  CHECK(shop.seen([](const View& v) { return v.tin().find(1)->count; }) == 5);
  CHECK(shop.seen([](const View& v) { return v.tin().sum(1).pieces; }) == 2);
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 50, "count": 6, "from": 1})").where == "from");
  CHECK(shop.refused("add", R"({"wire": 2, "length_mm": 50, "from": 1})").where == "from");
}

TEST_CASE("neither a length nor a count, or two counts, are refused") {
  Shop shop;
  CHECK(shop.refused("add", R"({"wire": 1})").where == "length_mm");
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": [50, 51], "count": 3})").where == "count");
  CHECK(shop.does("add", R"({"wire": 1, "length_mm": 50, "count": 3})").text ==
        "Put 3 short frets of medium into the tin: 3 × 50.00 mm.");
}

TEST_CASE("two benches claim one piece: one gets it, the other is told who has it") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52})");
  shop.who = shop.ines;
  CHECK(shop.does("hold", R"({"piece": 1, "job": 1, "slot": 3})").text ==
        "Holding the 52.40 mm short fret of medium (piece 1) for slot 3 of job 1 (test board of Vida).");
  shop.who = shop.tomo;
  for (const char* row : {"hold", "use"}) {
    const Problem p = shop.refused(row, R"({"piece": 1, "job": 3, "slot": 1})");
    CHECK(p.fault == Fault::state);
    CHECK(p.text == "The 52.40 mm short fret of medium (piece 1) is held for job 1, slot 3, by Ines.");
    CHECK(p.would_do == "Let it go first: let go piece 1.");
  }
  CHECK(shop.refused("scrap", R"({"piece": 1})").fault == Fault::state);
}

TEST_CASE("a piece used by another bench is told of with who used it") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  shop.who = shop.ines;
  shop.does("use", R"({"piece": 1, "job": 1, "slot": 3})");
  shop.who = shop.tomo;
  const Problem p = shop.refused("use", R"({"piece": 1, "job": 1, "slot": 2})");
  CHECK(p.fault == Fault::state);
  CHECK(p.text.starts_with("Piece 1 is not in the tin any more; Ines: Used the 52.40 mm"));
}

TEST_CASE("a held piece is let go once") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  CHECK(shop.refused("let-go", R"({"piece": 1})").fault == Fault::state);
  shop.does("hold", R"({"piece": 1, "job": 1})");
  CHECK(shop.seen([](const View& v) { return v.tin().held_for(1).size(); }) == 1);
  CHECK(field<Ref>(shop.does("let-go", R"({"piece": 1})"), "job") == Ref{Thing::job, 1});
  CHECK(shop.seen([](const View& v) { return v.tin().held_for(1).size(); }) == 0);
}

TEST_CASE("a piece of another wire is not held or used for a job") {
  Shop shop;
  shop.does("add", R"({"wire": 2, "length_mm": 52.4})");
  CHECK(shop.refused("hold", R"({"piece": 1, "job": 1})").where == "piece");
  CHECK(shop.refused("use", R"({"piece": 1, "job": 1, "slot": 1})").where == "piece");
}

TEST_CASE("a scrapped piece leaves the tin with all its length") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 41.25})");
  CHECK(field<Length>(shop.does("scrap", R"({"piece": 1, "why": "kinked"})"), "length_mm") == 41.25_mm);
  const auto places = shop.places();
  CHECK(places.at("tin") == 0);
  CHECK(places.at("scrap") == 41'250'000);
  CHECK(shop.refused("scrap", R"({"piece": 1})").fault == Fault::state);
}
