// Random boards, worlds and readings. ε is 0.2 mm here, far more than a hand's, so that a grid of amounts in
// tenths of a millimetre meets and misses readings alike.
#pragma once

#include "level/support.hpp"

namespace bench {

struct Case {
  Lines lines;
  std::vector<Reading> readings; // all on the middle line
};

inline int any(std::mt19937& random, int from, int to) {
  return std::uniform_int_distribution<int>(from, to)(random);
}

inline Lines random_lines(std::mt19937& random, int least, int most) {
  return lines(a_board(any(random, least, most)));
}

// Of a grid of 0.1 mm: so many frets off, or one less and a bow.
inline World random_world(std::mt19937& random, const Lines& lines, int off) {
  World world{std::vector<double>(lines.size(), 0.0), 0};
  for (int i = 0; i < off; ++i) {
    const double by = any(random, 1, 10) * 0.1 * (any(random, 0, 1) == 0 ? -1 : 1);
    const int at = any(random, 0, static_cast<int>(lines.size()));
    (at == static_cast<int>(lines.size()) ? world.bow : world.amount[static_cast<std::size_t>(at)]) = by;
  }
  return world;
}

// Any reading that check() takes; now and then with what a feeler or the eye says.
inline Reading random_reading(std::mt19937& random, const Lines& lines) {
  for (;;) {
    const int n = static_cast<int>(lines.size());
    const int from = any(random, 1, n - 2),
              to = any(random, from + 2, std::min(n, from + (any(random, 0, 1) == 0 ? n : 3)));
    Reading r = any(random, 0, 1) == 0 ? rocks(from, to) : steady(from, to);
    r.epsilon = Length{200'000};
    if (r.felt == Felt::rocks && any(random, 0, 1) == 0) r.pivot = any(random, from + 1, to - 1);
    if (any(random, 0, 3) == 0) {
      if (r.felt == Felt::rocks || any(random, 0, 1) == 0)
        r.held = any(random, 0, 1) == 0 ? Held::nutward : Held::bodyward;
      (any(random, 0, 1) == 0 ? r.gaps : r.snug).push_back(any(random, from, to));
    }
    if (any(random, 0, 14) == 0)
      (any(random, 0, 1) == 0 ? r.looks_sunk : r.looks_high).push_back(any(random, 1, n));
    try {
      check(r, lines);
      return r;
    } catch (const BadReading&) {
      continue; // a feeler where the edge rests, mostly
    }
  }
}

// What a hand would report of this world. nullopt: nothing, since all lies between ε and a micrometre more.
inline std::optional<Reading> honest_reading(std::mt19937& random, const Lines& lines, const World& world) {
  for (int tries = 0; tries < 500; ++tries) {
    Reading r = random_reading(random, lines);
    if (holds(r, lines, world)) return r;
  }
  return std::nullopt;
}

inline Case honest_case(std::mt19937& random, int frets_least, int frets_most, int readings, int off) {
  Case out{random_lines(random, frets_least, frets_most), {}};
  const World world = random_world(random, out.lines, off);
  for (int i = 0; i < readings; ++i)
    if (const auto r = honest_reading(random, out.lines, world)) out.readings.push_back(*r);
  return out;
}

inline Case arbitrary_case(std::mt19937& random, int frets_least, int frets_most, int readings) {
  Case out{random_lines(random, frets_least, frets_most), {}};
  for (int i = 0; i < readings; ++i)
    out.readings.push_back(random_reading(random, out.lines));
  return out;
}

} // namespace bench
