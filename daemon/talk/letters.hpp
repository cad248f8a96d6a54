// Characters of a sentence, by Unicode (utf8proc): what is a letter, its lower case, and the plain mark that
// a typographic one stands for.
#pragma once

#include <string>
#include <string_view>

namespace nutward::talk {

// UTF-8 of it, behind `out`.
void put(std::string& out, char32_t c);

// One letter for one, as Unicode's simple case mapping has it.
char32_t lower(char32_t c);
// Every kind of dash is '-', every kind of space ' ', marks of feet and apostrophes are '\''; the character
// itself where it is none of these.
char32_t plain(char32_t c);
// What words are made of: letters of any script with the accents behind them, and signs such as "²" that no
// word ends at.
bool is_letter(char32_t c);
// Has no shape and says nothing: soft hyphens, marks of direction, spaces of no width.
bool is_hidden(char32_t c);
// "1/2" of "½"; empty where it is no fraction.
std::string_view vulgar(char32_t c);

// Letters and the accents behind them as one character each, as far as there is one (NFC).
std::string composed(std::string text);

} // namespace nutward::talk
