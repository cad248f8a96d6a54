#include "cutting/by_price.hpp"

#include "cutting/singles.hpp"

#include <algorithm>
#include <map>

namespace nutward::cutting {

namespace {

constexpr double share_of_turn = 0.35; // of the long pieces, until none is left
constexpr double enough = 0.02;        // sticks
constexpr int samples = 8;             // ways to cut long pieces, of which the best is taken
constexpr int final_tries = 2;
constexpr double for_the_end = 0.3; // of the steps: to pack what is left into sticks
constexpr int units = 3000;
constexpr std::size_t knots = 20;

// Slots by grade, to be taken from.
class Heap {
public:
  Heap(const Problem& p, const Grades& grades) : p_(p), grades_(grades), slots_(grades.all.size()) {
    for (std::size_t i = 0; i < grades.order.size(); ++i)
      slots_[grades.of[i]].push_back(grades.order[i]);
  }
  // One of a grade, of a grade or two more, or of the next below that has any: the first that is no longer
  // than `most`. False if there is none.
  bool take(std::size_t grade, std::int64_t most, std::size_t& slot) {
    for (std::size_t g = std::min(grade + 3, slots_.size()); g-- > 0;)
      for (std::size_t k = slots_[g].size(); k-- > 0;) {
        if (size_of(p_, slots_[g][k]).nm > most) continue;
        slot = slots_[g][k];
        slots_[g].erase(slots_[g].begin() + static_cast<std::ptrdiff_t>(k));
        return true;
      }
    return false;
  }
  void put_back(std::size_t slot) {
    const auto it = std::find(grades_.order.begin(), grades_.order.end(), slot);
    slots_[grades_.of[static_cast<std::size_t>(it - grades_.order.begin())]].push_back(slot);
  }

private:
  const Problem& p_;
  const Grades& grades_;
  std::vector<std::vector<std::size_t>> slots_; // shortest first
};

class Drafting {
public:
  Drafting(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply, Chance& chance,
           Meter& meter)
      : p_(p), slots_(slots), stock_(supply.stock), chance_(chance), meter_(meter),
        sorted_(sort_pieces(p, slots, supply.pieces)) {
    state_.open = sorted_.ends;
  }

  Draft run() {
    const auto reserve = static_cast<std::int64_t>(static_cast<double>(meter_.left()) * for_the_end);
    double value = relax();
    while (!state_.open.empty() && meter_.left() > reserve) {
      fix_best(share_of_turn);
      value = relax();
    }
    const std::size_t most = 20 + 2 * sorted_.ends.size();
    for (std::size_t i = 0; i < most && !state_.fixed.empty() && meter_.left() > reserve; ++i)
      value = fix_anew(value);
    return finish();
  }

private:
  struct State {
    std::vector<std::size_t> open; // long pieces
    std::vector<Cutting> fixed;    // of others
    std::vector<double> prices;    // by slot of the problem
  };

  // Some long pieces in another way, if that is better.
  double fix_anew(double value) {
    State before = state_;
    loosen();
    relax();
    if (fix_best(1) < value) {
      const double now = relax();
      if (now <= value) return now;
    }
    state_ = std::move(before);
    return value;
  }

  std::vector<std::size_t> left() const {
    std::vector<char> gone(p_.slots.size(), 0);
    for (const Cutting& c : state_.fixed)
      for (const std::size_t s : c.slots)
        gone[s] = 1;
    std::vector<std::size_t> out;
    for (const std::size_t s : slots_)
      if (gone[s] == 0) out.push_back(s);
    return out;
  }

  // Of what is not fixed.
  double relax() {
    const std::vector<std::size_t> rest = left();
    relaxed_.reset();
    if (rest.empty()) return 0;
    Relaxation::Aim aim;
    aim.rounding = Rounding::up;
    aim.units = units;
    aim.knots = knots;
    relaxed_ = std::make_unique<Relaxation>(p_, rest, Sorted{sorted_.singles, state_.open}, stock_, aim);
    relaxed_->solve(state_.prices, enough, meter_);
    std::vector<double> prices = relaxed_->prices();
    if (!state_.prices.empty()) // what is fixed keeps its last price: it may come back
      for (const Cutting& c : state_.fixed)
        for (const std::size_t s : c.slots)
          prices[s] = state_.prices[s];
    state_.prices = std::move(prices);
    return relaxed_->objective();
  }

  // The best of some ways to fix them, by the bound that the present prices prove of what is left. (What open
  // pieces could hold is left out: it is the same for every way.)
  double fix_best(double share) {
    const State before = state_;
    State best;
    double least = 0;
    for (int i = 0; i < samples; ++i) {
      state_ = before;
      fix_some(share);
      const double found = worth_left();
      if (i > 0 && found >= least) continue;
      least = found;
      best = state_;
    }
    state_ = std::move(best);
    return least;
  }
  double worth_left() {
    std::vector<std::size_t> rest;
    double out = 0;
    choose(0, rest);
    for (const std::size_t s : rest)
      out += state_.prices[s];
    return out;
  }

  // Each of some long pieces is cut in one of the ways that the relaxation has for it, by chance in their
  // shares.
  void fix_some(double share) {
    if (!relaxed_) return;
    std::map<std::size_t, std::vector<EndShare>> ways;
    for (EndShare& way : relaxed_->end_shares())
      ways[way.piece].push_back(std::move(way));
    Heap heap(p_, relaxed_->grades());
    std::vector<std::size_t>& open = state_.open;
    for (std::size_t i = open.size(); i > 1; --i)
      std::swap(open[i - 1], open[chance_() % i]);
    auto n = static_cast<std::size_t>(static_cast<double>(open.size()) * share) + 1;
    for (; n > 0 && !open.empty(); --n) {
      const std::vector<EndShare>& all = ways[open.back()];
      open.pop_back();
      if (all.empty()) continue;
      double draw = static_cast<double>(chance_() % 4096) / 4096;
      std::size_t k = 0;
      for (; k + 1 < all.size() && draw >= all[k].share; ++k)
        draw -= all[k].share;
      cut(all[k], heap);
    }
    meter_.spend(5'000 + static_cast<std::int64_t>(slots_.size()) * 50);
  }
  void cut(const EndShare& way, Heap& heap) {
    Cutting cutting{{From::piece, way.piece}, {}};
    const Piece& piece = p_.pieces[way.piece];
    const auto raw = static_cast<std::size_t>(raw_ends_of_last(piece) - 1);
    std::int64_t slack = 0; // that sizes have left of what was reckoned for them
    for (const std::size_t g : way.grades) {
      const Grade& grade = relaxed_->grades().all[g];
      const std::int64_t most = grade.size * relaxed_->grades().unit + slack;
      std::size_t slot = 0;
      if (!heap.take(g, most, slot)) continue;
      const std::int64_t size = size_of(p_, slot).nm;
      const std::int64_t last = std::min(size, shortest_last(p_, piece, slot).nm);
      slack = cutting.slots.empty() ? std::max<std::int64_t>(0, grade.last[raw] - last) : most - size;
      cutting.slots.push_back(slot);
    }
    const std::vector<std::size_t> taken = cutting.slots;
    if (!taken.empty() && order_best(p_, cutting))
      state_.fixed.push_back(std::move(cutting));
    else
      std::for_each(taken.begin(), taken.end(), [&](std::size_t s) { heap.put_back(s); });
  }

  // An eighth of the fixed pieces and up to a quarter more, and those that nothing was found for.
  void loosen() {
    std::vector<Cutting>& fixed = state_.fixed;
    std::size_t n = 1 + fixed.size() / 8 + chance_() % (1 + fixed.size() / 4);
    for (; n > 0 && !fixed.empty(); --n) {
      std::swap(fixed[chance_() % fixed.size()], fixed.back());
      fixed.pop_back();
    }
    std::vector<char> used(p_.pieces.size(), 0);
    for (const Cutting& c : fixed)
      used[c.source.index] = 1;
    state_.open.clear();
    for (const std::size_t i : sorted_.ends)
      if (used[i] == 0) state_.open.push_back(i);
  }

  // The heaviest slots that single pieces can serve together, and the rest. `noise`: how much prices are
  // changed by chance.
  std::vector<std::size_t> choose(double noise, std::vector<std::size_t>& rest) {
    std::vector<std::size_t> order = by_size(p_, left());
    std::reverse(order.begin(), order.end());
    Cover cover(p_, order, sorted_.singles, Rounding::up);
    std::vector<std::pair<double, std::size_t>> by;
    for (std::size_t i = 0; i < order.size(); ++i) {
      const double change = noise > 0 ? noise * static_cast<double>(chance_() % 1024) / 1024 : 0;
      by.emplace_back(-state_.prices[order[i]] * (1 + change), i);
    }
    std::sort(by.begin(), by.end());
    std::vector<std::size_t> chosen;
    for (const auto& [price, i] : by)
      (cover.take(i) ? chosen : rest).push_back(order[i]);
    meter_.spend(5'000 + static_cast<std::int64_t>(order.size()) * 300);
    return chosen;
  }
  std::vector<Cutting> match(int turn, std::vector<std::size_t>& rest) {
    const std::vector<std::size_t> chosen = choose(0.002 * turn, rest);
    std::vector<Cutting> out = serve_chosen(p_, chosen, sorted_.singles);
    std::vector<char> served(p_.slots.size(), 0);
    for (const Cutting& c : out)
      served[c.slots.front()] = 1;
    for (const std::size_t s : chosen)
      if (served[s] == 0) rest.push_back(s);
    std::sort(rest.begin(), rest.end());
    return out;
  }

  Draft finish() {
    Draft best;
    Price least;
    for (int turn = 0; turn < final_tries; ++turn) {
      std::vector<std::size_t> rest;
      Draft draft{match(turn, rest), {}};
      Packed packed = pack_slots(p_, rest, stock_, false, chance_, meter_);
      const Price price = price_of(p_, packed.cuttings);
      if (turn > 0 && std::pair(best.unserved.size(), least) <= std::pair(packed.unserved.size(), price))
        continue;
      best = std::move(draft);
      least = price;
      std::move(packed.cuttings.begin(), packed.cuttings.end(), std::back_inserter(best.cuttings));
      best.unserved = std::move(packed.unserved);
    }
    best.cuttings.insert(best.cuttings.end(), state_.fixed.begin(), state_.fixed.end());
    return best;
  }

  const Problem& p_;
  const std::vector<std::size_t>& slots_;
  const std::vector<int>& stock_;
  Chance& chance_;
  Meter& meter_;
  const Sorted sorted_;
  State state_;
  std::unique_ptr<Relaxation> relaxed_;
};

} // namespace

Draft draft_by_price(const Problem& p, const std::vector<std::size_t>& slots, const Supply& supply,
                     Chance& chance, Meter& meter) {
  return Drafting(p, slots, supply, chance, meter).run();
}

} // namespace nutward::cutting
