// The board of the worked example of pressing (tests/press/bench.hpp): 22 frets 50 mm long on a flat board,
// scale 25.4 in, crowns a tenth of an inch wide; a 3,000 lb press with a bar 4.40 in long.
#pragma once

#include "bench.hpp"

namespace nutward::test {

// It is job 3, of wire 3.
struct ExampleBoard : Shop {
  ExampleBoard() {
    does("define-wire", R"({"name": "tenth", "crown_width_mm": 2.54, "stick_mm": 600})");
    does("receive", R"({"wire": "tenth", "count": 10})");
    does("new-job",
         R"({"wire": "tenth", "scale_mm": 645.16, "frets": 22, "nut_width_mm": 50, "far_width_mm": 50,
                        "owner": "Bruna", "instrument": "test board"})");
    does("set", R"({"setting": "press_plate", "to": "3000 lb"})");
    does("define-bar", R"({"name": "long", "length_mm": 111.76, "width_mm": 90})");
  }
  void seat_all() {
    does("finished", R"({"job": 3, "stage": "cut"})");
    does("finished", R"({"job": 3, "stage": "seat"})");
  }
  // Cradled, with the head clear and nothing bridging; the body begins below slot 14.
  void support() {
    does("press-support", R"({"job": 3, "cradled": true, "head_clear": true, "nothing_bridges": true,
                              "glue_set": true, "body_from_mm": 358})");
  }
};

} // namespace nutward::test
