// What the shop's cut plan wants a piece for, where somebody thinks of using it otherwise, and what that
// would cost: asked by `fit`, `place` and `use`.
#pragma once

#include "cutting/price.hpp"
#include "shop/wire_plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

struct Elsewhere {
  std::vector<PlannedFret> wanted; // by the stored plan, in the order of cutting; empty: it leaves the piece
  bool here = false;               // the slot that was asked about is among them
  // Of taking it for that slot; nullopt where it is not reckoned: it is planned so, nothing is wanted
  // elsewhere, no slot was named, or the shop has changed so that the piece or the slot is not in its plan.
  std::optional<cutting::Taking> price;
};

// Of the pieces of one wire, in one snapshot. The wire's problem is gathered when the first price is asked.
class InPlan {
public:
  InPlan(const Wire& wire, const View& view, const Setup& setup) : wire_(wire), view_(view), setup_(setup) {}

  // A price in `steps`: 0 looks at exchanges alone, some milliseconds for a hundred jobs, and may then say
  // too much (Taking::at_most); nullopt: none.
  Elsewhere of(const Piece& piece, std::optional<std::int64_t> job, std::optional<int> slot,
               std::optional<std::int64_t> steps = steps_of_an_answer);

private:
  std::optional<cutting::Taking> price(std::int64_t piece, std::int64_t job, int slot, std::int64_t steps);

  const Wire& wire_;
  const View& view_;
  const Setup& setup_;
  std::optional<bool> any_plan_;
  std::optional<WirePlan> plan_;
};

// "slot 3 of job 9", "slots 3 and 4 of job 9 and slot 1 of job 12".
std::string wanted_for_words(const std::vector<PlannedFret>& wanted);
// "53.40 mm of new wire", "at most one more stick opened", "nothing". Of frets that come to nothing it says
// how many.
std::string price_words(const cutting::Taking& price, const Setup& setup);
// A whole sentence for who is about to take it; "" where the plan leaves the piece.
std::string elsewhere_words(const Elsewhere& at, const Setup& setup);

// `wanted_for`, and `price` where there is one: fields of a piece's record, see gives::wanted_for.
std::vector<std::pair<std::string, Value>> fields_of(const Elsewhere& at);

} // namespace nutward::shop
