// Any bytes as a sentence, with any conversation before it: libFuzzer (clang) looks for what breaks the
// sentence layer. Built with -DNUTWARD_FUZZ=ON:
//
//   build/fuzz-sentences -runs=10000000 -max_len=400 [FOLDER of sentences to begin from]
//
// Beside the sanitizers' findings these are findings: any exception but BadText; a call of a row that there
// is not, or with an argument that the row does not take; an order or question of nothing.
#include "sayings/sayings.hpp"
#include "shop/lists.hpp"
#include "talk/understand.hpp"

#include <cstdio>
#include <cstdlib>

namespace nutward::sayings {

namespace {

using talk::Understood;
using What = Understood::What;

[[noreturn]] void found(const char* what, std::string_view text) {
  std::fprintf(stderr, "%s: %.*s\n", what, static_cast<int>(text.size()), text.data());
  std::abort();
}

struct Fuzzed {
  Speaker speaker;

  shop::Call call(std::string_view text) const {
    const talk::State none;
    const Understood u =
        talk::understand(talk::normalise(text), {speaker.book(), speaker.names(), none, speaker.now()});
    return u.calls.empty() ? shop::Call{} : u.calls.front();
  }

  // A conversation in which the bits of `which` have happened.
  talk::State conversation(unsigned which) const {
    static const shop::Call fit = call("what fits slot 3 of job 1"),
                            use = call("use piece 4 in slot 3 of job 1");
    talk::State out;
    if ((which & 1) != 0) out.about = fit, out.question = fit;
    if ((which & 2) != 0) out.done = use, out.done_last = true;
    if ((which & 4) != 0) out.choices = {{"one", fit, {}}, {"other", use, {}}};
    if ((which & 8) != 0) out.pending = talk::Pending{{{"use", {}}}, 0, "piece", true};
    if ((which & 16) != 0) out.confirm = shop::Order{{use}, {}, "", "", "", {}, false};
    if ((which & 32) != 0) out.answer = shop::Answer{}, out.misses = static_cast<int>(which >> 6);
    return out;
  }

  void check(const shop::Call& call, std::string_view text) const {
    const shop::Row* row = speaker.book().row(call.row);
    if (row == nullptr) found("a call of no row", text);
    for (const auto& [name, value] : call.args)
      if (row->find(name) == nullptr) found("an argument that the row does not take", text);
  }

  void say(std::string_view text, unsigned which) const {
    const talk::State state = conversation(which);
    try {
      const talk::Sentence sentence = talk::normalise(text);
      const Understood u =
          talk::understand(sentence, {speaker.book(), speaker.names(), state, speaker.now()});
      for (const shop::Call& c : u.calls)
        check(c, text);
      for (const shop::Choice& c : u.tell.choices)
        if (!c.call.row.empty()) check(c.call, text);
      if (u.what != What::tell && u.calls.empty()) found("an order or question of nothing", text);
    } catch (const talk::BadText&) {
      // Said to the person; that is no finding.
    }
  }
};

} // namespace

} // namespace nutward::sayings

extern "C" int LLVMFuzzerTestOneInput(const unsigned char* bytes, std::size_t size) {
  static const nutward::sayings::Fuzzed fuzzed;
  if (size == 0) return 0;
  fuzzed.say({reinterpret_cast<const char*>(bytes) + 1, size - 1}, bytes[0]);
  return 0;
}
