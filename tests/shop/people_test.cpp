// People, their uids and benches, whose job is whose; and that the shop never loses its last lead.
#include "bench.hpp"
#include "support/catch.hpp"

#include <fmt/format.h>

using namespace nutward;
using namespace nutward::test;

namespace {

// A person's row, or nothing where nobody is called that.
std::optional<Actor> person(Shop& shop, const std::string& name) {
  return shop.seen([&](const View& v) -> std::optional<Actor> {
    for (const Actor& a : v.house().actors()) {
      if (a.name == name) return a;
    }
    return std::nullopt;
  });
}

std::int64_t uid_of(Shop& shop, std::int64_t uid) {
  return shop.seen([&](const View& v) {
    const auto a = v.house().actor_for_uid(uid);
    return a ? a->id : 0;
  });
}

std::string with_name(const std::string& name) {
  return fmt::format(R"({{"name": "{}"}})", name);
}

} // namespace

TEST_CASE("a name is safe text and one person's") {
  Shop shop;
  for (const char* bad : {"", " ", " Jelka", "Jelka ", "12", "me", "Nobody", R"(Jel\u001bka)",
                          R"(Jel\u202eka)", R"(Jel\u200bka)", R"(Jel\nka)"}) {
    INFO(bad);
    CHECK(shop.refused("new-person", fmt::format(R"({{"name": "{}"}})", bad)).fault == Fault::value);
  }
  CHECK(shop.refused("new-person", with_name(std::string(61, 'a'))).where == "name");
  CHECK(shop.refused("new-person", with_name("ines")).fault == Fault::state);
  CHECK(shop.refused("change-person", R"({"person": "Tomo", "name": "Ines"})").fault == Fault::state);
  CHECK(shop.refused("new-person", R"({"name": "Jelka", "bench": "\u202ex"})").where == "bench");
  CHECK(shop.does("new-person", with_name("Jožica d'Or")).text ==
        "Welcome: Jožica d'Or reports work (role bench).");
  CHECK(shop.does("change-person", R"({"person": "Tomo", "name": "TOMO"})").text ==
        "TOMO reports work (role bench).");
}

TEST_CASE("a uid is one person's at a time, and its bounds are the machine's") {
  Shop shop;
  shop.does("map-uid", R"({"uid": 1001, "person": "Ines"})");
  shop.does("map-uid", R"({"uid": 0, "person": "Ines"})");
  CHECK(person(shop, "Ines")->uids == std::vector<std::int64_t>{0, 1001});
  const Answer moved = shop.does("map-uid", R"({"uid": 1001, "person": "Tomo"})");
  CHECK(moved.text == "Uid 1001 is Tomo from now on, no longer Ines.");
  CHECK(person(shop, "Ines")->uids == std::vector<std::int64_t>{0});
  CHECK(uid_of(shop, 1001) == shop.tomo.actor);
  shop.does("unmap-uid", R"({"uid": 1001})");
  CHECK(uid_of(shop, 1001) == 0);
  for (const char* bad : {"-1", "4294967295", "1.5", "\"x\"", "1e30"}) {
    INFO(bad);
    CHECK(shop.refused("map-uid", fmt::format(R"({{"uid": {}, "person": "Ines"}})", bad)).where == "uid");
  }
}

TEST_CASE("the last lead is neither retired nor demoted, by whatever way") {
  Shop shop; // Mara leads
  for (const char* call : {R"({"person": "Mara", "role": "bench"})", R"({"person": "Mara", "role": "look"})"})
    CHECK(shop.refused("change-person", call).text == "Nobody would lead the shop any more.");
  CHECK(shop.refused("retire-person", R"({"person": "Mara"})").fault == Fault::state);
  shop.does("change-person", R"({"person": "Ines", "role": "lead"})");
  shop.who = shop.ines;
  shop.who.role = Role::lead;
  shop.does("change-person", R"({"person": "Mara", "role": "bench"})");
  // Mara takes back that Ines leads: nobody would. The role that she asked with is no longer hers.
  shop.who = shop.mara;
  shop.who.role = Role::lead;
  CHECK(shop.refused("undo").text == "'change-person' is for the role lead and up; Mara has bench.");
}

TEST_CASE("taking back does not leave a lead who cannot come in alone") {
  Shop shop; // Mara leads, without a uid: she comes by a token
  shop.does("map-uid", R"({"uid": 1001, "person": "Ines"})");
  shop.does("change-person", R"({"person": "Ines", "role": "lead"})");
  CHECK(shop.refused("undo").text == "Nobody who leads the shop could come in any more.");
}

TEST_CASE("a lead who can come in is not traded for one who cannot") {
  Shop shop;
  shop.does("map-uid", R"({"uid": 1000, "person": "Mara"})");
  shop.does("change-person", R"({"person": "Ines", "role": "lead"})"); // without a uid
  const std::string locked = "Nobody who leads the shop could come in any more.";
  CHECK(shop.refused("change-person", R"({"person": "Mara", "role": "bench"})").text == locked);
  CHECK(shop.refused("retire-person", R"({"person": "Mara"})").text == locked);
  CHECK(shop.refused("unmap-uid", R"({"uid": 1000})").text == locked);
  CHECK(shop.refused("map-uid", R"({"uid": 1000, "person": "Tomo"})").text == locked);
  CHECK(shop.refused("new-person", R"({"name": "Jelka", "uid": 1000})").text == locked);
  shop.does("map-uid", R"({"uid": 1001, "person": "Ines"})");
  CHECK(shop.does("retire-person", R"({"person": "Mara"})").text == "Mara has retired.");
}

TEST_CASE("who has been demoted takes back nothing that needs the role they had") {
  Shop shop;
  shop.does("change-person", R"({"person": "Ines", "role": "lead"})");
  shop.does("change-person", R"({"person": "Mara", "role": "bench"})");
  shop.who.role = Role::bench; // as the door says from now on
  const Problem p = shop.refused("undo");
  CHECK(p.fault == Fault::not_allowed);
  CHECK(p.text == "'change-person' is for the role lead and up; Mara has bench.");
}

TEST_CASE("taking back does not make a uid two people") {
  Shop shop;
  shop.does("map-uid", R"({"uid": 1001, "person": "Ines"})");
  shop.does("unmap-uid", R"({"uid": 1001})");
  shop.made.sqlite->write([](Tx& tx) { // as the door does when 1001 asks
    Actor a;
    a.name = "user 1001", a.role = 1, a.uids = {1001};
    tx.put(a);
    tx.backroom().take_changes();
  });
  CHECK(shop.refused("undo").text == "Uid 1001 would be two people then: Ines and user 1001.");
}

TEST_CASE("taking back gives no two people one name, whatever its capitals") {
  Shop shop;
  shop.does("change-person", R"({"person": "Tomo", "role": "lead"})");
  shop.does("change-person", R"({"person": "Ines", "name": "Inez"})");
  shop.who = shop.tomo;
  shop.who.role = Role::lead;
  shop.does("new-person", with_name("INES"));
  shop.who = shop.mara;
  const Problem p = shop.refused("undo");
  CHECK(p.fault == Fault::state);
  CHECK(p.text.starts_with("There would be two called I"));
  shop.who = shop.tomo;
  shop.who.role = Role::lead;
  shop.does("change-person", R"({"person": "INES", "name": "Jelka"})");
  shop.who = shop.mara;
  shop.does("undo");
  CHECK(person(shop, "Ines")->id == shop.ines.actor);
}

TEST_CASE("taking back gives no two receivers one name") {
  Shop shop;
  const std::string wall = R"({"name": "wall", "url": "http://127.0.0.1:9000/hook"})";
  shop.does("change-person", R"({"person": "Tomo", "role": "lead"})");
  shop.does("add-receiver", wall);
  shop.does("drop-receiver", R"({"receiver": "wall"})");
  shop.who = shop.tomo;
  shop.who.role = Role::lead;
  shop.does("add-receiver", wall);
  shop.who = shop.mara;
  CHECK(shop.refused("undo").text == "There would be two called receiver wall then.");
}

TEST_CASE("names that were two people's before bar no undo") {
  Shop shop;
  shop.made.sqlite->write([](Tx& tx) {
    tx.put(Actor{0, "ines", 1, "", {}});
    tx.backroom().take_changes();
  });
  shop.does("add", R"({"wire": 1, "length_mm": 50})");
  CHECK(shop.does("undo").text.starts_with("Taken back"));
}

TEST_CASE("who retires keeps their name in what they did, and their jobs are free") {
  Shop shop;
  shop.does("give-job", R"({"job": 1, "person": "Ines"})");
  shop.who = shop.ines;
  shop.does("finished", R"({"job": 1, "stage": "pull"})");
  shop.who = shop.mara;
  const Problem first = shop.refused("retire-person", R"({"person": "Ines"})");
  CHECK(first.fault == Fault::confirm);
  CHECK(first.text == "Ines still has job 1; nobody will do them then.");
  CHECK(shop.does("retire-person", R"({"person": "Ines"})", true).text ==
        "Ines has retired; nobody does job 1 now.");
  CHECK_FALSE(shop.seen([](const View& v) { return v.jobs().find(1)->builder; }));
  CHECK(shop.seen([](const View& v) { return v.house().actor(v.jobs().stages(1).at(0).actor)->name; }) ==
        "Ines");
  CHECK(shop.refused("give-job", R"({"job": 2, "person": "Ines"})").text == "Ines has retired.");
  CHECK(shop.refused("new-person", with_name("Ines")).text == "There is Ines already, who has retired.");
  CHECK(shop.does("undo").text.starts_with("Taken back: Ines has retired"));
  CHECK(shop.seen([](const View& v) { return v.jobs().find(1)->builder; }) == shop.ines.actor);
}

TEST_CASE("the making of a person is not taken back from under what is theirs") {
  for (const char* what : {"give-job", "finished"}) {
    INFO(what);
    Shop shop;
    const auto id = field<Ref>(shop.does("new-person", with_name("Jelka")), "person").id;
    const Caller jelka{id, Role::bench, "Jelka", "test"};
    shop.who = what == std::string("finished") ? jelka : shop.ines;
    if (what == std::string("finished"))
      shop.does("finished", R"({"job": 1, "stage": "pull"})");
    else
      shop.does("give-job", R"({"job": 1, "person": "Jelka"})");
    const Caller then = std::exchange(shop.who, shop.mara);
    CHECK(shop.refused("undo").text.starts_with(
        "That cannot be taken back any more, because of what came after: Job 1"));
    shop.who = then;
    shop.does("undo");
    shop.who = shop.mara;
    shop.does("undo");
    CHECK_FALSE(person(shop, "Jelka"));
  }
}

TEST_CASE("a job falls to its builder, or to who works at its bench while nobody does it") {
  Shop shop;
  shop.does("change-person", R"({"person": "Ines", "bench": "window"})");
  shop.does("change-person", R"({"person": "Tomo", "bench": "Door 2"})");
  shop.does("give-job", R"({"job": 1, "bench": "WINDOW"})");
  shop.does("give-job", R"({"job": 2, "person": "Tomo"})");
  const auto ids = [&](const std::string& json) {
    std::vector<std::int64_t> out;
    const Answer a = shop.asks("jobs", json);
    for (std::size_t i = 0; i < size(at(a.data, "jobs")); ++i)
      out.push_back(as<Ref>(at(item(at(a.data, "jobs"), i), "job")).id);
    return out;
  };
  CHECK(ids("{}").size() == 2);
  CHECK(ids(R"({"person": "Ines"})") == std::vector<std::int64_t>{1});
  CHECK(ids(R"({"person": "Tomo"})") == std::vector<std::int64_t>{2});
  CHECK(ids(R"({"bench": "window"})") == std::vector<std::int64_t>{1});
  CHECK(ids(R"({"bench": "door 2"})") == std::vector<std::int64_t>{2});
  shop.who = shop.ines;
  CHECK(ids(R"({"mine": true})") == std::vector<std::int64_t>{1});
  shop.does("give-job", R"({"job": 1, "person": "Tomo", "bench": "window"})"); // Tomo, at Ines's bench
  CHECK(ids(R"({"mine": true})").empty());
  CHECK(ids(R"({"bench": "window"})") == std::vector<std::int64_t>{1});
  CHECK(shop.asks("jobs", R"({"mine": true})").text == "No open job is Ines's.");
  CHECK(shop.asks("whose", R"({"job": 1})").text ==
        "Job 1 (test board of Vida): Tomo does it, at the window bench.");
}

TEST_CASE("what cannot be given is refused with what would do") {
  Shop shop;
  shop.does("change-person", R"({"person": "Ines", "bench": "window"})");
  CHECK(shop.refused("give-job", R"({"job": 1})").where == "person");
  CHECK(shop.refused("give-job", R"({"job": 1, "person": "guest"})").text == "Guest may only look.");
  CHECK(shop.refused("give-job", R"({"job": 1, "person": "Ines", "mine": true})").where == "person");
  const Problem p = shop.refused("give-job", R"({"job": 1, "bench": "cellar"})");
  CHECK(p.text == "Nobody works at a bench called 'cellar'.");
  CHECK(p.would_do == "There are: window.");
  CHECK(shop.refused("give-job", R"({"job": 1, "person": "Zala"})").would_do ==
        "There are: Mara, Ines, Tomo, guest.");
  shop.does("cancel-job", R"({"job": 1})", true);
  CHECK(shop.refused("give-job", R"({"job": 1, "person": "Ines"})").fault == Fault::state);
}
