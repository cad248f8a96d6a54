#include "support/catch.hpp"
#include "talk/normalise.hpp"

using namespace nutward::talk;

namespace {
std::string flat(std::string_view text) {
  return normalise(text).flat;
}
} // namespace

TEST_CASE("numbers in words become digits, each number by itself") {
  CHECK(flat("slot three") == "slot 3");
  CHECK(flat("Twenty-two frets") == "22 frets");
  CHECK(flat("nine and ten") == "9 and 10");
  CHECK(flat("nine through fourteen") == "9 through 14");
  CHECK(flat("one hundred and five") == "105");
  CHECK(flat("two and one sixteenth inches") == "2 1/16 inches");
  CHECK(flat("two and three thirty-seconds in") == "2 3/32 in");
  CHECK(flat("half an inch") == "1/2 inch");
  CHECK(flat("three quarters of an inch") == "3/4 inch");
  CHECK(flat("fifty two point four") == "52.4");
  CHECK(flat("a dozen") == "12");
  CHECK(flat("half a dozen") == "6");
  CHECK(flat("the twenty second slot") == "the 22 slot");
  CHECK(flat("the third slot") == "the 3 slot");
}

TEST_CASE("typographic marks become plain ones and fractions of one character are read") {
  CHECK(flat("1¾ in") == "1 3/4 in");
  CHECK(flat("¾″") == "3/4\"");
  CHECK(flat("9–14") == "9-14");
  CHECK(flat("2\xC2\xA0mm") == "2 mm");
  CHECK(flat("don’t") == "do not");
  CHECK(flat("DON'T CAN'T won't dont") == "do not can not will not do not");
  CHECK(flat("what's Anna's") == "what is anna");
}

TEST_CASE("tokens know the bytes that they came from") {
  const Sentence s = normalise("Note on job 12: Größe ist \"A \\\"b\\\" C\" .");
  CHECK(s.said(5, 7) == "Größe ist");
  CHECK(s.tokens[5].word == "größe");
  CHECK(s.tokens.back().kind == Token::Kind::quoted);
  CHECK(s.tokens.back().word == "A \"b\" C");
}

TEST_CASE("an inch mark behind a number opens no quotation") {
  CHECK(flat("2 1/16\" and 3\"") == "2 1/16\" and 3\"");
  CHECK(normalise("wire \"3\"").tokens.back().kind == Token::Kind::quoted);
}

TEST_CASE("a question mark is remembered and the end of the sentence dropped") {
  CHECK(normalise("and slot 4?").asks);
  CHECK(normalise("really?!").asks);
  CHECK_FALSE(normalise("use it.").asks);
  CHECK(normalise("???").tokens.empty());
}

TEST_CASE("a text that cannot be a sentence is refused with what would do") {
  CHECK_THROWS_AS(normalise(std::string(4001, 'a')), BadText);
  CHECK_NOTHROW(normalise(std::string(4000, 'a')));
  CHECK_THROWS_AS(normalise("use \xff it"), BadText);
  CHECK_THROWS_AS(normalise("use \xc0\xaf"), BadText);
  CHECK_THROWS_AS(normalise(std::string_view("use\0it", 6)), BadText);
  CHECK_THROWS_AS(normalise("use\x1b[2J"), BadText);
  CHECK_THROWS_AS(normalise("use \xc2\x9b it"), BadText);
}
