// A sentence that is no phrase, by the frames: the row whose frame it is laid out over nearest. A question
// may leave over some words that its frame does not know. A command leaves none: with one strange word it is
// only offered, and where another command is as near, or the sentence had mistakes and another is near, it is
// asked.
#include "talk/frame.hpp"
#include "talk/understand.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace nutward::talk {

using What = Understood::What;

struct Found {
  const Frame* frame = nullptr;
  Laid laid;
  double share = 1; // how likely its row is
  int cost = 0;     // of the layout, with what is missing and how unlikely the row is
  int missing = 0;  // see below
  bool sure = true; // a command that may be done without asking
};

struct FramesLaid {
  Mood mood{};
  double nothing = 0; // how likely it is that nothing is asked or ordered
  std::vector<Found> found;
};

namespace {

bool closer(const Found& a, const Found& b) {
  return std::pair(a.cost, -a.laid.match.literals) < std::pair(b.cost, -b.laid.match.literals);
}

// The frames that are tried, each with how likely its row is: of the likeliest rows; all where nothing was
// learnt. And how likely it is that nothing is asked or ordered.
struct Candidates {
  std::vector<std::pair<const Frame*, double>> frames;
  double nothing = 0;
};

Candidates candidates(const Reader& in, const Surroundings& at, Mood mood) {
  Candidates out;
  constexpr std::size_t most = 4;
  const auto ranked = at.book.evidence().rank(in, 0, in.size());
  // Of what may be meant at all: what sounds like a question is no order.
  const auto may_be = [&](const Likely& l) {
    return l.row == nullptr ? mood == Mood::order : mood == Mood::order || !at.book.is_command(*l.row);
  };
  double all = 0;
  for (const Likely& l : ranked)
    all += may_be(l) ? l.share : 0;
  std::size_t rows = 0;
  for (const Likely& l : ranked) {
    if (!may_be(l)) continue;
    const double share = l.share / all;
    if (l.row == nullptr) out.nothing = share;
    if (l.row == nullptr || share < 0.05 || rows == most) continue;
    ++rows;
    for (const Frame* frame : at.book.frames_of(*l.row))
      out.frames.emplace_back(frame, share);
  }
  if (ranked.empty())
    for (const Frame& frame : at.book.frames())
      out.frames.emplace_back(&frame, 1);
  return out;
}

// In the coin of frame.cpp's costs: half as likely is about three more.
int unlikely(double share) {
  return static_cast<int>(std::lround(-4 * std::log(std::max(share, 0.001))));
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
  // What a fret measures may be said in two ways, and must be in one.
  if (row.name == "all-right" &&
      std::none_of(found.laid.match.args.begin(), found.laid.match.args.end(), [&](const auto& a) {
        const std::string_view name = row.takes[static_cast<std::size_t>(a.first)].name;
        return name == "length" || name == "short_by";
      }))
    out += 8;
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
  static constexpr std::array<std::string_view, 8> things{"nothing", "anything", "something", "everything",
                                                          "morning", "evening",  "string",    "spring"};
  if (std::find(things.begin(), things.end(), t.word) != things.end()) return false;
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

namespace {

struct Choice {
  std::optional<Found> question, strange;
  std::vector<Found> commands;
};

// "Pressing job 12": that goes on, and is no report of what was done.
bool in_hand(const Found& found, const Reader& in) {
  const std::string_view row = found.frame->phrase.row->name;
  std::size_t i = 0;
  while (i < in.size() && (is_filler(in.s.tokens[i]) || in.any(i, {"i", "we", "am", "are", "now", "still"})))
    ++i;
  if (in.any(i, {"spring", "nothing", "stocktaking"})) return false;
  return i < in.size() && in.s.tokens[i].word.ends_with("ing") && row != "start" && row != "stop" &&
         row != "day-off";
}

// A word says it: of an order, one that its own frames must have, or one that was heard with hardly anything
// else. What names a thing to be, or says nothing, does not.
bool says_it(const Found& found, const Reader& in) {
  const shop::Row& row = *found.frame->phrase.row;
  const bool order = found.frame->phrase.command;
  for (std::size_t i = 0; i < in.size(); ++i) {
    const Token& t = in.s.tokens[i];
    if (t.kind != Token::Kind::word || t.is_number() || is_filler(t) || is_unit_word(t.word) ||
        says_nothing(t, false) || in.any(i, {"new", "called", "call", "named", "name"}))
      continue;
    const bool key = std::any_of(in.near[i].begin(), in.near[i].end(), [&](const Near& n) {
      const auto id = static_cast<std::size_t>(n.id);
      return n.distance == 0 && id < found.frame->key.size() && found.frame->key[id];
    });
    const Evidence& heard = *found.frame->evidence;
    if (key || (order ? heard.tells_alone(t.word, row, 80) : heard.tells(t.word, row))) return true;
  }
  return false;
}

// "Press job at 2000 lb", "1 is 54.1 mm wide at slot": the number is missing.
bool breaks_off(const Reader& in) {
  for (std::size_t i = 0; i < in.size(); ++i) {
    if (!in.any(i, {"job", "slot", "piece"})) continue;
    const bool told = i > 0 && in.any(i - 1, {"the", "this", "that",  "same",  "my",       "our",   "her",
                                              "his", "its",  "whole", "a",     "an",       "each",  "every",
                                              "new", "next", "last",  "any",   "no",       "which", "what",
                                              "old", "one",  "other", "whose", "whoever's"});
    if (!told && !(i > 0 && in.s.tokens[i - 1].ordinal) &&
        (i + 1 == in.size() || in.any(i + 1, {"at", "to", "of", "for", "on"})))
      return true;
  }
  return false;
}

// "Press …" asks how: the name of a question heads no report.
bool asks_by_name(const Reader& in, const Phrasebook& book) {
  std::size_t i = 0;
  while (i < in.size() && is_filler(in.s.tokens[i]))
    ++i;
  if (i > 0 && in.is(i - 1, "the")) return false; // "the press works again"
  // "Job 1 cradled", "slots 3 and 4 are full of glue": of a thing that is called so.
  if (in.any(i, {"job", "slots"}) && in.at(i + 1) != nullptr && in.at(i + 1)->is_number()) return false;
  const shop::Row* row = i < in.size() ? book.row(in.s.tokens[i].word) : nullptr;
  return row != nullptr && !book.is_command(*row);
}

// Whether a question may be answered that leaves words over, or whose frame is but the words heard with its
// row.
bool may_answer(const Found& found, const Reader& in, bool strict) {
  const Laid& laid = found.laid;
  if (strict && laid.unknown > 0) return false;
  if (!found.frame->wide) return laid.unknown == 0 || (found.share >= 0.1 && enough_known(laid, in));
  if (in.is(0, "same")) return false; // it goes on from something
  if (laid.tied || found.share < (laid.unknown == 0 ? 0.12 : 0.45)) return false;
  if (laid.unknown > 0 && found.missing >= 8) return false;
  if (!says_it(found, in) && (laid.unknown > 0 || found.share < 0.4 || laid.match.args.empty())) return false;
  return laid.unknown == 0 || enough_known(laid, in);
}

// A command is done only if its row is likely, it is unlikely that nothing was ordered, and a word says it:
// of "the 52.4" alone one thing is likelier than another, but nothing is ordered.
bool may_do(const Found& found, double nothing, const Reader& in, const Phrasebook& book) {
  if (in.is(0, "same")) return false;
  if (nothing > 0.25 || breaks_off(in)) return false;
  if (!found.frame->wide) return found.share >= 0.3;
  return !in_hand(found, in) && !asks_by_name(in, book) &&
         found.share >= (found.laid.match.distance > 0 ? 0.8 : 0.6) &&
         (says_it(found, in) || (found.share > 0.93 && found.missing < 8 && !found.laid.match.args.empty() &&
                                 found.laid.cost < -3));
}

// What is wrong with the sentence is known, and said.
bool told_wrong(const Reader& in) {
  return in.trouble.set() || in.name_to > in.name_from;
}

// What `choose` chooses from.
std::shared_ptr<const FramesLaid> laid_out(const Reader& in, const Surroundings& at, Mood mood,
                                           Spelling spelling) {
  // Where every word is known, none has a mistake.
  auto& kept = in.laid[spelling == Spelling::mistyped && in.has_strange() ? 1 : 0];
  if (kept && kept->mood == mood) return kept;
  auto out = std::make_shared<FramesLaid>();
  const Candidates all = candidates(in, at, mood);
  out->mood = mood, out->nothing = all.nothing;
  for (const auto& [frame, share] : all.frames) {
    const bool orders = frame->phrase.command;
    if (orders && mood != Mood::order) continue;
    // The wide frame is for what the row's own frames leave over.
    const shop::Row* row = frame->phrase.row;
    const bool enough = frame->wide && !out->found.empty() &&
                        std::any_of(out->found.begin(), out->found.end(), [&](const Found& f) {
                          return f.frame->phrase.row == row && f.laid.unknown == 0 && !f.laid.tied;
                        });
    if (enough) continue;
    auto laid = lay(*frame, 0, in.size(), spelling, in);
    if (!laid) continue;
    Found found{frame, std::move(*laid), share};
    found.missing = missing(found, at);
    found.cost = found.laid.cost + found.missing + unlikely(share) + (frame->wide ? 3 : 0) +
                 (!orders && mood == Mood::order ? 2 : 0);
    out->found.push_back(std::move(found));
  }
  return kept = std::move(out);
}

// An order that leaves a number over is not even offered: what it is of would be another thing.
bool leaves_number(const Found& found, const Reader& in) {
  const auto& strange = found.laid.strange;
  return std::any_of(strange.begin(), strange.end(),
                     [&](std::size_t k) { return in.s.tokens[k].is_number(); });
}

Choice choose(const Reader& in, const Surroundings& at, Mood mood, Spelling spelling, Leniency leniency) {
  Choice out;
  const auto all = laid_out(in, at, mood, spelling);
  const bool any_order = std::any_of(all->found.begin(), all->found.end(),
                                     [](const Found& f) { return f.frame->phrase.command; });
  const std::vector<Verb> verbs = any_order ? verbs_of(in, at) : std::vector<Verb>{};
  const bool strict = leniency == Leniency::none || mood == Mood::order;
  for (const Found& one : all->found) {
    if (one.laid.turned) continue;
    if (!one.frame->phrase.command) {
      const Match& m = one.laid.match;
      const int sure = m.literals - m.distance + static_cast<int>(m.args.size());
      if (mood == Mood::order && m.distance > 0 && sure < 2)
        continue; // "the lathe is down" is not about being late
      if (mood == Mood::order && one.frame->wide && in_hand(one, in)) continue;
      if (may_answer(one, in, strict) && (!out.question || closer(one, *out.question))) out.question = one;
    } else if (one.laid.unknown == 0 && !one.laid.tied && one.share > 0.05 &&
               !says_more(*one.frame, verbs, in)) {
      out.commands.push_back(one);
      out.commands.back().sure = may_do(one, all->nothing, in, at.book);
    } else if (one.laid.unknown <= 1 && one.share > 0.35 && one.frame->phrase.row->name != "undo" &&
               !leaves_number(one, in) && !in.is(0, "same") && !(one.frame->wide && told_wrong(in)) &&
               (!out.strange || closer(one, *out.strange))) {
      out.strange = one;
    }
  }
  std::stable_sort(out.commands.begin(), out.commands.end(), closer);
  // "Uid 1001 i Ines": another order is as likely but for a word, which may be mistyped or a name.
  if (!out.commands.empty() && out.commands.front().frame->wide && out.commands.front().share < 0.85) {
    Found& first = out.commands.front();
    const bool other = std::any_of(all->found.begin(), all->found.end(), [&](const Found& f) {
      return f.frame->phrase.command && f.frame->phrase.row != first.frame->phrase.row &&
             f.laid.unknown == 1 && f.share > 0.1;
    });
    first.sure = first.sure && !other;
  }
  return out;
}

// "Define bar oak, 90 mm by 80 mm, and drop the short one": a clause that by itself says another thing, which
// one order would hide.
bool says_another(const Found& command, const Reader& in, const Surroundings& at) {
  const shop::Row* own = command.frame->phrase.row;
  std::size_t from = 0;
  bool parted = false;
  for (std::size_t i = 0; i <= in.size(); ++i) {
    const bool cut = i == in.size() || in.any(i, {"and", "then", ";", ",", ".", "but", "so", "because"});
    if (!cut) continue;
    parted = parted || i < in.size();
    std::size_t words = 0;
    for (std::size_t k = from; k < i; ++k) {
      const bool passed = std::binary_search(command.laid.passed.begin(), command.laid.passed.end(), k);
      words += passed && in.s.tokens[k].kind == Token::Kind::word && !is_filler(in.s.tokens[k]) ? 1 : 0;
    }
    if (parted && words >= 1) {
      const auto ranked = at.book.evidence().rank(in, from, i);
      const auto mine =
          std::find_if(ranked.begin(), ranked.end(), [&](const Likely& l) { return l.row == own; });
      if (!ranked.empty() && ranked.front().row != nullptr && ranked.front().row != own &&
          ranked.front().share > (words > 1 ? 0.65 : 0.85) &&
          (mine == ranked.end() || mine->share < (words > 1 ? 0.1 : 0.03)))
        return true;
    }
    from = i + 1;
  }
  return false;
}

// "Free up what is set aside for job 8" sets nothing aside: a word of the opposite order, or a day's two
// parts where one is taken.
bool says_opposite(const Found& command, const Reader& in) {
  const std::string_view row = command.frame->phrase.row->name;
  const auto said = [&](std::initializer_list<std::string_view> words) {
    for (std::size_t i = 0; i < in.size(); ++i)
      if (std::find(words.begin(), words.end(), in.s.tokens[i].word) != words.end()) return true;
    return false;
  };
  if (row == "set-aside" || row == "hold") return said({"free", "loose", "release", "unhold"});
  if (row == "map-uid") return said({"cut", "unlink", "unmap", "remove", "off", "longer"});
  if (row.starts_with("define-") || row.starts_with("new-") || row == "add-receiver")
    return said({"drop", "remove", "delete", "forget", "retire"});
  // "The 52 of medium" is one.
  if (row == "scrap-several" || row == "use-several") {
    const auto& args = command.laid.match.args;
    const bool list = std::any_of(args.begin(), args.end(), [&](const auto& a) {
      return command.frame->phrase.row->takes[static_cast<std::size_t>(a.first)].many;
    });
    return !list && !said({"pieces",  "frets", "all",      "both",     "every",  "everything", "bits",
                           "several", "those", "these",    "offcuts",  "ends",   "ones",       "lot",
                           "whole",   "any",   "whatever", "anything", "shorts", "leftovers"});
  }
  if (row == "close-day") return said({"morning"}) && said({"afternoon", "evening"});
  if (row == "own-hours") {
    const auto& args = command.laid.match.args;
    const bool hours = std::any_of(args.begin(), args.end(), [&](const auto& a) {
      return command.frame->phrase.row->takes[static_cast<std::size_t>(a.first)].name == "hours";
    });
    return !hours && said({"no", "off", "away", "out"});
  }
  return false;
}

// The nearest command, or what is offered instead.
Understood order_of(const std::vector<Found>& commands, const Reader& in, const Surroundings& at) {
  const Found& command = commands.front();
  const int margin = command.frame->wide || command.share < 0.4 ? 5 : command.laid.match.distance > 0 ? 3 : 1;
  std::vector<shop::Call> rivals;
  for (const Found& other : commands) {
    if (other.cost >= command.cost + margin || other.frame->phrase.row == command.frame->phrase.row) continue;
    Understood one = decide({other.laid.match}, at);
    if (one.what == What::order) rivals.push_back(one.calls.front());
  }
  Understood out = decide({command.laid.match}, at);
  if (out.what == What::order && command.laid.match.distance > 1)
    return offer(
        "Nothing was done yet: several words of that are none that I know. Pick 1, or say yes, if this is "
        "meant.",
        out.calls, at);
  if (out.what == What::order && rivals.empty() &&
      (!command.sure || says_opposite(command, in) || says_another(command, in, at)))
    return offer(
        "Nothing was done yet: that may say something else as well. Pick 1, or say yes, if this is meant.",
        out.calls, at);
  if (rivals.empty() || out.what != What::order) return out;
  rivals.insert(rivals.begin(), out.calls.front());
  return offer("That can be taken in more than one way. Pick one by its number, or say it more plainly.",
               rivals, at);
}

} // namespace

std::optional<Understood> by_frames(const Reader& in, const Surroundings& at, Mood mood, Spelling spelling,
                                    Leniency leniency) {
  if (mood == Mood::negated) return std::nullopt;
  if (mood == Mood::order && asks_behind(in)) mood = Mood::question;
  const Blame kept(in);
  const Choice found = choose(in, at, mood, spelling, leniency);
  const bool offers = leniency == Leniency::offers;
  if (!found.commands.empty() &&
      (found.commands.front().sure || (offers && !told_wrong(in) && found.commands.front().missing < 8)) &&
      (!found.question || found.commands.front().cost <= found.question->cost))
    return order_of(found.commands, in, at);
  if (found.question && (!offers || !found.strange || found.question->cost <= found.strange->cost))
    return decide({found.question->laid.match}, at);
  if (!found.strange || !offers) return std::nullopt;
  const Found& strange = *found.strange;
  Understood one = decide({strange.laid.match}, at);
  if (one.what != What::order) return std::nullopt;
  if (strange.laid.strange.empty())
    return offer(
        "Nothing was done yet: that may say something else as well. Pick 1, or say yes, if this alone is "
        "meant.",
        one.calls, at);
  return offer(
      fmt::format("Nothing was done yet: I do not know what {} means there. Pick 1, or say yes, if this is "
                  "meant.",
                  strange_words(strange.laid.strange, in)),
      one.calls, at);
}

} // namespace nutward::talk
