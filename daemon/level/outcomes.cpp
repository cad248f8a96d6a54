#include "level/outcomes.hpp"

#include <algorithm>
#include <limits>

namespace nutward::level {

Outcomes::Outcomes(const std::vector<Reading>& readings, const Lines& lines, const LineFinding& finding,
                   std::size_t most, Length epsilon)
    : lines_(lines), line_(finding.line), epsilon_(epsilon), known_(lines, finding.line),
      bow_(bow_shape(lines, finding.line)) {
  for (const Reading& reading : readings)
    known_.add(reading);
  Feasible feasible(known_.claims());
  const std::size_t frets = lines.size();
  for (std::size_t e = 0; e < std::min(most, finding.explanations.size()); ++e) {
    Case one;
    one.first = frets;
    for (const Amount& part : finding.explanations[e].parts) {
      const std::size_t column = part.off.slot ? *lines.find(*part.off.slot) : frets;
      one.set.push_back({static_cast<std::uint32_t>(column), part.off.way == Way::low});
      if (part.off.slot) {
        one.first = std::min(one.first, column);
        one.last = std::max(one.last, column);
      } else {
        one.bowed = true;
      }
    }
    learn(one, finding.explanations[e].example);
    for (std::size_t which = 0; which < one.set.size(); ++which) {
      for (const bool largest : {false, true}) {
        if (feasible.extreme(one.set, which, largest)) learn(one, feasible.amounts());
      }
    }
    cases_.push_back(std::move(one));
  }
}

std::vector<double> Outcomes::heights_of(const Set& set, const std::vector<double>& amounts) const {
  const auto& at = lines_.on(line_);
  std::vector<double> out;
  out.reserve(at.size());
  for (const Crown& crown : at)
    out.push_back(crown.z);
  for (std::size_t k = 0; k < set.size(); ++k) {
    if (set[k].column < at.size()) {
      out[set[k].column] += amounts[k];
    } else {
      for (std::size_t f = 0; f < at.size(); ++f)
        out[f] += amounts[k] * bow_[f];
    }
  }
  return out;
}

void Outcomes::learn(Case& one, const std::vector<double>& amounts) {
  one.heights.push_back(heights_of(one.set, amounts));
}

double Outcomes::proudest(const std::vector<double>& h, std::size_t i, std::size_t j) const {
  const auto& at = lines_.on(line_);
  const double slope = (h[j] - h[i]) / (at[j].x - at[i].x);
  double out = -std::numeric_limits<double>::infinity();
  for (std::size_t k = i + 1; k < j; ++k)
    out = std::max(out, h[k] - h[i] - slope * (at[k].x - at[i].x));
  return out;
}

bool Outcomes::possible(Case& one, std::size_t i, std::size_t j, Felt felt) {
  auto& added = added_[felt == Felt::rocks ? 1 : 0];
  if (!added || added->i != i || added->j != j) {
    const auto& at = lines_.on(line_);
    Reading reading;
    reading.line = line_;
    reading.span = {at[i].slot, at[j].slot};
    reading.felt = felt;
    reading.epsilon = epsilon_;
    added = std::make_unique<Added>(Added{known_, {}, i, j});
    added->claims.add(reading);
    added->feasible.emplace(added->claims.claims());
  }
  if (!added->feasible->possible(one.set)) return false;
  learn(one, added->feasible->amounts());
  return true;
}

Outcome Outcomes::of(std::size_t e, std::size_t i, std::size_t j) {
  Case& one = cases_[e];
  const double steady_to = epsilon_.mm() + 1e-9, rocks_from = (epsilon_ + more_than).mm() - 1e-9;
  Outcome out;
  for (const auto& heights : one.heights) {
    const double by = proudest(heights, i, j);
    out.steady = out.steady || by <= steady_to;
    out.rocks = out.rocks || by >= rocks_from;
    if (out.steady && out.rocks) return out;
  }
  // Where nothing that is off lies under the edge, it feels the board's own shape, whatever the amounts.
  const bool touched = one.bowed || (one.first <= j && one.last >= i && one.first <= one.last);
  if (!touched) return out.steady || out.rocks ? out : Outcome{true, true};
  if (!out.steady) out.steady = possible(one, i, j, Felt::steady);
  if (!out.rocks) out.rocks = possible(one, i, j, Felt::rocks);
  return out.steady || out.rocks ? out : Outcome{true, true};
}

} // namespace nutward::level
