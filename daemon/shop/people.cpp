#include "shop/people.hpp"

#include "shop/bench.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace nutward::shop {

namespace {

constexpr std::size_t most_name = 60; // bytes, as of any name
constexpr std::array reserved{"me", "i",  "my",     "mine",     "myself",   "you",
                              "we", "us", "nobody", "somebody", "everybody"};

std::string lower(std::string_view text) {
  std::string out{text};
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

} // namespace

std::string_view word_for(Role role) {
  static constexpr std::array<std::string_view, 3> words{"look", "bench", "lead"};
  return words.at(static_cast<std::size_t>(role));
}

std::string name_of(std::int64_t actor, const View& view) {
  const auto person = view.house().actor(actor);
  return person ? person->name : "somebody";
}

Actor person_of(const Args& args, const View& view, bool present) {
  const auto person = view.house().actor(args.id("person"));
  if (!person)
    throw Problem(Fault::value, "There is no such person.", "person", "Ask for 'persons' to see them.");
  if (present && person->retired) {
    throw Problem(Fault::state, fmt::format("{} has retired.", person->name), "person",
                  fmt::format("Say first: {} is back.", person->name));
  }
  return *person;
}

std::string check_name(const std::string& text, std::string_view where) {
  const bool blank = text.find_first_not_of(' ') == std::string::npos;
  if (blank || text.front() == ' ' || text.back() == ' ' || text.size() > most_name) {
    throw Problem(
        Fault::value, fmt::format("'{}' cannot be a name.", units::escape_for_print(text.substr(0, 80))),
        std::string(where), fmt::format("Give 1 to {} bytes, without a space at either end.", most_name));
  }
  if (units::escape_for_print(text) != text) {
    throw Problem(Fault::value,
                  fmt::format("'{}' has characters in it that do not show.", units::escape_for_print(text)),
                  std::string(where), "Give plain letters.");
  }
  if (std::find(reserved.begin(), reserved.end(), lower(text)) != reserved.end()) {
    throw Problem(Fault::value, fmt::format("'{}' means somebody else in every mouth.", text),
                  std::string(where), "Take another name.");
  }
  return text;
}

std::string bench_of(const std::string& text, const View& view) {
  std::set<std::string> all;
  for (const Actor& a : view.house().actors()) {
    if (a.retired || a.bench.empty()) continue;
    if (lower(a.bench) == lower(text)) return a.bench;
    all.insert(a.bench);
  }
  throw Problem(
      Fault::value,
      fmt::format("Nobody works at a bench called '{}'.", units::escape_for_print(text.substr(0, 80))),
      "bench",
      all.empty() ? "Say first who works where: Ines works at the window bench."
                  : fmt::format("There are: {}.", fmt::join(all, ", ")));
}

Leads leads(const View& view) {
  Leads out;
  for (const Actor& a : view.house().actors()) {
    if (a.retired || a.role != static_cast<int>(Role::lead)) continue;
    ++out.all;
    if (!a.uids.empty()) ++out.can_come_in;
  }
  return out;
}

void keep_a_lead(const Leads& before, const View& view) {
  const Leads now = leads(view);
  const char* wrong = before.all > 0 && now.all == 0 ? "Nobody would lead the shop any more."
                      : before.can_come_in > 0 && now.can_come_in == 0
                          ? "Nobody who leads the shop could come in any more."
                          : nullptr;
  if (wrong == nullptr) return;
  throw Problem(Fault::state, wrong, "person",
                "Make somebody else a lead first, with a uid: make Ines lead; uid 1001 is Ines.");
}

void keep_uids_apart(const View& view) {
  std::map<std::int64_t, std::string> whose;
  for (const Actor& a : view.house().actors()) {
    for (std::int64_t uid : a.uids) {
      const auto [other, fresh] = whose.emplace(uid, a.name);
      if (!fresh) {
        throw Problem(Fault::state,
                      fmt::format("Uid {} would be two people then: {} and {}.", uid, other->second, a.name),
                      "uid", fmt::format("Say whose it is: uid {} is {}.", uid, a.name));
      }
    }
  }
}

std::set<std::string> shared_names(const View& view) {
  std::set<std::string> once, out;
  const auto take = [&](const std::string& key, const std::string& name) {
    if (!once.insert(key).second) out.insert(name);
  };
  for (const Actor& a : view.house().actors())
    take("person " + lower(a.name), a.name);
  for (const Receiver& r : view.house().receivers())
    take("receiver " + r.name, "receiver " + r.name);
  return out;
}

void keep_names_apart(const std::set<std::string>& before, const View& view) {
  for (const std::string& name : shared_names(view)) {
    if (before.contains(name)) continue;
    throw Problem(Fault::state, fmt::format("There would be two called {} then.", name), "name",
                  "Give the one that is there now another name first, or take it away.");
  }
}

namespace {

constexpr std::size_t most_looked_at = 100; // of the newest jobs, for work that was reported

bool works_too(const Actor& lead, const View& view) {
  if (lead.uids.empty() || !lead.bench.empty()) return true;
  for (const OwnHours& own : view.machines().own_hours())
    if (own.actor == lead.id) return true;
  for (const Job& job : view.jobs().open())
    if (job.builder == lead.id) return true;
  for (const Booking& b : view.machines().bookings({0}, Instant{253'402'300'799}))
    if (b.actor == lead.id) return true;
  for (const Job& job : view.jobs().recent(most_looked_at))
    for (const Stage& s : view.jobs().stages(job.id))
      if (s.actor == lead.id) return true;
  return false;
}

} // namespace

std::vector<Actor> workers(const View& view) {
  std::vector<Actor> out, others;
  for (Actor& a : view.house().actors()) {
    if (a.retired || a.role < static_cast<int>(Role::bench)) continue;
    const bool works = a.role == static_cast<int>(Role::bench) || works_too(a, view);
    (works ? out : others).push_back(std::move(a));
  }
  return out.empty() ? others : out;
}

std::string bench_of(const Job& job, const View& view) {
  if (!job.bench.empty() || !job.builder) return job.bench;
  const auto builder = view.house().actor(*job.builder);
  return builder ? builder->bench : "";
}

std::string who_does(const Job& job, const View& view) {
  const std::string bench = bench_of(job, view);
  if (!job.builder)
    return bench.empty() ? "nobody does it yet" : fmt::format("it is for the {} bench", bench);
  return fmt::format("{} does it{}", name_of(*job.builder, view),
                     bench.empty() ? "" : fmt::format(", at the {} bench", bench));
}

bool falls_to(const Job& job, const Actor& person) {
  if (job.builder) return *job.builder == person.id;
  return !job.bench.empty() && job.bench == person.bench;
}

std::vector<Job> open_jobs_of(const Actor& person, const View& view) {
  std::vector<Job> out = view.jobs().open();
  std::erase_if(out, [&](const Job& job) { return !falls_to(job, person); });
  return out;
}

} // namespace nutward::shop
