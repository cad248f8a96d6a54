// The shift is an assignment: each slot gets its own fret, another slot's, a piece of the tin, or one made
// anew. Costs of different slots simply add up, so the assignment that is cheapest level by level is the best
// shift, and its potentials prove it.
#include "pieces/shift.hpp"

#include "pieces/assign.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <string>
#include <utility>

namespace nutward::pieces {

namespace {

struct Option {
  Cost cost;
  Verdict verdict;
};

// `raw`: ends that have to be dressed wherever the fret goes, which is not again.
Cost cost_of(const Verdict& v, int raw, int moves) {
  return {{0, std::max(0, v.ends_to_dress - raw), moves, 0, v.trim.nm}};
}

std::optional<Option> own(const LaidFret& fret, const ShiftSlot& slot, const FitSettings& settings) {
  const Verdict v = judge(fret.facts, slot.wanted, settings);
  if (v.outcome == Outcome::too_short || v.outcome == Outcome::tang_short) return std::nullopt;
  if (fret.seated) return Option{{}, v}; // whatever it is, it is in
  if (v.outcome == Outcome::crown_differs) return std::nullopt;
  return Option{cost_of(v, fret.facts.raw_ends, 0), v};
}

std::optional<Option> moved(const PieceFacts& facts, int raw, const ShiftSlot& slot,
                            const FitSettings& settings) {
  const Verdict v = judge(facts, slot.wanted, settings);
  if (v.outcome != Outcome::fits || v.trim > settings.trim_limit) return std::nullopt;
  return Option{cost_of(v, raw, 1), v};
}

Cost anew(const ShiftSlot& slot, const FitSettings& settings) {
  return {{1, 0, 0, (slot.wanted.need.cut + settings.nip_loss).nm, 0}};
}

// The pieces that matter: of n slots the others use at most n − 1 pieces, so no slot needs more than its n
// cheapest; among equally cheap ones, those that come first.
std::vector<std::size_t> pieces_that_matter(std::span<const ShiftSlot> slots, std::span<const PieceFacts> tin,
                                            const FitSettings& settings) {
  std::vector<bool> matters(tin.size(), false);
  std::vector<std::pair<Cost, std::size_t>> fitting;
  for (const ShiftSlot& slot : slots) {
    const Length longest = slot.wanted.need.cut + settings.trim_limit;
    fitting.clear();
    for (std::size_t i = 0; i < tin.size(); ++i) {
      // Most of a tin is too short or too long for any one slot, which shows without judging.
      if (tin[i].length < slot.wanted.need.least || tin[i].length > longest) continue;
      if (const auto option = moved(tin[i], 0, slot, settings)) fitting.emplace_back(option->cost, i);
    }
    const std::size_t most = std::min(fitting.size(), slots.size());
    if (most < fitting.size())
      std::nth_element(fitting.begin(), fitting.begin() + static_cast<std::ptrdiff_t>(most), fitting.end());
    for (std::size_t k = 0; k < most; ++k)
      matters[fitting[k].second] = true;
  }
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < tin.size(); ++i) {
    if (matters[i]) out.push_back(i);
  }
  return out;
}

// Columns: the frets, then the pieces that matter, then for each slot a fret made anew.
class Problem {
public:
  Problem(std::span<const ShiftSlot> slots, std::span<const LaidFret> frets, std::span<const PieceFacts> tin,
          const FitSettings& settings)
      : slots_(slots), frets_(frets), pieces_(pieces_that_matter(slots, tin, settings)), tin_(tin),
        settings_(settings), table_(slots.size(), frets.size() + pieces_.size() + slots.size()) {
    for (std::size_t row = 0; row < slots_.size(); ++row) {
      for (std::size_t column = 0; column < first_anew(); ++column) {
        if (const auto o = option(row, column)) table_.at(row, column) = o->cost;
      }
      table_.at(row, first_anew() + row) = anew(slots_[row], settings_);
    }
  }

  Shift solve() const {
    const Assignment best = assign(table_);
    Shift out;
    std::vector<bool> used(frets_.size(), false);
    for (std::size_t row = 0; row < slots_.size(); ++row) {
      const std::size_t column = best.column_of[row];
      if (column < frets_.size()) used[column] = true;
      out.fillings.push_back(filling(row, column));
    }
    for (std::size_t f = 0; f < frets_.size(); ++f) {
      if (!used[f]) out.to_tin.push_back(f);
    }
    std::sort(out.to_tin.begin(), out.to_tin.end(),
              [&](std::size_t a, std::size_t b) { return frets_[a].slot < frets_[b].slot; });
    const auto& l = best.total.levels;
    out.cost = {static_cast<int>(l[0]), static_cast<int>(l[1]), static_cast<int>(l[2]), {l[3]}, {l[4]}};
    out.proved = proves(best, table_);
    return out;
  }

private:
  std::size_t first_anew() const { return frets_.size() + pieces_.size(); }

  std::optional<Option> option(std::size_t row, std::size_t column) const {
    if (column >= frets_.size())
      return moved(tin_[pieces_[column - frets_.size()]], 0, slots_[row], settings_);
    const LaidFret& fret = frets_[column];
    if (fret.slot == slots_[row].slot) return own(fret, slots_[row], settings_);
    if (fret.seated) return std::nullopt;
    return moved(fret.facts, fret.facts.raw_ends, slots_[row], settings_);
  }

  Filling filling(std::size_t row, std::size_t column) const {
    Filling out;
    out.slot = slots_[row].slot;
    if (column >= first_anew()) return out;
    out.verdict = option(row, column)->verdict;
    if (column >= frets_.size()) {
      out.from = From::tin;
      out.index = pieces_[column - frets_.size()];
      return out;
    }
    const LaidFret& fret = frets_[column];
    out.index = column;
    out.from = fret.slot == out.slot ? From::own : From::other_slot;
    out.centre = out.from == From::own && fret.one_sided && !fret.seated;
    return out;
  }

  std::span<const ShiftSlot> slots_;
  std::span<const LaidFret> frets_;
  std::vector<std::size_t> pieces_;
  std::span<const PieceFacts> tin_;
  const FitSettings& settings_;
  CostTable table_;
};

void check(std::span<const ShiftSlot> slots, std::span<const LaidFret> frets) {
  std::set<int> known, laid;
  for (const ShiftSlot& s : slots) {
    if (!known.insert(s.slot).second) throw BadShift("slot " + std::to_string(s.slot) + " is given twice");
  }
  for (const LaidFret& f : frets) {
    if (!known.contains(f.slot)) {
      throw BadShift("a fret lies in slot " + std::to_string(f.slot) + ", which is not among the slots");
    }
    if (!laid.insert(f.slot).second)
      throw BadShift("slot " + std::to_string(f.slot) + " holds two frets at once");
  }
}

} // namespace

Shift shift(std::span<const ShiftSlot> slots, std::span<const LaidFret> frets,
            std::span<const PieceFacts> tin, const FitSettings& settings) {
  check(slots, frets);
  if (slots.empty()) return {{}, {}, {}, true};
  return Problem(slots, frets, tin, settings).solve();
}

OneVerdict verdict_on(const LaidFret& fret, std::span<const ShiftSlot> slots, const FitSettings& settings) {
  check(slots, std::span(&fret, 1));
  const auto at =
      std::find_if(slots.begin(), slots.end(), [&](const ShiftSlot& s) { return s.slot == fret.slot; });
  OneVerdict out{Say::remake, fret.slot, judge(fret.facts, at->wanted, settings)};
  const std::optional<Option> here = own(fret, *at, settings);
  if (here) {
    const Verdict& v = here->verdict;
    const bool sure = v.outcome != Outcome::borderline;
    if (fret.seated || (sure && v.untouched))
      out.say = fret.one_sided && !fret.seated ? Say::centre : Say::drop_in;
    else
      out.say = sure ? Say::finish : Say::try_it;
    return out;
  }
  if (fret.seated) return out;
  std::optional<Cost> least;
  for (const ShiftSlot& slot : slots) {
    const auto there = moved(fret.facts, fret.facts.raw_ends, slot, settings);
    if (slot.slot == fret.slot || !there || (least && *least <= there->cost)) continue;
    least = there->cost;
    out = {Say::move, slot.slot, there->verdict};
  }
  return out;
}

} // namespace nutward::pieces
