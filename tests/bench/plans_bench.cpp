// An answer from a stored cut plan, and one brought up to date, over planning the same wire from nothing; and
// what a change costs the planner when it does not concern the plan.
//
//   bench_plans [full]      full: 100 jobs (2,200 frets) with 2,000 pieces, and 1,000 with 50,000; otherwise
//   5 with 50
#include "bench/figures.hpp"
#include "hours/load_zone.hpp"
#include "shop/cut_planning.hpp"
#include "shop/kept_cuts.hpp"
#include "shop/run.hpp"
#include "shop/wire_plan.hpp"
#include "store/sqlite.hpp"

#include <random>

namespace nutward::bench {

namespace {

using namespace shop;
using namespace units::literals;

struct FixedClock : Clock {
  units::Instant now() const override { return {1'900'000'000}; }
};

Length tenths(std::mt19937& random, int from, int to) {
  return Length{100'000} *
         (from + static_cast<std::int64_t>(random() % static_cast<unsigned>(to - from + 1)));
}

Job a_job(std::mt19937& random, std::int64_t wire, int due) {
  Job j;
  j.instrument = "board";
  j.board.scale = 648_mm;
  j.board.slots = 22;
  j.board.nut_width = tenths(random, 410, 460);
  j.board.far_width = j.board.nut_width + tenths(random, 90, 130);
  j.board.far_at = 12;
  for (int n = 1; n <= 22; ++n)
    j.slots.push_back(n);
  j.wire = wire;
  j.due = units::Instant{1'900'000'000 + 86'400 * due};
  j.taken_in = {1'890'000'000};
  return j;
}

void add_piece(Tx& tx, std::mt19937& random, std::int64_t wire) {
  const bool end = random() % 20 == 19;
  Piece p;
  p.wire = wire;
  p.kind = end ? pieces::Kind::stick_end : pieces::Kind::short_fret;
  p.length = end ? tenths(random, 600, 3000) : tenths(random, 400, 580);
  p.left = p.right = random() % 2 == 0 ? End::raw : End::dressed;
  p.added = {1'880'000'000};
  Movement m;
  m.kind = MovementKind::counted;
  m.wire = wire;
  m.piece = tx.put(p);
  m.from = Place::outside;
  m.to = Place::tin;
  m.length = *p.length;
  m.pieces = 1;
  tx.move(m);
}

void fill(Store& store, int jobs, int pieces) {
  std::mt19937 random(7);
  store.write([&](Tx& tx) {
    tx.put(Actor{0, "Mara", 2, "", {}});
    for (const char* name : {"medium", "narrow"}) {
      Wire w;
      w.name = name;
      w.stick = 610_mm;
      w.id = tx.put(w);
      Movement m;
      m.kind = MovementKind::received;
      m.wire = w.id;
      m.length = 40 * 610_mm;
      tx.move(m);
    }
    for (int i = 0; i < jobs; ++i)
      tx.put(a_job(random, 1, i));
    for (int i = 0; i < pieces; ++i)
      add_piece(tx, random, 1);
    tx.backroom().take_changes();
  });
}

void measure(int jobs, int pieces, int runs) {
  const Folder folder;
  const auto store = store::open_sqlite({folder.path() / "shop"});
  fill(*store, jobs, pieces);
  fmt::print("{} jobs, {} pieces\n", jobs, pieces);
  const FixedClock clock;
  Rooms rooms(hours::load_zone);
  Executor executor(*store, clock, rooms);
  const Caller who{1, Role::lead, "Mara", "bench"};
  const auto cuts = [&] { return executor.ask({"cuts", {{"wire", Value{std::string("medium")}}}}, who); };
  Times nothing, stored, followed, gathered, digested, planned;
  for (int i = 0; i < runs; ++i)
    nothing.take(cuts);
  {
    Planner planner(*store, clock, {cut_plans()});
    planned.take([&] { planner.wait_until_done(); });
  }
  for (int i = 0; i < runs; ++i)
    stored.take(cuts);
  std::size_t size = 0;
  for (int i = 0; i < runs; ++i)
    store->read([&](const View& v) {
      ToCut what;
      gathered.take([&] { what = whole_wire(v.wires().find(1).value(), v, setup(v)); });
      digested.take([&] { digest_of(what.problem); });
      size = v.plans().find("cuts", 1).value().body.size();
    });
  std::mt19937 random(8);
  for (int i = 0; i < runs; ++i) {
    store->write([&](Tx& tx) { add_piece(tx, random, 1); });
    followed.take(cuts);
  }
  print_times("cuts, with nothing stored", nothing);
  print_times("cuts, as it is stored", stored);
  print_times("cuts, brought up to date", followed);
  print_times("of these: what there is to cut and what from", gathered);
  print_times("          and its digest", digested);
  fmt::print("Planned in the background in {:.2f} s, {} bytes stored\n", planned.median() / 1e6, size);
  if (jobs * 22 <= static_cast<int>(most_slots)) // an answer by itself plans no more than that
    print_ratio("as stored over planned in the answer", stored, nothing, 1);
}

int run(bool full) {
  if (!full) {
    measure(5, 50, 2);
    return 0;
  }
  measure(100, 2'000, 20);
  measure(1'000, 50'000, 5);
  fmt::print("most memory: {} MB\n", most_memory_mb());
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_plans", argc, argv, nutward::bench::run);
}
