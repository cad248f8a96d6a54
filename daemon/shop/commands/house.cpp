// The house: opening hours, special days, settings, receivers.
#include "shop/bookings.hpp"
#include "shop/level_settings.hpp"
#include "shop/press_settings.hpp"
#include "shop/rows.hpp"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <openssl/evp.h>
#include <openssl/rand.h>

namespace nutward::shop::command_rows {

namespace {

constexpr std::array day_names{"Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"};

Effect open_hours(const Args& args, const Moment&, Tx& tx) {
  const std::string spans = write_spans(read_spans(args.text("hours")));
  std::vector<std::string> days;
  for (std::int64_t d : args.many<std::int64_t>("days")) {
    tx.put(Weekday{d + 1, spans});
    days.emplace_back(day_names.at(static_cast<std::size_t>(d)));
  }
  Effect out;
  out.answer.text = fmt::format("{}: {}.", fmt::join(days, ", "), spans.empty() ? "closed" : "open " + spans);
  out.answer.data = record({{"days", *args.call().find("days")}, {"hours", spans}});
  return out;
}

SpecialDay special(Day day, const Tx& tx) {
  for (const SpecialDay& s : tx.house().special_days()) {
    if (s.day == day) return s;
  }
  SpecialDay out;
  out.day = day;
  return out;
}

// What was to happen on a day that is closed now, and when instead: rechecks are looked at by the clock,
// bookings stand.
std::string falls_on_closed(Day day, const Moment& moment, const View& view) {
  const hours::Calendar now = calendar_of(view.house());
  const Instant from = moment.zone.instant(day, 0), to = moment.zone.instant(day, 86400);
  std::string out;
  for (const Recheck& r : view.jobs().waiting()) {
    if (r.due < from || r.due >= to || hours::is_open(now, moment.zone, r.due)) continue;
    const auto clock = agenda::window_clock(r.from, r.due, now, moment.zone);
    const auto job = view.jobs().find(r.job);
    out += fmt::format(" The recheck of {} is due then; it is told {} and overdue after {}.",
                       job ? named(*job) : fmt::format("job {}", r.job), moment.zone.human(clock.remind),
                       moment.zone.human(clock.overdue));
  }
  const auto booked = view.machines().bookings(from, to);
  if (!booked.empty())
    out += fmt::format(" Booked that day all the same: {}.", words_of(booked, view, moment.zone));
  return out.empty() ? out : out.substr(1);
}

Effect close_day(const Args& args, const Moment& moment, Tx& tx) {
  SpecialDay s = special(args.get<Day>("day"), tx);
  s.closed = true;
  s.extra.clear();
  s.note = args.text("note");
  tx.put(s);
  Effect out;
  out.answer.text = fmt::format("Closed on {}{}.", hours::human(s.day), s.note.empty() ? "" : ": " + s.note);
  out.answer.reason = falls_on_closed(s.day, moment, tx);
  out.answer.data = record({{"day", s.day}});
  return out;
}

Effect reopen_day(const Args& args, const Moment&, Tx& tx) {
  SpecialDay s = special(args.get<Day>("day"), tx);
  if (!s.closed) {
    throw Problem(
        Fault::state, fmt::format("{} was not closed.", hours::human(s.day)), "day_on",
        "There is nothing to do; hours besides the weekly ones: open extra on 2026-12-12 9:00-13:00.");
  }
  s.closed = false;
  s.note.clear();
  tx.put(s);
  const auto spans = tx.house().week();
  const auto weekly =
      std::find_if(spans.begin(), spans.end(), [&](const Weekday& w) { return w.id == s.day.weekday() + 1; });
  const std::string hours = weekly == spans.end() ? "" : weekly->spans;
  Effect out;
  out.answer.text = fmt::format("{} is no special day any more: {}{}.", hours::human(s.day),
                                hours.empty() ? "closed as every week" : "open " + hours,
                                s.extra.empty() ? "" : ", besides " + s.extra);
  out.answer.data = record({{"day", s.day}});
  return out;
}

Effect open_extra(const Args& args, const Moment&, Tx& tx) {
  SpecialDay s = special(args.get<Day>("day"), tx);
  auto spans = s.extra.empty() ? std::vector<hours::Span>{} : read_spans(s.extra);
  const auto more = read_spans(args.text("hours"));
  spans.insert(spans.end(), more.begin(), more.end());
  s.extra = write_spans(hours::merged(std::move(spans)));
  if (args.has("note")) s.note = args.text("note");
  tx.put(s);
  Effect out;
  out.answer.text = fmt::format("Open besides on {}: {}.", hours::human(s.day), s.extra);
  out.answer.data = record({{"day", s.day}, {"hours", s.extra}});
  return out;
}

Effect set(const Args& args, const Moment&, Tx& tx) {
  const std::string name = args.text("setting");
  const std::string before = tx.house().setting(name).value_or("the default");
  const std::string value = check_setting(name, args.text("to"), force_unit(tx));
  tx.put(Setting{0, name, value});
  try {
    board::check(setup(tx).fit); // what does not go together is refused here, before it is kept
  } catch (const board::BadSettings& bad) {
    throw Problem(Fault::value, bad.what(), "to", bad.would_do);
  }
  check_equipment(tx, "to");
  check_level_settings(tx, "to");
  Effect out;
  std::string spoken{name};
  std::replace(spoken.begin(), spoken.end(), '_', ' ');
  out.answer.text = fmt::format("{} is {} now; it was {}.", spoken, value, before);
  out.answer.data = record({{"setting", name}, {"value", value}});
  return out;
}

std::string new_secret() {
  std::array<unsigned char, 32> bytes{};
  if (RAND_bytes(bytes.data(), static_cast<int>(bytes.size())) != 1)
    throw Problem(Fault::broken, "The system gave no random bytes.", "", "Try again.");
  std::array<unsigned char, 48> text{};
  const int n = EVP_EncodeBlock(text.data(), bytes.data(), static_cast<int>(bytes.size()));
  return "whsec_" + std::string(text.begin(), text.begin() + n);
}

// Which addresses are called is the daemon's to know (receivers.networks, remind/address.hpp). What is said
// here is what its rules hold of an address that stands in the URL itself; a name is looked up only later.
std::string when_called(const std::string& url) {
  const bool open = url.starts_with("http://");
  std::string host = url.substr(url.find("://") + 3);
  host = host.substr(0, host.find_first_of("/?#"));
  host = host.starts_with('[') ? host.substr(1, host.find(']') - 1) : host.substr(0, host.find(':'));
  in_addr four{};
  in6_addr six{};
  const bool v4 = inet_pton(AF_INET, host.c_str(), &four) == 1;
  const bool v6 = inet_pton(AF_INET6, host.c_str(), &six) == 1;
  if (!v4 && !v6) return "";
  if (v4 ? (ntohl(four.s_addr) >> 24U) == 127 : static_cast<bool>(IN6_IS_ADDR_LOOPBACK(&six))) return "";
  return fmt::format(
      ". {} is called {}only if receivers.networks in the daemon's nutward.toml lists it or its "
      "network; until then nothing is sent there. ",
      host, open ? "" : "where it is public, and otherwise ");
}

void check_url(const std::string& url) {
  const bool scheme = url.starts_with("http://") || url.starts_with("https://");
  if (scheme && url.find_first_of(" \t\"<>@") == std::string::npos && url.size() > 10) return;
  throw Problem(Fault::value, "That is no address that can be called.", "url",
                "Give it as http://host:port/path or https://…, without a user in it.");
}

Effect add_receiver(const Args& args, const Moment&, Tx& tx) {
  Receiver r;
  r.name = args.text("name");
  for (const Receiver& other : tx.house().receivers()) {
    if (other.name == r.name)
      throw Problem(Fault::state, fmt::format("There is a receiver called {} already.", r.name), "name",
                    "Drop it first, or take another name.");
  }
  r.url = args.text("url");
  check_url(r.url);
  const std::string shape = args.text("shape");
  r.shape = shape == "text" ? Shape::text : shape == "cloudevents" ? Shape::cloudevents : Shape::event;
  r.wants = args.many<std::string>("wants");
  r.secret = new_secret();
  r.id = tx.put(r);
  Effect out;
  out.answer.text =
      fmt::format("{} will be told{}.", r.name,
                  r.wants.empty() ? " of everything that falls due and of every load beyond the rating"
                                  : fmt::format(" of {}", fmt::join(r.wants, ", ")));
  out.answer.reason = fmt::format("{}Its secret, shown this once: {}", when_called(r.url), r.secret);
  out.answer.data = record({{"receiver", ref(Thing::receiver, r.id)}, {"secret", r.secret}});
  return out;
}

Effect drop_receiver(const Args& args, const Moment&, Tx& tx) {
  const std::int64_t id = args.id("receiver");
  std::string name;
  for (const Receiver& r : tx.house().receivers()) {
    if (r.id == id) name = r.name;
  }
  const std::int64_t waiting = tx.outbox().undelivered(id);
  tx.drop({Thing::receiver, id});
  Effect out;
  out.answer.text = fmt::format(
      "{} is told nothing any more{}.", name,
      waiting > 0 ? fmt::format("; {} not delivered to it", plural(waiting, "message was", "messages were"))
                  : "");
  out.answer.data = record({{"receiver", ref(Thing::receiver, id)}});
  return out;
}

Effect never(const Args&, const Moment&, Tx&) {
  throw std::logic_error("undo is the executor's own");
}

} // namespace

extern const Command open_hours_row;
const Command open_hours_row{
    {"open-hours",
     "Sets the weekly hours of some days.",
     {{"days", Kind::weekdays, true, true, "mon-fri, sat …"},
      {"hours", Kind::spans, true, false, "9:00-12:30, 13:30-18:00, or closed"}},
     {"open {days} {hours}", "[we are] open [on] {days} [from] {hours}",
      "[the] hours [on|of|for] {days} are {hours}", "(on|every) {days} [we are] open {hours}"},
     {"open mon-fri 9:00-12:30, 13:30-18:00", "hours on sat are closed"},
     Role::lead,
     {{"days", Kind::weekdays, "0 is Monday", Often::many},
      {"hours", Kind::spans, "on each of them; empty for closed"}}},
    &open_hours};

extern const Command close_day_row;
const Command close_day_row{
    {"close-day",
     "Closes the shop for a day.",
     {{"day", Kind::day, true, false, "which"}, takes::note},
     {"closed [on] {day} [because {note}]", "close [the shop] [on] {day} [because {note}]",
      "[we are] closed [on] {day} [because {note}]"},
     {"closed on 2026-12-25", "close the shop on 2027-01-01"},
     Role::lead,
     {{"day", Kind::day, "which"}}},
    &close_day};

extern const Command reopen_day_row;
const Command reopen_day_row{
    {"reopen-day",
     "Takes back that the shop is closed on a day.",
     {{"day", Kind::day, true, false, "which"}},
     {"[we are] open [on] {day} (after all|as usual|again)", "(we are|the shop is) not closed [on] {day}",
      "{day} is [a] (working|open) day (after all|again)", "reopen [on] {day}"},
     {"open on 2026-12-25 after all", "reopen 2027-01-01"},
     Role::lead,
     {{"day", Kind::day, "which"}}},
    &reopen_day};

extern const Command open_extra_row;
const Command open_extra_row{
    {"open-extra",
     "Opens the shop on a day besides its weekly hours.",
     {{"day", Kind::day, true, false, "which"},
      {"hours", Kind::spans, true, false, "9:00-13:00"},
      takes::note},
     {"open extra [on] {day} {hours}", "[we are] also open [on] {day} {hours}",
      "extra opening [on] {day} {hours}"},
     {"open extra on 2026-12-12 9:00-13:00", "also open on 2026-12-13 10:00-12:00"},
     Role::lead,
     {{"day", Kind::day, "which"}, {"hours", Kind::spans, "all that is open besides that day"}}},
    &open_extra};

extern const Command set_row;
const Command set_row{
    {"set",
     "Changes a setting of the shop.",
     {{"setting", Kind::one_of, true, false, "which", {}, setting_names()},
      {"to", Kind::words, true, false, "its value"}},
     {"set {setting} to {to}", "change {setting} to {to}", "[the] setting {setting} is {to}",
      "[the] (press plate|plate of the press) (is|says|reads) {setting=press_plate} {to}"},
     {"set trim_limit to 10 mm", "set zone to Europe/Berlin"},
     Role::lead,
     {{"setting", Kind::words, "its name"}, {"value", Kind::words, "as it is kept"}}},
    &set};

extern const Command add_receiver_row;
const Command add_receiver_row{
    {"add-receiver",
     "Adds an address that is told what falls due (a webhook).",
     {{"name", Kind::name, true, false, "what to call it"},
      {"url", Kind::url, true, false, "where"},
      {"shape",
       Kind::one_of,
       false,
       false,
       "of the body; event where not said",
       {},
       {"event", "cloudevents", "text"}},
      {"wants",
       Kind::one_of,
       false,
       true,
       "only these; all where not said",
       {},
       {"recheck.due", "recheck.overdue", "press.due", "press.beyond", "wire.low"}}},
     {"add [a] receiver {name} (at|with) {url}", "tell {name} at {url}", "send reminders to {name} at {url}"},
     {"add receiver wall at http://127.0.0.1:9000/hook"},
     Role::lead,
     {{"receiver", Kind::receiver, "its id"},
      {"secret", Kind::words, "whsec_ and the key in base64, to verify signatures with"}}},
    &add_receiver};

extern const Command drop_receiver_row;
const Command drop_receiver_row{
    {"drop-receiver",
     "Takes a receiver away.",
     {{"receiver", Kind::receiver, true, false, "its name"}},
     {"drop [the] receiver {receiver}", "remove [the] receiver {receiver}", "stop telling {receiver}"},
     {"drop receiver wall"},
     Role::lead,
     {{"receiver", Kind::receiver, "its id"}}},
    &drop_receiver};

extern const Command undo_row;
const Command undo_row{{"undo",
                        "Takes back the last thing you did, if nothing since has touched the same.",
                        {},
                        {"take (it|that) back", "undo (it|that)", "take back the last [one|thing]"},
                        {"undo", "take that back"},
                        Role::bench,
                        {{"undone_group", Kind::count, "of the journal"}}},
                       &never};

} // namespace nutward::shop::command_rows
