// What is said when somebody asks why, how, or how something is said.
#include "talk/understand.hpp"

#include "shop/leaning.hpp"
#include "shop/topics.hpp"
#include "talk/render.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace nutward::talk {

using What = Understood::What;

namespace {

bool has_number(std::string_view text) {
  return text.find_first_of("0123456789") != std::string_view::npos;
}

void go_on(std::string& text, std::string_view more) {
  if (more.empty()) return;
  if (!text.empty()) text += text.ends_with('.') || text.ends_with('?') ? " " : ". ";
  text += more;
}

// Why it was asked back: nothing was said that could be explained by figures.
std::string why_unclear(const Surroundings& at) {
  const State& s = at.state;
  if (s.pending) {
    const shop::Call& call = s.pending->calls[s.pending->at];
    const shop::Row* row = at.book.row(call.row);
    const shop::Param* param = row == nullptr ? nullptr : row->find(s.pending->param);
    if (param != nullptr)
      return fmt::format("'{}' needs 1 thing more: {} ({}).", call.row, param->name, param->what);
  }
  if (s.confirm) return "It would be hard to put right, so that 1 yes is asked for first. " + s.answer->text;
  if (s.choices.size() > 1)
    return fmt::format("What you said can mean {} things, and nothing is done on a guess.", s.choices.size());
  if (s.misses > 0) {
    return fmt::format("None of the {} questions and commands that I know is said like that. {}",
                       at.book.rows().size(), s.answer->text);
  }
  return "Nothing is done on a guess, and 1 reading of it was not certain. " + s.answer->text;
}

struct Step {
  std::string_view row, next;
};

// What usually comes after a question or a command; of what is not here, nothing in particular does.
constexpr std::array steps{
    Step{"fit", "use"},
    Step{"place", "use"},
    Step{"shift", "shifted"},
    Step{"all-right", "measured"},
    Step{"slots", "cuts"},
    Step{"cuts", "cut-list"},
    Step{"cut-list", "cut-new"},
    Step{"labels", "add"},
    Step{"stock", "supply"},
    Step{"supply", "ordered"},
    Step{"order-list", "ordered"},
    Step{"due", "rechecked"},
    Step{"jobs", "job"},
    Step{"job", "start"},
    Step{"persons", "give-job"},
    Step{"whose", "give-job"},
    Step{"press", "pressed"},
    Step{"level", "reading"},
    Step{"suits", "slot-size"},
    Step{"lots", "from-lot"},
    Step{"balance", "count"},
    Step{"saved", "tin-care"},
    Step{"tin-care", "scrap-several"},
    Step{"held", "let-go"},
    Step{"spring-back", "press"},
    Step{"machines", "book"},
    Step{"bookings", "book"},
    Step{"stages", "start"},
    Step{"hours", "open-extra"},
    Step{"agenda", "start"},
    Step{"promise", "new-job"},
    Step{"orders", "arrived"},
    Step{"suppliers", "ordered"},
    Step{"use", "finished"},
    Step{"use-several", "finished"},
    Step{"hold", "use"},
    Step{"let-go", "place"},
    Step{"add", "place"},
    Step{"handful", "measured-handful"},
    Step{"measured-handful", "labels"},
    Step{"measured", "finished"},
    Step{"came-short", "fit"},
    Step{"lost", "fit"},
    Step{"remade", "measured"},
    Step{"finished", "job"},
    Step{"pressed", "rechecked"},
    Step{"rechecked", "level"},
    Step{"look-again", "due"},
    Step{"new-job", "cuts"},
    Step{"set-due", "agenda"},
    Step{"cancel-job", "jobs"},
    Step{"define-wire", "receive"},
    Step{"receive", "stock"},
    Step{"reorder-level", "supply"},
    Step{"count", "stock"},
    Step{"weigh", "stock"},
    Step{"calibrate", "weigh"},
    Step{"correct", "stock"},
    Step{"cut-from", "finished"},
    Step{"cut-new", "finished"},
    Step{"pulled", "measured-handful"},
    Step{"from-lot", "fit"},
    Step{"slot-size", "suits"},
    Step{"wire-size", "suits"},
    Step{"shifted", "slots"},
    Step{"board-width", "slots"},
    Step{"set-aside", "cut-list"},
    Step{"let-all-go", "cuts"},
    Step{"define-bar", "press"},
    Step{"press-support", "press"},
    Step{"reading", "level"},
    Step{"crown-gap", "cause"},
    Step{"cause", "level"},
    Step{"stands-low", "level"},
    Step{"last-fret", "level"},
    Step{"neck", "reading"},
    Step{"reseated", "press"},
    Step{"glued", "press-support"},
    Step{"levelled", "reading"},
    Step{"new-person", "map-uid"},
    Step{"define-machine", "stage-machine"},
    Step{"machine-down", "machine-up"},
    Step{"book", "start"},
    Step{"start", "finished"},
    Step{"stop", "start"},
    Step{"priority", "agenda"},
    Step{"after", "agenda"},
    Step{"ordered", "arrived"},
    Step{"arrived", "stock"},
    Step{"order-promised", "supply"},
    Step{"cancel-order", "order-list"},
    Step{"define-supplier", "ordered"},
    Step{"not-understood", "forget-not-understood"},
};

// The shop's things for an example: those that were spoken of last.
shop::Sample spoken_of(const Surroundings& at) {
  shop::Sample out = at.names.sample;
  const auto ref = [&](std::string_view name) -> std::int64_t {
    const shop::Value* v = at.state.about.find(name);
    const auto* found = v == nullptr ? nullptr : std::get_if<shop::Ref>(v);
    return found == nullptr ? 0 : found->id;
  };
  if (ref("job") != 0) out.job = ref("job");
  if (ref("piece") != 0) out.pieces = {ref("piece")};
  for (const Named& wire : at.names.wires)
    if (wire.ref.id == ref("wire")) out.wire = wire.label;
  if (const shop::Value* v = at.state.about.find("slot"))
    if (const auto* slot = std::get_if<std::int64_t>(v)) out.slot = static_cast<int>(*slot);
  return out;
}

std::string step_after(std::string_view row_name, const Surroundings& at) {
  const auto step =
      std::find_if(steps.begin(), steps.end(), [&](const Step& s) { return s.row == row_name; });
  const shop::Row* next = step == steps.end() ? nullptr : at.book.row(step->next);
  if (next == nullptr || next->examples.empty())
    return "Nothing in particular comes next; 'agenda' says what does.";
  return fmt::format("Next as a rule: {}. Say for example '{}'.", next->name,
                     shop::example_in(next->examples.front(), spoken_of(at)));
}

// "How do I", "how would one", "how to": the first token behind it; 0 where the sentence does not begin so.
std::size_t behind_how(const Reader& in) {
  std::size_t i = in.any(0, {"and", "so", "but", "ok"}) ? 1 : 0;
  if (in.is(i, "what") && in.any(i + 1, {"do", "can", "should", "must"}) &&
      in.any(i + 2, {"i", "we", "you"}) && in.is(i + 3, "say")) {
    i += 4;
    if (in.any(i, {"to", "if", "when", "for", "that"})) ++i;
    return i;
  }
  if (!in.is(i, "how")) return 0;
  ++i;
  if (in.is(i, "to")) return i + 1;
  if (!in.any(i, {"do", "can", "should", "would", "could", "does", "must", "shall"})) return 0;
  ++i;
  if (!in.any(i, {"i", "we", "you", "one", "anybody", "somebody", "people"})) return 0;
  return i + 1;
}

// "tell you that", "say that", "let you know that", "report": what is behind it is what is to be said. 0
// where nothing like it stands there.
std::size_t behind_telling(std::size_t i, const Reader& in) {
  if (in.is(i, "let") && in.any(i + 1, {"you", "it", "nutward"}) && in.is(i + 2, "know"))
    i += 3;
  else if (in.is(i, "tell") && in.any(i + 1, {"you", "it", "nutward"}))
    i += 2;
  else if (in.any(i, {"say", "report", "record", "enter"}))
    ++i;
  else
    return 0;
  if (in.any(i, {"that", "about", "if", "when"})) ++i;
  return i < in.size() ? i : 0;
}

// The row that the words would come to, whatever is missing for it; nullptr where they come to none, or to
// several.
const shop::Row* row_said(std::string_view words, const Surroundings& at) {
  const State nothing;
  const Understood u = understand(normalise(words), {at.book, at.names, nothing, at.now, false, true});
  std::set<std::string> rows;
  for (const shop::Call& call : u.calls)
    rows.insert(call.row);
  if (u.pending) rows.insert(u.pending->calls[u.pending->at].row);
  if (!u.missed && rows.empty()) {
    for (const shop::Choice& choice : u.tell.choices)
      rows.insert(choice.call.row);
  }
  return rows.size() == 1 ? at.book.row(*rows.begin()) : nullptr;
}

// What is told is a command: the nearest one by its words.
const shop::Row* command_about(std::string_view words, const Surroundings& at) {
  for (const shop::Row* row : shop::rows_about(words, 20)) {
    const shop::Row* here = at.book.row(row->name);
    if (here != nullptr && at.book.is_command(*here)) return here;
  }
  return nullptr;
}

// "How do I report pressing": by the row that is called so when it is done.
const shop::Row* report_of(std::string_view words, const Surroundings& at) {
  if (!words.ends_with("ing")) return nullptr;
  return at.book.row(fold(words.substr(0, words.size() - 3)) + "ed");
}

Understood help_on(const shop::Row& row) {
  Understood out;
  out.what = What::ask;
  out.calls = {shop::Call{"help", {{"topic", std::string(row.name)}}}};
  return out;
}

} // namespace

Understood why(const Surroundings& at) {
  if (!at.state.answer) {
    Understood none = tell("unclear", "Nothing has been said yet that has a reason.");
    none.keeps = true;
    return none;
  }
  const State& s = at.state;
  Understood out;
  out.tell = *s.answer;
  out.keeps = true;
  const bool stumbled = out.tell.kind == "unclear" || out.tell.kind == "refused";
  if (out.tell.kind == "unclear") {
    out.tell.text = why_unclear(at);
    out.tell.reason.clear();
    return out;
  }
  const std::optional<shop::Call>& call = stumbled ? s.tried : s.done_last ? s.done : s.question;
  const std::string reason = std::exchange(out.tell.reason, "");
  if (call && !stumbled) out.tell.reason = shop::words_of_leaning(call->row, at.names.settings);
  if (!stumbled) out.tell.text.clear();
  go_on(out.tell.text, reason);
  // A reason with figures says enough, but for a piece, which some plan may want.
  if (stumbled || !has_number(reason) || (call && call->find("piece") != nullptr)) {
    out.explains.emplace(call.value_or(shop::Call{}), *s.answer);
  } else if (out.tell.text.empty()) {
    std::swap(out.tell.text, out.tell.reason);
  }
  return out;
}

Understood how(const Surroundings& at) {
  const State& s = at.state;
  Understood out = tell("done", "");
  out.keeps = true;
  if (s.confirm)
    out.tell.text = "Say yes to do it, or no to leave it.";
  else if (s.pending)
    out.tell.text = s.answer ? s.answer->text : "";
  else if (!s.choices.empty())
    out.tell.text =
        fmt::format("Say 1 for '{}'{}.", s.choices.front().label,
                    s.choices.size() > 1 ? fmt::format(", and so on up to {}", s.choices.size()) : "");
  else if (s.answer && (s.answer->kind == "refused" || s.answer->kind == "unclear"))
    out.tell.text = s.answer->text;
  if (!out.tell.text.empty()) {
    out.tell.kind = "unclear";
    out.tell.choices = s.choices;
    return out;
  }
  const std::optional<shop::Call>& call = s.done_last ? s.done : s.question;
  if (!call)
    return tell("unclear",
                "Nothing has been said yet. 'agenda' says what comes next, 'help' what can be said.");
  out.tell.text = step_after(call->row, at);
  if (s.done_last) out.tell.text += " 'undo' takes back what was done.";
  return out;
}

std::optional<Understood> how_to(const Reader& in, const Surroundings& at, bool surely) {
  if (at.inner) return std::nullopt;
  const std::size_t from = behind_how(in);
  if (from == 0 || from >= in.size() || at.book.row("help") == nullptr) return std::nullopt;
  const std::size_t told = behind_telling(from, in);
  const std::string_view words = in.s.said(told != 0 ? told : from, in.size());
  const shop::Row* row = row_said(words, at);
  if (row != nullptr && (row->name == "help" || (told != 0 && !at.book.is_command(*row)))) row = nullptr;
  if (told != 0) {
    if (const shop::Row* report = report_of(words, at)) row = report;
    if (row == nullptr) row = command_about(words, at);
  } else if (surely) { // another question may know these words: only an order that is said in full goes
                       // before it
    if (row != nullptr && !at.book.is_command(*row)) row = nullptr;
  } else if (row == nullptr) {
    if (const auto about = shop::rows_about(words, 1); !about.empty()) row = about.front();
  }
  return row == nullptr ? std::nullopt : std::optional{help_on(*row)};
}

} // namespace nutward::talk
