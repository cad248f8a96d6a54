#include "store/plans.hpp"

namespace nutward::store {

std::optional<shop::StoredPlan> Plans::find(std::string_view kind, std::int64_t subject) const {
  Query q = connection_.query("SELECT kind, subject, digest, made_at, settled, body FROM plan "
                              "WHERE kind = ?1 AND subject = ?2");
  if (!q.with(kind, subject).next()) return std::nullopt;
  shop::StoredPlan out;
  q.into(out.kind, out.subject, out.digest, out.made, out.settled, out.body);
  return out;
}

void Plans::keep(const shop::StoredPlan& p) {
  const std::int64_t before = connection_.changes();
  connection_
      .query("INSERT INTO plan (kind, subject, digest, made_at, settled, body) "
             "VALUES (?1, ?2, ?3, ?4, ?5, ?6) ON CONFLICT (kind, subject) DO UPDATE SET "
             "digest = excluded.digest, made_at = excluded.made_at, settled = excluded.settled, "
             "body = excluded.body")
      .with(p.kind, p.subject, p.digest, p.made, p.settled, p.body)
      .run();
  connection_.discount(before);
}

} // namespace nutward::store
