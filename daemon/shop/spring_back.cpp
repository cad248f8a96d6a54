#include "shop/spring_back.hpp"

#include "board/board.hpp"

#include <boost/math/distributions/binomial.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace nutward::shop {

namespace {

constexpr double doubt = 0.05; // on both sides together

// How many frets were under the bar with a slot of a report: its own where that is a group; else by the last
// of the passes that has it. 0: not known.
int together_in(const Pressing& p, int slot, int most_frets, const std::vector<press::Pass>& passes) {
  const auto n = static_cast<int>(p.slots.size());
  if (n <= most_frets && p.slots.back() - p.slots.front() + 1 == n) return n;
  int out = 0;
  for (const press::Pass& pass : passes) {
    if (std::find(pass.slots.begin(), pass.slots.end(), slot) != pass.slots.end())
      out = static_cast<int>(pass.slots.size());
  }
  return out;
}

// What was pressed lay in its cradle, whatever was said of it since.
std::vector<press::Pass> passes_of(Job job, const View& view, const Setup& set) {
  job.bed.cradled = job.bed.head_clear = job.bed.nothing_bridges = job.bed.glue_set = true;
  try {
    return press_plan(job, view, set).plan.passes;
  } catch (const Problem&) { // no bar, or no crown
    return {};
  }
}

std::optional<double> on_each_mm(const LastPress& last, const Job& job, int slot) {
  if (!last.load || last.together == 0) return std::nullopt;
  try {
    const Length length = board::arc_length(job.board, slot);
    return length > Length{} ? std::optional{last.load->n / last.together / length.mm()} : std::nullopt;
  } catch (const board::BadBoard&) {
    return std::nullopt;
  }
}

} // namespace

std::map<int, LastPress> last_presses(const Job& job, const View& view, const Setup& set) {
  std::map<int, LastPress> out;
  const auto reports = view.jobs().pressings(job.id);
  if (reports.empty()) return out;
  const int most_frets = equipment(view, set).most_frets;
  const auto passes = passes_of(job, view, set);
  for (const Pressing& p : reports) {
    for (int slot : p.slots) {
      if (std::find(p.gone.begin(), p.gone.end(), slot) != p.gone.end()) continue;
      LastPress& last = out[slot];
      last = {p.load, together_in(p, slot, most_frets, passes), {}};
      last.n_per_mm = on_each_mm(last, job, slot);
    }
  }
  return out;
}

std::string words_of(const Sprung& c) {
  return c.sprang == 0 ? fmt::format("none of {}", c.looked) : fmt::format("{} of {}", c.sprang, c.looked);
}

Interval interval_of(const Sprung& c) {
  using Binomial = boost::math::binomial_distribution<>;
  if (c.looked <= 0) return {};
  const auto n = static_cast<double>(c.looked), k = static_cast<double>(c.sprang);
  return {Binomial::find_lower_bound_on_p(n, k, doubt / 2), Binomial::find_upper_bound_on_p(n, k, doubt / 2)};
}

std::string words_of(const Interval& i) {
  return fmt::format("{:.1f} % to {:.1f} %", 100 * i.least, 100 * i.most);
}

void keep(Tx& tx, const Job& job, const Found& found, const Setup& set) {
  const auto last = last_presses(job, tx, set);
  for (int slot : found.looked) {
    Looked l;
    l.job = job.id;
    l.wire = job.wire;
    l.slot = slot;
    l.sprang = std::binary_search(found.sprang.begin(), found.sprang.end(), slot);
    l.early = std::binary_search(found.early.begin(), found.early.end(), slot);
    l.looked = found.when;
    if (const auto at = last.find(slot); at != last.end()) {
      l.load = at->second.load;
      l.together = at->second.together;
      l.n_per_mm = at->second.n_per_mm;
    }
    tx.put(l);
  }
}

namespace {

std::string frets_word(const std::vector<int>& slots) {
  return fmt::format("{} {}", slots.size() == 1 ? "fret" : "frets", ranges(slots));
}

} // namespace

std::string waiting_words(const Job& job, const View& view, const hours::Zone& zone,
                          const std::vector<int>& but) {
  std::string out;
  for (const Recheck& r : view.jobs().rechecks(job.id)) {
    if (r.state != RecheckState::waiting) continue;
    std::vector<int> slots;
    std::set_difference(r.slots.begin(), r.slots.end(), but.begin(), but.end(), std::back_inserter(slots));
    if (slots.empty()) continue;
    out +=
        fmt::format("{}of {} due {}", out.empty() ? " Recheck " : "; ", frets_word(slots), zone.human(r.due));
  }
  return out.empty() ? out : out + ".";
}

std::string sprang_words(const Job& job, const View& view) {
  std::vector<int> slots;
  for (const Fret& f : view.jobs().frets(job.id)) {
    if (f.state == FretState::sprang) slots.push_back(f.slot);
  }
  return slots.empty() ? "" : fmt::format(" Sprang back and not pressed again: {}.", frets_word(slots));
}

std::string looks_of(const Job& job, int slot, const View& view, const hours::Zone& zone) {
  std::string out;
  for (const Looked& l : view.jobs().looked(job.id)) {
    if (l.slot != slot) continue;
    out += fmt::format("{}{}{}, {}", out.empty() ? "" : "; ", l.sprang ? "sprang back" : "level",
                       l.early ? ", looked at early" : "", zone.human(l.looked));
  }
  return out;
}

} // namespace nutward::shop
