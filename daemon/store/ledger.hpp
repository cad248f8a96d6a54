// Table movement: the ledger, and what follows from it.
#pragma once

#include "shop/store.hpp"
#include "store/images.hpp"

#include <vector>

namespace nutward::store {

// The only writer of movements and of what follows from them: a piece's length_nm, count and in_tin, a wire's
// on_hand_nm.
class Ledger {
public:
  Ledger(Connection& connection, Images& images) : connection_(connection), images_(images) {}

  void move(const shop::Movement& movement);
  // Appends the opposite. Throws std::out_of_range where there is no such movement, Problem{state} where it
  // was taken back before.
  void reverse(std::int64_t id, std::string_view reason);

  std::vector<std::int64_t> take() { return std::exchange(made_, {}); }
  // Those that no line of the journal holds yet.
  std::vector<std::int64_t> take_for_line() { return std::exchange(for_line_, {}); }

  struct Mark {
    std::vector<std::int64_t> made, for_line;
  };
  Mark mark() const { return {made_, for_line_}; }
  void back_to(Mark mark) { made_ = std::move(mark.made), for_line_ = std::move(mark.for_line); }
  void forget() { back_to({}); }

private:
  void append(const shop::Movement& movement, std::optional<std::int64_t> reverses);
  struct Balance {
    std::int64_t length = 0, count = 0; // nm and pieces in the tin
  };
  // How it will be once the movement is made; throw Problem{state} where that cannot be.
  Balance piece_after(const shop::Movement& movement) const;
  std::int64_t stock_after(const shop::Movement& movement) const; // nm of the wire in sticks and coils

  Connection& connection_;
  Images& images_;
  std::vector<std::int64_t> made_, for_line_;
};

} // namespace nutward::store
