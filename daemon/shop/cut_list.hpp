// The bench's cut list: the part of a wire's plan that one job (or the whole wire) is cut by, source by
// source, with the mark to set on the rule for each cut and what goes into the tin afterwards.
#pragma once

#include "draw/cut_card.hpp"
#include "shop/cut_words.hpp"

#include <optional>
#include <string>
#include <vector>

namespace nutward::shop {

struct ListedFret {
  std::int64_t job = 0;
  int slot = 0;
  Length length;              // of wire that comes off the source
  std::optional<Length> mark; // on the rule, from the end where cutting begins; nullopt: no cut
  Length finish;              // of the fret
  std::string then;           // "dress both ends, to 52.10 mm"
  bool other = false;         // of another job than the list is for
};

struct ListedSource {
  cutting::From from = cutting::From::piece;
  std::string kind;        // "piece", "stick", "blank" or "coil"
  std::int64_t id = 0;     // the piece's, or the delivery's; 0: of no known delivery
  std::int64_t number = 0; // of new wire: the how manieth of its delivery that the wire's plan takes
  std::string name;        // "stick 1 of lot 2, 600.00 mm"
  std::string place;       // of a piece
  bool held = false;
  Length whole, begin, kerf, scrap, left; // as of Sawn
  std::string left_goes;                  // "drawer 2", "the coil"; "" where nothing is left
  std::vector<ListedFret> frets;          // in the order of cutting
  std::vector<Hazard> hazards;
};

struct CutList {
  WirePlan wire;
  std::optional<Job> job;            // nullopt: the whole wire
  std::vector<ListedSource> sources; // by the first slot of the job in each
  struct Without {
    std::int64_t job = 0;
    int slot = 0;
    cutting::Why why{};
  };
  std::vector<Without> without; // slots that get no fret
};

// By the plan of the wire's open jobs together, as plan_of() gives it: a source that other jobs share is
// whole. Slots of a job that are over `most_slots` are in no plan; see ToCut::waiting.
CutList cut_list(const Wire& wire, const std::optional<Job>& job, const View& view, const Setup& setup);

// In words, as a table, drawn, and in figures.
Answer answer_of(const CutList& list, const Moment& moment, const View& view, const Setup& setup);
std::vector<Give> cut_list_gives();

} // namespace nutward::shop
