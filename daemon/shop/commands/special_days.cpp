// Days on which the shop is closed, or has other hours than every week.
#include "shop/days_asked.hpp"

namespace nutward::shop::command_rows {

namespace {

constexpr int most_closed = 120; // days in a row

SpecialDay special(Day day, const Tx& tx) {
  for (const SpecialDay& s : tx.house().special_days()) {
    if (s.day == day) return s;
  }
  SpecialDay out;
  out.day = day;
  return out;
}

// What was to happen on a day that is closed now, and when instead: rechecks are looked at by the clock,
// bookings stand.
std::string falls_on_closed(Day day, const Moment& moment, const View& view) {
  const hours::Calendar now = calendar_of(view.house());
  const Instant from = moment.zone.instant(day, 0), to = moment.zone.instant(day, 86400);
  std::string out;
  for (const Recheck& r : view.jobs().waiting()) {
    if (r.due < from || r.due >= to || hours::is_open(now, moment.zone, r.due)) continue;
    const auto clock = agenda::window_clock(r.from, r.due, now, moment.zone);
    const auto job = view.jobs().find(r.job);
    out += fmt::format(" The recheck of {} is due then; it is told {} and overdue after {}.",
                       job ? named(*job) : fmt::format("job {}", r.job), moment.zone.human(clock.remind),
                       moment.zone.human(clock.overdue));
  }
  const auto booked = view.machines().bookings(from, to);
  if (!booked.empty())
    out += fmt::format(" Booked that day all the same: {}.", words_of(booked, view, moment.zone));
  return out.empty() ? out : out.substr(1);
}

// What of the day's hours is left when the shop is closed from one instant to another.
std::string hours_without(Day day, Instant from, Instant to, const Moment& moment) {
  std::vector<hours::Span> left;
  const auto keep = [&](Instant a, Instant b) {
    if (a >= b) return;
    const hours::LocalTime x = moment.zone.local(a), y = moment.zone.local(b);
    left.push_back({x.s, y.day > day ? 86400 : y.s});
  };
  for (const auto& [open, close] : hours::spans(moment.calendar, moment.zone, day)) {
    keep(open, std::min(close, from));
    keep(std::max(open, to), close);
  }
  return write_spans(left);
}

void close_one(Day day, const std::string& left, const std::string& note, Tx& tx) {
  SpecialDay s = special(day, tx);
  s.closed = true;
  s.extra = left;
  s.note = note;
  tx.put(s);
}

// A part of a day, or from a time of it on: the day has other hours then.
Effect close_part(const Args& args, const Moment& moment, Tx& tx) {
  const auto begins = args.opt<Instant>("begins");
  const Day said = begins && !args.has("day")
                       ? moment.zone.local(*begins).day
                       : args.opt<Day>("day").value_or(moment.zone.local(moment.now).day);
  Stretch closed = part_of(said, args.text("part"), moment.calendar, moment.zone);
  if (begins) closed.from = moment.zone.instant(said, moment.zone.local(*begins).s);
  if (hours::open_between(moment.calendar, moment.zone, closed.from, closed.to).count() == 0) {
    throw Problem(Fault::state, fmt::format("The shop is closed then as it is, on {}.", hours::human(said)),
                  "day_on", "There is nothing to do.");
  }
  const std::string left = hours_without(said, closed.from, closed.to, moment);
  close_one(said, left, args.text("note"), tx);
  Effect out;
  out.answer.text = left.empty() ? fmt::format("Closed on {}.", hours::human(said))
                                 : fmt::format("Open only {} on {}.", left, hours::human(said));
  out.answer.reason = falls_on_closed(said, moment, tx);
  out.answer.data = record({{"day", said}, {"last_on", said}, {"hours", left}});
  return out;
}

Effect close_day(const Args& args, const Moment& moment, Tx& tx) {
  if (args.has("part") || args.has("begins")) return close_part(args, moment, tx);
  if (!args.has("day") && !args.has("week"))
    throw Problem(Fault::value, "On which day?", "day_on", "Say it, such as: closed on 2026-12-25.");
  const DaysAsked week =
      args.has("day") ? DaysAsked{args.get<Day>("day"), 1, "", true, ""} : days_asked(args, moment, 1);
  const Day first = week.first, last = args.opt<Day>("last").value_or(first + (week.count - 1));
  if (last < first || last - first >= most_closed) {
    throw Problem(Fault::value,
                  last < first ? fmt::format("{} comes before {}.", hours::human(last), hours::human(first))
                               : fmt::format("That is over {} days.", most_closed),
                  "last_on", "Give the last day that is closed.");
  }
  for (Day d = first; d <= last; d = d + 1)
    close_one(d, "", args.text("note"), tx);
  const std::string note = args.text("note");
  Effect out;
  out.answer.text = (first == last ? fmt::format("Closed on {}", hours::human(first))
                                   : fmt::format("Closed from {} to {}, {} in all", hours::human(first),
                                                 hours::human(last), plural(last - first + 1, "day"))) +
                    (note.empty() ? "." : ": " + note + ".");
  for (Day d = first; d <= last; d = d + 1) {
    const std::string hit = falls_on_closed(d, moment, tx);
    if (!hit.empty()) out.answer.reason += (out.answer.reason.empty() ? "" : " ") + hit;
  }
  out.answer.data = record({{"day", first}, {"last_on", last}, {"hours", std::string()}});
  return out;
}

Effect reopen_day(const Args& args, const Moment&, Tx& tx) {
  SpecialDay s = special(args.get<Day>("day"), tx);
  if (!s.closed) {
    throw Problem(
        Fault::state, fmt::format("{} was not closed.", hours::human(s.day)), "day_on",
        "There is nothing to do; hours besides the weekly ones: open extra on 2026-12-12 9:00-13:00.");
  }
  s.closed = false;
  s.extra.clear();
  s.note.clear();
  tx.put(s);
  const auto spans = tx.house().week();
  const auto weekly =
      std::find_if(spans.begin(), spans.end(), [&](const Weekday& w) { return w.id == s.day.weekday() + 1; });
  const std::string hours = weekly == spans.end() ? "" : weekly->spans;
  Effect out;
  out.answer.text = fmt::format("{} is no special day any more: {}.", hours::human(s.day),
                                hours.empty() ? "closed as every week" : "open " + hours);
  out.answer.data = record({{"day", s.day}});
  return out;
}

// "Open late tomorrow until 20:00": from the closing on.
std::vector<hours::Span> longer(const Args& args, Day day, const Moment& moment) {
  const auto closing = hours::end_of_open_day(moment.calendar, moment.zone, day);
  if (!args.has("until") || !closing) {
    throw Problem(Fault::value,
                  closing ? "Until when?" : fmt::format("The shop is closed on {}.", hours::human(day)),
                  "hours", "Say the hours, such as: also open on 2026-12-13 10:00-12:00.");
  }
  const std::int32_t until = moment.zone.local(args.get<Instant>("until")).s,
                     from = moment.zone.local(*closing).s;
  const bool into_the_night = moment.zone.local(*closing).day > day;
  if (into_the_night || (until != 0 && until <= from)) {
    throw Problem(Fault::value,
                  fmt::format("The shop is open until {} {}as it is.", hours::human_time(from),
                              into_the_night ? "of the next day " : "then "),
                  "until_at", "Give a later time.");
  }
  return {{from, until == 0 ? 86400 : until}};
}

Effect open_extra(const Args& args, const Moment& moment, Tx& tx) {
  SpecialDay s = special(args.get<Day>("day"), tx);
  if (args.yes("only")) s.closed = true, s.extra.clear();
  auto spans = s.extra.empty() ? std::vector<hours::Span>{} : read_spans(s.extra);
  const auto more = args.has("hours") ? read_spans(args.text("hours")) : longer(args, s.day, moment);
  spans.insert(spans.end(), more.begin(), more.end());
  s.extra = write_spans(hours::merged(std::move(spans)));
  if (args.has("note")) s.note = args.text("note");
  tx.put(s);
  Effect out;
  out.answer.text = args.yes("only")
                        ? fmt::format("Open {} on {}, that day only.", s.extra, hours::human(s.day))
                        : fmt::format("Open besides on {}: {}.", hours::human(s.day), s.extra);
  if (args.yes("only")) {
    out.answer.reason = falls_on_closed(s.day, moment, tx);
    if (s.extra.empty()) out.answer.text = fmt::format("Closed on {}.", hours::human(s.day));
  }
  out.answer.data = record({{"day", s.day}, {"hours", s.extra}});
  return out;
}

} // namespace

extern const Command close_day_row;
const Command close_day_row{
    {"close-day",
     "Closes the shop for a day, for several, or for a part of one.",
     {{"day", Kind::day, false, false, "which, or the first"},
      takes::last_day,
      takes::part_of_day,
      takes::week,
      {"begins", Kind::at, false, false, "from that time on, until the day ends"},
      takes::note},
     {"(close|closed|shut) [the shop] [on|for] {day} [because {note}]",
      "(we are|the shop is) (closed|shut) [on|for] {day} [because {note}]",
      ("(close|closed|shut|we are closed|we are shut|the shop is closed) [the shop] [from|on] {day} "
       "(to|until|till|through) {last} [because {note}]"),
      ("(close|closed|we are closed|the shop is closed) [the shop] [on] {day} [in the] {part} [because "
       "{note}]"),
      "(close|closed|we are closed|the shop is closed) [the shop] this {part} [because {note}]",
      ("(close|we close|we are closed|the shop closes) [the shop] [early] [on] {day} (at|from) {begins} [on] "
       "[because {note}]"),
      "(close|we close|we are closed|the shop closes) [the shop] [early] (at|from) {begins} [because {note}]",
      ("(close|closed|we are closed|the shop is closed) [the shop] [for] [all] [of] (next week "
       "{week=next}|(this|the rest of this) week "
       "{week=this}) [because {note}]"),
      "(we do not|we will not) open [on] {day} [because {note}]",
      "not open [on] {day} [after all] [because {note}]", "no work [on] {day} [because {note}]",
      "{day} is a (holiday|day off|closed day)"},
     {"closed on 2026-12-25", "close the shop on 2027-01-01", "closed from 2026-12-24 to 2027-01-02",
      "close this afternoon"},
     Role::lead,
     {{"day", Kind::day, "which, or the first"},
      {"last", Kind::day, "the last"},
      {"hours", Kind::spans, "that are left of it; empty: none"}}},
    &close_day};

extern const Command reopen_day_row;
const Command reopen_day_row{
    {"reopen-day",
     "Takes back that the shop is closed on a day.",
     {{"day", Kind::day, true, false, "which"}},
     {"[we are] not (closed|shut|closing) [on] {day} [after all|any more]",
      ("(do not|will not|we will not|we need not|we do not) (close|shut|be closed|be shut) [the shop] [on] "
       "{day} "
       "(after all|at all|any more)"),
      "[we are] open [on] {day} (after all|as usual|again)", "(we are|the shop is) not closed [on] {day}",
      "{day} is [a] (working|open) day (after all|again)", "reopen [on] {day}"},
     {"open on 2026-12-25 after all", "reopen 2027-01-01"},
     Role::lead,
     {{"day", Kind::day, "which"}}},
    &reopen_day};

extern const Command open_extra_row;
const Command open_extra_row{
    {"open-extra",
     "Opens the shop on one day besides its weekly hours, or in place of them.",
     {{"day", Kind::day, true, false, "which"},
      {"hours", Kind::spans, false, false, "9:00-13:00"},
      {"until", Kind::at, false, false, "from that day's closing until then"},
      {"only", Kind::yes, false, false, "in place of that day's weekly hours"},
      takes::note},
     {"[we are] open (late|longer) [on] {day} until {until}", "[we are] open [on] {day} until {until}",
      "open extra [on] {day} [from] {hours}", "[we are] also open [on] {day} [from] {hours}",
      "(we are|the shop is) open besides [on] {day} [from] {hours}",
      "extra opening [on] {day} [from] {hours}", "[we are] open only [on] {day} [from] {hours} {only=yes}",
      "[we are] open [on] {day} only [from] {hours} {only=yes}",
      "(on|only) {day} [we are] open only [from] {hours} {only=yes}",
      "[on] {day} [we are] open [from] {hours} (only {only=yes}|{only=no})",
      "[we are] open [on] {day} [from] {hours} (only {only=yes}|{only=no})",
      "[the] hours [on|of|for] {day} are {hours} {only=yes}"},
     {"open extra on 2026-12-12 9:00-13:00", "also open on 2026-12-13 10:00-12:00",
      "open on 2026-12-24 9:00-12:00 only"},
     Role::lead,
     {{"day", Kind::day, "which"}, {"hours", Kind::spans, "all that is open besides that day"}}},
    &open_extra};

} // namespace nutward::shop::command_rows
