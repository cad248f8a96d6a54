#include "shop/digest_bytes.hpp"

#include <openssl/evp.h>

#include <array>
#include <stdexcept>
#include <string_view>

namespace nutward::shop {

std::string sha256_of(const std::string& bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> hash{};
  unsigned size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), hash.data(), &size, EVP_sha256(), nullptr) != 1)
    throw std::runtime_error("SHA-256 is not to be had from the system's OpenSSL");
  constexpr std::string_view digits = "0123456789abcdef";
  std::string out;
  out.reserve(2 * static_cast<std::size_t>(size));
  for (unsigned i = 0; i < size; ++i)
    out += {digits[hash.at(i) >> 4], digits[hash.at(i) & 15]};
  return out;
}

} // namespace nutward::shop
