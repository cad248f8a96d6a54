// What the commands about people, receivers and settings, and undo, are known by; see talk/frame.hpp. Those
// about hours and machines stand in frames_hours.cpp and frames_machines.cpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

std::vector<FrameText> frames_of_hours();
std::vector<FrameText> frames_of_machines();

namespace {

constexpr std::string_view role =
    "{role=look} (may|can) only (look|ask|view)|{role=look} [may|can|wants to|permitted to] (only look|look "
    "only|view only|only view)|{role=look} (look role|role look|role of look|as a "
    "looker|as look|only looking)|{role=look} only wants to ask things [so look]|{role=look} able to look at "
    "things [in here] but not change anything|{role=lead} (as a lead|as lead|lead role|role lead|role of "
    "lead|is "
    "[a|the] lead|our new lead|becomes [a|the] lead|a lead|the lead|to lead|promoted to lead)|{role=bench} "
    "(bench role|role bench|role of bench|works at the bench|at the bench|on the bench|as bench)";
constexpr std::string_view bench = "[at|on|to|over to|across to|place] [the|his|her] {bench} "
                                   "bench|(he|she|they) [is|are] at the {bench} bench "
                                   "{role=bench}";

std::vector<FrameText> of_people() {
  return {
      {"new-person",
       {"+(new person|starts|started|add|joins|joining|new colleague|is new|new "
        "hand|hire|hired|new|starting|take on|joined|meet|person|register|enrol|works here too|works here "
        "now|apprentice|on the list of people|let in|welcome|create)",
        "+(new person [called] {name}|{name} (starts|joins|joined|started)|{name} is new|{name} "
        "new|(add|hire|"
        "register|enrol|welcome|meet) {name}|new "
        "(colleague|hand|worker|builder|apprentice|member|boy|girl|lad|"
        "fella) [called|named|is] {name}|hired {name}|{name} is joining|(his|her|their|the) name [is] "
        "{name}|[is] (called|named) {name}|{name} the name|make {name} [to] a person|[an] apprentice joins "
        "us "
        "{name}|(put|have) {name} on the list|{name} works here [too|now]|person [record] for {name}|(sister|"
        "nephew|brother|cousin|friend) {name}|new member of staff {name}|the name {name})",
        role, bench, "{role=bench} bench role|{role=bench} works at the bench",
        "(uid|login|user number|user) {uid}",
        "(today|new|person|colleague|she|he|they|may|only|is|as|a|with|joins|starts|us|the|shop|tomorrow|of "
        "the "
        "shop|a person of the shop|to a person of the workshop|workshop|working|works|here|too|from now "
        "on|list "
        "of people|on|people|put|set her up|set him up|put him down|put her down|as one of us|so|going to "
        "sit|"
        "sit|sits|member of staff|role|record|who|shall be|at|and|has come|come to "
        "us|it|somebody|finally|fella|"
        "boy|like me|let her in|let him in|an|apprentice|our|in|are|start|colleague|member|staff|now|make)"}},
      {"map-uid",
       {"+(map|uid|login|user|comes in|logs in|comes in as|id|computer|id - u)",
        "+(uid {uid}|map uid {uid}|user {uid}|as {uid}|{uid} is|login {uid}|{uid} (for|belongs "
        "to|=|to|pertains "
        "to)|user number {uid}|[user] with the number {uid}|says {uid}|calls {*person} {uid}|number {uid}|"
        "identification {uid}|{uid})",
        "+{person}|the same person (as|like) {person}|it's {person}|(computer|machine) calls {person} {uid}",
        "(map|to|is|also|comes in with|logs in|as|whoever|that's|belongs "
        "to|belongs|with|comes|in|user|the|of|login|for|id|=|when|shows up|says|- u|note "
        "that|it's|remember|that "
        "this is her|that this is him|this is her|this is him|number|has|same person|tie that to her|tie "
        "that to "
        "him|and|user|identification|pertains|so|uid|shall "
        "be|be|assign|assigned|link|linked|connect|as|computer|"
        "machine|her|his|their)"}},
      {"unmap-uid",
       {"+(take|is not|no longer|unmap|remove|does not belong|not "
        "{*person}|revoke|drop|delete|nobody|nobody's|no "
        "one|detach|unhitch|freed|free|separate|forget|cease|disconnect|cut it loose|should not be|not "
        "valid|let go|be let go|unlink)",
        "+(uid {uid}|{uid} is not|login {uid}|user {uid}|user number {uid}|with the number {uid}|mapping "
        "(for|of) "
        "{uid}|detach {uid}|number {uid}|unmap {uid}|{uid})",
        "(take|uid|off|{*person}|from|login|any longer|any more|is not|away|the|away from|unmap|no "
        "longer|belongs to|belong to|belongs|does|not|is|of|anymore|nobody|nobody's|now|no "
        "one|detach|mapping|on "
        "the computer|computer|forget it|number|user|anybody|in our shop|should not be|take it "
        "away|it|whoever|"
        "has it|whoever has it|anybody's|freed|must be|be|from its person|person|the "
        "person|valid|to|separate|"
        "assignment|association|with a member of staff|shall cease|cease|for|does not|hers|his|cut it "
        "loose|could|you could|unhitch|and|longer)"}},
      {"change-person",
       {"+(moving|moves|moved|called|works at|works|rename|may|at the|is at|sits at|sits|is a "
        "lead|becomes|can|now|make|is|lead|look|renamed|name|role|transferred|promoted|bench|spelled|goes "
        "by|shifted|allowed)",
        "+{person}", bench,
        "rename {person} [to|as] {name}|called {name}|renamed [to|as] {name}|going by {name}|goes by "
        "{name}|name "
        "of {person} to {name}|change {person} to {name}|[name] {person} [it] [is] spelled {name}|is now "
        "{name}|name to {name}",
        role, "{role=bench} let him report work [too]|{role=lead} allowed to change the settings",
        "(moving|over|is|now|called|works|at|from today|has "
        "moved|moves|moved|may|only|make|the|a|as|of|role|from "
        "now on|sits|in the register|and|transferred|been|has been|promoted|amend|amended|change|changed|"
        "correct|name|name of|is to be changed into|be|shall be|his|her|their|shifted|across|stool|that is "
        "where he works now|that is where she works now|where|that is|he|she|works now|from today|got "
        "married|"
        "boss|made her|made him|given|gets|gave|the role of|into|to|so change her name|so|just|it|known "
        "as)"}},
      {"retire-person",
       {"+(retire|retired|left|left the shop|does not work here|has left|quit|last day|leaves|gone for "
        "good|resigned|leaving|stopped working here|has gone|no longer one of us|not one of us|no longer a "
        "member|not work with us|off the people|access ended|is gone|gone|moved on|no longer works)",
        "+{person}",
        "(the shop|has|she's|he's|any more|today was|here|for "
        "good|she|he|is|us|shop|work|anymore|was|day|the|last|last day|and|now|is not coming back|not coming "
        "back|comes not again|not come back|will not be back|no longer|longer|no longer one of us|one of "
        "us|a "
        "member of the shop|member|of|no longer a member|out of our shop|our|person|leaving|with us|does not "
        "work|take him off|take her off|people here|from the shop|so|access ended|have|had enough|him|her|"
        "left|gone|to|from|staff|employed|y'all can|you can)"}},
      {"return-person",
       {"+(back|come back|came back|bring {person} back|rejoined|un-retired|back with us|returned|returns|is "
        "back|again|un - retired|unretire|unretired|rehired|reinstate|reinstated|out of retirement|one of us "
        "again|working for us again|works here again|retired no longer|no longer retired)",
        "+{person}",
        "(is|has|with us|come|came|to work here|bring|in|the crew|rejoined|have|on the list of "
        "people|he's|she's|back|again|to|the shop|works|here|work|un|-|retired|us|for us|crew|out of "
        "retirement|retirement|today|person|a person|of the shop|as a person of the shop|as|one of us|who "
        "had "
        "stopped working here|had stopped working here|previously retired|previously|working|from retirement|"
        "from his retirement|from her retirement|home|retired no longer|no longer retired|was retired|on the "
        "staff|staff|among the people|after all|for good|and|now|from today|put|of it|list of people|on|him|"
        "her|he|she|with|the|at the shop)"}},
  };
}

std::vector<FrameText> of_receivers() {
  return {
      {"add-receiver",
       {"+(add receiver|receiver|receivers|let|send|tell|webhook|notify|hook|attach|told)", "+[at|to] {url}",
        "(add [a] [new] receiver|call it|receiver called|called|receiver named|receiver by the name "
        "of|webhook "
        "called|webhook named|under the name|by the name of|with the name|the name is|name it|entitled|name|"
        "[a] [further] receiver designated|call that one) {name}|[a|new|up|as] receiver {name} [at|with|it]|"
        "[a|new] (hook|webhook) {name}|let {name} at|tell {name} at|send reminders to {name} at|receiver "
        "{name}",
        "[only] [for|to|that wants|restricted to] {wants} [only]",
        "shape {shape}|[in the|of|with the] {shape} (shape|style|format)|as [plain] {shape}|in [the] shape "
        "{shape}|plain text {shape=text}",
        "(add|receiver|receivers|at|let|know|what falls due|falls due|only|send|to|new|about|tell|everything|"
        "reminders|whatever|whatever falls due|up|set|make|a|an|it listens on|it listens at|its address is|"
        "address|the address|with|the url|further|one more|should get notices|notices|should "
        "be|there|comes|and|"
        "as|for|webhook|hook|hook up|attach|register|provide|display|screen|my phone|phone|the news|what "
        "comes "
        "up|url|in|listens|it|under|of|the name|over|want to|too|everything that falls due)"}},
      {"drop-receiver",
       {"+(remove|delete|drop|stop sending|forget|stop telling|take off|no more|take it off|can go|gone|get "
        "rid|strike|discontinue|unhook|pull the plug|not be told|not need|nothing be sent|told anything|take "
        "that "
        "receiver|cancel|stop)",
        "+({receiver}|[that|the] receiver {receiver!}|receiver (called|named) {receiver!}|to the "
        "{receiver}|(webhook|hook) [for|named|called] [the] {receiver!}|{receiver} receiver|(thing|one) "
        "(called|named) {receiver!}|(strike|notices to) {receiver!}|to {receiver!})",
        "(receiver|the|called|sending|to|stop|anything|any more|more|webhook|it|notices|no more|please|can "
        "go|"
        "from the list of receivers|list of receivers|list|receivers|from|of|named|so|my|should not|must not "
        "get "
        "told|any longer|shall|from now on|out of it|take|that|we do not need|do not|not|we|need|on|pull the "
        "plug "
        "on|hook|get rid of|telling|be|told|get|as a receiver|reminders|for|off|gone|away|now)"}},
  };
}

std::vector<FrameText> of_settings() {
  return {
      {"set",
       {"+(set|make|says|is|from now on|are|change the setting|to|setting|use|never more|costs "
        "us|let|put|should "
        "be|please put|change|down to|has|be|at|now|wish to have|for|altered|amend|in|adjust|due|reads|=)",
        "+([the|our|that|this] {setting} [setting] [(to|is|are|at|of|on|be|should be|shall be|down to|up "
        "to|as|to "
        "be|is to be|is to be (altered|changed|set) to|i wish to have on|says|reads|is rated for|=|from now "
        "on|now|is now|has to be|must be)] [now] {to}|[as] {setting} [please] (put|set|take|use) {to}|{to} "
        "(for|as) [the|our] {setting}|"
        "reads [much] [finer] [in steps of] {to} [now] [so] [set] [the] gauge division "
        "{setting=gauge_division}|(plate|press "
        "plate|plate on the press|plate of the press) (says|is|reads|to) {setting=press_plate} {to}|"
        "{setting=unit} {to=in} [bare] lengths [are] [in] inches|{setting=unit} {to=mm} [bare] lengths [are] "
        "[in] "
        "(mm|millimetres)|{setting=unit} {to=inch} (talk|show lengths|answer) in inches [and not in "
        "millimetres]|{setting=unit} {to=mm} (talk|show lengths|answer) in (mm|millimetres) [and not in "
        "inches]|{setting=load_unit} {to=N} [show] loads in (newtons|newton)|{setting=load_unit} {to=lb} "
        "[show] "
        "loads in (pounds|lb)|{setting=load_unit} {to=kN} [show] loads in "
        "(kn|kilonewtons)|(recheck|rechecks) "
        "[are|is] due [after|at|within] {to} [after pressing] {setting=recheck_due_h}|cut costs "
        "us {to} {setting=nip_loss}|[never] more than {to} in a pass {setting=press_limit})",
        "(set|the|make|from now on|our|a|to|that|set nip loss to that|change the setting|set that|press "
        "limit|never|set that|setting|nip loss to that|is|now|it|set it|let|change|of the shop|for the "
        "shop|shop|"
        "put|write that down|as of today|from today|so|in future|there|new|value|down|gauge|on|go on|ahead|"
        "program|i would like|please|that is the most it may ever do|let's|nobody here|be|and|all)"}},
      {"undo",
       {"+(undo|take back|take that back|take it back|scrub|revert|cancel my last entry|undo that|scrub "
        "that|roll back|roll it back|strike that|take back what|that was wrong|cancel that|reverse "
        "that|delete "
        "that|unsay|take the last thing back|scratch that|forget i said|back one step|revoke|withdrawn|"
        "reversed|cancel what|forget it happened|in error|make it like it was before|take it away again)",
        "(that|it|last|one|oops|no|that was wrong|mistake|my|entry|the|what i said|thing|wrong|sorry|my last "
        "entry|last entry|i just|did|step|change|was|not right|not what i meant|wait|didn't mean to report "
        "that|did not mean to report that|mean to report|did not want to do that|what i just entered|what i "
        "just "
        "did|what|entered|that last one should not have gone in|last thing|i told you|told|most "
        "recent|recent|"
        "preceding|previous|report|was made in error|made|in error|error|an error|is hereby withdrawn|be "
        "reversed|"
        "should be reversed|it should be|i have made|with|back|again|happened|typed|just now|can "
        "you|whatever i "
        "just reported|i think|entirely|up|so|like it was before|to|in|i|just|reported|said|the one|by "
        "mistake|"
        "an accident|was an accident|accident|whoops|hang on|please|the thing i just did|is to be|be)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_house() {
  std::vector<FrameText> out = frames_of_hours();
  for (auto more : {frames_of_machines(), of_people(), of_receivers(), of_settings()})
    out.insert(out.end(), more.begin(), more.end());
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
