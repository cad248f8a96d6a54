#include "shop/wire_need.hpp"

#include "shop/agenda_plan.hpp"
#include "shop/kept_agenda.hpp"

#include <algorithm>

namespace nutward::shop {

CutDays::CutDays(const View& view, const Setup& setup, const hours::Calendar& calendar,
                 const hours::Zone& zone, Instant now)
    : view_(view), setup_(setup), calendar_(calendar), zone_(zone), today_(zone.local(now).day) {
  const auto stored = view.plans().find(agenda_planning, 1);
  const auto agenda = stored ? agenda_from_text(stored->body) : std::nullopt;
  if (!agenda) return;
  for (const KeptJob& job : agenda->jobs) {
    if (job.job == 0 || !job.placed) continue;
    const auto cut = std::find_if(job.tasks.begin(), job.tasks.end(),
                                  [](const KeptTask& t) { return t.name.stage == "cut"; });
    // Without one it has been cut: whatever is still open of it is wanted now.
    planned_.emplace(job.job, cut == job.tasks.end() ? today_ : zone.local(cut->start).day);
  }
}

CutDay CutDays::of(const Job& job) const {
  if (const auto at = planned_.find(job.id); at != planned_.end()) return {CutDay::From::agenda, at->second};
  if (const auto by = press_by(job, view_, setup_, calendar_, zone_))
    return {CutDay::From::due, zone_.local(by->latest).day};
  if (job.due) return {CutDay::From::due, zone_.local(*job.due - std::chrono::seconds{1}).day};
  return {CutDay::From::today, today_};
}

namespace {

class Adder {
public:
  Adder(const WirePlan& plan, const CutDays& days) : what_(plan.what) {
    for (const Job& job : what_.jobs)
      of_job_.emplace(job.id, WireNeed{job.id, 0, days.of(job), {}});
  }
  WireNeed* of(std::size_t slot) {
    const auto at = of_job_.find(what_.problem.slots[slot].job);
    return at == of_job_.end() ? nullptr : &at->second;
  }
  void fret(std::size_t slot, Length length) {
    WireNeed* need = of(slot);
    if (need == nullptr) return;
    ++need->frets;
    need->length += length + what_.problem.settings.nip_loss;
  }
  std::vector<WireNeed> done() const {
    std::vector<WireNeed> out;
    for (const auto& [job, need] : of_job_)
      if (need.frets > 0) out.push_back(need);
    std::stable_sort(out.begin(), out.end(),
                     [](const WireNeed& a, const WireNeed& b) { return a.cut.day < b.cut.day; });
    return out;
  }

private:
  const ToCut& what_;
  std::map<std::int64_t, WireNeed> of_job_;
};

// What a stick loses besides its frets (flat ends, a rest that is scrap) is the job's that opens it.
void add_lost(Adder& out, const cutting::Use& use, const ToCut& what) {
  const Length whole = what.problem.stock[use.source.index].length;
  Length lost = whole - use.remainder;
  WireNeed* first = nullptr;
  for (const cutting::Fret& f : use.frets) {
    lost -= f.length + what.problem.settings.nip_loss;
    WireNeed* of = out.of(f.slot);
    if (of != nullptr && (first == nullptr || of->cut.day < first->cut.day)) first = of;
  }
  if (first != nullptr && lost > Length{}) first->length += lost;
}

} // namespace

std::vector<WireNeed> needs_of(const WirePlan& plan, const CutDays& days) {
  Adder out(plan, days);
  for (const cutting::Use& use : plan.plan.uses) {
    if (use.source.from != cutting::From::stock) continue;
    for (const cutting::Fret& f : use.frets)
      out.fret(f.slot, f.length);
    add_lost(out, use, plan.what);
  }
  for (const std::size_t slot : plan.plan.unserved)
    out.fret(slot, plan.what.problem.slots[slot].need.cut);
  return out.done();
}

} // namespace nutward::shop
