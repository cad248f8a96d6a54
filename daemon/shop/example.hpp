// What the examples of the two lists say in this shop. They name things of the demo shop ("job 1", "medium",
// "Ines"), which another shop has not: its own are put in their place, as far as it has any.
#pragma once

#include "shop/store.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// Things that an example may name. What stands first is put in; what is not there leaves the example as it
// is.
struct Sample {
  std::vector<std::int64_t> jobs;                             // open ones, by due
  std::vector<std::string> wires, people, suppliers, sent_to; // names; sent_to: receivers
  std::vector<std::int64_t> pieces; // in the tin: those that the examples name, else one that nobody holds
  std::vector<std::string> instruments{}; // of the open jobs
  // What is spoken of: put in place of whatever the example says.
  std::optional<std::int64_t> job{};
  std::optional<int> slot{};
  std::string wire{}, person{}, machine{};
};

Sample sample_of(const View& view);

// Whether the example, as it stands in the lists, names a thing or quantity of that kind.
bool example_shows(std::string_view example, Kind kind);

// The sentence with the shop's own things in it.
std::string example_in(std::string_view example, const Sample& sample);

} // namespace nutward::shop
