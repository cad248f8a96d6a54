#include "cli/options.hpp"

#include "cli/exits.hpp"
#include "cli/where.hpp"

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <algorithm>
#include <unistd.h>

namespace nutward::cli {
namespace {

constexpr const char* short_help =
    R"(nutward asks the shop's daemon, or tells it something, in a plain sentence.

  nutward which offcut fits slot 3 of job 12
  nutward use it

Usage: nutward [OPTIONS] SENTENCE...
       nutward [OPTIONS]            a conversation on a terminal, else sentences
                                    from standard input, one a line

  --home DIR            the shop's home          --json        the answer as JSON
  --http URL            over TCP instead         --quiet       the answer alone
  --token-file FILE     with this token          --no-input    never read standard input
  --conversation NAME   whose "it" is meant      --no-color    plain text
  --key KEY             say it at most once      --version
  --picture FILE        draw the answer there    --csv         its list as CSV

nutward --help says more.
)";

constexpr const char* long_help = R"(Examples:
  nutward which offcut fits slot 3 of job 12
  nutward use it
  nutward what is due
  nutward --json stock of medium
  nutward --picture cuts.svg cut list for job 8
  nutward < sentences.txt

nutward asks the shop's daemon, or tells it something, in a plain sentence.
`nutward help` lists what can be said.

Usage: nutward [OPTIONS] SENTENCE...
       nutward [OPTIONS]

Without a sentence, sentences are read from standard input, one a line. On a
terminal that is a conversation: Tab finishes words, arrows bring back earlier
sentences, a number picks a choice, Ctrl-C clears the line, Ctrl-D ends. A
sentence said while the daemon is away is kept, and asked once it is back. What
is said is kept in $XDG_STATE_HOME/nutward/history (~/.local/state/nutward/
history otherwise), except for lines that begin with a space.

Options may stand anywhere; after `--` everything belongs to the sentence (a
number such as -0.5 does anyway).

Options:
  --home DIR           The shop's home, where the daemon listens. Otherwise
                       $NUTWARD_HOME, else $XDG_STATE_HOME/nutward, else
                       ~/.local/state/nutward; if no daemon has been there,
                       /var/lib/nutward where one is.
  --http URL           Ask over TCP, at http://HOST:PORT, a loopback address
                       that nutwardd --http serves. Otherwise $NUTWARD_HTTP,
                       unless --home is given.
  --token-file FILE    The file that holds the token for --http, or - for a
                       line of standard input. Otherwise $NUTWARD_TOKEN_FILE,
                       else http.token in the shop's home.
  --conversation NAME  Which conversation "it" and "and slot 4?" go on with.
                       Otherwise one for this terminal session (cli- and its
                       number), so that a second nutward in the same shell
                       goes on with the first.
  --key KEY            Names this sentence: said again with the same key it
                       gets the first answer again and does nothing. Otherwise
                       a new key for each sentence.
  --picture FILE       Draw the answer into FILE as SVG, to be opened and printed
                       with a browser, instead of printing it; - is standard
                       output. A file that is there is replaced once the new
                       one is whole. Only questions are drawn, and only those
                       with a picture, such as "cut list for job 8".
  --csv                Print the list of the answer as CSV, for a spreadsheet,
                       where it has one, as "order list" does.
  --json               Print the answer as JSON, as it came, on one line.
  --quiet              Print the answer and its cautions, no reason and hints.
                       A conversation begins without a greeting.
  --no-input           Never read standard input.
  --no-color           Plain text. So do NO_COLOR, TERM=dumb and a pipe.
  --version            Print the version.
  -h, --help           Print short help, or this.

Exit codes:
  0  answered
  1  no: refused, not understood, nothing fits
  2  the command line is wrong
  69 the daemon is not reachable
  75 try again
  77 not allowed
)";

constexpr const char* token_in_sight =
    "A token stands on the command line, where everybody on this machine can read it. Put it into a file of "
    "mode 0600 (--token-file), and have this one withdrawn.";

CommandLine leave(int code, std::string text) {
  return {{}, code, std::move(text)};
}

CommandLine misuse(const std::string& what) {
  return leave(Exit::usage, "nutward: " + what + "\nnutward --help shows what can be given.\n");
}

bool is_unknown_option(const std::string& word) {
  if (word.size() < 2 || word[0] != '-') return false;
  return word[1] != '.' && (word[1] < '0' || word[1] > '9'); // -0.5 and -.5 are numbers
}

// Joins the words; what looks like an option and is none is returned instead.
std::optional<std::string> join(const std::vector<std::string>& words, std::string& sentence) {
  bool all_words = false;
  for (const auto& word : words) {
    if (!all_words && word == "--") {
      all_words = true;
      continue;
    }
    if (!all_words && is_unknown_option(word)) return word;
    if (!sentence.empty()) sentence += ' ';
    sentence += word;
  }
  return std::nullopt;
}

bool is_key(const std::string& key) {
  return key.size() <= 200 &&
         std::all_of(key.begin(), key.end(), [](char c) { return c > 0x20 && c < 0x7f; });
}

std::optional<std::string> fault_in(const Options& options) {
  if (!is_key(options.key)) return "A key has at most 200 letters, digits and signs, and no spaces.";
  if (!options.picture.empty() && options.json)
    return "--json and --picture are two ways to have one answer.";
  if (options.csv && (options.json || !options.picture.empty()))
    return "--csv is another way to have the answer than --json or --picture.";
  if (!options.sentence.empty()) return std::nullopt;
  if (!options.picture.empty())
    return "--picture draws one answer, so it needs a sentence on the command line.";
  if (options.no_input) return "There is no sentence, and --no-input forbids to read one.";
  if (!options.key.empty()) return "--key names one sentence, so it needs one on the command line.";
  return std::nullopt;
}

} // namespace

CommandLine read_command_line(int argc, const char* const* argv) {
  CommandLine out;
  auto& options = out.options;
  bool brief = false, full = false, version = false;
  CLI::App app;
  app.set_help_flag();
  app.allow_extras();
  for (const auto& [name, value] : {std::pair{"--home", &options.home},
                                    {"--http", &options.http},
                                    {"--token-file", &options.token_file},
                                    {"--conversation", &options.conversation},
                                    {"--key", &options.key},
                                    {"--picture", &options.picture}})
    app.add_option(name, *value)->multi_option_policy(CLI::MultiOptionPolicy::TakeLast);
  for (const auto& [name, value] : {std::pair{"--json", &options.json},
                                    {"--csv", &options.csv},
                                    {"--quiet", &options.quiet},
                                    {"--no-input", &options.no_input},
                                    {"--no-color", &options.no_color},
                                    {"--version", &version},
                                    {"-h", &brief},
                                    {"--help", &full}})
    app.add_flag(name, *value);
  for (int i = 1; i < argc; ++i) {
    if (holds_token(argv[i])) return misuse(token_in_sight);
  }
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return misuse(error.what());
  }
  if (full) return leave(Exit::answered, long_help);
  if (brief) return leave(Exit::answered, short_help);
  if (version) return leave(Exit::answered, "nutward " NUTWARD_VERSION "\n");
  if (const auto unknown = join(app.remaining(), options.sentence))
    return misuse("There is no option " + *unknown +
                  ". If it belongs to the sentence, put -- before the sentence.");
  // An empty variable in a script must not make it wait for a line to be typed.
  if (!app.remaining().empty() && options.sentence.find_first_not_of(" \t\r\n") == std::string::npos)
    return misuse("The sentence is empty.");
  options.own_conversation = !options.conversation.empty();
  if (!options.own_conversation) options.conversation = "cli-" + std::to_string(::getsid(0));
  if (const auto fault = fault_in(options)) return misuse(*fault);
  return out;
}

} // namespace nutward::cli
