#include "remind/sign.hpp"
#include "support/catch.hpp"

#include <fmt/format.h>

using namespace nutward;
using namespace nutward::remind;

namespace {

std::string hex(std::span<const unsigned char> bytes) {
  std::string text;
  for (const unsigned char b : bytes)
    text += fmt::format("{:02x}", b);
  return text;
}

std::string hmac_hex(const std::string& key, const std::string& message) {
  return hex(hmac_sha256({reinterpret_cast<const unsigned char*>(key.data()), key.size()}, message));
}

const std::string vector_secret = "whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw";

std::string complaint(const std::string& text) {
  try {
    (void)Secret::parse(text);
  } catch (const BadSecret& e) {
    CHECK_FALSE(e.would_do.empty());
    return e.what();
  }
  return "";
}

} // namespace

TEST_CASE("HMAC-SHA256 gives what RFC 4231 says, cases 1 to 3") {
  // RFC 4231 §4.2, §4.3, §4.4
  CHECK(hmac_hex(std::string(20, '\x0b'), "Hi There") ==
        "b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7");
  CHECK(hmac_hex("Jefe", "what do ya want for nothing?") ==
        "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
  CHECK(hmac_hex(std::string(20, '\xaa'), std::string(50, '\xdd')) ==
        "773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe");
}

TEST_CASE("A signature is the one of the published Standard Webhooks example") {
  // The example of the Standard Webhooks libraries; OpenSSL's command line agrees.
  const Secret secret = Secret::parse(vector_secret);
  CHECK(sign(secret, "msg_p5jXN8AQM9LWM0D4loKWxJek", units::Instant{1614265330}, R"({"test": 2432232314})") ==
        "v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=");
}

TEST_CASE("Two secrets sign side by side, in their order, and one changed byte changes both") {
  const std::vector<Secret> both{Secret::parse(vector_secret), Secret::make()};
  const std::string signature = sign(both, "msg_1", units::Instant{1614265330}, "{}");
  CHECK(signature == sign(both[0], "msg_1", units::Instant{1614265330}, "{}") + " " +
                         sign(both[1], "msg_1", units::Instant{1614265330}, "{}"));
  CHECK(signature.size() == 2 * 47 + 1); // "v1," and 44 characters, twice
  const std::string other = sign(both, "msg_1", units::Instant{1614265331}, "{}");
  CHECK(other.substr(0, 47) != signature.substr(0, 47));
  CHECK(other.substr(48) != signature.substr(48));
  CHECK(sign(std::vector<Secret>{}, "msg_1", units::Instant{0}, "{}").empty());
}

TEST_CASE("A made secret has 32 bytes, is never the same, and reads back from its text") {
  const Secret one = Secret::make(), two = Secret::make();
  CHECK(one.key().size() == 32);
  CHECK(one.text() != two.text());
  CHECK(one.text().starts_with("whsec_"));
  CHECK(one.text().size() == 6 + 44);
  CHECK(Secret::parse(one.text()) == one);
  CHECK(Secret::parse(vector_secret).text() == vector_secret);
  CHECK(Secret::parse(vector_secret).key().size() == 24);
}

TEST_CASE("A secret that cannot be used is refused with what is wrong with it, and is not repeated") {
  CHECK(complaint("") == "The secret does not begin with whsec_.");
  CHECK(complaint("MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw") == "The secret does not begin with whsec_.");
  CHECK(complaint("whsec_") == "The secret is not base64 after whsec_.");
  CHECK(complaint("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaS!") == "The secret is not base64 after whsec_.");
  CHECK(complaint("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaS") == "The secret is not base64 after whsec_.");
  CHECK(complaint("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw\n") == "The secret is not base64 after whsec_.");
  CHECK(complaint("whsec_ MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw   ") == "The secret is not base64 after whsec_.");
  // 23 bytes with a stray bit in the last character: one key has one spelling.
  CHECK(complaint("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaR=") == "The secret is not base64 after whsec_.");
  CHECK(complaint("whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaQ=") ==
        "The secret holds 23 bytes; it must hold 24 to 64.");
  CHECK(complaint("whsec_" + std::string(88, 'A')) == "The secret holds 66 bytes; it must hold 24 to 64.");
  CHECK(complaint("whsec_" + std::string(5'000, 'A')) == "The secret is longer than 64 bytes.");
  CHECK_NOTHROW(Secret::parse("whsec_" + std::string(84, 'A'))); // 63 bytes
}
