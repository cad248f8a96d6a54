// Pictures by content negotiation (RFC 9110, 12.5.1), and what they may do in a browser.
#include "draw/judged.hpp"
#include "serve/accept.hpp"
#include "serve/served.hpp"

namespace serve = nutward::serve;
using namespace nutward::test;
using serve::Rather;

namespace {

Request asking(const std::string& path, const std::string& query, const std::string& accept) {
  Request r;
  r.method = "GET", r.path = path, r.query = query, r.uid = owner, r.via = "unix", r.accept = accept;
  return r;
}

Request saying(const std::string& text, const std::string& accept) {
  Request r = Served::post_of("/v1/say", R"({"text": ")" + text + "\"}");
  r.accept = accept;
  return r;
}

void fill(Served& served) {
  served.post("/v1/do/define-wire", R"({"name": "medium"})");
  served.post("/v1/do/add",
              R"({"wire": "medium", "length_mm": [52.4, 51.0, 48.2], "place": "drawer <2> & \"b\""})");
}

} // namespace

TEST_CASE("a picture is given to whom it is more welcome than JSON") {
  CHECK(serve::rather("") == Rather::json);
  CHECK(serve::rather("application/json") == Rather::json);
  CHECK(serve::rather("*/*") == Rather::json);
  CHECK(serve::rather("text/html") == Rather::json);
  CHECK(serve::rather("image/svg+xml") == Rather::picture_only);
  CHECK(serve::rather("IMAGE/SVG+XML ; q=0.5") == Rather::picture_only);
  CHECK(serve::rather("image/*") == Rather::picture_only);
  CHECK(serve::rather("image/svg+xml, application/json;q=0.9") == Rather::picture);
  CHECK(serve::rather("application/json, image/svg+xml;q=0.9") == Rather::json);
  CHECK(serve::rather("image/svg+xml;q=0, application/json") == Rather::json);
  CHECK(serve::rather("image/svg+xml;q=0, image/*") == Rather::json); // the exact range decides
  CHECK(serve::rather("image/svg+xml;q=two") == Rather::json);
  CHECK(serve::rather("image/svg+xml;q=1.5") == Rather::picture_only);
  // What browsers send from the address line and for <img>; from memory.
  CHECK(serve::rather("text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,*/*;q=0.8") ==
        Rather::json);
  CHECK(serve::rather("image/avif,image/webp,image/svg+xml,image/*;q=0.9,*/*;q=0.8") == Rather::picture);
}

TEST_CASE("a question that has a picture gives it as SVG, which may run and fetch nothing") {
  Served served;
  fill(served);
  const Response r = served.send(asking("/v1/ask/labels", "wire=medium", "image/svg+xml"));
  CHECK(r.status == 200);
  CHECK(r.content_type == "image/svg+xml");
  CHECK(header(r, "Content-Security-Policy") == "default-src 'none'; frame-ancestors 'none'; sandbox");
  CHECK(header(r, "Vary") == "Accept");
  CHECK(judged(r.body) == "");
  CHECK_THAT(r.body, ContainsSubstring(">50 to 55 mm</text>"));
  CHECK_THAT(r.body, ContainsSubstring("drawer &lt;2&gt; &amp; &quot;b&quot;"));
  const Response said = served.send(saying("labels for medium", "image/svg+xml"));
  CHECK(said.status == 200);
  CHECK(said.body == r.body);
}

TEST_CASE("JSON holds no picture, and says that it depends on Accept") {
  Served served;
  fill(served);
  const Response r = served.get("/v1/ask/labels", "wire=medium");
  CHECK(r.content_type == "application/json");
  CHECK(r.body.find("svg") == std::string::npos);
  CHECK(r.body.find("picture") == std::string::npos);
  CHECK(header(r, "Vary") == "Accept");
}

TEST_CASE(
    "where there is no picture it is 406, which names the questions that have one; or JSON if that will do") {
  Served served;
  for (const Request& r :
       {asking("/v1/ask/stock", "", "image/svg+xml"), asking("/v1/ask/labels", "", "image/svg+xml"),
        saying("stock", "image/svg+xml"), saying("blue cheese", "image/svg+xml")}) {
    const Response no = served.send(r);
    check_problem(no, 406);
    CHECK_THAT(word(no, "detail"), ContainsSubstring("labels"));
  }
  CHECK(served.send(asking("/v1/ask/stock", "", "image/svg+xml, application/json;q=0.1")).status == 200);
  CHECK(served.send(saying("stock", "image/svg+xml, */*;q=0.1")).status == 200);
  check_problem(served.send(asking("/v1/ask/labels", "wire=nonsense", "image/svg+xml")), 422);
}

TEST_CASE("a command that is said for a picture is not done") {
  Served served;
  served.get("/v1/health"); // makes the owner a person
  const auto before = served.revision();
  const Response no = served.send(saying("define wire medium", "image/svg+xml"));
  check_problem(no, 406);
  CHECK_THAT(word(no, "detail"), ContainsSubstring("was not done"));
  CHECK(served.revision() == before);
  CHECK(served.send(saying("define wire medium", "image/svg+xml, application/json;q=0.5")).status == 200);
  CHECK(served.revision() > before);
}
