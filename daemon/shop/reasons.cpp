#include "shop/reasons.hpp"

#include "shop/lists.hpp"
#include "shop/machines.hpp"
#include "shop/past.hpp"
#include "shop/rows.hpp"

#include <set>

namespace nutward::shop {

namespace {

std::string of_piece(const Piece& piece, const View& view, const Setup& set) {
  if (!piece.in_tin) return fmt::format("Piece {} is in the tin no more.", piece.id);
  const int raw = raw_ends(piece);
  std::string out = fmt::format("{}: {} raw, {}", named(piece, view, set), plural(raw, "end"),
                                piece.job ? "held for " + held_words(piece) : "held for nobody");
  if (const auto wire = view.wires().find(piece.wire)) {
    const auto wanted = InPlan(*wire, view, set).of(piece, {}, {}, {}).wanted;
    out +=
        wanted.empty() ? "; the cut plan leaves it" : "; the cut plan has it for " + wanted_for_words(wanted);
  }
  return sentence(out + ".");
}

std::string of_job(const Job& job, std::optional<int> slot, const Moment& at, const View& view,
                   const Setup& set) {
  std::string out = named(job);
  out += job.due ? ": due " + at.zone.human(*job.due) : ": no day is promised";
  if (job.state == JobState::open) {
    if (const auto by = press_by(job, view, set, at.calendar, at.zone); by && job.due)
      out += fmt::format(", so pressed by {}", at.zone.human(by->latest));
    out += fmt::format("; {} of {} without a fret", open_slots(job, view, set).size(),
                       plural(std::ssize(job.slots), "slot"));
  }
  if (slot && std::find(job.slots.begin(), job.slots.end(), *slot) != job.slots.end())
    out += fmt::format("; slot {} takes {}", *slot, range_of(need_of(job, *slot, set), set));
  return sentence(out + ".");
}

std::string of_wire(const Wire& wire, const View& view, const Setup& set) {
  const TinSum tin = view.tin().sum(wire.id);
  const Length on_hand = view.wires().on_hand(wire.id);
  const PerRefret each = per_refret(wire.id, view, set);
  std::string out = fmt::format(
      "{}: {} in sticks and coils, about {} of {}{}; {} in the tin", wire.name,
      units::print(on_hand, units::LengthUnit::m),
      plural(each.length.nm > 0 ? std::max<std::int64_t>(0, on_hand.nm / each.length.nm) : 0, "refret"),
      units::print(each.length, units::LengthUnit::m), each.guessed ? " (a guess)" : "",
      plural(tin.pieces + tin.unmeasured, "piece"));
  if (wire.reorder_at)
    out += fmt::format("; low below {}", units::print(*wire.reorder_at, units::LengthUnit::m));
  return sentence(out + ".");
}

std::string of_person(std::int64_t id, const View& view) {
  const auto person = view.house().actor(id);
  if (!person) return "";
  std::int64_t jobs = 0;
  for (const Job& job : view.jobs().open())
    jobs += job.builder == id ? 1 : 0;
  return sentence(fmt::format("{} is person {}, with {}.", person->name, id, plural(jobs, "open job")));
}

std::string of_machine(std::int64_t id, const View& view) {
  const auto machine = machine_at(id, view);
  if (!machine) return "";
  const std::string count = machine->count == 0 ? "as many as are wanted" : std::to_string(machine->count);
  return sentence(
      fmt::format("{}: {} in the shop, {} min to set up.", machine->name, count, machine->setup_s / 60));
}

// One sentence for each thing that the answer, or else the call, is about; none twice.
class Figures {
public:
  Figures(const Moment& at, const View& view) : at_(at), view_(view), set_(setup(view)) {}

  void add(const Call& call) {
    std::optional<int> slot;
    if (const Value* v = call.find("slot"))
      if (const auto* n = std::get_if<std::int64_t>(v)) slot = static_cast<int>(*n);
    for (const auto& [name, value] : call.args) {
      if (const auto* ref = std::get_if<Ref>(&value)) add(*ref, slot);
      if (const auto* node = std::get_if<std::shared_ptr<const Node>>(&value)) add(**node);
    }
  }
  std::string take() { return std::move(text_); }

private:
  void add(const Node& node) {
    for (const Value& item : node.items)
      if (const auto* ref = std::get_if<Ref>(&item)) add(*ref, {});
    if (const Value* wire = node.find("wire"))
      if (const auto* ref = std::get_if<Ref>(wire)) add(*ref, {});
  }

  void add(Ref ref, std::optional<int> slot) {
    if (seen_.size() >= 4 || !seen_.insert(ref).second) return;
    std::string one;
    if (ref.thing == Thing::piece) {
      if (const auto piece = view_.tin().find(ref.id)) one = of_piece(*piece, view_, set_);
    } else if (ref.thing == Thing::job) {
      if (const auto job = view_.jobs().find(ref.id)) one = of_job(*job, slot, at_, view_, set_);
    } else if (ref.thing == Thing::wire) {
      if (const auto wire = view_.wires().find(ref.id)) one = of_wire(*wire, view_, set_);
    } else if (ref.thing == Thing::actor) {
      one = of_person(ref.id, view_);
    } else if (ref.thing == Thing::machine) {
      one = of_machine(ref.id, view_);
    }
    if (!one.empty()) text_ += (text_.empty() ? "" : " ") + one;
  }

  const Moment& at_;
  const View& view_;
  Setup set_;
  std::set<Ref> seen_;
  std::string text_;
};

// Where the report of it stands, or how far the record goes that it was answered from.
std::string where_it_stands(const Answer& answer, const Moment& at, const View& view) {
  if (answer.kind == "done") {
    for (std::int64_t id = view.journal().newest();
         id > std::max<std::int64_t>(0, view.journal().newest() - 50); --id) {
      const auto line = view.journal().line(id);
      if (!line || line->actor != at.who.actor || answer.text.find(line->answer) == std::string::npos)
        continue;
      return fmt::format(
          "It is line {} of the journal, {}{}.", id, at.zone.human(line->recorded),
          line->inverse.empty() ? "" : "; 'undo' takes it back while nothing has touched the same since");
    }
    return "";
  }
  const std::int64_t newest = view.journal().newest();
  const auto line = view.journal().line(newest);
  if (!line) return "Nothing is reported yet: the journal has 0 lines.";
  const auto who = view.house().actor(line->actor);
  return fmt::format("It is by the record up to line {} of the journal, by {}, {}.", newest,
                     who ? who->name : "somebody", at.zone.human(line->recorded));
}

} // namespace

std::string figures_of(const Call& call, const Answer& answer, const Moment& moment, const View& view) {
  Figures figures(moment, view);
  figures.add(answer.about);
  figures.add(call);
  std::string out = figures.take();
  const std::string stands = where_it_stands(answer, moment, view);
  if (out.empty() || answer.kind == "done") out += (out.empty() || stands.empty() ? "" : " ") + stands;
  return out;
}

} // namespace nutward::shop
