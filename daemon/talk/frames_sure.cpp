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

// "…, and the kettle is on", "9, 10 and 12 of the kettle, job 9": a clause of its own, or whose something is.
bool says_itself(std::size_t k, const Laid& laid, const Reader& in) {
  std::size_t before = k;
  while (before > 0 && in.any(before - 1, {"the", "a", "an", "my", "our"}))
    --before;
  if (before > 0 && in.any(before - 1, {"of", "for"})) return true;
  std::size_t from = k, to = k;
  while (from > 0 && !is_joint(from - 1, in))
    --from;
  while (to < in.size() && !is_joint(to, in))
    ++to;
  if (from == 0 && to == in.size()) return false;
  for (std::size_t i = from; i < to; ++i)
    if (!std::binary_search(laid.passed.begin(), laid.passed.end(), i)) return false;
  return true;
}

// A short word, or one near a word that counts, doubts or turns, may be that with a mistake in it.
bool may_be_meant(std::size_t k, const Reader& in) {
  const bool is_short = in.s.tokens[k].word.size() < 6;
  return std::any_of(in.near[k].begin(), in.near[k].end(), [&](const Near& n) {
    Token meant;
    meant.word = in.lexicon.word(n.id);
    return n.distance > 0 && (is_short || says_when(meant) || says_how_many(meant) || doubts(meant) ||
                              wishes(meant) || meant.word.ends_with("n't"));
  });
}

} // namespace

bool is_joint(std::size_t i, const Reader& in) {
  return in.any(i, {"and", "then", "also", ";"});
}

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

bool only_remarks(const Found& found, const Reader& in) {
  const Laid& laid = found.laid;
  const shop::Row& row = *found.frame->phrase.row;
  if (found.share < sure_share || found.missing > 0 || laid.tied || laid.unknown > 3 ||
      laid.unknown * 3 > static_cast<int>(in.size()) || laid.match.args.empty() || laid.match.distance > 0 ||
      row.name == "undo")
    return false;
  for (std::size_t p = 0; p < row.takes.size(); ++p) {
    using enum shop::Kind;
    const bool free_text =
        row.takes[p].kind == words || row.takes[p].kind == name || row.takes[p].kind == url;
    const bool taken = std::any_of(laid.match.args.begin(), laid.match.args.end(),
                                   [&](const auto& a) { return a.first == static_cast<int>(p); });
    if (free_text && !taken) return false;
  }
  return std::all_of(laid.strange.begin(), laid.strange.end(), [&](std::size_t k) {
    const Token& t = in.s.tokens[k];
    if (in.leads(k) || says_itself(k, laid, in)) return false; // "inesworks monday 9 to 13" tells of somebody
    return t.kind == Token::Kind::word && !t.is_number() && !in.names.has(t.word) && !is_unit_word(t.word) &&
           !says_when(t) && !says_how_many(t) && !doubts(t) && !wishes(t) && !turns(k, in) &&
           !t.word.ends_with("n't") && !may_be_meant(k, in);
  });
}

bool may_do(const Found& found, double nothing, const Reader& in, const Phrasebook& book) {
  if (in.is(0, "same")) return false;
  if (nothing > 0.25 || breaks_off(in)) return false;
  if (!found.frame->wide) return found.share >= 0.3;
  if (found.missing >= 8 && found.share < 0.85) return false; // nor asked what it lacks: "pay the supplier"
  return !in_hand(found, in) && !asks_by_name(in, book) &&
         found.share >= (found.laid.match.distance > 0 ? 0.8 : 0.6) &&
         (says_it(found, in) || (found.share > sure_share && found.missing < 8 &&
                                 !found.laid.match.args.empty() && found.laid.cost < -3));
}

} // namespace nutward::talk
