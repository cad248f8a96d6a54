// Several calls of one sentence that tell of the same: in two ways, in two numbers, or twice.
#include "talk/said_again.hpp"

#include "talk/render.hpp"

#include <algorithm>
#include <array>

namespace nutward::talk {

using What = Understood::What;

bool differs(const shop::Call& a, const shop::Call& b) {
  return std::any_of(a.args.begin(), a.args.end(), [&](const auto& arg) {
    const shop::Value* v = b.find(arg.first);
    return v != nullptr && !(*v == arg.second);
  });
}

namespace {

// What a row sets, and of what: there can be but one of it.
struct Sets {
  std::string_view row;
  std::array<std::string_view, 2> of;
};
constexpr std::array<Sets, 8> settings{{{"priority", {"job"}},
                                        {"set-due", {"job"}},
                                        {"board-width", {"job", "slot"}},
                                        {"stage-minutes", {"stage"}},
                                        {"stage-machine", {"stage"}},
                                        {"reorder-level", {"wire"}},
                                        {"last-fret", {"job"}},
                                        {"set", {"setting"}}}};

bool equal(const shop::Call& a, const shop::Call& b, std::string_view name) {
  const shop::Value *x = a.find(name), *y = b.find(name);
  return x == nullptr || y == nullptr ? x == y : *x == *y;
}

// "No hurry with job 5, its priority is as usual", "41 wide, that's 41.9": the same is set in two ways.
bool sets_again(const shop::Call& a, const shop::Call& b) {
  const auto sets =
      std::find_if(settings.begin(), settings.end(), [&](const Sets& s) { return s.row == a.row; });
  if (a.row != b.row || sets == settings.end()) return false;
  const auto same = [&](std::string_view name) { return name.empty() || equal(a, b, name); };
  return std::all_of(sets->of.begin(), sets->of.end(), same) && differs(a, b);
}

// A recheck that found nothing, beside an edge that rocks.
bool found_after_all(const shop::Call& a, const shop::Call& b) {
  const auto* felt = a.row == "rechecked" && b.row == "reading" ? b.find("felt") : nullptr;
  const auto* text = felt == nullptr ? nullptr : std::get_if<std::string>(felt);
  return text != nullptr && *text == "rocks" && equal(a, b, "job") && a.find("sprang") == nullptr &&
         a.find("high") == nullptr && a.find("from") == nullptr;
}

} // namespace

bool opposed(const std::vector<shop::Call>& calls) {
  for (std::size_t i = 0; i < calls.size(); ++i)
    for (std::size_t k = i + 1; k < calls.size(); ++k)
      if (sets_again(calls[i], calls[k]) || found_after_all(calls[i], calls[k]) ||
          found_after_all(calls[k], calls[i]))
        return true;
  return false;
}

namespace {

// "One of brass, about 9": so many, and so many again of what nothing else tells apart.
bool in_two_numbers(const shop::Call& a, const shop::Call& b) {
  if (a.row != "handful" || b.row != "handful" || a.args.size() != b.args.size()) return false;
  return std::all_of(a.args.begin(), a.args.end(), [&](const auto& arg) {
    const shop::Value* v = b.find(arg.first);
    return v != nullptr && (arg.first == "count" || *v == arg.second);
  });
}

} // namespace

std::optional<Understood> said_again(Understood& out, const Surroundings& at) {
  std::vector<shop::Call>& calls = out.calls;
  for (std::size_t i = 1; i < calls.size() && out.what == What::order; ++i)
    if (in_two_numbers(calls[i - 1], calls[i]))
      return offer("Nothing was done yet: that tells of the same in two numbers. Pick which is meant.",
                   {calls[i - 1], calls[i]}, at);
  const auto same = [&](const shop::Call& a, const shop::Call& b) {
    const shop::Row* row = at.book.row(a.row);
    return a.row == b.row && row != nullptr && render(*row, a) == render(*row, b);
  };
  for (std::size_t i = 0; i < calls.size(); ++i) {
    for (std::size_t k = calls.size(); k-- > i + 1;) {
      if (!same(calls[i], calls[k])) continue;
      const bool counts = at.book.row(calls[i].row)->find("count") != nullptr;
      if (counts && out.what == What::order)
        return offer("Nothing was done yet: that says the same twice. Pick 1 if it is meant once.",
                     {calls[i]}, at);
      calls.erase(calls.begin() + static_cast<std::ptrdiff_t>(k));
    }
  }
  return std::nullopt;
}

} // namespace nutward::talk
