// What the shop keeps, as values. Each has an id from the store (0 until it is put there).
#pragma once

#include "board/board.hpp"
#include "level/advice.hpp"
#include "pieces/fit.hpp"
#include "press/crowns.hpp"
#include "press/equipment.hpp"
#include "shop/value.hpp"
#include "wire/wire.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

using units::Day;
using units::Force;
using units::Instant;
using units::Length;
using units::Mass;
using units::Money;

struct Actor {
  std::int64_t id = 0;
  std::string name;
  int role = 0;      // shop::Role as a number: 0 look, 1 bench, 2 lead
  std::string bench; // where they work; "" not said
  std::vector<std::int64_t>
      uids{};           // of the machine's users who are this person, ascending; each is one person's
  bool retired = false; // may do nothing any more; what they did keeps their name
};

// Lets its bearer in over TCP as `actor`.
struct Token {
  std::int64_t id = 0;
  std::string name;       // one of those that are good has it, whatever its capitals
  std::int64_t actor = 0; // who its bearer is
  int role = 0;           // shop::Role as a number: at most this, and never more than the actor's own
  std::string digest;     // hex SHA-256 of the token, which is kept nowhere
  Instant made;
  std::int64_t made_by = 0; // the actor who made it
};

struct Wire {
  std::int64_t id = 0;
  std::string name;
  std::string material; // "" where it was not said
  wire::Profile profile;
  std::optional<Length> stick;        // usual length of a stick
  std::optional<Length> reorder_at;   // order when on hand and on order fall below this, whatever is expected
  std::optional<Instant> low_told_at; // wire.low was sent last then, and it has not recovered since
  std::optional<double> density;      // g/cm³; none: as the material says
  // What a metre weighs, from weighing a known length. None: never done.
  std::optional<double> linear_g_m, linear_error;
};

enum class Form { stick, coil };

struct Lot {
  std::int64_t id = 0, wire = 0;
  Form form = Form::stick;
  std::int64_t count = 1; // sticks or coils in the delivery
  Length each;            // length of one
  std::optional<Length> crown_height;
  std::string supplier;
  std::optional<Money> price; // of the whole lot
  Instant received;
  std::optional<std::int64_t> purchase_line{}; // of the order that it came with
  std::optional<Mass> gross{}, tare{}; // of one coil: what it weighed when it came, and its empty spool
};

// So much wire as somebody sells it: at most one of the three is there; none: any.
struct Amount {
  std::optional<std::int64_t> sticks{}; // 1 or more; of a wire sold in coils, coils
  std::optional<Length> length{};       // over 0
  std::optional<Mass> mass{};           // over 0
  bool any() const { return !sticks && !length && !mass; }
};

// Who wire is ordered from. No two that are there have the same name, whatever its capitals.
struct Supplier {
  std::int64_t id = 0;
  std::string name;
  Amount pack{};                  // sold in whole ones of these
  Amount minimum{};               // and not less than this in one order
  std::optional<int> lead_days{}; // calendar days that an order takes, as they say: 0 to 364
  std::string note{};
};

enum class PurchaseState { open, arrived, cancelled }; // arrived: nothing more is to come, whatever came

// An order. Part of it may have come while it is open: see Awaited.
struct Purchase {
  std::int64_t id = 0, supplier = 0;
  PurchaseState state = PurchaseState::open;
  Instant ordered;
  std::optional<Day> promised{};       // as they say by now
  std::optional<Day> promised_first{}; // and as they said first
  std::optional<Instant> closed{};     // when the last of it came, or it was cancelled
  std::string note{};
};

// One wire of an order.
struct PurchaseLine {
  std::int64_t id = 0, purchase = 0, wire = 0;
  Form form = Form::stick;
  std::int64_t count = 1;       // sticks or coils, 1 or more
  Length each;                  // length of one, over 0
  std::optional<Money> price{}; // of the whole line
  std::optional<Mass> mass{};   // of one, where it was ordered by that; `each` is worked out from it
};

enum class Measured { straight, across, not_at_all }; // across: a chord over the bent ends, at bend_radius
enum class End { raw, dressed, unknown };             // an unknown end counts as raw

struct Piece {
  std::int64_t id = 0, wire = 0;
  std::optional<std::int64_t> lot;
  pieces::Kind kind{};
  std::optional<Length> length; // along the wire; none: not measured
  Measured measured = Measured::straight;
  End left = End::unknown, right = End::unknown;
  std::optional<Length> tang; // length of the tang where it was nipped
  std::optional<Length> bend_radius;
  std::int64_t count = 1; // more than one only for a handful that nobody has measured
  std::string place;
  std::optional<std::int64_t> job; // held for this job
  std::optional<int> slot;         // and for this slot of it
  Instant added;
  bool in_tin = true;            // kept by the store from the movements
  std::vector<int> more_slots{}; // that it is held for after `slot`, in the order of cutting
};

enum class JobKind { refret, some_slots, new_board };
enum class JobState { open, done, cancelled };

struct Job {
  std::int64_t id = 0;
  JobKind kind = JobKind::refret;
  JobState state = JobState::open;
  std::string owner, instrument, wood, glue, note;
  board::Board board;
  std::vector<int> slots; // the slots that get a fret, ascending
  std::int64_t wire = 0;
  std::optional<Instant> due;                                // the closing of the promised day
  std::optional<double> humidity_seated, humidity_rechecked; // percent
  Instant taken_in;
  std::optional<Instant> press_told; // press.due was sent for the due instant that this is
  std::optional<std::int64_t> lot;   // its frets are of this lot; pieces with another crown do not fit
  std::optional<Length> slot_width, slot_depth; // as sawn, the depth in the middle of the board
  bool slot_flat_bottom = true;                 // the bottom is straight, not parallel to the board
  std::optional<std::int64_t> builder;          // the actor who does it
  std::string bench;                            // where it is done; "": the builder's, or nobody said
  std::vector<int>
      set_aside{};  // slots whose new wire is set aside, ascending; those that have their fret count no more
  press::Bed bed{}; // what the neck lies on in the press, as far as it was said
  bool soft_wood = false;                 // the board is of it: it is pressed with less
  bool nut_off = false;                   // the nut is out: a bar may reach over its place
  std::optional<int> last_ever{};         // the last fret that the board will ever have, where it was said
  std::optional<Instant> straight_seen{}; // somebody looked at the neck and it was straight; nullopt: nobody
                                          // did, or it was bowed
  int straightened = 0; // the touch that straightened the neck last (shop/touch.hpp); 0: none did
  std::vector<std::int64_t> after{}; // jobs that must be done before it is begun, ascending
  int priority = 3; // 1 can wait … 3 as usual … 9 urgent: what an hour late counts for it
};

enum class FretState { made, came_short, seated, pressed, sprang, level };

struct Fret {
  std::int64_t id = 0, job = 0;
  int slot = 0;
  FretState state = FretState::made;
  std::optional<Length> length;
  std::optional<std::int64_t> piece; // the piece of the tin that it was made of
  int touched = 0; // the touch that changed how it stands last (shop/touch.hpp); 0: none did
  // What was seen of it since then.
  level::Gap gap = level::Gap::not_asked;
  level::Cause cause = level::Cause::not_asked;
  std::optional<Length> below{}; // measured: how far below the line of its neighbours, 0 or more
};

// One stretch of work at a stage of a job; `kind` is agenda's word for the stage. Begun and neither finished
// nor stopped: somebody is at it. Stopped: the stage goes on in a later row. Without `started`: only its end
// was reported.
struct Stage {
  std::int64_t id = 0, job = 0;
  std::string kind;
  int sequence = 0;
  std::optional<Instant> started, finished;
  Instant recorded;
  std::int64_t actor = 0;               // who began it, or reported its end alone
  std::optional<Instant> stopped{};     // never together with `finished`
  std::optional<std::int64_t> open_s{}; // of one that was finished: the open time that all its stretches
                                        // took; nullopt: not known
  int frets = 0;                        // that the job set then; 0 where `open_s` is not known
};

// What a stage took, once.
struct Took {
  std::int64_t open_s = 0; // > 0, open time
  int frets = 0;           // > 0
};

enum class RecheckState { waiting, level, sprang, superseded };

struct Recheck {
  std::int64_t id = 0, job = 0;
  std::vector<int> slots; // ascending
  Instant pressed, from, due;
  RecheckState state = RecheckState::waiting;
  std::optional<Instant> done;
  bool told = false, overdue_told = false;
  std::optional<Force> load; // of the last pass, where it was said
};

// Of the shop, by name; no two that are there have the same, whatever their capitals.
struct Bar {
  std::int64_t id = 0;
  press::Bar is;
};

// One report of a pass, kept for good.
struct Pressing {
  std::int64_t id = 0, job = 0;
  std::vector<int> slots;            // ascending
  std::vector<int> gone{};           // of these, frets that were pulled since: it counts for them no more
  std::optional<Force> load{};       // nullopt: not said
  std::optional<std::int64_t> bar{}; // nullopt: not said
  Instant pressed;
  std::optional<Force> most{}; // the load was above this, the least rating then known; nullopt: it was not
};

// One laying of a straightedge, as it was reported, or one look along the frets.
struct Reading {
  std::int64_t id = 0, job = 0;
  level::Reading is; // its `revision`: how often the job had been touched when it was taken (shop/touch.hpp)
  bool line_assumed = false, span_assumed = false; // not said
  Instant taken;
};

// One fret as a recheck found it, kept for good: spring-back is counted from these.
struct Looked {
  std::int64_t id = 0, job = 0;
  std::int64_t wire = 0; // of the job, then
  int slot = 0;
  bool sprang = false;
  bool early = false; // before its recheck counted: no part of the counts
  // What it was last pressed with, with all that was under the bar; nullopt: not said.
  std::optional<Force> load{};
  int together = 0;                 // how many frets shared that load; 1: it was alone; 0: not known
  std::optional<double> n_per_mm{}; // its share of the load on its length; nullopt where either is not known
  Instant looked;
};

struct Weekday {
  std::int64_t id = 0; // 1 Monday … 7 Sunday
  std::string spans;   // "09:00-12:30 13:30-18:00"; "" closed
};

struct SpecialDay {
  std::int64_t id = 0;
  Day day;
  bool closed = false;
  std::string extra; // spans that are open besides; "" none
  std::string note;
};

// A kind of machine, or of any place where only so many can work at once. Called by its name, which no two
// that are there share, whatever its capitals.
struct Machine {
  std::int64_t id = 0;
  std::string name;
  int count = 1;            // alike ones, numbered from 1; 0: as many as are wanted
  std::int64_t setup_s = 0; // before a stage that is not the one before it there; open time
};

// Where a machine is out of service. Over once `to` has passed.
struct Outage {
  std::int64_t id = 0, machine = 0;
  int number = 0; // which of several alike ones; 0: all of them
  Instant from;
  std::optional<Instant> to{}; // nullopt: until somebody says that it is back
  std::string note{};
};

// A machine that somebody has for a time.
struct Booking {
  std::int64_t id = 0, machine = 0;
  Instant from, to;                  // from < to
  std::int64_t actor = 0;            // who has it
  std::optional<std::int64_t> job{}; // for this one
  std::string note{};
};

// What the shop says of a stage in place of what agenda's table says. One a stage.
struct StageRule {
  std::int64_t id = 0;
  std::string stage;                     // agenda's word
  std::optional<std::int64_t> machine{}; // nullopt: the table's
  std::optional<int> minutes{};          // of open time for 22 frets; nullopt: learnt, or the table's
};

// One weekday of somebody who works other hours than the shop is open. Who has one such day works only on
// those that they have.
struct OwnHours {
  std::int64_t id = 0, actor = 0;
  int weekday = 1;   // 1 Monday … 7 Sunday
  std::string spans; // as of Weekday
};

// One day on which somebody is off, or works other hours. One a person and day.
struct OwnDay {
  std::int64_t id = 0, actor = 0;
  Day day;
  std::string spans; // that they work then, in place of their weekly hours; "": off
  std::string note;
};

enum class Shape { event, cloudevents, text };

struct Receiver {
  std::int64_t id = 0;
  std::string name, url, secret; // the secret as whsec_…
  Shape shape = Shape::event;
  std::vector<std::string> wants; // event types; empty: all
  bool failing = false, disabled = false;
};

struct Setting {
  std::int64_t id = 0;
  std::string name, value;
};

// Where wire is. Every movement takes a length from one place to another, so that lengths add up to the
// nanometre.
enum class Place { outside, stock, tin, board, scrap, kerf };
enum class MovementKind {
  received,
  cut,
  made_a_piece,
  used_in_a_slot,
  scrapped,
  counted,
  corrected,
  lost, // a whole fret, that is nowhere or no good any more
};

struct Movement {
  MovementKind kind{};
  std::int64_t wire = 0;
  std::optional<std::int64_t> lot, piece, job;
  std::optional<int> slot;
  Place from = Place::outside, to = Place::stock;
  Length length;           // >= 0
  std::int64_t pieces = 0; // how many pieces enter the tin (to) or leave it (from)
  std::string reason;
};

} // namespace nutward::shop
