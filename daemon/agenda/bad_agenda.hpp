// The one error of this folder.
#pragma once

#include <stdexcept>
#include <string>

namespace nutward::agenda {

// what(): what was wrong and where, a whole sentence for a person. would_do: what would do instead.
struct BadAgenda : std::runtime_error {
  BadAgenda(const std::string& what, std::string remedy)
      : std::runtime_error(what), would_do(std::move(remedy)) {}
  std::string would_do;
};

} // namespace nutward::agenda
