-- The first schema: everything that cannot be added later without pain.
--
-- Words are stored as text and checked, numbers carry their unit in the name: _nm nanometres, _n newtons, _minor minor
-- units of the shop's currency, _at seconds since 1970 UTC, _day days since 1970-01-01, _pct percent. Flags are 0 or 1.
-- `withdrawn` rows are out of sight until an undo brings them back; no row of an undoable table is ever deleted, so an
-- id is never given twice. The runner wraps this file in a transaction and sets the version inside it.

CREATE TABLE shop (                    -- always exactly one row
  id        INTEGER PRIMARY KEY CHECK (id = 1),
  revision  INTEGER NOT NULL,          -- one more with each commit that changed anything
  last_line INTEGER NOT NULL,          -- id of the newest journal line, 0 for none: shows a cut-off journal
  last_hash TEXT    NOT NULL           -- and its hash
) STRICT;
INSERT INTO shop (id, revision, last_line, last_hash)
VALUES (1, 0, 0, '0000000000000000000000000000000000000000000000000000000000000000');

CREATE TABLE actor (
  id        INTEGER PRIMARY KEY,
  name      TEXT    NOT NULL,
  role      TEXT    NOT NULL CHECK (role IN ('look', 'bench', 'lead')),
  bench     TEXT    NOT NULL,          -- where they work; '' not said
  uids      TEXT    NOT NULL DEFAULT '', -- the machine's users who are this person, ascending: '1000,1001'
  retired   INTEGER NOT NULL DEFAULT 0 CHECK (retired IN (0, 1)), -- may do nothing any more; what they did keeps their name
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE wire (
  id                INTEGER PRIMARY KEY,
  name              TEXT    NOT NULL,
  material          TEXT    NOT NULL,  -- '' not said
  crown_width_nm    INTEGER CHECK (crown_width_nm > 0),    -- these five: NULL not known
  crown_height_nm   INTEGER CHECK (crown_height_nm > 0),
  tang_depth_nm     INTEGER CHECK (tang_depth_nm > 0),
  tang_thickness_nm INTEGER CHECK (tang_thickness_nm > 0),
  barb_width_nm     INTEGER CHECK (barb_width_nm > 0),
  stick_nm          INTEGER CHECK (stick_nm > 0),          -- usual length of a stick
  reorder_at_nm     INTEGER CHECK (reorder_at_nm >= 0),    -- on hand and on order below this is low
  low_told_at       INTEGER,                               -- wire.low was sent last then; NULL: not, or it has recovered
  density_g_cm3     REAL CHECK (density_g_cm3 > 0),        -- NULL: as the material says
  linear_g_m        REAL CHECK (linear_g_m > 0),           -- what a metre weighs, from weighing a known length
  linear_error      REAL CHECK (linear_error >= 0),        -- and how well that is known, as a share of it
  on_hand_nm        INTEGER NOT NULL DEFAULT 0,            -- sticks and coils; follows from the movements
  withdrawn         INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE supplier (                                       -- who wire is ordered from
  id             INTEGER PRIMARY KEY,
  name           TEXT    NOT NULL CHECK (name <> ''),
  pack_sticks    INTEGER CHECK (pack_sticks >= 1),           -- sold in whole ones; of these three at most one
  pack_nm        INTEGER CHECK (pack_nm > 0),
  pack_mg        INTEGER CHECK (pack_mg > 0),
  minimum_sticks INTEGER CHECK (minimum_sticks >= 1),        -- not less in one order; of these three at most one
  minimum_nm     INTEGER CHECK (minimum_nm > 0),
  minimum_mg     INTEGER CHECK (minimum_mg > 0),
  lead_days      INTEGER CHECK (lead_days BETWEEN 0 AND 364), -- calendar days that they say; NULL not said
  note           TEXT    NOT NULL,
  withdrawn      INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  CHECK ((pack_sticks IS NOT NULL) + (pack_nm IS NOT NULL) + (pack_mg IS NOT NULL) <= 1),
  CHECK ((minimum_sticks IS NOT NULL) + (minimum_nm IS NOT NULL) + (minimum_mg IS NOT NULL) <= 1)
) STRICT;

CREATE TABLE purchase (                                       -- an order
  id             INTEGER PRIMARY KEY,
  supplier       INTEGER NOT NULL REFERENCES supplier (id),
  state          TEXT    NOT NULL CHECK (state IN ('open', 'arrived', 'cancelled')),
  ordered_at     INTEGER NOT NULL,
  promised       INTEGER,                                    -- a day; NULL not said
  promised_first INTEGER,                                    -- as it was said first
  closed_at      INTEGER,                                    -- when the last of it came, or it was cancelled
  note           TEXT    NOT NULL,
  withdrawn      INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  CHECK ((closed_at IS NULL) = (state = 'open'))
) STRICT;
CREATE INDEX purchase_open ON purchase (promised, id) WHERE state = 'open' AND withdrawn = 0;
CREATE INDEX purchase_closed ON purchase (closed_at, id) WHERE closed_at IS NOT NULL;
CREATE INDEX purchase_supplier ON purchase (supplier, closed_at);

CREATE TABLE purchase_line (                                  -- one wire of an order
  id          INTEGER PRIMARY KEY,
  purchase    INTEGER NOT NULL REFERENCES purchase (id),
  wire        INTEGER NOT NULL REFERENCES wire (id),
  form        TEXT    NOT NULL CHECK (form IN ('stick', 'coil')),
  count       INTEGER NOT NULL CHECK (count >= 1),           -- sticks or coils
  each_nm     INTEGER NOT NULL CHECK (each_nm > 0),          -- length of one
  price_minor INTEGER CHECK (price_minor >= 0),              -- of the whole line
  mass_mg     INTEGER CHECK (mass_mg > 0),                   -- of one, where it was ordered by that
  withdrawn   INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX purchase_line_purchase ON purchase_line (purchase);
CREATE INDEX purchase_line_wire ON purchase_line (wire, purchase);

CREATE TABLE lot (
  id              INTEGER PRIMARY KEY,
  wire            INTEGER NOT NULL REFERENCES wire (id),
  form            TEXT    NOT NULL CHECK (form IN ('stick', 'coil')),
  count           INTEGER NOT NULL CHECK (count >= 1),     -- sticks or coils in the delivery
  each_nm         INTEGER NOT NULL CHECK (each_nm > 0),    -- length of one
  crown_height_nm INTEGER CHECK (crown_height_nm > 0),     -- as measured on this lot
  supplier        TEXT    NOT NULL,
  price_minor     INTEGER,                                 -- of the whole lot
  received_at     INTEGER NOT NULL,
  purchase_line   INTEGER REFERENCES purchase_line (id),   -- of the order that it came with
  gross_mg        INTEGER CHECK (gross_mg > 0),            -- of one coil, as it came
  tare_mg         INTEGER CHECK (tare_mg >= 0),            -- of its empty spool
  withdrawn       INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX lot_wire ON lot (wire, received_at);
CREATE INDEX lot_purchase ON lot (purchase_line) WHERE purchase_line IS NOT NULL;

CREATE TABLE job (
  id                     INTEGER PRIMARY KEY,
  kind                   TEXT    NOT NULL CHECK (kind IN ('refret', 'some_slots', 'new_board')),
  state                  TEXT    NOT NULL CHECK (state IN ('open', 'done', 'cancelled')),
  owner                  TEXT    NOT NULL,
  instrument             TEXT    NOT NULL,
  wood                   TEXT    NOT NULL,
  glue                   TEXT    NOT NULL,
  note                   TEXT    NOT NULL,
  scale_nm               INTEGER NOT NULL CHECK (scale_nm > 0),
  divisions              INTEGER NOT NULL CHECK (divisions > 0),
  board_slots            INTEGER NOT NULL CHECK (board_slots > 0),   -- the board's highest slot
  zero_fret              INTEGER NOT NULL DEFAULT 0 CHECK (zero_fret IN (0, 1)),
  positions_nm           TEXT    NOT NULL DEFAULT '',                -- of the slots from 1 on, as measured: '36370000,70699000'
  treble_scale_nm        INTEGER CHECK (treble_scale_nm BETWEEN 1 AND scale_nm), -- of a fan, as the next two; scale_nm: bass
  square_slot            INTEGER CHECK (square_slot >= 0),
  string_inset_nm        INTEGER CHECK (string_inset_nm >= 0),       -- of the outer strings, from the edges
  nut_width_nm           INTEGER NOT NULL CHECK (nut_width_nm > 0),
  far_width_nm           INTEGER NOT NULL CHECK (far_width_nm > 0),
  far_at_slot            INTEGER,                                    -- the far width was measured at this slot
  far_at_nm              INTEGER,                                    -- or at this distance from the nut
  more_widths_nm         TEXT    NOT NULL DEFAULT '',                -- at slots and distances: 'slot 5:46100000,480000000:56200000'
  surface                TEXT    NOT NULL CHECK (surface IN ('flat', 'cylinder', 'compound')),
  radius_nm              INTEGER CHECK (radius_nm > 0),              -- of a cylinder; at the nut of a compound
  far_radius_nm          INTEGER CHECK (far_radius_nm > 0),
  radius_at_slot         INTEGER,                                    -- where the far radius is, as for the far width
  radius_at_nm           INTEGER,
  ends                   TEXT    NOT NULL CHECK (ends IN ('rounded', 'filed')),
  binding_nm             INTEGER CHECK (binding_nm > 0),             -- thickness at one edge; NULL not bound
  slots                  TEXT    NOT NULL,                           -- that get a fret, ascending: '1,2,3'
  wire                   INTEGER NOT NULL REFERENCES wire (id),
  due_at                 INTEGER,                                    -- closing of the promised day
  humidity_seated_pct    REAL CHECK (humidity_seated_pct BETWEEN 0 AND 100),
  humidity_rechecked_pct REAL CHECK (humidity_rechecked_pct BETWEEN 0 AND 100),
  taken_in_at            INTEGER NOT NULL,
  press_told_at          INTEGER,                                    -- press.due was sent for this due instant
  lot                    INTEGER REFERENCES lot (id),                -- that its frets are of, where it matters
  slot_width_nm          INTEGER CHECK (slot_width_nm > 0),          -- as sawn; these two: NULL not measured
  slot_depth_nm          INTEGER CHECK (slot_depth_nm > 0),          -- in the middle of the board
  slot_flat_bottom       INTEGER NOT NULL DEFAULT 1 CHECK (slot_flat_bottom IN (0, 1)),
  shortest_arc_nm        INTEGER,                                    -- of `slots`: follows from the board
  builder                INTEGER REFERENCES actor (id),              -- who does it; NULL nobody said
  bench                  TEXT    NOT NULL DEFAULT '',                -- where it is done; '' the builder's, or not said
  set_aside              TEXT    NOT NULL DEFAULT '',                -- slots whose new wire is set aside, ascending: '4,5'
  cradled                INTEGER NOT NULL DEFAULT 0 CHECK (cradled IN (0, 1)), -- in the press, as the next three: 0 not said
  head_clear             INTEGER NOT NULL DEFAULT 0 CHECK (head_clear IN (0, 1)),
  nothing_bridges        INTEGER NOT NULL DEFAULT 0 CHECK (nothing_bridges IN (0, 1)),
  glue_set               INTEGER NOT NULL DEFAULT 0 CHECK (glue_set IN (0, 1)),
  body_from_nm           INTEGER CHECK (body_from_nm > 0),           -- a closed body under the board from here on
  bare_from_nm           INTEGER CHECK (bare_from_nm > 0),           -- nothing under it from here on
  voids_nm               TEXT    NOT NULL DEFAULT '',                -- hollows under it: '350000000:372000000'
  soft_wood              INTEGER NOT NULL DEFAULT 0 CHECK (soft_wood IN (0, 1)), -- the board is of it
  nut_off                INTEGER NOT NULL DEFAULT 0 CHECK (nut_off IN (0, 1)),
  last_ever              INTEGER CHECK (last_ever >= 0),             -- the last fret that the board will ever have; NULL not said
  straight_seen_at       INTEGER,                                    -- somebody looked, and the neck was straight
  straightened           INTEGER NOT NULL DEFAULT 0 CHECK (straightened >= 0), -- the touch that did it, as in fret
  after_jobs             TEXT    NOT NULL DEFAULT '',                -- that must be done before it is begun, ascending: '3,4'
  priority               INTEGER NOT NULL DEFAULT 3 CHECK (priority BETWEEN 1 AND 9), -- 3 as usual
  withdrawn              INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  CHECK ((far_at_slot IS NULL) <> (far_at_nm IS NULL)),
  CHECK ((treble_scale_nm IS NULL) = (square_slot IS NULL) AND (treble_scale_nm IS NULL) = (string_inset_nm IS NULL)),
  CHECK ((radius_nm IS NULL) = (surface = 'flat')),
  CHECK ((far_radius_nm IS NULL) = (surface <> 'compound')),
  CHECK (CASE WHEN surface = 'compound' THEN (radius_at_slot IS NULL) <> (radius_at_nm IS NULL)
              ELSE radius_at_slot IS NULL AND radius_at_nm IS NULL END)
) STRICT;
CREATE INDEX job_wire ON job (wire, ends, shortest_arc_nm) WHERE withdrawn = 0;
CREATE INDEX job_open ON job (due_at, id) WHERE state = 'open' AND withdrawn = 0;

CREATE TABLE piece (
  id              INTEGER PRIMARY KEY,
  wire            INTEGER NOT NULL REFERENCES wire (id),
  lot             INTEGER REFERENCES lot (id),
  kind            TEXT    NOT NULL CHECK (kind IN ('short_fret', 'stick_end', 'pulled_fret')),
  length_nm       INTEGER CHECK (length_nm > 0),           -- along the wire; NULL nobody has measured it, or it is gone
  measured        TEXT    NOT NULL CHECK (measured IN ('straight', 'across', 'not_at_all')),
  end_left        TEXT    NOT NULL CHECK (end_left IN ('raw', 'dressed', 'unknown')),
  end_right       TEXT    NOT NULL CHECK (end_right IN ('raw', 'dressed', 'unknown')),
  raw_ends        INTEGER NOT NULL,                        -- ends that are not dressed
  tang_nm         INTEGER CHECK (tang_nm > 0),             -- length of the tang where it was nipped
  bend_radius_nm  INTEGER CHECK (bend_radius_nm > 0),
  crown_height_nm INTEGER,                                 -- of its lot: a copy, so that a walk need not look there
  count           INTEGER NOT NULL DEFAULT 0 CHECK (count >= 0), -- over 1 only for a handful nobody has measured
  place           TEXT    NOT NULL,
  job             INTEGER REFERENCES job (id),             -- held for this job
  slot            INTEGER CHECK (slot >= 0),               -- and for this slot of it
  more_slots      TEXT    NOT NULL DEFAULT '',             -- and for these after it, in the order of cutting: '4,5'
  added_at        INTEGER NOT NULL,
  in_tin          INTEGER NOT NULL DEFAULT 0 CHECK (in_tin IN (0, 1)),
  withdrawn       INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  -- length_nm, count and in_tin follow from the movements and are written only with them; length_nm, count: of what is
  -- in the tin now.
  CHECK (raw_ends = (CASE WHEN end_left = 'dressed' THEN 0 ELSE 1 END) + (CASE WHEN end_right = 'dressed' THEN 0 ELSE 1 END)),
  CHECK (count <= 1 OR length_nm IS NULL),
  CHECK (slot IS NULL OR job IS NOT NULL),
  CHECK (more_slots = '' OR slot IS NOT NULL)
) STRICT;
-- The walks of a fit: everything that they return stands in the index, so that they never read the table. Of equal
-- lengths the oldest comes first in both directions, hence one index for each.
CREATE INDEX piece_up ON piece (wire, raw_ends, length_nm, added_at, id, kind, crown_height_nm, lot, tang_nm)
  WHERE in_tin = 1 AND withdrawn = 0 AND job IS NULL AND count = 1 AND length_nm IS NOT NULL AND kind <> 'pulled_fret';
CREATE INDEX piece_down ON piece (wire, raw_ends, length_nm DESC, added_at, id, kind, crown_height_nm, lot, tang_nm)
  WHERE in_tin = 1 AND withdrawn = 0 AND job IS NULL AND count = 1 AND length_nm IS NOT NULL AND kind <> 'pulled_fret';
CREATE INDEX piece_pulled ON piece (wire, raw_ends, length_nm, added_at, id, kind, crown_height_nm, lot, tang_nm)
  WHERE in_tin = 1 AND withdrawn = 0 AND job IS NULL AND count = 1 AND length_nm IS NOT NULL AND kind = 'pulled_fret';
-- Nipped pieces are few, and bound slots ask for them alone.
CREATE INDEX piece_nipped ON piece (wire, raw_ends, length_nm, added_at, id, kind, crown_height_nm, lot, tang_nm)
  WHERE in_tin = 1 AND withdrawn = 0 AND job IS NULL AND count = 1 AND length_nm IS NOT NULL AND tang_nm IS NOT NULL;
CREATE INDEX piece_of_lot ON piece (lot, raw_ends, length_nm, added_at, id, kind, crown_height_nm, wire, tang_nm)
  WHERE in_tin = 1 AND withdrawn = 0 AND job IS NULL AND count = 1 AND length_nm IS NOT NULL AND lot IS NOT NULL;
CREATE INDEX piece_tin ON piece (wire, length_nm, id, count, job) WHERE in_tin = 1 AND withdrawn = 0;
CREATE INDEX piece_length ON piece (length_nm, id) WHERE in_tin = 1 AND withdrawn = 0 AND length_nm IS NOT NULL;
CREATE INDEX piece_held ON piece (job, slot) WHERE job IS NOT NULL;
CREATE INDEX piece_lot ON piece (lot) WHERE lot IS NOT NULL;

CREATE TABLE fret (
  id        INTEGER PRIMARY KEY,
  job       INTEGER NOT NULL REFERENCES job (id),
  slot      INTEGER NOT NULL CHECK (slot >= 0),
  state     TEXT    NOT NULL CHECK (state IN ('made', 'came_short', 'seated', 'pressed', 'sprang', 'level')),
  length_nm INTEGER CHECK (length_nm > 0),
  piece     INTEGER REFERENCES piece (id),                 -- of the tin, that it was made of
  touched   INTEGER NOT NULL DEFAULT 0 CHECK (touched >= 0), -- the touch that changed how it stands; they count up in a job
  gap       TEXT    NOT NULL DEFAULT 'not_asked' CHECK (gap IN ('not_asked', 'none', 'some')), -- under its crown, since then
  cause     TEXT    NOT NULL DEFAULT 'not_asked'           -- what keeps it up, likewise
            CHECK (cause IN ('not_asked', 'nothing_found', 'slot_shallow', 'slot_dirty', 'tang_bottoms', 'wire_misbent', 'slot_loose')),
  below_nm  INTEGER CHECK (below_nm >= 0),                 -- the line of its neighbours, likewise; NULL not measured
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX fret_job ON fret (job, slot);

CREATE TABLE job_stage (
  id          INTEGER PRIMARY KEY,
  job         INTEGER NOT NULL REFERENCES job (id),
  kind        TEXT    NOT NULL CHECK (kind <> ''),         -- agenda's word for the stage
  sequence    INTEGER NOT NULL,
  started_at  INTEGER,                                     -- these two: when it happened
  finished_at INTEGER,
  recorded_at INTEGER NOT NULL,                            -- when it was reported
  actor       INTEGER NOT NULL REFERENCES actor (id),
  stopped_at  INTEGER,                                     -- it goes on in a later row
  open_s      INTEGER CHECK (open_s >= 0),                 -- open time of all its stretches; NULL not known
  frets       INTEGER NOT NULL DEFAULT 0 CHECK (frets >= 0), -- that the job set then
  withdrawn   INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  CHECK (stopped_at IS NULL OR (finished_at IS NULL AND started_at <= stopped_at)),
  CHECK (started_at IS NULL OR finished_at IS NULL OR started_at <= finished_at),
  CHECK (open_s IS NULL OR finished_at IS NOT NULL)
) STRICT;
CREATE INDEX job_stage_job ON job_stage (job, id);
CREATE INDEX job_stage_took ON job_stage (kind, finished_at, id, open_s, frets)
  WHERE open_s > 0 AND frets > 0 AND withdrawn = 0;

CREATE TABLE recheck (
  id           INTEGER PRIMARY KEY,
  job          INTEGER NOT NULL REFERENCES job (id),
  slots        TEXT    NOT NULL CHECK (slots <> ''),       -- ascending: '1,2,3'
  pressed_at   INTEGER NOT NULL,
  from_at      INTEGER NOT NULL,                           -- may be done from here
  due_at       INTEGER NOT NULL,
  state        TEXT    NOT NULL CHECK (state IN ('waiting', 'level', 'sprang', 'superseded')),
  done_at      INTEGER,
  told         INTEGER NOT NULL CHECK (told IN (0, 1)),
  overdue_told INTEGER NOT NULL CHECK (overdue_told IN (0, 1)),
  load_n       REAL CHECK (load_n >= 0),                   -- of the last pass, where it was said
  withdrawn    INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  CHECK (pressed_at <= from_at AND from_at <= due_at)
) STRICT;
CREATE INDEX recheck_job ON recheck (job, pressed_at);
CREATE INDEX recheck_waiting ON recheck (due_at) WHERE state = 'waiting' AND withdrawn = 0;

CREATE TABLE bar (                                           -- what the shop presses with
  id             INTEGER PRIMARY KEY,
  name           TEXT    NOT NULL CHECK (name <> ''),
  length_nm      INTEGER NOT NULL CHECK (length_nm > 0),     -- along the neck
  width_nm       INTEGER NOT NULL CHECK (width_nm > 0),      -- across it
  sole_radius_nm INTEGER CHECK (sole_radius_nm > 0),         -- NULL flat
  rating_n       REAL CHECK (rating_n > 0),                  -- NULL not known
  narrow         INTEGER NOT NULL CHECK (narrow IN (0, 1)),  -- made to bear on one fret
  withdrawn      INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE pressing (                                      -- one report of a pass
  id         INTEGER PRIMARY KEY,
  job        INTEGER NOT NULL REFERENCES job (id),
  slots      TEXT    NOT NULL CHECK (slots <> ''),           -- ascending: '1,2,3'
  gone       TEXT    NOT NULL,                               -- of these, frets pulled since: it counts for them no more
  load_n     REAL CHECK (load_n >= 0),                       -- NULL not said
  bar        INTEGER REFERENCES bar (id),                    -- NULL not said
  pressed_at INTEGER NOT NULL,
  most_n     REAL CHECK (most_n > 0 AND load_n > most_n),    -- the load was above this, the least rating then known
  withdrawn  INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX pressing_job ON pressing (job, pressed_at);

CREATE TABLE reading (                                       -- one laying of a straightedge, or one look along the frets
  id           INTEGER PRIMARY KEY,
  job          INTEGER NOT NULL REFERENCES job (id),
  line         TEXT    NOT NULL CHECK (line IN ('bass', 'middle', 'treble')),
  from_slot    INTEGER NOT NULL CHECK (from_slot >= 0),      -- the edge lay over these two and all between
  to_slot      INTEGER NOT NULL CHECK (to_slot >= from_slot),
  felt         TEXT    NOT NULL CHECK (felt IN ('steady', 'rocks', 'not_laid')),
  pivot        INTEGER CHECK (pivot IS NULL OR felt = 'rocks'),               -- the slot that it rocks on, where it was said
  held         TEXT    CHECK (held IN ('nutward', 'bodyward')), -- the end that a hand held down; NULL neither
  gaps         TEXT    NOT NULL,                             -- slots where a feeler goes under, ascending: '6,7'
  snug         TEXT    NOT NULL,                             -- and where it was tried and does not
  looks_sunk   TEXT    NOT NULL,                             -- slots, by eye
  looks_high   TEXT    NOT NULL,
  epsilon_nm   INTEGER NOT NULL CHECK (epsilon_nm > 0),      -- what the hand could feel
  touches      INTEGER NOT NULL CHECK (touches >= 0),        -- of the job's frets before it, as they count up there
  line_assumed INTEGER NOT NULL CHECK (line_assumed IN (0, 1)), -- not said; the same for the span
  span_assumed INTEGER NOT NULL CHECK (span_assumed IN (0, 1)),
  taken_at     INTEGER NOT NULL,
  withdrawn    INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX reading_job ON reading (job, taken_at);

CREATE TABLE looked (                                        -- one fret as a recheck found it
  id        INTEGER PRIMARY KEY,
  job       INTEGER NOT NULL REFERENCES job (id),
  wire      INTEGER NOT NULL REFERENCES wire (id),           -- of the job, then
  slot      INTEGER NOT NULL CHECK (slot >= 0),
  sprang    INTEGER NOT NULL CHECK (sprang IN (0, 1)),
  early     INTEGER NOT NULL CHECK (early IN (0, 1)),        -- before the recheck counted
  load_n    REAL CHECK (load_n >= 0),                        -- of its last pass, on all that was under the bar; NULL not said
  together  INTEGER NOT NULL CHECK (together >= 0),          -- how many frets shared it; 0 not known
  n_per_mm  REAL CHECK (n_per_mm >= 0),                      -- its share on its length; NULL not known
  looked_at INTEGER NOT NULL,
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX looked_job ON looked (job, looked_at);
-- All that spring-back is counted from stands in the index, so that the counting never reads the table.
CREATE INDEX looked_counts ON looked (wire, load_n, together, n_per_mm, sprang, early, withdrawn)
  WHERE withdrawn = 0 AND early = 0;

CREATE TABLE machine (                                       -- what only so many can use at once
  id        INTEGER PRIMARY KEY,
  name      TEXT    NOT NULL CHECK (name <> ''),
  count     INTEGER NOT NULL CHECK (count BETWEEN 0 AND 99), -- alike ones; 0: as many as are wanted
  setup_s   INTEGER NOT NULL CHECK (setup_s >= 0),           -- open time, before a stage that is another than the last there
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
INSERT INTO machine (id, name, count, setup_s) VALUES (1, 'press', 1, 0), (2, 'sander', 1, 0), (3, 'bench', 0, 0);

CREATE TABLE outage (                                        -- a machine is out of service
  id        INTEGER PRIMARY KEY,
  machine   INTEGER NOT NULL REFERENCES machine (id),
  number    INTEGER NOT NULL CHECK (number >= 0),            -- which of several; 0 all
  from_at   INTEGER NOT NULL,
  to_at     INTEGER CHECK (to_at >= from_at),                -- NULL until somebody says that it is back
  note      TEXT    NOT NULL,
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX outage_to ON outage (to_at) WHERE withdrawn = 0;

CREATE TABLE booking (                                       -- somebody has a machine for a time
  id        INTEGER PRIMARY KEY,
  machine   INTEGER NOT NULL REFERENCES machine (id),
  from_at   INTEGER NOT NULL,
  to_at     INTEGER NOT NULL CHECK (to_at > from_at),
  actor     INTEGER NOT NULL REFERENCES actor (id),
  job       INTEGER REFERENCES job (id),
  note      TEXT    NOT NULL,
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;
CREATE INDEX booking_to ON booking (to_at) WHERE withdrawn = 0;
CREATE INDEX booking_job ON booking (job) WHERE job IS NOT NULL;

CREATE TABLE stage_rule (                                    -- in place of what agenda's table says of a stage
  id        INTEGER PRIMARY KEY,
  stage     TEXT    NOT NULL UNIQUE CHECK (stage <> ''),     -- agenda's word
  machine   INTEGER REFERENCES machine (id),                 -- NULL the table's
  minutes   INTEGER CHECK (minutes >= 1),                    -- for 22 frets; NULL learnt, or the table's
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE own_hours (                                     -- who works other hours than the shop is open
  id        INTEGER PRIMARY KEY,
  actor     INTEGER NOT NULL REFERENCES actor (id),
  weekday   INTEGER NOT NULL CHECK (weekday BETWEEN 1 AND 7), -- 1 Monday
  spans     TEXT    NOT NULL,                                -- as of weekday
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  UNIQUE (actor, weekday)
) STRICT;

CREATE TABLE own_day (                                       -- who is off on a day, or works other hours then
  id        INTEGER PRIMARY KEY,
  actor     INTEGER NOT NULL REFERENCES actor (id),
  on_day    INTEGER NOT NULL,
  spans     TEXT    NOT NULL,                                -- '' off
  note      TEXT    NOT NULL,
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1)),
  UNIQUE (actor, on_day)
) STRICT;
CREATE INDEX own_day_day ON own_day (on_day) WHERE withdrawn = 0;

-- The ledger. Double entry: each row takes a length from one place to another. Only ever added to.
CREATE TABLE movement (
  id         INTEGER PRIMARY KEY,
  kind       TEXT    NOT NULL CHECK (kind IN ('received', 'cut', 'made_a_piece', 'used_in_a_slot', 'scrapped', 'counted', 'corrected',
                                             'lost')),
  wire       INTEGER NOT NULL REFERENCES wire (id),
  lot        INTEGER REFERENCES lot (id),
  piece      INTEGER REFERENCES piece (id),
  job        INTEGER REFERENCES job (id),
  slot       INTEGER,
  from_place TEXT    NOT NULL CHECK (from_place IN ('outside', 'stock', 'tin', 'board', 'scrap', 'kerf')),
  to_place   TEXT    NOT NULL CHECK (to_place IN ('outside', 'stock', 'tin', 'board', 'scrap', 'kerf')),
  length_nm  INTEGER NOT NULL CHECK (length_nm >= 0),
  pieces     INTEGER NOT NULL CHECK (pieces >= 0),         -- that enter or leave the tin
  reason     TEXT    NOT NULL,
  reverses   INTEGER UNIQUE REFERENCES movement (id),      -- the movement that this one takes back
  CHECK (from_place <> to_place),
  CHECK (piece IS NOT NULL OR (from_place <> 'tin' AND to_place <> 'tin'))
) STRICT;
CREATE INDEX movement_piece ON movement (piece) WHERE piece IS NOT NULL;
-- Frets that left their slots; few, and asked for by every fret that a piece of the tin was made into.
CREATE INDEX movement_left ON movement (job, slot, id) WHERE from_place = 'board' AND kind IN ('made_a_piece', 'lost');
CREATE TRIGGER movement_stays BEFORE UPDATE ON movement BEGIN SELECT RAISE(ABORT, 'the ledger is only added to'); END;
CREATE TRIGGER movement_kept BEFORE DELETE ON movement BEGIN SELECT RAISE(ABORT, 'the ledger is only added to'); END;

-- What was drawn off the sticks and coils of a wire in a week; follows from the movements that a line of the journal made,
-- by when that happened. What was taken back later is left out.
CREATE TABLE wire_week (
  wire     INTEGER NOT NULL REFERENCES wire (id),
  week     INTEGER NOT NULL,                               -- seven days from a Monday 00:00 UTC on; 0 has 1970-01-01
  drawn_nm INTEGER NOT NULL,
  PRIMARY KEY (wire, week)
) STRICT, WITHOUT ROWID;

-- One line a call. The bytes that `hash` is taken over are described in daemon/store/chain.hpp.
CREATE TABLE journal (
  id          INTEGER PRIMARY KEY,
  group_id    INTEGER NOT NULL,                            -- lines of one list share the id of its first line
  sequence    INTEGER NOT NULL,
  recorded_at INTEGER NOT NULL,
  happened_at INTEGER NOT NULL,
  actor       INTEGER NOT NULL REFERENCES actor (id),
  via         TEXT    NOT NULL,
  said        TEXT    NOT NULL,
  call        TEXT    NOT NULL,                            -- JSON
  answer      TEXT    NOT NULL,
  inverse     TEXT    NOT NULL,                            -- JSON: the calls that take it back; '': nothing can
  undoes      INTEGER,                                     -- the group that it took back
  hash        TEXT    NOT NULL CHECK (length(hash) = 64),
  UNIQUE (group_id, sequence)
) STRICT;
CREATE INDEX journal_actor ON journal (actor, id) WHERE undoes IS NULL;
CREATE INDEX journal_by ON journal (actor, happened_at, id);
CREATE INDEX journal_happened ON journal (happened_at, id);
CREATE INDEX journal_undoes ON journal (undoes) WHERE undoes IS NOT NULL;
CREATE TRIGGER journal_stays BEFORE UPDATE ON journal BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_kept BEFORE DELETE ON journal BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;

CREATE TABLE journal_touch (
  thing TEXT    NOT NULL CHECK (thing IN ('actor', 'wire', 'lot', 'piece', 'job', 'fret', 'stage', 'recheck', 'weekday',
                                          'special_day', 'receiver', 'setting', 'bar', 'pressing', 'reading', 'looked',
                                          'machine', 'outage', 'booking', 'stage_rule', 'own_hours', 'own_day',
                                          'supplier', 'purchase', 'purchase_line')),
  id    INTEGER NOT NULL,                                  -- of the thing
  line  INTEGER NOT NULL REFERENCES journal (id),
  PRIMARY KEY (thing, id, line)                            -- newest by thing
) STRICT;
CREATE INDEX journal_touch_line ON journal_touch (line);
CREATE TRIGGER journal_touch_stays BEFORE UPDATE ON journal_touch BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_touch_kept BEFORE DELETE ON journal_touch BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;

CREATE TABLE journal_about (                               -- whose history a line belongs to
  thing       TEXT    NOT NULL CHECK (thing IN ('wire', 'piece', 'job')),
  id          INTEGER NOT NULL,                            -- of the thing
  slot        INTEGER NOT NULL CHECK (slot >= -1),         -- of the job; -1: the thing as a whole, there for every line
  happened_at INTEGER NOT NULL,                            -- as the line has it
  line        INTEGER NOT NULL REFERENCES journal (id),
  PRIMARY KEY (thing, id, slot, happened_at, line)         -- newest by thing
) STRICT;
CREATE INDEX journal_about_line ON journal_about (line);
CREATE TRIGGER journal_about_stays BEFORE UPDATE ON journal_about BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_about_kept BEFORE DELETE ON journal_about BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;

CREATE TABLE journal_movement (                            -- which line made which movement
  movement INTEGER PRIMARY KEY REFERENCES movement (id),
  line     INTEGER NOT NULL REFERENCES journal (id) DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX journal_movement_line ON journal_movement (line);
CREATE TRIGGER journal_movement_stays BEFORE UPDATE ON journal_movement BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;
CREATE TRIGGER journal_movement_kept BEFORE DELETE ON journal_movement BEGIN SELECT RAISE(ABORT, 'the journal is only added to'); END;

CREATE TABLE weekday (
  id        INTEGER PRIMARY KEY CHECK (id BETWEEN 1 AND 7), -- 1 Monday
  spans     TEXT    NOT NULL,                              -- '09:00-12:30 13:30-18:00'; '' closed
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE special_day (
  id        INTEGER PRIMARY KEY,
  on_day    INTEGER NOT NULL UNIQUE,
  closed    INTEGER NOT NULL CHECK (closed IN (0, 1)),
  extra     TEXT    NOT NULL,                              -- spans open besides; '' none
  note      TEXT    NOT NULL,
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE setting (
  id        INTEGER PRIMARY KEY,
  name      TEXT    NOT NULL UNIQUE,
  value     TEXT    NOT NULL,
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE receiver (
  id        INTEGER PRIMARY KEY,
  name      TEXT    NOT NULL,
  url       TEXT    NOT NULL,
  secret    TEXT    NOT NULL,                              -- whsec_…
  shape     TEXT    NOT NULL CHECK (shape IN ('event', 'cloudevents', 'text')),
  wants     TEXT    NOT NULL,                              -- event types, ',' between; '' all
  failing   INTEGER NOT NULL CHECK (failing IN (0, 1)),
  disabled  INTEGER NOT NULL CHECK (disabled IN (0, 1)),
  withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (withdrawn IN (0, 1))
) STRICT;

CREATE TABLE outbox (
  id            INTEGER PRIMARY KEY,
  receiver      INTEGER NOT NULL REFERENCES receiver (id),
  sequence      INTEGER NOT NULL CHECK (sequence >= 1),    -- per receiver
  message_id    TEXT    NOT NULL,                          -- the same on every attempt
  cause         TEXT    NOT NULL,                          -- told once a receiver
  type          TEXT    NOT NULL,
  text          TEXT    NOT NULL,
  data          TEXT    NOT NULL,                          -- JSON
  happened_at   INTEGER NOT NULL,
  not_before_at INTEGER,                                   -- NULL: out of attempts, waits for a person
  attempts      INTEGER NOT NULL CHECK (attempts >= 0),
  late          INTEGER NOT NULL CHECK (late IN (0, 1)),
  lease_at      INTEGER,                                   -- somebody is sending it until then
  delivered     INTEGER NOT NULL DEFAULT 0 CHECK (delivered IN (0, 1)),
  UNIQUE (receiver, sequence),
  UNIQUE (receiver, cause)
) STRICT;
CREATE INDEX outbox_due ON outbox (not_before_at, id) WHERE delivered = 0;

CREATE TABLE token (                                       -- who may come in over TCP; in no line of the journal
  id           INTEGER PRIMARY KEY,
  name         TEXT    NOT NULL COLLATE NOCASE CHECK (name <> ''),
  actor        INTEGER NOT NULL REFERENCES actor (id),     -- whom its bearer is
  role         TEXT    NOT NULL CHECK (role IN ('look', 'bench', 'lead')), -- at most; never more than the actor's own
  digest       TEXT    NOT NULL UNIQUE CHECK (length(digest) = 64), -- hex SHA-256; the token itself is kept nowhere
  made_at      INTEGER NOT NULL,
  made_by      INTEGER NOT NULL REFERENCES actor (id),
  withdrawn_at INTEGER,                                    -- NULL: it is good
  withdrawn_by INTEGER REFERENCES actor (id),
  CHECK ((withdrawn_at IS NULL) = (withdrawn_by IS NULL))
) STRICT;
CREATE UNIQUE INDEX token_name ON token (name) WHERE withdrawn_at IS NULL;

-- What was worked out in the background and may be worked out again: no line of the journal tells of it, no undo knows
-- it, writing it is no revision, and every row may be deleted at any time.
CREATE TABLE plan (
  kind    TEXT    NOT NULL CHECK (kind <> ''),             -- 'cuts': the cut plan of a wire (daemon/shop/kept_cuts.hpp)
  subject INTEGER NOT NULL,                                -- of 'cuts': the wire
  digest  TEXT    NOT NULL CHECK (length(digest) = 64),    -- of what it was made from, hex SHA-256
  made_at INTEGER NOT NULL,
  settled INTEGER NOT NULL CHECK (settled IN (0, 1)),      -- 0: made in haste, a better one is being worked out
  body    TEXT    NOT NULL,                                -- as its kind writes it
  PRIMARY KEY (kind, subject)
) STRICT;

-- Sentences that nobody understood, so that who leads the shop can see what people wanted. As with plans: no line of the
-- journal tells of one, no undo knows it, writing it is no revision, and every row may be deleted at any time.
CREATE TABLE not_understood (
  alike    TEXT    PRIMARY KEY CHECK (alike <> ''),        -- its words folded, without those that say nothing; numbers as #
  text     TEXT    NOT NULL CHECK (length(CAST(text AS BLOB)) <= 200), -- as it was said last
  actor    INTEGER NOT NULL REFERENCES actor (id),         -- by whom
  first_at INTEGER NOT NULL,
  last_at  INTEGER NOT NULL,
  times    INTEGER NOT NULL CHECK (times >= 1)
) STRICT;
CREATE INDEX not_understood_last ON not_understood (last_at);

CREATE TABLE remembered (                                  -- answers by idempotency key
  actor  INTEGER NOT NULL REFERENCES actor (id),
  key    TEXT    NOT NULL,
  at     INTEGER NOT NULL,
  digest TEXT    NOT NULL,                                 -- of what was asked
  answer TEXT    NOT NULL,                                 -- JSON
  PRIMARY KEY (actor, key)
) STRICT;
CREATE INDEX remembered_at ON remembered (at);
