// What the tin saved: against a model that reads the ledger row by row, and by hand.
#include "bench.hpp"
#include "shop/period.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <random>
#include <set>

using namespace nutward;
using namespace nutward::test;

namespace {

struct Row {
  std::int64_t id = 0, wire = 0, length = 0, reverses = 0, happened = 0;
  std::string kind, from, to, job_slot; // "1/3"; "" for none
  bool job = false, slot = false, stands = true;
};

// The ledger in its order, each row with the time of its line and whether it stands.
std::vector<Row> ledger(Bench& shop) {
  std::vector<Row> out;
  SQLite::Database db(shop.made.file().string(), SQLite::OPEN_READONLY);
  SQLite::Statement q(db,
                      "SELECT m.id, m.wire, m.length_nm, m.reverses, j.happened_at, m.kind, m.from_place, "
                      "m.to_place, m.job, m.slot FROM movement m, journal_movement jm, journal j "
                      "WHERE jm.movement = m.id AND j.id = jm.line ORDER BY m.id");
  while (q.executeStep()) {
    Row r;
    r.id = q.getColumn(0).getInt64(), r.wire = q.getColumn(1).getInt64(),
    r.length = q.getColumn(2).getInt64();
    r.reverses = q.getColumn(3).getInt64(), r.happened = q.getColumn(4).getInt64();
    r.kind = q.getColumn(5).getString(), r.from = q.getColumn(6).getString(),
    r.to = q.getColumn(7).getString();
    r.job = !q.getColumn(8).isNull(), r.slot = !q.getColumn(9).isNull();
    if (r.job && r.slot) r.job_slot = q.getColumn(8).getString() + "/" + q.getColumn(9).getString();
    out.push_back(r);
  }
  std::set<std::int64_t> gone;
  for (const Row& r : out) {
    if (r.reverses != 0) gone.insert({r.id, r.reverses});
  }
  for (Row& r : out)
    r.stands = !gone.contains(r.id);
  return out;
}

struct Model {
  std::int64_t frets = 0, taken = 0, thrown = 0, trimmed = 0, kerf = 0;
};

Model model(const std::vector<Row>& rows, std::int64_t wire, std::int64_t from, std::int64_t before) {
  Model out;
  std::map<std::string, std::vector<std::int64_t>> of_tin; // instants of the frets that a slot has of the tin
  for (const Row& r : rows) {
    if (!r.stands || r.wire != wire) continue;
    if (r.from == "board" && (r.kind == "made_a_piece" || r.kind == "lost")) of_tin[r.job_slot].clear();
    if (r.from == "tin" && r.to == "board") of_tin[r.job_slot].push_back(r.happened);
    if (r.happened < from || r.happened >= before) continue;
    if (r.from == "stock" && r.slot && (r.to == "board" || r.to == "kerf")) out.taken += r.length;
    if (r.to == "kerf") out.kerf += r.length;
    if (r.to != "scrap") continue;
    (r.from == "tin" && !r.job ? out.thrown : out.trimmed) += r.length;
  }
  for (const auto& [slot, instants] : of_tin) {
    for (const std::int64_t t : instants)
      out.frets += t >= from && t < before ? 1 : 0;
  }
  return out;
}

Length mm(const Value& v, std::string_view name) {
  return as<Length>(at(v, name));
}

void check_against(const Model& m, const Value& v) {
  CHECK(as<std::int64_t>(at(v, "frets")) == m.frets);
  CHECK(mm(v, "taken").nm == m.taken);
  CHECK(mm(v, "thrown").nm == m.thrown);
  CHECK(mm(v, "trimmed").nm == m.trimmed);
  CHECK(mm(v, "kerf").nm == m.kerf);
}

// Slots of job 1 are all alike: a fret of a new stick takes 52.5 mm and 0.5 mm for the nip.
constexpr std::int64_t one_fret = 53'000'000;

std::string use(int piece, int slot, const char* at) {
  return fmt::format(R"({{"piece": {}, "job": 1, "slot": {}, "at": "{}"}})", piece, slot, at);
}

} // namespace

TEST_CASE(
    "over 4,000 random commands and undos the sums are those of a reading of the ledger, month by month") {
  Shop shop;
  shop.does("receive", R"({"wire": 1, "count": 200, "price_minor": 12345})");
  shop.does("receive", R"({"wire": 2, "count": 200})");
  int jobs = 8;
  for (int i = 0; i < 6; ++i)
    shop.does("new-job", fmt::format(R"({{"wire": {}, "scale_mm": 600, "frets": 22, "nut_width_mm": 50,
      "far_width_mm": 50}})",
                                     1 + i % 2));
  std::mt19937 random(20260401);
  const auto upto = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  int done = 0, taken_back = 0;
  std::int64_t pieces = 1;
  for (int i = 0; i < rounds(4000); ++i) {
    shop.clock.s += upto(7000 * effort); // some five months in all
    const int what = upto(100), job = jobs - upto(6), slot = 1 + upto(22);
    const std::int64_t piece = std::max<std::int64_t>(1, pieces - upto(25));
    Outcome o;
    if (what < 25)
      o = shop.outcome("add",
                       fmt::format(R"({{"wire": {}, "length_mm": {}.{:03}, "ends": "{}"}})", 1 + upto(2),
                                   48 + upto(9), upto(1000), upto(2) == 0 ? "raw" : "dressed"));
    else if (what < 55)
      o = shop.outcome("use", fmt::format(R"({{"piece": {}, "job": {}, "slot": {}}})", piece, job, slot));
    else if (what < 60)
      o = shop.outcome("scrap", fmt::format(R"({{"piece": {}}})", piece));
    else if (what < 72)
      o = shop.outcome("came-short",
                       fmt::format(R"({{"job": {}, "slot": {}, "length_mm": {}}})", job, slot, 45 + upto(5)));
    else if (what < 76)
      o = shop.outcome("finished", fmt::format(R"({{"job": {}, "stage": "cut"}})", job));
    else if (what < 80)
      o = shop.outcome("measured",
                       fmt::format(R"({{"job": {}, "slot": {}, "length_mm": {}}})", job, slot, 47 + upto(4)));
    else if (what < 83)
      o = shop.outcome("add",
                       fmt::format(R"({{"wire": {}, "length_mm": 150, "kind": "stick_end"}})", 1 + upto(2)));
    else if (what < 86)
      o = shop.outcome("pulled", fmt::format(R"({{"job": {}, "slots": "{}"}})", job, slot));
    else if (what < 88) {
      o = shop.outcome("new-job",
                       fmt::format(R"({{"wire": {}, "scale_mm": 600, "frets": 22, "nut_width_mm": 50,
        "far_width_mm": 50}})",
                                   1 + upto(2)));
      jobs = static_cast<int>(shop.rows_of("job"));
    } else {
      o = shop.outcome("undo");
      taken_back += o.answer ? 1 : 0;
    }
    if (o.problem) REQUIRE(o.problem->fault != Fault::broken);
    done += o.answer ? 1 : 0;
    pieces = shop.rows_of("piece");
  }
  CHECK(done > rounds(2000));
  CHECK(taken_back > rounds(300));
  const auto rows = ledger(shop);
  const Answer all = shop.asks("saved", R"({"month": "all_time"})");
  Model sum;
  for (std::size_t w = 0; w < 2; ++w) {
    const Model m = model(rows, static_cast<std::int64_t>(w) + 1, 0, shop.clock.s + 1);
    CHECK((m.frets > 20 || effort > 1));
    check_against(m, item(at(all.data, "wires"), w));
    CHECK(mm(item(at(all.data, "wires"), w), "all_new") ==
          mm(item(at(all.data, "wires"), w), "taken") + mm(item(at(all.data, "wires"), w), "replaced"));
    sum.frets += m.frets, sum.taken += m.taken, sum.thrown += m.thrown, sum.trimmed += m.trimmed,
        sum.kerf += m.kerf;
  }
  check_against(sum, all.data);
  // Over all time nothing is taken back any more: scrap and kerf are what the places hold.
  CHECK(sum.thrown + sum.trimmed == shop.places()["scrap"]);
  CHECK(sum.kerf == shop.places()["kerf"]);
  const Value& months = at(all.data, "months");
  CHECK(size(months) >= 8);
  std::int64_t replaced = 0, worth = 0;
  for (std::size_t i = 0; i < size(months); ++i) {
    const Value& month = item(months, i);
    const auto& name = as<std::string>(at(month, "month"));
    const std::string next = name.substr(0, 5) + fmt::format("{:02}", std::stoi(name.substr(5)) + 1);
    // Summer time begins in Berlin on 29 March 2026.
    const auto starts = [&](const std::string& m) {
      return instant(m + (m < "2026-04" ? "-01T00:00:00+01:00" : "-01T00:00:00+02:00")).s;
    };
    INFO(name);
    check_against(model(rows, as<Ref>(at(month, "wire")).id, starts(name), starts(next)), month);
    replaced += mm(month, "replaced").nm;
    if (const auto* m = std::get_if<Money>(&at(month, "worth_minor"))) worth += m->minor;
  }
  CHECK(replaced == mm(all.data, "replaced").nm);
  CHECK(worth == field<Money>(all, "worth_minor").minor);
}

TEST_CASE(
    "a fret counts in the month of the shop's zone in which it was made, on both sides of summer time") {
  Shop shop;
  shop.clock.to("2026-11-20T10:00:00Z");
  shop.does(
      "add",
      R"({"wire": 1, "length_mm": [51.5, 51.5, 51.5, 51.5], "ends": "dressed", "at": "2026-03-01T00:00:00Z"})");
  shop.does("use", use(1, 1, "2026-03-31T21:59:59Z")); // in Berlin the last second of March
  shop.does("use", use(2, 2, "2026-03-31T22:00:00Z")); // and the first of April
  shop.does("use", use(3, 3, "2026-10-31T22:59:59Z")); // winter time since 25 October
  shop.does("use", use(4, 4, "2026-10-31T23:00:00Z"));
  const auto frets = [&](const char* json) { return field<std::int64_t>(shop.asks("saved", json), "frets"); };
  CHECK(frets(R"({"month": "march"})") == 1);
  CHECK(frets(R"({"month": "april"})") == 1);
  CHECK(frets(R"({"month": "october"})") == 1);
  CHECK(frets(R"({"month": "november", "year": 2026})") == 1);
  CHECK(frets(R"({"month": "november", "year": 2025})") == 0);
  CHECK(frets(R"({"since_on": "2026-04-01"})") == 3);
  CHECK(frets(R"({"since_on": "2026-04-01", "until_on": "2026-10-31"})") == 2);
  CHECK(frets(R"({"since_month": "october"})") == 2);
  CHECK(frets(R"({"since_month": "december"})") == 4); // of last year
  CHECK(frets(R"({})") == 4);
  CHECK(frets(R"({"month": "last_year"})") == 0);
  CHECK(size(at(shop.asks("saved").data, "months")) == 4);
  shop.does("set", R"({"setting": "zone", "to": "UTC"})");
  CHECK(frets(R"({"month": "march"})") == 2);
  CHECK(frets(R"({"month": "october"})") == 2);
  CHECK(frets(R"({"month": "november"})") == 0);
  shop.does("set", R"({"setting": "zone", "to": "Pacific/Kiritimati"})"); // 14 hours ahead of UTC
  CHECK(frets(R"({"month": "march"})") == 0);
  CHECK(frets(R"({"month": "november"})") == 2);
}

TEST_CASE("money is the mean price of the deliveries so far, and says where there is none") {
  Shop shop;
  shop.clock.to("2026-06-01T10:00:00Z");
  shop.does("add", R"({"wire": 1, "length_mm": [51.5, 51.5, 51.5, 51.5], "ends": "dressed"})");
  shop.does("use", use(1, 1, "2026-05-01T10:00:00Z"));
  Answer a = shop.asks("saved");
  CHECK(std::holds_alternative<std::monostate>(at(a.data, "worth_minor")));
  CHECK(mm(a.data, "unpriced").nm == one_fret);
  CHECK(a.text.find("no price of it is on record") != std::string::npos);
  // 6 m for 10.00, then 6 m more for 30.00: 53 mm are 8.83 of 1000 minor units, and 17.67 of 4000 for 12 m.
  shop.does("receive", R"({"wire": 1, "count": 10, "price_minor": 1000, "at": "2026-05-02T10:00:00Z"})");
  shop.does("use", use(2, 2, "2026-05-02T10:00:00Z"));
  shop.does("receive", R"({"wire": 1, "count": 10, "price_minor": 3000, "at": "2026-05-04T10:00:00Z"})");
  shop.does("use", use(3, 3, "2026-05-03T10:00:00Z"));
  shop.does("use", use(4, 4, "2026-05-05T10:00:00Z"));
  a = shop.asks("saved");
  // Two frets at the first price: 106 mm · 1000 / 6000 mm = 17.67, so 18; one at the mean of both: 18.
  CHECK(field<Money>(a, "worth_minor").minor == 36);
  CHECK(mm(a.data, "unpriced").nm == one_fret);
  CHECK(a.text ==
        "In 2026 the tin saved 0.212 m of new wire, worth 0.36 EUR without 0.053 m that no price is on "
        "record for: 4 frets were made of its pieces.");
}

TEST_CASE("what was taken back does not count in any month, nor a fret that came out short") {
  Shop shop;
  shop.does("add", R"({"wire": 1, "length_mm": [51.5, 51.5], "ends": "dressed"})");
  shop.does("use", use(1, 1, "2026-03-01T10:00:00Z"));
  shop.clock.to("2026-04-10T10:00:00Z");
  shop.does("undo");
  CHECK(field<std::int64_t>(shop.asks("saved", R"({"month": "march"})"), "frets") == 0);
  CHECK(field<std::int64_t>(shop.asks("saved", R"({"month": "april"})"), "frets") == 0);
  shop.does("use", use(1, 1, "2026-04-09T10:00:00Z"));
  shop.does("came-short", R"({"job": 1, "slot": 1, "length_mm": 50})");
  CHECK(field<std::int64_t>(shop.asks("saved"), "frets") == 0);
  shop.does("undo");
  CHECK(field<std::int64_t>(shop.asks("saved"), "frets") == 1);
  shop.does("came-short", R"({"job": 1, "slot": 1, "length_mm": 50})");
  shop.does("use", use(2, 1, "2026-04-10T10:00:00Z"));
  CHECK(field<std::int64_t>(shop.asks("saved"), "frets") == 1);
}

TEST_CASE("an empty shop and a quiet wire are answered in words") {
  Bench bare;
  CHECK(bare.asks("saved").text == "No wire has been defined yet.");
  Shop shop;
  const Answer a = shop.asks("saved", R"({"wire": "narrow", "month": "all_time"})");
  CHECK(a.text == "No piece of the tin of narrow became a fret since the beginning.");
  CHECK_FALSE(a.table);
  CHECK(field<Money>(a, "worth_minor").minor == 0);
  CHECK(shop.unanswered("saved", R"({"year": 2026})").where == "year");
  CHECK(shop.unanswered("saved", R"({"month": "may", "since_on": "2026-01-01"})").where == "since_on");
  CHECK(shop.unanswered("saved", R"({"since_month": "may", "until_on": "2026-01-01"})").where ==
        "since_month");
  CHECK(shop.unanswered("saved", R"({"since_on": "2026-02-01", "until_on": "2026-01-01"})").where ==
        "until_on");
}
