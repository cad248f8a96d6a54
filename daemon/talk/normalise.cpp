#include "talk/normalise.hpp"

#include "talk/letters.hpp"
#include "units/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::talk {
namespace {

bool is_digit(char32_t c) {
  return c >= '0' && c <= '9';
}
struct Char {
  char32_t code;
  std::size_t at;
};

std::vector<Char> characters(std::string_view text) {
  if (text.size() > most_bytes) {
    throw BadText(fmt::format("That is {} bytes long; a sentence has at most {}.", text.size(), most_bytes),
                  "Say it in shorter sentences.");
  }
  std::vector<Char> out;
  out.reserve(text.size() + 1);
  for (std::size_t at = 0; at < text.size();) {
    const units::Utf8Char c = units::utf8_at(text, at);
    if (!c.ok) throw BadText(fmt::format("Byte {} of that is not UTF-8.", at + 1), "Send the text as UTF-8.");
    const bool space = c.code == '\t' || c.code == '\n' || c.code == '\r';
    if ((c.code < 0x20 && !space) || (c.code >= 0x7f && c.code < 0xa0)) {
      throw BadText(fmt::format("Byte {} of that is a control character.", at + 1), "Send plain text.");
    }
    if (!is_hidden(c.code)) out.push_back({plain(c.code), at});
    at += c.bytes;
  }
  out.push_back({0, text.size()});
  return out;
}

class Tokeniser {
public:
  explicit Tokeniser(Sentence& s) : s_(s), c_(characters(s.original)) {}

  void run() {
    while (c_[i_].code != 0) {
      if (c_[i_].code == ' ' || c_[i_].code == '_') { // trim_limit is two words
        ++i_;
        continue;
      }
      one();
    }
  }

private:
  void one() {
    const char32_t c = c_[i_].code;
    if (c == '"' || c == 0x201c || c == 0x201d || c == 0x2033) return quote_or_inch();
    if (is_digit(c) || (c == '.' && is_digit(next()) && !glued())) return number();
    if (!vulgar(c).empty()) return fraction();
    if (is_letter(c)) return word();
    add(Token::Kind::symbol, i_, i_ + 1);
  }

  char32_t next(std::size_t n = 1) const { return i_ + n < c_.size() ? c_[i_ + n].code : 0; }
  bool glued() const { return !s_.tokens.empty() && s_.tokens.back().end == c_[i_].at; }

  Token& add(Token::Kind kind, std::size_t from, std::size_t to) {
    Token t;
    t.kind = kind;
    t.begin = c_[from].at, t.end = c_[to].at;
    t.glued = !s_.tokens.empty() && s_.tokens.back().end == t.begin;
    for (std::size_t k = from; k < to; ++k)
      put(t.word, lower(c_[k].code));
    t.word = composed(std::move(t.word));
    i_ = to;
    return s_.tokens.emplace_back(std::move(t));
  }

  // After a digit the mark means inches; elsewhere it opens a quotation, if that ends.
  void quote_or_inch() {
    const bool inch = c_[i_].code == 0x2033 || (glued() && s_.tokens.back().is_number());
    const char32_t close = c_[i_].code == 0x201c ? 0x201d : c_[i_].code;
    std::size_t end = i_ + 1;
    std::string inside;
    for (; !inch && c_[end].code != 0; ++end) {
      const char32_t c = c_[end].code;
      if (c == close) break;
      if (c == '\\' && (c_[end + 1].code == '"' || c_[end + 1].code == '\\')) ++end;
      inside.append(s_.original, c_[end].at, c_[end + 1].at - c_[end].at);
    }
    if (inch || c_[end].code == 0) {
      add(Token::Kind::symbol, i_, i_ + 1).word = "\"";
      return;
    }
    add(Token::Kind::quoted, i_, end + 1).word = std::move(inside);
  }

  void number() {
    std::size_t end = i_;
    while (is_digit(c_[end].code))
      ++end;
    if (c_[end].code == '.' && is_digit(c_[end + 1].code)) {
      ++end;
      while (is_digit(c_[end].code))
        ++end;
    }
    const std::size_t digits = end - i_;
    std::string tail; // letters right behind: 3rd
    for (std::size_t k = end; k < end + 3 && is_letter(c_[k].code); ++k)
      put(tail, lower(c_[k].code));
    const bool ordinal = digits <= 4 && (tail == "st" || tail == "nd" || tail == "rd" || tail == "th");
    Token& t = add(Token::Kind::number, i_, ordinal ? end + 2 : end);
    t.number = ordinal ? t.word.substr(0, digits) : t.word;
    if (t.number.front() == '.') t.number.insert(0, "0");
    if (ordinal) t.ordinal = std::stoi(t.number);
    // 9's: the fret's, or fret 9 is; nothing is said by it that the rest does not say.
    if (c_[i_].code == '\'' && lower(next()) == 's' && !is_letter(next(2)) && !is_digit(next(2)) && !ordinal)
      t.end = c_[i_ += 2].at;
  }

  void fraction() {
    const std::string text{vulgar(c_[i_].code)};
    if (glued() && s_.tokens.back().kind == Token::Kind::number) { // 1¾
      Token& whole = s_.tokens.back();
      whole.number += " " + text;
      whole.end = c_[++i_].at;
      return;
    }
    add(Token::Kind::number, i_, i_ + 1).number = text;
  }

  void word() {
    std::size_t end = i_;
    while (is_letter(c_[end].code) || is_digit(c_[end].code) ||
           (c_[end].code == '\'' && end > i_ && is_letter(c_[end + 1].code))) {
      ++end;
    }
    Token& t = add(Token::Kind::word, i_, end);
    contract(t);
  }

  void split(Token& t, std::string first, std::string second) {
    t.word = std::move(first);
    Token more = t;
    more.word = std::move(second);
    s_.tokens.push_back(std::move(more));
  }

  void contract(Token& t) {
    const bool may_be =
        t.word.find('\'') != std::string::npos || std::string_view("tms").find(t.word.back()) < 3;
    if (!may_be) return;
    const std::string w = t.word;
    static constexpr std::array bare{"dont", "doesnt", "didnt",   "isnt",    "wasnt",
                                     "wont", "cant",   "couldnt", "shouldnt"};
    const bool apostrophe = w.size() > 3 && w.ends_with("n't");
    if (apostrophe || std::find(bare.begin(), bare.end(), w) != bare.end()) {
      std::string head = w.substr(0, w.size() - (apostrophe ? 3 : 2));
      if (head == "wo") head = "will";
      if (head == "ca") head = "can";
      return split(t, std::move(head), "not");
    }
    if (w == "i'm" || w == "im") return split(t, "i", "am");
    if (w == "we're") return split(t, "we", "are");
    if (w == "i'll" || w == "we'll") return split(t, w.substr(0, w.size() - 3), "will");
    if (w == "cannot") return split(t, "can", "not");
    if (w == "whats" || w == "wheres" || w == "whos") return split(t, w.substr(0, w.size() - 1), "is");
    if (w == "it'd" || w == "where'd" || w == "who'd" || w == "that'd" || w == "what'd")
      return split(t, w.substr(0, w.size() - 2), "would");
    if (w.size() > 2 && w.ends_with("'s")) {
      std::string head = w.substr(0, w.size() - 2);
      static constexpr std::array asking{"what", "where", "that", "it",   "which", "how",
                                         "who",  "there", "mine", "here", "when"};
      if (std::find(asking.begin(), asking.end(), head) != asking.end())
        return split(t, std::move(head), "is");
      t.word = std::move(head);
    }
  }

  Sentence& s_;
  std::vector<Char> c_;
  std::size_t i_ = 0;
};

void drop_ending(Sentence& s) {
  while (!s.tokens.empty()) {
    const Token& last = s.tokens.back();
    if (!last.is(".") && !last.is("?") && !last.is("!") && !last.is(",") && !last.is(";")) break;
    s.asks = s.asks || last.is("?");
    s.tokens.pop_back();
  }
}

} // namespace

std::string_view Sentence::said(std::size_t from, std::size_t to) const {
  if (from >= to || to > tokens.size()) return {};
  return std::string_view(original).substr(tokens[from].begin, tokens[to - 1].end - tokens[from].begin);
}

std::string fold(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t at = 0; at < text.size();) {
    const units::Utf8Char c = units::utf8_at(text, at);
    if (!c.ok)
      out += text[at];
    else if (!is_hidden(c.code))
      put(out, lower(plain(c.code)));
    at += c.bytes;
  }
  return composed(std::move(out));
}

Sentence normalise(std::string_view text) {
  Sentence s;
  s.original = text;
  Tokeniser{s}.run();
  drop_ending(s);
  join_numbers(s.tokens);
  for (Token& t : s.tokens) {
    if (!s.flat.empty() && !t.glued) s.flat += ' ';
    t.flat_begin = s.flat.size();
    s.flat += t.is_number() ? t.number : t.word;
    t.flat_end = s.flat.size();
  }
  return s;
}

} // namespace nutward::talk
