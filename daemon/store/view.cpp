#include "store/view.hpp"

#include <stdexcept>

namespace nutward::store {

std::int64_t revision_of(Connection& connection) {
  Query q = connection.query("SELECT revision FROM shop");
  return q.next() ? q.get<std::int64_t>() : 0;
}

void View::at_snapshot() {
  const std::int64_t revision = revision_of(connection_);
  if (revision == revision_) return;
  wires_.forget();
  tin_.forget();
  jobs_.forget();
  house_.forget();
  machines_.forget();
  purchases_.forget();
  tokens_.forget();
  revision_ = revision;
}

void Tx::fresh() {
  images_.take();
  ledger_.forget();
}

void Tx::drop(shop::Ref ref) {
  if (ref.thing == shop::Thing::piece) {
    const auto piece = tables_.tin.find(ref.id);
    if (piece && piece->in_tin)
      throw std::logic_error("a piece is moved out of the tin before it is dropped");
  }
  images_.hide(ref);
}

void Tx::nested(const std::function<void()>& body) {
  Images::Mark images = images_.mark();
  Ledger::Mark ledger = ledger_.mark();
  const std::int64_t changes = connection_.changes();
  connection_.exec("SAVEPOINT nested");
  try {
    body();
  } catch (...) {
    images_.back_to(std::move(images));
    ledger_.back_to(std::move(ledger));
    connection_.discount(changes);
    // Where SQLite has given up the whole transaction there is no savepoint left to go back to, and write()
    // will say so.
    if (connection_.in_transaction()) connection_.exec("ROLLBACK TO nested; RELEASE nested");
    throw;
  }
  connection_.exec("RELEASE nested");
}

shop::Line Tx::append(shop::Line line) {
  return tables_.journal.append(std::move(line), ledger_.take_for_line(), images_.take_about());
}

} // namespace nutward::store
