// Taking back: every command, in every order that is allowed, and what is not.
#include "bench.hpp"
#include "shop/past.hpp"
#include "support/catch.hpp"
#include "support/reads.hpp"

#include <set>

using namespace nutward;
using namespace nutward::test;

namespace {

struct Step {
  const char *row, *json;
};

// A shop in which each of the steps below can be done.
struct Busy : Shop {
  Busy() {
    does("add", R"({"wire": 1, "length_mm": [52.4, 120, 51.2], "ends": "raw"})"); // pieces 1 to 3
    does("add", R"({"wire": 1, "count": 5})");                                    // 4
    does("hold", R"({"piece": 3, "job": 1, "slot": 4})");
    does(
        "new-job",
        R"({"wire": 1, "scale_mm": 600, "frets": 6, "nut_width_mm": 52, "far_width_mm": 52, "due_on": "2026-04-10"})");
    does("finished", R"({"job": 3, "stage": "cut", "at": "2026-03-23T08:00:00Z"})");
    does("finished", R"({"job": 3, "stage": "dress", "at": "2026-03-23T09:00:00Z"})");
    does("pressed", R"({"job": 3, "at": "2026-03-23T10:00:00Z"})");
    does("open-hours", R"({"days": "sat", "hours": "9:00-13:00"})");
    does("close-day", R"({"day_on": "2026-12-25"})");
    does("add-receiver", R"({"name": "wall", "url": "https://example.org/"})");
    does("calibrate", R"({"wire": 1, "length_mm": 600, "mass_g": 14.4})");
    does("define-bar", R"({"name": "long", "length_mm": 112, "width_mm": 90})"); // 1
    does("map-uid", R"({"uid": 1000, "person": "Mara"})");
    does("new-person", R"({"name": "Odile", "bench": "window", "uid": 1001})"); // 5
    does("give-job", R"({"job": 1, "person": "Odile"})");
    does("add", R"({"wire": 1, "length_mm": 57, "count": 3})");
    does("new-job",
         R"({"wire": 1, "scale_mm": 600, "frets": 3, "nut_width_mm": 52, "far_width_mm": 52})"); // 4
    does("finished", R"({"job": 4, "stage": "cut"})");
    does("new-person", R"({"name": "Sava", "uid": 1002})"); // 6
    does("retire-person", R"({"person": "Sava"})");
    does("reading", R"({"job": 3, "about": 3, "felt": "rocks"})"); // 1
    does("define-machine", R"({"name": "lathe", "count": 2})");
    does("machine-down", R"({"machine": "lathe", "begins_at": "2026-03-23T08:00:00Z"})");
    does("stage-machine", R"({"stage": "crown", "machine": "bench"})");
    does("stage-minutes", R"({"stage": "crown", "minutes": 50})");
    does("book", R"({"machine": "press", "day_on": "2026-04-02", "hours": "10:00-11:00"})"); // 1
    does("start", R"({"job": 2, "stage": "seat", "at": "2026-03-23T08:00:00Z"})");
    does("stop", R"({"job": 2, "stage": "seat", "at": "2026-03-23T09:00:00Z"})");
    does("start", R"({"job": 2, "stage": "bend", "at": "2026-03-23T09:00:00Z"})");
    does("own-hours", R"({"person": "Tomo", "days": "mon,tue", "hours": "9:00-12:00"})");
    does("day-off", R"({"person": "Tomo", "day_on": "2026-04-06"})");
    does("after", R"({"job": 2, "other": 4})");
    does("define-supplier", R"({"name": "Mill", "pack": 12, "lead_days": 7})"); // 1
    does("define-supplier", R"({"name": "Brook"})");                            // 2
    does(
        "ordered",
        R"({"wire": 1, "count": 40, "supplier": "Mill", "price": "80", "promised_on": "2026-03-27", "at": "2026-03-20T08:00:00Z"})"); // 1
    does("ordered", R"({"wire": 2, "count": 6, "each_mm": 500, "order": 1})");
    does("arrived", R"({"order": 1, "wire": 1, "count": 4, "at": "2026-03-23T08:00:00Z"})");
  }
};

constexpr Step steps[] = {
    {"use", R"({"piece": 1, "job": 1, "slot": 1})"},
    {"use", R"({"piece": 2, "job": 1, "slot": 2})"}, // leaves a rest
    {"use", R"({"piece": 2, "job": 1, "slot": 4})"},
    {"hold", R"({"piece": 1, "job": 1, "slot": 1})"},
    {"hold", R"({"piece": 4, "job": 1})"},
    {"let-go", R"({"piece": 3})"},
    {"set-aside", R"({"job": 1})"},
    {"let-all-go", R"({"job": 1})"},
    {"add", R"({"wire": 1, "length_mm": [50, 51]})"},
    {"add", R"({"wire": 1, "length_mm": [50, 51], "from": 4})"},
    {"add", R"({"wire": 2, "count": 12})"},
    {"scrap", R"({"piece": 1})"},
    {"scrap", R"({"piece": 4})"},
    {"measured", R"({"job": 3, "slot": 2, "length_mm": 51.3})"},
    {"measured", R"({"job": 1, "slot": 2, "length_mm": 51.3})"},
    {"came-short", R"({"job": 1, "slot": 2, "length_mm": 50})"},
    {"came-short", R"({"job": 2, "slot": 2, "length_mm": 40})"},
    {"came-short", R"({"job": 1, "slot": 2, "short_by_mm": 2})"},
    {"came-short", R"({"job": 1, "slot": 2, "length_mm": 51.4, "if_short": true})"}, // stays
    {"remade", R"({"job": 1, "slot": 2})"},
    {"remade", R"({"job": 4, "slot": 2, "old": "tin", "length_mm": 51.6})"},
    {"remade", R"({"job": 4, "slot": 3, "old": "scrap"})"},
    {"lost", R"({"job": 4, "slot": 1, "why": "it fell"})"},
    {"handful", R"({"wire": 2, "count": 9, "place": "sill"})"},
    {"measured-handful", R"({"lengths_mm": [52.4, 51]})"},
    {"measured-handful",
     R"({"lengths_mm": [52, 51, 50, 49, 48, 47, 46], "from": 4})"}, // more than there were
    {"scrap-several", R"({"length_mm": 57, "count": 2})"},
    {"use-several", R"({"length_mm": 57, "job": 1, "slots": "1,2"})"},
    {"reading",
     R"({"job": 3, "from": 1, "to": 4, "felt": "rocks", "pivot": 2, "held": "nutward", "gaps": [4]})"},
    {"reading", R"({"job": 3, "sunk": [2]})"},
    {"reading", R"({"job": 3, "reading": 1, "held": "nutward", "snug": [3]})"},
    {"crown-gap", R"({"job": 3, "slots": [2, 3], "gap": "some"})"},
    {"cause", R"({"job": 3, "slots": [2], "cause": "tang_bottoms"})"},
    {"stands-low", R"({"job": 3, "slot": 6, "below_mm": 0.1})"},
    {"last-fret", R"({"job": 3, "slot": 6})"},
    {"neck", R"({"job": 3, "is": "straight"})"},
    {"neck", R"({"job": 3, "is": "straightened"})"},
    {"reseated", R"({"job": 3, "slots": [2]})"},
    {"glued", R"({"job": 3, "slots": [2, 3]})"},
    {"levelled", R"({"job": 3, "slots": [4]})"},
    {"finished", R"({"job": 1, "stage": "pull"})"},
    {"finished", R"({"job": 1, "stage": "cut"})"},
    {"finished", R"({"job": 3, "stage": "dress"})"},
    {"finished", R"({"job": 1, "stage": "seat"})"},
    {"finished", R"({"job": 1, "stage": "done"})"},
    {"finished", R"({"job": 3, "stage": "done"})"},
    {"pressed", R"({"job": 1, "slots": "1-3"})"}, // makes them of the stock; a piece is held for slot 4
    {"pressed", R"({"job": 3, "slots": "1-2"})"},
    {"pressed", R"({"job": 3, "slots": "1-2", "at": "2026-03-23T10:30:00Z"})"},
    {"pressed", R"({"job": 3, "slots": "2-3", "load_n": 8000, "bar": "long"})"},
    {"rechecked", R"({"job": 3})"},
    {"rechecked", R"({"job": 3, "slots": "1-3", "sprang": "2", "humidity": 40})"},
    {"rechecked", R"({"job": 3, "slots": "1-3", "from": 1, "to": 3, "line": "bass"})"},
    {"new-job", R"({"wire": 2, "scale_mm": 640, "frets": 3, "nut_width_mm": 43, "far_width_mm": 43})"},
    {"new-job",
     R"({"wire": 2, "scale_mm": 640, "treble_scale_mm": 610, "square_slot": 2, "frets": 3, "zero_fret": true,
         "nut_width_mm": 43, "far_width_mm": 45, "widths_mm": [44.1], "width_slots": [2], "binding_mm": 1.5})"},
    {"set-due", R"({"job": 1, "due_on": "2026-04-01"})"},
    {"set-due", R"({"job": 3, "no_day": true})"},
    {"cancel-job", R"({"job": 1})"},
    {"define-wire", R"({"name": "tall"})"},
    {"receive", R"({"wire": 1, "count": 2})"},
    {"reorder-level", R"({"wire": 1, "level": "4 m"})"},
    {"open-hours", R"({"days": "sat,sun", "hours": "10:00-12:00"})"},
    {"close-day", R"({"day_on": "2026-12-24"})"},
    {"close-day", R"({"day_on": "2026-12-25", "note": "feast"})"},
    {"close-day", R"({"day_on": "2026-12-28", "last_on": "2026-12-31"})"},
    {"close-day", R"({"day_on": "2026-12-19", "part": "morning"})"},
    {"open-extra", R"({"day_on": "2026-12-12", "hours": "9:00-12:00"})"},
    {"open-extra", R"({"day_on": "2026-12-10", "hours": "9:00-10:00", "only": true})"},
    {"set", R"({"setting": "zone", "to": "UTC"})"},
    {"set", R"({"setting": "nip_loss", "to": "0.7 mm"})"},
    {"add-receiver", R"({"name": "door", "url": "https://example.org/"})"},
    {"drop-receiver", R"({"receiver": "wall"})"},
    {"new-person", R"({"name": "Jelka", "role": "look", "uid": 1001})"}, // takes the uid from Odile
    {"map-uid", R"({"uid": 1003, "person": "Ines"})"},
    {"map-uid", R"({"uid": 1002, "person": "Ines"})"}, // takes it from Sava, who has retired
    {"unmap-uid", R"({"uid": 1001})"},
    {"change-person", R"({"person": "Odile", "role": "lead", "name": "Odila", "bench": "door"})"},
    {"retire-person", R"({"person": "Odile"})"}, // job 1 is nobody's then
    {"return-person", R"({"person": "Sava"})"},
    {"give-job", R"({"job": 1, "person": "Ines"})"},
    {"give-job", R"({"job": 2, "bench": "Window"})"},
    {"give-job", R"({"job": 2, "mine": true})"},
    {"free-job", R"({"job": 1})"},
    {"count", R"({"wire": 1, "sticks": 7})"},
    {"weigh", R"({"wire": 1, "mass_g": 100})"},
    {"calibrate", R"({"wire": 1, "length_mm": 600, "mass_g": 15})"},
    {"correct", R"({"wire": 1, "to_mm": -100, "why": "a delivery is missing"})"},
    {"correct", R"({"piece": 1, "by_mm": -1, "why": "an end broke"})"},
    {"cut-from", R"({"piece": 2, "job": 1, "slots": "1,2"})"},
    {"cut-new", R"({"job": 1, "slots": "1,2", "stick": 1})"},
    {"cut-from", R"({"piece": 2, "job": 1, "slots": "1"})"}, // leaves a rest
    {"pulled", R"({"job": 3, "slots": "2"})"},
    {"pulled", R"({"job": 1, "wire": 2, "count": 20})"},
    {"from-lot", R"({"job": 1, "lot": 1})"},
    {"slot-size", R"({"job": 1, "slot_width_mm": 0.6})"},
    {"shifted",
     R"({"job": 1, "slots": "1,2", "lengths_mm": [45, 52.4], "from": "2", "to": "1", "short_ones": "1"})"},
    {"board-width", R"({"job": 3, "slot": 2, "width_mm": 52.1})"},
    {"board-width", R"({"job": 3, "slot": 0, "width_mm": 51.9})"},
    {"define-bar", R"({"name": "short", "length_mm": 60, "width_mm": 90})"},
    {"define-bar", R"({"name": "Long", "length_mm": 100, "width_mm": 90})"}, // anew
    {"define-bar",
     R"({"name": "thin", "length_mm": 8, "width_mm": 90, "narrow": true, "ladder": "1000 1500 lb"})"},
    {"drop-bar", R"({"name": "long"})"},
    {"press-support",
     R"({"job": 1, "cradled": true, "head_clear": true, "nothing_bridges": true, "glue_set": true,
     "body_from_mm": 300, "hollow_from_mm": 10, "hollow_to_mm": 20, "soft_wood": true})"},
    {"press-support", R"({"job": 3, "nut_off": true, "bare_from_mm": 300})"},
    {"wire-size", R"({"wire": 1, "crown_width_mm": 2.3, "crown_height_mm": 1.1})"},
    {"set", R"({"setting": "press_plate", "to": "3000 lb"})"},
    {"define-machine", R"({"name": "buffer", "count": 2, "setup_minutes": 10})"},
    {"change-machine", R"({"machine": "sander", "count": 3})"},
    {"change-machine", R"({"machine": "sander", "name": "belt", "setup_minutes": 5})"},
    {"drop-machine", R"({"machine": "lathe"})"},
    {"machine-down",
     R"({"machine": "press", "until_at": "2026-03-27T11:00:00Z", "note": "its gauge sticks"})"},
    {"machine-down", R"({"machine": "lathe", "note": "its belt is torn"})"}, // said anew
    {"machine-up", R"({"machine": "lathe", "number": 2})"},                  // and the other stays out
    {"machine-up", R"({"machine": "lathe"})"},
    {"stage-machine", R"({"stage": "polish", "machine": "lathe"})"},
    {"stage-machine", R"({"stage": "crown"})"},
    {"stage-minutes", R"({"stage": "seat", "minutes": 25})"},
    {"stage-minutes", R"({"stage": "crown"})"},
    {"book", R"({"machine": "press", "day_on": "2026-04-01", "hours": "10:00-11:00", "job": 1})"},
    {"book", R"({"machine": "press", "begins_at": "2026-04-01T12:00:00Z", "minutes": 30})"},
    {"cancel-booking", R"({"booking": 1})"},
    {"start", R"({"job": 1, "stage": "pull"})"},
    {"start", R"({"job": 2, "stage": "seat"})"}, // goes on
    {"stop", R"({"job": 2, "stage": "bend"})"},
    {"finished", R"({"job": 2, "stage": "bend"})"},
    {"own-hours", R"({"person": "Odile", "days": "mon-thu", "hours": "9:00-13:00"})"},
    {"own-hours", R"({"person": "Tomo"})"},
    {"day-off", R"({"person": "Tomo", "day_on": "2026-04-07", "last_on": "2026-04-10"})"},
    {"day-on", R"({"person": "Tomo", "day_on": "2026-04-08", "hours": "10:00-12:00"})"},
    {"day-on", R"({"person": "Tomo", "day_on": "2026-04-06"})"},
    {"reopen-day", R"({"day_on": "2026-12-25"})"},
    {"priority", R"({"job": 1, "priority": 9})"},
    {"after", R"({"job": 1, "other": 2})"},
    {"after", R"({"job": 2, "other": 4, "no_more": true})"},
    {"look-again", R"({"job": 3, "again_at": "2026-03-26T12:30:00Z"})"},
    {"ordered",
     R"({"wire": 2, "count": 3, "each_mm": 500, "supplier": "Brook", "promised_on": "2026-04-01"})"},
    {"ordered", R"({"wire": 1, "mass_g": 500, "order": 1, "price": "30"})"},
    {"arrived", R"({"order": 1, "wire": 1, "count": 5, "rest_on": "2026-04-02"})"},
    {"arrived", R"({"order": 1, "wire": 1, "count": 5, "was_all": true})"},
    {"arrived", R"({})"},                       // all of both wires
    {"receive", R"({"wire": 1, "count": 36})"}, // all of that wire in order 1
    {"receive", R"({"wire": 1, "gross_g": 620, "tare_g": 120})"},
    {"order-promised", R"({"order": 1, "promised_on": "2026-04-03"})"},
    {"cancel-order", R"({"order": 1, "why": "they have none"})"}, // some of it came
    {"define-supplier", R"({"name": "Quarry", "minimum_mass_g": 500, "lead_weeks": 2})"},
    {"change-supplier",
     R"({"supplier": "mil", "name": "Miller", "pack_length_mm": 5000, "any_amount": true})"},
    {"drop-supplier", R"({"supplier": "Brook"})"},
};

} // namespace

TEST_CASE("every command is among those that are taken back here") {
  std::set<std::string_view> here;
  for (const Step& s : steps)
    here.insert(s.row);
  for (const Command* c : commands()) {
    if (c->name != "undo" && !c->for_good) {
      INFO(c->name);
      CHECK(here.contains(c->name));
    }
  }
}

TEST_CASE("what is taken back leaves the shop exactly as it was, twice over") {
  Busy shop;
  for (const Step& s : steps) {
    INFO(s.row << " " << s.json);
    const std::string before = shop.dump();
    const auto places = shop.places();
    for (int turn = 0; turn < 2; ++turn) {
      shop.does(s.row, s.json, true);
      if (s.row != std::string("finished") || std::string(s.json).find("seat") == std::string::npos)
        CHECK(shop.dump() != before);
      shop.does("undo");
      REQUIRE(shop.dump() == before);
      REQUIRE(shop.places() == places);
    }
  }
  CHECK(shop.made.sqlite->verify().empty());

  std::int64_t taken_back = 0;
  shop.seen([&](const View& v) {
    const auto lines =
        v.journal().happened({}, Instant{}, {shop.clock.now() + std::chrono::seconds(1), 0}, 100'000);
    CHECK(static_cast<std::int64_t>(lines.size()) == v.journal().newest());
    const auto zone = shop.rooms.of(v).zone;
    for (const Past& past : lines) {
      const Told t = told(past, v, *zone);
      INFO(t.sentence());
      CHECK(reads_as_a_sentence(t.sentence()));
      if (!past.taken_back_in) continue;
      CHECK(t.sentence().ends_with("Taken back by Mara, Wed 25 Mar 2026, 11:00."));
      ++taken_back;
    }
    return true;
  });
  CHECK(taken_back == 2 * static_cast<std::int64_t>(std::size(steps)));
}

TEST_CASE("undo passes by what was done for good, which stands alone and wants a yes") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  const std::string before = shop.dump();
  const auto miss = [&](const std::string& text, std::int64_t s) {
    shop.made.store.write([&](Tx& tx) {
      tx.backroom().keep(Missed{text, shop.mara.actor, Instant{s}, Instant{s}, 1}, text, 1000);
    });
  };
  miss("varnish it", 1'700'000'000);
  miss("gild it", 1'700'000'001);
  REQUIRE(size(at(shop.asks("not-understood").data, "sentences")) == 2);
  CHECK(shop.dump() == before); // no change of the shop
  const Problem asked = shop.refused("forget-not-understood");
  CHECK(asked.fault == Fault::confirm);
  CHECK(asked.text == "That deletes 2 sentences for good: no undo brings them back.");
  CHECK(shop.does("forget-not-understood", "{}", true).text ==
        "Forgot 2 sentences that nobody had understood.");
  CHECK(size(at(shop.asks("not-understood").data, "sentences")) == 0);
  CHECK(shop.does("undo").text.find("52.40 mm") != std::string::npos);
  CHECK(size(at(shop.asks("not-understood").data, "sentences")) == 0);
  CHECK(shop.made.sqlite->verify().empty());
}

TEST_CASE("a day's work is walked back step by step to the beginning") {
  Shop shop;
  const Step day[] = {{"add", R"({"wire": 1, "length_mm": [52.4, 120], "ends": "raw"})"},
                      {"hold", R"({"piece": 1, "job": 1, "slot": 1})"},
                      {"let-go", R"({"piece": 1})"},
                      {"use", R"({"piece": 1, "job": 1, "slot": 1})"},
                      {"use", R"({"piece": 2, "job": 1, "slot": 2})"},
                      {"finished", R"({"job": 1, "stage": "cut"})"},
                      {"finished", R"({"job": 1, "stage": "dress"})"},
                      {"came-short", R"({"job": 1, "slot": 3, "length_mm": 50})"},
                      {"pressed", R"({"job": 1, "slots": "1,2,4"})"},
                      {"pressed", R"({"job": 1, "slots": "3"})"}};
  std::vector<std::string> states;
  for (const Step& s : day) {
    states.push_back(shop.dump());
    shop.does(s.row, s.json, true);
  }
  while (!states.empty()) {
    shop.does("undo");
    REQUIRE(shop.dump() == states.back());
    states.pop_back();
  }
}

TEST_CASE("undo of a pressing removes its recheck") {
  Shop shop;
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("pressed", R"({"job": 1})");
  CHECK(size(at(shop.asks("due").data, "due")) == 1);
  CHECK(shop.does("undo").text.starts_with("Taken back: Job 1 (test board of Vida): frets 1-4 pressed"));
  CHECK(size(at(shop.asks("due").data, "due")) == 0);
  CHECK(shop.seen([](const View& v) { return v.jobs().rechecks(1).size(); }) == 0);
}

TEST_CASE("undo of a second pass gives the first its clock back") {
  Shop shop;
  shop.does("finished", R"({"job": 1, "stage": "cut"})");
  shop.does("pressed", R"({"job": 1, "slots": "1-2", "at": "2026-03-25T08:00:00Z"})");
  shop.does("pressed", R"({"job": 1, "slots": "3-4", "at": "2026-03-25T09:00:00Z"})");
  shop.does("undo");
  const auto r = shop.seen([](const View& v) { return v.jobs().rechecks(1); });
  REQUIRE(r.size() == 1);
  CHECK(r[0].slots == std::vector{1, 2});
  CHECK(r[0].due == instant("2026-03-26T08:00:00Z"));
}

TEST_CASE("what somebody else has touched since is not taken back, and the later line is named") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
  shop.who = shop.ines;
  shop.does("hold", R"({"piece": 1, "job": 1})");
  shop.who = shop.mara;
  const Problem p = shop.refused("undo");
  CHECK(p.fault == Fault::state);
  CHECK(p.text == "That cannot be taken back any more, because of what came after: Holding the 52.40 mm "
                  "short fret of medium (piece 1) "
                  "for job 1 (test board of Vida).");
  shop.who = shop.ines;
  shop.does("undo");
  shop.who = shop.mara;
  shop.does("undo"); // nothing stands in its way any more
  CHECK(shop.seen([](const View& v) { return v.tin().sum(1).pieces; }) == 0);
}

TEST_CASE("a job or a wire is not taken back from under what others reported about it") {
  const Step about_job[] = {{"use", R"({"piece": 1, "job": 3, "slot": 1})"},
                            {"hold", R"({"piece": 1, "job": 3})"},
                            {"finished", R"({"job": 3, "stage": "pull"})"},
                            {"pressed", R"({"job": 3})"}};
  for (const Step& s : about_job) {
    INFO(s.row);
    Shop shop;
    shop.does("add", R"({"wire": 1, "length_mm": 52.4})");
    shop.does("new-job",
              R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52})");
    shop.who = shop.ines;
    const Answer later = shop.does(s.row, s.json, true);
    shop.who = shop.mara;
    CHECK(shop.refused("undo").text.ends_with("because of what came after: " + later.text));
    shop.who = shop.ines;
    shop.does("undo");
    shop.who = shop.mara;
    shop.does("undo");
    CHECK_FALSE(shop.seen([](const View& v) { return v.jobs().find(3).has_value(); }));
  }
  for (const Step& s :
       {Step{"add", R"({"wire": 3, "length_mm": 52.4})"}, Step{"receive", R"({"wire": 3, "each_mm": 600})"},
        Step{"new-job",
             R"({"wire": 3, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52})"}}) {
    INFO(s.row);
    Shop shop;
    shop.does("define-wire", R"({"name": "tall"})");
    shop.who = shop.ines;
    const Answer later = shop.does(s.row, s.json);
    shop.who = shop.mara;
    CHECK(shop.refused("undo").text.ends_with("because of what came after: " + later.text));
  }
}

TEST_CASE("undo takes back one's own last list only") {
  Shop shop;
  shop.who = shop.ines;
  CHECK(shop.refused("undo").text == "Ines has nothing to take back.");
  shop.does("add", R"({"wire": 1, "length_mm": 50})");
  shop.who = shop.tomo;
  shop.does("add", R"({"wire": 1, "length_mm": 60})");
  shop.who = shop.ines;
  shop.does("undo");
  CHECK_FALSE(shop.seen([](const View& v) { return v.tin().find(1).has_value(); }));
  CHECK(shop.seen([](const View& v) { return v.tin().find(2).has_value(); }));
  CHECK(shop.refused("undo").fault == Fault::state);
}

TEST_CASE("a list is taken back whole") {
  Shop shop;
  const std::string before = shop.dump();
  Order list = shop.order({{"add", R"({"wire": 1, "length_mm": 52.4})"},
                           {"hold", R"({"piece": 1, "job": 1})"},
                           {"finished", R"({"job": 1, "stage": "cut"})"}});
  REQUIRE(shop.executor->run(list).answer.has_value());
  shop.does("undo");
  CHECK(shop.dump() == before);
}

TEST_CASE("undo stands alone in its list") {
  Shop shop;
  const auto out = shop.executor->run(shop.order({{"undo", "{}"}, {"undo", "{}"}}));
  REQUIRE(out.problem.has_value());
  CHECK(out.problem->text == "'undo' stands alone.");
}

TEST_CASE("wire that has gone on is not taken out of the stock behind its back") {
  Shop shop;
  shop.does("receive", R"({"wire": 2, "count": 4})"); // 2 m
  shop.who = shop.ines;
  shop.does("finished", R"({"job": 2, "stage": "cut"})");
  shop.who = shop.mara;
  const auto before = shop.dump();
  // The cut has touched the wire's stock; taking the delivery back would leave less than nothing on hand.
  const Outcome out = shop.outcome("undo");
  CHECK(out.problem.has_value());
  CHECK(shop.dump() == before);
}
