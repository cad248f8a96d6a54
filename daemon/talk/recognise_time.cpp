// Days and instants, in the shop's zone. "tomorrow" is a calendar day, "in 24 h" is elapsed time. A bare
// weekday is the first one from today on, "next friday" the first after today, "last friday" the one before;
// where it is about what has happened (a parameter called `at`, `happened` or `since`), a day or time without
// more words lies in the past. Where it is about what is to come (`until`, `begins`, `again`), a day alone is
// its beginning, a time alone the next one, and an hour alone up to 6 one of the afternoon.
#include "talk/time_said.hpp"

#include <array>
#include <chrono>
#include <optional>

namespace nutward::talk {
namespace {

using units::Day;
using units::Instant;

struct SaidDay {
  Day day;
  std::size_t end = 0;
  std::optional<std::int32_t> s{}; // a time of day that the words imply
  bool weekday = false;            // said by its name alone: a week later where that is over
};

class Times {
public:
  Times(const Reader& in, bool past, bool ahead) : in_(in), past_(past), ahead_(ahead), local_(in.local()) {}

  // {the instant, its end}
  std::vector<Said> instants(std::size_t i) const {
    if (auto s = iso_instant(i)) return {*s};
    if (in_.is(i, "now")) return {{i + 1, in_.now}};
    if (in_.is(i, "just") && in_.is(i + 1, "now")) return {{i + 2, in_.now}};
    if (auto e = elapsed_at(i, in_)) return {{e->end, e->at}};
    std::vector<Said> out;
    if (auto d = day(i)) {
      std::size_t next = d->end;
      if (in_.is(next, ",")) ++next;
      const bool at = in_.any(next, {"at", "around", "by"});
      if (auto c = clock_at(at ? next + 1 : next, at, in_))
        out.push_back({c->end, to_come(*d, worked(d->day, *c))});
      if (auto p = ahead_ ? part(next) : std::nullopt) out.push_back({p->end, to_come(*d, p->s)});
      Said alone{d->end, to_come(*d, d->s.value_or(ahead_ ? 0 : local_.s))};
      alone.whole_day = !d->s && (i == 0 || !in_.any(i - 1, {"until", "till", "til"})),
      alone.weekday = d->weekday;
      out.push_back(std::move(alone));
      return out;
    }
    const bool at = in_.is(i, "at");
    auto c = clock_at(at ? i + 1 : i, at || ahead_ || (i > 0 && in_.is(i - 1, "since")), in_);
    if (!c && ahead_) c = part(i);
    if (!c) return out;
    std::size_t next = c->end;
    if (in_.is(next, "on")) ++next;
    if (auto d = day(next)) out.push_back({d->end, to_come(*d, worked(d->day, *c))});
    Said clock{c->end, ahead_ ? next_at(*c) : on(local_.day, worked(local_.day, *c))};
    clock.clock_alone = true;
    out.push_back(std::move(clock));
    return out;
  }

  // `exact`: a day itself is meant, and no week as the day by which something has happened.
  std::vector<Said> days(std::size_t i, bool exact) const {
    if (auto d = day(i)) return {{d->end, d->day, {}, false, 0, 0, d->weekday}};
    if (auto w = exact ? std::nullopt : week(i)) return {{w->end, w->day}};
    if (auto e = elapsed_at(i, in_)) return {{e->end, in_.names.zone->local(e->at).day}};
    return {};
  }

private:
  std::int32_t later(const SaidClock& c) const {
    return ahead_ && (c.bare || c.spoken) && c.s <= 6 * 3600 && c.s > 0 ? 12 * 3600 : 0;
  }

  // "Yesterday at five": the half of the day that is nearer to the opening hours; never one still to come.
  std::int32_t worked(Day day, const SaidClock& c) const {
    constexpr std::int32_t half = 12 * 3600;
    if (past_ && c.s == 2 * half && on(day, c.s) > in_.now)
      return 0; // midnight, on its day: the one that was
    if (!past_ || c.halved || c.padded || c.s == 0 || c.s >= half) return c.s + later(c);
    if (on(day, c.s + half) > in_.now) return c.s;
    const auto away = [&](std::int32_t s) { // seconds from the nearest opening
      const Instant t = on(day, s);
      std::optional<std::int64_t> least;
      for (const auto& [from, to] : hours::spans(in_.names.calendar, *in_.names.zone, day)) {
        const std::int64_t out = t < from ? (from - t).count() : t > to ? (t - to).count() : 0;
        if (!least || out < *least) least = out;
      }
      return least;
    };
    const auto early = away(c.s), late = away(c.s + half);
    constexpr std::int32_t nobody_works = 7 * 3600; // before it, where a shop is open all day
    if (early && late && *early == *late && c.s < nobody_works) return c.s + half;
    return early && late && *late < *early ? c.s + half : c.s;
  }

  Instant to_come(const SaidDay& d, std::int32_t s) const {
    const Instant t = on(d.day, s);
    return ahead_ && d.weekday && t <= in_.now ? on(d.day + 7, s) : t;
  }

  Instant next_at(const SaidClock& c) const {
    const Instant t = on(local_.day, c.s + later(c));
    return t > in_.now ? t : on(local_.day + 1, c.s + later(c));
  }

  // "after lunch", "in the afternoon": the shop moves it into its hours.
  std::optional<SaidClock> part(std::size_t i) const {
    if (in_.is(i, "after") && in_.is(i + 1, "lunch")) return SaidClock{13 * 3600, i + 2};
    const std::size_t at = in_.is(i, "in") && in_.is(i + 1, "the") ? i + 2 : i;
    if (in_.any(at, {"morning", "afternoon", "evening"})) {
      const int hour = in_.is(at, "morning") ? 6 : in_.is(at, "afternoon") ? 13 : 17;
      return SaidClock{hour * 3600, at + 1};
    }
    return std::nullopt;
  }

  // "next week" as a day is the last working day of it: by then it should have happened.
  std::optional<SaidDay> week(std::size_t i) const {
    const std::size_t at = in_.is(i, "end") && in_.is(i + 1, "of") ? i + 2 : i;
    const bool next = in_.is(at, "next");
    if (past_ || !(next || in_.is(at, "this")) || !in_.is(at + 1, "week")) return std::nullopt;
    return SaidDay{local_.day + (4 - local_.day.weekday() + (next ? 7 : 0)), at + 2};
  }

  Instant on(Day day, std::int32_t s) const { return in_.names.zone->instant(day, s); }

  std::optional<Said> iso_instant(std::size_t i) const {
    const std::string_view run = in_.run(i);
    if (run.size() < 16 || run.find('-') != 4 || (run[10] != 'T' && run[10] != 't')) return std::nullopt;
    try {
      const Instant t = units::read_instant(run);
      auto end = in_.original_end(in_.at(i)->begin + run.size());
      return end ? std::optional{Said{*end, t}} : std::nullopt;
    } catch (const units::BadQuantity& bad) {
      if (!in_.trouble.set()) in_.trouble = {bad.what(), bad.would_do};
      return std::nullopt;
    }
  }

  std::optional<SaidDay> day(std::size_t i) const {
    if (in_.at(i) == nullptr) return std::nullopt;
    if (in_.is(i, "today")) return SaidDay{local_.day, i + 1};
    if (in_.is(i, "tonight")) return SaidDay{local_.day, i + 1, 20 * 3600};
    if (in_.is(i, "yesterday")) return SaidDay{local_.day - 1, i + 1};
    if (past_ && in_.is(i, "last") && in_.any(i + 1, {"night", "evening"}))
      return SaidDay{local_.day - 1, i + 2, 19 * 3600};
    if (in_.any(i, {"tomorrow", "morrow"})) return SaidDay{local_.day + 1, i + 1};
    if (in_.is(i, "the") && in_.is(i + 1, "morrow")) return SaidDay{local_.day + 1, i + 2};
    if (in_.is(i, "this") && in_.any(i + 1, {"morning", "afternoon", "evening"})) {
      const std::int32_t s = in_.is(i + 1, "morning")     ? 9 * 3600
                             : in_.is(i + 1, "afternoon") ? 15 * 3600
                                                          : 19 * 3600;
      return SaidDay{local_.day, i + 2, past_ ? std::min(s, local_.s) : s};
    }
    const std::size_t the = in_.is(i, "the") ? i + 1 : i;
    if (in_.is(the, "day") && in_.is(the + 1, "after") && in_.is(the + 2, "tomorrow"))
      return SaidDay{local_.day + 2, the + 3};
    if (in_.is(the, "day") && in_.is(the + 1, "before") && in_.is(the + 2, "yesterday"))
      return SaidDay{local_.day - 2, the + 3};
    if (auto d = counted_day(i, in_)) return said(d);
    if (auto d = feast(in_.is(i, "on") ? i + 1 : i)) {
      // "New year's eve, 31 december".
      const auto dated = in_.is(d->end, ",") ? date(d->end + 1) : std::nullopt;
      return dated && dated->day == d->day ? dated : d;
    }
    if (in_.is(the, "end") && in_.is(the + 1, "of")) return end_of(the + 2);
    if (auto d = weekday(in_.is(i, "on") ? i + 1 : i)) {
      // "Sunday 13 December", "Monday the 30th": the date counts.
      if (auto dated = date(in_.is(d->end, ",") ? d->end + 1 : d->end)) return dated;
      return d;
    }
    return date(in_.is(i, "on") ? i + 1 : i);
  }

  // Days that the calendar knows by a name of their own. Those that move (Easter) are not the same
  // everywhere.
  std::optional<SaidDay> feast(std::size_t i) const {
    const bool next = in_.any(i, {"next", "this", "last"}) && in_.any(i + 1, {"christmas", "new"});
    const bool last = next && in_.is(i, "last");
    std::size_t at = next ? i + 1 : i;
    unsigned m = 12;
    std::int64_t d = 25;
    if (in_.is(at, "christmas")) {
      if (in_.is(++at, "eve")) d = 24, ++at;
      if (in_.is(at, "day")) ++at;
    } else if (in_.is(at, "boxing") && in_.is(at + 1, "day")) {
      d = 26, at += 2;
    } else if (in_.is(at, "new") && in_.any(at + 1, {"year", "years", "year's"})) {
      at += 2;
      const bool eve = in_.is(at, "eve");
      if (eve) d = 31;
      if (!eve) m = 1, d = 1;
      if (eve || in_.is(at, "day")) ++at;
    } else {
      return std::nullopt;
    }
    auto out = with_year(m, d, at);
    if (out && last && out->day >= local_.day)
      out = made(static_cast<int>(out->day.ymd().year()) - 1, m, d, out->end);
    return out;
  }

  // "end of the week", "end of next week": its Friday. "End of the month": its last day.
  std::optional<SaidDay> end_of(std::size_t i) const {
    const bool next = in_.is(i, "next");
    if (in_.any(i, {"next", "the", "this"})) ++i;
    if (in_.is(i, "month")) {
      const auto ymd = local_.day.ymd();
      const std::chrono::year_month month{ymd.year(), ymd.month()};
      return SaidDay{Day::from((month + std::chrono::months{next ? 1 : 0}) / std::chrono::last), i + 1};
    }
    if (!in_.is(i, "week")) return std::nullopt;
    const int days = 4 - local_.day.weekday() + (next ? 7 : 0);
    return SaidDay{local_.day + (days < 0 ? days + 7 : days), i + 1};
  }

  static std::optional<SaidDay> said(std::optional<FoundDay> found) {
    return found ? std::optional{SaidDay{found->day, found->end}} : std::nullopt;
  }

  std::optional<SaidDay> weekday(std::size_t i) const {
    if (in_.any(i, {"the", "this"}) && (weekday_at(i + 1) || in_.is(i + 1, "coming")) && !past_) ++i;
    const bool next = in_.is(i, "next"), last = in_.is(i, "last"), these = in_.any(i, {"this", "coming"});
    const std::size_t at = next || last || these ? i + 1 : i;
    const Token* t = in_.at(at);
    if (t == nullptr || t->kind != Token::Kind::word) return std::nullopt;
    if (t->is("sat") && at > 0 && in_.any(at - 1, {"i", "we", "he", "she", "they", "it", "who"}))
      return std::nullopt; // sat down
    auto wanted = weekday_word(t->word);
    if (!wanted || (t->word.size() > 5 && t->word.ends_with("s")))
      return std::nullopt; // "mondays": all of them
    if (const auto d = of_week(*wanted, at + 1); d && !next && !last) return d;
    int days = (*wanted - local_.day.weekday() + 7) % 7;
    if (next && days == 0)
      days = 7;
    else if (last || (past_ && !next && !these && days > 0))
      days -= 7;
    if (!past_ && !last && in_.any(at + 1, {"week", "fortnight"})) { // "friday week": the one after it
      if (days == 0) days = 7;
      return SaidDay{local_.day + days + (in_.is(at + 1, "week") ? 7 : 14), at + 2};
    }
    // "Wednesday next".
    if (!next && !last && !past_ && in_.is(at + 1, "next") && !in_.is(at + 2, "week"))
      return SaidDay{local_.day + (days == 0 ? 7 : days), at + 2, {}, true};
    return SaidDay{local_.day + days, at + 1, {}, !last};
  }

  // Behind a weekday: "thursday of next week", "friday last week"; "friday week" is the friday after next.
  std::optional<SaidDay> of_week(int wanted, std::size_t i) const {
    if (!past_ && in_.is(i, "week")) {
      const int days = (wanted - local_.day.weekday() + 7) % 7;
      return SaidDay{local_.day + (days + 7), i + 1};
    }
    const std::size_t at = in_.is(i, "of") ? i + 1 : i;
    if (!in_.is(at + 1, "week")) return std::nullopt;
    const int weeks = in_.is(at, "next") ? 1 : in_.is(at, "last") ? -1 : 0;
    if (weeks == 0 && !in_.is(at, "this")) return std::nullopt;
    return SaidDay{local_.day + (wanted - local_.day.weekday() + 7 * weeks), at + 2};
  }

  bool weekday_at(std::size_t i) const {
    const Token* t = in_.at(i);
    return t != nullptr && t->kind == Token::Kind::word && weekday_word(t->word) &&
           !(t->word.size() > 5 && t->word.ends_with("s"));
  }

  static std::optional<unsigned> month(std::string_view word) {
    static constexpr std::array<std::string_view, 12> names{"january",   "february", "march",    "april",
                                                            "may",       "june",     "july",     "august",
                                                            "september", "october",  "november", "december"};
    for (unsigned m = 0; m < 12; ++m) {
      if (word == names[m] || word == names[m].substr(0, 3) || (m == 8 && word == "sept")) return m + 1;
    }
    return std::nullopt;
  }
  std::optional<unsigned> month_at(std::size_t i) const {
    const Token* t = in_.at(i);
    return t != nullptr && t->kind == Token::Kind::word ? month(t->word) : std::nullopt;
  }

  std::optional<SaidDay> made(std::int64_t y, unsigned m, std::int64_t d, std::size_t end) const {
    return said(calendar_day(y, m, d, end, in_));
  }

  // A date without its year is the next one, or in the past the last one; of 29 February too.
  std::optional<SaidDay> nearest(unsigned m, std::int64_t d, std::size_t end) const {
    constexpr int longest = 8; // years without a leap day, as from 1896 to 1904
    const std::chrono::month_day wanted{std::chrono::month{m}, std::chrono::day{static_cast<unsigned>(d)}};
    int year = static_cast<int>(local_.day.ymd().year());
    for (int tried = 0; wanted.ok() && tried <= longest; ++tried, year += past_ ? -1 : 1) {
      const std::chrono::year_month_day ymd{std::chrono::year{year}, wanted.month(), wanted.day()};
      if (ymd.ok() && (past_ ? Day::from(ymd) <= local_.day : Day::from(ymd) >= local_.day))
        return SaidDay{Day::from(ymd), end};
    }
    return made(year, m, d, end);
  }

  // "2026-12-12", "12 december", "december 12", "12th of december 2026", "the 12th".
  std::optional<SaidDay> date(std::size_t i) const {
    if (auto d = date_in_digits(i, in_)) return said(d);
    const std::size_t the = in_.is(i, "the") ? i + 1 : i;
    auto n = whole(in_.at(the));
    if (n && *n >= 1 && *n <= 31) {
      const std::size_t of = in_.is(the + 1, "of") ? the + 2 : the + 1;
      if (auto m = month_at(of)) return with_year(*m, *n, of + 1);
      // What was done to "the 12th" was done to a fret; when, is "on the 12th". Nor is "the second sander" a
      // day.
      const bool fret = past_ && !(i > 0 && in_.any(i - 1, {"on", "since"}));
      const Token* thing = in_.at(the + 1);
      const bool of_things = thing != nullptr && thing->kind == Token::Kind::word && !is_filler(*thing) &&
                             in_.names.has(thing->word);
      if (the > i && in_.at(the)->ordinal && !fret && !of_things) return this_month(*n, the + 1);
      return std::nullopt;
    }
    auto m = month_at(i);
    const std::size_t at = in_.is(i + 1, "the") ? i + 2 : i + 1;
    n = whole(in_.at(at));
    if (!m || !n || *n < 1 || *n > 31) return std::nullopt;
    return with_year(*m, *n, at + 1);
  }

  std::optional<SaidDay> with_year(unsigned m, std::int64_t d, std::size_t end) const {
    const std::size_t at = in_.is(end, ",") ? end + 1 : end;
    if (auto y = whole(in_.at(at)); y && *y >= 1970 && *y <= 9999) return made(*y, m, d, at + 1);
    return nearest(m, d, end);
  }

  // "The 31st": of the nearest month that has one.
  std::optional<SaidDay> this_month(std::int64_t d, std::size_t end) const {
    std::chrono::year_month ym{local_.day.ymd().year(), local_.day.ymd().month()};
    const auto today = static_cast<std::int64_t>(static_cast<unsigned>(local_.day.ymd().day()));
    const std::chrono::months step{past_ ? -1 : 1};
    if (past_ ? d > today : d < today) ym += step;
    while (!(ym / std::chrono::day{static_cast<unsigned>(d)}).ok()) // no two months in a row are short of it
      ym += step;
    return made(static_cast<int>(ym.year()), static_cast<unsigned>(ym.month()), d, end);
  }

  const Reader& in_;
  bool past_, ahead_;
  const hours::LocalTime& local_;
};

} // namespace

Tense tense_of(const shop::Param& param) {
  const std::string_view name = param.name;
  const bool day = param.kind == shop::Kind::day; // of a day "from" and "until" are about what has been
  return {name == "at" || name == "happened" || name == "since" ||
              (day && (name == "from" || name == "until")),
          name == "until" || name == "begins" || name == "again",
          name == "day" || name == "last" || name == "by"};
}

std::vector<Said> recognise_time(const shop::Param& param, std::size_t i, const Reader& in) {
  if (!in.names.zone || in.at(i) == nullptr || in.at(i)->kind == Token::Kind::quoted) return {};
  const Tense tense = tense_of(param);
  const Times times{in, tense.past, tense.ahead};
  return param.kind == shop::Kind::at ? times.instants(i) : times.days(i, tense.exact);
}

} // namespace nutward::talk
