// What the press folder gives, in words and in figures: reasons, passes, shares.
#pragma once

#include "press/off_centre.hpp"
#include "shop/pressing.hpp"
#include "shop/rows.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

std::string_view code_of(const press::Reason& reason); // "end_on_crown"
// A whole sentence with its numbers, in the shop's units.
std::string words_of(const press::Reason& reason, const Setup& setup);
std::string words_of(const std::vector<press::Reason>& reasons, const Setup& setup); // one after the other
std::string words_of(press::LimitedBy by);                                           // "the press's plate"
std::string_view code_of(press::LimitedBy by);                                       // "press"
std::string_view word_of(press::Done done);
std::string_view word_of(press::Zone zone);
std::string between(const press::Between& where); // "between 10 and 11"
// A share of a load: finer than the gauge, since nobody sets it.
std::string share_of(units::Force v, const Setup& setup);

// "frets 9-14 under bar long, its middle 412.30 mm from the nut, between 11 and 12. Load there …"
std::string words_of(const press::Pass& pass, const press::Bar& bar, const Setup& setup);
std::string why_of(const press::Pass& pass, const Setup& setup); // what limits it, where the load may stand

// A card for the bench, with what was said and its caution: of a pass; of one with the load off its place;
// and the same of one fret that is pressed again.
Picture picture_of(const Job& job, const PressPlan& plan, const press::Pass& pass, const std::string& text,
                   const Setup& setup);
Picture picture_of(const Job& job, const PressPlan& plan, const press::Pass& pass, const press::Off& off,
                   const press::Shares& shares, const std::string& text, const Setup& setup);
struct FretUnderBar {
  const press::OneFret& fret;
  const press::Bar& bar;
};
Picture picture_of(const Job& job, const PressPlan& plan, const FretUnderBar& one, const std::string& text,
                   const Setup& setup);
Picture picture_of(const Job& job, const PressPlan& plan, const FretUnderBar& one, const press::Off& off,
                   const press::Shares& shares, const std::string& text, const Setup& setup);

// What a load off its place does. Beyond the kern no load is told: the bar would lie on some of its frets
// only, and the others stay up.
std::string words_of(const press::Shares& shares, const std::vector<int>& too_much, units::Force load,
                     const Setup& setup);
// What is said of every bar, such as that the press is out of service; "" where nothing is.
std::string said_of_all(const std::vector<std::vector<press::Reason>>& refused, const Setup& setup);

Table table_of(const PressPlan& plan, const Setup& setup);

Value data_of(const press::Reason& reason, const Setup& setup);
Value data_of(const std::vector<press::Reason>& reasons, const Setup& setup);
Value data_of(const press::Pass& pass, const press::Bar& bar, const Setup& setup);

namespace gives {
Give reasons(std::string_view name, std::string_view what);
std::vector<Give> pass();
} // namespace gives

} // namespace nutward::shop
