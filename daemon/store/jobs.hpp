// Tables job, fret, job_stage, recheck, pressing, reading and looked.
#pragma once

#include "shop/store.hpp"
#include "store/images.hpp"

namespace nutward::store {

class Jobs : public shop::Jobs {
public:
  explicit Jobs(Connection& connection) : connection_(connection) {}
  std::optional<shop::Job> find(std::int64_t id) const override;
  std::vector<shop::Job> open() const override;
  std::vector<shop::Job> recent(std::size_t most) const override;
  std::vector<shop::Fret> frets(std::int64_t job) const override;
  std::vector<shop::Stage> stages(std::int64_t job) const override;
  std::vector<shop::Took> took(std::string_view stage, std::size_t most) const override;
  std::vector<shop::Recheck> rechecks(std::int64_t job) const override;
  std::vector<shop::Pressing> pressings(std::int64_t job) const override;
  std::vector<shop::Reading> readings(std::int64_t job) const override;
  std::vector<shop::Looked> looked(std::int64_t job) const override;
  std::vector<shop::SprangCount> sprang(std::optional<std::int64_t> wire) const override;
  std::vector<shop::Recheck> waiting() const override;
  std::vector<shop::ShortestArc> shortest_arcs(std::int64_t wire) const override;

private:
  Connection& connection_;
};

std::int64_t put(Connection& connection, Images& images, const shop::Job& job);
std::int64_t put(Connection& connection, Images& images, const shop::Fret& fret);
std::int64_t put(Connection& connection, Images& images, const shop::Stage& stage);
std::int64_t put(Connection& connection, Images& images, const shop::Recheck& recheck);
std::int64_t put(Connection& connection, Images& images, const shop::Pressing& pressing);
std::int64_t put(Connection& connection, Images& images, const shop::Reading& reading);
std::int64_t put(Connection& connection, Images& images, const shop::Looked& looked);

} // namespace nutward::store
