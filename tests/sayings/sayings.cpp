#include "sayings/sayings.hpp"

#include "shop/codec.hpp"
#include "talk/normalise.hpp"

#include <algorithm>
#include <fstream>
#include <stdexcept>

namespace nutward::sayings {

namespace {

const shop::Node& node(const shop::Value& v) {
  const auto* n = std::get_if<std::shared_ptr<const shop::Node>>(&v);
  if (n == nullptr) throw std::runtime_error("a list or a record is wanted");
  return **n;
}

std::string text(const shop::Value& v) {
  if (const auto* yes = std::get_if<bool>(&v)) return *yes ? "yes" : "no";
  if (const auto* whole = std::get_if<std::int64_t>(&v)) return std::to_string(*whole);
  const auto* s = std::get_if<std::string>(&v);
  if (s == nullptr) throw std::runtime_error("a text is wanted");
  return *s;
}

std::vector<std::string> texts(const shop::Value* v) {
  std::vector<std::string> out;
  if (v == nullptr) return out;
  for (const shop::Value& item : node(*v).items)
    out.push_back(text(item));
  return out;
}

TextCalls calls_of(const shop::Value& rows, const shop::Value* args) {
  TextCalls out;
  for (const std::string& row : texts(&rows))
    out.push_back({row, {}});
  const auto& given = args == nullptr ? std::vector<shop::Value>{} : node(*args).items;
  if (given.size() > out.size()) throw std::runtime_error("there are more args than rows");
  for (std::size_t i = 0; i < given.size(); ++i) {
    for (const auto& [field, value] : node(given[i]).fields)
      out[i].second.emplace_back(field, text(value));
  }
  return out;
}

Saying saying_of(const std::string& line) {
  const shop::Value read = shop::read_json(line);
  const shop::Node& all = node(read);
  Saying out;
  for (const auto& [name, value] : all.fields) {
    static const std::set<std::string> known{"before", "say",         "rows",  "args",
                                             "either", "either_args", "never", "unclear"};
    if (!known.contains(name)) throw std::runtime_error("there is no '" + name + "'");
  }
  if (all.find("say") == nullptr) throw std::runtime_error("it says nothing");
  out.say = text(*all.find("say"));
  out.before = texts(all.find("before"));
  for (std::string& row : texts(all.find("never")))
    out.never.insert(std::move(row));
  out.unclear = all.find("unclear") != nullptr;
  if (const shop::Value* either = all.find("either")) {
    const auto& ways = node(*either).items;
    const shop::Value* args = all.find("either_args");
    for (std::size_t i = 0; i < ways.size(); ++i)
      out.either.push_back(calls_of(ways[i], args == nullptr ? nullptr : &node(*args).items.at(i)));
  } else {
    if (all.find("rows") == nullptr) throw std::runtime_error("it has no rows");
    out.either.push_back(calls_of(*all.find("rows"), all.find("args")));
  }
  return out;
}

const std::set<std::string>& number_words() {
  static const std::set<std::string> words{
      "zero",     "four",     "five",     "seven",    "eight",     "nine",      "eleven",   "twelve",
      "thirteen", "fourteen", "fifteen",  "sixteen",  "seventeen", "eighteen",  "nineteen", "twenty",
      "thirty",   "forty",    "fifty",    "sixty",    "seventy",   "eighty",    "ninety",   "hundred",
      "thousand", "half",     "quarter",  "quarters", "dozen",     "three",     "point",    "tenths",
      "first",    "second",   "third",    "fourth",   "fifth",     "sixth",     "seventh",  "eighth",
      "ninth",    "tenth",    "eleventh", "twelfth",  "sixteenth", "twentieth", "thousand", "tenth"};
  return words;
}

} // namespace

std::vector<Saying> read_sayings(const std::filesystem::path& file) {
  std::ifstream in(file);
  if (!in) throw std::runtime_error("There is no file " + file.string() + ".");
  std::vector<Saying> out;
  int number = 0;
  for (std::string line; std::getline(in, line);) {
    ++number;
    if (line.empty()) continue;
    try {
      out.push_back(saying_of(line));
    } catch (const shop::Problem& problem) {
      throw std::runtime_error(file.string() + ":" + std::to_string(number) + ": " + problem.text);
    } catch (const std::exception& e) {
      throw std::runtime_error(file.string() + ":" + std::to_string(number) + ": " + e.what() + ".");
    }
    out.back().line = number;
  }
  return out;
}

std::string_view word_for(Verdict verdict) {
  switch (verdict) {
  case Verdict::exact:
    return "exact";
  case Verdict::arguments:
    return "arguments";
  case Verdict::unclear:
    return "unclear";
  case Verdict::wrong_question:
    return "wrong question";
  case Verdict::wrong_command:
    return "WRONG COMMAND";
  }
  return "";
}

std::string mistyped(const std::string& sentence, const std::set<std::string>& names, std::mt19937& random) {
  std::vector<std::pair<std::size_t, std::size_t>> words; // begin, end
  const auto letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
  for (std::size_t i = 0; i < sentence.size();) {
    std::size_t end = i;
    while (end < sentence.size() && letter(sentence[end]))
      ++end;
    const std::string word = talk::fold(sentence.substr(i, end - i));
    const auto beside = [&](std::size_t at) {
      const auto c = static_cast<unsigned char>(sentence[at]);
      return c >= 0x80 || (c >= '0' && c <= '9') || c == '/' || c == ':' || c == '_';
    };
    const bool whole = (i == 0 || !beside(i - 1)) && (end == sentence.size() || !beside(end));
    if (end - i >= 4 && whole && !names.contains(word) && !number_words().contains(word))
      words.emplace_back(i, end);
    i = std::max(end, i + 1);
  }
  if (words.empty()) return sentence;
  const auto below = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
  const auto [from, to] = words[below(words.size())];
  const std::size_t at = from + below(to - from);
  std::string out = sentence;
  switch (below(4)) {
  case 0:
    out.erase(at, 1);
    break;
  case 1:
    out.insert(at, 1, out[at]);
    break;
  case 2:
    std::swap(out[at], out[at + 1 < to ? at + 1 : at - 1]);
    break;
  default:
    out[at] = static_cast<char>('a' + below(26));
  }
  return out;
}

} // namespace nutward::sayings
