// A day for one more job: the earliest that keeps every other promise, whether a day can be kept, and what
// would have to give. It holds nothing.
#pragma once

#include "agenda/promise.hpp"
#include "shop/agenda_words.hpp"

namespace nutward::shop {

// What is to be promised: beside the shop's own agenda, or a job of it that is taken out for the question.
struct Wish {
  AgendaPlan agenda;      // without it
  agenda::Job extra;      // in terms of the agenda's units
  std::string words;      // "a refret of 22 frets", "job 9 (mountain zither of Tilen)"
  std::optional<Job> job; // of the shop
  Job like;               // what the extra was made of
};

// A job that the shop does not have yet.
Wish wish_for(const Job& like, std::string words, const View& view, const Moment& moment);
// A job of the shop; nullopt where nothing of it is left to plan.
std::optional<Wish> wish_for(const Job& job, const View& view, const Moment& moment);

// Steps of one search, and of those with longer hours.
inline constexpr std::int64_t steps_of_a_promise = 60'000, steps_of_overtime = 10'000;

struct Promised {
  agenda::Promise free;               // keeping every other promise
  std::optional<agenda::Price> price; // where a day was asked for that this does not keep, or there is none
  std::optional<int> overtime_h;      // so many hours longer each open day until then, and nobody is late
};
Promised promised(const Wish& wish, std::optional<Instant> by, const View& view, const Moment& moment);

} // namespace nutward::shop
