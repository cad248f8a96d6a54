// Jobs come in, get another day, are cancelled; what is refused, and where.
#include "bench.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// A good board of 12 frets; `more` is added behind it.
std::string a_board(const std::string& more = "",
                    const std::string& widths = R"("nut_width_mm": 43, "far_width_mm": 53)") {
  return R"({"wire": 1, "scale_mm": 640, "frets": 12, )" + widths + more + "}";
}

} // namespace

TEST_CASE("a job comes in with its board, its slots and its promised day") {
  Shop shop;
  const Answer a = shop.does(
      "new-job", a_board(R"(, "owner": "Jona", "instrument": "tenor", "due_on": "2026-04-01", "wood": "ebony",
      "glue": "hide", "humidity": 45, "note": "no hurry", "radius_mm": 300)"));
  CHECK(field<Ref>(a, "job") == Ref{Thing::job, 3});
  // Wednesday's closing, 18:00 in Berlin's summer.
  CHECK(field<Instant>(a, "due_at") == instant("2026-04-01T16:00:00Z"));
  CHECK(a.text == "Took in job 3 (tenor of Jona): 12 frets of medium, due Wed 1 Apr 2026, 18:00.");
  const Job j = shop.seen([](const View& v) { return *v.jobs().find(3); });
  CHECK(j.slots.size() == 12);
  CHECK(j.slots.front() == 1);
  CHECK(j.slots.back() == 12);
  CHECK(std::get<board::Cylinder>(j.board.surface).radius == 300_mm);
  CHECK(j.board.far_at == board::Spot{12});
  CHECK(j.wood == "ebony");
  CHECK(j.glue == "hide");
  CHECK(j.humidity_seated == 45.0);
  CHECK(j.kind == JobKind::refret);
}

TEST_CASE("new wire for a job is the sum of its cuts and nips") {
  Shop shop;
  const Answer a = shop.does(
      "new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52})");
  CHECK(field<Length>(a, "wire_needed") == 212_mm); // 4·(52.5 + 0.5)
  CHECK(a.reason ==
        "Cut from new wire it takes 0.212 m; the shortest fret is cut to 52.50 mm, the longest to 52.50 mm.");
}

TEST_CASE("some slots only are a job of their own kind") {
  Shop shop;
  shop.does("new-job", a_board(R"(, "kind": "some_slots", "slots": "1-3, 9")"));
  CHECK(shop.seen([](const View& v) { return v.jobs().find(3)->slots; }) == std::vector{1, 2, 3, 9});
  CHECK(shop.refused("new-job", a_board(R"(, "kind": "some_slots")")).where == "slots");
}

TEST_CASE("a compound board has both its radii or neither") {
  Shop shop;
  shop.does("new-job", a_board(R"(, "nut_radius_mm": 254, "far_radius_mm": 406)"));
  const auto c =
      shop.seen([](const View& v) { return std::get<board::Compound>(v.jobs().find(3)->board.surface); });
  CHECK(c.nut_radius == 254_mm);
  CHECK(c.far_radius == 406_mm);
  CHECK(shop.refused("new-job", a_board(R"(, "nut_radius_mm": 254)")).where == "far_radius_mm");
  CHECK(shop.refused("new-job", a_board(R"(, "far_radius_mm": 254)")).where == "nut_radius_mm");
  CHECK(shop.refused("new-job", a_board(R"(, "nut_radius_mm": 254, "far_radius_mm": 406, "radius_mm": 300)"))
            .where == "radius_mm");
}

TEST_CASE("boards that cannot be are refused with the field that is wrong") {
  Shop shop;
  auto where = [&](const std::string& json) {
    const Problem p = shop.refused("new-job", json);
    CHECK(p.fault == Fault::value);
    CHECK_FALSE(p.would_do.empty());
    return p.where;
  };
  CHECK(where(a_board("", R"("nut_width_mm": 53, "far_width_mm": 43)")) ==
        "far_width_mm");                                        // narrows toward the body
  CHECK(where(a_board(R"(, "radius_mm": 26)")) == "radius_mm"); // at slot 12 half the width is 26.5
  CHECK(where(a_board(R"(, "slots": "1-13")")) == "slots");     // the board has 12
  CHECK(where(a_board(R"(, "slots": "0-3")")) == "slots");
  CHECK(where(a_board(R"(, "far_slot": 13)")) == "far_slot");
  CHECK(where(a_board(R"(, "humidity": 101)")) == "humidity");
  CHECK(where(R"({"wire": 1, "scale_mm": 99, "frets": 12, "nut_width_mm": 43, "far_width_mm": 53})") ==
        "scale_mm");
  CHECK(where(R"({"wire": 1, "scale_mm": 640, "frets": 49, "nut_width_mm": 43, "far_width_mm": 53})") ==
        "frets");
  CHECK(where(R"({"wire": 1, "frets": 12, "nut_width_mm": 43, "far_width_mm": 53})") == "scale_mm");
}

TEST_CASE("a day that is over is not promised, and today is until it closes") {
  Shop shop;
  CHECK(shop.refused("new-job", a_board(R"(, "due_on": "2026-03-24")")).where == "due_on");
  shop.does("new-job", a_board(R"(, "due_on": "2026-03-25")")); // closes at 17:00 UTC
  CHECK(shop.refused("set-due", R"({"job": 1, "due_on": "2026-03-24"})").where == "due_on");
  for (const char* day : {"9999-12-31", "2062-03-25", "0001-01-01", "2026-02-30"})
    CHECK(shop.refused("set-due", std::string(R"({"job": 1, "due_on": ")") + day + "\"}").where == "due_on");
  shop.clock.to("2026-03-25T17:00:00Z");
  CHECK(shop.refused("set-due", R"({"job": 1, "due_on": "2026-03-25"})").where == "due_on");
}

TEST_CASE("another promised day says the old one and the latest press time") {
  Shop shop;
  shop.does("set-due", R"({"job": 1, "due_on": "2026-04-02"})");
  const Answer a = shop.does("set-due", R"({"job": 1, "due_on": "2026-04-08"})");
  CHECK(a.text ==
        "Job 1 (test board of Vida) is due Wed 8 Apr 2026, 18:00 now, it was Thu 2 Apr 2026, 18:00.");
  CHECK(a.reason.starts_with("Press it by "));
  CHECK(field<Instant>(a, "due_at") == instant("2026-04-08T16:00:00Z"));
}

TEST_CASE("cancelling asks for yes and lets go of the held pieces") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 52.6]})");
  shop.does("hold", R"({"piece": 1, "job": 1})");
  shop.does("hold", R"({"piece": 2, "job": 1, "slot": 4})");
  const Problem p = shop.refused("cancel-job", R"({"job": 1})");
  CHECK(p.fault == Fault::confirm);
  CHECK(p.text == "That closes job 1 (test board of Vida), and its held pieces are let go.");
  CHECK(shop.does("cancel-job", R"({"job": 1, "why": "sold"})", true).text ==
        "Cancelled job 1 (test board of Vida); let go of 2 pieces.");
  CHECK_FALSE(shop.seen([](const View& v) { return v.tin().find(2)->slot.has_value(); }));
  CHECK(shop.refused("hold", R"({"piece": 1, "job": 1})").text == "Job 1 (test board of Vida) is cancelled.");
}

TEST_CASE("a press time that is over is called over, and without hours none is told") {
  Shop shop; // Wednesday, open from 9 to 18 on weekdays
  const char* job = R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52,
                        "due_on": "2026-03-26"})";
  shop.clock.to("2026-03-25T17:30:00Z"); // 18:30: too late for the press and the day after it
  CHECK_THAT(shop.does("new-job", job).reason,
             ContainsSubstring("and that is over already: it will be late"));
  CHECK_THAT(shop.does("set-due", R"({"job": 1, "due_on": "2026-03-26"})").reason,
             ContainsSubstring("To be ready then it had to be pressed by "));
  CHECK_THAT(shop.does("set-due", R"({"job": 1, "due_on": "2026-04-20"})").reason,
             ContainsSubstring("Press it by "));
  shop.does("open-hours", R"({"days": "mon-sun", "hours": "closed"})");
  CHECK_THAT(shop.does("new-job", job).reason,
             ContainsSubstring(" No opening hours are known, so by when to press it cannot be told."));
}
