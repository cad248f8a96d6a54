// The stages of a refret, in the order in which a bench does them (DESIGN 4.8), and how long each takes by
// default. All minutes are common practice from memory, for 22 frets, and settings of the shop.
#pragma once

#include "agenda/bad_agenda.hpp"

#include <array>
#include <chrono>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace nutward::agenda {

enum class EndStyle {
  rounded, // cut to length and dressed to a half-round before seating
  filed,   // left long, filed flush and bevelled after pressing
};

// What a stage occupies besides a person. `bench` is hand tools, of which there are enough.
enum class Machine { bench, press, sander };

enum class StageKind {
  pull,
  true_board,
  slots,
  bend,
  cut,
  dress,
  nip,
  seat,
  press,
  cure,
  file,
  check,
  wait,
  recheck,
  level,
  crown,
  polish,
  round_corners,
  done,
};

struct StageRow {
  StageKind kind;
  std::string_view word; // one word, spelled the same in tables, JSON and sentences; never changed or reused
  std::string_view what; // what is done, for a list: "dress the ends"
  Machine machine;
  std::int32_t minutes; // of open time for 22 frets; 0: waits, or takes no time of its own
  bool per_fret;        // minutes grow with the frets; otherwise it is the board's, whatever their number
};

// One row for each kind, in the order of the enum. Checking right after the press is counted in the press's
// 60 minutes. Rounding corners (20) is not in DESIGN 4.8 and from memory too. Sanders: truing and dressing.
std::span<const StageRow> stage_table();
const StageRow& row(StageKind kind);
std::optional<StageKind> stage_named(std::string_view word); // exactly a row's word

// Open minutes for 22 frets, of each kind in the order of the enum.
using Minutes = std::array<std::int32_t, 19>;
const Minutes& table_minutes(); // those of the table

// What decides which stages a job has.
struct StagePlan {
  EndStyle ends = EndStyle::rounded;
  int frets = 22;        // 1..200, those this job sets
  bool old_frets = true; // false for a new board: nothing to pull
  bool bound = false;    // tangs are nipped only on a bound board
  bool pressed =
      true; // false where new crowns go beside worn ones: hammered only, so no press, wait, recheck
  bool levelled = true;    // level, crown and polish: optional, planned by default
  std::int32_t cure_h = 0; // elapsed hours a glue needs after pressing (or seating), 0..168; 0 for none
};

struct Stage {
  StageKind kind;
  std::chrono::seconds work; // open time
  std::chrono::seconds
      lag; // elapsed time that must have passed since pressing (or seating) ended; 0 for none
  friend bool operator==(const Stage&, const Stage&) = default;
};

// Per-fret minutes are scaled by frets/22, rounded up to a whole minute, at least 5. `wait` has no work and a
// lag of wait_h (1..336, the hours after which a recheck is due); the stages after it follow it. Always ends
// in `done`. BadAgenda for numbers out of range.
std::vector<Stage> stages_of(const StagePlan& plan, std::int32_t wait_h = 24,
                             const Minutes& minutes = table_minutes());

} // namespace nutward::agenda
