#include "shop/level_asked.hpp"

#include "shop/level_data.hpp"

#include <array>

namespace nutward::shop {

namespace {

using level::Finding;
using level::Line;
using level::LineFinding;

constexpr std::array in_order{Line::middle, Line::bass, Line::treble};
constexpr std::size_t most_rows = 8; // explanations of a line, where not all are asked for

std::vector<Line> lines_asked(const LevelAsked& a) {
  if (a.line) return {*a.line};
  return {in_order.begin(), in_order.end()};
}

// Lines that have the same to say, told together.
struct Group {
  std::vector<Line> lines;
  const LineFinding* finding = nullptr;
};

bool same(const LineFinding& a, const LineFinding& b, const Levelling& l) {
  if (a.finding != b.finding || a.finding == Finding::contradiction) return false;
  if (a.finding == Finding::level) return l.call(a.line).may_be_called == l.call(b.line).may_be_called;
  return explained(a) == explained(b);
}

std::vector<Group> groups_of(const LevelAsked& a, const Levelling& l) {
  std::vector<Group> out;
  for (const Line line : lines_asked(a)) {
    const LineFinding& f = l.diagnosis.on(line);
    const auto at =
        std::find_if(out.begin(), out.end(), [&](const Group& g) { return same(*g.finding, f, l); });
    if (at == out.end())
      out.push_back({{line}, &f});
    else
      at->lines.push_back(line);
  }
  for (Group& g : out)
    std::sort(g.lines.begin(), g.lines.end());
  return out;
}

bool faulty(const LineFinding& f) {
  return f.finding != Finding::unread && f.finding != Finding::level;
}

std::string words_of(const Group& g, const Levelling& l) {
  return stands_words(g.lines, *g.finding, l.call(g.finding->line), l.readings);
}

// What is off; where nothing is, how far the lines are read.
std::string stands(const LevelAsked& a, const Levelling& l, bool every_line) {
  std::vector<Group> groups = groups_of(a, l);
  const bool off =
      std::any_of(groups.begin(), groups.end(), [](const Group& g) { return faulty(*g.finding); });
  if (off && !every_line) std::erase_if(groups, [](const Group& g) { return !faulty(*g.finding); });
  if (groups.size() == 1 && groups.front().finding->finding == Finding::unread && !a.line)
    return l.stale.empty() ? "nothing is read yet" : "nothing that was read counts any more";
  std::vector<std::string> parts;
  parts.reserve(groups.size());
  for (const Group& g : groups)
    parts.push_back(words_of(g, l));
  return fmt::format("{}", fmt::join(parts, "; "));
}

bool covers(const level::Reading& r, int slot) {
  const auto in = [&](const std::vector<int>& slots) {
    return std::find(slots.begin(), slots.end(), slot) != slots.end();
  };
  const bool under = r.felt != level::Felt::not_laid && slot >= r.span.from && slot <= r.span.to;
  return under || in(r.looks_sunk) || in(r.looks_high);
}

// Of one fret on one line; "" where nothing was read there.
std::string fret_words(int slot, const LineFinding& f, const Levelling& l, const Setup& set) {
  const std::string where = fmt::format("on the {}", word_of(f.line));
  if (f.finding == Finding::level) {
    for (const level::Unseen& u : l.call(f.line).unseen) {
      if (u.off.slot == slot)
        return fmt::format("{} nothing says that it is off, but it could be {} by more than {} unnoticed",
                           where, word_of(u.off.way), say(l.settings.plan.called_level, set));
    }
    for (const level::Unseen& u : l.call(f.line).ends_high) {
      if (u.off.slot == slot)
        return where + " nothing says that it is off, but whether it stands high no straightedge shows";
    }
    return where + " it is level";
  }
  if (f.finding == Finding::contradiction) return where + " the readings contradict one another";
  if (f.finding == Finding::many) return where + " more than three things are off";
  for (const level::Way way : {level::Way::high, level::Way::low}) {
    const level::Off off{slot, way};
    std::size_t in = 0;
    std::string amount;
    for (const level::Explanation& e : f.explanations) {
      for (const level::Amount& part : e.parts) {
        if (part.off != off) continue;
        ++in;
        amount = shop::words_of(part, set);
      }
    }
    const std::size_t all = f.explanations.size();
    if (in > 0 && in == all)
      return fmt::format("{} it is {}{}", where, word_of(way), all == 1 ? " " + amount : "");
    if (in > 0) return fmt::format("{} it may be {}, by {} of {} explanations", where, word_of(way), in, all);
  }
  if (!f.explanations.empty()) return where + " no explanation has it off";
  return "";
}

std::string fret_stands(const LevelAsked& a, const Levelling& l) {
  std::vector<std::string> parts;
  for (const Line line : lines_asked(a)) {
    if (auto part = fret_words(*a.slot, l.diagnosis.on(line), l, a.set); !part.empty())
      parts.push_back(std::move(part));
  }
  if (std::find(l.sprang.begin(), l.sprang.end(), *a.slot) != l.sprang.end())
    parts.insert(parts.begin(), "it sprang back");
  if (parts.empty()) parts.emplace_back("nothing that counts was read over it");
  return fmt::format("fret {}: {}", *a.slot, fmt::join(parts, "; "));
}

// From which readings.
std::string follows(const LevelAsked& a, const Levelling& l) {
  std::vector<std::string> from;
  for (const level::Reading& r : l.readings) {
    if (covers(r, *a.slot) && (!a.line || r.line == *a.line)) from.push_back(shop::words_of(r));
  }
  return from.empty() ? "" : fmt::format("It follows from: {}.", joined(from));
}

void join_to(std::string& text, const std::string& more) {
  if (!more.empty()) text += (text.empty() ? "" : " ") + more;
}

std::string no_more_words(const std::vector<Reading>& those, std::string_view since) {
  if (those.empty()) return "";
  std::vector<std::string> some;
  for (std::size_t i = 0; i < those.size() && i < 3; ++i)
    some.push_back(shop::words_of(those[those.size() - 1 - i].is));
  return fmt::format("{} no more, since {}: {}{}.",
                     plural(std::ssize(those), "reading counts", "readings count"), since, joined(some),
                     those.size() > some.size() ? " and others" : "");
}

std::string stale_words(const Levelling& l) {
  std::string out = no_more_words(l.stale, "a fret there was touched after");
  join_to(out, no_more_words(l.overruled, "the same was read twice otherwise after"));
  return out;
}

// What no straightedge shows, of lines that may be called level.
std::string unseen_words(const LevelAsked& a, const Levelling& l) {
  std::vector<int> ends;
  for (const Line line : lines_asked(a)) {
    if (!l.call(line).may_be_called) continue;
    for (const level::Unseen& u : l.call(line).ends_high)
      ends.push_back(*u.off.slot);
  }
  std::sort(ends.begin(), ends.end());
  ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
  if (ends.empty()) return "";
  return fmt::format("Whether {} {} high no straightedge shows: try a feeler beside {}.",
                     ends.size() == 1 ? std::to_string(ends[0])
                                      : fmt::format("{} or {}", ends[0], ends.back()),
                     "stands", ends.size() == 1 ? "it" : "them");
}

std::string not_read_words(const LevelAsked& a, const Levelling& l) {
  std::vector<std::string> parts;
  for (const Line line : lines_asked(a)) {
    if (l.diagnosis.on(line).finding != Finding::level || l.call(line).may_be_called) continue;
    std::vector<int> slots;
    for (const level::Unseen& u : l.call(line).unseen)
      slots.push_back(*u.off.slot);
    slots.erase(std::unique(slots.begin(), slots.end()), slots.end());
    parts.push_back(fmt::format("along the {} {}", word_of(line), ranges(slots)));
  }
  if (parts.empty()) return "";
  return fmt::format("Further off than {} and unnoticed could still be {}.",
                     say(l.settings.plan.called_level, a.set), joined(parts));
}

// The advice that the answer leads with, into those told.
std::size_t leading(const LevelAsked& a, const Levelling& l, const std::vector<ToldAdvice>& all) {
  const auto find = [&](auto good) -> std::optional<std::size_t> {
    for (std::size_t i = 0; i < all.size(); ++i) {
      if (good(i)) return i;
    }
    return std::nullopt;
  };
  const auto takes = [&](std::size_t i) {
    return std::holds_alternative<level::TakeReading>(l.advice[i].step);
  };
  if (a.slot) {
    if (const auto at = find([&](std::size_t i) { return all[i].slot == a.slot; })) return *at;
  }
  if (a.only == "next" || a.slot) return find(takes).value_or(0);
  return 0;
}

std::vector<std::string> row_of(const std::vector<Line>& lines, std::string is, std::string what,
                                std::string note) {
  std::vector<std::string> names;
  names.reserve(lines.size());
  for (const Line line : lines)
    names.emplace_back(word_of(line));
  return {lines.size() == in_order.size() ? "all" : joined(names), std::move(is), std::move(what),
          std::move(note)};
}

void add_explanations(Table& table, const LevelAsked& a, const Levelling& l) {
  for (const Line line : lines_asked(a)) {
    const auto& all = l.diagnosis.on(line).explanations;
    for (std::size_t i = 0; i < all.size() && (a.all || i < most_rows); ++i) {
      const bool first = i == 0 && all.size() > 1 && all[0].rarity < all[1].rarity;
      const std::string note = all[i].barely ? "all but ruled out" : first ? "the likeliest" : "";
      table.rows.push_back(
          row_of({line}, all.size() == 1 ? "is off" : "may be", offs_words(all[i], a.set), note));
    }
    if (!a.all && all.size() > most_rows)
      table.rows.push_back(
          row_of({line}, "may be",
                 "one of " + plural(std::ssize(all) - static_cast<std::ptrdiff_t>(most_rows), "other"), ""));
  }
}

std::string assumed(const Reading& r) {
  std::vector<std::string> parts;
  if (r.line_assumed) parts.emplace_back("line not said");
  if (r.span_assumed) parts.emplace_back("span not said");
  return joined(parts);
}

// Those of one width in a row.
void add_spans(Table& table, Line line, const Levelling& l) {
  const auto frets = [&](const level::Span& s) { return *l.lines.find(s.to) - *l.lines.find(s.from) + 1; };
  const auto& spans = l.to_read(line);
  for (std::size_t i = 0; i < spans.size();) {
    std::vector<std::string> alike;
    const std::size_t wide = frets(spans[i]);
    for (; i < spans.size() && frets(spans[i]) == wide; ++i)
      alike.push_back(shop::words_of(spans[i]));
    table.rows.push_back(row_of({line}, "to read", fmt::format("{}", fmt::join(alike, ", ")),
                                fmt::format("over {} frets", wide)));
  }
}

void add_readings(Table& table, const LevelAsked& a, const Levelling& l) {
  for (const Reading& r : l.kept) {
    if (!a.line || r.is.line == *a.line)
      table.rows.push_back(row_of({r.is.line}, "was read", shop::words_of(r.is), assumed(r)));
  }
  for (const auto* those : {&l.stale, &l.overruled}) {
    for (const Reading& r : *those) {
      if (!a.line || r.is.line == *a.line)
        table.rows.push_back(row_of({r.is.line}, "counts no more", shop::words_of(r.is), assumed(r)));
    }
  }
  for (const Line line : lines_asked(a))
    add_spans(table, line, l);
}

Table table_of(const LevelAsked& a, const Levelling& l, const std::vector<ToldAdvice>& all,
               std::size_t first) {
  Table out{{"line", "it", "what", "why"}, {}};
  add_explanations(out, a, l);
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (i != first) out.rows.push_back(row_of(l.advice[i].lines, "to do", all[i].what, all[i].why));
  }
  if (a.all) add_readings(out, a, l);
  return out;
}

std::vector<Line> sorted(std::vector<Line> lines) {
  std::sort(lines.begin(), lines.end());
  return lines;
}

std::string lead(const LevelAsked& a, const Levelling& l) {
  if (a.slot) return fmt::format("{}, {}.", named(a.job), fret_stands(a, l));
  if (a.only == "next" && !l.next) return fmt::format("{}: no reading is worth taking now.", named(a.job));
  if (a.only == "next") return fmt::format("Next on {}:", named(a.job));
  const auto lines = lines_asked(a);
  const auto may = [&](Line line) { return l.call(line).may_be_called; };
  const bool level = std::all_of(lines.begin(), lines.end(), may);
  if (a.only == "call" && level)
    return fmt::format("{} may be called level along {}.", named(a.job), along_words(sorted(lines)));
  if (a.only == "call")
    return fmt::format("{} may not be called level yet: {}.", named(a.job), stands(a, l, true));
  std::string out = fmt::format("{}: {}.", named(a.job), stands(a, l, false));
  if (!l.sprang.empty()) out += fmt::format(" {} sprang back.", ranges(l.sprang));
  return out;
}

std::string lower_first(std::string text) {
  if (!text.empty() && text[0] >= 'A' && text[0] <= 'Z') text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

void tell_first(Answer& out, const LevelAsked& a, const Levelling& l, const level::Advice& advice,
                const ToldAdvice& first) {
  const bool said = std::holds_alternative<level::MayCallLevel>(advice.step); // in the lead
  if (!said) join_to(out.text, out.text.ends_with(':') ? lower_first(first.what) : first.what);
  if (a.slot) join_to(out.reason, follows(a, l));
  join_to(out.reason, first.why);
}

void tell_the_rest(Answer& out, const LevelAsked& a, const Levelling& l) {
  if (a.only == "call") join_to(out.reason, not_read_words(a, l));
  join_to(out.reason, unseen_words(a, l));
  join_to(out.reason, stale_words(l));
  if (l.foreseen) join_to(out.reason, "No fret of it is reported seated yet: all are taken to stand.");
}

} // namespace

Answer answer_of(const LevelAsked& a) {
  const PressAgainWith press(a.job, a.view, a.set);
  const Levelling l = levelling(a.job, a.view, press, a.line);
  if (a.slot && !l.lines.find(*a.slot)) {
    throw Problem(Fault::value, fmt::format("No fret stands in slot {} of {}.", *a.slot, named(a.job)),
                  "slot", "Ask about one that does.");
  }
  std::vector<ToldAdvice> all;
  all.reserve(l.advice.size());
  for (const level::Advice& advice : l.advice)
    all.push_back(told(advice, {a.job, l, press, a.set}));
  const std::size_t first = leading(a, l, all);
  Answer out;
  out.text = lead(a, l);
  tell_first(out, a, l, l.advice.at(first), all.at(first));
  tell_the_rest(out, a, l);
  out.text = sentence(out.text);
  if (Table table = table_of(a, l, all, first); !table.rows.empty()) out.table = std::move(table);
  for (const ToldAdvice& t : all) {
    for (const Hazard h : t.cautions) {
      if (std::find(out.cautions.begin(), out.cautions.end(), h) == out.cautions.end())
        out.cautions.push_back(h);
    }
  }
  out.data = data_of(a, l, all, first);
  out.about.args = {{"job", ref(Thing::job, a.job.id)}};
  if (const auto about = a.slot ? a.slot : all.at(first).slot)
    out.about.args.emplace_back("slot", std::int64_t{*about});
  // "It rocks" is then of that reading.
  if (const auto* take = std::get_if<level::TakeReading>(&l.advice.at(first).step)) {
    out.about.args.emplace_back("from", std::int64_t{take->next.span.from});
    out.about.args.emplace_back("to", std::int64_t{take->next.span.to});
    out.about.args.emplace_back("line", std::string(word_of(take->next.line)));
  }
  return out;
}

void carry_asked(Call& about, const Answer& asks) {
  for (const char* name : {"from", "to", "line"}) {
    if (const Value* asked = asks.about.find(name)) about.args.emplace_back(name, *asked);
  }
}

} // namespace nutward::shop
