// Table looked: what rechecks found, fret by fret.
#include "store/jobs.hpp"

#include "store/put.hpp"

namespace nutward::store {

std::vector<shop::Looked> Jobs::looked(std::int64_t job) const {
  std::vector<shop::Looked> out;
  Query q =
      connection_.query("SELECT id, job, wire, slot, sprang, early, load_n, together, n_per_mm, looked_at "
                        "FROM looked WHERE job = ?1 AND withdrawn = 0 ORDER BY looked_at, id");
  q.with(job);
  while (q.next()) {
    shop::Looked& l = out.emplace_back();
    q.into(l.id, l.job, l.wire, l.slot, l.sprang, l.early, l.load, l.together, l.n_per_mm, l.looked);
  }
  return out;
}

std::vector<shop::SprangCount> Jobs::sprang(std::optional<std::int64_t> wire) const {
  std::vector<shop::SprangCount> out;
  // n_per_mm is not below 0, so that the cast rounds downward. Two wholes, so that each uses the index.
#define SPRANG_COUNTS                                                                                        \
  "SELECT wire, load_n, together = 1, CAST(n_per_mm AS INTEGER), COUNT(*), SUM(sprang) FROM looked "         \
  "INDEXED BY looked_counts WHERE withdrawn = 0 AND early = 0 "
#define SPRANG_BY "GROUP BY 1, 2, 3, 4 ORDER BY 1, 2, 3, 4"
  Query q = wire ? connection_.query(SPRANG_COUNTS "AND wire = ?1 " SPRANG_BY)
                 : connection_.query(SPRANG_COUNTS SPRANG_BY);
#undef SPRANG_COUNTS
#undef SPRANG_BY
  if (wire) q.with(*wire);
  while (q.next()) {
    shop::SprangCount& c = out.emplace_back();
    q.into(c.wire, c.load, c.alone, c.n_per_mm, c.looked, c.sprang);
  }
  return out;
}

std::int64_t put(Connection& connection, Images& images, const shop::Looked& l) {
  Query q = connection.query(
      "INSERT INTO looked (id, job, wire, slot, sprang, early, load_n, together, n_per_mm, looked_at) VALUES "
      "(NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10) ON CONFLICT (id) DO UPDATE SET job = "
      "excluded.job, "
      "wire = excluded.wire, slot = excluded.slot, sprang = excluded.sprang, early = excluded.early, load_n "
      "= excluded.load_n, "
      "together = excluded.together, n_per_mm = excluded.n_per_mm, looked_at = excluded.looked_at");
  q.with(l.id, l.job, l.wire, l.slot, l.sprang, l.early, l.load, l.together, l.n_per_mm, l.looked);
  return put_row(connection, images, shop::Thing::looked, l.id, q);
}

} // namespace nutward::store
