// How often frets spring back: by wire, by what they were last pressed with, and on one job.
#include "shop/spring_back.hpp"
#include "shop/rows.hpp"

#include <set>

namespace nutward::shop::question_rows {

namespace {

constexpr int bin = 5; // N/mm

// Counts of frets that were last pressed alike.
struct Row {
  std::string words; // "2000 lb with a group"
  std::optional<Force> load;
  bool alone = false;
  std::optional<int> from; // N/mm, of the bin
  Sprung count;
};

Sprung sum_of(const std::vector<SprangCount>& counts) {
  Sprung out;
  for (const SprangCount& c : counts)
    out.add(c);
  return out;
}

// Loads that the gauge cannot tell apart are one.
std::vector<Row> by_load(const std::vector<SprangCount>& counts, const Setup& set) {
  std::vector<Row> out;
  for (const SprangCount& c : counts) {
    const std::string words =
        c.load ? fmt::format("{} {}", say(*c.load, set), c.alone ? "alone" : "with a group")
               : "load not said";
    const auto at = std::find_if(out.begin(), out.end(), [&](const Row& r) { return r.words == words; });
    Row& row = at == out.end() ? out.emplace_back(Row{words, c.load, c.alone && c.load, {}, {}}) : *at;
    row.count.add(c);
  }
  std::stable_sort(out.begin(), out.end(), [](const Row& a, const Row& b) {
    return std::pair(a.alone, a.load.value_or(Force{})) < std::pair(b.alone, b.load.value_or(Force{}));
  });
  return out;
}

std::vector<Row> by_line_load(const std::vector<SprangCount>& counts) {
  std::vector<Row> out;
  for (const SprangCount& c : counts) {
    std::optional<int> from;
    if (c.n_per_mm) from = *c.n_per_mm / bin * bin;
    const auto at = std::find_if(out.begin(), out.end(), [&](const Row& r) { return r.from == from; });
    const std::string words = from ? fmt::format("{} to {} N/mm", *from, *from + bin) : "load not known";
    Row& row = at == out.end() ? out.emplace_back(Row{words, {}, false, from, {}}) : *at;
    row.count.add(c);
  }
  std::sort(out.begin(), out.end(), [](const Row& a, const Row& b) { return a.from < b.from; });
  return out;
}

Value data_of(const Row& row) {
  const Interval i = interval_of(row.count);
  return record({{"what", row.words},
                 {"load_n", row.load ? Value{row.load->n} : Value{}},
                 {"alone", row.alone},
                 {"from_n_per_mm", row.from ? Value{std::int64_t{*row.from}} : Value{}},
                 {"looked", row.count.looked},
                 {"sprang", row.count.sprang},
                 {"share_least", i.least},
                 {"share_most", i.most}});
}

const std::vector<Give> row_gives{
    {"what", Kind::words, "what is counted together"},
    {"load", Kind::load, "that they were last pressed with, with all under the bar", Often::or_null},
    {"alone", Kind::yes, "whether each was alone under the bar"},
    {"from_n_per_mm", Kind::count, "of a step of 5 N/mm", Often::or_null},
    {"looked", Kind::count, "frets that rechecks looked at, each time counted"},
    {"sprang", Kind::count, "of these, that stood high again"},
    {"share_least", Kind::number, "of all such frets, with 95 % confidence, from 0 to 1"},
    {"share_most", Kind::number, "likewise"}};

Table table_of(const std::string& first, const std::vector<Row>& rows, bool intervals) {
  Table out{{first, "sprang back"}, {}};
  if (intervals) out.columns.emplace_back("95 % interval");
  for (const Row& row : rows) {
    out.rows.push_back({row.words, words_of(row.count)});
    if (intervals) out.rows.back().push_back(words_of(interval_of(row.count)));
  }
  return out;
}

std::string with_interval(const Sprung& count, bool wanted) {
  if (!wanted) return "";
  return fmt::format(" By so many the true share may be {} (95 % interval of Clopper and Pearson).",
                     words_of(interval_of(count)));
}

std::string on_50_mm(int n_per_mm, const Setup& set) {
  return fmt::format("{} on a fret {} long", say(Force{n_per_mm * ladder_fret.mm()}, set),
                     say(ladder_fret, set));
}

// From which load for each mm on none sprang back any more.
std::string stay_words(const std::vector<Row>& rows, const Setup& set, bool intervals) {
  std::vector<Row> known;
  std::copy_if(rows.begin(), rows.end(), std::back_inserter(known),
               [](const Row& r) { return r.from.has_value(); });
  if (known.empty()) return "What they were pressed with was not reported, so that no load can be told.";
  Sprung above, below;
  auto first = known.end();
  while (first != known.begin() && std::prev(first)->count.sprang == 0) {
    --first;
    above.looked += first->count.looked;
  }
  for (auto r = known.begin(); r != first; ++r)
    below.looked += r->count.looked, below.sprang += r->count.sprang;
  if (first == known.end())
    return fmt::format("At no load did all stay down: with {} still {} sprang back.", known.back().words,
                       words_of(known.back().count));
  if (first == known.begin())
    return fmt::format("None of {} sprang back; the least they were last pressed with was {} N/mm ({}).{}",
                       above.looked, *first->from, on_50_mm(*first->from, set),
                       with_interval(above, intervals));
  return fmt::format("From {} N/mm on ({}) none of {} sprang back, below that {}.{}", *first->from,
                     on_50_mm(*first->from, set), above.looked, words_of(below),
                     with_interval(above, intervals));
}

constexpr std::string_view how_counted =
    "Counted from rechecks, a fret each time it was looked at, by what it was last pressed with; looks "
    "before "
    "the time count not. More load is no cure where something keeps a fret up: find the cause first.";

// Of a job: which, after what, and how they are now.
Answer of_job(const Job& job, const Moment& moment, const View& view, const Setup& set) {
  static constexpr std::array states{"made", "came short", "seated", "pressed again", "still high", "level"};
  Answer out;
  const auto frets = view.jobs().frets(job.id);
  std::vector<Value> all;
  std::vector<int> slots;
  std::set<int> seen; // a fret that was looked at twice is one
  Table table{{"fret", "sprang back", "last pressed with", "now"}, {}};
  for (const Looked& l : view.jobs().looked(job.id)) {
    seen.insert(l.slot);
    if (!l.sprang) continue;
    const auto fret =
        std::find_if(frets.begin(), frets.end(), [&](const Fret& f) { return f.slot == l.slot; });
    const std::string now = fret == frets.end() ? "gone" : states.at(static_cast<std::size_t>(fret->state));
    const std::string with = !l.load           ? "not said"
                             : l.together == 1 ? say(*l.load, set) + " alone"
                             : l.together == 0 ? say(*l.load, set)
                                               : fmt::format("{} on {} frets", say(*l.load, set), l.together);
    table.rows.push_back({std::to_string(l.slot), moment.zone.human(l.looked), with, now});
    all.push_back(record({{"slot", std::int64_t{l.slot}},
                          {"looked", l.looked},
                          {"early", l.early},
                          {"load_n", l.load ? Value{l.load->n} : Value{}},
                          {"together", std::int64_t{l.together}},
                          {"now", now}}));
    slots.push_back(l.slot);
  }
  std::sort(slots.begin(), slots.end());
  slots.erase(std::unique(slots.begin(), slots.end()), slots.end());
  if (seen.empty())
    out.text = fmt::format("Nobody has rechecked {} yet.", named(job));
  else if (slots.empty())
    out.text = fmt::format("No fret of {} sprang back, of {} looked at.", named(job), seen.size());
  else
    out.text = fmt::format("{}: {} {} sprang back.", named(job), slots.size() == 1 ? "fret" : "frets",
                           ranges(slots));
  out.text += sprang_words(job, view) + waiting_words(job, view, moment.zone);
  if (!table.rows.empty()) out.table = std::move(table);
  out.data = record({{"wires", list({})}, {"rows", list({})}, {"frets", list(std::move(all))}});
  out.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

Answer of_wires(const Args& args, const View& view, const Setup& set) {
  const bool intervals = args.yes("interval"), stay = args.yes("stay");
  Answer out;
  const auto counts = view.jobs().sprang(args.has("wire") ? std::optional{args.id("wire")} : std::nullopt);
  std::vector<Row> wires;
  std::vector<Value> wire_data;
  for (const SprangCount& c : counts) {
    const std::string name = wire_of(view, c.wire).name;
    if (wires.empty() || wires.back().words != name) wires.push_back({name, {}, false, {}, {}});
    wires.back().count.add(c);
  }
  wire_data.reserve(wires.size());
  for (const Row& row : wires)
    wire_data.push_back(data_of(row));
  const Sprung all = sum_of(counts);
  const bool by_mm = stay || args.text("by") == "mm";
  const auto rows = by_mm ? by_line_load(counts) : by_load(counts, set);
  const std::string of = args.has("wire")    ? wire_of(view, args.id("wire")).name
                         : wires.size() == 1 ? wires.front().words
                                             : "all wires";
  if (all.looked == 0)
    out.text = fmt::format("No recheck of {} is on record yet.", of);
  else if (stay)
    out.text = fmt::format("{}: {}", of, stay_words(rows, set, intervals));
  else
    out.text = fmt::format("Of {}, {} {} sprang back at the recheck.{}", of, words_of(all),
                           all.looked == 1 ? "fret" : "frets", with_interval(all, intervals));
  if (all.looked > 0) {
    const bool each = wires.size() > 1 && !stay && args.text("by").empty();
    out.table = each ? table_of("wire", wires, intervals) : table_of("last pressed with", rows, intervals);
    out.reason = how_counted;
  }
  std::vector<Value> row_data;
  row_data.reserve(rows.size());
  for (const Row& row : rows)
    row_data.push_back(data_of(row));
  out.data = record(
      {{"wires", list(std::move(wire_data))}, {"rows", list(std::move(row_data))}, {"frets", list({})}});
  out.cautions = {Hazard::press};
  if (args.has("wire")) out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  return out;
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  if (args.has("job") && args.has("wire")) {
    throw Problem(Fault::value, "Those are two things at once.", "wire",
                  "Ask what sprang back on one job, or how often one wire does.");
  }
  return args.has("job") ? of_job(job_of(args, view, false), moment, view, set) : of_wires(args, view, set);
}

} // namespace

extern const Question spring_back;
const Question spring_back{
    {"spring-back",
     "What sprang back on a job, or how often frets do: by wire, and by what they were last pressed with.",
     {takes::optional(takes::job),
      takes::optional(takes::wire),
      {"by", Kind::one_of, false, false, "in the table: by load, or by load for each mm", {}, {"load", "mm"}},
      {"stay", Kind::yes, false, false, "from which load on they stay down"},
      {"interval", Kind::yes, false, false, "with how far such counts may be off"}},
     {"what sprang [back] (on|of|in) {job}", "(which|what) frets sprang [back] (on|of|in) {job}",
      "[did] anything (sprang|spring) [back] (on|of|in) {job}",
      "how (often|much) (does|do) {wire} [wire|frets] spring [back] [with {interval=yes} (the|an) interval]",
      ("how (often|much) (does|do) [the] frets [of {wire}] spring [back] [with {interval=yes} (the|an) "
       "interval]"),
      ("how (often|much) (does|do) (anything|something|it|they) spring [back] [with {interval=yes} (the|an) "
       "interval]"),
      "how sure is that [of {wire}] {interval=yes}",
      "[the] spring back [of {wire}] [by {by}] [with {interval=yes} (the|an) interval]",
      "[the] spring back [of {wire}] by load (for each|per) mm {by=mm}",
      ("(at|from) (which|what) load [on] (do|does) (they|frets|it|{wire}) stay down {stay=yes} [with "
       "{interval=yes} (the|an) interval]"),
      "(which|what) load (keeps|holds) ({wire}|frets|them) down {stay=yes}"},
     {"what sprang back on job 5", "how often does medium spring back", "at which load do they stay down",
      "spring back of medium by load"},
     Role::look,
     {gives::records("wires", "each by itself", row_gives),
      gives::records("rows", "by what they were last pressed with", row_gives),
      gives::records("frets", "of a job, each time one sprang back",
                     {gives::slot,
                      {"looked", Kind::at, "when it was found"},
                      {"early", Kind::yes, "before the recheck counted"},
                      {"load", Kind::load, "on all under the bar", Often::or_null},
                      {"together", Kind::count, "how many frets shared that; 0: not known"},
                      {"now", Kind::words, "how it is"}})}},
    &ask};

} // namespace nutward::shop::question_rows
