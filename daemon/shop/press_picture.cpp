// A pass, or one fret pressed again, as a card: press::card with the words of the answer.
#include "draw/pass_card.hpp"
#include "press/card.hpp"
#include "shop/press_words.hpp"

namespace nutward::shop {

namespace {

draw::Point plan_point(const board::PlanPoint& p) {
  return {units::from_mm(p.x_mm), units::from_mm(p.y_mm)};
}

struct Heading {
  std::string title, text, bar;
};

// "6.00 mm toward the treble of its place": how far off the load stands.
std::string off_words(const press::Card& card, const Setup& set) {
  if (!card.meant_at) return "";
  const double along = card.load_at.x_mm - card.meant_at->x_mm,
               across = card.load_at.y_mm - card.meant_at->y_mm;
  const double off = along + across; // one of them is none
  const std::string_view side = along > 0 ? "body" : along < 0 ? "nut" : across > 0 ? "treble" : "bass";
  return fmt::format(", {} off toward the {}", say(units::from_mm(std::abs(off)), set), side);
}

Picture drawn(const press::Card& card, const Heading& heading, const Setup& set) {
  draw::PassCard out;
  out.heading.title = heading.title;
  out.heading.description = heading.text;
  out.heading.lines = {heading.text, "The nut lies to the left, the bass edge above."};
  out.heading.cautions = {"Caution: " + std::string(caution(Hazard::press))};
  for (const press::CardFret& f : card.frets) {
    const bool loaded = f.under && (f.share.n > 0 || f.zone != press::Zone::green);
    out.frets.push_back({std::to_string(f.slot), plan_point(f.bass), plan_point(f.treble), f.under,
                         loaded ? share_of(f.share, set) : "",
                         f.zone == press::Zone::green ? "" : std::string(word_of(f.zone))});
  }
  out.crown_width = card.crown_width;
  out.bar = {card.bar.from, Length{-card.bar_width.nm / 2}, card.bar.to - card.bar.from, card.bar_width};
  out.bar_label = heading.bar;
  out.load = plan_point(card.load_at);
  out.load_label =
      fmt::format("{} from the nut{}: {}, look, then {}", say(units::from_mm(card.load_at.x_mm), set),
                  off_words(card, set), say(card.first, set), say(card.load, set));
  if (card.meant_at) out.meant = plan_point(*card.meant_at);
  if (card.room) out.may_stand = {card.room->green.from, card.room->green.to};
  return {heading.title, [out = std::move(out)] { return draw::picture_of(out); }};
}

std::string bar_words(const press::Bar& bar, Length at, const press::Between& where, const Setup& set) {
  return fmt::format("bar {}, its middle {} from the nut, {}", bar.name, say(at, set), between(where));
}

Heading heading_of(const Job& job, const press::Bar& bar, const press::Pass& pass, const std::string& text,
                   const Setup& set) {
  return {fmt::format("Pass over frets {} of {}", ranges(pass.slots), named(job)), text,
          bar_words(bar, pass.bar_at, pass.bar_between, set)};
}

Heading heading_of(const Job& job, const FretUnderBar& one, const std::string& text, const Setup& set) {
  return {fmt::format("Fret {} of {} by itself", one.fret.slot, named(job)), text,
          bar_words(one.bar, one.fret.bar_at, one.fret.bar_between, set)};
}

} // namespace

Picture picture_of(const Job& job, const PressPlan& plan, const press::Pass& pass, const std::string& text,
                   const Setup& set) {
  const press::Bar& bar = plan.bars.at(pass.bar);
  return drawn(press::card(job.board, plan.work, bar, pass), heading_of(job, bar, pass, text, set), set);
}

Picture picture_of(const Job& job, const PressPlan& plan, const press::Pass& pass, const press::Off& off,
                   const press::Shares& shares, const std::string& text, const Setup& set) {
  const press::Bar& bar = plan.bars.at(pass.bar);
  return drawn(press::card(job.board, plan.work, bar, pass, off, shares),
               heading_of(job, bar, pass, text, set), set);
}

Picture picture_of(const Job& job, const PressPlan& plan, const FretUnderBar& one, const std::string& text,
                   const Setup& set) {
  return drawn(press::card(job.board, plan.work, one.bar, one.fret), heading_of(job, one, text, set), set);
}

Picture picture_of(const Job& job, const PressPlan& plan, const FretUnderBar& one, const press::Off& off,
                   const press::Shares& shares, const std::string& text, const Setup& set) {
  return drawn(press::card(job.board, plan.work, one.bar, one.fret, off, shares),
               heading_of(job, one, text, set), set);
}

} // namespace nutward::shop
