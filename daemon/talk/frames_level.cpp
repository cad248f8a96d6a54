// What the commands about readings, single frets and the neck are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

#define SPAN "{from} (to|through|thru|until|till|-|up to) {to}"
#define ROCKING "(rocks|rock|rocking|rocked|wobbles|wobble|teeters|tips|tippy|seesaws|pivots|pivoting|turns)"
#define ALONG "[on|along|down] [the] [{line} [side|line|edge|strings]] "

std::vector<FrameText> of_readings() {
  return {
      {"reading",
       {"+(rocks|rock|steady|high|sticking "
        "up|sunk|low|solid|fine|sits|proud|wobbles|wobble|teeters|rocking|still|sticks up|does not rock|no "
        "rock|pokes up|stands up|does not move|tippy|tips|firm|quiet)",
        "!from", "!to", "!about", "!pivot", "!high", "!sunk", "!gaps", "!snug", "!held",
        // From one fret to another; with what it rocks on, which is no span of its own then.
        SPAN "|(edge|rocker|straightedge|rule|ruler|span|laid) [laid] [on|over|across|from] [frets] " SPAN
             "|(over|across|of|on) [frets] " SPAN "|between {from} and {to}",
        SPAN " [of|on] [{job}] " ALONG "[the] [edge|straightedge|it] {felt=rocks} " ROCKING " " ALONG
             "[on|over|upon|at|about|around] [fret] {pivot}",
        "(edge|rocker|straightedge) [over|on|across] " SPAN " [of|on] [{job}] " ALONG "{felt=rocks} " ROCKING
        " [on|over|upon|at] [fret] {pivot}",
        "(pivots|pivoting|pivoted|turns|turning|tips|tipping) [on|at|over|about|around|upon] {pivot}|pivot "
        "[is|at] "
        "[the] {pivot}|turning point [is] [the] {pivot}",
        "{felt=rocks} " ROCKING "|{felt=rocks} tips back and forth|{felt=rocks} goes back and forth",
        "{felt=steady} (steady|does not rock|sits solid|fine|solid|firm|no rock at all|no rock|no rocking|do "
        "not rock|not rocking|is still|lies still|lies quiet|sits flat|does not move|sits still|rock "
        "solid|sits firm|quiet|dead still|does not wobble|no movement|no wobble|no rocking was felt|no "
        "rocking felt)",
        "{felt=rocks} " ROCKING " (around|about|over|at|on) [fret] {about} [of|on] [{job}]|(around|about) "
        "[fret] {about} [of|on] [{job}] "
        "[it] {felt=rocks} " ROCKING "|{felt=steady} (steady|no rock|no rock at all|no rocking|solid|still) "
        "(around|about|over|at|on) [fret] {about}|(around|about) [fret] {about} [of|on] [{job}] [it] "
        "[is|sits] {felt=steady} "
        "(steady|solid|still|firm)",
        "[on|along] [the] {line=treble} treble [side|line|edge|strings]|[on|along] [the] {line=treble} (thin "
        "string|thin strings) [side]|{line=treble} treble side of the same",
        "[on|along] [the] {line=bass} bass [side|line|edge|strings]|[on|along] [the] {line=bass} (thick "
        "string|thick "
        "strings|low string|low strings) [side]|{felt=steady} steady on the {line=bass} bass|{felt=rocks} "
        "rocks "
        "on the {line=bass} bass|along the bass [line] {line=bass}",
        "[down|on|along] [the] {line=middle} middle [line]|{line=middle} (centreline|centre line|centerline)",
        "{high} [of|on] [{job}] [is|are|looks|look|stands|stand|sits|sit] [a bit|too|still|sure "
        "looks|really] "
        "(high|proud)|{high} [of|on] [{job}] [is] (sticking up|sticks up|pokes up|standing up|standing "
        "proud|stands up)|[there is] [a] high one [at] {high}|high at {high}|{high} [of|on] [{job}] [sure] "
        "(looks|look|seems|appears) [rather|a bit|too] (high|proud)",
        "{sunk} [of|on] [{job}] [is|are|looks|look|sits|seems|seem] [a bit|too] (sunk|low|sunken)|{sunk} "
        "[of|on] "
        "[{job}] (dips|dipped|is dipped)",
        "(gap|gaps|light) [is] [present] (under|below|beneath|at|over) {gaps}|feeler "
        "(goes|slips|slides|fits|passes) "
        "[in] (under|below|beneath|at) {gaps}|(under|below|beneath) {gaps} [there] [goes|fits|slips] [a|the] "
        "(feeler|gap)|(goes|slips|fits) under {gaps}|{gaps} (has|have|shows|show) [a] gap",
        "snug [at|under|on] {snug}|no gap [is] [present] (under|at|below|beneath) {snug}|but not "
        "[under|at|below] {snug}",
        "nut end held",
        "{held=nutward} [edge|it] (held|pressed|pushed) [down] [at|toward|towards] [the] (nutward|nut "
        "end|nut "
        "side|nut)|{held=nutward} (nut|nutward) (end|side) [is] [held|pressed|pushed] [down]",
        "{held=bodyward} [edge|it] (held|pressed|pushed) [down] [at|toward|towards] [the] (bodyward|body "
        "end|body "
        "side|bridge end|body)|{held=bodyward} (body|bodyward|bridge) (end|side) [is] [held|pressed|pushed] "
        "[down]",
        "{quick=yes} [had|took|just] [a] quick (look|glance)|{quick=yes} (quick|quickly)",
        "(to me|looks|look|edge|straightedge|span|the|had|on|of|side|frets|fret|there "
        "is|it|seems|feels|sits|and|"
        "same|at "
        "all|rule|laid|lies|rocker|ran|did|with|placed|over|across|ruler|away|sure|line|felt|was|job|number|"
        "really|still)"}},
      {"crown-gap",
       {"+(gap|gaps|light|daylight|tight|under the crown|air|flush|see light|seated|sits "
        "down|gapped|feeler|paper|space|nothing)",
        "+({slots}|(fret|frets|number|crown|crowns) [of] {slots}|(under|below|beneath|at) [the] "
        "[crown|crowns] [of] [fret] {slots})",
        "{gap=some} (gap|gaps|gapped|see light|light|daylight|air)|{gap=some} light under|{gap=some} "
        "(feeler|paper) (goes|slips|slides|fits) [in] [under|between]|{gap=some} (slide|slip|push) [the|a] "
        "(feeler|paper) [in] (under|between)",
        "{gap=none} (tight|no gap|no gaps|not a gap|no light|no light at all|flush|no air|no "
        "daylight|no space|sits tight|right down on|nothing under|nothing below)|{gap=none} (no|not a|not "
        "any|without)|{gap=none} (cannot|can not) (get|slide|slip|push) "
        "(anything|a feeler|the feeler|paper) (under|in)",
        "(i can see|you can see|you can|i can|there's|there is|can see|under|the crown|crown|crowns|of|on "
        "the "
        "board|on|have|has|see|a|down|sits|sit|sitting|fully|shows|showing|through|between|board|wood|and|"
        "right|under "
        "it|under them|under its crown|anything|observed|has been|was|looked|found|number|at "
        "all|any|visible|left|tops|get)"}},
      {"cause",
       {"+(shallow|bottoming out|bottoms out|bottoms|find anything wrong|nothing wrong|glue in the slot|dirt "
        "in the slot|dirty|deepening|dust in the slot|nothing found|find nothing|cannot find anything|slot "
        "is full|glue|dust|bottomed|muck|found nothing|no cause|misbent|loose|sawdust|bent wrong|deep "
        "enough|hitting bottom)",
        "+({slots}|(slot|slots|fret|number) {slots}|at {slots})",
        "{cause=slot_shallow} [too|is] (shallow|deepening|not deep enough|too little "
        "deep)|{cause=slot_shallow} (wants|needs) "
        "(deepening|to be deeper)",
        "{cause=tang_bottoms} [tang] (bottoming|bottoms|bottomed) [out]|{cause=tang_bottoms} tang [is] "
        "(bottoms|hits|hitting|touches|touching) [the] [bottom]|{cause=tang_bottoms} (hits|hitting) [the] "
        "bottom",
        "{cause=nothing_found} (find anything wrong|nothing wrong|nothing found|find nothing|anything "
        "wrong|find anything|found nothing|found nothing at all|no cause|find any cause|find a cause|find "
        "the cause|find a reason|nothing that keeps it up|nothing keeps it up|no reason)",
        "{cause=slot_dirty} (((old) "
        "glue|glue|dirt|dust|muck|filler|sawdust|chips|crumbs|gunk|rubbish|debris) [and] [old] "
        "[glue|dust|dirt] [in] [the|its] (slot|slots|it|groove)|dirty|clogged|full of "
        "(glue|dust|dirt|muck|crumbs|sawdust|chips)|dust and old glue|"
        "sawdust|muck|gunk|crumbs)",
        "{cause=wire_misbent} (misbent|bent wrong|bent wrongly|wrongly bent|incorrectly bent|badly bent|bent "
        "badly|"
        "bent the wrong way|wrong curve|wrong radius|being bent wrong|over - bent|overbent)",
        "{cause=slot_loose} [slot] [is] [too] (loose|wide)|{cause=slot_loose} does not hold [the] tang",
        "(i can not|can not find|can not|could "
        "not|tang's|tang|slot|slots|groove|on|at|of|too|is|are|want|shallow|can "
        "not|cannot|there's|out|the|it|looks|old|bit|in|wrong|there is|reason|cause|stays up|stay up|stands "
        "up|standing up|keeps up|keeps it up|holds it up|up|checked|could "
        "be|established|found|raised|because|why|wire|any|"
        "that is why|that is what is holding it up|gap|gap comes|attributable to|due to|what holds|what "
        "keeps|so it cannot go down|for|its)"}},
      {"stands-low",
       {"+(low|below|down|lower|deep|deeper|under|beneath|room)", "+({slot}|(fret|number) {slot})", "!below",
        "+((low|lower|down) [than the others|than its neighbours|than the rest] by {below}|{below} [too] "
        "(low|below|down|under|beneath|deep|deeper|lower)|by {below}|is {below} "
        "lower|(says|was|is|measured|of|reads) {below}|{below} of "
        "room|feeler [of] {below})",
        "(feeler says|feeler|feelers|is|stands|its neighbours|neighbours|neighbour|neighbors|the ones next "
        "to "
        "it|the others|others|the rest|rest|the line|line|the other two beside it|beside "
        "it|than|by|too|sits|lies|the|fret|says|gauge|under|"
        "measured|with the feelers|with a feeler|that is how low it stands|how low it stands|how "
        "low|stands|of|below|it|deep|deeper|low)"}},
      {"last-fret",
       {"+(last fret|last one|last|stops at|no more frets|ends at|no frets|final fret|final|nothing past|no "
        "fret|stops there|goes up to)",
        "+({slot}|(fret|number) {slot}|(after|at|past|beyond|above|over) [number|fret] {slot})",
        "(is|as|stays) [the|its|their] [very] (last|final) [fret|one] [for all times|ever]",
        "(no|never) [more] (fret|frets|one) (after|past|beyond|above|over)",
        "(nothing|no fret|no frets) [ever] (past|after|beyond|above|comes after)",
        "(never will|never will be|there will never be another|there will never come another one|there will "
        "not be another|will never be another|will never "
        "come|will get never a fret|nothing ever comes after it|none ever to follow|with none ever to "
        "follow|and that is it|that is it|forever|for good|ever|never)",
        "(is|the|on|of|for good|no more frets after|its|one|fret|there "
        "are|highest|board|ends|past|above|beyond|stops|"
        "as|has|very|stays|there|goes|up|over|last|all times|one above it|above it|after it|this one|that "
        "one|is the last)"}},
      {"neck",
       {"+(hump|relief|straight|back-bowed|back - bowed|humped|back bow|backbow|up-bow|forward "
        "bow|bowed|backbowed|straightened|bent)",
        "+(neck|neck's|board)",
        "{is=humped} [clear|a|some] (hump|humped|back - bowed|back bowed|backbowed|back bow|back - "
        "bow)|{is=humped} "
        "(goes|comes|rises|stands) (up|upwards) in the middle|{is=humped} bent like a cat's back",
        "{is=relief} (relief|bowed forward|forward bow|up - bow|up bow|hollow|dished|concave)|{is=relief} "
        "dips in the middle",
        "{is=straight} (straight|dead straight|flat|dead flat)|{is=straight} not bent [in any way]",
        "{is=straightened} (straightened|made straight|been straightened|got straight) "
        "[again]|{is=straightened} made [it|the "
        "neck] straight [again]",
        "(neck|there's|there is|in|has|on|is|dead|too|a|bit of|board|some|now|along|truss rod|truss rod "
        "tightened|tightened|looked along|looked|since|has since|proved|exhibit|clear|with|it|been|and|a "
        "bit|of|the)"}},
  };
}

std::vector<FrameText> of_single_frets() {
  return {
      {"reseated",
       {"+(reseated|shimmed|put it back|seated anew|reseat|out and back in|re-seated|seated again|set back "
        "in|hammered back|knocked back|re-hammered|reseating|put in again|put it in again|out and in "
        "again|back in "
        "their slots|back in its slot|home again)",
        "+({slots}|(fret|frets|number|numbers) {slots})",
        "(reseated|reseating|re - seated|reseat|shimmed|seated anew|seated again|seated afresh|set back "
        "in|put it back in|put it back|put "
        "it in again|put them back in|put them back|put them in again|put in again|knocked it home "
        "again|knock it home again|hammered back in|hammered it back in|"
        "out and back in|out and in again|back in their slots|back in its slot|back in the slot|went back "
        "in|took out|took it out|"
        "had to come out|came out|pulled out|pulled|pulled it|withdrawn|lifted|lift|with a shim|with "
        "shims|shim|a shim under|shim under it|thin strip "
        "under)",
        "(shimmed|put it back|and|seated|anew|was|were|out|reseated|it|them|again|back|in|with a "
        "shim|frets|fret|had|loose|because they were loose|better|this time|done|slots|slot|home|i|were "
        "loose|up)"}},
      {"glued",
       {"+(glued|in glue|glue|superglued|clamped|adhesive)",
        "+({slots}|(fret|frets|number|numbers|slot) {slots})",
        "(glued|glued down|glued in|glued and clamped|stuck down with glue|stuck with glue|with glue "
        "fixed|fixed with glue|superglued|clamped "
        "up|clamped down|clamped|under a clamp|under clamps|with a clamp on|clamp is on|clamp on|ran some "
        "glue into|ran glue into|ran glue "
        "under|put glue under|put glue into|adhesive was applied|adhesive applied|glue applied|which is now "
        "clamped|fastened)",
        "(glued|clamped|and|it|in glue|with a clamp on|clamp "
        "on|clamp|is|are|down|in|with|them|under|fret|frets|"
        "sitting|good and hard|hard|now|up|the ones|three of the frets|two of the "
        "frets|some|glue|adhesive|was|applied|to|number|slot)"}},
      {"levelled",
       {"+(levelled|leveled|spot-levelled|spot - levelled|took {slots} down|filed "
        "down|file|filed|stoned|abraded|took down|knocked down|rubbed|sanded|stone|levelling|sandpaper)",
        "+({slots}|(fret|frets|number|numbers) {slots}|took {slots} down)",
        "(levelled|leveled|spot - levelled|spot levelled|levelled down|filed down|filed|stoned|stoned "
        "down|stoned level|abraded|sanded down|sanded|rubbed down|rubbed|took down|knocked down|took the "
        "stone to|took a stone to|took a file to|took the file to|took "
        "sandpaper to|stone on|file on|by hand|with the abrasive|with abrasive|with the stone|with a "
        "stone|with the file|with a file|with sandpaper|one at "
        "a time|one by one|each alone|levelling|spot levelling|individual levelling|carried out|was carried "
        "out)",
        "(spot|levelled|leveled|down|file|filed|took|with|the|abrasive|flat|frets|fret|it|a|touch|bit|little|"
        "of|them|those "
        "two|the tops of|tops|lower|was level|were level|it was level|they were level|till it was level|till "
        "they were level|too high|were too high|high|high one|the high one|wee rub|wee|level|just|only that "
        "one|rub)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_levelling() {
  std::vector<FrameText> out = of_readings();
  for (FrameText& more : of_single_frets())
    out.push_back(std::move(more));
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
