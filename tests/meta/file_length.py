"""A file is one thing: over 400 lines it is asked whether it still is, over 500 it is not."""

from tree import judge

KINDS = (".cpp", ".hpp", ".h", ".mjs", ".js", ".css", ".py", ".sh")
FOLDERS = ("daemon/", "cli/", "tests/", "deploy/", "schema/")


def longer(tree, limit):
    lengths = {p: text.count("\n") for p, text in tree.items() if p.startswith(FOLDERS) and p.endswith(KINDS)
               and not text.startswith("// Made by ")}
    return [f"{path}: {lines} lines, over {limit}" for path, lines in sorted(lengths.items()) if lines > limit]


judge(
    lambda tree: longer(tree, 500),
    lawful={"daemon/units/a.cpp": "\n" * 500, "README.md": "\n" * 900},
    planted=[(path, "\n" * 501, "501 lines") for path in ("daemon/units/a.cpp", "cli/a.hpp", "tests/meta/a.py", "deploy/a.sh")],
    warnings=lambda tree: longer(tree, 400),
)
