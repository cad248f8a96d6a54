#include "shop/stage_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::shop {

namespace {

// Each as patterns; `said` is the form in which an answer tells it.
struct Words {
  std::string_view stage, doing, to_do, said;
};
constexpr std::array<Words, 15> rows{{
    {"pull", "pulling", "pull", "pulling"},
    {"true", "truing|trueing", "true", "truing"},
    {"slots", "(cleaning|checking) [the] slots [of|on|for]|doing [the] slots [of|on|for]",
     "(clean|check) [the] slots [of|on|for]|do [the] slots [of|on|for]", "cleaning the slots"},
    {"bend", "bending", "bend", "bending"},
    {"cut", "cutting", "cut", "cutting"},
    {"dress", "dressing", "dress", "dressing"},
    {"nip", "nipping", "nip", "nipping"},
    {"seat", "seating|hammering", "seat|hammer", "seating"},
    {"press", "pressing", "press", "pressing"},
    {"file", "filing|bevelling|beveling", "file|bevel", "filing"},
    {"recheck", "rechecking", "recheck", "rechecking"},
    {"level", "levelling|leveling", "level", "levelling"},
    {"crown", "crowning", "crown", "crowning"},
    {"polish", "polishing", "polish", "polishing"},
    {"corners", "rounding [the] corners [of|on|for]|doing [the] corners [of|on|for]",
     "round [the] corners [of|on|for]|do [the] corners [of|on|for]", "rounding the corners"},
}};

} // namespace

std::vector<std::string_view> worked_stages() {
  std::vector<std::string_view> out;
  out.reserve(rows.size());
  for (const Words& r : rows)
    out.push_back(r.stage);
  return out;
}

std::string stage_pattern(SaidAs form, std::initializer_list<std::string_view> but) {
  std::string out;
  for (const Words& r : rows) {
    if (std::find(but.begin(), but.end(), r.stage) != but.end()) continue;
    out += fmt::format("{}({}) {{stage={}}}", out.empty() ? "(" : "|",
                       form == SaidAs::doing ? r.doing : r.to_do, r.stage);
  }
  return out + ")";
}

std::string_view doing(std::string_view stage) {
  const auto* at = std::find_if(rows.begin(), rows.end(), [&](const Words& r) { return r.stage == stage; });
  return at == rows.end() ? stage : at->said;
}

} // namespace nutward::shop
