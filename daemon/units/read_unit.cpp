#include "units/read_unit.hpp"

#include "units/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <span>

namespace nutward::units {
namespace {

struct Named {
  std::string_view word; // lower case, unless `exact`
  Scale scale;
  bool exact = false; // the case matters
};

// Exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s² (NIST SP 811, from memory).
constexpr Scale mm{1'000'000}, cm{10'000'000}, m{1'000'000'000}, um{1'000}, thou{25'400};
constexpr std::array lengths{
    Named{"mm", mm},          Named{"millimetre", mm},   Named{"millimetres", mm},
    Named{"millimeter", mm},  Named{"millimeters", mm},  Named{"cm", cm},
    Named{"centimetre", cm},  Named{"centimetres", cm},  Named{"centimeter", cm},
    Named{"centimeters", cm}, Named{"m", m, true},       Named{"metre", m},
    Named{"metres", m},       Named{"meter", m},         Named{"meters", m},
    Named{"in", inch_scale},  Named{"inch", inch_scale}, Named{"inches", inch_scale},
    Named{"ft", foot_scale},  Named{"foot", foot_scale}, Named{"feet", foot_scale},
    Named{"thou", thou},      Named{"um", um},           Named{"µm", um},
    Named{"μm", um},          Named{"micron", um},       Named{"microns", um},
};

constexpr Scale n1{1}, kn{1000}, lbf{44'482'216'152'605, 10'000'000'000'000}, kgf{980'665, 100'000};
constexpr Scale tonne_force{980'665, 100}, short_ton_force{8'896'443'230'521, 1'000'000'000};
constexpr Scale long_ton_force{996'401'641'818'352, 100'000'000'000};
constexpr std::array forces{
    Named{"n", n1},
    Named{"newton", n1},
    Named{"newtons", n1},
    Named{"kn", kn},
    Named{"kilonewton", kn},
    Named{"kilonewtons", kn},
    Named{"lb", lbf},
    Named{"lbs", lbf},
    Named{"lbf", lbf},
    Named{"pound", lbf},
    Named{"pounds", lbf},
    Named{"kg", kgf},
    Named{"kgs", kgf},
    Named{"kgf", kgf},
    Named{"kilogram", kgf},
    Named{"kilograms", kgf},
    Named{"kilo", kgf},
    Named{"kilos", kgf},
    Named{"tonne", tonne_force},
    Named{"tonnes", tonne_force},
    Named{"metric ton", tonne_force},
    Named{"metric tons", tonne_force},
    Named{"short ton", short_ton_force},
    Named{"short tons", short_ton_force},
    Named{"long ton", long_ton_force},
    Named{"long tons", long_ton_force},
};

constexpr Scale mg{1}, g{1000}, kg{1'000'000}, oz{45'359'237, 1600}, lb{45'359'237, 100},
    tonne{1'000'000'000};
constexpr Scale short_ton{45'359'237LL * 20}, long_ton{45'359'237LL * 224, 10};
constexpr std::array masses{
    Named{"mg", mg, true},
    Named{"milligram", mg},
    Named{"milligrams", mg},
    Named{"g", g},
    Named{"gram", g},
    Named{"grams", g},
    Named{"gramme", g},
    Named{"grammes", g},
    Named{"kg", kg},
    Named{"kgs", kg},
    Named{"kilogram", kg},
    Named{"kilograms", kg},
    Named{"kilo", kg},
    Named{"kilos", kg},
    Named{"oz", oz},
    Named{"ounce", oz},
    Named{"ounces", oz},
    Named{"lb", lb},
    Named{"lbs", lb},
    Named{"pound", lb},
    Named{"pounds", lb},
    Named{"tonne", tonne},
    Named{"tonnes", tonne},
    Named{"metric ton", tonne},
    Named{"metric tons", tonne},
    Named{"short ton", short_ton},
    Named{"short tons", short_ton},
    Named{"long ton", long_ton},
    Named{"long tons", long_ton},
};

std::span<const Named> table_of(Kind kind) {
  switch (kind) {
  case Kind::length:
    return lengths;
  case Kind::force:
    return forces;
  case Kind::mass:
    break;
  }
  return masses;
}

// A single letter of another kind counts only as its symbol is written: `3 G strings` are not grams.
std::optional<Scale> look_up(Kind kind, std::string_view word, bool symbols_as_written) {
  const auto lower = lower_ascii(word);
  for (const Named& unit : table_of(kind)) {
    if (unit.word != (unit.exact ? word : lower)) continue;
    const bool as_written = word.size() > 1 || word == (unit.word == "n" ? "N" : unit.word);
    if (as_written || !symbols_as_written) return unit.scale;
  }
  return std::nullopt;
}

constexpr auto go_on_about_a_size = std::to_array<std::string_view>(
    {"of",           "from",     "by",     "at",    "and",    "or",     "x",      "to",    "for",
     "than",         "per",      "plus",   "minus", "with",   "on",     "is",     "are",   "was",
     "wide",         "long",     "deep",   "high",  "tall",   "thick",  "across", "apart", "short",
     "shorter",      "longer",   "proud",  "under", "over",   "radius", "scale",  "bar",   "bars",
     "sole",         "stick",    "sticks", "coil",  "length", "fret",   "frets",  "piece", "pieces",
     "wire",         "board",    "left",   "spare", "offcut", "end",    "ends",   "blank", "blanks",
     "straightedge", "overhang", "crown",  "tang",  "gap",    "off",    "more",   "less"});

constexpr auto are_places_or_times = std::to_array<std::string_view>(
    {"slot",     "slots",  "job",     "jobs",  "the",  "a",      "an",      "this",      "that",     "these",
     "those",    "my",     "our",     "your",  "his",  "her",    "their",   "its",       "it",       "there",
     "any",      "all",    "each",    "every", "some", "which",  "what",    "stock",     "queue",    "tin",
     "tins",     "box",    "drawer",  "bin",   "hand", "place",  "order",   "total",     "turn",     "use",
     "case",     "one",    "two",     "three", "four", "five",   "six",     "seven",     "eight",    "nine",
     "ten",      "eleven", "twelve",  "half",  "time", "monday", "tuesday", "wednesday", "thursday", "friday",
     "saturday", "sunday", "minutes", "hours", "days", "weeks"});

template <std::size_t N>
bool holds(const std::array<std::string_view, N>& words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

enum class In { inches, word, unsure };

// What an `in` is, from the text that begins right behind it.
In judge_in(std::string_view text, std::size_t behind) {
  const std::size_t next = skip_spaces(text, behind);
  const auto c = utf8_at(text, next);
  if (c.bytes == 0) return In::inches;
  const auto word = word_at(text, next);
  if (word.empty()) {
    const bool punctuation =
        c.ok && std::u32string_view(U",.;:?!)]-–—×*+=&\n\r").find(c.code) != std::u32string_view::npos;
    return next == behind || punctuation ? In::inches : In::unsure;
  }
  const auto lower = lower_ascii(word);
  if (is_digit(c.code) || holds(are_places_or_times, lower)) return In::word;
  return holds(go_on_about_a_size, lower) ? In::inches : In::unsure;
}

bool is_inches(std::string_view text, std::size_t at, std::size_t behind, const Number& n,
               bool bare_is_inch) {
  const In in = judge_in(text, behind);
  const bool odd = in == In::unsure || (in == In::word && n.fraction);
  if (odd && !bare_is_inch)
    refuse(fmt::format("It is not clear whether “in” means inches in {}.", quoted(text.substr(at))), at,
           "Write inches for the unit, or mm behind the number if it is not.");
  return in == In::inches;
}

// `"`, `″`, `''` for inches and `'`, `′` for feet, glued to the number, and the quotes that telephones make
// of them. `9's` is not nine feet.
Unit symbol_at(std::string_view text, std::size_t at) {
  const auto is_foot = [](char32_t c) { return c == U'\'' || c == U'\u2032' || c == U'\u2019'; };
  const auto c = utf8_at(text, at);
  const std::size_t next = at + c.bytes;
  if (!c.ok || c.bytes == 0) return {};
  if (c.code == U'"' || c.code == U'\u2033' || c.code == U'\u201d')
    return {Unit::Found::unit, inch_scale, next};
  if (!is_foot(c.code)) return {};
  const auto second = utf8_at(text, next);
  if (second.ok && is_foot(second.code)) return {Unit::Found::unit, inch_scale, next + second.bytes};
  if (second.ok && is_word(second.code) && !is_digit(second.code)) return {};
  return {Unit::Found::unit, foot_scale, next};
}

void refuse_powers_and_rates(std::string_view text, std::size_t at, std::size_t end, Kind kind) {
  const auto c = utf8_at(text, end);
  const bool rate = c.code == U'/' && !word_at(text, end + 1).empty();
  const bool power = c.ok && (c.code == U'²' || c.code == U'³' || c.code == U'^');
  if (c.bytes != 0 && (rate || power))
    refuse(fmt::format("{} is not a unit of {}.", quoted(text.substr(at)), name_of(kind).substr(2)), end,
           fmt::format("Give {} such as {}.", name_of(kind), example_of(kind)));
}

// A full stop belongs to an abbreviation (`2 in. of medium`) if the sentence goes on behind it or the text
// ends.
std::size_t take_stop(std::string_view text, std::size_t end, std::string_view word) {
  constexpr std::array<std::string_view, 5> abbreviations{"in", "ft", "lb", "lbs", "oz"};
  if (end >= text.size() || text[end] != '.' || !holds(abbreviations, lower_ascii(word))) return end;
  const std::size_t next = skip_spaces(text, end + 1);
  if (next >= text.size()) return end + 1;
  const auto c = static_cast<unsigned char>(text[next]);
  const bool goes_on = next > end + 1 && ((c >= 'a' && c <= 'z') || is_digit(c));
  return goes_on ? end + 1 : end;
}

// `short ton`, `metric tons`: the word at `at` together with the one behind it.
std::string_view with_ton(std::string_view text, std::size_t at, std::string_view word) {
  constexpr std::array<std::string_view, 3> which{"short", "long", "metric"};
  if (!holds(which, lower_ascii(word))) return word;
  const auto second = word_at(text, skip_spaces(text, at + word.size()));
  const auto lower = lower_ascii(second);
  if (lower != "ton" && lower != "tons") return word;
  return text.substr(at, static_cast<std::size_t>(second.data() + second.size() - text.data()) - at);
}

// Lower case, single blanks: `Short  tons` is `short tons`.
std::string key_of(std::string_view word) {
  const auto first = word_at(word, 0);
  if (first.size() == word.size()) return std::string{word};
  return lower_ascii(first) + " " + lower_ascii(word_at(word, skip_spaces(word, first.size())));
}

void ask_about_ambiguous(std::string_view word, std::size_t at, Kind kind) {
  const auto lower = lower_ascii(word);
  if (kind != Kind::length && (lower == "ton" || lower == "tons" || word == "t"))
    refuse(fmt::format("{} may be a short ton (2000 lb), a long ton (2240 lb) or a metric one (1000 kg).",
                       quoted(word)),
           at, "Write short ton, long ton or tonne; or give the figure in lb, kg or kN.");
  if (kind == Kind::mass && lower == "mg" && word != "mg")
    refuse(fmt::format("{} may be milligrams or a metric ton.", quoted(word)), at, "Write mg or tonne.");
  if (kind == Kind::length && (lower == "mil" || lower == "mils"))
    refuse(fmt::format("{} may be thousandths of an inch or millimetres.", quoted(word)), at,
           "Write thou or mm.");
}

void refuse_other_kinds(std::string_view word, std::size_t at, Kind kind) {
  const auto key = key_of(word);
  std::string others; // kg and lb are both a force and a mass
  for (const Kind other : {Kind::length, Kind::force, Kind::mass}) {
    const bool ton = other != Kind::length && (key == "ton" || key == "tons");
    if (other == kind || !(ton || look_up(other, key, true))) continue;
    others += (others.empty() ? "" : " or ") + std::string(name_of(other).substr(2));
  }
  if (others.empty()) return;
  refuse(fmt::format("{} is a unit of {}, and {} is wanted here.", quoted(word), others, name_of(kind)), at,
         fmt::format("Give {} such as {}.", name_of(kind), example_of(kind)));
}

} // namespace

std::string_view name_of(Kind kind) {
  switch (kind) {
  case Kind::length:
    return "a length";
  case Kind::force:
    return "a force";
  case Kind::mass:
    break;
  }
  return "a mass";
}

std::string_view example_of(Kind kind) {
  switch (kind) {
  case Kind::length:
    return "52.4 mm or 2 1/16 in";
  case Kind::force:
    return "400 lb or 1.8 kN";
  case Kind::mass:
    break;
  }
  return "310 g or 2 oz";
}

Unit scan_unit(std::string_view text, const Number& n, Kind kind, Scale bare) {
  const Unit none{Unit::Found::none, bare, n.end};
  if (const Unit symbol = symbol_at(text, n.end); symbol.found == Unit::Found::unit) {
    if (kind != Kind::length)
      refuse(fmt::format("Inches or feet are a length, and {} is wanted here.", name_of(kind)), n.end,
             fmt::format("Give {} such as {}.", name_of(kind), example_of(kind)));
    return symbol;
  }
  const bool hyphen = n.end < text.size() && text[n.end] == '-';
  const std::size_t at = hyphen ? n.end + 1 : skip_spaces(text, n.end);
  const auto word = with_ton(text, at, word_at(text, at));
  const bool glued = at == n.end;
  if (word.empty()) return none;
  if (glued && (word[0] == 'x' || word[0] == 'X') &&
      (word.size() == 1 || is_digit(static_cast<unsigned char>(word[1]))))
    return none; // `50x43`, `3x 52.4`
  ask_about_ambiguous(word, at, kind);
  const std::size_t behind = at + word.size();
  if (lower_ascii(word) == "in" && at == skip_spaces(text, n.end) && !glued &&
      !is_inches(text, at, behind, n, kind != Kind::length || bare == inch_scale))
    return none;
  if (const auto scale = look_up(kind, key_of(word), false)) {
    refuse_powers_and_rates(text, at, behind, kind);
    return {Unit::Found::unit, *scale, take_stop(text, behind, word)};
  }
  refuse_other_kinds(word, at, kind);
  return {glued ? Unit::Found::strange : Unit::Found::none, bare, n.end};
}

} // namespace nutward::units
