#include "store/kept.hpp"

#include <algorithm>

namespace nutward::store {

namespace {

template <class T>
const T* by_id(const std::vector<T>& all, std::int64_t id) {
  const auto there = std::find_if(all.begin(), all.end(), [&](const T& t) { return t.id == id; });
  return there == all.end() ? nullptr : &*there;
}

} // namespace

void KeptWires::forget() {
  all_.forget();
  lots_.forget();
  on_hand_.forget();
}

const std::vector<shop::Wire>& KeptWires::kept() const {
  return all_.get([&] { return Wires::all(); });
}

std::optional<shop::Wire> KeptWires::find(std::int64_t id) const {
  const shop::Wire* wire = by_id(kept(), id);
  return wire == nullptr ? std::nullopt : std::optional(*wire);
}

std::vector<shop::Wire> KeptWires::all() const {
  return kept();
}

std::optional<shop::Lot> KeptWires::lot(std::int64_t id) const {
  return lots_.get(id, [&] { return Wires::lot(id); });
}

shop::Length KeptWires::on_hand(std::int64_t wire) const {
  return on_hand_.get(wire, [&] { return Wires::on_hand(wire); });
}

void KeptTin::forget() {
  sums_.forget();
  held_.forget();
}

shop::TinSum KeptTin::sum(std::int64_t wire) const {
  return sums_.get(wire, [&] { return Tin::sum(wire); });
}

std::vector<pieces::PieceFacts> KeptTin::held(std::int64_t wire, std::int64_t job,
                                              std::optional<int> slot) const {
  return held_.get(std::tuple(wire, job, slot), [&] { return Tin::held(wire, job, slot); });
}

void KeptJobs::forget() {
  open_.forget();
  frets_.forget();
  stages_.forget();
  took_.forget();
  waiting_.forget();
  shortest_arcs_.forget();
}

const std::vector<shop::Job>& KeptJobs::kept() const {
  return open_.get([&] { return Jobs::open(); });
}

// Of the open jobs; others are looked up.
std::optional<shop::Job> KeptJobs::find(std::int64_t id) const {
  const shop::Job* job = by_id(kept(), id);
  return job == nullptr ? Jobs::find(id) : std::optional(*job);
}

std::vector<shop::Job> KeptJobs::open() const {
  return kept();
}

std::vector<shop::Fret> KeptJobs::frets(std::int64_t job) const {
  return frets_.get(job, [&] { return Jobs::frets(job); });
}

std::vector<shop::Stage> KeptJobs::stages(std::int64_t job) const {
  return stages_.get(job, [&] { return Jobs::stages(job); });
}

std::vector<shop::Took> KeptJobs::took(std::string_view stage, std::size_t most) const {
  return took_.get(std::pair(std::string(stage), most), [&] { return Jobs::took(stage, most); });
}

std::vector<shop::Recheck> KeptJobs::waiting() const {
  return waiting_.get([&] { return Jobs::waiting(); });
}

std::vector<shop::ShortestArc> KeptJobs::shortest_arcs(std::int64_t wire) const {
  return shortest_arcs_.get(wire, [&] { return Jobs::shortest_arcs(wire); });
}

void KeptHouse::forget() {
  week_.forget();
  special_days_.forget();
  settings_.forget();
  actors_.forget();
}

std::vector<shop::Weekday> KeptHouse::week() const {
  return week_.get([&] { return House::week(); });
}

std::vector<shop::SpecialDay> KeptHouse::special_days() const {
  return special_days_.get([&] { return House::special_days(); });
}

std::optional<std::string> KeptHouse::setting(std::string_view name) const {
  return settings_.get(name, [&] { return House::setting(name); });
}

std::optional<shop::Actor> KeptHouse::actor_for_uid(std::int64_t uid) const {
  return actors_.get(uid, [&] { return House::actor_for_uid(uid); });
}

void KeptMachines::forget() {
  all_.forget();
  rules_.forget();
  own_hours_.forget();
}

std::vector<shop::Machine> KeptMachines::all() const {
  return all_.get([&] { return Machines::all(); });
}

std::vector<shop::StageRule> KeptMachines::rules() const {
  return rules_.get([&] { return Machines::rules(); });
}

std::vector<shop::OwnHours> KeptMachines::own_hours() const {
  return own_hours_.get([&] { return Machines::own_hours(); });
}

void KeptPurchases::forget() {
  suppliers_.forget();
  open_.forget();
  lines_.forget();
  delivered_.forget();
}

std::vector<shop::Supplier> KeptPurchases::suppliers() const {
  return suppliers_.get([&] { return Purchases::suppliers(); });
}

std::vector<shop::Purchase> KeptPurchases::open() const {
  return open_.get([&] { return Purchases::open(); });
}

std::vector<shop::Awaited> KeptPurchases::lines(std::int64_t purchase) const {
  return lines_.get(purchase, [&] { return Purchases::lines(purchase); });
}

std::vector<shop::Delivered> KeptPurchases::delivered(std::int64_t supplier, std::size_t most) const {
  return delivered_.get(std::pair(supplier, most), [&] { return Purchases::delivered(supplier, most); });
}

} // namespace nutward::store
