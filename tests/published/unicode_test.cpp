// Letters, cases and bytes against ICU, as node has it: every character of the Latin, Greek and Cyrillic
// scripts, every space and dash, and every kind of right and wrong UTF-8.
#include "judges.hpp"
#include "units/utf8.hpp"

#include <fmt/format.h>

#include <random>
#include <sstream>

using namespace nutward;
using namespace nutward::published;

namespace {

std::string utf8(char32_t c) {
  const auto low = [&](int shift) { return static_cast<char>(0x80 | ((c >> shift) & 0x3f)); };
  if (c < 0x80) return {static_cast<char>(c)};
  if (c < 0x800) return {static_cast<char>(0xc0 | (c >> 6)), low(0)};
  if (c < 0x10000) return {static_cast<char>(0xe0 | (c >> 12)), low(6), low(0)};
  return {static_cast<char>(0xf0 | (c >> 18)), low(12), low(6), low(0)};
}

std::string hex(std::string_view bytes) {
  std::string out;
  for (const char c : bytes)
    out += fmt::format("{:02x}", static_cast<unsigned char>(c));
  return out;
}

// What ICU says of a character.
struct Character {
  char32_t code = 0;
  std::string lower, composed, decomposed; // UTF-8 in hex; the last two of the character as it is
  bool letter = false, space = false, dash = false, ours = false, // ours: of the three scripts
      hidden = false;                                             // of no width and no meaning in a word (Cf)
};

std::vector<Character> characters() {
  std::vector<Character> out;
  std::vector<std::string> asked;
  for (char32_t c = 0xa0; c < 0x20000; c += c == 0xd7ff ? 0x801 : 1)
    asked.push_back(fmt::format("{:x}", static_cast<std::uint32_t>(c)));
  const auto theirs = answers(by_node("letters"), asked);
  out.reserve(asked.size());
  for (std::size_t k = 0; k < asked.size(); ++k) {
    Character c;
    std::string kinds;
    std::istringstream line{theirs[k]};
    line >> c.lower >> c.composed >> c.decomposed >> kinds;
    c.code = static_cast<char32_t>(std::stoul(asked[k], nullptr, 16));
    const auto is = [&](char kind) { return kinds.find(kind) != std::string::npos; };
    c.letter = is('l'), c.space = is('z'), c.dash = is('d'), c.ours = is('o'), c.hidden = is('c');
    out.push_back(std::move(c));
  }
  return out;
}

const std::vector<Character>& all() {
  static const std::vector<Character> characters_of_icu = characters();
  return characters_of_icu;
}

std::string name(const Character& c) {
  return fmt::format("U+{:04X} {}", static_cast<std::uint32_t>(c.code), utf8(c.code));
}

std::string unhex(const std::string& digits) {
  std::string out;
  for (std::size_t k = 0; k + 1 < digits.size(); k += 2)
    out += static_cast<char>(std::stoi(digits.substr(k, 2), nullptr, 16));
  return out;
}

// Letters of Unicode 16 and 17, which a node may know before utf8proc does.
bool is_new(char32_t c) {
  return (c >= 0xa7cb && c <= 0xa7cf) || c == 0xa7d2 || c == 0xa7d4 || (c >= 0xa7da && c <= 0xa7dc) ||
         c == 0xa7f1 || c == 0x1c89 || c == 0x1c8a;
}

} // namespace

TEST_CASE("letters of Latin, Greek and Cyrillic are folded to lower case as ICU folds them") {
  if (!installed("node", "letters")) return;
  std::size_t letters = 0, capitals = 0;
  for (const Character& c : all()) {
    if (!c.letter || !c.ours || is_new(c.code)) continue;
    const std::string own = utf8(c.code), folded = hex(talk::fold(own));
    // The dotted capital I of Turkish: with ICU's dot left over it would match no word that is typed.
    const std::string theirs = c.code == 0x130 ? "69" : c.lower;
    ++letters, capitals += theirs != hex(own);
    if (folded != theirs) {
      INFO(name(c));
      CHECK(folded == theirs);
    }
  }
  CHECK(letters > 2000);
  CHECK(capitals > 700);
}

TEST_CASE("a letter with its accent behind it is the letter with its accent") {
  if (!installed("node", "letters")) return;
  std::size_t pairs = 0;
  for (const Character& c : all()) {
    if (!c.letter || !c.ours || c.composed == c.decomposed) continue;
    if (c.code == 0x130) continue; // the Turkish one is an i, above; of parts it keeps its dot
    ++pairs;
    const std::string whole = unhex(c.composed), parts = unhex(c.decomposed);
    if (talk::fold(whole) == talk::fold(parts)) continue;
    INFO(name(c));
    CHECK(hex(talk::fold(whole)) == hex(talk::fold(parts)));
  }
  CHECK(pairs > 700);
}

TEST_CASE("words end where ICU has no letter") {
  if (!installed("node", "letters")) return;
  for (const Character& c : all()) {
    const std::string text = "a" + utf8(c.code) + "b";
    const auto tokens = talk::normalise(text).tokens;
    const auto differs = [&](const char* what, bool right) {
      if (right) return;
      INFO(name(c) << " " << what << ", tokens: " << tokens.size());
      CHECK(right);
    };
    if (c.letter && c.ours) differs("is a letter", tokens.size() == 1);
    if (c.space) differs("is a space", tokens.size() == 2);
    if (c.dash && c.code < 0x10000) differs("is a dash", tokens.size() == 3 && tokens[1].is("-"));
    if (c.hidden) differs("is not seen", tokens.size() == 1 && tokens[0].is("ab"));
  }
  // Signs that stand beside numbers and names.
  for (const char* sign :
       {"°", "®", "©", "™", "¶", "§", "·", "…", "€", "×", "÷", "±", "’s", "“", "、", "，", ";", "·"}) {
    INFO(sign);
    CHECK(talk::normalise(std::string("ab") + sign).tokens.front().is("ab"));
  }
}

TEST_CASE("what is UTF-8 is what ICU takes for it") {
  if (!installed("node", "UTF-8")) return;
  std::vector<std::string> texts;
  // The bytes at which the rules change, in every place of a sequence.
  const std::string ends{"\x00\x7f\x80\x8f\x90\x9f\xa0\xbf\xc0\xff", 10};
  for (int lead = 0x80; lead < 0x100; ++lead) {
    const std::string one{static_cast<char>(lead)};
    texts.push_back(one);
    for (const char b : ends) {
      texts.push_back(one + b);
      for (const char c : ends) {
        texts.push_back(one + b + c);
        if (lead < 0xe0) continue;
        for (const char d : ends)
          texts.push_back(one + b + c + d);
      }
    }
  }
  std::mt19937 random(20261126);
  for (int k = 0; k < 3000; ++k) { // texts of several characters, one byte of them changed
    std::string text;
    for (unsigned n = 0; n < 6; ++n) {
      const auto c = std::uniform_int_distribution<std::uint32_t>{1, 0x10ffffu >> (5u * (n % 3u))}(random);
      if (c < 0xd800 || c > 0xdfff) text += utf8(c);
    }
    if (k % 2 == 0 && !text.empty()) text[random() % text.size()] = static_cast<char>(random() % 256);
    texts.push_back(text);
  }
  std::vector<std::string> asked;
  asked.reserve(texts.size());
  for (const std::string& t : texts)
    asked.push_back(hex(t));
  const auto theirs = answers(by_node("utf8"), asked);
  std::size_t right = 0;
  for (std::size_t k = 0; k < texts.size(); ++k) {
    bool ok = true;
    for (std::size_t at = 0; at < texts[k].size();) {
      const units::Utf8Char c = units::utf8_at(texts[k], at);
      ok = ok && c.ok, at += c.bytes;
    }
    right += ok;
    if (ok == (theirs[k] == "1")) continue;
    INFO(hex(texts[k]));
    CHECK(ok == (theirs[k] == "1"));
  }
  CHECK(right > 1500);
  CHECK(right < texts.size() / 2);
}
