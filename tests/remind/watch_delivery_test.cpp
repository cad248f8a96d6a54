// What becomes of messages between the outbox and the receivers: retries, restarts, outages, a full disk.
#include "remind/watched_shop.hpp"

#include <algorithm>

using namespace nutward;
using namespace nutward::test;
using namespace std::chrono_literals;
using Types = std::vector<std::string>;

namespace {

constexpr Instant monday_10 = utc(2026, 3, 2, 9); // 10:00 in Berlin
constexpr Instant due = utc(2026, 3, 3, 9);       // when what is pressed then is to be looked at

// A shop with a job pressed, and one receiver.
struct Pressed {
  explicit Pressed(const std::string& path)
      : shop(monday_10), id(shop.receiver("wall", to.url(path))), job(shop.job()) {
    shop.press(job);
    shop.watch_it();
  }
  void call(const std::string& path) { // from now on
    shop.store->write([&](shop::Tx& tx) {
      auto r = tx.house().receivers().at(0);
      r.url = to.url(path);
      tx.put(r);
      tx.backroom().take_changes();
    });
  }
  // Until the n-th attempt at the one message has been settled.
  void attempted(int n) {
    REQUIRE(until([&] {
      const auto all = shop.waiting(shop.clock.now() + 40h);
      return all.size() == 1 && all[0].attempts == n;
    }));
  }
  // Until every message that is due has failed and waits for another time.
  void tried() {
    const Instant now = shop.clock.now();
    REQUIRE(until([&] {
      const auto all = shop.waiting(now + 40h);
      return !all.empty() &&
             std::all_of(all.begin(), all.end(), [&](const auto& e) { return e.not_before > now; });
    }));
  }
  Receiver to{secret_text};
  WatchedShop shop;
  std::int64_t id, job;
};

} // namespace

TEST_CASE("What is answered with 500 is tried again on schedule under the same id until it is taken") {
  // Standard Webhooks 1.0.0: again after 5 s, then after 5 minutes; here up to a tenth later.
  Pressed t("/status/500");
  t.shop.move_to(due);
  t.attempted(1);
  const auto first = came(t.to);
  REQUIRE(first.size() == 1);
  t.shop.move_to(due + 4s);
  CHECK(came(t.to).empty());
  t.shop.move_to(due + 6s);
  t.attempted(2);
  const auto second = came(t.to);
  REQUIRE(second.size() == 1);
  t.call("/good");
  t.shop.move_to(due + 6s + 299s);
  CHECK(came(t.to).empty());
  t.shop.move_to(due + 6s + 331s);
  t.shop.delivered({t.id});
  const auto third = came(t.to);
  REQUIRE(third.size() == 1);
  CHECK(second[0].id == first[0].id);
  CHECK(third[0].id == first[0].id);
  CHECK(third[0].data["sequence"] == 1);
  t.shop.move_to(due + 10h);
  CHECK(came(t.to).empty());
  CHECK(t.shop.notes().size() == 2); // each failure is said
}

TEST_CASE("A receiver that answers 410 is told nothing more, even if another of its messages ends better") {
  Pressed t("/status/410");
  t.shop.move_to(due);
  REQUIRE(until([&] { return t.shop.look_up(t.id).disabled; }));
  CHECK(came(t.to).size() == 1);
  t.call("/good");
  REQUIRE(t.shop.look_up(t.id).disabled);
  t.shop.press(t.job);
  t.shop.move_to(due + 48h);
  CHECK(came(t.to).empty());
  CHECK(t.shop.ask("due").reason.find("Receiver wall wants nothing any more: 1 message waits for it.") !=
        std::string::npos);
}

TEST_CASE(
    "A receiver that answered 410 stays disabled when a message that was under way is taken after all") {
  // Symptom: whichever message ended last decided whether the receiver was disabled.
  Pressed t("/after-another");
  t.shop.move_to(utc(2026, 3, 2, 15)); // beyond the two hours of one pressing
  t.shop.press(t.shop.job());
  t.shop.move_to(due);
  REQUIRE(came(t.to, 5s).size() == 1); // under way until the next one comes
  t.call("/status/410");
  t.shop.move_to(utc(2026, 3, 3, 15));
  REQUIRE(came(t.to, 5s).size() == 1);
  REQUIRE(until([&] { return t.shop.undelivered(t.id) == 1; })); // the first was taken
  t.shop.swept();
  CHECK(t.shop.look_up(t.id).disabled);
}

TEST_CASE("A receiver that is down for a fortnight counts as failing, keeps its messages and gets each once, "
          "late") {
  Pressed t("/status/500");
  for (Instant now = due; now < due + 14 * 24h; now = now + 27h) {
    t.shop.move_to(now);
    t.tried();
  }
  REQUIRE(until([&] { return t.shop.look_up(t.id).failing; }));
  CHECK(t.shop.ask("due").reason.find("Receiver wall has not answered for days: 2 messages wait for it.") !=
        std::string::npos);
  std::set<std::string> ids;
  for (const Came& c : came(t.to))
    ids.insert(c.id);
  CHECK(ids.size() == 2);
  t.call("/good");
  t.shop.move_to(due + 16 * 24h);
  t.shop.delivered({t.id});
  const auto told = came(t.to);
  REQUIRE(told.size() == 2); // both at once, so in either order
  CHECK(told[0].type != told[1].type);
  CHECK(told[0].id != told[1].id);
  for (const Came& c : told) {
    CHECK(ids.contains(c.id));
    CHECK(c.data["late"] == true);
  }
  CHECK_FALSE(t.shop.look_up(t.id).failing);
  CHECK(t.shop.ask("due").reason.find("Receiver") == std::string::npos);
  t.shop.move_to(due + 30 * 24h);
  CHECK(came(t.to).empty());
}

TEST_CASE("A new message that fails for the first time does not make a failing receiver well") {
  Pressed t("/status/500");
  for (Instant now = due; !t.shop.look_up(t.id).failing; now = now + 27h) {
    REQUIRE(now < due + 30 * 24h);
    t.shop.move_to(now);
    t.tried();
  }
  t.shop.press(t.shop.job());
  t.shop.move_to(t.shop.clock.now() + 72h);
  t.tried();
  CHECK(t.shop.look_up(t.id).failing);
}

TEST_CASE("An attempt that was broken off by the end of the daemon is made again, with the same id") {
  Pressed t("/silent");
  t.shop.move_to(due);
  const auto first = came(t.to, 5s); // leased, sent, and never answered
  REQUIRE(first.size() == 1);
  t.shop.executor.reset();
  t.shop.watch.reset();
  t.shop.restart();
  t.call("/good");
  t.shop.move_to(due + 30s); // the lease still holds: somebody might be sending it
  CHECK(came(t.to).empty());
  t.shop.move_to(due + 61s);
  t.shop.delivered({t.id});
  const auto second = came(t.to);
  REQUIRE(second.size() == 1);
  CHECK(second[0].id == first[0].id);
  CHECK(second[0].data["sequence"] == 1);
}

TEST_CASE("An attempt that is still under way is not made twice when its lease runs out") {
  // Symptom: with many messages for one receiver that hangs, those that waited for their turn for longer than
  // the lease were sent again and again.
  Pressed t("/silent");
  t.shop.move_to(due);
  REQUIRE(came(t.to, 5s).size() == 1);
  for (int i = 1; i <= 5; ++i)
    t.shop.move_to(due + i * 61s);
  CHECK(came(t.to).empty());
}

TEST_CASE(
    "Five hundred rechecks due at the same time all come once, each with a sequence number of its own") {
  Receiver to{secret_text};
  WatchedShop shop(monday_10);
  const auto id = shop.receiver("wall", to.url("/good"));
  const auto job = shop.job();
  shop.store->write([&](shop::Tx& tx) {
    for (int i = 0; i < 500; ++i) {
      shop::Recheck r;
      r.job = job;
      r.slots = {1 + i % 3};
      r.pressed = monday_10;
      r.from = monday_10 + 16h;
      r.due = due;
      tx.put(r);
    }
    tx.backroom().take_changes();
  });
  shop.watch_it();
  shop.move_to(due - 1s);
  CHECK(came(to).empty());
  shop.move_to(due);
  std::set<std::string> ids;
  std::set<std::int64_t> sequences;
  while (ids.size() < 500) {
    const auto some = came(to, 20s);
    REQUIRE_FALSE(some.empty());
    for (const Came& c : some) {
      CHECK(ids.insert(c.id).second);
      sequences.insert(c.data["sequence"].get<std::int64_t>());
    }
  }
  shop.delivered({id});
  CHECK(came(to).empty());
  CHECK(ids.size() == 500);
  REQUIRE(sequences.size() == 500);
  CHECK(*sequences.begin() == 1);
  CHECK(*sequences.rbegin() == 500);
}

TEST_CASE("On a full disk nothing is told and nothing forgotten; with room again it is told") {
  Receiver to{secret_text};
  WatchedShop shop(monday_10, "Europe/Berlin", 140); // pages of 4096 bytes
  std::vector<std::int64_t> ids; // enough of them that their entries need pages of their own
  for (int i = 0; i < 60; ++i)
    ids.push_back(shop.receiver("wall " + std::to_string(i), to.url("/good")));
  shop.press(shop.job());
  // Fill what is left with notes of the shop, until none fits.
  const auto filler = [&](std::size_t bytes) {
    shop.store->write([&](shop::Tx& tx) {
      shop::Job job;
      job.note = std::string(bytes, 'x');
      job.board.scale = Length{648'000'000};
      job.board.slots = 1;
      job.board.nut_width = Length{43'000'000};
      job.board.far_width = Length{45'000'000};
      job.board.far_at = 1;
      job.slots = {1};
      job.wire = shop.wire;
      job.taken_in = monday_10;
      tx.put(job);
      tx.backroom().take_changes();
    });
  };
  std::int64_t kept = 0;
  for (std::size_t bytes : {20'000U, 2'000U, 200U, 20U}) {
    try {
      for (int i = 0; i < 10'000; ++i, ++kept)
        filler(bytes);
    } catch (const shop::Problem& full) {
      REQUIRE(full.fault == shop::Fault::no_room);
    }
  }
  REQUIRE(kept > 0);
  shop.watch_it();
  shop.move_to(due);
  REQUIRE(until([&] { return !shop.notes().empty(); }));
  CHECK(shop.notes()[0].starts_with("Reminders could not be kept, and are tried again in a minute: "));
  CHECK(shop.undelivered(ids[0]) == 0);
  CHECK(shop.undelivered(ids[59]) == 0);
  CHECK(came(to).empty());
  CHECK_FALSE(shop.seen<bool>([](const shop::View& v) { return v.jobs().waiting().at(0).told; }));

  shop.give_room();
  shop.move_to(due + 61s);
  std::set<std::string> got;
  while (got.size() < 60) {
    const auto some = came(to, 20s);
    REQUIRE_FALSE(some.empty());
    for (const Came& c : some)
      CHECK(got.insert(c.id).second);
  }
  shop.delivered(ids);
  CHECK(came(to).empty());
}

TEST_CASE("Reports and sweeps at the same time undo nothing of one another") {
  // Symptom: a sweep put a job back as its snapshot had it, and with it the due day that was set meanwhile.
  Receiver to{secret_text};
  WatchedShop shop(utc(2026, 3, 2, 16, 30));
  const auto id = shop.receiver("wall", to.url("/good"));
  const auto job = shop.job("2026-03-03"); // told at once, and again with each new day
  shop.watch_it();
  for (int i = 0; i < 200; ++i) {
    const std::string day = i % 2 == 0 ? "2026-03-04" : "2026-03-03";
    shop.act("set-due", {{"job", job}, {"due", day}});
    const auto want = i % 2 == 0 ? utc(2026, 3, 4, 17) : utc(2026, 3, 3, 17); // 18:00 in Berlin
    if (i % 3 == 0) shop.watch->look();
    if (i % 5 == 0) shop.swept();
    CHECK(shop.seen<Instant>([&](const shop::View& v) { return *v.jobs().find(job)->due; }) == want);
  }
  shop.delivered({id});
  CHECK(came(to).size() == 2); // one for each due day
}
