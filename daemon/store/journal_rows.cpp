#include "store/journal_rows.hpp"

namespace nutward::store {

shop::Line line_of(const Query& q) {
  shop::Line l;
  q.into(l.id, l.group, l.sequence, l.recorded, l.happened, l.actor, l.via, l.said, l.call, l.answer,
         l.inverse, l.undoes, l.hash);
  return l;
}

std::string movement_text(const Query& q, int first) {
  constexpr int columns = 13;
  std::string out;
  for (int column = 0; column < columns; ++column) {
    if (column > 0) out += ' ';
    out += q.get<std::optional<std::string>>(first + column).value_or("-");
  }
  return out;
}

} // namespace nutward::store
