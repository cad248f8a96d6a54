// What a sentence is answered that nothing came of: which of its words are not known, and what comes nearest
// to it.
#include "talk/frame.hpp"
#include "talk/understand.hpp"

#include "talk/render.hpp"
#include "talk/spelling.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <span>

namespace nutward::talk {

using shop::Kind;

namespace {

bool in_any_name(const std::string& word, const Names& names) {
  for (const auto* list :
       {&names.wires, &names.jobs, &names.persons, &names.machines, &names.receivers, &names.suppliers}) {
    for (const Named& n : *list) {
      if (std::find(n.words.begin(), n.words.end(), word) != n.words.end()) return true;
    }
  }
  return false;
}

bool is_known(const Token& t, std::span<const Near> near, const Names& names) {
  return t.kind != Token::Kind::word || is_filler(t) || in_any_name(t.word, names) || weekday_word(t.word) ||
         std::any_of(near.begin(), near.end(), [](const Near& n) { return n.distance == 0; });
}

// Known words that a strange one may have been meant as, more freely than where something is to be done: what
// is understood by them is only offered.
std::vector<Near> looks_like(const Token& t, const Reader& in) {
  if (t.word.size() < 3 || is_english(t.word)) return {};
  const int most = t.word.size() < 7 ? 1 : 2;
  std::vector<Near> out;
  for (std::size_t id = 0; id < in.lexicon.size(); ++id) {
    const std::string& other = in.lexicon.word(static_cast<int>(id));
    if (other.size() < 4 || other[0] != t.word[0]) continue;
    if (const int d = distance(t.word, other, most); d <= most)
      out.push_back({static_cast<int>(id), d, false});
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const Near& a, const Near& b) { return a.distance < b.distance; });
  return out;
}

constexpr std::size_t most_strange = 6;

// The tokens that no phrase, frame or name has; at most six, none twice.
std::vector<std::size_t> strange_tokens(const Reader& in, const Names& names) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < in.size() && out.size() < most_strange; ++i) {
    const Token& t = in.s.tokens[i];
    if (is_known(t, in.near[i], names) || (i >= in.name_from && i < in.name_to)) continue;
    if (i > 0 && in.at(i - 1)->is_number() && is_unit_word(t.word)) continue;
    const auto same = [&](std::size_t k) { return in.s.tokens[k].word == t.word; };
    if (std::none_of(out.begin(), out.end(), same)) out.push_back(i);
  }
  return out;
}

std::string unknown_words(const Reader& in, const std::vector<std::size_t>& strange) {
  std::string out;
  for (std::size_t i : strange)
    out += fmt::format("{}'{}'", out.empty() ? "" : ", ", in.s.said(i, i + 1).substr(0, 60));
  return out;
}

constexpr std::array recognised{Kind::job,    Kind::wire, Kind::person, Kind::machine, Kind::slot,
                                Kind::length, Kind::load, Kind::day,    Kind::receiver};

// The things and quantities that are said, each with the first one of its kind.
std::map<Kind, shop::Value> said_things(const Reader& in) {
  std::map<Kind, shop::Value> out;
  for (std::size_t i = 0; i < in.size(); ++i) {
    for (Kind kind : recognised) {
      if (out.count(kind) > 0) continue;
      const bool bare = in.at(i)->is_number(); // as likely a slot as a length
      if (bare && kind == Kind::slot && (i == 0 || !in.any(i - 1, {"slot", "slots", "fret", "frets"})))
        continue;
      if (bare && kind == Kind::length) {
        const auto length = length_at(i, in);
        if (!length || !length->unit_said) continue;
      }
      if (bare && (kind == Kind::job || kind == Kind::day)) continue;
      if (bare && kind == Kind::load && (in.at(i + 1) == nullptr || !is_unit_word(in.at(i + 1)->word)))
        continue;
      const shop::Param param{"said", kind, false, false, ""};
      const auto found = recognise(param, i, false, in);
      const auto sure = std::find_if(found.begin(), found.end(), [](const Said& s) {
        return !s.pointing && s.loose == 0 && s.distance == 0 && s.others.size() < 2;
      });
      if (sure != found.end()) out.emplace(kind, sure->value);
    }
  }
  return out;
}

using Things = std::map<Kind, shop::Value>;

// Of the row's examples the one that shows most of what is said, the first of those; "" where it has none.
std::string_view example_for(const shop::Row& row, const Things& things) {
  std::string_view out;
  std::ptrdiff_t best = -1;
  for (std::string_view example : row.examples) {
    const auto shown = std::count_if(things.begin(), things.end(),
                                     [&](const auto& t) { return shop::example_shows(example, t.first); });
    if (shown > best) out = example, best = shown;
  }
  return out;
}

bool is_thing(Kind kind) {
  return kind == Kind::job || kind == Kind::wire || kind == Kind::person || kind == Kind::machine ||
         kind == Kind::receiver;
}

// What somebody most likely wants who says no word that tells: most usual first.
constexpr std::array<std::string_view, 10> usual{"fit",  "job",    "stock", "place",    "agenda",
                                                 "jobs", "supply", "due",   "machines", "hours"};

// Words that point, or say where: a row that happens to have one says nothing by it.
bool points(const Token& t) {
  static constexpr std::string_view all[]{
      "this", "that", "these", "those", "into", "over", "under", "before", "after", "back", "out", "off",
      "up",   "down", "i",     "we",    "you",  "it",   "them",  "one",    "all",   "not",  "no"};
  return std::find(std::begin(all), std::end(all), t.word) != std::end(all);
}

// By the words of their phrases and frames, where a word that few rows know says more than one that many know
// and a mistyped one less.
std::map<const shop::Row*, double> by_words(const Reader& in, const std::vector<std::size_t>& strange,
                                            const Surroundings& at) {
  std::map<const shop::Row*, double> score;
  for (std::size_t i = 0; i < in.size(); ++i) {
    const Token& t = in.s.tokens[i];
    if (t.kind != Token::Kind::word || is_filler(t) || says_nothing(t, false) || points(t)) continue;
    const bool odd = std::find(strange.begin(), strange.end(), i) != strange.end();
    const std::vector<Near> near =
        odd ? looks_like(t, in) : std::vector<Near>(in.near[i].begin(), in.near[i].end());
    std::set<const shop::Row*> known_by;
    for (const Near& n : near) {
      if (n.distance > near.front().distance) break;
      known_by.insert(at.book.rows_with(n.id).begin(), at.book.rows_with(n.id).end());
    }
    if (known_by.empty() || known_by.size() * 5 > at.book.rows().size())
      continue; // "job": it is said of everything
    const double weight = near.front().distance == 0 ? 1.0 : 0.3;
    for (const shop::Row* row : known_by)
      score[row] += weight / static_cast<double>(known_by.size());
  }
  return score;
}

// The four rows that share most with the sentence: by its words, and by the things that are said in it.
std::vector<const shop::Row*> nearest(const Reader& in, const std::vector<std::size_t>& strange,
                                      const Things& things, const Surroundings& at) {
  auto score = by_words(in, strange, at);
  const Mood mood = mood_of(in);
  std::vector<const shop::Row*> out = at.book.rows();
  for (const shop::Row* row : out) {
    double& sum = score[row];
    const std::string_view example = example_for(*row, things);
    for (const auto& [kind, value] : things) {
      if (shop::example_shows(example, kind)) sum = sum * 1.5 + 0.05;
    }
    for (const shop::Param& p : row->takes) { // it would be asked for besides
      if (p.required && !is_thing(p.kind) && things.count(p.kind) == 0) sum *= 0.7;
    }
    if (at.book.is_command(*row) == (mood != Mood::question)) sum *= 1.25;
    const auto place = std::find(usual.begin(), usual.end(), row->name);
    sum += 0.02 * static_cast<double>(usual.end() - place) / static_cast<double>(usual.size());
  }
  std::stable_sort(out.begin(), out.end(), [&](auto* a, auto* b) { return score[a] > score[b]; });
  if (out.size() > 4) out.resize(4);
  return out;
}

std::string name_of(const shop::Value& value, const std::vector<Named>& all) {
  const auto* ref = std::get_if<shop::Ref>(&value);
  const auto at =
      std::find_if(all.begin(), all.end(), [&](const Named& n) { return ref != nullptr && n.ref == *ref; });
  return at == all.end() ? "" : at->label;
}

// The shop's things for the examples: first those that are said, then those spoken of before.
shop::Sample sample_for(const Things& things, const Surroundings& at) {
  shop::Sample out = at.names.sample;
  const auto thing = [&](Kind kind, std::string_view carried) -> const shop::Value* {
    const auto said = things.find(kind);
    return said != things.end() ? &said->second : at.state.about.find(carried);
  };
  if (const auto* v = thing(Kind::job, "job")) {
    if (const auto* ref = std::get_if<shop::Ref>(v)) out.job = ref->id;
  }
  if (const auto* v = thing(Kind::wire, "wire")) out.wire = name_of(*v, at.names.wires);
  if (const auto* v = thing(Kind::person, "person")) out.person = name_of(*v, at.names.persons);
  if (const auto* v = thing(Kind::machine, "machine")) out.machine = name_of(*v, at.names.machines);
  if (const auto said = things.find(Kind::slot); said != things.end()) {
    if (const auto* slot = std::get_if<std::int64_t>(&said->second)) out.slot = static_cast<int>(*slot);
  }
  return out;
}

std::string what_is_wrong(const Reader& in, const std::vector<std::size_t>& strange) {
  if (!strange.empty()) return "I do not know " + unknown_words(in, strange) + " here.";
  if (in.name_to > in.name_from) {
    return fmt::format(
        "I took '{}' as a name, but do not know what stands behind its comma. A name with a comma in "
        "it is said in quotes.",
        in.s.said(in.name_from, in.name_to).substr(0, 60));
  }
  return "I know these words, but not what they mean together.";
}

// Asked from the third time on: what is not known by its words may be known by what it is about.
void ask_for_the_kind(Understood& out, const Surroundings& at) {
  if (at.book.row("help") == nullptr) return;
  std::string all;
  for (std::string_view name : {"tin", "wire", "jobs", "press", "people"}) {
    all += (all.empty() ? "" : ", ") + std::string(name);
    out.tell.choices.push_back(
        {"help " + std::string(name), shop::Call{"help", {{"topic", std::string(name)}}}, {}});
  }
  out.tell.text +=
      fmt::format(" What kind of thing is it about: {}? Pick one by its number to see what can be said "
                  "of it; 'help' lists everything.",
                  all);
}

} // namespace

Understood not_understood(const Reader& in, const Surroundings& at) {
  if (in.trouble.set())
    return tell("refused", in.trouble.text + (in.trouble.would_do.empty() ? "" : " " + in.trouble.would_do));
  const auto strange = strange_tokens(in, at.names);
  Understood out = tell("unclear", what_is_wrong(in, strange));
  out.missed = true;
  if (at.state.misses >= 2) {
    ask_for_the_kind(out, at);
    return out;
  }
  const auto things = said_things(in);
  const shop::Sample sample = sample_for(things, at);
  const auto rows = nearest(in, strange, things, at);
  std::string can;
  const std::size_t from = at.state.misses == 0 ? 0 : 2;
  for (std::size_t i = from; i < std::min(rows.size(), from + 2); ++i) {
    const std::string_view example = example_for(*rows[i], things);
    const std::string said = example.empty() ? render(*rows[i], shop::Call{std::string(rows[i]->name), {}})
                                             : shop::example_in(example, sample);
    can += fmt::format("{}'{}' ({})", can.empty() ? "" : " or ", said, rows[i]->name);
  }
  out.tell.text += at.state.misses == 0
                       ? fmt::format(" The nearest that I can do: {}.", can)
                       : fmt::format(" Perhaps {}; 'help' with one of your words finds more.", can);
  return out;
}

} // namespace nutward::talk
