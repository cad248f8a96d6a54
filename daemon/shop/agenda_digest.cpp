// What a plan of the agenda follows from. The members are taken apart by name, so that a new one that is left
// out here does not compile.
#include "shop/agenda_input.hpp"
#include "shop/digest_bytes.hpp"

namespace nutward::shop {

namespace {

// One more where the same problem is planned otherwise, and what is stored shall not stand for it.
constexpr std::int64_t manner = 1;

class Bytes : public DigestBytes<Bytes> {
public:
  using DigestBytes::put;

  void put(const agenda::Window& v) { put(v.from, v.to); }
  void put(const agenda::Unit& v) {
    const auto& [open, shared, set_up_for] = v;
    put(open, shared, set_up_for);
  }
  void put(const agenda::Fixed& v) {
    const auto& [start, end, units] = v;
    put(start, end, units);
  }
  void put(const agenda::Task& v) {
    const auto& [work, needs, pause, set_up, set_up_work, lags_from, least, most, limit, not_before, fixed,
                 was] = v;
    static_cast<void>(was);
    put(work, needs, pause, set_up, set_up_work, lags_from, least, most, limit, not_before, fixed);
  }
  void put(const agenda::Job& v) {
    const auto& [tasks, release, due, weight, after] = v;
    put(tasks, release, due, weight, after);
  }
  void put(const agenda::DayLimit& v) {
    const auto& [from, limit] = v;
    put(from, limit);
  }
  void put(const agenda::Problem& v) {
    const auto& [from, until, units, jobs, limits, goal, keep_busy, worth] = v;
    static_cast<void>(from);
    put(until, units, jobs, limits, goal, keep_busy, worth);
  }
  void put(const AgendaUnit& v) {
    const auto& [machine, number, person] = v;
    put(machine, number, person);
  }
  void put(const AgendaTask& v) {
    const auto& [stage, recheck, booking] = v;
    put(stage, recheck, booking);
  }
  void put(const AgendaJob& v) {
    const auto& [job, tasks] = v;
    put(job, tasks);
  }
};

} // namespace

std::string agenda_digest(const AgendaInput& input) {
  Bytes bytes;
  bytes.put(manner);
  const auto& [problem, units, jobs] = input;
  bytes.put(problem);
  bytes.put(units);
  bytes.put(jobs);
  return bytes.sha256();
}

} // namespace nutward::shop
