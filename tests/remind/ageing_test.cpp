#include "remind/ageing.hpp"
#include "store/shop_in_a_folder.hpp"
#include "support/catch.hpp"

#include <atomic>
#include <condition_variable>
#include <mutex>

using namespace nutward;
using namespace std::chrono_literals;

namespace {

struct RealClock : shop::Clock {
  units::Instant now() const override {
    return {std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now())
                .time_since_epoch()
                .count()};
  }
};

// A plan that has aged two seconds after it is asked first, and never again.
class Aged {
public:
  explicit Aged(const shop::Clock& clock) : clock_(clock) {}
  shop::PlanKind kind() {
    shop::PlanKind out;
    out.name = "nothing";
    out.subjects = [](const shop::View&) { return std::vector<std::int64_t>{}; };
    out.ages = [this](const shop::View&) -> std::optional<units::Instant> {
      const std::lock_guard hold(lock_);
      ++asked_;
      changed_.notify_all();
      if (!at_) return at_ = clock_.now() + 2s;
      return *at_ > clock_.now() ? at_ : std::nullopt;
    };
    return out;
  }
  bool asked(int times) {
    std::unique_lock hold(lock_);
    return changed_.wait_for(hold, 10s, [&] { return asked_ >= times; });
  }
  units::Instant at() {
    const std::lock_guard hold(lock_);
    return at_.value();
  }

private:
  const shop::Clock& clock_;
  std::mutex lock_;
  std::condition_variable changed_;
  std::optional<units::Instant> at_;
  int asked_ = 0;
};

} // namespace

TEST_CASE("A plan that ages is looked at again when it has, not before, and then the planner sleeps") {
  const test::Made made;
  const RealClock clock;
  Aged aged(clock);
  shop::Planner planner(*made.sqlite, clock, {aged.kind()});
  planner.wait_until_done();
  const remind::Ageing ageing(planner); // asks at once
  REQUIRE(aged.asked(2));
  CHECK(clock.now() >= aged.at());
  planner.wait_until_done();
  const auto sweeps = planner.worked().sweeps;
  std::this_thread::sleep_for(300ms);
  CHECK(planner.worked().sweeps == sweeps);
}

TEST_CASE("An alarm that is gone is not set any more") {
  const test::Made made;
  const RealClock clock;
  Aged aged(clock);
  shop::Planner planner(*made.sqlite, clock, {aged.kind()});
  { const remind::Ageing ageing(planner); }
  planner.changed();
  planner.wait_until_done();
  CHECK(planner.worked().sweeps >= 1);
}
