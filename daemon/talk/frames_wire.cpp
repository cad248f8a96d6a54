// What the commands about wire, the tin and what is cut from them are known by; see talk/frame.hpp. Every
// word that means something must stand here: what is not known is never passed over.
#include "talk/frame.hpp"

namespace nutward::talk {

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
        "[s]|[all] [all "
        "the|the] [pieces] [of] {length} [s|ones|pieces] [of] [the] [{wire}])",
        "!pieces", "!length", "!count", "!slots",
        "+([the] [frets|fret|slots|slot|grooves|groove] {slots}|(in|into|for|to|on) "
        "[slots|slot|fret|frets|grooves] {slots}|[in|into|for] {job} [s] [slots|frets] {slots}|(in|for) the "
        "{job} [s] {slots})",
        "{wire} [pieces|ones|bits|frets]", "{*count} (pieces|ones) ",
        "(s|pieces|frets|ones|bits|both|mm|used|use|took|take|put|went|into|in|for|of|made|the|from|from "
        "them|with|and|each|one from each|one apiece|one each|respectively|employed|"
        "became|become|they've become|i've|up on|up|on|filled|got|were|are|have|go|gone|all of "
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
        "me|into|slots|up|them|it|cut them|cut it|from it|out of "
        "it|off it|divided|apportioned|used|in one go|both|the "
        "rest|long|leftover|with|number|and|on|the|to|has been|were|are|i did|that's|of|stick "
        "end|take|took|anyway|please|yielded|went|straight)"}},
      {"cut-new",
       {"+(new wire|fresh stick|new stick|coil|off the coil|fresh wire|off a stick|stick|full stick|whole "
        "stick|fresh coil|new coil|uncut wire|cut new|fresh rod|new rod)",
        "!slots", "!stick", "!lot",
        "+([the] [slots|slot|frets|fret|grooves|groove|numbers|ones for grooves|all of] "
        "{slots}|(for|into|of) [the] [slots|slot|frets|fret|grooves|groove] {slots})",
        "(from|off|of|out of) [the|that] [{*wire}] [s] {from=coil} [fresh|new|broad] coil|{from=coil} "
        "coil|(from|off|of|out of) [a|the|one] {from=stick} [brand] [fresh|new|full|whole] (stick|rod) [of "
        "wire]|{from=stick} "
        "(fresh|new|full|whole) (stick|rod) [of wire]|off [a|the] stick {from=stick}",
        "[from|off|of] [the] stick [number|no] {stick} [of the cut list|on the cut list]|[from|of] [the] "
        "second stick {stick=2} [on the cut list|of the cut list]|[from|of] [the] third stick {stick=3} [on "
        "the cut list|of the cut "
        "list]|[from|of] [the] first stick {stick=1} [on the cut list|of the cut list]",
        "(from|of) [the] (lot|delivery) [number|no] {lot} [s]",
        "(anew|cut|cuts|are cut|from|off|new wire|new|wire|fresh|done|are|of|sawn|sawed|nipped|made|out "
        "of|all of|all|top 3|the|from it|off it|is cut|took|take|a|and|came|were|so|so they "
        "are|there's your|your|nothing in the tin|the tin had nothing|for them|brand|more|cut list|on the "
        "cut list|of the cut list|i|today|numbers|ones|for|it)"}},
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
        "tin|from|they're|tin|they are|box|wire|pull|pulled|back|back out of|back out|tin has it|put it "
        "with the tin|the|and|new|took|yanked|extracted|hauled|removed|of|in|them|threw|threw them|into|with "
        "them|so|board|neck|not measured|unmeasured|gave|one can find "
        "them|were|are|placed|put|came|came out|it|slot|number|former|ones|to|went|is|that measure|s)"}},
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
      {"came-short",
       {"+(short|too short|came short|cut short|turned out short|came up short|came out short)",
        "+({slot}|fret {slot}|on {slot})", "{length} [long]|at {length}|it's {length}",
        "{short_by} [too] short|short by {short_by}", "{ends=dressed} [ends|both ends] dressed [ends]",
        "{ends=raw} [ends] raw [ends]", "{measured=across} across [the] ends", "tang {tang}",
        "[in|into] drawer {place=drawer 1} 1|[in|into] drawer {place=drawer 2} 2|[in|into] drawer "
        "{place=drawer 3} 3|[in|into] drawer {place=drawer 4} 4",
        "(cut|too|is|turned out|came|came out|up|it's|in|into the tin with it|tin|went|into the tin|with "
        "it|fret|ended up|a|now|measures|nipped|i|bit|little)"}},
      {"measured",
       {"+(measures|measured|measure|mic'd|micd|miked|caliper|long|across|calipers|reads|is|gauge|comes "
        "to|comes out)",
        "+({slot}|fret {slot})", "+({length} [long]|at {length})", "{measured=across} across [the] ends",
        "bent to {bend_radius}|radius {bend_radius}",
        "(by the caliper|caliper|with the "
        "caliper|on|at|fret|measures|measured|long|the|calipers|is|ends|bent)"}},
      {"remade",
       {"+(remade|remake|new fret for|made new|made again|re-made|made a new|replaced|redone|redid|anew|new "
        "one for|new fret)",
        "+({slot}|fret {slot}|slot {slot}|slots {slot})", "{length} [long]|at {length}",
        "old [one|fret] [is] [went] [{old_length}] [goes] {old=tin} [in|into] [the] tin",
        "(threw|chucked|binned) {old=scrap} [the] old [one|fret] [out|away]",
        "old [one|fret] [is] [went] [goes] {old=scrap} [in|into] [the] (bin|scrap|rubbish)|old [one|fret] "
        "[is] {old=scrap} (scrap|scrapped|binned|thrown away|thrown out)",
        "{ends=dressed} dressed [ends]", "(fret|new|for|on|again|anew|piece|wire|it)"}},
      {"lost",
       {"+(lost|ruined|spoilt|spoiled|wrecked|broke|botched|messed "
        "up|gone|dropped|buggered|mangled|destroyed|damaged|broken|vanished|missing|unusable|flew off)",
        "+({slot}|fret {slot})", "~{why}", "down {why}", "because {why}",
        "(fret|is|it|on|crown|gone|badly)"}},
      {"shifted",
       {"+(moved|move|shifted|in slot|is in|now in|went to|slid|re-laid|relaid|sits in|slipped)",
        "+({from} (to|is in|in|into|now in|went to|are in|down to|up to|sits in|one down to) [slot|slots] "
        "{to}|{from} one down to slot {to})",
        "(frets|fret|slot|slots|now|moved|shifted|nutward|down|one|up|along)"}},
  };
}

std::vector<FrameText> of_stock() {
  return {
      {"count",
       {"+(count|counted|stock-take|stocktake|stock take|by my count|inventory|i make it|recount|recounted)",
        "+({sticks} [sticks]|{length} [in all|altogether|in total]|{sticks} [full|whole] sticks)", "!job",
        "{each} [each]|of {each}|sticks of {each}|at {each}",
        "(sticks|stick|in all|altogether|by my count|of|my|there are|there is|total|in "
        "total|i|wire|exactly|whole|on the rack|full|pieces)"}},
      {"weigh",
       {"+(weigh|weighs|weighed|scale|on the scale|on the scales|grams)", "+({mass}|weighs {mass})",
        "{form=coil} coil", "{form=stick} (stick|sticks)",
        "(empty spool|spool|tare|with [its|a|the]|reel) {tare} [spool|reel]|{tare} (spool|tare|reel)|with "
        "(its|the|a) {tare} spool",
        "one {besides} stick is not on the scale|without [one|a] {besides} [stick]|{besides} [stick] [is] "
        "(not on it|not on the scale|beside it|besides)",
        "(of|on|the scale|scale|scales|weighs|coil|sticks|spool|empty|put|says|shows|grams|all|on "
        "it|weight|come to|to|reads|together|at)"}},
      {"calibrate",
       {"+(calibrate|weighs|is|come to|scale|weigh|comes to)", "+{length} [of] [{wire}]", "+{mass}",
        "scale (shows|reads) {division=0.1 g} tenths|(steps|division) [of] {division}",
        "(calibrate|of|weighs|on the scale|scale|is|come to|comes to|exactly|piece|wire|the|stick)"}},
      {"correct",
       {"+(correct|correction|should say|put that right|put right|really|in fact|fix|only|really is|should "
        "be)",
        "+({to}|to {to}|by {by}|should say {to}|{by} more|{by} less|[it] is only {to})", "because {why}",
        "~{why}", "(piece|number) {piece#}|{piece#} is", "once {why}",
        "(on hand|to|correct it|correct|put that right|it|is|should say|really|mm|stock|of|stock "
        "of|only|record)"}},
      {"reorder-level",
       {"+(reorder|reorder level|order|low below|warn me|is low|bother me|tell me|running low|shout|remind "
        "me|call it low|order more|low)",
        "+((under|below|at|is|drops under|drops below|from|to|level|level to|down to|than|below a|under a) "
        "{level}|{level} [down]|{level=1 m} (below|under) a (metre|meter)|it's (under|below) {level}|reorder "
        "level {level})",
        "(do not bother me about {wire} "
        "(till|until)|make|set|when|it's|drops|falls|from|down|level|reorder|do not bother me "
        "about|till|until|is|its|once|less|there is|at|under|below|gets|wire|as soon as|goes|with|more|want "
        "to|when there is|should be|a|the|'s)"}},
      {"define-wire",
       {"+(define wire|wire called|kind of wire|define a wire|new wire|stainless one called|stock a|wire "
        "jumbo|add a wire|sort of wire|a wire)",
        "+(define [a] [new] wire [called] {name}|called {name}|[new] (kind|sort) of wire {name}|new wire "
        "[called] {name}|kind of wire [called] {name})",
        "{material=stainless} stainless [steel]", "{material=nickel silver} nickel silver",
        "{material=brass} of brass", "material {material}",
        "crown width [of] {crown_width}|[crown] {crown_width} wide",
        "[crown] {crown_height} high|crown height [of] {crown_height}",
        "tang depth [of] {tang_depth}|tang {tang_depth} deep",
        "tang thickness [of] {tang_thickness}|[tang] {tang_thickness} thick",
        "(stick|sticks) [of] {stick}|in sticks of {stick}|{stick} sticks",
        "barb width {barb_width}|barbs {barb_width}", "{g_per_cm3} g per cm3",
        "(define|wire|we'll stock|a|new kind of wire|one|called|crown|tang|new|kind|of|stock|sort)"}},
      {"wire-size",
       {"+(crown|tang|barbs|barb|over the barbs|mic'd)",
        "crown [is|of] {crown_width} wide|crown width [of|is|at] [{wire}] {crown_width}|{crown_width} wide "
        "[crown]|{crown_width} by {crown_height} [high]|crown {crown_width} by {crown_height} [high]|crown "
        "{crown_width} wide by {crown_height} high|{crown_width} wide by {crown_height} high|crown width of "
        "{wire} {crown_width}",
        "crown [is|of] {crown_height} high|crown height [of|is] [{wire}] {crown_height}|{crown_height} "
        "high|by {crown_height} high",
        "tang [is] {tang_depth} deep|tang depth [of|is] [{wire}] {tang_depth}|{tang_depth} deep",
        "tang [is] {tang_thickness} thick|tang thickness [of|is] [{wire}] {tang_thickness}|{tang_thickness} "
        "thick",
        "over the barbs [{wire}] [measures|is] {barb_width}|barb width [of|is] [{wire}] {barb_width}|barbs "
        "[are|measure] {barb_width}",
        "(mic'd|micd|measured|measures|crown|wide|high|tang|deep|thick|wire|by)"}},
      {"from-lot",
       {"+(lot {lot}|delivery {lot})", "(like the {*job}|like {*job}|same as {*job}|frets|come from|comes "
                                       "from|fretted from|gets|wire|off|from|is|the|out of|of|made "
                                       "from|uses|takes|fretted with|come|comes|are|with|goes with)"}},
      {"slot-size",
       {"+(slots|sawed|sawn|saw|kerf)", "+(wide|deep|width|depth)",
        "{slot_width} wide|wide {slot_width}|width [of] {slot_width}",
        "{slot_depth} deep|deep {slot_depth}|depth [of] {slot_depth}",
        "{bottom=curved} ((bottom|bottoms) [are|is] (curved|round|rounded)|(curved|rounded) "
        "(bottom|bottoms))",
        "{bottom=flat} ((bottom|bottoms) [are|is] flat|flat (bottom|bottoms))",
        "(slots|on|sawed|sawn|cut|are|the|measure|measured|kerf|of|slot)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_wire() {
  std::vector<FrameText> out = of_pieces();
  for (auto* more : {frames_of_tin, of_cutting, of_stock, frames_of_orders})
    for (FrameText& text : more())
      out.push_back(std::move(text));
  return out;
}

} // namespace nutward::talk
