// Pressed, and looked at again: 16 and 24 elapsed hours (DESIGN 4.8), across a change of clock, and with
// pressings that are one.
#include "bench.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// The frets of job 1 are on record, so that pressing them makes none.
struct Cut : Shop {
  Cut() { does("finished", R"({"job": 1, "stage": "cut"})"); }
};

std::vector<Recheck> rechecks(Bench& shop, RecheckState state, std::int64_t job = 1) {
  auto all = shop.seen([&](const View& v) { return v.jobs().rechecks(job); });
  std::erase_if(all, [&](const Recheck& r) { return r.state != state; });
  return all;
}
std::vector<Recheck> waiting(Bench& shop) {
  return rechecks(shop, RecheckState::waiting);
}

} // namespace

TEST_CASE("a recheck is due 24 elapsed hours after pressing, whatever the clock on the wall does meanwhile") {
  Cut shop;
  // Europe/Berlin goes from 02:00 to 03:00 on Sun 2026-03-29 at 01:00 UTC. Pressed on Saturday 18:00 (17:00
  // UTC): 16 h later is 09:00 UTC, 11:00 on the wall; 24 h later 17:00 UTC, 19:00 on the wall. Sunday is
  // closed; Monday 9:00 is 07:00 UTC.
  shop.clock.to("2026-03-28T17:00:00Z");
  const Answer a = shop.does("pressed", R"({"job": 1})");
  CHECK(field<Instant>(a, "recheck_from") == instant("2026-03-29T09:00:00Z"));
  CHECK(field<Instant>(a, "recheck_due") == instant("2026-03-29T17:00:00Z"));
  CHECK(field<Instant>(a, "remind") == instant("2026-03-30T07:00:00Z"));
  CHECK(field<bool>(a, "all_pressed"));
  CHECK(a.text == "Job 1 (test board of Vida): frets 1-4 pressed, Sat 28 Mar 2026, 18:00. Look again from "
                  "Sun 29 Mar 2026, 11:00; "
                  "it is due Sun 29 Mar 2026, 19:00.");
  CHECK(a.cautions == std::vector{Hazard::press});
  const Answer due = shop.asks("due");
  REQUIRE(size(at(due.data, "due")) == 1);
  // Overdue at the end of the next open day: Monday 18:00, 16:00 UTC.
  CHECK(as<Instant>(at(item(at(due.data, "due"), 0), "overdue")) == instant("2026-03-30T16:00:00Z"));
}

TEST_CASE("what is due goes from too early over may be done and due now to overdue") {
  Cut shop;
  shop.clock.to("2026-03-28T17:00:00Z");
  shop.does("pressed", R"({"job": 1})");
  auto state = [&](const char* when) {
    shop.clock.to(when);
    return as<std::string>(at(item(at(shop.asks("due").data, "due"), 0), "state"));
  };
  CHECK(state("2026-03-29T08:59:59Z") == "too early");
  CHECK(state("2026-03-29T09:00:00Z") == "may be done");
  CHECK(state("2026-03-29T17:00:00Z") == "due now");
  CHECK(state("2026-03-30T16:00:00Z") == "due now");
  CHECK(state("2026-03-30T16:00:01Z") == "overdue");
}

TEST_CASE("passes within two hours are one pressing, counted from the last") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "slots": "3-4", "load_n": 1780, "at": "2026-03-25T06:00:00Z"})");
  const Answer a = shop.does("pressed", R"({"job": 1, "slots": "1-2", "at": "2026-03-25T08:00:00Z"})");
  REQUIRE(waiting(shop).size() == 1);
  CHECK(waiting(shop)[0].slots == std::vector{1, 2, 3, 4});
  CHECK(waiting(shop)[0].pressed == instant("2026-03-25T08:00:00Z"));
  CHECK(waiting(shop)[0].from == instant("2026-03-26T00:00:00Z"));
  CHECK(waiting(shop)[0].due == instant("2026-03-26T08:00:00Z"));
  CHECK(a.reason.starts_with(
      "One pressing with frets 1-4, counted from the last pass. All its frets are pressed."));
  const auto stages = shop.seen([](const View& v) { return v.jobs().stages(1); });
  REQUIRE(stages.size() == 2); // the cut before it
  CHECK(stages[1].kind == "press");
}

TEST_CASE("a pass a second over two hours later is a pressing of its own") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "slots": "3-4", "at": "2026-03-25T06:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "1-2", "at": "2026-03-25T08:00:01Z"})");
  REQUIRE(waiting(shop).size() == 2);
  CHECK(waiting(shop)[0].slots == std::vector{3, 4});
  CHECK(waiting(shop)[1].slots == std::vector{1, 2});
}

TEST_CASE("a pass reported late joins the pressings on both sides of it into one") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "slots": "1", "at": "2026-03-25T05:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "2", "at": "2026-03-25T08:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "3", "at": "2026-03-25T06:30:00Z"})");
  REQUIRE(waiting(shop).size() == 1);
  CHECK(waiting(shop)[0].slots == std::vector{1, 2, 3});
  CHECK(waiting(shop)[0].pressed == instant("2026-03-25T08:00:00Z"));
}

TEST_CASE("a fret pressed again starts its own clock and leaves the older recheck") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "at": "2026-03-24T08:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "2", "at": "2026-03-25T09:00:00Z"})");
  REQUIRE(waiting(shop).size() == 2);
  CHECK(waiting(shop)[0].slots == std::vector{1, 3, 4});
  CHECK(waiting(shop)[0].due == instant("2026-03-25T08:00:00Z"));
  CHECK(waiting(shop)[1].slots == std::vector{2});
  CHECK(waiting(shop)[1].due == instant("2026-03-26T09:00:00Z"));
}

TEST_CASE("when all its frets are pressed again, the older recheck is superseded") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "slots": "2", "at": "2026-03-24T08:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "1-3", "at": "2026-03-25T09:00:00Z"})");
  CHECK(rechecks(shop, RecheckState::superseded).size() == 1);
  CHECK(waiting(shop).size() == 1);
}

TEST_CASE("an earlier pressing reported late leaves the later clock of a fret alone") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "slots": "2", "at": "2026-03-25T09:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "at": "2026-03-24T08:00:00Z"})");
  REQUIRE(waiting(shop).size() == 2);
  CHECK(waiting(shop)[0].slots == std::vector{1, 3, 4});
  CHECK(waiting(shop)[1].slots == std::vector{2});
  shop.does("pressed",
            R"({"job": 1, "slots": "2", "at": "2026-03-23T08:00:00Z"})"); // nothing is left for this one
  CHECK(waiting(shop).size() == 2);
}

TEST_CASE("a slot that the job has not cannot be pressed") {
  Cut shop;
  CHECK(shop.refused("pressed", R"({"job": 1, "slots": "3-5"})").would_do == "It has slots 1-4.");
}

TEST_CASE("a recheck before 16 hours asks for yes, and then is done") {
  Cut shop;
  shop.clock.to("2026-03-25T08:00:00Z");
  shop.does("pressed", R"({"job": 1})");
  shop.clock.to("2026-03-25T23:59:59Z");
  const Problem p = shop.refused("rechecked", R"({"job": 1})");
  CHECK(p.fault == Fault::confirm);
  CHECK(p.text == "It is early: frets 1-4 of job 1 (test board of Vida) have rested only 15 h of 16 since "
                  "pressing, and may still spring "
                  "back; from Thu 26 Mar 2026, 01:00 on it counts.");
  REQUIRE(p.choices.size() == 1);
  CHECK(p.choices[0].call.row == "rechecked");
  shop.does("rechecked", R"({"job": 1})", true);
  CHECK(waiting(shop).empty());
}

TEST_CASE("from 16 hours on a recheck is done without asking, and the frets are level") {
  Cut shop;
  shop.clock.to("2026-03-25T08:00:00Z");
  shop.does("pressed", R"({"job": 1})");
  shop.clock.to("2026-03-26T00:00:00Z");
  const Answer a = shop.does("rechecked", R"({"job": 1, "humidity": 45.5})");
  CHECK(a.text == "Job 1 (test board of Vida): frets 1-4 are still level.");
  REQUIRE(rechecks(shop, RecheckState::level).size() == 1);
  CHECK(rechecks(shop, RecheckState::level)[0].done == instant("2026-03-26T00:00:00Z"));
  CHECK(shop.seen([](const View& v) { return v.jobs().find(1)->humidity_rechecked; }) == 45.5);
  CHECK(shop.seen([](const View& v) { return v.jobs().stages(1).back().kind; }) == "recheck");
  CHECK(shop.refused("rechecked", R"({"job": 1})").fault == Fault::state);
}

TEST_CASE("only the pressing that is looked at must have rested") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "slots": "1-2", "at": "2026-03-24T08:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "3-4", "at": "2026-03-25T09:00:00Z"})");
  CHECK(shop.refused("rechecked", R"({"job": 1})").fault == Fault::confirm);
  shop.does("rechecked", R"({"job": 1, "slots": "1-2"})");
  REQUIRE(waiting(shop).size() == 1);
  CHECK(waiting(shop)[0].slots == std::vector{3, 4});
}

TEST_CASE("nothing is rechecked before it was pressed, whoever says yes") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "at": "2026-03-25T09:00:00Z"})");
  CHECK(shop.refused("rechecked", R"({"job": 1, "at": "2026-03-25T08:59:59Z"})", true).where == "at");
}

TEST_CASE("a fret that sprang back is told with its cause to find, and the rest wait on") {
  Cut shop;
  shop.does("pressed", R"({"job": 1, "at": "2026-03-24T08:00:00Z"})");
  const Answer a = shop.does("rechecked", R"({"job": 1, "slots": "1-2", "sprang": "2"})");
  CHECK(a.text == "Job 1 (test board of Vida): fret 2 sprang back. Frets 3-4 are still to be looked at.");
  CHECK(a.cautions == std::vector{Hazard::press, Hazard::glue, Hazard::metal_dust});
  CHECK(waiting(shop).at(0).slots == std::vector{3, 4});
  CHECK(rechecks(shop, RecheckState::sprang).at(0).slots == std::vector{1, 2});
  const auto frets = shop.seen([](const View& v) { return v.jobs().frets(1); });
  CHECK(frets.at(0).state == FretState::level);
  CHECK(frets.at(1).state == FretState::sprang);
  CHECK(frets.at(2).state == FretState::pressed);
  CHECK(shop.refused("rechecked", R"({"job": 1, "slots": "2"})").would_do == "Waiting are frets 3-4.");
}

TEST_CASE("a job that waits for a recheck is closed only after a yes") {
  Cut shop;
  shop.does("pressed", R"({"job": 1})");
  CHECK(shop.refused("finished", R"({"job": 1, "stage": "done"})").fault == Fault::confirm);
  shop.does("finished", R"({"job": 1, "stage": "done"})", true);
  CHECK(size(at(shop.asks("due").data, "due")) == 0);
}

TEST_CASE("the shop's own hours for rechecks count from the next pressing on") {
  Cut shop;
  shop.does("set", R"({"setting": "recheck_from_h", "to": "20"})");
  shop.does("set", R"({"setting": "recheck_due_h", "to": "48"})");
  const Answer a = shop.does("pressed", R"({"job": 1})");
  CHECK(field<Instant>(a, "recheck_from") == instant("2026-03-26T06:00:00Z"));
  CHECK(field<Instant>(a, "recheck_due") == instant("2026-03-27T10:00:00Z"));
}

TEST_CASE("what happened is not in the future and not over five years ago") {
  Cut shop;
  for (const char* row : {"pressed", "rechecked"}) {
    CHECK(shop.refused(row, R"({"job": 1, "at": "2026-03-25T10:00:01Z"})").where == "at");
    CHECK(shop.refused(row, R"({"job": 1, "at": "2021-03-01T00:00:00Z"})").where == "at");
  }
  shop.does("pressed", R"({"job": 1, "at": "2026-03-25T11:00:00+01:00"})"); // this very second
}

TEST_CASE("pressing frets that nobody reported as made is asked about, and with a yes takes their wire") {
  Shop shop;
  const Problem p = shop.refused("pressed", R"({"job": 1})");
  CHECK(p.fault == Fault::confirm);
  CHECK(p.text ==
        "Slots 1-4 of job 1 (test board of Vida) have no fret on record. With a yes they are recorded "
        "as made, of medium from the stock, and as pressed.");
  const auto before = shop.places();
  const Answer a = shop.does("pressed", R"({"job": 1})", true);
  CHECK(a.text.ends_with(" Slots 1-4 had no fret on record and took 0.212 m of medium."));
  auto after = shop.places();
  CHECK(after["stock"] == before.at("stock") - 4 * 53'000'000); // 52.5 mm and the nip's 0.5
  CHECK(after["board"] == 4 * 51'500'000);
  CHECK(after["scrap"] == 4 * 1'000'000); // what dressing took
  CHECK(after["kerf"] == 4 * 500'000);
  CHECK(shop.outcome("pressed", R"({"job": 1})").answer); // now there are frets, and nothing is asked
}

TEST_CASE("a slot whose fret came out short is asked about like one that never had a fret") {
  Cut shop;
  shop.does("came-short", R"({"job": 1, "slot": 3, "length_mm": 50})");
  CHECK(shop.refused("pressed", R"({"job": 1})").text ==
        "Slot 3 of job 1 (test board of Vida) has no fret on record. With a yes one is recorded as made, of "
        "medium from the stock, and as pressed.");
  CHECK(shop.does("pressed", R"({"job": 1, "slots": "1-2"})").cautions.size() == 1);
  CHECK(shop.does("pressed", R"({"job": 1})", true)
            .text.ends_with(" Slot 3 had no fret on record and took 0.053 m of medium."));
}

TEST_CASE("frets are not pressed of wire that is not there, nor past a piece that is held for the slot") {
  Shop shop;
  CHECK(shop.refused("pressed", R"({"job": 2})", true).would_do == "Receive the wire first.");
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 2})");
  CHECK(shop.refused("pressed", R"({"job": 1})", true).would_do ==
        "Say first: use piece 1 in slot 2 of job 1; or let go of it.");
  shop.does("use", R"({"piece": 1, "job": 1, "slot": 2})");
  CHECK(shop.does("pressed", R"({"job": 1})", true)
            .text.ends_with(" Slots 1, 3-4 had no fret on record and took 0.159 m of medium."));
}
