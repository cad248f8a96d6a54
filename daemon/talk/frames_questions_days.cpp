// How days are asked about, alike in every question that has them.
#include "talk/frames_questions.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

std::vector<std::string_view> with_days(DaysTaken taken, std::initializer_list<std::string_view> items) {
  std::vector<std::string_view> out(items);
  out.emplace_back("{day}|(on|for|of) {day}");
  if (taken.last)
    out.emplace_back(
        "[from] {day} [up] (to|until|till|through|-) [and including] {last}|between {day} and {last}|"
        "[from] {day} and {last}");
  if (taken.part) {
    out.emplace_back("{day} [in] [the] {part}|[in|on] [the] {part} (of|on) {day}|this {part}|[in|for] the "
                     "{part}|{day} ({part=morning} (before (noon|lunch)|first thing)|{part=afternoon} after "
                     "(noon|lunch))|{part=evening} tonight");
  }
  if (taken.week) {
    out.emplace_back(
        "{week=this} [in|for|over|during] [the|what is left of|what remains of] [rest|remainder] "
        "[of] (this|the|this whole|the whole|the current|this week's|the week's) week|{week=this} "
        "(this week's|the week's|within the week)");
    out.emplace_back(
        "{week=next} [in|for|over|on|during|within] [the] [whole|entire|full] "
        "(next|coming|following) [whole] week|{week=next} [the] week after [this [one]]|{week=next} "
        "next week's");
  }
  if (taken.days) {
    out.emplace_back("[in|for|over|within|during] [the] [next|coming|following] {days} (days|day) [ahead]");
    out.emplace_back(
        "{days=14} [in|for|over|within|during] [the|a|these] [next|coming|following] (two "
        "weeks|fortnight)|{days=21} [in|for|over|within] [the] [next|coming|following] three "
        "weeks|{days=28} [in|for|over|within] [the] [next|coming|following] four weeks|{days=30} "
        "[in|for|over|within] (a|the|one) [next|coming|following] month|{days=30} next month");
  }
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
