// JSON at the edges: the wire, the journal, the outbox. Text in, text out; the JSON library stays in
// codec.cpp; what is only sent is written without it, in shown.cpp.
//
// A typed value is written under its name with the unit behind it (row.hpp: field_for): Length in mm with up
// to six decimals (so the nanometre comes back), Force in N, Mass in g, Instant as RFC 3339 in UTC, Day as
// ISO 8601, a Ref as
// {"thing","id"} inside calls and images and as a bare id in an answer's data.
//
// Reading: at most 256 KiB and 32 levels (checked before the library sees it), UTF-8 only, no repeated names,
// no NaN. Every fault is a Problem{value} that says where.
#pragma once

#include "shop/answer.hpp"
#include "shop/row.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// {"kind","text","reason","table","data","cautions","choices","revision"}; `conversation` is added where it
// is not empty.
std::string to_json(const Answer& answer, std::string_view conversation = "");
std::string to_json(const Value& value);
// application/problem+json:
// {"type","title","status","detail","errors":[{"pointer","detail"}],"remedy","kind","text","choices"}
std::string to_json(const Problem& problem, int status);
int status_for(Fault fault);

// Calls as the journal and choices keep them: types survive the way there and back.
std::string calls_to_json(const std::vector<Call>& calls);
std::vector<Call> calls_from_json(std::string_view text);

// The same JSON over many short lines, for people and for comparing. The text must be JSON.
std::string indented(std::string_view json);

// A JSON text as a raw value: null, bool, whole numbers, doubles, texts, lists, records.
Value read_json(std::string_view text);
// A request's body: an object of arguments for one row.
Call read_call(std::string_view row, std::string_view body);
// The body of a list: {"calls":[{"do":"…","with":{…}}, …]}, 1 to 50 of them.
std::vector<Call> read_calls(std::string_view body);

} // namespace nutward::shop
