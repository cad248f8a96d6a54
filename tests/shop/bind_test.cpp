// Binding: what an argument may be, and everything that it may not.
#include "bench.hpp"
#include "shop/bind.hpp"
#include "support/catch.hpp"

#include <cmath>
#include <limits>

using namespace nutward;
using namespace nutward::test;

namespace {

Value bound(Bench& shop, const Param& param, const Value& raw) {
  return shop.seen([&](const View& v) { return bind_value(param, raw, v); });
}
bool refuses(Bench& shop, const Param& param, const Value& raw) {
  try {
    bound(shop, param, raw);
  } catch (const Problem& p) {
    CHECK(p.fault == Fault::value);
    CHECK(p.where == field_for(param));
    CHECK_FALSE(p.text.empty());
    CHECK_FALSE(p.would_do.empty());
    return true;
  }
  return false;
}
Value text(const char* s) {
  return std::string(s);
}

const Param length{"length", Kind::length, true, false, "", {1, 2000}};
const Param load{"load", Kind::load, true, false, "", {0, 200000}};
const Param mass{"mass", Kind::mass, true, false, "", {0, 1e6}};
const Param money{"price", Kind::money, true, false, "", {0, 1e9}};
const Param count{"count", Kind::count, true, false, "", {1, 500}};
const Param slot{"slot", Kind::slot, true, false, ""};
const Param number{"humidity", Kind::number, true, false, "", {0, 100}};
const Param words{"note", Kind::words, true, false, ""};
const Param name{"name", Kind::name, true, false, ""};
const Param yes{"long", Kind::yes, true, false, ""};
const Param of_wire{"wire", Kind::wire, true, false, ""};
const Param job{"job", Kind::job, true, false, ""};
const Param piece{"piece", Kind::piece, true, false, ""};

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();
constexpr double two_to_63 = 9223372036854775808.0;

} // namespace

TEST_CASE("a length comes from its own type, a number in millimetres, or a text with a unit") {
  Shop shop;
  for (const Value& v : {Value{52.4_mm}, Value{52.4}, text("52.4 mm"), text("5.24 cm"), text("52.4")})
    CHECK(as<Length>(bound(shop, length, v)) == 52.4_mm);
  CHECK(as<Length>(bound(shop, length, std::int64_t{52})) == 52_mm);
  CHECK(as<Length>(bound(shop, length, text("2 1/16 in"))) == Length{52'387'500}); // 33/16 · 25.4
  CHECK(as<Length>(bound(shop, length, 52.400001)) == Length{52'400'001});
  CHECK(as<Length>(bound(shop, length, std::int64_t{1})) == 1_mm);
  CHECK(as<Length>(bound(shop, length, std::int64_t{2000})) == 2000_mm);
}

TEST_CASE("lengths that cannot be are refused, whatever form they come in") {
  Shop shop;
  for (double d : {0.999999, 2000.000001, 0.0, -0.0, -52.4, 1e308, -1e308, two_to_63, -two_to_63,
                   not_a_number, inf, -inf, 1e9, 1e10}) {
    INFO(d);
    CHECK(refuses(shop, length, d));
  }
  for (std::int64_t i :
       {std::int64_t{0}, std::int64_t{-52}, std::int64_t{2001}, std::numeric_limits<std::int64_t>::max(),
        std::numeric_limits<std::int64_t>::min()}) {
    INFO(i);
    CHECK(refuses(shop, length, i));
  }
  for (const char* s : {"", "mm", "52.4 lb", "52.4 kg", "52.4 N", "-52.4 mm", "2.1 m", "0.9 mm", "1e308 mm",
                        "nan", "inf mm", "52.4.1 mm", "52,4,1 mm", "fifty", "52.4 mm mm", "0x20 mm"}) {
    INFO(s);
    CHECK(refuses(shop, length, text(s)));
  }
  CHECK(refuses(shop, length, true));
  CHECK(refuses(shop, length, Force{52}));
  CHECK(refuses(shop, length, Value{Length{-1}}));
  CHECK(refuses(shop, length, record({{"mm", 52.4}})));
}

TEST_CASE("loads, masses and money keep to their units and bounds") {
  Shop shop;
  CHECK(as<Force>(bound(shop, load, std::int64_t{1780})).n == 1780.0);
  CHECK(as<Force>(bound(shop, load, text("2 kN"))).n == Approx(2000));
  CHECK(as<Force>(bound(shop, load, text("400"))).n ==
        Approx(1779.2886)); // 400 lbf, the shop's unit: 400 · 4.4482216152605
  for (const Value& v : {Value{-1.0}, Value{not_a_number}, Value{1e308}, Value{inf}, Value{200000.1},
                         text("400 mm"), text("400 g"), text("400 ton"), Value{true}})
    CHECK(refuses(shop, load, v));
  CHECK(as<Mass>(bound(shop, mass, 310.5)).mg == 310'500);
  for (const Value& v : {Value{-1.0}, Value{not_a_number}, Value{1e308}, text("1 mm")})
    CHECK(refuses(shop, mass, v));
  CHECK(as<Money>(bound(shop, money, std::int64_t{1250})) == Money{1250});
  CHECK(as<Money>(bound(shop, money, text("12.50"))) == Money{1250});
  for (const Value& v : {Value{12.5}, Value{std::int64_t{-1}}, Value{std::int64_t{1'000'000'001}},
                         text("12.505"), text("much")})
    CHECK(refuses(shop, money, v));
}

TEST_CASE("a plain number under a field with a unit is in that unit, whatever the shop's is") {
  Shop shop;
  shop.does("set", R"({"setting": "unit", "to": "in"})");
  const Answer a = shop.asks("fit", R"({"wire": 1, "length_mm": "50.8"})");
  CHECK(as<Length>(at(at(a.data, "need"), "target")) == 50.8_mm);
  const Answer b =
      shop.asks("fit", R"({"wire": 1, "length": "2"})"); // under the name alone the shop's unit: 2 in
  CHECK(as<Length>(at(at(b.data, "need"), "target")) == 50.8_mm);
  shop.does("add", R"({"wire": 1, "length_mm": "52.4,51"})");
  CHECK(shop.seen([](const View& v) { return v.tin().find(2)->length; }) == 51_mm);
  shop.does("receive", R"({"wire": 1, "price_minor": "1250"})");
  CHECK(shop.seen([](const View& v) { return v.wires().lots(1).at(0).price; }) == Money{1250});
  shop.does("pressed", R"({"job": 1, "load_n": "1780"})", true);
  CHECK(shop.seen([](const View& v) { return v.jobs().rechecks(1).at(0).load->n; }) == 1780.0);
}

TEST_CASE("whole numbers are whole and within bounds") {
  Shop shop;
  CHECK(as<std::int64_t>(bound(shop, count, 3.0)) == 3);
  CHECK(as<std::int64_t>(bound(shop, count, text("500"))) == 500);
  for (const Value& v : {Value{0.0}, Value{2.5}, Value{not_a_number}, Value{inf}, Value{1e308},
                         Value{two_to_63}, Value{std::int64_t{501}}, Value{std::int64_t{-1}}, text(""),
                         text("three"), text("3 "), text("99999999999999999999"), Value{true}})
    CHECK(refuses(shop, count, v));
  CHECK(as<std::int64_t>(bound(shop, slot, std::int64_t{48})) == 48);
  for (const Value& v : {Value{std::int64_t{49}}, Value{std::int64_t{-1}}, Value{2.5}, Value{two_to_63}})
    CHECK(refuses(shop, slot, v));
  CHECK(as<double>(bound(shop, number, text("45.5"))) == 45.5);
  for (const Value& v :
       {Value{not_a_number}, Value{100.5}, Value{-0.1}, Value{1e308}, text("inf"), text("nan"), text("45 %")})
    CHECK(refuses(shop, number, v));
}

TEST_CASE("yes is yes or no") {
  Shop shop;
  for (const Value& v : {Value{true}, text("true"), text("yes"), text("1")})
    CHECK(as<bool>(bound(shop, yes, v)));
  for (const Value& v : {Value{false}, text("no"), text("0")})
    CHECK_FALSE(as<bool>(bound(shop, yes, v)));
  for (const Value& v : {text("perhaps"), Value{std::int64_t{1}}, text("")})
    CHECK(refuses(shop, yes, v));
}

TEST_CASE("texts are plain UTF-8 of a bounded length") {
  Shop shop;
  CHECK(as<std::string>(bound(shop, words, std::string(500, 'x'))).size() == 500);
  CHECK(as<std::string>(bound(shop, words, text("Žiga, 3 €"))) == "Žiga, 3 €");
  CHECK(refuses(shop, words, std::string(501, 'x')));
  for (const char* s : {"\xff", "a\xc3", "\xc0\x80", "\xed\xa0\x80", "\xf5\x80\x80\x80", "line\nbreak",
                        "bell\a", "\x1b[31m", "\x7f"})
    CHECK(refuses(shop, words, text(s)));
  CHECK(refuses(shop, words, std::string("nul\0", 4)));
  CHECK(refuses(shop, words, std::int64_t{3}));
  for (const char* s : {"", "12", "1e3"})
    CHECK(refuses(shop, name, text(s)));
  CHECK(refuses(shop, name, std::string(61, 'x')));
  CHECK(as<std::string>(bound(shop, name, text("medium 2"))) == "medium 2");
}

TEST_CASE("wires, jobs and pieces that are not there are refused") {
  Shop shop;
  for (const Param& p : {of_wire, job, piece}) {
    for (const Value& v :
         {Value{std::int64_t{99}}, Value{std::int64_t{0}}, Value{std::int64_t{-1}},
          Value{std::numeric_limits<std::int64_t>::max()}, text("99"), text(""), text("nobody's"),
          Value{two_to_63}, Value{not_a_number}, Value{true}, Value{Ref{Thing::lot, 1}}, list({})}) {
      INFO(p.name << " " << to_json(v));
      CHECK(refuses(shop, p, v));
    }
  }
}

TEST_CASE("a wire is meant by its id, its name, or a part of it that only one has") {
  Shop shop;
  shop.does("define-wire", R"({"name": "medium tall"})");
  for (const Value& v : {Value{std::int64_t{1}}, text("1"), text("#1"), text("medium"), text("MEDIUM"),
                         Value{Ref{Thing::wire, 1}}})
    CHECK(as<Ref>(bound(shop, of_wire, v)) == Ref{Thing::wire, 1});
  CHECK(as<Ref>(bound(shop, of_wire, text("tall"))) == Ref{Thing::wire, 3});
  const Problem p = shop.unanswered("stock", R"({"wire": "med"})");
  CHECK(p.fault == Fault::ambiguous);
  REQUIRE(p.choices.size() == 2);
  CHECK(p.choices[1].label == "medium tall");
  CHECK(p.choices[1].call.row == "stock");
  CHECK(as<Ref>(*p.choices[1].call.find("wire")) == Ref{Thing::wire, 3});
}

TEST_CASE("a job is meant by words that only one open job has") {
  Shop shop;
  CHECK(as<Ref>(bound(shop, job, text("test vida"))) == Ref{Thing::job, 1});
  const Problem p = shop.refused("pressed", R"({"job": "board", "load_n": 1780})");
  CHECK(p.fault == Fault::ambiguous);
  REQUIRE(p.choices.size() == 2);
  CHECK(p.choices[0].label == "job 1, test board of Vida");
  CHECK(as<Ref>(*p.choices[0].call.find("job")) == Ref{Thing::job, 1});
  CHECK(p.choices[0].call.find("load_n") != nullptr); // the rest of the call goes along
}

TEST_CASE("a piece is meant by its length and wire within half a millimetre") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 52.4, 52.8, 60]})");
  shop.does("add", R"({"wire": 2, "length_mm": 60.2})");
  CHECK(as<Ref>(bound(shop, piece, text("52.4 of medium"))) ==
        Ref{Thing::piece, 1}); // of equal ones the oldest
  CHECK(as<Ref>(bound(shop, piece, text("60.5 mm of medium"))) == Ref{Thing::piece, 4});
  CHECK(as<Ref>(bound(shop, piece, record({{"length_mm", 53.3}, {"wire", text("medium")}}))) ==
        Ref{Thing::piece, 3});
  CHECK(refuses(shop, piece, text("60.51 of medium")));
  CHECK(refuses(shop, piece, record({{"wire", text("medium")}})));
  CHECK(shop.does("hold", R"({"piece": {"length_mm": 60.1}, "job": 1})").text.find("piece 4") !=
        std::string::npos); // of the job's wire
  const Problem p = shop.refused("scrap", R"({"piece": "52.6 of medium"})");
  CHECK(p.fault == Fault::ambiguous);
  CHECK(p.choices.size() == 2); // the two of 52.4 are one choice
}

TEST_CASE("a piece that somebody holds is meant last among equals") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [52.4, 52.4]})");
  shop.does("hold", R"({"piece": 1, "job": 1})");
  CHECK(as<Ref>(bound(shop, piece, text("52.4 of medium"))) == Ref{Thing::piece, 2});
}

TEST_CASE("slots are said as numbers, ranges and lists") {
  Shop shop;
  shop.does("receive", R"({"wire": 2, "count": 4})");
  auto pressed = [&](const char* slots) {
    shop.does("pressed", std::string(R"({"job": 2, "slots": )") + slots + "}", true);
    auto out = shop.seen([](const View& v) { return v.jobs().rechecks(2).at(0).slots; });
    shop.does("undo");
    return out;
  };
  CHECK(pressed("7") == std::vector{7});
  CHECK(pressed(R"("9-11, 3")") == std::vector{3, 9, 10, 11});
  CHECK(pressed(R"("11-9")") == std::vector{9, 10, 11});
  CHECK(pressed("[12, 3, 3]") == std::vector{3, 12});
  for (const char* bad : {R"("")", R"("3-")", R"("-3")", R"("1-49")", R"("a")", R"("1-99999999999999999999")",
                          "[]", "[1.5]", "[null]", "[[1]]", R"(["3-5"])", "true"}) {
    INFO(bad);
    CHECK(shop.refused("pressed", std::string(R"({"job": 2, "slots": )") + bad + "}").where == "slots");
  }
}

TEST_CASE("what a row does not take, takes twice, or needs and did not get is refused by name") {
  Shop shop;
  CHECK(shop.refused("add", R"({"wire": 1, "colour": "red"})").where == "colour");
  CHECK(shop.refused("add", R"({"wire": 1, "length": 52.4})").would_do == "Send it as length_mm.");
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": 52.4, "length": "51 mm"})").text ==
        "'length' is given twice.");
  CHECK(shop.refused("pressed").where == "job");
  CHECK(shop.does("add", R"({"wire": 1, "length_mm": 52.4, "count": null})").kind ==
        "done"); // null: as if not sent
  std::string many = "[1";
  for (int i = 0; i < 200; ++i)
    many += ", 50";
  CHECK(shop.refused("add", R"({"wire": 1, "length_mm": )" + many + "]}").where == "length_mm");
}
