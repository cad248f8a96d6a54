// A width of the board that is measured once the job is in: measured beats computed.
#include "shop/boards.hpp"
#include "shop/commands/frets.hpp"

namespace nutward::shop::command_rows {

namespace {

// Replaces what was measured there, or adds it.
void measure(board::Board& b, int slot, Length width) {
  if (slot == 0) return void(b.nut_width = width);
  if (b.far_at == board::Spot{slot}) return void(b.far_width = width);
  for (board::MeasuredWidth& w : b.more_widths) {
    if (w.at == board::Spot{slot}) return void(w.width = width);
  }
  b.more_widths.push_back({slot, width});
}

void check(const board::Board& b, const Setup& set) {
  try {
    board::check(b);
    board::check_binding(b, set.fit);
  } catch (const board::BadBoard& bad) {
    throw Problem(Fault::value, bad.what(), "width_mm", bad.would_do);
  }
}

// What is made already was made to the old width.
std::string made_already(const Job& job, int slot, const board::Need& need, const Tx& tx, const Setup& set) {
  const auto fret = fret_in(job, slot, tx);
  if (!fret || !fret->length || fret->state == FretState::came_short) return "";
  return fmt::format(" Its fret, {} long, is {}.", say(*fret->length, set),
                     verdict(*fret->length, need, set));
}

Effect board_width(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  const int slot = static_cast<int>(args.get<std::int64_t>("slot"));
  const auto width = args.get<Length>("width");
  if (slot > job.board.slots) {
    throw Problem(Fault::value, fmt::format("The board of {} has no slot {}.", named(job), slot), "slot",
                  fmt::format("Slots 1 to {} would do, and 0 for the nut.", job.board.slots));
  }
  const Length before = board::width_at(job.board, slot);
  measure(job.board, slot, width);
  check(job.board, set);
  tx.put(job);
  Effect out;
  out.answer.text =
      fmt::format("{} is {} wide at {} now, it was {}.{}", sentence(named(job)), say(width, set),
                  words_of(board::Spot{slot}, set), say(before, set), width_warning(job.board, set));
  if (std::find(job.slots.begin(), job.slots.end(), slot) != job.slots.end()) {
    const board::Need need = need_of(job, slot, set);
    out.answer.reason =
        fmt::format("That slot takes {}.{}", range_of(need, set), made_already(job, slot, need, tx, set));
  }
  out.answer.reason +=
      " Every slot that was not measured lies on the straight line that fits all measured widths best.";
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"slot", std::int64_t{slot}},
                            {"width", width},
                            {"before", before},
                            {"widths_off", widths_off(job.board)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  if (slot > 0) out.answer.about.args.emplace_back("slot", std::int64_t{slot});
  return out;
}

} // namespace

extern const Command board_width_row;
const Command board_width_row{
    {"board-width",
     "Keeps how wide a job's board was measured at a slot; it overrides what follows from its other widths.",
     {takes::job,
      {"slot", Kind::slot, true, false, "where; 0 is the nut"},
      {"width", Kind::length, true, false, "square to the centreline", {5, 200}},
      takes::at},
     {"[the board of] {job} (is|measures) {width} [wide] at {slot}",
      "[the board of] {job} (is|measures) {width} [wide] at [the] nut {slot=0}",
      "[the] [board] width of {job} at {slot} is {width}",
      "[the] board [of {job}] is {width} wide at {slot}"},
     {"job 1 is 54.1 mm wide at slot 7", "the board of job 1 measures 43.2 mm at the nut"},
     Role::bench,
     {gives::job,
      gives::slot,
      {"width", Kind::length, "now"},
      {"before", Kind::length, "measured, or as the line had it"},
      gives::widths_off}},
    &board_width};

} // namespace nutward::shop::command_rows
