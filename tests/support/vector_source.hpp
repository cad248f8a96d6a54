// A tin in memory behind pieces::Source: sorted arrays, and a count of the pages asked for.
#pragma once

#include "pieces/fit.hpp"

#include <algorithm>
#include <cstdint>
#include <map>
#include <optional>
#include <tuple>
#include <utility>
#include <vector>

namespace nutward::support {

class VectorSource : public pieces::Source {
public:
  struct InTin {
    pieces::PieceFacts facts;
    bool held_elsewhere = false; // never given
  };

  // `by_crown`: leave out crowns outside a walk's range, as a source may.
  explicit VectorSource(const std::vector<InTin>& tin, bool by_crown = false) : by_crown_(by_crown) {
    for (const InTin& piece : tin) {
      if (piece.held_elsewhere) continue;
      const auto& f = piece.facts;
      const bool pulled = f.kind == pieces::Kind::pulled_fret;
      for (const std::optional<std::int64_t> lot : {std::optional<std::int64_t>{}, std::optional{f.lot}}) {
        shelves_[{pulled, f.raw_ends, lot}].up.push_back(f);
      }
    }
    for (auto& [key, shelf] : shelves_) {
      shelf.down = shelf.up;
      std::sort(shelf.up.begin(), shelf.up.end(),
                [](const auto& a, const auto& b) { return up_key(a) < up_key(b); });
      std::sort(shelf.down.begin(), shelf.down.end(),
                [](const auto& a, const auto& b) { return down_key(a) < down_key(b); });
    }
  }

  std::vector<pieces::PieceFacts> page(const pieces::Walk& walk, const std::optional<pieces::Mark>& after,
                                       std::size_t at_most) const override {
    ++pages;
    const auto shelf = shelves_.find({walk.pulled, walk.raw_ends, walk.lot});
    if (shelf == shelves_.end()) return {};
    const auto key = walk.upward ? up_key : down_key;
    const auto& row = walk.upward ? shelf->second.up : shelf->second.down;
    const std::int64_t start = walk.upward ? walk.shortest.nm : -walk.longest.nm;
    auto at = std::partition_point(row.begin(), row.end(), [&](const auto& f) {
      if (!after) return std::get<0>(key(f)) < start;
      pieces::PieceFacts mark;
      mark.length = after->length, mark.added = after->added, mark.id = after->id;
      return key(f) <= key(mark);
    });
    std::vector<pieces::PieceFacts> given;
    for (; at != row.end() && given.size() < at_most; ++at) {
      if (at->length < walk.shortest || at->length > walk.longest) break;
      if (by_crown_ && out_of_crown(walk, *at)) continue;
      if (walk.tangs != pieces::Tangs::any && (walk.tangs == pieces::Tangs::nipped) != at->tang.has_value())
        continue;
      given.push_back(*at);
    }
    read += given.size();
    return given;
  }

  mutable std::size_t pages = 0, read = 0;

private:
  struct Shelf {
    std::vector<pieces::PieceFacts> up, down;
  };
  using Key = std::tuple<std::int64_t, std::int64_t, std::int64_t>;
  static Key up_key(const pieces::PieceFacts& f) { return {f.length.nm, f.added.s, f.id}; }
  static Key down_key(const pieces::PieceFacts& f) { return {-f.length.nm, f.added.s, f.id}; }
  static bool out_of_crown(const pieces::Walk& walk, const pieces::PieceFacts& f) {
    return f.crown_height && ((walk.crown_from && *f.crown_height < *walk.crown_from) ||
                              (walk.crown_to && *f.crown_height > *walk.crown_to));
  }

  bool by_crown_;
  std::map<std::tuple<bool, int, std::optional<std::int64_t>>, Shelf> shelves_;
};

} // namespace nutward::support
