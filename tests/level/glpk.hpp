// Claims as a linear program for GLPK, run as a program: by how much at least they must be missed. Several go
// into one model, since nothing binds them together.
#pragma once

#include "level/feasible.hpp"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iomanip>
#include <sstream>
#include <stdexcept>
#include <string>
#include <unistd.h>
#include <vector>

namespace glpk {

using namespace nutward::level;

inline bool is_here() {
  return std::system("command -v glpsol >/dev/null 2>&1") == 0;
}

// No claim of it leaves a choice: `some` is empty.
struct Program {
  Claims claims;
  std::vector<Unknown> unknowns;
};

// A folder of this process's own, removed at the end.
struct Folder {
  std::filesystem::path at =
      std::filesystem::temp_directory_path() / ("nutward-level-glpk-" + std::to_string(::getpid()));
  Folder() { std::filesystem::create_directory(at); }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(at, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
};

inline void write(const std::filesystem::path& file, const std::vector<Program>& programs) {
  std::ofstream out(file);
  out << std::setprecision(17) << "Minimize\n missed:";
  for (std::size_t p = 0; p < programs.size(); ++p)
    out << " + t" << p << "\n";
  out << "Subject To\n";
  for (std::size_t p = 0; p < programs.size(); ++p) {
    for (const std::uint32_t r : programs[p].claims.all) {
      const auto row = programs[p].claims.row(r);
      out << " t" << p;
      for (std::size_t j = 0; j < programs[p].unknowns.size(); ++j) {
        const Unknown& u = programs[p].unknowns[j];
        const double factor = (u.low ? -1 : 1) * row[u.column];
        if (factor != 0) out << (factor < 0 ? " - " : " + ") << std::abs(factor) << " a" << p << "x" << j;
      }
      out << "\n >= " << programs[p].claims.least[r] << "\n";
    }
  }
  out << "Bounds\n";
  for (std::size_t p = 0; p < programs.size(); ++p) {
    for (std::size_t j = 0; j < programs[p].unknowns.size(); ++j)
      out << " 0 <= a" << p << "x" << j << " <= " << most_amount << "\n";
  }
  out << "End\n";
}

// The values of t, which the objective names first. Columns are "j NUMBER STATUS VALUE …" in GLPK's own
// format.
inline std::vector<double> read(const std::filesystem::path& file, std::size_t programs) {
  std::ifstream in(file);
  std::vector<double> out;
  for (std::string line; std::getline(in, line) && out.size() < programs;) {
    std::istringstream words(line);
    std::string kind, status;
    std::size_t number = 0;
    double value = 0;
    words >> kind;
    if (kind == "j" && words >> number >> status >> value) out.push_back(value);
  }
  if (out.size() != programs) throw std::runtime_error("glpsol left no solution");
  return out;
}

// In mm, one for each program: by how much its worst claim is missed at least.
inline std::vector<double> missed_by(const std::vector<Program>& programs, const Folder& folder) {
  const auto model = folder.at / "claims.lp", solution = folder.at / "claims.sol";
  write(model, programs);
  const std::string run = "glpsol --lp " + model.string() + " -w " + solution.string() + " >/dev/null 2>&1";
  if (std::system(run.c_str()) != 0) throw std::runtime_error("glpsol failed");
  return read(solution, programs.size());
}

} // namespace glpk
