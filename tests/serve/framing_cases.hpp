// Requests that two parsers could read differently, as data: the same for both doors. The rules are those of
// RFC 9112 (sections 2.2, 3, 5, 6, 7.1) and RFC 9110 (7.2 Host, 8.6 Content-Length, 10.1.1 Expect); the cases
// are our own.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace framing_cases {

struct Case {
  const char* status; // of the one answer
  std::string bytes;
};

inline const std::string get1 = "GET / HTTP/1.1\r\n";
inline const std::string post1 = "POST / HTTP/1.1\r\n";
inline const std::string chunked = "Transfer-Encoding: chunked\r\n";

// `h` is the line of a Host field that the door takes.
inline void request_lines(std::vector<Case>& out, const std::string& h) {
  using namespace std::string_literals;
  const std::string end = h + "\r\n";
  for (const std::string& line : {"GET /"s,
                                  "GET  / HTTP/1.1"s,
                                  "GET / HTTP/1.1 "s,
                                  "GET\t/ HTTP/1.1"s,
                                  "GET\x0b/ HTTP/1.1"s,
                                  "GET /\0 HTTP/1.1"s,
                                  "GET / x HTTP/1.1"s,
                                  "G(T / HTTP/1.1"s,
                                  " GET / HTTP/1.1"s,
                                  "GET /#part HTTP/1.1"s,
                                  "GET /\xc3\xa9 HTTP/1.1"s,
                                  "GET /\x7f HTTP/1.1"s,
                                  "GET / http/1.1"s,
                                  "GET / HTTP/1.10"s,
                                  "GET / HTTP/1"s,
                                  "GET / HTTP/1."s,
                                  "GET / HTTP/1,1"s,
                                  "GET / HTTP/ 1.1"s,
                                  "GET / HTTP/+1.1"s,
                                  "GET / HTTP/1.x"s,
                                  "GET / HTTPS/1.1"s,
                                  "GET / HTTP/1.1\r"s,
                                  "GET HTTP/1.1"s,
                                  "/ HTTP/1.1"s,
                                  "GET"s,
                                  "HTTP/1.1 200 OK"s,
                                  "SSH-2.0-bench"s,
                                  std::string(33, 'M') + " / HTTP/1.1"})
    out.push_back({"400", line + "\r\n" + end});
  for (const std::string& target :
       {"http://b/"s, "https://b/"s, "//"s.substr(1) + "#"s, "b"s, "?a"s, "\\"s, "*"s, "b:80"s})
    out.push_back({"400", "GET " + target + " HTTP/1.1\r\n" + end});
  out.push_back({"400", "CONNECT b:80 HTTP/1.1\r\n" + end});
  out.push_back({"400", "OPTIONS * HTTP/1.1\r\n" + end});
  out.push_back({"400", "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n"}); // how HTTP/2 begins (RFC 9113, 3.4)
  for (const char* version : {"0.9", "1.2", "2.0", "3.0"})
    out.push_back({"505", "GET / HTTP/" + std::string(version) + "\r\n" + end});
  out.push_back({"400", "\r\n\r\n" + get1 + end});
  out.push_back({"400", "\x16\x03\x01\x02"s}); // the start of a TLS handshake
  out.push_back({"400", "\x05\x01\0"s});       // of SOCKS 5
  out.push_back({"400", "{\"text\": \"stock\"}\r\n\r\n"});
}

inline void fields(std::vector<Case>& out, const std::string& h) {
  using namespace std::string_literals;
  out.push_back({"400", "GET / HTTP/1.1\nHost: b\n\n"});
  out.push_back({"400", get1 + h.substr(0, h.size() - 2) + "\n\r\n"});
  out.push_back({"400", get1 + " X: a\r\n" + h + "\r\n"});
  for (const std::string& field : {"X: a\rY: b"s,  "X: a\nContent-Length: 9"s,
                                   "X: a\r"s,      "X: a\0b"s,
                                   "X: a\x7f"s,    "X: a\x1b[31m"s,
                                   "X\0: a"s,      "X: a\r\n b"s,
                                   "X: a\r\n\tb"s, "X: a\r\n \r\nY: b"s,
                                   "X : a"s,       "X\t: a"s,
                                   ": a"s,         "X"s,
                                   "X(: a"s,       "\"X\": a"s,
                                   "X[]: a"s,      "X Y: a"s,
                                   "\xc3\xa9: a"s, "Content Length: 3"s})
    out.push_back({"400", get1 + h + field + "\r\n\r\n"});
  for (const char* once : {"Content-Type: a/b", "Idempotency-Key: \"a\"", "Expect: 100-continue",
                           "Authorization: Bearer a", "Origin: null", "Sec-Fetch-Site: none"})
    out.push_back({"400", post1 + h + once + "\r\n" + once + "\r\nContent-Length: 0\r\n\r\n"});
  // Host
  out.push_back({"400", get1 + "\r\n"});
  out.push_back({"400", get1 + h + h + "\r\n"});
  out.push_back({"400", get1 + h + "hOST: c\r\n\r\n"});
  out.push_back({"400", "GET / HTTP/1.0\r\n" + h + h + "\r\n"});
  for (const char* host : {"a b", "a/b", "u@b", "a\\b", "a?b", "a#b", "<a>", "\"a\"", "a\tb", "\xc3\xa9"})
    out.push_back({"400", get1 + "Host: " + host + "\r\n\r\n"});
  out.push_back({"400", get1 + "Host : b\r\n\r\n"});
  out.push_back({"400", get1 + h.substr(0, h.size() - 2) + "\r\n c\r\n\r\n"});
}

inline void lengths(std::vector<Case>& out, const std::string& h) {
  out.push_back({"411", post1 + h + "\r\n"});
  out.push_back({"411", "PUT / HTTP/1.1\r\n" + h + "\r\n"});
  out.push_back({"411", "PATCH / HTTP/1.0\r\n" + h + "\r\n"});
  for (const char* twice : {"Content-Length: 3", "content-length: 4", "CONTENT-LENGTH: 0"})
    out.push_back({"400", post1 + h + "Content-Length: 3\r\n" + twice + "\r\n\r\nabcd"});
  out.push_back({"400", "GET / HTTP/1.1\r\n" + h + "Content-Length: 0\r\nContent-Length: 0\r\n\r\n"});
  out.push_back({"400", post1 + h + "Content-Length : 3\r\n\r\nabc"});
  for (const char* length : {"3, 3", "3,", ",3", "+3", "-3", "-0", "0x3", "0b11", "3 3", "3\t3", "3.0", "3e0",
                             "3;", "\"3\"", "'3'", "\xef\xbc\x93", "three", ""})
    out.push_back({"400", post1 + h + "Content-Length: " + length + "\r\n\r\nabc"});
  // 256 KiB + 1, 2^63, 2^64 + 3, 10^40
  for (const char* length :
       {"262145", "9223372036854775808", "18446744073709551619", "10000000000000000000000000000000000000000"})
    out.push_back({"413", post1 + h + "Content-Length: " + length + "\r\n\r\nabc"});
}

inline void codings(std::vector<Case>& out, const std::string& h) {
  using namespace std::string_literals;
  const std::string last = "\r\n0\r\n\r\n";
  out.push_back({"400", post1 + h + chunked + "Content-Length: 3\r\n" + last});
  out.push_back({"400", post1 + h + "Content-Length: 3\r\n" + chunked + last});
  out.push_back({"400", post1 + h + chunked + chunked + last});
  out.push_back({"400", post1 + h + chunked + "transfer-encoding: identity\r\n" + last});
  out.push_back({"400", "POST / HTTP/1.0\r\n" + h + chunked + last});
  out.push_back({"400", "GET / HTTP/1.0\r\n" + h + "Connection: keep-alive\r\n" + chunked + last});
  for (const std::string& line :
       {"Transfer-Encoding : chunked"s, "Transfer-Encoding\t: chunked"s, "Transfer-Encoding:\0chunked"s,
        "Transfer-Encoding: chunked\x0b"s, "Transfer-Encoding: chunked\r\n , gzip"s})
    out.push_back({"400", post1 + h + line + "\r\n" + last});
  for (const char* coding :
       {"gzip, chunked", "chunked, chunked", "chunked, gzip", "identity, chunked", "xchunked", "identity",
        "gzip", "chunked;q=1", "\"chunked\"", ", chunked", "chunked,", "chu nked", "chunke", ""})
    out.push_back({"501", post1 + h + "Transfer-Encoding: " + coding + "\r\n" + last});
  out.push_back({"501", get1 + h + "TRANSFER-ENCODING: deflate\r\n\r\n"});
  for (const char* expectation : {"200-ok", "100-continue, x", "100", ""})
    out.push_back({"417", post1 + h + "Expect: " + expectation + "\r\nContent-Length: 0\r\n\r\n"});
}

inline void chunks(std::vector<Case>& out, const std::string& h) {
  using namespace std::string_literals;
  const std::string start = post1 + h + chunked + "\r\n";
  for (const std::string& body :
       {"x\r\nabc\r\n0\r\n\r\n"s, "-3\r\nabc\r\n0\r\n\r\n"s, "+3\r\nabc\r\n0\r\n\r\n"s,
        "0x3\r\nabc\r\n0\r\n\r\n"s, "3\r\nabcd\r\n0\r\n\r\n"s, "3\r\nab\r\n0\r\n\r\n"s, "3\r\nabc0\r\n\r\n"s,
        "\r\n3\r\nabc\r\n0\r\n\r\n"s, "3\nabc\n0\n\n"s, "3\r\nabc\n0\r\n\r\n"s, ";a\r\nabc\r\n0\r\n\r\n"s,
        "3g\r\nabc\r\n0\r\n\r\n"s, "11111111111111111\r\nabc\r\n0\r\n\r\n"s,
        "3;" + std::string(1100, 'e') + "\r\nabc\r\n0\r\n\r\n"})
    out.push_back({"400", start + body});
  out.push_back({"413", start + "40001\r\nabc\r\n0\r\n\r\n"}); // 256 KiB + 1
}

inline std::vector<Case> badly_framed(const std::string& host) {
  const std::string h = "Host: " + host + "\r\n";
  std::vector<Case> out;
  request_lines(out, h);
  fields(out, h);
  lengths(out, h);
  codings(out, h);
  chunks(out, h);
  return out;
}

// And what an echo makes of those that are in order.
inline std::vector<std::pair<std::string, std::string>> well_framed(const std::string& host) {
  const std::string h = "Host: " + host + "\r\n";
  return {
      {get1 + h + "\r\n", "GET /? []"},
      {"\r\n" + get1 + h + "\r\n", "GET /? []"},
      {"GET /a?b HTTP/1.1\r\nHost:" + host + "\r\n\r\n", "GET /a?b []"},
      {get1 + "hOsT: \t" + host + " \r\n\r\n", "GET /? []"},
      {"BREW /pot HTTP/1.1\r\n" + h + "\r\n", "BREW /pot? []"},
      {post1 + h + "Content-Length: 3\r\n\r\nabc", "POST /? [abc]"},
      {post1 + h + "Content-Length: \t003 \r\n\r\nabc", "POST /? [abc]"},
      {post1 + h + "Content-Length: 0\r\n\r\n", "POST /? []"},
      {get1 + h + "Content-Length: 2\r\n\r\nxy", "GET /? [xy]"},
      {post1 + h + "transfer-encoding:CHUNKED\r\n\r\n3\r\nabc\r\nA\r\n0123456789\r\n0\r\n\r\n",
       "POST /? [abc0123456789]"},
      {post1 + h + chunked + "\r\n0\r\n\r\n", "POST /? []"},
      {post1 + h + chunked + "\r\n3;a=\"b;c\"\r\nabc\r\n0\r\nX: y\r\n\r\n", "POST /? [abc]"},
      {get1 + h + "X:\xc3\xa9\tz\r\n\r\n", "GET /? []"},
  };
}

} // namespace framing_cases
