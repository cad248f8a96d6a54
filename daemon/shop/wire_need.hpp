// What the queue is known to take of a wire, and when: by the cut plan (what it takes from the tin is no
// need) and by the day on which the agenda has each job's cutting.
#pragma once

#include "hours/calendar.hpp"
#include "shop/wire_plan.hpp"

#include <map>
#include <optional>
#include <vector>

namespace nutward::shop {

// The day of the stored agenda; of a job that it does not know, the last day on which it could be pressed and
// still be in time, or else be due; today without either.
struct CutDay {
  enum class From { agenda, due, today } from = From::today;
  Day day; // may have passed
};

class CutDays {
public:
  CutDays(const View& view, const Setup& setup, const hours::Calendar& calendar, const hours::Zone& zone,
          Instant now);
  CutDay of(const Job& job) const;

private:
  const View& view_;
  const Setup& setup_;
  const hours::Calendar& calendar_;
  const hours::Zone& zone_;
  Day today_;
  std::map<std::int64_t, Day> planned_; // by job
};

struct WireNeed {
  std::int64_t job = 0;
  int frets = 0;
  CutDay cut;
  Length length; // of new wire, its cuts and what is lost of a stick included
};
// By day, then job. Slots that no wire is there for are among them.
std::vector<WireNeed> needs_of(const WirePlan& plan, const CutDays& days);

} // namespace nutward::shop
