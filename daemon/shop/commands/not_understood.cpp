// Forgetting the sentences that nobody understood.
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

Effect forget(const Args&, const Moment&, Tx& tx) {
  const std::int64_t there = tx.backroom().forget_misses();
  Effect out;
  out.answer.text = there == 0
                        ? "There was no sentence to forget."
                        : fmt::format("Forgot {} that nobody had understood.", plural(there, "sentence"));
  out.answer.reason =
      "They are deleted; no undo brings them back. 'set keep_not_understood to no' keeps no more.";
  out.answer.data = record({{"forgotten", there}});
  return out;
}

std::string for_good(const Args&, const Moment&, const View& view) {
  const std::int64_t there = view.misses().count();
  return there == 0 ? ""
                    : fmt::format("That deletes {} for good: no undo brings {} back.",
                                  plural(there, "sentence"), there == 1 ? "it" : "them");
}

} // namespace

extern const Command forget_not_understood_row;
const Command forget_not_understood_row{
    {"forget-not-understood",
     "Deletes all sentences that nobody understood, for good.",
     {},
     {"(forget|delete|clear) (what|all that|everything that) (was not understood|you did not "
      "understand|nobody understood)",
      "(forget|delete|clear) [all] [the] sentences [that were] not understood",
      "(forget|delete|clear) [all] [the] sentences that (nobody understood|you did not understand)"},
     {"forget what was not understood", "delete the sentences that nobody understood"},
     Role::lead,
     {{"forgotten", Kind::count, "how many there were"}}},
    &forget,
    &for_good,
    true};

} // namespace nutward::shop::command_rows
