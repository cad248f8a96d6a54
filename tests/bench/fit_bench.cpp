// `fit` in a small and in a large tin, against the same index probes by hand on the same database.
//
//   bench_fit [full]      full: 1,000 and 1,000,000 pieces; otherwise 200 and 5,000
#include "bench/big_tin.hpp"
#include "bench/by_hand.hpp"
#include "bench/figures.hpp"
#include "hours/load_zone.hpp"
#include "shop/bench.hpp"
#include "shop/run.hpp"

#include <map>

namespace nutward::bench {

namespace {

struct FixedClock : shop::Clock {
  units::Instant now() const override { return {1'700'000'000}; }
};

// A question as pieces::best takes it.
struct Question {
  Asked asked;
  std::int64_t wire = 0;
  pieces::Wanted wanted;
};

constexpr std::size_t offers = 5; // as the shop's fit asks for

std::vector<Question> questions(const BigTin& tin, const std::vector<Asked>& slots, const shop::View& view,
                                const shop::Setup& setup) {
  std::map<std::int64_t, const shop::Job*> jobs;
  for (const shop::Job& job : tin.jobs)
    jobs[job.id] = &job;
  std::vector<Question> out;
  for (const Asked& a : slots) {
    const shop::Job& job = *jobs.at(a.job);
    Question q{a, job.wire, {}};
    q.wanted.need = shop::need_of(job, a.slot, setup);
    q.wanted.another = shop::least_useful(job.wire, view, setup).length;
    out.push_back(std::move(q));
  }
  return out;
}

// The tin as it is, writing down what it was asked for and the ids of what it gave.
struct Recorder : pieces::Source {
  Recorder(const pieces::Source& tin, Probes& probes) : tin_(tin), probes_(probes) {}
  std::vector<pieces::PieceFacts> page(const pieces::Walk& walk, const std::optional<pieces::Mark>& after,
                                       std::size_t at_most) const override {
    auto out = tin_.page(walk, after, at_most);
    probes_.pages.push_back({walk, after, at_most});
    for (const auto& piece : out) {
      ids += piece.id;
      held = held || piece.held_for_this;
    }
    return out;
  }
  mutable std::int64_t ids = 0;
  mutable bool held = false;

private:
  const pieces::Source& tin_;
  Probes& probes_;
};

std::vector<pieces::Candidate> best(const pieces::Source& source, const Question& q,
                                    const shop::Setup& setup) {
  return pieces::best(source, q.wanted, setup.fit, {}, offers);
}

struct Measured {
  Times hand, best, ask;
};

// Writes down the probes of each question, and sees to it that the ones by hand find the same pieces. (A held
// piece can push a free one off its page; such pages are not compared.)
std::vector<Probes> probes_of(const std::vector<Question>& all, const shop::View& view,
                              const shop::Setup& setup, ByHand& hand) {
  std::vector<Probes> out;
  std::size_t pages = 0, alike = 0;
  for (const Question& q : all) {
    Probes& probes = out.emplace_back(Probes{q.wire, q.asked.job, q.asked.slot, {}});
    const shop::TinSource tin(view, q.wire, q.asked.job, q.asked.slot);
    const Recorder recorder(tin, probes);
    best(recorder, q, setup);
    pages += probes.pages.size();
    const std::int64_t by_hand = hand.run(probes);
    if (recorder.held) continue;
    if (by_hand != recorder.ids) throw std::runtime_error("The probes by hand are not those of fit.");
    ++alike;
  }
  fmt::print("  {:.1f} probes a question; by hand they found the same in all of {} compared\n",
             static_cast<double>(pages) / static_cast<double>(all.size()), alike);
  if (alike == 0) throw std::runtime_error("No question could be compared.");
  return out;
}

Measured measure(std::int64_t pieces, std::size_t count, int rounds) {
  const Folder folder;
  Times filling;
  BigTin tin;
  filling.take([&] { tin = make_big_tin(folder.path() / "shop", pieces); });
  fmt::print("A tin of {} pieces, filled in {:.1f} s\n", pieces, filling.median() / 1e6);
  const std::vector<Asked> slots = tin.random_slots(count);
  const FixedClock clock;
  shop::Rooms rooms(hours::load_zone);
  shop::Executor executor(*tin.store, clock, rooms);
  ByHand hand(tin.file);
  Measured out;
  tin.store->read([&](const shop::View& view) {
    const shop::Setup setup = shop::setup(view);
    const std::vector<Question> all = questions(tin, slots, view, setup);
    const std::vector<Probes> probes = probes_of(all, view, setup, hand);
    for (int round = 0; round < rounds; ++round) {
      for (const Probes& p : probes)
        out.hand.take([&] { hand.run(p); });
      for (const Question& q : all) {
        const shop::TinSource source(view, q.wire, q.asked.job, q.asked.slot);
        out.best.take([&] { best(source, q, setup); });
      }
    }
  });
  const shop::Caller who{1, shop::Role::lead, "bench", "bench"};
  for (const Asked& a : slots) {
    const shop::Call call{"fit",
                          {{"job", shop::Ref{shop::Thing::job, a.job}}, {"slot", std::int64_t{a.slot}}}};
    out.ask.take([&] { executor.ask(call, who); });
  }
  print_times("the probes by hand in SQLite's C API", out.hand);
  print_times("pieces::best over shop::TinSource, inside one snapshot", out.best);
  print_times("the whole question, Executor::ask", out.ask);
  std::fflush(stdout);
  return out;
}

int run(bool full) {
  const Measured small = measure(full ? 1'000 : 200, full ? 3000 : 100, full ? 3 : 1);
  const Measured large = measure(full ? 1'000'000 : 5'000, full ? 3000 : 100, full ? 3 : 1);
  print_ratio("fit in the large tin, best over the probes by hand", large.best, large.hand, 1.5);
  print_ratio("fit in the large tin, whole question over the probes by hand", large.ask, large.hand, 1.5);
  print_ratio("fit from the small to the large tin, best", large.best, small.best, 2);
  print_ratio("fit from the small to the large tin, whole question", large.ask, small.ask, 2);
  return 0;
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_fit", argc, argv, nutward::bench::run);
}
