#include "serve/token.hpp"

#include "serve/percent.hpp"
#include "shop/answer.hpp"

#include <algorithm>
#include <array>
#include <openssl/crypto.h>
#include <openssl/evp.h>
#include <openssl/rand.h>

namespace nutward::serve {
namespace {

constexpr std::string_view prefix = "nwt_";
constexpr std::size_t digits = 64;
constexpr std::size_t good_part = 16; // digits after the prefix that no ordinary word has

bool is_hex(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
}

std::string hex_of(const unsigned char* bytes, std::size_t size) {
  std::string out;
  for (std::size_t i = 0; i < size; ++i) {
    out += "0123456789abcdef"[bytes[i] >> 4];
    out += "0123456789abcdef"[bytes[i] & 0xf];
  }
  return out;
}

} // namespace

std::string new_token() {
  std::array<unsigned char, digits / 2> bytes{};
  if (RAND_priv_bytes(bytes.data(), static_cast<int>(bytes.size())) != 1)
    throw shop::Problem(shop::Fault::broken, "The system gave no random bytes.", "", "Try again.");
  return std::string(prefix) + hex_of(bytes.data(), bytes.size());
}

std::string digest_of(std::string_view text) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> hash{};
  unsigned size = 0;
  if (EVP_Digest(text.data(), text.size(), hash.data(), &size, EVP_sha256(), nullptr) != 1)
    throw shop::Problem(shop::Fault::broken, "SHA-256 is not to be had.", "", "");
  return hex_of(hash.data(), size);
}

bool same_digest(std::string_view a, std::string_view b) {
  return a.size() == b.size() && CRYPTO_memcmp(a.data(), b.data(), a.size()) == 0;
}

bool is_token(std::string_view text) {
  return text.size() == prefix.size() + digits && text.starts_with(prefix) &&
         std::all_of(text.begin() + prefix.size(), text.end(), is_hex);
}

bool holds_token(std::string_view text) {
  for (auto at = text.find(prefix); at != std::string_view::npos; at = text.find(prefix, at + 1)) {
    const std::string_view after = text.substr(at + prefix.size(), good_part);
    if (after.size() == good_part && std::all_of(after.begin(), after.end(), is_hex)) return true;
  }
  return false;
}

bool address_holds_token(std::string_view text) {
  if (holds_token(text)) return true;
  std::string plain(text);
  for (int pass = 0; pass < 2 && plain.find('%') != std::string::npos; ++pass) {
    plain = unescape(plain, false).text;
    if (holds_token(plain)) return true;
  }
  return false;
}

std::optional<std::string_view> bearer_of(std::string_view authorization) {
  constexpr std::string_view scheme = "bearer";
  const auto lower = [](char x, char y) {
    return (x >= 'A' && x <= 'Z' ? static_cast<char>(x | 0x20) : x) == y;
  };
  if (authorization.size() <= scheme.size() ||
      !std::equal(scheme.begin(), scheme.end(), authorization.begin(),
                  [&](char y, char x) { return lower(x, y); }) ||
      authorization[scheme.size()] != ' ')
    return std::nullopt;
  authorization.remove_prefix(scheme.size());
  authorization.remove_prefix(std::min(authorization.find_first_not_of(' '), authorization.size()));
  return authorization;
}

} // namespace nutward::serve
