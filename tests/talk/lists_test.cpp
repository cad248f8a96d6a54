#include "rows_of_the_test.hpp"
#include "shop/lists.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

using namespace nutward::talk;
using namespace nutward::talk::test;
using nutward::test::effort;
using nutward::test::rounds;

namespace {

const Phrasebook& real() {
  static const Phrasebook b{nutward::shop::questions(), nutward::shop::commands()};
  return b;
}

Understood to_the_shop(std::string_view text) {
  static const Names with_tall = [] {
    Names n = names();
    n.wires.push_back(named({Thing::wire, 6}, "tall", "tall"));
    n.wires.push_back(named({Thing::wire, 7}, "brass", "brass"));
    return n;
  }();
  return understand(normalise(text), {real(), with_tall, State{}, now()});
}

std::vector<const nutward::shop::Row*> all_rows() {
  return real().rows();
}

} // namespace

TEST_CASE("every example of the shop's lists is understood as its own row") {
  for (const nutward::shop::Row* row : all_rows()) {
    for (std::string_view example : row->examples) {
      INFO(row->name << ": " << example);
      const Understood u = to_the_shop(example);
      INFO(u.tell.text);
      for (const auto& c : u.tell.choices)
        UNSCOPED_INFO(c.label);
      CHECK(u.what != Understood::What::tell);
      if (!u.calls.empty()) CHECK(u.calls.front().row == row->name);
    }
  }
}

TEST_CASE("every row of the shop's lists can be said in at least three ways besides its canonical form, and "
          "has an example") {
  for (const nutward::shop::Row* row : all_rows()) {
    INFO(row->name);
    CHECK(row->phrases.size() >= 3);
    CHECK_FALSE(row->examples.empty());
  }
}

TEST_CASE("every row of the shop's lists and every parameter says in words what it is") {
  for (const nutward::shop::Row* row : all_rows()) {
    INFO(row->name);
    CHECK(row->what.size() > 10);
    CHECK(row->what.ends_with('.'));
    for (const nutward::shop::Param& p : row->takes) {
      INFO(p.name);
      CHECK(p.what.size() > 1);
      CHECK(p.what != p.name);
    }
  }
}

TEST_CASE("one wrong letter in an example of the shop's lists never does another command") {
  int known = 0, same = 0; // mistakes in words that the patterns know, of five letters or more
  const auto counts = [](std::string_view text, std::size_t at) {
    const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
    std::size_t from = at, to = at;
    while (from > 0 && letter(text[from - 1]))
      --from;
    while (to < text.size() && letter(text[to]))
      ++to;
    return to - from >= 5 && to - at > 1 && real().lexicon().find(text.substr(from, to - from)) >= 0;
  };
  for (const nutward::shop::Row* row : all_rows()) {
    for (std::string_view example : row->examples) {
      for (std::size_t i = 0; i < example.size(); i += effort) {
        for (int kind = 0; kind < 3; ++kind) {
          std::string text{example};
          if (kind == 0)
            text.erase(i, 1);
          else if (kind == 1)
            text[i] = text[i] == 'e' ? 'a' : 'e';
          else if (i + 1 < text.size())
            std::swap(text[i], text[i + 1]);
          const Understood u = to_the_shop(text);
          INFO(row->name << ": " << text);
          if (u.what == Understood::What::order) CHECK(u.calls.front().row == row->name);
          if (!counts(example, i)) continue;
          ++known;
          same += u.what != Understood::What::tell && u.calls.front().row == row->name ? 1 : 0;
        }
      }
    }
  }
  INFO(same << " of " << known << " are understood as what was meant");
  CHECK(known > rounds(500));
  // What might be another order is asked about, so not all can be.
  CHECK(same * 100 >= known * 87);
}

TEST_CASE("phrases are tried in the lists' order, wherever they lie in memory") {
  std::vector<int> words;
  for (const Phrase& phrase : real().phrases())
    words.insert(words.end(), phrase.first.begin(), phrase.first.end());
  const auto found = real().starting(words);
  REQUIRE(found.size() == real().phrases().size());
  // The book's deque is the order; a Phrase knows its place in it.
  for (std::size_t i = 0; i < found.size(); ++i)
    REQUIRE(found[i] == &real().phrases()[i]);
}
