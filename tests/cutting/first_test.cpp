#include "cutting/plan.hpp"
#include "support/catch.hpp"
TEST_CASE("x") { CHECK(nutward::cutting::plan({}, {}).uses.empty()); }
