#include "shop/row.hpp"

#include <algorithm>

namespace nutward::shop {

namespace {

std::string with_unit(std::string_view name, Kind kind) {
  std::string_view unit;
  if (kind == Kind::length) unit = "_mm";
  if (kind == Kind::load) unit = "_n";
  if (kind == Kind::mass) unit = "_g";
  if (kind == Kind::money) unit = "_minor";
  if (kind == Kind::at) unit = name == "at" ? "" : "_at";
  if (kind == Kind::day) unit = "_on";
  return std::string(name).append(unit);
}

} // namespace

std::string field_for(const Param& param) {
  return with_unit(param.name, param.kind);
}

std::string field_for(const Give& give) {
  return with_unit(give.name, give.kind);
}

const Param* Row::find(std::string_view param) const {
  auto at = std::find_if(takes.begin(), takes.end(), [&](const Param& p) { return p.name == param; });
  return at == takes.end() ? nullptr : &*at;
}

const Value* Call::find(std::string_view name) const {
  auto at = std::find_if(args.begin(), args.end(), [&](const auto& a) { return a.first == name; });
  return at == args.end() ? nullptr : &at->second;
}

std::string_view caution(Hazard hazard) {
  switch (hazard) {
  case Hazard::press:
    return "Keep hands clear of the ram; never go above the press's plate, and follow its manual and the "
           "shop's rules.";
  case Hazard::nipping:
    return "Wear eye protection when nipping: cut ends fly. Ask trained staff if the tool is new to you.";
  case Hazard::hammering:
    return "Wear eye protection when hammering, and follow the shop's rules.";
  case Hazard::sanding:
    return "No gloves, sleeves or loose hair at belt or spindle; empty the wood dust bag before steel, "
           "sparks light it. "
           "The machine's manual comes first.";
  case Hazard::hot_ends:
    return "Fret ends get hot at the sander: hold them in a block, not in the fingers.";
  case Hazard::metal_dust:
    return "Fine metal and dark-wood dust harm lungs: extraction and a mask, by the shop's rules.";
  case Hazard::glue:
    return "Glue fumes: air the room and keep it off skin and eyes, as the maker's sheet says.";
  case Hazard::iron:
    return "The iron burns: rest it in its stand, and let trained staff show it first.";
  }
  return "";
}

} // namespace nutward::shop
