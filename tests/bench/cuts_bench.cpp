// The cut plan of a whole shop: how near to its bound, how soon, and how much nearer than best fit
// decreasing.
//
//   bench_cuts [full]      full: 100 jobs with 2,000 pieces, several times, and 1,000 jobs with 50,000
//   pieces; 30, 300 and 2,200 plain frets;
//                          otherwise 10 jobs with 50 pieces, and 30 plain frets
#include "bench/cut_shop.hpp"
#include "bench/figures.hpp"

#include <ctime>

namespace nutward::bench {

namespace {

constexpr double fret_mm = 51;

int unserved(const cutting::Cost& cost) {
  int sum = 0;
  for (const int n : cost.unserved)
    sum += n;
  return sum;
}

double percent(double gap_mm, const cutting::Cost& bound) {
  return bound.taken.mm() > 0 ? 100 * gap_mm / bound.taken.mm() : 0;
}

void print_cost(const char* what, const cutting::Cost& c) {
  fmt::print("  {:<22} {:>5} unserved {:>5} sticks {:>11.1f} mm taken {:>10.1f} mm scrap {:>6} cuts\n", what,
             unserved(c), c.sticks, c.taken.mm(), c.scrap.mm(), c.cuts);
}

void measure(const cutting::Problem& problem, std::int64_t steps) {
  Times time;
  cutting::Plan plan;
  const std::clock_t from = std::clock();
  time.take([&] { plan = cutting::plan(problem, {steps, {}}); });
  const double cpu = static_cast<double>(std::clock() - from) / CLOCKS_PER_SEC; // the machine may be shared
  const cutting::Cost hand = best_fit_decreasing(problem);
  print_cost("plan", plan.cost);
  print_cost("bound", plan.bound);
  print_cost("best fit decreasing", hand);
  const double gap = (plan.cost.taken - plan.bound.taken).mm();
  const double gap_by_hand = (hand.taken - plan.bound.taken).mm();
  fmt::print("  {:.2f} s ({:.2f} s of the processor); proved to level {}; {:.1f} mm of new wire over the "
             "bound, {:.2f} frets; by hand {:.1f} "
             "mm, {:.0f} times as far; {:.2f} % and {:.2f} % over it\n",
             time.median() / 1e6, cpu, static_cast<int>(plan.proved), gap, gap / fret_mm, gap_by_hand,
             gap > 0 ? gap_by_hand / gap : 0.0, percent(gap, plan.bound), percent(gap_by_hand, plan.bound));
  std::fflush(stdout);
}

void measure(const ShopSize& size, std::uint32_t seed, std::int64_t steps) {
  const cutting::Problem problem = random_shop(size, seed);
  fmt::print("{} jobs, {} frets, {} sticks, {} pieces (seed {})\n", size.jobs, problem.slots.size(),
             size.sticks, size.pieces, seed);
  measure(problem, steps);
}

void measure_plain(int frets, int pieces, std::uint32_t seed, std::int64_t steps) {
  fmt::print("{} plain frets, {} pieces (seed {})\n", frets, pieces, seed);
  measure(plain_shop(frets, pieces, seed), steps);
}

int run(bool full) {
  constexpr std::int64_t steps = 1'500'000;
  if (!full) {
    measure({10, 10, 50}, 1, steps);
    measure_plain(30, 0, 1, steps);
    return 0;
  }
  for (std::uint32_t seed = 1; seed <= 3; ++seed) {
    measure_plain(30, 0, seed, steps);
    measure_plain(300, 0, seed, steps);
    measure_plain(2200, 40, seed, steps);
  }
  measure({1, 40, 20}, 1, steps);
  measure({2, 40, 0}, 1, steps);
  for (std::uint32_t seed = 1; seed <= 3; ++seed)
    measure({100, 40, 2000}, seed, steps);
  measure({100, 400, 100}, 4, steps);
  measure({100, 40, 100}, 5, steps); // too little wire
  measure({1000, 400, 50'000}, 6, 5'000'000);
  measure({1000, 4000, 5'000}, 7, 5'000'000);
  fmt::print("most memory: {} MB, target at most 300\n", most_memory_mb());
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run(nutward::bench::full_size(argc, argv));
}
