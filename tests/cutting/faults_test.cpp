// Bad input and limits: each is named, and the rest of the plan stands.
#include "cutting/cases.hpp"

#include <algorithm>

using namespace cases;
using cutting::Fault;
using cutting::Why;

namespace {

Problem one_job() {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(51_mm), slot(52_mm), slot(53_mm)};
  p.stock = {stick(610_mm, 2)};
  return p;
}

bool names(const cutting::Plan& plan, const Fault& fault) {
  return std::find(plan.faults.begin(), plan.faults.end(), fault) != plan.faults.end();
}

} // namespace

TEST_CASE("nothing at all is a plan: nothing is done, and no stock is named") {
  const auto plan = cutting::plan({}, {});
  CHECK(plan.uses.empty());
  CHECK(plan.faults == std::vector<Fault>{{Why::no_stock, 0, std::nullopt}});
  CHECK(plan.proved == cutting::Level::cuts);
}

TEST_CASE("a nip longer than a stick: the stick is named and left, the others serve") {
  Problem p = one_job();
  p.settings.nip_loss = 60_mm;
  p.stock = {stick(55_mm, 3), stick(610_mm, 1)};
  const auto plan = cutting::plan(p, {});
  CHECK(plan.faults == std::vector<Fault>{{Why::kerf_too_long, 0, From::stock}});
  CHECK(plan.unserved.empty());
  check_plan(p, plan);
}

TEST_CASE("flat ends that leave nothing of a stick are named alike") {
  Problem p = one_job();
  p.stock.push_back(stick(24_mm, 1, 2));
  CHECK(names(cutting::plan(p, {}), {Why::kerf_too_long, 1, From::stock}));
}

TEST_CASE("without sticks the tin serves what it can, and the others are named") {
  Problem p = one_job();
  p.stock.clear();
  p.pieces = {piece(51.5_mm, 0)};
  const auto plan = cutting::plan(p, {});
  CHECK(plan.uses.size() == 1);
  CHECK(plan.unserved == std::vector<std::size_t>{0, 2});
  CHECK(names(plan, {Why::no_stock, 0, std::nullopt}));
  CHECK(names(plan, {Why::too_long_slot, 2, std::nullopt}));
  check_plan(p, plan);
}

TEST_CASE("a slot longer than everything is named, and counts as unserved in plan and bound alike") {
  Problem p = one_job();
  p.slots.push_back(slot(700_mm));
  const auto plan = cutting::plan(p, {});
  CHECK(plan.faults == std::vector<Fault>{{Why::too_long_slot, 3, std::nullopt}});
  CHECK(plan.unserved == std::vector<std::size_t>{3});
  CHECK(plan.bound.unserved == std::vector<int>{1});
  CHECK(plan.proved == cutting::Level::cuts);
}

TEST_CASE("too little wire: the earliest due are served, the others named") {
  Problem p;
  p.least_useful = 43_mm;
  for (int i = 0; i < 6; ++i)
    p.slots.push_back(slot(50_mm, i % 2));
  p.stock = {stick(210_mm, 1)}; // four of 50.5
  const auto plan = cutting::plan(p, {});
  CHECK(plan.unserved.size() == 2);
  for (const std::size_t s : plan.unserved) {
    CHECK(p.slots[s].due == 1);
    CHECK(names(plan, {Why::wire_short, s, std::nullopt}));
  }
  check_plan(p, plan);
}

TEST_CASE("too little wire for many: nobody is served before those who are due earlier") {
  Problem p;
  p.least_useful = 43_mm;
  for (int i = 0; i < 60; ++i)
    p.slots.push_back(slot(50_mm, i / 10));
  p.stock = {stick(612_mm, 3)}; // twelve each
  const auto plan = cutting::plan(p, {});
  check_plan(p, plan);
  CHECK(plan.cost.unserved == std::vector<int>{0, 0, 0, 4, 10, 10});
  CHECK(plan.bound.unserved == std::vector<int>{0, 0, 0, 4, 0, 0});
}

TEST_CASE("a piece that somebody else holds is named and left alone") {
  Problem p = one_job();
  p.pieces = {piece(51.5_mm, 0)};
  p.pieces[0].held_elsewhere = true;
  const auto plan = cutting::plan(p, {});
  CHECK(plan.faults == std::vector<Fault>{{Why::held_elsewhere, 0, From::piece}});
  CHECK(plan.cost.sticks == 1);
}

TEST_CASE("what is held but does not work is named, and its slot planned anew") {
  Problem p = one_job();
  p.pieces = {piece(44_mm, 0)};
  p.held = {{{From::piece, 0}, {0}},      // too short
            {{From::piece, 7}, {1}},      // there is none
            {{From::stock, 0}, {1, 1}},   // twice the same
            {{From::stock, 0}, {}},       // nothing
            {{From::stock, 0}, {1, 99}}}; // there is no such slot
  const auto plan = cutting::plan(p, {});
  for (std::size_t i = 0; i < p.held.size(); ++i)
    CHECK(names(plan, {Why::held_no_more, i, std::nullopt}));
  CHECK(plan.faults.size() == p.held.size());
  CHECK(plan.unserved.empty());
}

TEST_CASE("unsound slots, pieces and sticks are named and not planned") {
  Problem p = one_job();
  p.slots[0].need.least = 60_mm; // over its target
  p.pieces = {piece(0_mm, 0), piece(51.5_mm, 3), piece(51.5_mm, 0, 3)};
  p.stock.push_back(stick(-1_mm));
  p.stock.push_back(stick(610_mm, -1));
  const auto plan = cutting::plan(p, {});
  CHECK(plan.faults == std::vector<Fault>{{Why::bad_slot, 0, std::nullopt},
                                          {Why::bad_source, 0, From::piece},
                                          {Why::bad_source, 1, From::piece},
                                          {Why::bad_source, 2, From::piece},
                                          {Why::bad_source, 1, From::stock},
                                          {Why::bad_source, 2, From::stock}});
  CHECK(plan.unserved == std::vector<std::size_t>{0});
}

TEST_CASE("frets that take a stick to its very end go in, a nanometre more does not") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(50_mm), slot(50_mm), slot(50_mm)}; // 50.5 each, two nips between them
  p.stock = {stick(152.5_mm, 1)};
  const auto plan = cutting::plan(p, {});
  CHECK(plan.unserved.empty());
  CHECK(plan.cost.cuts == 2);
  CHECK(plan.cost.scrap == 0_mm);
  CHECK(plan.cost.taken == 152.5_mm);
  p.stock[0].length -= Length{1};
  CHECK(cutting::plan(p, {}).unserved.size() == 1);
}

TEST_CASE("a rest exactly as long as the least useful is kept, a nanometre less is scrap") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(50_mm)};
  p.stock = {stick(94_mm, 1)}; // 50.5 + nip 0.5 + 43
  auto plan = cutting::plan(p, {});
  CHECK(plan.uses[0].remainder == 43_mm);
  CHECK(plan.cost.taken == 51_mm);
  CHECK(plan.cost.scrap == 0_mm);
  p.stock[0].length -= Length{1};
  plan = cutting::plan(p, {});
  CHECK(plan.uses[0].remainder == 0_mm);
  CHECK(plan.cost.taken == p.stock[0].length);
  CHECK(plan.cost.scrap == 43_mm - Length{1});
}

TEST_CASE("a borderline piece is never planned but named where it might save new wire") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(52_mm)};      // least 50.9
  p.pieces = {piece(51_mm, 0)}; // within 0.1
  p.stock = {stick(610_mm, 1)};
  auto plan = cutting::plan(p, {});
  CHECK(plan.cost.sticks == 1);
  REQUIRE(plan.borderline.size() == 1);
  CHECK(plan.borderline[0].piece == 0);
  p.pieces[0].facts.length += Length{1};
  plan = cutting::plan(p, {});
  CHECK(plan.cost.sticks == 0);
  CHECK(plan.borderline.empty());
}

TEST_CASE("the trim limit keeps a long piece for a long slot") {
  Problem p;
  p.least_useful = 43_mm;
  p.slots = {slot(50_mm)}; // target 49.5
  p.pieces = {piece(57.5_mm, 2)};
  p.stock = {stick(610_mm, 1)};
  CHECK(cutting::plan(p, {}).cost.sticks == 0); // loses 8
  p.pieces[0].facts.length += Length{1};
  CHECK(cutting::plan(p, {}).cost.sticks == 1);
}

TEST_CASE("steps that run out, and a stop that was asked for, still give a plan of everything") {
  Problem p;
  p.least_useful = 43_mm;
  std::mt19937 random(9);
  for (int i = 0; i < 200; ++i)
    p.slots.push_back(slot(Length{43'000'000 + static_cast<std::int64_t>(random() % 14'000'000)}, i / 20));
  for (int i = 0; i < 150; ++i)
    p.pieces.push_back(piece(Length{41'000'000 + static_cast<std::int64_t>(random() % 17'000'000)}, i % 3));
  p.stock = {stick(610_mm, 40, 2)};
  std::stop_source stop;
  stop.request_stop();
  for (const cutting::Budget& budget :
       {cutting::Budget{0, {}}, cutting::Budget{500, {}}, cutting::Budget{500'000, stop.get_token()}}) {
    const auto plan = cutting::plan(p, budget);
    check_plan(p, plan);
    CHECK(plan.unserved.empty());
    CHECK(plan.stopped);
  }
}

TEST_CASE("no slot goes without while a stick has room or a piece does, wherever the steps run out") {
  Problem p;
  p.least_useful = 43_mm;
  std::mt19937 random(11);
  for (int i = 0; i < 2200; ++i)
    p.slots.push_back(slot(Length{43'000'000 + static_cast<std::int64_t>(random() % 14'000'000)}, i / 22));
  for (int i = 0; i < 2000; ++i) {
    const std::int64_t span = i % 20 < 17 ? 17'000'000 : 160'000'000;
    p.pieces.push_back(piece(Length{41'000'000 + static_cast<std::int64_t>(random()) % span}, i % 3));
  }
  p.stock = {stick(610_mm, 40, 2)};
  for (const std::int64_t steps : {0, 1'000, 10'000, 30'000, 60'000}) {
    const auto plan = cutting::plan(p, {steps, {}});
    check_plan(p, plan);
    std::vector<char> used(p.pieces.size(), 0);
    for (const auto& use : plan.uses)
      if (use.source.from == From::piece) used[use.source.index] = 1;
    std::size_t would_do = 0;
    for (const auto& use : plan.uses) {
      if (use.source.from == From::piece) continue;
      Length free = 610_mm - 24_mm + p.settings.nip_loss; // 12 mm at each end are flat
      for (const auto& fret : use.frets)
        free -= fret.length + p.settings.nip_loss;
      for (const std::size_t s : plan.unserved)
        if (p.slots[s].need.cut + p.settings.nip_loss <= free) ++would_do;
    }
    for (const std::size_t s : plan.unserved)
      for (std::size_t i = 0; i < used.size(); ++i) {
        const auto v =
            pieces::judge(p.pieces[i].facts, {p.slots[s].need, {}, p.least_useful, {}}, p.settings);
        if (used[i] == 0 && v.outcome == pieces::Outcome::fits && v.trim <= p.settings.trim_limit) ++would_do;
      }
    INFO(steps << " steps, " << plan.unserved.size() << " without a fret, " << plan.cost.sticks << " sticks");
    CHECK(would_do == 0);
    CHECK((plan.unserved.empty() || plan.cost.sticks == 40));
  }
}

TEST_CASE("with nothing to cut the plan is empty, and proved") {
  Problem p;
  p.pieces = {piece(52_mm, 2)};
  p.stock = {stick(610_mm, 3, 2)};
  const auto plan = cutting::plan(p, {});
  check_plan(p, plan);
  CHECK(plan.uses.empty());
  CHECK(plan.proved == cutting::Level::cuts);
}

TEST_CASE("a coil is taken from before a stick is opened, and nothing of it is scrap") {
  Problem p = one_job();
  p.stock.push_back(stick(5000_mm, 1));
  p.stock.back().kind = cutting::StockKind::coil;
  const auto plan = cutting::plan(p, {});
  CHECK(plan.cost.sticks == 0);
  CHECK(plan.cost.taken == 51.5_mm + 52.5_mm + 53.5_mm + 1.5_mm);
  CHECK(plan.cost.scrap == 0_mm);
  check_plan(p, plan);
}
