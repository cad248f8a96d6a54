// The description of the HTTP interface (OpenAPI 3.1), made from the two lists and the routes: what `nutwardd
// --describe` prints and schema/http/nutward.json keeps. Where it says less than it could, that is said in
// words: a text may stand for a number in most arguments ("52.4 mm"), and JSON Schema cannot say which texts.
#pragma once

#include <string>
#include <string_view>

namespace nutward::serve {

// The whole document, indented, with a line end. Throws std::logic_error for a route that nothing here
// describes.
std::string describe(std::string_view version);

} // namespace nutward::serve
