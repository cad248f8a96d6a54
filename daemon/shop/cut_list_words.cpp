// The bench's cut list in words, as a table, and drawn. What is drawn has the very texts of the table.
#include "shop/cut_list.hpp"
#include "shop/rows.hpp"

#include <map>
#include <set>

namespace nutward::shop {

namespace {

using cutting::From;

constexpr std::size_t most_rows = 400;
constexpr std::size_t most_bars = 120;
constexpr std::size_t most_named = 6; // of a kind, in a sentence

std::string some_of(const std::vector<std::string>& all) {
  if (all.size() <= most_named) return fmt::format("{}", fmt::join(all, ", "));
  return fmt::format("{} and {} more",
                     fmt::join(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(most_named), ", "),
                     all.size() - most_named);
}

// "slot 3"; of a job that the list is not for alone "slot 3 of job 9".
std::string fret_name(const CutList& list, const ListedFret& f) {
  const bool own = list.job && !f.other;
  return own ? fmt::format("slot {}", f.slot) : fmt::format("slot {} of job {}", f.slot, f.job);
}

// "into the tin, drawer 2"; "into the tin"; "stays on the coil".
std::string where_to(const ListedSource& s) {
  if (s.kind == "coil") return "stays on the coil";
  return s.left_goes == "the tin" ? "into the tin" : "into the tin, " + s.left_goes;
}

// What of a stick or coil is neither a fret nor kept, beside the flat end that comes off first.
Length scrap_after(const ListedSource& s) {
  return s.scrap > s.begin ? s.scrap - s.begin : Length{};
}

void add_rows(const CutList& list, const ListedSource& s, const Setup& set, Table& table) {
  std::string take = s.name;
  const auto row = [&](std::string what, std::string length, std::string mark, std::string then) {
    table.rows.push_back({take, std::move(what), std::move(length), std::move(mark), std::move(then)});
    take.clear();
  };
  if (s.begin > Length{}) row("flat end", say(s.begin, set), say(s.begin, set), "scrap");
  for (const ListedFret& f : s.frets)
    row(fret_name(list, f), say(f.length, set), f.mark ? say(*f.mark, set) : "no cut", f.then);
  if (s.left > Length{})
    row("rest", say(s.left, set), "", where_to(s));
  else if (scrap_after(s) > Length{})
    row("rest", say(scrap_after(s), set), "", "scrap");
}

Table table_of(const CutList& list, const Setup& set) {
  Table out{{"take", "for", "length", "mark", "then"}, {}};
  for (const ListedSource& s : list.sources) {
    if (out.rows.size() >= most_rows) break;
    add_rows(list, s, set, out);
  }
  return out;
}

std::int64_t own_frets(const ListedSource& s) {
  return std::count_if(s.frets.begin(), s.frets.end(), [](const ListedFret& f) { return !f.other; });
}

// "8 from 7 pieces and 13 from 2 sticks".
std::string from_words(const CutList& list) {
  struct Of {
    std::int64_t frets = 0, sources = 0;
  };
  std::map<std::string, Of> by_kind; // blank, coil, piece, stick
  for (const ListedSource& s : list.sources) {
    by_kind[s.kind].frets += own_frets(s);
    ++by_kind[s.kind].sources;
  }
  std::vector<std::string> out;
  for (const char* kind : {"piece", "stick", "blank", "coil"}) {
    const auto at = by_kind.find(kind);
    if (at != by_kind.end())
      out.push_back(fmt::format("{} from {}", at->second.frets, plural(at->second.sources, kind)));
  }
  return fmt::format("{}", fmt::join(out, ", "));
}

std::string without_words(const CutList& list) {
  std::map<std::pair<std::int64_t, std::string>, std::vector<int>> groups;
  for (const CutList::Without& w : list.without)
    groups[{w.job, why_words(w.why, false, list.wire.plan.proved > cutting::Level::none)}].push_back(w.slot);
  std::vector<std::string> all;
  for (auto& [key, slots] : groups) {
    std::sort(slots.begin(), slots.end());
    all.push_back(fmt::format("{} {}{} ({})", slots.size() == 1 ? "slot" : "slots", ranges(slots),
                              list.job ? "" : fmt::format(" of job {}", key.first), key.second));
  }
  return all.empty() ? "" : " Without a fret: " + some_of(all) + ".";
}

std::string tin_words(const CutList& list, const Setup& set) {
  std::vector<std::string> all;
  for (const ListedSource& s : list.sources)
    if (s.left > Length{} && s.kind != "coil")
      all.push_back(s.left_goes == "the tin" ? say(s.left, set)
                                             : fmt::format("{} ({})", say(s.left, set), s.left_goes));
  return all.empty() ? "" : " Into the tin afterwards: " + some_of(all) + ".";
}

std::string text_of(const CutList& list, const Setup& set) {
  const std::string whose = list.job ? named(*list.job) : list.wire.what.wire.name;
  std::int64_t frets = static_cast<std::int64_t>(list.without.size());
  for (const ListedSource& s : list.sources)
    frets += own_frets(s);
  if (frets == 0) {
    if (list.wire.what.waiting > 0 && list.job)
      return fmt::format(
          "{} is behind so many others that the plan of {} has not come to it: ask for its cut plan.",
          sentence(whose), list.wire.what.wire.name);
    return fmt::format("No slot of {} is open: nothing to cut.", whose);
  }
  return fmt::format("{} of {}{}.{}{}", plural(frets, "open fret"), whose,
                     list.sources.empty() ? "" : ": " + from_words(list), without_words(list),
                     tin_words(list, set));
}

// "In slot order: 1-3 from stick 1 of lot 2, 4 from piece 7."
std::string order_words(const CutList& list) {
  if (!list.job) return "";
  std::map<int, std::string> from;
  for (const ListedSource& s : list.sources)
    for (const ListedFret& f : s.frets)
      if (!f.other) from[f.slot] = s.name.substr(0, s.name.find(','));
  std::vector<std::string> parts;
  for (auto at = from.begin(); at != from.end();) {
    std::vector<int> slots;
    const std::string& source = at->second;
    for (; at != from.end() && at->second == source; ++at)
      slots.push_back(at->first);
    parts.push_back(fmt::format("{} from {}", ranges(slots), source));
  }
  return parts.empty() ? "" : fmt::format("In slot order: {}.", fmt::join(parts, "; "));
}

std::string marks_words(const CutList& list, const Setup& set) {
  const cutting::Problem& p = list.wire.what.problem;
  std::string out;
  const bool several = std::any_of(list.sources.begin(), list.sources.end(),
                                   [](const ListedSource& s) { return s.kerf > Length{}; });
  if (several)
    out += fmt::format(
        " Marks are on the rule from the end where cutting begins; each cut loses {} beyond its mark, "
        "which the next marks allow for.",
        say(p.settings.nip_loss, set));
  if (std::any_of(list.sources.begin(), list.sources.end(),
                  [](const ListedSource& s) { return s.begin > Length{}; }))
    out += fmt::format(" Of a stick {} that the bender leaves flat are cut off first.", say(p.flat_end, set));
  return out;
}

std::string shared_words(const CutList& list) {
  std::vector<std::string> all;
  for (const ListedSource& s : list.sources) {
    std::set<std::int64_t> jobs;
    for (const ListedFret& f : s.frets)
      if (f.other) jobs.insert(f.job);
    if (!jobs.empty())
      all.push_back(fmt::format("{} with job {}", s.name.substr(0, s.name.find(',')), fmt::join(jobs, ", ")));
  }
  return all.empty() ? "" : " Shared: " + some_of(all) + "; their cuts are in the list.";
}

// Drawn from the end where cutting begins; what is too short to keep comes last.
draw::Bar bar_of(const CutList& list, const ListedSource& s, const Setup& set) {
  draw::Bar out{s.name, {}, {}};
  Length at = s.begin;
  if (s.begin > Length{})
    out.parts.push_back({draw::PartKind::flat, s.begin, "flat", say(s.begin, set), false});
  for (const ListedFret& f : s.frets) {
    const std::string label =
        list.job && !f.other ? std::to_string(f.slot) : fmt::format("job {}: {}", f.job, f.slot);
    out.parts.push_back({draw::PartKind::fret, f.length, label, f.mark ? say(*f.mark, set) : "", f.other});
    at += f.length;
    if (!f.mark) continue;
    const Length nip = std::min(list.wire.what.problem.settings.nip_loss, s.whole - at);
    if (nip > Length{}) out.parts.push_back({draw::PartKind::cut, nip, "", "", false});
    at += nip;
  }
  if (s.whole > at) {
    const bool kept = s.left > Length{};
    out.parts.push_back({kept ? draw::PartKind::kept : draw::PartKind::scrap, s.whole - at,
                         kept ? say(s.left, set) : "scrap", "", false});
  }
  for (const ListedFret& f : s.frets)
    out.then.push_back(sentence(fret_name(list, f)) + ": " + f.then + ".");
  if (s.left > Length{}) out.then.push_back("Rest: " + say(s.left, set) + ", " + where_to(s) + ".");
  return out;
}

draw::CutCard card_of(const CutList& list, const Answer& answer, const Setup& set) {
  draw::CutCard out;
  out.heading.title = "Cut list for " + (list.job ? named(*list.job) : list.wire.what.wire.name) +
                      (list.job ? ", " + list.wire.what.wire.name : "");
  out.heading.description = answer.text;
  out.heading.lines = {answer.text};
  if (const std::string marks = marks_words(list, set); !marks.empty())
    out.heading.lines.push_back(marks.substr(1));
  for (const Hazard h : answer.cautions)
    out.heading.cautions.push_back("Caution: " + std::string(caution(h)));
  for (const ListedSource& s : list.sources) {
    if (out.bars.size() == most_bars) {
      out.heading.lines.push_back(
          fmt::format("{} more are not drawn: ask for one job.",
                      plural(static_cast<std::int64_t>(list.sources.size() - most_bars), "source")));
      break;
    }
    out.bars.push_back(bar_of(list, s, set));
  }
  return out;
}

Value data_of(const CutList& list) {
  std::vector<Value> sources, slots, without;
  for (const ListedSource& s : list.sources) {
    std::vector<Value> frets;
    for (const ListedFret& f : s.frets) {
      frets.push_back(record({{"job", ref(Thing::job, f.job)},
                              {"slot", std::int64_t{f.slot}},
                              {"length", f.length},
                              {"mark_mm", opt(f.mark)},
                              {"finish", f.finish},
                              {"then", f.then}}));
    }
    const bool piece = s.from == From::piece;
    sources.push_back(record({{"of", s.kind},
                              {"piece", piece ? ref(Thing::piece, s.id) : Value{}},
                              {"lot", !piece && s.id != 0 ? ref(Thing::lot, s.id) : Value{}},
                              {"number", piece ? Value{} : Value{s.number}},
                              {"place", s.place},
                              {"held", s.held},
                              {"length", s.whole},
                              {"begin", s.begin},
                              {"frets", shop::list(std::move(frets))},
                              {"kerf", s.kerf},
                              {"scrap", s.scrap},
                              {"left", s.left},
                              {"left_goes", s.left_goes}}));
  }
  for (const CutList::Without& w : list.without)
    without.push_back(record({{"job", ref(Thing::job, w.job)},
                              {"slot", std::int64_t{w.slot}},
                              {"why", std::string(word_of(w.why))}}));
  return record({{"wire", ref(Thing::wire, list.wire.what.wire.id)},
                 {"name", list.wire.what.wire.name},
                 {"job", list.job ? ref(Thing::job, list.job->id) : Value{}},
                 {"planned_at", opt(list.wire.planned_at)},
                 {"nip_loss", list.wire.what.problem.settings.nip_loss},
                 {"sources", shop::list(std::move(sources))},
                 {"goes_without", shop::list(std::move(without))}});
}

} // namespace

namespace {

// Offered where something of the list is not held yet.
std::optional<Choice> set_aside_choice(const CutList& list, const View& view) {
  if (!list.job || list.sources.empty()) return std::nullopt;
  Choice out{fmt::format("set all of it aside for job {}", list.job->id),
             {"set-aside", {{"job", ref(Thing::job, list.job->id)}}},
             {seen({Thing::job, list.job->id}, view)}};
  bool open = false;
  const auto& aside = list.job->set_aside;
  for (const ListedSource& s : list.sources) {
    if (s.from == From::piece) {
      out.expects.push_back(seen({Thing::piece, s.id}, view));
      open = open || !s.held;
      continue;
    }
    for (const ListedFret& f : s.frets)
      open = open || (!f.other && std::find(aside.begin(), aside.end(), f.slot) == aside.end());
  }
  return open ? std::optional{out} : std::nullopt;
}

} // namespace

Answer answer_of(const CutList& list, const Moment& moment, const View& view, const Setup& set) {
  Answer out;
  out.text = text_of(list, set);
  out.reason = order_words(list);
  for (const ListedSource& s : list.sources)
    for (const Hazard h : s.hazards)
      if (std::find(out.cautions.begin(), out.cautions.end(), h) == out.cautions.end())
        out.cautions.push_back(h);
  if (!list.sources.empty()) {
    out.reason += marks_words(list, set) + shared_words(list) + age_of(list.wire, moment);
    out.table = table_of(list, set);
    if (out.table->rows.size() >= most_rows) out.reason += " The table is cut short: ask for one job.";
    if (out.reason.starts_with(' ')) out.reason.erase(0, 1);
    draw::CutCard card = card_of(list, out, set);
    const std::string title = card.heading.title;
    out.picture = Picture{title, [card = std::move(card)] { return draw::picture_of(card); }};
  }
  out.data = data_of(list);
  if (auto choice = set_aside_choice(list, view)) out.choices = {std::move(*choice)};
  out.about.args = {{"wire", ref(Thing::wire, list.wire.what.wire.id)}};
  if (list.job) out.about.args.emplace_back("job", ref(Thing::job, list.job->id));
  return out;
}

std::vector<Give> cut_list_gives() {
  const std::vector<Give> fret{
      gives::job,
      gives::slot,
      {"length", Kind::length, "of wire for it, before it is finished"},
      {"mark", Kind::length, "on the rule, from the end where cutting begins; null: no cut", Often::or_null},
      {"finish", Kind::length, "of the fret"},
      {"then", Kind::words, "what is done to it afterwards"}};
  return {gives::wire,
          gives::wire_name,
          gives::or_null(gives::job),
          {"planned", Kind::at, "when the plan of the wire was made; null: just now", Often::or_null},
          {"nip_loss", Kind::length, "what each cut loses beyond its mark"},
          gives::records("sources", "each piece, stick or coil once, whole, by the first slot cut from it",
                         {gives::one_of("of", "what it is", {"piece", "stick", "blank", "coil"}),
                          gives::or_null(gives::piece),
                          {"lot", Kind::count, "of new wire, where it is known", Often::or_null},
                          {"number", Kind::count,
                           "which of its delivery, counted through the plan of the wire", Often::or_null},
                          {"place", Kind::words, "of a piece, where it is; may be empty"},
                          {"held", Kind::yes, "whether the piece is held for it"},
                          {"length", Kind::length, "as it is"},
                          {"begin", Kind::length, "flat, and cut off first"},
                          gives::records("frets", "in the order of cutting, other jobs' among them", fret),
                          {"kerf", Kind::length, "lost in nips"},
                          {"scrap", Kind::length, "in no fret, and not kept"},
                          {"left", Kind::length, "to keep; 0 for nothing"},
                          {"left_goes", Kind::words, "where that goes; empty where nothing is left"}}),
          gives::records("goes_without", "slots without a fret",
                         {gives::job, gives::slot,
                          gives::one_of("why", "what is in the way",
                                        {"bad_slot", "too_long_slot", "no_stock", "wire_short"})})};
}

} // namespace nutward::shop
