// What it costs to serve certain slots from one source: the rules of cutting, in one place.
#pragma once

#include "cutting/plan.hpp"

#include <optional>
#include <span>
#include <vector>

namespace nutward::cutting {

// Cost without service, of one source or of many. Ordered strictly, and adds up.
struct Price {
  std::int64_t sticks = 0;
  std::int64_t taken = 0; // nanometres
  std::int64_t scrap = 0;
  std::int64_t cuts = 0;

  friend constexpr auto operator<=>(const Price&, const Price&) = default;
  friend constexpr Price operator+(const Price& a, const Price& b) {
    return {a.sticks + b.sticks, a.taken + b.taken, a.scrap + b.scrap, a.cuts + b.cuts};
  }
  friend constexpr Price operator-(const Price& a, const Price& b) {
    return {a.sticks - b.sticks, a.taken - b.taken, a.scrap - b.scrap, a.cuts - b.cuts};
  }
};

struct Served {
  Price price;
  Length kept; // what remains and is of use, its flat end with it; 0 if nothing is
  Length last; // of wire that the last fret gets
};

// What a slot takes of new wire, with the nip that parts it from the rest.
inline Length size_of(const Problem& problem, std::size_t slot) {
  return problem.slots[slot].need.cut + problem.settings.nip_loss;
}

// What sizes may add up to in new wire: its length without flat ends, and the nip that the last one saves.
Length room(const Problem& problem, const Stock& stock);
// The same of a piece whose last fret gets `cut`, too.
Length room(const Problem& problem, const Piece& piece);

// Of new wire, by the sum of the sizes of `frets` > 0 slots; nullopt where they do not go in.
std::optional<Served> serve_stock(const Problem& problem, const Stock& stock, Length sizes,
                                  std::size_t frets);
// Of a piece, in this order of cutting. Slots are not empty.
std::optional<Served> serve_piece(const Problem& problem, const Piece& piece,
                                  std::span<const std::size_t> slots);
// Of either, with crowns judged. Slots are not empty.
std::optional<Served> serve(const Problem& problem, const Cutting& cutting);

// Of what is held: a person's choice of a borderline or a wasteful piece stands.
std::optional<Served> serve_held(const Problem& problem, const Cutting& cutting);

// Raw ends once the flat ones are off.
int raw_ends(const Piece& piece);
// The last fret of several has one end from the cut before it, and the piece's better one.
int raw_ends_of_last(const Piece& piece);

// The shortest rest of a piece that this slot could take as the last of several.
Length shortest_last(const Problem& problem, const Piece& piece, std::size_t slot);

// Puts last the slot that makes it cheapest; nullopt where none makes it work.
std::optional<Served> order_best(const Problem& problem, Cutting& cutting);

bool crowns_alike(const std::optional<Length>& a, const std::optional<Length>& b, const FitSettings& s);

} // namespace nutward::cutting
