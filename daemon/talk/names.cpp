#include "talk/names.hpp"

#include "shop/leaning.hpp"
#include "shop/machines.hpp"
#include "shop/setup.hpp"
#include "talk/normalise.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::talk {

const std::vector<Named>& Names::of(shop::Kind kind) const {
  switch (kind) {
  case shop::Kind::wire:
    return wires;
  case shop::Kind::job:
    return jobs;
  case shop::Kind::person:
    return persons;
  case shop::Kind::machine:
    return machines;
  default:
    return receivers;
  }
}

Named named(shop::Ref ref, std::string label, std::string_view name) {
  Named out{ref, std::move(label), fold(name), {}};
  std::string text{name};
  if (text.size() > most_bytes) text.resize(most_bytes);
  try {
    for (const Token& t : normalise(text).tokens) {
      if (t.kind != Token::Kind::symbol) out.words.push_back(t.is_number() ? t.number : t.word);
    }
  } catch (const BadText&) {
    // A name that cannot be said can still be meant by its id.
  }
  return out;
}

namespace {

// What an instrument is called at the bench as well.
void add_short_forms(Named& named) {
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 3> forms{
      {{"ukulele", "uke"}, {"mandolin", "mando"}, {"violoncello", "cello"}}};
  for (const auto& [whole, brief] : forms) {
    if (std::find(named.words.begin(), named.words.end(), whole) != named.words.end())
      named.words.emplace_back(brief);
  }
}

// "Two mediums": several pieces of it.
void add_plural(Named& named) {
  const std::vector<std::string> words = named.words;
  for (const std::string& word : words)
    if (word.size() > 2 && !word.ends_with('s')) named.words.push_back(word + "s");
}

std::string label_of(const shop::Job& job) {
  std::string out = fmt::format("job {}", job.id);
  if (!job.instrument.empty()) out += ", " + job.instrument;
  if (!job.owner.empty()) out += " of " + job.owner;
  return out;
}

} // namespace

Named named_machine(std::int64_t id, const std::string& name) {
  Named out = named({shop::Thing::machine, id}, name, name);
  for (std::string& word : named({}, "", shop::plural_of(name)).words) {
    if (std::find(out.words.begin(), out.words.end(), word) == out.words.end())
      out.words.push_back(std::move(word));
  }
  return out;
}

Names read_names(const shop::View& view, shop::Rooms& rooms) {
  Names out;
  out.revision = view.revision();
  for (const shop::Wire& w : view.wires().all()) {
    out.wires.push_back(named({shop::Thing::wire, w.id}, w.name, w.name));
    add_plural(out.wires.back());
  }
  for (const shop::Job& j : view.jobs().open()) {
    out.jobs.push_back(
        named({shop::Thing::job, j.id}, label_of(j), j.instrument + " " + j.owner + " " + j.note));
    add_short_forms(out.jobs.back());
  }
  for (const shop::Bar& b : view.house().bars())
    out.bars.push_back(named({}, b.is.name, b.is.name));
  for (const shop::Actor& a : view.house().actors()) {
    if (!a.bench.empty()) out.benches.push_back(named({}, a.bench, a.bench));
    out.persons.push_back(named({shop::Thing::actor, a.id}, a.name + (a.retired ? ", retired" : ""), a.name));
  }
  for (const shop::Machine& m : view.machines().all())
    out.machines.push_back(named_machine(m.id, m.name));
  for (const shop::Receiver& r : view.house().receivers()) {
    out.receivers.push_back(named({shop::Thing::receiver, r.id}, r.name, r.name));
  }
  for (const shop::Supplier& s : view.purchases().suppliers())
    out.suppliers.push_back(named({shop::Thing::supplier, s.id}, s.name, s.name));
  for (const auto* things : {&out.wires, &out.jobs, &out.persons, &out.machines, &out.receivers}) {
    for (const Named& n : *things)
      out.called.insert(n.words.begin(), n.words.end());
  }
  const shop::Rooms::Held held = rooms.of(view);
  out.zone = held.zone, out.calendar = held.calendar;
  const shop::Setup setup = shop::setup(view);
  out.length = setup.unit;
  out.unit = view.house().setting("unit").value_or("mm");
  out.load = setup.load_unit;
  out.currency = fold(setup.currency);
  out.settings = shop::leaned_on(view);
  out.sample = shop::sample_of(view);
  return out;
}

} // namespace nutward::talk
