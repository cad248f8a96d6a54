#include "store/tin.hpp"

#include "store/lists.hpp"
#include "store/put.hpp"

#include <algorithm>
#include <tuple>

namespace nutward::store {

using pieces::Mark;
using pieces::PieceFacts;
using pieces::Walk;
using shop::Length;
using shop::Piece;

namespace {

#define PIECE_COLUMNS                                                                                        \
  "SELECT id, wire, lot, kind, length_nm, measured, end_left, end_right, tang_nm, bend_radius_nm, count, "   \
  "place, job, "                                                                                             \
  "slot, added_at, in_tin, more_slots FROM piece "

Piece read(const Query& q) {
  Piece p;
  std::string more;
  q.into(p.id, p.wire, p.lot, p.kind, p.length, p.measured, p.left, p.right, p.tang, p.bend_radius, p.count,
         p.place, p.job, p.slot, p.added, p.in_tin, more);
  p.more_slots = split_numbers(more);
  return p;
}

std::vector<Piece> all(Query& q) {
  std::vector<Piece> out;
  while (q.next())
    out.push_back(read(q));
  return out;
}

int raw(shop::End end) {
  return end == shop::End::dressed ? 0 : 1;
}

// The order of a walk: by length in its direction, then oldest, then id.
auto key(const Walk& walk, Length length, units::Instant added, std::int64_t id) {
  return std::tuple(walk.upward ? length.nm : -length.nm, added.s, id);
}

bool in_walk(const Walk& w, const PieceFacts& p) {
  if ((p.kind == pieces::Kind::pulled_fret) != w.pulled || p.raw_ends != w.raw_ends) return false;
  if (p.length < w.shortest || p.length > w.longest || (w.lot && p.lot != *w.lot)) return false;
  if (w.tangs != pieces::Tangs::any && (w.tangs == pieces::Tangs::nipped) != p.tang.has_value()) return false;
  if (!p.crown_height) return true;
  return (!w.crown_from || *p.crown_height >= *w.crown_from) &&
         (!w.crown_to || *p.crown_height <= *w.crown_to);
}

} // namespace

std::optional<Piece> Tin::find(std::int64_t id) const {
  Query q = connection_.query(PIECE_COLUMNS "WHERE id = ?1 AND withdrawn = 0");
  if (!q.with(id).next()) return std::nullopt;
  return read(q);
}

std::vector<PieceFacts> Tin::held(std::int64_t wire, std::int64_t job, std::optional<int> slot) const {
  std::vector<PieceFacts> out;
  Query q = connection_.query(
      "SELECT id, kind, length_nm, raw_ends, crown_height_nm, lot, added_at, tang_nm FROM piece INDEXED BY "
      "piece_held "
      "WHERE job = ?1 AND (slot IS NULL OR slot = ?2 OR instr(',' || more_slots || ',', ',' || ?2 || ',') > "
      "0) AND wire = ?3 AND in_tin = 1 AND withdrawn = 0 AND "
      "count = 1 AND "
      "length_nm IS NOT NULL");
  q.with(job, slot, wire);
  while (q.next()) {
    PieceFacts p;
    q.into(p.id, p.kind, p.length, p.raw_ends, p.crown_height, p.lot, p.added, p.tang);
    p.held_for_this = true;
    out.push_back(p);
  }
  return out;
}

std::vector<PieceFacts> Tin::page(std::int64_t wire, const Walk& walk, const std::optional<Mark>& after,
                                  std::size_t at_most, std::optional<std::int64_t> job,
                                  std::optional<int> slot) const {
  std::vector<PieceFacts> out = walk_free(connection_, wire, walk, after, at_most);
  if (!job) return out;
  const auto place = [&](const PieceFacts& p) { return key(walk, p.length, p.added, p.id); };
  for (const PieceFacts& p : held(wire, *job, slot)) {
    if (!in_walk(walk, p) || (after && place(p) <= key(walk, after->length, after->added, after->id)))
      continue;
    out.insert(
        std::upper_bound(out.begin(), out.end(), p,
                         [&](const PieceFacts& a, const PieceFacts& b) { return place(a) < place(b); }),
        p);
  }
  if (out.size() > at_most) out.resize(at_most);
  return out;
}

std::vector<Piece> Tin::held_for(std::int64_t job) const {
  Query q = connection_.query(PIECE_COLUMNS "INDEXED BY piece_held WHERE job = ?1 AND job IS NOT NULL AND "
                                            "in_tin = 1 AND withdrawn = 0 ORDER BY slot, id");
  return all(q.with(job));
}

std::vector<Piece> Tin::near(std::optional<std::int64_t> wire, Length length, Length tolerance,
                             std::size_t most) const {
  // The nearest are among the first `most` upward and the first `most` downward.
#define NEAR                                                                                                 \
  PIECE_COLUMNS                                                                                              \
  "WHERE in_tin = 1 AND withdrawn = 0 AND length_nm IS NOT NULL AND length_nm BETWEEN ?1 AND ?2 "
#define UPWARD "ORDER BY length_nm, id LIMIT ?3"
#define DOWNWARD "ORDER BY length_nm DESC, id DESC LIMIT ?3"
  const auto count = static_cast<std::int64_t>(most);
  const auto take = [&](std::string_view of_wire, std::string_view of_any, Length low, Length high) {
    Query q = connection_.query(wire ? of_wire : of_any);
    q.with(low, high, count);
    if (wire) q.bind(4, *wire);
    return all(q);
  };
  std::vector<Piece> out = take(NEAR "AND wire = ?4 " UPWARD, NEAR UPWARD, length, length + tolerance);
  const std::vector<Piece> below =
      take(NEAR "AND wire = ?4 " DOWNWARD, NEAR DOWNWARD, length - tolerance, length - Length{1});
#undef NEAR
#undef UPWARD
#undef DOWNWARD
  out.insert(out.end(), below.begin(), below.end());
  std::sort(out.begin(), out.end(), [&](const Piece& a, const Piece& b) {
    return std::tuple(units::abs(*a.length - length), a.id) <
           std::tuple(units::abs(*b.length - length), b.id);
  });
  if (out.size() > most) out.resize(most);
  return out;
}

shop::TinSum Tin::sum(std::int64_t wire) const {
  Query q = connection_.query("SELECT COALESCE(SUM(CASE WHEN length_nm IS NULL THEN 0 ELSE count END), 0), "
                              "COALESCE(SUM(length_nm), 0), "
                              "COALESCE(SUM(CASE WHEN length_nm IS NULL THEN count ELSE 0 END), 0), "
                              "COALESCE(SUM(CASE WHEN job IS NULL THEN 0 ELSE count END), 0) "
                              "FROM piece WHERE wire = ?1 AND in_tin = 1 AND withdrawn = 0");
  shop::TinSum out;
  if (q.with(wire).next()) q.into(out.pieces, out.length, out.unmeasured, out.held);
  return out;
}

std::vector<Piece> Tin::list(std::int64_t wire, std::optional<std::int64_t> after, std::size_t most) const {
  const std::optional<Piece> mark = after ? find(*after) : std::nullopt;
  std::vector<Piece> out;
  if (!mark || mark->length) {
    Query q = connection_.query(PIECE_COLUMNS
                                "WHERE wire = ?1 AND in_tin = 1 AND withdrawn = 0 AND length_nm IS NOT NULL "
                                "AND (length_nm, id) > (?2, ?3) ORDER BY length_nm, id LIMIT ?4");
    out =
        all(q.with(wire, mark ? mark->length->nm : 0, mark ? mark->id : 0, static_cast<std::int64_t>(most)));
  }
  if (out.size() == most) return out;
  Query q = connection_.query(PIECE_COLUMNS
                              "WHERE wire = ?1 AND in_tin = 1 AND withdrawn = 0 AND length_nm IS NULL AND "
                              "id > ?2 ORDER BY id LIMIT ?3");
  const std::vector<Piece> rest =
      all(q.with(wire, mark && !mark->length ? mark->id : 0, static_cast<std::int64_t>(most - out.size())));
  out.insert(out.end(), rest.begin(), rest.end());
  return out;
}

std::vector<Piece> Tin::unmeasured(std::int64_t wire, std::size_t most) const {
  Query q = connection_.query(
      PIECE_COLUMNS
      "WHERE wire = ?1 AND in_tin = 1 AND withdrawn = 0 AND length_nm IS NULL ORDER BY id LIMIT ?2");
  return all(q.with(wire, static_cast<std::int64_t>(most)));
}

std::vector<shop::Bin> Tin::bins(std::int64_t wire, Length step) const {
  // Of a bin the place with the most pieces first; those without a place last.
  Query q = connection_.query(
      "SELECT length_nm / ?2 AS bin, place, COUNT(*) AS many FROM piece WHERE wire = ?1 AND "
      "in_tin = 1 AND withdrawn = 0 AND length_nm < ?2 * 2000 "
      "GROUP BY bin, place ORDER BY bin, place = '', many DESC, place");
  std::vector<shop::Bin> out;
  q.with(wire, step);
  while (q.next()) {
    shop::Bin one;
    q.into(one.index, one.place, one.pieces);
    if (out.empty() || out.back().index != one.index)
      out.push_back(std::move(one));
    else
      out.back().pieces += one.pieces;
  }
  return out;
}

std::vector<shop::IdlePiece> Tin::idle(std::int64_t wire, units::Instant before, std::size_t most) const {
  std::vector<shop::IdlePiece> out;
  Query q = connection_.query(
      "SELECT id, max(added_at, COALESCE((SELECT max(j.happened_at) FROM journal_touch t JOIN journal j ON "
      "j.id = "
      "t.line "
      "WHERE t.thing = 'piece' AND t.id = piece.id), added_at)) AS since FROM piece INDEXED BY piece_tin "
      "WHERE wire = ?1 AND in_tin = 1 AND withdrawn = 0 AND length_nm IS NOT NULL AND job IS NULL "
      "AND added_at < ?2 AND since < ?2 ORDER BY length_nm, id LIMIT ?3");
  q.with(wire, before, static_cast<std::int64_t>(most));
  while (q.next())
    out.push_back({find(q.get<std::int64_t>()).value(), q.get<units::Instant>(1)});
  return out;
}

std::int64_t put(Connection& connection, Images& images, const Piece& p) {
  Query q = connection.query(
      "INSERT INTO piece (id, wire, lot, kind, measured, end_left, end_right, raw_ends, tang_nm, "
      "bend_radius_nm, place, "
      "job, slot, added_at, more_slots) VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, "
      "?12, ?13, "
      "?14, ?15) "
      "ON CONFLICT (id) DO UPDATE SET wire = excluded.wire, lot = excluded.lot, kind = excluded.kind, "
      "measured = excluded.measured, end_left = excluded.end_left, end_right = excluded.end_right, "
      "raw_ends = excluded.raw_ends, tang_nm = excluded.tang_nm, bend_radius_nm = excluded.bend_radius_nm, "
      "place = excluded.place, job = excluded.job, slot = excluded.slot, added_at = excluded.added_at, "
      "more_slots = excluded.more_slots");
  q.with(p.id, p.wire, p.lot, p.kind, p.measured, p.left, p.right, raw(p.left) + raw(p.right), p.tang,
         p.bend_radius, p.place, p.job, p.slot, p.added, join(p.more_slots));
  const std::int64_t id = put_row(connection, images, shop::Thing::piece, p.id, q);
  renew_crowns(connection, {shop::Thing::piece, id});
  return id;
}

void renew_crowns(Connection& connection, shop::Ref ref) {
#define RENEW                                                                                                \
  "UPDATE piece SET crown_height_nm = (SELECT l.crown_height_nm FROM lot l WHERE l.id = piece.lot) WHERE "
  if (ref.thing == shop::Thing::piece)
    connection.query(RENEW "id = ?1").with(ref.id).run();
  else
    connection.query(RENEW "lot = ?1").with(ref.id).run();
#undef RENEW
}

} // namespace nutward::store
