#include "remind/watch.hpp"

#include "remind/event.hpp"
#include "remind/falls_due.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <random>
#include <utility>

namespace nutward::remind {

namespace {

// An attempt is over in 15 s; an entry whose attempt was lost in a crash is taken up again after this.
constexpr std::chrono::seconds lease_time{60};
constexpr std::chrono::seconds late_after{3600};
constexpr std::chrono::seconds after_failure{60};
constexpr std::size_t batch = 64;
// Before this the clock of the machine is not set (a board without a battery wakes up in 1970): nothing is
// told.
constexpr units::Instant plausible_from{1'577'836'800}; // 2020-01-01T00:00:00Z

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

// What is to be told in a snapshot.
struct Found {
  std::vector<Due> due;               // by now, in the order they fell due
  std::optional<units::Instant> next; // when something else is due
};

Found find(const shop::View& view, shop::Rooms& rooms, units::Instant now) {
  const auto held = rooms.of(view);
  Found out;
  out.due = falls_due(view, held.calendar, *held.zone, now);
  for (const Due& d : out.due) {
    if (d.at > now && (!out.next || d.at < *out.next)) out.next = d.at;
  }
  std::erase_if(out.due, [&](const Due& d) { return d.at > now; });
  std::stable_sort(out.due.begin(), out.due.end(), [](const Due& a, const Due& b) { return a.at < b.at; });
  return out;
}

} // namespace

Watch::Watch(shop::Store& store, const shop::Clock& clock, shop::Rooms& rooms, WatchOptions options)
    : store_(store), clock_(clock), rooms_(rooms), options_(std::move(options)),
      alarm_([this] { sweep(); }, [this](std::chrono::seconds) { look(); }, [this] { return clock_.now(); }),
      deliverer_(options_.policy) {
  store_.on_change([this](std::int64_t) { look(); });
  closing_ = false; // until here a step of the clock could have begun a sweep without a deliverer
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
  const bool plausible = now >= plausible_from;
  if (!plausible && !std::exchange(holding_, true))
    note("The machine's clock is before 2020: nothing is told until it is set.");
  if (plausible) holding_ = false;
  alarm_.set(plausible ? told_and_sent(now) : std::nullopt); // a step of the clock calls look()
  if (again_) alarm_.set(units::Instant{});                  // something changed meanwhile
}

std::optional<units::Instant> Watch::told_and_sent(units::Instant now) {
  try {
    auto next = tell(now);
    send(now);
    store_.read([&](const shop::View& view) {
      if (const auto entry = view.outbox().next(); entry && (!next || *entry < *next)) next = entry;
    });
    return next;
  } catch (const shop::Problem& problem) {
    note("Reminders could not be kept, and are tried again in a minute: " + problem.text);
  } catch (const std::exception& e) {
    note(std::string("Reminders could not be kept, and are tried again in a minute: ") + e.what());
  }
  return now + after_failure;
}

std::optional<units::Instant> Watch::tell(units::Instant now) {
  std::vector<Ended> ended;
  {
    const std::lock_guard hold(mutex_);
    ended = ended_; // they stay there until what came of them is durable
  }
  Found seen;
  store_.read([&](const shop::View& view) { seen = find(view, rooms_, now); });
  if (seen.due.empty() && ended.empty()) return seen.next;
  std::vector<std::string> notes;
  store_.write([&](shop::Tx& tx) {
    notes.clear();
    for (const Ended& e : ended)
      settle(tx, e, now, notes);
    // Found again, since somebody may have changed the shop after the snapshot: what is put back whole must
    // be what is there now.
    Found found = find(tx, rooms_, now);
    for (const Due& d : found.due) {
      shop::announce(tx, d.event, d.cause, d.at);
      d.mark(tx);
    }
    tx.backroom().take_changes(); // reminders are nobody's doing: they stand in no line of the journal
  });
  {
    const std::lock_guard hold(mutex_);
    ended_.erase(ended_.begin(), ended_.begin() + static_cast<std::ptrdiff_t>(ended.size()));
    for (const Ended& e : ended)
      under_way_.erase(e.entry.id);
  }
  for (const std::string& line : notes)
    note(line);
  return seen.next;
}

void Watch::settle(shop::Tx& tx, const Ended& ended, units::Instant now, std::vector<std::string>& notes) {
  const Next next = next_attempt(ended.entry.attempts + 1, now, ended.outcome, jitter());
  const bool delivered = std::holds_alternative<Delivered>(next);
  std::optional<units::Instant> again;
  if (const auto* retry = std::get_if<Retry>(&next)) again = retry->at;
  if (const auto* failing = std::get_if<Failing>(&next)) again = failing->at;
  // Of several messages under way, one that fares better says nothing against what another has shown: only a
  // delivery ends that a receiver is failing, and only a person that it wants nothing any more.
  bool failing = std::holds_alternative<Failing>(next), disabled = std::holds_alternative<Disable>(next);
  for (const shop::Receiver& r : tx.house().receivers()) {
    if (r.id != ended.entry.receiver) continue;
    failing = !delivered && (failing || r.failing);
    disabled = disabled || r.disabled;
  }
  tx.backroom().settle(ended.entry.id, delivered, again, failing, disabled);
  if (delivered) return;
  notes.push_back(fmt::format(
      "Message {} to receiver {} was not taken ({}); {}.", ended.entry.message_id, ended.entry.receiver,
      ended.outcome.status != 0 ? std::to_string(ended.outcome.status) : ended.outcome.error,
      again ? "it will be tried again" : "the receiver wants nothing any more"));
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
  {
    // Whatever still waits for its turn, or for room to be settled in, only had its lease made longer.
    const std::lock_guard hold(mutex_);
    std::erase_if(entries, [&](const shop::OutboxEntry& e) { return !under_way_.insert(e.id).second; });
  }
  for (const shop::OutboxEntry& e : entries)
    start(e, receivers.at(e.receiver), now);
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
