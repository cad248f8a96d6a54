// Numbers in words. "nine and ten" are two numbers, "two and one sixteenth" is one.
#include "talk/normalise.hpp"

#include <boost/unordered/unordered_flat_set.hpp>

#include <algorithm>
#include <array>
#include <utility>

namespace nutward::talk {
namespace {

using Named = std::pair<std::string_view, int>;

constexpr std::array<Named, 20> ones{
    {{"zero", 0},     {"one", 1},      {"two", 2},        {"three", 3},     {"four", 4},
     {"five", 5},     {"six", 6},      {"seven", 7},      {"eight", 8},     {"nine", 9},
     {"ten", 10},     {"eleven", 11},  {"twelve", 12},    {"thirteen", 13}, {"fourteen", 14},
     {"fifteen", 15}, {"sixteen", 16}, {"seventeen", 17}, {"eighteen", 18}, {"nineteen", 19}}};
constexpr std::array<Named, 8> tens{{{"twenty", 20},
                                     {"thirty", 30},
                                     {"forty", 40},
                                     {"fifty", 50},
                                     {"sixty", 60},
                                     {"seventy", 70},
                                     {"eighty", 80},
                                     {"ninety", 90}}};
constexpr std::array<Named, 20> ordinals{
    {{"first", 1},      {"second", 2},       {"third", 3},       {"fourth", 4},      {"fifth", 5},
     {"sixth", 6},      {"seventh", 7},      {"eighth", 8},      {"ninth", 9},       {"tenth", 10},
     {"eleventh", 11},  {"twelfth", 12},     {"thirteenth", 13}, {"fourteenth", 14}, {"fifteenth", 15},
     {"sixteenth", 16}, {"seventeenth", 17}, {"eighteenth", 18}, {"nineteenth", 19}, {"twentieth", 20}}};
constexpr std::array<Named, 22> parts{
    {{"half", 2},          {"halves", 2},         {"third", 3},        {"thirds", 3},
     {"quarter", 4},       {"quarters", 4},       {"fourth", 4},       {"fourths", 4},
     {"eighth", 8},        {"eighths", 8},        {"sixteenth", 16},   {"sixteenths", 16},
     {"thirtysecond", 32}, {"thirtyseconds", 32}, {"sixtyfourth", 64}, {"sixtyfourths", 64},
     {"tenth", 10},        {"tenths", 10},        {"hundredth", 100},  {"hundredths", 100},
     {"thousandth", 1000}, {"thousandths", 1000}}};
// Units behind which "half a", "an" and "… and a half" are numbers of it; none that is another word too.
constexpr std::array<std::string_view, 42> measures{
    "in",          "inch",   "inches",     "mm",          "millimetre", "millimetres", "millimeter",
    "millimeters", "cm",     "centimetre", "centimetres", "centimeter", "centimeters", "metre",
    "metres",      "meter",  "meters",     "foot",        "feet",       "thou",        "g",
    "gram",        "grams",  "kg",         "kilo",        "kilos",      "kilogram",    "kilograms",
    "oz",          "ounce",  "ounces",     "lb",          "lbs",        "pound",       "pounds",
    "n",           "newton", "newtons",    "kn",          "kilonewton", "kilonewtons", "tonne"};

template <std::size_t N>
std::optional<int> look(const std::array<Named, N>& names, std::string_view word) {
  for (const auto& [name, value] : names) {
    if (name == word) return value;
  }
  return std::nullopt;
}

// Whether a number can begin with it: most words are none, and are looked at only once.
bool may_begin(const Token& token) {
  static const boost::unordered_flat_set<std::string_view> words = [] {
    boost::unordered_flat_set<std::string_view> out{"a", "an", "half", "quarter"};
    for (const auto& [word, value] : ones)
      out.insert(word);
    for (const auto& [word, value] : tens)
      out.insert(word);
    for (const auto& [word, value] : ordinals)
      out.insert(word);
    return out;
  }();
  return token.kind == Token::Kind::word && words.contains(token.word);
}

class Joiner {
public:
  explicit Joiner(std::vector<Token>& tokens) : in_(tokens) {}

  std::vector<Token> run() {
    out_.reserve(in_.size());
    while (i_ < in_.size()) {
      const bool joined = digits_and_words() || digits_of_part() ||
                          (may_begin(in_[i_]) &&
                           (inches_and_part() || fraction_of_measure() || measure() || dozen() || number()));
      if (!joined) out_.push_back(std::move(in_[i_++]));
    }
    return std::move(out_);
  }

private:
  const Token* at(std::size_t i) const {
    return i < in_.size() && in_[i].kind == Token::Kind::word ? &in_[i] : nullptr;
  }
  bool is(std::size_t i, std::string_view word) const { return at(i) != nullptr && in_[i].word == word; }
  // "twenty-two": the hyphen between two words of one number
  std::size_t over_hyphen(std::size_t i) const {
    return i + 1 < in_.size() && in_[i].is("-") && in_[i].glued ? i + 1 : i;
  }

  void join(std::size_t end, std::string number) {
    Token t = in_[i_];
    t.kind = Token::Kind::number;
    for (std::size_t k = i_ + 1; k < end; ++k)
      t.word += " " + in_[k].word;
    t.end = in_[end - 1].end;
    t.number = std::move(number);
    out_.push_back(std::move(t));
    i_ = end;
  }

  // The whole number in words that begins at i; {value, end}.
  std::optional<std::pair<int, std::size_t>> whole(std::size_t i) const {
    if (at(i) == nullptr) return std::nullopt;
    auto below = below_hundred(i);
    if (!below) return std::nullopt;
    auto [value, end] = *below;
    if (value >= 1 && value <= 99 && is(end, "hundred")) {
      value *= 100, ++end;
      const std::size_t from = is(end, "and") ? end + 1 : end;
      if (auto rest = below_hundred(from); rest && rest->first > 0) value += rest->first, end = rest->second;
    } else if (value >= 1 && is(end, "thousand")) {
      value *= 1000, ++end;
      const std::size_t from = is(end, "and") ? end + 1 : end;
      // "Two thousand five hundred", "a thousand and fifty"; another thousand is another number.
      if (auto rest = whole(from); rest && rest->first > 0 && rest->first < 1000)
        value += rest->first, end = rest->second;
    }
    return std::pair{value, end};
  }

  std::optional<std::pair<int, std::size_t>> below_hundred(std::size_t i) const {
    if (at(i) == nullptr) return std::nullopt;
    if (is(i, "a") && (is(i + 1, "hundred") || is(i + 1, "thousand"))) return std::pair{1, i + 1};
    if (auto one = look(ones, in_[i].word)) return std::pair{*one, i + 1};
    auto ten = look(tens, in_[i].word);
    if (!ten) return std::nullopt;
    const std::size_t next = over_hyphen(i + 1);
    if (at(next) != nullptr) {
      if (auto one = look(ones, in_[next].word); one && *one > 0 && *one < 10)
        return std::pair{*ten + *one, next + 1};
    }
    return std::pair{*ten, i + 1};
  }

  std::optional<int> in_digits(std::size_t i) const {
    const bool few =
        i < in_.size() && in_[i].kind == Token::Kind::number && !in_[i].ordinal && in_[i].number.size() < 3;
    return few && in_[i].number.find_first_not_of("0123456789") == std::string::npos
               ? std::optional{std::stoi(in_[i].number)}
               : std::nullopt;
  }
  // "4 tenths", "5 sixteenths": what is begun in digits and goes on in words.
  bool digits_of_part() {
    return in_digits(i_) && at(i_ + 1) != nullptr && look(parts, in_[i_ + 1].word) && fraction_of_measure();
  }

  // "one sixteenth", "three thirty seconds": {"1/16", end}. "one third" only counts as a number of inches.
  std::optional<std::pair<std::string, std::size_t>> part(std::size_t i) const {
    std::size_t next = i;
    int top = 1;
    if (is(i, "a") || is(i, "an"))
      next = i + 1;
    else if (auto n = in_digits(i))
      top = *n, next = i + 1;
    else if (auto w = below_hundred(i); w && w->first > 0)
      top = w->first, next = w->second;
    else
      return std::nullopt;
    next = over_hyphen(next);
    if (at(next) == nullptr) return std::nullopt;
    std::string word = in_[next].word;
    std::size_t end = next + 1;
    if (word == "thirty" || word == "sixty") {
      const std::size_t tail = over_hyphen(end);
      if (at(tail) == nullptr) return std::nullopt;
      word += in_[tail].word, end = tail + 1;
    }
    auto bottom = look(parts, word);
    if (!bottom) return std::nullopt;
    return std::pair{std::to_string(top) + "/" + std::to_string(*bottom), end};
  }

  bool is_inch(std::size_t i) const { return is(i, "in") || is(i, "inch") || is(i, "inches"); }

  // "37 point 4", "2 and a half", "4 tenths of a mm".
  bool digits_and_words() {
    const std::string digits = in_[i_].number;
    if (digits.empty() || digits.find_first_not_of("0123456789") != std::string::npos) return false;
    if (is(i_ + 1, "point") && i_ + 2 < in_.size() && in_[i_ + 2].kind == Token::Kind::number &&
        in_[i_ + 2].number.find_first_not_of("0123456789") == std::string::npos)
      return join(i_ + 3, digits + "." + in_[i_ + 2].number), true;
    if (is(i_ + 1, "and") && (is(i_ + 2, "a") || is(i_ + 2, "one")) && is(i_ + 3, "half"))
      return join(i_ + 4, digits + " 1/2"), true;
    return false;
  }

  // "An inch and three quarters", "two inches and a half": the unit stands inside.
  bool inches_and_part() {
    int inches = 1;
    std::size_t unit = i_ + 1;
    if (!is(i_, "an") && !is(i_, "one")) {
      auto w = whole(i_);
      if (!w) return false;
      inches = w->first, unit = w->second;
    }
    if (!is_inch(unit) || is(unit, "in") || !is(unit + 1, "and")) return false;
    auto p = part(unit + 2);
    if (!p && (is(unit + 2, "half") || is(unit + 2, "quarter")))
      p = std::pair{std::string(is(unit + 2, "half") ? "1/2" : "1/4"), unit + 3};
    if (!p) return false;
    const Token inch = in_[unit];
    const std::size_t end = is_inch(p->second) && !is(p->second, "in") ? p->second + 1 : p->second;
    join(end, std::to_string(inches) + " " + p->first);
    out_.push_back(inch);
    out_.back().begin = out_.back().end = out_[out_.size() - 2].end;
    out_.back().glued = false;
    return true;
  }

  bool is_measure(std::size_t i) const {
    return at(i) != nullptr && std::find(measures.begin(), measures.end(), in_[i].word) != measures.end();
  }
  // "An inch" is one; "a g" may be a string's.
  bool is_long_measure(std::size_t i) const {
    return is_measure(i) && (in_[i].word.size() > 2 || is(i, "mm"));
  }

  // "half an inch", "a quarter pound", "three tenths of a mm": the words between number and unit go.
  bool fraction_of_measure() {
    std::optional<std::pair<std::string, std::size_t>> p = part(i_);
    if (!p && (is(i_, "half") || is(i_, "quarter")))
      p = std::pair{std::string(is(i_, "half") ? "1/2" : "1/4"), i_ + 1};
    if (!p) return false;
    std::size_t end = p->second;
    if (is(end, "of")) ++end;
    if (is(end, "an") || is(end, "a")) ++end;
    if (!is_measure(end)) return false;
    join(end, p->first);
    return true;
  }

  // "an inch", "a pound and a half", "two inches and three quarters": what follows the unit joins the number.
  bool measure() {
    const bool one = is(i_, "a") || is(i_, "an");
    const auto n = one ? std::optional{std::pair{1, i_ + 1}} : whole(i_);
    if (!n || !is_long_measure(n->second)) return false;
    const std::size_t unit = n->second;
    const auto p = is(unit + 1, "and") ? part(unit + 2) : std::nullopt;
    if (!p && !one) return false;
    // "... and a half inch": that is another length.
    const bool another = p && (is_measure(p->second) || is(p->second, "of") || is(p->second, "an"));
    if (another && !one) return false;
    const bool more = p && !another;
    join(unit, std::to_string(n->first) + (more ? " " + p->first : ""));
    out_.push_back(in_[unit]);
    if (more) out_.back().end = in_[p->second - 1].end;
    i_ = more ? p->second : unit + 1;
    return true;
  }

  bool dozen() {
    const bool half = is(i_, "half") && is(i_ + 1, "a") && is(i_ + 2, "dozen");
    if (half) return join(i_ + 3, "6"), true;
    if (is(i_, "a") && is(i_ + 1, "dozen")) return join(i_ + 2, "12"), true;
    if (auto w = whole(i_); w && is(w->second, "dozen"))
      return join(w->second + 1, std::to_string(12 * w->first)), true;
    return false;
  }

  bool number() {
    auto w = whole(i_);
    if (!w) return ordinal();
    if (is(w->second, "and")) {
      if (auto p = part(w->second + 1))
        return join(p->second, std::to_string(w->first) + " " + p->first), true;
    }
    if (is(w->second, "point")) {
      std::string decimals;
      std::size_t end = w->second + 1;
      for (; at(end) != nullptr; ++end) {
        auto one = look(ones, in_[end].word);
        if (!one || *one > 9) break;
        decimals += std::to_string(*one);
      }
      if (!decimals.empty()) return join(end, std::to_string(w->first) + "." + decimals), true;
    }
    if (auto ten = look(tens, in_[i_].word); ten && w->second == i_ + 1 && ordinal()) return true;
    join(w->second, std::to_string(w->first));
    return true;
  }

  bool ordinal() {
    if (at(i_) == nullptr) return false;
    if (auto o = look(ordinals, in_[i_].word)) {
      join(i_ + 1, std::to_string(*o));
      out_.back().ordinal = *o;
      return true;
    }
    auto ten = look(tens, in_[i_].word);
    const std::size_t next = over_hyphen(i_ + 1);
    if (!ten || at(next) == nullptr) return false;
    auto o = look(ordinals, in_[next].word);
    if (!o || *o > 9) return false;
    join(next + 1, std::to_string(*ten + *o));
    out_.back().ordinal = *ten + *o;
    return true;
  }

  std::vector<Token>& in_;
  std::vector<Token> out_;
  std::size_t i_ = 0;
};

} // namespace

std::optional<int> ordinal_word(std::string_view word) {
  return look(ordinals, word);
}

void join_numbers(std::vector<Token>& tokens) {
  const auto begins = [](const Token& t) { return t.kind == Token::Kind::number || may_begin(t); };
  if (std::any_of(tokens.begin(), tokens.end(), begins)) tokens = Joiner{tokens}.run();
}

} // namespace nutward::talk
