// Problems whose best answer is known from outside.
#include "cutting/cases.hpp"

using namespace cases;

namespace {

// A cutting-stock problem: widths and how many of each, from rolls of one width.
Problem cutting_stock(int roll, const std::vector<std::pair<int, int>>& widths) {
  std::vector<int> sizes;
  for (const auto& [width, demand] : widths)
    sizes.insert(sizes.end(), static_cast<std::size_t>(demand), width);
  return bin_packing(sizes, roll, static_cast<int>(sizes.size()));
}

void check_proved(const Problem& problem, int sticks) {
  const cutting::Plan plan = cutting::plan(problem, {});
  check_plan(problem, plan);
  CHECK(plan.cost.sticks == sticks);
  CHECK(plan.bound.sticks == sticks);
  CHECK(plan.proved >= cutting::Level::sticks);
  CHECK(plan.unserved.empty());
}

// Falkenauer's triplets (J. Heuristics 2 (1996) 5), made after his description: capacity 1000, three items a
// bin that fill it exactly, the first from 380 to 490, the second from 250 to half of what is left. So the
// best is the number of triplets, and no packing that is not perfect reaches it.
std::vector<int> triplets(int bins, std::uint32_t seed) {
  std::mt19937 random(seed);
  std::vector<int> out;
  for (int i = 0; i < bins; ++i) {
    const int first = 380 + static_cast<int>(random() % 111);
    const int second = 250 + static_cast<int>(random() % static_cast<unsigned>((1000 - first) / 2 - 250 + 1));
    out.insert(out.end(), {first, second, 1000 - first - second});
  }
  return out;
}

// His uniform class: items from 20 to 100, capacity 150.
std::vector<int> uniform(std::size_t items, std::uint32_t seed) {
  std::mt19937 random(seed);
  std::vector<int> out;
  for (std::size_t i = 0; i < items; ++i)
    out.push_back(20 + static_cast<int>(random() % 81));
  return out;
}

} // namespace

TEST_CASE("Gilmore and Gomory's rolls: 452.25 in fractions, 453 in whole rolls") {
  // Width 100; Oper. Res. 9 (1961) 849 and 11 (1963) 863, data as in the GAMS Model Library (cutstock).
  check_proved(cutting_stock(100, {{45, 97}, {36, 610}, {31, 395}, {14, 211}}), 453);
}

TEST_CASE("a textbook's rolls: 46.25 in fractions, 47 in whole rolls") {
  // Width 110; an AMPL textbook example (book from memory).
  check_proved(cutting_stock(110, {{20, 48}, {45, 35}, {50, 24}, {55, 10}, {75, 8}}), 47);
}

TEST_CASE("u120_00 takes 48 bins of 150") {
  // Falkenauer 1996, OR-Library binpack1; best 48, which its file gives and BPPLIB (Delorme, Iori, Martello
  // 2018) proves.
  check_proved(bin_packing({42, 69, 67, 57, 93, 90, 38, 36, 45, 42, 33, 79, 27, 57, 44, 84, 86, 92, 46, 38,
                            85, 33, 82, 73, 49, 70, 59, 23, 57, 72, 74, 69, 33, 42, 28, 46, 30, 64, 29, 74,
                            41, 49, 55, 98, 80, 32, 25, 38, 82, 30, 35, 39, 57, 84, 62, 50, 55, 27, 30, 36,
                            20, 78, 47, 26, 45, 41, 58, 98, 91, 96, 73, 84, 37, 93, 91, 43, 73, 85, 81, 79,
                            71, 80, 76, 83, 41, 78, 70, 23, 42, 87, 43, 84, 60, 55, 49, 78, 73, 62, 36, 44,
                            94, 69, 32, 96, 70, 84, 58, 78, 25, 80, 58, 66, 83, 24, 98, 60, 42, 43, 43, 39},
                           150, 120),
               48);
}

TEST_CASE("triplets are put back together") {
  for (const std::uint32_t seed : {1, 2, 3, 4, 5}) {
    CAPTURE(seed);
    check_proved(bin_packing(triplets(20, seed), 1000, 60), 20);
  }
  check_proved(bin_packing(triplets(40, 6), 1000, 120), 40);
}

TEST_CASE("uniform items: the plan reaches its own bound") {
  for (const std::uint32_t seed : {1, 2, 3, 4}) {
    const Problem problem = bin_packing(uniform(250, seed), 150, 250);
    const cutting::Plan plan = cutting::plan(problem, {});
    CAPTURE(seed);
    check_plan(problem, plan);
    CHECK(plan.cost.sticks == plan.bound.sticks);
  }
}
