#include "talk/phrasebook.hpp"

#include <algorithm>
#include <iterator>
#include <stdexcept>

namespace nutward::talk {

Phrasebook::Phrasebook(std::span<const shop::Question* const> questions,
                       std::span<const shop::Command* const> commands, std::string_view evidence) {
  for (const shop::Question* q : questions)
    add(*q, false);
  for (const shop::Command* c : commands)
    add(*c, true);
  for (const shop::Row* row : rows_) {
    for (const shop::Param& p : row->takes) {
      for (std::string_view option : p.options) {
        for (const std::string& w : words_of(option))
          lexicon_.add(w);
      }
    }
  }
  for (std::size_t at = 0; at < phrases_.size(); ++at) {
    phrases_[at].at = at;
    index(phrases_[at]);
  }
  index_needs();
  evidence_ = std::make_unique<Evidence>(evidence, rows_, lexicon_);
  add_frames();
}

void Phrasebook::add_frames() {
  std::map<const shop::Row*, std::vector<FrameText>> texts_of;
  for (const auto& texts : {frames_of_questions(), frames_of_wire(), frames_of_board(), frames_of_house()}) {
    for (const FrameText& text : texts) {
      const shop::Row* r = row(text.row);
      // Frames are of the shop's own rows; others may have their names, but not what they take.
      const bool own = r != nullptr && (r == shop::question(text.row) || r == shop::command(text.row));
      if (!own) continue;
      frames_.push_back(compile(text, *r, is_command(*r), lexicon_));
      for (const Item& item : frames_.back().items)
        note_words(item.phrase.steps, *r);
      frames_.back().evidence = evidence_.get();
      frames_of_[r].push_back(&frames_.back());
      texts_of[r].push_back(text);
    }
  }
  for (const shop::Row* row : rows_)
    add_wide(*row, texts_of[row]);
  for (std::string_view word : words_of_no_weight())
    lexicon_.add(word);
}

void Phrasebook::add_wide(const shop::Row& row, const std::vector<FrameText>& texts) {
  Frame wide = compile_wide(texts, row, is_command(row), lexicon_);
  wide.evidence = evidence_.get();
  wide.known.resize(lexicon_.size());
  const auto know = [&](const Phrase& phrase) {
    for (const Step& s : phrase.steps)
      if (s.op == Step::Op::word) wide.known[static_cast<std::size_t>(s.a)] = true;
  };
  for (const Phrase& phrase : phrases_)
    if (phrase.row == &row) know(phrase);
  wide.valued.resize(lexicon_.size());
  std::vector<bool> plain(lexicon_.size());
  for (const Item& item : wide.items) {
    know(item.phrase);
    std::uint64_t params = 0;
    for (const Step& s : item.phrase.steps)
      if (s.op == Step::Op::take || s.op == Step::Op::set) params |= std::uint64_t{1} << s.a;
    for (const Step& s : item.phrase.steps) {
      if (s.op != Step::Op::word) continue;
      const auto id = static_cast<std::size_t>(s.a);
      wide.valued[id] |= params;
      plain[id] = plain[id] || params == 0;
    }
  }
  for (std::size_t id = 0; id < plain.size(); ++id)
    if (plain[id]) wide.valued[id] = 0;
  wide.option.resize(lexicon_.size());
  for (const shop::Param& p : row.takes)
    for (std::string_view option : p.options)
      for (const std::string& w : words_of(option))
        if (const int id = lexicon_.find(w); id >= 0) wide.option[static_cast<std::size_t>(id)] = true;
  wide.key.resize(lexicon_.size());
  for (const Frame* own : frames_of_[&row])
    for (const Item& item : own->items)
      for (const Step& s : item.phrase.steps)
        if (item.needed && item.words && s.op == Step::Op::word)
          wide.key[static_cast<std::size_t>(s.a)] = true;
  wide_.push_back(std::move(wide));
  frames_of_[&row].push_back(&wide_.back());
}

const std::vector<const Frame*>& Phrasebook::frames_of(const shop::Row& row) const {
  return frames_of_.at(&row);
}

void Phrasebook::add(const shop::Row& row, bool command) {
  if (row.takes.size() > 64) // each is a bit where sentences are laid out
    throw std::invalid_argument("The row '" + std::string(row.name) + "' takes more than 64 parameters.");
  rows_.push_back(&row);
  if (!is_command_.emplace(&row, command).second)
    throw std::invalid_argument("The row '" + std::string(row.name) + "' is listed twice.");
  phrases_.push_back(canonical(row, command, lexicon_));
  if (has_short_form(row, command)) phrases_.push_back(short_form(row, command, lexicon_));
  for (std::string_view pattern : row.phrases)
    phrases_.push_back(compile(row, command, pattern, lexicon_));
  replacements_.emplace(&row, replacement(row, command, lexicon_));
}

void Phrasebook::index(const Phrase& phrase) {
  if (phrase.open) open_.push_back(&phrase);
  for (int word : phrase.first)
    by_word_[word].push_back(&phrase);
  note_words(phrase.steps, *phrase.row);
}

void Phrasebook::note_words(const std::vector<Step>& steps, const shop::Row& row) {
  for (const Step& s : steps) {
    if (s.op != Step::Op::word) continue;
    auto& rows = rows_with_[s.a];
    if (std::find(rows.begin(), rows.end(), &row) == rows.end()) rows.push_back(&row);
  }
}

void Phrasebook::index_needs() {
  std::vector<std::size_t> needed(lexicon_.size()); // by how many phrases
  for (const Phrase& phrase : phrases_)
    for (const OneOf& words : phrase.needs)
      for (int word : words)
        ++needed[static_cast<std::size_t>(word)];
  const auto weight = [&](const OneOf& words) {
    std::size_t out = 0;
    for (int word : words)
      out += needed[static_cast<std::size_t>(word)];
    return out;
  };
  by_need_.resize(lexicon_.size());
  for (const Phrase& phrase : phrases_) {
    const auto rarest =
        std::min_element(phrase.needs.begin(), phrase.needs.end(),
                         [&](const OneOf& a, const OneOf& b) { return weight(a) < weight(b); });
    if (rarest == phrase.needs.end()) {
      needing_none_.push_back(&phrase);
      continue;
    }
    for (int word : *rarest)
      by_need_[static_cast<std::size_t>(word)].push_back(&phrase);
  }
}

namespace {

// Not by where they lie in memory: which of two that fit alike leads would be another in each build.
std::vector<const Phrase*> in_order(std::vector<const Phrase*> phrases) {
  std::sort(phrases.begin(), phrases.end(), [](const Phrase* a, const Phrase* b) { return a->at < b->at; });
  phrases.erase(std::unique(phrases.begin(), phrases.end()), phrases.end());
  return phrases;
}

} // namespace

std::vector<const Phrase*> Phrasebook::starting(const std::vector<int>& words) const {
  std::vector<const Phrase*> out = open_;
  for (int word : words) {
    if (auto at = by_word_.find(word); at != by_word_.end())
      out.insert(out.end(), at->second.begin(), at->second.end());
  }
  return in_order(std::move(out));
}

std::vector<const Phrase*> Phrasebook::starting(const std::vector<int>& words, const WordSet& said) const {
  const auto can_be = [&](const Phrase* phrase) {
    const bool begins = phrase->open || std::any_of(words.begin(), words.end(), [&](int word) {
                          return std::binary_search(phrase->first.begin(), phrase->first.end(), word);
                        });
    return begins && std::all_of(phrase->needs.begin(), phrase->needs.end(), [&](const OneOf& any) {
             return std::any_of(any.begin(), any.end(), [&](int word) { return said.has(word); });
           });
  };
  std::vector<const Phrase*> out;
  const auto add = [&](const std::vector<const Phrase*>& phrases) {
    std::copy_if(phrases.begin(), phrases.end(), std::back_inserter(out), can_be);
  };
  add(needing_none_);
  said.each([&](int word) {
    if (static_cast<std::size_t>(word) < by_need_.size()) add(by_need_[static_cast<std::size_t>(word)]);
  });
  return in_order(std::move(out));
}

const shop::Row* Phrasebook::row(std::string_view name) const {
  auto at = std::find_if(rows_.begin(), rows_.end(), [&](const shop::Row* r) { return r->name == name; });
  return at == rows_.end() ? nullptr : *at;
}

bool Phrasebook::is_command(const shop::Row& row) const {
  return is_command_.at(&row);
}
const Phrase& Phrasebook::replacement_of(const shop::Row& row) const {
  return replacements_.at(&row);
}

const std::vector<const shop::Row*>& Phrasebook::rows_with(int word) const {
  static const std::vector<const shop::Row*> none;
  auto at = rows_with_.find(word);
  return at == rows_with_.end() ? none : at->second;
}

} // namespace nutward::talk
