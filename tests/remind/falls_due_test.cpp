// A model of when each reminder must be told, beside what falls_due finds in a real store: PROMISES C1, once
// each and never early. The model counts days and seconds of UTC by itself and knows the shop's hours only as
// nine to eighteen, Monday to Friday.
#include "hours/load_zone.hpp"
#include "remind/falls_due.hpp"
#include "shop/run.hpp"
#include "store/sqlite.hpp"
#include "support/catch.hpp"
#include "support/receiver.hpp"

#include <algorithm>
#include <map>
#include <random>
#include <set>
#include <tuple>

using namespace nutward;
using namespace nutward::shop;
using units::Instant;

namespace {

using Told = std::tuple<std::string, std::int64_t, std::set<int>, std::int64_t>; // type, job, slots, when

constexpr std::int64_t hour = 3600, day = 24 * hour;

struct Model {
  struct Clock {
    std::int64_t job, pressed;
    std::set<int> slots;
    bool told = false, overdue_told = false;
  };
  std::set<std::int64_t> closed; // days since 1970
  std::vector<Clock> clocks;

  bool open(std::int64_t d) const { return (d + 3) % 7 < 5 && !closed.contains(d); } // 1970-01-01: a Thursday
  std::int64_t remind(const Clock& c) const {
    const std::int64_t due = c.pressed + day;
    for (std::int64_t d = due / day;; ++d) {
      if (open(d) && due < d * day + 18 * hour) return std::max(due, d * day + 9 * hour);
    }
  }
  std::int64_t overdue(const Clock& c) const {
    for (std::int64_t d = (c.pressed + day) / day + 1;; ++d) {
      if (open(d)) return d * day + 18 * hour;
    }
  }
  void press(std::int64_t job, int slot, std::int64_t now) {
    recheck(job, slot);
    clocks.push_back({job, now, {slot}});
  }
  void recheck(std::int64_t job, int slot) {
    for (Clock& c : clocks)
      if (c.job == job) c.slots.erase(slot);
    std::erase_if(clocks, [](const Clock& c) { return c.slots.empty(); });
  }
  void cancel(std::int64_t job) {
    std::erase_if(clocks, [&](const Clock& c) { return c.job == job; });
  }
  std::vector<Told> sweep(std::int64_t now) {
    std::vector<Told> out;
    for (Clock& c : clocks) {
      if (!c.told && remind(c) <= now) {
        out.emplace_back("recheck.due", c.job, c.slots, remind(c));
        c.told = true;
      }
      if (c.told && !c.overdue_told && overdue(c) <= now) {
        out.emplace_back("recheck.overdue", c.job, c.slots, overdue(c));
        c.overdue_told = true;
      }
    }
    std::sort(out.begin(), out.end());
    return out;
  }
};

class Real {
public:
  Real() : zone_(hours::load_zone("UTC")) {
    store_->write([&](Tx& tx) {
      Actor lead;
      lead.name = "Mara";
      lead.role = 2;
      who_ = {tx.put(lead), Role::lead, lead.name, "unix"};
      Wire w;
      w.name = "medium";
      wire_ = tx.put(w);
    });
  }
  // Pressing a fret that is not on record makes it of the stock.
  void receive(Instant now) {
    act(now, "receive", {{"wire", wire_}, {"count", std::int64_t{1000}}, {"each", Length{600'000'000}}});
  }
  void act(Instant now, const std::string& row, std::vector<std::pair<std::string, Value>> args) {
    store_->write([&](Tx& tx) {
      const auto calendar = calendar_of(tx.house());
      Order order;
      order.calls = {{row, args}};
      order.who = who_;
      order.confirmed = true;
      apply_order(order, {now, now, *zone_, calendar, who_}, tx);
    });
  }
  std::int64_t new_job(Instant now) {
    act(now, "new-job",
        {{"wire", wire_},
         {"scale", Length{648'000'000}},
         {"frets", std::int64_t{3}},
         {"nut_width", Length{43'000'000}},
         {"far_width", Length{45'000'000}},
         {"far_slot", std::int64_t{3}}});
    std::int64_t id = 0;
    store_->read([&](const View& v) { id = v.jobs().recent(1).at(0).id; });
    return id;
  }
  // As a watch does it: until nothing is left that is due by now.
  std::vector<Told> sweep(Instant now) {
    std::vector<Told> out;
    while (any_due(now)) {
      store_->write([&](Tx& tx) {
        for (const remind::Due& d : remind::falls_due(tx, calendar_of(tx.house()), *zone_, now)) {
          if (d.at > now) continue;
          d.mark(tx);
          out.push_back(told(d));
        }
        tx.backroom().take_changes();
      });
    }
    std::sort(out.begin(), out.end());
    return out;
  }

private:
  bool any_due(Instant now) {
    bool out = false;
    store_->read([&](const View& view) {
      const auto all = remind::falls_due(view, calendar_of(view.house()), *zone_, now);
      out = std::any_of(all.begin(), all.end(), [&](const auto& d) { return d.at <= now; });
    });
    return out;
  }
  static Told told(const remind::Due& d) {
    const auto& data = *std::get<std::shared_ptr<const Node>>(d.event.data);
    std::set<int> slots;
    for (const Value& v : std::get<std::shared_ptr<const Node>>(*data.find("slots"))->items)
      slots.insert(static_cast<int>(std::get<std::int64_t>(v)));
    return {d.event.type, std::get<Ref>(*data.find("job")).id, slots, d.at.s};
  }

  test::TemporaryFolder folder_;
  std::unique_ptr<store::Sqlite> store_ = store::open_sqlite({folder_.path() / "home"});
  std::shared_ptr<const hours::Zone> zone_;
  Caller who_;
  std::int64_t wire_ = 0;
};

std::string day_text(std::int64_t d) {
  const auto ymd = units::Day{static_cast<std::int32_t>(d)}.ymd();
  char text[16];
  std::snprintf(text, sizeof text, "%04d-%02u-%02u", int{ymd.year()}, unsigned{ymd.month()},
                unsigned{ymd.day()});
  return text;
}

// Returns how many reminders there were.
std::size_t walk(int steps, unsigned seed) {
  Real real;
  Model model;
  Instant now{1'772'442'000}; // 2026-03-02T09:00:00Z, a Monday
  real.act(now, "open-hours", {{"days", std::string("mon-fri")}, {"hours", std::string("9:00-18:00")}});
  real.receive(now);
  std::mt19937 random(seed);
  const auto below = [&](int n) { return std::uniform_int_distribution<int>{0, n - 1}(random); };
  std::vector<std::int64_t> jobs{real.new_job(now), real.new_job(now), real.new_job(now)};
  std::size_t count = 0;
  for (int step = 0; step < steps; ++step) {
    INFO("step " << step << " of seed " << seed);
    now = now + std::chrono::seconds{7'201 + below(30 * 3600)}; // beyond the two hours of one pressing
    auto& job = jobs[static_cast<std::size_t>(below(3))];
    const int slot = 1 + below(3);
    const int what = below(20);
    const auto expected_before = model.sweep(now.s);
    REQUIRE(real.sweep(now) == expected_before);
    count += expected_before.size();
    if (what < 12) {
      real.act(now, "pressed", {{"job", job}, {"slots", std::int64_t{slot}}});
      model.press(job, slot, now.s);
    } else if (what < 17) {
      const bool waits = std::any_of(model.clocks.begin(), model.clocks.end(),
                                     [&](const auto& c) { return c.job == job && c.slots.contains(slot); });
      if (!waits) continue;
      real.act(now, "rechecked", {{"job", job}, {"slots", std::int64_t{slot}}});
      model.recheck(job, slot);
    } else if (what == 17) {
      const std::int64_t d = now.s / day + below(10);
      real.act(now, "close-day", {{"day", day_text(d)}});
      model.closed.insert(d);
    } else if (what == 18) {
      real.act(now, "cancel-job", {{"job", job}});
      model.cancel(job);
      job = real.new_job(now);
    } else {
      REQUIRE(real.sweep(now - std::chrono::hours{below(72)}).empty()); // the clock was back for a while
    }
  }
  return count;
}

} // namespace

// With sanitizers a tenth of the way takes as long.
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr unsigned walks = 2;
#else
constexpr unsigned walks = 20;
#endif

TEST_CASE(
    "Over thousands of random reports each recheck is told of once, at its time, as a simple model says") {
  for (unsigned seed = 1; seed <= walks; ++seed)
    CHECK(walk(1'000, seed) > 250);
}

TEST_CASE("Over a million random reports each recheck is told of once, at its time", "[.release]") {
  for (unsigned seed = 1'001; seed <= 2'000; ++seed)
    walk(1'000, seed);
}
