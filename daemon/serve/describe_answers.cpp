#include "serve/describe_answers.hpp"

#include <array>

namespace nutward::serve {

using shop::Row;

void answer_of(JsonText& out, std::string_view kind, const std::function<void()>& data) {
  array(out, "allOf", [&] { item(out, [&] { reference(out, "schemas", "answer"); }); });
  object(out, "properties", [&] {
    fixed(out, "kind", kind);
    object(out, "data", data);
  });
  flag(out, "unevaluatedProperties", false);
}

namespace {

constexpr std::array all_refusals{
    Refusal{400, "The request is not well-formed HTTP."},
    Refusal{401, "Over TCP: no token, or none that is good."},
    Refusal{
        403,
        "The caller's role does not allow it, a page from elsewhere asks, or it is not to be had over TCP."},
    Refusal{404, "There is nothing at that address."},
    Refusal{405, "The address takes another method."},
    Refusal{406, "Only a picture is accepted, and the answer has none.", false, true},
    Refusal{408, "The request took too long to arrive."},
    Refusal{409,
            "The shop is not in the state for it, something has changed since, or a yes is wanted first.",
            true},
    Refusal{411, "The request does not say how long its body is.", true},
    Refusal{413, "The body is over 256 KiB."},
    Refusal{415, "The body is not said to be application/json.", true},
    Refusal{417, "Something else than 100-continue is expected."},
    Refusal{421, "Over TCP: the Host field names another door."},
    Refusal{
        422,
        "An argument is missing, wrong, names something unknown, or could mean several things (choices)."},
    Refusal{431, "The request line and fields are over 8 KiB."},
    Refusal{500, "The daemon failed; nothing was done."},
    Refusal{501, "The transfer coding is not known."},
    Refusal{503, "Too much is under way: try again."},
    Refusal{505, "Another version of HTTP."},
    Refusal{507, "The disk is full; questions are still answered.", true},
};

void answer_schema(JsonText& out) {
  text(out, "type", "object");
  text(out, "description", "What every answer has. Each says which `kind` it is and what its `data` holds.");
  object(out, "properties", [&] {
    text_field(out, "kind", "a question's name, or done, unclear, refused");
    text_field(out, "text", "the answer in one or two whole sentences");
    text_field(out, "reason", "why, in one line");
    schema_reference(out, "table", "table");
    object(out, "data", [&] {
      text(out, "type", "object");
      text(out, "description", "the same in figures");
    });
    list_field(out, "cautions", "lines of care for work that can hurt: show all of them",
               [&] { text(out, "type", "string"); });
    list_field(out, "choices", "what the person may pick next", [&] { reference(out, "schemas", "choice"); });
    object(out, "revision", [&] {
      text(out, "type", "integer");
      whole(out, "minimum", 0);
      text(out, "description", "of the shop that was looked at, or that the change made");
    });
    text_field(out, "conversation", "as it was sent to /v1/say");
  });
  texts(out, "required", {"kind", "text", "data", "cautions", "choices", "revision"});
}

void row_components(JsonText& out, const Row& row, bool is_question) {
  object(out, part(row, "arguments"), [&] { schema_of_arguments(out, row); });
  object(out, part(row, "data"), [&] {
    if (row.gives_else.empty()) return schema_of(out, row.gives);
    array(out, "oneOf", [&] {
      item(out, [&] { schema_of(out, row.gives); });
      item(out, [&] { schema_of(out, row.gives_else); });
    });
  });
  object(out, part(row, "answer"), [&] {
    answer_of(out, is_question ? row.name : "done", [&] { reference(out, "schemas", part(row, "data")); });
  });
}

void problem_schema(JsonText& out) {
  text(out, "type", "object");
  text(out, "description",
       "RFC 9457. Where a person can read it, show `text`, and `choices` if there are any.");
  object(out, "properties", [&] {
    fixed(out, "type", "about:blank");
    text_field(out, "title", "the standard phrase of the status");
    object(out, "status", [&] {
      text(out, "type", "integer");
      whole(out, "minimum", 400);
      whole(out, "maximum", 599);
    });
    text_field(out, "detail", "what was wrong, in a whole sentence");
    list_field(out, "errors", "where", [&] {
      closed(out, {"pointer", "detail"}, [&] {
        object(out, "pointer", [&] {
          text(out, "type", "string");
          text(out, "format", "json-pointer");
          text(out, "description", "to the argument in the body, the query or the fields");
        });
        text_field(out, "detail", "what was wrong there");
      });
    });
    text_field(out, "remedy", "what would do");
    fixed(out, "kind", "refused");
    text_field(out, "text", "detail and remedy");
    list_field(out, "choices", "what it could mean, or the yes that is wanted",
               [&] { reference(out, "schemas", "choice"); });
  });
  texts(out, "required", {"type", "title", "status", "detail"});
  flag(out, "additionalProperties", false);
}

void common_schemas(JsonText& out) {
  object(out, "answer", [&] { answer_schema(out); });
  object(out, "table", [&] {
    closed(out, {"columns", "rows"}, [&] {
      list_field(out, "columns", "their heads", [&] { text(out, "type", "string"); });
      list_field(out, "rows", "each as long as columns", [&] {
        text(out, "type", "array");
        object(out, "items", [&] { text(out, "type", "string"); });
      });
    });
  });
  object(out, "choice", [&] {
    closed(out, {"label", "call"}, [&] {
      text_field(out, "label", "for a person to read");
      schema_reference(out, "call", "call");
    });
  });
  object(out, "call", [&] {
    text(out, "description",
         "What a choice stands for. `with` may lack what the next answer asks for; an id is from now, so "
         "send it soon.");
    one_row_of(out, {"row", "with", "arguments", true, true});
  });
  object(out, "piece-by-length", [&] {
    text(out, "description", "a piece of the tin within 0.5 mm of that; of equal ones any");
    text(out, "type", "object");
    object(out, "properties", [&] {
      object(out, "length_mm", [&] { texts(out, "type", {"number", "string"}); });
      object(out, "wire", [&] { texts(out, "type", {"integer", "string"}); });
    });
    texts(out, "required", {"length_mm"});
    flag(out, "additionalProperties", false);
  });
  object(out, "problem", [&] { problem_schema(out); });
}

void required_header(JsonText& out, std::string_view name) {
  object(out, "headers", [&] {
    object(out, name, [&] {
      flag(out, "required", true);
      object(out, "schema", [&] { text(out, "type", "string"); });
    });
  });
}

void answers_of_several(JsonText& out) {
  object(out, "several-answer", [&] {
    answer_of(out, "done", [&] {
      closed(out, {"done"}, [&] {
        list_field(out, "done", "each call's own data, in order", [&] {
          one_row_of(out, {"row", "data", "data"});
        });
      });
    });
  });
  object(out, "nothing-answer", [&] {
    text(out, "description", "Of a sentence that nothing came of; `choices` may say what it could mean.");
    array(out, "allOf", [&] { item(out, [&] { reference(out, "schemas", "answer"); }); });
    object(out, "properties", [&] {
      object(out, "kind", [&] { texts(out, "enum", {"done", "unclear", "refused"}); });
      object(out, "data", [&] {
        closed(out, {}, [&] {
          object(out, "not_allowed", [&] {
            text(out, "description",
                 "it was refused since the person's role, or the token's, does not do it");
            flag(out, "const", true);
          });
        });
      });
    });
    flag(out, "unevaluatedProperties", false);
  });
  const auto any_of = [&](std::string_view name, bool questions_too, const std::vector<std::string>& more) {
    object(out, name, [&] {
      array(out, "anyOf", [&] {
        each_row([&](const Row& row) {
          if (questions_too || shop::command(row.name) != nullptr)
            item(out, [&] { reference(out, "schemas", part(row, "answer")); });
        });
        for (const std::string& other : more)
          item(out, [&] { reference(out, "schemas", other); });
      });
    });
  };
  any_of("list-answer", false, {"several-answer"});
  any_of("said-answer", true, {"several-answer", "nothing-answer"});
}

} // namespace

std::span<const Refusal> refusals() {
  return all_refusals;
}

void one_row_of(JsonText& out, const Pair& pair) {
  array(out, "oneOf", [&] {
    each_row([&](const Row& row) {
      if (!pair.questions_too && shop::command(row.name) == nullptr) return;
      item(out, [&] {
        text(out, "type", "object");
        object(out, "properties", [&] {
          fixed(out, pair.row, row.name);
          schema_reference(out, pair.with, part(row, pair.which));
        });
        std::vector<std::string> required{std::string(pair.row)};
        if (pair.with_required) required.emplace_back(pair.with);
        texts(out, "required", required);
        flag(out, "additionalProperties", false);
      });
    });
  });
}

void components(JsonText& out) {
  object(out, "schemas", [&] {
    common_schemas(out);
    each_row([&](const Row& row) { row_components(out, row, shop::question(row.name) != nullptr); });
    answers_of_several(out);
  });
  object(out, "responses", [&] {
    for (const Refusal& r : all_refusals) {
      object(out, std::to_string(r.status), [&] {
        text(out, "description", r.when);
        if (r.status == 401) required_header(out, "WWW-Authenticate");
        if (r.status == 405) required_header(out, "Allow");
        content(out, "application/problem+json", [&] {
          array(out, "allOf", [&] { item(out, [&] { reference(out, "schemas", "problem"); }); });
          object(out, "properties", [&] { object(out, "status", [&] { whole(out, "const", r.status); }); });
        });
      });
    }
  });
  object(out, "securitySchemes", [&] {
    object(out, "token", [&] {
      text(out, "type", "http");
      text(out, "scheme", "bearer");
      text(out, "description", "Over TCP. It belongs into no URL, which is refused with 400.");
    });
  });
  object(out, "parameters", [&] {
    object(out, "idempotency-key", [&] {
      text(out, "name", "Idempotency-Key");
      text(out, "in", "header");
      text(out, "description",
           "A quoted text (RFC 8941) or a bare one, new for every request. The same key with the same body "
           "is given the "
           "first answer again, for a day, and nothing is done twice; with another body it is refused with "
           "422.");
      object(out, "schema", [&] {
        text(out, "type", "string");
        whole(out, "maxLength", 202);
      });
    });
    object(out, "yes", [&] {
      text(out, "name", "yes");
      text(out, "in", "query");
      text(out, "description",
           "Says yes to what is hard to undo; without it that is answered with 409 and why.");
      object(out, "schema", [&] { texts(out, "enum", {"true"}); });
    });
  });
}

} // namespace nutward::serve
