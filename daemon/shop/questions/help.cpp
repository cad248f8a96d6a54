// What can be asked and done, from the two lists.
#include "shop/example.hpp"
#include "shop/lists.hpp"
#include "shop/rows.hpp"
#include "shop/setup.hpp"
#include "shop/topics.hpp"

#include <span>

namespace nutward::shop::question_rows {

namespace {

Value setting_value(const SettingRow& s, const View& view) {
  const std::string name{s.name}, now = view.house().setting(s.name).value_or(std::string(s.otherwise));
  return record({{"name", name},
                 {"value", now},
                 {"otherwise", std::string(s.otherwise)},
                 {"what", std::string(s.what)}});
}

// Each setting with its value now.
Value add_settings(Answer& out, const View& view) {
  out.table = Table{{"setting", "now", "default", "what it is"}, {}};
  std::vector<Value> all;
  for (const SettingRow& s : setting_rows()) {
    const std::string now = view.house().setting(s.name).value_or(std::string(s.otherwise));
    out.table->rows.push_back({std::string(s.name), now, std::string(s.otherwise), std::string(s.what)});
    all.push_back(setting_value(s, view));
  }
  return list(std::move(all));
}

const Row* row_named(std::string_view name) {
  if (const Row* q = question(name)) return q;
  return command(name);
}

std::string example_of(const Row& row, const Sample& sample) {
  return row.examples.empty() ? std::string(row.name) : example_in(row.examples.front(), sample);
}

// "tin" of "the tin": a row may be called as the kind of thing is, and is then told of first.
std::string of_the_same(const Row& row) {
  const Topic* topic = topic_called(row.name);
  if (topic == nullptr) return "";
  std::vector<std::string_view> others;
  for (std::string_view name : topic->rows)
    if (name != row.name) others.push_back(name);
  return fmt::format(" About {} there are besides: {}.", topic->what.substr(0, topic->what.find(':')),
                     fmt::join(others, ", "));
}

Answer about_row(const Row& row, bool is_question, const View& view) {
  const Sample sample = sample_of(view);
  Answer out;
  out.text = fmt::format("{}: {}", row.name, row.what);
  std::vector<std::string> examples;
  for (std::string_view e : row.examples)
    examples.push_back(example_in(e, sample));
  if (!examples.empty()) out.text += fmt::format(" Say for example: {}.", examples.front());
  if (examples.size() > 1)
    out.reason = fmt::format("Or: {}.", fmt::join(std::span(examples).subspan(1), "; "));
  out.reason += of_the_same(row);
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

Answer about_setting(const SettingRow& s, const View& view) {
  Answer out;
  const auto kept = view.house().setting(s.name);
  out.text = fmt::format("{}: {}. It is {} now{}.", s.name, s.what, kept.value_or(std::string(s.otherwise)),
                         kept ? fmt::format("; the default is {}", s.otherwise) : ", the default");
  out.reason = fmt::format("To change it: set {} to {}.", s.name, s.otherwise);
  out.data = record({{"name", std::string("set")},
                     {"kind", std::string("command")},
                     {"takes", list({})},
                     {"examples", list({})},
                     {"settings", list({setting_value(s, view)})}});
  return out;
}

const SettingRow* setting_named(std::string name) {
  std::replace(name.begin(), name.end(), ' ', '_');
  for (const SettingRow& s : setting_rows())
    if (s.name == name) return &s;
  return nullptr;
}

Answer rows_as_list(const std::vector<const Row*>& rows, const View& view) {
  const Sample sample = sample_of(view);
  Answer out;
  out.table = Table{{"name", "what", "for example"}, {}};
  std::vector<Value> all;
  for (const Row* row : rows) {
    const std::string example = example_of(*row, sample);
    out.table->rows.push_back({std::string(row->name), std::string(row->what), example});
    all.push_back(record({{"name", std::string(row->name)},
                          {"kind", std::string(question(row->name) == row ? "question" : "command")},
                          {"what", std::string(row->what)},
                          {"example", example}}));
  }
  out.data = record({{"rows", list(std::move(all))}});
  return out;
}

Answer about_topic(const Topic& topic, const View& view) {
  std::vector<const Row*> rows;
  for (std::string_view name : topic.rows)
    rows.push_back(row_named(name));
  Answer out = rows_as_list(rows, view);
  out.text = fmt::format("About {}: {} can be said.", topic.what, plural(std::ssize(rows), "thing"));
  out.reason = fmt::format("'help {}' tells more of one.", topic.rows.front());
  return out;
}

Answer found(const std::string& topic, const std::vector<const Row*>& rows, const View& view) {
  const Sample sample = sample_of(view);
  Answer out = rows_as_list(rows, view);
  out.text = fmt::format("With '{}' in it I know {}: {}. Say for example: {}.", topic, rows.front()->name,
                         rows.front()->what.substr(0, rows.front()->what.size() - 1),
                         example_of(*rows.front(), sample));
  if (rows.size() > 1) out.reason = fmt::format("And {} more, the nearest first.", rows.size() - 1);
  return out;
}

std::string all_topics() {
  std::vector<std::string_view> names;
  for (const Topic& t : topics())
    names.push_back(t.name);
  return fmt::format("{}", fmt::join(names, ", "));
}

Answer about(const std::string& said, const View& view) {
  std::string topic = said;
  std::transform(topic.begin(), topic.end(), topic.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  if (topic == "settings") topic = "set";
  for (std::string_view article : {"the ", "a ", "an "})
    if (topic.starts_with(article)) topic.erase(0, article.size());
  std::string name = topic;
  std::replace(name.begin(), name.end(), ' ', '-');
  if (const Row* row = row_named(name)) return about_row(*row, question(name) != nullptr, view);
  if (const Topic* kind = topic_called(topic)) return about_topic(*kind, view);
  if (const SettingRow* setting = setting_named(topic)) return about_setting(*setting, view);
  if (const auto rows = rows_about(topic, 8); !rows.empty()) return found(topic, rows, view);
  throw Problem(Fault::value, fmt::format("There is no help on '{}'.", said), "topic",
                fmt::format("Say 'help' for all there is, or help on one of: {}.", all_topics()));
}

Answer ask(const Args& args, const Moment&, const View& view) {
  if (args.has("topic")) return about(args.text("topic"), view);
  std::vector<const Row*> rows(questions().begin(), questions().end());
  rows.insert(rows.end(), commands().begin(), commands().end());
  Answer out = rows_as_list(rows, view);
  out.text = fmt::format("I answer {} questions and take {} commands; say them in your own words.",
                         questions().size(), commands().size());
  out.reason =
      fmt::format("'help fit' tells more of one; 'help tin' all about one kind of thing: {}.", all_topics());
  return out;
}

} // namespace

extern const Question help;
const Question help{{"help",
                     "What can be asked and done.",
                     {{"topic", Kind::words, false, false,
                       "a question or a command, a setting, or any word that one is about"}},
                     {"what can (i|we) (ask|say|do)", "help [on|with|about] {topic}", "what can you do",
                      "[show|list] [me] [the|all] settings {topic=set}", "what are the settings {topic=set}"},
                     {"help", "help fit", "help tin", "what can i say", "settings"},
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
