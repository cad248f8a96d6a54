// What leaves the daemon as JSON: answers, their data, problems. See codec.hpp.
#include "shop/codec.hpp"
#include "shop/json_text.hpp"

#include "units/print.hpp"

namespace nutward::shop {

namespace {

using units::Length;
using List = std::shared_ptr<const Node>;

// What a value's type adds to its name; a list of lengths is named like one length.
std::string_view suffix_of(const Value& v) {
  if (std::holds_alternative<Length>(v)) return "_mm";
  if (std::holds_alternative<units::Force>(v)) return "_n";
  if (std::holds_alternative<units::Mass>(v)) return "_g";
  if (std::holds_alternative<units::Money>(v)) return "_minor";
  if (std::holds_alternative<units::Instant>(v)) return "_at";
  if (std::holds_alternative<units::Day>(v)) return "_on";
  const auto* node = std::get_if<List>(&v);
  if (node == nullptr || !(*node)->is_list || (*node)->items.empty()) return "";
  const Value& first = (*node)->items.front();
  return std::holds_alternative<List>(first) ? "" : suffix_of(first);
}

void write_name(JsonText& out, std::string_view name, const Value& v) {
  const std::string_view suffix = suffix_of(v);
  if (suffix.empty() || name.ends_with(suffix) || (suffix == "_at" && name == "at")) return out.name(name);
  out.name(std::string(name).append(suffix));
}

struct Write {
  JsonText& out;
  void operator()(std::monostate) const { out.null(); }
  void operator()(bool b) const { out.boolean(b); }
  void operator()(std::int64_t i) const { out.whole(i); }
  void operator()(double d) const { out.real(d); }
  void operator()(const std::string& s) const { out.text(s); }
  // In mm with all its nanometres: below 9 m a double holds them, and the shortest text that reads back as
  // that double is printed.
  void operator()(Length v) const { out.real(static_cast<double>(v.nm) / 1e6); }
  void operator()(units::Force f) const { out.real(f.n); }
  void operator()(units::Mass m) const { out.real(static_cast<double>(m.mg) / 1e3); }
  void operator()(units::Money m) const { out.whole(m.minor); }
  void operator()(units::Instant t) const { out.text(units::print_utc(t)); }
  void operator()(units::Day d) const { out.text(units::print(d)); }
  void operator()(Ref r) const { out.whole(r.id); }
  void operator()(const List& node) const {
    out.open(node->is_list ? '[' : '{');
    for (const Value& item : node->items)
      std::visit(*this, item);
    for (const auto& [name, value] : node->fields) {
      write_name(out, name, value);
      std::visit(*this, value);
    }
    out.close(node->is_list ? ']' : '}');
  }
};

void write_value(JsonText& out, std::string_view name, const Value& value) {
  out.name(name);
  std::visit(Write{out}, value);
}

void write_text(JsonText& out, std::string_view name, std::string_view text) {
  out.name(name);
  out.text(text);
}

void write_texts(JsonText& out, const std::vector<std::string>& texts) {
  out.open('[');
  for (const std::string& t : texts)
    out.text(t);
  out.close(']');
}

void write_table(JsonText& out, const Table& table) {
  out.name("table");
  out.open('{');
  out.name("columns");
  write_texts(out, table.columns);
  out.name("rows");
  out.open('[');
  for (const auto& row : table.rows)
    write_texts(out, row);
  out.close(']');
  out.close('}');
}

// For a program outside: fields as an HTTP body of the row would have them, and Refs as ids.
void write_choices(JsonText& out, const std::vector<Choice>& choices) {
  out.name("choices");
  out.open('[');
  for (const Choice& c : choices) {
    out.open('{');
    write_text(out, "label", c.label);
    out.name("call");
    out.open('{');
    write_text(out, "row", c.call.row);
    out.name("with");
    out.open('{');
    for (const auto& [name, value] : c.call.args) {
      write_name(out, name, value);
      std::visit(Write{out}, value);
    }
    for (int i = 0; i < 3; ++i)
      out.close('}');
  }
  out.close(']');
}

std::string_view title_for(int status) {
  switch (status) {
  case 400:
    return "Bad Request";
  case 403:
    return "Forbidden";
  case 404:
    return "Not Found";
  case 405:
    return "Method Not Allowed";
  case 409:
    return "Conflict";
  case 415:
    return "Unsupported Media Type";
  case 422:
    return "Unprocessable Content";
  case 503:
    return "Service Unavailable";
  case 507:
    return "Insufficient Storage";
  default:
    return "Internal Server Error";
  }
}

} // namespace

int status_for(Fault fault) {
  switch (fault) {
  case Fault::value:
  case Fault::ambiguous:
    return 422;
  case Fault::confirm:
  case Fault::state:
  case Fault::stale:
    return 409;
  case Fault::not_allowed:
    return 403;
  case Fault::no_room:
    return 507;
  case Fault::busy:
    return 503;
  case Fault::broken:
    break;
  }
  return 500;
}

std::string to_json(const Value& value) {
  JsonText out;
  std::visit(Write{out}, value);
  return out.take();
}

std::string to_json(const Answer& answer, std::string_view conversation) {
  JsonText out;
  out.open('{');
  write_text(out, "kind", answer.kind);
  write_text(out, "text", answer.text);
  if (!answer.reason.empty()) write_text(out, "reason", answer.reason);
  if (answer.table) write_table(out, *answer.table);
  write_value(out, "data", std::holds_alternative<std::monostate>(answer.data) ? record({}) : answer.data);
  out.name("cautions");
  out.open('[');
  for (Hazard h : answer.cautions)
    out.text(caution(h));
  out.close(']');
  write_choices(out, answer.choices);
  write_value(out, "revision", answer.revision);
  if (!conversation.empty()) write_text(out, "conversation", conversation);
  out.close('}');
  return out.take();
}

std::string to_json(const Problem& problem, int status) {
  JsonText out;
  out.open('{');
  write_text(out, "type", "about:blank");
  write_text(out, "title", title_for(status));
  write_value(out, "status", std::int64_t{status});
  write_text(out, "detail", problem.text);
  if (!problem.where.empty()) {
    out.name("errors");
    out.open('[');
    out.open('{');
    write_text(out, "pointer", problem.where.starts_with("/") ? problem.where : "/" + problem.where);
    write_text(out, "detail", problem.text);
    out.close('}');
    out.close(']');
  }
  if (!problem.would_do.empty()) write_text(out, "remedy", problem.would_do);
  write_text(out, "kind", "refused");
  write_text(out, "text", problem.would_do.empty() ? problem.text : problem.text + " " + problem.would_do);
  write_choices(out, problem.choices);
  out.close('}');
  return out.take();
}

} // namespace nutward::shop
