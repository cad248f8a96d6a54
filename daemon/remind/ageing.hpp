// The alarm of plans that age by time (shop/planner): it sleeps until the first of them has aged, and tells
// the planner to look again; also when the clock of the machine is stepped.
#pragma once

#include "remind/alarm.hpp"
#include "shop/planner.hpp"

namespace nutward::remind {

class Ageing {
public:
  // The planner outlives it.
  explicit Ageing(shop::Planner& planner, Alarm::Clock wall = {})
      : planner_(planner), alarm_([this] { planner_.changed(); },
                                  [this](std::chrono::seconds) { planner_.changed(); }, std::move(wall)) {
    planner_.wake_by([this](std::optional<units::Instant> at) { alarm_.set(at); });
  }
  Ageing(const Ageing&) = delete;
  Ageing& operator=(const Ageing&) = delete;
  ~Ageing() { planner_.wake_by({}); } // before the alarm is gone

private:
  shop::Planner& planner_;
  Alarm alarm_;
};

} // namespace nutward::remind
