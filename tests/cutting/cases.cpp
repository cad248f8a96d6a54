#include "cutting/cases.hpp"

#include <algorithm>
#include <set>

namespace cases {

namespace {

constexpr Length nothing{};

Figures sum(const Figures& a, const Figures& b) {
  return {a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]};
}

std::optional<Figures> of_stock(const Problem& p, const cutting::Stock& s,
                                const std::vector<std::size_t>& slots) {
  Length frets{};
  for (const std::size_t i : slots) {
    const auto& crown = p.slots[i].crown_height;
    if (crown && s.crown_height && units::abs(*crown - *s.crown_height) > p.settings.crown_tolerance)
      return std::nullopt;
    frets += p.slots[i].need.cut;
  }
  const auto n = static_cast<std::int64_t>(slots.size());
  const Length near = s.flat_ends == 2 ? p.flat_end : nothing;
  const Length far = s.flat_ends >= 1 ? p.flat_end : nothing;
  const Length nip = p.settings.nip_loss;
  const Length beyond =
      s.length - near - far - frets - (n - 1) * nip; // after the last fret, before the far end
  if (beyond < nothing) return std::nullopt;
  const std::int64_t opened = s.kind == cutting::StockKind::stick ? 1 : 0;
  const std::int64_t cuts = n + (near > nothing ? 1 : 0);
  if (beyond - nip >= p.least_useful)
    return Figures{opened, (s.length - far - (beyond - nip)).nm, near.nm, cuts};
  const bool ends_there = beyond == nothing && far == nothing;
  const Length lost = std::max(nothing, beyond - nip + far);
  return Figures{opened, s.length.nm, (near + lost).nm, ends_there ? cuts - 1 : cuts};
}

std::optional<Figures> of_piece(const Problem& p, const cutting::Piece& piece,
                                const std::vector<std::size_t>& slots) {
  const bool several = slots.size() > 1;
  const bool flat = piece.flat_ends > 0;
  if (piece.facts.tang && (several || flat)) return std::nullopt;
  const Length near = piece.flat_ends == 2 ? p.flat_end : nothing;
  const Length far = flat ? p.flat_end : nothing;
  pieces::PieceFacts rest = piece.facts;
  rest.length = piece.facts.length - near - far;
  for (std::size_t i = 0; i + 1 < slots.size(); ++i) {
    const auto& crown = p.slots[slots[i]].crown_height;
    if (crown && rest.crown_height && units::abs(*crown - *rest.crown_height) > p.settings.crown_tolerance)
      return std::nullopt;
    rest.length -= p.slots[slots[i]].need.cut + p.settings.nip_loss;
  }
  if (rest.length <= nothing) return std::nullopt;
  rest.raw_ends = std::max(piece.facts.raw_ends, piece.flat_ends);
  if (several) rest.raw_ends = rest.raw_ends == 2 || flat ? 2 : 1;
  const cutting::Slot& last = p.slots[slots.back()];
  const auto v =
      pieces::judge(rest, {last.need, last.crown_height, p.least_useful, std::nullopt}, p.settings);
  if (v.outcome != pieces::Outcome::fits && !(several && v.outcome == pieces::Outcome::wasteful))
    return std::nullopt;
  std::int64_t cuts = static_cast<std::int64_t>(slots.size()) - 1 + (near > nothing ? 1 : 0);
  const Length left = rest.length - last.need.cut - p.settings.nip_loss;
  if (left >= p.least_useful && !rest.tang) return Figures{0, 0, near.nm, cuts + 1};
  if (!several && v.trim > p.settings.trim_limit) return std::nullopt;
  if (flat || v.nip > nothing) ++cuts;
  return Figures{0, 0, (near + far + v.nip).nm, cuts};
}

class Everything {
public:
  explicit Everything(const Problem& p) : p_(p), units_(units_of_supply(p)), served_(units_.size()) {
    std::set<int> ranks;
    for (const auto& s : p.slots)
      ranks.insert(s.due);
    for (const auto& s : p.slots)
      rank_.push_back(static_cast<std::size_t>(std::distance(ranks.begin(), ranks.find(s.due))));
    unserved_.assign(ranks.size(), 0);
    assign(0);
  }
  Cost best() const { return *best_; }

private:
  void assign(std::size_t slot) {
    if (slot == p_.slots.size()) return judge();
    ++unserved_[rank_[slot]];
    assign(slot + 1);
    --unserved_[rank_[slot]];
    for (std::size_t u = 0; u < units_.size(); ++u) {
      if (u > 0 && units_[u] == units_[u - 1] && served_[u - 1].empty()) continue; // alike: in order
      served_[u].push_back(slot);
      // One fret may be too little for a piece that is right for two: only new wire is sure to be no good for
      // more.
      if (units_[u].from == From::piece || price(u)) assign(slot + 1);
      served_[u].pop_back();
    }
  }
  // Remembered by source and set.
  const std::optional<Figures>& price(std::size_t u) {
    std::uint32_t set = 0;
    for (const std::size_t s : served_[u])
      set |= 1U << s;
    auto [it, fresh] = known_.try_emplace({units_[u], set});
    if (fresh) it->second = figures(p_, units_[u], served_[u]);
    return it->second;
  }
  void judge() {
    Figures all{};
    for (std::size_t u = 0; u < units_.size(); ++u) {
      if (served_[u].empty()) continue;
      const std::optional<Figures>& one = price(u);
      if (!one) return;
      all = sum(all, *one);
    }
    const Cost cost{unserved_, static_cast<int>(all[0]), Length{all[1]}, Length{all[2]}, all[3]};
    if (!best_ || cost < *best_) best_ = cost;
  }

  const Problem& p_;
  std::vector<cutting::Source> units_;
  std::vector<std::vector<std::size_t>> served_;
  std::vector<std::size_t> rank_;
  std::vector<int> unserved_;
  std::map<std::pair<cutting::Source, std::uint32_t>, std::optional<Figures>> known_;
  std::optional<Cost> best_;
};

} // namespace

cutting::Slot plain_slot(Length cut, int due) {
  cutting::Slot out;
  out.need = {board::EndStyle::filed, cut, cut, cut, std::nullopt, cut};
  out.due = due;
  return out;
}

cutting::Slot slot(Length arc, int due, board::EndStyle style) {
  cutting::Slot out;
  out.need = board::need(arc, style, {});
  out.due = due;
  return out;
}

cutting::Stock stick(Length length, int count, int flat_ends) {
  cutting::Stock out;
  out.length = length;
  out.count = count;
  out.flat_ends = flat_ends;
  return out;
}

cutting::Piece piece(Length length, int raw_ends, int flat_ends) {
  cutting::Piece out;
  out.facts.length = length;
  out.facts.raw_ends = raw_ends;
  out.flat_ends = flat_ends;
  return out;
}

Problem bin_packing(const std::vector<int>& sizes, int capacity, int sticks) {
  Problem out;
  out.settings.nip_loss = {};
  out.least_useful = (capacity + 1) * units::millimetre;
  for (const int size : sizes)
    out.slots.push_back(plain_slot(size * units::millimetre));
  out.stock.push_back(stick(capacity * units::millimetre, sticks));
  return out;
}

std::optional<Figures> figures_in_order(const Problem& p, const cutting::Source& source,
                                        const std::vector<std::size_t>& slots) {
  return source.from == From::stock ? of_stock(p, p.stock[source.index], slots)
                                    : of_piece(p, p.pieces[source.index], slots);
}

std::optional<Figures> figures(const Problem& p, const cutting::Source& source,
                               const std::vector<std::size_t>& slots) {
  std::optional<Figures> best;
  std::vector<std::size_t> order = slots;
  for (std::size_t i = 0; i < order.size(); ++i) {
    std::rotate(order.begin(), order.begin() + 1, order.end());
    const auto found = figures_in_order(p, source, order);
    if (found && (!best || *found < *best)) best = found;
  }
  return best;
}

std::vector<cutting::Source> units_of_supply(const Problem& p) {
  std::vector<cutting::Source> out;
  for (std::size_t i = 0; i < p.pieces.size(); ++i)
    out.push_back({From::piece, i});
  for (std::size_t i = 0; i < p.stock.size(); ++i)
    out.insert(out.end(), static_cast<std::size_t>(p.stock[i].count), {From::stock, i});
  return out;
}

Cost brute_force(const Problem& p) {
  return Everything(p).best();
}

void check_plan(const Problem& p, const cutting::Plan& plan) {
  std::vector<int> served(p.slots.size()), pieces(p.pieces.size()), stock(p.stock.size());
  Figures all{};
  for (const cutting::Use& use : plan.uses) {
    ++(use.source.from == From::piece ? pieces : stock)[use.source.index];
    std::vector<std::size_t> slots;
    for (const cutting::Fret& fret : use.frets) {
      slots.push_back(fret.slot);
      ++served[fret.slot];
    }
    if (use.held) continue;
    const auto found = figures_in_order(p, use.source, slots);
    REQUIRE(found);
    all = sum(all, *found);
    CHECK(use.scrap.nm == (*found)[2]);
    CHECK(use.cuts == (*found)[3]);
  }
  for (const std::size_t s : plan.unserved)
    ++served[s];
  CHECK(std::all_of(served.begin(), served.end(), [](int n) { return n == 1; }));
  CHECK(std::all_of(pieces.begin(), pieces.end(), [](int n) { return n <= 1; }));
  for (std::size_t i = 0; i < stock.size(); ++i)
    CHECK(stock[i] <= p.stock[i].count);
  if (!p.held.empty()) return;
  CHECK(Figures{plan.cost.sticks, plan.cost.taken.nm, plan.cost.scrap.nm, plan.cost.cuts} == all);
  CHECK(plan.bound <= plan.cost);
}

namespace {

Length tenths(std::mt19937& random, int from, int to) {
  return (from + static_cast<int>(random() % static_cast<unsigned>(to - from + 1))) *
         (units::millimetre.nm / 10) * Length{1};
}

} // namespace

Problem random_problem(std::mt19937& random, std::size_t most_slots, std::size_t most_pieces) {
  Problem p;
  const auto chance = [&](unsigned n) { return random() % n == 0; };
  p.least_useful = tenths(random, 430, 450);
  const std::size_t slots = 1 + random() % most_slots;
  const bool filed = chance(4);
  for (std::size_t i = 0; i < slots; ++i) {
    const board::EndStyle style = filed != chance(8) ? board::EndStyle::filed : board::EndStyle::rounded;
    p.slots.push_back(slot(tenths(random, 430, 560), static_cast<int>(random() % 3), style));
    if (chance(10)) p.slots.back().crown_height = tenths(random, 11, 12);
  }
  for (std::size_t i = random() % (most_pieces + 1); i > 0; --i) {
    const bool end = chance(3);
    p.pieces.push_back(piece(end ? tenths(random, 600, 2000) : tenths(random, 420, 600),
                             static_cast<int>(random() % 3),
                             end && chance(3) ? 1 + static_cast<int>(random() % 2) : 0));
    if (chance(8)) p.pieces.back().facts.crown_height = tenths(random, 11, 12);
    if (chance(10)) p.pieces.back().facts.tang = p.pieces.back().facts.length - tenths(random, 0, 40);
  }
  const int flats = static_cast<int>(random() % 3);
  p.stock.push_back(stick(tenths(random, 1000, 3000), static_cast<int>(random() % 3), flats));
  if (chance(2)) p.stock.push_back(stick(tenths(random, 800, 1600), 1, flats));
  if (chance(4)) {
    p.stock.push_back(stick(tenths(random, 500, 2500), 1));
    p.stock.back().kind = chance(2) ? cutting::StockKind::coil : cutting::StockKind::blank;
  }
  if (chance(6)) p.stock.front().crown_height = tenths(random, 11, 12);
  return p;
}

} // namespace cases
