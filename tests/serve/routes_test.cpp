// Requests in, responses out, without a socket: each route on a real shop, and who may take it.
#include "serve/served.hpp"

#include <set>

namespace serve = nutward::serve;
using namespace nutward::test;

TEST_CASE("health says that the shop is there, its version and its revision") {
  Served served;
  const Response r = served.get("/v1/health");
  CHECK(r.status == 200);
  CHECK(r.content_type == "application/json");
  CHECK(word(r, "status") == "ok");
  CHECK(word(r, "version") == "0.1.0");
  CHECK(std::get<std::int64_t>(field(read_json(r.body), "revision")) == served.revision());
}

TEST_CASE("a command by its route is done, and a question by its route is answered") {
  Served served;
  const Response done = served.post("/v1/do/define-wire", R"({"name": "medium"})");
  CHECK(done.status == 200);
  CHECK(done.content_type == "application/json");
  CHECK(word(done, "kind") == "done");
  CHECK(word(done, "text") == "Medium is a wire of the shop now.");
  CHECK(std::get<std::int64_t>(field(field(read_json(done.body), "data"), "wire")) == 1);
  const Response asked = served.get("/v1/ask/stock", "wire=medium");
  CHECK(asked.status == 200);
  CHECK(word(asked, "kind") == "stock");
}

TEST_CASE("a list is done whole by one route") {
  Served served;
  const Response done = served.post("/v1/do", R"({"calls": [{"do": "define-wire", "with": {"name": "medium"}},
      {"do": "add", "with": {"wire": "medium", "length_mm": 52.4}}]})");
  CHECK(done.status == 200);
  const auto before = served.revision();
  check_problem(
      served.post(
          "/v1/do",
          R"({"calls": [{"do": "define-wire", "with": {"name": "tall"}}, {"do": "scrap", "with": {"piece": 9}}]})"),
      422);
  CHECK(served.revision() == before);
  check_problem(served.post("/v1/do", R"({"calls": []})"), 422);
}

TEST_CASE("a sentence is said, and its conversation goes back with the answer") {
  Served served;
  const Response done = served.post("/v1/say", R"({"text": "define wire medium", "conversation": "c1"})");
  CHECK(done.status == 200);
  CHECK(word(done, "kind") == "done");
  CHECK(word(done, "conversation") == "c1");
  CHECK(word(served.post("/v1/say", R"({"text": "stock"})"), "kind") == "stock");
  check_problem(served.post("/v1/say", R"({"conversation": "c1"})"), 422);
  check_problem(served.post("/v1/say", R"({"text": 3})"), 422);
  check_problem(served.post("/v1/say", R"({"text": "stock", "tone": "rude"})"), 422);
  check_problem(served.post("/v1/say", R"(["stock"])"), 422);
  check_problem(
      served.post("/v1/say", R"({"text": "stock", "conversation": ")" + std::string(101, 'c') + "\"}"), 422);
}

TEST_CASE("HEAD is taken where GET is") {
  Served served;
  Request r;
  r.method = "HEAD", r.path = "/v1/health", r.uid = owner, r.via = "unix";
  CHECK(served.send(r).body == served.get("/v1/health").body); // the door leaves the body out
  r.path = "/v1/say";
  check_problem(served.send(r), 405);
}

TEST_CASE("what is not there is 404, and the wrong method is 405 with the right one in Allow") {
  Served served;
  for (const char* path : {"/", "/v1", "/v1/", "/v1/nothing", "/v1/ask", "/v1/ask/", "/v1/ask/nonsense",
                           "/v1/ask/stock/more", "/v1/health/", "/V1/health", "/v1/ask/use"})
    check_problem(served.get(path), 404);
  check_problem(served.post("/v1/do/nonsense"), 404);
  check_problem(served.post("/v1/do/stock"), 404);
  for (const auto& route : serve::Routes::table()) {
    Request r;
    r.method = "BREW", r.path = std::string(route.path) + (route.path.ends_with('/') ? "stock" : ""),
    r.uid = owner, r.via = "unix";
    const Response no = served.send(r);
    check_problem(no, 405);
    const std::string own = route.method == "GET" ? "GET, HEAD" : std::string(route.method);
    CHECK(header(no, "Allow") == (route.path == "/v1/tokens" ? "GET, HEAD, POST" : own));
  }
}

TEST_CASE("a body that is not said to be JSON is 415") {
  Served served;
  for (const char* path : {"/v1/say", "/v1/do", "/v1/do/define-wire"}) {
    for (const char* type : {"", "text/plain", "application/jsonx", "application/x-www-form-urlencoded"}) {
      Request r = Served::post_of(path, R"({"name": "medium"})");
      r.content_type = type;
      check_problem(served.send(r), 415);
    }
  }
  for (const char* type : {"application/json", "application/json; charset=utf-8", "Application/JSON",
                           "application/json ;charset=utf-8"}) {
    Request r = Served::post_of("/v1/say", R"({"text": "stock"})");
    r.content_type = type;
    INFO(type); // media types are case-insensitive (RFC 9110, 8.3.1)
    CHECK(served.send(r).status == 200);
  }
}

TEST_CASE("a wrong value is 422 with the field, and broken JSON with the byte") {
  Served served;
  served.post("/v1/do/define-wire", R"({"name": "medium"})");
  const Response r = served.post("/v1/do/add", R"({"wire": "medium", "length_mm": -3})");
  check_problem(r, 422);
  const auto errors = std::get<std::shared_ptr<const Node>>(field(read_json(r.body), "errors"));
  REQUIRE(errors->items.size() == 1);
  CHECK(std::get<std::string>(field(errors->items[0], "pointer")) == "/length_mm");
  CHECK_FALSE(word(r, "remedy").empty());
  const Response broken = served.post("/v1/do/add", R"({"wire": )");
  check_problem(broken, 422);
  CHECK(word(broken, "detail").find("at byte") != std::string::npos);
  check_problem(served.post("/v1/do/add", "[1]"), 422);
  check_problem(served.post("/v1/do/add", std::string(100'000, '[')), 422);
}

TEST_CASE("a state that will not do is 409, and ?yes=true says yes to what asks for it") {
  Served served;
  served.post("/v1/do/define-wire", R"({"name": "medium"})");
  served.post("/v1/do/new-job",
              R"({"wire": 1, "scale_mm": 640, "frets": 12, "nut_width_mm": 43, "far_width_mm": 53})");
  check_problem(served.post("/v1/do/define-wire", R"({"name": "medium"})"), 409);
  const Response no = served.post("/v1/do/cancel-job", R"({"job": 1})");
  check_problem(no, 409);
  const auto choices = std::get<std::shared_ptr<const Node>>(field(read_json(no.body), "choices"));
  CHECK(choices->items.size() == 1);
  for (const char* query : {"yes=false", "no=true", "yes"}) {
    Request r = Served::post_of("/v1/do/cancel-job", R"({"job": 1})");
    r.query = query;
    check_problem(served.send(r), 409);
  }
  Request yes = Served::post_of("/v1/do/cancel-job", R"({"job": 1})");
  yes.query = "yes=true";
  CHECK(served.send(yes).status == 200);
}

TEST_CASE("an Idempotency-Key means the same quoted or bare; for another body it is refused") {
  Served served;
  served.post("/v1/do/define-wire", R"({"name": "medium"})");
  Request r = Served::post_of("/v1/do/add", R"({"wire": "medium", "length_mm": 52.4})");
  r.idempotency_key = "\"k-1\"";
  const Response first = served.send(r);
  CHECK(first.status == 200);
  r.idempotency_key = "k-1";
  const Response again = served.send(r);
  CHECK(again.status == 200);
  CHECK(again.body == first.body);
  CHECK(seen(*served.made.sqlite, [](const View& v) { return v.tin().sum(1).pieces; }) == 1);
  r.body = R"({"wire": "medium", "length_mm": 53})";
  check_problem(served.send(r), 422);
  r.uid = colleague; // a key belongs to its caller
  CHECK(served.send(r).status == 200);
  for (const std::string& bad :
       {std::string("a\"b"), std::string(201, 'k'), std::string("k\x01"), std::string("\"")}) {
    r.idempotency_key = bad;
    check_problem(served.send(r), 422);
  }
}

TEST_CASE("a sentence under the same key is done once") {
  Served served;
  Request r = Served::post_of("/v1/say", R"({"text": "define wire medium", "conversation": "c"})");
  r.idempotency_key = "k";
  const Response first = served.send(r);
  CHECK(word(first, "kind") == "done");
  const auto before = served.revision();
  CHECK(word(served.send(r), "text") == word(first, "text"));
  CHECK(served.revision() == before);
}

TEST_CASE("a query is percent-decoded, a plus is a space, a name alone is true") {
  Served served;
  served.post("/v1/do/define-wire", R"({"name": "extra tall €"})");
  for (const char* query :
       {"wire=extra%20tall%20%E2%82%AC", "wire=extra+tall", "&&wire=%65xtra&", "%77ire=extra"}) {
    INFO(query);
    CHECK(served.get("/v1/ask/stock", query).status == 200);
  }
  CHECK(served.get("/v1/ask/fit", "length=2%201%2F16+in&wire=extra&long").status == 200);
  for (const char* query :
       {"wire=%", "wire=%4", "wire=%zz", "wire=%ff", "wire=1&wire=1", "=1", "colour=red"}) {
    INFO(query);
    check_problem(served.get("/v1/ask/stock", query), 422);
  }
  CHECK(served.get("/v1/ask/sto%63k").status == 200); // the same address (RFC 3986, 6.2.2.2)
  CHECK(served.post("/v1/do/define%2Dwire", R"({"name": "narrow"})").status == 200);
  check_problem(served.get("/v1/ask/stock%2Fmore"), 404);
  check_problem(served.get("/v1/ask/%zz"), 422);
}

TEST_CASE("a length in a query is in the field's unit, whatever the shop's is") {
  Served served;
  served.post("/v1/do/define-wire", R"({"name": "medium"})");
  served.post("/v1/do/set", R"({"setting": "unit", "to": "in"})");
  const Response r = served.get("/v1/ask/fit", "length_mm=52.4&wire=medium");
  REQUIRE(r.status == 200);
  CHECK(std::get<double>(field(field(field(read_json(r.body), "data"), "need"), "target_mm")) == 52.4);
}

TEST_CASE("who asks for the first time becomes an actor: the owner leads, others have the bench") {
  Served served;
  REQUIRE(served.actors().size() == 1);
  served.get("/v1/health", "", owner);
  served.get("/v1/health", "", colleague);
  served.get("/v1/health", "", colleague);
  const auto actors = served.actors();
  REQUIRE(actors.size() == 3);
  CHECK(actors[1].name == "mara");
  CHECK(actors[1].role == 2);
  CHECK(actors[1].uids == std::vector<std::int64_t>{owner});
  CHECK(actors[2].name == "user 1001");
  CHECK(actors[2].role == 1);
  CHECK(served.post("/v1/do/set", R"({"setting": "unit", "to": "in"})", owner).status == 200);
  check_problem(served.post("/v1/do/set", R"({"setting": "unit", "to": "mm"})", colleague), 403);
}

TEST_CASE("a machine's user who is called like somebody is not taken for them, until a lead says so") {
  Served served;
  served.get("/v1/health", "", owner); // becomes mara, who leads
  CHECK(served.post("/v1/do/new-person", R"({"name": "User 1001", "role": "lead"})", owner).status == 200);
  served.get("/v1/health", "", colleague);
  const auto actors = served.actors();
  REQUIRE(actors.size() == 4);
  CHECK(actors[3].name == "user 1001 (uid 1001)");
  CHECK(actors[3].role == 1);
  check_problem(served.post("/v1/do/set", R"({"setting": "unit", "to": "in"})", colleague), 403);
  CHECK(served.post("/v1/do/map-uid", R"({"uid": 1001, "person": "User 1001"})", owner).status == 200);
  CHECK(served.post("/v1/do/set", R"({"setting": "unit", "to": "in"})", colleague).status == 200);
}

TEST_CASE("a uid that was taken from somebody comes in under a name that nobody has") {
  Served served;
  served.get("/v1/health", "", owner);
  for (int n = 0; n < 4; ++n) {
    served.get("/v1/health", "", colleague);
    CHECK(served.post("/v1/do/unmap-uid", R"({"uid": 1001})", owner).status == 200);
  }
  std::set<std::string> names;
  for (const Actor& a : served.actors())
    names.insert(a.name);
  CHECK(names.size() == served.actors().size());
  CHECK(names.contains("user 1001 (uid 1001, 3)"));
}

TEST_CASE("who has retired does not come in, not even to look, until they are back") {
  Served served;
  served.get("/v1/health", "", owner);
  served.get("/v1/health", "", colleague);
  CHECK(served.post("/v1/do/retire-person", R"({"person": "user 1001"})", owner).status == 200);
  check_problem(served.get("/v1/ask/jobs", "", colleague), 403);
  check_problem(served.post("/v1/say", R"({"text": "who is there"})", colleague), 403);
  CHECK(served.actors().size() == 3); // and is not made anew
  CHECK(served.post("/v1/do/return-person", R"({"person": "user 1001"})", owner).status == 200);
  CHECK(served.get("/v1/ask/jobs", "", colleague).status == 200);
}

TEST_CASE("who may only look does nothing by saying it either") {
  Served served;
  served.get("/v1/health");
  const auto before = served.revision();
  const Response r = served.post("/v1/say", R"({"text": "define wire medium"})", visitor);
  CHECK(r.status == 200);
  CHECK(word(r, "kind") == "refused");
  CHECK(r.body.find(R"("data":{"not_allowed":true})") != std::string::npos);
  CHECK(served.revision() == before);
  check_problem(
      served.post("/v1/do", R"({"calls": [{"do": "define-wire", "with": {"name": "medium"}}]})", visitor),
      403);
}

TEST_CASE("a list that goes on names its next page, and the last page none") {
  Served served;
  served.post("/v1/do/define-wire", R"({"name": "medium", "stick_mm": 600})");
  for (int i = 0; i < 24; ++i)
    REQUIRE(served.post("/v1/do/receive", R"({"wire": "medium", "count": 1})").status == 200);
  const auto link_of = [](const Response& r) -> std::string {
    for (const auto& [name, value] : r.headers) {
      if (name == "Link") return value;
    }
    return "";
  };
  const Response first =
      served.get("/v1/ask/history", "wire=medium&cursor=7fffffffffffffff.0&since_on=2026-01-01");
  REQUIRE(first.status == 200);
  const std::string link = link_of(first);
  INFO(link);
  const std::string opening = "</v1/ask/history?wire=medium&since_on=2026-01-01&cursor=";
  REQUIRE(link.starts_with(opening));
  REQUIRE(link.ends_with(R"(>; rel="next")"));
  const std::string query = link.substr(std::string("</v1/ask/history?").size(),
                                        link.find('>') - std::string("</v1/ask/history?").size());
  const Response second = served.get("/v1/ask/history", query);
  REQUIRE(second.status == 200);
  CHECK(second.body.find("5 entries from earlier, the first ones") != std::string::npos);
  CHECK(link_of(second).empty());
}
