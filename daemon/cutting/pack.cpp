#include "cutting/pack.hpp"

#include "cutting/fill.hpp"

#include <algorithm>
#include <tuple>

namespace nutward::cutting {

namespace {

constexpr std::int64_t exact_enough = 20'000; // nm: no rule shows two hundredths of a millimetre

struct Manner {
  bool blanks = false;
  bool seeded = true;         // the longest fret left is always among those of the next stick
  std::uint64_t withheld = 0; // one lot in so many stays out of a filling; 0: none
  bool mixed = false; // most of a stick is drawn at random, so that what remains stays as mixed as it was
  std::uint64_t longer = 0; // in so many draws of eight the longer of two frets is taken
  std::int64_t enough = 0;  // room that may stay empty
  std::int64_t nodes = 2'000;
};

class Attempt {
public:
  Attempt(const Task& task, const Manner& manner, Chance& chance, Meter& meter)
      : task_(task), manner_(manner), chance_(chance), meter_(meter) {
    for (const Lot& lot : task.lots) {
      left_.push_back(lot.count);
      total_ += lot.size * lot.count;
      frets_ += lot.count;
    }
    for (const Wire& wire : task.wires)
      spare_.push_back(wire.count);
  }

  Packing run() {
    use_all(StockKind::coil);
    if (manner_.blanks) use_all(StockKind::blank);
    use_all(StockKind::stick);
    if (!manner_.blanks) use_all(StockKind::blank); // better than nothing
    packing_.unpacked = frets_;
    packing_.price = price_of(task_, packing_);
    return std::move(packing_);
  }

private:
  StockKind kind(std::size_t wire) const { return task_.problem.stock[task_.wires[wire].stock].kind; }
  bool suits(std::size_t wire, std::size_t lot) const {
    return task_.wires[wire].suits.empty() || task_.wires[wire].suits[lot] != 0;
  }
  bool suits_all(std::size_t wire) const {
    for (std::size_t i = 0; i < left_.size(); ++i)
      if (left_[i] > 0 && !suits(wire, i)) return false;
    return true;
  }

  // The longest that is left, or, if one length takes everything, the one that wastes least.
  std::size_t next_wire(StockKind wanted) const {
    std::size_t best = spare_.size();
    std::tuple<std::int64_t, std::int64_t> least{};
    for (std::size_t i = 0; i < spare_.size(); ++i) {
      if (spare_[i] == 0 || kind(i) != wanted) continue;
      if (best == spare_.size()) best = i;
      if (task_.wires[i].room < total_ || !suits_all(i)) continue;
      const auto served = serve_stock(task_.problem, task_.problem.stock[task_.wires[i].stock],
                                      Length{total_}, static_cast<std::size_t>(frets_));
      const std::tuple waste{served->price.taken, task_.wires[i].room};
      if (least == decltype(least){} || waste < least) {
        best = i;
        least = waste;
      }
    }
    return best;
  }

  void use_all(StockKind wanted) {
    while (frets_ > 0) {
      const std::size_t wire = next_wire(wanted);
      if (wire == spare_.size()) return;
      --spare_[wire];
      Bin bin{wire, {}};
      std::int64_t room = task_.wires[wire].room;
      take_first(bin, room);
      if (manner_.mixed) take_some(bin, room);
      take_best(bin, room);
      if (bin.lots.empty())
        spare_[wire] = 0;
      else
        packing_.bins.push_back(std::move(bin));
    }
  }

  void take(Bin& bin, std::size_t lot, std::int64_t& room) {
    bin.lots.push_back(static_cast<int>(lot));
    --left_[lot];
    --frets_;
    room -= task_.lots[lot].size;
    total_ -= task_.lots[lot].size;
  }

  // Of a long coil only the last dozen frets are searched for.
  void take_first(Bin& bin, std::int64_t& room) {
    for (std::size_t i = 0; i < left_.size(); ++i)
      while (left_[i] > 0 && suits(bin.wire, i) && room > 24 * task_.lots.front().size)
        take(bin, i, room);
  }

  // Leaves room for some three frets, which are then searched for.
  void take_some(Bin& bin, std::int64_t& room) {
    const std::int64_t leave = task_.lots.front().size * 3;
    for (int tries = 0; tries < 200 && room > leave + task_.lots.front().size && frets_ > 0; ++tries) {
      std::size_t lot = chance_() % left_.size();
      if (chance_() % 8 < manner_.longer)
        lot = std::min(lot, static_cast<std::size_t>(chance_() % left_.size()));
      if (left_[lot] > 0 && suits(bin.wire, lot)) take(bin, lot, room);
    }
  }

  std::vector<Candidate> candidates(std::size_t wire, std::int64_t room) {
    std::vector<Candidate> out;
    for (std::size_t i = 0; i < left_.size(); ++i) {
      if (left_[i] == 0 || task_.lots[i].size > room || !suits(wire, i)) continue;
      const bool stays_out = !out.empty() && manner_.withheld > 0 && one_in(chance_, manner_.withheld);
      if (!stays_out) out.push_back({task_.lots[i].size, task_.lots[i].size, left_[i], static_cast<int>(i)});
    }
    meter_.spend(static_cast<std::int64_t>(left_.size()) * 2);
    return out;
  }

  void take_best(Bin& bin, std::int64_t& room) {
    const std::vector<Candidate> some = candidates(bin.wire, room);
    if (some.empty()) return;
    const Filling found =
        fill(some, room, manner_.seeded && bin.lots.empty() ? 0 : -1, manner_.enough, manner_.nodes, meter_);
    for (const int lot : found.lots)
      take(bin, static_cast<std::size_t>(lot), room);
  }

  const Task& task_;
  const Manner& manner_;
  Chance& chance_;
  Meter& meter_;
  std::vector<int> left_, spare_;
  std::int64_t total_ = 0;
  int frets_ = 0;
  Packing packing_;
};

// The room that stays empty in each stick if the bound is reached.
std::int64_t room_to_spare(const Task& task, const PackBound& bound) {
  std::int64_t sizes = 0, rooms = 0, n = bound.sticks;
  for (const Lot& lot : task.lots)
    sizes += lot.size * lot.count;
  for (const Wire& wire : task.wires) {
    const std::int64_t used = std::min<std::int64_t>(n, wire.count);
    rooms += used * wire.room;
    n -= used;
  }
  return bound.sticks > 0 ? std::max<std::int64_t>(0, rooms - sizes) / bound.sticks : 0;
}

Manner manner(int attempt, std::int64_t spare, Chance& chance) {
  Manner out;
  out.enough = exact_enough;
  if (attempt == 0) return out;
  out.blanks = attempt % 4 == 3;
  out.seeded = attempt % 5 != 4;
  out.withheld = attempt % 3 == 0 ? 0 : 2 + chance() % 8;
  if (attempt % 2 == 0 && spare > 0)
    out.enough += static_cast<std::int64_t>(chance() % static_cast<std::uint64_t>(spare + 1));
  out.mixed = attempt % 2 == 1;
  out.longer = chance() % 9;
  out.nodes = attempt % 7 == 6 ? 20'000 : 1'000;
  return out;
}

} // namespace

bool better(const Packing& a, const Packing& b) {
  return std::tie(a.unpacked, a.price) < std::tie(b.unpacked, b.price);
}

std::int64_t sizes_of(const Task& task, const Bin& bin) {
  std::int64_t sum = 0;
  for (const int lot : bin.lots)
    sum += task.lots[static_cast<std::size_t>(lot)].size;
  return sum;
}

Price price_of(const Task& task, const Packing& packing) {
  Price sum;
  for (const Bin& bin : packing.bins) {
    const Stock& stock = task.problem.stock[task.wires[bin.wire].stock];
    const auto served = serve_stock(task.problem, stock, Length{sizes_of(task, bin)}, bin.lots.size());
    if (served) sum = sum + served->price;
  }
  return sum;
}

Packing pack(const Task& task, const PackBound& bound, int attempts, Chance& chance, Meter& meter) {
  const std::int64_t spare = room_to_spare(task, bound);
  Packing best;
  for (int i = 0; i < attempts && !(i > 0 && (reached(best, bound) || meter.over())); ++i) {
    const Manner how = manner(i, spare, chance);
    Packing found = Attempt(task, how, chance, meter).run();
    if (i == 0 || better(found, best)) best = std::move(found);
  }
  return best;
}

} // namespace nutward::cutting
