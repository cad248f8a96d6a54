// The contract of shop::Store: machines, what is booked, and whose hours are whose.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

using namespace nutward;
using namespace nutward::test;

TEST_CASE("a new shop has a press, a sander and benches enough; more come by name and count") {
  Made made;
  made.store.write([](Tx& tx) {
    CHECK(tx.put(Machine{0, "buffer", 2, 600}) == 4);
    CHECK(tx.put(Machine{2, "belt sander", 3, 0}) == 2);
  });
  made.store.read([](const View& v) {
    const auto all = v.machines().all();
    REQUIRE(all.size() == 4);
    CHECK(all[0].name == "press");
    CHECK(all[0].count == 1);
    CHECK(all[1].name == "belt sander");
    CHECK(all[1].count == 3);
    CHECK(all[2].name == "bench");
    CHECK(all[2].count == 0);
    CHECK(all[3].name == "buffer");
    CHECK(all[3].setup_s == 600);
  });
  made.store.write([](Tx& tx) { tx.drop({Thing::machine, 4}); });
  CHECK(seen(made.store, [](const View& v) { return v.machines().all().size(); }) == 3);
}

TEST_CASE("outages are told as long as they are not over, open ones for ever") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(Outage{0, 2, 1, Instant{5000}, {}, "belt torn"});
    tx.put(Outage{0, 1, 0, Instant{1000}, Instant{2000}, ""});
    Outage o{0, 1, 0, Instant{3000}, Instant{4000}};
    o.id = tx.put(o);
    o.to = Instant{4500};
    tx.put(o);
    tx.drop({Thing::outage, tx.put(Outage{0, 1, 0, Instant{1}, {}})});
  });
  made.store.read([](const View& v) {
    const auto all = v.machines().outages(Instant{0});
    REQUIRE(all.size() == 3);
    CHECK(all[0].id == 2);
    CHECK(all[1].to == Instant{4500});
    CHECK(all[2].machine == 2);
    CHECK(all[2].number == 1);
    CHECK_FALSE(all[2].to);
    CHECK(all[2].note == "belt torn");
    CHECK(v.machines().outages(Instant{2000}).size() == 2); // over at its very end
    CHECK(v.machines().outages(Instant{4499}).size() == 2);
    CHECK(v.machines().outages(Instant{9'000'000}).size() == 1);
  });
}

TEST_CASE("bookings are those that overlap a stretch of time, whose ends do not count") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_job(1));
    tx.put(an_actor());
    tx.put(Booking{0, 1, Instant{3000}, Instant{4000}, 1, 1, "half a board"});
    tx.put(Booking{0, 1, Instant{1000}, Instant{2000}, 1});
    tx.put(Booking{0, 2, Instant{1000}, Instant{6000}, 1});
    tx.drop({Thing::booking, tx.put(Booking{0, 1, Instant{1}, Instant{9000}, 1})});
  });
  const auto ids = [&](std::int64_t from, std::int64_t before) {
    return seen(made.store, [&](const View& v) {
      std::vector<std::int64_t> out;
      for (const Booking& b : v.machines().bookings(Instant{from}, Instant{before}))
        out.push_back(b.id);
      return out;
    });
  };
  CHECK(ids(0, 10'000) == std::vector<std::int64_t>{2, 3, 1});
  CHECK(ids(2000, 3000) == std::vector<std::int64_t>{3});
  CHECK(ids(1999, 3001) == std::vector<std::int64_t>{2, 3, 1});
  CHECK(ids(6000, 9000).empty());
  const auto first =
      seen(made.store, [](const View& v) { return v.machines().bookings({3000}, {3001}).at(1); });
  CHECK(first.machine == 1);
  CHECK(first.actor == 1);
  CHECK(first.job == 1);
  CHECK(first.note == "half a board");
  CHECK_THROWS(made.store.write([](Tx& tx) { tx.put(Booking{0, 1, Instant{5}, Instant{5}, 1}); }));
}

TEST_CASE("one rule a stage, one line of hours a person and weekday, one a person and day") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(an_actor("one"));
    tx.put(an_actor("two"));
    const auto rule = tx.put(StageRule{0, "polish", 2, 55});
    CHECK(tx.put(StageRule{0, "polish", {}, 50}) == rule);
    tx.put(StageRule{0, "seat", 3, {}});
    tx.drop({Thing::stage_rule, rule});
    CHECK(tx.put(StageRule{0, "polish", 1, {}}) == rule); // is there again
    tx.put(OwnHours{0, 2, 3, "09:00-13:00"});
    const auto own = tx.put(OwnHours{0, 1, 5, "09:00-13:00"});
    CHECK(tx.put(OwnHours{0, 1, 5, ""}) == own);
    const auto day = tx.put(OwnDay{0, 1, Day{20'000}, "", "away"});
    CHECK(tx.put(OwnDay{0, 1, Day{20'000}, "10:00-12:00", ""}) == day);
    tx.put(OwnDay{0, 1, Day{19'000}, "", ""});
    tx.put(OwnDay{0, 2, Day{20'001}, "", ""});
  });
  made.store.read([](const View& v) {
    const auto rules = v.machines().rules();
    REQUIRE(rules.size() == 2);
    CHECK(rules[0].stage == "polish");
    CHECK(rules[0].machine == 1);
    CHECK_FALSE(rules[0].minutes);
    CHECK(rules[1].machine == 3);
    const auto own = v.machines().own_hours();
    REQUIRE(own.size() == 2);
    CHECK(own[0].actor == 1);
    CHECK(own[0].spans.empty());
    CHECK(own[1].weekday == 3);
    const auto days = v.machines().own_days(Day{20'000});
    REQUIRE(days.size() == 2);
    CHECK(days[0].spans == "10:00-12:00");
    CHECK(days[1].actor == 2);
  });
}

namespace {

Stage a_stage(const char* kind, std::int64_t finished, std::optional<std::int64_t> open_s, int frets) {
  Stage s{0, 1, kind, 1, Instant{finished - 10}, Instant{finished}, Instant{finished}, 1};
  s.open_s = open_s;
  s.frets = frets;
  return s;
}

} // namespace

TEST_CASE("what a stage took is told newest first, of those where it is known") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    Job job = a_job(1);
    job.priority = 9;
    job.after = {3, 14};
    tx.put(job);
    tx.put(an_actor());
    tx.put(a_stage("seat", 1000, 1800, 22));
    tx.put(a_stage("seat", 3000, 1200, 20));
    tx.put(a_stage("seat", 2000, 1500, 24));
    tx.put(a_stage("seat", 4000, {}, 0));
    tx.put(a_stage("seat", 5000, 0, 22)); // begun and finished at once: nobody timed it
    tx.put(a_stage("pull", 6000, 600, 22));
    tx.drop({Thing::stage, tx.put(a_stage("seat", 7000, 60, 22))});
    Stage begun{0, 1, "bend", 2, Instant{100}, {}, Instant{100}, 1};
    begun.stopped = Instant{200};
    tx.put(begun);
  });
  made.store.read([](const View& v) {
    const auto took = v.jobs().took("seat", 2);
    REQUIRE(took.size() == 2);
    CHECK(took[0].open_s == 1200);
    CHECK(took[0].frets == 20);
    CHECK(took[1].open_s == 1500);
    CHECK(v.jobs().took("seat", 9).size() == 3);
    CHECK(v.jobs().took("bend", 9).empty());
    CHECK(v.jobs().stages(1).back().stopped == Instant{200});
    CHECK(v.jobs().stages(1).front().open_s == 1800);
    CHECK(v.jobs().find(1)->priority == 9);
    CHECK(v.jobs().find(1)->after == std::vector<std::int64_t>{3, 14});
  });
  Stage both = a_stage("seat", 8000, {}, 0);
  both.stopped = Instant{8000};
  CHECK_THROWS(made.store.write([&](Tx& tx) { tx.put(both); }));
}

TEST_CASE("what a stage took and the bookings of a day are found by an index") {
  Made made;
  SQLite::Database db(made.file().string(), SQLite::OPEN_READONLY);
  const auto plan = [&](const char* sql) {
    SQLite::Statement q(db, std::string("EXPLAIN QUERY PLAN ") + sql);
    std::string out;
    while (q.executeStep())
      out += q.getColumn(3).getString() + "\n";
    return out;
  };
  const std::string took = plan("SELECT open_s, frets FROM job_stage WHERE kind = 'seat' AND open_s > 0 AND "
                                "frets > 0 AND withdrawn = 0 "
                                "ORDER BY finished_at DESC, id DESC LIMIT 9");
  CHECK(took.find("INDEX job_stage_took") != std::string::npos);
  CHECK(took.find("TEMP B-TREE") == std::string::npos);
  CHECK(plan("SELECT id FROM booking WHERE to_at > 5 AND from_at < 9 AND withdrawn = 0 ORDER BY from_at, id")
            .find("INDEX booking_to") != std::string::npos);
}
