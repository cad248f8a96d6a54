// Suppliers: what they sell at once, how little they deliver, how long they say that they take.
#include "shop/purchases.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::command_rows {

namespace {

// One of the three ways to say an amount, as parameters of a row.
struct Named3 {
  std::string_view sticks, length, mass;
};
constexpr Named3 of_pack{"pack", "pack_length", "pack_mass"};
constexpr Named3 of_minimum{"minimum", "minimum_length", "minimum_mass"};

// Puts what was said into `amount`; what was not said stays.
void read_amount(const Args& args, const Named3& names, Amount& amount) {
  const int said = static_cast<int>(args.has(names.sticks)) + static_cast<int>(args.has(names.length)) +
                   static_cast<int>(args.has(names.mass));
  if (said == 0) return;
  if (said > 1) {
    throw Problem(
        Fault::value, fmt::format("A {} is either so many sticks, a length or a mass.", names.sticks),
        std::string(names.sticks), fmt::format("Say one of them, such as: {} 12 sticks.", names.sticks));
  }
  amount = {args.opt<std::int64_t>(names.sticks), args.opt<Length>(names.length), args.opt<Mass>(names.mass)};
}

std::optional<int> lead_said(const Args& args) {
  if (args.has("lead_days") && args.has("lead_weeks")) {
    throw Problem(Fault::value, "Days and weeks cannot both be the lead time.", "lead_days",
                  "Say one of them, such as: 10 days.");
  }
  const auto weeks = args.opt<std::int64_t>("lead_weeks");
  const auto days = weeks ? std::optional(*weeks * 7) : args.opt<std::int64_t>("lead_days");
  if (!days) return std::nullopt;
  if (*days >= 365) {
    throw Problem(
        Fault::value, fmt::format("{} is a year or more: nobody can plan with that.", plural(*days, "day")),
        weeks ? "lead_weeks" : "lead_days", "Say from order to arrival, such as: 10 days, or 3 weeks.");
  }
  return static_cast<int>(*days);
}

std::string why_zero_days(const Args& args, const Moment&, const View&) {
  if (lead_said(args) != 0) return "";
  return "A lead time of 0 days means that wire is there on the day it is ordered, so that none is ever "
         "ordered ahead. Is it?";
}

std::string terms_words(const Supplier& s, const Setup& set) {
  return fmt::format("packs of {}, at least {}, {} from order to arrival", words_of(s.pack, set),
                     words_of(s.minimum, set),
                     s.lead_days ? plural(*s.lead_days, "day") : std::string("nobody said how long"));
}

Effect kept(Supplier s, std::string text, Tx& tx) {
  s.id = tx.put(s);
  Effect out;
  out.answer.text = std::move(text);
  out.answer.reason = sentence(fmt::format("{}.", terms_words(s, setup(tx))));
  out.answer.data = record({{"supplier", s.id}, {"name", s.name}});
  out.answer.about.args = {{"supplier", s.name}};
  return out;
}

void refuse_taken(std::string_view name, std::int64_t but, const View& view) {
  const auto other = supplier_called(name, view);
  if (!other || other->id == but) return;
  throw Problem(Fault::state, fmt::format("There is a supplier called {} already.", other->name), "name",
                fmt::format("Take another name, or change that one: supplier {} takes 5 days.", other->name));
}

Effect define_supplier(const Args& args, const Moment&, Tx& tx) {
  Supplier s;
  s.name = args.text("name");
  refuse_taken(s.name, 0, tx);
  read_amount(args, of_pack, s.pack);
  read_amount(args, of_minimum, s.minimum);
  s.lead_days = lead_said(args);
  s.note = args.text("note");
  std::string text = fmt::format("{} is a supplier of the shop now.", s.name);
  return kept(std::move(s), std::move(text), tx);
}

Supplier meant_by(const Args& args, const View& view) {
  if (auto s = supplier_meant(args.text("supplier"), args.call(), "supplier", view)) return *s;
  throw Problem(
      Fault::value, fmt::format("No supplier is called '{}'.", args.text("supplier")), "supplier",
      fmt::format("Ask for 'suppliers' to see them, or say: new supplier {}.", args.text("supplier")));
}

Effect change_supplier(const Args& args, const Moment&, Tx& tx) {
  Supplier s = meant_by(args, tx);
  if (args.has("name")) refuse_taken(s.name = args.text("name"), s.id, tx);
  if (args.yes("any_pack")) s.pack = {};
  if (args.yes("any_amount")) s.minimum = {};
  read_amount(args, of_pack, s.pack);
  read_amount(args, of_minimum, s.minimum);
  if (const auto days = lead_said(args)) s.lead_days = days;
  if (args.has("note")) s.note = args.text("note");
  std::string text = fmt::format("{}: {}.", s.name, terms_words(s, setup(tx)));
  Effect out = kept(std::move(s), std::move(text), tx);
  out.answer.reason.clear();
  return out;
}

Effect drop_supplier(const Args& args, const Moment&, Tx& tx) {
  const Supplier s = meant_by(args, tx);
  for (const Purchase& p : tx.purchases().open()) {
    if (p.supplier != s.id) continue;
    throw Problem(Fault::state, fmt::format("{} still owes {}.", s.name, named(p, tx, setup(tx))), "supplier",
                  fmt::format("Say that it came, or: cancel order {}.", p.id));
  }
  tx.drop({Thing::supplier, s.id});
  Effect out;
  out.answer.text = fmt::format("{} is no supplier of the shop any more.", s.name);
  out.answer.data = record({{"supplier", s.id}, {"name", s.name}});
  return out;
}

const std::vector<Give> given{{"supplier", Kind::count, "its number"},
                              {"name", Kind::name, "what the shop calls it"}};

std::vector<Param> with_terms(std::vector<Param> first) {
  const Bounds many{1, 10000}, mm{1, 1e7}, g{1, 1e6};
  const std::vector<Param> rest{
      {"pack", Kind::count, false, false, "sold in packs of so many sticks or coils", many},
      {"pack_length", Kind::length, false, false, "or in so much of it", mm},
      {"pack_mass", Kind::mass, false, false, "or in so much of it", g},
      {"minimum", Kind::count, false, false, "sticks or coils in one order, at least", many},
      {"minimum_length", Kind::length, false, false, "or so much of it", mm},
      {"minimum_mass", Kind::mass, false, false, "or so much of it", g},
      {"lead_days",
       Kind::count,
       false,
       false,
       "calendar days from order to arrival, as they say",
       {0, 100000}},
      {"lead_weeks", Kind::count, false, false, "or weeks", {0, 10000}},
      takes::note};
  first.insert(first.end(), rest.begin(), rest.end());
  return first;
}

} // namespace

extern const Command define_supplier_row;
const Command define_supplier_row{
    {"define-supplier",
     "Adds a supplier of wire: what they sell at once, how little, how long they take.",
     with_terms({{"name", Kind::name, true, false, "what the shop calls them"}}),
     {("(new|add [a]|define [a]) supplier [called] {name} <packs [of] {pack} [sticks|coils]|packs [of] "
       "{pack_length}|packs [of] {pack_mass}|minimum [of] {minimum} [sticks|coils]|minimum [of] "
       "{minimum_length}|minimum [of] {minimum_mass}|{lead_days} days|{lead_weeks} weeks|lead [time] [of] "
       "{lead_days} days|lead [time] [of] {lead_weeks} weeks|takes {lead_days} days|takes {lead_weeks} "
       "weeks>"),
      "(new|add [a]|define [a]) supplier [called] {name}",
      "we [can] order from {name} [from now on|now|too]"},
     {"new supplier Old Mill Wire, packs of 12 sticks, minimum 24 sticks, 5 days",
      "new supplier Old Mill Wire"},
     Role::bench,
     given},
    &define_supplier,
    &why_zero_days};

extern const Command change_supplier_row;
const Command change_supplier_row{
    {"change-supplier",
     "Changes what a supplier sells at once, how little, how long they take, or their name.",
     with_terms({{"supplier", Kind::words, true, false, "by name, or a part of it that only one has"},
                 {"name", Kind::name, false, false, "what the shop calls them from now on"},
                 {"any_pack", Kind::yes, false, false, "they sell any amount"},
                 {"any_amount", Kind::yes, false, false, "they have no minimum"}}),
     {("supplier {supplier} <packs [of] {pack} [sticks|coils]|packs [of] {pack_length}|packs [of] "
       "{pack_mass}|minimum [of] {minimum} [sticks|coils]|minimum [of] {minimum_length}|minimum [of] "
       "{minimum_mass}|{lead_days} days|{lead_weeks} weeks|lead [time] [of] {lead_days} days|lead [time] "
       "[of] "
       "{lead_weeks} weeks|takes {lead_days} days|takes {lead_weeks} weeks>"),
      "supplier {supplier} (sells|delivers|ships) [wire] [only] [in] packs of {pack} [sticks|coils]",
      "supplier {supplier} (sells|delivers|ships) [wire] [only] [in] packs of {pack_length}",
      "supplier {supplier} (sells|delivers|ships) [wire] [only] [in] packs of {pack_mass}",
      "[the] packs (of|from|at) {supplier} (hold|are) {pack} [sticks|coils]",
      "[the] minimum (of|from|at) {supplier} is {minimum} [sticks|coils]",
      "[the] minimum (of|from|at) {supplier} is {minimum_length}",
      "[the] minimum (of|from|at) {supplier} is {minimum_mass}",
      "[the] lead [time] (of|from|at) {supplier} is {lead_days} [days]",
      "[the] lead [time] (of|from|at) {supplier} is a {lead_days=365} year",
      "{supplier} (takes|needs) {lead_days} days [to deliver] [now]",
      "{supplier} (takes|needs) {lead_weeks} weeks [to deliver] [now]",
      "{supplier} (sells|delivers|ships) [wire] [only] [in] packs of {pack} [sticks|coils]",
      "[the] lead [time] (of|from|at) {supplier} is {lead_weeks} weeks",
      "wire from {supplier} takes {lead_days} days",
      "supplier {supplier} (sells|delivers) {any_pack=yes} any (amount|length|number)",
      "supplier {supplier} has {any_amount=yes} no minimum", "supplier {supplier} is called {name} [now]"},
     {"the lead time of Lindwurm is 8 days", "the minimum at Ferro is 2 coils",
      "supplier Ferro sells packs of 5 m"},
     Role::bench,
     given},
    &change_supplier,
    &why_zero_days};

extern const Command drop_supplier_row;
const Command drop_supplier_row{
    {"drop-supplier",
     "Takes a supplier away that nothing is ordered from any more; what they delivered stays on record.",
     {{"supplier", Kind::words, true, false, "by name, or a part of it that only one has"}},
     {"drop [the] supplier {supplier}", "remove [the] supplier {supplier}",
      "we [do] (not|no longer) order from {supplier} (any more|anymore)",
      "we no longer order from {supplier}"},
     {"drop supplier Ferro"},
     Role::bench,
     given},
    &drop_supplier};

} // namespace nutward::shop::command_rows
