// What the commands about jobs and their boards are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

std::vector<FrameText> of_orders() {
  return {
      {"set-due",
       {"+(due|promised|promise|has to go out|must go out|due date|must be ready|needs to be done|has to be "
        "ready|wants it|wants|to be ready|goes out|deadline|has to be done|picked up|has to be "
        "finished|needs it|needs|date|"
        "fetch|collect|collects|day|ready)",
        "(number|numbers) {job!}",
        "+({due}|(for|by|on|to|until|till) {due}|{no_day=yes} (no [promised] (date|day|deadline|due date) "
        "[is] "
        "[promised]|not due [any more]|(drop|strike|remove|forget|scrap|clear|lift|waive) [away] [the] "
        "(deadline|due date|promised day|promised "
        "date|day|date))|{no_day=yes} no particular day|{no_day=yes} no day promised)",
        "(is|now|for|has to|date|new date|the|out|by|on|must|must be|should "
        "be|be|ready|already|moved|move|to|done|due|it|promised|promise|finished|back|"
        "needs|needs it|wants it|wants|go|push|pushed|put "
        "off|postpone|postponed|put|set|change|changed|amend|amended|day|promised "
        "date|promised day|due date|deadline|can fetch it|can fetch|can collect|can pick up|fetch it|collect "
        "it|pick it up|will be fetched|will be collected|picked up|comes for it|owner|customer|"
        "of|from|her|his|their|on it|goes out|must go out|has to be out|has to go "
        "out|deliver|delivered|delivery|he is in no hurry|she is in no "
        "hurry|they are in no hurry|there is no rush|there is no rush on it|there is no hurry|in no hurry)"}},
      {"cancel-job",
       {"+(cancel|cancelled|canceled|take {job} out|take {job} away|drop|picked his mandola up again|not "
        "doing it|strike|off the "
        "list|called off|take out|scratch|withdrawn|withdraw|remove|forget about|out of the queue|from the "
        "queue|off|pulled out|scrap|annulled|struck|bin)",
        "(number|numbers) {job!}", "+{job}", "~{why}", "because {why}|for want of {why}",
        "{why=owner changed their mind} changed (her|his|their) mind", "{why=sold} sold [the] {job}",
        "{why=picked up again} picked (his|her|their) {job} up again",
        "at {why=the owner's request} [the] (owner|customer|client) request|at {why=the owner's request} "
        "request of the "
        "(owner|customer|client)",
        "({*job} [has] changed (her|his|their) mind|[{*job}] sold the {job}|from the queue|out of the "
        "queue|queue|off the "
        "list|list|out|it|cancel it|we're not doing it|we are not doing it|does not want it|want|any "
        "more|anymore|has|the "
        "job|job|entirely|after all|not doing it|we|up|down|order|cancel|cancelled|called off|is "
        "off|off|take|"
        "take it off|take it out|strike|struck|can be "
        "struck|scratch|withdraw|withdrawn|remove|removed|annulled|herewith|hereby|"
        "that job|from|concerning|bin)"}},
      {"free-job",
       {"+(nobody's on|nobody does|nobody is on|nobody has|nobody [is] doing|gives up|free up|take {*person} "
        "off|unassign|let "
        "anyone|anyone|anybody|whoever has time|free|can not do|up for grabs|open to all|take me "
        "off|no one|not mine|hand back|not doing|somebody else|giving up|general pool|pool|giving)",
        "(number|numbers) {job!}", "+{job}",
        "(nobody in particular|no one in particular|whoever has time|whoever has a spare hour|"
        "anyone can have it|anyone can take it|anyone may take it|anyone may have it|anybody can take "
        "it|whoever has time may take it|whoever "
        "has time can take it|whoever has time takes it|whoever wants it|somebody else|somebody else "
        "please|the first who has time makes it|the first "
        "who has time|up for grabs|general pool|the pool|pool|not [{*person}] now)",
        "(on|any more|anymore|let anyone do it|let anyone work on it|let anyone|for anybody|for anyone|free "
        "up|free|i can not do "
        "it after all|i can not do it|does|it|up|do|off|is|take [me|{*person}] off|off "
        "[me|{*person}]|{*person} (gives|gave) "
        "up|{*person}|to|after all|has time|i|now|can do it|assigned|no longer|mine|works on|is "
        "on|giving up|giving|given up|give up|handing back|hand back|returned|to be returned|belongs "
        "to|belongs|belong|goes back|back|again|is "
        "not tied to a bench|work on it|work|from its bench|should|take)"}},
      {"give-job",
       {"+(takes|takes over|does|gets|give|gave|goes to|is mine|mine|i'll do|i'm doing|do|assign|assigned|to "
        "{person}|i'll take|i take|takes on|hand|handed|is for|over to|looks after|works "
        "on|bench|belongs|taken over|be done by|"
        "leave|responsible|hers|his|for {person}|will do|would do)",
        "(number|numbers) {job!}", "!bench", "+{job}",
        "[to|by|with|for] {person}|{person} at [the] {bench} bench",
        "{mine=yes} (mine|i'll do|i'll take|i'm doing|i take|i am doing|to me|me|i do|i will do|i will "
        "take|i am "
        "taking|i should do|as mine|my job|mine to do)",
        "[to|at|by] [the] {bench} bench|[the] {bench} bench (does|takes|gets|do|take)|bench {bench}",
        "(takes|takes over|taken over|does|now|over|job|from|{*person} [is] snowed under|{*person} [is] "
        "(busy|ill|away|off)|to|it|gets|give|given|on|'ll|ill|assign|assigned|hereby "
        "assigned|hand|handed|belongs|belongs at|belongs to|let|be done|"
        "be done by|leave|responsible|is now responsible|responsibility for|responsibility|shall rest "
        "with|rests with|for the work with|for|"
        "they told me|put it down|so that is hers now|that is hers|hers now|is hers|is his|hers|his|said she "
        "would do|said he would do|said she will do|said "
        "he will do|will do|would do|from now|from now on|bench)"}},
      {"priority",
       {"+({priority=9} (urgent|very urgent|hurry|in a hurry|rush|top priority|first|asap|is a rush|matters "
        "most|comes first|most "
        "urgent|before everything else|before all others|before all else|on top)|{priority=1} (can wait|it "
        "can wait|no hurry|no rush|no rush in the world|"
        "low priority|can take its time|no hurry at all|not in a hurry|not in a hurry at all|not in "
        "any hurry)|(priority|importance|importance of) [is|of|to] "
        "{priority}|{priority=3} (normal|usual|as usual|ordinary|normal priority|usual priority|ordinary "
        "priority|back to usual|back to as usual|back to "
        "normal|as usual again|no longer urgent|not urgent|not urgent any more|not urgent anymore|not urgent "
        "any "
        "longer|not a rush any more))",
        "(number|numbers) {job!}", "+{job}",
        "({*job} has a (gig|concert)|is|can|with|has a gig|gig|her|his|their|needs|needs it|badly|it|make "
        "it|make|on|there "
        "is|now|very|job|really|back to|owner|a|the|soon|for|there's|{job} has a gig|treat|has to come|must "
        "come|"
        "comes|goes|come|put|set|has|they are|priority|at all|again|it can wait|as usual|of|i am telling "
        "you)"}},
      {"after",
       {"+(after|once|waits for|wait for|before|first|depends on|until|till|only once|does not wait|need not "
        "wait|no longer waits|does not have to wait|any longer|any more|behind|wait|waits|await|upon|no "
        "more)",
        "!other",
        "+({job} [is|must|has to|should|shall|to] [go|goes|come|comes|be done|be|begin|start|started] "
        "(after|behind) {other}|{job} "
        "(waits for|only once|only after|only when|once|depends on|has to wait for|should wait for|must wait "
        "for|is to wait "
        "for|follows|waits on|queue behind|queues behind|lines up behind) {other}|{job} (must|has "
        "to|should|shall) (await|wait "
        "for) [the] [end|completion] [of] {other}|{job} [is|to be] [not] [to] [be] "
        "[hold|held|deferred|postponed|put off|left|leave|wait|waits|start|started|begin] (until|till) "
        "[the] [end|completion] [of] {other} [is] [completely] [done|finished|done with|complete]|(hold "
        "back|hold|leave|keep) {job} "
        "(until|till) {other} [is] [done|finished|done with]|(with|on|for) {job} [we] (must|should|may) not "
        "(begin|start) (until|till|before) {other} [is] [completely] [done|finished]|(conditional "
        "upon|depends "
        "on|hangs on) {other}|do {job} (only once|after|when|only when) {other} [is] [done]|first {other} "
        "[and] then "
        "{job}|first [comes] {other} [and] [only] [then|when it is finished] {job}|{other} [comes|goes] "
        "first [and] then {job}|{other} (before|goes before|comes before) {job}|(let) {job} "
        "[wait|queue|go|come] "
        "(behind|after) {other}|{job} (need not|no longer|does not|does not need to|does not have to) "
        "[wait|waits] [for] "
        "[{other}] {no_more=yes}|{job} (does not wait|need not wait|does not have to wait) for anything "
        "{no_more=yes})",
        "(number|numbers) {job!}",
        "{no_more=yes} (no longer necessary that {job} waits|lift the wait (on|of|from|for) {job})",
        "(do|is done|done|is|has gone|any longer|any more|anymore|goes out|only|finished|anything|now|is "
        "finished|comes|completely done|done with|completely|may start|may begin|can "
        "start|first|let|on|for)"}},
      {"board-width",
       {"+(board|wide|width|across|broad|fretboard|fingerboard)", "!at",
        "+({width} [wide|broad]|{width} across|(is|measures|get|got|goes|width) {width}|wide {width}|{width} "
        "in width)",
        "+((at|in) [the] (slot|fret|groove) [number] {slot}|(at|in) [the] {slot}|at slot {slot}|at the "
        "{slot}|at {slot}|{slot=0} [at] [the] nut "
        "[end]|{slot=0} nut)",
        "(board|is|wide|broad|measures|measured|across|of|the|width|at|fretboard|fingerboard|an|it's|over|"
        "keep "
        "this|i get|i got|with the ruler|ruler|caliper|calipers|with the calipers|i saw "
        "that|goes|has|myself|end|number|it|note|comes out|comes to)"}},
      {"slot-size",
       {"+(slots|sawed|sawn|saw|kerf|grooves|slot)", "!slot_width", "!slot_depth",
        "{slot_width} [wide|in width|width|large|broad]|wide [at] {slot_width}|width [of|is] "
        "{slot_width}|(sawn|sawed|cut) [on {job}] [at|to] "
        "{slot_width}|{slot_width} slots|{slot_width} (by|x) {slot_depth} [deep]|{slot_width} wide "
        "[and|by] {slot_depth} [deep]|wide at "
        "{slot_width}",
        "{slot_depth} (deep|in depth|depth|profound)|deep {slot_depth}|depth [of|is] {slot_depth}|(by|x) "
        "{slot_depth} [deep]",
        "{bottom=curved} ((bottom|bottoms) [are|is] (curved|round|rounded) [like the board]|(curved|rounded) "
        "(bottom|bottoms)|bottom [that] follows [the] board)",
        "{bottom=flat} ((bottom|bottoms) [are|is] flat|flat (bottom|bottoms))",
        "(slots|grooves|on|sawed|sawn|cut|are|the|measure|measured|kerf|of|slot|saw|leaves|came out|a wee "
        "bit|a bit|wide|deep|with|"
        "i sawed them|i cut them|now|and|in|is|a|bottom)"}},
      {"lost",
       {"+(lost|ruined|spoilt|spoiled|wrecked|broke|botched|messed "
        "up|gone|dropped|buggered|mangled|destroyed|damaged|broken|vanished|missing|unusable|flew "
        "off|snapped|write "
        "off|pretzel|mislaid|kinked|for nothing)",
        "+({slot}|(fret|slot|number|groove) {slot})", "~{why}", "because {why}", "by {why}",
        "(fret|is|it|on|crown|gone|badly|lost|ruined|plumb|spoilt|spoiled|completely|totally|broken|damaged|"
        "snapped|of no use|beyond use|"
        "write off|written off|count it as spoilt|count it as lost|mislaid|has been|was|must be regarded as "
        "lost|for slot|fret for|"
        "fret of|job|for|in|pertaining to|now|any more|the)"}},
      {"shifted",
       {"+(moved|move|shifted|in slot|is in|now in|went to|slid|re-laid|relaid|sits "
        "in|slipped|shift|lies|lie|scooted|"
        "relocated|displaced|pushed|went)",
        "!from", "!to", "!lengths", "!slots", "!short_ones", "!at",
        "+({from} [of|on] [{job}] [now] [is|are|was|were] [moved|shifted|slid|relocated|pushed] [now] [one] "
        "[slot] [nutward|down|up|over|along|across] "
        "(to|in|into|onto|at|is in|are in|went to|lies in|lie in|sits in|sit in|down to|up to|over to|now "
        "in) [now] "
        "[slot|slots|groove|grooves] {to}|(from|out of|of) [slot|slots] {from} [of|on] [{job}] [they] [now] "
        "[lie|lies|are|is|sit|sits|were|relocated|lying] [now] "
        "(in|at|to|into) [slot|slots] {to})",
        "(and|old) {short_ones} [is|are|went|goes|go|has gone] (in|into|to) [the] tin|[the] "
        "(fret|frets|one|ones) [of|from] "
        "{short_ones} [has|have|is|are] [gone|went|goes|go] (in|into|to) [the] tin|short (one|ones) "
        "{short_ones} [is|are|went|goes] (in|into|to) [the] tin|{short_ones} [has|have] (went|gone|goes|go) "
        "(in|into|to) [the] tin|"
        "[while] that of [slot] {short_ones} [was] [placed|put] (in|into) [the] tin",
        "measured [fret] {slots} at {lengths}",
        "(frets|fret|slot|slots|now|moved|shifted|nutward|down|one|up|along|over|lies|slid|relaid|re - "
        "laid|the shift is "
        "done|shift|following the shift|has been|have "
        "been|displaced|relocated|i|we|from|of|they|were|are|is|it|the one|the ones|sits|sit|lie|on|done)"}},
      {"new-job",
       {"+(new job|job for|take in|take it in|new refret|new|book in|taken in|come in|job|took in|in the "
        "queue|we'll take "
        "it|brought|received|register|new work)",
        "!widths",
        "!wood",
        "!positions",
        "!width_slots",
        "!scale",
        "!nut_width",
        "!far_width",
        "!radius",
        "!far_distance",
        "!string_inset",
        "!binding",
        "!glue",
        "!far_radius",
        "!nut_radius",
        "!treble_scale",
        "!owner",
        "!instrument",
        "!divisions",
        "[job] (new job|new|take in|took in|job for) [a|an] [{owner}] {instrument} (for|of|from|belonging "
        "to) {owner}|(take in|took in|new "
        "job|open a job|job for) [a|an] {instrument} (for|of|from|belonging to) {owner}|new job {instrument} "
        "(for|of) {owner}|job for {owner} "
        "{instrument}|(new job|job|in the queue|new one) {instrument} (for|of|from) "
        "{owner}|owner {owner}|(for|of|from|belonging to) {owner}",
        "(scale|mensure|scale length) [of|is] {scale}|{scale} (scale|scale length)|{fanned=yes} "
        "(fanned|fanned scale) {scale} "
        "(to|-) {treble_scale}|fanned {scale} to {treble_scale}|{scale} long from nut to bridge",
        "[square] [at] slot {square_slot} square|square at [slot] {square_slot}|{square_slot=0} square at "
        "[the] nut",
        "{frets} frets",
        "nut [width] [is|of] {nut_width} [wide] [and|by] [{far_width} [wide] (at|in) [the] [slot|fret] "
        "{far_slot}]|nut width "
        "{nut_width}|{nut_width} [wide] at [the] nut|{nut_width} [wide] at [the] nut [and] {far_width} "
        "[wide] (at|in) [the] "
        "[slot|fret] {far_slot}|{nut_width} by {far_width} at [the] [slot|fret] {far_slot}",
        "{far_width} [wide] at [the] [slot|fret] {far_slot}",
        "also {widths} at {width_slots}",
        "radius [of] {radius}|{radius} radius",
        "{flat=yes} flat [board]",
        "compound [board] [radius] [of] {nut_radius} [at the nut] to {far_radius} [at the last fret]|radius "
        "{nut_radius} to {far_radius}",
        "{ends=filed} [ends] filed [ends]",
        "{ends=rounded} [ends] rounded [ends]",
        "due {due}|due in {due}|(wants it|promised|ready|finish|done) (by|for|until|on) {due}|promised for "
        "{due}",
        "{bound=yes} bound [with] [in] [a] [binding] {binding} [binding]|{bound=yes} bound",
        "binding {binding}|{binding} binding",
        "{zero_fret=yes} zero fret",
        "{kind=some_slots} only (frets|slots) {slots} [to do]|{kind=some_slots} only {slots}|(slots|frets) "
        "{slots} only",
        "{kind=new_board} new board",
        "{kind=refret} refret",
        "{frets} frets of {wire}",
        "wood {wood}|board of {wood}",
        "humidity {humidity} [percent]",
        "note {note}",
        "(take it in|took it in|take in|wire|job|new job|new|please|of|with|and|in the queue|put it in the "
        "queue|another one in the "
        "queue|a job|add|open|register|book in|new one|job in|the board|board|it is|a|the|owner|we have "
        "received|received|kindly|wide)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_board() {
  std::vector<FrameText> out = frames_of_pressing();
  for (auto more : {frames_of_levelling(), frames_of_stages(), of_orders()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
