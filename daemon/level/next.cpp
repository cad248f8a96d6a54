#include "level/next.hpp"

#include "level/explain.hpp"
#include "level/outcomes.hpp"

#include <algorithm>

namespace nutward::level {

namespace {

// So many frets at a time.
void add_spans(const Lines& lines, std::size_t wide, std::vector<Span>& out) {
  const auto& at = lines.on(Line::middle);
  const std::size_t step = wide > 3 ? wide - 2 : 1;
  for (std::size_t from = 0;; from += step) {
    const bool last = from + wide >= at.size();
    const std::size_t start = last ? at.size() - wide : from;
    out.push_back({at[start].slot, at[start + wide - 1].slot});
    if (last) return;
  }
}

std::vector<Reading> counted(std::span<const Reading> readings, const LineFinding& finding) {
  std::vector<Reading> out;
  out.reserve(finding.counted.size());
  for (const std::size_t i : finding.counted)
    out.push_back(readings[i]);
  return out;
}

// As finely as it would be now.
bool taken(const std::vector<Reading>& readings, const Span& span, Length epsilon) {
  return std::any_of(readings.begin(), readings.end(), [&](const Reading& r) {
    return r.felt != Felt::not_laid && r.span == span && r.epsilon <= epsilon;
  });
}

double cost_of(const Lines& lines, const Span& span, const Plan& plan) {
  const std::size_t frets = *lines.find(span.to) - *lines.find(span.from) + 1;
  return (static_cast<int>(frets) > plan.rocker ? plan.long_edge : 0) + 0.01 * static_cast<double>(frets);
}

struct Best {
  Next next;
  std::size_t worse = 0, sum = 0;
  double cost = 0;
};

bool better(const Best& a, const Best& b) {
  if (a.worse != b.worse) return a.worse < b.worse;
  if (a.sum != b.sum) return a.sum < b.sum;
  return a.cost < b.cost;
}

// Counts what is left of the explanations after either outcome; nullopt where it is no better than `best`, or
// tells nothing: one outcome is certain, or none excludes any.
std::optional<Best> weigh(Outcomes& outcomes, const Lines& lines, Span span, const Plan& plan,
                          const std::optional<Best>& best) {
  Best out;
  out.next.span = span;
  out.next.why = Why::splits;
  out.next.before = outcomes.size();
  out.cost = cost_of(lines, span, plan);
  const std::size_t i = *lines.find(span.from), j = *lines.find(span.to);
  for (std::size_t e = 0; e < outcomes.size(); ++e) {
    const Outcome could = outcomes.of(e, i, j);
    out.next.if_rocks += could.rocks ? 1 : 0;
    out.next.if_steady += could.steady ? 1 : 0;
    out.worse = std::max(out.next.if_rocks, out.next.if_steady);
    if (best && out.worse > best->worse) return std::nullopt;
  }
  out.sum = out.next.if_rocks + out.next.if_steady;
  const auto tells = [&](std::size_t left) { return left > 0 && left < outcomes.size(); };
  if (!tells(out.next.if_rocks) && !tells(out.next.if_steady)) return std::nullopt;
  if (best && !better(out, *best)) return std::nullopt;
  return out;
}

std::optional<Best> best_split(const std::vector<Reading>& readings, const Lines& lines,
                               const LineFinding& finding, const Plan& plan, Length epsilon) {
  Outcomes outcomes(readings, lines, finding, plan.weighed, epsilon);
  const auto& at = lines.on(finding.line);
  std::optional<Best> best;
  for (std::size_t wide = 3; wide <= at.size(); ++wide) {
    for (std::size_t from = 0; from + wide <= at.size(); ++from) {
      const Span span{at[from].slot, at[from + wide - 1].slot};
      if (taken(readings, span, epsilon)) continue;
      if (auto weighed = weigh(outcomes, lines, span, plan, best)) best = weighed;
    }
  }
  if (best) best->next.line = finding.line;
  return best;
}

constexpr std::array in_order{Line::middle, Line::bass, Line::treble};

std::optional<Next> split(std::span<const Reading> readings, const Lines& lines, const Diagnosis& diagnosis,
                          const Plan& plan, Length epsilon) {
  std::vector<const LineFinding*> open;
  for (const Line line : in_order) {
    if (diagnosis.on(line).explanations.size() > 1) open.push_back(&diagnosis.on(line));
  }
  std::stable_sort(open.begin(), open.end(), [](const LineFinding* a, const LineFinding* b) {
    return a->explanations.size() > b->explanations.size();
  });
  for (const LineFinding* finding : open) {
    const auto mine = counted(readings, *finding);
    const auto& crowns = lines.on(finding->line);
    const Span whole{crowns.front().slot, crowns.back().slot};
    if (finding->finding == Finding::bow && !taken(mine, whole, epsilon))
      return Next{finding->line, whole, Why::straight, finding->explanations.size(), 0, 0};
    if (const auto best = best_split(mine, lines, *finding, plan, epsilon)) return best->next;
  }
  return std::nullopt;
}

bool could_show(const Span& span, const LevelCall& call) {
  return std::any_of(call.unseen.begin(), call.unseen.end(), [&](const Unseen& u) {
    const int slot = *u.off.slot;
    const bool inside = slot > span.from && slot < span.to;
    const bool an_end = slot == span.from || slot == span.to;
    return u.off.way == Way::high ? inside : inside || an_end;
  });
}

std::optional<Next> in_sequence(std::span<const Reading> readings, const Lines& lines,
                                const Diagnosis& diagnosis, const Plan& plan, Length epsilon) {
  for (const Line line : in_order) {
    const LineFinding& finding = diagnosis.on(line);
    if (finding.finding != Finding::unread && finding.finding != Finding::level) continue;
    const LevelCall call = level_call(readings, lines, finding, plan);
    const auto spans = still_to_read(readings, lines, finding, call, epsilon);
    if (!spans.empty()) return Next{line, spans.front(), Why::sequence, 0, 0, 0};
  }
  return std::nullopt;
}

} // namespace

std::vector<Span> sequence(const Lines& lines) {
  std::vector<Span> out;
  const std::size_t frets = lines.size();
  for (std::size_t wide = frets; wide > 4; wide = wide / 2 + 1)
    add_spans(lines, wide, out);
  add_spans(lines, 3, out);
  return out;
}

std::optional<Next> next_reading(std::span<const Reading> readings, const Lines& lines,
                                 const Diagnosis& diagnosis, const Plan& plan, Length epsilon) {
  if (const auto next = split(readings, lines, diagnosis, plan, epsilon)) return next;
  return in_sequence(readings, lines, diagnosis, plan, epsilon);
}

LevelCall level_call(std::span<const Reading> readings, const Lines& lines, const LineFinding& finding,
                     const Plan& plan) {
  LevelCall out;
  const Claims claims = claims_of(lines, finding.line, counted(readings, finding));
  Feasible feasible(claims);
  const auto& at = lines.on(finding.line);
  for (std::uint32_t c = 0; c < at.size(); ++c) {
    for (const bool low : {false, true}) {
      const std::array one{Unknown{c, low}};
      const auto most = feasible.extreme(one, 0, true);
      if (!most || *most <= plan.called_level.mm()) continue;
      const bool end_high = !low && (c == 0 || c + 1 == at.size());
      (end_high ? out.ends_high : out.unseen).push_back({{at[c].slot, low ? Way::low : Way::high}, *most});
    }
  }
  out.may_be_called = finding.finding == Finding::level && out.unseen.empty();
  return out;
}

std::vector<Span> still_to_read(std::span<const Reading> readings, const Lines& lines,
                                const LineFinding& finding, const LevelCall& call, Length epsilon) {
  std::vector<Span> out;
  if (finding.finding != Finding::unread && finding.finding != Finding::level) return out;
  const auto mine = counted(readings, finding);
  for (const Span& span : sequence(lines)) {
    if (!taken(mine, span, epsilon) && could_show(span, call)) out.push_back(span);
  }
  return out;
}

} // namespace nutward::level
