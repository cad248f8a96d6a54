// What a move changes, worked out by itself, is what working everything out anew gives.
#include "agenda/begin.hpp"
#include "agenda/cases.hpp"

#include "support/catch.hpp"

using namespace nutward::agenda;
using cases::below;

namespace {

struct Times {
  std::vector<int> order, modes;
  std::vector<Second> start, end;
  Value value;
  bool operator==(const Times&) const = default;
};

Times times_of(const Schedule& s) {
  Times out{s.order(), s.modes(), {}, {}, s.value()};
  for (const int op : s.order()) {
    out.start.push_back(s.start(op));
    out.end.push_back(s.end(op));
  }
  return out;
}

// A random op behind or before another one, or in another mode.
Move some_move(std::mt19937& random, const Schedule& s) {
  const int n = static_cast<int>(s.order().size());
  const int op = s.order()[static_cast<std::size_t>(below(random, n))];
  const auto modes = static_cast<int>(s.model().ops[static_cast<std::size_t>(op)].modes.size());
  const int mode = cases::one_in(random, 3) ? below(random, modes) : s.mode(op);
  const int far = cases::one_in(random, 2) ? 4 : n;
  const int to = std::clamp(s.position(op) - far / 2 + below(random, far + 1), 0, n - 1);
  return {op, mode, s.order()[static_cast<std::size_t>(to)], cases::one_in(random, 2)};
}

// Gives how many moves were possible.
int wander(std::uint32_t seed, const cases::Wanted& wanted) {
  std::mt19937 random(seed);
  const Problem p = cases::some_shop(random, wanted);
  Model m = model_of(p);
  Meter meter({1'000'000});
  const Board board = begin_by_due_date(m, meter);
  Schedule s(m), again(m);
  REQUIRE(s.assign(board.order(), board.modes()));
  if (s.order().empty()) return 0;
  int possible = 0;
  bool good = true;
  for (int n = 0; n < 300 && good; ++n) {
    const Times before = times_of(s);
    const auto value = s.try_move(some_move(random, s));
    if (value) {
      ++possible;
      const Times now = times_of(s);
      good = again.assign(s.order(), s.modes()) && times_of(again) == now && now.value == *value;
      if (cases::one_in(random, 2)) {
        s.keep();
        continue;
      }
      s.take_back();
    }
    good = good && times_of(s) == before;
  }
  CAPTURE(seed);
  CHECK(good);
  return possible;
}

} // namespace

TEST_CASE("a move's times are those of its order, and taking it back leaves no trace") {
  int possible = 0;
  for (std::uint32_t seed = 0; seed < 12; ++seed) {
    possible += wander(seed, {.jobs = 14,
                              .tasks = 6,
                              .horizon_h = 900,
                              .doubles = 30,
                              .lags = false,
                              .most_lags = false,
                              .set_ups = seed % 2 == 0});
    possible += wander(seed, {.jobs = 10, .tasks = 5, .horizon_h = 900, .doubles = 20, .most_lags = false});
  }
  CHECK(possible > 3000);
}

TEST_CASE("so it is where most lags push back what is before them") {
  int possible = 0;
  for (std::uint32_t seed = 0; seed < 30; ++seed)
    possible += wander(100 + seed, {.jobs = 8, .tasks = 4, .horizon_h = 900, .doubles = 12});
  CHECK(possible > 2000);
}
