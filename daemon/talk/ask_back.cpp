// What is asked when something is missing, or named that there is not.
#include "talk/understand.hpp"

#include "talk/render.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::talk {

using shop::Kind;

namespace {

std::string how_to_say(const shop::Param& param) {
  switch (param.kind) {
  case Kind::job:
    return "Say its number, its owner or its instrument.";
  case Kind::wire:
  case Kind::machine:
  case Kind::receiver:
    return "Say its name.";
  case Kind::person:
    return "Say a name.";
  case Kind::slot:
    return param.many ? "Say them as 3, 9-14 or 9 and 10." : "Say its number.";
  case Kind::piece:
    return "Say its length and its wire, such as the 52.4 of medium.";
  case Kind::length:
    return "Say it as 52.4 mm or 2 1/16 in.";
  case Kind::load:
    return "Say it as 400 lb or 1780 N.";
  case Kind::mass:
    return "Say it as 310 g.";
  case Kind::day:
    return "Say it as friday or 2026-12-12.";
  case Kind::at:
    return "Say it as yesterday at 15:00 or 2 hours ago.";
  case Kind::spans:
    return "Say it as 9:00-12:30 and 13:30-18:00.";
  default:
    return param.what.empty() ? "" : fmt::format("It is {}.", param.what);
  }
}

bool is_thing(Kind kind) {
  return kind == Kind::job || kind == Kind::wire || kind == Kind::person || kind == Kind::machine ||
         kind == Kind::receiver;
}

shop::Choice with(const shop::Call& call, const shop::Param& param, shop::Value value, std::string label) {
  shop::Choice out{std::move(label), call, {}};
  out.call.args.emplace_back(param.name, param.many ? shop::list({std::move(value)}) : std::move(value));
  return out;
}

std::vector<shop::Choice> choices_for(const shop::Call& call, const shop::Param& param,
                                      const Surroundings& at) {
  std::vector<shop::Choice> out;
  if (is_thing(param.kind)) {
    for (const Named& n : at.names.of(param.kind)) {
      if (out.size() == 9) break;
      out.push_back(with(call, param, n.ref, n.label));
    }
    const shop::Value* before = from_about(param, at.state.about); // first, where it is among them
    const auto is_it = [&](const shop::Choice& c) {
      const auto* ref = std::get_if<shop::Ref>(c.call.find(param.name));
      return before != nullptr && ref != nullptr && *before == shop::Value{*ref};
    };
    std::stable_partition(out.begin(), out.end(), is_it);
  } else if (param.kind == Kind::one_of) {
    for (std::string_view option : param.options) {
      if (out.size() < 9) out.push_back(with(call, param, std::string(option), std::string(option)));
    }
  }
  return out;
}

} // namespace

Understood ask_back(std::vector<shop::Call> calls, std::size_t which_call, const shop::Param& param,
                    bool command, const Surroundings& at) {
  std::string name{param.name};
  std::replace(name.begin(), name.end(), '_', ' ');
  const bool which = is_thing(param.kind) || param.kind == Kind::slot || param.kind == Kind::piece;
  // "Which one for 'neck'?": a parameter that is named by a verb asks nothing by it.
  Understood out =
      param.kind == Kind::one_of
          ? tell("unclear", fmt::format("Which for '{}'? Say {}.", calls[which_call].row,
                                        fmt::join(param.options, ", ")))
          : tell("unclear", fmt::format("{} {}? {}", which ? "Which" : "What", name, how_to_say(param)));
  if (calls.size() == 1) out.tell.choices = choices_for(calls.front(), param, at);
  out.pending = Pending{std::move(calls), which_call, std::string(param.name), command};
  return out;
}

namespace {

// "Kindly undo my last entry", "and piece 14 is 44.0": said where a reason was asked for, it is none.
bool orders_something(const Reader& in, const Surroundings& at, const shop::Row* asked) {
  const auto& ranked = at.book.evidence().rank(in);
  if (ranked.empty() || ranked.front().row == nullptr || ranked.front().share < 0.4) return false;
  const bool number =
      std::any_of(in.s.tokens.begin(), in.s.tokens.end(), [](const Token& t) { return t.is_number(); });
  return at.book.is_command(*ranked.front().row) &&
         (ranked.front().row != asked ? number || ranked.front().share > 0.7 : number && in.is(0, "and"));
}

} // namespace

std::optional<Understood> fill_pending(const Reader& in, const Surroundings& at, bool anything) {
  if (!at.state.pending) return std::nullopt;
  const Pending& pending = *at.state.pending;
  const shop::Row* row = at.book.row(pending.calls[pending.at].row);
  const shop::Param* param = row == nullptr ? nullptr : row->find(pending.param);
  if (param == nullptr || (pending.command && mood_of(in) != Mood::order)) return std::nullopt;
  const bool free = param->kind == Kind::words || param->kind == Kind::name;
  if (free != anything) return std::nullopt;
  if (param->kind == Kind::words && orders_something(in, at, row)) return std::nullopt;
  std::size_t from = 0;
  while (from < in.size() && (in.any(from, {"for", "in", "of", "to", "on", "at"}) || in.is(from, ",")))
    ++from;
  if (!free && in.is(from, param->name) && from + 1 < in.size()) ++from; // "tare 90 g"
  for (const Said& said :
       recognise(*param, from, param->kind == Kind::wire || param->kind == Kind::job, in)) {
    std::size_t end = said.end;
    while (end < in.size() && skippable(end, in))
      ++end;
    if (end != in.size() || said.pointing || said.distance > 0) continue;
    Understood out;
    out.what = pending.command ? Understood::What::order : Understood::What::ask;
    out.calls = pending.calls;
    if (said.others.size() > 1) {
      std::vector<shop::Call> calls;
      for (const shop::Value& v : said.others) {
        calls.push_back(pending.calls[pending.at]);
        calls.back().args.emplace_back(param->name, v);
      }
      return offer(fmt::format("Which {}? More than one is called that.", param->name), calls, at);
    }
    // Several at once that lack the same are told it once.
    for (std::size_t k = 0; k < out.calls.size(); ++k) {
      const shop::Row* other = at.book.row(out.calls[k].row);
      const shop::Param* same = other == nullptr ? nullptr : other->find(param->name);
      if (k == pending.at || (same != nullptr && same->required && same->kind == param->kind &&
                              (param->kind == Kind::job || param->kind == Kind::wire ||
                               param->kind == Kind::person || param->kind == Kind::machine) &&
                              out.calls[k].find(param->name) == nullptr))
        out.calls[k].args.emplace_back(param->name, said.value);
    }
    for (std::size_t k = 0; k < out.calls.size(); ++k) {
      const shop::Row* of = at.book.row(out.calls[k].row);
      for (std::size_t p = 0; of != nullptr && p < of->takes.size(); ++p)
        if (of->takes[p].required && out.calls[k].find(of->takes[p].name) == nullptr)
          return ask_back(out.calls, k, of->takes[p], pending.command, at);
    }
    return out;
  }
  return std::nullopt;
}

std::optional<Understood> unknown_name(const Match& match, const Surroundings& at) {
  for (const auto& [index, said] : match.args) {
    Kind kind = match.phrase->row->takes[static_cast<std::size_t>(index)].kind;
    const shop::Value* value = &said.value;
    if (const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(value);
        node != nullptr && kind == Kind::piece) {
      const shop::Node* piece = node->get();
      while (piece->is_list && !piece->items.empty() &&
             std::holds_alternative<std::shared_ptr<const shop::Node>>(piece->items.back())) {
        piece = std::get<std::shared_ptr<const shop::Node>>(piece->items.back()).get();
      }
      value = piece->find("wire");
      kind = Kind::wire;
    }
    const auto* name = value == nullptr ? nullptr : std::get_if<std::string>(value);
    if (said.loose == 0 || name == nullptr || !is_thing(kind)) continue;
    std::string all;
    std::size_t count = 0;
    for (const Named& n : at.names.of(kind)) {
      if (++count <= 9) all += (all.empty() ? "" : "; ") + n.label;
    }
    const std::string_view what = kind == Kind::wire      ? "wire"
                                  : kind == Kind::job     ? "open job"
                                  : kind == Kind::person  ? "person"
                                  : kind == Kind::machine ? "machine"
                                                          : "receiver";
    return tell("refused", fmt::format("No {} is called '{}'. {}", what, *name,
                                       all.empty() ? "There is none yet."
                                                   : "There are: " + all + (count > 9 ? " and more." : ".")));
  }
  return std::nullopt;
}

} // namespace nutward::talk
