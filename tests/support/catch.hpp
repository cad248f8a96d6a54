// Catch2 as Debian 12 (2.13) and Debian 13 (3) have it, under the names of 3.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
using Catch::Matchers::ContainsSubstring;
#else
#include <catch2/catch.hpp>
inline auto ContainsSubstring(const std::string& part) {
  return Catch::Matchers::Contains(part);
}
#endif
