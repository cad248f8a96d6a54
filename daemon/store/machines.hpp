// Tables machine, outage, booking, stage_rule, own_hours and own_day.
#pragma once

#include "shop/store.hpp"
#include "store/images.hpp"

namespace nutward::store {

class Machines : public shop::Machines {
public:
  explicit Machines(Connection& connection) : connection_(connection) {}
  std::vector<shop::Machine> all() const override;
  std::vector<shop::Outage> outages(units::Instant from) const override;
  std::vector<shop::Booking> bookings(units::Instant from, units::Instant before) const override;
  std::vector<shop::StageRule> rules() const override;
  std::vector<shop::OwnHours> own_hours() const override;
  std::vector<shop::OwnDay> own_days(units::Day from) const override;

private:
  Connection& connection_;
};

std::int64_t put(Connection& connection, Images& images, const shop::Machine& machine);
std::int64_t put(Connection& connection, Images& images, const shop::Outage& outage);
std::int64_t put(Connection& connection, Images& images, const shop::Booking& booking);
std::int64_t put(Connection& connection, Images& images, const shop::StageRule& rule);
std::int64_t put(Connection& connection, Images& images, const shop::OwnHours& own);
std::int64_t put(Connection& connection, Images& images, const shop::OwnDay& own);

} // namespace nutward::store
