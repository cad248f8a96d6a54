#include "store/house.hpp"

#include "store/lists.hpp"
#include "store/put.hpp"

namespace nutward::store {

using shop::Actor;
using shop::Receiver;
using shop::SpecialDay;
using shop::Weekday;

namespace {

#define ACTOR_COLUMNS "SELECT id, name, role, bench, uids, retired FROM actor "

Actor read_actor(const Query& q) {
  Actor a;
  RoleWord role{};
  std::string uids;
  q.into(a.id, a.name, role, a.bench, uids, a.retired);
  a.role = static_cast<int>(role);
  a.uids = split_ids(uids);
  return a;
}

#define BAR_COLUMNS "SELECT id, name, length_nm, width_nm, sole_radius_nm, rating_n, narrow FROM bar "

shop::Bar read_bar(const Query& q) {
  shop::Bar b;
  q.into(b.id, b.is.name, b.is.length, b.is.width, b.is.sole_radius, b.is.rating, b.is.narrow);
  return b;
}

} // namespace

std::vector<Weekday> House::week() const {
  std::vector<Weekday> out;
  Query q = connection_.query("SELECT id, spans FROM weekday WHERE withdrawn = 0 ORDER BY id");
  while (q.next()) {
    Weekday& w = out.emplace_back();
    q.into(w.id, w.spans);
  }
  return out;
}

std::vector<SpecialDay> House::special_days() const {
  std::vector<SpecialDay> out;
  Query q = connection_.query(
      "SELECT id, on_day, closed, extra, note FROM special_day WHERE withdrawn = 0 ORDER BY on_day");
  while (q.next()) {
    SpecialDay& d = out.emplace_back();
    q.into(d.id, d.day, d.closed, d.extra, d.note);
  }
  return out;
}

std::optional<std::string> House::setting(std::string_view name) const {
  Query q = connection_.query("SELECT value FROM setting WHERE name = ?1 AND withdrawn = 0");
  if (!q.with(name).next()) return std::nullopt;
  return q.get<std::string>();
}

std::vector<Actor> House::actors() const {
  std::vector<Actor> out;
  Query q = connection_.query(ACTOR_COLUMNS "WHERE withdrawn = 0 ORDER BY id");
  while (q.next())
    out.push_back(read_actor(q));
  return out;
}

std::optional<Actor> House::actor(std::int64_t id) const {
  Query q = connection_.query(ACTOR_COLUMNS "WHERE id = ?1");
  if (!q.with(id).next()) return std::nullopt;
  return read_actor(q);
}

std::optional<Actor> House::actor_for_uid(std::int64_t uid) const {
  Query q =
      connection_.query(ACTOR_COLUMNS "WHERE ',' || uids || ',' LIKE '%,' || ?1 || ',%' AND withdrawn = 0");
  if (!q.with(uid).next()) return std::nullopt;
  return read_actor(q);
}

std::vector<Receiver> House::receivers() const {
  std::vector<Receiver> out;
  Query q = connection_.query("SELECT id, name, url, secret, shape, wants, failing, disabled FROM receiver "
                              "WHERE withdrawn = 0 ORDER BY id");
  while (q.next()) {
    Receiver& r = out.emplace_back();
    std::string wants;
    q.into(r.id, r.name, r.url, r.secret, r.shape, wants, r.failing, r.disabled);
    r.wants = split_words(wants);
  }
  return out;
}

std::vector<shop::Bar> House::bars() const {
  std::vector<shop::Bar> out;
  Query q = connection_.query(BAR_COLUMNS "WHERE withdrawn = 0 ORDER BY id");
  while (q.next())
    out.push_back(read_bar(q));
  return out;
}

std::optional<shop::Bar> House::bar(std::int64_t id) const {
  Query q = connection_.query(BAR_COLUMNS "WHERE id = ?1");
  if (!q.with(id).next()) return std::nullopt;
  return read_bar(q);
}

std::int64_t put(Connection& connection, Images& images, const Actor& a) {
  if (a.role < 0 || a.role > 2) throw std::logic_error("an actor's role is 0, 1 or 2");
  Query q = connection.query(
      "INSERT INTO actor (id, name, role, bench, uids, retired) VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6) "
      "ON CONFLICT (id) DO UPDATE SET name = excluded.name, role = excluded.role, "
      "bench = excluded.bench, uids = excluded.uids, retired = excluded.retired");
  q.with(a.id, a.name, static_cast<RoleWord>(a.role), a.bench, join(a.uids), a.retired);
  return put_row(connection, images, shop::Thing::actor, a.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Weekday& w) {
  const auto there = key_of(connection, "SELECT id FROM weekday WHERE id = ?1", w.id);
  Query q = connection.query("INSERT INTO weekday (id, spans) VALUES (?1, ?2) "
                             "ON CONFLICT (id) DO UPDATE SET spans = excluded.spans, withdrawn = 0");
  q.with(w.id, w.spans);
  return put_keyed(connection, images, shop::Thing::weekday, there, q);
}

std::int64_t put(Connection& connection, Images& images, const SpecialDay& d) {
  const auto there = key_of(connection, "SELECT id FROM special_day WHERE on_day = ?1", d.day);
  Query q =
      connection.query("INSERT INTO special_day (on_day, closed, extra, note) VALUES (?1, ?2, ?3, ?4) "
                       "ON CONFLICT (on_day) DO UPDATE SET closed = excluded.closed, extra = excluded.extra, "
                       "note = excluded.note, withdrawn = 0");
  q.with(d.day, d.closed, d.extra, d.note);
  return put_keyed(connection, images, shop::Thing::special_day, there, q);
}

std::int64_t put(Connection& connection, Images& images, const shop::Setting& s) {
  const auto there = key_of(connection, "SELECT id FROM setting WHERE name = ?1", s.name);
  Query q = connection.query("INSERT INTO setting (name, value) VALUES (?1, ?2) "
                             "ON CONFLICT (name) DO UPDATE SET value = excluded.value, withdrawn = 0");
  q.with(s.name, s.value);
  return put_keyed(connection, images, shop::Thing::setting, there, q);
}

std::int64_t put(Connection& connection, Images& images, const Receiver& r) {
  Query q = connection.query(
      "INSERT INTO receiver (id, name, url, secret, shape, wants, failing, disabled) VALUES (NULLIF(?1, 0), "
      "?2, ?3, ?4, "
      "?5, ?6, ?7, ?8) ON CONFLICT (id) DO UPDATE SET name = excluded.name, url = excluded.url, "
      "secret = excluded.secret, shape = excluded.shape, wants = excluded.wants, failing = excluded.failing, "
      "disabled = excluded.disabled");
  q.with(r.id, r.name, r.url, r.secret, r.shape, join(r.wants), r.failing, r.disabled);
  return put_row(connection, images, shop::Thing::receiver, r.id, q);
}

std::int64_t put(Connection& connection, Images& images, const shop::Bar& b) {
  Query q = connection.query(
      "INSERT INTO bar (id, name, length_nm, width_nm, sole_radius_nm, rating_n, narrow) VALUES "
      "(NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7) ON CONFLICT (id) DO UPDATE SET name = excluded.name, "
      "length_nm = excluded.length_nm, width_nm = excluded.width_nm, sole_radius_nm = "
      "excluded.sole_radius_nm, rating_n = excluded.rating_n, narrow = excluded.narrow");
  q.with(b.id, b.is.name, b.is.length, b.is.width, b.is.sole_radius, b.is.rating, b.is.narrow);
  return put_row(connection, images, shop::Thing::bar, b.id, q);
}

std::optional<shop::Remembered> recall(Connection& connection, std::int64_t actor, std::string_view key,
                                       units::Instant since) {
  Query q =
      connection.query("SELECT digest, answer FROM remembered WHERE actor = ?1 AND key = ?2 AND at >= ?3");
  if (!q.with(actor, key, since).next()) return std::nullopt;
  shop::Remembered out;
  q.into(out.digest, out.answer);
  return out;
}

void remember(Connection& connection, std::int64_t actor, std::string_view key, units::Instant now,
              const shop::Remembered& what) {
  constexpr std::int64_t week_s = 7 * 86400;
  connection.query("DELETE FROM remembered WHERE at < ?1").with(now.s - week_s).run();
  connection
      .query("INSERT INTO remembered (actor, key, at, digest, answer) VALUES (?1, ?2, ?3, ?4, ?5) ON "
             "CONFLICT (actor, key) "
             "DO UPDATE SET at = excluded.at, digest = excluded.digest, answer = excluded.answer")
      .with(actor, key, now, what.digest, what.answer)
      .run();
}

} // namespace nutward::store
