#include "shop/pressing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace nutward::shop {

namespace {

bool in_board(FretState state) {
  return state != FretState::made && state != FretState::came_short;
}

bool holds(const std::vector<int>& slots, int slot) {
  return std::find(slots.begin(), slots.end(), slot) != slots.end();
}

std::vector<int> counting(const Pressing& p) {
  std::vector<int> out;
  std::set_difference(p.slots.begin(), p.slots.end(), p.gone.begin(), p.gone.end(), std::back_inserter(out));
  return out;
}

Length crown_width_of(const Job& job, const View& view, std::optional<Length> said) {
  if (said) return *said;
  const Wire wire = wire_of(view, job.wire);
  if (wire.profile.crown_width) return *wire.profile.crown_width;
  throw Problem(Fault::state,
                fmt::format("How wide the crown of {} is is not known, and a bar must clear it.", wire.name),
                "crown_width_mm",
                fmt::format("Measure one and say: the crown of {} is 2.4 mm wide.", wire.name));
}

// A press's own errors as the shop's.
template <class Run>
auto telling(Run run) {
  try {
    return run();
  } catch (const press::BadWork& bad) {
    throw Problem(Fault::value, bad.what(), "job", bad.would_do);
  } catch (const board::BadBoard& bad) {
    throw Problem(Fault::state, bad.what(), "job", bad.would_do);
  }
}

std::vector<press::Bar> bars_for(const PressWish& wish, const press::Equipment& equipment) {
  if (wish.bar) return {wish.bar->is};
  if (!equipment.bars.empty()) return equipment.bars;
  throw Problem(Fault::state, "No bar is defined, and how many frets go under it depends on it.", "bar",
                "Say what there is, such as: define bar long, length 112 mm, width 90 mm.");
}

} // namespace

BoardInPress work_of(const Job& job, const View& view, const Setup& set, std::optional<Length> crown_width) {
  const Length overhang = job.board.ends == board::EndStyle::filed ? set.fit.overhang : Length{};
  BoardInPress out;
  const Length width = crown_width_of(job, view, crown_width);
  out.work = telling([&] { return press::work_on(job.board, width, overhang); });
  out.work.soft_wood = job.soft_wood;
  out.work.nut_in_place = !job.nut_off;
  out.work.bed = job.bed;
  const auto frets = view.jobs().frets(job.id);
  out.foreseen = std::none_of(frets.begin(), frets.end(), [](const Fret& f) { return in_board(f.state); });
  for (press::Crown& c : out.work.crowns) {
    c.to_press = holds(job.slots, c.slot);
    const bool stands = std::any_of(frets.begin(), frets.end(),
                                    [&](const Fret& f) { return f.slot == c.slot && in_board(f.state); });
    c.seated = c.to_press ? out.foreseen || stands : job.kind == JobKind::some_slots;
  }
  telling([&] { press::check(out.work); });
  return out;
}

std::vector<press::Pressed> reports_of(const Job& job, const View& view) {
  std::vector<press::Pressed> out;
  for (const Pressing& p : view.jobs().pressings(job.id)) {
    if (auto slots = counting(p); !slots.empty()) out.push_back({std::move(slots), p.load});
  }
  return out;
}

std::optional<units::Force> last_load(const Job& job, int slot, bool narrow, const View& view) {
  std::optional<units::Force> out;
  for (const Pressing& p : view.jobs().pressings(job.id)) {
    const auto slots = counting(p);
    if (!p.load || p.load->n <= 0 || !holds(slots, slot)) continue;
    const auto bar = p.bar ? view.house().bar(*p.bar) : std::nullopt;
    if ((bar && bar->is.narrow) == narrow && (!narrow || p.slots.size() == 1)) out = p.load;
  }
  return out;
}

PressPlan press_plan(const Job& job, const View& view, const Setup& set, const PressWish& wish) {
  PressPlan out;
  BoardInPress board = work_of(job, view, set, wish.crown_width);
  out.work = std::move(board.work);
  out.foreseen = board.foreseen;
  out.equipment = equipment(view, set);
  out.bars = bars_for(wish, out.equipment);
  const press::Wish usual{wish.every_group, {}};
  out.plan = telling([&] { return press::passes(out.work, out.equipment, out.bars, usual); });
  // Where it stands does not hang on a load that somebody asks about; the groups are the same.
  out.standing = press::standing(out.plan.passes, reports_of(job, view), {});
  if (wish.load)
    out.plan = telling([&] {
      return press::passes(out.work, out.equipment, out.bars, {wish.every_group, wish.load});
    });
  return out;
}

std::string beyond_words(const Job& job, const View& view, const Setup& set) {
  std::string out;
  for (const Pressing& p : view.jobs().pressings(job.id)) {
    if (!p.most) continue;
    out += fmt::format("{}frets {} at {}, rated {}", out.empty() ? "Beyond the rating: " : "; ",
                       ranges(p.slots), as_said(p.load.value_or(*p.most), set), as_said(*p.most, set));
  }
  return out.empty() ? out : out + ".";
}

PressState press_state(const Job& job, const View& view, const Setup& set) {
  PressState out;
  out.begun = !view.jobs().pressings(job.id).empty();
  if (!out.begun) return out;
  out.beyond = beyond_words(job, view, set);
  try {
    const PressPlan p = press_plan(job, view, set);
    if (p.plan.passes.empty()) return out;
    out.passes = p.plan.passes.size();
    for (press::Done d : p.standing.passes)
      out.done += d == press::Done::open || d == press::Done::halfway ? 0 : 1;
    if (p.standing.next) out.next = p.plan.passes[*p.standing.next].slots;
  } catch (const Problem&) { // no bar, or no crown: then no passes are known
    return out;
  }
  return out;
}

std::string words_of(const PressState& s) {
  std::string out;
  if (s.passes) {
    out = fmt::format(" Pressing: {} of {} done{}.", s.done,
                      plural(static_cast<std::int64_t>(*s.passes), "pass", "passes"),
                      s.next.empty() ? "" : ", next are frets " + ranges(s.next));
  }
  return s.beyond.empty() ? out : out + " " + s.beyond;
}

std::string loads_of(const Job& job, int slot, const View& view, const Setup& set) {
  std::string out;
  for (const Pressing& p : view.jobs().pressings(job.id)) {
    const auto slots = counting(p);
    if (!p.load || !holds(slots, slot)) continue;
    out += fmt::format("{}{}{}", out.empty() ? "" : ", ", as_said(*p.load, set),
                       p.slots.size() == 1 ? " alone" : " with " + ranges(p.slots));
  }
  return out;
}

namespace {

// Whether these slots may have been under a bar: a narrow one takes one fret; a long one a group that is no
// longer than it. A report of more frets than go into a group is of several passes.
bool may_have_been(const press::Bar& bar, const Job& job, const std::vector<int>& slots, int most_frets) {
  if (bar.narrow) return slots.size() == 1;
  if (slots.empty() || static_cast<int>(slots.size()) > most_frets) return true;
  std::optional<Length> from, to;
  for (const press::Crown& c : telling([&] { return press::crowns(job.board); })) {
    if (c.slot == slots.front()) from = c.at;
    if (c.slot == slots.back()) to = c.at;
  }
  return !from || !to || *to - *from <= bar.length;
}

} // namespace

std::vector<BarRating> ratings_of(const Job& job, const std::vector<int>& slots,
                                  const std::optional<Bar>& bar, const View& view, const Setup& set) {
  const press::Equipment e = equipment(view, set);
  if (bar) return {{bar, press::rating(e, bar->is)}};
  std::vector<BarRating> all, fitting;
  for (const Bar& b : view.house().bars()) {
    all.push_back({b, press::rating(e, b.is)});
    if (may_have_been(b.is, job, slots, e.most_frets)) fitting.push_back(all.back());
  }
  if (all.empty()) return {{std::nullopt, press::rating(e, {})}};
  return fitting.empty() ? all : fitting;
}

std::optional<press::Limit> shop_limit(std::size_t frets, const std::optional<Bar>& bar, const View& view,
                                       const Setup& set) {
  const press::Equipment e = equipment(view, set);
  const press::Bar is = bar ? bar->is : press::Bar{};
  return frets == 1 ? press::most_on_one_fret(e, is) : press::most_in_a_pass(e, is);
}

} // namespace nutward::shop
