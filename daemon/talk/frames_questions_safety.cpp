// What the question about work that can hurt is known by.
#include "talk/frames_questions.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

std::vector<FrameText> frames_of_safety() {
  return {
      {"safety",
       {"+(safe|safely|safety (rules|advice|notes|at|with|when|in|for|on)|danger|dangers|dangerous|hazard|"
        "hazards|hazardous|harmful|toxic|poisonous|hurt|(should|must|do|to|can|may) [i|we] wear|"
        "mask|masks|gloves|goggles|glasses|respirator|protection|ear defenders|lungs|breathe|sleeves)",
        "{work=press} (press|pressing|presses|ram|arbor press)|{work=nip} "
        "(nip|nipping|nippers|cut|cutting|cutters|clip|clipping)|{work=hammer} "
        "(hammer|hammering|tap|tapping|hammered)|{work=sand} "
        "(sand|sanding|sander|sanders|belt|spindle|grind|grinding|file|filing|bevel|bevelling|belt "
        "sander|spindle sander)|{work=dust} (dust|dusts|metal dust|wood "
        "dust|ebony|rosewood|steel)|{work=glue} "
        "(glue|glueing|gluing|superglue|ca|epoxy|fumes)|{work=iron} (iron|soldering iron|heat|heating)",
        "(is|it|to|without|a|any|some|i|we|need|do|should|must|have|what|when|at|for|the|while|and|or|frets|"
        "wire|ends|fret|rules|with|use|using|work|working|eye|safe|are|on|in|of|bad|me|my|can|about|safety|"
        "mask|gloves|goggles|dust|near|hair|loose|long|eyes|ears|hands)"}},
  };
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
