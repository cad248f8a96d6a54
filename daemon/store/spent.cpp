// Where a wire went in a span of time, without what was taken back.
#include "store/wires.hpp"

namespace nutward::store {

namespace {

// The lines of that span that moved the wire stand one behind the other in the index of the wire's history,
// and each line's movements in theirs; CROSS keeps SQLite from beginning at the movements. `m` stands: it
// takes nothing back and was not taken back.
#define STANDING                                                                                             \
  "FROM journal_about a CROSS JOIN journal_movement jm ON jm.line = a.line "                                 \
  "CROSS JOIN movement m ON m.id = jm.movement "                                                             \
  "WHERE a.thing = 'wire' AND a.id = ?1 AND a.slot = -1 AND a.happened_at >= ?2 AND a.happened_at < ?3 "     \
  "AND m.wire = ?1 AND m.reverses IS NULL "                                                                  \
  "AND NOT EXISTS (SELECT 1 FROM movement back WHERE back.reverses = m.id) "

} // namespace

shop::Spent Wires::spent(std::int64_t wire, units::Instant from, units::Instant before) const {
#define SUM_WHERE(condition) "COALESCE(SUM(CASE WHEN " condition " THEN m.length_nm END), 0)"
  Query q = connection_.query(
      "SELECT " SUM_WHERE(
          "m.from_place = 'stock' AND m.to_place IN ('board', 'kerf') AND m.slot IS NOT NULL") ", " //
      SUM_WHERE("m.from_place = 'tin' AND m.to_place = 'scrap' AND m.job IS NULL") ", "             //
      SUM_WHERE("m.to_place = 'scrap' AND (m.from_place <> 'tin' OR m.job IS NOT NULL)") " - " SUM_WHERE(
          "m.from_place = 'scrap'") ", " //
      SUM_WHERE("m.to_place = 'kerf'") " - " SUM_WHERE(
          "m.from_place = 'kerf'") " " STANDING "AND (m.to_place IN ('scrap', 'kerf') OR m.from_place IN "
                                   "('stock', 'scrap', 'kerf'))");
#undef SUM_WHERE
  shop::Spent out;
  if (q.with(wire, from, before).next()) q.into(out.frets, out.thrown, out.trimmed, out.kerf);
  return out;
}

std::vector<shop::FretOfTin> Wires::frets_of_tin(std::int64_t wire, units::Instant from,
                                                 units::Instant before) const {
  std::vector<shop::FretOfTin> out;
  Query q = connection_.query(
      "SELECT m.job, m.slot, a.happened_at " STANDING
      "AND m.from_place = 'tin' AND m.to_place = 'board' AND m.job IS NOT NULL AND m.slot IS NOT NULL "
      "AND NOT EXISTS (SELECT 1 FROM movement l INDEXED BY movement_left WHERE l.job = m.job AND l.slot = "
      "m.slot "
      "AND l.id > m.id AND l.from_place = 'board' AND l.kind IN ('made_a_piece', 'lost') "
      "AND NOT EXISTS (SELECT 1 FROM movement back WHERE back.reverses = l.id)) ORDER BY m.id");
  q.with(wire, from, before);
  while (q.next()) {
    shop::FretOfTin& f = out.emplace_back();
    q.into(f.job, f.slot, f.happened);
  }
  return out;
}

#undef STANDING

std::optional<std::pair<units::Instant, units::Instant>> Wires::moved(std::int64_t wire) const {
  std::optional<units::Instant> first, last;
  Query q = connection_.query(
      "SELECT (SELECT min(happened_at) FROM journal_about WHERE thing = 'wire' AND id = ?1 AND slot = -1), "
      "(SELECT max(happened_at) FROM journal_about WHERE thing = 'wire' AND id = ?1 AND slot = -1)");
  if (q.with(wire).next()) q.into(first, last);
  if (!first || !last) return std::nullopt;
  return std::pair{*first, *last};
}

} // namespace nutward::store
