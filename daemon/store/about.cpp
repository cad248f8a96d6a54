#include "store/about.hpp"

#include "store/lists.hpp"

#include <optional>

namespace nutward::store {

using shop::Ref;
using shop::Thing;

namespace {

std::optional<std::int64_t> number(const shop::Node& image, std::string_view column) {
  const shop::Value* v = image.find(column);
  const auto* n = v == nullptr ? nullptr : std::get_if<std::int64_t>(v);
  return n == nullptr ? std::nullopt : std::optional{*n};
}

// What belongs to a job names it in the column `job`, and where it is of one slot or more, in `slot` or
// `slots`.
void add_job(const shop::Node& image, std::set<About>& out) {
  const auto job = number(image, "job");
  if (!job) return;
  out.insert({{Thing::job, *job}});
  if (const auto slot = number(image, "slot")) add_slot(*job, static_cast<int>(*slot), out);
  for (const char* name : {"slots", "more_slots"}) {
    const shop::Value* slots = image.find(name);
    if (slots == nullptr) continue;
    for (const int slot : split_numbers(std::get<std::string>(*slots)))
      add_slot(*job, slot, out);
  }
}

// A reading is about every slot that the edge lay over, and what the eye saw beside it.
void add_reading(const shop::Node& image, std::set<About>& out) {
  add_job(image, out);
  const auto job = number(image, "job"), from = number(image, "from_slot"), to = number(image, "to_slot");
  if (!job || !from || !to) return;
  for (auto slot = *from; slot <= *to; ++slot)
    add_slot(*job, static_cast<int>(slot), out);
  for (const char* name : {"looks_sunk", "looks_high"}) {
    const shop::Value* slots = image.find(name);
    if (slots == nullptr) continue;
    for (const int slot : split_numbers(std::get<std::string>(*slots)))
      add_slot(*job, slot, out);
  }
}

} // namespace

void add_slot(std::int64_t job, int slot, std::set<About>& out) {
  out.insert({{Thing::job, job}});
  out.insert({{Thing::job, job}, slot});
}

void add_about(Ref ref, const shop::Value& image, std::set<About>& out) {
  if (ref.thing == Thing::job || ref.thing == Thing::piece || ref.thing == Thing::wire) out.insert({ref});
  const auto* row = std::get_if<std::shared_ptr<const shop::Node>>(&image);
  if (row == nullptr) return;
  switch (ref.thing) {
  case Thing::piece:
  case Thing::fret:
  case Thing::stage:
  case Thing::recheck:
  case Thing::pressing:
  case Thing::looked:
  case Thing::booking:
    return add_job(**row, out);
  case Thing::reading:
    return add_reading(**row, out);
  case Thing::lot:
  case Thing::purchase_line:
    if (const auto wire = number(**row, "wire")) out.insert({{Thing::wire, *wire}});
    return;
  default:
    return;
  }
}

} // namespace nutward::store
