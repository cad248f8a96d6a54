// What the routes have in common: reading bodies and addresses, writing answers.
#pragma once

#include "serve/door.hpp"
#include "shop/answer.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace nutward::serve {

// application/json, and application/problem+json from 400 on.
Response json(int status, std::string body);
Response refused(const shop::Problem& problem);

// A picture as image/svg+xml, which a browser may open and may not let run or fetch anything.
Response drawn(const shop::Picture& picture);
// 406: says why there is none, and which questions have one.
Response not_drawn(std::string_view why);

// 415 where the body is not said to be JSON.
std::optional<Response> wrong_type(const Request& request);

// Percent-decoded. Throws Problem{value}.
std::string decoded(std::string_view text, bool plus_is_space);

// The body as a record. Throws Problem{value} for broken JSON, for what is no object, and for a field that is
// not among `allowed`, separated by spaces.
shop::Value read_body(const Request& request, std::string_view allowed, std::string_view example);
// A text of it; "" where it is missing and not required. Throws Problem{value}.
std::string text_field(const shop::Value& body, std::string_view name, bool required,
                       std::string_view example);

} // namespace nutward::serve
