// The words under which the enumerations of the model are stored. They reach the disk: never change or reuse
// one.
#pragma once

#include "shop/model.hpp"

#include <span>
#include <string_view>

namespace nutward::store {

template <class E>
struct Words; // `all`, in the order of the enumerators, which count up from 0

#define NUTWARD_STORE_WORDS(Enum, ...)                                                                       \
  template <>                                                                                                \
  struct Words<Enum> {                                                                                       \
    static constexpr std::string_view all[] = {__VA_ARGS__};                                                 \
  }

NUTWARD_STORE_WORDS(shop::Form, "stick", "coil");
NUTWARD_STORE_WORDS(pieces::Kind, "short_fret", "stick_end", "pulled_fret");
NUTWARD_STORE_WORDS(shop::Measured, "straight", "across", "not_at_all");
NUTWARD_STORE_WORDS(shop::End, "raw", "dressed", "unknown");
NUTWARD_STORE_WORDS(shop::JobKind, "refret", "some_slots", "new_board");
NUTWARD_STORE_WORDS(shop::JobState, "open", "done", "cancelled");
NUTWARD_STORE_WORDS(board::EndStyle, "rounded", "filed");
NUTWARD_STORE_WORDS(shop::FretState, "made", "came_short", "seated", "pressed", "sprang", "level");
NUTWARD_STORE_WORDS(shop::RecheckState, "waiting", "level", "sprang", "superseded");
NUTWARD_STORE_WORDS(level::Line, "bass", "middle", "treble");
NUTWARD_STORE_WORDS(level::Felt, "steady", "rocks", "not_laid");
NUTWARD_STORE_WORDS(level::Held, "nutward", "bodyward");
NUTWARD_STORE_WORDS(level::Gap, "not_asked", "none", "some");
NUTWARD_STORE_WORDS(level::Cause, "not_asked", "nothing_found", "slot_shallow", "slot_dirty", "tang_bottoms",
                    "wire_misbent", "slot_loose");
NUTWARD_STORE_WORDS(shop::PurchaseState, "open", "arrived", "cancelled");
NUTWARD_STORE_WORDS(shop::Shape, "event", "cloudevents", "text");
NUTWARD_STORE_WORDS(shop::Place, "outside", "stock", "tin", "board", "scrap", "kerf");
NUTWARD_STORE_WORDS(shop::MovementKind, "received", "cut", "made_a_piece", "used_in_a_slot", "scrapped",
                    "counted", "corrected", "lost");

#undef NUTWARD_STORE_WORDS

enum class RoleWord { look, bench, lead }; // shop::Role, which Actor holds as a number
template <>
struct Words<RoleWord> {
  static constexpr std::string_view all[] = {"look", "bench", "lead"};
};

template <class E>
std::string_view word(E value) {
  return std::span(Words<E>::all)[static_cast<std::size_t>(value)];
}

} // namespace nutward::store
