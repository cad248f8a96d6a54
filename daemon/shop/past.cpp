#include "shop/past.hpp"

#include "shop/codec.hpp"
#include "shop/people.hpp"
#include "shop/render.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::shop {

namespace {

// Instants are told to the minute: two that look alike are one.
std::string when(const Line& line, const hours::Zone& zone) {
  const std::string happened = zone.human(line.happened), recorded = zone.human(line.recorded);
  return happened == recorded ? happened : fmt::format("{} (told {})", happened, recorded);
}

std::string call_of(const Line& line) {
  std::string out;
  for (const Call& call : calls_from_json(line.call))
    out += (out.empty() ? "" : "; ") + render(call);
  return out;
}

// Quotation marks within quotation marks.
std::string inner(std::string text) {
  std::replace(text.begin(), text.end(), '"', '\'');
  return text;
}

} // namespace

Told told(const Past& past, const View& view, const hours::Zone& zone) {
  const Line& line = past.line;
  Told out;
  out.when = when(line, zone);
  out.who = name_of(line.actor, view);
  out.call = call_of(line);
  out.what = line.said.empty() ? fmt::format("called \"{}\": {}", inner(out.call), line.answer)
                               : fmt::format("said \"{}\": {}", inner(line.said), line.answer);
  if (!past.taken_back_in) return out;
  const auto by = view.journal().line(*past.taken_back_in);
  if (!by) return out;
  out.taken_back = by->recorded;
  out.taken_by = by->actor;
  out.taken_by_name = name_of(by->actor, view);
  out.what += fmt::format(" Taken back by {}, {}.", out.taken_by_name, zone.human(by->recorded));
  return out;
}

} // namespace nutward::shop
