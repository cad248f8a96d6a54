// Learns which words speak for which row: learn-sayings FILE… prints the table that is compiled in as
// daemon/talk/evidence_table.cpp; with --cross N it is learnt N times with one part left out, and says how
// often the row of a sentence that was left out leads.
#include "sayings/learner.hpp"
#include "talk/render.hpp"

#include <fmt/format.h>

#include <array>
#include <cstdlib>

namespace nutward::sayings {

namespace {

struct Taught {
  std::string file, say;
  int line = 0;
  Lesson lesson;
};

void cross(const std::vector<Taught>& taught, int parts, Speaker& speaker) {
  std::array<int, 4> ranks{};
  std::array<std::array<int, 2>, 5> sure{}; // by share: right, wrong
  for (int part = 0; part < parts; ++part) {
    auto lessons = lessons_of(speaker.book(), 8);
    for (std::size_t i = 0; i < taught.size(); ++i)
      if (static_cast<int>(i % static_cast<std::size_t>(parts)) != part) lessons.push_back(taught[i].lesson);
    const std::string table = learn(lessons);
    talk::Lexicon lexicon;
    const talk::Evidence evidence(table, speaker.book().rows(), lexicon);
    for (std::size_t i = 0; i < taught.size(); ++i) {
      if (static_cast<int>(i % static_cast<std::size_t>(parts)) != part) continue;
      const talk::Sentence s = talk::normalise(taught[i].say);
      const talk::Reader in{s, speaker.book().lexicon(), speaker.names(), {}};
      const auto ranked = evidence.rank(in, 0, in.size());
      std::size_t k = 0;
      const auto name = [](const talk::Likely& l) {
        return l.row == nullptr ? std::string("-") : std::string(l.row->name);
      };
      while (k < ranked.size() && name(ranked[k]) != taught[i].lesson.row)
        ++k;
      ++ranks[k == 0 ? 0 : k < 3 ? 1 : k < 8 ? 2 : 3];
      const double p = ranked.front().share;
      ++sure[p > 0.95 ? 0 : p > 0.8 ? 1 : p > 0.6 ? 2 : p > 0.4 ? 3 : 4][k == 0 ? 0 : 1];
      if (k > 0 && std::getenv("SHOW"))
        fmt::print("{}  [{}] {} {:.2f}\n", taught[i].say, taught[i].lesson.row, name(ranked.front()), p);
    }
  }
  fmt::print("first {}, to third {}, to eighth {}, beyond {}\n", ranks[0], ranks[1], ranks[2], ranks[3]);
  for (std::size_t k = 0; k < sure.size(); ++k)
    fmt::print("share class {}: {} right, {} wrong\n", k, sure[k][0], sure[k][1]);
}

// Why a sentence comes to what it comes to: how likely its row is, and what its wide frame leaves over.
void explain(const std::vector<Taught>& taught, Speaker& speaker) {
  const talk::Phrasebook& book = speaker.book();
  for (const Taught& t : taught) {
    const talk::Sentence s = talk::normalise(t.say);
    const talk::Reader in{s, book.lexicon(), speaker.names(), speaker.now()};
    std::string ranks;
    double share = 0;
    for (const talk::Likely& l : book.evidence().rank(in, 0, in.size())) {
      const std::string name = l.row == nullptr ? "-" : std::string(l.row->name);
      if (name == t.lesson.row) share = l.share;
      if (l.share > 0.03) ranks += fmt::format(" {} {:.2f}", name, l.share);
    }
    std::string over;
    if (const shop::Row* row = book.row(t.lesson.row)) {
      if (auto laid = talk::lay(*book.frames_of(*row).back(), 0, in.size(), talk::Spelling::exact, in)) {
        for (std::size_t k : laid->strange)
          over += " " + std::string(s.said(k, k + 1));
        if (laid->tied) over += " TIED";
        over += fmt::format(" cost {}:", laid->cost);
        for (const auto& [param, said] : laid->match.args)
          over += fmt::format(" {}={}", row->takes[static_cast<std::size_t>(param)].name,
                              talk::render(row->takes[static_cast<std::size_t>(param)], said.value));
      } else {
        over = " NO LAYOUT";
      }
    }
    fmt::print("{}:{} {}\n   [{}] {:.2f} of{} | over:{}\n", t.file.substr(t.file.rfind('/') + 1), t.line,
               t.say, t.lesson.row, share, ranks, over);
  }
}

// In pieces: a compiler need not take a literal of any length.
void print_source(const std::string& table) {
  fmt::print("// Made by build/learn-sayings from tests/sayings; see DEVELOPERS.md. Not to be edited.\n"
             "// clang-format off\n#include \"talk/evidence.hpp\"\n\nnamespace nutward::talk {{\n\n"
             "std::string_view learnt_table() {{\n  static constexpr const char* pieces[] = {{\n");
  for (std::size_t at = 0; at < table.size();) {
    const std::size_t end = std::min(table.find('\n', std::min(at + 8000, table.size())), table.size());
    const std::size_t to = std::min(end + 1, table.size());
    fmt::print("R\"~({})~\",\n", table.substr(at, to - at));
    at = to;
  }
  fmt::print("  }};\n  static const std::string whole = [] {{\n    std::string out;\n"
             "    for (const char* piece : pieces)\n      out += piece;\n    return out;\n  }}();\n"
             "  return whole;\n}}\n\n}} // namespace nutward::talk\n");
}

int run(int argc, char** argv) {
  Speaker speaker;
  std::vector<Taught> taught;
  int parts = 0;
  for (int i = 1; i < argc; ++i) {
    if (std::string(argv[i]) == "--cross" && i + 1 < argc) {
      parts = std::atoi(argv[++i]);
      continue;
    }
    if (std::string(argv[i]) == "--explain") {
      parts = -1;
      continue;
    }
    for (const Saying& saying : read_sayings(argv[i]))
      if (auto lesson = lesson_of(saying, speaker.book(), speaker.names()))
        taught.push_back({argv[i], saying.say, saying.line, std::move(*lesson)});
  }
  if (parts < 0) {
    explain(taught, speaker);
    return 0;
  }
  if (parts > 0) {
    cross(taught, parts, speaker);
    return 0;
  }
  auto lessons = lessons_of(speaker.book(), 8);
  for (const Taught& t : taught)
    lessons.push_back(t.lesson);
  print_source(learn(lessons));
  return 0;
}

} // namespace

} // namespace nutward::sayings

int main(int argc, char** argv) {
  try {
    return nutward::sayings::run(argc, argv);
  } catch (const std::exception& e) {
    fmt::print(stderr, "{}\n", e.what());
    return 2;
  }
}
