// What a cut plan follows from. The members are taken apart by name, so that a new one that is left out here
// does not compile.
#include "shop/kept_cuts.hpp"

#include <openssl/evp.h>

#include <array>
#include <stdexcept>

namespace nutward::shop {

namespace {

// One more where the same problem is planned otherwise, and what is stored shall not stand for it.
constexpr std::int64_t manner = 2;

using units::Length;

class Bytes {
public:
  void put(std::int64_t number) {
    auto left = static_cast<std::uint64_t>(number);
    for (int i = 0; i < 8; ++i, left >>= 8)
      all_ += static_cast<char>(left & 0xff);
  }
  void put(Length v) { put(v.nm); }
  void put(units::Instant v) { put(v.s); }
  template <class E>
  requires(std::is_enum_v<E> || std::is_same_v<E, bool> || std::is_same_v<E, int> ||
           std::is_same_v<E, std::size_t>) void put(E v) {
    put(static_cast<std::int64_t>(v));
  }
  template <class T>
  void put(const std::optional<T>& v) {
    put(v.has_value());
    if (v) put(*v);
  }
  template <class T>
  void put(const std::vector<T>& list) {
    put(list.size());
    for (const T& one : list)
      put(one);
  }
  template <class... T>
  requires(sizeof...(T) > 1) void put(const T&... each) { (put(each), ...); }

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

  std::string sha256() const {
    std::array<unsigned char, EVP_MAX_MD_SIZE> hash{};
    unsigned size = 0;
    if (EVP_Digest(all_.data(), all_.size(), hash.data(), &size, EVP_sha256(), nullptr) != 1)
      throw std::runtime_error("SHA-256 is not to be had from the system's OpenSSL");
    constexpr std::string_view digits = "0123456789abcdef";
    std::string out;
    for (unsigned i = 0; i < size; ++i)
      out += {digits[hash.at(i) >> 4], digits[hash.at(i) & 15]};
    return out;
  }

private:
  std::string all_;
};

} // namespace

std::string digest_of(const cutting::Problem& problem) {
  Bytes bytes;
  bytes.put(manner);
  bytes.put(problem);
  return bytes.sha256();
}

} // namespace nutward::shop
