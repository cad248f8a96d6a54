// A shop on a real store in a folder of its own, with people, a clock that stands still, and the one
// executor.
#pragma once

#include "hours/load_zone.hpp"
#include "shop/codec.hpp"
#include "shop/lists.hpp"
#include "shop/run.hpp"
#include "store/shop_in_a_folder.hpp"
#include "units/print.hpp"
#include "units/read.hpp"

#include <atomic>
#include <map>
#include <string>

namespace nutward::test {

struct SetClock : shop::Clock {
  std::atomic<std::int64_t> s = units::read_instant("2026-03-25T10:00:00Z").s; // a Wednesday
  units::Instant now() const override { return {s.load()}; }
  void to(std::string_view rfc3339) { s = units::read_instant(rfc3339).s; }
};

// The field of a record, the item of a list, and a value as what it is; std::runtime_error where it is not
// there.
const Value& at(const Value& record, std::string_view name);
const Value& item(const Value& list, std::size_t n);
std::size_t size(const Value& list);
template <class T>
T as(const Value& value) {
  if (const T* t = std::get_if<T>(&value)) return *t;
  throw std::runtime_error("a value of another type: " + to_json(value));
}
template <class T>
T field(const Answer& answer, std::string_view name) {
  return as<T>(at(answer.data, name));
}
std::string in_words(const Answer& answer); // its table: a line for each row, "|" behind each cell
inline units::Instant instant(std::string_view rfc3339) {
  return units::read_instant(rfc3339);
}

class Bench {
public:
  Bench();

  // Calls as an HTTP body would have them. `does` throws where it is refused, `refused` where it is done.
  Outcome outcome(const std::string& row, const std::string& json = "{}", bool confirmed = false);
  Answer does(const std::string& row, const std::string& json = "{}", bool confirmed = false);
  Problem refused(const std::string& row, const std::string& json = "{}", bool confirmed = false);
  Answer asks(const std::string& row, const std::string& json = "{}");
  Problem unanswered(const std::string& row, const std::string& json = "{}");
  Order order(std::vector<std::pair<std::string, std::string>> calls) const;

  // Everything that the shop's View shows, as text. The journal and the revision are left out: they only
  // grow.
  std::string dump();
  // Nanometres by place, added up from the ledger's rows.
  std::map<std::string, std::int64_t> places();
  std::int64_t rows_of(const std::string& table);
  std::int64_t revision();
  Line newest_line();
  template <class F>
  auto seen(F&& body) {
    return test::seen(*made.sqlite, std::forward<F>(body));
  }

  Made made;
  SetClock clock;
  Rooms rooms{hours::load_zone};
  std::unique_ptr<Executor> executor;
  Caller mara, ines, tomo, guest; // lead, bench, bench, look
  Caller who;                     // speaks now; Mara at first
};

// Two wires (medium 1, narrow 2), 10 sticks of medium of 600 mm, Berlin's clock, open on weekdays from 9
// to 18. Job 1 is of medium on a flat board that is 52 mm wide everywhere, with 4 frets, so that by
// DESIGN 4.2 each slot has A 52, least 50.9, target 51.5, most 52, cut 52.5. Job 2 is of narrow, 24 frets,
// flat, 43 mm at the nut and 53 at slot 12.
struct Shop : Bench {
  Shop();
};

} // namespace nutward::test
