#include "shop/bind.hpp"

#include "shop/meant.hpp"
#include "shop/press_settings.hpp"
#include "shop/setup.hpp"
#include "units/print.hpp"
#include "units/read.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <stdexcept>

namespace nutward::shop {

std::optional<std::int64_t> Args::opt_id(std::string_view name) const {
  auto ref = opt<Ref>(name);
  return ref ? std::optional{ref->id} : std::nullopt;
}

std::vector<Value> Args::values(std::string_view name) const {
  const Value* v = call_.find(name);
  if (v == nullptr) return {};
  if (const auto* node = std::get_if<std::shared_ptr<const Node>>(v); node != nullptr && (*node)->is_list) {
    return (*node)->items;
  }
  return {*v};
}

std::vector<int> Args::slots(std::string_view name) const {
  std::vector<int> out;
  for (std::int64_t slot : many<std::int64_t>(name))
    out.push_back(static_cast<int>(slot));
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

void Args::fail(std::string_view name) const {
  throw std::logic_error("row '" + std::string(row_->name) + "' asked for '" + std::string(name) +
                         "' as what it is not");
}

namespace {

[[noreturn]] void refuse(const Param& param, std::string what, std::string would_do) {
  throw Problem(Fault::value, std::move(what), field_for(param), std::move(would_do));
}

std::string in_bounds(const Param& param, std::string_view unit) {
  return fmt::format("Give {} from {} to {}{}{}.", param.name, param.bounds.least, param.bounds.most,
                     unit.empty() ? "" : " ", unit);
}

void check_bounds(const Param& param, double v, std::string_view unit) {
  if (!std::isfinite(v))
    refuse(param, fmt::format("The {} is not a number.", param.name), in_bounds(param, unit));
  if (param.bounds.most <= param.bounds.least) return;
  if (v < param.bounds.least || v > param.bounds.most) {
    refuse(param,
           fmt::format("{:.10g}{}{} is out of range for {}.", v, unit.empty() ? "" : " ", unit, param.name),
           in_bounds(param, unit));
  }
}

// A finite number from a number or a text that is one; nullopt for anything else.
std::optional<double> plain_number(const Value& raw) {
  if (const auto* i = std::get_if<std::int64_t>(&raw)) return static_cast<double>(*i);
  if (const auto* d = std::get_if<double>(&raw)) return *d;
  if (const auto* s = std::get_if<std::string>(&raw)) {
    double v = 0;
    const char* end = s->data() + s->size();
    auto [at, error] = std::from_chars(s->data(), end, v);
    if (error == std::errc{} && at == end) return v;
  }
  return std::nullopt;
}

template <class Fn>
auto quantity(const Param& param, Fn read) {
  try {
    return read();
  } catch (const units::BadQuantity& bad) {
    refuse(param, bad.what(), bad.would_do);
  }
}

// A number is in the unit of the JSON field, a text in what it says or else the shop's unit.
Value bind_length(const Param& param, const Value& raw, const View& view) {
  Length out;
  if (const auto* l = std::get_if<Length>(&raw)) {
    out = *l;
  } else if (const auto* s = std::get_if<std::string>(&raw)) {
    out = quantity(param, [&] { return units::read_length(*s, length_unit(view)); });
  } else if (auto v = plain_number(raw)) {
    // Within ±1e9 mm a double becomes nanometres safely; wider values are out of any bounds here.
    if (!std::isfinite(*v) || std::abs(*v) > 1e9)
      check_bounds({param.name, param.kind, false, false, "", {-1e9, 1e9}}, *v, "mm");
    out = units::from_mm(*v);
  } else {
    refuse(param, fmt::format("The {} is not a length.", param.name), "Give it as 52.4 or \"52.4 mm\".");
  }
  check_bounds(param, out.mm(), "mm");
  return out;
}

// Kilograms on a press are a mistake for pounds as often as they are meant: three in place of one breaks a
// board. Where the shop has not said that its loads are in them, it is asked.
units::Force said_load(const Param& param, const std::string& text, units::ForceUnit bare) {
  const units::Force v = units::read_force(text, bare);
  const auto number = number_of_kilograms(text);
  if (!number || bare == units::ForceUnit::kgf) return v;
  const std::string as_meant = *number + " " + std::string(units::name_of(bare));
  Problem problem(Fault::ambiguous,
                  fmt::format("'{}': the shop's loads are in {}. Is it {} or {} kgf, which is {}?", text,
                              units::name_of(bare), as_meant, *number, units::print(v, bare, 1)),
                  field_for(param), fmt::format("Say {} or {} kgf.", as_meant, *number));
  for (const std::string& said : {as_meant, *number + " kgf"})
    problem.choices.push_back({said, {"", {{std::string(param.name), units::read_force(said, bare)}}}, {}});
  throw Problem(std::move(problem));
}

Value bind_load(const Param& param, const Value& raw, const View& view) {
  units::Force out;
  if (const auto* f = std::get_if<units::Force>(&raw))
    out = *f;
  else if (const auto* s = std::get_if<std::string>(&raw))
    out = quantity(param, [&] { return said_load(param, *s, force_unit(view)); });
  else if (auto v = plain_number(raw))
    out = {*v};
  else
    refuse(param, fmt::format("The {} is not a load.", param.name), "Give it as \"400 lb\" or \"1780 N\".");
  check_bounds(param, out.n, "N");
  return out;
}

Value bind_mass(const Param& param, const Value& raw) {
  units::Mass out;
  if (const auto* m = std::get_if<units::Mass>(&raw))
    out = *m;
  else if (const auto* s = std::get_if<std::string>(&raw))
    out = quantity(param, [&] { return units::read_mass(*s, units::MassUnit::g); });
  else if (auto v = plain_number(raw); v && std::isfinite(*v) && std::abs(*v) < 1e9)
    out = {std::llround(*v * 1e3)};
  else
    refuse(param, fmt::format("The {} is not a mass.", param.name), "Give it as \"310 g\".");
  check_bounds(param, out.g(), "g");
  return out;
}

// The text without the shop's own currency at either end: "12.50 EUR". Another currency is refused, since
// nobody here could say at which rate.
std::string without_currency(const Param& param, std::string text, const View& view) {
  const std::string own = setup(view).currency;
  const auto is_letter = [](char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); };
  std::string code;
  for (const char c : text)
    if (is_letter(c)) code += static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
  if (code.empty()) return text;
  if (code != own)
    refuse(param, fmt::format("The shop's money is {}; '{}' is not in it.", own, text.substr(0, 40)),
           fmt::format("Give what it cost in {}, such as \"12.50\".", own));
  std::erase_if(text, [&](char c) { return is_letter(c) || c == ' '; });
  return text;
}

// A number is in minor units, as the JSON field says; a text is in whole units: "12.50".
Value bind_money(const Param& param, const Value& raw, const View& view) {
  units::Money out;
  if (const auto* m = std::get_if<units::Money>(&raw))
    out = *m;
  else if (const auto* i = std::get_if<std::int64_t>(&raw))
    out = {*i};
  else if (const auto* s = std::get_if<std::string>(&raw))
    out = quantity(param, [&] { return units::read_money(without_currency(param, *s, view)); });
  else
    refuse(param, fmt::format("The {} is not an amount of money.", param.name),
           "Give whole cents, or a text such as \"12.50\".");
  check_bounds(param, static_cast<double>(out.minor), "minor units");
  return out;
}

Value bind_whole(const Param& param, const Value& raw) {
  auto v = plain_number(raw);
  if (!v || !std::isfinite(*v) || *v != std::floor(*v) || std::abs(*v) > 1e15) {
    refuse(param, fmt::format("The {} is not a whole number.", param.name), "Give a whole number such as 3.");
  }
  Param bounded = param;
  if (param.kind == Kind::slot && param.bounds.most <= param.bounds.least) bounded.bounds = {0, 48};
  check_bounds(bounded, *v, "");
  return static_cast<std::int64_t>(*v);
}

Value bind_time(const Param& param, const Value& raw) {
  if (param.kind == Kind::at) {
    if (std::holds_alternative<units::Instant>(raw)) return raw;
    if (const auto* s = std::get_if<std::string>(&raw))
      return quantity(param, [&] { return units::read_instant(*s); });
    refuse(param, fmt::format("The {} is not a time.", param.name), "Give it as 2026-12-12T09:00:00Z.");
  }
  if (std::holds_alternative<units::Day>(raw)) return raw;
  if (const auto* s = std::get_if<std::string>(&raw))
    return quantity(param, [&] { return units::read_day(*s); });
  refuse(param, fmt::format("The {} is not a day.", param.name), "Give it as 2026-12-12.");
}

Value bind_yes(const Param& param, const Value& raw) {
  if (std::holds_alternative<bool>(raw)) return raw;
  if (const auto* s = std::get_if<std::string>(&raw)) {
    if (*s == "true" || *s == "yes" || *s == "1") return true;
    if (*s == "false" || *s == "no" || *s == "0") return false;
  }
  refuse(param, fmt::format("'{}' takes yes or no.", param.name), "Give true or false.");
}

bool has_control(std::string_view s) {
  return std::any_of(s.begin(), s.end(),
                     [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

Value bind_text(const Param& param, const Value& raw) {
  const auto* s = std::get_if<std::string>(&raw);
  if (s == nullptr) refuse(param, fmt::format("The {} is not a text.", param.name), "Give it as words.");
  const std::size_t most = param.kind == Kind::url ? 2000 : param.kind == Kind::name ? 60 : 500;
  if (!is_utf8(*s)) refuse(param, fmt::format("The {} is not valid UTF-8.", param.name), "Send UTF-8 text.");
  if (has_control(*s))
    refuse(param, fmt::format("The {} has control characters in it.", param.name), "Give plain words.");
  if (s->size() > most) {
    refuse(param, fmt::format("The {} is {} bytes long.", param.name, s->size()),
           fmt::format("Keep it under {} bytes.", most));
  }
  if (param.kind == Kind::name) {
    if (s->empty()) refuse(param, fmt::format("The {} is empty.", param.name), "Give a name.");
    if (units::escape_for_print(*s) != *s) {
      refuse(param,
             fmt::format("The {} '{}' has characters in it that do not show.", param.name,
                         units::escape_for_print(*s)),
             "Give plain letters.");
    }
    if (plain_number(raw))
      refuse(param, "A bare number would be taken for an id.", "Put a word into the name.");
  }
  return *s;
}

Value bind_option(const Param& param, const Value& raw) {
  const auto* s = std::get_if<std::string>(&raw);
  if (s != nullptr && std::find(param.options.begin(), param.options.end(), *s) != param.options.end())
    return *s;
  std::string all;
  for (std::string_view option : param.options)
    all += (all.empty() ? "" : ", ") + std::string(option);
  refuse(param, fmt::format("'{}' is no {} that I know.", s == nullptr ? "that" : *s, param.name),
         "It is one of: " + all + ".");
}

std::vector<Value> as_list(const Param& param, const Value& raw) {
  if (const auto* node = std::get_if<std::shared_ptr<const Node>>(&raw);
      node != nullptr && (*node)->is_list) {
    return (*node)->items;
  }
  if (const auto* s = std::get_if<std::string>(&raw)) {
    if (param.kind == Kind::slot) return slot_list(param, *s);
    if (param.kind == Kind::weekdays) return weekday_list(param, *s);
    std::vector<Value> out; // a query repeats nothing: "length=52.4 mm,51 mm"
    for (std::size_t from = 0; from <= s->size();) {
      const std::size_t comma = std::min(s->find(',', from), s->size());
      out.emplace_back(s->substr(from, comma - from));
      from = comma + 1;
    }
    return out;
  }
  return {raw};
}

} // namespace

Value bind_value(const Param& param, const Value& raw, const View& view) {
  switch (param.kind) {
  case Kind::words:
  case Kind::name:
  case Kind::spans:
  case Kind::url:
    return bind_text(param, raw);
  case Kind::one_of:
    return bind_option(param, raw);
  case Kind::yes:
    return bind_yes(param, raw);
  case Kind::count:
  case Kind::slot:
    return bind_whole(param, raw);
  case Kind::weekdays:
    return bind_whole({param.name, Kind::count, false, false, "", {0, 6}}, raw);
  case Kind::number: {
    auto v = plain_number(raw);
    if (!v) refuse(param, fmt::format("The {} is not a number.", param.name), "Give a number.");
    check_bounds(param, *v, "");
    return *v;
  }
  case Kind::length:
    return bind_length(param, raw, view);
  case Kind::load:
    return bind_load(param, raw, view);
  case Kind::mass:
    return bind_mass(param, raw);
  case Kind::money:
    return bind_money(param, raw, view);
  case Kind::at:
  case Kind::day:
    return bind_time(param, raw);
  case Kind::wire:
  case Kind::job:
  case Kind::piece:
  case Kind::person:
  case Kind::machine:
  case Kind::receiver:
    return meant(param, raw, view);
  }
  throw std::logic_error("a kind of parameter without a way to bind it");
}

namespace {

// The parameter by its name or its JSON field; the name alone is for typed values and for texts with their
// unit in them.
const Param& param_for(const Row& row, const std::string& name, const Value& raw) {
  for (const Param& p : row.takes) {
    if (field_for(p) == name) return p;
    if (p.name != name) continue;
    const bool number = std::holds_alternative<std::int64_t>(raw) || std::holds_alternative<double>(raw);
    if (number)
      refuse(p, fmt::format("'{}' is a bare number without a unit.", name),
             "Send it as " + field_for(p) + ".");
    return p;
  }
  std::string all;
  for (const Param& p : row.takes)
    all += (all.empty() ? "" : ", ") + field_for(p);
  throw Problem(Fault::value, fmt::format("'{}' takes no '{}'.", row.name, name.substr(0, 60)),
                name.substr(0, 60), all.empty() ? "It takes nothing." : "It takes: " + all + ".");
}

// A plain number sent as text (a query knows no other) under the field that names the unit is in that unit;
// only under the parameter's own name does it mean the shop's.
Value in_unit_of_field(const Param& param, const std::string& name, const Value& raw) {
  if (name == param.name || !std::holds_alternative<std::string>(raw)) return raw;
  const auto v = plain_number(raw);
  if (!v) return raw;
  if (param.kind == Kind::money && *v == std::floor(*v) && std::abs(*v) < 1e15)
    return static_cast<std::int64_t>(*v);
  return *v;
}

// Ambiguity deep inside one argument becomes choices of the whole call.
Value bind_for_call(const Param& param, const Value& raw, const Call& call, const View& view) {
  try {
    return bind_value(param, raw, view);
  } catch (Problem& problem) {
    for (Choice& choice : problem.choices) {
      Call whole = call;
      for (auto& [name, value] : whole.args) {
        if (name == param.name || name == field_for(param)) value = choice.call.args.front().second;
      }
      choice.call = std::move(whole);
    }
    throw;
  }
}

// A piece meant by its length alone is of the wire of the job in the same call, where there is one.
Value with_wire_of_job(const Param& param, const Value& raw, const Row& row, const Call& call,
                       const View& view) {
  const Value* job = call.find("job");
  const Param* job_param = row.find("job");
  const auto* node = std::get_if<std::shared_ptr<const Node>>(&raw);
  const bool bare_length = std::holds_alternative<Length>(raw);
  const bool bare_record = node != nullptr && !(*node)->is_list && (*node)->find("wire") == nullptr;
  if (param.kind != Kind::piece || job == nullptr || job_param == nullptr || !(bare_length || bare_record))
    return raw;
  const auto found = view.jobs().find(std::get<Ref>(bind_value(*job_param, *job, view)).id);
  if (!found) return raw;
  auto fields = bare_record ? (*node)->fields : std::vector<std::pair<std::string, Value>>{{"length", raw}};
  fields.emplace_back("wire", Ref{Thing::wire, found->wire});
  return record(std::move(fields));
}

} // namespace

Args bind(const Row& row, const Call& call, const View& view, bool with_required) {
  Call bound{std::string(row.name), {}};
  for (const auto& [name, raw] : call.args) {
    if (std::holds_alternative<std::monostate>(raw)) continue; // null: as if not sent
    const Param& param = param_for(row, name, raw);
    if (bound.find(param.name) != nullptr)
      refuse(param, fmt::format("'{}' is given twice.", param.name), "Give it once.");
    if (!param.many) {
      const Value meant_raw = with_wire_of_job(param, in_unit_of_field(param, name, raw), row, call, view);
      bound.args.emplace_back(param.name, bind_for_call(param, meant_raw, call, view));
      continue;
    }
    const auto items = as_list(param, raw);
    if (items.empty() || items.size() > 200) {
      refuse(param, fmt::format("'{}' takes 1 to 200 values.", param.name), "Send fewer at once.");
    }
    std::vector<Value> out;
    out.reserve(items.size());
    for (const Value& item : items)
      out.push_back(bind_for_call(param, in_unit_of_field(param, name, item), call, view));
    bound.args.emplace_back(param.name, list(std::move(out)));
  }
  for (const Param& param : row.takes) {
    if (with_required && param.required && bound.find(param.name) == nullptr) {
      refuse(param, fmt::format("'{}' needs a {}.", row.name, param.name),
             fmt::format("Say the {}: {}.", param.name, param.what));
    }
  }
  return {row, std::move(bound)};
}

} // namespace nutward::shop
