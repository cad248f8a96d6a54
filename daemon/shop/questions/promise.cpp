// The earliest day that can be promised for one more job, whether a day can be kept, and what would have to
// give.
#include "agenda/deadline.hpp"
#include "shop/promising.hpp"

namespace nutward::shop::question_rows {

namespace {

using std::chrono::seconds;

constexpr std::int64_t usual_frets = 22;

Job like_of(const Args& args) {
  Job out;
  const std::string kind = args.has("kind") ? args.text("kind") : "refret";
  out.kind = kind == "some_slots"  ? JobKind::some_slots
             : kind == "new_board" ? JobKind::new_board
                                   : JobKind::refret;
  const std::int64_t frets =
      args.or_else<std::int64_t>("frets", out.kind == JobKind::some_slots ? 5 : usual_frets);
  for (int n = 1; n <= frets; ++n)
    out.slots.push_back(n);
  out.board.ends = args.text("ends") == "filed" ? board::EndStyle::filed : board::EndStyle::rounded;
  if (args.yes("bound")) out.board.binding = units::from_mm(1.5);
  if (args.yes("glued")) out.glue = "glue";
  out.builder = args.opt_id("person");
  return out;
}

std::string words_of(const Job& job) {
  const auto n = std::ssize(job.slots);
  switch (job.kind) {
  case JobKind::some_slots:
    return fmt::format("a job of {}", plural(n, "slot"));
  case JobKind::new_board:
    return fmt::format("a new board of {}", plural(n, "fret"));
  case JobKind::refret:
    break;
  }
  return fmt::format("a refret of {}", plural(n, "fret"));
}

// The day on which it is over: an end at midnight belongs to the day before.
Day day_of(Instant t, const Moment& moment) {
  return moment.zone.local(t - seconds{1}).day;
}
std::string ready_words(Instant t, const Moment& moment) {
  return fmt::format("{} {}", day_words(day_of(t, moment), moment), part_of_day(t - seconds{1}, moment));
}

Instant instant_of(Day day, const Moment& moment) {
  const Instant out =
      agenda::due_instant(day, moment.calendar, moment.zone).value_or(moment.zone.instant(day, 86400));
  if (out <= moment.now) {
    throw Problem(Fault::value, fmt::format("{} is over already.", hours::human(day)), "by_on",
                  "Give a day still to come.");
  }
  if (day > moment.zone.local(moment.now).day + agenda_days) {
    throw Problem(Fault::value, fmt::format("{} is further ahead than is planned.", hours::human(day)),
                  "by_on", fmt::format("Give a day within {} days.", agenda_days));
  }
  return out;
}

// " The shop is closed on Sun 29 Nov: the last closing before it counts."
std::string closed_words(Day day, Instant by, const Moment& moment) {
  if (day_of(by, moment) == day) return "";
  return fmt::format(" The shop is closed {}{}: the last closing before it counts.",
                     day <= moment.zone.local(moment.now).day + 1 ? "" : "on ", day_words(day, moment));
}

std::string gives_words(const std::vector<agenda::Later>& later, const AgendaPlan& agenda, const View& view) {
  std::vector<std::string> all;
  for (const agenda::Later& l : later) {
    if (all.size() == 4) break;
    const auto job = view.jobs().find(agenda.what.jobs[l.job].job);
    all.push_back(fmt::format("{} would be later by {}", job ? named(*job) : "something", span_words(l.by)));
  }
  if (all.empty()) return "others would be moved";
  if (later.size() > all.size()) all.push_back(fmt::format("and {} more", later.size() - all.size()));
  return fmt::format("{}", fmt::join(all, ", "));
}

// Why it has no place at all.
void refuse_no_place(Answer& out, const Wish& wish, const View& view, const Moment& moment) {
  out.text = sentence(fmt::format("{} cannot be planned at all.", wish.words));
  for (const agenda::Task& task : wish.extra.tasks) {
    for (std::size_t n = 0; n < task.needs.size(); ++n) {
      if (!task.needs[n].empty()) continue;
      out.reason = n == 0 ? "A stage of it needs a machine that is not there: ask 'machines' and 'stages'."
                          : "There is nobody to do it: say who works here ('new person Ines').";
      return;
    }
  }
  const auto troubles = troubles_of(wish.agenda, view, moment);
  const auto closed = std::find_if(troubles.begin(), troubles.end(),
                                   [](const AgendaTrouble& t) { return t.code == "no_open_hours"; });
  if (closed != troubles.end())
    out.reason = closed->text + " " + closed->would_do;
  else if (!hours::next_open(moment.calendar, moment.zone, moment.now))
    out.reason = "No opening hours are known. Say them: 'open mon-fri 9:00-12:30, 13:30-18:00'.";
  else
    out.reason =
        fmt::format("There is no room for it within {} days: ask 'agenda' and 'machines'.", agenda_days);
}

void say_earliest(Answer& out, const Wish& wish, const Promised& p, const Moment& moment) {
  out.text = sentence(fmt::format("{} can be promised for {}: ready {}, and nobody else's day moves.",
                                  wish.words, day_words(day_of(p.free.job.finish, moment), moment),
                                  ready_words(p.free.job.finish, moment)));
}

void say_whether(Answer& out, const Wish& wish, const Promised& p, Instant by, const std::string& closed,
                 const View& view, const Moment& moment) {
  const std::string day = day_words(day_of(by, moment), moment);
  const bool kept = (p.free.possible && p.free.job.finish <= by) ||
                    (p.price && p.price->possible && p.price->later.empty());
  if (kept) {
    const Instant ready =
        p.free.possible && p.free.job.finish <= by ? p.free.job.finish : p.price->job.finish;
    out.text = fmt::format("Yes: {} can be ready by {} ({}), and nobody else's day moves.{}", wish.words, day,
                           ready_words(ready, moment), closed);
    return;
  }
  out.text = p.price->possible ? fmt::format("Not without giving something up: for {} by {}, {}.", wish.words,
                                             day, gives_words(p.price->later, wish.agenda, view))
             : p.free.possible && p.free.earliest <= by
                 ? fmt::format("No: no plan was found that has {} ready by {}.", wish.words, day)
                 : fmt::format("No: {} cannot be ready by {}, whatever else waits.", wish.words, day);
  if (p.overtime_h)
    out.text +=
        fmt::format(" Open {} longer each day until then, and it can.", plural(*p.overtime_h, "hour"));
  if (p.free.possible)
    out.text += fmt::format(" The first day that keeps every promise is {}.",
                            day_words(day_of(p.free.job.finish, moment), moment));
  out.text += closed;
}

Value data_of(const Wish& wish, const Promised& p, std::optional<Instant> by) {
  const bool kept = p.free.possible && (!by || p.free.job.finish <= *by);
  const bool also = p.price && p.price->possible && p.price->later.empty();
  std::vector<Value> later;
  if (p.price && p.price->possible) {
    later.reserve(p.price->later.size());
    for (const agenda::Later& l : p.price->later)
      later.push_back(record({{"job", ref(Thing::job, wish.agenda.what.jobs[l.job].job)},
                              {"finish", l.finish},
                              {"later_minutes", l.by.count() / 60}}));
  }
  std::optional<Instant> ready, alone;
  if (p.free.possible) ready = p.free.job.finish, alone = p.free.earliest;
  return record({{"possible", kept || also},
                 {"ready_at", opt(ready)},
                 {"alone_at", opt(alone)},
                 {"by_at", opt(by)},
                 {"proved", p.free.proved},
                 {"overtime_hours", p.overtime_h ? Value{std::int64_t{*p.overtime_h}} : Value{}},
                 {"would_give", list(std::move(later))}});
}

std::string why_words(const Wish& wish, const Promised& p, const Moment& moment) {
  if (!p.free.possible) return "";
  std::string out = p.free.job.finish <= p.free.earliest
                        ? "Nothing else could bring it forward."
                        : fmt::format("If nothing else were to be done it would be ready {}.",
                                      ready_words(p.free.earliest, moment));
  if (p.free.proved && p.free.job.finish > p.free.earliest)
    out += " Proved: no plan that keeps the others has it earlier.";
  if (!wish.job) {
    const auto ymd = day_of(p.free.job.finish, moment).ymd();
    out += fmt::format(
        " It holds nothing: 'new job …, due {:04}-{:02}-{:02}' takes it in. Wire is not looked at.",
        static_cast<int>(ymd.year()), static_cast<unsigned>(ymd.month()), static_cast<unsigned>(ymd.day()));
  }
  return out;
}

void offer(Answer& out, const Wish& wish, const Promised& p, std::optional<Instant> by, const View& view,
           const Moment& moment) {
  if (!wish.job) return;
  out.about.args = {{"job", ref(Thing::job, wish.job->id)}};
  if (!p.free.possible) return;
  const bool kept = by && p.free.job.finish <= *by;
  const Day day = day_of(kept ? *by : p.free.job.finish, moment);
  const Ref job{Thing::job, wish.job->id};
  out.choices.push_back({fmt::format("promise job {} for {}", wish.job->id, hours::human(day)),
                         Call{"set-due", {{"job", job}, {"due", day}}},
                         {seen(job, view)}});
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  std::optional<Instant> by;
  const Day today = moment.zone.local(moment.now).day;
  std::optional<Day> day = args.opt<Day>("by");
  if (!day && args.has("week")) day = today + (6 - today.weekday()) + (args.text("week") == "next" ? 7 : 0);
  if (day) by = instant_of(*day, moment);
  Answer out;
  Wish wish;
  if (args.has("job")) {
    auto of_it = wish_for(job_of(args, view), view, moment);
    if (!of_it) {
      throw Problem(Fault::state, fmt::format("Nothing is left to do for {}.", named(job_of(args, view))),
                    "job", "It can be handed over.");
    }
    wish = std::move(*of_it);
  } else {
    const Job like = like_of(args);
    wish = wish_for(like, words_of(like), view, moment);
  }
  const Promised p = promised(wish, by, view, moment);
  if (!p.free.possible && !(p.price && p.price->possible))
    refuse_no_place(out, wish, view, moment);
  else if (by)
    say_whether(out, wish, p, *by, args.has("by") ? closed_words(*day, *by, moment) : "", view, moment);
  else if (p.free.possible)
    say_earliest(out, wish, p, moment);
  else
    out.text =
        fmt::format("No day keeps every promise: {} could be ready {}, but {}.", wish.words,
                    ready_words(p.price->job.finish, moment), gives_words(p.price->later, wish.agenda, view));
  if (out.reason.empty()) out.reason = why_words(wish, p, moment);
  out.data = data_of(wish, p, by);
  offer(out, wish, p, by, view, moment);
  return out;
}

} // namespace

namespace {

std::vector<std::string_view> phrases() {
  static const std::string when = "(when|what day|which day|how soon|how early|by when)",
                           can = " (can|could|would|will) ", who = "(i|we|you|the shop)";
  static const std::string ends = "(with filed ends {ends=filed}|with rounded ends {ends=rounded}|with "
                                  "(glued|glue) {glued=yes}|glued {glued=yes})";
  static const std::string a = "(a|another|one more|the next|some)";
  static const std::string thing = "(" + a + " [new] [whole] (refret {kind=refret}|job) [" + ends + "]|" + a +
                                   " [new] [whole] (refret {kind=refret}|job) (of|with) {frets} frets [" +
                                   ends + "]|" + a + " filed refret {kind=refret} {ends=filed}|" + a +
                                   " glued refret {kind=refret} {glued=yes}|" + a +
                                   " [new] bound (refret {kind=refret}|board) {bound=yes}|" + a +
                                   " new board {kind=new_board} [(of|with) {frets} frets] [" + ends +
                                   "]|{frets} (slots|crowns) "
                                   "{kind=some_slots}|" +
                                   a + " (slots|crowns) {kind=some_slots}|{job})";
  static const std::string by = " (for|by|on|before|until) {by}",
                           maybe_by = " [(for|by|on|before|until) {by}]";
  static const std::vector<std::string> made{
      when + can + who + " promise " + thing,
      when + can + who + " (have|do|finish|get|take|take in|take on|fit in|start) " + thing +
          " [ready|done|finished]",
      when + can + "{person} (do|have|finish|take|take on) " + thing + " [ready|done|finished]",
      when + " (can|could) " + thing + " be (ready|done|finished)",
      when + " (will|would) (" + a + " [new] [whole] (refret {kind=refret}|job) [" + ends + "]|" + a +
          " new board {kind=new_board}) be (ready|done|finished)",
      "can " + who + " promise [for|by|on] {by} [for " + thing + "]",
      "can " + who + " promise",
      "can " + who + " promise [" + thing +
          "] [for|in|by the end of] (this week {week=this}|next week {week=next})",
      "(can|could) " + who + " (have|do|finish|get|take in|take on|take|fit in|squeeze in) " + thing +
          " [in] [ready|done|finished] [for|in|by the end of] (this week {week=this}|next week {week=next})",
      "can " + who + " promise " + thing + maybe_by,
      "(can|could) " + who + " (have|do|finish|get|take in|take on|take|fit in|squeeze in) " + thing +
          " [in] [ready|done|finished]" + maybe_by,
      "(can|could) {person} (have|do|finish|take|take on) " + thing + " [ready|done|finished]" + maybe_by,
      "(can|could|will) " + thing + " be (ready|done|finished) [by|on|for] {by}",
      "is {by} (possible|realistic|feasible|doable) [for " + thing + "]",
      "is there (room|time) for " + thing + maybe_by,
      "what (if|happens if) " + who + " promise [for|by|on] {by} [for " + thing + "]",
      "what (if|happens if) " + who + " promise " + thing + by,
      "what (would|must|has to|will) [have to] (give|move|wait|be moved) (for|to have|if we promise) " +
          thing + " [ready|done]" + by,
      "what (would|must|has to|will) [have to] (give|move|wait|be moved) (for|by) {by}",
      "what would (it take|it need|we need) to have " + thing + " [ready|done]" + by,
      "[(what|which|when) is] [the] (earliest|first|soonest|next) [free|possible] [day] (i|we) can promise "
      "[" +
          thing + "]",
      "[(what|which|when) is] [the] (earliest|first|soonest|next) [free|possible] (day|date) [for] " + thing,
      "[the] earliest (refret|day) [for]",
      "[the] earliest new board {kind=new_board}",
      "(could|can) a refret {kind=refret} of {frets} frets be (ready|done) [by|on] {by}"};
  return {made.begin(), made.end()};
}

} // namespace

extern const Question promise_question;
const Question promise_question{
    {"promise",
     ("The earliest day for one more job that keeps every promise; or whether a day can be kept, and what "
      "gives."),
     {{"kind",
       Kind::one_of,
       false,
       false,
       "refret where not said",
       {},
       {"refret", "some_slots", "new_board"}},
      {"frets", Kind::count, false, false, "how many; 22, and 5 of some slots", {1, 48}},
      {"by", Kind::day, false, false, "the day that is asked for"},
      {"week", Kind::one_of, false, false, "by the end of this one, or of the next", {}, {"this", "next"}},
      takes::optional(takes::job),
      {"ends", Kind::one_of, false, false, "rounded where not said", {}, {"rounded", "filed"}},
      {"bound", Kind::yes, false, false, "a bound board: tangs are nipped"},
      {"glued", Kind::yes, false, false, "the frets are glued"},
      {"person", Kind::person, false, false, "who is to do it"}},
     phrases(),
     {"promise", "when can I promise another refret", "can we promise a refret by 2027-01-15",
      "when can I promise job 9"},
     Role::look,
     {{"possible", Kind::yes, "whether it keeps that day, or any, without making others later"},
      {"ready", Kind::at, "when it would be ready, keeping every promise", Often::or_null},
      {"alone", Kind::at, "when it would be if nothing else were to be done", Often::or_null},
      {"by", Kind::at, "what was asked for", Often::or_null},
      {"proved", Kind::yes, "whether it cannot be ready earlier"},
      {"overtime_hours", Kind::count, "longer each day until then, and it can be kept", Often::or_null},
      gives::records("would_give", "the jobs that would be later for it, as little as was found",
                     {gives::job,
                      {"finish", Kind::at, "when it would be ready then"},
                      {"later_minutes", Kind::count, "than promised, or than it is anyway"}})}},
    &ask};

} // namespace nutward::shop::question_rows
