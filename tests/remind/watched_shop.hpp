// A shop of its own under a Watch: a real store in a folder, a real executor, a clock that the test moves.
#pragma once

#include "hours/load_zone.hpp"
#include "remind/watch.hpp"
#include "store/sqlite.hpp"
#include "support/catch.hpp"
#include "support/deliveries.hpp"
#include "units/print.hpp"

#include <algorithm>
#include <atomic>
#include <functional>
#include <memory>
#include <set>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace nutward::test {

using units::Instant;
using units::Length;

// 2026-03-02T10:00:00Z as utc(2026, 3, 2, 10).
constexpr Instant utc(int y, unsigned m, unsigned d, int h = 0, int min = 0, int s = 0) {
  using namespace std::chrono;
  return Instant{sys_days{year{y} / month{m} / day{d}}.time_since_epoch().count() * 86'400LL} +
         std::chrono::hours{h} + minutes{min} + seconds{s};
}

class MovedClock : public shop::Clock {
public:
  explicit MovedClock(Instant start) : s_(start.s) {}
  Instant now() const override { return {s_}; }
  void set(Instant t) { s_ = t.s; }

private:
  std::atomic<std::int64_t> s_;
};

// Looks until it is so; false if it has not become so in time.
inline bool until(const std::function<bool()>& so, std::chrono::seconds patience = std::chrono::seconds{60}) {
  const auto end = std::chrono::steady_clock::now() + patience;
  while (!so()) {
    if (std::chrono::steady_clock::now() > end) return false;
    std::this_thread::sleep_for(std::chrono::milliseconds{1});
  }
  return true;
}

using Args = std::vector<std::pair<std::string, shop::Value>>;

// Open Monday to Friday 9:00-12:30 and 13:30-18:00; one wire, one person.
class WatchedShop {
public:
  explicit WatchedShop(Instant start, const std::string& zone = "Europe/Berlin", std::int64_t most_pages = 0)
      : clock(start), rooms_(hours::load_zone), most_pages_(most_pages) {
    open();
    store->write([&](shop::Tx& tx) {
      shop::Actor lead;
      lead.name = "Mara";
      lead.role = 2;
      who_ = {tx.put(lead), shop::Role::lead, lead.name, "unix"};
      shop::Wire w;
      w.name = "medium";
      w.stick = Length{600'000'000};
      wire = tx.put(w);
      shop::Movement plenty; // so that nobody is told to order, but where a test wants it
      plenty.kind = shop::MovementKind::received;
      plenty.wire = wire;
      plenty.length = Length{1'000'000'000'000};
      tx.move(plenty);
      tx.backroom().take_changes();
      tx.backroom().take_movements();
    });
    act("set", {{"setting", std::string("zone")}, {"to", zone}});
    act("open-hours", {{"days", std::string("mon-fri")}, {"hours", std::string("9:00-12:30, 13:30-18:00")}});
  }
  WatchedShop(const WatchedShop&) = delete;
  WatchedShop& operator=(const WatchedShop&) = delete;
  ~WatchedShop() { close(); }

  void watch_it() {
    remind::WatchOptions options;
    options.note = [this](const std::string& line) {
      const std::lock_guard hold(noting_);
      notes_.push_back(line);
    };
    watch = std::make_unique<remind::Watch>(*store, clock, rooms_, options);
  }
  void restart() {
    close();
    open();
    watch_it();
  }
  void give_room() { // closed and opened again, without the bound on the file
    close();
    most_pages_ = 0;
    open();
    watch_it();
  }
  std::vector<std::string> notes() {
    const std::lock_guard hold(noting_);
    return notes_;
  }

  // Through the executor, as a person's; throws the Problem where it is refused.
  shop::Answer act(const std::string& row, Args args) {
    shop::Order order;
    order.calls = {{row, std::move(args)}};
    order.who = who_;
    order.confirmed = true;
    auto outcome = executor->run(std::move(order));
    if (outcome.problem) throw shop::Problem(*outcome.problem);
    return *outcome.answer;
  }
  shop::Answer ask(const std::string& row, Args args = {}) {
    return executor->ask({row, std::move(args)}, who_);
  }
  std::int64_t job(const std::string& due = "") {
    Args args{{"wire", wire},
              {"scale", Length{648'000'000}},
              {"frets", std::int64_t{3}},
              {"nut_width", Length{43'000'000}},
              {"far_width", Length{45'000'000}},
              {"far_slot", std::int64_t{3}}};
    if (!due.empty()) args.emplace_back("due", due);
    act("new-job", std::move(args));
    return seen<std::int64_t>([](const shop::View& v) { return v.jobs().recent(1).at(0).id; });
  }
  void press(std::int64_t job, const std::string& slots = "") {
    Args args{{"job", job}};
    if (!slots.empty()) args.emplace_back("slots", slots);
    // For the frets: a pressed one that is not on record is made of the stock.
    move_wire(shop::Place::outside, shop::Place::stock, Length{200'000'000});
    act("pressed", std::move(args));
  }
  std::int64_t receiver(const std::string& name, const std::string& url,
                        std::vector<std::string> wants = {}) {
    shop::Receiver r;
    r.name = name;
    r.url = url;
    r.secret = secret_text;
    r.wants = std::move(wants);
    store->write([&](shop::Tx& tx) {
      r.id = tx.put(r);
      tx.backroom().take_changes();
    });
    return r.id;
  }
  // Wire that comes or goes without a report.
  void move_wire(shop::Place from, shop::Place to, Length length) {
    store->write([&](shop::Tx& tx) {
      shop::Movement m;
      m.kind = to == shop::Place::stock ? shop::MovementKind::received : shop::MovementKind::scrapped;
      m.wire = wire;
      m.from = from;
      m.to = to;
      m.length = length;
      m.reason = "the test's";
      tx.move(m);
      tx.backroom().take_changes();
      tx.backroom().take_movements();
    });
  }

  // That much wire is on hand, and no more.
  void only(Length left) {
    move_wire(shop::Place::stock, shop::Place::scrap,
              seen<Length>([&](const shop::View& v) { return v.wires().on_hand(wire); }) - left);
  }

  template <class T>
  T seen(const std::function<T(const shop::View&)>& body) {
    T out{};
    store->read([&](const shop::View& view) { out = body(view); });
    return out;
  }
  // Undelivered entries that would be due by `by`, whoever they are for.
  std::vector<shop::OutboxEntry> waiting(Instant by) {
    return seen<std::vector<shop::OutboxEntry>>(
        [&](const shop::View& v) { return v.outbox().due(by, 10'000); });
  }
  std::int64_t undelivered(std::int64_t receiver) {
    return seen<std::int64_t>([&](const shop::View& v) { return v.outbox().undelivered(receiver); });
  }
  shop::Receiver look_up(std::int64_t id) {
    return seen<shop::Receiver>([&](const shop::View& v) {
      for (const auto& r : v.house().receivers())
        if (r.id == id) return r;
      return shop::Receiver{};
    });
  }

  // Until a sweep that began after this call has ended.
  void swept() {
    for (int i = 0; i < 2; ++i) {
      const auto before = watch->sweeps();
      watch->look();
      REQUIRE(until([&] { return watch->sweeps() > before; }));
    }
  }
  void move_to(Instant t) {
    clock.set(t);
    swept();
    swept(); // what was told in the first may make something else due
  }
  // Until nothing is left to deliver to these receivers.
  void delivered(const std::vector<std::int64_t>& receivers) {
    swept();
    for (auto r : receivers)
      REQUIRE(until([&] { return undelivered(r) == 0; }));
  }

  MovedClock clock;
  std::int64_t wire = 0;
  std::unique_ptr<store::Sqlite> store;
  std::unique_ptr<shop::Executor> executor;
  std::unique_ptr<remind::Watch> watch;

private:
  void open() {
    store = store::open_sqlite({folder_.path() / "home", most_pages_});
    executor = std::make_unique<shop::Executor>(*store, clock, rooms_);
  }
  void close() { // as main does: whoever writes is gone before the watch
    executor.reset();
    watch.reset();
    store.reset();
  }

  TemporaryFolder folder_;
  shop::Rooms rooms_;
  std::int64_t most_pages_;
  shop::Caller who_;
  std::mutex noting_;
  std::vector<std::string> notes_;
};

// What came to a receiver, as it was sent.
struct Came {
  std::string path, id, type, text;
  nlohmann::json data;
};

// In the order of data.sequence: messages that fall due together are under way together, each on a connection
// of its own, so which arrives first is left to chance, and the sequence is what tells a receiver their
// order.
inline std::vector<Came> came(Receiver& receiver, std::chrono::milliseconds patience = {}) {
  std::vector<Came> out;
  for (std::string line = receiver.line(patience); !line.empty(); line = receiver.line({})) {
    const auto got = nlohmann::json::parse(line);
    const auto body = nlohmann::json::parse(got["body"].get<std::string>());
    out.push_back({got["path"], got["headers"]["webhook-id"], body["type"], body["text"], body["data"]});
  }
  std::ranges::stable_sort(out, {}, [](const Came& c) { return c.data.value("sequence", std::int64_t{0}); });
  return out;
}

inline std::vector<std::string> types(const std::vector<Came>& all) {
  std::vector<std::string> out;
  for (const auto& c : all)
    out.push_back(c.type);
  return out;
}

} // namespace nutward::test
