// The nutward shift of a 24-fret job beside a tin of 2,000 pieces, over the same assignment with no piece
// left out beforehand.
//
//   bench_shift [full]      full: 200 shifts; otherwise 5
#include "bench/figures.hpp"
#include "pieces/assign.hpp"
#include "pieces/shift.hpp"

#include <random>

namespace nutward::bench {

namespace {

using pieces::LaidFret;
using pieces::PieceFacts;
using pieces::ShiftSlot;
using units::Length;

struct Bench {
  std::vector<ShiftSlot> slots;
  std::vector<LaidFret> frets;
  std::vector<PieceFacts> tin;
};

// Frets cut up to 2 mm short, in a tapering board of 24 slots; pieces of 40 to 70 mm.
Bench a_bench(std::mt19937& random) {
  const auto tenths = [&](int a, int b) {
    return Length{std::uniform_int_distribution(a, b)(random) * 100'000};
  };
  Bench out;
  for (int n = 1; n <= 24; ++n) {
    const Length arc{44'000'000 + n * 600'000};
    ShiftSlot slot;
    slot.slot = n;
    slot.wanted.need = board::need(arc, board::EndStyle::rounded, {});
    out.slots.push_back(slot);
    LaidFret fret;
    fret.slot = n;
    fret.facts.length = arc - tenths(0, 20);
    out.frets.push_back(fret);
  }
  for (int i = 0; i < 2000; ++i) {
    PieceFacts piece;
    piece.id = i;
    piece.length = tenths(400, 700);
    piece.raw_ends = i % 3;
    out.tin.push_back(piece);
  }
  return out;
}

// The baseline: every fret and every piece is a column.
pieces::Cost by_the_whole_tin(const Bench& bench, const board::FitSettings& settings) {
  const std::size_t frets = bench.frets.size(), tin = bench.tin.size(), slots = bench.slots.size();
  pieces::CostTable table(slots, frets + tin + slots);
  for (std::size_t row = 0; row < slots; ++row) {
    const auto put = [&](std::size_t column, const PieceFacts& facts, int moved, bool own) {
      const auto v = pieces::judge(facts, bench.slots[row].wanted, settings);
      const bool sure = v.outcome == pieces::Outcome::fits && v.trim <= settings.trim_limit;
      if (sure || (own && v.outcome == pieces::Outcome::borderline))
        table.at(row, column) = {{0, v.ends_to_dress, moved, 0, v.trim.nm}};
    };
    for (std::size_t i = 0; i < frets; ++i)
      put(i, bench.frets[i].facts, i == row ? 0 : 1, i == row);
    for (std::size_t i = 0; i < tin; ++i)
      put(frets + i, bench.tin[i], 1, false);
    table.at(row,
             frets + tin + row) = {{1, 0, 0, (bench.slots[row].wanted.need.cut + settings.nip_loss).nm, 0}};
  }
  return pieces::assign(table).total;
}

int run(bool full) {
  std::mt19937 random(24);
  const board::FitSettings settings;
  Times shifts, whole;
  for (int i = full ? 200 : 5; i > 0; --i) {
    const Bench bench = a_bench(random);
    pieces::Shift found;
    shifts.take([&] { found = pieces::shift(bench.slots, bench.frets, bench.tin, settings); });
    pieces::Cost cost;
    whole.take([&] { cost = by_the_whole_tin(bench, settings); });
    const pieces::Cost mine{{found.cost.made, found.cost.ends_to_dress, found.cost.moved, found.cost.wire.nm,
                             found.cost.trim.nm}};
    if (mine != cost || !found.proved) {
      fmt::print("bench_shift: the shift is not what the whole tin gives.\n");
      return 1;
    }
  }
  fmt::print("The shift of 24 frets with 2,000 pieces (wished for: 5,000 us)\n");
  print_times("shift", shifts);
  print_times("baseline: assignment over the whole tin", whole);
  print_ratio("shift over the whole tin's assignment", shifts, whole, 1.5);
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_shift", argc, argv, nutward::bench::run);
}
