// Every kind of board comes back from the disk as it was put there; nipped pieces are found among the others.
#include "store/lists.hpp"
#include "support/catch.hpp"
#include "support/show.hpp"

#include "store/shop_in_a_folder.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <random>

using namespace nutward;
using namespace nutward::test;
using board::MeasuredWidth;
using board::Spot;

namespace {

board::Board plain() {
  board::Board b;
  b.scale = 648_mm;
  b.slots = 5;
  b.nut_width = 43_mm;
  b.far_width = 53_mm;
  b.far_at = 480_mm;
  return b;
}

board::Board fanned() {
  board::Board b = plain();
  b.divisions = 19;
  b.far_at = 5;
  b.surface = board::Compound{254_mm, 406_mm, 5};
  b.zero_fret = true;
  b.fan = board::Fan{622.3_mm, 4, Length{2'512'345}};
  b.ends = board::EndStyle::filed;
  b.binding = 1.6_mm;
  return b;
}

board::Board measured() {
  board::Board b = plain();
  b.positions = {72_mm, 129.6_mm, 162_mm, 216_mm, Length{259'200'001}};
  b.more_widths = {{Spot{3}, 46.1_mm}, {Spot{300_mm}, 49.2_mm}, {Spot{5}, Length{48'000'001}}};
  return b;
}

} // namespace

TEST_CASE("plain, fanned, bound and measured boards come back as they were, and after reopening") {
  Made made;
  made.store.write([&](Tx& tx) {
    tx.put(a_wire());
    for (const board::Board& b : {plain(), fanned(), measured()}) {
      Job job = a_job(1);
      job.board = b;
      job.slots = b.zero_fret ? std::vector{0, 1, 5} : std::vector{1, 5};
      tx.put(job);
    }
  });
  const auto look = [](const View& v) {
    CHECK(v.jobs().find(1)->board == plain());
    CHECK(v.jobs().find(2)->board == fanned());
    CHECK(v.jobs().find(2)->slots == std::vector{0, 1, 5});
    CHECK(v.jobs().find(3)->board == measured());
    CHECK(v.jobs().open().size() == 3);
  };
  made.store.read(look);
  const auto home = made.home();
  made.sqlite.reset();
  made.sqlite = store::open_sqlite({home});
  made.sqlite->read(look);
}

TEST_CASE("a board that is replaced loses what the new one has not, and undo brings it back") {
  Made made;
  made.store.write([&](Tx& tx) {
    tx.put(a_wire());
    Job job = a_job(1);
    job.slots = {1};
    job.board = fanned();
    tx.put(job);
    job.board = measured();
    tx.put(job);
  });
  const auto put = [&](const board::Board& b) {
    made.store.write([&](Tx& tx) {
      Job job = *tx.jobs().find(1);
      job.board = b;
      tx.put(job);
    });
  };
  const auto now = [&] { return seen(made.store, [](const View& v) { return v.jobs().find(1)->board; }); };
  put(fanned());
  CHECK(now() == fanned());
  put(measured());
  CHECK(now() == measured());
  put(plain());
  CHECK(now() == plain());
}

TEST_CASE("half a fan is refused by the database itself") {
  Made made;
  made.store.write([&](Tx& tx) {
    tx.put(a_wire());
    Job job = a_job(1);
    job.board = fanned();
    tx.put(job);
  });
  SQLite::Database db(made.file().string(), SQLite::OPEN_READWRITE);
  CHECK_THROWS_AS(db.exec("UPDATE job SET square_slot = NULL"), SQLite::Exception);
  CHECK_THROWS_AS(db.exec("UPDATE job SET string_inset_nm = NULL"), SQLite::Exception);
  CHECK_THROWS_AS(db.exec("UPDATE job SET treble_scale_nm = scale_nm + 1"), SQLite::Exception);
  CHECK_THROWS_AS(db.exec("UPDATE job SET binding_nm = 0"), SQLite::Exception);
  CHECK_NOTHROW(db.exec("UPDATE job SET treble_scale_nm = NULL, square_slot = NULL, string_inset_nm = NULL"));
}

TEST_CASE("lists of lengths and widths that somebody damaged are told as such") {
  for (const char* bad : {"1,x", "1,,2", "12a", "9999999999999999999"})
    CHECK_THROWS_AS(store::split_lengths(bad), Problem);
  for (const char* bad : {"slot 5", "slot x:1", "slot 5:", ":5", "5:6:7", "slot 5:1,2"})
    CHECK_THROWS_AS(store::split_widths(bad), Problem);
  CHECK(store::split_widths("").empty());
  CHECK(store::split_lengths("").empty());
  CHECK(store::join(measured().more_widths) == "slot 3:46100000,300000000:49200000,slot 5:48000001");
}

namespace {

struct TinOf : pieces::Source {
  explicit TinOf(const Tin& t) : tin(t) {}
  std::vector<pieces::PieceFacts> page(const pieces::Walk& walk, const std::optional<pieces::Mark>& after,
                                       std::size_t at_most) const override {
    return tin.page(1, walk, after, at_most, 1, 3);
  }
  const Tin& tin;
};

std::vector<std::int64_t> by_force(const std::vector<pieces::PieceFacts>& all, const pieces::Wanted& wanted) {
  std::vector<pieces::Rank> ranks;
  for (const pieces::PieceFacts& p : all) {
    const auto verdict = pieces::judge(p, wanted, {});
    if (verdict.outcome == pieces::Outcome::fits || verdict.outcome == pieces::Outcome::borderline)
      ranks.push_back(pieces::rank(p, verdict, wanted));
  }
  std::sort(ranks.begin(), ranks.end());
  std::vector<std::int64_t> out;
  for (const pieces::Rank& r : ranks)
    out.push_back(r.id);
  return out;
}

} // namespace

TEST_CASE("for bound and open slots the walks through the stored tin give what judging every piece gives") {
  Made made;
  std::mt19937 random(20'261'125);
  const auto upto = [&](int n) { return std::uniform_int_distribution<int>(0, n)(random); };
  std::vector<pieces::PieceFacts> all;
  made.store.write([&](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_job(1));
    const std::int64_t lots[] = {tx.put(a_lot(1)), tx.put(a_lot(1))};
    for (int i = 0; i < 400; ++i) {
      Piece p = a_piece(1, Length{49'000'000 + 100'000LL * upto(60)});
      p.kind = static_cast<pieces::Kind>(upto(2));
      p.left = p.right = upto(1) == 0 ? End::dressed : End::raw;
      p.lot = lots[upto(1)];
      p.added = {1'700'000'000 + upto(3)};
      if (upto(2) == 0) p.tang = *p.length - Length{500'000LL * upto(14)};
      if (upto(9) == 0) p.job = 1;
      p.id = into_tin(tx, p);
      all.push_back({p.id, p.kind, *p.length, p.left == End::raw ? 2 : 0, 1.21_mm, *p.lot, p.added,
                     p.job.has_value(), p.tang});
    }
  });
  std::size_t offered = 0, nipped = 0;
  for (int round = 0; round < 60; ++round) {
    pieces::Wanted wanted;
    wanted.need =
        board::need(Length{50'000'000 + 100'000LL * upto(30)}, static_cast<board::EndStyle>(upto(1)), {});
    if (round % 3 != 0) wanted.need.tang = wanted.need.arc - Length{1'000'000 + 500'000LL * upto(8)};
    if (upto(1) == 0) wanted.lot = all.front().lot;
    made.store.read([&](const View& v) {
      std::vector<std::int64_t> got;
      for (const auto& c : pieces::best(TinOf(v.tin()), wanted, {}, {true, false}, 1000)) {
        got.push_back(c.piece.id);
        nipped += c.piece.tang.has_value();
      }
      INFO("round " << round);
      CHECK(got == by_force(all, wanted));
      offered += got.size();
    });
  }
  CHECK(offered > 5'000); // else the tin was of no use
  CHECK(nipped > 500);
}
