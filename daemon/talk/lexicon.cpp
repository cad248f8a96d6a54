#include "talk/lexicon.hpp"

#include "talk/spelling.hpp"

#include <algorithm>
#include <array>

namespace nutward::talk {
namespace {

using Words = std::vector<std::string_view>;

bool among(const Words& sorted, std::string_view word) {
  return std::binary_search(sorted.begin(), sorted.end(), word);
}

Words sorted(Words words) {
  std::sort(words.begin(), words.end());
  return words;
}

const Words& fillers() {
  static const Words words =
      sorted({"a",    "an",     "and",    "at",  "by",    "for", "from",  "hello", "hey",  "hi", "in",
              "into", "just",   "kindly", "me",  "my",    "now", "of",    "ok",    "okay", "on", "onto",
              "our",  "please", "so",     "the", "there", "to",  "with",  "well",  ",",    ":",  "/",
              "-",    "!",      ".",      "&",   "oops",  "oh",  "sorry", "er",    "um"});
  return words;
}

const Words& english() {
  static const Words words =
      sorted({"about",   "add",     "added",  "after",   "again",  "all",     "almost",  "also",   "always",
              "am",      "any",     "are",    "back",    "bad",    "be",      "been",    "before", "bend",
              "bent",    "best",    "bought", "break",   "broke",  "broken",  "but",     "buy",    "call",
              "called",  "came",    "can",    "cancel",  "check",  "clean",   "clear",   "close",  "closed",
              "come",    "could",   "count",  "crown",   "cut",    "dead",    "deal",    "did",    "does",
              "done",    "down",    "dress",  "dressed", "drop",   "dropped", "each",    "either", "else",
              "even",    "ever",    "every",  "fell",    "file",   "filed",   "fill",    "find",   "first",
              "fold",    "found",   "free",   "full",    "gave",   "get",     "give",    "given",  "glue",
              "goes",    "gold",    "gone",   "good",    "got",    "grab",    "had",     "hand",   "hard",
              "has",     "have",    "head",   "hear",    "heat",   "held",    "hello",   "help",   "here",
              "high",    "hold",    "home",   "hope",    "how",    "if",      "instead", "is",     "job",
              "keep",    "kept",    "know",   "last",    "late",   "later",   "learn",   "least",  "leave",
              "left",    "lend",    "lent",   "less",    "let",    "level",   "like",    "line",   "list",
              "long",    "look",    "lose",   "lost",    "loud",   "made",    "make",    "many",   "mark",
              "may",     "mean",    "meant",  "measure", "might",  "mind",    "more",    "most",   "move",
              "moved",   "much",    "must",   "need",    "needs",  "neither", "never",   "next",   "nip",
              "no",      "nobody",  "none",   "nor",     "not",    "note",    "nothing", "null",   "nut",
              "off",     "once",    "only",   "open",    "opened", "or",      "order",   "other",  "out",
              "over",    "own",     "part",   "past",    "pick",   "plan",    "play",    "polish", "press",
              "pressed", "pull",    "pulled", "put",     "reach",  "read",    "remove",  "rest",   "return",
              "right",   "sad",     "said",   "same",    "save",   "saved",   "saw",     "say",    "scrap",
              "scrape",  "scraped", "seat",   "seated",  "seen",   "sell",    "send",    "sent",   "shall",
              "ship",    "short",   "should", "show",    "sold",   "some",    "soon",    "sort",   "sound",
              "space",   "spare",   "spot",   "stop",    "store",  "strap",   "such",    "sure",   "swap",
              "take",    "taken",   "tell",   "than",    "that",   "them",    "then",    "they",   "thing",
              "think",   "this",    "those",  "told",    "took",   "tried",   "true",    "try",    "turn",
              "twice",   "under",   "undo",   "unless",  "until",  "unused",  "use",     "used",   "very",
              "want",    "was",     "waste",  "we",      "went",   "were",    "what",    "when",   "where",
              "which",   "who",     "whose",  "why",     "will",   "without", "won",     "work",   "would",
              "wrap",    "wrong",   "yes",    "yet",     "you"});
  return words;
}

} // namespace

bool is_filler(const Token& token) {
  return token.kind != Token::Kind::quoted && !token.is_number() && among(fillers(), token.word);
}

bool is_english(std::string_view word) {
  return among(english(), word) || among(fillers(), word);
}

int Lexicon::add(std::string_view word) {
  if (auto at = ids_.find(word); at != ids_.end()) return at->second;
  const int id = static_cast<int>(words_.size());
  ids_.emplace(word, id);
  words_.emplace_back(word);
  return id;
}

int Lexicon::find(std::string_view word) const {
  auto at = ids_.find(word);
  return at == ids_.end() ? -1 : at->second;
}

std::vector<Near> Lexicon::near(const Token& token) const {
  std::vector<Near> out;
  if (token.kind == Token::Kind::quoted) return out;
  if (int id = find(token.word); id >= 0) out.push_back({id, 0, false});
  if (token.kind != Token::Kind::word) return out;
  const std::string& w = token.word;
  for (const std::string& other :
       {w + "s", w + "es", w.substr(0, w.size() - 1), w.substr(0, w.size() > 2 ? w.size() - 2 : 0)}) {
    static const Words no_plurals =
        sorted({"is", "was", "has", "does", "this", "its", "goes", "us", "as", "yes"});
    if (among(no_plurals, other) || among(no_plurals, w)) continue;
    if (int id = find(other); id >= 0 && same_but_plural(w, other)) out.push_back({id, 0, true});
  }
  const bool digits = std::any_of(w.begin(), w.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!out.empty() || digits || is_english(w)) return out;
  for (std::size_t id = 0; id < words_.size(); ++id) {
    const int d = mistyped(w, words_[id]);
    if (d > 0) out.push_back({static_cast<int>(id), d, false});
  }
  return out;
}

} // namespace nutward::talk
