#include "shop/example.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace nutward::shop {

namespace {

// What the demo shop calls its things, as far as examples name them.
constexpr std::array<std::string_view, 4> wires{"medium", "tall", "narrow", "brass"};
constexpr std::array<std::string_view, 2> suppliers{"Lindwurm", "Ferro"};
constexpr std::array<std::int64_t, 3> pieces{1, 4, 30};
constexpr std::array<std::string_view, 2> machines{"press", "sander"};
constexpr std::string_view person = "Ines", receiver = "wall", instrument = "mandolin";

template <class All>
bool among(const All& all, std::string_view word) {
  return std::find(all.begin(), all.end(), word) != all.end();
}

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}
bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

// A name that might be read as something else is said in quotes.
std::string in_quotes(const std::string& name) {
  if (!name.empty() && std::all_of(name.begin(), name.end(), [](char c) { return is_letter(c) || c == ' '; }))
    return name;
  std::string out = "\"";
  for (char c : name) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + "\"";
}

bool has_named(const std::vector<std::string>& names, std::string_view begin) {
  return std::any_of(names.begin(), names.end(), [&](const std::string& n) { return n.starts_with(begin); });
}

// A word of an example, and the one before it.
struct Spot {
  std::string_view word, before;
  bool names_new = false; // the example names a thing that is new
  bool goes_on = false;   // "9-14", "7 and 8": more than one number
};

std::optional<std::string> number_for(const Spot& at, const Sample& s) {
  std::int64_t n = 0;
  std::from_chars(at.word.data(), at.word.data() + at.word.size(), n);
  const auto put = [&](const auto& all) -> std::optional<std::string> {
    if (all.empty() || std::find(all.begin(), all.end(), n) != all.end()) return std::nullopt;
    return std::to_string(all.front());
  };
  if (at.before == "job") return s.job ? std::optional{std::to_string(*s.job)} : put(s.jobs);
  if (at.before == "piece") return put(s.pieces);
  const bool slot = at.before == "slot" || at.before == "fret";
  if (slot && s.slot && !at.goes_on) return std::to_string(*s.slot);
  return std::nullopt;
}

std::optional<std::string> name_for(const Spot& at, const Sample& s) {
  if (at.names_new) return std::nullopt;
  if (among(wires, at.word)) {
    if (!s.wire.empty()) return in_quotes(s.wire);
    if (s.wires.empty() || among(s.wires, at.word)) return std::nullopt;
    return in_quotes(s.wires.front());
  }
  if (at.word == person) {
    if (!s.person.empty()) return in_quotes(s.person);
    if (s.people.empty() || among(s.people, at.word)) return std::nullopt;
    return in_quotes(s.people.front());
  }
  if (among(machines, at.word) && at.before == "the" && !s.machine.empty()) return in_quotes(s.machine);
  const auto has_it = [&](const std::string& name) { return name.find(at.word) != std::string::npos; };
  if (at.word == instrument && !s.instruments.empty() &&
      std::none_of(s.instruments.begin(), s.instruments.end(), has_it))
    return in_quotes(s.instruments.front());
  if (among(suppliers, at.word) && !s.suppliers.empty() && !has_named(s.suppliers, at.word))
    return in_quotes(s.suppliers.front());
  if (at.word == receiver && at.before == "receiver" && !s.sent_to.empty() && !among(s.sent_to, at.word))
    return in_quotes(s.sent_to.front());
  return std::nullopt;
}

} // namespace

Sample sample_of(const View& view) {
  Sample out;
  for (const Job& job : view.jobs().open()) {
    out.jobs.push_back(job.id);
    if (!job.instrument.empty()) out.instruments.push_back(job.instrument);
  }
  for (const Wire& wire : view.wires().all())
    out.wires.push_back(wire.name);
  for (const Actor& actor : view.house().actors())
    if (!actor.retired) out.people.push_back(actor.name);
  for (const Supplier& supplier : view.purchases().suppliers())
    out.suppliers.push_back(supplier.name);
  for (const Receiver& r : view.house().receivers())
    out.sent_to.push_back(r.name);
  for (std::int64_t id : pieces) {
    const auto piece = view.tin().find(id);
    if (piece && piece->in_tin) out.pieces.push_back(id);
  }
  for (const Wire& wire : view.wires().all()) {
    if (!out.pieces.empty()) break;
    for (const Piece& piece : view.tin().list(wire.id, {}, 3))
      if (piece.length && !piece.job) out.pieces.push_back(piece.id);
  }
  return out;
}

bool example_shows(std::string_view example, Kind kind) {
  const auto has = [&](std::string_view part) { return example.find(part) != std::string_view::npos; };
  switch (kind) {
  case Kind::job:
    return has("job ");
  case Kind::slot:
    return has("slot ") || has("fret ");
  case Kind::wire:
    return std::any_of(wires.begin(), wires.end(), has);
  case Kind::person:
    return has(person);
  case Kind::machine:
    return has("the press") || has("the sander");
  case Kind::length:
    return has(" mm");
  case Kind::load:
    return has(" lb");
  case Kind::day:
    return has("202") || has("day") || has("tomorrow");
  default:
    return false;
  }
}

std::string example_in(std::string_view example, const Sample& sample) {
  const bool names_new = example.starts_with("define ") || example.starts_with("new wire") ||
                         example.starts_with("new supplier") || example.starts_with("add receiver");
  std::string out;
  std::string_view before;
  for (std::size_t i = 0; i < example.size();) {
    const bool letters = is_letter(example[i]), digits = is_digit(example[i]);
    std::size_t end = i + 1;
    while (end < example.size() &&
           ((letters && is_letter(example[end])) || (digits && is_digit(example[end]))))
      ++end;
    const std::string_view word = example.substr(i, end - i), rest = example.substr(end);
    const bool goes_on = rest.starts_with('-') || rest.starts_with(" and ") || rest.starts_with('.');
    std::optional<std::string> put;
    if (digits) put = number_for({word, before, names_new, goes_on}, sample);
    if (letters) put = name_for({word, before, names_new, false}, sample);
    out += put.value_or(std::string(word));
    if (letters || digits) before = word;
    i = end;
  }
  return out;
}

} // namespace nutward::shop
