// Frames as they are written, made ready to be laid out: see talk/frame.hpp.
#include "talk/evidence.hpp"
#include "talk/frame.hpp"

#include <algorithm>
#include <stdexcept>

namespace nutward::talk {
namespace {

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

namespace {

// Words that stand right beside a parameter in a pattern, as "short by {short_by}" and "{slot_width} wide".
void add_sayings(std::string_view pattern, const std::vector<std::string_view>& apart,
                 std::vector<std::string>& out) {
  const auto is_word = [](char c) { return (c >= 'a' && c <= 'z') || c == '\''; };
  for (std::size_t open = pattern.find('{'); open != std::string_view::npos;
       open = pattern.find('{', open + 1)) {
    const std::size_t close = pattern.find('}', open);
    if (close == std::string_view::npos) return;
    const std::string_view param = pattern.substr(open, close - open + 1);
    const std::string_view name = param.substr(1, param.size() - 2);
    if (param.find('*') != std::string_view::npos || param.find('=') != std::string_view::npos ||
        std::find(apart.begin(), apart.end(), name) != apart.end())
      continue;
    std::size_t from = open, to = close + 1;
    if (from >= 2 && pattern[from - 1] == ' ' && is_word(pattern[from - 2]))
      for (from -= 1; from > 0 && is_word(pattern[from - 1]);)
        --from;
    if (to + 1 < pattern.size() && pattern[to] == ' ' && is_word(pattern[to + 1]))
      for (to += 1; to < pattern.size() && is_word(pattern[to]);)
        ++to;
    const std::string before{pattern.substr(from, close + 1 - from)}, behind{pattern.substr(open, to - open)};
    if (from < open) out.push_back(before);
    if (to > close + 1) out.push_back(behind);
  }
}

// Says by itself what it is where no other parameter of the row is of its kind.
bool speaks_alone(const shop::Param& p, const shop::Row& row) {
  using enum shop::Kind;
  const bool kind = p.kind == slot || p.kind == piece || p.kind == length || p.kind == load ||
                    p.kind == mass || p.kind == money || p.kind == day ||
                    (p.kind == at && (p.name == "at" || p.required)) || p.kind == spans ||
                    p.kind == weekdays || p.kind == job || p.kind == wire || p.kind == machine ||
                    p.kind == person || p.kind == receiver || p.kind == one_of;
  const auto shares = [&](const shop::Param& q) {
    return std::any_of(q.options.begin(), q.options.end(), [&](std::string_view option) {
      return std::find(p.options.begin(), p.options.end(), option) != p.options.end();
    });
  };
  const auto alike = [&](const shop::Param& q) {
    return q.kind == p.kind && (p.kind != one_of || shares(q));
  };
  return kind && (p.required || std::count_if(row.takes.begin(), row.takes.end(), alike) == 1);
}

} // namespace

Frame compile_wide(const std::vector<FrameText>& frames, const shop::Row& row, bool command,
                   Lexicon& lexicon) {
  Frame out{Phrase{&row, command, false, std::string(row.name), {}, {}, false}, {}};
  out.wide = true;
  std::vector<std::string> patterns;
  const auto add = [&](std::string_view pattern, bool tail, bool heads = false) {
    if (std::find(patterns.begin(), patterns.end(), pattern) != patterns.end()) return;
    patterns.emplace_back(pattern);
    Item item;
    item.tail = tail, item.heads = heads;
    item.phrase = compile(row, command, as_pattern(pattern), lexicon);
    out.items.push_back(std::move(item));
  };
  std::vector<std::string_view> apart; // parameters that say nothing by themselves
  for (const FrameText& text : frames) {
    for (std::string_view item : text.items) {
      if (item.starts_with('!')) {
        apart.push_back(item.substr(1));
        continue;
      }
      const bool tail = item.starts_with('~');
      add(item.starts_with('+') || tail ? item.substr(1) : item, tail, item.starts_with('+'));
    }
  }
  for (const shop::Param& p : row.takes) {
    std::string words_of_it;
    for (const std::string& w : words_of(p.name))
      words_of_it += w + " ";
    using enum shop::Kind;
    if (p.name == "supplier") add("{supplier#}", false);
    if (p.kind == words || p.kind == name || p.kind == url)
      continue; // takes anything: only where a frame says so
    if (p.kind != yes) add(words_of_it + "{" + std::string(p.name) + "!}", false);
    const bool stands = std::find(apart.begin(), apart.end(), p.name) == apart.end();
    if (stands && speaks_alone(p, row)) add("{" + std::string(p.name) + "}", false);
  }
  std::vector<std::string> said;
  for (std::string_view phrase : row.phrases)
    add_sayings(phrase, apart, said);
  for (const std::string& s : said)
    add(s, false);
  return out;
}

} // namespace nutward::talk
