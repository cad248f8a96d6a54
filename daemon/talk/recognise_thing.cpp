// Things of the shop by number or by name. A name is never corrected: only exact parts of it count.
#include "talk/recognise.hpp"

#include <boost/container/small_vector.hpp>

#include <algorithm>

namespace nutward::talk {
namespace {

using shop::Kind;

std::string_view noun(Kind kind) {
  return kind == Kind::wire      ? "wire"
         : kind == Kind::job     ? "job"
         : kind == Kind::person  ? "person"
         : kind == Kind::machine ? "machine"
                                 : "receiver";
}
shop::Thing thing(Kind kind) {
  return kind == Kind::wire      ? shop::Thing::wire
         : kind == Kind::job     ? shop::Thing::job
         : kind == Kind::person  ? shop::Thing::actor
         : kind == Kind::machine ? shop::Thing::machine
                                 : shop::Thing::receiver;
}

const std::string& text_of(const Token& t) {
  return t.is_number() ? t.number : t.word;
}

using Several = boost::container::small_vector<const Named*, 16>;

// Those that have the token as a whole word of their name; or as its beginning, from three letters on, if the
// word means nothing else.
Several having(std::size_t i, const Several& all, const Reader& in) {
  const Token& t = in.s.tokens[i];
  const std::string_view w = text_of(t);
  const bool begins = w.size() >= 3 && !t.is_number() && in.near[i].empty() && !is_english(w);
  Several out;
  for (const Named* named : all) {
    const bool has = std::any_of(named->words.begin(), named->words.end(), [&](std::string_view have) {
      return have == w || (begins && have.starts_with(w));
    });
    if (has) out.push_back(named);
  }
  return out;
}

// A name is begun by a word of its own, not by one that only joins words; or by a number that is joined to
// one: "twelve-string".
bool can_begin(std::size_t i, const Reader& in) {
  const Token* t = in.at(i);
  const Token* joined = in.is(i + 1, "-") ? in.at(i + 2) : nullptr;
  if (t != nullptr && t->is_number() && joined != nullptr) {
    return joined->kind == Token::Kind::word && !joined->is_number();
  }
  return t != nullptr && t->kind == Token::Kind::word && !is_filler(*t) && !t->is_number();
}

void add(std::vector<Said>& out, std::size_t end, const Several& who, std::size_t from, const Reader& in) {
  std::string said;
  for (std::size_t k = from; k < end; ++k)
    said += (said.empty() ? "" : " ") + text_of(in.s.tokens[k]);
  Said found{end, who.front()->ref};
  if (who.size() > 1) {
    const auto whole_name =
        std::find_if(who.begin(), who.end(), [&](const Named* n) { return n->full == said; });
    if (whole_name != who.end())
      found.value = (*whole_name)->ref;
    else
      for (const Named* n : who)
        found.others.emplace_back(n->ref);
  }
  out.insert(out.begin(), std::move(found));
}

std::vector<Said> by_words(Kind kind, std::size_t i, const Reader& in) {
  std::vector<Said> out;
  if (!can_begin(i, in)) return out;
  // "the bass side" is a side of any board.
  if (in.any(i, {"bass", "treble", "middle"}) && in.any(i + 1, {"side", "line", "edge", "end"})) return out;
  Several who;
  for (const Named& n : in.names.of(kind))
    who.push_back(&n);
  for (std::size_t k = i; k < in.size() && k < i + 8; ++k) {
    const Token& t = in.s.tokens[k];
    if (k > i && in.any(k, {"of", "the", "for", "-"})) continue;
    if (t.kind == Token::Kind::quoted || t.kind == Token::Kind::symbol) break;
    Several left = having(k, who, in);
    if (left.empty()) break;
    who = std::move(left);
    add(out, k + 1, who, i, in);
  }
  return out;
}

// "the medium wire", "the mandolin job": the noun behind the name.
void take_noun(std::vector<Said>& found, Kind kind, const Reader& in) {
  std::vector<Said> longer;
  for (const Said& s : found) {
    const bool of_job =
        kind == Kind::job && in.any(s.end, {"guitar", "instrument", "neck", "board", "fretboard"});
    if (!in.is(s.end, noun(kind)) && !(kind == Kind::wire && in.is(s.end, "fretwire")) && !of_job) continue;
    longer.push_back(s);
    ++longer.back().end;
  }
  found.insert(found.begin(), longer.begin(), longer.end());
}

// Words that nobody knows, where a name is expected: the shop is asked by them, and says that it knows none.
std::vector<Said> unknown(std::size_t i, const Reader& in) {
  std::vector<Said> out;
  for (std::size_t k = i; k < in.size() && k < i + 3 && can_begin(k, in) && !is_english(in.s.tokens[k].word);
       ++k) {
    const bool known =
        std::any_of(in.near[k].begin(), in.near[k].end(), [](const Near& n) { return n.distance == 0; });
    if (known) break;
    out.insert(out.begin(),
               Said{k + 1, std::string(in.s.said(i, k + 1)), {}, false, static_cast<int>(k + 1 - i)});
  }
  return out;
}

} // namespace

std::vector<Said> recognise_thing(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  const Kind kind = param.kind;
  std::size_t at = i;
  if (in.is(at, "it")) return {{at + 1, {}, {}, true}};
  if (in.any(at, {"that", "this"}) && in.is(at + 1, noun(kind))) return {{at + 2, {}, {}, true}};
  if (in.any(at, {"the", "a", "an", "my", "our"})) ++at;
  if (in.is(at, "same") && in.is(at + 1, noun(kind))) return {{at + 2, {}, {}, true}};
  const bool named = in.is(at, noun(kind));
  if (named) ++at;
  if (named && in.any(at, {"number", "no"})) ++at;
  if (named && in.is(at, ".") && in.is(at - 1, "no")) ++at;
  const bool hash = in.is(at, "#");
  if (hash) ++at;
  const Token* t = in.at(at);
  if (t == nullptr) return {};
  if (t->kind == Token::Kind::quoted) return {{at + 1, t->word}};
  if (!named && !hash && !plain && t->is("one")) return {}; // "the one who does it"
  if (auto id = whole(t); id && !t->ordinal && (named || hash || plain || kind == Kind::job)) {
    // "15:00" and "9-14" begin with no job; "52.4" is no whole number.
    const Token* minutes = in.is(at + 1, ":") ? in.at(at + 2) : nullptr;
    if (minutes != nullptr && minutes->is_number() && minutes->glued) return {};
    if (!named && !hash && !plain && in.is(at + 1, "-")) return by_words(kind, at, in);
    if (!named && !hash && !plain && at > 0 && in.is(at - 1, "/")) return {};
    const shop::Ref ref{thing(kind), *id};
    // "Five, next pass": a number at the head of the sentence that stands for itself.
    const Token* behind = in.is(at + 1, ",") ? in.at(at + 2) : nullptr;
    if (!named && kind == Kind::job && in.leads(at) && behind != nullptr && !behind->is_number() &&
        !behind->glued)
      return {{at + 2, ref}, {at + 1, ref}};
    return {{at + 1, ref}};
  }
  std::vector<Said> out = by_words(kind, at, in);
  take_noun(out, kind, in);
  // "Receiver lamp", "the hook called tablet": a name, whoever knows it; the shop says where it knows none.
  const bool called = at > 0 && in.any(at - 1, {"receiver", "webhook", "hook", "called", "named"});
  if (out.empty() && kind == Kind::receiver && called && can_begin(at, in) &&
      !in.any(at, {"is", "can", "at", "we", "that", "this", "it", "called", "named", "any", "more", "gone",
                   "off"}))
    return {{at + 1, std::string(in.s.said(at, at + 1))}};
  if (out.empty() && in.lenient) out = unknown(at, in);
  return out;
}

} // namespace nutward::talk
