// "slot 3", "the third slot", "9-14", "9 to 14", "9, 10 and 12".
#include "talk/recognise.hpp"

namespace nutward::talk {
namespace {

constexpr std::int64_t last_slot = 48;

bool noun(std::size_t i, const Reader& in) {
  return in.any(i, {"slot", "slots", "fret", "frets", "crown", "crowns", "groove", "grooves", "#"});
}

// "number 9", "no. 9": the token of the number itself.
std::size_t past_number(std::size_t i, const Reader& in) {
  if (in.any(i, {"number", "numbers"}) && in.at(i + 1) != nullptr && in.at(i + 1)->is_number()) return i + 1;
  const std::size_t next = in.is(i, "no") && in.is(i + 1, ".") ? i + 2 : i;
  return next > i && in.at(next) != nullptr && in.at(next)->is_number() ? next : i;
}

// "The second look", "third pass", "the high one": no number of a slot.
bool counts_something_else(std::size_t i, const Reader& in) {
  if (in.at(i)->ordinal)
    return in.any(i + 1, {"look", "looks", "time", "pass", "passes", "control", "check", "recheck", "glance",
                          "gander", "hand", "job", "opinion", "stage", "step", "go"});
  if (!in.is(i, "one")) return false;
  return i > 0 && !noun(i - 1, in) &&
         !in.any(i - 1, {"number", "to", "-", "from", "and", "&", ",", "at", "on", "in", "under", "through",
                         "slot"}) &&
         !in.any(i + 1, {"to", "-", "through", "thru", "and", "&"});
}

// A slot beyond any board is one where the word says so: the shop then tells what is wrong with it.
std::optional<std::int64_t> number(std::size_t i, const Reader& in, bool surely = false) {
  auto n = whole(in.at(i));
  surely = surely || (i > 0 && noun(i - 1, in));
  if (n && !surely && counts_something_else(i, in)) return std::nullopt;
  if (!n || *n > (surely ? 999 : last_slot)) return std::nullopt;
  // 12/3 is job 12, slot 3: its first number is no slot. 15:00 is a time.
  if ((in.is(i + 1, "/") || in.is(i + 1, ":")) && whole(in.at(i + 2))) return std::nullopt;
  // "And 1 31/32" is a length.
  if (!surely && whole(in.at(i + 1)) && in.is(i + 2, "/") && in.at(i + 2)->glued && whole(in.at(i + 3)))
    return std::nullopt;
  // "The twelve-string" is an instrument.
  const Token* joined = in.is(i + 1, "-") ? in.at(i + 2) : nullptr;
  if (joined != nullptr && joined->is("string")) return std::nullopt;
  return n;
}

// One slot or a range; the slots in the order said.
std::optional<std::pair<std::vector<std::int64_t>, std::size_t>> range(std::size_t i, const Reader& in) {
  if (in.is(i, "from")) ++i;
  if (noun(i, in)) ++i;
  i = past_number(i, in);
  if (in.is(i, "the") && in.at(i + 1) != nullptr && in.at(i + 1)->ordinal) ++i;
  auto low = number(i, in);
  if (!low) return std::nullopt;
  std::size_t end = i + 1, next = end;
  if (in.is(next, "down") || (in.is(next, "up") && in.is(next + 1, "to"))) ++next;
  if (in.any(next, {"-", "to", "through", "thru", "until", "till"})) {
    ++next;
    if (noun(next, in)) ++next;
    if (in.is(next, "the") && in.at(next + 1) != nullptr && in.at(next + 1)->ordinal) ++next;
    if (auto high = number(next, in, true)) {
      std::vector<std::int64_t> out;
      const std::int64_t step = *high < *low ? -1 : 1;
      for (std::int64_t s = *low; s != *high + step; s += step)
        out.push_back(s);
      return std::pair{std::move(out), next + 1};
    }
  }
  return std::pair{std::vector{*low}, end};
}

// "the next one", "the slot before that".
std::optional<Said> next_or_before(std::size_t i, const Reader& in) {
  const auto one = [&](std::size_t at) { return in.any(at, {"one", "slot", "fret"}); };
  Said out;
  out.pointing = true;
  if (in.any(i, {"next", "following", "previous"}) && one(i + 1)) {
    out.end = i + 2, out.step = in.is(i, "previous") ? -1 : 1;
    return out;
  }
  if (!one(i) || !in.any(i + 1, {"before", "after"})) return std::nullopt;
  out.end = in.any(i + 2, {"that", "it", "this"}) ? i + 3 : i + 2;
  out.step = in.is(i + 1, "before") ? -1 : 1;
  return out;
}

// `plain`: behind the parameter's own name, ", slots" and ", zero fret" begin the next parameter.
std::vector<Said> list(std::size_t i, bool plain, const Reader& in) {
  std::vector<Said> out;
  std::vector<shop::Value> slots;
  if (in.any(i, {"all", "first"})) { // "all 22", "the first three"
    const auto n = whole(in.at(i + 1));
    if (n && *n >= 1 && *n <= last_slot && !in.at(i + 1)->ordinal) {
      for (std::int64_t s = 1; s <= *n; ++s)
        slots.emplace_back(s);
      return {Said{noun(i + 2, in) ? i + 3 : i + 2, shop::list(std::move(slots))}};
    }
  }
  bool joined = false; // by "and" alone to what stands before it
  for (std::size_t at = i; slots.size() <= 100;) {
    auto part = range(at, in);
    if (!part) break;
    for (std::int64_t s : part->first)
      slots.emplace_back(s);
    std::size_t end = part->second;
    if (noun(end, in) && !slots.empty()) ++end;
    // "Five and six sprang": no list ends inside it.
    if (joined && !out.empty() && !in.any(end, {"frets", "mm", "in", "inch", "lb", "n", "kn"}))
      out.erase(out.begin());
    out.insert(out.begin(), Said{end, shop::list(slots)});
    at = end;
    const bool zero_fret = whole(in.at(at + 1)) == 0 && noun(at + 2, in);
    if (plain && in.is(at, ",") && (noun(at + 1, in) || zero_fret)) break;
    if (in.is(at, ",")) ++at;
    joined = at == end && in.any(at, {"and", "&"});
    if (in.any(at, {"and", "&"})) ++at;
    if (at == end) break;
  }
  return out;
}

} // namespace

std::vector<Said> recognise_slots(const shop::Param& param, std::size_t i, bool plain, const Reader& in) {
  const std::size_t first = in.is(i, "the") ? i + 1 : i;
  if (in.any(first, {"that", "this", "same"}) && noun(first + 1, in)) return {{first + 2, {}, {}, true}};
  if (auto beside = next_or_before(first, in); beside && !param.many) return {*beside};
  if (param.many) return list(first, plain, in);
  const bool named = noun(first, in);
  const std::size_t at = named ? first + 1 : first;
  if (named && in.is(at, "number")) return recognise_slots(param, at + 1, plain, in);
  if (const std::size_t past = past_number(at, in); past > at) {
    auto counted = number(past, in);
    return counted ? std::vector<Said>{{past + 1, *counted}} : std::vector<Said>{};
  }
  auto n = number(at, in);
  if (!n) return {};
  std::vector<Said> out;
  if (!named && noun(at + 1, in)) out.push_back({at + 2, *n});
  out.push_back({at + 1, *n});
  return out;
}

} // namespace nutward::talk
