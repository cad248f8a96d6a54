#include "draw/svg.hpp"

#include "units/print.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace nutward::draw {

namespace {

constexpr std::string_view not_in_xml[] = {"\xEF\xBF\xBE", "\xEF\xBF\xBF"};

// "12.345": millimetres to the micrometre.
std::string mm(Length v) {
  const std::int64_t um = (v.nm + (v.nm < 0 ? -500 : 500)) / 1000;
  const std::int64_t size = um < 0 ? -um : um;
  std::string out = (um < 0 ? "-" : "") + std::to_string(size / 1000);
  if (size % 1000 == 0) return out;
  std::string part = std::to_string(1000 + size % 1000).substr(1);
  part.erase(part.find_last_not_of('0') + 1);
  return out + "." + part;
}

std::string attribute(std::string_view name, Length v) {
  return " " + std::string(name) + "=\"" + mm(v) + "\"";
}

// How many bytes the character at the head of valid UTF-8 has.
std::size_t bytes_of(char first) {
  const auto b = static_cast<unsigned char>(first);
  return b < 0x80 ? 1 : b < 0xe0 ? 2 : b < 0xf0 ? 3 : 4;
}

// In tenths of the text's size.
std::int64_t tenths(std::string_view text) {
  std::int64_t out = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t n = std::min(bytes_of(text[at]), text.size() - at);
    const bool wide =
        n == 4 || (n == 3 && text.substr(at, 3) >= "\xE1\x84\x80" &&
                   !(text.substr(at, 3) >= "\xE2\x80\x80" && text.substr(at, 3) < "\xE2\xBA\x80"));
    out += wide ? 12 : 6;
    at += n;
  }
  return out;
}

// As much of the head of `text` as goes in, whole characters, at least one.
std::size_t head_within(std::string_view text, Length size, Length width) {
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t next = std::min(at + bytes_of(text[at]), text.size());
    if (at > 0 && width_of(text.substr(0, next), size) > width) break;
    at = next;
  }
  return at;
}

std::string shortened(std::string_view text, Length size, Length width) {
  static constexpr std::string_view more = "…";
  return std::string(text.substr(0, head_within(text, size, width - width_of(more, size)))) +
         std::string(more);
}

} // namespace

std::string escaped(std::string_view text) {
  const std::string printable = units::escape_for_print(text);
  std::string out;
  for (std::size_t at = 0; at < printable.size(); ++at) {
    const char c = printable[at];
    if (std::string_view(printable).substr(at, 3) == not_in_xml[0])
      out += "\\ufffe", at += 2;
    else if (std::string_view(printable).substr(at, 3) == not_in_xml[1])
      out += "\\uffff", at += 2;
    else
      out += c == '&'    ? "&amp;"
             : c == '<'  ? "&lt;"
             : c == '>'  ? "&gt;"
             : c == '"'  ? "&quot;"
             : c == '\'' ? "&#39;"
                         : std::string(1, c);
  }
  return out;
}

Length width_of(std::string_view text, Length size) {
  return Length{tenths(units::escape_for_print(text)) * size.nm / 10};
}

std::vector<std::string> wrapped(std::string_view text, Length size, Length width, std::size_t most) {
  const std::string printable = units::escape_for_print(text);
  std::string_view left = printable;
  std::vector<std::string> out;
  while (!left.empty() && out.size() < most) {
    if (width_of(left, size) <= width) {
      out.emplace_back(left);
      break;
    }
    if (out.size() + 1 == most) {
      out.push_back(shortened(left, size, width));
      break;
    }
    const std::size_t head = head_within(left, size, width);
    const std::size_t space = left.substr(0, std::min(head + 1, left.size())).rfind(' ');
    const std::size_t end = space == std::string_view::npos || space == 0 ? head : space;
    out.emplace_back(left.substr(0, end));
    left.remove_prefix(end);
    while (!left.empty() && left.front() == ' ')
      left.remove_prefix(1);
  }
  return out;
}

Svg::Svg(Length width, Length height, std::string_view title, std::string_view description) {
  out_ = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
         "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" width=\"" +
         mm(width) + "mm\" height=\"" + mm(height) + "mm\" viewBox=\"0 0 " + mm(width) + " " + mm(height) +
         "\" font-family=\"'DejaVu Sans Mono', 'Liberation Mono', monospace\" fill=\"#000\">\n<title>" +
         escaped(title) + "</title>\n<desc>" + escaped(description) + "</desc>\n";
  rect({{}, {}, width, height}, Fill::white, Edge::none);
}

void Svg::rect(const Box& box, Fill fill, Edge edge) {
  static constexpr std::array fills{"none", "#fff", "#ddd", "#000"};
  out_ += "<rect" + attribute("x", box.x) + attribute("y", box.y) + attribute("width", box.width) +
          attribute("height", box.height) + " fill=\"" + fills.at(static_cast<std::size_t>(fill)) + "\"";
  if (edge != Edge::none) out_ += " stroke=\"#000\" stroke-width=\"0.3\"";
  if (edge == Edge::dashed) out_ += " stroke-dasharray=\"1.5 1\"";
  out_ += "/>\n";
}

void Svg::line(Point from, Point to, Length width) {
  out_ += "<line" + attribute("x1", from.x) + attribute("y1", from.y) + attribute("x2", to.x) +
          attribute("y2", to.y) + " stroke=\"#000\"" + attribute("stroke-width", width) + "/>\n";
}

void Svg::text(Point at, std::string_view text, Type type) {
  if (text.empty()) return;
  out_ += "<text" + attribute("x", at.x) + attribute("y", at.y) + attribute("font-size", type.size) +
          (type.bold ? " font-weight=\"bold\"" : "") + attribute("textLength", width_of(text, type.size)) +
          " lengthAdjust=\"spacingAndGlyphs\">" + escaped(text) + "</text>\n";
}

void Svg::text_centred(Point at, std::string_view text, Type type) {
  this->text({at.x - Length{width_of(text, type.size).nm / 2}, at.y}, text, type);
}

void Svg::begin(std::string_view name) {
  out_ += "<g aria-label=\"" + escaped(name) + "\">\n";
  ++open_;
}

void Svg::end() {
  if (open_ == 0) return;
  out_ += "</g>\n";
  --open_;
}

std::string Svg::done() && {
  while (open_ > 0)
    end();
  return std::move(out_ += "</svg>\n");
}

} // namespace nutward::draw
