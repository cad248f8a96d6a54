// The real `nutward` against a real door whose answers are fixed.
#include "cli/client_support.hpp"
#include "serve/door_support.hpp"
#include "support/catch.hpp"

#include <mutex>

using namespace client_support;
using door_support::count_of;
using door_support::RunningDoor;
using door_support::TempDir;
namespace serve = nutward::serve;

namespace {

const std::string full_answer =
    R"({"kind":"fit","text":"The 52.4 mm short fret fits slot 3.\nIt was held for nobody.",)"
    R"("reason":"It loses 0.3 mm, the least of all.",)"
    R"("table":{"columns":["piece","length","trim","place"],"rows":[)"
    R"(["p7","52.40 mm","0.30 mm","tin"],["p12","101.00 mm","8.00 mm",""],)"
    R"(["é",51.3,null,"door"]]},)"
    R"("data":{"fits":true},"cautions":["Wear eye protection when nipping."],)"
    R"("choices":[{"label":"use it","call":{}},{"label":"hold it","call":{}}]})";

// Says the same to everybody and keeps what it was asked.
struct Shop {
  TempDir dir;
  std::mutex mutex;
  serve::Response next{200, "application/json", full_answer, {}};
  std::vector<serve::Request> asked;
  RunningDoor door{options(dir), [this](const serve::Request& request, const serve::Reply& reply) {
                     const std::lock_guard lock(mutex);
                     asked.push_back(request);
                     if (request.body.find("\"goodbye\"") != std::string::npos) (*door).stop();
                     reply(next);
                   }};

  static serve::DoorOptions options(const TempDir& dir) {
    serve::DoorOptions out;
    out.socket = dir / "nutward.sock";
    return out;
  }
  std::string home() const { return dir.path.string(); }
  void say(int status, const std::string& body) {
    const std::lock_guard lock(mutex);
    next = {status, status < 400 ? "application/json" : "application/problem+json", body, {}};
  }
  Ran ask(Words words, const How& how = {}) const {
    words.insert(words.begin(), {"--home", home()});
    return run(words, how);
  }
  serve::Request last() {
    const std::lock_guard lock(mutex);
    return asked.empty() ? serve::Request{} : asked.back();
  }
};

} // namespace

TEST_CASE("the answer comes first, then the reason, the table, the caution and the choices") {
  Shop shop;
  const auto ran = shop.ask({"fit", "slot", "3"});
  CHECK(ran.out == "The 52.4 mm short fret fits slot 3.\n"
                   "It was held for nobody.\n"
                   "It loses 0.3 mm, the least of all.\n"
                   "piece     length     trim  place\n"
                   "p7      52.40 mm  0.30 mm  tin\n"
                   "p12    101.00 mm  8.00 mm\n"
                   "é           51.3           door\n"
                   "Caution: Wear eye protection when nipping.\n"
                   "1. use it\n"
                   "2. hold it\n"
                   "Answer with its number, as in: nutward --home " +
                       shop.home() + " 1\n");
  CHECK(ran.err.empty());
  CHECK(ran.code == 0);
}

TEST_CASE("quiet leaves out the reason and the hint, and never a caution") {
  Shop shop;
  shop.say(
      200,
      R"({"kind":"fit","text":"Yes.","reason":"So it is.","cautions":["Hands clear."],"choices":[{"label":"a"}]})");
  CHECK(shop.ask({"--quiet", "fit"}).out == "Yes.\nCaution: Hands clear.\n1. a\n");
}

TEST_CASE("a sentence is posted with its conversation and a key of its own") {
  Shop shop;
  shop.ask({"fit", "slot", "3", "of \"job\" 12"});
  const auto first = shop.last();
  CHECK(first.method == "POST");
  CHECK(first.path == "/v1/say");
  CHECK(first.content_type == "application/json");
  CHECK(first.body ==
        R"({"conversation":"cli-)" + std::to_string(::getsid(0)) + R"(","text":"fit slot 3 of \"job\" 12"})");
  CHECK(first.idempotency_key.size() == 34);
  CHECK(first.idempotency_key.front() == '"');
  CHECK(first.idempotency_key.back() == '"');
  shop.ask({"fit", "slot", "3"});
  CHECK(shop.last().idempotency_key != first.idempotency_key);
  shop.ask({"--key", "a\"b\\c", "--conversation", "bench two", "yes"});
  CHECK(shop.last().idempotency_key == R"("a\"b\\c")");
  CHECK(shop.last().body == R"({"conversation":"bench two","text":"yes"})");
}

TEST_CASE("numbers below nothing and everything after two dashes belong to the sentence") {
  Shop shop;
  const auto said = [&shop](const Words& words) {
    shop.ask(words);
    return shop.last().body.substr(shop.last().body.find("\"text\""));
  };
  CHECK(said({"off", "by", "-0.5", "mm", "--quiet"}) == R"("text":"off by -0.5 mm"})");
  CHECK(said({"off", "by", "-.5", "-"}) == R"("text":"off by -.5 -"})");
  CHECK(said({"--", "--json", "-h", "--", "x"}) == R"("text":"--json -h -- x"})");
}

TEST_CASE("json is printed as it came, on one line") {
  Shop shop;
  CHECK(shop.ask({"--json", "fit"}).out == full_answer + "\n");
  shop.say(409, R"({"title":"Conflict","status":409})");
  const auto refused = shop.ask({"fit", "--json"});
  CHECK(refused.out == "{\"title\":\"Conflict\",\"status\":409}\n");
  CHECK(refused.err.empty());
  CHECK(refused.code == 1);
}

TEST_CASE("of an answer with a list as CSV the list alone can be had") {
  Shop shop;
  shop.say(200,
           R"({"kind":"list","text":"Order 12.","data":{"csv":"wire,count\r\ntall,12\r\n"},"cautions":[]})");
  const auto listed = shop.ask({"--csv", "order list"});
  CHECK(listed.out == "wire,count\r\ntall,12\r\n");
  CHECK(listed.err.empty());
  CHECK(listed.code == 0);
  shop.say(200, full_answer);
  const auto none = shop.ask({"--csv", "fit"});
  CHECK(none.out.empty());
  CHECK(none.err.find("no list as CSV") != std::string::npos);
  CHECK(none.code == 1);
  CHECK(shop.ask({"--csv", "--json", "fit"}).code == 2);
}

TEST_CASE("a problem goes to standard error: what, where, what would do") {
  Shop shop;
  shop.say(
      422,
      R"({"type":"about:blank","title":"Unprocessable Content","status":422,"detail":"Slot 40 is beyond the board.",)"
      R"("errors":[{"pointer":"/slot","detail":"must be 1 to 22"},{"pointer":"","detail":"see help"}],)"
      R"("remedy":"Say a slot the board has.","choices":[{"label":"slot 4"}]})");
  const auto ran = shop.ask({"--conversation", "c", "fit"});
  CHECK(ran.out.empty());
  CHECK(ran.err == "nutward: Slot 40 is beyond the board.\n"
                   "  slot: must be 1 to 22\n"
                   "  see help\n"
                   "Say a slot the board has.\n"
                   "1. slot 4\n"
                   "Answer with its number, as in: nutward --home " +
                       shop.home() + " --conversation c 1\n");
  CHECK(ran.code == 1);
  shop.say(409, R"({"title":"Conflict","detail":"Not shown.","text":"Mark holds it."})");
  CHECK(shop.ask({"fit"}).err == "nutward: Mark holds it.\n");
  shop.say(409, R"({"title":"Conflict"})");
  CHECK(shop.ask({"fit"}).err == "nutward: Conflict\n");
}

TEST_CASE("the exit code says how it went") {
  Shop shop;
  struct Case {
    int status;
    const char* body;
    int code;
  };
  for (const auto& each : std::vector<Case>{
           {200, R"({"kind":"stock","text":"x"})", 0},
           {200, R"({"kind":"done","text":"x","data":{"fits":true}})", 0},
           {200, R"({"kind":"fit","text":"x","data":{"fits":false}})", 1},
           {200, R"({"kind":"refused","text":"x"})", 1},
           {200, R"({"kind":"unclear","text":"x"})", 1},
           {200, R"({"kind":"refused","text":"x","data":{"not_allowed":true}})", 77},
           {200, R"({"kind":"refused","text":"x","data":{}})", 1},
           {400, "{}", 1},
           {401, "{}", 77},
           {403, "{}", 77},
           {404, "{}", 1},
           {408, "{}", 75},
           {409, "{}", 1},
           {422, "{}", 1},
           {429, "{}", 75},
           {500, "{}", 75},
           {503, "{}", 75},
           {507, "{}", 75},
           {200, "<html>", 75},
           {200, "[]", 75},
           {200, "", 75},
       }) {
    INFO(each.status << " " << each.body);
    shop.say(each.status, each.body);
    CHECK(shop.ask({"x"}).code == each.code);
  }
  shop.say(200, std::string(100000, '[') + std::string(100000, ']'));
  CHECK(shop.ask({"x"}).code == 75);
}

TEST_CASE("stored text cannot drive the terminal") {
  Shop shop;
  const std::string evil = R"(a\u001b[2Jb\u202ec\u009bd\u200be)";
  const std::string tame = R"(a\x1b[2Jb\u202ec\u009bd\u200be)";
  shop.say(200, R"({"kind":"fit","text":")" + evil + R"(","reason":")" + evil + R"(","cautions":[")" + evil +
                    R"("],"choices":[{"label":")" + evil + R"("}],"table":{"columns":[")" + evil +
                    R"("],"rows":[[")" + evil + R"("]]}})");
  const auto ran = shop.ask({"--quiet", "x"});
  CHECK(ran.out == tame + "\n" + tame + "\n" + tame + "\nCaution: " + tame + "\n1. " + tame + "\n");
  CHECK(shop.ask({"x"}).out.find('\x1b') == std::string::npos);
  shop.say(422, R"({"detail":")" + evil + R"(","remedy":"x\ny","errors":[{"pointer":"/)" + evil +
                    R"(","detail":")" + evil + R"("}]})");
  CHECK(shop.ask({"x"}).err == "nutward: " + tame + "\n  " + tame + ": " + tame + "\nx y\n");
}

TEST_CASE("colour is for terminals, and only for those who want it") {
  if (!has_terminals()) {
    WARN("no pseudo-terminal to be had here: not tried");
    return;
  }
  Shop shop;
  shop.say(200, R"({"kind":"fit","text":"Yes.","cautions":["Hands clear."]})");
  const Words words{"--home", shop.home(), "x"};
  CHECK(run_on_terminal(words).out == "\x1b[1mYes.\x1b[0m\r\n\x1b[33mCaution: Hands clear.\x1b[0m\r\n");
  const std::string plain = "Yes.\r\nCaution: Hands clear.\r\n";
  for (const Words& environment : {Words{"TERM=dumb"}, Words{"TERM=xterm", "NO_COLOR=1"}, Words{}}) {
    How how;
    how.environment = environment;
    CHECK(run_on_terminal(words, how).out == plain);
  }
  CHECK(run_on_terminal({"--home", shop.home(), "--no-color", "x"}).out == plain);
  How empty; // an empty NO_COLOR is none (no-color.org)
  empty.environment = {"TERM=xterm", "NO_COLOR="};
  CHECK(run_on_terminal(words, empty).out.find("\x1b[1m") == 0);
}

TEST_CASE("without a sentence every line of standard input is one") {
  Shop shop;
  shop.say(200, R"({"kind":"unclear","text":"Which?","choices":[{"label":"this"}]})");
  How how;
  how.input = "fit slot 3\n\n  \nuse it\r\nno line end";
  const auto ran = shop.ask({}, how);
  CHECK(ran.out == "Which?\n1. this\nAnswer with its number.\nWhich?\n1. this\nAnswer with its number.\n"
                   "Which?\n1. this\nAnswer with its number.\n");
  CHECK(ran.err.empty()); // no prompt where nobody types
  CHECK(ran.code == 1);
  REQUIRE(shop.asked.size() == 3);
  CHECK(shop.asked[1].body.find("\"use it\"") != std::string::npos);
  CHECK(shop.asked[1].idempotency_key != shop.asked[2].idempotency_key);
}

TEST_CASE("on a terminal lines are prompted for until Ctrl-D") {
  if (!has_terminals()) {
    WARN("no pseudo-terminal to be had here: not tried");
    return;
  }
  Shop shop;
  shop.say(200, R"({"kind":"fit","text":"Yes."})");
  How how;
  how.input = "fit\n\x04";
  const auto ran = run_on_terminal({"--home", shop.home(), "--no-color"}, how);
  CHECK(count_of(ran.out, "> ") == 2);
  CHECK(count_of(ran.out, "Yes.\r\n") == 1);
  CHECK(ran.code == 0);
}

TEST_CASE("an answer that cannot be written is not called answered") {
  Shop shop;
  How how;
  how.out_file = "/dev/full";
  const auto ran = shop.ask({"x"}, how);
  CHECK(ran.err == "nutward: The answer could not be written: No space left on device.\n");
  CHECK(ran.code == 75);
}
