// The unit of the lengths in answers: for the last one again, for one question, for a conversation.
#include "talk/understand.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::talk {

namespace {

struct UnitWord {
  std::string_view said, unit;
};
constexpr std::array words{
    UnitWord{"mm", "mm"},
    UnitWord{"millimetres", "mm"},
    UnitWord{"millimeters", "mm"},
    UnitWord{"metric", "mm"},
    UnitWord{"in", "in"},
    UnitWord{"inch", "in"},
    UnitWord{"inches", "in"},
    UnitWord{"decimal inches", "in"},
    UnitWord{"decimals of an inch", "in"},
    UnitWord{"thousandths", "in"},
    UnitWord{"64ths", "in/64"},
    UnitWord{"64 ths", "in/64"},
    UnitWord{"64th", "in/64"},
    UnitWord{"sixty fourths", "in/64"},
    UnitWord{"sixtyfourths", "in/64"},
    UnitWord{"fractions", "in/64"},
    UnitWord{"inch fractions", "in/64"},
    UnitWord{"fractional inches", "in/64"},
    UnitWord{"fractions of an inch", "in/64"},
};

// Lower case, single blanks, no marks.
std::string plain(std::string_view text) {
  std::string out;
  for (char c : fold(text)) {
    const bool mark =
        c == ' ' || c == '-' || c == ',' || c == '.' || c == '!' || c == '?' || c == '\t' || c == ':';
    if (!mark)
      out += c;
    else if (!out.empty() && out.back() != ' ')
      out += ' ';
  }
  while (out.ends_with(' '))
    out.pop_back();
  return out;
}

bool take_front(std::string_view& text, std::initializer_list<std::string_view> openings) {
  for (std::string_view o : openings) {
    if (!text.starts_with(o) || (text.size() > o.size() && text[o.size()] != ' ')) continue;
    text.remove_prefix(std::min(text.size(), o.size() + 1));
    return true;
  }
  return false;
}
bool take_back(std::string_view& text, std::initializer_list<std::string_view> closings) {
  for (std::string_view c : closings) {
    if (!text.ends_with(c) || text.size() <= c.size() || text[text.size() - c.size() - 1] != ' ') continue;
    text.remove_suffix(c.size() + 1);
    return true;
  }
  return false;
}

std::string_view spoken(std::string_view unit) {
  return unit == "in/64" ? "fractions of an inch to 1/64" : unit == "in" ? "inches" : "mm";
}

// The last answer, if it was a question's: shown again in the unit.
std::optional<Understood> again(std::string_view unit, const Surroundings& at) {
  if (at.state.done_last || !at.state.question) return std::nullopt;
  Understood out;
  out.what = Understood::What::ask;
  out.calls = {*at.state.question};
  out.unit = unit;
  return out;
}

Understood from_now_on(const std::string& unit, const Surroundings& at) {
  const std::string& shops = at.names.unit;
  const std::string kept = unit == shops ? "" : unit;
  const std::string told =
      kept.empty()
          ? fmt::format("lengths are in {} here again, as the shop has them", spoken(unit))
          : fmt::format("lengths are in {} here from now on, said and shown; '{} again' takes that back",
                        spoken(unit), shops == "in/64" ? "fractions" : spoken(shops));
  Understood out;
  if (auto shown = again(unit, at)) {
    out = *std::move(shown);
    out.notes.push_back(told);
  } else {
    out = tell("done", shop::sentence(told + "."));
    out.keeps = true;
  }
  out.talks_in = kept;
  return out;
}

} // namespace

std::string length_unit_called(std::string_view said) {
  const std::string text = plain(said);
  const auto at = std::find_if(words.begin(), words.end(), [&](const UnitWord& w) { return w.said == text; });
  return at == words.end() ? "" : std::string(at->unit);
}

std::optional<Understood> in_unit(const Reader& in, const Surroundings& at) {
  const std::string original = plain(in.s.original);
  std::string_view text = original;
  // "Please", "again", "from now on" and an order all mean the conversation; bare "in inches" the last
  // answer.
  bool lasting = false;
  take_front(text, {"and", "ok", "now", "no"});
  if (take_front(text, {"please"})) lasting = true;
  if (take_front(text, {"back to", "go back to", "use", "speak", "talk", "say it", "say lengths",
                        "show lengths", "lengths", "all lengths", "everything", "always", "all", "answer",
                        "show me", "tell me", "from now on"}))
    lasting = true;
  take_front(text, {"what is that", "what is it", "show that", "show it", "that", "again"});
  for (bool more = true; more;) {
    more = take_back(text, {"please", "from now on", "from here on", "again", "instead", "always", "for now",
                            "everywhere"});
    lasting = lasting || more;
  }
  const bool with_in = take_front(text, {"in"});
  if (text.empty()) return std::nullopt;
  const std::string unit = length_unit_called(text);
  if (unit.empty()) return std::nullopt;
  if (lasting) return from_now_on(unit, at);
  if (!with_in) return std::nullopt; // "inches" alone says nothing
  if (auto out = again(unit, at)) return out;
  return tell(
      "unclear",
      fmt::format(
          "Only the answer to a question can be shown again. '{0} from now on' is for this conversation, "
          "'set unit to {1}' for the whole shop.",
          unit == "in/64" ? "fractions" : spoken(unit), unit));
}

} // namespace nutward::talk
