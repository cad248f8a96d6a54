// A shop of its own in a folder that goes away with it, and the things that most tests start from.
#pragma once

#include "store/sqlite.hpp"

#include <filesystem>
#include <memory>
#include <string>

#include <stdlib.h>

namespace nutward::test {

using namespace shop;
using namespace units::literals;

class Folder {
public:
  Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "nutward-store-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for the test");
    path_ = name;
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  const std::filesystem::path& path() const { return path_; }

private:
  std::filesystem::path path_;
};

// The Store that the contract is tested on. Another Store joins by another maker.
struct Made {
  std::unique_ptr<Folder> folder = std::make_unique<Folder>();
  std::unique_ptr<store::Sqlite> sqlite = store::open_sqlite({folder->path() / "shop"});
  Store& store = *sqlite;

  std::filesystem::path home() const { return folder->path() / "shop"; }
  std::filesystem::path file() const { return home() / "shop.db"; }
};

template <class F>
auto written(Store& store, F&& body) {
  decltype(body(std::declval<Tx&>())) out{};
  store.write([&](Tx& tx) { out = body(tx); });
  return out;
}

template <class F>
auto seen(Store& store, F&& body) {
  std::decay_t<decltype(body(std::declval<const View&>()))> out{};
  store.read([&](const View& view) { out = body(view); });
  return out;
}

inline Wire a_wire(const std::string& name = "medium") {
  Wire w;
  w.name = name;
  w.material = "nickel silver";
  w.profile.crown_width = 2.4_mm;
  w.profile.crown_height = 1.2_mm;
  w.profile.tang_depth = 1.8_mm;
  w.profile.tang_thickness = 0.5_mm;
  w.stick = 600_mm;
  w.reorder_at = 3000_mm;
  return w;
}

inline Lot a_lot(std::int64_t wire) {
  Lot l;
  l.wire = wire;
  l.count = 20;
  l.each = 600_mm;
  l.crown_height = 1.21_mm;
  l.supplier = "the wire cart";
  l.price = Money{4250};
  l.received = {1'700'000'000};
  return l;
}

inline Job a_job(std::int64_t wire) {
  Job j;
  j.owner = "bench two";
  j.instrument = "six-string";
  j.wood = "rosewood";
  j.board.scale = 648_mm;
  j.board.slots = 22;
  j.board.nut_width = 43_mm;
  j.board.far_width = 53_mm;
  j.board.far_at = 12;
  j.board.surface = board::Compound{254_mm, 406_mm, Length{480'000'000}};
  j.slots = {1, 2, 3};
  j.wire = wire;
  j.due = Instant{1'700'600'000};
  j.taken_in = {1'700'000'100};
  return j;
}

inline Actor an_actor(const std::string& name = "second bench") {
  Actor a;
  a.name = name;
  a.role = 1;
  return a;
}

// Puts a piece and takes its length from outside into the tin, as one that was found.
inline std::int64_t into_tin(Tx& tx, Piece piece, std::int64_t count = 1) {
  const Length length = piece.length.value_or(Length{});
  const std::int64_t id = tx.put(piece);
  Movement m;
  m.kind = MovementKind::counted;
  m.wire = piece.wire;
  m.piece = id;
  m.from = Place::outside;
  m.to = Place::tin;
  m.length = length;
  m.pieces = count;
  m.reason = "found in the tin";
  tx.move(m);
  return id;
}

inline Piece a_piece(std::int64_t wire, Length length) {
  Piece p;
  p.wire = wire;
  p.kind = pieces::Kind::stick_end;
  p.length = length;
  p.left = End::raw;
  p.right = End::raw;
  p.added = {1'700'000'000};
  return p;
}

inline Movement received(std::int64_t wire, Length length) {
  Movement m;
  m.kind = MovementKind::received;
  m.wire = wire;
  m.length = length;
  return m;
}

inline Movement taken(std::int64_t wire, std::int64_t piece, Place to, Length length, std::int64_t pieces) {
  Movement m;
  m.kind = to == Place::board ? MovementKind::used_in_a_slot : MovementKind::scrapped;
  m.wire = wire;
  m.piece = piece;
  m.from = Place::tin;
  m.to = to;
  m.length = length;
  m.pieces = pieces;
  return m;
}

} // namespace nutward::test
