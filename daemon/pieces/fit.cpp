// best(): the tin in order of rank without judging all of it.
//
// For a given number of raw ends everything that ranks a piece but its lot and age is a function of its
// length, with a few kinks (the limits, the target, the trim limit). Between two kinks the outcome is
// constant and the rank only rises or only falls, so the best pieces of such a stretch come first when it is
// walked from its better end. A bound slot looks at the tang too: pieces never nipped keep to this order, and
// among nipped ones only those of one length can stand in another. The stretches are merged by rank; each is
// opened only when the best rank that it could hold is the next one due.
#include "pieces/fit.hpp"

#include <algorithm>
#include <queue>
#include <utility>

namespace nutward::pieces {

namespace {

constexpr Length shortest_piece{1};
constexpr Length beyond_any_piece{1'000'000'000'000'000}; // 1000 km, the most that units::read_length takes
constexpr std::size_t longest_page = 256;

constexpr Instant long_ago{std::numeric_limits<std::int64_t>::min()};
constexpr std::int64_t before_any_id = std::numeric_limits<std::int64_t>::min();

// Where a regime ends for pieces with this many raw ends: each is the first length of the next one. A limit
// is met on both sides of it by the caliper's error, and nothing that ranks a piece changes right at it.
std::vector<Length> kinks(int raw_ends, const Wanted& wanted, const FitSettings& s) {
  const Need& need = wanted.need;
  const Length next{1};
  std::vector<Length> at;
  at.reserve(16);
  at.push_back(shortest_piece);
  const auto limit = [&](Length v) {
    at.push_back(v - s.borderline);
    at.push_back(v + s.borderline + next);
  };
  limit(need.least);
  if (need.style == EndStyle::filed) {
    at.push_back(need.cut + next);
    at.push_back(need.cut + s.trim_limit + next);
  } else {
    const Length loss = std::max(raw_ends, 1) * s.dressing_loss;
    limit(need.least + loss);
    at.push_back(need.target + loss + next);
    at.push_back(need.target + s.trim_limit + next);
    if (raw_ends == 0) {
      // Short ones go in untouched, long ones lose one dressing: from `most` on, or a little later (see
      // judge.cpp).
      limit(*need.most);
      at.push_back(need.target + next);
      at.push_back(*need.most + next);
      at.push_back(need.least + loss);
    }
  }
  if (wanted.another) at.push_back(need.cut + s.nip_loss + *wanted.another);
  std::erase_if(at, [](Length v) { return v < shortest_piece || v >= beyond_any_piece; });
  std::sort(at.begin(), at.end());
  at.erase(std::unique(at.begin(), at.end()), at.end());
  at.push_back(beyond_any_piece);
  return at;
}

bool offered(Outcome outcome, const Ask& ask) {
  return outcome == Outcome::fits || outcome == Outcome::borderline ||
         (outcome == Outcome::wasteful && ask.wasteful);
}

// One walk along one stretch, with the pieces read but not yet taken.
class Stretch {
public:
  Stretch(Walk walk, Rank least) : walk_(std::move(walk)), next_(least) {}

  // The rank of the next piece; before anything was read, a rank that none of its pieces is under.
  const Rank& next() const { return next_; }
  bool read_yet() const { return opened_; }

  // The next piece; only once read_yet().
  const Candidate& head() const { return page_[at_]; }

  // Goes to the next piece that is offered. False: there is none.
  bool advance(const Source& source, const Wanted& wanted, const FitSettings& s, const Ask& ask,
               std::size_t first) {
    if (opened_) ++at_;
    while (at_ < page_.size() || (!ended_ && read(source, wanted, s, first))) {
      for (; at_ < page_.size(); ++at_) {
        if (!offered(head().verdict.outcome, ask)) continue;
        next_ = rank(head().piece, head().verdict, wanted);
        return true;
      }
    }
    return false;
  }

  // Whether the head is also in the walk of the preferred lot, and has come from there already.
  bool came_before(const Wanted& wanted) const {
    return wanted.lot && !walk_.lot && head().piece.lot == *wanted.lot;
  }

private:
  bool read(const Source& source, const Wanted& wanted, const FitSettings& s, std::size_t first) {
    size_ = opened_ ? std::min(size_ * 2, longest_page) : std::clamp<std::size_t>(first, 1, longest_page);
    opened_ = true;
    const std::vector<PieceFacts> facts = source.page(walk_, mark_, size_);
    ended_ = facts.size() < size_;
    page_.clear();
    at_ = 0;
    keep(facts, wanted, s);
    if (walk_.tangs == Tangs::nipped && !facts.empty()) settle_tangs(source, wanted, s);
    return !facts.empty();
  }

  void keep(const std::vector<PieceFacts>& facts, const Wanted& wanted, const FitSettings& s) {
    for (const PieceFacts& piece : facts)
      page_.push_back({piece, judge(piece, wanted, s)});
    if (!facts.empty()) mark_ = Mark{facts.back().length, facts.back().added, facts.back().id};
  }

  // The walk knows nothing of tangs: reads the last length to its end, and ranks what there is.
  void settle_tangs(const Source& source, const Wanted& wanted, const FitSettings& s) {
    Walk same = walk_;
    same.shortest = same.longest = mark_->length;
    for (bool more = !ended_; more;) {
      const std::vector<PieceFacts> facts = source.page(same, mark_, longest_page);
      keep(facts, wanted, s);
      more = facts.size() == longest_page;
    }
    std::sort(page_.begin(), page_.end(), [&](const Candidate& a, const Candidate& b) {
      return rank(a.piece, a.verdict, wanted) < rank(b.piece, b.verdict, wanted);
    });
  }

  Walk walk_;
  Rank next_;
  std::vector<Candidate> page_;
  std::optional<Mark> mark_;
  std::size_t at_ = 0, size_ = 0;
  bool opened_ = false, ended_ = false;
};

// Lengths between two kinks, both inclusive, and the best rank that a piece of either length could have.
struct Span {
  Length shortest, longest;
  Rank low, high;
};

Span span_of(Length shortest, Length longest, int raw_ends, Tangs tangs, const Wanted& wanted,
             const FitSettings& s) {
  const auto rank_at = [&](Length length) {
    PieceFacts piece;
    piece.id = before_any_id, piece.added = long_ago;
    piece.length = length, piece.raw_ends = raw_ends;
    if (wanted.lot) piece.lot = *wanted.lot;
    if (tangs == Tangs::nipped) piece.tang = wanted.need.tang; // nothing to nip
    return rank(piece, judge(piece, wanted, s), wanted);
  };
  return {shortest, longest, rank_at(shortest), rank_at(longest)};
}

Walk walk_along(const Span& span, int raw_ends, Tangs tangs, const Wanted& wanted, const FitSettings& s) {
  Walk walk;
  walk.raw_ends = raw_ends;
  walk.tangs = tangs;
  walk.shortest = span.shortest, walk.longest = span.longest;
  walk.upward = span.low < span.high;
  if (wanted.crown_height) {
    walk.crown_from = *wanted.crown_height - s.crown_tolerance;
    walk.crown_to = *wanted.crown_height + s.crown_tolerance;
  }
  return walk;
}

// Whether two neighbouring stretches are one: the rank, which has the outcome in it, goes on rising or
// falling.
bool continues(const Span& before, const Span& after) {
  return (before.low <= before.high && before.high < after.low && after.low <= after.high) ||
         (before.low >= before.high && before.high > after.low && after.low >= after.high);
}

std::vector<Span> spans(int raw_ends, Tangs tangs, const Wanted& wanted, const FitSettings& s,
                        const Ask& ask) {
  const std::vector<Length> at = kinks(raw_ends, wanted, s);
  std::vector<Span> all;
  for (std::size_t i = 0; i + 1 < at.size(); ++i) {
    const Span span = span_of(at[i], at[i + 1] - Length{1}, raw_ends, tangs, wanted, s);
    if (!offered(span.low.outcome, ask)) continue;
    if (!all.empty() && all.back().longest + Length{1} == span.shortest && continues(all.back(), span)) {
      all.back().longest = span.longest;
      all.back().high = span.high;
    } else {
      all.push_back(span);
    }
  }
  return all;
}

void add_stretches(std::vector<Stretch>& all, int raw_ends, Tangs tangs, const Wanted& wanted,
                   const FitSettings& s, const Ask& ask) {
  for (const Span& span : spans(raw_ends, tangs, wanted, s, ask)) {
    Walk walk = walk_along(span, raw_ends, tangs, wanted, s);
    Rank least = walk.upward ? span.low : span.high;
    for (const bool pulled : {false, true}) {
      if (pulled && !ask.pulled) continue;
      walk.pulled = pulled;
      walk.lot = wanted.lot;
      least.other_lot = false;
      all.emplace_back(walk, least);
      if (!wanted.lot) continue;
      walk.lot = std::nullopt;
      least.other_lot = true;
      all.emplace_back(walk, least);
    }
  }
}

std::vector<Stretch> stretches(const Wanted& wanted, const FitSettings& s, const Ask& ask) {
  std::vector<Stretch> all;
  all.reserve(32); // what an ordinary rounded need takes
  for (int raw_ends = 0; raw_ends <= 2; ++raw_ends) {
    if (!wanted.need.tang) {
      add_stretches(all, raw_ends, Tangs::any, wanted, s, ask);
      continue;
    }
    for (const Tangs tangs : {Tangs::whole, Tangs::nipped})
      add_stretches(all, raw_ends, tangs, wanted, s, ask);
  }
  return all;
}

} // namespace

std::vector<Candidate> best(const Source& source, const Wanted& wanted, const FitSettings& settings,
                            const Ask& ask, std::size_t how_many) {
  std::vector<Candidate> taken;
  if (how_many == 0) return taken;
  std::vector<Stretch> all = stretches(wanted, settings, ask);
  const auto later = [](const Stretch* a, const Stretch* b) { return b->next() < a->next(); };
  std::priority_queue<Stretch*, std::vector<Stretch*>, decltype(later)> due(later);
  for (Stretch& s : all)
    due.push(&s);
  while (!due.empty() && taken.size() < how_many) {
    Stretch* const first = due.top();
    due.pop();
    if (first->read_yet() && !first->came_before(wanted)) taken.push_back(first->head());
    // One more than still wanted, so that a page that serves the whole question is not followed by another.
    const std::size_t page = how_many - taken.size() + 1;
    if (taken.size() < how_many && first->advance(source, wanted, settings, ask, page)) due.push(first);
  }
  return taken;
}

} // namespace nutward::pieces
