// Table not_understood.
#pragma once

#include "shop/store.hpp"
#include "store/connection.hpp"

namespace nutward::store {

class Misses : public shop::Misses {
public:
  explicit Misses(Connection& connection) : connection_(connection) {}
  std::vector<shop::Missed> since(units::Instant from, std::size_t most) const override;
  std::int64_t count() const override;

  // As shop::Backroom says.
  void keep(const shop::Missed& missed, std::string_view alike, std::size_t most);
  std::int64_t forget();

private:
  Connection& connection_;
};

} // namespace nutward::store
