// Each question at least once, its figures by hand. Job 1: 4 slots of A 52 mm; job 2: 43 mm at the nut, 53 at
// slot 12 of a 640 mm scale, so slot 12 lies at 320 mm and slot 24 at 480 mm, where the board is 58 mm wide
// (DESIGN 4.2).
#include "bench.hpp"
#include "shop/leaning.hpp"
#include "shop/lists.hpp"
#include "shop/setup.hpp"
#include "support/catch.hpp"

#include <set>

using namespace nutward;
using namespace nutward::test;

namespace {

Length mm(const Value& record, std::string_view name) {
  return as<Length>(at(record, name));
}

} // namespace

TEST_CASE("what a row leans on are settings, said as they are now") {
  Shop shop;
  std::set<std::string_view> names;
  for (const SettingRow& row : setting_rows())
    names.insert(row.name);
  int leaning = 0;
  const auto look = [&](const Row& row) {
    for (const std::string_view setting : leans_on(row.name)) {
      INFO(row.name << " leans on " << setting);
      CHECK(names.contains(setting));
    }
    if (!leans_on(row.name).empty()) ++leaning;
  };
  for (const Question* q : questions())
    look(*q);
  for (const Command* c : commands())
    look(*c);
  CHECK(leaning == 26); // each name in the table is a row's
  shop.does("set", R"({"setting": "gap", "to": "0.4 mm"})");
  const auto settings = shop.seen([](const View& view) { return leaned_on(view); });
  CHECK(words_of_leaning("fit", settings).find("setback 0.25 mm, gap 0.4 mm, dressing_loss 0.5 mm") !=
        std::string::npos);
  CHECK(words_of_leaning("jobs", settings).empty());
}

TEST_CASE("fit says the best piece, how to use it, and offers to use or hold it") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 53.5, 50], "ends": "raw", "place": "rack"})");
  const Answer a = shop.asks("fit", R"({"job": 1, "slot": 3})");
  CHECK(a.kind == "fit");
  CHECK(a.text == "For slot 3 of job 1 (test board of Vida) take the 52.40 mm short fret of medium (piece 1, "
                  "rack): dress both ends, to 51.40 mm.");
  CHECK(a.reason == "It takes 50.90 mm to 52.00 mm, best 51.50 mm.");
  CHECK(field<bool>(a, "fits"));
  const Value& need = at(a.data, "need");
  CHECK(mm(need, "least") == 50.9_mm);
  CHECK(mm(need, "target") == 51.5_mm);
  CHECK(mm(need, "most_mm") == 52_mm);
  CHECK(mm(need, "cut") == 52.5_mm);
  REQUIRE(size(at(a.data, "pieces")) == 2); // 50 mm is too short
  CHECK(mm(item(at(a.data, "pieces"), 0), "trim") == 1_mm);
  CHECK(mm(item(at(a.data, "pieces"), 1), "finish") == 51.5_mm); // min(53.5 − 1, 51.5)
  CHECK(mm(item(at(a.data, "pieces"), 1), "trim") == 2_mm);
  REQUIRE(a.choices.size() == 2);
  CHECK(a.choices[0].call.row == "use");
  CHECK(a.choices[1].call.row == "hold");
  REQUIRE(a.choices[0].expects.size() == 1);
  CHECK(a.choices[0].expects[0].ref == Ref{Thing::piece, 1});
}

TEST_CASE("fit for nothing in the tin says what to cut; without a job it asks which") {
  Shop shop;
  CHECK(shop.asks("fit", R"({"job": 1, "slot": 3})").text ==
        "Nothing in the tin fits slot 3 of job 1 (test board of Vida): cut 52.50 mm of new medium.");
  const Problem which = shop.unanswered("fit", R"({"slot": 3})");
  CHECK(which.fault == Fault::ambiguous);
  CHECK(which.choices.size() == 2);
  CHECK(shop.unanswered("fit").where == "slot");
  CHECK(shop.unanswered("fit", R"({"length_mm": 50})").choices.size() == 2);
}

TEST_CASE("fit for a length of a wire finishes to that length") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 53, "ends": "raw"})");
  const Answer a = shop.asks("fit", R"({"length_mm": 51, "wire": "medium"})");
  CHECK(mm(at(a.data, "need"), "target") == 51_mm);
  CHECK(mm(item(at(a.data, "pieces"), 0), "trim") == 2_mm);
}

TEST_CASE("a pulled fret, or one that would lose over 8 mm, is offered only when asked for") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 51.2, "ends": "dressed", "kind": "pulled_fret"})");
  shop.does("add", R"({"wire": 1, "length_mm": 60, "ends": "raw"})"); // loses 8.5 in becoming 51.5
  CHECK_FALSE(field<bool>(shop.asks("fit", R"({"job": 1, "slot": 1})"), "fits"));
  CHECK(size(at(shop.asks("fit", R"({"job": 1, "slot": 1, "pulled": true})").data, "pieces")) == 1);
  CHECK(size(at(shop.asks("fit", R"({"job": 1, "slot": 1, "long": true})").data, "pieces")) == 1);
}

TEST_CASE("place says the slot that wastes least of a piece") {
  Shop shop;
  shop.does("add", R"({"wire": 2, "length_mm": 52.6, "ends": "dressed"})");
  // Slot 12 of job 2: A 53, least 51.9, target 52.5. Untouched it fits where least <= 52.6 <= most.
  const Answer a = shop.asks("place", R"({"piece": 1})");
  CHECK(as<std::int64_t>(at(item(at(a.data, "places"), 0), "slot")) == 12);
  CHECK(mm(item(at(a.data, "places"), 0), "trim") == 0_mm);
  CHECK(a.choices.size() == 1);
  const Answer b = shop.asks("place", R"({"length_mm": 53.5, "wire": 2})");
  CHECK(as<std::int64_t>(at(item(at(b.data, "places"), 0), "slot")) ==
        12); // 53.5 − 1 is the target of slot 12
  CHECK(b.reason.ends_with("Both ends are taken to be raw."));
  CHECK(shop.asks("place", R"({"length_mm": 20})").text == "No open slot takes a 20.00 mm piece.");
  CHECK(shop.unanswered("place").fault == Fault::value);
}

TEST_CASE("slots is the table of positions, widths and needs") {
  Shop shop;
  const Answer a = shop.asks("slots", R"({"job": 2, "slots": "12,24"})");
  REQUIRE(size(at(a.data, "slots")) == 2);
  const Value& twelve = item(at(a.data, "slots"), 0);
  const Value& last = item(at(a.data, "slots"), 1);
  CHECK(mm(twelve, "position") == 320_mm);
  CHECK(mm(twelve, "width") == 53_mm);
  CHECK(mm(twelve, "target") == 52.5_mm);
  CHECK(mm(last, "position") == 480_mm);
  CHECK(mm(last, "width") == 58_mm);
  CHECK(mm(last, "cut") == 58.5_mm);
  CHECK(as<std::string>(at(last, "state")) == "open");
  CHECK(shop.unanswered("slots", R"({"job": 2, "slots": "25"})").where == "slots");
}

TEST_CASE("stock adds up sticks and the tin") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 51.1]})");
  shop.does("add", R"({"wire": 1, "count": 4})");
  shop.does("hold", R"({"piece": 2, "job": 1})");
  const Answer a = shop.asks("stock", R"({"wire": "medium"})");
  CHECK(a.text == "Of medium there is 6.00 m in sticks and coils, and 2 measured pieces in the tin with 4 "
                  "more not measured, 1 of them held.");
  CHECK(field<Length>(a, "on_hand") == 6000_mm);
  CHECK(field<Length>(a, "tin") == 103.5_mm);
  CHECK(size(at(a.data, "pieces")) == 3);
  const Answer all = shop.asks("stock");
  CHECK(all.text == "2 wires on the shelf, 6 pieces in the tin.");
  CHECK(as<std::int64_t>(at(item(at(all.data, "wires"), 0), "unmeasured")) == 4);
}

TEST_CASE("supply counts refrets after the open jobs are served") {
  Shop shop;
  const Answer a = shop.asks("supply", R"({"wire": 1})");
  const Value& w = item(at(a.data, "wires"), 0);
  CHECK(mm(w, "open_jobs") == 212_mm); // 4·(52.5 + 0.5)
  CHECK(mm(w, "refret") == 212_mm);
  CHECK(as<double>(at(w, "refrets_left")) == 27.0); // (6000 − 212)/212 = 27.3
  CHECK_FALSE(field<bool>(a, "order"));
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  shop.does("hold", R"({"piece": 1, "job": 1, "slot": 1})");
  CHECK(mm(item(at(shop.asks("supply", R"({"wire": 1})").data, "wires"), 0), "open_jobs") == 159_mm);
  const Answer narrow = shop.asks("supply", R"({"wire": 2})");
  CHECK(field<bool>(narrow, "order"));
  CHECK(narrow.text.starts_with("Narrow: the queue takes "));
  CHECK_THAT(narrow.text, ContainsSubstring(" more than there is; order "));
  CHECK_THAT(narrow.text, ContainsSubstring(" today; even then job 2 waits for it."));
  CHECK(narrow.table->rows.at(0).at(6) == "today");
}

TEST_CASE("jobs and job say what is done and what is next") {
  Shop shop;
  shop.does("set-due", R"({"job": 2, "due_on": "2026-04-08"})");
  const Answer queue = shop.asks("jobs");
  CHECK(queue.text == "2 jobs are open.");
  CHECK(as<Ref>(at(item(at(queue.data, "jobs"), 0), "job")) ==
        Ref{Thing::job, 2}); // the one with a day leads
  shop.does("finished", R"({"job": 1, "stage": "pull"})");
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  const Answer one = shop.asks("job", R"({"job": "vida"})");
  CHECK(one.text.starts_with(
      "Job 1 (test board of Vida) is open, with no day promised. Every slot has its fret. Next: "));
  CHECK(size(at(one.data, "stages")) == 2);
  CHECK(size(at(one.data, "open_slots")) == 0);
  shop.does("cancel-job", R"({"job": 1})", true);
  CHECK(field<std::string>(shop.asks("job", R"({"job": 1})"), "state") ==
        "cancelled"); // by its number it is still there
  CHECK(shop.unanswered("job", R"({"job": "vida"})").where == "job");
}

TEST_CASE("due looks as many days ahead as asked, for one job or all") {
  Shop shop;
  shop.does("set-due", R"({"job": 1, "due_on": "2026-04-08"})");
  shop.does("receive", R"({"wire": 2, "count": 4})");
  shop.does("pressed", R"({"job": 2})", true);
  auto many = [&](const char* json) { return size(at(shop.asks("due", json).data, "due")); };
  CHECK(many("{}") == 1);              // the recheck tomorrow
  CHECK(many(R"({"days": 20})") == 3); // and job 1: the latest press time and its day
  CHECK(many(R"({"days": 20, "job": 1})") == 2);
  CHECK(shop.asks("due", R"({"job": 1, "days": 1})").text == "Nothing falls due within 1 day.");
  CHECK(shop.unanswered("due", R"({"days": 0})").where == "days");
}

TEST_CASE("help names every question and every command, and explains each") {
  Shop shop;
  const Answer all = shop.asks("help");
  std::set<std::string> named;
  for (std::size_t i = 0; i < size(at(all.data, "rows")); ++i)
    named.insert(as<std::string>(at(item(at(all.data, "rows"), i), "name")));
  CHECK(named.size() == questions().size() + commands().size());
  for (const std::string& name : named) {
    const Answer one = shop.asks("help", R"({"topic": ")" + name + "\"}");
    CHECK(field<std::string>(one, "name") == name);
  }
  CHECK(shop.unanswered("help", R"({"topic": "nonsense"})").where == "topic");
}

TEST_CASE("asking changes nothing, and a command is not asked nor a question done") {
  Shop shop;
  const auto revision = shop.revision();
  shop.asks("stock");
  shop.asks("jobs");
  CHECK(shop.revision() == revision);
  CHECK(shop.unanswered("use").text == "There is no question 'use'.");
  CHECK(shop.refused("stock").text == "There is no command 'stock'.");
}

TEST_CASE("a wire of which nothing is left is not called enough") {
  Shop shop;
  shop.does("define-wire", R"({"name": "thin"})");
  Answer a = shop.asks("supply", R"({"wire": 3})");
  CHECK(a.text == "None is left of thin, and no open job needs it.");
  CHECK(a.table->rows.at(0).at(3) == "none");
  CHECK(a.table->rows.at(0).at(6) == "-");
  shop.does("receive", R"({"wire": 3, "count": 1, "each_mm": 600})");
  a = shop.asks("supply", R"({"wire": 3})");
  // A refret is guessed to take 1.243 m, and a fourth of one is expected a week.
  CHECK(a.text.starts_with("Thin: less than one refret left in sticks; order "));
  CHECK(a.text.ends_with(" today, by a guess at new work."));
}

TEST_CASE("what fits a slot that has its fret is told only after that, and not offered for use") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 52.2]})");
  shop.does("use", R"({"piece": 1, "job": 1, "slot": 3})");
  const Answer a = shop.asks("fit", R"({"job": 1, "slot": 3})");
  CHECK(a.text.starts_with(
      "Slot 3 of job 1 (test board of Vida) has its fret already, 51.40 mm long. For slot 3 "));
  CHECK(a.choices.empty());
  CHECK(a.reason.ends_with("If it will not do, say: fret 3 of job 1 came out short."));
  shop.does("came-short", R"({"job": 1, "slot": 3})");
  CHECK(shop.asks("fit", R"({"job": 1, "slot": 3})").choices.size() == 2);
}
