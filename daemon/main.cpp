// Reads the configuration and puts the parts together; nothing else.
#include "hours/load_zone.hpp"
#include "remind/ageing.hpp"
#include "remind/watch.hpp"
#include "serve/describe.hpp"
#include "serve/door.hpp"
#include "serve/loopback.hpp"
#include "serve/routes.hpp"
#include "shop/agenda_plan.hpp"
#include "shop/cut_planning.hpp"
#include "shop/demo.hpp"
#include "store/sqlite.hpp"
#include "talk/talk.hpp"
#include "units/print.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <toml++/toml.h>

#include <pwd.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <filesystem>
#include <future>

namespace {

using namespace nutward;

struct Configuration {
  std::filesystem::path home, file;
  bool demo = false, verify = false;
  unsigned mode = 0600;
  std::string group;
  std::string http;     // where to listen over TCP; "": nowhere
  std::string networks; // private networks whose receivers may be called
};

// A mistake of whoever starts the daemon: printed with what would do, exit 2.
struct BadConfiguration : std::runtime_error {
  using std::runtime_error::runtime_error;
};

class SystemClock : public shop::Clock {
public:
  units::Instant now() const override {
    return {
        std::chrono::duration_cast<std::chrono::seconds>(std::chrono::system_clock::now().time_since_epoch())
            .count()};
  }
};

void note(const std::string& line) {
  const std::string safe = units::escape_for_print(line);
  std::fprintf(stderr, "%s\n", safe.c_str());
}

// HOME/nutward.toml, or --config: [door] group, http; [receivers] networks. Anything else in it is a mistake.
void read_file(Configuration& c) {
  const bool named = !c.file.empty();
  if (!named) c.file = c.home / "nutward.toml";
  if (!std::filesystem::exists(c.file)) {
    if (named) throw BadConfiguration("There is no file " + c.file.string() + ".");
    return;
  }
  try {
    const toml::table table = toml::parse_file(c.file.string());
    for (const auto& [section, content] : table) {
      const auto* inner = content.as_table();
      for (const auto& [name, value] : inner == nullptr ? toml::table{} : *inner) {
        const std::string key = fmt::format("{}.{}", section.str(), name.str());
        const auto text = value.value<std::string>();
        if (!text) throw BadConfiguration(fmt::format("{}: {} must be a text.", c.file.string(), key));
        if (key == "door.group")
          c.group = *text, c.mode = 0660;
        else if (key == "door.http")
          c.http = c.http.empty() ? *text : c.http; // --http goes before
        else if (key == "receivers.networks")
          c.networks = *text;
        else
          throw BadConfiguration(fmt::format(
              "{}: there is no setting {}; there are door.group, door.http and receivers.networks.",
              c.file.string(), key));
      }
      if (inner == nullptr)
        throw BadConfiguration(
            fmt::format("{}: {} stands outside [door] and [receivers].", c.file.string(), section.str()));
    }
  } catch (const toml::parse_error& e) {
    throw BadConfiguration(
        fmt::format("{}: {} at line {}.", c.file.string(), e.description(), e.source().begin.line));
  }
}

remind::Policy policy_of(const Configuration& c) {
  remind::Policy policy;
  try {
    policy.listed = remind::parse_networks(c.networks);
  } catch (const remind::BadNetwork& bad) {
    throw BadConfiguration(fmt::format("receivers.networks: {} {}", bad.what(), bad.would_do));
  }
  return policy;
}

void check_http(const Configuration& c) {
  if (c.http.empty()) return;
  try {
    serve::read_loopback(c.http);
  } catch (const serve::DoorError& bad) {
    throw BadConfiguration(std::string(bad.what()) + " " + bad.would_do);
  }
}

std::string user_name(std::uint32_t uid) {
  std::array<char, 4096> buffer{};
  passwd entry{};
  passwd* found = nullptr;
  if (getpwuid_r(uid, &entry, buffer.data(), buffer.size(), &found) != 0 || found == nullptr) return "";
  return found->pw_name;
}

// Says a sentence and waits for what comes of it.
shop::Answer said(talk::Talk& talk, const std::string& sentence, const shop::Caller& who) {
  std::promise<talk::Reply> promise;
  auto future = promise.get_future();
  talk.say(sentence, "", who, "", [&](talk::Reply reply) { promise.set_value(std::move(reply)); });
  return future.get().answer;
}

int verify(store::Sqlite& store) {
  const auto findings = store.verify();
  for (const auto& f : findings)
    note(f.where + ": " + f.what);
  std::printf(findings.empty() ? "All is well.\n" : "%zu findings.\n", findings.size());
  return findings.empty() ? 0 : 1;
}

int run_shop(const Configuration& c) {
  remind::WatchOptions watching;
  watching.policy = policy_of(c); // before the home is touched: it may be wrong
  watching.note = note;
  check_http(c);
  if (c.verify && !std::filesystem::exists(c.home / "shop.db")) { // opening it would make one
    throw BadConfiguration(fmt::format("There is no shop in {}: no shop.db. Nothing was made there. Give "
                                       "the folder of the shop with --home.",
                                       c.home.string()));
  }
  const auto store = store::open_sqlite({c.home});
  if (c.verify) return verify(*store);
  SystemClock clock;
  shop::Rooms rooms(hours::load_zone);
  serve::DoorOptions options;
  options.socket = (c.home / "nutward.sock").string();
  options.mode = c.mode;
  options.group = c.group;
  options.http = c.http;
  options.stop_on_signals = true;
  options.note = note;
  // The executor is gone before both: its last commits still call them. The watch is gone before the planner:
  // it takes the listener back that calls them.
  std::unique_ptr<shop::Planner> planner;
  std::unique_ptr<remind::Watch> watch;
  std::unique_ptr<remind::Ageing> ageing; // the first to go: it calls both
  shop::Executor executor(*store, clock, rooms);
  talk::Talk talk(executor, *store, clock, rooms);
  serve::People people(*store, clock, {getuid(), user_name});
  serve::Routes routes(talk, executor, *store, people, NUTWARD_VERSION);
  if (c.demo)
    shop::load_demo(*store, [&](const std::string& sentence, const shop::Caller& who) {
      return said(talk, sentence, who);
    });
  serve::Door door(options, [&](const serve::Request& request, const serve::Reply& reply) {
    routes.handle(request, reply);
  });
  const auto token = c.home / serve::token_file;
  if (!c.http.empty() && people.keep_token_file(token)) note("A new token is in " + token.string() + ".");
  door.open();
  planner = std::make_unique<shop::Planner>(
      *store, clock, std::vector{shop::cut_plans(), shop::agenda_plans(clock, rooms)}, note);
  watch = std::make_unique<remind::Watch>(*store, clock, rooms, watching);
  ageing = std::make_unique<remind::Ageing>(*planner, remind::Alarm::Clock{}, [&] { watch->look(); });
  store->on_change([&](std::int64_t) { // in the place of the watch's own: a store has one listener
    watch->look();
    planner->changed();
  });
  planner->changed(); // for what came while it had no listener
  note(fmt::format("nutwardd {} serves {}", NUTWARD_VERSION, options.socket));
  if (!door.http().empty())
    note(fmt::format("and http://{} for who bears a token; one is in {}", door.http(), token.string()));
  door.run();
  return 0;
}

int run(int argc, char** argv) {
  Configuration c;
  CLI::App app{"The shop's daemon: keeps wire, tin and queue, answers, reminds."};
  app.add_option("--home", c.home, "folder of the shop: shop.db, nutward.sock, nutward.toml; made if missing")
      ->required();
  app.add_option("--config", c.file, "configuration instead of HOME/nutward.toml");
  app.add_option(
      "--http", c.http,
      "listen at HOST:PORT too, a loopback address, for who bears a token; port 0 takes a free one");
  app.add_flag("--demo", c.demo, "load the demo shop into an empty home first");
  app.add_flag("--verify", c.verify, "check all that is stored, and end");
  app.add_flag_callback(
         "--describe",
         [] {
           const bool written =
               std::fputs(serve::describe(NUTWARD_VERSION).c_str(), stdout) >= 0 && std::fflush(stdout) == 0;
           if (!written) throw CLI::RuntimeError("The description could not be written.", 1);
           throw CLI::Success();
         },
         "print the HTTP interface as OpenAPI 3.1, and end")
      ->trigger_on_parse();
  app.set_version_flag("--version", NUTWARD_VERSION);
  CLI11_PARSE(app, argc, argv);
  try {
    read_file(c);
    return run_shop(c);
  } catch (const BadConfiguration& e) {
    note(std::string("nutwardd: ") + e.what());
    return 2;
  } catch (const shop::Problem& e) {
    note("nutwardd: " + e.text + (e.would_do.empty() ? "" : " " + e.would_do));
  } catch (const serve::DoorError& e) {
    note(std::string("nutwardd: ") + e.what() + " " + e.would_do);
  } catch (const std::exception& e) {
    note(std::string("nutwardd: ") + e.what());
  }
  return 1;
}

} // namespace

int main(int argc, char** argv) {
  return run(argc, argv);
}
