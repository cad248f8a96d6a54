#include "store/chain.hpp"

#include <openssl/evp.h>

#include <array>
#include <charconv>
#include <stdexcept>

namespace nutward::store {

namespace {

void number(std::string& out, std::int64_t value) {
  std::array<char, 20> digits{};
  const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), value);
  out.append(digits.data(), end);
}
void field(std::string& out, std::string_view text) {
  number(out, static_cast<std::int64_t>(text.size()));
  out += ':';
  out += text;
  out += ',';
}
void field(std::string& out, std::int64_t value) {
  std::string text;
  number(text, value);
  field(out, text);
}

void ref(std::string& out, const shop::Ref& ref) {
  if (!out.empty()) out += ' ';
  out += shop::word_for(ref.thing);
  out += ' ';
  number(out, ref.id);
}

std::string touched_of(const shop::Line& line) {
  std::string out;
  for (const shop::Ref& r : line.touched)
    ref(out, r);
  return out;
}

std::string about_of(const std::set<About>& about) {
  std::string out;
  for (const About& a : about) {
    ref(out, a.ref);
    if (a.slot == About::whole) continue;
    out += " slot ";
    number(out, a.slot);
  }
  return out;
}

} // namespace

std::string canonical(std::string_view before, const shop::Line& line, const Beside& beside) {
  std::string out;
  out.reserve(400 + line.said.size() + line.call.size() + line.answer.size() + line.inverse.size());
  field(out, before);
  field(out, line.id);
  field(out, line.group);
  field(out, std::int64_t{line.sequence});
  field(out, line.recorded.s);
  field(out, line.happened.s);
  field(out, line.actor);
  for (const std::string* text : {&line.via, &line.said, &line.call, &line.answer, &line.inverse})
    field(out, *text);
  if (line.undoes)
    field(out, *line.undoes);
  else
    field(out, std::string_view{});
  field(out, touched_of(line));
  field(out, about_of(beside.about));
  for (const std::string& movement : beside.movements)
    field(out, movement);
  return out;
}

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &size, EVP_sha256(), nullptr) != 1)
    throw std::runtime_error("SHA-256 is not to be had");
  constexpr std::string_view hex = "0123456789abcdef";
  std::string out;
  out.reserve(std::size_t{size} * 2);
  for (unsigned int i = 0; i < size; ++i) {
    out += hex[digest.at(i) >> 4];
    out += hex[digest.at(i) & 15];
  }
  return out;
}

} // namespace nutward::store
