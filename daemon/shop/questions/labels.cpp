// Labels for the bins of the tin: wire, range of lengths.
#include "draw/bin_labels.hpp"
#include "shop/bins.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

constexpr std::size_t most_labels = 300; // in one answer: 13 sheets

struct Asked {
  std::vector<Wire> wires;
  Length step;
};

Asked asked(const Args& args, const View& view, const Setup& set) {
  return {args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all(),
          args.opt<Length>("step").value_or(set.bin_step)};
}

Answer ask(const Args& args, const Moment&, const View& view) {
  const Setup set = setup(view);
  const Asked want = asked(args, view, set);
  draw::LabelSheet sheet;
  Answer out;
  out.table = Table{{"wire", "lengths", "pieces", "where"}, {}};
  std::vector<Value> all;
  std::int64_t unmeasured = 0, pieces = 0, more = 0;
  for (const Wire& wire : want.wires) {
    unmeasured += view.tin().sum(wire.id).unmeasured;
    for (const Bin& bin : view.tin().bins(wire.id, want.step)) {
      if (all.size() == most_labels) {
        ++more;
        continue;
      }
      pieces += bin.pieces;
      const std::string lengths = range_of(bin.index, want.step, set);
      out.table->rows.push_back({wire.name, lengths, std::to_string(bin.pieces), bin.place});
      sheet.labels.push_back({wire.name, lengths, plural(bin.pieces, "piece"), bin.place});
      all.push_back(record({{"wire", ref(Thing::wire, wire.id)},
                            {"name", wire.name},
                            {"from", bin.index * want.step},
                            {"below", (bin.index + 1) * want.step},
                            {"pieces", bin.pieces},
                            {"place", bin.place}}));
    }
  }
  const std::string whose = args.has("wire") ? " of " + want.wires.front().name : "";
  if (all.empty()) {
    out.table.reset();
    out.text = fmt::format("No measured piece{} is in the tin, so no bin needs a label.", whose);
  } else {
    out.text =
        fmt::format("{} for the {}{} in the tin{}.", plural(static_cast<std::int64_t>(all.size()), "label"),
                    plural(pieces, "measured piece"), whose,
                    more > 0 ? fmt::format("; {} more: ask for one wire", plural(more, "bin")) : "");
    out.reason =
        fmt::format("A bin takes every {} of length, from the lower one on to just below the upper one.",
                    say(want.step, set));
    sheet.heading = {"Labels for the tin" + whose,
                     fmt::format("{} to cut out: wire, range of lengths, pieces there now, and place.",
                                 plural(static_cast<std::int64_t>(all.size()), "label")),
                     {"Cut along the dashed lines. " + out.reason},
                     {}};
    const std::string title = sheet.heading.title;
    out.picture = Picture{title, [sheet = std::move(sheet)] { return draw::picture_of(sheet); }};
  }
  if (unmeasured > 0) out.reason += fmt::format(" {} nobody has measured.", plural(unmeasured, "piece"));
  out.data = record({{"step", want.step}, {"unmeasured", unmeasured}, {"bins", list(std::move(all))}});
  if (args.has("wire")) out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  return out;
}

} // namespace

extern const Question labels;
const Question labels{
    {"labels",
     "Labels for the bins of the tin, by wire and range of lengths; as a picture to print.",
     {takes::optional(takes::wire),
      {"step",
       Kind::length,
       false,
       false,
       "the range that one bin takes; the shop's setting where not said",
       {1, 200}}},
     {"[print] [the] [bin] labels [(for|of) [the] {wire}] [(every|by|in steps of) {step}]",
      "(show|print) [me] [the] labels", "(i|we) need labels [for the (tin|bins|drawers)]",
      "[print] [the] labels for the (tin|bins|drawers) [(every|by|in steps of) {step}]",
      "(label|what goes on) the bins [(for|of) {wire}] [(every|by|in steps of) {step}]",
      "(which|what) bins (do we need|are there) [(for|of) {wire}]"},
     {"labels for medium", "print the bin labels of medium every 10 mm", "which bins are there"},
     Role::look,
     {{"step", Kind::length, "the range of lengths that one bin takes"},
      {"unmeasured", Kind::count, "pieces that nobody has measured"},
      gives::records("bins", "those with a measured piece, by wire and length; up to 300",
                     {gives::wire,
                      gives::wire_name,
                      {"from", Kind::length, "the shortest that goes there"},
                      {"below", Kind::length, "what is shorter than this"},
                      {"pieces", Kind::count, "there now"},
                      {"place", Kind::words, "where most of them are; may be empty"}})}},
    &ask,
    true};

} // namespace nutward::shop::question_rows
