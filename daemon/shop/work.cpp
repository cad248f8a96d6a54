#include "shop/work.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::shop {

using std::chrono::seconds;

namespace {

bool going_on(const Stage& s) {
  return s.started && !s.stopped && !s.finished;
}

// Where the stretches since a stage was last finished begin.
std::vector<Stage> since_finished(const Job& job, std::string_view stage, const View& view) {
  std::vector<Stage> out;
  for (const Stage& s : view.jobs().stages(job.id)) {
    if (s.kind != stage) continue;
    if (s.finished)
      out.clear();
    else
      out.push_back(s);
  }
  return out;
}

} // namespace

std::optional<Stage> in_hand(const Job& job, std::string_view stage, const View& view) {
  for (const Stage& s : view.jobs().stages(job.id)) {
    if (s.kind == stage && going_on(s)) return s;
  }
  return std::nullopt;
}

std::vector<AtWork> at_work(const View& view, std::optional<std::int64_t> actor) {
  std::vector<AtWork> out;
  for (const Job& job : view.jobs().open()) {
    for (const Stage& s : view.jobs().stages(job.id)) {
      if (going_on(s) && (!actor || s.actor == *actor)) out.push_back({job, s});
    }
  }
  std::stable_sort(out.begin(), out.end(), [](const AtWork& a, const AtWork& b) {
    return std::pair(a.stretch.started, a.stretch.id) < std::pair(b.stretch.started, b.stretch.id);
  });
  return out;
}

bool is_finished(const Job& job, std::string_view stage, const View& view) {
  const auto all = view.jobs().stages(job.id);
  return std::any_of(all.begin(), all.end(), [&](const Stage& s) { return s.kind == stage && s.finished; });
}

std::string next_stage(const Job& job, const View& view) {
  std::string out;
  std::pair<Instant, std::int64_t> stopped{{INT64_MIN}, 0}; // when, and by which stretch
  for (const agenda::Stage& s : stages_of(job, view, setup(view))) {
    const agenda::StageRow& row = agenda::row(s.kind);
    if (row.minutes == 0) continue;
    const auto all = since_finished(job, row.word, view);
    if (!all.empty() && all.back().stopped && stopped < std::pair(*all.back().stopped, all.back().id)) {
      stopped = {*all.back().stopped, all.back().id};
      out = row.word;
    } else if (out.empty() && !is_finished(job, row.word, view)) {
      out = row.word;
    }
  }
  return out;
}

std::optional<seconds> worked_between(Instant from, Instant to, const hours::Calendar& calendar,
                                      const hours::Zone& zone) {
  constexpr std::chrono::hours forgotten{16};
  constexpr seconds one{1};
  if (to <= from) return seconds{0};
  if (hours::is_open(calendar, zone, from) && hours::is_open(calendar, zone, to - one))
    return hours::open_between(calendar, zone, from, to);
  if (to - from > forgotten) return std::nullopt;
  return to - from;
}

std::optional<seconds> spent(const Job& job, std::string_view stage, const View& view, Instant until,
                             const hours::Calendar& calendar, const hours::Zone& zone) {
  std::optional<seconds> out;
  for (const Stage& s : since_finished(job, stage, view)) {
    if (!s.started) continue;
    const auto worked = worked_between(*s.started, s.stopped.value_or(until), calendar, zone);
    if (!worked) return std::nullopt;
    out = out.value_or(seconds{0}) + *worked;
  }
  return out;
}

Stage finish_stage(Tx& tx, const Job& job, std::string_view stage, std::optional<Instant> started,
                   const Moment& moment) {
  Stage s = in_hand(job, stage, tx).value_or(Stage{});
  if (s.id == 0) {
    s.job = job.id;
    s.kind = stage;
    s.sequence = 1;
    for (const Stage& other : tx.jobs().stages(job.id))
      s.sequence = std::max(s.sequence, other.sequence + 1);
    s.actor = moment.who.actor;
  }
  if (started) s.started = started;
  if (s.started && *s.started > moment.happened) {
    throw Problem(Fault::value, "It cannot have started after it was finished.", "started_at",
                  "Check the two times.");
  }
  const auto worked = started ? worked_between(*started, moment.happened, moment.calendar, moment.zone)
                      : s.started || !since_finished(job, stage, tx).empty()
                          ? spent(job, stage, tx, moment.happened, moment.calendar, moment.zone)
                          : std::nullopt;
  s.finished = moment.happened;
  s.recorded = moment.now;
  constexpr std::chrono::minutes least{1}; // begun and finished in one breath: that is no time that it took
  if (const seconds took = worked.value_or(seconds{0}); took >= least) {
    s.open_s = took.count();
    s.frets = static_cast<int>(job.slots.size());
  }
  s.id = tx.put(s);
  return s;
}

std::string minutes_words(seconds time) {
  const std::int64_t m = (time.count() + 30) / 60;
  if (m < 60) return fmt::format("{} min", m);
  return m % 60 == 0 ? fmt::format("{} h", m / 60) : fmt::format("{} h {} min", m / 60, m % 60);
}

Duration duration_of(agenda::StageKind stage, const View& view) {
  const agenda::StageRow& row = agenda::row(stage);
  Duration out{row.minutes, Duration::From::table, 0};
  if (row.minutes == 0) return out;
  std::vector<agenda::Report> reports;
  for (const Took& t : view.jobs().took(row.word, agenda::most_reports))
    reports.push_back({seconds{t.open_s}, t.frets});
  out.reports = static_cast<int>(reports.size());
  if (const auto learnt = agenda::learnt_minutes(stage, reports)) {
    out.minutes = *learnt;
    out.from = Duration::From::learnt;
  }
  for (const StageRule& r : view.machines().rules()) {
    if (r.stage != row.word || !r.minutes) continue;
    out.minutes = *r.minutes;
    out.from = Duration::From::set;
  }
  return out;
}

agenda::Minutes minutes_of(const View& view) {
  agenda::Minutes out = agenda::table_minutes();
  for (const agenda::StageRow& r : agenda::stage_table())
    out.at(static_cast<std::size_t>(r.kind)) = duration_of(r.kind, view).minutes;
  return out;
}

} // namespace nutward::shop
