// How quickly and how well the agenda is planned. Prints what a move's price costs beside the full
// evaluation, and plans beside the list schedule by due date and the bound of the busiest machine, all of the
// same run.
//
// bench_agenda [full] [hold]. The small run proves that it works. With `hold` it ends with 1 where a move's
// price is not cheap enough beside the full evaluation, or a plan is later than list scheduling by due date.
#include "bench/agenda_shop.hpp"
#include "bench/figures.hpp"
#include "bench/stop_after.hpp"

#include "agenda/begin.hpp"
#include "agenda/check.hpp"
#include "agenda/critical.hpp"
#include "agenda/load.hpp"
#include "agenda/of_plan.hpp"
#include "agenda/promise.hpp"
#include "agenda/windows.hpp"

namespace nutward::bench {

namespace {

using namespace agenda;

Plan plan_for(const Problem& p, double seconds, Times* times = nullptr) {
  const StopAfter stop(seconds);
  Plan out;
  Times own;
  (times != nullptr ? *times : own).take([&] { out = plan(p, {INT64_MAX / 2000, stop.token()}); });
  for (const std::string& wrong : check(p, out))
    throw std::runtime_error("the plan is wrong: " + wrong);
  return out;
}

double open_minutes(const Problem& p, std::size_t unit, Instant to) {
  const std::vector<Window> span{{p.from, to}};
  return static_cast<double>(length(both(p.units[unit].open, span)).count()) / 60;
}

// Microseconds summed without the longest hundredth, which the machine and not the work makes long.
double most_of(const Times& times) {
  const double longest = times.at(0.99);
  double sum = 0;
  for (const double us : times.all())
    sum += std::min(us, longest);
  return sum;
}

constexpr double least_ratio = 10; // by medians

// The moves that a search tries: two neighbours on a chain that holds some job up change places. Priced to
// the end, and as the search does it: given up as soon as it is certain that the plan gets worse. False if
// they are not quick enough.
bool moves_against_full(const Problem& p, int tries) {
  Model m = model_of(p);
  Meter meter({INT64_MAX / 2000});
  const Board board = begin_by_due_date(m, meter);
  Schedule s(m);
  if (!s.assign(board.order(), board.modes())) throw std::runtime_error("the list schedule cannot be kept");
  Chance chance(5);
  Times in_search, to_the_end, full;
  std::vector<Link> path;
  std::vector<Block> blocks;
  for (int n = 0; n < tries; ++n) {
    trace(s, last_op(s, m.job_order[chance.below(static_cast<std::uint32_t>(m.job_order.size()))]), chance,
          path);
    find_blocks(path, blocks);
    if (blocks.empty()) continue;
    const Block b = blocks[chance.below(static_cast<std::uint32_t>(blocks.size()))];
    const std::size_t i = b.first + chance.below(static_cast<std::uint32_t>(b.last - b.first));
    const Move move{path[i].op, s.mode(path[i].op), path[i + 1].op, true};
    const Value now = s.value();
    const auto price = [&](const Value* limit) {
      if (s.try_moves({&move, 1}, limit)) s.take_back();
    };
    in_search.take([&] { price(&now); });
    to_the_end.take([&] { price(nullptr); });
    full.take([&] { s.evaluate(); });
  }
  print_times("a move as the search prices it, and taken back", in_search);
  print_times("a move priced to the end, and taken back", to_the_end);
  print_times("the full evaluation", full);
  const double ratio = full.median() / in_search.median();
  fmt::print(
      "  full / move as searched: {:.1f} by medians, {:.1f} by sums; target at least {} by medians: {}\n",
      ratio, most_of(full) / most_of(in_search), least_ratio, ratio >= least_ratio ? "met" : "MISSED");
  fmt::print("  full / move to the end: {:.1f} by medians, {:.1f} by sums; no target\n",
             full.median() / to_the_end.median(), most_of(full) / most_of(to_the_end));
  return ratio >= least_ratio;
}

struct Figure {
  double open_min = 0; // the deciding machine's end
  double late_h = 0, finish_h = 0;
};
Figure figure(const Problem& p, const Plan& plan) {
  const auto busiest = bottleneck(p, plan);
  return {open_minutes(p, busiest->unit, busiest->planned_end), static_cast<double>(plan.value.late_s) / 3600,
          static_cast<double>(plan.value.finish_s) / 3600};
}

// The engine's plan, with what the shop gives it and nothing more, beside the list schedule by due date.
// Somebody's day goes before the machine's end, so that there is a target for that only where nobody is late.
bool queue_figure(const Shop& shop, double seconds, std::optional<double> target) {
  const Problem p = queue(shop);
  Times times;
  const Plan found = plan_for(p, 0.97 * seconds, &times);
  const Figure list = figure(p, plan(p, {0})), now = figure(p, found);
  const auto busiest = bottleneck(p, found);
  const double bound = open_minutes(p, busiest->unit, busiest->earliest_end);
  const double gap = now.open_min / bound - 1;
  fmt::print("  {:>4} jobs, shop {}, {} in {:4.2f} s: machine {} ends {:.2f} % over its bound (by due date "
             "{:.2f} %)",
             shop.jobs, shop.seed, shop.due < 1 ? "days too near" : "days enough  ", times.median() / 1e6,
             busiest->unit, 100 * gap, 100 * (list.open_min / bound - 1));
  if (target && now.late_h == 0)
    fmt::print(", target {:.2f} %: {}", 100 * *target, gap <= *target ? "met" : "MISSED");
  const bool no_later = found.value.late_s <= plan(p, {0}).value.late_s;
  fmt::print("\n       late {:.1f} h, by due date {:.1f} h", now.late_h, list.late_h);
  if (list.late_h > 0) fmt::print(" ({:.2f} of that)", now.late_h / list.late_h);
  fmt::print(", target no later: {}; all finish times {:.3f} of those by due date\n",
             no_later ? "met" : "MISSED", now.finish_h / list.finish_h);
  return no_later;
}

// A day for one more job in several shops, with the steps that the shop's answer takes.
void promises(int jobs, double seconds) {
  Times times;
  int shops = 0, proved = 0;
  double over_h = 0;
  for (std::uint32_t seed = 1; seed <= 4; ++seed)
    for (const double due : {1.4, 0.9}) {
      Problem p = queue({.jobs = jobs + 1, .seed = seed, .due = due});
      Job extra = p.jobs.back();
      p.jobs.pop_back();
      for (Task& task : extra.tasks)
        task.fixed.reset();
      const Plan present = plan_for(p, seconds);
      Promise found;
      times.take([&] { found = promise(p, present, extra, {60'000}); });
      if (!found.possible) throw std::runtime_error("no promise");
      ++shops;
      proved += found.proved ? 1 : 0;
      over_h += static_cast<double>((found.job.finish - found.earliest).count()) / 3600;
    }
  print_times(fmt::format("a day for one more job, at {} jobs", jobs), times);
  fmt::print(
      "  proved the earliest in {} of {} shops; all together {:.0f} h after what the job alone would take\n",
      proved, shops, over_h);
}

void replan(int jobs, double seconds) {
  Problem p = queue({.jobs = jobs, .seed = 2});
  remember(p, plan_for(p, seconds));
  Times plans;
  for (std::size_t n = 0; n < 5 && n < p.jobs.size(); ++n) { // one job is due in three days
    Problem changed = p;
    changed.jobs[n].due = p.from + std::chrono::hours{72};
    plans.take([&] { (void)plan(changed, {}); });
  }
  print_times(fmt::format("a new plan after one change, at {} jobs", jobs), plans);
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  using namespace nutward::bench;
  const std::vector<std::string_view> words(argv + 1, argv + argc);
  const auto said = [&](std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
  };
  const bool full = said("full");
  const int jobs = full ? 100 : 12;
  fmt::print("the agenda: {} jobs of eight tasks, a press, five sanders, a jig, twelve people\n", jobs);
  bool good = moves_against_full(queue({.jobs = jobs}), full ? 5000 : 100);
  for (std::uint32_t seed = 1; seed <= (full ? 4 : 1); ++seed)
    for (const double due : {1.4, 0.7})
      good &= queue_figure({.jobs = jobs, .seed = seed, .due = due}, full ? 1 : 0.05,
                           full ? std::optional(0.002) : std::nullopt);
  for (std::uint32_t seed = 1; full && seed <= 3; ++seed)
    good &= queue_figure({.jobs = 500, .seed = seed, .due = seed == 2 ? 0.7 : 1.4}, 5, 0.005);
  if (full)
    good &= queue_figure({.jobs = 1000}, 10, std::nullopt); // no figure is asked for but the ten seconds
  promises(jobs, full ? 1 : 0.02);
  replan(jobs, full ? 2 : 0.05);
  return said("hold") && !good ? 1 : 0;
}
