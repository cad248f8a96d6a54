// A reading as it is reported: out of a call's arguments what the bench's code wants, and an error of that as
// the shop's own.
#pragma once

#include "shop/levelling.hpp"
#include "shop/rows.hpp"

#include <optional>
#include <string>
#include <utility>

namespace nutward::shop {

// Runs what may throw level::BadReading, and throws it as Problem{value} at the row's parameter.
[[noreturn]] void refuse_reading(const level::BadReading& bad, const Args& args);
template <class Run>
auto telling_of_reading(const Args& args, Run run) {
  try {
    return run();
  } catch (const level::BadReading& bad) {
    refuse_reading(bad, args);
  }
}

std::optional<level::Line> line_of(const Args& args); // the parameter `line`

// What was said, without what it leaves out. Throws Problem{value} where a span has one end only, or nothing
// says whether the edge rocks.
level::Said said_in(const Args& args);

// A new reading of a job; or, where the call names an earlier one (`reading`), that one with what the call
// tells more: on which line it was, what it rocks on, where a feeler goes under the edge. With the edge held
// on the other end than before it is a reading of its own (id 0). Throws Problem where a fret of the earlier
// one was touched since.
Reading reading_in(const Args& args, const Job& job, const View& view, Instant when);

// " The middle line, since none was said; over 8-10, since no span was."; "" where all was said.
std::string assumed_words(const Reading& reading);

} // namespace nutward::shop
