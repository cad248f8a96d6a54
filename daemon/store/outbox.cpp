#include "store/outbox.hpp"

#include <algorithm>

namespace nutward::store {

using shop::OutboxEntry;
using units::Instant;

namespace {
#define RECEIVING                                                                                            \
  "JOIN receiver r ON r.id = o.receiver AND r.disabled = 0 AND r.withdrawn = 0 WHERE o.delivered = 0 "
// A wait or a lease that ends later than this from now was set by a clock that ran ahead.
constexpr std::chrono::hours longer_than_any_wait{48};
} // namespace

std::vector<OutboxEntry> Outbox::due(Instant now, std::size_t most) const {
  std::vector<OutboxEntry> out;
  Query q = connection_.query(
      "SELECT o.id, o.receiver, o.sequence, o.message_id, o.cause, o.type, o.text, o.data, o.happened_at, "
      "o.not_before_at, o.attempts, o.late FROM outbox o " RECEIVING
      "AND (o.not_before_at <= ?1 OR (o.not_before_at > ?3 AND o.attempts > 0 AND o.happened_at <= ?1)) "
      "AND (o.lease_at IS NULL OR o.lease_at <= ?1 OR o.lease_at > ?3) "
      "ORDER BY o.not_before_at, o.id LIMIT ?2");
  q.with(now, static_cast<std::int64_t>(most), now + longer_than_any_wait);
  while (q.next()) {
    OutboxEntry& e = out.emplace_back();
    q.into(e.id, e.receiver, e.sequence, e.message_id, e.cause, e.type, e.text, e.data, e.happened,
           e.not_before, e.attempts, e.late);
  }
  return out;
}

std::optional<Instant> Outbox::next() const {
  Query q = connection_.query(
      "SELECT min(CASE WHEN o.lease_at > o.not_before_at THEN o.lease_at ELSE o.not_before_at END) "
      "FROM outbox o " RECEIVING "AND o.not_before_at IS NOT NULL");
  q.next();
  return q.get<std::optional<Instant>>();
}

std::int64_t Outbox::undelivered(std::int64_t receiver) const {
  Query q = connection_.query("SELECT count(*) FROM outbox WHERE receiver = ?1 AND delivered = 0");
  return q.with(receiver).next() ? q.get<std::int64_t>() : 0;
}

#undef RECEIVING

void Outbox::enqueue(const OutboxEntry& e) {
  connection_
      .query("INSERT INTO outbox (receiver, sequence, message_id, cause, type, text, data, happened_at, "
             "not_before_at, "
             "attempts, late) SELECT ?1, 1 + COALESCE((SELECT max(sequence) FROM outbox WHERE receiver = "
             "?1), 0), ?2, ?3, "
             "?4, ?5, ?6, ?7, ?8, ?9, ?10 WHERE NOT EXISTS (SELECT 1 FROM outbox WHERE receiver = ?1 AND "
             "cause = ?3)")
      .with(e.receiver, e.message_id, e.cause, e.type, e.text, e.data, e.happened, e.not_before, e.attempts,
            e.late)
      .run();
}

void Outbox::settle(std::int64_t entry, bool delivered, std::optional<Instant> not_before,
                    bool receiver_failing, bool receiver_disabled) {
  connection_
      .query("UPDATE outbox SET attempts = attempts + 1, delivered = ?2, lease_at = NULL, "
             "not_before_at = CASE WHEN ?2 THEN not_before_at ELSE ?3 END WHERE id = ?1")
      .with(entry, delivered, not_before)
      .run();
  connection_
      .query("UPDATE receiver SET failing = ?2, disabled = ?3 WHERE id = (SELECT receiver FROM outbox WHERE "
             "id = ?1) "
             "AND (failing <> ?2 OR disabled <> ?3)")
      .with(entry, receiver_failing, receiver_disabled)
      .run();
}

void Outbox::lease(std::int64_t entry, Instant until) {
  connection_.query("UPDATE outbox SET lease_at = ?2 WHERE id = ?1").with(entry, until).run();
}

} // namespace nutward::store
