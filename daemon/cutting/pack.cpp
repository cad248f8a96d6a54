#include "cutting/pack.hpp"

#include "cutting/fill.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <tuple>

namespace nutward::cutting {

namespace {

constexpr std::int64_t exact_enough = 20'000; // nm: no rule shows two hundredths of a millimetre

constexpr std::int64_t near_enough = 200'000; // nm: not worth another try
constexpr int most_tries = 6;                 // at one stick, by chance
constexpr int most_draws = 6;                 // of which the best is taken

struct Manner {
  bool blanks = false;
  bool seeded = true;         // the longest fret left is always among those of the next stick
  std::uint64_t withheld = 0; // one lot in so many stays out of a filling; 0: none
  bool mixed = false;         // most of a stick is drawn at random, so that what
                              // remains stays as mixed as it was
  std::uint64_t steered = 8;  // in so many draws of eight the fret is taken that suits the mean better
  std::int64_t enough = 0;    // room that may stay empty
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
      Bin bin = fullest(wire);
      if (bin.lots.empty())
        spare_[wire] = 0;
      else
        packing_.bins.push_back(std::move(bin));
    }
  }

  // Of some tries, if they are by chance.
  Bin fullest(std::size_t wire) {
    Bin best{wire, {}};
    std::int64_t least = task_.wires[wire].room + 1;
    const int tries = manner_.mixed ? most_tries : 1;
    for (int i = 0; i < tries && least > near_enough; ++i) {
      Bin bin{wire, {}};
      std::int64_t room = task_.wires[wire].room;
      take_first(bin, room);
      if (manner_.mixed) take_some(bin, room);
      take_best(bin, room);
      put_back(bin);
      if (room >= least) continue;
      least = room;
      best = std::move(bin);
    }
    std::int64_t room = task_.wires[wire].room;
    Bin out{wire, {}};
    for (const int lot : best.lots)
      take(out, static_cast<std::size_t>(lot), room);
    return out;
  }
  void put_back(const Bin& bin) {
    for (const int lot : bin.lots) {
      const auto i = static_cast<std::size_t>(lot);
      ++left_[i];
      ++frets_;
      total_ += task_.lots[i].size;
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

  // So many frets that their mean fills the room: one number or its neighbour, by chance, so that the mean
  // of what remains stays what it was. Else the last sticks get frets that neither number goes well with.
  std::int64_t number_of(std::int64_t room) {
    const double drawn = static_cast<double>(chance_() % 4096) / 4096;
    if (frets_ == 0) return 0;
    const double exact = static_cast<double>(room) * frets_ / static_cast<double>(total_);
    const bool more = drawn < exact - std::floor(exact);
    return static_cast<std::int64_t>(exact) + (more ? 1 : 0);
  }

  // A fret drawn from those that are left; -1 if ten draws found none.
  int draw(std::size_t wire) {
    for (int tries = 0; tries < 10; ++tries) {
      const std::size_t lot = chance_() % left_.size();
      if (left_[lot] > 0 && suits(wire, lot)) return static_cast<int>(lot);
    }
    return -1;
  }

  int draw_near(std::size_t wire, std::int64_t wanted) {
    int best = -1;
    std::int64_t least = 0;
    const int draws = chance_() % 8 < manner_.steered ? most_draws : 1;
    for (int i = 0; i < draws; ++i) {
      const int lot = draw(wire);
      if (lot < 0) break;
      const std::int64_t off = std::abs(task_.lots[static_cast<std::size_t>(lot)].size - wanted);
      if (best >= 0 && off >= least) continue;
      best = lot;
      least = off;
    }
    return best;
  }

  // All but three frets, drawn so that the mean comes out; the three are then searched for.
  void take_some(Bin& bin, std::int64_t& room) {
    const std::int64_t whole = room, number = number_of(room);
    for (std::int64_t i = 0; i + 3 < number && frets_ > 0; ++i) {
      const std::int64_t wanted = whole * (i + 1) / number - (whole - room); // of the next
      const int lot = draw_near(bin.wire, wanted);
      if (lot < 0) return;
      if (task_.lots[static_cast<std::size_t>(lot)].size > room) return;
      take(bin, static_cast<std::size_t>(lot), room);
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
  out.steered = 4 + chance() % 5;
  out.nodes = attempt % 7 == 6 ? 20'000 : 1'000;
  return out;
}

// The sticks that waste most, and some others, all to be packed anew.
class Repacking {
public:
  Repacking(const Task& task, Packing& packing, Chance& chance, Meter& meter)
      : task_(task), packing_(packing), chance_(chance), meter_(meter) {}

  void step() {
    choose();
    const Task part = part_of();
    Manner how;
    how.mixed = !one_in(chance_, 4);
    how.seeded = false;
    how.withheld = how.mixed ? 0 : 2 + chance_() % 8;
    how.enough = exact_enough;
    Packing before;
    for (const std::size_t i : chosen_)
      before.bins.push_back(packing_.bins[i]);
    before.price = price_of(task_, before);
    Packing after = Attempt(part, how, chance_, meter_).run();
    if (after.unpacked > 0 || !(after.price < before.price)) return;
    std::sort(chosen_.rbegin(), chosen_.rend());
    for (const std::size_t i : chosen_)
      packing_.bins.erase(packing_.bins.begin() + static_cast<std::ptrdiff_t>(i));
    for (Bin& bin : after.bins) {
      for (int& lot : bin.lots)
        lot = lots_[static_cast<std::size_t>(lot)];
      packing_.bins.push_back(std::move(bin));
    }
    packing_.price = price_of(task_, packing_);
  }

private:
  void choose() {
    std::vector<std::pair<std::int64_t, std::size_t>> empty;
    for (std::size_t i = 0; i < packing_.bins.size(); ++i) {
      const Bin& bin = packing_.bins[i];
      if (task_.problem.stock[task_.wires[bin.wire].stock].kind == StockKind::stick)
        empty.emplace_back(task_.wires[bin.wire].room - sizes_of(task_, bin), i);
    }
    std::sort(empty.rbegin(), empty.rend());
    const std::size_t worst = std::min<std::size_t>(empty.size(), 1 + chance_() % 10);
    for (std::size_t k = worst; k < empty.size(); ++k)
      std::swap(empty[k], empty[k + chance_() % (empty.size() - k)]);
    chosen_.clear();
    for (std::size_t k = 0; k < std::min<std::size_t>(empty.size(), worst + 3 + chance_() % 12); ++k)
      chosen_.push_back(empty[k].second);
  }
  Task part_of() {
    std::vector<int> counts(task_.lots.size());
    for (const std::size_t i : chosen_)
      for (const int lot : packing_.bins[i].lots)
        ++counts[static_cast<std::size_t>(lot)];
    lots_.clear();
    Task part{task_.problem, {}, task_.wires};
    for (Wire& wire : part.wires)
      wire.suits.clear();
    for (std::size_t i = 0; i < counts.size(); ++i) {
      if (counts[i] == 0) continue;
      part.lots.push_back({task_.lots[i].size, counts[i]});
      lots_.push_back(static_cast<int>(i));
      for (std::size_t w = 0; w < part.wires.size(); ++w)
        if (!task_.wires[w].suits.empty()) part.wires[w].suits.push_back(task_.wires[w].suits[i]);
    }
    for (const Bin& bin : packing_.bins)
      --part.wires[bin.wire].count;
    for (const std::size_t i : chosen_)
      ++part.wires[packing_.bins[i].wire].count;
    for (Wire& wire : part.wires)
      if (task_.problem.stock[wire.stock].kind != StockKind::stick) wire.count = 0;
    return part;
  }

  const Task& task_;
  Packing& packing_;
  Chance& chance_;
  Meter& meter_;
  std::vector<std::size_t> chosen_;
  std::vector<int> lots_; // of the part, in the task
};

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
  Meter half = meter.part(0.5);
  for (int i = 0; i < attempts && !(i > 0 && (reached(best, bound) || half.over())); ++i) {
    const Manner how = manner(i, spare, chance);
    Packing found = Attempt(task, how, chance, half).run();
    if (i == 0 || better(found, best)) best = std::move(found);
  }
  meter.spend(half.steps() * Meter::per_step);
  if (best.unpacked > 0) return best;
  Repacking repacking(task, best, chance, meter);
  for (int i = 0; i < attempts * 8 && !reached(best, bound) && !meter.over(); ++i)
    repacking.step();
  return best;
}

} // namespace nutward::cutting
