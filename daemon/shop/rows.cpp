#include "shop/rows.hpp"

namespace nutward::shop {

namespace {
// Less than one cut of the nippers is ground off with the dressing.
bool nipped(const pieces::Verdict& v, const Setup& setup) {
  return v.nip >= setup.fit.nip_loss;
}
} // namespace

std::string how_to(const pieces::Verdict& v, const Setup& setup) {
  std::string out;
  if (v.ends_to_dress > 0) {
    const std::string ends = v.ends_to_dress == 1 ? "dress one end" : "dress both ends";
    out = nipped(v, setup)
              ? fmt::format("nip {} off and {}, to {}", say(v.nip, setup), ends, say(v.finish, setup))
              : fmt::format("{}, to {}", ends, say(v.finish, setup));
  } else if (v.nip > Length{}) {
    out = fmt::format("{} {} off, to {}", nipped(v, setup) ? "nip" : "file", say(v.nip, setup),
                      say(v.finish, setup));
  } else {
    out = v.tang_to_nip > Length{} ? "its crown goes in as it is" : "it goes in as it is";
    if (v.perhaps_dress_one) out += "; should it stand out at an edge, dress an end";
  }
  if (v.less_overhang) out += ", with less overhang than usual";
  if (v.tang_to_nip > Length{})
    out +=
        fmt::format("; nip {} of its tang off at each end", say(Length{(v.tang_to_nip.nm + 1) / 2}, setup));
  if (v.outcome == pieces::Outcome::borderline) out = "borderline, try it: " + out;
  return out;
}

std::string comes_off(const pieces::Verdict& v, const Setup& setup) {
  return v.trim == Length{} ? "nothing" : say(v.trim, setup);
}

std::vector<Hazard> hazards_of(const pieces::Verdict& v, const Setup& setup) {
  std::vector<Hazard> out;
  if (nipped(v, setup) || v.tang_to_nip > Length{}) out.push_back(Hazard::nipping);
  if (v.ends_to_dress > 0) out.push_back(Hazard::sanding);
  return out;
}

Length along(const Args& args, Length measured) {
  if (args.text("measured") != "across") return measured;
  if (!args.has("bend_radius")) {
    throw Problem(Fault::value, "A length across the bent ends needs the radius of the bend.",
                  "bend_radius_mm", "Say the radius, or measure it straight.");
  }
  try {
    return board::arc_of_chord(measured, args.get<Length>("bend_radius"));
  } catch (const board::BadBoard& bad) {
    throw Problem(Fault::value, bad.what(), "bend_radius_mm", bad.would_do);
  }
}

std::string across(const Args& args, Length measured, const Setup& setup) {
  if (args.text("measured") != "across") return "";
  return fmt::format(" ({} across its ends, bent to {})", say(measured, setup),
                     say(args.get<Length>("bend_radius"), setup));
}

Value data_of(const pieces::Candidate& c, const Elsewhere& elsewhere, const View& view) {
  static constexpr std::array kinds{"short_fret", "stick_end", "pulled_fret"};
  const auto piece = view.tin().find(c.piece.id);
  std::vector<std::pair<std::string, Value>> out{
      {"piece", ref(Thing::piece, c.piece.id)},
      {"length", c.piece.length},
      {"kind", std::string(kinds.at(static_cast<std::size_t>(c.piece.kind)))},
      {"place", piece ? piece->place : ""},
      {"finish", c.verdict.finish},
      {"trim", c.verdict.trim},
      {"ends_to_dress", std::int64_t{c.verdict.ends_to_dress}},
      {"tang_to_nip", c.verdict.tang_to_nip},
      {"untouched", c.verdict.untouched},
      {"borderline", c.verdict.outcome == pieces::Outcome::borderline}};
  for (auto& field : fields_of(elsewhere))
    out.push_back(std::move(field));
  return record(std::move(out));
}

std::string range_of(const board::Need& need, const Setup& setup) {
  if (need.most) {
    return fmt::format("{} to {}, best {}", say(need.least, setup), say(*need.most, setup),
                       say(need.target, setup));
  }
  return fmt::format("{} or more, best {}", say(need.least, setup), say(need.target, setup));
}

Value list_of(const std::vector<int>& slots) {
  std::vector<Value> items;
  for (int slot : slots)
    items.emplace_back(std::int64_t{slot});
  return list(std::move(items));
}

} // namespace nutward::shop
