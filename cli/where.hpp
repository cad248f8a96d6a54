// Where the daemon is asked: the Unix socket of a home, or a loopback TCP address with a token.
#pragma once

#include "cli/options.hpp"

#include <cstdint>
#include <stdexcept>
#include <string>

namespace nutward::cli {

struct Where {
  std::string home;   // also where a token is looked for
  std::string socket; // the Unix socket; empty: over TCP
  std::string host;   // a loopback number, "127.0.0.1" or "::1"
  std::uint16_t port = 0;
  std::string token; // for no log and no message

  bool tcp() const { return socket.empty(); }
  std::string address() const; // "127.0.0.1:8765", "[::1]:8765": as the Host field has it
  std::string url() const;     // "http://127.0.0.1:8765"
};

// Why the daemon cannot be asked there: a whole text for standard error, fit to be printed, and the exit
// code.
struct BadWhere : std::runtime_error {
  BadWhere(int exit_, const std::string& text) : std::runtime_error(text), exit(exit_) {}
  int exit;
};

// Over TCP where a URL is given (--http, or $NUTWARD_HTTP unless --home is given), else over the socket of
// the home (home.hpp). The token's file: --token-file ("-": one line of standard input), else
// $NUTWARD_TOKEN_FILE, else http.token in the home. Throws BadWhere.
Where find_where(const Options& options);

// "nwt_" and a good part of a token's digits, anywhere in the text.
bool holds_token(const std::string& text);

} // namespace nutward::cli
