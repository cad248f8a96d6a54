#include "remind/event.hpp"
#include "support/catch.hpp"

using namespace nutward::remind;

namespace {

Event recheck() {
  return {"evt_7",
          "recheck.due",
          "/shops/bench",
          nutward::units::Instant{1'797'064'200},
          "Job 12 wants its recheck.",
          R"({"sequence":3,"job":12})"};
}

std::string complaint(Shape shape, const Event& event) {
  try {
    (void)body(shape, event);
  } catch (const BadEvent& e) {
    return e.what();
  }
  return "";
}

} // namespace

TEST_CASE("An event has the four members of Standard Webhooks, data as the shop encoded it") {
  CHECK(body(Shape::event, recheck()) ==
        R"({"type":"recheck.due","timestamp":"2026-12-12T08:30:00Z","text":"Job 12 wants its recheck.",)"
        R"("data":{"sequence":3,"job":12}})");
  CHECK(content_type(Shape::event) == "application/json");
}

TEST_CASE("A structured CloudEvent has the required attributes of CloudEvents 1.0") {
  // CloudEvents 1.0.2 §3.1 (id, source, specversion, type), JSON format §3 (structured, media type)
  CHECK(
      body(Shape::cloudevents, recheck()) ==
      R"({"specversion":"1.0","id":"evt_7","source":"/shops/bench","type":"recheck.due",)"
      R"("time":"2026-12-12T08:30:00Z","text":"Job 12 wants its recheck.","datacontenttype":"application/json",)"
      R"("data":{"sequence":3,"job":12}})");
  CHECK(content_type(Shape::cloudevents) == "application/cloudevents+json; charset=utf-8");
}

TEST_CASE("The text shape is the sentence alone, escaped") {
  Event e = recheck();
  e.text = "2\" of \\wire\\\nrings\x1b[2J, 1¾ in";
  CHECK(body(Shape::text, e) == R"({"text":"2\" of \\wire\\\nrings\u001b[2J, 1¾ in"})");
  e.text = "cut \xff short \xc3";
  CHECK(body(Shape::text, e) == "{\"text\":\"cut \xef\xbf\xbd short \xef\xbf\xbd\"}");
}

TEST_CASE("Shapes are found by their names") {
  for (const Shape s : {Shape::event, Shape::cloudevents, Shape::text})
    CHECK(shape_named(name(s)) == s);
  CHECK(shape_named("xml") == std::nullopt);
  CHECK(name(Shape::cloudevents) == "cloudevents");
}

TEST_CASE("Data that is not a JSON object cannot slip into a body") {
  Event e = recheck();
  for (const std::string& data :
       {std::string(), std::string("{"), std::string("[1]"), std::string("null"),
        std::string(R"({},"type":"other")"), std::string("{}}"), std::string("{\"a\":nan}"),
        std::string("{\"a\":\"\xff\"}"), std::string(200'000, '{')}) {
    e.data = data;
    CHECK(complaint(Shape::event, e) == "The data of a message must be a JSON object.");
  }
  e.data = " {\"deep\":" + std::string(5'000, '[') + std::string(5'000, ']') + "}";
  CHECK_NOTHROW(body(Shape::event, e));
}

TEST_CASE("A body of 20 000 bytes is refused and one of 19 999 goes") {
  Event e = recheck();
  e.text.clear();
  const std::size_t rest = body(Shape::text, e).size();
  e.text = std::string(19'999 - rest, 'x');
  CHECK(body(Shape::text, e).size() == 19'999);
  e.text += 'x';
  CHECK(complaint(Shape::text, e) ==
        "The message of type recheck.due takes 20000 bytes; it must stay under 20000. Shorten "
        "its text or its data.");
}

TEST_CASE("A message without an id, a type or, as a CloudEvent, a source is refused") {
  Event e = recheck();
  e.id.clear();
  CHECK(complaint(Shape::event, e) == "A message needs an id and a type.");
  e = recheck();
  e.type.clear();
  CHECK(complaint(Shape::event, e) == "A message needs an id and a type.");
  e = recheck();
  e.source.clear();
  CHECK(complaint(Shape::cloudevents, e) == "A CloudEvent needs a source.");
  CHECK_NOTHROW(body(Shape::event, e));
}
