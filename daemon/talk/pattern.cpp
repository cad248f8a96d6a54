#include "talk/pattern.hpp"

#include "talk/recognise.hpp"
#include "units/read.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <iterator>
#include <set>
#include <stdexcept>

namespace nutward::talk {
namespace {

using Op = Step::Op;

std::uint16_t way_of(const shop::Param& param, Lexicon& lexicon) {
  return static_cast<std::uint16_t>(lexicon.add_way(read_as(param)));
}

class Compiler {
public:
  Compiler(const shop::Row& row, std::string_view text, Lexicon& lexicon)
      : row_(row), text_(text), lexicon_(lexicon) {}

  void run(Phrase& out) {
    out.needs = sequence("");
    if (i_ < text_.size()) fail("an unbalanced bracket");
    steps_.push_back({.op = Op::accept});
    out.steps = std::move(steps_), out.values = std::move(values_);
  }

private:
  [[noreturn]] void fail(const std::string& what) const {
    throw std::invalid_argument("The pattern '" + std::string(text_) + "' of '" + std::string(row_.name) +
                                "' has " + what + ".");
  }
  int here() const { return static_cast<int>(steps_.size()); }
  Step& at(int i) { return steps_[static_cast<std::size_t>(i)]; }

  // Each of these gives the words that it cannot do without.
  using Needs = std::vector<OneOf>;

  Needs sequence(std::string_view ends) {
    Needs out;
    const auto add = [&](Needs needs) { std::move(needs.begin(), needs.end(), std::back_inserter(out)); };
    const int from = here();
    for (; i_ < text_.size() && ends.find(text_[i_]) == std::string_view::npos;) {
      switch (text_[i_]) {
      case ' ':
        ++i_;
        break;
      case '{':
        take();
        break;
      case '[':
        (void)group(']', true);
        break;
      case '(':
        add(group(')', false));
        break;
      case '<':
        any_order();
        break;
      case ']':
      case ')':
      case '>':
      case '|':
      case '}':
        fail("an unbalanced bracket");
      default:
        add(word());
      }
    }
    if (here() == from) fail("nothing between two brackets");
    return out;
  }

  Needs word() {
    Needs out;
    std::size_t end = i_;
    while (end < text_.size() && std::string_view(" {}[]()<>|").find(text_[end]) == std::string_view::npos)
      ++end;
    for (const Token& t : normalise(text_.substr(i_, end - i_)).tokens) {
      steps_.push_back({.op = Op::word, .a = lexicon_.add(t.word)});
      out.push_back({steps_.back().a});
    }
    i_ = end;
    return out;
  }

  void take() {
    const std::size_t end = text_.find('}', i_);
    if (end == std::string_view::npos) fail("a '{' without its '}'");
    std::string_view inside = text_.substr(i_ + 1, end - i_ - 1);
    i_ = end + 1;
    if (inside.starts_with('*')) return pass(inside.substr(1));
    const bool id = inside.ends_with('#'), plain = id || inside.ends_with('!');
    if (plain) inside.remove_suffix(1);
    const std::size_t equals = inside.find('=');
    const std::string_view name = inside.substr(0, equals);
    const auto p = std::find_if(row_.takes.begin(), row_.takes.end(),
                                [&](const shop::Param& q) { return q.name == name; });
    if (p == row_.takes.end()) fail("a parameter that the row does not take: " + std::string(name));
    const int index = static_cast<int>(p - row_.takes.begin());
    if (equals == std::string_view::npos) {
      steps_.push_back({Op::take, plain, way_of(*p, lexicon_), index, id ? 1 : 0});
      return;
    }
    const bool it = inside.substr(equals + 1) == "it";
    steps_.push_back({Op::set, it, 0, index, static_cast<int>(values_.size())});
    values_.push_back(it ? shop::Value{} : constant(*p, inside.substr(equals + 1)));
  }

  void pass(std::string_view kind) {
    using enum shop::Kind;
    static constexpr std::array<std::pair<std::string_view, shop::Kind>, 9> kinds{{{"job", job},
                                                                                   {"person", person},
                                                                                   {"wire", wire},
                                                                                   {"machine", machine},
                                                                                   {"day", day},
                                                                                   {"slot", slot},
                                                                                   {"at", at},
                                                                                   {"count", count},
                                                                                   {"length", length}}};
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [&](const auto& k) { return k.first == kind; });
    if (found == kinds.end()) fail("a kind that cannot be passed over: " + std::string(kind));
    const auto way = way_of(shop::Param{"any", found->second, false, false, ""}, lexicon_);
    steps_.push_back({Op::pass, false, way, static_cast<int>(found->second)});
  }

  shop::Value constant(const shop::Param& p, std::string_view text) const {
    switch (p.kind) {
    case shop::Kind::yes:
      return text == "yes";
    case shop::Kind::mass:
      return units::read_mass(text, units::MassUnit::g);
    case shop::Kind::count:
    case shop::Kind::slot: {
      std::int64_t v = 0;
      auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), v);
      if (error != std::errc{} || end != text.data() + text.size()) fail("a value that is no whole number");
      return v;
    }
    case shop::Kind::one_of:
      if (std::find(p.options.begin(), p.options.end(), text) == p.options.end())
        fail("a value that is no option");
      return std::string(text);
    case shop::Kind::words:
    case shop::Kind::spans:
    case shop::Kind::length:
      return std::string(text);
    default:
      fail("a value for a kind of parameter that cannot have one");
    }
  }

  // [one|other] and (one|other); of the first none will do as well.
  Needs group(char close, bool optional) {
    const std::string ends{close, '|'};
    std::vector<int> leave;
    OneOf any; // of each way what few words can be in place of
    bool all_need = !optional;
    int fork = -1;
    do {
      ++i_;
      if (fork >= 0) at(fork).b = here();
      fork = here();
      steps_.push_back({.op = Op::fork, .a = fork + 1, .b = -1});
      const Needs needs = sequence(ends);
      all_need = all_need && !needs.empty();
      if (all_need) {
        const auto least = std::min_element(
            needs.begin(), needs.end(), [](const OneOf& a, const OneOf& b) { return a.size() < b.size(); });
        any.insert(any.end(), least->begin(), least->end());
      }
      if (i_ >= text_.size()) fail("an opening bracket without its closing one");
      leave.push_back(here());
      steps_.push_back({.op = Op::jump});
    } while (text_[i_] == '|');
    ++i_;
    for (int end : leave)
      at(end).a = here();
    if (optional) at(fork).b = here();
    return all_need ? Needs{std::move(any)} : Needs{};
  }

  // <one|other>: a loop over one way for each. Each must take a token, or the loop would turn on the spot.
  void any_order() {
    const int loop = here();
    int fork = -1;
    do {
      ++i_;
      if (fork >= 0) at(fork).b = here();
      fork = here();
      steps_.push_back({.op = Op::fork, .a = fork + 1, .b = -1});
      (void)sequence("|>");
      if (i_ >= text_.size()) fail("a '<' without its '>'");
      const Op first = at(fork + 1).op;
      if (first != Op::word && first != Op::take && first != Op::pass)
        fail("something between '<' and '>' that may be nothing");
      steps_.push_back({.op = Op::jump, .a = loop});
    } while (text_[i_] == '|');
    ++i_;
    at(fork).b = here();
  }

  const shop::Row& row_;
  std::string_view text_;
  Lexicon& lexicon_;
  std::vector<Step> steps_;
  std::vector<shop::Value> values_;
  std::size_t i_ = 0;
};

// What each step can begin with. Where a parameter may stand, or the end, that is anything.
void find_begins(std::vector<Step>& steps) {
  for (bool changed = true; std::exchange(changed, false);) {
    for (std::size_t pc = steps.size(); pc-- > 0;) {
      Step& s = steps[pc];
      const auto at = [&](int to) {
        return to < 0 ? WordMask{} : steps[static_cast<std::size_t>(to)].begins;
      };
      const WordMask before = s.begins;
      if (s.op == Op::word)
        s.begins = WordMask::of(s.a);
      else if (s.op == Op::fork)
        s.begins = at(s.a) | at(s.b);
      else
        s.begins = s.op == Op::jump ? at(s.a) : WordMask::all();
      changed = changed || before.bits != s.begins.bits;
    }
  }
}

void find_first(Phrase& phrase) {
  find_begins(phrase.steps);
  std::set<int> seen, words;
  std::vector<int> todo{0};
  while (!todo.empty()) {
    const int pc = todo.back();
    todo.pop_back();
    if (pc < 0 || !seen.insert(pc).second) continue;
    const Step& s = phrase.steps[static_cast<std::size_t>(pc)];
    if (s.op == Op::word)
      words.insert(s.a);
    else if (s.op == Op::take || s.op == Op::pass)
      phrase.first_takes.push_back(pc);
    else if (s.op == Op::set)
      todo.push_back(pc + 1);
    else if (s.op == Op::accept)
      phrase.may_be_empty = true;
    else
      todo.insert(todo.end(), {s.a, s.op == Op::fork ? s.b : -1});
  }
  phrase.open = !phrase.first_takes.empty();
  std::sort(phrase.first_takes.begin(), phrase.first_takes.end());
  phrase.first.assign(words.begin(), words.end());
  for (int word : words)
    phrase.first_words = phrase.first_words | WordMask::of(word);
}

// What says by itself what it is: "slot 4", "the mandolin", "52.4 mm", "friday".
bool speaks_for_itself(shop::Kind kind, bool command) {
  using enum shop::Kind;
  if (!command && (kind == person || kind == machine)) return true; // "and Ines?", "and the sander?"
  return kind == slot || kind == job || kind == wire || kind == piece || kind == length || kind == day ||
         kind == load || kind == count;
}

// Any number of "param value", in any order: a loop over one way for each parameter.
void add_loop(const shop::Row& row, std::vector<Step>& steps, Lexicon& lexicon, bool bare,
              bool command = true) {
  const int loop = static_cast<int>(steps.size());
  for (std::size_t p = 0; p < row.takes.size(); ++p) {
    const auto way = way_of(row.takes[p], lexicon);
    if (bare && speaks_for_itself(row.takes[p].kind, command)) {
      const auto fork = steps.size();
      steps.push_back({.op = Op::fork, .a = static_cast<int>(fork) + 1});
      steps.push_back({Op::take, false, way, static_cast<int>(p)});
      steps.push_back({.op = Op::jump, .a = loop});
      steps[fork].b = static_cast<int>(steps.size());
    }
    const auto fork = steps.size();
    steps.push_back({.op = Op::fork, .a = static_cast<int>(fork) + 1});
    for (const std::string& w : words_of(row.takes[p].name))
      steps.push_back({.op = Op::word, .a = lexicon.add(w)});
    steps.push_back({Op::take, true, way, static_cast<int>(p)});
    steps.push_back({.op = Op::jump, .a = loop});
    steps[fork].b = static_cast<int>(steps.size());
  }
  steps.push_back({.op = Op::accept});
}

void add_name(const shop::Row& row, Phrase& out, Lexicon& lexicon) {
  for (const std::string& w : words_of(row.name)) {
    out.steps.push_back({.op = Op::word, .a = lexicon.add(w)});
    out.needs.push_back({out.steps.back().a});
  }
}

} // namespace

std::vector<std::string> words_of(std::string_view name) {
  std::vector<std::string> out;
  std::string word;
  for (char c : std::string(name) + " ") {
    if (c != ' ' && c != '-' && c != '_' && c != '.')
      word += c;
    else if (!word.empty())
      out.push_back(std::exchange(word, ""));
  }
  return out;
}

Phrase compile(const shop::Row& row, bool command, std::string_view pattern, Lexicon& lexicon) {
  Phrase out{&row, command, false, std::string(pattern), {}, {}, false};
  Compiler{row, pattern, lexicon}.run(out);
  find_first(out);
  return out;
}

Phrase canonical(const shop::Row& row, bool command, Lexicon& lexicon) {
  Phrase out{&row, command, true, std::string(row.name), {}, {}, false};
  add_name(row, out, lexicon);
  add_loop(row, out.steps, lexicon, false);
  find_first(out);
  return out;
}

bool has_short_form(const shop::Row& row, bool command) {
  if (row.takes.empty()) return false;
  const shop::Kind kind = row.takes.front().kind;
  return kind == shop::Kind::job || kind == shop::Kind::piece || (!command && kind == shop::Kind::wire) ||
         (command && kind == shop::Kind::name);
}

Phrase short_form(const shop::Row& row, bool command, Lexicon& lexicon) {
  Phrase out{&row, command, true, std::string(row.name), {}, {}, false};
  add_name(row, out, lexicon);
  out.steps.push_back({Op::take, false, way_of(row.takes.front(), lexicon)});
  add_loop(row, out.steps, lexicon, false);
  find_first(out);
  return out;
}

Phrase replacement(const shop::Row& row, bool command, Lexicon& lexicon) {
  Phrase out{&row, command, true, std::string(row.name), {}, {}, false};
  add_loop(row, out.steps, lexicon, true, command);
  find_begins(out.steps);
  return out;
}

} // namespace nutward::talk
