// One recogniser for each kind of parameter: what of that kind may begin at a token, and how far it goes.
// Pure but for `trouble`, which keeps what was wrong with a quantity, to say so if nothing else fits. Many
// phrases ask the same of the same token: what was read there is kept with the sentence (`read`), its trouble
// too.
#pragma once

#include "shop/row.hpp"
#include "talk/lexicon.hpp"
#include "talk/names.hpp"

#include <array>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace nutward::talk {

struct Said {
  std::size_t end = 0; // one past the last token that it took
  shop::Value value{};
  std::vector<shop::Value> others{}; // where more than one thing may be meant: all of them, value among them
  bool pointing = false;             // "it", "that job": the conversation knows
  int loose = 0;                     // tokens that were taken as they are: names, notes, unknown words
  int distance = 0;                  // typing mistakes, in the words of an option
  bool weekday = false;              // a day said by its name alone, which may be a later one
  int step = 0;                      // pointing at a slot: the next one, the one before
  bool whole_day = false;            // a time that was said as a day alone
  bool clock_alone = false;          // a time that was said without its day
};

struct Trouble {
  std::string text, would_do;
  bool first = false; // told even where there was another before it
  bool set() const { return !text.empty(); }
};

// What was found wrong on the way.
struct Remarks {
  Trouble trouble{};
  std::size_t name_from = 0, name_to = 0; // what was taken as a name up to a comma, to say so
};

// What a recogniser made of a token, and what it remarked.
struct Reading {
  std::vector<Said> said;
  Remarks remarks;
};

// What was read so far, one place for each way of reading and each token.
class Readings {
public:
  Readings(std::size_t ways, std::size_t tokens) : rows_(ways, none), tokens_(tokens) {}
  // Where that reading is kept: `unread`, or a place for `at`.
  std::uint32_t& place(std::size_t way, std::size_t token) {
    if (rows_[way] == none) {
      rows_[way] = static_cast<std::uint32_t>(places_.size());
      places_.resize(places_.size() + tokens_, unread);
    }
    return places_[rows_[way] + token];
  }
  const Reading& at(std::uint32_t place) const { return kept_[place]; }
  std::uint32_t keep(Reading&& reading) {
    kept_.push_back(std::move(reading));
    return static_cast<std::uint32_t>(kept_.size() - 1);
  }

  static constexpr std::uint32_t unread = 0xffffffff, nothing = 0xfffffffe;

private:
  static constexpr std::uint32_t none = 0xffffffff;
  std::vector<std::uint32_t> rows_, places_;
  std::size_t tokens_;
  std::vector<Reading> kept_; // a place stays as they grow, and so does where its `said` lies
};

struct FramesLaid; // talk/frames.cpp
struct Likely;     // talk/evidence.hpp

struct Reader {
  const Sentence& s;
  const Lexicon& lexicon;
  const Names& names;
  units::Instant now;
  std::vector<NearWords> near; // for each token
  bool lenient = false;        // unknown words may be a thing's name: the shop then says that it knows none
  bool thorough =
      false; // phrases that cannot be meant are tried too, for what may be wrong with the sentence
  mutable Trouble trouble{};
  mutable std::size_t name_from = 0, name_to = 0; // what was taken as a name up to a comma, to say so
  mutable Readings readings;
  // Laid out over the frames of the likeliest rows, without and with mistakes in words; made when first asked
  // for.
  mutable std::array<std::shared_ptr<const FramesLaid>, 2> laid{};
  mutable std::shared_ptr<const std::vector<Likely>> ranked{}; // Evidence::rank of the whole sentence

  Reader(const Sentence& sentence, const Lexicon& l, const Names& n, units::Instant t);
  const Token* at(std::size_t i) const { return i < s.tokens.size() ? &s.tokens[i] : nullptr; }
  bool is(std::size_t i, std::string_view word) const { return i < s.tokens.size() && s.tokens[i].is(word); }
  bool any(std::size_t i, std::initializer_list<std::string_view> words) const;
  std::size_t size() const { return s.tokens.size(); }
  // The token that ends at that byte of the flat or the original text; nullopt in the middle of one.
  std::optional<std::size_t> flat_end(std::size_t byte) const;
  std::optional<std::size_t> original_end(std::size_t byte) const;
  std::string_view run(std::size_t i) const; // the original text from token i to the next space
  // A filler that may be left out here.
  bool skippable(std::size_t i) const { return skippable_[i]; }
  // Nothing stands before token i but what may be left out.
  bool leads(std::size_t i) const { return i <= lead_; }
  // The words that token i, or with fillers left out the first behind them, is or may be meant to be.
  WordMask reach(std::size_t i, bool mistyped) const { return mistyped ? reach_[i].meant : reach_[i].said; }
  // The same of token i alone.
  WordMask words_at(std::size_t i, bool mistyped) const { return mistyped ? own_[i].meant : own_[i].said; }
  // The same of all tokens.
  WordMask words(bool mistyped) const { return mistyped ? all_.meant : all_.said; }
  // Whether a word is none that the patterns know, and no common one either: it may be mistyped, or a name.
  bool has_strange() const { return strange_; }
  std::span<const Said> supplier_at(std::size_t i) const; // known_supplier, found once
  std::span<const Said> place_at(std::size_t i) const;    // known_place, found once
  const hours::LocalTime& local() const;                  // now, in the shop's zone, which there must be

private:
  struct Reach {
    WordMask said = WordMask::none(), meant = WordMask::none();
  };
  bool may_skip(std::size_t i) const;
  std::vector<Reach> reach_, own_;
  Reach all_;
  std::vector<bool> skippable_;
  std::size_t lead_ = 0;
  bool strange_ = false;
  mutable std::optional<hours::LocalTime> local_;
  mutable std::vector<std::optional<std::vector<Said>>> suppliers_, places_;
};

// Longest first. `plain`: behind the parameter's own name, where a bare number is an id and a word alone may
// be a value.
std::vector<Said> recognise(const shop::Param& param, std::size_t i, bool plain, const Reader& in);

// Everything by which recognisers tell one parameter from another, as a text: two parameters that have the
// same are read alike. Its number (`Lexicon::add_way`) is the way of `read`.
std::string read_as(const shop::Param& param);
// What a parameter's name says of how it is read. Time: of what has happened, of what is to come, of that
// very day.
struct Tense {
  bool past = false, ahead = false, exact = false;
};
Tense tense_of(const shop::Param& param);
// Text that may hold anything; and one that may be but words like "in".
bool is_prose(const shop::Param& param);
bool takes_fillers(const shop::Param& param);
// The same as `recognise`, but read only once; `way` must be the parameter's. It lives as long as the reader.
std::span<const Said> read(int way, const shop::Param& param, std::size_t i, bool plain, const Reader& in);

// Its parts, one file each.
std::vector<Said> recognise_quantity(const shop::Param& param, std::size_t i,
                                     const Reader& in); // count number length …
std::vector<Said> recognise_slots(const shop::Param& param, std::size_t i, bool plain, const Reader& in);
std::vector<Said> recognise_time(const shop::Param& param, std::size_t i, const Reader& in); // at, day
std::vector<Said> recognise_hours(const shop::Param& param, std::size_t i, bool plain,
                                  const Reader& in); // spans, weekdays
std::vector<Said> recognise_thing(const shop::Param& param, std::size_t i, bool plain, const Reader& in);
std::vector<Said> recognise_piece(const shop::Param& param, std::size_t i, bool plain, const Reader& in);
std::vector<Said> recognise_words(const shop::Param& param, std::size_t i, bool plain, const Reader& in);

std::optional<std::int64_t> whole(const Token* token); // of a token that is a whole number
// A length at token i with its end; a bare number is in the shop's unit.
struct SaidLength {
  units::Length value;
  std::size_t end = 0;
  bool unit_said = false;
};
std::optional<SaidLength> length_at(std::size_t i, const Reader& in);
// "15:00", "3 pm", "noon": seconds of the day, and its end. A bare hour only where `bare`.
struct SaidClock {
  std::int32_t s = 0;
  std::size_t end = 0;
  bool bare = false;   // an hour alone: "2", which may mean either half of the day
  bool halved = false; // with am or pm
  bool padded = false; // "05:00": of the 24 hours
  bool spoken = false; // "half past two", "two o'clock": with minutes or not, of either half of the day
};
std::optional<SaidClock> clock_at(std::size_t i, bool bare, const Reader& in);
// "mm", "inches", "kn": what may stand behind a number as its unit.
bool is_unit_word(std::string_view word);
// "Lindwurm delivered 12 sticks": a sentence begins with a supplier whom the shop knows, by the first words
// of the name, the longest first; not with any words, as where a new one may be said.
std::vector<Said> known_supplier(std::size_t i, const Reader& in);
// "Drawer 2", "the window sill", "the old tin": a place by its noun, with what tells it from others.
std::vector<Said> known_place(std::size_t i, const Reader& in);
// The currency that a word or a sign names, folded ("eur"), of those that a supplier may ask; "" for none.
std::string_view currency_word(std::string_view word);
std::optional<int> weekday_word(std::string_view word); // 0 Monday

} // namespace nutward::talk
