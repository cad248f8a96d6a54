#include "cutting/exchange.hpp"

#include <algorithm>
#include <map>
#include <queue>
#include <tuple>

namespace nutward::cutting {

namespace {

constexpr std::size_t none = SIZE_MAX;
constexpr int most_tries = 12;          // unused pieces judged for one slot, of the shortest and of the long
constexpr std::size_t most_nodes = 400; // slots that go on looking

// A slot that looks for a place, since `by`'s slot took the one that it had.
struct Node {
  std::size_t slot = 0;
  std::size_t by = none;      // of nodes_
  std::size_t cutting = none; // where it was served
  Price price;                // of the chain so far
};

// Where a chain ends: the node's slot joins a cutting, gets one of its own, or (neither) goes unserved.
struct End {
  std::size_t node = none;
  std::size_t joins = none;
  Cutting own;
};

bool takes_none(const Price& price) {
  return price.sticks <= 0 && price.taken <= 0;
}

class Exchange {
public:
  Exchange(const Problem& problem, const Supply& supply, Draft& draft, Meter& meter)
      : p_(problem), draft_(draft), meter_(meter), stock_(supply.stock) {
    for (const std::size_t i : supply.pieces)
      spare_.emplace(p_.pieces[i].facts.length, i);
    for (std::size_t c = 0; c < draft.cuttings.size(); ++c)
      index(c);
    for (const Slot& s : p_.slots)
      most_short_ = std::max(most_short_, s.need.cut - s.need.least);
  }

  void run(std::size_t slot) {
    reach({slot, none, none, {}});
    while (!queue_.empty() && nodes_.size() < most_nodes && !meter_.over()) {
      const std::size_t at = std::get<1>(queue_.top());
      queue_.pop();
      look_for_end(at);
      if (end_.node != none && takes_none(least_)) break;
      if (end_.node != none && !(nodes_[at].price < least_)) break; // longer chains hardly get cheaper
      look_for_places(at);
    }
    if (end_.node != none)
      make();
    else
      leave_one();
  }

private:
  void index(std::size_t c) {
    const Cutting& cutting = draft_.cuttings[c];
    served_.push_back(serve(p_, cutting));
    Length sum{};
    for (const std::size_t s : cutting.slots)
      sum += size_of(p_, s);
    sizes_.push_back(sum);
    if (cutting.source.from == From::stock) {
      --stock_[cutting.source.index];
      others_.push_back(c);
      return;
    }
    const Length length = p_.pieces[cutting.source.index].facts.length;
    const auto [from, to] = spare_.equal_range(length);
    const auto it =
        std::find_if(from, to, [&](const auto& entry) { return entry.second == cutting.source.index; });
    if (it != to) spare_.erase(it);
    if (cutting.slots.size() > 1)
      others_.push_back(c);
    else
      singles_.emplace(length, c);
  }

  void reach(Node node) {
    reached_.resize(p_.slots.size(), 0);
    reached_[node.slot] = 1;
    nodes_.push_back(node);
    queue_.emplace(node.price, nodes_.size() - 1);
  }
  bool on_path(std::size_t node, std::size_t cutting) const {
    for (; node != none; node = nodes_[node].by)
      if (nodes_[node].cutting == cutting) return true;
    return false;
  }

  void offer(const Price& price, End end) {
    if (end_.node != none && !(price < least_)) return;
    least_ = price;
    end_ = std::move(end);
  }
  void offer_own(std::size_t at, const Source& source) {
    Cutting own{source, {nodes_[at].slot}};
    const auto served = serve(p_, own);
    if (served) offer(nodes_[at].price + served->price, {at, none, std::move(own)});
  }

  void look_for_end(std::size_t at) {
    const std::size_t slot = nodes_[at].slot;
    const Need& need = p_.slots[slot].need;
    for (const Length from : {need.least, need.cut + p_.settings.nip_loss + p_.least_useful}) {
      auto it = spare_.lower_bound(from);
      for (int tries = 0; tries < most_tries && it != spare_.end(); ++tries, ++it)
        offer_own(at, {From::piece, it->second});
    }
    if (end_.node != none && takes_none(least_)) return;
    for (std::size_t i = 0; i < stock_.size(); ++i)
      if (stock_[i] > 0) offer_own(at, {From::stock, i});
    for (const std::size_t c : others_)
      look_beside(at, c);
    for (auto it = singles_.lower_bound(need.cut + p_.least_useful); it != singles_.end(); ++it)
      look_beside(at, it->second);
    meter_.spend(5'000 + 20 * static_cast<std::int64_t>(others_.size()));
  }
  Length room_of(const Source& source) const {
    if (source.from == From::stock) return room(p_, p_.stock[source.index]);
    return room(p_, p_.pieces[source.index]) + most_short_;
  }
  void look_beside(std::size_t at, std::size_t c) {
    const std::size_t slot = nodes_[at].slot;
    const Cutting& cutting = draft_.cuttings[c];
    if (sizes_[c] + size_of(p_, slot) > room_of(cutting.source) || on_path(at, c)) return;
    Cutting more = cutting;
    more.slots.push_back(slot);
    meter_.spend(400 * static_cast<std::int64_t>(more.slots.size()));
    const auto after = order_best(p_, more);
    if (after) offer(nodes_[at].price + (after->price - served_[c]->price), {at, c, {}});
  }

  // Cuttings that could serve the node's slot instead of another.
  void look_for_places(std::size_t at) {
    const std::size_t slot = nodes_[at].slot;
    const Length to = p_.slots[slot].need.cut + p_.settings.trim_limit + 2 * p_.settings.dressing_loss;
    for (auto it = singles_.lower_bound(p_.slots[slot].need.least);
         it != singles_.end() && it->first <= to;) {
      const std::size_t c = it->second;
      const std::size_t other = draft_.cuttings[c].slots.front();
      meter_.spend(200);
      const auto instead = reached_[other] == 0
                               ? serve_piece(p_, p_.pieces[draft_.cuttings[c].source.index], {&slot, 1})
                               : std::nullopt;
      if (instead) reach({other, at, c, nodes_[at].price + (instead->price - served_[c]->price)});
      it = instead ? singles_.erase(it) : std::next(it);
    }
    for (const std::size_t c : others_)
      if (!on_path(at, c)) look_in(at, c);
  }
  void look_in(std::size_t at, std::size_t c) {
    const std::size_t slot = nodes_[at].slot;
    const Cutting& cutting = draft_.cuttings[c];
    const Length most = room_of(cutting.source) - size_of(p_, slot) - sizes_[c];
    for (std::size_t k = 0; k < cutting.slots.size(); ++k) {
      const std::size_t other = cutting.slots[k];
      meter_.spend(10);
      if (reached_[other] != 0 || nothing_ > most + size_of(p_, other)) continue;
      Cutting now = cutting;
      now.slots[k] = slot;
      meter_.spend(400 * static_cast<std::int64_t>(now.slots.size()));
      const auto instead = order_best(p_, now);
      if (instead) reach({other, at, c, nodes_[at].price + (instead->price - served_[c]->price)});
    }
  }

  void replace(std::size_t c, std::size_t before, std::size_t after) {
    Cutting& cutting = draft_.cuttings[c];
    *std::find(cutting.slots.begin(), cutting.slots.end(), before) = after;
    order_best(p_, cutting);
  }
  void make_room_for(std::size_t node) {
    for (std::size_t at = node; nodes_[at].by != none; at = nodes_[at].by)
      replace(nodes_[at].cutting, nodes_[at].slot, nodes_[nodes_[at].by].slot);
  }
  void make() {
    const std::size_t slot = nodes_[end_.node].slot;
    make_room_for(end_.node);
    if (end_.joins == none) {
      draft_.cuttings.push_back(std::move(end_.own));
      return;
    }
    draft_.cuttings[end_.joins].slots.push_back(slot);
    order_best(p_, draft_.cuttings[end_.joins]);
  }
  void leave_one() {
    std::size_t last = 0;
    for (std::size_t at = 1; at < nodes_.size(); ++at)
      if (p_.slots[nodes_[at].slot].due > p_.slots[nodes_[last].slot].due) last = at;
    make_room_for(last);
    std::vector<std::size_t>& out = draft_.unserved;
    out.insert(std::upper_bound(out.begin(), out.end(), nodes_[last].slot), nodes_[last].slot);
  }

  static constexpr Length nothing_{};

  const Problem& p_;
  Draft& draft_;
  Meter& meter_;
  std::vector<int> stock_;
  std::multimap<Length, std::size_t> spare_;   // unused pieces
  std::multimap<Length, std::size_t> singles_; // cuttings of one piece for one slot
  std::vector<std::size_t> others_;            // cuttings of several slots, or of stock
  std::vector<std::optional<Served>> served_;  // by cutting
  std::vector<Length> sizes_;                  // by cutting
  std::vector<char> reached_;
  std::vector<Node> nodes_;
  using Entry = std::tuple<Price, std::size_t>;
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> queue_;
  Length most_short_; // how much shorter than cut a fret may be
  Price least_;
  End end_;
};

} // namespace

void exchange(const Problem& p, const Supply& supply, std::size_t slot, Draft& draft, Meter& meter) {
  Exchange(p, supply, draft, meter).run(slot);
}

} // namespace nutward::cutting
