#include "cutting/fill.hpp"

#include <algorithm>
#include <limits>

namespace nutward::cutting {

namespace {

class Search {
public:
  Search(const std::vector<Candidate>& candidates, std::int64_t room, std::int64_t enough, std::int64_t nodes)
      : c_(candidates), left_(candidates.size()), enough_(room - enough), nodes_(nodes) {
    for (std::size_t i = 0; i < c_.size(); ++i) {
      left_[i] = c_[i].count;
      bonus_ = std::max(bonus_, c_[i].size - c_[i].last);
      shortest_ = i == 0 ? c_[i].last : std::min(shortest_, c_[i].last);
    }
  }

  void run(std::int64_t room, int first) {
    if (first < 0) return descend(0, room);
    const auto at = static_cast<std::size_t>(first);
    if (c_[at].last <= room) record(at, c_[at].size);
    if (c_[at].size > room) return;
    take(at);
    descend(0, room - c_[at].size);
    give_back(at);
  }

  Filling best;
  std::int64_t visited = 0;

private:
  void take(std::size_t i) {
    --left_[i];
    sizes_ += c_[i].size;
    path_.push_back(c_[i].lot);
  }
  void give_back(std::size_t i) {
    ++left_[i];
    sizes_ -= c_[i].size;
    path_.pop_back();
  }
  bool ended() const { return visited > nodes_ || best.sizes >= enough_; }

  void record(std::size_t last, std::int64_t sizes) {
    if (sizes <= best.sizes) return;
    best.sizes = sizes;
    best.lots = path_;
    best.lots.push_back(c_[last].lot);
  }

  // The first candidate from `from` that takes at most `room`, as the last or not.
  std::size_t first_in(std::size_t from, std::int64_t room) const {
    const auto it = std::partition_point(c_.begin() + static_cast<std::ptrdiff_t>(from), c_.end(),
                                         [&](const Candidate& c) { return c.size > room; });
    return static_cast<std::size_t>(it - c_.begin());
  }

  // The best last fret. Those that only go in as the last stand just before those that go in anyhow; they
  // may be longer than what was taken already.
  void finish(std::size_t at, std::int64_t room) {
    if (bonus_ > 0)
      for (std::size_t i = first_in(0, room + bonus_); i < c_.size() && c_[i].size > room; ++i)
        if (left_[i] > 0 && c_[i].last <= room) return record(i, sizes_ + c_[i].size);
    while (at < c_.size() && left_[at] == 0)
      ++at;
    if (at < c_.size()) record(at, sizes_ + c_[at].size);
  }

  void descend(std::size_t from, std::int64_t room) {
    ++visited;
    const std::size_t at = first_in(from, room);
    finish(at, room);
    for (std::size_t i = first_in(at, room - shortest_); i < c_.size() && !ended(); ++i) {
      if (sizes_ + room + bonus_ <= best.sizes) return;
      if (left_[i] == 0) continue;
      take(i);
      descend(i, room - c_[i].size);
      give_back(i);
    }
  }

  const std::vector<Candidate>& c_;
  std::vector<int> left_;
  std::int64_t enough_ = 0;
  std::int64_t nodes_ = 0;
  std::int64_t bonus_ = 0;
  std::int64_t shortest_ = 0;
  std::int64_t sizes_ = 0;
  std::vector<int> path_;
};

} // namespace

Filling fill(const std::vector<Candidate>& candidates, std::int64_t room, int first, std::int64_t enough,
             std::int64_t nodes, Meter& meter) {
  Search search(candidates, room, enough, nodes);
  search.run(room, first);
  meter.spend(static_cast<std::int64_t>(candidates.size()) * 2 + search.visited * 40);
  return std::move(search.best);
}

} // namespace nutward::cutting
