// The one error of this folder.
#pragma once

#include <stdexcept>
#include <string>

namespace nutward::supply {

// what(): what was wrong and where, a whole sentence for a person. would_do: what would do instead.
struct BadSupply : std::runtime_error {
  BadSupply(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

} // namespace nutward::supply
