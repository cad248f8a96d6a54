// The question `level`: what readings come to, and what is to be done next.
#include "bench.hpp"
#include "support/catch.hpp"

#include <fmt/format.h>

#include <iostream>

using namespace nutward;
using namespace nutward::test;

namespace {

// Job 3 is of the worked example of pressing: 22 frets on a flat board, scale 25.4 in.
struct Levelled : Shop {
  Levelled() {
    does("define-wire", R"({"name": "tenth", "crown_width_mm": 2.54, "stick_mm": 600})");
    does("receive", R"({"wire": "tenth", "count": 10})");
    does("new-job",
         R"({"wire": "tenth", "scale_mm": 645.16, "frets": 22, "nut_width_mm": 50, "far_width_mm": 50,
                        "owner": "Bruna", "instrument": "test board"})");
    does("set", R"({"setting": "press_plate", "to": "3000 lb"})");
    does("define-bar", R"({"name": "long", "length_mm": 111.76, "width_mm": 90})");
    does("finished", R"({"job": 3, "stage": "cut"})");
    does("finished", R"({"job": 3, "stage": "seat"})");
    does("press-support", R"({"job": 3, "cradled": true, "head_clear": true, "nothing_bridges": true,
                              "glue_set": true, "body_from_mm": 358})");
  }
  void read(int from, int to, bool rocks, level::Line line = level::Line::middle) {
    made.sqlite->write([&](Tx& tx) {
      Reading r;
      r.job = 3;
      r.is.line = line;
      r.is.span = {from, to};
      r.is.felt = rocks ? level::Felt::rocks : level::Felt::steady;
      r.is.revision = 100;
      tx.put(r);
    });
  }
  void straight() {
    made.sqlite->write([&](Tx& tx) {
      Job j = *tx.jobs().find(3);
      j.straight_seen = Instant{1};
      tx.put(j);
    });
  }
  void show(const std::string& json = R"({"job": 3})") {
    const Answer a = asks("level", json);
    std::cout << "\n" << json << "\nT " << a.text << "\nR " << a.reason << "\n";
    if (a.table)
      for (const auto& row : a.table->rows) {
        for (const auto& cell : row)
          std::cout << " | " << cell;
        std::cout << "\n";
      }
    std::cout << to_json(a.data).size() << "\n";
  }
};

} // namespace

TEST_CASE("look", "[.]") {
  Levelled shop;
  shop.show();
  shop.straight();
  shop.show();
  shop.read(1, 22, false);
  shop.show();
  shop.read(12, 14, true);
  shop.show();
  shop.show(R"({"job": 3, "all": true})");
  shop.show(R"({"job": 3, "slot": 13})");
  shop.show(R"({"job": 3, "slot": 3})");
  shop.show(R"({"job": 3, "only": "call"})");
  shop.show(R"({"job": 3, "only": "next"})");
  shop.show(R"({"job": 3, "line": "bass"})");
  shop.read(6, 8, true, level::Line::bass);
  shop.read(4, 6, false, level::Line::bass);
  shop.show();
  shop.show(R"({"job": 3, "line": "bass"})");
  shop.read(6, 8, false, level::Line::bass);
  shop.show();
}
