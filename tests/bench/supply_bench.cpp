// The question `supply` over five years of history, and how shops fare for two years that order when it says
// so.
//
//   bench_supply [full]      full: 20 wires, five years, 50 shops; otherwise 3 wires, a year, 4 shops
#include "bench/figures.hpp"
#include "bench/supply_years.hpp"
#include "hours/load_zone.hpp"
#include "shop/agenda_plan.hpp"
#include "shop/cut_planning.hpp"
#include "shop/planner.hpp"
#include "shop/run.hpp"
#include "store/sqlite.hpp"

#include <random>

namespace nutward::bench {

namespace {

using namespace shop;
using namespace units::literals;

constexpr std::int64_t now_s = 1'900'000'000, week_s = 7 * 86'400;

struct FixedClock : Clock {
  units::Instant now() const override { return {now_s}; }
};

Movement moved(MovementKind kind, std::int64_t wire, Place from, Place to, Length length) {
  return {kind, wire, {}, {}, {}, {}, from, to, length, 0, ""};
}

void line(Tx& tx, std::int64_t happened) {
  Line l;
  l.recorded = l.happened = {happened};
  l.actor = 1;
  l.via = "bench";
  l.call = l.inverse = "[]";
  tx.backroom().append(l);
}

Job a_job(std::int64_t wire, int n) {
  Job j;
  j.instrument = "board " + std::to_string(n);
  j.board.scale = 648_mm;
  j.board.slots = 22;
  j.board.nut_width = 43_mm;
  j.board.far_width = 53_mm;
  j.board.far_at = 12;
  for (int s = 1; s <= 22; ++s)
    j.slots.push_back(s);
  j.wire = wire;
  j.due = units::Instant{now_s + 86'400 * (10 + n)};
  j.taken_in = {now_s - 86'400};
  return j;
}

// Two refrets in three weeks of each wire: 22 frets and their nips, each a movement of the ledger.
void fill(Store& store, int wires, int weeks, int jobs) {
  std::mt19937 random(11);
  store.write([&](Tx& tx) {
    tx.put(Actor{0, "Mara", 2, "", {}});
    for (int w = 1; w <= wires; ++w) {
      Wire wire;
      wire.name = "wire " + std::to_string(w);
      wire.stick = 610_mm;
      wire.id = tx.put(wire);
      tx.move(moved(MovementKind::received, wire.id, Place::outside, Place::stock, 2'000'000_mm));
    }
    line(tx, now_s - weeks * week_s);
  });
  for (int week = weeks; week > 0; --week)
    store.write([&](Tx& tx) {
      for (int w = 1; w <= wires; ++w) {
        if (random() % 3 == 0) continue;
        for (int f = 0; f < 22; ++f) {
          tx.move(moved(MovementKind::cut, w, Place::stock, Place::board, 55_mm));
          tx.move(moved(MovementKind::cut, w, Place::stock, Place::kerf, 0.5_mm));
        }
        line(tx, now_s - week * week_s + 3600 * w);
      }
    });
  store.write([&](Tx& tx) {
    for (int w = 1; w <= wires; ++w) { // a few sticks are left
      const Length left = tx.wires().on_hand(w) - 20 * 610_mm;
      tx.move(moved(MovementKind::counted, w, Place::stock, Place::outside, left));
    }
    line(tx, now_s - 2 * week_s);
    for (int j = 0; j < jobs; ++j)
      tx.put(a_job(1 + j % wires, j));
    tx.backroom().take_changes();
  });
}

void answers(int wires, int weeks, int jobs, int runs) {
  const Folder folder;
  const auto store = store::open_sqlite({folder.path() / "shop"});
  fill(*store, wires, weeks, jobs);
  const FixedClock clock;
  Rooms rooms(hours::load_zone);
  Executor executor(*store, clock, rooms);
  {
    Planner planner(*store, clock, {cut_plans(), agenda_plans(clock, rooms)});
    planner.wait_until_done();
  }
  const Caller who{1, Role::lead, "Mara", "bench"};
  Times answer, changed, ledger;
  for (int i = 0; i < runs; ++i) {
    answer.take([&] { executor.ask({"supply", {}}, who); });
    store->write([&](Tx& tx) { // a change of the shop, so that nothing read before is known
      tx.move(moved(MovementKind::scrapped, 1, Place::stock, Place::scrap, 1_mm));
      line(tx, now_s);
    });
    changed.take([&] { executor.ask({"supply", {}}, who); });
    store->read([&](const View& view) {
      ledger.take([&] {
        for (int w = 1; w <= wires; ++w)
          view.wires().flows(w, {0}, {now_s});
      });
    });
  }
  fmt::print("{} wires, {} weeks of history, {} open jobs\n", wires, weeks, jobs);
  print_times("supply, of all wires", answer);
  print_times("the same after a change of the shop", changed);
  print_times("adding up the ledger's movements of those weeks", ledger);
  print_ratio("supply over adding up the ledger once", changed, ledger, 1);
  fmt::print("supply after a change: {:.1f} ms, target at most 50 ms: {}\n", changed.median() / 1000,
             changed.median() <= 50'000 ? "met" : "MISSED");
}

int run(bool full) {
  answers(full ? 20 : 3, full ? 261 : 52, full ? 40 : 3, full ? 30 : 2);
  simulate(full ? 50 : 4);
  fmt::print("most memory: {} MB\n", most_memory_mb());
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_supply", argc, argv, nutward::bench::run);
}
