// Linear programs against a general-purpose solver: GLPK's, run as a program.
#include "level/cases.hpp"
#include "level/glpk.hpp"

using namespace bench;

namespace {

// Random readings' claims, one row chosen where they leave a choice, for a few frets or (one in four) all of
// them.
glpk::Program random_program(std::mt19937& random) {
  const Case c = any(random, 0, 1) == 0 ? arbitrary_case(random, 4, 24, any(random, 1, 8))
                                        : honest_case(random, 4, 24, any(random, 3, 12), any(random, 1, 5));
  glpk::Program out{claims_of(c.lines, Line::middle, c.readings), {}};
  for (const auto& some : out.claims.some)
    out.claims.all.push_back(
        some[static_cast<std::size_t>(any(random, 0, static_cast<int>(some.size()) - 1))]);
  out.claims.some.clear();
  const bool all = any(random, 0, 3) == 0;
  while (out.unknowns.empty()) {
    for (std::uint32_t column = 0; column < out.claims.columns; ++column) {
      if (all) {
        out.unknowns.push_back({column, false});
        out.unknowns.push_back({column, true});
      } else if (any(random, 0, static_cast<int>(out.claims.columns)) < 4) {
        out.unknowns.push_back({column, any(random, 0, 1) == 0});
      }
    }
  }
  return out;
}

} // namespace

TEST_CASE("a thousand random linear programs are possible exactly where GLPK finds them so") {
  if (!glpk::is_here()) {
    WARN("SKIPPED: there is no glpsol here (Debian: glpk-utils)");
    return;
  }
  const glpk::Folder folder;
  std::mt19937 random(10);
  int possible = 0, not_possible = 0, too_near = 0;
  for (int run = 0; run < 4; ++run) {
    std::vector<glpk::Program> programs;
    for (int i = 0; i < 250; ++i)
      programs.push_back(random_program(random));
    const std::vector<double> missed = glpk::missed_by(programs, folder);
    for (std::size_t i = 0; i < programs.size(); ++i) {
      CAPTURE(run, i, missed[i]);
      // GLPK forgives 1e-7 of a row, we half a nanometre (5e-7 mm).
      if (missed[i] > 3e-7 && missed[i] < 1e-6) {
        ++too_near;
        continue;
      }
      const bool says = Feasible(programs[i].claims).possible(programs[i].unknowns);
      CHECK(says == (missed[i] <= 3e-7));
      ++(says ? possible : not_possible);
    }
  }
  CHECK(possible > 200);
  CHECK(not_possible > 200);
  CHECK(too_near < 10);
}
