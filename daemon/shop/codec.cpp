#include "shop/codec.hpp"
#include "shop/json_text.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <set>

namespace nutward::shop {

namespace {

using units::Length;

using nlohmann::ordered_json;

constexpr std::size_t most_bytes = 256 * 1024;
constexpr int most_levels = 32;

// Typed form, for what must come back as the type it was: {"nm":52400000}, {"thing":"piece","id":41}; null,
// bool, numbers and texts stand for themselves.
ordered_json keep(const Value& v) {
  if (const auto* l = std::get_if<Length>(&v)) return {{"nm", l->nm}};
  if (const auto* f = std::get_if<units::Force>(&v)) return {{"n", f->n}};
  if (const auto* m = std::get_if<units::Mass>(&v)) return {{"mg", m->mg}};
  if (const auto* m = std::get_if<units::Money>(&v)) return {{"minor", m->minor}};
  if (const auto* t = std::get_if<units::Instant>(&v)) return {{"at", t->s}};
  if (const auto* d = std::get_if<units::Day>(&v)) return {{"day", d->days}};
  if (const auto* node = std::get_if<std::shared_ptr<const Node>>(&v)) {
    if ((*node)->is_list) {
      auto out = ordered_json::array();
      for (const Value& item : (*node)->items)
        out.push_back(keep(item));
      return out;
    }
    auto inner = ordered_json::object();
    for (const auto& [name, value] : (*node)->fields)
      inner[name] = keep(value);
    return {{"record", std::move(inner)}};
  }
  if (const auto* r = std::get_if<Ref>(&v)) return {{"thing", word_for(r->thing)}, {"id", r->id}};
  if (const auto* b = std::get_if<bool>(&v)) return *b;
  if (const auto* i = std::get_if<std::int64_t>(&v)) return *i;
  if (const auto* d = std::get_if<double>(&v)) return *d;
  if (const auto* t = std::get_if<std::string>(&v)) return *t;
  return nullptr;
}

Value unkeep(const ordered_json& j) {
  if (j.is_null()) return {};
  if (j.is_boolean()) return j.get<bool>();
  if (j.is_number_integer()) return j.get<std::int64_t>();
  if (j.is_number()) return j.get<double>();
  if (j.is_string()) return j.get<std::string>();
  if (j.is_array()) {
    std::vector<Value> items;
    for (const auto& item : j)
      items.push_back(unkeep(item));
    return list(std::move(items));
  }
  if (j.contains("nm")) return Length{j.at("nm").get<std::int64_t>()};
  if (j.contains("n")) return units::Force{j.at("n").get<double>()};
  if (j.contains("mg")) return units::Mass{j.at("mg").get<std::int64_t>()};
  if (j.contains("minor")) return units::Money{j.at("minor").get<std::int64_t>()};
  if (j.contains("at")) return units::Instant{j.at("at").get<std::int64_t>()};
  if (j.contains("day")) return units::Day{j.at("day").get<std::int32_t>()};
  if (j.contains("thing"))
    return Ref{thing_for(j.at("thing").get<std::string>()), j.at("id").get<std::int64_t>()};
  std::vector<std::pair<std::string, Value>> fields;
  for (const auto& [name, value] : j.at("record").items())
    fields.emplace_back(name, unkeep(value));
  return record(std::move(fields));
}

ordered_json kept_call(const Call& call) {
  auto with = ordered_json::object();
  for (const auto& [name, value] : call.args)
    with[name] = keep(value);
  return {{"do", call.row}, {"with", std::move(with)}};
}

std::string dumped(const ordered_json& j) {
  return j.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

[[noreturn]] void refuse(std::string what, std::string where, std::string would_do) {
  throw Problem(Fault::value, std::move(what), std::move(where), std::move(would_do));
}

// Before the library sees a text: it recurses on nesting when it copies and prints.
void check_shape(std::string_view text) {
  if (text.size() > most_bytes) refuse("The text is longer than 256 KiB.", "/", "Send less at once.");
  int depth = 0;
  bool in_text = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (in_text) {
      if (c == '\\')
        ++i;
      else if (c == '"')
        in_text = false;
    } else if (c == '"') {
      in_text = true;
    } else if (c == '{' || c == '[') {
      if (++depth > most_levels) refuse("The JSON is nested deeper than 32 levels.", "/", "Send it flatter.");
    } else if (c == '}' || c == ']') {
      --depth;
    }
  }
}

// Refuses a name that stands twice in one object: which of the two was meant?
ordered_json parse(std::string_view text) {
  check_shape(text);
  std::vector<std::set<std::string>> names;
  std::string twice;
  auto watch = [&](int, ordered_json::parse_event_t event, ordered_json& parsed) {
    if (event == ordered_json::parse_event_t::object_start) names.emplace_back();
    if (event == ordered_json::parse_event_t::object_end) names.pop_back();
    if (event == ordered_json::parse_event_t::key && !names.back().insert(parsed.get<std::string>()).second) {
      twice = parsed.get<std::string>();
    }
    return true;
  };
  ordered_json out;
  try {
    out = ordered_json::parse(text, watch);
  } catch (const ordered_json::parse_error& e) {
    refuse("That is not JSON: it breaks off or goes wrong at byte " + std::to_string(e.byte) + ".", "/",
           "Send one JSON object in UTF-8, such as {\"text\": \"what is due\"}.");
  } catch (const ordered_json::exception&) {
    refuse("A number in the JSON is beyond what a number can hold.", "/", "Send a value in its usual range.");
  }
  if (!twice.empty())
    refuse("The name '" + twice + "' stands twice in one object.", "/" + twice, "Send it once.");
  return out;
}

Value raw(const ordered_json& j) {
  if (j.is_object()) {
    std::vector<std::pair<std::string, Value>> fields;
    for (const auto& [name, value] : j.items())
      fields.emplace_back(name, raw(value));
    return record(std::move(fields));
  }
  if (j.is_array()) {
    std::vector<Value> items;
    for (const auto& item : j)
      items.push_back(raw(item));
    return list(std::move(items));
  }
  if (j.is_number_unsigned() && j.get<std::uint64_t>() > static_cast<std::uint64_t>(INT64_MAX)) {
    return static_cast<double>(j.get<std::uint64_t>());
  }
  if (j.is_number_float() && !std::isfinite(j.get<double>())) {
    refuse("A number in the JSON is beyond what a number can hold.", "/", "Send a value in its usual range.");
  }
  return unkeep(j);
}

// What fits into a line of 110 stands in one, the rest has a line for each member.
void lay_out(std::string& out, const ordered_json& j, std::size_t depth) {
  const std::string flat = dumped(j);
  if (!j.is_structured() || 2 * depth + flat.size() <= 110) {
    out += flat;
    return;
  }
  out += j.is_object() ? '{' : '[';
  const char* comma = "\n";
  for (const auto& [name, value] : j.items()) {
    out += comma + std::string(2 * depth + 2, ' ');
    if (j.is_object()) out += dumped(name) + ": ";
    lay_out(out, value, depth + 1);
    comma = ",\n";
  }
  out += "\n" + std::string(2 * depth, ' ');
  out += j.is_object() ? '}' : ']';
}

Call call_of(std::string_view row, const ordered_json& args, const std::string& where) {
  if (!args.is_object()) {
    refuse("The arguments of '" + std::string(row) + "' must be a JSON object.", where,
           "Send them by name, such as {\"job\": 12, \"slot\": 3}.");
  }
  Call call{std::string(row), {}};
  for (const auto& [name, value] : args.items())
    call.args.emplace_back(name, raw(value));
  return call;
}

} // namespace

std::string quoted(std::string_view text) {
  return dumped(std::string(text));
}

std::string calls_to_json(const std::vector<Call>& calls) {
  auto out = ordered_json::array();
  for (const Call& call : calls)
    out.push_back(kept_call(call));
  return dumped(out);
}

std::vector<Call> calls_from_json(std::string_view text) {
  std::vector<Call> out;
  const auto parsed = ordered_json::parse(text);
  for (const auto& j : parsed) {
    Call call{j.at("do").get<std::string>(), {}};
    for (const auto& [name, value] : j.at("with").items())
      call.args.emplace_back(name, unkeep(value));
    out.push_back(std::move(call));
  }
  return out;
}

std::string indented(std::string_view json) {
  std::string out;
  lay_out(out, ordered_json::parse(json), 0);
  return out;
}

Value read_json(std::string_view text) {
  return raw(parse(text));
}

Call read_call(std::string_view row, std::string_view body) {
  return call_of(row, body.empty() ? ordered_json::object() : parse(body), "/");
}

std::vector<Call> read_calls(std::string_view body) {
  const auto j = parse(body);
  const std::string like = "Send {\"calls\": [{\"do\": \"hold\", \"with\": {…}}, …]} with 1 to 50 calls.";
  if (!j.is_object() || !j.contains("calls") || !j["calls"].is_array() || j["calls"].empty() ||
      j["calls"].size() > 50) {
    refuse("A list of calls is wanted here.", "/calls", like);
  }
  std::vector<Call> out;
  for (const auto& one : j["calls"]) {
    const std::string where = "/calls/" + std::to_string(out.size());
    if (!one.is_object() || !one.contains("do") || !one["do"].is_string()) {
      refuse("The call at " + where + " does not say what to do.", where + "/do", like);
    }
    out.push_back(
        call_of(one["do"].get<std::string>(), one.value("with", ordered_json::object()), where + "/with"));
  }
  return out;
}

} // namespace nutward::shop
