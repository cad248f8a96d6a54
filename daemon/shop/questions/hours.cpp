// When the shop is open, and when people work.
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

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Day today = moment.zone.local(moment.now).day, first = args.opt<Day>("day").value_or(today);
  const auto count = args.has("day") ? 1 : args.or_else<std::int64_t>("days", 7);
  const auto who = who_of(args, moment, view, std::min(first, today));
  Answer out;
  out.table = Table{{"day", who ? "works" : "open", ""}, {}};
  std::vector<Value> all;
  std::chrono::seconds sum{0};
  for (Day d = first; d < first + static_cast<int>(count); d = d + 1) {
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
  const std::string subject = who ? who->name + " works" : "The shop is open";
  if (args.has("day")) {
    const auto& row = out.table->rows.front();
    out.text = row[1] == "closed" ? fmt::format("{} {} on {}{}.", who ? who->name : "The shop",
                                                who ? "does not work" : "is closed", row[0],
                                                row[2].empty() ? "" : ": " + row[2])
                                  : fmt::format("{} {} on {}.", subject, row[1], row[0]);
    out.table.reset();
  } else {
    const bool now = !who && hours::is_open(moment.calendar, moment.zone, moment.now);
    out.text = fmt::format("{} {} h in these {} days{}.", subject, sum.count() / 3600, count,
                           who   ? ""
                           : now ? "; it is open now"
                                 : "; it is closed now");
  }
  out.data = record({{"days", list(std::move(all))}});
  return out;
}

} // namespace

extern const Question hours_question;
const Question hours_question{
    {"hours",
     "When the shop is open, or somebody works, day by day.",
     {{"person", Kind::person, false, false, "when they work, within the shop's hours"},
      {"mine", Kind::yes, false, false, "when you work"},
      {"day", Kind::day, false, false, "only that day"},
      {"days", Kind::count, false, false, "how far to look ahead; 7", {1, 62}}},
     {"(when|what hours) are we open [[on] {day}]", "(are we|is the shop) open [[on] {day}]",
      "when is the shop open [[on] {day}]", "[what are] [the] (opening|shop) hours [[on] {day}]",
      "when does {person} work [[on] {day}]", "does {person} work [on] {day}",
      "is {person} (in|here|off|working) [on] {day}", "when do i work {mine=yes} [[on] {day}]",
      "[what are] [the] hours of {person} [[on] {day}]", "[what are] [the] hours in [the next] {days} days"},
     {"hours", "when are we open", "when does Ines work", "is Ines in tomorrow"},
     Role::look,
     {gives::records("days", "one after the other",
                     {{"day", Kind::day, "which"},
                      {"hours", Kind::words, "such as 09:00-12:30, 13:30-18:00; closed"},
                      {"open_minutes", Kind::count, "in all"},
                      {"note", Kind::words, "may be empty"}})}},
    &ask};

} // namespace nutward::shop::question_rows
