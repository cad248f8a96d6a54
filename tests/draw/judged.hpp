// A drawing as an outside parser judges it.
#pragma once

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>

#include <unistd.h>

// What judge_svg.py has against it, as it prints it; "" for nothing.
inline std::string judged(const std::string& svg) {
  std::string name = (std::filesystem::temp_directory_path() / "nutward-svg-XXXXXX").string();
  const int file = ::mkstemp(name.data());
  if (file < 0) return "no temporary file";
  ::close(file);
  std::ofstream(name, std::ios::binary) << svg;
  std::FILE* out = ::popen((std::string("python3 " NUTWARD_JUDGE_SVG " ") + name + " 2>&1").c_str(), "r");
  std::string said;
  for (int c = std::fgetc(out); c != EOF; c = std::fgetc(out))
    said += static_cast<char>(c);
  const int status = ::pclose(out);
  ::unlink(name.c_str());
  return status == 0 ? "" : "judge_svg.py: " + said;
}
