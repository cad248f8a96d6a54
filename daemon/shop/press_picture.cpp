// A pass as a card: press::card with the words of the answer.
#include "draw/pass_card.hpp"
#include "press/card.hpp"
#include "shop/press_words.hpp"

namespace nutward::shop {

namespace {

draw::Point plan_point(const board::PlanPoint& p) {
  return {units::from_mm(p.x_mm), units::from_mm(p.y_mm)};
}

} // namespace

Picture picture_of(const Job& job, const PressPlan& plan, const press::Pass& pass, const std::string& text,
                   const Setup& set) {
  const press::Bar& bar = plan.bars.at(pass.bar);
  const press::Card card = press::card(job.board, plan.work, bar, pass);
  draw::PassCard out;
  out.heading.title = fmt::format("Pass over frets {} of {}", ranges(pass.slots), named(job));
  out.heading.description = text;
  out.heading.lines = {text, "The nut lies to the left, the bass edge above."};
  out.heading.cautions = {"Caution: " + std::string(caution(Hazard::press))};
  for (const press::CardFret& f : card.frets) {
    out.frets.push_back({std::to_string(f.slot), plan_point(f.bass), plan_point(f.treble), f.under,
                         f.under ? share_of(f.share, set) : ""});
  }
  out.crown_width = card.crown_width;
  out.bar = {card.bar.from, Length{-card.bar_width.nm / 2}, card.bar.to - card.bar.from, card.bar_width};
  out.bar_label = fmt::format("bar {}, its middle {} from the nut, {}", bar.name, say(pass.bar_at, set),
                              between(pass.bar_between));
  out.load = plan_point(card.load_at);
  out.load_label = fmt::format("{} from the nut: {}, look, then {}", say(pass.load_at, set),
                               say(card.first, set), say(card.load, set));
  out.green_from = card.room.green.from;
  out.green_to = card.room.green.to;
  const std::string title = out.heading.title;
  return {title, [out = std::move(out)] { return draw::picture_of(out); }};
}

} // namespace nutward::shop
