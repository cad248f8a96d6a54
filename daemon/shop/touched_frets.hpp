// One fret at a time: what was seen of it, and what was done to it.
#pragma once

#include "shop/rows.hpp"

#include <functional>
#include <vector>

namespace nutward::shop {

// Frets of these slots that are on record and stand in the board, in their order. Throws Problem{value} for a
// slot that the board has not, Problem{state} where no fret of it is on record.
std::vector<Fret> frets_on_record(const Job& job, const std::vector<int>& slots, const View& view);

// Each of them changed and put.
void change_frets(Tx& tx, const Job& job, const std::vector<int>& slots,
                  const std::function<void(Fret&)>& change);

// With abrasive: frets of these slots that sprang back stand high no more. Those without one are passed over.
void levelled_down(Tx& tx, const Job& job, const std::vector<int>& slots);

// "Fret 9", "Frets 9 and 10" with their job: "Job 5 (…), fret 9".
std::string of_frets(const Job& job, const std::vector<int>& slots);

// An answer that begins with the job's name, behind another that has named it already.
std::string without_job(std::string text, const Job& job);

// An answer about frets of a job: what was understood, and behind it what the readings come to.
// `hazards`: of what was done; those of what comes next are added.
Effect about_frets(const Job& job, const std::vector<int>& slots, std::string text, const View& view,
                   std::vector<Hazard> hazards = {});

} // namespace nutward::shop
