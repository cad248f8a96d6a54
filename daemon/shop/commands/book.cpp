// "I have the press from 2 to 3": booked by hand, and given back.
#include "shop/bookings.hpp"
#include "shop/days_asked.hpp"
#include "shop/people.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

struct Wish {
  Machine machine;
  Booking booking;
};

// "From 2 to 3", "at 2 for an hour", "in the morning": of a part of a day what is still to come and open.
Stretch wished_stretch(const Args& args, Day day, const Moment& moment) {
  if (args.has("hours")) return shop::stretch_of(day, args.text("hours"), moment.calendar, moment.zone);
  if (args.has("begins")) {
    Instant from = args.get<Instant>("begins");
    if (args.has("day")) from = moment.zone.instant(day, moment.zone.local(from).s);
    const auto minutes =
        args.or_else<std::int64_t>("minutes", 60 * args.or_else<std::int64_t>("for_hours", 1));
    return {from, from + std::chrono::minutes{minutes}};
  }
  if (args.has("for_hours") || args.has("minutes")) {
    const auto minutes =
        args.or_else<std::int64_t>("minutes", 60 * args.or_else<std::int64_t>("for_hours", 1));
    return {moment.now, moment.now + std::chrono::minutes{minutes}};
  }
  if (!args.has("part"))
    throw Problem(Fault::value, "From when to when?", "hours", "Give one stretch, such as 10:00-11:00.");
  Stretch part = part_of(day, args.text("part"), moment.calendar, moment.zone);
  part.from = std::max(part.from, moment.now);
  const auto open = hours::openings_between(moment.calendar, moment.zone, part.from, part.to);
  return open.empty() ? part : Stretch{open.front().first, open.back().second};
}

// Throws Problem for what cannot be booked whatever else is.
Wish wish_of(const Args& args, const Moment& moment, const View& view) {
  Wish out{machine_of(args, view), {}};
  Booking& b = out.booking;
  b.machine = out.machine.id;
  b.actor = args.has("person") ? person_of(args, view).id : moment.who.actor;
  if (args.has("job")) b.job = job_of(args, view).id;
  b.note = args.text("note");
  const Day day = args.opt<Day>("day").value_or(moment.zone.local(moment.now).day);
  const Stretch s = wished_stretch(args, day, moment);
  b.from = s.from, b.to = s.to;
  if (b.to <= moment.now) {
    throw Problem(Fault::value, fmt::format("{} is over.", from_to(b.from, b.to, moment.zone)), "hours",
                  "Book a time still to come, or report what was done: finished seating job 2.");
  }
  if (b.from > moment.now + std::chrono::hours(24 * 366)) {
    throw Problem(Fault::value, fmt::format("{} is over a year away.", moment.zone.human(b.from)), "day_on",
                  "Check the year.");
  }
  return out;
}

std::string why_book_yes(const Args& args, const Moment& moment, const View& view) {
  const Wish w = wish_of(args, moment, view);
  check_room(w.booking, w.machine, view, moment.zone); // a yes would not help
  return closed_words(w.booking.from, w.booking.to, moment.calendar, moment.zone);
}

Value data_of(const Booking& b, const Machine& m) {
  return record({{"booking", b.id},
                 {"machine", ref(Thing::machine, m.id)},
                 {"name", m.name},
                 {"from_at", b.from},
                 {"until_at", b.to},
                 {"person", ref(Thing::actor, b.actor)},
                 {"job", b.job ? ref(Thing::job, *b.job) : Value{}}});
}

// Somebody cannot be at two machines at once; that happens, so it is only said.
std::string elsewhere_then(const Booking& b, const View& view, const hours::Zone& zone) {
  auto all = view.machines().bookings(b.from, b.to);
  std::erase_if(all, [&](const Booking& o) { return o.actor != b.actor || o.id == b.id; });
  return all.empty() ? "" : fmt::format("At the same time: {}.", words_of(all, view, zone));
}

Effect book(const Args& args, const Moment& moment, Tx& tx) {
  Wish w = wish_of(args, moment, tx);
  Booking& b = w.booking;
  check_room(b, w.machine, tx, moment.zone);
  b.id = tx.put(b);
  Effect out;
  out.answer.text = words_of(b, tx, moment.zone) + ".";
  out.answer.reason = elsewhere_then(b, tx, moment.zone);
  out.answer.data = data_of(b, w.machine);
  out.answer.about.args = {{"machine", ref(Thing::machine, w.machine.id)}, {"booking", b.id}};
  if (b.job) out.answer.about.args.emplace_back("job", ref(Thing::job, *b.job));
  return out;
}

// The one booking that is meant of those still to come. Without more words one's own come first.
Booking meant_booking(const Args& args, const Moment& moment, const View& view) {
  auto all = view.machines().bookings(moment.now, Instant{253'402'300'799});
  const auto keep = [&](auto&& fits) { std::erase_if(all, [&](const Booking& b) { return !fits(b); }); };
  const bool named_one = args.has("booking");
  if (named_one) keep([&](const Booking& b) { return b.id == args.get<std::int64_t>("booking"); });
  if (args.has("machine")) keep([&](const Booking& b) { return b.machine == args.id("machine"); });
  if (args.has("job")) keep([&](const Booking& b) { return b.job == args.id("job"); });
  if (args.has("person")) keep([&](const Booking& b) { return b.actor == args.id("person"); });
  if (args.has("day"))
    keep([&](const Booking& b) { return moment.zone.local(b.from).day == args.get<Day>("day"); });
  const auto mine = [&](const Booking& b) { return b.actor == moment.who.actor; };
  if (!named_one && !args.has("person") && std::any_of(all.begin(), all.end(), mine)) keep(mine);
  if (all.size() == 1) return all.front();
  if (all.empty()) {
    throw Problem(Fault::state, "There is no such booking to come.", named_one ? "booking" : "machine",
                  "Ask for 'bookings' to see them.");
  }
  Problem problem(Fault::ambiguous, "Which booking?", "booking", "Pick one by its number.");
  for (const Booking& b : all) {
    if (problem.choices.size() == 9) break;
    problem.choices.push_back({words_of(b, view, moment.zone),
                               {"cancel-booking", {{"booking", b.id}}},
                               {seen({Thing::booking, b.id}, view)}});
  }
  throw Problem(std::move(problem));
}

std::string why_cancel_yes(const Args& args, const Moment& moment, const View& view) {
  const Booking b = meant_booking(args, moment, view);
  return b.actor == moment.who.actor ? ""
                                     : fmt::format("That is not yours: {}.", words_of(b, view, moment.zone));
}

Effect cancel(const Args& args, const Moment& moment, Tx& tx) {
  const Booking b = meant_booking(args, moment, tx);
  tx.drop({Thing::booking, b.id});
  const auto m = machine_at(b.machine, tx);
  Effect out;
  out.answer.text =
      fmt::format("Booking {} is cancelled: {} does not have the {} on {} any more.", b.id,
                  name_of(b.actor, tx), m ? m->name : "machine", from_to(b.from, b.to, moment.zone));
  out.answer.data = data_of(b, m.value_or(Machine{b.machine, "machine"}));
  return out;
}

std::vector<std::string_view> book_phrases() {
  static const std::string then = " [for {job}] [on] ([{day}] [from] {hours} [on] [{day}]|[{day}] at "
                                  "{begins} [for ({for_hours} (hour|hours|h)|an hour "
                                  "{for_hours=1}|half an hour {minutes=30}|{minutes} (min|minutes))]|{day} "
                                  "[in the] {part}|this {part}|tonight "
                                  "{part=evening}) [for {job}]";
  static const std::vector<std::string> made{
      "book [me] {machine} [for {job}] [[on] {day}]",
      ("(i|we) (have|need|take|want) {machine} [now] for ({for_hours} (hour|hours|h)|an hour "
       "{for_hours=1}|half an hour {minutes=30}|{minutes} "
       "(min|minutes))"),
      "book [me] {machine}" + then,
      "book {machine} for {person}" + then,
      "book {job} [on|at|in] {machine}" + then,
      "(i|we) (have|need|take|want|got|will have|will need|will take|would like) {machine}" + then,
      "{person} (has|needs|takes|wants|gets|will have|will take) {machine}" + then,
      "{machine} is (mine|booked|taken|reserved)" + then,
      "(reserve|keep|give me|put me down for) {machine} [for me]" + then,
      "[on] {day} [from] {hours} (i|we) (have|need|take|want) {machine} [for {job}]"};
  return {made.begin(), made.end()};
}

const std::vector<Give> booking_gives{{"booking", Kind::count, "its id"},
                                      {"machine", Kind::machine, "its id"},
                                      {"name", Kind::name, "what the machine is called"},
                                      {"from", Kind::at, "from when"},
                                      {"until", Kind::at, "until when"},
                                      {"person", Kind::person, "who has it"},
                                      gives::or_null(gives::job)};

} // namespace

extern const Command book_row;
const Command book_row{
    {"book",
     "Books a machine for a time.",
     {{"machine", Kind::machine, true, false, "its name"},
      {"hours", Kind::spans, false, false, "one stretch of time, such as 10:00-11:00"},
      {"day", Kind::day, false, false, "which; today where not said"},
      {"begins", Kind::at, false, false, "from when, in place of hours"},
      {"for_hours", Kind::count, false, false, "how long from then; 1 where not said", {1, 24}},
      {"minutes", Kind::count, false, false, "how long, in place of hours", {5, 1440}},
      {"part",
       Kind::one_of,
       false,
       false,
       "all of that part of the day that is still to come",
       {},
       {"morning", "afternoon", "evening"}},
      takes::optional(takes::job),
      {"person", Kind::person, false, false, "who has it; you where not said"},
      takes::note},
     book_phrases(),
     {"I have the press from 14:00 to 15:00 tomorrow", "book the press for job 3 tomorrow 10:00-11:00",
      "book the sander tomorrow at 10:00 for 2 hours", "I need the press tomorrow morning"},
     Role::bench,
     booking_gives},
    &book,
    &why_book_yes};

extern const Command cancel_booking_row;
const Command cancel_booking_row{
    {"cancel-booking",
     "Gives a booked machine back.",
     {{"booking", Kind::count, false, false, "its number, as 'bookings' has it", {1, 1e15}},
      {"machine", Kind::machine, false, false, "of this one"},
      {"day", Kind::day, false, false, "on that day"},
      takes::optional(takes::job),
      {"person", Kind::person, false, false, "whose; yours first where not said"}},
     {"cancel [my|the] booking", "cancel [my|the] booking [number] {booking}",
      "cancel [my|the] booking (of|for|on) {machine} [[on] {day}] [for {job}]",
      "cancel [my|the] booking [on] {day}", "cancel [my|the] booking (of|for) {job}",
      "cancel [the] booking (of|by) {person} [[on] {day}]", "cancel my {machine} booking [[on] {day}]",
      "cancel (it|that|this) [booking] {booking=it}",
      "(i|we) [do] (not|no longer) need {machine} [any more] [[on] {day}]",
      "(free up|release|give back) {machine} [[on] {day}]", "unbook {machine} [[on] {day}]"},
     {"cancel my booking", "cancel booking 1", "I do not need the press tomorrow"},
     Role::bench,
     booking_gives},
    &cancel,
    &why_cancel_yes};

} // namespace nutward::shop::command_rows
