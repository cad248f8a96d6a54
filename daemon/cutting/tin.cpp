#include "cutting/draft.hpp"
#include "cutting/fill.hpp"

#include <algorithm>
#include <map>

namespace nutward::cutting {

namespace {

constexpr int most_tries = 12; // pieces judged for one slot where the interval is only nearly right
constexpr std::size_t most_candidates = 250; // sizes that a long piece chooses from

bool any_rounded(const Problem& p, std::span<const std::size_t> slots) {
  return std::any_of(slots.begin(), slots.end(),
                     [&](std::size_t s) { return p.slots[s].need.style == board::EndStyle::rounded; });
}

// What counts of a piece: its length without flat ends, less the dressing of its raw ends where there is any.
Length worth(const Problem& p, std::size_t piece, bool dressed) {
  const Piece& it = p.pieces[piece];
  const int raw = dressed ? std::max(it.facts.raw_ends, it.flat_ends) : 0;
  return it.facts.length - it.flat_ends * p.flat_end - raw * p.settings.dressing_loss;
}

// The worth that a single piece must have for a slot. Nothing that judge takes lies outside.
struct Interval {
  Length from, to; // inclusive
};
Interval interval(const Problem& p, std::size_t slot, bool dressed) {
  const Need& need = p.slots[slot].need;
  const bool rounded = need.style == board::EndStyle::rounded;
  Interval out{need.least + p.settings.borderline + Length{1},
               (rounded ? need.target : need.cut) + p.settings.trim_limit};
  if (rounded && need.most) out.to = std::max(out.to, *need.most);
  if (rounded && need.most) // a dressed piece over `most` loses one end and is limited by `least` alone
    out.from = std::min(out.from, std::max(need.least + p.settings.dressing_loss, *need.most + Length{1}));
  if (!rounded && dressed) out.from -= 2 * p.settings.dressing_loss;
  return out;
}

// Pieces by worth, of which some are taken.
class Shelf {
public:
  Shelf(const Problem& p, std::span<const std::size_t> pieces, bool dressed) : problem_(p) {
    for (const std::size_t i : pieces)
      shelf_.emplace(worth(p, i, dressed), i);
  }

  // The longest piece that makes this fret, or the shortest. False if none does.
  bool take_longest(std::size_t slot, const Interval& in, std::size_t& piece) {
    auto it = shelf_.upper_bound(in.to);
    for (int tries = 0; tries < most_tries && it != shelf_.begin(); ++tries) {
      --it;
      if (it->first < in.from) return false;
      if (take(it, slot, piece)) return true;
    }
    return false;
  }
  bool take_shortest(std::size_t slot, const Interval& in, std::size_t& piece) {
    auto it = shelf_.lower_bound(in.from);
    for (int tries = 0; tries < most_tries && it != shelf_.end() && it->first <= in.to; ++tries, ++it)
      if (take(it, slot, piece)) return true;
    return false;
  }

private:
  bool take(std::multimap<Length, std::size_t>::iterator it, std::size_t slot, std::size_t& piece) {
    if (!serve_piece(problem_, problem_.pieces[it->second], {&slot, 1})) return false;
    piece = it->second;
    shelf_.erase(it);
    return true;
  }
  const Problem& problem_;
  std::multimap<Length, std::size_t> shelf_;
};

void remove_served(std::vector<std::size_t>& slots, const std::vector<Cutting>& cuttings, std::size_t all) {
  std::vector<char> served(all, 0);
  for (const Cutting& c : cuttings)
    for (const std::size_t s : c.slots)
      served[s] = 1;
  slots.erase(std::remove_if(slots.begin(), slots.end(), [&](std::size_t s) { return served[s] != 0; }),
              slots.end());
}

std::vector<std::size_t> by_size(const Problem& p, std::span<const std::size_t> slots) {
  std::vector<std::size_t> out(slots.begin(), slots.end());
  std::stable_sort(out.begin(), out.end(),
                   [&](std::size_t a, std::size_t b) { return size_of(p, a) > size_of(p, b); });
  return out;
}

// The same slots again, shortest first and from the shortest pieces: each piece is then as short as it can
// be.
std::vector<Cutting> trimmed_least(const Problem& p, const std::vector<Cutting>& chosen,
                                   std::span<const std::size_t> singles, bool dressed) {
  Shelf shelf(p, singles, dressed);
  std::vector<Cutting> out;
  for (auto it = chosen.rbegin(); it != chosen.rend(); ++it) {
    std::size_t piece = 0;
    const std::size_t slot = it->slots.front();
    if (!shelf.take_shortest(slot, interval(p, slot, dressed), piece)) return chosen;
    out.push_back({{From::piece, piece}, {slot}});
  }
  return price_of(p, out) <= price_of(p, chosen) ? out : chosen;
}

// Frets of one size and kind, for a long piece to choose from.
std::vector<Candidate> candidates(const Problem& p, const Piece& piece,
                                  const std::vector<std::size_t>& sorted) {
  std::vector<Candidate> out;
  const std::size_t step = sorted.size() / most_candidates + 1;
  const Length most = room(p, piece);
  for (std::size_t k = 0; k < sorted.size(); k += step) {
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
    if (meter.spend(300) && shelf.take_longest(slot, interval(p, slot, dressed), piece))
      chosen.push_back({{From::piece, piece}, {slot}});
  }
  std::vector<Cutting> out = trimmed_least(p, chosen, singles, dressed);
  remove_served(slots, out, p.slots.size());
  return out;
}

std::vector<Cutting> serve_ends(const Problem& p, std::vector<std::size_t>& slots,
                                std::span<const std::size_t> ends, bool longest_first, Meter& meter) {
  std::vector<std::size_t> order(ends.begin(), ends.end());
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    const Length x = room(p, p.pieces[a]), y = room(p, p.pieces[b]);
    return longest_first ? x > y : x < y;
  });
  std::vector<std::size_t> left = by_size(p, slots);
  std::vector<Cutting> out;
  for (const std::size_t i : order) {
    if (left.empty() || meter.over()) break;
    const std::vector<Candidate> some = candidates(p, p.pieces[i], left);
    if (some.empty()) continue;
    const Filling found = fill(some, room(p, p.pieces[i]).nm, -1, 0, 300, meter);
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

namespace {

// The greatest sum of sizes that single pieces can serve. Heaviest slot first, each takes the longest piece
// of its interval: that is the best if neither bound rises along that order, and they are widened until
// neither does, which leaves out nothing.
std::int64_t most_by_singles(const Problem& p, std::span<const std::size_t> slots,
                             std::span<const std::size_t> singles) {
  const bool dressed = any_rounded(p, slots);
  const std::vector<std::size_t> order = by_size(p, slots);
  std::vector<Interval> in;
  for (const std::size_t s : order)
    in.push_back(interval(p, s, dressed));
  for (std::size_t i = 1; i < in.size(); ++i) {
    in[i].from = std::min(in[i].from, in[i - 1].from);
    in[in.size() - 1 - i].to = std::max(in[in.size() - 1 - i].to, in[in.size() - i].to);
  }
  std::vector<Length> worths;
  for (const std::size_t i : singles)
    worths.push_back(worth(p, i, dressed));
  std::sort(worths.begin(), worths.end());
  std::int64_t sum = 0;
  for (std::size_t i = 0; i < order.size(); ++i) {
    while (!worths.empty() && worths.back() > in[i].to)
      worths.pop_back();
    if (worths.empty() || worths.back() < in[i].from) continue;
    worths.pop_back();
    sum += size_of(p, order[i]).nm;
  }
  return sum;
}

// The most that the last fret of several is shorter than its cut, from a piece with so many raw ends.
std::int64_t most_saved(const Problem& p, std::span<const std::size_t> slots, int raw_ends) {
  Piece piece;
  piece.facts.raw_ends = raw_ends;
  std::int64_t out = 0;
  for (const std::size_t s : slots)
    out = std::max(out, (p.slots[s].need.cut - shortest_last(p, piece, s)).nm);
  return out;
}

} // namespace

std::int64_t most_covered(const Problem& p, std::span<const std::size_t> slots, const Sorted& pieces) {
  std::int64_t all = 0, longest = 0, shortest = INT64_MAX;
  std::vector<std::int64_t> saved(2, 0); // by the last fret, of a piece with a dressed end and of others
  for (const std::size_t s : slots) {
    const std::int64_t size = size_of(p, s).nm;
    all += size;
    longest = std::max(longest, size);
    shortest = std::min(shortest, size);
  }
  for (std::size_t raw = 0; raw < saved.size(); ++raw)
    saved[raw] = most_saved(p, slots, static_cast<int>(raw) + 1);
  std::int64_t sum = most_by_singles(p, slots, pieces.singles);
  for (const std::size_t i : pieces.ends) {
    if (sum >= all) break;
    const Piece& piece = p.pieces[i];
    const bool raw = piece.facts.raw_ends == 2 || piece.flat_ends > 0;
    const std::int64_t most = room(p, piece).nm + saved[raw ? 1 : 0];
    const std::int64_t frets = std::max<std::int64_t>(1, most / shortest);
    sum += frets == 1 ? longest : std::min(most, frets * longest);
  }
  return std::min(sum, all);
}

} // namespace nutward::cutting
