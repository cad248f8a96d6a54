#include "shop/meant.hpp"

#include "shop/machines.hpp"
#include "shop/nearly.hpp"

#include "units/print.hpp"
#include "units/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>

namespace nutward::shop {

namespace {

[[noreturn]] void refuse(const Param& param, std::string what, std::string would_do) {
  throw Problem(Fault::value, std::move(what), field_for(param), std::move(would_do));
}

std::string lower(std::string_view s) {
  std::string out{s};
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> out;
  std::string word;
  for (char c : lower(text) + " ") {
    const auto u = static_cast<unsigned char>(c);
    if (u >= 0x80 || std::isalnum(u) != 0)
      word += c;
    else if (!word.empty())
      out.push_back(std::exchange(word, ""));
  }
  return out;
}

// Every word of `part` begins a word of `whole`.
bool names(std::string_view part, std::string_view whole) {
  const auto have = words_of(whole);
  const auto want = words_of(part);
  return !want.empty() && std::all_of(want.begin(), want.end(), [&](const std::string& w) {
    return std::any_of(have.begin(), have.end(), [&](const std::string& h) { return h.starts_with(w); });
  });
}

std::optional<std::int64_t> whole(std::string_view s) {
  if (s.starts_with("#")) s.remove_prefix(1);
  std::int64_t v = 0;
  auto [at, error] = std::from_chars(s.data(), s.data() + s.size(), v);
  if (s.empty() || error != std::errc{} || at != s.data() + s.size()) return std::nullopt;
  return v;
}

// A Problem with one choice for each thing that may be meant; bind puts the rest of the call around it.
[[noreturn]] void ask_which(const Param& param, std::string question,
                            const std::vector<std::pair<Ref, std::string>>& which) {
  Problem problem(Fault::ambiguous, std::move(question), field_for(param),
                  "Pick one by its number, or say it more exactly.");
  for (const auto& [ref, label] : which) {
    problem.choices.push_back({label, Call{"", {{std::string(param.name), ref}}}, {}});
    if (problem.choices.size() == 9) break;
  }
  throw Problem(std::move(problem));
}

std::string joined(const std::vector<std::string>& words) {
  std::string out;
  for (const std::string& w : words)
    out += (out.empty() ? "" : ", ") + w;
  return out;
}

Value meant_wire(const Param& param, const Value& raw, const View& view) {
  if (const auto* id = std::get_if<std::int64_t>(&raw)) {
    if (view.wires().find(*id)) return Ref{Thing::wire, *id};
    refuse(param, fmt::format("There is no wire {}.", *id), "Ask for 'stock' to see the wires.");
  }
  const auto* text = std::get_if<std::string>(&raw);
  if (text == nullptr) refuse(param, "The wire is not a name or a number.", "Give the wire's name.");
  if (auto id = whole(*text)) return meant_wire(param, *id, view);
  std::vector<std::pair<Ref, std::string>> found;
  std::vector<std::string> all;
  for (const Wire& wire : view.wires().all()) {
    all.push_back(wire.name);
    if (lower(wire.name) == lower(*text)) return Ref{Thing::wire, wire.id};
    if (names(*text, wire.name)) found.push_back({{Thing::wire, wire.id}, wire.name});
  }
  if (found.size() == 1) return found.front().first;
  if (found.size() > 1) ask_which(param, fmt::format("Which wire is '{}'?", *text), found);
  refuse(param, fmt::format("No wire is called '{}'.", text->substr(0, 80)),
         all.empty() ? "Define one first: define wire medium." : "There are: " + joined(all) + ".");
}

std::string label(const Job& job) {
  std::string out = fmt::format("job {}", job.id);
  if (!job.instrument.empty()) out += ", " + job.instrument;
  if (!job.owner.empty()) out += " of " + job.owner;
  return out;
}

Value meant_job(const Param& param, const Value& raw, const View& view) {
  if (const auto* id = std::get_if<std::int64_t>(&raw)) {
    if (view.jobs().find(*id)) return Ref{Thing::job, *id};
    refuse(param, fmt::format("There is no job {}.", *id), "Ask for 'jobs' to see the open ones.");
  }
  const auto* text = std::get_if<std::string>(&raw);
  if (text == nullptr) refuse(param, "The job is not a number or a name.", "Give the job's number.");
  if (auto id = whole(*text)) return meant_job(param, *id, view);
  std::vector<std::pair<Ref, std::string>> found;
  for (const Job& job : view.jobs().open()) {
    if (names(*text, job.owner + " " + job.instrument + " " + job.note))
      found.push_back({{Thing::job, job.id}, label(job)});
  }
  if (found.size() == 1) return found.front().first;
  if (found.size() > 1) ask_which(param, fmt::format("Which job is '{}'?", *text), found);
  refuse(param, fmt::format("No open job is known by '{}'.", text->substr(0, 80)),
         "Ask for 'jobs' to see the open ones.");
}

} // namespace

std::string label(const Piece& piece, const View& view) {
  static constexpr std::array ends{"ends dressed", "one end raw", "ends raw"};
  const int raw = (piece.left != End::dressed ? 1 : 0) + (piece.right != End::dressed ? 1 : 0);
  const auto wire = view.wires().find(piece.wire);
  std::string out =
      fmt::format("{} of {}, {} (piece {}", piece.length ? units::print(*piece.length) : "unmeasured",
                  wire ? wire->name : "unknown wire", ends.at(static_cast<std::size_t>(raw)), piece.id);
  if (!piece.place.empty()) out += ", " + piece.place;
  if (piece.job) out += fmt::format(", held for job {}", *piece.job);
  return out + ")";
}

bool alike(const Piece& p, const Piece& q) {
  return p.length == q.length && p.wire == q.wire && p.kind == q.kind && p.left == q.left &&
         p.right == q.right;
}

namespace {

struct Described {
  Length length;
  std::optional<std::int64_t> wire;
};

// {length_mm, wire}, a Length, or "52.4 of medium".
std::optional<Described> described(const Param& param, const Value& raw, const View& view) {
  const Param wire_param{"wire", Kind::wire, false, false, ""};
  if (const auto* l = std::get_if<Length>(&raw)) return Described{*l, {}};
  if (const auto* node = std::get_if<std::shared_ptr<const Node>>(&raw);
      node != nullptr && !(*node)->is_list) {
    const Value* length = (*node)->find("length_mm");
    if (length == nullptr) length = (*node)->find("length");
    if (length == nullptr)
      refuse(param, "The piece has no length.",
             "Send {\"length_mm\": 52.4, \"wire\": \"medium\"} or its id.");
    Param length_param{"length", Kind::length, true, false, "", {1, 2000}};
    Described out{std::get<Length>(bind_value(length_param, *length, view)), {}};
    if (const Value* wire = (*node)->find("wire")) {
      const auto* ref = std::get_if<Ref>(wire);
      out.wire = ref != nullptr ? ref->id : std::get<Ref>(meant_wire(wire_param, *wire, view)).id;
    }
    return out;
  }
  const auto* text = std::get_if<std::string>(&raw);
  if (text == nullptr) return std::nullopt;
  try {
    const auto scanned = units::scan_length(*text, length_unit(view));
    if (!scanned) return std::nullopt;
    std::string_view rest = std::string_view(*text).substr(scanned->bytes);
    while (rest.starts_with(" "))
      rest.remove_prefix(1);
    if (rest.starts_with("of ")) rest.remove_prefix(3);
    Described out{scanned->value, {}};
    if (!rest.empty()) out.wire = std::get<Ref>(meant_wire(wire_param, std::string(rest), view)).id;
    return out;
  } catch (const units::BadQuantity& bad) {
    refuse(param, bad.what(), bad.would_do);
  }
}

Value meant_piece_of(const Param& param, const Described& d, const View& view) {
  using namespace units::literals;
  auto near = view.tin().near(d.wire, d.length, 0.5_mm, 50);
  const std::string what = units::print(d.length) + (d.wire ? " of " + view.wires().find(*d.wire)->name : "");
  if (near.empty()) {
    refuse(param, fmt::format("The tin holds nothing within 0.5 mm of {}.", what),
           "Measure it again, add it first, or ask for 'stock' to see the tin.");
  }
  // A length said to the hundredth means the piece that has it, where there is one.
  std::vector<Piece> exact;
  for (const Piece& p : near) {
    if (units::abs(*p.length - d.length) < 0.005_mm) exact.push_back(p);
  }
  if (!exact.empty()) near = exact;
  // Of equal ones any will do: the one nobody holds, then the oldest.
  std::stable_sort(near.begin(), near.end(), [](const Piece& a, const Piece& b) {
    return std::tuple(a.job.has_value(), a.id) < std::tuple(b.job.has_value(), b.id);
  });
  std::vector<std::pair<Ref, std::string>> which;
  for (auto p = near.begin(); p != near.end(); ++p) {
    const bool seen = std::any_of(near.begin(), p, [&](const Piece& q) { return alike(*p, q); });
    if (!seen) which.push_back({{Thing::piece, p->id}, label(*p, view)});
  }
  if (which.size() == 1) return which.front().first;
  ask_which(param, fmt::format("Which piece is the {}? It could be one of {}.", what, which.size()), which);
}

Value meant_piece(const Param& param, const Value& raw, const View& view) {
  std::optional<std::int64_t> id;
  if (const auto* i = std::get_if<std::int64_t>(&raw)) id = *i;
  if (const auto* text = std::get_if<std::string>(&raw); text != nullptr && whole(*text)) id = whole(*text);
  if (id) {
    if (view.tin().find(*id)) return Ref{Thing::piece, *id};
    refuse(param, fmt::format("There is no piece {}.", *id), "Give its id, or its length and wire.");
  }
  if (auto d = described(param, raw, view)) return meant_piece_of(param, *d, view);
  refuse(param, "That does not say which piece.",
         "Give its id, or its length and wire such as \"52.4 of medium\".");
}

Value meant_receiver(const Param& param, const Value& raw, const View& view) {
  std::vector<std::string> all;
  for (const Receiver& r : view.house().receivers()) {
    all.push_back(r.name);
    const auto* text = std::get_if<std::string>(&raw);
    const auto* id = std::get_if<std::int64_t>(&raw);
    if ((text != nullptr && (lower(*text) == lower(r.name) || whole(*text) == r.id)) ||
        (id != nullptr && *id == r.id)) {
      return Ref{Thing::receiver, r.id};
    }
  }
  refuse(param, "There is no such receiver.",
         all.empty() ? "None has been added." : "There are: " + joined(all) + ".");
}

Value meant_person(const Param& param, const Value& raw, const View& view) {
  const auto* id = std::get_if<std::int64_t>(&raw);
  const auto* text = std::get_if<std::string>(&raw);
  if (id == nullptr && text == nullptr)
    refuse(param, "The person is not a name or a number.", "Give the person's name.");
  const auto number = id != nullptr ? std::optional{*id} : whole(*text);
  std::vector<std::pair<Ref, std::string>> found;
  std::vector<std::string> all;
  for (const Actor& a : view.house().actors()) {
    const Ref ref{Thing::actor, a.id};
    if (number == a.id || (text != nullptr && lower(a.name) == lower(*text))) return ref;
    if (!a.retired) all.push_back(a.name);
    if (text != nullptr && names(*text, a.name)) found.emplace_back(ref, a.name);
  }
  if (number) refuse(param, fmt::format("There is no person {}.", *number), "Ask for 'persons' to see them.");
  if (found.size() == 1) return found.front().first;
  if (found.size() > 1) ask_which(param, fmt::format("Which person is '{}'?", *text), found);
  refuse(param, fmt::format("Nobody is called '{}'.", text->substr(0, 80)),
         all.empty() ? "Nobody works here yet." : "There are: " + joined(all) + ".");
}

Value meant_machine(const Param& param, const Value& raw, const View& view) {
  const auto* id = std::get_if<std::int64_t>(&raw);
  const auto* text = std::get_if<std::string>(&raw);
  if (id == nullptr && text == nullptr)
    refuse(param, "The machine is not a name or a number.", "Give the machine's name.");
  const auto number = id != nullptr ? std::optional{*id} : whole(*text);
  std::vector<std::pair<Ref, std::string>> found;
  std::vector<std::string> all;
  for (const Machine& m : view.machines().all()) {
    const Ref ref{Thing::machine, m.id};
    all.push_back(m.name);
    if (number == m.id) return ref;
    if (text == nullptr) continue;
    if (lower(m.name) == lower(*text) || lower(plural_of(m.name)) == lower(*text)) return ref;
    if (names(*text, m.name)) found.emplace_back(ref, m.name);
  }
  if (number)
    refuse(param, fmt::format("There is no machine {}.", *number), "Ask for 'machines' to see them.");
  if (found.size() == 1) return found.front().first;
  if (found.size() > 1) ask_which(param, fmt::format("Which machine is '{}'?", *text), found);
  refuse(param, fmt::format("No machine is called '{}'.", text->substr(0, 80)),
         all.empty() ? "Define one first: define machine press."
                     : nearly(*text, all) + "There are: " + joined(all) + ".");
}

Thing thing_of(Kind kind) {
  switch (kind) {
  case Kind::wire:
    return Thing::wire;
  case Kind::job:
    return Thing::job;
  case Kind::piece:
    return Thing::piece;
  case Kind::person:
    return Thing::actor;
  case Kind::machine:
    return Thing::machine;
  default:
    return Thing::receiver;
  }
}

} // namespace

Value meant(const Param& param, const Value& raw, const View& view) {
  if (const auto* ref = std::get_if<Ref>(&raw)) {
    if (ref->thing != thing_of(param.kind))
      refuse(param, "That is another kind of thing.", "Say which one is meant.");
    return meant(param, ref->id, view);
  }
  switch (param.kind) {
  case Kind::wire:
    return meant_wire(param, raw, view);
  case Kind::job:
    return meant_job(param, raw, view);
  case Kind::piece:
    return meant_piece(param, raw, view);
  case Kind::person:
    return meant_person(param, raw, view);
  case Kind::machine:
    return meant_machine(param, raw, view);
  default:
    return meant_receiver(param, raw, view);
  }
}

std::vector<Value> slot_list(const Param& param, std::string_view text) {
  std::vector<Value> out;
  const std::string like = "Give slots such as 3, 9-14 or 9,10,12.";
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t comma = std::min(text.find(',', from), text.size());
    std::string_view part = text.substr(from, comma - from);
    while (part.starts_with(' '))
      part.remove_prefix(1);
    while (part.ends_with(' '))
      part.remove_suffix(1);
    from = comma + 1;
    const std::size_t dash = part.find('-', 1);
    const auto low = whole(part.substr(0, dash));
    const auto high = dash == std::string_view::npos ? low : whole(part.substr(dash + 1));
    if (!low || !high) refuse(param, fmt::format("'{}' is no slot.", part.substr(0, 40)), like);
    for (std::int64_t s : {*low, *high}) {
      if (s < 0 || s > 48) refuse(param, fmt::format("Slot {} is beyond any board.", s), like);
    }
    for (std::int64_t s = std::min(*low, *high); s <= std::max(*low, *high); ++s)
      out.emplace_back(s);
  }
  return out;
}

std::vector<Value> weekday_list(const Param& param, std::string_view text) {
  static constexpr std::string_view days[]{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
  auto day = [&](std::string_view word) {
    for (int i = 0; i < 7; ++i) {
      if (lower(word).starts_with(days[i])) return i;
    }
    refuse(param, fmt::format("'{}' is no weekday.", word.substr(0, 40)),
           "Give days such as mon-fri or sat,sun.");
  };
  std::vector<Value> out;
  std::string all = lower(text) == "daily" ? "mon-sun" : std::string(text);
  for (std::size_t from = 0; from <= all.size();) {
    const std::size_t comma = std::min(all.find(',', from), all.size());
    std::string part = all.substr(from, comma - from);
    part.erase(std::remove(part.begin(), part.end(), ' '), part.end());
    from = comma + 1;
    const std::size_t dash = part.find('-');
    const int low = day(part.substr(0, dash));
    const int high = dash == std::string::npos ? low : day(part.substr(dash + 1));
    for (int d = low;; d = (d + 1) % 7) {
      out.emplace_back(static_cast<std::int64_t>(d));
      if (d == high) break;
    }
  }
  return out;
}

bool is_utf8(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const auto c = units::utf8_at(text, at);
    if (!c.ok) return false;
    at += c.bytes;
  }
  return true;
}

units::LengthUnit length_unit(const View& view) {
  return view.house().setting("unit").value_or("mm").starts_with("in") ? units::LengthUnit::in
                                                                       : units::LengthUnit::mm;
}

units::ForceUnit force_unit(const View& view) {
  const std::string unit = view.house().setting("load_unit").value_or("lb");
  if (unit == "n") return units::ForceUnit::n;
  if (unit == "kn") return units::ForceUnit::kn;
  if (unit == "kgf") return units::ForceUnit::kgf;
  return units::ForceUnit::lbf;
}

} // namespace nutward::shop
