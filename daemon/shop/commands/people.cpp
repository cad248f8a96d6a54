// People come, change, retire and come back, and the machine's users are told to be them. Only a lead does
// this; the shop never loses its last one.
#include "shop/people.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

constexpr double most_uid = 4294967294; // 2^32 - 2: the last one before (uid_t)-1, which is nobody

constexpr std::string_view withdraw = "Withdraw what was lost or given away.";

const Param person_param{"person", Kind::person, true, false, "their name, or their number in 'persons'"};
const Param uid_param{
    "uid", Kind::count, true, false, "the number of the machine's user, as `id -u` prints it", {0, most_uid}};
const Param role_param{"role",
                       Kind::one_of,
                       false,
                       false,
                       "look: may only ask; bench: reports work; lead: also sets up the shop",
                       {},
                       {"look", "bench", "lead"}};

Role role_of(const Args& args) {
  const std::string word = args.text("role");
  return word == "lead" ? Role::lead : word == "look" ? Role::look : Role::bench;
}

std::string lower(std::string text) {
  for (char& c : text)
    c = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
  return text;
}

// A name is one person's, also after they have retired: history would mean two people otherwise.
std::string fresh_name(const Args& args, const View& view, std::int64_t whose) {
  const std::string name = check_name(args.text("name"), "name");
  for (const Actor& a : view.house().actors()) {
    if (a.id == whose || lower(a.name) != lower(name)) continue;
    throw Problem(Fault::state,
                  fmt::format("There is {} already{}.", a.name, a.retired ? ", who has retired" : ""), "name",
                  a.retired ? fmt::format("Take another name, or say: {} is back.", a.name)
                            : "Take another name.");
  }
  return name;
}

// "Ines may report work (bench), at the window bench".
std::string described(const Actor& a) {
  static constexpr std::array may{"may only look", "reports work", "leads"};
  return fmt::format("{} {} (role {}){}{}", a.name, may.at(static_cast<std::size_t>(a.role)),
                     word_for(static_cast<Role>(a.role)),
                     a.bench.empty() ? "" : fmt::format(", at the {} bench", a.bench),
                     a.uids.empty() ? "" : fmt::format(", and is uid {}", fmt::join(a.uids, ", ")));
}

Value data_of(const Actor& a) {
  std::vector<Value> uids(a.uids.begin(), a.uids.end());
  return record({{"person", ref(Thing::actor, a.id)},
                 {"name", a.name},
                 {"role", std::string(word_for(static_cast<Role>(a.role)))},
                 {"bench", a.bench},
                 {"uids", list(std::move(uids))},
                 {"retired", a.retired}});
}

Effect about(const Actor& a, std::string text) {
  Effect out;
  out.answer.text = std::move(text);
  out.answer.data = data_of(a);
  return out;
}

void take_uid(Actor& a, std::int64_t uid) {
  std::erase(a.uids, uid);
}

// The uid becomes this person's, and nobody else's. Says whose it was, or "".
std::string give_uid(Actor& a, std::int64_t uid, Tx& tx) {
  auto had = tx.house().actor_for_uid(uid);
  if (had && had->id == a.id) return "";
  if (had) {
    take_uid(*had, uid);
    tx.put(*had);
  }
  a.uids.insert(std::lower_bound(a.uids.begin(), a.uids.end(), uid), uid);
  return had ? had->name : "";
}

Effect new_person(const Args& args, const Moment&, Tx& tx) {
  const Leads before = leads(tx);
  Actor a;
  a.name = fresh_name(args, tx, 0);
  a.role = static_cast<int>(role_of(args));
  if (args.has("bench")) a.bench = check_name(args.text("bench"), "bench");
  std::string was;
  if (args.has("uid")) was = give_uid(a, args.get<std::int64_t>("uid"), tx);
  a.id = tx.put(a);
  keep_a_lead(before, tx);
  Effect out = about(a, fmt::format("Welcome: {}.", described(a)));
  if (!was.empty()) out.answer.reason = fmt::format("That uid was {} until now.", was);
  if (a.uids.empty())
    out.answer.reason =
        fmt::format("To let {0} in, say which of the machine's users they are: uid 1001 is {0}.", a.name);
  return out;
}

Effect map_uid(const Args& args, const Moment&, Tx& tx) {
  const Leads before = leads(tx);
  Actor a = person_of(args, tx);
  const std::int64_t uid = args.get<std::int64_t>("uid");
  if (std::find(a.uids.begin(), a.uids.end(), uid) != a.uids.end())
    throw Problem(Fault::state, fmt::format("Uid {} is {} already.", uid, a.name), "uid",
                  "There is nothing to do.");
  const std::string was = give_uid(a, uid, tx);
  tx.put(a);
  keep_a_lead(before, tx);
  return about(
      a, fmt::format("Uid {} is {} from now on{}.", uid, a.name, was.empty() ? "" : ", no longer " + was));
}

Effect unmap_uid(const Args& args, const Moment&, Tx& tx) {
  const Leads before = leads(tx);
  const std::int64_t uid = args.get<std::int64_t>("uid");
  auto a = tx.house().actor_for_uid(uid);
  if (!a)
    throw Problem(Fault::state, fmt::format("Uid {} is nobody.", uid), "uid",
                  "Ask for 'persons' to see whose is which.");
  take_uid(*a, uid);
  tx.put(*a);
  keep_a_lead(before, tx);
  Effect out = about(*a, fmt::format("Uid {} is not {} any more.", uid, a->name));
  out.answer.reason =
      "If the door lets it in again, it comes in as a new person; the door's group decides that.";
  return out;
}

Effect change_person(const Args& args, const Moment&, Tx& tx) {
  const Leads before = leads(tx);
  Actor a = person_of(args, tx);
  const Actor was = a;
  if (args.has("name")) a.name = fresh_name(args, tx, a.id);
  if (args.has("role")) a.role = static_cast<int>(role_of(args));
  if (args.has("bench")) a.bench = args.text("bench").empty() ? "" : check_name(args.text("bench"), "bench");
  if (a.name == was.name && a.role == was.role && a.bench == was.bench) {
    throw Problem(Fault::state, fmt::format("That changes nothing: {}.", described(a)), "person",
                  "Say another name, role or bench.");
  }
  tx.put(a);
  keep_a_lead(before, tx);
  Effect out = about(a, fmt::format("{}.", described(a)));
  out.answer.reason = fmt::format("It was: {}.", described(was));
  return out;
}

std::vector<Job> jobs_in_hand(const Actor& a, const View& view) {
  auto out = view.jobs().open();
  std::erase_if(out, [&](const Job& job) { return job.builder != a.id; });
  return out;
}

std::string numbers(const std::vector<Job>& jobs) {
  std::vector<std::int64_t> ids;
  for (const Job& job : jobs)
    ids.push_back(job.id);
  return fmt::format("{} {}", ids.size() == 1 ? "job" : "jobs", fmt::join(ids, ", "));
}

std::string why_yes(const Args& args, const Moment&, const View& view) {
  const Actor a = person_of(args, view);
  const auto jobs = jobs_in_hand(a, view);
  return jobs.empty() ? "" : fmt::format("{} still has {}; nobody will do them then.", a.name, numbers(jobs));
}

// "tokens desk, tablet"; "" where nobody bears one for them. A retired person's tokens are kept, since an
// undo cannot make a token, and open nothing (`serve/people.cpp`).
std::string tokens_of(const Actor& a, const View& view) {
  std::vector<std::string> names;
  for (const Token& t : view.tokens().good()) {
    if (t.actor == a.id) names.push_back(t.name);
  }
  return names.empty() ? ""
                       : fmt::format("{} {}", names.size() == 1 ? "token" : "tokens", fmt::join(names, ", "));
}

Effect retire_person(const Args& args, const Moment&, Tx& tx) {
  const Leads before = leads(tx);
  Actor a = person_of(args, tx);
  const auto jobs = jobs_in_hand(a, tx);
  for (Job job : jobs) {
    job.builder.reset();
    tx.put(job);
  }
  a.retired = true;
  tx.put(a);
  keep_a_lead(before, tx);
  Effect out = about(a, fmt::format("{} has retired{}.", a.name,
                                    jobs.empty() ? "" : fmt::format("; nobody does {} now", numbers(jobs))));
  out.answer.reason = fmt::format("What {} did stays in the journal under that name.", a.name);
  if (!a.uids.empty())
    out.answer.reason += fmt::format(" Uid {} may not come in any more.", fmt::join(a.uids, ", "));
  if (const std::string tokens = tokens_of(a, tx); !tokens.empty()) {
    out.answer.reason +=
        fmt::format(" Until {} is back, this opens nothing: {}. {}", a.name, tokens, withdraw);
  }
  return out;
}

Effect return_person(const Args& args, const Moment&, Tx& tx) {
  Actor a = person_of(args, tx, false);
  if (!a.retired)
    throw Problem(Fault::state, fmt::format("{} has not retired.", a.name), "person",
                  "There is nothing to do.");
  a.retired = false;
  tx.put(a);
  Effect out = about(a, fmt::format("{} is back: {}.", a.name, described(a)));
  if (const std::string tokens = tokens_of(a, tx); !tokens.empty())
    out.answer.reason = fmt::format("This opens again over TCP: {}. {}", tokens, withdraw);
  return out;
}

} // namespace

extern const Command new_person_row;
const Command new_person_row{
    {"new-person",
     "Makes somebody a person of the shop.",
     {{"name", Kind::name, true, false, "what to call them; nobody else's, also of those who retired"},
      role_param,
      {"bench", Kind::words, false, false, "the bench where they work"},
      takes::optional(uid_param)},
     {"new person {name}", "new person {name} role {role}", "new person {name} role {role} bench {bench}",
      "add [a] person [called] {name} [with] [role {role}]", "welcome {name} [as {role}]",
      "welcome {name} [as {role}] at the {bench} bench"},
     {"new person Jelka role look", "welcome Jelka as bench at the door bench"},
     Role::lead,
     gives::person},
    &new_person};

extern const Command map_uid_row;
const Command map_uid_row{{"map-uid",
                           "Says which person one of the machine's users is.",
                           {uid_param, person_param},
                           {"uid {uid} is {person}", "map uid {uid} to {person}",
                            "{person} (is|has) uid {uid}", "{person} comes in as uid {uid}"},
                           {"uid 1001 is Ines", "map uid 1001 to Ines"},
                           Role::lead,
                           gives::person},
                          &map_uid};

extern const Command unmap_uid_row;
const Command unmap_uid_row{
    {"unmap-uid",
     "Takes one of the machine's users away from a person.",
     {uid_param},
     {"unmap uid {uid}", "uid {uid} is nobody [any more]", "(take|forget) uid {uid} [away]"},
     {"uid 1001 is nobody", "unmap uid 1001"},
     Role::lead,
     gives::person},
    &unmap_uid};

extern const Command change_person_row;
const Command change_person_row{
    {"change-person",
     "Changes what somebody is called, what they may do, or where they work.",
     {person_param,
      {"name", Kind::name, false, false, "the new name"},
      role_param,
      {"bench", Kind::words, false, false, "the bench where they work"}},
     {"make {person} [a] {role}", "{person} is [a] {role} now", "rename {person} to {name}",
      "{person} is called {name} [now]", "{person} works at [the] {bench} bench [now]",
      "{person} works at bench {bench}"},
     {"make Ines a lead", "Ines works at the door bench", "rename Ines to Inez"},
     Role::lead,
     gives::person},
    &change_person};

extern const Command retire_person_row;
const Command retire_person_row{
    {"retire-person",
     "Somebody leaves the shop: they come in no more, and what they did stays under their name.",
     {person_param},
     {"{person} (has left|left us|has retired|is gone) [for good]", "{person} does not work here any more",
      "retire {person}"},
     {"retire Ines", "Ines does not work here any more"},
     Role::lead,
     gives::person},
    &retire_person,
    &why_yes};

extern const Command return_person_row;
const Command return_person_row{
    {"return-person",
     "Somebody who had retired is back.",
     {person_param},
     {"{person} is back [again]", "{person} works here again", "{person} has come back"},
     {"Ines is back", "Ines works here again"},
     Role::lead,
     gives::person},
    &return_person};

} // namespace nutward::shop::command_rows
