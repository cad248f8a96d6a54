// One request to the daemon, and its answer. No HTTP type is visible.
#pragma once

#include "cli/where.hpp"

#include <stdexcept>
#include <string>

namespace nutward::cli {

struct Posted {
  int status = 0;
  std::string body;
  std::string type{}; // its media type as sent, without parameters
};

// Why there is no answer. `what()` is the system's word for it, for the end of a sentence.
struct NoAnswer : std::runtime_error {
  enum Why {
    nobody,    // no daemon listens there: nothing was sent
    forbidden, // the socket may not be opened: nothing was sent
    busy,      // too many wait to connect: nothing was sent
    late,      // it did not answer in time: may have been done
    lost,      // the connection broke: may have been done
    garbled,   // what came is not HTTP: may have been done
    given_up,  // Ctrl-C while an Interruptible lives (interrupt.hpp): may have been done
  };
  NoAnswer(Why why_, const std::string& what) : std::runtime_error(what), why(why_) {}
  Why why;
};

// Sends `json` to `target` with the key as a quoted string, and waits up to 30 s for each part of the answer.
// With `picture`
// only an SVG is accepted for an answer. Throws NoAnswer. An answer over 8 MiB is `garbled`.
Posted post(const Where& where, const std::string& target, const std::string& json, const std::string& key,
            bool picture = false);

// Asks for `target`, waiting at most 2 s for each part of the answer. Throws NoAnswer.
Posted get(const Where& where, const std::string& target);

// Whether somebody takes connections there. Sends nothing.
bool listens(const Where& where);

} // namespace nutward::cli
