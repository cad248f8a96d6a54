// What Tab can finish in a sentence. Pure.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace nutward::cli {

// The two lists of questions and commands, and the shop's names.
struct Vocabulary {
  std::vector<std::string> rows;     // their names: "fit", "let-go"
  std::vector<std::string> openings; // the first words of their examples
  std::vector<std::string> others;   // the other words of their examples
  std::vector<std::string> wires;
  std::vector<std::string> names; // instruments and owners, which may hold spaces
  std::vector<std::string> jobs;  // numbers of open jobs
};

struct Completion {
  std::size_t typed = 0;               // bytes at the end of the text that the candidates stand for
  std::vector<std::string> candidates; // sorted, each once
  std::string common;                  // what all of them begin with, at least what was typed
};

// What could stand in place of the word that ends `before` (the line up to the cursor). The first word: names
// of rows and openings. After "help": names of rows. After "job" and a space: numbers of jobs. After "wire"
// or "of" and a space: wires. Elsewhere everything but job numbers, once a letter is typed. Capitals do not
// matter.
Completion complete(std::string_view before, const Vocabulary& vocabulary);

// Takes an example apart into the vocabulary: words of letters and hyphens, two letters at least.
void add_example(const std::string& example, Vocabulary& vocabulary);

// Columns of text as wide as the terminal, for candidates. Each line ends with a line feed.
std::string in_columns(const std::vector<std::string>& words, std::size_t width);

} // namespace nutward::cli
