// Job-shop problems from files, as agendas: machines that never close, one second for each unit of time.
#pragma once

#include "agenda/plan.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace nutward::bench {

struct JobShop {
  struct Step {
    std::size_t machine = 0; // from 0
    std::int64_t time = 0;
  };
  std::size_t machines = 0;
  std::vector<std::vector<Step>> jobs;
};

// "jobs machines", then a line for each job: "machine time" pairs, machines counted from 0. Lines that begin
// with # are comments. Throws std::runtime_error that says what was wrong and on which line.
JobShop read_job_shop(const std::string& path);
JobShop parse_job_shop(std::string_view text, const std::string& name);

// The last end as the goal.
agenda::Problem as_agenda(const JobShop& shop);

} // namespace nutward::bench
