// The contract of shop::Store, part four: journal, outbox, remembered answers.
#include "shop_in_a_folder.hpp"
#include "store/chain.hpp"
#include "support/catch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <fstream>
#include <sstream>

using namespace nutward;
using namespace nutward::test;

namespace {

Line a_line(std::int64_t actor, std::vector<Ref> touched) {
  Line l;
  l.recorded = {1'700'000'100};
  l.happened = {1'700'000'000};
  l.actor = actor;
  l.via = "unix";
  l.said = "put 52.4 of medium in the tin";
  l.call = "[{}]";
  l.answer = "One piece of medium, 52.4 mm, is in the tin.";
  l.touched = std::move(touched);
  l.inverse = "[]";
  return l;
}

OutboxEntry an_entry(std::int64_t receiver, const std::string& cause, Instant not_before) {
  OutboxEntry e;
  e.receiver = receiver;
  e.message_id = "msg_" + cause;
  e.cause = cause;
  e.type = "recheck.due";
  e.text = "Look at job 1 again.";
  e.data = R"({"job":1})";
  e.happened = {900};
  e.not_before = not_before;
  return e;
}

Receiver a_receiver(const std::string& name) {
  return {0, name, "http://127.0.0.1:9/", "whsec_AAAA", Shape::event, {}, false, false};
}

void three_lines(Store& store) {
  store.write([](Tx& tx) {
    tx.put(an_actor());
    tx.put(a_wire());
    tx.move(received(1, 600_mm));
    tx.backroom().append(a_line(1, {{Thing::wire, 1}}));
    tx.backroom().append(a_line(1, {{Thing::wire, 1}, {Thing::actor, 1}}));
    Line last = a_line(1, {});
    last.answer = "An unmistakable answer.";
    tx.backroom().append(last);
  });
}

} // namespace

TEST_CASE("SHA-256 gives the published digest of abc") {
  // FIPS 180-2, appendix B.1, from memory.
  CHECK(store::sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST_CASE("the text that is hashed is the one described: netstrings of every field") {
  Line l = a_line(3, {{Thing::wire, 3}, {Thing::piece, 12}});
  l.id = 7;
  l.group = 6;
  l.sequence = 1;
  l.undoes = 4;
  CHECK(store::canonical("ff", l,
                         {{{{Thing::job, 8}, 5}, {{Thing::wire, 3}}, {{Thing::job, 8}}},
                          {"1 received 3 - - - - outside stock 5 0 - ordered"}}) ==
        "2:ff,1:7,1:6,1:1,10:1700000100,10:1700000000,1:3,4:unix,29:put 52.4 of medium in the tin,4:[{}],"
        "44:One piece of medium, 52.4 mm, is in the tin.,2:[],1:4,15:wire 3 piece 12,25:wire 3 job 8 job 8 "
        "slot 5,"
        "48:1 received 3 - - - - outside stock 5 0 - ordered,");
}

TEST_CASE("lines get ids, groups and hashes, and come back with all they say") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(an_actor());
    tx.put(an_actor());
    CHECK(tx.journal().newest() == 0);
    const Line first =
        tx.backroom().append(a_line(1, {{Thing::piece, 4}, {Thing::wire, 2}, {Thing::piece, 4}}));
    CHECK(first.id == 1);
    CHECK(first.group == 1);
    CHECK(first.hash.size() == 64);
    Line second = a_line(1, {{Thing::piece, 4}});
    second.group = first.group;
    second.sequence = 1;
    second = tx.backroom().append(second);
    CHECK(second.hash != first.hash);
    Line other = tx.backroom().append(a_line(2, {{Thing::wire, 2}}));
    CHECK(other.group == 3);
    Line undo = a_line(1, {});
    undo.undoes = 1;
    tx.backroom().append(undo);
  });
  made.store.read([](const View& v) {
    const auto lines = v.journal().group(1);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].sequence == 0);
    CHECK(lines[1].sequence == 1);
    CHECK(lines[0].touched == std::vector<Ref>{{Thing::wire, 2}, {Thing::piece, 4}});
    CHECK(lines[0].said == "put 52.4 of medium in the tin");
    CHECK(lines[0].recorded.s == 1'700'000'100);
    CHECK(lines[0].happened.s == 1'700'000'000);
    CHECK(lines[0].via == "unix");
    CHECK(lines[0].answer == "One piece of medium, 52.4 mm, is in the tin.");
    CHECK_FALSE(lines[0].undoes);
    CHECK(v.journal().line(4)->undoes == 1);
    CHECK_FALSE(v.journal().line(5));
    CHECK(v.journal().group(2).empty());
    CHECK(v.journal().newest() == 4);
    CHECK(v.journal().touched_in({Thing::piece, 4}) == 2);
    CHECK(v.journal().touched_in({Thing::wire, 2}) == 3);
    CHECK(v.journal().touched_in({Thing::job, 2}) == 0);
    CHECK_FALSE(v.journal().last_undoable(1)); // its only group was undone
    CHECK(v.journal().last_undoable(2) == 3);
    CHECK_FALSE(v.journal().last_undoable(9));
  });
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("neither the ledger nor the journal can be changed or thinned out") {
  Made made;
  three_lines(made.store);
  SQLite::Database db(made.file().string(), SQLite::OPEN_READWRITE);
  for (const char* sql :
       {"UPDATE movement SET length_nm = 1", "DELETE FROM movement", "UPDATE journal SET said = ''",
        "DELETE FROM journal WHERE id = 3", "UPDATE journal_touch SET id = 2", "DELETE FROM journal_touch",
        "UPDATE journal_about SET id = 2", "DELETE FROM journal_about",
        "UPDATE journal_movement SET line = 2", "DELETE FROM journal_movement"}) {
    INFO(sql);
    CHECK_THROWS_WITH(db.exec(sql), ContainsSubstring("only added to"));
  }
}

TEST_CASE("verify names the line where a journal has been tampered with") {
  Made made;
  three_lines(made.store);
  CHECK(made.sqlite->verify().empty());
  const auto after = [&](const std::string& sql) {
    SQLite::Database db(made.file().string(), SQLite::OPEN_READWRITE);
    db.exec(sql);
    std::string where;
    for (const auto& finding : made.sqlite->verify())
      where += finding.where + ";";
    return where;
  };
  SECTION("a text") {
    CHECK(after("DROP TRIGGER journal_stays; UPDATE journal SET answer = 'Two pieces.' WHERE id = 2") ==
          "journal line 2;");
  }
  SECTION("a touched thing") {
    CHECK(after("DROP TRIGGER journal_touch_kept; DELETE FROM journal_touch WHERE line = 2 AND thing = "
                "'actor'") == "journal line 2;");
  }
  SECTION("whose history it belongs to") {
    CHECK(after("DROP TRIGGER journal_about_kept; DELETE FROM journal_about WHERE line = 2") ==
          "journal line 2;");
  }
  SECTION("when it stands in a history") {
    CHECK(
        after("DROP TRIGGER journal_about_stays; UPDATE journal_about SET happened_at = 5 WHERE line = 2") ==
        "journal line 2;");
  }
  SECTION("a movement's reason") {
    CHECK(after("DROP TRIGGER movement_stays; UPDATE movement SET reason = 'found'") == "journal line 1;");
  }
  SECTION("a movement's length") {
    CHECK(after("DROP TRIGGER movement_stays; UPDATE movement SET length_nm = length_nm + 1") ==
          "journal line 1;wire 1;");
  }
  SECTION("the last line cut off") {
    CHECK(after("DROP TRIGGER journal_kept; DELETE FROM journal WHERE id = 3") == "journal;");
  }
  SECTION("a line out of the middle") {
    CHECK(after("DROP TRIGGER journal_kept; DROP TRIGGER journal_touch_kept; DELETE FROM journal_touch WHERE "
                "line = 2; "
                "DELETE FROM journal WHERE id = 2") == "table journal_about;journal line 3;journal line 3;");
  }
  SECTION("what follows from the ledger") {
    CHECK(after("UPDATE wire SET on_hand_nm = 7") == "wire 1;");
  }
}

TEST_CASE("verify notices one flipped byte in the file") {
  Made made;
  three_lines(made.store);
  made.sqlite.reset();
  std::stringstream bytes;
  bytes << std::ifstream(made.file(), std::ios::binary).rdbuf();
  std::string content = bytes.str();
  const auto at = content.find("unmistakable");
  REQUIRE(at != std::string::npos);
  content[at] ^= 1;
  std::ofstream(made.file(), std::ios::binary) << content;
  const auto findings = store::open_sqlite({made.home()})->verify();
  REQUIRE(findings.size() == 1);
  CHECK(findings[0].where == "journal line 3");
}

TEST_CASE("an entry is due from its time on, once a cause and receiver, counted per receiver") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_receiver("one"));
    tx.put(a_receiver("two"));
    tx.backroom().enqueue(an_entry(1, "recheck 7 due", {1000}));
    tx.backroom().enqueue(an_entry(1, "recheck 7 due", {5}));
    tx.backroom().enqueue(an_entry(2, "recheck 7 due", {500}));
    tx.backroom().enqueue(an_entry(1, "recheck 8 due", {2000}));
  });
  made.store.read([](const View& v) {
    CHECK(v.outbox().due({499}, 9).empty());
    const auto due = v.outbox().due({1000}, 9);
    REQUIRE(due.size() == 2);
    CHECK(due[0].receiver == 2);
    CHECK(due[0].sequence == 1);
    CHECK(due[1].receiver == 1);
    CHECK(due[1].message_id == "msg_recheck 7 due");
    CHECK(due[1].cause == "recheck 7 due");
    CHECK(due[1].type == "recheck.due");
    CHECK(due[1].text == "Look at job 1 again.");
    CHECK(due[1].data == R"({"job":1})");
    CHECK(due[1].happened.s == 900);
    CHECK(due[1].attempts == 0);
    CHECK_FALSE(due[1].late);
    CHECK(v.outbox().due({1000}, 1).size() == 1);
    CHECK(v.outbox().due({2000}, 9).at(2).sequence == 2);
    CHECK(v.outbox().next()->s == 500);
    CHECK(v.outbox().undelivered(1) == 2);
  });
}

TEST_CASE("an entry that is leased, delivered, put off or out of attempts is not due") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_receiver("one"));
    tx.backroom().enqueue(an_entry(1, "a", {100}));
  });
  const auto due = [&](std::int64_t now) {
    return seen(made.store, [&](const View& v) { return v.outbox().due({now}, 9); });
  };
  const auto next = [&] { return seen(made.store, [&](const View& v) { return v.outbox().next(); }); };
  made.store.write([](Tx& tx) { tx.backroom().lease(1, {160}); });
  CHECK(due(159).empty());
  CHECK(due(160).size() == 1); // whoever had it is gone
  CHECK(next()->s == 160);
  made.store.write([](Tx& tx) { tx.backroom().settle(1, false, Instant{300}, false, false); });
  CHECK(due(299).empty());
  CHECK(due(300).at(0).attempts == 1);
  CHECK(next()->s == 300);
  made.store.write([](Tx& tx) { tx.backroom().settle(1, false, std::nullopt, true, false); });
  CHECK(due(9'999'999).empty());
  CHECK_FALSE(next());
  made.store.read([](const View& v) {
    CHECK(v.outbox().undelivered(1) == 1);
    CHECK(v.house().receivers().at(0).failing);
  });
  made.store.write([](Tx& tx) { tx.backroom().settle(1, true, std::nullopt, false, false); });
  made.store.read([](const View& v) {
    CHECK(v.outbox().undelivered(1) == 0);
    CHECK_FALSE(v.house().receivers().at(0).failing);
  });
}

TEST_CASE("a receiver that is disabled or dropped is sent nothing, and wakes nobody") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_receiver("one"));
    tx.put(a_receiver("two"));
    tx.backroom().enqueue(an_entry(1, "a", {100}));
    tx.backroom().enqueue(an_entry(2, "a", {100}));
    tx.backroom().enqueue(an_entry(2, "b", {50}));
    tx.backroom().settle(1, false, Instant{100}, false, true);
    tx.drop({Thing::receiver, 2});
  });
  made.store.read([](const View& v) {
    CHECK(v.outbox().due({1000}, 9).empty());
    CHECK_FALSE(v.outbox().next());
    CHECK(v.outbox().undelivered(2) == 2);
  });
}

TEST_CASE("an answer is remembered by caller and key, for as long as the caller of recall says") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(an_actor());
    tx.put(an_actor());
    tx.remember(1, "key", {1'000'000}, {"digest", R"({"kind":"done"})"});
    CHECK_FALSE(tx.recall(2, "key", {0}));
    CHECK_FALSE(tx.recall(1, "other", {0}));
    CHECK_FALSE(tx.recall(1, "key", {1'000'001}));
    CHECK(tx.recall(1, "key", {1'000'000})->digest == "digest");
    tx.remember(1, "key", {1'000'500}, {"second", "{}"});
    CHECK(tx.recall(1, "key", {1'000'001})->answer == "{}");
    tx.remember(2, "later", {1'000'500 + 8 * 86'400}, {"third", "{}"}); // a week on, the old one is forgotten
    CHECK_FALSE(tx.recall(1, "key", {0}));
    CHECK(tx.recall(2, "later", {0}));
  });
}
