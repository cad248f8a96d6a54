// What the level folder gives, in words: lines, readings, what is off. How it stands; what to do is in
// level_advice_words.hpp.
#pragma once

#include "level/next.hpp"
#include "shop/setup.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

std::string_view word_of(level::Line line); // "bass", "middle", "treble"
std::string_view word_of(level::Finding finding);
std::string_view word_of(level::Way way); // "high", "low"
std::string
along_words(const std::vector<level::Line>& lines);        // "the bass and the treble", "all three lines"
std::string words_of(const level::Span& span);             // "6-8"
std::string words_of(const level::Off& off);               // "13 high", "the neck humped"
std::string words_of(const std::vector<level::Off>& offs); // "3 high and 9 low"
// Of the amounts that are possible: "by 0.02 to 0.15 mm", "by 0.02 mm or more".
std::string words_of(const level::Amount& amount, const Setup& setup);
std::string offs_words(const level::Explanation& one, const Setup& setup); // "13 high by 0.02 to 0.15 mm"
// As it was said: "6-8 rocks on 7 on the treble", "5-9 steady on the middle, gap under 6 held nutward".
std::string words_of(const level::Reading& reading);

// What the readings of a line come to, without its name and without a stop: what is off beyond doubt, then
// what may be, the likeliest first ("13 is high, or 12 or 14 low"), then what is all but ruled out.
std::string explained(const level::LineFinding& finding);
// Where lines stand that have the same to say: "on the treble 13 is high, or 12 or 14 low", "the bass and the
// treble are not read yet"; `call` and `readings` as the finding's.
std::string stands_words(const std::vector<level::Line>& lines, const level::LineFinding& finding,
                         const level::LevelCall& call, const std::vector<level::Reading>& readings);
// "'6-8 rocks' and '6-8 steady' cannot both be true".
std::string contradiction_words(const std::vector<std::size_t>& cannot_all_be,
                                const std::vector<level::Reading>& readings);

// In the order in which a list of alternatives is told: of the likeliest explanation first.
std::vector<level::Off> likeliest_first(const level::LineFinding& finding, std::vector<level::Off> offs);

// "a", "a and b", "a, b and c"; with another word between the last two.
std::string joined(const std::vector<std::string>& parts, std::string_view last = " and ");

} // namespace nutward::shop
