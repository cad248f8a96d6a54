// The contract of shop::Store, part five: whose history a line belongs to, and how histories are read.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

#include <limits>

using namespace nutward;
using namespace nutward::test;

namespace {

constexpr Instant ever{std::numeric_limits<std::int64_t>::min()};
constexpr Bookmark newest{{std::numeric_limits<std::int64_t>::max()}, 0};

// Journals what has changed since the last line, as the executor does.
std::int64_t tell(Tx& tx, std::int64_t actor, std::int64_t happened,
                  std::optional<std::int64_t> undoes = {}) {
  Line l;
  l.actor = actor;
  l.happened = {happened};
  l.recorded = {5'000};
  l.via = "unix";
  l.call = l.inverse = "[]";
  l.answer = "Done.";
  for (const Change& change : tx.backroom().take_changes())
    l.touched.push_back(change.ref);
  tx.backroom().take_movements();
  l.undoes = undoes;
  return tx.backroom().append(l).id;
}

std::vector<std::int64_t> ids(const std::vector<Past>& pasts) {
  std::vector<std::int64_t> out;
  for (const Past& p : pasts)
    out.push_back(p.line.id);
  return out;
}
using Ids = std::vector<std::int64_t>;

Ids about(Store& store, Ref thing, std::optional<int> slot = {}, std::optional<std::int64_t> actor = {}) {
  return seen(store,
              [&](const View& v) { return ids(v.journal().about(thing, slot, actor, ever, newest, 99)); });
}
Ids happened(Store& store, std::optional<std::int64_t> actor, Instant from, Bookmark before,
             std::size_t most = 99) {
  return seen(store, [&](const View& v) { return ids(v.journal().happened(actor, from, before, most)); });
}

constexpr Ref the_wire{Thing::wire, 1}, the_job{Thing::job, 1}, the_piece{Thing::piece, 1};

// Lines 1 to 9 by actors 1 and 2: a wire, its lot, a job, a piece, held for slot 2 and let go, a fret in slot
// 3, a recheck of slots 1 and 3, the job's stage.
void a_week(Store& store) {
  store.write([](Tx& tx) {
    tx.put(an_actor("Mara"));
    tx.put(an_actor("Ines"));
    tx.backroom().take_changes();
    tx.put(a_wire());
    tell(tx, 1, 100);
    tx.put(a_lot(1));
    tell(tx, 1, 200);
    tx.put(a_job(1));
    tell(tx, 2, 300);
    into_tin(tx, a_piece(1, 52_mm));
    tell(tx, 1, 400);
    Piece p = *tx.tin().find(1);
    p.job = 1, p.slot = 2;
    tx.put(p);
    tell(tx, 2, 500);
    p.job = {}, p.slot = {};
    tx.put(p);
    tell(tx, 2, 600);
    Fret f;
    f.job = 1, f.slot = 3;
    tx.put(f);
    tell(tx, 2, 150); // told late
    Recheck r;
    r.job = 1, r.slots = {1, 3};
    tx.put(r);
    tell(tx, 1, 700);
    shop::Stage s;
    s.job = 1, s.kind = "cut", s.actor = 1;
    tx.put(s);
    tell(tx, 1, 700);
  });
}

} // namespace

TEST_CASE("a job's history has what was done to its frets, stages, rechecks and what was held for it, as it "
          "happened") {
  Made made;
  a_week(made.store);
  CHECK(about(made.store, the_job) == Ids{9, 8, 6, 5, 3, 7});
  CHECK(about(made.store, the_job, 2) ==
        Ids{6, 5}); // letting go of a piece is about the slot it was held for
  CHECK(about(made.store, the_job, 3) == Ids{8, 7});
  CHECK(about(made.store, the_job, 1) == Ids{8});
  CHECK(about(made.store, the_job, 4).empty());
  CHECK(about(made.store, {Thing::job, 2}).empty());
  CHECK(about(made.store, the_job, {}, 1) == Ids{9, 8});
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("a wire's history has its lots and movements, a piece's what became of it") {
  Made made;
  a_week(made.store);
  CHECK(about(made.store, the_wire) == Ids{4, 2, 1});
  CHECK(about(made.store, the_piece) == Ids{6, 5, 4});
  made.store.write([](Tx& tx) {
    Movement m = taken(1, 1, Place::board, 52_mm, 1);
    m.job = 1, m.slot = 5;
    tx.move(m);
    tell(tx, 1, 800);
  });
  CHECK(about(made.store, the_piece) == Ids{10, 6, 5, 4});
  CHECK(about(made.store, the_wire) == Ids{10, 4, 2, 1});
  CHECK(about(made.store, the_job, 5) == Ids{10});
  CHECK(about(made.store, the_job) == Ids{10, 9, 8, 6, 5, 3, 7});
}

TEST_CASE("a history of a time or a person is read page by page, each line once") {
  Made made;
  a_week(made.store);
  CHECK(happened(made.store, {}, ever, newest) == Ids{9, 8, 6, 5, 4, 3, 2, 7, 1});
  CHECK(happened(made.store, 2, ever, newest) == Ids{6, 5, 3, 7});
  CHECK(happened(made.store, {}, {150}, {{300}, 0}) == Ids{2, 7}); // from is part of it, before is not
  CHECK(happened(made.store, 1, {700}, {{701}, 0}) == Ids{9, 8});
  CHECK(happened(made.store, 3, ever, newest).empty());
  for (const std::optional<std::int64_t> actor :
       {std::optional<std::int64_t>{}, std::optional<std::int64_t>{1}}) {
    Ids paged;
    for (Bookmark mark = newest;;) {
      const auto page =
          seen(made.store, [&](const View& v) { return v.journal().happened(actor, ever, mark, 1); });
      if (page.empty()) break;
      REQUIRE(page.size() == 1);
      paged.push_back(page[0].line.id);
      mark = {page[0].line.happened, page[0].line.id};
    }
    CHECK(paged == happened(made.store, actor, ever, newest)); // 8 and 9 are of the same second
  }
  Ids paged;
  for (Bookmark mark = newest;;) {
    const auto page =
        seen(made.store, [&](const View& v) { return v.journal().about(the_job, {}, {}, {200}, mark, 2); });
    if (page.empty()) break;
    for (const Past& p : page)
      paged.push_back(p.line.id);
    mark = {page.back().line.happened, page.back().line.id};
  }
  CHECK(paged == Ids{9, 8, 6, 5, 3});
}

TEST_CASE("a line that was taken back names the line that did, in every line of its list") {
  Made made;
  a_week(made.store);
  made.store.write([](Tx& tx) {
    tx.backroom().put_back({the_piece, {}}); // as an undo would, of a line that made the piece
    tell(tx, 2, 900, 4);
  });
  made.store.read([](const View& v) {
    const auto pasts = v.journal().about(the_piece, {}, {}, ever, newest, 99);
    REQUIRE(pasts.size() == 4);
    CHECK(pasts[0].line.undoes == 4);
    CHECK_FALSE(pasts[0].taken_back_in);
    CHECK_FALSE(pasts[1].taken_back_in);
    CHECK(pasts[3].line.id == 4);
    CHECK(pasts[3].taken_back_in == 10);
    CHECK(pasts[3].line.touched == std::vector<Ref>{the_piece});
    CHECK(pasts[3].line.answer == "Done.");
    CHECK(pasts[3].line.recorded.s == 5'000);
  });
}

TEST_CASE("what a failed list would have been about is in no later line") {
  Made made;
  a_week(made.store);
  made.store.write([](Tx& tx) {
    try {
      tx.backroom().nested([&] {
        Fret f;
        f.job = 1, f.slot = 9;
        tx.put(f);
        throw std::runtime_error("no");
      });
    } catch (const std::runtime_error&) {
      tx.backroom().take_changes();
    }
    tx.put(Setting{0, "unit", "in"});
    tell(tx, 1, 900);
  });
  CHECK(about(made.store, the_job, 9).empty());
  CHECK(about(made.store, the_job).front() == 9);
}

TEST_CASE(
    "a reading is in the history of every slot that its edge lay over, and of what the eye saw beside it") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(an_actor("Mara"));
    tx.put(a_wire());
    tx.put(a_job(1));
    tx.backroom().take_changes();
    Reading r;
    r.job = 1;
    r.is.span = {1, 3};
    r.is.looks_sunk = {9};
    r.taken = {100};
    tx.put(r);
    tell(tx, 1, 100);
  });
  CHECK(about(made.store, the_job) == Ids{1});
  for (const int slot : {1, 2, 3, 9})
    CHECK(about(made.store, the_job, slot) == Ids{1});
  CHECK(about(made.store, the_job, 4).empty());
}
