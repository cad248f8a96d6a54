// What the commands about jobs, pressing and levelling are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {

namespace {

std::vector<FrameText> of_pressing() {
  return {
      {"pressed",
       {"+(pressed|press done|squeezed|down|pass done|did the next pass|done the next pass|finished the next "
        "pass|got to|did pass|second pass|third pass|first pass|last pass|on the gauge|that pass|went "
        "down|got pressed|pressed down|gone down)",
        "{slots}|frets {slots}|fret {slots}", "{load} [on the gauge]|(at|with) {load}",
        "[with|using|under] [the] {bar} bar",
        "{next=yes} (did|done|finished) [the] (next pass|that pass|this pass|pass)|{next=yes} pass [is] "
        "done|{next=yes} only got to {load}|{next=yes} done {load} on the gauge|{next=yes} that pass [is] "
        "done",
        "(all of it|all|the lot|just|got|squeezed|did|done|pass|second|first|third|last|again|down|frets|on "
        "the gauge|complete|completely|under|whole thing|board|through|on)"}},
      {"rechecked",
       {"+(rechecked|recheck done|did the recheck|done the recheck|recheck of|on the "
        "recheck|sprang|sprung|came back up|up again|lifted|second look|springback|is up|popped up|re - "
        "checked|back up|looked at|still down|came up|had another look|had a second look|had a look)",
        "springback on the last fret of [{job}] {sprang}|{sprang} [{job}] [is|are|has|have] "
        "(sprang|sprung|came|come|popped|lifted|rose) [back] [up] [again|overnight]|fret {sprang} [{job}] "
        "came back up|{sprang} [{job}] (is|are) [back] up [again]|{sprang} [is|are|has|have] "
        "(sprang|sprung|came|come|popped|lifted|rose) [back] [up] [again|overnight]|{sprang} (is|are) [back] "
        "up [again]|fret {sprang} (sprang|came) back [up]|{sprang} is sprung|{sprang} sprang|springback on "
        "[the last fret of] {sprang}|{sprang} [has|have] lifted",
        "looked at {slots}", "{from} to {to} rocks|{from} - {to} rocks",
        "[on the] {line=treble} treble [side]", "[on the] {line=bass} bass [side]", "{line=middle} middle",
        "edge rocks on {high}|rocks on {high}|{high} (is|stands|sits) high",
        "at {humidity} humidity|humidity [is|was|of] {humidity}|{humidity} humidity",
        "(all still down|all down|still down|fine|all good|nothing sprang|none sprang back|none sprang|had "
        "my second look|overnight|nothing came up|rest are down|rest is down|rest down|all ok|all "
        "right|good|did|done|had|my|the|second look|look|recheck of|on the recheck|nothing moved|everything "
        "is down|all stayed down|none came "
        "up|none|nothing|everything|stayed|rest|another|still "
        "level|level|still|frets|fret|and|side|back|humidity|of|no)"}},
      {"look-again",
       {"+(look again|recheck|have another look|another look|look at|push the recheck|recheck it|check "
        "again|re-check|move the recheck|postpone the recheck|put off the recheck|remind me)",
        "+({again}|(to|until|on|for) {again})",
        "(have another look|look|again|at|it|have|another|push|the|of|recheck|to|move|at the)", "{slots}"}},
      {"press-support",
       {"+(cradled|head clear|nothing bridges|glue set|body|no body|nut is off|nut's off|soft wood|nothing "
        "under|hollow|taken out|cradle|head's clear|glue is set|nut off|softwood|glue has set)",
        "{cradled=yes} [is|in [a|the]] (cradled|cradle)", "{head_clear=yes} head [is] clear",
        "{nothing_bridges=yes} nothing (bridges|bridging)", "{glue_set=yes} glue [is|has] set",
        "{taken_out=yes} taken out", "body [on|of] [{job}] (starts|begins|from) [at|from] {body_from}",
        "{no_body=yes} no body [under]", "{nut_off=yes} nut [is] off", "{soft_wood=yes} (soft wood|softwood)",
        "nothing under [the board of] [{job}] (beyond|from|past|behind) {bare_from}|nothing under [the "
        "board] [of] [{job}] [board] (beyond|from|past) {bare_from}",
        "hollow [under [the]] [{job}] [board] from {hollow_from} to {hollow_to}",
        "(board|neck|is|on|of|under|neck is|the|from|made)"}},
      {"define-bar",
       {"+(bar|define bar|new bar|bar called)",
        "+(define [a] bar {name}|bar called {name}|call it {name}|new bar {name}|the {name} bar|{name} bar)",
        "+(length {length}|{length} long|{length} along [the neck]|it's {length} by|{length} by)",
        "+(width {width}|{width} wide|{width} across|by {width})", "rated [for|to] {rating}|rating {rating}",
        "sole radius {sole_radius}",
        "(bar's been ground down|been|ground|ground down|define|bar|new|we turned a|called|it's|now|been "
        "ground down|made|turned|neck|machined|cut|and|along|got|a)"}},
      {"drop-bar",
       {"+(drop|remove|take it out|do not press|take it off|take it away|forget|get "
        "rid|delete|scrap|retire|bin|strike|gone|lose)",
        "+({name} bar|bar called {name}|bar {name}|with the {name} bar)",
        "(get rid of|drop|remove|forget|the|bar's|cracked|broken|bent|gone|take it out of use|take it "
        "off|take it away|out of use|we|do not press with|nobody's to press with|any more|again|with|nobody "
        "is|worn|worn out|off the list|list|from|press|use|anymore|of|away|sold|lost)"}},
      {"last-fret",
       {"+(last fret|last one|last|stops at|no more frets|ends at|no frets|final fret|final)",
        "+({slot}|fret {slot}|after {slot}|at {slot})",
        "(is|the|on|of|for good|no more frets after|its|one|fret|there "
        "are|highest|board|ends|past|above|beyond|stops)"}},
  };
}

std::vector<FrameText> of_levelling() {
  return {
      {"reading",
       {"+(rocks|rock|steady|high|sticking "
        "up|sunk|low|solid|fine|sits|proud|wobbles|wobble|teeters|rocking|still|sticks up|does not rock|no "
        "rock|pokes up|stands up|does not move)",
        "{from} (to|through) {to}|{from} - {to}|edge [on|over] {from} to {to}|span {from} to {to}",
        "{felt=rocks} (rocks|rock|wobbles|teeters|rocking|wobble)|{felt=rocks} rocks on {pivot}",
        "{felt=steady} (steady|does not rock|sits solid|fine|solid|no rock at all|no rock|do not rock|is "
        "still|sits flat|does not move|sits still|rock solid)",
        "{felt=rocks} rocks on {about} [{job}]|{felt=steady} (around|about|over|at) {about}|{felt=rocks} "
        "rocks (around|about|over|at) {about}|(around|about) {about}",
        "{felt=rocks} rocks on {pivot}",
        "[on] [the] {line=treble} treble [side]|{line=treble} treble side of the same",
        "[on] [the] {line=bass} bass [side]|{felt=steady} steady on the {line=bass} bass|{felt=rocks} rocks "
        "on the {line=bass} bass",
        "[down|on|along] [the] {line=middle} middle",
        "{high} [{job}] [is|are|looks|look|stands|stand|sits|sit] [a bit|too|still] (high|proud)|{high} "
        "[{job}] [is] (sticking up|sticks up|pokes up|standing up|standing proud)|{high} [is] (sticking "
        "up|sticks up|pokes up|standing up)|[there is] [a] high one [at] {high}|high at {high}|fret {high} "
        "is [sticking up|high]",
        "{sunk} [{job}] [is|are|looks|look|sits|seems|seem] [a bit|too] (sunk|low|sunken)|{sunk} "
        "[is|are|looks|look|sits|seems|seem] [a bit|too] (sunk|low|sunken)",
        "(gap|gaps) under {gaps}", "snug [at|under] {snug}", "nut end held",
        "{quick=yes} [had a] quick look|{quick=yes} quick",
        "(to me|looks|look|edge|straightedge|span|the|had|on|of|side|frets|fret|there "
        "is|it|seems|feels|sits|and|same|at all|rule|laid)"}},
      {"crown-gap",
       {"+(gap|gaps|light|daylight|tight|under the crown|air|flush|see light|seated|sits down)",
        "+({slots}|fret {slots}|under {slots}|at {slots})",
        "{gap=some} (gap|gaps|see light|light|daylight|air)|{gap=some} light under",
        "{gap=none} (tight|no gap|no light|flush|no air|no daylight|sits tight)",
        "(i can see|you can see|there's|there is|can see|under|the crown|crown|crowns|of|on the "
        "board|on|have|has|see|a|down|sits|fully|shows|showing|through|between|board|and)"}},
      {"cause",
       {"+(shallow|bottoming out|bottoms out|bottoms|find anything wrong|nothing wrong|glue in the slot|dirt "
        "in the slot|dirty|deepening|dust in the slot|nothing found|find nothing|cannot find anything|slot "
        "is full|glue|dust|bottomed|muck)",
        "+({slots}|slot {slots}|at {slots}|slots {slots})",
        "{cause=slot_shallow} [too|is|not deep enough] (shallow|deepening)",
        "{cause=tang_bottoms} (bottoming|bottoms) [out]|{cause=tang_bottoms} tang bottoms",
        "{cause=nothing_found} (find anything wrong|nothing wrong|nothing found|find nothing|anything "
        "wrong|find anything)",
        "{cause=slot_dirty} ((glue|dirt|dust|muck|filler) in [the] (slot|it)|dirty|slot is dirty|slot is "
        "full of (glue|dust|dirt))",
        "(i can not|can not find|tang's|tang|slot|slots|on|at|of|too|is|are|want|deepening|shallow|can "
        "not|cannot|there's|out|the|it|looks|old|bit|in|wrong|there is)"}},
      {"stands-low",
       {"+(low|below|down|lower|deep)", "+({slot}|fret {slot})",
        "+(low by {below}|{below} low|down {below}|{below} below|by {below}|{below} down|{below} [too] "
        "(low|deep)|is {below} lower)",
        "(feeler says|feeler|is|stands|its "
        "neighbours|neighbours|than|by|too|sits|the|fret|neighbour|says|gauge|under)"}},
      {"neck",
       {"+(hump|relief|straight|back-bowed|back - bowed|humped|back bow|backbow|up-bow|forward "
        "bow|bowed|backbowed)",
        "+(neck|neck's|board)", "{is=humped} (hump|humped|back - bowed|back bowed|backbowed|back bow)",
        "{is=relief} (relief|bowed forward|forward bow|up - bow|up bow)",
        "{is=straight} (straight|dead straight|flat)",
        "(neck|there's|there is|in|has|on|is|dead|too|a|bit of|board|some|now|along)"}},
      {"reseated",
       {"+(reseated|shimmed|put it back|seated anew|reseat|out and back in|re-seated|seated again|set back "
        "in|hammered back|knocked back|re-hammered)",
        "+({slots}|fret {slots}|frets {slots})",
        "(shimmed|put it back|and|seated|anew|was|were|out and back in|reseated|it|again|back|in|with a "
        "shim|frets|fret)"}},
      {"glued",
       {"+(glued|in glue|glue|superglued|clamped)", "+({slots}|fret {slots})",
        "(glued|clamped|and|it|in glue|with a clamp on|clamp "
        "on|clamp|is|are|down|in|with|them|under|fret|frets)"}},
      {"levelled",
       {"+(levelled|leveled|spot-levelled|spot - levelled|took {slots} down|filed "
        "down|file|filed|stoned|abraded|took down|knocked down)",
        "+({slots}|fret {slots}|frets {slots}|took {slots} down)",
        "(spot|levelled|leveled|down|with the "
        "file|file|filed|took|with|the|abrasive|flat|frets|fret|it|a|touch|bit|little)"}},
  };
}

std::vector<FrameText> of_orders() {
  return {
      {"finished",
       {"+(done|finished|true|trued|cleaned|dressed|is "
        "true|complete|ready|polished|seated|pulled|bent|crowned|levelled|filed|pressed|cut|all done|through "
        "with|over)",
        "{stage=pull} (pull|pulling|pulled [the] old frets|pulling [is] [done]|old frets [are] "
        "(out|pulled)|old frets)",
        "{stage=true} (true|trued|truing|board is true|board true|trueing)",
        "{stage=slots} (slots [are|all] [cleaned|clean|done]|cleaned [the] slots|cleaning [the] slots|slots "
        "cleaned)",
        "{stage=bend} (bend|bending|bent)",
        "{stage=cut} (cutting|cut [the] frets|frets [are] [all] cut|all cut)",
        "{stage=dress} (dress|dressing|[all] [the] ends [are] [all] dressed|dressed|ends dressed)",
        "{stage=seat} (seat|seating|[all] [frets] [are] seated|hammered in|hammering)",
        "{stage=level} (levelling [is] [done]|all levelled)", "{stage=crown} (crown|crowning|crowned)",
        "{stage=file} (filing [the] ends|ends filed|filed [the] ends|filing)",
        "{stage=polish} (polish|polishing|polished)",
        "{stage=done} (done|can go home|ready to go|finished|goes home|ready to go home|completely done|can "
        "be picked up|ready for collection)",
        "between {started!} and {at!}|from {started} to {at}",
        "(old frets|board|board's|on|is|all|ends|it|the|old|cleaned|finished|done with|with|of|work|stage|it "
        "can go home|can|go|home|ready|complete|now|to be picked up|are)"}},
      {"start",
       {"+(start|started|starting|i'm|beginning|begin|began|back at|as we speak|getting on with|working "
        "on|resumed|resuming|carrying on with|going on with)",
        "+({stage=pull} (pulling|pull|pull the frets)|{stage=true} (truing|true|trueing)|{stage=slots} "
        "(cleaning [the] [slots]|slots)|{stage=bend} (bending|bend)|{stage=cut} (cutting|cut)|{stage=dress} "
        "(dressing|dress)|{stage=seat} (seating|seat|hammering)|{stage=press} (pressing|press)|{stage=level} "
        "(levelling|level|leveling)|{stage=crown} (crowning|crown)|{stage=file} filing|{stage=polish} "
        "(polishing|polish)|{stage=recheck} rechecking)",
        "(board|of|on|frets|slots|old|as we speak|back at|starting "
        "on|the|to|now|with|ends|working|just|work|i|am|frets|cleaning|it)"}},
      {"stop",
       {"+(stop|stopped|stopping|broke off|break|leave|left|knocking off|calling it a day|that's it|half "
        "done|paused|pausing|pause|had to leave|off for today|done for today|knocked off|interrupted|lunch)",
        "{stage=slots} slots", "{stage=pull} (pulling|pull)", "{stage=true} truing", "{stage=cut} cutting",
        "{stage=seat} seating", "{stage=press} pressing", "{stage=dress} dressing", "{stage=bend} bending",
        "{stage=polish} polishing", "{stage=level} levelling", "{stage=crown} crowning",
        "(had to leave|leave|that's it|for now|for today|working|work|on|phone|half done|had "
        "to|stopped|off|break|i've|lunch|time|there|unfinished|here|the|a|tea|for|job|with|i'm|it|day)"}},
      {"set-due",
       {"+(due|promised|promise|has to go out|must go out|due date|must be ready|needs to be done|has to be "
        "ready|wants it|wants|to be ready|goes out|deadline|has to be done|picked up|has to be finished)",
        "+({due}|(for|by|on|to) {due})",
        "(is|now|for|has "
        "to|date|the|out|by|on|must|be|ready|moved|move|to|done|due|it|promised|finished|back|needs|go)"}},
      {"cancel-job",
       {"+(cancel|cancelled|take {job} out|drop|picked his mandola up again|not doing it|strike|off the "
        "list|called off|take out|scratch|withdrawn|withdraw|remove|forget about|out of the queue|from the "
        "queue|off|pulled out|scrap)",
        "+{job}", "~{why}", "because {why}", "{why=owner changed their mind} changed (her|his|their) mind",
        "{why=sold} sold [the] {job}", "{why=picked up again} picked (his|her|their) {job} up again",
        "({*job} [has] changed (her|his|their) mind|[{*job}] sold the {job}|from the queue|queue|off the "
        "list|list|out|it|cancel it|we're not doing it|we are not doing it|does not want|any more|has|the "
        "job|job|entirely|out of the queue|after all|not doing it|we|up|down|order)"}},
      {"free-job",
       {"+(nobody's on|nobody does|nobody is on|nobody has|nobody [is] doing|gives up|free up|take {*person} "
        "off|unassign|let "
        "anyone|anyone|anybody|whoever has time|free|can not do|up for grabs|open to all|take me "
        "off|no one|not mine|hand back|not doing)",
        "+{job}",
        "(on|any more|anymore|let anyone do it|whoever has time|for anybody|for anyone|free up|i can not do "
        "it after all|does|it|up|do|off|is|take [me|{*person}] off|{*person} (gives|gave) "
        "up|{*person}|to|after all|has time|i|now|can do it|whoever|assigned|no longer|mine|works on|is "
        "on)"}},
      {"give-job",
       {"+(takes|takes over|does|gets|give|gave|goes to|is mine|mine|i'll do|i'm doing|do|assign|assigned|to "
        "{person}|i'll take|i take|takes on|hand|handed|is for|over to|looks after|works on)",
        "+{job}", "{person}|to {person}",
        "{mine=yes} (mine|i'll do|i'll take|i'm doing|i take|i am doing|to me|me|i do)",
        "to [the] {bench} bench|[the] {bench} bench (does|takes|gets)",
        "(takes|takes over|does|now|over|job|from|{*person} [is] snowed under|{*person} [is] "
        "(busy|ill|away|off)|to|it|gets|give|on|'ll|ill|assign|hand)"}},
      {"priority",
       {"+({priority=9} (urgent|hurry|rush|top priority|first|asap|is a rush|matters most|comes first|most "
        "urgent)|{priority=1} (can wait|no hurry|no rush|not urgent|low priority|can take its time)|priority "
        "{priority}|{priority=5} (normal|usual))",
        "+{job}",
        "({*job} has a (gig|concert)|is|can|with|has a gig|gig|her|his|their|needs|it|on|there "
        "is|now|very|job|really|back to|owner|a|the|soon|for|there's|{job} has a gig|very)"}},
      {"after",
       {"+(after|once|waits for|wait for|before|first|depends on|until|only once|does not wait|need not "
        "wait|no longer waits|does not have to wait|any longer|any more)",
        "+({job} (after|waits for|only once|only after|once|depends on|has to wait for|should wait for|must "
        "wait for|comes after|follows) {other}|{job} (need not|no longer|does not|does not need to|does not "
        "have to) [wait|waits] [for] [{other}] {no_more=yes}|do {job} only once {other} [is] done|{job} "
        "(does not wait|need not wait|does not have to wait) for anything {no_more=yes})",
        "(do|is done|done|is|has gone|any longer|any more|goes out|only|finished|anything|now|is "
        "finished|comes|wait)"}},
      {"board-width",
       {"+(board|wide|width|across)", "+({width} [wide]|{width} across|is {width}|wide {width})",
        "+((at|in) [the] {slot}|at slot {slot}|at the {slot}|at {slot}|{slot=0} at the nut|{slot=0} nut)",
        "(board|is|wide|measures|measured|across|of|the|width|at|fretboard|an|it's|over)"}},
      {"new-job",
       {"+(new job|job for|take in|take it in|new refret|new|book in|taken in|come in)",
        "[job] (new job|new|take in|job for) [a|an] [{owner}] {instrument} (for|of) {owner}|take in [a] "
        "{instrument} for {owner}|new job {instrument} for {owner}|job for {owner} , {instrument}",
        "scale {scale}|{scale} scale|fanned {scale} to {treble_scale}",
        "{fanned=yes} fanned {scale} to {treble_scale}",
        "[square] [at] slot {square_slot} square|square at slot {square_slot}", "{frets} frets",
        "nut {nut_width} [and] [{far_width} at slot {far_slot}]|nut width {nut_width}",
        "{far_width} at slot {far_slot}|{far_width} at the {far_slot}", "radius {radius}",
        "{ends=filed} [ends] filed [ends]", "{ends=rounded} [ends] rounded [ends]", "due {due}|due in {due}",
        "{bound=yes} bound", "binding {binding}", "{zero_fret=yes} zero fret",
        "{kind=some_slots} only frets {slots} [to do]|{kind=some_slots} only {slots}",
        "{frets} frets of {wire}", "(take it in|take in|wire|job|new|please|of|with|and)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_board() {
  std::vector<FrameText> out = of_pressing();
  for (auto more : {of_levelling(), of_orders()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

} // namespace nutward::talk
