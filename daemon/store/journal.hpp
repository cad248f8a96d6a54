// Tables journal, journal_touch, journal_about and journal_movement.
#pragma once

#include "shop/store.hpp"
#include "store/about.hpp"
#include "store/connection.hpp"

#include <set>
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

  std::vector<shop::Past> about(shop::Ref thing, std::optional<int> slot, std::optional<std::int64_t> actor,
                                shop::Instant from, shop::Bookmark before, std::size_t most) const override;
  std::vector<shop::Past> happened(std::optional<std::int64_t> actor, shop::Instant from,
                                   shop::Bookmark before, std::size_t most) const override;

  // `made`: the movements that belong to the line. `about`: what it is about besides what it touched and
  // moved.
  shop::Line append(shop::Line line, const std::vector<std::int64_t>& made, std::set<About> about);

private:
  Connection& connection_;
};

} // namespace nutward::store
