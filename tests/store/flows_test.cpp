// Sums over the ledger by what went where, the shortest arcs of the jobs on record, and what came to wires
// and jobs with them.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// Moves in a line of the journal that happened then.
void at(Made& made, std::int64_t happened, const std::function<void(Tx&)>& body) {
  made.store.write([&](Tx& tx) {
    body(tx);
    Line line;
    line.recorded = line.happened = {happened};
    line.actor = 1;
    line.via = "test";
    line.call = line.inverse = "[]";
    tx.backroom().append(line);
  });
}

std::vector<Flow> flows(Made& made, std::int64_t from, std::int64_t before) {
  return seen(made.store, [&](const View& v) { return v.wires().flows(1, {from}, {before}); });
}

Made with_a_wire() {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(an_actor());
    tx.put(a_wire());
    tx.put(a_wire("narrow"));
  });
  return made;
}

} // namespace

TEST_CASE("flows are summed up by kind and places, from the first instant on and before the last") {
  Made made = with_a_wire();
  at(made, 100, [](Tx& tx) { tx.move(received(1, 600_mm)); });
  at(made, 200, [](Tx& tx) {
    tx.move(received(1, 610_mm));
    tx.move(received(1, 1_mm));
    tx.move(received(2, 5_mm));
    into_tin(tx, a_piece(1, 52.4_mm));
  });
  at(made, 300, [](Tx& tx) { tx.move(received(1, 7_mm)); });
  const auto all = flows(made, 200, 300);
  REQUIRE(all.size() == 2);
  CHECK(all[0].kind == MovementKind::counted);
  CHECK(all[0].to == Place::tin);
  CHECK(all[0].length == 52.4_mm);
  CHECK(all[1].kind == MovementKind::received);
  CHECK(all[1].from == Place::outside);
  CHECK(all[1].to == Place::stock);
  CHECK(all[1].length == 611_mm);
  CHECK(flows(made, 101, 200).empty());
}

TEST_CASE("what takes a movement back counts as that movement, the other way") {
  Made made = with_a_wire();
  at(made, 100, [](Tx& tx) { tx.move(received(1, 600_mm)); });
  at(made, 200, [](Tx& tx) { tx.backroom().reverse_movement(1, "undo"); });
  const auto later = flows(made, 200, 300);
  REQUIRE(later.size() == 1);
  CHECK(later[0].kind == MovementKind::received);
  CHECK(later[0].from == Place::stock);
  CHECK(later[0].to == Place::outside);
  CHECK(later[0].length == 600_mm);
}

namespace {

Movement drawn_of(MovementKind kind, Place from, Place to, Length length) {
  return {kind, 1, {}, {}, {}, {}, from, to, length, 0, ""};
}

} // namespace

TEST_CASE("what was drawn is summed up by weeks from Monday on, without what was taken back since") {
  static_assert(week_of({0}) == 0); // 1970-01-01 was a Thursday
  static_assert(week_of({4 * 86'400 - 1}) == 0 && week_of({4 * 86'400}) == 1);
  static_assert(week_begins(1).s == 4 * 86'400);
  Made made = with_a_wire();
  const std::int64_t week = week_begins(7).s;
  at(made, week, [](Tx& tx) { tx.move(received(1, 6000_mm)); }); // movement 1
  at(made, week + 10, [](Tx& tx) {
    tx.move(drawn_of(MovementKind::cut, Place::stock, Place::board, 50_mm));
    tx.move(drawn_of(MovementKind::cut, Place::stock, Place::kerf, 0.5_mm));
    tx.move(drawn_of(MovementKind::corrected, Place::stock, Place::outside, 400_mm)); // it never was there
  });
  at(made, week + 20, [](Tx& tx) { // movement 5
    tx.move(drawn_of(MovementKind::scrapped, Place::stock, Place::scrap, 70_mm));
  });
  at(made, week + 86'400 * 14,
     [](Tx& tx) { tx.move(drawn_of(MovementKind::counted, Place::stock, Place::outside, 30_mm)); });
  const auto drawn = [&](std::int32_t from) {
    return seen(made.store, [&](const View& v) { return v.wires().drawn(1, from); });
  };
  REQUIRE(drawn(0).size() == 2);
  CHECK(drawn(0)[0].week == 7);
  CHECK(drawn(0)[0].length == 120.5_mm);
  CHECK(drawn(0)[1].week == 9);
  CHECK(drawn(0)[1].length == 30_mm);
  CHECK(drawn(8).size() == 1);
  CHECK(made.sqlite->verify().empty());
  // Taken back two weeks later, and of a delivery: the week that it was drawn in is the less, no other.
  at(made, week + 86'400 * 15, [](Tx& tx) { tx.backroom().reverse_movement(5, "undo"); });
  REQUIRE(drawn(0).size() == 2);
  CHECK(drawn(0)[0].length == 50.5_mm);
  CHECK(drawn(0)[1].length == 30_mm);
  CHECK(made.sqlite->verify().empty());
}

TEST_CASE("the shortest arc is that of the narrowest slot on record of each end style, whatever became of "
          "the job") {
  Made made = with_a_wire();
  made.store.write([](Tx& tx) {
    Job job = a_job(1);
    job.board.surface = board::Flat{};
    job.board.far_width = 43_mm;
    tx.put(job);
    job.board.nut_width = job.board.far_width = 35_mm;
    job.state = JobState::cancelled;
    const std::int64_t id = tx.put(job);
    job.board.nut_width = job.board.far_width = 30_mm;
    job.board.ends = board::EndStyle::filed;
    tx.put(job);
    job.wire = 2;
    job.board.nut_width = job.board.far_width = 20_mm;
    tx.put(job);
    job = *tx.jobs().find(id); // put again wider than it was
    job.board.nut_width = job.board.far_width = 36_mm;
    tx.put(job);
  });
  const auto arcs = seen(made.store, [](const View& v) { return v.jobs().shortest_arcs(1); });
  REQUIRE(arcs.size() == 2);
  CHECK(arcs[0].ends == board::EndStyle::filed);
  CHECK(arcs[0].arc == 30_mm);
  CHECK(arcs[1].ends == board::EndStyle::rounded);
  CHECK(arcs[1].arc == 36_mm);
  CHECK(seen(made.store, [](const View& v) { return v.jobs().shortest_arcs(3); }).empty());
}

TEST_CASE("what a metre weighs, a job's lot and its slots as sawn come back as they were put") {
  Made made = with_a_wire();
  made.store.write([](Tx& tx) {
    Wire w = *tx.wires().find(1);
    w.density = 8.73;
    w.linear_g_m = 23.934;
    w.linear_error = 0.007;
    tx.put(w);
    Job job = a_job(1);
    job.lot = tx.put(a_lot(1));
    job.slot_width = 0.6_mm;
    job.slot_depth = 2.2_mm;
    job.slot_flat_bottom = false;
    tx.put(job);
  });
  const Wire w = seen(made.store, [](const View& v) { return *v.wires().find(1); });
  CHECK(w.density == 8.73);
  CHECK(w.linear_g_m == 23.934);
  CHECK(w.linear_error == 0.007);
  const Job job = seen(made.store, [](const View& v) { return *v.jobs().find(1); });
  CHECK(job.lot == 1);
  CHECK(job.slot_width == 0.6_mm);
  CHECK(job.slot_depth == 2.2_mm);
  CHECK_FALSE(job.slot_flat_bottom);
}
