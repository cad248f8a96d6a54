#include "talk/lexicon.hpp"

#include "talk/spelling.hpp"

#include <boost/unordered/unordered_flat_set.hpp>

#include <algorithm>
#include <bit>

namespace nutward::talk {
namespace {

using Words = boost::unordered_flat_set<std::string_view>;

const Words& fillers() {
  static const Words words{"a",  "an",   "and",  "at",    "by",     "for",    "from", "hello", "hey",
                           "hi", "in",   "into", "just",  "kindly", "me",     "my",   "now",   "of",
                           "ok", "okay", "on",   "onto",  "our",    "please", "so",   "the",   "there",
                           "to", "with", "well", ",",     ":",      "/",      "-",    "!",     ".",
                           "&",  "oops", "oh",   "sorry", "er",     "um"};
  return words;
}

const Words& english() {
  static const Words words{
      "about",   "add",     "added",  "after",  "again", "all",    "almost",  "also",    "always",  "am",
      "any",     "are",     "back",   "bad",    "be",    "been",   "before",  "bend",    "bent",    "best",
      "bought",  "break",   "broke",  "broken", "but",   "buy",    "call",    "called",  "came",    "can",
      "cancel",  "check",   "clean",  "clear",  "close", "closed", "come",    "could",   "count",   "crown",
      "cut",     "dead",    "deal",   "did",    "does",  "done",   "down",    "dress",   "dressed", "drop",
      "dropped", "each",    "either", "else",   "even",  "ever",   "every",   "fell",    "file",    "filed",
      "fill",    "find",    "first",  "fold",   "found", "free",   "full",    "gave",    "get",     "give",
      "given",   "glue",    "goes",   "gold",   "gone",  "good",   "got",     "grab",    "had",     "hand",
      "hard",    "has",     "have",   "head",   "hear",  "heat",   "held",    "hello",   "help",    "here",
      "high",    "hold",    "home",   "hope",   "how",   "if",     "instead", "is",      "job",     "keep",
      "kept",    "know",    "last",   "late",   "later", "learn",  "least",   "leave",   "left",    "lend",
      "lent",    "less",    "let",    "level",  "like",  "line",   "list",    "long",    "look",    "lose",
      "lost",    "loud",    "made",   "make",   "many",  "mark",   "may",     "mean",    "meant",   "measure",
      "might",   "mind",    "more",   "most",   "move",  "moved",  "much",    "must",    "need",    "needs",
      "neither", "never",   "next",   "nip",    "no",    "nobody", "none",    "nor",     "not",     "note",
      "nothing", "null",    "nut",    "off",    "once",  "only",   "open",    "opened",  "or",      "order",
      "other",   "out",     "over",   "own",    "part",  "past",   "pick",    "plan",    "play",    "polish",
      "press",   "pressed", "pull",   "pulled", "put",   "reach",  "read",    "remove",  "rest",    "return",
      "right",   "sad",     "said",   "same",   "save",  "saved",  "saw",     "say",     "scrap",   "scrape",
      "scraped", "seat",    "seated", "seen",   "sell",  "send",   "sent",    "shall",   "ship",    "short",
      "should",  "show",    "sold",   "some",   "soon",  "sort",   "sound",   "space",   "spare",   "spot",
      "stop",    "store",   "strap",  "such",   "sure",  "swap",   "take",    "taken",   "tell",    "than",
      "that",    "them",    "then",   "they",   "thing", "think",  "this",    "those",   "told",    "took",
      "tried",   "true",    "try",    "turn",   "twice", "under",  "undo",    "unless",  "until",   "unused",
      "use",     "used",    "very",   "want",   "was",   "waste",  "we",      "went",    "were",    "what",
      "when",    "where",   "which",  "who",    "whose", "why",    "will",    "without", "won",     "work",
      "would",   "wrap",    "wrong",  "yes",    "yet",   "you"};
  return words;
}

// A bit for each letter that is there, and one for each that is there twice. A typing mistake takes at most
// one away and puts at most one there, so that of two words `n` mistakes apart neither has more than n bits
// that the other has not.
std::uint64_t letters_of(std::string_view word) {
  std::uint64_t out = 0;
  for (char c : word) {
    const bool latin = c >= 'a' && c <= 'z';
    const int at = latin ? c - 'a' : 52 + static_cast<unsigned char>(c) % 12;
    const std::uint64_t once = std::uint64_t{1} << at;
    out |= latin && (out & once) != 0 ? once << 26 : once;
  }
  return out;
}

bool apart(std::uint64_t a, std::uint64_t b, int most) {
  return std::popcount(a & ~b) > most || std::popcount(b & ~a) > most;
}

bool hisses(std::string_view word) {
  return word.ends_with("s") || word.ends_with("x") || word.ends_with("ch") || word.ends_with("sh");
}

} // namespace

bool is_filler(const Token& token) {
  return token.kind != Token::Kind::quoted && !token.is_number() && token.word.size() <= 6 &&
         fillers().contains(token.word);
}

bool is_english(std::string_view word) {
  return english().contains(word) || fillers().contains(word);
}

int Lexicon::add(std::string_view word) {
  if (auto at = ids_.find(word); at != ids_.end()) return at->second;
  const int id = static_cast<int>(words_.size());
  const std::string_view kept = words_.emplace_back(word);
  ids_.emplace(kept, id);
  if (kept.empty()) return id;
  by_first_[static_cast<unsigned char>(kept.front())].push_back({letters_of(kept), kept.size(), id});
  by_rest_[kept.substr(1)].push_back(id);
  return id;
}

int Lexicon::find(std::string_view word) const {
  auto at = ids_.find(word);
  return at == ids_.end() ? -1 : at->second;
}

int Lexicon::add_way(const std::string& key) {
  return ways_.emplace(key, static_cast<int>(ways_.size())).first->second;
}

// The same word in the other number: with an ending, or without.
void Lexicon::find_plurals(std::string_view word, NearWords& out) const {
  static const Words no_plurals{"is", "was", "has", "does", "this", "its", "goes", "us", "as", "yes"};
  if (word.size() < 3 || no_plurals.contains(word)) return;
  const auto found = [&](std::string_view other) {
    if (no_plurals.contains(other)) return;
    if (int id = find(other); id >= 0) out.push_back({id, 0, true});
  };
  std::string plural{word};
  found(plural += "s");
  if (hisses(word)) found((plural.insert(word.size(), 1, 'e')));
  if (word.size() > 3 && word.ends_with("s")) found(word.substr(0, word.size() - 1));
  if (word.size() > 4 && word.ends_with("es") && hisses(word.substr(0, word.size() - 2)))
    found(word.substr(0, word.size() - 2));
}

// Every known word that `word`, which is none, may be meant to be. Several mistakes leave the first letter
// right (talk/spelling.hpp); a single one in it is wrong, missing, too much, or swapped with the next.
void Lexicon::find_mistyped(std::string_view word, NearWords& out) const {
  if (word.size() < 3) return;
  const std::uint64_t letters = letters_of(word);
  for (const Known& known : by_first_[static_cast<unsigned char>(word.front())]) {
    if (apart(letters, known.letters, tolerance(known.size))) continue;
    const int d = mistyped(word, words_[static_cast<std::size_t>(known.id)]);
    if (d > 0) out.push_back({known.id, d, false});
  }
  const auto one_wrong = [&](int id) {
    if (id >= 0 && mistyped(word, words_[static_cast<std::size_t>(id)]) == 1) out.push_back({id, 1, false});
  };
  const std::string_view rest = word.substr(1);
  for (std::string_view behind : {rest, word}) {
    if (auto at = by_rest_.find(behind); at != by_rest_.end())
      std::for_each(at->second.begin(), at->second.end(), one_wrong);
  }
  one_wrong(find(rest));
  std::string swapped{word};
  std::swap(swapped[0], swapped[1]);
  one_wrong(find(swapped));
  std::sort(out.begin(), out.end(), [](const Near& a, const Near& b) { return a.id < b.id; });
  const auto same = [](const Near& a, const Near& b) { return a.id == b.id; };
  out.erase(std::unique(out.begin(), out.end(), same), out.end());
}

NearWords Lexicon::near(const Token& token) const {
  NearWords out;
  if (token.kind == Token::Kind::quoted) return out;
  if (int id = find(token.word); id >= 0) out.push_back({id, 0, false});
  if (token.kind != Token::Kind::word) return out;
  find_plurals(token.word, out);
  if (!out.empty() || is_english(token.word)) return out;
  const std::string& w = token.word;
  if (std::none_of(w.begin(), w.end(), [](char c) { return c >= '0' && c <= '9'; })) find_mistyped(w, out);
  return out;
}

} // namespace nutward::talk
