// Binding: from a call as it was said or sent to arguments of the kinds that the row declares, checked and
// resolved.
//
// A raw argument may be of its final type already, or a number in the unit of its JSON field, or a text:
//   quantity   "52.4 mm", "2 1/16 in", "400 lb"; a bare number in a text means the shop's unit
//   day, at    "2026-12-12", RFC 3339
//   wire       its id or name, or any part of the name that only one wire has
//   job        its id ("12"), or words that only one open job's owner, instrument or note has
//   piece      its id, or a record {length_mm, wire} / a text "52.4 of medium": a piece of the tin within 0.5
//   mm; of equal
//              ones any, a held one last; unequal ones are asked about
//   person     their id or name, or any part of the name that only one person has
//   machine    its id or name, in the singular or plural, or any part of the name that only one has
//   receiver   its id or name
//   yes        true, "true", "yes" …
// Anything else is refused with Problem{value}; two meanings with Problem{ambiguous} whose choices are the
// same call with the argument made plain.
#pragma once

#include "shop/row.hpp"
#include "shop/store.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// The arguments of one call by parameter name. A getter without `opt` wants a required parameter; asking for
// one that the row does not declare, or by the wrong type, is a fault of the program and throws
// std::logic_error.
class Args {
public:
  Args(const Row& row, Call bound) : row_(&row), call_(std::move(bound)) {}

  bool has(std::string_view name) const { return call_.find(name) != nullptr; }
  template <class T>
  T get(std::string_view name) const {
    auto v = opt<T>(name);
    if (!v) fail(name);
    return *v;
  }
  template <class T>
  std::optional<T> opt(std::string_view name) const {
    const Value* v = call_.find(name);
    if (v == nullptr) return std::nullopt;
    if (const T* t = std::get_if<T>(v)) return *t;
    fail(name);
  }
  template <class T>
  T or_else(std::string_view name, T other) const {
    auto v = opt<T>(name);
    return v ? *v : other;
  }
  std::int64_t id(std::string_view name) const { return get<Ref>(name).id; }
  std::optional<std::int64_t> opt_id(std::string_view name) const;
  bool yes(std::string_view name) const { return or_else<bool>(name, false); }
  std::string text(std::string_view name) const { return or_else<std::string>(name, ""); }
  // A parameter with `many`, or a single value as a list of one; empty where it was not given.
  template <class T>
  std::vector<T> many(std::string_view name) const {
    std::vector<T> out;
    for (const Value& v : values(name)) {
      const T* t = std::get_if<T>(&v);
      if (t == nullptr) fail(name);
      out.push_back(*t);
    }
    return out;
  }
  std::vector<int> slots(std::string_view name) const; // ascending, each once
  const Call& call() const { return call_; }
  const Row& row() const { return *row_; }

private:
  [[noreturn]] void fail(std::string_view name) const;
  std::vector<Value> values(std::string_view name) const;
  const Row* row_;
  Call call_;
};

// `with_required`: false binds what is there and leaves it to the caller to ask for the rest.
Args bind(const Row& row, const Call& call, const View& view, bool with_required = true);

// One argument, as bind does it; throws Problem as above, `where` being the parameter's field.
Value bind_value(const Param& param, const Value& raw, const View& view);

} // namespace nutward::shop
