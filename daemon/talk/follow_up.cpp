// Sentences that change something in the one before: "and slot 4?", "same for job 9", "no, 13".
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
  if (in.any(i, {"and", "or", "then", "now", "also", "plus"}) ||
      (in.is(i, "only") && in.any(i + 1, {"on", "in", "for"})))
    ++i;
  if (i > 0 && in.is(i, ",")) ++i;
  if (in.any(i, {"what", "how"}) && in.is(i + 1, "about")) i += 2;
  if (in.is(i, "the") && in.is(i + 1, "same")) ++i;
  if (in.is(i, "same") && in.any(i + 1, {"question", "thing", "lot", "wire"}) &&
      in.any(i + 2, {"for", "with", ",", "in"}))
    i += in.any(i + 1, {"question", "thing"}) ? 3 : 2;
  if (in.is(i, "same") && in.any(i + 1, {"for", "with", "in", "on", "of", "again"})) i += 2;
  if (in.is(i, "another") && in.is(i + 1, "one")) i += 2;
  if (in.is(i, "also") && in.any(i + 1, {"for", "in", "on", "slot", "job"})) ++i;
  return i;
}

// And before "too", "as well", "the same": the end of what is new.
std::size_t before_closing(const Reader& in) {
  std::size_t n = in.size();
  if (n > 1 && in.any(n - 1, {"too", "likewise", "also"})) return n - 1;
  if (n > 2 && in.is(n - 2, "as") && in.is(n - 1, "well")) return n - 2;
  if (n > 2 && in.is(n - 2, "the") && in.is(n - 1, "same")) return n - 2;
  if (n > 2 && in.is(n - 2, "after") && in.is(n - 1, "all")) n -= 2;
  if (n > 3 && in.any(n - 1, {"came", "arrived"}) && in.is(n - 2, "more")) return n - 2;
  return in.size();
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

// "the next one", "the one before that": the number by which the slot, or else the job, goes on.
int step_said(std::size_t from, std::size_t to, const Reader& in) {
  int step = 0;
  for (std::size_t i = from; i < to; ++i) {
    if (in.any(i, {"next", "following"}))
      step = 1;
    else if (in.any(i, {"before", "previous"}))
      step = -1;
    else if (!in.any(i,
                     {"the", "one", "slot", "fret", "that", "this", "job", "in", "for", "of", "on", "after"}))
      return 0;
  }
  return step;
}

// The call with its slot, or where it has none its job, a step further.
std::optional<shop::Call> stepped(const shop::Call& last, int step) {
  shop::Call out = last;
  for (auto& [name, value] : out.args) {
    if (auto* n = std::get_if<std::int64_t>(&value); n != nullptr && name == "slot" && *n + step >= 0) {
      *n += step;
      return out;
    }
  }
  for (auto& [name, value] : out.args) {
    if (auto* ref = std::get_if<shop::Ref>(&value); ref != nullptr && name == "job" && ref->id + step > 0) {
      ref->id += step;
      return out;
    }
  }
  return std::nullopt;
}

// What the row's frames take of these words, none left over.
std::vector<Match> by_items(const shop::Row& row, std::size_t from, std::size_t to, const Reader& in,
                            const Surroundings& at) {
  std::optional<Laid> best;
  for (const Frame& frame : at.book.frames()) {
    if (frame.phrase.row != &row) continue;
    auto laid = lay(frame, from, to, Spelling::exact, in, false);
    if (laid && laid->unknown == 0 && (!best || laid->cost < best->cost)) best = std::move(laid);
  }
  return best ? std::vector<Match>{best->match} : std::vector<Match>{};
}

// Not carried from one call into the next: a price, a reason and the like are of the one alone.
void drop_what_is_its_own(shop::Call& call, const shop::Row& row) {
  std::erase_if(call.args, [&](const auto& arg) {
    const shop::Param* p = row.find(arg.first);
    return p != nullptr &&
           (p->kind == Kind::money || p->name == "why" || p->name == "note" || p->name == "cursor");
  });
}

bool points_elsewhere(const Match& m) {
  return std::any_of(m.args.begin(), m.args.end(),
                     [](const auto& a) { return a.second.pointing && a.second.step == 0; });
}

// What was said for the parameter, where the call before it had `had`.
shop::Value in_place_of(const shop::Value* had, const Said& said, const Reader& in) {
  const auto* slot = had == nullptr ? nullptr : std::get_if<std::int64_t>(had);
  if (said.pointing && slot != nullptr) return *slot + said.step;
  // "piece 4 in slot 3 and 9 in slot 4": of pieces that were said by their number the next one is, too.
  const auto* piece = had == nullptr ? nullptr : std::get_if<shop::Ref>(had);
  if (piece != nullptr && piece->thing == shop::Thing::piece && said.end > 0) {
    if (auto id = whole(in.at(said.end - 1)); id && !std::holds_alternative<shop::Ref>(said.value))
      return shop::Ref{shop::Thing::piece, *id};
  }
  return said.value;
}

} // namespace

std::optional<shop::Call> replaced(const shop::Call& last, std::size_t from, std::size_t to, const Reader& in,
                                   const Surroundings& at, bool& carried_piece) {
  const shop::Row* row = at.book.row(last.row);
  if (row == nullptr || from >= to) return std::nullopt;
  carried_piece = false;
  if (const int step = step_said(from, to, in); step != 0) {
    carried_piece = last.find("piece") != nullptr;
    return stepped(last, step);
  }
  std::vector<Match> found;
  if (to == in.size()) found = match(at.book.replacement_of(*row), from, Spelling::exact, in);
  if (found.empty()) found = by_items(*row, from, to, in, at);
  std::erase_if(found, [](const Match& m) {
    return m.args.empty() || points_elsewhere(m) || m.loose > 0 ||
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
  drop_what_is_its_own(out, *row);
  for (const auto& [index, said] : m.args) {
    const std::string name{row->takes[static_cast<std::size_t>(index)].name};
    auto have =
        std::find_if(out.args.begin(), out.args.end(), [&](const auto& a) { return a.first == name; });
    shop::Value value = in_place_of(have == out.args.end() ? nullptr : &have->second, said, in);
    if (have == out.args.end())
      out.args.emplace_back(name, std::move(value));
    else
      have->second = std::move(value);
  }
  for (const shop::Param& p : row->takes) {
    const bool said = std::any_of(m.args.begin(), m.args.end(), [&](const auto& a) {
      return &row->takes[static_cast<std::size_t>(a.first)] == &p;
    });
    if (p.kind == Kind::piece && !said && out.find(p.name) != nullptr) carried_piece = true;
  }
  return out;
}

namespace {

// "And the next one", behind a pass that was reported: the pass that comes next, and not the next job; behind
// one that was only asked about, which still comes next itself: all of them. Behind one fret the fret after
// it.
std::optional<Understood> next_pass(const shop::Call& last, bool reported, const Surroundings& at) {
  const shop::Value* job = last.find("job");
  if (job == nullptr) job = at.state.about.find("job");
  if (job == nullptr) return std::nullopt;
  shop::Call press{"press", {{"job", *job}}};
  if (const shop::Value* bar = last.find("bar")) press.args.emplace_back("bar", *bar);
  const shop::Value* slots = last.find("slots");
  const auto* node = slots == nullptr ? nullptr : std::get_if<std::shared_ptr<const shop::Node>>(slots);
  const auto* slot = node != nullptr && (*node)->items.size() == 1
                         ? std::get_if<std::int64_t>(&(*node)->items.front())
                         : nullptr;
  if (slot != nullptr)
    press.args.emplace_back("slots", shop::list({*slot + 1}));
  else if (!reported)
    press.args.emplace_back("all", true);
  Understood out;
  out.what = What::ask;
  out.calls = {std::move(press)};
  return out;
}

// "The next one" where no slot goes on: of a job that was asked about the next job; but no order is given of
// a job that nobody named. `none`: it is not taken at all.
std::optional<Understood> next_of_last(std::size_t from, std::size_t to, const Reader& in,
                                       const Surroundings& at, bool& none) {
  const bool reported = at.state.done_last && at.state.done;
  const shop::Call& last = reported ? *at.state.done : *at.state.question;
  const int step = step_said(from, to, in);
  if (step == 0) return std::nullopt;
  // What one fret measures says nothing of the next.
  none = reported && last.find("length") != nullptr;
  if (none || last.find("slot") != nullptr) return std::nullopt;
  bool job_said = false;
  for (std::size_t i = from; i < to; ++i)
    job_said = job_said || in.is(i, "job");
  const bool pressing = !job_said && (last.row == "press" || last.row == "pressed");
  if (pressing && step > 0) return next_pass(last, reported, at);
  none = pressing || reported;
  return std::nullopt;
}

std::optional<Understood> asked(std::size_t from, std::size_t to, const Reader& in, const Surroundings& at) {
  if (!at.state.question) return std::nullopt;
  bool piece = false;
  auto call = replaced(*at.state.question, from, to, in, at, piece);
  if (!call) return std::nullopt;
  Understood out;
  out.what = What::ask;
  out.calls = {std::move(*call)};
  return out;
}

bool tells_of_a_deed(const Reader& in, const Surroundings& at) {
  const std::size_t i = behind_subject(in);
  const int word = i < in.size() ? in.lexicon.find(in.s.tokens[i].word) : -1;
  if (word < 0 || i == 0 || mood_of(in) != Mood::order) return false;
  const auto begins = at.book.starting({word});
  return std::any_of(begins.begin(), begins.end(), [&](const Phrase* p) {
    return p->command && std::binary_search(p->first.begin(), p->first.end(), word);
  });
}

} // namespace

std::optional<Understood> follow_up(const Reader& in, const Surroundings& at, bool bare) {
  const std::size_t from = behind_opening(in), to = before_closing(in);
  if ((from == 0 && to == in.size()) != bare || (!at.state.question && !at.state.done)) return std::nullopt;
  if (mood_of(in) == Mood::negated) return std::nullopt;
  bool none = false;
  if (auto next = next_of_last(from, to, in, at, none); next || none) return next;
  // "I took the 52.4" tells of something done; that it is of the question before it would be lost in its
  // answer.
  if (bare && !in.s.asks && tells_of_a_deed(in, at)) return std::nullopt;
  // A question is safe to ask again; a command is repeated only if the sentence says so and the piece is
  // another one.
  const bool may_do = at.state.done_last && at.state.done && !bare && !in.s.asks &&
                      !in.any(0, {"what", "how"}) && !in.is(1, "what") && !in.is(1, "how");
  if (may_do) {
    bool piece = false;
    auto call = replaced(*at.state.done, from, to, in, at, piece);
    if (call && !piece) {
      Understood out;
      out.what = What::order;
      out.calls = {std::move(*call)};
      return out;
    }
  }
  return asked(from, to, in, at);
}

std::optional<Understood> correction(const Reader& in, const Surroundings& at) {
  if (!in.any(0, {"no", "sorry"}) || (!at.state.question && !at.state.done)) return std::nullopt;
  if (in.is(0, "no") && !in.any(1, {",", "i", "it", "that", "sorry", "make"}) && in.at(1) != nullptr &&
      !in.at(1)->is_number() && !in.any(1, {"slot", "fret", "job"}))
    return std::nullopt; // "no gap under 9" reports something
  std::size_t from = 1;
  while (in.any(from, {",", "i", "meant", "mean", "make", "it", "sorry", "rather", "is", "that"}))
    ++from;
  if (!at.state.done_last) return asked(from, in.size(), in, at);
  bool piece = false;
  auto call = replaced(*at.state.done, from, in.size(), in, at, piece);
  if (!call) return std::nullopt;
  std::vector<shop::Call> offers;
  if (at.book.row("undo") != nullptr) offers.push_back({"undo", {}});
  offers.push_back(std::move(*call));
  return offer("Nothing was changed by that. Take back what was done first, then say it again; or do the "
               "other as well.",
               offers, at);
}

} // namespace nutward::talk
