#include "store/images.hpp"

#include "store/tin.hpp"

#include <SQLiteCpp/Column.h>
#include <sqlite3.h>

#include <array>
#include <stdexcept>
#include <string>
#include <utility>

namespace nutward::store {

using shop::Change;
using shop::Ref;
using shop::Thing;
using shop::Value;

namespace {

struct Table {
  Thing thing;
  std::string_view select; // the whole row ?1
  std::string_view hide;
};

constexpr std::array<Table, 25> tables{{
    {Thing::actor, "SELECT * FROM actor WHERE id = ?1", "UPDATE actor SET withdrawn = 1 WHERE id = ?1"},
    {Thing::wire, "SELECT * FROM wire WHERE id = ?1", "UPDATE wire SET withdrawn = 1 WHERE id = ?1"},
    {Thing::lot, "SELECT * FROM lot WHERE id = ?1", "UPDATE lot SET withdrawn = 1 WHERE id = ?1"},
    {Thing::piece, "SELECT * FROM piece WHERE id = ?1", "UPDATE piece SET withdrawn = 1 WHERE id = ?1"},
    {Thing::job, "SELECT * FROM job WHERE id = ?1", "UPDATE job SET withdrawn = 1 WHERE id = ?1"},
    {Thing::fret, "SELECT * FROM fret WHERE id = ?1", "UPDATE fret SET withdrawn = 1 WHERE id = ?1"},
    {Thing::stage, "SELECT * FROM job_stage WHERE id = ?1",
     "UPDATE job_stage SET withdrawn = 1 WHERE id = ?1"},
    {Thing::recheck, "SELECT * FROM recheck WHERE id = ?1", "UPDATE recheck SET withdrawn = 1 WHERE id = ?1"},
    {Thing::weekday, "SELECT * FROM weekday WHERE id = ?1", "UPDATE weekday SET withdrawn = 1 WHERE id = ?1"},
    {Thing::special_day, "SELECT * FROM special_day WHERE id = ?1",
     "UPDATE special_day SET withdrawn = 1 WHERE id = ?1"},
    {Thing::receiver, "SELECT * FROM receiver WHERE id = ?1",
     "UPDATE receiver SET withdrawn = 1 WHERE id = ?1"},
    {Thing::setting, "SELECT * FROM setting WHERE id = ?1", "UPDATE setting SET withdrawn = 1 WHERE id = ?1"},
    {Thing::bar, "SELECT * FROM bar WHERE id = ?1", "UPDATE bar SET withdrawn = 1 WHERE id = ?1"},
    {Thing::pressing, "SELECT * FROM pressing WHERE id = ?1",
     "UPDATE pressing SET withdrawn = 1 WHERE id = ?1"},
    {Thing::reading, "SELECT * FROM reading WHERE id = ?1", "UPDATE reading SET withdrawn = 1 WHERE id = ?1"},
    {Thing::looked, "SELECT * FROM looked WHERE id = ?1", "UPDATE looked SET withdrawn = 1 WHERE id = ?1"},
    {Thing::machine, "SELECT * FROM machine WHERE id = ?1", "UPDATE machine SET withdrawn = 1 WHERE id = ?1"},
    {Thing::outage, "SELECT * FROM outage WHERE id = ?1", "UPDATE outage SET withdrawn = 1 WHERE id = ?1"},
    {Thing::booking, "SELECT * FROM booking WHERE id = ?1", "UPDATE booking SET withdrawn = 1 WHERE id = ?1"},
    {Thing::stage_rule, "SELECT * FROM stage_rule WHERE id = ?1",
     "UPDATE stage_rule SET withdrawn = 1 WHERE id = ?1"},
    {Thing::own_hours, "SELECT * FROM own_hours WHERE id = ?1",
     "UPDATE own_hours SET withdrawn = 1 WHERE id = ?1"},
    {Thing::own_day, "SELECT * FROM own_day WHERE id = ?1", "UPDATE own_day SET withdrawn = 1 WHERE id = ?1"},
    {Thing::supplier, "SELECT * FROM supplier WHERE id = ?1",
     "UPDATE supplier SET withdrawn = 1 WHERE id = ?1"},
    {Thing::purchase, "SELECT * FROM purchase WHERE id = ?1",
     "UPDATE purchase SET withdrawn = 1 WHERE id = ?1"},
    {Thing::purchase_line, "SELECT * FROM purchase_line WHERE id = ?1",
     "UPDATE purchase_line SET withdrawn = 1 WHERE id = ?1"},
}};

const Table& table_of(Thing thing) {
  return tables.at(static_cast<std::size_t>(thing));
}

bool follows(Thing thing, std::string_view column) {
  if (column == "id") return true;
  if (thing == Thing::piece)
    return column == "length_nm" || column == "count" || column == "in_tin" || column == "crown_height_nm";
  // What was told cannot be taken back, so that taking back what came before it makes nobody hear it twice.
  if (thing == Thing::recheck) return column == "told" || column == "overdue_told";
  if (thing == Thing::job) return column == "press_told_at";
  return thing == Thing::wire && (column == "on_hand_nm" || column == "low_told_at");
}

// Images reach the journal, which is kept for good and exported. The row keeps what is left out.
bool is_secret(Thing thing, std::string_view column) {
  return thing == Thing::receiver && column == "secret";
}

Value value_of(const SQLite::Column& column) {
  switch (column.getType()) {
  case SQLITE_INTEGER:
    return column.getInt64();
  case SQLITE_FLOAT:
    return column.getDouble();
  case SQLITE_NULL:
    return std::monostate{};
  default:
    return column.getString();
  }
}

void bind(Query& q, int at, const Value& value) {
  if (const auto* whole = std::get_if<std::int64_t>(&value))
    q.bind(at, *whole);
  else if (const auto* real = std::get_if<double>(&value))
    q.bind(at, *real);
  else if (const auto* text = std::get_if<std::string>(&value))
    q.bind(at, *text);
  else if (std::holds_alternative<std::monostate>(value))
    q.bind_null(at);
  else
    throw std::logic_error("an image holds what no column holds");
}

// Every column that the image has, in one statement, since CHECKs tie some of them together. The names are
// those of the table's own columns, never the image's.
std::string restore(Query& row, const Table& table, Thing thing, const shop::Node& was,
                    std::vector<const Value*>& out) {
  std::string sql(table.hide.substr(0, table.hide.find("withdrawn")));
  for (int i = 0; i < row.raw().getColumnCount(); ++i) {
    const std::string column = row.raw().getColumnName(i);
    const Value* value = was.find(column);
    if (value == nullptr || follows(thing, column)) continue;
    out.push_back(value);
    sql += (out.size() > 1 ? ", " : "") + column + " = ?" + std::to_string(out.size() + 1);
  }
  return sql + " WHERE id = ?1";
}

} // namespace

Value Images::now(Ref ref) const {
  Query q = connection_.query(table_of(ref.thing).select);
  if (!q.with(ref.id).next()) return {};
  std::vector<std::pair<std::string, Value>> fields;
  for (int i = 0; i < q.raw().getColumnCount(); ++i) {
    const SQLite::Column column = q.raw().getColumn(i);
    if (!is_secret(ref.thing, column.getName())) fields.emplace_back(column.getName(), value_of(column));
  }
  return shop::record(std::move(fields));
}

bool Images::note(Ref ref) {
  Value image = now(ref);
  const auto* row = std::get_if<std::shared_ptr<const shop::Node>>(&image);
  if (row == nullptr) return false;
  const Value* withdrawn = (*row)->find("withdrawn");
  const bool hidden = withdrawn != nullptr && *withdrawn == Value{std::int64_t{1}};
  if (noted_.insert(ref).second) changes_.push_back({ref, std::move(image)});
  return !hidden;
}

void Images::made(Ref ref) {
  if (noted_.insert(ref).second) changes_.push_back({ref, std::monostate{}});
}

void Images::hide(Ref ref) {
  if (note(ref)) connection_.query(table_of(ref.thing).hide).with(ref.id).run();
}

std::vector<Change> Images::take() {
  noted_.clear();
  about_.clear();
  for (const Change& change : changes_) {
    add_about(change.ref, change.was, about_);
    add_about(change.ref, now(change.ref), about_);
  }
  return std::exchange(changes_, {});
}

void Images::back_to(Mark mark) {
  changes_ = std::move(mark.changes);
  noted_ = std::move(mark.noted);
}

void Images::put_back(const Change& change) {
  const Table& table = table_of(change.ref.thing);
  note(change.ref);
  const auto* was = std::get_if<std::shared_ptr<const shop::Node>>(&change.was);
  if (was == nullptr) {
    connection_.query(table.hide).with(change.ref.id).run();
    return;
  }
  std::vector<const Value*> values;
  std::string sql;
  {
    Query row = connection_.query(table.select);
    sql = restore(row, table, change.ref.thing, **was, values);
  }
  Query q = connection_.query(*restores_.insert(std::move(sql)).first);
  q.bind(1, change.ref.id);
  for (std::size_t i = 0; i < values.size(); ++i)
    bind(q, static_cast<int>(i) + 2, *values[i]);
  q.run();
  if (change.ref.thing == Thing::piece || change.ref.thing == Thing::lot)
    renew_crowns(connection_, change.ref);
}

} // namespace nutward::store
