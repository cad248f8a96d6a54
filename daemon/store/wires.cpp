#include "store/wires.hpp"

#include "store/put.hpp"
#include "store/tin.hpp"

namespace nutward::store {

using shop::Lot;
using shop::Wire;

namespace {

#define WIRE_COLUMNS                                                                                         \
  "id, name, material, crown_width_nm, crown_height_nm, tang_depth_nm, tang_thickness_nm, barb_width_nm, "   \
  "stick_nm, "                                                                                               \
  "reorder_at_nm, low_told_at, density_g_cm3, linear_g_m, linear_error FROM wire "
#define LOT_COLUMNS                                                                                          \
  "id, wire, form, count, each_nm, crown_height_nm, supplier, price_minor, received_at, purchase_line, "     \
  "gross_mg, tare_mg FROM lot "

Wire read_wire(const Query& q) {
  Wire w;
  wire::Profile& p = w.profile;
  q.into(w.id, w.name, w.material, p.crown_width, p.crown_height, p.tang_depth, p.tang_thickness,
         p.barb_width, w.stick, w.reorder_at, w.low_told_at, w.density, w.linear_g_m, w.linear_error);
  return w;
}

Lot read_lot(const Query& q) {
  Lot l;
  q.into(l.id, l.wire, l.form, l.count, l.each, l.crown_height, l.supplier, l.price, l.received,
         l.purchase_line, l.gross, l.tare);
  return l;
}

} // namespace

std::optional<Wire> Wires::find(std::int64_t id) const {
  Query q = connection_.query("SELECT " WIRE_COLUMNS "WHERE id = ?1 AND withdrawn = 0");
  if (!q.with(id).next()) return std::nullopt;
  return read_wire(q);
}

std::vector<Wire> Wires::all() const {
  std::vector<Wire> out;
  Query q = connection_.query("SELECT " WIRE_COLUMNS "WHERE withdrawn = 0 ORDER BY name, id");
  while (q.next())
    out.push_back(read_wire(q));
  return out;
}

std::optional<Lot> Wires::lot(std::int64_t id) const {
  Query q = connection_.query("SELECT " LOT_COLUMNS "WHERE id = ?1 AND withdrawn = 0");
  if (!q.with(id).next()) return std::nullopt;
  return read_lot(q);
}

std::vector<Lot> Wires::lots(std::int64_t wire) const {
  std::vector<Lot> out;
  Query q = connection_.query("SELECT " LOT_COLUMNS
                              "WHERE wire = ?1 AND withdrawn = 0 ORDER BY received_at DESC, id DESC");
  q.with(wire);
  while (q.next())
    out.push_back(read_lot(q));
  return out;
}

shop::Length Wires::on_hand(std::int64_t wire) const {
  Query q = connection_.query("SELECT on_hand_nm FROM wire WHERE id = ?1");
  return q.with(wire).next() ? q.get<shop::Length>() : shop::Length{};
}

std::vector<shop::Flow> Wires::flows(std::int64_t wire, units::Instant from, units::Instant before) const {
  std::vector<shop::Flow> out;
  Query q = connection_.query(
      "SELECT COALESCE(r.kind, m.kind), m.from_place, m.to_place, SUM(m.length_nm) FROM movement m "
      "JOIN journal_movement jm ON jm.movement = m.id JOIN journal j ON j.id = jm.line "
      "LEFT JOIN movement r ON r.id = m.reverses "
      "WHERE m.wire = ?1 AND j.happened_at >= ?2 AND j.happened_at < ?3 GROUP BY 1, 2, 3 ORDER BY 1, 2, 3");
  q.with(wire, from, before);
  while (q.next()) {
    shop::Flow& f = out.emplace_back();
    q.into(f.kind, f.from, f.to, f.length);
  }
  return out;
}

std::int64_t put(Connection& connection, Images& images, const Wire& w) {
  Query q = connection.query(
      "INSERT INTO wire (id, name, material, crown_width_nm, crown_height_nm, tang_depth_nm, "
      "tang_thickness_nm, "
      "barb_width_nm, stick_nm, reorder_at_nm, low_told_at, density_g_cm3, linear_g_m, linear_error) "
      "VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14) "
      "ON CONFLICT (id) DO UPDATE SET name = excluded.name, material = excluded.material, "
      "crown_width_nm = excluded.crown_width_nm, crown_height_nm = excluded.crown_height_nm, "
      "tang_depth_nm = excluded.tang_depth_nm, tang_thickness_nm = excluded.tang_thickness_nm, "
      "barb_width_nm = excluded.barb_width_nm, stick_nm = excluded.stick_nm, reorder_at_nm = "
      "excluded.reorder_at_nm, "
      "low_told_at = excluded.low_told_at, density_g_cm3 = excluded.density_g_cm3, "
      "linear_g_m = excluded.linear_g_m, linear_error = excluded.linear_error");
  const wire::Profile& p = w.profile;
  q.with(w.id, w.name, w.material, p.crown_width, p.crown_height, p.tang_depth, p.tang_thickness,
         p.barb_width, w.stick, w.reorder_at, w.low_told_at, w.density, w.linear_g_m, w.linear_error);
  return put_row(connection, images, shop::Thing::wire, w.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Lot& l) {
  Query q = connection.query(
      "INSERT INTO lot (id, wire, form, count, each_nm, crown_height_nm, supplier, price_minor, received_at, "
      "purchase_line, gross_mg, tare_mg) "
      "VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12) "
      "ON CONFLICT (id) DO UPDATE SET wire = excluded.wire, form = excluded.form, count = excluded.count, "
      "each_nm = excluded.each_nm, crown_height_nm = excluded.crown_height_nm, supplier = excluded.supplier, "
      "price_minor = excluded.price_minor, received_at = excluded.received_at, "
      "purchase_line = excluded.purchase_line, gross_mg = excluded.gross_mg, tare_mg = excluded.tare_mg");
  q.with(l.id, l.wire, l.form, l.count, l.each, l.crown_height, l.supplier, l.price, l.received,
         l.purchase_line, l.gross, l.tare);
  const std::int64_t id = put_row(connection, images, shop::Thing::lot, l.id, q);
  if (l.id != 0) renew_crowns(connection, {shop::Thing::lot, id});
  return id;
}

} // namespace nutward::store
