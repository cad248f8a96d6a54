#include "shop/planner.hpp"

#include <sys/resource.h>
#include <unistd.h>

#include <exception>
#include <future>
#include <memory>

namespace nutward::shop {

Planner::Planner(Store& store, const Clock& clock, std::vector<PlanKind> kinds,
                 std::function<void(const std::string&)> note)
    : store_(store), clock_(clock), kinds_(std::move(kinds)), note_(std::move(note)),
      thread_([this] { run(); }) {}

Planner::~Planner() {
  {
    const std::lock_guard hold(lock_);
    stopping_ = true;
  }
  wake_.notify_all();
  idle_.notify_all();
  thread_.join();
}

void Planner::changed() {
  {
    const std::lock_guard hold(lock_);
    ++changes_;
  }
  wake_.notify_all();
}

void Planner::wake_by(std::function<void(std::optional<Instant>)> set_alarm) {
  {
    const std::lock_guard hold(alarm_lock_);
    set_alarm_ = std::move(set_alarm);
  }
  changed();
}

void Planner::say_when() {
  const std::lock_guard hold(alarm_lock_);
  if (!set_alarm_) return;
  std::optional<Instant> first;
  for (const PlanKind& kind : kinds_) {
    if (!kind.ages) continue;
    attempt(kind, [&] {
      store_.read([&](const View& view) {
        const auto at = kind.ages(view);
        if (at && (!first || *at < *first)) first = at;
      });
    });
  }
  set_alarm_(first);
}

Planner::Worked Planner::worked() const {
  const std::lock_guard hold(lock_);
  return worked_;
}

void Planner::wait_until_done() {
  std::unique_lock hold(lock_);
  const std::uint64_t until = changes_;
  idle_.wait(hold, [&] { return stopping_ || looked_at_ >= until; });
}

void Planner::run() {
  // Answers and reports come first; what this thread starts inherits it. Where that is refused it is only
  // less polite.
  static_cast<void>(::setpriority(PRIO_PROCESS, static_cast<id_t>(::gettid()), 10));
  std::unique_lock hold(lock_);
  for (;;) {
    wake_.wait(hold, [this] { return stopping_ || looked_at_ != changes_; });
    if (stopping_) return;
    const std::uint64_t begun = changes_;
    ++worked_.sweeps;
    hold.unlock();
    sweep();
    say_when();
    hold.lock();
    looked_at_ = begun;
    idle_.notify_all();
  }
}

// Twice over the shop, so that everything has some plan before anything has a good one, and what follows
// each change has followed before anything takes its time.
void Planner::sweep() {
  for (const bool haste : {true, false}) {
    for (const PlanKind& kind : kinds_) {
      std::vector<std::int64_t> subjects;
      attempt(kind, [&] { store_.read([&](const View& view) { subjects = kind.subjects(view); }); });
      for (const std::int64_t subject : subjects)
        attempt(kind, [&] { look_after(kind, subject, haste); });
    }
  }
}

// What goes wrong is a full disk, most likely: the next change tries again. Answers plan for themselves
// meanwhile.
void Planner::attempt(const PlanKind& kind, const std::function<void()>& body) const {
  try {
    body();
  } catch (const std::exception& e) {
    if (note_) note_("The " + std::string(kind.name) + " could not be planned ahead: " + e.what());
  }
}

std::string Planner::digest_now(const PlanKind& kind, std::int64_t subject) {
  std::string out;
  store_.read([&](const View& view) { out = kind.input(subject, view).digest; });
  return out;
}

void Planner::look_after(const PlanKind& kind, std::int64_t subject, bool haste) {
  std::uint64_t seen = 0;
  {
    const std::lock_guard hold(lock_);
    if (stopping_) return;
    seen = changes_;
  }
  PlanInput input;
  std::optional<StoredPlan> last;
  store_.read([&](const View& view) {
    last = view.plans().find(kind.name, subject);
    if (!haste || !last || kind.follows) input = kind.input(subject, view);
  });
  if (!input.work_out) return; // nothing to plan, or only in haste
  if (last && (last->settled || haste) && last->digest == input.digest) return;
  Made made = worked_out(kind, subject, input, last, haste, seen);
  const std::pair key{kind.name, subject};
  if (made.given_up) {
    broken_off_.insert(key);
    return;
  }
  if (!haste) broken_off_.erase(key);
  store_.write([&](Tx& tx) {
    tx.backroom().keep({std::string(kind.name), subject, input.digest, clock_.now(), !haste, made.body});
  });
  const std::lock_guard hold(lock_);
  ++worked_.stored;
}

// With -Og g++ 12 takes std::stop_source for uninitialized, whose constructor hands itself on.
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif

// What has been overtaken by a change is given up, but never twice running: a busy shop gets plans that are a
// little old, not none.
Planner::Made Planner::worked_out(const PlanKind& kind, std::int64_t subject, const PlanInput& input,
                                  const std::optional<StoredPlan>& last, bool haste, std::uint64_t seen) {
  const bool may_give_up = !haste && broken_off_.count({kind.name, subject}) == 0;
  std::stop_source stop;
  bool done = false;
  auto running = std::async(std::launch::async, [&] {
    std::exception_ptr wrong;
    std::string body;
    try {
      body = input.work_out(last, haste, stop.get_token());
    } catch (...) {
      wrong = std::current_exception();
    }
    const std::lock_guard hold(lock_);
    done = true;
    wake_.notify_all();
    if (wrong) std::rethrow_exception(wrong);
    return body;
  });
  // Whatever is thrown from here on: nobody waits for it any more.
  const std::unique_ptr<std::stop_source, void (*)(std::stop_source*)> ends_with_us(
      &stop, [](std::stop_source* s) { s->request_stop(); });
  Made out;
  std::unique_lock hold(lock_);
  for (;;) {
    wake_.wait(hold, [&] { return done || stopping_ || (may_give_up && changes_ != seen); });
    if (done) break;
    seen = changes_;
    const bool ends = stopping_;
    hold.unlock();
    out.given_up = ends || digest_now(kind, subject) != input.digest;
    if (out.given_up) stop.request_stop();
    hold.lock();
    if (!out.given_up) continue;
    if (!ends) ++worked_.given_up;
    wake_.wait(hold, [&] { return done; });
    break;
  }
  hold.unlock();
  out.body = running.get();
  return out;
}

#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic pop
#endif

} // namespace nutward::shop
