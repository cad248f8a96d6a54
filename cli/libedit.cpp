// The one file that knows libedit. Its header is there at build time; the library is loaded only here, so
// that a single sentence does not pay for it.
#include "cli/editor.hpp"
#include "cli/interrupt.hpp"
#include "units/print.hpp"

#include <algorithm>
#include <clocale>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <dlfcn.h>
#include <fcntl.h>
#include <histedit.h>
#include <langinfo.h>
#include <sys/ioctl.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

// The functions used, by their declarations in histedit.h.
struct Library {
  decltype(&::el_init) init = nullptr;
  decltype(&::el_end) end = nullptr;
  decltype(&::el_set) set = nullptr;
  decltype(&::el_wset) wide_set = nullptr;
  decltype(&::el_get) get = nullptr;
  decltype(&::el_gets) gets = nullptr;
  decltype(&::el_line) line = nullptr;
  decltype(&::el_cursor) cursor = nullptr;
  decltype(&::el_insertstr) insert = nullptr;
  decltype(&::el_deletestr) erase = nullptr;
  decltype(&::el_source) source = nullptr;
  decltype(&::history_init) history_init = nullptr;
  decltype(&::history_end) history_end = nullptr;
  decltype(&::history) history = nullptr;

  bool load() {
    void* library = ::dlopen("libedit.so.2", RTLD_NOW | RTLD_LOCAL); // stays loaded to the end of the process
    if (library == nullptr) return false;
    const auto take = [library](auto& function, const char* name) {
      function = reinterpret_cast<std::remove_reference_t<decltype(function)>>(::dlsym(library, name));
      return function != nullptr;
    };
    return take(init, "el_init") && take(end, "el_end") && take(set, "el_set") && take(wide_set, "el_wset") &&
           take(get, "el_get") && take(gets, "el_gets") && take(line, "el_line") &&
           take(cursor, "el_cursor") && take(insert, "el_insertstr") && take(erase, "el_deletestr") &&
           take(source, "el_source") && take(history_init, "history_init") &&
           take(history_end, "history_end") && take(history, "history");
  }
};

// libedit turns bytes into characters by the locale; sentences and answers are UTF-8 whatever it says.
void speak_utf8() {
  std::setlocale(LC_CTYPE, "");
  if (std::strcmp(::nl_langinfo(CODESET), "UTF-8") != 0) std::setlocale(LC_CTYPE, "C.UTF-8");
}

std::size_t terminal_width() {
  winsize size{};
  return ::ioctl(STDERR_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0 ? size.ws_col : 80;
}

class LibeditEditor : public Editor {
public:
  LibeditEditor(const Library& library, Finish finish) : lib_(library), finish_(std::move(finish)) {
    speak_utf8();
    at_work_ = this;
    // A stream of its own to standard error: through the unbuffered one each letter would be a write.
    out_ = ::fdopen(::fcntl(STDERR_FILENO, F_DUPFD_CLOEXEC, 0), "w");
    if (out_ == nullptr) return;
    edit_ = lib_.init("nutward", stdin, out_, out_);
    history_ = lib_.history_init();
    if (edit_ == nullptr || history_ == nullptr) return;
    HistEvent event{};
    lib_.history(history_, &event, H_SETSIZE, 1000);
    lib_.set(edit_, EL_PROMPT, prompt);
    lib_.set(edit_, EL_HIST, lib_.history, history_);
    lib_.set(edit_, EL_EDITOR, "emacs");
    lib_.set(edit_, EL_SIGNAL, 1); // puts the terminal right on signals, follows its size
    lib_.source(edit_, nullptr);   // ~/.editrc, a person's own keys
    // By wide names, which libedit takes as they are; of others it makes copies that it never frees.
    lib_.wide_set(edit_, EL_ADDFN, L"nutward-finish", L"finish the word", on_tab);
    lib_.wide_set(edit_, EL_ADDFN, L"nutward-clear", L"clear the line", on_ctrl_c);
    lib_.wide_set(edit_, EL_ADDFN, L"nutward-stop", L"stop until fg", on_ctrl_z);
    lib_.set(edit_, EL_SETTY, "-d", "-isig", nullptr); // while a line is edited Ctrl-C and Ctrl-Z are keys
    lib_.set(edit_, EL_BIND, "^I", "nutward-finish", nullptr);
    lib_.set(edit_, EL_BIND, "^C", "nutward-clear", nullptr);
    lib_.set(edit_, EL_BIND, "^Z", "nutward-stop", nullptr);
    // What Ctrl-D becomes that was typed before the keys were taken over, as while an answer was under way.
    lib_.set(edit_, EL_BIND, "^@", "em-delete-or-list", nullptr);
  }
  ~LibeditEditor() override {
    if (history_ != nullptr) lib_.history_end(history_);
    if (edit_ != nullptr) lib_.end(edit_);
    if (out_ != nullptr) std::fclose(out_);
  }

  bool works() {
    int edits = 0;
    return edit_ != nullptr && history_ != nullptr && lib_.get(edit_, EL_EDITMODE, &edits) == 0 && edits != 0;
  }

  Typed read(std::string& line) override {
    cleared_ = false;
    forget_interrupt();
    lib_.set(edit_, EL_PREP_TERM, 1); // before the prompt: who answers it at once shall find the keys working
    int length = 0;
    const char* text = lib_.gets(edit_, &length);
    if (cleared_ || interrupted()) return Typed::cleared; // by the key, or by a signal from elsewhere
    if (text == nullptr || length <= 0) {
      std::fputs("\n", stderr);
      return Typed::end;
    }
    line.assign(text, static_cast<std::size_t>(length));
    return Typed::line;
  }

  void recall(const std::string& line) override {
    HistEvent event{};
    lib_.history(history_, &event, H_ENTER, line.c_str());
  }

private:
  static char* prompt(EditLine*) {
    static char text[] = "> ";
    return text;
  }

  static unsigned char on_ctrl_c(EditLine* edit, int);
  static unsigned char on_ctrl_z(EditLine*, int);
  static unsigned char on_tab(EditLine* edit, int);
  unsigned char tab();
  void list(const std::vector<std::string>& candidates) const;

  // libedit hands its functions nothing but itself. One terminal, so one editor a process.
  inline static LibeditEditor* at_work_ = nullptr;

  Library lib_;
  Finish finish_;
  std::FILE* out_ = nullptr;
  EditLine* edit_ = nullptr;
  ::History* history_ = nullptr;
  bool cleared_ = false;
};

unsigned char LibeditEditor::on_ctrl_c(EditLine* edit, int) {
  auto& self = *at_work_;
  const LineInfo* line = self.lib_.line(edit);
  self.lib_.cursor(edit, static_cast<int>(line->lastchar - line->cursor)); // stops at the end by itself
  self.lib_.set(edit, EL_REFRESH);
  std::fputs("^C\n", self.out_);
  std::fflush(self.out_);
  self.cleared_ = true;
  return CC_EOF; // ends the reading, whatever stands in the line
}

// libedit's own handler puts the terminal right, before and after.
unsigned char LibeditEditor::on_ctrl_z(EditLine*, int) {
  ::kill(0, SIGTSTP);
  return CC_REDISPLAY;
}

unsigned char LibeditEditor::on_tab(EditLine*, int) {
  try {
    return at_work_->tab();
  } catch (...) { // no exception may pass through C
    return CC_ERROR;
  }
}

unsigned char LibeditEditor::tab() {
  const LineInfo* line = lib_.line(edit_);
  const std::string before(line->buffer, line->cursor);
  const auto found = finish_(before);
  if (found.candidates.empty()) return CC_ERROR; // beeps
  const bool only = found.candidates.size() == 1;
  const auto typed = before.substr(before.size() - found.typed);
  if (!only && found.common.size() <= typed.size()) {
    list(found.candidates);
    return CC_REDISPLAY;
  }
  const auto letters = std::count_if(typed.begin(), typed.end(),
                                     [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; });
  if (letters > 0) lib_.erase(edit_, static_cast<int>(letters)); // it counts characters
  const auto text = found.common + (only ? " " : "");
  return lib_.insert(edit_, text.c_str()) == 0 ? CC_REFRESH : CC_ERROR;
}

void LibeditEditor::list(const std::vector<std::string>& candidates) const {
  std::fputs(("\n" + in_columns(candidates, terminal_width())).c_str(), out_);
}

} // namespace

std::unique_ptr<Editor> open_libedit(Finish finish) {
  Library library;
  if (!library.load()) return nullptr;
  auto editor = std::make_unique<LibeditEditor>(library, std::move(finish));
  return editor->works() ? std::move(editor) : nullptr;
}

} // namespace nutward::cli
