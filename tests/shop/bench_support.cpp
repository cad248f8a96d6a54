#include "bench.hpp"

#include "shop/setup.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <sstream>

namespace nutward::test {

namespace {

const Node& node(const Value& v) {
  if (const auto* n = std::get_if<std::shared_ptr<const Node>>(&v)) return **n;
  throw std::runtime_error("neither a record nor a list: " + to_json(v));
}

// A line of a dump: whatever is streamed, with bars between.
class Text {
public:
  template <class T>
  Text& operator<<(const T& v) {
    if constexpr (std::is_enum_v<T>)
      out_ << "|" << static_cast<int>(v);
    else
      out_ << "|" << v;
    return *this;
  }
  Text& operator<<(Length v) { return *this << v.nm; }
  Text& operator<<(Instant v) { return *this << v.s; }
  Text& operator<<(Money v) { return *this << v.minor; }
  Text& operator<<(Force v) { return *this << v.n; }
  template <class T>
  Text& operator<<(const std::optional<T>& v) {
    return v ? *this << *v : *this << "-";
  }
  template <class T>
  Text& operator<<(const std::vector<T>& v) {
    for (const T& one : v)
      *this << one;
    return *this << "]";
  }
  void line() { out_ << "\n"; }
  std::string str() const { return out_.str(); }

private:
  std::ostringstream out_;
};

void dump_wires(Text& t, const View& v) {
  for (const Wire& w : v.wires().all()) {
    const auto& p = w.profile;
    t << "wire" << w.id << w.name << w.material << p.crown_width << p.crown_height << p.tang_depth
      << p.tang_thickness << p.barb_width << w.stick << w.reorder_at << w.low_told_at << w.density
      << w.linear_g_m << w.linear_error << v.wires().on_hand(w.id);
    t.line();
    for (const Lot& l : v.wires().lots(w.id)) {
      t << "lot" << l.id << l.wire << l.form << l.count << l.each << l.crown_height << l.supplier << l.price
        << l.received;
      t.line();
    }
    const TinSum s = v.tin().sum(w.id);
    t << "tin" << s.pieces << s.length << s.unmeasured << s.held;
    t.line();
  }
}

void dump_pieces(Text& t, const View& v) {
  for (std::int64_t id = 1; id <= 2000; ++id) {
    const auto p = v.tin().find(id);
    if (!p) continue;
    t << "piece" << p->id << p->wire << p->lot << p->kind << p->length << p->measured << p->left << p->right
      << p->tang << p->bend_radius << p->count << p->place << p->job << p->slot << p->added << p->in_tin;
    t.line();
  }
}

void dump_spot(Text& t, const board::Spot& at) {
  std::visit([&](const auto& v) { t << v; }, at);
}

// What dump_jobs leaves of it.
void dump_board(Text& t, const board::Board& b) {
  t << b.divisions << b.zero_fret << b.binding << b.positions;
  dump_spot(t, b.far_at);
  if (b.fan) t << b.fan->treble_scale << b.fan->square_at << b.fan->string_inset;
  for (const board::MeasuredWidth& w : b.more_widths)
    dump_spot(t, w.at), t << w.width;
}

void dump_jobs(Text& t, const View& v) {
  for (const Job& j : v.jobs().recent(1000)) {
    t << "job" << j.id << j.kind << j.state << j.owner << j.instrument << j.wood << j.glue << j.note
      << j.board.scale << j.board.slots << j.board.nut_width << j.board.far_width << j.board.surface.index()
      << j.board.ends << j.slots << j.wire << j.due << j.humidity_seated << j.humidity_rechecked << j.taken_in
      << j.press_told << j.lot << j.slot_width << j.slot_depth << j.slot_flat_bottom << j.builder << j.bench
      << j.bed.cradled << j.bed.head_clear << j.bed.nothing_bridges << j.bed.glue_set << j.bed.body_from
      << j.bed.bare_from << j.soft_wood << j.nut_off << j.last_ever << j.straight_seen << j.straightened
      << j.priority << j.after;
    for (const press::Stretch& s : j.bed.voids)
      t << s.from << s.to;
    dump_board(t, j.board);
    t.line();
    for (const Fret& f : v.jobs().frets(j.id))
      t << "fret" << f.id << f.slot << f.state << f.length << f.piece << f.touched << f.gap << f.cause
        << f.below,
          t.line();
    for (const shop::Stage& s : v.jobs().stages(j.id))
      t << "stage" << s.id << s.kind << s.sequence << s.started << s.finished << s.recorded << s.actor
        << s.stopped << s.open_s << s.frets,
          t.line();
    for (const Recheck& r : v.jobs().rechecks(j.id)) {
      t << "recheck" << r.id << r.slots << r.pressed << r.from << r.due << r.state << r.done << r.told
        << r.overdue_told << r.load;
      t.line();
    }
    for (const Pressing& p : v.jobs().pressings(j.id))
      t << "pressing" << p.id << p.slots << p.gone << p.load << p.bar << p.pressed << p.most, t.line();
    for (const Looked& l : v.jobs().looked(j.id))
      t << "looked" << l.id << l.wire << l.slot << l.sprang << l.early << l.load << l.together << l.n_per_mm
        << l.looked,
          t.line();
    for (const Reading& r : v.jobs().readings(j.id)) {
      t << "reading" << r.id << r.is.line << r.is.span.from << r.is.span.to << r.is.felt << r.is.pivot
        << r.is.held << r.is.gaps << r.is.snug << r.is.looks_sunk << r.is.looks_high << r.is.epsilon
        << r.is.revision << r.line_assumed << r.span_assumed << r.taken;
      t.line();
    }
  }
}

void dump_house(Text& t, const View& v) {
  for (const Weekday& d : v.house().week())
    t << "weekday" << d.id << d.spans, t.line();
  for (const SpecialDay& d : v.house().special_days())
    t << "day" << d.id << d.day.days << d.closed << d.extra << d.note, t.line();
  for (std::string_view name : setting_names())
    t << "setting" << name << v.house().setting(name), t.line();
  for (const Actor& a : v.house().actors())
    t << "actor" << a.id << a.name << a.role << a.bench << a.uids << a.retired, t.line();
  for (const Bar& b : v.house().bars())
    t << "bar" << b.id << b.is.name << b.is.length << b.is.width << b.is.sole_radius << b.is.rating
      << b.is.narrow,
        t.line();
  for (const Receiver& r : v.house().receivers())
    t << "receiver" << r.id << r.name << r.url << r.secret << r.shape << r.wants << r.failing << r.disabled,
        t.line();
}

void dump_machines(Text& t, const View& v) {
  for (const Machine& m : v.machines().all())
    t << "machine" << m.id << m.name << m.count << m.setup_s, t.line();
  for (const Outage& o : v.machines().outages(Instant{0}))
    t << "outage" << o.id << o.machine << o.number << o.from << o.to << o.note, t.line();
  for (const Booking& b : v.machines().bookings(Instant{0}, Instant{1LL << 40}))
    t << "booking" << b.id << b.machine << b.from << b.to << b.actor << b.job << b.note, t.line();
  for (const StageRule& r : v.machines().rules())
    t << "rule" << r.id << r.stage << r.machine << r.minutes, t.line();
  for (const OwnHours& h : v.machines().own_hours())
    t << "own hours" << h.id << h.actor << h.weekday << h.spans, t.line();
  for (const OwnDay& d : v.machines().own_days(Day{0}))
    t << "own day" << d.id << d.actor << d.day.days << d.spans << d.note, t.line();
}

void dump_amount(Text& t, const Amount& a) {
  t << a.sticks << a.length << (a.mass ? std::optional{a.mass->mg} : std::nullopt);
}

void dump_purchases(Text& t, const View& v) {
  for (const Supplier& s : v.purchases().suppliers()) {
    t << "supplier" << s.id << s.name << s.lead_days << s.note;
    dump_amount(t, s.pack), dump_amount(t, s.minimum), t.line();
  }
  auto all = v.purchases().open();
  const auto closed = v.purchases().closed(1000);
  all.insert(all.end(), closed.begin(), closed.end());
  for (const Purchase& p : all) {
    t << "purchase" << p.id << p.supplier << static_cast<int>(p.state) << p.ordered
      << (p.promised ? std::optional{p.promised->days} : std::nullopt)
      << (p.promised_first ? std::optional{p.promised_first->days} : std::nullopt) << p.closed << p.note;
    t.line();
    for (const Awaited& a : v.purchases().lines(p.id))
      t << "line" << a.line.id << a.line.wire << a.line.count << a.line.each << a.came << a.came_length,
          t.line();
  }
}

} // namespace

const Value& at(const Value& record, std::string_view name) {
  if (const Value* v = node(record).find(name)) return *v;
  throw std::runtime_error("no field " + std::string(name) + " in " + to_json(record));
}

const Value& item(const Value& list, std::size_t n) {
  return node(list).items.at(n);
}

std::size_t size(const Value& list) {
  return node(list).items.size();
}

std::string in_words(const Answer& answer) {
  std::string out;
  for (const auto& row : answer.table.value().rows) {
    for (const std::string& cell : row)
      out += cell + "|";
    out += "\n";
  }
  return out;
}

Bench::Bench() : executor(std::make_unique<Executor>(*made.sqlite, clock, rooms)) {
  made.sqlite->write([&](Tx& tx) {
    auto actor = [&](const char* name, Role role) {
      return Caller{tx.put(Actor{0, name, static_cast<int>(role), "", {}}), role, name, "test"};
    };
    mara = actor("Mara", Role::lead), ines = actor("Ines", Role::bench);
    tomo = actor("Tomo", Role::bench), guest = actor("guest", Role::look);
    tx.backroom().take_changes();
  });
  who = mara;
}

Outcome Bench::outcome(const std::string& row, const std::string& json, bool confirmed) {
  Order o = order({{row, json}});
  o.confirmed = confirmed;
  return executor->run(std::move(o));
}

Answer Bench::does(const std::string& row, const std::string& json, bool confirmed) {
  Outcome out = outcome(row, json, confirmed);
  if (out.problem)
    throw std::runtime_error(row + " was refused: " + out.problem->text + " (" + out.problem->where + ")");
  return *out.answer;
}

Problem Bench::refused(const std::string& row, const std::string& json, bool confirmed) {
  const std::string before = dump();
  Outcome out = outcome(row, json, confirmed);
  if (!out.problem) throw std::runtime_error(row + " was done: " + out.answer->text);
  if (dump() != before) throw std::runtime_error(row + " was refused and yet changed the shop");
  return *out.problem;
}

Answer Bench::asks(const std::string& row, const std::string& json) {
  return executor->ask(read_call(row, json), who);
}

Problem Bench::unanswered(const std::string& row, const std::string& json) {
  try {
    asks(row, json);
  } catch (const Problem& problem) {
    return problem;
  }
  throw std::runtime_error(row + " was answered");
}

Order Bench::order(std::vector<std::pair<std::string, std::string>> calls) const {
  Order out;
  for (const auto& [row, json] : calls)
    out.calls.push_back(read_call(row, json));
  out.who = who;
  return out;
}

std::string Bench::dump() {
  Text t;
  made.sqlite->read([&](const View& v) {
    dump_wires(t, v);
    dump_pieces(t, v);
    dump_jobs(t, v);
    dump_house(t, v);
    dump_machines(t, v);
    dump_purchases(t, v);
  });
  return t.str();
}

std::map<std::string, std::int64_t> Bench::places() {
  std::map<std::string, std::int64_t> out;
  SQLite::Database db(made.file().string(), SQLite::OPEN_READONLY);
  SQLite::Statement rows(db, "SELECT from_place, to_place, length_nm FROM movement");
  while (rows.executeStep()) {
    out[rows.getColumn(0).getString()] -= rows.getColumn(2).getInt64();
    out[rows.getColumn(1).getString()] += rows.getColumn(2).getInt64();
  }
  return out;
}

std::int64_t Bench::rows_of(const std::string& table) {
  SQLite::Database db(made.file().string(), SQLite::OPEN_READONLY);
  return db.execAndGet("SELECT COUNT(*) FROM " + table).getInt64();
}

std::int64_t Bench::revision() {
  return seen([](const View& v) { return v.revision(); });
}

Line Bench::newest_line() {
  return seen([](const View& v) { return v.journal().line(v.journal().newest()).value(); });
}

Shop::Shop() {
  does("set", R"({"setting": "zone", "to": "Europe/Berlin"})");
  does("open-hours", R"({"days": "mon-fri", "hours": "9:00-18:00"})");
  does("define-wire", R"({"name": "medium", "stick_mm": 600})");
  does("define-wire", R"({"name": "narrow", "stick_mm": 500})");
  does("receive", R"({"wire": "medium", "count": 10})");
  does("new-job", R"({"wire": 1, "scale_mm": 600, "frets": 4, "nut_width_mm": 52, "far_width_mm": 52,
                      "owner": "Vida", "instrument": "test board"})");
  does("new-job",
       R"({"wire": 2, "scale_mm": 640, "frets": 24, "nut_width_mm": 43, "far_width_mm": 53, "far_slot": 12,
                      "owner": "Anton", "instrument": "long board"})");
}

} // namespace nutward::test
