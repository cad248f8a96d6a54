// Diagnoses against every amount of a grid: a straightedge is laid on the heights themselves. What the grid
// can explain the diagnosis must name; whatever the diagnosis names must come with amounts that the
// straightedge agrees with; and nothing smaller may do in the grid.
#include "level/cases.hpp"
#include "support/effort.hpp"

using namespace bench;
using nutward::test::rounds;

namespace {

using Signed = std::vector<Off>;

void put(World& world, const Lines& lines, const Off& off, double by) {
  const double amount = off.way == Way::high ? by : -by;
  (off.slot ? world.amount[*lines.find(*off.slot)] : world.bow) = amount;
}

// Amounts of the grid with which all readings hold, for these deviations from `from` on; told to `take`,
// which says whether to go on.
template <class Take>
bool every_amount(const Case& c, const Signed& offs, std::size_t from, World& world,
                  std::vector<double>& amounts, const Take& take) {
  if (from == offs.size()) return !all_hold(c.readings, c.lines, Line::middle, world) || take(amounts);
  for (int tenths = 1; tenths <= 10; ++tenths) {
    amounts[from] = tenths * 0.1;
    put(world, c.lines, offs[from], amounts[from]);
    if (!every_amount(c, offs, from + 1, world, amounts, take)) return false;
  }
  put(world, c.lines, offs[from], 0);
  return true;
}

template <class Take>
void every_set(const Lines& lines, std::size_t size, Signed& set, int from, const Take& take) {
  if (set.size() == size) return take(set);
  for (int at = from; at <= static_cast<int>(lines.size()); ++at) {
    for (const Way way : {Way::high, Way::low}) {
      set.push_back({at == 0 ? std::nullopt : std::optional<int>(at), way});
      every_set(lines, size, set, at + 1, take);
      set.pop_back();
    }
  }
}

std::set<Signed> sets_of(const LineFinding& finding) {
  std::set<Signed> out;
  for (const Explanation& e : finding.explanations)
    out.insert(offs(e));
  return out;
}

void check_examples(const Case& c, const LineFinding& finding) {
  for (const Explanation& e : finding.explanations) {
    World world{std::vector<double>(c.lines.size(), 0.0), 0};
    for (std::size_t i = 0; i < e.parts.size(); ++i) {
      const double size = std::abs(e.example[i]);
      CHECK((e.example[i] > 0) == (e.parts[i].off.way == Way::high));
      CHECK(size >= e.parts[i].least - 1e-6);
      CHECK(size <= e.parts[i].most + 1e-6);
      put(world, c.lines, e.parts[i].off, size);
    }
    CHECK(all_hold(c.readings, c.lines, Line::middle, world, 1.01e-6));
  }
}

// In the grid nothing smaller than the diagnosis does, and what is of its size is in it, within its amounts.
void check_against_grid(const Case& c, const LineFinding& finding) {
  const std::size_t size =
      finding.explanations.empty()
          ? (finding.finding == Finding::level || finding.finding == Finding::unread ? 0 : 4)
          : finding.explanations.front().parts.size();
  const auto found = sets_of(finding);
  for (std::size_t k = 0; k <= std::min<std::size_t>(size, 3); ++k) {
    Signed set;
    every_set(c.lines, k, set, 0, [&](const Signed& s) {
      const auto at = std::find_if(finding.explanations.begin(), finding.explanations.end(),
                                   [&](const Explanation& e) { return offs(e) == s; });
      World world{std::vector<double>(c.lines.size(), 0.0), 0};
      std::vector<double> amounts(k);
      every_amount(c, s, 0, world, amounts, [&](const std::vector<double>& by) {
        CAPTURE(text(s));
        CHECK(k == size);
        if (k == 0) return false;
        REQUIRE(at != finding.explanations.end());
        for (std::size_t i = 0; i < k; ++i) {
          CHECK(by[i] >= at->parts[i].least - 1e-6);
          CHECK(by[i] <= at->parts[i].most + 1e-6);
        }
        return k < 3; // of the large sets one is enough
      });
    });
  }
}

void check_case(const Case& c) {
  const auto all = diagnose(c.readings, c.lines);
  const LineFinding& finding = all.on(Line::middle);
  check_examples(c, finding);
  check_against_grid(c, finding);
}

} // namespace

TEST_CASE("readings of a hidden truth have the explanations that a grid of amounts has") {
  std::mt19937 random(1);
  std::set<std::size_t> sizes;
  for (int i = 0; i < rounds(150); ++i) {
    CAPTURE(i);
    const Case c = honest_case(random, 3, 6, any(random, 1, 8), any(random, 0, 2));
    check_case(c);
    const auto found = diagnose(c.readings, c.lines).on(Line::middle);
    CHECK(found.finding != Finding::contradiction);
    CHECK(found.finding != Finding::many);
    sizes.insert(found.explanations.empty() ? 0 : found.explanations.front().parts.size());
  }
  CHECK((sizes.size() >= 3 || nutward::test::effort > 1));
}

TEST_CASE("three off on eight frets have the explanations that a grid of amounts has") {
  std::mt19937 random(2);
  int large = 0;
  for (int i = 0; large < 6; ++i) {
    CAPTURE(i);
    const Case c = honest_case(random, 7, 8, any(random, 6, 16), 3);
    const auto found = diagnose(c.readings, c.lines).on(Line::middle);
    CHECK(found.finding != Finding::many);
    if (found.explanations.empty() || found.explanations.front().parts.size() < 3) continue;
    ++large;
    check_case(c);
  }
}

TEST_CASE("arbitrary readings have the explanations that a grid of amounts has") {
  std::mt19937 random(3);
  std::set<Finding> findings;
  for (int i = 0; i < rounds(120); ++i) {
    CAPTURE(i);
    const Case c = arbitrary_case(random, 3, 6, any(random, 1, 5));
    check_case(c);
    findings.insert(diagnose(c.readings, c.lines).on(Line::middle).finding);
  }
  CHECK(findings.count(Finding::contradiction) == 1);
  CHECK(findings.count(Finding::frets) == 1);
  CHECK(findings.count(Finding::bow) == 1);
}

TEST_CASE("the amounts of a single deviation run as far as a straightedge agrees, to a micrometre") {
  std::mt19937 random(4);
  int compared = 0;
  for (int i = 0; i < rounds(60); ++i) {
    const Case c = honest_case(random, 4, 8, any(random, 1, 4), 1);
    const auto found = diagnose(c.readings, c.lines).on(Line::middle);
    for (const Explanation& e : found.explanations) {
      if (e.parts.size() != 1) continue;
      CAPTURE(i, text(offs(e)));
      double least = 2, most = 0;
      for (int um = 1; um <= 1000; ++um) {
        World world{std::vector<double>(c.lines.size(), 0.0), 0};
        put(world, c.lines, e.parts[0].off, um * 1e-3);
        if (!all_hold(c.readings, c.lines, Line::middle, world, 1e-6)) continue;
        least = std::min(least, um * 1e-3);
        most = um * 1e-3;
      }
      if (most == 0) continue; // between two micrometres
      ++compared;
      CHECK(std::abs(least - e.parts[0].least) < 1.01e-3);
      CHECK(std::abs(most - e.parts[0].most) < 1.01e-3);
    }
  }
  CHECK(compared > rounds(50));
}
