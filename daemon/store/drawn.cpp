// Table wire_week: what was drawn off a wire's sticks and coils, week by week.
#include "store/drawn.hpp"

#include "store/wires.hpp"

namespace nutward::store {

// Of a movement `m` that takes nothing back: what it draws; a count that found more gives back.
#define DRAWN_OF_M                                                                                           \
  "CASE WHEN m.kind IN ('received', 'corrected') THEN 0 WHEN m.from_place = 'stock' THEN m.length_nm "       \
  "WHEN m.to_place = 'stock' THEN -m.length_nm ELSE 0 END"
#define WEEK_OF_J "(j.happened_at + 259200) / 604800"

void add_drawn(Connection& c, std::int64_t movement, units::Instant happened) {
  // A movement that takes one back does so in the week of that one.
  Query q = c.query("SELECT m.wire, CASE WHEN n.reverses IS NULL THEN " DRAWN_OF_M " ELSE -(" DRAWN_OF_M ") "
                    "END, " WEEK_OF_J " FROM movement n JOIN movement m ON m.id = COALESCE(n.reverses, n.id) "
                    "LEFT JOIN journal_movement jm ON jm.movement = n.reverses LEFT JOIN journal j ON j.id = "
                    "jm.line WHERE n.id = ?1");
  if (!q.with(movement).next()) return;
  std::int64_t wire = 0, drawn = 0;
  std::optional<std::int64_t> week;
  q.into(wire, drawn, week);
  if (drawn == 0) return;
  c.query("INSERT INTO wire_week (wire, week, drawn_nm) VALUES (?1, ?2, ?3) "
          "ON CONFLICT (wire, week) DO UPDATE SET drawn_nm = drawn_nm + excluded.drawn_nm")
      .with(wire, week.value_or(shop::week_of(happened)), drawn)
      .run();
}

std::string_view wrong_drawn() {
  return "WITH s AS (SELECT m.wire, " WEEK_OF_J " AS week, SUM(" DRAWN_OF_M ") AS nm FROM movement m "
         "JOIN journal_movement jm ON jm.movement = m.id JOIN journal j ON j.id = jm.line "
         "WHERE m.reverses IS NULL AND NOT EXISTS (SELECT 1 FROM movement r WHERE r.reverses = m.id) "
         "GROUP BY 1, 2) "
         "SELECT DISTINCT 'wire ' || wire, 'What was drawn of it in a week does not follow from its "
         "movements.' FROM (SELECT wire, week, nm FROM s UNION ALL SELECT wire, week, -drawn_nm FROM "
         "wire_week) GROUP BY wire, week HAVING SUM(nm) <> 0";
}

std::vector<shop::Drawn> Wires::drawn(std::int64_t wire, std::int32_t from_week) const {
  std::vector<shop::Drawn> out;
  Query q = connection_.query("SELECT week, drawn_nm FROM wire_week WHERE wire = ?1 AND week >= ?2 AND "
                              "drawn_nm <> 0 ORDER BY week");
  q.with(wire, from_week);
  while (q.next()) {
    shop::Drawn& d = out.emplace_back();
    q.into(d.week, d.length);
  }
  return out;
}

#undef DRAWN_OF_M
#undef WEEK_OF_J

} // namespace nutward::store
