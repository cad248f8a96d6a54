// Table outbox.
#pragma once

#include "shop/store.hpp"
#include "store/connection.hpp"

namespace nutward::store {

class Outbox : public shop::Outbox {
public:
  explicit Outbox(Connection& connection) : connection_(connection) {}
  std::vector<shop::OutboxEntry> due(units::Instant now, std::size_t most) const override;
  std::optional<units::Instant> next() const override;
  std::int64_t undelivered(std::int64_t receiver) const override;

  void enqueue(const shop::OutboxEntry& entry);
  // `not_before` nothing and not delivered: no further attempt until a person asks for one.
  void settle(std::int64_t entry, bool delivered, std::optional<units::Instant> not_before,
              bool receiver_failing, bool receiver_disabled);
  void lease(std::int64_t entry, units::Instant until);

private:
  Connection& connection_;
};

} // namespace nutward::store
