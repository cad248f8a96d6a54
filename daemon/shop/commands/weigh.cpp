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

// The coil that came last, where one did: it is the one that is meant.
std::optional<Lot> last_coil(const Wire& w, const View& view) {
  for (const Lot& l : view.wires().lots(w.id))
    if (l.form == Form::coil) return l;
  return std::nullopt;
}

// The empty spool, as it was said now or when the coil came or was weighed before; nullopt: there is none.
std::optional<Mass> tare_of(const Args& args, const Wire& w, const View& view) {
  if (args.has("tare")) return args.get<Mass>("tare");
  if (!is_coil(args, w, view)) return std::nullopt;
  if (const auto coil = last_coil(w, view); coil && coil->tare) return coil->tare;
  throw Problem(Fault::value, "What does the empty spool weigh?", "tare_g",
                "Say it, such as: tare 120 g; or tare 0 g where the coil lay bare on the scale.");
}

Mass net_of(const Args& args, const Wire& w, const View& view) {
  const auto mass = args.get<Mass>("mass");
  const auto tare = tare_of(args, w, view).value_or(Mass{});
  if (tare >= mass) {
    throw Problem(
        Fault::value,
        fmt::format("The spool alone would weigh {} of {}.", units::print(tare), units::print(mass)),
        "tare_g", "Give a tare less than the mass on the scale.");
  }
  return mass - tare;
}

// No coil gets heavier by itself: what weighs more than when it came is another one, or has another spool.
void check_gross(const Args& args, const Wire& w, const View& view) {
  if (!is_coil(args, w, view)) return;
  const auto coil = last_coil(w, view);
  const auto mass = args.get<Mass>("mass");
  if (!coil || !coil->gross || coil->count != 1 || mass <= *coil->gross + division_of(args)) return;
  throw Problem(
      Fault::value,
      fmt::format("The coil of lot {} weighed {} with its spool when it came; it cannot weigh {} now.",
                  coil->id, units::print(*coil->gross), units::print(mass)),
      "mass_g",
      fmt::format("Weigh it again without anything beside it; where wire came since, say so first, or "
                  "count it: counted 21 m of {}.",
                  w.name));
}

// What lay on the scale becomes all that is on hand: where the wire came in the other form too, that is
// asked.
std::string of_other_form(const Args& args, const Wire& w, bool of_coil, const View& view) {
  if (!args.has("form") || args.has("besides") || view.wires().on_hand(w.id) <= Length{}) return "";
  const auto lots = view.wires().lots(w.id);
  const Form other = of_coil ? Form::stick : Form::coil;
  if (std::none_of(lots.begin(), lots.end(), [&](const Lot& l) { return l.form == other; })) return "";
  return fmt::format(
      "{} of {} came too. Is what is on the scale all that is left of it? Where it is not, say what "
      "is there besides: weigh {} {}, besides 4.2 m.",
      of_coil ? "Sticks" : "Coils", w.name, w.name, units::print(args.get<Mass>("mass")));
}

// More than a tenth over all that is known of: what lay on the scale is asked about. The tenth is a guess.
std::string why_much(const Args& args, const Moment&, const View& view) {
  const Wire w = wire_of(view, args.id("wire"));
  check_gross(args, w, view);
  const Mass net = net_of(args, w, view);
  const wire::Weighed found = wire::weighed(net, known_metre(w).linear, division_of(args));
  const bool of_coil = is_coil(args, w, view);
  if (std::string other = of_other_form(args, w, of_coil, view); !other.empty()) return other;
  const auto coil = of_coil ? last_coil(w, view) : std::nullopt;
  if (!coil) return "";
  const Length came = coil->each * coil->count;
  const Length most = std::max(came, view.wires().on_hand(w.id));
  if ((found.length - found.error).mm() <= most.mm() * 1.1) return "";
  return fmt::format(
      "That would be {} ± {}, but the coil was {} when it came (lot {}). Is only the wire of {} on "
      "the scale, and the spool taken off?",
      rounded_metres(found.length), about_metres(found.error), units::print(came, LengthUnit::m), coil->id,
      w.name);
}

// Keeps what the spool weighs, for the next time.
void keep_tare(const Args& args, const Wire& w, Tx& tx) {
  auto coil = args.has("tare") ? last_coil(w, tx) : std::nullopt;
  if (!coil || coil->tare == args.opt<Mass>("tare")) return;
  coil->tare = args.opt<Mass>("tare");
  tx.put(*coil);
}

Effect weigh(const Args& args, const Moment&, Tx& tx) {
  const Wire w = wire_of(tx, args.id("wire"));
  check_gross(args, w, tx);
  const Mass net = net_of(args, w, tx);
  const auto tare = tare_of(args, w, tx);
  keep_tare(args, w, tx);
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
      tare ? fmt::format(" (less {} of spool{})", units::print(*tare), args.has("tare") ? "" : ", as known")
           : "",
      rounded_metres(found.length), about_metres(found.error),
      args.has("besides") ? fmt::format(", and {} besides", units::print(besides, LengthUnit::m)) : "",
      rounded_metres(before),
      off == Length{} ? "the same"
                      : fmt::format("{} {}", rounded_metres(units::abs(off)), off.nm > 0 ? "less" : "more"));
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
      {"tare", Kind::mass, false, false, "of the empty spool; as known of the coil", {0, 20000}},
      {"form", Kind::one_of, false, false, "stick or coil; as it was received", {}, {"stick", "coil"}},
      {"besides", Kind::length, false, false, "on hand, but not on the scale", {0, 1e7}},
      division,
      takes::at},
     {("[the] {wire} (coil|spool|roll) {form=coil} (weighs|weigh|weighed|is) {mass} [(tare|spool|empty) "
       "{tare}] [[and] besides {besides}]"),
      "[the] {wire} sticks {form=stick} (weighs|weigh|weighed|are) {mass}",
      ("[the] {wire} (coil|spool|roll) {form=coil} (weighs|weigh|weighed|is) {mass} (on|with) [its|a|the] "
       "spool of {tare}"),
      ("[the] {wire} (coil|spool|roll) {form=coil} (weighs|weigh|weighed|is) {mass} (without [its|the|a] "
       "spool|bare) "
       "{tare=0 g}"),
      ("[the] (coil|sticks|spool|roll) of {wire} (weighs|weigh|weighed) {mass} [(tare|spool|empty) "
       "{tare}]"),
      "(weigh|weighed) {wire} [at|with] {mass} [(tare|spool|empty) {tare}]",
      ("(weigh|weighed) [the] (coil|sticks|spool|roll) of {wire} [at|with] {mass} [(tare|spool|empty) "
       "{tare}]"),
      "{wire} (weighs|weigh|weighed) {mass} [(tare|spool|empty) {tare}]",
      "{mass} of {wire} (is|are) left [(tare|spool|empty) {tare}]",
      "weigh {wire} [at] {mass} besides {besides}",
      "[on the scale] [the] {wire} (shows|reads|comes to) {mass} [(tare|spool|empty) {tare}]",
      "[the] scale (says|shows|reads) {mass} for [the] [coil of] {wire} [(tare|spool|empty) {tare}]",
      "(put|laid) {wire} on the scale {mass} [(tare|spool|empty) {tare}]"},
     {"the coil of medium weighs 620 g, tare 120 g", "weighed the sticks of medium at 143.6 g",
      "weigh medium 620 g tare 120 g", "the medium coil weighs 310 g, tare 90 g"},
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
    &weigh,
    &why_much};

extern const Command calibrate_row;
const Command calibrate_row{
    {"calibrate",
     "Keeps what a known length of a wire weighs, so that a coil can be weighed for its length.",
     {takes::wire,
      {"length", Kind::length, true, false, "of the known piece", {20, 100000}},
      {"mass", Kind::mass, true, false, "of the known piece", {0.1, 100000}},
      division,
      takes::at},
     {"{length} of {wire} (weighs|weigh) {mass}", "{mass} (is|are|makes|make) {length} of {wire}",
      "calibrate {wire} [with|by] {length} [at|weighing|is] {mass}",
      "a stick of {wire} of {length} weighs {mass}"},
     {"610 mm of medium weighs 14.6 g", "calibrate medium with 610 mm weighing 14.6 g"},
     Role::bench,
     {gives::wire,
      {"g_per_m", Kind::number, "what a metre weighs"},
      {"error_percent", Kind::number, "how far that may be off"}}},
    &calibrate};

} // namespace nutward::shop::command_rows
