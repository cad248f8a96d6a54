// Answers, and the ways of not getting one. An Answer is a small document that talk, the client and the page
// only render; a Problem is thrown by whatever finds that a call cannot be taken as it is.
#pragma once

#include "shop/value.hpp"

#include <exception>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

// A row of one of the two lists by name, and its arguments by the parameters' names. Values may be raw (text,
// numbers) or typed until shop/bind has seen them.
struct Call {
  std::string row;
  std::vector<std::pair<std::string, Value>> args;

  const Value* find(std::string_view name) const;
};

// A thing as somebody saw it: the journal line that had touched it last (0: none yet).
struct Touched {
  Ref ref;
  std::int64_t line = 0;
};

// What a person may pick: a label to read, the call it stands for, and what must not have changed meanwhile.
struct Choice {
  std::string label;
  Call call;
  std::vector<Touched> expects;
};

struct Table {
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows; // each as long as columns
};

// One line of care for work that can hurt. The words stand in shop/hazards.cpp.
enum class Hazard { press, nipping, hammering, sanding, hot_ends, metal_dust, glue, iron };
std::string_view caution(Hazard hazard);

// A drawing of an answer: its title, and an SVG 1.1 document (draw/svg.hpp) that is made only where somebody
// wants it. Holds no View: it may be called after the answer's snapshot is gone, from any thread.
struct Picture {
  std::string title;
  std::function<std::string()> svg;
};

struct Answer {
  std::string kind;   // a question's name, or "done", "unclear", "refused"
  std::string text;   // the answer itself: one or two whole sentences
  std::string reason; // why, in one line; may be empty
  std::optional<Table> table;
  Value data; // the same in figures
  std::vector<Hazard> cautions;
  std::vector<Choice> choices;
  Call about; // what the sentence layer may take up next: job, slot, piece, wire by parameter name
  std::int64_t revision = 0;
  std::optional<Picture> picture{}; // not in its JSON
  std::string next{}; // of a list that goes on: the value of the question's `cursor` for what follows
};

// Why a call was not taken. The HTTP status follows from it (RFC 9457 in serve).
enum class Fault {
  value,       // 422: an argument is wrong, missing, or names something unknown
  ambiguous,   // 422, with choices; `unclear` in a sentence
  confirm,     // 409, with the one choice that says yes: hard to undo
  state,       // 409: the shop is not in the state for it
  stale,       // 409: something has changed since the choice was offered
  not_allowed, // 403
  no_room,     // 507: the disk is full; reading goes on
  busy,        // 503
  broken,      // 500
};

// A sentence begins with a capital letter, also where a job or a wire leads it.
inline std::string sentence(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

struct Problem : std::exception {
  Problem(Fault f, std::string w, std::string where_, std::string would_do_)
      : fault(f), text(sentence(std::move(w))), where(std::move(where_)), would_do(std::move(would_do_)) {}

  Fault fault;
  std::string text;     // what was wrong: a whole sentence
  std::string where;    // the parameter (or "/"), possibly empty
  std::string would_do; // what would do: a whole sentence, possibly empty
  std::vector<Choice> choices;

  const char* what() const noexcept override { return text.c_str(); }
};

} // namespace nutward::shop
