"""The bench is pure: no I/O, no clock, no threads, no global state.

Read from the text, so it sees what is written in the folder and not what a library does inside; that is enough to keep
an honest developer honest. hours/load_zone.cpp may read the system's time zones: it is the one file that does.
"""

import re

from tree import BENCH, code_only, cpp, includes, judge, line_of, part

EXEMPT = {"daemon/hours/load_zone.cpp"}

HEADERS = re.compile(
    r"(fstream|iostream|istream|ostream|cstdio|stdio\.h|print|syncstream|ctime|time\.h|filesystem"
    r"|thread|mutex|shared_mutex|atomic|future|condition_variable|csignal|signal\.h|clocale|locale"
    r"|unistd\.h|fcntl\.h|dirent\.h|pthread\.h|syslog\.h|(sys|netinet|arpa|linux|curl|openssl|nlohmann|SQLiteCpp|CLI|toml\+\+)/.*"
    r"|netdb\.h|sqlite3\.h|fmt/(os|ostream)\.h|boost/(asio|beast|filesystem|process|interprocess|log)(/.*|\.hpp)|date/tz\.h)"
)
WORDS = re.compile(
    r"\b(system_clock|steady_clock|high_resolution_clock|utc_clock|file_clock|clock_gettime|gettimeofday"
    r"|random_device|getenv|setenv|setlocale|thread_local|std::(cout|cerr|clog|cin|ofstream|ifstream|fstream|rand|time|clock)"
    r"|fmt::print|f?printf|fopen|current_zone|locate_zone)\b"
)
NO_TYPE = (
    "using|namespace|struct|class|enum|union|return|typedef|template|friend|const|constexpr|constinit|concept|requires|public"
    "|private|protected|extern|goto|throw|case|delete|else|operator|static_assert|co_return|co_await|co_yield|inline|static"
)
# A variable that can change and outlives its function: `static` or `inline` anywhere without const, and, since the
# formatter indents nothing inside a namespace, any definition of a variable that starts in the first column.
STATIC = re.compile(
    r"^[ \t]*(?:(?:static|inline)[ \t]+)+(?!(?:static|inline|const|constexpr|consteval|namespace)\b)"
    r"[\w:<>,&* \t]+[ \t&*>]\w+[ \t]*(?:\[[^\]\n]*\][ \t]*)?(?:=(?!=)|;|\{)", re.M)
GLOBAL = re.compile(
    rf"^(?!(?:{NO_TYPE})\b)[A-Za-z_][\w:]*(?:<[^()\n]*>)?[ \t&*]+\w+[ \t]*(?:\[[^\]\n]*\][ \t]*)?(?:=(?!=)|;|\{{[^)\n]*\}};)", re.M)


def rule(tree):
    complaints = []
    for path, text in cpp(tree, *(f"daemon/{name}" for name in BENCH)):
        if path in EXEMPT:
            continue
        for line, name, _ in includes(text):
            if HEADERS.fullmatch(name):
                complaints.append(f"{path}:{line}: {part(path)} is pure and may not include {name}")
        code = code_only(text)
        for pattern, what in ((WORDS, "reads or writes the world"), (STATIC, "is state"), (GLOBAL, "is state")):
            for found in pattern.finditer(code):
                line = line_of(code, found.start() + len(found.group()) - len(found.group().lstrip()))
                complaints.append(f"{path}:{line}: {part(path)} is pure; `{found.group().strip()}` {what}")
    return complaints


judge(
    rule,
    lawful={
        "daemon/board/slots.cpp": """#include <cmath>
#include <sstream>
namespace nutward::board {
// std::chrono::system_clock is only spoken of here, and so is <iostream>
static const int a = 3;
static constexpr double b = 2.0;
inline constexpr Length inch{25'400'000};
const char* const words = "static int x; std::cout; printf";
static Length twice(Length x) { return x * 2; }
inline bool odd(int x) { return x % 2; }
struct Slot {
  int number = 0;
  static Slot first();
};
static_assert(sizeof(int) == 4);
Length half(Length x) {
  Length y = x;
  return y;
}
Slot::Slot(int n) : number{n} {}
} // namespace nutward::board
""",
        "daemon/hours/load_zone.cpp": "#include <date/tz.h>\nauto now = std::chrono::system_clock::now();\n",
        "daemon/serve/serve.cpp": "#include <iostream>\n#include <thread>\n",
    },
    planted=[
        *(("daemon/press/a.cpp", f"#include <{name}>\n", f"may not include {name}") for name in (
            "fstream", "iostream", "ctime", "filesystem", "cstdio", "time.h", "thread", "mutex", "sys/stat.h", "unistd.h",
            "sqlite3.h", "SQLiteCpp/SQLiteCpp.h", "nlohmann/json.hpp", "boost/asio.hpp", "boost/beast/http.hpp",
            "curl/curl.h", "openssl/hmac.h", "date/tz.h")),
        *((f"daemon/{name}/a.hpp", "#include <fstream>\n", f"{name} is pure") for name in BENCH),
        ("daemon/agenda/a.cpp", "auto t = 1;\nvoid f() {\n  g(std::chrono::system_clock::now());\n}\n", ":3: agenda is pure; `system_clock`"),
        ("daemon/hours/a.cpp", "void f() { std::chrono::steady_clock::now(); }\n", "steady_clock"),
        ("daemon/hours/a.cpp", "void f() { date::locate_zone(name); }\n", "locate_zone"),
        ("daemon/level/a.cpp", "void f() { std::cout << 1; }\n", "std::cout"),
        ("daemon/level/a.cpp", "void f() { std::random_device seed; }\n", "random_device"),
        ("daemon/supply/a.cpp", "void f() { std::getenv(name); }\n", "getenv"),
        ("daemon/wire/a.cpp", "static int calls = 0;\n", "is state"),
        ("daemon/wire/a.cpp", "void f() {\n  static std::map<int, Length> seen;\n}\n", ":2: wire is pure"),
        ("daemon/wire/a.hpp", "inline std::string last{};\n", "is state"),
        ("daemon/wire/a.cpp", "namespace {\nint calls = 0;\n}\n", ":2: wire is pure"),
        ("daemon/wire/a.cpp", "std::vector<Length> cache;\n", "is state"),
        ("daemon/wire/a.cpp", "thread_local int depth = 0;\n", "thread_local"),
    ],
)
