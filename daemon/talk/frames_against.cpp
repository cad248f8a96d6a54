// What speaks against doing the order that a sentence was laid out as.
#include "talk/evidence.hpp"
#include "talk/frames_sure.hpp"

#include <algorithm>
#include <optional>

namespace nutward::talk {
namespace {

using Words = std::initializer_list<std::string_view>;

// A word that says something in an order.
bool has_weight(const Token& t) {
  return t.kind == Token::Kind::word && !is_filler(t) && !says_nothing(t, true);
}

// "Define bar oak, 90 mm by 80 mm, and drop the short one": a clause that by itself says another thing, which
// one order would hide.
bool says_another(const Found& command, const Reader& in, const Surroundings& at) {
  const shop::Row* own = command.frame->phrase.row;
  std::size_t from = 0;
  bool parted = false;
  for (std::size_t i = 0; i <= in.size(); ++i) {
    const bool cut = i == in.size() || in.any(i, {"and", "then", ";", ",", ".", "but", "so", "because"});
    if (!cut) continue;
    parted = parted || i < in.size();
    std::size_t words = 0;
    for (std::size_t k = from; k < i; ++k) {
      const bool passed = std::binary_search(command.laid.passed.begin(), command.laid.passed.end(), k);
      words += passed && has_weight(in.s.tokens[k]) ? 1 : 0;
    }
    if (parted && words >= 1) {
      const auto ranked = at.book.evidence().rank(in, from, i);
      const auto mine =
          std::find_if(ranked.begin(), ranked.end(), [&](const Likely& l) { return l.row == own; });
      if (!ranked.empty() && ranked.front().row != nullptr && ranked.front().row != own &&
          ranked.front().share > (words > 1 ? 0.65 : 0.85) &&
          (mine == ranked.end() || mine->share < (words > 1 ? 0.1 : 0.03)))
        return true;
    }
    from = i + 1;
  }
  return false;
}

// Words one after the other, at token i or anywhere.
bool follows(std::size_t i, Words words, const Reader& in) {
  return std::all_of(words.begin(), words.end(), [&](std::string_view word) { return in.is(i++, word); });
}

bool holds(Words words, const Reader& in) {
  for (std::size_t i = 0; i < in.size(); ++i)
    if (follows(i, words, in)) return true;
  return false;
}

bool anywhere(Words words, const Reader& in) {
  for (std::size_t i = 0; i < in.size(); ++i)
    if (in.any(i, words)) return true;
  return false;
}

bool among(std::string_view row, Words rows) {
  return std::find(rows.begin(), rows.end(), row) != rows.end();
}

// What is told of another time or place, or has yet to be done: "that time", "in the old shop", "to be
// levelled", "pressed for time", "get 12 sticks of medium".
bool is_not_now(std::string_view row, const Reader& in) {
  if (holds({"that", "time"}, in) || holds({"old", "shop"}, in) || holds({"some", "time"}, in) ||
      holds({"for", "time"}, in))
    return true;
  if (among(row, {"count", "receive", "handful"})) {
    std::size_t i = 0;
    while (i < in.size() && (is_filler(in.s.tokens[i]) || in.any(i, {"go", "we", "i", "should"})))
      ++i;
    if (in.any(i, {"get", "fetch", "buy", "bring"})) return true;
  }
  if (!row.ends_with("ed") &&
      !among(row, {"remade", "came-short", "use", "use-several", "cut-from", "cut-new"}))
    return false;
  for (std::size_t i = 0; i + 2 < in.size(); ++i)
    if (follows(i, {"to", "be"}, in) && (in.s.tokens[i + 2].word.ends_with("ed") ||
                                         in.any(i + 2, {"redone", "remade", "cut", "made", "done"})))
      return true;
  return false;
}

// "Close the drawer on monday" is not the shop, "my hours this friday" are not everybody's, who left the door
// open has not left, and what is tossed to me is not thrown away.
bool is_of_another(std::string_view row, const Reader& in) {
  const auto thing = [&](std::size_t i) {
    return in.any(i, {"drawer", "door", "window", "lid", "tap"}) && !in.is(i + 1, "bench");
  };
  for (std::size_t i = 0; i + 1 < in.size(); ++i) {
    if (among(row, {"close-day", "open-extra", "open-hours"}) &&
        ((in.is(i, "my") && in.any(i + 1, {"hours", "day", "own"})) ||
         (in.any(i, {"close", "closed", "shut", "open"}) && in.is(i + 1, "the") && thing(i + 2))))
      return true;
    if (row == "retire-person" && in.is(i, "left") && (thing(i + 2) || thing(i + 3))) return true;
    if (row.starts_with("scrap") && in.any(i, {"toss", "throw", "chuck"}) && in.is(i + 1, "me")) return true;
  }
  return false;
}

// "All that's held for job 2": nothing of it says that it is let go.
bool lets_go(const Reader& in) {
  return anywhere({"let",     "lets",     "go",          "goes",      "free",      "freed",      "frees",
                   "release", "releases", "released",    "drop",      "dropped",   "forget",     "undo",
                   "lift",    "lifted",   "cancel",      "loose",     "back",      "no",         "longer",
                   "clear",   "empty",    "nothing",     "return",    "reset",     "remove",     "unhold",
                   "don't",   "needn't",  "stop",        "off",       "grabs",     "anybody",    "anybody's",
                   "anyone",  "anyone's", "everybody's", "available", "unreserve", "unreserved", "un",
                   "unkeep",  "returned", "isn't",       "not"},
                  in);
}

struct Against {
  const Found& command;
  const Reader& in;
  std::string_view row = command.frame->phrase.row->name;

  const Said* said_for(std::string_view name) const {
    for (const auto& [param, said] : command.laid.match.args)
      if (command.frame->phrase.row->takes[static_cast<std::size_t>(param)].name == name) return &said;
    return nullptr;
  }
  bool takes(std::string_view name) const { return said_for(name) != nullptr; }
  // Passed over, that is: no part of what is taken.
  bool passed(Words words) const {
    const auto& passed = command.laid.passed;
    return std::any_of(passed.begin(), passed.end(), [&](std::size_t i) { return in.any(i, words); });
  }

  // "Depth of the slots: 2.4 mm" is no width.
  bool other_size() const {
    if (row != "slot-size") return false;
    for (std::size_t i = 0; i + 1 < in.size(); ++i)
      if (in.is(i, "down") && in.s.tokens[i + 1].is_number() && !takes("slot_depth")) return true;
    return (!takes("slot_depth") && anywhere({"deep", "depth"}, in)) ||
           (!takes("slot_width") && anywhere({"wide", "width"}, in));
  }

  // "Finished bending the uke and cut the frets": of two stages one would be dropped.
  bool says_two_stages() const {
    if (!among(row, {"finished", "start", "stop"})) return false;
    const auto& takes_of = command.frame->phrase.row->takes;
    std::optional<shop::Value> first;
    for (std::size_t i = 0; i < in.size(); ++i) {
      for (const Item& item : command.frame->items) {
        for (const Match& m : match_part(item.phrase, i, in.size(), Spelling::exact, in)) {
          for (const auto& [param, said] : m.args) {
            const auto* text = std::get_if<std::string>(&said.value);
            const bool all = text != nullptr && *text == "done"; // "job 4 slots done" is of one stage
            if (takes_of[static_cast<std::size_t>(param)].name != "stage" || said.loose > 0 || all) continue;
            if (first && !(*first == said.value)) return true;
            first = said.value;
          }
        }
      }
    }
    return false;
  }

  // "Stick 7" is none of the tin's pieces.
  bool is_of_a_stick() const {
    if (!row.starts_with("scrap") && row != "correct" && row != "use") return false;
    for (std::size_t i = 0; i + 1 < in.size(); ++i)
      if (in.any(i, {"stick", "sticks", "coil", "coils"}) && in.s.tokens[i + 1].is_number()) return true;
    return false;
  }

  // "66.2: too short" is what it measures, not what it lacks.
  bool lacks_too_much() const {
    const Said* by = row == "came-short" ? said_for("short_by") : nullptr;
    const auto* length = by == nullptr ? nullptr : std::get_if<units::Length>(&by->value);
    return length != nullptr && length->mm() > 30;
  }

  // "The 52 of medium" is one.
  bool is_one() const {
    if (row != "scrap-several") return false;
    const auto& args = command.laid.match.args;
    const bool list = std::any_of(args.begin(), args.end(), [&](const auto& a) {
      const shop::Param& p = command.frame->phrase.row->takes[static_cast<std::size_t>(a.first)];
      return p.many || p.name == "count";
    });
    return !list && !anywhere({"pieces",  "frets", "all",      "both",     "every",  "everything", "bits",
                               "several", "those", "these",    "offcuts",  "ends",   "ones",       "lot",
                               "whole",   "any",   "whatever", "anything", "shorts", "leftovers"},
                              in);
  }

  // "Keep the short bar", "no longer out of order".
  bool is_kept() const {
    for (std::size_t i = 0; i < in.size(); ++i) {
      if ((row.starts_with("drop-") || row.starts_with("retire-")) && in.any(i, {"keep", "keeping"}) &&
          in.any(i + 1, {"the", "it", "that", "this"}))
        return true;
      if (row == "machine-down" && follows(i, {"no", "longer"}, in) &&
          in.any(i + 2, {"down", "broken", "out", "off", "away", "in"}))
        return true;
    }
    return false;
  }

  // A word of the opposite order: "free up what is set aside for job 8" sets nothing aside.
  bool says_opposite() const {
    if (row == "set-aside" || row == "hold")
      return passed({"free", "loose", "release", "unhold", "clear", "empty"});
    if (row == "let-all-go") return !lets_go(in);
    if (row == "map-uid") return passed({"cut", "unlink", "unmap", "remove", "off", "longer"});
    if (row.starts_with("define-") || row.starts_with("new-") || row == "add-receiver")
      return passed({"drop", "remove", "delete", "forget", "retire"});
    // "Tomo's back tomorrow" ends what "Tomo is ill" began.
    if (row == "day-off") return anywhere({"back", "well", "better", "recovered"}, in);
    if (row == "own-hours") return !takes("hours") && anywhere({"no", "off", "away", "out"}, in);
    // A day's two parts where one is taken.
    return row == "close-day" && anywhere({"morning"}, in) && anywhere({"afternoon", "evening"}, in);
  }
};

// "Scrap piece 3 and the kettle is on": a clause of its own of which nothing is taken, nor a word of which
// the order is known by.
bool has_idle_clause(const Found& command, const Reader& in) {
  const Evidence* heard = command.frame->evidence;
  const auto speaks = [&](std::size_t k) {
    return heard == nullptr || heard->speaks_for(in.s.tokens[k].word, *command.frame->phrase.row);
  };
  std::size_t from = 0;
  bool parted = false;
  for (std::size_t i = 0; i <= in.size(); ++i) {
    if (i < in.size() && !is_joint(i, in)) continue;
    parted = parted || i < in.size();
    bool taken = false, says = false;
    for (std::size_t k = from; k < i; ++k) {
      taken = taken || std::binary_search(command.laid.bound.begin(), command.laid.bound.end(), k) ||
              (has_weight(in.s.tokens[k]) && speaks(k));
      says = says || has_weight(in.s.tokens[k]);
    }
    const bool own_subject = from > 0 && in.any(from, {"the", "a", "an", "my", "our"});
    if (parted && own_subject && !taken && says) return true;
    from = i + 1;
  }
  return false;
}

} // namespace

bool hides_another(const Found& command, const Reader& in, const Surroundings& at) {
  const Against against{command, in};
  return against.says_opposite() || against.other_size() || against.lacks_too_much() || against.is_one() ||
         against.is_kept() || against.says_two_stages() || against.is_of_a_stick() ||
         is_not_now(against.row, in) || is_of_another(against.row, in) || has_idle_clause(command, in) ||
         says_another(command, in, at);
}

} // namespace nutward::talk
