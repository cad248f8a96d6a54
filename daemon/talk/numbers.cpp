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
constexpr std::array<Named, 16> parts{{{"half", 2},
                                       {"halves", 2},
                                       {"third", 3},
                                       {"thirds", 3},
                                       {"quarter", 4},
                                       {"quarters", 4},
                                       {"fourth", 4},
                                       {"fourths", 4},
                                       {"eighth", 8},
                                       {"eighths", 8},
                                       {"sixteenth", 16},
                                       {"sixteenths", 16},
                                       {"thirtysecond", 32},
                                       {"thirtyseconds", 32},
                                       {"sixtyfourth", 64},
                                       {"sixtyfourths", 64}}};

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
    boost::unordered_flat_set<std::string_view> out{"a", "an", "half", "quarter", "dozen"};
    for (const auto& [word, value] : ones)
      out.insert(word);
    for (const auto& [word, value] : tens)
      out.insert(word);
    for (const auto& [word, value] : ordinals)
      out.insert(word);
    return out;
  }();
  return token.kind == Token::Kind::number || (token.kind == Token::Kind::word && words.contains(token.word));
}

class Joiner {
public:
  explicit Joiner(std::vector<Token>& tokens) : in_(tokens) {}

  std::vector<Token> run() {
    out_.reserve(in_.size());
    while (i_ < in_.size()) {
      const bool joined =
          may_begin(in_[i_]) &&
          (in_[i_].kind == Token::Kind::number ? digits_and_words() || inches_and_part() || small_part()
                                               : inches_and_part() || fraction_of_inch() || part_of_unit() ||
                                                     small_part() || dozen() || number());
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
    }
    return std::pair{value, end};
  }

  std::optional<std::pair<int, std::size_t>> below_hundred(std::size_t i) const {
    if (at(i) == nullptr) return std::nullopt;
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

  // "one sixteenth", "three thirty seconds": {"1/16", end}. "one third" only counts as a number of inches.
  std::optional<std::pair<std::string, std::size_t>> part(std::size_t i) const {
    std::size_t next = i;
    int top = 1;
    if (is(i, "a") || is(i, "an"))
      next = i + 1;
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
  bool is_metric(std::size_t i) const {
    for (std::string_view unit : {"mm", "cm", "millimetre", "millimetres", "millimeter", "millimeters",
                                  "centimetre", "centimetres", "centimeter", "centimeters", "mil"})
      if (is(i, unit)) return true;
    return false;
  }

  // Behind it a metric unit is in decimals: "1/2" as ".5"; nullopt for thirds.
  static std::optional<std::string> decimals_of(const std::string& fraction) {
    const auto slash = fraction.find('/');
    const int bottom = std::stoi(fraction.substr(slash + 1));
    if (1'000'000 % bottom != 0) return std::nullopt;
    std::string out = std::to_string(1'000'000 + std::stoi(fraction.substr(0, slash)) * (1'000'000 / bottom));
    if (out.size() != 7 || out.front() != '1') return std::nullopt; // a whole one or more
    out.front() = '.';
    while (out.back() == '0')
      out.pop_back();
    return out;
  }

  // "half an inch", "a quarter inch", "three quarters of an inch": the words between number and unit go.
  bool fraction_of_inch() {
    std::optional<std::pair<std::string, std::size_t>> p = part(i_);
    if (!p && (is(i_, "half") || is(i_, "quarter")))
      p = std::pair{std::string(is(i_, "half") ? "1/2" : "1/4"), i_ + 1};
    if (!p) return false;
    std::size_t end = p->second;
    if (is(end, "of")) ++end;
    if (is(end, "an") || is(end, "a")) ++end;
    if (is_metric(end)) {
      const auto decimals = decimals_of(p->first);
      if (decimals) join(end, "0" + *decimals);
      return decimals.has_value();
    }
    if (!is_inch(end)) return false;
    join(end, p->first);
    return true;
  }

  // Of a unit that is divided by ten: "half a metre", "three tenths of a mm" in decimals; "a metre" as one.
  bool part_of_unit() {
    const auto metric = [&](std::size_t k) {
      static constexpr std::array<std::string_view, 12> units{
          "mm", "millimetre", "millimeter", "millimetres", "millimeters", "cm",
          "m",  "metre",      "meter",      "centimetre",  "centimeter",  "kg"};
      return at(k) != nullptr && std::find(units.begin(), units.end(), in_[k].word) != units.end();
    };
    std::size_t next = i_;
    int top = 1;
    const bool article = is(i_, "a") || is(i_, "an");
    if (article && (metric(i_ + 1) || is(i_ + 1, "foot") || is(i_ + 1, "inch")))
      return join(i_ + 1, "1"), true;
    if (article)
      ++next;
    else if (auto w = below_hundred(i_))
      top = w->first, next = over_hyphen(w->second);
    static constexpr std::array<Named, 8> tenths{{{"half", 500},
                                                  {"quarter", 250},
                                                  {"quarters", 250},
                                                  {"tenth", 100},
                                                  {"tenths", 100},
                                                  {"hundredth", 10},
                                                  {"hundredths", 10},
                                                  {"thousandth", 1}}};
    const auto bottom = at(next) == nullptr ? std::nullopt : look(tenths, in_[next].word);
    if (!bottom || top > 99) return false;
    std::size_t end = next + 1;
    if (is(end, "of")) ++end;
    if (is(end, "a") || is(end, "an") || is(end, "one")) ++end;
    if (!metric(end)) return false;
    join(end, decimal(*bottom * top));
    return true;
  }

  static std::string decimal(int thousandths) {
    std::string out = std::to_string(1000 + thousandths % 1000).substr(1);
    while (!out.empty() && out.back() == '0')
      out.pop_back();
    const std::string whole = std::to_string(thousandths / 1000);
    return out.empty() ? whole : whole + "." + out;
  }

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

  // "A tenth of a millimetre", "four thousandths of an inch", "half a millimetre": as a decimal, before its
  // unit.
  bool small_part() {
    std::size_t next = i_;
    int top = 1;
    std::string digits;
    if (is(i_, "half") && is(i_ + 1, "a"))
      digits = "0.5", next = i_ + 1;
    else if (is(i_, "half") && i_ + 1 < in_.size() && in_[i_ + 1].is("-") && in_[i_ + 1].glued)
      digits = "0.5", next = i_ + 2;
    else if (is(i_, "half"))
      digits = "0.5", next = i_ + 1;
    else {
      if (is(i_, "a"))
        next = i_ + 1;
      else if (auto w = below_hundred(i_); w && w->first > 0)
        top = w->first, next = w->second;
      else
        return false;
      next = over_hyphen(next);
      const std::size_t places = is(next, "tenth") || is(next, "tenths")             ? 1
                                 : is(next, "hundredth") || is(next, "hundredths")   ? 2
                                 : is(next, "thousandth") || is(next, "thousandths") ? 3
                                                                                     : 0;
      const std::string tops = std::to_string(top);
      if (places == 0 || tops.size() > places) return false;
      digits = "0." + std::string(places - tops.size(), '0') + tops;
      ++next;
    }
    if (is(next, "of")) ++next;
    if (is(next, "a") || is(next, "an")) ++next;
    if (!is_inch(next) && !is_millimetre(next)) return false;
    join(next, digits);
    return true;
  }

  bool is_millimetre(std::size_t i) const {
    return is(i, "mm") || is(i, "millimetre") || is(i, "millimeter") || is(i, "millimetres") ||
           is(i, "millimeters");
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

  bool dozen() {
    const bool half = is(i_, "half") && is(i_ + 1, "a") && is(i_ + 2, "dozen");
    if (half) return join(i_ + 3, "6"), true;
    if (is(i_, "dozen")) return join(i_ + 1, "12"), true;
    if (is(i_, "a") && is(i_ + 1, "dozen")) return join(i_ + 2, "12"), true;
    if (auto w = whole(i_); w && is(w->second, "dozen"))
      return join(w->second + 1, std::to_string(12 * w->first)), true;
    return false;
  }

  bool number() {
    if (auto p = part(i_); p && is_inch(p->second)) return join(p->second, p->first), true;
    auto w = whole(i_);
    if (!w) return ordinal();
    if (is(w->second, "and")) {
      if (auto p = part(w->second + 1)) {
        const auto decimals = is_metric(p->second) ? decimals_of(p->first) : std::nullopt;
        return join(p->second, std::to_string(w->first) + (decimals ? *decimals : " " + p->first)), true;
      }
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
  if (std::any_of(tokens.begin(), tokens.end(), may_begin)) tokens = Joiner{tokens}.run();
}

} // namespace nutward::talk
