#include "shop/laid.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace nutward::shop {

namespace {

bool is_seated(FretState state) {
  return state != FretState::made && state != FretState::came_short;
}

bool was_nipped(const Job& job, const View& view) {
  const auto stages = view.jobs().stages(job.id);
  return job.board.binding && std::any_of(stages.begin(), stages.end(),
                                          [](const Stage& s) { return s.kind == "nip" && s.finished; });
}

pieces::LaidFret lying(int slot, Length length, const Fret* fret, const board::Need& need, bool nipped) {
  pieces::LaidFret out;
  out.slot = slot;
  out.facts.length = length;
  const bool only_cut = fret != nullptr && fret->state == FretState::made && !fret->piece &&
                        length == need.cut && need.cut != need.target;
  out.facts.raw_ends = only_cut ? 2 : 0;
  if (nipped && need.tang) out.facts.tang = std::min(*need.tang, length);
  out.seated = fret != nullptr && is_seated(fret->state);
  return out;
}

} // namespace

std::vector<SaidLength> said_lengths(const Args& args, const Job& job) {
  const auto lengths = args.many<Length>("lengths");
  auto slots = args.many<std::int64_t>("slots");
  if (slots.empty() && !lengths.empty()) slots.assign(job.slots.begin(), job.slots.end());
  if (slots.size() != lengths.size()) {
    throw Problem(Fault::value,
                  fmt::format("{} and {} do not go together.",
                              plural(static_cast<std::int64_t>(lengths.size()), "length"),
                              plural(static_cast<std::int64_t>(slots.size()), "slot")),
                  "lengths_mm", "Say one length for each slot, in the same order.");
  }
  std::vector<SaidLength> out;
  std::set<std::int64_t> seen;
  for (std::size_t i = 0; i < slots.size(); ++i) {
    const int slot = static_cast<int>(slots[i]);
    if (std::find(job.slots.begin(), job.slots.end(), slot) == job.slots.end()) {
      throw Problem(Fault::value, fmt::format("{} gets no fret in slot {}.", named(job), slot), "slots",
                    fmt::format("Its slots are {}.", ranges(job.slots)));
    }
    if (!seen.insert(slot).second) {
      throw Problem(Fault::value, fmt::format("Slot {} was said twice.", slot), "slots",
                    "Say each fret once.");
    }
    out.emplace_back(slot, lengths[i]);
  }
  return out;
}

Laid laid(const Job& job, const std::vector<SaidLength>& said, bool open, const View& view,
          const Setup& setup) {
  const auto frets = view.jobs().frets(job.id);
  const auto held = view.tin().held_for(job.id);
  const bool nipped = was_nipped(job, view);
  Laid out;
  for (const int slot : job.slots) {
    const auto fret = std::find_if(frets.begin(), frets.end(), [&](const Fret& f) { return f.slot == slot; });
    const bool had = fret != frets.end();
    const Fret* there = had && fret->state != FretState::came_short ? &*fret : nullptr;
    const auto word =
        std::find_if(said.begin(), said.end(), [&](const SaidLength& s) { return s.first == slot; });
    std::optional<Length> length = there != nullptr ? there->length : std::nullopt;
    if (word != said.end()) length = word->second;
    if (there != nullptr && !length) {
      out.unmeasured.push_back(slot);
      continue;
    }
    if (!length && !had && !open) continue;
    const bool serves =
        std::any_of(held.begin(), held.end(), [&](const Piece& p) { return held_for(p, slot); });
    if (!length && serves) {
      out.served.push_back(slot);
      continue;
    }
    pieces::Wanted wanted = wanted_for(job, slot, view, setup);
    if (length) out.frets.push_back(lying(slot, *length, there, wanted.need, nipped));
    out.slots.push_back({slot, std::move(wanted)});
  }
  return out;
}

TinPart tin_for(const std::vector<pieces::ShiftSlot>& slots, const Job& job, const View& view,
                const Setup& setup, std::size_t most) {
  TinPart out;
  if (slots.empty()) return out;
  Length shortest = slots.front().wanted.need.least, longest;
  for (const pieces::ShiftSlot& s : slots) {
    shortest = std::min(shortest, s.wanted.need.least);
    longest = std::max(longest, s.wanted.need.cut + setup.fit.trim_limit);
  }
  const TinSource tin(view, job.wire, std::nullopt, std::nullopt);
  for (int raw = 0; raw <= 2; ++raw) {
    const pieces::Walk walk{.raw_ends = raw,
                            .shortest = shortest,
                            .longest = longest,
                            .lot = {},
                            .crown_from = {},
                            .crown_to = {}};
    std::optional<pieces::Mark> after;
    while (true) {
      const auto page = tin.page(walk, after, 256);
      for (const pieces::PieceFacts& piece : page) {
        if (out.pieces.size() == most) {
          out.all = false;
          return out;
        }
        out.pieces.push_back(piece);
      }
      if (page.size() < 256) break;
      after = pieces::Mark{page.back().length, page.back().added, page.back().id};
    }
  }
  return out;
}

} // namespace nutward::shop
