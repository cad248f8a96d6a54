// What conversations remember. A conversation belongs to its caller; it lives in memory, at most 1,000 of
// them, each until nobody has said anything in it for 30 minutes. A restart loses them. Thread-safe.
#pragma once

#include "shop/run.hpp"

#include <cstdint>
#include <deque>
#include <list>
#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace nutward::talk {

// A question that was asked back: what is still missing, and in which of the calls.
struct Pending {
  std::vector<shop::Call> calls;
  std::size_t at = 0;
  std::string param;
  bool command = false;
};

struct State {
  shop::Call about;                   // job, slot, piece, wire that were last spoken of
  std::optional<shop::Call> question; // the last one answered, with what was filled in
  std::optional<shop::Call> done;     // the last one done
  bool done_last = false;             // of the two, the command was the later one
  std::optional<shop::Answer> answer; // the last one, for "why"
  std::optional<shop::Call> tried;    // what came to nothing, where that was the last one
  std::vector<shop::Choice> choices;  // what a bare number picks
  std::optional<Pending> pending;
  std::optional<shop::Order> confirm; // waits for a yes
  std::string unit; // of lengths in this conversation, as the setting has it; "": the shop's
  int misses = 0;   // sentences in a row that were not understood
};

// What was sent under a key, so that a repetition means the same although the conversation has gone on.
struct KeptOrder {
  std::string key, digest;
  shop::Order order;
};

class Memory {
public:
  static constexpr std::size_t most_conversations = 1000;
  static constexpr std::size_t most_orders = 50;
  static constexpr std::int64_t idle_s = 30 * 60;

  // A fresh state where there is none. An empty conversation remembers no state at all: two terminals of one
  // person must not speak into each other's sentences.
  State recall(std::int64_t actor, const std::string& conversation, units::Instant now);
  void keep(std::int64_t actor, const std::string& conversation, State state, units::Instant now);
  std::optional<KeptOrder> order(std::int64_t actor, const std::string& conversation, std::string_view key,
                                 units::Instant now);
  void keep_order(std::int64_t actor, const std::string& conversation, KeptOrder order, units::Instant now);
  std::size_t size() const;

private:
  using Who = std::pair<std::int64_t, std::string>;
  struct Talked {
    Who who;
    State state;
    std::deque<KeptOrder> orders;
    units::Instant last;
  };
  Talked* find(const Who& who, units::Instant now); // the lock is held; moves it to the front
  Talked& make(const Who& who, units::Instant now);

  mutable std::mutex lock_;
  std::list<Talked> talks_; // latest first
  std::map<Who, std::list<Talked>::iterator> by_who_;
};

} // namespace nutward::talk
