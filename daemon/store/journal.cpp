#include "store/journal.hpp"

#include "store/chain.hpp"

#include <fmt/core.h>

#include <algorithm>

namespace nutward::store {

using shop::Line;
using shop::Ref;

namespace {

Line read(const Query& q) {
  Line l;
  q.into(l.id, l.group, l.sequence, l.recorded, l.happened, l.actor, l.via, l.said, l.call, l.answer,
         l.inverse, l.undoes, l.hash);
  return l;
}

std::vector<Ref> touched(Connection& c, std::int64_t line) {
  std::vector<Ref> out;
  Query q = c.query("SELECT thing, id FROM journal_touch WHERE line = ?1");
  q.with(line);
  while (q.next())
    out.push_back({shop::thing_for(q.get<std::string>(0)), q.get<std::int64_t>(1)});
  std::sort(out.begin(), out.end());
  return out;
}

std::string or_dash(std::optional<std::int64_t> value) {
  return value ? std::to_string(*value) : "-";
}

std::vector<std::string> movements(Connection& c, std::int64_t line) {
  std::vector<std::string> out;
  Query q = c.query(
      "SELECT m.id, m.kind, m.wire, m.lot, m.piece, m.job, m.slot, m.from_place, m.to_place, m.length_nm, "
      "m.pieces, m.reverses, m.reason FROM journal_movement j JOIN movement m ON m.id = j.movement "
      "WHERE j.line = ?1 ORDER BY m.id");
  q.with(line);
  while (q.next()) {
    std::int64_t id = 0, wire = 0, length = 0, pieces = 0;
    std::optional<std::int64_t> lot, piece, job, slot, reverses;
    std::string kind, from, to, reason;
    q.into(id, kind, wire, lot, piece, job, slot, from, to, length, pieces, reverses, reason);
    out.push_back(fmt::format("{} {} {} {} {} {} {} {} {} {} {} {} {}", id, kind, wire, or_dash(lot),
                              or_dash(piece), or_dash(job), or_dash(slot), from, to, length, pieces,
                              or_dash(reverses), reason));
  }
  return out;
}

#define LINE_COLUMNS                                                                                         \
  "id, group_id, sequence, recorded_at, happened_at, actor, via, said, call, answer, inverse, undoes, hash " \
  "FROM journal "

} // namespace

std::vector<Line> Journal::group(std::int64_t group) const {
  std::vector<Line> out;
  Query q = connection_.query("SELECT " LINE_COLUMNS "WHERE group_id = ?1 ORDER BY sequence");
  q.with(group);
  while (q.next())
    out.push_back(read(q));
  for (Line& line : out)
    line.touched = touched(connection_, line.id);
  return out;
}

std::optional<Line> Journal::line(std::int64_t id) const {
  Query q = connection_.query("SELECT " LINE_COLUMNS "WHERE id = ?1");
  if (!q.with(id).next()) return std::nullopt;
  Line out = read(q);
  out.touched = touched(connection_, id);
  return out;
}

#undef LINE_COLUMNS

std::optional<std::int64_t> Journal::last_undoable(std::int64_t actor) const {
  Query q = connection_.query(
      "SELECT j.group_id FROM journal j WHERE j.actor = ?1 AND j.undoes IS NULL AND NOT EXISTS "
      "(SELECT 1 FROM journal u WHERE u.undoes = j.group_id) ORDER BY j.id DESC LIMIT 1");
  if (!q.with(actor).next()) return std::nullopt;
  return q.get<std::int64_t>();
}

std::int64_t Journal::touched_in(Ref ref) const {
  Query q = connection_.query("SELECT max(line) FROM journal_touch WHERE thing = ?1 AND id = ?2");
  return q.with(shop::word_for(ref.thing), ref.id).next() ? q.get<std::int64_t>()
                                                          : 0; // max of none reads as 0
}

std::int64_t Journal::newest() const {
  Query q = connection_.query("SELECT last_line FROM shop");
  return q.next() ? q.get<std::int64_t>() : 0;
}

Line Journal::append(Line l, const std::vector<std::int64_t>& made) {
  std::string before;
  {
    Query q = connection_.query("SELECT last_line + 1, last_hash FROM shop");
    q.next();
    q.into(l.id, before);
  }
  if (l.group == 0) l.group = l.id;
  std::sort(l.touched.begin(), l.touched.end());
  l.touched.erase(std::unique(l.touched.begin(), l.touched.end()), l.touched.end());
  // The movements are joined to the line first (its key is checked at the commit), so that they are read for
  // the hash as verify will read them.
  for (const std::int64_t movement : made)
    connection_.query("INSERT INTO journal_movement (movement, line) VALUES (?1, ?2)")
        .with(movement, l.id)
        .run();
  l.hash = sha256(canonical_of(connection_, before, l));
  connection_
      .query("INSERT INTO journal (id, group_id, sequence, recorded_at, happened_at, actor, via, said, call, "
             "answer, "
             "inverse, undoes, hash) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13)")
      .with(l.id, l.group, l.sequence, l.recorded, l.happened, l.actor, l.via, l.said, l.call, l.answer,
            l.inverse, l.undoes, l.hash)
      .run();
  for (const Ref& ref : l.touched)
    connection_.query("INSERT INTO journal_touch (thing, id, line) VALUES (?1, ?2, ?3)")
        .with(shop::word_for(ref.thing), ref.id, l.id)
        .run();
  connection_.query("UPDATE shop SET last_line = ?1, last_hash = ?2").with(l.id, l.hash).run();
  return l;
}

std::string canonical_of(Connection& connection, std::string_view before, const Line& line) {
  return canonical(before, line, movements(connection, line.id));
}

} // namespace nutward::store
