#include "cli/history.hpp"

#include "cli/where.hpp"

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

constexpr std::size_t kept_at_most = 1000;
constexpr off_t bytes_at_most = 1024 * 1024; // of the file's end that is looked at

std::string variable(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? "" : value;
}

void make_folders_for(const std::string& file) {
  for (auto at = file.find('/', 1); at != std::string::npos; at = file.find('/', at + 1))
    ::mkdir(file.substr(0, at).c_str(), 0700); // what is there already stays as it is
}

// Opens without waiting and without following a link: neither a pipe nor somebody else's file is written to.
int open_plain(const std::string& file) {
  const int descriptor =
      ::open(file.c_str(), O_RDWR | O_APPEND | O_CREAT | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK, 0600);
  if (descriptor < 0) return -1;
  struct stat found {};
  int error = 0;
  if (::fstat(descriptor, &found) != 0)
    error = errno;
  else if (!S_ISREG(found.st_mode))
    error = EINVAL;
  else if ((found.st_mode & 0077) != 0 && ::fchmod(descriptor, 0600) != 0)
    error = errno;
  if (error == 0) return descriptor;
  ::close(descriptor);
  errno = error;
  return -1;
}

} // namespace

std::string history_file() {
  if (const auto state = variable("XDG_STATE_HOME"); !state.empty() && state[0] == '/')
    return state + "/nutward/history";
  if (const auto person = variable("HOME"); !person.empty() && person[0] == '/')
    return person + "/.local/state/nutward/history";
  return "";
}

bool may_be_kept(const std::string& sentence) {
  return !sentence.empty() && sentence[0] != ' ' && sentence[0] != '\t' &&
         sentence.find('\n') == std::string::npos && !holds_token(sentence);
}

History::History(const std::string& file) {
  if (file.empty()) {
    trouble_ = "neither XDG_STATE_HOME nor HOME says where";
    return;
  }
  make_folders_for(file);
  descriptor_ = open_plain(file);
  if (descriptor_ < 0)
    trouble_ = file + ": " + std::strerror(errno);
  else
    read_all();
}

History::~History() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

void History::read_all() {
  const auto size = ::lseek(descriptor_, 0, SEEK_END);
  const auto from = size > bytes_at_most ? size - bytes_at_most : 0;
  std::string text(static_cast<std::size_t>(size > from ? size - from : 0), '\0');
  const auto got = ::pread(descriptor_, text.data(), text.size(), from);
  text.resize(got > 0 ? static_cast<std::size_t>(got) : 0);
  std::size_t at = from == 0 ? 0 : text.find('\n') + 1; // the first line may be cut off
  for (std::size_t end = 0; (end = text.find('\n', at)) != std::string::npos; at = end + 1)
    if (auto line = text.substr(at, end - at); may_be_kept(line)) sentences_.push_back(std::move(line));
  if (sentences_.size() > kept_at_most)
    sentences_.erase(sentences_.begin(), sentences_.end() - static_cast<std::ptrdiff_t>(kept_at_most));
}

bool History::keep(const std::string& sentence) {
  if (!may_be_kept(sentence) || (!sentences_.empty() && sentences_.back() == sentence)) return false;
  sentences_.push_back(sentence);
  if (descriptor_ < 0) return true;
  const auto line = sentence + '\n';
  if (::write(descriptor_, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
    trouble_ = std::strerror(errno); // recalled in this conversation all the same
  return true;
}

} // namespace nutward::cli
