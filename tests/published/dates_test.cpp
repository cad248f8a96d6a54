// Days and instants as people say them, against two programs that read such phrases: GNU date (its own
// wording of the phrase, where it has one, on a clock that faketime stops) and the npm package chrono-node.
// Ours must be theirs; where it is not, its class says why, and that it still is not.
#include "judges.hpp"

#include <fmt/format.h>

#include <optional>

using namespace nutward;
using namespace nutward::published;

namespace {

enum class About { coming, past, ahead }; // a deadline; what has happened; what is to begin

struct Phrase {
  std::string said;
  std::string gnu; // as GNU date words it; empty where it cannot
};

struct PhraseClass {
  const char* name;
  About about;
  bool day; // a calendar day; else an instant
  std::vector<Phrase> phrases;
  // Why ours is another meaning, where theirs are not one; empty: it is the same.
  std::string not_as_date{}, not_as_chrono{};
  std::string not_as_both{}; // though both have the same
  bool nearest = false;      // chrono-node is not told to look ahead
};

constexpr std::array weekdays{"monday", "tuesday", "wednesday", "thursday", "friday", "saturday",
                              "sunday", "mon",     "tue",       "wed",      "thu",    "fri",
                              "sat",    "sun",     "tues",      "thurs"};
constexpr std::array month_names{"january", "february", "march",     "april",   "may",      "june",
                                 "july",    "august",   "september", "october", "november", "december"};
constexpr std::array numbers{"one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"};

template <class Words, class Make>
std::vector<Phrase> each(const Words& words, Make make) {
  std::vector<Phrase> out;
  for (const auto& word : words)
    make(out, word);
  return out;
}

constexpr const char* after_noon =
    "from noon on it takes today's weekday for next week's; ours is today until it ends";
constexpr const char* no_past = "it is not told that the phrase is about what has happened";

std::vector<PhraseClass> weekday_classes() {
  const auto with = [](const std::string& before, const std::string& gnu) {
    return each(weekdays, [&](auto& out, const std::string& day) {
      out.push_back({before + day, gnu + day});
    });
  };
  std::vector<PhraseClass> out;
  for (const char* before : {"", "on ", "this "}) {
    out.push_back({"a weekday to come: the first from today on", About::coming, true, with(before, "")});
    out.back().not_as_chrono = after_noon;
  }
  out.push_back({"next weekday: the first after today", About::coming, true, with("next ", "next ")});
  out.back().not_as_chrono =
      "it means next week's, as many people do; others mean the very next. The answer has the full date.";
  out.push_back({"last weekday: the first before today", About::coming, true, with("last ", "last ")});
  out.back().nearest = true;
  out.push_back({"a weekday in the past: the last one, today's today", About::past, true, with("", "")});
  out.back().not_as_date = out.back().not_as_chrono = out.back().not_as_both = no_past;
  out.back().nearest = true;
  return out;
}

std::string count(int n, const std::string& unit) {
  return fmt::format("{} {}{}", n, unit, n == 1 ? "" : "s");
}

// GNU date is asked for noon of that day: of a phrase alone it counts hours, and carries them over a change
// of clocks.
std::vector<PhraseClass> counted_days() {
  PhraseClass to_come{"days and weeks to come", About::coming, true, {}};
  PhraseClass ago{"days and weeks ago", About::past, true, {}};
  const auto both = [&](const std::string& said, const std::string& gnu) {
    to_come.phrases.push_back({"in " + said, "12:00 " + gnu});
    to_come.phrases.push_back({said + " from now", "12:00 " + gnu});
    ago.phrases.push_back({said + " ago", "12:00 " + gnu + " ago"});
  };
  for (int n = 1; n <= 25; ++n) {
    for (const char* unit : {"day", "week"})
      both(count(n, unit), count(n, unit));
  }
  for (int n = 2; n <= 10; ++n)
    both(fmt::format("{} weeks", numbers[static_cast<std::size_t>(n - 1)]), count(n, "week"));
  for (const char* unit : {"day", "week", "fortnight"})
    both(std::string("a ") + unit, std::string("1 ") + unit);
  both("a couple of days", "2 days");
  return {to_come, ago};
}

std::vector<PhraseClass> counted_months() {
  PhraseClass to_come{
      "months and years to come, the last day of a month that is shorter", About::coming, true, {}};
  PhraseClass ago{"months and years ago", About::past, true, {}};
  const auto both = [&](const std::string& said, const std::string& gnu) {
    to_come.phrases.push_back({"in " + said, "12:00 " + gnu});
    ago.phrases.push_back({said + " ago", "12:00 " + gnu + " ago"});
  };
  for (int n = 1; n <= 14; ++n)
    both(count(n, "month"), count(n, "month"));
  both("a month", "1 month"), both("two years", "2 years"), both("a year", "1 year");
  for (PhraseClass* c : {&to_come, &ago})
    c->not_as_date = c->not_as_chrono = c->not_as_both =
        "they count on into the month behind: two months after 31 December is 3 March to them";
  PhraseClass last{"the end of a month", About::coming, true, {{"end of the month", ""}}};
  return {to_come, ago, last};
}

std::vector<PhraseClass> elapsed() {
  PhraseClass to_come{"hours and minutes to come", About::ahead, false, {}};
  PhraseClass ago{"hours and minutes ago", About::past, false, {}};
  const auto both = [&](const std::string& said, const std::string& gnu) {
    to_come.phrases.push_back({"in " + said, gnu});
    to_come.phrases.push_back({said + " from now", gnu});
    ago.phrases.push_back({said + " ago", gnu + " ago"});
  };
  for (int n = 1; n <= 25; ++n) {
    both(count(n, "hour"), count(n, "hour"));
    both(count(n, "minute"), count(n, "minute"));
    both(fmt::format("{} h", n), count(n, "hour"));
  }
  for (const int n : {30, 48, 72, 90, 100, 120})
    both(count(n, "hour"), count(n, "hour"));
  for (const int n : {30, 45, 90, 100})
    both(count(n, "min"), count(n, "min"));
  for (int n = 2; n <= 10; ++n)
    both(fmt::format("{} hours", numbers[static_cast<std::size_t>(n - 1)]), count(n, "hour"));
  both("an hour", "1 hour"), both("half an hour", "30 minutes"), both("a minute", "1 minute");
  both("2.5 hours", "150 minutes"), both("1.25 hours", "75 minutes"), both("1 1/2 hours", "90 minutes");
  both("one and a half hours", "90 minutes"), both("an hour and a half", "90 minutes");
  both("1 h 30 min", "90 minutes");
  to_come.phrases.push_back({"in 2 hours and 15 minutes", "135 minutes"});
  ago.phrases.push_back({"1 hour 30 minutes ago", "90 minutes ago"});
  ago.phrases.push_back({"2 hours and 15 minutes ago", "135 minutes ago"});
  PhraseClass quarter{
      "hours and a quarter",
      About::ahead,
      false,
      {{"in two hours and a quarter", "135 minutes"}, {"in an hour and a quarter", "75 minutes"}}};
  quarter.not_as_chrono = "a quarter is three months to it";
  return {to_come, ago, quarter};
}

std::vector<PhraseClass> date_classes() {
  PhraseClass full{"full dates", About::coming, true, {}};
  PhraseClass bare{"dates without a year: the next one", About::coming, true, {}};
  PhraseClass past{"dates without a year in the past: the last one", About::past, true, {}};
  for (int m = 1; m <= 12; ++m) {
    const std::string name = month_names[static_cast<std::size_t>(m - 1)], brief = name.substr(0, 3);
    for (const int d : {1, 12, 23, 28}) {
      const std::string th = d == 1    ? "st"
                             : d == 23 ? "rd"
                                       : "th",
                        gnu = fmt::format("2027-{:02}-{:02}", m, d);
      const std::string day = fmt::format("{} {}", d, name);
      for (const std::string& said :
           {gnu, fmt::format("2027/{:02}/{:02}", m, d), day + " 2027", fmt::format("{} {}, 2027", name, d),
            fmt::format("{}{} of {} 2027", d, th, name), fmt::format("the {}{} of {}, 2027", d, th, name),
            fmt::format("{} {} 2027", d, brief)})
        full.phrases.push_back({said, gnu});
      if (d > 12 || d == m) {
        full.phrases.push_back({fmt::format("{}/{}/2027", d, m), gnu});
        full.phrases.push_back({fmt::format("{}/{}/2027", m, d), gnu});
        full.phrases.push_back({fmt::format("{:02}.{:02}.2027", d, m), gnu});
      }
      for (const std::string& said :
           {day, fmt::format("{} {}", name, d), fmt::format("{}{} {}", d, th, name),
            fmt::format("{} {}{}", brief, d, th), fmt::format("{}{} of {}", d, th, name)})
        bare.phrases.push_back({said, day});
      past.phrases.push_back({day, day});
    }
  }
  full.phrases.insert(full.phrases.end(), {{"29 february 2028", "2028-02-29"},
                                           {"wednesday, 2 december 2026", "2026-12-02"},
                                           {"wed 2 dec 2026", "2026-12-02"},
                                           {"on 2 december 2026", "2026-12-02"}});
  bare.not_as_date = "it takes the year that is; what is due is to come";
  past.not_as_date = past.not_as_chrono = past.not_as_both = no_past;
  past.nearest = true;
  return {full, bare, past};
}

struct Clock {
  const char *said, *gnu;
};
constexpr std::array clocks{Clock{"15:00", "15:00"},   Clock{"9:30", "9:30"},      Clock{"3 pm", "3 pm"},
                            Clock{"3pm", "3 pm"},      Clock{"9:15 am", "9:15"},   Clock{"12:30 pm", "12:30"},
                            Clock{"12:30 am", "0:30"}, Clock{"12 am", "0:00"},     Clock{"12 pm", "12:00"},
                            Clock{"noon", "12:00"},    Clock{"8 o'clock", "8:00"}, Clock{"0:15", "0:15"},
                            Clock{"23:59", "23:59"},   Clock{"07:05", "7:05"}};

std::vector<PhraseClass> clock_classes() {
  PhraseClass dated{"a day and a time to come", About::ahead, false, {}};
  PhraseClass past{"a day and a time in the past", About::past, false, {}};
  PhraseClass weekday{"a weekday and a time to come", About::ahead, false, {}};
  PhraseClass alone{"a time alone: the next", About::ahead, false, {}};
  for (const Clock& c : clocks) {
    for (const char* day : {"tomorrow", "today", "2026-12-12", "12 december 2027"}) {
      dated.phrases.push_back({fmt::format("{} at {}", day, c.said), fmt::format("{} {}", day, c.gnu)});
      dated.phrases.push_back({fmt::format("{} {}", day, c.said), fmt::format("{} {}", day, c.gnu)});
    }
    dated.phrases.push_back({fmt::format("{} tomorrow", c.said), fmt::format("{} tomorrow", c.gnu)});
    past.phrases.push_back({fmt::format("yesterday at {}", c.said), fmt::format("yesterday {}", c.gnu)});
    past.phrases.push_back({fmt::format("{} yesterday", c.said), fmt::format("yesterday {}", c.gnu)});
    for (const char* day : {"friday", "sat", "wednesday"}) {
      weekday.phrases.push_back({fmt::format("{} at {}", day, c.said), fmt::format("{} {}", day, c.gnu)});
      weekday.phrases.push_back({fmt::format("{} on {}", c.said, day), fmt::format("{} {}", day, c.gnu)});
    }
    alone.phrases.push_back({c.said, c.gnu});
    alone.phrases.push_back({fmt::format("at {}", c.said), c.gnu});
  }
  dated.phrases.insert(dated.phrases.end(), {{"2026-12-12T15:00:00Z", "2026-12-12T15:00:00Z"},
                                             {"2026-12-12T15:00:00+05:30", "2026-12-12T15:00:00+05:30"}});
  alone.phrases.push_back({"midnight", "tomorrow 0:00"});
  weekday.not_as_date =
      "it takes today's weekday for today though that time is over; what is to begin is to come";
  alone.not_as_date = "it takes today's though it is over; what is to begin is to come";
  return {dated, past, weekday, alone};
}

std::vector<PhraseClass> classes() {
  std::vector<PhraseClass> out{{"days by name",
                                About::coming,
                                true,
                                {{"today", "today"},
                                 {"tomorrow", "tomorrow"},
                                 {"yesterday", "yesterday"},
                                 {"tonight", "today"},
                                 {"the day after tomorrow", "12:00 2 days"},
                                 {"the day before yesterday", "12:00 2 days ago"},
                                 {"this morning", "today"},
                                 {"this afternoon", "today"},
                                 {"this evening", "today"}}}};
  out.back().nearest = true;
  for (auto make : {weekday_classes, counted_days, counted_months, elapsed, date_classes, clock_classes}) {
    for (PhraseClass& c : make())
      out.push_back(std::move(c));
  }
  return out;
}

// Europe/Berlin. The clocks go back on 25 October 2026 and forward on 28 March 2027. None is a time of day
// that a phrase names: what is to come is behind now.
constexpr std::array nows{"2026-11-25 10:00:00", "2026-11-27 23:50:00", "2026-12-06 00:10:00",
                          "2026-12-31 12:01:00", "2028-02-29 08:15:00", "2027-01-31 16:45:00",
                          "2027-03-27 20:00:00", "2026-10-24 15:20:00"};

shop::Param param_of(const PhraseClass& c) {
  const char* name = c.about == About::past ? "since" : c.about == About::ahead ? "until" : "due";
  return {name, c.day ? shop::Kind::day : shop::Kind::at, false, false, "what it is"};
}

// The day or the instant as a text, so that days and instants are compared alike.
std::string shown(const hours::Zone& zone, bool day, units::Instant t) {
  return day ? zone.rfc3339(t).substr(0, 10) : zone.rfc3339(t);
}
std::string shown(const hours::Zone& zone, const shop::Value& value) {
  if (const auto* day = std::get_if<units::Day>(&value))
    return shown(zone, true, zone.instant(*day, 12 * 3600));
  const auto* at = std::get_if<units::Instant>(&value);
  return at == nullptr ? "(not read)" : shown(zone, false, *at);
}

struct Verdict {
  std::string ours, date{}, chrono{}; // empty: it was not asked, or reads no such phrase
};

// Every phrase of every class, at every time: one run of each judge's program for all that it is asked at one
// time.
class Bench {
public:
  explicit Bench(bool by_chrono) {
    for (const char* now : nows)
      ask_date(now);
    if (by_chrono) chrono_ = answers("TZ=Europe/Berlin " + by_node("dates"), to_chrono_);
  }

  const std::vector<PhraseClass>& classes() const { return classes_; }

  Verdict verdict(const PhraseClass& c, const Phrase& p) {
    const units::Instant now = times_[at_];
    Verdict v{shown(shop_.zone(), shop_.read(param_of(c), p.said, now))};
    if (!p.gnu.empty()) v.date = shown(shop_.zone(), c.day, dates_[date_++]);
    if (!chrono_.empty() && chrono_[at_] != "-") {
      const units::Instant t{std::stoll(chrono_[at_])};
      // Over a change of clocks it counts hours for days, and takes the hour twice for hours: date judges
      // these.
      if (offset(t) == offset(now)) v.chrono = shown(shop_.zone(), c.day, t);
    }
    ++at_;
    return v;
  }

private:
  std::string offset(units::Instant t) const { return shop_.zone().rfc3339(t).substr(19); }

  void ask_date(const std::string& clock) {
    const std::string date = "TZ=Europe/Berlin LC_ALL=C faketime -f '" + clock + "' date -f - +%s";
    std::vector<std::string> asked{"now"};
    for (const PhraseClass& c : classes_) {
      for (const Phrase& p : c.phrases) {
        if (!p.gnu.empty()) asked.push_back(p.gnu);
      }
    }
    asked = answers(date, asked);
    const units::Instant now{std::stoll(asked.front())};
    for (std::size_t k = 1; k < asked.size(); ++k)
      dates_.push_back({std::stoll(asked[k])});
    for (const PhraseClass& c : classes_) {
      for (const Phrase& p : c.phrases) {
        times_.push_back(now);
        to_chrono_.push_back(fmt::format("{}\t{}\t{}", now.s, c.nearest ? "nearest" : "forward", p.said));
      }
    }
  }

  std::vector<PhraseClass> classes_ = ::classes();
  OneValue shop_;
  std::vector<units::Instant> times_, dates_;
  std::vector<std::string> to_chrono_, chrono_;
  std::size_t at_ = 0, date_ = 0;
};

struct Counted {
  std::size_t not_date = 0, not_chrono = 0, by_date = 0, by_chrono = 0;
};

void compare(const PhraseClass& c, const Verdict& v, Counted& n) {
  const bool off_date = !v.date.empty() && v.date != v.ours;
  const bool off_chrono = !v.chrono.empty() && v.chrono != v.ours;
  n.not_date += off_date, n.not_chrono += off_chrono;
  n.by_date += !v.date.empty(), n.by_chrono += !v.chrono.empty();
  CHECK(v.ours != "(not read)");
  if (off_date && c.not_as_date.empty()) CHECK(v.ours == v.date);
  if (off_chrono && c.not_as_chrono.empty()) CHECK(v.ours == v.chrono);
  if (v.date == v.chrono && c.not_as_both.empty() && off_date) CHECK(v.ours == v.date);
}

void judge(bool by_chrono) {
  Bench bench{by_chrono};
  std::vector<Counted> counted(bench.classes().size());
  std::size_t phrases = 0, agreed = 0;
  for (const char* now : nows) {
    for (std::size_t k = 0; k < counted.size(); ++k) {
      const PhraseClass& c = bench.classes()[k];
      for (const Phrase& p : c.phrases) {
        const Verdict v = bench.verdict(c, p);
        INFO(c.name << ": '" << p.said << "' at " << now << ": date " << v.date << ", chrono-node "
                    << v.chrono);
        compare(c, v, counted[k]);
        ++phrases, agreed += !v.date.empty() && v.date == v.chrono;
      }
    }
  }
  CHECK(phrases / nows.size() >= 500);
  if (by_chrono) CHECK(agreed / nows.size() >= 500);
  for (std::size_t k = 0; k < counted.size(); ++k) {
    const PhraseClass& c = bench.classes()[k];
    INFO(c.name
         << ": it is judged, and where a reason is given why ours is not theirs, there is such a phrase");
    CHECK((c.not_as_date.empty() || counted[k].not_date > 0));
    if (by_chrono) CHECK(counted[k].by_date + counted[k].by_chrono > 0);
    if (by_chrono) CHECK((c.not_as_chrono.empty() || counted[k].not_chrono > 0));
  }
}

} // namespace

TEST_CASE("days and times as said are those of GNU date") {
  if (installed("faketime", "how days and times are said")) judge(false);
}

TEST_CASE("days and times as said are those of GNU date and chrono-node where these agree", "[.npm]") {
  judge(true);
}
