// The answers of the agenda on a real store: as the plan is stored, brought up to date after a change, and a
// promise; and what the planner takes for a new plan after one change.
//
//   bench_agenda_answers [full]      full: 100 jobs for five people; otherwise 5
#include "bench/figures.hpp"
#include "hours/load_zone.hpp"
#include "shop/agenda_plan.hpp"
#include "shop/apply.hpp"
#include "store/sqlite.hpp"

#include <thread>

namespace nutward::bench {

namespace {

using namespace shop;
using namespace units::literals;

constexpr std::int64_t begin = 1'900'015'200; // Tuesday, 18 March 2030, 10:00 UTC

struct FixedClock : Clock {
  units::Instant now() const override { return {begin}; }
};

Job a_job(int n) {
  Job j;
  j.instrument = "board";
  j.board.scale = 648_mm;
  j.board.slots = 20 + n % 5;
  j.board.nut_width = 43_mm;
  j.board.far_width = 54_mm;
  j.board.far_at = 12;
  for (int s = 1; s <= j.board.slots; ++s)
    j.slots.push_back(s);
  j.wire = 1;
  j.due = units::Instant{begin + 86'400 * (4 + n)};
  j.taken_in = {begin - 86'400 * 10};
  return j;
}

void fill(Store& store, int jobs) {
  store.write([&](Tx& tx) {
    for (const char* name : {"Mara", "Ines", "Tomo", "Odile", "Vida"})
      tx.put(Actor{0, name, 2, "", {}});
    for (int d = 1; d <= 5; ++d)
      tx.put(Weekday{d, "09:00-12:30 13:30-18:00"});
    Wire w;
    w.name = "medium";
    w.id = tx.put(w);
    for (int n = 0; n < jobs; ++n)
      tx.put(a_job(n));
    tx.backroom().take_changes();
  });
}

void measure(int jobs, int runs) {
  const Folder folder;
  const auto store = store::open_sqlite({folder.path() / "shop"});
  fill(*store, jobs);
  fmt::print("{} jobs, five people\n", jobs);
  const FixedClock clock;
  Rooms rooms(hours::load_zone);
  Executor executor(*store, clock, rooms);
  const Caller who{1, Role::lead, "Mara", "bench"};
  const auto asks = [&](const char* row) { return [&executor, &who, row] { executor.ask({row, {}}, who); }; };
  Times nothing, first, stored, promise, quick, again, followed, due;
  const auto digest = [&] {
    std::string out;
    store->read([&](const View& view) { out = view.plans().find(agenda_planning, 1).value().digest; });
    return out;
  };
  for (int i = 0; i < runs; ++i)
    nothing.take(asks("agenda"));
  Planner planner(*store, clock, {agenda_plans(clock, rooms)});
  first.take([&] { planner.wait_until_done(); });
  for (int i = 0; i < runs; ++i) {
    stored.take(asks("agenda"));
    promise.take(asks("promise"));
    due.take(asks("due"));
  }
  for (int i = 0; i < runs; ++i) {
    store->write([&](Tx& tx) {
      Job job = tx.jobs().open().at(static_cast<std::size_t>(i) % tx.jobs().open().size());
      job.priority = job.priority % 9 + 1;
      tx.put(job);
      tx.backroom().take_changes();
    });
    followed.take(asks("agenda"));
    const std::string before = digest();
    again.take([&] {
      quick.take([&] {
        planner.changed();
        while (digest() == before)
          std::this_thread::sleep_for(std::chrono::milliseconds{1});
      });
      planner.wait_until_done();
    });
  }
  print_times("agenda, with nothing stored", nothing);
  print_times("agenda, as it is stored", stored);
  print_times("agenda, brought up to date", followed);
  print_times("promise", promise);
  print_times("due", due);
  print_times("a first new plan in the background, after one change", quick);
  print_times("a good one in the background", again);
  fmt::print("Planned first in the background in {:.2f} s\n", first.median() / 1e6);
}

int run(bool full) {
  measure(full ? 100 : 5, full ? 10 : 2);
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_agenda_answers", argc, argv, nutward::bench::run);
}
