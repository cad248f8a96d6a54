// What the description is made from; that it is true is looked at from outside, in tests/described.
#include "serve/describe.hpp"
#include "serve/routes.hpp"
#include "shop/lists.hpp"

#include "support/catch.hpp"

#include <set>

using namespace nutward;

namespace {

// Every field, also of records in records, says what it is and stands once only.
void check_fields(const std::vector<shop::Give>& gives) {
  std::set<std::string> names;
  for (const shop::Give& give : gives) {
    INFO(give.name);
    CHECK_FALSE(give.what.empty());
    CHECK(names.insert(shop::field_for(give)).second);
    CHECK((give.kind == shop::Kind::one_of) == !give.options.empty());
    check_fields(give.of);
  }
}

void check_row(const shop::Row& row) {
  INFO("row " << row.name
              << ": the row's `gives` say what its data holds, in shop/questions or shop/commands");
  CHECK_FALSE(row.gives.empty());
  check_fields(row.gives);
  check_fields(row.gives_else);
}

} // namespace

TEST_CASE("every question and every command says what its data holds") {
  for (const shop::Question* q : shop::questions())
    check_row(*q);
  for (const shop::Command* c : shop::commands())
    check_row(*c);
}

TEST_CASE("every question, every command and every route is in the description, and nothing else") {
  std::set<std::string> wanted;
  for (const auto& route : serve::Routes::table()) {
    if (route.path == "/v1/tokens/")
      wanted.insert("/v1/tokens/{name}");
    else if (!route.path.ends_with('/'))
      wanted.insert(std::string(route.path));
  }
  for (const shop::Question* q : shop::questions())
    wanted.insert("/v1/ask/" + std::string(q->name));
  for (const shop::Command* c : shop::commands())
    wanted.insert("/v1/do/" + std::string(c->name));
  // The layout has each path on a line of its own.
  const std::string description = serve::describe("0.0.0");
  std::set<std::string> found;
  const std::string start = "\n    \"/v1/";
  for (auto from = description.find(start); from != std::string::npos;
       from = description.find(start, from + 1)) {
    const auto name = from + 6;
    found.insert(description.substr(name, description.find('"', name) - name));
  }
  CHECK(found == wanted);
}
