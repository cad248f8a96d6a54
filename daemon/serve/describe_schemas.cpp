#include "serve/describe_schemas.hpp"

#include <fmt/format.h>

namespace nutward::serve {

using shop::Give;
using shop::Kind;
using shop::Often;
using shop::Param;

void text(JsonText& out, std::string_view name, std::string_view value) {
  out.name(name);
  out.text(value);
}

void texts(JsonText& out, std::string_view name, const std::vector<std::string>& values) {
  array(out, name, [&] {
    for (const std::string& value : values)
      out.text(value);
  });
}

void flag(JsonText& out, std::string_view name, bool value) {
  out.name(name);
  out.boolean(value);
}

void whole(JsonText& out, std::string_view name, std::int64_t value) {
  out.name(name);
  out.whole(value);
}

void reference(JsonText& out, std::string_view section, std::string_view component) {
  text(out, "$ref", fmt::format("#/components/{}/{}", section, component));
}

void schema_reference(JsonText& out, std::string_view name, std::string_view component) {
  object(out, name, [&] { reference(out, "schemas", component); });
}

void content(JsonText& out, std::string_view type, const std::function<void()>& schema) {
  object(out, "content", [&] { object(out, type, [&] { object(out, "schema", schema); }); });
}

void fixed(JsonText& out, std::string_view name, std::string_view value) {
  object(out, name, [&] { text(out, "const", value); });
}

void text_field(JsonText& out, std::string_view name, std::string_view what) {
  object(out, name, [&] {
    text(out, "type", "string");
    text(out, "description", what);
  });
}

void list_field(JsonText& out, std::string_view name, std::string_view what,
                const std::function<void()>& items) {
  object(out, name, [&] {
    text(out, "type", "array");
    text(out, "description", what);
    object(out, "items", items);
  });
}

void closed(JsonText& out, const std::vector<std::string>& required,
            const std::function<void()>& properties) {
  text(out, "type", "object");
  object(out, "properties", properties);
  texts(out, "required", required);
  flag(out, "additionalProperties", false);
}

std::string part(const shop::Row& row, std::string_view which) {
  return fmt::format("{}-{}", row.name, which);
}

namespace {

std::string_view unit_words(Kind kind) {
  switch (kind) {
  case Kind::length:
    return ", in mm";
  case Kind::mass:
    return ", in g";
  case Kind::load:
    return ", in N";
  case Kind::money:
    return ", in hundredths of the shop's currency";
  default:
    return "";
  }
}

bool is_quantity(Kind kind) {
  return !unit_words(kind).empty();
}

bool is_thing(Kind kind) {
  return kind == Kind::wire || kind == Kind::job || kind == Kind::piece || kind == Kind::person ||
         kind == Kind::machine || kind == Kind::receiver;
}

// What JSON calls the type of a value of this kind.
std::string_view json_type(Kind kind) {
  switch (kind) {
  case Kind::yes:
    return "boolean";
  case Kind::count:
  case Kind::money:
  case Kind::slot:
  case Kind::weekdays:
  case Kind::wire:
  case Kind::job:
  case Kind::piece:
  case Kind::person:
  case Kind::machine:
  case Kind::receiver:
    return "integer";
  case Kind::number:
  case Kind::length:
  case Kind::mass:
  case Kind::load:
    return "number";
  default:
    return "string";
  }
}

void range(JsonText& out, double least, double most) {
  out.name("minimum");
  out.real(least);
  out.name("maximum");
  out.real(most);
}

void one_type_or_two(JsonText& out, std::string_view type, std::string_view other) {
  if (other.empty()) return text(out, "type", type);
  texts(out, "type", {std::string(type), std::string(other)});
}

// What holds for a value of the kind wherever it stands; `other` is a second type that it may have.
void bare(JsonText& out, Kind kind, const std::vector<std::string_view>& options, std::string_view other) {
  one_type_or_two(out, json_type(kind), other);
  if (kind == Kind::at) text(out, "format", "date-time");
  if (kind == Kind::day) text(out, "format", "date");
  if (kind == Kind::slot) range(out, 0, 48);
  if (kind == Kind::weekdays) range(out, 0, 6);
  if (is_thing(kind)) whole(out, "minimum", 1);
  if (options.empty()) return;
  array(out, "enum", [&] {
    for (std::string_view option : options)
      out.text(option);
    if (other == "null") out.null();
  });
}

// One value of the parameter, without its description.
void one_value(JsonText& out, const Param& param, Sent sent) {
  if (param.kind == Kind::piece && sent == Sent::in_body) {
    array(out, "anyOf", [&] {
      item(out, [&] { bare(out, Kind::piece, {}, "string"); });
      item(out, [&] { reference(out, "schemas", "piece-by-length"); });
    });
    return;
  }
  bare(out, param.kind, param.options, is_quantity(param.kind) || is_thing(param.kind) ? "string" : "");
  if (param.bounds.most > param.bounds.least) range(out, param.bounds.least, param.bounds.most);
  if (param.kind == Kind::words || param.kind == Kind::name || param.kind == Kind::url)
    whole(out, "maxLength", param.kind == Kind::url ? 2000 : param.kind == Kind::name ? 60 : 500);
  if (param.kind == Kind::name) whole(out, "minLength", 1);
}

// What the schema cannot say.
std::string_view hint(const Param& param) {
  if (is_quantity(param.kind)) return "; a text may have a unit of its own";
  switch (param.kind) {
  case Kind::wire:
  case Kind::machine:
  case Kind::receiver:
    return " or id";
  case Kind::slot:
    return param.many ? "; as a text \"3, 9-14\"" : "";
  case Kind::weekdays:
    return "; 0 is Monday; as a text \"mon-fri\"";
  default:
    return "";
  }
}

void list_of(JsonText& out, const Param& param, Sent sent) {
  const bool as_text = sent == Sent::in_query || param.kind == Kind::slot || param.kind == Kind::weekdays;
  if (sent == Sent::in_query) return text(out, "type", "string");
  array(out, "anyOf", [&] {
    item(out, [&] { one_value(out, param, sent); });
    if (as_text) item(out, [&] { text(out, "type", "string"); });
    item(out, [&] {
      text(out, "type", "array");
      whole(out, "minItems", 1);
      whole(out, "maxItems", 200);
      object(out, "items", [&] { one_value(out, param, sent); });
    });
  });
}

void field(JsonText& out, const Give& give) {
  const bool listed = give.often == Often::many;
  text(out, "description", fmt::format("{}{}", give.what, unit_words(give.kind)));
  const auto value = [&] {
    if (give.of.empty())
      bare(out, give.kind, give.options, give.often == Often::or_null ? "null" : "");
    else
      schema_of(out, give.of);
  };
  if (!listed) return value();
  text(out, "type", "array");
  object(out, "items", value);
}

} // namespace

void schema_of(JsonText& out, const Param& param, Sent sent) {
  if (sent == Sent::in_body)
    text(out, "description", fmt::format("{}{}{}", param.what, unit_words(param.kind), hint(param)));
  if (param.many)
    list_of(out, param, sent);
  else
    one_value(out, param, sent);
}

void schema_of(JsonText& out, const std::vector<Give>& gives) {
  text(out, "type", "object");
  std::vector<std::string> required;
  object(out, "properties", [&] {
    for (const Give& give : gives) {
      object(out, shop::field_for(give), [&] { field(out, give); });
      if (give.often != Often::at_times) required.push_back(shop::field_for(give));
    }
  });
  if (!required.empty()) texts(out, "required", required);
  flag(out, "additionalProperties", false);
}

void schema_of_arguments(JsonText& out, const shop::Row& row) {
  text(out, "type", "object");
  object(out, "properties", [&] {
    for (const Param& param : row.takes)
      object(out, shop::field_for(param), [&] { schema_of(out, param, Sent::in_body); });
  });
  flag(out, "additionalProperties", false);
}

} // namespace nutward::serve
