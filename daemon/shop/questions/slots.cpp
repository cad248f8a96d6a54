// The slot table of a job: where each slot is, how long its fret must be, and what is in it.
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

std::string state_of(int slot, const std::vector<Fret>& frets, const Setup& setup) {
  static constexpr std::array words{"made", "came out short", "seated", "pressed", "sprang back", "level"};
  for (const Fret& f : frets) {
    if (f.slot != slot) continue;
    return std::string(words.at(static_cast<std::size_t>(f.state))) +
           (f.length ? ", " + say(*f.length, setup) : "");
  }
  return "open";
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view, false);
  const auto frets = view.jobs().frets(job.id);
  Answer out;
  out.table = Table{{"slot", "from the nut", "width", "least", "best", "most", "cut", "now"}, {}};
  std::vector<Value> all;
  std::size_t open = 0;
  std::vector<int> wanted = job.slots;
  if (args.has("slots")) wanted = args.slots("slots");
  for (int slot : wanted) {
    if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end()) {
      throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slots",
                    fmt::format("It has slots {}.", ranges(job.slots)));
    }
    const board::Need need = need_of(job, slot, set);
    const Length x = board::position(job.board, slot);
    const Length width = board::width_at(job.board, slot);
    const std::string now = state_of(slot, frets, set);
    open += now == "open" || now.starts_with("came") ? 1 : 0;
    out.table->rows.push_back({std::to_string(slot), say(x, set), say(width, set), say(need.least, set),
                               say(need.target, set), need.most ? say(*need.most, set) : "-",
                               say(need.cut, set), now});
    all.push_back(record({{"slot", std::int64_t{slot}},
                          {"position", x},
                          {"width", width},
                          {"arc", need.arc},
                          {"least", need.least},
                          {"target", need.target},
                          {"most", opt(need.most)},
                          {"cut", need.cut},
                          {"state", now}}));
  }
  out.text = fmt::format("{} has {}, {} without a fret.", named(job),
                         plural(static_cast<std::int64_t>(wanted.size()), "slot"), open);
  out.reason =
      fmt::format("Scale {}, {} ends, equal temperament of {}.", say(job.board.scale, set),
                  job.board.ends == board::EndStyle::filed ? "filed" : "rounded", job.board.divisions);
  out.data = record({{"job", ref(Thing::job, job.id)}, {"slots", list(std::move(all))}});
  out.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Question slots;
const Question slots{{"slots",
                      "The slot table of a job: where each slot is and how long its fret must be.",
                      {takes::job, {"slots", Kind::slot, false, true, "only these"}},
                      {"[show me|show|list] [the] slots (of|for|on) {job}", "[the] slot table (of|for) {job}",
                       "how long (is|are|must) [the] (fret|frets|slot|slots) {slots} (of|for|on) {job} [be]",
                       "(cut list|cutting list) (of|for) {job}"},
                      {"slots of job 12", "how long is fret 3 of job 12", "cut list for job 12"},
                      Role::look},
                     &ask};

} // namespace nutward::shop::question_rows
