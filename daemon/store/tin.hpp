// Table piece: the tin.
#pragma once

#include "shop/store.hpp"
#include "store/images.hpp"

namespace nutward::store {

class Tin : public shop::Tin {
public:
  explicit Tin(Connection& connection) : connection_(connection) {}
  std::optional<shop::Piece> find(std::int64_t id) const override;
  std::vector<pieces::PieceFacts> page(std::int64_t wire, const pieces::Walk& walk,
                                       const std::optional<pieces::Mark>& after, std::size_t at_most,
                                       std::optional<std::int64_t> job,
                                       std::optional<int> slot) const override;
  std::vector<shop::Piece> held_for(std::int64_t job) const override;
  std::vector<shop::Piece> near(std::optional<std::int64_t> wire, shop::Length length, shop::Length tolerance,
                                std::size_t most) const override;
  shop::TinSum sum(std::int64_t wire) const override;
  std::vector<shop::Piece> list(std::int64_t wire, std::optional<std::int64_t> after,
                                std::size_t most) const override;
  std::vector<shop::Bin> bins(std::int64_t wire, shop::Length step) const override;
  std::vector<shop::Piece> unmeasured(std::int64_t wire, std::size_t most) const override;
  std::vector<shop::IdlePiece> idle(std::int64_t wire, units::Instant before,
                                    std::size_t most) const override;

protected:
  // Measured single pieces held for the slot, or for the job as a whole; every page asks for them.
  virtual std::vector<pieces::PieceFacts> held(std::int64_t wire, std::int64_t job,
                                               std::optional<int> slot) const;

private:
  Connection& connection_;
};

// Writes everything but length, count and in_tin, which follow from movements: a new piece is not in the tin
// until one takes it there.
std::int64_t put(Connection& connection, Images& images, const shop::Piece& piece);

// Brings a piece's (or all of a lot's pieces') copy of the lot's crown height up to the lot.
void renew_crowns(Connection& connection, shop::Ref piece_or_lot);

// The free pieces of a walk, by index alone; see Tin::page.
std::vector<pieces::PieceFacts> walk_free(Connection& connection, std::int64_t wire, const pieces::Walk& walk,
                                          const std::optional<pieces::Mark>& after, std::size_t at_most);

} // namespace nutward::store
