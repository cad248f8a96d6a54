// Wire, opening hours, special days, settings and receivers.
#include "bench.hpp"
#include "shop/setup.hpp"
#include "support/catch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

using namespace nutward;
using namespace nutward::test;

TEST_CASE("a wire is defined once, with a profile that can be") {
  Shop shop;
  shop.does("define-wire",
            R"({"name": "tall", "material": "stainless", "crown_width_mm": 2.7, "crown_height_mm": 1.4,
      "tang_depth_mm": 1.6, "tang_thickness_mm": 0.5, "barb_width_mm": 0.8, "stick_mm": 610})");
  const Wire w = shop.seen([](const View& v) { return *v.wires().find(3); });
  CHECK(w.material == "stainless");
  CHECK(w.profile.crown_height == 1.4_mm);
  CHECK(w.profile.barb_width == 0.8_mm);
  CHECK(w.stick == 610_mm);
  CHECK(shop.refused("define-wire", R"({"name": "tall"})").fault == Fault::state);
  CHECK(shop.refused("define-wire", R"({"name": "odd", "crown_height_mm": -1})").where == "crown_height_mm");
  CHECK(shop.refused("define-wire", R"({"name": "12"})").where == "name");
}

TEST_CASE("a delivery is on hand to the nanometre, with its lot") {
  Shop shop;
  const Answer a =
      shop.does("receive", R"({"wire": "narrow", "count": 3, "each_mm": 500.000001, "supplier": "Lindwurm",
      "price_minor": 1250, "crown_height_mm": 1.21})");
  CHECK(field<Length>(a, "length") == Length{1'500'000'003});
  CHECK(a.text == "Received 3 sticks of narrow, 500.00 mm each, 1.50 m in all for 12.50 EUR.");
  CHECK(a.reason == "It is lot 2. On hand now: 1.50 m.");
  const Lot l = shop.seen([](const View& v) { return v.wires().lots(2).at(0); });
  CHECK(l.count == 3);
  CHECK(l.each == Length{500'000'001});
  CHECK(l.price == Money{1250});
  CHECK(l.crown_height == 1.21_mm);
  CHECK(shop.seen([](const View& v) { return v.wires().on_hand(2); }) == Length{1'500'000'003});
}

TEST_CASE("without a usual stick a delivery must say its length, and a coil is a coil") {
  Shop shop;
  shop.does("define-wire", R"({"name": "broad"})");
  CHECK(shop.refused("receive", R"({"wire": "broad"})").text == "How long is one stick of broad?");
  CHECK(shop.does("receive", R"({"wire": "broad", "form": "coil", "each_mm": 10000})").text ==
        "Received 1 coil of broad, 10.00 m each, 10.00 m in all.");
  CHECK(shop.refused("receive", R"({"wire": "broad", "count": 0, "each_mm": 600})").where == "count");
  CHECK(shop.refused("receive", R"({"wire": "broad", "each_mm": 600, "price_minor": -1})").where ==
        "price_minor");
}

TEST_CASE("below its reorder level a wire is to be ordered") {
  Shop shop;
  CHECK(shop.does("reorder-level", R"({"wire": 1, "level": "6 m"})").text ==
        "Medium is low from now on when less than 6.00 m is on hand.");
  CHECK(field<bool>(shop.asks("supply", R"({"wire": 1})"), "order") == false); // 6 m is not less than 6 m
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  CHECK(field<bool>(shop.asks("supply", R"({"wire": 1})"), "order"));
}

TEST_CASE("weekly hours are sorted, joined and kept for each day") {
  Shop shop;
  CHECK(shop.does("open-hours", R"({"days": "sat,sun", "hours": "13:30-18:00, 9:00-12:30"})").text ==
        "Every Saturday, Sunday: open 09:00-12:30 13:30-18:00.");
  CHECK(shop.does("open-hours", R"({"days": [6], "hours": "closed"})").text == "Every Sunday: closed.");
  const auto week = shop.seen([](const View& v) { return v.house().week(); });
  REQUIRE(week.size() == 7);
  CHECK(week[5].spans == "09:00-12:30 13:30-18:00");
  CHECK(week[6].spans == "");
  for (const char* bad : {"9", "9-", "25:00-26:00", "18:00-9:00-", "9:60-10:00", "noon-18:00", "24:01-25:00"})
    CHECK(shop.refused("open-hours", std::string(R"({"days": "mon", "hours": ")") + bad + "\"}").where ==
          "hours");
  CHECK(shop.refused("open-hours", R"({"days": "someday", "hours": "9:00-18:00"})").where == "days");
  CHECK(shop.refused("open-hours", R"({"days": [7], "hours": "9:00-18:00"})").where == "days");
}

TEST_CASE("a closed day moves what would have been said on it") {
  Shop shop;
  CHECK(shop.does("close-day", R"({"day_on": "2026-03-26", "note": "fair"})").text ==
        "Closed on Thu 26 Mar 2026: fair.");
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  // Pressed on Wednesday 11:00, due on Thursday 11:00: closed, so Friday 9:00 in Berlin.
  CHECK(field<Instant>(shop.does("pressed", R"({"job": 1})"), "remind") == instant("2026-03-27T08:00:00Z"));
}

TEST_CASE("extra hours of a day are added to one another") {
  Shop shop;
  shop.does("open-extra", R"({"day_on": "2026-03-28", "hours": "9:00-12:00"})");
  CHECK(shop.does("open-extra", R"({"day_on": "2026-03-28", "hours": "11:00-13:00", "note": "rush"})").text ==
        "Open besides on Sat 28 Mar 2026: 09:00-13:00.");
  shop.clock.to("2026-03-27T10:00:00Z"); // due on Saturday at 11:00 in Berlin, which is open now
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  CHECK(field<Instant>(shop.does("pressed", R"({"job": 1})"), "remind") == instant("2026-03-28T10:00:00Z"));
}

TEST_CASE("a setting is kept as it was meant and used from then on") {
  Shop shop;
  CHECK(shop.does("set", R"({"setting": "setback", "to": "0.5 mm"})").text ==
        "Setback is 0.5 mm now; it was the default.");
  // target = 52 − 2·0.5, least = 51 − 2·0.3, cut = 51 + 2·0.5
  const Answer a = shop.asks("fit", R"({"job": 1, "slot": 1})");
  CHECK(as<Length>(at(at(a.data, "need"), "target")) == 51_mm);
  CHECK(as<Length>(at(at(a.data, "need"), "least")) == 50.4_mm);
  CHECK(as<Length>(at(at(a.data, "need"), "cut")) == 52_mm);
}

TEST_CASE("a load gauge's division keeps its unit, and no reported load is rounded away") {
  Shop shop;
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  auto set = [&](const char* name, const char* to) {
    return shop.does("set", fmt::format(R"({{"setting": "{}", "to": "{}"}})", name, to)).text;
  };
  auto pressed = [&](const char* load) {
    const Answer a = shop.does("pressed", fmt::format(R"({{"job": 1, "load": "{}"}})", load));
    return a.text.substr(a.text.find("pressed"), a.text.find(',') - a.text.find("pressed"));
  };
  CHECK(pressed("1825") == "pressed at 1825 lb");
  CHECK(pressed("8 kN") == "pressed at 8 kN");
  set("load_unit", "kn");
  CHECK(pressed("8") == "pressed at 8 kN");
  CHECK(pressed("6000 N") == "pressed at 6 kN");
  CHECK(pressed("3 kN") == "pressed at 3 kN");
  auto shown = [&] { return shop.seen([](const View& v) { return say(units::Force{8000}, setup(v)); }); };
  CHECK(shown() == "8.00 kN"); // 10 lb are 0.044 kN
  CHECK(set("gauge_division", "0.1") == "Gauge division is 0.1 kN now; it was the default.");
  CHECK(shown() == "8.0 kN");
  set("load_unit", "lb"); // 0.1 kN are 22.5 lb
  CHECK(shown() == "1800 lb");
  CHECK(set("gauge_division", "2.5 pounds") == "Gauge division is 2.5 lb now; it was 0.1 kN.");
  CHECK(shown() == "1797.5 lb"); // 1798.47
  CHECK(set("gauge_division", "50 N") == "Gauge division is 50 N now; it was 2.5 lb.");
}

TEST_CASE("settings that cannot be, alone or together, are refused") {
  Shop shop;
  auto no = [&](const char* name, const char* to) {
    return shop.refused("set", std::string(R"({"setting": ")") + name + R"(", "to": ")" + to + "\"}").fault ==
           Fault::value;
  };
  CHECK(no("zone", "Europe/Nowhere"));
  CHECK(no("zone", "../etc/passwd"));
  CHECK(no("unit", "furlong"));
  CHECK(no("load_unit", "ton"));
  CHECK(no("gauge_division", "0"));
  CHECK(no("gauge_division", "ten"));
  CHECK(no("recheck_from_h", "169"));
  CHECK(no("currency", "eur"));
  CHECK(no("nip_loss", "-1 mm"));
  CHECK(no("nip_loss", "51 mm"));
  CHECK(no("nonsense", "1"));
  shop.does("set", R"({"setting": "trim_limit", "to": "3 mm"})");
  CHECK(no("dressing_loss",
           "2 mm")); // both ends would take 4.1 mm with the caliper's error, over the trim limit of 3
}

TEST_CASE("a receiver's secret is shown once and stands nowhere in the journal") {
  Shop shop;
  const Answer a = shop.does(
      "add-receiver",
      R"({"name": "wall", "url": "http://127.0.0.1:9000/hook", "shape": "text", "wants": ["recheck.due", "wire.low"]})");
  const std::string secret = field<std::string>(a, "secret");
  CHECK(secret.starts_with("whsec_"));
  CHECK(secret.size() == 50); // 32 bytes are 44 characters of base64
  CHECK(a.text == "Wall will be told of recheck.due, wire.low.");
  CHECK(a.reason.find(secret) != std::string::npos);
  const Receiver r = shop.seen([](const View& v) { return v.house().receivers().at(0); });
  CHECK(r.secret == secret);
  CHECK(r.shape == Shape::text);
  CHECK(r.wants == std::vector<std::string>{"recheck.due", "wire.low"});
  CHECK(shop.does("drop-receiver", R"({"receiver": "Wall"})").text == "Wall is told nothing any more.");
  CHECK(shop.does("undo").text == "Taken back: Wall is told nothing any more.");
  CHECK(shop.seen([](const View& v) { return v.house().receivers().at(0).secret; }) == secret);
  SQLite::Database db(shop.made.file().string(), SQLite::OPEN_READONLY);
  SQLite::Statement q(db,
                      "SELECT COUNT(*) FROM journal WHERE instr(call || answer || inverse || said, ?) > 0");
  q.bind(1, secret);
  REQUIRE(q.executeStep());
  CHECK(q.getColumn(0).getInt64() == 0);
}

TEST_CASE("two receivers get two secrets, and names and addresses are checked") {
  Shop shop;
  const auto one = shop.does("add-receiver", R"({"name": "wall", "url": "https://example.org/a"})");
  const auto two = shop.does("add-receiver", R"({"name": "door", "url": "https://example.org/b"})");
  CHECK(field<std::string>(one, "secret") != field<std::string>(two, "secret"));
  CHECK(shop.refused("add-receiver", R"({"name": "wall", "url": "https://example.org/c"})").fault ==
        Fault::state);
  for (const char* bad :
       {"ftp://example.org/", "http://", "example.org", "http://user:pw@example.org/", "http://a b.example/"})
    CHECK(shop.refused("add-receiver", std::string(R"({"name": "x", "url": ")") + bad + "\"}").where ==
          "url");
  CHECK(
      shop.refused("add-receiver", R"({"name": "x", "url": "https://example.org/", "wants": ["everything"]})")
          .where == "wants");
  CHECK(shop.refused("drop-receiver", R"({"receiver": "nobody"})").would_do == "There are: wall, door.");
}
