#include "shop/demo.hpp"

#include <fmt/format.h>

#include <map>

namespace nutward::shop {

namespace {

std::map<std::string, Caller> people_in(Store& store) {
  std::map<std::string, Caller> out;
  store.read([&](const View& view) {
    for (const Actor& a : view.house().actors())
      out[a.name] = {a.id, static_cast<Role>(a.role), a.name, "demo"};
  });
  return out;
}

// "Mara (lead)" makes Mara an actor; false for any other line.
bool introduced(Store& store, std::string_view line) {
  const auto open = line.find(" (");
  if (open == std::string_view::npos || !line.ends_with(')') || line.find(':') != std::string_view::npos)
    return false;
  const std::string_view role = line.substr(open + 2, line.size() - open - 3);
  Actor actor;
  actor.name = std::string(line.substr(0, open));
  actor.role = static_cast<int>(role == "lead" ? Role::lead : role == "bench" ? Role::bench : Role::look);
  store.write([&](Tx& tx) {
    tx.put(actor);
    tx.backroom().take_changes();
  });
  return true;
}

[[noreturn]] void fail(int number, std::string_view line, const std::string& why) {
  throw Problem(Fault::broken, fmt::format("Line {} of the demo was not taken: {} ({})", number, line, why),
                "", "Start again in an empty home.");
}

} // namespace

void load_demo(Store& store, const Say& say, std::string_view text) {
  bool empty = false;
  store.read(
      [&](const View& view) { empty = view.journal().newest() == 0 && view.house().actors().empty(); });
  if (!empty)
    throw Problem(Fault::state, "The demo goes into an empty home, and this one is in use.", "",
                  "Leave out --demo, or name another --home.");
  int number = 0;
  while (!text.empty()) {
    const auto end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    ++number;
    if (line.empty() || line.starts_with('#') || introduced(store, line)) continue;
    const auto people = people_in(store);
    const auto colon = line.find(": ");
    const auto who = people.find(std::string(line.substr(0, std::min(colon, line.size()))));
    if (colon == std::string_view::npos || who == people.end())
      fail(number, line, "nobody of that name has been introduced");
    const Answer answer = say(std::string(line.substr(colon + 2)), who->second);
    if (answer.kind != "done") fail(number, line, answer.text);
  }
}

} // namespace nutward::shop
