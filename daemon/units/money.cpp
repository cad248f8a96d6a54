#include "units/money.hpp"

#include "units/read_number.hpp"

#include <limits>
#include <stdexcept>

namespace nutward::units {

Money share(Money whole, Length part, Length of) {
  if (of.nm <= 0) throw std::invalid_argument("a price is for more than no length");
  const Wide product = Wide{whole.minor} * part.nm;
  Wide minor = product / of.nm;
  const Wide rest = product % of.nm; // as signed as the product
  if (2 * (rest < 0 ? -rest : rest) >= of.nm) minor += product < 0 ? -1 : 1;
  constexpr Wide most = std::numeric_limits<std::int64_t>::max();
  if (minor > most || minor < -most) throw std::overflow_error("more money than there is");
  return {static_cast<std::int64_t>(minor)};
}

} // namespace nutward::units
