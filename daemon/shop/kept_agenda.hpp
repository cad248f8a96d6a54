// A plan of the agenda as it is kept from one answer to the next, and over a restart (StoredPlan of kind
// "agenda"): with the names that things have in the shop, so that what is left of it can be found in another
// problem.
#pragma once

#include "shop/agenda_input.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

struct KeptTask {
  AgendaTask name;
  Instant start, end;
  std::vector<AgendaUnit> units;
  bool fixed = false;
};

struct KeptJob {
  std::int64_t job = 0;
  bool placed = false;
  Instant finish;
  std::chrono::seconds late{0};
  std::vector<KeptTask> tasks; // empty if it is not placed
};

struct KeptAgenda {
  std::string digest; // of its input: agenda_digest
  Instant from;       // Problem::from that it was planned with
  std::vector<KeptJob> jobs;
  agenda::Plan rest; // all of the plan but its jobs; indices as in the problem that was planned
};

KeptAgenda kept(const AgendaInput& input, const std::string& digest, const agenda::Plan& plan);

// As StoredPlan::body: words with a space between, lists behind their length, the first the number of this
// way of writing. Of a text that is none, nullopt.
std::string to_text(const KeptAgenda& agenda);
std::optional<KeptAgenda> agenda_from_text(std::string_view text);

// The plan itself, for an input of the same digest; nullopt where it names anything that is not there.
std::optional<agenda::Plan> plan_of(const KeptAgenda& agenda, const AgendaInput& input);

// Puts into Task::was where the plan had what is still to be done: by job and stage (of several alike in
// order), and by the units' names.
void remember(AgendaInput& input, const KeptAgenda& agenda);

// The earliest beginning that is not fixed; nullopt where there is none.
std::optional<Instant> first_start(const KeptAgenda& agenda);

} // namespace nutward::shop
