// "I was off for two days, so what is due": what leads up to a question is no part of it.
#include "talk/frame.hpp"
#include "talk/understand.hpp"

#include <algorithm>

namespace nutward::talk {

using What = Understood::What;

namespace {

bool asks_who_or_what(std::size_t i, const Reader& in) {
  return in.any(i, {"what", "which", "where", "when", "why", "how", "who", "whose", "whom"});
}

// A clause that asks begins here: "what …", "by when …", "is the …", "tell me …".
bool asks_from(std::size_t i, const Reader& in) {
  if (in.any(i, {"by", "until", "till", "from", "on", "in", "at", "for", "to"}))
    return asks_who_or_what(i + 1, in);
  if (asks_who_or_what(i, in)) return true;
  if (in.any(i, {"tell", "show", "give", "let", "print", "list", "read", "run"}))
    return in.any(i + 1, {"me", "us", "out", "off", "all", "the"});
  return in.any(i,
                {"is", "are", "was", "does", "do", "did", "can", "could", "will", "would", "has", "have"}) &&
         i + 2 < in.size();
}

// Where the last clause begins, if it asks and the sentence does not begin with it.
std::size_t question_from(const Reader& in) {
  constexpr std::size_t shortest = 3; // of what leads up to it
  for (std::size_t i = in.size(); i-- > shortest;) {
    const Token& t = in.s.tokens[i - 1];
    const bool pause =
        (t.is(",") || t.is(";") || t.is(":") || t.is(".") || t.is("-")) && !(t.glued && in.s.tokens[i].glued);
    if (!pause && !t.is("so")) continue;
    std::size_t at = i;
    while (in.any(at, {"so", "and", "but", "then", "now", "just", "please", "well", "quickly"}))
      ++at;
    if (asks_from(at, in)) return at;
  }
  return 0;
}

// A number is part of what is asked, unless it is but a time gone by.
bool is_told(std::size_t i, const Reader& in) {
  const Token& t = in.s.tokens[i];
  if (t.kind == Token::Kind::quoted) return true;
  if (!t.is_number() || t.is("one") || t.is("first")) return false;
  return !in.any(i + 1, {"minute", "minutes", "hour", "hours", "day", "days", "week", "weeks", "month",
                         "months", "year", "years", "times"});
}

// Whether it may be passed over: it asks nothing, tells nothing by numbers, and orders nothing.
bool leads_up(std::size_t to, const Reader& in, const Surroundings& at) {
  if (asks_who_or_what(0, in)) return false;
  for (std::size_t i = 0; i < to; ++i)
    if (is_told(i, in)) return false;
  const auto ranked = at.book.evidence().rank(in, 0, to);
  return std::none_of(ranked.begin(), ranked.end(), [&](const Likely& l) {
    return l.row != nullptr && at.book.is_command(*l.row) && l.share > 0.7;
  });
}

// What leads up to it names a job, a wire, a machine or a time that the question could take and does not
// have.
bool lacks_what_was_said(const shop::Call& call, std::size_t to, const Reader& in, const Surroundings& at) {
  const shop::Row* row = at.book.row(call.row);
  if (row == nullptr) return true;
  const auto says_time = [&] {
    for (std::size_t i = 0; i < to; ++i) {
      const bool gone =
          in.any(i, {"days", "weeks", "hours", "minutes", "minute", "hour", "day", "ago", "may"});
      if (says_when(in.s.tokens[i]) && (!gone || (i > 0 && in.s.tokens[i - 1].is_number() && i + 1 == to)))
        return true;
    }
    return false;
  };
  bool takes_time = false, has_time = false;
  for (const shop::Param& p : row->takes) {
    const bool has = call.find(p.name) != nullptr;
    using enum shop::Kind;
    const bool time = p.kind == day || p.name == "days" || p.name == "week" || p.name == "month" ||
                      p.name == "part" || p.name == "since_month";
    takes_time = takes_time || time, has_time = has_time || (time && has);
    if (has || (p.kind != job && p.kind != wire && p.kind != machine)) continue;
    for (std::size_t i = 0; i < to; ++i)
      for (const Said& said : recognise(p, i, false, in))
        if (!said.pointing && !in.s.tokens[i].is_number() && said.end <= to) return true;
  }
  return takes_time && !has_time && says_time();
}

} // namespace

std::optional<Understood> behind_preamble(const Reader& in, const Surroundings& at, bool as_phrase) {
  const std::size_t from = question_from(in);
  if (at.inner || from == 0 || !leads_up(from, in, at)) return std::nullopt;
  Sentence rest = normalise(in.s.said(from, in.size()));
  rest.asks = true;
  Understood out;
  const auto is_row = [&](std::string_view name) { return out.calls.front().row == name; };
  if (as_phrase) {
    const Reader reader{rest, at.book.lexicon(), at.names, at.now};
    auto found = match_all(at.book, Spelling::exact, reader);
    std::erase_if(found, [](const Match& m) { return m.phrase->command; });
    if (found.empty()) return std::nullopt;
    out = decide(std::move(found), at);
  } else {
    Surroundings inner = at;
    inner.inner = true;
    out = understand(rest, inner);
  }
  if (out.what != What::ask || is_row("help")) return std::nullopt;
  for (const shop::Call& call : out.calls)
    if (lacks_what_was_said(call, from, in, at)) return std::nullopt;
  return out;
}

// Two questions, each a phrase of its own: "how much medium have we got and when does it run out".
std::optional<Understood> two_questions(const Reader& in, const Surroundings& at) {
  if (!asks_from(0, in)) return std::nullopt;
  const auto phrase_of = [&](std::size_t from, std::size_t to,
                             const State& state) -> std::optional<Understood> {
    Sentence part = normalise(in.s.said(from, to));
    part.asks = true;
    const Reader reader{part, at.book.lexicon(), at.names, at.now};
    auto found = match_all(at.book, Spelling::exact, reader);
    std::erase_if(found, [](const Match& m) { return m.phrase->command; });
    if (found.empty()) return std::nullopt;
    Understood out = decide(std::move(found), Surroundings{at.book, at.names, state, at.now});
    return out.what == What::ask && out.calls.size() == 1 ? std::optional{std::move(out)} : std::nullopt;
  };
  for (std::size_t i = 2; i + 2 < in.size(); ++i) {
    std::size_t behind = i;
    while (in.any(behind, {",", ";", "and", "then", "also", "?", "."}))
      ++behind;
    if (behind == i || !asks_from(behind, in)) continue;
    auto first = phrase_of(0, i, at.state);
    if (!first) continue;
    State then = at.state;
    for (const auto& arg : first->calls.front().args)
      std::erase_if(then.about.args, [&](const auto& had) { return had.first == arg.first; }),
          then.about.args.push_back(arg);
    auto second = phrase_of(behind, in.size(), then);
    if (!second || second->calls.front().row == first->calls.front().row) continue;
    first->calls.push_back(second->calls.front());
    first->notes.insert(first->notes.end(), second->notes.begin(), second->notes.end());
    return first;
  }
  return std::nullopt;
}

} // namespace nutward::talk
