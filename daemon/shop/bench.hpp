// Between the shop's state and the bench's pure code: what several questions and commands need.
#pragma once

#include "agenda/stages.hpp"
#include "pieces/fit.hpp"
#include "pieces/place.hpp"
#include "shop/bind.hpp"
#include "shop/setup.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

// "job 12 (octave mandolin of Ines)".
std::string named(const Job& job);
// "the 52.40 mm short fret of medium (piece 41, drawer 2)".
std::string named(const Piece& piece, const View& view, const Setup& setup);
std::string plural(std::int64_t n, std::string_view one, std::string_view many = ""); // "1 fret", "3 frets"
std::string ranges(const std::vector<int>& slots);                                    // "1-9, 11, 13-22"

// Throw Problem where the id is unknown, or the job is not open.
Job job_of(const Args& args, const View& view, bool must_be_open = true);
Wire wire_of(const View& view, std::int64_t id);
Piece piece_of(const Args& args, const View& view,
               std::string_view param = "piece"); // one that is in the tin
// Who touched a thing last: "Ines", or "somebody" before anybody did.
std::string last_hand(Ref ref, const View& view);
// Whether a piece that is held for a job is held for this slot of it; not one held for the job as a whole.
bool held_for(const Piece& piece, int slot);
std::vector<int>
held_slots(const Piece& piece);             // in the order of cutting; empty: the job as a whole, or free
std::string held_words(const Piece& piece); // "job 8, slots 3 and 5", "job 8", "" for a free one
void unhold(Piece& piece);                  // holds it for nobody any more
// The new wire that is set aside for an open job: cut and nip of each slot of it that is still open and that
// no held piece serves. Of a wire: of all its open jobs.
Length set_aside(const Job& job, const View& view, const Setup& setup);
Length set_aside(std::int64_t wire, const View& view, const Setup& setup);
// The slots that it is for, ascending.
std::vector<int> set_aside_slots(const Job& job, const View& view, const Setup& setup);
// Throws Problem{state} that says for whom the piece is held, and by whom.
[[noreturn]] void refuse_held(const Piece& piece, const View& view, const Setup& setup);
int slot_of(const Args& args,
            const Job& job); // one of the job's slots; throws Problem{value} with what it has

// The need of a slot, by the job's board and the shop's settings.
board::Need need_of(const Job& job, int slot, const Setup& setup);
struct SlotNeed {
  int slot = 0;
  board::Need need;
};
// Slots of the job that have no fret yet, or one that came out short; ascending.
std::vector<SlotNeed> open_slots(const Job& job, const View& view, const Setup& setup);
// Those of them that no piece held for the job serves.
std::vector<SlotNeed> unserved_slots(const Job& job, const View& view, const Setup& setup);
// All of them, of every open job of a wire, as pieces::place wants them.
std::vector<pieces::OpenSlot> open_slots(std::int64_t wire, const View& view, const Setup& setup);
// What is worth keeping of a wire: the shortest raw length that makes a fret of any job on record, whatever
// its state; the shop's setting where the wire has had no job (`guessed`).
struct LeastUseful {
  Length length;
  bool guessed = false;
};
LeastUseful least_useful(std::int64_t wire, const View& view, const Setup& setup);
// "the 12.00 mm left are scrap: no job on record needs less than 36.00 mm".
std::string scrap_rule(Length rest, const LeastUseful& least, const Setup& setup);

// The crown of the job's other frets, where it says which lot they are of and that was measured.
std::optional<Length> crown_of(const Job& job, const View& view);
pieces::Wanted wanted_for(const Job& job, int slot, const View& view, const Setup& setup);
// A lot of the wire; throws Problem{value} at `lot` where there is no such lot or it is of another wire.
Lot lot_of(std::int64_t id, std::int64_t wire, const View& view);

pieces::PieceFacts facts_of(const Piece& piece, const View& view); // of a measured one
int raw_ends(const Piece& piece);

// The tin of one wire as the bench walks it, for a slot of a job.
class TinSource : public pieces::Source {
public:
  TinSource(const View& view, std::int64_t wire, std::optional<std::int64_t> job, std::optional<int> slot)
      : view_(view), wire_(wire), job_(job), slot_(slot) {}
  std::vector<pieces::PieceFacts> page(const pieces::Walk& walk, const std::optional<pieces::Mark>& after,
                                       std::size_t at_most) const override {
    return view_.tin().page(wire_, walk, after, at_most, job_, slot_);
  }

private:
  const View& view_;
  std::int64_t wire_;
  std::optional<std::int64_t> job_;
  std::optional<int> slot_;
};

// The stages that this job goes through, with the times that the shop takes for them.
std::vector<agenda::Stage> stages_of(const Job& job, const View& view, const Setup& setup);
// The last press time that still meets the due day, and when to speak of it; nullopt without a due day,
// without open hours, or when the press stage has been reported already.
struct PressBy {
  Instant latest, remind;
};
std::optional<PressBy> press_by(const Job& job, const View& view, const Setup& setup,
                                const hours::Calendar& calendar, const hours::Zone& zone);

// What one refret takes: the mean over the open jobs of the wire, or 22 frets of 56 mm where there is none (a
// guess, and `guessed` says so).
struct PerRefret {
  Length length;
  bool guessed = false;
};
PerRefret per_refret(std::int64_t wire, const View& view, const Setup& setup);

Touched seen(Ref ref, const View& view);

} // namespace nutward::shop
