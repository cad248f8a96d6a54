// What the client's exit codes mean, for scripts.
#pragma once

namespace nutward::cli {

enum Exit : int {
  answered = 0,
  no = 1,           // refused, unclear, nothing fits, or the request was wrong
  usage = 2,        // the command line was wrong; nothing was asked
  unreachable = 69, // no daemon answers
  try_again = 75,   // too busy, too late, out of room
  not_allowed = 77, // not let in, or not by the role
};

} // namespace nutward::cli
