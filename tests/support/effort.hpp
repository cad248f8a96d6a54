// How often a random test goes round. Sanitizers make each round many times as long, and find in fewer rounds
// what they look for: the whole number is for the build without.
#pragma once

namespace nutward::test {

#if defined(__SANITIZE_THREAD__)
inline constexpr int effort = 10; // some fifty times as long
#elif defined(__SANITIZE_ADDRESS__)
inline constexpr int effort = 4;
#else
inline constexpr int effort = 1;
#endif

// At least one.
constexpr int rounds(int whole) {
  return whole < effort ? 1 : whole / effort;
}

} // namespace nutward::test
