// The question history: what it tells, and how it goes on.
#include "bench.hpp"
#include "shop/past.hpp"
#include "support/catch.hpp"

#include <set>

using namespace nutward;
using namespace nutward::test;

namespace {

std::string entry(const Answer& a, std::size_t n) {
  return as<std::string>(at(item(at(a.data, "entries"), n), "text"));
}
std::size_t entries(const Answer& a) {
  return size(at(a.data, "entries"));
}

} // namespace

TEST_CASE("an entry says when, who, by which sentence, what came of it, and who took it back") {
  Shop shop;
  shop.clock.to("2026-03-25T11:00:00Z");
  Order said = shop.order({{"finished", R"({"job": 2, "stage": "pull", "at": "2026-03-24T08:30:00Z"})"}});
  said.said = "finished pulling job 2 yesterday at 9:30";
  said.who = shop.ines;
  REQUIRE(shop.executor->run(said).answer);
  shop.clock.to("2026-03-25T12:00:00Z");
  shop.who = shop.ines;
  shop.does("undo");
  shop.who = shop.guest; // who may look
  const Answer a = shop.asks("history", R"({"job": 2})");
  REQUIRE(entries(a) == 3);
  CHECK(a.text.starts_with(
      "Job 2 (long board of Anton): 3 entries. Wed 25 Mar 2026, 13:00, Ines called \"undo\": "
      "Taken back: "));
  // Berlin is an hour ahead of UTC until 29 March 2026.
  const std::string pull = entry(a, 2);
  CHECK(pull.starts_with(
      "Tue 24 Mar 2026, 09:30 (told Wed 25 Mar 2026, 12:00), Ines said \"finished pulling job 2 "
      "yesterday at 9:30\": Job 2 (long board of Anton): "));
  CHECK(pull.ends_with(". Taken back by Ines, Wed 25 Mar 2026, 13:00."));
  CHECK(entry(a, 1).starts_with(
      "Wed 25 Mar 2026, 11:00, Mara called \"new job wire 2, scale 640 mm, frets 24, "));
  const Value& e = item(at(a.data, "entries"), 2);
  CHECK(as<Instant>(at(e, "happened")) == instant("2026-03-24T08:30:00Z"));
  CHECK(as<Instant>(at(e, "recorded")) == instant("2026-03-25T11:00:00Z"));
  CHECK(as<Instant>(at(e, "taken_back_at")) == instant("2026-03-25T12:00:00Z"));
  CHECK(as<std::string>(at(e, "taken_back_name")) == "Ines");
  CHECK(as<std::string>(at(e, "call")) == "finished job 2, stage pull, at 2026-03-24T08:30:00Z");
  const std::string json = to_json(a.data);
  for (const char* name :
       {R"("happened_at":"2026-03-24T08:30:00Z")", R"("recorded_at":"2026-03-25T11:00:00Z")",
        R"("taken_back_at":null)", R"("undoes_group":)", R"("earlier":null)"}) {
    INFO(name);
    CHECK(json.find(name) != std::string::npos);
  }
}

TEST_CASE("a history goes on by its cursor until every line was told once") {
  Shop shop;
  for (int i = 0; i < 30; ++i) {
    shop.clock.s += i % 3; // several of one second
    shop.does("count", i % 2 == 0 ? R"({"wire": 1, "sticks": 9})" : R"({"wire": 1, "sticks": 10})");
  }
  for (const std::string& of :
       {std::string(R"("wire": 1)"), std::string(R"("person": "Mara")"),
        std::string(R"("happened_on": "2026-03-25")"), std::string(R"("since_on": "2026-03-01")")}) {
    INFO(of);
    std::set<std::int64_t> lines;
    std::size_t pages = 0, told = 0;
    for (std::string cursor;; ++pages) {
      const Answer a =
          shop.asks("history", "{" + of + (cursor.empty() ? "" : R"(, "cursor": ")" + cursor + "\"") + "}");
      CHECK(entries(a) <= 20);
      for (std::size_t i = 0; i < entries(a); ++i, ++told)
        lines.insert(as<std::int64_t>(at(item(at(a.data, "entries"), i), "line")));
      if (a.next.empty()) {
        CHECK(a.choices.empty());
        break;
      }
      CHECK(as<std::string>(at(a.data, "earlier")) == a.next);
      REQUIRE(a.choices.size() == 1);
      CHECK(a.choices[0].label == "earlier");
      CHECK(a.choices[0].call.row == "history");
      CHECK(std::get<std::string>(*a.choices[0].call.find("cursor")) == a.next);
      cursor = a.next;
    }
    CHECK(pages == 1);
    CHECK(lines.size() == told);
    CHECK(told == (of.find("wire") != std::string::npos ? 32 : 37)); // and what made the shop
  }
}

TEST_CASE("what is gone has a history too") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  shop.does("scrap", R"({"piece": 1})", true);
  CHECK(shop.asks("history", R"({"piece": 1})").text.starts_with("Piece 1: 2 entries. "));
  shop.does("cancel-job", R"({"job": 1})", true);
  CHECK(entries(shop.asks("history", R"({"job": 1})")) == 2);
}

TEST_CASE("a day is the shop's day, from its midnight on") {
  Shop shop; // Berlin: 25 March 2026 begins at 23:00 UTC
  for (const char* when : {"2026-03-24T22:59:59Z", "2026-03-24T23:00:00Z", "2026-03-25T22:59:59Z"}) {
    shop.clock.to("2026-03-25T23:30:00Z");
    shop.does("finished", std::string(R"({"job": 2, "stage": "pull", "at": ")") + when + "\"}");
  }
  CHECK(entries(shop.asks("history", R"({"job": 2, "happened_on": "2026-03-24"})")) == 1);
  CHECK(entries(shop.asks("history", R"({"job": 2, "happened_on": "2026-03-25"})")) == 3); // and taken in
  CHECK(entries(shop.asks("history", R"({"job": 2, "happened_on": "2026-03-26"})")) == 0);
}

TEST_CASE("what is no history is refused with what would do") {
  Shop shop;
  CHECK(shop.unanswered("history", R"({"job": 1, "wire": 1})").where == "wire");
  CHECK(shop.unanswered("history", R"({"slot": 1})").where == "job");
  CHECK(shop.unanswered("history", R"({"job": 1, "slot": 40})").fault == Fault::value);
  CHECK(shop.unanswered("history", R"({"job": 99})").fault == Fault::value);
  CHECK(shop.unanswered("history", R"({"person": "Nobody"})").fault == Fault::value);
  CHECK(shop.unanswered("history", R"({"mine": true, "person": "Ines"})").where == "person");
  CHECK(shop.unanswered("history", R"({"happened_on": "2026-03-24", "since_on": "2026-03-24"})").where ==
        "since_on");
  for (const char* cursor :
       {"", ".", "1", "1.", ".1", "x.1", "1.x", "1.-1", "1.2.3", "99999999999999999.1", "1. 1"}) {
    INFO(cursor);
    CHECK(shop.unanswered("history", std::string(R"({"cursor": ")") + cursor + "\"}").where == "cursor");
  }
}
