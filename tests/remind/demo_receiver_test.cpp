// deploy/receiver.py, which the demo shows to people.
#include "remind/deliver.hpp"
#include "support/catch.hpp"
#include "support/deliveries.hpp"

using namespace nutward::remind;
using namespace nutward::test;
using namespace std::chrono_literals;

TEST_CASE("The demo's receiver prints a line for each message, verifies it, and ends on SIGTERM") {
  const TemporaryFolder folder;
  Process receiver({NUTWARD_PYTHON, NUTWARD_SOURCE "/deploy/receiver.py", "0",
                    folder.file("secret", secret_text + "\n").string()});
  const std::string ready = receiver.line(20s);
  REQUIRE(ready.starts_with("listening "));
  const std::string url = "http://127.0.0.1:" + ready.substr(10) + "/";

  Deliverer deliverer;
  Deliveries sent(deliverer);
  CHECK(sent.one(message(url)).status == 204);
  CHECK(receiver.line(5s) == R"(verified recheck.due "Job 12 wants its recheck." id=msg_1)");

  Attempt forged = message(url);
  forged.secrets = {Secret::make()};
  CHECK(sent.one(forged).status == 401);
  CHECK(receiver.line(5s) == "refused no signature matches id=msg_1");

  Attempt stale = message(url);
  stale.at = stale.at - 301s;
  CHECK(sent.one(stale).status == 401);
  CHECK(receiver.line(5s) == "refused the timestamp is more than five minutes off id=msg_1");

  Attempt escaping = message(url);
  escaping.body = "{\"type\":\"a\\nb\",\"text\":\"\\u001b[2J\"}";
  CHECK(sent.one(escaping).status == 204);
  CHECK(receiver.line(5s) == R"(verified a\nb "\u001b[2J" id=msg_1)");
  CHECK(receiver.terminate() == 0);
}
