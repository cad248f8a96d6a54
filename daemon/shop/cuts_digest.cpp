// What a cut plan follows from. The members are taken apart by name, so that a new one that is left out here
// does not compile.
#include "shop/digest_bytes.hpp"
#include "shop/kept_cuts.hpp"

namespace nutward::shop {

namespace {

// One more where the same problem is planned otherwise, and what is stored shall not stand for it.
constexpr std::int64_t manner = 2;

class Bytes : public DigestBytes<Bytes> {
public:
  using DigestBytes::put;

  void put(const board::Need& v) {
    const auto& [style, arc, least, target, most, cut, tang] = v;
    put(style, arc, least, target, most, cut, tang);
  }
  void put(const board::FitSettings& v) {
    const auto& [setback, gap, dressing, filed, overhang, nip, borderline, trim, crown, clearance, beyond] =
        v;
    put(setback, gap, dressing, filed, overhang, nip, borderline, trim, crown, clearance, beyond);
  }
  void put(const pieces::PieceFacts& v) {
    const auto& [id, kind, length, raw_ends, crown, lot, added, held, tang] = v;
    put(id, kind, length, raw_ends, crown, lot, added, held, tang);
  }
  void put(const cutting::Slot& v) {
    const auto& [job, slot, need, crown, due, lot] = v;
    put(job, slot, need, crown, due, lot);
  }
  void put(const cutting::Piece& v) {
    const auto& [facts, flat_ends, held_elsewhere] = v;
    put(facts, flat_ends, held_elsewhere);
  }
  void put(const cutting::Stock& v) {
    const auto& [kind, id, length, count, flat_ends, crown] = v;
    put(kind, id, length, count, flat_ends, crown);
  }
  void put(const cutting::Cutting& v) {
    const auto& [source, slots] = v;
    put(source.from, source.index, slots);
  }
  void put(const cutting::Problem& v) {
    const auto& [wire, slots, pieces, stock, settings, flat_end, least_useful, held, previous, worth] = v;
    static_cast<void>(previous);
    put(wire, slots, pieces, stock, settings, flat_end, least_useful, held, worth);
  }
};

} // namespace

std::string digest_of(const cutting::Problem& problem) {
  Bytes bytes;
  bytes.put(manner);
  bytes.put(problem);
  return bytes.sha256();
}

} // namespace nutward::shop
