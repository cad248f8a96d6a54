// Short forms for writing rows down: what every file in questions/ and commands/ includes.
#pragma once

#include "shop/apply.hpp"
#include "shop/bench.hpp"
#include "shop/bind.hpp"
#include "shop/elsewhere.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::shop {

namespace takes {
inline constexpr Bounds piece_length{1, 2000};
inline const Param job{"job", Kind::job, true, false, "its number, or words that only it has"};
inline const Param job_spoken_of{
    "job", Kind::job, true, false, "as 'job'; the one last spoken of where not said", {}, {}, true};
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

// Fields that many an answer's data has.
namespace gives {
inline const Give job{"job", Kind::job, "its number"};
inline const Give wire{"wire", Kind::wire, "its id"};
inline const Give piece{"piece", Kind::piece, "its id"};
inline const Give builder{"builder", Kind::person, "who does it", Often::or_null};
inline const Give bench{"bench", Kind::words, "where it is done; may be empty"};
inline const Give slot{"slot", Kind::slot, "counted from the nut"};
inline const Give tang_to_nip{"tang_to_nip", Kind::length, "of both ends together"};
inline const Give wire_name{"name", Kind::name, "what the shop calls the wire"};
inline Give or_null(Give g) {
  return g.often = Often::or_null, g;
}
inline Give record(std::string_view name, std::string_view what, std::vector<Give> of) {
  return {name, Kind::words, what, Often::always, std::move(of)};
}
inline Give records(std::string_view name, std::string_view what, std::vector<Give> of) {
  return {name, Kind::words, what, Often::many, std::move(of)};
}
inline Give one_of(std::string_view name, std::string_view what, std::vector<std::string_view> options) {
  return {name, Kind::one_of, what, Often::always, {}, std::move(options)};
}
// Of `widths_off` a board (shop/boards.hpp).
inline const Give widths_off =
    records("widths_off", "measured widths that lie off the line of the others",
            {or_null(slot),
             {"distance", Kind::length, "from the nut, where it is no slot", Often::or_null},
             {"measured", Kind::length, "the width"},
             {"line", Kind::length, "what the line has there"}});
// Of `fields_of` an Elsewhere (shop/elsewhere.hpp).
inline const Give wanted_for = records("wanted_for", "the slots that the cut plan has it for", {job, slot});
inline const Give price{
    "price",
    Kind::words,
    "of taking it for this slot, where the plan has it for another",
    Often::at_times,
    {{"frets", Kind::count, "more that get no wire"},
     {"sticks", Kind::count, "more to open; below 0: fewer, where frets pay for it"},
     {"new_wire", Kind::length, "more of it; below 0: less, where frets or sticks pay for it"},
     {"at_most", Kind::yes, "whether it may cost less"}}};
// Of `data_of` a candidate.
inline const Give candidates =
    records("pieces", "up to five, the best first",
            {piece,
             {"length", Kind::length, "as it is"},
             one_of("kind", "what it is", {"short_fret", "stick_end", "pulled_fret"}),
             {"place", Kind::words, "where in the shop"},
             {"finish", Kind::length, "of the fret"},
             {"trim", Kind::length, "what comes off"},
             {"ends_to_dress", Kind::count, "0 to 2"},
             tang_to_nip,
             {"untouched", Kind::yes, "whether it goes in as it is"},
             {"borderline", Kind::yes, "whether it must be tried"},
             wanted_for,
             price});
// Of `data_of` a person, and of each in 'persons'.
inline const std::vector<Give> person{{"person", Kind::person, "their number"},
                                      {"name", Kind::name, "what they are called"},
                                      one_of("role", "what they may do", {"look", "bench", "lead"}),
                                      {"bench", Kind::words, "where they work; may be empty"},
                                      {"uids", Kind::count, "the machine's users who they are", Often::many},
                                      {"retired", Kind::yes, "whether they have retired"}};
} // namespace gives

// What the bench does with a piece that was judged: "nip 1.20 mm off and dress both ends, to 52.10 mm".
std::string how_to(const pieces::Verdict& verdict, const Setup& setup);
std::string comes_off(const pieces::Verdict& verdict, const Setup& setup); // "0.91 mm", "nothing"
std::vector<Hazard> hazards_of(const pieces::Verdict& verdict, const Setup& setup);
Value data_of(const pieces::Candidate& candidate, const Elsewhere& elsewhere, const View& view);
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
