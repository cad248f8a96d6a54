// Signing what is sent, by Standard Webhooks 1.0.0: the receiver can tell that a message came from this shop,
// unchanged. Pure but for make_secret, which asks the system for random bytes. Safe from any thread.
#pragma once

#include "units/instant.hpp"

#include <array>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::remind {

// A secret that cannot be used. what(): a whole sentence that never repeats the secret itself.
struct BadSecret : std::runtime_error {
  BadSecret(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

// The key shared with one receiver: 24 to 64 bytes. It is written `whsec_` + base64 (RFC 4648 §4, padded).
class Secret {
public:
  static Secret make(); // 32 random bytes; throws std::runtime_error if the system has none
  static Secret parse(std::string_view text); // throws BadSecret: prefix, base64 or number of bytes is wrong
  std::string text() const;                   // as it is shown once to a person
  std::span<const unsigned char> key() const { return key_; }
  friend bool operator==(const Secret&, const Secret&) = default;

private:
  explicit Secret(std::vector<unsigned char> key) : key_(std::move(key)) {}
  std::vector<unsigned char> key_;
};

// "v1," + base64 of HMAC-SHA256 over "id.seconds.body". The body is taken byte for byte.
std::string sign(const Secret& secret, std::string_view id, units::Instant at, std::string_view body);
// One signature for each secret, separated by a space: while a secret is being replaced, both hold. Empty for
// none.
std::string sign(std::span<const Secret> secrets, std::string_view id, units::Instant at,
                 std::string_view body);

// HMAC-SHA256 (RFC 2104, FIPS 180-4) by OpenSSL.
std::array<unsigned char, 32> hmac_sha256(std::span<const unsigned char> key, std::string_view message);

} // namespace nutward::remind
