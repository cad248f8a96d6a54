#include "cli/ask.hpp"
#include "cli/exits.hpp"

#include <cstdio>
#include <exception>

int main(int argc, char** argv) {
  using namespace nutward::cli;
  try {
    const auto line = read_command_line(argc, argv);
    if (line.exit) {
      std::fputs(line.text.c_str(), *line.exit == Exit::answered ? stdout : stderr);
      return *line.exit;
    }
    Asker asker(line.options);
    return line.options.sentence.empty() ? asker.ask_lines() : asker.ask(line.options.sentence);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "nutward: %s\n", error.what());
    return Exit::try_again;
  }
}
