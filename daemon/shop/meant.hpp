// What is meant by a name, a number or a length: things of the shop, and the settings that reading them
// needs.
#pragma once

#include "shop/bind.hpp"
#include "units/read.hpp"

namespace nutward::shop {

// A Ref for a parameter of kind wire, job, piece, person or receiver; as described in shop/bind.hpp.
Value meant(const Param& param, const Value& raw, const View& view);

bool alike(const Piece& a, const Piece& b); // they serve equally well
std::string label(const Piece& piece,
                  const View& view); // "52.40 mm of medium, ends raw (piece 41, drawer 2)"

// "9-14", "3", "9,10,12": slots as a list of whole numbers. Throws Problem{value}.
std::vector<Value> slot_list(const Param& param, std::string_view text);
// "mon-fri", "sat,sun", "daily".
std::vector<Value> weekday_list(const Param& param, std::string_view text);

bool is_utf8(std::string_view text);

// The shop's units for bare numbers; settings "unit" (mm or in) and "load_unit" (n, kn, lb, kgf).
units::LengthUnit length_unit(const View& view);
units::ForceUnit force_unit(const View& view);

} // namespace nutward::shop
