// The distance between words against someone else's: pyxdameraulevenshtein (Debian package
// python3-pyxdameraulevenshtein), which counts as we do, no part changed twice ("optimal string alignment").
#include "judges.hpp"
#include "talk/spelling.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <random>

using namespace nutward;
using namespace nutward::published;
using talk::distance;

namespace {

// Words of the trade, and such as differ by little.
constexpr std::array words{"fret",    "frets", "wire",     "press",   "pressed", "pieces",
                           "level",   "slot",  "offcut",   "medium",  "narrow",  "mandolin",
                           "ukulele", "jumbo", "received", "recheck", "weighed", "tang",
                           "crown",   "stick", "scrap",    "hold",    "agenda",  "supply"};

std::string with_mistakes(std::string word, int mistakes, std::mt19937& random) {
  const auto any = [&](std::size_t below) {
    return std::uniform_int_distribution<std::size_t>{0, below - 1}(random);
  };
  for (int k = 0; k < mistakes; ++k) {
    const char letter = "abcdefghijklmnopqrstuvwxyz"[any(26)];
    const std::size_t at = any(word.size());
    switch (any(4)) {
    case 0:
      word[at] = letter;
      break;
    case 1:
      word.insert(at, 1, letter);
      break;
    case 2:
      if (word.size() > 1) word.erase(at, 1);
      break;
    default:
      if (at + 1 < word.size()) std::swap(word[at], word[at + 1]);
    }
  }
  return word;
}

// Of few letters, so that many of them are in both words, at other places.
std::string of_few_letters(std::mt19937& random) {
  std::string out(std::uniform_int_distribution<std::size_t>{1, 9}(random), 'a');
  for (char& c : out)
    c = "abc"[std::uniform_int_distribution<std::size_t>{0, 2}(random)];
  return out;
}

} // namespace

TEST_CASE("the distance of words is that of pyxdameraulevenshtein") {
  const std::string python =
      "/usr/bin/python3 -c \"import sys\nfrom pyxdameraulevenshtein import "
      "damerau_levenshtein_distance as d\nfor line in sys.stdin: print(d(*line.split()))\"";
  if (std::system("/usr/bin/python3 -c 'import pyxdameraulevenshtein' 2>/dev/null") != 0) {
    WARN(
        "python3-pyxdameraulevenshtein is not installed: distances between words were not compared with it.");
    return;
  }
  std::mt19937 random(20261126);
  std::vector<std::pair<std::string, std::string>> pairs{{"ca", "abc"}, {"kitten", "sitting"}};
  for (const char* word : words) {
    for (const char* other : words)
      pairs.emplace_back(word, other);
    for (int k = 0; k < 60; ++k)
      pairs.emplace_back(with_mistakes(word, 1 + k % 5, random), word);
  }
  for (int k = 0; k < 2000; ++k)
    pairs.emplace_back(of_few_letters(random), of_few_letters(random));
  std::vector<std::string> asked;
  asked.reserve(pairs.size());
  for (const auto& [a, b] : pairs)
    asked.push_back(fmt::format("{} {}", a, b));
  const std::vector<std::string> theirs = answers(python, asked);
  for (std::size_t k = 0; k < pairs.size(); ++k) {
    const auto& [a, b] = pairs[k];
    const int value = std::stoi(theirs[k]);
    INFO(a << " and " << b << ": " << value);
    CHECK(distance(a, b, 40) == value);
    CHECK(distance(b, a, 40) == value);
    for (const int most : {1, 2, 3})
      CHECK(distance(a, b, most) == std::min(value, most + 1));
  }
}

// Levenshtein's distances of these pairs are those of the textbooks (from memory); a swap counts one here, so
// that pairs with one are less far than there.
TEST_CASE("the distance of the textbooks' pairs") {
  struct Pair {
    const char *a, *b;
    int distance;
  };
  for (const Pair p :
       {Pair{"kitten", "sitting", 3}, Pair{"saturday", "sunday", 3}, Pair{"rosettacode", "raisethysword", 8},
        Pair{"gumbo", "gambol", 2}, Pair{"intention", "execution", 5}, Pair{"flaw", "lawn", 2},
        Pair{"book", "back", 2}, Pair{"gifts", "profit", 5}, Pair{"ca", "abc", 3}, Pair{"teh", "the", 1},
        Pair{"recieve", "receive", 1}, Pair{"a cat", "an act", 2}}) {
    INFO(p.a << " and " << p.b);
    CHECK(distance(p.a, p.b, 40) == p.distance);
  }
}
