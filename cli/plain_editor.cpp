#include "cli/editor.hpp"
#include "cli/interrupt.hpp"

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <poll.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

class PlainEditor : public Editor {
public:
  ~PlainEditor() override { std::free(room_); }

  Typed read(std::string& line) override {
    forget_interrupt();
    std::fputs("> ", stderr);
    // At Ctrl-C the terminal drops what was typed.
    const auto length = wait_for_line() ? ::getline(&room_, &size_, stdin) : -1;
    if (length < 0 && interrupted()) {
      std::clearerr(stdin);
      std::fputs("\n", stderr);
      return Typed::cleared;
    }
    if (length < 0) {
      std::fputs("\n", stderr);
      return Typed::end;
    }
    line.assign(room_, static_cast<std::size_t>(length));
    return Typed::line;
  }

  void recall(const std::string&) override {}

private:
  // false: Ctrl-C. It is let through only while waiting, since one that came between the prompt and a read
  // would not end that read.
  static bool wait_for_line() {
    sigset_t ctrl_c, before;
    ::sigemptyset(&ctrl_c);
    ::sigaddset(&ctrl_c, SIGINT);
    ::sigprocmask(SIG_BLOCK, &ctrl_c, &before);
    pollfd in{STDIN_FILENO, POLLIN, 0};
    while (!interrupted() && ::ppoll(&in, 1, nullptr, &before) < 0 && errno == EINTR) {
    }
    ::sigprocmask(SIG_SETMASK, &before, nullptr);
    return !interrupted();
  }
  char* room_ = nullptr;
  std::size_t size_ = 0;
};

} // namespace

std::unique_ptr<Editor> open_plain_editor() {
  return std::make_unique<PlainEditor>();
}

} // namespace nutward::cli
