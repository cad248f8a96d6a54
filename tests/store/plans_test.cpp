// The contract of shop::Store: plans that are kept beside the shop's history.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace nutward;
using namespace nutward::test;

namespace {

StoredPlan a_plan(std::int64_t subject, const std::string& body) {
  return {"cuts", subject, std::string(64, 'a'), Instant{1'700'000'000}, false, body};
}

std::string body_of(Store& store, std::int64_t subject) {
  return seen(store, [&](const View& v) {
    const auto plan = v.plans().find("cuts", subject);
    return plan ? plan->body : std::string("none");
  });
}

} // namespace

TEST_CASE("a plan is found by its kind and subject as it was kept, and the next one takes its place") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.backroom().keep(a_plan(1, "first"));
    tx.backroom().keep(a_plan(2, "another"));
    CHECK(tx.plans().find("cuts", 1).value().body == "first");
  });
  const StoredPlan found = seen(made.store, [](const View& v) { return v.plans().find("cuts", 1).value(); });
  CHECK(found.kind == "cuts");
  CHECK(found.subject == 1);
  CHECK(found.digest == std::string(64, 'a'));
  CHECK(found.made == Instant{1'700'000'000});
  CHECK_FALSE(found.settled);
  StoredPlan next = a_plan(1, "second");
  next.settled = true;
  next.digest = std::string(64, 'b');
  made.store.write([&](Tx& tx) { tx.backroom().keep(next); });
  const StoredPlan last = seen(made.store, [](const View& v) { return v.plans().find("cuts", 1).value(); });
  CHECK(last.body == "second");
  CHECK(last.settled);
  CHECK(last.digest == std::string(64, 'b'));
  CHECK(body_of(made.store, 2) == "another");
  CHECK(body_of(made.store, 3) == "none");
  CHECK(seen(made.store, [](const View& v) { return v.plans().find("agenda", 1).has_value(); }) == false);
}

TEST_CASE(
    "keeping a plan is no revision, is told to nobody, is no change, and is read at once all the same") {
  Made made;
  int heard = 0;
  made.store.on_change([&](std::int64_t) { ++heard; });
  CHECK(made.store.write([](Tx& tx) { tx.put(a_wire()); }) == 1);
  CHECK(body_of(made.store, 1) == "none"); // a reader at this revision
  CHECK(made.store.write([](Tx& tx) {
    tx.backroom().keep(a_plan(1, "first"));
    CHECK(tx.backroom().take_changes().empty());
  }) == 1);
  CHECK(heard == 1);
  CHECK(body_of(made.store, 1) == "first");
  CHECK(made.store.write([](Tx& tx) {
    tx.backroom().keep(a_plan(1, "second"));
    tx.put(a_wire("second"));
  }) == 2);
  CHECK(heard == 2);
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("a plan goes with a write that is taken back, and with a savepoint") {
  Made made;
  made.store.write([](Tx& tx) { tx.backroom().keep(a_plan(1, "first")); });
  CHECK_THROWS_AS(made.store.write([](Tx& tx) {
    tx.backroom().keep(a_plan(1, "second"));
    throw std::runtime_error("no more");
  }),
                  std::runtime_error);
  CHECK(body_of(made.store, 1) == "first");
  CHECK(made.store.write([](Tx& tx) {
    CHECK_THROWS_AS(tx.backroom().nested([&] {
      tx.put(a_wire());
      tx.backroom().keep(a_plan(1, "third"));
      throw std::runtime_error("no more");
    }),
                    std::runtime_error);
  }) == 0);
  CHECK(body_of(made.store, 1) == "first");
}

TEST_CASE("a plan of any text outlives the store that kept it, and the shop is well without it") {
  Made made;
  const std::string body(200'000, '7');
  made.store.write([&](Tx& tx) { tx.backroom().keep(a_plan(1, body)); });
  made.sqlite.reset();
  {
    const auto again = store::open_sqlite({made.home()});
    CHECK(body_of(*again, 1) == body);
    CHECK(again->verify().empty());
  }
  SQLite::Database(made.file().string(), SQLite::OPEN_READWRITE).exec("DELETE FROM plan");
  const auto again = store::open_sqlite({made.home()});
  CHECK(body_of(*again, 1) == "none");
  CHECK(again->verify().empty());
}
