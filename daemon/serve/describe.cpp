#include "serve/describe.hpp"

#include "serve/describe_answers.hpp"
#include "serve/door.hpp"
#include "serve/routes.hpp"
#include "shop/codec.hpp"
#include "shop/lists.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <stdexcept>

namespace nutward::serve {

namespace {

using shop::Command;
using shop::Give;
using shop::Kind;
using shop::Often;
using shop::Question;
using shop::Role;
using shop::Row;

constexpr std::array roles{"look", "bench", "lead"};

// What may be accepted besides JSON: never a picture; an answer may have one (in a sentence); it has one.
enum class Drawn { never, perhaps, yes };

bool can_meet(const Refusal& refusal, std::string_view method, Drawn drawn) {
  return (!refusal.posts || method == "POST") && (!refusal.pictures || drawn != Drawn::never);
}

struct Operation {
  std::string id, tag, summary, description;
  Role least = Role::look;
  bool unix_only = false;
};

void picture(JsonText& out) {
  object(out, "image/svg+xml", [&] {
    object(out, "schema", [&] {
      text(out, "type", "string");
      text(out, "description",
           "SVG 1.1 with neither scripts nor links, measured in millimetres, on sheets of 190 by 250 mm one "
           "below the other; the JSON has the same figures");
    });
  });
}

void responses(JsonText& out, std::string_view method, std::string_view what,
               const std::function<void()>& schema, Drawn drawn = Drawn::never) {
  object(out, "responses", [&] {
    object(out, "200", [&] {
      text(out, "description", what);
      object(out, "content", [&] {
        object(out, "application/json", [&] { object(out, "schema", schema); });
        if (drawn == Drawn::yes) picture(out);
      });
    });
    for (const Refusal& r : refusals()) {
      if (can_meet(r, method, drawn))
        object(out, std::to_string(r.status), [&] { reference(out, "responses", std::to_string(r.status)); });
    }
  });
}

void head_of(JsonText& out, const Operation& op) {
  text(out, "operationId", op.id);
  texts(out, "tags", {op.tag});
  text(out, "summary", op.summary);
  if (op.unix_only)
    text(out, "description", "Over the Unix socket only.");
  else if (!op.description.empty())
    text(out, "description", op.description);
  text(out, "x-least-role", roles.at(static_cast<std::size_t>(op.least)));
  if (op.unix_only) array(out, "security", [] {});
}

void json_body(JsonText& out, bool required, const std::function<void()>& schema) {
  object(out, "requestBody", [&] {
    flag(out, "required", required);
    content(out, "application/json", schema);
  });
}

void header_parameters(JsonText& out, bool wants_yes) {
  array(out, "parameters", [&] {
    item(out, [&] { reference(out, "parameters", "idempotency-key"); });
    if (wants_yes) item(out, [&] { reference(out, "parameters", "yes"); });
  });
}

std::string as_sentence(const Row& row) {
  return row.examples.empty() ? "" : fmt::format("As a sentence: \"{}\".", fmt::join(row.examples, "\", \""));
}

void describe_question(JsonText& out, const Question& row, Role least) {
  object(out, fmt::format("/v1/ask/{}", row.name), [&] {
    object(out, "get", [&] {
      head_of(out, {part(row, "ask"), "questions", std::string(row.what), as_sentence(row),
                    std::max(least, row.least)});
      if (!row.takes.empty()) {
        array(out, "parameters", [&] {
          for (const shop::Param& p : row.takes) {
            item(out, [&] {
              text(out, "name", shop::field_for(p));
              text(out, "in", "query");
              text(out, "description", p.what);
              flag(out, "required", p.required);
              object(out, "schema", [&] { schema_of(out, p, Sent::in_query); });
            });
          }
        });
      }
      responses(
          out, "GET", "The answer.", [&] { reference(out, "schemas", part(row, "answer")); },
          row.draws ? Drawn::yes : Drawn::perhaps);
    });
  });
}

void describe_command(JsonText& out, const Command& row, Role least) {
  object(out, fmt::format("/v1/do/{}", row.name), [&] {
    object(out, "post", [&] {
      head_of(out, {part(row, "do"), "commands", std::string(row.what), as_sentence(row),
                    std::max(least, row.least)});
      header_parameters(out, row.wants_yes != nullptr);
      std::vector<std::string> required;
      for (const shop::Param& p : row.takes) {
        if (p.required) required.push_back(shop::field_for(p));
      }
      json_body(out, !required.empty(), [&] {
        reference(out, "schemas", part(row, "arguments"));
        if (!required.empty()) texts(out, "required", required);
      });
      responses(out, "POST", "It is done, and kept.",
                [&] { reference(out, "schemas", part(row, "answer")); });
    });
  });
}

void describe_list(JsonText& out, Role least) {
  object(out, "/v1/do", [&] {
    object(out, "post", [&] {
      head_of(out, {"several-do", "commands", "Does several commands: all of them, or none.", "", least});
      header_parameters(out, true);
      json_body(out, true, [&] {
        closed(out, {"calls"}, [&] {
          object(out, "calls", [&] {
            text(out, "type", "array");
            whole(out, "minItems", 1);
            whole(out, "maxItems", 50);
            object(out, "items", [&] { one_row_of(out, {"do", "with", "arguments", false}); });
          });
        });
      });
      responses(out, "POST", "All are done, and kept.", [&] { reference(out, "schemas", "list-answer"); });
    });
  });
}

void describe_say(JsonText& out, Role least) {
  object(out, "/v1/say", [&] {
    object(out, "post", [&] {
      head_of(out,
              {"say", "sentences", "Takes a sentence: a question or a command.",
               "What cannot be taken is answered with 200 too, as kind unclear or refused. With "
               "image/svg+xml alone in "
               "Accept it is taken only if it is a question, and 406 says that its answer has no picture.",
               least});
      header_parameters(out, false);
      json_body(out, true, [&] {
        text(out, "type", "object");
        object(out, "properties", [&] {
          text_field(out, "text", "what is said");
          object(out, "conversation", [&] {
            text(out, "type", "string");
            whole(out, "maxLength", 100);
            text(out, "description",
                 "any name of the client's own, so that \"use it\" and \"1\" are understood");
          });
        });
        texts(out, "required", {"text"});
        flag(out, "additionalProperties", false);
      });
      responses(
          out, "POST", "What comes of it.", [&] { reference(out, "schemas", "said-answer"); }, Drawn::yes);
    });
  });
}

void describe_health(JsonText& out, Role least) {
  object(out, "/v1/health", [&] {
    object(out, "get", [&] {
      head_of(out, {"health", "operation", "Whether the daemon answers.", "", least});
      responses(out, "GET", "It does.", [&] {
        closed(out, {"status", "version", "revision"}, [&] {
          fixed(out, "status", "ok");
          text_field(out, "version", "of the daemon");
          object(out, "revision", [&] {
            text(out, "type", "integer");
            whole(out, "minimum", 0);
          });
        });
      });
    });
  });
}

// What the three routes of tokens give; the secret only when one is made.
std::vector<Give> token_fields(bool secret) {
  std::vector<Give> out{
      {"name", Kind::name, "of the token"},
      {"person", Kind::name, "whose it is"},
      {"role", Kind::one_of, "how far it opens", Often::always, {}, {"look", "bench", "lead"}},
      {"made", Kind::at, "when it was"}};
  if (!secret) out.push_back({"opens", Kind::yes, "false while its person has retired, or was taken back"});
  if (secret) out.push_back({"token", Kind::words, "the secret: shown this once"});
  return out;
}

void list_tokens(JsonText& out, Role least) {
  object(out, "get", [&] {
    head_of(out, {"tokens", "operation", "Which tokens are not withdrawn.", "", least, true});
    responses(out, "GET", "All of them, without their secrets.", [&] {
      const Give all{"tokens", Kind::words, "by name", Often::many, token_fields(false)};
      answer_of(out, "tokens", [&] { schema_of(out, {all}); });
    });
  });
}

void grant_token(JsonText& out, Role least) {
  object(out, "post", [&] {
    head_of(out, {"grant-token", "operation", "Makes a token.", "", least, true});
    json_body(out, true, [&] {
      text(out, "type", "object");
      object(out, "properties", [&] {
        text_field(out, "name", "what will hold it; 1 to 60 bytes");
        object(out, "role", [&] { texts(out, "enum", {roles.begin(), roles.end()}); });
        text_field(out, "person", "whose it is; the caller's where not said");
      });
      texts(out, "required", {"name", "role"});
      flag(out, "additionalProperties", false);
    });
    responses(out, "POST", "It is made.",
              [&] { answer_of(out, "token", [&] { schema_of(out, token_fields(true)); }); });
  });
}

void withdraw_token(JsonText& out, Role least) {
  object(out, "delete", [&] {
    head_of(out, {"withdraw-token", "operation", "Withdraws a token.", "", least, true});
    array(out, "parameters", [&] {
      item(out, [&] {
        text(out, "name", "name");
        text(out, "in", "path");
        flag(out, "required", true);
        text(out, "description", "of the token");
        object(out, "schema", [&] { text(out, "type", "string"); });
      });
    });
    responses(out, "DELETE", "It opens nothing any more.", [&] {
      answer_of(out, "token", [&] { schema_of(out, {{"name", Kind::name, "of the token"}}); });
    });
  });
}

// Both methods of an address are described where GET stands in the table.
void describe_tokens(JsonText& out, const Routes::Route& route) {
  if (route.method == "GET") {
    object(out, route.path, [&] {
      list_tokens(out, route.least);
      grant_token(out, route.least);
    });
  } else if (route.method == "DELETE") {
    object(out, "/v1/tokens/{name}", [&] { withdraw_token(out, route.least); });
  }
}

void describe_route(JsonText& out, const Routes::Route& route) {
  if (route.path == "/v1/ask/") {
    for (const Question* q : shop::questions())
      describe_question(out, *q, route.least);
  } else if (route.path == "/v1/do/") {
    for (const Command* c : shop::commands())
      describe_command(out, *c, route.least);
  } else if (route.path == "/v1/do") {
    describe_list(out, route.least);
  } else if (route.path == "/v1/say") {
    describe_say(out, route.least);
  } else if (route.path == "/v1/health") {
    describe_health(out, route.least);
  } else if (route.path == "/v1/tokens" || route.path == "/v1/tokens/") {
    describe_tokens(out, route);
  } else {
    throw std::logic_error(fmt::format("serve/describe.cpp describes no {} {}", route.method, route.path));
  }
}

void information(JsonText& out, std::string_view version) {
  object(out, "info", [&] {
    text(out, "title", "Nutward");
    text(out, "version", version);
    text(out, "description",
         "What a shared fretting bench keeps: wire, the tin of short frets, the queue of refrets. Made by "
         "`nutwardd "
         "--describe` from the program's own lists.\n\nA field's name ends in its unit: `_mm`, `_g`, `_n`, "
         "`_minor` "
         "(hundredths of the shop's currency), `_nm`; `_at` is an instant (RFC 3339, UTC) and `_on` a day "
         "(ISO 8601, "
         "in the shop's zone). A length in mm has all its nanometres.");
  });
  array(out, "servers", [&] {
    item(out, [&] {
      text(out, "url", "/");
      text(out, "description", "HTTP/1.1 over the Unix socket HOME/nutward.sock: the system says who calls.");
    });
    item(out, [&] {
      text(out, "url", "http://{address}");
      text(out, "description",
           "Where the daemon was started with --http: a loopback address, for bearers of tokens.");
      object(out, "variables",
             [&] { object(out, "address", [&] { text(out, "default", "127.0.0.1:8765"); }); });
    });
  });
  array(out, "security", [&] {
    item(out, [&] { array(out, "token", [] {}); });
    item(out, [] {}); // the Unix socket
  });
  array(out, "tags", [&] {
    constexpr std::array<std::array<std::string_view, 2>, 4> tags{
        {{"sentences", "In one's own words."},
         {"questions", "They change nothing."},
         {"commands", "Reports and orders."},
         {"operation", "For whoever runs the daemon."}}};
    for (const auto& [name, what] : tags) {
      item(out, [&, n = name, w = what] {
        text(out, "name", n);
        text(out, "description", w);
      });
    }
  });
}

} // namespace

std::string describe(std::string_view version) {
  JsonText out;
  out.open('{');
  text(out, "openapi", "3.1.0");
  information(out, version);
  object(out, "paths", [&] {
    for (const Routes::Route& route : Routes::table())
      describe_route(out, route);
  });
  object(out, "components", [&] { components(out); });
  out.close('}');
  return shop::indented(out.take()) + "\n";
}

} // namespace nutward::serve
