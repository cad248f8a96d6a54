// What the commands about the tin are known by: what goes in, what is kept and let go, what is thrown away;
// see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

constexpr std::string_view piece =
    "[the|my|that|this|a|an|bit|with|called] (piece|number|no|no .|piece number|piece no|piece no .|bit "
    "called|piece called|bit number|piece with number) "
    "{piece#}|{piece#}|[the|a|an|that|this|old|raw|held|dressed] {piece} [piece|one|bit|stick end|short]";
constexpr std::string_view ends_of =
    "{ends=dressed} [all|both|ends|already|with|is|are|now|clean|nicely] [both|of|ends] (dressed|clean) "
    "[ends|already|both ends|at both ends|on both ends]|{ends=one_raw} [with|has|only|just] [one|1] "
    "[end|ends] [is|'s|s|still] (raw|dressed|rough) [end] [each|on each|apiece]|{ends=raw} "
    "[all|both|ends|with|still|are|is] [both|still|ends] (raw|rough|unfiled|undressed) [ends|at both "
    "ends|both ends|on both ends]";
constexpr std::string_view one_end =
    "{ends=one_raw} one [end] [is] (dressed|raw) [the] (one|other) [end] [is|still] "
    "(raw|dressed)|{ends=one_raw} "
    "[with|has|only|just] (one end|1 end|one raw|one dressed) [is|'s|s|still] "
    "[raw|dressed|rough] [end] [each|on each|apiece|raw|rough]";
constexpr std::string_view across = "{measured=across} [measured] across [the|its|their] "
                                    "[ends]|{measured=straight} [measured] straight [along]";
constexpr std::string_view radius =
    "[bend|bent|board] radius [of|is] {bend_radius}|bent to [a] [radius] [of] {bend_radius}";
constexpr std::string_view place = "[it is|they are|is|it's|goes|going|went|keep|kept|lies|lie] "
                                   "[in|on|into|onto|to|for|at|by] [the|my|our] {place#} [please|now]";
// Why something is thrown away.
constexpr std::string_view why_gone =
    "because [of] {why}|owing to {why}|due to {why}|on account of {why}|since {why}|as {why}|{why=kinked} "
    "kinked [beyond saving|badly|past saving]|{why=bent} bent [beyond saving|badly]|{why=rusty} "
    "(rust|rusty|rusted|rusted through)|{why=corroded} (corroded|corrosion)|{why=too short} too short [to "
    "bother with|for anything|to be any use]|{why=worn} (worn|worn through|worn out|worn down)|{why=broken} "
    "[tang|the tang] [is|has] (broken|cracked|split|snapped) [tang]|{why=no good} (no good|no "
    "use|useless|worthless|not worth keeping|rubbish)|{why=surplus} surplus|{why=banjaxed} "
    "(banjaxed|knackered|buggered|ruined|spoilt|mangled)|{why=twisted} twisted";

std::vector<FrameText> of_keeping() {
  return {
      {"hold",
       {"+(hold|keep|put by|save|reserve|nobody touch|earmark|set aside|put aside|lay "
        "aside|held|reserved|hands off|keep back|spoken for|park|hang on to|mark|lay "
        "by|kept|retained|saved|earmarked|put a hold on)",
        piece, "{slot}|for slot {slot}", "!job", "{slot=it} for it", "{job} [s] [one|board|neck|guitar]",
        "[until|till] further notice",
        "(for|it's for|back|by|aside|to one side|me|on one side|for now|for the "
        "moment|please|hold|keep|kept|save|reserve|reserved|held|retained|mind and|mind|is to be|to "
        "be|should be|i should like|i would like|i want|we need|the|piece|put|a hold on|so|so nobody else "
        "grabs it|that nobody else takes it|nobody touch|is a beauty|has her eye on|has his eye on|but|needs "
        "it|more|since|it|as of|in hand|would you|could you|can you|if you "
        "would|good|nice|earmark|earmarked|spoken for|hands off|off|lay|laid|park|hang on to|later|for "
        "later|slot|fret)"}},
      {"hold",
       {"+(hold|keep|put|save|reserve|set|lay|park)", "+({piece=it} (it|that one|this one|that|that piece))",
        "(for|by|aside|back|for now|hold|keep|put|save|to one side|for later|please)"}},
      {"let-go",
       {"+(let go|let it go|release|free|free up|unreserve|give back|give {piece#} back|stop holding|no "
        "longer need|does not need|drop the hold|not to be held|put back|un-hold|unhold|do not have to "
        "save|does not want|no longer (held|reserved)|stop saving|stop keeping|released|may have|can "
        "have|back in the pool|needn't|need not|nobody|reservation|hold off|loose)",
        piece, "(free|release|unhold|un-hold|unreserve|released) {piece#}", "+({piece=it} it)",
        "{*job} does not need the {*length} any more|{*job} (does not need|no longer needs) [the] {*length}",
        "(changed my mind|any more|anymore|any longer|for everyone|to the tin|after all|go|of|up|hold "
        "on|now|back|for anybody|for {*job}|it's|for anyone|to anyone|again|{*job} (does not need|no longer "
        "needs|does not want)|[{*job}] (will not|won't|does not|doesn't) (need|want) it|needn't be "
        "kept|needn't be held|need not be kept|needn't be|need not be|need no longer be|does not have to "
        "be|doesn't have to be|no "
        "longer|kept|held|reserved|saved|let|release|free|unhold|give|take|took|the|reservation|hold|off|can "
        "go back|can go|go back|in the pool|on the free market|someone else|somebody "
        "else|anybody|anyone|everyone|may have|can have|may|have|it|nobody|nobody wants it|nobody needs "
        "it|wants|needs|for|that was|was|at all|turn it loose|turn|loose|to the rest of the shop|would "
        "you|could you|so|{*job} needs something longer|not)"}},
      {"set-aside",
       {"+(set aside|set everything aside|put everything aside|aside|put aside|bag up|lock in|reserve "
        "everything|earmark everything|set the lot aside|keep everything|put by everything|hold "
        "everything|set {job} aside|reserve|earmark|everything the plan|what the plan)",
        "(everything|all [of it|that]|every piece|every bit|for|the lot|lot|all the frets and "
        "wire|frets|wire|pieces|plan's|plan|and mark them as its own|set|put|it "
        "needs|that|it|needs|whole|of|and|up|what|in a bag|takes|uses|calls for|wants|by|aside|planned|new "
        "wire|hold|reserve|keep|earmark|lock in|bag up|the plan takes|the plan uses|in the plan|from the "
        "tin|material|whatever|so nobody takes it|so nobody else takes it|please|its|to one side)"}},
      {"let-all-go",
       {"+(let all go|let all of it go|all [the] holds|give free|release everything|release "
        "all|reservations|drop all|free everything|let everything|everything [that is] kept|free all|let go "
        "of everything|unreserve everything|let go everything|undo all holds|everything|all)",
        "(forget about|let all of it "
        "go|drop|release|free|all|the|holds|hold|on|for|of|kept|held|everything|that's|go|let|it|give|"
        "reservations|pieces|set aside|reserved|which|back|that was|was|is|may go|can go|again|in the tin|to "
        "the tin|wire|and wire|undo|cancel|lift|unreserve|no longer|not|any more|needed|does not need|do not "
        "hold|anything|put back|put|whatever|what|aside|loose|up)"}},
  };
}

std::vector<FrameText> of_throwing() {
  return {
      {"scrap",
       {"+(bin|binned|scrap|scrapped|chuck|chucked|throw|threw|throw away|thrown|goes in the "
        "bin|toss|tossed|trash|ditch|ditched|discard|discarded|into the bin|in the bin|rubbish|junk|is "
        "scrap|out with|dispose|written off|out it goes|waste|bin it|dustbin|skip)",
        piece, why_gone, "~{why}", "!job", "!why",
        "(away|out|in the bin|into the bin|in the scrap|to the scrap|away "
        "please|bin|scrap|chuck|chucked|threw|throw|thrown|toss|tossed|discard|discarded|dispose "
        "of|dispose|is to be|to be|written off|so|out it goes|goes|went|go|to the waste|in the "
        "waste|it|therefore|was|has|is|bin it|chuck it|for good|old|by accident|please|the|away in the "
        "bin|in the skip|in the dustbin|dustbin|of|off|and|can|i've|with)"}},
      {"scrap-several",
       {"+(bin|binned|scrap|scrapped|chuck|chucked|throw|threw|toss|tossed|discard|discarded|in the bin|out "
        "with|ditch|get rid|dispose|scrap box|dustbin|skip|pitch|thrown|waste|out of the tin)",
        "+([the] (pieces|numbers|piece|nos|nos .|number|items) {pieces#}|{pieces#} (are|were|have|out of the "
        "tin)|{count=2} (both|both the|the pair of|a pair of|two of the {*count}) {length} [s|ones|pieces] "
        "[of] [the] [{wire}] [s]|{count#} [of] [the|those|them] [{*count}] [pieces|bits] [of] [{wire}] [of] "
        "{length} [s|ones|pieces|bits] [of] [the] [{wire}] [length|long]|(all|every|each|all the|all of "
        "the|all [of] those|the|those) [items|pieces|bits|the] [of] [{wire}] [of] {length} "
        "[s|ones|pieces|bits|in length|long] [of] [the] [{wire}] [s])",
        "!pieces", "!length", "!count", "!why", "{wire} [pieces|ones|bits|frets]", why_gone, "~{why}",
        "(s|pieces|frets|ones|bits|them|away|out|can go in the bin|can go|can all "
        "go|go|both|bin|scrap|chuck|chucked|threw|throw|toss|tossed|discard|discarded|dispose of|get rid "
        "of|out with|pitch|for the scrap box|scrap box|is for|are for|in the bin|in the dustbin|in the "
        "skip|out of the tin|in the tin|the lot|out with the lot|to be thrown away|have to be thrown away|to "
        "be discarded|thrown away|from the tin|from|given|to the waste|gone|went|is|are|of|the|for "
        "me|length|in length|that are|long|they are|they're|their being|all of them|items|so|away with "
        "them|please|we never need them|nobody wants them|and)"}},
  };
}

std::vector<FrameText> of_filling() {
  return {
      {"add",
       {"+(add|put|tin|goes in|into the tin|in the tin|toss|threw|throw|dropped|drop|left "
        "over|leftover|another|one more|spare|chuck|store|stow|keep|found|new piece|to the tin|for the "
        "tin|in the box|offcut|log|drawer|rack|three more|stick end|stick ends|enter|short)",
        "+({length}|[the] {count#} x {length}|{length} [long|mm]|[the] {count#} {wire} [pieces|bits|ones] "
        "(of|at) {length}|{count#} [pieces|bits|frets|offcuts|shorts] of {length}|{count#} "
        "(pieces|bits|frets|offcuts) of {wire} (of|at) {length}|measuring {length}|{length} (overall|all "
        "told)|[a|an|the] {length} [mm] [piece|bit|one|offcut|short|fret|stick end] [of] [the] {wire})",
        "!count", "!from", "!length", "(from|out of) (handful|piece|number) {from#}",
        "[the|those|these|another|{*count}] [more|bits of|pieces of|of|two] {wire} "
        "[shorts|bits|pieces|ones|short|piece|bit|frets]",
        "{*count} (pieces|bits|ones|shorts|more|offcuts|frets) [of] [the]",
        "{kind=stick_end} (stick end|stick ends|end of [a] stick|end of stick|end of the stick)",
        "{kind=pulled_fret} [old] pulled (fret|frets|one|ones)",
        "{kind=short_fret} (short fret|short|shorts|short one)", ends_of, one_end, across, radius,
        "[the] tang [is|of|at|only] {tang}|tang {tang}", place,
        "(from|of) [the] (lot|delivery) [number|no] {lot}",
        "(one old|nipped one|old one|go in|goes in|tin|into the tin|in the tin|with "
        "it|piece|pieces|bit|bits|offcut|frets|fret|bent|nipped|of|old|stick|another|back|left|add "
        "it|spare|apiece|each|s|long|more|same "
        "wire|over|drawer|add|put|drop|dropped|toss|tossed|threw|throw|chuck|pop|pop it|put it|here's|here "
        "is|there's|there are|there is|left over|leftover|leftovers|log|measured|measuring|overall|to "
        "spare|item|to|a|an|the|one|for|found|under the press|under the bench|please note it|note|add "
        "them|was|were|went|gets|new|in|on|from|wee|little|short|shorts|and|it's|with|now|kindly|enter|"
        "originating|just|my|our|that's|so that's|going|i've|i've got|have|box|at)"}},
      {"handful",
       {"+(handful|hand full|fistful|bunch|heap|not measured|unmeasured|without measuring|a "
        "few|unsorted|chucked|thrown|tossed|dumped|lengths unknown|nobody's measured|nobody "
        "measured|swept|measure)",
        "{count#} [or so|and a bit|odd] (bits|pieces|of them|frets|ones|shorts|offcuts|or so|stick "
        "ends|about|give or take|in all|in number|i'd say|i would say|by the eye) [of|i'd say|or "
        "so]|(about|around|maybe|roughly|circa|ca|ca .|call it|some|say|approximately|perhaps|like|handful "
        "of|handful of some|handful of about) {count#} [pieces|bits|of them|or so|i'd say]|, {count#} "
        "[pieces|bits|or so|of them|i'd say|i think]|{count#} {wire} [pieces|bits|shorts|ones]|. {count#}",
        "!count", "{kind=stick_end} (stick (ends|end)|ends of [{wire}] (rods|sticks))",
        "{kind=short_fret} (shorts|short frets)", "{kind=pulled_fret} [old] pulled [{wire}] [frets|ones]",
        place,
        "(a handful of|handful|hand "
        "full|fistful|bunch|heap|mess|chucked|thrown|tossed|dumped|in|tin|bits|pieces|about|some|roughly|not "
        "measured|unmeasured|nobody measured|nobody has measured|nobody's measured|not one of them "
        "measured|not measuring them|without measuring|without measure|without looking how long they "
        "are|lengths unknown|no idea of the lengths|threw|more|into|frets|dropped|put|odds and "
        "ends|odds|offcuts|loose|approximately|around|ca|a|an|of|the|for|to|it|them|they are|there was|there "
        "is|there's|found|swept up|swept together|swept|together|leftovers|rods|from the|add "
        "them|add|was|were|laid|enter|kept|deposited|as yet|yet|just|'em|came|old|on|here's|and|so|i)"}},
      {"measured-handful",
       {"+(handful|heap|unmeasured)", "+{lengths}", "!from", "!lengths", "(piece|number) {from#}", ends_of,
        one_end, across, radius,
        "(lengths|are|has|have|now|measured|got|came to|come to|it's|is|at|of|:) {lengths} [long|mm|in it|by "
        "the caliper|by the calipers]",
        "(measured|measures|measure|lengths|came to|come to|went through|gone through|window-sill|window - "
        "sill|window sill|are|of|the|is|at|turned out|turned out to "
        "be|contains|pieces|sorted|that|handful|unmeasured|heap|result|with the result|put the callipers "
        "on|caliper|calipers|callipers|by the caliper|got|and|nobody had measured|on the|on|was|were|what "
        "was|bits|off|its|it|has|have|now|long|here's|for you|them|up|with|did it|i did "
        "it|little|wee|from|finally|in)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_tin() {
  std::vector<FrameText> out = of_keeping();
  for (auto* more : {of_throwing, of_filling})
    for (FrameText& text : more())
      out.push_back(std::move(text));
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
