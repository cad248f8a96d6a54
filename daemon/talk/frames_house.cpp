// What the commands about people, hours, machines and settings are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {

namespace {

std::vector<FrameText> of_hours() {
  return {
      {"open-hours",
       {"+(open|closed|shut|hours|weekly hours|every week|from now on|we do|work)", "+{days}",
        "+({hours}|{hours=closed} (closed|stay closed|shut|no more)|from {hours})",
        "(we shut at (1|2|3|4|5|6|7)|we close at (1|2|3|4|5|6|7)|we|are|from now on|every "
        "week|weekly|hours|no more|open|closed|stay|shut|at|till|we shut at "
        "3|opening|week|always|now|do|on|each week|in future|as of now|the shop|shop|is|day|are now)"}},
      {"close-day",
       {"+(shut|closed|close|close the shop|holiday|nobody in|public holiday|no work|not open|do not "
        "open|closing|bank holiday|nobody here)",
        "+({day}|on {day})", "~{note}", "{note=holiday} (public|bank) holiday|{note=stocktaking} stocktaking",
        "(we're|we are|we|the shop|shop|nobody in|nobody|in|is|on|day|all day|here|holiday|stay|whole "
        "day|remain|for)"}},
      {"reopen-day",
       {"+(not closed|open|after all|take back|we open|scrap the closing|open after all|reopen|cancel the "
        "closing|not shut|not closing)",
        "+({day}|on {day})", "+(after all|take back|scrap|reopen|cancel|not closed|not shut)",
        "(we're|we are|that|shut|closed|shop's|shop|is|on|closing|open|scrap|we|the "
        "closing|not|again|cancel|take|day|the)"}},
      {"open-extra",
       {"+(extra|also open|open extra|extra opening|extra shift|specially|in "
        "on|too|special|overtime|besides|additionally|as well)",
        "+({day}|on {day})", "+({hours}|from {hours})", "~{note}",
        "(we open extra|we|open|are|we're|be in|we'll|as an extra|opening|opening up|shift|in the "
        "afternoon|in the morning|afternoon|morning|also|too|up|in|is|extra|shop|will be|day|an)"}},
      {"own-hours",
       {"+({hours}|{hours=closed} (free|off|closed|no))",
        "+(works|work|hours|free|full time|no|does|part time|is in|weekly|comes in|has)", "+{person}",
        "+({days}|on {days})", "{hours}|from {hours}",
        "(works|hours|are|every week|each week|full time|now|any "
        "more|has|free|on|full|time|from|is|always|week|from now on|'s|in|comes|only|part|weekly|off|does "
        "not work)"}},
      {"day-off",
       {"+(off|gone|ill|sick|away|holiday|not in|on leave|out|vacation|at home|unwell|free|does not come "
        "in|day off|not here)",
        "+({day}|(from|on) {day})", "(to|until|till|through|-) {last}|{day} (to|until|till|-) {last}",
        "{person}|{me=yes} (i'm|i am|i|me)", "{note=ill} (ill|sick|unwell)", "~{note}",
        "(is|off|gone|from|on|all day|not in|has|the|away|on "
        "holiday|holiday|be|takes|taking|have|day|leave|day off|a|home|at|vacation|will be|i'll be)"}},
      {"day-on",
       {"+(comes in|does work|work|in|here|works|is in|i'm in|comes|be in|will work|is here|in on)",
        "+({day}|on {day})", "+({hours}|from {hours}|after all|only|just|does work|will work)",
        "{day} the {*slot}", "{person}|{me=yes} (i'm|i|me|i am)", "{hours}|from {hours}",
        "(comes|in|does|work|works|on|only|this|here|after "
        "all|just|is|after|be|will|all|extra|'ll|tomo'll|too|from|the|shop|day|that day)"}},
      {"book",
       {"+(book|press|sander|{machine} for|has the {machine}|have the {machine}|booked|reserve|put me down|i "
        "need the|i want the|reserved|put {person} down|gets the|take the)",
        "+({hours}|from {hours})", "+{machine}", "{day}|on {day}|this {day}",
        "(put me down for|book|me|for|the|has|have|a|from|on|at|i|and|reserve|put|afternoon|morning|in "
        "the morning|in the afternoon|please|gets)"}},
      {"cancel-booking",
       {"+(cancel|scratch|give back|delete|drop|remove|will not need|won't need|release|free|call off|take "
        "back)",
        "+(booking|press|sander|{machine}|bench|booking {booking})",
        "booking {booking}|booking number {booking}", "{day}|on {day}",
        "(the|booking|that|for|my|slot|cancel|i will not need it|it|of|give|back|give back|i|not|need|any "
        "more|{person} press|reservation|bookings|need it)"}},
  };
}

std::vector<FrameText> of_machines() {
  return {
      {"define-machine",
       {"+(define machine|new machine|define|machine|machines)",
        "+(define machine {name}|new machine {name}|define {name} {count} of them|call it {name}|add [the|a] "
        "{name} as a machine|[the] {name} should be on the list of machines|machine called {name}|the {name} "
        "should be on the list of machines)",
        "count {count}|{count} of them|there's {count}|{count} of those|we've got {count}|there are {count}",
        "{setup_minutes} minutes [to] (set up|setup)|setup {setup_minutes} minutes|{setup_minutes} minutes "
        "setup",
        "(on the list of machines|define|machine|machines|new|there's|there is|now|call it|add|should be|on "
        "the list of|one|we've got|as a|of|it|list)"}},
      {"change-machine",
       {"+(we have|we've|left|now|setting up|setup|rename|make that|set up|we've got|takes|have|there "
        "are|only)",
        "+({machine}|{count} [more] {machine} [now|left])",
        "{setup_minutes} minutes|takes {setup_minutes} minutes",
        "(rename [the] {machine} [to|into] {name}|is called {name} [now])",
        "(we have|now|only|left|setting up|takes|setup|on|the|make that|there are|set "
        "up|minutes|to|for|have|got|we've got|of|a)"}},
      {"drop-machine",
       {"+(sold|gone|get rid|strike|drop|remove|off the list|take it off|scrapped|do not have|delete|no "
        "longer have|left the shop)",
        "+{machine}",
        "(is|the|it|off the list|list|of|from the machines|machine|machines|we do not have that machine "
        "now|we do not have|that machine|now|take|off|we|get rid of|any more|gone|to|from|has been|longer)"}},
      {"machine-down",
       {"!at",
        "+(down|broken|out of service|out|no|torn|serviced|can not use|out of order|broke|kaput|dead|not "
        "working|does not work|leaks|defective|bust|jammed|stuck|faulty|broke down|on strike|being repaired)",
        "+({machine}|{machine} [number|no] {number})", "(until|till) {until}",
        "can not use the {*machine} before {*at} [this afternoon]|before {*at}",
        "from {begins} (to|until|till) {until}|(out|down) from {begins}|from {begins}", "~{note}",
        "{note=belt torn} belt [is] torn [on]|{note=ram leaks} ram leaks|{note=serviced} [gets|being] "
        "serviced",
        "(is|the|it's|down|out|service|on|number|gets|of|we|use|order|today|has|for now|broken|working|it)"}},
      {"machine-up",
       {"+(fixed|back|back in service|works again|up again|repaired|working again|in service|running "
        "again|ok again|up|mended|works)",
        "+({machine}|{machine} [number|no] {number}|(number|no) {number} {machine})",
        "(the|it's|is|are|again|back|in service|works|and|up|now|running|has "
        "been|been|fixed|ok|order|in|working|all right|finally)"}},
      {"stage-machine",
       {"+(needs|on the|at the|happens|wants|bench job|goes on|uses|done on|done at|is "
        "done|job|requires|without)",
        "+({stage=pull} (pulling|pull)|{stage=true} (truing|true)|{stage=slots} (slots|cleaning slots|slot "
        "cleaning)|{stage=bend} (bending|bend)|{stage=cut} (cutting|cut)|{stage=dress} "
        "(dressing|dress)|{stage=seat} (seating|seat)|{stage=press} pressing|{stage=level} "
        "(levelling|level)|{stage=crown} (crowning|crown)|{stage=file} (filing|file)|{stage=polish} "
        "(polishing|polish)|{stage=recheck} rechecking)",
        "+{machine}",
        "(needs|on|at|the|happens|is|done|from now on|now|a|not the {*machine}|these days|we|level "
        "on|uses|job|wants|goes|requires|happen|always|of)",
        "we level on the sander these days"}},
      {"stage-minutes",
       {"+(takes|make|minutes|hour|hours|half an hour|what was reported|reported|takes us)", "!at",
        "+({stage=pull} (pulling|pull)|{stage=true} (truing|true)|{stage=slots} (slots|cleaning [the] "
        "slots)|{stage=bend} (bending|bend)|{stage=cut} (cutting|cut)|{stage=dress} (dressing|dress) [the "
        "ends]|{stage=seat} (seating|seat)|{stage=press} (pressing|press)|{stage=level} "
        "(levelling|level)|{stage=crown} (crowning|crown)|{stage=file} (filing|file)|{stage=polish} "
        "(polishing|polish)|{stage=recheck} (rechecking|recheck))",
        "{minutes} minutes|{minutes} min", "{minutes=60} (one|an|1) hour",
        "{minutes=90} an hour and a half|{minutes=90} (one|1) and a half hours|{minutes=90} ninety minutes",
        "{minutes=30} half an hour", "{minutes=120} (two|2) hours", "{minutes=45} three quarters of an hour",
        "{minutes=15} a quarter of an hour",
        "(takes|take|us|what was reported|make|let|go by|again|reported|in|now|as|is|we|about|a "
        "board|usually|to)"}},
  };
}

std::vector<FrameText> of_people() {
  return {
      {"new-person",
       {"+(new person|starts|add|joins|new colleague|is new|new hand|hire|hired|new|starting|take on|joined)",
        "+(new person [called] {name}|{name} (starts|joins|joined)|{name} is new|{name} new|add {name} "
        "(as|role|she|he|they)|new (colleague|hand|worker|builder|apprentice|member) {name}|hired "
        "{name}|{name} is joining)",
        "{role=look} (may|can) only look|{role=look} look role|{role=look} as a looker",
        "{role=lead} (as a lead|lead role|role lead|is a lead|as lead)",
        "{role=bench} (bench role|role bench|works at the bench)",
        "[at|on] the {bench} bench {role=bench}|at [the] {bench} bench", "uid {uid}|login {uid}",
        "(today|new|person|colleague|she|he|they|may|only|is|as|a|with|joins|starts|us|the|shop|tomorrow)"}},
      {"map-uid",
       {"+(map|uid|login|user|comes in|logs in|comes in as|id)",
        "+(uid {uid}|map uid {uid}|user {uid}|as {uid}|{uid} is|login {uid}|{uid})", "+{person}",
        "(map|to|is|also|comes in with|logs in|as|whoever|that's|belongs "
        "to|with|comes|in|user|the|of|login|for|id)"}},
      {"unmap-uid",
       {"+(take|is not|no longer|unmap|remove|does not belong|not {*person}|revoke|drop|delete)",
        "+(uid {uid}|{uid} is not|login {uid}|{uid})",
        "(take|uid|off|{*person}|from|login|any longer|any more|is not|away|the|away from|unmap|no "
        "longer|belongs to|belong to|does|not|is|of|anymore)"}},
      {"change-person",
       {"+(moving|moves|moved|called|works at|works|rename|may|at the|is at|sits at|is a "
        "lead|becomes|can|now|make|is|lead|look|renamed)",
        "+{person}", "(to|at|over to) the {bench} bench|[the] {bench} bench",
        "rename {person} [to] {name}|called {name}|renamed [to|as] {name}",
        "{role=look} (may|can) only look|{role=look} (look role|role look|only look)",
        "{role=lead} (becomes [a] lead|is [a] lead|role lead|a lead)",
        "{role=bench} role bench|{role=bench} bench role",
        "(moving|over|is|now|called|works|at|from today|has moved|moves|may|only|make|the|a|as|of|role)"}},
      {"retire-person",
       {"+(retire|retired|left|left the shop|does not work here|has left|quit|last day|leaves|gone for "
        "good|resigned|leaving|stopped working here|has gone)",
        "+{person}",
        "(the shop|has|she's|he's|any more|today was|here|for "
        "good|she|he|is|us|shop|work|anymore|was|day|the|last|and|now)"}},
      {"return-person",
       {"+(back|come back|came back|bring {person} back|rejoined|un-retired|back with us|returned|returns|is "
        "back|again|un - retired|unretire|unretired|rehired|reinstate|reinstated)",
        "+{person}",
        "(is|has|with us|come|came|to work here|bring|in|the crew|rejoined|have|on the list of "
        "people|he's|she's|back|again|to|the shop|works|here|work|un|-|retired|us|for us|crew)"}},
      {"add-receiver",
       {"+(add receiver|receiver|let|send|tell|webhook|notify)", "+{url}",
        "(add [a] [new] receiver|call it|receiver called|called) {name}|receiver {name} [at]",
        "[only] for {wants=recheck.due} recheck . due|[only] for {wants=press.due} press . due|[only] for "
        "{wants=wire.low} wire . low",
        "shape {shape}|as {shape}",
        "(add|receiver|at|let|know|what falls due|falls due|only|send|to|new|about|tell|everything)"}},
      {"drop-receiver",
       {"+(remove|delete|drop|stop sending|forget|stop telling|take off|no more)",
        "+({receiver}|receiver {receiver!}|receiver called {receiver!}|to the {receiver})",
        "(receiver|the|called|sending|to|stop|anything|any more|more|webhook|it)"}},
      {"set",
       {"+(set|make|says|is|from now on|are|change the setting|to|setting|use|never more|costs us)",
        "+(trim limit [to|is] {setting=trim_limit} {to}|press plate [says|to|is] {setting=press_plate} "
        "{to}|setback [to|is] {setting=setback} {to}|bin step [to|is] {setting=bin_step} {to}|zone [to|is] "
        "{setting=zone} {to}|"
        "{setting=unit} {to=in} [bare] lengths are [in] inches|{setting=unit} {to=mm} [bare] lengths are "
        "[in] (mm|millimetres)|rechecks are due {to} hours after pressing {setting=recheck_due_h}|cut costs "
        "us {to} {setting=nip_loss}|nip loss [to|is] {setting=nip_loss} {to}|"
        "[never] more than {to} in a pass {setting=press_limit}|press limit [to|is] {setting=press_limit} "
        "{to})",
        "(set|the|make|from now on|our|a|to|that|set nip loss to that|change the setting|set that|press "
        "limit|never|set that|change the setting|setting|nip loss to that|is|now|it)"}},
      {"undo",
       {"+(undo|take back|take that back|take it back|scrub|revert|cancel my last entry|undo that|scrub "
        "that|roll back|strike that|take back what|that was wrong|cancel that|reverse that|delete "
        "that|unsay)",
        "(that|it|last|one|oops|no|that was wrong|mistake|my|entry|the|what i said|thing|wrong|sorry|my last "
        "entry|last entry|i just|did|step|change|was|not right|not what i meant)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_house() {
  std::vector<FrameText> out = of_hours();
  for (auto more : {of_machines(), of_people()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

} // namespace nutward::talk
