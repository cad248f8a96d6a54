// The parts of the description that operations share: what is answered, and what is refused.
#pragma once

#include "serve/describe_schemas.hpp"

#include <span>

namespace nutward::serve {

struct Refusal {
  int status;
  std::string_view when;
  bool posts = false;    // only what is posted can meet it
  bool pictures = false; // only what may be asked for as a picture can
};

// What any request can be answered with besides its own answer; each is a component of `responses`, named by
// its number.
std::span<const Refusal> refusals();

// The members of the schema of an answer of this kind whose data is as `data` writes it.
void answer_of(JsonText& out, std::string_view kind, const std::function<void()>& data);

// The members of "components".
void components(JsonText& out);
// A row and what goes with it, for each command (and question): exactly one of these.
struct Pair {
  std::string_view row, with; // names of the two properties
  std::string_view which;     // the part of the row that goes with it
  bool with_required = true, questions_too = false;
};
void one_row_of(JsonText& out, const Pair& pair);

} // namespace nutward::serve
