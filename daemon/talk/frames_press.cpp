// What the commands about pressing, its bars and its recheck are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

std::vector<FrameText> of_passes() {
  return {
      {"pressed",
       {"+(pressed|press done|squeezed|squashed|down|pass done|did the next pass|done the next pass|finished "
        "the next pass|got to|did pass|on the gauge|that pass|went down|got pressed|pressed down|gone "
        "down|went up to|pushed in|pushed home|under the press|in the press)",
        "{slots}|(fret|frets|slot|slots|numbers|number) {slots}",
        "{slots=it} (pressed|squeezed) (it|them|that|this)",
        "{load} [on the gauge]|(at|with) {load}|up to {load}",
        "(gauge|needle|load|force|dial) [of|on the gauge] [is|was|read|reads|said|says|showed|stood at|stood "
        "on|went to|went up to|came to|got to] {load}",
        "[with|using|under] [the] {bar} bar|[with|using|under] [the] bar [called] {bar}|under [the] {bar}",
        "{next=yes} [the|this|that] next pass [done|pressed|finished|complete]|{next=yes} (this|that) pass "
        "[is] [done|pressed]|{next=yes} pass [is] (done|finished|complete)|{next=yes} only got to "
        "{load}|{next=yes} done {load} on the gauge|{next=yes} next (one|group) [is] (done|pressed)",
        "(all of it|all of them|all the frets|all frets|all|the lot|lot|just|got|squeezed|squashed|did|done|"
        "again|down|frets|on the gauge|complete|completely|under|whole thing|board|through|on|using|"
        "press|pressing|pressed|took place|has been|carried out|went up|needle|gauge|big press|finished|"
        "happened|ram|as)"}},
      {"rechecked",
       {"+(rechecked|recheck done|did the recheck|done the recheck|recheck of|on the "
        "recheck|sprang|sprung|came back up|up again|lifted|second look|springback|is up|popped up|re - "
        "checked|back up|looked at|still down|came up|had another look|had a second look|had a look|nothing "
        "has moved|nothing moved|stayed down|gone over|went over)",
        "!from", "!to", "!high", "!sprang", "springback on the last fret of [{job}] {sprang}",
        "{sprang} [of|on] [{job}] [has|have|had|is|are] (sprang|sprung|popped|lifted|crept|risen|rose|moved) "
        "[back] [up] [again|overnight]",
        "{sprang} [of|on] [{job}] [has|have|had|is|are] (come|came|back|up) [back] [up] [a bit] "
        "[again|overnight]",
        "{sprang} [of|on] [{job}] [was|were|has|have] [observed|found|seen] [to have] (sprung|sprang|come "
        "up) "
        "[back] [up]",
        "(springback|spring - back|spring back|sprung back|sprang back) [of|on] [{job}] [at|on|of] "
        "[the last] [fret|frets|slots] {sprang}",
        "(rechecked|re - checked|looked at|went over|gone over|had a look at|recheck of|second look at|look "
        "at|another look at) (fret|frets|slots|numbers) {slots}|(went over|gone over) {slots}",
        "{slots} [of|on] [{job}] [is|are|were|was] (rechecked|re - checked|looked at|gone over)",
        "{from} (to|-|through|until) {to} (rocks|rock|rocked|wobbles)",
        "[on|along] [the] {line=treble} (treble|thin strings) [side|edge|line]",
        "[on|along] [the] {line=bass} bass [side|edge|line]|{line=bass} bass (side|edge|line)",
        "[down|along] [the] {line=middle} middle",
        "[edge|straightedge|rocker] [has] (rocks|rocked|rocking) (on|over|at) {high}|{high} [of|on] [{job}] "
        "(is|are|stands|stand|sits) [still] (high|proud)",
        "at {humidity} humidity|humidity [is|was|of|stood|stands|at] {humidity} [percent|%]|{humidity} "
        "[percent] humidity|{humidity} percent",
        "(all still down|all down|still down|fine|all good|nothing sprang|none sprang back|none sprang|had "
        "my second look|overnight|nothing came up|rest are down|rest is down|rest down|rest is level|rest "
        "are level|rest stayed|all ok|all "
        "right|good|did|done|had|my|the|second look|look|recheck of|on the recheck|nothing moved|nothing had "
        "moved|nothing has moved|everything is down|everything is level|all stayed down|they all stayed "
        "down|all "
        "flat|all level|all are level|all steady|all frets were found level|all frets are level|none came "
        "up|none|nothing|everything|stayed|rest|another|still level|level|still|frets|fret|and|side|back|"
        "humidity|of|no|since|pressing|since pressing|since the pressing|straightedge|edge|gander|a bit|the "
        "day after|again|was|carried out|found)"}},
      {"look-again",
       {"+(look again|recheck|have another look|another look|look at|push the recheck|recheck it|check "
        "again|re-check|move the recheck|postpone the recheck|put off the recheck|remind me|second look|"
        "rechecked|control|check)",
        "+({again}|(to|until|on|for|till|come) {again})",
        "(recheck|second look|look|check|control) [of|at] [{job}] [is|will be|falls|set|moved|rescheduled] "
        "[for|to|on] {again}",
        "(have another look|look|again|at|it|have|another|push|the|of|recheck|to|move|at the|second|second "
        "look|schedule|scheduled|rescheduled|set|be|will be|frets|give it|longer|control|after the "
        "pressing|after pressing|we make|make|i|we|till|come|is when|taking|be taking)",
        "(frets|fret|slots|numbers) {slots}", "{slots}"}},
      {"press-support",
       {"+(cradled|head clear|nothing bridges|glue set|body|no body|nut is off|nut's off|soft wood|nothing "
        "under|hollow|taken out|cradle|head's clear|glue is set|nut off|softwood|glue has set|glue)",
        "!body_from",
        "!bare_from",
        "!hollow_from",
        "!hollow_to",
        "{cradled=yes} [is|are|now] cradled|{cradled=yes} [lies|lying|sits|rests|is] in (the|its|a) cradle|"
        "{cradled=yes} [has] [its] back in (the|its|a) cradle|{cradled=no} (not|no longer) cradled",
        "{head_clear=yes} head [of {job}] [is] (clear|free)|{head_clear=yes} head "
        "[is] (hangs|hanging) (free|clear)|{head_clear=yes} head "
        "[is] [not|does not] (touching|touch|touches) (nothing|anything)|{head_clear=no} head "
        "[is] not (clear|free)|{head_clear=no} head touches",
        "{nothing_bridges=yes} nothing [is] (bridges|bridging)|{nothing_bridges=yes} nothing under [the] "
        "[neck] [of {job}] [that] (keeps|keeping|holds|holding|holds up) it off [its|the] "
        "cradle|{nothing_bridges=no} something (bridges|bridging|is bridging)",
        "{glue_set=yes} glue [of|on|in] [{job}] [is|has] [now] (set|hard|cured|dry|dried|hardened|gone off) "
        "[now] [it] [is] [not fresh] [any more|anymore]|"
        "{glue_set=yes} (not|no longer) fresh [any more|anymore]|{glue_set=yes} no fresh "
        "glue|{glue_set=no} glue [of|on|in] [{job}] [is] [still] (fresh|wet|soft|tacky|green)|{glue_set=no} "
        "[still] (fresh|wet|tacky)|{glue_set=no} no glue [is] set [yet]|{glue_set=no} glue [of|on|in] "
        "[{job}] [is|has] not [yet] (set|hard|cured|dry|dried)|{glue_set=no} (not|has not) set yet",
        "{taken_out=yes} taken out|{taken_out=yes} (out of|from) [the|its] cradle",
        "[closed] body [on|of|under|beneath] [{job}] [board] [starts|begins] (at|from) {body_from} [on]|body "
        "[on|of|under] [{job}] (starts|begins) {body_from}|{*job} closed body from {body_from} [on]",
        "{no_body=yes} no [closed] body [under] [at all]",
        "{nut_off=yes} nut [of|on] [{job}] [is] (off|out)|{nut_off=yes} (took|taken) [the] nut "
        "(off|out)|{nut_off=no} nut [of|on] [{job}] [is] (back|back on|on again|in place)",
        "{soft_wood=yes} [of] [a] (soft wood|softwood)|{soft_wood=no} [of] (hard wood|hardwood)",
        "nothing (under|beneath|below) [the board of] [{job}] [board] (beyond|from|past|behind) {bare_from}|"
        "(beyond|past|behind|from) {bare_from} [there] [is] nothing [is] (under|beneath|below) [it]|hangs "
        "(free|over|in the air) [from|beyond|past|behind] {bare_from}|(bare|unsupported) (from|beyond|past) "
        "{bare_from}",
        "{no_bare=yes} supported [up] to [its|the] [very] end|{no_bare=yes} supported all along",
        "hollow [under] [the] [{job}] [board] [goes|runs] (from|between) {hollow_from} (to|and|-|until) "
        "{hollow_to}",
        "hollow [starts|begins] [at|from] {hollow_from} [under] [the] [board] [and] [it] (ends|stops) "
        "[at] {hollow_to}",
        "{no_hollows=yes} no [more] (hollow|hollows|void|voids) [remain|remains|left|any more]",
        "(board|fingerboard|fretboard|neck|is|on|of|under|neck is|the|from|made|measured from the nut|from "
        "the nut|so a bar may reach over it|a bar may reach over it|so a bar may go over it|over its "
        "place|all along|under the whole group|the back of|back|lies|took|there "
        "is|now|closed|job|after all|at all|so|its)"}},
  };
}

std::vector<FrameText> of_bars() {
  return {
      {"define-bar",
       {"+(bar|define bar|new bar|bar called|caul|block)", "!name", "!length", "!width", "!sole_radius",
        "+(define [a] bar {name}|(called|named|call it|name it|designated|dubbed|christened|we call|they "
        "call|i call|by the name of|with the name|its name is|name) {name}|new bar [called] "
        "{name}|(bar|caul) "
        "[called|named] {name}|the {name} (bar|caul))",
        "+(length [of|is] {length}|{length} [in] (long|length)|{length} along [the neck]|{length} [by|x] "
        "{width}|{length} "
        "long [and|by|x] {width} wide)",
        "+(width [of|is] {width}|{width} [in] (wide|width|across|breadth|broad)|breadth {width}|{width} "
        "across [it])",
        "(rated|rating|good|safe) [is|for|to|at|up to] {rating}|rating [of] [the] {name} bar [is] {rating}",
        "{narrow=yes} narrow|{narrow=yes} (bears|bear|made to bear|made|presses|press) [on] [for] [only] "
        "(one|a single) fret [only]|{narrow=yes} (only|just) one fret",
        "sole [is] [hollow|hollowed] [with|of|to] [a] [radius] [of] {sole_radius} [radius]|hollow [sole] "
        "[of|with] "
        "{sole_radius} [radius]|radius [of] [the] [sole] [stays|is|by|of] {sole_radius}|sole radius "
        "{sole_radius}|hollowed to [a] {sole_radius} [radius]|sole [of] [the] [{name}] [bar] [was|is] "
        "[recut|cut|ground|turned] [to] [a] {sole_radius} [radius]|hollow {sole_radius}",
        "ladder [of|is] {ladder}", "sole [is] flat|flat sole",
        // "…, and drop the short one" is never passed over.
        "drop bar {name}",
        "(bar's been ground down|been|ground|ground down|planed down|define|bar|new|we turned "
        "a|called|it's|now|been ground down|made|turned|neck|machined|cut|and|along|got|a|for the "
        "press|press|has|have|really|"
        "is|measured|again|put down|register|add|there is|there's|one|of our|pressing "
        "bars|make|iron|steel|oak|brass|piece|block|"
        "in the cupboard|recut|in|size|sized|sole|the|of|with|by)"}},
      {"drop-bar",
       {"+(drop|remove|take it out|do not press|take it off|take it away|forget|get "
        "rid|delete|scrap|retire|bin|strike|scratch|gone|lose|out of use|out of service|no longer|can go)",
        "!name",
        "+({name} bar|bar called {name}|bar {name}|with the {name} bar|bar (named|called|designated|they "
        "call|with the name|with name|of the name) {name}|{name} (from|off) [the] bars)",
        "(get rid of|drop|remove|removed|forget|forget "
        "about|the|bar's|bar|cracked|broken|split|bent|gone|take it out "
        "of use|take it out|take it off|take it away|take|out of use|out of service|we|do not press with|do "
        "not use|do not use it|"
        "nobody's to press with|nobody is to press with|nobody uses it|no longer have|no longer use|not to "
        "be used|any more|again|with|nobody "
        "is|worn|worn out|off the list|off the books|off the bars|from the bars|from the list|for "
        "good|list|from|press|use|anymore|of|away|sold|lost|retire|delete|bin|scrap|strike|scratch|can "
        "go|goes|banjaxed|in two|warped|of no use|it|that one|has to be|should be|must be|no longer used|no "
        "longer to be used|service)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_pressing() {
  std::vector<FrameText> out = of_passes();
  for (FrameText& more : of_bars())
    out.push_back(std::move(more));
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
