// Plans in the background on a real SQLite file: what is stored, what stays where it was, and what an answer
// makes of it. Figures by hand as in cuts_test: a slot of job 1 is cut to 52.5 mm, and a nip loses 0.5 mm.
#include "planned.hpp"
#include "shop/kept_cuts.hpp"
#include "shop/wire_plan.hpp"
#include "support/catch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <set>

using namespace nutward;
using namespace nutward::test;

namespace {

std::optional<StoredPlan> stored(Bench& shop, std::int64_t wire) {
  return shop.seen([&](const View& v) { return v.plans().find("cuts", wire); });
}

WirePlan plan_of_wire(Bench& shop, std::int64_t wire) {
  std::optional<WirePlan> out;
  shop.made.sqlite->read([&](const View& v) { out = plan_of(wire_of(v, wire), v, setup(v)); });
  return *std::move(out);
}

// "piece 3: 1/4 1/2", "stick: 1/1": what serves which slot of which job.
std::multiset<std::string> in_short(const WirePlan& plan) {
  std::multiset<std::string> out;
  for (const cutting::Use& use : plan.plan.uses) {
    std::string text = "stick";
    if (use.source.from == cutting::From::piece)
      text = "piece " + std::to_string(plan.what.problem.pieces[use.source.index].facts.id);
    for (const cutting::Fret& f : use.frets) {
      const cutting::Slot& s = plan.what.problem.slots[f.slot];
      text += " " + std::to_string(s.job) + "/" + std::to_string(s.slot);
    }
    out.insert(text);
  }
  return out;
}

} // namespace

TEST_CASE("the plan is there when the planner has begun, and the answer is that one, with its time") {
  Planned shop;
  const auto plan = stored(shop, 1);
  REQUIRE(plan.has_value());
  CHECK(plan->settled);
  CHECK(plan->made == instant("2026-03-25T10:00:00Z"));
  const Answer now = shop.asks("cuts", R"({"wire": 1})");
  CHECK(now.text.starts_with("4 open frets of medium: 4 from 1 new stick, 212.00 mm of new wire."));
  CHECK(now.reason == "Proved best: no other plan serves more, takes less new wire, or wastes less.");
  CHECK(field<Instant>(now, "planned_at") == instant("2026-03-25T10:00:00Z"));
  CHECK_FALSE(field<bool>(now, "brought_up_to_date"));
  shop.clock.to("2026-03-25T10:03:30Z");
  CHECK(shop.asks("cuts", R"({"wire": 1})").reason.ends_with("or wastes less. Planned 3 minutes ago."));
  shop.clock.to("2026-03-25T12:03:30Z");
  CHECK(shop.asks("cuts", R"({"wire": 1})").reason.ends_with(" Planned 2 hours ago."));
  shop.clock.to("2026-03-29T12:03:30Z");
  CHECK(shop.asks("cuts", R"({"wire": 1})").reason.ends_with(" Planned 4 days ago."));
}

TEST_CASE("what changes the shop but not the wire leaves its plan as it is") {
  Planned shop;
  const auto before = stored(shop, 1).value();
  const auto stored_so_far = shop.planner->worked().stored;
  shop.clock.to("2026-03-25T11:00:00Z");
  shop.does("add", R"({"wire": 2, "length_mm": 48, "ends": "raw"})");
  shop.planner->wait_until_done();
  CHECK(stored(shop, 1).value().made == before.made);
  CHECK(stored(shop, 2).value().made == instant("2026-03-25T11:00:00Z"));
  CHECK(shop.planner->worked().stored == stored_so_far + 1);
}

TEST_CASE("a piece, a fret and a hold each leave the rest of the stored plan where it was") {
  Planned shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 51.9, 52.1, 160, 113], "ends": "raw"})");
  for (int i = 0; i < 3; ++i)
    shop.does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52,
                             "far_width_mm": 52})");
  shop.planner->wait_until_done();
  const auto first = in_short(plan_of_wire(shop, 1));
  REQUIRE(first.size() >= 5);
  // What of the plan is still there, line by line.
  const auto stays = [&](std::multiset<std::string> from, std::size_t all_but) {
    shop.planner->wait_until_done();
    CHECK(stored(shop, 1).value().settled);
    const auto now = in_short(plan_of_wire(shop, 1));
    std::vector<std::string> gone;
    std::set_difference(from.begin(), from.end(), now.begin(), now.end(), std::back_inserter(gone));
    INFO("gone: " << (gone.empty() ? "" : gone.front()));
    CHECK(gone.size() <= all_but);
    return now;
  };
  shop.does("add", R"({"wire": 1, "length_mm": 50.9, "ends": "dressed"})"); // borderline: never planned
  auto now = stays(first, 0);
  // It spares the new wire a fret, 53 mm: more than is worth moving. Only the stick that has it now moves.
  shop.does("add", R"({"wire": 1, "length_mm": 52.2, "ends": "raw"})");
  now = stays(now, 1);
  CHECK(std::any_of(now.begin(), now.end(), [](const std::string& l) { return l.starts_with("piece 7 "); }));
  const std::string line = *std::find_if(now.begin(), now.end(), [](const std::string& l) {
    return l.starts_with("piece") && std::count(l.begin(), l.end(), '/') == 1;
  });
  const std::string piece = line.substr(6, line.find(' ', 6) - 6), job = line.substr(line.find(' ', 6) + 1);
  const std::string where = R"({"piece": )" + piece + R"(, "job": )" + job.substr(0, job.find('/')) +
                            R"(, "slot": )" + job.substr(job.find('/') + 1) + "}";
  shop.does("hold", where);
  now = stays(now, 0); // as planned, and so it says for that piece
  shop.does("use", where);
  stays(now, 1); // that piece alone
}

TEST_CASE("over a restart the plan stays, to the last mark, and nothing is planned again") {
  std::string body, table;
  Planned shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 51.9, 160], "ends": "raw"})");
  shop.planner->wait_until_done();
  body = stored(shop, 1).value().body;
  table = to_json(shop.asks("cuts", R"({"wire": 1})").data);
  shop.executor.reset();
  shop.made.sqlite->on_change({});
  shop.planner.reset();
  shop.made.sqlite.reset();
  shop.made.sqlite = store::open_sqlite({shop.made.home()});
  shop.executor = std::make_unique<Executor>(*shop.made.sqlite, shop.clock, shop.rooms);
  CHECK(to_json(shop.asks("cuts", R"({"wire": 1})").data) == table);
  shop.planner = std::make_unique<Planner>(*shop.made.sqlite, shop.clock, std::vector{cut_plans()});
  shop.planner->wait_until_done();
  CHECK(shop.planner->worked().stored == 0);
  CHECK(stored(shop, 1).value().body == body);
  CHECK(shop.made.sqlite->verify().empty());
}

TEST_CASE("a plan that the shop has left behind is brought up to date in the answer, and never shows a piece "
          "that is gone") {
  Planned shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 51.9, 160], "ends": "raw"})");
  shop.planner->wait_until_done();
  const auto before = in_short(plan_of_wire(shop, 1));
  shop.made.sqlite->on_change({}); // from here on nobody tells the planner
  shop.clock.to("2026-03-25T11:30:00Z");
  shop.does("scrap", R"({"piece": 1})");
  const Answer a = shop.asks("cuts", R"({"wire": 1})");
  CHECK(a.reason.find(" It is the plan of 11:00, brought up to date") != std::string::npos); // Berlin's clock
  CHECK(field<bool>(a, "brought_up_to_date"));
  CHECK(field<Instant>(a, "planned_at") == instant("2026-03-25T10:00:00Z"));
  const auto after = in_short(plan_of_wire(shop, 1));
  for (const std::string& line : before)
    if (line.starts_with("piece 2") || line.starts_with("piece 3")) CHECK(after.count(line) == 1);
  for (const std::string& line : after)
    CHECK_FALSE(line.starts_with("piece 1 "));
  shop.clock.to("2026-03-26T11:30:00Z");
  CHECK(
      shop.asks("cuts", R"({"wire": 1})").reason.find(" It is the plan of Wed 25 Mar 2026, 11:00, brought") !=
      std::string::npos);
  CHECK(shop.asks("cuts", R"({"job": 1})").reason.find("plan of") == std::string::npos);
}

TEST_CASE("a stored plan that cannot be read is as good as none, and is made anew") {
  Planned shop;
  const std::string good = stored(shop, 1).value().body;
  for (const std::string& bad :
       {std::string(""), std::string("1"), std::string("2 ") + good.substr(2), good + " 1",
        good.substr(0, good.size() / 2), std::string("1 9999999999999 0"), std::string("not a plan")}) {
    INFO(bad);
    CHECK_FALSE(cuts_from_text(bad).has_value());
    shop.made.sqlite->write([&](Tx& tx) {
      StoredPlan plan = tx.plans().find("cuts", 1).value();
      plan.body = bad;
      tx.backroom().keep(plan);
    });
    const Answer a = shop.asks("cuts", R"({"wire": 1})");
    CHECK(a.text.starts_with("4 open frets of medium: 4 from 1 new stick"));
    CHECK(std::holds_alternative<std::monostate>(at(a.data, "planned_at")));
  }
}

TEST_CASE("a stored plan that names what is not there is not shown, whatever its digest says") {
  Planned shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 51.9, 160], "ends": "raw"})");
  shop.planner->wait_until_done();
  const WirePlan plan = plan_of_wire(shop, 1);
  const KeptCuts good = kept(plan.what.problem, plan.plan);
  CHECK(plan_of(good, plan.what.problem).has_value());
  KeptCuts other = good;
  other.uses.front().id = 77;
  CHECK_FALSE(plan_of(other, plan.what.problem).has_value());
  other = good, other.uses.front().index = 1'000;
  CHECK_FALSE(plan_of(other, plan.what.problem).has_value());
  other = good, other.uses.front().frets.front().index = 1'000;
  CHECK_FALSE(plan_of(other, plan.what.problem).has_value());
  other = good, other.uses.front().frets.front().slot += 1;
  CHECK_FALSE(plan_of(other, plan.what.problem).has_value());
  other = good, other.rest.unserved = {1'000};
  CHECK_FALSE(plan_of(other, plan.what.problem).has_value());
  other = good, other.rest.borderline = {{0, 1'000}};
  CHECK_FALSE(plan_of(other, plan.what.problem).has_value());
  other = good, other.rest.faults = {{cutting::Why::bad_source, 1'000, cutting::From::stock}};
  CHECK_FALSE(plan_of(other, plan.what.problem).has_value());
}

TEST_CASE("what the plan wants a piece for is found without planning, while it still holds") {
  Planned shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 160], "ends": "raw"})");
  shop.planner->wait_until_done();
  const auto wanted = [&](std::int64_t id) {
    return shop.seen([&](const View& v) { return planned_for(v.tin().find(id).value(), v, setup(v)); });
  };
  const auto one = wanted(1);
  REQUIRE(one.size() == 1);
  CHECK(one[0].job == 1);
  CHECK(one[0].length == 52.4_mm);
  CHECK(one[0].planned_at == instant("2026-03-25T10:00:00Z"));
  const auto three = wanted(2); // two cuts of 52.5, a nip each, and the rest
  REQUIRE(three.size() == 3);
  CHECK(three[0].length == 52.5_mm);
  CHECK(three[2].length == 54_mm);
  std::set<int> slots{one[0].slot};
  for (const PlannedFret& f : three)
    slots.insert(f.slot);
  CHECK(slots == std::set<int>{1, 2, 3, 4});
  shop.made.sqlite->on_change({});
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": )" + std::to_string(three[0].slot) + "}");
  CHECK(wanted(1).empty());     // held for something else
  CHECK(wanted(2).size() == 2); // and one of its slots is served now
  shop.does("correct", R"({"piece": 2, "to_mm": 120, "why": "measured again"})");
  CHECK(wanted(2).empty());
}
