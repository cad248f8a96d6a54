#include "shop/wire_there.hpp"

#include "shop/bench.hpp"
#include "shop/purchases.hpp"

#include <set>

namespace nutward::shop {

namespace {

// What a job's frets that are still to be made take of new wire: without the slots that a held piece serves.
Length wanted_by(const Job& job, const View& view, const Setup& setup) {
  Length sum;
  for (const SlotNeed& s : unserved_slots(job, view, setup))
    sum += s.need.cut + setup.fit.nip_loss;
  return sum;
}

// In sticks, in coils and in the tin, but for pieces that are held: what those serve is not wanted any more.
Length there_of(std::int64_t wire, const std::vector<Job>& jobs, const View& view) {
  Length out = view.wires().on_hand(wire) + view.tin().sum(wire).length;
  for (const Job& job : jobs) {
    for (const Piece& p : view.tin().held_for(job.id))
      if (p.wire == wire && p.length) out -= *p.length;
  }
  return out;
}

} // namespace

WireThere::WireThere(const View& view, const Setup& setup, const hours::Zone& zone) {
  std::set<std::int64_t> wires;
  for (const OnOrder& o : on_order({}, view))
    if (o.purchase.promised) wires.insert(o.line.wire);
  if (wires.empty()) return;
  const auto jobs = view.jobs().open();
  for (const std::int64_t wire : wires) {
    const Length there = there_of(wire, jobs, view);
    const auto to_come = on_order(wire, view);
    Length wanted;
    for (const Job& job : jobs) {
      if (job.wire != wire) continue;
      wanted += wanted_by(job, view, setup);
      Length sum = there;
      for (auto o = to_come.begin(); o != to_come.end() && o->purchase.promised && sum < wanted; ++o) {
        sum += o->left_length;
        if (sum >= wanted) from_[job.id] = zone.instant(*o->purchase.promised, 0);
      }
    }
  }
}

std::optional<Instant> WireThere::there_for(std::int64_t job) const {
  const auto at = from_.find(job);
  return at == from_.end() ? std::nullopt : std::optional{at->second};
}

} // namespace nutward::shop
