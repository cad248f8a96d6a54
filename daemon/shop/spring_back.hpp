// Spring-back: frets that were down after pressing and stood high again at the recheck, and how often.
#pragma once

#include "shop/pressing.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

// What a fret was pressed with in the last report that names it.
struct LastPress {
  std::optional<units::Force> load{}; // on all that was under the bar; nullopt: not said
  int together = 0;                   // frets that shared it; 1: it was alone; 0: not known
  std::optional<double> n_per_mm{};   // load/together on the fret's length along the board
};
// By slot; without those that no report names. A report of more frets than go into a group is of passes: then
// a fret's last pass is the plan's, where there is one.
std::map<int, LastPress> last_presses(const Job& job, const View& view, const Setup& setup);

// One trial is one fret looked at once, not early.
struct Sprung {
  std::int64_t looked = 0, sprang = 0; // of them
  void add(const SprangCount& c) { looked += c.looked, sprang += c.sprang; }
};
std::string words_of(const Sprung& count); // "3 of 41"; "none of 41"

// Between which shares the true one lies, with 95 % confidence, by Clopper and Pearson (The use of confidence
// or fiducial limits illustrated in the case of the binomial, Biometrika 26, 1934): the share at which as few
// as were seen come in 2.5 % of all cases, and that at which as many do. Exact, and rather too wide than too
// narrow. From 0 to 1; 0 ≤ sprang ≤ looked; of none looked at all of it.
struct Interval {
  double least = 0, most = 1;
};
Interval interval_of(const Sprung& count);
std::string words_of(const Interval& interval); // "1.5 % to 19.9 %"

// What a recheck found is kept. `sprang` and `early` are some of `looked`.
struct Found {
  std::vector<int> looked, sprang, early{}; // ascending; `early`: before their recheck counted
  units::Instant when;
};
void keep(Tx& tx, const Job& job, const Found& found, const Setup& setup);

// " Recheck of frets 1-8 due Thu 26 Nov 2026, 10:00; of fret 9 due …." of those that wait; "" where none
// does. Without frets in `but`.
std::string waiting_words(const Job& job, const View& view, const hours::Zone& zone,
                          const std::vector<int>& but = {});
// " Sprang back and not pressed again: fret 7."; "" where there is none.
std::string sprang_words(const Job& job, const View& view);
// What rechecks found of one fret: "level Thu 26 Nov 2026, 10:00; sprang back …"; "" where none was.
std::string looks_of(const Job& job, int slot, const View& view, const hours::Zone& zone);

} // namespace nutward::shop
