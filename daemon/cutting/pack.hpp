// Cutting lots of frets from new wire alone: as few sticks as can be, then as little wire as can be.
#pragma once

#include "cutting/meter.hpp"
#include "cutting/serve.hpp"

#include <cstdint>
#include <random>
#include <vector>

namespace nutward::cutting {

// Frets of one size (with the nip), from whatever suits them alike.
struct Lot {
  std::int64_t size = 0; // over 0
  int count = 0;
};

// Lengths of new wire that are alike.
struct Wire {
  std::size_t stock = 0;     // in Problem::stock
  std::int64_t room = 0;     // what sizes may add up to
  int count = 0;             // that may be used
  std::vector<char> suits{}; // by lot; empty: all
};

struct Task {
  const Problem& problem;
  std::vector<Lot> lots;   // longest first
  std::vector<Wire> wires; // longest first
};

// One length of wire and the lots that it serves, a lot once for each fret.
struct Bin {
  std::size_t wire = 0;
  std::vector<int> lots;
};

struct Packing {
  std::vector<Bin> bins;
  int unpacked = 0; // frets that did not go in
  Price price;
};

// Fewer unpacked, then the smaller price.
bool better(const Packing& a, const Packing& b);

// What no packing of everything is below. `taken` counts only once `sticks` is reached.
struct PackBound {
  std::int64_t sticks = 0;
  std::int64_t taken = 0;
};
inline bool reached(const Packing& p, const PackBound& b) {
  return p.unpacked == 0 && p.price.sticks <= b.sticks && p.price.taken <= b.taken;
}

std::int64_t sizes_of(const Task& task, const Bin& bin);
Price price_of(const Task& task, const Packing& packing);

using Chance = std::mt19937_64; // its numbers are the same everywhere; std's distributions are not
inline bool one_in(Chance& chance, std::uint64_t n) {
  return chance() % n == 0;
}

// Fills one length after another, each as full as a short search makes it; begins over with frets withheld at
// random, until the bound is reached, `attempts` are made or the meter is out. Coils come first, then (in
// some attempts) blanks, then sticks, the longest first.
Packing pack(const Task& task, const PackBound& bound, int attempts, Chance& chance, Meter& meter);

} // namespace nutward::cutting
