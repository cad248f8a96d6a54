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
  std::optional<Instant>
      at{}; // no load is told while the press is out of service; nullopt: that is not asked
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

// What a report of a load is held against: the least of plate, gauge and bar. Of the bar that was said; else
// of each of the shop's that those slots may have been under, and of all where that is none of them. `most`
// is nullopt where the plate is not known; `bar` where the shop has none. Never empty.
struct BarRating {
  std::optional<Bar> bar{};
  std::optional<press::Limit> most{};
};
std::vector<BarRating> ratings_of(const Job& job, const std::vector<int>& slots,
                                  const std::optional<Bar>& bar, const View& view, const Setup& setup);
// The most that the shop lets so many frets have in a pass, or one fret by itself; nullopt as above.
std::optional<press::Limit> shop_limit(std::size_t frets, const std::optional<Bar>& bar, const View& view,
                                       const Setup& setup);

} // namespace nutward::shop
