// Schemas (JSON Schema 2020-12, as OpenAPI 3.1 has it) of what rows take and give. Each function writes into
// an open object or a named value, as said.
#pragma once

#include "shop/json_text.hpp"
#include "shop/lists.hpp"

#include <functional>

#include <string>
#include <string_view>
#include <vector>

namespace nutward::serve {

using shop::JsonText;

// "name": {…}; what `fill` writes are the object's members.
template <class Fill>
void object(JsonText& out, std::string_view name, Fill fill) {
  out.name(name);
  out.open('{');
  fill();
  out.close('}');
}
template <class Fill>
void array(JsonText& out, std::string_view name, Fill fill) {
  out.name(name);
  out.open('[');
  fill();
  out.close(']');
}
// One more item of an open array, an object.
template <class Fill>
void item(JsonText& out, Fill fill) {
  out.open('{');
  fill();
  out.close('}');
}
void text(JsonText& out, std::string_view name, std::string_view value);
void texts(JsonText& out, std::string_view name, const std::vector<std::string>& values);
void flag(JsonText& out, std::string_view name, bool value);
void whole(JsonText& out, std::string_view name, std::int64_t value);
void reference(JsonText& out, std::string_view section, std::string_view component); // "$ref": "#/…"

// "name": {"$ref": "#/components/schemas/component"}
void schema_reference(JsonText& out, std::string_view name, std::string_view component);
// "content" of this type, with the members of its schema.
void content(JsonText& out, std::string_view type, const std::function<void()>& schema);
// A property: a text that is always this one; any text; a list.
void fixed(JsonText& out, std::string_view name, std::string_view value);
void text_field(JsonText& out, std::string_view name, std::string_view what);
void list_field(JsonText& out, std::string_view name, std::string_view what,
                const std::function<void()>& items);
// The members of an object with just these properties, all of them required.
void closed(JsonText& out, const std::vector<std::string>& required, const std::function<void()>& properties);

// The component of a row that is named so: "fit-answer".
std::string part(const shop::Row& row, std::string_view which);
template <class Fn>
void each_row(Fn fn) { // questions first
  for (const shop::Question* q : shop::questions())
    fn(static_cast<const shop::Row&>(*q));
  for (const shop::Command* c : shop::commands())
    fn(static_cast<const shop::Row&>(*c));
}

// Where an argument is sent: a query has texts only, so its lists are texts too.
enum class Sent { in_body, in_query };

// The members of a parameter's schema, its description among them.
void schema_of(JsonText& out, const shop::Param& param, Sent sent);
// The members of the schema of a record with these fields, all that are not at_times being required.
void schema_of(JsonText& out, const std::vector<shop::Give>& gives);
// The members of the schema of a record that holds arguments of the row, none of them required.
void schema_of_arguments(JsonText& out, const shop::Row& row);

} // namespace nutward::serve
