// Standing: where a job's pressing stands, from its passes and what was reported.
#pragma once

#include "press/passes.hpp"

#include <optional>
#include <span>
#include <vector>

namespace nutward::press {

// A report: "pressed 8 to 12 at 1800 lb". In the order in which they happened; those of a fret that was
// pulled since and seated anew are left out by whoever asks.
struct Pressed {
  std::vector<int> slots;      // rising
  std::optional<Force> load{}; // nullopt: not said
};

// A pass is done by one report that covers all its slots. What the best such report came to, of its load:
inline constexpr double halfway_under = 0.75, low_under = 0.95;
enum class Done {
  open = 0,     // no report covers it
  halfway = 1,  // under halfway_under: the first of its two steps
  in_parts = 2, // no report covers it, but each of its frets was pressed with some group
  low = 3,      // from there, under low_under: "only got to 1800"
  done = 4,     // the rest; or a load was not said
};

struct Standing {
  std::vector<Done> passes;        // one for each pass
  std::optional<std::size_t> last; // "where did I stop": the pass of the last report that covers one
  std::optional<std::size_t>
      next; // the first open or halfway one from `last` on, else before it; nullopt: none
  std::vector<std::size_t> skipped; // open or halfway ones before `last`
  std::vector<int> never;           // slots of the passes that no report names, rising
  std::vector<std::size_t> beyond;  // reports above `most`
  bool all_pressed = false;         // every slot of the passes was pressed: nothing in `never`
  bool all_done = false;            // and no pass is open or halfway
};

// `most`: what a pass may have (most_in_a_pass); nullopt: not known, and nothing is beyond it. Without passes
// nothing stands: never all pressed.
Standing standing(std::span<const Pass> passes, std::span<const Pressed> reports, std::optional<Force> most);

// The pass to do now; nullptr: all are done. Into `passes`.
const Pass* next_pass(std::span<const Pass> passes, std::span<const Pressed> reports);

} // namespace nutward::press
