// Runs the dialogues of a folder against real shops on SQLite: `dialogues [--record OUT] FOLDER|FILE…`. Each
// file has a shop of its own. OUT is given every answer, as it would be sent, one a line.
//
//   # a remark
//   clock 2026-11-25T09:00:00Z   from here on it is this time
//   who look|bench|lead          from here on this person speaks
//   new                          a new conversation begins
//   shop SENTENCE                said to prepare the shop; it must be done
//   > SENTENCE                   what is tested; what follows is about its answer:
//   kind WORD                    its kind. Where that is not "done", the shop must not have changed
//   not-done                     the shop has not changed
//   text PART                    its text holds this; likewise `reason`
//   caution PART                 one of its cautions holds this
//   choice PART                  the label of one of its choices holds this
//   choices N                    it has that many
//   group N                      what was done is that many calls in one list
//
// Of a folder every question and every command must come of a sentence that is tested; what none comes to is
// a failure.
#include "hours/load_zone.hpp"
#include "shop/codec.hpp"
#include "shop/lists.hpp"
#include "shop/run.hpp"
#include "store/sqlite.hpp"
#include "talk/talk.hpp"
#include "units/read.hpp"

#include <algorithm>
#include <array>
#include <atomic>
#include <filesystem>
#include <fstream>
#include <future>
#include <iostream>
#include <set>

#include <stdlib.h>

namespace {

using namespace nutward;

struct SetClock : shop::Clock {
  std::atomic<std::int64_t> s = units::read_instant("2026-11-25T09:00:00Z").s;
  units::Instant now() const override { return {s.load()}; }
};

struct Folder {
  std::string path = (std::filesystem::temp_directory_path() / "nutward-dialogue-XXXXXX").string();
  Folder() {
    if (::mkdtemp(path.data()) == nullptr) throw std::runtime_error("There is no folder for the shop.");
  }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path, ignored);
  }
};

class Dialogue {
public:
  Dialogue(std::filesystem::path file, std::ostream& record) : file_(std::move(file)), record_(record) {
    store_->write([&](shop::Tx& tx) {
      for (int role = 0; role < 3; ++role)
        actors_.push_back(tx.put(shop::Actor{0, names[static_cast<std::size_t>(role)], role, "", {}}));
    });
    who("lead");
  }

  int run() {
    std::ifstream in(file_);
    for (std::string text; std::getline(in, text);) {
      ++line_;
      while (text.ends_with(' ') || text.ends_with('\r'))
        text.pop_back();
      if (text.empty() || text.starts_with('#')) continue;
      const std::size_t space = std::min(text.find(' '), text.size());
      one(text.substr(0, space), text.substr(std::min(space + 1, text.size())));
    }
    if (said_ == 0) fail("The file holds no sentence.");
    return failures_;
  }
  int said() const { return said_; }
  const std::set<std::string>& rows() const { return rows_; } // that sentences under test came to

private:
  static constexpr std::array names{"look", "bench", "lead"};

  void fail(const std::string& what) {
    ++failures_;
    std::cout << file_.filename().string() << ":" << line_ << ": " << what << "\n";
    if (!sentence_.empty())
      std::cout << "    said     " << sentence_ << "\n    answered " << answer_.kind << ": " << answer_.text
                << "\n";
    if (!answer_.reason.empty()) std::cout << "    reason   " << answer_.reason << "\n";
    for (const shop::Choice& c : answer_.choices)
      std::cout << "    choice   " << c.label << "\n";
  }

  void who(const std::string& name) {
    const auto at = static_cast<std::size_t>(std::find(names.begin(), names.end(), name) - names.begin());
    if (at == names.size()) return fail("Nobody is called " + name + ".");
    who_ = {actors_[at], static_cast<shop::Role>(at), name, "test"};
  }

  // Everything that changes the shop leaves a line in the journal.
  std::int64_t newest_line() {
    std::int64_t out = 0;
    store_->read([&](const shop::View& view) { out = view.journal().newest(); });
    return out;
  }

  void say(const std::string& sentence) {
    sentence_ = sentence;
    before_ = newest_line();
    std::promise<talk::Reply> promise;
    auto reply = promise.get_future();
    talk_.say(sentence, conversation_, who_, "", [&](talk::Reply r) { promise.set_value(std::move(r)); });
    answer_ = reply.get().answer;
    record_ << shop::to_json(answer_, conversation_) << "\n";
    after_ = newest_line();
    if (answer_.kind != "done" && before_ != after_)
      fail("The shop changed although nothing was said to be done.");
  }

  void one(const std::string& word, const std::string& rest) {
    if (word == "clock")
      clock_.s = units::read_instant(rest).s;
    else if (word == "who")
      who(rest);
    else if (word == "new")
      conversation_ += "+";
    else if (word == "shop")
      prepare(rest);
    else if (word == ">")
      ++said_, say(rest), note_rows();
    else if (word == "kind")
      expect(answer_.kind == rest, "The kind is not " + rest + ".");
    else if (word == "not-done")
      expect(before_ == after_, "The shop has changed.");
    else if (word == "text")
      expect(answer_.text.find(rest) != std::string::npos, "The text does not hold: " + rest);
    else if (word == "reason")
      expect(answer_.reason.find(rest) != std::string::npos, "The reason does not hold: " + rest);
    else if (word == "caution")
      expect(has_caution(rest), "No caution holds: " + rest);
    else if (word == "choices")
      expect(std::to_string(answer_.choices.size()) == rest, "It has not " + rest + " choices.");
    else if (word == "choice")
      expect(has_choice(rest), "No choice holds: " + rest);
    else if (word == "group")
      expect(group_size() == rest, "The last list has " + group_size() + " calls.");
    else
      fail("This line says nothing that a dialogue may say.");
  }

  void note_rows() {
    if (shop::question(answer_.kind) != nullptr) rows_.insert(answer_.kind);
    if (before_ == after_) return;
    store_->read([&](const shop::View& view) {
      for (const shop::Line& line : view.journal().group(view.journal().line(after_)->group)) {
        for (const shop::Call& call : shop::calls_from_json(line.call))
          rows_.insert(call.row);
      }
    });
  }

  void expect(bool holds, const std::string& what) {
    if (!holds) fail(what);
  }
  bool has_caution(const std::string& part) const {
    return std::any_of(answer_.cautions.begin(), answer_.cautions.end(),
                       [&](shop::Hazard h) { return shop::caution(h).find(part) != std::string_view::npos; });
  }
  bool has_choice(const std::string& part) const {
    return std::any_of(answer_.choices.begin(), answer_.choices.end(),
                       [&](const shop::Choice& c) { return c.label.find(part) != std::string::npos; });
  }

  std::string group_size() {
    std::string out = "no";
    store_->read([&](const shop::View& view) {
      if (auto line = view.journal().line(view.journal().newest()))
        out = std::to_string(view.journal().group(line->group).size());
    });
    return out;
  }

  void prepare(const std::string& sentence) {
    const auto speaker = who_;
    who("lead");
    say(sentence);
    if (answer_.kind != "done") fail("The shop could not be prepared.");
    who_ = speaker;
  }

  std::filesystem::path file_;
  std::ostream& record_;
  Folder folder_;
  SetClock clock_;
  std::unique_ptr<store::Sqlite> store_ = store::open_sqlite({folder_.path + "/home"});
  shop::Rooms rooms_{hours::load_zone};
  shop::Executor executor_{*store_, clock_, rooms_};
  talk::Talk talk_{executor_, *store_, clock_, rooms_};
  std::vector<std::int64_t> actors_;
  shop::Caller who_;
  std::string conversation_ = "c", sentence_;
  shop::Answer answer_;
  std::int64_t before_ = 0, after_ = 0;
  std::set<std::string> rows_;
  int line_ = 0, said_ = 0, failures_ = 0;
};

std::vector<std::filesystem::path> files_of(const std::filesystem::path& where) {
  if (!std::filesystem::is_directory(where)) return {where};
  std::vector<std::filesystem::path> out;
  for (const auto& entry : std::filesystem::directory_iterator(where)) {
    if (entry.path().extension() == ".txt") out.push_back(entry.path());
  }
  std::sort(out.begin(), out.end());
  return out;
}

// Complains of each row that no sentence of the folder came to.
int not_covered(const std::set<std::string>& rows) {
  int out = 0;
  const auto look = [&](const auto& list) {
    for (const auto* row : list) {
      if (rows.contains(std::string(row->name))) continue;
      std::cout << "No dialogue comes to '" << row->name << "'.\n";
      ++out;
    }
  };
  look(shop::questions());
  look(shop::commands());
  return out;
}

} // namespace

int main(int count, char** args) {
  int failures = 0, said = 0;
  const bool recorded = count > 2 && std::string_view(args[1]) == "--record";
  std::ofstream record;
  if (recorded) record.open(args[2]);
  for (int i = recorded ? 3 : 1; i < count; ++i) {
    std::set<std::string> rows;
    for (const auto& file : files_of(args[i])) {
      try {
        Dialogue dialogue{file, record};
        failures += dialogue.run();
        said += dialogue.said();
        rows.insert(dialogue.rows().begin(), dialogue.rows().end());
      } catch (const std::exception& e) {
        std::cout << file.filename().string() << ": " << e.what() << "\n";
        ++failures;
      }
    }
    if (std::filesystem::is_directory(args[i])) failures += not_covered(rows);
  }
  if (recorded && !record.flush()) {
    std::cout << "The answers could not be recorded in " << args[2] << "\n";
    ++failures;
  }
  std::cout << said << " sentences, " << failures << " failures\n";
  return failures == 0 && said > 0 ? 0 : 1;
}
