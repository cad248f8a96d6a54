// A sentence that is no phrase, by the frames: the row whose frame it is laid out over nearest. A question
// may leave over some words that its frame does not know. A command leaves none: with one strange word it is
// only offered, and where another command is as near, or the sentence had mistakes and another is near, it is
// asked.
#include "talk/frame.hpp"
#include "talk/understand.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::talk {

using What = Understood::What;

namespace {

struct Found {
  const Frame* frame = nullptr;
  Laid laid;
};

bool closer(const Found& a, const Found& b) {
  return std::pair(a.laid.cost, -a.laid.match.literals) < std::pair(b.laid.cost, -b.laid.match.literals);
}

// What is not said, and not known from the conversation either, would have to be asked for.
int missing(const Found& found, const Surroundings& at) {
  int out = 0;
  const shop::Row& row = *found.frame->phrase.row;
  for (std::size_t p = 0; p < row.takes.size(); ++p) {
    const auto& args = found.laid.match.args;
    const bool said =
        std::any_of(args.begin(), args.end(), [&](const auto& a) { return a.first == static_cast<int>(p); });
    if (said || !row.takes[p].required) continue;
    const bool known = from_about(row.takes[p], at.state.about) != nullptr;
    out += known ? 1 : 8;
  }
  return out;
}

// Of the words that weigh anything, most must be known; all of them where a load is answered, since one for
// another fret than was meant crushes a board.
bool enough_known(const Laid& laid, const Reader& in) {
  if (laid.match.phrase->row->name == "press" && laid.unknown > 0) return false;
  const std::size_t words = in.size();
  // How many and when is never passed over.
  for (std::size_t k : laid.strange) {
    if (in.s.tokens[k].is_number() ||
        in.any(k, {"week", "month", "year", "day", "today", "tomorrow", "yesterday"}))
      return false;
  }
  const auto known = static_cast<int>(laid.match.literals + static_cast<int>(laid.match.args.size()));
  return laid.unknown <= known && laid.unknown * 3 <= static_cast<int>(words) + 3;
}

std::string strange_words(const std::vector<std::size_t>& at, const Reader& in) {
  std::string out;
  for (std::size_t k : at)
    out += fmt::format("{}'{}'", out.empty() ? "" : ", ", in.s.said(k, k + 1));
  return out;
}

// What frames try in vain is nobody's fault: what was wrong with the sentence is told by the phrases.
class Blame {
public:
  explicit Blame(const Reader& in) : in_(in), trouble_(in.trouble), from_(in.name_from), to_(in.name_to) {}
  ~Blame() { in_.trouble = trouble_, in_.name_from = from_, in_.name_to = to_; }
  Blame(const Blame&) = delete;
  Blame& operator=(const Blame&) = delete;

private:
  const Reader& in_;
  Trouble trouble_;
  std::size_t from_, to_;
};

// "Starting", "done", "scrap": a word that says what is done, in the form in which it is reported or ordered.
bool is_verb(const Token& t) {
  static constexpr std::array<std::string_view, 12> plain{"done", "bent",  "took", "use",    "hold", "scrap",
                                                          "bin",  "start", "stop", "finish", "add",  "began"};
  return t.kind == Token::Kind::word && (t.word.ends_with("ing") || t.word.ends_with("ed") ||
                                         std::find(plain.begin(), plain.end(), t.word) != plain.end());
}

// Where a clause begins: at the sentence's head or behind a pause, past whoever speaks.
bool heads_clause(std::size_t i, const Reader& in) {
  while (i > 0 &&
         in.any(i - 1, {"i", "i'm", "i've", "we", "we've", "we're", "am", "have", "just", "also", "now"}))
    --i;
  return i == 0 || in.any(i - 1, {",", ";", ":", ".", "-", "and", "then", "but"});
}

// The verbs at the heads of clauses, and the commands whose phrases begin with them.
struct Verb {
  int id = 0;
  std::vector<const shop::Row*> rows;
};

std::vector<Verb> verbs_of(const Reader& in, const Surroundings& at) {
  std::vector<Verb> out;
  for (std::size_t i = 0; i < in.size() && out.size() < 12; ++i) {
    if (!is_verb(in.s.tokens[i]) || !heads_clause(i, in)) continue;
    Verb verb{in.lexicon.find(in.s.tokens[i].word), {}};
    if (verb.id < 0) continue;
    for (const Phrase* phrase : at.book.starting({verb.id}))
      if (phrase->command && std::binary_search(phrase->first.begin(), phrase->first.end(), verb.id))
        verb.rows.push_back(phrase->row);
    if (!verb.rows.empty()) out.push_back(std::move(verb));
  }
  return out;
}

// "…, starting on its slots": a verb that only other commands begin with and the frame does not know. An
// order known by key words is not done for it alone.
bool says_more(const Frame& frame, const std::vector<Verb>& verbs, const Reader& in) {
  if (frame.phrase.row->name == "start") {
    for (std::size_t i = 0; i < in.size(); ++i)
      if (in.any(i, {"done", "finished", "through"})) return true; // "done truing" has ended
  }
  return std::any_of(verbs.begin(), verbs.end(), [&](const Verb& verb) {
    const bool ours = std::find(verb.rows.begin(), verb.rows.end(), frame.phrase.row) != verb.rows.end();
    return !ours && std::none_of(frame.items.begin(), frame.items.end(), [&](const Item& item) {
      return std::binary_search(item.phrase.first.begin(), item.phrase.first.end(), verb.id);
    });
  });
}

} // namespace

std::optional<Understood> by_frames(const Reader& in, const Surroundings& at, Mood mood, Spelling spelling,
                                    Leniency leniency) {
  if (mood == Mood::negated) return std::nullopt;
  const Blame kept(in);
  std::optional<Found> question, command, strange;
  std::vector<Found> commands;
  const std::vector<Verb> verbs = mood == Mood::order ? verbs_of(in, at) : std::vector<Verb>{};
  for (const Frame& frame : at.book.frames()) {
    const bool orders = frame.phrase.command;
    if (orders && mood != Mood::order) continue;
    auto laid = lay(frame, 0, in.size(), spelling, in);
    if (!laid) continue;
    Found found{&frame, std::move(*laid)};
    found.laid.cost += missing(found, at);
    if (!orders && mood == Mood::order) found.laid.cost += 2;
    if (!orders) {
      const bool strict = leniency == Leniency::none || mood == Mood::order;
      const bool known = strict ? found.laid.unknown == 0 : enough_known(found.laid, in);
      const Match& m = found.laid.match;
      const int sure = m.literals - m.distance + static_cast<int>(m.args.size());
      if (mood == Mood::order && m.distance > 0 && sure < 2)
        continue; // "the lathe is down" is not about being late
      if (known && (!question || closer(found, *question))) question = std::move(found);
    } else if (found.laid.unknown == 0 && !says_more(frame, verbs, in)) {
      commands.push_back(std::move(found));
    } else if (found.laid.unknown <= 1 && (!strange || closer(found, *strange))) {
      strange = std::move(found);
    }
  }
  std::stable_sort(commands.begin(), commands.end(), closer);
  if (!commands.empty()) command = commands.front();
  if (command && (!question || command->laid.cost <= question->laid.cost)) {
    const int margin = command->laid.match.distance > 0 ? 3 : 1;
    std::vector<shop::Call> rivals;
    for (const Found& other : commands) {
      if (other.laid.cost >= command->laid.cost + margin || other.frame == command->frame) continue;
      if (other.frame->phrase.row == command->frame->phrase.row) continue;
      Understood one = decide({other.laid.match}, at);
      if (one.what == What::order) rivals.push_back(one.calls.front());
    }
    Understood out = decide({command->laid.match}, at);
    if (out.what == What::order && command->laid.match.distance > 1)
      return offer(
          "Nothing was done yet: several words of that are none that I know. Pick 1, or say yes, if this is "
          "meant.",
          out.calls, at);
    if (rivals.empty() || out.what != What::order) return out;
    rivals.insert(rivals.begin(), out.calls.front());
    return offer("That can be taken in more than one way. Pick one by its number, or say it more plainly.",
                 rivals, at);
  }
  const bool offers = leniency == Leniency::offers;
  if (question && (!offers || !strange || question->laid.cost <= strange->laid.cost))
    return decide({question->laid.match}, at);
  if (!strange || !offers) return std::nullopt;
  Understood one = decide({strange->laid.match}, at);
  if (one.what != What::order) return std::nullopt;
  if (strange->laid.strange.empty())
    return offer("Nothing was done yet: that says more than one thing. Pick 1, or say yes, if this alone is "
                 "meant.",
                 one.calls, at);
  return offer(
      fmt::format("Nothing was done yet: I do not know what {} means there. Pick 1, or say yes, if this is "
                  "meant.",
                  strange_words(strange->laid.strange, in)),
      one.calls, at);
}

} // namespace nutward::talk
