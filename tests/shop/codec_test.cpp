// JSON at the edges: there and back without loss, and what is refused before it can hurt.
#include "bench.hpp"
#include "support/catch.hpp"

#include <cmath>

using namespace nutward;
using namespace nutward::test;

namespace {

Problem refused(const std::string& json) {
  try {
    read_json(json);
  } catch (const Problem& p) {
    CHECK(p.fault == Fault::value);
    return p;
  }
  throw std::runtime_error("read: " + json.substr(0, 60));
}

} // namespace

TEST_CASE("calls come back with every type of value as it was") {
  const Call call{"row",
                  {{"nothing", {}},
                   {"yes", true},
                   {"whole", std::int64_t{-9'223'372'036'854'775'807}},
                   {"real", 0.1},
                   {"whole_real", 5.0},
                   {"small", 4.9e-324},
                   {"text", std::string("Žiga \"3\" \\ \n €")},
                   {"length", Length{52'400'001}},
                   {"negative", Length{-1}},
                   {"force", Force{1779.28864610442}},
                   {"mass", Mass{310'001}},
                   {"money", Money{-1250}},
                   {"instant", instant("2026-03-29T01:00:00Z")},
                   {"day", Day{20'541}},
                   {"ref", Ref{Thing::special_day, 12}},
                   {"empty", list({})},
                   {"list", list({Length{1}, std::string("nm"), list({true})})},
                   {"record", record({{"nm", Length{7}}, {"at", std::string("x")}, {"thing", record({})}})}}};
  const std::string once = calls_to_json({call, Call{"other", {}}});
  const auto back = calls_from_json(once);
  REQUIRE(back.size() == 2);
  CHECK(back[0].row == "row");
  CHECK(back[1].args.empty());
  REQUIRE(back[0].args.size() == call.args.size());
  for (std::size_t i = 0; i < call.args.size(); ++i) {
    INFO(call.args[i].first);
    CHECK(back[0].args[i].first == call.args[i].first);
    CHECK(back[0].args[i].second.index() == call.args[i].second.index());
    if (!std::holds_alternative<std::shared_ptr<const Node>>(call.args[i].second))
      CHECK(back[0].args[i].second == call.args[i].second);
  }
  CHECK(as<Length>(item(*back[0].find("list"), 0)) == Length{1});
  CHECK(as<Length>(at(*back[0].find("record"), "nm")) == Length{7});
  CHECK(as<std::string>(at(*back[0].find("record"), "at")) == "x");
  CHECK(size(*back[0].find("empty")) == 0);
  CHECK(calls_to_json(back) == once);
}

TEST_CASE("an answer's figures carry their unit in their name, lengths to the nanometre") {
  CHECK(to_json(record({{"length", Length{52'400'001}},
                        {"load", Force{1780}},
                        {"mass", Mass{310'500}},
                        {"price", Money{1250}}})) ==
        R"({"length_mm":52.400001,"load_n":1780.0,"mass_g":310.5,"price_minor":1250})");
  CHECK(to_json(record({{"due", instant("2026-03-29T01:00:00Z")},
                        {"at", instant("2026-03-29T01:00:00Z")},
                        {"day", Day{0}}})) ==
        R"({"due_at":"2026-03-29T01:00:00Z","at":"2026-03-29T01:00:00Z","day_on":"1970-01-01"})");
  CHECK(to_json(
            record({{"wire", Ref{Thing::wire, 3}}, {"lengths", list({Length{1'000'000}})}, {"none", {}}})) ==
        R"({"wire":3,"lengths_mm":[1.0],"none":null})");
}

TEST_CASE("a length keeps its nanometre through JSON and back") {
  Shop shop;
  std::int64_t nm = 1'000'000;
  for (int i = 0; i < 2000; ++i) {
    nm = 1'000'000 + (nm * 6364136 + 1442695) % 1'999'000'000;
    const std::string json = to_json(record({{"length", Length{nm}}}));
    const Value back = read_json(json);
    REQUIRE(units::from_mm(std::holds_alternative<double>(at(back, "length_mm"))
                               ? as<double>(at(back, "length_mm"))
                               : 0) == Length{nm});
  }
  shop.does("add", R"({"wire": 1, "length_mm": 52.400001})");
  CHECK(shop.seen([](const View& v) { return v.tin().find(1)->length; }) == Length{52'400'001});
}

TEST_CASE("a text that is not valid UTF-8 is still written as JSON") {
  CHECK(to_json(Value{std::string("a\xff")}) == "\"a\xef\xbf\xbd\"");
}

TEST_CASE("JSON that is nested a hundred thousand deep is refused without being followed") {
  CHECK(refused(std::string(100'000, '[')).text == "The JSON is nested deeper than 32 levels.");
  std::string objects;
  for (int i = 0; i < 40'000; ++i)
    objects += "{\"a\":";
  CHECK(refused(objects).text == "The JSON is nested deeper than 32 levels.");
  CHECK_NOTHROW(read_json(std::string(32, '[') + std::string(32, ']')));
  CHECK_THROWS_AS(read_json(std::string(33, '[') + std::string(33, ']')), Problem);
  CHECK_NOTHROW(read_json("\"" + std::string(1000, '[') + "\\\"" + std::string(1000, '{') +
                          "\"")); // within a text they are text
}

TEST_CASE("a text over 256 KiB is refused") {
  CHECK_NOTHROW(read_json("\"" + std::string(256 * 1024 - 2, 'x') + "\""));
  CHECK(refused("\"" + std::string(256 * 1024 - 1, 'x') + "\"").text == "The text is longer than 256 KiB.");
}

TEST_CASE("a name that stands twice in one object is refused, at any level") {
  CHECK(refused(R"({"job": 1, "job": 2})").where == "/job");
  CHECK(refused(R"({"a": [{"b": {"c": 1, "d": 2, "c": 3}}]})").text ==
        "The name 'c' stands twice in one object.");
  CHECK_NOTHROW(read_json(R"({"a": {"b": 1}, "b": {"a": 1}})"));
  CHECK_NOTHROW(read_json(R"([{"a": 1}, {"a": 2}])"));
}

TEST_CASE("broken JSON is refused with the byte where it breaks") {
  CHECK(refused(R"({"job": 1,})").text.find("at byte 11.") != std::string::npos);
  CHECK(refused("{").text.find("at byte 2.") != std::string::npos);
  for (const char* bad :
       {"",       " ",        "}",       "]]]]",   "{]",   "nul",   "NaN",     "Infinity",
        "-",      "01",       "1.",      ".5",     "'a'",  "\"a",   "\"\\x\"", "\"\\ud800\"",
        "\"\t\"", "\"\xff\"", "{\"a\"}", "{1: 2}", "[1,]", "[1 2]", "// no",   "{} {}"}) {
    INFO(bad);
    CHECK_FALSE(refused(bad).would_do.empty());
  }
}

TEST_CASE("numbers beyond what a number can hold are refused, large ones become doubles") {
  CHECK(refused("1e999").text == "A number in the JSON is beyond what a number can hold.");
  CHECK(refused(R"({"a": [-1e999]})").fault == Fault::value);
  CHECK(as<double>(read_json("9223372036854775808")) == 9223372036854775808.0);
  CHECK(as<double>(read_json("1e308")) == 1e308);
  CHECK(as<std::int64_t>(read_json("-9223372036854775808")) == std::numeric_limits<std::int64_t>::min());
  CHECK(as<double>(read_json("123456789012345678901234567890")) == 123456789012345678901234567890.0);
  CHECK(std::signbit(as<double>(read_json("-0.0"))));
}

TEST_CASE("a body names a record's fields as they are, also those that look like kept values") {
  const Value v = read_json(R"({"nm": 1, "thing": "wire", "id": 2})");
  CHECK(as<std::int64_t>(at(v, "nm")) == 1);
  CHECK(as<std::string>(at(v, "thing")) == "wire");
}

TEST_CASE("a list of calls is read with where each is wrong") {
  const auto calls = read_calls(R"({"calls": [{"do": "hold", "with": {"piece": 1}}, {"do": "undo"}]})");
  REQUIRE(calls.size() == 2);
  CHECK(calls[0].row == "hold");
  CHECK(as<std::int64_t>(*calls[0].find("piece")) == 1);
  CHECK(calls[1].args.empty());
  auto where = [](const std::string& body) {
    try {
      read_calls(body);
    } catch (const Problem& p) {
      return p.where;
    }
    return std::string("read");
  };
  CHECK(where("[]") == "/calls");
  CHECK(where(R"({"calls": []})") == "/calls");
  CHECK(where(R"({"calls": {}})") == "/calls");
  CHECK(where(R"({"calls": [{"do": "undo"}, 3]})") == "/calls/1/do");
  CHECK(where(R"({"calls": [{"do": 3}]})") == "/calls/0/do");
  CHECK(where(R"({"calls": [{"do": "undo", "with": [1]}]})") == "/calls/0/with");
  std::string many = R"({"calls": [{"do": "undo"})";
  for (int i = 0; i < 49; ++i)
    many += R"(,{"do": "undo"})";
  CHECK(where(many + "]}") == "read");
  CHECK(where(many + R"(,{"do": "undo"}]})") == "/calls");
}

TEST_CASE("a problem is written as RFC 9457 wants it, with the remedy and the choices") {
  Problem p(Fault::confirm, "that closes job 1.", "job", "Say yes.");
  p.choices.push_back({"yes, do it", Call{"cancel-job", {{"job", Ref{Thing::job, 1}}, {"due", Day{0}}}}, {}});
  CHECK(
      to_json(p, status_for(p.fault)) ==
      R"({"type":"about:blank","title":"Conflict","status":409,"detail":"That closes job 1.","errors":[{"pointer":"/job","detail":"That closes job 1."}],)"
      R"("remedy":"Say yes.","kind":"refused","text":"That closes job 1. Say yes.",)"
      R"("choices":[{"label":"yes, do it","call":{"row":"cancel-job","with":{"job":1,"due_on":"1970-01-01"}}}]})");
}

TEST_CASE("a shown choice can be sent back as it is") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.400001})");
  const std::string shown = to_json(shop.asks("fit", R"({"job": 1, "slot": 3})"));
  const Value choice = item(at(read_json(shown), "choices"), 0);
  const std::string with = to_json(at(at(choice, "call"), "with"));
  CHECK(shop.does(as<std::string>(at(at(choice, "call"), "row")), with).text.starts_with("Used the 52.40"));
}

TEST_CASE("every fault has its status") {
  CHECK(status_for(Fault::value) == 422);
  CHECK(status_for(Fault::ambiguous) == 422);
  CHECK(status_for(Fault::confirm) == 409);
  CHECK(status_for(Fault::state) == 409);
  CHECK(status_for(Fault::stale) == 409);
  CHECK(status_for(Fault::not_allowed) == 403);
  CHECK(status_for(Fault::no_room) == 507);
  CHECK(status_for(Fault::busy) == 503);
  CHECK(status_for(Fault::broken) == 500);
}
