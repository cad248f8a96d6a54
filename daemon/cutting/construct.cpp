#include "cutting/search.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

void append(std::vector<Cutting>& to, std::vector<Cutting> more) {
  std::move(more.begin(), more.end(), std::back_inserter(to));
}

std::vector<std::size_t> unused(std::span<const std::size_t> pieces, const std::vector<Cutting>& cuttings,
                                std::size_t all) {
  std::vector<char> used(all, 0);
  for (const Cutting& c : cuttings)
    if (c.source.from == From::piece) used[c.source.index] = 1;
  std::vector<std::size_t> out;
  for (const std::size_t i : pieces)
    if (used[i] == 0) out.push_back(i);
  return out;
}

// The later slots, one at a time, from whatever still has room.
class Gleaning {
public:
  Gleaning(const Problem& problem, const Supply& supply, Draft& draft, Meter& meter)
      : problem_(problem), draft_(draft), meter_(meter), stock_(supply.stock),
        pieces_(unused(supply.pieces, draft.cuttings, problem.pieces.size())) {
    for (const Cutting& c : draft.cuttings)
      if (c.source.from == From::stock) --stock_[c.source.index];
    for (const Slot& s : problem.slots)
      most_short_ = std::max(most_short_, s.need.cut - s.need.least);
    for (const Cutting& c : draft.cuttings)
      free_.push_back(free_of(c));
  }

  bool serve_one(std::size_t slot) { return from_piece(slot) || from_cutting(slot) || from_stock(slot); }
  bool from_cutting(std::size_t slot) {
    Cutting best;
    std::size_t at = draft_.cuttings.size();
    Price least;
    const Length size = size_of(problem_, slot);
    meter_.spend(static_cast<std::int64_t>(free_.size()) * 5);
    for (std::size_t i = 0; i < draft_.cuttings.size(); ++i) {
      if (free_[i] < size) continue;
      Cutting more = draft_.cuttings[i];
      more.slots.push_back(slot);
      meter_.spend(static_cast<std::int64_t>(more.slots.size()) * 400);
      const auto before = serve(problem_, draft_.cuttings[i]), after = order_best(problem_, more);
      if (!before || !after) continue;
      const Price rise = after->price - before->price;
      if (at < draft_.cuttings.size() && least <= rise) continue;
      at = i;
      least = rise;
      best = std::move(more);
    }
    if (at == draft_.cuttings.size()) return false;
    draft_.cuttings[at] = std::move(best);
    free_[at] = free_of(draft_.cuttings[at]);
    return true;
  }

private:
  // Room for one more size, if one fret of a piece is as short as it may be: at least what there is.
  Length free_of(const Cutting& c) const {
    const bool piece = c.source.from == From::piece;
    Length out = piece ? room(problem_, problem_.pieces[c.source.index]) + most_short_
                       : room(problem_, problem_.stock[c.source.index]);
    for (const std::size_t s : c.slots)
      out -= size_of(problem_, s);
    return out;
  }
  void add(Cutting cutting) {
    free_.push_back(free_of(cutting));
    draft_.cuttings.push_back(std::move(cutting));
  }
  bool from_piece(std::size_t slot) {
    std::size_t best = pieces_.size();
    Price least;
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
      const auto served = serve_piece(problem_, problem_.pieces[pieces_[i]], {&slot, 1});
      if (!served || (best < pieces_.size() && least <= served->price)) continue;
      best = i;
      least = served->price;
    }
    meter_.spend(static_cast<std::int64_t>(pieces_.size()) * 150);
    if (best == pieces_.size()) return false;
    add({{From::piece, pieces_[best]}, {slot}});
    pieces_.erase(pieces_.begin() + static_cast<std::ptrdiff_t>(best));
    return true;
  }
  bool from_stock(std::size_t slot) {
    for (std::size_t i = 0; i < stock_.size(); ++i) {
      Cutting cutting{{From::stock, i}, {slot}};
      if (stock_[i] == 0 || !serve(problem_, cutting)) continue;
      --stock_[i];
      add(std::move(cutting));
      return true;
    }
    return false;
  }

  const Problem& problem_;
  Draft& draft_;
  Meter& meter_;
  std::vector<int> stock_;
  std::vector<std::size_t> pieces_;
  std::vector<Length> free_; // of each cutting
  Length most_short_;        // how much shorter than cut a fret may be
};

EndsManner ends_manner(int round) {
  constexpr double shares[] = {1, 0.5, 0.7, 0.35, 0.6, 0.25, 0.4, 0.8};
  constexpr std::int64_t leave[] = {300'000, 1'000'000, 3'000'000};
  return {round % 5 != 4, shares[round % 8], Length{leave[round % 3]}};
}

} // namespace

Draft construct(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply, int round,
                Chance& chance, Meter& meter) {
  Draft out;
  std::vector<std::size_t> left = slots;
  const Sorted sorted = sort_pieces(p, slots, supply.pieces);
  const EndsManner manner = ends_manner(round);
  if (round % 7 == 6) append(out.cuttings, serve_ends(p, left, sorted.ends, manner, meter));
  append(out.cuttings, serve_singles(p, left, sorted.singles, meter));
  if (round % 7 != 6) append(out.cuttings, serve_ends(p, left, sorted.ends, manner, meter));
  const std::vector<std::size_t> ends = unused(sorted.ends, out.cuttings, p.pieces.size());
  append(out.cuttings, serve_singles(p, left, ends, meter)); // one fret each, and a rest to keep
  Packed packed = pack_slots(p, left, supply.stock, round == 0, chance, meter);
  append(out.cuttings, std::move(packed.cuttings));
  out.unserved = std::move(packed.unserved);
  return out;
}

Draft serve_earliest(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                     Chance& chance, Meter& meter) {
  std::vector<std::size_t> order = slots;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return std::pair(p.slots[a].due, p.slots[a].need.cut) < std::pair(p.slots[b].due, p.slots[b].need.cut);
  });
  Draft best;
  std::size_t served = 0, beyond = order.size(); // so many are served; so many
                                                 // at once were too many
  while (served + 1 < beyond && !meter.over()) {
    const std::size_t n = (served + beyond) / 2;
    Draft draft = construct(p, {order.begin(), order.begin() + static_cast<std::ptrdiff_t>(n)}, supply, 1,
                            chance, meter);
    if (!draft.unserved.empty()) {
      beyond = n;
      continue;
    }
    served = n;
    best = std::move(draft);
  }
  glean(p, {order.begin() + static_cast<std::ptrdiff_t>(served), order.end()}, supply, best, meter);
  return best;
}

namespace {

// Serves the unserved in so many parts, the earliest due first, each from what nothing uses yet.
Draft with_the_rest(const Problem& p, const Supply& supply, std::size_t parts, Chance& chance,
                    const Draft& draft) {
  std::vector<std::size_t> order = draft.unserved;
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return p.slots[a].due < p.slots[b].due; });
  Draft out{draft.cuttings, {}};
  Supply rest{{}, supply.stock};
  for (const Cutting& c : out.cuttings)
    if (c.source.from == From::stock) --rest.stock[c.source.index];
  Meter own({1000 + static_cast<std::int64_t>(order.size()), {}});
  const std::size_t step = (order.size() + parts - 1) / parts;
  for (std::size_t from = 0; from < order.size(); from += step) {
    const std::size_t to = std::min(order.size(), from + step);
    rest.pieces = unused(supply.pieces, out.cuttings, p.pieces.size());
    std::vector<std::size_t> part(order.begin() + static_cast<std::ptrdiff_t>(from),
                                  order.begin() + static_cast<std::ptrdiff_t>(to));
    std::sort(part.begin(), part.end());
    Draft more = construct(p, part, rest, 1, chance, own);
    for (const Cutting& c : more.cuttings)
      if (c.source.from == From::stock) --rest.stock[c.source.index];
    append(out.cuttings, std::move(more.cuttings));
    out.unserved.insert(out.unserved.end(), more.unserved.begin(), more.unserved.end());
  }
  std::sort(out.unserved.begin(), out.unserved.end());
  return out;
}

} // namespace

void use_the_rest(const Problem& p, const Supply& supply, const std::vector<int>& ranks, Chance& chance,
                  Draft& draft) {
  constexpr std::size_t parts = 8;
  if (draft.unserved.empty()) return;
  Draft at_once = with_the_rest(p, supply, 1, chance, draft);
  if (!at_once.unserved.empty() && ranks.size() > 1) {
    Draft in_turn = with_the_rest(p, supply, parts, chance, draft);
    if (cost_of(p, in_turn, ranks) < cost_of(p, at_once, ranks)) at_once = std::move(in_turn);
  }
  draft = std::move(at_once);
  // And the room that sticks and pieces have beside what they are cut for.
  std::vector<std::size_t> order = std::move(draft.unserved);
  draft.unserved.clear();
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return p.slots[a].due < p.slots[b].due; });
  Meter own({5000, {}});
  Gleaning gleaning(p, supply, draft, own);
  for (const std::size_t s : order)
    if (own.over() || !gleaning.from_cutting(s)) draft.unserved.push_back(s);
  std::sort(draft.unserved.begin(), draft.unserved.end());
}

void glean(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply, Draft& draft,
           Meter& meter) {
  Gleaning gleaning(p, supply, draft, meter);
  for (const std::size_t s : slots)
    if (meter.over() || !gleaning.serve_one(s)) draft.unserved.push_back(s);
  std::sort(draft.unserved.begin(), draft.unserved.end());
}

} // namespace nutward::cutting
