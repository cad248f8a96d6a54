#include "talk/match.hpp"

#include "talk/phrasebook.hpp"

#include <algorithm>
#include <tuple>

namespace nutward::talk {

bool Match::pointing() const {
  return std::any_of(args.begin(), args.end(), [](const auto& a) { return a.second.pointing; });
}

bool nearer(const Match& a, const Match& b) {
  return std::tuple(a.distance, a.loose, a.skipped, -a.literals) <
         std::tuple(b.distance, b.loose, b.skipped, -b.literals);
}

bool skippable(std::size_t i, const Reader& in) {
  return in.skippable(i);
}

bool is_id(const shop::Value& v) {
  const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(&v);
  if (node != nullptr && (*node)->is_list)
    return std::all_of((*node)->items.begin(), (*node)->items.end(), is_id);
  return std::holds_alternative<shop::Ref>(v);
}

bool same_value(const shop::Value& a, const shop::Value& b) {
  const auto* one = std::get_if<std::shared_ptr<const shop::Node>>(&a);
  const auto* other = std::get_if<std::shared_ptr<const shop::Node>>(&b);
  if (one == nullptr || other == nullptr) return a == b;
  const shop::Node &x = **one, &y = **other;
  return x.is_list == y.is_list &&
         std::equal(x.items.begin(), x.items.end(), y.items.begin(), y.items.end(), same_value) &&
         std::equal(x.fields.begin(), x.fields.end(), y.fields.begin(), y.fields.end(),
                    [](const auto& f, const auto& g) {
                      return f.first == g.first && same_value(f.second, g.second);
                    });
}

namespace {

constexpr int most_steps = 8'000;
constexpr std::size_t most_matches = 40;

// What "#" asks of a parameter: an id alone; a length with its unit; a price with its currency or cents; a
// supplier whom the shop knows.
bool is_strictly(const Said& said, std::size_t i, const shop::Param& param, const Reader& in) {
  if (param.name == "supplier" || param.name == "place") return true;
  if (param.kind == shop::Kind::count) return in.s.tokens[i].is_number() && !in.any(i, {"a", "an"});
  if (param.kind == shop::Kind::money)
    return said.end > i + 1 || in.s.tokens[i].number.find_first_of(".,") != std::string::npos;
  return param.kind == shop::Kind::length ? !in.s.tokens[said.end - 1].is_number() : is_id(said.value);
}

// What is read at token i for a step that takes a parameter or passes one over.
std::span<const Said> said_at(const Phrase& phrase, const Step& s, std::size_t i, const Reader& in) {
  if (s.op == Step::Op::pass) {
    const shop::Param any{"any", static_cast<shop::Kind>(s.a), false, false, ""};
    return read(s.way, any, i, false, in);
  }
  const shop::Param& param = phrase.row->takes[static_cast<std::size_t>(s.a)];
  if (s.b == 1 && param.name == "supplier") return in.supplier_at(i);
  if (s.b == 1 && param.name == "place") return in.place_at(i);
  // Whom a question names is there, or nobody knows what else it may mean.
  const bool asked_about = !phrase.command && param.name == "supplier" && !s.plain;
  if (asked_about && !(in.lenient && in.supplier_at(i).empty())) return in.supplier_at(i);
  if (!in.leads(i)) return read(s.way, param, i, s.plain, in);
  if (param.name == "supplier") return in.supplier_at(i);
  if (param.kind != shop::Kind::mass) return read(s.way, param, i, s.plain, in);
  // What a sentence begins with need not have been meant as a mass: that it is none is no trouble.
  const auto trouble = in.trouble;
  const auto out = read(s.way, param, i, s.plain, in);
  in.trouble = trouble;
  return out;
}

// Runs a phrase's steps over the tokens, every way. Nothing is copied until a match is found.
class Matcher {
public:
  Matcher(const Phrase& phrase, Spelling spelling, const Reader& in)
      : phrase_(phrase), fuzzy_(spelling == Spelling::mistyped), in_(in), columns_(in.size() + 1) {
    if (!phrase.canonical) dead_.resize((phrase.steps.size() * columns_ + 63) / 64);
  }

  std::vector<Match> run(std::size_t from) {
    go(0, from);
    return std::move(found_);
  }

  // Of `from` to `to`, as much as the pattern takes; it does not begin with a filler that is left out.
  std::vector<Match> run_part(std::size_t from, std::size_t to) {
    part_ = true, from_ = from, to_ = to;
    return run(from);
  }

private:
  using Op = Step::Op;

  // A parameter bound on the way: to what was read, or to what the pattern says at a token.
  struct Bound {
    int param = 0;
    const Said* said = nullptr;
    const Step* set = nullptr;
    std::size_t at = 0;
  };

  // True where a match was found from here on.
  bool go(int pc, std::size_t i) {
    if (!phrase_.steps[static_cast<std::size_t>(pc)].begins.meets(in_.reach(i, fuzzy_))) return false;
    if (++steps_ > most_steps || found_.size() >= most_matches) return false;
    // In a loop what may follow depends on what is bound already.
    if (phrase_.canonical) return step(phrase_.steps[static_cast<std::size_t>(pc)], pc, i);
    const std::size_t mark = static_cast<std::size_t>(pc) * columns_ + i;
    const std::uint64_t bit = std::uint64_t{1} << (mark % 64);
    if ((dead_[mark / 64] & bit) != 0) return false;
    const bool found = step(phrase_.steps[static_cast<std::size_t>(pc)], pc, i);
    if (!found) dead_[mark / 64] |= bit;
    return found;
  }

  bool step(const Step& s, int pc, std::size_t i) {
    switch (s.op) {
    case Op::jump:
      return go(s.a, i);
    case Op::set:
      return bound({s.a, nullptr, &s, i}, 0, 0, pc, i);
    case Op::fork:
      return fork(&s, i);
    case Op::accept:
      return accept(i);
    case Op::word:
    case Op::take:
    case Op::pass:
      break;
    }
    if (i >= in_.size() && s.op == Op::word) return false;
    bool found = s.op == Op::word ? word(s, pc, i) : s.op == Op::take ? take(s, pc, i) : pass(s, pc, i);
    if (i < in_.size() && !(part_ && i == from_) && in_.skippable(i)) {
      ++skipped_;
      found = go(pc, i + 1) || found;
      --skipped_;
    }
    return found;
  }

  // One way after the other; (a|b|c) is a fork of one way and a fork of the rest.
  bool fork(const Step* s, std::size_t i) {
    const WordMask next = in_.reach(i, fuzzy_);
    const auto step_at = [&](int pc) -> const Step& { return phrase_.steps[static_cast<std::size_t>(pc)]; };
    bool found = false;
    for (;; s = &step_at(s->b)) {
      if (step_at(s->a).begins.meets(next)) found = go(s->a, i) || found;
      if (s->b < 0) return found;
      const Step& rest = step_at(s->b);
      if (rest.op != Op::fork) return go(s->b, i) || found;
      if (!rest.begins.meets(next)) return found;
    }
  }

  bool accept(std::size_t i) {
    int behind = 0;
    if (part_) {
      if (i > to_) return false;
    } else {
      for (; i < in_.size() && in_.skippable(i); ++i)
        ++behind;
      if (i < in_.size()) return false;
    }
    Match& m = found_.emplace_back();
    m.phrase = &phrase_;
    m.distance = distance_, m.worst = worst_, m.loose = loose_, m.skipped = skipped_ + behind;
    m.literals = literals_;
    if (part_) m.begin = from_, m.end = i;
    m.args.reserve(args_.size());
    for (const Bound& b : args_) {
      if (b.said != nullptr)
        m.args.emplace_back(b.param, *b.said);
      else
        m.args.emplace_back(b.param,
                            Said{b.at, phrase_.values[static_cast<std::size_t>(b.set->b)], {}, b.set->plain});
    }
    return true;
  }

  bool word(const Step& s, int pc, std::size_t i) {
    for (const Near& near : in_.near[i]) {
      if (near.id != s.a || (near.distance > 0 && !fuzzy_)) continue;
      if (part_ && near.plural && in_.is(i, "slot")) continue; // one whose number is missing, not several
      const int distance = distance_, worst = worst_, skipped = skipped_;
      distance_ += near.distance, ++literals_;
      worst_ = std::max(worst_, near.distance);
      skipped_ += near.plural ? 1 : 0;
      const bool found = go(pc + 1, i + 1);
      distance_ = distance, worst_ = worst, skipped_ = skipped, --literals_;
      return found;
    }
    return false;
  }

  bool take(const Step& s, int pc, std::size_t i) {
    bool found = false;
    const shop::Param& param = phrase_.row->takes[static_cast<std::size_t>(s.a)];
    for (const Said& said : said_at(phrase_, s, i, in_)) {
      if ((said.distance > 0 && !fuzzy_) || (s.b == 1 && !is_strictly(said, i, param, in_))) continue;
      found = bound({s.a, &said, nullptr, i}, said.distance, said.loose, pc, said.end) || found;
    }
    return found;
  }

  bool pass(const Step& s, int pc, std::size_t i) {
    bool found = false;
    for (const Said& said : said_at(phrase_, s, i, in_))
      found = (!said.pointing && go(pc + 1, said.end)) || found;
    return found;
  }

  bool bound(const Bound& arg, int mistakes, int loose, int pc, std::size_t end) {
    for (const Bound& have : args_) {
      if (have.param == arg.param) return false;
    }
    const int distance = distance_, worst = worst_;
    distance_ += mistakes, loose_ += loose, worst_ = std::max(worst, mistakes);
    args_.push_back(arg);
    const bool found = go(pc + 1, end);
    args_.pop_back();
    distance_ = distance, loose_ -= loose, worst_ = worst;
    return found;
  }

  const Phrase& phrase_;
  bool fuzzy_;
  const Reader& in_;
  std::size_t columns_; // of dead_: a token each, and the end
  boost::container::small_vector<std::uint64_t, 32> dead_;
  boost::container::small_vector<Bound, 8> args_;
  int distance_ = 0, worst_ = 0, loose_ = 0, skipped_ = 0, literals_ = 0; // see Match
  std::vector<Match> found_;
  int steps_ = 0;
  bool part_ = false;
  std::size_t from_ = 0, to_ = 0;
};

} // namespace

std::vector<Match> match(const Phrase& phrase, std::size_t from, Spelling spelling, const Reader& in) {
  return Matcher{phrase, spelling, in}.run(from);
}

namespace {

bool can_begin(const Phrase& phrase, std::size_t i, Spelling spelling, const Reader& in) {
  const bool mistyped = spelling == Spelling::mistyped;
  const bool by_word = phrase.first_words.meets(in.words_at(i, mistyped)) &&
                       std::any_of(in.near[i].begin(), in.near[i].end(), [&](const Near& n) {
                         return (n.distance == 0 || mistyped) &&
                                std::binary_search(phrase.first.begin(), phrase.first.end(), n.id);
                       });
  return by_word || phrase.may_be_empty ||
         std::any_of(phrase.first_takes.begin(), phrase.first_takes.end(), [&](int pc) {
           return !said_at(phrase, phrase.steps[static_cast<std::size_t>(pc)], i, in).empty();
         });
}

} // namespace

std::vector<Match> match_part(const Phrase& phrase, std::size_t from, std::size_t to, Spelling spelling,
                              const Reader& in) {
  if (from < in.size() && !can_begin(phrase, from, spelling, in)) return {};
  return Matcher{phrase, spelling, in}.run_part(from, to);
}

std::size_t behind_subject(const Reader& in) {
  std::size_t i = 0;
  while (i < in.size() && is_filler(in.s.tokens[i]))
    ++i;
  const bool had = in.any(i, {"i've", "we've", "ive", "weve"});
  if (!had && !in.any(i, {"i", "we"})) return 0;
  ++i;
  if (!had && in.is(i, "have")) ++i;
  return in.is(i, "to") ? 0 : i; // "I have to …" is not done yet
}

namespace {

// The words that stand from a token on, or may be meant there.
WordSet said_in(const Reader& in, Spelling spelling, std::size_t from) {
  WordSet out(in.lexicon.size());
  for (std::size_t i = from; i < in.size(); ++i) {
    for (const Near& near : in.near[i])
      if (near.distance == 0 || spelling == Spelling::mistyped) out.add(near.id);
  }
  return out;
}

} // namespace

std::vector<Match> match_all(const Phrasebook& book, Spelling spelling, const Reader& in, std::size_t from) {
  const std::size_t subject = from == 0 ? behind_subject(in) : 0;
  std::vector<int> words;
  for (std::size_t i = from; i < in.size(); ++i) {
    for (const Near& near : in.near[i]) {
      if (near.distance == 0 || spelling == Spelling::mistyped) words.push_back(near.id);
    }
    if (i >= subject && !skippable(i, in)) break;
  }
  const auto phrases = in.thorough ? book.starting(words) : book.starting(words, said_in(in, spelling, from));
  std::vector<Match> out;
  for (const Phrase* phrase : phrases) {
    auto found = match(*phrase, from, spelling, in);
    if (found.empty() && subject > 0) found = match(*phrase, subject, spelling, in);
    out.insert(out.end(), std::make_move_iterator(found.begin()), std::make_move_iterator(found.end()));
  }
  std::stable_sort(out.begin(), out.end(), nearer);
  return out;
}

} // namespace nutward::talk
