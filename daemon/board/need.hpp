// Need: the lengths of wire that a slot accepts, from the arc of the slot, the end style and the shop's
// settings.
#pragma once

#include "board/board.hpp"
#include "units/length.hpp"

#include <optional>
#include <stdexcept>
#include <string>
#include <utility>

namespace nutward::board {

// The shop's settings for fitting. Every default is common practice, from memory, without a published source.
struct FitSettings {
  Length setback{250'000};       // a rounded end stands back from the board's edge by this much
  Length gap{300'000};           // and may fall short of that by this much more
  Length dressing_loss{500'000}; // what rounding takes off one end
  Length filed_extra{500'000};   // the least that filed ends stand out beyond the edges, both together
  Length overhang{2'000'000};    // what one end stands out before it is filed
  Length nip_loss{500'000};      // what one cut of the nippers loses
  Length borderline{100'000};    // a caliper's error: within it of a limit, try it
  Length trim_limit{
      8'000'000}; // a piece that would lose more than this in becoming one fret is too good for it
  Length crown_tolerance{30'000};    // crowns within this of each other are alike
  Length binding_clearance{400'000}; // what a tang stays away from a binding's inner face
  Length crown_overhang{3'000'000};  // the most that a crown may reach beyond its tang at one end

  friend bool operator==(const FitSettings&, const FitSettings&) = default;
};

struct BadSettings : std::runtime_error {
  BadSettings(std::string which, const std::string& what, std::string remedy)
      : std::runtime_error(what), field(std::move(which)), would_do(std::move(remedy)) {}
  std::string field; // the member's name in FitSettings
  std::string would_do;
};

// Throws BadSettings: everything is from 0 to 50 mm; twice the overhang is at least the filed extra; the trim
// limit is at least two dressing losses and the borderline (or the limit would refuse frets for having been
// dressed); the crown may reach further beyond the tang than the clearance alone.
void check(const FitSettings& settings);

// Throws BadBoard{"binding"} where the binding and the clearance are more than a crown may reach beyond its
// tang. For a board that comes in; need() takes any.
void check_binding(const Board& board, const FitSettings& settings);

// Lengths along the wire. The crown's come first: least ≤ target ≤ cut; for rounded ends target ≤ most.
// `most` is none for filed ends.
struct Need {
  EndStyle style = EndStyle::rounded;
  Length arc;    // of the slot, from edge to edge
  Length least;  // a shorter finished fret shows a gap (rounded) or leaves nothing to file (filed)
  Length target; // what to finish to
  std::optional<Length> most; // a longer finished fret stands out beyond the edges
  Length cut;                 // what to cut from new wire
  std::optional<Length>
      tang{}; // of a bound board: nip the tang back to this, evenly; nullopt: leave it whole

  friend bool operator==(const Need&, const Need&) = default;
};

// rounded: target = A − 2·setback, least = target − 2·gap, most = A, cut = target + 2·dressing loss.
// filed:   least = A + filed extra, cut = target = A + 2·overhang, most = none.
Need need(Length arc, EndStyle style, const FitSettings& settings);
// Of a slot, 0 to the last. On a bound board besides: tang = A − 2·(binding + clearance)·askew, for a slot
// that leans crosses more of the binding than it is thick.
Need need(const Board& board, int n, const FitSettings& settings);
// The same of a slot that slots() gave.
Need need(const Board& board, const Slot& slot, const FitSettings& settings);

// The shortest piece with both ends raw that still makes this fret: `least`, and for rounded ends two
// dressing losses.
Length shortest_raw(const Need& need, const FitSettings& settings);

// A piece that was measured straight across its ends after bending: 2·Rb·asin(c/2Rb), with chord c and bend
// radius Rb. Throws BadBoard{"radius"} unless 0 < c ≤ 2·Rb.
Length arc_of_chord(Length chord, Length bend_radius);

} // namespace nutward::board
