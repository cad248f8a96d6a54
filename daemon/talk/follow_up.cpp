// Sentences that change something in the one before: "and slot 4?", "same for job 9", "no, 13"; and several
// at once.
#include "talk/understand.hpp"

#include "talk/render.hpp"

#include <algorithm>

namespace nutward::talk {

using shop::Kind;
using What = Understood::What;

namespace {

// Where the new part begins, behind "and", "what about", "same for"; 0 where the sentence does not begin so.
std::size_t behind_opening(const Reader& in) {
  std::size_t i = 0;
  if (in.any(i, {"and", "or"})) ++i;
  if (in.any(i, {"what", "how"}) && in.is(i + 1, "about")) i += 2;
  if (in.is(i, "the") && in.is(i + 1, "same")) ++i;
  if (in.is(i, "same") && in.any(i + 1, {"for", "with", "in", "on", "of", "again"})) i += 2;
  if (in.is(i, "also") && in.any(i + 1, {"for", "in", "on", "slot", "job"})) ++i;
  return i;
}

constexpr Kind order[]{Kind::slot, Kind::length, Kind::load, Kind::job};
constexpr int job_rank = 3;

int rank(const Match& m) { // a bare number is a slot before it is anything else
  int worst = 0;
  for (const auto& [index, said] : m.args) {
    const Kind kind = m.phrase->row->takes[static_cast<std::size_t>(index)].kind;
    const auto at = std::find(std::begin(order), std::end(order), kind) - std::begin(order);
    worst = std::max(worst, static_cast<int>(at));
  }
  return worst;
}

// The last call with what was said put in its place; nullopt where the words are not just that.
std::optional<shop::Call> replaced(const shop::Call& last, std::size_t from, const Reader& in,
                                   const Surroundings& at, bool& carried_piece) {
  const shop::Row* row = at.book.row(last.row);
  if (row == nullptr || from >= in.size()) return std::nullopt;
  auto found = match(at.book.replacement_of(*row), from, Spelling::exact, in);
  std::erase_if(found, [](const Match& m) {
    return m.args.empty() || m.pointing() || m.loose > 0 ||
           std::any_of(m.args.begin(), m.args.end(), [](const auto& a) { return !a.second.others.empty(); });
  });
  std::stable_sort(found.begin(), found.end(),
                   [&](const Match& a, const Match& b) { return rank(a) < rank(b); });
  // What the last sentence had counts before what it could have had; but a number alone that can be a fret of
  // the job spoken of is no other job: what is reported next would be kept of that one.
  if (!found.empty() && rank(found.front()) == 0)
    std::erase_if(found, [](const Match& m) { return rank(m) >= job_rank; });
  const auto had = std::find_if(found.begin(), found.end(), [&](const Match& m) {
    return std::all_of(m.args.begin(), m.args.end(), [&](const auto& a) {
      return last.find(row->takes[static_cast<std::size_t>(a.first)].name) != nullptr;
    });
  });
  if (found.empty()) return std::nullopt;
  const Match& m = had != found.end() ? *had : found.front();
  shop::Call out = last;
  carried_piece = false;
  for (const auto& [index, said] : m.args) {
    const std::string name{row->takes[static_cast<std::size_t>(index)].name};
    auto have =
        std::find_if(out.args.begin(), out.args.end(), [&](const auto& a) { return a.first == name; });
    if (have == out.args.end())
      out.args.emplace_back(name, said.value);
    else
      have->second = said.value;
  }
  for (const shop::Param& p : row->takes) {
    const bool said = std::any_of(m.args.begin(), m.args.end(), [&](const auto& a) {
      return &row->takes[static_cast<std::size_t>(a.first)] == &p;
    });
    if (p.kind == Kind::piece && !said && out.find(p.name) != nullptr) carried_piece = true;
  }
  return out;
}

std::optional<Understood> asked(std::size_t from, const Reader& in, const Surroundings& at) {
  if (!at.state.question) return std::nullopt;
  bool piece = false;
  auto call = replaced(*at.state.question, from, in, at, piece);
  if (!call) return std::nullopt;
  Understood out;
  out.what = What::ask;
  out.calls = {std::move(*call)};
  return out;
}

} // namespace

std::optional<Understood> follow_up(const Reader& in, const Surroundings& at, bool bare) {
  const std::size_t from = behind_opening(in);
  if ((from == 0) != bare || (!at.state.question && !at.state.done)) return std::nullopt;
  if (mood_of(in) == Mood::negated) return std::nullopt;
  // A question is safe to ask again; a command is repeated only if the sentence says so and the piece is
  // another one.
  const bool may_do = at.state.done_last && at.state.done && !bare && !in.s.asks &&
                      !in.any(0, {"what", "how"}) && !in.is(1, "what") && !in.is(1, "how");
  if (may_do) {
    bool piece = false;
    auto call = replaced(*at.state.done, from, in, at, piece);
    if (call && !piece) {
      Understood out;
      out.what = What::order;
      out.calls = {std::move(*call)};
      return out;
    }
  }
  return asked(from, in, at);
}

std::optional<Understood> correction(const Reader& in, const Surroundings& at) {
  if (!in.any(0, {"no", "sorry"}) || (!at.state.question && !at.state.done)) return std::nullopt;
  std::size_t from = 1;
  while (in.any(from, {",", "i", "meant", "mean", "make", "it", "sorry", "rather"}))
    ++from;
  if (!at.state.done_last) return asked(from, in, at);
  bool piece = false;
  auto call = replaced(*at.state.done, from, in, at, piece);
  if (!call) return std::nullopt;
  std::vector<shop::Call> offers;
  if (at.book.row("undo") != nullptr) offers.push_back({"undo", {}});
  offers.push_back(std::move(*call));
  return offer("Nothing was changed by that. Take back what was done first, then say it again; or do the "
               "other as well.",
               offers, at);
}

namespace {

struct Part {
  std::size_t from = 0, to = 0;
};

// Between these the sentence may fall apart: ";", "and", "then", ",".
std::vector<std::pair<std::size_t, std::size_t>> joints(const Sentence& s) {
  std::vector<std::pair<std::size_t, std::size_t>> out;
  for (std::size_t i = 0; i < s.tokens.size(); ++i) {
    std::size_t end = i;
    while (end < s.tokens.size() &&
           (s.tokens[end].is(";") || s.tokens[end].is(",") || s.tokens[end].is("and") ||
            s.tokens[end].is("then") || s.tokens[end].is("also"))) {
      ++end;
    }
    if (end == i) continue;
    if (i > 0 && end < s.tokens.size()) out.emplace_back(i, end);
    i = end;
  }
  return out;
}

// `before`: the call that the part before it came to, where there is one. What is carried on is that one's:
// "5 to 7 of job 8 steady, 7 to 9 rocks" is about one job.
std::optional<shop::Call> command_in(const Sentence& sentence, const Part& part, const shop::Call* before,
                                     const Surroundings& at) {
  const Sentence piece = normalise(sentence.said(part.from, part.to));
  const Reader in{piece, at.book.lexicon(), at.names, at.now};
  if (mood_of(in) != Mood::order) return std::nullopt;
  auto found = match_all(at.book, Spelling::exact, in);
  if (found.empty() || !found.front().phrase->command) return std::nullopt;
  if (before != nullptr && found.front().pointing())
    return std::nullopt; // at what was said just before, or at the last answer?
  const shop::Value* job = before == nullptr ? nullptr : before->find("job");
  State then;
  if (job != nullptr) then.about.args = {{"job", *job}};
  Understood one =
      decide(std::move(found), job == nullptr ? at : Surroundings{at.book, at.names, then, at.now});
  if (one.what != What::order || one.calls.front().row == "undo") return std::nullopt;
  return one.calls.front();
}

// What one of several calls of a row says and none says otherwise is said for all.
void share(std::vector<shop::Call>& calls, const Phrasebook& book) {
  const shop::Row* row = book.row(calls.front().row);
  const bool alike = std::all_of(calls.begin(), calls.end(),
                                 [&](const shop::Call& c) { return c.row == calls.front().row; });
  if (row == nullptr || !alike) return;
  for (const shop::Param& p : row->takes) {
    std::vector<shop::Value> said;
    for (const shop::Call& c : calls) {
      const shop::Value* v = p.carried && !p.required ? c.find(p.name) : nullptr;
      if (v != nullptr && std::find(said.begin(), said.end(), *v) == said.end()) said.push_back(*v);
    }
    if (said.size() != 1) continue;
    for (shop::Call& c : calls)
      if (c.find(p.name) == nullptr) c.args.emplace_back(p.name, said.front());
  }
}

} // namespace

std::optional<Understood> several(const Sentence& sentence, const Surroundings& at) {
  const auto cuts = joints(sentence);
  if (cuts.empty() || cuts.size() > 12) return std::nullopt;
  // The fewest parts that are commands each; best[k]: the calls of all that stands before cut k.
  std::vector<std::optional<std::vector<shop::Call>>> best(cuts.size() + 1);
  for (std::size_t end = 0; end <= cuts.size(); ++end) {
    const std::size_t to = end < cuts.size() ? cuts[end].first : sentence.tokens.size();
    for (std::size_t start = 0; start <= end; ++start) {
      const bool whole_sentence = start == 0 && end == cuts.size();
      if (whole_sentence || (start > 0 && !best[start - 1])) continue;
      if (start > 0 && best[end] && best[end]->size() <= best[start - 1]->size() + 1) continue;
      const shop::Call* before = start > 0 ? &best[start - 1]->back() : nullptr;
      auto call = command_in(sentence, {start > 0 ? cuts[start - 1].second : 0, to}, before, at);
      if (!call) continue;
      std::vector<shop::Call> calls = start > 0 ? *best[start - 1] : std::vector<shop::Call>{};
      calls.push_back(std::move(*call));
      best[end] = std::move(calls);
    }
  }
  if (!best.back()) return std::nullopt;
  Understood out;
  out.what = What::order;
  out.calls = std::move(*best.back());
  share(out.calls, at.book);
  return out;
}

} // namespace nutward::talk
