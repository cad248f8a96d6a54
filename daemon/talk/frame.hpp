// Frames: what a row is known by when nobody says it as a phrase has it: key words, and parameters, wherever
// they stand. A frame is a list of items, each a pattern as in talk/pattern.hpp:
//
//   "+(bin|scrap|chuck)"   must be there; where it is but words, they may also be part of another item
//   "{slot}"               may be there, anywhere
//   "!at"                  takes nothing by this parameter, though others may stand anywhere: things, and
//                          when; nor in the wide frame, but where an item or its own name says so
//   "~{why}"               may stand at the end, behind a comma or dash
//
// A sentence is laid out over the items, each parameter at most once. What is left over are words that say
// nothing ("please", "the"), or words that the frame does not know. A question may leave some of those over,
// a command none but remarks: see talk/frames.cpp.
#pragma once

#include "talk/match.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace nutward::talk {

struct FrameText {
  std::string_view row;
  std::vector<std::string_view> items;
};

struct Item {
  Phrase phrase;
  bool needed = false, tail = false;
  bool words = false; // needed, and but words
  bool heads = false; // needed in a frame of its row, though not in this wide one
};

class Evidence;

struct Frame {
  Phrase phrase; // of the row; its steps are those of no pattern
  std::vector<Item> items;
  // A row's wide frame: all items of its frames, none of which must be there, its parameters wherever they
  // speak for themselves, and every word that was heard with it. Which row it is must be known otherwise.
  bool wide = false;
  std::vector<bool> known{}; // wide: by number of the lexicon, the words of its phrases and frames
  std::vector<std::uint64_t>
      valued{};               // wide: of words that stand but in items that take or set parameters, which
  std::vector<bool> option{}; // wide: words of the row's options, which are never passed over in an order
  std::vector<bool> key{};    // wide: words of items that must be there in the row's own frames
  const Evidence* evidence = nullptr;
};

// Throws std::invalid_argument where an item is wrong.
Frame compile(const FrameText& text, const shop::Row& row, bool command, Lexicon& lexicon);
// The wide frame of a row out of the items of its frames and the ways in which its phrases say its
// parameters.
Frame compile_wide(const std::vector<FrameText>& frames, const shop::Row& row, bool command,
                   Lexicon& lexicon);

// A sentence laid out over a frame.
struct Laid {
  Match match;                      // skipped: words that say nothing
  int unknown = 0;                  // words that the frame does not know
  int cost = 0;                     // less is nearer
  int taken = 0;                    // tokens that parameters took, less the parameters: between two as near,
                                    // the one with more of them is nearer
  bool tied = false;                // another way is as near and says something else
  std::vector<std::size_t> strange; // tokens that were unknown
  std::vector<std::size_t> passed;  // tokens of no item: passed over, known or not
  std::vector<std::size_t> bound;   // tokens that parameters were taken from
  bool turned =
      false; // an order with a word that turns it ("anything but"), which is no part of what was taken
};

// The nearest way to lay tokens from..to-1 over the frame; nullopt where something needed is not there.
// `all_needed` false: nothing needs to be there but at least one parameter.
std::optional<Laid> lay(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling,
                        const Reader& in, bool all_needed = true);

// Says nothing about what is wanted, whoever says it: "please", "is", "then".
bool says_nothing(const Token& token, bool command);
const std::vector<std::string_view>& words_of_no_weight();
// What is reported is over once one of these stands in a text that is taken as it is: "not", "if", "maybe".
bool doubts(const Token& token);
// "Want", "going", "think": nothing of the kind is done yet; an order passes over none of these, a reason may
// hold them.
bool wishes(const Token& token);
// Turns what is said into less, into its opposite, or into no more than a thought: "not", "but", "rather".
bool turns(std::size_t i, const Reader& in);
// When something was or is to be ("morning", "friday"): what is left over of that is never passed over.
bool says_when(const Token& token);
// How much or how many ("half", "all", "only"): never passed over in an order.
bool says_how_many(const Token& token);

// The frames of the rows, by kinds of row; one file each.
std::vector<FrameText> frames_of_questions();
std::vector<FrameText> frames_of_wire();   // wire, what is cut and used; with the next two
std::vector<FrameText> frames_of_tin();    // what goes into the tin, is kept and thrown away
std::vector<FrameText> frames_of_orders(); // orders, deliveries, suppliers
std::vector<FrameText> frames_of_board();  // jobs and their boards; with them those of the next three
std::vector<FrameText> frames_of_pressing();
std::vector<FrameText> frames_of_levelling();
std::vector<FrameText> frames_of_stages(); // begun, broken off, finished
std::vector<FrameText> frames_of_house();  // people, machines, hours, settings

} // namespace nutward::talk
