// People who work other hours than the shop is open, or are off.
#include "shop/own_hours.hpp"
#include "shop/days_asked.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

constexpr int most_days = 120; // off in a row

void refuse_passed(Day day, const Moment& moment) {
  if (day >= moment.zone.local(moment.now).day) return;
  throw Problem(Fault::value, fmt::format("{} is over.", hours::human(day)), "day_on",
                "Say a day still to come.");
}

Value data_of(const Actor& who, const std::string& hours) {
  return record({{"person", ref(Thing::actor, who.id)}, {"hours", hours}});
}

// What of somebody's hours the shop is closed in: they count only while it is open.
std::string outside(const hours::Calendar& own, const View& view) {
  const hours::Calendar shop = calendar_of(view.house());
  for (std::size_t d = 0; d < 7; ++d) {
    for (const hours::Span& s : own.weekly.at(d)) {
      const auto& open = shop.weekly.at(d);
      const bool within = std::any_of(open.begin(), open.end(), [&](const hours::Span& o) {
        return o.open_s <= s.open_s && s.close_s <= o.close_s;
      });
      if (!within) return " They count while the shop is open, which it is not all of that time.";
    }
  }
  return "";
}

Effect own_hours(const Args& args, const Moment& moment, Tx& tx) {
  const Actor who = person_of(args, tx);
  const bool as_shop = !args.has("hours");
  if (as_shop) {
    for (const OwnHours& own : tx.machines().own_hours()) {
      if (own.actor == who.id) tx.drop({Thing::own_hours, own.id});
    }
  } else {
    const std::string spans = write_spans(read_spans(args.text("hours")));
    if (!args.has("days"))
      throw Problem(Fault::value, "On which days?", "days", "Say them, such as mon-thu.");
    for (const std::int64_t d : args.many<std::int64_t>("days"))
      tx.put(OwnHours{0, who.id, static_cast<int>(d) + 1, spans});
  }
  Effect out;
  const auto own = own_calendars(tx, moment.zone.local(moment.now).day);
  const auto at = own.find(who.id);
  const std::string week = as_shop || at == own.end() ? "" : week_words(at->second);
  out.answer.text = as_shop        ? fmt::format("{} works whenever the shop is open.", who.name)
                    : week.empty() ? fmt::format("{} works on no day of the week.", who.name)
                                   : fmt::format("{} works {}, and on no other day.", who.name, week);
  if (!as_shop && at != own.end()) out.answer.reason = outside(at->second, tx);
  if (!out.answer.reason.empty()) out.answer.reason.erase(0, 1);
  out.answer.data = data_of(who, week);
  return out;
}

std::string booked_then(const Actor& who, Day first, Day last, const Moment& moment, const View& view) {
  std::vector<std::string> out;
  const auto all = view.machines().bookings(moment.zone.instant(first, 0), moment.zone.instant(last, 86400));
  for (const Booking& b : all) {
    if (b.actor == who.id) out.push_back(fmt::format("booking {}, {}", b.id, moment.zone.human(b.from)));
  }
  return out.empty() ? "" : fmt::format("Still booked then: {}.", fmt::join(out, "; "));
}

// When somebody is there on a day, as it is.
std::vector<hours::Opening> hours_of(const Actor& who, Day day, const Moment& moment, const View& view) {
  const auto own = own_calendars(view, day);
  const auto at = own.find(who.id);
  auto shop = hours::spans(moment.calendar, moment.zone, day);
  if (at == own.end()) return shop;
  std::vector<hours::Opening> out;
  for (const auto& [a, b] : shop)
    for (const auto& [c, d] : hours::spans(at->second, moment.zone, day))
      if (std::max(a, c) < std::min(b, d)) out.emplace_back(std::max(a, c), std::min(b, d));
  return out;
}

std::string spans_of(const std::vector<hours::Opening>& all, Day day, const Moment& moment) {
  std::vector<hours::Span> out;
  for (const auto& [a, b] : all) {
    const hours::LocalTime x = moment.zone.local(a), y = moment.zone.local(b);
    out.push_back({x.s, y.day > day ? 86400 : y.s});
  }
  return write_spans(out);
}

// Half a day off, or there from or until a time only: other hours that day.
Effect there_only(const Actor& who, Day day, const std::vector<hours::Opening>& there, const Args& args,
                  const Moment& moment, Tx& tx) {
  const std::string spans = spans_of(there, day, moment);
  tx.put(OwnDay{0, who.id, day, spans, args.text("note")});
  Effect out;
  out.answer.text = spans.empty() ? fmt::format("{} is off on {}.", who.name, hours::human(day))
                                  : fmt::format("{} works {} on {}.", who.name, spans, hours::human(day));
  out.answer.reason = booked_then(who, day, day, moment, tx);
  out.answer.data = data_of(who, spans);
  return out;
}

Effect part_off(const Actor& who, const Args& args, const Moment& moment, Tx& tx) {
  const Day day = args.opt<Day>("day").value_or(moment.zone.local(moment.now).day);
  refuse_passed(day, moment);
  const Stretch off = part_of(day, args.text("part"), moment.calendar, moment.zone);
  std::vector<hours::Opening> left;
  const auto keep = [&](Instant a, Instant b) {
    if (a < b) left.emplace_back(a, b);
  };
  const auto before = hours_of(who, day, moment, tx);
  for (const auto& [a, b] : before) {
    keep(a, std::min(b, off.from));
    keep(std::max(a, off.to), b);
  }
  if (left == before) {
    throw Problem(Fault::state,
                  fmt::format("{} does not work then as it is, on {}.", who.name, hours::human(day)), "part",
                  "There is nothing to do.");
  }
  return there_only(who, day, left, args, moment, tx);
}

Actor whose_day(const Args& args, const Moment& moment, const Tx& tx) {
  if (args.yes("me")) return *tx.house().actor(moment.who.actor);
  if (!args.has("person"))
    throw Problem(Fault::value, "Whose day is it?", "person", "Say who, such as Ines, or say: I.");
  return person_of(args, tx);
}

Effect day_off(const Args& args, const Moment& moment, Tx& tx) {
  const Actor who = whose_day(args, moment, tx);
  if (args.has("part")) return part_off(who, args, moment, tx);
  if (!args.has("day") && !args.has("week"))
    throw Problem(Fault::value, "On which day?", "day_on", "Say it, such as: Ines is off on 2027-01-04.");
  const DaysAsked asked =
      args.has("week") ? days_asked(args, moment, 1) : DaysAsked{args.get<Day>("day"), 1, "", true, ""};
  const Day first = asked.first, last = args.opt<Day>("last").value_or(first + (asked.count - 1));
  refuse_passed(last, moment);
  if (last < first || last - first >= most_days) {
    throw Problem(Fault::value,
                  last < first ? fmt::format("{} comes before {}.", hours::human(last), hours::human(first))
                               : fmt::format("That is over {} days.", most_days),
                  "last_on", "Give the last day off.");
  }
  for (Day d = first; d <= last; d = d + 1)
    tx.put(OwnDay{0, who.id, d, "", args.text("note")});
  Effect out;
  out.answer.text = first == last ? fmt::format("{} is off on {}.", who.name, hours::human(first))
                                  : fmt::format("{} is off from {} to {}.", who.name, hours::human(first),
                                                hours::human(last));
  out.answer.reason = booked_then(who, first, last, moment, tx);
  out.answer.data = data_of(who, "");
  return out;
}

Effect day_on(const Args& args, const Moment& moment, Tx& tx) {
  const Actor who = whose_day(args, moment, tx);
  const auto begins = args.opt<Instant>("begins"), until = args.opt<Instant>("until");
  const auto said = begins ? begins : until;
  if (!args.has("day") && !said)
    throw Problem(Fault::value, "On which day?", "day_on", "Say it, such as: Ines is in on 2027-01-04.");
  const Day day = args.has("day") ? args.get<Day>("day") : moment.zone.local(*said).day;
  refuse_passed(day, moment);
  if (said) {
    const auto on_day = [&](const std::optional<Instant>& t, Instant otherwise) {
      return t ? moment.zone.instant(day, moment.zone.local(*t).s) : otherwise;
    };
    const Instant from = on_day(begins, moment.zone.instant(day, 0)),
                  to = on_day(until, moment.zone.instant(day, 86400));
    std::vector<hours::Opening> there;
    const auto usual = hours_of(who, day, moment, tx);
    for (const auto& [a, b] : usual)
      if (std::max(a, from) < std::min(b, to)) there.emplace_back(std::max(a, from), std::min(b, to));
    if (there.empty()) {
      throw Problem(Fault::state,
                    fmt::format("{} does not work {} on {}.", who.name, usual.empty() ? "at all" : "then",
                                hours::human(day)),
                    "day_on",
                    fmt::format("Say both times: {} works on {} 10:00-14:00.", who.name, units::print(day)));
    }
    return there_only(who, day, there, args, moment, tx);
  }
  Effect out;
  if (args.has("hours")) {
    const std::string spans = write_spans(read_spans(args.text("hours")));
    if (spans.empty())
      throw Problem(
          Fault::value, "Those are no hours.", "hours",
          fmt::format("To say that somebody is off: {} is off on {}.", who.name, units::print(day)));
    tx.put(OwnDay{0, who.id, day, spans, args.text("note")});
    out.answer.text = fmt::format("{} works {} on {}.", who.name, spans, hours::human(day));
    const auto shop = hours::spans(moment.calendar, moment.zone, day);
    if (shop.empty()) out.answer.reason = "The shop is closed that day: it counts only once that is open.";
    out.answer.data = data_of(who, spans);
    return out;
  }
  for (const OwnDay& own : tx.machines().own_days(day)) {
    if (own.actor != who.id || own.day != day) continue;
    tx.drop({Thing::own_day, own.id});
    out.answer.text = fmt::format("{} works as usual on {}.", who.name, hours::human(day));
    out.answer.data = data_of(who, "");
    return out;
  }
  throw Problem(Fault::state, fmt::format("{} works as usual on {} as it is.", who.name, hours::human(day)),
                "day_on", "There is nothing to do.");
}

const Param whose{"person", Kind::person, false, false, "their name"};
const Param me{"me", Kind::yes, false, false, "you"};
const std::vector<Give> own_gives{{"person", Kind::person, "their number"},
                                  {"hours", Kind::words, "that they work; empty: the shop's, or none"}};

std::vector<std::string_view> off_phrases() {
  static const std::string off =
      "(off|away|out|ill|sick|on holiday|on leave|on vacation|not here|not in|not working|not coming)";
  static const std::string when =
      " [on|for] ([from] {day} [(to|until|till) {last}]|{day} [in the] {part}|this {part}|tonight "
      "{part=evening}|(this|the rest of this) week {week=this}|[all] next week {week=next}) [because {note}]";
  static const std::vector<std::string> made{
      "{person} is " + off + when,
      "(i am|me) " + off + " {me=yes}" + when,
      "{person} (does|will) not (work|come|come in|be in|be here)" + when,
      "i (do not|will not|cannot|can not) (work|come|come in|be in|be here) {me=yes}" + when,
      ("{person} (takes|has|needs|gets) ({day} [{part}]|this {part}|next week {week=next}) off [because "
       "{note}]"),
      ("i (take|have|need|am taking) {me=yes} ({day} [{part}]|this {part}|next week {week=next}) off "
       "[because "
       "{note}]")};
  return {made.begin(), made.end()};
}

} // namespace

extern const Command own_hours_row;
const Command own_hours_row{
    {"own-hours",
     "Says on which days and when somebody works, where that is not whenever the shop is open.",
     {{"person", Kind::person, true, false, "their name"},
      {"days", Kind::weekdays, false, true, "mon-thu, sat …"},
      {"hours", Kind::spans, false, false, "9:00-13:00, or closed; the shop's where not said"}},
     {"{person} works [on] {days} [from] {hours}", "{person} is (in|here) [on] {days} [from] {hours}",
      "(on|every) {days} {person} works [from] {hours}", "[the] hours of {person} [on] {days} are {hours}",
      "{person} does not work [on] {days} {hours=closed}", "{person} works [the] shop hours",
      "{person} works whenever (we are|the shop is) open"},
     {"Ines works monday to thursday 9 to 13", "Ines works whenever the shop is open"},
     Role::lead,
     own_gives},
    &own_hours};

extern const Command day_off_row;
const Command day_off_row{
    {"day-off",
     "Somebody is off for a day, a part of one, or from one day to another.",
     {{"day", Kind::day, false, false, "which, or the first"},
      takes::last_day,
      takes::part_of_day,
      takes::week,
      whose,
      me,
      takes::note},
     off_phrases(),
     {"Ines is off on 2027-01-04", "I am away from 2026-12-21 to 2026-12-24", "I am off this afternoon"},
     Role::bench,
     own_gives},
    &day_off};

extern const Command day_on_row;
const Command day_on_row{
    {"day-on",
     "Somebody works other hours on a day, or works then after all.",
     {{"day", Kind::day, false, false, "which"},
      {"hours", Kind::spans, false, false, "in place of the usual ones; those again where not said"},
      {"begins", Kind::at, false, false, "from when on, of the usual ones"},
      {"until", Kind::at, false, false, "until when, of the usual ones"},
      whose,
      me,
      takes::note},
     {("{person} (comes|comes in|is in|is here|starts|begins) [only] [late] [on] [{day}] (at|from) {begins} "
       "[on]"),
      ("i (come|come in|am in|am here|start|begin|will be in) {me=yes} [only] [late] [on] [{day}] (at|from) "
       "{begins} [on]"),
      "{person} (leaves|goes|goes home|is in|is here|works) [early] [on] [{day}] (at|until|till) {until}",
      ("i (leave|go|go home|am in|am here|work|have to leave) {me=yes} [early] [on] [{day}] (at|until|till) "
       "{until}"),
      "{person} (works|is in|comes in|is here) [only] [on] {day} [from] {hours}",
      "i (work|am in|come in|will be here|am here) {me=yes} [only] [on] {day} [from] {hours}",
      "my hours [on|for] {day} (are|will be) {hours} {me=yes}",
      "[on] {day} {person} (works|is in|is here) [only] [from] {hours}",
      "{person} (works|is in|is here|is not off) [on] {day} (after all|as usual)",
      "i (work|am in|am here|am not off) {me=yes} [on] {day} (after all|as usual)"},
     {"Ines works on 2027-01-05 10:00-12:00", "Ines is in on 2027-01-04 after all",
      "Ines comes in at 10:00 on 2027-01-07"},
     Role::bench,
     own_gives},
    &day_on};

} // namespace nutward::shop::command_rows
