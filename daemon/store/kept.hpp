// What a reading connection has read before, as long as the shop's revision is the one it was read at. A
// revision never comes again with other contents, so an answer is the same as from the tables; it only comes
// sooner. What grows without bound is not kept.
#pragma once

#include "store/house.hpp"
#include "store/jobs.hpp"
#include "store/machines.hpp"
#include "store/purchases.hpp"
#include "store/tin.hpp"
#include "store/tokens.hpp"
#include "store/wires.hpp"

#include <map>
#include <tuple>

namespace nutward::store {

// One value; empty after forget().
template <class V>
class Memo {
public:
  template <class Read>
  const V& get(Read&& read) const {
    if (!value_) value_ = read();
    return *value_;
  }
  void forget() { value_.reset(); }

private:
  mutable std::optional<V> value_;
};

// One value for each key.
template <class K, class V>
class MemoBy {
public:
  template <class Key, class Read>
  const V& get(const Key& key, Read&& read) const {
    const auto there = values_.find(key);
    if (there != values_.end()) return there->second;
    if (values_.size() == most) values_.clear();
    return values_.emplace(key, read()).first->second;
  }
  void forget() { values_.clear(); }

private:
  static constexpr std::size_t most = 500;
  mutable std::map<K, V, std::less<>> values_;
};

class KeptWires final : public Wires {
public:
  using Wires::Wires;
  void forget();
  std::optional<shop::Wire> find(std::int64_t id) const override;
  std::vector<shop::Wire> all() const override;
  std::optional<shop::Lot> lot(std::int64_t id) const override;
  shop::Length on_hand(std::int64_t wire) const override;

private:
  const std::vector<shop::Wire>& kept() const;
  Memo<std::vector<shop::Wire>> all_;
  MemoBy<std::int64_t, std::optional<shop::Lot>> lots_;
  MemoBy<std::int64_t, shop::Length> on_hand_;
};

class KeptTin final : public Tin {
public:
  using Tin::Tin;
  void forget();
  shop::TinSum sum(std::int64_t wire) const override;

protected:
  std::vector<pieces::PieceFacts> held(std::int64_t wire, std::int64_t job,
                                       std::optional<int> slot) const override;

private:
  MemoBy<std::int64_t, shop::TinSum> sums_;
  MemoBy<std::tuple<std::int64_t, std::int64_t, std::optional<int>>, std::vector<pieces::PieceFacts>> held_;
};

class KeptJobs final : public Jobs {
public:
  using Jobs::Jobs;
  void forget();
  std::optional<shop::Job> find(std::int64_t id) const override;
  std::vector<shop::Job> open() const override;
  std::vector<shop::Fret> frets(std::int64_t job) const override;
  std::vector<shop::Stage> stages(std::int64_t job) const override;
  std::vector<shop::Took> took(std::string_view stage, std::size_t most) const override;
  std::vector<shop::Recheck> waiting() const override;
  std::vector<shop::ShortestArc> shortest_arcs(std::int64_t wire) const override;

private:
  const std::vector<shop::Job>& kept() const;
  Memo<std::vector<shop::Job>> open_;
  MemoBy<std::int64_t, std::vector<shop::Fret>> frets_;
  MemoBy<std::int64_t, std::vector<shop::Stage>> stages_;
  MemoBy<std::pair<std::string, std::size_t>, std::vector<shop::Took>> took_;
  Memo<std::vector<shop::Recheck>> waiting_;
  MemoBy<std::int64_t, std::vector<shop::ShortestArc>> shortest_arcs_;
};

class KeptHouse final : public House {
public:
  using House::House;
  void forget();
  std::vector<shop::Weekday> week() const override;
  std::vector<shop::SpecialDay> special_days() const override;
  std::optional<std::string> setting(std::string_view name) const override;
  std::optional<shop::Actor> actor_for_uid(std::int64_t uid) const override;

private:
  Memo<std::vector<shop::Weekday>> week_;
  Memo<std::vector<shop::SpecialDay>> special_days_;
  MemoBy<std::string, std::optional<std::string>> settings_;
  MemoBy<std::int64_t, std::optional<shop::Actor>> actors_;
};

class KeptMachines final : public Machines {
public:
  using Machines::Machines;
  void forget();
  std::vector<shop::Machine> all() const override;
  std::vector<shop::StageRule> rules() const override;
  std::vector<shop::OwnHours> own_hours() const override;

private:
  Memo<std::vector<shop::Machine>> all_;
  Memo<std::vector<shop::StageRule>> rules_;
  Memo<std::vector<shop::OwnHours>> own_hours_;
};

class KeptPurchases final : public Purchases {
public:
  using Purchases::Purchases;
  void forget();
  std::vector<shop::Supplier> suppliers() const override;
  std::vector<shop::Purchase> open() const override;
  std::vector<shop::Awaited> lines(std::int64_t purchase) const override;
  std::vector<shop::Delivered> delivered(std::int64_t supplier, std::size_t most) const override;

private:
  Memo<std::vector<shop::Supplier>> suppliers_;
  Memo<std::vector<shop::Purchase>> open_;
  MemoBy<std::int64_t, std::vector<shop::Awaited>> lines_;
  MemoBy<std::pair<std::int64_t, std::size_t>, std::vector<shop::Delivered>> delivered_;
};

class KeptTokens final : public Tokens {
public:
  using Tokens::Tokens;
  void forget() { good_.forget(); }
  std::vector<shop::Token> good() const override {
    return good_.get([&] { return Tokens::good(); });
  }

private:
  Memo<std::vector<shop::Token>> good_;
};

} // namespace nutward::store
