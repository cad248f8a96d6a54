// What the cut plan wants a piece for, and what taking it elsewhere costs: on a real SQLite file, after the
// background has planned. Figures by hand: a slot of job 1 (52 mm wide) is cut to 52.5 mm, one of the job
// that is 50 mm wide to 50.5 mm, and a nip loses 0.5 mm.
#include "planned.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// Job 3 is like job 1, but 2 mm narrower everywhere.
void take_in_job_3(Planned& shop) {
  shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 50, "far_width_mm": 50})");
}

// Piece 1 is 51.5 mm, right for a slot of job 1 and 2 mm long for one of job 3.
struct OnePiece : Planned {
  OnePiece() {
    // The piece first, so that the plan has it for job 1: a plan that stands moves nothing for 2 mm.
    does("add", R"({"wire": 1, "length_mm": 51.5, "ends": "dressed"})");
    planner->wait_until_done();
    take_in_job_3(*this);
    planner->wait_until_done();
  }
};

const Value& wanted_for(const Answer& fit) {
  return at(item(at(fit.data, "pieces"), 0), "wanted_for");
}

} // namespace

TEST_CASE("fit says what the plan wants the piece for, and what taking it costs in new wire") {
  OnePiece shop;
  const Answer fit = shop.asks("fit", R"({"job": 3, "slot": 2})");
  CHECK(fit.text.starts_with("For slot 2 of job 3 take the 51.50 mm short fret of medium (piece 1)"));
  const Value& first = item(wanted_for(fit), 0);
  CHECK(as<Ref>(at(first, "job")) == Ref{Thing::job, 1});
  const auto slot = as<std::int64_t>(at(first, "slot"));
  const Value& price = at(item(at(fit.data, "pieces"), 0), "price");
  // One fret of 52.5 and its nip instead of one of 50.5 and its nip.
  CHECK(as<units::Length>(at(price, "new_wire")).mm() == 2.0);
  CHECK(as<std::int64_t>(at(price, "frets")) == 0);
  CHECK(as<std::int64_t>(at(price, "sticks")) == 0);
  CHECK(fit.reason.ends_with(" The cut plan wants it for slot " + std::to_string(slot) +
                             " of job 1: taking it costs 2.00 mm of new wire."));
}

TEST_CASE("what the plan has a piece for is as good as any slot alike, and says so") {
  OnePiece shop;
  const auto slot =
      as<std::int64_t>(at(item(wanted_for(shop.asks("fit", R"({"job": 3, "slot": 2})")), 0), "slot"));
  const Answer here = shop.asks("fit", R"({"job": 1, "slot": )" + std::to_string(slot) + "}");
  CHECK(here.reason.ends_with(" The cut plan has it for this slot too."));
  CHECK_THROWS(at(item(at(here.data, "pieces"), 0), "price"));
  const Answer beside = shop.asks("fit", R"({"job": 1, "slot": )" + std::to_string(slot % 4 + 1) + "}");
  CHECK(beside.reason.ends_with(", which can do without: taking it costs no new wire."));
}

TEST_CASE("place offers the slot that the plan has the piece for beside the one that wastes least") {
  Planned shop;
  take_in_job_3(shop);
  // It does not reach a slot of job 1.
  shop.does("add", R"({"wire": 1, "length_mm": 50.1, "ends": "dressed"})");
  shop.planner->wait_until_done();
  const Answer as_planned = shop.asks("place", R"({"piece": 1})");
  REQUIRE(size(at(as_planned.data, "wanted_for")) == 1);
  const Value& wanted = item(at(as_planned.data, "wanted_for"), 0);
  CHECK(as<Ref>(at(wanted, "job")) == Ref{Thing::job, 3});
  // Slots of job 3 are alike, so that any of them may lead; the plan's is offered as well where it does not.
  const bool leads = as<std::int64_t>(at(wanted, "slot")) == 1;
  CHECK(as_planned.choices.size() == (leads ? 1U : 2U));
  if (!leads) CHECK(as_planned.choices[1].label.ends_with(", as the cut plan has it"));
}

TEST_CASE("using a piece elsewhere says what the plan had it for") {
  OnePiece shop;
  const Answer used = shop.does("use", R"({"piece": 1, "job": 3, "slot": 2})");
  CHECK(used.reason.find("The cut plan had it for slot ") != std::string::npos);
  CHECK(used.reason.ends_with(" of job 1, which is planned anew."));
}

TEST_CASE("using a piece as the plan has it says nothing of the plan") {
  OnePiece shop;
  const auto slot =
      as<std::int64_t>(at(item(wanted_for(shop.asks("fit", R"({"job": 3, "slot": 2})")), 0), "slot"));
  const Answer used = shop.does("use", R"({"piece": 1, "job": 1, "slot": )" + std::to_string(slot) + "}");
  CHECK(used.reason.find("plan") == std::string::npos);
}

TEST_CASE("where nothing is planned, nothing is said of a plan") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 51.5, "ends": "dressed"})");
  const Answer fit = shop.asks("fit", R"({"job": 1, "slot": 2})");
  CHECK(fit.reason.find("plan") == std::string::npos);
  CHECK(size(wanted_for(fit)) == 0);
}
