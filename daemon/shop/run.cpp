#include "shop/run.hpp"

#include "shop/apply.hpp"
#include "shop/bind.hpp"
#include "shop/codec.hpp"
#include "shop/in_unit.hpp"
#include "shop/lists.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <condition_variable>
#include <deque>
#include <future>
#include <mutex>
#include <thread>

namespace nutward::shop {

struct Rooms::Kept {
  std::mutex lock;
  std::shared_ptr<const hours::Zone> zone;
};

Rooms::Rooms(ZoneLoader loader) : load_(std::move(loader)), kept_(std::make_shared<Kept>()) {}

Rooms::Held Rooms::of(const View& view) {
  const std::string name = view.house().setting("zone").value_or("UTC");
  Held out;
  {
    const std::lock_guard hold(kept_->lock);
    if (!kept_->zone || kept_->zone->name() != name) kept_->zone = load_(name);
    out.zone = kept_->zone;
  }
  out.calendar = calendar_of(view.house());
  return out;
}

namespace {

struct Waiting {
  Order order;
  std::function<void(Outcome)> done;
  Outcome outcome;
};

constexpr std::chrono::seconds a_day{24 * 3600};

Outcome failed(const Problem& problem) {
  return {{}, problem, ""};
}

// Who asked may have waited: they have retired since, or lead no more. Never more than they asked with.
Caller as_they_are(const Caller& asked, const Tx& tx) {
  for (const Actor& person : tx.house().actors()) {
    if (person.id != asked.actor) continue;
    if (person.retired) {
      throw Problem(Fault::not_allowed, fmt::format("{} has retired.", person.name), "",
                    "Ask somebody who leads the shop.");
    }
    return {asked.actor, std::min(asked.role, static_cast<Role>(person.role)), person.name, asked.via};
  }
  throw Problem(Fault::not_allowed, fmt::format("{} is nobody of this shop any more.", asked.name), "",
                "Ask somebody who leads the shop.");
}

Problem broken(const char* what) {
  return {Fault::broken, std::string("That failed inside Nutward: ") + what + ".", "",
          "Nothing was changed; tell whoever looks after it."};
}

} // namespace

struct Executor::Impl {
  Store& store;
  const Clock& clock;
  Rooms& rooms;
  std::mutex lock;
  std::condition_variable wake;
  std::deque<Waiting> queue;
  std::vector<std::function<void(Tx&)>> chores;
  bool stopping = false;
  std::thread thread;

  Impl(Store& s, const Clock& c, Rooms& r) : store(s), clock(c), rooms(r), thread([this] { work(); }) {}

  void work() {
    for (;;) {
      std::deque<Waiting> batch;
      std::vector<std::function<void(Tx&)>> besides;
      {
        std::unique_lock hold(lock);
        wake.wait(hold, [this] { return stopping || !queue.empty() || !chores.empty(); });
        if (queue.empty() && chores.empty()) return;
        batch.swap(queue);
        besides.swap(chores);
      }
      if (!besides.empty()) do_besides(besides);
      if (!batch.empty()) commit(batch);
      for (Waiting& one : batch)
        one.done(std::move(one.outcome));
    }
  }

  // In a commit of its own: a full disk may take all of it back, and no order with it.
  void do_besides(const std::vector<std::function<void(Tx&)>>& all) {
    try {
      store.write([&](Tx& tx) {
        for (const auto& chore : all)
          chore(tx);
      });
    } catch (const std::exception&) { // nobody waits for it
    }
  }

  // Lists that wait together share one commit: each in a savepoint of its own.
  void commit(std::deque<Waiting>& batch) {
    try {
      const std::int64_t revision = store.write([&](Tx& tx) {
        for (Waiting& one : batch)
          one.outcome = attempt(tx, one.order);
      });
      for (Waiting& one : batch) {
        if (one.outcome.answer) one.outcome.answer->revision = revision;
      }
    } catch (const Problem& problem) {
      for (Waiting& one : batch)
        one.outcome = failed(problem);
    } catch (const std::exception& e) {
      for (Waiting& one : batch)
        one.outcome = failed(broken(e.what()));
    }
  }

  Outcome attempt(Tx& tx, const Order& order) {
    Outcome out;
    try {
      tx.backroom().nested([&] { out = within(tx, order); });
    } catch (const Problem& problem) {
      if (problem.fault == Fault::no_room || problem.fault == Fault::busy) throw; // of the whole commit
      tx.backroom().take_changes();
      tx.backroom().take_movements();
      return failed(problem);
    } catch (const std::exception& e) { // of this list alone
      tx.backroom().take_changes();
      tx.backroom().take_movements();
      return failed(broken(e.what()));
    }
    return out;
  }

  Outcome within(Tx& tx, const Order& asked) {
    Order order = asked;
    order.who = as_they_are(asked.who, tx);
    const units::Instant now = clock.now();
    if (!order.key.empty()) {
      for (const Call& call : order.calls) { // an answer may hold what is not for every role: a secret
        const Command* row = command(call.row);
        if (row != nullptr && order.who.role < row->least) refuse_role(*row, order.who);
      }
      if (auto known = tx.recall(order.who.actor, order.key, now - a_day)) {
        if (known->digest == order.digest) return {{}, {}, known->answer};
        throw Problem(Fault::value, "This Idempotency-Key was used for something else.", "Idempotency-Key",
                      "Use a new key for each new request.");
      }
    }
    const auto held = rooms.of(tx);
    const Moment moment{now, now, *held.zone, held.calendar, order.who};
    // What the order says of settings is about the shop's own.
    const bool sets =
        std::any_of(order.calls.begin(), order.calls.end(), [](const Call& c) { return c.row == "set"; });
    std::optional<TxInUnit> other;
    if (!order.unit.empty() && !sets) other.emplace(tx, order.unit);
    Answer answer = apply_order(order, moment, other ? static_cast<Tx&>(*other) : tx);
    answer.revision = tx.revision() + 1;
    if (!order.key.empty()) tx.remember(order.who.actor, order.key, now, {order.digest, to_json(answer)});
    return {std::move(answer), {}, ""};
  }
};

Executor::Executor(Store& store, const Clock& clock, Rooms& rooms)
    : impl_(std::make_unique<Impl>(store, clock, rooms)) {}

Executor::~Executor() {
  {
    const std::lock_guard hold(impl_->lock);
    impl_->stopping = true;
  }
  impl_->wake.notify_one();
  impl_->thread.join();
}

void Executor::submit(Order order, std::function<void(Outcome)> done) {
  {
    const std::lock_guard hold(impl_->lock);
    impl_->queue.push_back({std::move(order), std::move(done), {}});
  }
  impl_->wake.notify_one();
}

void Executor::besides(std::function<void(Tx&)> chore) {
  {
    const std::lock_guard hold(impl_->lock);
    if (impl_->chores.size() >= 64) return;
    impl_->chores.push_back(std::move(chore));
  }
  impl_->wake.notify_one();
}

Outcome Executor::run(Order order) {
  std::promise<Outcome> promise;
  auto future = promise.get_future();
  submit(std::move(order), [&](Outcome outcome) { promise.set_value(std::move(outcome)); });
  return future.get();
}

Answer Executor::ask(const Call& call, const Caller& who, const std::string& unit) {
  const Question* row = question(call.row);
  if (row == nullptr) {
    throw Problem(Fault::value, "There is no question '" + call.row.substr(0, 60) + "'.", "",
                  "Ask 'help' for what there is.");
  }
  Answer out;
  const units::Instant now = impl_->clock.now();
  impl_->store.read([&](const View& shop) {
    const std::optional<ViewInUnit> other =
        unit.empty() ? std::nullopt : std::optional<ViewInUnit>(std::in_place, shop, unit);
    const View& view = other ? static_cast<const View&>(*other) : shop;
    const auto held = impl_->rooms.of(view);
    const Moment moment{now, now, *held.zone, held.calendar, who};
    if (who.role < row->least) refuse_role(*row, who);
    out = row->ask(bind(*row, call, view), moment, view);
    out.kind = std::string(row->name);
    out.text = sentence(std::move(out.text));
    out.revision = view.revision();
  });
  return out;
}

} // namespace nutward::shop
