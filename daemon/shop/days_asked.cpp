#include "shop/days_asked.hpp"

#include "shop/agenda_words.hpp"

namespace nutward::shop {

namespace {

constexpr std::int32_t hour_s = 3600, day_s = 86400;

// Where the break about noon begins and ends.
std::pair<std::int32_t, std::int32_t> noon_of(const std::vector<hours::Opening>& open,
                                              const hours::Zone& zone) {
  for (std::size_t i = 0; i + 1 < open.size(); ++i) {
    const std::int32_t s = zone.local(open[i].second).s;
    if (s >= 11 * hour_s && s <= 15 * hour_s) return {s, zone.local(open[i + 1].first).s};
  }
  return {12 * hour_s, 12 * hour_s};
}

void check_one_way(const Args& args) {
  const bool day = args.has("day") || args.has("part") || args.has("last");
  // A day that was said of a week that was asked about ("and friday?") is that day.
  if (!args.has("days") || (day && !args.has("last")) || !(args.has("week") || args.has("last"))) return;
  throw Problem(Fault::value, "Those are two stretches of time at once.", args.has("week") ? "week" : "days",
                "Say a day, a first and a last day, a week, or how many days.");
}

} // namespace

DaysAsked days_asked(const Args& args, const Moment& moment, int usual, int most) {
  check_one_way(args);
  const Day today = moment.zone.local(moment.now).day;
  DaysAsked out;
  out.first = args.opt<Day>("day").value_or(today);
  out.said = args.has("day") || args.has("part") || args.has("week") || args.has("days");
  out.part = args.text("part");
  const bool one = args.has("day") || args.has("part");
  if (!one) out.week = args.text("week");
  out.count = static_cast<int>(args.or_else<std::int64_t>("days", one ? 1 : usual));
  if (!out.part.empty()) out.count = 1;
  if (out.week == "this") out.count = 7 - today.weekday();
  if (out.week == "next") out.first = today + (7 - today.weekday()), out.count = 7;
  const Day last = args.opt<Day>("last").value_or(out.first);
  if (args.has("last")) out.count = static_cast<int>(last - out.first) + 1;
  if (out.count < 1 || out.count > most) {
    throw Problem(Fault::value,
                  out.count < 1
                      ? fmt::format("{} comes before {}.", hours::human(last), hours::human(out.first))
                      : fmt::format("That is over {} days.", most),
                  args.has("last") ? "last_on" : "days", "Give a last day that comes soon after the first.");
  }
  return out;
}

Stretch part_of(Day day, std::string_view part, const hours::Calendar& calendar, const hours::Zone& zone) {
  const auto open = hours::spans(calendar, zone, day);
  const auto [noon, after] = noon_of(open, zone);
  std::int32_t night = day_s;
  if (!open.empty()) {
    const hours::LocalTime closing = zone.local(open.back().second);
    if (closing.day > day || closing.s > 20 * hour_s) night = 18 * hour_s;
  }
  if (part == "morning") return {zone.instant(day, 0), zone.instant(day, noon)};
  if (part == "afternoon") return {zone.instant(day, after), zone.instant(day, night)};
  if (part == "evening")
    return {zone.instant(day, night == day_s ? 17 * hour_s : night), zone.instant(day, day_s)};
  return {zone.instant(day, 0), zone.instant(day, day_s)};
}

Stretch stretch_of(const DaysAsked& days, const Moment& moment) {
  if (!days.part.empty()) return part_of(days.first, days.part, moment.calendar, moment.zone);
  return {moment.zone.instant(days.first, 0), moment.zone.instant(days.first + days.count, 0)};
}

std::string words_of(const DaysAsked& days, const Moment& moment, bool preposition) {
  const Day today = moment.zone.local(moment.now).day;
  if (!days.week.empty()) return days.week + " week";
  const std::string first = day_words(days.first, moment);
  const bool plain = days.first == today || days.first == today + 1;
  if (days.count == 1 && days.said) {
    std::string on = preposition && !plain ? "on " + first : first;
    if (days.part.empty()) return on;
    return days.first == today       ? "this " + days.part
           : days.first == today + 1 ? "tomorrow " + days.part
                                     : fmt::format("{} in the {}", on, days.part);
  }
  if (days.first == today)
    return fmt::format("{}the next {}", preposition ? "in " : "", plural(days.count, "day"));
  return fmt::format("{}{} to {}", preposition ? "from " : "", first,
                     day_words(days.first + (days.count - 1), moment));
}

} // namespace nutward::shop
