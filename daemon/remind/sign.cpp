#include "remind/sign.hpp"

#include <fmt/format.h>
#include <openssl/evp.h>
#include <openssl/hmac.h>
#include <openssl/rand.h>

#include <algorithm>
#include <optional>

namespace nutward::remind {

namespace {

constexpr std::string_view prefix = "whsec_";
constexpr std::size_t least_bytes = 24, most_bytes = 64, made_bytes = 32;
constexpr const char* remedy =
    "Give whsec_ followed by the base64 of 24 to 64 random bytes, or leave it out and one is made.";

std::string base64(std::span<const unsigned char> bytes) {
  std::string text(4 * ((bytes.size() + 2) / 3) + 1,
                   '\0'); // EVP_EncodeBlock ends its output with a zero byte
  const int n = EVP_EncodeBlock(reinterpret_cast<unsigned char*>(text.data()), bytes.data(),
                                static_cast<int>(bytes.size()));
  text.resize(static_cast<std::size_t>(n));
  return text;
}

std::optional<std::vector<unsigned char>> from_base64(std::string_view text) {
  if (text.empty() || text.size() % 4 != 0) return std::nullopt;
  std::vector<unsigned char> bytes(text.size() / 4 * 3);
  const int n = EVP_DecodeBlock(bytes.data(), reinterpret_cast<const unsigned char*>(text.data()),
                                static_cast<int>(text.size()));
  if (n < 0) return std::nullopt;
  const std::size_t padding = text.ends_with("==") ? 2 : text.ends_with('=') ? 1 : 0;
  bytes.resize(static_cast<std::size_t>(n) - std::min(padding, static_cast<std::size_t>(n)));
  // OpenSSL forgives blanks and stray bits; one key must have one spelling, so what does not come back is
  // refused.
  if (base64(bytes) != text) return std::nullopt;
  return bytes;
}

} // namespace

Secret Secret::make() {
  std::vector<unsigned char> key(made_bytes);
  if (RAND_bytes(key.data(), static_cast<int>(key.size())) != 1)
    throw std::runtime_error("The system gave no random bytes, so no secret was made.");
  return Secret(std::move(key));
}

Secret Secret::parse(std::string_view text) {
  if (!text.starts_with(prefix)) throw BadSecret("The secret does not begin with whsec_.", remedy);
  text.remove_prefix(prefix.size());
  // Long before the decoder sees it: 64 bytes are 88 characters.
  if (text.size() > 1024) throw BadSecret("The secret is longer than 64 bytes.", remedy);
  auto key = from_base64(text);
  if (!key) throw BadSecret("The secret is not base64 after whsec_.", remedy);
  if (key->size() < least_bytes || key->size() > most_bytes)
    throw BadSecret(fmt::format("The secret holds {} bytes; it must hold {} to {}.", key->size(), least_bytes,
                                most_bytes),
                    remedy);
  return Secret(std::move(*key));
}

std::string Secret::text() const {
  return std::string(prefix) + base64(key_);
}

std::array<unsigned char, 32> hmac_sha256(std::span<const unsigned char> key, std::string_view message) {
  std::array<unsigned char, 32> out{};
  unsigned int n = 0;
  if (HMAC(EVP_sha256(), key.data(), static_cast<int>(key.size()),
           reinterpret_cast<const unsigned char*>(message.data()), message.size(), out.data(),
           &n) == nullptr ||
      n != out.size())
    throw std::runtime_error("HMAC-SHA256 is not to be had from the system's OpenSSL.");
  return out;
}

std::string sign(const Secret& secret, std::string_view id, units::Instant at, std::string_view body) {
  return "v1," + base64(hmac_sha256(secret.key(), fmt::format("{}.{}.{}", id, at.s, body)));
}

std::string sign(std::span<const Secret> secrets, std::string_view id, units::Instant at,
                 std::string_view body) {
  std::string all;
  for (const Secret& secret : secrets) {
    if (!all.empty()) all += ' ';
    all += sign(secret, id, at, body);
  }
  return all;
}

} // namespace nutward::remind
