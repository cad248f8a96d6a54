#include "shop/supply_words.hpp"

#include "shop/agenda_words.hpp"
#include "shop/metre.hpp"

#include <cmath>

namespace nutward::shop {

namespace {

using units::LengthUnit;

std::string metres(Length v) {
  return units::print(v, LengthUnit::m);
}

std::string_view where_words(const WireSupply& s) {
  if (s.on_hand <= Length{} || !s.buying.form) return "";
  return *s.buying.form == Form::coil ? " in the coil" : " in sticks";
}

std::string jobs_words(const std::vector<std::int64_t>& jobs) {
  std::vector<std::string> first;
  for (const std::int64_t job : jobs)
    if (first.size() < 3) first.push_back(std::to_string(job));
  const std::string more = jobs.size() > 3 ? fmt::format(" and {} more", jobs.size() - 3) : "";
  return fmt::format("{} {}{}", jobs.size() == 1 ? "job" : "jobs", fmt::join(first, ", "), more);
}

std::string delayed_words(const WireSupply& s) {
  if (s.delayed.empty()) return "";
  return fmt::format("; even then {} {} for it", jobs_words(s.delayed),
                     s.delayed.size() == 1 ? "waits" : "wait");
}

std::string arrivals_words(const WireSupply& s, const Moment& moment) {
  std::vector<std::string> out;
  for (const Arrival& a : s.arrivals)
    out.push_back(
        fmt::format("{} {}", metres(a.length), a.overdue ? "overdue" : "due " + day_words(a.day, moment)));
  return fmt::format("{}", fmt::join(out, ", "));
}

} // namespace

std::string left_words(const WireSupply& s) {
  if (s.outlook.free <= Length{}) return "none";
  const auto whole = static_cast<std::int64_t>(std::floor(s.refrets_left()));
  if (whole == 0) return "less than one refret";
  return (s.each.guessed ? "about " : "") + plural(whole, "refret");
}

std::string left_where_words(const WireSupply& s) {
  return fmt::format("{} left{}{}", left_words(s), where_words(s), s.needs.empty() ? "" : " after the queue");
}

std::string quantity_words(Length length, const Buying& b) {
  if (b.pack_of && b.terms.pack > Length{} && length.nm % b.terms.pack.nm == 0)
    return fmt::format("{} ({})", plural(length.nm / b.terms.pack.nm, "pack"), metres(length));
  if (b.form && b.each > Length{} && length.nm % b.each.nm == 0)
    return fmt::format("{} ({})", plural(length.nm / b.each.nm, *b.form == Form::coil ? "coil" : "stick"),
                       metres(length));
  return rounded_metres(length);
}

std::string quantity_words(const WireSupply& s) {
  return quantity_words(s.outlook.order, s.buying);
}

std::string by_words(const WireSupply& s, const Moment& moment) {
  const std::string day = day_words(*s.outlook.order_by, moment);
  return day == "today" ? day : "by " + day;
}

std::string lead_of(const WireSupply& s, const Supplying& all, const Moment& moment) {
  const supply::Outlook& o = s.outlook;
  const std::string& name = s.wire.name;
  if (!s.known || (s.on_hand == Length{} && s.forgotten))
    return sentence(fmt::format("none is left of {}, and no open job needs it.", name));
  const bool due = s.order_due(all.today() + sight_days);
  std::string out = s.on_hand < Length{}
                        ? fmt::format("{}: the ledger has {} less than nothing, so a delivery is missing in "
                                      "it, or it wants counting",
                                      name, about_metres(Length{} - s.on_hand))
                    : o.free < Length{} ? fmt::format("{}: the queue takes {} more than there is", name,
                                                      about_metres(Length{} - o.free))
                                        : fmt::format("{}: {}", name, left_where_words(s));
  if (!s.arrivals.empty()) out += fmt::format(", on order: {}", arrivals_words(s, moment));
  if (due)
    out += fmt::format("; order {} {}{}{}", quantity_words(s), by_words(s, moment),
                       s.by_a_guess() ? ", by a guess at new work" : "", delayed_words(s));
  else if (s.order_due(all.today() + supply::horizon_days))
    out += fmt::format("; nothing to order before {}", day_words(*o.order_by, moment));
  else
    out += "; nothing to order";
  return sentence(out + ".");
}

namespace {

constexpr std::size_t most_named = 5;

std::string listed(const std::vector<std::string>& words) {
  const auto shown = std::min(words.size(), most_named);
  std::string out =
      fmt::format("{}", fmt::join(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(shown), ", "));
  return shown == words.size() ? out : out + fmt::format(" and {} more", words.size() - shown);
}

} // namespace

std::string lead_of(const std::vector<WireSupply>& supplies, const Supplying& all, const Moment& moment) {
  if (supplies.empty()) return "No wire has been defined yet.";
  if (supplies.size() == 1) return lead_of(supplies.front(), all, moment);
  std::vector<const WireSupply*> due;
  std::vector<std::string> fine, gone, order;
  for (const WireSupply& s : supplies) {
    if (s.order_due(all.today() + sight_days))
      due.push_back(&s);
    else if (s.on_hand <= Length{} && s.needs.empty() && s.arrivals.empty())
      gone.push_back(s.wire.name);
    else
      fine.push_back(fmt::format(
          "{} ({})", s.wire.name,
          s.outlook.free <= Length{} && !s.arrivals.empty() ? "on order" : left_words(s) + " left"));
  }
  std::stable_sort(due.begin(), due.end(), [](const WireSupply* a, const WireSupply* b) {
    return a->outlook.order_by < b->outlook.order_by;
  });
  for (const WireSupply* s : due)
    order.push_back(fmt::format("{} of {} {}", quantity_words(*s), s->wire.name, by_words(*s, moment)));
  std::string out;
  if (order.empty())
    out = "No need to order." + (fine.empty() ? "" : fmt::format(" Left after the queue: {}.", listed(fine)));
  else
    out = fmt::format("Order {}.{}", listed(order),
                      fine.empty() ? "" : fmt::format(" Enough of the rest: {}.", listed(fine)));
  if (!gone.empty()) out += fmt::format(" None left, and no open job needs it: {}.", listed(gone));
  return out;
}

namespace {

std::string needs_words(const WireSupply& s, const Moment& moment) {
  if (s.needs.empty()) return "no open job takes any";
  const bool by_agenda = std::all_of(s.needs.begin(), s.needs.end(),
                                     [](const WireNeed& n) { return n.cut.from == CutDay::From::agenda; });
  std::string out = fmt::format(
      "the queue takes {} for {}, by {} ({})", rounded_metres(s.needed()), plural(std::ssize(s.needs), "job"),
      day_words(s.needs.back().cut.day, moment),
      by_agenda ? "days by the agenda" : "days by the agenda where it has them, else by what was promised");
  if (!s.settled) out += ", by a cut plan that may get better";
  return out;
}

std::string new_work_words(const WireSupply& s, const Supplying& all) {
  if (s.forgotten)
    return fmt::format("nobody used it for {}, so nothing more is expected", plural(s.history.since, "week"));
  if (!s.known) return "nobody has had it yet, so nothing is expected";
  const double refrets = s.each.length.nm == 0 ? 0 : s.a_week.mean / s.each.length.mm();
  std::string out =
      fmt::format("new work is expected to take {} a week ({:.2g} refrets of {})",
                  rounded_metres(units::from_mm(s.a_week.mean)), refrets, rounded_metres(s.each.length));
  const auto weeks = std::ssize(s.history.weeks);
  if (s.guessed)
    out += fmt::format(
        ": {} of {} a week, for there is {} of history", weeks == 0 ? "a guess" : "partly a guess",
        fmt::format("{:g} refrets", all.settings().guess), weeks == 0 ? "none" : plural(weeks, "week"));
  else
    out += fmt::format(", by {} of which {} took any", plural(weeks, "week"), s.history.drawn_in);
  return out + fmt::format(", from {} on", plural(all.wait_days(), "day"));
}

std::string lead_words(const WireSupply& s) {
  const Buying& b = s.buying;
  std::string out = fmt::format("an order takes {:.2g} ± {:.2g} days", b.lead.mean, b.lead.deviation);
  switch (b.lead_from) {
  case Buying::Says::setting:
    return out + " (nobody has said or shown how long)";
  case Buying::Says::supplier:
    return out + fmt::format(" (as {} says)", b.supplier_name);
  case Buying::Says::orders:
    break;
  }
  return out +
         fmt::format(" ({}, {})", b.supplier_name, plural(static_cast<std::int64_t>(b.lead.seen), "order"));
}

std::string run_out_words(const WireSupply& s, const Moment& moment) {
  const supply::Outlook& o = s.outlook;
  if (!o.runs_out) return "It does not run out within a year";
  std::string out = std::string(s.arrivals.empty() ? "Without an order" : "Without another order") +
                    " it runs out " + day_words(*o.runs_out, moment);
  const auto word = [&](const std::optional<Day>& day) {
    return day ? day_words(*day, moment) : std::string("over a year from now");
  };
  if (o.low != o.runs_out || o.high != o.runs_out)
    out += fmt::format(" (between {} and {})", word(o.low), word(o.high));
  return out;
}

} // namespace

std::string why_words(const WireSupply& s, const Supplying& all, const Moment& moment) {
  const SupplySettings& set = all.settings();
  const supply::Outlook& o = s.outlook;
  std::string out = fmt::format("On hand {}{}, and {}; {}. {}.", rounded_metres(s.on_hand),
                                s.held > Length{} ? fmt::format(", {} of it set aside", metres(s.held)) : "",
                                needs_words(s, moment), new_work_words(s, all), run_out_words(s, moment));
  out += fmt::format(" {}; {} kept for safety at {:.4g} %, with {} until somebody orders.",
                     sentence(lead_words(s)), rounded_metres(o.safety), set.service * 100,
                     plural(set.review_days, "day"));
  if (o.order > Length{}) {
    out += fmt::format(
        " The order covers the queue, that, new work until the next one could come and {:g} more refrets",
        set.further);
    if (s.buying.terms.pack > Length{} || s.buying.terms.minimum > Length{})
      out += fmt::format(", in wholes of {}{}", metres(s.buying.terms.pack),
                         s.buying.terms.minimum > Length{}
                             ? fmt::format(" and at least {}", metres(s.buying.terms.minimum))
                             : "");
    out += ".";
  }
  if (o.by_hand) out += fmt::format(" It is below its reorder level of {}.", metres(*s.wire.reorder_at));
  if (s.economic)
    out += fmt::format(" The economic order quantity would be {}.", rounded_metres(*s.economic));
  return out;
}

std::string why_words(const std::vector<WireSupply>& supplies, const Supplying& all) {
  std::string out =
      "Left means after every open slot of the queue is served, by the cut plan, and in refrets. "
      "Ask about one wire to see every number.";
  std::vector<std::string> aside;
  for (const WireSupply& s : supplies)
    if (s.held > Length{}) aside.push_back(fmt::format("{} of {}", metres(s.held), s.wire.name));
  if (!aside.empty())
    out += fmt::format(" Of what the queue takes {} {} set aside.", fmt::join(aside, ", "),
                       aside.size() == 1 ? "is" : "are");
  if (std::any_of(supplies.begin(), supplies.end(), [](const WireSupply& s) { return s.guessed; }))
    out +=
        fmt::format(" Wires with less than {} weeks of history are partly guessed at: {:g} refrets a week.",
                    enough_weeks, all.settings().guess);
  return out;
}

Table table_of(const std::vector<WireSupply>& supplies, const Supplying& all, const Moment& moment) {
  Table out{{"wire", "on hand", "queue takes", "left", "on order", "runs out", "order by", "order"}, {}};
  for (const WireSupply& s : supplies) {
    const supply::Outlook& o = s.outlook;
    const bool due = s.order_due(all.today() + supply::horizon_days);
    out.rows.push_back(
        {s.wire.name, rounded_metres(s.on_hand), rounded_metres(s.needed()),
         o.free < Length{} ? fmt::format("{} short", about_metres(Length{} - o.free)) : left_words(s),
         s.arrivals.empty() ? "-" : arrivals_words(s, moment),
         o.runs_out && s.known ? day_words(*o.runs_out, moment) : "-",
         due ? day_words(*o.order_by, moment) : "-", due ? quantity_words(s) : "-"});
  }
  return out;
}

} // namespace nutward::shop
