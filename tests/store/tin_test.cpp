// The contract of shop::Store, part two: the tin.
#include "pieces/fit.hpp"
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

#include <algorithm>
#include <random>

using namespace nutward;
using namespace nutward::test;
using pieces::Mark;
using pieces::PieceFacts;
using pieces::Walk;

namespace {

Walk walk_of(int raw_ends, bool upward = true) {
  Walk w;
  w.raw_ends = raw_ends;
  w.shortest = 1_mm;
  w.longest = 2000_mm;
  w.upward = upward;
  return w;
}

std::vector<std::int64_t> ids(const std::vector<PieceFacts>& pieces) {
  std::vector<std::int64_t> out;
  for (const auto& p : pieces)
    out.push_back(p.id);
  return out;
}

std::vector<std::int64_t> ids(const std::vector<Piece>& pieces) {
  std::vector<std::int64_t> out;
  for (const auto& p : pieces)
    out.push_back(p.id);
  return out;
}

using Ids = std::vector<std::int64_t>;

// Six pieces of wire 1 with two raw ends: lengths 50, 52, 52, 54, and the 52s younger first; 5 held, 6
// pulled.
void fill(Tx& tx) {
  tx.put(a_wire());
  tx.put(a_wire("other"));
  tx.put(a_job(1));
  tx.put(a_lot(1));
  into_tin(tx, a_piece(1, 50_mm));
  Piece young = a_piece(1, 52_mm);
  young.added = {1'700'000'900};
  into_tin(tx, young);
  Piece old = a_piece(1, 52_mm);
  old.lot = 1;
  into_tin(tx, old);
  into_tin(tx, a_piece(1, 54_mm));
  Piece held = a_piece(1, 53_mm);
  held.job = 1;
  held.slot = 3;
  into_tin(tx, held);
  Piece pulled = a_piece(1, 51_mm);
  pulled.kind = pieces::Kind::pulled_fret;
  into_tin(tx, pulled);
}

} // namespace

TEST_CASE("a piece comes back as it was put, and its length from the movement that took it into the tin") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_lot(1));
    tx.put(a_job(1));
    Piece p = a_piece(1, Length{52'400'001});
    p.lot = 1;
    p.kind = pieces::Kind::short_fret;
    p.measured = Measured::across;
    p.left = End::dressed;
    p.right = End::unknown;
    p.tang = 46_mm;
    p.bend_radius = 254_mm;
    p.place = "third drawer";
    p.job = 1;
    p.slot = 9;
    CHECK(into_tin(tx, p) == 1);
    CHECK(tx.put(a_piece(1, 60_mm)) == 2); // no movement: it is nowhere
  });
  made.store.read([](const View& v) {
    const auto p = v.tin().find(1);
    REQUIRE(p);
    CHECK(p->length == Length{52'400'001});
    CHECK(p->lot == 1);
    CHECK(p->kind == pieces::Kind::short_fret);
    CHECK(p->measured == Measured::across);
    CHECK(p->left == End::dressed);
    CHECK(p->right == End::unknown);
    CHECK(p->tang == 46_mm);
    CHECK(p->bend_radius == 254_mm);
    CHECK(p->count == 1);
    CHECK(p->place == "third drawer");
    CHECK(p->job == 1);
    CHECK(p->slot == 9);
    CHECK(p->added.s == 1'700'000'000);
    CHECK(p->in_tin);
    const auto nowhere = v.tin().find(2);
    REQUIRE(nowhere);
    CHECK_FALSE(nowhere->in_tin);
    CHECK_FALSE(nowhere->length);
    CHECK(nowhere->count == 0);
  });
}

TEST_CASE("a walk gives free pieces by length, of equal ones the oldest first in both directions") {
  Made made;
  made.store.write(fill);
  made.store.read([](const View& v) {
    CHECK(ids(v.tin().page(1, walk_of(2), std::nullopt, 9, std::nullopt, std::nullopt)) == Ids{1, 3, 2, 4});
    CHECK(ids(v.tin().page(1, walk_of(2, false), std::nullopt, 9, std::nullopt, std::nullopt)) ==
          Ids{4, 3, 2, 1});
    CHECK(ids(v.tin().page(1, walk_of(1), std::nullopt, 9, std::nullopt, std::nullopt)).empty());
    CHECK(ids(v.tin().page(2, walk_of(2), std::nullopt, 9, std::nullopt, std::nullopt)).empty());
    Walk w = walk_of(2);
    w.shortest = 52_mm;
    w.longest = 54_mm;
    CHECK(ids(v.tin().page(1, w, std::nullopt, 9, std::nullopt, std::nullopt)) ==
          Ids{3, 2, 4}); // both ends included
    w.pulled = true;
    CHECK(v.tin().page(1, w, std::nullopt, 9, std::nullopt, std::nullopt).empty());
    w.shortest = 51_mm;
    CHECK(ids(v.tin().page(1, w, std::nullopt, 9, std::nullopt, std::nullopt)) == Ids{6});
  });
}

TEST_CASE("a walk goes on after its mark, page by page, in either direction") {
  Made made;
  made.store.write(fill);
  made.store.read([](const View& v) {
    for (const bool upward : {true, false}) {
      Ids got;
      std::optional<Mark> mark;
      for (;;) {
        const auto page = v.tin().page(1, walk_of(2, upward), mark, 1, std::nullopt, std::nullopt);
        if (page.empty()) break;
        REQUIRE(page.size() == 1);
        got.push_back(page[0].id);
        mark = Mark{page[0].length, page[0].added, page[0].id};
      }
      CHECK(got == (upward ? Ids{1, 3, 2, 4} : Ids{4, 3, 2, 1}));
    }
  });
}

TEST_CASE("a walk includes what is held for this slot or for the whole job, in its place and marked") {
  Made made;
  made.store.write(fill);
  made.store.write([](Tx& tx) {
    Piece whole = a_piece(1, 52_mm);
    whole.job = 1;
    into_tin(tx, whole); // 7, held for job 1 as a whole
  });
  made.store.read([](const View& v) {
    const auto got = v.tin().page(1, walk_of(2), std::nullopt, 9, 1, 3);
    CHECK(ids(got) == Ids{1, 3, 7, 2, 5, 4});
    REQUIRE(got.size() == 6);
    CHECK(got[2].held_for_this);
    CHECK(got[4].held_for_this);
    CHECK_FALSE(got[0].held_for_this);
    CHECK(ids(v.tin().page(1, walk_of(2), std::nullopt, 9, 1, 4)) == Ids{1, 3, 7, 2, 4});
    CHECK(ids(v.tin().page(1, walk_of(2), std::nullopt, 2, 1, 3)) == Ids{1, 3});
    const Mark at{52_mm, {1'700'000'900}, 2};
    CHECK(ids(v.tin().page(1, walk_of(2), at, 9, 1, 3)) == Ids{5, 4});
    CHECK(ids(v.tin().page(1, walk_of(2, false), at, 9, 1, 3)) == Ids{1});
    CHECK(ids(v.tin().held_for(1)) == Ids{7, 5});
  });
}

TEST_CASE("a walk can keep to one lot, and to crowns that are alike or unknown") {
  Made made;
  made.store.write(fill);
  made.store.read([](const View& v) {
    Walk w = walk_of(2);
    w.lot = 1;
    const auto of_lot = v.tin().page(1, w, std::nullopt, 9, std::nullopt, std::nullopt);
    CHECK(ids(of_lot) == Ids{3});
    CHECK(of_lot.at(0).crown_height == 1.21_mm);
    CHECK(of_lot.at(0).lot == 1);
    w = walk_of(2, false);
    w.crown_from = 1.25_mm;
    w.crown_to = 1.31_mm;
    CHECK(ids(v.tin().page(1, w, std::nullopt, 9, std::nullopt, std::nullopt)) == Ids{4, 2, 1});
  });
  made.store.write([](Tx& tx) { // measured anew: the pieces of the lot follow
    Lot lot = *tx.wires().lot(1);
    lot.crown_height = 1.26_mm;
    tx.put(lot);
  });
  made.store.read([](const View& v) {
    Walk w = walk_of(2);
    w.crown_from = 1.25_mm;
    CHECK(ids(v.tin().page(1, w, std::nullopt, 9, std::nullopt, std::nullopt)) == Ids{1, 3, 2, 4});
  });
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("near gives the nearest first, held and pulled ones too, both limits included") {
  Made made;
  made.store.write(fill);
  made.store.read([](const View& v) {
    CHECK(ids(v.tin().near(1, 52.4_mm, 0.4_mm, 9)) == Ids{2, 3});
    CHECK(ids(v.tin().near(1, 52.6_mm, 0.5_mm, 9)) == Ids{5});
    CHECK(ids(v.tin().near(1, 52_mm, 2_mm, 4)) == Ids{2, 3, 5, 6});
    CHECK(ids(v.tin().near(std::nullopt, 50.5_mm, 0.5_mm, 9)) == Ids{1, 6});
    CHECK(v.tin().near(2, 52_mm, 2_mm, 9).empty());
  });
}

TEST_CASE("the tin is summed, listed and paged, with handfuls that nobody has measured last") {
  Made made;
  made.store.write(fill);
  made.store.write([](Tx& tx) {
    Piece handful = a_piece(1, 1_mm);
    handful.length.reset();
    handful.measured = Measured::not_at_all;
    into_tin(tx, handful, 12);
  });
  made.store.read([](const View& v) {
    const TinSum sum = v.tin().sum(1);
    CHECK(sum.pieces == 6);
    CHECK(sum.length == 312_mm); // 50 + 52 + 52 + 54 + 53 + 51
    CHECK(sum.unmeasured == 12);
    CHECK(sum.held == 1);
    CHECK(v.tin().sum(2).pieces == 0);
    CHECK(ids(v.tin().list(1, std::nullopt, 4)) == Ids{1, 6, 2, 3});
    CHECK(ids(v.tin().list(1, 3, 4)) == Ids{5, 4, 7});
    CHECK(v.tin().list(1, 7, 4).empty());
    const auto unmeasured = v.tin().unmeasured(1, 9);
    CHECK(ids(unmeasured) == Ids{7});
    CHECK(unmeasured.at(0).count == 12);
    CHECK_FALSE(unmeasured.at(0).length);
  });
}

namespace {

struct TinOf : pieces::Source {
  TinOf(const Tin& t, std::int64_t w) : tin(t), wire(w) {}
  std::vector<PieceFacts> page(const Walk& walk, const std::optional<Mark>& after,
                               std::size_t at_most) const override {
    return tin.page(wire, walk, after, at_most, 1, 3);
  }
  const Tin& tin;
  std::int64_t wire;
};

// Judges and sorts them all.
std::vector<std::int64_t> by_force(const std::vector<PieceFacts>& all, const pieces::Wanted& wanted,
                                   const pieces::FitSettings& settings, std::size_t how_many) {
  std::vector<pieces::Rank> ranks;
  for (const PieceFacts& p : all) {
    if (p.kind == pieces::Kind::pulled_fret) continue;
    const auto verdict = pieces::judge(p, wanted, settings);
    if (verdict.outcome == pieces::Outcome::fits || verdict.outcome == pieces::Outcome::borderline)
      ranks.push_back(pieces::rank(p, verdict, wanted));
  }
  std::sort(ranks.begin(), ranks.end());
  std::vector<std::int64_t> out;
  for (std::size_t i = 0; i < std::min(how_many, ranks.size()); ++i)
    out.push_back(ranks[i].id);
  return out;
}

} // namespace

TEST_CASE(
    "the best pieces found by walking the tin are those found by judging every one, in 300 random tins") {
  Made made;
  std::mt19937 random(20'261'212);
  const auto upto = [&](int n) { return std::uniform_int_distribution<int>(0, n)(random); };
  made.store.write([](Tx& tx) {
    tx.put(a_wire("first"));
    tx.put(a_job(1));
  });
  const pieces::FitSettings settings;
  int offered = 0;
  for (int round = 0; round < 300; ++round) {
    std::vector<PieceFacts> all;
    std::int64_t wire = 0;
    made.store.write([&](Tx& tx) {
      wire = tx.put(a_wire("tin " + std::to_string(round)));
      std::vector<Lot> lots;
      for (int i = 0; i < 3; ++i) {
        Lot lot = a_lot(wire);
        lot.crown_height = i == 2 ? std::nullopt : std::optional(Length{1'200'000 + 20'000 * upto(3)});
        lot.id = tx.put(lot);
        lots.push_back(lot);
      }
      const int count = upto(24);
      for (int i = 0; i < count; ++i) {
        Piece p = a_piece(wire, Length{48'000'000 + 100'000LL * upto(120)});
        p.kind = static_cast<pieces::Kind>(upto(2));
        p.left = static_cast<End>(upto(2));
        p.right = static_cast<End>(upto(2));
        p.added = {1'700'000'000 + upto(3)};
        const Lot& lot = lots[static_cast<std::size_t>(upto(2))];
        p.lot = lot.id;
        const int hold = upto(6);
        if (hold <= 1) p.job = 1;
        if (hold == 1) p.slot = 3 + upto(1);
        p.id = into_tin(tx, p);
        if (p.slot.value_or(3) != 3) continue; // held for another slot
        all.push_back({p.id, p.kind, *p.length, (p.left != End::dressed) + (p.right != End::dressed),
                       lot.crown_height, lot.id, p.added, p.job.has_value()});
      }
    });
    pieces::Wanted wanted;
    wanted.need = board::need(Length{50'000'000 + 100'000LL * upto(60)},
                              static_cast<board::EndStyle>(upto(1)), settings);
    if (upto(1) == 0) wanted.crown_height = 1.22_mm;
    if (!all.empty() && upto(1) == 0) wanted.lot = all.front().lot;
    made.store.read([&](const View& v) {
      Ids got;
      for (const auto& c : pieces::best(TinOf(v.tin(), wire), wanted, settings, {}, 5))
        got.push_back(c.piece.id);
      INFO("tin " << round);
      CHECK(got == by_force(all, wanted, settings, 5));
      offered += static_cast<int>(got.size());
    });
  }
  CHECK(offered > 500); // else the tins were of no use
}

TEST_CASE("bins: measured pieces by range of length, each with the place where most of them are") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_wire("other"));
    const auto add = [&](std::int64_t wire, Length length, const std::string& place) {
      Piece p = a_piece(wire, length);
      p.place = place;
      return into_tin(tx, p);
    };
    add(1, 50_mm, "b");
    add(1, 54.999999_mm, "a");
    add(1, 52_mm, "a");
    add(1, 55_mm, "");
    add(1, 56_mm, "");
    add(1, 57_mm, "c");
    add(1, 9'999_mm, "d");
    add(1, 10'000_mm, "e"); // beyond
    add(2, 50_mm, "f");
  });
  made.store.read([](const View& v) {
    const auto bins = v.tin().bins(1, 5_mm);
    REQUIRE(bins.size() == 3);
    CHECK(bins[0].index == 10);
    CHECK(bins[0].pieces == 3);
    CHECK(bins[0].place == "a");
    CHECK(bins[1].index == 11);
    CHECK(bins[1].pieces == 3);
    CHECK(bins[1].place == "c"); // no place is no answer where one has a place
    CHECK(bins[2].index == 1999);
    CHECK(v.tin().bins(3, 5_mm).empty());
  });
}

TEST_CASE("a piece is idle since it was put in or a line touched it, held ones and unmeasured ones never") {
  Made made;
  std::int64_t old = 0, touched = 0;
  made.store.write([&](Tx& tx) {
    tx.put(an_actor());
    tx.put(a_wire());
    Piece p = a_piece(1, 52_mm);
    p.added = {100};
    old = into_tin(tx, p);
    touched = into_tin(tx, p);
    p.added = {200};
    into_tin(tx, p);
    p.added = {100};
    p.length.reset();
    into_tin(tx, p, 5);
    p.length = 40_mm;
    p.job = tx.put(a_job(1));
    into_tin(tx, p);
  });
  made.store.write([&](Tx& tx) {
    tx.put(*tx.tin().find(touched));
    Line line;
    line.recorded = line.happened = {150};
    line.actor = 1;
    line.via = "test";
    line.call = line.inverse = "[]";
    line.touched = {{Thing::piece, touched}};
    tx.backroom().append(line);
  });
  const auto idle = [&](std::int64_t before, std::size_t most = 9) {
    return seen(made.store, [&](const View& v) { return v.tin().idle(1, {before}, most); });
  };
  CHECK(idle(100).empty());
  REQUIRE(idle(101).size() == 1);
  CHECK(idle(101)[0].piece.id == old);
  CHECK(idle(101)[0].since == Instant{100});
  REQUIRE(idle(151).size() == 2);
  CHECK(idle(151)[1].since == Instant{150});
  CHECK(idle(201).size() == 3);
  CHECK(idle(201, 2).size() == 2);
}

TEST_CASE(
    "a piece that is held for several slots comes back in their order, and is offered for each of them") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_job(1));
    Piece p = a_piece(1, 160_mm);
    p.job = 1;
    p.slot = 12;
    p.more_slots = {3, 1};
    into_tin(tx, p);
    Job job = tx.jobs().find(1).value();
    job.set_aside = {2, 5};
    tx.put(job);
  });
  made.store.read([](const View& v) {
    const Piece p = v.tin().find(1).value();
    CHECK(p.slot == 12);
    CHECK(p.more_slots == std::vector{3, 1});
    CHECK(v.tin().held_for(1).front().more_slots == std::vector{3, 1});
    for (const int slot : {12, 3, 1})
      CHECK(v.tin().page(1, walk_of(2), {}, 5, 1, slot).size() == 1);
    for (const int slot : {2, 11, 13})
      CHECK(v.tin().page(1, walk_of(2), {}, 5, 1, slot).empty());
    CHECK(v.tin().page(1, walk_of(2), {}, 5, {}, {}).empty());
    CHECK(v.jobs().find(1).value().set_aside == std::vector{2, 5});
  });
}
