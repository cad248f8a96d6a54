// Whoever has a file of sentences can score it: bench-sayings FILE… [--typos SEED] [--json] [--misses]
// [--every N] [--least PERCENT]. Without --misses only counts are printed, so that a file can be scored
// without being read. With --every only each Nth line is said. It fails where a command was done that was not
// meant, or with --least where fewer were exact; --most N: it
// fails only where more than N commands were not meant.
//
// Times: the understanding alone, of one sentence after the other once all were understood before; each right
// behind what it did to a shop, when nothing of it is left in the processor's caches; and the same sentences
// put to a general full-text search (sayings/text_search.hpp), as a baseline of the same run.
#include "bench/figures.hpp"
#include "sayings/sayings.hpp"
#include "sayings/text_search.hpp"
#include "talk/normalise.hpp"

#include <array>

#include <fmt/format.h>

namespace nutward::sayings {

namespace {

struct Wish {
  std::vector<std::string> files;
  std::optional<unsigned> typos;
  bool json = false, misses = false;
  int every = 1;
  double least = 0;
  int most = 0;
};

std::optional<Wish> wish_of(int argc, char** argv) {
  Wish out;
  for (int i = 1; i < argc; ++i) {
    const std::string word = argv[i];
    if (word == "--json")
      out.json = true;
    else if (word == "--misses")
      out.misses = true;
    else if (word == "--typos" && i + 1 < argc)
      out.typos = static_cast<unsigned>(std::strtoul(argv[++i], nullptr, 10));
    else if (word == "--every" && i + 1 < argc)
      out.every = std::max(1, static_cast<int>(std::strtol(argv[++i], nullptr, 10)));
    else if (word == "--most" && i + 1 < argc)
      out.most = std::max(0, static_cast<int>(std::strtol(argv[++i], nullptr, 10)));
    else if (word == "--least" && i + 1 < argc)
      out.least = std::strtod(argv[++i], nullptr);
    else if (word.starts_with("--"))
      return std::nullopt;
    else
      out.files.push_back(word);
  }
  return out.files.empty() ? std::nullopt : std::optional{out};
}

using Counts = std::array<int, 5>;

struct Score {
  Counts all{};
  std::map<std::string, Counts> by_row;
  int said = 0;

  void add(const Saying& saying, Verdict verdict) {
    ++said;
    ++all[static_cast<std::size_t>(verdict)];
    const TextCalls& calls = saying.either.front();
    ++by_row[calls.empty() ? "(nothing)" : calls.front().first][static_cast<std::size_t>(verdict)];
  }
};

std::string counts_json(const Counts& c) {
  return fmt::format(R"({{"exact":{},"arguments":{},"unclear":{},"wrong_question":{},"wrong_command":{}}})",
                     c[0], c[1], c[2], c[3], c[4]);
}

struct Taken {
  bench::Times steady, between, search; // microseconds of each sentence
  double longest_us = 0, refused_us = 0;
};

Taken time_of(const std::vector<std::string>& sentences, bench::Times between, Speaker& speaker) {
  Taken out;
  out.between = std::move(between);
  TextSearch search;
  const auto second_of = [&](const auto& us_of) {
    bench::Times times;
    for (int round = 0; round < 2; ++round)
      for (const std::string& sentence : sentences)
        if (const double us = us_of(sentence); round == 1) times.add(us);
    return times;
  };
  out.steady = second_of([&](const std::string& s) { return speaker.understanding_us(s); });
  out.search = second_of([&](const std::string& s) { return search.finding_us(s); });
  const auto filled = [](std::string_view with, std::size_t bytes) {
    std::string text;
    while (text.size() < bytes)
      text += with;
    return text.substr(0, bytes);
  };
  // Whatever it is made of: words that may be left out could once be left out in a million ways.
  for (std::string_view with : {"pressed 9-14 of job 5 at 2000 lb and 8 to 13, ", "use it and ", "a ", "- ",
                                "add 52.4, 51 and 50.2 mm of medium, "})
    out.longest_us = std::max(out.longest_us, speaker.understanding_us(filled(with, talk::most_bytes)));
  out.refused_us = speaker.understanding_us(filled("pressed 9-14 of job 5 at 2000 lb and 8 to 13, ", 10'000));
  return out;
}

void print(const Score& score, const Wish& wish, const Taken& taken) {
  const double percent = 100.0 * score.all[0] / std::max(1, score.said);
  if (wish.json) {
    std::string rows;
    for (const auto& [row, counts] : score.by_row)
      rows += fmt::format(R"({}"{}":{})", rows.empty() ? "" : ",", row, counts_json(counts));
    fmt::print(
        R"({{"sentences":{},"counts":{},"exact_percent":{:.2f},"median_us":{:.1f},"worst_us":{:.1f},"between_median_us":{:.1f},"full_text_median_us":{:.1f},"longest_us":{:.1f},"ten_kb_us":{:.1f},"rows":{{{}}}}})"
        "\n",
        score.said, counts_json(score.all), percent, taken.steady.median(), taken.steady.at(1),
        taken.between.median(), taken.search.median(), taken.longest_us, taken.refused_us, rows);
    return;
  }
  fmt::print("{:<20} {:>6} {:>6} {:>8} {:>9} {:>8}\n", "row", "exact", "args", "unclear", "wrong q.",
             "WRONG C.");
  for (const auto& [row, c] : score.by_row) {
    if (wish.misses && c[1] + c[2] + c[3] + c[4] == 0) continue;
    fmt::print("{:<20} {:>6} {:>6} {:>8} {:>9} {:>8}\n", row, c[0], c[1], c[2], c[3], c[4]);
  }
  const Counts& c = score.all;
  fmt::print("{:<20} {:>6} {:>6} {:>8} {:>9} {:>8}\n", "all", c[0], c[1], c[2], c[3], c[4]);
  fmt::print("{} sentences, {:.2f} % exact, {} wrong commands\n", score.said, percent, c[4]);
  fmt::print("Understanding alone, target a median of 20 us:\n");
  bench::print_times("one sentence after the other", taken.steady);
  bench::print_times("each between other work", taken.between);
  bench::print_times("SQLite's FTS5, the nearest phrase to the same sentences", taken.search);
  bench::print_ratio("understanding over a full-text search", taken.steady, taken.search, 1);
  fmt::print(
      "worst {:.1f} us; the worst of {} bytes, the longest, {:.1f} us; one of 10 kB, refused, {:.1f} us\n",
      taken.steady.at(1), talk::most_bytes, taken.longest_us, taken.refused_us);
}

int run(const Wish& wish) {
  Speaker speaker;
  Score score;
  bench::Times between;
  std::vector<std::string> sentences;
  std::mt19937 random(wish.typos.value_or(0));
  for (const std::string& file : wish.files) {
    for (Saying saying : read_sayings(file)) {
      if (saying.line % wish.every != 0) continue;
      if (wish.typos) saying.say = mistyped(saying.say, speaker.names_in(saying), random);
      const Judged judged = speaker.say(saying);
      score.add(saying, judged.verdict);
      between.add(speaker.understanding_us(saying.say));
      sentences.push_back(saying.say);
      if (wish.misses && judged.verdict != Verdict::exact)
        fmt::print("{:<14} {}: {}\n    {}\n", word_for(judged.verdict), saying.line, saying.say,
                   judged.came_to);
    }
  }
  if (score.said == 0) return 1;
  print(score, wish, time_of(sentences, std::move(between), speaker));
  const bool enough = 100.0 * score.all[0] >= wish.least * score.said;
  return enough && score.all[4] <= wish.most ? 0 : 1;
}

} // namespace

} // namespace nutward::sayings

int main(int argc, char** argv) {
  try {
    const auto wish = nutward::sayings::wish_of(argc, argv);
    if (!wish) {
      fmt::print(stderr,
                 "bench-sayings FILE… [--typos SEED] [--json] [--misses] [--every N] [--least PERCENT]\n");
      return 2;
    }
    return nutward::sayings::run(*wish);
  } catch (const std::exception& e) {
    fmt::print(stderr, "bench-sayings: {}\n", e.what());
    return 2;
  }
}
