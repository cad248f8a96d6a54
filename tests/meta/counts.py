"""Slow headers stay in few files, and SQL stays in store.

Counted twice: files that include the header by name, and .cpp files that it reaches through our own headers, since that
is what costs the time. JSON: at most six in all. Beast: one of daemon, one of cli. date's tz: one, in hours.
"""

import re

from tree import cpp, includes, judge, literals

JSON = re.compile(r"nlohmann/(?!json_fwd\.hpp)")
BEAST = re.compile(r"boost/beast(/|\.hpp)")
ZONES = re.compile(r"date/tz\.h")
SQLITE = re.compile(r"SQLiteCpp/|sqlite3(ext)?\.h")
SQL = re.compile(
    r"\b(SELECT\b.*\bFROM|INSERT\s+(OR\s+\w+\s+)?INTO|REPLACE\s+INTO|UPDATE\s+\w+\s+SET|DELETE\s+FROM"
    r"|(CREATE|DROP|ALTER)\s+(UNIQUE\s+)?(TABLE|INDEX|VIEW|TRIGGER)|PRAGMA\s+\w+|BEGIN\s+(IMMEDIATE|EXCLUSIVE)|SAVEPOINT\s+\w+)\b",
    re.I | re.S)


def reach(tree, pattern, folder):
    """(files that name the header, .cpp files that it reaches), below one folder, with its own headers followed."""
    files = dict(cpp(tree, folder))
    direct = {p for p, text in files.items() if any(pattern.match(name) for _, name, _ in includes(text))}
    ours = {p: {f"{root}/{name}" for _, name, quoted in includes(text) if quoted for root in ("daemon", "cli")}
            for p, text in files.items()}
    reached = set(direct)
    while True:
        more = {p for p, names in ours.items() if p not in reached and names & reached}
        if not more:
            return sorted(direct), sorted(p for p in reached if p.endswith(".cpp"))
        reached |= more


def rule(tree):
    complaints = []

    def at_most(limit, what, files):
        if len(files) > limit:
            complaints.append(f"{what}: {limit} at most, not {len(files)}: {' '.join(files)}")

    both = [reach(tree, JSON, folder) for folder in ("daemon", "cli")]
    for index, how in ((0, "files that include JSON"), (1, ".cpp files that JSON reaches")):
        at_most(6, how, both[0][index] + both[1][index])
    for folder in ("daemon", "cli"):
        for files in reach(tree, BEAST, folder):
            at_most(1, f"files of {folder} with Beast", files)
    for files in reach(tree, ZONES, "daemon"):
        at_most(1, "files with date's time zones", files)
        complaints += [f"{p}: date/tz.h belongs into hours" for p in files if not p.startswith("daemon/hours/")]
    complaints += [f"{p}: the client needs no time zones" for p in reach(tree, ZONES, "cli")[0]]

    for path, text in cpp(tree, "daemon", "cli"):
        if path.startswith("daemon/store/"):
            continue
        complaints += [f"{path}:{line}: only store knows of SQLite" for line, name, _ in includes(text) if SQLITE.match(name)]
        complaints += [f"{path}:{line}: only store contains SQL" for line, value in literals(text) if SQL.search(value)]
    return complaints


JSON_LINE = "#include <nlohmann/json.hpp>\n"
judge(
    rule,
    lawful={
        **{f"daemon/shop/json{n}.cpp": JSON_LINE for n in range(4)},
        "cli/json.cpp": JSON_LINE,
        "cli/http.cpp": "#include <boost/beast/http.hpp>\n",
        "daemon/serve/http.cpp": "#include <boost/beast/core.hpp>\n#include <boost/beast/http.hpp>\n",
        "daemon/hours/load_zone.cpp": "#include <date/tz.h>\n",
        "daemon/store/tin.cpp": '#include <SQLiteCpp/SQLiteCpp.h>\nauto q = "SELECT id FROM piece";\n',
        "daemon/talk/help.cpp": '// SELECT id FROM piece\n#pragma once\nauto a = "select one, or update it";\n'
                                'auto b = "pick from these";\nauto n = 1\'000\'000; // it\'s fine\n',
        "daemon/shop/json.hpp": "#include <nlohmann/json_fwd.hpp>\n",
        "daemon/shop/node.hpp": JSON_LINE,
        "daemon/shop/node.cpp": '#include "shop/node.hpp"\n',
        "daemon/shop/run.cpp": '#include "shop/json.hpp"\n',
    },
    planted=[
        ("daemon/talk/seventh.cpp", JSON_LINE, "files that include JSON: 6"),
        ("cli/seventh.cpp", JSON_LINE, "files that include JSON: 6"),
        ("daemon/shop/run.cpp", '#include "shop/node.hpp"\n', ".cpp files that JSON reaches: 6"),
        ("daemon/serve/two.cpp", "#include <boost/beast.hpp>\n", "files of daemon with Beast: 1"),
        ("cli/two.cpp", "#include <boost/beast/core.hpp>\n", "files of cli with Beast: 1"),
        ("daemon/hours/a.cpp", "#include <date/tz.h>\n", "date's time zones: 1"),
        ("daemon/shop/a.cpp", "#include <date/tz.h>\n", "belongs into hours"),
        ("cli/a.cpp", "#include <date/tz.h>\n", "needs no time zones"),
        ("daemon/shop/a.cpp", "#include <SQLiteCpp/Database.h>\n", "only store knows of SQLite"),
        ("cli/a.cpp", "#include <sqlite3.h>\n", "only store knows of SQLite"),
        ("daemon/shop/a.cpp", 'f("select id from piece");\n', ":1: only store contains SQL"),
        ("daemon/shop/a.cpp", 'int x;\nf("SELECT id, length "\n  "FROM piece WHERE id = ?");\n', ":2: only store contains SQL"),
        ("daemon/talk/a.cpp", 'f(R"sql(\nINSERT INTO piece VALUES (1)\n)sql");\n', "only store contains SQL"),
        ("daemon/talk/a.cpp", "auto n = 1'000; f(\"UPDATE job SET due = 1\");\n", "only store contains SQL"),
        ("daemon/serve/a.cpp", 'f("PRAGMA query_only");\n', "only store contains SQL"),
        ("daemon/remind/a.cpp", 'f("BEGIN IMMEDIATE");\n', "only store contains SQL"),
        ("cli/a.cpp", 'f("DELETE FROM outbox");\n', "only store contains SQL"),
    ],
)
