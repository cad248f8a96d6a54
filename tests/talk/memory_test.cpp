#include "support/catch.hpp"
#include "talk/memory.hpp"

using namespace nutward::talk;
using nutward::units::Instant;

namespace {
State with_misses(int n) {
  State s;
  s.misses = n;
  return s;
}
} // namespace

TEST_CASE("a conversation belongs to its caller") {
  Memory memory;
  memory.keep(1, "a", with_misses(3), Instant{100});
  CHECK(memory.recall(1, "a", Instant{100}).misses == 3);
  CHECK(memory.recall(2, "a", Instant{100}).misses == 0);
  CHECK(memory.recall(1, "b", Instant{100}).misses == 0);
}

TEST_CASE("a conversation without a name is not remembered") {
  Memory memory;
  memory.keep(1, "", with_misses(3), Instant{100});
  CHECK(memory.recall(1, "", Instant{100}).misses == 0);
  CHECK(memory.size() == 0);
}

TEST_CASE("half an hour of silence ends a conversation") {
  Memory memory;
  memory.keep(1, "a", with_misses(3), Instant{0});
  CHECK(memory.recall(1, "a", Instant{1800}).misses == 3);
  CHECK(memory.recall(1, "a", Instant{3600}).misses == 3); // the last word was at 1800
  CHECK(memory.recall(1, "a", Instant{5401}).misses == 0);
}

TEST_CASE("the thousand latest conversations are kept") {
  Memory memory;
  for (int i = 0; i < 1000; ++i)
    memory.keep(1, std::to_string(i), with_misses(1), Instant{0});
  CHECK(memory.recall(1, "0", Instant{1}).misses == 1);
  memory.keep(1, "new", with_misses(1), Instant{2});
  CHECK(memory.size() == 1000);
  CHECK(memory.recall(1, "0", Instant{3}).misses == 1);
  CHECK(memory.recall(1, "1", Instant{3}).misses == 0);
}

TEST_CASE("the order sent under a key is kept, fifty of them") {
  Memory memory;
  for (int i = 0; i < 51; ++i)
    memory.keep_order(1, "", {std::to_string(i), "d", {}}, Instant{0});
  CHECK_FALSE(memory.order(1, "", "0", Instant{0}));
  CHECK(memory.order(1, "", "50", Instant{0}));
  CHECK_FALSE(memory.order(2, "", "50", Instant{0}));
}
