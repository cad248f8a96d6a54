#include "sayings/learner.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace nutward::sayings {

namespace {

double number(const char* name, double otherwise) {
  const char* v = std::getenv(name);
  return v == nullptr ? otherwise : std::atof(v);
}

using talk::Atoms;
using talk::Phrase;
using Op = talk::Step::Op;

template <std::size_t N>
void any_way(Atoms& out, std::mt19937& random, const std::array<const char*, N>& ways) {
  std::string_view way = ways[random() % N];
  while (!way.empty()) {
    const std::size_t end = std::min(way.find(' '), way.size());
    out.emplace_back(way.substr(0, end));
    way.remove_prefix(std::min(end + 1, way.size()));
  }
}

// A parameter as it stands in a sentence.
void say(Atoms& out, shop::Kind kind, std::mt19937& random) {
  using enum shop::Kind;
  switch (kind) {
  case slot:
    return any_way(out, random, std::array{"#n", "slot #n", "fret #n", "#r", "#n and #n", "the #o"});
  case job:
    return any_way(out, random, std::array{"job #n", "@job", "the @job", "job #n"});
  case wire:
    return any_way(out, random, std::array{"@wire", "the @wire"});
  case piece:
    return any_way(out, random, std::array{"piece #n", "#n", "#d", "the #d", "#d of @wire", "number #n"});
  case person:
    return any_way(out, random, std::array{"@person"});
  case length:
    return any_way(out, random, std::array{"#d mm", "#d", "#n mm", "#d in"});
  case load:
    return any_way(out, random, std::array{"#c lb", "#c", "#c pound"});
  case mass:
    return any_way(out, random, std::array{"#c g", "#c gram"});
  case money:
    return any_way(out, random, std::array{"#n dollar", "#c", "$ #n", "#d"});
  case count:
  case number:
    return any_way(out, random, std::array{"#n", "#n", "#c"});
  case day:
    return any_way(out, random,
                   std::array{"@day", "tomorrow", "next @day", "the #o", "#o of december", "today", "#r"});
  case at:
    return any_way(
        out, random,
        std::array{"#n hour ago", "@day at #n", "yesterday", "at #t", "this morn", "tomorrow at #n"});
  case spans:
    return any_way(out, random, std::array{"#n to #n", "#r", "from #n to #n"});
  case weekdays:
    return any_way(out, random, std::array{"@day", "@day to @day"});
  default:
    return any_way(out, random, std::array{"~"});
  }
}

// A walk through the steps of a phrase, at random.
Lesson walk(const Phrase& phrase, const talk::Lexicon& lexicon, std::mt19937& random) {
  Lesson out{{}, false, std::string(phrase.row->name), 1};
  int pc = 0;
  for (int steps = 0; steps < 200; ++steps) {
    const talk::Step& s = phrase.steps[static_cast<std::size_t>(pc)];
    if (s.op == Op::accept) break;
    if (s.op == Op::jump) {
      pc = s.a;
      continue;
    }
    if (s.op == Op::fork) {
      pc = s.b >= 0 && random() % 2 == 0 ? s.b : s.a;
      continue;
    }
    if (s.op == Op::word) out.atoms.push_back(talk::atom_of(lexicon.word(s.a)));
    if (s.op == Op::take) {
      const shop::Param& param = phrase.row->takes[static_cast<std::size_t>(s.a)];
      if (param.kind == shop::Kind::machine)
        any_way(out.atoms, random, std::array{"press", "sander", "belt sander", "bench"});
      else if (param.kind == shop::Kind::one_of && !param.options.empty())
        out.atoms.push_back(talk::stem_of(param.options[random() % param.options.size()]));
      else
        say(out.atoms, param.kind, random);
    }
    if (s.op == Op::pass) say(out.atoms, static_cast<shop::Kind>(s.a), random);
    ++pc;
  }
  return out;
}

} // namespace

std::optional<Lesson> lesson_of(const Saying& saying, const talk::Phrasebook& book,
                                const talk::Names& names) {
  const TextCalls& first = saying.either.front();
  if (first.size() > 1) return std::nullopt;
  if (saying.unclear && first.empty()) return std::nullopt;
  const talk::Sentence sentence = talk::normalise(saying.say);
  const talk::Reader in{sentence, book.lexicon(), names, {}};
  Lesson out{talk::atoms_of(in, 0, in.size()), sentence.asks, first.empty() ? "-" : first.front().first, 1};
  for (const talk::Token& t : sentence.tokens)
    if (t.kind == talk::Token::Kind::word && !names.has(t.word) &&
        t.word.find_first_of("0123456789=\t") == std::string::npos)
      out.words.insert(t.word);
  if (!saying.before.empty() && (first.empty() || out.atoms.size() < 4)) return std::nullopt;
  return out;
}

std::vector<Lesson> lessons_of(const talk::Phrasebook& book, int ways) {
  std::vector<Lesson> out;
  std::mt19937 random(1);
  std::map<std::string, int> of_row;
  for (const Phrase& phrase : book.phrases()) {
    for (int k = 0; k < (phrase.canonical ? 2 : ways); ++k) {
      out.push_back(walk(phrase, book.lexicon(), random));
      ++of_row[out.back().row];
    }
  }
  for (const shop::Row* row : book.rows()) {
    Lesson named{{}, false, std::string(row->name), 1};
    for (const std::string& w : talk::words_of(row->name))
      named.atoms.push_back(talk::atom_of(w));
    out.push_back(std::move(named));
  }
  // A row with many phrases is not the likelier for it.
  for (Lesson& l : out)
    l.weight = std::min(number("W", 0.3), number("C", 12.0) / std::max(1, of_row[l.row]));
  return out;
}

namespace {

struct Known {
  std::vector<int> traits;
  int row = 0;
  double weight = 1;
};

struct Model {
  std::vector<std::string> rows, traits;
  std::vector<Known> lessons;
  std::vector<std::vector<double>> weights; // by trait, by row
};

Model gather(const std::vector<Lesson>& lessons) {
  Model out;
  std::map<std::string, int> rows, traits, seen;
  for (const Lesson& l : lessons)
    for (const std::string& t : talk::traits_of(l.atoms, l.asks))
      ++seen[t];
  for (const Lesson& l : lessons) {
    const auto [row, fresh] = rows.try_emplace(l.row, static_cast<int>(rows.size()));
    if (fresh) out.rows.push_back(l.row);
    Known k{{}, row->second, l.weight};
    auto all = talk::traits_of(l.atoms, l.asks);
    all.emplace_back("*"); // what speaks for a row whatever is said
    for (const std::string& t : all) {
      if (seen[t] < number("M", 2) && t.find(' ') != std::string::npos)
        continue; // a pair that was heard once
      const auto [trait, first] = traits.try_emplace(t, static_cast<int>(traits.size()));
      if (first) out.traits.push_back(t);
      k.traits.push_back(trait->second);
    }
    out.lessons.push_back(std::move(k));
  }
  out.weights.assign(out.traits.size(), std::vector<double>(out.rows.size(), 0));
  return out;
}

// One lesson: how far the shares are from what they should be, spread over its traits.
void step(Model& m, const Known& k, double rate, std::vector<double>& share) {
  std::fill(share.begin(), share.end(), 0);
  for (int t : k.traits)
    for (std::size_t r = 0; r < share.size(); ++r)
      share[r] += m.weights[static_cast<std::size_t>(t)][r];
  const double best = *std::max_element(share.begin(), share.end());
  double all = 0;
  for (double& s : share)
    all += s = std::exp(s - best);
  for (std::size_t r = 0; r < share.size(); ++r) {
    const double off = share[r] / all - (static_cast<int>(r) == k.row ? 1 : 0);
    const double move = rate * k.weight * off;
    if (std::abs(move) < 1e-5) continue;
    for (int t : k.traits)
      m.weights[static_cast<std::size_t>(t)][r] -= move;
  }
}

} // namespace

std::string learn(const std::vector<Lesson>& lessons) {
  Model m = gather(lessons);
  std::vector<double> share(m.rows.size());
  std::vector<std::size_t> order(m.lessons.size());
  for (std::size_t i = 0; i < order.size(); ++i)
    order[i] = i;
  std::mt19937 random(7);
  const int epochs = static_cast<int>(number("E", 24));
  const double keep =
      number("K", 0.985); // weights shrink a little each time, so that none rests on one sentence
  for (int e = 0; e < epochs; ++e) {
    for (std::size_t i = order.size(); i > 1; --i)
      std::swap(order[i - 1], order[random() % i]);
    for (std::size_t i : order)
      step(m, m.lessons[i], number("R", 0.15) / (1 + 0.1 * e), share);
    for (auto& of_trait : m.weights)
      for (double& w : of_trait)
        w *= keep;
  }
  std::string out = fmt::format("{}\n", fmt::join(m.rows, " "));
  std::map<std::string, int> words;
  for (const Lesson& l : lessons)
    for (const std::string& w : l.words)
      ++words[w];
  out += "$words\t";
  for (const auto& [word, times] : words)
    if (times > 8) out += word + " ";
  out += "\n";
  std::map<std::string, std::set<std::string>> rows_of;
  for (const Lesson& l : lessons)
    for (const std::string& w : l.words)
      rows_of[talk::stem_of(w)].insert(l.row);
  out += "$common\t";
  for (const auto& [stem, rows] : rows_of)
    if (rows.size() >= 6) out += stem + " ";
  out += "\n";
  for (std::size_t t = 0; t < m.traits.size(); ++t) {
    std::string line;
    for (std::size_t r = 0; r < m.rows.size(); ++r) {
      const long w = std::lround(100 * m.weights[t][r]);
      if (std::abs(w) >= 8) line += fmt::format("{}{}:{}", line.empty() ? "" : " ", r, w);
    }
    if (!line.empty()) out += m.traits[t] + "\t" + line + "\n";
  }
  return out;
}

} // namespace nutward::sayings
