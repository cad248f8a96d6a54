#include "talk/frame.hpp"

#include "talk/evidence.hpp"
#include "talk/spelling.hpp"

#include <boost/container/small_vector.hpp>
#include <boost/unordered/unordered_flat_map.hpp>

#include <algorithm>
#include <array>

namespace nutward::talk {
namespace {

constexpr int cost_unknown = 10, cost_unbound = 15, cost_idle = 2, cost_mistake = 4;

// Of an item that must be there; those of a wide frame, which may have more than 64, need not.
constexpr std::uint64_t bit_of(std::size_t item) {
  return item < 64 ? std::uint64_t{1} << item : 0;
}

struct Partial {
  static constexpr std::uint32_t none = 0xffffffff;

  std::uint64_t bound = 0, met = 0; // no two that end at one token have the same
  int cost = 0, unknown = 0, taken = 0;
  int distance = 0, loose = 0, skipped = 0, literals = 0, worst = 0; // see Match
  std::uint32_t token = none, before = none; // where it went on, and from which of those that had come as far
  std::uint32_t match = none;                // with what; none: a word that was left over
  bool strange = false;                      // and that the frame does not know
  bool tied = false;

  auto key() const { return std::pair(bound, met); }
};

class Layer {
public:
  Layer(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling, const Reader& in)
      : frame_(frame), from_(from), to_(to), spelling_(spelling), in_(in), at_(to - from + 1),
        numbered_(to - from + 1) {
    for (std::size_t k = 0; k < frame.items.size(); ++k)
      if (frame.items[k].needed && !frame.items[k].words) wanted_ |= bit_of(k);
  }

  std::optional<Laid> run(bool all_needed) {
    all_needed_ = all_needed;
    if (all_needed && !words_are_there()) return std::nullopt;
    keep(0, Partial{});
    for (std::size_t i = 0; i < at_.size(); ++i) {
      if (at_[i].empty()) continue;
      std::sort(at_[i].begin(), at_[i].end(),
                [](const Partial& a, const Partial& b) { return a.key() < b.key(); });
      if (i + 1 == at_.size()) break;
      items(i);
      skip(i);
    }
    for (Partial& end : at_.back())
      settle(end);
    const Partial* best = nullptr;
    bool tied = false;
    for (const Partial& partial : at_.back()) {
      const bool enough = all_needed ? (partial.met & wanted_) == wanted_ : partial.bound != 0;
      if (!enough) continue;
      if (best != nullptr && as_near(partial, *best))
        tied = tied || !same_args(partial, *best);
      else if (best == nullptr || is_nearer(partial, *best))
        best = &partial, tied = false;
    }
    if (best == nullptr) return std::nullopt;
    Laid out = told(*best);
    out.tied = out.tied || tied;
    return out;
  }

private:
  static bool as_near(const Partial& a, const Partial& b) { return a.cost == b.cost && a.taken == b.taken; }
  static bool is_nearer(const Partial& a, const Partial& b) {
    return std::pair(a.cost, -a.taken) < std::pair(b.cost, -b.taken);
  }

  bool same_args(const Partial& one_way, const Partial& other_way) const {
    const Match a = told(one_way).match, b = told(other_way).match;
    return a.args.size() == b.args.size() && std::all_of(a.args.begin(), a.args.end(), [&](const auto& one) {
             return std::any_of(b.args.begin(), b.args.end(), [&](const auto& other) {
               return one.first == other.first && same_value(one.second.value, other.second.value) &&
                      one.second.pointing == other.second.pointing;
             });
           });
  }

  // Of two that have bound the same up to token i, the nearer one; none that ends there has been gone on from
  // yet.
  void keep(std::size_t i, const Partial& partial) {
    auto& here = at_[i];
    Partial* had = find(i, partial);
    if (had == nullptr) {
      if (here.size() >= few) numbered_[i].emplace(partial.key(), here.size());
      return void(here.push_back(partial));
    }
    if (as_near(partial, *had) && !same_args(partial, *had)) had->tied = true;
    if (is_nearer(partial, *had)) *had = partial;
  }

  // That which has bound the same and ends before the same token. Of few each is looked at, of many there is
  // an index.
  Partial* find(std::size_t i, const Partial& partial) {
    auto& here = at_[i];
    const auto some = here.begin() + static_cast<std::ptrdiff_t>(std::min(here.size(), few));
    const auto had =
        std::find_if(here.begin(), some, [&](const Partial& p) { return p.key() == partial.key(); });
    if (had != some) return &*had;
    if (here.size() <= few) return nullptr;
    const auto at = numbered_[i].find(partial.key());
    return at == numbered_[i].end() ? nullptr : &here[at->second];
  }

  // "Width" of "the width of the crown to 2.7 mm" is said with the value that it names, wherever that stands;
  // left over without one it is a word that is not known: an order is not done without what it says.
  bool owes(const Partial& step, std::uint64_t bound) const {
    if (step.match != Partial::none || step.strange || !frame_.wide || !frame_.phrase.command) return false;
    const std::uint64_t params = valued(from_ + step.token);
    return params != 0 && (params & bound) == 0 && !skippable(from_ + step.token, in_);
  }

  void settle(Partial& end) const {
    for (const Partial* p = &end; p->before != Partial::none; p = &at_[p->token][p->before])
      if (owes(*p, end.bound)) ++end.unknown, end.cost += cost_unknown;
  }

  // The parameters that the word stands with and never without; none for any other word.
  std::uint64_t valued(std::size_t i) const {
    std::uint64_t out = 0;
    for (const Near& n : in_.near[i]) {
      const auto id = static_cast<std::size_t>(n.id);
      if (n.distance == 0 && id < frame_.valued.size()) out |= frame_.valued[id];
    }
    return out;
  }

  // What it went on from, and that from, from the first to the last.
  Laid told(const Partial& last) const {
    boost::container::small_vector<const Partial*, 32> way;
    for (const Partial* p = &last; p->before != Partial::none; p = &at_[p->token][p->before])
      way.push_back(p);
    Laid out;
    out.match.phrase = &frame_.phrase;
    out.match.distance = last.distance, out.match.loose = last.loose, out.match.skipped = last.skipped;
    out.match.literals = last.literals, out.match.worst = last.worst;
    out.unknown = last.unknown, out.cost = last.cost, out.taken = last.taken, out.tied = last.tied;
    for (auto p = way.rbegin(); p != way.rend(); ++p) {
      if ((*p)->strange || owes(**p, last.bound)) out.strange.push_back(from_ + (*p)->token);
      if ((*p)->match == Partial::none) continue;
      const auto& args = matches_[(*p)->match].args;
      out.match.args.insert(out.match.args.end(), args.begin(), args.end());
    }
    return out;
  }

  // What must be there and is but words may be part of another item, so it is looked for beforehand.
  bool words_are_there() {
    for (std::size_t k = 0; k < frame_.items.size(); ++k) {
      const Item& item = frame_.items[k];
      if (!item.needed) continue;
      if (item.words && spelling_ == Spelling::mistyped) exact_ |= said_exactly(item) ? bit_of(k) : 0;
      if (said_in_words(item))
        wanted_ &= ~(bit_of(k));
      else if (item.words)
        return false;
    }
    return true;
  }

  // For an order a short word with a mistake is too easily another one.
  bool too_short(const Match& m) const {
    return frame_.phrase.command && m.distance > 0 && in_.s.tokens[m.begin].word.size() < 5;
  }

  bool said_exactly(const Item& item) const {
    for (std::size_t i = from_; i < to_; ++i)
      if (!match_part(item.phrase, i, to_, Spelling::exact, in_).empty()) return true;
    return false;
  }

  bool said_in_words(const Item& item) const {
    for (std::size_t i = from_; i < to_; ++i) {
      for (const Match& m : match_part(item.phrase, i, to_, spelling_, in_))
        if (m.args.empty() && m.end > i && m.end <= to_ && !too_short(m)) return true;
    }
    return false;
  }

  // Every partial that came as far as token i goes on without it.
  void skip(std::size_t i) {
    const std::size_t at = from_ + i;
    const Token& t = in_.s.tokens[at];
    const bool mistyped_idle = !in_.near[at].empty() && !(frame_.phrase.command && mistyped_for_value(at)) &&
                               (t.word.size() > 4 || !frame_.phrase.command) &&
                               spelling_ == Spelling::mistyped && idle_near(at);
    const bool left_out = skippable(at, in_);
    const bool idle =
        !left_out && (says_nothing(t, frame_.phrase.command) || mistyped_idle) && !still_to_do(at);
    const bool known = !left_out && !idle && frame_.wide && heard(at);
    const auto exactly = [](const Near& n) { return n.distance == 0; };
    const bool mistake =
        known && !in_.near[at].empty() && std::none_of(in_.near[at].begin(), in_.near[at].end(), exactly);
    for (std::size_t k = 0; k < at_[i].size(); ++k) {
      Partial next = on_from(i, k);
      if (left_out) {
        next.skipped += t.kind == Token::Kind::word ? 1 : 0;
      } else if (idle) {
        ++next.skipped;
        next.cost += cost_idle;
        if (mistyped_idle) next.cost += cost_mistake, ++next.distance;
      } else if (known) {
        ++next.skipped;
        next.distance += mistake ? 1 : 0;
        next.cost += mistake ? 1 + cost_mistake : 1;
      } else {
        if (next.unknown >= 12) continue;
        ++next.unknown;
        next.strange = true;
        next.cost += t.is_number() || t.kind == Token::Kind::quoted ? cost_unbound : cost_unknown;
      }
      keep(i + 1, next);
    }
  }

  Partial on_from(std::size_t i, std::size_t k) const {
    Partial next = at_[i][k];
    next.token = static_cast<std::uint32_t>(i), next.before = static_cast<std::uint32_t>(k);
    next.match = Partial::none, next.strange = false;
    return next;
  }

  // Whose or which an order is about is not passed over either; a machine's name may be a verb.
  bool names_a_thing(const Token& t) const {
    if (!in_.names.has(t.word) || is_filler(t)) return false;
    const auto& machines = in_.names.machines;
    return std::none_of(machines.begin(), machines.end(), [&](const Named& n) {
      return std::find(n.words.begin(), n.words.end(), t.word) != n.words.end();
    });
  }

  // "Yesterddy", "6 metrse": what that says is not passed over because of its mistake.
  bool mistyped_for_value(std::size_t i) const {
    bool close = false;
    for (const Near& n : in_.near[i]) {
      if (n.distance == 0) return false;
      Token known;
      known.word = in_.lexicon.word(n.id);
      close = close || says_when(known) || (is_unit_word(known.word) && known.word.size() > 3);
    }
    static constexpr std::array<std::string_view, 10> values{"metre",   "metres",  "meter",       "meters",
                                                             "inches",  "euros",   "millimetres", "yesterday",
                                                             "tuesday", "thursday"};
    const std::string& word = in_.s.tokens[i].word;
    return close || std::any_of(values.begin(), values.end(),
                                [&](std::string_view v) { return v != word && mistyped(word, v) == 1; });
  }

  // A word that is said with this row, though it takes nothing here.
  bool heard(std::size_t i) const {
    const Token& t = in_.s.tokens[i];
    if (t.is("one")) return true;
    if (t.is_number() || t.kind == Token::Kind::quoted || still_to_do(i)) return false;
    if (says_when(t) || (frame_.phrase.command && mistyped_for_value(i))) return false;
    const bool unit = i > from_ && in_.s.tokens[i - 1].is_number() && is_unit_word(t.word) && !t.is("in");
    if (frame_.phrase.command && unit) return false;
    if (frame_.phrase.command && (says_how_many(t) || names_a_thing(t))) return false;
    if (frame_.phrase.command && doubts(t))
      return frame_.evidence != nullptr && frame_.evidence->tells(t.word, *frame_.phrase.row);
    if (frame_.evidence != nullptr && frame_.evidence->knows(t.word, *frame_.phrase.row)) return true;
    return std::any_of(in_.near[i].begin(), in_.near[i].end(), [&](const Near& n) {
      const bool short_word = frame_.phrase.command && t.word.size() < 5;
      if (n.distance > (spelling_ == Spelling::mistyped && !short_word ? 1 : 0)) return false;
      const auto id = static_cast<std::size_t>(n.id);
      return (id < frame_.known.size() && frame_.known[id]) ||
             (n.distance > 0 && frame_.evidence != nullptr &&
              frame_.evidence->knows(in_.lexicon.word(n.id), *frame_.phrase.row));
    });
  }

  // "I have to use it" is not done yet.
  bool still_to_do(std::size_t i) const {
    return frame_.phrase.command && in_.is(i + 1, "to") &&
           in_.any(i, {"have", "has", "got", "i've", "we've", "am", "is", "are", "i'm", "we're", "go"});
  }

  // A command must be sure of it: "hat" may be "that", but also "what".
  bool idle_near(std::size_t i) const {
    const auto mistyped_idle = [&](const Near& n) {
      Token known;
      known.word = in_.lexicon.word(n.id);
      return says_nothing(known, frame_.phrase.command) || is_filler(known);
    };
    if (frame_.phrase.command)
      return std::all_of(in_.near[i].begin(), in_.near[i].end(),
                         [&](const Near& n) { return n.distance > 1 || mistyped_idle(n); }) &&
             std::any_of(in_.near[i].begin(), in_.near[i].end(),
                         [](const Near& n) { return n.distance == 1; });
    return std::any_of(in_.near[i].begin(), in_.near[i].end(),
                       [&](const Near& n) { return n.distance == 1 && mistyped_idle(n); });
  }

  // Every item that can stand at i, put behind everything that came as far as i.
  void items(std::size_t i) {
    for (std::size_t k = 0; k < frame_.items.size(); ++k) {
      const Item& item = frame_.items[k];
      if (item.tail && !behind_pause(from_ + i)) continue;
      for (Match& m : match_part(item.phrase, from_ + i, to_, spelling_, in_)) {
        if (too_short(m)) continue;
        if (m.end <= from_ + i || m.end > to_ || (item.tail && m.end != to_)) continue;
        // "…and sing": where the order has its word already, "sing" is no mistyped "using".
        if (frame_.phrase.command && (uncertain(m) || (m.distance > 0 && (exact_ & bit_of(k)) != 0)))
          continue;
        put(i, k, std::move(m));
      }
    }
  }

  bool behind_pause(std::size_t i) const {
    return i > from_ && (in_.any(i - 1, {",", "-", ";", ":", ".", "because", "since", "as"}));
  }

  bool uncertain(const Match& m) const {
    if (m.loose == 0) return false;
    for (std::size_t k = m.begin; k < m.end; ++k)
      if (doubts(in_.s.tokens[k]) || (frame_.phrase.command && says_when(in_.s.tokens[k]))) return true;
    if (m.end - m.begin > 8) return true;
    for (std::size_t k = m.begin; k < m.end; ++k)
      if (in_.s.tokens[k].is_number() && m.args.size() == 1) return true;
    return std::any_of(m.args.begin(), m.args.end(), [&](const auto& arg) {
      const shop::Param& p = m.phrase->row->takes[static_cast<std::size_t>(arg.first)];
      return arg.second.loose > 0 && p.name != "why" && no_name(arg.second);
    });
  }

  // A name has at most three words, and none of them is a number.
  bool no_name(const Said& said) const {
    const auto from = said.end - static_cast<std::size_t>(said.loose);
    const Evidence* learnt = frame_.evidence;
    for (std::size_t k = from; k < said.end; ++k)
      if (in_.s.tokens[k].kind == Token::Kind::word &&
          (says_nothing(in_.s.tokens[k], false) || is_english(in_.s.tokens[k].word) ||
           (learnt != nullptr && learnt->common(in_.s.tokens[k].word))))
        return true;
    for (std::size_t k = from; k < said.end; ++k)
      if (in_.s.tokens[k].is_number() || (in_.is(k, "and") && k == from) ||
          in_.any(k, {"is", "are", "called", "a", "the", "of"}))
        return true;
    return said.loose > 3;
  }

  // The match, behind every partial that came as far as token i and has bound none of what it binds.
  void put(std::size_t i, std::size_t item, Match&& m) {
    if (belongs_to_another(m) || joins_two(m)) return;
    const std::uint64_t meets = wanted_ & (bit_of(item));
    std::uint64_t binds = 0;
    int cost = cost_mistake * m.distance + 2 * m.loose - std::min(m.literals, m.args.empty() ? 1 : 4);
    for (const auto& [param, said] : m.args) {
      if (points_at_nothing(param, said, m) || is_no_piece(param, said, m) || is_not_so(param, m) ||
          is_past_time(param, m) || out_of_range(param, said))
        return;
      binds |= std::uint64_t{1} << param;
      cost += cost_of(param, said, m);
    }
    const int taken =
        m.args.empty() ? 0 : static_cast<int>(m.end - m.begin) - 2 * static_cast<int>(m.args.size());
    const std::size_t end = m.end - from_;
    const auto which = static_cast<std::uint32_t>(matches_.size());
    matches_.push_back(std::move(m));
    const Match& kept = matches_.back();
    for (std::size_t k = 0; k < at_[i].size(); ++k) {
      if ((at_[i][k].met & meets) != 0 || (at_[i][k].bound & binds) != 0) continue;
      Partial next = on_from(i, k);
      next.bound |= binds, next.met |= meets, next.cost += cost, next.taken += taken;
      next.distance += kept.distance, next.loose += kept.loose, next.skipped += kept.skipped;
      next.literals += kept.literals, next.worst = std::max(next.worst, kept.worst);
      next.match = which;
      keep(end, next);
    }
  }

  // "It" may be the piece of an order; a job, a wire or a person is not meant by it where nothing else says
  // so.
  bool points_at_nothing(int param, const Said& said, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    const bool may_be = frame_.phrase.command && (kind == shop::Kind::piece || kind == shop::Kind::slot);
    return said.pointing && m.literals == 0 && !may_be && in_.is(m.begin, "it");
  }

  // "4" alone is no length of a piece: it is the number of one, if anything.
  bool is_no_piece(int param, const Said& said, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    if (kind != shop::Kind::piece || is_id(said.value) || said.pointing) return false;
    const Token& last = in_.s.tokens[said.end - 1];
    const bool alone = said.end > 1 && said.end - 1 >= m.begin && last.is_number() && whole(&last);
    const bool wired = said.end >= 2 && said.end - 2 >= m.begin &&
                       in_.s.tokens[said.end - 2].kind == Token::Kind::word &&
                       !is_filler(in_.s.tokens[said.end - 2]);
    return alone && !wired;
  }

  // "12, 10 and 7" are three of a kind, not so many of a length.
  bool joins_two(const Match& m) const {
    const auto many = [&](const auto& arg) {
      return m.phrase->row->takes[static_cast<std::size_t>(arg.first)].many;
    };
    if (m.args.size() < 2 || std::any_of(m.args.begin(), m.args.end(), many)) return false;
    for (std::size_t k = m.begin + 1; k + 1 < m.end; ++k)
      if (in_.any(k, {"and", ",", "&"}) && in_.s.tokens[k - 1].is_number() && in_.s.tokens[k + 1].is_number())
        return true;
    return false;
  }

  // "20 sticks": no sticks of 20 mm each; what a length or a count cannot be it is not taken for.
  bool out_of_range(int param, const Said& said) const {
    const shop::Param& p = frame_.phrase.row->takes[static_cast<std::size_t>(param)];
    if (!frame_.phrase.command || p.bounds.most <= p.bounds.least) return false;
    const auto out = [&](double v) { return v < p.bounds.least || v > p.bounds.most; };
    if (const auto* length = std::get_if<units::Length>(&said.value)) return out(length->mm());
    if (const auto* n = std::get_if<std::int64_t>(&said.value)) return out(static_cast<double>(*n));
    return false;
  }

  // What a number by itself is not. One that nothing calls a job is none; behind a call that has one it may
  // be the next (talk/follow_up).
  bool is_not_so(int param, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    const Token& t = in_.s.tokens[m.begin];
    // "Three frets" are so many, whichever they are.
    if (kind == shop::Kind::slot && t.is_number() && in_.any(m.begin + 1, {"frets", "slots", "passes"}))
      return true;
    if (!bare(m)) return false;
    if (frame_.wide && !constant(param, m)) {
      using enum shop::Kind;
      if ((kind == at || kind == day) && t.ordinal) return true;
      if (kind == count && frame_.phrase.command) return true;
      if (kind == money || kind == mass || kind == at || kind == day || kind == number || kind == spans)
        return true;
    }
    // "One" is a word more often than a number of a thing or a measure; and nobody presses with less than 100
    // of any unit.
    if (kind == shop::Kind::slot || kind == shop::Kind::piece || kind == shop::Kind::length)
      if (in_.is(m.begin, "one")) return true;
    if (kind == shop::Kind::load) return t.number.size() < 3;
    return all_needed_ && kind == shop::Kind::job;
  }

  // "8:30 had another look": a time before everything else is when it happened, not when it is to be.
  bool is_past_time(int param, const Match& m) const {
    const shop::Param& p = frame_.phrase.row->takes[static_cast<std::size_t>(param)];
    return p.kind == shop::Kind::at && p.name == "again" && m.begin == 0 && in_.s.tokens[0].is_number();
  }

  bool bare(const Match& m) const {
    return m.literals == 0 && m.end == m.begin + 1 && in_.s.tokens[m.begin].is_number();
  }

  // Behind "slot" or "job" a number is that one's, and behind "9-" it ends a range.
  bool belongs_to_another(const Match& m) const {
    const Token& t = in_.s.tokens[m.begin];
    const bool number = t.is_number() || (t.is("-") && m.end > m.begin + 1);
    if (!number || m.begin == from_) return false;
    if (t.is("-") && t.glued) return true;
    if (in_.is(m.begin - 1, ",") && in_.s.tokens[m.begin - 1].glued && t.glued) return true; // "1,250"
    if (in_.is(m.begin - 1, "-") && in_.s.tokens[m.begin - 1].glued && t.glued) return true;
    if (t.number.find('.') != std::string::npos) return false; // "slots 0.55 wide"
    const std::size_t noun = in_.is(m.begin - 1, "number") && m.begin - 1 > from_ ? m.begin - 2 : m.begin - 1;
    return in_.any(noun, {"slot", "slots", "fret", "frets", "job", "jobs", "piece", "pieces", "booking",
                          "drawer", "shelf", "tray", "lot"});
  }

  // What says by itself what it is comes before any words; a number that nothing says the kind of comes last.
  int cost_of(int param, const Said& said, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    if (constant(param, m)) return -1;
    const Token& t = in_.s.tokens[m.begin];
    if (bare(m) && kind == shop::Kind::job) return 100;
    // Where lines of a board are told of, "the bass" is more likely one of them.
    if (kind == shop::Kind::job && t.is("bass") && frame_.phrase.row->find("line") != nullptr) return 1;
    // A whole number that may be a slot's is rather that than a length.
    const bool small = kind == shop::Kind::length && m.literals == 0 && bare(m) && t.number.size() < 3 &&
                       whole(&t).has_value();
    return (bare(m) ? (t.ordinal ? 0 : 1) : -3) + (small ? 2 : 0) - 3 * more_of_list(param, m) +
           (said.pointing ? 1 : 0);
  }

  // A list of several, said one by one, is as much as that many parameters.
  int more_of_list(int param, const Match& m) const {
    if (!frame_.phrase.row->takes[static_cast<std::size_t>(param)].many || m.args.size() != 1) return 0;
    int numbers = 0;
    for (std::size_t k = m.begin; k < m.end; ++k)
      numbers += in_.s.tokens[k].is_number() ? 1 : 0;
    return std::max(0, numbers - 1);
  }

  static bool constant(int param, const Match& m) {
    return std::any_of(m.phrase->steps.begin(), m.phrase->steps.end(),
                       [&](const Step& s) { return s.op == Step::Op::set && s.a == param && !s.plain; });
  }

  const Frame& frame_;
  std::size_t from_, to_;
  Spelling spelling_;
  const Reader& in_;
  std::uint64_t wanted_ = 0;
  bool all_needed_ = true;
  std::uint64_t exact_ = 0; // needed words that stand there without a mistake
  std::vector<boost::container::small_vector<Partial, 2>> at_; // those that end before each token
  static constexpr std::size_t few = 12;
  std::vector<boost::unordered_flat_map<std::pair<std::uint64_t, std::uint64_t>, std::size_t>> numbered_;
  std::vector<Match> matches_; // that partials went on with
};

// Whether each item that must be there can be: one of its first words stands in the sentence.
bool could_be(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling, const Reader& in) {
  return std::all_of(frame.items.begin(), frame.items.end(), [&](const Item& item) {
    if (!item.needed || item.phrase.open) return true;
    for (std::size_t i = from; i < to; ++i) {
      for (const Near& n : in.near[i]) {
        if (n.distance > 0 && spelling == Spelling::exact) continue;
        if (std::binary_search(item.phrase.first.begin(), item.phrase.first.end(), n.id)) return true;
      }
    }
    return false;
  });
}

} // namespace

std::optional<Laid> lay(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling,
                        const Reader& in, bool all_needed) {
  if (from >= to || (all_needed && !could_be(frame, from, to, spelling, in))) return std::nullopt;
  return Layer{frame, from, to, spelling, in}.run(all_needed);
}

} // namespace nutward::talk
