// What the work can do to whoever does it. Nothing is ever called safe here: plate, manual, rules and trained
// staff say that. The lines themselves are those that other answers carry (common practice, no source).
#include "shop/rows.hpp"

#include <array>

namespace nutward::shop::question_rows {

namespace {

struct Work {
  std::string_view name, words;
  std::vector<Hazard> hazards;
};

const std::array<Work, 7>& works() {
  static const std::array<Work, 7> all{
      {{"press", "pressing", {Hazard::press}},
       {"nip", "nipping", {Hazard::nipping}},
       {"hammer", "hammering", {Hazard::hammering}},
       {"sand", "sanding and filing", {Hazard::sanding, Hazard::hot_ends, Hazard::metal_dust}},
       {"dust", "dust", {Hazard::metal_dust, Hazard::sanding}},
       {"glue", "glue", {Hazard::glue}},
       {"iron", "the iron", {Hazard::iron}}}};
  return all;
}

std::vector<std::string_view> names_of_works() {
  std::vector<std::string_view> out;
  for (const Work& w : works())
    out.push_back(w.name);
  return out;
}

Answer ask(const Args& args, const Moment&, const View&) {
  Answer out;
  const Work* one = nullptr;
  for (const Work& w : works()) {
    if (args.has("work") && args.text("work") != w.name) continue;
    if (args.has("work")) one = &w;
    for (const Hazard h : w.hazards)
      if (std::find(out.cautions.begin(), out.cautions.end(), h) == out.cautions.end())
        out.cautions.push_back(h);
  }
  out.text =
      fmt::format("Nutward calls no work safe: the machine's plate and manual, the shop's rules and "
                  "trained staff say what holds. If somebody is hurt, stop and get help first. What is "
                  "usual{} stands in the cautions.",
                  one != nullptr ? fmt::format(" with {}", one->words) : std::string());
  out.data = record({{"work", one != nullptr ? Value{std::string(one->name)} : Value{}}});
  return out;
}

} // namespace

extern const Question safety;
const Question safety{
    {"safety",
     "What to mind at work that can hurt: press, sanders, hammer, nippers, dust, glue, iron.",
     {{"work", Kind::one_of, false, false, "all of it where not said", {}, names_of_works()}},
     {"[what about] [the] safety [rules|advice|notes]",
      "[what about] safety (at|with|of|in|on|for|when|while) [the] {work}",
      "[what about] [the] {work} safety", "is it safe to {work}", "is [the] {work} (safe|dangerous|harmful)",
      "what (do|should|must) (i|we) wear [(for|at|when|while|with) [the] {work}]",
      ("do (i|we) need [a|an|any] (mask|gloves|goggles|respirator|[eye|ear] protection|[safety] glasses|ear "
       "defenders) [(for|at|when|while|with|to) [the] {work}]")},
     {"safety", "is it safe to sand frets without a mask", "what should I wear at the press"},
     Role::look,
     {{"work", Kind::one_of, "that was asked about; null for all", Often::or_null, {}, names_of_works()}}},
    &ask};

} // namespace nutward::shop::question_rows
