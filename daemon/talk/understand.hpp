// From a sentence to what is to be done with it. Pure: it reads the phrases, the names, the conversation and
// the time it is given, and changes none of them.
#pragma once

#include "talk/match.hpp"
#include "talk/memory.hpp"
#include "talk/phrasebook.hpp"

namespace nutward::talk {

struct Understood {
  enum class What { ask, order, tell };
  What what = What::tell;
  std::vector<shop::Call> calls;       // ask: one after the other; order: all or nothing
  std::vector<shop::Call> then;        // order: the questions that are answered once it is done
  std::vector<shop::Touched> expects;  // of a choice that was picked
  std::vector<shop::Choice> leaves;    // order: what was offered beside it and may be picked once it is done
  bool confirmed = false;              // the person has said yes
  std::string unit;                    // ask: lengths in this unit, "" in the conversation's
  std::optional<std::string> talks_in; // the conversation's from now on, "": the shop's
  std::vector<std::string> notes;      // what was taken from the conversation: "job 12, as before"
  shop::Answer tell;                   // "unclear" or "refused", or the reasons that were asked for
  std::optional<Pending> pending;      // with tell: what was asked back
  bool clauses = false;                // of several: each part said what it is by itself
  bool opposed = false;                // with tell: of several two say the same in two ways
  bool missed = false;                 // with tell: nothing was understood
  bool keeps = false;                  // with tell: the choices that were offered before still hold
  std::optional<shop::Call> tried;     // with tell: what came to nothing
  // with tell: the figures behind what was asked or done, and what came of it, are wanted besides ("why")
  std::optional<std::pair<shop::Call, shop::Answer>> explains;
};

struct Surroundings {
  const Phrasebook& book;
  const Names& names;
  const State& state;
  units::Instant now;
  bool within = false; // what is lacking was said before in the same sentence: a command takes it too
  bool inner =
      false; // part of a sentence: what a whole one may be beside ("how do I …", "… in inches") it is not
};

Understood understand(const Sentence& sentence, const Surroundings& in);

// Its parts, one file each.

// Whether a sentence may do something at all.
enum class Mood { order, question, negated };
Mood mood_of(const Reader& in);
// A later clause asks: "fret 8 measures 54.6 mm, will it do".
bool asks_behind(const Reader& in);

// "1", "the second one" of what is offered, "yes", "no", "why", "in inches", "undo".
std::optional<Understood> act(const Reader& in, const Surroundings& at);
// "The second one", "use the third one", "number 13": of the list that was shown last.
std::optional<Understood> of_a_table(const Reader& in, const Surroundings& at);
// "inches", "sixty-fourths", "mm": the unit as the setting has it; "" for what is none. In lower case, blanks
// for '-'.
std::string length_unit_called(std::string_view words);
// "in inches please", "mm again", "fractions from now on"; "in inches" is the last answer alone.
std::optional<Understood> in_unit(const Reader& in, const Surroundings& at);
// "why": the reasons of the last answer; "how": the step that comes next.
Understood why(const Surroundings& at);
Understood how(const Surroundings& at);
// "how do I add an offcut", "how do I tell you that a fret is lost": help on the row that the rest of it is
// about.
std::optional<Understood> how_to(const Reader& in, const Surroundings& at, bool surely);
// "and slot 4?", "same for job 9"; with `bare` also "slot 4?"; "no, 13".
std::optional<Understood> follow_up(const Reader& in, const Surroundings& at, bool bare);
std::optional<Understood> correction(const Reader& in, const Surroundings& at);
// The answer to a question that was asked back. Where any words would do (`anything`), other sentences come
// first.
std::optional<Understood> fill_pending(const Reader& in, const Surroundings& at, bool anything);
// The last call with what was said put in its place; nullopt where the words are not just that.
std::optional<shop::Call> replaced(const shop::Call& last, std::size_t from, std::size_t to, const Reader& in,
                                   const Surroundings& at, bool& carried_piece);
// Several commands in one sentence, all or nothing. Where it falls apart into calls of which one is not said
// completely, they are offered.
std::optional<Understood> several(const Sentence& sentence, const Surroundings& at);
// The same, where each part says by itself what is ordered.
std::optional<Understood> clauses(const Sentence& sentence, const Surroundings& at);
// A sentence that is no phrase, by what its row is known by (talk/frame.hpp). How much it may leave over:
// nothing; a question some words; or besides, a command with one strange word is offered.
enum class Leniency { none, questions, offers };
std::optional<Understood> by_frames(const Reader& in, const Surroundings& at, Mood mood, Spelling spelling,
                                    Leniency leniency);
// What is asked about an order, or a load, that took but a part of what was said: "pressed frets 12 and up".
std::optional<Understood> not_all_of_it(const Understood& out, const Reader& in, const Surroundings& at);
// A call's days and times, as they were said of one another. `match`: what it was made of.
void settle(const Match& match, shop::Call& call, const Surroundings& at);
// "I was off for two days, so what is due": the question at the end alone, where what leads up to it says
// nothing that it needs; as a phrase has it, or in any way.
std::optional<Understood> behind_preamble(const Reader& in, const Surroundings& at, bool as_phrase);
// "How much medium have we got and when does it run out": two questions, each said by a phrase.
std::optional<Understood> two_questions(const Reader& in, const Surroundings& at);
// One row out of the matches, which must not be empty; asks back where two are equally near.
Understood decide(std::vector<Match> matches, const Surroundings& at);
// A call that lacks `param`.
Understood ask_back(std::vector<shop::Call> calls, std::size_t which, const shop::Param& param, bool command,
                    const Surroundings& at);
// What a sentence is answered whose only fault is a name that nothing has; nullopt where `match` has no such
// name.
std::optional<Understood> unknown_name(const Match& match, const Surroundings& at);
Understood not_understood(const Reader& in, const Surroundings& at);
Understood not_ordered(Mood mood, const Match& match, const Surroundings& at);

Understood tell(std::string kind, std::string text);
Understood offer(std::string text, const std::vector<shop::Call>& calls, const Surroundings& at);
// The conversation's thing for a parameter: by its name or by its kind. nullptr where it has none.
const shop::Value* from_about(const shop::Param& param, const shop::Call& about);
std::string as_before(const shop::Param& param, const shop::Value& value, const Names& names);

} // namespace nutward::talk
