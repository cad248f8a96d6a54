// Words that say nothing where a sentence is laid out, and those that are never passed over.
#include "talk/frame.hpp"

#include <algorithm>

namespace nutward::talk {
namespace {

std::vector<std::string_view> sorted(std::vector<std::string_view> words) {
  std::sort(words.begin(), words.end());
  return words;
}

// In statements of what was done these say nothing; none of them turns one into a wish or a doubt.
const std::vector<std::string_view>& idle() {
  static const auto words = sorted(
      {"is",      "are",    "was",    "were",     "be",        "been",     "am",        "it",     "its",
       "that",    "this",   "these",  "those",    "i",         "we",       "you",       "he",     "she",
       "they",    "us",     "them",   "him",      "her",       "his",      "their",     "i'm",    "i've",
       "we've",   "he's",   "she's",  "it's",     "we're",     "they're",  "has",       "have",   "had",
       "got",     "then",   "also",   "too",      "really",    "actually", "thanks",    "thank",  "here",
       "as",      "one",    "ones",   "some",     "again",     "still",    "already",   "done",   "now",
       "today's", "goes",   "went",   "came",     "come",      "took",     "taken",     "put",    "gets",
       "get",     "makes",  "made",   "finally",  "only",      "ta",       "cheers",    "listen", "fyi",
       "yes",     "yeah",   "yep",    "mate",     "folks",     "y'all",    "ye",        "aye",    "wee",
       "lads",    "indeed", "hereby", "everyone", "everybody", "myself",   "ourselves", "mark",   "note",
       "report",  "write",  "record", "log",      "please",    "whole",    "entire"});
  return words;
}

// And in questions these besides.
const std::vector<std::string_view>& asking() {
  static const auto words = sorted(
      {"will",    "reckon",   "all",       "let",    "go",        "off",     "take",   "make",     "look",
       "down",    "up",       "quick",     "back",   "out",       "over",    "right",  "what",     "which",
       "who",     "whose",    "where",     "when",   "why",       "how",     "can",    "could",    "would",
       "should",  "shall",    "may",       "might",  "must",      "do",      "does",   "did",      "if",
       "any",     "anything", "something", "show",   "give",      "tell",    "list",   "print",    "see",
       "read",    "know",     "need",      "want",   "needs",     "wants",   "like",   "about",    "much",
       "many",    "long",     "far",       "think",  "say",       "says",    "check",  "find",     "there's",
       "or",      "yet",      "so",        "more",   "most",      "work",    "d",      "i'd",      "we'd",
       "going",   "gonna",    "remind",    "wonder", "wondering", "whether", "just",   "possible", "possibly",
       "sure",    "being",    "between",   "than",   "use",       "used",    "mine's", "lot",      "kind",
       "exactly", "roughly",  "anyway",    "else",   "ever",      "per",     "while",  "though",   "but",
       "let's",   "im"});
  return words;
}

bool among(const std::vector<std::string_view>& words, std::string_view word) {
  return std::binary_search(words.begin(), words.end(), word);
}

} // namespace

// What is reported is over once one of these stands in a text that is taken as it is.
bool doubts(const Token& token) {
  static const auto words =
      sorted({"not",     "never",  "no",     "if",      "would",   "could",   "might", "should", "maybe",
              "perhaps", "wait",   "hang",   "pretend", "suppose", "unless",  "until", "later",  "forgot",
              "almost",  "nearly", "before", "yet",     "wrong",   "mistake", "undo",  "why",    "what",
              "how",     "when",   "which",  "who",     "don't",   "can",     "may",   "or",     "i'd",
              "we'd",    "he'd",   "she'd",  "they'd",  "you'd"});
  return token.kind != Token::Kind::quoted && among(words, token.word);
}

bool wishes(const Token& token) {
  static const auto words =
      sorted({"want",   "wants",   "wanted",   "going",  "gonna", "like",   "liked",   "look", "looks",
              "looked", "say",     "says",     "said",   "think", "thinks", "thought", "hope", "hoping",
              "ask",    "asked",   "try",      "tries",  "tried", "trying", "reckon",  "will", "wish",
              "plan",   "planned", "planning", "intend", "mean",  "means"});
  return token.kind != Token::Kind::quoted && among(words, token.word);
}

bool turns(std::size_t i, const Reader& in) {
  static const auto words =
      sorted({"not",        "no",        "never",      "nor",         "without",    "but",         "except",
              "excepting",  "excluding", "rather",     "instead",     "stopped",    "supposed",    "meant",
              "anything",   "anyone",    "anybody",    "than",        "half",       "partly",      "barely",
              "hardly",     "almost",    "nearly",     "if",          "would",      "could",       "should",
              "might",      "maybe",     "perhaps",    "unless",      "pretend",    "suppose",     "wish",
              "hope",       "hopefully", "forget",     "ignore",      "scratch",    "probably",    "possibly",
              "apparently", "allegedly", "supposedly", "tentatively", "mistakenly", "prematurely", "refused",
              "vetoed"});
  const Token& t = in.s.tokens[i];
  if (t.kind == Token::Kind::quoted) return false;
  return among(words, t.word) || (t.is("used") && in.is(i + 1, "to"));
}

// When something was or is to be; what is left of that is never passed over.
bool says_when(const Token& token) {
  static const auto words = sorted(
      {"morning", "afternoon", "evening", "night",   "noon",      "midnight",  "lunch",    "week",    "weeks",
       "weekend", "month",     "months",  "year",    "years",     "day",       "days",     "hour",    "hours",
       "minute",  "minutes",   "today",   "tonight", "tomorrow",  "yesterday", "ago",      "until",   "till",
       "since",   "later",     "earlier", "soon",    "daily",     "january",   "february", "march",   "april",
       "may",     "june",      "july",    "august",  "september", "october",   "november", "december"});
  return token.kind == Token::Kind::word && (among(words, token.word) || weekday_word(token.word));
}

// Nor, in an order, how much or how many.
bool says_how_many(const Token& token) {
  static const auto words =
      sorted({"last",        "next",    "quarter", "half",   "from",      "every",      "each",
              "both",        "all",     "rest",    "only",   "except",    "besides",    "without",
              "second",      "another", "instead", "first",  "other",     "others",     "none",
              "nothing",     "nobody",  "tenth",   "tenths", "hundredth", "hundredths", "thousandth",
              "thousandths", "thou",    "double",  "twice",  "pair",      "couple",     "dozen"});
  return token.kind == Token::Kind::word && among(words, token.word);
}

bool says_nothing(const Token& token, bool command) {
  if (token.kind == Token::Kind::quoted || token.is_number()) return false;
  return among(idle(), token.word) || (!command && among(asking(), token.word));
}

const std::vector<std::string_view>& words_of_no_weight() {
  static const auto words = [] {
    std::vector<std::string_view> out = idle();
    out.insert(out.end(), asking().begin(), asking().end());
    return out;
  }();
  return words;
}

} // namespace nutward::talk
