// What stands behind an answer in figures, for "why": the things that it is about as the shop has them, which
// plan wants a piece, and where a report stands in the journal.
#pragma once

#include "shop/answer.hpp"
#include "shop/row.hpp"

#include <string>

namespace nutward::shop {

// Whole sentences, at least one, each with a number. `call`: what was asked or done, or was to be; `answer`:
// what came of it. Things that are not there any more are left out.
std::string figures_of(const Call& call, const Answer& answer, const Moment& moment, const View& view);

} // namespace nutward::shop
