#include "shop/leaning.hpp"

#include "shop/setup.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace nutward::shop {

namespace {

constexpr std::array<std::string_view, 5> fitting{"setback", "gap", "dressing_loss", "borderline",
                                                  "trim_limit"};
constexpr std::array<std::string_view, 5> cutting{"setback", "gap", "dressing_loss", "overhang", "nip_loss"};
constexpr std::array<std::string_view, 7> planning{"setback",    "gap",      "dressing_loss", "borderline",
                                                   "trim_limit", "nip_loss", "flat_end"};
constexpr std::array<std::string_view, 7> caring{"setback",    "gap",           "dressing_loss", "borderline",
                                                 "tin_enough", "tin_idle_days", "least_useful"};
constexpr std::array<std::string_view, 9> supplying{"supply_service", "supply_further",    "supply_review",
                                                    "supply_lead",    "supply_guess",      "supply_again",
                                                    "supply_holding", "supply_order_cost", "nip_loss"};
constexpr std::array<std::string_view, 2> rechecking{"recheck_from_h", "recheck_due_h"};
constexpr std::array<std::string_view, 6> levelling{"level_hand", "level_called",   "rarity_high",
                                                    "rarity_low", "rarity_end_low", "rarity_bow"};

struct Leaning {
  std::string_view row;
  std::span<const std::string_view> settings;
};
constexpr std::array leanings{
    Leaning{"fit", fitting},         Leaning{"place", fitting},      Leaning{"shift", fitting},
    Leaning{"all-right", fitting},   Leaning{"use", fitting},        Leaning{"measured", fitting},
    Leaning{"came-short", fitting},  Leaning{"shifted", fitting},    Leaning{"slots", cutting},
    Leaning{"cut-from", cutting},    Leaning{"new-job", cutting},    Leaning{"supply", supplying},
    Leaning{"board-width", cutting}, Leaning{"pressed", rechecking}, Leaning{"due", rechecking},
    Leaning{"cuts", planning},       Leaning{"tin-care", caring},    Leaning{"use-several", fitting},
    Leaning{"level", levelling},     Leaning{"reading", levelling},  Leaning{"lost", fitting},
    Leaning{"remade", cutting},      Leaning{"saved", cutting},      Leaning{"stages", rechecking},
    Leaning{"agenda", rechecking},   Leaning{"promise", rechecking},
};

} // namespace

std::span<const std::string_view> leans_on(std::string_view row) {
  const auto at =
      std::find_if(leanings.begin(), leanings.end(), [&](const Leaning& l) { return l.row == row; });
  return at == leanings.end() ? std::span<const std::string_view>{} : at->settings;
}

std::vector<std::pair<std::string, std::string>> leaned_on(const View& view) {
  std::vector<std::pair<std::string, std::string>> out;
  for (const SettingRow& row : setting_rows()) {
    const bool used = std::any_of(leanings.begin(), leanings.end(), [&](const Leaning& l) {
      return std::find(l.settings.begin(), l.settings.end(), row.name) != l.settings.end();
    });
    if (!used) continue;
    out.emplace_back(row.name, view.house().setting(row.name).value_or(std::string(row.otherwise)));
  }
  return out;
}

std::string words_of_leaning(std::string_view row,
                             std::span<const std::pair<std::string, std::string>> settings) {
  std::vector<std::string> said;
  for (const std::string_view name : leans_on(row)) {
    const auto at =
        std::find_if(settings.begin(), settings.end(), [&](const auto& s) { return s.first == name; });
    if (at != settings.end()) said.push_back(fmt::format("{} {}", name, at->second));
  }
  if (said.empty()) return "";
  return fmt::format(
      "It leans on the shop's settings: {}. Where nobody changed them they are common practice, from "
      "memory; 'help set' tells what each is.",
      fmt::join(said, ", "));
}

} // namespace nutward::shop
