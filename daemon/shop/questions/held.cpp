// What is held for whom: pieces of the tin and new wire that is set aside.
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

// More rows than this are counted, not shown.
constexpr std::size_t most_rows = 200;

struct Found {
  Answer answer;
  std::vector<Value> pieces, wires;
  std::vector<std::int64_t> jobs; // that something is held for
  Length new_wire;
  std::int64_t count = 0;
};

void add_piece(Found& found, const Piece& p, const Job& job, const View& view, const Setup& set) {
  auto slots = held_slots(p);
  std::sort(slots.begin(), slots.end());
  const std::string by = last_hand({Thing::piece, p.id}, view);
  if (found.answer.table->rows.size() < most_rows) {
    found.answer.table->rows.push_back({std::to_string(job.id), job.owner, fmt::format("piece {}", p.id),
                                        p.length ? say(*p.length, set) : "not measured", p.place,
                                        slots.empty() ? "any" : ranges(slots), by});
    found.pieces.push_back(record({{"piece", ref(Thing::piece, p.id)},
                                   {"wire", ref(Thing::wire, p.wire)},
                                   {"length_mm", opt(p.length)},
                                   {"place", p.place},
                                   {"job", ref(Thing::job, job.id)},
                                   {"slots", list_of(slots)}}));
  }
  ++found.count;
}

void add_job(Found& found, const Job& job, const std::optional<Piece>& only, const View& view,
             const Setup& set) {
  bool any = false;
  for (const Piece& p : view.tin().held_for(job.id)) {
    if (only && only->id != p.id) continue;
    add_piece(found, p, job, view, set);
    any = true;
  }
  const Length wire = only ? Length{} : set_aside(job, view, set);
  if (wire > Length{}) {
    found.answer.table->rows.push_back(
        {std::to_string(job.id), job.owner, "new " + wire_of(view, job.wire).name,
         units::print(wire, units::LengthUnit::m), "", ranges(set_aside_slots(job, view, set)), ""});
    found.wires.push_back(record({{"wire", ref(Thing::wire, job.wire)},
                                  {"job", ref(Thing::job, job.id)},
                                  {"slots", list_of(set_aside_slots(job, view, set))},
                                  {"length", wire}}));
    found.new_wire += wire;
    any = true;
  }
  if (any) found.jobs.push_back(job.id);
}

std::string sum_words(const Found& f) {
  std::vector<std::string> said;
  if (f.count > 0) said.push_back(plural(f.count, "piece"));
  if (f.new_wire > Length{}) said.push_back(units::print(f.new_wire, units::LengthUnit::m) + " of new wire");
  return fmt::format("{}", fmt::join(said, " and "));
}

void say_piece(Found& found, const Piece& p, const View& view, const Setup& set) {
  Answer& out = found.answer;
  if (!p.job) {
    out.text = fmt::format("Nobody holds {}.", named(p, view, set));
    out.reason = fmt::format("Ask 'where would piece {} go' for what the cut plan wants it for.", p.id);
    return;
  }
  out.text = fmt::format("{} is held for {} ({}) by {}.", sentence(named(p, view, set)), held_words(p),
                         view.jobs().find(*p.job)->owner, last_hand({Thing::piece, p.id}, view));
  out.choices.push_back({fmt::format("let go of piece {}", p.id),
                         {"let-go", {{"piece", ref(Thing::piece, p.id)}}},
                         {seen({Thing::piece, p.id}, view)}});
}

void say_jobs(Found& found, const std::optional<Job>& job, const View& view) {
  Answer& out = found.answer;
  if (found.jobs.empty()) {
    out.text = job ? fmt::format("Nothing is held or set aside for {}.", named(*job))
                   : "Nothing is held or set aside for any job.";
    out.reason = fmt::format("'set aside everything for job {}' holds all that the cut plan takes for it.",
                             job ? std::to_string(job->id) : "…");
    return;
  }
  if (!job) {
    out.text = fmt::format("Held: {}, for {} {}.", sum_words(found), found.jobs.size() == 1 ? "job" : "jobs",
                           fmt::join(found.jobs, ", "));
    out.reason = fmt::format("'let go of everything for job {}' gives free all that is held for it.",
                             found.jobs.front());
    return;
  }
  out.text = fmt::format("Held for {}: {}.", named(*job), sum_words(found));
  out.choices.push_back({fmt::format("let go of all of it"),
                         {"let-all-go", {{"job", ref(Thing::job, job->id)}}},
                         {seen({Thing::job, job->id}, view)}});
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  Found found;
  found.answer.table = Table{{"job", "for", "what", "length", "where", "slots", "by"}, {}};
  std::optional<Piece> piece;
  std::optional<Job> job;
  if (args.has("piece")) piece = piece_of(args, view);
  if (args.has("job")) job = job_of(args, view);
  for (const Job& j : view.jobs().open()) {
    if (job && job->id != j.id) continue;
    if (piece && piece->job != j.id) continue;
    if (args.has("wire") && j.wire != args.id("wire")) continue;
    add_job(found, j, piece, view, set);
  }
  Answer& out = found.answer;
  if (piece)
    say_piece(found, *piece, view, set);
  else
    say_jobs(found, job, view);
  if (piece || out.table->rows.empty()) out.table.reset();
  out.data = record({{"pieces", list(std::move(found.pieces))}, {"new_wire", list(std::move(found.wires))}});
  if (job) out.about.args = {{"job", ref(Thing::job, job->id)}};
  if (piece) out.about.args = {{"piece", ref(Thing::piece, piece->id)}};
  return std::move(found.answer);
}

} // namespace

extern const Question held;
const Question held{
    {"held",
     "What is held for whom: pieces of the tin, and new wire that is set aside; of a job, a wire, a piece, "
     "or all.",
     {takes::optional(takes::job), takes::optional(takes::wire), takes::optional(takes::piece)},
     {"what [all] is (held|set aside|reserved|kept|put aside) [for {job}]",
      "what is (held|set aside|reserved|kept|put aside) [and] [for (whom|who|which job)]",
      "what (do|did|have) (we|you) (hold|held|keep|set aside|reserve) for {job}",
      "what are (we|you) (holding|keeping) [for {job}]", "what is (held|set aside|reserved) of {wire}",
      "(which|what) pieces are (held|reserved|kept|set aside) [for {job}]",
      "(what|which) [wire|{wire}] is (held|set aside|reserved) [for {job}]",
      "who (has|holds|keeps|reserved|is holding|is keeping) {piece}",
      "(who|what|which job) is {piece} (held|kept|reserved|set aside) for",
      "is {piece} (held|free|reserved|taken)", "is anything (held|set aside|reserved) [for {job}]",
      "how much [of] [wire|{wire}] is (held|set aside|reserved) [for {job}]"},
     {"what is held", "what is held for job 8", "who has piece 4"},
     Role::look,
     {gives::records("pieces", "that are held, up to 200",
                     {gives::piece,
                      gives::wire,
                      {"length", Kind::length, "null where nobody has measured it", Often::or_null},
                      {"place", Kind::words, "where in the shop"},
                      gives::job,
                      {"slots", Kind::slot, "none where it is for any slot", Often::many}}),
      gives::records("new_wire", "that is set aside",
                     {gives::wire,
                      gives::job,
                      {"slots", Kind::slot, "that it is for", Often::many},
                      {"length", Kind::length, "with its cuts"}})}},
    &ask};

} // namespace nutward::shop::question_rows
