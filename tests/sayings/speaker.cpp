// A sentence said to a copy of the demo shop, and what came of it held against what was expected.
#include "hours/load_zone.hpp"
#include "sayings/sayings.hpp"
#include "shop/apply.hpp"
#include "shop/bind.hpp"
#include "shop/codec.hpp"
#include "shop/demo.hpp"
#include "shop/lists.hpp"
#include "store/sqlite.hpp"
#include "talk/render.hpp"
#include "talk/talk.hpp"
#include "talk/understand.hpp"
#include "units/read.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <future>

#include <stdlib.h>

namespace nutward::sayings {

namespace fs = std::filesystem;
using Field = std::pair<std::string, std::string>;

namespace {

struct StandingClock : shop::Clock {
  units::Instant now() const override { return units::read_instant("2026-11-26T09:00:00Z"); }
};

struct OwnFolder {
  fs::path path;
  OwnFolder() {
    std::string name = (fs::temp_directory_path() / "nutward-sayings-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("There is no folder for the shop.");
    path = name;
  }
  ~OwnFolder() {
    std::error_code ignored;
    fs::remove_all(path, ignored);
  }
};

struct DemoCopy {
  explicit DemoCopy(const fs::path& home, const shop::Clock& clock)
      : store(store::open_sqlite({home})), rooms(hours::load_zone), executor(*store, clock, rooms),
        talk(executor, *store, clock, rooms) {}
  std::unique_ptr<store::Sqlite> store;
  shop::Rooms rooms;
  shop::Executor executor;
  talk::Talk talk;

  talk::Reply say(const std::string& text, const std::string& conversation, const shop::Caller& who) {
    std::promise<talk::Reply> promise;
    auto reply = promise.get_future();
    talk.say(text, conversation, who, "", [&](talk::Reply r) { promise.set_value(std::move(r)); });
    return reply.get();
  }
  std::int64_t newest() {
    std::int64_t out = 0;
    store->read([&](const shop::View& view) { out = view.journal().newest(); });
    return out;
  }
};

const shop::Row* row_of(std::string_view name) {
  if (const auto* q = shop::question(name)) return q;
  return shop::command(name);
}

} // namespace

struct Speaker::Impl {
  StandingClock clock;
  OwnFolder folder;
  shop::Caller who;
  std::unique_ptr<DemoCopy> copy, untouched;
  std::int64_t fresh = 0; // the newest line of an untouched copy
  int copies = 0, conversations = 0;
  talk::Phrasebook book{shop::questions(), shop::commands()};
  talk::Names names;

  Impl() {
    {
      DemoCopy demo(folder.path / "demo", clock);
      shop::load_demo(*demo.store, [&](const std::string& sentence, const shop::Caller& caller) {
        return demo.say(sentence, "", caller).answer;
      });
      demo.store->read([&](const shop::View& view) {
        for (const shop::Actor& a : view.house().actors()) {
          if (a.name == "Mara") who = {a.id, shop::Role::lead, a.name, "test"};
        }
        names = talk::read_names(view, demo.rooms);
      });
      fresh = demo.newest();
    }
    fs::copy(folder.path / "demo", folder.path / "untouched", fs::copy_options::recursive);
    untouched = std::make_unique<DemoCopy>(folder.path / "untouched", clock);
    renew();
  }

  void renew() {
    copy.reset();
    const fs::path home = folder.path / std::to_string(++copies);
    fs::copy(folder.path / "demo", home, fs::copy_options::recursive);
    if (copies > 1) fs::remove_all(folder.path / std::to_string(copies - 1));
    copy = std::make_unique<DemoCopy>(home, clock);
  }

  // The text as a value of that parameter, as it would stand behind its name in a sentence.
  shop::Value value_of(const shop::Param& param, const std::string& text) const {
    using enum shop::Kind;
    if (param.kind == words || param.kind == name || param.kind == url) return text;
    std::string spaced; // "44.1,45" is a list, not a number with a comma in it
    for (char c : text)
      spaced += (c == ',' ? ", " : std::string(1, c));
    const talk::Sentence sentence = talk::normalise(param.many ? spaced : text);
    const talk::Reader in{sentence, book.lexicon(), names, clock.now()};
    for (const talk::Said& said : talk::recognise(param, 0, true, in)) {
      if (said.end == sentence.tokens.size()) return said.value;
    }
    return text;
  }

  // Bound, and rendered so that two can be compared.
  std::string bound(const shop::Param& param, const shop::Value& raw, const shop::View& view) const {
    // A thing that was said by its name: also where it is gone by now.
    if (std::holds_alternative<shop::Ref>(raw)) return shop::to_json(raw);
    const auto* text = std::get_if<std::string>(&raw);
    try {
      if (param.kind == shop::Kind::spans && text != nullptr)
        return shop::write_spans(shop::read_spans(*text));
      const std::string out = shop::to_json(shop::bind_value(param, raw, view));
      return param.many && !out.starts_with('[') ? "[" + out + "]" : out;
    } catch (const shop::Problem&) {
      return "? " + shop::render(param, raw);
    }
  }

  bool same_text(const shop::Param& param, const std::string& a, const std::string& b) const {
    if (a == b) return true;
    // What is told in the teller's own words: that something of it was taken is enough.
    const bool prose = param.name == "why" || param.name == "note" || param.name == "material";
    if (param.name == "to" && param.kind == shop::Kind::words) return shorter(a) == shorter(b);
    if (param.kind == shop::Kind::spans) return afternoon(a) == b || a == afternoon(b);
    if (param.name == "month") return month(a) == month(b);
    if (param.name == "supplier") return supplier(a) == supplier(b);
    return prose && !a.empty() && !b.empty();
  }

  // The shop takes "4-5" for the afternoon where it is closed at night.
  static std::string afternoon(const std::string& spans) {
    int a = 0, b = 0;
    if (std::sscanf(spans.c_str(), "%d:00-%d:00", &a, &b) != 2 || spans.size() > 11 || a > 6) return spans;
    char out[16];
    std::snprintf(out, sizeof out, "%02d:00-%02d:00", a % 12 + 12, b % 12 + 12);
    return out;
  }

  // Which supplier a part of a name means: "Ferro" of "Ferro and Daughters".
  std::string supplier(const std::string& text) const {
    const std::string folded = talk::fold(text.substr(1, text.size() - 2));
    for (const talk::Named& n : names.suppliers)
      if (n.full.starts_with(folded) || folded == n.full) return n.full;
    return folded;
  }

  // As the standing clock has it.
  static std::string month(const std::string& text) {
    return text == "\"last month\"" ? "\"october\"" : text == "\"this month\"" ? "\"november\"" : text;
  }

  // A setting in its own unit says the same without it.
  static std::string shorter(std::string text) {
    if (text.ends_with(" mm\"")) text.erase(text.size() - 4, 3);
    return text;
  }

  // What a phrase says though nobody did, because it is what the row does anyway.
  static bool is_default(const shop::Row& row, const std::string& name, const shop::Value& value) {
    const auto* text = std::get_if<std::string>(&value);
    if (const auto* yes = std::get_if<bool>(&value)) return !*yes;
    if (const auto* n = std::get_if<std::int64_t>(&value)) return *n == 1 && name == "count";
    if (const auto* t = std::get_if<units::Instant>(&value))
      return *t == StandingClock{}.now(); // "now", "today"
    if (text == nullptr) return false;
    if (name == "month" && *text == "this month") return true;
    const bool stick =
        *text == "stick" && ((name == "form" && (row.name == "receive" || row.name == "ordered")) ||
                             row.name == "weigh" || (row.name == "cut-new" && name == "from"));
    return stick || (*text == "refret" && name == "kind") || name == "why" || name == "note";
  }

  // The values that are wanted are read before anything is done: what is said may take their thing away.
  void read_names(const shop::View& view) { names = talk::read_names(view, copy->rooms); }

  // A piece that was used is not in the tin any more.
  bool same_before(const shop::Param& p, const shop::Value& a, const shop::Value& b) const {
    bool out = false;
    untouched->store->read([&](const shop::View& view) {
      const std::string one = bound(p, a, view);
      out = !one.starts_with('?') && one == bound(p, b, view);
    });
    return out;
  }

  static bool all_said(const TextCalls& want, const std::vector<shop::Call>& got) {
    for (std::size_t i = 0; i < want.size(); ++i)
      for (const auto& [field, text] : want[i].second)
        if ((field == "why" || field == "note") && got[i].find(field) == nullptr) return false;
    return true;
  }

  bool same_args(const TextCall& want, const shop::Call& got, const shop::Call& about,
                 const shop::View& view) const {
    const shop::Row* row = row_of(want.first);
    if (row == nullptr) throw std::runtime_error("there is no row " + want.first);
    for (const auto& [field, text] : want.second) {
      const auto p =
          std::find_if(row->takes.begin(), row->takes.end(), [&, &f = field](const shop::Param& q) {
            return shop::field_for(q) == f || q.name == f;
          });
      if (p == row->takes.end()) throw std::runtime_error(want.first + " takes no " + field);
      const shop::Value* have = got.find(p->name);
      if (have == nullptr && (p->name == "why" || p->name == "note")) continue; // counted below
      if (have == nullptr) return false;
      const shop::Value wanted = value_of(*p, text);
      if (!same_text(*p, bound(*p, wanted, view), bound(*p, *have, view)) && !same_before(*p, wanted, *have))
        return false;
    }
    return std::all_of(got.args.begin(), got.args.end(), [&](const auto& arg) {
      const shop::Param* p = row->find(arg.first);
      const bool wanted = std::any_of(want.second.begin(), want.second.end(), [&](const Field& f) {
        return p != nullptr && (f.first == shop::field_for(*p) || f.first == p->name);
      });
      if (wanted || p == nullptr) return true;
      const shop::Value* before = about.find(arg.first);
      return is_default(*row, arg.first, arg.second) ||
             (before != nullptr && bound(*p, *before, view) == bound(*p, arg.second, view));
    });
  }
};

Speaker::Speaker() : impl_(std::make_unique<Impl>()) {}
Speaker::~Speaker() = default;

Judged Speaker::say(const Saying& saying) {
  Impl& my = *impl_;
  const std::string conversation = "c" + std::to_string(++my.conversations);
  shop::Call about;
  for (const std::string& text : saying.before) {
    const talk::Reply reply = my.copy->say(text, conversation, my.who);
    for (const shop::Call& call : reply.calls)
      about.args.insert(about.args.begin(), call.args.begin(), call.args.end());
    about.args.insert(about.args.begin(), reply.answer.about.args.begin(), reply.answer.about.args.end());
  }
  const std::int64_t before = my.copy->newest();
  my.copy->store->read([&](const shop::View& view) { my.read_names(view); });
  const talk::Reply reply = my.copy->say(saying.say, conversation, my.who);
  const bool done = my.copy->newest() != before;

  Judged out{Verdict::unclear, ""};
  for (const shop::Call& call : reply.calls) {
    const shop::Row* row = row_of(call.row);
    out.came_to +=
        (out.came_to.empty() ? "" : " + ") + (row != nullptr ? talk::render(*row, call) : call.row);
  }
  out.came_to = (out.came_to.empty() ? "" : "{" + out.came_to + "} ") + reply.answer.kind + ": " +
                reply.answer.text.substr(0, 160);
  my.copy->store->read([&](const shop::View& view) {
    bool rows = false, less = false; // but for a reason or note, which nobody took down
    for (const TextCalls& want : saying.either) {
      if (want.empty() && !done && reply.answer.kind != "done") return void(out.verdict = Verdict::exact);
      if (saying.unclear && !done && reply.answer.kind == "unclear")
        return void(out.verdict = Verdict::exact);
      if (want.empty() || want.size() != reply.calls.size()) continue;
      bool same_rows = true, same = true;
      for (std::size_t i = 0; i < want.size(); ++i) {
        same_rows = same_rows && want[i].first == reply.calls[i].row;
        same = same && same_rows && my.same_args(want[i], reply.calls[i], about, view);
      }
      const bool all = same && my.all_said(want, reply.calls);
      if (all) return void(out.verdict = Verdict::exact);
      less = less || same;
      rows = rows || same_rows;
    }
    const bool never = std::any_of(reply.calls.begin(), reply.calls.end(),
                                   [&](const shop::Call& c) { return saying.never.contains(c.row); });
    if (less)
      out.verdict = Verdict::arguments;
    else if (done || never)
      out.verdict = Verdict::wrong_command;
    else if (rows)
      out.verdict = Verdict::arguments;
    else if (!reply.calls.empty())
      out.verdict =
          shop::question(reply.calls.front().row) != nullptr ? Verdict::wrong_question : Verdict::unclear;
  });
  if (my.copy->newest() != my.fresh) my.renew();
  return out;
}

std::set<std::string> Speaker::names_in(const Saying& saying) const {
  std::set<std::string> out;
  using enum shop::Kind;
  for (shop::Kind kind : {wire, job, person, machine, receiver}) {
    for (const talk::Named& n : impl_->names.of(kind))
      out.insert(n.words.begin(), n.words.end());
  }
  for (const TextCalls& calls : saying.either) {
    for (const auto& [row, args] : calls) {
      for (const auto& [field, text] : args) {
        const shop::Param* p = row_of(row) == nullptr ? nullptr : row_of(row)->find(field);
        if (p == nullptr || (p->kind != name && p->kind != words && p->kind != url)) continue;
        for (const talk::Token& t : talk::normalise(text).tokens)
          out.insert(t.word);
      }
    }
  }
  return out;
}

const talk::Phrasebook& Speaker::book() const {
  return impl_->book;
}

const talk::Names& Speaker::names() const {
  return impl_->names;
}

units::Instant Speaker::now() const {
  return impl_->clock.now();
}

double Speaker::understanding_us(const std::string& text) {
  const talk::State state;
  const auto from = std::chrono::steady_clock::now();
  try {
    const talk::Sentence sentence = talk::normalise(text);
    (void)talk::understand(sentence, {impl_->book, impl_->names, state, impl_->clock.now()});
  } catch (const talk::BadText&) {
    // Refused for its length: that counts too.
  }
  return std::chrono::duration<double, std::micro>(std::chrono::steady_clock::now() - from).count();
}

} // namespace nutward::sayings
