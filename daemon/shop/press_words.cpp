#include "shop/press_words.hpp"

#include <algorithm>
#include <array>

namespace nutward::shop {

namespace {

constexpr std::array<std::string_view, 8> limit_codes{"line_load", "pass_limit", "press",        "gauge",
                                                      "bar",       "asked",      "rework_limit", "step"};
constexpr std::array<std::string_view, 5> done_words{"open", "halfway", "in parts", "low", "done"};
constexpr std::array<std::string_view, 4> zone_words{"green", "amber", "too much", "lifts off"};

std::string stretch(const press::Stretch& s, const Setup& set) {
  return fmt::format("{} to {}", say(s.from, set), say(s.to, set));
}

} // namespace

std::string_view code_of(press::LimitedBy by) {
  return limit_codes.at(static_cast<std::size_t>(by));
}
std::string_view word_of(press::Done done) {
  return done_words.at(static_cast<std::size_t>(done));
}
std::string_view word_of(press::Zone zone) {
  return zone_words.at(static_cast<std::size_t>(zone));
}

std::string between(const press::Between& where) {
  const auto name = [](int slot) { return slot <= 0 ? std::string("the nut") : std::to_string(slot); };
  if (where.nutward == where.bodyward) return "at " + name(where.nutward);
  return fmt::format("between {} and {}", name(where.nutward), name(where.bodyward));
}

std::string share_of(units::Force v, const Setup& set) {
  return units::print(v, set.load_unit, set.load_unit == units::ForceUnit::kn ? 0.01 : 1);
}

std::string words_of(const press::Pass& p, const press::Bar& bar, const Setup& set) {
  return fmt::format("{} {} under bar {}, its middle {} from the nut, {}. The load {} from the nut, {}: come "
                     "up to {}, look, then {}, {} on each fret.",
                     p.slots.size() == 1 ? "fret" : "frets", ranges(p.slots), bar.name, say(p.bar_at, set),
                     between(p.bar_between), say(p.load_at, set), between(p.load_between), say(p.first, set),
                     say(p.load, set), share_of(p.average, set));
}

std::string why_of(const press::Pass& p, const Setup& set) {
  std::string out = fmt::format(
      "Not more because of {}. The load may stand from {} (no fret above 1.25 times its share), and "
      "never beyond {}, where a fret takes nothing.",
      words_of(p.limited), stretch(p.room.green, set), stretch(p.room.kern, set));
  if (p.larger) {
    out += fmt::format(" {} to {} does not go under it: {}", p.larger->lo, p.larger->hi,
                       words_of(p.larger->why, set));
  }
  return out;
}

std::string words_of(const press::Shares& shares, const std::vector<int>& too_much, units::Force load,
                     const Setup& set) {
  const std::string many = too_much.size() == 1 ? "" : "s";
  if (shares.zone == press::Zone::lifted)
    return fmt::format(
        " Off its place like that, some frets lift off and others take too much: fret{} {}. Do "
        "not press: put the load back first.",
        many, ranges(too_much));
  if (too_much.empty())
    return fmt::format(
        " Off its place like that, every fret still bears within 1.5 times its share with {}; so "
        "that no end of a fret gets more than with the load in its place: {} at most.",
        say(load, set), say(shares.cut, set));
  return fmt::format(
      " Off its place like that, fret{} {} would take too much at {}: put the load back first. If it "
      "cannot be, {} at most: with that no end of a fret gets more than with the load in its place.",
      many, ranges(too_much), say(load, set), say(shares.cut, set));
}

std::string said_of_all(const std::vector<std::vector<press::Reason>>& refused, const Setup& set) {
  std::string out;
  for (const press::Reason& r : refused.front()) {
    const std::string said = words_of(r, set);
    const bool all = std::all_of(refused.begin(), refused.end(), [&](const auto& of_bar) {
      return std::any_of(of_bar.begin(), of_bar.end(),
                         [&](const press::Reason& o) { return words_of(o, set) == said; });
    });
    if (all) out += (out.empty() ? "" : " ") + said;
  }
  return out;
}

Table table_of(const PressPlan& plan, const Setup& set) {
  Table out{{"pass", "frets", "bar", "bar's middle", "load over", "first", "load", "on each", "now"}, {}};
  for (std::size_t i = 0; i < plan.plan.passes.size(); ++i) {
    const press::Pass& p = plan.plan.passes[i];
    out.rows.push_back({std::to_string(i + 1), ranges(p.slots), plan.bars.at(p.bar).name,
                        fmt::format("{}, {}", say(p.bar_at, set), between(p.bar_between)),
                        fmt::format("{}, {}", say(p.load_at, set), between(p.load_between)),
                        say(p.first, set), say(p.load, set), share_of(p.average, set),
                        std::string(word_of(plan.standing.passes.at(i)))});
  }
  return out;
}

Value data_of(const press::Pass& p, const press::Bar& bar, const Setup& set) {
  return record({{"slots", list_of(p.slots)},
                 {"bar", bar.name},
                 {"bar_place", p.bar_at},
                 {"load_place", p.load_at},
                 {"load_nutward", std::int64_t{p.load_between.nutward}},
                 {"load_bodyward", std::int64_t{p.load_between.bodyward}},
                 {"first", p.first},
                 {"load", p.load},
                 {"average", p.average},
                 {"n_per_mm", p.n_per_mm},
                 {"limited_by", std::string(code_of(p.limited))},
                 {"green_from", p.room.green.from},
                 {"green_to", p.room.green.to},
                 {"amber_from", p.room.amber.from},
                 {"amber_to", p.room.amber.to},
                 {"kern_from", p.room.kern.from},
                 {"kern_to", p.room.kern.to},
                 {"larger", p.larger ? words_of(p.larger->why, set) : ""}});
}

std::vector<Give> gives::pass() {
  return {{"slots", Kind::slot, "the frets under the bar", Often::many},
          {"bar", Kind::name, "which"},
          {"bar_place", Kind::length, "of its middle, from the nut"},
          {"load_place", Kind::length, "where the load stands, from the nut"},
          {"load_nutward", Kind::slot, "the slot nutward of the load; 0: the nut"},
          {"load_bodyward", Kind::slot, "and bodyward of it"},
          {"first", Kind::load, "come up to this, look"},
          {"load", Kind::load, "and only then to this"},
          {"average", Kind::load, "on each fret"},
          {"n_per_mm", Kind::number, "N for each mm of fret"},
          one_of("limited_by", "why it is not more", {limit_codes.begin(), limit_codes.end()}),
          {"green_from", Kind::length, "the load may stand from here"},
          {"green_to", Kind::length, "to here: no fret above 1.25 times its share"},
          {"amber_from", Kind::length, "from here"},
          {"amber_to", Kind::length, "to here none above 1.5 times"},
          {"kern_from", Kind::length, "beyond here"},
          {"kern_to", Kind::length, "and here a fret takes nothing"},
          {"larger", Kind::words, "why the next fret nutward is not under it too; empty: there is none"}};
}

} // namespace nutward::shop
