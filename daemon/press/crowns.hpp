// Crowns: the frets of a board as a bar meets them, and what lies under the neck.
#pragma once

#include "board/board.hpp"
#include "units/force.hpp"
#include "units/length.hpp"

#include <optional>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace nutward::press {

using units::Force;
using units::Length;

struct Crown {
  int slot = 0;
  Length at;                    // where its middle line crosses the centreline, from the nut
  Length nutmost, bodymost;     // its ends furthest from one another along the neck; a square one's are `at`
  Length length;                // along the surface (board::Slot::arc): what the load for each mm counts
  Length across;                // straight, in plan: what a load off the centreline counts
  Length half_width;            // how far it reaches from the centreline, `overhang` of its ends included
  std::optional<Length> radius; // of the board there; nullopt: flat
  bool seated = true;           // a fret stands in the slot
  bool to_press = true;         // and is to be pressed

  friend bool operator==(const Crown&, const Crown&) = default;
};

// Of every slot of a board that board::check() accepts, in order, all of them seated and to be pressed.
// `overhang`: what each end stands out beyond the board's edge until it is filed (board::FitSettings).
std::vector<Crown> crowns(const board::Board& board, Length overhang = {});

// A stretch of the neck, from the nut.
struct Stretch {
  Length from, to;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};

// What the neck lies on. Nothing is pressed before all four have been said, once for each job.
struct Bed {
  bool cradled = false;              // the neck's back lies in a cradle under the whole group
  bool head_clear = false;           // the head does not touch anything
  bool nothing_bridges = false;      // and nothing else under the neck keeps it off the cradle
  bool glue_set = false;             // no glue is fresh
  std::optional<Length> body_from{}; // from beyond here there is a closed body under the board
  std::optional<Length> bare_from{}; // from beyond here the board has nothing under it
  std::vector<Stretch> voids{};      // hollows under the board: a rod's access, a channel without its fillet

  friend bool operator==(const Bed&, const Bed&) = default;
};

struct Work {
  std::vector<Crown> crowns; // by slot, and each further from the nut than the one before
  Length crown_width;        // of the wire, over 0, at most 6 mm
  bool soft_wood = false;
  bool nut_in_place = true; // stands higher than the frets: no bar may reach over it
  Length board_end;         // the last slot's place or beyond it; no bar is longer than the board
  Bed bed{};

  friend bool operator==(const Work&, const Work&) = default;
};

// A whole board, cradled by nobody yet. crown_width as above.
Work work_on(const board::Board& board, Length crown_width, Length overhang = {});

struct BadWork : std::runtime_error {
  BadWork(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

// Throws BadWork: there is no crown; slots or places do not rise; a length is not over 0; the crown's width
// is out of range; a stretch is the wrong way round. Every function of this folder expects work it accepts.
void check(const Work& work);

// "between 10 and 11": the slots on either side of a place on the centreline, as far as `crowns` has them. A
// place at a slot has that slot as `nutward`. The nut is 0; beyond the last slot both are that.
struct Between {
  int nutward = 0, bodyward = 0;
  friend bool operator==(const Between&, const Between&) = default;
};
Between between(const std::vector<Crown>& crowns, Length place);

} // namespace nutward::press
