// What the commands about wire, the tin and what is cut from them are known by; see talk/frame.hpp. Every
// word that means something must stand here: what is not known is never passed over.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

constexpr std::string_view place = "[it is|they are|is|it's|goes|going|went|keep|kept|put|all] "
                                   "[in|on|into|onto|to|for|at] [the|my|our] {place#} [please|now]";

std::vector<FrameText> of_cutting() {
  return {
      {"use-several",
       {"+(took|take|use|used|using|went|put|are in|in|into|set|made|got|filled|became|employed|go)",
        "+([the|with] (pieces|numbers|nos|items) {pieces#}|{pieces#} (made|went|became|are in|are "
        "now|go)|from [numbers] {pieces#}|{count=2} (both|both the|the pair of|a pair of) {length} "
        "[s|ones|pieces] [of] [the] [{wire}] [ones]|[the] {count#} [of] [the|those] [{*count}] "
        "[bits|pieces|twins] [of] [{wire}] [that are|of] {length} [s|ones|pieces|long] [of] [the] [{wire}] "
        "[s]|(all|all the|pieces|all pieces|the pieces) [of] {length} [s|ones|pieces] [of] [the] "
        "[{wire}]|[the] "
        "{length} (s|ones|pieces) [of] [the] [{wire}])",
        "!pieces", "!length", "!count", "!slots",
        "+([the] [frets|fret|slots|slot|grooves|groove] {slots}|(in|into|for|to|on) "
        "[slots|slot|fret|frets|grooves] {slots}|[in|into|for] {job} [s] [slots|frets] {slots}|(in|for) the "
        "{job} [s] {slots})",
        "{wire} [pieces|ones|bits|frets]", "{*count} (pieces|ones) ",
        "(s|pieces|frets|ones|bits|both|mm|used|use|took|take|put|went|into|in|for|of|made|the|from|from "
        "them|with|and|each|one from each|one apiece|one each|respectively|employed|became|become|they've "
        "become|i've|up on|up|on|filled|got|were|are|have|go|gone|all of "
        "them|them|board|neck|fret|slots|set|now|straight)"}},
      {"cut-from",
       {"+(cut|cuts|from|came off|made|makes|gave|out of|sawn|sawed|got|off|yielded|are cut|went "
        "into|divided|apportioned|used|up)",
        "+([the] (piece|number|no|no .|piece number|piece with number) {piece#}|from {piece#}|(from|out "
        "of|off) [the] {piece}|[the] [rest|long|leftover] [with] [stick end of] {piece})",
        "!piece", "!slots",
        "+([the] [slots|slot|frets|fret|grooves|groove] {slots}|(for|into|on|to) [the] "
        "[slots|slot|frets|fret|grooves|groove] {slots})",
        "[both|all] {*count} (frets|ones|pieces|of them) [for]|both|{*count} from|all from",
        "(cut|cuts|out of|from|came off|off|made|makes|for|all|frets|got|sawn|sawed|nipped|is|gave|gave "
        "me|into|slots|up|them|it|cut them|cut it|from it|out of it|off it|divided|apportioned|used|in one "
        "go|both|the rest|long|leftover|with|number|and|on|the|to|has been|were|are|i did|that's|of|stick "
        "end|take|took|anyway|please|yielded|went|straight)"}},
      {"cut-new",
       {"+(new wire|fresh stick|new stick|coil|off the coil|fresh wire|off a stick|stick|full stick|whole "
        "stick|fresh coil|new coil|uncut wire|cut new|fresh rod|new rod)",
        "!slots", "!stick", "!lot",
        "+([the] [slots|slot|frets|fret|grooves|groove|numbers|ones for grooves|all of] "
        "{slots}|(for|into|of) [the] [slots|slot|frets|fret|grooves|groove] {slots})",
        "(from|off|of|out of) [the|that] [{*wire}] [s] {from=coil} [fresh|new|broad] coil|{from=coil} "
        "coil|(from|off|of|out of) [a|the|one] {from=stick} [brand] [fresh|new|full|whole] (stick|rod) [of "
        "wire]|{from=stick} (fresh|new|full|whole) (stick|rod) [of wire]|off [a|the] stick {from=stick}",
        "[from|off|of] [the] stick [number|no] {stick} [of the cut list|on the cut list]|[from|of] [the] "
        "second stick {stick=2} [on the cut list|of the cut list]|[from|of] [the] third stick {stick=3} [on "
        "the cut list|of the cut list]|[from|of] [the] first stick {stick=1} [on the cut list|of the cut "
        "list]",
        "(from|of) [the] (lot|delivery) [number|no] {lot} [s]",
        "(anew|cut|cuts|are cut|from|off|new wire|new|wire|fresh|done|are|of|sawn|sawed|nipped|made|out "
        "of|all of|all|top 3|the|from it|off it|is cut|took|take|a|and|came|were|so|so they are|there's "
        "your|your|nothing in the tin|the tin had nothing|for them|brand|more|cut list|on the cut list|of "
        "the cut list|i|today|numbers|ones|for|it)"}},
      {"pulled",
       {"+(pulled|pull|old frets|came out|had to pull|took out|out "
        "of|old|yanked|extracted|hauled|removed|former)",
        "+({count#} [of] [the] [old|pulled|former|bent] [{wire}] (frets|ones|of them)|{count#} in "
        "all|[the|new] [fret|frets|slot|slots|number|numbers|old] [out of slot] {slots}|{count#} "
        "(pulled|old) [ones])",
        "!count", "!slots", "!length", place,
        "[with] [lengths|that measure|measuring|measure|of|lengths of] {length} [long]",
        "{*count} (that|former|old frets with)",
        "(frets|fret|out|out of|old|again|had to|in the tin|into the tin|all in the "
        "tin|from|they're|tin|they are|box|wire|pull|pulled|back|back out of|back out|tin has it|put it with "
        "the tin|the|and|new|took|yanked|extracted|hauled|removed|of|in|them|threw|threw them|into|with "
        "them|so|board|neck|not measured|unmeasured|gave|one can find them|were|are|placed|put|came|came "
        "out|it|slot|number|former|ones|to|went|is|that measure|s)"}},
  };
}

constexpr std::string_view fret = "[the] [new] [one|piece|fret] [for|in|at|of|on] [the] "
                                  "[number|no|slot|fret|groove] {slot}|{slot} [fret|slot|groove]";
constexpr std::string_view long_ = "{length} [mm] [long]|(at|it's|it is|is|measures|measured|reads|comes "
                                   "to|made|be|being|make|with|now|:|as) [now] {length} [mm] [long]";
constexpr std::string_view ends =
    "{ends=dressed} [ends|both ends|with|already] [both] (dressed|clean) [ends|already]|{ends=raw} "
    "[ends|both ends|with] [still|both] (raw|rough) [ends]";
constexpr std::string_view across = "{measured=across} [measured] across [the|its|their] "
                                    "[ends]|{measured=straight} [measured] straight [along]";
constexpr std::string_view radius =
    "[bend|bent|board] [to a] radius [of|is] {bend_radius}|bent to [a] [radius] [of] {bend_radius}";
constexpr std::string_view tang = "[a|with a|the] {tang} tang|[the|its] tang [is|of|at|only] {tang}";

std::vector<FrameText> of_frets() {
  return {
      {"came-short",
       {"+(short|too short|came short|cut short|turned out short|came up short|came out "
        "short|lacks|shy|ended up|came out)",
        fret, "!length", "!short_by", "!why", long_,
        "[is|was|came|came out|by] [just] {short_by} [too|of a mm|mm] (short|shy|under|too little|below what "
        "it needs|too short)|[too|is|came out|came|it is] (short|shy) by {short_by}|lacks {short_by}|[is|it "
        "is] {short_by} (shy of|short of|below|under) [the] [least|minimum] [it needs]",
        "{if_short=yes} (if|should) [that|it|this|that's|it's|that is|it is] [is|prove|proves|be] [too] "
        "short|{if_short=yes} if need be",
        ends, across, radius, tang, place, "[then] [put|it goes|goes|return] [it] (in|into|to) the tin",
        "(cut|too|is|turned out|came|came out|up|it's|in|into the tin with it|tin|went|into the tin|with "
        "it|fret|ended up|a|now|measures|measure|measured|nipped|i|bit|little|too far|left it|so|the "
        "one|for|on|of|it|the|and|put|that|its|then|at|long|short|too short)"}},
      {"measured",
       {"+(measures|measured|measure|mic'd|micd|miked|caliper|long|across|calipers|reads|is|gauge|comes "
        "to|comes out|came out|make|as the length|length)",
        fret, "!length", long_, across, radius,
        "(by the caliper|caliper|with the "
        "caliper|on|at|fret|measures|measured|measure|long|the|calipers|is|bent|length|the length|as the "
        "length of|as|put down|reads|gauge|mic'd|it|one|i|make|in|for|of|came out|comes to|now|and)"}},
      {"remade",
       {"+(remade|remake|new fret|made new|made again|re-made|made a new|replaced|redone|redid|anew|new "
        "one|made over|newly made|replacement|made newly|new wire|all over|fresh one)",
        fret, "!length", "!old_length", long_,
        "{old=tin} [and|while] [the|its] (old|former|previous|predecessor|other) [one|fret|one's|one from "
        "before] [s|is|was|went|goes|lies|retained|put|gone|going|stays] [{old_length}] "
        "[is|was|went|goes|retained|put] (in|into|to|at) [the] tin|{old=tin} put [the] old [one|fret] "
        "(in|into) [the] tin|{old=tin} predecessor {old_length} went in the tin|{old=tin} [the] old "
        "(one|fret) [is|was|measures|measured|at] {old_length} [went|goes|is|and went] (in|into|to) [the] "
        "tin",
        "{old=scrap} (threw|chucked|binned|scrapped|tossed) [the] (old|former|previous) [one|fret] "
        "[out|away]|{old=scrap} [the] (old|former|previous|other) [one|fret|one from before] "
        "[s|is|was|went|goes|having been|gone|away|has been] [away|in|into|to|for] [the] "
        "(bin|scrap|rubbish|scrapped|binned|thrown away|thrown out|scrap box|waste|dustbin|no good)",
        ends, tang, place, "[from|of|out of] (new wire|fresh wire|a new stick|a fresh stick|a stick)",
        "(fret|new|for|on|again|anew|piece|wire|it|remade|remake|made|make|redone|redid|replaced|had "
        "to|over|all over|newly|brand new|fresh|a|the|and|has|was|is|been|it's|it is|now|of|with|by|newly "
        "made one|newly made|in there|replacement|one|i measured it|lies|manufactured)"}},
      {"lost",
       {"+(lost|ruined|spoilt|spoiled|wrecked|broke|botched|messed "
        "up|gone|dropped|buggered|mangled|destroyed|damaged|broken|vanished|missing|unusable|flew "
        "off|snapped|mislaid|kinked|bent|good for nothing|fell)",
        fret, "!why", "~{why}",
        "down {why}|because [of] {why}|since {why}|as {why}|by {why=the file} [the] file|owing to {why}|due "
        "to {why}|{why=snapped} snapped|{why=kinked} kinked|{why=bent} bent|{why=overheated} "
        "overheated|{why=hammered crooked} hammered it crooked|{why=dropped} (dropped it|dropped)|{why=fell "
        "behind the bench} fell behind the bench|{why=flew off} flew off|{why=fell on the floor} fell "
        "[down|off|on the floor]",
        "(fret|is|it|on|crown|gone|badly|lost|ruined|spoilt|spoiled|wrecked|broke|broken|beyond use|must be "
        "regarded as|has been|was|got|the|i|we|and|i cannot find it|can not find it|i can't find it|not to "
        "be found|plumb|completely|good for nothing|now|so count it as|messed "
        "up|damaged|one|mislaid|of|in|for|made|i made|for good|missing|somewhere)"}},
      {"shifted",
       {"+(moved|move|shifted|in slot|is in|now in|went to|slid|re-laid|relaid|sits "
        "in|slipped|shift|relocated|lies|lie|sit|scooted|pushed|displaced|now)",
        "!from", "!to", "!lengths", "!slots", "!short_ones",
        "[the|each of] [fret|frets|ones|one|what was] [of|from|out of|in|number] [the] "
        "[slots|slot|groove|frets] {from} [of|on] [{job}] [s] [are|is|one down|one slot "
        "nutward|over|have|has|been|were|was|it] [now|down|moved] (to|is in|in|into|now in|went to|are "
        "in|down to|up to|sits in|sit in|lies in|lie in|lying in|lies at|at|over to|located in|relocated "
        "to|sits at|now sits in|now sit in|gone to|moved to) [now] [the] [slot|slots|groove] {to} [now]|into "
        "[slot] {to}",
        "[and|while] [the] [old|short one|short ones|fret|frets|that|one|ones] [of|from] [slot|slots] "
        "{short_ones} [s] [is|are|went|goes|has|have|was|were|had no place so it is] [gone|placed|put] "
        "(in|into|to) [the] tin|[and] short [one|ones] {short_ones} [went|goes] (in|into) the tin|put "
        "{short_ones} in the tin",
        "(frets|fret|slot|slots|now|moved|shifted|nutward|down|one|up|along|shift|the shift|is "
        "done|following|on|i|we|relaid|slid|pushed|scooted|displaced|relocated|done|of|the|have "
        "been|respectively|and|i've|them|one slot)"}},
  };
}

std::vector<FrameText> of_pieces() {
  return {
      {"use",
       {"+(use|used|using|put|popped|pop|set|fitted|hammered|tapped|knocked|took|take|gets|went|seated|"
        "installed|out of|made from|made of|for fret|for slot|sits|now has|stuck|piece|number)",
        "+((piece|number|no) {piece#}|the {piece}|{piece}|(a|an) {piece} (piece|fret|one))",
        "+({slot}|(into|in|for|to) {slot}|[that is] slot {slot})",
        "(fret|into|in|straight|piece|wire|out of the {*length} [{*wire}]|[{*length}] {*wire})"}},
      {"use", {"+(put|use|used|popped|seated|set|took|fitted)", "+{piece#} (in|into|for) slot {slot}"}},
      {"use",
       {"+(use it|use that|use this|use that one|put it in|it goes in|in it goes|take it|take that|take that "
        "one|i'll take it|that one it is|pop it in|it is in|that's the one|goes in|in with it)",
        "+({piece=it} (it|that one|this one|that|that piece|this piece))", "{slot}|in slot {slot}",
        "(yes|ok|go on|put|use|take|in|goes|that one|it is|then|pop|i'll|then|one|it)"}},
  };
}

std::vector<FrameText> of_stock() {
  return {
      {"count",
       {"+(count|counted|stock-take|stocktake|stock take|by my count|inventory|i make "
        "it|recount|recounted|on hand|left|there are|there is|sticks|on the shelf|on the rack)",
        "!sticks", "!each", "!length",
        "{sticks} [full|whole|more] [of] [{wire}] (sticks|stick|rods|bars) [of] [{wire}]|{length#} [of] "
        "[{wire}] [in all|altogether|in total|left|on hand|all told]",
        "!job", "{each#} [long] (each|apiece)|(of|at|sticks of|each) {each#} [each|long]",
        "(sticks|stick|in all|altogether|all told|by my count|of|my|there are|there is|total|in "
        "total|i|wire|exactly|whole|on the rack|on the shelf|in the rack|on "
        "hand|full|pieces|counted|count|stocktake|stock take|inventory|recount|recounted|i make "
        "it|make|left|only|just|we have|have|got|rack|shelf|this minute|and|is|are)"}},
      {"weigh",
       {"+(weigh|weighs|weighed|scale|scales|balance|on the scale|on the scales|grams|weighing|weight)",
        "!mass", "!tare", "!division", "!besides",
        "{mass} [gross|altogether|all told|in all|spool and all|with (the|its) spool|on the "
        "scale]|(weighs|is|shows|says|reads|has|at|of|to|come to|comes to|weight of|puts) {mass}",
        "{form=coil} (coil|roll|reel)", "{form=stick} [all|all the] (stick|sticks)",
        "(empty spool|spool|tare|with [its|a|the] reel|the spool alone|empty|spool weighs) "
        "[is|weighs|of|alone|itself] [is|weighs] {tare}|less {tare} [of spool|for the spool]|{tare} "
        "(tare|for the spool|of that is spool|is spool|is the spool)|with (its|the|a) {tare} spool|on a "
        "{tare} spool|(without spool|no spool|bare) {tare=0 g}",
        "[with|without] [one|a] {besides} [stick] [is] (not on it|not on the scale|beside "
        "it|besides)|without [one|a] {besides} [stick]|besides {besides}|[with|and] [{*count}] [sticks] "
        "['|s] [worth] {besides} (not on it|not on the scale)|{besides} [is|of it] (beside it|left off)",
        "[scale|balance] [shows|goes in|reads|reads to|in|only|steps of|has] (steps|division|reads to|goes "
        "in|in steps|only steps|shows steps|reads in) [of] {division}|{division} "
        "(steps|division|divisions)|(on the|the) {division} scale",
        "(of|on|the scale|scale|scales|balance|weighs|weigh|weighed|weighing|weighing in "
        "at|coil|sticks|spool|put|says|shows|grams|on it|weight|come "
        "to|to|reads|reading|together|at|has|is|it|and|with|the|what|adjust the holdings of|in line "
        "with|in|a|for|from|kitchen scale|wee|roll|of wire|now|my|our|digital|put on)"}},
      {"calibrate",
       {"+(calibrate|weighs|is|come to|scale|weigh|comes to|weighed|came to|puts|mass|weight|heavy|how "
        "heavy|=|grams)",
        "!length", "!mass", "!division",
        "+[a|the|known|exactly] [length of] {length} [length] [long] [of] [{wire}]|[a] stick of {wire} [of] "
        "[cut to] [exactly] {length}",
        "+(= {mass}|{mass}|(weighs|is|came to|comes to|come to|puts|mass of|at|weigh) {mass})",
        "scale (shows|reads) {division=0.1 g} tenths|(steps|division|goes in|shows|reads to|steps of) [of] "
        "{division}|(on the|the|my) {division} scale|{division=0.5 g} [goes|reads] in half grams|{division} "
        "steps",
        "(calibrate|of|weighs|weighed|weigh|on the scale|scale|is|come to|came to|comes "
        "to|exactly|piece|wire|the|stick|a|cut|cut to|known|known length|length|has|has a mass of|per|how "
        "heavy|heavy|set the weight of|set|weight|puts|on|what|for|and|grams|i|length of|makes)"}},
      {"correct",
       {"+(correct|correction|should say|put that right|put right|really|in fact|fix|only|really is|should "
        "be|adjust|actually|not|to be)",
        "!piece", "!to", "!by", "!why",
        "(piece|number|no|length of piece|no .) {piece#}|[the] {piece} (piece|one|bit)",
        "(to|should say|should be|is really|really is|really|only|is only|actually|is|is in fact|measures|is "
        "to be|there is only|there's only|be only|in fact|now|:) [really|only|now] {to} [long|now]|[it is] "
        "only {to}",
        "by {by}|{by} (more|longer)",
        "because [of] {why}|since {why}|as {why}|once {why}|on account of {why}|following {why}", "~{why}",
        "(on hand|correct it|correct|put that right|it|is|mm|stock|of|stock of|record|the|fix|length|length "
        "of|adjust|please|that|there|in the books|on the books|books|holdings|written down|written down with "
        "the wrong length|than|what it says|to be amended|amended|recorded|clerical error|put up|put)"}},
      {"reorder-level",
       {"+(reorder|reorder level|order|low below|warn me|is low|bother me|tell me|running low|shout|remind "
        "me|call it low|order more|low|warned|threshold|alarm|let me know|falls short|flag)",
        "!level",
        "+((under|below|at|is|drops under|drops below|from|to|level|level to|down to|than|beneath|short "
        "of|less than|of|falls under|falls below|gets below|gets under|goes below|goes under) [a] {level} "
        "[down|of]|{level} [down|left|or less|or under]|reorder level {level})",
        "(do not bother me about|don't bother me "
        "about|till|until|make|set|when|it's|drops|falls|down|level|reorder|is|its|once|less|there "
        "is|at|under|below|gets|wire|as soon as|goes|with|more|want to|i want to be|when there is|should "
        "be|a|the|'s|low|counts as|count as|as low|order|again|if|if it|it|warn me|warned|about|tell "
        "me|shout|remind me|let me know|threshold|raise|lower|change|put|we have to|we|must|of|left|for|call "
        "it|has|we've|only|than|running|flag|as|fall|short|to|on|on hand|i)"}},
      {"define-wire",
       {"+(define wire|wire called|kind of wire|define a wire|new wire|called|stock a|wire|add a wire|sort "
        "of wire|a wire|named|fret wire|fretwire)",
        "+(define [a] [new] wire [called] {name}|(called|named|name it|call it|by the name of|designated) "
        "{name}|[new] (kind|sort) of [fret] wire [called] {name}|new [fret] wire [called|:] {name}|kind of "
        "wire [called] {name}|wire {name} is new|create a wire [:] {name}|let's call it {name}|{name} it is "
        "called)",
        "!name",
        "{material=stainless steel} stainless steel|{material=stainless} stainless|{material=nickel silver} "
        "nickel silver|[of|it is|it's|made of] {material=brass} brass|{material=bronze} bronze|material "
        "{material}",
        "crown width [of|is] {crown_width}|[crown] [of] {crown_width} wide [crown|at the "
        "crown]|{crown_width} crown|[crown] {crown_width} (by|x) {crown_height} [high]",
        "[crown] {crown_height} high|crown height [of|is] {crown_height}|(x|by) {crown_height} high",
        "tang depth [of|is] {tang_depth}|[tang] {tang_depth} deep [tang]",
        "tang thickness [of|is] {tang_thickness}|[tang] [and] {tang_thickness} thick",
        "(stick|sticks|stick length|sticks of|lengths) [of|in] {stick}|in sticks of {stick}|[in] {stick} "
        "sticks|comes in {stick} [sticks]",
        "barb width [of] {barb_width}|barbs [of|at|are] {barb_width} [over all|over everything]",
        "{g_per_cm3} (g per cm3|to the cc|g per cc)|density [of|is] {g_per_cm3}",
        "(define|wire|we'll stock|we will stock|a|new kind of "
        "wire|one|called|named|crown|tang|new|kind|of|stock|sort|fret|fretwire|and|it's|it is|is|comes "
        "in|comes|please|create|add|from now on|the|with|for us|now|material)"}},
      {"wire-size",
       {"+(crown|tang|barbs|barb|over the barbs|mic'd|micrometer|miked|calipered|round top)", "!crown_width",
        "!crown_height", "!tang_depth", "!tang_thickness", "!barb_width",
        "[crown|crowns|round top] [is|of|has] [a] [crown] {crown_width} (wide|across|broad) [crown|at the "
        "crown]|crown width [of|is|at|to] [{wire}] [is|to] {crown_width}|(crown|is|has) [is|of] "
        "{crown_width} by {crown_height} [high]|[crown] {crown_width} wide by {crown_height} high|width of "
        "[the] [{wire}] [wire] [s] crown (to|is|of|at) {crown_width}",
        "[crown|crowns] [is|of|stands|and] [a] {crown_height} (high|tall) [crown]|crown height [of|is|at|to] "
        "[{wire}] [is|to] {crown_height}|height of [the] [{wire}] [wire] [s] crown (to|is|of|at) "
        "{crown_height}",
        "[tang] [is|goes|of] {tang_depth} (deep|down)|tang depth [of|is|to] [{wire}] [is|to] "
        "{tang_depth}|{tang_depth} for the tang depth|depth of {tang_depth}|depth of [the] [{wire}] [wire] "
        "[s] tang (to|is|of) {tang_depth}",
        "[tang] [is|and|of|a] [wee] {tang_thickness} thick|tang thickness [of|is|to] [{wire}] [is|to|was] "
        "[determined] [to be] {tang_thickness}|thickness of {tang_thickness}|thickness of [the] [{wire}] "
        "[wire] [s] tang (to|is|of) {tang_thickness}",
        "over the barbs [{wire}] [measures|is] {barb_width}|barb width [of|is|to] [{wire}] [is|to] "
        "{barb_width}|barbs [of] [{wire}] [are|measure|is|come to|to|at] {barb_width} "
        "[wide|across|large|over all]|{barb_width} over (them|the barbs|its barbs|barbs)",
        "(mic'd|micd|miked|measured|measures|crown|tang|barbs|wire|by|micrometer|with the micrometer|my "
        "micrometer|calipered|caliper|its|it|is|are|has|a|the|and|of|on|come to|round top|foot part|just "
        "now|i|i get|get|set|for|went|note|kindly|dimensions|dimensions of|stands|goes|was|determined|to "
        "be|so here it is for everybody|so|here it is|now)"}},
      {"from-lot",
       {"+((lot|delivery|lot number|delivery number|lot no|lot no .) {lot}|lot for {job} is [number|no|no .] "
        "{lot})",
        "(like the {*job}|like {*job}|same as {*job}|frets|come from|comes from|fretted from|gets|get its "
        "frets|gonna|wire|off|from|is|the|out of|of|made from|uses|takes|fretted "
        "with|come|comes|are|with|goes with|fretted|fret|stick with|all|done|was|being|to "
        "be|on|in|for|we'll|and no other|its|get|take|use|made|cut|now|for)"}},
      {"slot-size",
       {"+(slots|slot|sawed|sawn|saw|kerf|cut)", "!slot_width", "!slot_depth",
        "{slot_width} (wide|width|large|across)|(wide|width) [of|is|at] {slot_width}|(at|sawn at|cut at|kerf "
        "of|kerf|kerf is) {slot_width}|{slot_width} slots|{slot_width} [mm] (by|x|*|and) {slot_depth} "
        "[deep]|(are|of|as|:|measure) {slot_width} [by|x] {slot_depth}",
        "{slot_depth} (deep|depth|down|profound|(at|in) the middle)|(deep|depth) [of|is] {slot_depth}",
        "{bottom=curved} ([the] [bottom|bottoms] [are|is] (curved|round|rounded)|(curved|rounded|round) "
        "(bottom|bottoms)|bottom that follows the board|follows the board|follow the board)",
        "{bottom=flat} ([the] (bottom|bottoms) [are|is] flat|flat (bottom|bottoms)|flat)",
        "(slots|slot|on|sawed|sawn|saw|cut|are|the|measure|measured|kerf|of|a wee bit|wee "
        "bit|leaves|and|with|a|with a|i|we|have|has|at|as|in|they're|they are|it|is|board|neck)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_wire() {
  std::vector<FrameText> out = of_pieces();
  for (auto* more : {frames_of_tin, of_cutting, of_frets, of_stock, frames_of_orders})
    for (FrameText& text : more())
      out.push_back(std::move(text));
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
