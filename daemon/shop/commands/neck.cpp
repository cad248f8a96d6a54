// The neck, before any reading: straight, humped, with relief, or straightened.
#include "shop/touch.hpp"
#include "shop/touched_frets.hpp"

namespace nutward::shop::command_rows {

namespace {

// Straightening moves every fret, whether it is on record or not; and what was read over a neck that turned
// out to be bowed tells nothing of the frets.
void forget_readings(Tx& tx, Job& job) {
  std::vector<int> all;
  for (const Fret& f : tx.jobs().frets(job.id))
    all.push_back(f.slot);
  const int now = touches(job, tx) + 1;
  touch(tx, job, all);
  job.straightened = now;
}

std::string next_words(const Job& job, const std::string& is) {
  if (is == "humped" || is == "relief")
    return fmt::format(" What was read before counts no more. Straighten it before any reading, since "
                       "readings mean something only over a straight "
                       "neck; then say: the neck of job {} is straightened.",
                       job.id);
  return is == "straightened" ? " What was read before counts no more." : "";
}

Effect neck(const Args& args, const Moment& moment, Tx& tx) {
  Job job = job_of(args, tx);
  const std::string is = args.text("is");
  // Straight after it was bowed: somebody straightened it, whether that was said or not.
  const bool was_bowed = job.straightened != 0 && !job.straight_seen;
  if (is != "straight" || was_bowed) forget_readings(tx, job);
  const bool straight = is == "straight" || is == "straightened";
  job.straight_seen = straight ? std::optional{moment.happened} : std::nullopt;
  tx.put(job);
  const std::string text = fmt::format("{}: the neck {}.{}", named(job),
                                       is == "relief" ? "has relief" : "is " + is, next_words(job, is));
  Effect out;
  if (straight) {
    out = about_frets(job, {}, text, tx);
  } else {
    out.answer.text = text;
    out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  }
  out.answer.data = record({{"job", ref(Thing::job, job.id)}, {"is", is}});
  return out;
}

} // namespace

extern const Command neck_row;
const Command neck_row{
    {"neck",
     "Reports that the neck of a job is straight, bowed, or was straightened: before any reading.",
     {takes::job_spoken_of,
      {"is", Kind::one_of, true, false, "how it is", {}, {"straight", "humped", "relief", "straightened"}}},
     {("[job {job}|of {job}|for {job}] neck [of {job}] [is|looks] [still] straight {is=straight}"),
      ("[job {job}|of {job}|for {job}] neck [of {job}] [is|looks] (humped|back-bowed|back bowed|backbowed) "
       "{is=humped}"),
      ("[job {job}|of {job}|for {job}] neck [of {job}] has [a] (hump|back bow|back-bow|backbow) {is=humped}"),
      ("[a] hump in [the] neck [of {job}] {is=humped}"),
      ("[job {job}|of {job}|for {job}] neck [of {job}] has [some|a bit [of]|too much] relief {is=relief}"),
      ("[job {job}|of {job}|for {job}] neck [of {job}] [is|looks] (bowed|hollow|dished) {is=relief}"),
      ("relief in [the] neck [of {job}] {is=relief}"),
      // Which way, or whether at all, is asked back.
      ("[job {job}|of {job}|for {job}] neck [of {job}] (is not|isn't|is no longer) straight"),
      ("straightened [the] neck [of {job}] {is=straightened}"),
      ("[job {job}|of {job}|for {job}] neck [of {job}] (is|was|has been) straightened {is=straightened}"),
      ("[it] [is] straight {is=straight} {job=it}")},
     {"the neck of job 5 is straight", "the neck of job 5 is humped", "straightened the neck of job 5"},
     Role::bench,
     {gives::job, gives::one_of("is", "how it is", {"straight", "humped", "relief", "straightened"})}},
    &neck};

} // namespace nutward::shop::command_rows
