// Whether a text reads as a sentence.
#pragma once

#include "units/print.hpp"

#include <algorithm>
#include <string>
#include <string_view>

namespace nutward::test {

// It begins with a capital letter, ends with its stop, shows every character that it has, has no gap and no
// piece of a program's own notation in it.
inline bool reads_as_a_sentence(std::string_view text) {
  if (text.size() < 10 || text.front() < 'A' || text.front() > 'Z') return false;
  if (text.back() != '.' && text.back() != '!' && text.back() != '?') return false;
  if (units::escape_for_print(std::string(text)) != text) return false;
  for (std::string_view wrong :
       {"  ", "{", "}", "[", "]", "null", " .", " ,", "..", ": .", "\"\"", "_at", "_mm"})
    if (text.find(wrong) != std::string_view::npos) return false;
  return std::count(text.begin(), text.end(), '"') % 2 == 0 &&
         std::count(text.begin(), text.end(), '(') == std::count(text.begin(), text.end(), ')');
}

} // namespace nutward::test
