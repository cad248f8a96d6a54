#include "store/chain.hpp"

#include <fmt/core.h>
#include <openssl/evp.h>

#include <array>
#include <stdexcept>

namespace nutward::store {

namespace {

void field(std::string& out, std::string_view text) {
  out += fmt::format("{}:{},", text.size(), text);
}
void field(std::string& out, std::int64_t number) {
  field(out, std::to_string(number));
}

std::string refs(const std::vector<shop::Ref>& touched) {
  std::string out;
  for (const shop::Ref& ref : touched)
    out += fmt::format("{}{} {}", out.empty() ? "" : " ", shop::word_for(ref.thing), ref.id);
  return out;
}

} // namespace

std::string canonical(std::string_view before, const shop::Line& line,
                      const std::vector<std::string>& movements) {
  std::string out;
  field(out, before);
  field(out, line.id);
  field(out, line.group);
  field(out, line.sequence);
  field(out, line.recorded.s);
  field(out, line.happened.s);
  field(out, line.actor);
  for (const std::string& text : {line.via, line.said, line.call, line.answer, line.inverse})
    field(out, text);
  field(out, line.undoes ? std::to_string(*line.undoes) : "");
  field(out, refs(line.touched));
  for (const std::string& movement : movements)
    field(out, movement);
  return out;
}

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr) != 1)
    throw std::runtime_error("SHA-256 is not to be had");
  std::string out;
  for (unsigned int i = 0; i < size; ++i)
    out += fmt::format("{:02x}", digest[i]);
  return out;
}

} // namespace nutward::store
