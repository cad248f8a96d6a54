#include "store/verify.hpp"

#include "store/chain.hpp"
#include "store/drawn.hpp"
#include "store/journal_walk.hpp"

#include <fmt/core.h>

namespace nutward::store {

namespace {

// A statement that gives one text a row: what is wrong with what.
void each(Connection& c, std::string_view sql, std::vector<Finding>& out) {
  Query q = c.query(sql);
  while (q.next())
    out.push_back({q.get<std::string>(0), q.get<std::string>(1)});
}

void check_file(Connection& c, std::vector<Finding>& out) {
  Query pages = c.query("PRAGMA integrity_check");
  while (pages.next())
    if (const auto text = pages.get<std::string>(); text != "ok")
      out.push_back({"database", "SQLite's own check says: " + text + "."});
  Query keys = c.query("PRAGMA foreign_key_check");
  while (keys.next())
    out.push_back({"table " + keys.get<std::string>(0),
                   fmt::format("Row {} names something in {} that is not there.", keys.get<std::int64_t>(1),
                               keys.get<std::string>(2))});
}

void check_line(const JournalWalk& walk, std::string_view before, std::vector<Finding>& out) {
  const shop::Line& line = walk.line();
  const std::string where = fmt::format("journal line {}", line.id);
  if (sha256(canonical(before, line, walk.beside())) != line.hash)
    out.push_back({where, "Its hash does not follow from what it says and from the line before it."});
  else if (!walk.dated_alike())
    out.push_back({where, "It stands at another time in the histories than it happened."});
}

// Line ids count up from 1 without a gap, since lines are only added and an id that was rolled back is used
// again.
void check_chain(Connection& c, std::vector<Finding>& out) {
  std::string before(first_hash);
  std::int64_t expected = 1;
  for (JournalWalk walk(c); walk.next();) {
    const std::int64_t id = walk.line().id;
    if (id != expected)
      out.push_back(
          {fmt::format("journal line {}", id), fmt::format("Line {} was expected here.", expected)});
    check_line(walk, before, out);
    before = walk.line().hash;
    expected = id + 1;
  }
  Query head = c.query("SELECT last_line, last_hash FROM shop");
  if (!head.next()) return out.push_back({"table shop", "Its one row is missing."});
  if (head.get<std::int64_t>(0) != expected - 1 || head.get<std::string>(1) != before)
    out.push_back({"journal", fmt::format("It ends at line {}, but line {} was the last one written.",
                                          expected - 1, head.get<std::int64_t>(0))});
}

void check_followers(Connection& c, std::vector<Finding>& out) {
  each(
      c,
      "SELECT 'piece ' || p.id, 'Its length, count or whether it is in the tin do not follow from its "
      "movements.' "
      "FROM piece p LEFT JOIN (SELECT piece, "
      "SUM(CASE WHEN to_place = 'tin' THEN length_nm WHEN from_place = 'tin' THEN -length_nm ELSE 0 END) AS "
      "length, "
      "SUM(CASE WHEN to_place = 'tin' THEN pieces WHEN from_place = 'tin' THEN -pieces ELSE 0 END) AS pieces "
      "FROM movement WHERE piece IS NOT NULL GROUP BY piece) m ON m.piece = p.id "
      "WHERE p.length_nm IS NOT CASE WHEN m.length > 0 AND m.pieces > 0 THEN m.length END "
      "OR p.count <> CASE WHEN m.pieces > 0 THEN m.pieces ELSE 0 END OR p.in_tin <> (COALESCE(m.pieces, 0) > "
      "0)",
      out);
  each(c,
       "SELECT 'piece ' || p.id, 'It is gone from the tin, but the ledger has a length of it left there.' "
       "FROM piece p "
       "WHERE p.in_tin = 0 AND 0 <> (SELECT COALESCE(SUM(CASE WHEN to_place = 'tin' THEN length_nm WHEN "
       "from_place = 'tin' "
       "THEN -length_nm ELSE 0 END), 0) FROM movement m WHERE m.piece = p.id)",
       out);
  each(c,
       "SELECT 'piece ' || p.id, 'It is in the tin, but out of sight.' FROM piece p WHERE p.in_tin = 1 AND "
       "p.withdrawn = 1",
       out);
  each(c,
       "SELECT 'piece ' || p.id, 'Its crown height is not that of its lot.' FROM piece p LEFT JOIN lot l ON "
       "l.id = p.lot "
       "WHERE p.crown_height_nm IS NOT l.crown_height_nm",
       out);
  each(c,
       "SELECT 'wire ' || w.id, 'What is on hand does not follow from its movements.' FROM wire w WHERE "
       "w.on_hand_nm <> "
       "(SELECT COALESCE(SUM(CASE WHEN to_place = 'stock' THEN length_nm WHEN from_place = 'stock' THEN "
       "-length_nm ELSE 0 "
       "END), 0) FROM movement m WHERE m.wire = w.id)",
       out);
  each(c, wrong_drawn(), out);
}

} // namespace

namespace {

template <class Check>
std::vector<Finding> found(Check&& check) {
  std::vector<Finding> out;
  try {
    check(out);
  } catch (const shop::Problem& problem) {
    out.push_back({"database", problem.text});
  } catch (const std::exception& e) {
    out.push_back({"database", fmt::format("Something in it cannot be read: {}.", e.what())});
  }
  return out;
}

} // namespace

std::vector<Finding> verify_file(Connection& connection) {
  return found([&](auto& out) { check_file(connection, out); });
}

std::vector<Finding> verify_contents(Connection& connection) {
  auto out = found([&](auto& all) { check_chain(connection, all); });
  const auto more = found([&](auto& all) { check_followers(connection, all); });
  out.insert(out.end(), more.begin(), more.end());
  return out;
}

} // namespace nutward::store
