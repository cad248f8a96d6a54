// The journal's chain: each line's hash is taken over the hash before it and all that the line says, so that
// no line can change, vanish from the middle or move without the hashes after it telling.
//
// SHA-256 (FIPS 180-4) over these fields one after the other, each as a netstring: its length in bytes as a
// decimal number, ':', the bytes, ','. Numbers are decimal, '-' before negative ones; instants are seconds
// since 1970 UTC.
//
//    1  the hash of the line before, 64 lower-case hex digits; 64 zeros for line 1
//    2  id          3  group       4  sequence    5  recorded    6  happened    7  actor
//    8  via         9  said       10  call       11  answer     12  inverse
//   13  the group that it undoes, or nothing
//   14  what it touched: "wire 3 piece 12", ascending by kind (in the order of shop::Thing) and id, a space
//       between
//   15  whose history it belongs to: "wire 3 job 8 job 8 slot 5", ascending by kind, id and slot, the thing
//   as
//       a whole first
//   16… each movement that it made, ascending by id: its id, kind, wire, lot, piece, job, slot, from, to,
//       length in nm, pieces, the movement that it reverses, and last its reason; a space between, '-' for
//       what it has none of
#pragma once

#include "shop/store.hpp"
#include "store/about.hpp"

#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::store {

inline constexpr std::string_view first_hash =
    "0000000000000000000000000000000000000000000000000000000000000000";

// What stands in the hash of a line besides its own columns. `movements` as field 16 says.
struct Beside {
  std::set<About> about;
  std::vector<std::string> movements;
};

// `line.hash` is not looked at.
std::string canonical(std::string_view before, const shop::Line& line, const Beside& beside);
// Lower-case hex.
std::string sha256(std::string_view bytes);

} // namespace nutward::store
