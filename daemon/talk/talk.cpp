#include "talk/talk.hpp"

#include "shop/in_unit.hpp"
#include "shop/reasons.hpp"
#include "talk/digest.hpp"
#include "talk/understand.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <mutex>
#include <stdexcept>

namespace nutward::talk {

using What = Understood::What;

namespace {

// One sentence on its way.
struct Saying {
  std::string text, conversation, key, digest;
  std::string unit; // of lengths in this conversation; "": the shop's
  shop::Caller who;
  std::function<void(Reply)> done;
  bool only_questions = false;
  bool replied = false;
  std::vector<shop::Call> calls;

  void reply(Reply reply) {
    replied = true;
    reply.calls = std::move(calls);
    done(std::move(reply));
  }
};
using Said_ = std::shared_ptr<Saying>;

std::string sentence_of(const shop::Problem& p) {
  return p.would_do.empty() ? p.text : p.text + " " + p.would_do;
}

Understood refused(std::string text) {
  return tell("refused", std::move(text));
}

// What comes to be spoken of. A piece is not carried on: "it" must not mean one of three answers ago.
void turn_to(State& state, const shop::Call& about) {
  shop::Call next{"", about.args};
  const shop::Value* job = next.find("job");
  const shop::Value* had = state.about.find("job");
  if (job == nullptr && had != nullptr) next.args.emplace_back("job", *had);
  state.about = std::move(next);
}

void forget_open(State& state) {
  state.choices.clear();
  state.pending.reset();
  state.confirm.reset();
}

constexpr std::size_t most_kept = 1000, most_kept_bytes = 200; // of sentences that were not understood

// The beginning of the text, whole characters only.
std::string at_most(std::string_view text, std::size_t bytes) {
  if (text.size() <= bytes) return std::string(text);
  std::size_t end = bytes;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
    --end;
  return std::string(text.substr(0, end));
}

// What two sentences have in common that want the same: words that say something, in their order.
std::string alike_as(const Sentence& sentence) {
  std::string out;
  for (const Token& t : sentence.tokens) {
    if (is_filler(t) || t.kind == Token::Kind::symbol) continue;
    out += (out.empty() ? "" : " ") + (t.is_number() ? std::string("#") : fold(t.word));
  }
  return at_most(out, most_kept_bytes);
}

void note(shop::Answer& answer, const std::vector<std::string>& notes) {
  if (notes.empty()) return;
  if (!answer.reason.empty()) answer.reason += answer.reason.ends_with('.') ? " " : ". ";
  answer.reason += shop::sentence(fmt::format("{}.", fmt::join(notes, "; ")));
}

// Compiling a book takes 40 ms, and it never changes: that of the shop's own lists is made once in a process.
std::shared_ptr<const Phrasebook> book_of(std::span<const shop::Question* const> questions,
                                          std::span<const shop::Command* const> commands) {
  const bool whole = questions.data() == shop::questions().data() &&
                     questions.size() == shop::questions().size() &&
                     commands.data() == shop::commands().data() && commands.size() == shop::commands().size();
  if (!whole) return std::make_shared<const Phrasebook>(questions, commands);
  static const auto all = std::make_shared<const Phrasebook>(questions, commands);
  return all;
}

} // namespace

struct Talk::Impl : std::enable_shared_from_this<Talk::Impl> {
  shop::Executor& executor;
  shop::Store& store;
  const shop::Clock& clock;
  shop::Rooms& rooms;
  std::shared_ptr<const Phrasebook> shared_book;
  const Phrasebook& book;
  Memory memory;
  std::mutex lock; // of `names`
  std::shared_ptr<const Names> names;

  Impl(shop::Executor& e, shop::Store& s, const shop::Clock& c, shop::Rooms& r,
       std::span<const shop::Question* const> questions, std::span<const shop::Command* const> commands)
      : executor(e), store(s), clock(c), rooms(r), shared_book(book_of(questions, commands)),
        book(*shared_book) {}

  std::shared_ptr<const Names> current_names() {
    std::shared_ptr<const Names> out;
    {
      const std::lock_guard hold(lock);
      out = names;
    }
    store.read([&](const shop::View& view) {
      if (!out || out->revision != view.revision())
        out = std::make_shared<const Names>(read_names(view, rooms));
    });
    const std::lock_guard hold(lock);
    names = out;
    return out;
  }

  // With what a bare length means in a conversation that has a unit of its own.
  std::shared_ptr<const Names> names_in(const std::string& unit) {
    auto shops = current_names();
    const units::LengthUnit bare = unit.starts_with("in") ? units::LengthUnit::in : units::LengthUnit::mm;
    if (unit.empty() || shops->length == bare) return shops;
    auto out = std::make_shared<Names>(*shops);
    out->length = bare;
    return out;
  }

  State recall(const Saying& s) { return memory.recall(s.who.actor, s.conversation, clock.now()); }
  void keep(const Saying& s, State state) {
    memory.keep(s.who.actor, s.conversation, std::move(state), clock.now());
  }

  void say(const Said_& s) {
    try {
      if (!s->key.empty() && !s->only_questions) {
        auto kept = memory.order(s->who.actor, s->conversation, s->key, clock.now());
        if (kept && kept->digest == s->digest) {
          kept->order.who = s->who; // the same words, but with the role that they are asked with now
          s->calls = kept->order.calls;
          return submit(s, kept->order, {});
        }
      }
      const Sentence sentence = normalise(s->text);
      State state = recall(*s);
      s->unit = state.unit;
      const auto known = names_in(s->unit);
      Understood u = understand(sentence, {book, *known, state, clock.now()});
      if (u.talks_in) {
        s->unit = state.unit = *u.talks_in;
        keep(*s, std::move(state));
      }
      if (u.what == What::ask) return answer(s, std::move(u));
      if (u.what == What::order && s->only_questions) return s->reply({{}, "", true, {}});
      if (u.what == What::order) return order(s, std::move(u));
      finish(s, std::move(u));
    } catch (const BadText& bad) {
      finish(s, refused(std::string(bad.what()) + " " + bad.would_do));
    } catch (const shop::Problem& problem) {
      if (s->replied) throw;
      finish(s, refused(sentence_of(problem)));
    } catch (const std::exception& e) {
      if (s->replied) throw; // from `done` itself
      finish(s, refused(std::string("That failed inside Nutward: ") + e.what() + ". Nothing was changed."));
    }
  }

  void order(const Said_& s, Understood u) {
    shop::Order order{std::move(u.calls),   s->who,      s->text, s->key, s->digest,
                      std::move(u.expects), u.confirmed, s->unit};
    if (!s->key.empty())
      memory.keep_order(s->who.actor, s->conversation, {s->key, s->digest, order}, clock.now());
    s->calls = order.calls;
    submit(s, order, std::move(u));
  }

  // `u`: whose calls the order has; its notes, questions and what it leaves go with the answer.
  void submit(const Said_& s, const shop::Order& order, Understood u) {
    executor.submit(order, [self = shared_from_this(), s, order, u = std::move(u)](shop::Outcome outcome) {
      if (!outcome.again.empty()) return s->reply({{}, std::move(outcome.again), false, {}});
      if (outcome.problem) return self->stumble(s, *outcome.problem, order);
      note(*outcome.answer, u.notes);
      for (const shop::Call& question : u.then)
        self->ask_besides(s, question, *outcome.answer);
      if (!u.leaves.empty()) outcome.answer->choices = u.leaves;
      self->acknowledge(s, std::move(*outcome.answer), order.calls.back(), true);
    });
  }

  // One more question of the same sentence: its answer is said behind the first one's, and its table shown
  // where that has none. What came before it stands whatever becomes of it.
  void ask_besides(const Said_& s, const shop::Call& question, shop::Answer& answer) {
    s->calls.push_back(question);
    try {
      shop::Answer more = executor.ask(question, s->who, s->unit);
      answer.text += (answer.text.ends_with('.') ? " " : ". ") + more.text;
      if (!answer.table) answer.table = std::move(more.table);
      for (shop::Hazard h : more.cautions)
        if (std::find(answer.cautions.begin(), answer.cautions.end(), h) == answer.cautions.end())
          answer.cautions.push_back(h);
    } catch (const shop::Problem& problem) {
      answer.text += (answer.text.ends_with('.') ? " " : ". ") + sentence_of(problem);
    }
  }

  // A question; what its row finds missing comes from the conversation, if that has it.
  void answer(const Said_& s, Understood u) {
    shop::Call call = std::move(u.calls.front());
    const State state = recall(*s);
    for (std::size_t tries = 0;; ++tries) {
      try {
        s->calls = {call};
        shop::Answer found = executor.ask(call, s->who, u.unit.empty() ? s->unit : u.unit);
        note(found, u.notes);
        for (std::size_t i = 1; i < u.calls.size(); ++i)
          ask_besides(s, u.calls[i], found);
        return acknowledge(s, std::move(found), u.calls.size() > 1 ? u.calls.back() : call, false);
      } catch (const shop::Problem& problem) {
        const shop::Param* param = missing(problem, call);
        const shop::Value* known = param == nullptr || tries > 4 ? nullptr : from_about(*param, state.about);
        if (known == nullptr)
          return stumble(s, problem, shop::Order{{call}, s->who, s->text, "", "", {}, false}, false);
        call.args.emplace_back(param->name, *known);
        u.notes.push_back(as_before(*param, *known, *current_names()));
      }
    }
  }

  // The parameter that a problem is about, if the call does not have it at all.
  const shop::Param* missing(const shop::Problem& problem, const shop::Call& call) const {
    const shop::Row* row = book.row(call.row);
    const bool lacks = problem.fault == shop::Fault::value || problem.fault == shop::Fault::ambiguous;
    if (row == nullptr || !lacks) return nullptr;
    for (const shop::Param& p : row->takes) {
      const bool about_it = problem.where == p.name || problem.where == shop::field_for(p);
      if (about_it && call.find(p.name) == nullptr) return &p;
    }
    return nullptr;
  }

  void acknowledge(const Said_& s, shop::Answer answer, const shop::Call& call, bool command) {
    State state = recall(*s);
    forget_open(state);
    turn_to(state, answer.about);
    (command ? state.done : state.question) = call;
    state.done_last = command;
    state.choices = answer.choices;
    state.answer = answer;
    state.tried.reset();
    state.misses = 0;
    keep(*s, std::move(state));
    s->reply({std::move(answer), "", false, {}});
  }

  // A call that was not taken.
  void stumble(const Said_& s, const shop::Problem& problem, const shop::Order& order, bool command = true) {
    Understood u = refused(sentence_of(problem));
    if (problem.fault == shop::Fault::not_allowed) u.tell.data = shop::record({{"not_allowed", true}});
    std::optional<shop::Order> confirm;
    if (problem.fault == shop::Fault::ambiguous || problem.fault == shop::Fault::confirm) {
      u.tell.kind = "unclear";
      u.tell.choices = problem.choices;
      for (std::size_t i = 0; i < order.calls.size(); ++i) {
        if (const shop::Param* param = missing(problem, order.calls[i]))
          u.pending = Pending{order.calls, i, std::string(param->name), command};
      }
      if (problem.fault == shop::Fault::confirm) {
        if (order.calls.size() > 1)
          u.tell.text +=
              fmt::format(" With a yes all {} orders of that sentence are done.", order.calls.size());
        confirm = order;
        confirm->key.clear();
        for (const shop::Choice& c : problem.choices)
          confirm->expects.insert(confirm->expects.end(), c.expects.begin(), c.expects.end());
      }
    } else {
      for (std::size_t i = 0; i < order.calls.size(); ++i) {
        const shop::Param* param = missing(problem, order.calls[i]);
        if (param == nullptr) continue;
        const auto known = current_names();
        const State state = recall(*s);
        u = ask_back(order.calls, i, *param, command, {book, *known, state, clock.now()});
        // What a row can do without, it asks for in its own words.
        if (!param->required) u.tell.text = sentence_of(problem);
        break;
      }
    }
    if (!order.calls.empty()) u.tried = order.calls.front();
    finish(s, std::move(u), std::move(confirm));
  }

  // The figures behind what is explained: from the shop as it is now.
  void add_figures(const Saying& s, Understood& u) {
    std::string figures;
    store.read([&](const shop::View& shops) {
      const std::optional<shop::ViewInUnit> other =
          s.unit.empty() ? std::nullopt : std::optional<shop::ViewInUnit>(std::in_place, shops, s.unit);
      const shop::View& view = other ? static_cast<const shop::View&>(*other) : shops;
      const auto held = rooms.of(view);
      const units::Instant now = clock.now();
      figures = shop::figures_of(u.explains->first, u.explains->second,
                                 {now, now, *held.zone, held.calendar, s.who}, view);
    });
    if (figures.empty()) return;
    std::string& text = u.tell.text;
    text += (text.empty() ? "" : text.ends_with('.') ? " " : ". ") + figures;
  }

  void finish(const Said_& s, Understood u, std::optional<shop::Order> confirm = {}) {
    if (u.explains) add_figures(*s, u);
    if (u.tell.revision == 0) u.tell.revision = current_names()->revision;
    State state = recall(*s);
    if (!u.keeps) {
      forget_open(state);
      state.choices = u.tell.choices;
      state.pending = std::move(u.pending);
      state.confirm = std::move(confirm);
      state.answer = u.tell;
    }
    if (!u.explains) state.tried = std::move(u.tried);
    state.misses = u.missed ? state.misses + 1 : 0;
    keep(*s, std::move(state));
    s->reply({std::move(u.tell), "", false, {}});
    if (u.missed) keep_missed(*s);
  }

  // For who leads the shop, once it is answered: nobody waits for the disk because of it.
  void keep_missed(const Saying& s) {
    const std::string alike = alike_as(normalise(s.text));
    if (alike.empty()) return;
    const units::Instant now = clock.now();
    executor.besides([missed = shop::Missed{at_most(s.text, most_kept_bytes), s.who.actor, now, now, 1},
                      alike](shop::Tx& tx) {
      if (tx.house().setting("keep_not_understood").value_or("yes") == "yes")
        tx.backroom().keep(missed, alike, most_kept);
    });
  }
};

Talk::Talk(shop::Executor& executor, shop::Store& store, const shop::Clock& clock, shop::Rooms& rooms,
           std::span<const shop::Question* const> questions, std::span<const shop::Command* const> commands)
    : impl_(std::make_shared<Impl>(executor, store, clock, rooms, questions, commands)) {}

Talk::~Talk() = default;

void Talk::say(std::string text, std::string conversation, const shop::Caller& who, std::string key,
               std::function<void(Reply)> done, bool only_questions) {
  auto s = std::make_shared<Saying>();
  s->digest = digest(text, conversation);
  s->text = std::move(text);
  s->conversation = std::move(conversation);
  s->key = std::move(key);
  s->who = who;
  s->done = std::move(done);
  s->only_questions = only_questions;
  impl_->say(s);
}

const Phrasebook& Talk::phrases() const {
  return impl_->book;
}

} // namespace nutward::talk
