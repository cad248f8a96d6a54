// A job on the straightedge: its frets as the bench's code wants them, which readings still count, what they
// come to, and what is to be done.
#pragma once

#include "level/advice.hpp"
#include "shop/bench.hpp"
#include "shop/level_press.hpp"
#include "shop/level_settings.hpp"

#include <array>
#include <optional>
#include <vector>

namespace nutward::shop {

// The frets that stand in the board. Until one of them is reported seated all are taken to be (`foreseen`);
// from then on those that are not are not there.
struct FretsThatStand {
  std::vector<int> slots; // rising
  bool foreseen = false;
};
FretsThatStand frets_that_stand(const Job& job, const View& view);
// Where a straightedge lies over them. Throws Problem{state} where fewer than three stand.
level::Lines lines_of(const Job& job, const View& view);

struct Levelling {
  level::Lines lines;
  bool foreseen = false;
  LevelSettings settings;
  std::vector<Reading> kept;            // that count, in the order taken
  std::vector<level::Reading> readings; // the same as the bench's code wants them
  std::vector<Reading> stale;           // that count no more: a fret that they cover was touched since
  // That count no more: the same span was laid again, twice alike and unlike this. So what was felt wrongly
  // is put right by taking it again.
  std::vector<Reading> overruled;
  level::Facts facts;
  level::Diagnosis diagnosis;
  std::vector<level::Advice> advice;                  // never empty
  std::optional<level::Next> next;                    // the reading to take now
  std::array<level::LevelCall, 3> calls;              // by line
  std::array<std::vector<level::Span>, 3> to_read_on; // by line, in order
  std::vector<int> sprang; // slots whose frets sprang back and were not touched since

  const level::LevelCall& call(level::Line line) const { return calls.at(static_cast<std::size_t>(line)); }
  const std::vector<level::Span>& to_read(level::Line line) const {
    return to_read_on.at(static_cast<std::size_t>(line));
  }
};

// With `only`, advice and the next reading are of that line. Throws as lines_of().
Levelling levelling(const Job& job, const View& view, const PressAgainWith& press,
                    std::optional<level::Line> only = std::nullopt);

} // namespace nutward::shop
