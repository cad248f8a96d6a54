// The house: weekly opening hours, settings, receivers.
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
  out.answer.text =
      fmt::format("Every {}: {}.", fmt::join(days, ", "), spans.empty() ? "closed" : "open " + spans);
  out.answer.reason = "For one day only say it with its date, or 'this': open this saturday 10:00-14:00.";
  out.answer.data = record({{"days", *args.call().find("days")}, {"hours", spans}});
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
const Command open_hours_row{{"open-hours",
                              "Sets the weekly hours of some days.",
                              {{"days", Kind::weekdays, true, true, "mon-fri, sat …"},
                               {"hours", Kind::spans, true, false, "9:00-12:30, 13:30-18:00, or closed"}},
                              {"open {days} {hours}", "[we are] open [on] {days} [from] {hours}",
                               "[we are] open (every|each|always on) {days} [from] {hours}",
                               "[the] hours [on|of|for] [every|each] {days} are {hours}",
                               "(on|every|each) {days} [we are] open [from] {hours}",
                               "[we are] (closed|shut) (every|each|always on) {days} {hours=closed}"},
                              {"open mon-fri 9:00-12:30, 13:30-18:00", "open every saturday 9:00-13:00",
                               "hours on sundays are closed"},
                              Role::lead,
                              {{"days", Kind::weekdays, "0 is Monday", Often::many},
                               {"hours", Kind::spans, "on each of them; empty for closed"}}},
                             &open_hours};

extern const Command set_row;
const Command set_row{
    {"set",
     "Changes a setting of the shop.",
     {{"setting", Kind::one_of, true, false, "which", {}, setting_names()},
      {"to", Kind::words, true, false, "its value"}},
     {("(the recheck|rechecks|a recheck) (may|can) be done from {setting=recheck_from_h} {to} (h|hours) [on] "
       "[after pressing]"),
      ("(the recheck|rechecks|a recheck) (is|are) due (after|at|within) {setting=recheck_due_h} {to} "
       "(h|hours) [after pressing]"),
      "[the|our] (zone|time zone|timezone) is {setting=zone} {to}", "the shop is in {setting=zone} {to}",
      "set {setting} to {to}", "change {setting} to {to}", "[the] setting {setting} is {to}",
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
       {"recheck.due", "recheck.overdue", "press.due", "press.beyond", "wire.low", "wire.well"}}},
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
const Command undo_row{
    {"undo",
     "Takes back the last thing you did, if nothing since has touched the same.",
     {},
     {"take (it|that) back", "undo (it|that)", "take back the last [one|thing]", "(revert|unsay) [it|that]",
      "[go] back one step",
      "(revert|reverse|undo|cancel|scrub) [my|the] last (change|entry|one|thing|step|report)"},
     {"undo", "take that back"},
     Role::bench,
     {{"undone_group", Kind::count, "of the journal"}}},
    &never};

} // namespace nutward::shop::command_rows
