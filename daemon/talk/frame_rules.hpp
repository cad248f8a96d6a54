// What may stand where when a sentence is laid out over a frame, and what it costs; see talk/frame.cpp, which
// alone includes this.
#pragma once

#include "talk/evidence.hpp"
#include "talk/frame.hpp"
#include "talk/spelling.hpp"

#include <algorithm>

namespace nutward::talk {

inline constexpr int cost_unknown = 10, cost_unbound = 15, cost_idle = 2, cost_mistake = 4;

// Of one layout: the frame, the tokens from..to-1, with mistakes or without. Its predicates change nothing.
class FrameRules {
protected:
  FrameRules(const Frame& frame, std::size_t from, std::size_t to, Spelling spelling, const Reader& in)
      : frame_(frame), from_(from), to_(to), spelling_(spelling), in_(in) {}

  // Whose or which an order is about is not passed over either; a machine's name may be a verb.
  bool names_a_thing(const Token& t) const {
    if (!in_.names.has(t.word) || is_filler(t)) return false;
    const auto& takes = frame_.phrase.row->takes;
    if (std::any_of(takes.begin(), takes.end(),
                    [](const shop::Param& p) { return p.kind == shop::Kind::machine; }))
      return true;
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

  // "Slots one two and three": a number there, though it is none in "that one".
  bool in_a_list(std::size_t i) const {
    if (i > from_ && in_.any(i - 1, {"that", "this", "the", "last", "short", "long", "which", "other"}))
      return false;
    const auto number = [&](std::size_t k) { return in_.at(k) != nullptr && in_.at(k)->is_number(); };
    return number(i + 1) ||
           (i > from_ &&
            in_.any(i - 1, {"slot", "slots", "fret", "frets", "job", "jobs", "piece", "pieces"})) ||
           (in_.any(i + 1, {"and", ",", "to", "-"}) && number(i + 2)) || (i > from_ && number(i - 1));
  }

  // A word that is said with this row, though it takes nothing here.
  bool heard(std::size_t i) const {
    const Token& t = in_.s.tokens[i];
    if (t.is("one")) return !in_a_list(i);
    if (t.is_number() || t.kind == Token::Kind::quoted || still_to_do(i)) return false;
    if (says_when(t) || (frame_.phrase.command && mistyped_for_value(i))) return false;
    const bool unit = i > from_ && (in_.s.tokens[i - 1].is_number() || in_.is(i - 1, "in")) &&
                      is_unit_word(t.word) && !t.is("in");
    if (frame_.phrase.command && unit) return false;
    if (frame_.phrase.command && (says_how_many(t) || names_a_thing(t))) return false;
    if (frame_.phrase.command && (doubts(t) || wishes(t) || turns(i, in_))) return false;
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
           in_.any(i, {"have", "has", "got", "i've", "was", "were", "about", "going", "we've", "am", "is",
                       "are", "i'm", "we're", "go"});
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

  // "Three frets", "on four frets": one number, and a plural behind it.
  bool says_so_many(const Match& m) const {
    std::size_t numbers = 0, last = 0;
    for (std::size_t k = m.begin; k < m.end; ++k)
      if (in_.s.tokens[k].is_number()) ++numbers, last = k;
    return numbers == 1 && !in_.s.tokens[last].ordinal && in_.any(last + 1, {"frets", "slots", "passes"});
  }

  // What a number by itself is not. One that nothing calls a job is none; behind a call that has one it may
  // be the next (talk/follow_up).
  bool is_not_so(int param, const Match& m) const {
    const shop::Kind kind = frame_.phrase.row->takes[static_cast<std::size_t>(param)].kind;
    const Token& t = in_.s.tokens[m.begin];
    // "Three frets" are so many, whichever they are.
    const bool counted =
        kind == shop::Kind::slot && t.is_number() && in_.any(m.begin + 1, {"frets", "slots", "passes"});
    if (counted) return true;
    // A question takes it for none behind other words either, nor for a load.
    if (!frame_.phrase.command && (kind == shop::Kind::slot || kind == shop::Kind::load) && says_so_many(m))
      return true;
    // "One of the sanders"; and where a side may be said, "the bass" is that.
    if (kind == shop::Kind::count && t.is("one") && in_.is(m.end, "of")) return true;
    if (kind == shop::Kind::job && t.is("bass") && m.end == m.begin + 1 && frame_.phrase.command &&
        frame_.phrase.row->find("line") != nullptr)
      return true;
    // "Two coils" are no 2 g, "2 sticks' worth" are no 2 mm; a "tenth-gram" scale is of no day.
    const bool measure = kind == shop::Kind::length || kind == shop::Kind::mass || kind == shop::Kind::load;
    for (std::size_t k = m.begin; measure && k < m.end; ++k)
      if (in_.s.tokens[k].is_number() && in_.any(k + 1, {"stick", "sticks", "coil", "coils"})) return true;
    if (measure && t.is_number() && m.end == m.begin + 1 &&
        in_.any(m.end, {"stick", "sticks", "coil", "coils", "pieces", "frets", "bits", "slots", "packs",
                        "tenth", "tenths", "hundredth", "hundredths", "thousandths", "thou"}))
      return true;
    if ((kind == shop::Kind::at || kind == shop::Kind::day) && in_.s.tokens[m.end - 1].ordinal &&
        in_.is(m.end, "-") && in_.s.tokens[m.end].glued)
      return true;
    if (!bare(m)) return false;
    // "The first" is one of several things; a day is "on the 1st".
    const bool dated =
        m.begin > from_ && in_.any(m.begin - 1, {"on", "by", "until", "till", "from", "since", "to"});
    if ((kind == shop::Kind::at || kind == shop::Kind::day) && t.ordinal && !dated) return true;
    if (frame_.wide && !constant(param, m)) {
      using enum shop::Kind;
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

  // For an order a short word with a mistake is too easily another one.
  bool too_short(const Match& m) const {
    return frame_.phrase.command && m.distance > 0 && in_.s.tokens[m.begin].word.size() < 5;
  }

  const Frame& frame_;
  std::size_t from_, to_;
  Spelling spelling_;
  const Reader& in_;
  bool all_needed_ = true;
};

} // namespace nutward::talk
