#include "shop/elsewhere.hpp"

#include "shop/bench.hpp"
#include "shop/cut_planning.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <numeric>

namespace nutward::shop {

namespace {

template <class List, class Is>
std::optional<std::size_t> index_where(const List& list, Is&& is) {
  const auto at = std::find_if(list.begin(), list.end(), is);
  if (at == list.end()) return std::nullopt;
  return static_cast<std::size_t>(at - list.begin());
}

int frets_lost(const cutting::Taking& price) {
  return std::accumulate(price.unserved.begin(), price.unserved.end(), 0);
}

} // namespace

std::optional<cutting::Taking> InPlan::price(std::int64_t piece, std::int64_t job, int slot,
                                             std::int64_t steps) {
  if (!plan_) plan_ = plan_of(wire_, view_, setup_);
  const cutting::Problem& problem = plan_->what.problem;
  const auto piece_at =
      index_where(problem.pieces, [&](const cutting::Piece& p) { return p.facts.id == piece; });
  const auto slot_at =
      index_where(problem.slots, [&](const cutting::Slot& s) { return s.job == job && s.slot == slot; });
  if (!piece_at || !slot_at) return std::nullopt;
  return cutting::price_of_taking(problem, plan_->plan, *piece_at, *slot_at, {steps, {}});
}

Elsewhere InPlan::of(const Piece& piece, std::optional<std::int64_t> job, std::optional<int> slot,
                     std::optional<std::int64_t> steps) {
  Elsewhere out;
  if (!any_plan_) any_plan_ = view_.plans().find(cut_planning, wire_.id).has_value();
  if (!*any_plan_) return out;
  out.wanted = planned_for(piece, view_, setup_);
  if (!job || !slot) return out;
  out.here = std::any_of(out.wanted.begin(), out.wanted.end(),
                         [&](const PlannedFret& f) { return f.job == *job && f.slot == *slot; });
  if (steps && !out.wanted.empty() && !out.here) out.price = price(piece.id, *job, *slot, *steps);
  return out;
}

std::string wanted_for_words(const std::vector<PlannedFret>& wanted) {
  std::map<std::int64_t, std::vector<int>> of;
  for (const PlannedFret& f : wanted)
    of[f.job].push_back(f.slot);
  std::vector<std::string> parts;
  for (auto& [job, slots] : of) {
    std::sort(slots.begin(), slots.end());
    parts.push_back(fmt::format("{} {} of job {}", slots.size() == 1 ? "slot" : "slots", ranges(slots), job));
  }
  return fmt::format("{}", fmt::join(parts, " and "));
}

std::string price_words(const cutting::Taking& price, const Setup& setup) {
  if (price.nothing()) return "nothing";
  std::string what = say(price.taken, setup) + " of new wire";
  if (price.sticks != 0) what = plural(price.sticks, "more stick") + " opened";
  if (std::any_of(price.unserved.begin(), price.unserved.end(), [](int n) { return n != 0; })) {
    // Where ranks even out, one that is due later gets what one that is due sooner loses.
    const int frets = frets_lost(price);
    what = frets > 0 ? plural(frets, "fret") + " that would get no wire"
                     : "the wire of a fret that is due sooner";
  }
  return (price.at_most ? "at most " : "") + what;
}

std::string elsewhere_words(const Elsewhere& at, const Setup& setup) {
  if (at.wanted.empty()) return "";
  if (at.here) return "The cut plan has it for this slot too.";
  const std::string who = "The cut plan wants it for " + wanted_for_words(at.wanted);
  if (!at.price) return who + ".";
  if (at.price->nothing()) return who + ", which can do without: taking it costs no new wire.";
  return fmt::format("{}: taking it costs {}.", who, price_words(*at.price, setup));
}

std::vector<std::pair<std::string, Value>> fields_of(const Elsewhere& at) {
  std::vector<Value> wanted;
  for (const PlannedFret& f : at.wanted)
    wanted.push_back(record({{"job", Ref{Thing::job, f.job}}, {"slot", std::int64_t{f.slot}}}));
  std::vector<std::pair<std::string, Value>> out{{"wanted_for", list(std::move(wanted))}};
  if (at.price) {
    out.emplace_back("price", record({{"frets", std::int64_t{frets_lost(*at.price)}},
                                      {"sticks", std::int64_t{at.price->sticks}},
                                      {"new_wire", at.price->taken},
                                      {"at_most", at.price->at_most}}));
  }
  return out;
}

} // namespace nutward::shop
