// What the executor does with one order inside a transaction, apart from keys, threads and commits.
#pragma once

#include "shop/run.hpp"

namespace nutward::shop {

// Applies every call, writes a journal line for each and the outbox; returns one answer for the list. Throws
// Problem.
Answer apply_order(const Order& order, const Moment& moment, Tx& tx);

[[noreturn]] void refuse_role(const Row& row, const Caller& who);

// The calendar that the shop's week and its special days make. Throws Problem{broken} if stored spans cannot
// be read.
hours::Calendar calendar_of(const House& house);
// "9:00-12:30, 13:30-18:00" as spans, sorted; "closed" is none. Throws Problem{value}.
std::vector<hours::Span> read_spans(std::string_view text);
std::string write_spans(const std::vector<hours::Span>& spans); // "09:00-12:30 13:30-18:00", "" for none

// Puts an event into the outbox of every receiver that wants it. `cause` is told once a receiver.
void announce(Tx& tx, const Event& event, const std::string& cause, units::Instant now);

} // namespace nutward::shop
