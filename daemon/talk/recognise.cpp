#include "talk/recognise.hpp"

#include <algorithm>
#include <charconv>
#include <utility>

namespace nutward::talk {

Reader::Reader(const Sentence& sentence, const Lexicon& l, const Names& n, units::Instant t)
    : s(sentence), lexicon(l), names(n), now(t), readings(4 * l.ways(), sentence.tokens.size() + 1),
      skippable_(sentence.tokens.size()), lead_(sentence.tokens.size()) {
  near.reserve(s.tokens.size());
  for (const Token& token : s.tokens) {
    const NearWords& found = near.emplace_back(lexicon.near(token));
    const bool known = !found.empty() && found.front().distance == 0;
    // A thing of the shop is called that: it is no other word with a mistake in it.
    if (!known && !found.empty() && names.has(token.word)) near.back().clear();
    strange_ = strange_ || (!known && token.kind == Token::Kind::word && !is_english(token.word));
  }
  reach_.resize(s.tokens.size() + 1);
  own_.resize(s.tokens.size() + 1);
  for (std::size_t i = s.tokens.size(); i-- > 0;) {
    for (const Near& word : near[i]) {
      own_[i].meant = own_[i].meant | WordMask::of(word.id);
      if (word.distance == 0) own_[i].said = own_[i].said | WordMask::of(word.id);
    }
    all_ = {all_.said | own_[i].said, all_.meant | own_[i].meant};
    skippable_[i] = may_skip(i);
    reach_[i] = own_[i];
    if (skippable_[i])
      reach_[i] = {own_[i].said | reach_[i + 1].said, own_[i].meant | reach_[i + 1].meant};
    else
      lead_ = i;
  }
}

bool Reader::may_skip(std::size_t i) const {
  const Token& t = s.tokens[i];
  if (!is_filler(t)) return false;
  // Nor is a part of "cut-from" left out.
  const auto joined = [&](std::size_t dash) { return is(dash, "-") && s.tokens[dash].glued; };
  const bool in_word =
      (i > 0 && t.glued && joined(i - 1)) || (joined(i + 1) && at(i + 2) && at(i + 2)->glued);
  if (in_word && t.kind == Token::Kind::word) return false;
  if (t.kind != Token::Kind::symbol || t.is("/")) return true;
  // "9-14", "1,250" and "-5" are one thing each: what stands in them is not left out.
  const Token* next = at(i + 1);
  return next == nullptr || !next->is_number() || !next->glued;
}

std::span<const Said> Reader::supplier_at(std::size_t i) const {
  if (suppliers_.empty()) suppliers_.resize(size() + 1);
  if (!suppliers_[i]) suppliers_[i] = known_supplier(i, *this);
  return *suppliers_[i];
}

std::span<const Said> Reader::place_at(std::size_t i) const {
  if (places_.empty()) places_.resize(size() + 1);
  if (!places_[i]) places_[i] = known_place(i, *this);
  return *places_[i];
}

const hours::LocalTime& Reader::local() const {
  if (!local_) local_ = names.zone->local(now);
  return *local_;
}

bool Reader::any(std::size_t i, std::initializer_list<std::string_view> words) const {
  return i < s.tokens.size() &&
         std::any_of(words.begin(), words.end(), [&](auto w) { return s.tokens[i].is(w); });
}

std::optional<std::size_t> Reader::flat_end(std::size_t byte) const {
  for (std::size_t i = 0; i < s.tokens.size(); ++i) {
    if (s.tokens[i].flat_end >= byte)
      return s.tokens[i].flat_end == byte ? std::optional{i + 1} : std::nullopt;
  }
  return std::nullopt;
}

std::optional<std::size_t> Reader::original_end(std::size_t byte) const {
  for (std::size_t i = 0; i < s.tokens.size(); ++i) {
    if (s.tokens[i].end >= byte) return s.tokens[i].end == byte ? std::optional{i + 1} : std::nullopt;
  }
  return std::nullopt;
}

std::string_view Reader::run(std::size_t i) const {
  std::string_view rest = std::string_view(s.original).substr(s.tokens[i].begin);
  rest = rest.substr(0, rest.find_first_of(" \t\r\n"));
  while (!rest.empty() && std::string_view(",;?!").find(rest.back()) != std::string_view::npos)
    rest.remove_suffix(1);
  return rest;
}

std::optional<std::int64_t> whole(const Token* token) {
  if (token == nullptr || !token->is_number()) return std::nullopt;
  std::int64_t v = 0;
  const char* end = token->number.data() + token->number.size();
  auto [at, error] = std::from_chars(token->number.data(), end, v);
  return error == std::errc{} && at == end ? std::optional{v} : std::nullopt;
}

namespace {

std::vector<Said> one(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  switch (param.kind) {
  case shop::Kind::words:
  case shop::Kind::name:
  case shop::Kind::one_of:
  case shop::Kind::yes:
  case shop::Kind::url:
    return recognise_words(param, i, plain, in);
  case shop::Kind::count:
  case shop::Kind::number:
  case shop::Kind::length:
  case shop::Kind::mass:
  case shop::Kind::load:
  case shop::Kind::money:
    return recognise_quantity(param, i, in);
  case shop::Kind::at:
  case shop::Kind::day:
    return recognise_time(param, i, in);
  case shop::Kind::spans:
  case shop::Kind::weekdays:
    return recognise_hours(param, i, plain, in);
  case shop::Kind::slot:
    return recognise_slots(param, i, plain, in);
  case shop::Kind::piece:
    return recognise_piece(param, i, plain, in);
  case shop::Kind::wire:
  case shop::Kind::job:
  case shop::Kind::person:
  case shop::Kind::machine:
  case shop::Kind::receiver:
    return recognise_thing(param, i, plain, in);
  }
  return {};
}

// Past ",", "and", ", and", "&"; i itself where there is none.
std::size_t over_joint(std::size_t i, const Reader& in) {
  std::size_t next = i;
  if (in.is(next, ",")) ++next;
  if (in.any(next, {"and", "&", "plus"})) ++next;
  return next;
}

// A list of lengths takes the unit of its last one for those before it that have none: "51, 50.2 and 49 mm".
void share_unit(std::vector<Said>& items, const std::vector<SaidLength>& lengths, const Reader& in) {
  if (lengths.size() != items.size() || !lengths.back().unit_said) return;
  const Token& last = in.s.tokens[items.back().end - 1];
  if (last.is_number()) return;
  for (std::size_t k = 0; k + 1 < items.size(); ++k) {
    if (lengths[k].unit_said) continue;
    const Token& number = in.s.tokens[items[k].end - 1];
    try {
      auto scanned = units::scan_length(number.number + " " + last.word, in.names.length);
      // "51, 48.5 and 2 1/16 inches": nobody has frets of 51 inches.
      constexpr double longest_shared = 1000;
      if (scanned && scanned->value.mm() <= longest_shared) items[k].value = scanned->value;
    } catch (const units::BadQuantity&) {
      return; // as they stand
    }
  }
}

shop::Value as_list(const std::vector<Said>& items) {
  std::vector<shop::Value> values;
  values.reserve(items.size());
  for (const Said& item : items)
    values.push_back(item.value);
  return shop::list(std::move(values));
}

// "Pieces 79 to 81".
void up_to(std::vector<Said>& items, const Reader& in) {
  const auto* from = std::get_if<shop::Ref>(&items.back().value);
  const std::size_t word = items.back().end;
  const bool dash = in.is(word, "-") && in.at(word)->glued;
  if (from == nullptr || !(dash || in.any(word, {"to", "through", "until", "till"}))) return;
  const auto last = whole(in.at(word + 1));
  const std::int64_t first = from->id;
  if (!last || *last <= first || *last - first > 100) return;
  for (std::int64_t id = first + 1; id <= *last; ++id)
    items.push_back({word + 2, shop::Ref{shop::Thing::piece, id}});
}

// "Two 44s", "two 44 mm pieces", "one 44": how often the length behind it is meant; 1 where no such count
// stands here, 0 where it may be one and does not say so, as in "two 44".
int times_said(std::size_t i, bool first, const Reader& in) {
  constexpr std::int64_t most = 60; // of one length
  const auto n = whole(in.at(i));
  const Token* next = in.at(i + 1);
  if (!n || *n < 1 || *n > most || in.at(i)->ordinal || next == nullptr || !next->is_number() || next->glued)
    return 1;
  if (const auto mixed = length_at(i, in); mixed && mixed->end > i + 1) return 1; // "2 1/4 inch"
  const auto length = length_at(i + 1, in);
  if (!length) return 1;
  const std::size_t end = length->end;
  const bool plural = (in.is(end, "s") && in.at(end)->glued) ||
                      in.any(end, {"pieces", "offcuts", "frets", "ends", "bits", "short", "stick", "pulled"});
  if (plural) return static_cast<int>(*n);
  // Read off one after the other there are more than two, or each is long enough to be one.
  constexpr std::int64_t short_for_a_fret = 12;
  const bool listed = in.at(end) != nullptr && in.at(end)->is_number();
  return !first || listed || *n > short_for_a_fret ? 1 : 0;
}

// The items of a list, one after the other, each the longest that can be; every prefix is a candidate.
std::vector<Said> many(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  std::vector<Said> out, items;
  std::vector<SaidLength> lengths;
  for (std::size_t at = i; items.size() < 200;) {
    // "…and 40.7, one end raw": no length, the way its ends are.
    if (param.kind == shop::Kind::length && !items.empty() && in.is(at, "one")) break;
    // How many there are of a length is said of pieces; widths and places of a board have none.
    const bool pieces = param.kind == shop::Kind::length && param.name == "length";
    const int times = pieces ? times_said(at, items.empty(), in) : 1;
    if (times == 0) break;
    if (pieces && (times > 1 || (in.is(at, "one") && in.at(at + 1) != nullptr && in.at(at + 1)->is_number())))
      ++at;
    const auto found = one(param, at, plain, in);
    if (found.empty() || found.front().end == at) break;
    const auto length = param.kind == shop::Kind::length ? length_at(at, in) : std::nullopt;
    for (int k = 0; k < times; ++k) {
      if (length) lengths.push_back(*length);
      items.push_back(found.front());
    }
    std::size_t end = items.back().end; // past the "s" of "44s", too
    if (times > 1 && in.is(end, "s") && in.at(end)->glued) ++end;
    if (param.kind == shop::Kind::piece) up_to(items, in);
    if (items.back().end > end) end = items.back().end;
    share_unit(items, lengths, in);
    Said so_far{end, as_list(items)};
    for (const Said& item : items) {
      so_far.loose += item.loose, so_far.distance += item.distance, so_far.pointing |= item.pointing;
      if (!item.others.empty() && items.size() == 1) {
        for (const shop::Value& v : item.others)
          so_far.others.push_back(shop::list({v}));
      }
    }
    if (so_far.pointing && items.size() > 1) break;
    out.insert(out.begin(), std::move(so_far));
    at = over_joint(end, in);
    // "Three 38.5s and a 51.2".
    if (param.kind == shop::Kind::length && at > end && in.any(at, {"a", "an"}) && in.at(at + 1) != nullptr &&
        in.at(at + 1)->is_number())
      ++at;
    // Lengths are also read off one after the other: "52.4 51 50.2".
    const bool next_length = param.kind == shop::Kind::length && in.at(at) != nullptr &&
                             in.at(at)->is_number() && !in.at(at)->ordinal;
    if (at == end && !next_length) break;
  }
  return out;
}

} // namespace

std::vector<Said> recognise(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  if (i >= in.size() && param.kind != shop::Kind::yes) return {};
  const bool own_list = param.kind == shop::Kind::slot || param.kind == shop::Kind::weekdays;
  if (!param.many || own_list) return one(param, i, plain, in);
  return many(param, i, plain, in);
}

std::string read_as(const shop::Param& param) {
  using enum shop::Kind;
  std::string out = std::to_string(static_cast<int>(param.kind)) + (param.many ? "*" : "");
  if (param.kind == yes) out += " " + std::string(param.name);
  if (param.kind == at || param.kind == day) {
    const Tense tense = tense_of(param);
    out += std::string(tense.past ? " past" : "") + (tense.ahead ? " ahead" : "") +
           (tense.exact ? " exact" : "");
  }
  // Some are read by their name too: "bar", "owner", "week"; and a year is no "a".
  if (param.kind == words || param.kind == name || param.kind == one_of) out += " " + std::string(param.name);
  if (param.kind == count && param.bounds.least > 1) out += " many";
  for (std::string_view option : param.options)
    out += "|" + std::string(option);
  return out;
}

namespace {

// Once more what was remarked when it was read: of several troubles the first is told.
void remark(const Remarks& said, const Reader& in) {
  if (said.trouble.set() && (said.trouble.first || !in.trouble.set())) in.trouble = said.trouble;
  if (in.name_to == 0 && said.name_to != 0) in.name_from = said.name_from, in.name_to = said.name_to;
}

Reading read_anew(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  Remarks before{std::exchange(in.trouble, {}), std::exchange(in.name_from, 0), std::exchange(in.name_to, 0)};
  Reading out{recognise(param, i, plain, in), {std::move(in.trouble), in.name_from, in.name_to}};
  in.trouble = std::move(before.trouble), in.name_from = before.name_from, in.name_to = before.name_to;
  return out;
}

} // namespace

std::span<const Said> read(int way, const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  const std::size_t row = static_cast<std::size_t>(way) * 4 + (plain ? 1 : 0) + (in.lenient ? 2 : 0);
  std::uint32_t at = in.readings.place(row, i);
  if (at == Readings::unread) {
    Reading reading = read_anew(param, i, plain, in);
    const Remarks& r = reading.remarks;
    const bool nothing = reading.said.empty() && !r.trouble.set() && r.name_to == 0;
    at = nothing ? Readings::nothing : in.readings.keep(std::move(reading));
    in.readings.place(row, i) = at;
  }
  if (at == Readings::nothing) return {};
  remark(in.readings.at(at).remarks, in);
  return in.readings.at(at).said;
}

} // namespace nutward::talk
