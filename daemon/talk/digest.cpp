#include "talk/digest.hpp"

#include <openssl/sha.h>

#include <array>

namespace nutward::talk {

std::string digest(std::string_view text, std::string_view conversation) {
  // The length in front keeps "ab" + "c" apart from "a" + "bc".
  std::string all = std::to_string(text.size()) + ":";
  all.append(text).append(conversation);
  std::array<unsigned char, SHA256_DIGEST_LENGTH> hash{};
  SHA256(reinterpret_cast<const unsigned char*>(all.data()), all.size(), hash.data());
  std::string out;
  for (unsigned char b : hash) {
    out += "0123456789abcdef"[b >> 4];
    out += "0123456789abcdef"[b & 15];
  }
  return out;
}

} // namespace nutward::talk
