// What is answered to a sentence of which nothing is understood.
#include "rows_of_the_test.hpp"
#include "shop/lists.hpp"
#include "shop/topics.hpp"
#include "support/catch.hpp"

#include <set>

using namespace nutward::talk;
using namespace nutward::talk::test;
using namespace nutward;

namespace {

// A shop in which nothing is called as in the demo.
const Names& other_names() {
  static const Names out = [] {
    Names n = names();
    n.wires = {named({Thing::wire, 1}, "thick", "thick"), named({Thing::wire, 2}, "slender", "slender")};
    n.jobs = {named({Thing::job, 71}, "job 71, lute of Ode", "lute of Ode")};
    n.persons = {named({Thing::actor, 1}, "Wil", "Wil")};
    n.suppliers = {named({Thing::supplier, 1}, "Brook", "Brook")};
    n.sample = {{71}, {"thick", "slender"}, {"Wil"}, {"Brook"}, {"bell"}, {19}, {"lute"}};
    n.receivers = {named({Thing::receiver, 1}, "bell", "bell")};
    return n;
  }();
  return out;
}

const Phrasebook& real() {
  static const Phrasebook b{shop::questions(), shop::commands()};
  return b;
}

Understood said(std::string_view text, int misses = 0) {
  State state;
  state.misses = misses;
  return understand(normalise(text), {real(), other_names(), state, now()});
}

std::vector<std::string> quoted_in(const std::string& text, std::size_t from) {
  std::vector<std::string> out;
  for (std::size_t i = text.find('\'', from); i != std::string::npos;) {
    const std::size_t end = text.find("' (", i + 1);
    if (end == std::string::npos) break;
    out.push_back(text.substr(i + 1, end - i - 1));
    i = text.find('\'', end + 1);
  }
  return out;
}

} // namespace

TEST_CASE("what was not understood names the words that nobody knows, each once") {
  const Understood u = said("please varnish the headstock of job 71 and varnish it with thick lacquer, Wil");
  CHECK(u.missed);
  CHECK(u.tell.kind == "unclear");
  CHECK(u.tell.text.starts_with(
      "I do not know 'varnish', 'headstock', 'lacquer' here. The nearest that I can do: '"));
}

TEST_CASE("the nearest two are about what was said, with the things that were said in their examples") {
  const std::string slot = said("does slot 9 of job 71 whimper").tell.text;
  CHECK(slot.starts_with("I do not know 'whimper' here. The nearest that I can do: '"));
  CHECK(slot.find("fits slot 9 of job 71' (fit)") != std::string::npos);
  for (const std::string& example : quoted_in(slot, slot.find("here."))) {
    CAPTURE(example);
    CHECK(example.find("slot 9 of job 71") != std::string::npos);
  }
  const Understood supplier = said("pay the supplier");
  CHECK(supplier.tell.text.find("thick' (lots)") != std::string::npos);
  CHECK(said("glu fret").tell.text.find("glue") != std::string::npos); // a letter is missing
}

TEST_CASE("each failure in a row is answered otherwise than the one before, and none with nothing") {
  std::set<std::string> told, offered;
  for (int misses = 0; misses < 3; ++misses) {
    const Understood u = said("frobnicate the whatsit", misses);
    CHECK(u.missed);
    CHECK(u.tell.text.starts_with("I do not know 'frobnicate', 'whatsit' here. "));
    CHECK(told.insert(u.tell.text).second);
    for (const std::string& example : quoted_in(u.tell.text, u.tell.text.find("here.")))
      CHECK(offered.insert(example).second);
    CHECK(u.tell.choices.size() == (misses == 2 ? 5 : 0));
  }
  CHECK(offered.size() == 4);
}

TEST_CASE("every example that is offered is understood in this shop as the row that it is said of") {
  for (const shop::Row* row : real().rows()) {
    for (std::string_view example : row->examples) {
      const std::string here = shop::example_in(example, other_names().sample);
      INFO(row->name << ": " << example << " -> " << here);
      const Understood u = said(here);
      INFO(u.tell.text);
      REQUIRE(u.what != Understood::What::tell);
      CHECK(u.calls.front().row == row->name);
      for (const char* demo : {"medium", "Ines", "Lindwurm", "Ferro", "mandolin", "piece 1 ", "job 1 "})
        CHECK((here + " ").find(demo) == std::string::npos);
    }
  }
}

TEST_CASE("an example is left as it is where the shop has nothing to put in its place") {
  CHECK(shop::example_in("use piece 1 in slot 3 of job 1", {}) == "use piece 1 in slot 3 of job 1");
  const shop::Sample demo{{5, 1}, {"medium"}, {"Ines"}, {}, {}, {1}, {}};
  CHECK(shop::example_in("use piece 1 in slot 3 of job 1", demo) == "use piece 1 in slot 3 of job 1");
  const shop::Sample odd{{}, {"0.5 \"x\""}, {}, {}, {}, {}, {}};
  CHECK(shop::example_in("labels for medium", odd) == "labels for \"0.5 \\\"x\\\"\"");
}

TEST_CASE("every row is in exactly one kind of thing that help can be asked about") {
  std::multiset<std::string_view> rows;
  std::set<std::string_view> words;
  for (const shop::Topic& t : shop::topics()) {
    rows.insert(t.rows.begin(), t.rows.end());
    CHECK(words.insert(t.name).second);
    for (std::string_view w : t.also)
      CHECK(words.insert(w).second);
  }
  for (const shop::Row* row : real().rows()) {
    INFO(row->name);
    CHECK(rows.count(row->name) == 1);
  }
  CHECK(rows.size() == real().rows().size());
}

TEST_CASE("help finds rows by the words that they are said with, the nearest first") {
  const auto first = [](std::string_view words) {
    const auto found = shop::rows_about(words, 3);
    return found.empty() ? std::string_view{} : found.front()->name;
  };
  CHECK(first("lost fret") == "lost");
  CHECK(first("weighing a coil") == "weigh");
  CHECK(first("xyzzy").empty());
  CHECK(first("how do I").empty());
}
