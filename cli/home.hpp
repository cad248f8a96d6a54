// Where the shop's home is.
#pragma once

#include <string>

namespace nutward::cli {

// `given` if it is not empty, else $NUTWARD_HOME, else $XDG_STATE_HOME/nutward (an absolute one: XDG Base
// Directory Specification), else ~/.local/state/nutward; instead of these two /var/lib/nutward, if only that
// has a socket.
std::string find_home(const std::string& given);

// The socket in a home.
std::string socket_in(const std::string& home);

} // namespace nutward::cli
