// Whose job it is to do: a builder's, or a bench's.
#include "shop/people.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

Effect about(const Job& job, std::string text, const View& view) {
  Effect out;
  out.answer.text = std::move(text);
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"builder", job.builder ? ref(Thing::actor, *job.builder) : Value{}},
                            {"bench", bench_of(job, view)}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

std::optional<Actor> builder_of(const Args& args, const Moment& moment, const View& view) {
  if (args.yes("mine") && args.has("person"))
    throw Problem(Fault::value, "A job has one builder.", "person", "Say either the person or 'me'.");
  if (args.yes("mine")) return view.house().actor(moment.who.actor);
  if (args.has("person")) return person_of(args, view);
  return std::nullopt;
}

Effect give_job(const Args& args, const Moment& moment, Tx& tx) {
  Job job = job_of(args, tx);
  const std::string before = who_does(job, tx);
  const auto builder = builder_of(args, moment, tx);
  if (!builder && !args.has("bench")) {
    throw Problem(Fault::value, fmt::format("To whom does {} go?", named(job)), "person",
                  "Say a person, 'me', or a bench: give job 5 to Ines.");
  }
  if (builder && builder->role == static_cast<int>(Role::look)) {
    throw Problem(Fault::state, fmt::format("{} may only look.", builder->name), "person",
                  "Give it to somebody who works at a bench.");
  }
  job.builder = builder ? std::optional{builder->id} : std::nullopt;
  job.bench = args.has("bench") ? bench_of(args.text("bench"), tx) : "";
  const std::string after = who_does(job, tx);
  if (after == before)
    throw Problem(Fault::state, fmt::format("That changes nothing for {}: {}.", named(job), before), "job",
                  "Say another person or bench.");
  tx.put(job);
  Effect out = about(job, fmt::format("{}: {}.", named(job), after), tx);
  out.answer.reason = fmt::format("Until now: {}.", before);
  return out;
}

Effect free_job(const Args& args, const Moment&, Tx& tx) {
  Job job = job_of(args, tx);
  if (!job.builder && job.bench.empty())
    throw Problem(Fault::state, fmt::format("Nobody does {} yet.", named(job)), "job",
                  "There is nothing to do.");
  const std::string before = who_does(job, tx);
  job.builder.reset();
  job.bench.clear();
  tx.put(job);
  Effect out = about(job, fmt::format("{}: nobody does it now.", named(job)), tx);
  out.answer.reason = fmt::format("Until now: {}.", before);
  return out;
}

} // namespace

extern const Command give_job_row;
const Command give_job_row{
    {"give-job",
     "Says who does a job, or at which bench it is done.",
     {takes::job,
      {"person", Kind::person, false, false, "who does it"},
      {"bench", Kind::words, false, false, "where it is done; the person's bench where not said"},
      {"mine", Kind::yes, false, false, "you do it"}},
     {"give {job} to {person}", "give {job} to [the] {bench} bench", "give {job} to bench {bench}",
      "give {job} to me {mine=yes}", "{job} goes to {person}", "{job} goes to [the] {bench} bench",
      "{job} is {person}", "{job} is mine {mine=yes}", "{person} (does|builds) {job}",
      "do {job} myself {mine=yes}"},
     {"give job 1 to Ines", "give job 1 to me", "job 1 is Ines's"},
     Role::bench,
     {gives::job, gives::builder, gives::bench}},
    &give_job};

extern const Command free_job_row;
const Command free_job_row{{"free-job",
                            "Nobody does a job any more: whoever has time takes it.",
                            {takes::job},
                            {"nobody does {job} [any more]", "{job} is nobody [any more]",
                             "{job} is free [again]", "take {job} (off|from) everybody"},
                            {"nobody does job 5", "job 5 is free"},
                            Role::bench,
                            {gives::job, gives::builder, gives::bench}},
                           &free_job};

} // namespace nutward::shop::command_rows
