// The cut list for the bench: a job's part of its wire's plan, source by source.
#include "shop/cut_list.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  std::optional<Job> job;
  if (args.has("job")) job = job_of(args, view);
  if (!job && !args.has("wire"))
    throw Problem(Fault::value, "For which job, or of which wire?", "job",
                  "Say for example: cut list for job 8, or: cut list of medium.");
  const Wire wire = wire_of(view, job ? job->wire : args.id("wire"));
  if (args.has("wire") && args.id("wire") != wire.id) {
    throw Problem(
        Fault::value,
        fmt::format("{} is of {}, not of {}.", named(*job), wire.name, wire_of(view, args.id("wire")).name),
        "wire", "Leave the wire out: a job has one.");
  }
  return answer_of(cut_list(wire, job, view, set), moment, view, set);
}

} // namespace

extern const Question cut_list_question;
const Question cut_list_question{
    {"cut-list",
     ("The cut list for the bench, of a job or a wire: source by source, with the mark on the rule for each "
      "cut; to print."),
     {takes::optional(takes::job), takes::optional(takes::wire)},
     {"[show|print|draw] [me] [the|a] (cut list|cutting list) (for|of) {job}",
      "[show|print|draw] [me] [the|a] (cut list|cutting list) (for|of) {wire}",
      "(show|print|draw) [me] [the|a] (cut list|cutting list)", "what (do|should|must) (i|we) cut for {job}",
      "what (do|should|must) (i|we) cut (for|from) {wire}",
      "where (do|should|must) (i|we) cut [the] frets (for|of) ({job}|{wire})",
      "(what|where) (do|should|must|can) (i|we) cut {job} from",
      ("(which|how many|what) (sticks|stick|pieces|piece) (do|should|must) (i|we) (open|cut|take|need|use) "
       "for {job}"),
      "(how many|which) (sticks|pieces) (does|do|will) {job} (take|need)",
      "how much [new] wire (does|will) {job} (take|need)",
      "how much [new] [wire|{wire}] (do|will) (i|we) need for {job}",
      "(do we have|have we [got]|is there) enough [wire|{wire}] for {job}",
      "[show|print|draw|give] [me] [the] (cuts|marks) (for|of) {job}"},
     {"cut list for job 8", "print the cut list of medium", "what do I cut for job 8"},
     Role::look,
     cut_list_gives()},
    &ask,
    true};

} // namespace nutward::shop::question_rows
