// What the commands about orders, deliveries and suppliers are known by; see talk/frame.hpp.
#include "talk/frame.hpp"

namespace nutward::talk {
// NOLINTBEGIN(bugprone-suspicious-missing-comma): a long item is written over several lines.

namespace {

// From whom.
constexpr std::string_view supplier =
    "[from|by|at|with|off|to|of|for|against] [the] [supplier|firm|people at|people from|folks at|lads "
    "at|lady at|man at|house|shop called|furnisher] {supplier#} [s|wire]";
constexpr std::string_view dear =
    "[at|for|paid|with|of] [a|the|an] (paid|cost|price|costs|costing|total|invoiced|bill|want|came to|total "
    "price|invoiced price|total cost|invoice|sum) [is|was|of] {price} [altogether|in all|all told|for it|all "
    "in|for them|for the lot|for all of it]|(for|at) {price#} [altogether|in all|all told|for it|all in|for "
    "them|for the lot]|{price#}|{price} (altogether|all told|for the lot|for all of it)";
constexpr std::string_view due =
    "(should|will|ought to|supposed to) be here [by|on] "
    "{promised}|(due|promised|expected|arriving|coming|comes|come|here|delivery|delivered|arrives|arrive|"
    "says|say|said|"
    "by|reckon|reckons|ready|to come|get here|turn up|promise|promises) [by|on|it "
    "is|it's|it|is|be|here|for|in|not before|promised|expected|only|they say|about] {promised}";
constexpr std::string_view of_order =
    "(order|the order) (number|no|no .) {order}|number {order} of [the] (orders|order)|order {order!} [s]";
constexpr std::string_view how_long =
    "{each} (each|apiece|long|a piece|per stick)|(each|at|of|length) [a|is|of] {each#} [long|each|apiece|on "
    "it]|have {each} each|with {each#} on it";

std::vector<FrameText> of_deliveries() {
  return {
      {"receive",
       {"+(received|receive|delivery|delivered|arrived|came|got|bought|parcel|in|sent|from|wire's "
        "here|here|came in|paid|for|new|more|turned up|have come|shipment|landed|brought|unpacked|handed "
        "in|took in|take into stock|postman|dropped off)",
        "+([for] {count} [x] [of the] [{wire}]|[for] {count} {form=coil} [{wire}] (coils|spools|rolls) [of] "
        "[{wire}]|{count} more|[for|+] {count} [more|x] [of] [the] [{wire}] "
        "(stick|sticks|rods|lengths|pieces|bars) [of] [the] [{wire}]|{count=1} {form=coil} (a|another|one) "
        "[big|new] [{each}] [{wire}] (coil|spool|roll|reel) [of] [the] [{wire}]|{count=1} (a|another|one "
        "more) [{wire}] stick [of] [the] [{wire}]|{count=2} a couple of [{wire}] [sticks])",
        "!job",
        "!price",
        "!each",
        "!count",
        "!mass",
        "!form",
        how_long,
        "{each#} [-] [sticks|of it]|[is|of] {each} [-] sticks each",
        "{form=coil} (coil|coils|spool|spools|roll|rolls|reel)",
        "{mass} (of wire|on it|net)|mass {mass}|weighing {mass} net",
        "[weighing|weighs|of|says|at] {gross} (gross|with [the|its] spool|spool and all)|gross [of] {gross}",
        "(empty spool|spool|tare|empty) [is|weighs|of] {tare}|{tare} (tare|empty spool|for the spool)",
        "(scale reads to|scale shows|steps of|reads to) {division}",
        supplier,
        "from {supplier}",
        dear,
        "crown [height] [of|is|measured|measures|at] {crown_height} [high]",
        "{unordered=yes} (not ordered|no order|never ordered|without an order|unordered|nobody had "
        "ordered|nobody ordered|not ordered anywhere|no order for it|we had not ordered|never been ordered) "
        "[them|it|these] [here]",
        of_order,
        "(sticks|stick|delivery|parcel|with|into stock|put into stock|wire's here|wire is "
        "here|wire|in|each|apiece|of|more|after all|has|have|arrived|came|of "
        "wire|at|long|coils|coil|delivered|x|today|for|from|paid|rods|lengths|postman|van|driver|shipment|"
        "box|book|unpacked|just|turned up|took "
        "in|into|stock|brought|handed|dropped|off|door|bought|fair|spool|altogether|i "
        "mean|mean|new|a|an|the|empty|week)"}},
      {"arrived",
       {"+(order|orders|arrived|came|come|here|in|landed|parcel|delivery|delivered|received|turned up|showed "
        "up|got)",
        "!count", "!each", "!rest", "!order", of_order, supplier,
        "{count} [of] [them|the] (stick|sticks|coil|coils|of it|of them|of order|of the order|rods) "
        "[arrived|came]|[only] {count} (of [the] [order|it|them]|arrived|came|were|are|have|from|out)|sent "
        "{count}|[a] partial delivery of {count}|received {count}",
        "[the] (rest|others|remaining|remainder|balance) [of it|ones] "
        "[is|are|comes|come|coming|being|follows|due|to come|expected|on|by|will|be|here] [to "
        "come|coming|due|expected|come|follow|be here|here] [on|by|the] {rest}",
        "{was_all=yes} (that was all|that was it|[and] (the rest|rest|the other {*length}|the others|the "
        "other 4) (is not|isn't|won't|will not|are not) [be] (come|coming)|nothing more is coming|says that "
        "was all [, the rest is not coming])",
        how_long, dear, "crown [height] [of|is|measured|measures|at] {crown_height} [high]",
        "(order|parcel|delivery|everything was in it|everything in it|all of it|all there|every "
        "stick|whole|in full|complete|it is all there|stick|sticks|that|at|wire|that we'd on|on|we had "
        "ordered|we ordered|book in|up|in|came "
        "in|the|and|but|of|showed|turned|against|from|landed|everything|was|there|lot|box|in the "
        "box|typical|has come|is here|van|postman|driver|today|just)"}},
  };
}

std::vector<FrameText> of_orders() {
  return {
      {"ordered",
       {"+(ordered|order|on order|orders|placed|asked|phoned|telephoned|requested|purchase "
        "order|reordered|rang|bought)",
        "!promised", "!price", "!each", "!count", "!mass", "!form",
        "[for|another] {count} [x] [of] [the] {wire}|[for|another] {count} [more] [of] [the] [{wire}] "
        "(stick|sticks|rods|lengths|pieces|bars) [of] [the] [{wire}]|{count=1} {form=coil} (a|another|one) "
        "[new] [{each}] [{wire}] (coil|roll|spool|reel) [of] [the] [{wire}]|{count} {form=coil} [{wire}] "
        "(coils|rolls|spools|coil|roll) [of] [the] [{wire}]|[for] {count} more",
        "{form=coil} (coil|coils|roll|rolls)", how_long, "{each#}",
        "{mass#}|[of|at|mass|wire mass] {mass} (each|of wire|a coil|coil|gram)", due, "here {promised}", dear,
        supplier, "(from|with|at) {supplier}",
        "[to|on|add to] order (number|no) {order}|(to|on) order {order}|add to order {order}",
        "(sticks|stick|order|ordered|placed|an order|in|put in|we|have|from|off|gone and|finally|got "
        "through|on the phone|wire|more|rods|rod|lengths|them|they'll|they|say|says|she|he|will "
        "send|send|sent|us|purchase|record|been|on|with "
        "it|and|so|with|for|of|also|come|comes|delivery|at|just|phoned|firm|asked|telephoned|another|coil|"
        "each|want|want it|mate)"}},
      {"order-promised",
       {"+(order|orders|coming|comes|come|delayed|postponed|moved|late|due|promised|delivery|arrival|date|"
        "early|rang|says|pushed|put off|expected|ordered|delivered)",
        "!at", "!order", of_order, supplier,
        "(to|on|until|till|for|by|before|comes|now|promised|says|not before|say) [be] [here] [the|on|for] "
        "{promised} [now|instead]",
        "{promised} [now|instead]",
        "(order|arrival|delivery|date|delivery "
        "date|new|wire|rang|ring|phoned|called|told|said|saying|says|say|late|early|will be|should "
        "be|here|is to come|to "
        "come|coming|comes|come|only|now|instead|already|delayed|postponed|moved|pushed|put|set|put "
        "off|back|off|they've|they're|they|us|we are waiting for|we're waiting for|waiting "
        "for|promised|expected|revised|change|changed|informed|we have been|delivered|won't be|with "
        "us|before|on|of|that|good news|news|it's|is|been|on "
        "order|ordered|reckon|going|to|for|the|our|van|one|people|again|is going to be here|be)"}},
      {"cancel-order",
       {"+(cancel|cancelled|canceled|called off|call off|withdraw|withdrawn|stop|scratch|drop|won't come|not "
        "coming|will not come|won't take|do not want|off|no more)",
        "!order", of_order, supplier, "~{why}", "because [of] {why}", "owing to {why}", "due to {why}",
        "since {why}", "as {why}",
        "(cancel|cancelled|canceled|called|call|off|what|we|ordered|order|orders|open|outstanding|withdraw|"
        "withdrawn|wire|won't|will not|won't take|not coming|come|coming|any more|anymore|any "
        "longer|any|more|told|tell|rest|rest of the|rest of|the rest of|is not|isn't|do not want|don't "
        "want|want|stop|hereby|that|on|for|of|the|an|please|at|from|with|it|to|not|never)"}},
  };
}

std::vector<FrameText> of_suppliers() {
  // Their terms, of a new one and of one that the shop knows.
  static constexpr std::string_view packs =
      "(pack|packs|packets|boxes|bundles|sets) [of|with|hold|are|is|to|in it] {pack} [sticks|coils|in it|in "
      "them|each]|{pack} (to|in) [a|the] (pack|box|packet|bundle)|[in] (packs|packets|bundles|boxes) of "
      "{pack} [sticks|coils]|{pack} a (pack|box|packet)|{pack} per pack|still packs of {pack}|sell boxes "
      "with {pack} [in it]";
  static constexpr std::string_view pack_length =
      "[in] (packs|lengths|pieces|bits) of {pack_length#}|{pack_length#} (lengths|packs)|by [the] "
      "{pack_length#}|sold in {pack_length#} [lengths]";
  static constexpr std::string_view pack_mass =
      "[in] packs of {pack_mass} [packs]|by [the] {pack_mass}|{pack_mass} packs|{pack_mass=1 kg} by the kilo";
  static constexpr std::string_view minimum =
      "(minimum|min|at least|no less than|not less than|smallest order|least|not under|minimum order) "
      "[order] [of|is|at|from|now] [now] {minimum} [sticks|coils|stick|coil] [an order|in an order|each "
      "time|at a time|to an order|at once]|{minimum} (sticks|coils) (minimum|at least|at the least|or more)";
  static constexpr std::string_view minimum_length =
      "(minimum|min|at least|no less than|not less than|smallest order|order|minimum order) [order] "
      "[of|is|from|now] [now] {minimum_length#} [an order|in an order|each time|at a time|at the least]";
  static constexpr std::string_view minimum_mass =
      "(minimum|min|at least|no less than|not less than|smallest order|order|minimum order) [order] "
      "[of|is|from|now] [now] {minimum_mass} [an order|in an order|each time|at a time|at the least]";
  static constexpr std::string_view days =
      "[lead|lead time|delivery|takes|take|need|needs|in|within|ships in|deliver in] [time] [of|is] [now] "
      "{lead_days} [working] (days|day) [now|to deliver|from order to door|wait|'s wait]";
  static constexpr std::string_view weeks =
      "[lead|lead time|delivery|takes|take|need|needs|in|within|deliver in] [time] [of|is] [now] "
      "{lead_weeks} (weeks|week) [s] [now|to deliver|from order to door|wait]|{lead_weeks=1} a week [s] "
      "[from order to door|wait]|{lead_weeks=2} [in] a fortnight";
  const std::string_view talk =
      "(supplier|suppliers|list|the supplier list|list of "
      "suppliers|new|add|wire|they|deliver|delivers|ship|ships|sell|sells|sold|only|want|from now "
      "on|now|too|also|as|with|and|who|which|that|lead|time|order|takes|take|takes them|take "
      "them|need|needs|have to|you|a|to|we|can|buy|get|from|for|us|one of "
      "our|our|in|at|of|is|there|register|enter|create|account|goods|make|put|on|fair|shop|where|somebody|"
      "house|found|men|man|nice|sweet|still|quicker|slower|got|off|people|lengths|it's|it|he|she|gives|an|"
      "until|here)";
  return {
      {"define-supplier",
       {"+(supplier|suppliers|buy from|order from|furnisher|wire from)",
        "+([new] supplier [called|named|is|to add] [:] {name}|(called|named|name is|the name) {name}|[new] "
        "[called] {name} [is] [as] (a|our|one of our) (supplier|suppliers)|add {name} [as]|(buy|order|get) "
        "[wire] (from|off) {name}|put {name} on [the] [supplier] (list|suppliers)|new supplier , "
        "{name}|account for {name}|(register|enter|make|create|take on|met|is) {name})",
        packs, pack_length, pack_mass, minimum, minimum_length, minimum_mass, days, weeks, talk}},
      {"change-supplier",
       {"+(called|rename|named|quicker|slower|sells|takes|name|terms|lead time|change)", supplier, packs,
        pack_length, pack_mass, minimum, minimum_length, minimum_mass, days, weeks,
        "(called|named|name|rename to|to|rename as|is now|goes by) [just] {name}|under the name {name}",
        "{any_pack=yes} (any quantity|any amount|any number|any length|packs do not exist|no packs)",
        "{any_amount=yes} (no minimum|as little as we like)", talk,
        "(change|changed|changing|rename|revise|terms|called|name|any more|anymore|lindwurm|from them|packs "
        "do not exist anymore|after|set|just|now|smallest|each time|amend|accordingly|trades|you'd "
        "get|time|s)"}},
      {"drop-supplier",
       {"+(drop|remove|removed|delete|supplier|suppliers|list|forget|dealings|strike|business|books|finished|"
        "through with|do not buy|do not order|never buy|no longer order|deleted|closed)",
        supplier,
        "(drop|remove|removed|delete|deleted|supplier|suppliers|list|list of suppliers|supplier list|off|off "
        "the list|take them|take|them|away|out|from|as|the|of|forget|any more|anymore|any longer|no more|no "
        "longer|dealings|strike|strike them|business|gone out of business|closed|closed down|doors|its|for "
        "always|for good|books|finished|we're|with|through|through with|do not want|do not buy|don't "
        "buy|never buy|never order|don't order|do not order|buy|isn't|is not|not|a supplier of "
        "ours|ours|among|that|wire|gone|comes|come|can come|dealing|pull them off|pull 'em "
        "off|pull|'em|em|need of|we have no more need of|have no need of|need|register|must be|is to "
        "be|relationship|having|ended|our|should|firm|furnisher|please|now|in|to|they do not need to be "
        "in|sellers|list of sellers|kindly|shop|called|we|dead|retired|stopped)"}},
  };
}

} // namespace

std::vector<FrameText> frames_of_orders() {
  std::vector<FrameText> out = of_deliveries();
  for (auto* more : {of_orders, of_suppliers})
    for (FrameText& text : more())
      out.push_back(std::move(text));
  return out;
}

// NOLINTEND(bugprone-suspicious-missing-comma)
} // namespace nutward::talk
