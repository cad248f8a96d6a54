#include "shop/bench.hpp"

#include "shop/work.hpp"

#include "agenda/deadline.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::shop {

std::string named(const Job& job) {
  std::string what = job.instrument;
  if (!job.owner.empty()) what += (what.empty() ? "of " : " of ") + job.owner;
  return what.empty() ? fmt::format("job {}", job.id) : fmt::format("job {} ({})", job.id, what);
}

std::string named(const Piece& piece, const View& view, const Setup& setup) {
  static constexpr std::array kinds{"short fret", "stick end", "pulled fret"};
  const std::string wire = wire_of(view, piece.wire).name;
  const char* kind = kinds.at(static_cast<std::size_t>(piece.kind));
  const std::string place = piece.place.empty() ? "" : ", " + piece.place;
  if (!piece.length)
    return fmt::format("{} of {} (piece {}{})", plural(piece.count, "unmeasured " + std::string(kind)), wire,
                       piece.id, place);
  return fmt::format("the {} {} of {} (piece {}{})", say(*piece.length, setup), kind, wire, piece.id, place);
}

std::string plural(std::int64_t n, std::string_view one, std::string_view many) {
  if (n == 1) return fmt::format("1 {}", one);
  return many.empty() ? fmt::format("{} {}s", n, one) : fmt::format("{} {}", n, many);
}

std::string ranges(const std::vector<int>& slots) {
  std::string out;
  for (std::size_t i = 0; i < slots.size();) {
    std::size_t end = i;
    while (end + 1 < slots.size() && slots[end + 1] == slots[end] + 1)
      ++end;
    if (!out.empty()) out += ", ";
    out += end == i ? std::to_string(slots[i]) : fmt::format("{}-{}", slots[i], slots[end]);
    i = end + 1;
  }
  return out;
}

Job job_of(const Args& args, const View& view, bool must_be_open) {
  auto job = view.jobs().find(args.id("job"));
  if (!job) throw Problem(Fault::value, "There is no such job.", "job", "Ask for 'jobs' to see them.");
  if (must_be_open && job->state != JobState::open) {
    throw Problem(Fault::state,
                  fmt::format("{} is {}.", named(*job), job->state == JobState::done ? "done" : "cancelled"),
                  "job", "Ask for 'jobs' to see the open ones.");
  }
  return *job;
}

Wire wire_of(const View& view, std::int64_t id) {
  auto wire = view.wires().find(id);
  if (!wire)
    throw Problem(Fault::value, fmt::format("There is no wire {}.", id), "wire",
                  "Ask for 'stock' to see the wires.");
  return *wire;
}

std::string last_hand(Ref ref, const View& view) {
  const auto line = view.journal().line(view.journal().touched_in(ref));
  for (const Actor& a : view.house().actors()) {
    if (line && a.id == line->actor) return a.name;
  }
  return "somebody";
}

Piece piece_of(const Args& args, const View& view, std::string_view param) {
  auto piece = view.tin().find(args.id(param));
  if (!piece) {
    throw Problem(Fault::value, "There is no such piece.", std::string(param),
                  "Ask for 'stock' to see the tin.");
  }
  if (!piece->in_tin) {
    const auto line = view.journal().line(view.journal().touched_in({Thing::piece, piece->id}));
    throw Problem(
        Fault::state,
        fmt::format("Piece {} is not in the tin any more{}", piece->id,
                    line ? fmt::format("; {}: {}", last_hand({Thing::piece, piece->id}, view), line->answer)
                         : "."),
        std::string(param), "Ask which piece fits to see what there is.");
  }
  return *piece;
}

bool held_for(const Piece& p, int slot) {
  return p.slot == slot || std::find(p.more_slots.begin(), p.more_slots.end(), slot) != p.more_slots.end();
}

std::vector<int> held_slots(const Piece& p) {
  if (!p.slot) return {};
  std::vector<int> out{*p.slot};
  out.insert(out.end(), p.more_slots.begin(), p.more_slots.end());
  return out;
}

std::string held_words(const Piece& p) {
  if (!p.job) return "";
  auto slots = held_slots(p);
  if (slots.empty()) return fmt::format("job {}", *p.job);
  std::sort(slots.begin(), slots.end());
  return fmt::format("job {}, {} {}", *p.job, slots.size() == 1 ? "slot" : "slots", ranges(slots));
}

void unhold(Piece& p) {
  p.job.reset();
  p.slot.reset();
  p.more_slots.clear();
}

void refuse_held(const Piece& p, const View& view, const Setup& setup) {
  throw Problem(Fault::state,
                fmt::format("{} is held for {}{} by {}.", named(p, view, setup), held_words(p),
                            p.slot ? "," : "", last_hand({Thing::piece, p.id}, view)),
                "piece", fmt::format("Let it go first: let go piece {}.", p.id));
}

int slot_of(const Args& args, const Job& job) {
  const int slot = static_cast<int>(args.get<std::int64_t>("slot"));
  if (std::find(job.slots.begin(), job.slots.end(), slot) != job.slots.end()) return slot;
  throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slot",
                fmt::format("It has slots {}.", ranges(job.slots)));
}

board::Need need_of(const Job& job, int slot, const Setup& setup) {
  return board::need(job.board, slot, setup.fit);
}

namespace {

bool is_open(int slot, const std::vector<Fret>& frets) {
  return std::none_of(frets.begin(), frets.end(),
                      [&](const Fret& f) { return f.slot == slot && f.state != FretState::came_short; });
}

} // namespace

std::vector<SlotNeed> open_slots(const Job& job, const View& view, const Setup& setup) {
  const auto frets = view.jobs().frets(job.id);
  std::vector<SlotNeed> out;
  for (int slot : job.slots) {
    if (is_open(slot, frets)) out.push_back({slot, need_of(job, slot, setup)});
  }
  return out;
}

std::vector<SlotNeed> unserved_slots(const Job& job, const View& view, const Setup& setup) {
  const auto held = view.tin().held_for(job.id);
  auto out = open_slots(job, view, setup);
  std::erase_if(out, [&](const SlotNeed& s) {
    return std::any_of(held.begin(), held.end(), [&](const Piece& p) { return held_for(p, s.slot); });
  });
  return out;
}

std::vector<pieces::OpenSlot> open_slots(std::int64_t wire, const View& view, const Setup& setup) {
  std::vector<pieces::OpenSlot> out;
  for (const Job& job : view.jobs().open()) {
    if (job.wire != wire) continue;
    for (const SlotNeed& s : open_slots(job, view, setup))
      out.push_back({job.id, s.slot, s.need, crown_of(job, view), job.due, job.lot});
  }
  return out;
}

LeastUseful least_useful(std::int64_t wire, const View& view, const Setup& setup) {
  std::optional<Length> out;
  for (const ShortestArc& s : view.jobs().shortest_arcs(wire)) {
    const Length raw = board::shortest_raw(board::need(s.arc, s.ends, setup.fit), setup.fit);
    out = std::min(out.value_or(raw), raw);
  }
  return out ? LeastUseful{*out, false} : LeastUseful{setup.least_useful, true};
}

std::string scrap_rule(Length rest, const LeastUseful& least, const Setup& setup) {
  return fmt::format("the {} left are scrap: {} {}", say(rest, setup),
                     least.guessed ? "the shop keeps nothing under" : "no job on record needs less than",
                     say(least.length, setup));
}

std::optional<Length> crown_of(const Job& job, const View& view) {
  const auto lot = job.lot ? view.wires().lot(*job.lot) : std::nullopt;
  return lot ? lot->crown_height : std::nullopt;
}

pieces::Wanted wanted_for(const Job& job, int slot, const View& view, const Setup& setup) {
  return {need_of(job, slot, setup), crown_of(job, view), least_useful(job.wire, view, setup).length,
          job.lot};
}

Lot lot_of(std::int64_t id, std::int64_t wire, const View& view) {
  const auto lot = view.wires().lot(id);
  if (lot && lot->wire == wire) return *lot;
  const std::string name = wire_of(view, wire).name;
  throw Problem(Fault::value,
                lot ? fmt::format("Lot {} is of {}, not of {}.", id, wire_of(view, lot->wire).name, name)
                    : fmt::format("There is no lot {}.", id),
                "lot", fmt::format("Ask for 'lots of {}' to see them.", name));
}

int raw_ends(const Piece& piece) {
  return (piece.left != End::dressed ? 1 : 0) + (piece.right != End::dressed ? 1 : 0);
}

pieces::PieceFacts facts_of(const Piece& piece, const View& view) {
  const auto lot = piece.lot ? view.wires().lot(*piece.lot) : std::nullopt;
  return {piece.id,
          piece.kind,
          piece.length.value(),
          raw_ends(piece),
          lot ? lot->crown_height : std::nullopt,
          piece.lot.value_or(0),
          piece.added,
          piece.job.has_value(),
          piece.tang};
}

std::vector<agenda::Stage> stages_of(const Job& job, const View& view, const Setup& setup) {
  agenda::StagePlan plan;
  plan.ends = job.board.ends == board::EndStyle::filed ? agenda::EndStyle::filed : agenda::EndStyle::rounded;
  plan.bound = job.board.binding.has_value();
  plan.frets = static_cast<int>(job.slots.size());
  plan.old_frets = job.kind != JobKind::new_board;
  plan.pressed = job.kind != JobKind::some_slots;
  plan.cure_h = job.glue.empty() ? 0 : 12;
  return agenda::stages_of(plan, setup.recheck.due_h, minutes_of(view));
}

std::optional<PressBy> press_by(const Job& job, const View& view, const Setup& setup,
                                const hours::Calendar& calendar, const hours::Zone& zone) {
  if (!job.due) return std::nullopt;
  for (const Stage& s : view.jobs().stages(job.id)) {
    if (s.kind == "press" && s.finished) return std::nullopt;
  }
  const auto stages = stages_of(job, view, setup);
  const auto latest = agenda::latest_press(*job.due, stages, calendar, zone);
  if (!latest) return std::nullopt;
  return PressBy{*latest, agenda::press_due_reminder(*latest, calendar, zone)};
}

namespace {

// The open slots of a job whose new wire is set aside and that no held piece serves.
std::vector<SlotNeed> needs_aside(const Job& job, const View& view, const Setup& setup) {
  if (job.state != JobState::open || job.set_aside.empty()) return {};
  auto out = unserved_slots(job, view, setup);
  std::erase_if(out, [&](const SlotNeed& s) {
    return std::find(job.set_aside.begin(), job.set_aside.end(), s.slot) == job.set_aside.end();
  });
  return out;
}

} // namespace

std::vector<int> set_aside_slots(const Job& job, const View& view, const Setup& setup) {
  std::vector<int> out;
  for (const SlotNeed& s : needs_aside(job, view, setup))
    out.push_back(s.slot);
  return out;
}

Length set_aside(const Job& job, const View& view, const Setup& setup) {
  Length sum;
  for (const SlotNeed& s : needs_aside(job, view, setup))
    sum += s.need.cut + setup.fit.nip_loss;
  return sum;
}

Length set_aside(std::int64_t wire, const View& view, const Setup& setup) {
  Length sum;
  for (const Job& job : view.jobs().open())
    if (job.wire == wire) sum += set_aside(job, view, setup);
  return sum;
}

PerRefret per_refret(std::int64_t wire, const View& view, const Setup& setup) {
  Length sum;
  std::int64_t jobs = 0;
  for (const Job& job : view.jobs().open()) {
    if (job.wire != wire || job.kind == JobKind::some_slots) continue;
    for (int slot : job.slots)
      sum += need_of(job, slot, setup).cut + setup.fit.nip_loss;
    ++jobs;
  }
  using namespace units::literals;
  if (jobs == 0) return {22 * (56_mm + setup.fit.nip_loss), true};
  return {{sum.nm / jobs}, false};
}

Touched seen(Ref ref, const View& view) {
  return {ref, view.journal().touched_in(ref)};
}

} // namespace nutward::shop
