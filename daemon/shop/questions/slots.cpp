// The slot table of a job: where each slot is, how long its fret must be, and what is in it.
#include "shop/boards.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

std::string state_of(int slot, const std::vector<Fret>& frets, const Setup& setup) {
  static constexpr std::array words{"made", "open again", "seated", "pressed", "sprang back", "level"};
  for (const Fret& f : frets) {
    if (f.slot != slot) continue;
    return std::string(words.at(static_cast<std::size_t>(f.state))) +
           (f.length ? ", " + say(*f.length, setup) : "");
  }
  return "open";
}

// Columns that only some boards have.
struct Shows {
  bool fan = false, tang = false;
};

std::vector<std::string> columns(const Shows& shows) {
  std::vector<std::string> out{"slot", "from the nut"};
  if (shows.fan) out.insert(out.end(), {"bass side", "treble side"});
  out.insert(out.end(), {"width", "least", "best", "most", "cut"});
  if (shows.tang) out.emplace_back("tang");
  out.emplace_back("now");
  return out;
}

std::vector<std::string> cells(const board::Slot& s, const board::Need& need, const std::string& now,
                               const Shows& shows, const Setup& set) {
  const auto or_dash = [&](const std::optional<Length>& v) { return v ? say(*v, set) : "-"; };
  std::vector<std::string> out{std::to_string(s.n), say(s.position, set)};
  if (shows.fan) out.insert(out.end(), {say(s.bass_position, set), say(s.treble_position, set)});
  out.insert(out.end(), {say(s.width, set), say(need.least, set), say(need.target, set), or_dash(need.most),
                         say(need.cut, set)});
  if (shows.tang) out.push_back(or_dash(need.tang));
  out.push_back(now);
  return out;
}

Value data_of_slot(const board::Slot& s, const board::Need& need, const std::string& now, bool fan) {
  std::vector<std::pair<std::string, Value>> out{{"slot", std::int64_t{s.n}}, {"position", s.position}};
  if (fan) {
    out.emplace_back("bass_position", s.bass_position);
    out.emplace_back("treble_position", s.treble_position);
  }
  for (auto& field : std::vector<std::pair<std::string, Value>>{{"width", s.width},
                                                                {"arc", need.arc},
                                                                {"least", need.least},
                                                                {"target", need.target},
                                                                {"most_mm", opt(need.most)},
                                                                {"cut", need.cut}})
    out.push_back(std::move(field));
  if (need.tang) out.emplace_back("tang", *need.tang);
  out.emplace_back("state", now);
  return record(std::move(out));
}

std::vector<int> wanted_of(const Args& args, const Job& job) {
  if (!args.has("slots")) return job.slots;
  std::vector<int> wanted = args.slots("slots");
  for (int slot : wanted) {
    if (std::find(job.slots.begin(), job.slots.end(), slot) != job.slots.end()) continue;
    throw Problem(Fault::value, fmt::format("{} has no slot {}.", named(job), slot), "slots",
                  fmt::format("It has slots {}.", ranges(job.slots)));
  }
  return wanted;
}

// Of one slot its length, of several how many lack a fret.
std::string told_of(const std::vector<int>& wanted, std::size_t open, const Job& job, const Setup& set) {
  if (wanted.size() > 1)
    return fmt::format("Slots {} of {}: {}, {} without a fret.", ranges(wanted), named(job),
                       plural(static_cast<std::int64_t>(wanted.size()), "slot"), open);
  const auto slots = board::slots(job.board);
  const auto s = std::find_if(slots.begin(), slots.end(),
                              [&](const board::Slot& one) { return one.n == wanted.front(); });
  const board::Need need = board::need(job.board, *s, set.fit);
  return fmt::format("Fret {} of {} is best {}; its slot takes {}.", s->n, named(job), say(need.target, set),
                     range_of(need, set));
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Job job = job_of(args, view, false);
  const auto frets = view.jobs().frets(job.id);
  const std::vector<int> wanted = wanted_of(args, job);
  const Shows shows{job.board.fan.has_value(), job.board.binding.has_value()};
  Answer out;
  out.table = Table{columns(shows), {}};
  std::vector<Value> all;
  std::size_t open = 0;
  for (const board::Slot& s : board::slots(job.board)) {
    if (std::find(wanted.begin(), wanted.end(), s.n) == wanted.end()) continue;
    const board::Need need = board::need(job.board, s, set.fit);
    const std::string now = state_of(s.n, frets, set);
    open += now == "open" || now.starts_with("came") ? 1 : 0;
    out.table->rows.push_back(cells(s, need, now, shows, set));
    all.push_back(data_of_slot(s, need, now, shows.fan));
  }
  out.text = fmt::format("{} has {}, {} without a fret.", named(job),
                         plural(static_cast<std::int64_t>(wanted.size()), "slot"), open) +
             width_warning(job.board, set);
  if (args.has("slots")) out.text = told_of(wanted, open, job, set) + width_warning(job.board, set);
  out.reason = words_of(job.board, set);
  if (shows.tang) {
    out.reason +=
        fmt::format(" The tang stays {} clear of each binding.", say(set.fit.binding_clearance, set));
  }
  out.data = record({{"job", ref(Thing::job, job.id)},
                     {"slots", list(std::move(all))},
                     {"widths_off", widths_off(job.board)}});
  out.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

} // namespace

extern const Question slots;
const Question slots{
    {"slots",
     "The slot table of a job: where each slot is and how long its fret must be.",
     {takes::job, {"slots", Kind::slot, false, true, "only these"}},
     {"[show me|show|list] [the] slots (of|for|on) {job}", "[the] slot table (of|for) {job}",
      "[show me|show|list] [the] (slot|slots) {slots} (of|for|on) {job}",
      "how long (is|are|must) [the] (fret|frets|slot|slots) {slots} (of|for|on) {job} [be]"},
     {"slots of job 1", "how long is fret 3 of job 1", "slot table of job 1"},
     Role::look,
     {gives::job,
      gives::records(
          "slots", "each slot that was asked about",
          {gives::slot,
           {"position", Kind::length, "from the nut, along the middle"},
           {"bass_position", Kind::length, "of a fanned board, at its bass edge", Often::at_times},
           {"treble_position", Kind::length, "and at its treble edge", Often::at_times},
           {"width", Kind::length, "of the board there"},
           {"arc", Kind::length, "over the board, edge to edge"},
           {"least", Kind::length, "the shortest fret that does"},
           {"target", Kind::length, "the best"},
           {"most", Kind::length, "the longest; null where nothing bounds it", Often::or_null},
           {"cut", Kind::length, "what new wire is cut to"},
           {"tang", Kind::length, "of a fret on a bound board", Often::at_times},
           {"state", Kind::words,
            "open, or what became of its fret; open again where one came short or was moved away"}}),
      gives::widths_off}},
    &ask};

} // namespace nutward::shop::question_rows
