// How plans are written as StoredPlan::body: whole numbers and words with a space between, lists behind their
// length. For the sources that keep plans.
#pragma once

#include "units/instant.hpp"
#include "units/length.hpp"

#include <charconv>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace nutward::shop {

class KeptWriter {
public:
  // Without a space in it; an empty one is written as "-", which none may be.
  void word(std::string_view w) {
    if (!text_.empty()) text_ += ' ';
    text_ += w.empty() ? "-" : w;
  }
  void put(std::int64_t number) {
    char digits[20];
    const auto end = std::to_chars(std::begin(digits), std::end(digits), number).ptr;
    word({std::begin(digits), end});
  }
  void put(std::size_t v) { put(static_cast<std::int64_t>(v)); }
  void put(units::Length v) { put(v.nm); }
  void put(units::Instant v) { put(v.s); }
  void put(const std::optional<std::size_t>& v) { put(v ? static_cast<std::int64_t>(*v) : std::int64_t{-1}); }
  std::string take() { return std::move(text_); }

private:
  std::string text_;
};

struct NoPlan {}; // the text is not as it should be

// All of them throw NoPlan.
class KeptReader {
public:
  explicit KeptReader(std::string_view text) : left_(text) {}

  std::string word() {
    const std::string_view w = next();
    return w == "-" ? std::string{} : std::string(w);
  }
  std::int64_t number() {
    const std::string_view w = next();
    std::int64_t out = 0;
    const auto [after, error] = std::from_chars(w.data(), w.data() + w.size(), out);
    if (error != std::errc{} || after != w.data() + w.size()) throw NoPlan{};
    return out;
  }
  std::int64_t number(std::int64_t least, std::int64_t most) {
    const std::int64_t out = number();
    if (out < least || out > most) throw NoPlan{};
    return out;
  }
  units::Length length() { return {number(0, INT64_MAX)}; }
  units::Instant instant() { return {number(INT64_MIN / 4, INT64_MAX / 4)}; }
  int small() { return static_cast<int>(number(0, INT32_MAX)); }
  std::size_t index() { return static_cast<std::size_t>(number(0, INT32_MAX)); }
  std::optional<std::size_t> maybe_index() {
    const std::int64_t n = number(-1, INT32_MAX);
    return n < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(n));
  }
  bool yes() { return number(0, 1) != 0; }
  template <class E>
  E one_of(E last) {
    return static_cast<E>(number(0, static_cast<std::int64_t>(last)));
  }
  // How many follow: no more than there is text for.
  std::size_t many() { return static_cast<std::size_t>(number(0, static_cast<std::int64_t>(left_.size()))); }
  void done() const {
    if (!left_.empty()) throw NoPlan{};
  }

private:
  std::string_view next() {
    const std::size_t end = std::min(left_.find(' '), left_.size());
    const std::string_view out = left_.substr(0, end);
    left_.remove_prefix(std::min(end + 1, left_.size()));
    if (out.empty()) throw NoPlan{};
    return out;
  }

  std::string_view left_;
};

} // namespace nutward::shop
