#include "cutting/draft.hpp"
#include "cutting/fill.hpp"
#include "cutting/singles.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace nutward::cutting {

namespace {

constexpr int most_tries = 12; // pieces judged for one slot where the interval is only nearly right
constexpr std::size_t most_candidates = 250; // sizes that a long piece chooses from

// Pieces by raw ends and worth, of which some are taken.
class Shelf {
public:
  Shelf(const Problem& p, std::span<const std::size_t> pieces, bool dressed)
      : problem_(p), dressed_(dressed) {
    for (const std::size_t i : pieces)
      shelves_[static_cast<std::size_t>(raw_ends(p.pieces[i]))].emplace(worth(p, i, dressed), i);
  }

  // The piece of the greatest worth that makes this fret, or of the least. False if none does.
  bool take_longest(std::size_t slot, std::size_t& piece) {
    return take(
        slot, piece, [](Length found, Length best) { return found > best; },
        [&](const Pieces& all, const Interval& in) { return longest(all, slot, in); });
  }
  bool take_shortest(std::size_t slot, std::size_t& piece) {
    return take(
        slot, piece, [](Length found, Length best) { return found < best; },
        [&](const Pieces& all, const Interval& in) { return shortest(all, slot, in); });
  }

private:
  using Pieces = std::multimap<Length, std::size_t>;

  template <class Better, class Find>
  bool take(std::size_t slot, std::size_t& piece, const Better& better, const Find& find) {
    Pieces* from = nullptr;
    Pieces::const_iterator best;
    for (int raw = 0; raw <= 2; ++raw) {
      Pieces& all = shelves_[static_cast<std::size_t>(raw)];
      const auto it = find(all, interval(problem_, slot, raw, dressed_));
      if (it == all.cend() || (from != nullptr && !better(it->first, best->first))) continue;
      from = &all;
      best = it;
    }
    if (from == nullptr) return false;
    piece = best->second;
    from->erase(best);
    return true;
  }
  bool serves(std::size_t piece, std::size_t slot) const {
    return serve_piece(problem_, problem_.pieces[piece], {&slot, 1}).has_value();
  }
  Pieces::const_iterator longest(const Pieces& all, std::size_t slot, const Interval& in) const {
    auto it = all.upper_bound(in.to);
    for (int tries = 0; tries < most_tries && it != all.begin(); ++tries) {
      --it;
      if (it->first < in.from) break;
      if (serves(it->second, slot)) return it;
    }
    return all.end();
  }
  Pieces::const_iterator shortest(const Pieces& all, std::size_t slot, const Interval& in) const {
    auto it = all.lower_bound(in.from);
    for (int tries = 0; tries < most_tries && it != all.end() && it->first <= in.to; ++tries, ++it)
      if (serves(it->second, slot)) return it;
    return all.end();
  }

  const Problem& problem_;
  bool dressed_ = false;
  std::array<Pieces, 3> shelves_;
};

void remove_served(std::vector<std::size_t>& slots, const std::vector<Cutting>& cuttings, std::size_t all) {
  std::vector<char> served(all, 0);
  for (const Cutting& c : cuttings)
    for (const std::size_t s : c.slots)
      served[s] = 1;
  slots.erase(std::remove_if(slots.begin(), slots.end(), [&](std::size_t s) { return served[s] != 0; }),
              slots.end());
}

// The same slots again, each from the shortest piece: shortest slot first (then every piece is as short as
// it can be) and longest first (then none is taken that a longer slot has a better use for). `chosen` if
// neither serves all or trims less.
std::vector<Cutting> trimmed_least(const Problem& p, const std::vector<Cutting>& chosen,
                                   std::span<const std::size_t> singles, bool dressed) {
  std::vector<Cutting> best = chosen;
  std::vector<std::size_t> slots;
  slots.reserve(chosen.size());
  for (const Cutting& c : chosen)
    slots.push_back(c.slots.front());
  for (int turn = 0; turn < 2; ++turn) {
    Shelf shelf(p, singles, dressed);
    std::vector<Cutting> out;
    for (const std::size_t slot : slots) {
      std::size_t piece = 0;
      if (!shelf.take_shortest(slot, piece)) break;
      out.push_back({{From::piece, piece}, {slot}});
    }
    if (out.size() == chosen.size() && price_of(p, out) < price_of(p, best)) best = std::move(out);
    std::reverse(slots.begin(), slots.end());
  }
  return best;
}

// Frets of one size and kind, for a long piece to choose from.
std::vector<Candidate> candidates(const Problem& p, const Piece& piece,
                                  const std::vector<std::size_t>& sorted, std::size_t from) {
  std::vector<Candidate> out;
  const std::size_t step = (sorted.size() - from) / most_candidates + 1;
  const Length most = room(p, piece);
  for (std::size_t k = from; k < sorted.size(); k += step) {
    const std::size_t slot = sorted[k];
    const std::int64_t size = size_of(p, slot).nm;
    const Length last = shortest_last(p, piece, slot) + p.settings.nip_loss;
    if (last > most || !crowns_alike(piece.facts.crown_height, p.slots[slot].crown_height, p.settings))
      continue;
    out.push_back({size, std::min(size, last.nm), 1, static_cast<int>(k)});
  }
  return out;
}

} // namespace

Sorted sort_pieces(const Problem& p, std::span<const std::size_t> slots,
                   std::span<const std::size_t> pieces) {
  Sorted out;
  if (slots.empty()) return out;
  Length size = size_of(p, slots.front()), least = p.slots[slots.front()].need.least;
  for (const std::size_t s : slots) {
    size = std::min(size, size_of(p, s));
    least = std::min(least, p.slots[s].need.least);
  }
  const Length two = size + std::min(least, p.least_useful);
  for (const std::size_t i : pieces) {
    const Length usable = p.pieces[i].facts.length - p.pieces[i].flat_ends * p.flat_end;
    if (usable < least) continue;
    (usable < two || p.pieces[i].facts.tang ? out.singles : out.ends).push_back(i);
  }
  return out;
}

std::vector<Cutting> serve_singles(const Problem& p, std::vector<std::size_t>& slots,
                                   std::span<const std::size_t> singles, Meter& meter) {
  const bool dressed = any_rounded(p, slots);
  Shelf shelf(p, singles, dressed);
  std::vector<Cutting> chosen;
  for (const std::size_t slot : by_size(p, slots)) {
    std::size_t piece = 0;
    if (meter.spend(300) && shelf.take_longest(slot, piece)) chosen.push_back({{From::piece, piece}, {slot}});
  }
  std::vector<Cutting> out = trimmed_least(p, chosen, singles, dressed);
  remove_served(slots, out, p.slots.size());
  return out;
}

std::vector<Cutting> serve_chosen(const Problem& p, std::span<const std::size_t> slots,
                                  std::span<const std::size_t> singles) {
  const bool dressed = any_rounded(p, slots);
  std::vector<std::size_t> order = by_size(p, slots);
  std::reverse(order.begin(), order.end());
  Shelf shelf(p, singles, dressed);
  std::vector<Cutting> out;
  for (const std::size_t slot : order) {
    std::size_t piece = 0;
    if (shelf.take_shortest(slot, piece)) out.push_back({{From::piece, piece}, {slot}});
  }
  return out;
}

namespace {

// The fullest filling of a long piece; of the shortest slots alone if that leaves no more than the manner
// allows.
Filling fill_end(const Problem& p, const Piece& piece, const std::vector<std::size_t>& left,
                 const EndsManner& manner, Meter& meter) {
  const std::int64_t most = room(p, piece).nm;
  for (const double share : {manner.shortest, 1.0}) {
    const auto from = static_cast<std::size_t>(static_cast<double>(left.size()) * (1 - share));
    const std::vector<Candidate> some = candidates(p, piece, left, from);
    if (some.empty()) continue;
    Filling found = fill(some, most, -1, 0, 300, meter);
    if (share == 1 || found.sizes + manner.may_leave.nm >= most) return found;
  }
  return {};
}

} // namespace

std::vector<Cutting> serve_ends(const Problem& p, std::vector<std::size_t>& slots,
                                std::span<const std::size_t> ends, const EndsManner& manner, Meter& meter) {
  std::vector<std::size_t> order(ends.begin(), ends.end());
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    const Length x = room(p, p.pieces[a]), y = room(p, p.pieces[b]);
    return manner.longest_first ? x > y : x < y;
  });
  std::vector<std::size_t> left = by_size(p, slots);
  std::vector<Cutting> out;
  for (const std::size_t i : order) {
    if (left.empty() || meter.over()) break;
    const Filling found = fill_end(p, p.pieces[i], left, manner, meter);
    Cutting cutting{{From::piece, i}, {}};
    for (const int k : found.lots)
      cutting.slots.push_back(left[static_cast<std::size_t>(k)]);
    if (cutting.slots.empty() || !order_best(p, cutting)) continue;
    out.push_back(std::move(cutting));
    remove_served(left, {out.back()}, p.slots.size());
  }
  slots = std::move(left);
  std::sort(slots.begin(), slots.end());
  return out;
}

} // namespace nutward::cutting
