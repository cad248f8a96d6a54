#include "cli/where.hpp"

#include "cli/exits.hpp"
#include "cli/home.hpp"
#include "cli/render.hpp"

#include <algorithm>
#include <arpa/inet.h>
#include <cerrno>
#include <charconv>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <netinet/in.h>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

constexpr std::string_view token_prefix = "nwt_";
constexpr std::size_t token_digits = 64, good_part = 16;

bool is_hex(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
}

std::string variable(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? "" : value;
}

[[noreturn]] void refuse(const std::string& what, int exit = Exit::usage) {
  throw BadWhere(exit, "nutward: " + what + "\n");
}

bool is_loopback(std::string& host, bool six) {
  in_addr four{};
  in6_addr long_one{};
  if (six) {
    if (::inet_pton(AF_INET6, host.c_str(), &long_one) != 1 || !IN6_IS_ADDR_LOOPBACK(&long_one)) return false;
    host = "::1";
    return true;
  }
  return ::inet_pton(AF_INET, host.c_str(), &four) == 1 && (ntohl(four.s_addr) >> 24) == 127;
}

// The URL is not repeated where it may hold a secret.
void read_url(std::string_view url, Where& where) {
  constexpr std::string_view scheme = "http://";
  const char* shape = " Give it as http://127.0.0.1:8765.";
  if (url.find_first_of("@?#") != std::string_view::npos)
    refuse(std::string("The URL may hold no user, token or question mark.") + shape);
  if (!url.starts_with(scheme)) refuse("The URL " + printable(url) + " does not begin with http://." + shape);
  std::string_view rest = url.substr(scheme.size());
  if (rest.ends_with('/')) rest.remove_suffix(1);
  const bool six = rest.starts_with('[');
  const auto end = six ? rest.find(']') : rest.find(':');
  if (six && end == std::string_view::npos) refuse("The URL " + printable(url) + " has no ']'." + shape);
  where.host = six ? rest.substr(1, end - 1) : rest.substr(0, std::min(end, rest.size()));
  if (where.host == "localhost" && !six) where.host = "127.0.0.1";
  rest.remove_prefix(six ? end + 1 : std::min(end, rest.size()));
  if (!is_loopback(where.host, six))
    refuse("The URL " + printable(url) +
           " leads to another machine, or to a name: a token would cross the network as plain text." + shape);
  where.port = 80;
  if (rest.empty()) return;
  const auto digits = rest.substr(1);
  const auto [stop, error] = std::from_chars(digits.data(), digits.data() + digits.size(), where.port);
  if (rest[0] != ':' || error != std::errc{} || stop != digits.data() + digits.size() || where.port == 0)
    refuse("The URL " + printable(url) + " has no port from 1 to 65535." + shape);
}

std::string first_line(int descriptor) {
  std::string out;
  char c = 0;
  // One byte at a time: what follows the line on standard input is not ours.
  while (out.size() < 256 && ::read(descriptor, &c, 1) == 1 && c != '\n')
    out += c;
  while (!out.empty() && (out.back() == '\r' || out.back() == ' '))
    out.pop_back();
  return out;
}

std::string read_token(const std::string& file) {
  const bool standard_input = file == "-";
  const auto name = standard_input ? std::string("Standard input") : "The token's file " + printable(file);
  const int descriptor = standard_input ? STDIN_FILENO : ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) {
    const int error = errno;
    refuse(name + " cannot be read: " + std::strerror(error) +
               ".\nWho runs the daemon finds one in http.token of the shop's home, and can make others.",
           error == EACCES ? Exit::not_allowed : Exit::usage);
  }
  struct stat found {};
  const bool known_to_others =
      ::fstat(descriptor, &found) == 0 && S_ISREG(found.st_mode) && (found.st_mode & 07) != 0;
  std::string token = first_line(descriptor);
  if (!standard_input) ::close(descriptor);
  if (known_to_others)
    refuse(name + " may be read by everybody on this machine.\nHave the token withdrawn, and keep a new one "
                  "under mode 0600.");
  const bool shaped = token.size() == token_prefix.size() + token_digits && token.starts_with(token_prefix) &&
                      std::all_of(token.begin() + token_prefix.size(), token.end(), is_hex);
  if (!shaped) refuse(name + " holds no token in its first line (nwt_ and 64 digits).");
  return token;
}

} // namespace

std::string Where::address() const {
  return (host.find(':') == std::string::npos ? host : "[" + host + "]") + ":" + std::to_string(port);
}

std::string Where::url() const {
  return "http://" + address();
}

Where find_where(const Options& options) {
  Where out;
  out.home = find_home(options.home);
  const std::string url =
      !options.http.empty() || !options.home.empty() ? options.http : variable("NUTWARD_HTTP");
  if (url.empty()) {
    out.socket = socket_in(out.home);
    return out;
  }
  read_url(url, out);
  std::string file = options.token_file.empty() ? variable("NUTWARD_TOKEN_FILE") : options.token_file;
  if (file.empty()) file = out.home + (out.home.back() == '/' ? "" : "/") + "http.token";
  if (file == "-" && options.sentence.empty())
    refuse(
        "Standard input cannot hold both the token and the sentences: put the sentence on the command line.");
  out.token = read_token(file);
  return out;
}

bool holds_token(const std::string& text) {
  for (auto at = text.find(token_prefix); at != std::string::npos; at = text.find(token_prefix, at + 1)) {
    const auto after = std::string_view(text).substr(at + token_prefix.size(), good_part);
    if (after.size() == good_part && std::all_of(after.begin(), after.end(), is_hex)) return true;
  }
  return false;
}

} // namespace nutward::cli
