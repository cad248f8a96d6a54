// What the commands about wire, the tin and what is cut from them are known by; see talk/frame.hpp. Every
// word that means something must stand here: what is not known is never passed over.
#include "talk/frame.hpp"

namespace nutward::talk {

namespace {

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
      {"hold",
       {"+(hold|keep|put by|save|reserve|nobody touch|earmark|set aside|put aside|lay "
        "aside|held|reserved|hands off|keep back|spoken for|park|hang on to|mark|lay by)",
        "+((piece|number|no) {piece#}|{piece#}|the {piece}|{piece})", "{slot}|for slot {slot}",
        "(for|it's for|back|by|aside|to one side|me|on one side|for now|for the moment)"}},
      {"hold",
       {"+(hold|keep|put|save|reserve|set|lay|park)", "+({piece=it} (it|that one|this one|that|that piece))",
        "(for|by|aside|back|for now|hold|keep|put|save|to one side|for later|please)"}},
      {"let-go",
       {"+(let go|let it go|release|free|free up|unreserve|give back|give {piece#} back|stop holding|no "
        "longer need|does not need|drop the hold|not to be held|put back|un-hold|unhold|"
        "do not have to save|does not want|no longer (held|reserved)|stop saving|stop keeping)",
        "+((piece|number|no) {piece#}|{piece#}|the {piece}|{piece}|{piece=it} it)",
        "{*job} does not need the {*length} any more|{*job} (does not need|no longer needs) [the] {*length}",
        "(changed my mind|any more|anymore|any longer|for everyone|to the tin|after all|go|of|up|hold "
        "on|now|back|for anybody|for {*job}|it's|for anyone|to anyone|again|{*job} (does not need|no longer "
        "needs|does not want))"}},
      {"scrap",
       {"+(bin|binned|scrap|scrapped|chuck|chucked|throw|threw|throw away|thrown|goes in the "
        "bin|toss|tossed|trash|ditch|ditched|discard|discarded|into the bin|in the bin|rubbish|junk|is "
        "scrap|out with)",
        "+((piece|number|no) {piece#}|{piece#}|the {piece}|{piece})", "~{why}", "because {why}", "!job",
        "(away|out|in the bin|into the bin|in the scrap|to the scrap|away please)"}},
      {"scrap-several",
       {"+(bin|binned|scrap|scrapped|chuck|chucked|throw|threw|toss|tossed|discard|discarded|in the bin|out "
        "with|ditch)",
        "+((pieces|numbers) {pieces!}|both {length} {count=2}|{count} [of] [the] {length}|all {count} "
        "{length})",
        "({wire} [pieces|ones|bits|frets]|s|pieces|frets|ones|bits|them|away|out|can go in the "
        "bin|both|rusty|{why=rusty} are rusty|{why=bent} are bent|{why=kinked} are kinked|{why=corroded} are "
        "corroded)",
        "(are|is) {why}", "~{why}", "because {why}"}},
      {"use-several",
       {"+(took|take|use|used|using|went|put|are in|in|into|set)",
        "+((pieces|numbers) {pieces!}|both {length} {count=2}|{count} [of] [the] {length})",
        "+((in|into|for|to) {slots}|{slots}|(in|into|for|to) {job} {slots}|{job} {slots})",
        "({wire} [pieces|ones|bits|frets]|s|pieces|frets|ones|bits|both|mm)"}},
      {"add",
       {"+(add|put|tin|goes in|into the tin|in the tin|toss|threw|throw|dropped|drop|left over|another|one "
        "more|spare|chuck|store|stow|keep|found|new piece|to the tin|for the tin|in the box|offcut)",
        "+({length}|{count} x {length}|{length} [long]|{count} {wire} of {length}|{count} of "
        "{length}|{count} (pieces|bits|frets|offcuts) of {wire} {length})",
        "(one|a|another|3|2|4|5) {wire}|(3|2|4|5|6) {wire} for the tin",
        "{kind=stick_end} (stick end|stick ends|end of [a] stick|end of stick)",
        "{kind=pulled_fret} [old] pulled (fret|frets|one|ones)", "{kind=short_fret} short fret",
        "{ends=dressed} [already|ends|both ends] dressed [ends|already]",
        "{ends=raw} [ends|both ends|still] raw [ends]", "{ends=one_raw} one end (raw|dressed)",
        "{measured=across} across [the] ends", "radius {bend_radius}|bent to {bend_radius}", "tang {tang}",
        "[in|place|on|into] (drawer {place=drawer 1} 1|drawer {place=drawer 2} 2|drawer {place=drawer 3} "
        "3|drawer {place=drawer 4} 4|drawer {place=drawer 5} 5)",
        "on the {place=rack} rack", "on the {place=window sill} window sill", "(from|of) lot {lot}",
        "(one old|nipped one|old one|go in|goes in|tin|into the tin|in the tin|with "
        "it|piece|pieces|bit|bits|offcut|frets|fret|bent|nipped|of|old|stick|another|back|left|add "
        "it|spare|apiece|each|s|long|more|same wire|over|drawer)"}},
      {"handful",
       {"+(handful|not measured|unmeasured|without measuring|a few|unsorted|chucked|thrown|tossed|dumped)",
        "+({count}|{count} [bits|pieces] of|about {count}|(handful|lot) of {count})",
        "{kind=stick_end} stick (ends|end)", "{kind=pulled_fret} [old] pulled [{wire}] [frets|ones]",
        "(in|into|on|to) the {place=window sill} window sill", "drawer {place=drawer 2} 2",
        "(a handful of|handful|chucked|thrown|tossed|dumped|in|tin|bits|pieces|about|some|roughly|not "
        "measured|unmeasured|nobody measured|not measured|threw|more|into|frets|without "
        "measuring|dropped|put|odds and ends|offcuts|loose|approximately|around|ca)"}},
      {"measured-handful",
       {"+(handful|seven|six|five|four|three|eight|piece)", "+{lengths}",
        "+(measured|measures|measure|lengths|came to|come to|are|is|turned out|went through|seven are)",
        "handful {from!}|piece {from!} [(7|6|5|4|3|2|8)]", "!at", "{ends=dressed} dressed [ends]",
        "{ends=raw} raw [ends]",
        "(measured|measures|lengths|came to|went through|window-sill|window - sill|window "
        "sill|are|of|the|is|at|seven|turned out|contains|pieces|sorted)"}},
      {"cut-from",
       {"+(cut|cuts|from|came off|made|gave|out of|sawn|got|off|yielded|are cut|went into)",
        "+((piece|number|no) {piece#}|{piece#}|the {piece}|from {piece#}|piece {piece})",
        "+({slots}|slots {slots}|frets {slots})",
        "(cut|out of|from|came off|off|made|for|all|frets|got|sawn|nipped|is|gave|into|slots)"}},
      {"cut-new",
       {"+(new wire|fresh stick|new stick|coil|off the coil|fresh wire|off a stick|stick|full stick|whole "
        "stick|fresh coil|new coil|uncut wire)",
        "+({slots}|slots {slots}|frets {slots})", "(from|off|of) [the] {from=coil} [fresh|new] coil",
        "(from|off|of) [a] {from=stick} [fresh|new|full|whole] stick", "stick {stick}", "(from|of) lot {lot}",
        "(anew|cut|cuts|are cut|from|off|new wire|wire|fresh|new|done|are|of|sawn|nipped|made|out of)"}},
      {"pulled",
       {"+(pulled|pull|old frets|came out|had to pull|took out|out of|old)",
        "+({count} [old] [{wire}] [frets]|{slots}|fret {slots}|frets {slots}|slots {slots})",
        "on the {place=window sill} window sill",
        "[in|into] drawer {place=drawer 1} 1|[in|into] drawer {place=drawer 2} 2",
        "(frets|fret|out|out of|old|again|had to|in the tin|into the tin|all in the "
        "tin|from|they're|tin|they are|box|wire)"}},
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
      {"set-aside",
       {"+(set aside|set everything aside|put everything aside|aside|put aside|bag up|lock in|reserve "
        "everything|earmark everything|set the lot aside|keep everything|put by everything|hold "
        "everything|set {job} aside)",
        "(everything|for|all|the lot|lot|all the frets and wire|frets|wire|pieces|plan's|plan|and mark them "
        "as its own|set|put|it needs|that|it|needs|whole|of|and|up|what|in a bag)"}},
      {"let-all-go",
       {"+(let all go|let all of it go|all [the] holds|give free|release everything|release "
        "all|reservations|drop all|free everything|let everything|everything [that is] kept|free all|let go "
        "of everything|unreserve everything|let go everything|undo all holds)",
        "(forget about|let all of it "
        "go|drop|release|free|all|the|holds|hold|on|for|of|kept|held|everything|that's|go|let|it|give|"
        "reservations|pieces|set aside|reserved|which|back)"}},
  };
}

std::vector<FrameText> of_stock() {
  return {
      {"receive",
       {"+(received|receive|delivery|delivered|arrived|came|got|bought|parcel|in|sent|from|wire's "
        "here|here|came in|paid|for|new|more|turned up|have come|shipment|landed)",
        "+({count} [x]|{count} {form=coil} coils|{count} more|{count} [more] (stick|sticks)|{count} [more] "
        "[{wire}] (stick|sticks) [of {wire}]|{count=1} {form=coil} a coil|{count=1} one more stick)",
        "!job", "[at|of|each] {each} [each|apiece|long|sticks]|{each} [-] sticks",
        "{count} [more] sticks|stick|sticks", "{form=coil} (coil|coils)", "from {supplier}",
        "{supplier} sent",
        "(for|paid|at|cost|price) {price}|{price} (euros|euro|eur)|for {price} [euros|eur]",
        "crown [height] {crown_height}",
        "(sticks|stick|delivery|parcel|with|into stock|put into stock|wire's here|wire is "
        "here|wire|in|each|apiece|of|more|after all|has|have|arrived|came|of "
        "wire|at|long|coils|coil|delivered|x|today|for|from)"}},
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
  for (FrameText& more : of_stock())
    out.push_back(std::move(more));
  return out;
}

} // namespace nutward::talk
