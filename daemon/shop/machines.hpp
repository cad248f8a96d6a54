// What the shop works with: machines, which stage needs which, and when they are out of service or booked.
#pragma once

#include "agenda/stages.hpp"
#include "hours/zone.hpp"
#include "shop/bind.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

std::optional<Machine> machine_at(std::int64_t id, const View& view); // nullopt: it is not there
// The machine that the argument means. Throws Problem{value} where it is not there.
Machine machine_of(const Args& args, const View& view, std::string_view param = "machine");
std::optional<Machine> machine_called(std::string_view name, const View& view); // whatever its capitals
std::string plural_of(const std::string& name); // "presses", "benches", "sanders"
// "the press", "sander 2", "all 2 sanders", "the benches".
std::string named(const Machine& machine, int number = 0);
// Throws Problem{value} at `where` for a number that the machine's kind does not have.
void check_number(const Machine& machine, int number, std::string_view where);

// What a new shop has of agenda's kinds; it may call and count them otherwise.
std::int64_t machine_for(agenda::Machine kind);
// The machine that a stage needs, by the shop's rule or agenda's table; nullopt where the shop has it no
// more.
std::optional<Machine> machine_for(agenda::StageKind stage, const View& view);

// How many of the machine are out of service at some time in from..to (which one each), or all.
struct Down {
  bool all = false;
  std::vector<int> numbers; // ascending
  std::vector<Outage> because;
};
Down down(const Machine& machine, Instant from, Instant to, const View& view);
Down down(const Machine& machine, Instant at, const View& view);
// So many of the machine work; nullopt: as many as are wanted.
std::optional<int> left_of(const Machine& machine, const Down& down);
// "out of service until Thu 26 Nov 2026, 12:00", "out of service".
std::string words_of(const Outage& outage, const hours::Zone& zone);

// "14:00 to 15:00 on Thu 26 Nov 2026", "Thu 26 Nov 2026, 14:00 to Fri 27 Nov 2026, 09:00".
std::string from_to(Instant from, Instant to, const hours::Zone& zone);

} // namespace nutward::shop
