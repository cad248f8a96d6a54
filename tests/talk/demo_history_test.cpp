// The journal of the whole demo, read line by line.
#include "hours/load_zone.hpp"
#include "rows_of_the_test.hpp"
#include "shop/demo.hpp"
#include "shop/past.hpp"
#include "store/sqlite.hpp"
#include "support/catch.hpp"
#include "support/reads.hpp"
#include "talk/talk.hpp"
#include "units/read.hpp"

#include <filesystem>
#include <future>
#include <limits>

#include <stdlib.h>

using namespace nutward;

namespace {

struct FixedClock : shop::Clock {
  units::Instant now() const override { return units::read_instant("2026-11-25T09:00:00Z"); }
};

struct Folder {
  std::string path = (std::filesystem::temp_directory_path() / "nutward-demo-XXXXXX").string();
  Folder() { REQUIRE(::mkdtemp(path.data()) != nullptr); }
  ~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(path, ignored);
  }
};

struct Demo {
  Folder folder;
  FixedClock clock;
  std::unique_ptr<store::Sqlite> store = store::open_sqlite({folder.path + "/home"});
  shop::Rooms rooms{hours::load_zone};
  shop::Executor executor{*store, clock, rooms};
  talk::Talk talk{executor, *store, clock, rooms};

  Demo() {
    shop::load_demo(*store,
                    [&](const std::string& sentence, const shop::Caller& who) { return say(sentence, who); });
  }
  shop::Answer say(const std::string& sentence, const shop::Caller& who) {
    std::promise<talk::Reply> promise;
    talk.say(sentence, "", who, "", [&](talk::Reply reply) { promise.set_value(std::move(reply)); });
    return promise.get_future().get().answer;
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
