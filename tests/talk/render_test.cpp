#include "rows_of_the_test.hpp"
#include "shop/lists.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

#include <random>

using namespace nutward::talk;
using namespace nutward::talk::test;
using namespace nutward;
using nutward::test::rounds;

namespace {

bool same(const shop::Value& a, const shop::Value& b);
bool same(const shop::Node& a, const shop::Node& b) {
  if (a.is_list != b.is_list || a.items.size() != b.items.size() || a.fields.size() != b.fields.size())
    return false;
  for (std::size_t i = 0; i < a.items.size(); ++i) {
    if (!same(a.items[i], b.items[i])) return false;
  }
  for (std::size_t i = 0; i < a.fields.size(); ++i) {
    if (a.fields[i].first != b.fields[i].first || !same(a.fields[i].second, b.fields[i].second)) return false;
  }
  return true;
}
bool same(const shop::Value& a, const shop::Value& b) {
  const auto* n = std::get_if<std::shared_ptr<const shop::Node>>(&a);
  const auto* m = std::get_if<std::shared_ptr<const shop::Node>>(&b);
  if (n != nullptr && m != nullptr) return same(**n, **m);
  return a == b;
}

class Random {
public:
  // Within the parameter's own bounds, where it has any, both ends among them.
  std::int64_t within(const shop::Param& p, std::int64_t least, std::int64_t most) {
    if (p.bounds.most > p.bounds.least) {
      least = static_cast<std::int64_t>(p.bounds.least), most = static_cast<std::int64_t>(p.bounds.most);
    }
    const std::int64_t which = whole(0, 9);
    return which == 0 ? least : which == 1 ? most : whole(least, most);
  }

  std::int64_t whole(std::int64_t least, std::int64_t most) {
    return std::uniform_int_distribution<std::int64_t>(least, most)(engine_);
  }

  // Awkward, and none that the shop would refuse: quotes of every kind, commas, numbers, words that join or
  // mean something, the names of things and of parameters.
  std::string text() {
    static const std::vector<std::string> bits{
        "a",      "B",    " ",   "\"", "\\", "7",     "and",     ",",      "; ", "größe",  "job 12",
        "'",      ".",    "?",   "“",  "”",  "don't", "_",       "″",      "-",  "/",      "12/3",
        "of",     "slot", "yes", "no", "!",  "52.4",  "mm",      "medium", "&",  "{wire}", "undo",
        "please", "½",    "$",   "#",  "🎸",  "\"x\"", "at 3 pm", "friday"};
    std::string out;
    for (std::int64_t n = whole(0, 8); n > 0; --n)
      out += bits[static_cast<std::size_t>(whole(0, static_cast<std::int64_t>(bits.size()) - 1))];
    return out;
  }

  shop::Value value(const shop::Param& p) {
    if (p.many) {
      std::vector<shop::Value> out;
      for (std::int64_t n = whole(1, 4); n > 0; --n)
        out.push_back(one(p));
      return shop::list(std::move(out));
    }
    return one(p);
  }

private:
  shop::Value one(const shop::Param& p) {
    switch (p.kind) {
    case Kind::words:
    case Kind::name:
      return text();
    case Kind::one_of:
      return std::string(
          p.options[static_cast<std::size_t>(whole(0, static_cast<std::int64_t>(p.options.size()) - 1))]);
    case Kind::yes:
      return whole(0, 1) == 1;
    case Kind::count:
      return within(p, 0, 100000);
    case Kind::number:
      return static_cast<double>(whole(-99999, 99999)) / 1000.0;
    case Kind::length: // nanometres; whole millimetres and 64ths of an inch too, and below 0 where that may
                       // be
      if (whole(0, 3) == 0) return units::Length{within(p, 0, 3000) * 1'000'000};
      if (whole(0, 3) == 0) return units::Length{whole(0, 5000) * 396'875};
      return units::Length{(p.bounds.least < 0 && whole(0, 1) == 0 ? -1 : 1) * whole(1, 3'000'000'000)};
    case Kind::mass:
      return units::Mass{whole(1, 9'000'000)};
    case Kind::load:
      return units::Force{static_cast<double>(whole(1, 999'999)) / 100.0};
    case Kind::money:
      return units::Money{whole(0, 1'000'000)};
    case Kind::at:
      return units::Instant{whole(0, 4'000'000'000)};
    case Kind::day:
      return units::Day{static_cast<std::int32_t>(whole(0, 40000))};
    case Kind::spans:
      return std::string(whole(0, 1) == 0 ? "09:00-12:30, 13:30-18:00" : "07:15-24:00");
    case Kind::weekdays:
      return whole(0, 6);
    case Kind::slot:
      return whole(0, 48);
    case Kind::url:
      return "https://" + std::to_string(whole(1, 99)) + ".example/a?b=c,d;e#f_\"g";
    case Kind::wire:
      return Ref{Thing::wire, whole(1, 99999)};
    case Kind::job:
      return Ref{Thing::job, whole(1, 99999)};
    case Kind::person:
      return Ref{Thing::actor, whole(1, 99999)};
    case Kind::machine:
      return Ref{Thing::machine, whole(1, 99999)};
    case Kind::receiver:
      return Ref{Thing::receiver, whole(1, 99999)};
    case Kind::piece:
      return piece();
    }
    return {};
  }

  shop::Value piece() {
    if (whole(0, 2) == 0) return Ref{Thing::piece, whole(1, 99999)};
    std::vector<std::pair<std::string, shop::Value>> fields{
        {"length_mm", units::Length{whole(1'000'000, 2'000'000'000)}.mm()}};
    if (whole(0, 1) == 0) fields.emplace_back("wire", Ref{Thing::wire, whole(1, 99)});
    return shop::record(std::move(fields));
  }

  std::mt19937_64 engine_{20261125};
};

// With the parameter `always` among the others.
Call random_call(const shop::Row& row, Random& random, const shop::Param* always = nullptr) {
  Call out{std::string(row.name), {}};
  for (const shop::Param& p : row.takes) {
    const bool wanted = p.required || &p == always ||
                        (row.takes.size() > 6 ? random.whole(0, 5) == 0 : random.whole(0, 1) == 0);
    if (wanted) out.args.emplace_back(p.name, random.value(p));
  }
  // What a fret measures is said in one of two ways.
  if (row.name == "all-right" && out.find("length") == nullptr && out.find("short_by") == nullptr)
    out.args.emplace_back("length", random.value(*row.find("length")));
  return out;
}

const Names& names_with_inches() {
  static const Names out = [] {
    Names n = names();
    n.length = units::LengthUnit::in;
    n.load = units::ForceUnit::kn;
    return n;
  }();
  return out;
}

// A conversation: whatever was spoken of before in it, and whatever a bare length means in it.
struct Talking {
  const Names& names;
  State state;
};
Talking random_talk(Random& random) {
  Talking out{random.whole(0, 1) == 0 ? names() : names_with_inches(), {}};
  const std::int64_t which = random.whole(0, 3);
  if (which > 0) out.state = after_fit();
  if (which > 1) out.state.unit = which == 2 ? "in" : "in/64";
  if (which == 3) {
    out.state.done = Call{
        "use", {{"piece", Ref{Thing::piece, 41}}, {"job", Ref{Thing::job, 12}}, {"slot", std::int64_t{3}}}};
    out.state.done_last = true;
    out.state.misses = 2;
  }
  return out;
}

// The canonical sentence of the call is understood as that call and no other.
void check_reads_back(const shop::Row& row, const Call& call, const Phrasebook& book,
                      const Talking& in = {names(), State{}}) {
  const std::string sentence = render(row, call);
  INFO(sentence);
  INFO("in a conversation with " << in.state.about.args.size() << " things spoken of");
  const Understood u = understand(normalise(sentence), {book, in.names, in.state, now()});
  INFO(u.tell.text);
  REQUIRE(u.what != Understood::What::tell);
  REQUIRE(u.calls.size() == 1);
  REQUIRE(u.calls.front().row == call.row);
  REQUIRE(u.calls.front().args.size() == call.args.size());
  for (const auto& [name, value] : call.args) {
    INFO(name);
    const shop::Value* back = u.calls.front().find(name);
    REQUIRE(back != nullptr);
    REQUIRE(same(*back, value));
  }
}

} // namespace

TEST_CASE("every call reads back from its canonical sentence as the very same call") {
  Random random;
  const auto all = book().rows();
  for (int round = 0; round < rounds(4000); ++round) {
    const shop::Row& row =
        *all[static_cast<std::size_t>(random.whole(0, static_cast<std::int64_t>(all.size()) - 1))];
    check_reads_back(row, random_call(row, random), book(), random_talk(random));
  }
}

TEST_CASE("every row of the shop's lists reads back from its canonical sentence, with whatever it may take") {
  static const Phrasebook real{shop::questions(), shop::commands()};
  Random random;
  for (const shop::Row* row : real.rows()) {
    const Talking at = random_talk(random);
    if (row->takes.empty()) check_reads_back(*row, random_call(*row, random), real, at);
    for (const shop::Param& p : row->takes) {
      for (int round = 0; round < rounds(24); ++round)
        check_reads_back(*row, random_call(*row, random, &p), real, random_talk(random));
    }
  }
}

TEST_CASE("every example of the shop's lists is understood as a call that reads back from its canonical "
          "sentence") {
  static const Phrasebook real{shop::questions(), shop::commands()};
  Names with_tall = names();
  with_tall.wires.push_back(named({Thing::wire, 6}, "tall", "tall"));
  with_tall.wires.push_back(named({Thing::wire, 7}, "brass", "brass"));
  for (const shop::Row* row : real.rows()) {
    for (std::string_view example : row->examples) {
      INFO(row->name << ": " << example);
      const Understood u = understand(normalise(example), {real, with_tall, State{}, now()});
      REQUIRE(u.calls.size() == 1);
      check_reads_back(*row, u.calls.front(), real);
    }
  }
}

TEST_CASE("for a person things have their names, and times are the shop's") {
  const auto told_of = [](std::string_view row, std::vector<std::pair<std::string, shop::Value>> args) {
    const shop::Row* of = shop::command(row);
    REQUIRE(of != nullptr);
    Call call{std::string(row), std::move(args)};
    return told(*of, call, names());
  };
  const shop::Value wire = Ref{Thing::wire, names().wires.front().ref.id};
  CHECK(told_of("reorder-level", {{"wire", wire}, {"level", units::from_mm(5000)}}) ==
        "reorder level wire " + names().wires.front().label + ", level 5000 mm");
  // 14:00 UTC is 15:00 in the test's zone, an hour to the east.
  CHECK(told_of("look-again",
                {{"job", Ref{Thing::job, 5}}, {"again", units::read_instant("2026-11-26T14:00:00Z")}}) ==
        "look again job 5, again 2026-11-26 15:00");
  // What there is no name for is told as the canonical sentence has it.
  CHECK(told_of("reorder-level", {{"wire", Ref{Thing::wire, 99}}}) == "reorder level wire 99");
}
