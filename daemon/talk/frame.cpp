#include "talk/frame.hpp"

#include "talk/frame_rules.hpp"

#include <boost/container/small_vector.hpp>
#include <boost/unordered/unordered_flat_map.hpp>

#include <algorithm>
#include <array>

namespace nutward::talk {
namespace {

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

class Layer : FrameRules {
public:
  Layer(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling, const Reader& in)

      : FrameRules{frame, from, to, spelling, in}, at_(to - from + 1) {
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
    out.turned = frame_.phrase.command && is_turned(*best);
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
      if (here.size() >= few) {
        if (numbered_.empty()) numbered_.resize(at_.size());
        numbered_[i].emplace(partial.key(), here.size());
      }
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
    const auto is_option = [&](const Near& n) {
      const auto id = static_cast<std::size_t>(n.id);
      return n.distance == 0 && id < frame_.option.size() && frame_.option[id];
    };
    const auto& near = in_.near[from_ + step.token];
    // "One end dressed and one raw": with one option taken, the other says that it was not all.
    if (std::any_of(near.begin(), near.end(), is_option) && !skippable(from_ + step.token, in_)) return true;
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

  // "Anything but straight": a word that turns what is said must be part of what is taken for a parameter, or
  // of the words that the order is known by ("is not"), and not be passed over.
  bool is_turned(const Partial& end) const {
    std::vector<bool> taken(at_.size(), false);
    const auto take = [&](const Match& m) {
      for (std::size_t k = m.begin; k < m.end; ++k)
        taken[k - from_] = true;
    };
    for (const Partial* p = &end; p->before != Partial::none; p = &at_[p->token][p->before])
      if (p->match != Partial::none && !matches_[p->match].args.empty()) take(matches_[p->match]);
    for (std::size_t k = from_; k < to_; ++k) {
      if (!turns(k, in_) || taken[k - from_]) continue;
      for (const Item& item : frame_.items) {
        // "Scrub that, not what I meant" takes back; no other order is known by words that need not be there.
        const bool undoes = frame_.phrase.row->name == "undo";
        if (!item.needed && !item.heads && !undoes) continue;
        const int least = item.needed || item.heads ? 1 : 2;
        for (std::size_t i = from_; i <= k && !taken[k - from_]; ++i)
          for (const Match& m : match_part(item.phrase, i, to_, Spelling::exact, in_))
            if (m.literals >= least && m.end <= to_) take(m);
      }
      if (!taken[k - from_]) return true;
    }
    return false;
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
    std::reverse(way.begin(), way.end());
    for (const Partial* p : way) {
      if (p->strange || owes(*p, last.bound)) out.strange.push_back(from_ + p->token);
      if (p->match == Partial::none) {
        out.passed.push_back(from_ + p->token);
        continue;
      }
      const auto& args = matches_[p->match].args;
      for (std::size_t k = matches_[p->match].begin; !args.empty() && k < matches_[p->match].end; ++k)
        out.bound.push_back(k);
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
        !left_out && (says_nothing(t, frame_.phrase.command) || mistyped_idle) && !still_to_do(at) &&
        !(frame_.phrase.command && t.is("one") && in_a_list(at)) &&
        !(frame_.wide && frame_.phrase.command && !t.is("one") && (says_how_many(t) || turns(at, in_)));
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

  // Every item that can stand at i, put behind everything that came as far as i.
  void items(std::size_t i) {
    const WordMask words = in_.words_at(from_ + i, spelling_ == Spelling::mistyped);
    for (std::size_t k = 0; k < frame_.items.size(); ++k) {
      const Item& item = frame_.items[k];
      const bool by_word = item.phrase.first_takes.empty() && !item.phrase.may_be_empty;
      if (by_word && !item.phrase.first_words.meets(words)) continue;
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

  std::uint64_t wanted_ = 0;
  std::uint64_t exact_ = 0; // needed words that stand there without a mistake
  std::vector<boost::container::small_vector<Partial, 2>> at_; // those that end before each token
  static constexpr std::size_t few = 12;
  std::vector<boost::unordered_flat_map<std::pair<std::uint64_t, std::uint64_t>, std::size_t>> numbered_;
  std::vector<Match> matches_; // that partials went on with
};

// Whether each item that must be there can be: one of its first words stands in the sentence.
bool could_be(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling, const Reader& in) {
  const WordMask words = in.words(spelling == Spelling::mistyped);
  return std::all_of(frame.items.begin(), frame.items.end(), [&](const Item& item) {
    if (!item.needed || item.phrase.open) return true;
    if (!item.phrase.first_words.meets(words)) return false;
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
