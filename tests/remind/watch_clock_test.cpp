// A Watch whose clock is wrong, jumps, or stood still while the daemon was away.
#include "remind/watched_shop.hpp"

#include <random>

using namespace nutward;
using namespace nutward::test;
using namespace std::chrono_literals;
using Types = std::vector<std::string>;

namespace {
constexpr Instant monday_10 = utc(2026, 3, 2, 9); // 10:00 in Berlin
} // namespace

TEST_CASE(
    "With a clock before 2020 nothing is told, that is said once, and all comes when the clock is set") {
  Receiver to{secret_text};
  WatchedShop shop(monday_10);
  const auto id = shop.receiver("wall", to.url("/good"));
  shop.press(shop.job());
  shop.clock.set(utc(1970, 1, 1, 0, 0, 5)); // as a board without a battery wakes up
  shop.watch_it();
  shop.swept();
  shop.move_to(utc(2019, 12, 31, 23, 59, 59));
  CHECK(shop.undelivered(id) == 0);
  CHECK(came(to).empty());
  REQUIRE(shop.notes().size() == 1);
  CHECK(shop.notes()[0] == "The machine's clock is before 2020: nothing is told until it is set.");
  shop.move_to(utc(2026, 3, 3, 9));
  shop.delivered({id});
  CHECK(types(came(to)) == Types{"recheck.due"});
}

TEST_CASE("A clock that jumps forward by years and back again tells each thing once, and late ones as late") {
  Receiver to{secret_text};
  WatchedShop shop(monday_10);
  const auto id = shop.receiver("wall", to.url("/good"));
  shop.press(shop.job());
  shop.watch_it();
  shop.move_to(utc(2039, 3, 2, 9));
  shop.delivered({id});
  const auto told = came(to);
  REQUIRE(types(told) == Types{"recheck.due", "recheck.overdue"});
  CHECK(told[0].data["late"] == true);
  for (const Instant t : {monday_10, utc(2026, 3, 3, 9), utc(2026, 3, 4, 17), utc(2040, 1, 1)}) {
    shop.move_to(t);
    shop.delivered({id});
    CHECK(came(to).empty());
  }
}

TEST_CASE("A clock that jumps back makes nothing come early, and nothing come twice") {
  Receiver to{secret_text};
  WatchedShop shop(monday_10);
  const auto id = shop.receiver("wall", to.url("/good"));
  shop.press(shop.job());
  shop.watch_it();
  shop.move_to(utc(2024, 1, 1));
  CHECK(came(to).empty());
  shop.move_to(utc(2026, 3, 3, 8, 59, 59));
  CHECK(came(to).empty());
  shop.move_to(utc(2026, 3, 3, 9));
  shop.delivered({id});
  CHECK(types(came(to)) == Types{"recheck.due"});
  shop.move_to(utc(2026, 3, 3, 8));
  shop.move_to(utc(2026, 3, 3, 9));
  shop.delivered({id});
  CHECK(came(to).empty());
}

TEST_CASE("A message whose next attempt a clock years ahead had set is tried again once the clock is right") {
  // Symptom: an attempt that failed while the clock stood in 2031 was tried again in 2031.
  Receiver to{secret_text};
  WatchedShop shop(monday_10);
  const auto id = shop.receiver("wall", to.url("/status/500"));
  shop.press(shop.job());
  shop.clock.set(utc(2026, 3, 3, 9));
  shop.watch_it();
  shop.swept();
  REQUIRE(until([&] {
    return shop.waiting(utc(2026, 3, 3, 10)).size() == 1 &&
           shop.waiting(utc(2026, 3, 3, 10))[0].attempts == 1;
  }));
  shop.move_to(utc(2031, 1, 1)); // fails again, and once more for being overdue
  REQUIRE(until([&] {
    const auto all = shop.waiting(utc(2031, 1, 1, 1));
    return all.size() == 2 && all[0].attempts >= 1 && all[1].attempts >= 1;
  }));
  came(to);
  shop.store->write([&](shop::Tx& tx) {
    auto r = tx.house().receivers().at(0);
    r.url = to.url("/good");
    tx.put(r);
    tx.backroom().take_changes();
  });
  shop.move_to(utc(2026, 3, 5, 9));
  shop.delivered({id});
  CHECK(came(to).size() == 2);
}

TEST_CASE("Sent over an hour after it fell due a message says that it is late, sent within the hour not") {
  for (const auto& [after, late] :
       {std::pair{3600, false}, std::pair{3601, true}, std::pair{4 * 86'400, true}}) {
    INFO(after);
    Receiver to{secret_text};
    WatchedShop shop(monday_10);
    const auto id = shop.receiver("wall", to.url("/good"));
    shop.press(shop.job());
    shop.clock.set(utc(2026, 3, 3, 9) + std::chrono::seconds{after}); // the daemon was away meanwhile
    shop.watch_it();
    shop.delivered({id});
    const auto told = came(to);
    REQUIRE_FALSE(told.empty());
    CHECK(told[0].type == "recheck.due");
    CHECK(told[0].data["late"] == late);
    CHECK(told.size() == (after > 86'400 ? 2U : 1U));
  }
}

TEST_CASE("Wherever a clock wanders, nothing is told before its time or twice") {
  // The same seed every time; what is told is compared with when it was due.
  Receiver to{secret_text};
  WatchedShop shop(monday_10, "UTC");
  const auto id = shop.receiver("wall", to.url("/good"));
  shop.watch_it();
  std::minstd_rand random(20260302);
  std::uniform_int_distribution<std::int64_t> hours(-40, 60);
  std::set<std::string> causes;
  for (int step = 0; step < 100; ++step) {
    if (step % 10 == 0) shop.press(shop.job());
    const Instant t = shop.clock.now() + std::chrono::hours{hours(random)};
    shop.move_to(std::max(t, monday_10));
    shop.delivered({id});
    for (const Came& c : came(to)) {
      INFO(step << " " << c.type << " " << c.text);
      const auto key = c.type == "recheck.overdue" ? "overdue_at" : "due_at";
      CHECK(c.data[key].get<std::string>() <= units::print_utc(shop.clock.now()));
      CHECK(causes.insert(c.type + c.data["job"].dump()).second);
    }
  }
  CHECK(causes.size() > 10);
}
