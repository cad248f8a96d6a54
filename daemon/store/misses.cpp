#include "store/misses.hpp"

namespace nutward::store {

std::vector<shop::Missed> Misses::since(units::Instant from, std::size_t most) const {
  Query q = connection_.query("SELECT text, actor, first_at, last_at, times FROM not_understood "
                              "WHERE last_at >= ?1 ORDER BY last_at DESC, rowid DESC LIMIT ?2");
  q.with(from, static_cast<std::int64_t>(most));
  std::vector<shop::Missed> out;
  while (q.next()) {
    shop::Missed& m = out.emplace_back();
    q.into(m.text, m.actor, m.first, m.last, m.times);
  }
  return out;
}

std::int64_t Misses::count() const {
  Query q = connection_.query("SELECT COUNT(*) FROM not_understood");
  return q.next() ? q.get<std::int64_t>() : 0;
}

void Misses::keep(const shop::Missed& m, std::string_view alike, std::size_t most) {
  const std::int64_t before = connection_.changes();
  connection_
      .query("INSERT INTO not_understood (alike, text, actor, first_at, last_at, times) "
             "VALUES (?1, ?2, ?3, ?4, ?5, ?6) ON CONFLICT (alike) DO UPDATE SET "
             "text = excluded.text, actor = excluded.actor, last_at = excluded.last_at, "
             "times = times + excluded.times")
      .with(alike, m.text, m.actor, m.first, m.last, m.times)
      .run();
  if (count() > static_cast<std::int64_t>(most)) {
    connection_
        .query("DELETE FROM not_understood WHERE rowid NOT IN "
               "(SELECT rowid FROM not_understood ORDER BY last_at DESC, rowid DESC LIMIT ?1)")
        .with(static_cast<std::int64_t>(most))
        .run();
  }
  connection_.discount(before);
}

std::int64_t Misses::forget() {
  const std::int64_t before = connection_.changes(), there = count();
  connection_.query("DELETE FROM not_understood").run();
  connection_.discount(before);
  return there;
}

} // namespace nutward::store
