#include "shop/readings.hpp"

#include "shop/level_words.hpp"
#include "shop/touch.hpp"

#include <algorithm>
#include <array>

namespace nutward::shop {

namespace {

// The bench's names of what is wrong, and the row's.
struct Named {
  std::string_view field, param;
};
constexpr std::array<Named, 7> names{{{"pivot", "pivot"},
                                      {"gaps", "gaps"},
                                      {"snug", "snug"},
                                      {"looks_sunk", "sunk"},
                                      {"looks_high", "high"},
                                      {"held", "held"},
                                      {"felt", "felt"}}};

template <class E, std::size_t N>
std::optional<E> one_of(const Args& args, std::string_view param,
                        const std::array<std::string_view, N>& words) {
  if (!args.has(param)) return std::nullopt;
  const auto at = std::find(words.begin(), words.end(), args.text(param));
  return static_cast<E>(at - words.begin());
}

std::optional<level::Held> held_of(const Args& args) {
  return one_of<level::Held>(args, "held", std::array<std::string_view, 2>{"nutward", "bodyward"});
}

std::optional<int> slot_in(const Args& args, std::string_view param) {
  const auto slot = args.opt<std::int64_t>(param);
  return slot ? std::optional{static_cast<int>(*slot)} : std::nullopt;
}

// A fret that is said both to look one way and the other would be refused; of a feeler the later word counts.
void replace(std::vector<int>& in, std::vector<int>& other, const std::vector<int>& said) {
  for (const int slot : said) {
    std::erase(other, slot);
    if (std::find(in.begin(), in.end(), slot) == in.end()) in.push_back(slot);
  }
  std::sort(in.begin(), in.end());
}

Reading earlier(const Args& args, const Job& job, const View& view, const level::Lines& lines) {
  const auto id = args.get<std::int64_t>("reading");
  const auto all = view.jobs().readings(job.id);
  const auto at = std::find_if(all.begin(), all.end(), [&](const Reading& r) { return r.id == id; });
  if (at == all.end())
    throw Problem(Fault::value, fmt::format("{} has no reading {}.", named(job), id), "reading",
                  "Say the whole: 6 to 8 rocks, held nutward a gap under 8.");
  std::vector<int> slots;
  for (const level::Crown& crown : lines.on(level::Line::middle))
    slots.push_back(crown.slot);
  if (!level::counts(at->is, touched(job, view, slots)))
    throw Problem(Fault::state,
                  fmt::format("A fret of that reading, '{}', has been worked on since.", words_of(at->is)),
                  "reading", "Read it again.");
  return *at;
}

Reading told_more(const Args& args, const Job& job, const View& view, const level::Lines& lines) {
  Reading out = earlier(args, job, view, lines);
  level::Reading& is = out.is;
  if (const auto held = held_of(args)) {
    if (is.held && is.held != held) {
      out.id = 0;
      is.gaps.clear();
      is.snug.clear();
    }
    is.held = held;
  }
  if (const auto line = line_of(args)) {
    is.line = *line;
    out.line_assumed = false;
  }
  if (const auto pivot = slot_in(args, "pivot")) is.pivot = pivot;
  replace(is.gaps, is.snug, args.slots("gaps"));
  replace(is.snug, is.gaps, args.slots("snug"));
  replace(is.looks_sunk, is.looks_high, args.slots("sunk"));
  replace(is.looks_high, is.looks_sunk, args.slots("high"));
  return out;
}

} // namespace

void refuse_reading(const level::BadReading& bad, const Args& args) {
  const auto* at =
      std::find_if(names.begin(), names.end(), [&](const Named& n) { return n.field == bad.field; });
  std::string where(at != names.end() ? at->param : "from");
  if (bad.field == "span" && !args.has("from")) where = args.has("about") ? "about" : "from";
  throw Problem(Fault::value, bad.what(), std::move(where), fmt::format("Say {}.", bad.would_do));
}

std::optional<level::Line> line_of(const Args& args) {
  return one_of<level::Line>(args, "line", std::array<std::string_view, 3>{"bass", "middle", "treble"});
}

level::Said said_in(const Args& args) {
  if (args.has("from") != args.has("to"))
    throw Problem(Fault::value, "A span is from one fret to another.", args.has("from") ? "to" : "from",
                  "Say both, as in: 6 to 8 rocks.");
  level::Said out;
  out.line = line_of(args);
  if (args.has("from")) out.span = level::Span{*slot_in(args, "from"), *slot_in(args, "to")};
  out.about = slot_in(args, "about");
  out.pivot = slot_in(args, "pivot");
  out.held = held_of(args);
  out.gaps = args.slots("gaps");
  out.snug = args.slots("snug");
  out.looks_sunk = args.slots("sunk");
  out.looks_high = args.slots("high");
  out.quick = args.yes("quick");
  const bool edge = out.span || out.about || out.pivot || out.held || !out.gaps.empty() || !out.snug.empty();
  const bool seen = !out.looks_sunk.empty() || !out.looks_high.empty();
  if (args.has("felt"))
    out.felt = args.text("felt") == "rocks" ? level::Felt::rocks : level::Felt::steady;
  else if (edge)
    throw Problem(Fault::value, "Does the edge rock there, or is it steady?", "felt",
                  "Say it with it, as in: 6 to 8 rocks.");
  else if (seen)
    out.felt = level::Felt::not_laid;
  else
    throw Problem(Fault::value, "Nothing was read.", "felt",
                  "Say for example: 6 to 8 rocks on the treble side; 5 to 7 steady; 7 looks sunk.");
  return out;
}

Reading reading_in(const Args& args, const Job& job, const View& view, Instant when) {
  const level::Lines lines = lines_of(job, view);
  if (args.has("reading")) {
    if (args.has("from") || args.has("to") || args.has("about") || args.has("felt"))
      throw Problem(Fault::value, "An earlier reading, or one of its own?", "reading",
                    "Leave the earlier reading out, or what it says already.");
    Reading out = told_more(args, job, view, lines);
    telling_of_reading(args, [&] { level::check(out.is, lines); });
    return out;
  }
  Reading out;
  out.job = job.id;
  out.taken = when;
  level::Said said = said_in(args);
  said.revision = touches(job, view);
  const level::Meant meant = telling_of_reading(args, [&] { return level::meant(said, lines); });
  out.is = meant.reading;
  const LevelSettings settings = level_settings(view);
  out.is.epsilon = said.quick ? settings.quick_hand : settings.hand;
  out.line_assumed = meant.line_assumed;
  out.span_assumed = meant.span_assumed;
  return out;
}

std::string assumed_words(const Reading& r) {
  if (r.is.felt == level::Felt::not_laid) return "";
  const std::string span = words_of(r.is.span);
  if (r.line_assumed && r.span_assumed)
    return fmt::format(" No line was said, so the middle; no span, so {}.", span);
  if (r.line_assumed) return " No line was said, so the middle.";
  return r.span_assumed ? fmt::format(" No span was said, so {}.", span) : "";
}

} // namespace nutward::shop
