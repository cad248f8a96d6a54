// A sentence that is no phrase, by the frames: the row whose frame it is laid out over nearest. A question
// may leave over some words that its frame does not know. A command leaves none but remarks
// (frames_sure.hpp): with one strange word it is only offered, and where another command is as near, or the
// sentence had mistakes and another is near, it is asked.
#include "talk/frames_sure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace nutward::talk {

using What = Understood::What;

struct FramesLaid {
  Mood mood{};
  double nothing = 0; // how likely it is that nothing is asked or ordered
  std::vector<Found> found;
};

namespace {

bool closer(const Found& a, const Found& b) {
  return std::pair(a.cost, -a.laid.match.literals) < std::pair(b.cost, -b.laid.match.literals);
}

// The frames that are tried, each with how likely its row is: of the likeliest rows; all where nothing was
// learnt. And how likely it is that nothing is asked or ordered.
struct Candidates {
  std::vector<std::pair<const Frame*, double>> frames;
  double nothing = 0;
};

Candidates candidates(const Reader& in, const Surroundings& at, Mood mood) {
  Candidates out;
  constexpr std::size_t most = 4;
  const auto& ranked = at.book.evidence().rank(in);
  // Of what may be meant at all: what sounds like a question is no order.
  const auto may_be = [&](const Likely& l) {
    return l.row == nullptr ? mood == Mood::order : mood == Mood::order || !at.book.is_command(*l.row);
  };
  double all = 0;
  for (const Likely& l : ranked)
    all += may_be(l) ? l.share : 0;
  std::size_t rows = 0;
  for (const Likely& l : ranked) {
    if (!may_be(l)) continue;
    const double share = l.share / all;
    if (l.row == nullptr) out.nothing = share;
    if (l.row == nullptr || share < 0.05 || rows == most) continue;
    ++rows;
    for (const Frame* frame : at.book.frames_of(*l.row))
      out.frames.emplace_back(frame, share);
  }
  if (ranked.empty())
    for (const Frame& frame : at.book.frames())
      out.frames.emplace_back(&frame, 1);
  return out;
}

// In the coin of frame.cpp's costs: half as likely is about three more.
int unlikely(double share) {
  return static_cast<int>(std::lround(-4 * std::log(std::max(share, 0.001))));
}

// What is not said, and not known from the conversation either, would have to be asked for.
int missing(const Found& found, const Surroundings& at) {
  int out = 0;
  const shop::Row& row = *found.frame->phrase.row;
  for (std::size_t p = 0; p < row.takes.size(); ++p) {
    const auto& args = found.laid.match.args;
    const bool said =
        std::any_of(args.begin(), args.end(), [&](const auto& a) { return a.first == static_cast<int>(p); });
    if (said || !row.takes[p].required) continue;
    const bool known = from_about(row.takes[p], at.state.about) != nullptr;
    out += known ? 1 : 8;
  }
  // What a fret measures may be said in two ways, and must be in one.
  if (row.name == "all-right" &&
      std::none_of(found.laid.match.args.begin(), found.laid.match.args.end(), [&](const auto& a) {
        const std::string_view name = row.takes[static_cast<std::size_t>(a.first)].name;
        return name == "length" || name == "short_by";
      }))
    out += 8;
  return out;
}

std::string strange_words(const std::vector<std::size_t>& at, const Reader& in) {
  std::string out;
  for (std::size_t k : at)
    out += fmt::format("{}'{}'", out.empty() ? "" : ", ", in.s.said(k, k + 1));
  return out;
}

// What frames try in vain is nobody's fault: what was wrong with the sentence is told by the phrases.
class Blame {
public:
  explicit Blame(const Reader& in) : in_(in), trouble_(in.trouble), from_(in.name_from), to_(in.name_to) {}
  ~Blame() { in_.trouble = trouble_, in_.name_from = from_, in_.name_to = to_; }
  Blame(const Blame&) = delete;
  Blame& operator=(const Blame&) = delete;

private:
  const Reader& in_;
  Trouble trouble_;
  std::size_t from_, to_;
};

} // namespace

namespace {

struct Choice {
  std::optional<Found> question, strange;
  std::vector<Found> commands;
};

// What is wrong with the sentence is known, and said.
bool told_wrong(const Reader& in) {
  return in.trouble.set() || in.name_to > in.name_from;
}

// What `choose` chooses from.
std::shared_ptr<const FramesLaid> laid_out(const Reader& in, const Surroundings& at, Mood mood,
                                           Spelling spelling) {
  // Where every word is known, none has a mistake.
  auto& kept = in.laid[spelling == Spelling::mistyped && in.has_strange() ? 1 : 0];
  if (kept && kept->mood == mood) return kept;
  auto out = std::make_shared<FramesLaid>();
  const Candidates all = candidates(in, at, mood);
  out->mood = mood, out->nothing = all.nothing;
  for (const auto& [frame, share] : all.frames) {
    const bool orders = frame->phrase.command;
    if (orders && mood != Mood::order) continue;
    // The wide frame is for what the row's own frames leave over.
    const shop::Row* row = frame->phrase.row;
    const bool enough = frame->wide && !out->found.empty() &&
                        std::any_of(out->found.begin(), out->found.end(), [&](const Found& f) {
                          return f.frame->phrase.row == row && f.laid.unknown == 0 && !f.laid.tied;
                        });
    if (enough) continue;
    auto laid = lay(*frame, 0, in.size(), spelling, in);
    if (!laid) continue;
    Found found{frame, std::move(*laid), share};
    found.missing = missing(found, at);
    found.cost = found.laid.cost + found.missing + unlikely(share) + (frame->wide ? 3 : 0) +
                 (!orders && mood == Mood::order ? 2 : 0);
    out->found.push_back(std::move(found));
  }
  return kept = std::move(out);
}

// An order that leaves a number over is not even offered: what it is of would be another thing.
bool leaves_number(const Found& found, const Reader& in) {
  const auto& strange = found.laid.strange;
  return std::any_of(strange.begin(), strange.end(),
                     [&](std::size_t k) { return in.s.tokens[k].is_number(); });
}

bool denies(const Reader& in) {
  for (std::size_t i = 0; i < in.size(); ++i)
    if (in.any(i, {"not",  "no",    "never",     "nor",    "without", "except",   "excepting", "excluding",
                   "if",   "would", "could",     "should", "might",   "unless",   "pretend",   "suppose",
                   "wish", "hope",  "hopefully", "forget", "ignore",  "anything", "supposed",  "stopped"}))
      return true;
  return false;
}

Choice choose(const Reader& in, const Surroundings& at, Mood mood, Spelling spelling, Leniency leniency) {
  Choice out;
  const auto all = laid_out(in, at, mood, spelling);
  const bool any_order = std::any_of(all->found.begin(), all->found.end(),
                                     [](const Found& f) { return f.frame->phrase.command; });
  const std::vector<Verb> verbs = any_order ? verbs_of(in, at) : std::vector<Verb>{};
  const bool strict = leniency == Leniency::none || mood == Mood::order;
  for (const Found& one : all->found) {
    // "…, but it took two goes" may be offered; what is denied may not.
    if (one.laid.turned && denies(in)) continue;
    if (!one.frame->phrase.command) {
      const Match& m = one.laid.match;
      const int sure = m.literals - m.distance + static_cast<int>(m.args.size());
      if (mood == Mood::order && m.distance > 0 && sure < 2)
        continue; // "the lathe is down" is not about being late
      if (mood == Mood::order && one.frame->wide && in_hand(one, in)) continue;
      if (may_answer(one, in, strict) && (!out.question || closer(one, *out.question))) out.question = one;
    } else if ((one.laid.unknown == 0 || only_remarks(one, in)) && !one.laid.turned && !one.laid.tied &&
               one.share > 0.05 && !says_more(*one.frame, verbs, in)) {
      out.commands.push_back(one);
      out.commands.back().sure = may_do(one, all->nothing, in, at.book);
    } else if (one.laid.unknown <= 1 && one.share > 0.35 && one.frame->phrase.row->name != "undo" &&
               !leaves_number(one, in) && !in.is(0, "same") && !(one.frame->wide && told_wrong(in)) &&
               (!out.strange || closer(one, *out.strange))) {
      out.strange = one;
    }
  }
  std::stable_sort(out.commands.begin(), out.commands.end(), closer);
  // "Uid 1001 i Ines": another order is as likely but for a word, which may be mistyped or a name.
  if (!out.commands.empty() && out.commands.front().frame->wide && out.commands.front().share < 0.85) {
    Found& first = out.commands.front();
    const bool other = std::any_of(all->found.begin(), all->found.end(), [&](const Found& f) {
      return f.frame->phrase.command && f.frame->phrase.row != first.frame->phrase.row &&
             f.laid.unknown == 1 && f.share > 0.1;
    });
    first.sure = first.sure && !other;
  }
  return out;
}

// The nearest command, or what is offered instead.
Understood order_of(const std::vector<Found>& commands, const Reader& in, const Surroundings& at) {
  const Found& command = commands.front();
  const int margin = command.frame->wide || command.share < 0.4 ? 5 : command.laid.match.distance > 0 ? 3 : 1;
  std::vector<shop::Call> rivals;
  for (const Found& other : commands) {
    if (other.cost >= command.cost + margin || other.frame->phrase.row == command.frame->phrase.row) continue;
    Understood one = decide({other.laid.match}, at);
    if (one.what == What::order) rivals.push_back(one.calls.front());
  }
  Understood out = decide({command.laid.match}, at);
  if (out.what == What::order && command.laid.match.distance > 1)
    return offer(
        "Nothing was done yet: several words of that are none that I know. Pick 1, or say yes, if this is "
        "meant.",
        out.calls, at);
  if (out.what == What::order && rivals.empty() && (!command.sure || hides_another(command, in, at)))
    return offer(
        "Nothing was done yet: that may say something else as well. Pick 1, or say yes, if this is meant.",
        out.calls, at);
  if (rivals.empty() || out.what != What::order) return out;
  rivals.insert(rivals.begin(), out.calls.front());
  return offer("That can be taken in more than one way. Pick one by its number, or say it more plainly.",
               rivals, at);
}

} // namespace

std::optional<Understood> by_frames(const Reader& in, const Surroundings& at, Mood mood, Spelling spelling,
                                    Leniency leniency) {
  if (mood == Mood::negated) return std::nullopt;
  if (mood == Mood::order && asks_behind(in)) mood = Mood::question;
  const Blame kept(in);
  const Choice found = choose(in, at, mood, spelling, leniency);
  const bool offers = leniency == Leniency::offers;
  if (!found.commands.empty() &&
      (found.commands.front().sure || (offers && !told_wrong(in) && found.commands.front().missing < 8)) &&
      (!found.question || found.commands.front().cost <= found.question->cost))
    return order_of(found.commands, in, at);
  if (found.question && (!offers || !found.strange || found.question->cost <= found.strange->cost))
    return decide({found.question->laid.match}, at);
  if (!found.strange || !offers) return std::nullopt;
  const Found& strange = *found.strange;
  Understood one = decide({strange.laid.match}, at);
  if (one.what != What::order) return std::nullopt;
  if (strange.laid.strange.empty())
    return offer(
        "Nothing was done yet: that may say something else as well. Pick 1, or say yes, if this alone is "
        "meant.",
        one.calls, at);
  return offer(
      fmt::format("Nothing was done yet: I do not know what {} means there. Pick 1, or say yes, if this is "
                  "meant.",
                  strange_words(strange.laid.strange, in)),
      one.calls, at);
}

} // namespace nutward::talk
