// What every put does around its own statement.
#pragma once

#include "store/images.hpp"

#include <optional>
#include <stdexcept>
#include <string>

namespace nutward::store {

// Runs `upsert`, a statement whose ?1 is the id (0 for a new row), and keeps how the row was. `id` not 0: it
// must be there and in sight, else std::logic_error, since only the program itself can name an id that was
// never found.
inline std::int64_t put_row(Connection& connection, Images& images, shop::Thing thing, std::int64_t id,
                            Query& upsert) {
  if (id != 0 && !images.note({thing, id}))
    throw std::logic_error("there is no " + std::string(shop::word_for(thing)) + " " + std::to_string(id) +
                           " to replace");
  upsert.run();
  if (id != 0) return id;
  const std::int64_t made = connection.last_id();
  images.made({thing, made});
  return made;
}

// The id of the row that `select` finds by these keys, in sight or not; nullopt: none.
template <class... Key>
std::optional<std::int64_t> key_of(Connection& connection, const char* select, const Key&... keys) {
  Query q = connection.query(select);
  if (!q.with(keys...).next()) return std::nullopt;
  return q.get<std::int64_t>();
}

// A row that something else than its id decides: `id` is that of the row there, in sight or not, or nothing.
inline std::int64_t put_keyed(Connection& connection, Images& images, shop::Thing thing,
                              std::optional<std::int64_t> id, Query& upsert) {
  if (id) images.note({thing, *id});
  upsert.run();
  if (id) return *id;
  const std::int64_t made = connection.last_id();
  images.made({thing, made});
  return made;
}

} // namespace nutward::store
