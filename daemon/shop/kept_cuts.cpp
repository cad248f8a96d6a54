#include "shop/kept_cuts.hpp"
#include "shop/kept_text.hpp"

#include <algorithm>

namespace nutward::shop {

namespace {

using cutting::From;
using cutting::StockKind;

constexpr std::int64_t written_so = 1; // one more where the text changes

void write(KeptWriter& out, const cutting::Cost& c) {
  out.put(c.unserved.size());
  for (const int n : c.unserved)
    out.put(std::int64_t{n});
  out.put(std::int64_t{c.sticks}), out.put(c.taken), out.put(c.scrap), out.put(c.cuts);
}

cutting::Cost read_cost(KeptReader& in) {
  cutting::Cost out;
  for (std::size_t left = in.many(); left > 0; --left)
    out.unserved.push_back(in.small());
  out.sticks = in.small(), out.taken = in.length(), out.scrap = in.length(), out.cuts = in.number();
  return out;
}

void write(KeptWriter& out, const KeptUse& use) {
  out.put(static_cast<std::int64_t>(use.from)), out.put(static_cast<std::int64_t>(use.kind));
  out.put(use.id), out.put(use.whole), out.put(use.index);
  out.put(use.frets.size());
  for (const KeptFret& f : use.frets)
    out.put(f.job), out.put(std::int64_t{f.slot}), out.put(f.length), out.put(f.index);
  out.put(use.remainder), out.put(use.scrap), out.put(use.cuts), out.put(std::int64_t{use.held});
}

KeptUse read_use(KeptReader& in) {
  KeptUse out;
  out.from = in.one_of(From::stock), out.kind = in.one_of(StockKind::coil);
  out.id = in.number(), out.whole = in.length(), out.index = in.index();
  for (std::size_t left = in.many(); left > 0; --left) {
    KeptFret& f = out.frets.emplace_back();
    f.job = in.number(), f.slot = in.small(), f.length = in.length(), f.index = in.index();
  }
  if (out.frets.empty()) throw NoPlan{};
  out.remainder = in.length(), out.scrap = in.length(), out.cuts = in.number(), out.held = in.yes();
  return out;
}

void write_rest(KeptWriter& out, const cutting::Plan& plan) {
  out.put(plan.unserved.size());
  for (const std::size_t s : plan.unserved)
    out.put(s);
  out.put(plan.faults.size());
  for (const cutting::Fault& f : plan.faults) {
    out.put(static_cast<std::int64_t>(f.why)), out.put(f.index);
    out.put(f.from ? static_cast<std::int64_t>(*f.from) : -1);
  }
  out.put(plan.borderline.size());
  for (const cutting::Borderline& b : plan.borderline)
    out.put(b.slot), out.put(b.piece);
  write(out, plan.cost), write(out, plan.bound);
  out.put(static_cast<std::int64_t>(plan.proved)), out.put(std::int64_t{plan.stopped});
}

cutting::Plan read_rest(KeptReader& in) {
  cutting::Plan out;
  for (std::size_t left = in.many(); left > 0; --left)
    out.unserved.push_back(in.index());
  for (std::size_t left = in.many(); left > 0; --left) {
    cutting::Fault& f = out.faults.emplace_back();
    f.why = in.one_of(cutting::Why::held_no_more), f.index = in.index();
    if (const std::int64_t from = in.number(-1, 1); from >= 0) f.from = static_cast<From>(from);
  }
  for (std::size_t left = in.many(); left > 0; --left) {
    const std::size_t slot = in.index();
    out.borderline.push_back({slot, in.index()});
  }
  out.cost = read_cost(in), out.bound = read_cost(in);
  out.proved = in.one_of(cutting::Level::cuts), out.stopped = in.yes();
  return out;
}

// Whether everything that the rest of the plan names is in the problem.
bool names_what_is_there(const cutting::Plan& rest, const cutting::Problem& p) {
  const auto slot = [&](std::size_t s) { return s < p.slots.size(); };
  const auto fault = [&](const cutting::Fault& f) {
    using cutting::Why;
    if (f.why == Why::no_stock) return true;
    if (f.why == Why::held_no_more) return f.index < p.held.size() && !p.held[f.index].slots.empty();
    const bool of_slot = f.why == Why::bad_slot || f.why == Why::too_long_slot || f.why == Why::wire_short;
    if (of_slot) return slot(f.index);
    return f.index < (f.from == From::stock ? p.stock.size() : p.pieces.size());
  };
  return std::all_of(rest.unserved.begin(), rest.unserved.end(), slot) &&
         std::all_of(rest.faults.begin(), rest.faults.end(), fault) &&
         std::all_of(rest.borderline.begin(), rest.borderline.end(),
                     [&](const cutting::Borderline& b) { return slot(b.slot) && b.piece < p.pieces.size(); });
}

bool is_there(const KeptUse& use, const cutting::Problem& p) {
  if (use.from == From::piece) {
    if (use.index >= p.pieces.size()) return false;
    const pieces::PieceFacts& facts = p.pieces[use.index].facts;
    if (facts.id != use.id || facts.length != use.whole) return false;
  } else {
    if (use.index >= p.stock.size()) return false;
    const cutting::Stock& stock = p.stock[use.index];
    if (stock.kind != use.kind || stock.id != use.id || stock.length != use.whole) return false;
  }
  return std::all_of(use.frets.begin(), use.frets.end(), [&](const KeptFret& f) {
    return f.index < p.slots.size() && p.slots[f.index].job == f.job && p.slots[f.index].slot == f.slot;
  });
}

} // namespace

KeptCuts kept(const cutting::Problem& p, const cutting::Plan& plan) {
  KeptCuts out;
  out.rest = plan;
  out.rest.uses.clear();
  for (const cutting::Use& use : plan.uses) {
    KeptUse& k = out.uses.emplace_back();
    k.from = use.source.from, k.index = use.source.index;
    if (k.from == From::piece) {
      const pieces::PieceFacts& facts = p.pieces[k.index].facts;
      k.id = facts.id, k.whole = facts.length;
    } else {
      const cutting::Stock& stock = p.stock[k.index];
      k.kind = stock.kind, k.id = stock.id, k.whole = stock.length;
    }
    for (const cutting::Fret& f : use.frets)
      k.frets.push_back({p.slots[f.slot].job, p.slots[f.slot].slot, f.length, f.slot});
    k.remainder = use.remainder, k.scrap = use.scrap, k.cuts = use.cuts, k.held = use.held;
  }
  return out;
}

std::string to_text(const KeptCuts& cuts) {
  KeptWriter out;
  out.put(written_so);
  out.put(cuts.uses.size());
  for (const KeptUse& use : cuts.uses)
    write(out, use);
  write_rest(out, cuts.rest);
  return out.take();
}

std::optional<KeptCuts> cuts_from_text(std::string_view text) {
  KeptReader in(text);
  try {
    KeptCuts out;
    if (in.number() != written_so) return std::nullopt;
    for (std::size_t left = in.many(); left > 0; --left)
      out.uses.push_back(read_use(in));
    out.rest = read_rest(in);
    in.done();
    return out;
  } catch (const NoPlan&) {
    return std::nullopt;
  }
}

std::optional<cutting::Plan> plan_of(const KeptCuts& cuts, const cutting::Problem& p) {
  if (!names_what_is_there(cuts.rest, p)) return std::nullopt;
  cutting::Plan out = cuts.rest;
  for (const KeptUse& k : cuts.uses) {
    if (!is_there(k, p)) return std::nullopt;
    cutting::Use& use = out.uses.emplace_back();
    use.source = {k.from, k.index};
    for (const KeptFret& f : k.frets)
      use.frets.push_back({f.index, f.length});
    use.remainder = k.remainder, use.scrap = k.scrap, use.cuts = k.cuts, use.held = k.held;
  }
  return out;
}

} // namespace nutward::shop
