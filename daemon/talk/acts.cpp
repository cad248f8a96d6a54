// Acts on the conversation itself: picking, yes and no, why, undo.
#include "talk/understand.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::talk {

using What = Understood::What;

namespace {

// The sentence without commas and courtesy.
std::string bare(const Reader& in) {
  std::string out;
  for (const Token& t : in.s.tokens) {
    if (t.is(",") || t.is("please") || t.is("!") || t.is(".")) continue;
    out += (out.empty() ? "" : " ") + t.word;
  }
  return out;
}

bool one_of(std::string_view text, std::initializer_list<std::string_view> all) {
  return std::find(all.begin(), all.end(), text) != all.end();
}

struct Pick {
  std::size_t n = 0;    // from 1
  bool ordinal = false; // "the second one": never a thing's number
};

std::optional<Pick> pick_of(const Reader& in, std::size_t most) {
  std::size_t i = 0;
  bool clear = false;
  while (in.any(i, {"the", "number", "choice", "option", "pick", "take", "no", "#"})) {
    clear = clear || in.any(i, {"choice", "option", "pick"});
    ++i;
  }
  const bool last = in.is(i, "last");
  auto n = last ? std::optional{static_cast<std::int64_t>(most)} : whole(in.at(i));
  if (!n || *n < 1 || *n > 99) return std::nullopt;
  const bool ordinal = last || in.at(i)->ordinal.has_value();
  ++i;
  if (in.is(i, "one")) ++i;
  if (in.is(i, "please")) ++i;
  if (i != in.size()) return std::nullopt;
  if (last && in.size() < 2) return std::nullopt;
  return Pick{static_cast<std::size_t>(*n), ordinal || clear};
}

// A job that is asked for may bear the number of another choice: "2" then means two things.
std::optional<Understood> two_meanings(const Pick& pick, const Surroundings& at) {
  if (pick.ordinal || !at.state.pending) return std::nullopt;
  const shop::Choice& picked = at.state.choices[pick.n - 1];
  const std::string& param = at.state.pending->param;
  for (const shop::Choice& other : at.state.choices) {
    const shop::Value* value = other.call.find(param);
    const auto* ref = value == nullptr ? nullptr : std::get_if<shop::Ref>(value);
    if (ref == nullptr || ref->id != static_cast<std::int64_t>(pick.n) || &other == &picked) continue;
    Understood out = tell(
        "unclear", fmt::format("{} is the place in the list of one, and the number of another.", pick.n));
    out.tell.text += " Pick again from these two.";
    out.tell.choices = {picked, other};
    return out;
  }
  return std::nullopt;
}

Understood confirmed(const shop::Order& order) {
  Understood out;
  out.what = What::order;
  out.calls = order.calls;
  out.expects = order.expects;
  out.confirmed = true;
  return out;
}

Understood taken(const shop::Choice& choice, bool command) {
  Understood out;
  out.what = command ? What::order : What::ask;
  out.calls = {choice.call};
  out.expects = choice.expects;
  return out;
}

std::optional<Understood> picked(const Reader& in, const Surroundings& at) {
  const auto& choices = at.state.choices;
  if (choices.empty()) return std::nullopt;
  auto pick = pick_of(in, choices.size());
  if (!pick) return std::nullopt;
  if (pick->n > choices.size()) {
    if (at.state.pending && !pick->ordinal) return std::nullopt; // the number of a thing that is not listed
    Understood out = tell("unclear", fmt::format("There are {} to pick from.", choices.size()));
    out.tell.choices = choices;
    return out;
  }
  if (auto unclear = two_meanings(*pick, at)) return unclear;
  const shop::Choice& choice = choices[pick->n - 1];
  const shop::Row* row = at.book.row(choice.call.row);
  const bool command = row == nullptr || at.book.is_command(*row);
  if (command && in.s.asks) return std::nullopt;
  if (at.state.confirm) return confirmed(*at.state.confirm);
  Understood out = taken(choice, command);
  // Taken back so that it can be said anew: "no, 13". With more than one other they would change their
  // numbers.
  if (choice.call.row == "undo" && choices.size() == 2) out.leaves = {choices[pick->n == 1 ? 1 : 0]};
  return out;
}

// A list that goes on offers `earlier`; a question that is offered may be said by its label.
std::optional<Understood> called(std::string_view text, const Surroundings& at) {
  if (one_of(text, {"more", "show more", "go on", "further back", "show earlier", "earlier ones"}))
    text = "earlier";
  for (const shop::Choice& choice : at.state.choices) {
    const shop::Row* row = at.book.row(choice.call.row);
    if (choice.label == text && row != nullptr && !at.book.is_command(*row)) return taken(choice, false);
  }
  return std::nullopt;
}

// A question of ours stands open: undo is then about that, not about what was done before. Where the question
// offers the undo itself, it is meant.
bool asked_first(const Surroundings& at) {
  const State& s = at.state;
  const auto& choices = s.choices;
  if (std::any_of(choices.begin(), choices.end(),
                  [](const shop::Choice& c) { return c.call.row == "undo"; })) {
    return s.confirm.has_value();
  }
  const auto orders = [&](const shop::Choice& c) {
    const shop::Row* row = at.book.row(c.call.row);
    return row != nullptr && at.book.is_command(*row);
  };
  const bool unclear = s.answer && s.answer->kind == "unclear";
  return s.confirm || s.pending || (unclear && std::any_of(choices.begin(), choices.end(), orders));
}

} // namespace

std::optional<Understood> act(const Reader& in, const Surroundings& at) {
  if (in.size() > 8) return std::nullopt;
  const std::string text = bare(in);
  if (one_of(text, {"why", "why not", "why is that", "why so", "why that", "why that one", "why this one",
                    "why this", "how come", "how so", "because of what"}))
    return why(at);
  if (one_of(text, {"how", "and how", "how now", "how then", "how do i do that", "how do i do it",
                    "how do we do that", "next step", "the next step", "what is the next step", "and then",
                    "what then", "then what"}))
    return how(at);
  if (auto out = in_unit(in, at)) return out;
  const bool open = at.state.confirm || at.state.pending || !at.state.choices.empty();
  if (one_of(text, {"yes", "y", "yes do it", "yes do that", "do it", "go ahead", "yes go ahead", "sure"}) &&
      !in.s.asks) {
    if (at.state.confirm) return confirmed(*at.state.confirm);
    if (at.state.choices.size() != 1 || text == "sure") {
      return open ? std::optional{tell("unclear", "Yes to which? Pick one by its number.")}
                  : tell("unclear", "There is nothing that waits for a yes.");
    }
    const shop::Choice& choice = at.state.choices.front();
    const shop::Row* row = at.book.row(choice.call.row);
    return taken(choice, row == nullptr || at.book.is_command(*row));
  }
  if (one_of(text, {"no", "n", "no thanks", "leave it", "never mind", "forget it", "none", "none of them",
                    "no do not"})) {
    return tell("done", open ? "Nothing was done." : "Very well; there was nothing to be done.");
  }
  if (auto out = of_a_table(in, at)) return out;
  if (auto out = picked(in, at)) return out;
  if (auto out = called(text, at)) return out;
  if (one_of(text, {"undo", "undo that", "undo it", "take that back", "take it back"}) && !in.s.asks &&
      at.book.row("undo") != nullptr) {
    if (at.state.misses > 0 && at.state.answer)
      return tell("done",
                  "Nothing was done by that, so there is nothing of it to take back. Say undo once more to "
                  "take back what you did before it.");
    if (asked_first(at)) {
      return tell("done", "Nothing was done yet; what was asked is dropped. Say undo once more to take back "
                          "what you did before it.");
    }
    Understood out;
    out.what = What::order;
    out.calls = {shop::Call{"undo", {}}};
    return out;
  }
  return std::nullopt;
}

} // namespace nutward::talk
