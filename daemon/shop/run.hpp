// The one executor. It alone looks up the idempotency key, binds and applies the calls, writes the journal's
// lines and the outbox, commits, and then acknowledges. Undo, the demo, choices and several calls at once are
// all just orders.
#pragma once

#include "shop/answer.hpp"
#include "shop/row.hpp"
#include "shop/store.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

struct Clock {
  virtual ~Clock() = default;
  virtual units::Instant now() const = 0; // thread-safe
};

// Loads a zone by its IANA name; throws hours::BadZone. From main, so that only one file reads the system.
using ZoneLoader = std::function<std::shared_ptr<const hours::Zone>(std::string_view)>;

// A list of calls that is done whole or not at all.
struct Order {
  std::vector<Call> calls; // 1 to 50; `undo` stands alone
  Caller who;              // a person; their role is at most what they have when it is done
  std::string said;        // the sentence it came from, if any
  std::string key;         // Idempotency-Key; "" for none
  std::string digest;      // of what was asked under that key
  std::vector<Touched> expects;
  bool confirmed = false; // the caller has said yes
  std::string unit{};     // of the lengths in its answer, as the setting has it; "": the shop's
};

struct Outcome {
  std::optional<Answer> answer;   // of the list as a whole: kind "done"
  std::optional<Problem> problem; // set if and only if nothing was done
  std::string again; // not "": the answer given before under this key, as JSON text; nothing was done now
};

// Everything that a row's body wants besides its arguments, read from a snapshot.
class Rooms {
public:
  explicit Rooms(ZoneLoader loader);
  struct Held {
    std::shared_ptr<const hours::Zone> zone;
    hours::Calendar calendar;
  };
  Held of(const View& view); // thread-safe; keeps the last zone loaded

private:
  struct Kept;
  ZoneLoader load_;
  std::shared_ptr<Kept> kept_;
};

class Executor {
public:
  Executor(Store& store, const Clock& clock, Rooms& rooms);
  ~Executor(); // finishes what is waiting

  // Thread-safe. `done` is called once, on the executor's thread, after the commit that holds the list.
  void submit(Order order, std::function<void(Outcome)> done);
  Outcome run(Order order); // waits; not from `done`

  // Something for the store that nobody waits for and that is no change of the shop (Backroom::keep), done on
  // the executor's thread in a commit of its own. Thread-safe. What it throws is dropped, and so is what
  // comes while 64 wait. Of two, the one that came first is done first, and before orders that come later.
  void besides(std::function<void(Tx&)> chore);

  // An answer to a question from a snapshot on the calling thread; throws Problem. `unit`: lengths in it,
  // "mm" or "in"; "": in the shop's.
  Answer ask(const Call& call, const Caller& who, const std::string& unit = "");

private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

} // namespace nutward::shop
