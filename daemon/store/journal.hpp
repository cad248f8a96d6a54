// Tables journal, journal_touch and journal_movement.
#pragma once

#include "shop/store.hpp"
#include "store/connection.hpp"

#include <vector>

namespace nutward::store {

class Journal : public shop::Journal {
public:
  explicit Journal(Connection& connection) : connection_(connection) {}
  std::vector<shop::Line> group(std::int64_t group) const override;
  std::optional<std::int64_t> last_undoable(std::int64_t actor) const override;
  std::int64_t touched_in(shop::Ref ref) const override;
  std::optional<shop::Line> line(std::int64_t id) const override;
  std::int64_t newest() const override;

  // `made`: the movements that belong to the line.
  shop::Line append(shop::Line line, const std::vector<std::int64_t>& made);

private:
  Connection& connection_;
};

// The bytes that the hash of a line is taken over, from what is stored.
std::string canonical_of(Connection& connection, std::string_view before, const shop::Line& line);

} // namespace nutward::store
