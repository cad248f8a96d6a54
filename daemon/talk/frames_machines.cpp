// What the commands about machines, and about what stages need, are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

constexpr std::string_view stages =
    "+({stage=pull} (pulling|pull|pulling out|pulling frets|pulling out old frets|pulling old "
    "frets)|{stage=true} (truing|trueing|true|truing of boards|truing boards)|{stage=slots} (slots|cleaning "
    "[the|of] slots|slot cleaning|cleaning of slots|sawing [the] slots|cutting [the] slots)|{stage=bend} "
    "(bending|bend)|{stage=cut} (cutting|cut)|{stage=nip} (nipping|nip|nipping of tangs|nipping "
    "tangs|nipping the tangs)|{stage=dress} (dressing|dress) [the ends]|{stage=seat} "
    "(seating|seat)|{stage=press} (pressing|press)|{stage=level} (levelling|leveling|level)|{stage=crown} "
    "(crowning|crown)|{stage=file} (filing|file)|{stage=polish} (polishing|polish)|{stage=corners} "
    "(corners|rounding [the] corners|rounding corners)|{stage=recheck} (rechecking|recheck)) [stage]";
constexpr std::string_view number =
    "{machine} [number|no] {number}|(number|no) {number} {machine}|(the first|first) {machine} "
    "{number=1}|(the second|second) {machine} {number=2}|(the third|third) {machine} {number=3}|(both|all) "
    "[the|of the|them|our] {machine}|{machine} [with [the]] number {number}|{machine}";
constexpr std::string_view setup =
    "[takes|of] {setup_minutes} (minutes|min|minute) [of|to] [set up|setup|set-up]|[setup|set-up] "
    "{setup_minutes} (minutes|min)|{setup_minutes=15} [a] quarter of an hour|{setup_minutes=30} half an "
    "hour|{setup_minutes=60} (an|one) hour|{setup_minutes=0} (no (setup|set-up|set up|preparation)|no setup "
    "time|no time [at all]|zero minutes)";

std::vector<FrameText> of_kinds() {
  return {
      {"define-machine",
       {"+(define machine|new machine|define|machine|machines|new thing|new "
        "place|place|workplace|register|equipment|we've got|bought|new kind|as a machine)",
        "+(define machine {name}|new machine {name}|define {name} {count} of them|[call|name] it {name}|add "
        "[the|a] {name} as a machine|[the] {name} should be on the list of machines|machine called "
        "{name}|machine named {name}|(called|named|entitled|designated|by the name of|with the name|the name "
        "is|machine kind named|is named) {name}|call the new thing {name}|a new machine {name})",
        "(count|number of units) {count}|{count} of (them|those|it)|there's {count}|we've got {count}|there "
        "are {count}|(just the one|a single one|just one|one of them|one of those|there is one|there's "
        "one|have of it one piece|only one) {count=1}|(as many as (are|we) (wanted|want)|no "
        "limit|unlimited|an unlimited number of places) {count=0}|we (own|have|bought) {count} [of them]|two "
        "of them {count=2}|three of them {count=3}|in it are {count} places",
        setup,
        "(on the list of machines|define|machine|machines|new|there's|there is|now|call it|add|should be|on "
        "the list of|one|we've got|as a|of|it|list|setup|set up|to set up|place|kind|kind of "
        "machine|register|put|down|put it in|where one can work|a|an|with|in|the|takes|enter|entered|is to "
        "be|create|own|of setup|program|must be|too|for|as of today|preparation|preparation "
        "time|lasts|and|we|have|want|come in|establish|designated|workplace|category of equipment)"}},
      {"change-machine",
       {"+(we have|we've|left|now|setting up|setup|rename|make that|set up|we've got|takes|have|there "
        "are|only|number|called|set-up|preparation|limit|possess|get it ready|as many as)",
        "+({machine}|{count} [more] [of] [the|our] {machine} [now|left]|number of {machine} [is] "
        "(to|is|as|now|be|at) [be] [recorded as|set to] {count}|{machine} {count} [now]|of the {machine} we "
        "(have|possess|own) {count}|{count=0} (no limit|as many as we want|unlimited|any number of|enough))",
        setup, "we (have|ve) {count} [now|from today]|so we've {count} [now|from today]",
        "(rename [the] {machine} [to|into] {name}|[is|be|was] called {name} [now]|[is] named {name} "
        "[now]|goes by {name} [now])",
        "(we have|now|only|left|setting up|takes|setup|on|the|make that|there are|set "
        "up|minutes|to|for|have|got|we've got|of|a|has no limit|as many|count|machine|machines|named|kind of "
        "machine|number|shall|from now on|from today|be|is|so|has arrived|amend|set-up time|setup "
        "time|time|each|each has|and each has|preparation|in the shop|it takes|get it ready|get ready|you "
        "need|needs|we need|to get it ready|anymore|any more|and|set|change|before you can do something else "
        "on|for other work|up|recorded|with|it|in all|altogether)"}},
      {"drop-machine",
       {"+(sold|gone|get rid|strike|struck|drop|remove|off the list|take it off|scrapped|do not "
        "have|delete|no longer have|left the shop|erase|take|done away|no more|scrap|does not "
        "exist|forgotten|away)",
        "+{machine}",
        "(is|the|it|off the list|list|of|from the machines|machine|machines|we do not have that machine "
        "now|we do not have|we do not need|does not exist|that machine|now|take|them|off|we|get rid of|any "
        "more|anymore|gone|to|from|has been|longer|kind of machine|in the shop|from the shop|as a machine|by "
        "us|list of machines|machine list|from the machine list|from the list|for "
        "good|permanently|entirely|at all|away|with|and|it is to be|be|can be|can|was|no|more|in this "
        "shop|kind|y'all can|you can|delete it|erase it|throw out|out|has|have|been)"}},
  };
}

std::vector<FrameText> of_outages() {
  return {
      {"machine-down",
       {"!at",
        "+(down|broken|out of service|out|no|torn|serviced|can not use|can not be used|out of "
        "order|broke|kaput|dead|not working|does not work|leaks|defective|bust|jammed|stuck|faulty|broke "
        "down|on strike|being repaired|nobody can use|not usable|unusable|unavailable|not available|goes for "
        "service|off|out of action|does not turn|does not run|maintenance|burnt out|service|not be "
        "used|inspected|no longer (works|runs|turns|heats|presses|goes))",
        number,
        "[down|out] [from|as of|as from] {begins} (until|till|to|through|and) {until}|(until|till) "
        "{until}|[down|out] (from|as of|as from) {begins}|since {at}",
        "[on|for] {day} [from] {hours}|[from] {hours} [on] {day}|[from] {hours}|([on|for] {day} [all day|the "
        "whole day]|[all day|the whole day] [on] {day})|(the|on the|in the) {part} (of|on) {day}|[on] {day} "
        "[in|in the] {part}|this {part}|[all|for|throughout] [of] next week {week=next}|[all|for] [of] this "
        "week {week=this}|[for] the (rest|remainder) of (this|the) week {week=this}",
        "can not use the {*machine} before {*at} [this afternoon]|before {*at}", "~{note}",
        "(because|because of|since|owing to|due to|for) {note}",
        "{note=belt torn} belt [is] torn [on]|{note=ram leaks} ram leaks|{note=serviced} [gets|being] "
        "serviced|{note=service} (goes|gone) for service|{note=maintenance} for maintenance|{note=belt "
        "snapped} belt snapped|{note=burnt out} motor burnt out|{note=does not turn} does not "
        "turn|{note=leaks oil} leaks oil [on the floor]|{note=being repaired} being repaired",
        "(is|the|it's|down|out|service|on|number|gets|of|we|use|order|today|has|for "
        "now|broken|working|it|can not be used|out of action|stays|will be|be|been|are|have been|nobody can "
        "use|it cannot be used now|so|for that day|until further notice|until somebody says so|for the time "
        "being|shall be|at the moment|right now|one of|not be used|goes|machine|until we know more)"}},
      {"machine-up",
       {"+(fixed|back|back in service|works again|up again|repaired|working again|in service|running "
        "again|ok again|up|mended|works|runs again|fine again|fine|turns again|in working order|up and "
        "running|restored|operational|use again|anew|back in business|all right|going again|good as "
        "new|right as rain|stays in service|in use again|no longer (down|broken|out of order|out of "
        "service|off|away|in repair))",
        number, "[since] {at}",
        "(the|it's|is|are|again|back|in service|works|and|up|now|running|has "
        "been|been|fixed|ok|order|in|working|all right|finally|runs|fine|turns|you can use it|we can use "
        "it|can be used|be used|may be used|one can use|in working order|once more|operational|restored to "
        "service|was|were|after all|both|since|repaired|the repair is finished|mended|good news|may be "
        "regarded as|up and running|going|good as new|right as rain|so it "
        "is|that|machine|business|stays|at|of)"}},
  };
}

std::vector<FrameText> of_stages() {
  return {
      {"stage-machine",
       {"+(needs|need|on the|at the|at a|happens|wants|bench job|goes on|uses|done on|done at|is "
        "done|job|requires|without|takes place|carried out|do the|necessary|usual machine|we do|a job for|do "
        "it at|is the|whatever machine|should be)",
        stages, "+{machine}|(its usual machine|whatever machine it usually needs|the usual machine)",
        "(needs|need|on|at|the|happens|is|done|from now on|now|a|not the {*machine}|these days|we|do|level "
        "on|uses|job|wants|goes|requires|happen|always|of|stage|for|you need|you'll be needing|you will "
        "need|one needs|takes place|carried out|is carried out|shall be|be|only|bench job|necessary|from "
        "now|so|put that down|let|that stage|it|what|boards|in future|require|machine|record|please record "
        "this|this requirement|with|by|to be done|to|in|as a rule|the "
        "frets|frets|again|revert|whatever|usually|customarily|usual|must|happening|nowadays)",
        "we level on the sander these days"}},
      {"stage-machine", {stages, "+[=|needs|wants|uses|on|at|at the|on the] {machine}", "(from now on|now)"}},
      {"stage-minutes",
       {"+(takes|take|make|minutes|minute|min|hour|hours|half an hour|what was reported|reported|takes us)",
        "!at", stages, "{minutes} (minutes|minute|min) [a|per] [set|neck|board|job]",
        "{minutes=60} (one|an|1|a whole) hour|{minutes=90} an hour and a half|{minutes=90} (one|1) and a "
        "half hours|{minutes=90} ninety minutes|{minutes=30} half an hour|{minutes=120} (two|2) "
        "hours|{minutes=45} three quarters of an hour|{minutes=15} a quarter of an hour",
        "[for|by|per] [a whole neck of|the|a set of|a neck of] (22|twenty-two|twenty - two) frets",
        "(takes|take|us|what was reported|make|let|go by|again|reported|in|now|as|is|we|about|a "
        "board|usually|to|the|stage|a neck|a set|a job|job|for|of|per|set|should be|be|should be planned "
        "at|planned|at|put|standard|duration|the standard duration|has a duration "
        "of|it|a|lasts|allow|reckon|calculate with|one must|must|doesn't take that long|does not take that "
        "long|no longer|on average|roughly|around|a whole neck|whole neck|needs|need|old "
        "frets|frets|plan|count on|with|change|from now on|one|time|necessary)"}},
      {"stage-minutes", {"!at", stages, "+[=] {minutes} (minutes|min)|[=] half an hour {minutes=30}"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_machines() {
  std::vector<FrameText> out = of_kinds();
  for (auto more : {of_outages(), of_stages()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
