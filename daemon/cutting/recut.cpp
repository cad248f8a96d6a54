#include "cutting/recut.hpp"

#include "cutting/basis.hpp"
#include "cutting/grades.hpp"
#include "cutting/singles.hpp"

#include <algorithm>
#include <cmath>

namespace nutward::cutting {

namespace {

constexpr std::int64_t unit = 100'000;   // nm, about, of the sizes that are told apart
constexpr int turns_of_values = 12;      // moves with the same values of frets
constexpr std::size_t most_at_once = 3;  // pieces
constexpr double most_change = 0.005;    // of a value, by chance
constexpr double most_worse = 3'000'000; // nm, at first; several times that, seldom
constexpr std::uint64_t chances = 4096;
constexpr std::int64_t for_polishing = 12; // one in so many of the steps

using Cut = std::vector<std::size_t>; // positions in order_, the last fret first

std::int64_t longest_end(const Problem& p, const std::vector<std::size_t>& ends) {
  std::int64_t out = unit;
  for (const std::size_t i : ends)
    out = std::max(out, room(p, p.pieces[i]).nm);
  return out;
}

class Recutting {
public:
  Recutting(const Problem& p, std::span<const std::size_t> slots, const Sorted& pieces,
            const std::vector<double>& prices, Chance& chance, Meter& meter)
      : p_(p), ends_(pieces.ends), chance_(chance), meter_(meter), longest_(longest_end(p, ends_)),
        grades_(p, slots, longest_, static_cast<int>(longest_ / unit), 2, Rounding::up),
        fillings_(grades_, longest_), order_(grades_.order), basis_(p, order_, pieces.singles),
        cuts_(ends_.size()) {
    for (const std::size_t s : order_)
      prices_.push_back(prices[s]);
    meter_.spend(static_cast<std::int64_t>(order_.size()) * 300);
  }

  void run() {
    value();
    for (std::size_t e = 0; e < ends_.size() && !meter_.over(); ++e)
      cuts_[e] = cut_best(e);
    const auto whole = static_cast<double>(meter_.left());
    const std::int64_t reserve = meter_.left() / for_polishing;
    for (int turn = 0; !ends_.empty() && basis_.left() > 0 && meter_.left() > reserve && !meter_.over();
         ++turn) {
      if (turn % turns_of_values == 0) value();
      const double allowed = most_worse * static_cast<double>(meter_.left()) / whole;
      move(static_cast<std::int64_t>(-allowed * std::log(share_by_chance())));
    }
    for (std::size_t e = 0; e < ends_.size() && basis_.left() > 0; ++e)
      for (std::size_t k = 0; k < cuts_[e].size() && !meter_.over(); ++k)
        polish(e, k);
  }

  Recut result() const {
    Recut out;
    for (std::size_t e = 0; e < ends_.size(); ++e) {
      if (cuts_[e].empty()) continue;
      Cutting cutting = cutting_of(e);
      if (order_best(p_, cutting)) out.ends.push_back(std::move(cutting));
    }
    for (std::size_t i = 0; i < order_.size(); ++i)
      if (basis_.is_there(i)) (basis_.is_taken(i) ? out.chosen : out.rest).push_back(order_[i]);
    return out;
  }

private:
  // Over 0, at most 1.
  double share_by_chance() {
    return static_cast<double>(1 + chance_() % chances) / static_cast<double>(chances);
  }

  void spend(std::size_t slots) { meter_.spend(static_cast<std::int64_t>((slots + 1) * order_.size())); }
  void take(const Cut& cut) {
    for (const std::size_t i : cut)
      basis_.remove(i);
    spend(cut.size());
  }
  void put_back(const Cut& cut) {
    for (const std::size_t i : cut)
      basis_.restore(i);
    spend(cut.size());
  }
  Cutting cutting_of(std::size_t end) const {
    Cutting out{{From::piece, ends_[end]}, {}};
    for (const std::size_t i : cuts_[end])
      out.slots.push_back(order_[i]);
    return out;
  }

  void value() {
    const std::vector<std::int64_t> savings = basis_.savings();
    const double share = share_by_chance();
    values_.assign(grades_.all.size(), 0);
    for (std::size_t i = 0; i < order_.size(); ++i) {
      if (!basis_.is_there(i)) continue;
      const double one = share * prices_[i] + (1 - share) * static_cast<double>(savings[i]);
      std::int64_t& value = values_[grades_.of[i]];
      value = std::max(value, static_cast<std::int64_t>(one));
    }
    for (std::int64_t& value : values_)
      value += static_cast<std::int64_t>(static_cast<double>(value) * most_change * share_by_chance());
    fillings_.solve(values_, meter_);
    meter_.spend(static_cast<std::int64_t>(order_.size()) * 10);
  }

  // The longest slots of the best grades that are there and go in. Nothing where it does not work after all.
  Cut cut_best(std::size_t end) {
    const Piece& piece = p_.pieces[ends_[end]];
    const auto raw = static_cast<std::size_t>(raw_ends_of_last(piece) - 1);
    Cut out;
    std::int64_t slack = 0; // that sizes have left of what was reckoned for them
    Cutting cutting{{From::piece, ends_[end]}, {}};
    for (const std::size_t g : fill_end(p_, ends_[end], grades_, fillings_, values_).grades) {
      const Grade& grade = grades_.all[g];
      const std::int64_t most = grade.size * grades_.unit + slack;
      const std::size_t i = longest_there(most);
      if (i == order_.size()) continue;
      const std::int64_t size = size_of(p_, order_[i]).nm;
      const std::int64_t last = std::min(size, shortest_last(p_, piece, order_[i]).nm);
      slack = out.empty() ? std::max<std::int64_t>(0, grade.last[raw] - last) : most - size;
      out.push_back(i);
      cutting.slots.push_back(order_[i]);
      basis_.remove(i);
    }
    spend(out.size());
    meter_.spend(static_cast<std::int64_t>(values_.size()) * 4);
    if (out.empty() || order_best(p_, cutting)) return out;
    put_back(out);
    return {};
  }
  std::size_t longest_there(std::int64_t most) const {
    auto it = std::partition_point(order_.begin(), order_.end(),
                                   [&](std::size_t s) { return size_of(p_, s).nm <= most; });
    while (it != order_.begin()) {
      const auto i = static_cast<std::size_t>(--it - order_.begin());
      if (basis_.is_there(i)) return i;
    }
    return order_.size();
  }

  // One fret of an end for that which saves most in its room: grades are coarse.
  void polish(std::size_t end, std::size_t k) {
    const std::size_t before = cuts_[end][k];
    Cutting cutting = cutting_of(end);
    const auto fits = [&](std::size_t i) {
      cutting.slots[k] = order_[i];
      return serve(p_, cutting).has_value();
    };
    basis_.restore(before);
    const std::vector<std::int64_t> savings = basis_.savings();
    std::size_t best = before;
    for (std::size_t i = 0; i < savings.size(); ++i)
      if (savings[i] > savings[best] && fits(i)) best = i;
    cuts_[end][k] = best;
    basis_.remove(best);
    meter_.spend(static_cast<std::int64_t>(order_.size()) * 20);
  }

  void move(std::int64_t allowed) {
    const std::int64_t before = basis_.left();
    std::vector<std::size_t> which;
    for (std::size_t n = 1 + chance_() % most_at_once; n > 0; --n) {
      const std::size_t e = chance_() % ends_.size();
      if (std::find(which.begin(), which.end(), e) == which.end()) which.push_back(e);
    }
    std::vector<Cut> old;
    for (const std::size_t e : which) {
      put_back(cuts_[e]);
      old.push_back(std::move(cuts_[e]));
    }
    for (const std::size_t e : which)
      cuts_[e] = cut_best(e);
    if (basis_.left() <= before + allowed) return;
    for (const std::size_t e : which)
      put_back(cuts_[e]);
    for (std::size_t k = 0; k < which.size(); ++k) {
      take(old[k]);
      cuts_[which[k]] = std::move(old[k]);
    }
  }

  const Problem& p_;
  const std::vector<std::size_t>& ends_;
  Chance& chance_;
  Meter& meter_;
  const std::int64_t longest_; // nm of room that fillings_ reach
  const Grades grades_;
  Fillings fillings_;
  const std::vector<std::size_t>& order_; // the slots, shortest first
  Basis basis_;
  std::vector<Cut> cuts_;            // by end
  std::vector<double> prices_;       // by position
  std::vector<std::int64_t> values_; // by grade
};

} // namespace

Recut recut_ends(const Problem& p, std::span<const std::size_t> slots, const Sorted& pieces,
                 const std::vector<double>& prices, Chance& chance, Meter& meter) {
  Recutting recutting(p, slots, pieces, prices, chance, meter);
  recutting.run();
  return recutting.result();
}

} // namespace nutward::cutting
