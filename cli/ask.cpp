#include "cli/ask.hpp"

#include "cli/answer.hpp"
#include "cli/exits.hpp"
#include "cli/picture.hpp"
#include "cli/render.hpp"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <sstream>
#include <sys/random.h>
#include <unistd.h>

namespace nutward::cli {
namespace {

void tell(const std::string& text) {
  std::fwrite(text.data(), 1, text.size(), stderr);
}

bool wants_color(const Options& options, int descriptor) {
  const char* forbidden = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  return !options.no_color && (forbidden == nullptr || *forbidden == '\0') && terminal != nullptr &&
         std::strcmp(terminal, "dumb") != 0 && ::isatty(descriptor) == 1;
}

std::string shell_word(const std::string& text) {
  if (text.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_./-") ==
      std::string::npos)
    return text;
  std::string out = "'";
  for (const char c : text)
    out += c == '\'' ? "'\\''" : std::string(1, c);
  return out + "'";
}

int exit_of(int status, const Answer& answer) {
  if (status == 401 || status == 403 || answer.not_allowed) return Exit::not_allowed;
  if (status == 408 || status == 429 || status >= 500) return Exit::try_again;
  if (status >= 400 || answer.kind == "refused" || answer.kind == "unclear" || !answer.fits) return Exit::no;
  return Exit::answered;
}

// The first of several codes that is not "answered" is the one a script should see.
void keep_first(int& code, int next) {
  if (code == Exit::answered) code = next;
}

} // namespace

std::string new_key() {
  unsigned char bytes[16];
  if (::getrandom(bytes, sizeof bytes, 0) != sizeof bytes) return {};
  std::string out;
  for (const auto byte : bytes) {
    out += "0123456789abcdef"[byte >> 4];
    out += "0123456789abcdef"[byte & 0xf];
  }
  return out;
}

// Its lines as they are, but for what drives a terminal.
std::string csv_on_a_terminal(const std::string& csv) {
  std::string out, line;
  for (std::istringstream lines(csv); std::getline(lines, line);) {
    if (!line.empty() && line.back() == '\r') line.pop_back();
    out += printable(line) + "\n";
  }
  return out;
}

bool is_blank(const std::string& line) {
  return line.find_first_not_of(" \t\r\n") == std::string::npos;
}

std::string starting_line(const Where& where) {
  return "This starts it: nutwardd --home " + printable(shell_word(where.home)) +
         (where.tcp() ? " --http " + where.address() : "") + "\n";
}

Asker::Asker(Options options, Where where) : options_(std::move(options)), where_(std::move(where)) {}

std::string Asker::pick_hint() const {
  if (in_a_row_) return "Answer with its number.";
  std::string out = "Answer with its number, as in: nutward ";
  if (!options_.home.empty()) out += "--home " + shell_word(options_.home) + " ";
  if (!options_.http.empty()) out += "--http " + shell_word(options_.http) + " ";
  if (!options_.token_file.empty()) out += "--token-file " + shell_word(options_.token_file) + " ";
  if (options_.own_conversation) out += "--conversation " + shell_word(options_.conversation) + " ";
  return printable(out + "1");
}

int Asker::show(int status, const std::string& body) {
  const auto answer = read_answer(body);
  if (!answer) {
    tell("nutward: What answered is not the shop's daemon, or not one this client understands.\n");
    return Exit::try_again;
  }
  const bool problem = status >= 400;
  shut_out_ = status == 401 || status == 403;
  const bool listed = options_.csv && answer->csv && !problem;
  // Who wants CSV reads no sentence as such.
  const bool to_stdout = options_.json || listed || (!problem && !options_.csv);
  std::FILE* stream = to_stdout ? stdout : stderr;
  const Manner manner{wants_color(options_, to_stdout ? 1 : 2), options_.quiet, pick_hint()};
  std::string text;
  if (listed)
    text = ::isatty(1) == 1 ? csv_on_a_terminal(*answer->csv) : *answer->csv;
  else if (options_.json) // on a terminal even JSON is escaped, since it may hold what drives one
    text = (::isatty(1) == 1 ? printable(body) : body) + (!body.empty() && body.back() == '\n' ? "" : "\n");
  else
    text = problem ? render_problem(*answer, manner) : render(*answer, manner);
  if (std::fwrite(text.data(), 1, text.size(), stream) != text.size() || std::fflush(stream) != 0) {
    tell("nutward: The answer could not be written: " + std::string(std::strerror(errno)) + ".\n");
    return Exit::try_again;
  }
  if (options_.csv && !listed && !problem) {
    tell("nutward: That answer has no list as CSV; 'order list' has one.\n");
    return Exit::no;
  }
  return exit_of(status, *answer);
}

int Asker::draw(const Posted& answered) {
  shut_out_ = false;
  if (answered.type != "image/svg+xml") {
    tell("nutward: What answered draws nothing; is it an older daemon?\n");
    return Exit::try_again;
  }
  if (const auto why = write_picture(options_.picture, answered.body)) {
    tell("nutward: The picture could not be written: " + printable(*why) + ".\n");
    return Exit::try_again;
  }
  if (!options_.quiet && options_.picture != "-") tell("Drawn in " + printable(options_.picture) + ".\n");
  return Exit::answered;
}

int Asker::say(const std::string& sentence, const std::string& key) {
  const auto body = say_body(sentence, options_.conversation);
  if (!body) {
    tell("nutward: The sentence or the conversation's name is not UTF-8, so it was not sent.\n");
    return Exit::usage;
  }
  shut_out_ = true; // until an answer comes
  const auto answered = post(where_, "/v1/say", *body, key, !options_.picture.empty());
  connected_ = true;
  if (!options_.picture.empty() && answered.status == 200) return draw(answered);
  return show(answered.status, answered.body);
}

int Asker::ask(const std::string& sentence) {
  const auto key = options_.key.empty() ? new_key() : options_.key;
  try {
    return say(sentence, key);
  } catch (const NoAnswer& error) {
    return explain(error, key);
  }
}

int Asker::explain(const NoAnswer& error, const std::string& key) const {
  const auto there = where_.tcp() ? "at " + where_.url() : "in " + printable(shell_word(where_.home));
  const auto why = std::string(" (") + error.what() + ").\n";
  const auto start = starting_line(where_);
  const auto perhaps = "It may have been done. Said again with --key " + printable(shell_word(key)) +
                       " it is done at most once.\n";
  switch (error.why) {
  case NoAnswer::nobody:
    tell((connected_ ? "nutward: The daemon has gone away" : "nutward: No daemon is reachable " + there) +
         why + start);
    return Exit::unreachable;
  case NoAnswer::forbidden:
    tell("nutward: You may not speak to the daemon " + there + why +
         "Ask who runs it to let you in: its socket is for its own user, or for the shop's group.\n");
    return Exit::not_allowed;
  case NoAnswer::lost:
    tell("nutward: The daemon went away before it answered" + why + perhaps + start);
    return Exit::unreachable;
  case NoAnswer::busy:
    tell("nutward: The daemon is too busy" + why + "Try again in a moment.\n");
    return Exit::try_again;
  case NoAnswer::late:
    tell("nutward: The daemon did not answer in time" + why + perhaps);
    return Exit::try_again;
  case NoAnswer::given_up:
    tell("nutward: Given up. " + perhaps);
    return Exit::try_again;
  case NoAnswer::garbled:
    break;
  }
  tell("nutward: What answered does not speak HTTP as the daemon does" + why + perhaps);
  return Exit::try_again;
}

int Asker::ask_lines() {
  begin_a_row();
  int code = Exit::answered;
  bool any = false;
  char* room = nullptr;
  std::size_t size = 0;
  for (;;) {
    const auto length = ::getline(&room, &size, stdin);
    if (length < 0) break;
    std::string line(room, static_cast<std::size_t>(length));
    while (!line.empty() && (line.back() == '\n' || line.back() == '\r'))
      line.pop_back();
    if (is_blank(line)) continue;
    any = true;
    const int one = ask(line);
    keep_first(code, one);
    if (one == Exit::unreachable || (one == Exit::not_allowed && shut_out_)) break;
  }
  std::free(room);
  if (any) return code;
  tell("nutward: There is no sentence, neither on the command line nor on standard input.\n");
  return Exit::usage;
}

} // namespace nutward::cli
