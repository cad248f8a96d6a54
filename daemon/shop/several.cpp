#include "shop/several.hpp"

#include <set>

namespace nutward::shop {

using namespace units::literals;

namespace takes {
std::vector<Param> several(std::vector<Param> then) {
  std::vector<Param> out{{"length", Kind::length, false, false, "of each, within 0.5 mm", piece_length},
                         {"count", Kind::count, false, false, "how many; all of them", {1, 200}},
                         optional(wire),
                         {"pieces", Kind::piece, false, true, "or which ones"}};
  out.insert(out.end(), then.begin(), then.end());
  return out;
}
} // namespace takes

namespace {

struct Wanted {
  const Args& args;
  const View& view;
  Length length;
  std::optional<std::int64_t> count;
  std::string words; // "44.00 mm of medium"
};

std::vector<Piece> by_ids(const Args& args, const View& view, const Setup& set) {
  std::vector<Piece> out;
  std::set<std::int64_t> seen;
  for (const Ref& r : args.many<Ref>("pieces")) {
    const auto piece = view.tin().find(r.id);
    if (!piece || !piece->in_tin)
      throw Problem(Fault::state, fmt::format("Piece {} is not in the tin.", r.id), "pieces",
                    "Ask for 'stock' to see the tin.");
    if (!seen.insert(r.id).second)
      throw Problem(Fault::value, fmt::format("{} is named twice.", named(*piece, view, set)), "pieces",
                    "Name each once.");
    out.push_back(*piece);
  }
  return out;
}

// The same call with the pieces themselves.
Choice choose(const Wanted& w, std::string label, const std::vector<Piece>& pieces) {
  Call call{w.args.call().row, {}};
  for (const auto& [name, value] : w.args.call().args) {
    if (name != "length" && name != "count" && name != "wire" && name != "pieces")
      call.args.emplace_back(name, value);
  }
  std::vector<Value> ids;
  ids.reserve(pieces.size());
  for (const Piece& p : pieces)
    ids.emplace_back(ref(Thing::piece, p.id));
  call.args.emplace_back("pieces", list(std::move(ids)));
  return {std::move(label), std::move(call), {}};
}

std::vector<std::vector<Piece>> by_kind(const std::vector<Piece>& pieces) {
  std::vector<std::vector<Piece>> out;
  for (const Piece& p : pieces) {
    const auto same =
        std::find_if(out.begin(), out.end(), [&](const auto& g) { return alike(g.front(), p); });
    if (same == out.end())
      out.push_back({p});
    else
      same->push_back(p);
  }
  for (auto& group : out)
    std::sort(group.begin(), group.end(), [](const Piece& a, const Piece& b) { return a.id < b.id; });
  return out;
}

[[noreturn]] void ask_which(const Wanted& w, const std::vector<Piece>& near,
                            const std::vector<std::vector<Piece>>& groups) {
  Problem problem(Fault::ambiguous,
                  fmt::format("Which {} of the {} near {}?", w.count.value_or(0), near.size(), w.words),
                  "length_mm", "Pick one by its number, or say it more exactly.");
  if (!w.count) problem.text = fmt::format("The {} near {} are of more than one wire.", near.size(), w.words);
  for (const auto& group : groups) {
    const auto many = static_cast<std::int64_t>(group.size());
    if (problem.choices.size() == 8 || many < w.count.value_or(1)) continue;
    const std::vector<Piece> some(group.begin(), group.begin() + w.count.value_or(many));
    problem.choices.push_back(choose(
        w,
        fmt::format("{} like the {}", plural(w.count.value_or(many), "piece"), label(some.front(), w.view)),
        some));
  }
  if (w.count) {
    const std::vector<Piece> some(near.begin(), near.begin() + *w.count);
    const bool one_wire =
        std::all_of(some.begin(), some.end(), [&](const Piece& p) { return p.wire == some.front().wire; });
    if (one_wire) problem.choices.push_back(choose(w, fmt::format("the {} nearest", *w.count), some));
  }
  throw Problem(std::move(problem));
}

bool may_be_meant(const Piece& p, const std::optional<HeldFor>& held) {
  if (!held || p.job != held->job) return false;
  return !p.slot ||
         std::any_of(held->slots.begin(), held->slots.end(), [&](int s) { return held_for(p, s); });
}

[[noreturn]] void refuse_fewer(const Wanted& w, std::size_t have) {
  throw Problem(Fault::value,
                have == 0
                    ? fmt::format("The tin holds nothing within 0.5 mm of {} that nobody holds.", w.words)
                    : fmt::format("The tin holds only {} within 0.5 mm of {} that nobody holds.",
                                  plural(static_cast<std::int64_t>(have), "piece"), w.words),
                "length_mm", "Ask for 'stock' to see the tin.");
}

} // namespace

std::vector<Piece> several_meant(const Args& args, std::optional<std::int64_t> wire,
                                 const std::optional<HeldFor>& held, const View& view) {
  const Setup set = setup(view);
  if (args.has("pieces")) return by_ids(args, view, set);
  if (!args.has("length"))
    throw Problem(Fault::value, "Which pieces?", "length_mm",
                  "Say their length, such as: the three 44s of medium.");
  if (args.has("wire")) wire = args.id("wire");
  const auto length = args.get<Length>("length");
  const Wanted w{args, view, length, args.opt<std::int64_t>("count"),
                 say(length, set) + (wire ? " of " + wire_of(view, *wire).name : "")};
  auto near = view.tin().near(wire, length, 0.5_mm, 400);
  std::erase_if(near, [&](const Piece& p) { return p.job && !may_be_meant(p, held); });
  std::vector<Piece> exact;
  std::copy_if(near.begin(), near.end(), std::back_inserter(exact),
               [&](const Piece& p) { return units::abs(*p.length - length) < 0.005_mm; });
  if (!exact.empty() && static_cast<std::int64_t>(exact.size()) >= w.count.value_or(1)) near = exact;
  const auto count = static_cast<std::size_t>(w.count.value_or(static_cast<std::int64_t>(near.size())));
  if (near.empty() || near.size() < count) refuse_fewer(w, near.size());
  const auto groups = by_kind(near);
  const bool one_wire =
      std::all_of(near.begin(), near.end(), [&](const Piece& p) { return p.wire == near.front().wire; });
  if (!one_wire || (near.size() > count && groups.size() > 1)) ask_which(w, near, groups);
  std::vector<Piece> out = groups.size() == 1 ? groups.front() : near;
  out.resize(count);
  std::sort(out.begin(), out.end(), [](const Piece& a, const Piece& b) {
    return std::tuple(a.length, a.id) < std::tuple(b.length, b.id);
  });
  return out;
}

} // namespace nutward::shop
