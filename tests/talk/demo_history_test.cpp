// The journal of the whole demo, read line by line.
#include "rows_of_the_test.hpp"
#include "shop/demo.hpp"
#include "shop/past.hpp"
#include "support/catch.hpp"
#include "support/reads.hpp"
#include "talk/spoken_shop.hpp"

#include <limits>

using namespace nutward;

namespace {

struct Demo : test::SpokenShop {
  Demo() {
    shop::load_demo(*store,
                    [&](const std::string& sentence, const shop::Caller& who) { return say(sentence, who); });
  }
  shop::Answer say(const std::string& sentence, const shop::Caller& who) {
    return say_as(who, sentence, "", "").answer;
  }
};

} // namespace

TEST_CASE("every line of the demo's journal reads as a sentence, and says who, when and by which words") {
  Demo demo;
  const shop::Caller mara{1, shop::Role::lead, "Mara", "test"};
  demo.say("use the 52.4 of medium in slot 5 of job 8", mara);
  demo.say("undo", mara);
  const talk::Phrasebook book{shop::questions(), shop::commands()};
  std::int64_t lines = 0;
  demo.store->read([&](const shop::View& view) {
    const auto names = talk::read_names(view, demo.rooms);
    const auto zone = demo.rooms.of(view).zone;
    const auto all = view.journal().happened({}, {std::numeric_limits<std::int64_t>::min()},
                                             {{std::numeric_limits<std::int64_t>::max()}, 0}, 100'000);
    CHECK(static_cast<std::int64_t>(all.size()) == view.journal().newest());
    for (const shop::Past& past : all) {
      const shop::Told t = shop::told(past, view, *zone);
      INFO(past.line.id << ": " << t.sentence());
      CHECK(test::reads_as_a_sentence(t.sentence()));
      CHECK(test::reads_as_a_sentence(past.line.answer));
      std::string said = past.line.said;
      std::replace(said.begin(), said.end(), '"', '\'');
      CHECK(t.what.starts_with("said \"" + said + "\": "));
      CHECK(t.when.starts_with(zone->human(past.line.happened)));
      CHECK((t.when.find("told") != std::string::npos) == (past.line.happened != past.line.recorded));
      CHECK(t.who != "somebody");
      // The canonical sentence is one that does the same call again.
      const talk::Understood u =
          talk::understand(talk::normalise(t.call), {book, names, talk::State{}, demo.clock.now()});
      REQUIRE(u.calls.size() == 1);
      CHECK(shop::render(u.calls[0]) == t.call);
      ++lines;
    }
  });
  CHECK(lines > 50);
}
