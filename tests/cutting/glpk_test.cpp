// Small plans against a general-purpose solver: GLPK's, run as a program, which knows nothing of cutting. It
// is given every set of slots that each source can serve, with what that costs, and chooses among them, one
// objective after the other. Ten plans go into one model, since nothing binds them together.
#include "cutting/cases.hpp"

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <unistd.h>

using namespace cases;

namespace {

constexpr int levels = 5; // service, sticks, taken, scrap, cuts

// One set for one source. What is served counts negative, so that every objective is to be made small.
struct Choice {
  std::size_t plan = 0;
  cutting::Source source;
  std::vector<std::size_t> slots;
  std::array<std::int64_t, levels> price{};
};

struct Model {
  std::vector<Problem> plans;
  std::vector<Choice> choices;
  std::vector<std::array<std::int64_t, levels>> reached; // by plan
};

// 64, 8 and 1 for the three ranks: never more than seven slots of one.
std::int64_t service(const Problem& p, const std::vector<std::size_t>& slots) {
  std::int64_t out = 0;
  for (const std::size_t s : slots)
    out -= std::int64_t{1} << (6 - 3 * p.slots[s].due);
  return out;
}

void add_choices(Model& model, std::size_t plan) {
  const Problem& p = model.plans[plan];
  std::vector<cutting::Source> sources = units_of_supply(p);
  sources.erase(std::unique(sources.begin(), sources.end()), sources.end());
  for (const cutting::Source& source : sources)
    for (std::uint32_t set = 1; set < 1U << p.slots.size(); ++set) {
      std::vector<std::size_t> slots;
      for (std::size_t i = 0; i < p.slots.size(); ++i)
        if ((set >> i & 1U) != 0) slots.push_back(i);
      const auto found = figures(p, source, slots);
      if (!found) continue;
      // In tenths of a millimetre, which all lengths here are whole numbers of.
      model.choices.push_back(
          {plan,
           source,
           slots,
           {service(p, slots), (*found)[0], (*found)[1] / 100'000, (*found)[2] / 100'000, (*found)[3]}});
    }
}

void write_sum(std::ostream& out, const std::vector<std::pair<std::int64_t, std::size_t>>& terms) {
  int n = 0;
  for (const auto& [by, choice] : terms)
    out << (by < 0 ? " - " : " + ") << std::abs(by) << " x" << choice << (++n % 10 == 0 ? "\n" : "");
}

void write_row(std::ostream& out, const std::vector<std::pair<std::int64_t, std::size_t>>& terms,
               std::int64_t most) {
  if (terms.empty()) return;
  write_sum(out, terms);
  out << " <= " << most << "\n";
}

void write_rows(std::ostream& out, const Model& model, std::size_t plan, int level) {
  const Problem& p = model.plans[plan];
  std::vector<std::vector<std::pair<std::int64_t, std::size_t>>> slots(p.slots.size()),
      pieces(p.pieces.size()), stock(p.stock.size()), before(static_cast<std::size_t>(level));
  for (std::size_t i = 0; i < model.choices.size(); ++i) {
    const Choice& c = model.choices[i];
    if (c.plan != plan) continue;
    (c.source.from == From::piece ? pieces : stock)[c.source.index].emplace_back(1, i);
    for (const std::size_t s : c.slots)
      slots[s].emplace_back(1, i);
    for (std::size_t k = 0; k < before.size(); ++k)
      before[k].emplace_back(c.price[k], i);
  }
  for (const auto* rows : {&slots, &pieces})
    for (const auto& row : *rows)
      write_row(out, row, 1);
  for (std::size_t i = 0; i < stock.size(); ++i)
    write_row(out, stock[i], p.stock[i].count);
  for (std::size_t k = 0; k < before.size(); ++k)
    write_row(out, before[k], model.reached[plan][k]);
}

void write_model(const std::filesystem::path& file, const Model& model, int level) {
  std::ofstream out(file);
  out << "Minimize\n cost:";
  std::vector<std::pair<std::int64_t, std::size_t>> all;
  for (std::size_t i = 0; i < model.choices.size(); ++i)
    all.emplace_back(model.choices[i].price[static_cast<std::size_t>(level)], i);
  write_sum(out, all);
  out << "\nSubject To\n";
  for (std::size_t plan = 0; plan < model.plans.size(); ++plan)
    write_rows(out, model, plan, level);
  out << "General\n";
  for (std::size_t i = 0; i < model.choices.size(); ++i)
    out << " x" << i << "\n";
  out << "End\n";
}

// Columns of GLPK's own solution format: "j NUMBER VALUE", in the order in which the objective names them.
void read_solution(const std::filesystem::path& file, Model& model, int level) {
  std::ifstream in(file);
  REQUIRE(in);
  std::size_t columns = 0;
  for (auto& reached : model.reached)
    reached[static_cast<std::size_t>(level)] = 0;
  for (std::string line; std::getline(in, line);) {
    std::istringstream words(line);
    std::string kind;
    std::size_t number = 0;
    double value = 0;
    words >> kind >> number >> value;
    if (kind == "s") REQUIRE(line.find(" o ") != std::string::npos); // optimal
    if (kind != "j") continue;
    ++columns;
    const Choice& c = model.choices.at(number - 1);
    model.reached[c.plan][static_cast<std::size_t>(level)] +=
        c.price[static_cast<std::size_t>(level)] * std::llround(value);
  }
  REQUIRE(columns == model.choices.size());
}

std::array<std::int64_t, levels> figures_of(const Problem& p, const cutting::Plan& plan) {
  std::vector<std::size_t> served;
  for (const auto& use : plan.uses)
    for (const auto& fret : use.frets)
      served.push_back(fret.slot);
  const Cost& c = plan.cost;
  return {service(p, served), c.sticks, c.taken.nm / 100'000, c.scrap.nm / 100'000, c.cuts};
}

} // namespace

TEST_CASE("two hundred random plans are as good as a general solver's, objective for objective") {
  if (std::system("command -v glpsol >/dev/null 2>&1") != 0) {
    WARN("SKIPPED: there is no glpsol here (Debian: glpk-utils)");
    return;
  }
  const auto folder = std::filesystem::temp_directory_path() / ("nutward-glpk-" + std::to_string(::getpid()));
  std::filesystem::create_directory(folder);
  std::mt19937 random(11);
  for (int batch = 0; batch < 20; ++batch) {
    Model model;
    for (std::size_t i = 0; i < 10; ++i) {
      model.plans.push_back(random_problem(random, 7, 4));
      add_choices(model, i);
    }
    model.reached.resize(model.plans.size());
    for (int level = 0; level < levels; ++level) {
      write_model(folder / "plan.lp", model, level);
      const std::string run = "glpsol --lp " + (folder / "plan.lp").string() + " -w " +
                              (folder / "plan.sol").string() + " >/dev/null 2>&1";
      REQUIRE(std::system(run.c_str()) == 0);
      read_solution(folder / "plan.sol", model, level);
    }
    for (std::size_t i = 0; i < model.plans.size(); ++i) {
      CAPTURE(batch, i);
      CHECK(figures_of(model.plans[i], cutting::plan(model.plans[i], {})) == model.reached[i]);
    }
  }
  std::filesystem::remove_all(folder);
}
