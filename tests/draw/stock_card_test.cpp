#include "draw/judged.hpp"
#include "draw/stock_card.hpp"
#include "support/catch.hpp"

using namespace nutward::draw;
using nutward::units::millimetre;

namespace {

StockCard card_of(std::size_t wires) {
  StockCard out;
  out.heading = {"Stock of wire", "What is expected to be there.", {"A line."}, {}};
  for (int t = 0; t < 6; ++t)
    out.ticks.push_back("week " + std::to_string(2 * t));
  for (std::size_t w = 0; w < wires; ++w) {
    StockWire wire;
    wire.title = "wire <" + std::to_string(w) + ">";
    wire.safety = 500 * millimetre;
    for (int day = 0; day <= 366; ++day)
      wire.path.push_back({day, (4000 - 50 * day) * millimetre});
    for (int day = 60; day <= 366; ++day)
      wire.ordered.push_back({day, (8000 - 50 * day) * millimetre});
    wire.marks = {
        {46, "order by then"}, {46, "on the same day"}, {60, "the order comes"}, {500, "beyond the picture"}};
    out.wires.push_back(wire);
  }
  return out;
}

} // namespace

TEST_CASE("projected stock stands wire by wire, with its marks and what they mean") {
  const std::string svg = picture_of(card_of(3));
  CHECK(judged(svg).empty());
  for (const char* text : {"wire &lt;0&gt;", "wire &lt;2&gt;", "1: order by then", "4: beyond the picture",
                           "week 10", ">5.00 m</text>", ">-0.20 m</text>"}) // 8000 − 60·50; 4000 − 84·50
  {
    CAPTURE(text);
    CHECK(svg.find(text) != std::string::npos);
  }
}

TEST_CASE("more wires than a sheet has room for go on below, and a wire of which nothing moves is drawn") {
  StockCard card = card_of(20);
  card.wires.push_back({"still", {{0, {}}, {100, {}}}, {}, {}, {}});
  const std::string svg = picture_of(card);
  CHECK(judged(svg).empty());
  CHECK(svg.find("wire &lt;19&gt;") != std::string::npos);
  CHECK(svg.find("still") != std::string::npos);
}
