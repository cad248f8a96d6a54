// Which reading comes next: against what every span would leave, by diagnosing again with each outcome; and
// whole sessions at an invented board, from the first reading until it may be called level.
#include "level/cases.hpp"
#include "level/next.hpp"
#include "level/outcomes.hpp"
#include "support/effort.hpp"

using namespace bench;
using nutward::test::rounds;

namespace {

// How many explanations are left with one reading more: those that still hold are of the same size.
std::size_t left(const Case& c, const LineFinding& before, Reading more) {
  std::vector<Reading> with = c.readings;
  with.push_back(more);
  const auto found = diagnose(with, c.lines).on(more.line);
  if (found.explanations.empty()) return 0;
  const std::size_t size = found.explanations.front().parts.size();
  return size == before.explanations.front().parts.size() ? found.explanations.size() : 0;
}

std::string spans(const std::vector<Span>& all) {
  std::string out;
  for (const Span& s : all)
    out += fmt::format("{}-{} ", s.from, s.to);
  return out;
}

// Ends when the board may be called level. Whatever is found is put right.
struct Session {
  Lines lines;
  std::array<World, 3> worlds;
  std::vector<Reading> readings{};
  std::vector<Touched> touched{};
  int revision = 0, taken = 0;

  const World& on(Line line) const { return worlds[static_cast<std::size_t>(line)]; }

  void read(const Next& next) {
    Reading r = steady(next.span.from, next.span.to, next.line);
    r.revision = revision;
    if (!holds(r, lines, on(next.line))) r.felt = Felt::rocks;
    // Within a micrometre of ε a hand may say either; the claims want one of them.
    readings.push_back(r);
    ++taken;
  }
  // The deviations of the first explanation left are put right; a fret that was not off stays as it was.
  bool put_right(const LineFinding& finding) {
    if (finding.explanations.empty()) return false;
    ++revision;
    for (const Amount& part : finding.explanations.front().parts) {
      World& world = worlds[static_cast<std::size_t>(finding.line)];
      if (part.off.slot) {
        world.amount[*lines.find(*part.off.slot)] = 0;
        touched.push_back({*part.off.slot, revision});
      } else {
        world.bow = 0;
        for (const Crown& crown : lines.on(Line::middle))
          touched.push_back({crown.slot, revision});
      }
    }
    return true;
  }
};

} // namespace

TEST_CASE("the sequence runs from the whole line to every three") {
  CHECK(spans(sequence(lines(a_board(7)))) == "1-7 1-3 2-4 3-5 4-6 5-7 ");
  CHECK(spans(sequence(lines(a_board(3)))) == "1-3 ");
  CHECK(spans(sequence(lines(a_board(4)))) == "1-3 2-4 ");
  const auto long_one = sequence(lines(a_board(22)));
  CHECK(spans({long_one.begin(), long_one.begin() + 8}) == "1-22 1-12 11-22 1-7 6-12 11-17 16-22 1-3 ");
  for (std::size_t i = 1; i < long_one.size(); ++i)
    CHECK(long_one[i].to - long_one[i].from <= long_one[i - 1].to - long_one[i - 1].from);
  for (int n = 1; n <= 20; ++n)
    CHECK(std::count(long_one.begin(), long_one.end(), Span{n, n + 2}) == 1);
}

TEST_CASE("after 6 to 8 rocked, the next reading tells two of the three apart from the third") {
  const Lines lines = nutward::level::lines(a_board(22));
  const std::vector readings{rocks(6, 8)};
  const auto next = next_reading(readings, lines, diagnose(readings, lines));
  REQUIRE(next);
  CHECK(next->why == Why::splits);
  CHECK(next->line == Line::middle);
  CHECK(next->before == 3);
  CHECK(std::max(next->if_rocks, next->if_steady) == 2);
  CHECK(next->span.to - next->span.from <= 4);
}

TEST_CASE("no span would leave fewer in its worse outcome than the one that is chosen") {
  std::mt19937 random(8);
  int chosen = 0;
  for (int i = 0; i < rounds(300); ++i) {
    CAPTURE(i);
    const Case c = honest_case(random, 4, 8, any(random, 1, 7), any(random, 1, 3));
    const auto diagnosis = diagnose(c.readings, c.lines);
    const LineFinding& finding = diagnosis.on(Line::middle);
    if (finding.explanations.size() < 2) continue;
    const Length eps{200'000};
    const auto next = next_reading(c.readings, c.lines, diagnosis, {}, eps);
    if (next && next->why == Why::straight) continue;
    const std::size_t all = finding.explanations.size();
    std::size_t best = all + 1; // the worse outcome of a span that tells anything
    for (int from = 1; from + 2 <= static_cast<int>(c.lines.size()); ++from) {
      for (int to = from + 2; to <= static_cast<int>(c.lines.size()); ++to) {
        if (std::any_of(c.readings.begin(), c.readings.end(), [&](const Reading& r) {
              return r.span == Span{from, to};
            }))
          continue;
        Reading a = rocks(from, to), b = steady(from, to);
        a.epsilon = b.epsilon = eps;
        const std::size_t if_rocks = left(c, finding, a), if_steady = left(c, finding, b);
        const bool tells = (if_rocks > 0 && if_rocks < all) || (if_steady > 0 && if_steady < all);
        if (tells) best = std::min(best, std::max(if_rocks, if_steady));
        if (!next || next->why != Why::splits || next->span != Span{from, to}) continue;
        CHECK(next->if_rocks == if_rocks);
        CHECK(next->if_steady == if_steady);
      }
    }
    if (next && next->why == Why::splits) {
      ++chosen;
      CHECK(std::max(next->if_rocks, next->if_steady) == best);
    } else {
      CHECK(best == all + 1);
    }
  }
  CHECK(chosen > rounds(40));
}

// Both outcomes are asked of a linear program each, without any of the points that are known beforehand.
TEST_CASE("what a span could show under an explanation is what its claims allow") {
  std::mt19937 random(14);
  int both = 0, one = 0;
  for (int i = 0; i < rounds(300); ++i) {
    CAPTURE(i);
    const Case c = honest_case(random, 5, 9, any(random, 2, 9), 3);
    const auto found = diagnose(c.readings, c.lines).on(Line::middle);
    Outcomes outcomes(c.readings, c.lines, found, 100, Length{200'000});
    const auto frets = c.lines.size();
    for (std::size_t a = 0; a + 2 < frets; ++a) {
      for (std::size_t b = a + 2; b < frets; ++b) {
        std::array<std::optional<Claims>, 2> with;
        for (const Felt felt : {Felt::steady, Felt::rocks}) {
          auto readings = c.readings;
          readings.push_back(rocks(static_cast<int>(a) + 1, static_cast<int>(b) + 1));
          readings.back().felt = felt;
          readings.back().epsilon = Length{200'000};
          with[felt == Felt::rocks ? 1 : 0] = claims_of(c.lines, Line::middle, readings);
        }
        Feasible steady(*with[0]), rocking(*with[1]);
        for (std::size_t e = 0; e < outcomes.size(); ++e) {
          Set set;
          for (const Off& off : offs(found.explanations[e]))
            set.push_back({static_cast<std::uint32_t>(off.slot ? *c.lines.find(*off.slot) : frets),
                           off.way == Way::low});
          const Outcome could = outcomes.of(e, a, b);
          const bool may_steady = steady.possible(set), may_rock = rocking.possible(set);
          if (may_steady == could.steady && may_rock == could.rocks) {
            ++(may_steady && may_rock ? both : one);
            continue;
          }
          CHECK_FALSE((may_steady || may_rock)); // all between ε and a micrometre more
        }
      }
    }
  }
  CHECK(both > rounds(500));
  CHECK(one > rounds(500));
}

TEST_CASE("a session that takes what is asked for ends level, and what was off is right by then") {
  std::mt19937 random(9);
  int most = 0;
  for (int run = 0; run < 40; ++run) {
    CAPTURE(run);
    Session session{lines(a_board(22, board::Cylinder{Length{305'000'000}})), {}};
    for (World& world : session.worlds)
      world.amount.assign(22, 0.0);
    for (int i = run % 4; i > 0; --i) { // inside the board, clearly off
      const double by = any(random, 10, 30) * 0.01 * (any(random, 0, 3) == 0 ? -1 : 1);
      session.worlds[static_cast<std::size_t>(any(random, 0, 2))]
          .amount[static_cast<std::size_t>(any(random, 1, 20))] = by;
    }
    bool called = false;
    for (int step = 0; step < 400 && !called; ++step) {
      const auto diagnosis = diagnose(session.readings, session.lines, {}, session.touched);
      REQUIRE(diagnosis.on(Line::middle).finding != Finding::contradiction);
      if (const auto next = next_reading(session.readings, session.lines, diagnosis)) {
        session.read(*next);
        continue;
      }
      bool right = false;
      for (const LineFinding& finding : diagnosis.lines)
        right = session.put_right(finding) || right;
      if (right) continue;
      called = std::all_of(diagnosis.lines.begin(), diagnosis.lines.end(), [&](const LineFinding& f) {
        return level_call(session.readings, session.lines, f).may_be_called;
      });
      REQUIRE(called);
    }
    CHECK(called);
    for (const World& world : session.worlds)
      for (const double amount : world.amount)
        CHECK(std::abs(amount) < 0.05);
    most = std::max(most, session.taken);
  }
  CHECK(most < 120);
}
