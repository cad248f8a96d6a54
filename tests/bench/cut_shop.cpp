#include "bench/cut_shop.hpp"

#include "cutting/serve.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <random>

namespace nutward::bench {

namespace {

using cutting::Cutting;
using cutting::From;
using units::Length;

Length tenths(std::mt19937& random, int from, int to) {
  return Length{100'000} *
         (from + static_cast<std::int64_t>(random() % static_cast<unsigned>(to - from + 1)));
}

void add_job(std::mt19937& random, int job, int frets, cutting::Problem& out) {
  const double nut = tenths(random, 410, 460).mm(), end = nut + tenths(random, 110, 150).mm();
  const double whole = 1 - std::pow(2.0, -frets / 12.0);
  for (int n = 1; n <= frets; ++n) {
    cutting::Slot slot;
    slot.job = job;
    slot.slot = n;
    slot.due = job;
    const double share = (1 - std::pow(2.0, -n / 12.0)) / whole;
    slot.need =
        board::need(units::from_mm(nut + (end - nut) * share), board::EndStyle::rounded, out.settings);
    out.slots.push_back(slot);
  }
}

cutting::Piece random_piece(std::mt19937& random, std::int64_t id) {
  cutting::Piece out;
  out.facts.id = id;
  const bool end = random() % 20 == 19;
  out.facts.kind = end ? pieces::Kind::stick_end : pieces::Kind::short_fret;
  out.facts.length = end ? tenths(random, 600, 3000) : tenths(random, 400, 580);
  out.facts.raw_ends = end ? 2 : static_cast<int>(random() % 3);
  return out;
}

class ByHand {
public:
  explicit ByHand(const cutting::Problem& p) : p_(p) {
    for (std::size_t i = 0; i < p.pieces.size(); ++i)
      pieces_.emplace(p.pieces[i].facts.length, i);
    for (const cutting::Stock& s : p.stock)
      stock_.push_back(s.count);
  }

  bool serve(std::size_t slot) {
    best_.clear();
    least_ = INT64_MAX;
    look_at_pieces(slot);
    for (std::size_t i = 0; i < opened_.size(); ++i) {
      Cutting more = opened_[i];
      more.slots.push_back(slot);
      offer(std::move(more), i);
    }
    if (best_.empty()) return open_stick(slot);
    if (at_ == opened_.size()) {
      if (best_.front().source.from == From::piece) used_[best_.front().source.index] = 1;
      opened_.push_back(best_.front());
    } else {
      opened_[at_] = best_.front();
    }
    return true;
  }
  const std::vector<Cutting>& cuttings() const { return opened_; }

private:
  std::int64_t left(const Cutting& c) const {
    std::int64_t out = c.source.from == From::piece ? p_.pieces[c.source.index].facts.length.nm
                                                    : p_.stock[c.source.index].length.nm;
    for (const std::size_t s : c.slots)
      out -= cutting::size_of(p_, s).nm;
    return out;
  }
  void offer(Cutting c, std::size_t at) {
    const std::int64_t rest = left(c);
    if (rest >= least_ || !cutting::order_best(p_, c)) return;
    least_ = rest;
    at_ = at;
    best_ = {std::move(c)};
  }
  // The shortest unused piece that makes it leaves the least.
  void look_at_pieces(std::size_t slot) {
    for (auto it = pieces_.lower_bound(p_.slots[slot].need.least); it != pieces_.end(); ++it) {
      if (used_[it->second] != 0) continue;
      offer({{From::piece, it->second}, {slot}}, opened_.size());
      if (!best_.empty() || it->first > p_.slots[slot].need.least + Length{150'000'000}) return;
    }
  }
  bool open_stick(std::size_t slot) {
    for (std::size_t i = 0; i < stock_.size(); ++i) {
      Cutting c{{From::stock, i}, {slot}};
      if (stock_[i] == 0 || !cutting::serve(p_, c)) continue;
      --stock_[i];
      opened_.push_back(std::move(c));
      return true;
    }
    return false;
  }

  const cutting::Problem& p_;
  std::multimap<Length, std::size_t> pieces_;
  std::map<std::size_t, char> used_;
  std::vector<int> stock_;
  std::vector<Cutting> opened_;
  std::vector<Cutting> best_; // one or none
  std::int64_t least_ = 0;
  std::size_t at_ = 0;
};

} // namespace

cutting::Problem random_shop(const ShopSize& size, std::uint32_t seed) {
  std::mt19937 random(seed);
  cutting::Problem out;
  for (int job = 0; job < size.jobs; ++job)
    add_job(random, job, size.frets, out);
  for (int i = 0; i < size.pieces; ++i)
    out.pieces.push_back(random_piece(random, i));
  for (const bool is_short : {false, true}) {
    cutting::Stock stick;
    stick.length = Length{is_short ? 300'000'000 : 610'000'000};
    stick.count = is_short ? size.sticks / 8 : size.sticks - size.sticks / 8;
    stick.flat_ends = 2;
    out.stock.push_back(stick);
  }
  out.least_useful = Length{42'000'000};
  return out;
}

cutting::Problem plain_shop(int frets, int pieces, std::uint32_t seed) {
  std::mt19937 random(seed);
  cutting::Problem out;
  out.settings.nip_loss = Length{1'000'000};
  out.least_useful = Length{43'000'000};
  for (int i = 0; i < frets; ++i) {
    cutting::Slot slot;
    const Length cut = tenths(random, 430, 580);
    slot.need = {board::EndStyle::filed, cut, cut, cut, std::nullopt, cut};
    slot.slot = i;
    out.slots.push_back(slot);
  }
  for (int i = 0; i < pieces; ++i) {
    cutting::Piece piece;
    piece.facts.id = i;
    piece.facts.length = tenths(random, 430, 580);
    out.pieces.push_back(piece);
  }
  for (const bool is_short : {false, true}) {
    cutting::Stock stick;
    stick.length = Length{is_short ? 300'000'000 : 610'000'000};
    stick.count = is_short ? 5 : frets / 9 + 2;
    out.stock.push_back(stick);
  }
  return out;
}

cutting::Cost best_fit_decreasing(const cutting::Problem& problem) {
  std::vector<std::size_t> order(problem.slots.size());
  for (std::size_t i = 0; i < order.size(); ++i)
    order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return problem.slots[a].need.cut > problem.slots[b].need.cut;
  });
  ByHand hand(problem);
  cutting::Cost out;
  out.unserved.assign(1, 0);
  for (const std::size_t slot : order)
    if (!hand.serve(slot)) ++out.unserved[0];
  cutting::Price price;
  for (const Cutting& c : hand.cuttings())
    if (const auto served = cutting::serve(problem, c)) price = price + served->price;
  out.sticks = static_cast<int>(price.sticks);
  out.taken = Length{price.taken};
  out.scrap = Length{price.scrap};
  out.cuts = price.cuts;
  return out;
}

} // namespace nutward::bench
