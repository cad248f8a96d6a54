// What a reader says when it refuses; "" if it takes the text.
#pragma once

#include "units/read.hpp"

#include <string>

template <class Read>
std::string refusal(Read read) {
  try {
    read();
  } catch (const nutward::units::BadQuantity& e) {
    return e.what();
  }
  return {};
}

inline bool contains(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}
