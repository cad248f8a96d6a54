// A fanned table of 24 slots: the arcs alone, against the plain way to the same nanometre; and the whole
// question `slots`, against the same question of a board without a fan.
//
//   bench_board [full]      full: 20,000 tables and 5,000 questions; otherwise 50
#include "bench/figures.hpp"
#include "board/need.hpp"
#include "hours/load_zone.hpp"
#include "shop/run.hpp"
#include "store/sqlite.hpp"

#include <cmath>

namespace nutward::bench {

namespace {

using namespace units::literals;

constexpr double table_target_us = 1000;

struct FixedClock : shop::Clock {
  units::Instant now() const override { return {1'700'000'000}; }
};

board::Board a_board(bool fanned) {
  board::Board b;
  b.scale = 686_mm;
  b.slots = 24;
  b.nut_width = 54_mm;
  b.far_width = 68_mm;
  b.surface = board::Compound{254_mm, 406_mm, 24};
  if (fanned) b.fan = board::Fan{648_mm, 7};
  return b;
}

// The surface at x, as board.hpp has it; only for this board.
struct Surface {
  double flattening;
  explicit Surface(const board::Board& b) : flattening((406.0 - 254.0) / board::position(b, 24).mm()) {}
  double height(double x, double y) const {
    const double r = 254.0 + flattening * x;
    return std::sqrt(r * r - y * y) - r;
  }
};

double polyline(const Surface& surface, const board::SlotEnds& to, int chords) {
  double sum = 0, x = to.bass.x_mm, y = to.bass.y_mm, z = surface.height(x, y);
  for (int i = 1; i <= chords; ++i) {
    const double t = static_cast<double>(i) / chords;
    const double next_x = to.bass.x_mm + t * (to.treble.x_mm - to.bass.x_mm);
    const double next_y = to.bass.y_mm + t * (to.treble.y_mm - to.bass.y_mm);
    const double next_z = surface.height(next_x, next_y);
    sum += std::sqrt((next_x - x) * (next_x - x) + (next_y - y) * (next_y - y) + (next_z - z) * (next_z - z));
    x = next_x, y = next_y, z = next_z;
  }
  return sum;
}

// The baseline: two polylines and Richardson's extrapolation, with as few chords (a power of two) as stay
// within 1 nm here.
constexpr int chords = 8;

double plain_arc(const Surface& surface, const board::SlotEnds& to) {
  const double coarse = polyline(surface, to, chords), fine = polyline(surface, to, 2 * chords);
  return fine + (fine - coarse) / 3;
}

struct Tables {
  Times plain, fanned, straight;
};

Tables measure_tables(int runs) {
  const board::Board fan = a_board(true), plain = a_board(false);
  const Surface surface(fan);
  double worst = 0;
  for (const board::Slot& s : board::slots(fan))
    worst = std::max(worst, std::abs(plain_arc(surface, board::slot_ends(fan, s.n)) - s.arc.mm()));
  fmt::print("The plain way differs by at most {:.2f} nm\n", worst * 1e6);
  if (worst > 1e-6) throw std::runtime_error("the baseline and the table disagree by over a nanometre");
  Tables out;
  double kept = 0; // so that nothing is left out
  for (int i = 0; i < runs; ++i) {
    out.plain.take([&] {
      for (int n = 1; n <= 24; ++n)
        kept += plain_arc(surface, board::slot_ends(fan, n));
    });
    out.fanned.take([&] { kept += board::slots(fan).back().arc.mm(); });
    out.straight.take([&] { kept += board::slots(plain).back().arc.mm(); });
  }
  if (kept <= 0) throw std::runtime_error("no arcs");
  return out;
}

struct Questions {
  Times fanned, straight;
};

Questions measure_questions(int runs) {
  const Folder folder;
  const auto store = store::open_sqlite({folder.path() / "shop"});
  store->write([](shop::Tx& tx) {
    shop::Wire wire;
    wire.name = "medium";
    wire.id = tx.put(wire);
    for (const bool fanned : {true, false}) {
      shop::Job job;
      job.wire = wire.id;
      job.board = a_board(fanned);
      for (int n = 1; n <= 24; ++n)
        job.slots.push_back(n);
      tx.put(job);
    }
  });
  const FixedClock clock;
  shop::Rooms rooms(hours::load_zone);
  shop::Executor executor(*store, clock, rooms);
  const shop::Caller who{1, shop::Role::lead, "bench", "bench"};
  const auto ask = [&](std::int64_t job) {
    const auto answer = executor.ask({"slots", {{"job", shop::Ref{shop::Thing::job, job}}}}, who);
    if (!answer.table || answer.table->rows.size() != 24) throw std::runtime_error("slots was not answered");
  };
  Questions out;
  for (int i = 0; i < runs; ++i) {
    out.fanned.take([&] { ask(1); });
    out.straight.take([&] { ask(2); });
  }
  return out;
}

int run(bool full) {
  const Tables t = measure_tables(full ? 20'000 : 50);
  const Questions q = measure_questions(full ? 5'000 : 50);
  print_times("24 fanned arcs by polylines and Richardson's extrapolation", t.plain);
  print_times("board::slots of the fanned board", t.fanned);
  print_times("board::slots of the same board without its fan", t.straight);
  print_times("the whole question slots, fanned", q.fanned);
  print_times("the whole question slots, without a fan", q.straight);
  print_ratio("a fanned table over the plain way to the same nanometre", t.fanned, t.plain, 2);
  print_ratio("the question slots, fanned over not", q.fanned, q.straight, 2);
  fmt::print("a fanned table of 24 slots: {:.1f} us, target at most {:.0f} us: {}\n", q.fanned.median(),
             table_target_us, q.fanned.median() <= table_target_us ? "met" : "MISSED");
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_board", argc, argv, nutward::bench::run);
}
