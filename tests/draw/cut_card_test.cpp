#include "draw/bin_labels.hpp"
#include "draw/cut_card.hpp"
#include "draw/judged.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

using namespace nutward::draw;
using namespace nutward::units::literals;

namespace {

Bar stick(int frets, Length each, Length kerf, Length whole) {
  Bar bar{"stick 1 of lot 2, 600.00 mm", {}, {"Then 90.00 mm go to the tin."}};
  Length at = 12_mm;
  bar.parts.push_back({PartKind::flat, 12_mm, "flat", "12.00 mm", false});
  for (int n = 1; n <= frets; ++n) {
    at += each;
    bar.parts.push_back(
        {PartKind::fret, each, std::to_string(n), std::to_string(at.nm / 1'000'000) + ".00 mm", n % 3 == 0});
    bar.parts.push_back({PartKind::cut, kerf, "", "", false});
    at += kerf;
  }
  if (whole > at) bar.parts.push_back({PartKind::kept, whole - at, "90.00 mm to the tin", "", false});
  return bar;
}

CutCard card_of(std::vector<Bar> bars) {
  return {{"Cut list for job 8",
           "What to cut for job 8.",
           {"Each cut loses 1.00 mm."},
           {"Nip toward the bin, and wear glasses."}},
          std::move(bars)};
}

std::size_t times(const std::string& text, const std::string& part) {
  std::size_t out = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size()))
    ++out;
  return out;
}

} // namespace

TEST_CASE("A stick of a few frets is drawn without a text over another") {
  const std::string svg = picture_of(card_of({stick(8, 52_mm, 1_mm, 600_mm)}));
  CHECK(judged(svg) == "");
  CHECK_THAT(svg, ContainsSubstring(">12.00 mm</text>"));
  CHECK_THAT(svg, ContainsSubstring(">64.00 mm</text>"));
  CHECK_THAT(svg, ContainsSubstring("(1 : 2)"));
}

TEST_CASE("What fits the sheet is drawn in its own length") {
  const Bar piece{"piece 3, 110.40 mm",
                  {{PartKind::fret, 52_mm, "1", "52.00 mm", false},
                   {PartKind::cut, 1_mm, "", "", false},
                   {PartKind::fret, 57_mm, "2", "", false}},
                  {}};
  const std::string svg = picture_of(card_of({piece}));
  CHECK(judged(svg) == "");
  CHECK_THAT(svg, ContainsSubstring("(true to scale)"));
  CHECK_THAT(svg, ContainsSubstring(" width=\"52\" "));
  CHECK_THAT(svg, ContainsSubstring(" width=\"57\" "));
}

TEST_CASE("Segments shorter than their texts climb like stairs and touch nothing") {
  for (const Length each : {1_mm, 3_mm, 9_mm, 20_mm})
    CHECK(judged(picture_of(card_of({stick(9, each, 1_mm, 600_mm)}))) == "");
}

TEST_CASE("A coil with a hundred frets goes on over rows and sheets, each with the caution") {
  const std::string svg =
      picture_of(card_of({stick(100, 52_mm, 1_mm, 6000_mm), stick(3, 52_mm, 1_mm, 600_mm)}));
  CHECK(judged(svg) == "");
  const std::size_t sheets = times(svg, "aria-label=\"sheet ");
  CHECK(sheets > 1);
  CHECK(times(svg, "Nip toward the bin") == sheets);
  for (int n = 1; n <= 100; ++n)
    CHECK(times(svg, ">" + std::to_string(12 + n * 52 + (n - 1)) + ".00 mm</text>") >= 1);
}

TEST_CASE("Text from people is shown as text, whatever it holds") {
  const std::string nasty =
      "<script>alert(1)</script> & \"q\" 'a' ]]> \x1b[2J \xe2\x80\xae \xff \xef\xbf\xbf \xe5\xbc\xa6";
  CutCard card = card_of({stick(2, 52_mm, 1_mm, 600_mm)});
  card.heading.title = card.heading.description = nasty;
  card.heading.lines = {nasty};
  card.bars[0].title = nasty;
  card.bars[0].then = {nasty + std::string(900, 'x')};
  card.bars[0].parts[1].label = nasty;
  const std::string svg = picture_of(card);
  CHECK(judged(svg) == "");
  CHECK(svg.find("<script") == std::string::npos);
  CHECK_THAT(svg, ContainsSubstring("&lt;script&gt;"));
}

TEST_CASE("Everything differs by more than its colour") {
  const auto of = [](PartKind kind, bool other) {
    return picture_of(card_of({{"a", {{kind, 100_mm, "", "", other}}, {}}}));
  };
  // The same length: whatever else is on the sheet, these two drawings differ, and not in fills alone.
  const auto without_fills = [](std::string svg) {
    for (auto at = svg.find(" fill=\""); at != std::string::npos; at = svg.find(" fill=\"", at))
      svg.erase(at, svg.find('"', at + 7) + 1 - at);
    return svg;
  };
  std::vector<std::string> all{of(PartKind::fret, false), of(PartKind::fret, true), of(PartKind::flat, false),
                               of(PartKind::scrap, false), of(PartKind::kept, false)};
  for (std::size_t i = 0; i < all.size(); ++i)
    for (std::size_t j = i + 1; j < all.size(); ++j)
      CHECK(without_fills(all[i]) != without_fills(all[j]));
}

TEST_CASE("Labels of bins go three in a row, and over sheets") {
  LabelSheet sheet{{"Labels", "For the bins.", {}, {}}, {}};
  for (int i = 0; i < 40; ++i)
    sheet.labels.push_back(
        {"a wire with quite a long name & <more>", "50.00 to 55.00 mm", "12 pieces", "drawer 2"});
  const std::string svg = picture_of(sheet);
  CHECK(judged(svg) == "");
  CHECK(times(svg, ">50.00 to 55.00 mm</text>") == 40);
  CHECK(times(svg, "aria-label=\"sheet ") > 1);
}

TEST_CASE("A text breaks at spaces, and ends in an ellipsis where it has no room") {
  CHECK(wrapped("one two three", 10_mm, 48_mm, 5) == std::vector<std::string>{"one two", "three"});
  CHECK(wrapped("onetwothree", 10_mm, 36_mm, 2) == std::vector<std::string>{"onetwo", "three"});
  CHECK(wrapped("one two three four", 10_mm, 48_mm, 2) == std::vector<std::string>{"one two", "three f…"});
  CHECK(wrapped("", 10_mm, 48_mm, 2).empty());
  CHECK(width_of("abc", 10_mm) == 18_mm);
}
