// What can be asked and done, from the two lists.
#include "shop/lists.hpp"
#include "shop/rows.hpp"

namespace nutward::shop::question_rows {

namespace {

// Each setting with its value now.
Value add_settings(Answer& out, const View& view) {
  out.table = Table{{"setting", "now", "default", "what it is"}, {}};
  std::vector<Value> all;
  for (const SettingRow& s : setting_rows()) {
    const auto kept = view.house().setting(s.name);
    const std::string name{s.name}, now = kept.value_or(std::string(s.otherwise)), what{s.what};
    out.table->rows.push_back({name, now, std::string(s.otherwise), what});
    all.push_back(
        record({{"name", name}, {"value", now}, {"otherwise", std::string(s.otherwise)}, {"what", what}}));
  }
  return list(std::move(all));
}

const Row* row_named(std::string_view name) {
  if (const Row* q = question(name)) return q;
  return command(name);
}

Answer about_row(const Row& row, bool is_question, const View& view) {
  Answer out;
  out.text = fmt::format("{}: {}", row.name, row.what);
  std::vector<std::string> examples(row.examples.begin(), row.examples.end());
  out.reason = examples.empty() ? "" : fmt::format("Say for example: {}.", fmt::join(examples, "; "));
  if (const Question* drawn = question(row.name); is_question && drawn->draws && !examples.empty())
    out.reason += fmt::format(" To print its drawing: nutward --picture FILE.svg {}.", examples.front());
  std::vector<Value> params;
  if (!row.takes.empty()) out.table = Table{{"takes", "", "what it is"}, {}};
  for (const Param& p : row.takes) {
    std::string what{p.what};
    if (!p.options.empty()) what += fmt::format(" ({})", fmt::join(p.options, ", "));
    out.table->rows.push_back({field_for(p), p.required ? "needed" : "", what});
    params.push_back(record({{"name", field_for(p)}, {"required", p.required}, {"what", what}}));
  }
  std::vector<Value> said(examples.begin(), examples.end());
  out.data = record({{"name", std::string(row.name)},
                     {"kind", std::string(is_question ? "question" : "command")},
                     {"takes", list(std::move(params))},
                     {"examples", list(std::move(said))},
                     {"settings", row.name == "set" ? add_settings(out, view) : list({})}});
  return out;
}

template <class Rows>
void add(Answer& out, std::vector<Value>& all, const Rows& rows, std::string_view kind) {
  for (const auto* row : rows) {
    const std::string example{row->examples.empty() ? row->name : row->examples.front()};
    out.table->rows.push_back({std::string(row->name), std::string(row->what), example});
    all.push_back(record({{"name", std::string(row->name)},
                          {"kind", std::string(kind)},
                          {"what", std::string(row->what)},
                          {"example", example}}));
  }
}

Answer ask(const Args& args, const Moment&, const View& view) {
  if (args.has("topic")) {
    const std::string topic = args.text("topic") == "settings" ? "set" : args.text("topic");
    if (const Row* row = row_named(topic)) return about_row(*row, question(topic) != nullptr, view);
    throw Problem(Fault::value, fmt::format("There is no help on '{}'.", topic), "topic",
                  "Say 'help' for all there is.");
  }
  Answer out;
  out.text = fmt::format("I answer {} questions and take {} commands; say them in your own words.",
                         questions().size(), commands().size());
  out.reason = "'help fit' tells more of one.";
  out.table = Table{{"name", "what", "for example"}, {}};
  std::vector<Value> all;
  add(out, all, shop::questions(), "question");
  add(out, all, shop::commands(), "command");
  out.data = record({{"rows", list(std::move(all))}});
  return out;
}

} // namespace

extern const Question help;
const Question help{{"help",
                     "What can be asked and done.",
                     {{"topic", Kind::words, false, false, "the name of a question or a command"}},
                     {"what can (i|we) (ask|say|do)", "help [on|with|about] {topic}", "what can you do",
                      "[show|list] [me] [the|all] settings {topic=set}", "what are the settings {topic=set}"},
                     {"help", "help fit", "what can i say", "settings"},
                     Role::look,
                     {gives::records("rows", "questions, then commands",
                                     {{"name", Kind::words, "of the row"},
                                      gives::one_of("kind", "what it is", {"question", "command"}),
                                      {"what", Kind::words, "what it answers or does"},
                                      {"example", Kind::words, "a sentence"}})},
                     {{"name", Kind::words, "of the row"},
                      gives::one_of("kind", "what it is", {"question", "command"}),
                      gives::records("takes", "its parameters",
                                     {{"name", Kind::words, "of the JSON field"},
                                      {"required", Kind::yes, "whether it is needed"},
                                      {"what", Kind::words, "what it is"}}),
                      {"examples", Kind::words, "whole sentences", Often::many},
                      gives::records("settings", "of the shop, where the help is on set; else none",
                                     {{"name", Kind::words, "of the setting"},
                                      {"value", Kind::words, "as it is now"},
                                      {"otherwise", Kind::words, "its default"},
                                      {"what", Kind::words, "what it is"}})}},
                    &ask};

} // namespace nutward::shop::question_rows
