// The two lists. A Row is a question or a command as data: what it takes, how it may be said, who may. The
// sentence layer, the HTTP routes, help and completion all derive from the lists of shop/lists.hpp.
#pragma once

#include "hours/calendar.hpp"
#include "hours/zone.hpp"
#include "shop/answer.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace nutward::shop {

class View;
class Tx;
class Args;

enum class Role { look, bench, lead };

// What a parameter holds. Its JSON field is the name with the unit behind it: see `field_for`.
enum class Kind {
  words,  // free text, at most 500 bytes of UTF-8
  name,   // a name for a new thing: 1 to 60 characters, no control characters, not a bare number
  one_of, // one of `options`
  yes,    // true or false; in a sentence its presence says true
  count,  // a whole number within bounds
  number, // a finite double within bounds
  length,
  mass,
  load,
  money,
  at,       // an instant
  day,      // a calendar day in the shop's zone
  spans,    // opening hours of a day: "9:00-12:30, 13:30-18:00", kept as text, checked by hours
  weekdays, // "mon-fri", "sat": a list of 0 (Monday) to 6
  slot,     // 0 to 48
  url,
  wire,
  job,
  piece,
  person,
  machine,
  receiver, // things of the shop; see shop/bind for how they may be meant
};

// Both ends included; in the unit of the JSON field (mm, g, n, minor units, or the number itself).
struct Bounds {
  double least = 0, most = 0;
};

struct Param {
  std::string_view name;
  Kind kind{};
  bool required = false;
  bool many = false; // a list; in JSON an array
  std::string_view what;
  Bounds bounds{};                         // most <= least: none of its own
  std::vector<std::string_view> options{}; // of one_of; spelled as they are stored
  // A command takes it from the conversation, if that has it, without being told to: what is reported at the
  // bench in one breath ("6 to 8 rocks") is about the job that was last spoken of. The answer names it. One
  // that is not required is carried within a sentence alone: "5 to 7 steady, 6 to 8 rocks on the bass" is
  // about the bass, since no other is said.
  bool carried = false;
};

// "length" of a length is "length_mm"; load "_n", mass "_g", money "_minor", at "_at" ("at" stays "at"), day
// "_on".
std::string field_for(const Param& param);

// How often a field of an answer's data is there. Whatever is not `at_times` stands in every answer.
enum class Often {
  always,
  or_null,  // null where it is not known or does not apply
  at_times, // left out where it does not apply
  many,     // a list, possibly empty
};

// One field of an answer's data, as `--describe` describes it and as the tests hold answers to it. Its JSON
// name is made as for a Param: see `field_for`.
struct Give {
  std::string_view name;
  Kind kind{}; // of a value; ids of things without a kind of their own are counts
  std::string_view what;
  Often often = Often::always;
  std::vector<Give> of{};                  // not empty: a record of these, or with `many` a list of records
  std::vector<std::string_view> options{}; // of one_of
};

std::string field_for(const Give& give);

struct Caller {
  std::int64_t actor = 0;
  Role role = Role::look;
  std::string name;
  std::string via; // "unix", "demo", "self"
};

// The only clock that a row sees. happened <= now: when what is reported took place.
struct Moment {
  units::Instant now, happened;
  const hours::Zone& zone;
  const hours::Calendar& calendar;
  Caller who;
};

struct Row {
  std::string_view name; // lower case, words joined by '-'
  std::string_view what; // one sentence, for help
  std::vector<Param> takes;
  // Ways to say it besides the canonical form, as patterns: words, {parameter}, [optional], (one|other),
  // <any|of these|in any order>.
  std::vector<std::string_view> phrases;
  std::vector<std::string_view> examples; // whole sentences, each of which parses to this row
  Role least = Role::look;
  std::vector<Give> gives{};      // what the answer's `data` holds, and nothing else
  std::vector<Give> gives_else{}; // not empty: what it holds instead where the row answers something else
  const Param* find(std::string_view param) const;
};

struct Question : Row {
  Answer (*ask)(const Args&, const Moment&, const View&) = nullptr;
  bool draws = false; // its answers may have a picture
};

// Something that happened to the shop and that receivers may want to hear of.
struct Event {
  std::string type; // "recheck.due", "press.due", "wire.low", "wire.well", …
  std::string text; // a whole sentence
  Value data;
};

struct Effect {
  Answer answer;
  std::vector<Event> events{};
};

// A body does no I/O, reads no clock, and may run twice. What it changes, it changes through Tx, which
// remembers how it was: no command says how to take itself back.
struct Command : Row {
  Effect (*apply)(const Args&, const Moment&, Tx&) = nullptr;
  // Says that the caller must say yes first, and why; empty for no.
  std::string (*wants_yes)(const Args&, const Moment&, const View&) = nullptr;
  // Nothing can take it back, and undo passes it by. It stands alone in its list, and wants a yes.
  bool for_good = false;
};

} // namespace nutward::shop
