#include "shop/topics.hpp"

#include "shop/lists.hpp"

#include <algorithm>
#include <map>
#include <string>

namespace nutward::shop {

namespace {

std::vector<std::string> words_in(std::string_view text) {
  std::vector<std::string> out;
  bool inside = false; // of {…}: a parameter, which is no word
  std::string word;
  const auto end_word = [&] {
    if (word.size() > 1) out.push_back(word);
    word.clear();
  };
  for (char c : text) {
    if (c == '{' || c == '}') inside = c == '{';
    const bool letter =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
    if (!letter || inside) {
      end_word();
      continue;
    }
    word += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  end_word();
  return out;
}

// "pieces" and "piece", "pressing", "pressed" and "press".
std::string_view stem(std::string_view word) {
  for (std::string_view ending : {"ing", "ed", "es", "s", "e"}) {
    if (word.size() >= ending.size() + 3 && word.ends_with(ending) && !word.ends_with("ss")) {
      word.remove_suffix(ending.size());
      break;
    }
  }
  return word;
}

bool alike(std::string_view a, std::string_view b) {
  return stem(a) == stem(b);
}

bool knows(const std::vector<std::string>& words, const std::string& word) {
  return std::any_of(words.begin(), words.end(), [&](const std::string& w) { return alike(w, word); });
}

struct Known {
  const Row* row = nullptr;
  std::vector<std::string> name, said, what;
};

const std::vector<Known>& known() {
  static const std::vector<Known> all = [] {
    std::vector<Known> out;
    const auto add = [&](const Row& row) {
      Known k{&row, words_in(row.name), {}, words_in(row.what)};
      for (const auto* texts : {&row.phrases, &row.examples})
        for (std::string_view text : *texts)
          for (std::string& w : words_in(text))
            k.said.push_back(std::move(w));
      out.push_back(std::move(k));
    };
    for (const Question* q : questions())
      add(*q);
    for (const Command* c : commands())
      add(*c);
    return out;
  }();
  return all;
}

bool says_little(std::string_view word) {
  static constexpr std::string_view all[]{"the",  "an",    "of",  "to",  "in",   "on",   "at",    "for",
                                          "is",   "it",    "and", "or",  "with", "from", "that",  "this",
                                          "my",   "me",    "we",  "you", "do",   "does", "did",   "how",
                                          "what", "which", "are", "be",  "by",   "as",   "about", "please"};
  return std::find(std::begin(all), std::end(all), word) != std::end(all);
}

} // namespace

std::span<const Topic> topics() {
  static const std::vector<Topic> all{
      {"tin",
       {"offcuts", "pieces", "handfuls"},
       "the tin: pieces that are left of frets and sticks",
       {"fit",         "place",         "all-right",  "labels",
        "tin-care",    "held",          "saved",      "use",
        "use-several", "hold",          "let-go",     "add",
        "scrap",       "scrap-several", "handful",    "measured-handful",
        "pulled",      "set-aside",     "let-all-go", "cut-from"}},
      {"wire",
       {"wires", "stock", "sticks", "coils", "lots"},
       "wire: what there is of it, what it measures, how it is cut",
       {"stock", "cuts", "cut-list", "suits", "lots", "balance", "define-wire", "receive", "reorder-level",
        "count", "weigh", "calibrate", "correct", "cut-new", "from-lot", "wire-size"}},
      {"ordering",
       {"orders", "suppliers", "buying"},
       "ordering wire: how long it lasts, what is to come, from whom",
       {"supply", "order-list", "orders", "suppliers", "ordered", "arrived", "order-promised", "cancel-order",
        "define-supplier", "change-supplier", "drop-supplier"}},
      {"jobs",
       {"job", "queue", "work"},
       "jobs: what is to be done, by when, and how far it is",
       {"due", "jobs", "job", "stages", "agenda", "promise", "history", "new-job", "set-due", "cancel-job",
        "finished", "start", "stop", "priority", "after", "stage-minutes"}},
      {"board",
       {"slots", "frets", "boards"},
       "boards, slots and the frets in them",
       {"slots", "shift", "measured", "came-short", "slot-size", "shifted", "board-width", "lost", "remade",
        "last-fret"}},
      {"press",
       {"pressing", "bars", "recheck", "rechecks"},
       "pressing, and the look a day later",
       {"press", "spring-back", "pressed", "rechecked", "look-again", "define-bar", "drop-bar",
        "press-support", "reseated", "glued"}},
      {"levelling",
       {"level", "readings", "straightedge"},
       "levelling: readings of the straightedge and what they come to",
       {"level", "reading", "crown-gap", "cause", "stands-low", "neck", "levelled"}},
      {"people",
       {"persons", "person", "who"},
       "people: who works here, does which job, and is in when",
       {"persons", "whose", "new-person", "map-uid", "unmap-uid", "change-person", "retire-person",
        "return-person", "give-job", "free-job", "own-hours", "day-off", "day-on"}},
      {"machines",
       {"machine", "bookings"},
       "machines: whether they are in service, and who has them when",
       {"machines", "bookings", "define-machine", "change-machine", "drop-machine", "machine-down",
        "machine-up", "stage-machine", "book", "cancel-booking"}},
      {"shop",
       {"house", "opening"},
       "the shop itself: hours, settings, who is told, what was said",
       {"hours", "safety", "not-understood", "help", "open-hours", "close-day", "open-extra", "reopen-day",
        "set", "add-receiver", "drop-receiver", "forget-not-understood", "undo"}}};
  return all;
}

const Topic* topic_called(std::string_view word) {
  for (const Topic& t : topics()) {
    if (t.name == word || std::find(t.also.begin(), t.also.end(), word) != t.also.end()) return &t;
  }
  return nullptr;
}

std::vector<const Row*> rows_about(std::string_view words, std::size_t most) {
  std::map<const Row*, double> score;
  for (const std::string& word : words_in(words)) {
    if (says_little(word)) continue;
    std::vector<std::pair<const Row*, double>> hits;
    for (const Known& k : known()) {
      const double hit =
          (knows(k.name, word) ? 3.0 : 0) + (knows(k.said, word) ? 2.0 : 0) + (knows(k.what, word) ? 1.0 : 0);
      if (hit > 0) hits.emplace_back(k.row, hit);
    }
    // A word that few rows know says more than one that many do.
    for (const auto& [row, hit] : hits)
      score[row] += hit / static_cast<double>(hits.size());
  }
  std::vector<const Row*> out;
  for (const Known& k : known())
    if (score.count(k.row) > 0) out.push_back(k.row);
  std::stable_sort(out.begin(), out.end(), [&](auto* a, auto* b) { return score[a] > score[b]; });
  if (out.size() > most) out.resize(most);
  return out;
}

} // namespace nutward::shop
