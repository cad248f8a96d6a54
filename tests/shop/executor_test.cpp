// The one executor: lists whole or not at all, keys, stale choices, roles, yes, and lists that wait together.
#include "bench.hpp"
#include "support/catch.hpp"

#include <future>
#include <set>
#include <thread>

using namespace nutward;
using namespace nutward::test;

namespace {

Order keyed(Bench& shop, const char* key, const char* digest,
            const char* json = R"({"wire": 1, "length_mm": 50})") {
  Order o = shop.order({{"add", json}});
  o.key = key;
  o.digest = digest;
  return o;
}

std::int64_t in_tin(Bench& shop) {
  return shop.seen([](const View& v) { return v.tin().sum(1).pieces; });
}

} // namespace

TEST_CASE("when the third call of a list fails, nothing of the first two remains") {
  Shop shop;
  const std::string before = shop.dump();
  const auto revision = shop.revision();
  const auto lines = shop.rows_of("journal"), touches = shop.rows_of("journal_touch"),
             movements = shop.rows_of("movement");
  const auto out = shop.executor->run(shop.order({{"add", R"({"wire": 1, "length_mm": 52.4})"},
                                                  {"use", R"({"piece": 1, "job": 1, "slot": 1})"},
                                                  {"use", R"({"piece": 1, "job": 1, "slot": 2})"}}));
  REQUIRE(out.problem.has_value());
  CHECK_FALSE(out.answer.has_value());
  CHECK(out.problem->fault == Fault::state);
  CHECK(shop.dump() == before);
  CHECK(shop.revision() == revision);
  CHECK(shop.rows_of("journal") == lines);
  CHECK(shop.rows_of("journal_touch") == touches);
  CHECK(shop.rows_of("movement") == movements);
  CHECK(shop.made.sqlite->verify().empty());
}

TEST_CASE("a later call of a list sees what an earlier one did, and the journal has a line for each") {
  Shop shop;
  const auto out = shop.executor->run(shop.order(
      {{"add", R"({"wire": 1, "length_mm": 52.4})"}, {"use", R"({"piece": 1, "job": 1, "slot": 1})"}}));
  REQUIRE(out.answer.has_value());
  CHECK(out.answer->text.starts_with("Put 1 short fret of medium into the tin: 52.40 mm. Used the 52.40 mm"));
  CHECK(out.answer->revision == shop.revision());
  const Value& done = at(out.answer->data, "done"); // the data of each
  REQUIRE(size(done) == 2);
  CHECK(as<std::string>(at(item(done, 0), "row")) == "add");
  CHECK(size(at(at(item(done, 0), "data"), "pieces")) == 1);
  CHECK(as<std::string>(at(item(done, 1), "row")) == "use");
  const Line last = shop.newest_line();
  CHECK(last.sequence == 2);
  const auto group = shop.seen([&](const View& v) { return v.journal().group(last.group); });
  REQUIRE(group.size() == 2);
  CHECK(group[0].sequence == 1);
  CHECK(calls_from_json(group[0].call).at(0).row == "add");
  CHECK(group[1].touched.size() == 2); // the piece and the fret
}

TEST_CASE("an empty list is refused") {
  Shop shop;
  Order none;
  none.who = shop.mara;
  CHECK(shop.executor->run(none).problem.value().where == "/calls");
}

TEST_CASE("the journal says who did what, when it happened and when it was recorded") {
  Shop shop;
  shop.who = shop.ines;
  Order o = shop.order({{"add", R"({"wire": 1, "length_mm": 50, "at": "2026-03-24T08:00:00Z"})"}});
  o.said = "put 50 mm of medium into the tin";
  REQUIRE(shop.executor->run(o).answer.has_value());
  const Line line = shop.newest_line();
  CHECK(line.actor == shop.ines.actor);
  CHECK(line.via == "test");
  CHECK(line.said == "put 50 mm of medium into the tin");
  CHECK(line.happened == instant("2026-03-24T08:00:00Z"));
  CHECK(line.recorded == instant("2026-03-25T10:00:00Z"));
}

TEST_CASE("the same key within a day gets the first answer again, and nothing is done twice") {
  Shop shop;
  const auto first = shop.executor->run(keyed(shop, "k", "d"));
  const auto revision = shop.revision();
  shop.clock.to("2026-03-26T09:59:59Z");
  const auto second = shop.executor->run(keyed(shop, "k", "d"));
  CHECK_FALSE(second.answer.has_value());
  CHECK_FALSE(second.problem.has_value());
  CHECK(second.again == to_json(*first.answer));
  CHECK(in_tin(shop) == 1);
  CHECK(shop.revision() == revision);
}

TEST_CASE("a key used for something else is refused") {
  Shop shop;
  shop.executor->run(keyed(shop, "k", "d"));
  const auto other = shop.executor->run(keyed(shop, "k", "another"));
  CHECK(other.problem.value().where == "Idempotency-Key");
  CHECK(other.problem->fault == Fault::value);
  CHECK(in_tin(shop) == 1);
}

TEST_CASE("a key older than a day is new again") {
  Shop shop;
  shop.executor->run(keyed(shop, "k", "d"));
  shop.clock.to("2026-03-26T10:00:01Z");
  CHECK(shop.executor->run(keyed(shop, "k", "another")).answer.has_value());
  CHECK(in_tin(shop) == 2);
}

TEST_CASE("a key belongs to its caller, and one whose list was refused remembers nothing") {
  Shop shop;
  shop.executor->run(keyed(shop, "k", "d"));
  shop.who = shop.ines;
  CHECK(shop.executor->run(keyed(shop, "k", "d")).answer.has_value());
  CHECK(shop.executor->run(keyed(shop, "bad", "d", R"({"wire": 9, "length_mm": 50})")).problem.has_value());
  CHECK(shop.executor->run(keyed(shop, "bad", "e")).answer.has_value());
  CHECK(in_tin(shop) == 3);
}

TEST_CASE("a choice whose piece has changed since is refused, and says what changed it") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  const Answer offer = shop.asks("fit", R"({"job": 1, "slot": 3})");
  Order o;
  o.calls = {offer.choices.at(0).call};
  o.expects = offer.choices.at(0).expects;
  o.who = shop.mara;
  shop.who = shop.ines;
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 3})");
  const auto out = shop.executor->run(o);
  REQUIRE(out.problem.has_value());
  CHECK(out.problem->fault == Fault::stale);
  CHECK(out.problem->text.starts_with(
      "That choice is out of date: piece 1 has changed since: Holding the 52.40 mm"));
  o.expects = shop.asks("fit", R"({"job": 1, "slot": 3})").choices.at(0).expects;
  CHECK(shop.executor->run(o).answer.has_value());
}

TEST_CASE("who may only look does nothing, and who works at a bench does not lead") {
  Shop shop;
  for (const Command* c : commands()) {
    INFO(c->name);
    for (const Caller& who : {shop.guest, shop.ines}) {
      shop.who = who;
      const auto out = shop.outcome(std::string(c->name));
      const bool refused = out.problem && out.problem->fault == Fault::not_allowed;
      CHECK(refused == (who.role < c->least));
    }
  }
  shop.who = shop.guest;
  CHECK(shop.asks("stock").kind == "stock");
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 50})").text ==
        "'add' is for the role bench and up; guest has look.");
}

TEST_CASE("the role is what somebody has when it is done, and never more than they asked with") {
  Shop shop;
  shop.who = shop.ines;
  shop.who.role = Role::lead; // as she was when she asked
  CHECK(shop.refused("set", R"({"setting": "unit", "to": "in"})").text ==
        "'set' is for the role lead and up; Ines has bench.");
  shop.who = shop.mara;
  shop.does("retire-person", R"({"person": "Ines"})");
  shop.who = shop.ines;
  const Problem p = shop.refused("add", R"({"wire": 1, "length_mm": 50})");
  CHECK(p.fault == Fault::not_allowed);
  CHECK(p.text == "Ines has retired.");
  CHECK(shop.refused("undo").text == "Ines has retired.");
  shop.who = shop.mara;
  shop.who.role = Role::look; // by a token that opens less
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 50})").text ==
        "'add' is for the role bench and up; Mara has look.");
}

TEST_CASE("an answer that is kept under a key is not for a lesser role") {
  Shop shop;
  Order o = shop.order({{"add-receiver", R"({"name": "wall", "url": "http://127.0.0.1:9000/hook"})"}});
  o.key = "k", o.digest = "d";
  REQUIRE(shop.executor->run(o).answer.has_value());
  CHECK(shop.executor->run(o).again.find("whsec_") != std::string::npos);
  o.who.role = Role::bench; // the same person, by a token that opens less
  const Outcome again = shop.executor->run(o);
  CHECK(again.again.empty());
  CHECK(again.problem.value().fault == Fault::not_allowed);
}

TEST_CASE("orders that wait together are judged one after the other, not as they were asked") {
  Shop shop;
  shop.does("change-person", R"({"person": "Ines", "role": "lead"})");
  std::promise<void> first, go;
  std::promise<Outcome> retired, late;
  shop.executor->submit(shop.order({{"add", R"({"wire": 1, "length_mm": 50})"}}), [&](const Outcome&) {
    first.set_value();
    go.get_future().wait();
  });
  first.get_future().wait(); // the next two wait for the executor's thread
  shop.executor->submit(shop.order({{"retire-person", R"({"person": "Ines"})"}}),
                        [&](Outcome o) { retired.set_value(std::move(o)); });
  shop.who = shop.ines;
  shop.who.role = Role::lead;
  shop.executor->submit(shop.order({{"change-person", R"({"person": "Tomo", "role": "lead"})"}}),
                        [&](Outcome o) { late.set_value(std::move(o)); });
  go.set_value();
  CHECK(retired.get_future().get().answer.has_value());
  CHECK(late.get_future().get().problem.value().text == "Ines has retired.");
}

TEST_CASE("who was made and taken back does nothing any more") {
  Shop shop;
  const auto id = field<Ref>(shop.does("new-person", R"({"name": "Jelka"})"), "person").id;
  shop.does("undo");
  shop.who = {id, Role::bench, "Jelka", "test"};
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 50})").text ==
        "Jelka is nobody of this shop any more.");
}

TEST_CASE("a list with a call that is not allowed does nothing of the rest") {
  Shop shop;
  shop.who = shop.ines;
  CHECK(shop.executor
            ->run(shop.order(
                {{"add", R"({"wire": 1, "length_mm": 50})"}, {"set", R"({"setting": "unit", "to": "in"})"}}))
            .problem.value()
            .fault == Fault::not_allowed);
  CHECK(in_tin(shop) == 0);
}

TEST_CASE("lists that wait together share one commit; one that fails takes no other with it") {
  Shop shop;
  const auto revision = shop.revision();
  std::promise<void> held, go;
  auto gone = go.get_future().share();
  // The first list holds the executor in its callback until all others wait.
  shop.executor->submit(shop.order({{"add", R"({"wire": 1, "length_mm": 50})"}}), [&](Outcome) {
    held.set_value();
    gone.wait();
  });
  held.get_future().wait();
  std::vector<std::promise<Outcome>> promises(20);
  for (std::size_t i = 0; i < promises.size(); ++i) {
    const char* json = i % 4 == 3 ? R"({"wire": 9, "length_mm": 50})" : R"({"wire": 1, "length_mm": 51})";
    shop.executor->submit(shop.order({{"add", json}}),
                          [&promises, i](Outcome o) { promises[i].set_value(std::move(o)); });
  }
  go.set_value();
  std::set<std::int64_t> revisions;
  for (std::size_t i = 0; i < promises.size(); ++i) {
    const Outcome o = promises[i].get_future().get();
    CHECK(o.problem.has_value() == (i % 4 == 3));
    if (o.answer) revisions.insert(o.answer->revision);
  }
  CHECK(revisions == std::set<std::int64_t>{revision + 2});
  CHECK(shop.revision() == revision + 2);
  CHECK(in_tin(shop) == 16);
}

TEST_CASE("the executor finishes what is waiting before it ends") {
  Shop shop;
  std::atomic<int> answered = 0;
  for (int i = 0; i < 30; ++i)
    shop.executor->submit(shop.order({{"add", R"({"wire": 1, "length_mm": 50})"}}),
                          [&](Outcome o) { answered += o.answer ? 1 : 0; });
  shop.executor.reset();
  CHECK(answered == 30);
  CHECK(in_tin(shop) == 30);
}

TEST_CASE("of eight benches that claim one slot at once exactly one gets it, while others ask") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4, "count": 8})");
  std::atomic<int> got = 0, told = 0, asked = 0;
  std::vector<std::thread> benches;
  for (int i = 0; i < 8; ++i) {
    benches.emplace_back([&, i] {
      Order o;
      o.who = i % 2 == 0 ? shop.ines : shop.tomo;
      o.calls = {read_call("use", R"({"job": 1, "slot": 2, "piece": )" + std::to_string(i + 1) + "}")};
      const Outcome out = shop.executor->run(std::move(o));
      ++(out.answer ? got : told);
      if (shop.executor->ask(read_call("fit", R"({"job": 1, "slot": 3})"), shop.guest).kind == "fit") ++asked;
    });
  }
  for (std::thread& t : benches)
    t.join();
  CHECK(got == 1);
  CHECK(told == 7);
  CHECK(asked == 8);
  CHECK(shop.places()["board"] == 51'400'000);
}
