#include "shop/touched_frets.hpp"

#include "shop/level_asked.hpp"

namespace nutward::shop {

std::vector<Fret> frets_on_record(const Job& job, const std::vector<int>& slots, const View& view) {
  const auto all = view.jobs().frets(job.id);
  std::vector<Fret> out;
  out.reserve(slots.size());
  for (const int slot : slots) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const Fret& f) { return f.slot == slot; });
    if (at != all.end() && at->state != FretState::came_short) {
      out.push_back(*at);
      continue;
    }
    if (slot > job.board.slots || (slot == 0 && !job.board.zero_fret))
      throw Problem(Fault::value, fmt::format("The board of {} has no slot {}.", named(job), slot), "slots",
                    fmt::format("It has slots up to {}.", job.board.slots));
    throw Problem(Fault::state, fmt::format("No fret of slot {} of {} is on record.", slot, named(job)),
                  "slots",
                  fmt::format("Report first how it was made, such as: finished cut for job {}.", job.id));
  }
  return out;
}

void change_frets(Tx& tx, const Job& job, const std::vector<int>& slots,
                  const std::function<void(Fret&)>& change) {
  for (Fret f : frets_on_record(job, slots, tx)) {
    change(f);
    tx.put(f);
  }
}

void levelled_down(Tx& tx, const Job& job, const std::vector<int>& slots) {
  for (Fret f : tx.jobs().frets(job.id)) {
    const bool one = std::find(slots.begin(), slots.end(), f.slot) != slots.end();
    if (!one || f.state != FretState::sprang) continue;
    f.state = FretState::level;
    tx.put(f);
  }
}

std::string of_frets(const Job& job, const std::vector<int>& slots) {
  return fmt::format("{}, {} {}", named(job), slots.size() == 1 ? "fret" : "frets", ranges(slots));
}

std::string without_job(std::string text, const Job& job) {
  const std::string first = sentence(named(job));
  const std::size_t colon = text.find(": ", first.size());
  if (!text.starts_with(first) || colon == std::string::npos) return text;
  const bool leads = text[first.size()] == ':' || text.substr(first.size(), 7) == ", fret ";
  return leads ? sentence(text.substr(colon + 2)) : text;
}

Effect about_frets(const Job& job, const std::vector<int>& slots, std::string text, const View& view,
                   std::vector<Hazard> hazards) {
  const Setup set = setup(view);
  Effect out;
  out.answer.text = std::move(text);
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  if (slots.size() == 1) out.answer.about.args.emplace_back("slot", std::int64_t{slots.front()});
  LevelAsked asked{job, view, set};
  if (slots.size() == 1) asked.slot = slots.front();
  try {
    const Answer means = answer_of(asked);
    out.answer.text += " " + without_job(means.text, job);
    out.answer.reason = means.reason;
    for (const Hazard h : means.cautions) {
      if (std::find(hazards.begin(), hazards.end(), h) == hazards.end()) hazards.push_back(h);
    }
    out.answer.choices = means.choices;
    carry_asked(out.answer.about, means);
  } catch (const Problem&) {
    // Too few frets stand to lay an edge over: what was reported is kept all the same.
  }
  out.answer.cautions = std::move(hazards);
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"slots", list_of(slots)}});
  return out;
}

} // namespace nutward::shop
