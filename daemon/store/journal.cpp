#include "store/journal.hpp"

#include "store/chain.hpp"
#include "store/drawn.hpp"
#include "store/journal_rows.hpp"

#include <algorithm>

namespace nutward::store {

using shop::Bookmark;
using shop::Instant;
using shop::Line;
using shop::Past;
using shop::Ref;

namespace {

std::vector<Ref> touched(Connection& c, std::int64_t line) {
  std::vector<Ref> out;
  Query q = c.query("SELECT thing, id FROM journal_touch WHERE line = ?1");
  q.with(line);
  while (q.next())
    out.push_back({shop::thing_for(q.get<std::string>(0)), q.get<std::int64_t>(1)});
  std::sort(out.begin(), out.end());
  return out;
}

// Rows of `LINE_COLUMNS, TAKEN_BACK`.
std::vector<Past> pasts(Connection& c, Query& q) {
  std::vector<Past> out;
  while (q.next())
    out.push_back({line_of(q), q.get<std::optional<std::int64_t>>(columns_of_a_line)});
  for (Past& p : out)
    p.line.touched = touched(c, p.line.id);
  return out;
}

// Nothing that is taken back is ever taken back again, so there is one such line at most.
#define TAKEN_BACK "(SELECT min(u.id) FROM journal u WHERE u.undoes = j.group_id)"

std::vector<std::string> movements(Connection& c, std::int64_t line) {
  std::vector<std::string> out;
  Query q = c.query(
      "SELECT " MOVEMENT_COLUMNS
      " FROM journal_movement j JOIN movement m ON m.id = j.movement WHERE j.line = ?1 ORDER BY m.id");
  q.with(line);
  while (q.next())
    out.push_back(movement_text(q));
  return out;
}

} // namespace

std::vector<Line> Journal::group(std::int64_t group) const {
  std::vector<Line> out;
  Query q = connection_.query("SELECT " LINE_COLUMNS " FROM journal j WHERE group_id = ?1 ORDER BY sequence");
  q.with(group);
  while (q.next())
    out.push_back(line_of(q));
  for (Line& line : out)
    line.touched = touched(connection_, line.id);
  return out;
}

std::optional<Line> Journal::line(std::int64_t id) const {
  Query q = connection_.query("SELECT " LINE_COLUMNS " FROM journal j WHERE id = ?1");
  if (!q.with(id).next()) return std::nullopt;
  Line out = line_of(q);
  out.touched = touched(connection_, id);
  return out;
}

std::optional<std::int64_t> Journal::last_undoable(std::int64_t actor) const {
  Query q = connection_.query(
      "SELECT j.group_id FROM journal j WHERE j.actor = ?1 AND j.undoes IS NULL AND j.inverse <> '' AND "
      "NOT EXISTS "
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

std::vector<Past> Journal::about(Ref thing, std::optional<int> slot, std::optional<std::int64_t> actor,
                                 Instant from, Bookmark before, std::size_t most) const {
  Query q = connection_.query("SELECT " LINE_COLUMNS ", " TAKEN_BACK
                              " FROM journal_about a JOIN journal j ON j.id = a.line "
                              "WHERE a.thing = ?1 AND a.id = ?2 AND a.slot = ?3 AND a.happened_at >= ?4 "
                              "AND (a.happened_at, a.line) < (?5, ?6) AND (?7 IS NULL OR j.actor = ?7) "
                              "ORDER BY a.happened_at DESC, a.line DESC LIMIT ?8");
  q.with(shop::word_for(thing.thing), thing.id, slot.value_or(About::whole), from, before.happened,
         before.line, actor, static_cast<std::int64_t>(most));
  return pasts(connection_, q);
}

std::vector<Past> Journal::happened(std::optional<std::int64_t> actor, Instant from, Bookmark before,
                                    std::size_t most) const {
  const auto rows = static_cast<std::int64_t>(most);
  if (actor) {
    Query q = connection_.query("SELECT " LINE_COLUMNS ", " TAKEN_BACK
                                " FROM journal j WHERE j.actor = ?1 AND j.happened_at >= ?2 AND "
                                "(j.happened_at, j.id) < (?3, ?4) "
                                "ORDER BY j.happened_at DESC, j.id DESC LIMIT ?5");
    q.with(*actor, from, before.happened, before.line, rows);
    return pasts(connection_, q);
  }
  Query q =
      connection_.query("SELECT " LINE_COLUMNS ", " TAKEN_BACK
                        " FROM journal j WHERE j.happened_at >= ?1 AND (j.happened_at, j.id) < (?2, ?3) "
                        "ORDER BY j.happened_at DESC, j.id DESC LIMIT ?4");
  q.with(from, before.happened, before.line, rows);
  return pasts(connection_, q);
}

namespace {

// Things that the line touched, and what its movements moved, besides what `out` has already.
void add_touched_and_moved(Connection& c, const Line& l, std::set<About>& out) {
  for (const Ref& ref : l.touched)
    add_about(ref, {}, out);
  Query q = c.query("SELECT m.wire, m.piece, m.job, m.slot FROM journal_movement j "
                    "JOIN movement m ON m.id = j.movement WHERE j.line = ?1");
  q.with(l.id);
  while (q.next()) {
    std::int64_t wire = 0;
    std::optional<std::int64_t> piece, job, slot;
    q.into(wire, piece, job, slot);
    out.insert({{shop::Thing::wire, wire}});
    if (piece) out.insert({{shop::Thing::piece, *piece}});
    if (job) out.insert({{shop::Thing::job, *job}});
    if (job && slot) add_slot(*job, static_cast<int>(*slot), out);
  }
}

void write_about(Connection& c, const Line& l, const std::set<About>& about) {
  for (const About& a : about)
    c.query("INSERT INTO journal_about (thing, id, slot, happened_at, line) VALUES (?1, ?2, ?3, ?4, ?5)")
        .with(shop::word_for(a.ref.thing), a.ref.id, a.slot, l.happened, l.id)
        .run();
}

} // namespace

Line Journal::append(Line l, const std::vector<std::int64_t>& made, std::set<About> about) {
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
  add_touched_and_moved(connection_, l, about);
  const Beside beside{std::move(about), movements(connection_, l.id)};
  l.hash = sha256(canonical(before, l, beside));
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
  write_about(connection_, l, beside.about);
  for (const std::int64_t movement : made)
    add_drawn(connection_, movement, l.happened);
  connection_.query("UPDATE shop SET last_line = ?1, last_hash = ?2").with(l.id, l.hash).run();
  return l;
}

} // namespace nutward::store
