#include "shop/bookings.hpp"

#include "shop/apply.hpp"
#include "shop/bench.hpp"
#include "shop/people.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace nutward::shop {

std::string words_of(const Booking& b, const View& view, const hours::Zone& zone) {
  const auto m = machine_at(b.machine, view);
  return fmt::format("{} has the {} on {}{} (booking {})", name_of(b.actor, view), m ? m->name : "machine",
                     from_to(b.from, b.to, zone), b.job ? fmt::format(", for job {}", *b.job) : "", b.id);
}

std::string words_of(const std::vector<Booking>& all, const View& view, const hours::Zone& zone) {
  constexpr std::size_t most = 5;
  std::vector<std::string> out;
  for (const Booking& b : all) {
    if (out.size() == most) break;
    out.push_back(words_of(b, view, zone));
  }
  return fmt::format("{}{}", fmt::join(out, "; "),
                     all.size() > most ? fmt::format("; and {} more", all.size() - most) : "");
}

namespace {

std::vector<Booking> of_machine(const Machine& m, Instant from, Instant to, const View& view) {
  auto out = view.machines().bookings(from, to);
  std::erase_if(out, [&](const Booking& b) { return b.machine != m.id; });
  return out;
}

// Where how many are booked or in service changes between two instants: the first, each beginning within, and
// each end of an outage.
std::vector<Instant> changes(const std::vector<Booking>& booked, const std::vector<Outage>& outages,
                             Instant from, Instant to) {
  std::vector<Instant> out{from};
  const auto add = [&](Instant t) {
    if (t > from && t < to) out.push_back(t);
  };
  for (const Booking& b : booked)
    add(b.from);
  for (const Outage& o : outages)
    add(o.from);
  std::sort(out.begin(), out.end());
  return out;
}

std::vector<Booking> at(Instant t, const std::vector<Booking>& booked) {
  std::vector<Booking> out;
  std::copy_if(booked.begin(), booked.end(), std::back_inserter(out),
               [&](const Booking& b) { return b.from <= t && t < b.to; });
  return out;
}

} // namespace

std::vector<Booking> bookings_without_a_machine(const Machine& m, Instant from, Instant to,
                                                const View& view) {
  const auto booked = of_machine(m, from, to, view);
  const Down all = down(m, from, to, view);
  std::vector<Booking> out;
  for (const Instant t : changes(booked, all.because, from, to)) {
    const auto left = left_of(m, down(m, t, view));
    const auto then = at(t, booked);
    if (!left || static_cast<int>(then.size()) <= *left) continue;
    for (const Booking& b : then) {
      const bool there = std::any_of(out.begin(), out.end(), [&](const Booking& o) { return o.id == b.id; });
      if (!there) out.push_back(b);
    }
  }
  return out;
}

void check_room(const Booking& wish, const Machine& m, const View& view, const hours::Zone& zone) {
  auto booked = of_machine(m, wish.from, wish.to, view);
  std::erase_if(booked, [&](const Booking& b) { return b.id == wish.id; });
  const Down all = down(m, wish.from, wish.to, view);
  for (const Instant t : changes(booked, all.because, wish.from, wish.to)) {
    const Down then = down(m, t, view);
    const auto left = left_of(m, then);
    const auto having = at(t, booked);
    if (!left || static_cast<int>(having.size()) < *left) continue;
    if (*left == 0) {
      throw Problem(Fault::state,
                    fmt::format("{} {} {} then.", named(m), m.count == 1 ? "is" : "are",
                                words_of(then.because.front(), zone)),
                    "machine", "Book it for another time, or say that it is back.");
    }
    throw Problem(Fault::state, words_of(having, view, zone) + ".", "hours",
                  *left == 1 ? "Book another time, or have that one cancelled."
                             : fmt::format("That is all {} of them: book another time.", *left));
  }
}

namespace {

// "2" of "2-3:30": an hour without minutes or half of the day.
bool bare(std::string_view clock) {
  return !clock.empty() &&
         std::all_of(clock.begin(), clock.end(), [](unsigned char c) { return std::isdigit(c); });
}

bool open_throughout(Instant from, Instant to, const hours::Calendar& calendar, const hours::Zone& zone) {
  return hours::open_between(calendar, zone, from, to) == to - from;
}

} // namespace

Stretch stretch_of(Day day, std::string_view text, const hours::Calendar& calendar, const hours::Zone& zone) {
  const auto spans = read_spans(text);
  if (spans.size() != 1) {
    throw Problem(Fault::value, spans.empty() ? "That is no time." : "That is more than one stretch of time.",
                  "hours", "Give one, such as 10:00-11:00.");
  }
  const auto on = [&](std::int32_t open_s, std::int32_t close_s) {
    return Stretch{zone.instant(day, open_s), zone.instant(day, close_s)};
  };
  Stretch out = on(spans[0].open_s, spans[0].close_s);
  const std::size_t dash = text.find('-');
  constexpr std::int32_t half = 12 * 3600;
  const bool either =
      dash != std::string_view::npos && bare(text.substr(0, dash)) && spans[0].close_s <= half;
  if (either && hours::open_between(calendar, zone, out.from, out.to) == std::chrono::seconds{0}) {
    const Stretch later = on(spans[0].open_s + half, spans[0].close_s + half);
    if (hours::open_between(calendar, zone, later.from, later.to).count() > 0) out = later;
  }
  if (out.from >= out.to) {
    throw Problem(Fault::value,
                  fmt::format("The clock is put forward over that time on {}.", hours::human(day)), "hours",
                  "Give another time.");
  }
  return out;
}

std::string closed_words(Instant from, Instant to, const hours::Calendar& calendar, const hours::Zone& zone) {
  if (open_throughout(from, to, calendar, zone)) return "";
  std::vector<std::string> out;
  Instant at = from;
  auto open = hours::openings_between(calendar, zone, from, to);
  open.emplace_back(to, to);
  for (const auto& [opens, closes] : open) {
    if (opens > at) out.push_back(from_to(at, opens, zone));
    at = closes;
  }
  return fmt::format("The shop is closed then: {}.", fmt::join(out, "; "));
}

} // namespace nutward::shop
