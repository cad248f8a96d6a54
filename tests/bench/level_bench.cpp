// What readings of a 24-fret board mean, and which comes next; and one feasibility test over GLPK's.
//
//   bench_level [full]      full: 400 boards of each kind; otherwise 10
#include "bench/figures.hpp"
#include "level/glpk.hpp"
#include "level/next.hpp"

#include <random>

namespace nutward::bench {

namespace {

using namespace level;

Lines a_line() {
  board::Board board;
  board.scale = Length{645'160'000};
  board.slots = 24;
  board.nut_width = Length{43'000'000};
  board.far_width = Length{52'000'000};
  board.surface = board::Cylinder{Length{305'000'000}};
  return lines(board);
}

int any(std::mt19937& random, int from, int to) {
  return std::uniform_int_distribution<int>(from, to)(random);
}

// Heights on a line, up to three frets (or two and the bow) off by 0.05 to 0.4 mm.
std::vector<double> a_truth(std::mt19937& random, const Lines& lines, Line line, int off) {
  const auto& at = lines.on(line);
  const auto bow = bow_shape(lines, line);
  std::vector<double> out;
  for (const Crown& crown : at)
    out.push_back(crown.z);
  for (int i = 0; i < off; ++i) {
    const double by = any(random, 5, 40) * 0.01 * (any(random, 0, 2) == 0 ? -1 : 1);
    const auto which = static_cast<std::size_t>(any(random, 0, static_cast<int>(at.size())));
    for (std::size_t f = 0; f < at.size(); ++f)
      out[f] += which == at.size() ? by * bow[f] : which == f ? by : 0;
  }
  return out;
}

Reading a_reading(std::mt19937& random, const Lines& lines, Line line, const std::vector<double>& h) {
  const auto& at = lines.on(line);
  const int frets = static_cast<int>(at.size());
  const int wide = any(random, 0, 2) == 0 ? any(random, 6, frets) : any(random, 3, 5);
  const auto i = static_cast<std::size_t>(any(random, 0, frets - wide)),
             j = i + static_cast<std::size_t>(wide) - 1;
  Reading out;
  out.line = line;
  out.span = {at[i].slot, at[j].slot};
  for (std::size_t k = i + 1; k < j; ++k) {
    const double on_line = h[i] + (h[j] - h[i]) * (at[k].x - at[i].x) / (at[j].x - at[i].x);
    if (h[k] - on_line > out.epsilon.mm()) out.felt = Felt::rocks;
  }
  return out;
}

std::vector<Reading> some_readings(std::mt19937& random, const Lines& lines, int count, int off) {
  std::vector<Reading> out;
  for (const Line line : all_lines) {
    const auto truth = a_truth(random, lines, line, off);
    const int mine = (count + static_cast<int>(line)) / 3;
    for (int i = 0; i < mine; ++i)
      out.push_back(a_reading(random, lines, line, truth));
  }
  return out;
}

void diagnoses(const Lines& lines, int count, int off, bool full) {
  std::mt19937 random(static_cast<unsigned>(count));
  Times times;
  double explanations = 0;
  int next = 0;
  for (int i = full ? 400 : 10; i > 0; --i) {
    const auto readings = some_readings(random, lines, count, off);
    times.take([&] {
      const Diagnosis found = diagnose(readings, lines);
      next += next_reading(readings, lines, found) ? 1 : 0;
      for (const LineFinding& f : found.lines)
        explanations += static_cast<double>(f.explanations.size()) / 3;
    });
  }
  const auto runs = static_cast<double>(times.count());
  print_times(fmt::format("{} readings on 3 lines, {} off on each", count, off), times);
  fmt::print("    {:.1f} explanations a line, a next reading in {} of {}, at most {:.1f} ms\n",
             explanations / runs, next, times.count(), times.at(1) / 1000);
}

// Three unknowns under the claims of seven readings, one row chosen where they leave a choice.
glpk::Program a_program(std::mt19937& random, const Lines& lines) {
  const auto truth = a_truth(random, lines, Line::middle, 3);
  std::vector<Reading> readings;
  for (int i = 0; i < 7; ++i)
    readings.push_back(a_reading(random, lines, Line::middle, truth));
  glpk::Program out{claims_of(lines, Line::middle, readings), {}};
  for (const auto& some : out.claims.some)
    out.claims.all.push_back(
        some[static_cast<std::size_t>(any(random, 0, static_cast<int>(some.size()) - 1))]);
  out.claims.some.clear();
  for (std::uint32_t c = 0; out.unknowns.size() < 3; c += static_cast<std::uint32_t>(any(random, 1, 8)))
    out.unknowns.push_back({c, any(random, 0, 1) == 0});
  return out;
}

int against_glpk(const Lines& lines, bool full) {
  if (!glpk::is_here()) {
    fmt::print("  there is no glpsol here: no baseline\n");
    return 0;
  }
  const glpk::Folder folder;
  std::mt19937 random(1);
  Times ours, one_by_one, together;
  std::vector<glpk::Program> programs;
  for (int i = full ? 200 : 10; i > 0; --i) {
    programs.push_back(a_program(random, lines));
    const glpk::Program& program = programs.back();
    bool possible = false;
    ours.take([&] { possible = Feasible(program.claims).possible(program.unknowns); });
    double missed = 0;
    one_by_one.take([&] { missed = glpk::missed_by({program}, folder).front(); });
    if (possible != (missed <= 5e-7) && std::abs(missed - 5e-7) > 3e-7) {
      fmt::print("bench_level: GLPK misses the claims by {} mm.\n", missed);
      return 1;
    }
  }
  Times all;
  all.take([&] { glpk::missed_by(programs, folder); });
  together.add(all.median() / static_cast<double>(programs.size()));
  print_times("feasibility test, claims prepared anew", ours);
  print_times("baseline: GLPK's, a run of glpsol for each", one_by_one);
  print_times("baseline: GLPK's, all in one model, each", together);
  print_ratio("feasibility test over a run of glpsol (50 times faster is wished)", ours, one_by_one, 0.02);
  print_ratio("feasibility test over its share of one model", ours, together, 1);
  fmt::print("  so it is {:.0f} and {:.0f} times faster\n", one_by_one.median() / ours.median(),
             together.median() / ours.median());
  return 0;
}

int run(bool full) {
  const Lines lines = a_line();
  fmt::print(
      "What readings mean, the next one included (wished for: 20 readings 20 ms, 60 readings 100 ms)\n");
  for (const int count : {20, 60}) {
    for (const int off : {1, 2, 3})
      diagnoses(lines, count, off, full);
  }
  return against_glpk(lines, full);
}

} // namespace

} // namespace nutward::bench

int main(int argc, char** argv) {
  return nutward::bench::run_as("bench_level", argc, argv, nutward::bench::run);
}
