// Several at once in one sentence: all or nothing. What is done is only what each part says by a phrase of
// its own, or a list of the same thing; parts that are known by key words alone, or that go on from the one
// before in another way, are offered.
#include "talk/said_again.hpp"

#include <algorithm>

namespace nutward::talk {

using What = Understood::What;

namespace {

struct Part {
  std::size_t from = 0, to = 0;
};

// Between these the sentence may fall apart: ";", "and", "then", ",".
std::vector<std::pair<std::size_t, std::size_t>> joints(const Sentence& s) {
  std::vector<std::pair<std::size_t, std::size_t>> out;
  for (std::size_t i = 0; i < s.tokens.size(); ++i) {
    std::size_t end = i;
    while (end < s.tokens.size() &&
           (s.tokens[end].is(";") || s.tokens[end].is(",") || s.tokens[end].is("and") ||
            s.tokens[end].is("then") || s.tokens[end].is("also"))) {
      ++end;
    }
    if (end == i) continue;
    const Token* next = end < s.tokens.size() ? &s.tokens[end] : nullptr;
    const bool in_number =
        s.tokens[i].is(",") && s.tokens[i].glued && next != nullptr && next->glued; // "1,250"
    if (in_number) continue;
    if (i > 0 && end < s.tokens.size()) out.emplace_back(i, end);
    i = end;
  }
  return out;
}

struct Step_ {
  std::vector<shop::Call> calls;
  bool asks = false;              // a question; nothing is done behind one
  bool sure = true;               // none goes on from the one before but as one more of a list
  bool own = true;                // each says what it is by itself
  bool said = true;               // each is a phrase, or a question asked as one
  std::optional<Pending> lacks{}; // of an order: what is not said of the first that lacks something
};

// What the part before it was about is what this one is about: "5 to 7 of job 8 steady, 7 to 9 rocks".
State after(const shop::Call* before, const Surroundings& at) {
  if (before == nullptr) return at.state;
  State then;
  for (const auto& arg : before->args) {
    const bool thing =
        arg.first == "job" || arg.first == "slot" || arg.first == "wire" || arg.first == "piece";
    if (thing && !std::holds_alternative<std::monostate>(arg.second)) then.about.args.push_back(arg);
  }
  return then;
}

// "Received 10 sticks of medium, is that enough": enough medium. A question that says nothing of what it is
// about is about what was just said.
void goes_on_about(shop::Call& call, const shop::Call& before, const Phrasebook& book) {
  const shop::Row* row = book.row(call.row);
  const bool open = call.row == "due" || call.row == "fit" || call.row == "supply" || call.row == "stock" ||
                    call.row == "press" || call.row == "level";
  if (row == nullptr || !open) return;
  for (const char* name : {"job", "slot", "wire"}) {
    const shop::Value* v = before.find(name);
    const bool wanted = std::string_view(name) != "wire" || call.row == "supply" || call.row == "stock";
    if (v != nullptr && wanted && row->find(name) != nullptr && call.find(name) == nullptr)
      call.args.emplace_back(name, *v);
  }
}

// "…rocks on the treble side and is steady on the bass": the side of one board, not the other job that is a
// bass.
bool is_a_side(const Reader& in, const shop::Call& call, const shop::Call& before, const Phrasebook& book) {
  const shop::Row* row = book.row(call.row);
  const shop::Value *job = call.find("job"), *had = before.find("job");
  if (row == nullptr || row->find("line") == nullptr || job == nullptr || had == nullptr || *job == *had)
    return false;
  for (std::size_t i = 0; i < in.size(); ++i)
    if (in.is(i, "bass")) return true;
  return false;
}

// "9 in slot 4" behind "piece 4 in slot 3": what the part says, the one before said too, and it has no verb
// or owner of its own as "its dial reads to 2 g" has.
bool more_of_the_same(const Reader& in, const shop::Call& before, const shop::Call& call) {
  for (std::size_t i = 0; i < in.size(); ++i) {
    if (in.any(i, {"its",   "it's",  "his",  "her",   "their", "this", "that",  "is",   "are",  "was",
                   "were",  "has",   "have", "had",   "got",   "gets", "get",   "goes", "went", "came",
                   "come",  "makes", "made", "reads", "read",  "says", "wants", "want", "for",  "needs",
                   "takes", "took",  "will", "long",  "wide",  "deep", "thick", "high"}) &&
        !(in.is(i, "for") && before.find("job") != nullptr))
      return false;
  }
  return std::all_of(call.args.begin(), call.args.end(),
                     [&](const auto& arg) { return before.find(arg.first) != nullptr; });
}

// `before`: the call that the part before it came to, where there is one.
std::optional<shop::Call> call_in(const Sentence& sentence, const Part& part, const shop::Call* before,
                                  bool last, const Surroundings& at, Step_& step) {
  Sentence piece = normalise(sentence.said(part.from, part.to));
  piece.asks = last && sentence.asks;
  const Reader in{piece, at.book.lexicon(), at.names, at.now};
  Mood mood = mood_of(in);
  if (mood == Mood::negated || in.size() == 0) return std::nullopt;
  if (before != nullptr && step.asks) mood = Mood::question;
  const State state = after(before, at);
  const Surroundings then{at.book, at.names, state, at.now, before != nullptr};
  std::optional<Understood> one;
  auto found = match_all(at.book, Spelling::exact, in);
  if (mood == Mood::question) std::erase_if(found, [](const Match& m) { return m.phrase->command; });
  if (before != nullptr && !found.empty() && found.front().pointing() && found.front().phrase->command)
    return std::nullopt; // at what was said just before, or at the last answer?
  if (!found.empty()) one = decide(std::move(found), then);
  // "Use the 52.4 in slot 3 and hold the 49.8 for job 9": which job is asked for, of both parts together.
  const bool lacks = one && one->what == What::tell && one->pending && one->pending->command &&
                     one->pending->calls.size() == 1 && !step.asks;
  if (lacks) {
    shop::Call call = one->pending->calls.front();
    if (!step.lacks) {
      step.lacks = std::move(one->pending);
      step.lacks->at = step.calls.size();
    }
    return call;
  }
  const bool phrased = one && one->what != What::tell;
  if (!one) one = by_frames(in, then, mood, Spelling::exact, Leniency::none);
  if (one && one->what == What::tell) one.reset();
  if (!one && before != nullptr) {
    bool carried = false;
    auto call = replaced(*before, 0, in.size(), in, then, carried);
    if (call && !carried && differs(*before, *call) && !is_a_side(in, *call, *before, at.book)) {
      step.own = false;
      step.sure = step.sure && more_of_the_same(in, *before, *call);
      return call;
    }
  }
  if (!one || one->what == What::tell || one->calls.size() != 1 || one->calls.front().row == "undo")
    return std::nullopt;
  step.asks = one->what == What::ask;
  // A statement that key words take for a question may be a detail of what stands before it.
  const bool asked = !step.asks || phrased || mood == Mood::question || in.s.asks;
  step.sure = step.sure && asked, step.said = step.said && (phrased || (step.asks && asked));
  step.own = step.own && !step.asks;
  shop::Call call = one->calls.front();
  if (before != nullptr && is_a_side(in, call, *before, at.book)) return std::nullopt;
  if (step.asks && before != nullptr) goes_on_about(call, *before, at.book);
  return call;
}

// What one of several calls of a row says and none says otherwise is said for all.
void share(std::vector<shop::Call>& calls, const Phrasebook& book) {
  const shop::Row* row = book.row(calls.front().row);
  const bool alike = std::all_of(calls.begin(), calls.end(),
                                 [&](const shop::Call& c) { return c.row == calls.front().row; });
  if (row == nullptr || !alike) return;
  for (const shop::Param& p : row->takes) {
    std::vector<shop::Value> said;
    for (const shop::Call& c : calls) {
      const shop::Value* v = p.carried && !p.required ? c.find(p.name) : nullptr;
      if (v != nullptr && std::find(said.begin(), said.end(), *v) == said.end()) said.push_back(*v);
    }
    if (said.size() != 1) continue;
    for (shop::Call& c : calls)
      if (c.find(p.name) == nullptr) c.args.emplace_back(p.name, said.front());
  }
}

} // namespace

namespace {

// "Sava and Odile", "jobs 9 and 11", "1001 and 1002": what stands on both sides of an "and" is of one kind.
struct Pair {
  std::size_t first = 0, joint = 0, second = 0, end = 0; // tokens
};

std::optional<Pair> pair_in(const Reader& in) {
  std::optional<Pair> out;
  const auto person = [&](std::size_t i) {
    const Token* t = in.at(i);
    return t != nullptr && t->kind == Token::Kind::word &&
           std::any_of(in.names.persons.begin(), in.names.persons.end(),
                       [&](const Named& n) { return n.full == t->word; });
  };
  const auto number = [&](std::size_t i) { return whole(in.at(i)).has_value() && !in.at(i)->ordinal; };
  for (std::size_t i = 1; i + 1 < in.size(); ++i) {
    if (!in.any(i, {"and", "&"})) continue;
    const bool jobs = i >= 2 && in.is(i - 2, "jobs") && number(i - 1) && number(i + 1);
    const bool uids = number(i - 1) && number(i + 1) && in.at(i - 1)->number.size() == 4 &&
                      in.at(i + 1)->number.size() == 4;
    if (!(person(i - 1) && person(i + 1)) && !jobs && !uids) continue;
    const bool alone = !in.any(i + 2, {"and", "&", ",", "-"}) && (i < 2 || !in.any(i - 2, {",", "-", "to"}));
    if (out || !alone) return std::nullopt; // more than two
    out = Pair{i - 1, i, i + 1, i + 2};
  }
  return out;
}

// The sentence said of one of the two.
std::string said_of(const Sentence& s, const Pair& pair, std::size_t one) {
  std::string out;
  for (std::size_t i = 0; i < s.tokens.size(); ++i) {
    const bool other = i >= pair.first && i < pair.end && i != one;
    if (other || s.tokens[i].is("both")) continue;
    if (!out.empty() && !s.tokens[i].glued) out += ' ';
    if (s.tokens[i].is("jobs") && i + 1 == pair.first)
      out += "job";
    else
      out += s.said(i, i + 1);
  }
  return out;
}

// "Sava and Odile have both left us": the same of each, where the sentence says it of one.
std::optional<Understood> of_both(const Sentence& sentence, const Surroundings& at) {
  const Reader in{sentence, at.book.lexicon(), at.names, at.now};
  const auto pair = pair_in(in);
  if (!pair || sentence.asks || mood_of(in) != Mood::order) return std::nullopt;
  Understood out;
  out.what = What::order;
  for (const std::size_t one : {pair->first, pair->second}) {
    const Sentence alone = normalise(said_of(sentence, *pair, one));
    const Reader part{alone, at.book.lexicon(), at.names, at.now};
    if (mood_of(part) != Mood::order) return std::nullopt;
    auto found = match_all(at.book, Spelling::exact, part);
    auto said = found.empty() ? by_frames(part, at, Mood::order, Spelling::exact, Leniency::none)
                              : std::optional{decide(std::move(found), at)};
    if (!said || said->what != What::order || said->calls.size() != 1 || said->calls.front().row == "undo")
      return std::nullopt;
    out.calls.push_back(std::move(said->calls.front()));
  }
  const bool alike = out.calls[0].row == out.calls[1].row && differs(out.calls[0], out.calls[1]);
  return alike ? std::optional{std::move(out)} : std::nullopt;
}

// Several clauses with a verb each, where one call that was made of all of them would hide the others.
bool is_joined(const Sentence& s) {
  return std::any_of(s.tokens.begin(), s.tokens.end(),
                     [](const Token& t) { return t.is("and") || t.is("then") || t.is(";") || t.is(","); });
}

} // namespace

std::optional<Understood> clauses(const Sentence& sentence, const Surroundings& at) {
  if (!is_joined(sentence)) return std::nullopt;
  auto out = several(sentence, at);
  if (out && out->opposed) return out;
  if (!out || out->what != What::order || !out->clauses || !out->then.empty() || out->calls.size() < 2)
    return std::nullopt;
  // "Cradled, head clear, glue set" is one report with more and more said of it.
  for (std::size_t i = 1; i < out->calls.size(); ++i) {
    const shop::Call &a = out->calls[i - 1], &b = out->calls[i];
    if (a.row == b.row && !differs(a, b)) return std::nullopt;
  }
  return out;
}

namespace {

// The fewest parts of the sentence that are calls each.
std::optional<Step_> fewest_parts(const Sentence& sentence, const Surroundings& at) {
  const auto cuts = joints(sentence);
  if (cuts.empty() || cuts.size() > 12) return std::nullopt;
  std::vector<std::optional<Step_>> best(cuts.size() + 1); // best[k]: of all that stands before cut k
  for (std::size_t end = 0; end <= cuts.size(); ++end) {
    const bool last = end == cuts.size();
    const std::size_t to = last ? sentence.tokens.size() : cuts[end].first;
    for (std::size_t start = 0; start <= end; ++start) {
      const bool whole_sentence = start == 0 && last;
      if (whole_sentence || (start > 0 && !best[start - 1])) continue;
      if (start > 0 && best[end] && best[end]->calls.size() <= best[start - 1]->calls.size() + 1) continue;
      Step_ step = start > 0 ? *best[start - 1] : Step_{};
      const shop::Call* before = start > 0 ? &best[start - 1]->calls.back() : nullptr;
      auto call = call_in(sentence, {start > 0 ? cuts[start - 1].second : 0, to}, before, last, at, step);
      if (!call) continue;
      step.calls.push_back(std::move(*call));
      best[end] = std::move(step);
    }
  }
  return std::move(best.back());
}

bool is_order(const shop::Call& call, const Surroundings& at) {
  const shop::Row* row = at.book.row(call.row);
  return row != nullptr && at.book.is_command(*row);
}

// All of them: the orders, or else the questions, and the questions behind orders.
Understood all_of(Step_ step, const Surroundings& at) {
  Understood out;
  out.what = What::ask;
  out.clauses = step.own;
  for (shop::Call& call : step.calls) {
    const bool command = is_order(call, at);
    if (command) out.what = What::order;
    (command || out.what == What::ask ? out.calls : out.then).push_back(std::move(call));
  }
  return out;
}

} // namespace

std::optional<Understood> several(const Sentence& sentence, const Surroundings& at) {
  if (auto both = of_both(sentence, at)) return both;
  auto step = fewest_parts(sentence, at);
  if (!step) return std::nullopt;
  const auto& calls = step->calls;
  // Key words are enough for a list of one thing.
  const bool alike = std::all_of(calls.begin(), calls.end(),
                                 [&](const shop::Call& c) { return c.row == calls.front().row; });
  // A handful is measured as one list.
  if (alike && calls.size() > 1 && calls.front().row == "measured-handful") return std::nullopt;
  if (opposed(calls)) {
    Understood out =
        offer("Nothing was done yet: that tells of the same in two ways. Pick which is meant.", calls, at);
    out.opposed = true;
    return out;
  }
  const auto order = [&](const shop::Call& c) { return is_order(c, at); };
  const bool complete = step->sure && (step->said || alike);
  if (!complete && std::any_of(calls.begin(), calls.end(), order)) {
    return offer(
        "Nothing was done yet: a part of that I know by single words alone. Pick one by its number, or "
        "say each in a sentence of its own.",
        calls, at);
  }
  if (step->lacks) {
    const Pending& lacks = *step->lacks;
    const shop::Param* param = at.book.row(calls[lacks.at].row)->find(lacks.param);
    if (param == nullptr || !std::all_of(calls.begin(), calls.end(), order)) return std::nullopt;
    return ask_back(calls, lacks.at, *param, true, at);
  }
  Understood out = all_of(std::move(*step), at);
  if (out.what == What::order) share(out.calls, at.book);
  if (auto twice = said_again(out, at)) return twice;
  return out;
}

} // namespace nutward::talk
