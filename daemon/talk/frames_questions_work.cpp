// What the questions about jobs are known by: what falls due, how they stand, how long they take.
#include "talk/frames_questions.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.
namespace {

constexpr std::string_view a_stage =
    "{stage=pull} (pulling|pull|pulled|taking out|take out|get out|getting out)|{stage=true} "
    "(truing|true|trueing|trued)|{stage=slots} ([cleaning|clean] [out] [the] "
    "slots|cleaning|clean)|{stage=bend} (bending|bend|bent)|{stage=cut} (cutting|cut)|{stage=dress} "
    "(dressing|dress|dressed)|{stage=nip} (nipping|nip|nipped)|{stage=seat} "
    "(seating|seat|seated|hammering|hammer|tapping|tap)|{stage=press} (pressing|press|pressed)|{stage=file} "
    "(filing|file)|{stage=recheck} (recheck|rechecks|rechecking|checking again)|{stage=level} "
    "(levelling|leveling|level|levelled)|{stage=crown} (crowning|crown|crowned)|{stage=polish} "
    "(polishing|polish|polished)|{stage=corners} ([rounding|round] [off] [the] corners)";

std::vector<FrameText> of_days() {
  return {
      {"due",
       with_days(
           {}, {"+(due|deadline|deadlines|falls due|fall "
                "due|overdue|rechecks|recheck|late|promised|promises|pressing deadline|look at today|done "
                "by|clock|how long have we got|by when|look again|look at again|looked at again|check "
                "again|run out of time|time left|must i look|behind|running late|waiting|look ahead|press "
                "times|press time|pressings|pressed by|runs out|promise|have to be pressed|has to be "
                "pressed|must be pressed|go out|late already)",
                "(by|until|till|before|up to|to) [and including] [the] {by} [included|at the latest|is "
                "out|at latest]",
                "{overdue=yes} (overdue|past due|late already|already late|anything late|late with "
                "anything|late for|are late|is late|too late|running late|running behind|anything running "
                "behind|behind [time|schedule]|missed|[should|ought] [to] have been done [already|by "
                "now]|done with by now|already past|lapsed|slipped)",
                "{only=recheck} [the] (recheck|rechecks|look at again|looked at again|check again|checked "
                "again|rechecked|look again)",
                "{only=press} [the] [latest|last] (press times|press time|press by|press days|press "
                "day|press dates|pressings|pressing times|pressing deadline|pressing deadlines|(just|only) "
                "pressing|be pressed|to press|press deadline)",
                "{only=job} [the] (promised days|promised day|promises [to customers]|due dates|due "
                "days|delivery dates|delivery days|promised dates|which jobs|what jobs|jobs|did we "
                "promise|have we promised|ready dates|customers)",
                "(what|anything|everything|any|must|go|due date|due day|which day|day|pressing|have to go "
                "out|go out|under the press|when|promised for|for|do we have to have|have to|remind|next|on "
                "the clock|with|are we|soon|deadline-wise|wise|to|press|be pressed|be|till "
                "when|job|left|list|still|coming up|at the "
                "latest|latest|only|just|fall|falls|falling|become|becomes|lie|lies|stands|plan|included)"})},
  };
}

std::vector<FrameText> of_one_job() {
  return {
      {"jobs",
       {"+(jobs|open jobs|open|mine|on her plate|on his plate|queue|necks|my jobs|waiting|list|which "
        "jobs|plate|refrets|in the queue|work in hand|instruments|in the shop|works|customers)",
        "{mine=yes} (mine|my|i have|do i have|am i doing|on my plate|i've got|to me|me)",
        "[at|on] [the] {bench} bench|[at|on|by] [the] bench (by|at|beside|near) the {bench}",
        "(what|have we got|got|how "
        "many|all|whose|list|on|are|which|show|plate|we|every|everything|unfinished|current|first|earliest|"
        "soonest|due|date|on top|not closed|closed|belong)"}},
      {"job",
       {"+(status|how is|how are|how is {job} doing|state|want a fret|scale|nut width|bound|fanned|done "
        "on|ready|missing|still missing|far|progress|radius|radiuses|owner|tell|show|still want|still "
        "need|slots open|open slots|empty slots|slots empty|slots lacking|lacking|lack|getting on|coming "
        "along|details|about|neck|stand|stands|specs|how many frets|zero fret|what scale|how far|where are "
        "we|summary|overview|read me|left to do)",
        "(number|no) {job!}",
        "(my neck|which slots|still|fret|anything|yet|square|where|not "
        "done|nut|width|of|doing|what|how|my|along|left|has|have|on|wire|does it have|is it|on "
        "the|there|with|coming|slots|empty|lack|next|comes)"}},
      {"whose",
       {"+(who is doing|who has|who's got|who is building|building|mine|who does|whose|who works on|belongs "
        "to|is on|who is on|who took|assigned to|working on|who looks after|could do|builder|responsible|by "
        "whom|handles|in charge|looks after|who is responsible)",
        "(doing|job|who|is|neck|to|for|got|has|where|bench|which|staff|member|done|being done)"}},
      {"suits",
       {"+(does [the|its] [wire] suit|suit|seat in|seat|any good|could i put|fit the slots|good|instead|too "
        "thick|tang|right wire|work in|put {wire} in|go into|slots|match|use {wire}|go "
        "in|grip|hold|sit|sits|wire check|bend|deep enough|suitability)",
        "+({slot_width} wide|{slot_depth} deep|instead|suit|suits|wire|seat|fit the slots|fit|tang|good "
        "for|use|match|go in|go into|{wire}|slots|grip)",
        "{slot_width} wide|wide {slot_width}|slots [are|of|at] {slot_width} wide|slots (are|of|at) "
        "{slot_width}",
        "{slot_depth} deep|deep {slot_depth}|slots [are|of|at] {slot_depth} deep",
        "slots [are|of] {slot_width} (by|x) {slot_depth}|{slot_width} (by|x) {slot_depth}|{slot_width} wide "
        "[and|by] {slot_depth} deep",
        "{bottom=curved} [with] (curved|round|rounded) [slot|slots] (bottoms|bottom|at the ground|at the "
        "bottom)|{bottom=curved} (bottoms|bottom) [are|is|follow|follows] (curved|round|the "
        "curve)|{bottom=curved} (follow|follows|followed) the curve|{bottom=curved} (curved|round) [slots]",
        "{bottom=flat} [with] [a] flat [-] [slot] (bottoms|bottom|bottomed)|{bottom=flat} (bottoms|bottom) "
        "[are|is] flat|{bottom=flat} flat",
        "(put|wire|slots|slot|tang|too|thick|with|its|any|good|in|thin|loose|tight|or|does|for|well|into|"
        "board|on the board|of the board|middle|in the middle|bend|round|properly|curve)"}},
      {"stages",
       {"+(stages|steps|how long does a|how much work|work is left|work left|how long for|how long does|how "
        "long|stage|takes us|work remains|hours of work|remaining work|time "
        "does|time|minutes|duration|involve|takes|take|last|step by step|time needed)",
        a_stage, "{kind=new_board} [a] new (board|fretboard|fingerboard)",
        "{kind=some_slots} [just|only] (a few|some|few) (slots|frets|crowns) [of]|{kind=some_slots} "
        "(just|only) {frets} (frets|slots)|{kind=some_slots} {frets} frets only|{kind=some_slots} partial "
        "(refret|work|job)|{kind=some_slots} {frets} slots",
        "{kind=refret} (24|{frets}) [-] fret refret|{kind=refret} [whole|full|complete] refret",
        "{bound=yes} (bound|with [a] binding|binding)", "{ends=filed} filed [ends]|{ends=filed} ends filed",
        "{ends=rounded} rounded [ends]|{ends=rounded} ends rounded", "{frets} [-] (frets|fret|slots)",
        "(take|takes|taking|us|work|on|board|what|of|are|left|how "
        "much|a|is|need|needed|long|much|how|time|does|the|remaining|full|for|usually|to "
        "do|normally|ends|frets|fret|average|standard|reports|based|usual|go|goes|through|each|them|in|out|"
        "involve)"}},
      {"promise",
       {"+(promise|could we do|can we do|take on|one more|another refret|doable|what day|ready|can we|could "
        "we|manage|squeeze in|fit in|delivery date|be done|possible|when could|earlier|when can|finish "
        "another|new refret|extra|another|soonest|earliest|lead time|done by|refret|when could they have "
        "it|have it)",
        "+(refret|promise|frets|board|one more|new board|job|ready|another|some "
        "frets|neck|earlier|done|possible|week|date|have it)",
        "by {by}|(before|until|on|for) {by}|hold {by}",
        "{week=this} [by|before|till|until|for|in] [the] [end of] (this|the) week [is out]|{week=this} "
        "[by|before] this week's (out|end|over)",
        "{week=next} [by|before|till|until|for|in] [the] [end of] next week [is out]|{week=next} [by|before] "
        "next week's (out|end)",
        "{kind=refret} [one|a|another|one more|one further|an additional|an "
        "extra|additional|further|new|whole|full|complete] refret|{kind=refret} [a|another] {frets} [-] fret "
        "refret|{kind=refret} all new frets",
        "{kind=new_board} [a|another] new (board|fretboard|fingerboard)",
        "{kind=some_slots} {frets} (frets|slots|crowns) (only|alone)|{kind=some_slots} [only|just] {frets} "
        "(frets|slots|crowns)|{kind=some_slots} partial (refret|work|job) [of] [{frets}] "
        "[frets|slots]|{kind=some_slots} (some|a few) (slots|frets)",
        "{kind=new_board} new (board|fretboard|fingerboard) , {frets} frets|{kind=new_board} {frets} frets "
        "new board",
        "(has|have|with|of|and) {frets} [-] frets|{frets} [-] (fret|frets)|{frets} [-] fret "
        "(neck|guitar|board|instrument)|(of|with) {frets} frets",
        "{bound=yes} bound|{bound=yes} [with] binding", "{ends=filed} filed [ends]",
        "{ends=rounded} rounded [ends]", "{glued=yes} [get|gets|are] (glued|glue)",
        "(customer|quote|delivery|wants|want|what|day|when|could|have|can|for|could we "
        "have|by|we|do|only|earliest|next|if|take|somebody|someone|asks|asking|more|i|it|be|before|for a|at "
        "all|date|soonest|job|done|one to do it|the one|who does it|one who does it)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_work() {
  std::vector<FrameText> out = of_days();
  for (FrameText& more : of_one_job())
    out.push_back(std::move(more));
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
