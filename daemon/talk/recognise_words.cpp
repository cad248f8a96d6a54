// Text that is taken as it stands, options, yes and no, addresses.
#include "talk/recognise.hpp"

#include "talk/frame.hpp"
#include "talk/pattern.hpp"
#include "talk/spelling.hpp"

#include <algorithm>
#include <array>

namespace nutward::talk {
namespace {

using shop::Kind;

constexpr std::size_t most_free = 500; // bytes of a free text

} // namespace

// Prose may hold anything. Names do not: what stands behind a comma, and a number with its unit, is a detail
// of something else, and a name that swallowed it would hide that it was not understood.
bool is_prose(const shop::Param& param) {
  return param.name == "note" || param.name == "why" || param.name == "to" || param.name == "ladder";
}

// "Set unit to in".
bool takes_fillers(const shop::Param& param) {
  return param.name == "to";
}

bool is_unit_word(std::string_view word) {
  static constexpr std::array<std::string_view, 18> words{"mm",  "cm",   "m",    "in",  "inch", "inches",
                                                          "ft",  "foot", "feet", "g",   "kg",   "lb",
                                                          "lbs", "n",    "kn",   "kgf", "%",    "percent"};
  return std::find(words.begin(), words.end(), word) != words.end();
}

std::vector<Said> known_supplier(std::size_t i, const Reader& in) {
  std::size_t most = 0;
  std::vector<Said> out;
  for (const Named& n : in.names.suppliers) {
    std::size_t same = 0;
    while (same < n.words.size() && in.is(i + same, n.words[same]))
      ++same;
    most = std::max(most, same);
    // A long word of it with one mistake is no other word, where nothing else is near it.
    const Token* t = in.at(i);
    if (same == 0 && !n.words.empty() && t != nullptr && t->kind == Token::Kind::word && in.near[i].empty() &&
        n.words.front().size() > 4 && mistyped(t->word, n.words.front()) == 1)
      out.push_back({i + 1, n.words.front(), {}, false, 0, 1});
  }
  if (most > 0) out.clear();
  for (std::size_t words = most; words > 0; --words) {
    std::string said{in.s.said(i, i + words)};
    for (std::string_view genitive : {"'s", "’s"})
      if (said.size() > 4 && said.ends_with(genitive)) said.erase(said.size() - genitive.size());
    out.push_back({i + words, std::move(said)});
  }
  return out;
}

std::vector<Said> known_place(std::size_t i, const Reader& in) {
  static constexpr std::array<std::string_view, 11> nouns{
      "drawer", "shelf", "rack", "sill", "windowsill", "tray", "cupboard", "jar", "cabinet", "tub", "crate"};
  static constexpr std::array<std::string_view, 4> vague{"tin", "box", "case", "bench"}; // "the old tin"
  static constexpr std::array<std::string_view, 19> kinds{
      "old",  "top",   "bottom", "left",  "right", "window", "middle", "upper", "lower",  "second",
      "back", "small", "big",    "spare", "side",  "parts",  "blue",   "red",   "biscuit"};
  const auto among = [](const auto& words, std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
  };
  const auto is_word = [&](std::size_t k) {
    return in.at(k) != nullptr && in.at(k)->kind == Token::Kind::word;
  };
  std::size_t at = i;
  Said out;
  std::string text;
  for (; is_word(at) && at < i + 3 && among(kinds, in.at(at)->word); ++at) {
    text += in.at(at)->word + " ";
    if (in.is(at + 1, "-")) ++at;
  }
  if (!is_word(at)) return {};
  std::string_view noun;
  for (std::string_view n : nouns) {
    const std::string& word = in.at(at)->word;
    if (word == n) noun = n, out.distance = 0;
    if (noun.empty() && word.size() > 4 && mistyped(word, n) == 1) noun = n, out.distance = 1;
  }
  const bool bare = text.empty() && noun.empty();
  if (noun.empty() && among(vague, in.at(at)->word)) noun = in.at(at)->word;
  if (noun.empty()) return {};
  text += noun;
  const Token* next = in.at(at + 1);
  const bool numbered = next != nullptr && whole(next) && !next->ordinal;
  if (bare && (!numbered || noun != "box")) return {};
  if (numbered) text += " " + next->number;
  out.end = at + (numbered ? 2 : 1);
  out.value = text;
  return {out};
}

std::string_view currency_word(std::string_view word) {
  struct Currency {
    std::string_view word, code;
  };
  static constexpr std::array all{
      Currency{"€", "eur"},       Currency{"euro", "eur"},   Currency{"euros", "eur"},
      Currency{"eur", "eur"},     Currency{"$", "usd"},      Currency{"dollar", "usd"},
      Currency{"dollars", "usd"}, Currency{"usd", "usd"},    Currency{"£", "gbp"},
      Currency{"gbp", "gbp"},     Currency{"quid", "gbp"},   Currency{"yen", "jpy"},
      Currency{"¥", "jpy"},       Currency{"jpy", "jpy"},    Currency{"chf", "chf"},
      Currency{"franc", "chf"},   Currency{"francs", "chf"}, Currency{"sek", "sek"},
      Currency{"nok", "nok"},     Currency{"dkk", "dkk"},    Currency{"czk", "czk"},
      Currency{"pln", "pln"},     Currency{"huf", "huf"},    Currency{"cad", "cad"},
      Currency{"aud", "aud"},     Currency{"nzd", "nzd"},    Currency{"cny", "cny"},
      Currency{"inr", "inr"},     Currency{"brl", "brl"},    Currency{"mxn", "mxn"},
      Currency{"krw", "krw"},     Currency{"zar", "zar"}};
  const auto at = std::find_if(all.begin(), all.end(), [&](const Currency& c) { return c.word == word; });
  return at == all.end() ? std::string_view{} : at->code;
}

namespace {

// "66 USD", "$66".
bool ends_price(std::size_t i, std::size_t from, const Reader& in) {
  if (currency_word(in.at(i)->word).empty()) return false;
  return (i > from && in.at(i - 1)->is_number()) || (in.at(i + 1) != nullptr && in.at(i + 1)->is_number());
}

bool ends_quantity(std::size_t i, std::size_t from, const Reader& in) {
  if (i <= from || !in.at(i - 1)->is_number()) return false;
  if (in.is(i, "in")) return in.at(i)->glued || in.at(i + 1) == nullptr || in.is(i + 1, ",");
  return is_unit_word(in.at(i)->word);
}

void blame_name(std::size_t i, std::size_t end, const Reader& in) {
  if (in.trouble.set()) return;
  in.trouble = {"'" + std::string(in.s.said(i, end)) + "' is not taken as a name, since it holds a measure.",
                "Say details behind a comma, each by its name, or put the name into quotes."};
}

bool is_capital(std::size_t i, const Reader& in) {
  const Token* t = in.at(i);
  if (t == nullptr || t->kind != Token::Kind::word || t->begin >= in.s.original.size()) return false;
  const char c = in.s.original[t->begin];
  return c >= 'A' && c <= 'Z' && !in.any(i, {"i", "i've", "i'm", "i'd", "i'll"});
}

// "Old Mill Wire": where words begin with capitals in the middle of a sentence that has others, they are a
// name, wherever it ends. 0 where none begins at i.
std::size_t end_of_capitals(std::size_t i, const Reader& in) {
  if (i == 0 || !is_capital(i, in) || is_capital(i - 1, in) || weekday_word(in.at(i)->word)) return 0;
  std::size_t end = i + 1, small = 0;
  for (;; ++end) {
    if (is_capital(end, in)) continue;
    const bool joins = in.any(end, {"and", "&", "of", "-", "."}) && is_capital(end + 1, in);
    if (!joins) break;
  }
  for (std::size_t k = 0; k < in.size(); ++k)
    small += in.at(k)->kind == Token::Kind::word && !is_capital(k, in) ? 1 : 0;
  return small > 1 && end <= i + 6 ? end : 0;
}

// "The short bar", "bar long", "the bar called short", "the door bench": one that the shop has.
std::vector<Said> known_beside(const std::vector<Named>& known, std::initializer_list<std::string_view> nouns,
                               bool anywhere, std::size_t i, const Reader& in) {
  std::vector<Said> out;
  for (const Named& n : known) {
    std::size_t end = i;
    while (end - i < n.words.size() && in.at(end) != nullptr && in.at(end)->word == n.words[end - i])
      ++end;
    if (end == i || end - i < n.words.size()) continue;
    std::size_t before = i;
    while (before > 0 && (in.skippable(before - 1) || in.any(before - 1, {"called", "named", "name", "they",
                                                                          "call", "designated", "is"})))
      --before;
    const bool beside = in.any(end, nouns) || (before > 0 && in.any(before - 1, nouns));
    if (anywhere || beside) out.push_back({end, n.label});
  }
  return out;
}

std::vector<Said> known_thing(const shop::Param& param, std::size_t i, const Reader& in) {
  if (param.name == "bench") return known_beside(in.names.benches, {"bench"}, false, i, in);
  if (param.kind != Kind::name || (param.name != "bar" && param.name != "name")) return {};
  return known_beside(in.names.bars, {"bar", "bars", "caul"}, param.name == "bar", i, in);
}

bool ends_name(std::size_t i, const Reader& in) {
  const Token& t = in.s.tokens[i];
  return t.kind != Token::Kind::word || t.is_number() || in.run(i).find("://") != std::string_view::npos ||
         says_nothing(t, false) || doubts(t) || says_when(t) || is_filler(t) ||
         in.any(i, {"with",  "at",   "and",  "for",   "in",    "on",      "to",     "of",
                    "from",  "over", "by",   "role",  "shape", "address", "url",    "just",
                    "under", "into", "onto", "where", "who",   "since",   "because"});
}

// "Called drill press", "her name is Rose", "call it lamp": what is plainly given as a name is one, whatever
// its words mean elsewhere. It ends before a word that joins.
std::optional<Said> plain_name(std::size_t i, const Reader& in) {
  if (i == 0) return std::nullopt;
  const bool named =
      in.any(i - 1, {"called", "named", "entitled", "designated", "christened", "meet", "welcome"}) ||
      (in.is(i - 1, "machine") && i > 1 && in.any(i - 2, {"new", "define"})) || in.is(i - 1, "name") ||
      (i > 1 && in.any(i - 1, {"is", "of", ":"}) && in.is(i - 2, "name")) ||
      (i > 1 && in.any(i - 1, {"it", "him", "her", "them", "one"}) &&
       in.any(i - 2, {"call", "name", "that"})) ||
      (i > 2 && in.is(i - 1, "one") && in.is(i - 2, "that") && in.is(i - 3, "call")) ||
      (i > 1 && in.is(i - 1, "receiver") && in.any(i - 2, {"add", "new", "a", "as", "up", "another", ":"}));
  if (!named) return std::nullopt;
  std::size_t end = i;
  while (end < in.size() && end < i + 3 && !ends_name(end, in))
    ++end;
  if (end == i) return std::nullopt;
  std::string said{in.s.said(i, end)};
  return Said{end, std::move(said)};
}

// "10", "0.4 mm", "half a millimetre": a measure as a setting's value, in digits.
std::optional<Said> measure(std::size_t i, const Reader& in) {
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 12> units{{{"millimetre", "mm"},
                                                                                        {"millimetres", "mm"},
                                                                                        {"millimeters", "mm"},
                                                                                        {"pounds", "lb"},
                                                                                        {"lbs", "lb"},
                                                                                        {"newtons", "N"},
                                                                                        {"inches", "in"},
                                                                                        {"hours", ""},
                                                                                        {"hour", ""},
                                                                                        {"days", ""},
                                                                                        {"h", ""},
                                                                                        {"minutes", ""}}};
  const Token* t = in.at(i);
  std::string text;
  std::size_t end = i + 1;
  if (t->is("half") && in.is(i + 1, "a"))
    text = "0.5", end = i + 2;
  else if (t->is_number() && !t->ordinal)
    text = t->number;
  else
    return std::nullopt;
  if (const Token* unit = in.at(end); unit != nullptr && unit->kind == Token::Kind::word) {
    const auto full =
        std::find_if(units.begin(), units.end(), [&](const auto& u) { return unit->is(u.first); });
    const bool short_unit = is_unit_word(unit->word) && !(unit->is("in") && !unit->glued);
    std::string_view name;
    if (full != units.end())
      name = full->second;
    else if (short_unit)
      name = unit->word;
    if (full != units.end() || short_unit) ++end;
    if (!name.empty()) text += " " + std::string(name);
  }
  return Said{end, std::move(text)};
}

// "Because the belt tore", ", her kid has a recital": the rest as a reason, where it tells of something
// and names nothing that could be ordered: no time, number, thing of the shop, nor doubt.
std::optional<Said> reason(std::size_t i, const Reader& in) {
  // The article is left out, as where a phrase takes a reason.
  if (i == 0 || in.size() - i > 9 || is_filler(*in.at(i))) return std::nullopt;
  const std::size_t first = i;
  const bool article = i > 1 && in.any(i - 1, {"the", "a", "an", "my", "our"});
  if (article) --i;
  const bool because = in.any(i - 1, {"because", "since"});
  const bool tells = in.any(i, {"the", "a", "an", "its", "her", "his", "my", "our", "their", "they",
                                "somebody", "someone", "she", "he", "it"});
  const bool paused = in.any(i - 1, {",", ":", ";", "-"}) && !in.s.tokens[i - 1].glued;
  if (!because && !in.any(i - 1, {",", ":", ";"}) && !paused) return std::nullopt;
  if (!because && !tells && (in.size() - i > 2 || !in.near[i].empty())) return std::nullopt;
  for (std::size_t k = i; k < in.size(); ++k) {
    const Token& t = in.s.tokens[k];
    if (t.kind != Token::Kind::word || t.is_number() || doubts(t) || says_when(t) || in.names.has(t.word) ||
        in.any(k, {"undo", "back", "after", "again", "instead", "rather", "also", "and", "cancel"}))
      return std::nullopt;
  }
  return Said{in.size(), std::string(in.s.said(first, in.size()))};
}

// "Which bar" asks for its name, "the next bar" does not say it.
bool asks_for_one(std::size_t i, const Reader& in) {
  return in.any(i, {"which", "what", "where", "how",   "when", "does", "do",    "is",
                    "the",   "that", "this",  "a",     "any",  "next", "same",  "right",
                    "and",   "more", "with",  "under", "for",  "of",   "other", "each"});
}

std::vector<Said> free_text(const shop::Param& param, std::size_t i, const Reader& in) {
  if (in.at(i)->kind == Token::Kind::quoted) return {{i + 1, in.at(i)->word}};
  if (param.kind == Kind::name && i + 1 < in.size() &&
      (in.any(i, {"called", "named", "designated", "dubbed"}) || mistyped(in.at(i)->word, "called") == 1))
    return free_text(param, i + 1, in);
  const bool prose = is_prose(param);
  std::vector<Said> out, plainly; // what needs no guessing where it ends
  if (param.kind == Kind::name) {
    if (auto name = plain_name(i, in)) plainly.push_back(std::move(*name));
  } else if (param.name == "bench") {
    if (in.is(i, "role") || is_filler(*in.at(i)) || says_nothing(*in.at(i), false)) return {};
    if (in.is(i + 1, "bench") && in.at(i)->kind == Token::Kind::word && !in.at(i)->is_number() &&
        !in.any(i, {"this", "that", "which", "press"}))
      plainly.push_back(Said{i + 1, std::string(in.s.said(i, i + 1))});
  } else if (param.name == "to") {
    if (in.is(i, "to") || in.is(i, "be")) return {}; // "is to be 28 mm"
    if (auto value = measure(i, in)) plainly.push_back(std::move(*value));
    if (in.is(i + 1, "/") && in.at(i + 2) != nullptr) // "Europe/Dublin"
      plainly.push_back(Said{i + 3, std::string(in.s.said(i, i + 3))});
  } else if (param.name == "note") {
    if (auto why = reason(i, in)) plainly.push_back(std::move(*why));
  }
  const std::size_t capitals = param.kind == Kind::name ? end_of_capitals(i, in) : 0;
  const std::size_t most = param.kind == Kind::name ? std::min(in.size(), i + 8) : in.size();
  bool fillers_only = true;
  for (std::size_t end = i + 1; end <= most; ++end) {
    // No text that the shop takes is longer; a longer one is not tried in a thousand lengths.
    if (in.at(end - 1)->kind == Token::Kind::quoted || in.s.said(i, end).size() > most_free) break;
    if (!prose && end > i + 1 && in.is(end - 1, ".") && in.at(end) != nullptr && !in.at(end)->glued) break;
    if (!prose && (in.is(end - 1, ",") || in.is(end - 1, ";"))) {
      if (in.name_to == 0 && end < in.size()) in.name_from = i, in.name_to = end - 1;
      break;
    }
    if (!prose && in.run(end - 1).find("://") != std::string_view::npos) break;
    if (!prose && param.kind == Kind::name && in.is(end - 1, ".") && in.at(end) != nullptr &&
        !in.at(end)->glued)
      break;
    // "Neter Northgate Trading": the name begins with its capitals, not with what stands before them.
    if (param.kind == Kind::name && end > i + 1 && !is_capital(i, in) && end_of_capitals(end - 1, in) != 0)
      break;
    if (!prose && ends_price(end - 1, i, in)) break;
    if (!prose && ends_quantity(end - 1, i, in)) {
      blame_name(i, end, in);
      break;
    }
    fillers_only = fillers_only && is_filler(*in.at(end - 1));
    // "Drop bar short. for good": a name ends where the sentence does.
    if (!prose && in.is(end - 1, ".") && in.at(end) != nullptr && !in.at(end)->glued) break;
    const bool says_little = fillers_only && !takes_fillers(param);
    if (says_little || in.is(end - 1, ",") || in.is(end - 1, ";")) continue;
    std::string said{in.s.said(i, end)};
    if (param.name == "bar" && asks_for_one(i, in)) break;
    if ((param.kind == Kind::name || param.name == "owner") && said.size() > 2 && said.ends_with("'s"))
      said.erase(said.size() - 2); // "Drago's new"
    if (param.kind == Kind::name && said.size() > 2 && said.front() == '\'' && said.back() == '\'')
      said = said.substr(1, said.size() - 2);
    if (end == capitals) {
      out.push_back(Said{end, std::move(said)});
      continue;
    }
    out.push_back(Said{end, std::move(said), {}, false, static_cast<int>(end - i)});
  }
  std::reverse(out.begin(), out.end()); // the longest first
  for (Said& known : known_thing(param, i, in)) {
    std::erase_if(out, [&](const Said& s) { return s.end == known.end; });
    out.push_back(std::move(known));
  }
  out.insert(out.begin(), std::make_move_iterator(plainly.begin()), std::make_move_iterator(plainly.end()));
  return out;
}

// The option's words one after the other; the mistakes in them add up.
std::optional<Said> option_at(std::string_view option, std::size_t i, const Reader& in) {
  Said out{i, std::string(option)};
  for (const std::string& w : words_of(option)) {
    if (out.end > i && in.any(out.end, {"-", "."})) ++out.end;
    if (in.at(out.end) == nullptr) return std::nullopt;
    const int id = in.lexicon.find(w);
    const auto& near = in.near[out.end];
    const auto found = std::find_if(near.begin(), near.end(), [&](const Near& n) { return n.id == id; });
    if (found != near.end())
      out.distance += found->distance;
    else if (!in.is(out.end, w))
      return std::nullopt;
    ++out.end;
  }
  return out;
}

std::vector<Said> one_of(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  if (in.at(i)->kind == Token::Kind::quoted) return {{i + 1, in.at(i)->word}};
  std::vector<Said> out;
  for (std::string_view option : param.options) {
    auto said = option_at(option, i, in);
    // "This" alone is no week.
    if (said && param.name == "week" && !plain) {
      if (!in.is(said->end, "week")) continue;
      ++said->end;
    }
    if (said) out.push_back(std::move(*said));
  }
  std::stable_sort(out.begin(), out.end(), [](const Said& a, const Said& b) { return a.end > b.end; });
  return out;
}

std::vector<Said> yes_at(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  std::vector<Said> out;
  if (plain) {
    if (in.any(i, {"yes", "true"})) out.push_back({i + 1, true});
    if (in.any(i, {"no", "false"})) out.push_back({i + 1, false});
    out.push_back({i, true});
    return out;
  }
  std::size_t at = i;
  for (const std::string& w : words_of(param.name)) {
    if (!in.is(at, w)) return out;
    ++at;
  }
  out.push_back({at, true});
  return out;
}

std::vector<Said> url_at(std::size_t i, const Reader& in) {
  if (in.at(i)->kind == Token::Kind::quoted) return {{i + 1, in.at(i)->word}};
  if (in.at(i)->glued) return {}; // the rest of one
  const std::string_view run = in.run(i);
  if (run.find("://") == std::string_view::npos) return {};
  std::string_view url = run;
  while (!url.empty() && url.back() == '.')
    url.remove_suffix(1);
  auto end = in.original_end(in.at(i)->begin + url.size());
  return end ? std::vector<Said>{{*end, std::string(url)}} : std::vector<Said>{};
}

} // namespace

std::vector<Said> recognise_words(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  switch (param.kind) {
  case Kind::yes:
    return yes_at(param, i, plain, in);
  case Kind::one_of:
    return one_of(param, i, plain, in);
  case Kind::url:
    return url_at(i, in);
  default:
    return free_text(param, i, in);
  }
}

} // namespace nutward::talk
