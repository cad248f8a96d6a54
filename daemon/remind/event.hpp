// The body of a message: what a receiver reads. Pure.
#pragma once

#include "units/instant.hpp"

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace nutward::remind {

// What a receiver wants to be sent.
enum class Shape {
  event,       // {"type","timestamp","text","data"}: Standard Webhooks 1.0.0
  cloudevents, // CloudEvents 1.0, structured JSON; the sentence is its extension attribute `text`
  text,        // {"text"}: a team chat's incoming webhook takes it as it is
};

std::optional<Shape> shape_named(std::string_view name); // "event", "cloudevents", "text"
std::string_view name(Shape shape);
std::string_view content_type(Shape shape); // the HTTP header that goes with the body

struct Event {
  std::string id;     // stable over every retry: the receiver's key for dropping repeats
  std::string type;   // "recheck.due"
  std::string source; // CloudEvents' source, a URI reference that names the shop: "/shops/bench-street"
  units::Instant at;  // when it happened, not when it is sent
  std::string text;   // one full sentence; bytes that are not UTF-8 come out as U+FFFD
  std::string data;   // an object, already encoded as JSON; it goes into the body as it is
};

inline constexpr std::size_t body_limit = 20'000; // bytes; a body is shorter than this

// The event cannot be sent as it is. what(): a whole sentence.
struct BadEvent : std::runtime_error {
  using std::runtime_error::runtime_error;
};

// Throws BadEvent: data is not a JSON object, type or id is empty, or the body would reach the limit.
std::string body(Shape shape, const Event& event);

} // namespace nutward::remind
