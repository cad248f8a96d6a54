// The one file of the client that sees JSON.
#include "cli/answer.hpp"

#include <nlohmann/json.hpp>

namespace nutward::cli {
namespace {

using nlohmann::json;
constexpr int depth_limit = 32;

const json* member(const json& object, const char* name) {
  if (!object.is_object()) return nullptr;
  const auto found = object.find(name);
  return found == object.end() ? nullptr : &*found;
}

std::string text_of(const json& value) {
  if (const auto* text = value.get_ptr<const std::string*>()) return *text;
  return value.is_primitive() && !value.is_null() ? value.dump() : "";
}

std::string text_at(const json& object, const char* name) {
  const auto* value = member(object, name);
  return value != nullptr ? text_of(*value) : "";
}

template <class Take>
void each(const json& object, const char* name, Take take) {
  const auto* list = member(object, name);
  if (list == nullptr || !list->is_array()) return;
  for (const auto& value : *list)
    take(value);
}

std::optional<Table> table_of(const json& document) {
  const auto* value = member(document, "table");
  if (value == nullptr) return std::nullopt;
  Table out;
  each(*value, "columns", [&](const json& name) { out.columns.push_back(text_of(name)); });
  each(*value, "rows", [&](const json& row) {
    std::vector<std::string> cells;
    if (row.is_array())
      for (const auto& cell : row)
        cells.push_back(text_of(cell));
    cells.resize(out.columns.size());
    out.rows.push_back(std::move(cells));
  });
  if (out.columns.empty() || out.rows.empty()) return std::nullopt;
  return out;
}

} // namespace

std::optional<Answer> read_answer(const std::string& text) {
  bool too_deep = false;
  const auto shallow = [&too_deep](int depth, json::parse_event_t, json&) {
    too_deep = too_deep || depth > depth_limit;
    return !too_deep;
  };
  const auto document = json::parse(text, shallow, false);
  if (too_deep || !document.is_object()) return std::nullopt;
  Answer out;
  out.kind = text_at(document, "kind");
  out.text = text_at(document, "text");
  out.reason = text_at(document, "reason");
  out.title = text_at(document, "title");
  out.detail = text_at(document, "detail");
  out.remedy = text_at(document, "remedy");
  out.table = table_of(document);
  each(document, "cautions", [&](const json& value) { out.cautions.push_back(text_of(value)); });
  each(document, "choices", [&](const json& value) { out.choices.push_back(text_at(value, "label")); });
  each(document, "errors", [&](const json& value) {
    out.errors.emplace_back(text_at(value, "pointer"), text_at(value, "detail"));
  });
  if (const auto* data = member(document, "data")) {
    if (const auto* fits = member(*data, "fits")) out.fits = !(fits->is_boolean() && !fits->get<bool>());
    if (const auto* csv = member(*data, "csv")) out.csv = text_of(*csv);
    if (const auto* no = member(*data, "not_allowed")) out.not_allowed = no->is_boolean() && no->get<bool>();
  }
  return out;
}

std::optional<std::string> say_body(const std::string& text, const std::string& conversation) {
  const json body{{"text", text}, {"conversation", conversation}};
  try {
    return body.dump();
  } catch (const json::type_error&) { // not UTF-8
    return std::nullopt;
  }
}

} // namespace nutward::cli
