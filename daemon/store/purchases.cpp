#include "store/purchases.hpp"

#include "store/put.hpp"

namespace nutward::store {

using shop::Purchase;
using shop::PurchaseLine;
using shop::Supplier;

namespace {

#define SUPPLIER_COLUMNS                                                                                     \
  "id, name, pack_sticks, pack_nm, pack_mg, minimum_sticks, minimum_nm, minimum_mg, lead_days, note FROM "   \
  "supplier "
#define PURCHASE_COLUMNS                                                                                     \
  "id, supplier, state, ordered_at, promised, promised_first, closed_at, note FROM purchase "
#define LINE_COLUMNS "id, purchase, wire, form, count, each_nm, price_minor, mass_mg"

Supplier read_supplier(const Query& q) {
  Supplier s;
  q.into(s.id, s.name, s.pack.sticks, s.pack.length, s.pack.mass, s.minimum.sticks, s.minimum.length,
         s.minimum.mass, s.lead_days, s.note);
  return s;
}

Purchase read_purchase(const Query& q) {
  Purchase p;
  q.into(p.id, p.supplier, p.state, p.ordered, p.promised, p.promised_first, p.closed, p.note);
  return p;
}

std::vector<Purchase> read_purchases(Query& q) {
  std::vector<Purchase> out;
  while (q.next())
    out.push_back(read_purchase(q));
  return out;
}

} // namespace

std::vector<Supplier> Purchases::suppliers() const {
  std::vector<Supplier> out;
  Query q = connection_.query("SELECT " SUPPLIER_COLUMNS "WHERE withdrawn = 0 ORDER BY name, id");
  while (q.next())
    out.push_back(read_supplier(q));
  return out;
}

std::optional<Supplier> Purchases::supplier(std::int64_t id) const {
  Query q = connection_.query("SELECT " SUPPLIER_COLUMNS "WHERE id = ?1");
  if (!q.with(id).next()) return std::nullopt;
  return read_supplier(q);
}

std::optional<Purchase> Purchases::find(std::int64_t id) const {
  Query q = connection_.query("SELECT " PURCHASE_COLUMNS "WHERE id = ?1 AND withdrawn = 0");
  if (!q.with(id).next()) return std::nullopt;
  return read_purchase(q);
}

std::vector<Purchase> Purchases::open() const {
  Query q = connection_.query("SELECT " PURCHASE_COLUMNS "WHERE state = 'open' AND withdrawn = 0 ORDER BY "
                              "promised IS NULL, promised, id");
  return read_purchases(q);
}

std::vector<Purchase> Purchases::closed(std::size_t most) const {
  Query q = connection_.query("SELECT " PURCHASE_COLUMNS "WHERE closed_at IS NOT NULL AND withdrawn = 0 "
                              "ORDER BY closed_at DESC, id DESC LIMIT ?1");
  q.with(static_cast<std::int64_t>(most));
  return read_purchases(q);
}

// A lot that was taken back is out of sight, and so has not come.
std::vector<shop::Awaited> Purchases::lines(std::int64_t purchase) const {
  std::vector<shop::Awaited> out;
  Query q = connection_.query(
      "SELECT " LINE_COLUMNS ", (SELECT COALESCE(SUM(count), 0) FROM lot WHERE purchase_line = l.id AND "
      "withdrawn = 0), (SELECT COALESCE(SUM(count * each_nm), 0) FROM lot WHERE purchase_line = l.id AND "
      "withdrawn = 0) FROM purchase_line l WHERE purchase = ?1 AND withdrawn = 0 ORDER BY id");
  q.with(purchase);
  while (q.next()) {
    shop::Awaited& a = out.emplace_back();
    PurchaseLine& l = a.line;
    q.into(l.id, l.purchase, l.wire, l.form, l.count, l.each, l.price, l.mass, a.came, a.came_length);
  }
  return out;
}

std::optional<PurchaseLine> Purchases::line(std::int64_t id) const {
  Query q = connection_.query("SELECT " LINE_COLUMNS " FROM purchase_line WHERE id = ?1 AND withdrawn = 0");
  if (!q.with(id).next()) return std::nullopt;
  PurchaseLine l;
  q.into(l.id, l.purchase, l.wire, l.form, l.count, l.each, l.price, l.mass);
  return l;
}

std::vector<shop::Delivered> Purchases::delivered(std::int64_t supplier, std::size_t most) const {
  std::vector<shop::Delivered> out;
  Query q = connection_.query(
      "SELECT p.id, p.supplier, p.ordered_at, (SELECT MAX(t.received_at) FROM purchase_line l JOIN lot t ON "
      "t.purchase_line = l.id AND t.withdrawn = 0 WHERE l.purchase = p.id AND l.withdrawn = 0) AS came FROM "
      "purchase p WHERE p.supplier = ?1 AND p.state = 'arrived' AND p.withdrawn = 0 AND came IS NOT NULL "
      "ORDER BY p.closed_at DESC, p.id DESC LIMIT ?2");
  q.with(supplier, static_cast<std::int64_t>(most));
  while (q.next()) {
    shop::Delivered& d = out.emplace_back();
    q.into(d.purchase, d.supplier, d.ordered, d.received);
  }
  return out;
}

std::optional<std::int64_t> Purchases::last_supplier(std::int64_t wire) const {
  Query q = connection_.query(
      "SELECT p.supplier FROM purchase_line l JOIN purchase p ON p.id = l.purchase AND p.withdrawn = 0 JOIN "
      "supplier s ON s.id = p.supplier AND s.withdrawn = 0 WHERE l.wire = ?1 AND l.withdrawn = 0 ORDER BY "
      "p.ordered_at DESC, p.id DESC LIMIT 1");
  if (!q.with(wire).next()) return std::nullopt;
  return q.get<std::int64_t>();
}

std::int64_t put(Connection& connection, Images& images, const Supplier& s) {
  Query q = connection.query(
      "INSERT INTO supplier (id, name, pack_sticks, pack_nm, pack_mg, minimum_sticks, minimum_nm, "
      "minimum_mg, "
      "lead_days, note) VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10) ON CONFLICT (id) DO "
      "UPDATE SET name = excluded.name, pack_sticks = excluded.pack_sticks, pack_nm = excluded.pack_nm, "
      "pack_mg = excluded.pack_mg, minimum_sticks = excluded.minimum_sticks, minimum_nm = "
      "excluded.minimum_nm, minimum_mg = excluded.minimum_mg, lead_days = excluded.lead_days, note = "
      "excluded.note");
  q.with(s.id, s.name, s.pack.sticks, s.pack.length, s.pack.mass, s.minimum.sticks, s.minimum.length,
         s.minimum.mass, s.lead_days, s.note);
  return put_row(connection, images, shop::Thing::supplier, s.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Purchase& p) {
  Query q = connection.query(
      "INSERT INTO purchase (id, supplier, state, ordered_at, promised, promised_first, closed_at, note) "
      "VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8) ON CONFLICT (id) DO UPDATE SET supplier = "
      "excluded.supplier, state = excluded.state, ordered_at = excluded.ordered_at, promised = "
      "excluded.promised, promised_first = excluded.promised_first, closed_at = excluded.closed_at, note = "
      "excluded.note");
  q.with(p.id, p.supplier, p.state, p.ordered, p.promised, p.promised_first, p.closed, p.note);
  return put_row(connection, images, shop::Thing::purchase, p.id, q);
}

std::int64_t put(Connection& connection, Images& images, const PurchaseLine& l) {
  Query q = connection.query(
      "INSERT INTO purchase_line (id, purchase, wire, form, count, each_nm, price_minor, mass_mg) VALUES "
      "(NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8) ON CONFLICT (id) DO UPDATE SET purchase = "
      "excluded.purchase, wire = excluded.wire, form = excluded.form, count = excluded.count, each_nm = "
      "excluded.each_nm, price_minor = excluded.price_minor, mass_mg = excluded.mass_mg");
  q.with(l.id, l.purchase, l.wire, l.form, l.count, l.each, l.price, l.mass);
  return put_row(connection, images, shop::Thing::purchase_line, l.id, q);
}

} // namespace nutward::store
