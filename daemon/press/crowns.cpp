#include "press/crowns.hpp"

#include "units/print.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>

namespace nutward::press {

namespace {

constexpr Length none{0}, widest_crown{6'000'000};

Crown square(const board::Slot& slot) {
  Crown c;
  c.at = c.nutmost = c.bodymost = slot.position;
  c.across = slot.width;
  c.half_width = {slot.width.nm / 2};
  return c;
}

Crown leaning(const board::Slot& slot, const board::SlotEnds& ends) {
  Crown c;
  c.at = slot.position;
  c.nutmost = units::from_mm(std::min(ends.bass.x_mm, ends.treble.x_mm));
  c.bodymost = units::from_mm(std::max(ends.bass.x_mm, ends.treble.x_mm));
  c.across = units::from_mm(std::hypot(ends.treble.x_mm - ends.bass.x_mm, ends.treble.y_mm - ends.bass.y_mm));
  c.half_width = units::from_mm(std::max(std::abs(ends.bass.y_mm), std::abs(ends.treble.y_mm)));
  return c;
}

} // namespace

std::vector<Crown> crowns(const board::Board& board, Length overhang) {
  std::vector<Crown> out;
  for (const board::Slot& slot : board::slots(board)) {
    Crown c = board.fan ? leaning(slot, board::slot_ends(board, slot.n)) : square(slot);
    c.slot = slot.n;
    c.length = slot.arc;
    c.radius = slot.radius;
    c.half_width += overhang;
    out.push_back(c);
  }
  return out;
}

Work work_on(const board::Board& board, Length crown_width, Length overhang) {
  Work out;
  out.crowns = crowns(board, overhang);
  out.crown_width = crown_width;
  out.board_end = out.crowns.back().bodymost;
  return out;
}

void check(const Work& work) {
  if (work.crowns.empty()) throw BadWork("There is no fret to press.", "Say which board, and which slots.");
  if (work.crown_width <= none || work.crown_width > widest_crown) {
    throw BadWork(fmt::format("A crown {} mm wide cannot be right.", units::print_exact_mm(work.crown_width)),
                  "Over 0 and at most 6 mm would do.");
  }
  const Crown* before = nullptr;
  for (const Crown& c : work.crowns) {
    if (c.length <= none || c.across <= none || c.half_width <= none || c.nutmost > c.at || c.bodymost < c.at)
      throw BadWork(fmt::format("Fret {} has no length.", c.slot), "Measure the board anew.");
    if (before != nullptr && (c.slot <= before->slot || c.at <= before->at || c.nutmost <= before->nutmost ||
                              c.bodymost <= before->bodymost)) {
      throw BadWork(fmt::format("Fret {} does not lie beyond fret {}.", c.slot, before->slot),
                    "The frets by their slots would do, each further from the nut than the one before.");
    }
    before = &c;
  }
  for (const Stretch& s : work.bed.voids) {
    if (s.to < s.from)
      throw BadWork("A hollow ends before it begins.",
                    "Say where it begins, from the nut, and then where it ends.");
  }
}

Between between(const std::vector<Crown>& crowns, Length place) {
  Between out;
  for (const Crown& c : crowns) {
    out.bodyward = c.slot;
    if (c.at > place) return out;
    out.nutward = c.slot;
  }
  return out;
}

} // namespace nutward::press
