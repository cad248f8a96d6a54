// Other people's programs as judges of the sentence layer: lines are given to a program, and as many come
// back.
#pragma once

#include "hours/load_zone.hpp"
#include "support/catch.hpp"
#include "talk/recognise.hpp"

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>
#include <string>
#include <vector>

#include <stdlib.h>

namespace nutward::published {

// A judge's answers, a line for each of `asked`; what it complains about goes to the test's own stderr.
inline std::vector<std::string> answers(const std::string& program, const std::vector<std::string>& asked) {
  std::string path = (std::filesystem::temp_directory_path() / "nutward-judge-XXXXXX").string();
  const int file = ::mkstemp(path.data());
  REQUIRE(file >= 0);
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> put{::fdopen(file, "w"), std::fclose};
  for (const std::string& line : asked)
    std::fprintf(put.get(), "%s\n", line.c_str());
  std::fflush(put.get());
  std::vector<std::string> out;
  {
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> got{
        ::popen((program + " < '" + path + "'").c_str(), "r"), ::pclose};
    REQUIRE(got);
    char line[512];
    while (std::fgets(line, sizeof line, got.get()) != nullptr)
      out.emplace_back(line, std::string_view(line).find('\n'));
  }
  std::filesystem::remove(path);
  INFO(program);
  REQUIRE(out.size() == asked.size());
  return out;
}

// Whether a program is there at all; the word why not is said in the test's output.
inline bool installed(const std::string& program, const std::string& unchecked) {
  if (std::system(("command -v " + program + " >/dev/null 2>&1").c_str()) == 0) return true;
  WARN("The program " << program << " is not installed: " << unchecked << " was not compared with it.");
  return false;
}

// judges.mjs, by node.
inline std::string by_node(const std::string& what) {
  return "node '" NUTWARD_SOURCE "/tests/published/judges.mjs' " + what;
}

// All that a sentence says as one parameter's value, in a shop in Berlin that has no things.
class OneValue {
public:
  explicit OneValue(std::string_view zone = "Europe/Berlin") { names_.zone = hours::load_zone(zone); }

  const hours::Zone& zone() const { return *names_.zone; }

  // monostate where it cannot be read to its end; the trouble is told.
  shop::Value read(const shop::Param& param, std::string_view said, units::Instant now = {}) {
    const talk::Sentence sentence = talk::normalise(said);
    const talk::Reader reader{sentence, lexicon_, names_, now};
    for (const talk::Said& s : talk::recognise(param, 0, false, reader)) {
      if (s.end == sentence.tokens.size()) return s.value;
    }
    UNSCOPED_INFO("read: '" << said << "' " << reader.trouble.text);
    return {};
  }

private:
  talk::Lexicon lexicon_;
  talk::Names names_;
};

} // namespace nutward::published
