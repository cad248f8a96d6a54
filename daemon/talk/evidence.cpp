#include "talk/evidence.hpp"

#include "talk/frame.hpp"

#include <boost/container/small_vector.hpp>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace nutward::talk {
namespace {

bool vowel(char c) {
  return std::string_view("aeiouy").find(c) != std::string_view::npos;
}

// "stopp" as "stop", but "press" and "till" stay.
std::string undoubled(std::string_view word) {
  const std::size_t n = word.size();
  const bool twice = n > 3 && word[n - 1] == word[n - 2] && !vowel(word[n - 1]) && word[n - 1] != 's' &&
                     word[n - 1] != 'l' && word[n - 1] != 'z';
  return std::string(twice ? word.substr(0, n - 1) : word);
}

bool glued_to(std::size_t i, std::string_view symbol, const Reader& in) {
  return in.is(i, symbol) && in.s.tokens[i].glued && in.at(i + 1) != nullptr && in.at(i + 1)->glued &&
         in.at(i + 1)->is_number();
}

// A number, and what is joined to it: "9-14" is "#r", "9:30" is "#t", "12/3" is "#p".
std::string number_atom(std::size_t& i, const Reader& in) {
  const Token& t = in.s.tokens[i];
  for (const auto& [symbol, atom] :
       std::array<std::pair<const char*, const char*>, 3>{{{"-", "#r"}, {":", "#t"}, {"/", "#p"}}}) {
    if (!glued_to(i + 1, symbol, in)) continue;
    i += 2;
    while (glued_to(i + 1, symbol, in))
      i += 2;
    return atom;
  }
  if (t.ordinal) return "#o";
  if (t.number.find_first_not_of("0123456789") != std::string::npos) return "#d";
  return t.number.size() > 2 ? "#c" : "#n";
}

// The word, or the known one that it is most likely a misspelling of.
std::string_view meant(std::size_t i, const Reader& in) {
  const Near* best = nullptr;
  for (const Near& n : in.near[i])
    if (best == nullptr || n.distance < best->distance) best = &n;
  return best == nullptr || best->distance == 0 ? std::string_view(in.s.tokens[i].word)
                                                : std::string_view(in.lexicon.word(best->id));
}

std::string_view kind_atom(const std::string& word, const Names& names) {
  const auto among = [&](const std::vector<Named>& things) {
    return std::any_of(things.begin(), things.end(), [&](const Named& n) {
      return std::find(n.words.begin(), n.words.end(), word) != n.words.end();
    });
  };
  if (!names.has(word) || is_filler({Token::Kind::word, word})) return {};
  if (among(names.machines)) return {}; // "press" is a verb too
  if (among(names.wires)) return "@wire";
  if (among(names.persons)) return "@person";
  if (among(names.jobs)) return "@job";
  return "@name";
}

} // namespace

std::string stem_of(std::string_view word) {
  const std::size_t n = word.size();
  if (n > 5 && word.ends_with("ing") && std::any_of(word.begin(), word.end() - 3, vowel))
    return undoubled(word.substr(0, n - 3));
  if (n > 4 && word.ends_with("ed") && std::any_of(word.begin(), word.end() - 2, vowel))
    return undoubled(word.substr(0, n - 2));
  if (n > 4 && word.ends_with("ies")) return std::string(word.substr(0, n - 3)) + "y";
  if (n > 4 &&
      (word.ends_with("ches") || word.ends_with("shes") || word.ends_with("sses") || word.ends_with("xes")))
    return std::string(word.substr(0, n - 2));
  if (n > 3 && word.ends_with('s') && !word.ends_with("ss") && !word.ends_with("us") && !word.ends_with("is"))
    return std::string(word.substr(0, n - 1));
  if (n > 4 && word.ends_with('e')) return std::string(word.substr(0, n - 1)); // as "use" and "using"
  return std::string(word);
}

std::string atom_of(std::string_view word) {
  std::string out = stem_of(word);
  const std::size_t stem = out.size();
  out += "==";
  return out += word.substr(std::min(stem, word.size()));
}

Atoms atoms_of(const Reader& in, std::size_t from, std::size_t to) {
  Atoms out;
  const auto add = [&](std::string_view atom) {
    if (out.empty() || out.back() != atom || atom.front() != '@') out.emplace_back(atom);
  };
  for (std::size_t i = from; i < to; ++i) {
    const Token& t = in.s.tokens[i];
    if (t.kind == Token::Kind::quoted)
      add("@quoted");
    else if (t.is_number())
      add(number_atom(i, in));
    else if (const auto kind = kind_atom(t.word, in.names); !kind.empty())
      add(kind);
    else if (weekday_word(t.word))
      add("@day");
    else
      add(atom_of(meant(i, in)));
  }
  return out;
}

namespace {

// Each trait, in a text that lives until the next.
template <class F>
void each_trait(const Atoms& atoms, bool asks, F&& f) {
  boost::container::small_vector<std::string_view, 24> stems;
  for (const std::string& atom : atoms) {
    stems.push_back(std::string_view(atom).substr(0, atom.find("==", 1)));
    if (stems.back() != atom) f(std::string_view(atom));
  }
  std::string pair;
  const auto paired = [&](std::string_view before, std::string_view behind) {
    pair.assign(before);
    (pair += ' ') += behind;
    f(std::string_view(pair));
  };
  std::string_view before = "^";
  for (const std::string_view stem : stems) {
    f(stem);
    paired(before, stem);
    before = stem;
  }
  // Which kinds of things there are, together and each.
  boost::container::small_vector<std::string_view, 8> kinds;
  for (const std::string_view s : stems)
    if (s.size() > 1 && (s.front() == '#' || s.front() == '@') &&
        std::find(kinds.begin(), kinds.end(), s) == kinds.end())
      kinds.push_back(s);
  std::sort(kinds.begin(), kinds.end());
  std::string together = "&";
  for (const std::string_view k : kinds) {
    together += k;
    (pair = '&') += k;
    f(std::string_view(pair));
  }
  if (kinds.size() != 1) f(std::string_view(together));
  if (!atoms.empty()) paired(before, "$");
  if (asks) f(std::string_view("?"));
}

} // namespace

std::vector<std::string> traits_of(const Atoms& atoms, bool asks) {
  std::vector<std::string> out;
  each_trait(atoms, asks, [&](std::string_view trait) { out.emplace_back(trait); });
  return out;
}

Evidence::Evidence(std::string_view table, std::span<const shop::Row* const> rows, Lexicon& lexicon) {
  const auto wrong = [](std::string_view line) {
    return std::invalid_argument("The evidence has a wrong line: " + std::string(line.substr(0, 80)) + ".");
  };
  const auto until = [](std::string_view& text, char c) {
    const std::size_t end = std::min(text.find(c), text.size());
    const std::string_view out = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    return out;
  };
  std::string_view names = until(table, '\n');
  while (!names.empty()) {
    const std::string_view name = until(names, ' ');
    const auto at =
        std::find_if(rows.begin(), rows.end(), [&](const shop::Row* r) { return r->name == name; });
    rows_.push_back(at == rows.end() ? nullptr : *at);
    absent_.push_back(at == rows.end() && name != "-");
  }
  while (!table.empty()) {
    std::string_view line = until(table, '\n');
    if (line.empty()) continue;
    const std::string_view name = until(line, '\t');
    if (name == "$words") { // words as they are said, so that mistakes in them are seen
      while (!line.empty())
        lexicon.add(until(line, ' '));
      continue;
    }
    if (name == "$common") { // words that many rows are said with
      while (!line.empty())
        common_.emplace(until(line, ' '));
      continue;
    }
    Trait trait{static_cast<std::uint32_t>(weights_.size()), 0};
    while (!line.empty()) {
      std::string_view one = until(line, ' ');
      const std::string_view row = until(one, ':');
      unsigned r = 0;
      int w = 0;
      const auto a = std::from_chars(row.data(), row.data() + row.size(), r);
      const auto b = std::from_chars(one.data(), one.data() + one.size(), w);
      if (a.ec != std::errc{} || b.ec != std::errc{} || r >= rows_.size()) throw wrong(name);
      weights_.push_back({static_cast<std::uint16_t>(r), static_cast<std::int16_t>(w)});
    }
    if (name.empty()) throw wrong(line);
    trait.to = static_cast<std::uint32_t>(weights_.size());
    traits_.emplace(name, trait);
  }
}

std::span<const Evidence::Weight> Evidence::weights(std::string_view trait) const {
  const auto at = traits_.find(trait);
  if (at == traits_.end()) return {};
  return std::span(weights_).subspan(at->second.from, at->second.to - at->second.from);
}

std::vector<Likely> Evidence::rank(const Reader& in, std::size_t from, std::size_t to) const {
  if (rows_.empty()) return {};
  boost::container::small_vector<int, 256> sums(rows_.size(), 0);
  const auto weigh = [&](std::string_view trait) {
    for (const Weight& w : weights(trait))
      sums[w.row] += w.hundredths;
  };
  each_trait(atoms_of(in, from, to), in.s.asks, weigh);
  weigh("*");
  constexpr int least = -921; // a ten-thousandth: of a logarithm, in hundredths
  int best = std::numeric_limits<int>::min();
  for (std::size_t r = 0; r < rows_.size(); ++r)
    if (!absent_[r]) best = std::max(best, sums[r]);
  double all = 0;
  std::vector<Likely> out;
  for (std::size_t r = 0; r < rows_.size(); ++r) {
    if (absent_[r] || sums[r] - best < least) continue;
    out.push_back({rows_[r], std::exp((sums[r] - best) / 100.0)});
    all += out.back().share;
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const Likely& a, const Likely& b) { return a.share > b.share; });
  for (Likely& l : out)
    l.share /= all;
  return out;
}

const std::vector<Likely>& Evidence::rank(const Reader& in) const {
  if (!in.ranked) in.ranked = std::make_shared<const std::vector<Likely>>(rank(in, 0, in.size()));
  return *in.ranked;
}

bool Evidence::knows(std::string_view word, const shop::Row& row) const {
  const std::string stem = stem_of(word);
  const int weight = weight_of(stem, row);
  return weight > 0 || (weight > -25 && common_.contains(stem));
}

bool Evidence::tells(std::string_view word, const shop::Row& row, int least) const {
  const int exact = weight_of(atom_of(word), row);
  return exact >= 25 && exact + weight_of(stem_of(word), row) >= least;
}

bool Evidence::tells_alone(std::string_view word, const shop::Row& row, int least) const {
  if (!tells(word, row, least)) return false;
  const std::string stem = stem_of(word);
  const int own = weight_of(stem, row);
  const auto all = weights(stem);
  return own > 0 && std::none_of(all.begin(), all.end(), [&](const Weight& w) {
           return rows_[w.row] != &row && 10 * w.hundredths > 7 * own;
         });
}

int Evidence::weight_of(const std::string& stem, const shop::Row& row) const {
  for (const Weight& w : weights(stem))
    if (rows_[w.row] == &row) return w.hundredths;
  return 0;
}

} // namespace nutward::talk
