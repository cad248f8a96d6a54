#include "wire/mass.hpp"

#include <fmt/core.h>

#include <array>
#include <cctype>
#include <cmath>
#include <string>

namespace nutward::wire {

namespace {

constexpr std::array table{
    Density{"C77000", "", 8.70, "Olin data sheet"},
    Density{"C75200", "nickel silver, nickel-silver, german silver", 8.73,
            "CDA, from memory; ASTM B206 has it among the alloys of nickel silver wire"},
    Density{"C26000", "brass", 8.53, "Olin data sheet"},
    Density{"C51000", "phosphor bronze, bronze", 8.86, "Olin data sheet"},
    Density{"304", "1.4301, stainless, steel", 7.9, "EN 10088-3"},
    Density{"316", "1.4401", 8.0, "EN 10088-3"},
};

std::string lower(std::string_view text) {
  std::string out{text};
  for (char& c : out)
    c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return out;
}

bool word_in(const std::string& text, const std::string& word) {
  auto letter = [&](std::size_t i) {
    return i < text.size() && std::isalnum(static_cast<unsigned char>(text[i])) != 0;
  };
  for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
    if ((at == 0 || !letter(at - 1)) && !letter(at + word.size())) return true;
  }
  return false;
}

// Alloy numbers count before the bench's words: they say more.
std::size_t weight(const std::string& text, const Density& d) {
  if (word_in(text, lower(d.name))) return 1000;
  std::size_t best = 0;
  for (std::size_t from = 0; from < d.trade.size();) {
    const std::size_t comma = std::min(d.trade.find(", ", from), d.trade.size());
    const std::string word{d.trade.substr(from, comma - from)};
    if (word_in(text, word)) best = std::max(best, word[0] == '1' ? 1000 : word.size());
    from = comma + 2;
  }
  return best;
}

double squares(double a, double b) {
  return std::sqrt(a * a + b * b);
}

} // namespace

std::span<const Density> densities() {
  return table;
}

const Density* density_of(std::string_view material) {
  const std::string text = lower(material);
  const Density* out = nullptr;
  std::size_t best = 0;
  for (const Density& d : table) {
    const std::size_t w = weight(text, d);
    if (w > best) out = &d, best = w;
  }
  return out;
}

double segment_area_mm2(Length chord, Length height) {
  const double half = chord.mm() / 2, h = height.mm();
  const double r = (half * half + h * h) / (2 * h);
  // atan2 keeps its digits where the segment is flat, and past a half circle.
  const double angle = 2 * std::atan2(half, r - h);
  return r * r * (angle - std::sin(angle)) / 2;
}

std::optional<double> area_mm2(const Profile& p) {
  if (!p.crown_width || !p.crown_height || !p.tang_depth || !p.tang_thickness) return std::nullopt;
  return segment_area_mm2(*p.crown_width, *p.crown_height) + p.tang_depth->mm() * p.tang_thickness->mm();
}

Length length_of(Mass mass, double g_per_cm3, double area) {
  return units::from_mm(static_cast<double>(mass.mg) / (g_per_cm3 * area));
}

Mass mass_of(Length length, double g_per_cm3, double area) {
  return {std::llround(length.mm() * g_per_cm3 * area)};
}

std::optional<Linear> by_profile(const Profile& profile, std::optional<double> g_per_cm3) {
  const auto area = area_mm2(profile);
  if (!area || !g_per_cm3) return std::nullopt;
  return Linear{*area * *g_per_cm3, profile_error}; // mm² · mg/mm³ = mg/mm = g/m
}

Linear calibrated(Length length, Mass mass, Mass division) {
  const Linear out{mass.g() / (length.mm() / 1000),
                   squares(ruler.mm() / length.mm(), division.g() / mass.g())};
  if (out.error > 0.25) {
    throw BadProfile("mass", fmt::format("That tells no more than within {:.0f} %.", out.error * 100),
                     "Weigh a longer piece, or on a finer scale.");
  }
  if (out.g_per_m < 2 || out.g_per_m > 100) {
    throw BadProfile("mass", fmt::format("A metre of fret wire does not weigh {:.4g} g.", out.g_per_m),
                     "Check the length and the unit of the mass: from 2 to 100 g a metre would do.");
  }
  return out;
}

Weighed weighed(Mass net, const Linear& linear, Mass division) {
  const double mm = net.g() / linear.g_per_m * 1000;
  return {units::from_mm(mm), units::from_mm(mm * squares(linear.error, division.g() / net.g()))};
}

} // namespace nutward::wire
