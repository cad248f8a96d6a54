// The press plan of a 24-fret board, over trying every group of it; and with the board's own table.
//
//   bench_press [full]      full: 20,000 plans; otherwise 200
#include "bench/figures.hpp"
#include "press/passes.hpp"

#include <limits>

namespace nutward::bench {

namespace {

using press::Bar;
using press::Crown;
using press::Equipment;
using press::Plan;
using press::Work;
using units::Length;

struct Bench {
  board::Board board;
  Equipment equipment;
  Bar bar;
};

Bench a_bench() {
  Bench out;
  out.board.scale = Length{645'160'000};
  out.board.slots = 24;
  out.board.nut_width = Length{43'000'000};
  out.board.far_width = Length{56'000'000};
  out.equipment.press_rating = press::Force{13'000};
  out.bar = {"long", Length{111'760'000}, Length{90'000'000}, {}, {}, false};
  return out;
}

// Leans by 25 mm from edge to edge, and flattens from 254 mm on, as little as one sole still suits.
Bench a_fanned_bench() {
  Bench out = a_bench();
  out.board.fan = board::Fan{Length{620'000'000}, 7, Length{3'000'000}};
  out.board.surface = board::Compound{Length{254'000'000}, Length{275'000'000}, 24};
  out.bar.sole_radius = Length{254'000'000};
  return out;
}

Work work_of(const Bench& bench) {
  Work work = press::work_on(bench.board, Length{2'540'000});
  work.bed.cradled = work.bed.head_clear = work.bed.nothing_bridges = work.bed.glue_set = true;
  return work;
}

// The baseline, of a flat board: each lo..hi is judged by itself from all crowns, as one would write it down.
std::vector<std::pair<int, int>> by_every_group(const Work& work, const Bench& bench) {
  std::vector<std::pair<int, int>> out;
  const double bar = bench.bar.length.mm(), half_crown = work.crown_width.mm() / 2;
  const double clear = bench.equipment.end_clear.mm();
  const auto fits = [&](const Crown& lo, const Crown& hi) {
    const double middle = (lo.at.mm() + hi.at.mm()) / 2;
    int inside = 0;
    bool good = middle - bar / 2 >= clear && hi.at.mm() - lo.at.mm() + 2 * half_crown <= bar;
    for (const Crown& c : work.crowns) {
      const bool in = c.slot >= lo.slot && c.slot <= hi.slot;
      inside += in ? 1 : 0;
      const double gap = std::abs(c.at.mm() - middle) - half_crown - bar / 2;
      if (!in && gap < clear) good = false;
      if (in && bench.bar.width.mm() <= 2 * c.half_width.mm()) good = false;
    }
    return good && inside >= 2 && inside <= bench.equipment.most_frets;
  };
  int before = std::numeric_limits<int>::max();
  for (std::size_t last = work.crowns.size(); last-- > 0;) {
    int best = 0;
    for (std::size_t first = last + 1; first-- > 0;) {
      if (fits(work.crowns[first], work.crowns[last])) best = work.crowns[first].slot;
    }
    if (best == 0 || best >= before) continue;
    out.emplace_back(best, work.crowns[last].slot);
    before = best;
  }
  return out;
}

bool the_same(const Plan& plan, const std::vector<std::pair<int, int>>& groups) {
  if (plan.passes.size() != groups.size() || groups.empty()) return false;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    if (plan.passes[i].lo != groups[i].first || plan.passes[i].hi != groups[i].second) return false;
  }
  return true;
}

int run(bool full) {
  const Bench bench = a_bench(), fanned = a_fanned_bench();
  const Work work = work_of(bench);
  Times plans, every, with_table, tables;
  for (int i = full ? 20'000 : 200; i > 0; --i) {
    Plan plan;
    plans.take([&] { plan = press::passes(work, bench.equipment, bench.bar); });
    std::vector<std::pair<int, int>> groups;
    every.take([&] { groups = by_every_group(work, bench); });
    if (!the_same(plan, groups)) {
      fmt::print("bench_press: the passes are not those of every group.\n");
      return 1;
    }
    with_table.take([&] { plan = press::passes(work_of(fanned), fanned.equipment, fanned.bar); });
    std::vector<board::Slot> table;
    tables.take([&] { table = board::slots(fanned.board); });
    if (plan.passes.empty() || table.size() != 24) {
      fmt::print("bench_press: the fanned board has no passes.\n");
      return 1;
    }
  }
  fmt::print("The press plan of 24 frets (wished for: 100 us)\n");
  print_times("plan", plans);
  print_times("baseline: every group, from all crowns", every);
  print_times("plan of a fanned board, with its table of slots", with_table);
  print_times("baseline: the table of slots alone", tables);
  print_ratio("plan over every group", plans, every, 2);
  print_ratio("fanned plan with its table over the table", with_table, tables, 3);
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_press", argc, argv, nutward::bench::run);
}
