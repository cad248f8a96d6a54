// A job whose frets all stand, to be read with a straightedge.
#pragma once

#include "example_board.hpp"
#include "support/catch.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::test {

using Along = level::Line;

// Job 3 is of the worked example of pressing: 22 frets on a flat board, scale 25.4 in; every fret is seated
// and the neck was seen to be straight.
struct Levelled : ExampleBoard {
  Levelled() {
    seat_all();
    does("press-support",
         R"({"job": 3, "cradled": true, "head_clear": true, "nothing_bridges": true, "glue_set": true})");
    changed([](Job& j) { j.straight_seen = Instant{1}; });
  }
  template <class Change>
  void changed(Change change) {
    made.sqlite->write([&](Tx& tx) {
      Job j = *tx.jobs().find(3);
      change(j);
      tx.put(j);
    });
  }
  template <class Change>
  void fret(int slot, Change change) {
    made.sqlite->write([&](Tx& tx) {
      for (Fret f : tx.jobs().frets(3)) {
        if (f.slot != slot) continue;
        change(f);
        tx.put(f);
      }
    });
  }
  void read(int from, int to, bool rocks, Along line = Along::middle) {
    level::Reading r;
    r.line = line;
    r.span = {from, to};
    r.felt = rocks ? level::Felt::rocks : level::Felt::steady;
    take(r);
  }
  void looks_sunk(int slot) {
    level::Reading r;
    r.span = {slot, slot};
    r.felt = level::Felt::not_laid;
    r.looks_sunk = {slot};
    take(r);
  }
  void take(const level::Reading& is) {
    made.sqlite->write([&](Tx& tx) {
      Reading r;
      r.job = 3;
      r.is = is;
      for (const Fret& f : tx.jobs().frets(3))
        r.is.revision = std::max(r.is.revision, f.touched);
      r.taken = {clock.s++};
      tx.put(r);
    });
  }
  void rocks(int from, int to, Along line = Along::middle) { read(from, to, true, line); }
  void steady(int from, int to, Along line = Along::middle) { read(from, to, false, line); }
  // 7 high on the line beyond doubt: 5-7 and 7-9 are steady, as they would not be over a low 6 or 8.
  void seven_high(Along line) {
    for (const auto& [from, to] : {std::pair{4, 6}, {8, 10}, {5, 7}, {7, 9}})
      steady(from, to, line);
    for (const auto& [from, to] : {std::pair{6, 8}, {5, 8}, {6, 9}})
      rocks(from, to, line);
  }
  Answer level(const std::string& more = "") { return asks("level", R"({"job": 3)" + more + "}"); }
  // The advice of that step; the answer must have it.
  Value advice(const std::string& step, const std::string& more = "") {
    const Answer a = level(more);
    const Value& all = at(a.data, "advice");
    for (std::size_t i = 0; i < size(all); ++i) {
      if (as<std::string>(at(item(all, i), "step")) == step) return item(all, i);
    }
    FAIL("no advice to " << step << " in: " << a.text << " " << to_json(a.data));
    return {};
  }
  std::string told(const std::string& step) {
    const Value v = advice(step);
    return as<std::string>(at(v, "text")) + " | " + as<std::string>(at(v, "why"));
  }
};

inline double lbf(const Value& force) {
  return as<Force>(force).n / units::newtons_per_lbf;
}
inline std::vector<std::string> parts(const Value& line) {
  std::vector<std::string> out;
  const Value& all = at(line, "explanations");
  for (std::size_t i = 0; i < size(all); ++i) {
    std::string one;
    const Value& of = at(item(all, i), "parts");
    for (std::size_t p = 0; p < size(of); ++p)
      one += fmt::format("{}{} {}", p == 0 ? "" : " and ", as<std::int64_t>(at(item(of, p), "slot")),
                         as<std::string>(at(item(of, p), "way")));
    out.push_back(one);
  }
  return out;
}
inline bool has(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}
inline void known(Fret& f, level::Gap gap, level::Cause cause = level::Cause::not_asked) {
  f.gap = gap;
  f.cause = cause;
}

} // namespace nutward::test
