// Table token.
#pragma once

#include "shop/store.hpp"
#include "store/connection.hpp"

namespace nutward::store {

class Tokens : public shop::Tokens {
public:
  explicit Tokens(Connection& connection) : connection_(connection) {}
  std::vector<shop::Token> good() const override;

  // As shop::Backroom says.
  std::int64_t grant(const shop::Token& token);
  void withdraw(std::int64_t token, units::Instant now, std::int64_t by);

private:
  Connection& connection_;
};

} // namespace nutward::store
