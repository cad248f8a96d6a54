// What the commands about the shop's hours, people's days and booked machines are known by; see
// talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

std::vector<FrameText> of_weeks() {
  return {
      {"open-hours",
       {"+[on|in|of|of a|every|each|on every|on all|all|all on] {days} [always|each week|every week]",
        "+[open|open from|from|are|be|at|it's|of] {hours}|{hours=closed} (closed|stay closed|shut|no "
        "more|keep shut|stay shut|remain closed|not open|never open|no longer open|will not be open|not open "
        "any more|closed all day)",
        "(weekly hours|every week|from now on|from here on|from here on out|we shut at (1|2|3|4|5|6|7)|we "
        "close at (1|2|3|4|5|6|7)|we|are|weekly|hours|no more|open|opened|opening|closed|stay|shut|keep|at "
        "all|till|week|always|now|do|do not|each week|in future|as of now|starting now|the shop|shop|the "
        "workshop|workshop|is|day|are now|regular|regularly|schedule|weekly schedule|opening hours|without a "
        "break|any more|anymore|at all|shall be|should be|will be|make|can find us|amend|so that|the "
        "premises are|every|each|the|set|to|the boss says|of all of them|standard|usual hours|normal "
        "hours|then|henceforth)"}},
      {"own-hours",
       {"+{person}", "+[on|of|of a|every|each|on every|only on|only] {days} [only]",
        "+[from|only|only from|are|be|at] {hours} [only]|{hours=closed} (free|off|closed|has no hours|has no "
        "working hours|no hours|never comes "
        "[in]|never works|never in|never here|does not work|does not come [in]|is not in|is not here|will "
        "not work|will not come [in]|not working|no longer works|no longer comes [in]|is always off|ain't "
        "working|is not working|will not be in)|the shop's hours|the same hours [as the shop]|whenever we "
        "are open",
        "(works|hours|are|every week|each week|full time|now|any more|no "
        "more|anymore|has|free|on|full|time|is|always|week|from now "
        "on|'s|in|comes|part|weekly|off|regular|regularly|week|attendance|working time|working "
        "hours|usual|usually|normal|here|there|be in|is in|does|work|part time|make|enter|set|to|those|these "
        "days|with regard to|as regards|as for|of|the)"}},
      {"own-hours",
       {"+(works|work|hours|free|full time|no|does|part time|is in|weekly|comes in|has)", "+{person}",
        "+({days}|on {days})", "{hours}|from {hours}",
        "(works|in|the shop hours|whenever the shop is open)"}},
  };
}

std::vector<FrameText> of_special_days() {
  return {
      {"close-day",
       {"+(shut|closed|close|close the shop|holiday|nobody in|public holiday|no work|not open|do not "
        "open|closing|closing up|bank holiday|nobody here|no work at all|closes|shutting|shuts)",
        "+[on|for] {day}|[on] {day} [all day|the whole day|in the whole]|([at|in|on] the {part} (of|on) "
        "{day})|[on] {day} [in|in the] {part}|this {part}|[from] {day} [up] (to|until|till|through|and) "
        "[including] {last} [inclusive]|[all] [of] next week {week=next}|[all] [of] this week "
        "{week=this}|[for] the (rest|remainder) of (this|the) week {week=this}|[on] {day} [we|early] [close] "
        "(at|from) {begins}|[early] (at|from|as of) {begins} [on] {day}|[early] (at|from) {begins}",
        "~{note}", "(because|since|owing to|due to) {note}",
        "{note=holiday} (public|bank) holiday|{note=stocktaking} stocktaking",
        "(we're|we are|we|the shop|shop|workshop|the workshop|the place|premises|nobody "
        "in|nobody|in|is|on|day|all day|here|holiday|stay|stays|remain|remains|whole "
        "day|for|up|early|because we are shut|kept|shall be|will be|be|there|at all|have|keep|the whole "
        "place)"}},
      {"reopen-day",
       {"+(not closed|open|after all|take back|we open|scrap the closing|open after all|reopen|cancel the "
        "closing|not shut|not closing|closure|closing|closed day|uncancel|work then|closed)",
        "+[on|for|of] {day}",
        "+(after all|take back|take that back|scrap|reopen|cancel|cancelled|not closed|not shut|lifted|was a "
        "mistake|a mistake|remove|falls through|fell through|uncancel|is off|rescinded|revoke|revoked|not "
        "valid|no longer valid|not closing|not closed any more|not shut any longer|as usual|as normal|normal "
        "hours apply|called off|withdrawn|not a closed day|do work then|not to be closed|it is not|need not "
        "close|not be shut|not be closed|but we will be open|void|dropped|forget it)",
        "(we're|we are|that|shut|closed|shop's|shop|is|on|closing|closure|open|scrap|we|the "
        "closing|not|again|cancel|take|back|day|the|it|off|will be|be|a mistake|anymore|any more|any "
        "longer|then|as for|we had down|announced|written|for|was|called|do|at "
        "all|now|so|runs|run|as|normal|usual|hereby|said|business|to|there will be work)"}},
      {"open-extra",
       {"+(extra|also open|open extra|extra opening|extra shift|specially|in "
        "on|too|special|overtime|besides|additionally|additional|as "
        "well|open|opening|late|longer|opened|exceptionally|shop runs|we "
        "work|works|working|stay|stays|keeping the doors open|doors)",
        "+[on|of] {day} [this once|exceptionally|as well|too]",
        "+[from|only|only from|open|runs|are] {hours}|(until|till|til|to) {until}",
        "(only|in place of [the|its|our] [usual|normal|customary|regular|weekly] hours|instead of "
        "[the|its|our] [usual|normal|customary|regular|weekly] hours|in lieu of [the|its|our] "
        "[usual|normal|customary|regular] hours|not the usual hours|and not the usual hours) {only=yes}",
        "~{note}", "(because|since|for|owing to) {note}",
        "(we open extra|we|open|are|we're|be in|we'll|as an extra|opening|opening up|shift|in the "
        "afternoon|in the morning|afternoon|morning|also|too|up|in|is|extra|shop|the whole shop|will "
        "be|day|an|a|bit of|late|later|longer|stay|keeping|keep|the doors|doors|shall "
        "hold|hold|works|work|workshop|exceptionally|additional|additionally|overtime|for the "
        "shop|once|us|runs|specially|working|special|besides|as well)"}},
  };
}

std::vector<FrameText> of_days() {
  return {
      {"day-off",
       {"+(off|gone|ill|sick|away|holiday|holidays|not in|on leave|out|vacation|at home|unwell|free|does not "
        "come in|day off|not here|leave|absent|absence|does not come|not coming|not working|no|not come|not "
        "be in|not be here|not at work|a day's leave)",
        "+[on|for|from] {day}|[on|for] {day} [all day|the whole day]|(the|on the|in the) {part} (of|on) "
        "{day}|[on] {day} [in|in the] {part}|this {part}|[from|between] {day} [up] "
        "(to|until|till|through|-|and) [including] {last} [inclusive]|[for] [all] [of] next week "
        "{week=next}|[for] [all] [of] this week {week=this}|[for] [the] (rest|remainder) of (this|the) week "
        "{week=this}",
        "+[no] {person}|(give|gives) {person}|{me=yes} (i'm|i am|i|i have|me|i will|i've|i take|i need|my)",
        "{note=ill} (ill|sick|unwell|illness)|{note=holiday} (holidays|holiday|vacation)", "~{note}",
        "(because|because of|since|owing to|due to|on grounds of) {note}",
        "(is|off|gone|from|on|all day|not in|not in at all|at all|has|the|away|on "
        "holiday|holiday|be|takes|taking|take|have|day|leave|day off|a|home|at|vacation|will be|i'll "
        "be|wish|wants|want|give|makes|free|absence|absent|note|of|would like|like|needs|need|not be in at "
        "all|come|comes|in|she|he|they|can not come|can not make it|can not work|can not be in)"}},
      {"day-on",
       {"+(comes in|does work|work|in|here|works|is in|i'm in|comes|come|be in|will work|is here|in "
        "on|start|starts|starting|begins|leaves|working|hours|leave|goes home|stays|there|is at work|be at "
        "work|only|till)",
        "+(leave|leaves|leaving|go home|goes home|going home) at {until} [on] {day}|[on] {day} "
        "(leave|leaves|leaving|go home|goes home|going home) at {until}|[on] {day} [only] [from] "
        "{hours}|[only] "
        "[from] {hours} [only] [on] {day}|[on] {day} [only] (at|from|as from|as of|by) {begins}|[only] "
        "(at|from|as from|as of) {begins} [on] {day}|[on] {day} "
        "[only|just] (until|till|til) {until}|[only|just] (until|till|til) {until} [on] {day}|[on] {day} "
        "(after all|as usual)|(after all|as usual) [on] {day}|[only] [on] {day}",
        "[from|only|only from] {hours} [only]|(at|from|as from) {begins}|(until|till) {until}|(after "
        "all|only|just|does work|will work|as usual)",
        "+{person}|{me=yes} (i'm|i|me|i am|i'll|i have|my hours)", "~{note}", "(because|since) {note}",
        "(comes|in|does|work|works|working|on|only|this|here|after "
        "all|just|is|after|be|will|all|extra|'ll|tomo'll|too|the|shop|day|that day|instead of "
        "(her|his|their|my|the) usual|instead of (her|his|their|my|the) usual hours|not like (she|he|they) "
        "(does|do) normally|exceptionally|come|can "
        "come|start|starts|starting|begin|begins|late|later|early|earlier|at work|shall "
        "be|has|hours|leaves|leave|goes home|go home|stays|contrary to the earlier notice|for "
        "once|gonna|going to)"}},
  };
}

std::vector<FrameText> of_bookings() {
  return {
      {"book",
       {"+(book|booked|reserve|reserved|put me down|put (down|{person} down)|i need|i want|we "
        "need|gets|take|have|has|block|keep|mine|grab|needs|wants|gets|takes|got|reservation|will have|will "
        "need|want|need|for)",
        "+[on] {day} [from] {hours}|[from] {hours} [on] {day}|[from] {hours}|[on] {day} [from] {hours}|[on] "
        "{day} [at|from|starting at|beginning at] {begins} [for] ({for_hours} (hour|hours|h)|{minutes} "
        "(min|minutes)|half an hour {minutes=30}|an hour {for_hours=1}|a whole hour {for_hours=1}|an hour "
        "and a half {minutes=90})|[on] {day} (all|the whole|in the) {part}|[on] {day} {part}|this "
        "{part}|[on] {day} (at|from) {begins}|(at|from) {begins} [on] {day}|[at] {begins} [on] {day}",
        "+{machine}",
        "[for] {for_hours} (hour|hours|h)|[for] {minutes} (min|minutes)|(half an hour|for half an hour) "
        "{minutes=30}|[for] an hour and a half {minutes=90}|[for] (an|a whole) hour {for_hours=1}",
        "[for] {person}", "[on] {day}", "~note {note}",
        "(put me down for|book|me|for|the|has|have|a|from|on|at|i|and|reserve|put|afternoon|morning|in the "
        "morning|in the afternoon|please|gets|down|block|keep|need|needs|it|is|mine|would like|would like to "
        "have|like|want|wants|time|will do|all|reserved|booked|we|we'll|we will|take|takes|got|her|him)"}},
      {"book", // "the sander, tomorrow 9 to 10"
       {"+{machine}",
        "+[on] {day} [from] {hours}|[from] {hours} [on] {day}|[on] {day} [all] {part}|[on] {day} [at] "
        "{begins} [for] ({for_hours} (hour|hours|h)|{minutes} (min|minutes)|an hour {for_hours=1}|half an "
        "hour {minutes=30})",
        "[for] {person}", "(for|for me|me|on)"}},
      {"cancel-booking",
       {"+(cancel|scratch|give back|delete|drop|remove|will not need|not need|do not need|no longer "
        "need|release|free|free up|call off|take back|unbook|off|annul|annulled|withdrawn|withdraw|called "
        "off|cancelled|not be needing|not be using|revoke|give up|not needed)",
        "+(booking|press|sander|{machine}|bench|[the] booking [number|no|#] {booking}|[the] reservation "
        "[number|no|#|with the number] {booking}|reservation|bookings)",
        "booking {booking}|booking number {booking}|[with the|that is] number {booking}|(the first|first) "
        "{booking=1} (booking|reservation)|(the second|second) {booking=2} (booking|reservation)|(the "
        "third|third) {booking=3} (booking|reservation)",
        "[on] {day}", "booked for {job}|[that's|that is] booked for {job}|for {job}",
        "(the|booking|that|for|my|slot|cancel|i will not need it|it|of|give|back|give back|i|not|need|any "
        "more|{person} press|reservation|bookings|need it|off|is|can be|should be|be|we booked|which was "
        "booked|booked|after all|the machine|machine|time|we can|in the bookings|free "
        "it|please|name|she'll|he'll|will|needing|we|do|will not be using|using|so|up|on|by)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_hours() {
  std::vector<FrameText> out = of_weeks();
  for (auto more : {of_special_days(), of_days(), of_bookings()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
