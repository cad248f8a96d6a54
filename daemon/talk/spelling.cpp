#include "talk/spelling.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace nutward::talk {

int distance(std::string_view a, std::string_view b, int most) {
  constexpr std::size_t room = 40;
  const auto gap = static_cast<int>(a.size() > b.size() ? a.size() - b.size() : b.size() - a.size());
  if (gap > most || a.size() >= room || b.size() >= room) return most + 1;
  std::array<std::array<int, room>, 3> rows{}; // two before, before, now
  auto *two = &rows[0], *before = &rows[1], *now = &rows[2];
  for (std::size_t j = 0; j <= b.size(); ++j)
    (*before)[j] = static_cast<int>(j);
  for (std::size_t i = 1; i <= a.size(); ++i) {
    (*now)[0] = static_cast<int>(i);
    int least = (*now)[0];
    for (std::size_t j = 1; j <= b.size(); ++j) {
      int v =
          std::min({(*before)[j] + 1, (*now)[j - 1] + 1, (*before)[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) v = std::min(v, (*two)[j - 2] + 1);
      (*now)[j] = v;
      least = std::min(least, v);
    }
    if (least > most) return most + 1;
    auto* old = two;
    two = before, before = now, now = old;
  }
  return std::min((*before)[b.size()], most + 1);
}

int mistyped(std::string_view typed, std::string_view known) {
  const int most = tolerance(known.size());
  if (most == 0 || typed.size() < 3) return -1;
  const int d = distance(typed, known, most);
  if (d > most || (d >= 2 && typed.front() != known.front())) return -1;
  return d;
}

bool same_but_plural(std::string_view a, std::string_view b) {
  if (a.size() > b.size()) std::swap(a, b);
  if (a.size() < 3 || !b.starts_with(a)) return false;
  const std::string_view tail = b.substr(a.size());
  return tail == "s" ||
         (tail == "es" && (a.ends_with("s") || a.ends_with("x") || a.ends_with("ch") || a.ends_with("sh")));
}

} // namespace nutward::talk
