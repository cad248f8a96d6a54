#include "shop/agenda_next.hpp"

#include "shop/work.hpp"

namespace nutward::shop {

using std::chrono::seconds;

namespace {

constexpr std::chrono::minutes little{15}; // as good as nothing

bool is_shared(const AgendaPlan& agenda, std::size_t unit) {
  return agenda.what.problem.units[unit].shared;
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
  const auto spare = spare_of(item, agenda, latests, moment);
  return fmt::format(
      "{}; to keep that, this must begin by {} ({}).", promised, moment.zone.human(*latest->alone),
      spare && *spare < little ? "there is nothing to spare" : spare_words(spare) + " to spare");
}

} // namespace

Latests::Latests(const AgendaPlan& agenda, const View& view, const Moment& moment) {
  try {
    all_ = agenda::latest_starts(agenda.what.problem, agenda.plan);
  } catch (const agenda::BadAgenda&) {
    all_.clear(); // nothing is known of what to spare; the plan stands all the same
  }
  keep_recheck(agenda, view, moment);
}

void Latests::keep_recheck(const AgendaPlan& agenda, const View& view, const Moment& moment) {
  const Setup set = setup(view);
  for (std::size_t j = 0; j < all_.size(); ++j) {
    const auto& names = agenda.what.jobs[j].tasks;
    const auto press =
        std::find_if(names.begin(), names.end(), [](const AgendaTask& t) { return t.stage == "press"; });
    const auto job = press == names.end() ? std::nullopt : view.jobs().find(agenda.what.jobs[j].job);
    const auto by = job ? press_by(*job, view, set, moment.calendar, moment.zone) : std::nullopt;
    if (!by) continue;
    Instant latest = by->latest;
    for (auto t = static_cast<std::size_t>(press - names.begin()) + 1; t-- > 0 && t < all_[j].size();) {
      const agenda::Task& task = agenda.what.problem.jobs[j].tasks[t];
      if (names[t].stage != "press") {
        const auto begin = hours::subtract_open(moment.calendar, moment.zone, latest, task.work);
        if (!begin) break;
        latest = *begin;
      }
      const bool planned_so =
          !agenda.plan.jobs[j].tasks.empty() && agenda.plan.jobs[j].tasks[t].start <= latest;
      if (all_[j][t] && all_[j][t]->alone && planned_so)
        all_[j][t]->alone = std::min(*all_[j][t]->alone, latest);
    }
  }
}

std::optional<agenda::Latest> Latests::of(const AgendaItem& item) const {
  if (item.at_job >= all_.size() || item.at_task >= all_[item.at_job].size()) return std::nullopt;
  return all_[item.at_job][item.at_task];
}

std::optional<seconds> spare_of(const AgendaItem& item, const AgendaPlan& agenda, const Latests& latests,
                                const Moment& moment) {
  if (item.fixed || !agenda.what.problem.jobs[item.at_job].due) return std::nullopt;
  const auto latest = latests.of(item);
  if (!latest) return std::nullopt;
  if (!latest->alone || *latest->alone <= item.start) return seconds{0};
  return hours::open_between(moment.calendar, moment.zone, item.start, *latest->alone);
}

std::string spare_words(std::optional<seconds> spare) {
  if (!spare) return "-";
  if (*spare < little) return "nothing";
  constexpr std::chrono::hours day{8};
  return *spare >= 2 * day ? plural(static_cast<std::int64_t>(*spare / day), "working day")
                           : minutes_words(*spare);
}

std::string begin_by_words(const AgendaItem& item, const AgendaPlan& agenda, const Latests& latests,
                           const Moment& moment) {
  if (item.fixed || !agenda.what.problem.jobs[item.at_job].due) return "-";
  const auto latest = latests.of(item);
  if (!latest) return "-";
  if (!latest->alone) return "too late";
  const Instant t = *latest->alone;
  return fmt::format("{}, {}", day_words(moment.zone.local(t).day, moment), clock_words(t, moment));
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
  const auto& from = agenda.what.problem.jobs[item.at_job].tasks[item.at_task].not_before;
  if (item.task.stage == "cut" && from && *from > moment.now)
    out = fmt::format("Its wire is promised for {}. ", day_words(moment.zone.local(*from).day, moment));
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
