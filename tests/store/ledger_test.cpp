// The contract of shop::Store, part three: the ledger, and taking things back.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdlib>
#include <map>
#include <random>

using namespace nutward;
using namespace nutward::test;

namespace {

// What a line of the journal does to be taken back: movements first, then what was changed, newest first.
struct Done {
  std::vector<Change> changes;
  std::vector<std::int64_t> movements;
};

template <class F>
Done done(Store& store, F&& body) {
  Done out;
  store.write([&](Tx& tx) {
    body(tx);
    out = {tx.backroom().take_changes(), tx.backroom().take_movements()};
  });
  return out;
}

Done taken_back(Store& store, const Done& what) {
  return done(store, [&](Tx& tx) {
    for (auto m = what.movements.rbegin(); m != what.movements.rend(); ++m)
      tx.backroom().reverse_movement(*m, "taken back");
    for (auto c = what.changes.rbegin(); c != what.changes.rend(); ++c)
      tx.backroom().put_back(*c);
  });
}

// Lengths by place, added up from the rows themselves.
std::map<std::string, std::int64_t> places(const std::filesystem::path& file) {
  std::map<std::string, std::int64_t> out;
  SQLite::Database db(file.string(), SQLite::OPEN_READONLY);
  SQLite::Statement rows(db, "SELECT from_place, to_place, length_nm FROM movement");
  while (rows.executeStep()) {
    out[rows.getColumn(0).getString()] -= rows.getColumn(2).getInt64();
    out[rows.getColumn(1).getString()] += rows.getColumn(2).getInt64();
  }
  return out;
}

} // namespace

TEST_CASE("wire on hand is what was received less what was taken") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.move(received(1, 12'000_mm));
    Movement cut;
    cut.kind = MovementKind::cut;
    cut.wire = 1;
    cut.from = Place::stock;
    cut.to = Place::kerf;
    cut.length = Length{500'001};
    tx.move(cut);
  });
  CHECK(seen(made.store, [](const View& v) { return v.wires().on_hand(1); }) == Length{11'999'499'999});
  CHECK(seen(made.store, [](const View& v) { return v.wires().on_hand(2); }) == Length{0});
}

TEST_CASE("more wire than there is cannot be taken, and then nothing is") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.move(received(1, 100_mm));
    into_tin(tx, a_piece(1, 50_mm));
    Movement scrap = received(1, Length{100'000'001});
    scrap.kind = MovementKind::scrapped;
    scrap.from = Place::stock;
    scrap.to = Place::scrap;
    try {
      tx.move(scrap);
      FAIL("it was taken");
    } catch (const Problem& p) {
      CHECK(p.fault == Fault::state);
    }
    CHECK_THROWS_AS(tx.move(taken(1, 1, Place::board, Length{50'000'001}, 1)), Problem);
    CHECK_THROWS_AS(tx.move(taken(1, 1, Place::board, 50_mm, 2)), Problem);
    CHECK(tx.wires().on_hand(1) == 100_mm);
    CHECK(tx.tin().find(1)->length == 50_mm);
    scrap.kind = MovementKind::counted; // somebody counted: that is how it is
    tx.move(scrap);
    CHECK(tx.wires().on_hand(1) == Length{-1});
  });
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("a piece that is cut keeps what is left, and is gone when nothing is") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    into_tin(tx, a_piece(1, 80_mm));
    tx.move(taken(1, 1, Place::board, 52_mm, 0));
    tx.move(taken(1, 1, Place::kerf, Length{500'000}, 0));
    CHECK(tx.tin().find(1)->length == 27.5_mm);
    CHECK(tx.tin().find(1)->in_tin);
    tx.move(taken(1, 1, Place::scrap, 27.5_mm, 1));
    CHECK_FALSE(tx.tin().find(1)->in_tin);
    CHECK_FALSE(tx.tin().find(1)->length);
    CHECK(tx.tin().find(1)->count == 0);
    CHECK(tx.tin().sum(1).pieces == 0);
  });
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("putting a piece again does not change what follows from its movements") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    into_tin(tx, a_piece(1, 80_mm));
    Piece p = *tx.tin().find(1);
    p.length = 10_mm;
    p.count = 7;
    p.in_tin = false;
    p.place = "second drawer";
    tx.put(p);
    CHECK(tx.tin().find(1)->length == 80_mm);
    CHECK(tx.tin().find(1)->count == 1);
    CHECK(tx.tin().find(1)->in_tin);
    CHECK(tx.tin().find(1)->place == "second drawer");
  });
}

TEST_CASE("a change is remembered once, as it was before the first one, until it is asked for") {
  Made made;
  made.store.write([](Tx& tx) {
    const auto id = tx.put(a_wire());
    auto changes = tx.backroom().take_changes();
    REQUIRE(changes.size() == 1);
    CHECK(changes[0].ref == Ref{Thing::wire, id});
    CHECK(std::holds_alternative<std::monostate>(changes[0].was));
    CHECK(tx.backroom().take_changes().empty());
    Wire w = *tx.wires().find(id);
    w.name = "second name";
    tx.put(w);
    w.name = "third name";
    tx.put(w);
    tx.drop({Thing::wire, id});
    changes = tx.backroom().take_changes();
    REQUIRE(changes.size() == 1);
    const auto& was = *std::get<std::shared_ptr<const Node>>(changes[0].was);
    CHECK(std::get<std::string>(*was.find("name")) == "medium");
    CHECK(std::get<std::int64_t>(*was.find("crown_width_nm")) == 2'400'000);
    CHECK(std::holds_alternative<std::monostate>(*was.find("barb_width_nm")));
    CHECK_FALSE(tx.wires().find(id));
    tx.backroom().put_back(changes[0]);
    CHECK(tx.wires().find(id)->name == "medium");
    CHECK(tx.backroom().take_changes().size() == 1);
  });
}

TEST_CASE("what was dropped is out of sight everywhere until it is put back") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_lot(1));
    tx.put(a_job(1));
    Actor a = an_actor();
    a.uids = {7};
    tx.put(a);
    tx.put(a_piece(1, 50_mm));
    tx.put(Fret{0, 1, 2, FretState::made, 51_mm, std::nullopt});
    tx.put(Stage{0, 1, "bend", 1, std::nullopt, Instant{50}, {60}, 1});
    Recheck r;
    r.job = 1;
    r.slots = {1};
    tx.put(r);
    tx.put(Weekday{1, "09:00-12:00"});
    tx.put(SpecialDay{0, Day{9}, true, "", ""});
    tx.put(Receiver{0, "board", "http://127.0.0.1:9/", "whsec_AAAA", Shape::event, {}, false, false});
    tx.put(Setting{0, "zone", "Etc/UTC"});
    tx.put(Bar{0, {"long", 112_mm, 90_mm, {}, {}, false}});
    tx.put(Pressing{0, 1, {1, 2}, {}, {}, 1, Instant{60}, {}});
    tx.put(Reading{0, 1, {level::Line::bass, {1, 3}}, false, false, Instant{70}});
    tx.put(Looked{0, 1, 1, 2, true, false, Force{8000}, 6, 26.5, Instant{80}});
  });
  const auto count = [](const View& v) {
    return v.wires().all().size() + v.wires().lots(1).size() + v.wires().lot(1).has_value() +
           v.jobs().open().size() + v.jobs().recent(9).size() + v.jobs().find(1).has_value() +
           v.house().actors().size() + v.house().actor_for_uid(7).has_value() + v.tin().find(1).has_value() +
           v.jobs().frets(1).size() + v.jobs().stages(1).size() + v.jobs().rechecks(1).size() +
           v.jobs().waiting().size() + v.house().week().size() + v.house().special_days().size() +
           v.house().receivers().size() + v.house().setting("zone").has_value() + v.house().bars().size() +
           v.jobs().pressings(1).size() + v.jobs().readings(1).size() + v.jobs().looked(1).size();
  };
  CHECK(seen(made.store, count) == 21);
  const Done dropped = done(made.store, [](Tx& tx) {
    for (int thing = 0; thing < 16; ++thing)
      tx.drop({static_cast<Thing>(thing), 1});
  });
  CHECK(dropped.changes.size() == 16);
  CHECK(seen(made.store, count) == 0);
  taken_back(made.store, dropped);
  CHECK(seen(made.store, count) == 21);
}

TEST_CASE(
    "using a piece, taken back, leaves piece, hold and ledger as they were, and that can be taken back too") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_job(1));
    Piece p = a_piece(1, 52.4_mm);
    p.job = 1;
    p.slot = 3;
    into_tin(tx, p);
    tx.backroom().take_changes();
    tx.backroom().take_movements();
  });
  const Done used = done(made.store, [](Tx& tx) {
    Piece p = *tx.tin().find(1);
    p.job.reset();
    p.slot.reset();
    p.left = End::dressed;
    tx.put(p);
    tx.move(taken(1, 1, Place::board, 51.4_mm, 0));
    tx.move(taken(1, 1, Place::scrap, 1_mm, 1));
    tx.put(Fret{0, 1, 3, FretState::made, 51.4_mm, 1});
  });
  CHECK(used.changes.size() == 2); // the piece and the fret
  CHECK(used.movements.size() == 2);
  CHECK_FALSE(seen(made.store, [](const View& v) { return v.tin().find(1)->in_tin; }));

  const Done back = taken_back(made.store, used);
  made.store.read([](const View& v) {
    const auto p = v.tin().find(1);
    CHECK(p->in_tin);
    CHECK(p->length == 52.4_mm);
    CHECK(p->job == 1);
    CHECK(p->slot == 3);
    CHECK(p->left == End::raw);
    CHECK(v.jobs().frets(1).empty());
  });
  CHECK(made.sqlite->verify().empty());
  CHECK(places(made.file())["board"] == 0);

  taken_back(made.store, back);
  made.store.read([](const View& v) {
    CHECK_FALSE(v.tin().find(1)->in_tin);
    CHECK_FALSE(v.tin().find(1)->job);
    CHECK(v.jobs().frets(1).size() == 1);
  });
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("a piece put into the tin and taken back is out of sight and leaves no length behind") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.backroom().take_changes();
  });
  const Done added = done(made.store, [](Tx& tx) { into_tin(tx, a_piece(1, 50_mm)); });
  const Done back = taken_back(made.store, added);
  CHECK_FALSE(seen(made.store, [](const View& v) { return v.tin().find(1); }));
  CHECK(seen(made.store, [](const View& v) { return v.tin().sum(1).pieces; }) == 0);
  CHECK(places(made.file())["tin"] == 0);
  CHECK(made.sqlite->verify().empty());
  taken_back(made.store, back);
  CHECK(seen(made.store, [](const View& v) { return v.tin().sum(1).length; }) == 50_mm);
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("a movement is taken back once") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.move(received(1, 100_mm));
    const auto made_now = tx.backroom().take_movements();
    REQUIRE(made_now.size() == 1);
    tx.backroom().reverse_movement(made_now[0], "taken back");
    CHECK(tx.wires().on_hand(1) == Length{0});
    CHECK_THROWS_AS(tx.backroom().reverse_movement(made_now[0], "again"), Problem);
    CHECK_THROWS_AS(tx.backroom().reverse_movement(99, "none"), std::out_of_range);
  });
}

TEST_CASE("what fails within a list takes back all that the list did, and only that") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire("kept"));
    tx.move(received(1, 10_mm));
    const auto fails = [&] {
      tx.put(a_wire("lost"));
      tx.move(received(1, 1000_mm));
      tx.backroom().nested([&] { tx.put(a_wire("lost too")); });
      throw Problem(Fault::state, "It cannot be.", "", "");
    };
    CHECK_THROWS_AS(tx.backroom().nested(fails), Problem);
    CHECK(tx.wires().all().size() == 1);
    CHECK(tx.wires().on_hand(1) == 10_mm);
    tx.backroom().nested([&] { tx.put(a_wire("kept too")); });
    CHECK(tx.backroom().take_changes().size() == 2);
    CHECK(tx.backroom().take_movements() == std::vector<std::int64_t>{1});
  });
  CHECK(seen(made.store, [](const View& v) { return v.wires().all().size(); }) == 2);
}

// 2,000 of them, or NUTWARD_MOVES: a release does a million.
TEST_CASE(
    "over thousands of random moves nothing is lost: received = stock + tin + board + scrap + kerf, to the "
    "nanometre",
    "[moves]") {
  const char* told = std::getenv("NUTWARD_MOVES");
  const std::int64_t moves = told == nullptr ? rounds(2000) : std::atoll(told);
  const std::int64_t in_batch = moves > 20'000 ? 1000 : 50, pieces = std::max<std::int64_t>(300, moves / 7);
  Made made;
  std::mt19937_64 random(4'711);
  const auto upto = [&](std::int64_t n) { return std::uniform_int_distribution<std::int64_t>(0, n)(random); };
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_job(1));
  });
  std::int64_t expected = 0, refused = 0;
  std::vector<std::int64_t> reversible;
  for (std::int64_t batch = 0; batch < moves / in_batch; ++batch) {
    made.store.write([&](Tx& tx) {
      for (std::int64_t i = 0; i < in_batch; ++i) {
        const Length length{1 + upto(90'000'000)};
        try {
          switch (upto(4)) {
          case 0:
            tx.move(received(1, length * 3));
            expected += 3 * length.nm;
            break;
          case 1: { // from stock into the tin, with a nip
            Piece p = a_piece(1, length);
            Movement m = taken(1, tx.put(p), Place::tin, length, 1);
            m.kind = MovementKind::made_a_piece;
            m.from = Place::stock;
            tx.move(m);
            break;
          }
          case 2: // part of a piece
            tx.move(taken(1, 1 + upto(pieces), upto(1) == 0 ? Place::board : Place::kerf, length, 0));
            break;
          case 3: // the whole of one
            if (const auto p = tx.tin().find(1 + upto(pieces)); p && p->length)
              tx.move(taken(1, p->id, Place::scrap, *p->length, 1));
            break;
          default:
            if (!reversible.empty()) {
              const std::int64_t id =
                  reversible[static_cast<std::size_t>(upto(std::int64_t(reversible.size()) - 1))];
              tx.backroom().reverse_movement(id, "random");
            }
          }
        } catch (const Problem&) {
          ++refused;
        } catch (const std::logic_error&) {
          ++refused; // a piece that is not there
        }
        for (const auto id : tx.backroom().take_movements())
          reversible.push_back(id);
      }
    });
  }
  CHECK(refused > moves / 100);
  auto at = places(made.file()); // a place that nothing came to is not in it
  std::int64_t inside = 0;
  for (const char* place : {"stock", "tin", "board", "scrap", "kerf"})
    inside += at[place];
  CHECK(inside == -at["outside"]);
  CHECK(at["stock"] == seen(made.store, [](const View& v) { return v.wires().on_hand(1); }).nm);
  CHECK(expected > 0);
  for (const auto& finding : made.sqlite->verify()) {
    // A reversal may leave a piece with less than nothing, which verify tells of; nothing else may be wrong.
    CHECK(finding.what == "It is gone from the tin, but the ledger has a length of it left there.");
  }
}
