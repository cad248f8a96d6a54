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
