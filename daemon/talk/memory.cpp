#include "talk/memory.hpp"

#include <algorithm>

namespace nutward::talk {

Memory::Talked* Memory::find(const Who& who, units::Instant now) {
  auto at = by_who_.find(who);
  if (at == by_who_.end()) return nullptr;
  if (const auto idle = (now - at->second->last).count(); idle > idle_s || idle < -idle_s) {
    talks_.erase(at->second);
    by_who_.erase(at);
    return nullptr;
  }
  talks_.splice(talks_.begin(), talks_, at->second);
  at->second->last = now;
  return &*at->second;
}

Memory::Talked& Memory::make(const Who& who, units::Instant now) {
  if (Talked* there = find(who, now)) return *there;
  talks_.push_front({who, {}, {}, now});
  by_who_[who] = talks_.begin();
  if (talks_.size() > most_conversations) {
    by_who_.erase(talks_.back().who);
    talks_.pop_back();
  }
  return talks_.front();
}

State Memory::recall(std::int64_t actor, const std::string& conversation, units::Instant now) {
  if (conversation.empty()) return {};
  const std::lock_guard hold(lock_);
  const Talked* there = find({actor, conversation}, now);
  return there == nullptr ? State{} : there->state;
}

void Memory::keep(std::int64_t actor, const std::string& conversation, State state, units::Instant now) {
  if (conversation.empty()) return;
  const std::lock_guard hold(lock_);
  make({actor, conversation}, now).state = std::move(state);
}

std::optional<KeptOrder> Memory::order(std::int64_t actor, const std::string& conversation,
                                       std::string_view key, units::Instant now) {
  const std::lock_guard hold(lock_);
  const Talked* there = find({actor, conversation}, now);
  if (there == nullptr) return std::nullopt;
  auto at = std::find_if(there->orders.begin(), there->orders.end(),
                         [&](const KeptOrder& o) { return o.key == key; });
  return at == there->orders.end() ? std::nullopt : std::optional{*at};
}

void Memory::keep_order(std::int64_t actor, const std::string& conversation, KeptOrder order,
                        units::Instant now) {
  const std::lock_guard hold(lock_);
  auto& orders = make({actor, conversation}, now).orders;
  std::erase_if(orders, [&](const KeptOrder& o) { return o.key == order.key; });
  orders.push_front(std::move(order));
  if (orders.size() > most_orders) orders.pop_back();
}

std::size_t Memory::size() const {
  const std::lock_guard hold(lock_);
  return talks_.size();
}

} // namespace nutward::talk
