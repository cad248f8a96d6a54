#include "cli/converse.hpp"

#include "cli/editor.hpp"
#include "cli/exits.hpp"
#include "cli/history.hpp"
#include "cli/interrupt.hpp"
#include "cli/render.hpp"
#include "cli/vocabulary.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <optional>
#include <poll.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

constexpr int longest_pause_ms = 1000;

void tell(const std::string& text) {
  std::fwrite(text.data(), 1, text.size(), stderr);
}

bool can_edit() {
  const char* terminal = std::getenv("TERM");
  return terminal != nullptr && *terminal != '\0' && std::strcmp(terminal, "dumb") != 0 &&
         ::isatty(STDERR_FILENO) == 1;
}

class Conversation {
public:
  Conversation(Asker& asker, bool quiet) : asker_(asker), history_(history_file()) {
    if (can_edit()) editor_ = open_libedit([this](std::string_view before) { return finish(before); });
    if (!editor_) editor_ = open_plain_editor();
    for (const auto& sentence : history_.sentences())
      editor_->recall(sentence);
    if (quiet) return;
    tell("Say or ask it in plain words. 'help' lists what there is; Ctrl-D ends.\n");
    if (!history_.trouble().empty())
      tell("What is said here is not kept for the next time (" + printable(history_.trouble()) + ").\n");
  }

  int run() {
    for (std::string line;;) {
      const auto typed = editor_->read(line);
      if (typed == Typed::end) return Exit::answered;
      if (typed == Typed::cleared) continue;
      while (!line.empty() && (line.back() == '\n' || line.back() == '\r'))
        line.pop_back();
      if (is_blank(line)) continue;
      if (history_.keep(line)) editor_->recall(line);
      if (ask(line) == Exit::not_allowed && asker_.shut_out()) return Exit::not_allowed;
      vocabulary_.reset(); // it may have named something new
    }
  }

private:
  int ask(const std::string& sentence);
  bool wait_for_daemon(const NoAnswer& error, bool perhaps_done, int& pause_ms);
  Completion finish(std::string_view before);

  const Interruptible ctrl_c_; // throughout: at no moment does Ctrl-C end the conversation
  Asker& asker_;
  History history_;
  std::unique_ptr<Editor> editor_;
  std::optional<Vocabulary> vocabulary_; // as of the last Tab since the last sentence

  // The last sentence, if it was given up after it may have been done: said again at once it keeps its key.
  struct GivenUp {
    std::string sentence, key;
  };
  std::optional<GivenUp> given_up_;
};

int Conversation::ask(const std::string& sentence) {
  const bool again = given_up_ && given_up_->sentence == sentence;
  const auto key = again ? given_up_->key : new_key();
  given_up_.reset();
  forget_interrupt();
  bool perhaps_done = again;
  int pause_ms = 25; // grows over all that is waited for this sentence
  for (;;) {
    try {
      return asker_.say(sentence, key);
    } catch (const NoAnswer& error) {
      const bool gone = error.why == NoAnswer::nobody || error.why == NoAnswer::busy;
      perhaps_done = perhaps_done || (!gone && error.why != NoAnswer::forbidden);
      if (gone || error.why == NoAnswer::lost) {
        if (wait_for_daemon(error, perhaps_done, pause_ms)) continue;
      } else if (const int code = asker_.explain(error, key); code == Exit::not_allowed) {
        return code;
      }
      if (perhaps_done) given_up_ = GivenUp{sentence, key};
      return Exit::try_again;
    }
  }
}

// Until somebody listens again: true. Ctrl-C: false.
bool Conversation::wait_for_daemon(const NoAnswer& error, bool perhaps_done, int& pause_ms) {
  const bool before_answer = error.why == NoAnswer::lost;
  tell(std::string("nutward: The daemon ") +
       (error.why == NoAnswer::busy ? "is too busy"
        : before_answer             ? "went away before it answered"
                                    : "is not there") +
       " (" + error.what() + "). What you said is kept, and asked once it is back; Ctrl-C gives that up.\n" +
       (error.why == NoAnswer::busy ? "" : starting_line(asker_.where())));
  while (!interrupted()) {
    pause_ms = std::min(2 * pause_ms, longest_pause_ms);
    ::poll(nullptr, 0, pause_ms); // Ctrl-C ends it early
    if (interrupted() || !listens(asker_.where())) continue;
    tell("nutward: The daemon is back.\n");
    return true;
  }
  tell(perhaps_done
           ? "\nnutward: Given up. It may have been done; said again as the next sentence, word for word, it "
             "is done at most once.\n"
           : "\nnutward: Given up; it was not sent.\n");
  return false;
}

Completion Conversation::finish(std::string_view before) {
  if (!vocabulary_) vocabulary_ = fetch_vocabulary(asker_.where());
  return complete(before, *vocabulary_);
}

} // namespace

int converse(Asker& asker, bool quiet) {
  asker.begin_a_row();
  return Conversation(asker, quiet).run();
}

} // namespace nutward::cli
