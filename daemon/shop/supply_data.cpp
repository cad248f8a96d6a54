// The data of the question `supply`.
#include "shop/supply_words.hpp"

#include <cmath>

namespace nutward::shop {

namespace {

constexpr int path_days = 7, path_weeks = 26;

Value day_or_null(const std::optional<Day>& day) {
  return day ? Value{units::print(*day)} : Value{};
}

Value needs_value(const WireSupply& s) {
  std::vector<Value> out;
  out.reserve(s.needs.size());
  for (const WireNeed& n : s.needs)
    out.push_back(record({{"job", ref(Thing::job, n.job)},
                          {"on", units::print(n.cut.day)},
                          {"by", std::string(n.cut.from == CutDay::From::agenda ? "agenda"
                                             : n.cut.from == CutDay::From::due  ? "due"
                                                                                : "today")},
                          {"frets", std::int64_t{n.frets}},
                          {"length", n.length}}));
  return list(std::move(out));
}

Value arrivals_value(const WireSupply& s) {
  std::vector<Value> out;
  out.reserve(s.arrivals.size());
  for (const Arrival& a : s.arrivals)
    out.push_back(record({{"purchase", a.purchase},
                          {"on", units::print(a.day)},
                          {"length", a.length},
                          {"promised", a.promised},
                          {"overdue", a.overdue}}));
  return list(std::move(out));
}

Value path_value(const WireSupply& s) {
  std::vector<Value> out;
  for (std::size_t at = 0; at < s.outlook.path.size() && at <= std::size_t{path_days} * path_weeks;
       at += path_days)
    out.push_back(
        record({{"on", units::print(s.outlook.path[at].day)}, {"level", s.outlook.path[at].level}}));
  return list(std::move(out));
}

Value jobs_value(const std::vector<std::int64_t>& jobs) {
  std::vector<Value> out;
  out.reserve(jobs.size());
  for (const std::int64_t job : jobs)
    out.push_back(ref(Thing::job, job));
  return list(std::move(out));
}

} // namespace

Value data_of(const WireSupply& s, const Supplying& all) {
  const supply::Outlook& o = s.outlook;
  const bool due = s.order_due(all.today() + supply::horizon_days);
  return record({
      {"wire", ref(Thing::wire, s.wire.id)},
      {"name", s.wire.name},
      {"on_hand", s.on_hand},
      {"open_jobs", s.needed()},
      {"set_aside", s.held},
      {"free", o.free},
      {"on_order", s.on_order},
      {"refret", s.each.length},
      {"refret_guessed", s.each.guessed},
      {"refrets_left", std::floor(s.refrets_left())},
      {"reorder_at_mm", opt(s.wire.reorder_at)},
      {"order", s.order_due(all.today() + sight_days)},
      {"order_by_on", due ? day_or_null(o.order_by) : Value{}},
      {"too_late", due && o.too_late},
      {"order_length", due ? o.order : Length{}},
      {"packs", due && s.buying.terms.pack > Length{} ? o.order.nm / s.buying.terms.pack.nm : 0},
      {"pack", s.buying.terms.pack},
      {"minimum", s.buying.terms.minimum},
      {"supplier", s.buying.supplier_name},
      {"price_minor", due && s.price ? Value{*s.price} : Value{}},
      {"runs_out_on", s.known ? day_or_null(o.runs_out) : Value{}},
      {"runs_out_low_on", s.known ? day_or_null(o.low) : Value{}},
      {"runs_out_high_on", s.known ? day_or_null(o.high) : Value{}},
      {"new_work_a_week", units::from_mm(s.a_week.mean)},
      {"new_work_deviation", units::from_mm(s.a_week.deviation)},
      {"new_work_weeks", static_cast<std::int64_t>(s.history.weeks.size())},
      {"new_work_guessed", s.guessed},
      {"lead_days", s.buying.lead.mean},
      {"lead_deviation_days", s.buying.lead.deviation},
      {"lead_orders", static_cast<std::int64_t>(s.buying.lead.seen)},
      {"safety", o.safety},
      {"reorder_point", o.reorder_point},
      {"economic_mm", opt(s.economic)},
      {"delayed", jobs_value(s.delayed)},
      {"needs", needs_value(s)},
      {"arrivals", arrivals_value(s)},
      {"path", path_value(s)},
  });
}

std::vector<Give> gives_of_supply() {
  const Give on{"on", Kind::words, "a day, ISO 8601"};
  return {
      gives::wire,
      gives::wire_name,
      {"on_hand", Kind::length, "in sticks and coils"},
      {"open_jobs", Kind::length, "what open jobs take of it, by the cut plan"},
      {"set_aside", Kind::length, "of that, set aside for them"},
      {"free", Kind::length, "on hand less what open jobs take; below 0: it does not suffice"},
      {"on_order", Kind::length, "that has not come yet"},
      {"refret", Kind::length, "what one refret takes"},
      {"refret_guessed", Kind::yes, "whether that is a guess"},
      {"refrets_left", Kind::number, "whole ones, of what is free"},
      {"reorder_at", Kind::length, "its reorder level, where one was set by hand", Often::or_null},
      {"order", Kind::yes, "whether to order it within a week"},
      {"order_by", Kind::day, "the last day on which an order comes in time; not before today",
       Often::or_null},
      {"too_late", Kind::yes, "whether an order today comes after stock fell below its safety"},
      {"order_length", Kind::length, "what to order by then; 0: nothing"},
      {"packs", Kind::count, "how many packs that is; 0: it is not sold in packs"},
      {"pack", Kind::length, "what it is sold in; 0: in any length"},
      {"minimum", Kind::length, "the least order; 0: none"},
      {"supplier", Kind::words, "who it is bought from; may be empty"},
      {"price", Kind::money, "of the order, at the price of the newest delivery", Often::or_null},
      {"runs_out", Kind::day, "without an order", Often::or_null},
      {"runs_out_low", Kind::day, "if new work takes more", Often::or_null},
      {"runs_out_high", Kind::day, "if it takes less", Often::or_null},
      {"new_work_a_week", Kind::length, "what jobs not yet taken in are expected to take"},
      {"new_work_deviation", Kind::length, "of one week from that, standard"},
      {"new_work_weeks", Kind::count, "of history"},
      {"new_work_guessed", Kind::yes, "whether it is a guess, or partly one"},
      {"lead_days", Kind::number, "from order to arrival"},
      {"lead_deviation_days", Kind::number, "standard"},
      {"lead_orders", Kind::count, "orders that it is known from; 0: it was said, or is a setting"},
      {"safety", Kind::length, "kept for more work and longer leads than expected"},
      {"reorder_point", Kind::length, "of new work alone"},
      {"economic", Kind::length, "the economic order quantity", Often::or_null},
      {"delayed", Kind::job, "jobs that would wait for an order placed today", Often::many},
      gives::records("needs", "what each open job takes",
                     {gives::job,
                      on,
                      gives::one_of("by", "what says so", {"agenda", "due", "today"}),
                      {"frets", Kind::count, "of new wire"},
                      {"length", Kind::length, "of new wire"}}),
      gives::records("arrivals", "what is on order",
                     {{"purchase", Kind::count, "the order's number"},
                      on,
                      {"length", Kind::length, "that is still to come"},
                      {"promised", Kind::yes, "whether that day was promised"},
                      {"overdue", Kind::yes, "whether it should have come by now"}}),
      gives::records("path", "what is expected to be there, week by week, without a new order",
                     {on, {"level", Kind::length, "may be below 0"}}),
  };
}

} // namespace nutward::shop
