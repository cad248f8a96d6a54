#include "store/journal_walk.hpp"

#include "store/journal_rows.hpp"

#include <algorithm>

namespace nutward::store {

void JournalWalk::Rows::step() {
  line = query.next() ? query.get<std::int64_t>(0) : none;
}

bool JournalWalk::Rows::at(std::int64_t wanted) {
  while (line < wanted)
    step();
  return line == wanted;
}

JournalWalk::JournalWalk(Connection& c)
    : lines_(c.query("SELECT " LINE_COLUMNS " FROM journal j ORDER BY j.id")),
      touched_{c.query("SELECT line, thing, id FROM journal_touch ORDER BY line")},
      about_{c.query("SELECT line, thing, id, slot, happened_at FROM journal_about ORDER BY line")},
      movements_{c.query("SELECT jm.line, " MOVEMENT_COLUMNS
                         " FROM journal_movement jm CROSS JOIN movement m ON m.id = jm.movement "
                         "ORDER BY jm.line, jm.movement")} {}

bool JournalWalk::next() {
  if (!lines_.next()) return false;
  line_ = line_of(lines_);
  beside_ = {};
  dated_alike_ = true;
  for (; touched_.at(line_.id); touched_.step()) {
    const Query& q = touched_.query;
    line_.touched.push_back({shop::thing_for(q.get<std::string>(1)), q.get<std::int64_t>(2)});
  }
  std::sort(line_.touched.begin(), line_.touched.end());
  for (; about_.at(line_.id); about_.step()) {
    const Query& q = about_.query;
    beside_.about.insert({{shop::thing_for(q.get<std::string>(1)), q.get<std::int64_t>(2)}, q.get<int>(3)});
    dated_alike_ = dated_alike_ && q.get<shop::Instant>(4) == line_.happened;
  }
  for (; movements_.at(line_.id); movements_.step())
    beside_.movements.push_back(movement_text(movements_.query, 1));
  return true;
}

} // namespace nutward::store
