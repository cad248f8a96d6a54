// The frames of the questions, in parts; see talk/frame.hpp.
#pragma once

#include "talk/frame.hpp"

#include <initializer_list>

namespace nutward::talk {

std::vector<FrameText> frames_of_work();   // jobs, what falls due, stages, promises, the wire for a job
std::vector<FrameText> frames_of_safety(); // work that can hurt
std::vector<FrameText> frames_of_people(); // the agenda, machines, hours, what was done, help

// Items, and besides them all the ways of saying which days a row is asked about, of those that it takes.
struct DaysTaken {
  bool last = true, part = true, week = true, days = true;
};
std::vector<std::string_view> with_days(DaysTaken taken, std::initializer_list<std::string_view> items);

} // namespace nutward::talk
