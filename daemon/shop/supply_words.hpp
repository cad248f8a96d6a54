// A wire's supply in words, as at a bench: "3 refrets left in the coil; order 2 packs by Tue 1 Dec".
#pragma once

#include "shop/rows.hpp"
#include "shop/supplying.hpp"

#include <string>
#include <vector>

namespace nutward::shop {

// "3 refrets", "less than one refret", "none": what is free.
std::string left_words(const WireSupply& supply);
// "3 refrets left in the coil after the queue".
std::string left_where_words(const WireSupply& supply);
// "2 packs (12.20 m)", "12 sticks (7.32 m)", "3.00 m".
std::string quantity_words(const WireSupply& supply);
std::string quantity_words(Length length, const Buying& buying);
// "today", "by Tue 1 Dec"; of one that is due.
std::string by_words(const WireSupply& supply, const Moment& moment);

// The whole of one wire, a sentence.
std::string lead_of(const WireSupply& supply, const Supplying& all, const Moment& moment);
// Of several.
std::string lead_of(const std::vector<WireSupply>& supplies, const Supplying& all, const Moment& moment);
// Every number that the answer follows from; of several wires what they have in common.
std::string why_words(const WireSupply& supply, const Supplying& all, const Moment& moment);
std::string why_words(const std::vector<WireSupply>& supplies, const Supplying& all);
Table table_of(const std::vector<WireSupply>& supplies, const Supplying& all, const Moment& moment);

// The data of the question `supply` for one wire, and its fields.
Value data_of(const WireSupply& supply, const Supplying& all);
std::vector<Give> gives_of_supply();

// What was left as it is by everything that is expected, week by week, and where an order would come.
Picture stock_picture(const std::vector<WireSupply>& supplies, const Supplying& all, const Answer& answer,
                      const Moment& moment);

} // namespace nutward::shop
