// Short forms for writing rows down: what every file in questions/ and commands/ includes.
#pragma once

#include "shop/apply.hpp"
#include "shop/bench.hpp"
#include "shop/bind.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::shop {

namespace takes {
inline constexpr Bounds piece_length{1, 2000};
inline const Param job{"job", Kind::job, true, false, "its number, or words that only it has"};
inline const Param slot{"slot", Kind::slot, true, false, "counted from the nut"};
inline const Param wire{"wire", Kind::wire, true, false, "its name"};
inline const Param piece{"piece", Kind::piece, true, false, "its id, or its length and wire"};
inline const Param at{"at", Kind::at, false, false, "when it happened, up to now; now where it is not said"};
inline const Param note{"note", Kind::words, false, false, "anything worth keeping"};
inline const Param measured{
    "measured", Kind::one_of,          false, false, "straight, or across the ends of a bent piece",
    {},         {"straight", "across"}};
inline const Param bend_radius{"bend_radius", Kind::length, false, false, "of a bent piece", {20, 10000}};
inline Param optional(Param p) {
  return p.required = false, p;
}
} // namespace takes

// What the bench does with a piece that was judged: "nip 1.20 mm off and dress both ends, to 52.10 mm".
std::string how_to(const pieces::Verdict& verdict, const Setup& setup);
std::string comes_off(const pieces::Verdict& verdict, const Setup& setup); // "0.91 mm", "nothing"
std::vector<Hazard> hazards_of(const pieces::Verdict& verdict, const Setup& setup);
// {"piece", "length", "kind", "place", "finish", "trim", "ends_to_dress", "tang_to_nip", "untouched",
// "borderline"}
Value data_of(const pieces::Candidate& candidate, const View& view);
// The length along the wire of what was measured straight or across its bent ends, by the two parameters
// above. Throws Problem{value} where the radius of the bend is missing or too small.
Length along(const Args& args, Length measured);
// " (52.00 mm across its ends, bent to 300.00 mm)"; "" for what was measured straight.
std::string across(const Args& args, Length measured, const Setup& setup);
std::string range_of(const board::Need& need, const Setup& setup); // "51.20 to 52.60 mm, best 52.10 mm"

inline Value ref(Thing thing, std::int64_t id) {
  return Ref{thing, id};
}
inline Value opt(const std::optional<Length>& v) {
  return v ? Value{*v} : Value{};
}
inline Value opt(const std::optional<Instant>& v) {
  return v ? Value{*v} : Value{};
}
Value list_of(const std::vector<int>& slots);
inline std::string name_or(std::string_view s, std::string_view other) {
  return std::string(s.empty() ? other : s);
}

} // namespace nutward::shop
