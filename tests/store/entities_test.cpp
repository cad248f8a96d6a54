// The contract of shop::Store, part one: what is put is found again as it was, and in the order promised.
#include "shop_in_a_folder.hpp"
#include "support/catch.hpp"

using namespace nutward;
using namespace nutward::test;

TEST_CASE("a wire comes back as it was put, and with what is known of it alone") {
  Made made;
  const auto id = written(made.store, [](Tx& tx) { return tx.put(a_wire()); });
  auto wire = seen(made.store, [&](const View& v) { return v.wires().find(id); });
  REQUIRE(wire);
  CHECK(wire->id == 1);
  CHECK(wire->name == "medium");
  CHECK(wire->material == "nickel silver");
  CHECK(wire->profile == a_wire().profile);
  CHECK_FALSE(wire->profile.barb_width);
  CHECK(wire->stick == 600_mm);
  CHECK(wire->reorder_at == 3000_mm);
  CHECK_FALSE(wire->low_told_at);

  wire->low_told_at = units::Instant{77};
  wire->name = "medium, half hard";
  wire->reorder_at.reset();
  CHECK(written(made.store, [&](Tx& tx) { return tx.put(*wire); }) == id);
  wire = seen(made.store, [&](const View& v) { return v.wires().find(id); });
  CHECK(wire->low_told_at == units::Instant{77});
  CHECK(wire->name == "medium, half hard");
  CHECK_FALSE(wire->reorder_at);
  CHECK_FALSE(seen(made.store, [&](const View& v) { return v.wires().find(99); }));
}

TEST_CASE("wires are listed by name, lots newest first") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire("tall"));
    const auto low = tx.put(a_wire("low"));
    Lot lot = a_lot(low);
    tx.put(lot);
    lot.form = Form::coil;
    lot.count = 1;
    lot.received = {1'700'000'500};
    lot.price.reset();
    lot.crown_height.reset();
    tx.put(lot);
  });
  made.store.read([](const View& v) {
    const auto wires = v.wires().all();
    REQUIRE(wires.size() == 2);
    CHECK(wires[0].name == "low");
    CHECK(wires[1].name == "tall");
    const auto lots = v.wires().lots(2);
    REQUIRE(lots.size() == 2);
    CHECK(lots[0].id == 2);
    CHECK(lots[0].form == Form::coil);
    CHECK_FALSE(lots[0].price);
    CHECK_FALSE(lots[0].crown_height);
    CHECK(lots[1].count == 20);
    CHECK(lots[1].each == 600_mm);
    CHECK(lots[1].price->minor == 4250);
    CHECK(lots[1].supplier == "the wire cart");
    CHECK(lots[1].received.s == 1'700'000'000);
    CHECK(v.wires().lot(1)->crown_height == 1.21_mm);
    CHECK(v.wires().lots(1).empty());
  });
}

TEST_CASE("a job comes back with its board, whatever its surface and wherever the widths were measured") {
  Made made;
  made.store.write([](Tx& tx) { tx.put(a_wire()); });
  Job job = a_job(1);
  job.humidity_seated = 46.5;
  SECTION("compound, radius measured at a distance") {}
  SECTION("compound, radius measured at a slot; width at a distance") {
    job.board.surface = board::Compound{254_mm, 406_mm, 22};
    job.board.far_at = 480_mm;
  }
  SECTION("cylinder") {
    job.board.surface = board::Cylinder{305_mm};
  }
  SECTION("flat, filed, with the rest said") {
    job.board.surface = board::Flat{};
    job.board.ends = board::EndStyle::filed;
    job.kind = JobKind::some_slots;
    job.state = JobState::done;
    job.glue = "hide glue";
    job.note = "new crowns beside worn ones";
    job.due.reset();
    job.humidity_rechecked = 44.0;
    job.press_told = Instant{1'700'500'000};
    job.slots = {};
  }
  job.id = written(made.store, [&](Tx& tx) { return tx.put(job); });
  const auto back = seen(made.store, [&](const View& v) { return v.jobs().find(job.id); });
  REQUIRE(back);
  CHECK(back->board == job.board);
  CHECK(back->kind == job.kind);
  CHECK(back->state == job.state);
  CHECK(back->owner == "bench two");
  CHECK(back->instrument == "six-string");
  CHECK(back->wood == "rosewood");
  CHECK(back->glue == job.glue);
  CHECK(back->note == job.note);
  CHECK(back->slots == job.slots);
  CHECK(back->wire == 1);
  CHECK(back->due == job.due);
  CHECK(back->humidity_seated == job.humidity_seated);
  CHECK(back->humidity_rechecked == job.humidity_rechecked);
  CHECK(back->taken_in.s == 1'700'000'100);
  CHECK(back->press_told == job.press_told);
}

TEST_CASE("open jobs are queued by due date, those without one last, and recent ones newest first") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    Job job = a_job(1);
    job.due.reset();
    tx.put(job); // 1
    job.due = Instant{2000};
    tx.put(job); // 2
    job.due = Instant{1000};
    tx.put(job); // 3
    job.due = Instant{500};
    job.state = JobState::cancelled;
    tx.put(job); // 4
  });
  made.store.read([](const View& v) {
    const auto open = v.jobs().open();
    REQUIRE(open.size() == 3);
    CHECK(open[0].id == 3);
    CHECK(open[1].id == 2);
    CHECK(open[2].id == 1);
    const auto recent = v.jobs().recent(2);
    REQUIRE(recent.size() == 2);
    CHECK(recent[0].id == 4);
    CHECK(recent[1].id == 3);
  });
}

TEST_CASE("frets, stages and rechecks of a job come back in their order") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_job(1));
    tx.put(an_actor());
    tx.put(Fret{0, 1, 7, FretState::came_short, 51.2_mm, std::nullopt});
    tx.put(Fret{0, 1, 2, FretState::sprang, std::nullopt, into_tin(tx, a_piece(1, 60_mm))});
    tx.put(Stage{0, 1, "seat", 2, Instant{100}, Instant{200}, {300}, 1});
    tx.put(Stage{0, 1, "bend", 1, std::nullopt, Instant{50}, {301}, 1});
    Recheck r;
    r.job = 1;
    r.slots = {4, 5, 6};
    r.pressed = {2000};
    r.from = {59'600};
    r.due = {88'400};
    r.load = Force{1775.5};
    tx.put(r);
    r.slots = {1};
    r.pressed = {1000};
    r.from = {1000};
    r.due = {1000};
    r.state = RecheckState::sprang;
    r.done = Instant{1500};
    r.told = r.overdue_told = true;
    r.load.reset();
    tx.put(r);
  });
  made.store.read([](const View& v) {
    const auto frets = v.jobs().frets(1);
    REQUIRE(frets.size() == 2);
    CHECK(frets[0].slot == 2);
    CHECK(frets[0].state == FretState::sprang);
    CHECK(frets[0].piece == 1);
    CHECK_FALSE(frets[0].length);
    CHECK(frets[1].slot == 7);
    CHECK(frets[1].state == FretState::came_short);
    CHECK(frets[1].length == 51.2_mm);

    const auto stages = v.jobs().stages(1);
    REQUIRE(stages.size() == 2);
    CHECK(stages[0].kind == "seat");
    CHECK(stages[0].sequence == 2);
    CHECK(stages[0].started->s == 100);
    CHECK(stages[0].finished->s == 200);
    CHECK(stages[0].recorded.s == 300);
    CHECK(stages[0].actor == 1);
    CHECK_FALSE(stages[1].started);

    const auto rechecks = v.jobs().rechecks(1);
    REQUIRE(rechecks.size() == 2);
    CHECK(rechecks[0].id == 2);
    CHECK(rechecks[0].state == RecheckState::sprang);
    CHECK(rechecks[0].done->s == 1500);
    CHECK(rechecks[0].told);
    CHECK(rechecks[0].overdue_told);
    CHECK(rechecks[1].slots == std::vector{4, 5, 6});
    CHECK(rechecks[1].from.s == 59'600);
    CHECK(rechecks[1].load->n == 1775.5);
    const auto waiting = v.jobs().waiting();
    REQUIRE(waiting.size() == 1);
    CHECK(waiting[0].due.s == 88'400);
  });
  made.store.write([](Tx& tx) {
    Job job = *tx.jobs().find(1);
    job.state = JobState::cancelled;
    tx.put(job);
  });
  CHECK(seen(made.store, [](const View& v) { return v.jobs().waiting().size(); }) == 0);
}

TEST_CASE("what is known of how a fret stands comes back, and the last fret and the neck of its job") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    Job job = a_job(1);
    job.last_ever = 22;
    job.straight_seen = Instant{4000};
    job.straightened = 6;
    tx.put(job);
    tx.put(a_job(1));
    tx.put(Fret{0, 1, 3, FretState::pressed, {}, {}, 7, level::Gap::some, level::Cause::tang_bottoms, {}});
    tx.put(Fret{0, 1, 4, FretState::level, {}, {}, 8, level::Gap::none, level::Cause::not_asked, 0.12_mm});
    tx.put(Fret{0, 1, 5, FretState::made, {}, {}});
  });
  made.store.read([](const View& v) {
    const auto job = v.jobs().find(1), other = v.jobs().find(2);
    REQUIRE((job && other));
    CHECK(job->last_ever == 22);
    CHECK(job->straight_seen == Instant{4000});
    CHECK(job->straightened == 6);
    CHECK_FALSE(other->last_ever);
    CHECK_FALSE(other->straight_seen);
    CHECK(other->straightened == 0);
    const auto frets = v.jobs().frets(1);
    REQUIRE(frets.size() == 3);
    CHECK(frets[0].touched == 7);
    CHECK(frets[0].gap == level::Gap::some);
    CHECK(frets[0].cause == level::Cause::tang_bottoms);
    CHECK_FALSE(frets[0].below);
    CHECK(frets[1].gap == level::Gap::none);
    CHECK(frets[1].below == 0.12_mm);
    CHECK(frets[2].touched == 0);
    CHECK(frets[2].gap == level::Gap::not_asked);
    CHECK(frets[2].cause == level::Cause::not_asked);
  });
}

TEST_CASE("readings of a job come back as they were taken, in that order, and change under their id") {
  Made made;
  made.store.write([](Tx& tx) {
    tx.put(a_wire());
    tx.put(a_job(1));
    tx.put(a_job(1));
    Reading r;
    r.job = 1;
    r.is.line = level::Line::treble;
    r.is.span = {6, 8};
    r.is.felt = level::Felt::rocks;
    r.is.pivot = 7;
    r.is.held = level::Held::bodyward;
    r.is.gaps = {6};
    r.is.snug = {7};
    r.is.epsilon = level::quick_hand;
    r.is.revision = 4;
    r.span_assumed = true;
    r.taken = {900};
    tx.put(r);
    r = {};
    r.job = 1;
    r.is.felt = level::Felt::not_laid;
    r.is.span = {9, 9};
    r.is.looks_sunk = {9, 11};
    r.is.looks_high = {10};
    r.line_assumed = true;
    r.taken = {800};
    tx.put(r);
    r = {};
    r.job = 2;
    r.is.span = {1, 3};
    tx.put(r);
  });
  made.store.read([](const View& v) {
    const auto all = v.jobs().readings(1);
    REQUIRE(all.size() == 2);
    CHECK(all[0].id == 2);
    CHECK(all[0].is.felt == level::Felt::not_laid);
    CHECK(all[0].is.line == level::Line::middle);
    CHECK(all[0].is.looks_sunk == std::vector{9, 11});
    CHECK(all[0].is.looks_high == std::vector{10});
    CHECK_FALSE(all[0].is.pivot);
    CHECK_FALSE(all[0].is.held);
    CHECK(all[0].line_assumed);
    CHECK_FALSE(all[0].span_assumed);
    CHECK(all[0].taken.s == 800);
    CHECK(all[1].is.line == level::Line::treble);
    CHECK(all[1].is.span == level::Span{6, 8});
    CHECK(all[1].is.felt == level::Felt::rocks);
    CHECK(all[1].is.pivot == 7);
    CHECK(all[1].is.held == level::Held::bodyward);
    CHECK(all[1].is.gaps == std::vector{6});
    CHECK(all[1].is.snug == std::vector{7});
    CHECK(all[1].is.epsilon == level::quick_hand);
    CHECK(all[1].is.revision == 4);
    CHECK(all[1].span_assumed);
    CHECK(v.jobs().readings(2).size() == 1);
  });
  made.store.write([](Tx& tx) {
    Reading r = tx.jobs().readings(1).back();
    r.is.gaps = {6, 8};
    tx.put(r);
  });
  CHECK(seen(made.store, [](const View& v) { return v.jobs().readings(1).back().is.gaps; }) ==
        std::vector{6, 8});
}

TEST_CASE("the house comes back: week, special days, settings, people and receivers") {
  Made made;
  made.store.write([](Tx& tx) {
    CHECK(tx.put(Weekday{5, "09:00-12:00"}) == 5);
    CHECK(tx.put(Weekday{1, "09:00-12:30 13:30-18:00"}) == 1);
    CHECK(tx.put(Weekday{5, ""}) == 5);
    const auto day = tx.put(SpecialDay{0, Day{20'000}, true, "", "stocktaking"});
    tx.put(SpecialDay{0, Day{19'999}, false, "18:00-20:00", ""});
    CHECK(tx.put(SpecialDay{0, Day{20'000}, false, "10:00-11:00", "half a day"}) == day);
    const auto zone = tx.put(Setting{0, "zone", "Etc/UTC"});
    CHECK(tx.put(Setting{0, "zone", "Europe/Berlin"}) == zone);
    Actor lead = an_actor("lead");
    lead.role = 2;
    lead.bench = "by the window";
    lead.uids = {999, 1000, 4'294'967'294};
    tx.put(lead);
    tx.put(an_actor());
    tx.put(Receiver{0,
                    "board",
                    "http://127.0.0.1:9/in",
                    "whsec_AAAA",
                    Shape::cloudevents,
                    {"recheck.due", "wire.low"},
                    true,
                    false});
    tx.put(Receiver{0, "log", "http://127.0.0.1:10/", "whsec_BBBB", Shape::text, {}, false, true});
  });
  made.store.read([](const View& v) {
    const auto week = v.house().week();
    REQUIRE(week.size() == 2);
    CHECK(week[0].spans == "09:00-12:30 13:30-18:00");
    CHECK(week[1].spans.empty());
    const auto days = v.house().special_days();
    REQUIRE(days.size() == 2);
    CHECK(days[0].day.days == 19'999);
    CHECK(days[0].extra == "18:00-20:00");
    CHECK(days[1].note == "half a day");
    CHECK_FALSE(days[1].closed);
    CHECK(v.house().setting("zone") == "Europe/Berlin");
    CHECK_FALSE(v.house().setting("nothing"));
    const auto people = v.house().actors();
    REQUIRE(people.size() == 2);
    CHECK(people[0].role == 2);
    CHECK(people[0].bench == "by the window");
    CHECK(people[1].role == 1);
    for (const std::int64_t uid : {999, 1000})
      CHECK(v.house().actor_for_uid(uid)->name == "lead");
    CHECK(v.house().actor_for_uid(4'294'967'294)->uids.size() == 3);
    for (const std::int64_t uid : {0, 1, 99, 100, 1001, 9991})
      CHECK_FALSE(v.house().actor_for_uid(uid));
    CHECK(v.house().actor(people[1].id)->name == people[1].name);
    CHECK_FALSE(v.house().actor(99));
    const auto receivers = v.house().receivers();
    REQUIRE(receivers.size() == 2);
    CHECK(receivers[0].wants == std::vector<std::string>{"recheck.due", "wire.low"});
    CHECK(receivers[0].shape == Shape::cloudevents);
    CHECK(receivers[0].failing);
    CHECK(receivers[0].secret == "whsec_AAAA");
    CHECK(receivers[1].wants.empty());
    CHECK(receivers[1].disabled);
  });
}

TEST_CASE("putting a thing under an id that was never given is a fault of the program") {
  Made made;
  made.store.write([](Tx& tx) {
    Wire wire = a_wire();
    wire.id = 4;
    CHECK_THROWS_AS(tx.put(wire), std::logic_error);
  });
  CHECK(seen(made.store, [](const View& v) { return v.wires().all().size(); }) == 0);
}
