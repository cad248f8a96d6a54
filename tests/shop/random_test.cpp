// Thousands of commands in no sensible order, with things taken back among them: the ledger still adds up.
#include "bench.hpp"
#include "support/catch.hpp"
#include "support/effort.hpp"

#include <fmt/format.h>

#include <future>
#include <random>

using namespace nutward;
using namespace nutward::test;

namespace {

class Chaos {
public:
  explicit Chaos(unsigned seed) : random_(seed) {}

  std::pair<std::string, std::string> next() {
    const int what = upto(100);
    if (what < 14) return {"undo", "{}"};
    if (what < 26)
      return {"add",
              fmt::format(R"({{"wire": {}, "length_mm": {}, "ends": "{}"}})", wire(), mm(40, 140), ends())};
    if (what < 29) return {"add", fmt::format(R"({{"wire": {}, "count": {}}})", wire(), 1 + upto(9))};
    if (what < 32)
      return {"add",
              fmt::format(R"({{"wire": {}, "length_mm": {}, "from": {}}})", wire(), mm(40, 140), piece())};
    if (what < 36)
      return {"receive", fmt::format(R"({{"wire": {}, "count": {}, "each_mm": {}}})", wire(), 1 + upto(3),
                                     mm(400, 700))};
    if (what < 48)
      return {"use", fmt::format(R"({{"piece": {}, "job": {}, "slot": {}}})", piece(), job(), 1 + upto(6))};
    if (what < 54)
      return {"hold", fmt::format(R"({{"piece": {}, "job": {}, "slot": {}}})", piece(), job(), 1 + upto(6))};
    if (what < 58) return {"let-go", fmt::format(R"({{"piece": {}}})", piece())};
    if (what < 62) return {"scrap", fmt::format(R"({{"piece": {}}})", piece())};
    if (what < 68)
      return {"measured",
              fmt::format(R"({{"job": {}, "slot": {}, "length_mm": {}}})", job(), 1 + upto(6), mm(40, 60))};
    if (what < 75)
      return {"came-short",
              fmt::format(R"({{"job": {}, "slot": {}, "length_mm": {}}})", job(), 1 + upto(6), mm(35, 60))};
    if (what < 83) return {"finished", fmt::format(R"({{"job": {}, "stage": "{}"}})", job(), stage())};
    if (what < 88)
      return {"pressed", fmt::format(R"({{"job": {}, "slots": [{}, {}]}})", job(), 1 + upto(6), 1 + upto(6))};
    if (what < 91) return {"rechecked", fmt::format(R"({{"job": {}}})", job())};
    if (what < 93) return {"cancel-job", fmt::format(R"({{"job": {}}})", job())};
    ++jobs_;
    return {
        "new-job",
        fmt::format(
            R"({{"wire": {}, "scale_mm": 640, "frets": 6, "nut_width_mm": {}, "far_width_mm": 56, "ends": "{}"}})",
            wire(), mm(43, 52), upto(4) == 0 ? "filed" : "rounded")};
  }
  int upto(int n) { return static_cast<int>(random_() % static_cast<unsigned>(n)); }
  void saw(std::int64_t pieces) { pieces_ = static_cast<int>(pieces); }

private:
  int wire() { return 1 + upto(2); }
  int piece() { return std::max(1, pieces_ - upto(30)); }
  int job() { return std::max(1, jobs_ - upto(6)); }
  const char* ends() {
    static constexpr const char* all[]{"raw", "one_raw", "dressed"};
    return all[upto(3)];
  }
  const char* stage() {
    static constexpr const char* all[]{"cut", "dress", "seat", "cut", "dress", "done"};
    return all[upto(6)];
  }
  std::string mm(int low, int high) {
    return fmt::format("{}.{:06}", low + upto(high - low), upto(1'000'000));
  }

  std::mt19937 random_;
  int pieces_ = 1, jobs_ = 2;
};

// What the ledger says of each place, and what the shop's things say by themselves.
void check_identity(Bench& shop) {
  const auto places = shop.places();
  auto in = [&](const char* place) { return places.contains(place) ? places.at(place) : 0; };
  Length stock, tin, board;
  shop.made.sqlite->read([&](const View& v) {
    for (const Wire& w : v.wires().all()) {
      stock += v.wires().on_hand(w.id);
      tin += v.tin().sum(w.id).length;
      CHECK(v.wires().on_hand(w.id) >= Length{});
    }
    for (const Job& j : v.jobs().recent(5000)) {
      for (const Fret& f : v.jobs().frets(j.id))
        board += f.length.value_or(Length{});
    }
  });
  CHECK(stock.nm == in("stock"));
  CHECK(tin.nm == in("tin"));
  CHECK(board.nm == in("board"));
  CHECK(in("scrap") >= 0);
  CHECK(in("kerf") >= 0);
  // What came in from outside is all there, to the nanometre.
  CHECK(-in("outside") == stock.nm + tin.nm + board.nm + in("scrap") + in("kerf"));
}

} // namespace

TEST_CASE(
    "after 5,000 commands and undos every nanometre that came in is somewhere, and verify finds nothing") {
  Shop shop;
  Chaos chaos(20260325);
  int done = 0, taken_back = 0;
  for (int batch = 0; batch < 200 / effort; ++batch) {
    std::vector<std::promise<Outcome>> promises(25);
    std::vector<bool> undo(25);
    for (std::size_t i = 0; i < promises.size(); ++i) {
      shop.who = std::array{shop.mara, shop.ines, shop.tomo}.at(static_cast<std::size_t>(chaos.upto(3)));
      const auto call = chaos.next();
      undo[i] = call.first == "undo";
      Order o = shop.order({call});
      o.confirmed = true;
      shop.executor->submit(std::move(o),
                            [&promises, i](Outcome out) { promises[i].set_value(std::move(out)); });
    }
    for (std::size_t i = 0; i < promises.size(); ++i) {
      const Outcome out = promises[i].get_future().get();
      if (out.problem) {
        INFO(out.problem->text);
        REQUIRE(out.problem->fault != Fault::broken);
      }
      done += out.answer ? 1 : 0;
      taken_back += out.answer && undo[i] ? 1 : 0;
    }
    shop.clock.s += 1800;
    chaos.saw(shop.rows_of("piece"));
    if (batch % 20 == 19) check_identity(shop);
  }
  CHECK(done > 2000 / effort);
  CHECK(taken_back > 200 / effort);
  check_identity(shop);
  const auto found = shop.made.sqlite->verify();
  for (const auto& f : found)
    UNSCOPED_INFO(f.where << ": " << f.what);
  CHECK(found.empty());
}
