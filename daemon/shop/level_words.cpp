#include "shop/level_words.hpp"

#include "shop/bench.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::shop {

namespace {

using level::Explanation;
using level::LineFinding;
using level::Off;
using level::Way;

constexpr std::array<std::string_view, 3> line_words{"bass", "middle", "treble"};
constexpr std::array<std::string_view, 6> finding_words{"unread", "level", "bow",
                                                        "frets",  "many",  "contradiction"};
constexpr std::size_t most_named = 6; // alternatives of one list

bool has(const Explanation& e, const Off& off) {
  return std::any_of(e.parts.begin(), e.parts.end(), [&](const level::Amount& a) { return a.off == off; });
}

std::string is_off(const Off& off) {
  if (!off.slot) return off.way == Way::high ? "the neck is humped" : "the neck has relief";
  return fmt::format("{} is {}", *off.slot, word_of(off.way));
}

std::vector<Off> offs_of(const Explanation& e) {
  std::vector<Off> out;
  for (const level::Amount& a : e.parts)
    out.push_back(a.off);
  return out;
}

bool alike(const Off& a, const Off& b) {
  return a.slot.has_value() && b.slot.has_value() && a.way == b.way;
}

// "13 is high, or 12 or 14 low": of one of these.
std::string one_of_words(std::vector<Off> offs) {
  const std::size_t more = offs.size() > most_named ? offs.size() - most_named : 0;
  offs.resize(offs.size() - more);
  std::string out;
  for (std::size_t i = 0; i < offs.size();) {
    std::vector<std::string> slots;
    std::size_t end = i;
    for (; end < offs.size() && (end == i || alike(offs[i], offs[end])); ++end)
      slots.push_back(offs[end].slot ? std::to_string(*offs[end].slot) : "");
    if (!offs[i].slot)
      out += i == 0 ? is_off(offs[i]) : ", or " + words_of(offs[i]);
    else if (i == 0)
      out += fmt::format("{} is {}", joined(slots, " or "), word_of(offs[i].way));
    else
      out += fmt::format(", or {} {}", joined(slots, " or "), word_of(offs[i].way));
    i = end;
  }
  return more == 0 ? out : out + ", or one of " + plural(static_cast<std::int64_t>(more), "other");
}

// Without what all have in common.
std::vector<Off> besides(const Explanation& e, const std::vector<Off>& agreed) {
  std::vector<Off> out;
  for (const Off& off : offs_of(e)) {
    if (std::find(agreed.begin(), agreed.end(), off) == agreed.end()) out.push_back(off);
  }
  return out;
}

// "3 high and 9 low; or 4 high and 9 low": where no lists of alternatives say it shorter.
std::string each_words(const LineFinding& f) {
  std::vector<std::string> parts;
  for (std::size_t i = 0; i < f.explanations.size() && i < 3; ++i)
    parts.push_back(words_of(besides(f.explanations[i], f.agreed)));
  const std::size_t more = f.explanations.size() - parts.size();
  std::string out = fmt::format("{}", fmt::join(parts, "; or "));
  if (more > 0) out += "; or one of " + plural(static_cast<std::int64_t>(more), "other");
  return out;
}

// "the neck is humped, 7 and 13 are high and 16 is low"
std::string agreed_words(const std::vector<Off>& agreed) {
  std::vector<std::string> parts;
  for (const Off& off : agreed) {
    if (!off.slot) parts.push_back(is_off(off));
  }
  for (const Way way : {Way::high, Way::low}) {
    std::vector<int> slots;
    for (const Off& off : agreed) {
      if (off.slot && off.way == way) slots.push_back(*off.slot);
    }
    std::sort(slots.begin(), slots.end());
    std::vector<std::string> said;
    said.reserve(slots.size());
    for (const int slot : slots)
      said.push_back(std::to_string(slot));
    if (!said.empty())
      parts.push_back(fmt::format("{} {} {}", joined(said), said.size() == 1 ? "is" : "are", word_of(way)));
  }
  return joined(parts);
}

// Offs that are in no explanation but those that are all but ruled out; none where all explanations are.
std::vector<Off> unlikely(const LineFinding& f) {
  std::vector<Off> out;
  if (std::all_of(f.explanations.begin(), f.explanations.end(),
                  [](const Explanation& e) { return e.barely; }))
    return out;
  for (const Explanation& e : f.explanations) {
    for (const Off& off : offs_of(e)) {
      const bool likely = std::any_of(f.explanations.begin(), f.explanations.end(),
                                      [&](const Explanation& o) { return !o.barely && has(o, off); });
      if (!likely && std::find(out.begin(), out.end(), off) == out.end()) out.push_back(off);
    }
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::vector<Off> without(std::vector<Off> list, const std::vector<Off>& out) {
  std::erase_if(list, [&](const Off& off) { return std::find(out.begin(), out.end(), off) != out.end(); });
  return list;
}

} // namespace

std::string joined(const std::vector<std::string>& parts, std::string_view last) {
  std::string out;
  for (std::size_t i = 0; i < parts.size(); ++i)
    out += (i == 0 ? "" : i + 1 == parts.size() ? std::string(last) : std::string(", ")) + parts[i];
  return out;
}

std::string_view word_of(level::Line line) {
  return line_words.at(static_cast<std::size_t>(line));
}
std::string_view word_of(level::Finding finding) {
  return finding_words.at(static_cast<std::size_t>(finding));
}
std::string_view word_of(Way way) {
  return way == Way::high ? "high" : "low";
}

std::string along_words(const std::vector<level::Line>& lines) {
  if (lines.size() == level::all_lines.size()) return "all three lines";
  std::vector<std::string> parts;
  parts.reserve(lines.size());
  for (const level::Line line : lines)
    parts.push_back(fmt::format("the {}", word_of(line)));
  return joined(parts);
}

std::string words_of(const level::Span& span) {
  return fmt::format("{}-{}", span.from, span.to);
}

std::string words_of(const Off& off) {
  if (!off.slot) return off.way == Way::high ? "the neck humped" : "the neck in relief";
  return fmt::format("{} {}", *off.slot, word_of(off.way));
}

std::string words_of(const std::vector<Off>& offs) {
  std::vector<std::string> parts;
  parts.reserve(offs.size());
  for (const Off& off : offs)
    parts.push_back(words_of(off));
  return joined(parts);
}

std::string words_of(const level::Amount& amount, const Setup& set) {
  const auto length = [&](double mm) { return say(Length{static_cast<std::int64_t>(mm * 1e6)}, set); };
  if (amount.most >= level::most_amount) return fmt::format("by {} or more", length(amount.least));
  const std::string least = length(amount.least), most = length(amount.most);
  return least == most ? "by " + least : fmt::format("by {} to {}", least, most);
}

std::string offs_words(const Explanation& one, const Setup& set) {
  std::vector<std::string> parts;
  parts.reserve(one.parts.size());
  for (const level::Amount& a : one.parts)
    parts.push_back(words_of(a.off) + " " + words_of(a, set));
  return joined(parts);
}

std::string words_of(const level::Reading& r) {
  std::string out;
  const auto tell = [&](std::string part) { out += (out.empty() ? "" : ", ") + std::move(part); };
  if (r.felt != level::Felt::not_laid) {
    tell(fmt::format("{} {}", words_of(r.span), r.felt == level::Felt::rocks ? "rocks" : "steady"));
    if (r.pivot) out += fmt::format(" on {}", *r.pivot);
    const std::string held = !r.held                           ? ""
                             : *r.held == level::Held::nutward ? " held nutward"
                                                               : " held bodyward";
    if (!r.gaps.empty()) tell(fmt::format("gap under {}{}", ranges(r.gaps), held));
    if (!r.snug.empty()) tell(fmt::format("no gap under {}{}", ranges(r.snug), held));
  }
  if (!r.looks_sunk.empty())
    tell(ranges(r.looks_sunk) + (r.looks_sunk.size() == 1 ? " looks sunk" : " look sunk"));
  if (!r.looks_high.empty())
    tell(ranges(r.looks_high) + (r.looks_high.size() == 1 ? " looks high" : " look high"));
  return out + fmt::format(" on the {}", word_of(r.line));
}

std::vector<Off> likeliest_first(const LineFinding& f, std::vector<Off> offs) {
  const auto place = [&](const Off& off) {
    return std::find_if(f.explanations.begin(), f.explanations.end(),
                        [&](const Explanation& e) { return has(e, off); });
  };
  std::stable_sort(offs.begin(), offs.end(), [&](const Off& a, const Off& b) { return place(a) < place(b); });
  return offs;
}

std::string explained(const LineFinding& f) {
  const std::vector<Off> hardly = unlikely(f);
  std::vector<Off> sure = f.agreed;
  std::vector<std::string> open;
  for (const auto& list : f.one_of) {
    const auto left = without(likeliest_first(f, list), hardly);
    if (left.size() == 1)
      sure.push_back(left.front());
    else
      open.push_back(one_of_words(left));
  }
  std::string out = agreed_words(sure);
  for (const std::string& one : open)
    out += (out.empty() ? "" : "; ") + one;
  if (f.one_of.empty() && f.explanations.size() > 1)
    return out + (out.empty() ? "" : "; besides ") + each_words(f);
  if (!hardly.empty())
    out += fmt::format("; {} {} all but ruled out", words_of(hardly), hardly.size() == 1 ? "is" : "are");
  return out;
}

std::string contradiction_words(const std::vector<std::size_t>& which,
                                const std::vector<level::Reading>& readings) {
  std::vector<std::string> parts;
  parts.reserve(which.size());
  for (const std::size_t i : which)
    parts.push_back(fmt::format("'{}'", words_of(readings.at(i))));
  if (parts.size() == 1) return parts.front() + " cannot be true by itself";
  return fmt::format("{} cannot {} be true", joined(parts), parts.size() == 2 ? "both" : "all");
}

std::string stands_words(const std::vector<level::Line>& lines, const LineFinding& f,
                         const level::LevelCall& call, const std::vector<level::Reading>& readings) {
  const std::string where = along_words(lines);
  switch (f.finding) {
  case level::Finding::unread:
    return fmt::format("{} {} not read yet", where, lines.size() == 1 ? "is" : "are");
  case level::Finding::level:
    return call.may_be_called ? where + " may be called level"
                              : fmt::format("on {} nothing need be off so far", where);
  case level::Finding::many:
    return fmt::format("on {} more than three things are off", where);
  case level::Finding::contradiction:
    return contradiction_words(f.cannot_all_be, readings);
  default:
    return fmt::format("on {} {}", where, explained(f));
  }
}

} // namespace nutward::shop
