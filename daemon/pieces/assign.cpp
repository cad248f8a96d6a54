#include "pieces/assign.hpp"

#include <optional>
#include <stdexcept>

namespace nutward::pieces {

namespace {

constexpr std::size_t none = std::numeric_limits<std::size_t>::max();

class Search {
public:
  explicit Search(const CostTable& table)
      : table_(table), u_(table.rows), v_(table.columns), row_of_(table.columns, none) {}

  Assignment run() {
    for (std::size_t row = 0; row < table_.rows; ++row)
      add(row);
    Assignment out{std::vector<std::size_t>(table_.rows, none), {}, u_, v_};
    for (std::size_t column = 0; column < table_.columns; ++column) {
      if (row_of_[column] == none) continue;
      out.column_of[row_of_[column]] = column;
      out.total += table_.at(row_of_[column], column);
    }
    return out;
  }

private:
  // Grows a tree of shortest paths from `start` until it meets a free column, then turns that path round.
  void add(std::size_t start) {
    least_.assign(table_.columns, std::nullopt);
    from_.assign(table_.columns, none);
    done_.assign(table_.columns, false);
    std::size_t row = start;
    std::size_t reached = none; // the column that the tree came to `row` by
    while (true) {
      const std::size_t next = nearest(row, reached);
      move_potentials(start, *least_[next]);
      done_[next] = true;
      reached = next;
      if (row_of_[next] == none) break;
      row = row_of_[next];
    }
    for (std::size_t column = reached; column != none;) {
      const std::size_t before = from_[column];
      row_of_[column] = before == none ? start : row_of_[before];
      column = before;
    }
  }

  // Relaxes the edges of `row` and gives the nearest column outside the tree.
  std::size_t nearest(std::size_t row, std::size_t reached) {
    std::size_t best = none;
    for (std::size_t column = 0; column < table_.columns; ++column) {
      if (done_[column]) continue;
      const Cost& cost = table_.at(row, column);
      if (cost != CostTable::never) {
        const Cost slack = cost - u_[row] - v_[column];
        if (!least_[column] || slack < *least_[column]) {
          least_[column] = slack;
          from_[column] = reached;
        }
      }
      if (least_[column] && (best == none || *least_[column] < *least_[best])) best = column;
    }
    if (best == none) throw std::invalid_argument("a row can be given no column");
    return best;
  }

  void move_potentials(std::size_t start, Cost by) {
    u_[start] += by;
    for (std::size_t column = 0; column < table_.columns; ++column) {
      if (done_[column]) {
        u_[row_of_[column]] += by;
        v_[column] -= by;
      } else if (least_[column]) {
        *least_[column] -= by;
      }
    }
  }

  const CostTable& table_;
  std::vector<Cost> u_, v_;
  std::vector<std::size_t> row_of_;
  std::vector<std::optional<Cost>> least_; // the slack of the best edge from the tree to each column
  std::vector<std::size_t> from_;          // the column before it on that path
  std::vector<bool> done_;
};

} // namespace

Assignment assign(const CostTable& table) {
  if (table.rows > table.columns) throw std::invalid_argument("more rows than columns");
  return Search(table).run();
}

bool proves(const Assignment& proof, const CostTable& table) {
  const Cost zero;
  std::vector<bool> given(table.columns, false);
  for (std::size_t row = 0; row < table.rows; ++row) {
    const std::size_t mine = proof.column_of[row];
    if (mine >= table.columns || given[mine]) return false;
    given[mine] = true;
    for (std::size_t column = 0; column < table.columns; ++column) {
      const Cost slack = table.at(row, column) - proof.row_potential[row] - proof.column_potential[column];
      if (slack < zero || (column == mine && slack != zero)) return false;
    }
  }
  for (std::size_t column = 0; column < table.columns; ++column) {
    if (proof.column_potential[column] > zero) return false;
    if (!given[column] && proof.column_potential[column] != zero) return false;
  }
  return true;
}

} // namespace nutward::pieces
