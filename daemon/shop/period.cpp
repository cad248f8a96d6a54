#include "shop/period.hpp"

#include "hours/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>

namespace nutward::shop {

namespace {

using std::chrono::months;
using std::chrono::year_month;

constexpr std::array<std::string_view, 12> names{"january",   "february", "march",    "april",
                                                 "may",       "june",     "july",     "august",
                                                 "september", "october",  "november", "december"};

Instant starts(year_month m, const Moment& moment) {
  return moment.zone.instant(Day::from(m / std::chrono::day{1}), 0);
}

year_month month_at(Instant t, const Moment& moment) {
  const auto day = moment.zone.local(t).day.ymd();
  return day.year() / day.month();
}

std::string named(year_month m) {
  return fmt::format("{} {}", sentence(std::string(names.at(static_cast<unsigned>(m.month()) - 1))),
                     static_cast<int>(m.year()));
}

Period of_month(year_month m, const Moment& moment) {
  return {starts(m, moment), starts(m + months{1}, moment), "in " + named(m)};
}

Period of_year(std::chrono::year y, const Moment& moment) {
  using std::chrono::January;
  return {starts(y / January, moment), starts((y + std::chrono::years{1}) / January, moment),
          fmt::format("in {}", static_cast<int>(y))};
}

bool is_name(std::string_view word) {
  return std::find(names.begin(), names.end(), word) != names.end();
}

// A month without a year is the last one of that name that has begun.
year_month named_month(std::string_view name, std::optional<std::int64_t> year, const Moment& moment) {
  const auto at = std::find(names.begin(), names.end(), name);
  const std::chrono::month m{static_cast<unsigned>(at - names.begin()) + 1};
  if (year) return std::chrono::year{static_cast<int>(*year)} / m;
  const year_month current = month_at(moment.now, moment), there = current.year() / m;
  return there > current ? there - std::chrono::years{1} : there;
}

Period of_days(const std::optional<Day>& from, const std::optional<Day>& until, const Moment& moment) {
  Period out;
  if (from && until && *until < *from) {
    throw Problem(Fault::value, "The last day lies before the first.", "until_on",
                  "Give the later day as the last.");
  }
  if (from) out.from = moment.zone.instant(*from, 0);
  if (until) out.before = moment.zone.instant(*until + 1, 0);
  out.words = (from ? "from " + hours::human(*from) : "") + (from && until ? " " : "") +
              (until ? "until " + hours::human(*until) : "");
  return out;
}

} // namespace

std::vector<std::string_view> month_words() {
  return {names.begin(), names.end()};
}

std::vector<std::string_view> period_words() {
  auto out = month_words();
  out.insert(out.end(), {"this_month", "last_month", "this_year", "last_year", "all_time"});
  return out;
}

Period period_of(const Args& args, std::string_view first, std::string_view otherwise, const Moment& moment) {
  const auto from = args.opt<Day>(first), until = args.opt<Day>("until");
  const auto year = args.opt<std::int64_t>("year");
  const std::string month = args.has("month") ? args.text("month") : std::string(otherwise);
  const bool days = from || until;
  if ((days && args.has("month")) || (year && (days || !args.has("month") || !is_name(month)))) {
    throw Problem(Fault::value, "Those are two periods at once.", days ? std::string(first) + "_on" : "year",
                  "Say a month by its name, with a year or without, or a first and a last day.");
  }
  if (days) return of_days(from, until, moment);
  if (month == "all_time") return {beginning, no_end, "since the beginning"};
  if (is_name(month)) return of_month(named_month(month, year, moment), moment);
  const year_month current = month_at(moment.now, moment);
  if (month == "this_year") return of_year(current.year(), moment);
  if (month == "last_year") return of_year(current.year() - std::chrono::years{1}, moment);
  return of_month(month == "last_month" ? current - months{1} : current, moment);
}

Period since_month(std::string_view name, const Moment& moment) {
  const year_month m = named_month(name, {}, moment);
  return {starts(m, moment), no_end, "since " + named(m)};
}

std::vector<Period> months_of(const Period& period, Instant earliest, Instant latest, const Moment& moment) {
  const Instant from = std::max(period.from, earliest);
  const Instant last = std::min(period.before - std::chrono::seconds{1}, latest);
  std::vector<Period> out;
  if (last < from) return out;
  for (year_month m = month_at(from, moment), end = month_at(last, moment); m <= end; m += months{1}) {
    out.push_back({std::max(from, starts(m, moment)),
                   std::min(last + std::chrono::seconds{1}, starts(m + months{1}, moment)),
                   fmt::format("{:04}-{:02}", static_cast<int>(m.year()), static_cast<unsigned>(m.month()))});
  }
  return out;
}

} // namespace nutward::shop
