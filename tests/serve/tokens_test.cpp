// Tokens: made by who leads, over the Unix socket, shown once, kept as a SHA-256 and nowhere else, good until
// withdrawn, and never for more than their person may do.
#include "serve/served.hpp"

#include "serve/token.hpp"

#include <algorithm>
#include <fcntl.h>
#include <fstream>
#include <sstream>
#include <sys/stat.h>

namespace serve = nutward::serve;
using namespace nutward::test;

namespace {

Request over_tcp(const std::string& authorization, const std::string& method = "GET",
                 const std::string& path = "/v1/health", const std::string& body = "") {
  Request r;
  r.method = method, r.path = path, r.body = body, r.via = "tcp", r.authorization = authorization;
  if (!body.empty()) r.content_type = "application/json";
  return r;
}

std::string secret_of(const Response& r) {
  REQUIRE(r.status == 200);
  return std::get<std::string>(field(field(read_json(r.body), "data"), "token"));
}

std::string tablet(Served& served, const std::string& more = R"(, "role": "bench")") {
  return secret_of(served.post("/v1/tokens", R"({"name": "tablet")" + more + "}"));
}

Response withdraw(Served& served, const std::string& name, std::uint32_t uid = owner) {
  Request r;
  r.method = "DELETE", r.path = "/v1/tokens/" + name, r.via = "unix", r.uid = uid;
  return served.send(r);
}

std::string all_of(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

unsigned mode_of(const std::filesystem::path& file) {
  struct stat found {};
  REQUIRE(::lstat(file.c_str(), &found) == 0);
  return found.st_mode & 07777U;
}

std::string line_of(const std::filesystem::path& file) {
  std::string out = all_of(file);
  REQUIRE(out.ends_with('\n'));
  out.pop_back();
  return out;
}

} // namespace

TEST_CASE("a token is 32 bytes of chance, and its digest is SHA-256") {
  const std::string one = serve::new_token(), two = serve::new_token();
  CHECK(one.size() == 4 + 64);
  CHECK(serve::is_token(one));
  CHECK(one != two);
  CHECK_FALSE(serve::is_token(one + "0"));
  CHECK_FALSE(serve::is_token(one.substr(1)));
  // FIPS 180-4's example of one block, "abc"; from memory, and agrees with sha256sum of coreutils.
  CHECK(serve::digest_of("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST_CASE("a bearer is read as RFC 6750 has it, the scheme in any case") {
  CHECK(serve::bearer_of("Bearer abc") == "abc");
  CHECK(serve::bearer_of("bEARER   abc") == "abc");
  CHECK(serve::bearer_of("Bearer a b") == "a b"); // which is no token
  CHECK_FALSE(serve::bearer_of("Basic abc"));
  CHECK_FALSE(serve::bearer_of("Bearerabc"));
  CHECK_FALSE(serve::bearer_of("Bearer"));
  CHECK_FALSE(serve::bearer_of(""));
}

TEST_CASE("over TCP nobody is let in without a good token, wherever they go") {
  Served served;
  const std::string good = tablet(served);
  std::string other = good;
  other.back() = other.back() == '0' ? '1' : '0';
  const std::string in_capitals = "NWT_" + good.substr(4);
  for (const std::string& bad :
       {std::string(), std::string("Bearer"), std::string("Bearer "), "Bearer " + other,
        "Bearer " + good.substr(0, 67), "Bearer " + good + "0", "Bearer " + good + " ", "Basic " + good, good,
        "Bearer " + in_capitals, "Bearer " + serve::digest_of(good),
        std::string("Bearer nwt_") + std::string(64, '0')}) {
    for (const char* path : {"/v1/health", "/v1/nothing", "/v1/tokens", "/"}) {
      INFO(bad << " " << path);
      const Response r = served.send(over_tcp(bad, "GET", path));
      check_problem(r, 401);
      CHECK(header(r, "WWW-Authenticate") ==
            (bad.empty() ? R"(Bearer realm="nutward")" : R"(Bearer realm="nutward", error="invalid_token")"));
      CHECK(r.body.find("nwt_") == std::string::npos);
    }
  }
  CHECK(served.send(over_tcp("Bearer " + good)).status == 200);
}

TEST_CASE("a user's id counts for nothing over TCP, and a token for nothing over the Unix socket") {
  Served served;
  served.get("/v1/health", "", owner);
  Request r = over_tcp("");
  r.uid = owner;
  CHECK(served.send(r).status == 401);
  const std::string lead = tablet(served, R"(, "role": "lead")");
  Request here;
  here.method = "GET", here.path = "/v1/tokens", here.via = "unix", here.uid = colleague;
  here.authorization = "Bearer " + lead;
  check_problem(served.send(here), 403);
}

TEST_CASE("what is done with a token is done by its person, with the lesser of both roles") {
  Served served;
  const std::string bench = "Bearer " + tablet(served);
  CHECK(served.send(over_tcp(bench, "POST", "/v1/do/set", R"({"setting": "unit", "to": "in"})")).status ==
        403);
  const std::string lead =
      "Bearer " + secret_of(served.post("/v1/tokens", R"({"name": "desk", "role": "lead"})"));
  CHECK(served.send(over_tcp(lead, "POST", "/v1/do/set", R"({"setting": "unit", "to": "in"})")).status ==
        200);
  const auto line =
      seen(*served.made.sqlite, [](const View& v) { return v.journal().line(v.journal().newest()); });
  REQUIRE(line);
  const auto mara = served.people.user(owner);
  CHECK(line->actor == mara.actor);
  CHECK(line->via == "tcp");
  served.set_role(mara.actor, Role::bench); // from now on she leads nothing, with no token either
  CHECK(served.send(over_tcp(lead, "POST", "/v1/do/set", R"({"setting": "unit", "to": "mm"})")).status ==
        403);
  CHECK(served.send(over_tcp(lead, "POST", "/v1/do/define-wire", R"({"name": "medium"})")).status == 200);
}

TEST_CASE("a token may be another person's, and never for more than they may do") {
  Served served;
  const std::string token = tablet(served, R"(, "role": "look", "person": "VISITOR")");
  CHECK(served.send(over_tcp("Bearer " + token)).status == 200);
  check_problem(served.post("/v1/tokens", R"({"name": "b", "role": "bench", "person": "visitor"})"), 422);
  check_problem(served.post("/v1/tokens", R"({"name": "b", "role": "look", "person": "nobody"})"), 422);
  const auto table = served.get("/v1/tokens").body;
  CHECK(table.find(R"(["tablet","visitor","look",)") != std::string::npos);
  served.made.sqlite->write([&](Tx& tx) {
    for (const Actor& a : tx.house().actors()) {
      if (a.name == "visitor") tx.drop({Thing::actor, a.id});
    }
    tx.backroom().take_changes();
  });
  CHECK(served.send(over_tcp("Bearer " + token)).status == 401);
  CHECK(served.get("/v1/tokens").body.find("visitor (taken back)") != std::string::npos);
}

TEST_CASE("a token opens nothing while its person has retired, and nobody gets one for them") {
  Served served;
  const std::string token = tablet(served, R"(, "role": "look", "person": "visitor")");
  CHECK(served.send(over_tcp("Bearer " + token)).status == 200);
  const auto retired = served.post("/v1/do/retire-person", R"({"person": "visitor"})");
  CHECK(word(retired, "reason").find("Until visitor is back, this opens nothing: token tablet.") !=
        std::string::npos);
  CHECK(served.send(over_tcp("Bearer " + token)).status == 401);
  check_problem(served.post("/v1/tokens", R"({"name": "b", "role": "look", "person": "visitor"})"), 422);
  const auto back = served.post("/v1/do/return-person", R"({"person": "visitor"})");
  CHECK(word(back, "reason") ==
        "This opens again over TCP: token tablet. Withdraw what was lost or given away.");
  CHECK(served.send(over_tcp("Bearer " + token)).status == 200);
}

TEST_CASE("a retired person's token is listed as theirs, and a lead withdraws it for good") {
  Served served;
  const std::string token = tablet(served, R"(, "role": "look", "person": "visitor")");
  CHECK(served.get("/v1/tokens").body.find(R"("opens":true)") != std::string::npos);
  served.post("/v1/do/retire-person", R"({"person": "visitor"})");
  const Response listed = served.get("/v1/tokens");
  CHECK(listed.body.find("[\"tablet\",\"visitor (retired)\",\"look\",") != std::string::npos);
  CHECK(listed.body.find(R"("opens":false)") != std::string::npos);
  CHECK(word(listed, "text") ==
        "Tokens that are good: 0. Of people who have gone, opening nothing while they are away: 1.");
  check_problem(served.post("/v1/tokens", R"({"name": "tablet", "role": "look"})"),
                409); // it still has its name
  CHECK(withdraw(served, "tablet").status == 200);
  CHECK(word(served.get("/v1/tokens"), "text") == "There is no token.");
  CHECK(served.post("/v1/do/return-person", R"({"person": "visitor"})").body.find("tablet") ==
        std::string::npos);
  CHECK(served.send(over_tcp("Bearer " + token)).status == 401);
}

TEST_CASE("who leads makes, lists and withdraws tokens, over the Unix socket alone") {
  Served served;
  const std::string lead = "Bearer " + tablet(served, R"(, "role": "lead")");
  for (const auto& [method, path] :
       {std::pair{"GET", "/v1/tokens"}, {"POST", "/v1/tokens"}, {"DELETE", "/v1/tokens/tablet"}}) {
    const Response r = served.send(over_tcp(lead, method, path, R"({"name": "x", "role": "look"})"));
    check_problem(r, 403);
    CHECK(word(r, "detail") == "That is to be had over the Unix socket only.");
  }
  check_problem(served.get("/v1/tokens", "", colleague), 403);
  check_problem(served.post("/v1/tokens", R"({"name": "x", "role": "look"})", colleague), 403);
  check_problem(withdraw(served, "tablet", colleague), 403);
  CHECK(served.send(over_tcp(lead)).status == 200);
  CHECK(word(withdraw(served, "TABLET"), "text") == "The token tablet is good for nothing any more.");
  CHECK(served.send(over_tcp(lead)).status == 401);
  check_problem(withdraw(served, "tablet"), 422);
  CHECK(served.get("/v1/tokens").body.find("tablet") == std::string::npos);
  const std::string again = tablet(served); // the name is free again, the old token stays dead
  CHECK(served.send(over_tcp("Bearer " + again)).status == 200);
  CHECK(served.send(over_tcp(lead)).status == 401);
}

TEST_CASE("a token wants a name and a role, and says what is wrong") {
  Served served;
  tablet(served);
  check_problem(served.post("/v1/tokens", R"({"name": "Tablet", "role": "look"})"), 409);
  for (const char* body :
       {R"({})", R"({"name": "a"})", R"({"role": "look"})", R"({"name": "a", "role": "boss"})",
        R"({"name": "a", "role": 2})", R"({"name": "", "role": "look"})", R"({"name": " a", "role": "look"})",
        R"({"name": "a/b", "role": "look"})", R"({"name": "a\u0007", "role": "look"})",
        R"({"name": "HTTP.token", "role": "look"})", R"({"name": "a", "role": "look", "until": "noon"})",
        "[]", "",
        R"({"name": "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa", "role": "look"})"}) {
    INFO(body);
    check_problem(served.post("/v1/tokens", body), 422);
  }
  for (int i = 1; i < 100; ++i)
    served.post("/v1/tokens", R"({"name": "t)" + std::to_string(i) + R"(", "role": "look"})");
  const Response full = served.post("/v1/tokens", R"({"name": "one more", "role": "look"})");
  check_problem(full, 409);
  CHECK(word(full, "detail").find("100 tokens") != std::string::npos);
}

TEST_CASE("a token is kept nowhere: not in the file, not under an idempotency key, not in the journal") {
  Served served;
  Request r = Served::post_of("/v1/tokens", R"({"name": "tablet", "role": "bench"})");
  r.idempotency_key = "\"k\"";
  const std::string secret = secret_of(served.send(r));
  check_problem(served.send(r), 409); // it was shown once
  const auto newest = seen(*served.made.sqlite, [](const View& v) { return v.journal().newest(); });
  CHECK(newest == 0);
  std::string everything;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(served.made.home()))
    everything += all_of(entry.path());
  CHECK(everything.find(serve::digest_of(secret)) != std::string::npos);
  CHECK(everything.find(secret) == std::string::npos);
  CHECK(everything.find(secret.substr(4)) == std::string::npos);
}

TEST_CASE("a token said or sent by mistake is refused before anything keeps it") {
  Served served;
  const std::string secret = tablet(served);
  const auto before = served.revision();
  for (const Response& r : {served.post("/v1/say", R"({"text": "define wire )" + secret + "\"}"),
                            served.post("/v1/do/define-wire", R"({"name": ")" + secret + "\"}"),
                            served.get("/v1/ask/stock", "wire=" + secret), served.get("/v1/ask/" + secret),
                            served.post("/v1/tokens", R"({"name": ")" + secret + R"(", "role": "look"})")}) {
    check_problem(r, 422);
    CHECK(r.body.find("nwt_") == std::string::npos);
  }
  Request keyed = Served::post_of("/v1/do/define-wire", R"({"name": "medium"})");
  keyed.idempotency_key = secret;
  check_problem(served.send(keyed), 422);
  CHECK(served.revision() == before);
}

TEST_CASE("a body is looked through as it is, however large and whatever percent signs it has") {
  Served served;
  std::string percent = "%";
  while (percent.size() < 255 * 1024)
    percent += "25";
  const Response r = served.post("/v1/say", R"({"text": ")" + percent + "\"}");
  CHECK(r.status == 200);
  CHECK(word(r, "text").find("a sentence has at most") != std::string::npos); // by talk, which it reached
  // JSON knows no percent-encoding: this is a text like another.
  CHECK(served.post("/v1/do/define-wire", R"({"name": "%6ewt_)" + std::string(32, 'a') + "\"}").status ==
        200);
  check_problem(served.post("/v1/say", R"({"text": ")" + percent + " " + serve::new_token() + "\"}"), 422);
}

TEST_CASE("a token with a letter written as its number is refused as well") {
  Served served;
  const std::string secret = tablet(served), escaped = R"(\u006ewt\u005f)" + secret.substr(4);
  served.post("/v1/do/define-wire", R"({"name": "medium"})");
  const auto before = served.revision();
  for (const Response& r :
       {served.post("/v1/say", R"({"text": "define wire )" + escaped + "\"}"),
        served.post("/v1/do/define-wire", R"({"name": "w", "material": ")" + escaped + "\"}"),
        served.post("/v1/do/define-wire", R"({"name": "w", ")" + escaped + R"(": 1})"),
        served.post("/v1/do",
                    R"({"calls": [{"do": "define-wire", "with": {"name": ["a \\ )" + escaped + "\"]}}]}"),
        served.post("/v1/tokens", R"({"name": ")" + escaped + R"(", "role": "look"})")}) {
    check_problem(r, 422);
    CHECK(word(r, "detail").starts_with("A token stands in what was asked"));
  }
  CHECK(served.revision() == before);
  CHECK(served.post("/v1/do/define-wire", R"({"name": "\u006earrow"})").status == 200);
}

TEST_CASE("the owner's token is made once, in a file for the owner alone") {
  Served served;
  const auto file = served.made.home() / "http.token";
  const auto umask_before = ::umask(0);
  CHECK(served.people.keep_token_file(file));
  ::umask(umask_before);
  CHECK(mode_of(file) == 0600);
  const std::string secret = line_of(file);
  CHECK(serve::is_token(secret));
  CHECK(served.send(over_tcp("Bearer " + secret, "POST", "/v1/do/set", R"({"setting": "unit", "to": "in"})"))
            .status == 200);
  CHECK_FALSE(served.people.keep_token_file(file)); // the next start
  CHECK(line_of(file) == secret);
  CHECK_FALSE(std::filesystem::exists(file.string() + ".new"));
}

TEST_CASE("a lost or withdrawn owner's token is made anew, and the old one is dead") {
  Served served;
  const auto file = served.made.home() / "http.token";
  served.people.keep_token_file(file);
  const std::string first = line_of(file);
  SECTION("lost") {
    std::filesystem::remove(file);
  }
  SECTION("withdrawn") {
    CHECK(withdraw(served, "http.token").status == 200);
  }
  SECTION("cut off between the file and the store") {
    std::ofstream(file) << serve::new_token() << "\n";
    std::ofstream(file.string() + ".new") << "half";
  }
  CHECK(served.people.keep_token_file(file));
  const std::string second = line_of(file);
  CHECK(second != first);
  CHECK(mode_of(file) == 0600);
  CHECK(served.send(over_tcp("Bearer " + first)).status == 401);
  CHECK(served.send(over_tcp("Bearer " + second)).status == 200);
}

TEST_CASE("a token that opens less than the owner may, or lets somebody else in, is made anew") {
  Served served;
  const auto file = served.made.home() / "http.token";
  served.people.keep_token_file(file);
  const std::string first = line_of(file);
  SECTION("the owner's uid is somebody else now") { // 'uid 1000 is visitor', and who it was retires
    served.made.sqlite->write([](Tx& tx) {
      for (Actor a : tx.house().actors()) {
        const bool was_owner = std::find(a.uids.begin(), a.uids.end(), owner) != a.uids.end();
        if (was_owner) a.uids.clear(), a.retired = true;
        if (a.name == "visitor") a.uids.push_back(owner), a.role = static_cast<int>(Role::lead);
        tx.put(a);
      }
      tx.backroom().take_changes();
    });
    CHECK(served.send(over_tcp("Bearer " + first)).status == 401);
  }
  SECTION("the file holds another good token") {
    std::ofstream(file) << tablet(served) << "\n";
  }
  CHECK(served.people.keep_token_file(file));
  const std::string second = line_of(file);
  CHECK(second != first);
  CHECK(served.send(over_tcp("Bearer " + first)).status == 401);
  CHECK(served.send(over_tcp("Bearer " + second, "POST", "/v1/do/set", R"({"setting": "unit", "to": "in"})"))
            .status == 200);
  CHECK_FALSE(served.people.keep_token_file(file)); // the next start
  CHECK(line_of(file) == second);
  std::size_t named = 0;
  for (const auto& t : seen(*served.made.sqlite, [](const View& v) { return v.tokens().good(); }))
    named += t.name == "http.token" ? 1 : 0;
  CHECK(named == 1);
}

TEST_CASE("an owner who has retired gets no token, and is told so") {
  Served served;
  const auto file = served.made.home() / "http.token";
  served.people.keep_token_file(file);
  const std::string first = line_of(file);
  for (Actor a : served.actors()) {
    if (std::find(a.uids.begin(), a.uids.end(), owner) == a.uids.end()) continue;
    a.retired = true;
    served.made.sqlite->write([&](Tx& tx) {
      tx.put(a);
      tx.backroom().take_changes();
    });
  }
  try {
    served.people.keep_token_file(file);
    FAIL("taken");
  } catch (const Problem& problem) {
    CHECK(problem.fault == Fault::not_allowed);
    CHECK(problem.text.find("ara has retired, and is uid 1000.") != std::string::npos);
    CHECK(problem.text.find(file.string()) != std::string::npos);
    CHECK(problem.would_do.find("--http") != std::string::npos);
  }
  CHECK(line_of(file) == first);
}

TEST_CASE("a token's file that is not as it should be is refused and left alone") {
  Served served;
  const auto file = served.made.home() / "http.token";
  const auto refusal = [&] {
    try {
      served.people.keep_token_file(file);
    } catch (const Problem& problem) {
      CHECK(problem.fault == Fault::state);
      CHECK_FALSE(problem.would_do.empty());
      return problem.text;
    }
    return std::string("taken");
  };
  SECTION("readable by others") {
    served.people.keep_token_file(file);
    ::chmod(file.c_str(), 0640);
    CHECK(refusal() == "The token's file " + file.string() + " may be read by others (its mode is 0640).");
  }
  SECTION("holding something else") {
    std::ofstream(file) << "a key of another program\n";
    ::chmod(file.c_str(), 0600);
    CHECK(refusal() == "The token's file " + file.string() + " holds something that is no token.");
    CHECK(all_of(file) == "a key of another program\n");
  }
  SECTION("a folder") {
    std::filesystem::create_directory(file);
    CHECK(refusal() == "The token's file " + file.string() + " is no plain file.");
  }
  SECTION("a symbolic link") {
    std::filesystem::create_symlink(served.made.home() / "elsewhere", file);
    CHECK(refusal().find("cannot be used") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(served.made.home() / "elsewhere"));
  }
}
