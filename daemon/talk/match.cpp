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
  const Token& t = in.s.tokens[i];
  if (!is_filler(t)) return false;
  // Nor is a part of "cut-from" left out.
  const auto joined = [&](std::size_t dash) { return in.is(dash, "-") && in.s.tokens[dash].glued; };
  const bool in_word =
      (i > 0 && t.glued && joined(i - 1)) || (joined(i + 1) && in.at(i + 2) && in.at(i + 2)->glued);
  if (in_word && t.kind == Token::Kind::word) return false;
  if (t.kind != Token::Kind::symbol || t.is("/")) return true;
  // "9-14", "1,250" and "-5" are one thing each: what stands in them is not left out.
  const Token* next = in.at(i + 1);
  return next == nullptr || !next->is_number() || !next->glued;
}

namespace {

constexpr int most_steps = 8'000;
constexpr std::size_t most_matches = 40;

bool is_id(const shop::Value& v) {
  const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(&v);
  if (node != nullptr && (*node)->is_list)
    return std::all_of((*node)->items.begin(), (*node)->items.end(), is_id);
  return std::holds_alternative<shop::Ref>(v);
}

class Matcher {
public:
  Matcher(const Phrase& phrase, Spelling spelling, const Reader& in)
      : phrase_(phrase), fuzzy_(spelling == Spelling::mistyped), in_(in),
        dead_(phrase.steps.size() * (in.size() + 1)) {}

  std::vector<Match> run(std::size_t from) {
    now_.phrase = &phrase_;
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

  // True where a match was found from here on.
  bool go(int pc, std::size_t i) {
    if (++steps_ > most_steps || found_.size() >= most_matches) return false;
    const std::size_t mark = static_cast<std::size_t>(pc) * (in_.size() + 1) + i;
    if (dead_[mark]) return false;
    const bool found = step(phrase_.steps[static_cast<std::size_t>(pc)], pc, i);
    // In a loop what may follow depends on what is bound already.
    if (!found && !phrase_.canonical) dead_[mark] = true;
    return found;
  }

  bool step(const Step& s, int pc, std::size_t i) {
    switch (s.op) {
    case Op::jump:
      return go(s.a, i);
    case Op::set:
      return bound(s.a, Said{i, s.value, {}, s.plain}, pc, i);
    case Op::fork: {
      const bool one = go(s.a, i);
      const bool other = s.b >= 0 && go(s.b, i);
      return one || other;
    }
    case Op::accept:
      return accept(i);
    case Op::word:
    case Op::take:
    case Op::pass:
      break;
    }
    bool found = s.op == Op::word ? word(s, pc, i) : s.op == Op::take ? take(s, pc, i) : pass(s, pc, i);
    if (i < in_.size() && !(part_ && i == from_) && skippable(i, in_)) {
      ++now_.skipped;
      found = go(pc, i + 1) || found;
      --now_.skipped;
    }
    return found;
  }

  bool accept(std::size_t i) {
    if (part_) {
      if (i > to_) return false;
      found_.push_back(now_);
      found_.back().begin = from_, found_.back().end = i;
      return true;
    }
    int skipped = 0;
    for (; i < in_.size() && skippable(i, in_); ++i)
      ++skipped;
    if (i < in_.size()) return false;
    found_.push_back(now_);
    found_.back().skipped += skipped;
    return true;
  }

  bool word(const Step& s, int pc, std::size_t i) {
    if (i >= in_.size()) return false;
    for (const Near& near : in_.near[i]) {
      if (near.id != s.a || (near.distance > 0 && !fuzzy_)) continue;
      if (part_ && near.plural && in_.is(i, "slot")) continue; // one whose number is missing, not several
      const int distance = now_.distance, worst = now_.worst, skipped = now_.skipped;
      now_.distance += near.distance, ++now_.literals;
      now_.worst = std::max(now_.worst, near.distance);
      now_.skipped += near.plural ? 1 : 0;
      const bool found = go(pc + 1, i + 1);
      now_.distance = distance, now_.worst = worst, now_.skipped = skipped, --now_.literals;
      return found;
    }
    return false;
  }

  bool take(const Step& s, int pc, std::size_t i) {
    bool found = false;
    for (Said& said : said_at(phrase_.row->takes[static_cast<std::size_t>(s.a)], i, s.plain)) {
      if ((said.distance > 0 && !fuzzy_) || (s.b == 1 && !is_id(said.value))) continue;
      const std::size_t end = said.end;
      found = bound(s.a, std::move(said), pc, end) || found;
    }
    return found;
  }

  bool pass(const Step& s, int pc, std::size_t i) {
    const shop::Param any{"any", static_cast<shop::Kind>(s.a), false, false, ""};
    bool found = false;
    for (const Said& said : recognise(any, i, false, in_))
      found = (!said.pointing && go(pc + 1, said.end)) || found;
    return found;
  }

  std::vector<Said> said_at(const shop::Param& param, std::size_t i, bool plain) const {
    if (!leads(i)) return recognise(param, i, plain, in_);
    if (param.name == "supplier") return known_supplier(i, in_);
    // What a sentence begins with need not have been meant as a mass: that it is none is no trouble.
    const auto trouble = in_.trouble;
    auto out = recognise(param, i, plain, in_);
    if (param.kind == shop::Kind::mass) in_.trouble = trouble;
    return out;
  }

  bool leads(std::size_t i) const {
    for (std::size_t k = 0; k < i; ++k)
      if (!skippable(k, in_)) return false;
    return true;
  }

  bool bound(int param, Said said, int pc, std::size_t end) {
    for (const auto& [have, value] : now_.args) {
      if (have == param) return false;
    }
    const int distance = said.distance, loose = said.loose, worst = now_.worst;
    now_.distance += distance, now_.loose += loose, now_.worst = std::max(worst, distance);
    now_.args.emplace_back(param, std::move(said));
    const bool found = go(pc + 1, end);
    now_.args.pop_back();
    now_.distance -= distance, now_.loose -= loose, now_.worst = worst;
    return found;
  }

  const Phrase& phrase_;
  bool fuzzy_;
  const Reader& in_;
  std::vector<bool> dead_;
  Match now_;
  std::vector<Match> found_;
  int steps_ = 0;
  bool part_ = false;
  std::size_t from_ = 0, to_ = 0;
};

} // namespace

std::vector<Match> match(const Phrase& phrase, std::size_t from, Spelling spelling, const Reader& in) {
  return Matcher{phrase, spelling, in}.run(from);
}

std::vector<Match> match_part(const Phrase& phrase, std::size_t from, std::size_t to, Spelling spelling,
                              const Reader& in) {
  if (!phrase.open && from < in.size()) {
    const bool begins = std::any_of(in.near[from].begin(), in.near[from].end(), [&](const Near& n) {
      return (n.distance == 0 || spelling == Spelling::mistyped) &&
             std::binary_search(phrase.first.begin(), phrase.first.end(), n.id);
    });
    if (!begins) return {};
  }
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

std::vector<Match> match_all(const Phrasebook& book, Spelling spelling, const Reader& in, std::size_t from) {
  const std::size_t subject = from == 0 ? behind_subject(in) : 0;
  std::vector<int> words;
  for (std::size_t i = from; i < in.size(); ++i) {
    for (const Near& near : in.near[i]) {
      if (near.distance == 0 || spelling == Spelling::mistyped) words.push_back(near.id);
    }
    if (i >= subject && !skippable(i, in)) break;
  }
  std::vector<Match> out;
  for (const Phrase* phrase : book.starting(words)) {
    auto found = match(*phrase, from, spelling, in);
    if (found.empty() && subject > 0) found = match(*phrase, subject, spelling, in);
    out.insert(out.end(), std::make_move_iterator(found.begin()), std::make_move_iterator(found.end()));
  }
  std::stable_sort(out.begin(), out.end(), nearer);
  return out;
}

} // namespace nutward::talk
