// What a job's neck lies on in the press: said, and taken back.
#include "shop/press_settings.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

constexpr Bounds along_neck{1, 2000};

// A place that was said, or taken back, or left as it was.
void take_place(std::optional<Length>& kept, std::string_view said, std::string_view none, const Args& args) {
  if (args.has(said) && args.yes(none)) {
    throw Problem(Fault::value, "Does it begin there, or not at all?", std::string(none), "Say one of them.");
  }
  if (args.yes(none)) kept.reset();
  if (args.has(said)) kept = args.opt<Length>(said);
}

void take_hollow(Job& job, const Args& args) {
  if (args.yes("no_hollows")) job.bed.voids.clear();
  if (args.has("hollow_from") != args.has("hollow_to")) {
    throw Problem(Fault::value, "A hollow is from one place to another.",
                  args.has("hollow_from") ? "hollow_to_mm" : "hollow_from_mm",
                  "Say both, such as: hollow from 350 mm, hollow to 372 mm.");
  }
  if (!args.has("hollow_from")) return;
  const press::Stretch hollow{args.get<Length>("hollow_from"), args.get<Length>("hollow_to")};
  if (hollow.to < hollow.from) {
    throw Problem(Fault::value,
                  fmt::format("A hollow from {} mm to {} mm is the wrong way round.",
                              units::print_exact_mm(hollow.from), units::print_exact_mm(hollow.to)),
                  "hollow_to_mm", "Both are from the nut.");
  }
  constexpr std::size_t most = 20;
  if (job.bed.voids.size() == most)
    throw Problem(Fault::value, fmt::format("That would be more than {} hollows.", most), "hollow_from_mm",
                  "Press such a board somewhere else.");
  if (std::find(job.bed.voids.begin(), job.bed.voids.end(), hollow) == job.bed.voids.end())
    job.bed.voids.push_back(hollow); // said twice it is still one
}

// What was said now takes the place of what was said before; what was not stays.
void take_bed(Job& job, const Args& args) {
  if (args.yes("taken_out")) {
    job.bed.cradled = job.bed.head_clear = job.bed.nothing_bridges = false;
    job.bed.glue_set = false; // others may be glued meanwhile
  }
  job.bed.cradled = args.or_else("cradled", job.bed.cradled);
  job.bed.head_clear = args.or_else("head_clear", job.bed.head_clear);
  job.bed.nothing_bridges = args.or_else("nothing_bridges", job.bed.nothing_bridges);
  job.bed.glue_set = args.or_else("glue_set", job.bed.glue_set);
  job.soft_wood = args.or_else("soft_wood", job.soft_wood);
  job.nut_off = args.or_else("nut_off", job.nut_off);
  take_place(job.bed.body_from, "body_from", "no_body", args);
  take_place(job.bed.bare_from, "bare_from", "no_bare", args);
  take_hollow(job, args);
}

std::string under(const Job& job, const Setup& set) {
  std::string out;
  if (job.bed.body_from) out += fmt::format(" A closed body from {}.", say(*job.bed.body_from, set));
  if (job.bed.bare_from)
    out += fmt::format(" Nothing under the board from {}.", say(*job.bed.bare_from, set));
  for (const press::Stretch& v : job.bed.voids)
    out += fmt::format(" Hollow from {} to {}.", say(v.from, set), say(v.to, set));
  if (job.soft_wood) out += " Soft wood.";
  if (job.nut_off) out += " The nut is off.";
  return out;
}

// "no closed body" for what was said before and holds no more.
std::string taken_back(const Job& before, const Job& now) {
  std::vector<std::string> out;
  if (before.bed.body_from && !now.bed.body_from) out.emplace_back("no closed body");
  if (before.bed.bare_from && !now.bed.bare_from) out.emplace_back("the board bare nowhere");
  if (!before.bed.voids.empty() && now.bed.voids.empty()) out.emplace_back("nothing hollow");
  if (before.soft_wood && !now.soft_wood) out.emplace_back("hard wood");
  if (before.nut_off && !now.nut_off) out.emplace_back("the nut in its place");
  return out.empty() ? "" : fmt::format(" Now {}.", fmt::join(out, ", "));
}

Value hollows_of(const Job& job) {
  std::vector<Value> out;
  out.reserve(job.bed.voids.size());
  for (const press::Stretch& v : job.bed.voids)
    out.push_back(record({{"from", v.from}, {"to", v.to}}));
  return list(std::move(out));
}

Effect press_support(const Args& args, const Moment&, Tx& tx) {
  const Setup set = setup(tx);
  Job job = job_of(args, tx);
  if (args.call().args.size() == 1) {
    throw Problem(Fault::value, fmt::format("What does the neck of {} lie on?", named(job)), "cradled",
                  fmt::format("Say: job {} is cradled, head clear, nothing bridging, glue set.", job.id));
  }
  const Job before = job;
  take_bed(job, args);
  tx.put(job);
  const std::string missing = still_to_say(job);
  Effect out;
  out.answer.text =
      fmt::format("{}: {}{}{}", named(job),
                  missing.empty() ? "cradled under the whole group, head clear, nothing bridging, glue set."
                                  : "still to say before it is pressed: " + missing + ".",
                  under(job, set), taken_back(before, job));
  out.answer.cautions = {Hazard::press};
  out.answer.data = record({{"job", ref(Thing::job, job.id)},
                            {"cradled", job.bed.cradled},
                            {"head_clear", job.bed.head_clear},
                            {"nothing_bridges", job.bed.nothing_bridges},
                            {"glue_set", job.bed.glue_set},
                            {"body_from_mm", opt(job.bed.body_from)},
                            {"bare_from_mm", opt(job.bed.bare_from)},
                            {"hollows", hollows_of(job)},
                            {"soft_wood", job.soft_wood},
                            {"nut_off", job.nut_off},
                            {"ready", missing.empty()}});
  out.answer.about.args = {{"job", ref(Thing::job, job.id)}};
  return out;
}

// Both at once may also have meant that the board hangs free there.
std::string why_yes(const Args& args, const Moment&, const View& view) {
  if (!args.yes("no_body") || !args.yes("no_hollows")) return "";
  const Job job = job_of(args, view);
  if (!job.bed.body_from && job.bed.voids.empty()) return "";
  return fmt::format("With a yes {} has no closed body and no hollow under its board any more, and bars may "
                     "stand there. If it has nothing to lie on, say instead from where: nothing under job {} "
                     "from 400 mm.",
                     named(job), job.id);
}

} // namespace

extern const Command press_support_row;
const Command press_support_row{
    {"press-support",
     "Keeps what a job's neck lies on in the press: nothing is pressed before all four have been said.",
     {takes::job,
      {"cradled", Kind::yes, false, false, "its back lies in a cradle under the whole group"},
      {"head_clear", Kind::yes, false, false, "the head touches nothing"},
      {"nothing_bridges", Kind::yes, false, false, "nothing under the neck keeps it off the cradle"},
      {"glue_set", Kind::yes, false, false, "no glue is fresh"},
      {"taken_out", Kind::yes, false, false, "the neck is out of the cradle: these four are to be said anew"},
      {"body_from", Kind::length, false, false, "from the nut: beyond here there is a closed body",
       along_neck},
      {"no_body", Kind::yes, false, false, "there is no closed body under the board after all"},
      {"bare_from", Kind::length, false, false, "beyond here the board has nothing under it", along_neck},
      {"no_bare", Kind::yes, false, false, "the board has something under it up to its end after all"},
      {"hollow_from", Kind::length, false, false, "where one more hollow under the board begins", along_neck},
      {"hollow_to", Kind::length, false, false, "and ends", along_neck},
      {"no_hollows", Kind::yes, false, false, "no hollow is there any more: it takes back all of them"},
      {"soft_wood", Kind::yes, false, false, "the board is of soft wood"},
      {"nut_off", Kind::yes, false, false, "the nut is out: a bar may reach over its place"}},
     {("[the neck of] {job} (is|lies) <cradled {cradled=yes}|head [is] clear {head_clear=yes}|nothing [is] "
       "bridging {nothing_bridges=yes}|nothing bridges {nothing_bridges=yes}|glue [is] set {glue_set=yes}|no "
       "fresh glue {glue_set=yes}|soft wood {soft_wood=yes}|nut off {nut_off=yes}>"),
      "[the neck of] {job} is [taken] out of [the] cradle {taken_out=yes}",
      "[the neck of] {job} is (not|no longer) cradled {cradled=no}",
      "[the] head of {job} is clear {head_clear=yes}",
      "[the] head of {job} (is not|is no longer) clear {head_clear=no}",
      "[the] head of {job} touches {head_clear=no}",
      "[the] nut of {job} is (off|out) {nut_off=yes}",
      "[the] nut of {job} is (on|in|in place|back|back in|back on) {nut_off=no}",
      "[the] glue (of|on|in) {job} (is|has) [now] (set|cured|dry|dried) {glue_set=yes}",
      "[the] glue (of|on|in) {job} is [still] (fresh|wet|soft) {glue_set=no}",
      "[the] glue (of|on|in) {job} (is not|has not|is no longer) (set|cured|dry|dried) {glue_set=no}",
      "[there is] fresh glue (on|in|under) {job} {glue_set=no}",
      "nothing bridges [under] {job} {nothing_bridges=yes}",
      "something bridges [under] {job} {nothing_bridges=no}",
      "[the] body of {job} begins (at|from) {body_from}",
      "[there is] [a] body under {job} from {body_from}",
      "[there is] no [closed] body (under|on|of|for) {job} [any more|after all] {no_body=yes}",
      "{job} has no [closed] body [under it|under the board] {no_body=yes}",
      "[there is] nothing under [the board of] {job} from {bare_from}",
      "[the board of] {job} is (bare|unsupported) from {bare_from}",
      "[the board of] {job} (is not|is no longer) (bare|unsupported) {no_bare=yes}",
      "[the] [whole] board of {job} is supported [to its end|all along] {no_bare=yes}",
      "[the board of] {job} is hollow from {hollow_from} to {hollow_to}",
      "[there is] [a] (hollow|void) under {job} from {hollow_from} to {hollow_to}",
      ("[there is] no (hollow|hollows|void|voids) (under|in|on) [the board of] {job} [any more|after all] "
       "{no_hollows=yes}"),
      "[the board of] {job} (is not|is no longer) hollow [any more] {no_hollows=yes}",
      "[there is] nothing under [the board of] {job} (any more|after all) {no_body=yes} {no_hollows=yes}",
      "[the] board of {job} is [of] soft wood {soft_wood=yes}",
      "[the] board of {job} is [of] hard wood {soft_wood=no}",
      "[the] board of {job} is not [of] soft wood {soft_wood=no}"},
     {"job 5 is cradled, head clear, nothing bridging, glue set", "the body of job 5 begins at 420 mm",
      "no body under job 5", "the glue of job 5 has cured"},
     Role::bench,
     {gives::job,
      {"cradled", Kind::yes, "whether it was said"},
      {"head_clear", Kind::yes, "likewise"},
      {"nothing_bridges", Kind::yes, "likewise"},
      {"glue_set", Kind::yes, "likewise"},
      {"body_from", Kind::length, "from the nut", Often::or_null},
      {"bare_from", Kind::length, "from the nut", Often::or_null},
      gives::records("hollows", "under the board",
                     {{"from", Kind::length, "from the nut"}, {"to", Kind::length, "to here"}}),
      {"soft_wood", Kind::yes, "whether its board is of it"},
      {"nut_off", Kind::yes, "whether the nut is out"},
      {"ready", Kind::yes, "whether all four have been said"}}},
    &press_support,
    &why_yes};

} // namespace nutward::shop::command_rows
