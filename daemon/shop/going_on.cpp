#include "shop/going_on.hpp"

#include "cutting/serve.hpp"

#include <algorithm>
#include <map>
#include <numeric>

namespace nutward::shop {

namespace {

using cutting::Cutting;
using cutting::From;
using cutting::StockKind;
using units::Length;

// Finds pieces, slots and new wire of a problem by the names that they have in the shop.
class Finder {
public:
  explicit Finder(const cutting::Problem& p) : p_(p) {
    for (std::size_t i = 0; i < p.slots.size(); ++i)
      slots_.emplace(std::pair{p.slots[i].job, p.slots[i].slot}, i);
    for (std::size_t i = 0; i < p.pieces.size(); ++i)
      if (!p.pieces[i].held_elsewhere) pieces_.emplace(p.pieces[i].facts.id, i);
    for (const cutting::Stock& s : p.stock)
      left_.push_back(s.count);
  }

  std::vector<std::size_t> slots(const KeptUse& use) const {
    std::vector<std::size_t> out;
    for (const KeptFret& f : use.frets)
      if (const auto at = slots_.find({f.job, f.slot}); at != slots_.end()) out.push_back(at->second);
    return out;
  }
  std::optional<cutting::Source> source(const KeptUse& use) {
    if (use.from == From::stock) return stock(use);
    const auto at = pieces_.find(use.id);
    if (at == pieces_.end()) return std::nullopt;
    return cutting::Source{From::piece, at->second};
  }

private:
  // The same lot and length before the same length; of a coil the same coil before any.
  std::optional<cutting::Source> stock(const KeptUse& use) {
    std::optional<std::size_t> out;
    int best = 0;
    for (std::size_t i = 0; i < left_.size(); ++i) {
      const cutting::Stock& s = p_.stock[i];
      if (left_[i] == 0 || s.kind != use.kind) continue;
      const bool as_long = s.length == use.whole;
      if (!as_long && use.kind != StockKind::coil) continue;
      const int match = 1 + (s.id == use.id ? 1 : 0) + (as_long ? 2 : 0);
      if (match > best) best = match, out = i;
    }
    if (!out) return std::nullopt;
    --left_[*out];
    return cutting::Source{From::stock, *out};
  }

  const cutting::Problem& p_;
  std::map<std::pair<std::int64_t, int>, std::size_t> slots_;
  std::map<std::int64_t, std::size_t> pieces_;
  std::vector<int> left_;
};

std::vector<Cutting> still_there(const KeptCuts& cuts, const cutting::Problem& p) {
  Finder finder(p);
  std::vector<std::vector<std::size_t>> slots;
  std::vector<std::optional<cutting::Source>> sources(cuts.uses.size());
  for (const KeptUse& use : cuts.uses)
    slots.push_back(finder.slots(use));
  for (const bool whole : {true, false}) // what was begun gets what the others leave
    for (std::size_t i = 0; i < cuts.uses.size(); ++i)
      if (!slots[i].empty() && whole == (slots[i].size() == cuts.uses[i].frets.size()))
        sources[i] = finder.source(cuts.uses[i]);
  std::vector<Cutting> out;
  for (std::size_t i = 0; i < slots.size(); ++i)
    if (sources[i]) out.push_back({*sources[i], std::move(slots[i])});
  return out;
}

class Spare {
public:
  Spare(const cutting::Problem& p, std::vector<Cutting> previous) : p_(p), all_(std::move(previous)) {
    std::vector<char> used(p.pieces.size(), 0);
    from_.assign(p.slots.size(), waits);
    for (std::size_t i = 0; i < all_.size(); ++i)
      note(all_[i], static_cast<std::ptrdiff_t>(i), used);
    for (const Cutting& c : p.held)
      note(c, served, used);
    for (std::size_t i = 0; i < p.pieces.size(); ++i)
      if (used[i] == 0 && !p.pieces[i].held_elsewhere) pieces_.push_back(i);
    for (std::size_t s = 0; s < p.slots.size(); ++s)
      if (from_[s] != served && p.slots[s].need.cut > Length{}) slots_.push_back(s);
    // Shortest first; of pieces the longest.
    std::sort(slots_.begin(), slots_.end(), [&](std::size_t a, std::size_t b) {
      return std::pair{least(a), a} < std::pair{least(b), b};
    });
    std::stable_sort(pieces_.begin(), pieces_.end(),
                     [&](std::size_t a, std::size_t b) { return length(a) > length(b); });
  }

  std::vector<Cutting> used() {
    for (const std::size_t piece : pieces_)
      if (!slots_.empty() && length(piece) >= least(slots_.front())) use(piece);
    std::erase_if(all_, [](const Cutting& c) { return c.slots.empty(); });
    return std::move(all_);
  }

private:
  static constexpr std::ptrdiff_t waits = -1, served = -2; // else the cutting of new wire that serves it
  static constexpr int most_tries = 64;                    // for one fret of one piece

  Length least(std::size_t slot) const { return p_.slots[slot].need.least; }
  Length length(std::size_t piece) const { return p_.pieces[piece].facts.length; }

  void note(const Cutting& c, std::ptrdiff_t at, std::vector<char>& used) {
    const bool piece = c.source.from == From::piece;
    if (piece) used[c.source.index] = 1;
    for (const std::size_t s : c.slots)
      from_[s] = piece ? served : at;
  }

  // As many frets as go in: what nothing serves first, and of those the longest, so that the least is
  // trimmed.
  void use(std::size_t piece) {
    Cutting made{{From::piece, piece}, {}};
    while (add_one(made, true) || add_one(made, false)) {
    }
    if (made.slots.empty()) return;
    for (const std::size_t s : made.slots)
      if (from_[s] >= 0) std::erase(all_[static_cast<std::size_t>(from_[s])].slots, s);
    all_.push_back(std::move(made));
  }

  bool add_one(Cutting& made, bool waiting) {
    Length left = length(made.source.index);
    for (const std::size_t s : made.slots)
      left -= cutting::size_of(p_, s);
    auto at =
        std::partition_point(slots_.begin(), slots_.end(), [&](std::size_t s) { return least(s) <= left; });
    for (int tries = 0; at != slots_.begin() && tries < most_tries;) {
      --at;
      if (waiting != (from_[*at] == waits)) continue;
      ++tries;
      Cutting more = made;
      more.slots.push_back(*at);
      if (!cutting::order_best(p_, more)) continue;
      made = std::move(more);
      slots_.erase(at);
      return true;
    }
    return false;
  }

  const cutting::Problem& p_;
  std::vector<Cutting> all_;
  std::vector<std::ptrdiff_t> from_;
  std::vector<std::size_t> pieces_, slots_;
};

} // namespace

std::vector<Cutting> previous_of(const KeptCuts& cuts, const cutting::Problem& p) {
  return Spare(p, still_there(cuts, p)).used();
}

} // namespace nutward::shop
