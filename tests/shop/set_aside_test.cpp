// All that the plan takes for a job, held and let go in one: what it holds, what it keeps others from, and
// that slots which get their frets let go of their part. Slots are cut to 52.5 mm and a nip loses 0.5 mm.
#include "bench.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include <future>

using namespace nutward;
using namespace nutward::test;

namespace {

// Besides the shop: job 3, of the same wire and due later than job 1.
struct TwoJobs : Shop {
  TwoJobs() {
    does("set-due", R"({"job": 1, "due_on": "2026-04-10"})");
    does(
        "new-job",
        R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52, "due_on": "2026-04-20"})");
  }
  Piece piece(std::int64_t id) {
    return seen([&](const View& v) { return v.tin().find(id).value(); });
  }
  std::vector<int> aside(std::int64_t job) {
    return seen([&](const View& v) { return v.jobs().find(job).value().set_aside; });
  }
  Length aside_of_wire() { return field<Length>(asks("stock", R"({"wire": 1})"), "set_aside"); }
};

std::vector<std::int64_t> numbers(const Value& list) {
  std::vector<std::int64_t> out;
  for (std::size_t i = 0; i < size(list); ++i)
    out.push_back(as<std::int64_t>(item(list, i)));
  return out;
}

} // namespace

TEST_CASE("the plan's pieces are held for their slots and its new wire is set aside, in one line that one "
          "undo takes back") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw"})");                     // 1: one slot
  shop.does("add", R"({"wire": 1, "length_mm": 106, "ends": "raw", "kind": "stick_end"})"); // 2: two
  const auto places = shop.places();
  const auto before = shop.dump();
  const auto lines = shop.rows_of("journal");
  const Answer a = shop.does("set-aside", R"({"job": 1})");
  CHECK(shop.rows_of("journal") == lines + 1);
  CHECK(shop.piece(1).job == 1);
  CHECK(shop.piece(1).slot.has_value());
  CHECK(shop.piece(1).more_slots.empty());
  CHECK(shop.piece(2).job == 1);
  CHECK(shop.piece(2).more_slots.size() == 1);
  CHECK(shop.aside(1).size() == 1);
  CHECK(field<Length>(a, "new_wire") == 53_mm);
  CHECK(shop.aside_of_wire() == 53_mm);
  CHECK_THAT(a.text, ContainsSubstring("piece 1 for slot "));
  CHECK_THAT(a.text, ContainsSubstring("piece 2 for slots "));
  CHECK_THAT(a.text, ContainsSubstring("0.053 m of new medium for slot "));
  CHECK(shop.places() == places); // the ledger knows nothing of it
  CHECK(shop.refused("set-aside", R"({"job": 1})").fault == Fault::state);
  shop.does("undo");
  CHECK(shop.dump() == before);
}

TEST_CASE("what is held for several slots is planned as held, in the plan of the whole wire and alone") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": 106, "ends": "raw", "kind": "stick_end"})");
  shop.does("set-aside", R"({"job": 1})");
  // Due first now, job 3 would have the piece.
  shop.does("set-due", R"({"job": 3, "due_on": "2026-04-01"})");
  for (const char* json : {R"({"job": 1})", R"({"wire": 1})"}) {
    const Answer a = shop.asks("cuts", json);
    const Value& held = item(at(a.data, "cuts"), 0);
    CHECK(as<bool>(at(held, "held")));
    REQUIRE(size(at(held, "frets")) == 2);
    CHECK(as<Ref>(at(item(at(held, "frets"), 0), "job")).id == 1);
    CHECK(as<Ref>(at(item(at(held, "frets"), 1), "job")).id == 1);
  }
  shop.does("let-all-go", R"({"job": 1})");
  CHECK_FALSE(shop.piece(1).job);
  CHECK(shop.piece(1).more_slots.empty());
  CHECK(shop.aside(1).empty());
  CHECK(shop.refused("let-all-go", R"({"job": 1})").fault == Fault::state);
}

TEST_CASE("each slot that gets its fret lets go of its part, and the last of all") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": 159, "ends": "raw", "kind": "stick_end"})");
  shop.does("set-aside", R"({"job": 1})");
  const Piece held = shop.piece(1);
  REQUIRE(held.more_slots.size() == 2);
  const int first = *held.slot, second = held.more_slots[0], third = held.more_slots[1];
  const auto use = [&](int slot) {
    shop.does("use", R"({"piece": 1, "job": 1, "slot": )" + std::to_string(slot) + "}");
  };
  use(first); // the rest goes on being held for the other two
  CHECK(shop.piece(1).job == 1);
  CHECK(shop.piece(1).slot == second);
  CHECK(shop.piece(1).more_slots == std::vector{third});
  CHECK(shop.refused("use", R"({"piece": 1, "job": 3, "slot": 1})").fault == Fault::state);
  // The second gets its fret of something else.
  shop.does("measured", R"({"job": 1, "length_mm": 51.5, "slot": )" + std::to_string(second) + "}");
  CHECK(shop.piece(1).slot == third);
  CHECK(shop.piece(1).more_slots.empty());
  shop.does("measured", R"({"job": 1, "length_mm": 51.5, "slot": )" + std::to_string(third) + "}");
  CHECK_FALSE(shop.piece(1).job);
  shop.does("undo");
  CHECK(shop.piece(1).slot == third);
}

TEST_CASE("all slots of a piece can be cut from it at once") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": 160, "ends": "raw", "kind": "stick_end"})");
  shop.does("set-aside", R"({"job": 1})");
  std::vector<int> slots{*shop.piece(1).slot};
  for (const int s : shop.piece(1).more_slots)
    slots.push_back(s);
  std::string words;
  for (const int s : slots)
    words += (words.empty() ? "" : ",") + std::to_string(s);
  shop.does("cut-from", R"({"piece": 1, "job": 1, "slots": ")" + words + "\"}");
  CHECK_FALSE(shop.piece(1).in_tin);
}

TEST_CASE("new wire that is set aside is served first where wire runs short") {
  TwoJobs shop;
  shop.does("correct", R"({"wire": 1, "to_mm": 0, "why": "a delivery is missing"})", true);
  shop.does("receive", R"({"wire": 1, "count": 4, "each_mm": 108})"); // two frets of each
  shop.does("set-aside", R"({"job": 3})");
  CHECK(shop.aside(3) == std::vector{1, 2, 3, 4});
  shop.does("correct", R"({"wire": 1, "to_mm": 216, "why": "half of it was bent"})", true);
  const Answer one = shop.asks("cut-list", R"({"job": 1})");
  const Answer three = shop.asks("cut-list", R"({"job": 3})");
  const auto without = [](const Answer& a) { return size(at(a.data, "goes_without")); };
  INFO(one.text << three.text);
  CHECK(without(three) < without(one));
  shop.does("let-all-go", R"({"job": 3})");
  CHECK(without(shop.asks("cut-list", R"({"job": 1})")) < without(shop.asks("cut-list", R"({"job": 3})")));
}

TEST_CASE("cutting, cancelling and finishing a job releases what was set aside for it") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw"})");
  shop.does("set-aside", R"({"job": 1})");
  CHECK(shop.aside_of_wire() == 159_mm);
  shop.does("finished", R"({"job": 1, "stage": "cut"})"); // the three slots that the piece does not serve
  CHECK(shop.aside_of_wire() == 0_mm);
  CHECK(shop.piece(1).job == 1);
  shop.does("cancel-job", R"({"job": 1})", true);
  CHECK_FALSE(shop.piece(1).job);
  CHECK(shop.aside(1).empty());
  shop.does("undo");
  CHECK(shop.piece(1).job == 1);
  shop.does("finished", R"({"job": 1, "stage": "done"})", true);
  CHECK_FALSE(shop.piece(1).job);
  CHECK(shop.aside(1).empty());
}

TEST_CASE("what somebody else holds stays theirs, and the rest still is set aside") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 52.3], "ends": "raw"})");
  shop.does("hold", R"({"piece": 1, "job": 3, "slot": 1})");
  const Answer a = shop.does("set-aside", R"({"job": 1})");
  CHECK(shop.piece(1).job == 3);
  CHECK(shop.piece(2).job == 1);
  CHECK(size(at(a.data, "pieces")) == 1);
  CHECK(shop.aside(1).size() == 3);
}

TEST_CASE("the list's own offer is refused where a piece of it was claimed since") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "ends": "raw"})");
  const Answer list = shop.asks("cut-list", R"({"job": 1})");
  REQUIRE(list.choices.size() == 1);
  CHECK(list.choices[0].call.row == "set-aside");
  shop.does("hold", R"({"piece": 1, "job": 3, "slot": 1})");
  Order order = shop.order({});
  order.calls = {list.choices[0].call};
  order.expects = list.choices[0].expects;
  std::promise<Outcome> promise;
  shop.executor->submit(order, [&](const Outcome& o) { promise.set_value(o); });
  const Outcome outcome = promise.get_future().get();
  REQUIRE(outcome.problem);
  CHECK(outcome.problem->fault == Fault::stale);
  CHECK(shop.aside(1).empty());
}

TEST_CASE("a piece that a plan shares is named with what it would have given to the other job") {
  TwoJobs shop;
  for (const char* json :
       {R"({"job": 1, "length_mm": 51.5, "slot": 1})", R"({"job": 1, "length_mm": 51.5, "slot": 2})",
        R"({"job": 1, "length_mm": 51.5, "slot": 3})", R"({"job": 3, "length_mm": 51.5, "slot": 1})",
        R"({"job": 3, "length_mm": 51.5, "slot": 2})", R"({"job": 3, "length_mm": 51.5, "slot": 3})"})
    shop.does("measured", json);
  shop.does("add", R"({"wire": 1, "length_mm": 106, "ends": "raw", "kind": "stick_end"})");
  const Answer a = shop.does("set-aside", R"({"job": 1})");
  CHECK_THAT(a.reason, ContainsSubstring("planned anew: slot 4 of job 3 (piece 1)"));
  CHECK(shop.piece(1).job == 1);
  CHECK(shop.piece(1).slot == 4);
  CHECK(shop.piece(1).more_slots.empty());
}

TEST_CASE("the shop's answers show what is held and set aside") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": 106, "ends": "raw", "kind": "stick_end"})");
  shop.does("set-aside", R"({"job": 1})");
  const Answer job = shop.asks("job", R"({"job": 1})");
  CHECK(size(at(job.data, "held")) == 1);
  CHECK(field<Length>(job, "set_aside") == 106_mm);
  CHECK_THAT(job.reason, ContainsSubstring("Held for it: piece 1 (slots "));
  CHECK_THAT(shop.asks("stock", R"({"wire": 1})").text,
             ContainsSubstring("0.106 m of it set aside for job 1"));
  CHECK_THAT(
      shop.asks("supply", R"({"wire": 1})").reason,
      ContainsSubstring("On hand 6.00 m, 0.106 m of it set aside, and the queue takes 0.32 m for 2 jobs"));
  CHECK(numbers(at(item(at(shop.asks("stock", R"({"wire": 1})").data, "pieces"), 0), "more_slots")).size() ==
        1);
  CHECK_THAT(shop.refused("use", R"({"piece": 1, "job": 3, "slot": 1})").text,
             ContainsSubstring("is held for job 1, slots "));
}

TEST_CASE("a slot that a piece is held for as its second is no place for a fret that came out short") {
  TwoJobs shop;
  shop.does("set-due", R"({"job": 3, "due_on": "2026-04-01"})");
  shop.does("add", R"({"wire": 1, "length_mm": [106, 106], "ends": "raw", "kind": "stick_end"})");
  shop.does("set-aside", R"({"job": 3})"); // both pieces for two slots each
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  const Answer a = shop.does("came-short", R"({"job": 1, "slot": 2, "length_mm": 52.4, "ends": "raw"})");
  CHECK(std::holds_alternative<std::monostate>(at(a.data, "next_job")));
}

TEST_CASE("a piece that no longer fits the slot that it is held for makes room for one that does") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": [30, 52.4], "ends": "raw"})");
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 2})");
  for (const int slot : {1, 3, 4})
    shop.does("measured", R"({"job": 1, "length_mm": 51.5, "slot": )" + std::to_string(slot) + "}");
  const Answer a = shop.does("set-aside", R"({"job": 1})");
  CHECK_FALSE(shop.piece(1).job);
  CHECK(shop.piece(2).slot == 2);
  CHECK_THAT(a.text, ContainsSubstring("piece 1"));
  const Answer plan = shop.asks("cuts", R"({"job": 1})");
  CHECK(field<std::int64_t>(plan, "from_pieces") == 1);
  CHECK(size(at(plan.data, "not_used")) == 0);
  CHECK(shop.refused("set-aside", R"({"job": 1})").fault == Fault::state);
}

TEST_CASE("a piece that is held for a job as a whole serves that job in the plan of the whole wire, and no "
          "other") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 106], "ends": "raw"})");
  for (const char* json : {R"({"piece": 1, "job": 3})", R"({"piece": 2, "job": 3})"})
    shop.does("hold", json);
  const Answer a = shop.asks("cuts", R"({"wire": 1})");
  CHECK(size(at(a.data, "not_used")) == 0);
  CHECK(field<std::int64_t>(a, "from_pieces") == 3);
  for (std::size_t i = 0; i < 2; ++i) {
    const Value& one = item(at(a.data, "cuts"), i);
    CHECK(as<bool>(at(one, "held")));
    for (std::size_t f = 0; f < size(at(one, "frets")); ++f)
      CHECK(as<Ref>(at(item(at(one, "frets"), f), "job")).id == 3);
  }
  // What it was held for as a whole is held by slot once all is set aside.
  shop.does("set-aside", R"({"job": 3})");
  CHECK(shop.piece(1).slot.has_value());
  CHECK(shop.piece(2).more_slots.size() == 1);
  CHECK(shop.aside(3).size() == 1);
}

TEST_CASE("planned alone, a job is given nothing of the new wire that others have set aside") {
  TwoJobs shop;
  shop.does("set-due", R"({"job": 3, "due_on": "2026-04-01"})");
  shop.does("correct", R"({"wire": 1, "to_mm": 0, "why": "a delivery is missing"})", true);
  shop.does("receive", R"({"wire": 1, "count": 2, "each_mm": 160})"); // three frets of each
  shop.does("set-aside", R"({"job": 3})");                            // of four
  const Answer a = shop.asks("cuts", R"({"job": 1})");
  CHECK(field<std::int64_t>(a, "from_new") == 2);
  CHECK(field<std::int64_t>(a, "short") == 2);
  CHECK_THAT(a.reason + a.text, ContainsSubstring("set aside for job 3"));
  CHECK(field<std::int64_t>(shop.asks("cuts", R"({"job": 3})"), "from_new") == 4);
  // Sticks that are said are there for it whoever set what aside.
  CHECK(field<std::int64_t>(shop.asks("cuts", R"({"job": 1, "sticks_mm": [600]})"), "from_new") == 4);
}

TEST_CASE("of several pieces of a length each goes into the slot that it is held for") {
  TwoJobs shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 52.4, 52.4], "ends": "raw"})");
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 4})");
  shop.does("use-several", R"({"length_mm": 52.4, "count": 2, "job": 1, "slots": "1,2"})");
  CHECK(shop.piece(1).in_tin);
  shop.does("undo");
  shop.does("use-several", R"({"length_mm": 52.4, "count": 2, "job": 1, "slots": "3,4"})");
  CHECK_FALSE(shop.piece(1).in_tin);
}

TEST_CASE("who cuts what others have set aside hears so") {
  TwoJobs shop;
  shop.does("set-due", R"({"job": 3, "due_on": "2026-04-01"})");
  shop.does("correct", R"({"wire": 1, "to_mm": 0, "why": "a delivery is missing"})", true);
  shop.does("receive", R"({"wire": 1, "count": 2, "each_mm": 212})");
  shop.does("set-aside", R"({"job": 3})");
  const Answer enough = shop.does("finished", R"({"job": 1, "stage": "cut"})");
  CHECK_THAT(enough.text, !ContainsSubstring("set aside"));
  shop.does("undo");
  shop.does("correct", R"({"wire": 1, "to_mm": 300, "why": "a stick was bent"})", true);
  const Answer a = shop.does("finished", R"({"job": 1, "stage": "cut"})");
  CHECK_THAT(a.text, ContainsSubstring("0.088 m of it is left, less than the 0.212 m that is set aside"));
}
