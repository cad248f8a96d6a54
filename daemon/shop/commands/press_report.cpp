#include "shop/commands/press_report.hpp"

#include "shop/press_words.hpp"

namespace nutward::shop::command_rows {

namespace {

std::vector<int> next_slots(const Job& job, const View& view, const Setup& set) {
  const PressPlan plan = press_plan(job, view, set);
  if (plan.standing.next) return plan.plan.passes[*plan.standing.next].slots;
  if (plan.plan.passes.empty())
    throw Problem(Fault::state,
                  fmt::format("No pass of {} is known: {}", named(job), words_of(plan.plan.refused, set)),
                  "next", "Say which frets were pressed.");
  throw Problem(Fault::state, fmt::format("All passes of {} are done.", named(job)), "next",
                "Say which frets were pressed again.");
}

std::vector<int> slots_of(const Args& args, const Job& job, const View& view, const Setup& set) {
  if (args.yes("next") && args.has("slots"))
    throw Problem(Fault::value, "The next pass, or these frets?", "slots", "Say one of them.");
  if (args.yes("next")) return next_slots(job, view, set);
  if (!args.has("slots")) return job.slots;
  auto slots = args.slots("slots");
  for (int slot : slots) {
    if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end()) {
      throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slots",
                    fmt::format("It has slots {}.", ranges(job.slots)));
    }
  }
  return slots;
}

} // namespace

PassReport pass_report(const Args& args, const Job& job, const View& view, const Setup& set) {
  PassReport out;
  out.slots = slots_of(args, job, view, set);
  if (args.has("bar")) out.bar = bar_of(args.text("bar"), "bar", view);
  out.load = args.opt<Force>("load");
  out.most = rated(out.bar, view, set);
  return out;
}

std::string beyond_rating(const PassReport& r, const Job& job, const Setup& set) {
  if (!r.beyond()) return "";
  return fmt::format(
      "{} is above {}, {}. If that is what really happened, a yes keeps it and flags it on {}; look "
      "at press and board before going on.",
      as_said(*r.load, set), words_of(r.most->by), as_said(r.most->load, set), named(job));
}

void keep(Tx& tx, const Job& job, const PassReport& r, Instant when) {
  Pressing p;
  p.job = job.id;
  p.slots = r.slots;
  p.load = r.load;
  if (r.bar) p.bar = r.bar->id;
  p.pressed = when;
  if (r.beyond()) p.most = r.most->load;
  tx.put(p);
}

void forget_pressings(Tx& tx, const Job& job, int slot) {
  for (Pressing p : tx.jobs().pressings(job.id)) {
    const bool of_it = std::find(p.slots.begin(), p.slots.end(), slot) != p.slots.end();
    if (!of_it || std::find(p.gone.begin(), p.gone.end(), slot) != p.gone.end()) continue;
    p.gone.push_back(slot);
    std::sort(p.gone.begin(), p.gone.end());
    tx.put(p);
  }
}

} // namespace nutward::shop::command_rows
