#include "rows_of_the_test.hpp"
#include "support/catch.hpp"

using namespace nutward::talk;
using namespace nutward::talk::test;
using nutward::shop::Choice;

TEST_CASE("a question takes what is missing from the conversation and says so") {
  const Understood u = say("what fits slot 4", after_fit());
  CHECK(calls(u) == "fit slot 4, job 12");
  REQUIRE(u.notes.size() == 1);
  CHECK(u.notes.front() == "job 12, as before");
}

TEST_CASE("without a conversation the missing thing is asked back with choices") {
  const Understood u = say("what fits slot 4");
  CHECK(u.tell.kind == "unclear");
  CHECK(u.tell.text == "Which job? Say its number, its owner or its instrument.");
  REQUIRE(u.tell.choices.size() == 4);
  CHECK(u.tell.choices.front().label == "job 12, octave mandolin of Ines");
  REQUIRE(u.pending);
  CHECK_FALSE(u.pending->command);
}

TEST_CASE("a command takes nothing from the conversation unless the sentence points at it") {
  CHECK(heard("use the 52.4 in slot 3", after_fit()).starts_with("unclear: Which job?"));
  CHECK(heard("use it", after_fit()) == "use piece 41, job 12, slot 3");
  CHECK(heard("use that one in slot 4", after_fit()) == "use piece 41, slot 4, job 12");
  CHECK(heard("hold it for job 9", after_fit()) == "hold piece 41, job 9");
  CHECK(heard("scrap that", after_fit()) == "scrap piece 41");
  CHECK(heard("use it").starts_with("unclear: Which piece?"));
}

TEST_CASE("the job spoken of before is the first that is offered") {
  const Understood u = say("use the 52.4 in slot 3", [] {
    State s = after_fit();
    s.about.args.front().second = Ref{Thing::job, 9};
    return s;
  }());
  REQUIRE(u.tell.choices.size() == 4);
  CHECK(u.tell.choices.front().label == "job 9, tenor ukulele of Mara");
}

namespace {
State asked_for_job() {
  const Understood u = say("hold the 52.4 for");
  State s;
  const Understood v = say("use the 52.4 in slot 3");
  s.pending = v.pending;
  s.choices = v.tell.choices;
  return s;
}
} // namespace

TEST_CASE("the answer to a question asked back fills it in") {
  CHECK(heard("12", asked_for_job()) == "use piece 52.4 mm, slot 3, job 12");
  CHECK(heard("1", asked_for_job()) == "use piece 52.4 mm, slot 3, job 12");
  CHECK(heard("the second one", asked_for_job()) == "use piece 52.4 mm, slot 3, job 9");
  CHECK(heard("the mandolin", asked_for_job()) == "use piece 52.4 mm, slot 3, job 12");
  CHECK(heard("for job 9 please", asked_for_job()) == "use piece 52.4 mm, slot 3, job 9");
  CHECK(heard("what is due", asked_for_job()) == "due");
  CHECK(heard("the guitar", asked_for_job()).starts_with("unclear: Which job? More than one"));
}

TEST_CASE("a number that is the place of one job and the number of another is asked about") {
  const Understood u = say("2", asked_for_job()); // the second is job 9; job 2 is the third
  CHECK(u.tell.kind == "unclear");
  REQUIRE(u.tell.choices.size() == 2);
  CHECK(u.tell.choices[0].label == "job 9, tenor ukulele of Mara");
  CHECK(u.tell.choices[1].label == "job 2, classical guitar of Jon");
}

TEST_CASE("a choice keeps what must not have changed") {
  State s;
  s.choices = {
      Choice{"the first", Call{"scrap", {{"piece", Ref{Thing::piece, 7}}}}, {{Ref{Thing::piece, 7}, 33}}}};
  const Understood u = say("1", s);
  CHECK(calls(u) == "scrap piece 7");
  REQUIRE(u.expects.size() == 1);
  CHECK(u.expects.front().line == 33);
  CHECK(heard("2", s) == "unclear: There are 1 to pick from.");
  CHECK(heard("1?", s).starts_with("unclear"));
}

TEST_CASE("yes belongs to what waits for it") {
  State s;
  s.confirm = nutward::shop::Order{
      {Call{"cancel", {{"job", Ref{Thing::job, 12}}}}}, {}, "cancel job 12", "", "", {}, false};
  const Understood u = say("yes", s);
  CHECK(calls(u) == "cancel job 12");
  CHECK(u.confirmed);
  CHECK(heard("no", s) == "done: Nothing was done.");
  CHECK(heard("yes?", s).starts_with("unclear"));
  CHECK(heard("yes") == "unclear: There is nothing that waits for a yes.");
}

TEST_CASE("the last question is asked again with what is new in it") {
  CHECK(heard("and slot 4?", after_fit()) == "fit job 12, slot 4");
  CHECK(heard("and slot 4 of job 9", after_fit()) == "fit job 9, slot 4");
  CHECK(heard("what about 5?", after_fit()) == "fit job 12, slot 5");
  CHECK(heard("same for job 9", after_fit()) == "fit job 9, slot 3");
  CHECK(heard("and for the ukulele?", after_fit()) == "fit job 9, slot 3");
  CHECK(heard("slot 4?", after_fit()) == "fit job 12, slot 4");
  CHECK(heard("no, 13", after_fit()) == "fit job 12, slot 13");
}

TEST_CASE("a command is said again for another job, but never with the same piece") {
  State s;
  s.done = Call{"pressed", {{"job", Ref{Thing::job, 12}}, {"slots", nutward::shop::list({std::int64_t{9}})}}};
  s.done_last = true;
  CHECK(heard("same for job 9", s) == "pressed job 9, slots 9");
  CHECK(heard("same for job 9?", s).starts_with("unclear"));
  State used = after_fit();
  used.done = Call{
      "use", {{"piece", Ref{Thing::piece, 41}}, {"job", Ref{Thing::job, 12}}, {"slot", std::int64_t{3}}}};
  used.done_last = true;
  CHECK(heard("and slot 4", used) == "fit job 12, slot 4");
}

TEST_CASE("a correction of a command is offered, never done") {
  State s;
  s.done = Call{"pressed", {{"job", Ref{Thing::job, 12}}, {"slots", nutward::shop::list({std::int64_t{9}})}}};
  s.done_last = true;
  const Understood u = say("no, 13", s);
  CHECK(u.tell.kind == "unclear");
  REQUIRE(u.tell.choices.size() == 2);
  CHECK(u.tell.choices[0].label == "undo");
  CHECK(u.tell.choices[1].label == "pressed job 12, slots 13");
}

TEST_CASE("why gives the last answer's reason") {
  State s;
  s.answer = nutward::shop::Answer{};
  s.answer->kind = "fit";
  s.answer->text = "The 52.40 fits.";
  s.answer->reason = "Slot 3 takes 51.2 to 52.6 mm.";
  CHECK(heard("why?", s) == "fit: Slot 3 takes 51.2 to 52.6 mm.");
  CHECK(say("why", s).keeps);
  CHECK(heard("why").starts_with("unclear"));
}

TEST_CASE("several commands in a sentence are one list, or nothing") {
  CHECK(heard("use the 52.4 in slot 3 of job 12 and hold the 49.8 for job 9") ==
        "use piece 52.4 mm, slot 3, job 12; hold piece 49.8 mm, job 9");
  CHECK(heard("scrap the 31; scrap the 32 and then scrap the 33") ==
        "scrap piece 31 mm; scrap piece 32 mm; scrap piece 33 mm");
  CHECK(heard("use the 52.4 in slot 3 of job 12 and sing") != "use piece 52.4 mm, slot 3, job 12");
  CHECK(heard("use it and scrap that", after_fit()).starts_with("unclear"));
  CHECK(heard("scrap the 31 and do not scrap the 32").starts_with("unclear"));
}
