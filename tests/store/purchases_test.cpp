// The contract of shop::Store: suppliers, orders and their lines.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

Supplier a_supplier(const std::string& name) {
  Supplier s;
  s.name = name;
  s.pack.sticks = 12;
  s.minimum.mass = Mass{500'000};
  s.lead_days = 7;
  s.note = "by post";
  return s;
}

Purchase a_purchase(std::int64_t supplier, std::optional<Day> promised) {
  Purchase p;
  p.supplier = supplier;
  p.ordered = {1'700'000'000};
  p.promised = p.promised_first = promised;
  return p;
}

PurchaseLine a_line(std::int64_t purchase, std::int64_t count) {
  PurchaseLine l;
  l.purchase = purchase;
  l.wire = 1;
  l.count = count;
  l.each = 600_mm;
  l.price = Money{8000};
  return l;
}

} // namespace

TEST_CASE("a supplier comes back as it was put, and is found by its id when it is out of sight") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_supplier("Quarry"));
    Supplier other;
    other.name = "Mill";
    other.pack.length = 5000_mm;
    tx.put(other);
  });
  made.store.read([](const View& v) {
    const auto all = v.purchases().suppliers();
    REQUIRE(all.size() == 2);
    CHECK(all[0].name == "Mill"); // by name
    CHECK(all[0].pack.length == 5000_mm);
    CHECK(all[0].minimum.any());
    CHECK_FALSE(all[0].lead_days);
    CHECK(all[1].pack.sticks == 12);
    CHECK(all[1].minimum.mass == Mass{500'000});
    CHECK(all[1].lead_days == 7);
    CHECK(all[1].note == "by post");
  });
  made.store.write([](Tx& tx) { tx.drop({Thing::supplier, 1}); });
  made.store.read([](const View& v) {
    CHECK(v.purchases().suppliers().size() == 1);
    CHECK(v.purchases().supplier(1)->name == "Quarry");
    CHECK_FALSE(v.purchases().supplier(3));
  });
}

TEST_CASE("open orders go by the day promised, and what has come of a line is what lots of it are in sight") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_supplier("Quarry"));
    tx.put(a_purchase(1, {}));
    tx.put(a_purchase(1, Day{20'010}));
    tx.put(a_purchase(1, Day{20'000}));
    tx.put(a_line(3, 40));
    tx.put(a_line(3, 8));
    Lot lot = a_lot(1); // 20 of 600 mm
    lot.purchase_line = 1;
    lot.gross = Mass{620'000};
    lot.tare = Mass{120'000};
    tx.put(lot);
    lot.count = 5;
    tx.put(lot);
  });
  made.store.read([](const View& v) {
    const auto open = v.purchases().open();
    REQUIRE(open.size() == 3);
    CHECK(open[0].id == 3);
    CHECK(open[1].promised == Day{20'010});
    CHECK(open[2].id == 1);
    const auto lines = v.purchases().lines(3);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].line.count == 40);
    CHECK(lines[0].line.price == Money{8000});
    CHECK(lines[0].came == 25);
    CHECK(lines[0].came_length == 15'000_mm);
    CHECK(lines[1].came == 0);
    CHECK(v.purchases().line(2)->count == 8);
    const Lot lot = *v.wires().lot(1);
    CHECK(lot.purchase_line == 1);
    CHECK(lot.gross == Mass{620'000});
    CHECK(lot.tare == Mass{120'000});
    CHECK(v.purchases().last_supplier(1) == 1);
    CHECK_FALSE(v.purchases().last_supplier(2));
  });
  made.store.write([](Tx& tx) { tx.drop({Thing::lot, 2}); });
  CHECK(seen(made.store, [](const View& v) { return v.purchases().lines(3)[0].came; }) == 20);
}

TEST_CASE("only orders that arrived tell how long they took, each by the last that came of it") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_supplier("Quarry"));
    for (int i = 0; i < 4; ++i) {
      Purchase p = a_purchase(1, {});
      p.state = i == 3 ? PurchaseState::cancelled : i == 2 ? PurchaseState::open : PurchaseState::arrived;
      if (i != 2) p.closed = Instant{1'700'500'000 + i};
      const auto id = tx.put(p);
      const auto line = tx.put(a_line(id, 10));
      if (i == 3) continue;
      Lot lot = a_lot(1);
      lot.purchase_line = line;
      lot.received = Instant{1'700'100'000};
      tx.put(lot);
      lot.received = Instant{1'700'200'000 + i};
      tx.put(lot);
    }
  });
  made.store.read([](const View& v) {
    const auto all = v.purchases().delivered(1, 10);
    REQUIRE(all.size() == 2);
    CHECK(all[0].purchase == 2);
    CHECK(all[0].ordered == Instant{1'700'000'000});
    CHECK(all[0].received == Instant{1'700'200'001});
    CHECK(v.purchases().delivered(1, 1).size() == 1);
    CHECK(v.purchases().delivered(2, 10).empty());
    const auto closed = v.purchases().closed(10);
    REQUIRE(closed.size() == 3);
    CHECK(closed[0].state == PurchaseState::cancelled); // closed last
  });
}

TEST_CASE("an order that is open has no day on which it was closed") {
  Made made;
  CHECK_THROWS(made.store.write([](Tx& tx) {
    tx.put(a_supplier("Quarry"));
    Purchase p = a_purchase(1, {});
    p.closed = Instant{1'700'000'000};
    tx.put(p);
  }));
}
