#include "level/reading.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace nutward::level {

namespace {

std::string wholly(const Lines& lines) {
  const auto& all = lines.on(Line::middle);
  return fmt::format("frets from {} to {}", all.front().slot, all.back().slot);
}

bool has(const std::vector<int>& slots, int slot) {
  return std::find(slots.begin(), slots.end(), slot) != slots.end();
}

void must_stand(const Lines& lines, int slot, const char* field) {
  if (!lines.find(slot))
    throw BadReading(field, fmt::format("No fret stands in slot {}.", slot), wholly(lines));
}

void check_span(const Span& span, const Lines& lines) {
  if (span.from > span.to)
    throw BadReading("span", fmt::format("The span {} to {} runs the wrong way round.", span.from, span.to),
                     fmt::format("{} to {}", span.to, span.from));
  must_stand(lines, span.from, "span");
  must_stand(lines, span.to, "span");
  if (*lines.find(span.to) < *lines.find(span.from) + 2)
    throw BadReading(
        "span",
        fmt::format("A straightedge over {} to {} rests on two frets and cannot rock.", span.from, span.to),
        "a span of at least three frets");
}

void check_feeler(const Reading& r, const Lines& lines, const std::vector<int>& slots, const char* field) {
  for (const int slot : slots) {
    must_stand(lines, slot, field);
    if (slot < r.span.from || slot > r.span.to)
      throw BadReading(
          field,
          fmt::format("Fret {} does not lie under the edge over {} to {}.", slot, r.span.from, r.span.to),
          "a fret of the span");
    const bool rests = r.held ? slot == (*r.held == Held::nutward ? r.span.from : r.span.to)
                              : slot == r.span.from || slot == r.span.to;
    if (rests)
      throw BadReading(field, fmt::format("The edge rests on fret {}: no feeler goes under it.", slot),
                       "a fret that the edge is not held down on");
    if (has(r.gaps, slot) && has(r.snug, slot))
      throw BadReading(field, fmt::format("The feeler cannot both go under fret {} and not.", slot),
                       "one of the two");
  }
}

void check_laid(const Reading& r, const Lines& lines) {
  check_span(r.span, lines);
  if (r.pivot) {
    if (r.felt != Felt::rocks)
      throw BadReading("pivot", fmt::format("An edge that is steady does not pivot on fret {}.", *r.pivot),
                       "no pivot, or a reading that rocks");
    must_stand(lines, *r.pivot, "pivot");
    if (*r.pivot <= r.span.from || *r.pivot >= r.span.to)
      throw BadReading(
          "pivot",
          fmt::format("An edge over {} to {} cannot rock on fret {}.", r.span.from, r.span.to, *r.pivot),
          "a fret between the ends of the span");
  }
  const bool felt_under = !r.gaps.empty() || !r.snug.empty();
  if (felt_under && r.felt == Felt::rocks && !r.held)
    throw BadReading("held", "An edge that rocks shows a gap on the side that is not held down.",
                     "which end was held down: nutward or bodyward");
  check_feeler(r, lines, r.gaps, "gaps");
  check_feeler(r, lines, r.snug, "snug");
}

// The slot that a reading is about, if its span was not said.
std::optional<int> about(const Said& said) {
  if (said.about) return said.about;
  if (said.pivot) return said.pivot;
  for (const auto* slots : {&said.looks_sunk, &said.looks_high, &said.gaps, &said.snug}) {
    if (!slots->empty()) return slots->front();
  }
  return std::nullopt;
}

Span around(int slot, const Lines& lines) {
  must_stand(lines, slot, "span");
  const auto& all = lines.on(Line::middle);
  const std::size_t at = *lines.find(slot);
  if (at == 0 || at + 1 == all.size())
    throw BadReading(
        "span",
        fmt::format("Fret {} has no neighbour on its {} side.", slot, at == 0 ? "nutward" : "bodyward"),
        at == 0 ? fmt::format("a span, such as {} to {}", slot, all[2].slot)
                : fmt::format("a span, such as {} to {}", all[at - 2].slot, slot));
  return {all[at - 1].slot, all[at + 1].slot};
}

} // namespace

void check(const Reading& r, const Lines& lines) {
  if (r.epsilon < more_than || r.epsilon > most_epsilon)
    throw BadReading("epsilon", fmt::format("No hand feels {:.3f} mm and nothing less.", r.epsilon.mm()),
                     "0.001 to 0.3 mm");
  for (const int slot : r.looks_sunk) {
    must_stand(lines, slot, "looks_sunk");
    if (has(r.looks_high, slot))
      throw BadReading("looks_sunk", fmt::format("Fret {} cannot look both sunk and high.", slot),
                       "one of the two");
  }
  for (const int slot : r.looks_high)
    must_stand(lines, slot, "looks_high");
  if (r.felt != Felt::not_laid) return check_laid(r, lines);
  if (r.pivot || r.held || !r.gaps.empty() || !r.snug.empty())
    throw BadReading("felt", "A pivot or a gap is felt with a straightedge, and none was laid.",
                     "whether it rocks or is steady");
  if (r.looks_sunk.empty() && r.looks_high.empty())
    throw BadReading("felt", "Nothing was laid and nothing was seen.",
                     "rocks, steady, or a fret that looks sunk or high");
}

Meant meant(const Said& said, const Lines& lines) {
  Meant out;
  out.line_assumed = !said.line;
  Reading& r = out.reading;
  r = {said.line.value_or(Line::middle),
       {},
       said.felt,
       said.pivot,
       said.held,
       said.gaps,
       said.snug,
       said.looks_sunk,
       said.looks_high,
       said.quick ? quick_hand : hand,
       said.revision};
  if (said.span) {
    r.span = *said.span;
  } else if (said.felt != Felt::not_laid) {
    const auto slot = about(said);
    if (!slot)
      throw BadReading("span", "The reading does not say over which frets.",
                       "a span such as 6 to 8, or a fret");
    r.span = around(*slot, lines);
    out.span_assumed = true;
  } else if (const auto slot = about(said)) {
    r.span = {*slot, *slot};
  }
  check(r, lines);
  return out;
}

bool counts(const Reading& r, std::span<const Touched> touched) {
  return std::none_of(touched.begin(), touched.end(), [&](const Touched& t) {
    if (t.revision <= r.revision) return false;
    const bool under = r.felt != Felt::not_laid && t.slot >= r.span.from && t.slot <= r.span.to;
    return under || has(r.looks_sunk, t.slot) || has(r.looks_high, t.slot);
  });
}

} // namespace nutward::level
