// The alarm of plans that age by time (shop/planner): it sleeps until the first of them has aged, and tells
// the planner to look again; also when the clock of the machine is stepped.
#pragma once

#include "remind/alarm.hpp"
#include "shop/planner.hpp"

namespace nutward::remind {

class Ageing {
public:
  // The planner outlives it. `planned`: called after each of its sweeps, on its thread, for whoever goes by
  // plans; not any more once this is gone.
  explicit Ageing(shop::Planner& planner, Alarm::Clock wall = {}, std::function<void()> planned = {})
      : planner_(planner), alarm_([this] { planner_.changed(); },
                                  [this](std::chrono::seconds) { planner_.changed(); }, std::move(wall)) {
    planner_.wake_by([this, planned = std::move(planned)](std::optional<units::Instant> at) {
      alarm_.set(at);
      if (planned) planned();
    });
  }
  Ageing(const Ageing&) = delete;
  Ageing& operator=(const Ageing&) = delete;
  ~Ageing() { planner_.wake_by({}); } // before the alarm is gone

private:
  shop::Planner& planner_;
  Alarm alarm_;
};

} // namespace nutward::remind
