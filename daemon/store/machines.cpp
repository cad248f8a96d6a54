#include "store/machines.hpp"

#include "store/put.hpp"

namespace nutward::store {

using shop::Booking;
using shop::Machine;
using shop::Outage;
using shop::OwnDay;
using shop::OwnHours;
using shop::StageRule;

std::vector<Machine> Machines::all() const {
  std::vector<Machine> out;
  Query q = connection_.query("SELECT id, name, count, setup_s FROM machine WHERE withdrawn = 0 ORDER BY id");
  while (q.next()) {
    Machine& m = out.emplace_back();
    q.into(m.id, m.name, m.count, m.setup_s);
  }
  return out;
}

// In two parts, so that the index serves both.
std::vector<Outage> Machines::outages(units::Instant from) const {
  std::vector<Outage> out;
  Query q = connection_.query(
      "SELECT id, machine, number, from_at, to_at, note FROM outage WHERE to_at IS NULL AND withdrawn = 0 "
      "UNION ALL SELECT id, machine, number, from_at, to_at, note FROM outage WHERE to_at > ?1 AND "
      "withdrawn = 0 ORDER BY 4, 1");
  q.with(from);
  while (q.next()) {
    Outage& o = out.emplace_back();
    q.into(o.id, o.machine, o.number, o.from, o.to, o.note);
  }
  return out;
}

std::vector<Booking> Machines::bookings(units::Instant from, units::Instant before) const {
  std::vector<Booking> out;
  Query q =
      connection_.query("SELECT id, machine, from_at, to_at, actor, job, note FROM booking WHERE to_at > ?1 "
                        "AND from_at < ?2 AND withdrawn = 0 ORDER BY from_at, id");
  q.with(from, before);
  while (q.next()) {
    Booking& b = out.emplace_back();
    q.into(b.id, b.machine, b.from, b.to, b.actor, b.job, b.note);
  }
  return out;
}

std::vector<StageRule> Machines::rules() const {
  std::vector<StageRule> out;
  Query q =
      connection_.query("SELECT id, stage, machine, minutes FROM stage_rule WHERE withdrawn = 0 ORDER BY id");
  while (q.next()) {
    StageRule& r = out.emplace_back();
    q.into(r.id, r.stage, r.machine, r.minutes);
  }
  return out;
}

std::vector<OwnHours> Machines::own_hours() const {
  std::vector<OwnHours> out;
  Query q = connection_.query(
      "SELECT id, actor, weekday, spans FROM own_hours WHERE withdrawn = 0 ORDER BY actor, weekday");
  while (q.next()) {
    OwnHours& h = out.emplace_back();
    q.into(h.id, h.actor, h.weekday, h.spans);
  }
  return out;
}

std::vector<OwnDay> Machines::own_days(units::Day from) const {
  std::vector<OwnDay> out;
  Query q = connection_.query("SELECT id, actor, on_day, spans, note FROM own_day WHERE on_day >= ?1 AND "
                              "withdrawn = 0 ORDER BY actor, on_day");
  q.with(from);
  while (q.next()) {
    OwnDay& d = out.emplace_back();
    q.into(d.id, d.actor, d.day, d.spans, d.note);
  }
  return out;
}

std::int64_t put(Connection& connection, Images& images, const Machine& m) {
  Query q =
      connection.query("INSERT INTO machine (id, name, count, setup_s) VALUES (NULLIF(?1, 0), ?2, ?3, ?4) "
                       "ON CONFLICT (id) DO UPDATE SET name = excluded.name, count = excluded.count, "
                       "setup_s = excluded.setup_s");
  q.with(m.id, m.name, m.count, m.setup_s);
  return put_row(connection, images, shop::Thing::machine, m.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Outage& o) {
  Query q = connection.query(
      "INSERT INTO outage (id, machine, number, from_at, to_at, note) VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, "
      "?6) ON CONFLICT (id) DO UPDATE SET machine = excluded.machine, number = excluded.number, "
      "from_at = excluded.from_at, to_at = excluded.to_at, note = excluded.note");
  q.with(o.id, o.machine, o.number, o.from, o.to, o.note);
  return put_row(connection, images, shop::Thing::outage, o.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Booking& b) {
  Query q = connection.query(
      "INSERT INTO booking (id, machine, from_at, to_at, actor, job, note) VALUES (NULLIF(?1, 0), ?2, ?3, "
      "?4, "
      "?5, ?6, ?7) ON CONFLICT (id) DO UPDATE SET machine = excluded.machine, from_at = excluded.from_at, "
      "to_at = excluded.to_at, actor = excluded.actor, job = excluded.job, note = excluded.note");
  q.with(b.id, b.machine, b.from, b.to, b.actor, b.job, b.note);
  return put_row(connection, images, shop::Thing::booking, b.id, q);
}

std::int64_t put(Connection& connection, Images& images, const StageRule& r) {
  const auto there = key_of(connection, "SELECT id FROM stage_rule WHERE stage = ?1", r.stage);
  Query q = connection.query("INSERT INTO stage_rule (stage, machine, minutes) VALUES (?1, ?2, ?3) ON "
                             "CONFLICT (stage) DO UPDATE SET "
                             "machine = excluded.machine, minutes = excluded.minutes, withdrawn = 0");
  q.with(r.stage, r.machine, r.minutes);
  return put_keyed(connection, images, shop::Thing::stage_rule, there, q);
}

std::int64_t put(Connection& connection, Images& images, const OwnHours& h) {
  const auto there =
      key_of(connection, "SELECT id FROM own_hours WHERE actor = ?1 AND weekday = ?2", h.actor, h.weekday);
  Query q = connection.query("INSERT INTO own_hours (actor, weekday, spans) VALUES (?1, ?2, ?3) ON CONFLICT "
                             "(actor, weekday) DO UPDATE "
                             "SET spans = excluded.spans, withdrawn = 0");
  q.with(h.actor, h.weekday, h.spans);
  return put_keyed(connection, images, shop::Thing::own_hours, there, q);
}

std::int64_t put(Connection& connection, Images& images, const OwnDay& d) {
  const auto there =
      key_of(connection, "SELECT id FROM own_day WHERE actor = ?1 AND on_day = ?2", d.actor, d.day);
  Query q = connection.query("INSERT INTO own_day (actor, on_day, spans, note) VALUES (?1, ?2, ?3, ?4) ON "
                             "CONFLICT (actor, on_day) DO "
                             "UPDATE SET spans = excluded.spans, note = excluded.note, withdrawn = 0");
  q.with(d.actor, d.day, d.spans, d.note);
  return put_keyed(connection, images, shop::Thing::own_day, there, q);
}

} // namespace nutward::store
