// A cut plan as it is kept from one answer to the next, and over a restart (StoredPlan of kind "cuts"): with
// the names that things have in the shop, so that what is left of it can be found in another problem.
#pragma once

#include "cutting/plan.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

// Hex SHA-256 over all that a plan follows from: every field of the problem but `previous`, each number as
// eight bytes (little-endian), each list behind its length, each optional behind whether it is there. Two
// problems of one digest are equal to the last index, so that a plan of one is a plan of the other.
std::string digest_of(const cutting::Problem& problem);

struct KeptFret {
  std::int64_t job = 0;
  int slot = 0;
  units::Length length;
  std::size_t index = 0; // in Problem::slots of the problem that was planned
};

struct KeptUse {
  cutting::From from = cutting::From::piece;
  cutting::StockKind kind = cutting::StockKind::stick; // of new wire
  std::int64_t id = 0;                                 // the piece's or the lot's; 0: of no lot
  units::Length whole;
  std::size_t index = 0; // in Problem::pieces or Problem::stock of the problem that was planned
  std::vector<KeptFret> frets;
  units::Length remainder, scrap;
  std::int64_t cuts = 0;
  bool held = false;
};

struct KeptCuts {
  std::vector<KeptUse> uses;
  cutting::Plan rest; // all of the plan but its uses; indices as in the problem that was planned
};

KeptCuts kept(const cutting::Problem& problem, const cutting::Plan& plan);

// As StoredPlan::body: whole numbers with a space between, lists behind their length, the first the number of
// this way of writing. Of a text that is none, nullopt.
std::string to_text(const KeptCuts& cuts);
std::optional<KeptCuts> cuts_from_text(std::string_view text);

// The plan itself, for a problem of the same digest; nullopt where it names anything that is not there.
std::optional<cutting::Plan> plan_of(const KeptCuts& cuts, const cutting::Problem& problem);

} // namespace nutward::shop
