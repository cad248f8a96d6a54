#include "cli/home.hpp"

#include <cstdlib>
#include <sys/stat.h>

namespace nutward::cli {
namespace {

std::string variable(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? "" : value;
}

// A directory that may not be searched counts too: asking there gives the better message.
bool has_socket(const std::string& home) {
  struct stat found {};
  return ::stat(socket_in(home).c_str(), &found) == 0 ? S_ISSOCK(found.st_mode) : errno == EACCES;
}

} // namespace

std::string socket_in(const std::string& home) {
  return home + (home.back() == '/' ? "" : "/") + "nutward.sock";
}

std::string find_home(const std::string& given) {
  if (!given.empty()) return given;
  if (auto home = variable("NUTWARD_HOME"); !home.empty()) return home;
  const std::string shared = "/var/lib/nutward";
  std::string own;
  if (const auto state = variable("XDG_STATE_HOME"); !state.empty() && state[0] == '/')
    own = state + "/nutward";
  else if (const auto person = variable("HOME"); !person.empty())
    own = person + "/.local/state/nutward";
  if (own.empty() || (!has_socket(own) && has_socket(shared))) return shared;
  return own;
}

} // namespace nutward::cli
