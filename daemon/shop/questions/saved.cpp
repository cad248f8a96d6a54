// What the tin saved: the new wire that frets made of its pieces would have taken, by wire and by month.
#include "shop/period.hpp"
#include "shop/rows.hpp"

#include <map>

namespace nutward::shop::question_rows {

namespace {

using units::LengthUnit;

constexpr std::size_t most_rows = 60; // of the table

struct Sums {
  std::int64_t frets = 0; // made of pieces of the tin
  Length replaced;        // new wire that these would have taken
  Length unpriced;        // of it, what no price is known for
  Money worth;            // of the rest
  Spent spent;

  bool empty() const {
    return frets == 0 && spent.thrown == Length{} && spent.trimmed == Length{} && spent.kerf == Length{} &&
           spent.frets == Length{};
  }
  Sums& operator+=(const Sums& b) {
    frets += b.frets;
    replaced += b.replaced;
    unpriced += b.unpriced;
    worth = worth + b.worth;
    spent.frets += b.spent.frets;
    spent.thrown += b.spent.thrown;
    spent.trimmed += b.spent.trimmed;
    spent.kerf += b.spent.kerf;
    return *this;
  }
};

struct Month {
  std::string name; // "2026-11"
  Wire wire;
  Sums sums;
};

// What a wire cost from then on: of all its priced deliveries so far, the money and the length.
struct Price {
  Instant from;
  Money money;
  Length length;
};

std::vector<Price> prices_of(std::int64_t wire, const View& view) {
  std::vector<Lot> lots = view.wires().lots(wire);
  std::reverse(lots.begin(), lots.end()); // oldest first
  std::vector<Price> out;
  Money money;
  Length length;
  for (const Lot& lot : lots) {
    if (!lot.price) continue;
    money = money + *lot.price;
    length += lot.each * lot.count;
    out.push_back({lot.received, money, length});
  }
  return out;
}

class Reckoning {
public:
  Reckoning(const View& view, const Setup& set) : view_(view), set_(set) {}

  Sums of(const Wire& wire, const Period& span, const std::vector<FretOfTin>& frets,
          const std::vector<Price>& prices) {
    Sums out;
    out.spent = view_.wires().spent(wire.id, span.from, span.before);
    std::map<std::size_t, Length> at_price; // by how many of the prices were known
    for (const FretOfTin& f : frets) {
      if (f.happened < span.from || f.happened >= span.before) continue;
      const Length length = new_wire(f.job, f.slot);
      ++out.frets;
      out.replaced += length;
      const auto known = std::upper_bound(prices.begin(), prices.end(), f.happened,
                                          [](Instant t, const Price& p) { return t < p.from; });
      at_price[static_cast<std::size_t>(known - prices.begin())] += length;
    }
    for (const auto& [known, length] : at_price) {
      if (known == 0)
        out.unpriced += length;
      else
        out.worth = out.worth + units::share(prices[known - 1].money, length, prices[known - 1].length);
    }
    return out;
  }

private:
  // What the fret of a slot takes of a stick, with its nip.
  Length new_wire(std::int64_t job, int slot) {
    auto there = needs_.find({job, slot});
    if (there == needs_.end()) {
      if (!job_ || job_->id != job) job_ = view_.jobs().find(job);
      there = needs_.emplace(std::pair{job, slot}, need_of(job_.value(), slot, set_).cut + set_.fit.nip_loss)
                  .first;
    }
    return there->second;
  }

  const View& view_;
  const Setup& set_;
  std::optional<Job> job_;
  std::map<std::pair<std::int64_t, int>, Length> needs_;
};

std::vector<Month> months_of_wires(const std::vector<Wire>& wires, const Period& period, const Moment& moment,
                                   const View& view, const Setup& set) {
  std::vector<Month> out;
  Reckoning reckoning{view, set};
  for (const Wire& wire : wires) {
    const auto moved = view.wires().moved(wire.id);
    if (!moved) continue;
    const auto frets = view.wires().frets_of_tin(wire.id, period.from, period.before);
    const auto prices = prices_of(wire.id, view);
    for (const Period& month : months_of(period, moved->first, moved->second, moment)) {
      Month m{month.words, wire, reckoning.of(wire, month, frets, prices)};
      if (!m.sums.empty()) out.push_back(std::move(m));
    }
  }
  std::stable_sort(out.begin(), out.end(), [](const Month& a, const Month& b) { return a.name < b.name; });
  return out;
}

std::string m(Length v) {
  return units::print(v, LengthUnit::m);
}

std::string worth_of(const Sums& s, const Setup& set) {
  if (s.frets == 0) return "";
  if (s.unpriced == s.replaced) return "no price";
  return units::print(s.worth, set.currency) + (s.unpriced > Length{} ? " and more" : "");
}

std::string words_of_money(const Sums& s, const Setup& set) {
  if (s.unpriced == s.replaced) return "; no price of it is on record";
  const std::string worth = ", worth " + units::print(s.worth, set.currency);
  return s.unpriced == Length{}
             ? worth
             : worth + fmt::format(" without {} that no price is on record for", m(s.unpriced));
}

std::string words_of(const Sums& s, const std::string& of_wire, const Period& period, const Setup& set) {
  std::string out = s.frets == 0
                        ? fmt::format("No piece of the tin{} became a fret {}.", of_wire, period.words)
                        : fmt::format("{} the tin saved {} of new wire{}{}: {} made of its pieces.",
                                      sentence(period.words), m(s.replaced), of_wire, words_of_money(s, set),
                                      plural(s.frets, "fret was", "frets were"));
  if (s.spent.thrown != Length{} || s.spent.trimmed != Length{} || s.spent.kerf != Length{})
    out += fmt::format(" {} of pieces was thrown out, {} trimmed or ground off, and {} lost in cuts.",
                       m(s.spent.thrown), m(s.spent.trimmed), m(s.spent.kerf));
  return out;
}

Value data_of(const Sums& s, std::vector<std::pair<std::string, Value>> fields) {
  const bool known = s.frets == 0 || s.unpriced < s.replaced;
  fields.insert(fields.end(), {{"frets", s.frets},
                               {"replaced", s.replaced},
                               {"worth_minor", known ? Value{s.worth} : Value{}},
                               {"unpriced", s.unpriced},
                               {"taken", s.spent.frets},
                               {"all_new", s.spent.frets + s.replaced},
                               {"thrown", s.spent.thrown},
                               {"trimmed", s.spent.trimmed},
                               {"kerf", s.spent.kerf}});
  return record(std::move(fields));
}

Table table_of(const std::vector<Month>& months, const Setup& set) {
  Table out{{"month", "wire", "frets of pieces", "new wire saved", "worth", "thrown out", "trimmed",
             "lost in cuts"},
            {}};
  const std::size_t first = months.size() > most_rows ? months.size() - most_rows : 0;
  for (std::size_t i = first; i < months.size(); ++i) {
    const Sums& s = months[i].sums;
    out.rows.push_back({months[i].name, months[i].wire.name, std::to_string(s.frets), m(s.replaced),
                        worth_of(s, set), say(s.spent.thrown, set), say(s.spent.trimmed, set),
                        say(s.spent.kerf, set)});
  }
  return out;
}

std::string reason_of(const Sums& s, const std::vector<Month>& months, const Setup& set) {
  if (months.empty()) return "";
  std::string out = fmt::format(
      "From a new stick each of these frets would have taken what its slot is cut to and {} for the cut, by "
      "its board and the settings of today: {} for all frets instead of the {} that sticks and coils gave. A "
      "price is the mean of all priced deliveries of the wire until the fret was made, rounded to the "
      "nearest "
      "cent for each wire, month and price. What was taken back does not count, nor a fret that went back in "
      "the tin or was lost.",
      say(set.fit.nip_loss, set), m(s.spent.frets + s.replaced), m(s.spent.frets));
  if (months.size() > most_rows)
    out += fmt::format(" Of {} rows the last {} are shown.", months.size(), most_rows);
  return out;
}

Period period_asked(const Args& args, const Moment& moment) {
  if (!args.has("since_month")) return period_of(args, "since", "this_year", moment);
  for (const char* other : {"month", "year", "since", "until"}) {
    if (args.has(other))
      throw Problem(Fault::value, "Those are two periods at once.", "since_month", "Say one of them.");
  }
  return since_month(args.text("since_month"), moment);
}

Answer ask(const Args& args, const Moment& moment, const View& view) {
  const Setup set = setup(view);
  const Period period = period_asked(args, moment);
  const auto wires = args.has("wire") ? std::vector{wire_of(view, args.id("wire"))} : view.wires().all();
  const std::vector<Month> months = months_of_wires(wires, period, moment, view, set);
  Sums all;
  std::map<std::int64_t, Sums> by_wire;
  std::vector<Value> month_data, wire_data;
  for (const Month& month : months) {
    all += month.sums;
    by_wire[month.wire.id] += month.sums;
    month_data.push_back(data_of(
        month.sums,
        {{"month", month.name}, {"wire", ref(Thing::wire, month.wire.id)}, {"name", month.wire.name}}));
  }
  for (const Wire& w : wires)
    wire_data.push_back(data_of(by_wire[w.id], {{"wire", ref(Thing::wire, w.id)}, {"name", w.name}}));
  Answer out;
  out.text = wires.empty() ? "No wire has been defined yet."
                           : words_of(all, args.has("wire") ? " of " + wires.front().name : "", period, set);
  out.reason = reason_of(all, months, set);
  if (!months.empty()) out.table = table_of(months, set);
  out.data = data_of(all, {{"from_at", period.from == beginning ? Value{} : Value{period.from}},
                           {"before_at", period.before == no_end ? Value{} : Value{period.before}},
                           {"wires", list(std::move(wire_data))},
                           {"months", list(std::move(month_data))}});
  if (args.has("wire")) out.about.args = {{"wire", ref(Thing::wire, args.id("wire"))}};
  return out;
}

std::vector<Give> sums(std::vector<Give> before) {
  before.insert(
      before.end(),
      {{"frets", Kind::count, "made of pieces of the tin"},
       {"replaced", Kind::length, "new wire that these would have taken"},
       {"worth", Kind::money, "of it, as far as prices are known; null where none is", Often::or_null},
       {"unpriced", Kind::length, "of the wire replaced, what no price is known for"},
       {"taken", Kind::length, "off sticks and coils for frets, with their cuts"},
       {"all_new", Kind::length, "that every fret would have taken off sticks and coils"},
       {"thrown", Kind::length, "pieces thrown out of the tin"},
       {"trimmed", Kind::length, "other scrap: nipped, ground off or lost"},
       {"kerf", Kind::length, "lost in cuts"}});
  return before;
}

} // namespace

extern const Question saved;
const Question saved{
    {"saved",
     "What the tin saved: new wire and money that frets made of its pieces would have cost; and the scrap.",
     {takes::optional(takes::wire),
      {"month", Kind::one_of, false, false, "or a year; this year where not said", {}, period_words()},
      {"year", Kind::count, false, false, "of the month; else the last one of its name", {1970, 2200}},
      {"since", Kind::day, false, false, "or the first day"},
      {"until", Kind::day, false, false, "and the last day"},
      {"since_month",
       Kind::one_of,
       false,
       false,
       "or the first month, the last one of its name",
       {},
       month_words()}},
     {"what (did|has) the tin (save|saved) [us] [of {wire}] [(for|in|over)] [{month} [{year}]]",
      "what (did|has) the tin (save|saved) [us] [of {wire}] since ({since}|{since_month})",
      ("how much [wire|money|{wire}] (did|has|have) (the tin|we|short frets|pieces) (save|saved) [us] [of "
       "{wire}] "
       "[(for|in|over)] [{month} [{year}]]"),
      ("how much [wire|money|{wire}] (did|has|have) (the tin|we|short frets|pieces) (save|saved) [us] [of "
       "{wire}] "
       "since ({since}|{since_month})"),
      ("(what|how much) (was|is|have we) (saved|thrown away|thrown out|scrapped) [of {wire}] [(for|in|over)] "
       "[{month} "
       "[{year}]]"),
      "saved [of {wire}] since ({since}|{since_month})", "is the tin worth (it|keeping|the trouble)",
      "savings [(for|in|over)] [{month} [{year}]]",
      ("how much [wire] (did|have) (we|i) (waste|wasted|scrap|scrapped|throw away|thrown away) "
       "[(for|in|over)] [{month} [{year}]]"),
      "how much scrap (is there|did we make|was there|have we made) [(for|in|over)] [{month} [{year}]]",
      "how much scrap [(for|in|over)] {month} [{year}]", "what is the tin worth [to us]",
      ("(did|does|has) the tin (save|saved) [us] (anything|any wire|any money) [(for|in|over)] "
       "[{month} [{year}]]")},
     {"what did the tin save us this month", "how much medium have we saved this year",
      "what was scrapped of medium in november", "what has the tin saved since march"},
     Role::look,
     sums({{"from", Kind::at, "start of the period; null for the beginning", Often::or_null},
           {"before", Kind::at, "its end; null for none", Often::or_null},
           gives::records("wires", "those asked about", sums({gives::wire, gives::wire_name})),
           gives::records("months", "of each wire, in which something was spent or saved",
                          sums({{"month", Kind::words, "such as 2026-11, in the shop's zone"},
                                gives::wire,
                                gives::wire_name}))})},
    &ask};

} // namespace nutward::shop::question_rows
