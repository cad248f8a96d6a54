// Nobody numbers fifty-cent frets: "the 52.4", "52.4 mm of medium", "the medium 52.4", and now and then
// "piece 41".
#include "talk/recognise.hpp"

namespace nutward::talk {
namespace {

// Behind a length a noun in the plural means several: "three of the 44 mm pieces".
bool is_plural(std::size_t i, const Reader& in) {
  const bool two = in.any(i, {"short", "stick", "pulled"});
  return in.any(two ? i + 1 : i, {"pieces", "offcuts", "frets", "ends"});
}

std::size_t over_noun(std::size_t i, const Reader& in) {
  if (in.is(i, "short") && in.any(i + 1, {"fret", "frets", "one"})) return i + 2;
  if (in.is(i, "stick") && in.any(i + 1, {"end", "ends"})) return i + 2;
  if (in.is(i, "pulled") && in.any(i + 1, {"fret", "frets"})) return i + 2;
  return in.any(i, {"piece", "pieces", "offcut", "offcuts", "end", "one", "bit", "leftover"}) ? i + 1 : i;
}

shop::Value piece(units::Length length, const shop::Value& wire) {
  std::vector<std::pair<std::string, shop::Value>> fields{{"length_mm", length.mm()}};
  if (!std::holds_alternative<std::monostate>(wire)) fields.emplace_back("wire", wire);
  return shop::record(std::move(fields));
}

Said with_wire(units::Length length, const Said& wire) {
  Said out{wire.end, piece(length, wire.value), {}, wire.pointing, wire.loose};
  for (const shop::Value& v : wire.others)
    out.others.push_back(piece(length, v));
  return out;
}

std::vector<Said> wires_at(std::size_t i, const Reader& in) {
  static const shop::Param wire{"wire", shop::Kind::wire, false, false, ""};
  std::vector<Said> out;
  for (Said& s : recognise_thing(wire, i, false, in)) {
    if (!s.pointing) out.push_back(std::move(s));
  }
  return out;
}

void add_noun(std::vector<Said>& out, Said said, const Reader& in) {
  if (is_plural(said.end, in)) return;
  if (const std::size_t end = over_noun(said.end, in); end != said.end) {
    Said longer = said;
    longer.end = end;
    out.push_back(std::move(longer));
  }
  out.push_back(std::move(said));
}

// A length at i, with or without the wire behind it.
std::vector<Said> by_length(std::size_t i, const Reader& in) {
  std::vector<Said> out;
  const auto length = length_at(i, in);
  if (!length || is_plural(length->end, in)) return out;
  std::size_t next = over_noun(length->end, in);
  if (in.any(next, {"of", "in"})) ++next;
  for (const Said& wire : wires_at(next, in))
    add_noun(out, with_wire(length->value, wire), in);
  add_noun(out, Said{length->end, piece(length->value, {})}, in);
  return out;
}

std::vector<Said> behind_wire(std::size_t i, const Reader& in) {
  std::vector<Said> out;
  for (const Said& wire : wires_at(i, in)) {
    const auto length = length_at(over_noun(wire.end, in), in);
    if (!length) continue;
    Said said = with_wire(length->value, wire);
    said.end = length->end;
    add_noun(out, std::move(said), in);
  }
  return out;
}

} // namespace

std::vector<Said> recognise_piece(const shop::Param&, std::size_t i, bool plain, const Reader& in) {
  std::size_t at = i;
  if (in.is(at, "it")) return {{at + 1, {}, {}, true}};
  if (in.any(at, {"that", "this"})) {
    if (const std::size_t end = over_noun(at + 1, in); end > at + 1) return {{end, {}, {}, true}};
    if (in.at(at + 1) == nullptr || !in.at(at + 1)->is_number()) return {{at + 1, {}, {}, true}};
  }
  if (in.any(at, {"the", "a", "an", "my", "that", "this"})) ++at;
  if (in.is(at, "same") && over_noun(at + 1, in) > at + 1) return {{over_noun(at + 1, in), {}, {}, true}};
  const bool named = in.is(at, "piece") || in.is(at, "#");
  if (named || plain) {
    std::size_t number = named ? at + 1 : at;
    if (in.any(number, {"number", "no", "#"})) ++number;
    const Token* next = in.at(number + 1);
    const bool unit =
        next != nullptr && (next->is("mm") || next->is("in") || next->is("cm") || next->is("\"") ||
                            next->is("of") || next->is("/") || (next->is("-") && next->glued));
    if (auto id = whole(in.at(number)); id && !(unit && length_at(number, in) && !in.is(number + 1, "in"))) {
      return {{number + 1, shop::Ref{shop::Thing::piece, *id}}};
    }
  }
  if (in.at(at) != nullptr && in.at(at)->kind == Token::Kind::quoted) return {{at + 1, in.at(at)->word}};
  std::size_t noun = over_noun(at, in);
  if (noun == at && in.is(at, "the")) return {};
  if (noun > at && (in.at(noun) == nullptr || !in.at(noun)->is_number())) {
    if (in.is(noun, "of"))
      ++noun;
    else if (at > i)
      return {{noun, {}, {}, true}}; // "the piece", "the offcut"
  }
  std::vector<Said> out = by_length(noun, in);
  if (out.empty()) out = behind_wire(noun, in);
  if (out.empty() && noun > at && at > i) return {{over_noun(at, in), {}, {}, true}};
  return out;
}

} // namespace nutward::talk
