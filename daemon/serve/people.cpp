#include "serve/people.hpp"

#include "serve/token.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::serve {

using shop::Fault;
using shop::Problem;
using shop::Role;

namespace {

constexpr std::size_t most_tokens = 100;

bool same_name(std::string_view a,
               std::string_view b) { // as the store compares: capitals of ASCII do not matter
  const auto same = [](char x, char y) {
    const auto low = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c | 0x20) : c; };
    return low(x) == low(y);
  };
  return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), same);
}

void check_name(const std::string& name) {
  if (same_name(name, token_file))
    throw Problem(Fault::value, "That name is kept for the token that the daemon makes itself.", "name",
                  "Name it after what will hold it: tablet.");
  const bool plain = !name.empty() && name.size() <= 60 && name.find('/') == std::string::npos &&
                     name.front() != ' ' && name.back() != ' ' && units::escape_for_print(name) == name;
  if (!plain)
    throw Problem(Fault::value, "A token's name is a plain text of 1 to 60 bytes without '/'.", "name",
                  "Name it after what will hold it: tablet.");
}

shop::Actor person_called(const shop::View& view, const std::string& name, const shop::Caller& by) {
  std::optional<shop::Actor> found;
  for (const shop::Actor& a : view.house().actors()) {
    if (a.retired || (name.empty() ? a.id != by.actor : !same_name(a.name, name))) continue;
    if (found)
      throw Problem(Fault::value, fmt::format("Several people are called {}.", name.substr(0, 60)), "person",
                    "Give them different names first.");
    found = a;
  }
  if (!found)
    throw Problem(Fault::value, fmt::format("Nobody here is called {}.", name.substr(0, 60)), "person",
                  "Name somebody who has asked the shop before, or leave it out to have it for yourself.");
  return *found;
}

// Who bears a token: nobody whose making was taken back, nor who has retired.
std::optional<shop::Actor> person(const shop::View& view, std::int64_t id) {
  for (shop::Actor& a : view.house().actors()) {
    if (a.id == id && !a.retired) return std::move(a);
  }
  return std::nullopt;
}

// The machine's user may be called like somebody who works here: that alone makes nobody that person.
std::string told_apart(const std::string& name, std::uint32_t uid, const shop::View& view) {
  const auto people = view.house().actors();
  const auto taken = [&](const std::string& called) {
    return std::any_of(people.begin(), people.end(),
                       [&](const shop::Actor& a) { return same_name(a.name, called); });
  };
  std::string out = name;
  for (int n = 1; taken(out); ++n) // a second one: the uid was somebody before, and was taken from them
    out = n == 1 ? fmt::format("{} (uid {})", name, uid) : fmt::format("{} (uid {}, {})", name, uid, n);
  return out;
}

void check_new(const shop::View& view, const std::string& name) {
  const auto good = view.tokens().good();
  if (good.size() >= most_tokens)
    throw Problem(Fault::state, fmt::format("There are {} tokens already.", most_tokens), "name",
                  "Withdraw one that is not in use.");
  for (const shop::Token& t : good) {
    if (same_name(t.name, name))
      throw Problem(Fault::state, fmt::format("There is a token called {} already.", t.name), "name",
                    "Withdraw it first, or take another name.");
  }
}

} // namespace

People::People(shop::Store& store, const shop::Clock& clock, PeopleOptions options)
    : store_(store), clock_(clock), options_(options) {}

shop::Caller People::user(std::uint32_t uid) {
  std::optional<shop::Actor> actor;
  store_.read([&](const shop::View& view) { actor = view.house().actor_for_uid(uid); });
  if (!actor) {
    store_.write([&](shop::Tx& tx) {
      actor = tx.house().actor_for_uid(uid); // somebody else may have been quicker
      if (actor) return;
      shop::Actor fresh;
      fresh.uids = {uid};
      fresh.role = static_cast<int>(uid == options_.owner ? Role::lead : Role::bench);
      fresh.name = options_.user_name != nullptr ? options_.user_name(uid) : "";
      if (fresh.name.empty()) fresh.name = fmt::format("user {}", uid);
      fresh.name = told_apart(fresh.name, uid, tx);
      fresh.id = tx.put(fresh);
      tx.backroom().take_changes(); // nobody's doing: no line of the journal
      actor = fresh;
    });
  }
  if (actor->retired) {
    throw Problem(Fault::not_allowed, fmt::format("{} has retired, and is uid {}.", actor->name, uid), "",
                  "Ask somebody who leads the shop to say who that uid is now.");
  }
  return {actor->id, static_cast<Role>(actor->role), actor->name, "unix"};
}

std::optional<shop::Caller> People::bearer(std::string_view authorization) {
  const auto secret = bearer_of(authorization);
  if (!secret || !is_token(*secret)) return std::nullopt;
  const std::string digest = digest_of(*secret);
  std::optional<shop::Caller> out;
  store_.read([&](const shop::View& view) {
    std::optional<shop::Token> borne;
    for (const shop::Token& t : view.tokens().good()) {
      if (same_digest(t.digest, digest)) borne = t;
    }
    const auto actor = borne ? person(view, borne->actor) : std::nullopt;
    if (actor)
      out =
          shop::Caller{actor->id, static_cast<Role>(std::min(borne->role, actor->role)), actor->name, "tcp"};
  });
  return out;
}

People::Granted People::fresh(const std::string& name, Role most, const shop::Actor& actor, std::int64_t by) {
  Granted out;
  out.secret = new_token();
  out.person = actor.name;
  out.token.name = name;
  out.token.actor = actor.id;
  out.token.role = static_cast<int>(most);
  out.token.digest = digest_of(out.secret);
  out.token.made = clock_.now();
  out.token.made_by = by;
  return out;
}

People::Granted People::grant(const std::string& name, Role most, const std::string& person,
                              const shop::Caller& by) {
  check_name(name);
  Granted out;
  const std::int64_t revision = store_.write([&](shop::Tx& tx) {
    check_new(tx, name);
    const shop::Actor actor = person_called(tx, person, by);
    if (actor.role < static_cast<int>(most)) {
      static constexpr std::array roles{"look", "bench", "lead"};
      throw Problem(
          Fault::value,
          fmt::format("{} has the role {} only.", actor.name, roles.at(static_cast<std::size_t>(actor.role))),
          "role", "A token never opens more than its person may do.");
    }
    out = fresh(name, most, actor, by.actor);
    out.token.id = tx.backroom().grant(out.token);
  });
  out.revision = revision;
  return out;
}

People::Withdrawn People::withdraw(std::string_view name, const shop::Caller& by) {
  std::optional<shop::Token> found;
  const std::int64_t revision = store_.write([&](shop::Tx& tx) {
    found.reset();
    for (const shop::Token& t : tx.tokens().good()) {
      if (same_name(t.name, name)) found = t;
    }
    if (found) tx.backroom().withdraw(found->id, clock_.now(), by.actor);
  });
  if (!found)
    throw Problem(Fault::value, fmt::format("There is no token called {}.", name.substr(0, 60)), "name",
                  "GET /v1/tokens lists them.");
  return {*found, revision};
}

} // namespace nutward::serve
