#include "cutting/exact.hpp"
#include "cutting/search.hpp"

#include <algorithm>
#include <set>

namespace nutward::cutting {

namespace {

constexpr std::size_t most_slots = 9;     // of one neighbourhood
constexpr std::size_t most_spare = 12;    // unused pieces in it
constexpr std::int64_t most_steps = 4000; // for re-planning it

class Improver {
public:
  Improver(const Problem& p, const Supply& supply, const std::vector<int>& ranks, Draft& draft,
           Chance& chance, Meter& meter)
      : p_(p), ranks_(ranks), draft_(draft), chance_(chance), meter_(meter), stock_(supply.stock),
        spare_(supply.pieces.begin(), supply.pieces.end()) {
    for (const Cutting& c : draft.cuttings)
      remove(c.source);
  }

  void step() {
    choose();
    if (chosen_.empty()) return;
    for (const std::size_t i : chosen_)
      give_back(draft_.cuttings[i].source);
    const std::vector<Group> groups = sources();
    const auto better = plan_exactly(p_, slots_, groups, most_steps, meter_);
    if (better && improves(*better))
      replace(*better);
    else
      for (const std::size_t i : chosen_)
        remove(draft_.cuttings[i].source);
  }

private:
  void remove(const Source& s) {
    if (s.from == From::stock)
      --stock_[s.index];
    else
      spare_.erase(s.index);
  }
  void give_back(const Source& s) {
    if (s.from == From::stock)
      ++stock_[s.index];
    else
      spare_.insert(s.index);
  }

  // Some cuttings whose slots are few enough, and some unserved slots.
  void choose() {
    chosen_.clear();
    slots_.clear();
    taken_out_.clear();
    const std::size_t n = draft_.cuttings.size();
    for (int tries = 0; tries < 12 && n > 0; ++tries) {
      const std::size_t i = chance_() % n;
      const std::vector<std::size_t>& more = draft_.cuttings[i].slots;
      if (slots_.size() + more.size() > most_slots) continue;
      if (std::find(chosen_.begin(), chosen_.end(), i) != chosen_.end()) continue;
      chosen_.push_back(i);
      slots_.insert(slots_.end(), more.begin(), more.end());
    }
    for (int k = 0; k < 3 && !draft_.unserved.empty() && slots_.size() < most_slots; ++k) {
      const std::size_t slot = draft_.unserved[chance_() % draft_.unserved.size()];
      if (std::find(slots_.begin(), slots_.end(), slot) != slots_.end()) continue;
      slots_.push_back(slot);
      taken_out_.push_back(slot);
    }
  }

  // The pieces of the chosen cuttings, some others that suit, and what is left of the stock.
  std::vector<Group> sources() {
    std::vector<std::size_t> pieces;
    for (const std::size_t i : chosen_)
      if (draft_.cuttings[i].source.from == From::piece) pieces.push_back(draft_.cuttings[i].source.index);
    std::vector<std::size_t> suiting;
    for (const std::size_t i : spare_)
      if (std::find(pieces.begin(), pieces.end(), i) == pieces.end() && suits(i)) suiting.push_back(i);
    meter_.spend(static_cast<std::int64_t>(spare_.size()) * 50);
    for (std::size_t k = 0; k < most_spare && !suiting.empty(); ++k) {
      const std::size_t at = chance_() % suiting.size();
      pieces.push_back(suiting[at]);
      suiting.erase(suiting.begin() + static_cast<std::ptrdiff_t>(at));
    }
    return alike(p_, pieces, stock_);
  }
  bool suits(std::size_t piece) const {
    return std::any_of(slots_.begin(), slots_.end(), [&](std::size_t s) {
      return serve_piece(p_, p_.pieces[piece], {&s, 1}).has_value();
    });
  }

  bool improves(const std::vector<Cutting>& found) const {
    Draft before, after;
    before.unserved = taken_out_;
    for (const std::size_t i : chosen_)
      before.cuttings.push_back(draft_.cuttings[i]);
    after.cuttings = found;
    after.unserved = unserved_by(found);
    return cost_of(p_, after, ranks_) < cost_of(p_, before, ranks_);
  }
  std::vector<std::size_t> unserved_by(const std::vector<Cutting>& found) const {
    std::vector<std::size_t> out = slots_;
    for (const Cutting& c : found)
      for (const std::size_t s : c.slots)
        out.erase(std::find(out.begin(), out.end(), s));
    return out;
  }

  void replace(const std::vector<Cutting>& found) {
    const std::vector<std::size_t> unserved = unserved_by(found);
    std::sort(chosen_.rbegin(), chosen_.rend());
    for (const std::size_t i : chosen_)
      draft_.cuttings.erase(draft_.cuttings.begin() + static_cast<std::ptrdiff_t>(i));
    for (const Cutting& c : found) {
      remove(c.source);
      draft_.cuttings.push_back(c);
    }
    for (const std::size_t s : taken_out_)
      draft_.unserved.erase(std::find(draft_.unserved.begin(), draft_.unserved.end(), s));
    draft_.unserved.insert(draft_.unserved.end(), unserved.begin(), unserved.end());
    std::sort(draft_.unserved.begin(), draft_.unserved.end());
  }

  const Problem& p_;
  const std::vector<int>& ranks_;
  Draft& draft_;
  Chance& chance_;
  Meter& meter_;
  std::vector<int> stock_;
  std::set<std::size_t> spare_;
  std::vector<std::size_t> chosen_, slots_, taken_out_; // cuttings; their slots and the others; the others
};

} // namespace

void improve(const Problem& p, const Supply& supply, const std::vector<int>& ranks, Draft& draft,
             Chance& chance, Meter& meter) {
  if (draft.cuttings.empty()) return;
  Improver improver(p, supply, ranks, draft, chance, meter);
  while (!meter.over()) {
    meter.spend(20'000); // a step that finds nothing to do costs something, too
    improver.step();
  }
}

} // namespace nutward::cutting
