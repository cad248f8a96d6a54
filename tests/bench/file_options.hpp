// The command line of the harnesses that others can run: FILE [--seconds S] [--json].
#pragma once

#include <cstdlib>
#include <string>

namespace nutward::bench {

struct FileOptions {
  std::string file;
  double seconds = 10; // 0.01 to 3600
  bool json = false;
};

// False for wrong usage.
inline bool read_options(int argc, char** argv, FileOptions& out) {
  for (int i = 1; i < argc; ++i) {
    const std::string word = argv[i];
    if (word == "--json") {
      out.json = true;
    } else if (word == "--seconds" && i + 1 < argc) {
      char* end = nullptr;
      out.seconds = std::strtod(argv[++i], &end);
      if (*end != '\0' || !(out.seconds >= 0.01 && out.seconds <= 3600)) return false;
    } else if (out.file.empty() && !word.starts_with("--")) {
      out.file = word;
    } else {
      return false;
    }
  }
  return !out.file.empty();
}

} // namespace nutward::bench
