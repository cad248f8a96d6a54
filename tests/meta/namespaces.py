"""One namespace a folder: nutward::board in daemon/board, nutward::cli in cli. A name below it is allowed.

And one record a name: two of one name in one namespace are one to the linker, which takes either's functions for both.
"""

import re

from tree import code_only, cpp, judge, line_of, part

OPENED = re.compile(r"(?<!using )\bnamespace[ \t]+(nutward[\w:]*)[ \t\n]*\{")

SCOPES = re.compile(
    r"\bnamespace(?P<space>[ \t\n]+[\w:]+)?[ \t\n]*\{"
    r"|\b(?:struct|class)[ \t\n]+(?P<record>\w+)(?:[ \t\n]+final)?[ \t\n]*(?::(?!:)[^;{}()]*)?\{|\{|\}"
)


def records(code):
    """Each record that is defined straight in a named namespace: its whole name, and where."""
    inside = []  # a namespace's name, "" of one without, None of any other brace
    for m in SCOPES.finditer(code):
        if m.group() == "}":
            if inside:
                inside.pop()
        elif m.group().startswith("namespace"):
            inside.append((m.group("space") or "").strip())
        else:
            if m.group("record") and all(inside):
                yield "::".join([*inside, m.group("record")]), m.start()
            inside.append(None)


def rule(tree):
    complaints = []
    defined = {}
    for path, text in cpp(tree, "daemon", "cli"):
        own = "cli" if path.startswith("cli/") else part(path)
        code = code_only(text)
        opened = [(line_of(code, m.start()), m.group(1)) for m in OPENED.finditer(code)]
        wanted = f"nutward::{own}"
        for line, name in opened:
            if own is None:
                complaints.append(f"{path}:{line}: only main stands here; {name} has a folder of its own")
            elif name != wanted and not name.startswith(wanted + "::"):
                complaints.append(f"{path}:{line}: {name} is opened in the folder of {wanted}")
        for name, start in records(code):
            other = defined.setdefault(name, f"{path}:{line_of(code, start)}")
            if not other.startswith(f"{path}:"):
                complaints.append(f"{path}:{line_of(code, start)}: {name} is another record than that of {other}")
        if not opened and not path.endswith("/main.cpp"):
            complaints.append(f"{path}:1: nothing is in {wanted}")
    return complaints


judge(
    rule,
    lawful={
        "daemon/main.cpp": "using namespace nutward;\nint main() {}\n",
        "cli/main.cpp": "int main() {}\n",
        "cli/say.cpp": "namespace nutward::cli {\n}\n",
        "daemon/board/slots.hpp": "// namespace nutward::shop {\nnamespace nutward::board {\nnamespace {\n}\n}\n",
        "daemon/shop/a.hpp": "namespace nutward::shop {\nstruct Told {\n  struct Part {};\n};\nstruct Other;\n}\n",
        "daemon/shop/b.cpp": "namespace nutward::shop {\nnamespace {\nstruct Told {};\n}\nstruct Some { struct Part {}; };\n}\n",
        "daemon/talk/a.hpp": "namespace nutward::talk {\nstruct Told {};\n}\n",
        "daemon/shop/questions/fit.cpp": "namespace nutward::shop::questions {\n}\nusing namespace nutward::units::literals;\n",
    },
    planted=[
        ("daemon/board/a.hpp", "namespace nutward::wire {\n}\n", ":1: nutward::wire is opened"),
        ("daemon/board/a.hpp", "namespace nutward {\nnamespace board {}\n}\n", "nutward is opened"),
        ("daemon/board/a.hpp", "namespace nutward::boards {\n}\n", "nutward::boards is opened"),
        ("daemon/board/a.hpp", "namespace nutward::board {\n}\nnamespace nutward::shop { struct Store; }\n", ":3:"),
        ("daemon/board/a.cpp", "int answer() { return 42; }\n", "nothing is in nutward::board"),
        ("daemon/main.cpp", "namespace nutward::shop {\n}\nint main() {}\n", "only main stands here"),
        ("daemon/shop/c.hpp", "namespace nutward::shop {\nstruct Told : Base {\n};\n}\n", ":2: nutward::shop::Told is another"),
        ("cli/say.cpp", "namespace nutward::talk {\n}\n", "nutward::talk is opened"),
    ],
)
