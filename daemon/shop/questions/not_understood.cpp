// Sentences that nobody understood: what people wanted, for who leads the shop.
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

constexpr std::size_t most_shown = 1000;

std::string name_of(std::int64_t actor, const View& view) {
  const auto person = view.house().actor(actor);
  return person ? person->name : "somebody";
}

bool kept(const View& view) {
  return view.house().setting("keep_not_understood").value_or("yes") == "yes";
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const auto since = args.opt<Day>("since");
  const Instant from = since ? moment.zone.instant(*since, 0) : Instant{0};
  const auto all = view.misses().since(from, most_shown);
  std::int64_t times = 0;
  std::vector<Value> rows;
  Answer out;
  if (!all.empty()) out.table = Table{{"when", "who", "times", "sentence"}, {}};
  for (const Missed& m : all) {
    const std::string who = name_of(m.actor, view);
    times += m.times;
    out.table->rows.push_back({moment.zone.human(m.last), who, std::to_string(m.times), m.text});
    rows.push_back(record({{"said", m.text},
                           {"person", ref(Thing::actor, m.actor)},
                           {"who", who},
                           {"at", m.last},
                           {"first", m.first},
                           {"times", m.times}}));
  }
  const std::string span = since ? fmt::format(" since {}", hours::human(*since)) : "";
  if (all.empty())
    out.text = fmt::format("No sentence that nobody understood is on record{}.", span);
  else
    out.text =
        fmt::format("{} not understood{}, {} in all. The newest, {}, by {}: \"{}\".",
                    plural(std::ssize(all), "sentence was", "sentences were"), span, plural(times, "time"),
                    moment.zone.human(all.front().last), name_of(all.front().actor, view), all.front().text);
  out.reason =
      kept(view)
          ? "Alike but for numbers they count as one. They stay in the shop; 'set keep_not_understood to "
            "no' keeps no more, 'forget what was not understood' deletes them."
          : "None is kept now: 'set keep_not_understood to yes' changes that.";
  out.data = record({{"kept", kept(view)}, {"sentences", list(std::move(rows))}});
  return out;
}

} // namespace

extern const Question not_understood;
const Question not_understood{
    {"not-understood",
     "Which sentences nobody understood, so that it is seen what people wanted.",
     {{"since", Kind::day, false, false, "only those said on that day or later"}},
     {"(what|which sentences|which) (was|were|did you) not (understood|understand) [since {since}]",
      "[show|list] [me] [the] sentences [that were] not understood [since {since}]",
      "what (was|have people|did people|did anybody) (asked|ask|want|wanted|say|said) that (nobody|you) "
      "(understood|did "
      "not understand) [since {since}]",
      "what did nobody understand [since {since}]", "what have you not understood [since {since}]"},
     {"what was not understood", "what was not understood since monday",
      "which sentences did you not understand"},
     Role::lead,
     {{"kept", Kind::yes, "whether such sentences are kept"},
      gives::records("sentences", "the newest first",
                     {{"said", Kind::words, "as it was said last, at most 200 bytes"},
                      {"person", Kind::person, "who said it last"},
                      {"who", Kind::name, "what they are called"},
                      {"at", Kind::at, "when that was"},
                      {"first", Kind::at, "when one like it was said first"},
                      {"times", Kind::count, "how often one like it was said"}})}},
    &ask};

} // namespace nutward::shop::question_rows
