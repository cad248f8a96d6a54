#include "shop/value.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>

namespace nutward::shop {

namespace {
constexpr std::array<std::string_view, 25> words{
    "actor",   "wire",     "lot",         "piece",        "job",     "fret",       "stage",
    "recheck", "weekday",  "special_day", "receiver",     "setting", "bar",        "pressing",
    "reading", "looked",   "machine",     "outage",       "booking", "stage_rule", "own_hours",
    "own_day", "supplier", "purchase",    "purchase_line"};
}

std::string_view word_for(Thing thing) {
  return words.at(static_cast<std::size_t>(thing));
}

Thing thing_for(std::string_view word) {
  const auto* at = std::find(words.begin(), words.end(), word);
  if (at == words.end()) throw std::out_of_range("no kind of thing is called '" + std::string(word) + "'");
  return static_cast<Thing>(at - words.begin());
}

const Value* Node::find(std::string_view name) const {
  auto at = std::find_if(fields.begin(), fields.end(), [&](const auto& f) { return f.first == name; });
  return at == fields.end() ? nullptr : &at->second;
}

Value record(std::vector<std::pair<std::string, Value>> fields) {
  auto node = std::make_shared<Node>();
  node->fields = std::move(fields);
  return Value{std::shared_ptr<const Node>{std::move(node)}};
}

Value list(std::vector<Value> items) {
  auto node = std::make_shared<Node>();
  node->is_list = true;
  node->items = std::move(items);
  return Value{std::shared_ptr<const Node>{std::move(node)}};
}

} // namespace nutward::shop
