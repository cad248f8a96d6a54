// The shop as it is, but with another unit of length than its setting says: for answers "in inches".
#pragma once

#include "shop/store.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace nutward::shop {

// The house with that unit.
class HouseInUnit final : public House {
public:
  HouseInUnit(const House& of, std::string unit) : of_(of), unit_(std::move(unit)) {}
  std::vector<Weekday> week() const override { return of_.week(); }
  std::vector<SpecialDay> special_days() const override { return of_.special_days(); }
  std::optional<std::string> setting(std::string_view name) const override {
    return name == "unit" ? std::optional{unit_} : of_.setting(name);
  }
  std::vector<Actor> actors() const override { return of_.actors(); }
  std::optional<Actor> actor(std::int64_t id) const override { return of_.actor(id); }
  std::optional<Actor> actor_for_uid(std::int64_t uid) const override { return of_.actor_for_uid(uid); }
  std::vector<Receiver> receivers() const override { return of_.receivers(); }
  std::vector<Bar> bars() const override { return of_.bars(); }
  std::optional<Bar> bar(std::int64_t id) const override { return of_.bar(id); }

private:
  const House& of_;
  std::string unit_;
};

class ViewInUnit final : public View {
public:
  // `unit` as the setting has it: "mm", "in" or "in/64". `of` outlives this.
  ViewInUnit(const View& of, std::string unit) : of_(of), house_(of.house(), std::move(unit)) {}
  const Wires& wires() const override { return of_.wires(); }
  const Tin& tin() const override { return of_.tin(); }
  const Jobs& jobs() const override { return of_.jobs(); }
  const House& house() const override { return house_; }
  const Machines& machines() const override { return of_.machines(); }
  const Purchases& purchases() const override { return of_.purchases(); }
  const Journal& journal() const override { return of_.journal(); }
  const Outbox& outbox() const override { return of_.outbox(); }
  const Tokens& tokens() const override { return of_.tokens(); }
  const Plans& plans() const override { return of_.plans(); }
  const Misses& misses() const override { return of_.misses(); }
  std::int64_t revision() const override { return of_.revision(); }

private:
  const View& of_;
  HouseInUnit house_;
};

// The same of a transaction, for the answer to a command.
class TxInUnit final : public Tx {
public:
  TxInUnit(Tx& of, std::string unit) : of_(of), house_(of.house(), std::move(unit)) {}
  const Wires& wires() const override { return of_.wires(); }
  const Tin& tin() const override { return of_.tin(); }
  const Jobs& jobs() const override { return of_.jobs(); }
  const House& house() const override { return house_; }
  const Machines& machines() const override { return of_.machines(); }
  const Purchases& purchases() const override { return of_.purchases(); }
  const Journal& journal() const override { return of_.journal(); }
  const Outbox& outbox() const override { return of_.outbox(); }
  const Tokens& tokens() const override { return of_.tokens(); }
  const Plans& plans() const override { return of_.plans(); }
  const Misses& misses() const override { return of_.misses(); }
  std::int64_t revision() const override { return of_.revision(); }
  std::int64_t put(const Actor& x) override { return of_.put(x); }
  std::int64_t put(const Wire& x) override { return of_.put(x); }
  std::int64_t put(const Lot& x) override { return of_.put(x); }
  std::int64_t put(const Piece& x) override { return of_.put(x); }
  std::int64_t put(const Job& x) override { return of_.put(x); }
  std::int64_t put(const Fret& x) override { return of_.put(x); }
  std::int64_t put(const Stage& x) override { return of_.put(x); }
  std::int64_t put(const Recheck& x) override { return of_.put(x); }
  std::int64_t put(const Weekday& x) override { return of_.put(x); }
  std::int64_t put(const SpecialDay& x) override { return of_.put(x); }
  std::int64_t put(const Receiver& x) override { return of_.put(x); }
  std::int64_t put(const Setting& x) override { return of_.put(x); }
  std::int64_t put(const Bar& x) override { return of_.put(x); }
  std::int64_t put(const Pressing& x) override { return of_.put(x); }
  std::int64_t put(const Reading& x) override { return of_.put(x); }
  std::int64_t put(const Looked& x) override { return of_.put(x); }
  std::int64_t put(const Machine& x) override { return of_.put(x); }
  std::int64_t put(const Outage& x) override { return of_.put(x); }
  std::int64_t put(const Booking& x) override { return of_.put(x); }
  std::int64_t put(const StageRule& x) override { return of_.put(x); }
  std::int64_t put(const OwnHours& x) override { return of_.put(x); }
  std::int64_t put(const OwnDay& x) override { return of_.put(x); }
  std::int64_t put(const Supplier& x) override { return of_.put(x); }
  std::int64_t put(const Purchase& x) override { return of_.put(x); }
  std::int64_t put(const PurchaseLine& x) override { return of_.put(x); }
  void drop(Ref ref) override { of_.drop(ref); }
  void move(const Movement& movement) override { of_.move(movement); }
  Backroom& backroom() override { return of_.backroom(); }
  std::optional<Remembered> recall(std::int64_t actor, std::string_view key, Instant since) const override {
    return of_.recall(actor, key, since);
  }
  void remember(std::int64_t actor, std::string_view key, Instant now, const Remembered& what) override {
    of_.remember(actor, key, now, what);
  }

private:
  Tx& of_;
  HouseInUnit house_;
};

} // namespace nutward::shop
