#include "store/ledger.hpp"

#include <fmt/core.h>

#include <stdexcept>

namespace nutward::store {

using shop::Fault;
using shop::Movement;
using shop::MovementKind;
using shop::Place;
using shop::Problem;

namespace {

// A count or a correction says how it is, whatever was thought before.
bool may_go_below(const Movement& m) {
  return m.kind == MovementKind::counted || m.kind == MovementKind::corrected;
}

bool touches(const Movement& m, Place place) {
  return m.from == place || m.to == place;
}

} // namespace

void Ledger::move(const Movement& m) {
  append(m, std::nullopt);
}

void Ledger::reverse(std::int64_t id, std::string_view reason) {
  Movement m;
  bool reversed = false;
  {
    Query q = connection_.query(
        "SELECT wire, lot, piece, job, slot, from_place, to_place, length_nm, pieces, EXISTS "
        "(SELECT 1 FROM movement r WHERE r.reverses = movement.id) FROM movement WHERE id = ?1");
    if (!q.with(id).next()) throw std::out_of_range(fmt::format("there is no movement {}", id));
    q.into(m.wire, m.lot, m.piece, m.job, m.slot, m.to, m.from, m.length, m.pieces,
           reversed); // the other way round
  }
  if (reversed) throw Problem(Fault::state, "That movement of wire has been taken back already.", "/", "");
  m.kind = MovementKind::corrected;
  m.reason = reason;
  append(m, id);
}

void Ledger::append(const Movement& m, std::optional<std::int64_t> reverses) {
  if (m.length.nm < 0 || m.pieces < 0 || m.from == m.to || (touches(m, Place::tin) && !m.piece))
    throw std::logic_error(
        "a movement goes from one place to another, by no less than nothing, and names its piece");
  if (m.piece && !images_.note({shop::Thing::piece, *m.piece}) && !reverses)
    throw std::logic_error(fmt::format("there is no piece {} to move", *m.piece));
  const bool of_tin = touches(m, Place::tin), of_stock = touches(m, Place::stock);
  const Balance piece = of_tin ? piece_after(m) : Balance{};
  const std::int64_t stock = of_stock ? stock_after(m) : 0;
  connection_
      .query("INSERT INTO movement (kind, wire, lot, piece, job, slot, from_place, to_place, length_nm, "
             "pieces, reason, "
             "reverses) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)")
      .with(m.kind, m.wire, m.lot, m.piece, m.job, m.slot, m.from, m.to, m.length, m.pieces, m.reason,
            reverses)
      .run();
  const std::int64_t id = connection_.last_id();
  if (of_tin)
    connection_
        .query("UPDATE piece SET length_nm = CASE WHEN ?2 > 0 AND ?3 > 0 THEN ?2 END, "
               "count = CASE WHEN ?3 > 0 THEN ?3 ELSE 0 END, in_tin = ?3 > 0 WHERE id = ?1")
        .with(*m.piece, piece.length, piece.count)
        .run();
  if (of_stock) connection_.query("UPDATE wire SET on_hand_nm = ?2 WHERE id = ?1").with(m.wire, stock).run();
  made_.push_back(id);
  for_line_.push_back(id);
}

Ledger::Balance Ledger::piece_after(const Movement& m) const {
  Balance b;
  Query q = connection_.query(
      "SELECT COALESCE(SUM(CASE WHEN to_place = 'tin' THEN length_nm WHEN from_place = 'tin' THEN "
      "-length_nm ELSE 0 END), 0), COALESCE(SUM(CASE WHEN to_place = 'tin' THEN pieces WHEN "
      "from_place = 'tin' THEN -pieces ELSE 0 END), 0) FROM movement WHERE piece = ?1");
  q.with(*m.piece).next();
  q.into(b.length, b.count);
  b.length += m.to == Place::tin ? m.length.nm : -m.length.nm;
  b.count += m.to == Place::tin ? m.pieces : -m.pieces;
  if ((b.length < 0 || b.count < 0) && !may_go_below(m))
    throw Problem(Fault::state, "The tin does not hold that much of the piece.", "/piece",
                  "Measure the piece again and say its length, or take less of it.");
  if (b.length > 0 && b.count > 1)
    throw std::logic_error("only a single piece has a length; a handful has none");
  return b;
}

std::int64_t Ledger::stock_after(const Movement& m) const {
  Query q = connection_.query("SELECT on_hand_nm FROM wire WHERE id = ?1");
  if (!q.with(m.wire).next()) throw std::logic_error(fmt::format("there is no wire {} to move", m.wire));
  const std::int64_t left = q.get<std::int64_t>() + (m.to == Place::stock ? m.length.nm : -m.length.nm);
  if (left < 0 && !may_go_below(m))
    throw Problem(Fault::state, "There is not that much of this wire in sticks and coils.", "/wire",
                  "Say what was received, or count the wire and say how much there is.");
  return left;
}

} // namespace nutward::store
