// Tables supplier, purchase and purchase_line.
#pragma once

#include "shop/store.hpp"
#include "store/images.hpp"

namespace nutward::store {

class Purchases : public shop::Purchases {
public:
  explicit Purchases(Connection& connection) : connection_(connection) {}
  std::vector<shop::Supplier> suppliers() const override;
  std::optional<shop::Supplier> supplier(std::int64_t id) const override;
  std::optional<shop::Purchase> find(std::int64_t id) const override;
  std::vector<shop::Purchase> open() const override;
  std::vector<shop::Purchase> closed(std::size_t most) const override;
  std::vector<shop::Awaited> lines(std::int64_t purchase) const override;
  std::optional<shop::PurchaseLine> line(std::int64_t id) const override;
  std::vector<shop::Delivered> delivered(std::int64_t supplier, std::size_t most) const override;
  std::optional<std::int64_t> last_supplier(std::int64_t wire) const override;

private:
  Connection& connection_;
};

std::int64_t put(Connection& connection, Images& images, const shop::Supplier& supplier);
std::int64_t put(Connection& connection, Images& images, const shop::Purchase& purchase);
std::int64_t put(Connection& connection, Images& images, const shop::PurchaseLine& line);

} // namespace nutward::store
