#include "pieces/assign.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

#include <algorithm>
#include <numeric>
#include <random>
#include <stdexcept>

using namespace nutward::pieces;
using nutward::test::rounds;

namespace {

CostTable table_of(const std::vector<std::vector<std::int64_t>>& costs, std::size_t level = 0) {
  CostTable out(costs.size(), costs.front().size());
  for (std::size_t r = 0; r < out.rows; ++r) {
    for (std::size_t c = 0; c < out.columns; ++c) {
      out.at(r, c) = Cost{};
      out.at(r, c).levels[level] = costs[r][c];
    }
  }
  return out;
}

// Tries every way; for tables with at most 7 columns.
Cost cheapest_of_all(const CostTable& table) {
  std::vector<std::size_t> columns(table.columns);
  std::iota(columns.begin(), columns.end(), std::size_t{0});
  Cost best = CostTable::never;
  do {
    Cost sum;
    for (std::size_t r = 0; r < table.rows; ++r)
      sum += table.at(r, columns[r]);
    best = std::min(best, sum);
  } while (std::next_permutation(columns.begin(), columns.end()));
  return best;
}

} // namespace

// Two classic textbook examples (from memory; optima worked out).
TEST_CASE("classic assignment examples come out at their known cost, at whatever level the cost stands") {
  const std::vector<std::vector<std::int64_t>> four{
      {82, 83, 69, 92}, {77, 37, 49, 92}, {11, 69, 5, 86}, {8, 9, 98, 23}};
  const std::vector<std::vector<std::int64_t>> other{
      {90, 75, 75, 80}, {35, 85, 55, 65}, {125, 95, 90, 105}, {45, 110, 95, 115}};
  for (const std::size_t level : {std::size_t{0}, std::size_t{2}, std::size_t{4}}) {
    CHECK(assign(table_of(four, level)).total.levels[level] == 140);
    CHECK(assign(table_of(other, level)).total.levels[level] == 275);
  }
}

TEST_CASE("a lower level never buys a higher one") {
  CostTable table(2, 2);
  table.at(0, 0) = {{1, 0, 0, 0, 0}};
  table.at(1, 1) = {{1, 0, 0, 0, 0}};
  table.at(0, 1) = {{0, 900'000'000'000, 0, 0, 0}};
  table.at(1, 0) = {{1, 900'000'000'000, 0, 0, 0}};
  CHECK(assign(table).column_of == std::vector<std::size_t>{1, 0});
  table.at(1, 0).levels[0] = 2; // now both ways cost 2 on the first level, and the second decides
  CHECK(assign(table).column_of == std::vector<std::size_t>{0, 1});
}

TEST_CASE("3,000 random tables cost what trying every way costs, level by level, and carry their proof") {
  std::mt19937 random(20261125);
  const auto from_to = [&](std::int64_t a, std::int64_t b) {
    return std::uniform_int_distribution(a, b)(random);
  };
  int with_never = 0;
  for (int round = 0; round < rounds(3000); ++round) {
    const auto rows = static_cast<std::size_t>(from_to(1, 5));
    CostTable table(rows, rows + static_cast<std::size_t>(from_to(0, 2)));
    for (Cost& cost : table.costs) {
      if (from_to(0, 9) == 0) continue; // never
      cost = {{from_to(0, 1), from_to(-1, 2), from_to(0, 1), from_to(0, 50), from_to(-9, 9)}};
    }
    const Cost cheapest = cheapest_of_all(table);
    if (cheapest.levels[0] >= CostTable::never.levels[0]) {
      CHECK_THROWS_AS(assign(table), std::invalid_argument);
      ++with_never;
      continue;
    }
    const Assignment found = assign(table);
    REQUIRE(found.total == cheapest);
    REQUIRE(proves(found, table));
  }
  CHECK(with_never > 0);
}

TEST_CASE("a proof does not pass for another table, nor for a worse assignment") {
  CostTable table = table_of({{1, 2}, {2, 1}});
  Assignment found = assign(table);
  CHECK(proves(found, table));
  std::swap(found.column_of[0], found.column_of[1]);
  CHECK_FALSE(proves(found, table));
  found = assign(table);
  table.at(0, 1).levels[0] = 0;
  table.at(1, 0).levels[0] = 0;
  CHECK_FALSE(proves(found, table));
}

TEST_CASE("more rows than columns, or a row that may have none, is refused") {
  CHECK_THROWS_AS(assign(CostTable(2, 1)), std::invalid_argument);
  CHECK_THROWS_AS(assign(CostTable(1, 1)), std::invalid_argument);
}
