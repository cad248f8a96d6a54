// How sure it is that a laid out sentence means what its frame says: when a question may be answered, when an
// order may be done, and what keeps it from being done.
#include "talk/frames_sure.hpp"

#include "talk/evidence.hpp"

#include <algorithm>
#include <array>

namespace nutward::talk {
namespace {

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

bool is_no_verb(std::string_view word) {
  static constexpr std::array<std::string_view, 9> things{"nothing",    "anything", "something",
                                                          "everything", "morning",  "evening",
                                                          "string",     "spring",   "stocktaking"};
  return std::find(things.begin(), things.end(), word) != things.end();
}

// "Starting", "done", "scrap": a word that says what is done, in the form in which it is reported or ordered.
bool is_verb(const Token& t) {
  static constexpr std::array<std::string_view, 12> plain{"done", "bent",  "took", "use",    "hold", "scrap",
                                                          "bin",  "start", "stop", "finish", "add",  "began"};
  if (is_no_verb(t.word)) return false;
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
      const Token& t = in.s.tokens[k];
      words += passed && t.kind == Token::Kind::word && !is_filler(t) && !says_nothing(t, true) ? 1 : 0;
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

bool follows(std::size_t i, std::initializer_list<std::string_view> words, const Reader& in) {
  for (const std::string_view word : words)
    if (!in.is(i++, word)) return false;
  return true;
}

bool holds(std::initializer_list<std::string_view> words, const Reader& in) {
  for (std::size_t i = 0; i < in.size(); ++i)
    if (follows(i, words, in)) return true;
  return false;
}

// What is told of another time or place, or has yet to be done: "that time", "in the old shop", "to be
// levelled", "pressed for time".
bool is_not_now(std::string_view row, const Reader& in) {
  if (holds({"that", "time"}, in) || holds({"old", "shop"}, in) || holds({"some", "time"}, in) ||
      holds({"for", "time"}, in))
    return true;
  if (row == "count" || row == "receive" || row == "handful") { // "get 12 sticks of medium"
    std::size_t i = 0;
    while (i < in.size() && is_filler(in.s.tokens[i]))
      ++i;
    if (in.any(i, {"get", "fetch", "buy", "bring"})) return true;
  }
  if (!row.ends_with("ed")) return false;
  for (std::size_t i = 0; i + 2 < in.size(); ++i)
    if (follows(i, {"to", "be"}, in) && in.s.tokens[i + 2].word.ends_with("ed")) return true;
  return false;
}

// "Close the drawer on monday" is not the shop, "my hours this friday" are not everybody's, and who left the
// door open has not left.
bool is_of_another(std::string_view row, const Reader& in) {
  const auto thing = [&](std::size_t i) { return in.any(i, {"drawer", "door", "window", "lid", "tap"}); };
  if (row == "close-day" || row == "open-extra" || row == "open-hours") {
    for (std::size_t i = 0; i < in.size(); ++i)
      if ((in.is(i, "my") && in.any(i + 1, {"hours", "day", "own"})) ||
          (in.is(i, "the") && thing(i + 1) && !in.is(i + 2, "bench")))
        return true;
  }
  if (row == "retire-person") {
    for (std::size_t i = 0; i + 1 < in.size(); ++i)
      if (in.is(i, "left") && (thing(i + 2) || thing(i + 3))) return true;
  }
  if (row.starts_with("scrap"))
    return holds({"toss", "me"}, in) || holds({"throw", "me"}, in) || holds({"chuck", "me"}, in);
  return false;
}

// "All that's held for job 2": nothing of it says that it is let go.
bool lets_go(const Reader& in) {
  for (std::size_t i = 0; i < in.size(); ++i)
    if (in.any(i,
               {"let",    "go",     "free",   "release", "releases", "released", "drop",    "dropped",
                "forget", "undo",   "lift",   "cancel",  "loose",    "give",     "back",    "put",
                "no",     "longer", "not",    "nothing", "clear",    "empty",    "goes",    "freed",
                "return", "reset",  "remove", "take",    "unhold",   "don't",    "needn't", "available"}) ||
        in.s.tokens[i].word.starts_with("unreserv"))
      return true;
  return false;
}

// "Free up what is set aside for job 8" sets nothing aside: a word of the opposite order, or a day's two
// parts where one is taken.
bool says_opposite(const Found& command, const Reader& in) {
  const std::string_view row = command.frame->phrase.row->name;
  const auto& args = command.laid.match.args;
  const auto anywhere = [&](std::initializer_list<std::string_view> words) {
    return std::any_of(in.s.tokens.begin(), in.s.tokens.end(), [&](const Token& t) {
      return std::find(words.begin(), words.end(), t.word) != words.end();
    });
  };
  const auto said = [&](std::initializer_list<std::string_view> words) {
    return std::any_of(command.laid.passed.begin(), command.laid.passed.end(), [&](std::size_t i) {
      return std::find(words.begin(), words.end(), in.s.tokens[i].word) != words.end();
    });
  };
  if (row == "set-aside" || row == "hold")
    return said({"free", "loose", "release", "unhold", "clear", "empty"});
  const auto takes = [&](std::string_view name) {
    return std::any_of(args.begin(), args.end(), [&](const auto& a) {
      return command.frame->phrase.row->takes[static_cast<std::size_t>(a.first)].name == name;
    });
  };
  // "Depth of the slots: 2.4 mm" is no width.
  if (row == "slot-size" && ((!takes("slot_depth") && anywhere({"deep", "depth", "down", "middle"})) ||
                             (!takes("slot_width") && anywhere({"wide", "width", "across"}))))
    return true;
  if (row.starts_with("drop-") || row.starts_with("retire-")) {
    if (anywhere({"keep", "keeping", "stay", "stays"})) return true;
  }
  if (row == "let-all-go" && !lets_go(in)) return true;
  if (row == "machine-down" && holds({"no", "longer"}, in)) return true;
  if (row == "map-uid") return said({"cut", "unlink", "unmap", "remove", "off", "longer"});
  if (row.starts_with("define-") || row.starts_with("new-") || row == "add-receiver")
    return said({"drop", "remove", "delete", "forget", "retire"});
  if (row == "close-day") return anywhere({"morning"}) && anywhere({"afternoon", "evening"});
  if (row == "scrap-several") { // "the 52 of medium" is one
    const bool list = std::any_of(args.begin(), args.end(), [&](const auto& a) {
      const shop::Param& p = command.frame->phrase.row->takes[static_cast<std::size_t>(a.first)];
      return p.many || p.name == "count";
    });
    return !list && !anywhere({"pieces",  "frets", "all",      "both",     "every",  "everything", "bits",
                               "several", "those", "these",    "offcuts",  "ends",   "ones",       "lot",
                               "whole",   "any",   "whatever", "anything", "shorts", "leftovers"});
  }
  if (row == "own-hours") {
    return !takes("hours") && anywhere({"no", "off", "away", "out"});
  }
  return false;
}

} // namespace

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

bool in_hand(const Found& found, const Reader& in) {
  const std::string_view row = found.frame->phrase.row->name;
  std::size_t i = 0;
  while (i < in.size() && (is_filler(in.s.tokens[i]) || in.any(i, {"i", "we", "am", "are", "now", "still"})))
    ++i;
  return i < in.size() && in.s.tokens[i].word.ends_with("ing") && !is_no_verb(in.s.tokens[i].word) &&
         row != "start" && row != "stop" && row != "day-off";
}

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

bool may_do(const Found& found, double nothing, const Reader& in, const Phrasebook& book) {
  if (in.is(0, "same")) return false;
  if (nothing > 0.25 || breaks_off(in)) return false;
  if (!found.frame->wide) return found.share >= 0.3;
  if (found.missing >= 8 && found.share < 0.85) return false; // nor asked what it lacks: "pay the supplier"
  return !in_hand(found, in) && !asks_by_name(in, book) &&
         found.share >= (found.laid.match.distance > 0 ? 0.8 : 0.6) &&
         (says_it(found, in) || (found.share > 0.93 && found.missing < 8 && !found.laid.match.args.empty() &&
                                 found.laid.cost < -3));
}

bool hides_another(const Found& command, const Reader& in, const Surroundings& at) {
  const std::string_view row = command.frame->phrase.row->name;
  return says_opposite(command, in) || is_not_now(row, in) || is_of_another(row, in) ||
         says_another(command, in, at);
}

} // namespace nutward::talk
