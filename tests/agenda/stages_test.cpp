#include "agenda/stages.hpp"

#include "support/catch.hpp"

#include <set>
#include <string>

using namespace nutward::agenda;
namespace ch = std::chrono;

namespace {

std::string words(const std::vector<Stage>& stages) {
  std::string out;
  for (const auto& s : stages)
    out += (out.empty() ? "" : " ") + std::string(row(s.kind).word);
  return out;
}

ch::seconds work(const std::vector<Stage>& stages, StageKind kind) {
  for (const auto& s : stages)
    if (s.kind == kind) return s.work;
  return ch::seconds{-1};
}

} // namespace

TEST_CASE("rounded ends are dressed before seating, filed ends after pressing") {
  CHECK(words(stages_of({})) ==
        "pull true slots bend cut dress seat press check wait recheck level crown polish done");
  CHECK(words(stages_of({.ends = EndStyle::filed})) ==
        "pull true slots bend cut seat press file check wait recheck level crown polish corners done");
}

TEST_CASE("only a bound board is nipped, only glue cures, and a new board has nothing to pull") {
  CHECK(words(stages_of({.old_frets = false, .bound = true, .levelled = false, .cure_h = 12})) ==
        "true slots bend cut dress nip seat press cure check wait recheck done");
  CHECK(words(stages_of({.pressed = false})) ==
        "pull true slots bend cut dress seat check level crown polish done");
}

// DESIGN 4.8, common practice from memory.
TEST_CASE("22 frets take the usual minutes") {
  const auto rounded = stages_of({.bound = true});
  const auto filed = stages_of({.ends = EndStyle::filed});
  const std::pair<StageKind, int> usual[] = {
      {StageKind::pull, 45},  {StageKind::true_board, 75}, {StageKind::slots, 20}, {StageKind::bend, 10},
      {StageKind::cut, 20},   {StageKind::dress, 45},      {StageKind::nip, 30},   {StageKind::seat, 30},
      {StageKind::press, 60}, {StageKind::recheck, 15},    {StageKind::level, 25}, {StageKind::crown, 45},
      {StageKind::polish, 40}};
  for (const auto& [kind, minutes] : usual)
    CHECK(work(rounded, kind) == ch::minutes{minutes});
  CHECK(work(filed, StageKind::file) == ch::minutes{60});
}

TEST_CASE("minutes go with the number of frets, up to a whole minute and never under five, but truing is the "
          "board's") {
  const auto few = stages_of({.frets = 1});
  CHECK(work(few, StageKind::press) == ch::minutes{5});
  CHECK(work(few, StageKind::true_board) == ch::minutes{75});
  const auto bass = stages_of({.frets = 20});
  CHECK(work(bass, StageKind::press) == ch::minutes{55}); // 54.5
  CHECK(work(bass, StageKind::check) == ch::minutes{0});
  CHECK_THROWS_AS(stages_of({.frets = 0}), BadAgenda);
  CHECK_THROWS_AS(stages_of({.frets = 201}), BadAgenda);
  CHECK_THROWS_AS(stages_of({.cure_h = -1}), BadAgenda);
  CHECK_THROWS_AS(stages_of({}, 0), BadAgenda);
}

TEST_CASE("every kind has one row, in its place, with a word that leads back to it") {
  std::set<std::string_view> seen;
  for (std::size_t i = 0; i < stage_table().size(); ++i) {
    const auto& r = stage_table()[i];
    CHECK(r.kind == static_cast<StageKind>(i));
    CHECK(stage_named(r.word) == r.kind);
    CHECK(seen.insert(r.word).second);
  }
  CHECK(stage_table().back().kind == StageKind::done);
  CHECK(stage_named("sand") == std::nullopt);
  CHECK(stage_named("") == std::nullopt);
  CHECK(row(StageKind::press).machine == Machine::press);
  CHECK(row(StageKind::dress).machine == Machine::sander);
}
