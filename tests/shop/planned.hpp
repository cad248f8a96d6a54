// The shop with its planner told of every change, as main puts them together.
#pragma once

#include "bench.hpp"
#include "shop/cut_planning.hpp"
#include "shop/planner.hpp"

namespace nutward::test {

struct Planned : Shop {
  Planned() : planner(std::make_unique<Planner>(*made.sqlite, clock, std::vector{cut_plans()})) {
    made.sqlite->on_change([this](std::int64_t) { planner->changed(); });
    planner->wait_until_done();
  }
  ~Planned() {
    executor.reset();
    made.sqlite->on_change({});
  }
  std::unique_ptr<Planner> planner;
};

} // namespace nutward::test
