// The Store: everything durable behind a few small interfaces, named by intent and returning values. One
// Store is one shop. SQLite is one of them (store/sqlite); nothing here may assume it, or that one process is
// alone.
//
// Errors: every function may throw Problem with Fault::no_room (disk full), busy or broken. A find that finds
// nothing returns nullopt or an empty list.
#pragma once

#include "hours/calendar.hpp"
#include "shop/model.hpp"
#include "shop/row.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

struct Flow {
  MovementKind kind{};
  Place from{}, to{};
  Length length; // >= 0
};

// A fret that was made of a piece of the tin.
struct FretOfTin {
  std::int64_t job = 0;
  int slot = 0;
  Instant happened;
};

// Where a wire's lengths went, of movements that nobody took back; each >= 0 but for corrections.
struct Spent {
  Length frets;   // off sticks and coils for the slots of jobs, what their cuts lost included
  Length thrown;  // whole pieces out of the tin, for no job
  Length trimmed; // into the scrap otherwise: nipped or ground off a fret or a piece that became one, or lost
  Length kerf;    // lost in cuts, those of `frets` included
};

// What went off sticks and coils in a week (weeks of seven days from Monday 00:00 UTC on, counted from the
// one with 1970-01-01, which is 0).
struct Drawn {
  std::int32_t week = 0;
  Length length; // may be below 0 where a count found more than was thought
};
constexpr std::int32_t week_of(Instant t) { // of an instant from 1970 on
  return static_cast<std::int32_t>((t.s + 3 * 86'400) / (7 * 86'400));
}
constexpr Instant week_begins(std::int32_t week) {
  return {(std::int64_t{week} * 7 - 3) * 86'400};
}

struct Wires {
  virtual ~Wires() = default;
  virtual std::optional<Wire> find(std::int64_t id) const = 0;
  virtual std::vector<Wire> all() const = 0; // by name; a shop has tens
  virtual std::optional<Lot> lot(std::int64_t id) const = 0;
  virtual std::vector<Lot> lots(std::int64_t wire) const = 0; // newest first
  virtual Length on_hand(std::int64_t wire) const = 0;        // sticks and coils; the ledger's sum
  // What went from where to where, of movements that happened from `from` on and before `before`, summed up
  // by what they are. A movement that takes back another one counts as that one, the other way.
  virtual std::vector<Flow> flows(std::int64_t wire, Instant from, Instant before) const = 0;
  // Of the same span, without what was taken back, whenever that was, and without what took it back.
  virtual Spent spent(std::int64_t wire, Instant from, Instant before) const = 0;
  // Frets that were made of pieces of the tin in that span and stayed on their boards: not those taken back,
  // nor those whose slot gave a fret to the tin again later, or lost one. In the order of the ledger.
  virtual std::vector<FretOfTin> frets_of_tin(std::int64_t wire, Instant from, Instant before) const = 0;
  // Weeks in which any was drawn from `from` on, in order: for frets, pieces and kerf, thrown away, or found
  // missing by a count; what a movement took that was taken back later is left out, corrections are too.
  virtual std::vector<Drawn> drawn(std::int64_t wire, std::int32_t from_week) const = 0;
  // When something of the wire moved first and last, or it was changed; nullopt: never.
  virtual std::optional<std::pair<Instant, Instant>> moved(std::int64_t wire) const = 0;
};

// What the tin holds of one wire.
struct TinSum {
  std::int64_t pieces = 0;     // measured pieces
  Length length;               // and their sum
  std::int64_t unmeasured = 0; // pieces nobody has measured
  std::int64_t held = 0;       // of all these, how many are held for a job
};

// Measured pieces of a wire whose lengths are within one range of `step`.
struct Bin {
  std::int64_t index = 0; // from index * step on, below (index + 1) * step
  std::int64_t pieces = 0;
  std::string place; // where most of those are that have one; "" where none has
};

struct IdlePiece {
  Piece piece;
  Instant since; // it was put in or last touched
};

struct Tin {
  virtual ~Tin() = default;
  virtual std::optional<Piece> find(std::int64_t id) const = 0; // also one that is gone
  // The pages of pieces::Source over the tin of one wire: measured single pieces that nobody holds, and those
  // held for `slot` of `job` (or for the job as a whole), marked held_for_this. Order and bounds as
  // pieces::Source says.
  virtual std::vector<pieces::PieceFacts> page(std::int64_t wire, const pieces::Walk& walk,
                                               const std::optional<pieces::Mark>& after, std::size_t at_most,
                                               std::optional<std::int64_t> job,
                                               std::optional<int> slot) const = 0;
  virtual std::vector<Piece> held_for(std::int64_t job) const = 0;
  // Pieces in the tin within `tolerance` of `length`, both ends included, nearest first, at most `most`; held
  // ones too.
  virtual std::vector<Piece> near(std::optional<std::int64_t> wire, Length length, Length tolerance,
                                  std::size_t most) const = 0;
  virtual TinSum sum(std::int64_t wire) const = 0;
  // Pieces of a wire in the tin by (length, id) from after `after` on, unmeasured last; at most `most`.
  virtual std::vector<Piece> list(std::int64_t wire, std::optional<std::int64_t> after,
                                  std::size_t most) const = 0;
  virtual std::vector<Piece> unmeasured(std::int64_t wire, std::size_t most) const = 0;
  // By index, without the empty ones; `step` is over 0. At most 2,000: no longer piece is looked at.
  virtual std::vector<Bin> bins(std::int64_t wire, Length step) const = 0;
  // Measured pieces in the tin that nobody holds and that no line of the journal has touched since before
  // `before`, by (length, id); at most `most`.
  virtual std::vector<IdlePiece> idle(std::int64_t wire, Instant before, std::size_t most) const = 0;
};

// Of the slots that get a fret, over all jobs on record of a wire that finish their ends alike.
struct ShortestArc {
  board::EndStyle ends{};
  Length arc;
};

// Frets of one wire that rechecks found, none of them early, by what they were last pressed with.
struct SprangCount {
  std::int64_t wire = 0;
  std::optional<Force> load{};   // nullopt: not said
  bool alone = false;            // under the bar; else with a group, or that is not known
  std::optional<int> n_per_mm{}; // its share on its length, in whole N/mm downward; nullopt: not known
  std::int64_t looked = 0, sprang = 0;
};

struct Jobs {
  virtual ~Jobs() = default;
  virtual std::optional<Job> find(std::int64_t id) const = 0;
  virtual std::vector<Job>
  open() const = 0; // by due, those without last, then id; the queue of a shop is short
  virtual std::vector<Job> recent(std::size_t most) const = 0;         // whatever their state, newest first
  virtual std::vector<Fret> frets(std::int64_t job) const = 0;         // by slot
  virtual std::vector<Stage> stages(std::int64_t job) const = 0;       // in the order reported
  virtual std::vector<Recheck> rechecks(std::int64_t job) const = 0;   // by pressed
  virtual std::vector<Pressing> pressings(std::int64_t job) const = 0; // in the order in which they happened
  virtual std::vector<Reading> readings(std::int64_t job) const = 0; // in the order in which they were taken
  virtual std::vector<Looked> looked(std::int64_t job) const = 0; // in the order in which they were looked at
  // Of the wire, or of all; by wire, then load (those not said first). Reads an index alone, whatever the
  // number of jobs.
  virtual std::vector<SprangCount> sprang(std::optional<std::int64_t> wire) const = 0;
  virtual std::vector<Recheck> waiting() const = 0; // rechecks of open jobs still to be done, by due
  // What a stage took the last times that it is known, the newest leading; at most `most`.
  virtual std::vector<Took> took(std::string_view stage, std::size_t most) const = 0;
  // Whatever the jobs' state: done and cancelled ones come again. Empty where the wire has had none.
  virtual std::vector<ShortestArc> shortest_arcs(std::int64_t wire) const = 0;
};

struct House {
  virtual ~House() = default;
  virtual std::vector<Weekday> week() const = 0;
  virtual std::vector<SpecialDay> special_days() const = 0; // by day
  virtual std::optional<std::string> setting(std::string_view name) const = 0;
  virtual std::vector<Actor> actors() const = 0;                 // by id; retired ones too
  virtual std::optional<Actor> actor(std::int64_t id) const = 0; // also one whose making was taken back
  virtual std::optional<Actor> actor_for_uid(std::int64_t uid) const = 0; // also a retired one
  virtual std::vector<Receiver> receivers() const = 0;
  virtual std::vector<Bar> bars() const = 0;                 // by id; a shop has a few
  virtual std::optional<Bar> bar(std::int64_t id) const = 0; // also one that was dropped
};

// What work is done with, and when it can be: machines, and the hours of people.
struct Machines {
  virtual ~Machines() = default;
  virtual std::vector<Machine> all() const = 0; // by id; a shop has a few
  // Those that are not over at `from`, by from, then id.
  virtual std::vector<Outage> outages(Instant from) const = 0;
  // Those that end after `from` and begin before `before`, by from, then id.
  virtual std::vector<Booking> bookings(Instant from, Instant before) const = 0;
  virtual std::vector<StageRule> rules() const = 0;         // by id
  virtual std::vector<OwnHours> own_hours() const = 0;      // by person, then weekday
  virtual std::vector<OwnDay> own_days(Day from) const = 0; // from that day on, by person, then day
};

// A line of an order, and what has come of it: the lots that were received for it.
struct Awaited {
  PurchaseLine line;
  std::int64_t came = 0; // sticks or coils
  Length came_length;
};

// An order of which nothing more is to come and something came.
struct Delivered {
  std::int64_t purchase = 0, supplier = 0;
  Instant ordered, received; // the last of it
};

// What wire is ordered from whom.
struct Purchases {
  virtual ~Purchases() = default;
  virtual std::vector<Supplier> suppliers() const = 0;                 // by name; a shop has a few
  virtual std::optional<Supplier> supplier(std::int64_t id) const = 0; // also one that was dropped
  virtual std::optional<Purchase> find(std::int64_t id) const = 0;
  virtual std::vector<Purchase> open() const = 0; // by promised, those without last, then id
  virtual std::vector<Purchase> closed(std::size_t most) const = 0;    // closed last first
  virtual std::vector<Awaited> lines(std::int64_t purchase) const = 0; // in the order given
  virtual std::optional<PurchaseLine> line(std::int64_t id) const = 0;
  // Of one supplier; received last first, at most `most`.
  virtual std::vector<Delivered> delivered(std::int64_t supplier, std::size_t most) const = 0;
  // Who a wire was ordered from last; nullopt: never.
  virtual std::optional<std::int64_t> last_supplier(std::int64_t wire) const = 0;
};

struct Tokens {
  virtual ~Tokens() = default;
  // By id; only those that are not withdrawn. A shop has a few.
  virtual std::vector<Token> good() const = 0;
};

// A line of the journal: one call of one list. Lines of a list share `group` and count up in `sequence`.
struct Line {
  std::int64_t id = 0, group = 0;
  int sequence = 0;
  Instant recorded, happened;
  std::int64_t actor = 0;
  std::string via, said; // the sentence, or "" where it was called
  std::string call;      // the call, as JSON text
  std::string answer;    // what was answered, for a person
  std::vector<Ref> touched;
  std::string inverse;                // the list of calls that takes it back, as JSON text; "": nothing can
  std::optional<std::int64_t> undoes; // the group that this line took back
  std::string hash;                   // hex SHA-256 over the line before and this one
};

// A line as a history tells it, and the line that took it back, where one did.
struct Past {
  Line line;
  std::optional<std::int64_t> taken_back_in;
};

// A place in a history, which goes from what happened last to what happened first; of one second, the line
// recorded last leads. Line 0 of a second stands before all that happened earlier than it.
struct Bookmark {
  Instant happened;
  std::int64_t line = 0;
};

struct Journal {
  virtual ~Journal() = default;
  virtual std::vector<Line> group(std::int64_t group) const = 0; // by sequence
  // The newest group by this actor that is no undo, has not been undone, and can be.
  virtual std::optional<std::int64_t> last_undoable(std::int64_t actor) const = 0;
  virtual std::int64_t touched_in(Ref ref) const = 0; // the newest line that touched it; 0 for none
  virtual std::optional<Line> line(std::int64_t id) const = 0;
  virtual std::int64_t newest() const = 0; // its id; 0 for an empty journal
  // Two histories: what stands behind `before` and happened at `from` or later; at most `most` lines.
  //
  // Of a job, one slot of it, a piece or a wire: lines that touched it, something that belongs to it (of a
  // job its frets, stages, rechecks and what was held for it; of a wire its lots) or moved its wire. By one
  // person where `actor` is given.
  virtual std::vector<Past> about(Ref thing, std::optional<int> slot, std::optional<std::int64_t> actor,
                                  Instant from, Bookmark before, std::size_t most) const = 0;
  // Of the whole shop, or of one person.
  virtual std::vector<Past> happened(std::optional<std::int64_t> actor, Instant from, Bookmark before,
                                     std::size_t most) const = 0;
};

struct OutboxEntry {
  std::int64_t id = 0, receiver = 0, sequence = 0; // sequence counts per receiver from 1
  std::string message_id;                          // webhook-id: the same on every attempt
  std::string cause;            // what it comes from: "recheck 7 due"; one cause is told once a receiver
  std::string type, text, data; // data as JSON text
  Instant happened, not_before;
  int attempts = 0;
  bool late = false; // was due over an hour before it could be sent
};

struct Outbox {
  virtual ~Outbox() = default;
  // Entries of receivers that are not disabled, not delivered, not leased beyond `now`, and due by `now`. A
  // next attempt or the end of a lease over 48 h ahead comes from a clock that ran ahead, and does not count.
  virtual std::vector<OutboxEntry> due(Instant now, std::size_t most) const = 0;
  virtual std::optional<Instant>
  next() const = 0; // the earliest not_before or lease end of an undelivered entry
  virtual std::int64_t undelivered(std::int64_t receiver) const = 0;
};

// A plan that was worked out in the background, kept so that a restart reshuffles nothing. A cache: it may be
// missing at any time, and is no part of the shop's history.
struct StoredPlan {
  std::string kind;         // "cuts"
  std::int64_t subject = 0; // of "cuts": the wire
  std::string digest;       // of what it was made from: 64 hex digits
  Instant made;
  bool settled = false; // false: made in haste, and a better one is being worked out
  std::string body;     // as its kind writes it
};

struct Plans {
  virtual ~Plans() = default;
  virtual std::optional<StoredPlan> find(std::string_view kind, std::int64_t subject) const = 0;
};

// Sentences that nobody understood and that are alike but for capitals, numbers and words that say nothing:
// as the newest of them was said.
struct Missed {
  std::string text;       // at most 200 bytes
  std::int64_t actor = 0; // who said it
  Instant first, last;    // when the first of them was said, and this one
  std::int64_t times = 1; // how many there were
};

// No part of the shop's history: it may be forgotten at any time.
struct Misses {
  virtual ~Misses() = default;
  virtual std::vector<Missed> since(Instant from, std::size_t most) const = 0; // the newest first
  virtual std::int64_t count() const = 0;
};

// One snapshot of the shop. References stay good as long as the View.
class View {
public:
  virtual ~View() = default;
  virtual const Wires& wires() const = 0;
  virtual const Tin& tin() const = 0;
  virtual const Jobs& jobs() const = 0;
  virtual const House& house() const = 0;
  virtual const Machines& machines() const = 0;
  virtual const Purchases& purchases() const = 0;
  virtual const Journal& journal() const = 0;
  virtual const Outbox& outbox() const = 0;
  virtual const Tokens& tokens() const = 0;
  virtual const Plans& plans() const = 0;
  virtual const Misses& misses() const = 0;
  virtual std::int64_t revision() const = 0;
};

// What was changed by a call, and how it was: opaque to everybody but the store that made it.
struct Change {
  Ref ref;
  Value was; // monostate: it was not there
};

// The side of a transaction that the executor and the door have. Commands do not see it.
struct Backroom {
  virtual ~Backroom() = default;
  // Runs `body` in a savepoint; an exception takes back all that it did, and goes on.
  virtual void nested(const std::function<void()>& body) = 0;
  // What has changed, and which movements were made, since the last call of this function; in order.
  virtual std::vector<Change> take_changes() = 0;
  virtual std::vector<std::int64_t> take_movements() = 0;
  virtual void put_back(const Change& change) = 0; // itself a change
  virtual void reverse_movement(std::int64_t id, std::string_view reason) = 0;
  // Appends the line: the store gives id and hash, stamps what it touched. Group 0 starts a new one. Returns
  // it with both.
  virtual Line append(Line line) = 0;
  virtual void
  enqueue(const OutboxEntry& entry) = 0; // id and sequence from the store; a known cause is skipped
  virtual void settle(std::int64_t entry, bool delivered, std::optional<Instant> not_before,
                      bool receiver_failing,
                      bool receiver_disabled) = 0; // counts the attempt
  virtual void lease(std::int64_t entry, Instant until) = 0;
  // Tokens stand in no line of the journal, which everybody may read, and no undo brings one back. A good one
  // of that name must not be there (std::logic_error). Returns the new id.
  virtual std::int64_t grant(const Token& token) = 0;
  virtual void withdraw(std::int64_t token, Instant now,
                        std::int64_t by) = 0; // one that is not good: nothing
  // In place of the one there of its kind and subject. No change of the shop: a commit that does nothing else
  // leaves the revision as it is and is told to nobody.
  virtual void keep(const StoredPlan& plan) = 0;
  // Counts it up where one that is `alike` is there; of all, the `most` said last are kept. No change of the
  // shop, as with a plan, and neither is forgetting them all: no undo brings one back. Returns how many there
  // were.
  virtual void keep(const Missed& missed, std::string_view alike, std::size_t most) = 0;
  virtual std::int64_t forget_misses() = 0;
};

struct Remembered {
  std::string digest; // of what was asked
  std::string answer; // as JSON text
};

// One write transaction. A `put` with id 0 makes a new thing, otherwise it replaces the one there; both
// return its id.
class Tx : public View {
public:
  virtual std::int64_t put(const Actor&) = 0;
  virtual std::int64_t put(const Wire&) = 0;
  virtual std::int64_t put(const Lot&) = 0;
  // Everything but in_tin, length and count of a piece that is there: those follow from movements.
  virtual std::int64_t put(const Piece&) = 0;
  virtual std::int64_t put(const Job&) = 0;
  virtual std::int64_t put(const Fret&) = 0;
  virtual std::int64_t put(const Stage&) = 0;
  virtual std::int64_t put(const Recheck&) = 0;
  virtual std::int64_t put(const Weekday&) = 0;
  virtual std::int64_t put(const SpecialDay&) = 0; // one a day: the day decides which is replaced
  virtual std::int64_t put(const Receiver&) = 0;
  virtual std::int64_t put(const Setting&) = 0; // one a name
  virtual std::int64_t put(const Bar&) = 0;
  virtual std::int64_t put(const Pressing&) = 0;
  virtual std::int64_t put(const Reading&) = 0;
  virtual std::int64_t put(const Looked&) = 0;
  virtual std::int64_t put(const Machine&) = 0;
  virtual std::int64_t put(const Outage&) = 0;
  virtual std::int64_t put(const Booking&) = 0;
  virtual std::int64_t put(const StageRule&) = 0; // one a stage: the stage decides which is replaced
  virtual std::int64_t put(const OwnHours&) = 0;  // likewise by person and weekday
  virtual std::int64_t put(const OwnDay&) = 0;    // and by person and day
  virtual std::int64_t put(const Supplier&) = 0;
  virtual std::int64_t put(const Purchase&) = 0;
  virtual std::int64_t put(const PurchaseLine&) = 0;
  virtual void drop(Ref ref) = 0; // takes it out of sight; undo brings it back
  // Appends to the ledger and brings the piece's length, count and in_tin up to it. Throws Problem{state}
  // where a tin or a stock would fall below zero, unless `kind` is corrected or counted.
  virtual void move(const Movement&) = 0;
  virtual Backroom& backroom() = 0;
  virtual std::optional<Remembered> recall(std::int64_t actor, std::string_view key, Instant since) const = 0;
  virtual void remember(std::int64_t actor, std::string_view key, Instant now, const Remembered&) = 0;
};

class Store {
public:
  virtual ~Store() = default;
  // Thread-safe. One snapshot for the length of the call; may be called inside itself only with another
  // snapshot.
  virtual void read(const std::function<void(const View&)>& body) = 0;
  // Thread-safe, one at a time. Returns the revision once it is durable. May call `body` again; an exception
  // from it takes everything back and goes on.
  virtual std::int64_t write(const std::function<void(Tx&)>& body) = 0;
  // Called after each commit, on the writing thread. One listener.
  virtual void on_change(std::function<void(std::int64_t)> listener) = 0;
};

} // namespace nutward::shop
