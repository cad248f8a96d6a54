// The bytes that a digest of a plan's input is over: each number as eight bytes (little-endian), each list
// and text behind its length, each optional behind whether it is there.
#pragma once

#include "units/instant.hpp"
#include "units/length.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

namespace nutward::shop {

// Hex SHA-256. Throws std::runtime_error where the system's OpenSSL has none.
std::string sha256_of(const std::string& bytes);

// Derived has a put() for each of its records, which takes the members apart, and `using DigestBytes::put`.
template <class Derived>
class DigestBytes {
public:
  void put(std::int64_t number) {
    auto left = static_cast<std::uint64_t>(number);
    for (int i = 0; i < 8; ++i, left >>= 8)
      all_ += static_cast<char>(left & 0xff);
  }
  void put(units::Length v) { put(v.nm); }
  void put(units::Instant v) { put(v.s); }
  void put(std::chrono::seconds v) { put(std::int64_t{v.count()}); }
  void put(const std::string& v) {
    put(static_cast<std::int64_t>(v.size()));
    all_ += v;
  }
  template <class E>
  requires(std::is_enum_v<E> || std::is_same_v<E, bool> || std::is_same_v<E, int> ||
           std::is_same_v<E, std::size_t>) void put(E v) {
    put(static_cast<std::int64_t>(v));
  }
  template <class T>
  void put(const std::optional<T>& v) {
    put(v.has_value());
    if (v) self().put(*v);
  }
  template <class T>
  void put(const std::vector<T>& list) {
    put(list.size());
    for (const T& one : list)
      self().put(one);
  }
  template <class... T>
  requires(sizeof...(T) > 1) void put(const T&... each) { (self().put(each), ...); }

  std::string sha256() const { return sha256_of(all_); }

private:
  friend Derived;
  DigestBytes() = default;
  Derived& self() { return static_cast<Derived&>(*this); }

  std::string all_;
};

} // namespace nutward::shop
