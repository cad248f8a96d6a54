#include "cutting/serve.hpp"

#include <algorithm>

namespace nutward::cutting {

namespace {

constexpr Length nothing{};

// The flat end that is cut off first, and the one that stays on what remains.
Length near_flat(const Problem& p, int flat_ends) {
  return flat_ends == 2 ? p.flat_end : nothing;
}
Length far_flat(const Problem& p, int flat_ends) {
  return flat_ends >= 1 ? p.flat_end : nothing;
}

struct Rest {
  pieces::PieceFacts facts; // what the last fret is made of
  bool several = false;
};

// What remains goes back into the tin with its flat end.
Served keep(const Problem& p, const Piece& piece, Length remains, Length cut) {
  const Length near = near_flat(p, piece.flat_ends);
  Served out;
  out.price.scrap = near.nm;
  out.price.cuts = near > nothing ? 2 : 1;
  out.kept = remains + far_flat(p, piece.flat_ends);
  out.last = cut;
  return out;
}

std::optional<Served> serve_rest(const Problem& p, const Piece& piece, const Rest& rest, const Slot& slot) {
  const pieces::Wanted wanted{slot.need, slot.crown_height, p.least_useful, slot.lot};
  const pieces::Verdict v = pieces::judge(rest.facts, wanted, p.settings);
  const bool good =
      v.outcome == pieces::Outcome::fits || (rest.several && v.outcome == pieces::Outcome::wasteful);
  if (!good) return std::nullopt;
  const Length near = near_flat(p, piece.flat_ends), far = far_flat(p, piece.flat_ends);
  const Length remains = rest.facts.length - slot.need.cut - p.settings.nip_loss;
  if (remains >= p.least_useful && !rest.facts.tang) return keep(p, piece, remains, slot.need.cut);
  if (!rest.several && v.trim > p.settings.trim_limit) return std::nullopt;
  Served out;
  out.price.scrap = (near + far + v.nip).nm;
  out.price.cuts = (near > nothing ? 1 : 0) + (far > nothing || v.nip > nothing ? 1 : 0);
  out.last = rest.facts.length;
  return out;
}

} // namespace

int raw_ends(const Piece& piece) {
  return std::max(piece.facts.raw_ends, piece.flat_ends);
}

int raw_ends_of_last(const Piece& piece) {
  return raw_ends(piece) == 2 || piece.flat_ends > 0 ? 2 : 1;
}

bool crowns_alike(const std::optional<Length>& a, const std::optional<Length>& b, const FitSettings& s) {
  return !a || !b || units::abs(*a - *b) <= s.crown_tolerance;
}

Length room(const Problem& p, const Stock& stock) {
  return stock.length - stock.flat_ends * p.flat_end + p.settings.nip_loss;
}

Length room(const Problem& p, const Piece& piece) {
  return piece.facts.length - piece.flat_ends * p.flat_end + p.settings.nip_loss;
}

std::optional<Served> serve_stock(const Problem& p, const Stock& stock, Length sizes, std::size_t frets) {
  const Length left = room(p, stock) - sizes; // and one nip
  if (left < nothing) return std::nullopt;
  const Length near = near_flat(p, stock.flat_ends), far = far_flat(p, stock.flat_ends);
  const Length clear = left - p.settings.nip_loss; // beyond the last nip, before the far flat end
  Served out;
  if (clear >= p.least_useful) out.kept = clear + far;
  out.price.sticks = stock.kind == StockKind::stick ? 1 : 0;
  out.price.taken = (stock.length - out.kept).nm;
  out.price.scrap = (near + (out.kept > nothing ? nothing : std::max(nothing, clear + far))).nm;
  const bool to_the_end = left == nothing && far == nothing;
  out.price.cuts = static_cast<std::int64_t>(frets) + (near > nothing ? 1 : 0) - (to_the_end ? 1 : 0);
  return out;
}

std::optional<Served> serve_piece(const Problem& p, const Piece& piece, std::span<const std::size_t> slots) {
  const bool several = slots.size() > 1;
  if (piece.facts.tang && (several || piece.flat_ends > 0)) return std::nullopt;
  Rest rest{piece.facts, several};
  rest.facts.length -= piece.flat_ends * p.flat_end;
  rest.facts.raw_ends = several ? raw_ends_of_last(piece) : raw_ends(piece);
  for (const std::size_t s : slots.first(slots.size() - 1)) {
    if (!crowns_alike(piece.facts.crown_height, p.slots[s].crown_height, p.settings)) return std::nullopt;
    rest.facts.length -= size_of(p, s);
  }
  if (rest.facts.length <= nothing) return std::nullopt;
  std::optional<Served> out = serve_rest(p, piece, rest, p.slots[slots.back()]);
  if (out) out->price.cuts += static_cast<std::int64_t>(slots.size()) - 1;
  return out;
}

std::optional<Served> serve(const Problem& p, const Cutting& cutting) {
  if (cutting.source.from == From::piece)
    return serve_piece(p, p.pieces[cutting.source.index], cutting.slots);
  const Stock& stock = p.stock[cutting.source.index];
  Length sizes{};
  for (const std::size_t s : cutting.slots) {
    if (!crowns_alike(stock.crown_height, p.slots[s].crown_height, p.settings)) return std::nullopt;
    sizes += size_of(p, s);
  }
  std::optional<Served> out = serve_stock(p, stock, sizes, cutting.slots.size());
  if (out) out->last = p.slots[cutting.slots.back()].need.cut;
  return out;
}

std::optional<Served> serve_held(const Problem& p, const Cutting& cutting) {
  if (const auto planned = serve(p, cutting)) return planned;
  if (cutting.source.from == From::stock || cutting.slots.size() > 1) return std::nullopt;
  const Slot& slot = p.slots[cutting.slots.front()];
  const Piece& piece = p.pieces[cutting.source.index];
  const pieces::Verdict v =
      pieces::judge(piece.facts, {slot.need, slot.crown_height, p.least_useful, slot.lot}, p.settings);
  const bool chosen = v.outcome == pieces::Outcome::borderline || v.outcome == pieces::Outcome::wasteful;
  if (!chosen || piece.flat_ends > 0) return std::nullopt;
  Served out;
  out.price.scrap = v.nip.nm;
  out.price.cuts = v.nip > nothing ? 1 : 0;
  out.last = piece.facts.length;
  return out;
}

Length shortest_last(const Problem& p, const Piece& piece, std::size_t slot) {
  const Need& need = p.slots[slot].need;
  const int ends = need.style == board::EndStyle::rounded ? raw_ends_of_last(piece) : 0;
  return need.least + ends * p.settings.dressing_loss + p.settings.borderline + Length{1};
}

std::optional<Served> order_best(const Problem& p, Cutting& cutting) {
  std::optional<Served> best = serve(p, cutting);
  if (cutting.source.from == From::stock || cutting.slots.size() == 1) return best;
  std::size_t last = cutting.slots.size() - 1;
  for (std::size_t i = 0; i + 1 < cutting.slots.size(); ++i) {
    std::swap(cutting.slots[i], cutting.slots.back());
    const std::optional<Served> found = serve(p, cutting);
    if (found && (!best || found->price < best->price)) {
      best = found;
      last = i;
    }
    std::swap(cutting.slots[i], cutting.slots.back());
  }
  std::swap(cutting.slots[last], cutting.slots.back());
  return best;
}

} // namespace nutward::cutting
