// What was seen of one fret, for what to do about it: cause before load. And of the board: its last fret.
#include "shop/touched_frets.hpp"

#include <array>

namespace nutward::shop::command_rows {

namespace {

const Param which{"slots", Kind::slot, true, true, "of which frets"};
const Give gives_which{"slots", Kind::slot, "of these frets", Often::many};

Effect crown_gap(const Args& args, const Moment&, Tx& tx) {
  const Job job = job_of(args, tx);
  const auto slots = args.slots("slots");
  const bool some = args.text("gap") == "some";
  change_frets(tx, job, slots, [&](Fret& f) { f.gap = some ? level::Gap::some : level::Gap::none; });
  return about_frets(job, slots,
                     fmt::format("{}: {} under the crown.", of_frets(job, slots), some ? "a gap" : "no gap"),
                     tx);
}

struct CauseWord {
  std::string_view word, what;
};
// In the order of level::Cause, from nothing_found on.
constexpr std::array<CauseWord, 6> causes{{{"nothing_found", "nothing was found that keeps it up"},
                                           {"slot_shallow", "the slot is shallow"},
                                           {"slot_dirty", "the slot is dirty"},
                                           {"tang_bottoms", "the tang bottoms"},
                                           {"wire_misbent", "the wire is bent wrong or kinked"},
                                           {"slot_loose", "the slot is loose"}}};

std::vector<std::string_view> cause_words() {
  std::vector<std::string_view> out;
  out.reserve(causes.size());
  for (const CauseWord& c : causes)
    out.push_back(c.word);
  return out;
}

Effect cause(const Args& args, const Moment&, Tx& tx) {
  const Job job = job_of(args, tx);
  const auto slots = args.slots("slots");
  const std::string word = args.text("cause");
  const auto* at =
      std::find_if(causes.begin(), causes.end(), [&](const CauseWord& c) { return c.word == word; });
  change_frets(tx, job, slots,
               [&](Fret& f) { f.cause = static_cast<level::Cause>(at - causes.begin() + 1); });
  return about_frets(job, slots, fmt::format("{}: {}.", of_frets(job, slots), at->what), tx);
}

Effect stands_low(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  const Job job = job_of(args, tx);
  const int slot = static_cast<int>(args.get<std::int64_t>("slot"));
  const auto below = args.get<Length>("below");
  change_frets(tx, job, {slot}, [&](Fret& f) { f.below = below; });
  Effect out = about_frets(
      job, {slot},
      fmt::format("{}: {} below the line of its neighbours.", of_frets(job, {slot}), say(below, set)), tx);
  out.answer.data =
      record({{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}, {"below", below}});
  return out;
}

Effect last_fret(const Args& args, const Moment&, Tx& tx) {
  Job job = job_of(args, tx);
  const int slot = static_cast<int>(args.get<std::int64_t>("slot"));
  if (slot != job.board.slots)
    throw Problem(Fault::value,
                  fmt::format("The board of {} has slots up to {}: {} is not its last.", named(job),
                              job.board.slots, slot),
                  "slot", fmt::format("Say: {} is the last fret of job {}.", job.board.slots, job.id));
  job.last_ever = slot;
  tx.put(job);
  Effect out = about_frets(
      job, {}, fmt::format("{}: {} is the last fret that the board will ever have.", named(job), slot), tx);
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"slot", std::int64_t{slot}}});
  return out;
}

#define JOB "[job {job}|of {job}|for {job}] "
#define FRETS JOB "{slots} [of {job}|on job {job}] "
#define AT "(at|of|in|on|under|for|with) [fret|slot|crown] {slots} [of {job}|on job {job}] "
#define MISBENT "(kinked|underbent|under bent|under-bent|bent (wrong|badly|too little)|not bent enough) "

std::vector<std::string_view> cause_phrases() {
  return {(JOB "(nothing|no cause) [wrong|found|else] " AT "{cause=nothing_found}"),
          (JOB "nothing keeps [fret] {slots} up {cause=nothing_found}"),
          (FRETS "(is|are) [too] shallow {cause=slot_shallow}"),
          (JOB "(shallow slot|slot is [too] shallow) " AT "{cause=slot_shallow}"),
          (FRETS "(is|are) (dirty|clogged|full [of] (glue|dirt|dust|chips)) {cause=slot_dirty}"),
          (JOB "(dirt|glue|dust|chips|dirty slot|slot is (dirty|clogged)) " AT "{cause=slot_dirty}"),
          (JOB "tang [of] [fret] {slots} (bottoms|bottomed) [out] {cause=tang_bottoms}"),
          (JOB "tang (bottoms|bottomed) [out] " AT "{cause=tang_bottoms}"),
          (FRETS "(bottoms|bottomed) [out] {cause=tang_bottoms}"),
          (FRETS "(is|are) " MISBENT "{cause=wire_misbent}"),
          (JOB "wire " AT "[is] " MISBENT "{cause=wire_misbent}"),
          (JOB "wire [is] " MISBENT AT "{cause=wire_misbent}"),
          (FRETS "(is|are|sits) [too] (loose|wide) [in [its] slot] {cause=slot_loose}"),
          (JOB "(loose slot|slot is [too] (loose|wide)) " AT "{cause=slot_loose}"),
          "(it|slot) is [too] shallow {slots=it} {cause=slot_shallow}",
          "(it|slot) is dirty {slots=it} {cause=slot_dirty}",
          "(it|tang) (bottoms|bottomed) [out] {slots=it} {cause=tang_bottoms}",
          ("(it|wire) is " MISBENT "{slots=it} {cause=wire_misbent}"),
          "(it|slot) is [too] loose {slots=it} {cause=slot_loose}",
          "(nothing|no cause) [was] found {slots=it} {cause=nothing_found}"};
}

} // namespace

extern const Command crown_gap_row;
const Command crown_gap_row{
    {"crown-gap",
     "Reports whether there is a gap between the crown of a fret and the board.",
     {takes::job_spoken_of, which, {"gap", Kind::one_of, true, false, "whether", {}, {"some", "none"}}},
     {(JOB "[is] gap (under|below|beneath) [the] [crown|fret] [of] {slots} "
           "{gap=some} [of {job}]"),
      (JOB "[is] no gap (under|below|beneath) [the] [crown|fret] [of] {slots} "
           "{gap=none} [of {job}]"),
      (JOB "light (under|below) [the] [crown|fret] [of] {slots} {gap=some} [of "
           "{job}]"),
      (JOB "(no light|nothing) (under|below|beneath) [the] [crown|fret] [of] {slots} {gap=none} [of {job}]"),
      (JOB "{slots} [of {job}] (has|have) [a] gap [under (it|its crown)] "
           "{gap=some}"),
      (JOB "{slots} [of {job}] (has|have) no gap [under (it|its crown)] "
           "{gap=none}"),
      (JOB "{slots} [of {job}] (is|are) [all] [the way] down on [the] board "
           "{gap=none}"),
      ("[there] [is] [a] gap [under it|under its crown] {slots=it} {gap=some}"),
      ("[there] [is] no gap [under it|under its crown] {slots=it} {gap=none}")},
     {"gap under 9 of job 5", "no gap under 9 of job 5", "fret 9 of job 5 has a gap"},
     Role::bench,
     {gives::job, gives_which}},
    &crown_gap};

extern const Command cause_row;
const Command cause_row{
    {"cause",
     "Reports what keeps a fret up that has a gap under its crown.",
     {takes::job_spoken_of, which, {"cause", Kind::one_of, true, false, "what", {}, cause_words()}},
     cause_phrases(),
     {"slot 9 of job 5 is shallow", "the tang bottoms at 9 of job 5", "nothing found at 9 of job 5"},
     Role::bench,
     {gives::job, gives_which}},
    &cause};

extern const Command stands_low_row;
const Command stands_low_row{
    {"stands-low",
     "Reports how far a fret was measured to stand below the line of its neighbours.",
     {takes::job_spoken_of, takes::slot, {"below", Kind::length, true, false, "how far", {0, 5}}},
     {(JOB "[fret] {slot} [of {job}] (is|stands|sits|measures) {below} (low|below "
           "[its] "
           "[neighbours|neighbors]|"
           "lower)"),
      (JOB "[fret] {slot} [of {job}] (is|stands|sits) low by {below}"),
      (JOB "{below} (low|below [its] [neighbours|neighbors]) (at|on) [fret] "
           "{slot} [of {job}]"),
      ("[it] (is|stands|sits) {below} (low|below [its] [neighbours|neighbors]|lower) {slot=it}")},
     {"22 of job 5 is 0.1 mm low", "fret 22 of job 5 stands 0.12 mm below its neighbours"},
     Role::bench,
     {gives::job, gives::slot, {"below", Kind::length, "its neighbours' line"}}},
    &stands_low};

extern const Command last_fret_row;
const Command last_fret_row{
    {"last-fret",
     "Says that a board will never have a fret beyond its last one, which may then stay a little low.",
     {takes::job_spoken_of, takes::slot},
     {(JOB "[fret] {slot} is [the] last [fret] [ever|there will ever be|[that] "
           "the board will ever have] "
           "[of "
           "{job}]"),
      ("[the] last fret [ever] [of {job}] is [fret] {slot}"),
      (JOB "(are no|is no|will be no|will never be [any]) [more] [frets|fret] "
           "(beyond|after|past) "
           "[fret] "
           "{slot} [of {job}]"),
      (JOB "no [more] [frets|fret] [ever] (beyond|after|past) [fret] {slot} [of "
           "{job}]")},
     {"22 is the last fret of job 5", "no more frets beyond 22 of job 5"},
     Role::bench,
     {gives::job, gives::slot}},
    &last_fret};

} // namespace nutward::shop::command_rows
