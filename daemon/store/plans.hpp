// Table plan.
#pragma once

#include "shop/store.hpp"
#include "store/connection.hpp"

namespace nutward::store {

class Plans : public shop::Plans {
public:
  explicit Plans(Connection& connection) : connection_(connection) {}
  std::optional<shop::StoredPlan> find(std::string_view kind, std::int64_t subject) const override;

  // As shop::Backroom says.
  void keep(const shop::StoredPlan& plan);

private:
  Connection& connection_;
};

} // namespace nutward::store
