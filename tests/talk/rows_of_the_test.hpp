// Rows, names and a conversation for the tests of the sentence layer alone; no shop stands behind them.
#pragma once

#include "talk/render.hpp"
#include "talk/understand.hpp"
#include "units/read.hpp"

#include <array>

namespace nutward::talk::test {

using shop::Call;
using shop::Kind;
using shop::Ref;
using shop::Thing;

inline shop::Param param(std::string_view name, Kind kind, bool required = false, bool many = false) {
  return {name, kind, required, many, "what it is"};
}

template <class R>
R row(std::string_view name, std::vector<shop::Param> takes, std::vector<std::string_view> phrases,
      std::vector<std::string_view> examples = {}) {
  R out;
  out.name = name;
  out.takes = std::move(takes);
  out.phrases = std::move(phrases);
  out.examples = std::move(examples);
  return out;
}

struct Rows {
  shop::Question fit = row<shop::Question>(
      "fit", {param("job", Kind::job, true), param("slot", Kind::slot, true), param("wire", Kind::wire)},
      {"(which|what) [piece|offcut] (fits|suits) slot {slot} [of {job}]",
       "is there [a piece|an offcut] for slot {slot} [of {job}]"},
      {"what fits slot 3 of job 12"});
  shop::Question stock = row<shop::Question>("stock", {param("wire", Kind::wire)},
                                             {"how much {wire} (do we have|is left)", "[what is] in stock"},
                                             {"how much medium is left"});
  shop::Question due = row<shop::Question>("due", {}, {"what is due [today]"}, {"what is due"});
  shop::Question job =
      row<shop::Question>("job", {param("job", Kind::job, true)}, {"(show|how is) {job}"}, {"show job 12"});
  shop::Question jobs = row<shop::Question>("jobs", {}, {"(show|list) [the] jobs"}, {"jobs"});
  shop::Command use = row<shop::Command>("use",
                                         {param("piece", Kind::piece, true), param("job", Kind::job, true),
                                          param("slot", Kind::slot, true), param("at", Kind::at)},
                                         {"(use|used|took) {piece} [in slot {slot}] [of {job}] [{at}]",
                                          "(use|took) {piece} (in|for) {job} {slot}",
                                          "(use|took) {piece} in slot {slot} (of|for) {job}"},
                                         {"use the 52.4 in slot 3 of job 12"});
  shop::Command hold =
      row<shop::Command>("hold", {param("piece", Kind::piece, true), param("job", Kind::job, true)},
                         {"hold {piece} for {job}"}, {"hold the 52.4 for job 9"});
  shop::Command scrap = row<shop::Command>("scrap", {param("piece", Kind::piece, true)},
                                           {"(scrap|bin) {piece}", "throw {piece} away"}, {"scrap the 31"});
  shop::Command pressed = row<shop::Command>(
      "pressed",
      {param("job", Kind::job, true), param("slots", Kind::slot, false, true), param("load", Kind::load),
       param("at", Kind::at)},
      {"pressed {slots} [of {job}] [at {load}] [{at}]", "pressed {job} [at {load}] [{at}]"},
      {"pressed 9-14 of job 12"});
  shop::Command add = row<shop::Command>(
      "add",
      {param("wire", Kind::wire, true), param("length", Kind::length, false, true),
       param("count", Kind::count)},
      {"add {length} of {wire}", "add {count} pieces of {wire}"}, {"add 52.4 mm of medium"});
  shop::Command note =
      row<shop::Command>("note", {param("job", Kind::job, true), param("text", Kind::words, true)},
                         {"note (on|for) {job} {text}"}, {"note on job 12 sides are dark"});
  shop::Command let_go =
      row<shop::Command>("let-go", {param("piece", Kind::piece, true)},
                         {"let {piece} go", "do not hold {piece} any more"}, {"let the 52.4 go"});
  shop::Command press_by =
      row<shop::Command>("promise", {param("job", Kind::job, true), param("due", Kind::day, true)},
                         {"{job} is due {due}", "promise {job} for {due}"}, {"promise job 12 for friday"});
  shop::Command cancel = row<shop::Command>("cancel", {param("job", Kind::job, true)},
                                            {"{job} is off", "call off {job}"}, {"cancel job 12"});
  shop::Command undo = row<shop::Command>("undo", {}, {"take back the last one"}, {"undo"});
  shop::Question every =
      row<shop::Question>("every-kind",
                          {param("words", Kind::words),
                           param("a_name", Kind::name),
                           {"which", Kind::one_of, false, false, "", {}, {"new_board", "refret", "wire.low"}},
                           param("dry", Kind::yes),
                           param("count", Kind::count),
                           param("number", Kind::number),
                           param("length", Kind::length),
                           param("lengths", Kind::length, false, true),
                           param("mass", Kind::mass),
                           param("load", Kind::load),
                           param("price", Kind::money),
                           param("when", Kind::at),
                           param("day", Kind::day),
                           param("hours", Kind::spans),
                           param("days", Kind::weekdays, false, true),
                           param("slot", Kind::slot),
                           param("slots", Kind::slot, false, true),
                           param("url", Kind::url),
                           param("wire", Kind::wire),
                           param("job", Kind::job),
                           param("piece", Kind::piece),
                           param("pieces", Kind::piece, false, true),
                           param("person", Kind::person),
                           param("machine", Kind::machine),
                           param("receiver", Kind::receiver)},
                          {});

  std::array<const shop::Question*, 6> questions{&fit, &stock, &due, &job, &jobs, &every};
  std::array<const shop::Command*, 10> commands{&use,  &hold,   &scrap,    &pressed, &add,
                                                &note, &let_go, &press_by, &cancel,  &undo};
};

inline const Rows& rows() {
  static const Rows r;
  return r;
}
inline const Phrasebook& book() {
  static const Phrasebook b{rows().questions, rows().commands};
  return b;
}

inline const Names& names() {
  static const Names n = [] {
    Names out;
    out.revision = 1;
    const auto wire = [&](std::int64_t id, std::string_view name) {
      out.wires.push_back(named({Thing::wire, id}, std::string(name), name));
    };
    wire(1, "medium"), wire(2, "medium jumbo"), wire(3, "narrow"), wire(4, "tall steel"),
        wire(5, "low steel");
    const auto job = [&](std::int64_t id, const std::string& what) {
      out.jobs.push_back(named({Thing::job, id}, "job " + std::to_string(id) + ", " + what, what));
    };
    job(12, "octave mandolin of Ines"), job(9, "tenor ukulele of Mara"), job(2, "classical guitar of Jon"),
        job(5, "bass guitar of Ida");
    out.persons.push_back(named({Thing::actor, 1}, "Ines", "Ines"));
    out.persons.push_back(named({Thing::actor, 2}, "Tomo", "Tomo"));
    out.receivers.push_back(named({Thing::receiver, 1}, "wall", "wall"));
    std::int64_t machines = 0;
    for (const char* name : {"press", "sander", "bench", "buffer"})
      out.machines.push_back(named_machine(++machines, name));
    out.zone = std::make_shared<const hours::Zone>(
        "Test/Fixed", std::vector<hours::Transition>{{units::Instant{0}, 3600, "CET"}});
    out.currency = "eur";
    return out;
  }();
  return n;
}

// Wednesday, 25 November 2026, 10:00 in the test's zone.
inline units::Instant now() {
  return units::read_instant("2026-11-25T09:00:00Z");
}

inline Understood say(std::string_view text, const State& state = {}) {
  return understand(normalise(text), {book(), names(), state, now()});
}

// The calls as canonical sentences: "use piece 41, job 12, slot 3"; "unclear: …" where it came to none.
inline std::string calls(const Understood& u) {
  std::string out = u.what == Understood::What::tell ? u.tell.kind + ": " + u.tell.text : "";
  for (const Call& c : u.calls)
    out += (out.empty() ? "" : "; ") + render(*book().row(c.row), c);
  return out;
}
inline std::string heard(std::string_view text, const State& state = {}) {
  return calls(say(text, state));
}

// A conversation in which the answer to "what fits slot 3 of job 12" offered piece 41 of medium.
inline State after_fit() {
  State s;
  s.question = Call{"fit", {{"job", Ref{Thing::job, 12}}, {"slot", std::int64_t{3}}}};
  s.about.args = {{"job", Ref{Thing::job, 12}},
                  {"slot", std::int64_t{3}},
                  {"piece", Ref{Thing::piece, 41}},
                  {"wire", Ref{Thing::wire, 1}}};
  return s;
}

} // namespace nutward::talk::test
