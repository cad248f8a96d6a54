#include "cutting/check.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

constexpr Length nothing{};

bool sound(const Need& n) {
  return nothing < n.least && n.least <= n.target && n.target <= n.cut && (!n.most || n.target <= *n.most);
}

bool sound_ends(int flat_ends) {
  return flat_ends >= 0 && flat_ends <= 2;
}

void check_pieces(const Problem& p, Checked& out, std::vector<char>& usable) {
  for (std::size_t i = 0; i < p.pieces.size(); ++i) {
    const Piece& piece = p.pieces[i];
    const bool good = piece.facts.length > nothing && sound_ends(piece.flat_ends) &&
                      piece.facts.raw_ends >= 0 && piece.facts.raw_ends <= 2;
    if (!good) out.faults.push_back({Why::bad_source, i, From::piece});
    if (good && piece.held_elsewhere) out.faults.push_back({Why::held_elsewhere, i, From::piece});
    usable[i] = good && !piece.held_elsewhere ? 1 : 0;
  }
}

void check_stock(const Problem& p, Checked& out) {
  for (std::size_t i = 0; i < p.stock.size(); ++i) {
    const Stock& s = p.stock[i];
    const bool good = s.length > nothing && s.count >= 0 && sound_ends(s.flat_ends);
    const bool room_left =
        good && s.length - s.flat_ends * p.flat_end > nothing && p.settings.nip_loss < s.length;
    if (!good) out.faults.push_back({Why::bad_source, i, From::stock});
    if (good && !room_left) out.faults.push_back({Why::kerf_too_long, i, From::stock});
    out.stock_left.push_back(room_left ? s.count : 0);
  }
  const bool any = std::any_of(p.stock.begin(), p.stock.end(), [](const Stock& s) { return s.count > 0; });
  if (!any) out.faults.push_back({Why::no_stock, 0, std::nullopt});
}

bool in_range(const Problem& p, const Cutting& c) {
  if (c.slots.empty() || c.source.index >= (c.source.from == From::piece ? p.pieces.size() : p.stock.size()))
    return false;
  return std::all_of(c.slots.begin(), c.slots.end(), [&](std::size_t s) { return s < p.slots.size(); });
}

// Takes a held cutting, or says why not.
bool take_held(const Problem& p, const Cutting& c, Checked& out, std::vector<char>& usable,
               std::vector<char>& open) {
  if (!in_range(p, c)) return false;
  for (std::size_t i = 0; i < c.slots.size(); ++i) {
    const bool twice = std::find(c.slots.begin(), c.slots.begin() + static_cast<std::ptrdiff_t>(i),
                                 c.slots[i]) != c.slots.begin() + static_cast<std::ptrdiff_t>(i);
    if (twice || open[c.slots[i]] == 0) return false;
  }
  const bool piece = c.source.from == From::piece;
  if (piece ? usable[c.source.index] == 0 : out.stock_left[c.source.index] == 0) return false;
  if (!serve_held(p, c)) return false;
  if (piece)
    usable[c.source.index] = 0;
  else
    --out.stock_left[c.source.index];
  for (const std::size_t s : c.slots)
    open[s] = 0;
  out.held.push_back(c);
  return true;
}

bool stock_serves(const Problem& p, const Checked& c, std::size_t slot) {
  for (std::size_t i = 0; i < p.stock.size(); ++i)
    if (c.stock_left[i] > 0 && serve(p, {{From::stock, i}, {slot}})) return true;
  return false;
}

bool piece_serves(const Problem& p, const Checked& c, std::size_t slot) {
  return std::any_of(c.pieces.begin(), c.pieces.end(), [&](std::size_t i) {
    // Most pieces are too short for most slots, and this is all that it takes to see so.
    return p.pieces[i].facts.length >= p.slots[slot].need.least &&
           serve_piece(p, p.pieces[i], {&slot, 1}).has_value();
  });
}

void add(Cost& cost, const Price& price) {
  cost.sticks += static_cast<int>(price.sticks);
  cost.taken += Length{price.taken};
  cost.scrap += Length{price.scrap};
  cost.cuts += price.cuts;
}

} // namespace

Checked check(const Problem& p) {
  Checked out;
  std::vector<char> usable(p.pieces.size()), open(p.slots.size());
  for (std::size_t i = 0; i < p.slots.size(); ++i) {
    open[i] = sound(p.slots[i].need) ? 1 : 0;
    if (open[i] == 0) {
      out.faults.push_back({Why::bad_slot, i, std::nullopt});
      out.bad.push_back(i);
    }
  }
  check_pieces(p, out, usable);
  check_stock(p, out);
  for (std::size_t i = 0; i < p.held.size(); ++i)
    if (!take_held(p, p.held[i], out, usable, open))
      out.faults.push_back({Why::held_no_more, i, std::nullopt});
  for (std::size_t i = 0; i < p.pieces.size(); ++i)
    if (usable[i] != 0) out.pieces.push_back(i);
  for (std::size_t i = 0; i < p.slots.size(); ++i) {
    if (open[i] == 0) continue;
    const bool can = stock_serves(p, out, i) || piece_serves(p, out, i);
    (can ? out.slots : out.hopeless).push_back(i);
    if (!can) out.faults.push_back({Why::too_long_slot, i, std::nullopt});
  }
  return out;
}

std::vector<int> ranks_of(const Problem& p) {
  std::vector<int> out;
  for (const Slot& s : p.slots)
    out.push_back(s.due);
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

void add_given(const Problem& p, const Checked& checked, const std::vector<int>& ranks, Cost& cost) {
  for (const auto* list : {&checked.bad, &checked.hopeless})
    for (const std::size_t s : *list)
      ++cost.unserved[static_cast<std::size_t>(std::lower_bound(ranks.begin(), ranks.end(), p.slots[s].due) -
                                               ranks.begin())];
  for (const Cutting& c : checked.held)
    if (const auto served = serve_held(p, c)) add(cost, served->price);
}

} // namespace nutward::cutting
