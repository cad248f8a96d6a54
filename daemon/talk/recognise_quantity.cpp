#include "talk/recognise.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>

namespace nutward::talk {
namespace {

// What units/read takes at token i, and the token at which it ends. A quantity that cannot be read is kept as
// trouble.
template <class Scan>
auto scanned_at(std::size_t i, std::size_t until, const Reader& in, Scan scan) {
  using Result = decltype(scan(std::string_view{}));
  const Token& first = in.s.tokens[i];
  const std::size_t to = until < in.size() ? in.s.tokens[until].flat_begin : in.s.flat.size();
  std::string_view text = std::string_view(in.s.flat).substr(first.flat_begin, to - first.flat_begin);
  std::pair<Result, std::size_t> none{Result{}, 0};
  try {
    auto found = scan(text);
    if (!found) return none;
    std::size_t bytes = found->bytes;
    while (bytes > 0 && text[bytes - 1] == ' ')
      --bytes;
    auto end = in.flat_end(first.flat_begin + bytes);
    if (!end) return none;
    return std::pair{found, *end};
  } catch (const units::BadQuantity& bad) {
    if (!in.trouble.set()) in.trouble = {bad.what(), bad.would_do};
    return none;
  }
}

bool begins_number(std::size_t i, const Reader& in) {
  const Token* t = in.at(i);
  if (t == nullptr || t->ordinal) return false;
  if (t->is_number()) return true;
  const Token* next = in.at(i + 1);
  return (t->is("-") || t->is("+")) && next != nullptr && next->is_number() && next->glued;
}

// "2 in medium" is two inches, "the 52.4 in slot 3" is not: where the word in belongs to what follows it.
bool in_is_place(std::size_t i, const Reader& in) {
  if (!in.is(i, "in") || in.s.tokens[i].glued) return false;
  const Token* next = in.at(i + 1);
  return next != nullptr &&
         (next->is_number() ||
          in.any(i + 1, {"slot", "slots", "fret", "frets", "job", "the", "my", "our", "this", "that", "it",
                         "stock", "tin", "box", "drawer", "a", "an"}));
}

bool in_is_unit(std::size_t i, const Reader& in) {
  if (!in.is(i, "in")) return false;
  return in.at(i + 1) == nullptr ||
         in.any(i + 1, {"in", "of", "and", ",", "&", "to", "for", "at", "long", "each", "wide", "piece",
                        "pieces", "offcut", "offcuts", "stick", "sticks", "one", "fret"});
}

// Where a quantity must end: before an "in" that is no unit, behind one that is. Where it is not clear the
// whole text is read, and units/read says so.
std::size_t stop_for(std::size_t i, const Reader& in) {
  for (std::size_t k = i; k < in.size() && k < i + 6; ++k) {
    if (in_is_place(k, in)) return k;
    if (k > i && in.is(k, "s") && in.s.tokens[k].glued) return k; // "the three 44s"
    if (in_is_unit(k, in)) return k + 1;
    if (in.s.tokens[k].kind == Token::Kind::word && !in.s.tokens[k].is_number()) break;
  }
  return in.size();
}

std::vector<Said> count_at(std::size_t i, const Reader& in) {
  if (auto n = whole(in.at(i)); n && !in.at(i)->ordinal) return {{i + 1, *n}};
  if (in.is(i, "-") && in.at(i + 1) != nullptr && in.at(i + 1)->glued) {
    if (auto n = whole(in.at(i + 1))) return {{i + 2, -*n}};
  }
  if (in.any(i, {"a", "an"})) return {{i + 1, std::int64_t{1}}};
  return {};
}

std::optional<double> decimal(const std::string& text) {
  double v = 0;
  auto [at, error] = std::from_chars(text.data(), text.data() + text.size(), v);
  return error == std::errc{} && at == text.data() + text.size() ? std::optional{v} : std::nullopt;
}

std::vector<Said> number_at(std::size_t i, const Reader& in) {
  const bool minus = in.is(i, "-") && in.at(i + 1) != nullptr && in.at(i + 1)->glued;
  const std::size_t at = minus ? i + 1 : i;
  if (in.at(at) == nullptr || !in.at(at)->is_number()) return {};
  auto v = decimal(in.at(at)->number);
  if (!v) return {};
  if (minus) v = -*v;
  std::vector<Said> out;
  if (in.any(at + 1, {"%", "percent"}))
    out.push_back({at + 2, *v});
  else if (in.is(at + 1, "per") && in.is(at + 2, "cent"))
    out.push_back({at + 3, *v});
  out.push_back({at + 1, *v});
  return out;
}

// The currency's own code, or the sign that goes with it.
bool is_currency(std::size_t i, const Reader& in) {
  const std::string& code = in.names.currency;
  if (in.at(i) == nullptr || code.empty()) return false;
  return in.is(i, code) || currency_word(in.at(i)->word) == code;
}

// Nothing is converted: at which rate, nobody here could say.
bool in_another_currency(std::size_t i, const Reader& in) {
  if (in.at(i) == nullptr || currency_word(in.at(i)->word).empty() || is_currency(i, in)) return false;
  std::string code{in.names.currency};
  for (char& c : code)
    c = static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
  in.trouble = {fmt::format("The shop's money is {}; '{}' is another.", code, in.s.said(i, i + 1)),
                fmt::format("Say what it cost in {}, such as: for 12.50.", code), true};
  return true;
}

std::vector<Said> money_at(std::size_t i, const Reader& in) {
  const bool before = is_currency(i, in);
  const std::size_t at = before ? i + 1 : i;
  const Token* t = in.at(at);
  if (in.at(i) != nullptr && in.at(i + 1) != nullptr && in.at(i + 1)->is_number() &&
      in_another_currency(i, in))
    return {};
  if (t == nullptr || !t->is_number() || t->ordinal || in_another_currency(at + 1, in)) return {};
  try {
    const units::Money value = units::read_money(t->number);
    std::vector<Said> out;
    if (!before && is_currency(at + 1, in)) out.push_back({at + 2, value});
    out.push_back({at + 1, value});
    return out;
  } catch (const units::BadQuantity& bad) {
    if (!in.trouble.set()) in.trouble = {bad.what(), bad.would_do};
    return {};
  }
}

} // namespace

namespace {

// "5/9", "12/3": a slot of a job, where no unit says that it is a length. An inch is halved again and again.
bool no_fraction(std::size_t i, std::size_t end, const Reader& in) {
  if (end != i + 3 || !in.is(i + 1, "/")) return false;
  const auto top = whole(in.at(i)), bottom = whole(in.at(i + 2));
  if (!top || !bottom) return false;
  return *top >= *bottom || *bottom < 2 || (*bottom & (*bottom - 1)) != 0;
}

} // namespace

std::optional<SaidLength> length_at(std::size_t i, const Reader& in) {
  if (!begins_number(i, in)) return std::nullopt;
  const auto [found, end] = scanned_at(i, stop_for(i, in), in, [&](std::string_view text) {
    return units::scan_length(text, in.names.length);
  });
  if (end <= i || (!found->unit_said && no_fraction(i, end, in))) return std::nullopt;
  return SaidLength{found->value, end, found->unit_said};
}

std::vector<Said> recognise_quantity(const shop::Param& param, std::size_t i, const Reader& in) {
  switch (param.kind) {
  case shop::Kind::count:
    // "A year" is none of those from 1970 on.
    if (in.any(i, {"a", "an"}) && param.bounds.least > 1) return {};
    return count_at(i, in);
  case shop::Kind::number:
    return number_at(i, in);
  case shop::Kind::money:
    return money_at(i, in);
  default:
    break;
  }
  if (!begins_number(i, in)) return {};
  if (param.kind == shop::Kind::length) {
    auto length = length_at(i, in);
    return length ? std::vector<Said>{{length->end, length->value}} : std::vector<Said>{};
  }
  if (param.kind == shop::Kind::load) {
    const auto [found, end] =
        scanned_at(i, in.size(), in, [&](std::string_view t) { return units::scan_force(t, in.names.load); });
    if (end <= i) return {};
    // Kilograms where loads are in something else: the shop asks (shop/bind), so it must see how it was said.
    const bool kilograms = in.any(end - 1, {"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"});
    if (kilograms && in.names.load != units::ForceUnit::kgf) return {{end, std::string(in.s.said(i, end))}};
    return {{end, found->value}};
  }
  const auto [found, end] = scanned_at(
      i, in.size(), in, [](std::string_view t) { return units::scan_mass(t, units::MassUnit::g); });
  return end > i ? std::vector<Said>{{end, found->value}} : std::vector<Said>{};
}

} // namespace nutward::talk
