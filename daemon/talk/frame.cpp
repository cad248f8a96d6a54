#include "talk/frame.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace nutward::talk {
namespace {

constexpr int cost_unknown = 10, cost_unbound = 15, cost_idle = 2, cost_mistake = 4;

std::vector<std::string_view> sorted(std::vector<std::string_view> words) {
  std::sort(words.begin(), words.end());
  return words;
}

// In statements of what was done these say nothing; none of them turns one into a wish or a doubt.
const std::vector<std::string_view>& idle() {
  static const auto words = sorted(
      {"is",        "are",   "was",   "were",   "be",      "been",     "am",       "it",        "its",
       "that",      "this",  "these", "those",  "i",       "we",       "you",      "he",        "she",
       "they",      "us",    "them",  "him",    "her",     "his",      "their",    "i'm",       "i've",
       "we've",     "he's",  "she's", "it's",   "we're",   "they're",  "has",      "have",      "had",
       "got",       "then",  "also",  "too",    "really",  "actually", "thanks",   "thank",     "here",
       "as",        "one",   "ones",  "some",   "again",   "still",    "already",  "done",      "now",
       "today's",   "goes",  "went",  "came",   "come",    "took",     "taken",    "put",       "gets",
       "get",       "makes", "made",  "will",   "finally", "only",     "ta",       "cheers",    "listen",
       "fyi",       "yes",   "yeah",  "yep",    "mate",    "folks",    "everyone", "everybody", "myself",
       "ourselves", "mark",  "note",  "report", "write",   "record",   "log",      "please",    "whole",
       "entire"});
  return words;
}

// And in questions these besides.
const std::vector<std::string_view>& asking() {
  static const auto words = sorted(
      {"all",       "let",    "go",        "off",     "take",   "make",     "look",     "down",    "up",
       "quick",     "back",   "out",       "over",    "right",  "what",     "which",    "who",     "whose",
       "where",     "when",   "why",       "how",     "can",    "could",    "would",    "should",  "shall",
       "may",       "might",  "must",      "do",      "does",   "did",      "if",       "any",     "anything",
       "something", "show",   "give",      "tell",    "list",   "print",    "see",      "read",    "know",
       "need",      "want",   "needs",     "wants",   "like",   "about",    "much",     "many",    "long",
       "far",       "think",  "say",       "says",    "check",  "find",     "there's",  "or",      "yet",
       "so",        "more",   "most",      "work",    "d",      "i'd",      "we'd",     "going",   "gonna",
       "remind",    "wonder", "wondering", "whether", "just",   "possible", "possibly", "sure",    "being",
       "between",   "than",   "use",       "used",    "mine's", "lot",      "kind",     "exactly", "roughly",
       "anyway",    "else",   "ever",      "per",     "while",  "though",   "but",      "let's",   "im"});
  return words;
}

bool among(const std::vector<std::string_view>& words, std::string_view word) {
  return std::binary_search(words.begin(), words.end(), word);
}

// What is reported is over once one of these stands in a text that is taken as it is.
bool doubts(const Token& token) {
  static const auto words =
      sorted({"not",     "never",  "no",     "if",      "would",   "could",   "might", "should", "maybe",
              "perhaps", "wait",   "hang",   "pretend", "suppose", "unless",  "until", "later",  "forgot",
              "almost",  "nearly", "before", "yet",     "wrong",   "mistake", "undo",  "why",    "what",
              "how",     "when",   "which",  "who",     "don't",   "can",     "may",   "or"});
  return token.kind != Token::Kind::quoted && among(words, token.word);
}

struct Partial {
  Laid laid;
  std::uint64_t bound = 0, met = 0;
};

class Layer {
public:
  Layer(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling, const Reader& in)
      : frame_(frame), from_(from), to_(to), spelling_(spelling), in_(in), at_(to - from + 1) {
    for (std::size_t k = 0; k < frame.items.size(); ++k)
      if (frame.items[k].needed && !frame.items[k].words) wanted_ |= std::uint64_t{1} << k;
  }

  std::optional<Laid> run(bool all_needed) {
    all_needed_ = all_needed;
    if (all_needed && !words_are_there()) return std::nullopt;
    Partial first;
    first.laid.match.phrase = &frame_.phrase;
    keep(0, std::move(first));
    for (std::size_t i = 0; i + 1 < at_.size(); ++i) {
      if (at_[i].empty()) continue;
      items(i);
      for (auto& [key, partial] : at_[i])
        skip(i, partial);
    }
    const Partial* best = nullptr;
    for (const auto& [key, partial] : at_.back()) {
      const bool enough = all_needed ? (partial.met & wanted_) == wanted_ : partial.bound != 0;
      if (enough && (best == nullptr || partial.laid.cost < best->laid.cost)) best = &partial;
    }
    return best == nullptr ? std::nullopt : std::optional{best->laid};
  }

private:
  using Key = std::pair<std::uint64_t, std::uint64_t>;

  void keep(std::size_t i, Partial partial) {
    const Key key{partial.bound, partial.met};
    auto [place, fresh] = at_[i].try_emplace(key, partial);
    if (!fresh && partial.laid.cost < place->second.laid.cost) place->second = std::move(partial);
  }

  // What must be there and is but words may be part of another item, so it is looked for beforehand.
  bool words_are_there() {
    for (std::size_t k = 0; k < frame_.items.size(); ++k) {
      const Item& item = frame_.items[k];
      if (!item.needed) continue;
      if (item.words && spelling_ == Spelling::mistyped)
        exact_ |= said_exactly(item) ? std::uint64_t{1} << k : 0;
      if (said_in_words(item))
        wanted_ &= ~(std::uint64_t{1} << k);
      else if (item.words)
        return false;
    }
    return true;
  }

  // For an order a short word with a mistake is too easily another one.
  bool too_short(const Match& m) const {
    return frame_.phrase.command && m.distance > 0 && in_.s.tokens[m.begin].word.size() < 5;
  }

  bool said_exactly(const Item& item) const {
    for (std::size_t i = from_; i < to_; ++i)
      if (!match_part(item.phrase, i, to_, Spelling::exact, in_).empty()) return true;
    return false;
  }

  bool said_in_words(const Item& item) const {
    for (std::size_t i = from_; i < to_; ++i) {
      for (const Match& m : match_part(item.phrase, i, to_, spelling_, in_))
        if (m.args.empty() && m.end > i && m.end <= to_ && !too_short(m)) return true;
    }
    return false;
  }

  void skip(std::size_t i, const Partial& before) {
    const Token& t = in_.s.tokens[from_ + i];
    Partial next = before;
    const bool mistyped_idle = !in_.near[from_ + i].empty() &&
                               (t.word.size() > 4 || !frame_.phrase.command) &&
                               spelling_ == Spelling::mistyped && idle_near(from_ + i);
    if (skippable(from_ + i, in_)) {
      next.laid.match.skipped += t.kind == Token::Kind::word ? 1 : 0;
    } else if ((says_nothing(t, frame_.phrase.command) || mistyped_idle) && !still_to_do(from_ + i)) {
      ++next.laid.match.skipped;
      next.laid.cost += cost_idle;
      if (mistyped_idle) next.laid.cost += cost_mistake, ++next.laid.match.distance;
    } else {
      if (next.laid.unknown >= 12) return;
      ++next.laid.unknown;
      next.laid.strange.push_back(from_ + i);
      next.laid.cost += t.is_number() || t.kind == Token::Kind::quoted ? cost_unbound : cost_unknown;
    }
    keep(i + 1, std::move(next));
  }

  // "I have to use it" is not done yet.
  bool still_to_do(std::size_t i) const {
    return frame_.phrase.command && in_.is(i + 1, "to") &&
           in_.any(i, {"have", "has", "got", "i've", "we've", "am", "is", "are", "i'm", "we're", "go"});
  }

  // A command must be sure of it: "hat" may be "that", but also "what".
  bool idle_near(std::size_t i) const {
    const auto mistyped_idle = [&](const Near& n) {
      Token known;
      known.word = in_.lexicon.word(n.id);
      return says_nothing(known, frame_.phrase.command) || is_filler(known);
    };
    if (frame_.phrase.command)
      return std::all_of(in_.near[i].begin(), in_.near[i].end(),
                         [&](const Near& n) { return n.distance > 1 || mistyped_idle(n); }) &&
             std::any_of(in_.near[i].begin(), in_.near[i].end(),
                         [](const Near& n) { return n.distance == 1; });
    return std::any_of(in_.near[i].begin(), in_.near[i].end(),
                       [&](const Near& n) { return n.distance == 1 && mistyped_idle(n); });
  }

  // Every item that can stand at i, put behind everything that came as far as i.
  void items(std::size_t i) {
    std::vector<std::pair<Key, Partial>> before(at_[i].begin(), at_[i].end());
    for (std::size_t k = 0; k < frame_.items.size(); ++k) {
      const Item& item = frame_.items[k];
      if (item.tail && !behind_pause(from_ + i)) continue;
      for (Match& m : match_part(item.phrase, from_ + i, to_, spelling_, in_)) {
        if (too_short(m)) continue;
        if (m.end <= from_ + i || m.end > to_ || (item.tail && m.end != to_)) continue;
        // "…and sing": where the order has its word already, "sing" is no mistyped "using".
        if (frame_.phrase.command && (uncertain(m) || (m.distance > 0 && ((exact_ >> k) & 1) != 0))) continue;
        for (const auto& [key, partial] : before)
          put(partial, k, m);
      }
    }
  }

  bool behind_pause(std::size_t i) const {
    return i > from_ && (in_.any(i - 1, {",", "-", ";", ":", ".", "because", "since", "as"}));
  }

  bool uncertain(const Match& m) const {
    if (m.loose == 0) return false;
    for (std::size_t k = m.begin; k < m.end; ++k)
      if (doubts(in_.s.tokens[k])) return true;
    if (m.end - m.begin > 8) return true;
    return std::any_of(m.args.begin(), m.args.end(), [&](const auto& arg) {
      const shop::Param& p = m.phrase->row->takes[static_cast<std::size_t>(arg.first)];
      return arg.second.loose > 0 && p.name != "why" && no_name(arg.second);
    });
  }

  // A name has at most three words, and none of them is a number.
  bool no_name(const Said& said) const {
    const auto from = said.end - static_cast<std::size_t>(said.loose);
    for (std::size_t k = from; k < said.end; ++k)
      if (in_.s.tokens[k].is_number() || (in_.is(k, "and") && k == from) ||
          in_.any(k, {"is", "are", "called", "a", "the", "of"}))
        return true;
    return said.loose > 3;
  }

  void put(const Partial& before, std::size_t item, const Match& m) {
    Partial next = before;
    if (belongs_to_another(m) || (before.met & wanted_ & (std::uint64_t{1} << item)) != 0) return;
    for (const auto& [param, said] : m.args) {
      const std::uint64_t bit = std::uint64_t{1} << param;
      if ((next.bound & bit) != 0 || points_at_nothing(param, said, m) || is_no_piece(param, said, m) ||
          is_not_so(param, m) || is_past_time(param, m))
        return;
      next.bound |= bit;
      next.laid.match.args.emplace_back(param, said);
      next.laid.cost += cost_of(param, said, m);
    }
    next.met |= wanted_ & (std::uint64_t{1} << item);
    Match& to = next.laid.match;
    to.distance += m.distance, to.loose += m.loose, to.skipped += m.skipped, to.literals += m.literals;
    to.worst = std::max(to.worst, m.worst);
    next.laid.cost += cost_mistake * m.distance + 2 * m.loose - std::min(m.literals, m.args.empty() ? 1 : 4);
    keep(m.end - from_, std::move(next));
  }

  // "It" may be the piece; a job, a wire or a person is not meant by it where nothing else says so.
  bool points_at_nothing(int param, const Said& said, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    return said.pointing && m.literals == 0 && kind != shop::Kind::piece && kind != shop::Kind::slot &&
           in_.is(m.begin, "it");
  }

  // "4" alone is no length of a piece: it is the number of one, if anything.
  bool is_no_piece(int param, const Said& said, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    if (kind != shop::Kind::piece || std::holds_alternative<shop::Ref>(said.value) || said.pointing)
      return false;
    const Token& last = in_.s.tokens[said.end - 1];
    const bool alone = said.end > 1 && said.end - 1 >= m.begin && last.is_number() && whole(&last);
    const bool wired = said.end >= 2 && said.end - 2 >= m.begin &&
                       in_.s.tokens[said.end - 2].kind == Token::Kind::word &&
                       !is_filler(in_.s.tokens[said.end - 2]);
    return alone && !wired;
  }

  // What a number by itself is not. One that nothing calls a job is none; behind a call that has one it may
  // be the next (talk/follow_up).
  bool is_not_so(int param, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    const Token& t = in_.s.tokens[m.begin];
    // "Three frets" are so many, whichever they are.
    if (kind == shop::Kind::slot && t.is_number() && in_.any(m.begin + 1, {"frets", "slots", "passes"}))
      return true;
    if (!bare(m)) return false;
    // "One" is a word more often than a number of a thing or a measure; and nobody presses with less than 100
    // of any unit.
    if (kind == shop::Kind::slot || kind == shop::Kind::piece || kind == shop::Kind::length)
      if (in_.is(m.begin, "one")) return true;
    if (kind == shop::Kind::load) return t.number.size() < 3;
    return all_needed_ && kind == shop::Kind::job;
  }

  // "8:30 had another look": a time before everything else is when it happened, not when it is to be.
  bool is_past_time(int param, const Match& m) const {
    const shop::Param& p = frame_.phrase.row->takes[static_cast<std::size_t>(param)];
    return p.kind == shop::Kind::at && p.name == "again" && m.begin == 0 && in_.s.tokens[0].is_number();
  }

  bool bare(const Match& m) const {
    return m.literals == 0 && m.end == m.begin + 1 && in_.s.tokens[m.begin].is_number();
  }

  // Behind "slot" or "job" a number is that one's, and behind "9-" it ends a range.
  bool belongs_to_another(const Match& m) const {
    const Token& t = in_.s.tokens[m.begin];
    const bool number = t.is_number() || (t.is("-") && m.end > m.begin + 1);
    if (!number || m.begin == from_) return false;
    if (t.is("-") && t.glued) return true;
    if (in_.is(m.begin - 1, ",") && in_.s.tokens[m.begin - 1].glued && t.glued) return true; // "1,250"
    if (in_.is(m.begin - 1, "-") && in_.s.tokens[m.begin - 1].glued && t.glued) return true;
    const std::size_t noun = in_.is(m.begin - 1, "number") && m.begin - 1 > from_ ? m.begin - 2 : m.begin - 1;
    return in_.any(noun, {"slot", "slots", "fret", "frets", "job", "jobs", "piece", "pieces", "booking"});
  }

  // What says by itself what it is comes before any words; a number that nothing says the kind of comes last.
  int cost_of(int param, const Said& said, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    if (constant(param, m)) return -1;
    const Token& t = in_.s.tokens[m.begin];
    if (bare(m) && kind == shop::Kind::job) return 100;
    // Where lines of a board are told of, "the bass" is more likely one of them.
    if (kind == shop::Kind::job && t.is("bass") && frame_.phrase.row->find("line") != nullptr) return 1;
    return (bare(m) ? (t.ordinal ? 0 : 1) : -3) + (said.pointing ? 1 : 0);
  }

  static bool constant(int param, const Match& m) {
    return std::any_of(m.phrase->steps.begin(), m.phrase->steps.end(),
                       [&](const Step& s) { return s.op == Step::Op::set && s.a == param && !s.plain; });
  }

  const Frame& frame_;
  std::size_t from_, to_;
  Spelling spelling_;
  const Reader& in_;
  std::uint64_t wanted_ = 0;
  bool all_needed_ = true;
  std::uint64_t exact_ = 0; // needed words that stand there without a mistake
  std::vector<std::map<Key, Partial>> at_;
};

// Whether each item that must be there can be: one of its first words stands in the sentence.
bool could_be(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling, const Reader& in) {
  return std::all_of(frame.items.begin(), frame.items.end(), [&](const Item& item) {
    if (!item.needed || item.phrase.open) return true;
    for (std::size_t i = from; i < to; ++i) {
      for (const Near& n : in.near[i]) {
        if (n.distance > 0 && spelling == Spelling::exact) continue;
        if (std::binary_search(item.phrase.first.begin(), item.phrase.first.end(), n.id)) return true;
      }
    }
    return false;
  });
}

bool standing_alone(const shop::Param& p, bool command) {
  using enum shop::Kind;
  return p.kind == job || p.kind == wire || p.kind == machine || p.kind == person ||
         (command && p.kind == at && p.name == "at");
}

// "{x=1} one|other" is one pattern: what the first way sets, the others set too, unless they set something.
std::string as_pattern(std::string_view item) {
  std::vector<std::string> ways(1);
  int depth = 0;
  for (char c : item) {
    depth += c == '(' || c == '[' || c == '<' ? 1 : c == ')' || c == ']' || c == '>' ? -1 : 0;
    if (c == '|' && depth == 0)
      ways.emplace_back();
    else
      ways.back() += c;
  }
  if (ways.size() == 1) return ways.front();
  const std::size_t close = ways.front().find('}');
  const bool sets =
      ways.front().starts_with('{') && ways.front().substr(0, close).find('=') != std::string::npos;
  std::string out;
  for (const std::string& way : ways) {
    const bool own = way.find('=') != std::string::npos;
    out += (out.empty() ? "(" : "|") + (sets && !own ? ways.front().substr(0, close + 1) + " " : "") + way;
  }
  return out + ")";
}

} // namespace

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

Frame compile(const FrameText& text, const shop::Row& row, bool command, Lexicon& lexicon) {
  Frame out{Phrase{&row, command, false, std::string(row.name), {}, {}, false}, {}};
  std::string said;
  for (std::string_view pattern : text.items) {
    if (pattern.starts_with('!')) {
      said += "{*" + std::string(pattern.substr(1)) + "}";
      continue;
    }
    Item item;
    item.needed = pattern.starts_with('+'), item.tail = pattern.starts_with('~');
    if (item.needed || item.tail) pattern.remove_prefix(1);
    item.phrase = compile(row, command, as_pattern(pattern), lexicon);
    item.words =
        item.needed && std::none_of(item.phrase.steps.begin(), item.phrase.steps.end(), [](const Step& s) {
          return s.op == Step::Op::take || s.op == Step::Op::set || s.op == Step::Op::pass;
        });
    said += pattern;
    out.items.push_back(std::move(item));
  }
  // What says by itself what it is may stand anywhere, unless the frame says where.
  for (const shop::Param& p : row.takes) {
    const std::string take = "{" + std::string(p.name) + "}";
    const bool passed = said.find("{*" + std::string(p.name) + "}") != std::string::npos;
    if (!standing_alone(p, command) || passed) continue;
    Item item;
    item.phrase = compile(row, command, take, lexicon);
    out.items.push_back(std::move(item));
  }
  if (out.items.size() > 64)
    throw std::invalid_argument("The frame of '" + out.phrase.text + "' is too long.");
  return out;
}

std::optional<Laid> lay(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling,
                        const Reader& in, bool all_needed) {
  if (from >= to || (all_needed && !could_be(frame, from, to, spelling, in))) return std::nullopt;
  return Layer{frame, from, to, spelling, in}.run(all_needed);
}

} // namespace nutward::talk
