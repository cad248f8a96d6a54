// One fret that stands high, pressed again: under which of the shop's bars, and with what load. The numbers
// are press/rework.hpp's: one step up from what it last had, never two, never above the least rating.
#pragma once

#include "level/advice.hpp"
#include "press/off_centre.hpp"
#include "shop/pressing.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

// Under a bar of one kind.
struct PressedAgain {
  std::optional<press::OneFret>
      fret{}; // under `bar`; nullopt: none of the shop's bars of the kind gives it a load
  press::Bar bar{};
  Force load{}, least{}, first{};         // of `fret`, or of `to_side`: least ≤ load, and half of it first
  std::optional<press::Favour> to_side{}; // where the load moves to a side: how far at most, and with what
  std::vector<press::Reason> refused{};   // of the first bar of the kind, where none gives a load
  std::string cannot{}; // why nothing can be said at all: no bar, no known crown; a whole sentence
};

class PressAgainWith {
public:
  PressAgainWith(const Job& job, const View& view, const Setup& setup);
  PressedAgain of(int slot, level::Bar kind, level::Side side = level::Side::even) const;
  // No bar of the kind gives the fret a further step, and nothing that is said or done about the press or the
  // neck would change that. Of a job of some slots only: always, since its crowns are blended.
  bool done(int slot, level::Bar kind) const;
  // The shop has a narrow bar, and a ladder for it.
  bool narrow_set_up() const { return has_narrow_ && !equipment_.narrow_ladder.empty(); }
  bool narrow_without_ladder() const { return has_narrow_ && equipment_.narrow_ladder.empty(); }

private:
  const Job& job_;
  const View& view_;
  press::Equipment equipment_;
  std::optional<press::Work> work_{};
  std::string cannot_{};
  bool has_narrow_ = false;
};

} // namespace nutward::shop
