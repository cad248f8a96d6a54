// Values: what questions and commands take and give. There is no JSON type inside the program; shop/codec
// turns these into JSON and back at its edges.
#pragma once

#include "units/force.hpp"
#include "units/instant.hpp"
#include "units/length.hpp"
#include "units/mass.hpp"
#include "units/money.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace nutward::shop {

// The kinds of thing that the shop keeps. The words of `word_for` reach the disk and the wire: never change
// or reuse one.
enum class Thing : std::uint8_t {
  actor,
  wire,
  lot,
  piece,
  job,
  fret,
  stage,
  recheck,
  weekday,
  special_day,
  receiver,
  setting,
  bar,
  pressing,
  reading,
  looked,
  machine,
  outage,
  booking,
  stage_rule,
  own_hours,
  own_day,
  supplier,
  purchase,
  purchase_line,
};

std::string_view word_for(Thing thing);
// Throws std::out_of_range for a word that `word_for` never gives.
Thing thing_for(std::string_view word);

// One thing of the shop. Ids are positive, come from the store, and are never used twice within a kind.
struct Ref {
  Thing thing{};
  std::int64_t id = 0;

  friend constexpr auto operator<=>(const Ref&, const Ref&) = default;
};

struct Node;

using Value =
    std::variant<std::monostate, bool, std::int64_t, double, std::string, units::Length, units::Force,
                 units::Mass, units::Money, units::Instant, units::Day, Ref, std::shared_ptr<const Node>>;

// A record (names, in the order given) or a list (no names). Shared and never changed once built.
struct Node {
  bool is_list = false;
  std::vector<std::pair<std::string, Value>> fields; // of a record
  std::vector<Value> items;                          // of a list

  // The field's value, or nullptr where a record has none of that name.
  const Value* find(std::string_view name) const;
};

Value record(std::vector<std::pair<std::string, Value>> fields);
Value list(std::vector<Value> items);

} // namespace nutward::shop
