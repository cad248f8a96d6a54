// Text that is taken as it stands, options, yes and no, addresses.
#include "talk/recognise.hpp"

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
  for (const Named& n : in.names.suppliers) {
    std::size_t same = 0;
    while (same < n.words.size() && in.is(i + same, n.words[same]))
      ++same;
    most = std::max(most, same);
  }
  std::vector<Said> out;
  out.reserve(most);
  for (std::size_t words = most; words > 0; --words)
    out.push_back({i + words, std::string(in.s.said(i, i + words))});
  return out;
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

// "Which bar" asks for its name, "the next bar" does not say it.
bool asks_for_one(std::size_t i, const Reader& in) {
  return in.any(i, {"which", "what", "where", "how",   "when", "does", "do",    "is",
                    "the",   "that", "this",  "a",     "any",  "next", "same",  "right",
                    "and",   "more", "with",  "under", "for",  "of",   "other", "each"});
}

std::vector<Said> free_text(const shop::Param& param, std::size_t i, const Reader& in) {
  if (in.at(i)->kind == Token::Kind::quoted) return {{i + 1, in.at(i)->word}};
  if (param.kind == Kind::name && i + 1 < in.size() &&
      (in.any(i, {"called", "named"}) || mistyped(in.at(i)->word, "called") == 1))
    return free_text(param, i + 1, in);
  const bool prose = is_prose(param);
  std::vector<Said> out;
  const std::size_t most = param.kind == Kind::name ? std::min(in.size(), i + 8) : in.size();
  bool fillers_only = true;
  for (std::size_t end = i + 1; end <= most; ++end) {
    // No text that the shop takes is longer; a longer one is not tried in a thousand lengths.
    if (in.at(end - 1)->kind == Token::Kind::quoted || in.s.said(i, end).size() > most_free) break;
    if (!prose && (in.is(end - 1, ",") || in.is(end - 1, ";"))) {
      if (in.name_to == 0 && end < in.size()) in.name_from = i, in.name_to = end - 1;
      break;
    }
    if (!prose && ends_price(end - 1, i, in)) break;
    if (!prose && ends_quantity(end - 1, i, in)) {
      blame_name(i, end, in);
      break;
    }
    fillers_only = fillers_only && is_filler(*in.at(end - 1));
    const bool says_little = fillers_only && !takes_fillers(param);
    if (says_little || in.is(end - 1, ",") || in.is(end - 1, ";")) continue;
    std::string said{in.s.said(i, end)};
    if (param.name == "bar" && asks_for_one(i, in)) break;
    if (param.kind == Kind::name && said.size() > 2 && said.ends_with("'s"))
      said.resize(said.size() - 2); // "Drago's new"
    out.push_back(Said{end, std::move(said), {}, false, static_cast<int>(end - i)});
  }
  std::reverse(out.begin(), out.end()); // the longest first
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
