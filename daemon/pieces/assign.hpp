// The cheapest assignment of rows to columns, where a cost has several levels and a lower level never buys a
// higher one.
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <vector>

namespace nutward::pieces {

// Levels, the weightiest first. Costs add level by level and are compared from the first level on: a totally
// ordered group, which is all that the assignment's proof needs. Each level is within ±10^15, so that sums
// over a few thousand rows stay exact.
struct Cost {
  std::array<std::int64_t, 5> levels{};

  friend auto operator<=>(const Cost&, const Cost&) = default;
  Cost& operator+=(const Cost& o) {
    for (std::size_t i = 0; i < levels.size(); ++i)
      levels[i] += o.levels[i];
    return *this;
  }
  Cost& operator-=(const Cost& o) {
    for (std::size_t i = 0; i < levels.size(); ++i)
      levels[i] -= o.levels[i];
    return *this;
  }
  friend Cost operator+(Cost a, const Cost& b) { return a += b; }
  friend Cost operator-(Cost a, const Cost& b) { return a -= b; }
};

// Rows × columns, row by row. What cannot be together costs `never`.
struct CostTable {
  static constexpr Cost never{{std::numeric_limits<std::int64_t>::max() / 4096, 0, 0, 0, 0}};

  CostTable(std::size_t row_count, std::size_t column_count)
      : rows(row_count), columns(column_count), costs(row_count * column_count, never) {}
  Cost& at(std::size_t row, std::size_t column) { return costs[row * columns + column]; }
  const Cost& at(std::size_t row, std::size_t column) const { return costs[row * columns + column]; }

  std::size_t rows, columns;
  std::vector<Cost> costs;
};

// `column_of` holds each row's column, no column twice. The potentials prove that nothing is cheaper: for
// every row r and column c, cost(r, c) ≥ row_potential[r] + column_potential[c], with equality where r was
// given c, and column_potential[c] ≤ 0, and 0 where c was given to no row.
struct Assignment {
  std::vector<std::size_t> column_of;
  Cost total;
  std::vector<Cost> row_potential, column_potential;
};

// Exact: shortest augmenting paths with potentials (H. W. Kuhn, Naval Research Logistics Quarterly 2 (1955)
// 83; J. Edmonds and R. M. Karp, J. ACM 19 (1972) 248), in O(rows² · columns). Needs rows ≤ columns and some
// assignment without `never`; throws std::invalid_argument otherwise.
Assignment assign(const CostTable& table);

// True if `proof` is what `assign` promises, checked against each cost of the table.
bool proves(const Assignment& proof, const CostTable& table);

} // namespace nutward::pieces
