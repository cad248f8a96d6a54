#include "store/tokens.hpp"

namespace nutward::store {

std::vector<shop::Token> Tokens::good() const {
  std::vector<shop::Token> out;
  Query q = connection_.query("SELECT id, name, actor, role, digest, made_at, made_by FROM token "
                              "WHERE withdrawn_at IS NULL ORDER BY id");
  while (q.next()) {
    shop::Token& t = out.emplace_back();
    RoleWord role{};
    q.into(t.id, t.name, t.actor, role, t.digest, t.made, t.made_by);
    t.role = static_cast<int>(role);
  }
  return out;
}

std::int64_t Tokens::grant(const shop::Token& t) {
  if (t.role < 0 || t.role > 2) throw std::logic_error("a token's role is 0, 1 or 2");
  {
    Query taken = connection_.query("SELECT 1 FROM token WHERE name = ?1 AND withdrawn_at IS NULL");
    if (taken.with(t.name).next()) throw std::logic_error("a good token has that name");
  }
  connection_
      .query(
          "INSERT INTO token (name, actor, role, digest, made_at, made_by) VALUES (?1, ?2, ?3, ?4, ?5, ?6)")
      .with(t.name, t.actor, static_cast<RoleWord>(t.role), t.digest, t.made, t.made_by)
      .run();
  return connection_.last_id();
}

void Tokens::withdraw(std::int64_t token, units::Instant now, std::int64_t by) {
  connection_
      .query("UPDATE token SET withdrawn_at = ?2, withdrawn_by = ?3 WHERE id = ?1 AND withdrawn_at IS NULL")
      .with(token, now, by)
      .run();
}

} // namespace nutward::store
