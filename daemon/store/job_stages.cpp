// Table job_stage.
#include "store/jobs.hpp"
#include "store/put.hpp"

namespace nutward::store {

using shop::Stage;

std::vector<Stage> Jobs::stages(std::int64_t job) const {
  std::vector<Stage> out;
  Query q = connection_.query("SELECT id, job, kind, sequence, started_at, finished_at, recorded_at, actor, "
                              "stopped_at, open_s, frets "
                              "FROM job_stage WHERE job = ?1 AND withdrawn = 0 ORDER BY id");
  q.with(job);
  while (q.next()) {
    Stage& s = out.emplace_back();
    q.into(s.id, s.job, s.kind, s.sequence, s.started, s.finished, s.recorded, s.actor, s.stopped, s.open_s,
           s.frets);
  }
  return out;
}

std::vector<shop::Took> Jobs::took(std::string_view stage, std::size_t most) const {
  std::vector<shop::Took> out;
  Query q =
      connection_.query("SELECT open_s, frets FROM job_stage WHERE kind = ?1 AND open_s > 0 AND frets > 0 "
                        "AND withdrawn = 0 ORDER BY finished_at DESC, id DESC LIMIT ?2");
  q.with(stage, static_cast<std::int64_t>(most));
  while (q.next()) {
    shop::Took& t = out.emplace_back();
    q.into(t.open_s, t.frets);
  }
  return out;
}

std::int64_t put(Connection& connection, Images& images, const Stage& s) {
  Query q = connection.query(
      "INSERT INTO job_stage (id, job, kind, sequence, started_at, finished_at, recorded_at, actor, "
      "stopped_at, open_s, frets) VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11) "
      "ON CONFLICT (id) DO UPDATE SET job = excluded.job, "
      "kind = excluded.kind, sequence = excluded.sequence, started_at = excluded.started_at, "
      "finished_at = excluded.finished_at, recorded_at = excluded.recorded_at, actor = excluded.actor, "
      "stopped_at = excluded.stopped_at, open_s = excluded.open_s, frets = excluded.frets");
  q.with(s.id, s.job, s.kind, s.sequence, s.started, s.finished, s.recorded, s.actor, s.stopped, s.open_s,
         s.frets);
  return put_row(connection, images, shop::Thing::stage, s.id, q);
}

} // namespace nutward::store
