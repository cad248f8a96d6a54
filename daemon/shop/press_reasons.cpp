#include "shop/press_words.hpp"

#include <array>

namespace nutward::shop {

namespace {

// In the order of press::Reason.
constexpr std::array<std::string_view, std::variant_size_v<press::Reason>> codes{
    "out_of_service",    "no_plate",     "not_cradled",  "head_not_clear",  "neck_bridged",   "fresh_glue",
    "longer_than_board", "no_fret",      "other_fret",   "over_cap",        "too_long",       "too_narrow",
    "wrong_sole",        "tips",         "end_on_crown", "on_nut",          "over_body",      "unsupported",
    "over_void",         "beyond_reach", "over_rating",  "over_shop_limit", "over_line_load", "no_ladder",
    "at_limit",          "ladder_done"};

std::string sole(const std::optional<Length>& radius, const Setup& set) {
  return radius ? "of radius " + say(*radius, set) : "flat";
}

// Which bar would do instead.
std::string instead(Length shortest, Length longest, const Setup& set) {
  return longest < shortest
             ? "no bar would do there"
             : fmt::format("a bar from {} to {} would do", say(shortest, set), say(longest, set));
}

std::string clearance(Length clear, const Setup& set) {
  return clear < Length{} ? fmt::format("reaches {} over", say(Length{-clear.nm}, set))
                          : fmt::format("stands only {} from", say(clear, set));
}

struct Words {
  const Setup& set;

  std::string operator()(const press::OutOfService&) const {
    return fmt::format(
        "The press is out of service{}: nothing is planned with it. Once it may be used again, "
        "say: the press is back.",
        set.press_out.empty() ? "" : " (" + set.press_out + ")");
  }
  std::string operator()(const press::NoPlate&) const {
    return "What the press is rated for is not known: read its plate and say, such as: set press plate to "
           "3000 "
           "lb.";
  }
  std::string operator()(const press::NotCradled&) const {
    return "Does the neck's back lie in a cradle under the whole group?";
  }
  std::string operator()(const press::HeadNotClear&) const { return "Is the head clear of everything?"; }
  std::string operator()(const press::NeckBridged&) const {
    return "Does nothing bridge under the neck, so that it lies on the cradle?";
  }
  std::string operator()(const press::FreshGlue&) const { return "Is all glue set?"; }
  std::string operator()(const press::LongerThanBoard& r) const {
    return fmt::format("The bar, {} long, is longer than the board, {}.", say(r.bar, set), say(r.board, set));
  }
  std::string operator()(const press::NoFret& r) const {
    return fmt::format("No fret is seated in slot {}.", r.slot);
  }
  std::string operator()(const press::OtherFret& r) const {
    return fmt::format("Fret {} would be under the bar, and is not to be pressed.", r.slot);
  }
  std::string operator()(const press::OverCap& r) const {
    return fmt::format("That would be {} frets under the bar; the shop's most is {}.", r.frets, r.most);
  }
  std::string operator()(const press::TooLong& r) const {
    return fmt::format("Its crowns are {} from end to end and the bar is {} long.", say(r.crowns, set),
                       say(r.bar, set));
  }
  std::string operator()(const press::TooNarrow& r) const {
    return fmt::format("The bar is {} wide and fret {} reaches {}: it would not bear on its ends.",
                       say(r.bar, set), r.slot, say(r.fret, set));
  }
  std::string operator()(const press::WrongSole& r) const {
    const std::string how =
        r.bears_on > Length{}
            ? fmt::format("it would bear on {} in the middle and crush", say(r.bears_on, set))
            : fmt::format("it would bear on the edges, {} clear of the middle", say(r.gap, set));
    return fmt::format("The sole is {} and the board {} at slot {}: {}.", sole(r.sole, set),
                       sole(r.board, set), r.slot, how);
  }
  std::string operator()(const press::Tips& r) const {
    return fmt::format("Fret {} alone under that bar would let it tip.", r.slot);
  }
  std::string operator()(const press::EndOnCrown& r) const {
    return fmt::format("An end of the bar {} fret {}; {}.", clearance(r.clear, set), r.slot,
                       instead(r.shortest, r.longest, set));
  }
  std::string operator()(const press::OnNut& r) const {
    return fmt::format("The bar {} the nut, which stands higher; {}.", clearance(r.clear, set),
                       instead(r.shortest, r.longest, set));
  }
  std::string operator()(const press::OverBody& r) const {
    return fmt::format("Slot {} is over the body, which begins {} from the nut: never press over a closed "
                       "body.",
                       r.slot, say(r.from, set));
  }
  std::string operator()(const press::Unsupported& r) const {
    return fmt::format("Under slot {} the board has nothing from {} on.", r.slot, say(r.from, set));
  }
  std::string operator()(const press::OverVoid& r) const {
    return fmt::format("Under it the board is hollow from {} to {}.", say(r.hollow.from, set),
                       say(r.hollow.to, set));
  }
  std::string operator()(const press::BeyondReach& r) const {
    return fmt::format("The bar's middle would be {} from the nut, and the press reaches {}.",
                       say(r.bar_at, set), say(r.reach, set));
  }
  std::string operator()(const press::OverRating& r) const {
    return fmt::format("{} is above {}, {}: never go beyond it.", as_said(r.asked, set), words_of(r.most.by),
                       as_said(r.most.load, set));
  }
  std::string operator()(const press::OverShopLimit& r) const {
    return fmt::format("{} is above {}, {}.", as_said(r.asked, set), words_of(r.most.by),
                       as_said(r.most.load, set));
  }
  std::string operator()(const press::OverLineLoad& r) const {
    return fmt::format("{} is more than is usual on such frets, {}.", as_said(r.asked, set),
                       share_of(r.usual, set));
  }
  std::string operator()(const press::NoLadder&) const {
    return "The shop has set no ladder for its narrow bar: set narrow_ladder to its loads for a fret 50 mm "
           "long.";
  }
  std::string operator()(const press::AtLimit& r) const {
    return fmt::format("It had {} last, and {}, {}, allows no further step: find the cause.",
                       as_said(r.last, set), words_of(r.most.by), as_said(r.most.load, set));
  }
  std::string operator()(const press::LadderDone& r) const {
    return fmt::format("It had {:.0f} N/mm last and the ladder ends at {:.0f} N/mm: find the cause.",
                       r.last_n_per_mm, r.highest);
  }
};

} // namespace

std::string_view code_of(const press::Reason& reason) {
  return codes.at(reason.index());
}

std::string words_of(const press::Reason& reason, const Setup& set) {
  return std::visit(Words{set}, reason);
}

std::string words_of(const std::vector<press::Reason>& reasons, const Setup& set) {
  std::string out;
  for (const press::Reason& r : reasons)
    out += (out.empty() ? "" : " ") + words_of(r, set);
  return out;
}

std::string words_of(press::LimitedBy by) {
  static constexpr std::array<std::string_view, 8> words{"the usual load for each mm of fret",
                                                         "the shop's most in a pass",
                                                         "the press's plate",
                                                         "the gauge's scale",
                                                         "the bar's rating",
                                                         "what was asked for",
                                                         "the shop's most on one fret",
                                                         "one step up"};
  return std::string(words.at(static_cast<std::size_t>(by)));
}

Value data_of(const press::Reason& reason, const Setup& set) {
  return record({{"code", std::string(code_of(reason))}, {"text", words_of(reason, set)}});
}

Value data_of(const std::vector<press::Reason>& reasons, const Setup& set) {
  std::vector<Value> out;
  for (const press::Reason& r : reasons)
    out.push_back(data_of(r, set));
  return list(std::move(out));
}

Give gives::reasons(std::string_view name, std::string_view what) {
  return records(name, what,
                 {one_of("code", "which", {codes.begin(), codes.end()}),
                  {"text", Kind::words, "a whole sentence with its numbers"}});
}

} // namespace nutward::shop
