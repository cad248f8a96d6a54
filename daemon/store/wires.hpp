// Tables wire and lot.
#pragma once

#include "shop/store.hpp"
#include "store/images.hpp"

namespace nutward::store {

class Wires : public shop::Wires {
public:
  explicit Wires(Connection& connection) : connection_(connection) {}
  std::optional<shop::Wire> find(std::int64_t id) const override;
  std::vector<shop::Wire> all() const override;
  std::optional<shop::Lot> lot(std::int64_t id) const override;
  std::vector<shop::Lot> lots(std::int64_t wire) const override;
  shop::Length on_hand(std::int64_t wire) const override;
  std::vector<shop::Flow> flows(std::int64_t wire, units::Instant from, units::Instant before) const override;
  shop::Spent spent(std::int64_t wire, units::Instant from, units::Instant before) const override;
  std::vector<shop::FretOfTin> frets_of_tin(std::int64_t wire, units::Instant from,
                                            units::Instant before) const override;
  std::vector<shop::Drawn> drawn(std::int64_t wire, std::int32_t from_week) const override;
  std::optional<std::pair<units::Instant, units::Instant>> moved(std::int64_t wire) const override;

private:
  Connection& connection_;
};

std::int64_t put(Connection& connection, Images& images, const shop::Wire& wire);
std::int64_t put(Connection& connection, Images& images, const shop::Lot& lot);

} // namespace nutward::store
