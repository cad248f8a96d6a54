#include "cli/ask.hpp"
#include "cli/converse.hpp"
#include "cli/exits.hpp"

#include <cstdio>
#include <exception>
#include <unistd.h>

int main(int argc, char** argv) {
  using namespace nutward::cli;
  try {
    const auto line = read_command_line(argc, argv);
    if (line.exit) {
      std::fputs(line.text.c_str(), *line.exit == Exit::answered ? stdout : stderr);
      return *line.exit;
    }
    Asker asker(line.options, find_where(line.options));
    if (!line.options.sentence.empty()) return asker.ask(line.options.sentence);
    return ::isatty(STDIN_FILENO) == 1 ? converse(asker, line.options.quiet) : asker.ask_lines();
  } catch (const BadWhere& error) {
    std::fputs(error.what(), stderr);
    return error.exit;
  } catch (const std::exception& error) {
    std::fprintf(stderr, "nutward: %s\n", error.what());
    return Exit::try_again;
  }
}
