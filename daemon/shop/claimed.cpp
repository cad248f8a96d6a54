#include "shop/claimed.hpp"

#include "cutting/serve.hpp"

#include <algorithm>

namespace nutward::shop {

namespace {

using cutting::From;
using cutting::Stock;
using cutting::StockKind;

// Steps to find what a job makes of the pieces that it holds as a whole, for so many jobs of a wire; and what
// others take of new wire. All of it happens in answers too.
constexpr std::int64_t steps_of_a_job = 500, steps_of_others = 4'000;
constexpr int most_jobs = 100;

std::optional<std::size_t> index_of(const cutting::Problem& problem, std::int64_t job, int slot) {
  const auto at = std::find_if(problem.slots.begin(), problem.slots.end(),
                               [&](const cutting::Slot& s) { return s.job == job && s.slot == slot; });
  if (at == problem.slots.end()) return std::nullopt;
  return static_cast<std::size_t>(at - problem.slots.begin());
}

// The problem without slots, pieces and stock.
cutting::Problem like(const cutting::Problem& p) {
  cutting::Problem out;
  out.wire = p.wire;
  out.settings = p.settings;
  out.flat_end = p.flat_end;
  out.least_useful = p.least_useful;
  return out;
}

class Held {
public:
  Held(ToCut& out, bool one_job, Length shortest, const View& view)
      : out_(out), problem_(out.problem), view_(view), one_job_(one_job), shortest_(shortest),
        served_(problem_.slots.size(), 0), gone_(problem_.slots.size(), 0) {}

  void add(const Job& job) {
    const bool planned =
        std::any_of(out_.jobs.begin(), out_.jobs.end(), [&](const Job& j) { return j.id == job.id; });
    std::vector<Piece> whole;
    for (const Piece& p : view_.tin().held_for(job.id)) {
      if (p.wire != out_.wire.id || !p.in_tin) continue;
      if (!p.length)
        note_unmeasured(p, planned);
      else if (p.slot || !planned)
        add(p, planned);
      else if (*p.length >= shortest_)
        whole.push_back(p);
    }
    if (one_job_)
      for (const Piece& p : whole)
        problem_.pieces.push_back({facts_of(p, view_), 0, false});
    else if (!whole.empty())
      add_whole(job, whole);
  }

  // Rarely any: a piece that nobody has measured, and yet held for a slot.
  void leave_gone() {
    for (std::size_t i = gone_.size(); i-- > 0;) {
      if (gone_[i] == 0 || served_[i] != 0) continue;
      problem_.slots.erase(problem_.slots.begin() + static_cast<std::ptrdiff_t>(i));
      for (cutting::Cutting& c : problem_.held)
        for (std::size_t& s : c.slots)
          if (s > i) --s;
    }
  }

private:
  // The slots that a piece is held for, that the problem has, and that no piece before it serves, in the
  // order of cutting.
  std::vector<std::size_t> still_open(const Piece& p) const {
    std::vector<std::size_t> out;
    for (const int slot : held_slots(p))
      if (const auto at = index_of(problem_, p.job.value_or(0), slot); at && served_[*at] == 0)
        out.push_back(*at);
    return out;
  }

  void note_unmeasured(const Piece& p, bool planned) {
    const auto slots = planned ? still_open(p) : std::vector<std::size_t>{};
    if (slots.empty()) return;
    gone_[slots.front()] = 1;
    out_.unmeasured_held.push_back(p);
  }

  void add(const Piece& p, bool planned) {
    const auto slots = planned ? still_open(p) : std::vector<std::size_t>{};
    if (slots.empty() && *p.length < shortest_) return;
    cutting::Cutting held{{From::piece, problem_.pieces.size()}, slots};
    problem_.pieces.push_back({facts_of(p, view_), 0, slots.empty()});
    if (slots.empty()) return;
    // One that does not fit (any more) keeps no other from its slot.
    if (cutting::serve_held(problem_, held))
      for (const std::size_t s : slots)
        served_[s] = 1;
    problem_.held.push_back(std::move(held));
  }

  // What the job would make of them alone. Those that are then left over serve nothing.
  void add_whole(const Job& job, const std::vector<Piece>& whole) {
    cutting::Problem part = like(problem_);
    std::vector<std::size_t> slots;
    for (std::size_t s = 0; s < problem_.slots.size() && jobs_ < most_jobs; ++s) {
      if (problem_.slots[s].job != job.id || served_[s] != 0 || gone_[s] != 0) continue;
      slots.push_back(s);
      part.slots.push_back(problem_.slots[s]);
    }
    ++jobs_;
    const std::size_t first = problem_.pieces.size();
    for (const Piece& p : whole) {
      part.pieces.push_back({facts_of(p, view_), 0, false});
      problem_.pieces.push_back({part.pieces.back().facts, 0, true});
    }
    for (const cutting::Use& use : cutting::plan(part, {steps_of_a_job, {}}).uses) {
      cutting::Cutting held{{From::piece, first + use.source.index}, {}};
      for (const cutting::Fret& f : use.frets)
        held.slots.push_back(slots[f.slot]), served_[slots[f.slot]] = 1;
      problem_.pieces[held.source.index].held_elsewhere = false;
      problem_.held.push_back(std::move(held));
    }
  }

  ToCut& out_;
  cutting::Problem& problem_;
  const View& view_;
  bool one_job_;
  Length shortest_;
  std::vector<char> served_, gone_; // gone: left out, an unmeasured piece serves it
  int jobs_ = 0;                    // that hold pieces as a whole
};

// Slots of a job whose new wire is set aside and that no piece is held for.
void add_set_aside(cutting::Problem& out, const Job& job, const View& view, const Setup& setup) {
  const auto held = view.tin().held_for(job.id);
  const std::optional<Length> crown = crown_of(job, view);
  for (const SlotNeed& s : open_slots(job, view, setup)) {
    const bool aside = std::find(job.set_aside.begin(), job.set_aside.end(), s.slot) != job.set_aside.end();
    const bool served =
        std::any_of(held.begin(), held.end(), [&](const Piece& p) { return held_for(p, s.slot); });
    if (aside && !served) out.slots.push_back({job.id, s.slot, s.need, crown, 0, job.lot});
  }
}

} // namespace

void add_held(ToCut& out, bool one_job, Length shortest, const View& view) {
  Held held(out, one_job, shortest, view);
  for (const Job& job : view.jobs().open())
    if (job.wire == out.wire.id) held.add(job);
  held.leave_gone();
}

void leave_set_aside(ToCut& out, const Job& job, const View& view, const Setup& setup) {
  cutting::Problem others = like(out.problem);
  others.stock = out.problem.stock;
  for (const Job& other : view.jobs().open()) {
    if (other.wire != out.wire.id || other.id == job.id || other.set_aside.empty()) continue;
    const std::size_t before = others.slots.size();
    add_set_aside(others, other, view, setup);
    if (others.slots.size() == before) continue;
    out.set_aside_for.push_back(other.id);
    if (!bent(other) || setup.flat_end == Length{}) continue;
    for (Stock& s : others.stock)
      if (s.kind == StockKind::stick) s.flat_ends = 2;
  }
  if (others.slots.empty()) return;
  std::vector<Stock> rests;
  for (const cutting::Use& use : cutting::plan(others, {steps_of_others, {}}).uses) {
    const Stock& s = others.stock[use.source.index];
    --out.problem.stock[use.source.index].count;
    out.set_aside += s.length - use.remainder;
    const StockKind kind = s.kind == StockKind::coil ? StockKind::coil : StockKind::blank;
    if (use.remainder > Length{})
      rests.push_back({kind, s.id, use.remainder, 1, s.flat_ends > 0 ? 1 : 0, s.crown_height});
  }
  auto& stock = out.problem.stock;
  std::erase_if(stock, [](const Stock& s) { return s.count <= 0; });
  stock.insert(stock.end(), rests.begin(), rests.end());
}

} // namespace nutward::shop
