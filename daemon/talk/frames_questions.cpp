// What the questions are known by; see talk/frame.hpp.
#include "talk/frames_questions.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.
namespace {

std::vector<FrameText> of_tin() {
  return {
      {"fit",
       {"+(piece|pieces|bit|something|anything|one|short one|need a fret|offcut|what|what have we got|have "
        "we got|spare|find|any|candidates|which|what fits|fits|fit)",
        "+({slot}|(for|at|in|into|on) {slot}|(slot|fret|groove|position|number) {slot})", "{*wire}",
        "{pulled=yes} [even|also|including|include|old] pulled [frets|ones|pieces] [are] "
        "[fine|ok|okay|included|too|allowed|welcome|count] [too|also|as well]|{pulled=yes} [also|even] "
        "(old|used|already used|pulled) [pulled] (ones|frets|one) [included|are|count]|{pulled=yes} "
        "(taken|took|pulled) out of (some|an) other",
        "{long=yes} (even if i have to (nip|trim|cut|lose|waste) [a] (lot|much) [off]|even if a lot (comes "
        "off|is wasted)|even if most comes off|(never mind|whatever|regardless of|no matter) [the] "
        "(waste|nipping|trim|loss)|however (much|long|far) [i|we] [have to] [nip|trim|waste]|waste does not "
        "matter|[too|including|also] [the] (long|longer) (ones|pieces) [allowed|too|are fine|included]|[did "
        "not mind] (nip|nipping) a lot [off]|exceed the trim limit|exceeding the trim limit|over the trim "
        "limit|cutting long pieces [allowed])",
        "(lying|around|about|would|do|drops|drop|straight|take|use|make|makes|replace|cut|cut "
        "down|dig|need|want|right|length|dressed|hands full|had to come out|good|got|goes|go|search|look|use "
        "for|tin|hand|best|closest|nearest|suits|suit|short)"}},
      {"fit",
       {"+(anything|have it|do we have|have we got|what have we "
        "got|got|fret|piece|something|any|fits|fit|find)",
        "+{length} [finished]", "+{wire}", "!job",
        "(finished|finished length|length|long|make|makes|made|for|near|around|about|close to|tin)",
        "{pulled=yes} [even|also|including|old] pulled [frets|ones] [are] [fine|ok|included|too]"}},
      {"place",
       {"+(where|home|which slot|any slot|slot for|what slot|who can use|who could "
        "use|anybody|anyone|could|good for|any use|go|goes|end up|suit|use for|nearest|put|fit "
        "in|fits|belong|belongs|what for|scrap or)",
        "+((piece|number|no|pieces|item|stick end|offcut) [number|no] {piece#}|{piece#}|{length} "
        "[long]|{length} (of|in) {wire}|the {piece})",
        "[a|the|this] {length} [piece|bit|offcut|length|fret] (of|in) [the] {wire}|[a] {length} {wire} "
        "[piece|bit|offcut|fret|remnant]|[a] (piece|bit|offcut|remnant|fret|length) of {length} [in|of] "
        "{wire}|(piece|bit|offcut|fret|length|remainder) of [the] {wire} [wire] [is|of] {length}|[a] "
        "{length} of [the] {wire}|found {length} of {wire}|{wire} [is] [and] {length}",
        "{long=yes} ([even] if [it means] [we have to] (most|much|a lot|cut|cutting) [of it] [cutting] [a "
        "lot|much|a fair bit] [comes|has to come|goes|is|may come] (off|away|nipped off|wasted|lost)|(never "
        "mind|whatever|no matter|ignore|ignoring) [the] (waste|trim limit)|[and] a lot may come off|long "
        "too|too long is fine|with much cutting away|over the trim limit)",
        "{ends=one_raw} [with] (one end|one) [is] [already] (dressed|done|finished|rounded|raw|filed "
        "[clean]|rough) [and] [the] [other|one] [one] [not|raw|dressed]",
        "{ends=raw} [with] (both|two|the) ends [are] [still] (raw|undressed|not "
        "dressed|rough|untreated|unfinished)|{ends=raw} ends (raw|rough|untreated|undressed)|raw "
        "ends|raw|(rough|untreated) ends",
        "{ends=dressed} [with] [both|two|the|its] ends [are|were] [already] "
        "(dressed|done|finished|rounded)|dressed [ends|already]",
        "(for|on|to|in) {job} (only|alone)",
        "(would|does|do|got|found|use|used|offcut|piece|hand|in my hand|in the tin|stick "
        "end|most|nearest|closest|any|end|which|best|of use|to "
        "anybody|somewhere|only|it|take|can|long|spare|scrap|on|could|on top "
        "of|good|leftover|bit|waste|least|waste least|job|slot|groove|open|use "
        "of|whereabouts|here|remainder|fret|in my hand|for)"}},
      {"all-right",
       {"+(ok|okay|all right|alright|will that do|that do|good enough|do|leave it|acceptable|does it "
        "matter|fine|enough|matter|pass|live with|too short|usable)",
        "+{length} [long]", "+{slot}",
        "(mine is|mine|is|got|have|fret|came out|ended up|turned out|measures|at|cut|one)",
        "{ends=dressed} dressed [already]|{ends=dressed} [both] ends (dressed|done)",
        "{ends=raw} [both|the] ends [are] [still] (raw|rough|undressed|unfinished|not dressed)",
        "{ends=one_raw} [with] one end [is] (raw|dressed|rough) [and] [the] [other] [one] "
        "[not|raw|dressed]|{ends=one_raw} one raw end",
        "{one_side=yes} ([gap] [shows|only] [is] [only|just] (on|at) [only] one (side|end|edge) [only]|one "
        "side [only]|[only|just] [on|at] one (side|edge))",
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
        "{open=yes} [also] [considering] (empty|open|unfilled) (slots|positions|grooves) [may|can] [be] "
        "[filled] [too|as well|count|also]|{open=yes} [may|can] [also] (fill|filling) [the] [empty|open] "
        "slots [that never had one] [too|as well]|{open=yes} (slots|grooves) (that never had one|with "
        "nothing in them)",
        "{tin=yes} [also] ((with|using|from|taking|and|with help of|use) [pieces|bits|what] [of|from] the "
        "tin [has] [too|as well|allowed]|tin [is] (allowed|too|included|bits)|using tin bits|what the tin "
        "has|pieces of the tin)",
        "(measure|frets|fret|half|hair|short|a hair short|without making new ones|without making [any] "
        "new|make fewer|fewer|new ones|plan|could|only|are|bit|few|some|so|i|how|up|along|too "
        "short|re-make|remake)"}},
      {"cuts",
       {"+(how far would the tin|tin get us|cutting plan|cut plan|plan the cuts|do i cut|should i cut|how "
        "(do|should|would|could|can) (i|we) cut|cut|saw|new wire|out of the tin|from the tin|from the tin "
        "alone|tin alone|would we cut|material allocation|cuts)",
        "(off|from|of|out of) [a|one|two|three|four|five|sticks|stick] [of] {sticks}",
        "{tin_only=yes} [do|done|do it] [only|just|out|purely] [of|from|with] [only] the tin [alone|only|by "
        "itself]|no new wire|without new wire|tin (alone|only)|(using|with) [only] what [is] in the tin",
        "(how far|how much|would|cut {job} from|cut it "
        "from|get|us|take|will|what|plan|least|waste|wasted|least waste|for|much|get us|today|did "
        "it|would|lot|everything|whole queue|queue|wire|were "
        "done|best|take|use|optimal|efficiently|cheapest|stick|sticks|off)"}},
      {"cut-list",
       {"+(cut list|cutting list|marks on the ruler|marks on the rule|cut - list|list of cuts|cutlist|list "
        "for the saw)",
        "(saw|at the saw|print|hang up|to hang up|show|take along|wall|paper|sheet|whole "
        "shop|printing|marks|rule|ruler|hard copy|copy|source by source|run off|bench)"}},
      {"labels",
       {"+(labels|label|stickers|bin labels|tags|bin cards|inscriptions)",
        "{step} (steps|step|apart|each|increments|one|bins)|(steps|step|increments) [of] {step}|(every|each "
        "for|at|per|in) {step} [each]|[at] {step} (to|per|a|in) [the|a|each] (bin|box|drawer)|(bin|bins|box) "
        "[for] every {step}",
        "(print|picture|printable|set|boxes|box|papers|sizes|bin|bins|drawer|drawers|tin|length|by "
        "length|need|new|all|for|sheet|make|of)"}},
      {"stock",
       {"+(stock|what have we got|have we got|do we have|on hand|in the tin|drawer|coil|shelf|show|on the "
        "shelf|lying|tin|left|pieces|short pieces|bits|there is|how much|how many|how "
        "full|lengths|lie|lies|inventory|put by|rack|count of|wire)",
        "(how many metres|metres|list|everything|full|what|read me out|read out|wire|according to you|should "
        "there be|be|bits|short|is|are|lying around|got|have|around|say|anyone|counted|sticks|does it "
        "say|how many sticks|remaining|left over|altogether|in total|total|hold|number of)"}},
      {"supply",
       {"+(is that enough|order|lasts|used up|depleted|carry us|how long|bought|reorder|reorder "
        "level|running low|run low|low|enough|short of|run out|refrets|refret|wire order|supplier|shopping "
        "list|last|get through|are we good|good for|get us|last us|wire situation|need to "
        "buy|buy|shortage|eat|still eat|stocked|sufficient|run dry|suffice|needs ordering|ordering)",
        "(what|queue|open "
        "jobs|jobs|everything|wire|wires|any|under|below|their|level|ringing|ring|put|left|how "
        "many|far|will|much|have|get|more|should|still|for the|all of it|situation|in there|coming|in "
        "time|month|left in|coil|more refrets|we have|through|short|until|till when|till|when|latest|last "
        "day|day|by|date|how long|forecast|counting|on order|pace|soon|any of it|used|by which)"}},
      {"orders",
       {"+(on order|orders|ordered|order|on the way|arrive|arrives|to come|still to come|coming|sent away "
        "for|waiting on|waiting for|when does the wire|purchase orders|outstanding)",
        "{closed=yes} [also|and|including|with|even] [the|those] [old|past] [orders] [that|ones] [are] "
        "(closed|finished|done with) [ones|orders|too|as well]|{closed=yes} "
        "(past|old|closed|finished|former) [finished|wire|purchase] (orders|ones)|{closed=yes} both open and "
        "closed",
        "(what|which|wire|any|is|from whom|who|when|does|do|not "
        "yet|arrived|supplier|and|the|all|sticks|coils|list|open|overview|how much|till "
        "when|till|show|of|from|at all)"}},
      {"suppliers",
       {"+(supplier|suppliers|packs|pack|pack size|pack sizes|minimum|lead time|how late|late|on "
        "time|quicker|keep|keeps|really take|really|vendors|vendor|who do we (send to|buy from|order "
        "from|ring)|houses|punctual|get one stick|how long does|order from|usually)",
        "+({supplier}|supplier|suppliers|vendors|vendor|houses|send to|buy from|order from)",
        "{supplier}|(from|at|of|by) {supplier}",
        "(long|take|takes|sells|the|least|in|buy|whole|order|quantities|quantity|size|sizes|list|our|wire|"
        "for|on average|usually|from|ring|minimum|approved|terms|they|they'll|any|than|let "
        "on|crowd|its|their|days|stick|one)"}},
      {"order-list",
       {"+(order list|shopping list|buying list|purchase list|what to order|purchases|wire order|list of "
        "orders|last prices|what should i order)",
        "[for|in|within|over] [the] [next|coming] {days} days|{days=14} [for|in|over] [a|the|next] (two "
        "weeks|fortnight)|{days=21} [for|in|over] [the] [next] three weeks [worth]|{days=28} four "
        "weeks|{days=7} [for|in] [a|one|the next] week|{days=30} [for|in|over] [the|a] [next] month",
        "(what|wire|come to|comes to|cost|total|prices|last|spreadsheet|csv|print|whom|from|by when|need|put "
        "into|for|worth|fall|write up|at what)"}},
      {"lots",
       {"+(lot|lots|get wire|wire before|deliveries|delivery|arrive|arrived|get [the] {wire} from|crown "
        "heights|delivered|come in|came in|come from|came from|parcels|get from)",
        "(what|record|on record|all|had|have we had|when|where|get|got|of|wire|last|list|supplier|heights|so "
        "far|which|ever|bought|from)"}},
      {"balance",
       {"+(balance|add up|adds up|went out|came in and|what became|became|wire account|wire "
        "books|books|reconcile|used up)",
        "{month}|[in|for|of] {month}",
        "{month=this_year} [over|for|in] (the whole year|the current year|this [whole] year|this year's|the "
        "year|this year)|{month=last_year} (last year|the [whole] year that went by [last]|last "
        "year's)|{month=last_month} last month|{month=this_month} this month|{month=all_time} [in] (all "
        "[the] time|altogether|ever)",
        "(between|from|since) {from} (and|to|until|till|through|up to|-) {until}|since {from}|from {from} "
        "on|{from} (to|until|till|through) {until}",
        "(wire|how much|much|came in|went out|this month|for|in|out|what|does|do|and|all|tally|year|kept)",
        "{year}"}},
      {"saved",
       {"+(tin worth the bother|saved|save|savings|saving|brought us|worth the bother|worth it|tin "
        "worth|earned|worth)",
        "{month}|[in|for|of|this|during] [the] {month} [of] [{year}]", "(since|from) {since_month} [on]",
        "(since|from) {since} [on]", "(between|from|since) {since} (and|to|until|till|through) {until}",
        "{month=this_year} [over|for|in] (the whole year|the current year|this [whole] year|the year so "
        "far|the year)|{month=last_year} last year|{month=last_month} last month|{month=this_month} this "
        "month|{month=all_time} [in] (all [the] time|altogether|ever)",
        "(tin|money|what|how much|it|did|does|us|bother|wire|so far|keeping|short frets|this month|from the "
        "tin|has)"}},
      {"tin-care",
       {"+(clear out|dead wood|nobody [has|have] [touched|wants|needs|uses]|no "
        "use|untouched|idle|bin|useless|throw out|too short|get rid of|not used|unused|old "
        "pieces|clear|declutter|tidy|thin out|surplus|never (get|be) used|weed out|scrap|clutter|chuck "
        "out|dead stock|sort out)",
        "([for|in|over|since] [a|one] {days} days|in {days} days|for {days} days)",
        "{days=365} [for|in|over] [a|one|the last] year", "{days=182} [for|in] half a year",
        "{days=30} [for|in] [a|the last] month",
        "(what|tin|which|ones|pieces|bits|drawer|any|anybody|anything|to|of|in|touched|could|do not "
        "scrap|good|used|short|can|should|out|sitting|lying|days|to be any good|be any good)"}},
      {"held",
       {"+(kept|held|laid to the side|spoken for|set aside|put by|put aside|reserved|hold|still "
        "free|free|earmarked|holding|reservations|on hold|set everything aside|holds|claimed|taken)",
        "(piece|number) {piece#}",
        "(anything|what|did|for|anybody|is|everything|any|we|aside|which|pieces|who|whom|whose)"}},
      {"spring-back",
       {"+(spring back|springback|spring-back|sprang|springing back|springs back|came up|come up|stay "
        "down|stays down|sprung|spring|pop back|come back up|lift|lifted)",
        "{by=load} [in] [the] [table] (by|per) [what|which] load|{by=load} (at|with) (what|which) "
        "load|{by=mm} (per|by|for each|for every|each|every) (mm|millimetre|millimeter) [of fret]|{by=mm} by "
        "length|{by=mm} (by|per) load (for|per|of) (each|every) (mm|millimetre|millimeter) [of fret]",
        "{stay=yes} [from|at] [what|which] [load] [on|onward] [do|does|will] [frets] [of] "
        "(stay|stays|staying|remain|remains) [the] [frets] [of] (down|put|seated)|{stay=yes} "
        "(stay|stays|remain|remains) [from|at] (what|which) load|{stay=yes} (from|at) (what|which) load "
        "[on|onward] [do|does] (frets|the|{wire}|it|they) [frets] [of] [{wire}] (stay|stays|remain|remains) "
        "(down|put|seated)|{stay=yes} (from|at) (what|which) load [on|onward]|{stay=yes} (stay|stays|remain) "
        "(down|put|seated)",
        "{interval=yes} (how sure|uncertainty|how far off|margin of error|margins of error|margin|how "
        "certain|how reliable|confidence|error bars|give or take)",
        "(how often|what|which|often|much|frets|at|did|rate|rates|after pressing|does|table|on|all "
        "wires|statistics)"}},
  };
}

std::vector<FrameText> of_bench() {
  return {
      {"press",
       {"+(next pass|pass|passes|press|what if i put|what if we put|go to|do {slots} of|bar|if i "
        "pressed|pressed yet|we press|ram|off to the|favour|pressing|press again|re-press|load|how hard|what "
        "load|how much load|pressing schedule|pressing plan|lean|favour|too far|off|squeeze|what "
        "force|force|tonnage|pressure|over|get down|push down|down again|which group|be pressed|limit)",
        "{all=yes} (all [of] [the] passes|[the] whole (pressing|press) (schedule|plan)|[whole] "
        "(schedule|plan)|every pass|list [all|each] [of] [the] [passes]|list each|pass card|pass "
        "list|(full|entire|whole) (schedule|plan|list|table)|show [me] all [of them]|all of them|passes "
        "[{*job}] all|as a table|one after another|every one)|{all=yes} passes (of|for) {job} , all",
        "{every_group=yes} (even|also|including) [the] groups [that] [lie] inside [the one "
        "before]|{every_group=yes} every group",
        "{slots}|(frets|fret|slot|slots|position|positions) {slots}|on {slots} of|{slots} one",
        "(number|no) {job!}", "{load}|[up] (at|with|to|on|gave it|give it) {load}",
        "(with|use|using|under|put|does) [the] {bar} bar",
        "[the] [ram|load] [is|stands|stood|were|was] [applied] {off} (off|too far|too much) [of|in] [the] "
        "[direction] [of|toward|towards|to] [the] ({toward=bodyward} (body|bodyward)|{toward=nutward} "
        "(nut|nutward)|{toward=treble} treble [side]|{toward=bass} bass [side]) [of the mark]",
        "[the] [ram|load] [is|stands|stood] {off} [toward|towards|to|over] [the] ({toward=bodyward} "
        "(body|bodyward)|{toward=nutward} (nut|nutward)|{toward=treble} treble [side]|{toward=bass} bass "
        "[side]) [of [the] (mark|middle|its place)]",
        "(favour|favor|lean|lean on|lean toward|lean to|how far [over] "
        "(to|toward|towards)|toward|towards|over to) [the] ({favour=bass} bass|{favour=treble} treble) "
        "[side]",
        "({favour=bass} bass|{favour=treble} treble) [-] [side] limit",
        "[the] crown [is|measures|of|to be] {crown_width} [wide] [across]|crown width [of|is] "
        "{crown_width}|{crown_width} [wide|across] [the] crown|crown to be {crown_width} wide|{crown_width} "
        "across",
        "(how|what|which|more|state|do|again|list|all|for|i|if|put|manner|instructions|effect|harm|comes "
        "first|first|metal block|goes|where does it stand|can|go|to|next|use|got|ram|stands|happens|off|how "
        "far|how much|want|lean|much|hard|give|whole|with|do "
        "i|be|would|that|suppose|did|done|pressed|yet|ready|over|need|takes|take)"}},
      {"level",
       {"+(level|readings|lay the edge|span|high|low|sunk|verdict|straightedge|culprit|check|should i do "
        "about|do i do about|do about|edge|call it|frets are high|levelled|rock|treble|bass|how does|what "
        "about)",
        "{only=next} (next [span]|[do i] (lay|put|set) [the] (edge|straightedge) [down] "
        "[next|now]|[the|which] next reading|check (now|next)|where next|which span [next]|what do i "
        "check|[which|what] reading [to] [do i] (take|next) [now|next]|read next|take now)",
        "{only=call} ((call|say|name|declare|sign off|signed off) [that] [as] [it|that|{job}] [is|as] "
        "level|line of {job} level|(call|say|signed off) [as] {job} [is] level|(level|flat|good) enough "
        "[now|yet] [to (call|say)] [it] [done]|can i call [it]|(call|signed off|sign) [it] [off] [as] "
        "[done|level] [with levelling]|level yet|(be called|called|already name) [the] [{job}] level)",
        "[the] {line=treble} (treble [side|line]|side of the (thin|high) strings)",
        "[the] {line=bass} (bass (side|line)|side of the (thick|low|fat) strings|bass)",
        "[the] {line=middle} middle [line]", "(number|no) {job!}",
        "{all=yes} (whole|full|entire|complete) [level] [table|list|of it]|{all=yes} (all [the] [of] "
        "(readings|of it|table|spans)|readings table|[the] table of readings|every reading)",
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
  for (auto more : {of_bench(), frames_of_work(), frames_of_safety(), frames_of_people()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
