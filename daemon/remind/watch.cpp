#include "remind/watch.hpp"

#include "remind/event.hpp"
#include "remind/falls_due.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <random>

namespace nutward::remind {

namespace {

// An attempt is over in 15 s; an entry whose attempt was lost in a crash is taken up again after this.
constexpr std::chrono::seconds lease_time{60};
constexpr std::chrono::seconds late_after{3600};
constexpr std::chrono::seconds after_failure{60};
constexpr std::size_t batch = 64;
// Before this the clock of the machine is not set (a board without a battery wakes up in 1970): nothing is
// told.
constexpr units::Instant plausible_from{1'600'000'000};

double jitter() {
  thread_local std::minstd_rand random{std::random_device{}()};
  return std::uniform_real_distribution<double>{0, 1}(random);
}

// The sequence and, where it is so, that it comes late, put in front of what the event says.
std::string data_of(const shop::OutboxEntry& entry, units::Instant now) {
  const bool late = now - entry.happened > late_after;
  std::string out = fmt::format("{{\"sequence\":{},\"late\":{}", entry.sequence, late);
  return out + (entry.data.size() > 2 ? "," + entry.data.substr(1) : "}");
}

Shape shape_of(shop::Shape shape) {
  switch (shape) {
  case shop::Shape::cloudevents:
    return Shape::cloudevents;
  case shop::Shape::text:
    return Shape::text;
  case shop::Shape::event:
    break;
  }
  return Shape::event;
}

// Wires told as low that have recovered may be told again.
std::vector<shop::Wire> recovered(const shop::View& view) {
  auto out = view.wires().all();
  std::erase_if(out, [&](const shop::Wire& w) {
    return !w.low_told || (w.reorder_at && view.wires().on_hand(w.id) < *w.reorder_at);
  });
  return out;
}

} // namespace

Watch::Watch(shop::Store& store, const shop::Clock& clock, shop::Rooms& rooms, WatchOptions options)
    : store_(store), clock_(clock), rooms_(rooms), options_(std::move(options)),
      alarm_([this] { sweep(); }, [this](std::chrono::seconds) { look(); }, [this] { return clock_.now(); }),
      deliverer_(options_.policy) {
  store_.on_change([this](std::int64_t) { look(); });
  look();
}

Watch::~Watch() {
  store_.on_change({});
  closing_ = true;
  const std::lock_guard hold(sweeping_); // from here on every sweep returns at once
}

void Watch::look() {
  again_ = true;
  alarm_.set(units::Instant{});
}

void Watch::note(const std::string& line) const {
  if (options_.note) options_.note(line);
}

void Watch::sweep() {
  const std::lock_guard hold(sweeping_);
  if (closing_) return;
  ++sweeps_;
  again_ = false;
  const units::Instant now = clock_.now();
  if (now < plausible_from) {
    note("The machine's clock is before 2020: nothing is told until it is set.");
    alarm_.set(std::nullopt); // a step of the clock calls look()
    return;
  }
  std::optional<units::Instant> next = now + after_failure;
  try {
    next = tell(now);
    send(now);
    store_.read([&](const shop::View& view) {
      if (const auto entry = view.outbox().next(); entry && (!next || *entry < *next)) next = entry;
    });
  } catch (const shop::Problem& problem) {
    note("Reminders could not be kept, and are tried again in a minute: " + problem.text);
  } catch (const std::exception& e) {
    note(std::string("Reminders could not be kept, and are tried again in a minute: ") + e.what());
  }
  alarm_.set(next);
  if (again_) alarm_.set(units::Instant{}); // something changed meanwhile
}

std::optional<units::Instant> Watch::tell(units::Instant now) {
  std::vector<Ended> ended;
  {
    const std::lock_guard hold(mutex_);
    ended.swap(ended_);
  }
  std::vector<Due> due;
  std::vector<shop::Wire> well;
  std::optional<units::Instant> next;
  try {
    store_.read([&](const shop::View& view) {
      const auto held = rooms_.of(view);
      due = falls_due(view, held.calendar, *held.zone, now);
      well = recovered(view);
    });
    for (const Due& d : due) {
      if (d.at > now && (!next || d.at < *next)) next = d.at;
    }
    std::erase_if(due, [&](const Due& d) { return d.at > now; });
    if (due.empty() && ended.empty() && well.empty()) return next;
    store_.write([&](shop::Tx& tx) {
      for (const Ended& e : ended)
        settle(tx, e, now);
      for (shop::Wire w : well) {
        w.low_told = false;
        tx.put(w);
      }
      for (const Due& d : due) {
        shop::announce(tx, d.event, d.cause, d.at);
        d.mark(tx);
      }
      tx.backroom().take_changes(); // reminders are nobody's doing: they stand in no line of the journal
    });
  } catch (...) { // what came of attempts is not forgotten over a full disk
    const std::lock_guard hold(mutex_);
    ended_.insert(ended_.begin(), ended.begin(), ended.end());
    throw;
  }
  return next;
}

void Watch::settle(shop::Tx& tx, const Ended& ended, units::Instant now) {
  const Next next = next_attempt(ended.entry.attempts + 1, now, ended.outcome, jitter());
  const bool delivered = std::holds_alternative<Delivered>(next);
  std::optional<units::Instant> again;
  if (const auto* retry = std::get_if<Retry>(&next)) again = retry->at;
  if (const auto* failing = std::get_if<Failing>(&next)) again = failing->at;
  tx.backroom().settle(ended.entry.id, delivered, again, std::holds_alternative<Failing>(next),
                       std::holds_alternative<Disable>(next));
  if (!delivered) {
    note(fmt::format("Message {} to receiver {} was not taken ({}); {}.", ended.entry.message_id,
                     ended.entry.receiver,
                     ended.outcome.status != 0 ? std::to_string(ended.outcome.status) : ended.outcome.error,
                     again ? "it will be tried again" : "the receiver wants nothing any more"));
  }
}

void Watch::send(units::Instant now) {
  std::vector<shop::OutboxEntry> entries;
  std::map<std::int64_t, shop::Receiver> receivers;
  store_.read([&](const shop::View& view) {
    entries = view.outbox().due(now, batch);
    if (entries.empty()) return;
    for (const shop::Receiver& r : view.house().receivers())
      receivers.emplace(r.id, r);
  });
  if (entries.empty()) return;
  store_.write([&](shop::Tx& tx) {
    for (const shop::OutboxEntry& e : entries)
      tx.backroom().lease(e.id, now + lease_time);
  });
  for (const shop::OutboxEntry& e : entries) {
    if (const auto r = receivers.find(e.receiver); r != receivers.end()) start(e, r->second, now);
  }
}

void Watch::start(const shop::OutboxEntry& entry, const shop::Receiver& receiver, units::Instant now) {
  auto ended = [this, entry](const Outcome& outcome) {
    {
      const std::lock_guard hold(mutex_);
      ended_.push_back({entry, outcome});
    }
    look();
  };
  try {
    Attempt attempt;
    attempt.id = entry.message_id;
    attempt.url = receiver.url;
    const Shape shape = shape_of(receiver.shape);
    attempt.body = body(shape, {entry.message_id, entry.type, options_.source, entry.happened, entry.text,
                                data_of(entry, now)});
    attempt.content_type = std::string(content_type(shape));
    attempt.secrets = {Secret::parse(receiver.secret)};
    attempt.at = now;
    deliverer_.start(std::move(attempt), ended);
  } catch (const std::exception& e) {
    ended({0, e.what(), {}, {}});
  }
}

} // namespace nutward::remind
