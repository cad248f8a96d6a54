#include "board/need.hpp"

#include <algorithm>
#include <cmath>
#include <fmt/core.h>

namespace nutward::board {

namespace {

constexpr Length longest_setting{50'000'000};

void check_setting(const char* field, Length value) {
  if (value >= Length{} && value <= longest_setting) return;
  throw BadSettings(field, fmt::format("The shop's {} cannot be {:.10g} mm.", field, value.mm()),
                    "From 0 to 50 mm would do.");
}

} // namespace

void check(const FitSettings& s) {
  check_setting("setback", s.setback);
  check_setting("gap", s.gap);
  check_setting("dressing_loss", s.dressing_loss);
  check_setting("filed_extra", s.filed_extra);
  check_setting("overhang", s.overhang);
  check_setting("nip_loss", s.nip_loss);
  check_setting("borderline", s.borderline);
  check_setting("trim_limit", s.trim_limit);
  check_setting("crown_tolerance", s.crown_tolerance);
  check_setting("binding_clearance", s.binding_clearance);
  check_setting("crown_overhang", s.crown_overhang);
  if (2 * s.overhang < s.filed_extra) {
    throw BadSettings("overhang", "Two overhangs are less than the least that filed ends stand out.",
                      fmt::format("At least {:.10g} mm would do.", s.filed_extra.mm() / 2));
  }
  const Length least_limit = 2 * s.dressing_loss + s.borderline;
  if (s.trim_limit < least_limit) {
    throw BadSettings("trim_limit", "The trim limit is less than dressing both ends takes.",
                      fmt::format("At least {:.10g} mm would do.", least_limit.mm()));
  }
  if (s.crown_overhang <= s.binding_clearance) {
    throw BadSettings("crown_overhang",
                      "A crown may not reach beyond its tang as far as the clearance alone.",
                      fmt::format("More than {:.10g} mm would do.", s.binding_clearance.mm()));
  }
}

void check_binding(const Board& board, const FitSettings& s) {
  if (!board.binding) return;
  double steepest = 1;
  for (int n = board.zero_fret ? 0 : 1; n <= board.slots; ++n)
    steepest = std::max(steepest, askew(board, n));
  const Length reach = units::from_mm((*board.binding + s.binding_clearance).mm() * steepest);
  if (reach <= s.crown_overhang) return;
  const double most = s.crown_overhang.mm() / steepest - s.binding_clearance.mm();
  throw BadBoard(
      "binding",
      fmt::format("Over a binding of {:.10g} mm and {:.10g} mm of clearance the crown would reach {:.10g} mm "
                  "beyond its tang, more than {:.10g} mm.",
                  board.binding->mm(), s.binding_clearance.mm(), reach.mm(), s.crown_overhang.mm()),
      most > 0
          ? fmt::format("A binding up to {:.10g} mm would do; or set crown_overhang for crowns that bear it.",
                        most)
          : std::string("On slots that lean so far no binding would do; set crown_overhang for crowns that "
                        "bear it."));
}

Need need(Length arc, EndStyle style, const FitSettings& s) {
  if (style == EndStyle::filed) {
    const Length long_enough = arc + 2 * s.overhang;
    return {style, arc, arc + s.filed_extra, long_enough, std::nullopt, long_enough};
  }
  const Length target = arc - 2 * s.setback;
  return {style, arc, target - 2 * s.gap, target, arc, target + 2 * s.dressing_loss};
}

namespace {

Need need_of_slot(const Board& board, int n, Length arc, const FitSettings& s) {
  Need out = need(arc, board.ends, s);
  if (board.binding) {
    const double off = (*board.binding + s.binding_clearance).mm() * askew(board, n);
    out.tang = std::max(Length{}, arc - 2 * units::from_mm(off));
  }
  return out;
}

} // namespace

Need need(const Board& board, int n, const FitSettings& s) {
  return need_of_slot(board, n, arc_length(board, n), s);
}

Need need(const Board& board, const Slot& slot, const FitSettings& s) {
  return need_of_slot(board, slot.n, slot.arc, s);
}

Length shortest_raw(const Need& need, const FitSettings& settings) {
  return need.style == EndStyle::rounded ? need.least + 2 * settings.dressing_loss : need.least;
}

Length arc_of_chord(Length chord, Length bend_radius) {
  if (chord <= Length{} || bend_radius <= Length{} || chord.nm / 2 > bend_radius.nm) {
    throw BadBoard("radius",
                   fmt::format("A piece bent to {:.10g} mm cannot measure {:.10g} mm across its ends.",
                               bend_radius.mm(), chord.mm()),
                   "A chord over 0 and up to twice the bend radius would do.");
  }
  const double radius = bend_radius.mm();
  return units::from_mm(2.0 * radius * std::asin(std::min(1.0, chord.mm() / (2.0 * radius))));
}

} // namespace nutward::board
