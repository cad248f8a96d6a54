#include "shop/to_cut.hpp"

#include "shop/claimed.hpp"

#include <algorithm>
#include <cmath>
#include <variant>

namespace nutward::shop {

namespace {

using cutting::StockKind;

constexpr Length longest{1'000'000'000'000}; // 1 km: over any piece

StockKind kind_of(Form form) {
  return form == Form::coil ? StockKind::coil : StockKind::stick;
}

// New wire by the ledger's sum and the deliveries; see to_cut().
class OnHand {
public:
  OnHand(ToCut& out, int flat_ends) : out_(out), flat_ends_(flat_ends) {}

  void read(const View& view) {
    Length left = view.wires().on_hand(out_.wire.id);
    const auto lots = view.wires().lots(out_.wire.id);
    for (const Lot& lot : lots) {
      if (left <= Length{}) return;
      left -= take(kind_of(lot.form), lot.id, lot.each, lot.count, left, lot.crown_height);
      if (out_.loose > Length{}) return;
    }
    if (left <= Length{}) return;
    std::optional<Length> each = out_.wire.stick;
    for (const Lot& lot : lots) {
      if (each) break;
      if (lot.form == Form::stick) each = lot.each;
    }
    out_.as_coil = !each && lots.empty();
    take(each ? StockKind::stick : StockKind::coil, 0, each.value_or(left),
         left.nm / each.value_or(left).nm + 1, left, {});
  }

  void said(const std::vector<Length>& sticks) {
    for (const Length each : sticks)
      put(StockKind::stick, 0, each, 1, {});
  }

private:
  // Returns how much of `left` that is; the rest of a lot of sticks is loose.
  Length take(StockKind kind, std::int64_t lot, Length each, std::int64_t count, Length left,
              std::optional<Length> crown) {
    const std::int64_t whole = std::min(count, left.nm / each.nm);
    put(kind, lot, each, whole, crown);
    const Length taken = whole * each, rest = left - taken;
    if (whole == count || rest == Length{}) return taken;
    if (kind == StockKind::coil)
      put(kind, lot, rest, 1, crown);
    else
      out_.loose = rest;
    return left;
  }
  void put(StockKind kind, std::int64_t lot, Length each, std::int64_t count, std::optional<Length> crown) {
    if (count == 0) return;
    const int flat = kind == StockKind::stick ? flat_ends_ : 0;
    out_.problem.stock.push_back(
        {kind, lot, each, static_cast<int>(std::min<std::int64_t>(count, 1'000'000)), flat, crown});
  }

  ToCut& out_;
  int flat_ends_ = 0;
};

void add_slots(ToCut& out, std::size_t most, const View& view, const Setup& set) {
  int rank = -1;
  std::optional<std::optional<Instant>> last;
  for (const Job& job : out.jobs) {
    if (!last || *last != job.due) ++rank;
    last = job.due;
    const auto open = open_slots(job, view, set);
    const bool full = out.problem.slots.size() + open.size() > most && !out.problem.slots.empty();
    if (full || out.waiting > 0) {
      out.waiting += open.size();
      continue;
    }
    const std::optional<Length> crown = crown_of(job, view);
    for (const SlotNeed& s : open)
      out.problem.slots.push_back({job.id, s.slot, s.need, crown, rank, job.lot});
  }
}

// What is set aside comes before all that is due: it is served first where wire runs short.
void lead_with_set_aside(ToCut& out) {
  if (std::all_of(out.jobs.begin(), out.jobs.end(), [](const Job& j) { return j.set_aside.empty(); })) return;
  std::vector<char> aside(out.problem.slots.size(), 0);
  for (std::size_t i = 0; i < aside.size(); ++i) {
    const cutting::Slot& s = out.problem.slots[i];
    const auto job =
        std::find_if(out.jobs.begin(), out.jobs.end(), [&](const Job& j) { return j.id == s.job; });
    aside[i] =
        std::find(job->set_aside.begin(), job->set_aside.end(), s.slot) != job->set_aside.end() ? 1 : 0;
  }
  if (std::find(aside.begin(), aside.end(), 1) == aside.end()) return;
  for (std::size_t i = 0; i < aside.size(); ++i)
    out.problem.slots[i].due = aside[i] != 0 ? 0 : out.problem.slots[i].due + 1;
}

// The shortest piece that could be of use, if only to be tried.
Length shortest_of(const ToCut& out) {
  Length shortest = longest;
  for (const cutting::Slot& s : out.problem.slots)
    shortest = std::min(shortest, s.need.least - out.problem.settings.borderline);
  return shortest;
}

// Free pieces of some lengths, at most `most` for each number of raw ends.
void walk_free(ToCut& out, const TinSource& tin, Length from, Length to, bool upward, std::size_t most) {
  for (int raw = 0; raw <= 2; ++raw) {
    const pieces::Walk walk{.raw_ends = raw,
                            .shortest = from,
                            .longest = to,
                            .upward = upward,
                            .lot = {},
                            .crown_from = {},
                            .crown_to = {}};
    std::optional<pieces::Mark> after;
    for (std::size_t left = most; left > 0;) {
      const std::size_t asked = std::min<std::size_t>(256, left);
      const auto page = tin.page(walk, after, asked);
      for (const pieces::PieceFacts& facts : page)
        out.problem.pieces.push_back({facts, 0, false});
      if (page.size() < asked) break;
      left -= page.size();
      after = pieces::Mark{page.back().length, page.back().added, page.back().id};
    }
  }
}

// Of a tin that is too full to be looked at whole: for every millimetre of length as many as there are slots
// that begin to take it there, and the longest.
void add_some(ToCut& out, const TinSource& tin, Length shortest, std::size_t most) {
  constexpr Length step = units::millimetre;
  constexpr std::size_t spare = 8;
  const auto bin_of = [&](Length v) { return static_cast<std::size_t>((v - shortest).nm / step.nm); };
  Length top = shortest;
  for (const cutting::Slot& s : out.problem.slots)
    top = std::max({top, s.need.least, s.need.cut + out.problem.settings.trim_limit});
  std::vector<std::size_t> wanted(bin_of(top) + 3, spare);
  for (const cutting::Slot& s : out.problem.slots)
    for (std::size_t more = 0; more < 3; ++more) // least, and what dressing takes of one raw end or two
      ++wanted[bin_of(s.need.least) + more];
  const std::size_t slots = out.problem.slots.size();
  const double share = std::min(1.0, static_cast<double>(most) / static_cast<double>(12 * slots));
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const Length from = shortest + static_cast<std::int64_t>(i) * step;
    const double some = std::ceil(static_cast<double>(wanted[i]) * share);
    walk_free(out, tin, from, from + step - Length{1}, true, static_cast<std::size_t>(some));
  }
  const Length beyond = shortest + static_cast<std::int64_t>(wanted.size()) * step;
  walk_free(out, tin, beyond, longest, false, std::min(slots, most / 12));
}

void add_free(ToCut& out, Length shortest, std::int64_t measured, std::size_t most, const View& view) {
  const TinSource tin(view, out.wire.id, std::nullopt, std::nullopt);
  out.more_pieces = measured > static_cast<std::int64_t>(most);
  if (out.more_pieces)
    add_some(out, tin, shortest, most);
  else
    walk_free(out, tin, shortest, longest, true, most);
}

} // namespace

bool bent(const Job& job) {
  return !std::holds_alternative<board::Flat>(job.board.surface);
}

ToCut to_cut(const Wire& wire, const std::optional<Job>& job, const CutFrom& from, const View& view,
             const Setup& set) {
  ToCut out;
  out.wire = wire;
  if (job) {
    out.jobs = {*job};
  } else {
    for (Job& j : view.jobs().open())
      if (j.wire == wire.id) out.jobs.push_back(std::move(j));
  }
  out.problem.wire = wire.id;
  out.problem.settings = set.fit;
  out.problem.flat_end = set.flat_end;
  out.problem.least_useful = least_useful(wire.id, view, set).length;
  const TinSum tin = view.tin().sum(wire.id);
  out.unmeasured = tin.unmeasured;
  add_slots(out, from.most.slots, view, set);
  lead_with_set_aside(out);
  if (!out.problem.slots.empty()) {
    const Length shortest = shortest_of(out);
    add_held(out, job.has_value(), shortest, view);
    add_free(out, shortest, tin.pieces, from.most.pieces, view);
  }
  const bool flat = set.flat_end == Length{} || std::none_of(out.jobs.begin(), out.jobs.end(), bent);
  OnHand on_hand(out, flat ? 0 : 2);
  if (!from.sticks.empty())
    on_hand.said(from.sticks);
  else if (!from.tin_only)
    on_hand.read(view);
  if (job && from.sticks.empty() && !from.tin_only) leave_set_aside(out, *job, view, set);
  return out;
}

Sawn sawn(const cutting::Problem& p, const cutting::Use& use) {
  const bool of_piece = use.source.from == cutting::From::piece;
  const cutting::Stock* stock = of_piece ? nullptr : &p.stock[use.source.index];
  Sawn out;
  out.whole = of_piece ? p.pieces[use.source.index].facts.length : stock->length;
  out.begin = stock != nullptr && stock->flat_ends == 2 ? p.flat_end : Length{};
  out.left = use.remainder;
  for (const cutting::Fret& f : use.frets)
    out.marks.push_back({f.slot, f.length, {}});
  if (stock != nullptr)
    std::sort(out.marks.begin(), out.marks.end(),
              [](const CutMark& a, const CutMark& b) { return a.slot < b.slot; });
  Length at = out.begin;
  for (CutMark& m : out.marks) {
    at += m.length;
    if (at >= out.whole) break;
    m.at = at;
    const Length nip = std::min(p.settings.nip_loss, out.whole - at);
    out.kerf += nip;
    at += nip;
  }
  // Of a piece what is not kept is in its frets, and comes off when the last is finished.
  out.scrap = of_piece ? Length{} : use.scrap;
  return out;
}

} // namespace nutward::shop
