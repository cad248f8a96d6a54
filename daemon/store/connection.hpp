// One connection to the database, its statements kept prepared. Used by one thread at a time.
//
// Everything that SQLite refuses leaves here as shop::Problem: no_room for a full disk, busy, else broken.
#pragma once

#include "shop/answer.hpp"
#include "store/words.hpp"
#include "units/force.hpp"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>

namespace nutward::store {

class Connection;

// A statement in use: bind, then step through the rows. Goes back to its connection when it goes out of
// scope.
class Query {
public:
  Query(Connection& connection, std::string_view sql, std::unique_ptr<SQLite::Statement> statement)
      : connection_(connection), sql_(sql), statement_(std::move(statement)) {}
  Query(const Query&) = delete;
  Query& operator=(const Query&) = delete;
  ~Query();

  // Parameters ?1, ?2 … in order.
  template <class... T>
  Query& with(const T&... values) {
    int at = 0;
    (bind(++at, values), ...);
    return *this;
  }
  bool next(); // true: a row is there
  void run();  // to the end, leaving rows unread
  // The columns of the row in order.
  template <class... T>
  void into(T&... values) const {
    int at = 0;
    ((values = read<T>(at++)), ...);
  }
  template <class T>
  T get(int column = 0) const {
    return read<T>(column);
  }
  SQLite::Statement& raw() { return *statement_; }

  void bind(int at, std::int64_t value) {
    check([&] { statement_->bind(at, value); });
  }
  void bind(int at, int value) { bind(at, std::int64_t{value}); }
  void bind(int at, bool value) { bind(at, std::int64_t{value}); }
  void bind(int at, double value) {
    check([&] { statement_->bind(at, value); });
  }
  void bind(int at, const std::string& value) {
    check([&] { statement_->bind(at, value); });
  }
  void bind(int at, std::string_view value) { bind(at, std::string(value)); }
  void bind(int at, const char* value) { bind(at, std::string(value)); }
  void bind(int at, units::Length value) { bind(at, value.nm); }
  void bind(int at, units::Money value) { bind(at, value.minor); }
  void bind(int at, units::Mass value) { bind(at, value.mg); }
  void bind(int at, units::Force value) { bind(at, value.n); }
  void bind(int at, units::Instant value) { bind(at, value.s); }
  void bind(int at, units::Day value) { bind(at, std::int64_t{value.days}); }
  void bind_null(int at) {
    check([&] { statement_->bind(at); });
  }
  template <class E>
  requires std::is_enum_v<E>
  void bind(int at, E value) { bind(at, word(value)); }
  template <class T>
  void bind(int at, const std::optional<T>& value) {
    if (value)
      bind(at, *value);
    else
      bind_null(at);
  }

private:
  template <class F>
  void check(F&& f) {
    try {
      f();
    } catch (const SQLite::Exception& e) {
      refuse(e);
    }
  }
  [[noreturn]] void refuse(const SQLite::Exception& e);
  std::int64_t integer(int column) const { return statement_->getColumn(column).getInt64(); }
  std::size_t index_of(std::string_view text, std::span<const std::string_view> words) const;

  template <class T>
  struct IsOptional : std::false_type {};
  template <class T>
  struct IsOptional<std::optional<T>> : std::true_type {};
  template <class T>
  T read(int column) const {
    if constexpr (IsOptional<T>::value) {
      if (statement_->isColumnNull(column)) return std::nullopt;
      return read<typename T::value_type>(column);
    } else if constexpr (std::is_same_v<T, std::string>)
      return statement_->getColumn(column).getString();
    else if constexpr (std::is_same_v<T, double>)
      return statement_->getColumn(column).getDouble();
    else if constexpr (std::is_same_v<T, bool>)
      return integer(column) != 0;
    else if constexpr (std::is_same_v<T, units::Force>)
      return {statement_->getColumn(column).getDouble()};
    else if constexpr (std::is_same_v<T, units::Day>)
      return {static_cast<std::int32_t>(integer(column))};
    else if constexpr (std::is_enum_v<T>)
      return static_cast<T>(index_of(statement_->getColumn(column).getText(), Words<T>::all));
    else if constexpr (std::is_integral_v<T>)
      return static_cast<T>(integer(column));
    else
      return T{integer(column)}; // Length, Money, Mass, Instant
  }

  Connection& connection_;
  std::string_view sql_;
  std::unique_ptr<SQLite::Statement> statement_;
};

class Connection {
public:
  enum class Use { reading, writing };
  // The file must be there. A reading connection refuses every change. Throws Problem.
  Connection(const std::string& file, Use use);
  ~Connection();

  // `sql` must outlive the connection: a literal. The same one may be in use twice at once.
  Query query(std::string_view sql);
  void exec(const char* sql); // without parameters or rows

  void begin();  // DEFERRED for reading, IMMEDIATE for writing
  void commit(); // throws, and rolls back, where it could not be done
  void rollback() noexcept;
  bool in_transaction() const;
  // SQLite gives up a whole transaction by itself on some errors, a full disk among them. From then on every
  // query of the connection throws that error again until begin(), so that nothing can be written outside a
  // transaction.
  std::int64_t last_id() const { return db_.getLastInsertRowid(); }
  // Rows changed since the connection was opened. SQLite counts those of a savepoint that was rolled back
  // too: discount() takes off what has come on top of an earlier count.
  std::int64_t changes() const { return db_.getTotalChanges() - undone_; }
  void discount(std::int64_t since) { undone_ += changes() - since; }
  SQLite::Database& raw() { return db_; }

  [[noreturn]] void refuse(int code, const std::string& message);

private:
  friend class Query;
  void give_back(std::string_view sql, std::unique_ptr<SQLite::Statement> statement) noexcept;
  SQLite::Database db_;
  Use use_;
  bool begun_ = false;
  std::int64_t undone_ = 0;
  std::optional<shop::Problem> lost_;
  // By the address of their text, which is quicker than by all of it.
  struct Address {
    std::size_t operator()(std::string_view sql) const { return std::hash<const void*>{}(sql.data()); }
  };
  std::unordered_map<std::string_view, std::unique_ptr<SQLite::Statement>, Address> idle_;
};

shop::Problem problem_for(int code, const std::string& message);

} // namespace nutward::store
