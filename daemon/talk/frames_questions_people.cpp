// What the questions about people, machines and the past are known by.
#include "talk/frames_questions.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.
namespace {

std::vector<FrameText> of_plan() {
  return {
      {"agenda",
       with_days(
           {},
           {"+(plan|who is doing what|who does what|what now|what's next|next for me|on for|planned|press "
            "when|schedule|worked on|turn|holds everything up|agenda|happening|my list|work|on my "
            "list|next|on the {machine}|bottleneck|to do|what do i do|what does {person} do|doing|what "
            "should i do|look like|what will {person} do|what am i doing|program|what is on|what's "
            "on|todo|coming up|comes next|first|free|busy|loaded|overloaded|slack|leeway|be late|run "
            "late|running late|in time|ready|ready dates|latest start|begin|start|get going|begun|nothing to "
            "do|flat out|who's on what|be at|up to|be done|supposed to do|nobody on)",
            "{mine=yes} (for me|my|mine|(do|am|have|did|should|must|will|shall) i|i (am|do)|i'm "
            "(doing|on|free|idle))",
            "{next=yes} {mine=yes} (what now|what next|should i (be doing|do|start) [next|now|first]|do i "
            "(do|start) (next|now|first))|{next=yes} next (for|up|job|thing|task)|{next=yes} [what] "
            "(comes|is|do|be doing|doing|at) next|{next=yes} first",
            "{load=yes} (machine holds [everything|us] up|holds [everything|us] up|bottleneck|[how] "
            "(busy|loaded|overloaded|flat out|full)|[machine] load|busiest|most loaded|hold up|workload)",
            "{free=yes} (free|[has|have|got] [a] free (hour|moment|slot|time)|nothing to do|has time|have "
            "time|idle|(when|is) nobody [is] (on|at)|unoccupied|not busy)",
            "{free=yes} free [on] {begins}",
            "{deadlines=yes} (slack|leeway|to spare|time to spare|latest start|latest start date|start "
            "date|(have|has|must|may|can) [to] (begin|start|get going|be begun|be started) [on|with|by] "
            "[when]|at the latest|(begin|begun|start|started|get going) [on|with] [by|at] [when|the "
            "latest]|reserve)",
            "{ready=yes} ((when|will|is|be|get|becomes|become) [it|they] "
            "(ready|finished|done|collected)|ready dates|ready [dates]|(be|is|are|going to be|run|running) "
            "(late|in time|on time)|going to be (done|ready|finished|late))",
            "(what|who|doing|on|the|when|which "
            "machine|machine|does|get|is|list|work|for|today's|everybody|everyone|why|then|be|will|does|do|"
            "have|to|i'm|who's|supposed|meant|at|jobs|all|each|date|dates|begin|somebody|whole)",
            "{day} plan|{day} work"})},
      {"bookings",
       with_days(
           {false, true, true, true},
           {"+(booked|book|bookings|booking|taken|reserved|reserve|got the {machine}|has the {machine}|have "
            "the {machine}|reservations|reservation|who has|who is on|who's got|machine times)",
            "{mine=yes} (my|mine|(have|did|do) i|i (booked|have booked|reserved))",
            "(on|for) {day} [at {*at}]|{day} at {*at}",
            "(who|whom|by|what|for|next|is "
            "there|anything|something|the|has|have|any|anyone|on|of|when|a|all|at|list|machine|machines|"
            "times|somebody|hours|file|see)"})},
      {"hours",
       with_days({true, false, true, true},
                 {"+(open|hours|shut|closed|till when|when does {person} work|does {person} "
                  "work|work|works|working|opening|opening hours|opening times|working hours|when do i "
                  "work|in on|close|until when|here on|close on|be in|be here|who is here|who's in|on "
                  "duty|who is in|anybody in)",
                  "{mine=yes} (my|mine|(do|am|have|must|should|will|shall) i|i (work|am working|have to)|i'm "
                  "(working|in|on))",
                  "{people=yes} (who (works|is working|is in|is here|will be here|is on duty|is on|is off|is "
                  "away|comes in|work)|who's (in|here|off|on|working)|(which|all) [of] [all] [the] people "
                  "[work|works]|anybody (in|here|working|work)|everybody [works|is in]|everybody's)",
                  "(are we|when|what|for|the|does|is|till|are|do|shop|workshop|until|on|how "
                  "late|we|at|which|time|times|what time|one|has|people|everybody|in|here|be|would|will)"})},
      {"machines",
       {"+(machines|how many|out of service|free|machine|machines do we have|is the {machine} "
        "(down|free|up|working|broken|ok|going)|down|working|broken|in service|all right|equipment|in "
        "order|usable|in use|machinery|service status)",
        "(what|do we have|have|list|is|all|the|which|now|are|available|who|any|of|status|service|overview)"}},
  };
}

std::vector<FrameText> of_people() {
  return {
      {"persons",
       {"+(which bench is everybody|people|people list|persons|staff|crew|everybody at|everyone at|who "
        "works|who is here|left the shop|who is who|who is in the shop|who has "
        "left|uids|logins|roles|team|colleagues|personnel|employees|who is the lead|who leads|who've we got)",
        "{retired=yes} [also|including] [the|those] [that|who] (left [the shop]|retired [ones]|[who|that] "
        "(has|have|are) (left|retired)|gone|former|ex|in pension|pensioned)",
        "(bench|which|list|so far|with|all|here|at|on|the|ever|of|shop|lead|place|house|working)"}},
      {"history",
       {"+(where did|come from|who used|did anyone use|when did|what happened to|who|history|log|happened "
        "to|what became of|past|where has|used|ended up|every transaction|audit)",
        "+(piece|number|item) {piece#}", "!job", "!person", "!wire", "{*job}", "{*person}",
        "(for|aside|put|use|used|from|and|go|goes|it|did|what|anyone|where|when|by|with|done|has "
        "been|hold|held|add|added|last|had|tin|of the tin)"}},
      {"history",
       {"+(history|did {person} report|where did|come from|what have i done|did what|last thing|who used|did "
        "anyone|who|report|reported|happened|what has been done|when did|been lost|log|journal|what did|what "
        "happened|what was|past|happening|audit trail|recorded|everything since)",
        "(piece|number|item) {piece#}", "{slot}",
        "{mine=yes} (my|mine|(have|did|do) i|i (reported|did|told|have))", "{happened}|on {happened}",
        "since {since}|(from|after) {since} on",
        "(what|used|use|did|where|did it go|and "
        "when|done|of|has|who|pressed|report|go|come|from|put|somebody|aside|for|to|was|thing|last|everybody|"
        "changed|with|all|happened|lost|been|fret|reported|do|did|everything|at|put in|received)"}},
      {"help",
       {"+(trim limit|setback|press plate|bin step|nip loss|help|what can i say|which settings|settings|what "
        "can you do|how do i (report|say|tell|add|book|use|enter)|how to|how can i|what do you "
        "understand|what do i say|commands|what is possible|explain|explanation|instructions|guidance|how "
        "does {topic} work|command|question|what does {topic} do)",
        "(help with|help on|help) [the] {topic} [command|question]|(explain|about) the {topic} "
        "[command|question]",
        "(how does|how do) [the] {topic} [command|question|thing] (work|go|get used)|what does [the] "
        "[command|question|word] {topic} (do|mean|tell me|tell|answer)|how [the] {topic} [thing] "
        "(works|goes)",
        "the (command|question|function) {topic}|(for|is|with|using|want) the {topic} "
        "(command|question|function)|(instructions|guidance|explanation) (for|of|on|about) [using] [the] "
        "{topic}",
        "{topic=pressed} (report pressing|pressing|report a pass)",
        "{topic=set} settings|what is [the] {topic=set} (trim limit|setback|press plate|bin step|nip "
        "loss|press limit|setting)",
        "(what|me|are|there|the|which|with|a|please|on|about|can|do|say|understand|work|use|used|using)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_people() {
  std::vector<FrameText> out = of_plan();
  for (FrameText& more : of_people())
    out.push_back(std::move(more));
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
