// Opening hours of a day, and days of the week.
#include "talk/recognise.hpp"

#include <fmt/format.h>

#include <array>

namespace nutward::talk {

std::optional<int> weekday_word(std::string_view word) {
  static constexpr std::array<std::string_view, 7> names{"monday", "tuesday",  "wednesday", "thursday",
                                                         "friday", "saturday", "sunday"};
  if (word.ends_with("s") && word.size() > 5) word.remove_suffix(1);
  for (std::size_t d = 0; d < 7; ++d) {
    const bool begins = word.size() >= 3 && word.size() <= 5 && names[d].starts_with(word);
    if (word == names[d] || begins) return static_cast<int>(d);
  }
  return std::nullopt;
}

namespace {

// "half past ten", "twenty past eleven", "quarter to nine".
std::optional<SaidClock> past_or_to(std::size_t i, const Reader& in) {
  std::size_t at = in.is(i, "a") ? i + 1 : i;
  std::int64_t minutes = 0;
  // "Half two" is half past two.
  if (in.is(at, "half") && in.at(at + 1) != nullptr && !in.at(at + 1)->word.empty() &&
      in.at(at + 1)->word.front() >= 'a') {
    if (auto h = whole(in.at(at + 1)); h && *h >= 1 && *h <= 12 && !in.at(at + 1)->ordinal &&
                                       (in.at(at + 2) == nullptr || !is_unit_word(in.at(at + 2)->word)))
      return SaidClock{static_cast<std::int32_t>(*h * 3600 + 1800), at + 2, false, false, false, true};
  }
  if (in.any(at, {"half", "quarter"}))
    minutes = in.is(at, "half") ? 30 : 15;
  else if (auto n = whole(in.at(at)); n && *n >= 1 && *n < 60)
    minutes = *n;
  else
    return std::nullopt;
  ++at;
  if (in.any(at, {"minutes", "min"})) ++at;
  const bool to = in.is(at, "to");
  if (!in.is(at, "past") &&
      !(to && (minutes == 15 || minutes % 5 == 0) && in.at(i)->kind == Token::Kind::word))
    return std::nullopt;
  auto hour = whole(in.at(at + 1));
  if (!hour || *hour < 1 || *hour > 23) return std::nullopt;
  std::size_t end = at + 2;
  bool halved = false;
  if (in.any(end, {"am", "pm"}) && *hour <= 12) {
    *hour = *hour % 12 + (in.is(end, "pm") ? 12 : 0);
    ++end, halved = true;
  }
  const std::int64_t s = *hour * 3600 + (to ? -minutes : minutes) * 60;
  return SaidClock{static_cast<std::int32_t>(s), end, false, halved, false, true};
}

} // namespace

std::optional<SaidClock> clock_at(std::size_t i, bool bare, const Reader& in) {
  if (auto spoken = past_or_to(i, in)) return spoken;
  if (in.any(i, {"noon", "midday"})) return SaidClock{12 * 3600, i + 1};
  if (in.is(i, "midnight")) return SaidClock{24 * 3600, i + 1};
  auto hour = whole(in.at(i));
  if (!hour || *hour > 24 || in.at(i)->ordinal) return std::nullopt;
  std::size_t end = i + 1;
  std::int64_t minute = 0;
  bool clear = false, halved = false, spoken = false;
  if (in.is(end, ":") && in.at(end)->glued) {
    auto m = whole(in.at(end + 1));
    if (!m || *m > 59 || in.at(end + 1)->word.size() != 2) return std::nullopt;
    minute = *m, end += 2, clear = true;
  }
  if (in.any(end, {"am", "pm"})) {
    if (*hour < 1 || *hour > 12) return std::nullopt;
    *hour = *hour % 12 + (in.is(end, "pm") ? 12 : 0);
    ++end, clear = halved = true;
  } else if (in.any(end, {"h", "hrs", "o'clock", "oclock"})) {
    spoken = in.s.tokens[end].word.starts_with("o");
    ++end, clear = true;
  }
  if (!halved && *hour <= 12 && in.is(end, "in") && in.is(end + 1, "the") &&
      in.any(end + 2, {"morning", "afternoon", "evening"})) {
    spoken = false;
    *hour = *hour % 12 + (in.is(end + 2, "morning") ? 0 : 12);
    end += 3, clear = halved = true;
  }
  if (!clear && !bare) return std::nullopt;
  const std::int64_t s = *hour * 3600 + minute * 60;
  if (s > 86400) return std::nullopt;
  const bool padded = in.at(i)->word.size() == 2 && in.at(i)->word.front() == '0';
  return SaidClock{static_cast<std::int32_t>(s), end, !clear, halved, padded, spoken && !halved};
}

namespace {

// An hour alone stays one: what is booked knows the shop's hours and may take it for the afternoon.
std::string written(const SaidClock& c) {
  return c.bare ? std::to_string(c.s / 3600) : fmt::format("{:02}:{:02}", c.s / 3600, c.s / 60 % 60);
}

// "2 to 3 pm": the half of the day was said once for both.
void share_half(SaidClock& open, const SaidClock& close) {
  constexpr std::int32_t half = 12 * 3600;
  if (!close.halved || open.halved || open.s > half) return;
  const std::int32_t s = open.s % half + (close.s >= half ? half : 0);
  if (s < close.s) open.s = s, open.bare = false;
}

std::vector<Said> spans_at(std::size_t i, const Reader& in) {
  std::vector<Said> out;
  if (in.at(i)->kind == Token::Kind::quoted) return {{i + 1, in.at(i)->word}};
  if (in.any(i, {"closed", "shut"})) return {{i + 1, std::string("closed")}};
  std::string text;
  std::int32_t last = 0; // when the one before it closes
  for (std::size_t at = i; text.size() < 400;) {
    const bool between = in.is(at, "between");
    if (between || in.is(at, "from")) ++at;
    auto open = clock_at(at, true, in);
    if (!open ||
        !(between ? in.any(open->end, {"and", "-"}) : in.any(open->end, {"-", "to", "until", "till", "til"})))
      break;
    auto close = clock_at(open->end + 1, true, in);
    if (!close) break;
    if (in.is(close->end, "hours") && !close->halved) ++close->end;
    share_half(*open, *close);
    // "Half two to half three", "one o'clock to four": no shop is open then at night.
    for (SaidClock* c : {&*open, &*close})
      if (c->spoken && !c->halved && c->s <= 6 * 3600 && close->s <= 12 * 3600) c->s += 12 * 3600;
    // "8 to 4": nobody closes before they open.
    if (close->bare && open->s <= 12 * 3600 && close->s <= open->s) {
      close->s += 12 * 3600, close->bare = false;
      open->bare = open->bare && open->s < 6 * 3600;
    }
    // "9 to 12 and 1 to 6": from one in the afternoon.
    if (!text.empty() && open->bare && open->s < last && open->s + 12 * 3600 >= last) {
      open->s += 12 * 3600, open->bare = false;
      if (close->s < open->s) close->s += 12 * 3600, close->bare = false;
    }
    last = close->s;
    text += fmt::format("{}{}-{}", text.empty() ? "" : ", ", written(*open), written(*close));
    out.insert(out.begin(), Said{close->end, text});
    at = close->end;
    if (in.is(at, ",")) ++at;
    if (in.any(at, {"and", "&"})) ++at;
  }
  return out;
}

std::optional<int> day_at(std::size_t i, bool plain, const Reader& in) {
  const Token* t = in.at(i);
  if (t == nullptr || t->kind == Token::Kind::quoted) return std::nullopt;
  if (auto n = whole(t); plain && n && *n >= 0 && *n <= 6) return static_cast<int>(*n);
  return weekday_word(t->word);
}

void add_days(std::vector<shop::Value>& days, int low, int high) {
  for (int d = low;; d = (d + 1) % 7) {
    days.emplace_back(static_cast<std::int64_t>(d));
    if (d == high) return;
  }
}

std::vector<Said> weekdays_at(std::size_t i, bool plain, const Reader& in) {
  std::vector<Said> out;
  std::vector<shop::Value> days;
  if (in.is(i, "daily") || (in.is(i, "every") && in.is(i + 1, "day"))) {
    add_days(days, 0, 6);
    return {{in.is(i, "daily") ? i + 1 : i + 2, shop::list(days)}};
  }
  if (in.any(i, {"weekdays", "weekday"}))
    return add_days(days, 0, 4), std::vector<Said>{{i + 1, shop::list(days)}};
  if (in.any(i, {"weekends", "weekend"}))
    return add_days(days, 5, 6), std::vector<Said>{{i + 1, shop::list(days)}};
  for (std::size_t at = i; days.size() < 50;) {
    const bool from = in.is(at, "from");
    if (from) ++at;
    if (from && in.is(at, "the")) ++at;
    while (at > i && !days.empty() && in.any(at, {"a", "on", "every", "each"}))
      ++at; // "of a tuesday and a thursday"
    auto low = day_at(at, plain, in);
    if (!low) break;
    std::size_t end = at + 1;
    auto high = low;
    if (in.any(end, {"-", "to", "through", "thru", "until", "till"})) {
      const std::size_t next = in.is(end + 1, "the") ? end + 2 : end + 1;
      if (auto h = day_at(next, plain, in)) high = h, end = next + 1;
    }
    if (from && end == at + 1) break; // from one day on
    add_days(days, *low, *high);
    out.insert(out.begin(), Said{end, shop::list(days)});
    at = end;
    if (in.is(at, ",")) ++at;
    if (in.any(at, {"and", "&"})) ++at;
    if (at == end) break;
  }
  // "On saturday", and nothing that says every one: it may be the next alone.
  const bool plural = in.s.tokens[i].word.size() > 5 && in.s.tokens[i].word.ends_with('s');
  bool often = plural || (i > 0 && in.any(i - 1, {"a", "every", "each", "all"}));
  for (std::size_t k = 0; k < in.size() && !often; ++k)
    often = in.any(k, {"every", "each", "always", "weekly", "regular", "regularly", "usual", "usually",
                       "never", "days", "week"});
  if (!often && !out.empty()) out.front().weekday = true;
  return out;
}

} // namespace

std::vector<Said> recognise_hours(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  return param.kind == shop::Kind::spans ? spans_at(i, in) : weekdays_at(i, plain, in);
}

} // namespace nutward::talk
