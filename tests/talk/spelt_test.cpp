#include "rows_of_the_test.hpp"
#include "support/catch.hpp"

using namespace nutward::talk;
using namespace nutward::talk::test;

TEST_CASE("typing mistakes in known words are borne") {
  CHECK(heard("waht fits slot 3 of job 12") == "fit slot 3, job 12");
  CHECK(heard("which ofcut suits solt 3 of job 12") == "fit slot 3, job 12");
  CHECK(heard("hodl the 52.4 for job 9") == "hold piece 52.4 mm, job 9");
  CHECK(heard("presed 9-14 of job 12") == "pressed slots 9 and 10 and 11 and 12 and 13 and 14, job 12");
  CHECK(heard("prmise job 12 for friday") == "promise job 12, due 2026-11-27");
}

TEST_CASE("a command with a word that is two letters off is offered, not done") {
  const Understood u = say("prmse job 12 for friday");
  REQUIRE(u.what == Understood::What::tell);
  REQUIRE(u.tell.choices.size() == 1);
  CHECK(u.tell.choices.front().label == "promise job 12, due 2026-11-27");
  CHECK(heard("wht fts slot 3 of job 12") == "fit slot 3, job 12"); // one each
  CHECK(heard("whcih offct siuts slot 3 of job 12") == "fit slot 3, job 12");
}

TEST_CASE("names of things are never corrected") {
  CHECK(
      heard("how much medim is left") ==
      "refused: No wire is called 'medim'. There are: medium; medium jumbo; narrow; tall steel; low steel.");
  CHECK(heard("hold the 52.4 for the banjo")
            .starts_with(
                "refused: No open job is called 'banjo'. There are: job 12, octave mandolin of Ines; "));
  CHECK(heard("hold the 52.4 of medim for job 9").starts_with("refused: No wire is called 'medim'."));
}

TEST_CASE("a part of a name that two things have is asked about") {
  const Understood u = say("how much steel is left");
  CHECK(u.tell.text ==
        "Which wire? More than one is called that. Pick one by its number, or say more of its name.");
  REQUIRE(u.tell.choices.size() == 2);
  CHECK(u.tell.choices[0].label == "tall steel");
}

TEST_CASE("a quantity that cannot be read is refused with what would do") {
  CHECK(heard("scrap the 1,250 mm").starts_with("refused: "));
  CHECK(heard("scrap the 52.4 kg").starts_with("refused: "));
}

// Nothing may be done by any of these, whatever else they come to.
TEST_CASE("sentences that are no orders do nothing") {
  const State context = after_fit();
  for (const char* text : {"don't use the 52.4 in slot 3 of job 12",
                           "do not use it",
                           "dont use it",
                           "never use it",
                           "Don’t scrap that",
                           "please don't scrap it",
                           "no, don't use it",
                           "we did not use it",
                           "I didn't use the 52.4 in slot 3 of job 12",
                           "do not hold the 52.4 for job 9",
                           "not the 52.4 in slot 3 of job 12",
                           "did we use it?",
                           "did we use it",
                           "did I scrap the 31",
                           "have we pressed job 12",
                           "has anyone pressed job 12?",
                           "was job 12 pressed",
                           "is job 12 off?",
                           "is job 12 off",
                           "what if I used it",
                           "what if I use the 52.4 in slot 3 of job 12",
                           "what if we scrap the 31",
                           "if I use it",
                           "if we cancel job 12",
                           "should I use it",
                           "should we scrap it?",
                           "can I use the 52.4 in slot 3 of job 12?",
                           "could I use it",
                           "may I scrap that",
                           "would you use it?",
                           "can you cancel job 12?",
                           "use it?",
                           "scrap the 31?",
                           "cancel job 12?",
                           "pressed 9-14 of job 12?",
                           "hold it for job 9?",
                           "undo?",
                           "1?",
                           "yes?",
                           "when was job 12 pressed",
                           "who scrapped the 31",
                           "why was job 12 cancelled",
                           "maybe use it",
                           "perhaps scrap it",
                           "I have to use the 52.4 in slot 3 of job 12",
                           "I want to scrap the 31",
                           "I was going to scrap the 31",
                           "I would scrap the 31",
                           "he said scrap the 31",
                           "nobody scrapped the 31",
                           "almost scrapped the 31",
                           "use the 52.4 in slot 3 or 4 of job 12",
                           "use the 52.4 in slot 3 of job 12 or job 9",
                           "use the 52.4 in slot 3 of job 12 if it fits",
                           "scrap the 31 unless it fits",
                           "scrap the 31 tomorrow",
                           "scrap everything",
                           "scrap all of medium",
                           "scrap the 31 not the 32",
                           "scrap nothing",
                           "hold nothing for job 9",
                           "use none",
                           "use the in slot 3 of job 12",
                           "use 52.4 slot",
                           "cancel",
                           "cancel it all",
                           "cancel the jobs",
                           "cancel the guitar",
                           "scrub the 31",
                           "strap the 31",
                           "told the 52.4 for job 9",
                           "dressed 9-14 of job 12",
                           "fold the 52.4 for job 9",
                           "pressing job 12",
                           "press job 12",
                           "repressed job 12",
                           "undo nothing",
                           "don't undo",
                           "do not undo that",
                           "under the bench",
                           "the 52.4",
                           "52.4",
                           "job 12",
                           "slot 3",
                           "it",
                           "that one",
                           "yes",
                           "the second one",
                           "3",
                           "and",
                           ";",
                           "and then",
                           "suppose job 12 is off",
                           "job 12 is not off",
                           "job 12 is off, not",
                           "job 12 was off by 3 mm",
                           "call off nothing",
                           "scrap the 31; sing",
                           "scrap the 31 and don't scrap the 32",
                           "use it and scrap that",
                           "note on",
                           "let it not go",
                           "how do I scrap a piece",
                           "help scrap",
                           "scrap",
                           "add -",
                           "add of medium",
                           "add 52.4 mm",
                           "add medium",
                           "pressed slots of job 12",
                           "without scrapping the 31",
                           "instead of scrapping the 31",
                           "\"scrap the 31\"",
                           "say \"use it\"",
                           "job 12 / 3",
                           "use 52.4 in 12/3/4",
                           "scrap 1,250",
                           "scrap the 52.4 kg"}) {
    INFO(text);
    const Understood u = say(text, context);
    INFO(calls(u));
    CHECK(u.what != Understood::What::order);
  }
}

TEST_CASE("a row may name its own negation") {
  CHECK(heard("don't hold the 52.4 any more") == "let go piece 52.4 mm");
}

TEST_CASE("one wrong letter never turns one command into another") {
  // Every example of a command with every letter replaced, dropped or swapped in turn: it is the same row, or
  // nothing is done.
  for (const nutward::shop::Command* command : rows().commands) {
    for (std::string_view example : command->examples) {
      for (std::size_t i = 0; i < example.size(); ++i) {
        for (int kind = 0; kind < 3; ++kind) {
          std::string text{example};
          if (kind == 0)
            text.erase(i, 1);
          else if (kind == 1)
            text[i] = 'x';
          else if (i + 1 < text.size())
            std::swap(text[i], text[i + 1]);
          const Understood u = say(text);
          INFO(text << " -> " << calls(u));
          if (u.what == Understood::What::order) CHECK(u.calls.front().row == command->name);
        }
      }
    }
  }
}
