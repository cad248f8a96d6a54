// A View of the shop whose unit of length is another one than the shop's setting: everything else is as it
// is. For showing an answer again "in inches".
#pragma once

#include "shop/store.hpp"

#include <memory>
#include <string>

namespace nutward::shop {

class ViewInUnit final : public View {
public:
  // `unit` as the setting has it: "mm" or "in". `of` outlives this.
  ViewInUnit(const View& of, std::string unit);
  ~ViewInUnit() override;
  const Wires& wires() const override { return of_.wires(); }
  const Tin& tin() const override { return of_.tin(); }
  const Jobs& jobs() const override { return of_.jobs(); }
  const House& house() const override;
  const Machines& machines() const override { return of_.machines(); }
  const Purchases& purchases() const override { return of_.purchases(); }
  const Journal& journal() const override { return of_.journal(); }
  const Outbox& outbox() const override { return of_.outbox(); }
  const Tokens& tokens() const override { return of_.tokens(); }
  const Plans& plans() const override { return of_.plans(); }
  std::int64_t revision() const override { return of_.revision(); }

private:
  class HouseInUnit;
  const View& of_;
  std::unique_ptr<HouseInUnit> house_;
};

} // namespace nutward::shop
