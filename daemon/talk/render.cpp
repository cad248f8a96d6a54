#include "talk/render.hpp"

#include "units/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace nutward::talk {
namespace {

std::string name_of(const shop::Param& param, const shop::Ref& ref, const Names& names) {
  using enum shop::Kind;
  if (param.kind == wire || param.kind == person || param.kind == machine || param.kind == receiver) {
    const auto& things = names.of(param.kind);
    const auto at = std::find_if(things.begin(), things.end(), [&](const Named& n) { return n.ref == ref; });
    if (at != things.end()) return at->label;
  }
  return render(param, ref);
}

std::string told_of(const shop::Param& param, const shop::Node& node, const Names& names) {
  std::string out;
  if (node.is_list) {
    for (const shop::Value& v : node.items)
      out += (out.empty() ? "" : " and ") + told(param, v, names);
    return out;
  }
  const shop::Value* wire = node.find("wire");
  const auto* ref = wire == nullptr ? nullptr : std::get_if<shop::Ref>(wire);
  if (ref == nullptr) return render(param, std::make_shared<const shop::Node>(node));
  shop::Node rest = node; // a piece by its length and wire
  std::erase_if(rest.fields, [](const auto& f) { return f.first == "wire"; });
  const shop::Param of{"wire", shop::Kind::wire, false, false, ""};
  return render(param, std::make_shared<const shop::Node>(std::move(rest))) + " of " +
         name_of(of, *ref, names);
}

} // namespace

std::string told(const shop::Param& param, const shop::Value& value, const Names& names) {
  if (const auto* ref = std::get_if<shop::Ref>(&value)) return name_of(param, *ref, names);
  if (const auto* node = std::get_if<std::shared_ptr<const shop::Node>>(&value); node != nullptr && *node)
    return told_of(param, **node, names);
  const auto* at = std::get_if<units::Instant>(&value);
  if (at == nullptr || !names.zone) return render(param, value);
  const hours::LocalTime local = names.zone->local(*at);
  return fmt::format("{} {:02}:{:02}", units::print(local.day), local.s / 3600, local.s / 60 % 60);
}

std::string told(const shop::Row& row, const shop::Call& call, const Names& names) {
  return render(row, call, [&](const shop::Param& param, const shop::Value& value) {
    return told(param, value, names);
  });
}

} // namespace nutward::talk
