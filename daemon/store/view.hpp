// The shop's interfaces over one connection, inside the transaction that it is in.
#pragma once

#include "store/house.hpp"
#include "store/jobs.hpp"
#include "store/journal.hpp"
#include "store/kept.hpp"
#include "store/ledger.hpp"
#include "store/machines.hpp"
#include "store/misses.hpp"
#include "store/outbox.hpp"
#include "store/plans.hpp"
#include "store/purchases.hpp"
#include "store/tin.hpp"
#include "store/tokens.hpp"
#include "store/wires.hpp"

namespace nutward::store {

std::int64_t revision_of(Connection& connection);

struct Tables {
  explicit Tables(Connection& c)
      : wires(c), tin(c), jobs(c), house(c), machines(c), purchases(c), journal(c), outbox(c), tokens(c),
        plans(c), misses(c) {}
  Wires wires;
  Tin tin;
  Jobs jobs;
  House house;
  Machines machines;
  Purchases purchases;
  Journal journal;
  Outbox outbox;
  Tokens tokens;
  Plans plans;
  Misses misses;
};

// Of a reading connection. at_snapshot() comes first in each snapshot.
class View final : public shop::View {
public:
  explicit View(Connection& connection)
      : connection_(connection), wires_(connection), tin_(connection), jobs_(connection), house_(connection),
        machines_(connection), purchases_(connection), journal_(connection), outbox_(connection),
        tokens_(connection), plans_(connection), misses_(connection) {}
  // Reads the snapshot's revision, and forgets what was read at another one.
  void at_snapshot();

  const shop::Wires& wires() const override { return wires_; }
  const shop::Tin& tin() const override { return tin_; }
  const shop::Jobs& jobs() const override { return jobs_; }
  const shop::House& house() const override { return house_; }
  const shop::Machines& machines() const override { return machines_; }
  const shop::Purchases& purchases() const override { return purchases_; }
  const shop::Journal& journal() const override { return journal_; }
  const shop::Outbox& outbox() const override { return outbox_; }
  const shop::Tokens& tokens() const override { return tokens_; }
  const shop::Plans& plans() const override { return plans_; }
  const shop::Misses& misses() const override { return misses_; }
  std::int64_t revision() const override { return revision_; }

private:
  Connection& connection_;
  std::int64_t revision_ = -1;
  KeptWires wires_;
  KeptTin tin_;
  KeptJobs jobs_;
  KeptHouse house_;
  KeptMachines machines_;
  KeptPurchases purchases_;
  Journal journal_;
  Outbox outbox_;
  KeptTokens tokens_;
  Plans plans_; // never kept: a plan comes without a revision, and so does what follows
  Misses misses_;
};

class Tx final : public shop::Tx, public shop::Backroom {
public:
  explicit Tx(Connection& connection)
      : connection_(connection), tables_(connection), images_(connection), ledger_(connection, images_) {}
  void fresh(); // for the next transaction: forgets what the last one changed

  const shop::Wires& wires() const override { return tables_.wires; }
  const shop::Tin& tin() const override { return tables_.tin; }
  const shop::Jobs& jobs() const override { return tables_.jobs; }
  const shop::House& house() const override { return tables_.house; }
  const shop::Machines& machines() const override { return tables_.machines; }
  const shop::Purchases& purchases() const override { return tables_.purchases; }
  const shop::Journal& journal() const override { return tables_.journal; }
  const shop::Outbox& outbox() const override { return tables_.outbox; }
  const shop::Tokens& tokens() const override { return tables_.tokens; }
  const shop::Plans& plans() const override { return tables_.plans; }
  const shop::Misses& misses() const override { return tables_.misses; }
  std::int64_t revision() const override { return revision_of(connection_); }

  std::int64_t put(const shop::Actor& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Wire& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Lot& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Piece& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Job& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Fret& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Stage& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Recheck& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Weekday& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::SpecialDay& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Receiver& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Setting& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Bar& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Pressing& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Reading& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Looked& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Machine& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Outage& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Booking& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::StageRule& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::OwnHours& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::OwnDay& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Supplier& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::Purchase& x) override { return store::put(connection_, images_, x); }
  std::int64_t put(const shop::PurchaseLine& x) override { return store::put(connection_, images_, x); }
  void drop(shop::Ref ref) override;
  void move(const shop::Movement& movement) override { ledger_.move(movement); }
  shop::Backroom& backroom() override { return *this; }
  std::optional<shop::Remembered> recall(std::int64_t actor, std::string_view key,
                                         units::Instant since) const override {
    return store::recall(connection_, actor, key, since);
  }
  void remember(std::int64_t actor, std::string_view key, units::Instant now,
                const shop::Remembered& what) override {
    store::remember(connection_, actor, key, now, what);
  }

  void nested(const std::function<void()>& body) override;
  std::vector<shop::Change> take_changes() override { return images_.take(); }
  std::vector<std::int64_t> take_movements() override { return ledger_.take(); }
  void put_back(const shop::Change& change) override { images_.put_back(change); }
  void reverse_movement(std::int64_t id, std::string_view reason) override { ledger_.reverse(id, reason); }
  shop::Line append(shop::Line line) override;
  void enqueue(const shop::OutboxEntry& entry) override { tables_.outbox.enqueue(entry); }
  void settle(std::int64_t entry, bool delivered, std::optional<units::Instant> not_before,
              bool receiver_failing, bool receiver_disabled) override {
    tables_.outbox.settle(entry, delivered, not_before, receiver_failing, receiver_disabled);
  }
  void lease(std::int64_t entry, units::Instant until) override { tables_.outbox.lease(entry, until); }
  std::int64_t grant(const shop::Token& token) override { return tables_.tokens.grant(token); }
  void withdraw(std::int64_t token, units::Instant now, std::int64_t by) override {
    tables_.tokens.withdraw(token, now, by);
  }
  void keep(const shop::StoredPlan& plan) override { tables_.plans.keep(plan); }
  void keep(const shop::Missed& missed, std::string_view alike, std::size_t most) override {
    tables_.misses.keep(missed, alike, most);
  }
  std::int64_t forget_misses() override { return tables_.misses.forget(); }

private:
  Connection& connection_;
  Tables tables_;
  Images images_;
  Ledger ledger_;
};

} // namespace nutward::store
