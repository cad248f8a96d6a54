// What the shop's things are called, as far as sentences need it: taken from one snapshot, kept until the
// next revision.
#pragma once

#include "hours/calendar.hpp"
#include "hours/zone.hpp"
#include "shop/example.hpp"
#include "shop/run.hpp"
#include "units/read.hpp"

#include <memory>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

namespace nutward::talk {

struct Named {
  shop::Ref ref;
  std::string label;              // for a choice: "job 12, octave mandolin of Ines"
  std::string full;               // the whole name, folded
  std::vector<std::string> words; // of the name, folded
};

struct Names {
  std::int64_t revision = -1;
  std::vector<Named> wires, jobs, persons, machines,
      receivers,     // jobs: open ones, by due; persons: retired ones too
      suppliers,     // only to begin a sentence with: elsewhere whatever is said may be a new one
      bars, benches; // only beside the word "bar" or "bench": elsewhere "long" and "door" are words
  std::shared_ptr<const hours::Zone> zone;
  hours::Calendar calendar; // when the shop is open: a time without its half of the day is then
  units::LengthUnit length = units::LengthUnit::mm;
  std::string unit = "mm"; // of lengths in answers, as the shop's setting has it
  units::ForceUnit load = units::ForceUnit::lbf;
  std::string currency;                                      // folded; may be empty
  std::vector<std::pair<std::string, std::string>> settings; // those that answers lean on
  shop::Sample sample;                                       // what examples name here

  std::unordered_set<std::string> called; // every word of those names

  const std::vector<Named>& of(shop::Kind kind) const; // of wire, job, person, machine, receiver
  bool has(const std::string& word) const { return called.contains(word); }
};

Named named(shop::Ref ref, std::string label, std::string_view name);
// Of several alike too: "the sanders", "both presses".
Named named_machine(std::int64_t id, const std::string& name);
Names read_names(const shop::View& view, shop::Rooms& rooms);

} // namespace nutward::talk
