// Who works here, and whose job is whose.
#include "shop/people.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

std::int64_t count(const std::vector<Job>& jobs) {
  return static_cast<std::int64_t>(jobs.size());
}

Answer ask_persons(const Args& args, const Moment&, const View& view) {
  const bool all = args.yes("retired");
  Answer out;
  out.table = Table{{"person", "name", "role", "bench", "uids", "open jobs"}, {}};
  std::vector<Value> people;
  std::int64_t here = 0;
  for (const Actor& a : view.house().actors()) {
    if (!a.retired) ++here;
    if (a.retired && !all) continue;
    const std::string role = a.retired ? "retired" : std::string(word_for(static_cast<Role>(a.role)));
    const std::int64_t open = count(open_jobs_of(a, view));
    out.table->rows.push_back({std::to_string(a.id), a.name, role, name_or(a.bench, "-"),
                               a.uids.empty() ? "-" : fmt::format("{}", fmt::join(a.uids, ", ")),
                               std::to_string(open)});
    people.push_back(record({{"person", ref(Thing::actor, a.id)},
                             {"name", a.name},
                             {"role", std::string(word_for(static_cast<Role>(a.role)))},
                             {"bench", a.bench},
                             {"uids", list({a.uids.begin(), a.uids.end()})},
                             {"open_jobs", open},
                             {"retired", a.retired}}));
  }
  out.text = fmt::format("{} here.", plural(here, "person works", "people work"));
  out.reason = "A person without a uid is known by name, and cannot come in.";
  out.data = record({{"persons", list(std::move(people))}});
  return out;
}

Answer ask_whose(const Args& args, const Moment&, const View& view) {
  const Job job = job_of(args, view, false);
  Answer out;
  out.text = fmt::format("{}: {}.", named(job), who_does(job, view));
  if (!job.builder && job.bench.empty() && job.state == JobState::open)
    out.reason = fmt::format("Say who does it: give job {} to me.", job.id);
  out.data = record({{"job", ref(Thing::job, job.id)},
                     {"builder", job.builder ? ref(Thing::actor, *job.builder) : Value{}},
                     {"builder_name", job.builder ? name_of(*job.builder, view) : ""},
                     {"bench", bench_of(job, view)},
                     {"owner", job.owner}});
  out.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

std::vector<Give> with_open_jobs() {
  auto out = gives::person;
  out.push_back({"open_jobs", Kind::count, "how many open jobs are theirs"});
  return out;
}

} // namespace

extern const Question persons;
const Question persons{{"persons",
                        "Who works here: name, role, bench, and how many open jobs are theirs.",
                        {{"retired", Kind::yes, false, false, "also who has retired"}},
                        {"who is there", "who works here", "who [all] is (here|in the shop)",
                         "[show|list] [the] (people|persons)", "who has retired {retired=yes}"},
                        {"who is there", "who works here", "persons retired"},
                        Role::look,
                        {gives::records("persons", "by number", with_open_jobs())}},
                       &ask_persons};

extern const Question whose;
const Question whose{{"whose",
                      "Who does a job, and at which bench.",
                      {takes::job},
                      {"whose (is|job is) {job}", "who (does|has|builds|is doing|is on) {job}",
                       "who is {job} with", "(which|what) bench (has|does) {job}"},
                      {"whose is job 1", "whose job is the mandolin", "who does job 1"},
                      Role::look,
                      {gives::job,
                       gives::builder,
                       {"builder_name", Kind::words, "what the builder is called; may be empty"},
                       gives::bench,
                       {"owner", Kind::words, "whose instrument it is; may be empty"}}},
                     &ask_whose};

} // namespace nutward::shop::question_rows
