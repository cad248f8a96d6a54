// The walks of a fit through the tin: seeks in the indexes piece_up, piece_down, piece_pulled,
// piece_nipped and piece_of_lot, which hold all that is returned.
#include "store/tin.hpp"

#include <algorithm>
#include <limits>
#include <span>

namespace nutward::store {

using pieces::Mark;
using pieces::PieceFacts;
using pieces::Walk;

namespace {

// The terms of the partial indexes, as SQLite wants to see them again in a query that uses them.
#define FREE "in_tin = 1 AND withdrawn = 0 AND job IS NULL AND count = 1 AND length_nm IS NOT NULL "
#define FACTS "SELECT id, kind, length_nm, raw_ends, crown_height_nm, lot, added_at, tang_nm FROM piece "
#define CROWN "AND (crown_height_nm IS NULL OR crown_height_nm BETWEEN ?3 AND ?4) "
#define WHOLE "AND tang_nm IS NULL "
#define NIPPED "AND tang_nm IS NOT NULL "

#define USUAL FREE "AND kind <> 'pulled_fret' AND wire = ?1 AND raw_ends = ?2 " CROWN
#define PULLED FREE "AND kind = 'pulled_fret' AND wire = ?1 AND raw_ends = ?2 " CROWN
#define OF_LOT FREE "AND lot = ?9 AND raw_ends = ?2 " CROWN "AND wire = ?1 AND (kind = 'pulled_fret') = ?10 "

// Of the mark's own length, what comes after it.
#define REST "AND length_nm = ?5 AND (added_at, id) > (?6, ?7) ORDER BY added_at, id LIMIT ?8"
#define UP "AND length_nm BETWEEN ?5 AND ?6 ORDER BY length_nm, added_at, id LIMIT ?8"
#define DOWN "AND length_nm BETWEEN ?5 AND ?6 ORDER BY length_nm DESC, added_at, id LIMIT ?8"

struct Statements {
  std::string_view rest, up, down;
};
#define ALONG(RISING, FALLING, WHICH)                                                                        \
  {                                                                                                          \
    FACTS "INDEXED BY " RISING " WHERE " WHICH REST, FACTS "INDEXED BY " RISING " WHERE " WHICH UP,          \
        FACTS "INDEXED BY " FALLING " WHERE " WHICH DOWN                                                     \
  }
// Each in the order of pieces::Tangs.
constexpr Statements usual[]{ALONG("piece_up", "piece_down", USUAL),
                             ALONG("piece_up", "piece_down", USUAL WHOLE),
                             ALONG("piece_nipped", "piece_nipped", USUAL NIPPED)};
constexpr Statements pulled[]{ALONG("piece_pulled", "piece_pulled", PULLED),
                              ALONG("piece_pulled", "piece_pulled", PULLED WHOLE),
                              ALONG("piece_nipped", "piece_nipped", PULLED NIPPED)};
constexpr Statements of_lot[]{ALONG("piece_of_lot", "piece_of_lot", OF_LOT),
                              ALONG("piece_of_lot", "piece_of_lot", OF_LOT WHOLE),
                              ALONG("piece_of_lot", "piece_of_lot", OF_LOT NIPPED)};

#undef FREE
#undef FACTS
#undef CROWN
#undef WHOLE
#undef NIPPED
#undef USUAL
#undef PULLED
#undef OF_LOT
#undef REST
#undef UP
#undef DOWN
#undef ALONG

PieceFacts read(const Query& q) {
  PieceFacts p;
  q.into(p.id, p.kind, p.length, p.raw_ends, p.crown_height, p.lot, p.added, p.tang);
  return p;
}

// Runs one of the statements; x and y are ?5 and ?6, z is ?7.
void run(Connection& c, std::string_view sql, std::int64_t wire, const Walk& w, std::int64_t x,
         std::int64_t y, std::int64_t z, std::size_t at_most, std::vector<PieceFacts>& out) {
  Query q = c.query(sql);
  constexpr std::int64_t highest = std::numeric_limits<std::int64_t>::max();
  q.with(wire, w.raw_ends, w.crown_from ? w.crown_from->nm : 0, w.crown_to ? w.crown_to->nm : highest, x, y);
  if (z >= 0) q.bind(7, z);
  q.bind(8, static_cast<std::int64_t>(at_most - out.size()));
  if (w.lot) {
    q.bind(9, *w.lot);
    q.bind(10, w.pulled);
  }
  while (q.next())
    out.push_back(read(q));
}

} // namespace

std::vector<PieceFacts> walk_free(Connection& connection, std::int64_t wire, const Walk& walk,
                                  const std::optional<Mark>& after, std::size_t at_most) {
  const auto& statements = walk.lot ? of_lot : walk.pulled ? pulled : usual;
  const Statements& sql = std::span(statements)[static_cast<std::size_t>(walk.tangs)];
  std::vector<PieceFacts> out;
  out.reserve(std::min<std::size_t>(at_most, 64));
  std::int64_t low = walk.shortest.nm, high = walk.longest.nm;
  if (after) {
    if (low <= after->length.nm && after->length.nm <= high)
      run(connection, sql.rest, wire, walk, after->length.nm, after->added.s, after->id, at_most, out);
    if (walk.upward)
      low = std::max(low, after->length.nm + 1);
    else
      high = std::min(high, after->length.nm - 1);
  }
  if (out.size() < at_most && low <= high)
    run(connection, walk.upward ? sql.up : sql.down, wire, walk, low, high, -1, at_most, out);
  return out;
}

} // namespace nutward::store
