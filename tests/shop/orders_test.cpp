// Orders, what comes of them, and what a supplier really takes. Figures by hand.
#include "bench.hpp"
#include "shop/purchases.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

#include <fmt/format.h>

#include <random>

using namespace nutward;
using namespace nutward::test;

namespace {

// It is Wednesday 2026-03-25, 11:00 in Berlin; medium has 10 sticks of 600 mm.
struct Ordered : Shop {
  Ordered() {
    does("define-supplier", R"({"name": "Mill", "pack": 12, "minimum": 24, "lead_days": 6})");
    does(
        "ordered",
        R"({"wire": 1, "count": 40, "supplier": "mill", "price": "80.01", "promised_on": "2026-03-27", "at": "2026-03-20T10:00:00Z"})");
  }
  std::vector<OnOrder> coming() {
    return seen([](const View& v) { return on_order(1, v); });
  }
  LeadTime lead() {
    return seen([&](const View& v) {
      return lead_time(v.purchases().suppliers().front(), v, *hours::load_zone("Europe/Berlin"));
    });
  }
};

} // namespace

TEST_CASE("an order comes in parts, each with its share of the price, until nothing is to come") {
  Ordered shop;
  REQUIRE(shop.coming().size() == 1);
  CHECK(shop.coming()[0].left_length == 24'000_mm);
  const Answer a = shop.does("arrived", R"({"count": 12, "rest_on": "2026-04-02"})");
  CHECK(a.text ==
        "Received from Mill: 12 sticks of medium, 600.00 mm each, for 24.00 EUR (lot 2). Still to come of "
        "order 1: 28 sticks of medium, 600.00 mm each, due Thu 2 Apr 2026.");
  CHECK(a.reason ==
        "5 days after the order, 2 days earlier than first promised. On hand now: 13.20 m of medium.");
  CHECK(shop.coming()[0].left == 28);
  CHECK(shop.coming()[0].purchase.promised_first == units::read_day("2026-03-27"));
  const Answer b = shop.does("arrived", "{}");
  CHECK(field<bool>(b, "closed"));
  CHECK(shop.coming().empty());
  CHECK(shop.seen([](const View& v) { return v.wires().lot(3)->price; }) == Money{5601}); // the rest of 80.01
  CHECK(shop.refused("arrived", "{}").text == "Nothing is on order.");
  CHECK(shop.refused("arrived", R"({"order": 1})").fault == Fault::state);
}

TEST_CASE("however an order is parted, the prices of its parts add up to what it cost") {
  std::mt19937 random(7);
  for (int round = 0; round < rounds(2000); ++round) {
    PurchaseLine line;
    line.count = 1 + static_cast<std::int64_t>(random() % 60);
    line.price = Money{static_cast<std::int64_t>(random() % 100'000)};
    std::int64_t before = 0, sum = 0;
    while (before < line.count) {
      const auto part = 1 + static_cast<std::int64_t>(random() % 20); // the last one may be more than ordered
      const Money share = *share_of(line, before, part);
      CHECK(share >= Money{});
      sum += share.minor, before += part;
    }
    CHECK(sum == line.price->minor);
    CHECK(share_of(line, before, 5) == Money{}); // and what comes beyond costs nothing
  }
}

TEST_CASE("nothing arrives before it was ordered, and more than was ordered is asked about") {
  Ordered shop;
  const Problem early = shop.refused("arrived", R"({"at": "2026-03-19T10:00:00Z"})");
  CHECK(early.where == "at");
  CHECK(early.text == "Order 1 of Mill was made after that; nothing of it can have come before.");
  CHECK(shop.refused("arrived", R"({"count": 41})").fault == Fault::confirm);
  CHECK(shop.refused("receive", R"({"wire": 1, "count": 41, "order": 1})").fault == Fault::confirm);
  CHECK(shop.coming()[0].left == 40);
  CHECK(field<bool>(shop.does("arrived", R"({"count": 41})", true), "closed"));
}

TEST_CASE("a promise before the order is refused; one on its day, or a year off, is asked about") {
  Ordered shop;
  CHECK(shop.refused("ordered", R"({"wire": 1, "count": 3, "promised_on": "2026-03-24"})").where ==
        "promised_on");
  CHECK(shop.refused("ordered", R"({"wire": 1, "count": 3, "promised_on": "2026-03-25"})").fault ==
        Fault::confirm);
  CHECK(shop.refused("ordered", R"({"wire": 1, "count": 3, "promised_on": "2027-03-25"})").fault ==
        Fault::confirm);
  CHECK(shop.refused("order-promised", R"({"promised_on": "2026-03-24"})").where == "promised_on");
  CHECK(
      shop.does("order-promised", R"({"promised_on": "2026-04-07"})").text ==
      "Order 1 (40 sticks of medium, 600.00 mm each, from Mill) is due Tue 7 Apr 2026 now; it was Fri 27 Mar "
      "2026.");
}

TEST_CASE("a lead time is learnt from what really came, counted from the order to the last of it") {
  Ordered shop;
  CHECK_FALSE(shop.lead().mean);
  CHECK(shop.lead().to_plan->mean == 6); // as they say
  shop.does("arrived", R"({"count": 12, "at": "2026-03-23T10:00:00Z"})");
  CHECK_FALSE(shop.lead().mean);                             // some of it is still to come
  shop.does("arrived", R"({"at": "2026-03-24T10:00:00Z"})"); // 4 days
  CHECK(shop.lead().mean == 4.0);
  CHECK_FALSE(shop.lead().spread);
  CHECK(shop.lead().to_plan->mean == Approx((2 * 6 + 4) / 3.0));
  shop.does("ordered", R"({"wire": 1, "count": 12, "at": "2026-03-10T10:00:00Z"})");
  shop.does("arrived", R"({"count": 6, "at": "2026-03-18T10:00:00Z"})");
  shop.does("cancel-order", "{}"); // the rest never came: 8 days
  CHECK(shop.lead().took == std::vector<double>{8, 4});
  CHECK(shop.lead().mean == 6.0);
  CHECK(*shop.lead().spread == Approx(std::sqrt(8.0)));
  const Answer a = shop.asks("suppliers");
  CHECK(in_words(a) == "Mill|12 sticks|24 sticks|6 days|6 days (± 2.8, of 2 orders)|0|\n");
}

TEST_CASE("what comes is of the open order that it fits, and asked about where two do or none") {
  Ordered shop;
  CHECK(shop.does("receive", R"({"wire": 1, "count": 10})").text ==
        "Received 10 sticks of medium, 600.00 mm each, 6.00 m in all for 20.00 EUR. It is of order 1; still "
        "to come: "
        "30 sticks of medium, 600.00 mm each.");
  const Problem more = shop.refused("receive", R"({"wire": 1, "count": 31})");
  CHECK(more.fault == Fault::ambiguous);
  REQUIRE(more.choices.size() == 2);
  CHECK(more.choices[1].label == "it was not ordered");
  shop.does("receive", R"({"wire": 1, "count": 31, "unordered": true})");
  CHECK(shop.coming()[0].left == 30);
  shop.does("receive", R"({"wire": 1, "count": 2, "supplier": "somebody else"})");
  CHECK(shop.coming()[0].left == 30); // not from Mill
  shop.does("receive", R"({"wire": 1, "count": 2, "at": "2026-03-19T10:00:00Z"})");
  CHECK(shop.coming()[0].left == 30); // nor ordered by then
  CHECK(shop.refused("receive", R"({"wire": 2, "count": 2, "each_mm": 500, "order": 1})").where == "order");
  shop.does("receive", R"({"wire": 1, "count": 30})");
  CHECK(shop.coming().empty());
}

TEST_CASE("a lead time of nothing is asked about, one of a year refused, and so is a name that is taken") {
  Ordered shop;
  CHECK(shop.refused("change-supplier", R"({"supplier": "Mill", "lead_days": 0})").fault == Fault::confirm);
  CHECK(shop.refused("change-supplier", R"({"supplier": "Mill", "lead_days": 365})").where == "lead_days");
  CHECK(shop.refused("change-supplier", R"({"supplier": "Mill", "lead_weeks": 53})").where == "lead_weeks");
  CHECK(shop.refused("define-supplier", R"({"name": "MILL"})").where == "name");
  CHECK(shop.refused("define-supplier", R"({"name": "Odd", "pack": 2, "pack_mass_g": 500})").where == "pack");
  CHECK(shop.refused("ordered", R"({"wire": 1, "count": 2, "supplier": "Mil1"})").text ==
        "There is no supplier called Mil1 yet. Is it Mill? Is that a new one?");
  CHECK(shop.refused("drop-supplier", R"({"supplier": "Mill"})").fault == Fault::state);
}

TEST_CASE("a price is in the shop's currency, which may be said, and never in another one") {
  Ordered shop;
  shop.does("receive", R"({"wire": 1, "count": 1, "price": "12.50 EUR", "unordered": true})");
  CHECK(shop.seen([](const View& v) { return v.wires().lot(2)->price; }) == Money{1250});
  const Problem usd = shop.refused("receive", R"({"wire": 1, "count": 1, "price": "12.50 USD"})");
  CHECK(usd.where == "price_minor");
  CHECK(usd.text == "The shop's money is EUR; '12.50 USD' is not in it.");
}

TEST_CASE("a coil taken in by mass says how far that may be off, keeps its spool, and never gains") {
  Ordered shop;
  CHECK(shop.refused("receive", R"({"wire": 2, "gross_g": 620})").where == "tare_g");
  shop.does("calibrate",
            R"({"wire": 2, "length_mm": 600, "mass_g": 14.4, "division_g": 0.1})"); // 24 g/m ± 0.7 %
  const Answer a = shop.does("receive", R"({"wire": 2, "gross_g": 620, "tare_g": 140, "division_g": 0.1})");
  CHECK(a.text == "Received 1 coil of narrow, 20.00 m ± 0.14 m each, 20.00 m in all.");
  // The spool is known now.
  CHECK(shop.does("weigh", R"({"wire": 2, "mass_g": 380, "division_g": 0.1})").text ==
        "240 g of narrow (less 140 g of spool, as known) is 10.00 m ± 0.08 m. That is on hand now; the "
        "ledger had "
        "20.00 m, 10.00 m more.");
  const Problem heavy = shop.refused("weigh", R"({"wire": 2, "mass_g": 640})", true);
  CHECK(heavy.where == "mass_g");
  CHECK(heavy.text ==
        "The coil of lot 2 weighed 620 g with its spool when it came; it cannot weigh 640 g now.");
  // Without its gross weight, what is over a tenth more than it was is asked about.
  shop.does("receive", R"({"wire": 2, "form": "coil", "each_mm": 10000, "tare_g": 100})");
  CHECK(shop.refused("weigh", R"({"wire": 2, "mass_g": 700, "division_g": 0.1})").fault == Fault::confirm);
}

TEST_CASE("what one sentence orders from one supplier is one order, and its wires come one by one") {
  Ordered shop;
  shop.does("arrived", "{}");
  shop.does("ordered", R"({"wire": 1, "count": 12})");
  shop.does("ordered", R"({"wire": 2, "count": 6, "each_mm": 500, "supplier": "Mill"})"); // the same instant
  CHECK(shop.rows_of("purchase") == 2);
  const Problem which = shop.refused("arrived", R"({"count": 6})");
  CHECK(which.fault == Fault::ambiguous);
  CHECK(which.choices.size() == 2);
  CHECK_FALSE(field<bool>(shop.does("arrived", R"({"count": 6, "wire": 2})"), "closed"));
  CHECK(field<bool>(shop.does("arrived", R"({"wire": 1})"), "closed"));
}

TEST_CASE("less than nothing on hand is flagged wherever stock is told") {
  Shop shop;
  shop.does("correct", R"({"wire": 1, "by_mm": -7000, "why": "entered late"})");
  const std::string flag =
      " Less than nothing is on hand of medium: enter the delivery that is missing, or count it.";
  CHECK(shop.asks("stock").text.ends_with(flag));
  const Answer one = shop.asks("stock", R"({"wire": 1})");
  CHECK(one.text.ends_with(flag));
  CHECK(field<bool>(one, "less_than_nothing"));
}
