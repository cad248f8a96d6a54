#include "press/spectrum.hpp"

#include <cmath>

namespace nutward::press {

namespace {

// Turns axes p and q of `m` so that m[p][q] vanishes, and the rows of `vectors` with them.
void rotate(Matrix3& m, Matrix3& vectors, std::size_t p, std::size_t q) {
  const double slant = (m[q][q] - m[p][p]) / (2 * m[p][q]);
  const double t = (slant < 0 ? -1.0 : 1.0) / (std::abs(slant) + std::hypot(slant, 1.0));
  const double c = 1 / std::hypot(t, 1.0), s = t * c;
  for (std::size_t k = 0; k < 3; ++k) {
    const double a = m[k][p], b = m[k][q];
    m[k][p] = c * a - s * b;
    m[k][q] = s * a + c * b;
  }
  for (std::size_t k = 0; k < 3; ++k) {
    const double a = m[p][k], b = m[q][k];
    m[p][k] = c * a - s * b;
    m[q][k] = s * a + c * b;
    const double u = vectors[p][k], v = vectors[q][k];
    vectors[p][k] = c * u - s * v;
    vectors[q][k] = s * u + c * v;
  }
  m[p][q] = m[q][p] = 0;
}

} // namespace

Spectrum spectrum(Matrix3 m) {
  Spectrum out;
  out.vectors = {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};
  constexpr int most_sweeps = 30; // six are usual: convergence is quadratic
  for (int sweep = 0; sweep < most_sweeps; ++sweep) {
    if (m[0][1] == 0 && m[0][2] == 0 && m[1][2] == 0) break;
    for (std::size_t p = 0; p < 2; ++p) {
      for (std::size_t q = p + 1; q < 3; ++q) {
        constexpr double lost = 1e-18; // beside the diagonal: what a double does not see
        if (std::abs(m[p][q]) <= lost * std::sqrt(std::abs(m[p][p] * m[q][q])) || m[p][q] * m[p][q] == 0)
          m[p][q] = m[q][p] = 0;
        else
          rotate(m, out.vectors, p, q);
      }
    }
  }
  out.values = {m[0][0], m[1][1], m[2][2]};
  return out;
}

} // namespace nutward::press
