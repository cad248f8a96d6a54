// What is asked when something is missing or nothing was understood.
#include "talk/understand.hpp"

#include "talk/render.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

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

Understood ask_back(std::vector<shop::Call> calls, std::size_t which, const shop::Param& param, bool command,
                    const Surroundings& at) {
  std::string name{param.name};
  std::replace(name.begin(), name.end(), '_', ' ');
  Understood out =
      tell("unclear",
           fmt::format("{} {}? {}",
                       is_thing(param.kind) || param.kind == Kind::slot || param.kind == Kind::piece ? "Which"
                                                                                                     : "What",
                       name, how_to_say(param)));
  if (calls.size() == 1) out.tell.choices = choices_for(calls.front(), param, at);
  out.pending = Pending{std::move(calls), which, std::string(param.name), command};
  return out;
}

std::optional<Understood> fill_pending(const Reader& in, const Surroundings& at, bool anything) {
  if (!at.state.pending) return std::nullopt;
  const Pending& pending = *at.state.pending;
  const shop::Row* row = at.book.row(pending.calls[pending.at].row);
  const shop::Param* param = row == nullptr ? nullptr : row->find(pending.param);
  if (param == nullptr || (pending.command && mood_of(in) != Mood::order)) return std::nullopt;
  const bool free = param->kind == Kind::words || param->kind == Kind::name;
  if (free != anything) return std::nullopt;
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
    out.calls[pending.at].args.emplace_back(param->name, said.value);
    for (const shop::Param& p : row->takes) {
      if (p.required && out.calls[pending.at].find(p.name) == nullptr)
        return ask_back(out.calls, pending.at, p, pending.command, at);
    }
    return out;
  }
  return std::nullopt;
}

namespace {

// The rows that share most with the sentence; a word that few rows know says more than one that many know.
std::vector<const shop::Row*> nearest(const Reader& in, const Surroundings& at) {
  std::map<const shop::Row*, double> score;
  for (std::size_t i = 0; i < in.size(); ++i) {
    if (is_filler(in.s.tokens[i])) continue;
    for (const Near& near : in.near[i]) {
      const auto& rows = at.book.rows_with(near.id);
      for (const shop::Row* row : rows)
        score[row] += 1.0 / (1.0 + near.distance) / static_cast<double>(rows.size());
    }
  }
  std::vector<const shop::Row*> out;
  for (const shop::Row* row : at.book.rows()) {
    if (score.count(row) > 0) out.push_back(row);
  }
  std::stable_sort(out.begin(), out.end(), [&](auto* a, auto* b) { return score[a] > score[b]; });
  for (const shop::Row* row : at.book.rows()) {
    if (out.size() >= 2) break;
    if (std::find(out.begin(), out.end(), row) == out.end()) out.push_back(row);
  }
  if (out.size() > 2) out.resize(2);
  return out;
}

bool in_any_name(const std::string& word, const Names& names) {
  for (const auto* list : {&names.wires, &names.jobs, &names.persons, &names.machines, &names.receivers}) {
    for (const Named& n : *list) {
      if (std::find(n.words.begin(), n.words.end(), word) != n.words.end()) return true;
    }
  }
  return false;
}

std::string unknown_words(const Reader& in, const Surroundings& at) {
  std::string out;
  int count = 0;
  for (std::size_t i = 0; i < in.size() && count < 6; ++i) {
    const Token& t = in.s.tokens[i];
    const bool known =
        std::any_of(in.near[i].begin(), in.near[i].end(), [](const Near& n) { return n.distance == 0; });
    if (t.kind != Token::Kind::word || known || is_filler(t) || in_any_name(t.word, at.names)) continue;
    if (i >= in.name_from && i < in.name_to) continue;
    if ((i > 0 && in.at(i - 1)->is_number() && is_unit_word(t.word)) || weekday_word(t.word)) continue;
    out += (out.empty() ? "'" : ", '") + std::string(in.s.said(i, i + 1).substr(0, 60)) + "'";
    ++count;
  }
  return out;
}

std::string example(const shop::Row& row) {
  return row.examples.empty() ? render(row, shop::Call{std::string(row.name), {}})
                              : std::string(row.examples.front());
}

std::string plain_form(const shop::Row& row) {
  shop::Call none{std::string(row.name), {}};
  std::string out = render(row, none);
  bool first = true;
  for (const shop::Param& p : row.takes) {
    if (!p.required) continue;
    out += fmt::format("{} {} …", first ? "" : ",", p.name);
    first = false;
  }
  return out;
}

} // namespace

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

Understood not_understood(const Reader& in, const Surroundings& at) {
  if (in.trouble.set())
    return tell("refused", in.trouble.text + (in.trouble.would_do.empty() ? "" : " " + in.trouble.would_do));
  const std::string unknown = unknown_words(in, at);
  const auto rows = nearest(in, at);
  std::string text = unknown.empty() ? "I know these words, but not what they mean together."
                                     : "I do not know " + unknown + " here.";
  if (unknown.empty() && in.name_to > in.name_from) {
    text = fmt::format(
        "I took '{}' as a name, but do not know what stands behind its comma. A name with a comma "
        "in it is said in quotes.",
        in.s.said(in.name_from, in.name_to).substr(0, 60));
  }
  std::string can;
  for (const shop::Row* row : rows) {
    can +=
        (can.empty() ? "" : " or ") + ("'" + (at.state.misses > 0 ? plain_form(*row) : example(*row)) + "'");
  }
  if (at.state.misses == 0)
    text += can.empty() ? "" : " The nearest that I can do: " + can + ".";
  else
    text += " Try the plain form, " + can + "; 'help' lists everything.";
  Understood out = tell("unclear", std::move(text));
  out.missed = true;
  return out;
}

} // namespace nutward::talk
