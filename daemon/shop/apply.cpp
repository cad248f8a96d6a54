#include "shop/apply.hpp"

#include "shop/bind.hpp"
#include "shop/codec.hpp"
#include "shop/lists.hpp"
#include "shop/machines.hpp"
#include "shop/people.hpp"

#include <fmt/format.h>
#include <openssl/rand.h>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace nutward::shop {

void refuse_role(const Row& row, const Caller& who) {
  throw Problem(Fault::not_allowed,
                fmt::format("'{}' is for the role {} and up; {} has {}.", row.name, word_for(row.least),
                            who.name, word_for(who.role)),
                "", "Ask somebody who leads the shop.");
}

namespace {

// The calls that take a line back, newest change first: the images of what was there, and the movements
// reversed.
std::vector<Call> inverse_of(const std::vector<Change>& changes, const std::vector<std::int64_t>& movements) {
  std::vector<Call> out;
  std::for_each(movements.rbegin(), movements.rend(), [&](std::int64_t movement) {
    out.push_back({"reverse-movement", {{"movement", movement}}});
  });
  std::for_each(changes.rbegin(), changes.rend(), [&](const Change& c) {
    out.push_back({"put-back", {{"thing", c.ref}, {"was", c.was}}});
  });
  return out;
}

std::vector<Ref> refs_of(const std::vector<Change>& changes) {
  std::vector<Ref> out;
  for (const Change& c : changes) {
    if (std::find(out.begin(), out.end(), c.ref) == out.end()) out.push_back(c.ref);
  }
  return out;
}

// Journals what the transaction has changed since the last line. Returns the line's group.
std::int64_t journal(Tx& tx, const Order& order, const Moment& moment, const Call& call, const Answer& answer,
                     std::int64_t group, int sequence, std::optional<std::int64_t> undoes) {
  const auto changes = tx.backroom().take_changes();
  const auto movements = tx.backroom().take_movements();
  Line line;
  line.group = group;
  line.sequence = sequence;
  line.recorded = moment.now;
  line.happened = moment.happened;
  line.actor = order.who.actor;
  line.via = order.who.via;
  line.said = order.said;
  line.call = calls_to_json({call});
  line.answer = answer.text;
  line.touched = refs_of(changes);
  const Command* row = command(call.row);
  const bool for_good = row != nullptr && row->for_good;
  line.inverse = for_good ? "" : calls_to_json(inverse_of(changes, movements));
  line.undoes = undoes;
  return tx.backroom().append(std::move(line)).group;
}

Moment moment_of(const Args& args, const Moment& moment) {
  Moment out{moment.now, moment.now, moment.zone, moment.calendar, moment.who};
  if (args.row().find("at") == nullptr) return out;
  if (auto at = args.opt<units::Instant>("at")) {
    if (*at > moment.now) {
      throw Problem(Fault::value, fmt::format("{} is still to come.", moment.zone.human(*at)), "at",
                    "Report what has happened, with a time up to now.");
    }
    if (*at < moment.now - std::chrono::hours(24 * 366 * 5)) {
      throw Problem(Fault::value, fmt::format("{} is over five years ago.", moment.zone.human(*at)), "at",
                    "Check the year.");
    }
    out.happened = *at;
  }
  return out;
}

void expect_unchanged(const std::vector<Touched>& expects, const Tx& tx) {
  for (const Touched& t : expects) {
    const std::int64_t line = tx.journal().touched_in(t.ref);
    if (line == t.line) continue;
    const auto later = tx.journal().line(line);
    throw Problem(Fault::stale,
                  fmt::format("That choice is out of date: {} {} has changed since{}", word_for(t.ref.thing),
                              t.ref.id, later ? ": " + later->answer : "."),
                  "", "Ask again to see how things are now.");
  }
}

void ask_yes(const Command& row, const Args& args, const Moment& moment, const Tx& tx, bool confirmed) {
  if (row.wants_yes == nullptr || confirmed) return;
  const std::string why = row.wants_yes(args, moment, tx);
  if (why.empty()) return;
  Problem problem(Fault::confirm, why, "", "Say yes to do it all the same.");
  problem.choices.push_back({"yes, do it", args.call(), {}});
  throw Problem(std::move(problem));
}

const Command& command_for(const Call& call) {
  const Command* row = command(call.row);
  if (row == nullptr) {
    throw Problem(Fault::value, fmt::format("There is no command '{}'.", call.row.substr(0, 60)), "",
                  "Ask 'help' for what there is.");
  }
  return *row;
}

// One answer for the whole list: its texts one after the other.
void join(Answer& all, Answer one, bool first) {
  if (first) {
    all = std::move(one);
    return;
  }
  all.text += " " + one.text;
  if (!one.reason.empty()) all.reason += (all.reason.empty() ? "" : " ") + one.reason;
  for (Hazard h : one.cautions) {
    if (std::find(all.cautions.begin(), all.cautions.end(), h) == all.cautions.end())
      all.cautions.push_back(h);
  }
  all.about = std::move(one.about);
  all.choices = std::move(one.choices);
  all.table.reset();
}

[[noreturn]] void refuse_undo(const Tx& tx, std::int64_t later) {
  const auto line = tx.journal().line(later);
  throw Problem(Fault::state,
                fmt::format("That cannot be taken back any more, because of what came after: {}",
                            line ? line->answer : "?"),
                "", "Take that back first, or put it right with a new report.");
}

// The newest line after `own` that touched the thing and still stands: neither takes something back nor was
// taken back. 0 for none. Whatever was taken back since left the thing as it had found it.
std::int64_t standing_since(std::int64_t own, Ref ref, const Tx& tx) {
  std::set<std::int64_t> undone;
  for (std::int64_t id = tx.journal().touched_in(ref); id > own; --id) {
    const auto line = tx.journal().line(id);
    if (!line || undone.contains(line->group)) continue;
    if (line->undoes)
      undone.insert(*line->undoes);
    else if (std::find(line->touched.begin(), line->touched.end(), ref) != line->touched.end())
      return id;
  }
  return 0;
}

// Whatever the group touched must still be as it left it.
void check_untouched_since(const std::vector<Line>& lines, const Tx& tx) {
  for (const Line& line : lines) {
    for (Ref ref : line.touched) {
      if (const std::int64_t later = standing_since(lines.back().id, ref, tx)) refuse_undo(tx, later);
    }
  }
}

std::set<std::int64_t> overdrawn(const Tx& tx) {
  std::set<std::int64_t> out;
  for (const Wire& wire : tx.wires().all()) {
    if (tx.wires().on_hand(wire.id) < units::Length{}) out.insert(wire.id);
  }
  return out;
}

// Wire has no later line that touched it: what has been cut of a delivery shows as less than nothing on hand.
void check_stock(const std::set<std::int64_t>& before, const Tx& tx) {
  for (std::int64_t id : overdrawn(tx)) {
    if (before.contains(id)) continue;
    throw Problem(Fault::state,
                  fmt::format("That cannot be taken back any more: some of that {} has been cut since.",
                              tx.wires().find(id)->name),
                  "", "Take the cutting back first, or put it right with a new report.");
  }
}

constexpr Instant far_off{253'402'300'799}; // the end of the year 9999

// Something that is about a job, which has gone.
std::optional<Ref> left_of_job(std::int64_t job, const Tx& tx) {
  for (const Fret& f : tx.jobs().frets(job))
    return Ref{Thing::fret, f.id};
  for (const Stage& s : tx.jobs().stages(job))
    return Ref{Thing::stage, s.id};
  for (const Recheck& r : tx.jobs().rechecks(job))
    return Ref{Thing::recheck, r.id};
  for (const Pressing& p : tx.jobs().pressings(job))
    return Ref{Thing::pressing, p.id};
  for (const Reading& r : tx.jobs().readings(job))
    return Ref{Thing::reading, r.id};
  for (const Piece& p : tx.tin().held_for(job))
    return Ref{Thing::piece, p.id};
  for (const Booking& b : tx.machines().bookings(Instant{0}, far_off)) {
    if (b.job == job) return Ref{Thing::booking, b.id};
  }
  return std::nullopt;
}

// What names a machine that has gone.
std::optional<Ref> left_of_machine(std::int64_t machine, const Tx& tx) {
  for (const Booking& b : tx.machines().bookings(Instant{0}, far_off)) {
    if (b.machine == machine) return Ref{Thing::booking, b.id};
  }
  for (const Outage& o : tx.machines().outages(Instant{0})) {
    if (o.machine == machine) return Ref{Thing::outage, o.id};
  }
  for (const StageRule& r : tx.machines().rules()) {
    if (r.machine == machine) return Ref{Thing::stage_rule, r.id};
  }
  return std::nullopt;
}

std::optional<Ref> left_of_wire(std::int64_t wire, const Tx& tx) {
  for (const Lot& l : tx.wires().lots(wire))
    return Ref{Thing::lot, l.id};
  for (const Piece& p : tx.tin().list(wire, {}, 1))
    return Ref{Thing::piece, p.id};
  for (const Job& j : tx.jobs().recent(1'000'000)) {
    if (j.wire == wire) return Ref{Thing::job, j.id};
  }
  return std::nullopt;
}

// Somebody who has gone: what they did and what is theirs to do.
std::optional<std::int64_t> line_of_person(std::int64_t actor, const Tx& tx) {
  if (const auto group = tx.journal().last_undoable(actor)) return tx.journal().group(*group).front().id;
  for (const Job& job : tx.jobs().recent(1'000'000)) {
    if (job.builder == actor) return tx.journal().touched_in({Thing::job, job.id});
  }
  return std::nullopt;
}

bool in_sight(std::int64_t actor, const Tx& tx) {
  const auto people = tx.house().actors();
  return std::any_of(people.begin(), people.end(), [&](const Actor& a) { return a.id == actor; });
}

// Others' reports about a job or a wire touch things of their own: it does not go while any of them stands.
void check_nothing_hangs(const std::vector<Line>& lines, const Tx& tx) {
  for (const Line& line : lines) {
    for (Ref ref : line.touched) {
      std::optional<Ref> left;
      if (ref.thing == Thing::job && !tx.jobs().find(ref.id)) left = left_of_job(ref.id, tx);
      if (ref.thing == Thing::wire && !tx.wires().find(ref.id)) left = left_of_wire(ref.id, tx);
      if (ref.thing == Thing::machine && !machine_at(ref.id, tx)) left = left_of_machine(ref.id, tx);
      if (left) refuse_undo(tx, tx.journal().touched_in(*left));
      if (ref.thing == Thing::actor && !in_sight(ref.id, tx)) {
        if (const auto later = line_of_person(ref.id, tx)) refuse_undo(tx, *later);
      }
    }
  }
}

void take_back(const Line& line, Tx& tx) {
  for (const Call& call : calls_from_json(line.inverse)) {
    if (call.row == "put-back") {
      tx.backroom().put_back({std::get<Ref>(*call.find("thing")), *call.find("was")});
    } else {
      tx.backroom().reverse_movement(std::get<std::int64_t>(*call.find("movement")),
                                     fmt::format("line {} taken back", line.id));
    }
  }
}

Answer undo(const Order& order, const Moment& moment, Tx& tx) {
  const auto group = tx.journal().last_undoable(order.who.actor);
  if (!group) {
    throw Problem(Fault::state, fmt::format("{} has nothing to take back.", order.who.name), "",
                  "Ask for 'jobs' or 'stock'.");
  }
  auto lines = tx.journal().group(*group);
  for (const Line& line : lines) { // the role may be another one by now
    const std::vector<Call> calls = calls_from_json(line.call);
    const Command& row = command_for(calls.front());
    if (order.who.role < row.least) refuse_role(row, order.who);
  }
  check_untouched_since(lines, tx);
  std::string texts;
  const auto before = overdrawn(tx);
  const Leads led = leads(tx);
  const auto shared = shared_names(tx);
  std::for_each(lines.rbegin(), lines.rend(), [&](const Line& line) { take_back(line, tx); });
  check_nothing_hangs(lines, tx);
  check_stock(before, tx);
  keep_a_lead(led, tx);
  keep_uids_apart(tx);
  keep_names_apart(shared, tx);
  for (const Line& line : lines)
    texts += (texts.empty() ? "" : " ") + line.answer;
  Answer out;
  out.kind = "done";
  out.text = "Taken back: " + texts;
  out.data = record({{"undone_group", *group}});
  journal(tx, order, moment, order.calls.front(), out, 0, 1, *group);
  return out;
}

} // namespace

Answer apply_order(const Order& order, const Moment& moment, Tx& tx) {
  expect_unchanged(order.expects, tx);
  if (order.calls.empty())
    throw Problem(Fault::value, "There is nothing to do in that list.", "/calls", "Send a call.");
  Answer all;
  std::vector<Value> done;
  std::int64_t group = 0;
  int sequence = 0;
  for (const Call& call : order.calls) {
    const Command& row = command_for(call);
    if (order.who.role < row.least) refuse_role(row, order.who);
    if ((row.name == "undo" || row.for_good) && order.calls.size() > 1)
      throw Problem(Fault::value, fmt::format("'{}' stands alone.", row.name), "/calls",
                    "Send it by itself.");
    if (row.name == "undo") return undo(order, moment, tx);
    const Args args = bind(row, call, tx);
    const Moment when = moment_of(args, moment);
    ask_yes(row, args, when, tx, order.confirmed);
    Effect effect = row.apply(args, when, tx);
    effect.answer.kind = "done";
    effect.answer.text = sentence(std::move(effect.answer.text));
    group = journal(tx, order, when, args.call(), effect.answer, group, ++sequence, {});
    for (const Event& event : effect.events) {
      announce(tx, event, fmt::format("line {}.{} {}", group, sequence, event.type), moment.now);
    }
    done.push_back(record({{"row", std::string(row.name)}, {"data", effect.answer.data}}));
    join(all, std::move(effect.answer), sequence == 1);
  }
  if (sequence > 1) all.data = record({{"done", list(std::move(done))}});
  return all;
}

void announce(Tx& tx, const Event& event, const std::string& cause, units::Instant now) {
  for (const Receiver& r : tx.house().receivers()) {
    if (r.disabled) continue;
    if (!r.wants.empty() && std::find(r.wants.begin(), r.wants.end(), event.type) == r.wants.end()) continue;
    std::array<unsigned char, 16> random{};
    if (RAND_bytes(random.data(), static_cast<int>(random.size())) != 1) {
      throw Problem(Fault::broken, "The system gave no random bytes.", "", "Try again.");
    }
    OutboxEntry entry;
    entry.receiver = r.id;
    entry.message_id = "msg_";
    for (unsigned char byte : random)
      entry.message_id += fmt::format("{:02x}", byte);
    entry.cause = cause;
    entry.type = event.type;
    entry.text = event.text;
    entry.data = to_json(event.data);
    entry.happened = entry.not_before = now;
    tx.backroom().enqueue(entry);
  }
}

} // namespace nutward::shop
