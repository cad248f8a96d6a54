// Tokens: who may come in over TCP. Operational routes, since a secret must not reach the journal, the memory
// of answers or a conversation.
#include "serve/parts.hpp"
#include "serve/routes.hpp"
#include "shop/codec.hpp"
#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::serve {

using shop::Fault;
using shop::Problem;

namespace {

constexpr std::string_view example = R"({"name": "tablet", "role": "bench"})";
constexpr std::array<std::string_view, 3> roles{"look", "bench", "lead"};

std::string role_word(int role) {
  return std::string(roles.at(static_cast<std::size_t>(role)));
}

shop::Role read_role(const std::string& word) {
  for (std::size_t i = 0; i < roles.size(); ++i) {
    if (roles.at(i) == word) return static_cast<shop::Role>(i);
  }
  throw Problem(Fault::value, "'role' must be look, bench or lead.", "role",
                fmt::format("Send {}.", example));
}

shop::Answer about(std::string kind, std::string text, shop::Value data, std::int64_t revision) {
  shop::Answer out;
  out.kind = std::move(kind);
  out.text = std::move(text);
  out.data = std::move(data);
  out.revision = revision;
  return out;
}

} // namespace

void Routes::tokens(const Request&, const shop::Caller&, std::string_view, const Reply& reply) {
  shop::Table table{{"token", "person", "role", "made at"}, {}};
  std::vector<shop::Value> list;
  std::size_t shut = 0; // of people who are gone: listed, since they keep their names and may open again
  shop::Answer out;
  store_.read([&](const shop::View& view) {
    out.revision = view.revision();
    const auto people = view.house().actors();
    for (const shop::Token& token : view.tokens().good()) {
      const auto there = std::find_if(people.begin(), people.end(),
                                      [&](const shop::Actor& a) { return a.id == token.actor; });
      const bool opens = there != people.end() && !there->retired;
      shut += opens ? 0 : 1;
      const auto actor = view.house().actor(token.actor).value_or(shop::Actor{});
      const std::string role = role_word(std::min(token.role, actor.role));
      const std::string made = units::print_utc(token.made);
      const std::string_view gone = opens ? "" : there == people.end() ? " (taken back)" : " (retired)";
      table.rows.push_back({token.name, fmt::format("{}{}", actor.name, gone), role, made});
      list.push_back(shop::record({{"name", token.name},
                                   {"person", actor.name},
                                   {"role", role},
                                   {"opens", opens},
                                   {"made_at", token.made}}));
    }
  });
  out.kind = "tokens";
  out.text =
      list.empty() ? "There is no token." : fmt::format("Tokens that are good: {}.", list.size() - shut);
  if (shut > 0)
    out.text += fmt::format(" Of people who have gone, opening nothing while they are away: {}.", shut);
  out.data = shop::record({{"tokens", shop::list(std::move(list))}});
  if (!table.rows.empty()) out.table = std::move(table);
  reply(json(200, shop::to_json(out)));
}

void Routes::grant(const Request& request, const shop::Caller& who, std::string_view, const Reply& reply) {
  if (auto no = wrong_type(request)) return reply(*no);
  const shop::Value body = read_body(request, "name role person", example);
  const shop::Role most = read_role(text_field(body, "role", true, example));
  const auto made = people_.grant(text_field(body, "name", true, example), most,
                                  text_field(body, "person", false, example), who);
  const std::string role = role_word(made.token.role);
  reply(json(200,
             shop::to_json(about(
                 "token",
                 fmt::format("The token {} lets its bearer in as {} with the role {}. It is shown this once.",
                             made.token.name, made.person, role),
                 shop::record({{"name", made.token.name},
                               {"person", made.person},
                               {"role", role},
                               {"made_at", made.token.made},
                               {"token", made.secret}}),
                 made.revision))));
}

void Routes::withdraw(const Request&, const shop::Caller& who, std::string_view name, const Reply& reply) {
  const auto gone = people_.withdraw(name, who);
  reply(json(200, shop::to_json(about(
                      "token", fmt::format("The token {} is good for nothing any more.", gone.token.name),
                      shop::record({{"name", gone.token.name}}), gone.revision))));
}

} // namespace nutward::serve
