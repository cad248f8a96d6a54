// Who may knock at all: looked at on the head of every request, before its body is read and before anybody is
// asked who it is. Against pages from elsewhere in a browser of this machine, which reaches loopback. Pure.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::serve {

struct Knock {
  std::string_view target, host;
  std::optional<std::string_view> origin, fetch_site; // as sent; nullopt: the field was not
};

// `hosts`: what the Host field may say, in lower case; empty for the Unix socket, which no name leads to.
//
// Throws Fault: 421 for another Host; 403 for an Origin other than http:// and that same Host, and for a
// Sec-Fetch-Site other than same-origin and none; 400 for a token in the target, which logs and histories
// keep.
void check_knock(const Knock& knock, const std::vector<std::string>& hosts);

} // namespace nutward::serve
