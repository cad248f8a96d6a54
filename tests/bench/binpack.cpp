#include "bench/binpack.hpp"

#include <charconv>
#include <fstream>
#include <stdexcept>

#include <fmt/core.h>

namespace nutward::bench {

namespace {

constexpr std::int64_t most_size = 1'000'000'000; // a thousand kilometres, in nanometres well within 64 bits
constexpr std::int64_t most_items = 1'000'000;

class Words {
public:
  explicit Words(const std::string& path) : path_(path), in_(path) {
    if (!in_)
      throw std::runtime_error(fmt::format("{}: cannot be read; give a file of bin-packing problems.", path));
    next();
  }
  bool ended() const { return word_.empty(); }

  std::string text(const char* what) {
    if (ended()) fail(what, "the end of the file");
    std::string out = word_;
    next();
    return out;
  }
  std::int64_t number(const char* what, std::int64_t from, std::int64_t to) {
    const std::string word = text(what);
    std::int64_t out = 0;
    const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), out);
    if (error != std::errc{} || end != word.data() + word.size() || out < from || out > to)
      fail(fmt::format("{}, a whole number from {} to {}", what, from, to).c_str(), word);
    return out;
  }
  bool is_number() const {
    return !word_.empty() && word_.find_first_not_of("0123456789") == std::string::npos;
  }

private:
  [[noreturn]] void fail(const std::string& wanted, const std::string& found) const {
    throw std::runtime_error(
        fmt::format("{}, line {}: wanted {}, found {}.", path_, last_line_, wanted, found));
  }
  void next() {
    last_line_ = line_;
    word_.clear();
    for (int c = in_.get(); c != EOF; c = in_.get()) {
      if (c == '\n') ++line_;
      const bool space = c == ' ' || c == '\n' || c == '\r' || c == '\t';
      if (!space) word_.push_back(static_cast<char>(c));
      if (space && !word_.empty()) return;
    }
  }
  std::string path_;
  std::ifstream in_;
  std::string word_;
  int line_ = 1, last_line_ = 1;
};

void read_sizes(Words& words, std::int64_t items, BinPacking& out) {
  for (std::int64_t i = 0; i < items; ++i)
    out.sizes.push_back(words.number("a size", 1, out.capacity));
}

BinPacking read_named(Words& words) {
  BinPacking out;
  out.name = words.text("a problem's name");
  out.capacity = words.number("the capacity", 1, most_size);
  const std::int64_t items = words.number("the number of items", 1, most_items);
  out.best_known = words.number("the best known number of bins", 1, most_items);
  read_sizes(words, items, out);
  return out;
}

std::string stem(const std::string& path) {
  const std::string file = path.substr(path.find_last_of('/') + 1);
  return file.substr(0, file.find_last_of('.'));
}

} // namespace

std::vector<BinPacking> read_bin_packing(const std::string& path) {
  Words words(path);
  std::vector<BinPacking> out;
  const std::int64_t first = words.number("the number of problems or items", 1, most_items);
  if (words.is_number()) {
    BinPacking plain;
    plain.name = stem(path);
    plain.capacity = words.number("the capacity", 1, most_size);
    read_sizes(words, first, plain);
    out.push_back(std::move(plain));
  } else {
    for (std::int64_t i = 0; i < first; ++i)
      out.push_back(read_named(words));
  }
  if (!words.ended()) throw std::runtime_error(fmt::format("{}: there is more after the last size.", path));
  return out;
}

cutting::Problem as_cut_plan(const BinPacking& problem) {
  cutting::Problem out;
  out.settings.nip_loss = {};
  out.least_useful = (problem.capacity + 1) * units::millimetre;
  for (const std::int64_t size : problem.sizes) {
    const units::Length length = size * units::millimetre;
    cutting::Slot slot;
    slot.need = {board::EndStyle::filed, length, length, length, std::nullopt, length};
    out.slots.push_back(slot);
  }
  cutting::Stock stick;
  stick.length = problem.capacity * units::millimetre;
  stick.count = static_cast<int>(problem.sizes.size());
  out.stock.push_back(stick);
  return out;
}

} // namespace nutward::bench
