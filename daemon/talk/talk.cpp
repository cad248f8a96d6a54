#include "talk/talk.hpp"

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

void note(shop::Answer& answer, const std::vector<std::string>& notes) {
  if (notes.empty()) return;
  if (!answer.reason.empty()) answer.reason += answer.reason.ends_with('.') ? " " : ". ";
  answer.reason += shop::sentence(fmt::format("{}.", fmt::join(notes, "; ")));
}

} // namespace

struct Talk::Impl : std::enable_shared_from_this<Talk::Impl> {
  shop::Executor& executor;
  shop::Store& store;
  const shop::Clock& clock;
  shop::Rooms& rooms;
  Phrasebook book;
  Memory memory;
  std::mutex lock; // of `names`
  std::shared_ptr<const Names> names;

  Impl(shop::Executor& e, shop::Store& s, const shop::Clock& c, shop::Rooms& r,
       std::span<const shop::Question* const> questions, std::span<const shop::Command* const> commands)
      : executor(e), store(s), clock(c), rooms(r), book(questions, commands) {}

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
          return submit(s, std::move(kept->order), {}, {});
        }
      }
      const Sentence sentence = normalise(s->text);
      const auto known = current_names();
      const State state = recall(*s);
      Understood u = understand(sentence, {book, *known, state, clock.now()});
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
    shop::Order order{std::move(u.calls),   s->who,     s->text, s->key, s->digest,
                      std::move(u.expects), u.confirmed};
    if (!s->key.empty())
      memory.keep_order(s->who.actor, s->conversation, {s->key, s->digest, order}, clock.now());
    s->calls = order.calls;
    submit(s, std::move(order), std::move(u.notes), std::move(u.then));
  }

  void submit(const Said_& s, shop::Order order, std::vector<std::string> notes,
              std::vector<shop::Call> then) {
    executor.submit(order, [self = shared_from_this(), s, order, notes = std::move(notes),
                            then = std::move(then)](shop::Outcome outcome) {
      if (!outcome.again.empty()) return s->reply({{}, std::move(outcome.again), false, {}});
      if (outcome.problem) return self->stumble(s, *outcome.problem, order);
      note(*outcome.answer, notes);
      for (const shop::Call& question : then)
        self->ask_besides(s, question, *outcome.answer);
      self->acknowledge(s, std::move(*outcome.answer), order.calls.back(), true);
    });
  }

  // One more question of the same sentence: its answer is said behind the first one's, and its table shown
  // where that has none. What came before it stands whatever becomes of it.
  void ask_besides(const Said_& s, const shop::Call& question, shop::Answer& answer) {
    s->calls.push_back(question);
    try {
      shop::Answer more = executor.ask(question, s->who);
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
        shop::Answer found = executor.ask(call, s->who, u.unit);
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
        u.notes.push_back(as_before(*param, *known));
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
    finish(s, std::move(u), std::move(confirm));
  }

  void finish(const Said_& s, Understood u, std::optional<shop::Order> confirm = {}) {
    if (u.tell.revision == 0) u.tell.revision = current_names()->revision;
    State state = recall(*s);
    if (!u.keeps) {
      forget_open(state);
      state.choices = u.tell.choices;
      state.pending = std::move(u.pending);
      state.confirm = std::move(confirm);
      state.answer = u.tell;
    }
    state.misses = u.missed ? state.misses + 1 : 0;
    keep(*s, std::move(state));
    s->reply({std::move(u.tell), "", false, {}});
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
