// Starting attempts and waiting for how they end.
#pragma once

#include "remind/deliver.hpp"
#include "support/receiver.hpp"

#include <nlohmann/json.hpp>

#include <condition_variable>
#include <ctime>
#include <mutex>
#include <stdexcept>
#include <string>
#include <vector>

namespace nutward::test {

// The published example's secret: these tests need one that a receiver can be told of beforehand.
inline const std::string secret_text = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw";

inline remind::Attempt message(const std::string& url) {
  return {"msg_1",
          url,
          R"({"type":"recheck.due","text":"Job 12 wants its recheck."})",
          "application/json",
          {remind::Secret::parse(secret_text)},
          units::Instant{std::time(nullptr)}};
}

// Safe to leave before all attempts ended.
class Deliveries {
public:
  explicit Deliveries(remind::Deliverer& deliverer)
      : deliverer_(deliverer), state_(std::make_shared<State>()) {}

  void start(remind::Attempt attempt) {
    deliverer_.start(std::move(attempt), [state = state_](const remind::Outcome& outcome) {
      std::lock_guard lock(state->mutex);
      state->outcomes.push_back(outcome);
      state->changed.notify_all();
    });
  }
  bool wait(std::size_t count, std::chrono::milliseconds patience) {
    std::unique_lock lock(state_->mutex);
    return state_->changed.wait_for(lock, patience, [&] { return state_->outcomes.size() >= count; });
  }
  std::vector<remind::Outcome> outcomes() {
    std::lock_guard lock(state_->mutex);
    return state_->outcomes;
  }
  remind::Outcome one(remind::Attempt attempt) {
    const std::size_t before = outcomes().size();
    start(std::move(attempt));
    if (!wait(before + 1, std::chrono::seconds(20))) throw std::runtime_error("the attempt did not end");
    return outcomes().back();
  }

private:
  struct State {
    std::mutex mutex;
    std::condition_variable changed;
    std::vector<remind::Outcome> outcomes;
  };
  remind::Deliverer& deliverer_;
  std::shared_ptr<State> state_; // shared with the attempts, which may end after the test gave up
};

} // namespace nutward::test
