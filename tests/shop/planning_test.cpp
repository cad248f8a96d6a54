// The planner itself, with a kind of plan that the test holds in its hand: one thing at a time, changes put
// together, given up but never starved, and gone at once.
#include "bench.hpp"
#include "shop/planner.hpp"
#include "support/catch.hpp"

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <map>
#include <mutex>
#include <thread>

using namespace nutward;
using namespace nutward::test;

namespace {

// What a plan follows from is the owner of job 1 (subject 1) and of job 2. A plan's body says from what it
// was made. Good ones go on until they are let go or stopped.
class ByHand {
public:
  PlanKind kind() {
    return {"by hand",
            [](const View&) {
              return std::vector<std::int64_t>{1, 2};
            },
            [this](std::int64_t subject, const View& view) { return input(subject, view); }};
  }
  void let_go(bool always = true) {
    const std::lock_guard hold(lock_);
    going_ = always;
    ++permits_;
    wake_.notify_all();
  }
  void hold() {
    const std::lock_guard hold(lock_);
    going_ = false;
    permits_ = 0;
  }
  // Until so many good ones have been begun for the subject.
  void wait_for_begun(std::int64_t subject, int n) {
    std::unique_lock hold(lock_);
    wake_.wait(hold, [&] { return begun_[subject] >= n; });
  }
  int begun(std::int64_t subject) {
    const std::lock_guard hold(lock_);
    return begun_[subject];
  }

private:
  PlanInput input(std::int64_t subject, const View& view) {
    const std::string owner = view.jobs().find(subject).value().owner;
    std::string digest = owner;
    digest.resize(64, '.');
    return {digest, [this, subject, owner](const std::optional<StoredPlan>& last, bool haste,
                                           const std::stop_token& stop) {
              return haste ? "in haste for " + owner
                           : good(subject, "for " + owner + (last ? " after " + last->body : ""), stop);
            }};
  }
  std::string good(std::int64_t subject, const std::string& body, const std::stop_token& stop) {
    std::unique_lock hold(lock_);
    ++begun_[subject];
    wake_.notify_all();
    wake_.wait(hold, stop, [&] { return going_ || permits_ > 0; });
    if (!going_ && permits_ > 0) --permits_;
    return body;
  }

  std::mutex lock_;
  std::condition_variable_any wake_;
  std::map<std::int64_t, int> begun_;
  int permits_ = 0;
  bool going_ = false;
};

struct Watched : Shop {
  explicit Watched(bool follows = false) {
    owner(1, "A"), owner(2, "B");
    PlanKind kind = by_hand.kind();
    kind.follows = follows;
    planner = std::make_unique<Planner>(*made.sqlite, clock, std::vector{kind});
    made.sqlite->on_change([this](std::int64_t) {
      if (planner) planner->changed();
    });
  }
  ~Watched() {
    executor.reset();
    made.sqlite->on_change({});
  }
  void owner(std::int64_t id, const std::string& name) {
    made.sqlite->write([&](Tx& tx) {
      Job job = tx.jobs().find(id).value();
      job.owner = name;
      tx.put(job);
    });
  }
  std::string body(std::int64_t subject) {
    return seen([&](const View& v) {
      const auto plan = v.plans().find("by hand", subject);
      return plan ? plan->body + (plan->settled ? "" : "?") : std::string("none");
    });
  }
  ByHand by_hand;
  std::unique_ptr<Planner> planner;
};

} // namespace

TEST_CASE("everything has a plan made in haste before anything has a good one") {
  Watched shop;
  shop.by_hand.wait_for_begun(1, 1);
  CHECK(shop.body(1) == "in haste for A?");
  CHECK(shop.body(2) == "in haste for B?");
  shop.by_hand.let_go();
  shop.planner->wait_until_done();
  CHECK(shop.body(1) == "for A after in haste for A");
  CHECK(shop.body(2) == "for B after in haste for B");
  CHECK(shop.planner->worked().stored == 4);
  CHECK(shop.planner->worked().given_up == 0);
}

TEST_CASE(
    "changes while it plans are looked at once, and one that does not concern the plan does not end it") {
  Watched shop;
  shop.by_hand.wait_for_begun(1, 1);
  for (const char* name : {"C", "D", "E"})
    shop.owner(2, name);
  CHECK(shop.by_hand.begun(1) == 1);
  shop.by_hand.let_go();
  shop.planner->wait_until_done();
  CHECK(shop.body(1) == "for A after in haste for A");
  CHECK(shop.body(2) == "for E after in haste for B");
  CHECK(shop.by_hand.begun(1) == 1);
  CHECK(shop.by_hand.begun(2) == 1);
  CHECK(shop.planner->worked().sweeps == 2);
  CHECK(shop.planner->worked().given_up == 0);
}

TEST_CASE("what the shop has left behind is given up, but never twice running") {
  Watched shop;
  shop.by_hand.wait_for_begun(1, 1);
  shop.owner(1, "C");
  shop.by_hand.wait_for_begun(2, 1); // so 1 was given up, and nothing of it stored
  CHECK(shop.body(1) == "in haste for A?");
  CHECK(shop.planner->worked().given_up == 1);
  shop.by_hand.let_go(false);
  shop.by_hand.wait_for_begun(1, 2);
  shop.owner(1, "D");
  shop.owner(1, "E");
  shop.by_hand.let_go();
  shop.planner->wait_until_done();
  CHECK(shop.planner->worked().given_up == 1);
  CHECK(shop.by_hand.begun(1) == 3);
  // The second went to its end, though it was overtaken; the third goes on from there.
  CHECK(shop.body(1) == "for E after for C after in haste for A");
}

TEST_CASE("what follows each change has a plan made in haste of it before a good one") {
  Watched shop(true);
  shop.by_hand.let_go();
  shop.planner->wait_until_done();
  CHECK(shop.body(1) == "for A after in haste for A");
  shop.by_hand.hold();
  shop.owner(1, "C");
  shop.by_hand.wait_for_begun(1, 2);
  CHECK(shop.body(1) == "in haste for C?");
  CHECK(shop.body(2) == "for B after in haste for B");
  shop.by_hand.let_go();
  shop.planner->wait_until_done();
  CHECK(shop.body(1) == "for C after in haste for C");
  CHECK(shop.by_hand.begun(2) == 1);
}

TEST_CASE("it ends in the middle of a plan at once, and the next one makes that plan") {
  Watched shop;
  shop.by_hand.wait_for_begun(1, 1);
  const auto begun = std::chrono::steady_clock::now();
  shop.made.sqlite->on_change({});
  shop.planner.reset();
  CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(5)); // it would go on for ever
  CHECK(shop.body(1) == "in haste for A?");
  shop.by_hand.let_go();
  shop.planner = std::make_unique<Planner>(*shop.made.sqlite, shop.clock, std::vector{shop.by_hand.kind()});
  shop.planner->wait_until_done();
  CHECK(shop.body(1) == "for A after in haste for A");
}

TEST_CASE("storing a plan wakes nobody: afterwards it sleeps until the shop changes") {
  Watched shop;
  shop.by_hand.let_go();
  shop.planner->wait_until_done();
  const auto before = shop.planner->worked();
  const auto revision = shop.revision();
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})"); // concerns no plan
  shop.planner->wait_until_done();
  CHECK(shop.planner->worked().sweeps == before.sweeps + 1);
  CHECK(shop.planner->worked().stored == before.stored);
  CHECK(shop.revision() == revision + 1);
}

TEST_CASE("what cannot be planned is noted, and does not end the planner") {
  Shop shop;
  std::vector<std::string> notes; // its thread writes there; read when that is gone
  {
    PlanKind broken{"broken", [](const View&) { return std::vector<std::int64_t>{1}; },
                    [](std::int64_t, const View&) {
                      return PlanInput{std::string(64, 'a'),
                                       [](const auto&, bool, const auto&) -> std::string {
                                         throw std::runtime_error("no plan today");
                                       }};
                    }};
    Planner planner(*shop.made.sqlite, shop.clock, {broken},
                    [&](const std::string& line) { notes.push_back(line); });
    planner.wait_until_done();
    planner.changed();
    planner.wait_until_done();
    CHECK(planner.worked().sweeps == 2);
  }
  REQUIRE(notes.size() == 4); // in haste and at leisure, twice
  CHECK(notes[0] == "The broken could not be planned ahead: no plan today");
}

TEST_CASE("a plan ends at once where the shop cannot be looked at again meanwhile") {
  Shop shop;
  std::atomic<bool> begun = false, stopped = false;
  const PlanKind broken{"broken", [](const View&) { return std::vector<std::int64_t>{1}; },
                        [&](std::int64_t, const View&) {
                          if (begun) throw std::runtime_error("the disk is gone");
                          return PlanInput{
                              std::string(64, 'a'),
                              [&](const auto&, bool haste, const std::stop_token& stop) -> std::string {
                                if (haste) return "in haste";
                                begun = true;
                                for (int i = 0; i < 1000 && !stop.stop_requested(); ++i)
                                  std::this_thread::sleep_for(std::chrono::milliseconds(5));
                                stopped = stop.stop_requested();
                                return "late";
                              }};
                        }};
  Planner planner(*shop.made.sqlite, shop.clock, {broken});
  while (!begun)
    std::this_thread::yield();
  planner.changed();
  planner.wait_until_done();
  CHECK(stopped);
}
