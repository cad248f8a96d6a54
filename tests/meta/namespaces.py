"""One namespace a folder: nutward::board in daemon/board, nutward::cli in cli. A name below it is allowed."""

import re

from tree import code_only, cpp, judge, line_of, part

OPENED = re.compile(r"(?<!using )\bnamespace[ \t]+(nutward[\w:]*)[ \t\n]*\{")


def rule(tree):
    complaints = []
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
        "daemon/shop/questions/fit.cpp": "namespace nutward::shop::questions {\n}\nusing namespace nutward::units::literals;\n",
    },
    planted=[
        ("daemon/board/a.hpp", "namespace nutward::wire {\n}\n", ":1: nutward::wire is opened"),
        ("daemon/board/a.hpp", "namespace nutward {\nnamespace board {}\n}\n", "nutward is opened"),
        ("daemon/board/a.hpp", "namespace nutward::boards {\n}\n", "nutward::boards is opened"),
        ("daemon/board/a.hpp", "namespace nutward::board {\n}\nnamespace nutward::shop { struct Store; }\n", ":3:"),
        ("daemon/board/a.cpp", "int answer() { return 42; }\n", "nothing is in nutward::board"),
        ("daemon/main.cpp", "namespace nutward::shop {\n}\nint main() {}\n", "only main stands here"),
        ("cli/say.cpp", "namespace nutward::talk {\n}\n", "nutward::talk is opened"),
    ],
)
