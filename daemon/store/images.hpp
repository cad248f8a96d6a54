// Undo images: how a row was before it was changed, so that it can be put back without anybody knowing what
// it means.
#pragma once

#include "shop/store.hpp"
#include "store/about.hpp"
#include "store/connection.hpp"

#include <set>
#include <utility>
#include <vector>

namespace nutward::store {

// An image is a record of all columns of the row by name, in the types of the database; no value where there
// was none.
//
// Columns that follow from other rows are left as they are when an image is put back: of a piece length_nm,
// count and in_tin (they follow from the movements, which are taken back by themselves) and crown_height_nm
// (from the lot), of a wire on_hand_nm.
class Images {
public:
  explicit Images(Connection& connection) : connection_(connection) {}

  // Before a change: keeps how the thing is, unless that was kept since the last take(). False: it is not
  // there (or out of sight).
  bool note(shop::Ref ref);
  // After a new row was made.
  void made(shop::Ref ref);
  void hide(shop::Ref ref); // takes it out of sight; itself noted
  std::vector<shop::Change> take();
  // What the changes that were taken last are about, for the line that holds them; once.
  std::set<About> take_about() { return std::exchange(about_, {}); }
  // Itself noted as a change.
  void put_back(const shop::Change& change);

  struct Mark {
    std::vector<shop::Change> changes;
    std::set<shop::Ref> noted;
  };
  Mark mark() const { return {changes_, noted_}; }
  void back_to(Mark mark);

private:
  shop::Value now(shop::Ref ref) const; // its image; none where it is not there
  Connection& connection_;
  std::set<std::string> restores_; // statements made so far; the connection keeps references to them
  std::vector<shop::Change> changes_;
  std::set<shop::Ref> noted_;
  std::set<About> about_;
};

} // namespace nutward::store
