#include "talk/understand.hpp"

#include "talk/render.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::talk {

using shop::Kind;
using What = Understood::What;

Understood tell(std::string kind, std::string text) {
  Understood out;
  out.tell.kind = std::move(kind);
  out.tell.text = std::move(text);
  return out;
}

Understood offer(std::string text, const std::vector<shop::Call>& calls, const Surroundings& at) {
  Understood out = tell("unclear", std::move(text));
  for (const shop::Call& call : calls) {
    if (out.tell.choices.size() == 9) break;
    const shop::Row* row = at.book.row(call.row);
    out.tell.choices.push_back({row != nullptr ? told(*row, call, at.names) : call.row, call, {}});
  }
  return out;
}

const shop::Value* from_about(const shop::Param& param, const shop::Call& about) {
  if (const shop::Value* v = about.find(param.name)) return v;
  switch (param.kind) {
  case Kind::job:
    return about.find("job");
  case Kind::piece:
    return about.find("piece");
  case Kind::wire:
    return about.find("wire");
  case Kind::slot:
    return about.find("slot");
  default:
    return nullptr;
  }
}

std::string as_before(const shop::Param& param, const shop::Value& value, const Names& names) {
  return fmt::format("{} {}, as before", param.name, told(param, value, names));
}

// "Fret 8 measures 54.6 mm, will it do": behind a pause, a helping verb with its subject, or a word that
// asks.
bool asks_behind(const Reader& in) {
  for (std::size_t i = 1; i < in.size(); ++i) {
    std::size_t k = i;
    if (!in.any(i - 1, {",", ";", ":", ".", "-"})) continue;
    if (in.s.tokens[i - 1].is("-") && in.s.tokens[i - 1].glued) continue;
    if (in.any(k, {"and", "but", "so", "or"})) ++k;
    if (in.any(k, {"is", "are", "was", "will", "would", "does", "do", "did", "can", "could", "should",
                   "shall", "may", "might", "has", "have"}) &&
        in.any(k + 1, {"it", "that", "this", "they", "those", "i", "we", "you", "the", "there", "he", "she",
                       "any", "anybody", "anyone"}))
      return true;
    if (in.any(k, {"what", "which", "where", "why", "how", "who", "whose"})) return true;
  }
  return false;
}

Mood mood_of(const Reader& in) {
  std::size_t i = 0;
  while (i < in.size() && (is_filler(in.s.tokens[i]) || in.any(i, {"then", "no"})))
    ++i;
  if (i == in.size()) return in.s.asks ? Mood::question : Mood::order;
  const bool states = i > 0 && in.is(i - 1, "there") && in.any(i, {"is", "are", "was", "were", "will"});
  if (states && !in.s.asks) return Mood::order; // "there is a gap under 9"
  const bool helping = in.any(i, {"do",    "did",    "does",  "is",   "are",  "was", "were", "can",
                                  "could", "should", "would", "will", "have", "has", "had",  "must",
                                  "may",   "might",  "need",  "let",  "we",   "i",   "you"});
  if (in.any(i, {"not", "never", "without"})) return Mood::negated;
  if (helping && in.any(i + 1, {"not", "never"}) && !in.s.asks) return Mood::negated;
  if (in.s.asks) return Mood::question;
  if (in.is(i, "do") && in.is(i + 1, "job")) return Mood::order; // "do job 3 next"
  // "did the next pass": who did it is left out.
  if (in.is(i, "did") &&
      (in.any(i + 1, {"the", "a", "my", "all"}) || (in.at(i + 1) && in.at(i + 1)->is_number())))
    return Mood::order;
  if (in.is(i, "had") && in.any(i + 1, {"a", "another", "my"})) return Mood::order; // "had another look"
  const bool asking =
      in.any(i, {"did", "do",    "does",    "what",      "if",      "would",   "should", "could", "can",
                 "may", "might", "is",      "are",       "was",     "were",    "has",    "have",  "had",
                 "why", "how",   "when",    "where",     "which",   "who",     "whose",  "shall", "will",
                 "am",  "must",  "suppose", "supposing", "imagine", "whether", "unless", "maybe", "perhaps"});
  return asking ? Mood::question : Mood::order;
}

Understood not_ordered(Mood mood, const Match& match, const Surroundings& at) {
  if (mood == Mood::negated) {
    return tell(
        "unclear",
        fmt::format("Nothing was done: that says what not to do, and '{}' is something that I only do. "
                    "What has been done can be taken back with 'undo'.",
                    match.phrase->row->name));
  }
  Understood one = decide({match}, at);
  Understood out =
      tell("unclear", "Nothing was done: that sounds like a question, and I know it only as an order.");
  if (one.what == What::order) {
    out = offer(out.tell.text + " Pick 1 if it is meant as one.", one.calls, at);
  }
  return out;
}

namespace {

// "do not hold {piece} any more" is an order that says its own "not".
bool names_negation(const Phrase& phrase, const Lexicon& lexicon) {
  const int no = lexicon.find("not"), never = lexicon.find("never"), without = lexicon.find("without");
  return std::any_of(phrase.steps.begin(), phrase.steps.end(), [&](const Step& s) {
    return s.op == Step::Op::word && (s.a == no || s.a == never || s.a == without);
  });
}

// Keeps what may be done in this mood; what it takes out is remembered, to say why nothing was done.
std::vector<Match> allowed(std::vector<Match> matches, Mood mood, const Lexicon& lexicon,
                           std::optional<Match>& barred) {
  if (mood == Mood::order) return matches;
  const auto not_now = [&](const Match& m) {
    return m.phrase->command && !(mood == Mood::negated && names_negation(*m.phrase, lexicon));
  };
  for (const Match& m : matches) {
    if (not_now(m) && !barred) barred = m;
  }
  std::erase_if(matches, not_now);
  return matches;
}

// The order inside "did we use it" or "don't use it", to say what it is that was not done.
std::optional<Match> order_inside(const Reader& in, const Surroundings& at) {
  std::size_t i = 0;
  while (in.any(i, {"do",   "did",    "does",   "not",     "never", "we",    "i",   "you",   "what",
                    "if",   "should", "could",  "can",     "would", "shall", "may", "might", "must",
                    "have", "has",    "please", "suppose", "let",   "us",    "it",  "they",  "had",
                    "to",   "will",   "maybe",  "perhaps", "and",   "then"})) {
    ++i;
  }
  if (i == 0) return std::nullopt;
  for (const Match& m : match_all(at.book, Spelling::exact, in, i)) {
    if (m.phrase->command) return m;
  }
  return std::nullopt;
}

// "slots of job 3 in inches": the question before it, answered in that unit.
std::optional<Understood> asked_in_unit(const Reader& in, const Surroundings& at) {
  if (at.inner) return std::nullopt;
  const std::size_t n = in.size();
  std::size_t to = n; // of the question
  std::string unit;
  for (std::size_t words = 1; words <= 4 && words + 3 <= n && unit.empty(); ++words) {
    const std::size_t at_in = n - words - 1;
    if (!in.is(at_in, "in") || in.s.tokens[at_in].glued) continue;
    unit = length_unit_called(in.s.said(at_in + 1, n));
    to = at_in;
  }
  if (unit.empty()) return std::nullopt;
  Sentence rest = normalise(in.s.said(0, to));
  rest.asks = in.s.asks;
  Surroundings inner = at;
  inner.inner = true;
  Understood out = understand(rest, inner);
  if (out.what != What::ask) return std::nullopt;
  out.unit = unit;
  return out;
}

// By the frames. They do not tell what is wrong with a sentence, where that is looked for.
std::optional<Understood> key_words(const Reader& in, const Surroundings& at, Mood mood, Spelling spelling,
                                    Leniency leniency) {
  return in.thorough ? std::nullopt : by_frames(in, at, mood, spelling, leniency);
}

// What no phrase says: by the frames, in parts, as going on from the last; then with words left over or
// mistyped. Where a phrase was an order that the mood forbids, only a question that knows every word comes
// before saying so.
std::optional<Understood> unsaid(const Reader& in, const Surroundings& at, Mood mood, bool barred) {
  if (mood == Mood::negated) return std::nullopt;
  std::optional<Match> not_now;
  // Where no word is strange this would find what was found before.
  std::vector<Match> near;
  if (in.has_strange()) near = allowed(match_all(at.book, Spelling::mistyped, in), mood, in.lexicon, not_now);
  // A phrase with a typing mistake is nearer than what key words say: "define wre slim" is no other machine.
  const auto outdone = [&](const Understood& u) {
    if (near.empty() || (u.what == What::ask && near.front().distance > 1)) return false;
    return u.what == What::tell || std::any_of(u.calls.begin(), u.calls.end(), [&](const shop::Call& c) {
             return c.row != near.front().phrase->row->name;
           });
  };
  if (auto framed = key_words(in, at, mood, Spelling::exact, Leniency::none); framed && !outdone(*framed)) {
    // One call made of two clauses hides the other: "we have two presses, and the sander takes 10 minutes".
    auto each = framed->what == What::order ? clauses(in.s, at) : std::nullopt;
    return each ? each : framed;
  }
  if (barred) return std::nullopt;
  if (auto all = in.thorough ? std::nullopt : several(in.s, at); all && !outdone(*all)) return all;
  if (auto done = follow_up(in, at, true)) return done;
  if (!near.empty()) return decide(std::move(near), at);
  if (!in.has_strange()) return std::nullopt;
  return key_words(in, at, mood, Spelling::mistyped, Leniency::none);
}

// A sentence with the name of a thing that there is not.
std::optional<Understood> with_unknown_name(Reader& in, const Surroundings& at, Mood mood, bool surely,
                                            std::optional<Match>& barred) {
  if (!in.has_strange()) return std::nullopt;
  in.lenient = true;
  auto named = allowed(match_all(at.book, Spelling::mistyped, in), mood, in.lexicon, barred);
  in.lenient = false;
  if (named.empty() || (surely && named.front().distance > 0)) return std::nullopt;
  if (auto unknown = unknown_name(named.front(), at)) return unknown;
  return surely ? std::nullopt : std::optional{decide(std::move(named), at)};
}

// Nothing that can be done is at all likely to be meant.
bool asks_rather(const Reader& in, const Surroundings& at) {
  double orders = 0, nothing = 0;
  for (const Likely& l : at.book.evidence().rank(in))
    (l.row == nullptr ? nothing : orders) += l.row == nullptr || at.book.is_command(*l.row) ? l.share : 0;
  return orders < 0.1 && nothing < 0.25;
}

// nullopt: it is none of all that can be said.
std::optional<Understood> understood(Reader& in, const Surroundings& at) {
  if (auto done = act(in, at)) return done;
  if (auto done = asked_in_unit(in, at)) return done;
  if (auto done = correction(in, at)) return done;
  if (auto done = follow_up(in, at, false)) return done;

  if (in.s.asks) {
    if (auto done = follow_up(in, at, true)) return done; // "slot 4?"
  }
  if (auto filled = fill_pending(in, at, false)) return filled;

  const Mood mood = mood_of(in);
  std::optional<Match> barred;
  if (auto exact = allowed(match_all(at.book, Spelling::exact, in), mood, in.lexicon, barred); !exact.empty())
    return decide(std::move(exact), at);
  if (auto filled = fill_pending(in, at, true)) return filled;
  if (auto help = how_to(in, at, true)) return help;
  if (auto asked = two_questions(in, at)) return asked;
  if (auto asked = behind_preamble(in, at, true)) return asked;
  auto done = unsaid(in, at, mood, barred.has_value());
  if (!done || done->what == What::tell) {
    if (auto asked = behind_preamble(in, at, false)) return asked;
  }
  if (!done || (done->what == What::ask && done->calls.front().row == "help")) {
    if (auto help = how_to(in, at, false)) return help;
  }
  if (done) return done;
  if (!barred) {
    if (auto unknown = with_unknown_name(in, at, mood, true, barred)) return unknown;
  }
  if (!barred && mood != Mood::negated) {
    if (auto framed = key_words(in, at, mood, Spelling::mistyped, Leniency::offers)) return framed;
    // "Please print the cut list for the board out there": told as an order, it is a question all the same.
    if (mood == Mood::order && asks_rather(in, at)) {
      if (auto asked = key_words(in, at, Mood::question, Spelling::exact, Leniency::offers)) return asked;
    }
  }
  if (!barred) {
    if (auto unknown = with_unknown_name(in, at, mood, false, barred)) return unknown;
  }
  if (!barred && mood != Mood::order) barred = order_inside(in, at);
  return barred ? std::optional{not_ordered(mood, *barred, at)} : std::nullopt;
}

// Only numbers, and what stands behind a comma, are ever found wrong.
bool may_be_wrong(const Sentence& sentence) {
  return std::any_of(sentence.tokens.begin(), sentence.tokens.end(),
                     [](const Token& t) { return t.is_number() || t.is(",") || t.is(";"); });
}

} // namespace

namespace {

// "Only got to 1200" behind "pressed frets 4 to 6": of that, and not of the pass that comes next.
std::optional<Understood> of_last_report(const Understood& out, const Reader& in, const Surroundings& at) {
  const bool pressed = out.what == What::order && out.calls.size() == 1 && out.calls[0].row == "pressed" &&
                       out.calls[0].find("next") != nullptr;
  if (!pressed || !at.state.done_last || !at.state.done || at.state.done->row != "pressed")
    return std::nullopt;
  for (std::size_t i = 0; i < in.size(); ++i)
    if (in.any(i, {"next", "pass"})) return std::nullopt;
  shop::Call again = *at.state.done;
  const shop::Value *now = out.calls[0].find("job"), *before = again.find("job");
  if (now != nullptr && before != nullptr && !(*now == *before)) return std::nullopt; // of another board
  std::erase_if(again.args, [](const auto& arg) { return arg.first == "load" || arg.first == "next"; });
  // "The next pass" is another one by now.
  const shop::Value* slots = at.state.about.find("slots");
  if (slots != nullptr && again.find("slots") == nullptr) again.args.emplace_back("slots", *slots);
  if (const shop::Value* load = out.calls[0].find("load")) again.args.emplace_back("load", *load);
  std::vector<shop::Call> ways{{"undo", {}}, out.calls[0]};
  if (again.find("slots") != nullptr) ways.insert(ways.begin() + 1, std::move(again));
  return offer(
      "Nothing was done yet. Take back what was reported before and say it anew; or the next pass is meant.",
      ways, at);
}

// "Order 10 sticks of tall": said to somebody who would then order them. Recorded as ordered, it would be
// waited for, and nobody would have ordered it.
std::optional<Understood> to_be_ordered(const Understood& out, const Reader& in, const Surroundings& at) {
  if (out.what != What::order) return std::nullopt;
  std::vector<shop::Call> calls;
  for (const shop::Call& call : out.calls) {
    if (call.row != "ordered" && call.row != "receive") continue;
    if (call.find("order") != nullptr) return std::nullopt; // "order 4, 10 sticks of it, came"
    calls.push_back(call);
    calls.back().row = "ordered";
  }
  std::size_t i = 0;
  while (i < in.size() && (is_filler(in.s.tokens[i]) ||
                           in.any(i, {"please", "kindly", "you", "then", "now", "go", "and", ","})))
    ++i;
  if (calls.empty() || !in.any(i, {"order", "reorder"})) return std::nullopt;
  // "Order placed with Ferro: …" reports.
  for (std::size_t k = i + 1; k < in.size(); ++k)
    if (in.any(k, {"placed", "came", "arrived", "is", "was", "has", "sent", "went", "comes", "done"}))
      return std::nullopt;
  return offer("Nothing was done: Nutward orders nothing from anybody. Pick 1 once it is ordered, so that it "
               "counts as coming.",
               calls, at);
}

} // namespace

Understood understand(const Sentence& sentence, const Surroundings& at) {
  if (sentence.tokens.empty()) return tell("unclear", "That says nothing. Say 'help' for what there is.");
  Reader in{sentence, at.book.lexicon(), at.names, at.now};
  if (auto out = understood(in, at)) {
    if (auto last = of_last_report(*out, in, at)) return *std::move(last);
    if (auto yet = to_be_ordered(*out, in, at)) return *std::move(yet);
    if (auto part = not_all_of_it(*out, in, at)) return *std::move(part);
    return *std::move(out);
  }
  if (at.inner || !may_be_wrong(sentence)) return not_understood(in, at);
  // What is wrong with it is told by the phrases that it is nearly, which were passed over.
  Reader thorough{in}; // with what was read already
  thorough.thorough = true;
  thorough.trouble = {}, thorough.name_from = thorough.name_to = 0;
  if (auto out = understood(thorough, at)) return *std::move(out);
  return not_understood(thorough, at);
}

} // namespace nutward::talk
