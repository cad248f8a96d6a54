#include "cutting/grades.hpp"

#include "cutting/singles.hpp"

#include <algorithm>

namespace nutward::cutting {

Grades::Grades(const Problem& p, std::span<const std::size_t> slots, std::int64_t longest, int units,
               std::size_t knots, Rounding rounding)
    : unit(std::max<std::int64_t>(1, longest / units)), order(by_size(p, slots)),
      dressed(any_rounded(p, slots)) {
  std::reverse(order.begin(), order.end());
  for (const std::size_t s : order)
    add(p, s, rounding);
  place_knots(knots);
}

void Grades::add(const Problem& p, std::size_t slot, Rounding rounding) {
  const bool up = rounding == Rounding::up;
  const std::int64_t size = (size_of(p, slot).nm + (up ? unit - 1 : 0)) / unit;
  if (all.empty() || all.back().size != size) {
    const std::int64_t last = up ? 0 : INT64_MAX;
    all.push_back({size, 0, {last, last}, up ? 0 : INT64_MAX, up ? INT64_MAX : 0, last});
  }
  Grade& g = all.back();
  ++g.count;
  for (const int raw : {0, 1, 2}) {
    const Interval in = interval(p, slot, raw, dressed);
    g.from = up ? std::max(g.from, in.from.nm) : std::min(g.from, in.from.nm);
    g.to = up ? std::min(g.to, in.to.nm) : std::max(g.to, in.to.nm);
    if (raw == 0) continue;
    Piece piece;
    piece.facts.raw_ends = raw;
    const std::int64_t last = std::min(size_of(p, slot), shortest_last(p, piece, slot)).nm;
    g.last[raw - 1] = up ? std::max(g.last[raw - 1], last) : std::min(g.last[raw - 1], last);
  }
  const std::int64_t cut = p.slots[slot].need.cut.nm;
  g.cut = up ? std::max(g.cut, cut) : std::min(g.cut, cut);
  of.push_back(all.size() - 1);
}

// Evenly by number.
void Grades::place_knots(std::size_t n) {
  for (std::size_t k = 0; k < n; ++k) {
    const std::size_t at = (order.size() - 1) * k / (n - 1);
    if (knots_.empty() || all[of[at]].size != all[of[knots_.back()]].size) knots_.push_back(at);
  }
  std::size_t k = 0;
  for (const Grade& g : all) {
    while (k + 2 < knots_.size() && all[of[knots_[k + 1]]].size < g.size)
      ++k;
    if (knots_.size() == 1) {
      between_.emplace_back(0, 1.0);
      continue;
    }
    const std::int64_t low = all[of[knots_[k]]].size, high = all[of[knots_[k + 1]]].size;
    between_.emplace_back(k, static_cast<double>(high - g.size) / static_cast<double>(high - low));
  }
}

double Grades::price(const std::vector<double>& at_knots, std::size_t grade) const {
  const auto& [k, share] = between_[grade];
  return share < 1 ? share * at_knots[k] + (1 - share) * at_knots[k + 1] : at_knots[k];
}

void Grades::spread(std::size_t grade, double times, std::vector<double>& at_knots) const {
  const auto& [k, share] = between_[grade];
  at_knots[k] += share * times;
  if (share < 1) at_knots[k + 1] += (1 - share) * times;
}

void Fillings::solve(const std::vector<std::int64_t>& values, Meter& meter) {
  std::fill(best_.begin(), best_.end(), 0);
  std::fill(chosen_.begin(), chosen_.end(), none);
  std::int64_t tried = 1;
  for (std::size_t g = 0; g < values.size(); ++g) {
    if (values[g] <= 0) continue;
    ++tried;
    const auto size = static_cast<std::size_t>(grades_.all[g].size);
    for (std::size_t room = size; room < best_.size(); ++room) {
      const std::int64_t with = best_[room - size] + values[g];
      if (with <= best_[room]) continue;
      best_[room] = with;
      chosen_[room] = static_cast<int>(g);
    }
  }
  for (std::size_t room = 1; room < best_.size(); ++room) {
    if (best_[room - 1] <= best_[room]) continue;
    best_[room] = best_[room - 1];
    chosen_[room] = as_with_less;
  }
  meter.spend(tried * static_cast<std::int64_t>(best_.size()));
}

void Fillings::append(std::int64_t room, std::vector<std::size_t>& out) const {
  auto at = static_cast<std::size_t>(room);
  while (chosen_[at] != none) {
    if (chosen_[at] == as_with_less) {
      --at;
      continue;
    }
    const auto grade = static_cast<std::size_t>(chosen_[at]);
    out.push_back(grade);
    at -= static_cast<std::size_t>(grades_.all[grade].size);
  }
}

EndFilling fill_end(const Problem& p, std::size_t piece, const Grades& grades, const Fillings& fillings,
                    const std::vector<std::int64_t>& values) {
  const Piece& it = p.pieces[piece];
  const auto raw = static_cast<std::size_t>(raw_ends_of_last(it) - 1);
  const std::int64_t nip = p.settings.nip_loss.nm, usable = room(p, it).nm - nip;
  const std::int64_t alone = worth(p, piece, grades.dressed).nm;
  EndFilling out;
  std::int64_t rest = 0;
  std::size_t last = 0;
  for (std::size_t g = 0; g < values.size(); ++g) {
    if (values[g] == 0) continue;
    const Grade& grade = grades.all[g];
    const std::int64_t left = std::min((usable - grade.last[raw]) / grades.unit, fillings.longest());
    const bool others = usable >= grade.last[raw] && left >= grades.all.front().size;
    const bool may_be_one =
        (grade.from <= alone && alone <= grade.to) || usable - grade.cut - nip >= p.least_useful.nm;
    if (!others && !may_be_one) continue;
    const std::int64_t value = values[g] + (others ? fillings.value(left) : 0);
    if (value <= out.value) continue;
    out.value = value;
    rest = others ? left : 0;
    last = g;
  }
  if (out.value == 0) return out;
  out.grades.push_back(last);
  fillings.append(rest, out.grades);
  return out;
}

} // namespace nutward::cutting
