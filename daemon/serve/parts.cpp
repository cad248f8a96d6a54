#include "serve/parts.hpp"

#include "serve/percent.hpp"
#include "shop/codec.hpp"
#include "shop/lists.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::serve {

using shop::Fault;
using shop::Problem;

namespace {

bool is_among(std::string_view name, std::string_view words) {
  while (!words.empty()) {
    const auto end = std::min(words.find(' '), words.size());
    if (words.substr(0, end) == name) return true;
    words.remove_prefix(std::min(end + 1, words.size()));
  }
  return false;
}

std::string send(std::string_view example) {
  return fmt::format("Send {}.", example);
}

} // namespace

Response json(int status, std::string body) {
  return {status, status < 400 ? "application/json" : "application/problem+json", std::move(body), {}};
}

Response refused(const Problem& p) {
  const int status = shop::status_for(p.fault);
  return json(status, shop::to_json(p, status));
}

Response drawn(const shop::Picture& picture) {
  return {200,
          "image/svg+xml",
          picture.svg(),
          {{"Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'; sandbox"},
           {"Vary", "Accept"}}};
}

Response not_drawn(std::string_view why) {
  std::vector<std::string_view> drawing;
  for (const shop::Question* q : shop::questions())
    if (q->draws) drawing.push_back(q->name);
  Response out =
      problem(406, fmt::format("{} Questions with a picture are: {}. Anything else is to be had as "
                               "application/json.",
                               why, fmt::join(drawing, ", ")));
  out.headers.emplace_back("Vary", "Accept");
  return out;
}

std::optional<Response> wrong_type(const Request& request) {
  std::string type = request.content_type.substr(0, request.content_type.find(';'));
  while (type.ends_with(' ') || type.ends_with('\t'))
    type.pop_back();
  for (char& c : type) { // media types are case-insensitive (RFC 9110, 8.3.1)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  if (type == "application/json") return std::nullopt;
  return problem(415, "The body must be application/json, and say so in Content-Type.");
}

std::string decoded(std::string_view text, bool plus_is_space) {
  Unescaped out = unescape(text, plus_is_space);
  if (!out.whole)
    throw Problem(Fault::value, "A percent sign stands without its two hex digits.", "query",
                  "Write a percent sign as %25.");
  return std::move(out.text);
}

shop::Value read_body(const Request& request, std::string_view allowed, std::string_view example) {
  shop::Value body = shop::read_json(request.body);
  const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(&body);
  if (node == nullptr || (*node)->is_list)
    throw Problem(Fault::value, "The body must be an object.", "/", send(example));
  for (const auto& [name, value] : (*node)->fields) {
    if (!is_among(name, allowed))
      throw Problem(Fault::value, fmt::format("There is no '{}' here.", name.substr(0, 60)),
                    name.substr(0, 60), fmt::format("Leave it out; {} may be sent.", allowed));
  }
  return body;
}

std::string text_field(const shop::Value& body, std::string_view name, bool required,
                       std::string_view example) {
  const shop::Value* v = std::get<std::shared_ptr<const shop::Node>>(body)->find(name);
  if (v == nullptr && !required) return "";
  const auto* s = v == nullptr ? nullptr : std::get_if<std::string>(v);
  if (s == nullptr)
    throw Problem(Fault::value, fmt::format("'{}' must be a text.", name), std::string(name), send(example));
  return *s;
}

} // namespace nutward::serve
