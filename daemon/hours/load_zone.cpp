#include "hours/load_zone.hpp"

#include "hours/posix_rule.hpp"

#include <algorithm>
#include <date/tz.h>
#include <fmt/core.h>
#include <fstream>
#include <iterator>
#include <optional>

namespace nutward::hours {

using units::Instant;

namespace {

constexpr std::string_view database = "/usr/share/zoneinfo/"; // where the date library too looks for it
constexpr const char* remedy = "Name a zone of the IANA database, as in Europe/Berlin or America/New_York.";
constexpr std::int64_t end_of_2100 = 4'133'980'800; // 2101-01-01T00:00:00Z

// Forged names must not become paths. No zone has a dot, a leading slash or an empty part.
void check_name(std::string_view iana) {
  const auto allowed = [](char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_' ||
           c == '-' || c == '+' || c == '/';
  };
  if (iana.empty()) throw BadHours("The time zone has no name.", remedy);
  if (iana.size() > 64) throw BadHours("The name of the time zone is over 64 characters long.", remedy);
  if (!std::all_of(iana.begin(), iana.end(), allowed) || iana.front() == '/' || iana.back() == '/' ||
      iana.find("//") != std::string_view::npos)
    throw BadHours(
        "A time zone cannot have that name: it holds something other than letters, digits, _, -, + and "
        "single slashes between them.",
        remedy);
  if (iana == "localtime" || iana == "posixrules" || iana == "Factory")
    throw BadHours(fmt::format("'{}' says what this machine is set to, not where the shop is.", iana),
                   remedy);
}

const date::time_zone* find(std::string_view iana) {
  try {
    date::get_tzdb();
  } catch (const std::exception&) {
    throw BadHours("This machine has no time zone database.", "Install it (package tzdata).");
  }
  try {
    return date::locate_zone(iana);
  } catch (const std::exception&) {
    throw BadHours(fmt::format("This machine's time zone database does not know '{}'.", iana),
                   std::string(remedy) +
                       " Capitals count; a new zone needs a new database (package tzdata).");
  }
}

std::vector<Transition> listed(const date::time_zone& zone) {
  std::vector<Transition> out;
  date::sys_seconds t{};
  while (t.time_since_epoch().count() < end_of_2100) {
    const auto info = zone.get_info(t);
    out.push_back(
        {Instant{t.time_since_epoch().count()}, static_cast<std::int32_t>(info.offset.count()), info.abbrev});
    t = info.end;
  }
  return out;
}

// The line between the last two newlines of a TZif file (RFC 9636 §3.3); nothing for a file of version 1. The
// date library stops at the last listed change, which is 2037 in the longest files and may be decades
// earlier.
std::optional<std::string> rule_of(std::string_view iana) {
  std::ifstream in(std::string(database) + std::string(iana), std::ios::binary);
  const std::string all{std::istreambuf_iterator<char>(in), {}};
  if (all.size() < 44 || all.compare(0, 4, "TZif") != 0 || all[4] < '2' || all.back() != '\n')
    return std::nullopt;
  const auto before = all.rfind('\n', all.size() - 2);
  if (before == std::string::npos || before + 2 >= all.size()) return std::nullopt;
  return all.substr(before + 1, all.size() - before - 2);
}

} // namespace

std::shared_ptr<const Zone> load_zone(std::string_view iana) {
  check_name(iana);
  auto transitions = listed(*find(iana));
  if (const auto rule = rule_of(iana)) {
    const auto last = transitions.back().from;
    for (auto& change : changes_by_rule(*rule, 1970, 2100)) {
      if (change.from <= last) continue;
      if (change.from == transitions.back().from) // summer time all year is written as an end that is a start
        transitions.back() = std::move(change);
      else
        transitions.push_back(std::move(change));
    }
  }
  return std::make_shared<const Zone>(std::string(iana), std::move(transitions));
}

} // namespace nutward::hours
