// A job in the press: its board as the bench's code wants it, what was reported, and where it stands.
#pragma once

#include "press/passes.hpp"
#include "press/rework.hpp"
#include "press/standing.hpp"
#include "shop/bench.hpp"
#include "shop/press_settings.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

// The frets of a job under a bar. Until one of them is reported seated all are taken to be (`foreseen`); from
// then on those that are not are not there. Throws Problem{state} where the width of the wire's crown is not
// known and was not said.
struct BoardInPress {
  press::Work work;
  bool foreseen = false;
};
BoardInPress work_of(const Job& job, const View& view, const Setup& setup, std::optional<Length> crown_width);

// Reports in the order in which they happened, without frets that were pulled since.
std::vector<press::Pressed> reports_of(const Job& job, const View& view);

// What a fret was last pressed with: under a narrow bar alone, or under any other with its group.
std::optional<units::Force> last_load(const Job& job, int slot, bool narrow, const View& view);

struct PressWish {
  std::optional<Bar> bar{}; // only this one; nullopt: whichever of the shop's takes the largest group
  std::optional<units::Force> load{};
  std::optional<Length> crown_width{};
  bool every_group = false;
};

struct PressPlan {
  press::Work work;
  press::Equipment equipment;
  std::vector<press::Bar> bars; // that press::Pass::bar counts
  press::Plan plan;
  press::Standing standing;
  bool foreseen = false;
};
// Throws Problem{state} where the shop has no bar, or as work_of(); Problem{value} for what cannot be wished.
PressPlan press_plan(const Job& job, const View& view, const Setup& setup, const PressWish& wish = {});

// Where a job's pressing stands, as far as it is known.
struct PressState {
  bool begun = false;                  // something was reported
  std::optional<std::size_t> passes{}; // nullopt: no bar, no plate, no crown … and then no passes are known
  std::size_t done = 0;                // of these
  std::vector<int> next{};             // the frets of the next one; empty: none
  std::string beyond{};                // beyond_words()
};
PressState press_state(const Job& job, const View& view, const Setup& setup);
// " Pressing: 2 of 5 passes done, next are frets 5-9." and what was beyond; "" where it has not begun.
std::string words_of(const PressState& state);
// What a fret was pressed with so far: "1800 lb, 2200 lb alone"; "" where no load was said.
std::string loads_of(const Job& job, int slot, const View& view, const Setup& setup);
// "Beyond the rating: frets 9-14 at 3200 lb, rated 3000 lb."; "" where nothing was.
std::string beyond_words(const Job& job, const View& view, const Setup& setup);

// The least of what plate, gauge and bar are rated for; nullopt where the plate is not known. A bar that was
// not said counts where the shop has only one.
std::optional<press::Limit> rated(const std::optional<Bar>& bar, const View& view, const Setup& setup);

} // namespace nutward::shop
