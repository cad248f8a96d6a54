// How quickly and how well the agenda is planned. Prints what a move's price costs beside the full
// evaluation, and plans beside the list schedule by due date and the bound of the busiest machine, all of the
// same run.
//
// bench_agenda [full]. The small run proves that it works.
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

// The moves that a search tries: two neighbours on a chain that holds some job up change places. A move that
// makes the plan worse is worked out until that is certain.
void moves_against_full(const Problem& p, int tries) {
  Model m = model_of(p);
  Meter meter({INT64_MAX / 2000});
  const Board board = begin_by_due_date(m, meter);
  Schedule s(m);
  if (!s.assign(board.order(), board.modes())) throw std::runtime_error("the list schedule cannot be kept");
  Chance chance(5);
  Times moves, full;
  double all_moves = 0, all_full = 0;
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
    bool possible = false;
    Times one, whole;
    one.take([&] {
      possible = s.try_moves({&move, 1}, &now).has_value();
      if (possible) s.take_back();
    });
    whole.take([&] { s.evaluate(); });
    moves.add(one.median());
    full.add(whole.median());
    all_moves += one.median();
    all_full += whole.median();
  }
  print_times("a move, priced and taken back", moves);
  print_times("the full evaluation", full);
  fmt::print("  full / move: {:.1f} by medians, {:.1f} by sums; target at least 10 by medians: {}\n",
             full.median() / moves.median(), all_full / all_moves,
             full.median() / moves.median() >= 10 ? "met" : "MISSED");
}

void queue_figure(int jobs, double seconds, double target) {
  const Problem p = queue(jobs, 12, 1);
  Times times;
  const Plan list = plan_for(p, 0.0), found = plan_for(p, seconds, &times);
  const auto busiest = bottleneck(p, found);
  const double bound = open_minutes(p, busiest->unit, busiest->earliest_end);
  const double gap = open_minutes(p, busiest->unit, busiest->planned_end) / bound - 1;
  const double before = open_minutes(p, busiest->unit, bottleneck(p, list)->planned_end) / bound - 1;
  fmt::print("  {:>5} jobs in {:6.2f} s: busiest machine's end {:.2f} % over its bound (by due date {:.2f} "
             "%), target "
             "{:.2f} %: {}; late {:.1f} h (by due date {:.1f} h): {}\n",
             jobs, times.median() / 1e6, 100 * gap, 100 * before, 100 * target,
             gap <= target ? "met" : "MISSED", static_cast<double>(found.value.late_s) / 3600,
             static_cast<double>(list.value.late_s) / 3600,
             found.value.late_s <= list.value.late_s ? "met" : "MISSED");
}

void replan_and_promise(int jobs, double seconds) {
  Problem p = queue(jobs, 12, 2);
  const Job extra = p.jobs.back();
  p.jobs.pop_back();
  const Plan present = plan_for(p, seconds);
  Times promises, plans;
  for (int n = 0; n < 5; ++n) {
    const StopAfter stop(0.45);
    promises.take([&] {
      if (!promise(p, present, extra, {200'000, stop.token()}).possible)
        throw std::runtime_error("no promise");
    });
  }
  remember(p, present);
  for (std::size_t n = 0; n < 5 && n < p.jobs.size(); ++n) { // one job is due in three days
    Problem changed = p;
    changed.jobs[n].due = p.from + std::chrono::hours{72};
    plans.take([&] { (void)plan(changed, {}); });
  }
  print_times(fmt::format("a day for one more job, at {} jobs", jobs), promises);
  print_times(fmt::format("a new plan after one change, at {} jobs", jobs), plans);
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  using namespace nutward::bench;
  const bool full = argc > 1 && std::string_view(argv[1]) == "full";
  const int jobs = full ? 100 : 12;
  fmt::print("the agenda: {} jobs of eight tasks, a press, five sanders, a jig, twelve people\n", jobs);
  moves_against_full(queue(jobs, 12, 1), full ? 5000 : 100);
  queue_figure(jobs, full ? 1 : 0.05, full ? 0.002 : 1.0);
  if (full) queue_figure(500, 5, 0.005);
  if (full) queue_figure(1000, 9, 0.01); // no figure is asked for but the ten seconds
  replan_and_promise(jobs, full ? 2 : 0.05);
  return 0;
}
