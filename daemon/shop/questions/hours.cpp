// When the shop is open, and when people work.
#include "shop/agenda_words.hpp"
#include "shop/days_asked.hpp"
#include "shop/own_hours.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

std::string spans_words(const std::vector<hours::Opening>& open, const hours::Zone& zone, Day day) {
  std::vector<std::string> out;
  for (const auto& [from, to] : open) {
    const hours::LocalTime a = zone.local(from), b = zone.local(to);
    out.push_back(fmt::format("{}-{}", hours::human_time(a.s), hours::human_time(b.day > day ? 86400 : b.s)));
  }
  return out.empty() ? "closed" : fmt::format("{}", fmt::join(out, ", "));
}

struct Who {
  std::string name;
  hours::Calendar calendar;
};

std::optional<Who> who_of(const Args& args, const Moment& moment, const View& view, Day from) {
  std::optional<Actor> person;
  if (args.has("person")) person = person_of(args, view, false);
  if (args.yes("mine")) person = view.house().actor(moment.who.actor);
  if (!person) return std::nullopt;
  const auto own = own_calendars(view, from);
  const auto at = own.find(person->id);
  return Who{person->name, at == own.end() ? moment.calendar : at->second};
}

// Open time of both on that day.
std::vector<hours::Opening> of_day(const std::optional<Who>& who, const Moment& moment, Day day) {
  auto shop = hours::spans(moment.calendar, moment.zone, day);
  if (!who) return shop;
  std::vector<hours::Opening> out;
  for (const auto& [a, b] : shop) {
    for (const auto& [c, d] : hours::spans(who->calendar, moment.zone, day)) {
      if (std::max(a, c) < std::min(b, d)) out.emplace_back(std::max(a, c), std::min(b, d));
    }
  }
  return out;
}

std::string note_of(const View& view, const Args& args, Day day) {
  for (const SpecialDay& s : view.house().special_days()) {
    if (s.day == day && (s.closed || !s.note.empty())) return s.note.empty() ? "closed for the day" : s.note;
  }
  if (!args.has("person")) return "";
  for (const OwnDay& d : view.machines().own_days(day)) {
    if (d.day == day && d.actor == args.id("person"))
      return d.note.empty() ? (d.spans.empty() ? "off" : "other hours") : d.note;
  }
  return "";
}

std::string short_words(const std::vector<hours::Opening>& open, const Moment& moment, Day day) {
  const std::string words = spans_words(open, moment.zone, day);
  return words == "closed" ? "-" : words;
}

// Everybody who may work, on each of these days.
void say_people(Answer& out, const DaysAsked& days, const Moment& moment, const View& view) {
  const auto own = own_calendars(view, days.first);
  out.table = Table{{"person"}, {}};
  for (int d = 0; d < days.count; ++d)
    out.table->columns.push_back(day_words(days.first + d, moment));
  std::vector<std::string> here, away;
  for (const Actor& a : workers(view)) {
    const auto at = own.find(a.id);
    const Who who{a.name, at == own.end() ? moment.calendar : at->second};
    std::vector<std::string> row{a.name};
    for (int d = 0; d < days.count; ++d)
      row.push_back(short_words(of_day(who, moment, days.first + d), moment, days.first + d));
    (row[1] == "-" ? away : here).push_back(a.name);
    out.table->rows.push_back(std::move(row));
  }
  const std::string when = words_of({days.first, 1, "", true, ""}, moment, true);
  out.text = here.empty()
                 ? fmt::format("Nobody works {}.", when)
                 : sentence(fmt::format("{}: {}{}.", when, fmt::join(here, ", "),
                                        away.empty() ? "" : fmt::format("; not {}", fmt::join(away, ", "))));
}

// "Until 18:00.", "at 09:00 tomorrow."
std::string next_change(const Moment& moment) {
  const bool open = hours::is_open(moment.calendar, moment.zone, moment.now);
  if (!open) {
    const auto at = hours::next_open(moment.calendar, moment.zone, moment.now);
    return at ? "; it opens " + moment.zone.human(*at) : "";
  }
  const auto today =
      hours::openings_between(moment.calendar, moment.zone, moment.now, moment.now + std::chrono::hours(48));
  return today.empty() ? "" : "; it closes " + moment.zone.human(today.front().second);
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Day today = moment.zone.local(moment.now).day;
  const DaysAsked days = days_asked(args, moment, args.yes("people") ? 1 : 7);
  const auto who = who_of(args, moment, view, std::min(days.first, today));
  Answer out;
  out.table = Table{{"day", who ? "works" : "open", ""}, {}};
  std::vector<Value> all;
  std::chrono::seconds sum{0};
  for (Day d = days.first; d < days.first + days.count; d = d + 1) {
    const auto open = of_day(who, moment, d);
    std::chrono::seconds time{0};
    for (const auto& [a, b] : open)
      time += b - a;
    sum += time;
    const std::string words = spans_words(open, moment.zone, d), note = note_of(view, args, d);
    out.table->rows.push_back({hours::human(d), words, note});
    all.push_back(
        record({{"day", d}, {"hours", words}, {"open_minutes", time.count() / 60}, {"note", note}}));
  }
  out.data = record({{"days", list(std::move(all))}});
  const std::string subject = who ? who->name + " works" : "The shop is open";
  const bool now = !who && hours::is_open(moment.calendar, moment.zone, moment.now);
  if (args.yes("people")) {
    say_people(out, days, moment, view);
  } else if (days.count == 1) {
    const auto& row = out.table->rows.front();
    out.text = row[1] == "closed" ? fmt::format("{} {} on {}{}.", who ? who->name : "The shop",
                                                who ? "does not work" : "is closed", row[0],
                                                row[2].empty() ? "" : ": " + row[2])
                                  : fmt::format("{} {} on {}.", subject, row[1], row[0]);
    out.table.reset();
  } else {
    out.text =
        fmt::format("{} {} h {}{}.", subject, sum.count() / 3600,
                    days.week.empty() ? fmt::format("in these {} days", days.count) : days.week + " week",
                    who ? "" : (now ? "; it is open now" : "; it is closed now") + next_change(moment));
  }
  return out;
}

} // namespace

namespace {

std::vector<std::string_view> phrases() {
  static const std::string when =
      " [[on|for|in|of] (from {day} (to|until|till) {last}|{day} [(to|until|till) {last}]|(this|the) week "
      "{week=this}|next week {week=next}|[the] next {days} days|now)]";
  static const std::vector<std::string> made{
      "(when|what hours|how long) (are we|is the shop) open" + when,
      "(are we|is the shop|will we be) (open|closed)" + when,
      "[what are] [the|our] (opening|shop|open) hours" + when,
      "[show|what are] [the|our] hours" + when,
      "when (do we|does the shop) (close|open|shut)" + when,
      "(until when|how late) are we open" + when,
      "when does {person} (work|come in|come)" + when,
      "when is {person} (in|here|there)" + when,
      "does {person} (work|come in)" + when,
      "is {person} (in|here|there|off|away|working)" + when,
      "when do i work {mine=yes}" + when,
      "[what are] my hours {mine=yes}" + when,
      "[what are] [the] hours of {person}" + when,
      "who (works|is working|is in|is here|comes in|will be here) {people=yes}" + when,
      "who is (off|away|out|ill|on holiday|not here) {people=yes}" + when,
      "(is anyone|is anybody|is somebody) (in|here|there|off|away) {people=yes}" + when,
      "[what are] everybody's hours {people=yes}" + when};
  return {made.begin(), made.end()};
}

} // namespace

extern const Question hours_question;
const Question hours_question{
    {"hours",
     "When the shop is open, or somebody works, day by day.",
     {{"person", Kind::person, false, false, "when they work, within the shop's hours"},
      {"mine", Kind::yes, false, false, "when you work"},
      {"day", Kind::day, false, false, "only that day"},
      takes::last_day,
      takes::week,
      {"days", Kind::count, false, false, "how far to look ahead; 7", {1, 62}},
      {"people", Kind::yes, false, false, "of everybody who works here; today where no day is said"}},
     phrases(),
     {"hours", "when are we open", "when does Ines work", "is Ines in tomorrow", "who works tomorrow"},
     Role::look,
     {gives::records("days", "one after the other",
                     {{"day", Kind::day, "which"},
                      {"hours", Kind::words, "such as 09:00-12:30, 13:30-18:00; closed"},
                      {"open_minutes", Kind::count, "in all"},
                      {"note", Kind::words, "may be empty"}})}},
    &ask};

} // namespace nutward::shop::question_rows
