#include "serve/gate.hpp"

#include "serve/framing.hpp"
#include "serve/token.hpp"

#include <algorithm>

namespace nutward::serve {
namespace {

std::string lower(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c | 0x20);
  }
  return out;
}

// A parameter of this name holds a token whatever it looks like (RFC 6750 §2.3 calls it access_token).
bool names_token(std::string_view target) {
  std::string_view query = target.substr(std::min(target.find('?'), target.size()));
  while (!query.empty()) {
    query.remove_prefix(1);
    const auto end = std::min(query.find('&'), query.size());
    const std::string name = lower(query.substr(0, std::min(query.find('='), end)));
    if (name == "access_token" || name == "token" || name == "authorization") return true;
    query.remove_prefix(end);
  }
  return false;
}

} // namespace

void check_knock(const Knock& knock, const std::vector<std::string>& hosts) {
  const std::string host = lower(knock.host);
  if (!hosts.empty() && std::find(hosts.begin(), hosts.end(), host) == hosts.end())
    throw Fault(421, "This is the door " + hosts[0] + ", and the Host field names another one.");
  if (knock.origin && lower(*knock.origin) != "http://" + host)
    throw Fault(403, "The Origin field says that a page from elsewhere asks; only the shop's own may.");
  if (knock.fetch_site) {
    const std::string site = lower(*knock.fetch_site);
    if (site != "same-origin" && site != "none")
      throw Fault(403,
                  "The Sec-Fetch-Site field says that a page from elsewhere asks; only the shop's own may.");
  }
  if (names_token(knock.target) || address_holds_token(knock.target))
    throw Fault(400, "A token does not belong into a URL, where logs and histories keep it. Send it as "
                     "Authorization: Bearer, and have this one withdrawn if it was real.");
}

} // namespace nutward::serve
