// A shop on a real store, spoken to through talk, on a clock that stands still.
#pragma once

#include "hours/load_zone.hpp"
#include "store/shop_in_a_folder.hpp"
#include "talk/talk.hpp"
#include "units/read.hpp"

#include <future>

namespace nutward::test {

struct FixedClock : Clock {
  Instant now() const override { return units::read_instant("2026-11-25T09:00:00Z"); }
};

struct SpokenShop {
  Folder folder;
  FixedClock clock;
  std::unique_ptr<store::Sqlite> store = store::open_sqlite({folder.path() / "home"});
  Rooms rooms{hours::load_zone};
  Executor executor{*store, clock, rooms};
  talk::Talk talk{executor, *store, clock, rooms};

  talk::Reply say_as(const Caller& who, const std::string& text, const std::string& key = "",
                     const std::string& conversation = "c") {
    std::promise<talk::Reply> promise;
    auto reply = promise.get_future();
    talk.say(text, conversation, who, key, [&](talk::Reply r) { promise.set_value(std::move(r)); });
    return reply.get();
  }
};

} // namespace nutward::test
