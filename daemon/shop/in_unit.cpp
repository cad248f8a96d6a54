#include "shop/in_unit.hpp"

namespace nutward::shop {

class ViewInUnit::HouseInUnit final : public House {
public:
  HouseInUnit(const House& of, std::string unit) : of_(of), unit_(std::move(unit)) {}
  std::vector<Weekday> week() const override { return of_.week(); }
  std::vector<SpecialDay> special_days() const override { return of_.special_days(); }
  std::optional<std::string> setting(std::string_view name) const override {
    return name == "unit" ? std::optional{unit_} : of_.setting(name);
  }
  std::vector<Actor> actors() const override { return of_.actors(); }
  std::optional<Actor> actor(std::int64_t id) const override { return of_.actor(id); }
  std::optional<Actor> actor_for_uid(std::int64_t uid) const override { return of_.actor_for_uid(uid); }
  std::vector<Receiver> receivers() const override { return of_.receivers(); }
  std::vector<Bar> bars() const override { return of_.bars(); }
  std::optional<Bar> bar(std::int64_t id) const override { return of_.bar(id); }

private:
  const House& of_;
  std::string unit_;
};

ViewInUnit::ViewInUnit(const View& of, std::string unit)
    : of_(of), house_(std::make_unique<HouseInUnit>(of.house(), std::move(unit))) {}

ViewInUnit::~ViewInUnit() = default;

const House& ViewInUnit::house() const {
  return *house_;
}

} // namespace nutward::shop
