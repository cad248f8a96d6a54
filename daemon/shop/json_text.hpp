// JSON written straight into a text: what an answer is sent as. Building a tree of the library's for it first
// took a third of the time of answering. What a text needs in the way of escapes is still the library's
// business.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace nutward::shop {

// Any text as a JSON string with its quotes; what is not UTF-8 in it becomes U+FFFD. In codec.cpp.
std::string quoted(std::string_view text);

// Commas come by themselves. Names, opening and closing must follow JSON's grammar; a name must not stand
// twice in one object.
class JsonText {
public:
  void open(char bracket); // '{' or '['
  void close(char bracket);
  void name(std::string_view name);
  void null();
  void boolean(bool value);
  void whole(std::int64_t value);
  void real(double value); // always with a point or an exponent; null where it is no finite number
  void text(std::string_view value);

  std::string take() { return std::move(out_); }

private:
  void begin_value();
  void write(std::string_view text); // as a string
  std::string out_;
  bool comma_ = false; // before whatever comes next, unless it closes
};

} // namespace nutward::shop
