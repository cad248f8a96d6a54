// Weighing: a coil, or the sticks of a wire, and the known length that tells what a metre weighs.
#include "shop/metre.hpp"
#include "shop/rows.hpp"

#include <cmath>

namespace nutward::shop::command_rows {

namespace {

using units::LengthUnit;

Mass division_of(const Args& args) {
  return args.or_else<Mass>("division", Mass{1000});
}

bool is_coil(const Args& args, const Wire& w, const View& view) {
  if (args.has("form")) return args.text("form") == "coil";
  const auto lots = view.wires().lots(w.id);
  return std::any_of(lots.begin(), lots.end(), [](const Lot& l) { return l.form == Form::coil; });
}

Mass net_of(const Args& args, const Wire& w, const View& view) {
  const auto mass = args.get<Mass>("mass");
  if (!args.has("tare") && is_coil(args, w, view)) {
    throw Problem(Fault::value, "What does the empty spool weigh?", "tare_g",
                  "Say it, such as: tare 120 g; or tare 0 g where the coil lay bare on the scale.");
  }
  const auto tare = args.or_else<Mass>("tare", Mass{});
  if (tare >= mass) {
    throw Problem(
        Fault::value,
        fmt::format("The spool alone would weigh {} of {}.", units::print(tare), units::print(mass)),
        "tare_g", "Give a tare less than the mass on the scale.");
  }
  return mass - tare;
}

// An error is said to the centimetre, upward.
std::string about(Length error) {
  constexpr std::int64_t cm = 10'000'000;
  return units::print(Length{(error.nm + cm - 1) / cm * cm}, LengthUnit::m);
}

Effect weigh(const Args& args, const Moment&, Tx& tx) {
  const Wire w = wire_of(tx, args.id("wire"));
  const Mass net = net_of(args, w, tx);
  const Metre k = known_metre(w);
  const wire::Weighed found = wire::weighed(net, k.linear, division_of(args));
  const Length besides = args.or_else<Length>("besides", Length{});
  const Length before = tx.wires().on_hand(w.id), now = found.length + besides, off = now - before;
  if (off != Length{}) {
    tx.move({MovementKind::counted,
             w.id,
             {},
             {},
             {},
             {},
             off.nm > 0 ? Place::outside : Place::stock,
             off.nm > 0 ? Place::stock : Place::outside,
             units::abs(off),
             0,
             "weighed"});
  }
  Effect out;
  out.answer.text = fmt::format(
      "{} of {}{} is {} ± {}{}. That is on hand now; the ledger had {}, {}.", units::print(net), w.name,
      args.has("tare") ? fmt::format(" (less {} of spool)", units::print(args.get<Mass>("tare"))) : "",
      units::print(found.length, LengthUnit::m), about(found.error),
      args.has("besides") ? fmt::format(", and {} besides", units::print(besides, LengthUnit::m)) : "",
      units::print(before, LengthUnit::m),
      off == Length{}
          ? "the same"
          : fmt::format("{} {}", units::print(units::abs(off), LengthUnit::m), off.nm > 0 ? "less" : "more"));
  out.answer.reason =
      fmt::format("A metre weighs {:.4g} g ± {:.2g} %, {}. The difference is {} the scale can be wrong by.",
                  k.linear.g_per_m, k.linear.error * 100, k.from,
                  units::abs(off) <= found.error ? "within what" : "more than");
  out.answer.data = record({{"wire", ref(Thing::wire, w.id)},
                            {"net", net},
                            {"weighed", found.length},
                            {"error", found.error},
                            {"before", before},
                            {"on_hand", now},
                            {"difference", off},
                            {"within_error", units::abs(off) <= found.error},
                            {"g_per_m", k.linear.g_per_m}});
  out.answer.about.args = {{"wire", ref(Thing::wire, w.id)}};
  return out;
}

Effect calibrate(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Wire w = wire_of(tx, args.id("wire"));
  const auto length = args.get<Length>("length");
  const auto mass = args.get<Mass>("mass");
  wire::Linear linear;
  try {
    linear = wire::calibrated(length, mass, division_of(args));
  } catch (const wire::BadProfile& bad) {
    throw Problem(Fault::value, bad.what(), "mass_g", bad.would_do);
  }
  const auto profile = metre_by_profile(w);
  w.linear_g_m = linear.g_per_m;
  w.linear_error = linear.error;
  tx.put(w);
  Effect out;
  out.answer.text = fmt::format("A metre of {} weighs {:.4g} g ± {:.2g} %, from {} that weigh {}.", w.name,
                                linear.g_per_m, linear.error * 100, say(length, set), units::print(mass));
  out.answer.reason = fmt::format("A length is taken as known to {}, a mass to {}.", say(wire::ruler, set),
                                  units::print(division_of(args)));
  if (profile) {
    const double off = linear.g_per_m / profile->linear.g_per_m - 1;
    out.answer.reason += fmt::format(" {}, it would be {:.4g} g: {:.1f} % {}.", sentence(profile->from),
                                     profile->linear.g_per_m, std::abs(off) * 100, off < 0 ? "more" : "less");
  }
  out.answer.data = record(
      {{"wire", ref(Thing::wire, w.id)}, {"g_per_m", linear.g_per_m}, {"error_percent", linear.error * 100}});
  out.answer.about.args = {{"wire", ref(Thing::wire, w.id)}};
  return out;
}

const Param division{"division",   Kind::mass, false, false, "what the scale shows at least; 1 g",
                     {0.001, 1000}};

} // namespace

extern const Command weigh_row;
const Command weigh_row{
    {"weigh",
     "Weighs all sticks or the coil of a wire, and corrects what is on hand to that.",
     {takes::wire,
      {"mass", Kind::mass, true, false, "on the scale, spool and all", {0.1, 100000}},
      {"tare", Kind::mass, false, false, "of the empty spool", {0, 20000}},
      {"form", Kind::one_of, false, false, "stick or coil; as it was received", {}, {"stick", "coil"}},
      {"besides", Kind::length, false, false, "on hand, but not on the scale", {0, 1e7}},
      division,
      takes::at},
     {"[the] (coil|sticks|spool|roll) of {wire} (weighs|weigh|weighed) {mass} [(tare|spool|empty) "
      "{tare}]",
      "(weigh|weighed) {wire} [at|with] {mass} [(tare|spool|empty) {tare}]",
      "(weigh|weighed) [the] (coil|sticks|spool|roll) of {wire} [at|with] {mass} [(tare|spool|empty) "
      "{tare}]",
      "{wire} (weighs|weigh|weighed) {mass} [(tare|spool|empty) {tare}]"},
     {"the coil of medium weighs 620 g, tare 120 g", "weighed the sticks of medium at 143.6 g",
      "weigh medium 620 g tare 120 g"},
     Role::bench,
     {gives::wire,
      {"net", Kind::mass, "without the spool"},
      {"weighed", Kind::length, "by that"},
      {"error", Kind::length, "how far that may be off"},
      {"before", Kind::length, "on hand, by the ledger"},
      {"on_hand", Kind::length, "now"},
      {"difference", Kind::length, "now less before"},
      {"within_error", Kind::yes, "whether the scale explains the difference"},
      {"g_per_m", Kind::number, "what a metre weighs"}}},
    &weigh};

extern const Command calibrate_row;
const Command calibrate_row{
    {"calibrate",
     "Keeps what a known length of a wire weighs, so that a coil can be weighed for its length.",
     {takes::wire,
      {"length", Kind::length, true, false, "of the known piece", {20, 100000}},
      {"mass", Kind::mass, true, false, "of the known piece", {0.1, 100000}},
      division,
      takes::at},
     {"{length} of {wire} (weighs|weigh) {mass}",
      "calibrate {wire} [with|by] {length} [at|weighing|is] {mass}",
      "a stick of {wire} of {length} weighs {mass}"},
     {"610 mm of medium weighs 14.6 g", "calibrate medium with 610 mm weighing 14.6 g"},
     Role::bench,
     {gives::wire,
      {"g_per_m", Kind::number, "what a metre weighs"},
      {"error_percent", Kind::number, "how far that may be off"}}},
    &calibrate};

} // namespace nutward::shop::command_rows
