// The one file of remind that sees the JSON library: it quotes text and checks that data is JSON. The body
// itself is put together as text, so that data stays byte for byte what the shop encoded.
#include "remind/event.hpp"

#include "units/print.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <utility>

namespace nutward::remind {

namespace {

struct Known {
  Shape shape;
  std::string_view name, content_type;
};
constexpr std::array<Known, 3> shapes{{
    {Shape::event, "event", "application/json"},
    {Shape::cloudevents, "cloudevents", "application/cloudevents+json; charset=utf-8"},
    {Shape::text, "text", "application/json"},
}};

const Known& known(Shape shape) {
  for (const Known& k : shapes)
    if (k.shape == shape) return k;
  throw BadEvent("There is no such shape of a message.");
}

std::string quoted(const std::string& text) {
  return nlohmann::json(text).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

// accept() walks the text without building or recursing, so depth cannot hurt it.
bool is_object(const std::string& json) {
  const std::size_t first = json.find_first_not_of(" \t\r\n");
  return first != std::string::npos && json[first] == '{' && nlohmann::json::accept(json);
}

std::string shaped(Shape shape, const Event& e) {
  const std::string type = quoted(e.type), at = quoted(units::print_utc(e.at)), text = quoted(e.text);
  switch (shape) {
  case Shape::event:
    return fmt::format(R"({{"type":{},"timestamp":{},"text":{},"data":{}}})", type, at, text, e.data);
  case Shape::cloudevents:
    return fmt::format(R"({{"specversion":"1.0","id":{},"source":{},"type":{},"time":{},"text":{},)"
                       R"("datacontenttype":"application/json","data":{}}})",
                       quoted(e.id), quoted(e.source), type, at, text, e.data);
  case Shape::text:
    return fmt::format(R"({{"text":{}}})", text);
  }
  throw BadEvent("There is no such shape of a message.");
}

} // namespace

std::optional<Shape> shape_named(std::string_view name) {
  for (const Known& k : shapes)
    if (k.name == name) return k.shape;
  return std::nullopt;
}

std::string_view name(Shape shape) {
  return known(shape).name;
}
std::string_view content_type(Shape shape) {
  return known(shape).content_type;
}

std::string body(Shape shape, const Event& event) {
  if (event.id.empty() || event.type.empty()) throw BadEvent("A message needs an id and a type.");
  if (event.source.empty() && shape == Shape::cloudevents) throw BadEvent("A CloudEvent needs a source.");
  if (!is_object(event.data)) throw BadEvent("The data of a message must be a JSON object.");
  std::string text = shaped(shape, event);
  if (text.size() >= body_limit)
    throw BadEvent(fmt::format(
        "The message of type {} takes {} bytes; it must stay under {}. Shorten its text or its data.",
        event.type, text.size(), body_limit));
  return text;
}

} // namespace nutward::remind
