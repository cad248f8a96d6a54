#include "shop/agenda_next.hpp"

#include "shop/work.hpp"

namespace nutward::shop {

using std::chrono::seconds;

namespace {

bool is_shared(const AgendaPlan& agenda, std::size_t unit) {
  return agenda.what.problem.units[unit].shared;
}

std::string spare_words(seconds slack, const Moment& moment, Instant start) {
  const auto open = hours::open_between(moment.calendar, moment.zone, start, start + slack);
  if (open < std::chrono::minutes{15}) return "there is nothing to spare";
  constexpr std::chrono::hours day{8};
  return fmt::format("{} to spare", open >= 2 * day
                                        ? plural(static_cast<std::int64_t>(open / day), "working day")
                                        : minutes_words(open));
}

std::string due_words(const AgendaItem& item, const AgendaPlan& agenda, const Latests& latests,
                      const Moment& moment) {
  const auto& due = agenda.what.problem.jobs[item.at_job].due;
  if (!due) return "It has no promised day: it fills what the others leave.";
  const Outlook outlook = outlook_of(agenda, item.at_job, moment);
  const std::string promised = fmt::format("Job {} is promised for {}", item.job,
                                           day_words(moment.zone.local(*due - seconds{1}).day, moment));
  if (outlook.state == Outlook::State::late)
    return fmt::format("{} and {}: the sooner the better.", promised, words_of(outlook));
  const auto latest = latests.of(item);
  if (!latest || !latest->alone) return promised + ".";
  return fmt::format("{}; to keep that, this must begin by {} ({}).", promised,
                     moment.zone.human(*latest->alone),
                     spare_words(std::max(seconds{0}, *latest->alone - item.start), moment, item.start));
}

} // namespace

Latests::Latests(const AgendaPlan& agenda) {
  try {
    all_ = agenda::latest_starts(agenda.what.problem, agenda.plan);
  } catch (const agenda::BadAgenda&) {
    all_.clear(); // nothing is known of what to spare; the plan stands all the same
  }
}

std::optional<agenda::Latest> Latests::of(const AgendaItem& item) const {
  if (item.at_job >= all_.size() || item.at_task >= all_[item.at_job].size()) return std::nullopt;
  return all_[item.at_job][item.at_task];
}

std::string why_words(const AgendaItem& item, const AgendaPlan& agenda, const Latests& latests,
                      const View& view, const Moment& moment) {
  if (item.task.booking != 0) return fmt::format("Booked by hand (booking {}).", item.task.booking);
  std::string out;
  if (item.task.recheck != 0) {
    for (const Recheck& r : view.jobs().rechecks(item.job))
      if (r.id == item.task.recheck)
        out = fmt::format("The recheck may be done from {} and is due {}. ", moment.zone.human(r.from),
                          moment.zone.human(r.due));
  }
  return out + due_words(item, agenda, latests, moment);
}

Coming coming(const std::vector<AgendaItem>& items, std::int64_t person, const Moment& moment,
              std::size_t most) {
  Coming out;
  for (const AgendaItem& i : items) {
    if (person != 0 && i.person.person != person) continue;
    if (i.end <= moment.now && i.fixed) continue;
    if (i.fixed && i.start <= moment.now && i.task.booking == 0)
      out.at.push_back(i);
    else if (out.next.size() < most)
      out.next.push_back(i);
  }
  return out;
}

Loads loads_of(const AgendaPlan& agenda, const Moment& moment, int weeks) {
  Loads out;
  const Day today = moment.zone.local(moment.now).day;
  const Day monday = today + (7 - today.weekday());
  out.bounds.push_back(moment.now);
  for (int w = 0; w < weeks; ++w)
    out.bounds.push_back(moment.zone.instant(monday + 7 * w, 0));
  if (agenda.what.problem.units.empty()) return out;
  const auto all = agenda::load(agenda.what.problem, agenda.plan, out.bounds);
  for (std::size_t u = 0; u < all.size(); ++u)
    if (!is_shared(agenda, u)) out.units.push_back({agenda.what.units[u], all[u]});
  return out;
}

int percent_of(const agenda::Load& load) {
  if (load.open.count() <= 0) return 0;
  const seconds taken = std::min(load.open, load.fixed + load.planned);
  return static_cast<int>((100 * taken.count() + load.open.count() / 2) / load.open.count());
}

std::string load_words(const agenda::Load& load) {
  return load.open.count() <= 0 ? "-" : fmt::format("{} %", percent_of(load));
}

std::string bottleneck_words(const AgendaPlan& agenda, const View& view, const Moment& moment) {
  if (agenda.plan.jobs.empty()) return "";
  const auto busiest = agenda::bottleneck(agenda.what.problem, agenda.plan);
  if (!busiest || busiest->work.count() <= 0) return "";
  return sentence(fmt::format("{} decides how soon all is done: {} of work, until {}.",
                              name_of(agenda.what.units[busiest->unit], view), minutes_words(busiest->work),
                              day_words(moment.zone.local(busiest->planned_end).day, moment)));
}

} // namespace nutward::shop
