// What the commands about the stages of a job are known by: begun, broken off, finished; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

// Work that goes on.
#define DOING                                                                                                \
  "{stage=pull} (pulling|pull|taking out|getting out) [out] [the] [old] [frets]|{stage=true} "               \
  "(truing|trueing|true|true up|truing up)|{stage=slots} (cleaning|clean|clearing|deepening) "               \
  "[the|its|their|out] "                                                                                     \
  "[slots]|{stage=slots} slots|{stage=bend} (bending|bend)|{stage=cut} (cutting|cut)|{stage=dress} "         \
  "(dressing|dress)|{stage=nip} (nipping|nip)|{stage=seat} (seating|seat|hammering|hammer)|{stage=press} "   \
  "(pressing|press)|{stage=level} (levelling|level|leveling)|{stage=crown} (crowning|crown)|{stage=file} "   \
  "(filing|file|bevelling|beveling|bevel)|{stage=polish} (polishing|polish)|{stage=recheck} "                \
  "(rechecking|recheck)|{stage=corners} [rounding|doing|round] [the] corners"

std::vector<FrameText> of_stages() {
  return {
      {"finished",
       {"+(done|finished|true|trued|cleaned|dressed|is "
        "true|complete|completed|ready|polished|seated|pulled|bent|crowned|levelled|filed|cut|all "
        "done|through "
        "with|over|wrapped up|terminated|brought to the end|corners|out)",
        "(number|numbers) {job!}",
        "{stage=pull} (pull|pulling|pulled [the|all] [the] [old] frets|pulling [is] [done]|[all] [the] [old] "
        "frets [are] "
        "[all] (out|pulled)|old frets|taking [them|the frets] out|took [all] [the] [old] frets)",
        "{stage=true} (true|trued|truing|board is true|board true|trueing|trued up)",
        "{stage=slots} ([all] [the|its] (slots|grooves) [are|is] [all] [now] "
        "[cleaned|clean|cleared|done|finished] [out] [and] [deep enough]|"
        "cleaned [all] [the] slots|cleaning [the] slots|slots cleaned)",
        "{stage=bend} (bend|bending|bent)",
        "{stage=cut} (cutting|cut [all] [the] frets|[all] [the] frets [are] [all] cut|all cut)",
        "{stage=dress} (dress|dressing|[all] [the] ends [are] [all] dressed|dressed [all] [the] [ends]|ends "
        "dressed)",
        "{stage=nip} (nip|nipping|nipped|tangs nipped|nipped [all] [the] tangs)",
        "{stage=seat} (seat|seating|[all] [frets] [are] seated|hammered in|hammering|seated [all] [the] "
        "frets)",
        "{stage=level} (levelling [is] [done]|all levelled|levelling|level stage)",
        "{stage=crown} (crown|crowning|crowned [all] [the] [frets])",
        "{stage=file} (filing [the] ends|ends filed|filed [all] [the] ends|filing|bevelling|bevelled)",
        "{stage=polish} (polish|polishing|polished [all] [the] [frets])",
        "{stage=corners} [rounded|rounding|did|done] [all] [the] corners [are] [rounded|done]",
        "{stage=done} (done|can go home|ready to go|finished|goes home|ready to go home|completely done|can "
        "be picked up|ready for collection|complete|complete in every respect|may be closed|can be "
        "closed|ready to be picked up|ready for pickup)",
        "between {started!} and {at!}|from {started} (to|until|till) {at}|having (commenced|begun|started) "
        "at {started!}|(started|begun|began) at {started!}",
        "by {person}",
        "(old frets|board|board's|on|is|all|ends|it|the|old|cleaned|finished|done with|with|of|work|stage|it "
        "can go home|can|go|home|ready|complete|completed|now|to be picked up|are|was|has been|have "
        "been|got|got finished|all finished with them|"
        "i am done with it|i am done with them|done|is done|that is done|over with|terminated|brought to the "
        "end|brought to an end|wrapped "
        "up|through with|wire|frets|tangs|crowns|job|made|clean|grand|just|for|whole|them|out|in every "
        "respect|every|completely|all the)"}},
      {"start",
       {"+(start|started|starting|i'm|beginning|begin|began|back at|as we speak|getting on with|working "
        "on|resumed|resuming|carrying on with|going on with|commenced|on with|underway|under "
        "way|begun|is|are|tackling)",
        "(number|numbers) {job!}", "+(" DOING ")",
        "(start|started|starting|beginning|begin|began|begun|commenced|back at|back on|on it|on with|carry "
        "on with|carrying on with|going on "
        "with|go on with|getting on with|resumed|resuming|working on|work on|underway|under way|as we "
        "speak|tackling|onto|has "
        "commenced|has begun|has started|picked up again|taken up|took up|fixing to|about)",
        "(board|of|on|frets|slots|old|starting "
        "on|the|to|now|with|ends|working|just|work|i|am|cleaning|it|wire|crowns|tangs|"
        "job|next stage|already|again|is|are|has|the next stage|up)"}},
      {"stop",
       {"+(stop|stopped|stopping|broke off|break|leave|left|knocking off|calling it a day|that's it|half "
        "done|paused|pausing|pause|had to leave|off for today|done for today|knocked off|interrupted|lunch|"
        "suspended|quit|downed tools|put down|interrupting|break off|halfway)",
        "(number|numbers) {job!}", DOING,
        "(stop|stopped|stopping|broke off|break off|had to break off|taking a break|having a break|take a "
        "break|paused|pausing|interrupted|interrupting|"
        "suspended|quit|knocked off|knocking off|calling it a day|downed tools|put down|put it "
        "down|left|leave it|leaving it|had to leave|half done|halfway through|"
        "half way through|half finished|unfinished|not finished|not done|not near done|is not finished|it is "
        "not finished|is not done|it is not done|prior to completion|in the middle|in the middle of|will go "
        "on "
        "later|will go on tomorrow|go on later|a part remains to do|a part remains|for now|for today|for the "
        "time being|for the day)",
        "(had to leave|leave|that's it|for now|for today|today|working|work|on|phone|half done|had "
        "to|stopped|off|break|i've|lunch|time|there|unfinished|here|the|a|tea|for|job|with|i'm|it|day|frets|"
        "slots|"
        "from|just|down|is|was|my hand hurts|the phone rings|phone rings|because|and|at)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_stages() {
  return of_stages();
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
