#include "support/catch.hpp"
#include "talk/spelling.hpp"

using namespace nutward::talk;

// Worked by hand from the definition (Damerau 1964, no part changed twice); "ca"/"abc" is the textbook
// example in which this form gives 3 and the unrestricted one 2 (from memory).
TEST_CASE("a typing mistake is one letter wrong, missing, too many, or two swapped") {
  CHECK(distance("scrap", "scrap", 3) == 0);
  CHECK(distance("scrpa", "scrap", 3) == 1);
  CHECK(distance("scra", "scrap", 3) == 1);
  CHECK(distance("scraap", "scrap", 3) == 1);
  CHECK(distance("screp", "scrap", 3) == 1);
  CHECK(distance("ca", "abc", 3) == 3);
  CHECK(distance("kitten", "sitting", 3) == 3);
  CHECK(distance("kitten", "sitting", 2) == 3); // cut off at most + 1
  CHECK(distance("", "abc", 5) == 3);
}

TEST_CASE("longer words bear more mistakes, three letters none") {
  CHECK(mistyped("ues", "use") == -1);
  CHECK(mistyped("hodl", "hold") == 1);
  CHECK(mistyped("hlod", "hold") == 1);
  CHECK(mistyped("hdlo", "hold") == -1);
  CHECK(mistyped("presd", "pressed") == 2);
  CHECK(mistyped("dresed", "pressed") == -1); // two mistakes, one in the first letter
  CHECK(mistyped("instrumnt", "instrument") == 1);
  CHECK(mistyped("istrment", "instrument") == 2);
}

TEST_CASE("a word is the same in singular and plural") {
  CHECK(same_but_plural("slot", "slots"));
  CHECK(same_but_plural("presses", "press"));
  CHECK_FALSE(same_but_plural("slot", "slotted"));
  CHECK_FALSE(same_but_plural("a", "as"));
}
