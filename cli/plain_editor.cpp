#include "cli/editor.hpp"
#include "cli/interrupt.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>

namespace nutward::cli {
namespace {

class PlainEditor : public Editor {
public:
  ~PlainEditor() override { std::free(room_); }

  Typed read(std::string& line) override {
    forget_interrupt();
    std::fputs("> ", stderr);
    // At Ctrl-C the terminal drops what was typed, and the read ends with EINTR.
    const auto length = ::getline(&room_, &size_, stdin);
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
  char* room_ = nullptr;
  std::size_t size_ = 0;
};

} // namespace

std::unique_ptr<Editor> open_plain_editor() {
  return std::make_unique<PlainEditor>();
}

} // namespace nutward::cli
