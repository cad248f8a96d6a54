#include "agenda/edges.hpp"

#include <algorithm>
#include <numeric>

namespace nutward::agenda {

namespace {

// Raises heads only. For each latest end d, the ops that end by d are a set; C is the earliest end of those
// of it from one head on, and an op outside of it that cannot go before or among them comes after them all.
bool raise_heads(std::vector<OneMachineOp>& ops) {
  const std::size_t n = ops.size();
  std::vector<std::size_t> by_head(n);
  std::iota(by_head.begin(), by_head.end(), std::size_t{0});
  std::sort(by_head.begin(), by_head.end(),
            [&](std::size_t a, std::size_t b) { return ops[a].head < ops[b].head; });
  std::vector<Second> head(n), ends(n);
  for (std::size_t i = 0; i < n; ++i)
    head[i] = ops[i].head;
  for (std::size_t k = 0; k < n; ++k) {
    const Second d = ops[k].tail;
    Second work = 0, end = -never;
    for (std::size_t i = n; i-- > 0;) {
      const OneMachineOp& o = ops[by_head[i]];
      if (o.tail <= d) {
        work += o.work;
        end = std::max(end, o.head + work);
        if (end > d) return false;
      }
      ends[i] = end;
    }
    Second within = -never;
    for (std::size_t i = 0; i < n; ++i) {
      const OneMachineOp& o = ops[by_head[i]];
      if (o.tail <= d) {
        within = std::max(within, o.head + work);
        work -= o.work;
      } else {
        Second& h = head[by_head[i]];
        if (o.head + work + o.work > d) h = std::max(h, ends[i]);
        if (within + o.work > d) h = std::max(h, end);
      }
    }
  }
  for (std::size_t i = 0; i < n; ++i) {
    ops[i].head = head[i];
    if (head[i] + ops[i].work > ops[i].tail) return false;
  }
  return true;
}

void mirror(std::vector<OneMachineOp>& ops) {
  for (OneMachineOp& o : ops) {
    const Second head = o.head;
    o.head = -o.tail;
    o.tail = -head;
  }
}

} // namespace

bool find_edges(std::vector<OneMachineOp>& ops) {
  if (!raise_heads(ops)) return false;
  mirror(ops);
  const bool good = raise_heads(ops);
  mirror(ops);
  return good;
}

} // namespace nutward::agenda
