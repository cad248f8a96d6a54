// How Catch2 shows a Length in a failed check.
#pragma once

#include "units/length.hpp"

#include <ostream>

namespace nutward::units {

inline std::ostream& operator<<(std::ostream& out, Length v) {
  return out << v.nm << " nm";
}

} // namespace nutward::units
