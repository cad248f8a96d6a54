#include "shop/render.hpp"

#include "shop/lists.hpp"
#include "units/print.hpp"
#include "units/read.hpp"

#include <fmt/format.h>

namespace nutward::shop {
namespace {

// A name of a row or parameter as it is said: "new-job" is "new job".
std::string spoken(std::string_view name) {
  std::string out;
  for (char c : name) {
    const bool joint = c == ' ' || c == '-' || c == '_' || c == '.';
    if (!joint)
      out += c;
    else if (!out.empty() && !out.ends_with(' '))
      out += ' ';
  }
  while (out.ends_with(' '))
    out.pop_back();
  return out;
}

std::string quoted(const std::string& text) {
  std::string out = "\"";
  for (char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + "\"";
}

std::string text(Kind kind, const std::string& s) {
  if (kind == Kind::spans && !s.empty() && s.find_first_not_of("0123456789:-, ") == std::string::npos)
    return s;
  return kind == Kind::one_of ? spoken(s) : quoted(s);
}

std::string weekday(std::int64_t d) {
  static constexpr std::string_view names[]{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
  return d >= 0 && d < 7 ? std::string(names[d]) : std::to_string(d);
}

std::string decimal(double v) {
  std::string out = fmt::format("{}", v);
  if (out.find('e') == std::string::npos) return out;
  out = fmt::format("{:.20f}", v);
  while (out.ends_with('0'))
    out.pop_back();
  if (out.ends_with('.')) out.pop_back();
  return out;
}

std::string milli(std::int64_t v) { // a whole number of thousandths
  std::string out = fmt::format("{}{}.{:03}", v < 0 ? "-" : "", std::abs(v / 1000), std::abs(v % 1000));
  while (out.ends_with('0'))
    out.pop_back();
  if (out.ends_with('.')) out.pop_back();
  return out;
}

std::string node(const Param& param, const Node& n) {
  std::string out;
  if (n.is_list) {
    for (const Value& v : n.items)
      out += (out.empty() ? "" : " and ") + render(param, v);
    return out;
  }
  if (const Value* length = n.find("length_mm")) {
    const double* mm = std::get_if<double>(length);
    out = units::print_exact_mm(units::from_mm(mm != nullptr ? *mm : 0)) + " mm";
  }
  if (const Value* wire = n.find("wire")) {
    out += " of ";
    if (const auto* name = std::get_if<std::string>(wire))
      out += quoted(*name);
    else
      out += "wire " + render(Param{"wire", Kind::wire, false, false, ""}, *wire);
  }
  return out;
}

struct Printer {
  const Param& param;
  std::string operator()(std::monostate) const { return ""; }
  std::string operator()(bool v) const { return v ? "yes" : "no"; }
  std::string operator()(std::int64_t v) const {
    return param.kind == Kind::weekdays ? weekday(v) : std::to_string(v);
  }
  std::string operator()(double v) const { return decimal(v); }
  std::string operator()(const std::string& v) const { return text(param.kind, v); }
  std::string operator()(units::Length v) const { return units::print_exact_mm(v) + " mm"; }
  std::string operator()(units::Force v) const { // in pounds where they read back to the digit
    const std::string lb = decimal(std::round(v.n / units::newtons_per_lbf * 100) / 100) + " lb";
    return units::read_force(lb, units::ForceUnit::lbf).n == v.n ? lb : decimal(v.n) + " N";
  }
  std::string operator()(units::Mass v) const { return milli(v.mg) + " g"; }
  std::string operator()(units::Money v) const {
    return fmt::format("{}{}.{:02}", v.minor < 0 ? "-" : "", std::abs(v.minor / 100),
                       std::abs(v.minor % 100));
  }
  std::string operator()(units::Instant v) const { return units::print_utc(v); }
  std::string operator()(units::Day v) const { return units::print(v); }
  std::string operator()(const Ref& v) const { return std::to_string(v.id); }
  std::string operator()(const std::shared_ptr<const Node>& v) const { return v ? node(param, *v) : ""; }
};

Kind kind_of(const Value& v) {
  return std::holds_alternative<std::string>(v) ? Kind::words : Kind::count;
}

} // namespace

std::string render(const Param& param, const Value& value) {
  return std::visit(Printer{param}, value);
}

std::string render(const Row& row, const Call& call) {
  return render(row, call, [](const Param& param, const Value& value) { return render(param, value); });
}

std::string render(const Row& row, const Call& call, const InWords& in_words) {
  std::string out = spoken(row.name);
  bool first = true;
  for (const auto& [name, value] : call.args) {
    const Param* p = row.find(name);
    const bool bare_yes = std::holds_alternative<bool>(value) && std::get<bool>(value);
    out += (first ? " " : ", ") + spoken(name);
    first = false;
    if (bare_yes) continue;
    out += " " + in_words(p != nullptr ? *p : Param{name, kind_of(value), false, false, ""}, value);
  }
  return out;
}

std::string render(const Call& call) {
  if (const Question* q = question(call.row)) return render(*q, call);
  if (const Command* c = command(call.row)) return render(*c, call);
  return render(Row{call.row, "", {}, {}, {}, Role::look}, call);
}

} // namespace nutward::shop
