// Eigenvalues and eigenvectors of a symmetric 3 × 3 matrix, for bearing.cpp only.
#pragma once

#include <array>

namespace nutward::press {

using Vector3 = std::array<double, 3>;
using Matrix3 = std::array<Vector3, 3>;

inline double dot(const Vector3& a, const Vector3& b) {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

struct Spectrum {
  Vector3 values{};
  Matrix3 vectors{}; // vectors[i] belongs to values[i]; they are orthonormal
};
// By Jacobi's rotations, to the last digits of a double. The matrix must be symmetric and finite.
Spectrum spectrum(Matrix3 m);

} // namespace nutward::press
