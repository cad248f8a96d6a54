// A reading connection keeps what it has read until the revision changes: nothing that it keeps may outlive
// that.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

namespace {

// Everything that is kept, in one text.
std::string all_of(const View& v, std::int64_t wire, std::int64_t lot, std::int64_t job) {
  std::string out = v.wires().find(wire).value_or(Wire{}).name + "|" + v.wires().all().front().name + "|" +
                    v.wires().lot(lot).value_or(Lot{}).supplier + "|" +
                    std::to_string(v.wires().on_hand(wire).nm / 1'000'000) + "|" +
                    v.jobs().find(job).value_or(Job{}).owner + "|" + std::to_string(v.jobs().open().size());
  for (const std::size_t n :
       {v.jobs().frets(job).size(), v.jobs().stages(job).size(), v.jobs().waiting().size(),
        v.jobs().shortest_arcs(wire).size(), v.house().week().size(), v.house().special_days().size(),
        v.house().actors().size()})
    out += "|" + std::to_string(n);
  pieces::Walk both_raw;
  both_raw.raw_ends = 2;
  both_raw.longest = 1000_mm;
  out += "|" + std::to_string(v.tin().sum(wire).pieces) + "|" +
         std::to_string(v.tin().page(wire, both_raw, {}, 10, job, 1).size());
  const auto actor = v.house().actor_for_uid(1000);
  return out + "|" + v.house().setting("unit").value_or("-") + "|" + (actor ? actor->name : "-");
}

struct Ids {
  std::int64_t wire = 0, lot = 0, job = 0;
};

Ids begin_with(Tx& tx) {
  Ids out;
  out.wire = tx.put(a_wire("medium"));
  out.lot = tx.put(a_lot(out.wire));
  out.job = tx.put(a_job(out.wire));
  return out;
}

void change_all(Tx& tx, const Ids& ids) {
  Wire wire = *tx.wires().find(ids.wire);
  wire.name = "tall";
  tx.put(wire);
  Lot lot = *tx.wires().lot(ids.lot);
  lot.supplier = "another";
  tx.put(lot);
  tx.move(received(ids.wire, 600_mm));
  Job job = *tx.jobs().find(ids.job);
  job.owner = "bench one";
  job.state = JobState::done;
  tx.put(job);
  Piece piece = a_piece(ids.wire, 52_mm);
  piece.job = ids.job;
  piece.slot = 1;
  into_tin(tx, piece);
  Job open = a_job(ids.wire);
  open.board.ends = board::EndStyle::filed;
  const std::int64_t other = tx.put(open);
  tx.put(a_job(ids.wire));
  tx.put(Fret{0, ids.job, 3, FretState::made, {}, {}});
  Actor actor = an_actor();
  actor.uids = {1000};
  const std::int64_t who = tx.put(actor);
  tx.put(Stage{0, ids.job, "press", 1, {}, Instant{1'700'000'200}, {1'700'000'300}, who});
  Recheck recheck;
  recheck.job = other;
  recheck.slots = {1};
  recheck.pressed = {1'700'000'200};
  recheck.from = recheck.due = {1'700'060'000};
  tx.put(recheck);
  tx.put(Weekday{1, "09:00-12:00"});
  tx.put(SpecialDay{0, Day{20'000}, true, "", ""});
  tx.put(Setting{0, "unit", "in"});
}

constexpr const char* before = "medium|medium|the wire cart|0|bench two|1|0|0|0|1|0|0|0|0|0|-|-";
constexpr const char* after = "tall|tall|another|600|bench one|2|1|1|1|2|1|1|1|1|1|in|second bench";

} // namespace

TEST_CASE("what a snapshot has read is read anew once the shop has changed, and not sooner") {
  Made made;
  const Ids ids = written(made.store, [](Tx& tx) { return begin_with(tx); });
  const auto look = [&](const View& v) { return all_of(v, ids.wire, ids.lot, ids.job); };
  CHECK(seen(made.store, look) == before);
  CHECK(seen(made.store, look) == before); // this time as kept
  made.store.read([&](const View& old) {
    CHECK(look(old) == before);
    made.store.write([&](Tx& tx) { change_all(tx, ids); });
    CHECK(look(old) == before);
    CHECK(seen(made.store, look) == after); // on another connection
  });
  CHECK(seen(made.store, look) == after);
}
