// What went before: who did what, when, and by which sentence.
#include "shop/past.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"
#include "shop/spring_back.hpp"

#include <charconv>
#include <limits>

namespace nutward::shop::question_rows {

namespace {

constexpr std::size_t entries_a_page = 20;

struct Wanted {
  std::optional<Ref> thing;
  std::optional<int> slot;
  std::optional<std::int64_t> actor;
  Instant from{std::numeric_limits<std::int64_t>::min()};
  Bookmark before{{std::numeric_limits<std::int64_t>::max()}, 0};
  std::string words; // "Slot 5 of job 8 (twelve-string of Peregrin), by Mara, on Tue 24 Nov 2026"
};

// Opaque to whoever holds it: the bookmark's second and line, in hexadecimal.
std::string cursor_for(const Line& last) {
  return fmt::format("{:x}.{:x}", last.happened.s, last.id);
}

std::optional<std::int64_t> hex(std::string_view text) {
  std::int64_t v = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), v, 16);
  return error == std::errc{} && end == text.data() + text.size() ? std::optional{v} : std::nullopt;
}

Bookmark bookmark_of(std::string_view cursor) {
  const std::size_t dot = cursor.find('.');
  const auto happened = hex(cursor.substr(0, dot));
  const auto line = dot == std::string_view::npos ? std::nullopt : hex(cursor.substr(dot + 1));
  if (!happened || !line || *line < 0) {
    throw Problem(Fault::value, "That is no cursor of a history.", "cursor",
                  "Take it from the answer that it goes on from, or leave it out.");
  }
  return {{*happened}, *line};
}

void refuse_two_things(const Args& args) {
  const int things = (args.has("job") ? 1 : 0) + (args.has("piece") ? 1 : 0) + (args.has("wire") ? 1 : 0);
  if (things > 1) {
    throw Problem(Fault::value, "Those are two things at once.", args.has("piece") ? "piece" : "wire",
                  "Ask for the history of one job, one piece or one wire.");
  }
  if (args.has("slot") && !args.has("job"))
    throw Problem(Fault::value, "A slot is one of a job.", "job", "Say which job.");
  if (args.has("happened") && args.has("since"))
    throw Problem(Fault::value, "Those are two times at once.", "since_on", "Say one day, or since when.");
  if (args.has("mine") && args.has("person"))
    throw Problem(Fault::value, "Those are two persons at once.", "person", "Say one of them.");
}

// Whatever the thing's state is now: what is gone has a history too.
void set_thing(Wanted& out, const Args& args, const View& view, const Setup& set) {
  if (args.has("job")) {
    const Job job = job_of(args, view, false);
    out.thing = Ref{Thing::job, job.id};
    out.words = named(job);
    if (!args.has("slot")) return;
    out.slot = slot_of(args, job);
    out.words = fmt::format("slot {} of {}", *out.slot, out.words);
  } else if (args.has("piece")) {
    out.thing = args.get<Ref>("piece");
    const auto piece = view.tin().find(out.thing->id);
    out.words = piece && piece->in_tin ? named(*piece, view, set) : fmt::format("piece {}", out.thing->id);
  } else if (args.has("wire")) {
    out.thing = args.get<Ref>("wire");
    out.words = wire_of(view, out.thing->id).name;
  }
}

void set_days(Wanted& out, const Args& args, const Moment& moment) {
  if (const auto day = args.opt<Day>("happened")) {
    out.from = moment.zone.instant(*day, 0);
    out.before = {moment.zone.instant(*day + 1, 0), 0};
    out.words += fmt::format("{}{}", out.words.empty() ? "" : ", ", hours::human(*day));
  }
  if (const auto day = args.opt<Day>("since")) {
    out.from = moment.zone.instant(*day, 0);
    out.words += fmt::format("{}since {}", out.words.empty() ? "" : ", ", hours::human(*day));
  }
}

Wanted wanted(const Args& args, const Moment& moment, const View& view, const Setup& set) {
  refuse_two_things(args);
  Wanted out;
  set_thing(out, args, view, set);
  if (args.has("person")) out.actor = args.id("person");
  if (args.yes("mine")) out.actor = moment.who.actor;
  if (out.actor) out.words += (out.words.empty() ? "by " : ", by ") + name_of(*out.actor, view);
  set_days(out, args, moment);
  if (args.has("cursor")) {
    const Bookmark mark = bookmark_of(args.text("cursor"));
    if (std::tuple(mark.happened, mark.line) < std::tuple(out.before.happened, out.before.line))
      out.before = mark;
  }
  if (out.words.empty()) out.words = "the shop";
  return out;
}

Value data_of(const Past& past, const Told& t) {
  const Line& line = past.line;
  return record({{"line", line.id},
                 {"group", line.group},
                 {"happened", line.happened},
                 {"recorded", line.recorded},
                 {"person", ref(Thing::actor, line.actor)},
                 {"name", t.who},
                 {"via", line.via},
                 {"said", line.said},
                 {"call", t.call},
                 {"answer", line.answer},
                 {"text", t.sentence()},
                 {"undoes_group", line.undoes ? Value{*line.undoes} : Value{}},
                 {"taken_back_at", opt(t.taken_back)},
                 {"taken_back_by", t.taken_by ? ref(Thing::actor, *t.taken_by) : Value{}},
                 {"taken_back_name", t.taken_by ? Value{t.taken_by_name} : Value{}}});
}

std::string lead(const Wanted& w, std::size_t entries, bool more, bool going_on) {
  const std::string n = plural(static_cast<std::int64_t>(entries), "entry", "entries");
  if (entries == 0)
    return fmt::format("{}: nothing{} is on record.", sentence(w.words), going_on ? " earlier" : "");
  if (going_on)
    return fmt::format("{}: {} from earlier{}.", sentence(w.words), n, more ? "" : ", the first ones");
  return fmt::format("{}: {}{}.", sentence(w.words), more ? "the last " : "", n);
}

// How the fret of a slot fared: "Fret 9 had 2000 lb with 9-14, 2400 lb alone. At the recheck: …".
std::string so_far(const Wanted& w, const Moment& moment, const View& view, const Setup& set) {
  if (!w.slot || !w.thing) return "";
  const auto job = view.jobs().find(w.thing->id);
  if (!job) return "";
  std::string out;
  const std::string loads = loads_of(*job, *w.slot, view, set),
                    looks = looks_of(*job, *w.slot, view, moment.zone);
  if (!loads.empty()) out += fmt::format("The fret there was pressed with {}. ", loads);
  if (!looks.empty()) out += fmt::format("At the recheck: {}. ", looks);
  std::int64_t over = 0;
  for (const Reading& r : view.jobs().readings(job->id))
    over +=
        r.is.felt != level::Felt::not_laid && *w.slot >= r.is.span.from && *w.slot <= r.is.span.to ? 1 : 0;
  if (over > 0) out += fmt::format("A straightedge lay over it {}. ", plural(over, "time"));
  return out;
}

Choice earlier(const Args& args, const std::string& cursor) {
  Choice out{"earlier", args.call(), {}};
  std::erase_if(out.call.args, [](const auto& arg) { return arg.first == "cursor"; });
  out.call.args.emplace_back("cursor", cursor);
  return out;
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Wanted w = wanted(args, moment, view, setup(view));
  const auto& journal = view.journal();
  auto found = w.thing ? journal.about(*w.thing, w.slot, w.actor, w.from, w.before, entries_a_page + 1)
                       : journal.happened(w.actor, w.from, w.before, entries_a_page + 1);
  const bool more = found.size() > entries_a_page;
  if (more) found.pop_back();
  Answer out;
  out.text = lead(w, found.size(), more, args.has("cursor"));
  std::vector<Value> entries;
  if (!found.empty()) out.table = Table{{"when", "who", "what"}, {}};
  for (const Past& past : found) {
    const Told t = told(past, view, moment.zone);
    if (entries.empty()) out.text += " " + t.sentence();
    out.table->rows.push_back({t.when, t.who, t.what});
    entries.push_back(data_of(past, t));
  }
  if (found.size() == 1) out.table.reset(); // the text says it
  if (more) {
    out.next = cursor_for(found.back().line);
    out.choices.push_back(earlier(args, out.next));
  }
  const std::string fared = so_far(w, moment, view, setup(view));
  out.reason =
      fared +
      "By when it happened, what was last leads; 'told' is when it was reported, where that was later.";
  out.data = record({{"entries", list(std::move(entries))},
                     {"so_far", fared},
                     {"earlier", more ? Value{out.next} : Value{}}});
  for (const auto& [name, value] : args.call().args) {
    if (name == "job" || name == "slot" || name == "piece" || name == "wire")
      out.about.args.emplace_back(name, value);
  }
  return out;
}

} // namespace

extern const Question history;
const Question history{
    {"history",
     "Who did what, when, and by which sentence: of a job, a slot, a piece, a wire, a person, a day, or all.",
     {takes::optional(takes::job),
      takes::optional(takes::slot),
      takes::optional(takes::piece),
      takes::optional(takes::wire),
      {"person", Kind::person, false, false, "only what they reported"},
      {"mine", Kind::yes, false, false, "only what you reported"},
      {"happened", Kind::day, false, false, "only what happened that day"},
      {"since", Kind::day, false, false, "only what happened that day or later"},
      {"cursor", Kind::words, false, false, "where an answer before left off"}},
     {"[the] (history|story) of {job} [{happened}|since {since}]",
      "[the] (history|story) of [the] (slot|fret|fret in slot) {slot} (of|in) {job}",
      "[the] (history|story) of {piece}",
      "[the] (history|story) of [the] {wire} [wire] [{happened}|since {since}]",
      "[the] (history|story) of {person} [{happened}|since {since}]",
      "[the] history [(of|for|on)] {happened}",
      "[the] history since {since}",
      "what (did|has) {job} (go|gone|been) through",
      "what (happened|was done) (to|with|on|for|in) {job} [{happened}|since {since}]",
      "what (happened|was done) (to|with) [the] (slot|fret|fret in slot) {slot} (of|in|on) {job}",
      ("(what|which) (load|loads) (did|has) [the] (slot|fret|fret in slot) {slot} (get|got|had|have|been) "
       "[(of|in|on) {job}]"),
      "what (happened|was done) (to|with) {piece}",
      "what (happened|was done) (to|with) [the] {wire} [wire]",
      "who (used|took|had|held|added|scrapped|cut|measured|touched) {piece}",
      ("who (made|cut|seated|pressed|touched|did|measured) [the] (slot|fret|fret in slot) {slot} (of|in|on) "
       "{job}"),
      "who (made|cut|seated|pressed|did|touched) [the] frets (of|in|on|for) {job} [{happened}|since {since}]",
      "who (worked on|pressed|cut|seated|touched) {job} [{happened}|since {since}]",
      "what (did|has) {person} (do|done|did) [{happened}|since {since}]",
      "what (did|has) {person} (do|done|did) (to|on|for|with) {job} [{happened}|since {since}]",
      "what (did|have) i (do|done) [{happened}|since {since}] {mine=yes}",
      "what (did|have) i (do|done) last {mine=yes}",
      "what was the last (thing|entry)",
      "my history {mine=yes}",
      "what [all] (happened|was done) [{happened}|since {since}]",
      "who did what [{happened}|since {since}]"},
     {"history of job 8", "what happened to slot 5 of job 8", "what happened yesterday", "history of today",
      "who did what since monday"},
     Role::look,
     {gives::records("entries", "by when it happened, the last one leading; at most 20",
                     {{"line", Kind::count, "of the journal"},
                      {"group", Kind::count, "the first line of the list that it was one call of"},
                      {"happened", Kind::at, "when it happened"},
                      {"recorded", Kind::at, "when it was reported"},
                      {"person", Kind::person, "the id of who reported it"},
                      {"name", Kind::words, "their name"},
                      {"via", Kind::words, "the way that it came in"},
                      {"said", Kind::words, "the sentence; empty where it came as a call"},
                      {"call", Kind::words, "what was called, as its canonical sentence"},
                      {"answer", Kind::words, "what was answered"},
                      {"text", Kind::words, "all of it as one sentence"},
                      {"undoes_group", Kind::count, "the list that it took back", Often::or_null},
                      {"taken_back", Kind::at, "when it was taken back", Often::or_null},
                      {"taken_back_by", Kind::person, "the id of who took it back", Often::or_null},
                      {"taken_back_name", Kind::words, "their name", Often::or_null}}),
      {"so_far", Kind::words,
       "of a slot: what its fret was pressed with and what rechecks found; may be empty"},
      {"earlier", Kind::words, "the cursor of what went before; null where that is all", Often::or_null}}},
    &ask};

} // namespace nutward::shop::question_rows
