// Tables bar, actor, weekday, special_day, setting, receiver, and the answers remembered by idempotency key.
#pragma once

#include "shop/store.hpp"
#include "store/images.hpp"

namespace nutward::store {

class House : public shop::House {
public:
  explicit House(Connection& connection) : connection_(connection) {}
  std::vector<shop::Weekday> week() const override;
  std::vector<shop::SpecialDay> special_days() const override;
  std::optional<std::string> setting(std::string_view name) const override;
  std::vector<shop::Actor> actors() const override;
  std::optional<shop::Actor> actor(std::int64_t id) const override;
  std::optional<shop::Actor> actor_for_uid(std::int64_t uid) const override;
  std::vector<shop::Receiver> receivers() const override;
  std::vector<shop::Bar> bars() const override;
  std::optional<shop::Bar> bar(std::int64_t id) const override;

private:
  Connection& connection_;
};

std::int64_t put(Connection& connection, Images& images, const shop::Actor& actor);
std::int64_t put(Connection& connection, Images& images, const shop::Weekday& weekday);
std::int64_t put(Connection& connection, Images& images, const shop::SpecialDay& day);
std::int64_t put(Connection& connection, Images& images, const shop::Receiver& receiver);
std::int64_t put(Connection& connection, Images& images, const shop::Setting& setting);
std::int64_t put(Connection& connection, Images& images, const shop::Bar& bar);

std::optional<shop::Remembered> recall(Connection& connection, std::int64_t actor, std::string_view key,
                                       units::Instant since);
// Also forgets what is older than a week.
void remember(Connection& connection, std::int64_t actor, std::string_view key, units::Instant now,
              const shop::Remembered& what);

} // namespace nutward::store
