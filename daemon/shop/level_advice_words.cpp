#include "shop/level_advice_words.hpp"

#include "shop/press_words.hpp"

#include <array>

namespace nutward::shop {

namespace {

using level::Because;

constexpr std::array<std::string_view, std::variant_size_v<level::Step>> steps{
    "ask_neck",    "straighten_neck", "read_again", "take_reading",   "look_at_whole",  "try_by_hand",
    "ask_gap",     "ask_cause",       "put_right",  "press_again",    "glue_and_clamp", "stop_and_level",
    "ask_how_low", "leave_low",       "treat_low",  "may_call_level", "read_finer"};
constexpr std::array<std::string_view, 23> becauses{
    "neck_first",       "one_bow_explains",   "cannot_all_be",     "splits",           "not_read_yet",
    "too_many",         "no_edge_tells",      "cause_before_load", "cause_known",      "gap_and_no_cause",
    "high_on_one_side", "long_bar_at_limit",  "no_further_step",   "seated",           "slot_is_loose",
    "sprang_back",      "last_and_untouched", "last_may_stay",     "too_low_to_leave", "not_the_last",
    "all_read",         "too_coarse",         "bow_agreed"};

struct Both {
  std::string what, why;
};

std::string cause_words(level::Cause cause) {
  switch (cause) {
  case level::Cause::slot_shallow:
    return "its slot is too shallow";
  case level::Cause::slot_dirty:
    return "there is dirt in its slot";
  case level::Cause::tang_bottoms:
    return "its tang stands on the bottom of the slot";
  case level::Cause::wire_misbent:
    return "its wire is bent wrong or kinked";
  case level::Cause::slot_loose:
    return "its slot is too loose to hold the tang";
  default:
    return "it was not pressed home";
  }
}

std::string cure_words(level::Cause cause) {
  switch (cause) {
  case level::Cause::slot_shallow:
    return "deepen the slot";
  case level::Cause::slot_dirty:
    return "clean the slot";
  case level::Cause::tang_bottoms:
    return "deepen the slot or take the tang down";
  case level::Cause::wire_misbent:
    return "bend it anew, or cut a new one";
  default:
    return "put it right";
  }
}

// "its middle" with the side to which the load moves.
std::string_view side_word(level::Side side) {
  return side == level::Side::bass ? "bass" : "treble";
}

struct Words {
  const level::Advice& advice;
  const Telling& t;
  ToldAdvice& out;

  std::string on() const { return along_words(advice.lines); }
  std::string called() const { return say(t.levelling.settings.plan.called_level, t.setup); }

  Both operator()(const level::AskNeck&) const {
    const std::string what = "Look along the neck: is it straight? Say: the neck is straight, the neck is "
                             "humped, or the neck has relief.";
    if (advice.because == Because::one_bow_explains)
      return {what, fmt::format("A bow of the neck alone would explain what was read on {}.", on())};
    return {what, "Readings tell of frets only over a straight neck."};
  }
  Both operator()(const level::StraightenNeck& s) const {
    return {fmt::format("Straighten the neck first, it {}; say: straightened the neck, and read again.",
                        s.way == level::Way::high ? "is humped" : "has relief"),
            fmt::format("Whatever else is off on {}, what was read needs that bow.", on())};
  }
  Both operator()(const level::ReadAgain& r) const {
    std::vector<std::string> spans; // each once
    for (const std::size_t i : r.readings) {
      const level::Reading& one = t.levelling.readings.at(i);
      const std::string span = one.felt == level::Felt::not_laid
                                   ? words_of(one)
                                   : fmt::format("{} on the {}", words_of(one.span), word_of(one.line));
      if (std::find(spans.begin(), spans.end(), span) == spans.end()) spans.push_back(span);
    }
    return {fmt::format("Take {} again, and say what it shows: of a span, the last two alike count.",
                        joined(spans)),
            "Whatever is off, these readings cannot all be true."};
  }
  Both operator()(const level::TakeReading& r) const {
    const level::Next& n = r.next;
    const std::size_t frets = *t.levelling.lines.find(n.span.to) - *t.levelling.lines.find(n.span.from) + 1;
    const bool rocker = static_cast<int>(frets) <= t.levelling.settings.plan.rocker;
    const std::string span = words_of(n.span);
    const std::string what =
        fmt::format("Lay {} over {} on the {}, and say: {} rocks, or: {} steady.",
                    rocker ? "a fret rocker" : "a straightedge", span, word_of(n.line), span, span);
    if (n.why == level::Why::straight)
      return {what, "A bow of the neck is the likeliest, and the long edge over all of it tells."};
    if (n.why == level::Why::sequence)
      return {what,
              "It is the next that was not read: long spans first, then shorter ones, since over a long one "
              "a fret can hide behind its neighbour."};
    return {what, fmt::format("Of {} explanations it leaves {} if it rocks and {} if it is steady; no other "
                              "reading tells them apart better.",
                              n.before, n.if_rocks, n.if_steady)};
  }
  Both operator()(const level::LookAtWhole&) const {
    return {fmt::format("Look at neck and board as a whole along {}.", on()),
            "More than three things are off there, and readings tell so many not apart."};
  }
  Both operator()(const level::TryByHand& h) const {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < h.left.size() && i < 4; ++i)
      parts.push_back(words_of(h.left[i]));
    if (h.left.size() > 4) parts.push_back("one of " + plural(std::ssize(h.left) - 4, "other"));
    return {fmt::format("Look at these frets one by one along {}, the likeliest first: {}.", on(),
                        joined(parts, " or ")),
            "What is left open no straightedge tells apart."};
  }
  Both operator()(const level::AskGap& a) const {
    const std::string what =
        fmt::format("See whether there is a gap under the crown of {0}; say: gap under {0}, or: no "
                    "gap under {0}.",
                    a.slot);
    if (advice.because == Because::no_edge_tells)
      return {what, "What is left open no straightedge tells apart, but a gap under its crown would."};
    return {what,
            "Without a gap pressing only crushes the board, and with one something may keep the fret up."};
  }
  Both operator()(const level::AskCause& a) const {
    return {
        fmt::format("Find what keeps {0} up; say, such as: slot {0} is shallow, slot {0} is dirty, the tang "
                    "bottoms at {0}, the wire at {0} is kinked, slot {0} is loose, or: nothing keeps {0} up.",
                    a.slot),
        "There is a gap under its crown, and what keeps it up more load does not cure."};
  }
  Both operator()(const level::PutRight& p) const {
    out.cautions = {Hazard::hammering};
    return {fmt::format("Do not press {0} again: pull it, {1}, seat it anew; then say: reseated {0}.", p.slot,
                        cure_words(p.cause)),
            fmt::format("It stands high because {}, and load does not cure that.", cause_words(p.cause))};
  }
  Both operator()(const level::PressAgain& p) const;
  Both operator()(const level::GlueAndClamp& g) const {
    out.cautions = {Hazard::glue};
    return {
        fmt::format(
            "Glue {0} and clamp it down, and let it cure before anything is pressed or read there; say: "
            "glued and clamped {0}.",
            g.slot),
        advice.because == Because::sprang_back
            ? "It came up again after pressing and has a gap under its crown, so more load would not keep it "
              "down."
            : "Its slot is too loose to hold the tang, so that no load keeps it down."};
  }
  Both operator()(const level::StopAndLevel& s) const;
  Both operator()(const level::AskHowLow& a) const {
    return {
        fmt::format("Measure how far {0} stands below its neighbours; say: {0} is 0.1 mm low.", a.slot),
        fmt::format("The last fret there will ever be may stay up to {} low, and this is not measured yet.",
                    say(level::most_left_low, t.setup))};
  }
  Both operator()(const level::LeaveLow& l) const {
    return {fmt::format("Leave {} as it is.", l.slot),
            "The last fret there will ever be may stand a little below its neighbour: no string is pressed "
            "beyond it."};
  }
  Both operator()(const level::TreatLow& l) const;
  Both operator()(const level::MayCallLevel&) const {
    return {
        fmt::format("It may be called level along {}.", on()),
        fmt::format("What was read leaves no single fret that could be off by more than {} unnoticed there.",
                    called())};
  }
  Both operator()(const level::ReadFiner&) const {
    return {fmt::format("Read once more along {}, slowly, and not as a quick look.", on()),
            fmt::format("All is steady there, but a quick hand misses what is off by {}.", called())};
  }
};

// What keeps it from being pressed now, or for good.
std::string refusal_of(const PressedAgain& p, const Setup& set) {
  return p.cannot.empty() ? words_of(p.refused, set) : p.cannot;
}

Both Words::operator()(const level::PressAgain& p) const {
  out.cautions = {Hazard::press};
  out.press = t.press.of(p.slot, p.bar, p.load);
  std::string why = "There is a gap under its crown and nothing keeps it up: it was not pressed home.";
  if (advice.because == Because::high_on_one_side)
    why =
        fmt::format("It is high on the {} side and not on the other, with a gap under its crown and nothing "
                    "that keeps it up.",
                    side_word(p.load));
  if (advice.because == Because::long_bar_at_limit)
    why = refusal_of(t.press.of(p.slot, level::Bar::long_bar), t.setup);
  const PressedAgain& again = *out.press;
  if (!again.fret)
    return {fmt::format("Press {} again by one step, but not before this is settled: {}", p.slot,
                        refusal_of(again, t.setup)),
            why};
  std::string bar = "bar " + again.bar.name;
  if (p.bar == level::Bar::narrow) bar += ", which is narrow and has a lower ladder of its own";
  if (again.to_side)
    bar += fmt::format(", the load up to {} toward the {} of its middle", say(again.to_side->most, t.setup),
                       side_word(p.load));
  const std::string load = again.least < again.load
                               ? say(again.least, t.setup) + " to " + say(again.load, t.setup)
                               : say(again.load, t.setup);
  return {
      fmt::format(
          "Press {} again under {}: come up to {}, look, then {}{}; then say what it had, such as: pressed "
          "{} of job {} at {} under bar {}; and read again.",
          p.slot, bar, say(again.first, t.setup), load, again.fret->again ? ", one step up" : "", p.slot,
          t.job.id, say(again.load, t.setup), again.bar.name),
      why};
}

Both Words::operator()(const level::StopAndLevel& s) const {
  out.cautions = {Hazard::metal_dust};
  const std::string how =
      fmt::format("level it with about 400 grit on a flat block, then crown and polish each "
                  "fret that was touched, and say: levelled {}.",
                  s.slot);
  if (advice.because == Because::seated)
    return {fmt::format("Do not press {}: {}", s.slot, how),
            "There is no gap under its crown: it is the board or the crown, and pressing would only crush."};
  if (advice.because == Because::sprang_back)
    return {fmt::format("Do not press {} again: {}", s.slot, how),
            "It came up again after pressing and lies on the board: pressing would only crush."};
  std::string why = refusal_of(t.press.of(s.slot, level::Bar::long_bar), t.setup);
  if (t.press.narrow_set_up() && t.job.kind != JobKind::some_slots)
    why += " " + refusal_of(t.press.of(s.slot, level::Bar::narrow), t.setup);
  std::string what =
      fmt::format("Press {} no more, no bar of the shop has a further step for it: {}", s.slot, how);
  if (t.press.narrow_without_ladder() && t.job.kind != JobKind::some_slots)
    what += " A narrow bar is advised only once the shop has set its ladder up: set narrow ladder to its "
            "loads for a fret 50 mm long.";
  return {what, why};
}

Both Words::operator()(const level::TreatLow& l) const {
  out.cautions = {Hazard::hammering, Hazard::metal_dust};
  const std::string what =
      fmt::format("Pull {0} and reseat it, shim it, or level the board's frets to it; never press all "
                  "others down. Then say, such as: reseated {0}.",
                  l.slot);
  const int last = t.levelling.lines.on(level::Line::middle).back().slot;
  if (advice.because == Because::too_low_to_leave)
    return {what,
            fmt::format("It is the last fret there will ever be, but it stands lower than {} beside its "
                        "neighbour, or that one may be low as well.",
                        say(level::most_left_low, t.setup))};
  if (l.slot == last && !t.levelling.facts.last_ever)
    return {fmt::format(
                "If the board will never have a fret beyond {0}, leave it low, and say: {0} is the last fret "
                "there will ever be. Else pull and reseat it, or shim it.",
                l.slot),
            "A last fret may stand a little low, since no string is pressed beyond it; any other may not."};
  return {what, "It stands low with frets beyond it, where strings are pressed."};
}

} // namespace

std::vector<std::string_view> step_codes() {
  return {steps.begin(), steps.end()};
}
std::vector<std::string_view> because_codes() {
  return {becauses.begin(), becauses.end()};
}

std::optional<int> slot_of(const level::Step& step) {
  return std::visit(
      [](const auto& s) -> std::optional<int> {
        if constexpr (requires { s.slot; }) return s.slot;
        return std::nullopt;
      },
      step);
}

ToldAdvice told(const level::Advice& advice, const Telling& telling) {
  ToldAdvice out;
  out.step = steps.at(advice.step.index());
  out.because = becauses.at(static_cast<std::size_t>(advice.because));
  out.slot = slot_of(advice.step);
  Both both = std::visit(Words{advice, telling, out}, advice.step);
  out.what = std::move(both.what);
  out.why = std::move(both.why);
  return out;
}

} // namespace nutward::shop
