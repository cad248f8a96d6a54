// What a sentence comes to when it is laid out over the frames of a row, and how sure that is. Only for
// talk/frames.cpp and talk/frames_sure.cpp.
#pragma once

#include "talk/frame.hpp"
#include "talk/understand.hpp"

#include <vector>

namespace nutward::talk {

struct Found {
  const Frame* frame = nullptr;
  Laid laid;
  double share = 1; // how likely its row is
  int cost = 0;     // of the layout, with what is missing and how unlikely the row is
  int missing = 0;  // see below
  bool sure = true; // a command that may be done without asking
};

// A verb at the head of a clause, and the commands whose phrases begin with it.
struct Verb {
  int id = 0;
  std::vector<const shop::Row*> rows;
};

std::vector<Verb> verbs_of(const Reader& in, const Surroundings& at);
// "…, starting on its slots": a verb that only other commands begin with and the frame does not know. An
// order known by key words is not done for it alone.
bool says_more(const Frame& frame, const std::vector<Verb>& verbs, const Reader& in);
// "Pressing job 12": that goes on, and is no report of what was done.
bool in_hand(const Found& found, const Reader& in);
// Whether a question may be answered that leaves words over, or whose frame is but the words heard with its
// row.
bool may_answer(const Found& found, const Reader& in, bool strict);
// A command is done only if its row is likely, it is unlikely that nothing was ordered (`nothing`: how likely
// that is), and a word says it or all that is said is taken by its parameters: of "the 52.4" alone one thing
// is likelier than another, but nothing is ordered.
bool may_do(const Found& found, double nothing, const Reader& in, const Phrasebook& book);
// Where a clause with a subject of its own may begin behind: "and", "then", "also", ";".
bool is_joint(std::size_t i, const Reader& in);
// Of a row that is as good as sure.
inline constexpr double sure_share = 0.93;
// Whether what an order of such a row leaves over are but remarks: "I crawled under with a torch, and the
// bass has its back in the cradle". All that the order needs is said, and the words count, name, date, turn,
// wish and doubt nothing, head neither the sentence nor a clause of their own, are near no word that is
// known, and the row takes no free text that they might be.
bool only_remarks(const Found& found, const Reader& in);
// What speaks against the one order (talk/frames_against.cpp): a clause that was passed over and says another
// thing, a word of the opposite order, or that it is of another time, thing or person.
bool hides_another(const Found& command, const Reader& in, const Surroundings& at);

} // namespace nutward::talk
