#include "store/jobs.hpp"

#include "store/lists.hpp"
#include "store/put.hpp"

#include <fmt/core.h>
#include <sqlite3.h>

namespace nutward::store {

using shop::Fret;
using shop::Job;
using shop::Length;
using shop::Pressing;
using shop::Reading;
using shop::Recheck;

namespace {

// A board's surface and its spots, as the columns hold them.
enum class Surface { flat, cylinder, compound };

struct Columns {
  std::optional<int> far_at_slot, radius_at_slot;
  std::optional<Length> far_at, radius, far_radius, radius_at;
  std::optional<Length> treble_scale, string_inset; // of a fan, as the next
  std::optional<int> square_slot;
  std::string positions, more_widths;
  Surface surface = Surface::flat;
};

void set_spot(const board::Spot& spot, std::optional<int>& slot, std::optional<Length>& length) {
  if (const int* n = std::get_if<int>(&spot))
    slot = *n;
  else
    length = std::get<Length>(spot);
}

board::Spot spot_of(std::optional<int> slot, std::optional<Length> length) {
  if (slot) return *slot;
  return length.value_or(Length{});
}

Columns columns_of(const board::Board& b) {
  Columns c;
  set_spot(b.far_at, c.far_at_slot, c.far_at);
  c.positions = join(b.positions);
  c.more_widths = join(b.more_widths);
  if (b.fan) {
    c.treble_scale = b.fan->treble_scale;
    c.square_slot = b.fan->square_at;
    c.string_inset = b.fan->string_inset;
  }
  if (const auto* cylinder = std::get_if<board::Cylinder>(&b.surface)) {
    c.surface = Surface::cylinder;
    c.radius = cylinder->radius;
  } else if (const auto* compound = std::get_if<board::Compound>(&b.surface)) {
    c.surface = Surface::compound;
    c.radius = compound->nut_radius;
    c.far_radius = compound->far_radius;
    set_spot(compound->far_at, c.radius_at_slot, c.radius_at);
  }
  return c;
}

board::Surface surface_of(const Columns& c) {
  if (c.surface == Surface::flat) return board::Flat{};
  if (c.surface == Surface::cylinder) return board::Cylinder{c.radius.value_or(Length{})};
  return board::Compound{c.radius.value_or(Length{}), c.far_radius.value_or(Length{}),
                         spot_of(c.radius_at_slot, c.radius_at)};
}

std::optional<board::Fan> fan_of(const Columns& c) {
  if (!c.treble_scale) return std::nullopt;
  return board::Fan{*c.treble_scale, c.square_slot.value_or(0), c.string_inset.value_or(Length{})};
}

} // namespace

template <>
struct Words<Surface> {
  static constexpr std::string_view all[] = {"flat", "cylinder", "compound"};
};

namespace {

#define JOB_COLUMNS                                                                                          \
  "SELECT id, kind, state, owner, instrument, wood, glue, note, scale_nm, divisions, board_slots, "          \
  "nut_width_nm, "                                                                                           \
  "far_width_nm, far_at_slot, far_at_nm, surface, radius_nm, far_radius_nm, radius_at_slot, radius_at_nm, "  \
  "ends, "                                                                                                   \
  "slots, wire, due_at, humidity_seated_pct, humidity_rechecked_pct, taken_in_at, press_told_at, "           \
  "lot, slot_width_nm, slot_depth_nm, slot_flat_bottom, zero_fret, positions_nm, treble_scale_nm, "          \
  "square_slot, string_inset_nm, more_widths_nm, binding_nm, builder, bench, cradled, head_clear, "          \
  "nothing_bridges, glue_set, body_from_nm, bare_from_nm, voids_nm, soft_wood, nut_off, set_aside, "         \
  "last_ever, straight_seen_at, straightened, after_jobs, priority FROM job "

Job read_job(const Query& q) {
  Job j;
  Columns c;
  std::string slots, voids, aside, after;
  board::Board& b = j.board;
  q.into(j.id, j.kind, j.state, j.owner, j.instrument, j.wood, j.glue, j.note, b.scale, b.divisions, b.slots,
         b.nut_width, b.far_width, c.far_at_slot, c.far_at, c.surface, c.radius, c.far_radius,
         c.radius_at_slot, c.radius_at, b.ends, slots, j.wire, j.due, j.humidity_seated, j.humidity_rechecked,
         j.taken_in, j.press_told, j.lot, j.slot_width, j.slot_depth, j.slot_flat_bottom, b.zero_fret,
         c.positions, c.treble_scale, c.square_slot, c.string_inset, c.more_widths, b.binding, j.builder,
         j.bench, j.bed.cradled, j.bed.head_clear, j.bed.nothing_bridges, j.bed.glue_set, j.bed.body_from,
         j.bed.bare_from, voids, j.soft_wood, j.nut_off, aside, j.last_ever, j.straight_seen, j.straightened,
         after, j.priority);
  j.bed.voids = split_stretches(voids);
  b.fan = fan_of(c);
  b.positions = split_lengths(c.positions);
  b.more_widths = split_widths(c.more_widths);
  b.far_at = spot_of(c.far_at_slot, c.far_at);
  b.surface = surface_of(c);
  j.slots = split_numbers(slots);
  j.set_aside = split_numbers(aside);
  j.after = split_ids(after);
  return j;
}

#define RECHECK_COLUMNS                                                                                      \
  "r.id, r.job, r.slots, r.pressed_at, r.from_at, r.due_at, r.state, r.done_at, r.told, r.overdue_told, "    \
  "r.load_n "

Recheck read_recheck(const Query& q) {
  Recheck r;
  std::string slots;
  q.into(r.id, r.job, slots, r.pressed, r.from, r.due, r.state, r.done, r.told, r.overdue_told, r.load);
  r.slots = split_numbers(slots);
  return r;
}

std::vector<Recheck> all_rechecks(Query& q) {
  std::vector<Recheck> out;
  while (q.next())
    out.push_back(read_recheck(q));
  return out;
}

} // namespace

std::optional<Job> Jobs::find(std::int64_t id) const {
  Query q = connection_.query(JOB_COLUMNS "WHERE id = ?1 AND withdrawn = 0");
  if (!q.with(id).next()) return std::nullopt;
  return read_job(q);
}

std::vector<Job> Jobs::open() const {
  std::vector<Job> out;
  Query q = connection_.query(JOB_COLUMNS
                              "WHERE state = 'open' AND withdrawn = 0 ORDER BY due_at IS NULL, due_at, id");
  while (q.next())
    out.push_back(read_job(q));
  return out;
}

std::vector<Job> Jobs::recent(std::size_t most) const {
  std::vector<Job> out;
  Query q = connection_.query(JOB_COLUMNS "WHERE withdrawn = 0 ORDER BY id DESC LIMIT ?1");
  q.with(static_cast<std::int64_t>(most));
  while (q.next())
    out.push_back(read_job(q));
  return out;
}

std::vector<Fret> Jobs::frets(std::int64_t job) const {
  std::vector<Fret> out;
  Query q = connection_.query("SELECT id, job, slot, state, length_nm, piece, touched, gap, cause, below_nm "
                              "FROM fret WHERE job = ?1 AND withdrawn = 0 ORDER BY slot, id");
  q.with(job);
  while (q.next()) {
    Fret& f = out.emplace_back();
    q.into(f.id, f.job, f.slot, f.state, f.length, f.piece, f.touched, f.gap, f.cause, f.below);
  }
  return out;
}

std::vector<Recheck> Jobs::rechecks(std::int64_t job) const {
  Query q = connection_.query("SELECT " RECHECK_COLUMNS
                              "FROM recheck r WHERE job = ?1 AND withdrawn = 0 ORDER BY pressed_at, id");
  return all_rechecks(q.with(job));
}

std::vector<Pressing> Jobs::pressings(std::int64_t job) const {
  std::vector<Pressing> out;
  Query q = connection_.query("SELECT id, job, slots, gone, load_n, bar, pressed_at, most_n FROM pressing "
                              "WHERE job = ?1 AND withdrawn = 0 ORDER BY pressed_at, id");
  q.with(job);
  while (q.next()) {
    Pressing& p = out.emplace_back();
    std::string slots, gone;
    q.into(p.id, p.job, slots, gone, p.load, p.bar, p.pressed, p.most);
    p.slots = split_numbers(slots);
    p.gone = split_numbers(gone);
  }
  return out;
}

std::vector<Reading> Jobs::readings(std::int64_t job) const {
  std::vector<Reading> out;
  Query q = connection_.query(
      "SELECT id, job, line, from_slot, to_slot, felt, pivot, held, gaps, snug, looks_sunk, looks_high, "
      "epsilon_nm, touches, line_assumed, span_assumed, taken_at FROM reading WHERE job = ?1 AND "
      "withdrawn = 0 ORDER BY taken_at, id");
  q.with(job);
  while (q.next()) {
    Reading& r = out.emplace_back();
    level::Reading& is = r.is;
    std::string gaps, snug, sunk, high;
    q.into(r.id, r.job, is.line, is.span.from, is.span.to, is.felt, is.pivot, is.held, gaps, snug, sunk, high,
           is.epsilon, is.revision, r.line_assumed, r.span_assumed, r.taken);
    is.gaps = split_numbers(gaps);
    is.snug = split_numbers(snug);
    is.looks_sunk = split_numbers(sunk);
    is.looks_high = split_numbers(high);
  }
  return out;
}

std::vector<Recheck> Jobs::waiting() const {
  Query q = connection_.query(
      "SELECT " RECHECK_COLUMNS "FROM recheck r JOIN job j ON j.id = r.job WHERE r.state = 'waiting' "
      "AND r.withdrawn = 0 AND j.state = 'open' AND j.withdrawn = 0 ORDER BY r.due_at, r.id");
  return all_rechecks(q);
}

std::vector<shop::ShortestArc> Jobs::shortest_arcs(std::int64_t wire) const {
  std::vector<shop::ShortestArc> out;
  Query q = connection_.query("SELECT ends, MIN(shortest_arc_nm) FROM job WHERE wire = ?1 AND withdrawn = 0 "
                              "AND shortest_arc_nm IS NOT NULL GROUP BY ends");
  q.with(wire);
  while (q.next()) {
    shop::ShortestArc& s = out.emplace_back();
    q.into(s.ends, s.arc);
  }
  return out;
}

namespace {

// None where the board has no arcs: the commands take no such board.
std::optional<Length> shortest_arc(const Job& j) {
  std::optional<Length> out;
  try {
    for (int slot : j.slots) {
      const Length arc = board::arc_length(j.board, slot);
      out = std::min(out.value_or(arc), arc);
    }
  } catch (const board::BadBoard&) {
    return std::nullopt;
  }
  return out;
}

} // namespace

std::int64_t put(Connection& connection, Images& images, const Job& j) {
  Query q = connection.query(
      "INSERT INTO job (id, kind, state, owner, instrument, wood, glue, note, scale_nm, divisions, "
      "board_slots, "
      "nut_width_nm, far_width_nm, far_at_slot, far_at_nm, surface, radius_nm, far_radius_nm, "
      "radius_at_slot, "
      "radius_at_nm, ends, slots, wire, due_at, humidity_seated_pct, humidity_rechecked_pct, taken_in_at, "
      "press_told_at, lot, slot_width_nm, slot_depth_nm, slot_flat_bottom, shortest_arc_nm, "
      "zero_fret, positions_nm, treble_scale_nm, square_slot, string_inset_nm, more_widths_nm, binding_nm, "
      "builder, bench, cradled, head_clear, nothing_bridges, glue_set, body_from_nm, bare_from_nm, "
      "voids_nm, soft_wood, nut_off, set_aside, last_ever, straight_seen_at, straightened, priority, "
      "after_jobs) "
      "VALUES (NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, "
      "?19, ?20, "
      "?21, ?22, ?23, ?24, ?25, ?26, ?27, ?28, ?29, ?30, ?31, ?32, ?33, ?34, ?35, ?36, ?37, ?38, "
      "?39, ?40, ?41, ?42, ?43, ?44, ?45, ?46, ?47, ?48, ?49, ?50, ?51, ?52, ?53, ?54, ?55, ?56, ?57) "
      "ON CONFLICT (id) DO UPDATE SET kind = excluded.kind, state = excluded.state, owner = excluded.owner, "
      "instrument = excluded.instrument, wood = excluded.wood, glue = excluded.glue, note = excluded.note, "
      "scale_nm = excluded.scale_nm, divisions = excluded.divisions, board_slots = excluded.board_slots, "
      "nut_width_nm = excluded.nut_width_nm, far_width_nm = excluded.far_width_nm, far_at_slot = "
      "excluded.far_at_slot, "
      "far_at_nm = excluded.far_at_nm, surface = excluded.surface, radius_nm = excluded.radius_nm, "
      "far_radius_nm = excluded.far_radius_nm, radius_at_slot = excluded.radius_at_slot, "
      "radius_at_nm = excluded.radius_at_nm, ends = excluded.ends, slots = excluded.slots, wire = "
      "excluded.wire, "
      "due_at = excluded.due_at, humidity_seated_pct = excluded.humidity_seated_pct, "
      "humidity_rechecked_pct = excluded.humidity_rechecked_pct, taken_in_at = excluded.taken_in_at, "
      "press_told_at = excluded.press_told_at, lot = excluded.lot, slot_width_nm = excluded.slot_width_nm, "
      "slot_depth_nm = excluded.slot_depth_nm, slot_flat_bottom = excluded.slot_flat_bottom, "
      "shortest_arc_nm = excluded.shortest_arc_nm, zero_fret = excluded.zero_fret, "
      "positions_nm = excluded.positions_nm, treble_scale_nm = excluded.treble_scale_nm, "
      "square_slot = excluded.square_slot, string_inset_nm = excluded.string_inset_nm, "
      "more_widths_nm = excluded.more_widths_nm, binding_nm = excluded.binding_nm, "
      "builder = excluded.builder, bench = excluded.bench, cradled = excluded.cradled, "
      "head_clear = excluded.head_clear, nothing_bridges = excluded.nothing_bridges, "
      "glue_set = excluded.glue_set, body_from_nm = excluded.body_from_nm, "
      "bare_from_nm = excluded.bare_from_nm, voids_nm = excluded.voids_nm, "
      "soft_wood = excluded.soft_wood, nut_off = excluded.nut_off, "
      "set_aside = excluded.set_aside, last_ever = excluded.last_ever, "
      "straight_seen_at = excluded.straight_seen_at, straightened = excluded.straightened, "
      "priority = excluded.priority, after_jobs = excluded.after_jobs");
  const board::Board& b = j.board;
  const Columns c = columns_of(b);
  q.with(j.id, j.kind, j.state, j.owner, j.instrument, j.wood, j.glue, j.note, b.scale, b.divisions, b.slots,
         b.nut_width, b.far_width, c.far_at_slot, c.far_at, c.surface, c.radius, c.far_radius,
         c.radius_at_slot, c.radius_at, b.ends, join(j.slots), j.wire, j.due, j.humidity_seated,
         j.humidity_rechecked, j.taken_in, j.press_told, j.lot, j.slot_width, j.slot_depth,
         j.slot_flat_bottom, shortest_arc(j), b.zero_fret, c.positions, c.treble_scale, c.square_slot,
         c.string_inset, c.more_widths, b.binding, j.builder, j.bench, j.bed.cradled, j.bed.head_clear,
         j.bed.nothing_bridges, j.bed.glue_set, j.bed.body_from, j.bed.bare_from, join(j.bed.voids),
         j.soft_wood, j.nut_off, join(j.set_aside), j.last_ever, j.straight_seen, j.straightened, j.priority,
         join(j.after));
  return put_row(connection, images, shop::Thing::job, j.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Fret& f) {
  Query q = connection.query(
      "INSERT INTO fret (id, job, slot, state, length_nm, piece, touched, gap, cause, below_nm) VALUES "
      "(NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10) ON CONFLICT (id) DO UPDATE SET job = "
      "excluded.job, slot = excluded.slot, state = excluded.state, length_nm = excluded.length_nm, piece = "
      "excluded.piece, touched = excluded.touched, gap = excluded.gap, cause = excluded.cause, below_nm = "
      "excluded.below_nm");
  q.with(f.id, f.job, f.slot, f.state, f.length, f.piece, f.touched, f.gap, f.cause, f.below);
  return put_row(connection, images, shop::Thing::fret, f.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Recheck& r) {
  Query q = connection.query("INSERT INTO recheck (id, job, slots, pressed_at, from_at, due_at, state, "
                             "done_at, told, overdue_told, load_n) VALUES "
                             "(NULLIF(?1, 0), ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11) ON CONFLICT (id) DO "
                             "UPDATE SET job = excluded.job, "
                             "slots = excluded.slots, pressed_at = excluded.pressed_at, from_at = "
                             "excluded.from_at, due_at = excluded.due_at, "
                             "state = excluded.state, done_at = excluded.done_at, told = excluded.told, "
                             "overdue_told = excluded.overdue_told, "
                             "load_n = excluded.load_n");
  q.with(r.id, r.job, join(r.slots), r.pressed, r.from, r.due, r.state, r.done, r.told, r.overdue_told,
         r.load);
  return put_row(connection, images, shop::Thing::recheck, r.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Pressing& p) {
  Query q = connection.query(
      "INSERT INTO pressing (id, job, slots, gone, load_n, bar, pressed_at, most_n) VALUES (NULLIF(?1, 0), "
      "?2, ?3, ?4, ?5, ?6, ?7, ?8) ON CONFLICT (id) DO UPDATE SET job = excluded.job, slots = "
      "excluded.slots, gone = excluded.gone, load_n = excluded.load_n, bar = excluded.bar, "
      "pressed_at = excluded.pressed_at, most_n = excluded.most_n");
  q.with(p.id, p.job, join(p.slots), join(p.gone), p.load, p.bar, p.pressed, p.most);
  return put_row(connection, images, shop::Thing::pressing, p.id, q);
}

std::int64_t put(Connection& connection, Images& images, const Reading& r) {
  Query q = connection.query(
      "INSERT INTO reading (id, job, line, from_slot, to_slot, felt, pivot, held, gaps, snug, looks_sunk, "
      "looks_high, epsilon_nm, touches, line_assumed, span_assumed, taken_at) VALUES (NULLIF(?1, 0), ?2, ?3, "
      "?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17) ON CONFLICT (id) DO UPDATE SET "
      "job = excluded.job, line = excluded.line, from_slot = excluded.from_slot, to_slot = "
      "excluded.to_slot, felt = excluded.felt, pivot = excluded.pivot, held = excluded.held, gaps = "
      "excluded.gaps, snug = excluded.snug, looks_sunk = excluded.looks_sunk, looks_high = "
      "excluded.looks_high, epsilon_nm = excluded.epsilon_nm, touches = excluded.touches, line_assumed = "
      "excluded.line_assumed, span_assumed = excluded.span_assumed, taken_at = excluded.taken_at");
  const level::Reading& is = r.is;
  q.with(r.id, r.job, is.line, is.span.from, is.span.to, is.felt, is.pivot, is.held, join(is.gaps),
         join(is.snug), join(is.looks_sunk), join(is.looks_high), is.epsilon, is.revision, r.line_assumed,
         r.span_assumed, r.taken);
  return put_row(connection, images, shop::Thing::reading, r.id, q);
}

} // namespace nutward::store
