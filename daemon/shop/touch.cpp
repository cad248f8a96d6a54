#include "shop/touch.hpp"

#include <algorithm>
#include <map>

namespace nutward::shop {

int touches(const Job& job, const View& view) {
  int out = job.straightened;
  for (const Fret& f : view.jobs().frets(job.id))
    out = std::max(out, f.touched);
  for (const Reading& r : view.jobs().readings(job.id))
    out = std::max(out, r.is.revision);
  return out;
}

void touch(Tx& tx, const Job& job, std::span<const int> slots) {
  if (slots.empty()) return;
  const int now = touches(job, tx) + 1;
  for (Fret f : tx.jobs().frets(job.id)) {
    if (std::find(slots.begin(), slots.end(), f.slot) == slots.end()) continue;
    f.touched = now;
    f.gap = level::Gap::not_asked;
    f.cause = level::Cause::not_asked;
    f.below.reset();
    tx.put(f);
  }
}

std::vector<level::Touched> touched(const Job& job, const View& view, std::span<const int> all) {
  std::map<int, int> at;
  for (const int slot : all)
    if (job.straightened > 0) at[slot] = job.straightened;
  for (const Fret& f : view.jobs().frets(job.id))
    if (f.touched > 0) at[f.slot] = std::max(at[f.slot], f.touched);
  std::vector<level::Touched> out;
  out.reserve(at.size());
  for (const auto& [slot, revision] : at)
    out.push_back({slot, revision});
  return out;
}

} // namespace nutward::shop
