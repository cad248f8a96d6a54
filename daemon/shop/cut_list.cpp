#include "shop/cut_list.hpp"

#include "shop/bins.hpp"
#include "shop/rows.hpp"

#include <map>

namespace nutward::shop {

namespace {

using cutting::From;
using cutting::StockKind;

// New wire is numbered by delivery in the order of the plan, so that a stick has one number in every list.
class Counter {
public:
  std::int64_t next(const cutting::Stock& stock) { return ++taken_[{stock.kind, stock.id}]; }

private:
  std::map<std::pair<StockKind, std::int64_t>, std::int64_t> taken_;
};

std::string word(StockKind kind) {
  return kind == StockKind::coil ? "coil" : kind == StockKind::blank ? "blank" : "stick";
}

void name_stock(ListedSource& out, const cutting::Stock& stock, std::int64_t number, const Setup& set) {
  out.kind = word(stock.kind);
  out.id = stock.id;
  out.number = number;
  out.name = fmt::format("{} {}{}, {}", out.kind, number,
                         stock.id == 0 ? "" : fmt::format(" of lot {}", stock.id), say(stock.length, set));
}

void name_piece(ListedSource& out, const pieces::PieceFacts& facts, const View& view, const Setup& set) {
  const auto piece = view.tin().find(facts.id);
  out.kind = "piece";
  out.id = facts.id;
  out.place = piece ? piece->place : "";
  out.name = fmt::format("piece {}, {}{}{}", facts.id, say(facts.length, set),
                         out.place.empty() ? "" : ", " + out.place, out.held ? ", held" : "");
}

void add_hazard(std::vector<Hazard>& all, Hazard one) {
  if (std::find(all.begin(), all.end(), one) == all.end()) all.push_back(one);
}

// What is done to a fret once it is off its source. The last of a piece is that piece; any other was cut.
pieces::Verdict verdict_of(const CutMark& mark, const cutting::Use& use, const cutting::Problem& p) {
  if (use.source.from == From::piece && mark.slot == use.frets.back().slot)
    if (const auto finish = finish_of(use, p)) return *finish;
  const cutting::Slot& slot = p.slots[mark.slot];
  pieces::PieceFacts facts{};
  if (use.source.from == From::piece) facts = p.pieces[use.source.index].facts;
  facts.kind = pieces::Kind::stick_end;
  facts.length = mark.length;
  facts.raw_ends = 2;
  return pieces::judge(facts, {slot.need, slot.crown_height, p.least_useful, slot.lot}, p.settings);
}

// The frets in the order of cutting, with what is done to each.
void add_frets(ListedSource& out, const Sawn& s, const cutting::Use& use, const cutting::Problem& p,
               const std::optional<Job>& job, const Setup& set) {
  if (use.cuts > 0) add_hazard(out.hazards, Hazard::nipping);
  for (const CutMark& m : s.marks) {
    const cutting::Slot& slot = p.slots[m.slot];
    const pieces::Verdict verdict = verdict_of(m, use, p);
    for (const Hazard h : hazards_of(verdict, set))
      add_hazard(out.hazards, h);
    out.frets.push_back({slot.job, slot.slot, m.length, m.at, verdict.finish, how_to(verdict, set),
                         job && slot.job != job->id});
  }
}

bool is_of(const cutting::Use& use, const cutting::Problem& p, const std::optional<Job>& job) {
  return !job || std::any_of(use.frets.begin(), use.frets.end(),
                             [&](const cutting::Fret& f) { return p.slots[f.slot].job == job->id; });
}

// Where the first fret of the list's own stands in the order of jobs and slots.
std::size_t first_own(const cutting::Use& use, const cutting::Problem& p, const std::optional<Job>& job) {
  std::size_t out = p.slots.size();
  for (const cutting::Fret& f : use.frets)
    if (!job || p.slots[f.slot].job == job->id) out = std::min(out, f.slot);
  return out;
}

} // namespace

CutList cut_list(const Wire& wire, const std::optional<Job>& job, const View& view, const Setup& set) {
  CutList out{plan_of(wire, view, set), job, {}, {}};
  const cutting::Problem& p = out.wire.what.problem;
  const cutting::Plan& plan = out.wire.plan;
  const Places places(wire.id, view, set);
  Counter counter;
  std::vector<std::pair<std::size_t, ListedSource>> found;
  for (const cutting::Use& use : plan.uses) {
    ListedSource one;
    one.from = use.source.from;
    one.held = use.held;
    if (one.from == From::stock)
      name_stock(one, p.stock[use.source.index], counter.next(p.stock[use.source.index]), set);
    if (!is_of(use, p, job)) continue;
    if (one.from == From::piece) name_piece(one, p.pieces[use.source.index].facts, view, set);
    const Sawn s = sawn(p, use);
    one.whole = s.whole, one.begin = s.begin, one.kerf = s.kerf, one.scrap = s.scrap, one.left = s.left;
    if (s.left > Length{}) one.left_goes = one.kind == "coil" ? "the coil" : places.of(s.left);
    add_frets(one, s, use, p, job, set);
    found.emplace_back(first_own(use, p, job), std::move(one));
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  for (auto& [at, one] : found)
    out.sources.push_back(std::move(one));
  const auto why = why_short(plan);
  for (std::size_t i = 0; i < why.size(); ++i) {
    const cutting::Slot& slot = p.slots[plan.unserved[i]];
    if (!job || slot.job == job->id) out.without.push_back({slot.job, slot.slot, why[i]});
  }
  return out;
}

} // namespace nutward::shop
