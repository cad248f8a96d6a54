#include "serve/accept.hpp"

#include <algorithm>
#include <string>

namespace nutward::serve {

namespace {

std::string_view trimmed(std::string_view s) {
  while (!s.empty() && (s.front() == ' ' || s.front() == '\t'))
    s.remove_prefix(1);
  while (!s.empty() && (s.back() == ' ' || s.back() == '\t'))
    s.remove_suffix(1);
  return s;
}

// What stands before `end`, which goes with it.
std::string_view next(std::string_view& s, char end) {
  const auto at = std::min(s.find(end), s.size());
  const std::string_view out = trimmed(s.substr(0, at));
  s.remove_prefix(std::min(at + 1, s.size()));
  return out;
}

std::string lower(std::string_view s) {
  std::string out(s);
  for (char& c : out)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return out;
}

// "0.25" as 250; what is no quality value counts as 0, so that it decides nothing.
int thousandths(std::string_view q) {
  if (q.empty() || q.size() > 5 || (q[0] != '0' && q[0] != '1') || (q.size() > 1 && q[1] != '.')) return 0;
  int out = (q[0] - '0') * 1000, unit = 100;
  for (const char c : q.substr(std::min<std::size_t>(2, q.size()))) {
    if (c < '0' || c > '9') return 0;
    out += (c - '0') * unit, unit /= 10;
  }
  return std::min(out, 1000);
}

struct Weight {
  int exactness = 0; // of the range that says so: 3 type/subtype, 2 type/*, 1 */*
  int q = 0;
  void hear(int how, int value) {
    if (how > exactness || (how == exactness && value > q)) exactness = how, q = value;
  }
};

} // namespace

Rather rather(std::string_view accept) {
  Weight json, picture;
  while (!accept.empty()) {
    std::string_view range = next(accept, ',');
    const std::string type = lower(next(range, ';'));
    int q = 1000;
    while (!range.empty()) {
      const std::string parameter = lower(next(range, ';'));
      if (parameter.starts_with("q=")) q = thousandths(std::string_view(parameter).substr(2));
    }
    if (type == "*/*") json.hear(1, q), picture.hear(1, q);
    if (type == "application/*") json.hear(2, q);
    if (type == "image/*") picture.hear(2, q);
    if (type == "application/json") json.hear(3, q);
    if (type == "image/svg+xml") picture.hear(3, q);
  }
  if (picture.q <= json.q) return Rather::json;
  return json.q > 0 ? Rather::picture : Rather::picture_only;
}

} // namespace nutward::serve
