// Saying: a sentence in, an answer out. The sentence layer has no language model and no network; it knows the
// two lists, the names of the shop's things, and what was said before in the same conversation.
//
// A question is answered at once on the calling thread. A command goes to the executor, and `done` is then
// called on the executor's thread, after the commit. Nothing that can be taken in two ways is done: it is
// asked about (kind "unclear", with numbered choices, which a bare number picks in the same conversation).
#pragma once

#include "shop/lists.hpp"
#include "shop/run.hpp"
#include "talk/phrasebook.hpp"

#include <functional>
#include <memory>
#include <span>
#include <string>

namespace nutward::talk {

// One of the two: an answer, or the JSON text of the one given before under the same key (nothing was done
// now).
struct Reply {
  shop::Answer answer;
  std::string again;
  bool no_question =
      false; // only a question was wanted; what was said would change something: nothing was done
  // What it was taken as and asked or ordered, in the order said; empty where it was asked about instead.
  std::vector<shop::Call> calls{};
};

class Talk {
public:
  // Compiles every phrase; throws std::invalid_argument where one is wrong. All references outlive the Talk
  // and the executor's last callback.
  Talk(shop::Executor& executor, shop::Store& store, const shop::Clock& clock, shop::Rooms& rooms,
       std::span<const shop::Question* const> questions = shop::questions(),
       std::span<const shop::Command* const> commands = shop::commands());
  ~Talk();

  // Thread-safe; `done` is called exactly once, possibly before this returns. Never throws for what was said:
  // what cannot be taken comes back as kind "refused" or "unclear". The conversation is any text the client
  // chose, and belongs to the caller; an empty one remembers nothing. `key`: the Idempotency-Key, or "".
  // With `only_questions` nothing is changed: a command comes back as Reply::no_question.
  void say(std::string text, std::string conversation, const shop::Caller& who, std::string key,
           std::function<void(Reply)> done, bool only_questions = false);

  const Phrasebook& phrases() const;

private:
  struct Impl;
  std::shared_ptr<Impl> impl_;
};

} // namespace nutward::talk
