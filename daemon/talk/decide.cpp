// One row out of the matches, and its call with nothing missing. A command is never guessed: where another
// row is as near, or the words had typing mistakes that another command could have too, it asks.
#include "talk/understand.hpp"

#include "talk/render.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <set>
#include <tuple>

namespace nutward::talk {

using What = Understood::What;

namespace {

struct Resolved {
  const Match* match = nullptr;
  std::vector<shop::Call> calls; // more than one: any of them may be meant
  std::vector<std::string> notes;
  const shop::Param* missing = nullptr;
};

// A pattern that says one thing for a list says a list of one.
std::vector<shop::Value> values_of(const Said& said, const shop::Param& param) {
  if (!said.others.empty()) return said.others;
  const bool one = param.many && std::holds_alternative<std::string>(said.value);
  return {one ? shop::list({said.value}) : said.value};
}

// Every call that the names in it may mean.
void add_argument(std::vector<shop::Call>& calls, std::string_view name,
                  const std::vector<shop::Value>& values) {
  std::vector<shop::Call> out;
  for (const shop::Call& call : calls) {
    for (const shop::Value& v : values) {
      out.push_back(call);
      out.back().args.emplace_back(name, v);
      if (out.size() == 20) break;
    }
  }
  calls = std::move(out);
}

void from_context(Resolved& out, const shop::Param& param, const Surroundings& at, int step = 0) {
  const shop::Value* known = from_about(param, at.state.about);
  if (known == nullptr) {
    if (out.missing == nullptr) out.missing = &param;
    return;
  }
  if (step != 0) {
    const auto* slot = std::get_if<std::int64_t>(known);
    if (slot != nullptr && *slot + step >= 0) add_argument(out.calls, param.name, {*slot + step});
    out.notes.push_back(as_before(param, *known, at.names));
    return;
  }
  const bool wraps = param.many && !std::holds_alternative<std::shared_ptr<const shop::Node>>(*known);
  add_argument(out.calls, param.name, {wraps ? shop::list({*known}) : *known});
  out.notes.push_back(as_before(param, *known, at.names));
}

// "What fits slot 3 of job 8", "hold it": where a command takes its job from the conversation, it takes that
// job's slot too, though it could do without.
void slot_of_context(Resolved& out, const Surroundings& at) {
  const shop::Row& row = *out.match->phrase->row;
  const shop::Param* job = row.find("job");
  const shop::Param* slot = row.find("slot");
  if (!out.match->phrase->command || !out.match->pointing() || job == nullptr || slot == nullptr ||
      slot->required)
    return;
  const auto said = [&](const shop::Param* param) {
    return std::any_of(out.match->args.begin(), out.match->args.end(),
                       [&](const auto& a) { return &row.takes[static_cast<std::size_t>(a.first)] == param; });
  };
  if (!said(job) && !said(slot) && from_about(*slot, at.state.about) != nullptr) from_context(out, *slot, at);
}

// "Lay a rocker over 4-6 on the treble, and say: 4-6 steady": on the line that it was to be laid on.
void line_of_context(Resolved& out, const shop::Call& about) {
  const shop::Param* line = out.match->phrase->row->find("line");
  if (out.match->phrase->row->name != "reading" || line == nullptr) return;
  const shop::Value* asked = about.find("line");
  for (shop::Call& call : out.calls) {
    const auto same = [&](const char* name) {
      const shop::Value *said = call.find(name), *was = about.find(name);
      return said != nullptr && was != nullptr && *said == *was;
    };
    const shop::Value* job = call.find("job");
    const bool of_that = job == nullptr || about.find("job") == nullptr || same("job");
    if (asked == nullptr || call.find("line") != nullptr || !of_that || !same("from") || !same("to"))
      continue;
    call.args.emplace_back("line", *asked);
  }
}

// Required parameters that were not said: a question takes them from the conversation, a command only where
// the sentence points at it, or the parameter is one that is carried on.
Resolved resolve(const Match& match, const Surroundings& at) {
  const shop::Row& row = *match.phrase->row;
  Resolved out{&match, {shop::Call{std::string(row.name), {}}}, {}, nullptr};
  for (const auto& [index, said] : match.args) {
    const shop::Param& param = row.takes[static_cast<std::size_t>(index)];
    if (said.pointing)
      from_context(out, param, at, said.step);
    else
      add_argument(out.calls, param.name, values_of(said, param));
  }
  for (const shop::Param& param : row.takes) {
    const bool said = std::any_of(match.args.begin(), match.args.end(), [&](const auto& a) {
      return &row.takes[static_cast<std::size_t>(a.first)] == &param;
    });
    if (said || !param.required) continue;
    if (!match.phrase->command || match.pointing() || param.carried || at.within)
      from_context(out, param, at);
    else if (out.missing == nullptr)
      out.missing = &param;
  }
  // What a fret measures may be said in two ways; with none it is asked.
  if (row.name == "all-right" && out.missing == nullptr && out.calls.front().find("length") == nullptr &&
      out.calls.front().find("short_by") == nullptr)
    out.missing = row.find("length");
  slot_of_context(out, at);
  line_of_context(out, at.state.about);
  for (shop::Call& call : out.calls)
    settle(match, call, at);
  return out;
}

// Whether `other` might have been meant as well as the nearest one.
bool rivals(const Match& best, const Match& other) {
  const bool same_row = best.phrase->row == other.phrase->row;
  if (same_row) return !nearer(best, other);
  if (best.phrase->command && best.distance > 0)
    return other.phrase->command || other.distance <= best.distance;
  if (std::tuple(best.distance, best.loose) < std::tuple(other.distance, other.loose)) return false;
  if (best.literals > other.literals) return false;
  return best.phrase->command || other.phrase->command || best.skipped >= other.skipped;
}

std::string label_of(const shop::Param* param, const shop::Call& call, const Surroundings& at) {
  const shop::Row* row = at.book.row(call.row);
  std::string label = told(*row, call, at.names);
  if (param == nullptr) return label;
  if (const auto* ref = std::get_if<shop::Ref>(call.find(param->name))) {
    for (const Named& n : at.names.of(param->kind)) {
      if (n.ref == *ref) return n.label;
    }
  }
  return label;
}

// The one parameter in which the calls differ, if it is a thing by name: then the things' names tell them
// apart.
const shop::Param* differing(const Resolved& r) {
  const shop::Param* out = nullptr;
  for (const auto& [index, said] : r.match->args) {
    if (said.others.empty()) continue;
    if (out != nullptr) return nullptr;
    out = &r.match->phrase->row->takes[static_cast<std::size_t>(index)];
  }
  const bool thing =
      out != nullptr && !out->many &&
      (out->kind == shop::Kind::wire || out->kind == shop::Kind::job || out->kind == shop::Kind::person ||
       out->kind == shop::Kind::machine || out->kind == shop::Kind::receiver);
  return thing ? out : nullptr;
}

Understood which_name(const Resolved& r, const Surroundings& at) {
  const shop::Param* param = differing(r);
  Understood out =
      offer(param != nullptr ? fmt::format("Which {}? More than one is called that.", param->name)
                             : "That can mean more than one thing.",
            r.calls, at);
  out.tell.text += " Pick one by its number, or say more of its name.";
  for (shop::Choice& c : out.tell.choices)
    c.label = label_of(param, c.call, at);
  return out;
}

// "Define machine …", "call it …": words by which a name is given.
bool names_it(std::string_view word, const shop::Row& row) {
  const auto own = words_of(row.name);
  return word == "call" || word == "called" || word == "named" ||
         std::find(own.begin(), own.end(), word) != own.end();
}

// "Zoran to the crew", "banjos: bandit", "they": no name; only a firm's has an "and" in it.
bool holds_more(const Sentence& name, const shop::Row& row) {
  const bool firm = row.name == "define-supplier" || row.name == "change-supplier";
  const bool person = row.name == "new-person" || row.name == "change-person";
  // "Zala's niece Runa": whose she is, is no part of her name.
  if (person && fold(name.original).find("'s ") != std::string::npos) return true;
  return std::any_of(name.tokens.begin(), name.tokens.end(), [&](const Token& t) {
    static constexpr std::array<std::string_view, 15> never{"to",  "user",   "uid", "they",  "them",
                                                            "it",  "he",     "she", "is",    "we",
                                                            "who", "called", "and", "would", "could"};
    static constexpr std::array<std::string_view, 4> not_of_people{"aboard", "into", "went", "joins"};
    if (t.is("and") && firm) return false;
    const auto one_of = [&](const auto& words) {
      return std::find(words.begin(), words.end(), t.word) != words.end();
    };
    return t.is("->") || t.is(">") || t.is(":") || one_of(never) || (person && one_of(not_of_people));
  });
}

// A text that was taken as it stands and holds a number, a currency, or words that say more, where that is
// none of a name ("from Hoban 12", "machne bender"), or may have been mistyped for what else is meant
// ("piecess 12, 10 and 7 are scrap").
bool swallowed(const Match& m, const Surroundings& at) {
  for (const auto& [index, said] : m.args) {
    const auto* text = std::get_if<std::string>(&said.value);
    if (said.loose == 0 || text == nullptr) continue;
    const shop::Param& param = m.phrase->row->takes[static_cast<std::size_t>(index)];
    const bool named = param.kind == shop::Kind::name, why = param.name == "why";
    const bool mistyped = m.distance > 0;
    if (param.name == "bench" && holds_more(normalise(*text), *m.phrase->row)) return true;
    if (why && text->find(", then ") != std::string::npos) return true;
    if (!named && !why && param.name != "supplier") continue;
    if (named && holds_more(normalise(*text), *m.phrase->row)) return true;
    std::size_t words = 0, strange = 0;
    for (const Token& t : normalise(*text).tokens) {
      const bool priced = !currency_word(t.word).empty();
      if (t.kind == Token::Kind::symbol && !priced) continue;
      const bool number = t.is_number() || priced;
      if (number && (mistyped || param.name == "supplier" ||
                     (why && words == 0 && std::isdigit(static_cast<unsigned char>(text->front())) != 0)))
        return true;
      if (mistyped && why && names_it(t.word, *m.phrase->row)) return true;
      const auto near = at.book.lexicon().near(t);
      const bool near_miss =
          t.word.size() > 4 && std::any_of(near.begin(), near.end(), [&](const Near& n) {
            return (n.distance == 1 || mistyped) && names_it(at.book.lexicon().word(n.id), *m.phrase->row);
          });
      ++words, strange += near_miss ? 1 : 0;
    }
    if (named && words > 1 && strange > 0) return true;
  }
  return false;
}

// "Ines works 9 to 12 on saturday": the next one, or all of them?
std::optional<Understood> one_week_or_all(const Match& m, const shop::Call& call, const Surroundings& at) {
  if (call.row != "own-hours" || call.find("hours") == nullptr || !at.names.zone) return std::nullopt;
  for (const auto& [index, said] : m.args) {
    if (m.phrase->row->takes[static_cast<std::size_t>(index)].name != "days" || !said.weekday) continue;
    const auto* hours = std::get_if<std::string>(call.find("hours"));
    const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(&said.value);
    const auto* day = node == nullptr ? nullptr : std::get_if<std::int64_t>(&(*node)->items.front());
    const shop::Value* person = call.find("person");
    if (hours == nullptr || day == nullptr || person == nullptr) return std::nullopt;
    const bool one = (*node)->items.size() == 1, closed = *hours == "closed";
    if (!one && !closed) return std::nullopt; // "monday to thursday 9 to 13" is a week
    const units::Day today = at.names.zone->local(at.now).day;
    const units::Day next = today + static_cast<int>((*day - today.weekday() + 7) % 7);
    shop::Call once{closed ? "day-off" : "day-on", {{"person", *person}, {"day", next}}};
    if (!closed) once.args.emplace_back("hours", *hours);
    const auto* end = std::get_if<std::int64_t>(&(*node)->items.back());
    if (!one && end != nullptr)
      once.args.emplace_back("last", next + static_cast<int>((*end - *day + 7) % 7));
    return offer("Nothing was done yet: is that the next one alone, or every week? Pick one by its number.",
                 {once, call}, at);
  }
  return std::nullopt;
}

// "Ordered 18 sticks from Ferro, tuesday": ordered last tuesday, or due on the next?
std::optional<Understood> ordered_or_due(const Match& m, const shop::Call& call, const Surroundings& at) {
  if (call.row != "ordered" || call.find("promised") != nullptr || !at.names.zone) return std::nullopt;
  for (const auto& [index, said] : m.args) {
    const shop::Param& param = m.phrase->row->takes[static_cast<std::size_t>(index)];
    const auto* when =
        param.name == "at" && said.weekday ? std::get_if<units::Instant>(&said.value) : nullptr;
    if (when == nullptr) continue;
    shop::Call due = call;
    std::erase_if(due.args, [](const auto& a) { return a.first == "at"; });
    const units::Day today = at.names.zone->local(at.now).day, day = at.names.zone->local(*when).day;
    const int ahead = (day.weekday() - today.weekday() + 7) % 7;
    due.args.emplace_back("promised", today + (ahead == 0 ? 7 : ahead));
    return offer("Nothing was done yet: is that the day on which it comes, or on which it was ordered? Pick "
                 "one by its number.",
                 {due, call}, at);
  }
  return std::nullopt;
}

// "Pressed 9-14, 8-13 and 7-12": groups that share frets were pressed one after the other.
std::vector<shop::Call> each_group(const shop::Call& pressed) {
  const shop::Value* slots = pressed.find("slots");
  const auto* node = slots == nullptr ? nullptr : std::get_if<std::shared_ptr<const shop::Node>>(slots);
  if (node == nullptr) return {pressed};
  std::vector<std::vector<shop::Value>> groups;
  std::set<std::int64_t> seen;
  std::optional<std::int64_t> before;
  bool shared = false;
  for (const shop::Value& item : (*node)->items) {
    const auto* n = std::get_if<std::int64_t>(&item);
    if (n == nullptr) return {pressed};
    if (!before || *n != *before + 1) groups.emplace_back();
    groups.back().push_back(item);
    shared = !seen.insert(*n).second || shared;
    before = *n;
  }
  if (!shared || groups.size() < 2) return {pressed};
  std::vector<shop::Call> out;
  for (const std::vector<shop::Value>& group : groups) {
    out.push_back(pressed);
    for (auto& [name, value] : out.back().args)
      if (name == "slots") value = shop::list(group);
  }
  return out;
}

} // namespace

Understood decide(std::vector<Match> matches, const Surroundings& at) {
  const Match& best = matches.front();
  std::vector<Resolved> readings;
  std::set<std::string> seen;
  for (const Match& m : matches) {
    if (&m != &best && !rivals(best, m)) continue;
    Resolved r = resolve(m, at);
    if (r.calls.empty()) continue;
    std::string key = r.missing != nullptr ? "?" + std::string(r.missing->name) : "";
    for (const shop::Call& c : r.calls)
      key += "|" + render(*m.phrase->row, c);
    if (seen.insert(key).second) readings.push_back(std::move(r));
  }
  // A reading with something missing gives way to one of the same row that has it.
  if (std::any_of(readings.begin(), readings.end(), [](const Resolved& r) { return r.missing == nullptr; })) {
    std::erase_if(readings, [](const Resolved& r) { return r.missing != nullptr; });
  }
  if (readings.size() > 1) {
    std::vector<shop::Call> calls;
    for (const Resolved& r : readings)
      calls.insert(calls.end(), r.calls.begin(), r.calls.end());
    return offer("That can be taken in more than one way. Pick one by its number, or say it more plainly.",
                 calls, at);
  }
  Resolved& one = readings.front();
  const bool command = one.match->phrase->command;
  if (one.calls.size() > 1) return which_name(one, at);
  if (one.missing != nullptr) return ask_back(std::move(one.calls), 0, *one.missing, command, at);
  if (command && !one.match->phrase->canonical && one.calls.front().find("me") != nullptr &&
      one.calls.front().find("person") != nullptr) {
    std::vector<shop::Call> either(2, one.calls.front());
    std::erase_if(either[0].args, [](const auto& a) { return a.first == "me"; });
    std::erase_if(either[1].args, [](const auto& a) { return a.first == "person"; });
    return offer("Nothing was done yet: that names you and somebody else. Pick who is meant.", either, at);
  }
  if (auto unclear =
          one.match->phrase->canonical ? std::nullopt : one_week_or_all(*one.match, one.calls.front(), at))
    return *std::move(unclear);
  if (auto unclear =
          one.match->phrase->canonical ? std::nullopt : ordered_or_due(*one.match, one.calls.front(), at))
    return *std::move(unclear);
  if (command && swallowed(*one.match, at)) {
    return offer(
        "Nothing was done yet: a name or text in that may hold more than itself. Pick 1, or say yes, "
        "if this is meant; a name in quotes is always one.",
        one.calls, at);
  }
  if (command && one.match->worst > 1) {
    return offer("Nothing was done yet: a word of that is far from any that I know. Pick 1, or say yes, if "
                 "this is meant.",
                 one.calls, at);
  }
  Understood out;
  out.what = command ? What::order : What::ask;
  out.calls = std::move(one.calls);
  if (command && !one.match->phrase->canonical && out.calls.front().row == "pressed")
    out.calls = each_group(out.calls.front());
  out.notes = std::move(one.notes);
  return out;
}

} // namespace nutward::talk
