// Whether to order: how each wire stands, by when to order and how much, said in refrets.
#include "shop/supply_words.hpp"

namespace nutward::shop::question_rows {

namespace {

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Supplying all(view, moment.calendar, moment.zone, moment.now);
  const auto supplies = args.has("wire")
                            ? std::vector{all.of(wire_of(view, args.id("wire")), steps_of_an_answer)}
                            : all.of_all();
  Answer out;
  out.text = lead_of(supplies, all, moment);
  if (args.has("wire")) {
    out.reason = why_words(supplies.front(), all, moment);
    out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  } else if (!supplies.empty()) {
    out.reason = why_words(supplies, all);
  }
  if (!supplies.empty()) out.table = table_of(supplies, all, moment);
  std::vector<Value> wires;
  bool order = false;
  for (const WireSupply& s : supplies) {
    order = order || s.order_due(all.today() + sight_days);
    wires.push_back(data_of(s, all));
  }
  out.data = record({{"order", order}, {"wires", list(std::move(wires))}});
  if (!supplies.empty()) out.picture = stock_picture(supplies, all, out, moment);
  return out;
}

} // namespace

extern const Question supply;
const Question supply{
    {"supply",
     ("How long wire lasts, by when to order and how much: by the queue, the past and what is on order; in "
      "refrets."),
     {takes::optional(takes::wire)},
     {"(do|should|must|shall) (we|i) [have to|need to] (order|buy) [wire|anything|any wire] [now|soon]",
      "(do|should|must|shall) (we|i) [have to|need to] (order|buy) [more|some|any] {wire} [now|soon]",
      "(is there|do we have|have we|have we got) enough [wire]",
      "(is there|do we have|have we|have we got) enough {wire} [left]",
      "is there enough {wire} [left] for (the queue|the open jobs|all jobs|the jobs)",
      "(are|is) (we|the shop) [running] (low|short) (on|of) (anything|wire|any wire)",
      "(are|is) (we|the shop) [running] (low|short) (on|of) {wire}",
      "what [wire] (is|are) [running] (low|short)",
      "(is|are) [the] {wire} (running out|running low|low|short|enough)",
      "(are|is) [the] (wires|wire) (running out|running low|low|short|enough)",
      "how many refrets [are] (left|are left) (in|of|on) {wire}",
      "how many refrets (do|can) we [still] (have|do|get) (in|of|from|out of|with) {wire}",
      "how many refrets [is|are|does] {wire} (good|enough|last) [for]",
      "(what|which wire) (runs|is running) (out|low) [first|next]",
      "when (does|will|do) {wire} (run out|end|be gone|be used up)",
      "when (do|will|does) (we|the shop) run out [of wire]",
      "when (do|will) we run out of {wire}",
      "how long (does|will|do) {wire} (last|reach|do|be enough)",
      "how long (does|will) (the|our) wire last",
      ("(when|by when|by what day) (do|should|must|shall) (we|i) [have to|need to] (order|buy) [more|some] "
       "{wire}"),
      "(when|by when|by what day) (do|should|must|shall) (we|i) [have to|need to] (order|buy) [wire]",
      "how much {wire} (do|should|must|shall) (we|i) [have to|need to] (order|buy|get)",
      "how (is|are|stands) [the] supply [of {wire}]",
      "(does|will) {wire} (last|reach|do) [for (the queue|the open jobs|all jobs)]",
      "(which|what) jobs (wait|would wait|are short) (of|for) {wire}",
      "(do|will) we run (short|out) of {wire}",
      "(how much|what) (do|does) (the queue|the jobs|open jobs) (take|need|use) of {wire}",
      "how much {wire} do we (use|go through|need) (a|each|per|every) (week|month)",
      "stock forecast [(of|for) {wire}]",
      "[show] [me] [the] (outlook|forecast|supply) (of|for) {wire}"},
     {"supply", "do we order wire", "is there enough medium", "when do we run out of medium"},
     Role::look,
     {{"order", Kind::yes, "whether any wire is to be ordered within a week"},
      gives::records("wires", "those asked about", gives_of_supply())}},
    &ask,
    true};

} // namespace nutward::shop::question_rows
