#include "cutting/exact.hpp"

#include <algorithm>
#include <bit>
#include <map>
#include <tuple>

namespace nutward::cutting {

namespace {

using Mask = std::uint32_t;

struct Choice {
  Mask set = 0;
  Price price;
};

struct Cell {
  Price price;
  Mask taken = 0; // the set that the layer's source served; of layer 0 all bits where it cannot be reached
};
constexpr Mask unreached = ~Mask{0};
using Layer = std::vector<Cell>;

std::vector<std::size_t> members(Mask set, std::span<const std::size_t> slots) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < slots.size(); ++i)
    if ((set >> i & 1U) != 0) out.push_back(slots[i]);
  return out;
}

// Everything that a source can serve: sets grow by one slot at a time, as long as their sizes go in.
class Choices {
public:
  Choices(const Problem& problem, std::span<const std::size_t> slots, Source source)
      : problem_(problem), slots_(slots), source_(source) {
    grow(0, 0, Length{});
  }
  std::vector<Choice> found;

private:
  // The least that the set takes: of a piece the last may be shorter.
  bool may_fit(Mask set, Length sizes) const {
    if (source_.from == From::stock) return sizes <= room(problem_, problem_.stock[source_.index]);
    const Piece& piece = problem_.pieces[source_.index];
    if (std::popcount(set) <= 1) return true;
    if (piece.facts.tang) return false;
    Length saved{};
    for (std::size_t i = 0; i < slots_.size(); ++i)
      if ((set >> i & 1U) != 0)
        saved =
            std::max(saved, problem_.slots[slots_[i]].need.cut - shortest_last(problem_, piece, slots_[i]));
    return sizes - saved <= room(problem_, piece);
  }

  void grow(std::size_t from, Mask set, Length sizes) {
    for (std::size_t i = from; i < slots_.size(); ++i) {
      const Mask next = set | Mask{1} << i;
      const Length more = sizes + size_of(problem_, slots_[i]);
      if (std::popcount(next) > 1 && !may_fit(next, more)) continue;
      Cutting cutting{source_, members(next, slots_)};
      if (const auto served = order_best(problem_, cutting)) found.push_back({next, served->price});
      grow(i + 1, next, more);
    }
  }

  const Problem& problem_;
  std::span<const std::size_t> slots_;
  Source source_;
};

// One more source on top of a layer. False if it changed nothing.
bool extend(const Layer& before, Layer& after, const std::vector<Choice>& choices) {
  bool changed = false;
  for (Mask set = 0; set < before.size(); ++set) {
    if (before[set].taken == unreached) continue;
    for (const Choice& c : choices) {
      if ((set & c.set) != 0) continue;
      Cell& cell = after[set | c.set];
      const Price price = before[set].price + c.price;
      if (cell.taken != unreached && cell.price <= price) continue;
      cell = {price, c.set};
      changed = true;
    }
  }
  return changed;
}

// Served slots by rank, the earliest in the highest bits: more is better.
std::uint64_t service(Mask set, std::span<const int> ranks) {
  std::uint64_t out = 0;
  for (std::size_t i = 0; i < ranks.size(); ++i)
    if ((set >> i & 1U) != 0)
      out += std::uint64_t{1} << (5U * (most_exact_slots - 1U - static_cast<unsigned>(ranks[i])));
  return out;
}

std::vector<int> dense_ranks(const Problem& problem, std::span<const std::size_t> slots) {
  std::vector<int> due;
  for (const std::size_t s : slots)
    due.push_back(problem.slots[s].due);
  std::vector<int> sorted = due;
  std::sort(sorted.begin(), sorted.end());
  sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
  for (int& d : due)
    d = static_cast<int>(std::lower_bound(sorted.begin(), sorted.end(), d) - sorted.begin());
  return due;
}

Mask best_state(const Layer& layer, std::span<const int> ranks) {
  Mask best = 0;
  for (Mask set = 1; set < layer.size(); ++set) {
    if (layer[set].taken == unreached) continue;
    const std::uint64_t a = service(set, ranks), b = service(best, ranks);
    if (a > b || (a == b && layer[set].price < layer[best].price)) best = set;
  }
  return best;
}

struct Step {
  Source source;
  Layer layer;
};

std::vector<Cutting> trace(const Problem& problem, std::span<const std::size_t> slots,
                           const std::vector<Step>& steps, Mask state) {
  std::vector<Cutting> out;
  for (auto step = steps.rbegin(); step != steps.rend() && state != 0; ++step) {
    const Mask set = step->layer[state].taken;
    if (set == 0) continue;
    Cutting cutting{step->source, members(set, slots)};
    order_best(problem, cutting);
    out.push_back(std::move(cutting));
    state &= ~set;
  }
  std::reverse(out.begin(), out.end());
  return out;
}

} // namespace

std::optional<std::vector<Cutting>> plan_exactly(const Problem& problem, std::span<const std::size_t> slots,
                                                 std::span<const Group> groups, std::int64_t most_steps,
                                                 Meter& meter) {
  if (slots.size() > most_exact_slots) return std::nullopt;
  const std::size_t states = std::size_t{1} << slots.size();
  std::vector<Step> steps;
  Layer current(states, Cell{{}, unreached});
  current[0].taken = 0;
  std::int64_t done = 0;
  for (const Group& group : groups) {
    const Choices choices(problem, slots, group.sources.front());
    done += static_cast<std::int64_t>(choices.found.size()) * 300;
    for (const Source& source : group.sources) {
      const auto work = static_cast<std::int64_t>(states * (choices.found.size() + 8));
      done += work;
      if (!meter.spend(work) || done / Meter::per_step > most_steps) return std::nullopt;
      Layer next = current;
      for (Cell& cell : next)
        if (cell.taken != unreached) cell.taken = 0;
      if (!extend(current, next, choices.found)) break;
      steps.push_back({source, next});
      current = std::move(next);
    }
  }
  return trace(problem, slots, steps, best_state(current, dense_ranks(problem, slots)));
}

std::vector<Group> alike(const Problem& problem, std::span<const std::size_t> pieces,
                         std::span<const int> stock_left) {
  std::vector<Group> out;
  std::map<std::tuple<Length, int, int, std::optional<Length>, std::optional<Length>>, std::size_t> seen;
  for (const std::size_t i : pieces) {
    const Piece& p = problem.pieces[i];
    const auto [at, fresh] = seen.try_emplace(
        {p.facts.length, p.facts.raw_ends, p.flat_ends, p.facts.tang, p.facts.crown_height}, out.size());
    if (fresh) out.emplace_back();
    out[at->second].sources.push_back({From::piece, i});
  }
  for (std::size_t i = 0; i < stock_left.size(); ++i) {
    // No plan opens more of one kind than there are slots.
    const std::size_t most = std::min(static_cast<std::size_t>(stock_left[i]), problem.slots.size());
    if (most == 0) continue;
    if (stock_left[i] > 0) out.push_back({std::vector<Source>(most, {From::stock, i})});
  }
  return out;
}

} // namespace nutward::cutting
