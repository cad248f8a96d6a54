// The contract of shop::Store, part five: snapshots, one writer among readers, errors half way, a full disk.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

#include <atomic>
#include <thread>

using namespace nutward;
using namespace nutward::test;

TEST_CASE("an exception from a write takes all of it back, and the store goes on") {
  Made made;
  CHECK_THROWS_AS(made.store.write([](Tx& tx) {
    tx.put(a_wire());
    throw std::runtime_error("no more");
  }),
                  std::runtime_error);
  CHECK(seen(made.store, [](const View& v) { return v.wires().all().size(); }) == 0);
  CHECK(made.store.write([](Tx& tx) {
    CHECK(tx.backroom().take_changes().empty());
    tx.put(a_wire());
  }) == 1);
}

TEST_CASE("the revision counts changing commits, and the listener hears of each after it is readable") {
  Made made;
  std::vector<std::int64_t> heard;
  made.store.on_change([&](std::int64_t revision) {
    heard.push_back(revision);
    CHECK(seen(made.store, [](const View& v) { return v.revision(); }) == revision);
  });
  CHECK(made.store.write([](Tx& tx) { tx.put(a_wire()); }) == 1);
  CHECK(made.store.write([](Tx& tx) { CHECK(tx.revision() == 1); }) == 1); // nothing changed
  CHECK(made.store.write([](Tx& tx) { tx.put(a_wire()); }) == 2);
  CHECK(heard == std::vector<std::int64_t>{1, 2});
}

TEST_CASE("a reader keeps the shop as it was when it began, whatever is written meanwhile") {
  Made made;
  made.store.write([](Tx& tx) { tx.put(a_wire()); });
  made.store.read([&](const View& old) {
    std::thread writer([&] { made.store.write([](Tx& tx) { tx.put(a_wire("second")); }); });
    writer.join();
    CHECK(old.wires().all().size() == 1);
    CHECK(old.revision() == 1);
    made.store.read([](const View& inner) { CHECK(inner.wires().all().size() == 2); });
    CHECK(old.wires().all().size() == 1);
  });
  made.store.write([&](Tx& tx) {
    tx.put(a_wire("third"));
    std::thread reader([&] { made.store.read([](const View& v) { CHECK(v.wires().all().size() == 2); }); });
    reader.join();
  });
}

TEST_CASE("four readers see only whole transactions while one writer writes") {
  Made made;
  made.store.write([](Tx& tx) { tx.put(a_wire()); });
  std::atomic<bool> stop{false};
  std::atomic<int> torn{0}, reads{0};
  std::vector<std::thread> readers;
  for (int i = 0; i < 4; ++i)
    readers.emplace_back([&] {
      while (!stop) {
        made.store.read([&](const View& v) {
          // Each commit takes 1 mm into stock and one piece of 1 mm into the tin.
          const auto pieces = v.tin().sum(1).pieces;
          if (v.wires().on_hand(1) != Length{pieces * 1'000'000} || v.revision() != pieces + 1) ++torn;
          ++reads;
        });
      }
    });
  for (int i = 0; i < 200; ++i)
    made.store.write([](Tx& tx) {
      tx.move(received(1, 1_mm));
      into_tin(tx, a_piece(1, 1_mm));
    });
  while (reads < 100)
    std::this_thread::yield();
  stop = true;
  for (auto& reader : readers)
    reader.join();
  CHECK(torn == 0);
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("several threads may write: one at a time, none lost") {
  Made made;
  made.store.write([](Tx& tx) { tx.put(a_wire()); });
  std::vector<std::thread> writers;
  for (int i = 0; i < 4; ++i)
    writers.emplace_back([&] {
      for (int n = 0; n < 25; ++n)
        made.store.write([](Tx& tx) { tx.move(received(1, 1_mm)); });
    });
  for (auto& writer : writers)
    writer.join();
  CHECK(seen(made.store, [](const View& v) { return v.wires().on_hand(1); }) == 100_mm);
  CHECK(seen(made.store, [](const View& v) { return v.revision(); }) == 101);
}

TEST_CASE("a full disk stops writing with no_room and nothing half done; reading goes on, and so does "
          "writing with room") {
  Folder folder;
  const auto home = folder.path() / "shop";
  int kept = 0;
  {
    auto sqlite = store::open_sqlite({home, 120});
    const auto fill = [&](bool swallow) {
      Wire wire = a_wire(std::string(3000, 'x'));
      for (;; ++kept)
        sqlite->write([&](Tx& tx) {
          try {
            tx.backroom().nested([&] {
              tx.put(wire);
              tx.put(wire);
            });
          } catch (const Problem&) {
            if (!swallow) throw;
          }
        });
    };
    for (const bool swallow : {false, true}) {
      try {
        fill(swallow);
        FAIL("it never filled up");
      } catch (const Problem& problem) {
        CHECK(problem.fault == Fault::no_room);
      }
    }
    CHECK(kept > 5);
    CHECK(seen(*sqlite, [](const View& v) { return v.wires().all().size(); }) == std::size_t(2 * kept));
    CHECK(sqlite->verify().empty());
  }
  auto sqlite = store::open_sqlite({home});
  sqlite->write([](Tx& tx) { tx.put(a_wire()); });
  CHECK(seen(*sqlite, [](const View& v) { return v.wires().all().size(); }) == std::size_t(2 * kept + 1));
}
