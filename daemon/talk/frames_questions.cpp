// What the questions are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
namespace {

std::vector<FrameText> of_tin() {
  return {
      {"fit",
       {"+(piece|pieces|bit|something|anything|one|short one|need a fret|offcut|what|what have we got|have "
        "we got|"
        "spare|find|any|candidates|which|what fits|fits|fit)",
        "+{slot}", "{*wire}",
        "{pulled=yes} [even|also|including|include|old] pulled [frets|ones|pieces] [are] "
        "[fine|ok|okay|included|too|allowed|welcome]",
        "{long=yes} (even if i have to (nip|trim|cut|lose|waste) [a] (lot|much) [off]|even if a lot (comes "
        "off|is wasted)|"
        "even if most comes off|(never mind|whatever|regardless of|no matter) [the] "
        "(waste|nipping|trim|loss)|however (much|long|far) [i|we] [have to] "
        "[nip|trim|waste]|waste does not matter|[too] long ones [too|are fine]|nip a lot [off])",
        "(lying|around|about|would|do|drops|drop|straight|take|use|make|makes|replace|cut|cut "
        "down|dig|need|want|right|"
        "length|dressed|hands full|had to come out|good|got|goes|go|search|look|use "
        "for|tin|hand|best|closest|nearest|suits|suit|short)"}},
      {"fit",
       {"+(anything|have it|do we have|have we got|what have we "
        "got|got|fret|piece|something|any|fits|fit|find)",
        "+{length} [finished]", "+{wire}", "!job",
        "(finished|finished length|length|long|make|makes|made|for|near|around|about|close to|tin)",
        "{pulled=yes} [even|also|including|old] pulled [frets|ones] [are] [fine|ok|included|too]"}},
      {"place",
       {"+(where|home|which slot|any slot|slot for|what slot|who can use|who could "
        "use|anybody|anyone|could|good for|any use|go|goes|end up|suit|use for|"
        "nearest|put|fit in|fits|belong|belongs|what for|scrap or)",
        "+((piece|number|no|pieces) {piece#}|{piece#}|{length} [long]|{length} (of|in) {wire}|the "
        "{piece}|{piece=it} it)",
        "{long=yes} (even if (most|much|a lot) [of it] (comes|has to come|goes|is) (off|nipped "
        "off|wasted|lost)|(never mind|whatever|no matter) [the] waste)",
        "{ends=one_raw} (one end|one) [is] [already] (dressed|done|finished|rounded|raw)",
        "{ends=raw} [with] (both|two) ends [still] (raw|undressed|not dressed)|raw ends|raw",
        "{ends=dressed} [with] (both|two) ends [already] (dressed|done|finished|rounded)|dressed "
        "[ends|already]",
        "(would|does|do|got|found|use|used|offcut|piece|hand|in my hand|in the tin|stick "
        "end|most|nearest|closest|any|end|which|best|of use|to anybody|somewhere|only|"
        "it|take|can|long|spare|scrap|on|could|on top of|good|leftover|bit)"}},
      {"all-right",
       {"+(ok|okay|all right|alright|will that do|that do|good enough|do|leave it|acceptable|does it "
        "matter|fine|enough|matter|pass|live with|too short|usable)",
        "+{length} [long]", "+{slot}",
        "(mine is|mine|is|got|have|fret|came out|ended up|turned out|measures|at|cut|one)",
        "{ends=dressed} dressed [already]",
        "{one_side=yes} (gap [shows|only] [is] on one (side|end) [only]|on one (side|end) [only]|one side "
        "[only]|[only] one (side|end))",
        "(gap|shows|can i|good|is it|for|will|that|leave|would|keep)"}},
      {"slots",
       {"+(slot positions|positions|slot table|fret table|table of slots|where are|slots|fret positions|slot "
        "list|slot spacing|slot distances|spacing|where is)",
        "{slots}", "(job|table|list|show|all|measure|from the nut|exactly)"}},
      {"slots",
       {"+(what length|how long|length|lengths|how wide|widths|need|take)",
        "+({slots}|{slots=0} [the] zero fret)",
        "(does|take|takes|need|fret|frets|slot|is|have to be|must be|should be|be)"}},
      {"shift",
       {"+(shift|re-lay|relay|shift plan|move them up|move up|moved up|shuffle|shove|slide|move [the] "
        "frets|move nutward|nutward shift)",
        "{slots}", "{lengths}", "{slots} measure {lengths}",
        "{open=yes} empty slots [may|can] [be] [filled] [too|as well|count|also]|[also] fill [the] empty "
        "slots",
        "{tin=yes} (with|using|from) the tin",
        "(measure|frets|fret|half|hair|short|a hair short|without making new ones|without making [any] "
        "new|make fewer|fewer|new ones|plan|could|only|are|bit|few|some|"
        "so|i|how|up|along|too short|re-make|remake)"}},
      {"cuts",
       {"+(how far would the tin|tin get us|cutting plan|cut plan|plan the cuts|do i cut|should i cut|how "
        "(do|should|would|could|can) (i|we) cut|cut|saw|new wire|out of the tin|from the tin|"
        "from the tin alone|tin alone|would we cut)",
        "{tin_only=yes} [do|done|do it] [only|just|out|purely] [of|from|with] [only] the tin [alone|only|by "
        "itself]|no new wire|without new wire|"
        "tin (alone|only)|(using|with) [only] what [is] in the tin",
        "(how far|how much|would|cut {job} from|cut it "
        "from|get|us|take|will|what|plan|least|waste|wasted|least waste|for|much|get us|today|did "
        "it|would|lot|everything|whole queue|queue|wire|were done|best|take|use|optimal|"
        "efficiently|cheapest|stick|sticks|off)"}},
      {"cut-list",
       {"+(cut list|cutting list|cut - list|list of cuts|cutlist|list for the saw)",
        "(saw|at the saw|print|hang up|to hang up|show|take along|wall|paper|sheet|whole shop)"}},
      {"labels",
       {"+(labels|label|stickers|bin labels|tags|bin cards)",
        "{step} (steps|step|apart)|(steps|step) [of] {step}|every {step}",
        "(print|bin|bins|drawer|drawers|tin|length|by length|need|new|all|for|sheet|make|of)"}},
      {"stock",
       {"+(stock|what have we got|have we got|do we have|on hand|in the tin|drawer|coil|shelf|show|on the "
        "shelf|lying|tin|left|pieces|short pieces|bits|there is|"
        "how much|how many|how full|lengths|lie|lies|inventory|put by|rack|count of|wire)",
        "(how many metres|metres|list|everything|full|what|read me out|read out|wire|according "
        "to you|should there be|be|bits|short|is|are|lying around|"
        "got|have|around|say|anyone|counted|sticks|does it say|how many sticks|remaining|left "
        "over|altogether|in total|total|hold|number of)"}},
      {"supply",
       {"+(is that enough|order|reorder|reorder level|running low|run low|low|enough|short of|run "
        "out|refrets|refret|wire order|supplier|shopping list|last|get through|are we good|good for|"
        "get us|last us|wire situation|need to buy|buy|shortage|eat|still eat|stocked|sufficient|run "
        "dry|suffice|needs ordering|ordering)",
        "(what|queue|open "
        "jobs|jobs|everything|wire|wires|any|under|below|their|level|ringing|ring|put|left|how "
        "many|far|will|much|have|get|more|should|still|for the|"
        "all of it|situation|in there|coming|in time|month|left in|coil|more refrets|we "
        "have|through|short|until|when)"}},
      {"lots",
       {"+(lot|lots|deliveries|delivery|arrive|arrived|get [the] {wire} from|crown heights|delivered|come "
        "in|came in|come from|came from|parcels|get from)",
        "(what|record|on record|all|had|have we had|when|where|get|got|of|wire|last|list|supplier|heights|so "
        "far|which|ever|bought|from)"}},
      {"balance",
       {"+(balance|add up|adds up|went out|came in and|what became|became|wire account|wire "
        "books|books|reconcile|used up)",
        "{month}|[in|for|of] {month}",
        "(between|from) {from} and {until}|from {from} (to|until|till) {until}",
        "(wire|how much|much|came in|went out|this month|for|in|out|what|does|do|and|all|tally|year|kept)",
        "{year}"}},
      {"saved",
       {"+(tin worth the bother|saved|save|savings|saving|brought us|worth the bother|worth it|tin "
        "worth|earned|worth)",
        "{month}|[in|for|of|this|during] {month}", "(since|from) {since_month}", "(since|from) {since}",
        "(tin|money|what|how much|it|did|does|us|bother|wire|so far|keeping|short frets|this month|from the "
        "tin|has)"}},
      {"tin-care",
       {"+(clear out|dead wood|nobody [has|have] [touched|wants|needs|uses]|no "
        "use|untouched|idle|bin|useless|throw out|too short|get rid of|not used|unused|old pieces|"
        "clear|declutter|tidy|thin out|surplus|never (get|be) used|weed out|scrap|clutter|chuck out|dead "
        "stock|sort out)",
        "([for|in|over|since] [a|one] {days} days|in {days} days|for {days} days)",
        "{days=365} [for|in|over] [a|one|the last] year", "{days=182} [for|in] half a year",
        "{days=30} [for|in] [a|the last] month",
        "(what|tin|which|ones|pieces|bits|drawer|any|anybody|anything|to|of|in|touched|could|do not "
        "scrap|good|used|short|can|should|out|sitting|lying|days|to be any good|be any good)"}},
      {"held",
       {"+(kept|held|spoken for|set aside|put by|put aside|reserved|hold|still "
        "free|free|earmarked|holding|reservations|on hold|set everything aside|holds|claimed|taken)",
        "(piece|number) {piece#}",
        "(anything|what|did|for|anybody|is|everything|any|we|aside|which|pieces|who|whom|whose)"}},
      {"spring-back",
       {"+(spring back|springback|sprang|springing back|springs back|came up|come up|stay down|stays "
        "down|sprung|spring|pop back|come back up|lift|lifted)",
        "{by=load} [by|per|at|with] [what|which] load|by load", "{by=mm} (per|by) mm [of fret]|by length",
        "{stay=yes} (stay|stays|staying) down", "{interval=yes} how sure",
        "(how often|what|which|often|much|frets|at|did|rate|after pressing|does)"}},
  };
}

std::vector<FrameText> of_jobs() {
  return {
      {"due",
       {"+(due|deadline|deadlines|falls due|fall due|overdue|rechecks|recheck|late|promised|pressing "
        "deadline|look at today|done by|clock|how long have we got|by when|"
        "look again|run out of time|time left|must i look|behind|running late|waiting|look ahead)",
        "{days} days|[for|in|over|within] [the] (next|coming|following) {days} days|{days} days ahead",
        "{days=1} (falls|fall) due today|{days=1} due today|{days=1} today",
        "{days=7} ([the|in the] (next|coming) (week|seven days)|a week ahead|one week ahead)",
        "{days=21} three weeks [ahead]", "{days=14} (two weeks [ahead]|[the] next two weeks|fortnight)",
        "{days=30} [in|for|over] the (coming|next) month",
        "(what|anything|everything|any|must|go|under the press|when|promised for|for|this week|by "
        "tomorrow|do we have to have|have to|remind|next|on the clock|with|are we|soon|"
        "pressing|deadline-wise|wise|to|press|be pressed|be|till when|job|left|list|still|coming "
        "up|tomorrow)"}},
      {"jobs",
       {"+(jobs|open jobs|open|mine|on her plate|on his plate|queue|necks|my jobs|waiting|list|which "
        "jobs|plate|refrets|in the queue|work in hand|instruments|in the shop|mine)",
        "{mine=yes} (mine|my|i have|do i have|am i doing|on my plate|i've got)",
        "[at|on] [the] {bench} bench",
        "(what|have we got|got|how "
        "many|all|whose|list|on|are|which|show|plate|we|every|everything|unfinished|current)"}},
      {"job",
       {"+(status|how is|how are|how is {job} doing|state|want a fret|scale|nut width|bound|fanned|done "
        "on|ready|missing|still missing|far|progress|radius|radiuses|owner|tell|show|"
        "still want|still need|slots open|open slots|getting on|coming "
        "along|details|about|neck|stand|stands|specs|how many frets|zero fret|what scale|how far)",
        "(my neck|which slots|still|fret|anything|yet|square|where|not "
        "done|nut|width|of|doing|what|how|my|along|left|has|have|on|wire|does it have|is it|on "
        "the|there|with|coming|slots)"}},
      {"whose",
       {"+(who is doing|who has|who's got|who is building|building|mine|who does|whose|who works on|belongs "
        "to|is on|who is on|who took|assigned to|working on|who looks after|could do|builder|responsible)",
        "(doing|job|who|is|neck|to|for|got|has)"}},
      {"persons",
       {"+(which bench is everybody|people|people list|persons|staff|crew|everybody at|everyone at|who "
        "works|who is here|left the shop|who is who|who is in the shop|who has "
        "left|uids|logins|roles|team|colleagues|personnel)",
        "{retired=yes} (left [the shop]|retired|[who] (has|have) left|gone|former|ex)",
        "(bench|which|list|so far|with|all|here|at|on|the|ever|of|shop)"}},
      {"suits",
       {"+(does [the|its] [wire] suit|suit|seat in|seat|any good|could i put|fit the slots|good|instead|too "
        "thick|tang|right wire|work in|put {wire} in|go into|slots|match|use {wire}|go in)",
        "+({slot_width} wide|{slot_depth} deep|instead|suit|suits|wire|seat|fit the slots|fit|tang|good "
        "for|use|match|go in|go into)",
        "{slot_width} wide|wide {slot_width}", "{slot_depth} deep|deep {slot_depth}",
        "{bottom=curved} (curved|round|rounded) [slot|slots] (bottoms|bottom)|{bottom=curved} "
        "(bottoms|bottom) [are|is] (curved|round)",
        "{bottom=flat} flat [slot] (bottoms|bottom)",
        "(put|wire|slots|tang|too|thick|with|its|any|good|curved|slot|in|thin|loose|tight|or|does|for|well|"
        "into|board)"}},
      {"promise",
       {"+(promise|could we do|can we do|take on|one more|another refret|doable|what day|ready|can we|could "
        "we|manage|squeeze in|fit in|be done|possible|when could|earlier|when can|finish another|new "
        "refret|extra)",
        "+(refret|promise|frets|board|one more|new board|job|ready|another|some frets|neck|earlier|done)",
        "by {by}|(before|until|on) {by}", "{kind=refret} [one|a|another|more] refret",
        "{kind=new_board} [a|another] new (board|fretboard|fingerboard)",
        "{kind=some_slots} {frets} frets (only|alone)|[only|just] {frets} frets",
        "{kind=new_board} new (board|fretboard|fingerboard) , {frets} frets|{kind=new_board} {frets} frets "
        "new board",
        "{bound=yes} bound", "{ends=filed} filed [ends]", "{ends=rounded} rounded [ends]",
        "{glued=yes} glued",
        "(customer|wants|want|what|day|when|could|have|can|for|could we "
        "have|by|we|do|only|earliest|next|if|take|somebody|someone|asks|asking|more|i|it|be|before|for a)"}},
      {"stages",
       {"+(stages|steps|how long does a|how much work|work is left|work left|how long for|how long does|how "
        "long|stage|takes us|work remains|hours of work|remaining work|time does)",
        "{kind=new_board} new (board|fretboard)",
        "{kind=some_slots} (just|only) {frets} frets|{kind=some_slots} {frets} frets only", "!at",
        "{kind=refret} (24|{frets}) fret refret|[a] {frets} [-] fret refret",
        "{bound=yes} (bound|with binding)", "{ends=filed} filed [ends]", "{ends=rounded} rounded [ends]",
        "{frets} [-] frets|{frets} [-] fret",
        "(refret|take|takes|us|work|on|board|what|of|are|left|how "
        "much|a|is|need|long|much|how|time|does|seating|pressing|dressing|the|remaining|full|for|usually|to "
        "do|normally)"}},
      {"agenda",
       {"+(plan|who is doing what|what now|what's next|next for me|on for|planned|press when|schedule|worked "
        "on|turn|holds everything up|agenda|happening|my list|work|on my list|"
        "next|on the {machine}|bottleneck|to do|what do i do|what does {person} do|doing|what should i "
        "do|look like|what will {person} do|what am i doing|program|what is on|todo|coming up|comes "
        "next|first)",
        "{mine=yes} (for me|my|i|mine|me)",
        "{next=yes} {mine=yes} (what now|what next)|{next=yes} next (for|up|job|thing|task)|{next=yes} "
        "(comes|is|do|what) next|{next=yes} first",
        "{load=yes} (machine holds [everything|us] up|holds [everything|us] up|bottleneck|load|busiest|most "
        "loaded|hold up)",
        "{day}|(on|for) {day}", "{days} days|[the] next {days} days", "{days=14} two weeks|fortnight",
        "{days=7} (a|one|next) week",
        "(what|who|doing|this week|on|the|when|which "
        "machine|machine|does|get|is|free|list|work|for|today's|week|everybody|everyone|why|then|be|will|"
        "does|do|have|to|i'm|who's)",
        "{day} plan|{day} work"}},
      {"machines",
       {"+(machines|how many|out of service|free|machine|machines do we have|is the {machine} "
        "(down|free|up|working|broken|ok)|down|working|broken|in service|all right|equipment|in "
        "order|usable|in use)",
        "(what|do we have|have|list|is|all|the|which|now|are|available|who|any|of)"}},
      {"bookings",
       {"+(booked|bookings|booking|taken|reserved|got the {machine}|has the {machine}|have the "
        "{machine}|reservations|reservation|who has|who is on|who's got)",
        "{mine=yes} (i booked|have i|my|mine)", "{day} [at {*at}]|(on|for) {day} [at {*at}]",
        "{days} days|[the] next {days} days",
        "(who|what|for|next|is there|anything|the|has|have|any|on|of|when|a|i|all|at|list|days)"}},
      {"hours",
       {"+(open|hours|shut|closed|till when|when does {person} work|does {person} work|work|opening|opening "
        "hours|working hours|when do i work|in on|close|until when|here on|close on)",
        "{mine=yes} (my|mine|i)", "{day}|(on|for) {day}", "{days} days|next {days} days",
        "{days=14} two weeks|fortnight",
        "(are we|when|what|for|the|next|does|is|till|are|do|week|shop|until|on|how late|we|this)"}},
      {"history",
       {"+(where did|come from|who used|did anyone use|when did|what happened to|who|history|log|happened "
        "to|what became of|past|where has|used|ended up)",
        "+(piece|number) {piece#}", "!job", "!person", "!wire", "{*job}", "{*person}",
        "(for|aside|put|use|used|from|and|go|goes|it|did|what|anyone|where|when|by|with|done|has "
        "been|hold|held|add|added)"}},
      {"history",
       {"+(history|did {person} report|where did|come from|what have i done|did what|last thing|who used|did "
        "anyone|who|report|happened|what has been done|when did|been lost|log|journal|what did|what "
        "happened|what was|past)",
        "(piece|number) {piece#}", "{slot}", "{mine=yes} (have i|i|my|mine|did i)", "{happened}",
        "since {since}",
        "(what|used|use|did|where|did it go|and "
        "when|done|of|has|who|pressed|report|go|come|from|put|somebody|aside|for|to|was|thing|last|everybody|"
        "changed|with|all|happened|lost|been|fret|reported|do|did)"}},
      {"help",
       {"+(trim limit|setback|press plate|bin step|nip loss|help|what can i say|which settings|settings|what "
        "can you do|how do i (report|say|tell|add|book|use|enter)|how to|how can i|what do you "
        "understand|what do i say|commands|what is possible)",
        "(help with|help on|help) {topic}", "{topic=pressed} (report pressing|pressing|report a pass)",
        "{topic=set} settings|what is [the] {topic=set} (trim limit|setback|press plate|bin step|nip "
        "loss|press limit|setting)",
        "(what|me|are|there|the|which|with|a|please|on|about|can)"}},
  };
}

std::vector<FrameText> of_bench() {
  return {
      {"press",
       {"+(next pass|pass|passes|press|what if i put|what if we put|go to|do {slots} of|bar|if i "
        "pressed|pressed yet|we press|ram|off to the|favour|pressing|press again|re-press|load|how hard|what "
        "load|how much load|pressing schedule|lean|favour|too far|off|squeeze|what "
        "force|force|tonnage|pressure|over)",
        "{all=yes} (all [the] passes|whole (pressing) schedule|[whole] schedule|every pass|list [all] [the] "
        "passes|pass card|pass list|full schedule|entire schedule|passes (for|of|on))",
        "{slots}|frets {slots}|fret {slots}", "{load}|(at|with|to) {load}",
        "[with|use|using] [the] {bar} bar",
        "{off} (off|too far) [toward|to] [the] {toward=bodyward} body|{off} [too far] [toward|to] the "
        "{toward=bodyward} body",
        "{off} [off|too far] [to] [the] {toward=treble} treble [side]",
        "{off} [off|too far] [to] [the] {toward=bass} bass [side]",
        "{off} [off|too far] [toward|to] [the] {toward=nutward} nut",
        "(favour|lean on|lean toward|lean to) [the] {favour=bass} bass [side]",
        "(favour|lean on|lean toward|lean to) [the] {favour=treble} treble [side]",
        "crown [is] {crown_width} wide|crown width [of] {crown_width}|{crown_width} [wide] crown",
        "(how|what|do|again|list|all|for|i|if|put|can|go|to|next|use|got|ram|stands|happens|off|how far|how "
        "much|want|lean|much|hard|give|whole|with|do "
        "i|be|would|that|suppose|did|done|pressed|yet|ready|over|need|takes|take)"}},
      {"level",
       {"+(level|readings|lay the edge|span|high|low|sunk|verdict|straightedge|culprit|check|should i do "
        "about|do i do about|do about|edge|call it|frets are high|levelled|rock|treble|bass|how does|what "
        "about)",
        "{only=next} (next [span]|(lay|put) [the] (edge|straightedge) next|next reading|check "
        "(now|next)|where next|which span [next]|what do i check)",
        "{only=call} (call {job} level|line of {job} level|call it level|call [it|that] level|level enough "
        "[to call]|good enough|can i call)",
        "[the] {line=treble} treble [side|line]", "[the] {line=bass} bass [side|line]",
        "[the] {line=middle} middle [line]",
        "{all=yes} (whole|all|full|entire|complete) [level] [table|list|of it]",
        "is {slot} (high|low|sunk)|{slot} (high|low|sunk)|fret {slot}|about {slot}|{slot}",
        "(is|what|do|where|come "
        "to|on|frets|fret|which|are|i|of|good|enough|to|side|how|does|look|straightedge-wise|wise|any|sunk "
        "or not|or|not|been|still|ones|tell|us|about|give|now|so|one|read|that's|did|verdict|or are "
        "there|say|one's|the one)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_questions() {
  std::vector<FrameText> out = of_tin();
  for (auto more : {of_jobs(), of_bench()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

} // namespace nutward::talk
