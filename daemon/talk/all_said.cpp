// What bounds, counts or excepts what an order is about ("frets 12 and up", "the top 5", "all but 19", "at
// 250 lb per fret"), where the order has but a part of it. Such a part is not done: it would be told as if it
// were all.
#include "talk/understand.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <initializer_list>
#include <set>

namespace nutward::talk {

using What = Understood::What;

namespace {

using Words = std::initializer_list<std::string_view>;

bool among(std::string_view row, Words rows) {
  return std::find(rows.begin(), rows.end(), row) != rows.end();
}

// The one fret that a call is about, by whichever of its parameters; nullopt where there are more, or none.
std::optional<std::int64_t> one_fret_of(const shop::Call& call) {
  for (const char* name : {"slots", "slot", "sprang"}) {
    const shop::Value* v = call.find(name);
    if (v == nullptr) continue;
    if (const auto* n = std::get_if<std::int64_t>(v)) return *n;
    const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(v);
    if (node == nullptr || (*node)->items.size() != 1) continue;
    if (const auto* n = std::get_if<std::int64_t>(&(*node)->items.front())) return *n;
  }
  return std::nullopt;
}

bool number(std::size_t i, const Reader& in) {
  return in.at(i) != nullptr && in.at(i)->is_number();
}

// Of the number at i: what stands before it, past "the fret".
std::size_t before_number(std::size_t i, const Reader& in) {
  while (i > 0 && in.any(i - 1, {"fret", "frets", "slot", "slots", "the", "number"}))
    --i;
  return i;
}

enum class Bound { none, more, others };

// Whether the number at i is one end of more frets, how many there are, or what is left out.
Bound bound_at(std::size_t i, const Reader& in) {
  const std::size_t from = before_number(i, in);
  const auto before = [&](Words words) { return from > 0 && in.any(from - 1, words); };
  if (before({"but", "except", "excepting", "excluding", "without", "below", "above", "beyond", "past",
              "over", "under"}) ||
      (before({"for"}) && from > 1 && in.any(from - 2, {"except", "but"})))
    return Bound::others;
  if (before({"through", "until", "till"}) ||
      (before({"to"}) && from > 1 && (!number(from - 2, in) || (from > 2 && in.is(from - 3, "job")))))
    return Bound::more;
  if (in.any(i + 1, {"upward", "upwards", "onward", "onwards", "downward", "downwards"})) return Bound::more;
  if (in.any(i + 1, {"and", "&", "or"}) &&
      in.any(i + 2, {"up", "above", "below", "down", "over", "under", "higher", "lower", "beyond", "upward",
                     "upwards", "onward", "onwards", "on", "following"}))
    return Bound::more;
  if (before({"from"}) && in.any(i + 1, {"on", "up", "down"}) && !in.any(i + 2, {"job", "the", "my"}))
    return Bound::more;
  const bool bare = from == i || !in.any(i - 1, {"fret", "frets", "slot", "slots"});
  const std::size_t next = in.is(i + 1, "more") ? i + 2 : i + 1;
  const bool counted = in.any(next, {"frets", "slots"}) ||
                       before({"top", "bottom", "first", "last", "highest", "lowest", "another"});
  return bare && counted && !in.at(i)->ordinal ? Bound::more : Bound::none;
}

Bound bound_of(const shop::Call& call, const Reader& in) {
  if (!among(call.row, {"pressed", "press", "levelled", "reseated", "glued", "cut-new", "cut-from", "remade",
                        "lost", "rechecked"}))
    return Bound::none;
  // "All stayed down but 12" says which sprang, "glued under 9" where the glue is.
  const bool others = !among(call.row, {"rechecked", "glued"});
  const auto fret = one_fret_of(call);
  for (std::size_t i = 0; fret && i < in.size(); ++i) {
    if (whole(in.at(i)) != *fret) continue;
    const Bound b = bound_at(i, in);
    if (b == Bound::more || (b == Bound::others && others)) return b;
  }
  return Bound::none;
}

// "Pass 3", "the first three passes": no frets of these numbers.
bool counts_passes(const shop::Call& call, const Reader& in) {
  if (!among(call.row, {"pressed", "press"}) || call.find("slots") == nullptr) return false;
  for (std::size_t i = 0; i < in.size(); ++i) {
    if (!number(i, in)) continue;
    const bool range = in.any(i + 1, {"-", "to"}) && number(i + 2, in);
    if (in.is(i + 1, "passes") || (i > 0 && in.is(i - 1, "passes")) ||
        (i > 0 && in.is(i - 1, "pass") && !range) || (in.is(i + 1, "pass") && in.at(i)->ordinal))
      return true;
  }
  return false;
}

bool is_load_unit(std::size_t i, const Reader& in) {
  return in.any(i, {"lb", "lbs", "pound", "pounds", "n", "kn", "kg", "kgf"});
}

// "250 lb per fret", "under 1500 lb": not the load of the pass, or not just that.
bool qualifies_load(const shop::Call& call, const Reader& in) {
  if (call.row != "pressed" || call.find("load") == nullptr) return false;
  for (std::size_t i = 1; i < in.size(); ++i) {
    const bool each = in.any(i, {"per", "a", "each", "every"}) && in.is(i + 1, "fret");
    if (each && (number(i - 1, in) || is_load_unit(i - 1, in))) return true;
    if (number(i, in) && is_load_unit(i + 1, in) &&
        in.any(i - 1, {"under", "below", "over", "above", "beyond", "least", "most", "than", "nearly"}))
      return true;
  }
  return false;
}

// "Hold piece 6 and 7", "50.2 x 3", "at least 5 sticks", "at 2.10 a stick".
bool of_part(const shop::Call& call, const Reader& in) {
  bool says_slot = false;
  for (std::size_t i = 0; i < in.size(); ++i)
    says_slot = says_slot || in.any(i, {"slot", "slots", "fret", "frets"});
  const auto slot = call.row == "hold" && !says_slot ? one_fret_of(call) : std::nullopt;
  for (std::size_t i = 1; i < in.size(); ++i) {
    if (slot && i > 1 && whole(in.at(i)) == *slot && in.any(i - 1, {"and", "&", ",", "to", "-", "or"}) &&
        number(i - 2, in))
      return true;
    if (call.row == "add" && call.find("count") == nullptr && in.any(i, {"x", "times", "×"}) &&
        number(i - 1, in) && number(i + 1, in))
      return true;
    if (call.row == "count" && in.is(i - 1, "at") && in.any(i, {"least", "most"})) return true;
    const bool one = in.any(i, {"a", "per"}) && in.any(i + 1, {"stick", "coil", "spool", "roll", "rod"});
    if (among(call.row, {"ordered", "receive"}) && call.find("price") != nullptr && one &&
        (number(i - 1, in) || !currency_word(in.s.tokens[i - 1].word).empty()))
      return true;
  }
  return false;
}

bool is_month(std::size_t i, const Reader& in) {
  return in.any(i, {"january",   "february", "march",    "april",    "may", "june", "july", "august",
                    "september", "october",  "november", "december", "jan", "feb",  "mar",  "apr",
                    "jun",       "jul",      "aug",      "sep",      "oct", "nov",  "dec"});
}

// "From 24 to 26 december" of which one day was taken; "friday and monday", which are two days and not four.
bool of_days(const shop::Call& call, const Reader& in) {
  if (!among(call.row, {"close-day", "open-extra", "day-off", "day-on"})) return false;
  const shop::Value *day = call.find("day"), *last = call.find("last");
  bool range = false, both = false;
  for (std::size_t i = 0; i < in.size(); ++i) {
    range = range || in.any(i, {"to", "till", "until", "through", "-", "from"});
    both = both || in.is(i, "and");
    if (last != nullptr) continue;
    const bool hours = call.find("begins") != nullptr || call.find("until") != nullptr;
    if (in.is(i, "between") && !hours) return true;
    if (number(i, in) && in.any(i + 1, {"to", "-", "till", "until", "through"}) && number(i + 2, in) &&
        is_month(i + 3, in))
      return true;
  }
  const auto* a = day == nullptr ? nullptr : std::get_if<units::Day>(day);
  const auto* b = last == nullptr ? nullptr : std::get_if<units::Day>(last);
  return a != nullptr && b != nullptr && both && !range && *b - *a > 1;
}

// "Bent, then cut job 4", "everything up to seating": of more than one stage.
bool of_stages(const shop::Call& call, const Reader& in) {
  if (call.row != "finished") return false;
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 28> deeds{
      {{"pulled", "pull"},     {"pulling", "pull"},     {"trued", "true"},     {"truing", "true"},
       {"cleaned", "slots"},   {"cleaning", "slots"},   {"bent", "bend"},      {"bending", "bend"},
       {"cut", "cut"},         {"cutting", "cut"},      {"dressed", "dress"},  {"dressing", "dress"},
       {"nipped", "nip"},      {"nipping", "nip"},      {"seated", "seat"},    {"seating", "seat"},
       {"hammered", "seat"},   {"hammering", "seat"},   {"levelled", "level"}, {"levelling", "level"},
       {"crowned", "crown"},   {"crowning", "crown"},   {"filed", "file"},     {"filing", "file"},
       {"polished", "polish"}, {"polishing", "polish"}, {"pressed", "press"},  {"pressing", "press"}}};
  std::set<std::string_view> stages;
  for (std::size_t i = 0; i < in.size(); ++i) {
    const auto deed =
        std::find_if(deeds.begin(), deeds.end(), [&](const auto& d) { return in.is(i, d.first); });
    const bool adjective = i > 0 && in.any(i - 1, {"the", "a", "all", "old", "new", "my"});
    if (deed != deeds.end() && !adjective) stages.insert(deed->second);
    if (in.is(i, "up") && in.is(i + 1, "to")) return true;
  }
  return stages.size() > 1;
}

// "Job 2 waits for job 1 and 4": the 4 waits for nobody.
bool of_waiting(const Understood& out, const Reader& in) {
  if (out.calls.front().row != "after") return false;
  if (!in.s.asks && !out.then.empty() && out.then.front().row == "job") return true;
  if (out.calls.size() < 2 || out.calls[1].row != "after") return false;
  const shop::Value *a = out.calls[0].find("other"), *b = out.calls[1].find("other");
  const auto* job = std::get_if<shop::Ref>(out.calls[1].find("job"));
  if (a == nullptr || b == nullptr || job == nullptr || !(*a == *b)) return false;
  for (std::size_t i = in.size(); i-- > 0;)
    if (number(i, in)) return whole(in.at(i)) == job->id;
  return false;
}

// "Ordered 24 sticks, should be here next thursday": asks for no opening hours.
bool of_coming(const Understood& out, const Reader& in) {
  return out.calls.front().row == "ordered" && !in.s.asks &&
         std::any_of(out.then.begin(), out.then.end(), [](const shop::Call& c) { return c.row == "hours"; });
}

} // namespace

std::optional<Understood> not_all_of_it(const Understood& out, const Reader& in, const Surroundings& at) {
  if (out.calls.empty() || out.what == What::tell) return std::nullopt;
  Bound bound = Bound::none;
  bool part = false;
  for (const shop::Call& call : out.calls) {
    if (bound == Bound::none) bound = bound_of(call, in);
    part = part || counts_passes(call, in);
    if (out.what == What::order)
      part = part || qualifies_load(call, in) || of_part(call, in) || of_days(call, in) ||
             (out.calls.size() == 1 && of_stages(call, in));
  }
  if (out.what == What::order) part = part || of_waiting(out, in) || of_coming(out, in);
  if (bound == Bound::none && !part) return std::nullopt;
  // What is left out is not offered: it is the one that was not meant.
  if (bound == Bound::others || out.what == What::ask)
    return tell("unclear",
                "Nothing was done: a word of that says which others are meant, or how many. Say each "
                "by its number or as a range, such as 1-12.");
  return offer(
      "Nothing was done yet: that seems to say more than I take of it. Pick 1 if this is all; else say "
      "each of them, such as 1-12.",
      out.calls, at);
}

} // namespace nutward::talk
