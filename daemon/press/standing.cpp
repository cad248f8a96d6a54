#include "press/standing.hpp"

#include <algorithm>

namespace nutward::press {

namespace {

bool covers(const Pressed& report, const Pass& pass) {
  return std::includes(report.slots.begin(), report.slots.end(), pass.slots.begin(), pass.slots.end());
}

bool names(const Pressed& report, int slot) {
  return std::binary_search(report.slots.begin(), report.slots.end(), slot);
}

Done reached(const Pass& pass, const Pressed& report) {
  if (!report.load) return Done::done;
  const double part = report.load->n / pass.load.n;
  if (part < halfway_under) return Done::halfway;
  return part < low_under ? Done::low : Done::done;
}

bool to_do(Done d) {
  return d == Done::open || d == Done::halfway;
}

Done state_of(const Pass& pass, std::span<const Pressed> reports, const std::vector<int>& never) {
  Done best = Done::open;
  for (const Pressed& r : reports) {
    if (covers(r, pass)) best = std::max(best, reached(pass, r));
  }
  const bool each = std::none_of(pass.slots.begin(), pass.slots.end(), [&](int slot) {
    return std::binary_search(never.begin(), never.end(), slot);
  });
  return best == Done::open && each ? Done::in_parts : best;
}

std::vector<int> never_pressed(std::span<const Pass> passes, std::span<const Pressed> reports) {
  std::vector<int> out;
  for (const Pass& p : passes) {
    for (int slot : p.slots) {
      if (std::none_of(reports.begin(), reports.end(), [&](const Pressed& r) { return names(r, slot); }))
        out.push_back(slot);
    }
  }
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

// The last report that covers a pass, and of the passes that it covers the last.
std::optional<std::size_t> stopped_at(std::span<const Pass> passes, std::span<const Pressed> reports) {
  for (std::size_t r = reports.size(); r-- > 0;) {
    for (std::size_t p = passes.size(); p-- > 0;) {
      if (covers(reports[r], passes[p])) return p;
    }
  }
  return std::nullopt;
}

} // namespace

Standing standing(std::span<const Pass> passes, std::span<const Pressed> reports, std::optional<Force> most) {
  Standing out;
  out.never = never_pressed(passes, reports);
  for (const Pass& p : passes)
    out.passes.push_back(state_of(p, reports, out.never));
  out.last = stopped_at(passes, reports);
  const std::size_t from = out.last.value_or(0);
  for (std::size_t i = 0; i < passes.size(); ++i) {
    if (!to_do(out.passes[i])) continue;
    if (i < from) out.skipped.push_back(i);
    if (i >= from && (!out.next || *out.next < from)) out.next = i;
    if (!out.next) out.next = i;
  }
  for (std::size_t r = 0; r < reports.size(); ++r) {
    if (most && reports[r].load && *reports[r].load > *most) out.beyond.push_back(r);
  }
  out.all_pressed = !passes.empty() && out.never.empty();
  out.all_done = out.all_pressed && !out.next;
  return out;
}

const Pass* next_pass(std::span<const Pass> passes, std::span<const Pressed> reports) {
  const auto next = standing(passes, reports, std::nullopt).next;
  return next ? &passes[*next] : nullptr;
}

} // namespace nutward::press
