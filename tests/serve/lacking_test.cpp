// Every row called with nothing: what it cannot do without is said, and none fails inside.
#include "serve/served.hpp"

using namespace nutward::test;

TEST_CASE("a command that is told nothing says what is missing, or does what it can") {
  for (const Command* row : commands()) {
    Served served;
    const Response r = served.post("/v1/do/" + std::string(row->name));
    INFO(row->name << ": " << r.body);
    CHECK(r.status < 500);
    const bool needs =
        std::any_of(row->takes.begin(), row->takes.end(), [](const Param& p) { return p.required; });
    if (needs || r.status != 200) {
      CHECK(r.status >= 400);
      CHECK(r.content_type == "application/problem+json");
      CHECK(word(r, "detail").size() > 5);
    }
  }
}

TEST_CASE("a question that is told nothing says what is missing, or answers") {
  Served served;
  for (const Question* row : questions()) {
    const Response r = served.get("/v1/ask/" + std::string(row->name));
    INFO(row->name << ": " << r.body.substr(0, 300));
    CHECK(r.status < 500);
    if (r.status != 200) {
      CHECK(r.content_type == "application/problem+json");
      CHECK(word(r, "detail").size() > 5);
    }
  }
}

TEST_CASE("whose day it is has to be said") {
  Served served;
  for (const char* path : {"/v1/do/day-on", "/v1/do/day-off"}) {
    const Response r = served.post(path, R"({"day_on": "2026-04-01"})");
    INFO(r.body);
    CHECK(r.status == 422);
    CHECK(r.body.find("person") != std::string::npos);
  }
}
